/** Warns of two exercises that share a stretch of the recording. */
import type { Segment, Span } from '../../../shared/log-sheet.ts'
import { formatClock, overlapMs } from '../../../shared/time.ts'
import { titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'

export const SEGMENTS_OVERLAP: Rule = {
  id: 'segments-overlap',
  why: 'Two clips that share a stretch each show a piece of the other exercise.',
  source: 'our own rule of the log sheet',
  waivable: true,
  find: ({ sheet }) => {
    const placed = sheet.segments
      .filter((segment) => segment.state !== 'declined' && segment.use !== 'leave-out')
      .flatMap((segment) => segment.spans.map((span) => ({ segment, span })))
      .toSorted((a, b) => a.span.startMs - b.span.startMs)
    return placed.flatMap((one, index) => overlapsOf(one, placed.slice(index + 1)))
  },
}

interface Placed {
  segment: Segment
  span: Span
}

/** Sorted by start, so the search ends at the first span that starts after this one's end. */
function overlapsOf(one: Placed, later: readonly Placed[]): Found[] {
  const found: Found[] = []
  for (const other of later) {
    if (other.span.startMs >= one.span.endMs) break
    if (other.segment.id === one.segment.id || overlapMs(one.span, other.span) === 0) continue
    const startMs = other.span.startMs
    const endMs = Math.min(one.span.endMs, other.span.endMs)
    found.push({
      severity: 'warn',
      segmentId: other.segment.id,
      at: { startMs, endMs },
      message: `${titleOf(other.segment)}: ${formatClock(startMs)} to ${formatClock(endMs)} is also part of ${one.segment.exercise.name}. Move an edge.`,
    })
  }
  return found
}
