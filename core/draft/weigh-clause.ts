/** Says how likely each kind of cue is for a clause, from the weights of its features. */
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import type { CueKind } from '../../shared/log-sheet.ts'
import { cueFeatures } from './cue-features.ts'
import type { CluePlace } from './cue-features.ts'
import { CUE_WEIGHTS } from './words/en/cue-weights.ts'

/** Of a cue that is there the kind, likeliest first; `none` = that the clause is no cue. All likelihoods add up to 1. */
export interface Weighed {
  none: number
  kinds: readonly { kind: CueKind; likely: number }[]
}

/** @param favour how far (log of odds) a cue is preferred to none. */
export function weighClause(words: string, place: CluePlace, favour = 0): Weighed {
  const sums = NAMES.map((name) => (name === 'none' ? -favour : 0))
  for (const feature of cueFeatures(words, place)) {
    TABLE.get(feature)?.forEach((weight, at) => {
      sums[at] = (sums[at] ?? 0) + weight
    })
  }
  const odds = sums.map((sum) => Math.exp(sum - Math.max(...sums)))
  const total = odds.reduce((one, other) => one + other, 0)
  const [none = 0, ...others] = odds.map((one) => one / total)
  const kinds = CUE_KINDS.map((kind, at) => ({ kind, likely: others[at] ?? 0 }))
  return { none, kinds: kinds.toSorted((a, b) => b.likely - a.likely) }
}

const NAMES = ['none', ...CUE_KINDS] as const
const TABLE: ReadonlyMap<string, readonly number[]> = weightTable()

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
