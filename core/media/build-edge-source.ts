/** Brings together what an edge cut needs of an MP4: its track of pictures, and which packet is which frame. */
import type { EdgeSource } from './plan-edge-cut.ts'
import { readAvcConfig } from './h264/parameter-sets.ts'
import type { Mp4Track } from './mp4/read-tracks.ts'
import type { FrameIndex, PacketPlace } from './read-packets.ts'

/** Frames of a file that was put into MP4 may have moved by so much: half a tick of a clock of whole milliseconds. */
const SAME_TIME_MS = 0.51

/**
 * @param tracks of the MP4 that holds the packets; null = its head could not be read.
 * @param packets of its picture, in decode order.
 * @param index the frames of the recording, which may be another file that holds the same pictures.
 * @returns a sentence when no clip can be cut so.
 */
export function buildEdgeSource(
  tracks: readonly Mp4Track[] | null,
  packets: readonly PacketPlace[],
  index: FrameIndex,
): EdgeSource | string {
  const pictures = tracks?.filter(({ handler }) => handler === 'vide') ?? []
  const [track] = pictures
  if (!track) return 'the head of the file cannot be read'
  if (pictures.length > 1) return 'the file holds several pictures'
  const [entry] = track.entries
  if (!entry || track.entries.length > 1) return 'the file changes its parameter sets'
  if (entry.type !== 'avc1') return `the picture is stored as ${entry.type}`
  const config = readAvcConfig(entry.bytes)
  if (!config) return 'its parameter sets cannot be read'
  if (packets.some(({ pos, size }) => pos === null || size === 0)) return 'the file does not tell where its frames lie'
  const shown = findShown(packets)
  if (!sameTimes(packets, shown, index, track.timescale)) return 'its frames have odd time stamps'
  const { matrix, shownSize, timescale } = track
  return { entry: entry.bytes, config, matrix, shownSize, timescale, packets, shown }
}

/** Places of the packets whose frames are shown, in order of time; as readPackets leaves out what cannot be. */
function findShown(packets: readonly PacketPlace[]): number[] {
  const first = packets.findIndex(({ key }) => key)
  const firstTicks = packets[first]?.ticks ?? 0
  return packets
    .map((packet, place) => ({ ...packet, place }))
    .filter(({ ticks, hidden, place }) => place >= first && ticks !== null && ticks >= firstTicks && !hidden)
    .sort((a, b) => (a.ticks ?? 0) - (b.ticks ?? 0))
    .map(({ place }) => place)
}

function sameTimes(
  packets: readonly PacketPlace[],
  shown: readonly number[],
  { frames }: FrameIndex,
  timescale: number,
): boolean {
  const firstTicks = packets[shown[0] ?? -1]?.ticks ?? 0
  const firstMs = frames[0]?.atMs ?? 0
  return (
    shown.length === frames.length &&
    shown.every((place, frame) => {
      const ms = (((packets[place]?.ticks ?? 0) - firstTicks) * 1000) / timescale
      return Math.abs(ms - ((frames[frame]?.atMs ?? 0) - firstMs)) <= SAME_TIME_MS
    })
  )
}
