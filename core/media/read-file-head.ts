/** Tells from the first bytes of a file whether it can be a recording at all. */

/** Types of the boxes that an MP4 or MOV file may begin with (ISO/IEC 14496-12 and the QuickTime file format; from memory). */
const FIRST_BOXES = ['ftyp', 'styp', 'moov', 'moof', 'mdat', 'free', 'skip', 'wide', 'pnot', 'uuid']
/** Matroska and WebM begin with an EBML header (RFC 8794, section 8.1). */
const EBML = [0x1a, 0x45, 0xdf, 0xa3]
/** Packets of a transport stream begin with this byte (ISO/IEC 13818-1); M2TS puts four bytes before each. */
const TS_SYNC = 0x47
/** AVI begins as a RIFF file of this kind (Multimedia Programming Interface and Data Specifications 1.0, 1991; from memory). */
const AVI = { first: 'RIFF', third: 'AVI ' }

/** Bytes to read for it. */
export const HEAD_BYTES = 12

/** True when the file begins as an MP4, MOV, 3GP, MKV, WebM, TS or AVI file does, whole or cut short. */
export function looksLikeRecording(head: Uint8Array): boolean {
  const text = (from: number): string => String.fromCharCode(...head.slice(from, from + 4))
  const box = text(4)
  if (text(0) === AVI.first) return text(8) === AVI.third
  return (
    FIRST_BOXES.includes(box) || EBML.every((byte, at) => head[at] === byte) || [head[0], head[4]].includes(TS_SYNC)
  )
}
