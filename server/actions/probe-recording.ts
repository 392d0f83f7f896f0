/** Looks into a recording: its length, picture and sound. */
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { openRecording, type OpenedRecording } from '../../core/media/engine/open-recording.ts'

/** @throws AppError recording-*, file-missing, ffmpeg-missing */
export async function probeRecording(path: string): Promise<OpenedRecording> {
  return openRecording(await findFfmpeg(), path, { silent: true })
}
