/**
 * How long a dose takes, how many repetitions it has, and how long the muscles work.
 * Time = sets x sides x set time + (sets - 1) x rest + sets x (sides - 1) x swap; a list of repetitions (10-8-6) is as
 * many sets. What the dose does not say is assumed, and every assumption that was used is named in the answer.
 */
import type { Prescription, Range } from '../../shared/log-sheet.ts'

/** What is taken where a dose leaves it open. Common practice, no source; a person may set others. */
export interface TimeAssumptions {
  /** Lowering, pause, lifting, pause of one repetition, in seconds. */
  tempo: readonly [number, number, number, number]
  /** A phase "as fast as you can", in seconds. */
  fastPhaseSeconds: number
  breathSeconds: number
  strokeSeconds: number
  cycleSeconds: number
  /** From one side to the other, in seconds. */
  swapSeconds: number
  /** From one exercise to the next, in seconds. */
  transitionSeconds: number
  /** Whether the rest after the last set counts. */
  countLastRest: boolean
}

export const TIME_ASSUMPTIONS: TimeAssumptions = {
  tempo: [2, 0, 1, 0],
  fastPhaseSeconds: 1,
  breathSeconds: 5,
  strokeSeconds: 3,
  cycleSeconds: 16,
  swapSeconds: 5,
  transitionSeconds: 30,
  countLastRest: false,
}

/** Seconds (or a count) from least to most. */
export interface Amount {
  min: number
  max: number
}

export interface DoseTime {
  /** Null when the dose does not say enough. */
  seconds: Amount | null
  /** What was assumed, or what is missing: one sentence each. */
  assumed: string[]
}

/** How long the dose takes, rests and the change of sides included. */
export function timeDose(dose: Prescription, assumptions: Partial<TimeAssumptions> = {}): DoseTime {
  const given = { ...TIME_ASSUMPTIONS, ...assumptions }
  const assumed = new Set<string>()
  const seconds = doseSeconds(dose, given, assumed)
  if (seconds === null) assumed.add('How long one set takes is not said.')
  return { seconds, assumed: [...assumed] }
}

/** The doses of a routine one after the other, with the time to get from one to the next; doses without a time are named. */
export function timeRoutine(doses: readonly Prescription[], assumptions: Partial<TimeAssumptions> = {}): DoseTime {
  const given = { ...TIME_ASSUMPTIONS, ...assumptions }
  const times = doses.map((dose) => timeDose(dose, given))
  const assumed = new Set(times.flatMap((time) => time.assumed))
  const known = times.flatMap((time) => (time.seconds === null ? [] : [time.seconds]))
  if (known.length === 0) return { seconds: null, assumed: [...assumed] }
  const between = exactly((doses.length - 1) * given.transitionSeconds)
  if (doses.length > 1) assumed.add(`${String(given.transitionSeconds)} s from one exercise to the next.`)
  return { seconds: known.reduce(plus, between), assumed: [...assumed] }
}

/**
 * Repetitions in all, in their own unit (reps, breaths, strokes): sets x repetitions x sides, parts that follow included;
 * null where they are not counted.
 */
export function totalReps(dose: Prescription): Amount | null {
  const one = isLadder(dose) ? exactly(listOf(dose).reduce(sum, 0)) : repsPerSet(dose)
  const own = one === null ? null : scaled(times(isLadder(dose) ? roundsOf(dose) : setsInAll(dose), one), sidesOf(dose))
  const parts = partsOf(dose).flatMap((part) => totalReps(part) ?? [])
  const all = [...(own === null ? [] : [own]), ...parts.map((amount) => times(setsInAll(dose), amount))]
  return all.length === 0 ? null : all.reduce(plus)
}

/** Seconds under load in all: repetitions x tempo and holds, moving work, or held time, on both sides, parts included. */
export function timeUnderTension(dose: Prescription, assumptions: Partial<TimeAssumptions> = {}): DoseTime {
  const given = { ...TIME_ASSUMPTIONS, ...assumptions }
  const assumed = new Set<string>()
  const seconds = workInAll(dose, given, assumed)
  if (seconds === null) assumed.add('How long one set takes is not said.')
  return { seconds, assumed: [...assumed] }
}

