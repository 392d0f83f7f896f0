/** Says of each sentence how likely it opens the teaching of another exercise, from the weights of its features. */
import { openingFeatures } from './opening-features.ts'
import type { Speech } from './read-speech.ts'
import { sidedTable } from './sided-table.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { OPENING_WEIGHTS } from './words/en/opening-weights.ts'

/** The log of the odds, by sentence. */
export function weighOpenings(speech: Speech, candidates: readonly WeighedCandidate[]): number[] {
  return openingFeatures(speech, oddsBySentence(candidates)).map((features) => oddsOf(speech, features))
}

const oddsOf = sidedTable(OPENING_WEIGHTS)

/** The greatest odds of the names in each sentence. */
export function oddsBySentence(candidates: readonly WeighedCandidate[]): Map<number, number> {
  const odds = new Map<number, number>()
  for (const { candidate, odds: own } of candidates)
    odds.set(candidate.sentence, Math.max(own, odds.get(candidate.sentence) ?? -Infinity))
  return odds
}
