/** Opens a recording: looks into it, accepts or refuses it, and lists its frames. */
import { acceptFrames, acceptRecording } from '../accept-recording.ts'
import type { AcceptedRecording } from '../accept-recording.ts'
import type { Ms } from '../../../shared/time.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { indexFrames, probeFile } from './probe-file.ts'
import type { IndexedFrames } from './probe-file.ts'

export interface OpenedRecording extends AcceptedRecording {
  path: string
  index: IndexedFrames
  /** To the end of picture or sound, whichever is later. */
  durationMs: Ms
}

/**
 * @param options.silent true allows a recording without sound.
 * @param options.soundTrack which of its sound tracks is used, from 1; without it the default one.
 * @throws AppError file-missing, recording-empty, recording-format, recording-broken, recording-no-picture,
 * recording-no-sound, engine-timeout, engine-cancelled.
 */
export async function openRecording(
  found: Ffmpeg,
  path: string,
  options: { silent?: boolean | undefined; soundTrack?: number | undefined; signal?: AbortSignal | undefined } = {},
): Promise<OpenedRecording> {
  const probe = await probeFile(found, path, options.signal)
  const accepted = acceptRecording(probe, { silent: options.silent === true, soundTrack: options.soundTrack })
  const { video, audio } = accepted
  const { clockStartSeconds } = probe
  const index = await indexFrames(found, path, { ...video, clockStartSeconds }, options.signal)
  // only where the picture's own length is not told must the sound say where the recording ends
  const sound =
    audio && video.durationMs === null
      ? await indexFrames(found, path, { ...audio, clockStartSeconds }, options.signal)
      : null
  acceptFrames(accepted, index, sound?.endMs ?? null)
  return { ...accepted, path, index, durationMs: Math.round(Math.max(index.endMs, probe.durationMs ?? 0)) }
}
