/**
 * Take care if: 53 rules on whom an exercise concerns, with the published source or "common practice".
 * They are always shown on the lesson page, are never counted as missing, and say whom to ask, not what to treat.
 * The wording has had no clinician's review; a licensed professional must read it before members rely on it.
 * Grades: S study, G guideline or position stand, X expert review or table of contraindications, P common practice.
 */
import { TAKE_CARE_BACK_AND_JOINTS } from './take-care-back-and-joints.ts'
import { TAKE_CARE_HEAD_AND_BREATH } from './take-care-head-and-breath.ts'
import { TAKE_CARE_LIFE_AND_KIT } from './take-care-life-and-kit.ts'
import { meets } from './traits.ts'
import type { Condition, Traits } from './traits.ts'

export interface TakeCareRule {
  id: `K${number}`
  /** What sets it off, in words. */
  trigger: string
  /** The same as conditions, any one is enough; [] = it holds for the whole library and is shown once there. */
  when: readonly Condition[]
  text: string
  concerns: string
  source: string
  grade: string
  /** How strongly the source puts it; it is shown either way. */
  strength: 'must' | 'should' | 'info'
  /** Where it is shown. */
  where: 'segment' | 'lesson' | 'library'
}

/** All rules, by number. */
export const TAKE_CARE: readonly TakeCareRule[] = [
  ...TAKE_CARE_HEAD_AND_BREATH,
  ...TAKE_CARE_BACK_AND_JOINTS,
  ...TAKE_CARE_LIFE_AND_KIT,
].toSorted((a, b) => (a.id < b.id ? -1 : 1))

/** The rules that an exercise sets off, by number. */
export function takeCareOf(traits: Traits): TakeCareRule[] {
  return TAKE_CARE.filter((rule) => rule.when.some((one) => meets(traits, one)))
}

/** The rule that a coverage row names as its hazard ("k15"), or null. */
export function findTakeCare(hazard: string): TakeCareRule | null {
  return TAKE_CARE.find((rule) => rule.id.toLowerCase() === hazard) ?? null
}
