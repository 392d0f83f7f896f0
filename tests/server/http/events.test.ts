// Server-sent events: what changed reaches every page that follows it, also after a lost connection.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { followChanges } from '../../../server/middleware/follow-changes.ts'
import { keepStreams, STREAM_LIMITS, writeMessage } from '../../../server/middleware/stream-events.ts'
import type { StoreEvent } from '../../../server/store/follow-events.ts'
import { PROGRAM } from '../../../shared/actors.ts'
import { openTestDoor, startTestDoor } from '../../helpers/http-door.ts'
import { followUrl } from '../../helpers/follow-url.ts'

let opened: Awaited<ReturnType<typeof startTestDoor>>
beforeAll(async () => {
  opened = await startTestDoor()
})
afterAll(() => opened.close())

const change = (name: string): Promise<void> => opened.door.store.settings.write(name, 1, PROGRAM)

describe('/events', () => {
  it('is an event stream that nobody keeps', async () => {
    const stream = await followUrl(`${opened.url}/events?topics=settings`)
    expect(stream.status).toBe(200)
    expect(stream.headers.get('content-type')).toBe('text/event-stream')
    expect(stream.headers.get('cache-control')).toBe('no-store')
    expect(await stream.next()).toEqual({ retry: '2000' })
  })

  it('tells what changed, in order, numbered', async () => {
    const stream = await followUrl(`${opened.url}/events?topics=settings`)
    await stream.next()
    await change('one')
    await change('two')
    const [first, second] = [await stream.next(), await stream.next()]
    expect(first).toMatchObject({ event: 'settings' })
    expect(JSON.parse(first['data'] ?? '')).toMatchObject({ topic: 'settings', objectId: 'one' })
    expect(JSON.parse(second['data'] ?? '')).toMatchObject({ topic: 'settings', objectId: 'two' })
    expect(Number(second['id'])).toBe(Number(first['id']) + 1)
  })

  it('tells a page what changed between its being asked for and its first connection', async () => {
    await change('before')
    const seen = async (): Promise<string> => /since=(\d+)/.exec((await opened.ask('/jobs')).text)?.[1] ?? ''
    await expect.poll(async () => Number(await seen())).toBeGreaterThan(0)
    const since = await seen()
    await change('between')
    await expect.poll(seen).not.toBe(since)
    const stream = await followUrl(`${opened.url}/events?topics=settings&since=${since}`)
    await stream.next()
    expect(JSON.parse((await stream.next())['data'] ?? '')).toMatchObject({ objectId: 'between' })
    // one that missed nothing is told nothing twice
    const fresh = await followUrl(`${opened.url}/events?topics=settings&since=${await seen()}`)
    await fresh.next()
    await change('after')
    expect(JSON.parse((await fresh.next())['data'] ?? '')).toMatchObject({ objectId: 'after' })
  })

  it('tells only what was asked for', async () => {
    const stream = await followUrl(`${opened.url}/events?topics=jobs,settings/mine`)
    await stream.next()
    await change('other')
    await change('mine')
    expect(JSON.parse((await stream.next())['data'] ?? '')).toMatchObject({ objectId: 'mine' })
  })

  it('gives a browser that comes again what it missed', async () => {
    const first = await followUrl(`${opened.url}/events?topics=settings`)
    await first.next()
    await change('before')
    const { id = '' } = await first.next()
    await first.leave()
    await change('missed-1')
    await change('missed-2')
    const again = await followUrl(`${opened.url}/events?topics=settings`, { 'last-event-id': id })
    await again.next()
    const names = [await again.next(), await again.next()].map(
      (message) => (JSON.parse(message['data'] ?? '') as { objectId: string }).objectId,
    )
    expect(names).toEqual(['missed-1', 'missed-2'])
  })

  it('tells a browser to read everything again when it was away too long', async () => {
    const fresh = await openTestDoor()
    const away = await followUrl(`${fresh.url}/events?topics=settings`, { 'last-event-id': '7' })
    await away.next()
    expect(await away.next()).toEqual({ event: 'again', data: '{}' })
  })

  it.each(['', '?topics=', '?topics=nothing', '?topics=jobs/', '?topics=jobs/a/b', `?topics=${'jobs,'.repeat(21)}`])(
    'does not know the topics of "%s"',
    async (query) => {
      expect((await opened.ask(`/events${query}`)).status).toBe(400)
    },
  )

  it('takes a wrong number of the last event for none', async () => {
    const stream = await followUrl(`${opened.url}/events?topics=settings`, { 'last-event-id': 'x' })
    expect(await stream.next()).toEqual({ retry: '2000' })
  })
})

