/** Says how likely each kind of cue is for a clause, from the weights of its features. */
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import type { CueKind } from '../../shared/log-sheet.ts'
import { cueFeatures, placeFeature } from './cue-features.ts'
import { CUE_WEIGHTS } from './words/en/cue-weights.ts'

/** Of a cue that is there the kind, likeliest first; `none` = that the clause is no cue. All likelihoods add up to 1. */
export interface Weighed {
  none: number
  kinds: readonly { kind: CueKind; likely: number }[]
}

/** By feature what it adds for none and for each kind (log of odds). */
export type CueTable = ReadonlyMap<string, readonly number[]>

/** What the features of a clause add up to for none and for each kind (log of odds), wherever it stands. */
export function sumClause(words: string, conditional: boolean, table: CueTable = TABLE): number[] {
  const sums = NAMES.map(() => 0)
  for (const feature of cueFeatures(words, { conditional })) addTo(sums, feature, table)
  return sums
}

/** How much the signs of a clause and the words as the net hears them count; fitted apart, both together tell more than either. */
const SIGNS_SHARE = 0.4
const HEARD_SHARE = 0.6

/** Both together, where words were heard. @param heard the mean log of the likelihood of none and of each kind over the words of the clause */
export function sumBoth(signs: readonly number[], heard: Float32Array | null): number[] {
  return signs.map((sum, at) => SIGNS_SHARE * sum + HEARD_SHARE * (heard?.[at] ?? 0))
}

/** The likelihoods for such sums in their place. @param favour how far (log of odds) a cue is preferred to none. */
export function weighSums(summed: readonly number[], early: boolean | undefined, favour = 0): Weighed {
  const sums = [...summed]
  sums[0] = (sums[0] ?? 0) - favour
  if (early !== undefined) addTo(sums, placeFeature(early), TABLE, SIGNS_SHARE)
  const odds = sums.map((sum) => Math.exp(sum - Math.max(...sums)))
  const total = odds.reduce((one, other) => one + other, 0)
  const [none = 0, ...others] = odds.map((one) => one / total)
  const kinds = CUE_KINDS.map((kind, at) => ({ kind, likely: others[at] ?? 0 }))
  return { none, kinds: kinds.toSorted((a, b) => b.likely - a.likely) }
}

function addTo(sums: number[], feature: string, table: CueTable, share = 1): void {
  table.get(feature)?.forEach((weight, at) => {
    sums[at] = (sums[at] ?? 0) + share * weight
  })
}

const NAMES = ['none', ...CUE_KINDS] as const
const TABLE: CueTable = weightTable()

function weightTable(): Map<string, number[]> {
  const table = new Map<string, number[]>()
  NAMES.forEach((name, at) => {
    for (const [sign, lists] of Object.entries(CUE_WEIGHTS[name])) {
      for (const [weight, features] of lists) {
        for (const of of features.trim().split(/\s+/)) {
          const key = of === 'yes' ? sign : `${sign} ${of}`
          const row = table.get(key) ?? NAMES.map(() => 0)
          row[at] = weight
          table.set(key, row)
        }
      }
    }
  })
  return table
}
