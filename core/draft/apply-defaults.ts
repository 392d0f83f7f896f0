/** Gives exercises what was said once for many of them, and finds the stations of a circuit that nobody lists. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import type { DefaultDose } from './find-defaults.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Teaching } from './find-exercises.ts'
import type { Group } from './find-groups.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { hasWork } from './merge-doses.ts'

/** Exercises behind "five things, forty seconds each, three times": the stations of a circuit that nobody lists. */
export function unlistedStations(
  speech: Speech,
  teachings: readonly Teaching[],
  own: readonly (readonly DoseHit[])[],
  groups: readonly Group[],
  defaults: readonly DefaultDose[],
): Group[] {
  return defaults.flatMap(({ hit, circuit }, at): Group[] => {
    if (!circuit) return []
    const next = defaults.slice(at + 1).find((later) => later.circuit)?.hit.offset ?? Infinity
    const isOver = ({ offset, words }: Sentence): boolean => offset > hit.offset && CIRCUIT_OVER.test(words)
    const until = Math.min(next, speech.sentences.find(isOver)?.offset ?? Infinity)
    const members: number[] = []
    for (const [index, { spans }] of teachings.entries()) {
      const start = spans[0]?.offset ?? 0
      if (start < hit.offset || start > until || groups.some((group) => group.members.includes(index))) continue
      const tells = own[index]?.some(({ dose, bare }) => !bare && hasWork(dose) && !isAside(dose)) === true
      if (!tells) members.push(index)
      else if (members.length >= 2) break
    }
    // one that the list of stations left out stands beside those it named
    const isBeside = (member: number): boolean =>
      groups.some(
        (group) => group.scheme === 'circuit' && group.members.some((other) => Math.abs(other - member) === 1),
      )
    return members.length >= 2 || members.some(isBeside) ? [{ scheme: 'circuit', members, offset: hit.offset }] : []
  })
}

/** "And that's the circuit." Plain words. */
const CIRCUIT_OVER =
  /\b(?:thats|that is|end of|done with|finished) (?:the|your|our|that) (?:whole )?(?:circuit|tabata|stations|loop)\b(?! (?:one|two|three|part))|\b(?:circuit|tabata|loop)(?:s| is)? (?:done|over|finished)\b/

/** A hold inside a rep, or one or two of something: no dose of a station. */
function isAside({ reps, workSeconds, distanceM, holdSeconds }: Prescription): boolean {
  if (workSeconds !== null || distanceM !== null) return false
  return holdSeconds !== null || (reps !== null && reps !== 'max' && (reps.max ?? 0) <= 2)
}

/**
 * What was said for all before an exercise, the latest first. A circuit's dose is for its stations only; exercises done in
 * turns otherwise have a dose of their own, and end what was said for a part of the class.
 */
export function defaultsOf(
  { spans }: Teaching,
  group: Group | undefined,
  defaults: readonly DefaultDose[],
  groups: readonly Group[],
  teachings: readonly Teaching[],
): DoseHit[] {
  const start = spans[0]?.offset ?? 0
  // what is said for all while an exercise is taught, or right behind it, is for it as well
  const behind = (spans[0]?.end ?? 0) + BEHIND_CHARACTERS
  const isBetween = (at: number): boolean =>
    teachings.some((other) => {
      const from = other.spans[0]?.offset ?? 0
      return from > start && from <= at
    })
  const isMember = (hit: DoseHit): boolean => group?.scheme === 'circuit' && group.offset === hit.offset
  const hasEnded = (from: number): boolean =>
    groups.some(({ members }) =>
      members.some((member) => {
        const at = teachings[member]?.spans[0]?.offset ?? Infinity
        return at > from && at <= start
      }),
    )
  return defaults
    .filter(({ hit, circuit, part, until }) => {
      if (hit.offset >= start && !(hit.offset < behind && !isBetween(hit.offset))) return false
      if (until !== null && start > until) return false
      if (circuit) return isMember(hit)
      return group === undefined && !(part && hasEnded(hit.offset))
    })
    .toReversed()
    .map(({ hit }) => hit)
}

const BEHIND_CHARACTERS = 40

/** Fills a dose from what was said for all: the whole of it where nothing of its own is said, else sets, rest and tempo. */
export function withDefaults(told: readonly DoseHit[], forAll: readonly DoseHit[]): DoseHit[] {
  const pieces = forAll.some(
    ({ dose }) => dose.distanceM !== null || dose.workSeconds !== null || dose.holdSeconds !== null,
  )
  const counts = told.filter(({ dose, bare }) => hasWork(dose) && !(bare && dose.workSeconds !== null))
  const isTimes = counts.length > 0 && counts.every(({ dose, quote }) => pieces && isTimesOver(dose, quote.text))
  if (counts.length === 0 || isTimes) return [...forAll, ...told]
  const rest = forAll.map((hit) => {
    const { sets, restSeconds, restBetween, tempo } = hit.dose
    return { ...hit, dose: buildPrescription({ sets, restSeconds, restBetween, tempo }) }
  })
  return [...told, ...rest]
}

/** "Twice through", "three of those": how often, where how much is known. */
function isTimesOver({ reps, sets, workSeconds, distanceM, holdSeconds }: Prescription, said: string): boolean {
  if (workSeconds !== null || distanceM !== null || holdSeconds !== null) return false
  const most = reps === null || reps === 'max' ? (sets?.max ?? 0) : (reps.max ?? 0)
  return (
    most > 0 && most <= 6 && /\b(?:once|twice|times|goes|rounds?|through|of (?:them|those|these|that))\b/i.test(said)
  )
}
