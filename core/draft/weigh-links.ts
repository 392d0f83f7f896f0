/** Groups the exercises that are done in turns, by how likely each is done in turns with the one behind it. */
import type { Group } from './find-groups.ts'
import { linkFeatures } from './link-features.ts'
import type { LinkedClass } from './link-features.ts'
import { LINK_WEIGHTS } from './words/en/link-weights.ts'

/** What each feature adds to the log of the odds that two exercises are done in turns. */
export type LinkTable = ReadonlyMap<string, number>

/** The groups of a class: runs of exercises, each done in turns with the next. @param table other weights than the fitted ones */
export function weighLinks(known: LinkedClass, table: LinkTable = TABLE): Group[] {
  const runs: number[][] = [[0]]
  linkFeatures(known).forEach((features, index) => {
    const odds = features.reduce((sum, feature) => sum + (table.get(feature) ?? 0), 0)
    if (odds > LEAST_ODDS) runs.at(-1)?.push(index + 1)
    else runs.push([index + 1])
  })
  return runs.flatMap((members): Group[] => {
    if (members.length < 2) return []
    const ruled = known.groups.filter((group) => group.members.some((member) => members.includes(member)))
    const starts = members.flatMap((member) => known.owning.teachings[member]?.spans[0]?.offset ?? [])
    const isPair = members.length === 2 && ruled.every(({ scheme }) => scheme === 'superset')
    return [
      {
        scheme: isPair ? 'superset' : 'circuit',
        members,
        offset: Math.min(...starts, ...ruled.map(({ offset }) => offset)),
      },
    ]
  })
}

/** A group that is missed costs the person more than one too many: its rounds are lost. */
const LEAST_ODDS = -0.3

const TABLE: LinkTable = new Map(
  LINK_WEIGHTS.flatMap(([weight, features]) => features.split('|').map((feature) => [feature, weight] as const)),
)
