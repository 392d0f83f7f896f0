/** Warns of a dose for each side in a clip that shows or names one side only. */
import type { Segment, SideNamed } from '../../../shared/log-sheet.ts'
import { formatClock } from '../../../shared/time.ts'
import { onlySide, sidesInClip, sidesSaid } from '../../sides/sides-of-segment.ts'
import type { Side } from '../../sides/sides-of-segment.ts'
import { placeOf, quoted, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'

/**
 * A warning and not a stop where the sheet itself says that one side is shown, or where the same side is called for both
 * turns: the second side is the same movement, so what is at stake is an uneven practice and not an injury, and the dose
 * on the lesson still says each side. A note where words only name one side, since the other one is often not named.
 */
export const ONE_SIDE_SHOWN: Rule = {
  id: 'one-side-shown',
  why: 'A member who follows a clip of one side may leave the other one out.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment, traits }) => {
      const dose = segment.prescription
      if (dose?.perSide !== true || dose.state === 'declined' || segment.sideShown === 'both') return []
      const named = sidesInClip(segment)
      const isWorked = named.some(({ as }) => as !== 'aside' && as !== 'mirrored')
      const side = segment.sideShown ?? (isWorked ? onlySide(named) : null)
      if (side === null) return []
      const turns = segment.sideShown === null ? turnsOf(named) : []
      // A limb named in passing says little where a draft gave a dose for each side to what is done on both at once.
      const isDoubtful = dose.state === 'proposed' && traits.entry?.sided === false
      if (segment.sideShown === null && turns.length === 0 && isDoubtful) return []
      return [
        {
          severity: segment.sideShown !== null || turns.length > 1 ? 'warn' : 'note',
          segmentId: segment.id,
          at: placeOf(segment),
          message: `${titleOf(segment)}: the dose is for each side but ${lackOf(segment, side, turns)}`,
        },
      ]
    }),
}

function lackOf(segment: Segment, side: Side, turns: readonly SideNamed[]): string {
  if (segment.sideShown !== null)
    return `only the ${side} is shown. Put the other side in the clip, or write "repeat on the other side" on the lesson.`
  const [first, second] = turns
  if (first && second)
    return `${quoted(first.text)} is called at ${formatClock(first.atMs)} and ${quoted(second.text)} at ${formatClock(second.atMs)}, the other side never. Say which sides the clip shows.`
  const outside = sidesSaid(segment).find((one) => one.side !== side && one.as !== 'mirrored')
  if (outside)
    return `the words of the clip name the ${side} only; ${quoted(outside.text)} at ${formatClock(outside.atMs)} is outside it. Put that in the clip, or say which sides it shows.`
  return `the words name the ${side} only. Say which sides the clip shows.`
}

/** Calls of a side more than a moment apart: said twice in one breath it is one call. */
function turnsOf(named: readonly SideNamed[]): SideNamed[] {
  const calls = named.filter(({ as }) => as === 'turn' || as === 'first')
  return calls.filter((one, index) => index === 0 || one.atMs - (calls[index - 1]?.atMs ?? 0) > ONE_CALL_MS)
}

const ONE_CALL_MS = 15_000
