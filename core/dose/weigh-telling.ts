/** Weighs whether words with a number in them say a dose, or only speak of numbers: what others do, the room, the clock. */
import { remember } from '../remember.ts'
import { tokenise } from './tokenise.ts'
import { ONES, TEENS, TENS } from './words/en/numbers.ts'
import { TELLING_WEIGHTS } from './words/en/telling-weights.ts'

/** What each feature adds to the log of the odds that a dose is said. */
export type TellingTable = ReadonlyMap<string, number>

/** The words, and those beside each other, two and three; every number is the same. */
export function tellingFeatures(text: string): string[] {
  const words = ['^']
  for (const { kind, text: word } of tokenise(text)) {
    if (kind === 'mark' || kind === 'quote') continue
    const said = kind === 'word' && !NUMBER_WORDS.has(word) ? word : '#'
    if (said !== '#' || words.at(-1) !== '#') words.push(said)
  }
  words.push('$')
  const features = new Set<string>()
  words.forEach((word, at) => {
    features.add(word)
    if (at > 0) features.add(words.slice(at - 1, at + 1).join(' '))
    if (at > 1) features.add(words.slice(at - 2, at + 1).join(' '))
  })
  return [...features]
}

/** The log of the odds that a sentence says a dose. @param table other than that of the words, for fitting */
export function tellingOdds(text: string, table?: TellingTable): number {
  return table ? oddsOf(text, table) : rememberedOdds(text)
}

const MOST_REMEMBERED = 20_000

const rememberedOdds = remember(MOST_REMEMBERED, (text) => oddsOf(text, (known ??= tableOf())))

function oddsOf(text: string, table: TellingTable): number {
  return tellingFeatures(text).reduce((sum, one) => sum + (table.get(one) ?? 0), table.get(ALWAYS) ?? 0)
}

/** What is added for every sentence. */
export const ALWAYS = 'always'

let known: TellingTable | null = null

function tableOf(): TellingTable {
  return new Map(TELLING_WEIGHTS.flatMap(([weight, names]) => names.split('|').map((name) => [name, weight] as const)))
}

const NUMBER_WORDS = new Set([...Object.keys({ ...ONES, ...TEENS, ...TENS }), 'hundred', 'thousand', 'dozen', 'half'])
