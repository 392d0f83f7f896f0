/** `GET /events?topics=jobs,sheets/<id>`: tells a page what changed, also in other tabs and by other programs. */
import type { Router } from 'express'
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { StoreEvent } from '../store/follow-events.ts'
import type { Door } from '../door.ts'
import { TopicList } from '../middleware/follow-changes.ts'

const LastSeen = z.coerce.number().int().nonnegative()
/** since = the newest event when the page was asked for: between that and its first connection much can happen. */
const Query = z.object({ topics: TopicList, since: LastSeen.optional() })

/**
 * Each event is named by its room and numbered; its data is `{topic, objectId, atUtc}` and says what to read again.
 * A browser that comes back gets what it missed, or one event `again`: read everything again.
 */
export function addEvents(app: Router, door: Door): void {
  app.get('/events', (req, res) => {
    const { topics, since } = Query.parse(req.query)
    mustBeAllowed(door.actor, 'studio.read', { type: 'studio', id: 'studio' })
    const stream = door.streams.open(req, res)
    const send = ({ seq, topic, objectId, atUtc }: StoreEvent): void =>
      stream.send({ id: String(seq), event: topic, data: JSON.stringify({ topic, objectId, atUtc }) })
    const lastSeen =
      LastSeen.safeParse(req.headers['last-event-id']).data ?? (since === door.changes.newest() ? undefined : since)
    if (lastSeen !== undefined) {
      const missed = door.changes.since(lastSeen, topics)
      if (missed === null) stream.send({ event: 'again', data: '{}' })
      else missed.forEach(send)
    }
    stream.onEnd(door.changes.follow(topics, send))
  })
}
