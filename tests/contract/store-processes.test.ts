// Two processes on one store: every acknowledged edit is there, in whole batches, and each job is done by one of them.
import { describe, expect, it } from 'vitest'
import { buildSegment, buildSheet } from '../helpers/build-sheet.ts'
import { ANN, ENGINES, storesOf } from '../helpers/store-engines.ts'
import { storeWorkers } from '../helpers/store-processes.ts'

const BATCHES = process.env.REPSLATE_SOAK ? 400 : 40

const startWorker = storeWorkers()

describe.each(ENGINES)('two processes on one store on %s', (engine) => {
  const stores = storesOf(engine)

  it('append to one sheet, and nothing acknowledged is missing', async () => {
    const place = await stores.newPlace()
    const store = await stores.open(place)
    const { id: recordingId } = await store.recordings.add({ title: 'Monday' }, ANN)
    const sheet = buildSheet({ segments: [buildSegment('a', 0, 60)] })
    const { id: sheetId } = await store.sheets.add({ recordingId, sheet, actor: ANN })
    const workers = ['p', 'q'].map((name) => startWorker({ place, work: 'edits', name, sheetId, batches: BATCHES }))
    const ended = await Promise.all(workers.map((worker) => worker.ended))
    expect(ended.map(({ code, stderr }) => ({ code, stderr }))).toEqual(Array(2).fill({ code: 0, stderr: '' }))

    const acknowledged = ended.flatMap((one) => one.acknowledged)
    const records = await store.sheets.readEdits(sheetId, 0)
    expect(records.map((record) => record.opId).sort()).toEqual(acknowledged.flat().sort())
    const order = records.map((record) => record.opId)
    const apart = acknowledged.filter((batch) => {
      const at = order.indexOf(batch[0] ?? '')
      return batch.some((opId, index) => order[at + index] !== opId)
    })
    expect(apart).toEqual([])
    const { sheet: read } = await store.sheets.read(sheetId)
    expect(read.segments[0]?.cues.map((cue) => cue.id).sort()).toEqual(
      records.flatMap(({ op }) => (op.op === 'add-cue' ? [op.cue.id] : [])).sort(),
    )
  })

  it('take turns: one that writes all the time lets the other in after a few of its own', async () => {
    const place = await stores.newPlace()
    const store = await stores.open(place)
    const { id: recordingId } = await store.recordings.add({ title: 'Monday' }, ANN)
    const sheet = buildSheet({ segments: [buildSegment('a', 0, 60)] })
    const { id: sheetId } = await store.sheets.add({ recordingId, sheet, actor: ANN })
    const worker = startWorker({ place, work: 'edits', name: 'p', sheetId, batches: 100_000 })
    await worker.ready
    const versionOf = async (): Promise<number> => (await store.sheets.read(sheetId)).version
    const passed: number[] = []
    while (passed.length < 15) {
      const before = await versionOf()
      await store.recordings.change(recordingId, null, { title: `Monday ${passed.length}` }, ANN)
      passed.push((await versionOf()) - before)
    }
    worker.kill()
    await worker.ended
    // a batch is four edits at most; without turns some seventy batches went by
    const [middle] = passed.sort((a, b) => a - b).slice(7)
    expect(middle).toBeLessThanOrEqual(24)
    expect(await versionOf()).toBeGreaterThan(0)
  })

  it('share jobs: each is done once', async () => {
    const place = await stores.newPlace()
    const store = await stores.open(place)
    const ids: string[] = []
    for (let number = 0; number < 40; number += 1) {
      ids.push((await store.jobs.enqueue({ kind: 'cut', input: number }, ANN)).job.id)
    }
    const ended = await Promise.all(['p', 'q'].map((name) => startWorker({ place, work: 'jobs', name }).ended))
    expect(ended.map((one) => one.stderr)).toEqual(['', ''])
    expect(ended.flatMap((one) => one.acknowledged.flat()).sort()).toEqual(ids.sort())
    expect(new Set((await store.jobs.list()).map((job) => `${job.state} ${job.attempts}`))).toEqual(new Set(['done 1']))
  })
})
