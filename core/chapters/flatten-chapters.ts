/** Makes one row of chapters out of nested ones: no gaps, no overlap, for places that cannot nest. */
import type { Chapter } from '../../shared/chapters.ts'
import type { Ms } from '../../shared/time.ts'
import { sortCues } from '../captions/write-vtt.ts'

/** A moment before the first chapter gets a chapter of its own only when it is at least this long. */
const SHORTEST_OPENING_MS = 1000

/**
 * From 0 to the end: each chapter lasts until the next starts. Where an exercise starts together with its section,
 * the exercise gives the title; what follows the last exercise of a section counts to that exercise.
 */
export function flattenChapters(chapters: readonly Chapter[], durationMs: Ms | null = null): Chapter[] {
  const sorted = sortCues(chapters)
  const starts: Chapter[] = []
  for (const chapter of sorted) {
    if (starts.at(-1)?.startMs === chapter.startMs) starts.pop()
    starts.push(chapter)
  }
  const first = starts[0]
  if (!first) return []
  const lastEnd = sorted.reduce((latest, chapter) => Math.max(latest, chapter.endMs), 0)
  const endMs = Math.max(lastEnd, durationMs ?? 0)
  if (first.startMs >= SHORTEST_OPENING_MS) starts.unshift({ ...first, startMs: 0, title: 'Start' })
  else starts[0] = { ...first, startMs: 0 }
  return starts.map(({ startMs, title }, index) => ({
    startMs,
    endMs: starts[index + 1]?.startMs ?? endMs,
    title,
    level: 1,
  }))
}
