/**
 * Log sheets: a sheet is the fold of its edits, and edits are only ever added. A write carries the version it was made on
 * and an opId; a repeated opId changes nothing.
 */
import { isDeepStrictEqual } from 'node:util'
import { undoEdit } from '../../core/segments/fold-edits.ts'
import type { Folded } from '../../core/segments/fold-edits.ts'
import { buildInverse } from '../../core/segments/restore-sheet.ts'
import type { Actor } from '../../shared/actors.ts'
import { Edit, parseEdit } from '../../shared/edit.ts'
import type { EditRecord } from '../../shared/edit.ts'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { parseLogSheet } from '../../shared/read-log-sheet.ts'
import { foldSheet, readLog, readRecords } from './fold-sheet.ts'
import type { Hold, Step } from './hold-store.ts'
import { missing } from './json-column.ts'
import { readRecording } from './keep-recordings.ts'
import { applyAll, findConflict, SheetConflict } from './rebase-edits.ts'
import { buildAnswer, findFormer, lockSheet, writeEdits, writeSnapshot } from './write-edits.ts'
import type { Appended, Desk, NamedEdit } from './write-edits.ts'

export interface Append {
  sheetId: string
  /** The version the edits were made on. */
  baseVersion: number
  edits: readonly NamedEdit[]
  actor: Actor
}

export interface StoredSheet extends Folded {
  id: string
  recordingId: string
}

export interface Sheets {
  /** One sheet a recording. @throws AppError row-missing, row-exists, sheet-field */
  add: (input: { recordingId: string; sheet: LogSheet; actor: Actor }) => Promise<StoredSheet>
  /** @throws AppError row-missing */
  read: (sheetId: string, version?: number) => Promise<StoredSheet>
  /** null = the recording has no sheet yet. */
  readOf: (recordingId: string) => Promise<StoredSheet | null>
  /** Lines of the log above a version, in order. */
  readEdits: (sheetId: string, afterVersion: number) => Promise<EditRecord[]>
  /**
   * Adds edits, all or none. Made on an older version, they are put onto the newest.
   * @throws SheetConflict when one no longer fits there; AppError row-missing, edit-target, edit-invalid, edit-reused.
   */
  appendEdits: (input: Append) => Promise<Appended>
  /** Undoes one edit of the log by a new one. @throws AppError row-missing, edit-target, edit-invalid, edit-reused */
  undoEdit: (input: { sheetId: string; opId: string; undoId: string; actor: Actor }) => Promise<Appended>
  /**
   * Puts a sheet built from the newest in its place, as one edit that can be undone; drafting again does this.
   * @throws AppError row-missing, edit-reused, and what build throws.
   */
  rebuild: (input: {
    sheetId: string
    opId: string
    actor: Actor
    build: (newest: LogSheet) => LogSheet
  }) => Promise<Appended>
}

