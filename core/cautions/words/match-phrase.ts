/**
 * A small language for phrases that people say, so that word lists stay readable to those who know the trade.
 *
 *   pull*        a word that starts so                     head|neck    one of these
 *   light_headed words that follow each other              {no}         one of a named group
 *   ..           up to three words between                 ...          up to eight words between
 *   A & B        both in one sentence, in any order, at most fourteen words apart
 *
 * Apostrophes, capitals and commas do not matter: "don't" and "dont" are one word.
 */
import { remember } from '../../remember.ts'

/** Named groups of alternatives, as `no: "don't|never|not"`. */
export type PhraseGroups = Readonly<Record<string, string>>

/** True when the sentence (from `plainSentences`) says the phrase. */
export type Phrase = (sentence: string) => boolean

/**
 * Builds the test of one phrase. A group that is not known is a fault of the word list and throws.
 * @param unlessAfter words in front of a find that undo it, as "don't".
 */
export function readPhrase(pattern: string, groups: PhraseGroups = {}, unlessAfter: RegExp | null = null): Phrase {
  const parts = pattern.split(' & ').map((part) => sequence(part, groups))
  const [first, second] = parts
  if (parts.length > 2 || first === undefined) throw new RangeError(`A phrase has one or two parts: ${pattern}`)
  const source = second === undefined ? first : `(?:${first}${apart(14)}${second}|${second}${apart(14)}${first})`
  const end = '(?= |$)'
  if (unlessAfter === null) {
    const test = new RegExp(`${source}${end}`)
    return (sentence) => test.test(sentence)
  }
  const every = new RegExp(`${source}${end}`, 'g')
  return (sentence) => [...sentence.matchAll(every)].some(({ index }) => !unlessAfter.test(sentence.slice(0, index)))
}

/** A phrase and what it stands for. */
export interface KeyedPhrase<Key> {
  key: Key
  pattern: string
}

/**
 * Builds one test of many phrases: which keys a sentence says. A phrase is only tried on a sentence that holds a word of
 * its least common part, so that thousands of sentences meet hundreds of phrases in little time.
 * @param unlessAfter as for readPhrase
 */
export function indexPhrases<Key>(
  phrases: readonly KeyedPhrase<Key>[],
  groups: PhraseGroups = {},
  unlessAfter: RegExp | null = null,
): (sentence: string) => Set<Key> {
  const whole = new Map<string, number[]>()
  const starts = new Map<string, number[]>()
  const longest = { start: 0 }
  phrases.forEach(({ pattern }, index) => {
    for (const word of rarestPart(pattern, groups)) {
      const open = word.endsWith('*')
      const key = open ? word.slice(0, -1) : word
      const list = open ? starts : whole
      list.set(key, [...(list.get(key) ?? []), index])
      if (open) longest.start = Math.max(longest.start, key.length)
    }
  })
  const built: (Phrase | undefined)[] = []
  return (sentence) => {
    const found = new Set<Key>()
    const tried = new Set<number>()
    const attempt = (index: number): void => {
      const phrase = phrases[index]
      if (tried.has(index) || phrase === undefined || found.has(phrase.key)) return
      tried.add(index)
      const test = (built[index] ??= readPhrase(phrase.pattern, groups, unlessAfter))
      if (test(sentence)) found.add(phrase.key)
    }
    for (const word of sentence.split(' ')) {
      whole.get(word)?.forEach(attempt)
      const end = Math.min(word.length, longest.start)
      for (let length = 1; length <= end; length += 1) starts.get(word.slice(0, length))?.forEach(attempt)
    }
    return found
  }
}

/** The first words of the part of a phrase that is least likely to be met; `pain*` = words that start so. */
function rarestPart(pattern: string, groups: PhraseGroups): string[] {
  const parts = pattern
    .split(/ & | /)
    .filter((token) => token !== '' && !/^\.+$/.test(token))
    .map((token) => plainAlternatives(token, groups).map((words) => words.split(' ')[0] ?? ''))
  const costOf = (words: readonly string[]): number =>
    words.reduce((sum, word) => sum + (COMMON.has(word) ? 40 : word.endsWith('*') ? 2 : 1), 0)
  return parts.reduce((best, part) => (costOf(part) < costOf(best) ? part : best))
}

/** Everyday words of a class: a phrase is better told by another of its words. */
const COMMON = new Set(
  'a the it them that this on in of to up down back and you your is are be as at for with from off out if no not do go keep get all one when there me so over'.split(
    ' ',
  ),
)

/** The sentences of a text in plain words: lower case, single spaces, a space in front, fillers and doubled words left out. */
export const plainSentences = remember(1000, (text): readonly string[] =>
  text
    .toLowerCase()
    .split(/[.!;:]+(?=\s|$)|\n/)
    .map((sentence) => plainWords(sentence))
    .filter((sentence) => sentence !== ''),
)

const FILLERS = / (?:um+|uh+|er|erm|you know|sort of|kind of|i mean)(?= )/g

function plainWords(sentence: string): string {
  const words = sentence.replace(/['’‘`]/g, '').match(/[a-z0-9]+/g)
  if (!words) return ''
  const clean = ` ${words.join(' ')} `.replace(FILLERS, '').trim()
  return clean === '' ? '' : ` ${clean.replace(/\b(\w+)(?: \1\b)+/g, '$1')}`
}

function sequence(part: string, groups: PhraseGroups): string {
  const tokens = part.trim().split(/\s+/)
  return tokens
    .map((token) => {
      if (token === '..') return apart(3)
      if (token === '...') return apart(8)
      return ` (?:${alternatives(token, groups).join('|')})`
    })
    .join('')
}

function alternatives(token: string, groups: PhraseGroups): string[] {
  return plainAlternatives(token, groups).map((words) => words.replace(/\*/g, '[^ ]*'))
}

function plainAlternatives(token: string, groups: PhraseGroups): string[] {
  return token.split('|').flatMap((word) => {
    const group = /^\{(\w+)\}$/.exec(word)?.[1]
    if (group === undefined) return [word.replace(/['’]/g, '').replace(/_/g, ' ')]
    const content = groups[group]
    if (content === undefined) throw new RangeError(`No such group of words: ${group}`)
    return plainAlternatives(content, groups)
  })
}

const apart = (words: number): string => `(?: [^ ]+){0,${words}}?`
