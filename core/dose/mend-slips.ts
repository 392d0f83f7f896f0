/** Mends a recogniser's slips ("ten wraps", "to sets") where the neighbouring words ask for it. */
import { ONES, PLURALS, TEENS, TENS, TIME_UNITS } from './words/en/numbers.ts'
import { SLIPS, type Slip } from './words/en/slips.ts'
import type { Token } from './tokenise.ts'

/** A token with, where a slip was mended, the words the recogniser wrote. */
export type MendedToken = Token & { heard?: string }

const NUMBER_WORDS = new Set(Object.keys({ ...ONES, ...TEENS, ...TENS, hundred: 0, dozen: 0 }))
const COUNTED = /^(?:reps?|sets?|rounds?|breaths?|seconds?|secs?)$/
const COUNTED_SETS = { one: /^(?:set|rep|round)$/, more: /^(?:sets|sats|says|reps|rounds)$/ } as const
/** "Tan raps": the word behind may be a slip itself. */
const MENDED_REPS = /^(?:raps|wraps|wreps|reps)$/
const BY_FIRST_WORD = groupedByFirstWord(SLIPS)

/** The tokens with slips replaced; places stay those of the text. */
export function mendSlips(tokens: readonly Token[]): MendedToken[] {
  const mended: MendedToken[] = []
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]
    if (!token) break
    const slip = token.kind === 'word' ? slipAt(tokens, at, mended) : undefined
    if (!slip) {
      mended.push(token)
      continue
    }
    const last = tokens[at + wordsOf(slip.heard).length - 1] ?? token
    mended.push({ ...token, text: slip.meant, end: last.end, heard: slip.heard })
    at += wordsOf(slip.heard).length - 1
  }
  return mended
}

function slipAt(tokens: readonly Token[], at: number, before: readonly Token[]): Slip | undefined {
  return BY_FIRST_WORD.get(tokens[at]?.text ?? '')?.find((slip) => {
    const words = wordsOf(slip.heard)
    return (
      words.every((word, index) => tokens[at + index]?.text === word) && fits(slip, tokens, at, words.length, before)
    )
  })
}

function fits(slip: Slip, tokens: readonly Token[], at: number, length: number, before: readonly Token[]): boolean {
  const previous = before.at(-1)
  const next = tokens[at + length]
  switch (slip.where) {
    case 'anywhere':
      return true
    case 'after a number':
      return isNumber(previous) && !(slip.meant === 'secs' && COUNTED.test(next?.text ?? ''))
    case 'before a number':
      return isNumber(next)
    case 'between numbers':
      return isNumber(previous) && isNumber(next)
    case 'before figures':
      return next?.kind === 'number' || next?.kind === 'list' || (isNumber(next) && isNumber(tokens[at + length + 1]))
    case 'before sets':
      // "from two to sets of …" stays: a number on both sides makes a range.
      // "Your back starts to round", "to set up" are no amounts: more than one is said in the plural.
      return COUNTED_SETS[slip.meant === 'one' ? 'one' : 'more'].test(next?.text ?? '') && !isNumber(previous)
    case 'in a range of reps':
      return (
        next?.text === 'to' &&
        isNumber(tokens[at + length + 1]) &&
        MENDED_REPS.test(tokens[at + length + 2]?.text ?? '')
      )
    case 'before reps':
      return MENDED_REPS.test(next?.text ?? '') && !isNumber(previous)
    case 'after sets of':
      return previous?.text === 'of' && /^(?:sets?|rounds?|lots)$/.test(before.at(-2)?.text ?? '') && !isNumber(next)
    case 'after each':
      return (
        /^(?:each|per|either|other|a)$/.test(previous?.text ?? '') &&
        (previous?.text !== 'a' || isNumber(before.at(-2)))
      )
    case 'next to a time':
      return (
        isTimeBefore(before) ||
        ((isNumber(next) || (previous?.kind === 'mark' && next?.text === 'for')) && isTimeSoon(tokens, at + length))
      )
  }
}

function isNumber(token: Token | undefined): boolean {
  if (!token) return false
  return token.kind === 'number' || NUMBER_WORDS.has(token.text) || Object.hasOwn(PLURALS, token.text)
}

/** "sixty seconds wrist": the word before is a time unit after a number. */
function isTimeBefore(before: readonly Token[]): boolean {
  return (
    Object.hasOwn(TIME_UNITS, before.at(-1)?.text ?? '') && (isNumber(before.at(-2)) || before.at(-2)?.text === 'a')
  )
}

/** "wrist sixty seconds": a time unit follows within four tokens. */
function isTimeSoon(tokens: readonly Token[], from: number): boolean {
  return tokens.slice(from, from + 4).some((token) => Object.hasOwn(TIME_UNITS, token.text))
}

function wordsOf(phrase: string): string[] {
  return phrase.split(' ')
}

function groupedByFirstWord(slips: readonly Slip[]): Map<string, Slip[]> {
  const groups = new Map<string, Slip[]>()
  for (const slip of slips) {
    const first = wordsOf(slip.heard)[0] ?? ''
    groups.set(first, [...(groups.get(first) ?? []), slip])
  }
  return groups
}
