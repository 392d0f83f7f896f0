/** Lays sound that was recorded apart under a film in place of its own, where it belongs by ear or where it is told to. */
import { rm } from 'node:fs/promises'
import { AppError } from '../../../shared/errors.ts'
import type { Ms } from '../../../shared/time.ts'
import { alignSound } from '../align-sound.ts'
import type { Alignment } from '../align-sound.ts'
import { planSoundSwap } from '../plan-sound.ts'
import type { AudioStream } from '../read-probe.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { SOUND_GUARDS } from './guard-input.ts'
import { openRecording } from './open-recording.ts'
import type { OpenedRecording } from './open-recording.ts'
import { probeSound } from './probe-file.ts'
import { measureSound } from './run-analysis.ts'
import type { PassOptions } from './run-analysis.ts'
import { runFfmpeg } from './run-ffmpeg.ts'

export interface SoundFile {
  path: string
  audio: AudioStream
  durationMs: Ms
}

/** Opens WAV, MP3, FLAC, M4A and others. @throws AppError as probeSound */
export async function openSound(found: Ffmpeg, path: string, signal?: AbortSignal): Promise<SoundFile> {
  const probe = await probeSound(found, path, signal)
  if (!probe.audio) throw new AppError('recording-no-sound', 'The file holds no sound.')
  return { path, audio: probe.audio, durationMs: probe.durationMs ?? 0 }
}

/**
 * Compares the sound with the film's own.
 * @throws AppError sound-not-matching; as measureSound
 */
export async function findPlace(
  found: Ffmpeg,
  film: OpenedRecording,
  sound: SoundFile,
  { signal, onShare }: PassOptions = {},
): Promise<Alignment> {
  const { path, audio, durationMs } = film
  if (!audio) {
    throw new AppError(
      'sound-not-matching',
      'The film has no sound of its own to compare with. Write into the log sheet where the other sound begins (media, startMs).',
    )
  }
  const half = (from: number) => (share: number) => onShare?.(from + share / 2)
  const own = await measureSound(found, { path, audio, durationMs }, { signal, onShare: half(0) })
  const other = await measureSound(found, sound, { signal, onShare: half(0.5) })
  const place = alignSound(own.levels, other.levels)
  if (place) return place
  throw new AppError(
    'sound-not-matching',
    'The sound recorded apart is not heard in the film. Give the one of this class, or write into the log sheet where it begins (media, startMs).',
  )
}

/**
 * Writes a film with the picture copied and the other sound without loss.
 * @param outPath what lies there is replaced; on any error nothing is left
 * @throws AppError as runFfmpeg and openRecording; recording-broken when frames moved
 */
export async function laySound(
  found: Ffmpeg,
  film: OpenedRecording,
  sound: SoundFile,
  place: Pick<Alignment, 'startMs' | 'driftPpm'>,
  outPath: string,
  { signal, onShare }: PassOptions = {},
): Promise<OpenedRecording> {
  const { filter, output, limits } = planSoundSwap(film, sound.audio, place)
  try {
    await runFfmpeg(found, {
      doing: 'Laying the other sound under the film',
      inputs: [
        { path: film.path, options: [] },
        { path: sound.path, options: [...SOUND_GUARDS, '-vn'] },
      ],
      filter,
      outputs: [{ path: outPath, options: output }],
      limits,
      expectMs: film.durationMs,
      onProgress: ({ percent }) => onShare?.(percent / 100),
      signal,
    })
    const made = await openRecording(found, outPath, { signal })
    if (isSamePicture(film, made)) return made
    throw new AppError(
      'recording-broken',
      'The picture moved while the other sound was laid under it. Export the film again as MP4, then try again.',
    )
  } catch (error) {
    await rm(outPath, { force: true })
    throw error
  }
}

/** Half a tick of the coarsest clock and some. */
const TOLERANCE_MS = 1

function isSamePicture(film: OpenedRecording, made: OpenedRecording): boolean {
  const [before, after] = [film.index.frames, made.index.frames]
  if (before.length !== after.length || film.video.rotation !== made.video.rotation) return false
  return before.every(({ atMs }, frame) => Math.abs(atMs - (after[frame]?.atMs ?? NaN)) <= TOLERANCE_MS)
}
