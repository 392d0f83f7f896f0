/** Recordings: one filmed class each, with what was asked about it when it came in. */
import type { Selectable } from 'kysely'
import { z } from 'zod'
import type { Actor } from '../../shared/actors.ts'
import { Audience, Music, PersonShown } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import type { Hold } from './hold-store.ts'
import { changed, missing, readJson, readJsonOrNull, writeJson, writeJsonOrNull } from './json-column.ts'
import type { RecordingRow } from './tables.ts'

/** arriving = files still come; checking = being looked at; ready = can be worked on; refused = cannot; removed = out of the list. */
export const RecordingState = z.enum(['arriving', 'checking', 'ready', 'refused', 'removed'])
export type RecordingState = z.infer<typeof RecordingState>

/** What was said of the class before there was a sheet. Once there is one, the sheet's own fields hold. */
export interface RecordingFields {
  title: string
  kindId: string | null
  language: string
  /** null = not asked yet; it is asked, never assumed. */
  audience: Audience[] | null
  equipment: string[]
  music: Music | null
  people: PersonShown[] | null
  state: RecordingState
  /** Length of the class in ms; null = not known yet. */
  durationMs: Ms | null
}

export interface Recording extends RecordingFields {
  id: string
  rowVersion: number
  createdUtc: number
  updatedUtc: number
}

export interface Recordings {
  /** A class kind lends what is not given. @throws AppError row-missing when there is no such kind. */
  add: (fields: Partial<RecordingFields> & { title: string }, actor: Actor) => Promise<Recording>
  /** @param rowVersion null = whatever the newest is. @throws AppError row-missing, row-changed */
  change: (id: string, rowVersion: number | null, fields: Partial<RecordingFields>, actor: Actor) => Promise<Recording>
  /** @throws AppError row-missing */
  read: (id: string) => Promise<Recording>
  /** The newest first; without those removed. */
  list: () => Promise<Recording[]>
}

const NOTHING_SAID: Omit<RecordingFields, 'title'> = {
  kindId: null,
  language: 'en',
  audience: null,
  equipment: [],
  music: null,
  people: null,
  state: 'arriving',
  durationMs: null,
}

export function keepRecordings(hold: Hold): Recordings {
  return {
    add: (fields, actor) =>
      hold.write(async (step) => {
        const id = hold.ids()
        const lent = fields.kindId ? await readKindFields(step.db, fields.kindId) : {}
        const columns = toColumns({ ...NOTHING_SAID, ...lent, ...fields })
        const times = { createdUtc: step.nowUtc, updatedUtc: step.nowUtc }
        await step.db
          .insertInto('recordings')
          .values({ id, ...columns, rowVersion: 1, ...times })
          .execute()
        await step.audit(actor, 'recording.add', { type: 'recording', id }, { title: fields.title })
        step.emit('recordings', id)
        return readRecording(step.db, id)
      }),
    change: (id, rowVersion, fields, actor) =>
      hold.write(async (step) => {
        const now = await readRecording(step.db, id)
        if (fields.kindId) await readKindFields(step.db, fields.kindId)
        const result = await step.db
          .updateTable('recordings')
          .set((eb) => ({
            ...toColumnsOf(fields),
            rowVersion: eb('rowVersion', '+', 1),
            updatedUtc: step.nowUtc,
          }))
          .where('id', '=', id)
          .$if(rowVersion !== null, (query) => query.where('rowVersion', '=', rowVersion))
          .executeTakeFirst()
        if (result.numUpdatedRows === 0n) throw changed(`The recording "${now.title}"`)
        await step.audit(actor, 'recording.change', { type: 'recording', id }, { fields: Object.keys(fields) })
        step.emit('recordings', id)
        return readRecording(step.db, id)
      }),
    read: (id) => readRecording(hold.db, id),
    list: async () => {
      const rows = await hold.db
        .selectFrom('recordings')
        .selectAll()
        .where('state', '!=', 'removed')
        .orderBy('createdUtc', 'desc')
        .orderBy('id', 'desc')
        .execute()
      return rows.map(toRecording)
    },
  }
}

/** @throws AppError row-missing */
export async function readRecording(db: Hold['db'], id: string): Promise<Recording> {
  const row = await db.selectFrom('recordings').selectAll().where('id', '=', id).executeTakeFirst()
  if (!row) throw missing(`The recording ${id}`)
  return toRecording(row)
}

async function readKindFields(db: Hold['db'], kindId: string): Promise<Partial<RecordingFields>> {
  const row = await db.selectFrom('classKinds').selectAll().where('id', '=', kindId).executeTakeFirst()
  if (!row) throw missing(`The class kind ${kindId}`)
  const lent = fromColumns(row, `The class kind ${kindId}`)
  // a kind that leaves the audience open has not answered: each class is asked
  return { ...lent, audience: lent.audience?.length === 0 ? null : lent.audience }
}

function toColumns(fields: RecordingFields) {
  const { audience, equipment, people, ...plain } = fields
  return {
    ...plain,
    audienceJson: writeJsonOrNull(audience),
    equipmentJson: writeJson(equipment),
    peopleJson: writeJsonOrNull(people),
  }
}

/** Columns of the fields that are given; undefined leaves a column alone. */
function toColumnsOf(fields: Partial<RecordingFields>) {
  const { audience, equipment, people, ...plain } = fields
  return {
    ...plain,
    ...(audience !== undefined && { audienceJson: writeJsonOrNull(audience) }),
    ...(equipment !== undefined && { equipmentJson: writeJson(equipment) }),
    ...(people !== undefined && { peopleJson: writeJsonOrNull(people) }),
  }
}

function fromColumns(
  row: { audienceJson: string | null; equipmentJson: string; peopleJson: string | null; music: string | null },
  where: string,
) {
  return {
    audience: readJsonOrNull(z.array(Audience), row.audienceJson, where),
    equipment: readJson(z.array(z.string()), row.equipmentJson, where),
    people: readJsonOrNull(z.array(PersonShown), row.peopleJson, where),
    music: row.music === null ? null : Music.parse(row.music),
  }
}

function toRecording(row: Selectable<RecordingRow>): Recording {
  const { audienceJson: _audience, equipmentJson: _equipment, peopleJson: _people, ...plain } = row
  return {
    ...plain,
    ...fromColumns(row, `The recording ${row.id}`),
    state: RecordingState.parse(row.state),
  }
}
