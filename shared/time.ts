/** Times: whole milliseconds inside, clock text for people. */
import { z } from 'zod'

export { formatClock, formatClockMs, parseClock } from './clock.ts'

/** Whole milliseconds from the start of the recording (or of the clip, where a name says so). */
export type Ms = number
export const Ms = z.number().int().nonnegative()

/** A half-open stretch of time: startMs is in, endMs is out. */
export interface Stretch {
  startMs: Ms
  endMs: Ms
}

/** The overlap of two stretches in ms; 0 when they only touch. */
export function overlapMs(a: Stretch, b: Stretch): Ms {
  return Math.max(0, Math.min(a.endMs, b.endMs) - Math.max(a.startMs, b.startMs))
}
