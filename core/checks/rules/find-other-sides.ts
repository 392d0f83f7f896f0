/** Warns where the words name one side and what is known of the side shown says the other. */
import type { Segment, SideNamed } from '../../../shared/log-sheet.ts'
import { formatClock } from '../../../shared/time.ts'
import { onlySide, sideOfName, sidesInClip } from '../../sides/sides-of-segment.ts'
import type { Side } from '../../sides/sides-of-segment.ts'
import { placeOf, quoted, titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'

/**
 * What is known without looking at the picture: the side that the sheet or the name says, the order announced, what is
 * called after a change of sides, and words that say the class is taught as in a mirror. Where it is taught so, the side
 * shown and the side said differ on purpose, and nothing is compared. What only supports, and where to look, is no side.
 */
export const SIDE_DIFFERS: Rule = {
  id: 'side-differs',
  why: 'A member who hears one side and sees the other does not know which one to work.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons }) =>
    lessons.flatMap(({ segment }) => {
      const named = sidesInClip(segment)
      return [
        ...shownOther(segment, named),
        ...firstOther(segment, named),
        ...calledAgain(segment, named),
        ...toldMirrored(segment, named),
      ]
    }),
}

const OTHER = { left: 'right', right: 'left' } as const satisfies Record<Side, Side>

/** The sheet or the name says left, and every word in the clip says right. */
function shownOther(segment: Segment, named: readonly SideNamed[]): Found[] {
  const inName = sideOfName(segment.exercise.name)
  const shown = segment.sideShown === 'both' ? null : (segment.sideShown ?? inName)
  if (shown === null) return []
  const title = titleOf(segment)
  if (inName !== null && inName !== shown) {
    const message = `${title}: the name says the ${inName}, and the sheet says that the ${shown} is shown. Correct the one that is wrong.`
    return [{ severity: 'warn', segmentId: segment.id, at: placeOf(segment), message }]
  }
  if (isMirrored(segment, named)) return []
  const said = named.find(({ side, as }) => side === OTHER[shown] && as !== 'aside')
  if (!said || onlySide(named) !== OTHER[shown]) return []
  const known =
    segment.sideShown === null ? `it is named after the ${shown}` : `the sheet says that the ${shown} is shown`
  const message = `${title}: ${quoted(said.text)} is said, but ${known}. Look at the picture and correct the side, or mark it as mirrored.`
  return [{ severity: 'warn', segmentId: segment.id, at: momentOf(said), message }]
}

/** Two orders announced so soon after each other are one slip, in ms; later it may be another set. */
const ONE_ORDER_MS = 20_000

/** "Right side first", and a moment later "start on the left". */
function firstOther(segment: Segment, named: readonly SideNamed[]): Found[] {
  if (isMirrored(segment, named)) return []
  const orders = named.filter(({ as }) => as === 'first')
  const second = orders.find((one, index) => {
    const before = orders[index - 1]
    return before !== undefined && before.side !== one.side && one.atMs - before.atMs <= ONE_ORDER_MS
  })
  const first = second && orders[orders.indexOf(second) - 1]
  if (!first) return []
  return [
    {
      severity: 'warn',
      segmentId: segment.id,
      at: momentOf(second),
      message: `${titleOf(segment)}: ${quoted(first.text)} is announced at ${formatClock(first.atMs)} and ${quoted(second.text)} at ${formatClock(second.atMs)}. Look which one is shown, and cut the other words out.`,
    },
  ]
}

/** Between "other side" and the call of a side that belongs to it, in ms. */
const CALL_WITHIN_MS = 10_000

/** "And switch legs. Right leg out": a limb named so soon after is the one that works now. */
const LIMB_WORKED = /^(?:left|right) (?:leg|arm|hips)\b/i
const LIMB_WITHIN_MS = 8000

/** "Right side first … and swap, right leg": after a change comes the other side, or the change was none. */
function calledAgain(segment: Segment, named: readonly SideNamed[]): Found[] {
  const isSettled = segment.sideShown === 'both' && segment.setByPerson.includes('sideShown')
  if (isSettled || isMirrored(segment, named)) return []
  let before: SideNamed | null = null
  let changed: SideNamed | null = null
  for (const one of named) {
    const isLimb: boolean = changed !== null && LIMB_WORKED.test(one.text) && one.atMs - changed.atMs <= LIMB_WITHIN_MS
    if (one.as !== 'turn' && one.as !== 'first' && !isLimb) continue
    if (one.side === 'both') before = changed = null
    else if (one.side === 'other') changed = before ? one : null
    else {
      const isNear: boolean = changed !== null && one.atMs - changed.atMs <= CALL_WITHIN_MS
      if (before && changed && isNear && before.side === one.side && onlySideTurns(named, one.side))
        return [
          {
            severity: 'warn',
            segmentId: segment.id,
            at: momentOf(one),
            message: `${titleOf(segment)}: ${quoted(before.text)} is called at ${formatClock(before.atMs)}, then ${quoted(changed.text)} and ${quoted(one.text)} again at ${formatClock(one.atMs)}. Say which sides the clip shows, or cut the slip out.`,
          },
        ]
      before = one
      changed = null
    }
  }
  return []
}

/** True when the other side is never called by its name. */
function onlySideTurns(named: readonly SideNamed[], side: Side): boolean {
  return !named.some((one) => one.side === OTHER[side] && one.as !== 'aside')
}

/** Taught as in a mirror, and the sheet says otherwise or nothing. */
function toldMirrored(segment: Segment, named: readonly SideNamed[]): Found[] {
  const told = named.find(({ as }) => as === 'mirrored')
  if (!told || segment.mirrored === true) return []
  const sheet = segment.mirrored === false ? 'is marked as not mirrored' : 'does not say so'
  return [
    {
      severity: segment.mirrored === false ? 'warn' : 'note',
      segmentId: segment.id,
      at: momentOf(told),
      message: `${titleOf(segment)}: ${quoted(told.text)} is said, and the exercise ${sheet}. Set Mirrored, so that it is clear whose left and right are meant.`,
    },
  ]
}

function isMirrored({ mirrored }: Segment, named: readonly SideNamed[]): boolean {
  return mirrored === true || named.some(({ as }) => as === 'mirrored')
}

function momentOf({ atMs }: SideNamed): { startMs: number; endMs: number } {
  return { startMs: atMs, endMs: atMs }
}
