/** Writes the head of an MP4 (ISO/IEC 14496-12): ftyp, moov and the start of mdat, so that a player can start at once. */
import { joinBytes } from './join-bytes.ts'

export interface MovieTrack {
  kind: 'picture' | 'sound'
  /** Ticks a second. */
  timescale: number
  /** The sample entry, a whole box. */
  entry: Uint8Array
  /** Ticks each sample lasts, in decode order. */
  durations: readonly number[]
  /** Ticks from decoding to showing; null = none. */
  offsets: readonly number[] | null
  /** Samples, counted from 0, from which decoding can start; null = all. */
  keys: readonly number[] | null
  /** Ticks of the media at which playing starts, and how long it goes on. */
  mediaTime: number
  shownTicks: number
  /** How a player turns the picture (36 bytes) and its size as shown (8 bytes), as the recording has them. */
  matrix?: Uint8Array
  shownSize?: Uint8Array
}

/** Samples of one track that lie in a row. */
export interface Chunk {
  track: number
  /** First sample, and the first behind the last. */
  from: number
  to: number
}

/** Picture and sound take turns in pieces of half a second. */
const CHUNK_SECONDS = 0.5

/** The order in which the samples of all tracks lie in the file. */
export function planChunks(tracks: readonly MovieTrack[]): Chunk[] {
  const ends = tracks.map((track) => chunkEnds(track))
  const most = Math.max(0, ...ends.map((list) => list.length))
  const chunks: Chunk[] = []
  for (let number = 0; number < most; number += 1) {
    tracks.forEach((_, track) => {
      const to = ends[track]?.[number]
      const from = number === 0 ? 0 : (ends[track]?.[number - 1] ?? 0)
      if (to !== undefined && to > from) chunks.push({ track, from, to })
    })
  }
  return chunks
}

function chunkEnds({ durations, timescale }: MovieTrack): number[] {
  const ends: number[] = []
  let ticks = 0
  durations.forEach((duration, sample) => {
    ticks += duration
    const chunk = Math.floor(ticks / timescale / CHUNK_SECONDS)
    for (let number = ends.length; number < chunk; number += 1) ends.push(sample + 1)
  })
  return [...ends, durations.length]
}

/**
 * The first bytes of the file; the samples follow, chunk by chunk. Its length depends on the plan alone, not on the sizes.
 * @param sizes bytes of each sample, by track.
 * @param large true when more than 4 GB may follow.
 */
export function writeMovieHead(
  tracks: readonly MovieTrack[],
  chunks: readonly Chunk[],
  sizes: readonly (readonly number[])[],
  large: boolean,
): Uint8Array {
  const ftyp = box('ftyp', text('isom'), u32(512), text('isomiso2avc1mp41'))
  const chunkBytes = chunks.map(({ track, from, to }) => sum((sizes[track] ?? []).slice(from, to)))
  const total = sum(chunkBytes)
  const mdat = large ? joinBytes([u32(1), text('mdat'), u64(total + 16)]) : joinBytes([u32(total + 8), text('mdat')])
  const moov = (start: number) => {
    let at = start
    const places = chunkBytes.map((bytes) => (at += bytes) - bytes)
    return writeMoov(tracks, chunks, sizes, places, large)
  }
  const start = ftyp.length + moov(0).length + mdat.length
  return joinBytes([ftyp, moov(start), mdat])
}

function writeMoov(
  tracks: readonly MovieTrack[],
  chunks: readonly Chunk[],
  sizes: readonly (readonly number[])[],
  places: readonly number[],
  large: boolean,
): Uint8Array {
  const timescale = tracks[0]?.timescale ?? 1000
  const length = Math.max(0, ...tracks.map((track) => inTicksOf(track, timescale)))
  const mvhd = full('mvhd', 0, 0, [
    ...[u32(0), u32(0), u32(timescale), u32(length), u32(0x0001_0000), u16(0x0100), zeros(10)],
    ...[PLAIN_MATRIX, zeros(24), u32(tracks.length + 1)],
  ])
  return box(
    'moov',
    mvhd,
    ...tracks.map((track, number) => {
      const own = chunks.flatMap((chunk, index) => (chunk.track === number ? [{ ...chunk, place: places[index] }] : []))
      return writeTrak(track, number, timescale, sizes[number] ?? [], own, large)
    }),
  )
}