export function keepSheets(hold: Hold): Sheets {
  const write = <Result>(sheetId: string, work: (desk: Desk) => Promise<Result>): Promise<Result> =>
    hold.write(async (step) => work({ step, sheetId, version: await lockSheet(step, hold.engine, sheetId) }))
  return {
    add: ({ recordingId, sheet, actor }) =>
      hold.write(async (step) => addSheet(step, hold.ids(), recordingId, parseLogSheet(sheet), actor)),
    read: async (sheetId, version) => {
      const { recordingId } = await readRow(hold.db, sheetId)
      const folded = await foldSheet(hold.db, sheetId, version)
      if (version !== undefined && folded.version < version) throw missing(`Version ${version} of sheet ${sheetId}`)
      return { id: sheetId, recordingId, ...folded }
    },
    readOf: async (recordingId) => {
      const row = await hold.db
        .selectFrom('sheets')
        .select('id')
        .where('recordingId', '=', recordingId)
        .executeTakeFirst()
      return row ? { id: row.id, recordingId, ...(await foldSheet(hold.db, row.id)) } : null
    },
    readEdits: (sheetId, afterVersion) => readRecords(hold.db, sheetId, afterVersion),
    appendEdits: (input) => write(input.sheetId, (desk) => appendEdits(desk, input)),
    undoEdit: ({ sheetId, opId, undoId, actor }) =>
      write(sheetId, async (desk) => {
        const former = await findFormer(desk, [undoId])
        if (former.size > 0) return answerRestore(desk, undoId, former)
        const op = await buildUndo(desk, opId)
        const current = await foldSheet(desk.step.db, sheetId)
        return writeEdits(desk, actor, [{ opId: undoId, op }], applyAll(current.sheet, [op]))
      }),
    rebuild: ({ sheetId, opId, actor, build }) =>
      write(sheetId, async (desk) => {
        const former = await findFormer(desk, [opId])
        if (former.size > 0) return answerRestore(desk, opId, former)
        const current = await foldSheet(desk.step.db, sheetId)
        const op = plain(buildInverse(shareSame(parseLogSheet(build(current.sheet)), current.sheet), current.sheet))
        if (isEmpty(op)) return { ...current, records: [] }
        return writeEdits(desk, actor, [{ opId, op }], applyAll(current.sheet, [op]))
      }),
  }
}

async function addSheet(
  step: Step,
  id: string,
  recordingId: string,
  sheet: LogSheet,
  actor: Actor,
): Promise<StoredSheet> {
  const { title } = await readRecording(step.db, recordingId)
  const result = await step.db
    .insertInto('sheets')
    .values({ id, recordingId, version: 0, createdUtc: step.nowUtc, updatedUtc: step.nowUtc })
    .onConflict((conflict) => conflict.column('recordingId').doNothing())
    .executeTakeFirst()
  if (result.numInsertedOrUpdatedRows === 0n) {
    throw new AppError('row-exists', `"${title}" has a log sheet already. Draft again to merge a fresh one into it.`)
  }
  await writeSnapshot({ step, sheetId: id, version: 0 }, sheet)
  await step.audit(actor, 'sheet.add', { type: 'sheet', id }, { recordingId })
  step.emit('sheets', id)
  return { id, recordingId, sheet, version: 0 }
}

async function appendEdits(desk: Desk, { sheetId, baseVersion, edits, actor }: Append): Promise<Appended> {
  const named = edits.map(({ opId, op }) => ({ opId, op: parseEdit(JSON.parse(JSON.stringify(op))) }))
  refuseReused(named)
  const opIds = named.map(({ opId }) => opId)
  const former = await findFormer(desk, opIds)
  for (const edit of named) refuseOther(edit, former.get(edit.opId))
  const fresh = named.filter(({ opId }, at) => !former.has(opId) && opIds.indexOf(opId) === at)
  if (fresh.length === 0) return buildAnswer(desk, opIds, former)
  if (baseVersion > desk.version) {
    throw new SheetConflict(
      `The edits were made on version ${baseVersion}, and the sheet is at ${desk.version}. Load the class again.`,
      { sheetId, sheetVersion: desk.version, opId: null },
    )
  }
  const now = await foldSheet(desk.step.db, sheetId)
  const after =
    baseVersion === desk.version
      ? applyAll(
          now.sheet,
          fresh.map(({ op }) => op),
        )
      : rebase(desk, named, former, baseVersion, (await foldSheet(desk.step.db, sheetId, baseVersion)).sheet, now.sheet)
  const added = await writeEdits(desk, actor, fresh, after)
  const records = new Map([...former, ...added.records.map((record) => [record.opId, record] as const)])
  return { ...added, records: opIds.flatMap((opId) => records.get(opId) ?? []) }
}

