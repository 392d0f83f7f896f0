/**
 * Lessons: each has a lasting address; what is shown there is its current version, a segment of any recording.
 * Replacing a lesson is publishing its next version; address and links stay.
 */
import type { Selectable } from 'kysely'
import { z } from 'zod'
import { slugOf } from '../../core/library/name-slug.ts'
import type { Actor } from '../../shared/actors.ts'
import { Lesson } from '../../shared/lesson.ts'
import type { Hold, Step } from './hold-store.ts'
import { missing, readJson, writeJson } from './json-column.ts'
import { readRecording } from './keep-recordings.ts'
import type { LessonRow, LessonVersionRow } from './tables.ts'

/** draft = has an address and was never shown; withdrawn = was shown, and is no longer. */
export const LessonState = z.enum(['draft', 'published', 'withdrawn'])
export type LessonState = z.infer<typeof LessonState>

export interface StoredLesson {
  id: string
  /** The address; never changes, never goes to another lesson. */
  slug: string
  name: string
  state: LessonState
  /** The version shown, or shown last; null = never published. */
  currentVersion: number | null
  rowVersion: number
  createdUtc: number
  updatedUtc: number
}

export interface LessonVersion {
  lessonId: string
  /** 1, 2, 3 ... */
  version: number
  recordingId: string
  segmentId: string
  /** The version of the recording's sheet it was made from. */
  sheetVersion: number
  clipSha256: string
  lesson: Lesson
  publishedBy: string
  publishedUtc: number
  withdrawnBy: string | null
  withdrawnUtc: number | null
}

export type NewVersion = Pick<LessonVersion, 'recordingId' | 'segmentId' | 'sheetVersion' | 'clipSha256' | 'lesson'>

export interface ShownLesson extends StoredLesson {
  /** Its current version; null = never published. */
  current: LessonVersion | null
}

export interface Lessons {
  /** Gives a lesson its address: the name, or the address wanted, as a slug, with a number behind it where that is taken. */
  add: (name: string, actor: Actor, address?: string) => Promise<StoredLesson>
  /** Makes the next version and shows it. The lesson takes the version's name. @throws AppError row-missing */
  publish: (lessonId: string, version: NewVersion, actor: Actor) => Promise<ShownLesson>
  /** Shows a version that was published before. @throws AppError row-missing */
  chooseVersion: (lessonId: string, version: number, actor: Actor) => Promise<ShownLesson>
  /** Takes it from the members; the address stays and says so. @throws AppError row-missing */
  withdraw: (lessonId: string, why: string, actor: Actor) => Promise<ShownLesson>
  /** @throws AppError row-missing */
  read: (lessonId: string) => Promise<ShownLesson>
  /** null = there is no such address. */
  readAt: (slug: string) => Promise<ShownLesson | null>
  /** By name; each with its current version. */
  list: (states?: readonly LessonState[]) => Promise<ShownLesson[]>
  /** The newest first. */
  listVersions: (lessonId: string) => Promise<LessonVersion[]>
  /** Versions made from a recording's segments, to tell which is in the library. */
  listOf: (recordingId: string) => Promise<LessonVersion[]>
}

export function keepLessons(hold: Hold): Lessons {
  return {
    add: (name, actor, address = name) =>
      hold.write(async (step) => {
        const id = hold.ids()
        const slug = await takeSlug(step, id, name, address)
        await step.audit(actor, 'lesson.add', { type: 'lesson', id }, { slug })
        step.emit('lessons', id)
        return readLesson(step.db, id)
      }),
    publish: (lessonId, { lesson, ...version }, actor) =>
      hold.write(async (step) => {
        const now = await lockLesson(step, hold.engine, lessonId)
        await readRecording(step.db, version.recordingId)
        const number = (await readLastVersion(step.db, lessonId)) + 1
        await step.db
          .insertInto('lessonVersions')
          .values({
            ...version,
            lessonId,
            version: number,
            lessonJson: writeJson({ ...lesson, slug: now.slug }),
            publishedBy: actor.id,
            publishedUtc: step.nowUtc,
            withdrawnBy: null,
            withdrawnUtc: null,
          })
          .execute()
        const { recordingId, segmentId } = version
        await step.audit(
          actor,
          'lesson.publish',
          { type: 'lesson', id: lessonId },
          { version: number, recordingId, segmentId },
        )
        return show(step, lessonId, { name: lesson.name, state: 'published', currentVersion: number })
      }),
    chooseVersion: (lessonId, version, actor) =>
      hold.write(async (step) => {
        await lockLesson(step, hold.engine, lessonId)
        const chosen = await readVersion(step.db, lessonId, version)
        if (!chosen) throw missing(`Version ${version} of the lesson ${lessonId}`)
        await setWithdrawn(step, lessonId, version, null)
        await step.audit(actor, 'lesson.choose-version', { type: 'lesson', id: lessonId }, { version })
        return show(step, lessonId, { name: chosen.lesson.name, state: 'published', currentVersion: version })
      }),
    withdraw: (lessonId, why, actor) =>
      hold.write(async (step) => {
        const now = await lockLesson(step, hold.engine, lessonId)
        if (now.state === 'withdrawn') return now
        if (now.currentVersion !== null) await setWithdrawn(step, lessonId, now.currentVersion, actor)
        const details = { why, version: now.currentVersion }
        await step.audit(actor, 'lesson.withdraw', { type: 'lesson', id: lessonId }, details)
        return show(step, lessonId, { state: 'withdrawn' })
      }),
    read: (lessonId) => readLesson(hold.db, lessonId),
    readAt: async (slug) => {
      const row = await hold.db.selectFrom('lessons').selectAll().where('slug', '=', slug).executeTakeFirst()
      return row ? withCurrent(hold.db, toLesson(row)) : null
    },
    list: async (states) => {
      const rows = await hold.db
        .selectFrom('lessons')
        .selectAll()
        .$if(states !== undefined, (query) => query.where('state', 'in', states ?? []))
        .execute()
      const versions = await hold.db
        .selectFrom('lessonVersions')
        .innerJoin('lessons', 'lessons.id', 'lessonVersions.lessonId')
        .selectAll('lessonVersions')
        .whereRef('lessonVersions.version', '=', 'lessons.currentVersion')
        .execute()
      const currents = new Map(versions.map((row) => [row.lessonId, row]))
      // Databases sort texts differently, hence here.
      return rows
        .sort((a, b) => compare(a.name, b.name) || compare(a.slug, b.slug))
        .map((row): ShownLesson => {
          const current = currents.get(row.id)
          return { ...toLesson(row), current: current ? toVersion(current) : null }
        })
    },
    listVersions: async (lessonId) => {
      const query = hold.db.selectFrom('lessonVersions').selectAll().where('lessonId', '=', lessonId)
      return (await query.orderBy('version', 'desc').execute()).map(toVersion)
    },
    listOf: async (recordingId) => {
      const query = hold.db.selectFrom('lessonVersions').selectAll().where('recordingId', '=', recordingId)
      return (await query.orderBy('publishedUtc').orderBy('lessonId').orderBy('version').execute()).map(toVersion)
    },
  }
}

