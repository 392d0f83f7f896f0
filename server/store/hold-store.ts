/**
 * What every room of the store stands on: reads, and writes that are one transaction with their audit rows and events.
 * Rooms never open a transaction themselves, so that a caller can put several writes into one.
 */
import type { AsyncLocalStorage } from 'node:async_hooks'
import { setTimeout as wait } from 'node:timers/promises'
import { sql } from 'kysely'
import type { Kysely, Transaction } from 'kysely'
import type { Action, Actor, ObjectRef } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { addEvents } from './follow-events.ts'
import type { Room } from './follow-events.ts'
import type { Tables } from './tables.ts'

export type Engine = 'sqlite' | 'postgres'

/** What comes from outside. */
export interface Outside {
  /** A new id, unlike any other. */
  ids: () => string
  /** The time in UTC ms. */
  clock: () => number
}

export interface Hold extends Outside {
  engine: Engine
  /** For reads. Inside a transaction it sees that transaction's changes. */
  db: Kysely<Tables>
  /** Runs the work as one transaction: all of it or nothing. It may run twice, so it must have no effect outside. */
  write: <Result>(work: (step: Step) => Promise<Result>) => Promise<Result>
}

/** One write under way. */
export interface Step {
  db: Transaction<Tables>
  nowUtc: number
  /** Tells followers, once all is committed. */
  emit: (topic: Room, objectId: string) => void
  /** Notes who did it. */
  audit: (actor: Actor, action: Action, object: ObjectRef, details?: Record<string, unknown>) => Promise<void>
}

const TRIES = 6

/** The outermost hold: each write is a transaction of its own. */
export function holdStore(
  db: Kysely<Tables>,
  engine: Engine,
  outside: Outside,
  inside: AsyncLocalStorage<boolean>,
  onCommit: () => void,
): Hold & { transact: <Result>(work: (hold: Hold) => Promise<Result>) => Promise<Result> } {
  const run = async <Result>(work: (step: Step, pending: Pending) => Promise<Result>): Promise<Result> => {
    const result = await withRetry(() =>
      db.transaction().execute(async (trx) => {
        const pending: Pending = []
        const step = buildStep(trx, outside, pending)
        const value = await inside.run(true, () => work(step, pending))
        await addEvents(trx, pending, step.nowUtc)
        return value
      }),
    )
    onCommit()
    return result
  }
  return {
    ...outside,
    engine,
    db,
    write: (work) => run((step) => work(step)),
    transact: (work) => run((step, pending) => work(holdInside(step.db, engine, outside, pending))),
  }
}

type Pending = { topic: Room; objectId: string }[]

/** A hold within a transaction. Each write is a savepoint, so that one that fails can be caught and leaves nothing behind. */
function holdInside(trx: Transaction<Tables>, engine: Engine, outside: Outside, pending: Pending): Hold {
  return {
    ...outside,
    engine,
    db: trx,
    write: async (work) => {
      const before = pending.length
      await sql`savepoint step`.execute(trx)
      try {
        const result = await work(buildStep(trx, outside, pending))
        await sql`release savepoint step`.execute(trx)
        return result
      } catch (error) {
        pending.length = before
        await sql`rollback to savepoint step`.execute(trx)
        await sql`release savepoint step`.execute(trx)
        throw error
      }
    },
  }
}

function buildStep(trx: Transaction<Tables>, outside: Outside, pending: Pending): Step {
  const nowUtc = outside.clock()
  return {
    db: trx,
    nowUtc,
    emit: (topic, objectId) => pending.push({ topic, objectId }),
    audit: async (actor, action, object, details = {}) => {
      await trx
        .insertInto('auditRows')
        .values({
          id: outside.ids(),
          actorId: actor.id,
          actorName: actor.name,
          action,
          objectType: object.type,
          objectId: object.id,
          atUtc: nowUtc,
          detailsJson: JSON.stringify(details),
        })
        .execute()
    },
  }
}

/** PostgreSQL ends one of two transactions that wait for each other; it is simply run again. */
async function withRetry<Result>(work: () => Promise<Result>): Promise<Result> {
  for (let tried = 1; ; tried += 1) {
    try {
      return await work()
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? String(error.code) : ''
      if (code === 'SQLITE_FULL' || code === POSTGRES_DISK_FULL) {
        throw new AppError('disk-full', 'The disk of the store is full. Free some space and try again.', {
          cause: error,
        })
      }
      if (!POSTGRES_AGAIN.includes(code) || tried === TRIES) throw error
      await wait(tried * 10)
    }
  }
}

/** PostgreSQL 15 documentation, appendix A "PostgreSQL Error Codes": serialization_failure, deadlock_detected; disk_full. */
const POSTGRES_AGAIN = ['40001', '40P01']
const POSTGRES_DISK_FULL = '53100'
