/** Warns of a lesson without an easier option. */
import { formatClock } from '../../../shared/time.ts'
import { isKept } from '../../segments/kept-ranges.ts'
import { placeOf, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'

export const EASIER_MISSING: Rule = {
  id: 'easier-missing',
  why: 'Members differ; without an easier option some will do what is too much for them.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment }) => {
      const options = segment.cues.filter((cue) => cue.kind === 'easier' && cue.state !== 'declined')
      if (segment.easier.length > 0 || options.some((cue) => isKept(segment, cue.startMs))) return []
      const outside = options[0]
      const message = outside
        ? `the easier option is told at ${formatClock(outside.startMs)}, outside this clip. Put it in the clip or link an easier exercise.`
        : 'no easier option is told. Mark one, or link an easier exercise.'
      return [
        { severity: 'warn', segmentId: segment.id, at: placeOf(segment), message: `${titleOf(segment)}: ${message}` },
      ]
    }),
}
