/** Reads the loudness of a recording from the summary that ffmpeg's ebur128 filter prints. */

/** Loudness after EBU R128 and ITU-R BS.1770; null = silence (below the absolute gate of -70 LUFS). */
export interface MeasuredLoudness {
  integratedLufs: number | null
  truePeakDbtp: number | null
}

/** The filter's value for "nothing passed the gate" (ITU-R BS.1770-4, Annex 1: absolute gate at -70 LKFS). */
const GATE_LUFS = -70

/**
 * Reads the summary of `ebur128=peak=true`.
 * @returns null when there is no summary in the lines.
 */
export function readLoudness(lines: readonly string[]): MeasuredLoudness | null {
  const start = lines.findLastIndex((line) => /ebur128.*Summary:/.test(line))
  if (start < 0) return null
  const summary = lines.slice(start)
  const integrated = valueOf(summary, /^\s*I:\s+(-?[\d.]+|-inf) LUFS/)
  if (integrated === undefined) return null
  const peak = valueOf(summary, /^\s*Peak:\s+(-?[\d.]+|-inf) dBFS/)
  return {
    integratedLufs: integrated !== null && integrated > GATE_LUFS ? integrated : null,
    truePeakDbtp: peak ?? null,
  }
}

/** The number of the first line that fits; null for -inf, undefined when no line fits. */
function valueOf(lines: readonly string[], pattern: RegExp): number | null | undefined {
  for (const line of lines) {
    const found = pattern.exec(line)?.[1]
    if (found !== undefined) return found === '-inf' ? null : Number(found)
  }
  return undefined
}
