/** The files of a recording: its parts in order, sound recorded apart, a second camera. */
import type { Selectable } from 'kysely'
import { z } from 'zod'
import type { Actor } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { Ms } from '../../shared/time.ts'
import type { Hold, Step } from './hold-store.ts'
import { changed, missing, readJsonOrNull, writeJsonOrNull } from './json-column.ts'
import { readRecording } from './keep-recordings.ts'
import type { MediaFileRow } from './tables.ts'

/**
 * part = of the class itself, in order; sound = recorded apart; camera = a second view; aside = kept and not used;
 * joined = made by us of several parts.
 */
export const MediaRole = z.enum(['part', 'sound', 'camera', 'aside', 'joined'])
export type MediaRole = z.infer<typeof MediaRole>

export interface MediaFields {
  role: MediaRole
  /** 0, 1, 2 ... within its role. */
  position: number
  label: string
  /** The name it came with, for people only; never part of a path. */
  fileName: string
  /** null = still arriving, as with the next four. */
  bytes: number | null
  sha256: string | null
  durationMs: Ms | null
  /** Where the storage holds it. */
  storageKey: string | null
  /** What probing found, as JSON. */
  facts: unknown
  /** Where the file starts on the class's clock; may be negative. */
  startMs: number
  /** How much faster its clock runs, in millionths. */
  driftPpm: number
}

export interface MediaFile extends MediaFields {
  id: string
  recordingId: string
  rowVersion: number
  createdUtc: number
  updatedUtc: number
}

export interface MediaFiles {
  /** Without a position it goes last of its role. @throws AppError row-missing, row-exists when the place is taken. */
  add: (
    recordingId: string,
    fields: Partial<MediaFields> & { role: MediaRole; fileName: string },
    actor: Actor,
  ) => Promise<MediaFile>
  /** @throws AppError row-missing */
  change: (id: string, fields: Partial<Omit<MediaFields, 'role' | 'position'>>, actor: Actor) => Promise<MediaFile>
  /**
   * Gives files roles, and places in the order they are named. All that people brought must be named.
   * @throws AppError row-changed when others came or went meanwhile
   */
  arrange: (recordingId: string, files: readonly { id: string; role: MediaRole }[], actor: Actor) => Promise<void>
  /** Forgets a film that we joined of parts; what people brought is never forgotten. @throws AppError row-missing, not-allowed */
  remove: (id: string, actor: Actor) => Promise<void>
  /** @throws AppError row-missing */
  read: (id: string) => Promise<MediaFile>
  /** Parts first, then sound, then cameras, each in order. */
  list: (recordingId: string) => Promise<MediaFile[]>
  /** Files with this content, in any recording. */
  findBySum: (sha256: string) => Promise<MediaFile[]>
}

const NOTHING_KNOWN = {
  label: '',
  bytes: null,
  sha256: null,
  durationMs: null,
  storageKey: null,
  factsJson: null,
  startMs: 0,
  driftPpm: 0,
}

