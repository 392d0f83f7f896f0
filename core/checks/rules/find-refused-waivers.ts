/** Notes waivers that have no effect, so that nobody relies on them. */
import { CAUTION_RULES } from '../../cautions/cover-cautions.ts'
import { titleOf } from '../rule.ts'
import type { Rule } from '../rule.ts'

/** @param refused ids of the rules that nobody may waive. */
export const waiverRefused = (refused: readonly string[]): Rule => ({
  id: 'waiver-refused',
  why: 'Some findings are not the checker’s to give away, and a caution is waived one at a time.',
  source: 'our own rule',
  waivable: false,
  find: ({ sheet }) =>
    sheet.waivers.flatMap(({ segmentId, ruleId, hazard }) => {
      const segment = sheet.segments.find((one) => one.id === segmentId)
      if (segment === undefined) return []
      const named = refused.includes(ruleId) ? `${ruleId} cannot be waived` : null
      const vague =
        CAUTION_RULES.includes(ruleId) && hazard === null ? `a waiver of ${ruleId} must name its hazard` : null
      const reason = named ?? vague
      return reason === null
        ? []
        : [{ severity: 'note', segmentId, at: null, message: `${titleOf(segment)}: ${reason}. The finding stands.` }]
    }),
})
