// Log sheets: appended edits, older bases, repeats, conflicts, undo, drafting again.
import { describe, expect, it } from 'vitest'
import type { Edit } from '../../../shared/edit.ts'
import type { LogSheet } from '../../../shared/log-sheet.ts'
import { buildPrescription } from '../../../shared/log-sheet.ts'
import type { Store } from '../../../server/store/open-store.ts'
import { SheetConflict } from '../../../server/store/rebase-edits.ts'
import { SNAPSHOT_EVERY } from '../../../server/store/write-edits.ts'
import { buildCaution, buildCue, buildSegment, buildSheet, PROPOSED, span } from '../../helpers/build-sheet.ts'
import { ANN } from '../../helpers/store-engines.ts'
import type { StoreMaker } from '../../helpers/store-engines.ts'

const DOSE = (sets: number) => buildPrescription({ sets: { min: sets, max: sets } })

/** Two exercises with everything an edit can point at by its place. */
function startSheet(): LogSheet {
  return buildSheet({
    title: 'Chair class',
    classCautions: [buildCaution('dizziness-rise')],
    segments: [
      buildSegment('a', 0, 60, {
        ...PROPOSED,
        spans: [span(0, 60), span(70, 80, { inClip: false }), span(90, 100, { inClip: false })],
        cutOuts: [
          { startMs: 1000, endMs: 2000 },
          { startMs: 5000, endMs: 6000 },
        ],
        prescription: { ...DOSE(1), ...PROPOSED },
        cues: [buildCue('a-1', 5), buildCue('a-2', 10)],
        cautions: [buildCaution('fall-risk', { text: 'one' }), buildCaution('fall-risk', { text: 'two' })],
      }),
      buildSegment('b', 120, 180),
    ],
  })
}

/** Reads after another person's edit: [what it is, the other's edit, an edit made before it was seen]. */
const PASS: [string, Edit, Edit][] = [
  ['another exercise', { op: 'rename', segmentId: 'b', name: 'x' }, { op: 'rename', segmentId: 'a', name: 'y' }],
  ['another field', { op: 'set-use', segmentId: 'a', use: 'keep' }, { op: 'set-dose', segmentId: 'a', dose: DOSE(2) }],
  [
    'one more cue',
    { op: 'add-cue', segmentId: 'a', cue: buildCue('n1', 7) },
    { op: 'add-cue', segmentId: 'a', cue: buildCue('n2', 8) },
  ],
  [
    'one more caution',
    { op: 'add-caution', segmentId: 'a', caution: buildCaution('knee') },
    { op: 'add-caution', segmentId: 'a', caution: buildCaution('wrist') },
  ],
  [
    'another cue',
    { op: 'remove-cue', segmentId: 'a', cueId: 'a-1' },
    { op: 'change-cue', segmentId: 'a', cueId: 'a-2', text: 'z' },
  ],
  [
    'a span before those moved',
    { op: 'remove-span', segmentId: 'a', span: 2 },
    { op: 'set-in-clip', segmentId: 'a', span: 1, inClip: true },
  ],
  [
    'a dose, accepted elsewhere',
    { op: 'accept', marks: [{ mark: 'cue', segmentId: 'a', cueId: 'a-1' }] },
    { op: 'accept', marks: [{ mark: 'dose', segmentId: 'a' }] },
  ],
  ['the class, beside an exercise', { op: 'set-title', title: 'x' }, { op: 'remove-segment', segmentId: 'b' }],
]

