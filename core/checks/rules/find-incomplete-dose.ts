/** Warns of a dose that leaves a question open: not sure, a hold without a count, a side not said. */
import type { Prescription } from '../../../shared/log-sheet.ts'
import type { CoveredLesson } from '../../cautions/cover-cautions.ts'
import { placeOf, titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'
import { hasWork, isOpen, isSaid } from '../weigh-dose.ts'
import { BOTH_SIDE_WORDS } from '../words/en/side-words.ts'

export const DOSE_INCOMPLETE: Rule = {
  id: 'dose-incomplete',
  why: 'An open question in a dose is answered by each member in their own way.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons }) => lessons.flatMap(questionsOf),
}

function questionsOf(lesson: CoveredLesson): Found[] {
  const { segment } = lesson
  const dose = segment.prescription
  if (dose === null || dose.state === 'declined' || !hasWork(dose)) return []
  return [...doubts(dose), ...hold(dose), ...side(dose, lesson), ...sets(dose, lesson)].map(({ severity, text }) => ({
    severity,
    segmentId: segment.id,
    at: placeOf(segment),
    message: `${titleOf(segment)}: ${text}`,
  }))
}

interface Question {
  severity: 'warn' | 'note'
  text: string
}

function doubts({ unsure, why }: Prescription): Question[] {
  if (!unsure) return []
  const reasons = why.length > 0 ? ` ${why.join(' ')}` : ''
  return [{ severity: 'warn', text: `the dose was read with doubt.${reasons} Look at it and accept or correct it.` }]
}

function hold({ holdSeconds, holdPer, reps, repScheme }: Prescription): Question[] {
  if (!isSaid(holdSeconds) || holdPer !== 'rep' || reps === 'max' || isSaid(reps) || repScheme !== null) return []
  return [{ severity: 'warn', text: 'the dose holds each rep but does not say how many. Add the reps.' }]
}

/** No question where the words of the dose or of the class bring in the other side. */
function side({ perSide, said }: Prescription, { traits, segment }: CoveredLesson): Question[] {
  const cues = segment.cues.filter((cue) => cue.state !== 'declined')
  const words = [...said, ...cues].map(({ text }) => text.toLowerCase()).join('. ')
  if (!traits.sided || perSide || BOTH_SIDE_WORDS.test(words)) return []
  return [{ severity: 'warn', text: 'it is done side by side; say whether the dose is for each side or in total.' }]
}

function sets(dose: Prescription, { segment }: CoveredLesson): Question[] {
  if (isOpen(dose) || isSaid(dose.sets) || dose.scheme !== 'straight' || dose.byLevel.length > 0) return []
  return segment.setByPerson.includes('prescription')
    ? []
    : [{ severity: 'note', text: 'the number of sets is not said; the lesson will show one.' }]
}
