/** Warns of numbers outside what classes use: often a misheard word (fifteen, fifty). */
import type { Prescription, Range } from '../../../shared/log-sheet.ts'
import { placeOf, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'
import { allDoses, isSaid } from '../weigh-dose.ts'

interface Limit {
  field: 'sets' | 'reps' | 'workSeconds' | 'holdSeconds' | 'restSeconds'
  name: string
  unit: string
  min: number
  max: number
}

/** Our own limits of what is usual; nothing published stands behind them. */
const LIMITS: readonly Limit[] = [
  { field: 'sets', name: 'sets', unit: '', min: 1, max: 10 },
  { field: 'reps', name: 'reps', unit: '', min: 1, max: 100 },
  { field: 'workSeconds', name: 'work', unit: ' s', min: 3, max: 1800 },
  { field: 'holdSeconds', name: 'hold', unit: ' s', min: 1, max: 300 },
  { field: 'restSeconds', name: 'rest', unit: ' s', min: 0, max: 600 },
]

export const DOSE_UNLIKELY: Rule = {
  id: 'dose-unlikely',
  why: 'A number far from what is usual is more often misheard than meant.',
  source: 'our own limits, no source',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment }) => {
      const dose = segment.prescription
      if (dose === null || dose.state === 'declined') return []
      return allDoses(dose)
        .flatMap(oddNumbers)
        .map((odd) => ({
          severity: 'warn' as const,
          segmentId: segment.id,
          at: placeOf(segment),
          message: `${titleOf(segment)}: ${odd} is unusual. Listen again and correct or keep it.`,
        }))
    }),
}

function oddNumbers(dose: Prescription): string[] {
  return LIMITS.flatMap(({ field, name, unit, min, max }) => {
    const value = dose[field]
    if (value === 'max' || !isSaid(value)) return []
    return numbersOf(value)
      .filter((number) => number < min || number > max)
      .map((number) => `${name} ${number}${unit}`)
  })
}

function numbersOf({ min, max }: Range): number[] {
  return [...new Set([min, max].flatMap((number) => (number === null ? [] : [number])))]
}
