/** Stops a lesson that does not say how much to do. */
import type { Prescription } from '../../../shared/log-sheet.ts'
import { placeOf, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'
import { hasWork } from '../weigh-dose.ts'

export const DOSE_MISSING: Rule = {
  id: 'dose-missing',
  why: 'A member who opens one exercise must know how much to do before starting.',
  source:
    'Frequency, intensity, time and type make an exercise prescription: Garber et al., Med Sci Sports Exerc 43(7):1334-1359, 2011',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment }) => {
      const lack = lackOf(segment.prescription)
      if (lack === null) return []
      return [
        { severity: 'stop', segmentId: segment.id, at: placeOf(segment), message: `${titleOf(segment)}: ${lack}` },
      ]
    }),
}

function lackOf(dose: Prescription | null): string | null {
  if (dose === null || dose.state === 'declined') {
    return 'no dose is said. Set one, or mark it as open on purpose.'
  }
  if (hasWork(dose)) return null
  if (dose.sets !== null) {
    return 'the dose names sets but no reps, time, hold or distance. Add the amount, or mark it as open on purpose.'
  }
  return 'the dose names no reps, time, hold or distance. Add the amount, or mark it as open on purpose.'
}
