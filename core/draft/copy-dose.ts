/** Takes over the dose of the exercise before where a coach says "same again", "same distance" or "same rest". */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription, Range } from '../../shared/log-sheet.ts'
import { hasWork } from './merge-doses.ts'
import type { TextSpan } from './place-spans.ts'
import { quotePiece } from './quote-piece.ts'
import type { Speech } from './read-speech.ts'
import { SAME_DISTANCE, SAME_DOSE, SAME_REST } from './words/en/same-again.ts'

/** The dose of an exercise, filled from the one before as far as its words say so. @param taught whether it is done one side at a time, and sets said without an amount */
export function copyDose(
  speech: Speech,
  span: TextSpan,
  dose: Prescription | null,
  before: Prescription | null,
  { sided, setsAlone }: { sided: boolean; setsAlone: Range | null },
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
  if (!dose || !hasWork(dose)) {
    const far = SAME_DISTANCE.exec(said)
    if (!far || before.distanceM === null) return dose
    const at = span.offset + far.index
    const { atMs, text } = quotePiece(speech, { offset: at, end: at + far[0].length })
    return buildPrescription({
      ...(dose ?? {}),
      sets: dose?.sets ?? setsAlone,
      distanceM: before.distanceM,
      said: [{ atMs, text }, ...(dose?.said ?? [])],
      confidence: 0.5,
      why: ['The distance of the exercise before was taken over.'],
    })
  }
  const isFar =
    SAME_DISTANCE.test(said) && dose.distanceM === null && before.distanceM !== null && dose.workSeconds === null
  if (isFar && dose.sets === null && dose.reps !== null && dose.reps !== 'max')
    return { ...dose, sets: dose.reps, reps: null, distanceM: before.distanceM }
  return {
    ...dose,
    sets: same ? (dose.sets ?? before.sets) : dose.sets,
    distanceM: SAME_DISTANCE.test(said) ? (dose.distanceM ?? before.distanceM) : dose.distanceM,
    restSeconds: same || SAME_REST.test(said) ? (dose.restSeconds ?? before.restSeconds) : dose.restSeconds,
    restBetween: same || SAME_REST.test(said) ? (dose.restBetween ?? before.restBetween) : dose.restBetween,
  }
}
