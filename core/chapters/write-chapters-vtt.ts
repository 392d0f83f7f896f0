/** Writes chapters as a WebVTT file for a track of kind "chapters". */
import type { Chapter } from '../../shared/chapters.ts'
import { AppError } from '../../shared/errors.ts'
import { plainLines, sortCues, writeVtt } from '../captions/write-vtt.ts'

/**
 * Nested chapters stay nested; titles are plain text on one line.
 * Source: WebVTT, W3C, sections "WebVTT chapter cues", "WebVTT file using only nested cues", "WebVTT chapter title text".
 * @throws AppError internal when two chapters overlap in part.
 */
export function writeChaptersVtt(chapters: readonly Chapter[]): string {
  const sorted = sortCues(chapters)
  checkNesting(sorted)
  return writeVtt(
    sorted.map(({ startMs, endMs, title }, index) => ({
      startMs,
      endMs,
      lines: [chapterTitle(title)],
      id: `chapter-${index + 1}`,
    })),
  )
}

/** The title on one line, never empty. */
export function chapterTitle(title: string): string {
  return plainLines(title).join(' ').replace(/\s+/g, ' ') || 'Chapter'
}

function checkNesting(sorted: readonly Chapter[]): void {
  const open: Chapter[] = []
  for (const chapter of sorted) {
    while (open.length > 0 && (open.at(-1)?.endMs ?? 0) <= chapter.startMs) open.pop()
    const around = open.at(-1)
    if (around && around.endMs < chapter.endMs) {
      throw new AppError('internal', `The chapters "${around.title}" and "${chapter.title}" overlap in part.`)
    }
    open.push(chapter)
  }
}
