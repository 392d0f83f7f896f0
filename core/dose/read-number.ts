/** Reads one number, in figures or words, at a place among tokens. */
import type { Piece } from './match-pattern.ts'
import type { MendedToken } from './mend-slips.ts'
import { NOT_AFTER_ONE, NOT_BEFORE_ONE, ONES, TEENS, TENS } from './words/en/numbers.ts'

export interface NumberRead {
  /** The amount, and for "twice" also the word "times". */
  pieces: Piece[]
  /** How many tokens it took. */
  length: number
}

const LEAST_PLURAL_FIGURE = 200

/** Whole phrases that are numbers; a few = 3, said to be rough. */
const PHRASES: readonly { words: string; value: number; approx?: boolean; before?: RegExp; times?: boolean }[] = [
  { words: 'half a dozen', value: 6 },
  { words: 'a dozen', value: 12 },
  { words: 'a couple of', value: 2 },
  { words: 'couple of', value: 2 },
  { words: 'a couple', value: 2, before: /^(?:more )?(?:sets?|reps?|rounds?|breaths?|minutes?|times)$/ },
  { words: 'a few', value: 3, approx: true, before: /^(?:sets?|rounds?|reps?|breaths?|seconds?|minutes?|lengths?)$/ },
  { words: 'another', value: 1, before: /^set$/ },
  { words: 'the one', value: 1, before: /^(?:set|round)$/ },
  { words: 'a single', value: 1, before: /^set$/ },
  { words: 'single', value: 1, before: /^set$/ },
  { words: 'a', value: 1, before: /^set$/ },
  { words: 'just the once', value: 1, times: true },
  { words: 'once', value: 1, times: true, before: /^(?:a|each|per|every|through|round|more|on)$/ },
  { words: 'twice', value: 2, times: true },
  { words: 'thrice', value: 3, times: true },
]

/** The number that starts at this token, or null. */
export function numberAt(tokens: readonly MendedToken[], at: number): NumberRead | null {
  const token = tokens[at]
  if (!token) return null
  return phraseAt(tokens, at) ?? figuresAt(tokens, at) ?? wordsAt(tokens, at)
}

const FIRST_WORDS: ReadonlySet<string> = new Set(PHRASES.map(({ words }) => words.split(' ')[0] ?? ''))

function phraseAt(tokens: readonly MendedToken[], at: number): NumberRead | null {
  if (!FIRST_WORDS.has(tokens[at]?.text ?? '')) return null
  for (const phrase of PHRASES) {
    const words = phrase.words.split(' ')
    if (!words.every((word, index) => tokens[at + index]?.text === word)) continue
    if (phrase.before && !phrase.before.test(tokens[at + words.length]?.text ?? '')) continue
    const amount = amountPiece(tokens, at, words.length, phrase.value)
    if (phrase.approx) amount.approx = true
    const pieces = phrase.times ? [amount, { tag: 'times', start: amount.end, end: amount.end }] : [amount]
    return { pieces, length: words.length }
  }
  return null
}

/** "12", "2½". */
function figuresAt(tokens: readonly MendedToken[], at: number): NumberRead | null {
  const token = tokens[at]
  if (token?.kind !== 'number') return null
  const next = tokens[at + 1]
  const hasPart = next?.kind === 'number' && next.value < 1 && next.glued
  // "the 500s": a name of efforts, not seconds
  if (next?.text === 's' && next.glued && token.value >= LEAST_PLURAL_FIGURE) {
    return { pieces: [{ ...amountPiece(tokens, at, 2, token.value), tag: 'P' }], length: 2 }
  }
  const length = hasPart ? 2 : 1
  const piece = amountPiece(tokens, at, length, token.value + (hasPart ? next.value : 0))
  return { pieces: [{ ...piece, isFigure: true }], length }
}

/** "twenty-five", "a hundred and twenty", "two thousand". */
function wordsAt(tokens: readonly MendedToken[], at: number): NumberRead | null {
  const small = belowHundredAt(tokens, at) ?? (tokens[at]?.text === 'a' ? { value: 1, length: 1 } : null)
  const start = small ?? { value: 1, length: 0 }
  const factor = factorOf(tokens[at + start.length]?.text)
  if (factor === null) return small && tokens[at]?.text !== 'a' ? readOf(tokens, at, small.value, small.length) : null
  let length = start.length + 1
  const skip = tokens[at + length]?.text === 'and' ? 1 : 0
  const rest = belowHundredAt(tokens, at + length + skip)
  if (rest) length += skip + rest.length
  return readOf(tokens, at, start.value * factor + (rest?.value ?? 0), length)
}

function belowHundredAt(tokens: readonly MendedToken[], at: number): { value: number; length: number } | null {
  const word = tokens[at]?.text ?? ''
  if (Object.hasOwn(TEENS, word)) return { value: TEENS[word as keyof typeof TEENS], length: 1 }
  if (Object.hasOwn(ONES, word)) {
    return isCounting(tokens, at) ? { value: ONES[word as keyof typeof ONES], length: 1 } : null
  }
  if (!Object.hasOwn(TENS, word)) return null
  const skip = tokens[at + 1]?.text === '-' ? 1 : 0
  const unit = tokens[at + 1 + skip]?.text ?? ''
  const value = TENS[word as keyof typeof TENS]
  const one = Object.hasOwn(ONES, unit) ? ONES[unit as keyof typeof ONES] : 0
  return one > 0 ? { value: value + one, length: 2 + skip } : { value, length: 1 }
}

/** "One" after "this" is no number, and "oh" is one only among numbers ("two oh two oh"). */
function isCounting(tokens: readonly MendedToken[], at: number): boolean {
  const word = tokens[at]?.text
  const previous = tokens[at - 1]?.text ?? ''
  if (word === 'oh') return Object.hasOwn(ONES, previous)
  const next = tokens[at + 1]?.text ?? ''
  return (
    word !== 'one' ||
    !(NOT_BEFORE_ONE.some((before) => before === previous) || NOT_AFTER_ONE.some((after) => after === next))
  )
}

const FACTORS: ReadonlyMap<string, number> = new Map([
  ['dozen', 12],
  ['hundred', 100],
  ['thousand', 1000],
])

function factorOf(word: string | undefined): number | null {
  return word === undefined ? null : (FACTORS.get(word) ?? null)
}

function readOf(tokens: readonly MendedToken[], at: number, value: number, length: number): NumberRead {
  return { pieces: [amountPiece(tokens, at, length, value)], length }
}

function amountPiece(tokens: readonly MendedToken[], at: number, length: number, value: number): Piece {
  const taken = tokens.slice(at, at + length)
  const heard = taken.find((token) => token.heard)?.heard
  const place = { start: taken[0]?.start ?? 0, end: taken.at(-1)?.end ?? 0 }
  return { tag: 'N', min: value, max: value, ...place, ...(heard ? { heard } : {}) }
}
