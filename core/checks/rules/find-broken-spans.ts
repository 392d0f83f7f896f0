/** Stops a lesson whose spans cannot be cut; warns of the same in what is kept for later. */
import type { Segment } from '../../../shared/log-sheet.ts'
import { findSpanProblems } from '../../segments/find-span-problems.ts'
import { titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'

export const SPANS_BROKEN: Rule = {
  id: 'spans-broken',
  why: 'A clip can only be cut from spans that lie in the recording and leave something of it.',
  source: 'our own rule of the log sheet',
  waivable: false,
  find: ({ sheet, durationMs }) =>
    sheet.segments
      .filter((segment) => segment.state !== 'declined')
      .flatMap((segment) => problems(segment, durationMs)),
}

function problems(segment: Segment, durationMs: number | null): Found[] {
  if (segment.use === 'leave-out') return []
  return findSpanProblems(segment, durationMs).map(({ startMs, endMs, message }) => ({
    severity: segment.use === 'lesson' ? 'stop' : 'warn',
    segmentId: segment.id,
    at: { startMs, endMs: Math.max(startMs, endMs) },
    message: `${titleOf(segment)}: ${message}`,
  }))
}
