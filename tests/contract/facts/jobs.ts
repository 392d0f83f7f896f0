// Jobs: asked once, taken once an attempt, reported by their holder only, taken back from workers that went away.
import { describe, expect, it } from 'vitest'
import type { Store } from '../../../server/store/open-store.ts'
import { ANN, handmade } from '../../helpers/store-engines.ts'
import type { Handmade, StoreMaker } from '../../helpers/store-engines.ts'

const CUT = { kind: 'cut', input: { segmentId: 'a' } }
const FAULT = { code: 'engine-failed', message: 'ffmpeg ended with an error', details: ['last words'] }
const LOST = { code: 'job-lost' }

async function openWith(stores: StoreMaker): Promise<{ store: Store; options: Handmade }> {
  const options = handmade()
  return { store: await stores.open(undefined, options), options }
}

async function claim(store: Store, workerId = 'w1') {
  const taken = await store.jobs.claimJob(['cut'], workerId)
  if (!taken) throw new Error('there was a job to take')
  return taken
}

export function jobFacts(stores: StoreMaker): void {
  describe('jobs', () => {
    it('are refused for a recording that is not there', async () => {
      const { store } = await openWith(stores)
      const call = store.jobs.enqueue({ ...CUT, recordingId: 'none' }, ANN)
      await expect(call).rejects.toMatchObject({ code: 'row-missing' })
    })

    it('are not found where there are none of the kind', async () => {
      const { store } = await openWith(stores)
      await store.jobs.enqueue({ ...CUT, kind: 'draft' }, ANN)
      expect(await store.jobs.claimJob(['cut'], 'w1')).toBeNull()
      expect(await store.jobs.claimJob([], 'w1')).toBeNull()
    })

    it('run from asked to done', async () => {
      const { store, options } = await openWith(stores)
      const asked = await store.jobs.enqueue(CUT, ANN)
      expect(asked).toMatchObject({ isNew: true, job: { ...CUT, state: 'queued', attempts: 0, askedBy: ANN.id } })
      const { job, claim: held } = await claim(store)
      expect(job).toMatchObject({ id: asked.job.id, state: 'running', attempts: 1, workerId: 'w1' })
      options.nowUtc += 500
      const progress = { part: 0.5, step: 'cutting', leftMs: 500 }
      expect(await store.jobs.beat(held, progress)).toEqual({ cancelAsked: false })
      expect(await store.jobs.read(job.id)).toMatchObject({ progress, beatUtc: options.nowUtc })
      const done = await store.jobs.finish(held, { clip: 'a.mp4' })
      expect(done).toMatchObject({ state: 'done', result: { clip: 'a.mp4' }, error: null, endedUtc: options.nowUtc })
      expect(await store.jobs.finish(held, { clip: 'a.mp4' })).toEqual(done)
      expect(await store.jobs.claimJob(['cut'], 'w1')).toBeNull()
    })

    it('are asked once with one key, also when it is asked by several at once', async () => {
      const { store } = await openWith(stores)
      const asked = await Promise.all([1, 2, 3, 4].map(() => store.jobs.enqueue({ ...CUT, key: 'cut-a' }, ANN)))
      expect(asked.filter((one) => one.isNew)).toHaveLength(1)
      expect(new Set(asked.map((one) => one.job.id)).size).toBe(1)
      const { claim: held } = await claim(store)
      await store.jobs.finish(held, null)
      expect(await store.jobs.enqueue({ ...CUT, key: 'cut-a' }, ANN)).toMatchObject({
        isNew: false,
        job: { state: 'done' },
      })
    })

    it('go by priority, then in the order they were asked, and not before their time', async () => {
      const { store, options } = await openWith(stores)
      const late = { ...CUT, runAfterUtc: options.nowUtc + 1000 }
      for (const [name, job] of Object.entries({ a: CUT, late, b: CUT, first: { ...CUT, priority: 5 } })) {
        await store.jobs.enqueue({ ...job, input: name }, ANN)
      }
      const order = []
      for (let number = 0; number < 3; number += 1) order.push((await claim(store)).job.input)
      expect(order).toEqual(['first', 'a', 'b'])
      expect(await store.jobs.claimJob(['cut'], 'w1')).toBeNull()
      options.nowUtc += 1000
      expect((await claim(store)).job.input).toBe('late')
    })

    it('of many recordings take turns, so that forty of one do not hold up another', async () => {
      const { store, options } = await openWith(stores)
      const many = (await store.recordings.add({ title: 'Forty cuts' }, ANN)).id
      const one = (await store.recordings.add({ title: 'One cut' }, ANN)).id
      for (let number = 0; number < 6; number += 1) {
        await store.jobs.enqueue({ ...CUT, recordingId: many, input: `many ${number}` }, ANN)
      }
      for (let number = 0; number < 2; number += 1) {
        options.nowUtc += 10
        await store.jobs.enqueue({ ...CUT, recordingId: one, input: `one ${number}` }, ANN)
      }
      await store.jobs.enqueue({ ...CUT, input: 'of none' }, ANN)
      const order: unknown[] = []
      for (let number = 0; number < 9; number += 1) {
        options.nowUtc += 10
        const { job, claim: held } = await claim(store)
        order.push(job.input)
        await store.jobs.finish(held, null)
      }
      expect(order).toEqual([
        ...['many 0', 'one 0', 'of none', 'many 1', 'one 1', 'many 2', 'many 3', 'many 4', 'many 5'],
      ])
    })

    it('of a recording that has one running wait for a recording that has none', async () => {
      const { store, options } = await openWith(stores)
      const busy = (await store.recordings.add({ title: 'Busy' }, ANN)).id
      const calm = (await store.recordings.add({ title: 'Calm' }, ANN)).id
      for (const recordingId of [busy, busy, busy, calm]) {
        options.nowUtc += 10
        await store.jobs.enqueue({ ...CUT, recordingId, input: recordingId }, ANN)
      }
      const order = [await claim(store, 'w1'), await claim(store, 'w2'), await claim(store, 'w3')]
      expect(order.map(({ job }) => job.input)).toEqual([busy, calm, busy])
    })

    it('are taken back at once from a worker known to be gone, and from no other', async () => {
      const { store } = await openWith(stores)
      const { job } = await store.jobs.enqueue(CUT, ANN)
      await store.jobs.enqueue(CUT, ANN)
      const gone = await claim(store, 'gone-1')
      const alive = await claim(store, 'alive-1')
      expect(await store.jobs.takeBack(() => false)).toEqual([])
      expect(await store.jobs.takeBack((workerId) => workerId.startsWith('gone'))).toMatchObject([
        { id: job.id, state: 'queued', error: LOST },
      ])
      await expect(store.jobs.beat(gone.claim)).rejects.toMatchObject(LOST)
      await store.jobs.finish(alive.claim, null)
    })

    it('go to one worker each, however many ask at once from however many stores', async () => {
      const place = await stores.newPlace()
      const opened = await Promise.all(['p', 'q', 'r'].map((name) => stores.open(place, handmade(name))))
      const first = opened[0] as Store
      const ids = []
      for (let number = 0; number < 30; number += 1) ids.push((await first.jobs.enqueue(CUT, ANN)).job.id)
      const work = async (store: Store, workerId: string): Promise<string[]> => {
        const done: string[] = []
        for (
          let taken = await store.jobs.claimJob(['cut'], workerId);
          taken;
          taken = await store.jobs.claimJob(['cut'], workerId)
        ) {
          await store.jobs.finish(taken.claim, null)
          done.push(taken.job.id)
        }
        return done
      }
      const workers = opened.flatMap((store, index) => [work(store, `${index}a`), work(store, `${index}b`)])
      expect((await Promise.all(workers)).flat().sort()).toEqual(ids.sort())
    })

    it('go to each of several who ask at the same moment, one each', async () => {
      const place = await stores.newPlace()
      const opened = await Promise.all(['p', 'q', 'r', 's'].map((name) => stores.open(place, handmade(name))))
      for (let number = 0; number < 8; number += 1) {
        await (opened[0] as Store).jobs.enqueue({ ...CUT, input: number }, ANN)
      }
      const ask = (store: Store, index: number) => store.jobs.claimJob(['cut'], `w${index}`)
      const taken = await Promise.all([...opened, ...opened].map(ask))
      expect(taken.map((one) => one?.job.input).sort()).toEqual([0, 1, 2, 3, 4, 5, 6, 7])
    })

    it('are cancelled at once while they wait, and asked to stop while they run', async () => {
      const { store } = await openWith(stores)
      const { job: waiting } = await store.jobs.enqueue(CUT, ANN)
      expect(await store.jobs.cancel(waiting.id, ANN)).toMatchObject({ state: 'cancelled' })
      expect(await store.jobs.claimJob(['cut'], 'w1')).toBeNull()
      const { job: running } = await store.jobs.enqueue(CUT, ANN)
      const { claim: held } = await claim(store)
      expect(await store.jobs.cancel(running.id, ANN)).toMatchObject({ state: 'running', cancelAsked: true })
      expect(await store.jobs.beat(held)).toEqual({ cancelAsked: true })
      expect(await store.jobs.fail(held, FAULT, { afterMs: 0 })).toMatchObject({ state: 'cancelled', error: null })
      expect(await store.jobs.cancel(running.id, ANN)).toMatchObject({ state: 'cancelled' })
    })

    it('fail with their error, and are tried again while attempts are left', async () => {
      const { store, options } = await openWith(stores)
      await store.jobs.enqueue({ ...CUT, maxAttempts: 2 }, ANN)
      const first = await claim(store)
      const again = await store.jobs.fail(first.claim, FAULT, { afterMs: 1000 })
      expect(again).toMatchObject({ state: 'queued', error: FAULT, workerId: null, runAfterUtc: options.nowUtc + 1000 })
      options.nowUtc += 1000
      const second = await claim(store)
      expect(await store.jobs.fail(second.claim, FAULT, { afterMs: 1000 })).toMatchObject({
        state: 'failed',
        attempts: 2,
      })
      expect(await store.jobs.retry(second.job.id, ANN)).toMatchObject({ state: 'queued', attempts: 0 })
      const third = await claim(store)
      expect(await store.jobs.fail(third.claim, FAULT)).toMatchObject({ state: 'failed', attempts: 1 })
    })

    it('leave a job that is waiting, running or done alone when it is asked to be retried', async () => {
      const { store } = await openWith(stores)
      const { job } = await store.jobs.enqueue(CUT, ANN)
      expect(await store.jobs.retry(job.id, ANN)).toMatchObject({ state: 'queued' })
      const { claim: held } = await claim(store)
      expect(await store.jobs.retry(job.id, ANN)).toMatchObject({ state: 'running' })
      await store.jobs.finish(held, null)
      expect(await store.jobs.retry(job.id, ANN)).toMatchObject({ state: 'done' })
    })

    it('are taken back from a worker that went away; what it says later is refused', async () => {
      const { store, options } = await openWith(stores)
      await store.jobs.enqueue(CUT, ANN)
      const gone = await claim(store, 'gone')
      options.nowUtc += 30_000
      expect(await store.jobs.reapStale(30_000)).toEqual([])
      options.nowUtc += 1
      expect(await store.jobs.reapStale(30_000)).toMatchObject([{ id: gone.job.id, state: 'queued', error: LOST }])
      await expect(store.jobs.beat(gone.claim)).rejects.toMatchObject(LOST)
      const next = await claim(store, 'next')
      expect(next.claim).toEqual({ jobId: gone.job.id, workerId: 'next', attempt: 2 })
      await expect(store.jobs.beat(gone.claim)).rejects.toMatchObject(LOST)
      await expect(store.jobs.finish(gone.claim, 'late')).rejects.toMatchObject(LOST)
      await expect(store.jobs.fail(gone.claim, FAULT)).rejects.toMatchObject(LOST)
      expect(await store.jobs.finish(next.claim, 'right')).toMatchObject({ state: 'done', result: 'right' })
    })

    it('refuse the same worker too once it holds a later attempt', async () => {
      const { store, options } = await openWith(stores)
      await store.jobs.enqueue(CUT, ANN)
      const first = await claim(store, 'w1')
      options.nowUtc += 10
      await store.jobs.reapStale(5)
      const second = await claim(store, 'w1')
      await expect(store.jobs.finish(first.claim, 'old')).rejects.toMatchObject(LOST)
      await store.jobs.finish(second.claim, 'new')
    })

    it('are given up when workers keep going away, and cancelled when that was asked', async () => {
      const { store, options } = await openWith(stores)
      const { job } = await store.jobs.enqueue({ ...CUT, maxAttempts: 1 }, ANN)
      const { job: unwanted } = await store.jobs.enqueue(CUT, ANN)
      await claim(store)
      await claim(store)
      await store.jobs.cancel(unwanted.id, ANN)
      options.nowUtc += 10
      await Promise.all([store.jobs.reapStale(5), store.jobs.reapStale(5)])
      expect(await store.jobs.read(job.id)).toMatchObject({ state: 'failed', error: LOST })
      expect(await store.jobs.read(unwanted.id)).toMatchObject({ state: 'cancelled' })
    })

    it('are listed by recording and state, the newest first', async () => {
      const { store } = await openWith(stores)
      const { id: recordingId } = await store.recordings.add({ title: 'Monday' }, ANN)
      for (const input of ['a', 'b']) await store.jobs.enqueue({ ...CUT, input, recordingId }, ANN)
      await store.jobs.enqueue({ ...CUT, input: 'c' }, ANN)
      await claim(store)
      const inputs = async (filter?: Parameters<Store['jobs']['list']>[0]) =>
        (await store.jobs.list(filter)).map((job) => job.input)
      expect(await inputs()).toEqual(['c', 'b', 'a'])
      expect(await inputs({ recordingId })).toEqual(['b', 'a'])
      expect(await inputs({ states: ['queued'], limit: 1 })).toEqual(['c'])
      expect(await inputs({ states: ['running'] })).toEqual(['a'])
    })
  })
}
