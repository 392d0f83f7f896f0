// Kills a writer, or the database itself, at random moments: nothing acknowledged is lost, and no batch is half there.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import Database from 'libsql'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { STORE_FILE } from '../../server/store/open-sqlite.ts'
import { openStore } from '../../server/store/open-store.ts'
import type { Place, Store } from '../../server/store/open-store.ts'
import { buildSegment, buildSheet } from '../helpers/build-sheet.ts'
import { ANN, handmade } from '../helpers/store-engines.ts'
import { startPostgres } from '../helpers/store-postgres.ts'
import type { PostgresServer } from '../helpers/store-postgres.ts'
import { storeWorkers } from '../helpers/store-processes.ts'

const KILLS = process.env.REPSLATE_SOAK ? 100 : 20
const POSTGRES_KILLS = process.env.REPSLATE_SOAK ? 30 : 6
const LONGEST_MS = 250

/** Numbers from 0 to 1, the same in every run (a linear congruential generator with the constants of "Numerical Recipes", from memory). */
function chances(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

async function addSheet(place: Place): Promise<string> {
  const store = await openStore(place, handmade())
  const { id: recordingId } = await store.recordings.add({ title: 'Monday' }, ANN)
  const sheet = buildSheet({ segments: [buildSegment('a', 0, 60)] })
  const { id } = await store.sheets.add({ recordingId, sheet, actor: ANN })
  await store.close()
  return id
}

interface Check {
  lost: string[]
  halves: string[]
  written: number
}

/** Reads the sheet with a store opened anew: lost = acknowledged and not there; halves = batches with a part missing. */
async function check(store: Store, sheetId: string, acknowledged: readonly string[]): Promise<Check> {
  const records = await store.sheets.readEdits(sheetId, 0)
  const { version, sheet } = await store.sheets.read(sheetId)
  expect(version).toBe(records.length)
  const added = records.flatMap(({ op }) => (op.op === 'add-cue' ? [op.cue.id] : []))
  expect(sheet.segments[0]?.cues.map((cue) => cue.id).sort()).toEqual(added.sort())
  const audited = await store.audit.list({ object: { type: 'sheet', id: sheetId }, limit: 1 })
  if (records.length > 0) expect(audited[0]?.details.to).toBe(version)
  const there = new Set(records.map((record) => record.opId))
  const halves = [...there].filter((opId) => {
    const [name, number] = opId.split(/-(?=\d+-\d+$)/)
    const [batch] = (number ?? '').split('-').map(Number)
    return Array.from({ length: ((batch ?? 0) % 3) + 1 }, (_, part) => `${name}-${batch}-${part}`).some(
      (other) => !there.has(other),
    )
  })
  return { lost: acknowledged.filter((opId) => !there.has(opId)), halves, written: there.size }
}

const startWorker = storeWorkers()

describe('a writer that is killed', () => {
  let folder = ''
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'repslate-crash-'))
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  it('loses nothing on SQLite', async () => {
    const place = { dataFolder: folder }
    const sheetId = await addSheet(place)
    const chance = chances(1)
    const acknowledged: string[] = []
    for (let number = 0; number < KILLS; number += 1) {
      const worker = startWorker({ place, work: 'edits', name: `k${number}`, sheetId, batches: 100_000 })
      await worker.ready
      await wait(chance() * LONGEST_MS)
      worker.kill()
      const ended = await worker.ended
      expect(ended).toMatchObject({ code: null, stderr: '' })
      acknowledged.push(...ended.acknowledged.flat())
      const store = await openStore(place, handmade())
      expect(await check(store, sheetId, acknowledged)).toMatchObject({ lost: [], halves: [] })
      await store.close()
    }
    expect(acknowledged.length).toBeGreaterThan(KILLS)
    const database = new Database(path.join(folder, STORE_FILE))
    expect(database.prepare('pragma integrity_check').all()).toEqual([{ integrity_check: 'ok' }])
    database.close()
  })
})

describe('PostgreSQL', () => {
  let server: PostgresServer | undefined
  beforeAll(async () => {
    server = await startPostgres({ safe: true })
  })
  afterAll(() => server?.remove())

  it('loses nothing when a writer is killed, nor when it is killed itself', async () => {
    if (!server) throw new Error('the server did not start')
    const place = { databaseUrl: await server.createSchema('crash') }
    const sheetId = await addSheet(place)
    const chance = chances(2)
    const acknowledged: string[] = []
    for (let number = 0; number < POSTGRES_KILLS; number += 1) {
      const worker = startWorker({ place, work: 'edits', name: `k${number}`, sheetId, batches: 100_000 })
      await worker.ready
      await wait(chance() * LONGEST_MS)
      const serverToo = number % 2 === 1
      if (serverToo) server.kill()
      worker.kill()
      acknowledged.push(...(await worker.ended).acknowledged.flat())
      if (serverToo) await server.start()
      const store = await openStore(place, handmade())
      expect(await check(store, sheetId, acknowledged)).toMatchObject({ lost: [], halves: [] })
      await store.close()
    }
    expect(acknowledged.length).toBeGreaterThan(POSTGRES_KILLS)
  })
})
