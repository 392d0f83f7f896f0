/** Settles what single phrases leave open: what a correction corrects, pauses told in seconds, and sets that differ. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription, Range } from '../../shared/log-sheet.ts'
import { readDose } from '../dose/read-dose.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { quotePiece } from './quote-piece.ts'
import type { Speech } from './read-speech.ts'
import { across } from './join-ranges.ts'
import { plainWords } from './split-speech.ts'
import {
  DOWNWARD,
  HELD,
  PAUSED,
  PLANNED,
  SAID_BEFORE,
  SECOND_TURN,
  TURN_BY_TURN,
  UNITS_SAID,
  UPWARD,
} from './words/en/turn-words.ts'

/** The hits of a class in order, settled by their neighbours. */
export function settleHits(speech: Speech, hits: readonly DoseHit[]): DoseHit[] {
  const paused = hits.map(asOneRun).flatMap((hit) => asPause(speech, hit))
  return joinTurns(speech, withoutPlans(speech, asCorrections(speech, paused)))
}

/** "Two laps, 800 metres all told": the laps are the distance. "For three seconds, eight times": each is held. */
function asOneRun(hit: DoseHit): DoseHit {
  const { sets, distanceM, workSeconds, reps, perSide } = hit.dose
  if (perSide && CHANGED_OVER.test(hit.quote.text)) return asOneRun({ ...hit, dose: { ...hit.dose, perSide: false } })
  if (distanceM !== null && reps !== null && reps !== 'max' && sets === null && (reps.max ?? Infinity) <= MOST_RUNS)
    return { ...hit, dose: { ...hit.dose, sets: reps, reps: null } }
  if (sets !== null && distanceM !== null && /\blaps?\b/i.test(hit.quote.text))
    return { ...hit, dose: { ...hit.dose, sets: null } }
  const isShort = workSeconds !== null && (workSeconds.max ?? Infinity) <= MOST_PAUSE_SECONDS
  if (!isShort || sets === null || (sets.min ?? 0) < LEAST_TIMES || reps !== null || !/\btimes\b/i.test(hit.quote.text))
    return hit
  return {
    ...hit,
    dose: { ...hit.dose, sets: null, reps: sets, workSeconds: null, holdSeconds: workSeconds, holdPer: 'rep' },
  }
}

/** A distance is run so often at most. */
const MOST_RUNS = 12

/** Time to go to the next station, not to the other side. */
const CHANGED_OVER =
  /^(?!.*\b(?:each|per|a|other|both) (?:sides?|legs?|arms?|ways?|hands?)\b).*\bto (?:change|swap|switch)(?: over)?\b/i

/** Fewer are sets. */
const LEAST_TIMES = 4

/** Work of so few seconds is a part of each repetition. */
const MOST_PAUSE_SECONDS = 5
const BEFORE_CHARACTERS = 60
const BEHIND_CHARACTERS = 30

/** "On the way down I want three seconds", "a pause at the bottom, two full seconds": a tempo or a hold, or else nothing. */
function asPause(speech: Speech, hit: DoseHit): DoseHit[] {
  const { workSeconds, reps, sets, restSeconds, distanceM, holdSeconds, tempo, then, byLevel } = hit.dose
  const seconds = workSeconds?.max ?? null
  if (seconds === null || seconds > MOST_PAUSE_SECONDS) return [hit]
  if ([reps, sets, restSeconds, distanceM, holdSeconds, tempo].some((value) => value !== null)) return [hit]
  if (then.length > 0 || byLevel.length > 0) return [hit]
  const before = plainWords(speech.text.slice(Math.max(0, hit.offset - BEFORE_CHARACTERS), hit.end))
  const behind = plainWords(speech.text.slice(hit.end, hit.end + BEHIND_CHARACTERS))
  const around = `${before} ${behind}`
  const number = String(seconds)
  const pause = (fields: Partial<Prescription>): DoseHit[] => [{ ...hit, dose: buildPrescription(fields) }]
  if (PAUSED.test(around)) return pause({ tempo: `x-${number}-x-x` })
  if (HELD.test(around)) return pause({ holdSeconds: workSeconds, holdPer: 'rep' })
  if (DOWNWARD.test(around)) return pause({ tempo: `${number}-x-x-x` })
  return UPWARD.test(around) ? pause({ tempo: `x-x-${number}-x` }) : []
}

/** "I'd written down three laps, but it's two": what was only planned goes where the same is told right behind. */
function withoutPlans(speech: Speech, hits: readonly DoseHit[]): DoseHit[] {
  return hits.filter((hit, index) => {
    if (!PLANNED.test(speech.text.slice(Math.max(0, hit.offset - PLAN_CHARACTERS), hit.offset))) return true
    const fields = COUNTED.filter((field) => hit.dose[field] !== null)
    const later = hits.slice(index + 1).filter(({ offset }) => offset - hit.end <= CORRECTION_CHARACTERS)
    return !later.some(({ dose }) => fields.length > 0 && fields.every((field) => dose[field] !== null))
  })
}

const PLAN_CHARACTERS = 40

