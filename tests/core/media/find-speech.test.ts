// Where someone speaks, and what is proposed from it: silence, steady noise, speech over music, and a wave by its measures.
import { describe, expect, it } from 'vitest'
import { findSpeech } from '../../../core/media/find-speech.ts'
import { coarsenPeaks, openSoundMeter, SOUND_RATE } from '../../../core/media/measure-sound.ts'
import { proposeFromSpeech } from '../../../core/media/propose-from-speech.ts'

/** dB for each 10 ms: a room, and stretches in ms that are louder. */
function levelsOf(seconds: number, roomDb: number, loudDb: number, loud: readonly (readonly [number, number])[]) {
  return Float32Array.from({ length: seconds * 100 }, (_, index) => {
    const atMs = index * 10
    // a little unrest that is the same each time
    const unrest = Math.sin(index * 12.9898) * 1.5
    return (loud.some(([from, to]) => atMs >= from && atMs < to) ? loudDb : roomDb) + unrest
  })
}

const SPOKEN = [
  [1000, 3000],
  [3600, 6000],
  [9000, 12_000],
] as const

describe('nothing is speech in', () => {
  it.each([
    ['no sound at all', new Float32Array(0)],
    ['silence', new Float32Array(3000).fill(-100)],
    ['steady noise', levelsOf(30, -40, -40, [])],
    ['loud steady music', levelsOf(30, -12, -12, [])],
  ])('%s', (_what, levels) => {
    const { islands, pauses } = findSpeech(levels)
    expect(islands).toEqual([])
    expect(pauses).toEqual(levels.length === 0 ? [] : [{ startMs: 0, endMs: levels.length * 10 }])
  })
})

describe('speech is found', () => {
  it.each([
    ['in a quiet room', -70, -25],
    ['in a noisy hall', -45, -28],
    ['over music', -30, -20],
  ])('%s', (_what, roomDb, loudDb) => {
    const { islands, pauses } = findSpeech(levelsOf(20, roomDb, loudDb, SPOKEN))
    expect(islands).toEqual(SPOKEN.map(([startMs, endMs]) => ({ startMs, endMs })))
    expect(pauses).toEqual([
      { startMs: 0, endMs: 1000 },
      { startMs: 3000, endMs: 3600 },
      { startMs: 6000, endMs: 9000 },
      { startMs: 12_000, endMs: 20_000 },
    ])
  })

  it('through a short gap, as within a word, and not from a click', () => {
    const { islands } = findSpeech(
      levelsOf(20, -70, -25, [
        [1000, 1400],
        [1600, 2000],
        [5000, 5020],
      ]),
    )
    expect(islands).toEqual([{ startMs: 1000, endMs: 2000 }])
  })

  it('also after the music has changed', () => {
    const quiet = levelsOf(60, -70, -30, [[10_000, 12_000]])
    const loud = levelsOf(60, -30, -18, [[30_000, 32_000]])
    const both = new Float32Array([...quiet, ...loud])
    const starts = findSpeech(both).islands.map(({ startMs }) => startMs)
    expect(starts).toContain(10_000)
    expect(starts).toContain(90_000)
  })
})

describe('the meter', () => {
  const tone = (hz: number, size: number, ms: number): Int16Array =>
    Int16Array.from({ length: (SOUND_RATE * ms) / 1000 }, (_, index) =>
      Math.round(size * 32_767 * Math.sin((2 * Math.PI * hz * index) / SOUND_RATE)),
    )
  const measure = (...pieces: Int16Array[]) => {
    const meter = openSoundMeter()
    for (const piece of pieces) meter.feed(piece)
    return meter.read()
  }

  it('gives the size of a tone, and its energy: a sine of full scale has -3 dB', () => {
    const { peaks, levels } = measure(tone(1000, 1, 500))
    expect(peaks).toHaveLength(50)
    expect([peaks[20], Math.round((levels[20] ?? 0) * 10) / 10]).toEqual([255, -3])
    expect(measure(tone(1000, 0.5, 500)).peaks[20]).toBe(128)
  })

  it('hears speech, and neither rumble nor hiss', () => {
    const levelOf = (hz: number): number => measure(tone(hz, 0.5, 500)).levels[30] ?? 0
    expect(levelOf(50)).toBeLessThan(levelOf(1000) - 25)
    expect(levelOf(7500)).toBeLessThan(levelOf(1000) - 15)
    expect(Math.abs(levelOf(500) - levelOf(2000))).toBeLessThan(1.5)
  })

  it('gives the same whatever the pieces', () => {
    const whole = tone(700, 0.3, 205)
    expect(measure(whole.subarray(0, 7), whole.subarray(7, 1001), whole.subarray(1001))).toEqual(measure(whole))
    expect(measure(whole).peaks).toHaveLength(21)
  })

  it('keeps the largest at coarser zooms', () => {
    expect([...coarsenPeaks(Uint8Array.from([1, 9, 3, 4, 5]), 2)]).toEqual([9, 4, 5])
    expect([...coarsenPeaks(new Uint8Array(0), 5)]).toEqual([])
  })
})

describe('proposals without words', () => {
  it('none from nothing, none from a cough', () => {
    expect(proposeFromSpeech([], 60_000)).toEqual([])
    expect(proposeFromSpeech([{ startMs: 1000, endMs: 1500 }], 60_000)).toEqual([])
  })

  it('parts at the longest silences, and runs on while people work', () => {
    const islands = [
      [0, 20],
      [21, 50],
      [70, 100],
      [101, 120],
      [150, 175],
    ].map(([from = 0, to = 0]) => ({
      startMs: from * 1000,
      endMs: to * 1000,
    }))
    const segments = proposeFromSpeech(islands, 180_000)
    expect(segments.map(({ exercise, spans }) => [exercise.name, spans[0]?.startMs, spans[0]?.endMs])).toEqual([
      ['Exercise 1', 0, 70_000],
      ['Exercise 2', 70_000, 150_000],
      ['Exercise 3', 150_000, 175_000],
    ])
    expect(segments.every(({ state, origin }) => state === 'proposed' && origin === 'draft')).toBe(true)
  })
})
