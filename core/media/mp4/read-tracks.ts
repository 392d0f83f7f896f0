/** Reads the tracks of an MP4 from its moov box (ISO/IEC 14496-12): kinds, sample entries, where the samples lie. */
import { findBox, listBoxes, readBoxHeader, readType, readU32, readU64 } from './read-boxes.ts'
import type { Box } from './read-boxes.ts'

export interface Mp4Track {
  /** `vide`, `soun` ... */
  handler: string
  /** Ticks a second. */
  timescale: number
  /** 36 bytes: how a player turns the picture. */
  matrix: Uint8Array
  /** Width and height as shown, 16.16 fixed point, 8 bytes. */
  shownSize: Uint8Array
  /** The sample descriptions, whole boxes. */
  entries: { type: string; bytes: Uint8Array }[]
  /** Ticks of the media at which playing starts, by its edit list; 0 without one. */
  mediaTime: number
  /** Where each sample lies in the file, in decode order. Empty in a fragmented file. */
  samples: { pos: number; size: number }[]
  /** How long each lasts, in ticks. */
  durations: number[]
}

/**
 * @param moov the whole moov box with its header.
 * @param withSamples false leaves samples and durations empty: a long recording has very many.
 * @returns null when it is none.
 */
export function readTracks(moov: Uint8Array, withSamples: boolean): Mp4Track[] | null {
  const box = readBoxHeader(moov, 0, moov.length)
  if (box?.type !== 'moov') return null
  return listBoxes(moov, box.body, box.end)
    .filter(({ type }) => type === 'trak')
    .flatMap((trak) => {
      const track = readTrack(moov, trak, withSamples)
      return track ? [track] : []
    })
}

function readTrack(moov: Uint8Array, trak: Box, withSamples: boolean): Mp4Track | null {
  const tkhd = findBox(moov, trak, ['tkhd'])
  const mdhd = findBox(moov, trak, ['mdia', 'mdhd'])
  const hdlr = findBox(moov, trak, ['mdia', 'hdlr'])
  const stbl = findBox(moov, trak, ['mdia', 'minf', 'stbl'])
  const stsd = stbl && findBox(moov, stbl, ['stsd'])
  if (!tkhd || !mdhd || !hdlr || !stbl || !stsd) return null
  const longTimes = moov[mdhd.body] === 1
  return {
    handler: readType(moov, hdlr.body + 8),
    timescale: readU32(moov, mdhd.body + (longTimes ? 20 : 12)),
    // matrix, width and height close the box in both of its versions
    matrix: moov.slice(tkhd.end - 44, tkhd.end - 8),
    shownSize: moov.slice(tkhd.end - 8, tkhd.end),
    entries: listBoxes(moov, stsd.body + 8, stsd.end).map(({ type, start, end }) => {
      return { type, bytes: moov.slice(start, end) }
    }),
    mediaTime: readMediaTime(moov, trak),
    samples: withSamples ? readSamples(moov, stbl) : [],
    durations: withSamples ? readDurations(moov, stbl) : [],
  }
}

/** Of the first edit that shows something. */
function readMediaTime(moov: Uint8Array, trak: Box): number {
  const elst = findBox(moov, trak, ['edts', 'elst'])
  if (!elst) return 0
  const long = moov[elst.body] === 1
  const count = readU32(moov, elst.body + 4)
  for (let edit = 0; edit < count; edit += 1) {
    const at = elst.body + 8 + edit * (long ? 20 : 12)
    const empty = readU32(moov, at + (long ? 8 : 4)) === 0xffff_ffff
    if (!empty) return long ? readU64(moov, at + 8) : readU32(moov, at + 4)
  }
  return 0
}

function readSamples(moov: Uint8Array, stbl: Box): { pos: number; size: number }[] {
  const sizes = readSizes(moov, stbl)
  const chunks = readChunks(moov, stbl)
  const stsc = findBox(moov, stbl, ['stsc'])
  if (!stsc) return []
  const runs = readTable(moov, stsc, 12).map((at) => ({ first: readU32(moov, at), count: readU32(moov, at + 4) }))
  const samples: { pos: number; size: number }[] = []
  runs.forEach(({ first, count }, run) => {
    const next = runs[run + 1]?.first ?? chunks.length + 1
    for (const chunk of chunks.slice(first - 1, next - 1)) {
      let pos = chunk
      for (let sample = 0; sample < count && samples.length < sizes.length; sample += 1) {
        const size = sizes[samples.length] ?? 0
        samples.push({ pos, size })
        pos += size
      }
    }
  })
  return samples
}

function readSizes(moov: Uint8Array, stbl: Box): number[] {
  const stsz = findBox(moov, stbl, ['stsz'])
  if (!stsz) return []
  const same = readU32(moov, stsz.body + 4)
  const count = readU32(moov, stsz.body + 8)
  return Array.from({ length: count }, (_, sample) => same || readU32(moov, stsz.body + 12 + sample * 4))
}

function readChunks(moov: Uint8Array, stbl: Box): number[] {
  const stco = findBox(moov, stbl, ['stco'])
  if (stco) return readTable(moov, stco, 4).map((at) => readU32(moov, at))
  const co64 = findBox(moov, stbl, ['co64'])
  return co64 ? readTable(moov, co64, 8).map((at) => readU64(moov, at)) : []
}

function readDurations(moov: Uint8Array, stbl: Box): number[] {
  const stts = findBox(moov, stbl, ['stts'])
  if (!stts) return []
  return readTable(moov, stts, 8).flatMap((at) => {
    return new Array<number>(Math.min(readU32(moov, at), MOST_SAMPLES)).fill(readU32(moov, at + 4))
  })
}

/** A day at 60 frames a second; a wrong count must not take all memory. */
const MOST_SAMPLES = 5_184_000

/** Where each row of a table begins: version and flags, a count, rows of equal size. */
function readTable(bytes: Uint8Array, box: Box, rowBytes: number): number[] {
  const count = Math.min(readU32(bytes, box.body + 4), Math.floor((box.end - box.body - 8) / rowBytes))
  return Array.from({ length: count }, (_, row) => box.body + 8 + row * rowBytes)
}
