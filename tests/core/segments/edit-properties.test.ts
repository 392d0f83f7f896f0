// What holds for every edit on every sheet, tried on random ones.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../core/segments/edit-sheet.ts'
import { foldEdits, undoEdit } from '../../../core/segments/fold-edits.ts'
import { Edit, EditRecord, parseEdit } from '../../../shared/edit.ts'
import { AppError } from '../../../shared/errors.ts'
import { LogSheet } from '../../../shared/log-sheet.ts'
import { readLogSheet, writeLogSheet } from '../../../shared/read-log-sheet.ts'
import { deepFreeze } from '../../helpers/deep-freeze.ts'
import { pickEdit, seeds, sheets, withUnknownFields } from '../../helpers/sheet-arbitraries.ts'
import type { Seed } from '../../helpers/sheet-arbitraries.ts'
import { findBroken } from '../../helpers/sheet-invariants.ts'

const RUNS = { numRuns: 200 }
const seedLists = fc.array(seeds, { minLength: 1, maxLength: 12 })

/** Applies an edit to a frozen sheet; null when the sheet refuses it, which must be by one of the two codes. */
function tryEdit(sheet: LogSheet, edit: Edit): { sheet: LogSheet; inverse: Edit } | null {
  try {
    return applyEdit(deepFreeze(sheet), deepFreeze(edit))
  } catch (error) {
    if (!(error instanceof AppError)) throw error
    expect(['edit-target', 'edit-invalid']).toContain(error.code)
    return null
  }
}

/** Applies what can be applied and logs it, as a store would. */
function runEdits(base: LogSheet, list: readonly Seed[]): { sheet: LogSheet; records: EditRecord[] } {
  let sheet = base
  const records: EditRecord[] = []
  list.forEach((seed, at) => {
    const edit = pickEdit(sheet, seed, `new-${at}`)
    const done = tryEdit(sheet, edit)
    if (!done) return
    sheet = done.sheet
    records.push({ sheetId: 's', version: records.length + 1, opId: `op-${at}`, actor: 'Ann', atUtc: at, op: edit })
  })
  return { sheet, records }
}

const overJson = <Value>(value: Value): unknown => JSON.parse(JSON.stringify(value))

describe('every edit', () => {
  it('starts from sheets that are sound, or these tests would show nothing', () => {
    fc.assert(
      fc.property(sheets, (sheet) => {
        expect(findBroken(sheet)).toEqual([])
      }),
      RUNS,
    )
  })

  it('is tried both ways: each kind is sometimes done and sometimes refused, except those that nothing forbids', () => {
    const done = new Set<string>()
    const refused = new Set<string>()
    for (const [sheet, list] of fc.sample(fc.tuple(sheets, seedLists), { numRuns: 700, seed: 7 })) {
      let current = sheet
      list.forEach((seed, at) => {
        const result = tryEdit(current, pickEdit(current, seed, `new-${at}`))
        ;(result ? done : refused).add(seed.op)
        current = result?.sheet ?? current
      })
    }
    const all = fc.sample(seeds, { numRuns: 3000, seed: 7 }).map((seed) => seed.op)
    const free = ['accept-above', 'set-title', 'set-audience', 'set-music', 'set-people', 'set-mentioned']
    expect([...new Set(all)].filter((op) => !done.has(op))).toEqual([])
    expect([...new Set(all)].filter((op) => !refused.has(op) && !free.includes(op))).toEqual([])
  })

  it('leaves a log sheet that reads back as it is and whose structure is sound', () => {
    fc.assert(
      fc.property(sheets, seedLists, (base, list) => {
        const { sheet } = runEdits(base, list)
        expect(LogSheet.parse(sheet)).toStrictEqual(sheet)
        expect(findBroken(sheet)).toEqual([])
      }),
      RUNS,
    )
  })

  it('is undone exactly by its inverse, and its inverse by the inverse of that, also over JSON', () => {
    fc.assert(
      fc.property(sheets, seedLists, (base, list) => {
        let sheet = base
        list.forEach((seed, at) => {
          const done = tryEdit(sheet, pickEdit(sheet, seed, `new-${at}`))
          if (!done) return
          const undone = applyEdit(done.sheet, Edit.parse(overJson(done.inverse)))
          expect(undone.sheet).toStrictEqual(sheet)
          expect(applyEdit(undone.sheet, undone.inverse).sheet).toStrictEqual(done.sheet)
          sheet = done.sheet
        })
      }),
      RUNS,
    )
  })

  it('never changes the sheet or the edit handed in, done or refused', () => {
    fc.assert(
      fc.property(sheets, seeds, (sheet, seed) => {
        const edit = pickEdit(sheet, seed, 'new')
        const [sheetBefore, editBefore] = [JSON.stringify(sheet), JSON.stringify(edit)]
        tryEdit(sheet, edit)
        expect(JSON.stringify(sheet)).toBe(sheetBefore)
        expect(JSON.stringify(edit)).toBe(editBefore)
      }),
      RUNS,
    )
  })
})

