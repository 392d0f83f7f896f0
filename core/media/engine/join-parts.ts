/** Joins the parts of a class into one working film, and proves that no frame was lost. */
import { rm, writeFile } from 'node:fs/promises'
import { AppError } from '../../../shared/errors.ts'
import type { Ms } from '../../../shared/time.ts'
import { planJoin, writeJoinList } from '../plan-join.ts'
import type { JoinPart, JoinPlan } from '../plan-join.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { RECORDING_GUARDS, fileName } from './guard-input.ts'
import { openRecording } from './open-recording.ts'
import type { OpenedRecording } from './open-recording.ts'
import { runFfmpeg } from './run-ffmpeg.ts'
import { runProcess } from './run-process.ts'

export interface JoinOptions {
  signal?: AbortSignal | undefined
  /** Share done, 0 to 1. */
  onShare?: ((share: number) => void) | undefined
}

export interface Joined {
  method: JoinPlan['method']
  /** Why the parts were coded anew; null = their packets were copied. */
  why: string | null
  ending: JoinPlan['ending']
  film: OpenedRecording
  /** Where each part begins in the film: the time of its first frame. */
  startsMs: Ms[]
}

/**
 * @param paths of the parts in the order of the class, at least two
 * @param outPath of the film; what lies there is replaced, and on any error nothing is left
 * @throws AppError as openRecording and runFfmpeg; recording-broken when frames are missing afterwards
 */
export async function joinParts(
  found: Ffmpeg,
  paths: readonly string[],
  outPath: string,
  { signal, onShare }: JoinOptions = {},
): Promise<Joined> {
  const parts: (JoinPart & OpenedRecording)[] = []
  for (const path of paths) {
    const opened = await openRecording(found, path, { silent: true, signal })
    const { frames } = opened.index
    const codecSum = await sumCodec(found, path, opened, signal)
    parts.push({ ...opened, frames: frames.length, firstFrameMs: frames[0]?.atMs ?? 0, codecSum })
  }
  const [first, ...later] = parts
  if (!first) throw new RangeError('There are no parts to join.')
  const plan = planJoin(first, ...later)
  try {
    const film = await runJoin(found, parts, outPath, plan, { signal, onShare })
    if (isWhole(film, plan, first)) return tell(plan, film, parts)
    // rare: packets that only fit together on paper; pictures always do
    const again = planJoin(first, ...later.map((part) => ({ ...part, codecSum: '' })))
    const coded = await runJoin(found, parts, outPath, again, { signal, onShare })
    if (isWhole(coded, again, first)) return tell(again, coded, parts)
    throw new AppError(
      'recording-broken',
      `The parts have ${plan.frames} frames and joined they have ${coded.index.frames.length}. Copy the files from the camera again.`,
    )
  } catch (error) {
    await rm(outPath, { force: true })
    throw error
  }
}

function isWhole(film: OpenedRecording, plan: JoinPlan, first: JoinPart): boolean {
  const turned = plan.method === 'copy' ? first.video.rotation : 0
  return film.index.frames.length === plan.frames && film.video.rotation === turned
}

function tell({ method, why, ending }: JoinPlan, film: OpenedRecording, parts: readonly JoinPart[]): Joined {
  const before = parts.map((_part, at) => parts.slice(0, at).reduce((sum, { frames }) => sum + frames, 0))
  const startsMs = before.map((frames) => Math.round(film.index.frames[frames]?.atMs ?? film.durationMs))
  return { method, why, ending, film, startsMs }
}

async function runJoin(
  found: Ffmpeg,
  parts: readonly OpenedRecording[],
  outPath: string,
  plan: JoinPlan,
  { signal, onShare }: JoinOptions,
): Promise<OpenedRecording> {
  const list = `${outPath}.list`
  const isCopied = plan.method === 'copy'
  if (isCopied) {
    const files = parts.map(({ path, durationMs }) => ({ name: fileName(path), durationMs }))
    await writeFile(list, writeJoinList(files), 'utf8')
  }
  const inputs = [
    ...(isCopied ? [{ path: list, options: ['-an', '-sn', '-dn'], kind: 'joining' as const }] : []),
    ...(isCopied && plan.filter === null
      ? []
      : parts.map(({ path }) => ({ path, options: [...(isCopied ? ['-vn'] : []), '-sn', '-dn'] }))),
  ]
  try {
    await runFfmpeg(found, {
      doing: 'Joining the parts',
      inputs,
      ...(plan.filter !== null && { filter: plan.filter }),
      outputs: [{ path: outPath, options: plan.output }],
      limits: plan.limits,
      expectMs: plan.durationMs,
      onProgress: ({ percent }) => onShare?.(percent / 100),
      signal,
    })
  } finally {
    await rm(list, { force: true })
  }
  return openRecording(found, outPath, { silent: true, signal })
}

/** Sum of the coder's header of the picture; ffprobe calls it extradata. */
async function sumCodec(
  found: Ffmpeg,
  path: string,
  { video }: OpenedRecording,
  signal: AbortSignal | undefined,
): Promise<string> {
  const what = ['-select_streams', String(video.index), '-show_data_hash', 'sha256']
  const shown = ['-show_entries', 'stream=extradata_hash', '-of', 'csv=p=0']
  const args = ['-v', 'error', ...RECORDING_GUARDS, ...what, ...shown, fileName(path)]
  const { stdout } = await runProcess(found.ffprobe, args, { timeoutMs: 30_000, maxOutputBytes: 100_000, signal })
  return stdout.trim()
}