/** Walks the batch on both sheets, the one its maker saw and the newest. @throws SheetConflict, AppError */
function rebase(
  desk: Desk,
  batch: readonly NamedEdit[],
  former: ReadonlyMap<string, EditRecord>,
  baseVersion: number,
  base: LogSheet,
  newest: LogSheet,
): LogSheet {
  let seen = base
  let now = newest
  const done = new Set<string>()
  for (const { opId, op } of batch) {
    const known = former.get(opId)
    if (done.has(opId) || (known && known.version <= baseVersion)) continue
    done.add(opId)
    const next = applyAll(seen, [op])
    if (!known) now = moveOnto(desk, opId, op, seen, now)
    seen = next
  }
  return now
}

function moveOnto(desk: Desk, opId: string, op: Edit, seen: LogSheet, now: LogSheet): LogSheet {
  const facts = { sheetId: desk.sheetId, sheetVersion: desk.version, opId }
  const why = findConflict(op, seen, now)
  if (why) throw new SheetConflict(`${why} Load the class again and repeat the edit.`, facts)
  try {
    return applyAll(now, [op])
  } catch (cause) {
    if (!(cause instanceof AppError)) throw cause
    throw new SheetConflict(`The class has changed meanwhile: ${cause.message}`, { ...facts, cause })
  }
}

async function buildUndo(desk: Desk, opId: string): Promise<Edit> {
  const target = (await findFormer(desk, [opId])).get(opId)
  if (!target) throw new AppError('edit-target', 'The edit to undo is not in the log. Load the class again.')
  const { snapshot, records } = await readLog(desk.step.db, desk.sheetId, target.version - 1, desk.version)
  return plain(undoEdit(snapshot.sheet, records, opId, snapshot.version))
}

/** The answer to an undo or a rebuild that was written before. @throws AppError edit-reused */
function answerRestore(desk: Desk, opId: string, former: ReadonlyMap<string, EditRecord>): Promise<Appended> {
  if (former.get(opId)?.op.op !== 'restore') throw reused(opId)
  return buildAnswer(desk, [opId], former)
}

/** @throws AppError edit-reused */
function refuseReused(edits: readonly NamedEdit[]): void {
  for (const edit of edits) {
    for (const other of edits) if (other.opId === edit.opId) refuseOther(edit, other)
  }
}

/** A repeated edit must be the same edit: dropping another one in silence would lose it. @throws AppError edit-reused */
function refuseOther(edit: NamedEdit, former: { op: Edit } | undefined): void {
  if (!former || isDeepStrictEqual(edit.op, former.op)) return
  throw reused(edit.opId)
}

function reused(opId: string): AppError {
  return new AppError('edit-reused', `Another edit has the opId "${opId}" already. Give each edit one of its own.`)
}

/** The sheet with every segment and field that equals the other's taken from there, so that an edit names real changes only. */
function shareSame(sheet: LogSheet, other: LogSheet): LogSheet {
  const known = new Map(other.segments.map((segment) => [segment.id, segment]))
  const share = <Value>(value: Value, former: unknown): Value =>
    isDeepStrictEqual(value, former) ? (former as Value) : value
  const fields = Object.entries(sheet).map(([name, value]) => [
    name,
    share<unknown>(value, (other as Record<string, unknown>)[name]),
  ])
  const segments = sheet.segments.map((segment) => share(segment, known.get(segment.id)))
  return { ...(Object.fromEntries(fields) as LogSheet), segments }
}

/** True when putting it back would change nothing. */
function isEmpty(op: Edit): boolean {
  if (op.op !== 'restore') return false
  return [op.put, op.remove, op.drop, Object.keys(op.fields)].every((list) => list.length === 0)
}

/** The edit as it will be read again, so that what is applied is what is kept. */
function plain(op: Edit): Edit {
  return Edit.parse(JSON.parse(JSON.stringify(op)))
}

async function readRow(db: Hold['db'], sheetId: string): Promise<{ recordingId: string }> {
  const row = await db.selectFrom('sheets').select('recordingId').where('id', '=', sheetId).executeTakeFirst()
  if (!row) throw missing(`The sheet ${sheetId}`)
  return row
}
