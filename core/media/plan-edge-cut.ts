/**
 * Plans an edge cut: only the pictures from the in-point to the next key frame are encoded, the rest is copied as it is.
 * Says why where a recording or a stretch does not allow it.
 */
import type { AcceptedRecording } from './accept-recording.ts'
import { frameRange } from './choose-frames.ts'
import type { FrameRange } from './choose-frames.ts'
import { freeSetId } from './h264/parameter-sets.ts'
import type { AvcConfig } from './h264/parameter-sets.ts'
import { planPicture } from './plan-picture.ts'
import type { FrameIndex, PacketPlace } from './read-packets.ts'

/** What the copied pictures come from: an MP4 that holds H.264, and where in it every packet lies. */
export interface EdgeSource {
  /** The sample entry avc1, whole. */
  entry: Uint8Array
  config: AvcConfig
  matrix: Uint8Array
  shownSize: Uint8Array
  /** Ticks a second of `packets`. */
  timescale: number
  /** In decode order. */
  packets: readonly PacketPlace[]
  /** Place in `packets` of each frame of the index. */
  shown: readonly number[]
}

/** One kept range. Packets are counted in decode order, frames by their ticks in the recording. */
export interface EdgePart {
  /** Ticks at which the frames to encode show; empty when the range starts on a key frame. */
  headTicks: number[]
  /** Packets to decode for the head: from the key frame before it; first and first behind. */
  decode: { from: number; to: number }
  /** Packets to copy; none when the range holds no key frame. */
  copy: { from: number; to: number }
  /** Ticks of the first frame, and ticks that the range lasts. */
  fromTicks: number
  lengthTicks: number
}

export interface EdgePlan {
  parts: EdgePart[]
  /** What the clip keeps: the end of a range may lie a few frames later, where pictures can be parted. */
  ranges: FrameRange[]
  headFrames: number
  /** Parameter set id of the encoded pictures, free in the recording. */
  setId: number
}

export type EdgeChoice = { plan: EdgePlan; why: string } | { plan: null; why: string }

/** A range may end this much later than asked. */
export const LATEST_END_MS = 150
/** From this share of encoded frames on, encoding all is simpler and costs about the same. */
const MOST_ENCODED = 0.6
/** Pictures are reordered by at most 16 (ITU-T H.264, annex A: the greatest DPB), so nothing later lies further off. */
const REORDER = 17

/** Why no clip of the recording can be cut so, or null. */
export function whyNoEdge({ video, probe }: AcceptedRecording, index: FrameIndex): string | null {
  if (video.codec !== 'h264') return `the picture is ${video.codec}, not H.264`
  if (video.interlaced) return 'the picture comes in half frames'
  if (video.pixelFormat !== 'yuv420p' || planPicture(video).done.length > 0) {
    return `the picture is ${video.pixelFormat}, not 8-bit 4:2:0 in the colours of BT.709`
  }
  if (video.width % 2 === 1 || video.height % 2 === 1) return 'the picture has an odd side'
  if (index.withoutTime > 0 || index.sameTime > 0) return 'frames lack a time of their own'
  if (probe.formatNames.includes('mpegts') && index.jumpsAtMs.length > 0) return 'the clock of the file jumps'
  return null
}

/** Plans the ranges of one clip. */
export function planEdgeCut(source: EdgeSource, index: FrameIndex, ranges: readonly FrameRange[]): EdgeChoice {
  const setId = freeSetId(source.config)
  if (setId === null) return { plan: null, why: 'all parameter set ids are taken' }
  if (source.config.lengthBytes !== 4) return { plan: null, why: 'its units have short lengths' }
  const parts: EdgePart[] = []
  const kept: FrameRange[] = []
  for (const range of ranges) {
    const planned = planPart(source, index, range)
    if (typeof planned === 'string') return { plan: null, why: planned }
    parts.push(planned.part)
    kept.push(planned.range)
  }
  const frames = kept.reduce((sum, { firstFrame, lastFrame }) => sum + lastFrame - firstFrame + 1, 0)
  const headFrames = parts.reduce((sum, { headTicks }) => sum + headTicks.length, 0)
  if (headFrames === frames) return { plan: null, why: 'no key frame lies in it' }
  if (headFrames > frames * MOST_ENCODED) {
    return { plan: null, why: `${headFrames} of its ${frames} frames lie before a key frame` }
  }
  return { plan: { parts, ranges: kept, headFrames, setId }, why: whyEdge(headFrames, frames) }
}