const CLASH: [string, Edit, Edit][] = [
  [
    'the same dose',
    { op: 'set-dose', segmentId: 'a', dose: DOSE(2) },
    { op: 'set-dose', segmentId: 'a', dose: DOSE(3) },
  ],
  ['the same name', { op: 'rename', segmentId: 'a', name: 'x' }, { op: 'rename', segmentId: 'a', name: 'y' }],
  ['the same title', { op: 'set-title', title: 'x' }, { op: 'set-title', title: 'y' }],
  ['an exercise that is gone', { op: 'remove-segment', segmentId: 'b' }, { op: 'rename', segmentId: 'b', name: 'y' }],
  ['an exercise changed since', { op: 'rename', segmentId: 'b', name: 'x' }, { op: 'remove-segment', segmentId: 'b' }],
  [
    'a span that took another place',
    { op: 'remove-span', segmentId: 'a', span: 0 },
    { op: 'move-edge', segmentId: 'a', span: 1, edge: 'end', toMs: 79_000 },
  ],
  [
    'a cut-out that took another place',
    { op: 'remove-cut-out', segmentId: 'a', cutOut: 0 },
    { op: 'remove-cut-out', segmentId: 'a', cutOut: 1 },
  ],
  [
    'a caution that took another place',
    { op: 'remove-caution', segmentId: 'a', index: 0, hazard: 'fall-risk' },
    { op: 'change-caution', segmentId: 'a', index: 0, hazard: 'fall-risk', text: 'mine' },
  ],
  [
    'a cue that is gone',
    { op: 'remove-cue', segmentId: 'a', cueId: 'a-1' },
    { op: 'change-cue', segmentId: 'a', cueId: 'a-1', text: 'z' },
  ],
  [
    'a dose corrected before it was declined',
    { op: 'set-dose', segmentId: 'a', dose: DOSE(2) },
    { op: 'decline', marks: [{ mark: 'dose', segmentId: 'a' }] },
  ],
  [
    'a span over one added since',
    { op: 'add-span', segmentId: 'a', startMs: 101_000, endMs: 110_000, inClip: null },
    { op: 'add-span', segmentId: 'a', startMs: 105_000, endMs: 115_000, inClip: null },
  ],
]

const TITLE = (title: string): Edit => ({ op: 'set-title', title })

async function addSheet(store: Store, sheet: LogSheet = startSheet()): Promise<string> {
  const recording = await store.recordings.add({ title: 'Monday' }, ANN)
  return (await store.sheets.add({ recordingId: recording.id, sheet, actor: ANN })).id
}

