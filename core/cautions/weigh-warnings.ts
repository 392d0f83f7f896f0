/** Says of a sentence, by all its words, how likely it warns of each hazard: no list of phrases holds all ways to say it. */
import { foldWords } from '../catalogue/fold-words.ts'
import { remember } from '../remember.ts'
import type { HazardSlug } from './hazard-slugs.ts'
import { WARNING_WEIGHTS } from './words/en/warning-weights.ts'

/** For each hazard a row of weights as filed: words and pairs of words that add as much to the log of the odds. */
export type WarningRows = readonly (readonly [HazardSlug, readonly (readonly [weight: number, features: string])[]])[]

/** For each feature what it adds to each hazard. */
export type WarningTable = ReadonlyMap<string, readonly (readonly [HazardSlug, number])[]>

/** The hazards that a sentence warns of by its words. */
export const warningsIn = remember(2000, (text: string): readonly HazardSlug[] =>
  warningsBy(text, (built ??= warningTable(WARNING_WEIGHTS))),
)

let built: WarningTable | undefined

/** The same by a table. @param least log of the odds */
export function warningsBy(text: string, table: WarningTable, least = LEAST_ODDS): HazardSlug[] {
  const odds = new Map<HazardSlug, number>()
  for (const feature of warningFeatures(text))
    for (const [hazard, weight] of table.get(feature) ?? []) odds.set(hazard, (odds.get(hazard) ?? 0) + weight)
  return [...odds].flatMap(([hazard, sum]) => (sum > least ? [hazard] : []))
}

/** Below even: a warning is rare among sentences, and hardly any other sentence comes near. */
const LEAST_ODDS = -3

/** What every sentence has. */
export const ALWAYS = '*'

/** The different words and pairs of words of a sentence, folded; all numbers are one. */
export function warningFeatures(text: string): ReadonlySet<string> {
  const words = foldWords(text).map((word) => (/^\d+$/.test(word.text) ? '0' : word.text))
  return new Set([ALWAYS, ...words, ...words.slice(1).map((word, index) => `${words[index] ?? ''} ${word}`)])
}

/** A table by features, from rows by hazards. */
export function warningTable(rows: WarningRows): WarningTable {
  const table = new Map<string, [HazardSlug, number][]>()
  for (const [hazard, weights] of rows)
    for (const [weight, features] of weights)
      for (const feature of features.split('|')) {
        const adds = table.get(feature)
        if (adds) adds.push([hazard, weight])
        else table.set(feature, [[hazard, weight]])
      }
  return table
}
