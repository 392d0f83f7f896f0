/** The words that pages of a class take from the core: doses in short and in full, names of cautions, which findings can be waived. */
import { POSITIONS } from '../../core/catalogue/entry.ts'
import { describeCaution, sourceOfCaution } from '../../core/cautions/describe-caution.ts'
import { findHazard, HAZARDS } from '../../core/cautions/hazards.ts'
import { CHECK_RULES } from '../../core/checks/check-sheet.ts'
import { describeTotals } from '../../core/dose/describe-time.ts'
import { speakDose } from '../../core/dose/speak-dose.ts'
import { writeDose } from '../../core/dose/write-dose.ts'
import type { ClassWords } from '../../views/pages/class-input.ts'

export const CLASS_WORDS: ClassWords = {
  dose: (dose) => {
    const { text: totals, assumed } = describeTotals(dose)
    return { text: writeDose(dose), spoken: speakDose(dose), totals, assumed }
  },
  hazard: (slug) => ({
    name: findHazard(slug)?.name ?? slug.replaceAll('-', ' '),
    offer: describeCaution(slug),
    source: sourceOfCaution(slug) ?? '',
  }),
  hazards: HAZARDS.map(({ slug, name }) => ({ slug, name })),
  positions: POSITIONS,
  canWaive: (ruleId) => CHECK_RULES.some((rule) => rule.id === ruleId && rule.waivable),
}
