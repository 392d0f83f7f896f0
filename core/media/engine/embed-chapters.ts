/** Puts chapters and a title into a finished clip: picture and sound are copied, not encoded. */
import { rm, writeFile } from 'node:fs/promises'
import type { Chapter } from '../../../shared/chapters.ts'
import type { Ms } from '../../../shared/time.ts'
import { writeFfmetadata } from '../../chapters/write-ffmetadata.ts'
import { findFfmpeg } from './find-ffmpeg.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { runFfmpeg } from './run-ffmpeg.ts'

export interface ChaptersJob {
  clipPath: string
  /** Times from the clip's start. */
  chapters: readonly Chapter[]
  title?: string | null
  /** Length of the clip, for the end of the last chapter where it says none. */
  durationMs?: Ms | null
  /** A new file; the chapter text lies beside it, `.part` added, while ffmpeg runs. */
  outPath: string
  signal?: AbortSignal | undefined
  /** Found by search when not given. */
  found?: Ffmpeg
}

/** Writes the new file; the clip stays as it is. @throws AppError as runFfmpeg; ffmpeg-missing. */
export async function embedChapters(job: ChaptersJob): Promise<void> {
  const found = job.found ?? (await findFfmpeg())
  const textPath = `${job.outPath}.chapters.part`
  const { title = null, durationMs = null } = job
  await writeFile(textPath, closeLines(writeFfmetadata(job.chapters, { title, durationMs })), 'utf8')
  try {
    await runFfmpeg(found, {
      doing: 'Putting the chapters in',
      inputs: [
        { path: job.clipPath, options: [] },
        { path: textPath, options: [], kind: 'chapters' },
      ],
      outputs: [{ path: job.outPath, options: OUTPUT }],
      limits: { timeoutMs: 600_000, cpuSeconds: 600, maxBytes: 20_000_000_000 },
      expectMs: durationMs ?? 0,
      signal: job.signal,
    })
  } finally {
    await rm(textPath, { force: true })
  }
}

const OUTPUT: readonly string[] = [
  ...['-map', '0:v:0', '-map', '0:a?', '-map_metadata', '1', '-map_chapters', '1', '-c', 'copy'],
  ...['-fflags', '+bitexact', '-movflags', '+faststart', '-f', 'mp4'],
]

/** ffmpeg (5.1) takes a line that ends in an escaped backslash for one that goes on; a blank at its end prevents that. */
function closeLines(text: string): string {
  return text.replace(/\\\\$/gm, '$& ')
}
