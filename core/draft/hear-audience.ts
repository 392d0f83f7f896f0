/** Hears whom a class is meant for where nobody has said: cautions are then asked for on the safe side. */
import { foldWords } from '../catalogue/fold-words.ts'
import type { Audience } from '../../shared/log-sheet.ts'
import { HEARD_AUDIENCES } from './words/en/audience-words.ts'
import { AUDIENCE_WEIGHTS } from './words/en/audience-weights.ts'

/** The one guarded audience that the words point to, or none. A guess: it asks for cautions and is never shown as a fact. */
export function hearAudience(text: string): Audience[] {
  const heard = phrasedAudience(text) ?? likeliest(oddsOfAudiences(text, (tables ??= audienceTables(AUDIENCE_WEIGHTS))))
  return heard ? [heard] : []
}

/** The audience that phrases tell. */
export function phrasedAudience(text: string): Audience | null {
  const told = HEARD_AUDIENCES.find(({ plain, hints, least, chairs }) => {
    const said = (text.match(hints) ?? []).map((word) => word.toLowerCase().replace(/s$/, ''))
    if ((text.match(plain)?.length ?? 0) > 0 && said.length > 0) return true
    if (said.length >= least && new Set(said).size > 1) return true
    return chairs !== undefined && said.length > 0 && (text.match(CHAIRS)?.length ?? 0) >= chairs
  })
  return told?.audience ?? null
}

const CHAIRS = /\bchairs?\b/gi

/** For each audience what a word adds to the log of the odds that the class is meant for it; "*" counts always. */
export type AudienceTables = readonly (readonly [Audience, ReadonlyMap<string, number>])[]

/** Weights are small and many, so they are filed in tenths. */
export const WEIGHT_PARTS = 10

let tables: AudienceTables | undefined

/** Tables as they are filed: words of one weight in one row. */
export function audienceTables(
  filed: readonly (readonly [Audience, readonly (readonly [weight: number, words: string])[]])[],
): AudienceTables {
  return filed.map(([audience, rows]) => [
    audience,
    new Map(rows.flatMap(([weight, words]) => words.split('|').map((word) => [word, weight / WEIGHT_PARTS] as const))),
  ])
}

/** The log of the odds of each audience by all words of a class: their mean over its parts. A text too short to tell has none. */
export function oddsOfAudiences(text: string, of: AudienceTables): (readonly [Audience, number])[] {
  const parts = audienceParts(text)
  if (parts.length === 0) return []
  return of.map(([audience, table]) => {
    const sums = parts.map((words) => words.reduce((sum, word) => sum + (table.get(word) ?? 0), table.get(ALWAYS) ?? 0))
    return [audience, sums.reduce((sum, odds) => sum + odds, 0) / sums.length] as const
  })
}

/** What every class starts from. */
export const ALWAYS = '*'

/** The different words of each part of a text, all about as long as the classes that the weights were fitted on. */
export function audienceParts(text: string): string[][] {
  const words = foldWords(text).map((word) => word.text)
  if (words.length < LEAST_WORDS) return []
  const count = Math.max(1, Math.round(words.length / PART_WORDS))
  const size = Math.ceil(words.length / count)
  return Array.from({ length: count }, (_, part) => [...new Set(words.slice(part * size, (part + 1) * size))])
}

const LEAST_WORDS = 800
const PART_WORDS = 1800

/** The audience with the greatest odds, where they are over so much. */
export function likeliest(odds: readonly (readonly [Audience, number])[], least = LEAST_ODDS): Audience | null {
  const [best] = odds.filter(([, one]) => one > least).sort(([, a], [, b]) => b - a)
  return best?.[0] ?? null
}

/** Below even: a caution too many costs a look, one too few may cost more. */
const LEAST_ODDS = -2
