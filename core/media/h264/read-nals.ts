/** Reads the units of an H.264 sample as MP4 holds it: each behind its length (ISO/IEC 14496-15, section 5.3.4.2). */
import { readU32 } from '../mp4/read-boxes.ts'

/** nal_unit_type of ITU-T H.264, table 7-1. */
export const NAL = { slice: 1, partitionA: 2, partitionC: 4, idr: 5, sps: 7, pps: 8, spsExtension: 13 } as const

export interface Nal {
  type: number
  /** 0 = no other picture needs this one. */
  refIdc: number
  /** First byte of its length, first of the unit, first behind it. */
  start: number
  body: number
  end: number
}

/** @returns null when the lengths (4 bytes each) do not add up to the sample. */
export function listNals(sample: Uint8Array): Nal[] | null {
  const nals: Nal[] = []
  let start = 0
  while (start < sample.length) {
    const body = start + 4
    const end = body + readU32(sample, start)
    const header = sample[body]
    if (header === undefined || end > sample.length || end === body) return null
    nals.push({ type: header & 0x1f, refIdc: (header >> 5) & 3, start, body, end })
    start = end
  }
  return nals
}

/** True when the units that hold a picture's slices are all of an IDR picture, from which decoding can start anew. */
export function isIdr(nals: readonly Nal[]): boolean {
  const slices = nals.filter(({ type }) => type >= NAL.slice && type <= NAL.idr)
  return slices.length > 0 && slices.every(({ type }) => type === NAL.idr)
}

/** True when no other picture is decoded from this one. */
export function isDisposable(nals: readonly Nal[]): boolean {
  return nals.every(({ type, refIdc }) => refIdc === 0 || type < NAL.slice || type > NAL.idr)
}
