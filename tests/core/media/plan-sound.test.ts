// A drift of clocks becomes two rates, exact enough for hours.
import { describe, expect, it } from 'vitest'
import { driftRates, soundOnClock } from '../../../core/media/plan-sound.ts'

describe('driftRates', () => {
  it.each([0, 40, -40, 13.7, -187.3, 500])('gives %d ppm within 0.1 ms over an hour', (ppm) => {
    const { resampled, played } = driftRates(ppm)
    expect(Math.abs(played / resampled - (1 + ppm / 1_000_000)) * 3_600_000).toBeLessThan(0.1)
    expect(resampled).toBeGreaterThanOrEqual(48_000)
  })
})

describe('soundOnClock', () => {
  it('cuts what lies before the film, puts silence before what begins later, and fills to the end', () => {
    expect(soundOnClock({ startMs: -7000, driftPpm: 0 }, 2, 10_000)).toContain('atrim=start_sample=336000')
    expect(soundOnClock({ startMs: 7000, driftPpm: 0 }, 1, 10_000)).toContain('adelay=336000S:all=1')
    expect(soundOnClock({ startMs: 0, driftPpm: 0 }, 1, 10_000).slice(-2)).toEqual([
      'apad=whole_dur=10.000000',
      'atrim=end=10.000000',
    ])
  })
})
