/**
 * Brings a store up to this program's tables: each migration once, all in one transaction, also when two processes open a
 * new store together.
 */
import { sql } from 'kysely'
import type { Kysely, Transaction } from 'kysely'
import { AppError } from '../../shared/errors.ts'
import * as first from './migrations/0001-first-tables.ts'

export interface Migration {
  up: (db: Kysely<unknown>) => Promise<void>
}

/** In order; a name, once released, stays. */
export const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-first-tables': first,
}

interface MigrationTable {
  store_migrations: { name: string; at_utc: number }
}

/** Any number all copies of this program agree on; PostgreSQL locks by it. */
const LOCK_NUMBER = 7_247_528_301

/**
 * @param db without plugins: migrations write names as the database has them.
 * @returns names of the migrations that ran now.
 * @throws AppError store-newer
 */
export async function migrateStore(
  db: Kysely<unknown>,
  engine: 'sqlite' | 'postgres',
  nowUtc: number,
  migrations: Readonly<Record<string, Migration>> = MIGRATIONS,
): Promise<string[]> {
  const names = Object.keys(migrations).sort()
  if (await isUpToDate(db, engine, names)) return []
  return (db as Kysely<MigrationTable>).transaction().execute(async (trx) => {
    if (engine === 'postgres') await sql`select pg_advisory_xact_lock(${LOCK_NUMBER})`.execute(trx)
    await trx.schema
      .createTable('store_migrations')
      .ifNotExists()
      .addColumn('name', 'text', (c) => c.primaryKey().notNull())
      .addColumn('at_utc', 'bigint', (c) => c.notNull())
      .execute()
    const done = await readDone(trx)
    refuseNewer(done, names)
    const missing = names.filter((name) => !done.includes(name))
    for (const name of missing) {
      await migrations[name]?.up(trx as unknown as Transaction<unknown>)
      await trx.insertInto('store_migrations').values({ name, at_utc: nowUtc }).execute()
    }
    return missing
  })
}

/** The common case, answered without a lock. */
async function isUpToDate(
  db: Kysely<unknown>,
  engine: 'sqlite' | 'postgres',
  names: readonly string[],
): Promise<boolean> {
  const query =
    engine === 'postgres'
      ? sql<{ there: string | null }>`select to_regclass('store_migrations')::text as there`
      : sql<{ there: string | null }>`select max(name) as there from sqlite_master where name = 'store_migrations'`
  if (!(await query.execute(db)).rows[0]?.there) return false
  const done = await readDone(db as Kysely<MigrationTable>)
  refuseNewer(done, names)
  return done.length === names.length
}

async function readDone(db: Kysely<MigrationTable>): Promise<string[]> {
  const rows = await db.selectFrom('store_migrations').select('name').orderBy('name').execute()
  return rows.map((row) => row.name)
}

function refuseNewer(done: readonly string[], names: readonly string[]): void {
  const unknown = done.filter((name) => !names.includes(name))
  if (unknown.length === 0) return
  throw new AppError(
    'store-newer',
    'The store was written by a newer version of Repslate. Update Repslate, then try again. Nothing was changed.',
    { details: unknown },
  )
}
