/** Which cautions an exercise requires: the hazard table applied to its traits. */
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import { exerciseTraits } from './describe-exercise.ts'
import type { HazardSlug } from './hazard-slugs.ts'
import { HAZARDS } from './hazards.ts'
import type { Hazard } from './hazards.ts'
import { meets } from './traits.ts'
import type { Traits } from './traits.ts'

export interface RequiredCaution {
  hazard: HazardSlug
  ruleId: string
  level: 'must' | 'should'
  concerns: string
  /** Why this exercise needs it, to be read after "because". */
  why: string
}

/** The required cautions of a segment's exercise, in the order of the table. */
export function requireCautions(segment: Segment, sheet: LogSheet): RequiredCaution[] {
  return cautionsFor(exerciseTraits(segment, sheet))
}

/** The same from traits. */
export function cautionsFor(traits: Traits): RequiredCaution[] {
  return HAZARDS.flatMap((hazard) => required(hazard, traits))
}

/** The id under which the need of a hazard's caution is known in reports and waivers. */
export function ruleIdOf(hazard: HazardSlug): string {
  return `needs-${hazard}`
}

function required(hazard: Hazard, traits: Traits): RequiredCaution[] {
  const fitting = hazard.when.filter((one) => meets(traits, one))
  const first = fitting.find((one) => one.level === undefined) ?? fitting[0]
  if (first === undefined) return []
  const { slug, level, concerns } = hazard
  return [{ hazard: slug, ruleId: ruleIdOf(slug), level: first.level ?? level, concerns, why: first.because }]
}
