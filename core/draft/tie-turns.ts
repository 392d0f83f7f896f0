/** What ties a saying to exercises that are done in turns: it is said among them, or it names one of them. */
import type { Teaching } from './find-exercises.ts'
import type { Group } from './find-groups.ts'
import type { AskedFor, Place, PlacedSaying, Turns } from './tie-sayings.ts'

/** The turns of one exercise. */
export function turnsOf(index: number, groups: readonly Group[], teachings: readonly Teaching[]): Turns {
  const own = groups.find(({ members }) => members.includes(index))
  const spans = (own?.members ?? [index]).flatMap((member) => teachings[member]?.spans[0] ?? [])
  return {
    mates: new Set(own?.members.filter((member) => member !== index)),
    others: new Set(groups.flatMap(({ members }) => (members.includes(index) ? [] : members))),
    offset: Math.min(...spans.map(({ offset }) => offset)),
    end: Math.max(...spans.map(({ end }) => end)),
  }
}

/** Marks of a saying as seen from one that is done in turns, or that stands alone among such. */
export function turnTies(one: PlacedSaying, place: Place, { index, turns }: AskedFor): string[] {
  const { mates, others, offset, end } = turns
  const { hit, inside, inSentence, tells } = one
  const whose = mates.size > 0 ? 'in turns' : 'alone'
  const marks = [`${whose} ${place}`]
  if (tells.includes('rounds')) marks.push(`${whose} ${place} rounds`)
  if (hit.dose.workSeconds !== null && hit.dose.restSeconds !== null) {
    marks.push(`interval ${whose} ${place}`)
    if (one.around.has(index)) marks.push(`interval ${whose}, named around`)
  }
  const named = inSentence.flatMap(({ teaching }) => (teaching === null || teaching === index ? [] : [teaching]))
  if (named.some((teaching) => mates.has(teaching))) marks.push('names a mate')
  else if (named.some((teaching) => others.has(teaching))) marks.push(`${whose}, names one of another group`)
  else if (named.length > 0) marks.push(`${whose}, names one alone`)
  if (inside !== null && inside !== index)
    marks.push(
      mates.has(inside) ? 'told of a mate' : `${whose}, told of ${others.has(inside) ? 'another group' : 'one alone'}`,
    )
  if (mates.size === 0) return marks
  if (hit.offset < offset && offset - hit.offset < NEAR_GROUP) marks.push('just before the group')
  if (hit.offset >= offset && hit.offset < end) marks.push(WHILE_TAUGHT)
  if (hit.offset >= end && hit.offset - end < NEAR_GROUP) marks.push('just behind the group')
  return marks
}

/** Said while those are taught that go in turns. */
export const WHILE_TAUGHT = 'while the group is taught'

/** Characters. */
const NEAR_GROUP = 260
