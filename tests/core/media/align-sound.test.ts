// Sound recorded apart is placed by its likeness to the film's own, and refused where there is none.
import { describe, expect, it } from 'vitest'
import { alignSound, soundMoment } from '../../../core/media/align-sound.ts'
import { openSoundMeter } from '../../../core/media/measure-sound.ts'
import { correlate, transform } from '../../../core/media/transform-fourier.ts'
import { record, speak } from '../../helpers/spoken-sound.ts'
import type { Microphone } from '../../helpers/spoken-sound.ts'

const CAMERA: Microphone = { startMs: 0, driftPpm: 0, voice: 0.15, noise: 0.02, music: 0.05, seed: 11 }
const COLLAR: Microphone = { startMs: 0, driftPpm: 0, voice: 0.8, noise: 0.004, seed: 12 }
const SECONDS = 90

function levelsOf(microphone: Partial<Microphone>, speech = speak(SECONDS), seconds = SECONDS): Float32Array {
  const meter = openSoundMeter()
  record(speech, seconds, { ...COLLAR, ...microphone }, meter.feed)
  return meter.read().levels
}

describe('alignSound', () => {
  const film = levelsOf(CAMERA)

  it('finds no place for the sound of another class, for silence, or for nothing', () => {
    expect(alignSound(film, levelsOf({}, speak(SECONDS, 99)))).toBeNull()
    expect(alignSound(film, new Float32Array(6000).fill(-100))).toBeNull()
    expect(alignSound(film, new Float32Array(0))).toBeNull()
    expect(alignSound(new Float32Array(0), film)).toBeNull()
  })

  it.each([-31_000, -7123, 0, 4321, 25_000])('finds where it begins: %i ms', (startMs) => {
    const found = alignSound(film, levelsOf({ startMs }))
    expect(Math.abs((found?.startMs ?? NaN) - startMs)).toBeLessThan(10)
    expect(found?.driftPpm).toBe(0)
    expect(found?.likeness).toBeGreaterThan(0.5)
  })

  it('finds sound that covers only a part of the class', () => {
    const found = alignSound(film, levelsOf({ startMs: 30_000 }, speak(SECONDS), 40))
    expect(Math.abs((found?.startMs ?? NaN) - 30_000)).toBeLessThan(10)
  })
})

describe('soundMoment', () => {
  it('runs ahead where the clock is fast', () => {
    expect(soundMoment({ startMs: -7000, driftPpm: 40 }, 3_593_000)).toBeCloseTo(3_600_144, 6)
    expect(soundMoment({ startMs: 500, driftPpm: 0 }, 500)).toBe(0)
  })
})

describe('correlate', () => {
  it('is what the sum over all products is', () => {
    const [a, b] = [Float32Array.from([1, -2, 3, 0.5]), Float32Array.from([0.25, 4, -1, 2, 1])]
    const size = 16
    const quick = correlate(transform(a, size), transform(b, size))
    for (let lag = -4; lag < 5; lag += 1) {
      const slow = a.reduce((sum, value, index) => sum + value * (b[index + lag] ?? 0), 0)
      expect(quick[(lag + size) % size]).toBeCloseTo(slow, 9)
    }
  })
})