/** A circuit: rounds x stations x (work + rest), all in seconds; without the last rest where it is not counted. */
export function timeCircuit(
  {
    stations,
    rounds,
    workSeconds,
    restSeconds,
  }: Readonly<Record<'stations' | 'rounds' | 'workSeconds' | 'restSeconds', number>>,
  { countLastRest }: Pick<TimeAssumptions, 'countLastRest'> = TIME_ASSUMPTIONS,
): number {
  return rounds * stations * (workSeconds + restSeconds) - (countLastRest ? 0 : restSeconds)
}

function doseSeconds(dose: Prescription, given: TimeAssumptions, assumed: Set<string>): Amount | null {
  if (amountOf(dose.sets) === null && !isLadder(dose)) assumed.add('One set where none is said.')
  const every = amountOf(dose.intervalSeconds)
  // By the clock the interval holds work and rest alike.
  if (dose.scheme === 'emom' && every !== null) return times(setsInAll(dose), every)
  const work = workInAll(dose, given, assumed)
  return work && plus(plus(work, swapsInAll(dose, given, assumed)), restInAll(dose, given))
}

/** All sets on all sides, and in each set what follows. */
function workInAll(dose: Prescription, given: TimeAssumptions, assumed: Set<string>): Amount | null {
  const isListed = isLadder(dose) && amountOf(dose.workSeconds) === null
  const one = isListed ? listSeconds(dose, given, assumed) : setSeconds(dose, given, assumed)
  if (one === null) return null
  const own = scaled(times(isLadder(dose) ? roundsOf(dose) : setsInAll(dose), one), sidesOf(dose))
  const parts = partsOf(dose).map((part) => workInAll(part, given, assumed))
  if (parts.includes(null)) assumed.add('A part that follows is left out: how long it takes is not said.')
  return parts.flatMap((part) => part ?? []).reduce((all, part) => plus(all, times(setsInAll(dose), part)), own)
}

/** All sets of a list of repetitions, once. */
function listSeconds(dose: Prescription, given: TimeAssumptions, assumed: Set<string>): Amount {
  const hold = dose.holdPer === 'set' ? (amountOf(dose.holdSeconds) ?? exactly(0)) : exactly(0)
  const list = listOf(dose)
  return plus(scaled(repSeconds(dose, given, assumed), list.reduce(sum, 0)), scaled(hold, list.length))
}

/** From side to side in each set; a rest between the sides takes the place of the change. */
function swapsInAll(dose: Prescription, given: TimeAssumptions, assumed: Set<string>): Amount {
  if (sidesOf(dose) === 1) return exactly(0)
  const rest = dose.restBetween === 'sides' ? amountOf(dose.restSeconds) : null
  if (rest === null) assumed.add(`${String(given.swapSeconds)} s to change sides.`)
  return times(setsInAll(dose), rest ?? exactly(given.swapSeconds))
}

function restInAll(dose: Prescription, { countLastRest }: TimeAssumptions): Amount {
  const rest = amountOf(dose.restSeconds) ?? exactly(0)
  const sets = setsInAll(dose)
  // Contract and relax: each repetition has its own rest, the last one too.
  if (dose.restBetween === 'reps') {
    const reps = times(sets, repsPerSet(dose) ?? exactly(0))
    return scaled(times(reps, rest), sidesOf(dose))
  }
  if (dose.restBetween === 'sides') return exactly(0)
  const rests = isLadder(dose) && dose.restBetween === 'rounds' ? roundsOf(dose) : sets
  const less = countLastRest ? 0 : 1
  return times({ min: Math.max(rests.min - less, 0), max: Math.max(rests.max - less, 0) }, rest)
}

/** One set on one side. */
function setSeconds(dose: Prescription, given: TimeAssumptions, assumed: Set<string>): Amount | null {
  const work = amountOf(dose.workSeconds)
  if (work !== null) return work
  const hold = amountOf(dose.holdSeconds)
  const reps = repsPerSet(dose)
  if (dose.holdPer === 'set' && hold !== null && reps === null) return hold
  if (reps === null) return dose.holdPer === 'rep' ? hold : null
  const one =
    dose.holdPer === 'rep' && dose.tempo === null && hold !== null && isHeldOnly(dose)
      ? hold
      : repSeconds(dose, given, assumed)
  const held = dose.holdPer === 'set' && hold !== null ? hold : exactly(0)
  return plus(times(reps, one), held)
}

