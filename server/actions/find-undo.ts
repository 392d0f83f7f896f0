/** Finds which edit of a log a person can take back next, and which one they can bring again. */
import type { EditRecord } from '../../shared/edit.ts'
import { undoneBy } from './edit-sheet.ts'

export interface UndoStep {
  /** What undoing names. */
  opId: string
  /** What was done at first. */
  op: EditRecord['op']
}

/**
 * @param records lines of the log, in order
 * @param actorId whose edits count
 */
export function findUndo(
  records: readonly EditRecord[],
  actorId: string,
): { undo: UndoStep | null; redo: UndoStep | null } {
  let done: UndoStep[] = []
  let undone: UndoStep[] = []
  for (const { opId, op, actor } of records) {
    if (actor !== actorId) continue
    const target = undoneBy(opId)
    const back = done.find((step) => step.opId === target)
    const again = undone.find((step) => step.opId === target)
    if (back) {
      done = done.filter((step) => step !== back)
      undone = [...undone, { opId, op: back.op }]
    } else if (again) {
      undone = undone.filter((step) => step !== again)
      done = [...done, { opId, op: again.op }]
    } else {
      done = [...done, { opId, op }]
      undone = []
    }
  }
  return { undo: done.at(-1) ?? null, redo: undone.at(-1) ?? null }
}
