/** Writes a person's edits onto the log sheet of a recording, and takes one of them back. */
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { parseEdit } from '../../shared/edit.ts'
import type { Edit, EditOf } from '../../shared/edit.ts'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { StoredSheet } from '../store/keep-sheets.ts'
import type { Appended } from '../store/write-edits.ts'
import type { Studio } from '../studio.ts'

const OpId = z.string().min(1).max(200)

export const SentEdits = z.strictObject({
  /** The version of the sheet that the page showed. */
  baseVersion: z.number().int().nonnegative(),
  edits: z
    .array(z.strictObject({ opId: OpId, op: z.unknown() }))
    .min(1)
    .max(200),
})
const EditInput = SentEdits.extend({ recordingId: z.string().min(1) })
const UndoInput = z.strictObject({ recordingId: z.string().min(1), opId: OpId })

type Needs = Pick<Studio, 'store' | 'actor' | 'clock'>

/**
 * All of them or none. Edits sent twice are written once.
 * @throws AppError row-missing, not-allowed, edit-target, edit-invalid, edit-reused, sheet-conflict (a SheetConflict)
 */
export async function editSheet(studio: Needs, input: z.input<typeof EditInput>): Promise<Appended> {
  const { recordingId, baseVersion, edits } = EditInput.parse(input)
  const stored = await mustHaveSheet(studio, recordingId)
  const named = edits.map(({ opId, op }) => ({ opId, op: signWaiver(parseEdit(op), stored.sheet, studio) }))
  return studio.store.sheets.appendEdits({ sheetId: stored.id, baseVersion, edits: named, actor: studio.actor })
}

/**
 * Takes one edit back by a new one; taking that one back brings the edit again. Asked twice, it is done once.
 * @throws AppError row-missing, not-allowed, edit-target, edit-invalid when a later edit changed the same thing
 */
export async function undoSheetEdit(studio: Needs, input: z.input<typeof UndoInput>): Promise<Appended> {
  const { recordingId, opId } = UndoInput.parse(input)
  const stored = await mustHaveSheet(studio, recordingId)
  const { store, actor } = studio
  return store.sheets.undoEdit({ sheetId: stored.id, opId, undoId: undoIdOf(opId), actor })
}

const UNDO = /^undo-(\d+)-(.+)$/s

/** The opId under which an edit is taken back: `undo-1-x` for x, `undo-2-x` for that one, and so on. */
export function undoIdOf(opId: string): string {
  const [, times = '0', first = opId] = UNDO.exec(opId) ?? []
  return `undo-${Number(times) + 1}-${first}`
}

/** What the edit of this opId took back; null = it took nothing back. */
export function undoneBy(opId: string): string | null {
  const [, times, first] = UNDO.exec(opId) ?? []
  if (times === undefined || first === undefined) return null
  return times === '1' ? first : `undo-${Number(times) - 1}-${first}`
}

async function mustHaveSheet({ store, actor }: Needs, recordingId: string): Promise<StoredSheet> {
  const stored = await store.sheets.readOf(recordingId)
  if (!stored)
    throw new AppError('row-missing', 'Nothing is drafted for this class yet. Add its words or a plan first.')
  mustBeAllowed(actor, 'sheet.edit', { type: 'sheet', id: stored.id })
  return stored
}

/** Who waives, and when, is not for the page to say. One sent again is signed as it was the first time. */
function signWaiver(op: Edit, sheet: LogSheet, { actor, clock }: Needs): Edit {
  if (op.op !== 'waive') return op
  const waiver = { ...op.waiver, by: actor.name }
  const same = (one: EditOf<'waive'>['waiver']): boolean =>
    one.segmentId === waiver.segmentId &&
    one.ruleId === waiver.ruleId &&
    one.hazard === waiver.hazard &&
    one.reason === waiver.reason &&
    one.by === waiver.by
  return { op: 'waive', waiver: { ...waiver, atUtc: sheet.waivers.find(same)?.atUtc ?? clock() } }
}
