/** PostgreSQL through pg: a pool of connections, whole numbers as numbers. */
import type { AsyncLocalStorage } from 'node:async_hooks'
import { PostgresDialect, PostgresDriver } from 'kysely'
import type { DatabaseConnection, Dialect, Driver, PostgresDialectConfig } from 'kysely'
import pg from 'pg'
import { AppError } from '../../shared/errors.ts'
import { guardConnection, refuseSecondDoor } from './guard-connection.ts'

/** Type number of int8 in PostgreSQL's catalogue pg_type; pg hands it out as text unless told otherwise. */
const INT8 = 20
const CONNECTIONS = 8
const CONNECT_MS = 10_000

/** Nothing is connected yet; the first query is. @throws AppError store-open for an address that is none. */
export function openPostgres(databaseUrl: string, inside: AsyncLocalStorage<boolean>): Dialect {
  const getTypeParser = ((oid: number, format?: 'text' | 'binary') =>
    oid === INT8 ? toWholeNumber : (pg.types.getTypeParser as (...given: unknown[]) => unknown)(oid, format)) as never
  let pool: pg.Pool
  try {
    pool = new pg.Pool({
      connectionString: databaseUrl,
      max: CONNECTIONS,
      connectionTimeoutMillis: CONNECT_MS,
      application_name: 'repslate',
      types: { getTypeParser },
    })
  } catch (cause) {
    throw new AppError('store-open', 'DATABASE_URL is no address of a PostgreSQL database. Correct it.', { cause })
  }
  // A connection that breaks while idle is dropped by the pool; the next query says so if the database is gone.
  pool.on('error', () => undefined)
  return new StoreDialect({ pool }, inside)
}

/** @throws AppError store-damaged for a number that is not exact in JavaScript. */
function toWholeNumber(text: string): number {
  const value = Number(text)
  if (Number.isSafeInteger(value)) return value
  throw new AppError('store-damaged', `The store holds the number ${text}, which is too large.`)
}

class StoreDialect extends PostgresDialect {
  readonly #config: PostgresDialectConfig
  readonly #inside: AsyncLocalStorage<boolean>

  constructor(config: PostgresDialectConfig, inside: AsyncLocalStorage<boolean>) {
    super(config)
    this.#config = config
    this.#inside = inside
  }

  override createDriver(): Driver {
    return new StoreDriver(this.#config, this.#inside)
  }
}

class StoreDriver extends PostgresDriver {
  readonly #inside: AsyncLocalStorage<boolean>

  constructor(config: PostgresDialectConfig, inside: AsyncLocalStorage<boolean>) {
    super(config)
    this.#inside = inside
  }

  override async acquireConnection(): Promise<DatabaseConnection> {
    refuseSecondDoor(this.#inside)
    return guardConnection(await super.acquireConnection())
  }
}
