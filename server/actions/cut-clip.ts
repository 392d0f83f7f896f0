/** Cuts one clip as planned: kept if it is already there and right, else cut, checked, named; then its still. */
import { copyFile, readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { checkClip } from '../../core/media/check-clip.ts'
import type { CopiedHashes } from '../../core/media/engine/run-edge-cut.ts'
import { runEdgeCut } from '../../core/media/engine/run-edge-cut.ts'
import { readClipFile, verifyClip } from '../../core/media/engine/verify-clip.ts'
import type { EdgeSource } from '../../core/media/plan-edge-cut.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { hashFile, hashText } from '../../core/media/engine/hash-file.ts'
import { makePoster } from '../../core/media/engine/make-poster.ts'
import { runFfmpeg } from '../../core/media/engine/run-ffmpeg.ts'
import type { AcceptedRecording } from '../../core/media/accept-recording.ts'
import type { ClipPlan } from '../../core/media/plan-cut.ts'
import { clipLimits } from '../../core/media/plan-limits.ts'
import { AppError } from '../../shared/errors.ts'
import type { ClipEntry, Loudness } from '../../shared/manifest.ts'
import { publishPart, writeError } from './cut-work-folder.ts'
import type { WorkFolder } from './cut-work-folder.ts'

/** What all clips of one recording share. */
export interface CutContext {
  found: Ffmpeg
  folder: WorkFolder
  recordingPath: string
  recording: AcceptedRecording
  loudness: Loudness | null
  /** What edge cuts copy from, and the file it lies in; null = there are none. */
  edge: { source: EdgeSource; path: string } | null
  signal?: AbortSignal | undefined
}

/** Names of a plan's files, without folder; the same plan always gives the same. */
export interface ClipNames {
  /** First 16 hex digits of the hash of everything that decides what the clip holds. */
  id: string
  clip: string
  poster: string
}

export function clipNames(plan: ClipPlan): ClipNames {
  const id = hashText(plan.key).slice(0, 16)
  return { id, clip: `${plan.slug}-${id}.mp4`, poster: `${plan.slug}-${id}-${plan.posterFrame}.jpg` }
}

/**
 * Makes the clip and its still, or keeps what an earlier run made.
 * @param onPercent called with 0 to 99 while ffmpeg works.
 * @throws AppError of the engine; clip-wrong when the result is not what the plan says; disk-full.
 */
export async function cutClip(
  context: CutContext,
  plan: ClipPlan,
  onPercent: (percent: number) => void,
): Promise<ClipEntry> {
  const earlier = await keepAny(context, plan)
  const made = earlier ?? (await cutAnew(context, plan, onPercent))
  const names = clipNames(made.plan)
  const clips = join(context.folder.outDir, 'clips')
  const clipPath = join(clips, names.clip)
  const posterPath = join(clips, names.poster)
  if (!(await hasBytes(posterPath))) await makeStill(context, made.plan, clipPath, posterPath)
  return {
    segmentId: plan.segmentId,
    name: plan.name,
    file: `clips/${names.clip}`,
    poster: `clips/${names.poster}`,
    sha256: await hashFile(clipPath, { signal: context.signal }),
    bytes: (await stat(clipPath)).size,
    frames: made.plan.frames,
    durationMs: made.plan.durationMs,
    spans: made.plan.spans,
    method: made.plan.method,
    why: made.why,
    loudness: context.loudness && made.plan.loudness,
    reused: earlier !== null,
  }
}

/** What became of a plan: the plan itself, or the one to fall back on, and why. */
interface Made {
  plan: ClipPlan
  why: string
}

/** A right clip of an earlier run: as planned, else as it would be encoded whole. */
async function keepAny(context: CutContext, plan: ClipPlan): Promise<Made | null> {
  for (const one of [plan, ...(plan.fallback ? [plan.fallback] : [])]) {
    if (await keepEarlier(context, one)) return { plan: one, why: one.why }
  }
  return null
}

/** True when the very clip is there: under its name, or under another name of the same exercise and then copied. */
async function keepEarlier(context: CutContext, plan: ClipPlan): Promise<boolean> {
  const names = clipNames(plan)
  const clips = join(context.folder.outDir, 'clips')
  const clipPath = join(clips, names.clip)
  if (await isRight(context, plan, clipPath)) return true
  const twins = (await readdir(clips)).filter((name) => name.endsWith(`-${names.id}.mp4`) && name !== names.clip)
  for (const twin of twins) {
    if (!(await isRight(context, plan, join(clips, twin)))) continue
    const part = context.folder.partPath(names.id)
    try {
      await copyFile(join(clips, twin), part)
    } catch (cause) {
      await rm(part, { force: true })
      throw writeError(cause, clipPath)
    }
    await publishPart(part, clipPath)
    return true
  }
  return false
}

/** An edge cut that does not come out right is thrown away, and the clip is encoded as a whole. */
async function cutAnew(context: CutContext, plan: ClipPlan, onPercent: (percent: number) => void): Promise<Made> {
  if (!plan.edge || !context.edge || !plan.fallback) {
    await cutOnce(context, plan, onPercent)
    return { plan, why: plan.why }
  }
  try {
    await cutOnce(context, plan, onPercent)
    return { plan, why: plan.why }
  } catch (error) {
    if (!(error instanceof AppError) || !MENDABLE.has(error.code)) throw error
    await cutOnce(context, plan.fallback, onPercent)
    return { plan: plan.fallback, why: `Encoded anew as a whole, since copying failed. ${error.message}` }
  }
}

/** What another way of cutting may mend; a full disk or a wish to stop is none of it. */
const MENDABLE: ReadonlySet<string> = new Set(['clip-wrong', 'engine-failed', 'recording-broken', 'recording-format'])

async function cutOnce(context: CutContext, plan: ClipPlan, onPercent: (percent: number) => void): Promise<void> {
  const { found, folder, recordingPath, recording, signal } = context
  const names = clipNames(plan)
  const part = folder.partPath(names.id)
  const run = plan.edge && context.edge ? runEdge : runFull
  const copied = await run(context, plan, part, onPercent)
  const partPath = (label: string): string => folder.partPath(`${names.id}-${label}`)
  const job = { plan, clipPath: part, recordingPath, recording, copied, partPath, signal }
  const wrong = await verifyClip(found, job).catch((error: unknown) => {
    if (signal?.aborted) throw error
    return [`it cannot be read (${(error as Error).message})`]
  })
  if (wrong.length > 0) {
    await rm(part, { force: true })
    throw new AppError(
      'clip-wrong',
      `The clip of "${plan.name}" is not what was planned and was thrown away: ${wrong.join('; ')}. The recording may be damaged there; export it again as MP4.`,
      { details: wrong },
    )
  }
  await publishPart(part, join(folder.outDir, 'clips', names.clip))
}

async function runEdge(
  { found, folder, recordingPath, recording, edge, signal }: CutContext,
  plan: ClipPlan,
  part: string,
  onPercent: (percent: number) => void,
): Promise<CopiedHashes> {
  const { video } = recording
  if (!plan.edge || !edge) return new Map()
  return runEdgeCut(found, {
    doing: `Cutting "${plan.name}"`,
    ...{ recordingPath, source: edge.source, sourcePath: edge.path, outPath: part, signal },
    ...{ plan: plan.edge.plan, command: plan.edge.command },
    partPath: (label) => folder.partPath(`${clipNames(plan).id}-${label}`),
    limits: clipLimits(plan.durationMs, video.width * video.height),
    expectMs: plan.durationMs,
    onProgress: (progress) => onPercent(Math.min(99, progress.percent)),
  }).catch((error: unknown) => {
    if (error instanceof AppError) throw error
    throw writeError(error, part)
  })
}

async function runFull(
  { found, recordingPath, recording, signal }: CutContext,
  plan: ClipPlan,
  part: string,
  onPercent: (percent: number) => void,
): Promise<CopiedHashes> {
  const { video } = recording
  await runFfmpeg(found, {
    doing: `Cutting "${plan.name}"`,
    inputs: plan.command.inputs.map(({ options }) => ({ path: recordingPath, options })),
    filter: plan.command.filter,
    outputs: [{ path: part, options: plan.command.output }],
    limits: clipLimits(plan.durationMs, video.width * video.height),
    expectMs: plan.durationMs,
    onProgress: (progress) => onPercent(Math.min(99, progress.percent)),
    signal,
  })
  return new Map()
}

async function isRight({ found, recording, signal }: CutContext, plan: ClipPlan, path: string): Promise<boolean> {
  if (!(await hasBytes(path))) return false
  try {
    return checkClip(plan, await readClipFile(found, path, false, signal), recording.audio !== null).length === 0
  } catch (error) {
    if (signal?.aborted) throw error
    return false
  }
}

async function makeStill(context: CutContext, plan: ClipPlan, clipPath: string, posterPath: string): Promise<void> {
  const part = context.folder.partPath('still')
  const at = plan.frameTimesMs[plan.posterFrame] ?? 0
  const before = plan.frameTimesMs[plan.posterFrame - 1] ?? at
  await makePoster(context.found, { clipPath, atMs: (before + at) / 2, outPath: part, signal: context.signal })
  if (!(await hasBytes(part))) {
    await rm(part, { force: true })
    throw new AppError('clip-wrong', `No still could be made of "${plan.name}". Cut it again.`)
  }
  await publishPart(part, posterPath)
}

async function hasBytes(path: string): Promise<boolean> {
  return ((await stat(path).catch(() => null))?.size ?? 0) > 0
}
