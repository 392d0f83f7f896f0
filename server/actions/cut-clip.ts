/** Cuts one clip as planned: kept if it is already there and right, else cut, checked, named; then its still. */
import { copyFile, readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { checkClip } from '../../core/media/check-clip.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { hashFile, hashText } from '../../core/media/engine/hash-file.ts'
import { makePoster } from '../../core/media/engine/make-poster.ts'
import { indexFrames, probeFile } from '../../core/media/engine/probe-file.ts'
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
  const names = clipNames(plan)
  const clips = join(context.folder.outDir, 'clips')
  const clipPath = join(clips, names.clip)
  const reused = await keepEarlier(context, plan, names, clipPath)
  if (!reused) await cutAnew(context, plan, names, clipPath, onPercent)
  const posterPath = join(clips, names.poster)
  if (!(await hasBytes(posterPath))) await makeStill(context, plan, clipPath, posterPath)
  return {
    segmentId: plan.segmentId,
    name: plan.name,
    file: `clips/${names.clip}`,
    poster: `clips/${names.poster}`,
    sha256: await hashFile(clipPath, { signal: context.signal }),
    bytes: (await stat(clipPath)).size,
    frames: plan.frames,
    durationMs: plan.durationMs,
    spans: plan.spans,
    method: plan.method,
    why: plan.why,
    loudness: context.loudness && plan.loudness,
    reused,
  }
}

/** True when the very clip is there: under its name, or under another name of the same exercise and then copied. */
async function keepEarlier(context: CutContext, plan: ClipPlan, names: ClipNames, clipPath: string): Promise<boolean> {
  if (await isRight(context, plan, clipPath)) return true
  const clips = join(context.folder.outDir, 'clips')
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

async function cutAnew(
  context: CutContext,
  plan: ClipPlan,
  names: ClipNames,
  clipPath: string,
  onPercent: (percent: number) => void,
): Promise<void> {
  const { video } = context.recording
  const part = context.folder.partPath(names.id)
  await runFfmpeg(context.found, {
    doing: `Cutting "${plan.name}"`,
    inputs: plan.command.inputs.map(({ options }) => ({ path: context.recordingPath, options })),
    filter: plan.command.filter,
    outputs: [{ path: part, options: plan.command.output }],
    limits: clipLimits(plan.durationMs, video.width * video.height),
    expectMs: plan.durationMs,
    onProgress: (progress) => onPercent(Math.min(99, progress.percent)),
    signal: context.signal,
  })
  const wrong = await findWrong(context, plan, part)
  if (wrong.length > 0) {
    await rm(part, { force: true })
    throw new AppError(
      'clip-wrong',
      `The clip of "${plan.name}" is not what was planned and was thrown away: ${wrong.join('; ')}. The recording may be damaged there; export it again as MP4.`,
      { details: wrong },
    )
  }
  await publishPart(part, clipPath)
}

async function isRight(context: CutContext, plan: ClipPlan, path: string): Promise<boolean> {
  if (!(await hasBytes(path))) return false
  return (await findWrong(context, plan, path)).length === 0
}

async function findWrong({ found, recording, signal }: CutContext, plan: ClipPlan, path: string): Promise<string[]> {
  try {
    const probe = await probeFile(found, path, signal)
    const { video } = probe
    const index = video && (await indexFrames(found, path, { ...video, clockStartSeconds: 0 }, signal))
    return checkClip(plan, probe, index, recording.audio !== null)
  } catch (error) {
    if (signal?.aborted) throw error
    return [`it cannot be read (${(error as Error).message})`]
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
