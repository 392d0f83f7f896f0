// Opening a store: new, again, by two at once, of a newer program, at a place that is none.
import path from 'node:path'
import type { Kysely, TableMetadata } from 'kysely'
import { describe, expect, it } from 'vitest'
import { migrateStore, MIGRATIONS } from '../../../server/store/migrate-store.ts'
import { openStore } from '../../../server/store/open-store.ts'
import type { Place } from '../../../server/store/open-store.ts'
import { ANN, handmade } from '../../helpers/store-engines.ts'
import { projectRoot } from '../../helpers/source-files.ts'
import type { EngineName, StoreMaker } from '../../helpers/store-engines.ts'
import { openPlain } from '../../helpers/store-plain.ts'

/** The store's tables; on PostgreSQL, those of the schema in the address. */
async function readTables(plain: Kysely<unknown>, place: Place): Promise<TableMetadata[]> {
  const schema = 'databaseUrl' in place ? /search_path%3D(\w+)/.exec(place.databaseUrl)?.[1] : undefined
  return (await plain.introspection.getTables()).filter((table) => table.schema === schema)
}

export function openingFacts(stores: StoreMaker, engine: EngineName): void {
  describe('opening', () => {
    it.each(
      engine === 'sqlite'
        ? [{ dataFolder: '/dev/null/studio' }]
        : [{ databaseUrl: 'postgres://nobody@127.0.0.1:1/none' }, { databaseUrl: 'postgres://:not an address' }],
    )('says so when the place %j is none', async (place) => {
      await expect(openStore(place, handmade())).rejects.toMatchObject({ code: 'store-open' })
    })

    it('refuses a store that a newer program wrote, and leaves it as it is', async () => {
      const place = await stores.newPlace()
      const plain = openPlain(place)
      const added = {
        ...MIGRATIONS,
        '9999-later': { up: (db: Kysely<unknown>) => db.schema.createTable('later').addColumn('id', 'text').execute() },
      }
      await migrateStore(plain, engine, 1, added)
      await plain.destroy()
      await expect(openStore(place, handmade())).rejects.toMatchObject({ code: 'store-newer', details: ['9999-later'] })
    })

    it('undoes a migration that fails halfway, tables and all', async () => {
      const place = await stores.newPlace()
      const plain = openPlain(place)
      const broken = {
        ...MIGRATIONS,
        '9999-broken': {
          up: async (db: Kysely<unknown>) => {
            await db.schema.createTable('half').addColumn('id', 'text').execute()
            throw new Error('halfway')
          },
        },
      }
      await expect(migrateStore(plain, engine, 1, broken)).rejects.toThrow('halfway')
      expect(await readTables(plain, place)).toEqual([])
      await plain.destroy()
      const store = await stores.open(place)
      expect(await store.recordings.list()).toEqual([])
    })

    it('keeps what is there when it is opened again', async () => {
      const place = await stores.newPlace()
      const first = await stores.open(place)
      const recording = await first.recordings.add({ title: 'Chair class' }, ANN)
      await first.close()
      const again = await stores.open(place)
      expect(await again.recordings.list()).toEqual([recording])
    })

    it('lets several open a new store at the same time', async () => {
      const place = await stores.newPlace()
      const opened = await Promise.all([1, 2, 3, 4].map((number) => stores.open(place, handmade(`p${number}`))))
      await Promise.all(opened.map((store, index) => store.recordings.add({ title: `class ${index}` }, ANN)))
      for (const store of opened) expect(await store.recordings.list()).toHaveLength(4)
    })

    it('has the columns of the table list and no other', async () => {
      const place = await stores.newPlace()
      await stores.open(place)
      const plain = openPlain(place)
      const tables = await readTables(plain, place)
      const columns = tables
        .flatMap((table) =>
          table.columns.map((column) => `${table.name}.${column.name}${column.isNullable ? '?' : ''}`),
        )
        .sort()
      await plain.destroy()
      await expect(`${columns.join('\n')}\n`).toMatchFileSnapshot(
        path.join(projectRoot, 'tests/fixtures/store/columns.txt'),
      )
    })
  })
}
