// Clock text to milliseconds and back.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatClock, formatClockMs, overlapMs, parseClock } from '../../shared/time.ts'

describe('clock text', () => {
  const cases: [text: string, ms: number | null][] = [
    ['', null],
    [' ', null],
    ['abc', null],
    [':', null],
    ['5:', null],
    [':30', null],
    ['-1', null],
    ['-0:05', null],
    ['1:5', null],
    ['1:60', null],
    ['1:005', null],
    ['0:60:00', null],
    ['1:5:00', null],
    ['1:2:3:4', null],
    ['1:00.', null],
    ['1:00.1234', null],
    ['1:00.5s', null],
    ['1e3', null],
    ['0x10', null],
    ['١:٠٠', null],
    ['9'.repeat(30), null],
    ['0', 0],
    ['90', 90_000],
    ['90.5', 90_500],
    ['0:00', 0],
    ['0:05', 5000],
    ['1:02', 62_000],
    [' 1:02 ', 62_000],
    ['12:44', 764_000],
    ['99:59', 5_999_000],
    ['1:02.5', 62_500],
    ['1:02.05', 62_050],
    ['1:02.005', 62_005],
    ['1:02,005', 62_005],
    ['00:01:02.005', 62_005],
    ['1:00:00', 3_600_000],
    ['10:59:59.999', 39_599_999],
    ['100:00:00', 360_000_000],
  ]
  it.each(cases)('"%s" is %s ms', (text, ms) => {
    expect(parseClock(text)).toBe(ms)
  })
})

describe('a time for people', () => {
  const cases: [ms: number, text: string, exact: string][] = [
    [0, '0:00', '0:00.000'],
    [999, '0:00', '0:00.999'],
    [1000, '0:01', '0:01.000'],
    [59_999, '0:59', '0:59.999'],
    [60_000, '1:00', '1:00.000'],
    [764_050, '12:44', '12:44.050'],
    [3_599_999, '59:59', '59:59.999'],
    [3_600_000, '1:00:00', '1:00:00.000'],
    [39_599_007, '10:59:59', '10:59:59.007'],
  ]
  it.each(cases)('%i ms', (ms, text, exact) => {
    expect([formatClock(ms), formatClockMs(ms)]).toEqual([text, exact])
  })

  it('reads back: to the millisecond, or rounded down to the second', () => {
    fc.assert(
      fc.property(fc.nat(400_000_000), (ms) => {
        expect(parseClock(formatClockMs(ms))).toBe(ms)
        expect(parseClock(formatClock(ms))).toBe(Math.floor(ms / 1000) * 1000)
      }),
    )
  })
})

describe('overlap', () => {
  const cases: [a: [number, number], b: [number, number], ms: number][] = [
    [[0, 5], [5, 9], 0],
    [[0, 5], [7, 9], 0],
    [[3, 3], [0, 9], 0],
    [[0, 5], [4, 9], 1],
    [[0, 9], [3, 5], 2],
    [[0, 9], [0, 9], 9],
  ]
  it.each(cases)('%j and %j share %i ms', ([a, b], [c, d], ms) => {
    expect(overlapMs({ startMs: a, endMs: b }, { startMs: c, endMs: d })).toBe(ms)
    expect(overlapMs({ startMs: c, endMs: d }, { startMs: a, endMs: b })).toBe(ms)
  })
})
