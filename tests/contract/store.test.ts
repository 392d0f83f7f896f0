// The store's contract: the same facts on SQLite and on PostgreSQL.
import { describe } from 'vitest'
import { ENGINES, storesOf } from '../helpers/store-engines.ts'
import { eventFacts } from './facts/events.ts'
import { jobFacts } from './facts/jobs.ts'
import { lessonFacts } from './facts/lessons.ts'
import { openingFacts } from './facts/opening.ts'
import { rowFacts } from './facts/rows.ts'
import { sheetProperties } from './facts/sheet-properties.ts'
import { sheetFacts } from './facts/sheets.ts'
import { transactionFacts } from './facts/transactions.ts'

describe.each(ENGINES)('the store on %s', (engine) => {
  const stores = storesOf(engine)
  openingFacts(stores, engine)
  rowFacts(stores)
  sheetFacts(stores)
  sheetProperties(stores)
  jobFacts(stores)
  lessonFacts(stores)
  eventFacts(stores)
  transactionFacts(stores)
})
