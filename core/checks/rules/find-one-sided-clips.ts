/** Warns of a dose for each side in a clip that shows or names one side only. */
import type { Segment } from '../../../shared/log-sheet.ts'
import { isKept } from '../../segments/kept-ranges.ts'
import { placeOf, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'
import { BOTH_SIDE_WORDS, LEFT_WORDS, RIGHT_WORDS } from '../words/en/side-words.ts'

/**
 * A warning and not a stop where the sheet itself says that one side is shown: the second side is the same movement, so
 * what is at stake is an uneven practice and not an injury, and the dose on the lesson still says each side.
 * A note where only the cues tell, since "and the other leg" is often no cue.
 */
export const ONE_SIDE_SHOWN: Rule = {
  id: 'one-side-shown',
  why: 'A member who follows a clip of one side may leave the other one out.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment }) => {
      const dose = segment.prescription
      if (dose?.perSide !== true || dose.state === 'declined' || segment.sideShown === 'both') return []
      const side = segment.sideShown ?? sideSpokenOf(segment)
      if (side === null) return []
      const shown = segment.sideShown !== null
      const lack = shown
        ? `only the ${side} is shown. Put the other side in the clip, or write "repeat on the other side" on the lesson.`
        : `the marked words speak of the ${side} only. Say which sides the clip shows.`
      return [
        {
          severity: shown ? 'warn' : 'note',
          segmentId: segment.id,
          at: placeOf(segment),
          message: `${titleOf(segment)}: the dose is for each side but ${lack}`,
        },
      ]
    }),
}

/** The one side that the kept cues name; null when they name both, none, or bring in the other one. */
function sideSpokenOf(segment: Segment): 'left' | 'right' | null {
  const words = segment.cues
    .filter((cue) => cue.state !== 'declined' && isKept(segment, cue.startMs))
    .map((cue) => cue.text.toLowerCase())
    .join('. ')
  if (BOTH_SIDE_WORDS.test(words)) return null
  const left = LEFT_WORDS.test(words)
  const right = RIGHT_WORDS.test(words)
  if (left === right) return null
  return left ? 'left' : 'right'
}
