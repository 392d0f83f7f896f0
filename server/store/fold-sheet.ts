/** Reads a sheet as it was at a version: the newest snapshot below it, and the edits after that. */
import { foldEdits } from '../../core/segments/fold-edits.ts'
import type { Folded } from '../../core/segments/fold-edits.ts'
import { Edit } from '../../shared/edit.ts'
import type { EditRecord } from '../../shared/edit.ts'
import { LogSheet } from '../../shared/log-sheet.ts'
import type { Hold } from './hold-store.ts'
import { missing, readJson } from './json-column.ts'

export interface SheetLog {
  snapshot: Folded
  /** What follows the snapshot, in order. */
  records: EditRecord[]
}

/** The sheet at a version, or the newest. @throws AppError row-missing, store-damaged */
export async function foldSheet(db: Hold['db'], sheetId: string, version = Infinity): Promise<Folded> {
  const { snapshot, records } = await readLog(db, sheetId, version, version)
  return foldEdits(snapshot.sheet, records, snapshot.version)
}

/**
 * The log from the newest snapshot at or below one version up to another.
 * Both tables only grow, so that two reads one after the other fit together without a lock.
 * @throws AppError row-missing, store-damaged
 */
export async function readLog(db: Hold['db'], sheetId: string, from: number, upTo: number): Promise<SheetLog> {
  const row = await db
    .selectFrom('sheetSnapshots')
    .select(['version', 'sheetJson'])
    .where('sheetId', '=', sheetId)
    .$if(Number.isFinite(from), (query) => query.where('version', '<=', from))
    .orderBy('version', 'desc')
    .limit(1)
    .executeTakeFirst()
  if (!row) throw missing(`The sheet ${sheetId}`)
  const sheet = readJson(LogSheet, row.sheetJson, `Sheet ${sheetId}, version ${row.version},`)
  const records = await readRecords(db, sheetId, row.version, upTo)
  return { snapshot: { sheet, version: row.version }, records }
}

/** Edits above one version up to another, in order. @throws AppError store-damaged */
export async function readRecords(
  db: Hold['db'],
  sheetId: string,
  after: number,
  upTo = Infinity,
): Promise<EditRecord[]> {
  const rows = await db
    .selectFrom('edits')
    .selectAll()
    .where('sheetId', '=', sheetId)
    .where('version', '>', after)
    .$if(Number.isFinite(upTo), (query) => query.where('version', '<=', upTo))
    .orderBy('version')
    .execute()
  return rows.map(toRecord)
}

/** @throws AppError store-damaged */
export function toRecord(row: {
  sheetId: string
  version: number
  opId: string
  actor: string
  atUtc: number
  opJson: string
}): EditRecord {
  const { opJson, ...plain } = row
  return { ...plain, op: readJson(Edit, opJson, `Edit ${row.version} of sheet ${row.sheetId}`) }
}
