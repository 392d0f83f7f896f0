/** SQLite through libsql: one file in the data folder, write-ahead log, synced at every commit. */
import type { AsyncLocalStorage } from 'node:async_hooks'
import { mkdirSync } from 'node:fs'
import path from 'node:path'
import { SqliteDialect, SqliteDriver } from 'kysely'
import type { DatabaseConnection, Dialect, Driver } from 'kysely'
import Database from 'libsql'
import { AppError } from '../../shared/errors.ts'
import { guardConnection, refuseSecondDoor } from './guard-connection.ts'
import { openTurns } from './take-turns.ts'
import type { Turns } from './take-turns.ts'

/** Name of the store's file in the data folder. */
export const STORE_FILE = 'studio.sqlite'

/** How long a writer waits for another process's transaction, in ms. */
const BUSY_MS = 5000

/** @throws AppError store-open */
export function openSqlite(dataFolder: string, inside: AsyncLocalStorage<boolean>): Dialect {
  const file = path.join(dataFolder, STORE_FILE)
  try {
    mkdirSync(dataFolder, { recursive: true })
    const database = new Database(file)
    database.exec(`pragma busy_timeout=${BUSY_MS}`)
    database.exec('pragma journal_mode=WAL')
    database.exec('pragma synchronous=FULL')
    database.exec('pragma foreign_keys=on')
    const turns = openTurns(dataFolder, Date.now)
    const createDriver = (): Driver => new StoreDriver(database, inside, turns)
    return Object.assign(new SqliteDialect({ database }), { createDriver })
  } catch (cause) {
    throw new AppError(
      'store-open',
      `The store ${file} cannot be opened: ${(cause as Error).message}. Check that the folder can be written and the file is a store.`,
      { cause },
    )
  }
}

class StoreDriver extends SqliteDriver {
  readonly #database: Database.Database
  readonly #inside: AsyncLocalStorage<boolean>
  readonly #turns: Turns

  constructor(database: Database.Database, inside: AsyncLocalStorage<boolean>, turns: Turns) {
    super({ database })
    this.#database = database
    this.#inside = inside
    this.#turns = turns
  }

  override async acquireConnection(): Promise<DatabaseConnection> {
    refuseSecondDoor(this.#inside)
    return guardConnection(await super.acquireConnection())
  }

  /**
   * Takes the write lock at once: a transaction that reads first and writes later fails without waiting when another
   * process wrote in between (SQLite, "Isolation", the case of SQLITE_BUSY_SNAPSHOT). libsql would wait inside the
   * call and hold up every page of the server meanwhile, so this waits outside.
   */
  override async beginTransaction(): Promise<void> {
    if (await this.#turns.take(() => this.#tryBegin(), BUSY_MS)) return
    throw new AppError(
      'store-busy',
      `Another process kept the store locked for ${BUSY_MS / 1000} seconds. Try again; if it stays so, end the other process.`,
    )
  }

  #tryBegin(): boolean {
    this.#database.exec('pragma busy_timeout=0')
    try {
      this.#database.exec('begin immediate')
      return true
    } catch (error) {
      if (isBusy(error)) return false
      throw error
    } finally {
      this.#database.exec(`pragma busy_timeout=${BUSY_MS}`)
    }
  }
}

/** SQLITE_BUSY and its kinds, such as SQLITE_BUSY_RECOVERY. */
function isBusy(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_BUSY')
}
