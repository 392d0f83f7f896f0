/** Hears among all sentences which open the teaching of another exercise, which come back to one, and where none goes on, as a net has learned it. */
import { netOf } from './filed-net.ts'
import { callsBackAt, nameFeatures, sentenceFeatures } from './opening-features.ts'
import type { Speech } from './read-speech.ts'
import { isShort } from './sided-table.ts'
import { listen } from './word-net.ts'
import type { WordNet } from './word-net.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { TURN_NET_WEIGHTS } from './words/en/turn-net-weights.ts'

/** How much likelier than all else it is that a sentence opens a teaching, and that it comes back to one: natural logs of odds. */
export interface HeardTurn {
  opens: number
  comesBack: number
  /** No exercise is taught or done in it: talk, a change of place, a rest. */
  over: number
}

/** The scores of the net, in order. */
export const HEARD_TURNS = ['goes on', 'opens', 'comes back', 'over'] as const

/**
 * What the net knows of each sentence: its features by themselves, the names in it, its words, and the kind of speech it is said in.
 * @param own what sentenceFeatures gives for each, where that is known
 */
export function turnFeatures(
  speech: Speech,
  candidates: readonly WeighedCandidate[],
  own: readonly (readonly string[])[] = speech.sentences.map((_, index) => sentenceFeatures(speech, index)),
): string[][] {
  const { sentences } = speech
  const names = oddsBySentence(candidates)
  const known = whetherKnown(candidates)
  const kind = `${isShort(speech) ? 'short' : 'whole'} ${speech.unpunctuated ? 'plain' : 'marked'}`
  return sentences.map(({ words, cues, offset }, index) => {
    const before = sentences[index - 1]
    const calls = callsBackAt(sentences, index)
    const gap = before ? (speech.timeOf(offset) - speech.timeOf(before.offset)) / 1000 : 0
    return [
      ...(own[index] ?? []).map((feature) => (feature.includes(' ') ? feature : `is ${feature}`)),
      ...nameFeatures(names, index),
      `speech ${kind}`,
      `known ${known.get(index) ?? 'nobody'}`,
      `gap ${gap < 2 ? 0 : gap < 4 ? 1 : gap < 8 ? 2 : gap < 15 ? 3 : 4}`,
      ...(calls.isRound ? ['is in a round'] : []),
      ...calls.here.map((name) => `calls ${name}`),
      ...calls.before.map((name) => `called ${name}`),
      ...new Set(words.split(' ').map((word) => `said ${word}`)),
      ...new Set(cues.map(({ kind }) => `holds ${kind}`)),
    ]
  })
}

/** How long ago the likeliest name of each sentence was first likely to start something. */
function whetherKnown(candidates: readonly WeighedCandidate[]): Map<number, string> {
  const first = new Map<string, number>()
  const likeliest = new Map<number, number>()
  const known = new Map<number, string>()
  for (const { candidate, odds } of candidates) {
    const { key, sentence } = candidate
    const ago = sentence - (first.get(key) ?? Infinity)
    if (odds > 0 && !first.has(key)) first.set(key, sentence)
    if (odds <= (likeliest.get(sentence) ?? -Infinity)) continue
    likeliest.set(sentence, odds)
    const since = ago === -Infinity ? 'new' : ago < 4 ? 'just' : ago < 20 ? 'of late' : 'long'
    known.set(sentence, `${since} ${odds > 0 ? 'likely' : 'passing'}`)
  }
  return known
}

/** The greatest odds of the names in each sentence. */
export function oddsBySentence(candidates: readonly WeighedCandidate[]): Map<number, number> {
  const odds = new Map<number, number>()
  for (const { candidate, odds: own } of candidates)
    odds.set(candidate.sentence, Math.max(own, odds.get(candidate.sentence) ?? -Infinity))
  return odds
}

/** What is heard in each sentence, for the features of all. @param net other than the one in use, for fitting */
export function hearTurns(features: readonly (readonly string[])[], net: WordNet = netInUse()): HeardTurn[] {
  const logs = listen(net, features.length, (at) => ({
    key: null,
    rows: () => features[at]?.flatMap((feature) => net.rowOf.get(feature) ?? []) ?? [],
  }))
  return features.map((_, at) => {
    const [, opens = 0, comesBack = 0, over = 0] = logs.subarray(at * HEARD_TURNS.length, (at + 1) * HEARD_TURNS.length)
    return { opens: oddsOf(opens), comesBack: oddsOf(comesBack), over: oddsOf(over) }
  })
}

function oddsOf(log: number): number {
  return log - Math.log(Math.max(1e-6, 1 - Math.exp(log)))
}

function netInUse(): WordNet {
  return (built ??= netOf(TURN_NET_WEIGHTS))
}

let built: WordNet | null = null
