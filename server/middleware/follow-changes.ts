/**
 * Hands the store's events to many listeners and remembers the last ones, so that a browser which lost its connection gets
 * what it missed.
 */
import { z } from 'zod'
import type { Events, Room, StoreEvent, Topic } from '../store/follow-events.ts'

export interface Changes {
  /**
   * The events after a number that fit the topics, in order; null when some of them are no longer known, so that everything
   * must be read again.
   */
  since: (afterSeq: number, topics: readonly Topic[]) => StoreEvent[] | null
  /** The number of the last event that was heard; 0 = none since the studio was opened. */
  newest: () => number
  /** @returns ends it */
  follow: (topics: readonly Topic[], listener: (event: StoreEvent) => void) => () => void
  close: () => void
}

export const ROOMS = ['kinds', 'recordings', 'sheets', 'jobs', 'lessons', 'settings'] as const satisfies readonly Room[]

/** `jobs` or `sheets/<id>`, parted by commas. */
export const TopicList = z
  .string()
  .transform((text) => text.split(',').filter((topic) => topic !== ''))
  .pipe(
    z
      .array(
        z.string().refine((topic): topic is Topic => isTopic(topic), {
          error: `A topic is one of ${ROOMS.join(', ')}, or one of them with an id, such as jobs/abc.`,
        }),
      )
      .min(1)
      .max(20),
  )

const REMEMBERED = 2000

export async function followChanges(events: Events): Promise<Changes> {
  const listeners = new Map<(event: StoreEvent) => void, readonly Topic[]>()
  let remembered: StoreEvent[] = []
  const take = (event: StoreEvent): void => {
    const last = remembered.at(-1)
    // numbers have no gaps; where one shows, what came before it is of no use
    if (last && event.seq !== last.seq + 1) remembered = []
    remembered.push(event)
    if (remembered.length > REMEMBERED) remembered = remembered.slice(-REMEMBERED / 2)
    for (const [listener, topics] of [...listeners]) if (fits(event, topics)) listener(event)
  }
  const endings = await Promise.all(ROOMS.map((room) => events.subscribe(room, take)))
  return {
    since: (afterSeq, topics) => {
      const [first] = remembered
      if (!first || first.seq > afterSeq + 1) return null
      return remembered.filter((event) => event.seq > afterSeq && fits(event, topics))
    },
    newest: () => remembered.at(-1)?.seq ?? 0,
    follow: (topics, listener) => {
      // a function of its own, so that the same listener can follow twice
      const own = (event: StoreEvent): void => listener(event)
      listeners.set(own, topics)
      return () => void listeners.delete(own)
    },
    close: () => {
      listeners.clear()
      for (const end of endings) end()
    },
  }
}

function fits(event: StoreEvent, topics: readonly Topic[]): boolean {
  return topics.some((topic) => topic === event.topic || topic === `${event.topic}/${event.objectId}`)
}

function isTopic(text: string): text is Topic {
  const [room, id, ...more] = text.split('/')
  return ROOMS.some((one) => one === room) && more.length === 0 && (id === undefined || /^[\w-]{1,100}$/.test(id))
}