export function keepMedia(hold: Hold): MediaFiles {
  return {
    add: (recordingId, fields, actor) =>
      hold.write(async (step) => {
        const { title } = await readRecording(step.db, recordingId)
        const id = hold.ids()
        const position = fields.position ?? (await findEnd(step.db, recordingId, fields.role))
        const times = { createdUtc: step.nowUtc, updatedUtc: step.nowUtc }
        const { facts, ...plain } = fields
        const result = await step.db
          .insertInto('mediaFiles')
          .values({
            id,
            recordingId,
            ...NOTHING_KNOWN,
            ...plain,
            factsJson: writeJsonOrNull(facts),
            position,
            rowVersion: 1,
            ...times,
          })
          .onConflict((conflict) => conflict.columns(['recordingId', 'role', 'position']).doNothing())
          .executeTakeFirst()
        if (result.numInsertedOrUpdatedRows === 0n) {
          throw new AppError('row-exists', `"${title}" has a file in this place already. Give the next position.`)
        }
        await step.audit(actor, 'media.add', { type: 'media', id }, { recordingId, role: fields.role })
        step.emit('recordings', recordingId)
        return readMedia(step.db, id)
      }),
    change: (id, fields, actor) =>
      hold.write(async (step) => {
        const { facts, ...plain } = fields
        await step.db
          .updateTable('mediaFiles')
          .set((eb) => ({
            ...plain,
            ...(facts !== undefined && { factsJson: writeJsonOrNull(facts) }),
            rowVersion: eb('rowVersion', '+', 1),
            updatedUtc: step.nowUtc,
          }))
          .where('id', '=', id)
          .execute()
        const now = await readMedia(step.db, id)
        await step.audit(actor, 'media.change', { type: 'media', id }, { fields: Object.keys(fields) })
        step.emit('recordings', now.recordingId)
        return now
      }),
    arrange: (recordingId, files, actor) => hold.write((step) => arrange(step, recordingId, files, actor)),
    remove: (id, actor) =>
      hold.write(async (step) => {
        const { recordingId, role, storageKey } = await readMedia(step.db, id)
        if (role !== 'joined') {
          throw new AppError('not-allowed', 'Only films that were joined of parts are taken away. The file stays.')
        }
        await step.db.deleteFrom('mediaFiles').where('id', '=', id).execute()
        await step.audit(actor, 'media.remove', { type: 'media', id }, { recordingId, storageKey })
        step.emit('recordings', recordingId)
      }),
    read: (id) => readMedia(hold.db, id),
    list: async (recordingId) => {
      const rows = await hold.db
        .selectFrom('mediaFiles')
        .selectAll()
        .where('recordingId', '=', recordingId)
        .orderBy('position')
        .execute()
      const files = rows.map(toMedia)
      return MediaRole.options.flatMap((role) => files.filter((file) => file.role === role))
    },
    findBySum: async (sha256) => {
      const rows = await hold.db
        .selectFrom('mediaFiles')
        .selectAll()
        .where('sha256', '=', sha256)
        .orderBy('createdUtc')
        .orderBy('id')
        .execute()
      return rows.map(toMedia)
    },
  }
}

async function arrange(
  step: Step,
  recordingId: string,
  files: readonly { id: string; role: MediaRole }[],
  actor: Actor,
): Promise<void> {
  const rows = await step.db
    .selectFrom('mediaFiles')
    .select('id')
    .where('recordingId', '=', recordingId)
    .where('role', '!=', 'joined')
    .execute()
  const named = files.map(({ id }) => id)
  if (rows.length !== new Set(named).size || rows.some(({ id }) => !named.includes(id))) {
    throw changed('The list of files')
  }
  const place = (id: string, columns: { role?: string; position: number }) =>
    step.db
      .updateTable('mediaFiles')
      .set((eb) => ({ ...columns, rowVersion: eb('rowVersion', '+', 1), updatedUtc: step.nowUtc }))
      .where('id', '=', id)
      .execute()
  // two files never have one place, not even for a moment
  for (const [index, id] of named.entries()) await place(id, { position: -1 - index })
  for (const { id, role } of files) {
    const position = files.filter((file) => file.role === role).findIndex((file) => file.id === id)
    await place(id, { role, position })
  }
  await step.audit(actor, 'media.change', { type: 'recording', id: recordingId }, { order: named.length })
  step.emit('recordings', recordingId)
}

async function findEnd(db: Hold['db'], recordingId: string, role: MediaRole): Promise<number> {
  const row = await db
    .selectFrom('mediaFiles')
    .select((eb) => eb.fn.max('position').as('last'))
    .where('recordingId', '=', recordingId)
    .where('role', '=', role)
    .executeTakeFirst()
  return (row?.last ?? -1) + 1
}

async function readMedia(db: Hold['db'], id: string): Promise<MediaFile> {
  const row = await db.selectFrom('mediaFiles').selectAll().where('id', '=', id).executeTakeFirst()
  if (!row) throw missing(`The file ${id}`)
  return toMedia(row)
}

function toMedia({ factsJson, ...plain }: Selectable<MediaFileRow>): MediaFile {
  return {
    ...plain,
    role: MediaRole.parse(plain.role),
    facts: readJsonOrNull(z.unknown(), factsJson, `The file ${plain.id}`),
  }
}
