// The database itself, without the store around it, for tests of migrations.
import { AsyncLocalStorage } from 'node:async_hooks'
import { Kysely } from 'kysely'
import { openPostgres } from '../../server/store/open-postgres.ts'
import { openSqlite } from '../../server/store/open-sqlite.ts'
import type { Place } from '../../server/store/open-store.ts'

export function openPlain(place: Place): Kysely<unknown> {
  const inside = new AsyncLocalStorage<boolean>()
  const dialect =
    'databaseUrl' in place ? openPostgres(place.databaseUrl, inside) : openSqlite(place.dataFolder, inside)
  return new Kysely({ dialect })
}