function writeTrak(
  track: MovieTrack,
  number: number,
  movieTimescale: number,
  sizes: readonly number[],
  chunks: readonly (Chunk & { place: number | undefined })[],
  large: boolean,
): Uint8Array {
  const length = inTicksOf(track, movieTimescale)
  const picture = track.kind === 'picture'
  const tkhd = full('tkhd', 0, 3, [
    ...[u32(0), u32(0), u32(number + 1), u32(0), u32(length), zeros(8)],
    ...[u16(0), u16(0), u16(picture ? 0 : 0x0100), u16(0)],
    ...[track.matrix ?? PLAIN_MATRIX, track.shownSize ?? zeros(8)],
  ])
  const elst = full('elst', 0, 0, [u32(1), u32(length), u32(track.mediaTime), u32(0x0001_0000)])
  const mdhd = full('mdhd', 0, 0, [
    ...[u32(0), u32(0), u32(track.timescale), u32(sum(track.durations)), u16(UNDETERMINED), u16(0)],
  ])
  const hdlr = full('hdlr', 0, 0, [u32(0), text(picture ? 'vide' : 'soun'), zeros(12), text('\0')])
  const header = picture ? full('vmhd', 0, 1, [zeros(8)]) : full('smhd', 0, 0, [zeros(4)])
  const dinf = box('dinf', full('dref', 0, 0, [u32(1), full('url ', 0, 1, [])]))
  const stbl = box(
    'stbl',
    full('stsd', 0, 0, [u32(1), track.entry]),
    full('stts', 0, 0, runs(track.durations)),
    ...(track.offsets ? [full('ctts', 0, 0, runs(track.offsets))] : []),
    ...(track.keys ? [full('stss', 0, 0, [u32(track.keys.length), ...track.keys.map((key) => u32(key + 1))])] : []),
    full('stsc', 0, 0, chunkRuns(chunks)),
    full('stsz', 0, 0, [u32(0), u32(sizes.length), table(sizes)]),
    large
      ? full('co64', 0, 0, [u32(chunks.length), ...chunks.map(({ place }) => u64(place ?? 0))])
      : full('stco', 0, 0, [u32(chunks.length), table(chunks.map(({ place }) => place ?? 0))]),
  )
  return box('trak', tkhd, box('edts', elst), box('mdia', mdhd, hdlr, box('minf', header, dinf, stbl)))
}

/** Neither scaled nor turned. */
const PLAIN_MATRIX = joinBytes([0x0001_0000, 0, 0, 0, 0x0001_0000, 0, 0, 0, 0x4000_0000].map(u32))

/** The language code `und`. */
const UNDETERMINED = 0x55c4

function inTicksOf({ shownTicks, timescale }: MovieTrack, other: number): number {
  return Math.round((shownTicks * other) / timescale)
}

/** Equal values in a row become one line of count and value. */
function runs(values: readonly number[]): Uint8Array[] {
  const lines: [number, number][] = []
  for (const value of values) {
    const last = lines.at(-1)
    if (last && last[1] === value) last[0] += 1
    else lines.push([1, value])
  }
  return [u32(lines.length), table(lines.flat())]
}

function chunkRuns(chunks: readonly Chunk[]): Uint8Array[] {
  const lines: number[] = []
  let before = -1
  chunks.forEach(({ from, to }, index) => {
    if (to - from === before) return
    before = to - from
    lines.push(index + 1, before, 1)
  })
  return [u32(lines.length / 3), table(lines)]
}

function box(type: string, ...parts: readonly Uint8Array[]): Uint8Array {
  return joinBytes([u32(8 + sum(parts.map(({ length }) => length))), text(type), ...parts])
}

function full(type: string, version: number, flags: number, parts: readonly Uint8Array[]): Uint8Array {
  return box(type, u32(version * 0x100_0000 + flags), ...parts)
}

function table(values: readonly number[]): Uint8Array {
  const bytes = new Uint8Array(values.length * 4)
  const view = new DataView(bytes.buffer)
  values.forEach((value, index) => view.setUint32(index * 4, value))
  return bytes
}

function u16(value: number): Uint8Array {
  return new Uint8Array([value >> 8, value & 255])
}

function u32(value: number): Uint8Array {
  return table([value])
}

function u64(value: number): Uint8Array {
  return table([Math.floor(value / 0x1_0000_0000), value % 0x1_0000_0000])
}

function zeros(bytes: number): Uint8Array {
  return new Uint8Array(bytes)
}

function text(letters: string): Uint8Array {
  return Uint8Array.from(letters, (letter) => letter.charCodeAt(0))
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
