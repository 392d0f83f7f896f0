/** Turns the filled slots of one dose into a prescription: what "times" counts, per repetition or per set, tempo, doubts. */
import { buildPrescription, type Prescription, type Range } from '../../shared/log-sheet.ts'
import type { Slots } from './read-slots.ts'

/** What is known besides the words. */
export interface DoseContext {
  /** The exercise is held still: "3 x 30" means seconds. */
  still?: boolean
}

export interface Draft {
  slots: Slots
  doubts: string[]
  /** The hold was said after the lifting phase: a pause of the tempo at the top. */
  isHoldAfterUp?: boolean
}

export type NumberSlot = 'sets' | 'reps' | 'times' | 'many' | 'work' | 'hold' | 'rest' | 'distance'
/** In the order they are said in one phrase. */
export const NUMBER_SLOTS: readonly NumberSlot[] = ['sets', 'times', 'many', 'reps', 'work', 'hold', 'distance', 'rest']

/** A hold up to this long, said with "eight times", is one of each repetition (common practice, no source). */
const LONGEST_REP_HOLD_S = 10
/** From here on a bare "3 x 30" may as well mean seconds (common practice, no source). */
const LEAST_DOUBTFUL_REPS = 20
/** More sets than this in "ten by three" are unusual, so the order is asked. */
const MOST_USUAL_SETS = 6

/** The prescription that the slots give. */
export function finishDraft(draft: Draft, context: DoseContext): Prescription {
  const doubts = [...draft.doubts]
  if (isEachSide(draft.slots)) doubts.push('“Each” was read as each side.')
  const slots = withTempo(
    withClock(withStill(withAgain(withTimes(draft.slots)), context, doubts)),
    draft.isHoldAfterUp === true,
  )
  return buildPrescription({
    scheme: slots.scheme ?? 'straight',
    sets: slots.sets ?? null,
    reps: slots.reps ?? null,
    repUnit: slots.repUnit ?? 'rep',
    repScheme: slots.repScheme ?? null,
    workSeconds: slots.work ?? null,
    holdSeconds: slots.hold ?? null,
    holdPer: slots.hold ? holdPerOf(slots) : null,
    distanceM: slots.distance ?? null,
    intervalSeconds: slots.every ?? null,
    perSide: slots.perSide ?? isEachSide(slots),
    restSeconds: slots.rest ?? null,
    restBetween: slots.rest ? (slots.restBetween ?? null) : null,
    tempo: slots.tempo ?? null,
    load: slots.load ?? null,
    effort: slots.effort ?? null,
    frequency: slots.frequency ?? null,
    progression: slots.progression ?? null,
    open: slots.open ?? null,
    approx: slots.approx ?? false,
    unsure: doubts.length > 0,
    why: [...new Set(doubts)],
  })
}

/** In a group "ten each" is ten of each exercise. */
function isEachSide({ each, perSide, work, rest, scheme = 'straight' }: Slots): boolean {
  const isByClock = work !== undefined && rest !== undefined
  return each === true && !isByClock && !perSide && scheme !== 'superset' && scheme !== 'circuit'
}

/** Done again: two sets where none are said. */
function withAgain(slots: Slots): Slots {
  const { again, ...others } = slots
  const { sets, reps, work, hold, distance } = others
  const isWork = [reps, work, hold, distance].some((amount) => amount !== undefined)
  return again && isWork && !sets ? { ...others, sets: exactly(2) } : others
}

/** "Three times" is sets of what was said, or repetitions where nothing or a short hold was said. */
function withTimes(slots: Slots): Slots {
  const { times, repeats, many, ...rest } = slots
  const isUncounted = [rest.reps, rest.work, rest.hold, rest.distance].every((amount) => amount === undefined)
  // "ten of them, and we do it twice": the repetitions, and their sets
  const others = many && (times ?? repeats) && isUncounted ? { ...rest, reps: many } : rest
  const count = times ?? repeats ?? many
  if (!count) return others
  const isShortHold =
    others.hold !== undefined && (repeats !== undefined || (others.hold.max ?? 0) <= LONGEST_REP_HOLD_S)
  const isOfReps = others.reps === undefined && others.work === undefined && others.distance === undefined
  if (isOfReps && (others.hold === undefined || isShortHold)) {
    return { ...others, reps: count, ...(others.hold ? { holdPer: 'rep' as const } : {}) }
  }
  return others.sets === undefined ? { ...others, sets: count } : others
}

