/** What a clause shows that speaks for one kind of cue or another: its words, neighbours, word classes, phrases and place. */
import { remember } from '../remember.ts'
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import { CUE_WORDS } from './words/en/cue-words.ts'
import { CHAT, DOSE_ONLY, EMPTY_CLAUSES, PRAISE, PURPOSE, RETRACTED, TRANSITIONS } from './words/en/not-cue-words.ts'
import { CUE_CLASSES, LEADS } from './words/en/cue-classes.ts'
import { WORD_GROUPS, anyPhrase } from './words/en/word-groups.ts'

/** Where a clause stands, as far as it is known. */
export interface CluePlace {
  /** Before the movement of an exercise has been told; absent = not known. */
  early?: boolean
  /** A whole sentence that begins with a condition. */
  conditional: boolean
}

/** The features of a clause in plain words, each once, as `sign word` or `sign`; the weights are filed under the same names. */
export function cueFeatures(words: string, place: CluePlace): string[] {
  const all = words.split(' ').filter((word) => word !== '')
  const said = withoutLead(all)
  const stems = said.map(stemOf)
  const classes = said.map(classesOf)
  const found = new Set<string>(['bias'])
  const [first, second, third] = stems
  stems.forEach((stem, index) => {
    found.add(`word ${stem}`)
    const next = stems[index + 1]
    for (const one of classes[index] ?? []) {
      found.add(`class ${one}`)
      if (next !== undefined) found.add(`pair <${one}>_${next}`)
    }
    if (next !== undefined) {
      found.add(`pair ${stem}_${next}`)
      for (const one of classes[index + 1] ?? []) found.add(`pair ${stem}_<${one}>`)
    }
    if (index > 0 && first !== undefined && CONDITIONS.has(first)) found.add(`given ${stem}`)
    if (index > 0 && first !== undefined && CONDITIONS.has(first))
      for (const one of classes[index] ?? []) found.add(`given <${one}>`)
  })
  if (first !== undefined) {
    found.add(`first ${first}`)
    for (const one of classes[0] ?? []) found.add(`first <${one}>`)
    if (second !== undefined) found.add(`start ${first}_${second}`)
    for (const one of classes[0] ?? []) for (const two of classes[1] ?? []) found.add(`start <${one}>_<${two}>`)
    if (second !== undefined && third !== undefined) found.add(`start ${first}_${second}_${third}`)
  }
  const last = stems.at(-1)
  if (last !== undefined) found.add(`last ${last}`)
  found.add(`length ${lengthOf(said.length)}`)
  for (const { name, test } of PHRASES) if (test.test(words)) found.add(name)
  if (place.conditional) found.add('conditional')
  if (place.early !== undefined) found.add(placeFeature(place.early))
  return [...found]
}

/** Whether it stands before the movement has been told, as a feature. */
export function placeFeature(early: boolean): string {
  return early ? 'early' : 'late'
}

const CONDITIONS: ReadonlySet<string> = new Set([
  'if',
  'when',
  'anyone',
  'anybody',
  'those',
  'for',
  'once',
  'should',
  'unless',
])

const PHRASES: readonly { name: string; test: RegExp }[] = [
  ...CUE_KINDS.flatMap((kind) =>
    (['sure', 'likely', 'hint'] as const).map((level) => ({
      name: `phrase ${kind}-${level}`,
      test: anyPhrase(CUE_WORDS[kind][level]),
    })),
  ),
  ...Object.entries({ CHAT, DOSE_ONLY, EMPTY_CLAUSES, PRAISE, PURPOSE, RETRACTED, TRANSITIONS }).map(
    ([name, list]) => ({
      name: `phrase ${name.toLowerCase()}`,
      test: anyPhrase(list),
    }),
  ),
]

const LEAD_WORDS: ReadonlySet<string> = new Set(LEADS)

function withoutLead(words: readonly string[]): readonly string[] {
  const from = words.findIndex((word) => !LEAD_WORDS.has(word))
  return from <= 0 ? words : words.slice(from)
}

/** A crude stem: lifting, lifts and lifted are one. */
export function stemOf(word: string): string {
  if (/^\d/.test(word)) return '0'
  if (word.length < 5) return word.length === 4 && /[^s]s$/.test(word) ? word.slice(0, -1) : word
  return word.replace(/(?:ing|ed|es|s|ly|e|y)$/, '').replace(/([bdgmnprt])\1$/, '$1')
}

const CLASS_TESTS = Object.entries({ ...WORD_GROUPS, ...CUE_CLASSES }).map(([name, list]) => ({
  name,
  test: new RegExp(`^(?:${list})$`),
}))
/** The classes of words that a word belongs to (word-groups.ts, cue-classes.ts). */
export const classesOf = remember(5000, (word): readonly string[] =>
  CLASS_TESTS.filter(({ test }) => test.test(word)).map(({ name }) => name),
)

function lengthOf(count: number): string {
  return count <= 2 ? '1-2' : count <= 4 ? '3-4' : count <= 7 ? '5-7' : count <= 12 ? '8-12' : 'long'
}
