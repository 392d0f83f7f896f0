/** What speaks for or against a break between two words: the words around, their classes, names, line ends. */
import { CLAUSE_OPENERS, NEVER_BEFORE_OPENER } from './words/en/openers.ts'
import type { WORD_CLASSES } from './words/en/word-classes.ts'
import { WORD_CLASSES as CLASSES } from './words/en/word-classes.ts'

export type WordClass = keyof typeof WORD_CLASSES | 'ing' | 'ly' | 'end' | 'other'

/** A word of the speech as the break finder sees it. */
export interface BreakWord {
  /** Lower case, letters, figures and apostrophes only. */
  text: string
  class: WordClass
  /** First word of a transcript line. */
  opensLine: boolean
  /** Where a name of an exercise lies, as far as one does. */
  name: 'first' | 'inside' | null
  /** Placed by the words around a name: a break stands in front of it for its sake. */
  placed: boolean
  /** The lists of openers would open a thought with it. */
  opens: boolean
}

/** A sign at a gap, and the word or classes it has there. */
export interface Sign {
  sign: string
  of: string
}

/** The signs at the gap in front of a word, as the table of weights names them. */
export function featuresAt(words: readonly BreakWord[], index: number): Sign[] {
  const textAt = (at: number): string => words[at]?.text ?? ''
  const classAt = (at: number): WordClass => words[at]?.class ?? 'end'
  const word = words[index]
  const other = (is: boolean, of: string): Sign[] => (is ? [{ sign: 'other', of }] : [])
  return [
    { sign: 'before', of: textAt(index - 1) },
    { sign: 'after', of: textAt(index) },
    { sign: 'classes', of: `${classAt(index - 1)}>${classAt(index)}` },
    { sign: 'opening', of: `${classAt(index)}>${classAt(index + 1)}` },
    { sign: 'closing', of: `${classAt(index - 2)}>${classAt(index - 1)}` },
    ...other(word?.opensLine === true, 'line'),
    ...other(word?.placed === true, 'placed'),
    ...other(word?.opens === true, 'opens'),
    ...other(CLAUSE_OPENERS.has(textAt(index)), 'may-open'),
    ...other(NEVER_BEFORE_OPENER.has(textAt(index - 1)), 'goes-on'),
    ...other(CLAUSE_OPENERS.has(textAt(index)) && !NEVER_BEFORE_OPENER.has(textAt(index - 1)), 'may-open-here'),
    ...other(word?.name === 'first', 'name-starts'),
    ...other(word?.name === 'inside', 'name-goes-on'),
    ...other(words[index - 1]?.name != null && word?.name !== 'inside', 'name-ends'),
  ]
}

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
