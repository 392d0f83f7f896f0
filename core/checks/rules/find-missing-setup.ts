/** Warns of a clip in which nobody says how to get into the start position. */
import { formatClock } from '../../../shared/time.ts'
import { isKept } from '../../segments/kept-ranges.ts'
import { placeOf, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'

/** A warning and not a stop: the picture shows the start, and a member is not put at risk by a late word. */
export const SETUP_MISSING: Rule = {
  id: 'setup-missing',
  why: 'Whoever cannot see the picture, or sees it too late, needs the start position in words.',
  source: 'WCAG 2.2, success criterion 1.2.3 (what is seen is also told); the rest common practice',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment }) => {
      const setups = segment.cues.filter((cue) => cue.kind === 'setup' && cue.state !== 'declined')
      if (setups.some((cue) => isKept(segment, cue.startMs))) return []
      const outside = setups[0]
      const message = outside
        ? `the start position is told at ${formatClock(outside.startMs)}, outside this clip. Put that in the clip.`
        : 'no word says how to get into the start position. Mark it, or begin the clip earlier.'
      return [
        {
          severity: 'warn',
          segmentId: segment.id,
          at: placeOf(segment),
          message: `${titleOf(segment)}: ${message}`,
        },
      ]
    }),
}
