/** Compares the sound of a clip with the recording's: whether it is the same, and by how much it is late. */

/** What was compared: 16-bit samples of one channel, both from the first kept moment on. */
export const COMPARE_RATE = 8000
/** Half a second is compared, where the recording is loudest, and the clip is moved by up to 60 ms against it. */
const WINDOW = COMPARE_RATE / 2
const MOST_LAG = (COMPARE_RATE * 60) / 1000
/** Quieter than this (-60 dB of full scale) there is nothing to compare. */
const LEAST_LEVEL = 32_768 / 1000
/** Below this the two are not the same sound: gain, limiter and coding leave far more (measured: 0.9 and up). */
const LEAST_CORRELATION = 0.5
const CLEARLY = 0.02

export interface SoundComparison {
  /** Positive = the clip's sound is late. */
  lagMs: number
  /** 1 = the same but for its level. */
  correlation: number
}

/** @returns null where both are too short or too quiet to tell. */
export function compareSound(clip: Int16Array, recording: Int16Array): SoundComparison | null {
  const at = loudestWindow(recording, Math.min(clip.length, recording.length))
  if (at === null) return null
  // of a steady tone every whole wave fits: unless another place fits clearly better, it is in place
  let best: SoundComparison = { lagMs: 0, correlation: correlate(clip, at, recording, at) + CLEARLY }
  for (let lag = -MOST_LAG; lag <= MOST_LAG; lag += 1) {
    const correlation = correlate(clip, at + lag, recording, at)
    if (correlation > best.correlation) best = { lagMs: (lag * 1000) / COMPARE_RATE, correlation }
  }
  return best.lagMs === 0 ? { ...best, correlation: best.correlation - CLEARLY } : best
}

/** True when the two hold different sound. */
export function isOtherSound({ correlation }: SoundComparison): boolean {
  return correlation < LEAST_CORRELATION
}

/** Where the loudest half second begins, with room to move on both sides. */
function loudestWindow(samples: Int16Array, length: number): number | null {
  const step = WINDOW / 4
  let best: number | null = null
  let most = LEAST_LEVEL ** 2 * WINDOW
  for (let at = MOST_LAG; at + WINDOW + MOST_LAG <= length; at += step) {
    let energy = 0
    for (let sample = at; sample < at + WINDOW; sample += 1) energy += (samples[sample] ?? 0) ** 2
    if (energy > most) {
      most = energy
      best = at
    }
  }
  return best
}

function correlate(clip: Int16Array, clipAt: number, recording: Int16Array, at: number): number {
  let [product, a, b] = [0, 0, 0]
  for (let sample = 0; sample < WINDOW; sample += 1) {
    const x = clip[clipAt + sample] ?? 0
    const y = recording[at + sample] ?? 0
    product += x * y
    a += x * x
    b += y * y
  }
  return product / Math.sqrt(a * b || 1)
}
