/** Writes chapters as an ffmetadata file, which ffmpeg reads to put chapters into MP4. */
import type { Chapter } from '../../shared/chapters.ts'
import type { Ms } from '../../shared/time.ts'
import { flattenChapters } from './flatten-chapters.ts'
import { chapterTitle } from './write-chapters-vtt.ts'

/**
 * MP4 knows no nesting and ffmpeg closes gaps in it, so the chapters are flattened first.
 * Source: ffmpeg documentation, "Metadata": = ; # \ and line ends are escaped with a backslash.
 * @param durationMs length of the file, for the end of the last chapter.
 */
export function writeFfmetadata(
  chapters: readonly Chapter[],
  options: { title?: string | null; durationMs?: Ms | null } = {},
): string {
  const head = options.title ? [`title=${escapeValue(chapterTitle(options.title))}`] : []
  const blocks = flattenChapters(chapters, options.durationMs ?? null).map(({ startMs, endMs, title }) =>
    [
      '[CHAPTER]',
      'TIMEBASE=1/1000',
      `START=${startMs}`,
      `END=${endMs}`,
      `title=${escapeValue(chapterTitle(title))}`,
    ].join('\n'),
  )
  return `${[';FFMETADATA1', ...head, ...blocks].join('\n')}\n`
}

function escapeValue(text: string): string {
  return text.replace(/[=;#\\\n]/g, '\\$&')
}
