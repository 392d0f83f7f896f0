// Properties of stored edits: what is returned, what is read, and the fold of the log are one and the same sheet.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { foldEdits } from '../../../core/segments/fold-edits.ts'
import { AppError } from '../../../shared/errors.ts'
import type { LogSheet } from '../../../shared/log-sheet.ts'
import { pickEdit, seeds, sheets } from '../../helpers/sheet-arbitraries.ts'
import { findBroken } from '../../helpers/sheet-invariants.ts'
import { ANN } from '../../helpers/store-engines.ts'
import type { StoreMaker } from '../../helpers/store-engines.ts'

/** How far behind the newest version the maker of a batch is, and what the batch holds. */
const batches = fc.array(fc.record({ behind: fc.nat(4), seeds: fc.array(seeds, { minLength: 1, maxLength: 3 }) }), {
  minLength: 1,
  maxLength: 12,
})

const RUNS = process.env.REPSLATE_SOAK ? 300 : 12

export function sheetProperties(stores: StoreMaker): void {
  describe('stored edits', () => {
    it('fold to the sheet that is returned and read, whatever was refused between', async () => {
      const store = await stores.open()
      let refused = 0
      let taken = 0
      await fc.assert(
        fc.asyncProperty(sheets, batches, async (first, list) => {
          const { id: recordingId } = await store.recordings.add({ title: 'Monday' }, ANN)
          const { id: sheetId } = await store.sheets.add({ recordingId, sheet: first, actor: ANN })
          const history: LogSheet[] = [(await store.sheets.read(sheetId)).sheet]
          for (const [number, batch] of list.entries()) {
            const baseVersion = Math.max(0, history.length - 1 - batch.behind)
            const seen = history[baseVersion] as LogSheet
            const edits = batch.seeds.map((seed, index) => {
              const opId = `op-${number}-${index}`
              return { opId, op: pickEdit(seen, seed, opId) }
            })
            try {
              const done = await store.sheets.appendEdits({ sheetId, baseVersion, edits, actor: ANN })
              taken += 1
              expect(done.version).toBe(history.length - 1 + edits.length)
              for (let version = history.length; version <= done.version; version += 1) {
                history.push((await store.sheets.read(sheetId, version)).sheet)
              }
              expect(done.sheet).toEqual(history.at(-1))
            } catch (error) {
              if (!(error instanceof AppError)) throw error
              refused += 1
            }
            expect((await store.sheets.read(sheetId)).version).toBe(history.length - 1)
          }
          const records = await store.sheets.readEdits(sheetId, 0)
          const folded = foldEdits(history[0] as LogSheet, records)
          const read = await store.sheets.read(sheetId)
          expect(folded.sheet).toEqual(read.sheet)
          expect(findBroken(read.sheet)).toEqual(findBroken(history[0] as LogSheet).length > 0 ? expect.anything() : [])
        }),
        { numRuns: RUNS },
      )
      expect(Math.min(refused, taken)).toBeGreaterThan(RUNS / 2)
    })
  })
}
