/** Whether a dose says how much work it asks for. */
import type { Prescription, Range } from '../../shared/log-sheet.ts'

/** True for a range with a number in it. */
export function isSaid(range: Range | null): range is Range {
  return range !== null && (range.min !== null || range.max !== null)
}

/** True when the dose, a part of it or one of its levels names an amount, or is open on purpose. */
export function hasWork(dose: Prescription): boolean {
  return (
    isOpen(dose) || hasOwnWork(dose) || dose.then.some(hasWork) || dose.byLevel.some((level) => hasWork(level.dose))
  )
}

/** True for a deliberate "as long as it feels good". */
export function isOpen(dose: Prescription): boolean {
  return dose.open !== null && dose.open.trim() !== ''
}

function hasOwnWork({ reps, repScheme, workSeconds, holdSeconds, distanceM }: Prescription): boolean {
  return (
    reps === 'max' ||
    [reps, workSeconds, holdSeconds, distanceM].some(isSaid) ||
    (repScheme !== null && repScheme.length > 0)
  )
}

/** The dose and everything below it. */
export function allDoses(dose: Prescription): Prescription[] {
  return [dose, ...dose.then.flatMap(allDoses), ...dose.byLevel.flatMap((level) => allDoses(level.dose))]
}
