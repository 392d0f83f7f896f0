/** Chooses the frames of the recording that a clip keeps, and when each shows in the clip. */
import type { Ms, Stretch } from '../../shared/time.ts'
import type { FrameIndex, FrameTime } from './read-packets.ts'

/** One kept stretch in whole frames. Times are exact ms of the recording, not rounded. */
export interface FrameRange {
  /** Numbers of the first and the last frame kept, counted from the recording's first frame, 0. */
  firstFrame: number
  lastFrame: number
  /** When the first frame shows: picture and sound of the clip start here. */
  fromMs: number
  /** When the last kept frame shows. */
  lastMs: number
  /** When the last kept frame ends: when the next frame shows, or where the recording ends. */
  toMs: number
  /** Where its sound ends, when the picture goes on a few frames longer; absent = with the picture. */
  soundToMs?: number
  /** The moment halfway to the frame before and to the frame after: cutting there is safe from rounding. */
  cutFromMs: number
  cutToMs: number | null
}

/**
 * The longest a last frame may stand beyond the end that was asked for. Cameras that skip frames
 * leave gaps under this; a longer one is a hole in the recording, and the clip ends where it was told to.
 */
const LONGEST_OVERHANG_MS = 250

/**
 * Chooses whole frames: a frame is kept if its time, rounded to the millisecond, lies in a stretch
 * (start in, end out). A stretch that holds no frame gives no range.
 */
export function chooseFrames(stretches: readonly Stretch[], index: FrameIndex): FrameRange[] {
  return stretches.flatMap((stretch) => {
    const first = firstAtOrAfter(index.frames, stretch.startMs)
    const after = firstAtOrAfter(index.frames, stretch.endMs)
    return after > first ? [frameRange(index, first, after, stretch.endMs)] : []
  })
}

/** When each frame of the ranges shows in the clip: exact ms, the first at 0. */
export function clipTimes(ranges: readonly FrameRange[], index: FrameIndex): number[] {
  const starts = rangeStarts(ranges)
  return ranges.flatMap((range, number) =>
    index.frames
      .slice(range.firstFrame, range.lastFrame + 1)
      .map((frame) => (starts[number] ?? 0) + frame.atMs - range.fromMs),
  )
}

/** Where each range starts in the clip, exact ms. */
export function rangeStarts(ranges: readonly FrameRange[]): number[] {
  let at = 0
  return ranges.map((range) => {
    const start = at
    at += range.toMs - range.fromMs
    return start
  })
}

/** Number of the first frame that shows at or after a moment, rounded to whole ms; the number of frames when none does. */
export function firstAtOrAfter(frames: readonly FrameTime[], ms: Ms): number {
  let [low, high] = [0, frames.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (Math.round(frames[middle]?.atMs ?? 0) >= ms) high = middle
    else low = middle + 1
  }
  return low
}

/** The range from one frame to the one before another. @param askedEndMs where it would end by the mark. */
export function frameRange(index: FrameIndex, first: number, after: number, askedEndMs: Ms): FrameRange {
  const at = (frame: number) => index.frames[frame]?.atMs
  const [fromMs, lastMs] = [at(first) ?? 0, at(after - 1) ?? 0]
  const nextMs = at(after)
  const beforeMs = at(first - 1)
  const naturalEnd = nextMs ?? index.endMs
  return {
    firstFrame: first,
    lastFrame: after - 1,
    fromMs,
    lastMs,
    toMs: naturalEnd - askedEndMs > LONGEST_OVERHANG_MS ? Math.max(askedEndMs, lastMs + 1) : naturalEnd,
    cutFromMs: beforeMs === undefined ? Math.max(0, fromMs - 1) : (beforeMs + fromMs) / 2,
    cutToMs: nextMs === undefined ? null : (lastMs + nextMs) / 2,
  }
}
