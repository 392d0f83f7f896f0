// Parameter sets and units of H.264: ids read bit by bit, two configurations joined in one, what a picture is.
import { describe, expect, it } from 'vitest'
import { isDisposable, isIdr, listNals } from '../../../../core/media/h264/read-nals.ts'
import {
  freeSetId,
  joinAvcConfigs,
  readAvcConfig,
  setIds,
  withAvcConfig,
} from '../../../../core/media/h264/parameter-sets.ts'
import type { AvcConfig } from '../../../../core/media/h264/parameter-sets.ts'

/** First bytes of a sequence set: header, profile, constraints, level, then the id. */
const sps = (idBits: number) => Uint8Array.from([0x67, 100, 0, 31, idBits, 0x55])
const pps = (idBits: number) => Uint8Array.from([0x68, idBits, 0x55])
const config = (fields: Partial<AvcConfig> = {}): AvcConfig => ({
  ...{ profile: 100, compatibility: 0x40, level: 31, lengthBytes: 4 },
  ...{ sps: [sps(0b1000_0000)], pps: [pps(0b1000_0000)], more: Uint8Array.from([0xfd, 0xf8, 0xf8, 0]) },
  ...fields,
})
/** A sample entry: 86 bytes of fixed fields, then boxes; here one that must stay and one that must go. */
const entry = () => {
  const fixed = new Uint8Array(86)
  fixed.set([0, 0, 0, 102, 0x61, 0x76, 0x63, 0x31])
  return Uint8Array.from([...fixed, 0, 0, 0, 8, ...letters('pasp'), 0, 0, 0, 8, ...letters('btrt')])
}
const letters = (word: string) => [...word].map((letter) => letter.charCodeAt(0))

describe('ids of parameter sets', () => {
  // Exp-Golomb codes of ITU-T H.264, table 9-2: 1 = 0, 010 = 1, 011 = 2, 00100 = 3, 00101 = 4
  it.each([
    [0b1000_0000, 0],
    [0b0100_0000, 1],
    [0b0110_0000, 2],
    [0b0010_0000, 3],
    [0b0010_1000, 4],
  ])('%j is %d', (bits, id) => {
    expect([...setIds(config({ sps: [sps(bits)], pps: [pps(bits)] }))]).toEqual([id])
  })

  it('a free one is the lowest that neither kind of set bears', () => {
    expect(freeSetId(config())).toBe(1)
    expect(freeSetId(config({ pps: [pps(0b1000_0000), pps(0b0100_0000)] }))).toBe(2)
    expect(freeSetId(config({ sps: [sps(0b0110_0000)], pps: [pps(0b0110_0000)] }))).toBe(0)
  })
})

describe('the configuration in a sample entry', () => {
  it('is read back as it was written, other boxes stay, the old bit rate goes', () => {
    const head = config({ sps: [sps(0b0100_0000)], pps: [pps(0b0100_0000)], level: 40, compatibility: 0 })
    const whole = withAvcConfig(withAvcConfig(entry(), config()), joinAvcConfigs(config(), head))
    const read = readAvcConfig(whole)
    expect(read).toMatchObject({ profile: 100, compatibility: 0, level: 40, lengthBytes: 4 })
    expect(read?.sps).toEqual([...head.sps, ...config().sps])
    expect(read?.pps).toEqual([...head.pps, ...config().pps])
    expect(read?.more).toEqual(config().more)
    const text = String.fromCharCode(...whole)
    expect([text.includes('pasp'), text.includes('btrt')]).toEqual([true, false])
    expect(new DataView(whole.buffer).getUint32(0)).toBe(whole.length)
  })

  it('that is missing or cut short is none', () => {
    expect(readAvcConfig(entry())).toBeNull()
    const whole = withAvcConfig(entry(), config({ pps: [] }))
    expect(readAvcConfig(whole)).toBeNull()
    expect(readAvcConfig(whole.slice(0, 100))).toBeNull()
  })
})

/** Units behind their lengths; the first byte of each: importance and kind. */
const sample = (...headers: number[]) => Uint8Array.from(headers.flatMap((header) => [0, 0, 0, 2, header, 0]))

describe('the units of a sample', () => {
  it.each([
    { name: 'a length past the end', data: Uint8Array.from([0, 0, 0, 9, 0x65]) },
    { name: 'half a length', data: Uint8Array.from([0, 0]) },
    { name: 'an empty unit', data: Uint8Array.from([0, 0, 0, 0, 0, 0, 0, 1, 0x65]) },
  ])('are none with $name', ({ data }) => {
    expect(listNals(data)).toBeNull()
  })

  it.each([
    { name: 'sets and an IDR slice', headers: [0x67, 0x68, 0x65], idr: true, disposable: false },
    { name: 'an ordinary picture that others need', headers: [0x09, 0x41], idr: false, disposable: false },
    { name: 'a picture that no other needs', headers: [0x06, 0x01], idr: false, disposable: true },
    { name: 'a recovery point', headers: [0x06, 0x61], idr: false, disposable: false },
    { name: 'no picture', headers: [0x06], idr: false, disposable: true },
  ])('$name', ({ headers, idr, disposable }) => {
    const nals = listNals(sample(...headers)) ?? []
    expect([nals.length, isIdr(nals), isDisposable(nals)]).toEqual([headers.length, idr, disposable])
  })
})
