/**
 * Says how good a place between two words is to end a line or a caption.
 * Sources: BBC Subtitle Guidelines v1.2.5, 3.2, 3.4, 3.9; DCMP Captioning Key, "Text". The weights are our own.
 */
import {
  ABBREVIATIONS,
  BEFORE_NOUN,
  CONJUNCTIONS,
  NAME_TITLES,
  NUMBER_WORDS,
  PREPOSITIONS,
  PRONOUNS,
  UNITS,
  VERB_STARTS,
} from './words/line-break-words.ts'

/** Cost of a break, from good to forbidden. */
export const BREAK = {
  sentence: 0,
  clause: 1,
  beforeConjunction: 2,
  beforePhrase: 3,
  plain: 5,
  afterPreposition: 7,
  insideVerb: 8,
  insidePhrase: 9,
  numberAndUnit: 40,
} as const

/** The cost of ending a line after `word` when `next` follows. */
export function breakCost(word: string, next: string): number {
  if (endsSentence(word, next)) return BREAK.sentence
  if (/[,;:–—][”"’)]*$/.test(word) || /^[–—-]$/.test(word)) return BREAK.clause
  const before = bare(word)
  const after = bare(next)
  if (isNumber(before) && (units.has(after) || isNumber(after))) return BREAK.numberAndUnit
  if (after === 'x' || before === 'x' || titles.has(before)) return BREAK.numberAndUnit
  if (nounStarts.has(before) || conjunctions.has(before)) return BREAK.insidePhrase
  if (verbStarts.has(before)) return BREAK.insideVerb
  if (conjunctions.has(after)) return BREAK.beforeConjunction
  if (prepositions.has(before)) return BREAK.afterPreposition
  return prepositions.has(after) ? BREAK.beforePhrase : BREAK.plain
}

/** True when a sentence ends with the word. A full stop before a small letter, or after an abbreviation, ends none. */
export function endsSentence(word: string, next: string): boolean {
  const mark = /([.?!…])[”"’')\]]*$/.exec(word)?.[1]
  if (mark === undefined) return false
  if (mark === '?' || mark === '!') return true
  if (/^[“"‘'([]*\p{Ll}/u.test(next)) return false
  return !abbreviations.has(bare(word))
}

const nounStarts = new Set<string>(BEFORE_NOUN)
const conjunctions = new Set<string>(CONJUNCTIONS)
const prepositions = new Set<string>(PREPOSITIONS)
const verbStarts = new Set<string>([...VERB_STARTS, ...PRONOUNS])
const units = new Set<string>(UNITS)
const titles = new Set<string>(NAME_TITLES)
const numbers = new Set<string>(NUMBER_WORDS)
const abbreviations = new Set<string>(ABBREVIATIONS)

function isNumber(word: string): boolean {
  return /^\d/.test(word) || numbers.has(word) || (word.includes('-') && numbers.has(word.split('-')[0] ?? ''))
}

const LONGEST_WORD = 60

/** Small letters, without the punctuation around the word. Nothing for what is too long to be a word. */
function bare(word: string): string {
  if (word.length > LONGEST_WORD) return ''
  return word
    .toLowerCase()
    .replace(/’/g, "'")
    .replace(/^[^\p{L}\p{N}%]+/u, '')
    .replace(/[^\p{L}\p{N}%]+$/u, '')
}
