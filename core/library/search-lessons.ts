/**
 * Finds lessons by name and other names, as they are spelt or nearly, and by filters. No index: a library of a few thousand
 * lessons is read through in a tenth of a second.
 */
import type { Audience } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import type { LessonFacts, Level } from './describe-lesson.ts'

export const LENGTHS = ['short', 'middle', 'long'] as const
/** short = under one minute, middle = under three, long = from three on. */
export type Length = (typeof LENGTHS)[number]

/** The value of the filter `kit` for lessons that need none. */
export const NO_KIT = 'none'

/** What each filter asks for; null = anything. */
export interface LessonFilters {
  kit: string | null
  position: string | null
  region: string | null
  level: string | null
  audience: string | null
  length: string | null
}
export type FilterName = keyof LessonFilters

export interface LessonQuery extends LessonFilters {
  text: string
}

/** The lessons that fit, the best first; without words in the order of their names. */
export function searchLessons(lessons: readonly LessonFacts[], query: LessonQuery): LessonFacts[] {
  const words = foldWords(query.text).map((word) => word.text)
  const isBlank = query.text.trim() === ''
  return lessons
    .filter((lesson) => fitsFilters(lesson, query))
    .map((lesson) => ({ lesson, score: isBlank ? 1 : scoreOf(lesson, words) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score || compare(a.lesson.name, b.lesson.name) || compare(a.lesson.slug, b.lesson.slug))
    .map(({ lesson }) => lesson)
}

/** The values that each filter can take in this library, in order. */
export function listChoices(lessons: readonly LessonFacts[]): Record<FilterName, string[]> {
  const values = (name: FilterName): string[] =>
    [...new Set(lessons.flatMap((lesson) => VALUES[name](lesson)))].sort(compare)
  return {
    kit: values('kit'),
    position: values('position'),
    region: values('region'),
    level: values('level'),
    audience: values('audience'),
    length: values('length'),
  }
}

const VALUES = {
  kit: ({ kit }) => (kit.length === 0 ? [NO_KIT] : kit),
  position: ({ position }) => (position === null ? [] : [position]),
  region: ({ regions }) => regions,
  level: ({ level }): Level[] => (level === null ? [] : [level]),
  audience: ({ audience }): Audience[] => audience,
  length: ({ durationMs }) => [lengthOf(durationMs)],
} as const satisfies Record<FilterName, (lesson: LessonFacts) => readonly string[]>

export function lengthOf(durationMs: Ms): Length {
  if (durationMs < 60_000) return 'short'
  return durationMs < 180_000 ? 'middle' : 'long'
}

function fitsFilters(lesson: LessonFacts, query: LessonFilters): boolean {
  return (Object.keys(VALUES) as FilterName[]).every((name) => {
    const wanted = query[name]
    const values: readonly string[] = VALUES[name](lesson)
    return wanted === null || values.includes(wanted)
  })
}

/** How well words fit: the name itself, another name, words of one name, or words found here and there. 0 = not at all. */
function scoreOf(lesson: LessonFacts, words: readonly string[]): number {
  if (words.length === 0) return 0
  const own = scoreName(lesson.name, words)
  const others = lesson.otherNames.map((name) => {
    const score = scoreName(name, words)
    // another name in full is nearly as good as the name; a part of one is less than a part of the name
    return score === 1 ? 0.9 : score * 0.7
  })
  const best = Math.max(own, ...others)
  if (best > 0) return best
  const anywhere = [lesson.name, ...lesson.otherNames, ...lesson.kit, lesson.position ?? '', ...lesson.regions].flatMap(
    foldedWords,
  )
  return scoreWords(anywhere, words) * 0.3
}

function scoreName(name: string, words: readonly string[]): number {
  const parts = foldedWords(name)
  const folded = parts.join(' ')
  const asked = words.join(' ')
  if (folded === asked) return 1
  if (folded.startsWith(asked)) return 0.8
  return scoreWords(parts, words) * 0.6
}

/** The least of what each word finds; 0 when one finds nothing. */
function scoreWords(parts: readonly string[], words: readonly string[]): number {
  // "pushup" is also looked for in "push up"
  const all = [...parts, ...parts.slice(1).map((part, index) => `${parts[index] ?? ''}${part}`)]
  return Math.min(...words.map((word) => Math.max(0, ...all.map((part) => scoreWord(part, word)))))
}

/** Shorter words than this must be spelt right: a letter changed makes another word of them. */
const TYPO_LETTERS = 4

function scoreWord(part: string, word: string): number {
  if (part === word) return 1
  if (word.length >= 2 && part.startsWith(word)) return 0.8
  return word.length >= TYPO_LETTERS && isOneLetterOff(part, word) ? 0.6 : 0
}

/** One letter too many, too few, another, or two neighbours swapped (the distance of Damerau, 1964, is one). */
export function isOneLetterOff(a: string, b: string): boolean {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a]
  if (long.length - short.length > 1) return false
  let start = 0
  while (start < short.length && short[start] === long[start]) start += 1
  const restShort = short.slice(start)
  const restLong = long.slice(start)
  if (short.length < long.length) return restShort === restLong.slice(1)
  const isChanged = restShort.slice(1) === restLong.slice(1)
  const isSwapped =
    restShort[0] === restLong[1] && restShort[1] === restLong[0] && restShort.slice(2) === restLong.slice(2)
  return isChanged || (restShort.length > 1 && isSwapped)
}

function foldedWords(text: string): string[] {
  return foldWords(text).map((word) => word.text)
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
