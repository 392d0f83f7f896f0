/** Writes edits to the log of a sheet, under the sheet's lock, and finds those written before. */
import type { Folded } from '../../core/segments/fold-edits.ts'
import type { Actor } from '../../shared/actors.ts'
import type { Edit, EditRecord } from '../../shared/edit.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { foldSheet, toRecord } from './fold-sheet.ts'
import type { Hold, Step } from './hold-store.ts'
import { missing } from './json-column.ts'

/** A snapshot is kept at least every so many edits, so that reading a sheet never folds more. */
export const SNAPSHOT_EVERY = 25

export interface NamedEdit {
  /** Made by the sender, unlike any other of this sheet. */
  opId: string
  op: Edit
}

export interface Appended extends Folded {
  /** The log's line of each edit handed in, in that order; of a repeated one, the line it made the first time. */
  records: EditRecord[]
}

/** A sheet under the lock of one transaction; version is its newest. */
export interface Desk {
  step: Step
  sheetId: string
  version: number
}

/** SQLite's write transaction is the only one there is; PostgreSQL locks the sheet's row. @throws AppError row-missing */
export async function lockSheet(step: Step, engine: Hold['engine'], sheetId: string): Promise<number> {
  const row = await step.db
    .selectFrom('sheets')
    .select('version')
    .where('id', '=', sheetId)
    .$if(engine === 'postgres', (query) => query.forUpdate())
    .executeTakeFirst()
  if (!row) throw missing(`The sheet ${sheetId}`)
  return row.version
}

export async function writeEdits(
  desk: Desk,
  actor: Actor,
  edits: readonly NamedEdit[],
  sheet: LogSheet,
): Promise<Appended> {
  const { step, sheetId } = desk
  const records = edits.map(({ opId, op }, index): EditRecord => ({
    sheetId,
    version: desk.version + index + 1,
    opId,
    actor: actor.id,
    atUtc: step.nowUtc,
    op,
  }))
  const version = desk.version + records.length
  for (const { op, ...rest } of records) {
    await step.db
      .insertInto('edits')
      .values({ ...rest, opJson: JSON.stringify(op) })
      .execute()
  }
  await step.db.updateTable('sheets').set({ version, updatedUtc: step.nowUtc }).where('id', '=', sheetId).execute()
  const due = Math.floor(version / SNAPSHOT_EVERY) > Math.floor(desk.version / SNAPSHOT_EVERY)
  if (due) await writeSnapshot({ ...desk, version }, sheet)
  const ops = [...new Set(edits.map(({ op }) => op.op))]
  await step.audit(actor, 'sheet.edit', { type: 'sheet', id: sheetId }, { from: desk.version, to: version, ops })
  step.emit('sheets', sheetId)
  return { records, sheet, version }
}

export async function writeSnapshot({ step, sheetId, version }: Desk, sheet: LogSheet): Promise<void> {
  await step.db
    .insertInto('sheetSnapshots')
    .values({ sheetId, version, sheetJson: JSON.stringify(sheet), atUtc: step.nowUtc })
    .execute()
}

/** Edits of the log by opId, those that are there. */
export async function findFormer(desk: Desk, opIds: readonly string[]): Promise<Map<string, EditRecord>> {
  if (opIds.length === 0) return new Map()
  const rows = await desk.step.db
    .selectFrom('edits')
    .selectAll()
    .where('sheetId', '=', desk.sheetId)
    .where('opId', 'in', opIds)
    .execute()
  return new Map(rows.map((row) => [row.opId, toRecord(row)]))
}

/** The answer to a batch that was written before. */
export async function buildAnswer(
  desk: Desk,
  opIds: readonly string[],
  former: ReadonlyMap<string, EditRecord>,
): Promise<Appended> {
  const folded = await foldSheet(desk.step.db, desk.sheetId)
  return { ...folded, records: opIds.flatMap((opId) => former.get(opId) ?? []) }
}
