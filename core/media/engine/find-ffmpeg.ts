/** Finds ffmpeg and ffprobe on this machine. It searches only; it installs nothing. */
import { stat } from 'node:fs/promises'
import { delimiter, dirname, join } from 'node:path'
import { AppError } from '../../../shared/errors.ts'
import { isExecutable } from './guard-process.ts'
import { runProcess } from './run-process.ts'

export interface Ffmpeg {
  /** Absolute paths, or the path that a setting gave. */
  ffmpeg: string
  ffprobe: string
  /** As ffmpeg prints it, such as `5.1.9-0+deb12u1`. */
  version: string
  from: 'setting' | 'ffmpeg-static' | 'path'
}

export type Environment = Readonly<Record<string, string | undefined>>

/** Settings, the first that is set counts. */
const FFMPEG_SETTINGS = ['REPSLATE_FFMPEG', 'FFMPEG_PATH', 'FFMPEG_BIN'] as const
const FFPROBE_SETTINGS = ['REPSLATE_FFPROBE', 'FFPROBE_PATH'] as const
/** Settings of our own are a promise: when such a program does not work, that is an error, not a reason to go on. */
const OWN = 'REPSLATE_'
const NEEDED = { major: 5, minor: 1 }

interface Candidate {
  path: string
  from: Ffmpeg['from']
  /** The setting's name, null when found otherwise. */
  setting: string | null
}

interface Tried {
  path: string
  version: string | null
  problem: 'cannot be run' | 'too old' | null
}

/**
 * Search order: a setting; the optional package ffmpeg-static, if its file is really there; the PATH.
 * ffprobe: a setting, beside ffmpeg, the PATH.
 * @param loadPackage imports ffmpeg-static, whose default export is a path.
 * @throws AppError ffmpeg-missing, ffmpeg-too-old; the details name everything that was tried.
 */
export async function findFfmpeg(
  env: Environment = process.env,
  loadPackage: () => Promise<unknown> = importPackage,
): Promise<Ffmpeg> {
  const tried: Tried[] = []
  const ffmpeg = await firstThatWorks(await ffmpegCandidates(env, loadPackage), 'ffmpeg', tried)
  if (!ffmpeg) throw notFound('ffmpeg', tried)
  const ffprobe = await firstThatWorks(ffprobeCandidates(env, ffmpeg.candidate.path), 'ffprobe', tried)
  if (!ffprobe) throw notFound('ffprobe', tried)
  return {
    ffmpeg: ffmpeg.candidate.path,
    ffprobe: ffprobe.candidate.path,
    version: ffmpeg.version,
    from: ffmpeg.candidate.from,
  }
}

/**
 * True when the version, as the program prints it, is 5.1 or newer: `5.1.9-0+deb12u1`, `n6.0`, `N-109542-gfd1`.
 * A number of commits instead of a version: 5.1 was branched off at about N-107000 (from memory).
 */
export function isNewEnough(version: string): boolean {
  const commits = /^N-(\d+)/.exec(version)
  if (commits) return Number(commits[1]) >= 107_000
  const [, major, minor] = /^n?(\d+)(?:\.(\d+))?/.exec(version) ?? []
  const found = { major: Number(major ?? 0), minor: Number(minor ?? 0) }
  return found.major > NEEDED.major || (found.major === NEEDED.major && found.minor >= NEEDED.minor)
}

async function ffmpegCandidates(env: Environment, loadPackage: () => Promise<unknown>): Promise<Candidate[]> {
  const packaged = await packagedFfmpeg(loadPackage)
  return [
    ...fromSettings(env, FFMPEG_SETTINGS),
    ...(packaged ? [{ path: packaged, from: 'ffmpeg-static' as const, setting: null }] : []),
    ...onPath(env, 'ffmpeg'),
  ]
}

function ffprobeCandidates(env: Environment, ffmpeg: string): Candidate[] {
  const beside = join(dirname(ffmpeg), programName('ffprobe'))
  return [
    ...fromSettings(env, FFPROBE_SETTINGS),
    ...(dirname(ffmpeg) === '.' ? [] : [{ path: beside, from: 'path' as const, setting: null }]),
    ...onPath(env, 'ffprobe'),
  ]
}

function fromSettings(env: Environment, names: readonly string[]): Candidate[] {
  return names.flatMap((setting) => {
    const path = env[setting]
    return path ? [{ path, from: 'setting' as const, setting }] : []
  })
}

function onPath(env: Environment, program: string): Candidate[] {
  const folders = (env['PATH'] ?? env['Path'] ?? '').split(delimiter).filter(Boolean)
  return folders
    .map((folder) => join(folder, programName(program)))
    .filter(isExecutable)
    .map((path) => ({ path, from: 'path', setting: null }))
}

function programName(program: string): string {
  return process.platform === 'win32' ? `${program}.exe` : program
}

/** The package may be absent, or there without its file: its download may have failed or been skipped. */
async function packagedFfmpeg(loadPackage: () => Promise<unknown>): Promise<string | null> {
  const loaded = (await loadPackage().catch(() => null)) as { default?: unknown } | null
  const path = loaded?.default
  return typeof path === 'string' && isExecutable(path) ? path : null
}

/** The name stands in a variable: the compiler must not ask for a package that may be absent. */
function importPackage(): Promise<unknown> {
  const name: string = 'ffmpeg-static'
  return import(name)
}

async function firstThatWorks(
  candidates: readonly Candidate[],
  program: string,
  tried: Tried[],
): Promise<{ candidate: Candidate; version: string } | null> {
  for (const candidate of candidates) {
    const result = await tryProgram(candidate.path, program)
    tried.push(result)
    if (result.problem === null && result.version !== null) return { candidate, version: result.version }
    if (candidate.setting?.startsWith(OWN)) throw brokenSetting(candidate.setting, result)
  }
  return null
}

async function tryProgram(path: string, program: string): Promise<Tried> {
  const file = await stat(path).catch(() => null)
  if (!file?.isFile()) return { path, version: null, problem: 'cannot be run' }
  const result = await runProcess(path, ['-version'], { timeoutMs: 10_000, maxOutputBytes: 100_000 })
  const version = new RegExp(`^${program} version (\\S+)`).exec(result.stdout)?.[1] ?? null
  if (version === null) return { path, version: null, problem: 'cannot be run' }
  return { path, version, problem: isNewEnough(version) ? null : 'too old' }
}

function brokenSetting(setting: string, tried: Tried): AppError {
  return new AppError(
    tried.problem === 'too old' ? 'ffmpeg-too-old' : 'ffmpeg-missing',
    `${setting} names "${tried.path}", which ${tried.problem === 'too old' ? `is version ${tried.version}, older than 5.1` : 'cannot be run'}. Correct the setting or take it away.`,
    { details: [describe(tried)] },
  )
}

function notFound(program: string, tried: readonly Tried[]): AppError {
  const old = tried.find((entry) => entry.problem === 'too old')
  const how = 'Install ffmpeg 5.1 or newer, or name it with REPSLATE_FFMPEG and REPSLATE_FFPROBE.'
  return new AppError(
    old ? 'ffmpeg-too-old' : 'ffmpeg-missing',
    old ? `The ${program} found is older than 5.1 (${old.version}). ${how}` : `No ${program} was found. ${how}`,
    { details: tried.length > 0 ? tried.map(describe) : ['Looked at the settings, ffmpeg-static and the PATH.'] },
  )
}

function describe({ path, version, problem }: Tried): string {
  return `${path}: ${problem ?? 'works'}${version === null ? '' : ` (version ${version})`}`
}
