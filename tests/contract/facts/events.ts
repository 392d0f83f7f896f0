// Events: what followers hear, in which order, across stores, and what they never hear.
import { describe, expect, it } from 'vitest'
import type { Store } from '../../../server/store/open-store.ts'
import type { StoreEvent, Topic } from '../../../server/store/follow-events.ts'
import { ANN, handmade } from '../../helpers/store-engines.ts'
import type { StoreMaker } from '../../helpers/store-engines.ts'

/** Follows a topic; `wait` is fulfilled once so many events have come. */
async function follow(store: Store, topic: Topic) {
  const heard: StoreEvent[] = []
  let check = (): void => undefined
  const stop = await store.events.subscribe(topic, (event) => {
    heard.push(event)
    check()
  })
  const wait = (count: number): Promise<StoreEvent[]> =>
    new Promise((resolve) => {
      check = () => {
        if (heard.length >= count) resolve(heard)
      }
      check()
    })
  return { heard, stop, wait }
}

export function eventFacts(stores: StoreMaker): void {
  describe('events', () => {
    it('reach followers in this store and in another, in order, each once', async () => {
      const place = await stores.newPlace()
      const [here, there] = [await stores.open(place), await stores.open(place, handmade('there'))]
      const followers = [await follow(here, 'recordings'), await follow(there, 'recordings')]
      const ids: string[] = []
      for (let number = 0; number < 5; number += 1) ids.push((await here.recordings.add({ title: 'x' }, ANN)).id)
      for (const follower of followers) {
        const heard = await follower.wait(5)
        expect(heard.map((event) => event.objectId)).toEqual(ids)
        expect(heard.map((event) => event.seq)).toEqual([...heard.map((event) => event.seq)].sort((a, b) => a - b))
      }
    })

    it('reach those only who follow the thing', async () => {
      const store = await stores.open()
      const one = await store.recordings.add({ title: 'one' }, ANN)
      const two = await store.recordings.add({ title: 'two' }, ANN)
      const follower = await follow(store, `recordings/${two.id}`)
      const all = await follow(store, 'jobs')
      await store.recordings.change(one.id, null, { title: 'x' }, ANN)
      await store.recordings.change(two.id, null, { title: 'y' }, ANN)
      await store.jobs.enqueue({ kind: 'cut', input: null }, ANN)
      expect(await follower.wait(1)).toMatchObject([{ topic: 'recordings', objectId: two.id }])
      expect(await all.wait(1)).toMatchObject([{ topic: 'jobs' }])
    })

    it('of a write that is undone are never heard, nor those after a follower stopped', async () => {
      const store = await stores.open()
      const follower = await follow(store, 'recordings')
      const stopped = await follow(store, 'recordings')
      stopped.stop()
      const failing = store.transaction(async (rooms) => {
        await rooms.recordings.add({ title: 'gone' }, ANN)
        throw new Error('no')
      })
      await expect(failing).rejects.toThrow('no')
      const { id } = await store.recordings.add({ title: 'kept' }, ANN)
      expect((await follower.wait(1)).map((event) => event.objectId)).toEqual([id])
      expect(stopped.heard).toEqual([])
    })

    it('go on when a listener throws; the fault is told', async () => {
      const faults: unknown[] = []
      const store = await stores.open(undefined, { ...handmade(), onFault: (error) => faults.push(error) })
      await store.events.subscribe('recordings', () => {
        throw new Error('listener')
      })
      const follower = await follow(store, 'recordings')
      await store.recordings.add({ title: 'x' }, ANN)
      await follower.wait(1)
      expect(faults).toEqual([new Error('listener')])
    })

    it('of many writers at once are all heard: none becomes visible behind a later one', async () => {
      const place = await stores.newPlace()
      const writers = await Promise.all(['p', 'q'].map((name) => stores.open(place, handmade(name))))
      const reader = await stores.open(place, handmade('r'))
      const follower = await follow(reader, 'recordings')
      const adds = Array.from({ length: 60 }, (_, index) =>
        (writers[index % 2] as Store).recordings.add({ title: `${index}` }, ANN),
      )
      const ids = (await Promise.all(adds)).map((recording) => recording.id)
      expect((await follower.wait(60)).map((event) => event.objectId).sort()).toEqual(ids.sort())
    })

    it('come in full to one who fell far behind', async () => {
      const store = await stores.open(undefined, { ...handmade(), pollMs: 1_000_000 })
      const follower = await follow(store, 'jobs')
      await store.transaction(async (rooms) => {
        for (let number = 0; number < 250; number += 1) await rooms.jobs.enqueue({ kind: 'cut', input: number }, ANN)
      })
      expect(new Set((await follower.wait(250)).map((event) => event.seq)).size).toBe(250)
    })
  })
}
