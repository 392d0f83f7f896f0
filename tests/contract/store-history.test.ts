// Stores saved earlier are opened by the program of today. tests/fixtures/store holds one for each migration, saved
// before the next was written; the newest is compared with what is saved today, so that a frozen migration stays so.
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { sql } from 'kysely'
import { describe, expect, it } from 'vitest'
import { migrateStore, MIGRATIONS } from '../../server/store/migrate-store.ts'
import { projectRoot } from '../helpers/source-files.ts'
import { ENGINES, handmade, storesOf } from '../helpers/store-engines.ts'
import { openPlain } from '../helpers/store-plain.ts'
import { dumpSqlite, fillStore, loadSqlite, readEverything } from '../helpers/store-saved.ts'

const NAMES = Object.keys(MIGRATIONS)
const fixtureOf = (name: string): string => path.join(projectRoot, 'tests', 'fixtures', 'store', `${name}.sql`)

describe.each(ENGINES)('a saved store on %s', (engine) => {
  const stores = storesOf(engine)

  it.each(NAMES)('of %s holds what it held', async (name) => {
    const saved = readFileSync(fixtureOf(name), 'utf8')
    const place = await stores.newPlace()
    if ('dataFolder' in place) loadSqlite(place.dataFolder, saved)
    else {
      const plain = openPlain(place)
      const upTo = NAMES.slice(0, NAMES.indexOf(name) + 1)
      await migrateStore(plain, engine, 1, Object.fromEntries(upTo.map((one) => [one, MIGRATIONS[one]!])))
      await plain.transaction().execute(async (trx) => {
        await sql`delete from counters`.execute(trx)
        for (const line of rowsOf(saved)) await sql.raw(line).execute(trx)
      })
      await plain.destroy()
    }
    const fresh = await stores.open(undefined, handmade('id'))
    await fillStore(fresh)
    expect(await readEverything(await stores.open(place))).toEqual(await readEverything(fresh))
  })

  if (engine !== 'sqlite') return
  it('of today is the newest of them, byte for byte', async () => {
    const place = await stores.newPlace()
    await fillStore(await stores.open(place, handmade('id')))
    const newest = NAMES.at(-1) ?? ''
    if ('dataFolder' in place) await expect(dumpSqlite(place.dataFolder)).toMatchFileSnapshot(fixtureOf(newest))
  })
})

/** Rows in an order in which each comes after those it points at. */
function rowsOf(saved: string): string[] {
  const order = ['counters', 'class_kinds', 'recordings', 'sheets', 'lessons']
  const rank = (line: string) => order.findIndex((table) => line.startsWith(`insert into "${table}"`))
  const last = order.length
  return saved
    .split(/;\n(?=insert |$)/)
    .filter((line) => line.startsWith('insert into ') && !line.startsWith('insert into "store_migrations"'))
    .sort((a, b) => (rank(a) < 0 ? last : rank(a)) - (rank(b) < 0 ? last : rank(b)))
}
