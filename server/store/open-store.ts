/** Opens the studio's store: the same rooms over SQLite (a file in the data folder) and PostgreSQL (an address). */
import { AsyncLocalStorage } from 'node:async_hooks'
import { CamelCasePlugin, Kysely } from 'kysely'
import { AppError } from '../../shared/errors.ts'
import { backUp } from './back-up.ts'
import type { Backup } from './back-up.ts'
import { followEvents } from './follow-events.ts'
import type { Events } from './follow-events.ts'
import { holdStore } from './hold-store.ts'
import type { Engine, Hold, Outside } from './hold-store.ts'
import { keepJobs } from './keep-jobs.ts'
import type { Jobs } from './keep-jobs.ts'
import { keepKinds } from './keep-kinds.ts'
import type { Kinds } from './keep-kinds.ts'
import { keepLessons } from './keep-lessons.ts'
import type { Lessons } from './keep-lessons.ts'
import { keepAudit, keepSettings } from './keep-logs.ts'
import type { Audit, Settings } from './keep-logs.ts'
import { keepMedia } from './keep-media.ts'
import type { MediaFiles } from './keep-media.ts'
import { keepRecordings } from './keep-recordings.ts'
import type { Recordings } from './keep-recordings.ts'
import { keepSheets } from './keep-sheets.ts'
import type { Sheets } from './keep-sheets.ts'
import { keepTranscripts } from './keep-transcripts.ts'
import type { Transcripts } from './keep-transcripts.ts'
import { migrateStore } from './migrate-store.ts'
import { openPostgres } from './open-postgres.ts'
import { openSqlite } from './open-sqlite.ts'
import type { Tables } from './tables.ts'

/** What can be kept. */
export interface Rooms {
  kinds: Kinds
  recordings: Recordings
  media: MediaFiles
  transcripts: Transcripts
  sheets: Sheets
  jobs: Jobs
  lessons: Lessons
  audit: Audit
  settings: Settings
}

export interface Store extends Rooms {
  engine: Engine
  events: Events
  /**
   * Several writes as one: all or nothing. Use the rooms handed in, one call after the other; the store's own would wait
   * for ever and are refused. The work may run twice, so it must have no effect outside the store.
   */
  transaction: <Result>(work: (rooms: Rooms) => Promise<Result>) => Promise<Result>
  /** Copies a SQLite store into one new file, also while it is in use. @throws AppError store-backup */
  backupTo: (file: string) => Promise<Backup>
  close: () => Promise<void>
}

export type Place = { dataFolder: string } | { databaseUrl: string }

export interface StoreOptions extends Outside {
  /** How often other processes' events are looked for, in ms; 250 unless said. */
  pollMs?: number
  /** Hears errors of listeners and of looking for events. */
  onFault?: (error: unknown) => void
}

/** @throws AppError store-open, store-newer, store-busy */
export async function openStore(place: Place, options: StoreOptions): Promise<Store> {
  const { ids, clock, pollMs = 250, onFault = () => undefined } = options
  const inside = new AsyncLocalStorage<boolean>()
  const engine: Engine = 'databaseUrl' in place ? 'postgres' : 'sqlite'
  const dialect =
    'databaseUrl' in place ? openPostgres(place.databaseUrl, inside) : openSqlite(place.dataFolder, inside)
  const plain = new Kysely<Tables>({ dialect })
  try {
    await migrateStore(plain as unknown as Kysely<unknown>, engine, clock())
  } catch (cause) {
    await plain.destroy()
    throw explain(cause, place)
  }
  const db = plain.withPlugin(new CamelCasePlugin())
  const events = followEvents(db, inside, { pollMs, onFault })
  const hold = holdStore(db, engine, { ids, clock }, inside, events.poll)
  return {
    ...buildRooms(hold),
    engine,
    events,
    transaction: (work) => hold.transact((within) => work(buildRooms(within))),
    backupTo: (file) => {
      if (engine === 'sqlite') return backUp(db, file)
      return Promise.reject(new AppError('store-backup', 'This store is in PostgreSQL. Back it up with pg_dump.'))
    },
    close: async () => {
      await events.close()
      await plain.destroy()
    },
  }
}

function buildRooms(hold: Hold): Rooms {
  return {
    kinds: keepKinds(hold),
    recordings: keepRecordings(hold),
    media: keepMedia(hold),
    transcripts: keepTranscripts(hold),
    sheets: keepSheets(hold),
    jobs: keepJobs(hold),
    lessons: keepLessons(hold),
    audit: keepAudit(hold),
    settings: keepSettings(hold),
  }
}

function explain(cause: unknown, place: Place): AppError {
  if (cause instanceof AppError) return cause
  const what = 'databaseUrl' in place ? 'The database of DATABASE_URL' : `The store in ${place.dataFolder}`
  const why = (cause as Error).message || String((cause as { code?: unknown }).code)
  return new AppError('store-open', `${what} cannot be opened: ${why}. Check that it is there and may be used.`, {
    cause,
  })
}
