/** What every connection refuses, on both databases: texts they would keep differently, and a second door out of a transaction. */
import type { AsyncLocalStorage } from 'node:async_hooks'
import type { CompiledQuery, DatabaseConnection } from 'kysely'
import { AppError } from '../../shared/errors.ts'

const guarded = new WeakSet<DatabaseConnection>()

/**
 * Makes a connection refuse texts with a NUL character: SQLite hands back what stands before it, PostgreSQL throws.
 * (Inside JSON it is written as an escape and passes.)
 */
export function guardConnection(connection: DatabaseConnection): DatabaseConnection {
  if (guarded.has(connection)) return connection
  guarded.add(connection)
  const run = connection.executeQuery.bind(connection)
  connection.executeQuery = (query: CompiledQuery) => {
    checkTexts(query.parameters)
    return run(query)
  }
  return connection
}

/** A query beside the transaction one stands in would wait for that transaction for ever (SQLite) or miss its changes. */
export function refuseSecondDoor(inside: AsyncLocalStorage<boolean>): void {
  if (inside.getStore() !== true) return
  throw new AppError('internal', 'Inside a transaction, use what the transaction hands in, not the store itself.')
}

function checkTexts(values: readonly unknown[]): void {
  if (!values.some((value) => typeof value === 'string' && value.includes('\0'))) return
  throw new AppError('store-text', 'A text holds a NUL character (code 0). Take it out and try again.')
}
