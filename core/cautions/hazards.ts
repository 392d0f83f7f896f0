/**
 * The required cautions: one row a hazard, with when an exercise carries it and the words offered for the lesson.
 * A lesson is not published while one of these is neither said in its clip nor written on it.
 * The table is a working rule for teachers, not a clinical standard; nothing in it is medical advice.
 * Grades: S study, G guideline or position stand, X expert review, P common practice without a source.
 */
import { BODY_HAZARDS } from './hazards-body.ts'
import { EFFORT_HAZARDS } from './hazards-effort.ts'
import { KIT_HAZARDS } from './hazards-kit.ts'
import { PEOPLE_HAZARDS } from './hazards-people.ts'
import { HAZARD_SLUGS } from './hazard-slugs.ts'
import type { HazardSlug } from './hazard-slugs.ts'
import type { Condition } from './traits.ts'

export interface HazardAlternative extends Condition {
  /** Why the exercise carries the hazard, to be read after "because". */
  because: string
  /** Weaker than the row's own level where the table's authors go beyond the common rule. */
  level?: 'should'
}

export interface Hazard {
  slug: HazardSlug
  /** Short name for lists. */
  name: string
  /** Any one of these makes the caution due. */
  when: readonly HazardAlternative[]
  /** Offered to be written on the lesson: kind, plain, no medical advice. */
  offer: string
  concerns: string
  source: string
  grade: string
  level: 'must' | 'should'
}

const ROWS: Readonly<Record<HazardSlug, Omit<Hazard, 'slug'>>> = {
  ...BODY_HAZARDS,
  ...PEOPLE_HAZARDS,
  ...EFFORT_HAZARDS,
  ...KIT_HAZARDS,
}

/** All rows, in the order of the slugs. */
export const HAZARDS: readonly Hazard[] = HAZARD_SLUGS.map((slug) => ({ slug, ...ROWS[slug] }))

/** The row of a slug, or null when it is none of the table. */
export function findHazard(slug: string): Hazard | null {
  return HAZARDS.find((hazard) => hazard.slug === slug) ?? null
}
