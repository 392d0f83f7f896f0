/** Puts the picture of a recording into an MP4 as it is: nothing is decoded. */
import type { Ffmpeg } from './find-ffmpeg.ts'
import type { OpenedRecording } from './open-recording.ts'
import { runFfmpeg } from './run-ffmpeg.ts'

export interface RemuxJob {
  recording: OpenedRecording
  outPath: string
  /** Size of the recording. */
  bytes: number
  signal?: AbortSignal | undefined
}

/** @throws AppError as runFfmpeg. */
export async function remuxPicture(found: Ffmpeg, { recording, outPath, bytes, signal }: RemuxJob): Promise<void> {
  const { video, path, durationMs } = recording
  const seconds = Math.round(300 + durationMs / 1000)
  await runFfmpeg(found, {
    doing: 'Putting the picture into MP4',
    inputs: [{ path, options: ['-an', '-sn', '-dn'] }],
    outputs: [
      { path: outPath, options: ['-map', `0:${video.index}`, '-c', 'copy', '-fflags', '+bitexact', '-f', 'mp4'] },
    ],
    limits: { timeoutMs: seconds * 1000, cpuSeconds: seconds, maxBytes: bytes * 2 + 10_000_000 },
    expectMs: durationMs,
    signal,
  })
}
