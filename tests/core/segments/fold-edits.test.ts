// The log of edits: what it refuses, and what undo leaves alone.
import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../core/segments/edit-sheet.ts'
import { foldEdits, undoEdit } from '../../../core/segments/fold-edits.ts'
import type { Edit, EditRecord } from '../../../shared/edit.ts'
import { buildSegment, buildSheet } from '../../helpers/build-sheet.ts'

const base = buildSheet({ segments: [buildSegment('a', 60, 120), buildSegment('b', 120, 200)] })

/** A log of these edits, versions 1, 2, 3 ... and opIds op-1, op-2, op-3 ... */
const logOf = (...edits: Edit[]): EditRecord[] =>
  edits.map((op, at) => ({ sheetId: 's', version: at + 1, opId: `op-${at + 1}`, actor: 'Ann', atUtc: at, op }))

const rename = (segmentId: string, name: string): Edit => ({ op: 'rename', segmentId, name })
const nameOf = (sheet: typeof base, id: string) => sheet.segments.find((one) => one.id === id)?.exercise.name

describe('fold', () => {
  it('refuses a log with a gap', () => {
    const [first, , third] = logOf(rename('a', 'x'), rename('a', 'y'), rename('a', 'z'))
    expect(() => foldEdits(base, [first!, third!])).toThrow(/from version 1 to 3/)
  })

  it('refuses a log that goes back', () => {
    const [first, second] = logOf(rename('a', 'x'), rename('a', 'y'))
    expect(() => foldEdits(base, [first!, second!, { ...first!, opId: 'other' }])).toThrow(/from version 2 to 1/)
  })

  it('refuses edits of two sheets', () => {
    const [first, second] = logOf(rename('a', 'x'), rename('a', 'y'))
    expect(() => foldEdits(base, [first!, { ...second!, sheetId: 't' }])).toThrow(/two classes/)
  })

  it('of nothing is the base at its version', () => {
    expect(foldEdits(base, [], 7)).toEqual({ sheet: base, version: 7 })
  })
})

describe('undo', () => {
  const undone = (log: EditRecord[], opId: string) =>
    applyEdit(foldEdits(base, log).sheet, undoEdit(base, log, opId)).sheet

  it('refuses an edit that is not in the log', () => {
    expect(() => undoEdit(base, logOf(rename('a', 'x')), 'op-9')).toThrow(/not in the log/)
  })

  it('refuses an edit under a later one on the same exercise, and says which', () => {
    const log = logOf(rename('a', 'squat'), { op: 'set-use', segmentId: 'a', use: 'keep' })
    expect(() => undoEdit(base, log, 'op-1')).toThrow('A later edit changed squat too. Undo that one first.')
  })

  it('refuses an edit under a later one on the same field of the class', () => {
    const log = logOf({ op: 'set-title', title: 'x' }, { op: 'set-title', title: 'y' })
    expect(() => undoEdit(base, log, 'op-1')).toThrow(/title/)
  })

  it('refuses when a later edit said more of the same', () => {
    const people = (more: object): Edit => ({
      op: 'set-people',
      people: [{ name: 'Guest', consent: 'given', scope: null, untilUtc: null, under18: false, ...more }],
    })
    expect(() => undoEdit(base, logOf(people({}), people({ 'x-note': 'by letter' })), 'op-1')).toThrow(/people/)
  })

  it('of an earlier edit keeps later ones on other exercises', () => {
    const sheet = undone(logOf(rename('a', 'squat'), rename('b', 'lunge')), 'op-1')
    expect([nameOf(sheet, 'a'), nameOf(sheet, 'b')]).toEqual(['exercise a', 'lunge'])
  })

  it('of an added exercise keeps one added later', () => {
    const add = (id: string, at: number): Edit => ({ op: 'add-segment', segment: buildSegment(id, at, at + 5) })
    const sheet = undone(logOf(add('c', 210), add('d', 220)), 'op-1')
    expect(sheet.segments.map((one) => one.id)).toEqual(['a', 'b', 'd'])
  })

  it('of a removed exercise puts it back in its place', () => {
    const sheet = undone(logOf({ op: 'remove-segment', segmentId: 'a' }, rename('b', 'lunge')), 'op-1')
    expect(sheet.segments.map((one) => one.exercise.name)).toEqual(['exercise a', 'lunge'])
  })

  it('of a removed exercise puts it back by its time when the one before it is gone too', () => {
    const sheet = undone(
      logOf(
        { op: 'remove-segment', segmentId: 'b' },
        { op: 'add-segment', segment: buildSegment('c', 90, 110) },
        { op: 'remove-segment', segmentId: 'a' },
      ),
      'op-1',
    )
    expect(sheet.segments.map((one) => one.id)).toEqual(['c', 'b'])
  })

  it('goes on past an edit that was undone meanwhile', () => {
    const log = logOf(rename('a', 'squat'), { op: 'set-use', segmentId: 'a', use: 'keep' })
    const undo: EditRecord = { ...log[0]!, version: 3, opId: 'op-3', op: undoEdit(base, log, 'op-2') }
    expect(undone([...log, undo], 'op-1')).toStrictEqual(base)
  })

  it('of an undo does the edit again', () => {
    const log = logOf(rename('a', 'squat'))
    const undo: EditRecord = { ...log[0]!, version: 2, opId: 'op-2', op: undoEdit(base, log, 'op-1') }
    expect(undone([...log, undo], 'op-2')).toStrictEqual(foldEdits(base, log).sheet)
  })

  it('works from a snapshot, and not below it', () => {
    const log = logOf(rename('a', 'squat'), rename('b', 'lunge'))
    const snapshot = foldEdits(base, log.slice(0, 1))
    const op = undoEdit(snapshot.sheet, log, 'op-2', snapshot.version)
    expect(nameOf(applyEdit(foldEdits(base, log).sheet, op).sheet, 'b')).toBe('exercise b')
    expect(() => undoEdit(snapshot.sheet, log, 'op-1', snapshot.version)).toThrow(/not in the log/)
  })
})
