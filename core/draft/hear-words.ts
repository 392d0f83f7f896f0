/** Weighs each word of a speech for the kinds of cue, by the words around it as the word net has learned them. */
import { remember } from '../remember.ts'
import { classOf, kindOf } from './break-features.ts'
import { classesOf, stemOf } from './cue-features.ts'
import { netOf } from './filed-net.ts'
import { listen, rowsOf } from './word-net.ts'
import type { WordNet } from './word-net.ts'
import { NET_WEIGHTS } from './words/en/net-weights.ts'

/** A word of a speech as the net meets it. */
export interface NetWord {
  offset: number
  /** Lower case, letters, figures and apostrophes only. */
  text: string
  /** What stands in front of it; a break (restore-breaks.ts) is a mark. */
  mark: 'none' | 'comma' | 'stop'
}

/** The words of a speech, and how likely each is part of no cue and of each kind. */
export interface HeardWords {
  /** In rising order. */
  offsets: readonly number[]
  /** Words × scores: natural logs of the likelihoods. */
  logs: Float32Array
  scores: number
}

export function netWords(text: string): NetWord[] {
  let end = 0
  return [...text.matchAll(/[a-z0-9']+/gi)].map((match) => {
    const mark = end === 0 ? 'stop' : markIn(text.slice(end, match.index))
    end = match.index + match[0].length
    return { offset: match.index, text: match[0].toLowerCase(), mark }
  })
}

function markIn(gap: string): NetWord['mark'] {
  if (gap === ' ') return 'none'
  if (/[.!?…\n]/.test(gap)) return 'stop'
  return /[,;:—–\v]|\s-\s/.test(gap) ? 'comma' : 'none'
}

/** What the net knows of a word, as `sign of`; its rows are named by the same. */
export function featuresOf({ text, mark }: Pick<NetWord, 'text' | 'mark'>): string[] {
  return [`mark ${mark}`, ...featuresOfText(text)]
}

/** What tells of a word by itself. */
export const featuresOfText = remember(5000, (text): readonly string[] => [
  `kind ${kindOf(text)}`,
  `class ${classOf(text)}`,
  `ending ${text.slice(-3)}`,
  ...classesOf(stemOf(text)).map((one) => `group ${one}`),
  `word ${text}`,
])

/** All words of a text as the net hears them. @param net other than the one in use, for fitting */
export function hearWords(text: string, net: WordNet = netInUse()): HeardWords {
  return hearInTurn(netWords(text), net)
}

/** Words as the net hears them one behind the other. */
export function hearInTurn(words: readonly NetWord[], net: WordNet): HeardWords {
  const logs = listen(net, words.length, (at) => {
    const word = words[at] ?? { offset: 0, text: '', mark: 'none' }
    return { key: `${word.mark} ${word.text}`, rows: () => rowsOf(featuresOf(word), net) }
  })
  return { offsets: words.map(({ offset }) => offset), logs, scores: net.shape.scores }
}

/** The mean of the logs of the words from one offset to another; null where there is none. */
export function heardBetween({ offsets, logs, scores }: HeardWords, from: number, to: number): Float32Array | null {
  const [first, end] = [firstFrom(offsets, from), firstFrom(offsets, to)]
  if (first === end) return null
  const means = new Float32Array(scores)
  for (let word = first; word < end; word++)
    for (let at = 0; at < scores; at++) means[at] = (means[at] ?? 0) + (logs[word * scores + at] ?? 0) / (end - first)
  return means
}

function firstFrom(offsets: readonly number[], offset: number): number {
  let [low, high] = [0, offsets.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if ((offsets[middle] ?? 0) < offset) low = middle + 1
    else high = middle
  }
  return low
}

/** Built when it is first asked for. */
function netInUse(): WordNet {
  return (built ??= netOf(NET_WEIGHTS))
}

let built: WordNet | null = null
