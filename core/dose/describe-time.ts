/** Says how long a dose takes and what it comes to, with what was taken for granted: for planning, never as a measurement. */
import type { Prescription } from '../../shared/log-sheet.ts'
import { timeDose, timeUnderTension, totalReps } from './time-dose.ts'
import type { Amount } from './time-dose.ts'

export interface DoseTotals {
  /** "Takes about 3 to 4 minutes, 60 to 72 repetitions." Empty where nothing can be told. */
  text: string
  /** What was taken where the dose leaves it open, one sentence each. */
  assumed: readonly string[]
}

/** Repetitions are told where sets or sides make more of them than the dose names. */
export function describeTotals(dose: Prescription): DoseTotals {
  const { seconds, assumed } = timeDose(dose)
  if (seconds === null) return { text: '', assumed: [] }
  const reps = totalReps(dose)
  const tension = timeUnderTension(dose).seconds
  const parts = [
    `Takes about ${lengthWords(seconds)}`,
    ...(reps === null ? [] : [`${rangeWords(reps)} ${UNITS[dose.repUnit]} in all`]),
    ...(tension === null || lengthWords(tension) === lengthWords(seconds)
      ? []
      : [`${lengthWords(tension)} of it work`]),
  ]
  return { text: `${parts.join(', ')}.`, assumed }
}

const UNITS = {
  rep: 'repetitions',
  breath: 'breaths',
  stroke: 'strokes',
  cycle: 'cycles',
  length: 'lengths',
} as const satisfies Record<Prescription['repUnit'], string>

/** Up to two minutes in steps of 5 seconds, above in half minutes: the method carries no more. */
function lengthWords({ min, max }: Amount): string {
  if (max < 120) return `${rangeWords({ min: roundTo(min, 5), max: roundTo(max, 5) })} seconds`
  const minutes = { min: roundTo(min, 30) / 60, max: roundTo(max, 30) / 60 }
  return `${rangeWords(minutes)} minutes`
}

function roundTo(value: number, step: number): number {
  return Math.max(step, Math.round(value / step) * step)
}

function rangeWords({ min, max }: Amount): string {
  return min === max ? String(max) : `${String(min)} to ${String(max)}`
}
