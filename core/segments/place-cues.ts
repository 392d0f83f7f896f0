/** Which segment a moment belongs to, and which cues lie outside their own segment's spans. */
import type { Cue, LogSheet, Segment } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'

/** True when the moment lies in one of the segment's spans, in the clip or not. */
export function holdsMoment(segment: Pick<Segment, 'spans'>, ms: Ms): boolean {
  return segment.spans.some((span) => span.startMs <= ms && ms < span.endMs)
}

/** The segment that teaches at this moment; a declined one only when no other does. Null = none. */
export function segmentAt(sheet: Pick<LogSheet, 'segments'>, ms: Ms): Segment | null {
  const there = sheet.segments.filter((segment) => holdsMoment(segment, ms))
  return there.find((segment) => segment.state !== 'declined') ?? there[0] ?? null
}

/** The cues said outside every span of their segment, as after an edge was moved; declined ones do not count. */
export function cuesOutside(segment: Pick<Segment, 'spans' | 'cues'>): Cue[] {
  return segment.cues.filter((cue) => cue.state !== 'declined' && !holdsMoment(segment, cue.startMs))
}
