/** Puts right words that a recogniser wrote with one letter off ("fise breaths", "squot"), so that the rules read them; quotes keep what was written. */
import { CATALOGUE } from '../catalogue/catalogue.ts'
import { WORD_CLASSES } from './words/en/word-classes.ts'
import { DOSE_JOINTS, REAL_WORDS } from './words/en/real-words.ts'

/** The text with such words mended; every character keeps its place. What is said twice, or is a person's name, is no slip. */
export function mendLetters(text: string): string {
  const times = timesOf(text)
  return text.replace(/[a-z]{4,}/gi, (word, at: number) => {
    const lower = word.toLowerCase()
    if (word.length > LONGEST || TARGETS.has(lower) || REAL.has(lower) || (times.get(bareOf(lower)) ?? 0) > 1)
      return word
    if (/^[A-Z]/.test(word) && /[a-z,] $/.test(text.slice(Math.max(0, at - 2), at))) return word
    const plural = pluralMeant(lower, times)
    if (plural !== null) return likeCase(plural, word)
    const meant = patternsOf(lower).flatMap((pattern) => BY_PATTERN.get(pattern) ?? [])
    const [only] = meant
    return only !== undefined && meant.length === 1 ? likeCase(only, word) : word
  })
}

/** How often each word is said, its plural counted with it. */
function timesOf(text: string): Map<string, number> {
  const times = new Map<string, number>()
  for (const [word] of text.toLowerCase().matchAll(/[a-z]{4,}/g))
    times.set(bareOf(word), (times.get(bareOf(word)) ?? 0) + 1)
  return times
}

/** "Rowi" where rows are spoken of elsewhere: a slip in the last letter of a plural. */
function pluralMeant(word: string, times: ReadonlyMap<string, number>): string | null {
  const bare = word.slice(0, -1)
  return /[aioul]$/.test(word) && PLURALS.has(`${bare}s`) && (times.get(bare) ?? 0) >= 2 ? `${bare}s` : null
}

function bareOf(word: string): string {
  return word.replace(/s$/, '')
}

/** Words of names shorter than this have too many neighbours that are words of their own. */
const SHORTEST = 5

/** "Last round", "third time": what calls the next round. */
const ORDERS = ['last', 'next', 'third', 'second', 'final']

/** What decides most: amounts, what they count, the order of rounds, and the words of names. */
const TARGETS: ReadonlySet<string> = new Set([
  ...CATALOGUE.flatMap(({ name, alsoCalled }) => [name, ...alsoCalled])
    .flatMap(wordsOf)
    .filter((word) => word.length >= SHORTEST),
  ...[...WORD_CLASSES.number, ...WORD_CLASSES.unit, ...DOSE_JOINTS, ...ORDERS].filter(
    (word) => word.length >= SHORTEST - 1,
  ),
])
const PLURALS: ReadonlySet<string> = new Set(
  CATALOGUE.flatMap(({ name, alsoCalled }) => [name, ...alsoCalled])
    .flatMap(wordsOf)
    .filter((word) => word.endsWith('s')),
)
/** A slip is as long as the word that was meant. */
const LONGEST = [...TARGETS].reduce((most, word) => Math.max(most, word.length), 0)
const REAL: ReadonlySet<string> = new Set(REAL_WORDS)

/** Words by their patterns with one letter left open; first and last letter are never open. */
const BY_PATTERN: ReadonlyMap<string, readonly string[]> = byPattern()

function byPattern(): Map<string, string[]> {
  const map = new Map<string, string[]>()
  for (const word of TARGETS) {
    for (const pattern of patternsOf(word)) {
      const list = map.get(pattern)
      if (list) list.push(word)
      else map.set(pattern, [word])
    }
  }
  return map
}

function patternsOf(word: string): string[] {
  return [...word].slice(1, -1).map((_, at) => `${word.slice(0, at + 1)}_${word.slice(at + 2)}`)
}

/** "Twenty-five" and "press ups" give each word; a plural counts as well. */
function wordsOf(name: string): string[] {
  const words = name.toLowerCase().match(/[a-z]+/g) ?? []
  return words.flatMap((word) => (word.endsWith('s') ? [word] : [word, `${word}s`]))
}

function likeCase(meant: string, written: string): string {
  return /^[A-Z]/.test(written) ? meant.charAt(0).toUpperCase() + meant.slice(1) : meant
}
