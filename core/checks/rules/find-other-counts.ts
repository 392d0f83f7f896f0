/** Notes where counting aloud gets to another number than the dose names. */
import type { Counted, Prescription } from '../../../shared/log-sheet.ts'
import { quoted, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'

/**
 * A note and not a warning: a class is often cut, and an instructor who talks loses count. Only doses of repetitions are
 * compared, since a hold is counted in seconds; a count is set beside the dose when it gets past it, or at least half way.
 */
export const COUNTED_DIFFERS: Rule = {
  id: 'counted-differs',
  why: 'A member who follows the clip does what is counted and reads what is written.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment }) => {
      const dose = segment.prescription
      const reps = dose && repsOf(dose)
      const furthest = furthestOf(segment.counted ?? [])
      if (!reps || !furthest || dose.state === 'declined') return []
      const { upTo, atMs, text } = furthest
      const isOther = upTo > reps.max || (upTo < reps.min && upTo * 2 >= reps.min)
      if (!isOther) return []
      return [
        {
          severity: 'note',
          segmentId: segment.id,
          at: { startMs: atMs, endMs: atMs },
          message: `${titleOf(segment)}: the dose says ${reps.min === reps.max ? '' : `${String(reps.min)}-`}${String(reps.max)}, counted aloud to ${String(upTo)} (${quoted(text)}). Keep the one you mean.`,
        },
      ]
    }),
}

function repsOf({ reps, repUnit, repScheme, holdSeconds, workSeconds, byLevel, then }: Prescription) {
  const isPlain =
    repUnit === 'rep' &&
    repScheme === null &&
    holdSeconds === null &&
    workSeconds === null &&
    byLevel.length + then.length === 0
  if (!isPlain || reps === null || reps === 'max') return null
  const min = reps.min ?? reps.max
  const max = reps.max ?? reps.min
  return min === null || max === null ? null : { min, max }
}

function furthestOf(counts: readonly Counted[]): Counted | null {
  return counts.reduce<Counted | null>((most, one) => (most && most.upTo >= one.upTo ? most : one), null)
}
