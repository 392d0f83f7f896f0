// A cut moves into a pause near it and nowhere else.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { snapToPause } from '../../../core/segments/snap-to-pause.ts'
import type { Stretch } from '../../../shared/time.ts'

const pause = (startMs: number, endMs: number): Stretch => ({ startMs, endMs })
const two = [pause(1000, 2000), pause(5000, 5100)]

describe('snap to pause', () => {
  const cases: [what: string, ms: number, pauses: Stretch[], windowMs: number, expected: number][] = [
    ['no pause: stays', 700, [], 500, 700],
    ['a pause without length is none', 700, [pause(800, 800)], 500, 700],
    ['none within the window: stays', 700, two, 299, 700],
    ['the window reaches the pause just so: its first moment', 700, two, 300, 1000],
    ['goes 120 ms into the pause', 700, two, 500, 1120],
    ['from behind likewise', 2200, two, 500, 1880],
    ['but not past the middle of a short pause', 5300, two, 500, 5050],
    ['inside a pause: stays', 1500, two, 500, 1500],
    ['on the edge of a pause: stays', 2000, two, 500, 2000],
    ['a window of nothing: stays', 999, two, 0, 999],
    ['the nearer of two', 3600, two, 2000, 5050],
    ['of two equally near the earlier', 3500, two, 2000, 1880],
  ]
  it.each(cases)('%s', (_what, ms, pauses, windowMs, expected) => {
    expect(snapToPause(ms, pauses, windowMs)).toBe(expected)
  })

  it('moves at most by the window, and only into a pause', () => {
    const pauses = fc.array(fc.tuple(fc.nat(5000), fc.nat(900)).map(([start, length]) => pause(start, start + length)))
    fc.assert(
      fc.property(fc.nat(6000), pauses, fc.nat(1500), (ms, list, windowMs) => {
        const snapped = snapToPause(ms, list, windowMs)
        expect(Math.abs(snapped - ms)).toBeLessThanOrEqual(windowMs)
        if (snapped !== ms) expect(list.some((one) => one.startMs <= snapped && snapped <= one.endMs)).toBe(true)
      }),
    )
  })
})
