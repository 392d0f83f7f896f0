/** Stops a lesson that lacks a caution its exercise needs; warns where the table says should. */
import type { Covered } from '../../cautions/cover-cautions.ts'
import { findHazard } from '../../cautions/hazards.ts'
import { sourceOfCaution } from '../../cautions/describe-caution.ts'
import { placeOf, titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'

export const CAUTION_MISSING: Rule = {
  id: 'caution-missing',
  why: 'A member who watches one exercise alone must be told what to watch out for.',
  source: 'the hazard table; each finding names the source of its row',
  waivable: true,
  find: ({ lessons }) => lessons.flatMap(({ required }) => required.flatMap(foundOf)),
}

function foundOf({ segment, required, state }: Covered): Found[] {
  if (state !== 'missing') return []
  const hazard = findHazard(required.hazard)
  if (hazard === null) return []
  return [
    {
      severity: required.level === 'must' ? 'stop' : 'warn',
      segmentId: segment.id,
      at: placeOf(segment),
      hazard: hazard.slug,
      message: `${titleOf(segment)}: the caution "${hazard.name}" is neither said nor written. Write it on the lesson, or waive it with a reason.`,
      why: `Needed because ${required.why}. Concerns ${required.concerns}.`,
      source: sourceOfCaution(hazard.slug) ?? hazard.source,
    },
  ]
}
