// The sound of a clip beside the recording's: late, early, other, or too quiet to tell.
import { describe, expect, it } from 'vitest'
import { COMPARE_RATE, compareSound, isOtherSound } from '../../../core/media/compare-sound.ts'

/** Noise of a small generator (Park and Miller, minimal standard), which never repeats here. */
function noise(seed: number, seconds: number, level = 8000): Int16Array {
  let state = seed
  return Int16Array.from({ length: seconds * COMPARE_RATE }, () => {
    state = (state * 48_271) % 2_147_483_647
    return (state / 2_147_483_647 - 0.5) * 2 * level
  })
}
const late = (samples: Int16Array, by: number) => Int16Array.from(samples, (_, index) => (samples[index - by] ?? 0) / 3)

describe('compareSound', () => {
  const recording = noise(1, 3)
  it.each([
    ['in place', 0, 0],
    ['1 ms late', 8, 1],
    ['one AAC packet early', -171, -21.375],
    ['50 ms late', 400, 50],
  ])('finds it %s', (_, by, lagMs) => {
    const found = compareSound(late(recording, by), recording)
    expect(found?.lagMs).toBe(lagMs)
    expect(found?.correlation).toBeGreaterThan(0.99)
  })

  it('tells other sound', () => {
    const found = compareSound(noise(987_654_321, 3), recording)
    expect(found && isOtherSound(found)).toBe(true)
  })

  it('takes a steady tone to be in place', () => {
    const tone = Int16Array.from({ length: 3 * COMPARE_RATE }, (_, index) => Math.sin(index / 3) * 9000)
    expect(compareSound(tone, tone)?.lagMs).toBe(0)
  })

  it.each([
    ['silence', noise(1, 3, 10)],
    ['less than a second', noise(1, 0.5)],
  ])('says nothing of %s', (_, samples) => {
    expect(compareSound(samples, samples)).toBeNull()
  })
})
