// Fresh, empty stores on both databases for tests.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, afterEach, beforeAll } from 'vitest'
import { LOCAL_OWNER } from '../../shared/actors.ts'
import { openStore } from '../../server/store/open-store.ts'
import type { Place, Store, StoreOptions } from '../../server/store/open-store.ts'
import { startPostgres } from './store-postgres.ts'
import type { PostgresServer } from './store-postgres.ts'

export type EngineName = 'sqlite' | 'postgres'
export const ENGINES: readonly EngineName[] = ['sqlite', 'postgres']

export const ANN = LOCAL_OWNER

/** A clock that a test turns by hand, and ids that count. */
export interface Handmade extends StoreOptions {
  nowUtc: number
}

let makers = 0

/** Two of them never make the same id. */
export function handmade(prefix = `m${(makers += 1)}`): Handmade {
  let count = 0
  const made: Handmade = {
    nowUtc: Date.UTC(2026, 0, 15),
    ids: () => `${prefix}-${String((count += 1)).padStart(6, '0')}`,
    clock: () => made.nowUtc,
    pollMs: 10,
  }
  return made
}

export interface StoreMaker {
  /** Where nothing is yet. */
  newPlace: () => Promise<Place>
  /** Opens a store; it is closed after the test. */
  open: (place?: Place, options?: StoreOptions) => Promise<Store>
}

/** To be called in a describe block. */
export function storesOf(engine: EngineName): StoreMaker {
  const folders: string[] = []
  let opened: Store[] = []
  let server: PostgresServer | null = null
  let schemas = 0

  beforeAll(async () => {
    if (engine === 'postgres') server = await startPostgres({ safe: false })
  })
  afterEach(async () => {
    await Promise.all(opened.map((store) => store.close()))
    opened = []
  })
  afterAll(() => {
    server?.remove()
    for (const folder of folders) rmSync(folder, { recursive: true, force: true })
  })
  const newPlace = async (): Promise<Place> => {
    if (server) return { databaseUrl: await server.createSchema(`store_${(schemas += 1)}`) }
    const folder = mkdtempSync(path.join(tmpdir(), 'repslate-store-'))
    folders.push(folder)
    return { dataFolder: folder }
  }
  return {
    newPlace,
    open: async (place, options = handmade()) => {
      const store = await openStore(place ?? (await newPlace()), options)
      opened.push(store)
      return store
    },
  }
}