export function sheetFacts(stores: StoreMaker): void {
  describe('sheets', () => {
    it('are one a recording', async () => {
      const store = await stores.open()
      const { id: recordingId } = await store.recordings.add({ title: 'Monday' }, ANN)
      expect(await store.sheets.readOf(recordingId)).toBeNull()
      const added = await store.sheets.add({ recordingId, sheet: startSheet(), actor: ANN })
      const second = store.sheets.add({ recordingId, sheet: startSheet(), actor: ANN })
      await expect(second).rejects.toMatchObject({ code: 'row-exists' })
      expect(await store.sheets.readOf(recordingId)).toEqual(added)
      expect(added).toMatchObject({ version: 0, sheet: startSheet() })
    })

    it('refuse an edit that breaks the sheet, with all of its batch', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const edits = [
        { opId: 'one', op: TITLE('kept?') },
        { opId: 'two', op: { op: 'set-use' as const, segmentId: 'nobody', use: 'keep' as const } },
      ]
      await expect(store.sheets.appendEdits({ sheetId, baseVersion: 0, edits, actor: ANN })).rejects.toMatchObject({
        code: 'edit-target',
      })
      expect(await store.sheets.read(sheetId)).toMatchObject({ version: 0, sheet: { title: 'Chair class' } })
      expect(await store.sheets.readEdits(sheetId, 0)).toEqual([])
      expect(await store.audit.list({ object: { type: 'sheet', id: sheetId } })).toMatchObject([
        { action: 'sheet.add' },
      ])
    })

    it('refuse a restore from outside: only undo writes one', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const op: Edit = { op: 'restore', put: [], remove: [], fields: { title: 'x' }, drop: [] }
      const call = store.sheets.appendEdits({ sheetId, baseVersion: 0, edits: [{ opId: 'one', op }], actor: ANN })
      await expect(call).rejects.toMatchObject({ code: 'edit-invalid' })
    })

    it('grow by one version an edit', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const edits = ['x', 'y'].map((title) => ({ opId: title, op: TITLE(title) }))
      const done = await store.sheets.appendEdits({ sheetId, baseVersion: 0, edits, actor: ANN })
      expect(done).toMatchObject({ version: 2, sheet: { title: 'y' } })
      expect(done.records).toEqual(await store.sheets.readEdits(sheetId, 0))
      expect(done.records.map(({ version, opId, actor }) => [version, opId, actor])).toEqual([
        [1, 'x', ANN.id],
        [2, 'y', ANN.id],
      ])
      expect(await store.sheets.read(sheetId, 1)).toMatchObject({ version: 1, sheet: { title: 'x' } })
      await expect(store.sheets.read(sheetId, 3)).rejects.toMatchObject({ code: 'row-missing' })
    })

    it('give a repeated batch its former answer and change nothing', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const batch = {
        sheetId,
        baseVersion: 0,
        edits: ['x', 'y'].map((title) => ({ opId: title, op: TITLE(title) })),
        actor: ANN,
      }
      const first = await store.sheets.appendEdits(batch)
      const audited = await store.audit.list()
      expect(await store.sheets.appendEdits(batch)).toEqual(first)
      expect(await store.audit.list()).toEqual(audited)
      const longer = { ...batch, edits: [...batch.edits, { opId: 'z', op: TITLE('z') }] }
      const more = await store.sheets.appendEdits(longer)
      expect(more).toMatchObject({ version: 3, sheet: { title: 'z' } })
      expect(more.records.map((record) => record.version)).toEqual([1, 2, 3])
    })

    it('count an edit once that stands twice in a batch', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const edit = { opId: 'x', op: TITLE('x') }
      const done = await store.sheets.appendEdits({ sheetId, baseVersion: 0, edits: [edit, edit], actor: ANN })
      expect(done.version).toBe(1)
      expect(done.records.map((record) => record.version)).toEqual([1, 1])
    })

    it('refuse another edit under a known opId, before or within the batch', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const x = { opId: 'x', op: TITLE('x') }
      const other = { opId: 'x', op: TITLE('other') }
      const append = (...edits: (typeof x)[]) =>
        store.sheets.appendEdits({ sheetId, baseVersion: 0, edits, actor: ANN })
      await expect(append(x, other)).rejects.toMatchObject({ code: 'edit-reused' })
      await append(x)
      await expect(append(other)).rejects.toMatchObject({ code: 'edit-reused' })
      expect(await store.sheets.read(sheetId)).toMatchObject({ version: 1, sheet: { title: 'x' } })
    })

    it('refuse edits made on a version that is not there, as after a restored backup', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const call = store.sheets.appendEdits({
        sheetId,
        baseVersion: 7,
        edits: [{ opId: 'x', op: TITLE('x') }],
        actor: ANN,
      })
      await expect(call).rejects.toMatchObject({ code: 'sheet-conflict', sheetVersion: 0, opId: null })
    })

    it.each(PASS)('take an edit made on an older sheet: %s', async (_name, theirs, mine) => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      await store.sheets.appendEdits({ sheetId, baseVersion: 0, edits: [{ opId: 't', op: theirs }], actor: ANN })
      const done = await store.sheets.appendEdits({
        sheetId,
        baseVersion: 0,
        edits: [{ opId: 'm', op: mine }],
        actor: ANN,
      })
      expect(done).toMatchObject({ version: 2, records: [{ opId: 'm', version: 2 }] })
      expect(done.sheet).toEqual((await store.sheets.read(sheetId)).sheet)
    })

    it.each(CLASH)('refuse an edit made on an older sheet: %s', async (_name, theirs, mine) => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const after = await store.sheets.appendEdits({
        sheetId,
        baseVersion: 0,
        edits: [{ opId: 't', op: theirs }],
        actor: ANN,
      })
      const edits = [
        { opId: 'before', op: { op: 'set-music' as const, music: 'own' as const } },
        { opId: 'm', op: mine },
      ]
      const error: unknown = await store.sheets
        .appendEdits({ sheetId, baseVersion: 0, edits, actor: ANN })
        .catch((cause: unknown) => cause)
      expect(error).toBeInstanceOf(SheetConflict)
      expect(error).toMatchObject({ code: 'sheet-conflict', sheetId, sheetVersion: 1, opId: 'm' })
      expect(await store.sheets.read(sheetId)).toMatchObject({ version: 1, sheet: after.sheet })
    })

    it('take a batch on an older sheet whose later edits rest on its earlier ones', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      await store.sheets.appendEdits({
        sheetId,
        baseVersion: 0,
        edits: [{ opId: 't', op: TITLE('theirs') }],
        actor: ANN,
      })
      const edits: { opId: string; op: Edit }[] = [
        { opId: '1', op: { op: 'remove-span', segmentId: 'a', span: 0 } },
        { opId: '2', op: { op: 'move-edge', segmentId: 'a', span: 0, edge: 'end', toMs: 79_000 } },
        { opId: '3', op: { op: 'set-dose', segmentId: 'a', dose: DOSE(2) } },
        { opId: '4', op: { op: 'set-dose', segmentId: 'a', dose: DOSE(3) } },
      ]
      const done = await store.sheets.appendEdits({ sheetId, baseVersion: 0, edits, actor: ANN })
      expect(done.version).toBe(5)
      expect(done.sheet.segments[0]).toMatchObject({
        spans: [{ startMs: 70_000, endMs: 79_000 }, { startMs: 90_000 }],
        prescription: { sets: { min: 3, max: 3 } },
      })
    })

    it('take the rest of a batch of which the first part had arrived before the connection was lost', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const dose = { opId: '1', op: { op: 'set-dose' as const, segmentId: 'a', dose: DOSE(2) } }
      await store.sheets.appendEdits({ sheetId, baseVersion: 0, edits: [dose], actor: ANN })
      const next = { opId: '2', op: { op: 'set-dose' as const, segmentId: 'a', dose: DOSE(3) } }
      const done = await store.sheets.appendEdits({ sheetId, baseVersion: 0, edits: [dose, next], actor: ANN })
      expect(done).toMatchObject({ version: 2, records: [{ version: 1 }, { version: 2 }] })
    })

    it('are undone by a new edit, which repeats like any other and can be undone itself', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const edits = [
        { opId: 'dose', op: { op: 'set-dose' as const, segmentId: 'a', dose: DOSE(2) } },
        { opId: 'title', op: TITLE('x') },
      ]
      await store.sheets.appendEdits({ sheetId, baseVersion: 0, edits, actor: ANN })
      const undone = await store.sheets.undoEdit({ sheetId, opId: 'dose', undoId: 'u1', actor: ANN })
      expect(undone.version).toBe(3)
      expect(undone.sheet).toEqual({ ...startSheet(), title: 'x', setByPerson: ['title'] })
      expect(await store.sheets.undoEdit({ sheetId, opId: 'dose', undoId: 'u1', actor: ANN })).toEqual(undone)
      const back = await store.sheets.undoEdit({ sheetId, opId: 'u1', undoId: 'u2', actor: ANN })
      expect(back.sheet.segments[0]?.prescription?.sets).toEqual({ min: 2, max: 2 })
    })

    it('refuse to undo what is not in the log, what a later edit changed, and under an opId of another edit', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const edits = ['x', 'y'].map((title) => ({ opId: title, op: TITLE(title) }))
      await store.sheets.appendEdits({ sheetId, baseVersion: 0, edits, actor: ANN })
      const undo = (opId: string, undoId: string) => store.sheets.undoEdit({ sheetId, opId, undoId, actor: ANN })
      await expect(undo('none', 'u')).rejects.toMatchObject({ code: 'edit-target' })
      await expect(undo('x', 'u')).rejects.toMatchObject({ code: 'edit-invalid' })
      await expect(undo('y', 'x')).rejects.toMatchObject({ code: 'edit-reused' })
    })

    it('take a sheet drafted again as one edit that can be undone', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const build = (sheet: LogSheet): LogSheet => ({
        ...sheet,
        mentioned: ['plank'],
        segments: [...sheet.segments.slice(1), buildSegment('c', 200, 260)],
      })
      const done = await store.sheets.rebuild({ sheetId, opId: 'draft', actor: ANN, build })
      expect(done).toMatchObject({ version: 1, sheet: build(startSheet()) })
      expect(await store.sheets.rebuild({ sheetId, opId: 'draft', actor: ANN, build })).toEqual(done)
      const undone = await store.sheets.undoEdit({ sheetId, opId: 'draft', undoId: 'u', actor: ANN })
      expect(undone.sheet).toEqual(startSheet())
      const same = await store.sheets.rebuild({ sheetId, opId: 'again', actor: ANN, build: (sheet) => sheet })
      expect(same).toMatchObject({ version: 2, records: [] })
    })

    it('keep fields that nobody knows, at every depth', async () => {
      const store = await stores.open()
      const known = startSheet()
      const sheet = {
        ...known,
        'x-own': { deep: [1, null] },
        segments: known.segments.map((one) => ({ ...one, 'x-own': 1 })),
      }
      const sheetId = await addSheet(store, sheet)
      const done = await store.sheets.appendEdits({
        sheetId,
        baseVersion: 0,
        edits: [{ opId: 'x', op: TITLE('x') }],
        actor: ANN,
      })
      expect(done.sheet).toMatchObject({ 'x-own': { deep: [1, null] }, segments: [{ 'x-own': 1 }, { 'x-own': 1 }] })
    })

    it('read the same from snapshots and from the first draft on, at every version', async () => {
      const store = await stores.open()
      const sheetId = await addSheet(store)
      const titles = Array.from({ length: 2 * SNAPSHOT_EVERY + 3 }, (_, index) => `title ${index + 1}`)
      for (const [index, title] of titles.entries()) {
        const edits = [{ opId: title, op: TITLE(title) }]
        await store.sheets.appendEdits({ sheetId, baseVersion: index, edits, actor: ANN })
      }
      for (const version of [1, SNAPSHOT_EVERY - 1, SNAPSHOT_EVERY, SNAPSHOT_EVERY + 1, titles.length]) {
        expect(await store.sheets.read(sheetId, version)).toMatchObject({
          version,
          sheet: { title: `title ${version}` },
        })
      }
      expect((await store.sheets.readEdits(sheetId, SNAPSHOT_EVERY)).map((record) => record.opId)).toEqual(
        titles.slice(SNAPSHOT_EVERY),
      )
    })

    it('hold every acknowledged edit of many writers at once, each once', async () => {
      const place = await stores.newPlace()
      const writers = await Promise.all([1, 2].map(() => stores.open(place)))
      const store = writers[0] as Store
      const sheetId = await addSheet(store)
      const names = Array.from({ length: 12 }, (_, index) => `w${index}`)
      const acknowledged = await Promise.all(
        names.map(async (name, index) => {
          const desk = writers[index % 2] as Store
          const opIds: string[] = []
          for (let number = 0; number < 5; number += 1) {
            const opId = `${name}-${number}`
            const cue = buildCue(opId, index)
            const op: Edit = {
              op: 'add-cue',
              segmentId: index % 3 === 0 ? 'a' : 'b',
              cue: { ...cue, startMs: 130_000, endMs: 131_000 },
            }
            await desk.sheets.appendEdits({ sheetId, baseVersion: 0, edits: [{ opId, op }], actor: ANN })
            opIds.push(opId)
          }
          return opIds
        }),
      )
      const records = await store.sheets.readEdits(sheetId, 0)
      expect(records.map((record) => record.opId).sort()).toEqual(acknowledged.flat().sort())
      expect(records.map((record) => record.version)).toEqual(records.map((_, index) => index + 1))
      const { sheet } = await store.sheets.read(sheetId)
      expect(sheet.segments.flatMap((one) => one.cues)).toHaveLength(2 + 60)
    })
  })
}
