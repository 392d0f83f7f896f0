/** Says of each sentence how likely it opens the teaching of another exercise, or comes back to one, from the weights of its features. */
import { hearTurns, oddsBySentence, turnFeatures } from './hear-turns.ts'
import type { HeardTurn } from './hear-turns.ts'
import { heardFeatures, nameFeatures, sentenceFeatures } from './opening-features.ts'
import type { Speech } from './read-speech.ts'
import { sidedTable } from './sided-table.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { OPENING_WEIGHTS } from './words/en/opening-weights.ts'
import { RETURN_WEIGHTS } from './words/en/return-weights.ts'

/** Log odds by sentence. */
export interface SentenceOdds {
  /** That another exercise is opened there. */
  opening: number[]
  /** That the class comes back to one, as far as the sentence alone tells. */
  comingBack: number[]
  /** What the net hears. */
  heard: HeardTurn[]
}

/** What each sentence of a class tells by itself. */
export function weighSentences(speech: Speech, candidates: readonly WeighedCandidate[]): SentenceOdds {
  const names = oddsBySentence(candidates)
  const own = speech.sentences.map((_, index) => sentenceFeatures(speech, index))
  const heard = hearTurns(turnFeatures(speech, candidates, own), speech.turnNet)
  const odds: SentenceOdds = { opening: [], comingBack: [], heard }
  own.forEach((steady, index) => {
    const features = [...steady, ...heardFeatures(heard, index)]
    odds.opening.push(openingOdds(speech, features) + openingOdds(speech, nameFeatures(names, index)))
    odds.comingBack.push(returnOdds(speech, features))
  })
  return odds
}

const openingOdds = sidedTable(OPENING_WEIGHTS)
const returnOdds = sidedTable(RETURN_WEIGHTS)
