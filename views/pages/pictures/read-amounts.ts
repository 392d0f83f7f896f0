/** What a dose strip shows of a dose: amounts of work with their marks, and how many sets of them. */
import type { Prescription, Range } from '../../../shared/log-sheet.ts'
import { formatRange, formatSeconds } from '../format.ts'

/**
 * How work is marked along the foot of its block: ticks = repetitions, dots = breaths, bars = repetitions that are held,
 * bar = a hold, dashes = moving for a time, measure = a distance, chevrons = as many as possible, open = as long as suits.
 */
export type MarkKind = 'ticks' | 'dots' | 'bars' | 'bar' | 'dashes' | 'measure' | 'chevrons' | 'open' | 'none'

export interface Amount {
  /** The big numeral, such as "12–15"; '' = nothing is said. */
  number: string
  /** What it counts, such as "s" or "breaths"; '' = repetitions. */
  unit: string
  mark: MarkKind
  /** Marks that are sure, and more that may be done. */
  sure: number
  maybe: number
  /** How long the work takes, in seconds; an estimate for counted work. */
  seconds: number
}

export interface Sets {
  sure: number
  maybe: number
  /** true = more may follow. */
  open: boolean
}

/** Seconds of one unit where no tempo is said: common practice, no source. */
const UNIT_SECONDS = { rep: 3, breath: 5, stroke: 2.5, cycle: 4, length: 30 } as const
const UNKNOWN_SECONDS = 30

/** What is done in one set, in order. Empty = the dose says no amount. */
export function readAmounts(dose: Prescription): Amount[] {
  return [dose, ...dose.then].map(readAmount).filter((amount) => amount.number !== '')
}

/** Each set's amount where they differ, as in 10-8-6; null = all sets are alike. */
export function readLadder(dose: Prescription): Amount[] | null {
  if (dose.repScheme === null || dose.repScheme.length === 0) return null
  return dose.repScheme.map((reps) => readAmount({ ...dose, repScheme: null, reps: { min: reps, max: reps } }))
}

export function readSets({ sets }: Prescription): Sets {
  const { min = null, max = null } = sets ?? {}
  if (min === null && max === null) return { sure: 1, maybe: 0, open: false }
  const sure = Math.max(1, Math.floor(min ?? 1))
  return { sure, maybe: Math.max(0, Math.floor(max ?? sure) - sure), open: max === null }
}

function readAmount(dose: Prescription): Amount {
  const { number, unit, mark, sure, maybe, seconds } = amountOf(dose)
  const about = dose.approx && number !== '' && number !== 'max' ? '~' : ''
  const doubt = dose.unsure && number !== '' ? '?' : ''
  return { number: `${about}${number}${doubt}`, unit, mark, sure, maybe, seconds }
}

function amountOf(dose: Prescription): Amount {
  const none = { unit: '', sure: 0, maybe: 0 }
  if (dose.scheme === 'amrap') {
    const time = formatSeconds(dose.workSeconds)
    const seconds = middle(dose.workSeconds, UNKNOWN_SECONDS)
    return { ...none, number: time.number || 'max', unit: time.unit, mark: 'chevrons', seconds }
  }
  if (dose.reps === 'max') return { ...none, number: 'max', mark: 'chevrons', seconds: UNKNOWN_SECONDS }
  if (dose.reps !== null && formatRange(dose.reps) !== '') return countedAmount(dose, dose.reps)
  if (formatRange(dose.distanceM) !== '') {
    const seconds = middle(dose.distanceM, UNKNOWN_SECONDS)
    return { ...none, number: formatRange(dose.distanceM), unit: 'm', mark: 'measure', seconds }
  }
  if (formatRange(dose.workSeconds) !== '') return timedAmount(dose.workSeconds, 'dashes')
  if (formatRange(dose.holdSeconds) !== '') return timedAmount(dose.holdSeconds, 'bar')
  if (dose.open !== null) return { ...none, number: 'open', mark: 'open', seconds: UNKNOWN_SECONDS }
  return { ...none, number: '', mark: 'none', seconds: UNKNOWN_SECONDS }
}

function countedAmount(dose: Prescription, reps: Range): Amount {
  const { repUnit } = dose
  const sure = Math.floor(reps.min ?? 1)
  const held = dose.holdPer === 'rep' ? middle(dose.holdSeconds, 0) : 0
  const one = (tempoSeconds(dose.tempo) ?? UNIT_SECONDS[repUnit]) + held
  const plural = reps.min === 1 && reps.max === 1 ? repUnit : `${repUnit}s`
  const moving = middle(dose.workSeconds, 0)
  return {
    number: formatRange(reps),
    unit: repUnit === 'rep' ? '' : plural,
    mark: held > 0 ? 'bars' : repUnit === 'breath' ? 'dots' : 'ticks',
    sure,
    maybe: Math.max(0, Math.floor(reps.max ?? sure) - sure),
    seconds: moving > 0 ? moving : middle(reps, 1) * one + (dose.holdPer === 'set' ? middle(dose.holdSeconds, 0) : 0),
  }
}

function timedAmount(range: Range | null, mark: MarkKind): Amount {
  const { number, unit } = formatSeconds(range)
  return { number, unit, mark, sure: 0, maybe: 0, seconds: middle(range, UNKNOWN_SECONDS) }
}

/** The four numbers of a tempo; null = it is not of that form. Phases that are not said are ''. */
export function readTempo(tempo: string | null): string[] | null {
  const phases = (tempo ?? '').split('-').map((phase) => phase.trim())
  const isTempo = phases.length === 4 && phases.every((phase) => /^(\d+(\.\d+)?|x)$/i.test(phase))
  return isTempo ? phases.map((phase) => (phase === 'x' ? '' : phase)) : null
}

function tempoSeconds(tempo: string | null): number | null {
  const phases = readTempo(tempo)
  if (phases === null) return null
  const sum = phases.reduce((total, phase) => total + (Number(phase) || 0), 0)
  return sum > 0 ? sum : null
}

/** The middle of a range, or its one end. */
export function middle(range: Range | null, otherwise: number): number {
  const { min = null, max = null } = range ?? {}
  if (min === null && max === null) return otherwise
  return ((min ?? max ?? 0) + (max ?? min ?? 0)) / 2
}
