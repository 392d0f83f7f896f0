/** Stops a lesson that is known to have no captions. */
import { placeOf, titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'

export const CAPTIONS_MISSING: Rule = {
  id: 'captions-missing',
  why: 'Members who do not hear would miss everything said, cautions included.',
  source: 'WCAG 2.2, success criterion 1.2.2 Captions (Prerecorded), level A',
  waivable: true,
  find: ({ lessons, captions }) =>
    lessons
      .filter(({ segment }) => (typeof captions === 'object' ? captions?.[segment.id] : captions) === false)
      .map(({ segment }) => ({
        severity: 'stop',
        segmentId: segment.id,
        at: placeOf(segment),
        message: `${titleOf(segment)}: no captions fall in this clip. Give the class's captions, or make them from its transcript.`,
      })),
}
