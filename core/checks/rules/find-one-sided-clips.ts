/** Warns of a dose for each side in a clip that shows or names one side only. */
import type { Segment } from '../../../shared/log-sheet.ts'
import { isKept } from '../../segments/kept-ranges.ts'
import { placeOf, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'
import { BOTH_SIDE_WORDS, LEFT_WORDS, RIGHT_WORDS } from '../words/en/side-words.ts'

/**
 * A warning and not a stop, also where the sheet itself says that one side is shown: the second side is the same
 * movement, so what is at stake is an uneven practice and not an injury; the dose on the lesson still says each side.
 */
export const ONE_SIDE_SHOWN: Rule = {
  id: 'one-side-shown',
  why: 'A member who follows a clip of one side may leave the other one out.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment }) => {
      const dose = segment.prescription
      const message = dose?.perSide === true && dose.state !== 'declined' ? lackOf(segment) : null
      if (message === null) return []
      return [
        { severity: 'warn', segmentId: segment.id, at: placeOf(segment), message: `${titleOf(segment)}: ${message}` },
      ]
    }),
}

function lackOf(segment: Segment): string | null {
  const todo = 'Put the other side in the clip, or write "repeat on the other side" on the lesson.'
  if (segment.sideShown === 'both') return null
  if (segment.sideShown !== null) return `the dose is for each side but only the ${segment.sideShown} is shown. ${todo}`
  const words = segment.cues
    .filter((cue) => cue.state !== 'declined' && isKept(segment, cue.startMs))
    .map((cue) => cue.text.toLowerCase())
    .join('. ')
  if (BOTH_SIDE_WORDS.test(words)) return null
  const left = LEFT_WORDS.test(words)
  const right = RIGHT_WORDS.test(words)
  if (left === right) return null
  return `the dose is for each side but only the ${left ? 'left' : 'right'} is spoken of. Say which sides are shown. ${todo}`
}