/** Takes the first free address; two at once get two. */
async function takeSlug(step: Step, id: string, name: string, address: string): Promise<string> {
  const base = slugOf(address)
  for (let number = 1; ; number += 1) {
    const slug = number === 1 ? base : `${base}-${number}`
    const result = await step.db
      .insertInto('lessons')
      .values({
        id,
        slug,
        name,
        state: 'draft',
        currentVersion: null,
        rowVersion: 1,
        createdUtc: step.nowUtc,
        updatedUtc: step.nowUtc,
      })
      .onConflict((conflict) => conflict.column('slug').doNothing())
      .executeTakeFirst()
    if (result.numInsertedOrUpdatedRows !== 0n) return slug
  }
}

async function show(
  step: Step,
  lessonId: string,
  columns: { name?: string; state: LessonState; currentVersion?: number },
): Promise<ShownLesson> {
  await step.db
    .updateTable('lessons')
    .set((eb) => ({ ...columns, rowVersion: eb('rowVersion', '+', 1), updatedUtc: step.nowUtc }))
    .where('id', '=', lessonId)
    .execute()
  step.emit('lessons', lessonId)
  return readLesson(step.db, lessonId)
}

async function setWithdrawn(step: Step, lessonId: string, version: number, by: Actor | null): Promise<void> {
  await step.db
    .updateTable('lessonVersions')
    .set({ withdrawnBy: by?.id ?? null, withdrawnUtc: by ? step.nowUtc : null })
    .where('lessonId', '=', lessonId)
    .where('version', '=', version)
    .execute()
}

/** @throws AppError row-missing */
async function lockLesson(step: Step, engine: Hold['engine'], lessonId: string): Promise<ShownLesson> {
  if (engine === 'postgres') {
    await step.db.selectFrom('lessons').select('id').where('id', '=', lessonId).forUpdate().execute()
  }
  return readLesson(step.db, lessonId)
}

async function readLesson(db: Hold['db'], lessonId: string): Promise<ShownLesson> {
  const row = await db.selectFrom('lessons').selectAll().where('id', '=', lessonId).executeTakeFirst()
  if (!row) throw missing(`The lesson ${lessonId}`)
  return withCurrent(db, toLesson(row))
}

async function withCurrent(db: Hold['db'], lesson: StoredLesson): Promise<ShownLesson> {
  if (lesson.currentVersion === null) return { ...lesson, current: null }
  return { ...lesson, current: await readVersion(db, lesson.id, lesson.currentVersion) }
}

async function readVersion(db: Hold['db'], lessonId: string, version: number): Promise<LessonVersion | null> {
  const row = await db
    .selectFrom('lessonVersions')
    .selectAll()
    .where('lessonId', '=', lessonId)
    .where('version', '=', version)
    .executeTakeFirst()
  return row ? toVersion(row) : null
}

async function readLastVersion(db: Hold['db'], lessonId: string): Promise<number> {
  const row = await db
    .selectFrom('lessonVersions')
    .select((eb) => eb.fn.max('version').as('last'))
    .where('lessonId', '=', lessonId)
    .executeTakeFirst()
  return row?.last ?? 0
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

function toLesson(row: Selectable<LessonRow>): StoredLesson {
  return { ...row, state: LessonState.parse(row.state) }
}

function toVersion({ lessonJson, ...plain }: Selectable<LessonVersionRow>): LessonVersion {
  return { ...plain, lesson: readJson(Lesson, lessonJson, `Version ${plain.version} of the lesson ${plain.lessonId}`) }
}
