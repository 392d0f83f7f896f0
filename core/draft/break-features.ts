/** What speaks for or against a break between two words: the words around, their classes, names, line ends. */
import { CLAUSE_OPENERS, NEVER_BEFORE_OPENER } from './words/en/openers.ts'
import type { WORD_CLASSES } from './words/en/word-classes.ts'
import { WORD_CLASSES as CLASSES } from './words/en/word-classes.ts'
import { WORD_KINDS } from './words/en/word-kinds.ts'

export type WordClass = keyof typeof WORD_CLASSES | 'ing' | 'ly' | 'end' | 'other'
/** A finer class; words that nobody listed go by their endings. */
export type WordKind = keyof typeof WORD_KINDS | 'owned' | 'ing' | 'ed' | 'er' | 'est' | 's' | 'end' | 'other'

/** A word of the speech as the break finder sees it. */
export interface BreakWord {
  /** Lower case, letters, figures and apostrophes only. */
  text: string
  class: WordClass
  kind: WordKind
  /** First word of a transcript line. */
  opensLine: boolean
  /** Where a name of an exercise lies, as far as one does. */
  name: 'first' | 'inside' | null
  /** Placed by the words around a name: a break stands in front of it for its sake. */
  placed: boolean
  /** The lists of openers would open a thought with it. */
  opens: boolean
}

/** What speaks for or against a mark in front of a word, as the table of weights names it: a sign, and the word or classes it has there. */
export function featuresAt(words: readonly BreakWord[], index: number): string[] {
  const textAt = (at: number): string => words[at]?.text ?? 'end'
  const classAt = (at: number): WordClass => words[at]?.class ?? 'end'
  const word = words[index]
  const [w2, w1, w0, v1] = [-2, -1, 0, 1].map((by) => textAt(index + by))
  const [c2, c1, c0, d1] = [-2, -1, 0, 1].map((by) => classAt(index + by))
  const mayOpen = CLAUSE_OPENERS.has(textAt(index))
  const goesOn = NEVER_BEFORE_OPENER.has(textAt(index - 1))
  const [k3, k2, k1, k0, l1, l2] = [-3, -2, -1, 0, 1, 2].map((by) => kindAt(words, index + by))
  const names = `${words[index - 1]?.name ?? 'no'}>${word?.name ?? 'no'}`
  return [
    'always yes',
    `before ${w1}`,
    `after ${w0}`,
    `before2 ${w2}`,
    `after2 ${v1}`,
    `gap ${w1}>${w0}`,
    `ahead ${w0}>${v1}`,
    `behind ${w2}>${w1}`,
    `classes ${c1}>${c0}`,
    `opening ${c0}>${d1}`,
    `closing ${c2}>${c1}`,
    `around ${c2}>${c1}>${c0}`,
    `across ${c1}>${c0}>${d1}`,
    `word-class ${w1}>${c0}`,
    `class-word ${c1}>${w0}`,
    `class-ahead ${c1}>${v1}`,
    `kind-before2 ${k2}`,
    `kind-before ${k1}`,
    `kind-after ${k0}`,
    `kind-after2 ${l1}`,
    `kinds ${k1}>${k0}`,
    `kind-opening ${k0}>${l1}`,
    `kind-closing ${k2}>${k1}`,
    `kind-around ${k2}>${k1}>${k0}`,
    `kind-across ${k1}>${k0}>${l1}`,
    `kind-ahead ${k0}>${l1}>${l2}`,
    `kind-behind ${k3}>${k2}>${k1}`,
    `word-kind ${w1}>${k0}`,
    `kind-word ${k1}>${w0}`,
    `names ${names}`,
    ...(word?.opensLine === true ? ['other line'] : []),
    ...(word?.placed === true ? ['other placed'] : []),
    ...(word?.opens === true ? ['other opens'] : []),
    ...(mayOpen ? [goesOn ? 'other may-open-bound' : 'other may-open'] : goesOn ? ['other goes-on'] : []),
  ]
}

/** What a clause that began so many words back says of a mark in front of a word. */
export function clauseSigns(words: readonly BreakWord[], start: number, index: number): string[] {
  const classAt = (at: number): WordClass => words[at]?.class ?? 'end'
  const run = Math.min(index - start, LONGEST_RUN)
  const [opener, kind] = [words[start]?.text ?? 'end', kindAt(words, index)]
  const opening = kindAt(words, start)
  return [
    `since ${run}`,
    `since-class ${Math.min(run, 7)}>${classAt(index)}`,
    `first ${classAt(start)}>${classAt(index)}`,
    `first-word ${opener}`,
    `first-kind ${opening}>${kind}`,
    `since-kind ${Math.min(run, 7)}>${kind}`,
    `kind-since ${opening}>${Math.min(run, 7)}`,
    `first-kinds ${opening}>${kindAt(words, start + 1)}`,
    `word-first-kind ${opener}>${kind}`,
    `first-words ${opener}>${words[index]?.text ?? 'end'}`,
  ]
}

/** Words since the last mark count up to here; longer runs are alike. */
export const LONGEST_RUN = 12

/** The class of a word; an unknown one goes by its ending. */
export function classOf(word: string): WordClass {
  if (word === '') return 'end'
  const known = CLASS_OF.get(word)
  if (known !== undefined) return known
  if (/^\d+$/.test(word)) return 'number'
  if (word.endsWith('ing')) return 'ing'
  return word.endsWith('ly') ? 'ly' : 'other'
}

const CLASS_OF: ReadonlyMap<string, WordClass> = new Map(
  (Object.entries(CLASSES) as [keyof typeof CLASSES, readonly string[]][])
    .reverse()
    .flatMap(([name, list]) => list.map((word): [string, WordClass] => [word, name])),
)

const kindAt = (words: readonly BreakWord[], at: number): WordKind => words[at]?.kind ?? 'end'

/** The kind of a word; an unknown one goes by its ending. */
export function kindOf(word: string): WordKind {
  const known = KIND_OF.get(word)
  if (known !== undefined) return known
  if (word === '') return 'end'
  if (/^\d+$/.test(word)) return 'number'
  const [, stem = '', ending = ''] = ENDING.exec(word) ?? []
  const kind = KIND_OF_ENDING[ending]
  if (ending !== 's') return kind ?? 'other'
  const one = KIND_OF.get(stem) ?? KIND_OF.get(stem.replace(/e$/, ''))
  return one === 'verb' ? 'does' : (one ?? 's')
}

const KIND_OF: ReadonlyMap<string, WordKind> = new Map(
  (Object.entries(WORD_KINDS) as [keyof typeof WORD_KINDS, readonly string[]][])
    .reverse()
    .flatMap(([name, list]) => list.map((word): [string, WordKind] => [word, name])),
)

const ENDING = /^(.*?)(n't|'(?:ll|ve|re|d|m)|'s|ing|ly|ed|er|est|(?<=[^s])s)$/
const KIND_OF_ENDING: Readonly<Record<string, WordKind>> = {
  ...{ "n't": 'modal', "'ll": 'contraction', "'ve": 'contraction', "'re": 'contraction', "'d": 'contraction' },
  ...{ "'m": 'contraction', "'s": 'owned', ing: 'ing', ly: 'adverb', ed: 'ed', er: 'er', est: 'est' },
}