/** Contract and relax has no movement to time. */
function isHeldOnly(dose: Prescription): boolean {
  return dose.restBetween === 'reps'
}

function repSeconds(dose: Prescription, given: TimeAssumptions, assumed: Set<string>): Amount {
  const hold = dose.holdPer === 'rep' ? (amountOf(dose.holdSeconds) ?? exactly(0)) : exactly(0)
  switch (dose.repUnit) {
    case 'rep':
    case 'length':
      return plus(exactly(tempoSeconds(dose.tempo, given, assumed)), hold)
    case 'breath':
      assumed.add(`${String(given.breathSeconds)} s a breath.`)
      return exactly(given.breathSeconds)
    case 'stroke':
      assumed.add(`${String(given.strokeSeconds)} s a stroke.`)
      return plus(exactly(given.strokeSeconds), hold)
    case 'cycle':
      if (dose.tempo !== null) return exactly(tempoSeconds(dose.tempo, given, assumed))
      assumed.add(`${String(given.cycleSeconds)} s a breathing cycle.`)
      return exactly(given.cycleSeconds)
  }
}

function tempoSeconds(tempo: string | null, given: TimeAssumptions, assumed: Set<string>): number {
  const phases = tempo?.split('-') ?? []
  return given.tempo.reduce((sum, usual, index) => sum + phaseSeconds(phases[index], usual, given, assumed), 0)
}

function phaseSeconds(phase: string | undefined, usual: number, given: TimeAssumptions, assumed: Set<string>): number {
  if (phase === 'X') {
    assumed.add(`${String(given.fastPhaseSeconds)} s for a phase as fast as you can.`)
    return given.fastPhaseSeconds
  }
  const seconds = Number(phase)
  if (phase !== undefined && Number.isFinite(seconds)) return seconds
  assumed.add(`Tempo ${given.tempo.join('-')} where none is said.`)
  return usual
}

function repsPerSet(dose: Prescription): Amount | null {
  return dose.reps === 'max' ? null : amountOf(dose.reps)
}

/** A list of repetitions is all sets at once. */
function isLadder(dose: Prescription): boolean {
  return listOf(dose).length > 0
}

function listOf({ repScheme }: Prescription): readonly number[] {
  return repScheme ?? []
}

/** How often a list is gone through: "three sets, 10-8-6" are the three of the list, "two rounds of 1-2-3" six. */
function roundsOf(dose: Prescription): Amount {
  const sets = amountOf(dose.sets)
  const { length } = listOf(dose)
  return sets === null || (sets.min === length && sets.max === length) ? exactly(1) : sets
}

/** Sets in all, those of a list counted one by one; one where none is said. */
export function setsInAll(dose: Prescription): Amount {
  return isLadder(dose) ? scaled(roundsOf(dose), listOf(dose).length) : (amountOf(dose.sets) ?? exactly(1))
}

function sidesOf({ perSide }: Prescription): 1 | 2 {
  return perSide ? 2 : 1
}

/** What follows in each set; it is done on each side where the dose is. */
function partsOf({ then, perSide }: Prescription): Prescription[] {
  return then.map((part) => ({ ...part, perSide: perSide || part.perSide }))
}

function sum(a: number, b: number): number {
  return a + b
}

/** The said side stands for one left open: "10+" is timed as 10, "up to 12" as 12. */
function amountOf(range: Range | null): Amount | null {
  const min = range?.min ?? range?.max
  const max = range?.max ?? range?.min
  return min == null || max == null ? null : { min, max }
}

function exactly(value: number): Amount {
  return { min: value, max: value }
}

function plus(a: Amount, b: Amount): Amount {
  return { min: a.min + b.min, max: a.max + b.max }
}

function times(a: Amount, b: Amount): Amount {
  return { min: a.min * b.min, max: a.max * b.max }
}

function scaled(amount: Amount, by: number): Amount {
  return { min: amount.min * by, max: amount.max * by }
}
