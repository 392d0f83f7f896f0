/** What the cautions reason with: an exercise as one class teaches it, and conditions over that. */
import type { CatalogueEntry, Movement, Position, Region } from '../catalogue/entry.ts'
import type { Audience, Scheme } from '../../shared/log-sheet.ts'
import type { HazardSlug } from './hazard-slugs.ts'
import type { Sign } from './words/en/sign-words.ts'

/** One exercise of one class: what the catalogue says of it, and what the segment's own fields and words add or change. */
export interface Traits {
  /** Its names in plain words: lower case, no hyphens, singular; the words of an English name in order. */
  names: readonly string[]
  entry: CatalogueEntry | null
  positions: ReadonlySet<Position>
  movements: ReadonlySet<Movement>
  /** Canonical kit words as the catalogue uses them. */
  kit: ReadonlySet<string>
  regions: ReadonlySet<Region>
  sided: boolean
  still: boolean
  /** Against outside load: weight, band, cable or machine. */
  loaded: boolean
  audience: ReadonlySet<Audience>
  /** What its cues, dose words and class say beyond the attributes. */
  signs: ReadonlySet<Sign>
  /** Hazards that its own spoken cautions name. */
  warned: ReadonlySet<HazardSlug>
  /** How it is organised; of its own dose, else of most doses of the class. */
  scheme: Scheme
  /** Reps until none are left. */
  toMax: boolean
  /** Longest hold the dose names, in seconds; null = none named. */
  holdSeconds: number | null
}

/**
 * When a caution is due. Every field that is given must fit; of a list, one must.
 * `names` are words found in the exercise's name, whole and in order, singular or plural.
 */
export interface Condition {
  audience?: readonly Audience[]
  names?: readonly string[]
  positions?: readonly Position[]
  movements?: readonly Movement[]
  kit?: readonly string[]
  regions?: readonly Region[]
  signs?: readonly Sign[]
  /** The instructor warns of one of these here. */
  warned?: readonly HazardSlug[]
  schemes?: readonly Scheme[]
  /** The catalogue holds it. */
  known?: boolean
  loaded?: boolean
  still?: boolean
  toMax?: boolean
  /** The dose names a hold of at least this many seconds. */
  holdAtLeast?: number
  /** This must fit as well. */
  also?: Condition
  /** None of these may fit. */
  unless?: readonly Condition[]
}

/** True when the condition fits the exercise. */
export function meets(traits: Traits, condition: Condition): boolean {
  const { audience, names, positions, movements, kit, regions, signs, warned, schemes } = condition
  return (
    anyOf(audience, traits.audience) &&
    anyOf(positions, traits.positions) &&
    anyOf(movements, traits.movements) &&
    anyOf(kit, traits.kit) &&
    anyOf(regions, traits.regions) &&
    anyOf(signs, traits.signs) &&
    anyOf(warned, traits.warned) &&
    (condition.known === undefined || condition.known === (traits.entry !== null)) &&
    (schemes === undefined || schemes.includes(traits.scheme)) &&
    (names === undefined || names.some((name) => isNamed(traits, name))) &&
    (condition.loaded === undefined || condition.loaded === traits.loaded) &&
    (condition.still === undefined || condition.still === traits.still) &&
    (condition.toMax === undefined || condition.toMax === traits.toMax) &&
    (condition.holdAtLeast === undefined || (traits.holdSeconds ?? 0) >= condition.holdAtLeast) &&
    (condition.also === undefined || meets(traits, condition.also)) &&
    !(condition.unless ?? []).some((one) => meets(traits, one))
  )
}

/** A name in plain words for comparison: "Press-ups" and "press up" are the same. */
export function plainName(name: string): string {
  const words =
    name
      .toLowerCase()
      .replace(/['’]/g, '')
      .match(/[a-z0-9]+/g) ?? []
  return words.map(singular).join(' ')
}

function isNamed(traits: Traits, name: string): boolean {
  const wanted = ` ${plainName(name)} `
  return traits.names.some((one) => ` ${one} `.includes(wanted))
}

/** Enough of English plurals for names of exercises: lunges, presses, flies; biceps and press stay as they are. */
function singular(word: string): string {
  if (word.length < 4 || /(?:ss|us|is|ceps)$/.test(word)) return word
  if (/(?:ss|sh|ch|x)es$/.test(word)) return word.slice(0, -2)
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  return word.endsWith('s') ? word.slice(0, -1) : word
}

function anyOf<Word>(wanted: readonly Word[] | undefined, has: ReadonlySet<Word>): boolean {
  return wanted === undefined || wanted.some((word) => has.has(word))
}
