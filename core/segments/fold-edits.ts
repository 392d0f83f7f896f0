/** The sheet is the fold of its edits: applies a log of edits in order, and finds the edit that undoes one of them. */
import type { Edit, EditRecord } from '../../shared/edit.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { notThere, refuse } from './change-sheet.ts'
import { applyEdit } from './edit-sheet.ts'
import { findTouched } from './restore-sheet.ts'

export interface Folded {
  sheet: LogSheet
  /** The version of the last record applied. */
  version: number
}

/**
 * Applies records in order. A record whose opId was seen before changes nothing; one at or below the base's version is
 * in the base already.
 * @param base the sheet as drafted, or a snapshot of it; baseVersion says which (0 = as drafted).
 * @throws AppError edit-invalid when a version is missing or the records belong to different sheets; and what applyEdit throws.
 */
export function foldEdits(base: LogSheet, records: readonly EditRecord[], baseVersion = 0): Folded {
  const last = walk(base, records, baseVersion).at(-1)
  return { sheet: last?.sheet ?? base, version: last?.version ?? baseVersion }
}

/**
 * The edit that undoes one record at the end of this log. What later edits changed stays.
 * @throws AppError edit-target when no such record lies above the base; edit-invalid when a later edit changed the same thing.
 */
export function undoEdit(base: LogSheet, records: readonly EditRecord[], opId: string, baseVersion = 0): Edit {
  const steps = walk(base, records, baseVersion)
  const at = steps.findIndex((step) => step.record.opId === opId)
  const step = steps[at]
  if (!step) throw notThere('The edit to undo is not in the log.')
  const before = steps[at - 1]?.sheet ?? base
  const now = steps.at(-1)?.sheet ?? base
  checkUnchanged(before, step.sheet, now)
  return applyEdit(before, step.record.op).inverse
}

interface Step extends Folded {
  record: EditRecord
}

/** The sheet after each record that changed it. */
function walk(base: LogSheet, records: readonly EditRecord[], baseVersion: number): Step[] {
  const seen = new Set<string>()
  const steps: Step[] = []
  let current: Folded = { sheet: base, version: baseVersion }
  for (const record of records) {
    if (record.sheetId !== records[0]?.sheetId)
      throw refuse('These edits belong to two classes. Apply each to its own.')
    const known = seen.has(record.opId) || record.version <= baseVersion
    seen.add(record.opId)
    if (known) continue
    if (record.version !== current.version + 1) {
      throw refuse(
        `The log of edits goes from version ${current.version} to ${record.version}. Load the missing edits and try again.`,
      )
    }
    current = { sheet: applyEdit(current.sheet, record.op).sheet, version: record.version }
    steps.push({ ...current, record })
  }
  return steps
}

/** Everything the edit touched must still be as the edit left it. */
function checkUnchanged(before: LogSheet, after: LogSheet, now: LogSheet): void {
  const { segmentIds, fields } = findTouched(before, after)
  for (const id of segmentIds) {
    const made = after.segments.find((one) => one.id === id)
    const current = now.segments.find((one) => one.id === id)
    if (!sameValue(made, current)) {
      const name = (current ?? made ?? before.segments.find((one) => one.id === id))?.exercise.name ?? id
      throw refuse(`A later edit changed ${name} too. Undo that one first.`)
    }
  }
  for (const name of fields) {
    const [made, current] = [after, now].map((sheet) => (sheet as Record<string, unknown>)[name])
    if (!sameValue(made, current))
      throw refuse(`A later edit changed the ${name} of the class too. Undo that one first.`)
  }
}

/** Deep equality of JSON values. */
function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  const [keys, others] = [Object.keys(a), Object.keys(b)]
  return (
    keys.length === others.length &&
    keys.every((key) => key in b && sameValue((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]))
  )
}
