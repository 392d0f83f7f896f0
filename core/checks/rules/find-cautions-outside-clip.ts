/** Stops a lesson whose caution was said in the class but not inside what the clip keeps. */
import { formatClock } from '../../../shared/time.ts'
import type { Covered } from '../../cautions/cover-cautions.ts'
import { sourceOfCaution } from '../../cautions/describe-caution.ts'
import { placeOf, quoted, titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'

export const CAUTION_OUTSIDE_CLIP: Rule = {
  id: 'caution-outside-clip',
  why: 'The clip is watched alone: what was said once at the start of the class is lost from it.',
  source: 'the hazard table; each finding names the source of its row',
  waivable: true,
  find: ({ lessons }) => lessons.flatMap(({ required }) => required.flatMap(foundOf)),
}

function foundOf({ segment, required, state, inClip, said }: Covered): Found[] {
  if (state !== 'spoken' || inClip || said === null) return []
  const when = said.atMs === null ? 'in the class' : `at ${formatClock(said.atMs)}`
  return [
    {
      severity: required.level === 'must' ? 'stop' : 'warn',
      segmentId: segment.id,
      at: said.atMs === null ? placeOf(segment) : { startMs: said.atMs, endMs: said.atMs },
      hazard: required.hazard,
      message: `${titleOf(segment)}: ${quoted(said.text)} is said ${when}, outside this clip. Attach it to the lesson.`,
      why: `Needed because ${required.why}. Concerns ${required.concerns}.`,
      source: sourceOfCaution(required.hazard) ?? 'common practice, no source',
    },
  ]
}