type Counted = 'sets' | 'reps' | 'restSeconds' | 'workSeconds' | 'holdSeconds' | 'distanceM'
const COUNTED = ['sets', 'reps', 'restSeconds', 'workSeconds', 'holdSeconds', 'distanceM'] as const

/** How much is done, not how often or how long between. */
const AMOUNTS = ['reps', 'workSeconds', 'holdSeconds', 'distanceM'] as const

/** So far behind what it corrects a correction is said. */
const CORRECTION_CHARACTERS = 160

/** "Rest sixty seconds. Make that forty-five": a number alone corrects what was said last, or what it repeats ("I said six"). */
function asCorrections(speech: Speech, hits: readonly DoseHit[]): DoseHit[] {
  const settled: DoseHit[] = []
  for (const hit of hits) {
    const number = hit.corrects ? numberAlone(hit) : null
    const field = number && fieldOf(speech, hit, settled)
    settled.push(
      field && field !== 'reps'
        ? { ...hit, dose: buildPrescription({ ...hit.dose, reps: null, [field]: number }) }
        : hit,
    )
  }
  return settled
}

function numberAlone({ dose, quote }: DoseHit): Range | null {
  const others = AMOUNTS.some((field) => field !== 'reps' && dose[field] !== null)
  if (dose.reps === null || dose.reps === 'max' || others || dose.perSide) return null
  return UNITS_SAID.test(plainWords(quote.text)) ? null : dose.reps
}

/** The one field that the corrected phrase fills, or the one that holds the number said to be wrong. */
function fieldOf(speech: Speech, hit: DoseHit, before: readonly DoseHit[]): Counted | null {
  const said = SAID_BEFORE.exec(plainWords(speech.text.slice(Math.max(0, hit.offset - BEFORE_CHARACTERS), hit.end)))
  const wrong = said?.[1] === undefined ? null : (readDose(`${said[1]} reps`)?.reps ?? null)
  if (wrong !== null && wrong !== 'max') {
    for (const { dose } of before.toReversed()) {
      const field = COUNTED.find((one) => holds(dose[one], wrong))
      if (field) return field
    }
  }
  const last = before.at(-1)
  if (!last || hit.offset - last.end > CORRECTION_CHARACTERS) return null
  const all = COUNTED.filter((field) => last.dose[field] !== null)
  // "twenty five seconds, two goes. Make it twenty"
  const filled = all.length === 2 && last.dose.sets !== null ? all.filter((field) => field !== 'sets') : all
  return filled.length === 1 ? (filled[0] ?? null) : null
}

function holds(value: Range | 'max' | null, wrong: Range): boolean {
  return value !== null && value !== 'max' && value.min === wrong.min && value.max === wrong.max
}

/** "Eight a side first time and six the second": sets that differ, as one dose from the one to the other. */
function joinTurns(speech: Speech, hits: readonly DoseHit[]): DoseHit[] {
  const joined: DoseHit[] = []
  for (const hit of hits) {
    const last = joined.at(-1)
    const between = last ? speech.text.slice(last.end, hit.offset) : ''
    const isSecond = last && isFirstTurn(between) && SECOND_TURN.test(turnBehind(speech, hit.end))
    const both = isSecond ? fromTo(last.dose, hit.dose) : null
    if (last && both) {
      joined[joined.length - 1] = withDose(speech, last, hit.end, both)
      continue
    }
    const alone = TURN_BY_TURN.exec(turnBehind(speech, hit.end))
    const second =
      alone?.[1] === undefined ? null : readDose(`${alone[1]} ${hit.dose.reps === null ? 'seconds' : 'reps'}`)
    const range = second && fromTo(hit.dose, second)
    joined.push(range ? withDose(speech, hit, hit.end + (alone?.[0].length ?? 0), range) : hit)
  }
  return joined
}

const TURN_CHARACTERS = 90

function turnBehind(speech: Speech, end: number): string {
  return speech.text.slice(end, end + TURN_CHARACTERS).replace(/[\v\n]/g, ' ')
}

function isFirstTurn(between: string): boolean {
  return between.length <= TURN_CHARACTERS && /^[\s,]*(?:for |on |in )?(?:the |your )?first\b/i.test(between)
}

/** A dose from the amounts of two sets; null where they do not count the same. */
function fromTo(first: Prescription, second: Prescription): Prescription | null {
  const sets = first.sets ?? { min: 2, max: 2 }
  if (first.reps !== null && first.reps !== 'max' && second.reps !== null && second.reps !== 'max')
    return { ...first, sets, reps: across(first.reps, second.reps), perSide: first.perSide || second.perSide }
  const later = second.holdSeconds ?? second.workSeconds
  if (later === null) return null
  if (first.holdSeconds !== null) return { ...first, sets, holdSeconds: across(first.holdSeconds, later) }
  return first.workSeconds === null ? null : { ...first, sets, workSeconds: across(first.workSeconds, later) }
}

function withDose(speech: Speech, hit: DoseHit, end: number, dose: Prescription): DoseHit {
  const { atMs, text } = quotePiece(speech, { offset: hit.offset, end })
  return { ...hit, end, dose, quote: { atMs, text } }
}
