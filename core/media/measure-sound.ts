/**
 * Measures sound as it comes: how loud it is every 10 ms, whole (for the wave on a page) and in the band of speech (to find
 * where someone speaks). Fed with 16-bit samples at 16 kHz, one channel.
 */

export const SOUND_RATE = 16_000
/** ms of one measure. */
export const FRAME_MS = 10
const FRAME_SAMPLES = (SOUND_RATE * FRAME_MS) / 1000

/** The band that carries speech on any microphone; our own choice, after trials with two synthetic voices. */
const BAND_HZ = { low: 250, high: 3800 }
/** What counts as silence, so that a logarithm has an end. */
const FLOOR_DB = -100

export interface SoundMeasures {
  /** Largest sample of each 10 ms, 0 to 255 (255 = full scale). */
  peaks: Uint8Array
  /** Energy in the band of speech of each 10 ms, in dB of full scale. */
  levels: Float32Array
}

export interface SoundMeter {
  feed: (samples: Int16Array) => void
  /** The largest samples of all whole pieces so far; more may be fed. */
  peek: () => Uint8Array
  /** All so far; a last piece shorter than 10 ms is counted as one. */
  read: () => SoundMeasures
}

export function openSoundMeter(): SoundMeter {
  const peaks = growing(Uint8Array)
  const levels = growing(Float32Array)
  const band = bandFilter()
  const held = new Float64Array(FRAME_SAMPLES)
  let count = 0
  const close = (): void => {
    let peak = 0
    for (let at = 0; at < count; at += 1) {
      const size = Math.abs(held[at] ?? 0)
      if (size > peak) peak = size
    }
    const energy = band(held, count)
    peaks.push(Math.min(255, Math.round(peak * 255)))
    levels.push(energy === 0 ? FLOOR_DB : Math.max(FLOOR_DB, 10 * Math.log10(energy / count)))
    count = 0
  }
  return {
    feed: (samples) => {
      for (let from = 0; from < samples.length;) {
        const taken = Math.min(FRAME_SAMPLES - count, samples.length - from)
        for (let at = 0; at < taken; at += 1) held[count + at] = (samples[from + at] ?? 0) / 32_768
        count += taken
        from += taken
        if (count === FRAME_SAMPLES) close()
      }
    },
    peek: () => peaks.read(),
    read: () => {
      if (count > 0) close()
      return { peaks: peaks.read(), levels: levels.read() }
    },
  }
}

/** The largest of each `by` measures: the same wave at a coarser zoom. */
export function coarsenPeaks(peaks: Uint8Array, by: number): Uint8Array {
  const coarse = new Uint8Array(Math.ceil(peaks.length / by))
  peaks.forEach((peak, index) => {
    const at = Math.floor(index / by)
    if (peak > (coarse[at] ?? 0)) coarse[at] = peak
  })
  return coarse
}

/**
 * High-pass and low-pass of second order, one after the other; gives the energy of what is left. Written out in one loop: it
 * runs for every sample of the class.
 * Coefficients: R. Bristow-Johnson, "Cookbook formulae for audio EQ biquad filter coefficients" (from memory), Q = 1/sqrt(2).
 */
function bandFilter(): (samples: Float64Array, count: number) => number {
  const [high, low] = [biquad('high', BAND_HZ.low), biquad('low', BAND_HZ.high)]
  const kept = { x1: 0, x2: 0, y1: 0, y2: 0, z1: 0, z2: 0 }
  return (samples, count) => {
    let { x1, x2, y1, y2, z1, z2 } = kept
    let energy = 0
    for (let at = 0; at < count; at += 1) {
      const x = samples[at] ?? 0
      const y = high.side * (x + x2) + high.middle * x1 - high.a1 * y1 - high.a2 * y2
      const z = low.side * (y + y2) + low.middle * y1 - low.a1 * z1 - low.a2 * z2
      x2 = x1
      x1 = x
      y2 = y1
      y1 = y
      z2 = z1
      z1 = z
      energy += z * z
    }
    Object.assign(kept, { x1, x2, y1, y2, z1, z2 })
    return energy
  }
}

interface Biquad {
  side: number
  middle: number
  a1: number
  a2: number
}

function biquad(pass: 'high' | 'low', hz: number): Biquad {
  const angle = (2 * Math.PI * hz) / SOUND_RATE
  const cos = Math.cos(angle)
  const alpha = Math.sin(angle) * Math.SQRT1_2
  const a0 = 1 + alpha
  const side = (pass === 'low' ? 1 - cos : 1 + cos) / 2 / a0
  const middle = (pass === 'low' ? 1 - cos : -(1 + cos)) / a0
  return { side, middle, a1: (-2 * cos) / a0, a2: (1 - alpha) / a0 }
}

/** A typed array that grows; plain arrays would take eight times the memory for a class of hours. */
function growing<Kind extends Uint8Array | Float32Array>(make: new (length: number) => Kind) {
  let held = new make(4096)
  let length = 0
  return {
    push: (value: number): void => {
      if (length === held.length) {
        const larger = new make(held.length * 2)
        larger.set(held)
        held = larger
      }
      held[length] = value
      length += 1
    },
    read: (): Kind => held.slice(0, length) as Kind,
  }
}
