/** Moves in-points that nobody holds to the cheapest frame of the pause they lie in, so that less must be encoded. */
import type { Segment, Span } from '../../shared/log-sheet.ts'
import type { Ms, Stretch } from '../../shared/time.ts'
import { keptRanges } from '../segments/kept-ranges.ts'
import { firstAtOrAfter } from './choose-frames.ts'
import { isCleanKey } from './plan-edge-cut.ts'
import type { EdgeSource } from './plan-edge-cut.ts'
import type { FrameIndex } from './read-packets.ts'

/** How far an in-point moves at most: more silence before, or less of what is shown in silence. Our own choice. */
const EARLIER_MS = 1500
const LATER_MS = 1000
/** Kept from the speech before the pause, and from the speech after it: soft consonants begin before speech is found. */
const AFTER_SPEECH_MS = 120
const BEFORE_SPEECH_MS = 200
/** A move that spares fewer frames than this is not worth it. */
const LEAST_FRAMES = 10

export interface FreeChoice {
  /** What is kept, in order, with moved starts. */
  ranges: Stretch[]
  /** By how much each in-point moved, ms; negative = earlier. Only those that did. */
  moves: { movedMs: Ms; frames: number }[]
}

/**
 * Only the start of a span moves, and only when it lies in a pause, is not locked, and no person set the spans of the
 * segment. The end of a cut-out stays: what comes before it was taken out on purpose.
 * @param pauses in order.
 */
export function freeInPoints(
  segment: Segment,
  index: FrameIndex,
  source: EdgeSource,
  pauses: readonly Stretch[],
): FreeChoice {
  const kept = keptRanges(segment)
  const moves: FreeChoice['moves'] = []
  const held = segment.setByPerson.includes('spans')
  const ranges = kept.map((range, number) => {
    const span = segment.spans.find((one) => one.inClip && one.startMs === range.startMs)
    const window = span && !held ? windowOf(span, range, pauses, kept[number - 1]?.endMs ?? 0) : null
    const startMs = window ? cheapest(index, source, range, window) : range.startMs
    if (startMs === range.startMs) return range
    const frames = headFrames(index, source, range.startMs) - headFrames(index, source, startMs)
    moves.push({ movedMs: startMs - range.startMs, frames })
    return { startMs, endMs: range.endMs }
  })
  return { ranges, moves }
}

/** Where the in-point may lie; null when it may not move. */
function windowOf(span: Span, range: Stretch, pauses: readonly Stretch[], earliestMs: Ms): Stretch | null {
  const { startMs } = range
  const pause = pauses.find((one) => one.startMs <= startMs && startMs < one.endMs)
  if (span.lockedIn || !pause) return null
  const from = Math.max(pause.startMs + AFTER_SPEECH_MS, startMs - EARLIER_MS, earliestMs)
  const to = Math.min(pause.endMs - BEFORE_SPEECH_MS, startMs + LATER_MS, range.endMs - 1)
  return { startMs: Math.min(from, startMs), endMs: Math.max(to, startMs) }
}

/** The frame with the fewest frames to the next key frame; of equal ones the nearest to the mark. */
function cheapest(index: FrameIndex, source: EdgeSource, { startMs }: Stretch, window: Stretch): Ms {
  const now = headFrames(index, source, startMs)
  const first = firstAtOrAfter(index.frames, window.startMs)
  const after = firstAtOrAfter(index.frames, window.endMs + 1)
  let best = { startMs, frames: now - LEAST_FRAMES }
  for (let frame = first; frame < after; frame += 1) {
    const ms = Math.round(index.frames[frame]?.atMs ?? 0)
    const frames = headFrames(index, source, ms)
    const nearer = Math.abs(ms - startMs) < Math.abs(best.startMs - startMs)
    if (frames < best.frames || (frames === best.frames && nearer)) best = { startMs: ms, frames }
  }
  return best.startMs
}

/** Frames from a moment to the next key frame. */
function headFrames(index: FrameIndex, source: EdgeSource, ms: Ms): number {
  const first = firstAtOrAfter(index.frames, ms)
  let frame = first
  while (frame < index.frames.length && !isCleanKey(source, index, frame)) frame += 1
  return frame - first
}