function withStill(slots: Slots, { still }: DoseContext, doubts: string[]): Slots {
  const { bare, ...others } = slots
  const { reps, work, ...rest } = others
  const isClock = ['interval', 'circuit', 'emom', 'amrap'].includes(others.scheme ?? 'straight')
  if (still === true && bare && reps !== undefined && reps !== 'max') return { ...rest, hold: reps, holdPer: 'set' }
  if (still === true && work && reps === undefined && !others.hold && !isClock)
    return { ...rest, hold: work, holdPer: 'set' }
  const isLifted = others.load !== undefined || others.tempo !== undefined
  if (bare && reps !== undefined && reps !== 'max' && !isLifted) noteBare(others.sets, reps, still, doubts)
  return others
}

function noteBare(sets: Range | undefined, reps: Range, still: boolean | undefined, doubts: string[]): void {
  const least = reps.min ?? 0
  if (still === undefined && least >= LEAST_DOUBTFUL_REPS && least % 5 === 0) {
    doubts.push('The second number may mean seconds or repetitions; it was read as repetitions.')
  }
  if ((sets?.min ?? 0) > MOST_USUAL_SETS && (reps.max ?? 0) <= MOST_USUAL_SETS) {
    doubts.push('Sets come first by custom, yet this many sets are unusual; the numbers may be the other way round.')
  }
}

/** Every minute on the minute: the interval is a minute unless said, and the whole time gives the sets. */
function withClock(slots: Slots): Slots {
  const { total: said, ...whole } = slots
  if (whole.scheme !== 'emom') return whole
  const every = whole.every ?? { min: 60, max: 60 }
  const step = every.max ?? 60
  // Work longer than the interval is the whole time: "five on the minute, for ten minutes".
  const isTotal = said === undefined && (whole.work?.min ?? 0) > step
  const total = isTotal ? (whole.work?.min ?? 0) : said
  const { work, ...others } = whole
  if (work && !isTotal) Object.assign(others, { work })
  const sets = others.sets ?? (total === undefined || step <= 0 ? undefined : exactly(Math.round(total / step)))
  return { ...others, every, ...(sets ? { sets } : {}) }
}

function exactly(value: number): Range {
  return { min: value, max: value }
}

/** Phases become a tempo; a pause said between them is a part of it, not a hold. */
function withTempo(slots: Slots, isHoldAfterUp: boolean): Slots {
  const { phases = {}, hold, holdPer, ...others } = slots
  const kept = { ...others, ...(hold ? { hold } : {}), ...(holdPer ? { holdPer } : {}) }
  if (phases.down === undefined && typeof phases.up !== 'number') return kept
  const isPause = hold !== undefined && holdPer === 'rep'
  const pauseAt = isHoldAfterUp ? 'top' : 'pause'
  const all = { ...phases, ...(isPause ? { [pauseAt]: hold.max ?? hold.min ?? 0 } : {}) }
  const tempo = [all.down, all.pause, all.up, all.top].map((phase) => String(phase ?? 'x')).join('-')
  return { ...(isPause ? others : kept), tempo: others.tempo ?? tempo }
}

/** With repetitions a hold belongs to each of them, unless breaths are counted or the words say otherwise. */
function holdPerOf(slots: Slots): 'rep' | 'set' {
  const hasReps = slots.reps !== undefined && (slots.repUnit ?? 'rep') === 'rep'
  if (slots.isHoldPerSaid) return slots.holdPer ?? 'set'
  return hasReps || slots.holdPer === 'rep' ? 'rep' : 'set'
}
