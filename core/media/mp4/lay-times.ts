/** Lays the times of samples: when each is decoded, from when each is shown (ISO/IEC 14496-12, sections 8.6.1 and 8.6.6). */

export interface SampleTimes {
  /** Ticks from one sample's decoding to the next one's, in decode order. */
  durations: number[]
  /** Ticks from each one's decoding to its showing, never below 0; null = all 0. */
  offsets: number[] | null
  /** Ticks of the media that lie before the first picture shown: an edit list skips them. */
  mediaTime: number
  /** Ticks from the first picture shown to the end of the last. */
  shownTicks: number
}

/**
 * Pictures are decoded in the rhythm in which they are shown, by the least delay with which none is shown too early. So the
 * decoding times rise from sample to sample whatever the recording's own were.
 * @param ticks when each sample is shown, in decode order, all different; the earliest is 0.
 * @param endTicks when the last picture shown ends.
 */
export function laySampleTimes(ticks: readonly number[], endTicks: number): SampleTimes {
  const shown = [...ticks].sort((a, b) => a - b)
  const delay = ticks.reduce((most, tick, sample) => Math.max(most, (shown[sample] ?? 0) - tick), 0)
  const offsets = ticks.map((tick, sample) => tick - (shown[sample] ?? 0) + delay)
  return {
    durations: shown.map((tick, sample) => (shown[sample + 1] ?? endTicks) - tick),
    offsets: offsets.some((offset) => offset > 0) ? offsets : null,
    mediaTime: delay,
    shownTicks: endTicks,
  }
}
