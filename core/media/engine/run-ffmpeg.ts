/**
 * Runs ffmpeg: the one place that knows fluent-ffmpeg. Everything else hands over whole option lists and
 * gets back lines or one of our errors, so this file can be replaced by a plain process without other changes.
 *
 * What the package does and we steer around: its progress events probe the input without any allow-list, so they
 * are never listened to; options handed over as one text are split at blanks, so they go in as separate arguments.
 */
import { rm } from 'node:fs/promises'
import ffmpegCommand from 'fluent-ffmpeg'
import { AppError } from '../../../shared/errors.ts'
import type { Ms } from '../../../shared/time.ts'
import { explainFailure, saysDiskFull } from '../explain-failure.ts'
import { LONGEST_TIMER_MS } from '../plan-limits.ts'
import type { RunLimits } from '../plan-limits.ts'
import { isProgressLine, progressReader } from '../read-progress.ts'
import type { RunProgress } from '../read-progress.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { CHAPTER_GUARDS, JOIN_GUARDS, RECORDING_GUARDS, fileName } from './guard-input.ts'
import { guardProgram } from './guard-process.ts'

export interface FfmpegJob {
  /** What is being done, for messages: "Cutting "Squat"". */
  doing: string
  /** Files read. The allow-lists are put before each. `chapters` and `joining` = a chapter file, a joining list that we wrote. */
  inputs: readonly { path: string; options: readonly string[]; kind?: keyof typeof GUARDS }[]
  /** A whole filter graph; made by us, never with a person's words in it. */
  filter?: string
  /** Files written, by names that we made; null = nothing is written. Options end with `-f` and the format. */
  outputs: readonly { path: string | null; options: readonly string[] }[]
  limits: RunLimits
  /** Playing time that the output will have; per cent is counted from it. */
  expectMs: Ms
  /** `info` where a filter's summary is wanted. */
  messages?: 'error' | 'info'
  onProgress?: ((progress: RunProgress) => void) | undefined
  signal?: AbortSignal | undefined
}

const GUARDS = { recording: RECORDING_GUARDS, chapters: CHAPTER_GUARDS, joining: JOIN_GUARDS } as const

/** Between asking ffmpeg to end and ending it. */
const GRACE_MS = 2000
/** Lines of messages that are kept. */
const KEPT_LINES = 400

type Stopped = 'timeout' | 'cancelled' | 'too-big'

/**
 * Runs one job to its end.
 * @returns ffmpeg's messages, line by line. On any error its outputs are removed.
 * @throws AppError engine-failed and what its last lines mean; engine-timeout, engine-cancelled, engine-too-big, disk-full.
 */
export async function runFfmpeg(found: Ffmpeg, job: FfmpegJob): Promise<string[]> {
  const lines: string[] = []
  try {
    await runCommand(found, job, lines)
    if (saysDiskFull(lines)) throw explainFailure({ doing: job.doing, exitCode: 0, signal: null, lines })
    return lines
  } catch (error) {
    for (const { path } of job.outputs) if (path !== null) await rm(path, { force: true })
    throw error
  }
}

function runCommand(found: Ffmpeg, job: FfmpegJob, lines: string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const command = buildCommand(found, job)
    const progressOf = progressReader(job.expectMs)
    let started = false
    let ended = false
    let stopped: Stopped | null = null
    let killTimer: NodeJS.Timeout | undefined

    const kill = (): void => {
      command.kill('SIGTERM')
      killTimer = setTimeout(() => command.kill('SIGKILL'), GRACE_MS)
    }
    const stop = (why: Stopped): void => {
      if (stopped || ended) return
      stopped = why
      if (started) kill()
    }
    const onAbort = (): void => stop('cancelled')
    const timer = setTimeout(() => stop('timeout'), Math.min(job.limits.timeoutMs, LONGEST_TIMER_MS))
    const finish = (failure: AppError | null): void => {
      if (ended) return
      ended = true
      clearTimeout(timer)
      clearTimeout(killTimer)
      job.signal?.removeEventListener('abort', onAbort)
      if (failure) reject(failure)
      else resolve()
    }

    command.on('start', () => {
      started = true
      if (stopped) kill()
    })
    command.on('stderr', (line: string) => {
      const progress = progressOf(line)
      if (progress) {
        if ((progress.bytes ?? 0) > job.limits.maxBytes) stop('too-big')
        if (!stopped) job.onProgress?.(progress)
      }
      if (isProgressLine(line) || line.trim() === '') return
      lines.push(line)
      if (lines.length > KEPT_LINES) lines.shift()
    })
    command.on('end', () => finish(stopped ? stopError(job, stopped, null) : null))
    command.on('error', (error: Error) => {
      finish(stopped ? stopError(job, stopped, error) : failureOf(job, error, lines))
    })
    job.signal?.addEventListener('abort', onAbort, { once: true })
    if (job.signal?.aborted) finish(stopError(job, 'cancelled', null))
    else command.run()
  })
}

function buildCommand(found: Ffmpeg, job: FfmpegJob): ffmpegCommand.FfmpegCommand {
  const { command: program, env } = guardProgram(found.ffmpeg)
  // the package hands no environment of its own to the process; these two names are read by the guard script only
  Object.assign(process.env, env)
  const command = ffmpegCommand()
  command.setFfmpegPath(program)
  const general = [
    ...['-nostdin', '-hide_banner', '-nostats', '-loglevel', job.messages ?? 'error', '-y'],
    ...['-progress', 'pipe:2', '-timelimit', String(job.limits.cpuSeconds)],
  ]
  job.inputs.forEach(({ path, options, kind = 'recording' }, index) => {
    const guards = GUARDS[kind]
    command.input(fileName(path)).inputOptions(...[...(index === 0 ? general : []), ...guards, ...options])
  })
  if (job.filter !== undefined) command.complexFilter(job.filter)
  for (const { path, options } of job.outputs) {
    const size = path === null ? [] : ['-fs', String(job.limits.maxBytes)]
    command.output(path === null ? '-' : fileName(path)).outputOptions(...size, ...options)
  }
  return command
}

function stopError(job: FfmpegJob, stopped: Stopped, cause: Error | null): AppError {
  const options = cause ? { cause } : {}
  if (stopped === 'cancelled') return new AppError('engine-cancelled', `${job.doing} was cancelled.`, options)
  if (stopped === 'timeout') {
    const seconds = Math.round(job.limits.timeoutMs / 1000)
    return new AppError(
      'engine-timeout',
      `${job.doing} took longer than ${seconds} seconds and was stopped. Run fewer jobs at a time, or cut shorter spans.`,
      options,
    )
  }
  const megabytes = Math.round(job.limits.maxBytes / 1_000_000)
  return new AppError(
    'engine-too-big',
    `${job.doing} was stopped: the file grew over ${megabytes} MB. Cut shorter spans.`,
    options,
  )
}

/** The package tells how the process ended only in the words of its error. */
function failureOf(job: FfmpegJob, error: Error, lines: readonly string[]): AppError {
  const signal = /killed with signal (\w+)/.exec(error.message)?.[1] ?? null
  const exitCode = /exited with code (\d+)/.exec(error.message)?.[1]
  if (signal === null && exitCode === undefined) {
    const missing = /ENOENT|EACCES|Cannot find ffmpeg/.test(error.message)
    return new AppError(
      missing ? 'ffmpeg-missing' : 'ffmpeg-lacks',
      `${job.doing} could not start: ${error.message}. Run "doctor".`,
      { cause: error },
    )
  }
  return explainFailure({ doing: job.doing, exitCode: exitCode === undefined ? null : Number(exitCode), signal, lines })
}
