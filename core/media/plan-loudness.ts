/** Plans the one gain that all clips of a class share, so that no lesson is louder than the next. */
import type { Loudness } from '../../shared/manifest.ts'
import type { MeasuredLoudness } from './read-loudness.ts'

/** -16 LUFS: common practice for streamed speech, no source; EBU R128 itself aims at -23 LUFS for broadcast. */
export const TARGET_LUFS = -16
/** Ceiling of the true peak. EBU R128 (2020) allows -1 dBTP; half a decibel is left for the lossy sound codec. */
export const CEILING_DBTP = -1.5
/** A class so quiet that it would need more than this is mostly noise. */
export const MAX_GAIN_DB = 20
/**
 * The limiter holds sample peaks; between samples the wave rises further, and so does the sound codec.
 * Measured: 1.1 dB higher after coding, on claps of noise. This much lower it keeps the true peak of the finished clip at or under the ceiling.
 */
const LIMITER_MARGIN_DB = 1.5

export interface LoudnessPlan {
  /** What the manifest says. */
  loudness: Loudness
  /** Filters for ffmpeg, empty when the sound is left as it is. */
  filters: string[]
}

/**
 * The gain for a class, from its measured loudness (null = not measured or silence: left as it is).
 * @param moreDb all of it louder (+) or softer (-) than the target, as a person wishes
 */
export function planLoudness(measured: MeasuredLoudness | null, moreDb = 0): LoudnessPlan {
  const integratedLufs = measured?.integratedLufs ?? null
  const truePeakDbtp = measured?.truePeakDbtp ?? null
  if (integratedLufs === null) return planGain({ integratedLufs, truePeakDbtp }, 0)
  return planGain({ integratedLufs, truePeakDbtp }, Math.min(TARGET_LUFS - integratedLufs, MAX_GAIN_DB) + moreDb)
}

/** The same for one clip that a person wants louder or softer than the class; the ceiling holds all the same. */
export function adjustLoudness(
  ofClass: LoudnessPlan,
  { gainDb }: { gainDb?: number | null | undefined },
): LoudnessPlan {
  return gainDb ? planGain(ofClass.loudness, ofClass.loudness.gainDb + gainDb) : ofClass
}

function planGain(
  { integratedLufs, truePeakDbtp }: Pick<Loudness, 'integratedLufs' | 'truePeakDbtp'>,
  wantedDb: number,
): LoudnessPlan {
  const gainDb = Math.round(wantedDb * 100) / 100
  const limited = integratedLufs !== null && truePeakDbtp !== null && truePeakDbtp + gainDb > CEILING_DBTP
  const filters = [...(gainDb === 0 ? [] : [`volume=${gainDb.toFixed(2)}dB`]), ...(limited ? [limiter()] : [])]
  return { loudness: { integratedLufs, truePeakDbtp, targetLufs: TARGET_LUFS, gainDb, limited }, filters }
}

/** `level=false`: no make-up gain; `latency=1`: the look-ahead is taken off again, so the sound stays in place. */
function limiter(): string {
  const limit = 10 ** ((CEILING_DBTP - LIMITER_MARGIN_DB) / 20)
  return `alimiter=limit=${limit.toFixed(4)}:level=false:attack=5:release=50:latency=1`
}
