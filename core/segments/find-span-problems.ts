/** Finds what makes a segment's spans impossible to cut: empty or misplaced spans and cut-outs. */
import type { Segment } from '../../shared/log-sheet.ts'
import { formatClock, overlapMs } from '../../shared/time.ts'
import type { Ms, Stretch } from '../../shared/time.ts'
import { keptRanges } from './kept-ranges.ts'

/** A span may end this much after the recording and is cut at its end without a word: people round up. */
export const END_TOLERANCE_MS = 500

export interface SpanProblem {
  segmentId: string
  startMs: Ms
  endMs: Ms
  /** What is wrong and what to do. */
  message: string
}

type Spans = Pick<Segment, 'id' | 'spans' | 'cutOuts'>

/**
 * The problems of one segment's spans and cut-outs, in order of finding; [] when it can be cut.
 * @param durationMs how long the recording is, null = not known (then no end is checked).
 */
export function findSpanProblems(segment: Spans, durationMs: Ms | null): SpanProblem[] {
  const problem = (at: Stretch, message: string): SpanProblem => ({
    segmentId: segment.id,
    startMs: at.startMs,
    endMs: at.endMs,
    message,
  })
  if (segment.spans.length === 0) {
    return [problem({ startMs: 0, endMs: 0 }, 'Not placed yet. Give the segment a span of the recording.')]
  }
  const found = [
    ...segment.spans.flatMap((span) => spanMessages(span, durationMs).map((message) => problem(span, message))),
    ...segment.cutOuts.flatMap((cut, index) =>
      cutOutMessages(segment, cut, index).map((message) => problem(cut, message)),
    ),
  ]
  return found.length > 0 ? found : nothingLeft(segment).map(([at, message]) => problem(at, message))
}

function spanMessages(span: Stretch, durationMs: Ms | null): string[] {
  if (span.endMs === span.startMs) return [`The span ${clocks(span)} has no length. Move its end.`]
  if (span.endMs < span.startMs) return [`The span ${clocks(span)} ends before it starts. Swap its ends.`]
  if (durationMs === null) return []
  const end = `the recording ends at ${formatClock(durationMs)}`
  if (span.startMs >= durationMs) return [`The span ${clocks(span)} starts after the end: ${end}. Move it.`]
  if (span.endMs > durationMs + END_TOLERANCE_MS) {
    return [`The span ${clocks(span)} runs past the end: ${end}. Move its end.`]
  }
  return []
}

function cutOutMessages(segment: Spans, cut: Stretch, index: number): string[] {
  if (cut.endMs <= cut.startMs) return [`The cut-out ${clocks(cut)} has no length. Move its end or remove it.`]
  const overlapped = segment.cutOuts.slice(0, index).find((other) => overlapMs(other, cut) > 0)
  return [
    ...(overlapped ? [`The cut-outs ${clocks(overlapped)} and ${clocks(cut)} overlap. Join them into one.`] : []),
    ...(segment.spans.some((span) => overlapMs(span, cut) > 0)
      ? []
      : [`The cut-out ${clocks(cut)} lies outside the spans of its segment. Move or remove it.`]),
  ]
}

function nothingLeft(segment: Spans): [Stretch, string][] {
  if (keptRanges(segment).length > 0) return []
  const inClip = segment.spans.find((span) => span.inClip)
  const first = segment.spans[0] ?? { startMs: 0, endMs: 0 }
  return inClip
    ? [[inClip, 'The cut-outs leave nothing of the segment. Shorten them.']]
    : [[first, 'No span of the segment is in the clip. Put one in.']]
}

function clocks({ startMs, endMs }: Stretch): string {
  return `${clock(startMs)} to ${clock(endMs)}`
}

/** Clock text with the milliseconds where there are any. */
function clock(ms: Ms): string {
  const rest = ms % 1000
  return rest === 0 ? formatClock(ms) : `${formatClock(ms)}.${String(rest).padStart(3, '0')}`
}
