/** Reads the boxes of an MP4 (ISO/IEC 14496-12, section 4.2): what lies where. Nothing is copied. */

export interface Box {
  /** Four letters. */
  type: string
  /** First byte of its header, first byte behind the header, first byte behind the box. */
  start: number
  body: number
  end: number
}

/** The boxes in a row from one byte to another; stops at the first that does not fit. */
export function listBoxes(bytes: Uint8Array, from = 0, to = bytes.length): Box[] {
  const boxes: Box[] = []
  let start = from
  while (start + 8 <= to) {
    const box = readBoxHeader(bytes, start, to)
    if (!box) break
    boxes.push(box)
    start = box.end
  }
  return boxes
}

/**
 * @param to first byte behind what holds the box; a size of 0 means "to there".
 * @returns null when no box that fits begins there.
 */
export function readBoxHeader(bytes: Uint8Array, start: number, to: number): Box | null {
  if (start + 8 > bytes.length) return null
  const small = readU32(bytes, start)
  const type = readType(bytes, start + 4)
  if (small === 1 && start + 16 > bytes.length) return null
  const size = small === 1 ? readU64(bytes, start + 8) : small === 0 ? to - start : small
  const body = start + (small === 1 ? 16 : 8)
  return start + size > to || start + size < body ? null : { type, start, body, end: start + size }
}

/** The first box at the end of a path of types, such as mdia, minf, stbl. */
export function findBox(bytes: Uint8Array, within: Box, path: readonly string[]): Box | null {
  let box: Box | null = within
  for (const type of path) box = box && (listBoxes(bytes, box.body, box.end).find((one) => one.type === type) ?? null)
  return box
}

export function readType(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4))
}

export function readU16(bytes: Uint8Array, at: number): number {
  return ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0)
}

export function readU32(bytes: Uint8Array, at: number): number {
  return readU16(bytes, at) * 0x1_0000 + readU16(bytes, at + 2)
}

/** Exact below 2^53, which is more than any file has bytes. */
export function readU64(bytes: Uint8Array, at: number): number {
  return readU32(bytes, at) * 0x1_0000_0000 + readU32(bytes, at + 4)
}
