// Sound recorded apart, an hour long, finds its place beside the film: at the start, in the middle and at the end.
import { describe, expect, it } from 'vitest'
import { alignSound, soundMoment } from '../../core/media/align-sound.ts'
import { openSoundMeter } from '../../core/media/measure-sound.ts'
import { record, speak } from '../helpers/spoken-sound.ts'
import type { Microphone } from '../helpers/spoken-sound.ts'

const HOUR_S = 3600
/** Echo, noise and music reach the camera; the microphone on the collar hears the voice. */
const CAMERA = { startMs: 0, driftPpm: 0, voice: 0.15, noise: 0.02, music: 0.05, seed: 11 }
const COLLAR = { voice: 0.8, noise: 0.004, seed: 12 }

const CASES = [
  { name: 'begun 7 s before the film, 40 ppm fast', startMs: -7000, driftPpm: 40 },
  { name: 'begun 7 s after the film, 40 ppm slow', startMs: 7000, driftPpm: -40 },
].slice(0, process.env.REPSLATE_SOAK ? 2 : 1)

function levelsOf(seconds: number, speech: ReturnType<typeof speak>, microphone: Microphone): Float32Array {
  const meter = openSoundMeter()
  record(speech, seconds, microphone, meter.feed)
  return meter.read().levels
}

describe('an hour of sound recorded apart', () => {
  it.each(CASES)('is placed within 20 ms: $name', ({ startMs, driftPpm }) => {
    const speech = speak(HOUR_S)
    const film = levelsOf(HOUR_S, speech, CAMERA)
    const found = alignSound(film, levelsOf(HOUR_S, speech, { ...COLLAR, startMs, driftPpm }))
    expect(found).not.toBeNull()
    for (const atMs of [10_000, HOUR_S * 500, HOUR_S * 1000 - 10_000]) {
      const wanted = soundMoment({ startMs, driftPpm }, atMs)
      const error = Math.abs(soundMoment(found ?? { startMs: NaN, driftPpm: NaN }, atMs) - wanted)
      expect(error, `error at ${atMs} ms`).toBeLessThanOrEqual(20)
    }
  })
})
