/** Makes sound like speech, by number alone: syllables of uneven length and level with pauses between sentences. Invented. */

export interface Microphone {
  /** Moment of the class at the sound's first sample, ms. */
  startMs: number
  /** How much faster its clock runs, in millionths. */
  driftPpm: number
  /** Level of the voice and of its own noise. */
  voice: number
  noise: number
  /** Level of a beat of two a second, as of music in the room. */
  music?: number
  seed: number
}

export interface Syllable {
  startS: number
  endS: number
  level: number
}

/** Numbers from 0 to 1 that look like chance (a linear congruence; D. E. Knuth's constants). */
export function chance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}

export function speak(seconds: number, seed = 1): Syllable[] {
  const next = chance(seed)
  const syllables: Syllable[] = []
  for (let at = -20; at < seconds + 20;) {
    const words = 4 + Math.floor(next() * 14)
    for (let word = 0; word < words; word += 1) {
      const length = 0.09 + next() * 0.16
      syllables.push({ startS: at, endS: at + length, level: 0.3 + next() * 0.7 })
      at += length + 0.03 + next() * 0.06
    }
    at += 0.4 + next() * 2.6
  }
  return syllables
}

const RATE = 16_000

/** Hands over the samples in pieces: 16 bits, 16 kHz. */
export function record(
  syllables: readonly Syllable[],
  seconds: number,
  microphone: Microphone,
  onSamples: (samples: Int16Array) => void,
): void {
  const { startMs, driftPpm, voice, noise, music = 0, seed } = microphone
  const next = chance(seed)
  const step = 1 / RATE / (1 + driftPpm / 1_000_000)
  const total = Math.round(seconds * RATE)
  let index = 0
  let tail = 0
  for (let from = 0; from < total; from += RATE) {
    const samples = new Int16Array(Math.min(RATE, total - from))
    for (let at = 0; at < samples.length; at += 1) {
      const t = startMs / 1000 + (from + at) * step
      while ((syllables[index]?.endS ?? Infinity) < t) index += 1
      const syllable = syllables[index]
      const level = syllable && t >= syllable.startS ? syllable.level : 0
      tail = Math.max(level, tail * 0.9995)
      const beat = music > 0 && (t * 2) % 1 < 0.06 ? music : 0
      const value = (next() - 0.5) * (tail * voice + noise + beat)
      samples[at] = Math.max(-32_768, Math.min(32_767, Math.round(value * 32_767)))
    }
    onSamples(samples)
  }
}
