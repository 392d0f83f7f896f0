/**
 * Events: tells who follows a topic that something changed, also when another process changed it. An event says what to
 * read again, never what it holds; the rows are the truth.
 */
import type { AsyncLocalStorage } from 'node:async_hooks'
import type { Kysely, Transaction } from 'kysely'
import type { Tables } from './tables.ts'

export type Room = 'kinds' | 'recordings' | 'sheets' | 'jobs' | 'lessons' | 'settings'
/** All of a room, or one object of it. */
export type Topic = Room | `${Room}/${string}`

export interface StoreEvent {
  /** Grows with every event, in the order of commits. */
  seq: number
  topic: Room
  objectId: string
  atUtc: number
}

export interface Events {
  /**
   * Follows a topic; every event committed after the promise is fulfilled arrives once, in order. So follow first, read
   * then. Errors the listener throws go to onFault.
   * @returns ends it.
   */
  subscribe: (topic: Topic, listener: (event: StoreEvent) => void) => Promise<() => void>
}

export interface EventOptions {
  /** How often other processes' events are looked for, in ms. */
  pollMs: number
  onFault: (error: unknown) => void
}

/** How many events are kept; who has not read for longer reads the rows anyway. */
const KEPT = 10_000
/** How many are read at once; as often are old ones taken away. */
const PAGE = 200

interface Follower {
  topic: Topic
  listener: (event: StoreEvent) => void
  afterSeq: number
}

/** Poll now; a database's own notices can take the poll's place behind the same port. */
export function followEvents(db: Kysely<Tables>, inside: AsyncLocalStorage<boolean>, options: EventOptions) {
  const followers = new Set<Follower>()
  let timer: NodeJS.Timeout | null = null
  let running: Promise<void> | null = null
  let again = false

  const deliver = async (): Promise<void> => {
    const from = Math.min(...[...followers].map((one) => one.afterSeq))
    const events = await readEvents(db, from)
    for (const event of events) {
      for (const follower of [...followers]) hand(follower, event, options.onFault)
    }
    if (events.length === PAGE) again = true
  }
  const loop = async (): Promise<void> => {
    do {
      again = false
      if (followers.size > 0) await deliver()
    } while (again)
  }
  /** Looks for events now; a second call meanwhile makes it look once more. */
  const poll = (): void => {
    if (followers.size === 0) return
    if (running) {
      again = true
      return
    }
    running = inside
      .exit(loop)
      .catch(options.onFault)
      .finally(() => (running = null))
  }
  const subscribe: Events['subscribe'] = async (topic, listener) => {
    const follower: Follower = { topic, listener, afterSeq: await readLastSeq(db) }
    followers.add(follower)
    timer ??= inside.exit(() => setInterval(poll, options.pollMs).unref())
    return () => {
      followers.delete(follower)
      if (followers.size > 0 || !timer) return
      clearInterval(timer)
      timer = null
    }
  }
  const close = async (): Promise<void> => {
    followers.clear()
    if (timer) clearInterval(timer)
    timer = null
    await running
  }
  return { subscribe, poll, close }
}

/**
 * Writes events as the last act of a transaction. The counter's row stays locked until the commit, so that numbers become
 * visible in their order and a follower never passes one that comes late.
 */
export async function addEvents(
  trx: Transaction<Tables>,
  events: readonly { topic: Room; objectId: string }[],
  atUtc: number,
): Promise<void> {
  const each = [...new Map(events.map((event) => [`${event.topic}/${event.objectId}`, event])).values()]
  if (each.length === 0) return
  const { value } = await trx
    .updateTable('counters')
    .set((eb) => ({ value: eb('value', '+', each.length) }))
    .where('name', '=', 'events')
    .returning('value')
    .executeTakeFirstOrThrow()
  const before = value - each.length
  await trx
    .insertInto('events')
    .values(each.map((event, index) => ({ ...event, seq: before + index + 1, atUtc })))
    .execute()
  if (Math.floor(before / PAGE) === Math.floor(value / PAGE)) return
  await trx
    .deleteFrom('events')
    .where('seq', '<=', value - KEPT)
    .execute()
}

function hand(follower: Follower, event: StoreEvent, onFault: (error: unknown) => void): void {
  if (event.seq <= follower.afterSeq) return
  follower.afterSeq = event.seq
  if (follower.topic !== event.topic && follower.topic !== `${event.topic}/${event.objectId}`) return
  try {
    follower.listener(event)
  } catch (error) {
    onFault(error)
  }
}

async function readEvents(db: Kysely<Tables>, afterSeq: number): Promise<StoreEvent[]> {
  const rows = await db
    .selectFrom('events')
    .selectAll()
    .where('seq', '>', afterSeq)
    .orderBy('seq')
    .limit(PAGE)
    .execute()
  return rows.map((row) => ({ ...row, topic: row.topic as Room }))
}

async function readLastSeq(db: Kysely<Tables>): Promise<number> {
  const row = await db.selectFrom('counters').select('value').where('name', '=', 'events').executeTakeFirst()
  return row?.value ?? 0
}
