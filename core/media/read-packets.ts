/** Reads ffprobe's packet list into the times of the frames that a player shows. Nothing is decoded. */
import type { Fraction } from './read-probe.ts'

/** One frame: when it shows, exact (not rounded) milliseconds from the recording's start, and whether it stands alone. */
export interface FrameTime {
  atMs: number
  key: boolean
}

export interface FrameIndex {
  /** In order of time, no two at one time. */
  frames: FrameTime[]
  /** When the last frame ends. */
  endMs: number
  /** Packets without a time: they cannot be placed. */
  withoutTime: number
  /** Frames that share their time with another. */
  sameTime: number
  /** Times (ms) before which the file's clock jumps by more than ten seconds or goes back by more than one. */
  jumpsAtMs: number[]
}

/** One packet where it lies in the file. The list of all is in decode order. */
export interface PacketPlace {
  /** When its frame shows, in ticks of the stream's time base; null = the file does not say. */
  ticks: number | null
  /** Bytes. */
  size: number
  /** First byte in the file; null where the container does not tell. */
  pos: number | null
  key: boolean
  /** The container hides its frame. */
  hidden: boolean
}

/** The fields to ask ffprobe for, in the order it prints them. */
export const PACKET_FIELDS = 'packet=pts,duration,size,pos,flags'

/** A reordered (B-frame) stream goes back by well under a second; a file's clock that was reset goes back by more. */
const BACK_MS = 1000
const AHEAD_MS = 10_000

interface Packet {
  ticks: number | null
  duration: number
  size: number
  pos: number | null
  flags: string
}

/**
 * Reads `ffprobe -show_entries packet=pts,duration,flags -of csv=p=0` of one stream, in decode order.
 * Left out: packets the container hides (flag D), packets before the first key frame and frames shown before it,
 * which cannot be decoded.
 * @param clockStartSeconds from the probe: where our clock starts on the container's.
 */
export function readPackets(csvText: string, timeBase: Fraction, clockStartSeconds: number): FrameIndex {
  const toMs = (ticks: number) => (ticks * timeBase.num * 1000) / timeBase.den - clockStartSeconds * 1000
  const packets = parsePackets(csvText)
  const timed = decodable(packets).filter((packet) => packet.ticks !== null && !packet.flags.includes('D'))
  const frames = timed.map(({ ticks, flags }) => ({ atMs: toMs(ticks ?? 0), key: flags.includes('K') }))
  const sorted = [...frames].sort((a, b) => a.atMs - b.atMs)
  const distinct = sorted.filter((frame, index) => index === 0 || frame.atMs > (sorted[index - 1]?.atMs ?? 0))
  return {
    frames: distinct,
    endMs: endOfLast(timed, distinct, timeBase),
    withoutTime: packets.filter((packet) => packet.ticks === null).length,
    sameTime: sorted.length - distinct.length,
    jumpsAtMs: frames.flatMap(({ atMs }, index) => {
      const before = frames[index - 1]?.atMs ?? atMs
      return atMs - before > AHEAD_MS || before - atMs > BACK_MS ? [atMs] : []
    }),
  }
}

/** Reads the same text into the packets' places, in decode order; none is left out. */
export function readPacketPlaces(csvText: string): PacketPlace[] {
  return parsePackets(csvText).map(({ ticks, size, pos, flags }) => {
    return { ticks, size, pos, key: flags.includes('K'), hidden: flags.includes('D') }
  })
}

/** Columns after the flags (of packets with side data) are left alone; size and place may be absent. */
function parsePackets(csvText: string): Packet[] {
  return csvText.split('\n').flatMap((line) => {
    const [pts = '', duration = '', ...rest] = line.trim().split(',')
    const flagsAt = rest.findIndex((text) => /^[K_]/.test(text))
    const flags = rest[flagsAt]
    if (!pts || flags === undefined) return []
    const [size, pos] = flagsAt === 2 ? rest : []
    return [
      {
        ticks: wholeNumber(pts),
        duration: wholeNumber(duration) ?? 0,
        size: wholeNumber(size ?? '') ?? 0,
        pos: wholeNumber(pos ?? ''),
        flags,
      },
    ]
  })
}

/** Drops what comes before the first key frame, in decode order and in time. */
function decodable(packets: readonly Packet[]): Packet[] {
  const first = packets.findIndex((packet) => packet.flags.includes('K'))
  const key = packets[first]
  if (!key) return []
  return packets.slice(first).filter((packet) => packet.ticks === null || packet.ticks >= (key.ticks ?? 0))
}

/** The last frame lasts as long as its packet says, else as long as the frame before it. */
function endOfLast(packets: readonly Packet[], frames: readonly FrameTime[], timeBase: Fraction): number {
  const last = frames.at(-1)
  if (!last) return 0
  const lastPacket = packets.reduce<Packet | null>((a, b) => ((a?.ticks ?? -Infinity) >= (b.ticks ?? 0) ? a : b), null)
  const said = ((lastPacket?.duration ?? 0) * timeBase.num * 1000) / timeBase.den
  return last.atMs + (said > 0 ? said : last.atMs - (frames.at(-2)?.atMs ?? last.atMs - 40))
}

function wholeNumber(text: string): number | null {
  return /^-?\d+$/.test(text) ? Number(text) : null
}
