/** Rough estimates a person may ask for: one-repetition maximum and energy. Never shown unasked, and never as a measurement. */

export interface Estimate {
  /** Null when the formula does not hold. */
  value: number | null
  /** True when the formula is used outside what it was made for. */
  isUnsound: boolean
  /** Limits to show beside the number. */
  limits: string[]
}

/** Neither formula is sound above this many repetitions. */
const MOST_SOUND_REPS = 10
/** Brzycki divides by 37 - r. */
const BRZYCKI_POLE = 37

/** w x (1 + r / 30), in the unit of w. Source: Epley 1985. At r = 1 it gives 103.3 % of w; see estimateOneRepMax. */
export function epley(load: number, reps: number): number {
  return load * (1 + reps / 30)
}

/** w x 36 / (37 - r), in the unit of w; infinite at r = 37. Source: Brzycki 1993. */
export function brzycki(load: number, reps: number): number {
  return (load * 36) / (BRZYCKI_POLE - reps)
}

/**
 * The load that can be lifted once, from a load lifted r times; both formulas agree at 10 repetitions.
 * One repetition is the load itself. Above 10 the estimate is unsound; from 37 on there is none.
 */
export function estimateOneRepMax(load: number, reps: number, formula: 'epley' | 'brzycki' = 'brzycki'): Estimate {
  if (!(load > 0) || !Number.isInteger(reps) || reps < 1 || reps >= BRZYCKI_POLE) {
    return {
      value: null,
      isUnsound: true,
      limits: ['There is no estimate for these numbers: give a load above 0 and 1 to 36 whole repetitions.'],
    }
  }
  if (reps === 1) return { value: load, isUnsound: false, limits: [] }
  const isUnsound = reps > MOST_SOUND_REPS
  const limits = ['People differ widely; this is a rough guide, not a test.']
  if (isUnsound) limits.push('Above 10 repetitions the formula is unsound.')
  return { value: formula === 'epley' ? epley(load, reps) : brzycki(load, reps), isUnsound, limits }
}

/**
 * Kilocalories as MET x kg x hours, for whole sessions with their usual pauses (not for pure work time).
 * The other common form, MET x 3.5 x kg / 200 x minutes, is always 5 % higher; see energyByOxygen.
 * MET values: Ainsworth et al., Med Sci Sports Exerc 43(8):1575-1581, 2011.
 */
export function energyByMet(met: number, bodyKg: number, minutes: number): number {
  return (met * bodyKg * minutes) / 60
}

/** MET values of the table lie between these (from memory: sleeping 0.95, running a mile in 4:17 23). */
const METS = { least: 0.9, most: 23 } as const

/** Kilocalories of a whole session by MET, rounded to 10, with the limits to show beside them. */
export function estimateEnergy(met: number, bodyKg: number, minutes: number): Estimate {
  const isFit = met >= METS.least && met <= METS.most && bodyKg > 0 && minutes > 0
  if (!isFit || !Number.isFinite(bodyKg * minutes)) {
    return {
      value: null,
      isUnsound: true,
      limits: ['There is no estimate for these numbers: give a MET of 0.9 to 23, a body weight and minutes above 0.'],
    }
  }
  return {
    value: roundEnergy(energyByMet(met, bodyKg, minutes)),
    isUnsound: false,
    limits: [
      'For a whole session with its usual pauses, not for work time alone.',
      'People differ widely; this is a rough guide for adults, not a measurement.',
    ],
  }
}

/** Kilocalories as MET x 3.5 x kg / 200 x minutes (5 kcal per litre of oxygen). */
export function energyByOxygen(met: number, bodyKg: number, minutes: number): number {
  return ((met * 3.5 * bodyKg) / 200) * minutes
}

/** MET minutes, by definition MET x minutes. */
export function metMinutes(met: number, minutes: number): number {
  return met * minutes
}

/** Energy for people to read: rounded to 10, since the method carries no more. */
export function roundEnergy(kcal: number): number {
  return Math.round(kcal / 10) * 10
}