function whyEdge(headFrames: number, frames: number): string {
  return headFrames === 0
    ? 'Starts on a key frame: the picture is copied as it is.'
    : `The first ${headFrames} of ${frames} frames, up to a key frame, are encoded; the rest is copied as it is.`
}

function planPart(
  source: EdgeSource,
  index: FrameIndex,
  range: FrameRange,
): { part: EdgePart; range: FrameRange } | string {
  const { packets, shown } = source
  const ticksOf = (frame: number) => packets[shown[frame] ?? -1]?.ticks ?? 0
  const keyFrame = firstCleanKey(source, index, range)
  const end = keyFrame === null ? null : cleanEnd(source, shown[keyFrame] ?? 0, ticksOf(range.lastFrame))
  if (keyFrame !== null && end === null) return 'its end lies where pictures cannot be parted'
  const from = keyFrame === null ? 0 : (shown[keyFrame] ?? 0)
  const to = keyFrame === null || end === null ? 0 : end
  const after = keyFrame === null ? range.lastFrame + 1 : keyFrame + to - from
  if (!sameFrames(source, keyFrame, after, from, to)) return 'frames are hidden or out of order in it'
  const kept =
    after === range.lastFrame + 1
      ? range
      : { ...frameRange(index, range.firstFrame, after, Math.round(range.toMs)), soundToMs: range.toMs }
  if (kept.toMs - range.toMs > LATEST_END_MS) {
    return `its end would come ${Math.round(kept.toMs - range.toMs)} ms late`
  }
  const headEnd = keyFrame ?? after
  const headTicks = Array.from({ length: headEnd - range.firstFrame }, (_, frame) => ticksOf(range.firstFrame + frame))
  const decode = headTicks.length === 0 ? { from: 0, to: 0 } : decodeFor(source, index, range.firstFrame, headEnd)
  if (!decode) return 'no key frame lies before it'
  const fromTicks = ticksOf(range.firstFrame)
  const lengthTicks = Math.round(((kept.toMs - kept.fromMs) * source.timescale) / 1000)
  return { part: { headTicks, decode, copy: { from, to }, fromTicks, lengthTicks }, range: kept }
}

/** The first frame of the range from which all later ones can be decoded without any earlier one. */
function firstCleanKey(source: EdgeSource, index: FrameIndex, range: FrameRange): number | null {
  for (let frame = range.firstFrame; frame <= range.lastFrame; frame += 1) {
    if (isCleanKey(source, index, frame)) return frame
  }
  return null
}

/** True when the frame is a key frame and no picture of the one side shows on the other side of it. */
export function isCleanKey({ packets, shown }: EdgeSource, index: FrameIndex, frame: number): boolean {
  const at = shown[frame] ?? -1
  const key = packets[at]
  if (!index.frames[frame]?.key || !key) return false
  const later = (packet: PacketPlace) => (packet.ticks ?? 0) > (key.ticks ?? 0)
  return (
    packets.slice(at + 1, at + 1 + REORDER).every(later) && !packets.slice(Math.max(0, at - REORDER), at).some(later)
  )
}

/**
 * The first place behind the last frame wanted at which all pictures before it show before all behind it.
 * @returns the first packet not copied, null when there is none near.
 */
function cleanEnd({ packets }: EdgeSource, from: number, lastTicks: number): number | null {
  let latest = -Infinity
  for (let at = from; at < packets.length; at += 1) {
    latest = Math.max(latest, packets[at]?.ticks ?? 0)
    if (latest < lastTicks) continue
    const behind = packets.slice(at + 1, at + 1 + REORDER)
    if (behind.every((packet) => (packet.ticks ?? 0) > latest)) return at + 1
  }
  return null
}

/** True when the packets to copy are the very frames from the key frame to the one before `after`. */
function sameFrames(source: EdgeSource, keyFrame: number | null, after: number, from: number, to: number): boolean {
  if (keyFrame === null) return true
  const places = source.shown.slice(keyFrame, after)
  return places.length === to - from && places.every((place) => place >= from && place < to)
}

/** The packets from the key frame before a frame to all that show before another. */
function decodeFor(
  { shown }: EdgeSource,
  index: FrameIndex,
  firstFrame: number,
  headEnd: number,
): { from: number; to: number } | null {
  let key = firstFrame
  while (key >= 0 && !index.frames[key]?.key) key -= 1
  if (key < 0) return null
  const places = shown.slice(key, headEnd)
  return { from: shown[key] ?? 0, to: places.reduce((most, place) => Math.max(most, place), 0) + 1 }
}
