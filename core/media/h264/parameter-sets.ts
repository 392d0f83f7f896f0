/** Reads and joins the decoder configuration of H.264 in MP4: the box avcC (ISO/IEC 14496-15, section 5.3.3.1). */
import { joinBytes } from '../mp4/join-bytes.ts'
import { listBoxes, readU16 } from '../mp4/read-boxes.ts'

export interface AvcConfig {
  /** Of ITU-T H.264, annex A: 66 baseline, 77 main, 100 high. */
  profile: number
  compatibility: number
  /** Ten times the level. */
  level: number
  /** Bytes of the length before each unit. */
  lengthBytes: number
  sps: Uint8Array[]
  pps: Uint8Array[]
  /** What follows the sets for High profiles: chroma format and depths. */
  more: Uint8Array
}

/** An avc1 entry: 8 bytes of header and 78 of fixed fields stand before its boxes. */
const ENTRY_BYTES = 86

/** @param entry a sample entry, such as avc1, whole. @returns null when it holds no whole avcC. */
export function readAvcConfig(entry: Uint8Array): AvcConfig | null {
  const box = listBoxes(entry, ENTRY_BYTES).find(({ type }) => type === 'avcC')
  if (!box || box.end - box.body < 7) return null
  const body = entry.subarray(box.body, box.end)
  const sps = readSets(body, 6, (body[5] ?? 0) & 0x1f)
  const pps = sps && readSets(body, sps.end + 1, body[sps.end] ?? 0)
  if (!sps || !pps || sps.sets.length === 0 || pps.sets.length === 0) return null
  const [, profile = 0, compatibility = 0, level = 0, length = 0] = body
  const lengthBytes = (length & 3) + 1
  return { profile, compatibility, level, lengthBytes, sps: sps.sets, pps: pps.sets, more: body.slice(pps.end) }
}

function readSets(body: Uint8Array, from: number, count: number): { sets: Uint8Array[]; end: number } | null {
  const sets: Uint8Array[] = []
  let at = from
  for (let set = 0; set < count; set += 1) {
    const end = at + 2 + readU16(body, at)
    if (end > body.length || end === at + 2) return null
    sets.push(body.slice(at + 2, end))
    at = end
  }
  return { sets, end: at }
}

/** The lowest id that neither a sequence nor a picture parameter set of the recording bears; null when all are taken. */
export function freeSetId(config: AvcConfig): number | null {
  const used = setIds(config)
  const id = Array.from({ length: 32 }, (_, number) => number).find((number) => !used.has(number))
  return id ?? null
}

/** The ids of all sets: behind the unit's header come profile, constraints and level, then the id (7.3.2.1.1); in a picture's set it is first. */
export function setIds({ sps, pps }: AvcConfig): Set<number> {
  return new Set([...sps.map((set) => readUe(set, 32)), ...pps.map((set) => readUe(set, 8))])
}

/** Both sets of sets in one: the picture may be decoded by either. The level is the higher one. */
export function joinAvcConfigs(source: AvcConfig, head: AvcConfig): AvcConfig {
  return {
    ...source,
    level: Math.max(source.level, head.level),
    compatibility: source.compatibility & head.compatibility,
    sps: [...head.sps, ...source.sps],
    pps: [...head.pps, ...source.pps],
  }
}

/** The entry with this configuration, and without the bit rate that no longer holds. */
export function withAvcConfig(entry: Uint8Array, config: AvcConfig): Uint8Array {
  const kept = listBoxes(entry, ENTRY_BYTES)
    .filter(({ type }) => type !== 'avcC' && type !== 'btrt')
    .map(({ start, end }) => entry.subarray(start, end))
  const whole = joinBytes([entry.subarray(0, ENTRY_BYTES), writeAvcConfig(config), ...kept])
  new DataView(whole.buffer).setUint32(0, whole.length)
  return whole
}

function writeAvcConfig({ profile, compatibility, level, sps, pps, more }: AvcConfig): Uint8Array {
  const sets = (list: readonly Uint8Array[]) => list.flatMap((set) => [set.length >> 8, set.length & 255, ...set])
  const body = [1, profile, compatibility, level, 0xff, 0xe0 | sps.length, ...sets(sps), pps.length, ...sets(pps)]
  const bytes = new Uint8Array([0, 0, 0, 0, 0x61, 0x76, 0x63, 0x43, ...body, ...more])
  new DataView(bytes.buffer).setUint32(0, bytes.length)
  return bytes
}

/** An Exp-Golomb number (ITU-T H.264, section 9.1) at a bit. No emulation prevention can stand that early. */
function readUe(bytes: Uint8Array, bit: number): number {
  const read = (at: number) => ((bytes[at >> 3] ?? 0) >> (7 - (at & 7))) & 1
  let zeros = 0
  while (zeros < 31 && read(bit + zeros) === 0) zeros += 1
  let value = 0
  for (let at = bit + zeros; at <= bit + 2 * zeros; at += 1) value = value * 2 + read(at)
  return value - 1
}
