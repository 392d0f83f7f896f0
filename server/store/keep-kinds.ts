/** Class kinds: what a kind of class always has, chosen once and taken over by each recording of it. */
import { z } from 'zod'
import type { Actor } from '../../shared/actors.ts'
import { Audience, Music, PersonShown } from '../../shared/log-sheet.ts'
import type { Selectable } from 'kysely'
import type { Hold, Step } from './hold-store.ts'
import { changed, missing, readJson, readJsonOrNull, writeJson, writeJsonOrNull } from './json-column.ts'
import type { ClassKindRow } from './tables.ts'

export interface ClassKindFields {
  title: string
  audience: Audience[]
  /** Names of the kit. */
  equipment: string[]
  /** null = nobody has said. */
  music: Music | null
  /** null = nobody has said, [] = nobody but the instructor. */
  people: PersonShown[] | null
}

export interface ClassKind extends ClassKindFields {
  id: string
  removed: boolean
  rowVersion: number
  createdUtc: number
  updatedUtc: number
}

export interface Kinds {
  add: (fields: ClassKindFields, actor: Actor) => Promise<ClassKind>
  /** @throws AppError row-missing, row-changed when rowVersion is not the newest. */
  change: (id: string, rowVersion: number, fields: Partial<ClassKindFields>, actor: Actor) => Promise<ClassKind>
  /** Takes it from the list; recordings of it keep theirs. @throws AppError row-missing */
  remove: (id: string, actor: Actor) => Promise<void>
  /** @throws AppError row-missing */
  read: (id: string) => Promise<ClassKind>
  /** Those not removed, the oldest first. */
  list: () => Promise<ClassKind[]>
}

export function keepKinds(hold: Hold): Kinds {
  return {
    add: (fields, actor) =>
      hold.write(async (step) => {
        const id = hold.ids()
        const times = { createdUtc: step.nowUtc, updatedUtc: step.nowUtc }
        await step.db
          .insertInto('classKinds')
          .values({ id, ...toColumns(fields), removed: 0, rowVersion: 1, ...times })
          .execute()
        await step.audit(actor, 'kind.add', { type: 'kind', id }, { title: fields.title })
        step.emit('kinds', id)
        return readKind(step.db, id)
      }),
    change: (id, rowVersion, fields, actor) =>
      hold.write(async (step) => {
        const now = await readKind(step.db, id)
        await update(step, now, rowVersion, toColumns({ ...now, ...fields }))
        await step.audit(actor, 'kind.change', { type: 'kind', id }, { fields: Object.keys(fields) })
        return readKind(step.db, id)
      }),
    remove: (id, actor) =>
      hold.write(async (step) => {
        const now = await readKind(step.db, id)
        if (now.removed) return
        await update(step, now, now.rowVersion, { removed: 1 })
        await step.audit(actor, 'kind.remove', { type: 'kind', id })
      }),
    read: (id) => readKind(hold.db, id),
    list: async () => {
      const rows = await hold.db
        .selectFrom('classKinds')
        .selectAll()
        .where('removed', '=', 0)
        .orderBy('createdUtc')
        .orderBy('id')
        .execute()
      return rows.map(toKind)
    },
  }
}

async function update(step: Step, now: ClassKind, rowVersion: number, columns: object): Promise<void> {
  const result = await step.db
    .updateTable('classKinds')
    .set({ ...columns, rowVersion: rowVersion + 1, updatedUtc: step.nowUtc })
    .where('id', '=', now.id)
    .where('rowVersion', '=', rowVersion)
    .executeTakeFirst()
  if (result.numUpdatedRows === 0n) throw changed(`The class kind "${now.title}"`)
  step.emit('kinds', now.id)
}

async function readKind(db: Hold['db'], id: string): Promise<ClassKind> {
  const row = await db.selectFrom('classKinds').selectAll().where('id', '=', id).executeTakeFirst()
  if (!row) throw missing(`The class kind ${id}`)
  return toKind(row)
}

function toColumns(fields: ClassKindFields) {
  return {
    title: fields.title,
    audienceJson: writeJson(fields.audience),
    equipmentJson: writeJson(fields.equipment),
    music: fields.music,
    peopleJson: writeJsonOrNull(fields.people),
  }
}

function toKind(row: Selectable<ClassKindRow>): ClassKind {
  const where = `The class kind ${row.id}`
  const { audienceJson, equipmentJson, peopleJson, music, removed, ...rest } = row
  return {
    ...rest,
    audience: readJson(z.array(Audience), audienceJson, where),
    equipment: readJson(z.array(z.string()), equipmentJson, where),
    music: music === null ? null : Music.parse(music),
    people: readJsonOrNull(z.array(PersonShown), peopleJson, where),
    removed: removed === 1,
  }
}
