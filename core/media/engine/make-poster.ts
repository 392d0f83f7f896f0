/** Makes a still of a clip: one frame as a JPEG. */
import type { Ffmpeg } from './find-ffmpeg.ts'
import { runFfmpeg } from './run-ffmpeg.ts'

export interface PosterJob {
  clipPath: string
  /** A moment within the frame wanted, or up to one frame before it; ms of the clip. */
  atMs: number
  outPath: string
  /** Crops and scales; made by us. */
  filter?: string
  signal?: AbortSignal | undefined
}

/** Writes the first frame that shows at or after the moment. @throws AppError as runFfmpeg. */
export async function makePoster(found: Ffmpeg, job: PosterJob): Promise<void> {
  await runFfmpeg(found, {
    doing: 'Making the still',
    inputs: [{ path: job.clipPath, options: ['-ss', (Math.max(0, job.atMs) / 1000).toFixed(6)] }],
    // the mjpeg format writes one plain JPEG; the image format would read a pattern into the name
    outputs: [
      {
        path: job.outPath,
        options: [
          '-map',
          '0:v:0',
          ...(job.filter === undefined ? [] : ['-vf', job.filter]),
          '-frames:v',
          '1',
          '-c:v',
          'mjpeg',
          '-q:v',
          '3',
          '-fflags',
          '+bitexact',
          '-f',
          'mjpeg',
        ],
      },
    ],
    limits: { timeoutMs: 60_000, cpuSeconds: 60, maxBytes: 50_000_000 },
    expectMs: 0,
    signal: job.signal,
  })
}