describe('streams', () => {
  it('are limited for each client, and a place is free again when one ends', async () => {
    const { url, door } = await openTestDoor()
    const streams = []
    for (let at = 0; at < STREAM_LIMITS.perClient; at += 1) streams.push(await followUrl(`${url}/events?topics=jobs`))
    const full = await fetch(`${url}/events?topics=jobs`)
    expect(full.status).toBe(429)
    expect(full.headers.get('retry-after')).toBe('5')
    await full.text()
    await streams[0]?.leave()
    await expect.poll(() => door.streams.count()).toBe(STREAM_LIMITS.perClient - 1)
    expect((await followUrl(`${url}/events?topics=jobs`)).status).toBe(200)
  })

  it('end when the studio stops', async () => {
    const { url, door } = await openTestDoor()
    const stream = await followUrl(`${url}/events?topics=jobs`)
    await stream.next()
    door.streams.close()
    expect(await stream.next()).toEqual({ end: 'yes' })
    expect(door.streams.count()).toBe(0)
  })

  it('beat while nothing happens', async () => {
    const { door, url } = await openTestDoor({
      routes: [
        (app) => {
          const streams = keepStreams(() => 'one', { ...STREAM_LIMITS, heartbeatMs: 5 })
          app.get('/quiet', (req, res) => void streams.open(req, res))
        },
      ],
    })
    const stream = await followUrl(`${url}/quiet`)
    await stream.next()
    expect(await stream.next()).toEqual({ comment: '' })
    expect(door.streams.count()).toBe(0)
  })
})

// WHATWG HTML, "Server-sent events", 9.2.5 and 9.2.6: how a stream is written and read
describe('a message', () => {
  it.each([
    [{ data: 'one' }, 'data: one\n\n'],
    [
      { id: '7', event: 'jobs', data: 'one\ntwo\r\nthree' },
      'id: 7\nevent: jobs\ndata: one\ndata: two\ndata: three\n\n',
    ],
    [{ event: 'a\nid: 9', data: '' }, 'event: a id: 9\ndata: \n\n'],
    [{ id: '1\0\r', data: 'x' }, 'id: 1  \ndata: x\n\n'],
  ])('%j', (message, text) => {
    expect(writeMessage(message)).toBe(text)
  })
})

describe('the memory of changes', () => {
  const event = (seq: number, objectId = 'a'): StoreEvent => ({ seq, topic: 'jobs', objectId, atUtc: 0 })
  async function memory() {
    const listeners: ((event: StoreEvent) => void)[] = []
    const changes = await followChanges({
      subscribe: (topic, listener) => {
        if (topic === 'jobs') listeners.push(listener)
        return Promise.resolve(() => undefined)
      },
    })
    return { changes, tell: (one: StoreEvent) => listeners.forEach((listener) => listener(one)) }
  }

  it('knows nothing before the first event', async () => {
    const { changes, tell } = await memory()
    expect(changes.since(4, ['jobs'])).toBeNull()
    tell(event(5))
    expect(changes.since(4, ['jobs'])).toEqual([event(5)])
    expect(changes.since(5, ['jobs'])).toEqual([])
    expect(changes.since(3, ['jobs'])).toBeNull()
  })

  it('forgets what lies before a gap', async () => {
    const { changes, tell } = await memory()
    tell(event(5))
    tell(event(8))
    expect(changes.since(4, ['jobs'])).toBeNull()
    expect(changes.since(7, ['jobs'])).toEqual([event(8)])
  })

  it('is bounded', async () => {
    const { changes, tell } = await memory()
    for (let seq = 1; seq <= 5000; seq += 1) tell(event(seq))
    expect(changes.since(0, ['jobs'])).toBeNull()
    expect(changes.since(4900, ['jobs'])).toHaveLength(100)
    expect(changes.since(4900, ['jobs/b'])).toEqual([])
  })
})
