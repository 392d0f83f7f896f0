/** Refines a dose by what is known of its exercise: held or moved, counted in breaths, on both sides, done once more. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import { readDose } from '../dose/read-dose.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Teaching } from './find-exercises.ts'
import { asHold } from './merge-doses.ts'
import type { Speech } from './read-speech.ts'
import { ANOTHER, ONE_MORE_SET } from './words/en/same-again.ts'

/** Whether an exercise is held still, as its name or its first words say. */
export function isStill(speech: Speech, teaching: Teaching): boolean {
  return isHeld(teaching) || isToldHeld(speech, teaching) || isStayed(speech, teaching)
}

/** "Stand on one leg, and stay there": an exercise of the coach's own that is told as staying, not as moving. */
function isStayed(speech: Speech, { entry, spans }: Teaching): boolean {
  const [main] = spans
  if (entry !== null || !main) return false
  return STAYED.test(
    speech.text.slice(Math.max(0, main.offset - HOLD_CHARACTERS), Math.min(main.end, main.offset + STAYED_CHARACTERS)),
  )
}

const STAYED_CHARACTERS = 450
const STAYED =
  /\b(?:stay (?:there|up|put|still|on it)|(?:hold|keep) (?:it|that|yourself) (?:there|still|up there)|(?:and|just) hold\b|hold still|balanc(?:e|ing) on|stand(?:ing)? on one (?:leg|foot)|other (?:foot|leg) (?:just )?(?:off|clear of) the (?:floor|ground)|nothing moves|don't move)\b/i

/** "Have a rest, shake the ankles. Twenty seconds": a time behind a rest is that rest. */
export function asRest(speech: Speech, hit: DoseHit): DoseHit {
  const { workSeconds, reps, sets, distanceM, restSeconds } = hit.dose
  const isTime = workSeconds !== null && [reps, sets, distanceM, restSeconds].every((value) => value === null)
  const before = speech.text.slice(Math.max(0, hit.offset - REST_CHARACTERS), hit.offset)
  if (!isTime || !/\b(?:have|take|get|and|a|your) (?:a )?(?:rest|breather|break)\b[^.!?]*[.!?\s]*$/i.test(before))
    return hit
  return { ...hit, dose: buildPrescription({ restSeconds: workSeconds }) }
}

const REST_CHARACTERS = 50

/** "And just hold. Twenty seconds": a time behind a word of holding is held. */
export function asHeld(speech: Speech, hit: DoseHit): DoseHit {
  const before = speech.text.slice(Math.max(0, hit.offset - HOLD_CHARACTERS), hit.offset)
  const isHeld = /\b(?:hold|holding|stay|balance)\b(?: \w+){0,3}[.,:;!\s\v]*$/i.test(before)
  return isHeld ? { ...hit, dose: asHold(hit.dose) } : hit
}

const HOLD_CHARACTERS = 40

/** Held rather than moved: as the catalogue says, else by the name's last word. */
function isHeld({ entry, name, alsoCalled }: Teaching): boolean {
  if (entry?.still === true) return true
  const isNamed = [name, ...alsoCalled].some((one) =>
    /\b(?:stretch|hold|pose|plank|hang|fold|balanc|hover)(?:e?s|e|ing)?$/i.test(one),
  )
  return isNamed || (entry === null && /\bsits?$/i.test(name))
}

/** "So it's a wall sit": what it is called besides, around where it starts. */
function isToldHeld(speech: Speech, { entry, spans }: Teaching): boolean {
  const from = spans[0]?.offset ?? 0
  return (
    entry === null && HELD_NAME.test(speech.text.slice(Math.max(0, from - HELD_CHARACTERS), from + HELD_CHARACTERS))
  )
}

const HELD_CHARACTERS = 160
const HELD_NAME =
  /\b(?:it's|that's|which is|or|called|this is) an? (?:[\w-]+ ){0,2}(?:hold|plank|wall sit|stretch|balance)\b/i

/** "Six rounds of that" of a breathing exercise counts its cycles. */
export function inBreaths({ entry, name }: Teaching, dose: Prescription): Prescription {
  const isBreathing = entry?.movements.includes('breathing') === true || /\bbreath(?:s|ing)?\b/i.test(name)
  const isByCount = dose.said.some(({ text }) => /\b(?:in|inhale) for\b.*\b(?:out|exhale) for\b/i.test(text))
  if (dose.reps === null || dose.repUnit !== 'rep' || (!isBreathing && !isByCount)) return dose
  return { ...dose, repUnit: 'cycle' }
}

/** One-sided work that goes on to the other side is dosed per side. */
export function withSides(speech: Speech, teaching: Teaching, dose: Prescription): Prescription {
  const said = textOf(speech, teaching)
  const isOneLeg = /\b(?:operated|sore|bad|injured|affected) (?:leg|side|knee|one)\b/i.test(said)
  if (dose.perSide || isOneLeg || teaching.entry?.sided === false || !BOTH_SIDES.test(said)) return dose
  return { ...dose, perSide: true }
}

/** Whether the teaching goes on to the other side. */
export function tellsBothSides(speech: Speech, teaching: Teaching): boolean {
  return BOTH_SIDES.test(textOf(speech, teaching))
}

function textOf(speech: Speech, { spans }: Teaching): string {
  return spans.map((span) => speech.text.slice(span.offset, span.end + SIDE_CHARACTERS)).join(' ')
}

const BOTH_SIDES =
  /\b(?:other side|second side|(?:swap|change|switch) (?:sides|legs|arms)|other (?:leg|arm|foot) (?:through|now|forward)|now the (?:left|right)|same on the|swap over|both (?:the )?(?:legs|sides|arms)(?=[.,!]|$)|(?:and )?(?:the )?other (?:leg|arm|foot|hand)(?=[.,!?]|$))\b/i

/** "One more set of those", "another fifteen" where the class comes back to it: two sets, where none are said. */
export function withSecondSet(speech: Speech, { spans }: Teaching, dose: Prescription): Prescription {
  const said = spans.slice(1).map((span) => speech.text.slice(span.offset, span.end))
  const once = dose.reps !== null && dose.reps !== 'max' ? dose.reps.min : null
  const isMeasured = dose.holdSeconds !== null || dose.workSeconds !== null
  const again = said.some((text) => {
    const number = ANOTHER.exec(text)?.[1]
    const reps = number === undefined ? null : (readDose(`${number} reps`)?.reps ?? null)
    return ONE_MORE_SET.test(text) || (reps !== null && reps !== 'max' && reps.min === once)
  })
  return dose.sets === null && (once !== null || isMeasured) && again ? { ...dose, sets: { min: 2, max: 2 } } : dose
}

/** "Swap legs." often stands right behind the teaching. */
const SIDE_CHARACTERS = 16
