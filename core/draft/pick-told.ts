/** Picks what counts of all that is told of one exercise: the last plan, no rests taken for work, no numbers beside a dose. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Teaching } from './find-exercises.ts'
import { hasWork } from './merge-doses.ts'
import type { Speech } from './read-speech.ts'

/** "The board says four sets of five. So three sets of five": the full dose told while it is taught replaces the announced one. */
export function withoutAnnounced(hits: readonly DoseHit[], { spans }: Teaching): DoseHit[] {
  const start = spans[0]?.offset ?? 0
  const isFull = ({ dose, offset }: DoseHit): boolean => offset >= start && dose.sets !== null && hasWork(dose)
  if (hits.some(isFull)) return hits.filter(({ offset, dose }) => offset >= start || !hasWork(dose))
  const isTold = ({ dose, offset, bare }: DoseHit): boolean =>
    !bare && offset >= start && (dose.reps !== null || dose.distanceM !== null || dose.workSeconds !== null)
  const kinds = new Set(hits.filter(isTold).flatMap(({ dose }) => KINDS.filter((kind) => dose[kind] !== null)))
  if (kinds.size > 0)
    return hits.map((hit) => {
      const isOld = hit.offset < start && KINDS.some((kind) => kinds.has(kind) && hit.dose[kind] !== null)
      return isOld ? { ...hit, dose: { ...hit.dose, reps: null, workSeconds: null, distanceM: null } } : hit
    })
  // "Five sets of five" on the board, "so it's four sets" in its place: how often is told anew, how much stays
  const isSetsAnew = ({ dose, offset, bare }: DoseHit): boolean =>
    !bare && offset >= start && dose.sets !== null && !hasWork(dose)
  if (!hits.some(isSetsAnew)) return [...hits]
  return hits.map((hit) =>
    hit.offset < start && hit.dose.sets !== null ? { ...hit, dose: { ...hit.dose, sets: null } } : hit,
  )
}

/**
 * "Eight, remember. Ninety seconds": where an exercise is counted, a time that stands alone is its rest, or a call of time.
 */
export function withoutLoneTimes(speech: Speech, hits: readonly DoseHit[]): DoseHit[] {
  const counted = hits.filter(({ bare, quote, dose: { reps, repScheme, workSeconds } }) => {
    if (bare && NUMBER_ALONE.test(quote.text)) return false
    const isMany = reps === 'max' || (reps?.min ?? reps?.max ?? 0) >= LEAST_COUNTED
    return workSeconds === null && (repScheme !== null || isMany)
  })
  if (counted.length === 0) return [...hits]
  const most = counted.some(({ bare }) => !bare) ? MOST_REST_SECONDS : MOST_UNSURE_SECONDS
  const isRested = hits.some(({ dose }) => dose.restSeconds !== null)
  return hits.flatMap((hit): DoseHit[] => {
    const { workSeconds, reps, sets, distanceM, holdSeconds, restSeconds, scheme, perSide } = hit.dose
    const isAlone = [reps, sets, distanceM, holdSeconds, restSeconds].every((value) => value === null)
    if (workSeconds === null || !isAlone || perSide || scheme !== 'straight' || (workSeconds.max ?? 0) > most)
      return [hit]
    const said = speech.sentences[hit.sentence]?.words ?? ''
    const isRest = (workSeconds.min ?? 0) >= LEAST_REST_SECONDS && said.split(' ').length <= REST_WORDS
    return isRest && !isRested ? [{ ...hit, dose: buildPrescription({ restSeconds: workSeconds }) }] : []
  })
}

/** A longer rest is rare; where only a bare number counts, a longer time is rather the work. */
const MOST_REST_SECONDS = 300
const MOST_UNSURE_SECONDS = 120
/** Maybe counting aloud. */
const NUMBER_ALONE = /^(?:and |so )?[\w-]+[.,!?]?$/i

const LEAST_COUNTED = 3
const LEAST_REST_SECONDS = 20
const REST_WORDS = 12

/** What is told anew in its place. */
const KINDS = ['reps', 'workSeconds', 'distanceM'] as const

/** A bare number counts only where no amount of work is said, and only the first one. */
export function withoutIdleBare(told: readonly DoseHit[]): DoseHit[] {
  // A squeeze at the top is no amount by itself.
  const isTold = told.some(
    ({ bare, dose }) => !bare && hasWork({ ...dose, holdSeconds: dose.holdPer === 'rep' ? null : dose.holdSeconds }),
  )
  const first = told.find(({ bare }) => bare)
  return told.filter((hit) => !hit.bare || (!isTold && hit === first))
}