describe('the log of edits', () => {
  it('folds to the sheet, also from text and from a snapshot at any version', () => {
    fc.assert(
      fc.property(sheets, seedLists, fc.nat(12), (base, list, cut) => {
        const { sheet, records } = runEdits(base, list)
        const read = records.map((record) => EditRecord.parse(overJson(record)))
        expect(foldEdits(base, read)).toStrictEqual({ sheet, version: records.length })
        const snapshot = foldEdits(base, read.slice(0, cut))
        expect(foldEdits(snapshot.sheet, read, snapshot.version)).toStrictEqual({ sheet, version: records.length })
      }),
      RUNS,
    )
  })

  it('applies a record once, however often and however late it is sent again', () => {
    fc.assert(
      fc.property(sheets, seedLists, fc.array(fc.tuple(fc.nat(11), fc.nat(11))), (base, list, repeats) => {
        const { sheet, records } = runEdits(base, list)
        const noisy = [...records]
        for (const [from, gap] of repeats) {
          const record = records[from % Math.max(1, records.length)]
          if (!record) continue
          const original = noisy.indexOf(record)
          noisy.splice(original + 1 + (gap % (noisy.length - original)), 0, {
            ...record,
            version: record.version + gap,
          })
        }
        expect(foldEdits(base, noisy)).toStrictEqual({ sheet, version: records.length })
      }),
      RUNS,
    )
  })

  it('undoes back to the start, one edit at a time', () => {
    fc.assert(
      fc.property(sheets, seedLists, (base, list) => {
        const { records } = runEdits(base, list)
        const log = [...records]
        for (const { opId } of records.toReversed()) {
          const op = Edit.parse(overJson(undoEdit(base, log, opId)))
          log.push({ sheetId: 's', version: log.length + 1, opId: `undo-${opId}`, actor: 'Ann', atUtc: 0, op })
        }
        expect(foldEdits(base, log).sheet).toStrictEqual(base)
      }),
      { numRuns: 60 },
    )
  })
})

describe('reading and writing', () => {
  it('gives the same edit back', () => {
    fc.assert(
      fc.property(sheets, seeds, (sheet, seed) => {
        const done = runEdits(sheet, [seed]).records[0]
        if (done) expect(parseEdit(overJson(done.op))).toEqual(done.op)
      }),
      RUNS,
    )
  })

  it('gives the same sheet back, with unknown fields at every level', () => {
    fc.assert(
      fc.property(sheets, (sheet) => {
        const full = LogSheet.parse(withUnknownFields(sheet))
        const read = readLogSheet(writeLogSheet(full))
        expect(read).toStrictEqual(full)
        expect(writeLogSheet(read)).toBe(writeLogSheet(full))
      }),
      RUNS,
    )
  })
})
