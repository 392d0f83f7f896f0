/** Takes over the dose of the exercise before where a coach says "same again", "same distance" or "same rest". */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import { hasWork } from './merge-doses.ts'
import type { TextSpan } from './place-spans.ts'
import { quotePiece } from './quote-piece.ts'
import type { Speech } from './read-speech.ts'
import { SAME_DISTANCE, SAME_DOSE, SAME_REST } from './words/en/same-again.ts'

/** The dose of an exercise, filled from the one before as far as its words say so. @param sided done one side at a time */
export function copyDose(
  speech: Speech,
  span: TextSpan,
  dose: Prescription | null,
  before: Prescription | null,
  sided: boolean,
): Prescription | null {
  if (!before || !hasWork(before)) return dose
  const said = speech.text.slice(span.offset, span.end)
  const same = SAME_DOSE.exec(said)
  if (same && (!dose || !hasWork(dose))) {
    const quote = quotePiece(speech, {
      offset: span.offset + same.index,
      end: span.offset + same.index + same[0].trimEnd().length,
    })
    const own = dose?.said ?? []
    return buildPrescription({
      ...before,
      ...(dose?.sets ? { sets: dose.sets } : {}),
      perSide: before.perSide && sided,
      said: [{ atMs: quote.atMs, text: quote.text }, ...own],
      confidence: 0.5,
      why: ['The dose of the exercise before was taken over.'],
    })
  }
  if (!dose) return dose
  return {
    ...dose,
    sets: same ? (dose.sets ?? before.sets) : dose.sets,
    distanceM: SAME_DISTANCE.test(said) ? (dose.distanceM ?? before.distanceM) : dose.distanceM,
    restSeconds: same || SAME_REST.test(said) ? (dose.restSeconds ?? before.restSeconds) : dose.restSeconds,
    restBetween: same || SAME_REST.test(said) ? (dose.restBetween ?? before.restBetween) : dose.restBetween,
  }
}
