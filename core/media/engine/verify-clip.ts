/** Verifies a finished clip: what ffprobe reads of it, strict decoding of its head and what follows, its sound beside the recording's. */
import { readFile, rm } from 'node:fs/promises'
import type { AcceptedRecording } from '../accept-recording.ts'
import { checkClip } from '../check-clip.ts'
import { compareSound, isOtherSound } from '../compare-sound.ts'
import type { ClipPlan } from '../plan-cut.ts'
import { verifyLimits } from '../plan-limits.ts'
import { planVerify } from '../plan-verify.ts'
import { clipQuestions, readClip } from '../read-clip.ts'
import type { ClipFacts } from '../read-clip.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { askFfprobe } from './probe-file.ts'
import { runFfmpeg } from './run-ffmpeg.ts'

export interface VerifyJob {
  plan: ClipPlan
  clipPath: string
  recordingPath: string
  recording: AcceptedRecording
  /** MD5 of the copied packets. */
  copied: ReadonlyMap<number, string>
  partPath: (label: string) => string
  signal?: AbortSignal | undefined
}

/** The sound may be late or early by this: under half a frame at 60 a second. */
const SOUND_OFFSET_MS = 5

/**
 * What is wrong with the clip, [] when nothing is.
 * @throws AppError engine-cancelled, engine-timeout.
 */
export async function verifyClip(found: Ffmpeg, job: VerifyJob): Promise<string[]> {
  const { plan, recording, clipPath, copied, signal } = job
  const facts = await readClipFile(found, clipPath, copied.size > 0, signal)
  const wrong = checkClip(plan, facts, recording.audio !== null, copied)
  return wrong.length > 0 ? wrong : decodeParts(found, job)
}

/** @param hashed true also hashes every packet. @returns null when it is no clip. @throws AppError as probeFile */
export async function readClipFile(
  found: Ffmpeg,
  path: string,
  hashed: boolean,
  signal?: AbortSignal,
): Promise<ClipFacts | null> {
  return readClip(await askFfprobe(found, path, clipQuestions(hashed), signal))
}

async function decodeParts(found: Ffmpeg, job: VerifyJob): Promise<string[]> {
  const { plan, recording, clipPath, recordingPath, partPath, signal } = job
  const { frames, pictureOutput, sound } = planVerify(plan, recording)
  const parts = { picture: partPath('frames'), sound: partPath('compared') }
  const clip = (options: string[]) => ({ path: clipPath, options: [...STRICT, ...options] })
  try {
    await runFfmpeg(found, {
      doing: `Checking "${plan.name}"`,
      inputs: [
        clip(['-an']),
        ...(sound ? [clip(['-vn']), { path: recordingPath, options: sound.recordingOptions }] : []),
      ],
      ...(sound && { filter: sound.filter }),
      outputs: [
        { path: parts.picture, options: pictureOutput },
        ...(sound ? [{ path: parts.sound, options: sound.output }] : []),
      ],
      limits: verifyLimits(plan.durationMs),
      expectMs: 0,
      signal,
    })
    const lines = (await readFile(parts.picture, 'utf8')).split('\n').filter((line) => /^\d/.test(line))
    return [
      ...(lines.length === frames ? [] : [`${lines.length} of its first ${frames} frames can be decoded`]),
      ...(sound ? compareParts(await readFile(parts.sound)) : []),
    ]
  } catch (error) {
    if (signal?.aborted) throw error
    return [`it cannot be decoded (${(error as Error).message})`]
  } finally {
    for (const part of Object.values(parts)) await rm(part, { force: true })
  }
}

/** Any fault of the stream is an error, not something to be mended. */
const STRICT = ['-xerror', '-err_detect', 'explode', '-threads', '1']

/** Samples of clip and recording take turns. */
function compareParts(bytes: Buffer): string[] {
  const count = Math.floor(bytes.length / 4)
  const clip = new Int16Array(count)
  const recording = new Int16Array(count)
  for (let sample = 0; sample < count; sample += 1) {
    clip[sample] = bytes.readInt16LE(sample * 4)
    recording[sample] = bytes.readInt16LE(sample * 4 + 2)
  }
  const found = compareSound(clip, recording)
  if (!found) return []
  if (isOtherSound(found)) return ['its sound is not that of the recording']
  return Math.abs(found.lagMs) > SOUND_OFFSET_MS ? [`its sound is ${found.lagMs.toFixed(1)} ms off`] : []
}
