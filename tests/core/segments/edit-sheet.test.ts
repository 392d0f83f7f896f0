// What each edit does, and what it leaves alone.
import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../core/segments/edit-sheet.ts'
import type { Edit } from '../../../shared/edit.ts'
import { buildPrescription } from '../../../shared/log-sheet.ts'
import type { LogSheet, Segment } from '../../../shared/log-sheet.ts'
import { buildCaution, buildCue, buildSegment, buildSheet, PROPOSED, span } from '../../helpers/build-sheet.ts'
import { deepFreeze } from '../../helpers/deep-freeze.ts'

/** A draft of two exercises, nothing agreed yet. */
const draft = deepFreeze(
  buildSheet({
    segments: [
      buildSegment('row', 60, 120, {
        ...PROPOSED,
        exercise: { name: 'seated row', alsoCalled: ['band row'] },
        spans: [span(60, 120), span(300, 330, { inClip: false })],
        cutOuts: [{ startMs: 70_000, endMs: 75_000, why: 'slip' }],
        loop: { startMs: 100_000, endMs: 110_000 },
        prescription: buildPrescription({ ...PROPOSED, sets: { min: 3, max: 3 }, groupWith: ['press'] }),
        cues: [buildCue('cue-1', 62, PROPOSED), buildCue('cue-2', 95, { ...PROPOSED, confidence: 0.4 })],
        cautions: [
          buildCaution('breath-hold', { ...PROPOSED, source: 'spoken', atMs: 98_000 }),
          buildCaution('band-recoil', { source: 'written' }),
        ],
      }),
      buildSegment('press', 130, 200, {
        ...PROPOSED,
        exercise: { name: 'shoulder press' },
        cues: [buildCue('cue-3', 135, PROPOSED)],
        easier: [{ segmentId: 'row' }, { segmentId: 'row', text: 'row with a lighter band' }],
      }),
    ],
    classCautions: [buildCaution('dizziness-rise', { ...PROPOSED, source: 'spoken', scope: 'class', atMs: 9000 })],
    waivers: [
      { segmentId: 'row', ruleId: 'setup-missing', reason: 'seen', by: 'Ann', atUtc: 1 },
      { segmentId: 'press', ruleId: 'setup-missing', reason: 'seen too', by: 'Ann', atUtc: 2 },
      { segmentId: 'press', ruleId: 'dose-missing', reason: 'as it feels', by: 'Ann', atUtc: 3 },
    ],
  }),
)

const edited = (edit: Edit, sheet: LogSheet = draft): LogSheet => applyEdit(sheet, edit).sheet
const segmentOf = (sheet: LogSheet, id: string): Segment => sheet.segments.find((one) => one.id === id)!
const ids = (sheet: LogSheet): string[] => sheet.segments.map((one) => one.id)

describe('a change by hand', () => {
  const cases: [what: string, edit: Edit, field: keyof Segment][] = [
    ['rename', { op: 'rename', segmentId: 'row', name: 'band row' }, 'exercise'],
    ['use', { op: 'set-use', segmentId: 'row', use: 'keep' }, 'use'],
    ['a field', { op: 'set-fields', segmentId: 'row', fields: { view: 'side' } }, 'view'],
    ['an edge', { op: 'move-edge', segmentId: 'row', span: 0, edge: 'end', toMs: 118_000 }, 'spans'],
    ['a span in the clip', { op: 'set-in-clip', segmentId: 'row', span: 1, inClip: true }, 'spans'],
    ['a cut-out', { op: 'remove-cut-out', segmentId: 'row', cutOut: 0 }, 'cutOuts'],
    ['the loop', { op: 'set-loop', segmentId: 'row', loop: null }, 'loop'],
  ]
  it.each(cases)('%s makes the segment a person’s own and notes the field', (_what, edit, field) => {
    const { origin, state, setByPerson, ruleId } = segmentOf(edited(edit), 'row')
    expect({ origin, state, setByPerson }).toEqual({ origin: 'person', state: 'accepted', setByPerson: [field] })
    expect(ruleId, 'what proposed it stays known').toBe('test-rule')
  })

  it('notes a field once, however often it is set', () => {
    const edit: Edit = { op: 'set-use', segmentId: 'row', use: 'keep' }
    expect(segmentOf(edited(edit, edited(edit)), 'row').setByPerson).toEqual(['use'])
  })

  it('of a cue touches that cue only', () => {
    const row = segmentOf(edited({ op: 'change-cue', segmentId: 'row', cueId: 'cue-2', kind: 'fault' }), 'row')
    expect(row.cues[1]).toMatchObject({ kind: 'fault', origin: 'person', state: 'accepted', text: 'words of cue-2' })
    expect(row.cues[0]).toBe(segmentOf(draft, 'row').cues[0])
    expect(row.state).toBe('proposed')
  })

  it('of the dose sets the dose and is noted, also when it takes the dose away', () => {
    const dose = buildPrescription({ ...PROPOSED, reps: { min: 8, max: 8 } })
    const row = segmentOf(edited({ op: 'set-dose', segmentId: 'row', dose }), 'row')
    expect(row.prescription).toEqual({ ...dose, origin: 'person', state: 'accepted' })
    expect(row).toMatchObject({ state: 'proposed', setByPerson: ['prescription'] })
    const without = segmentOf(edited({ op: 'set-dose', segmentId: 'row', dose: null }), 'row')
    expect(without).toMatchObject({ prescription: null, setByPerson: ['prescription'] })
  })

  it('of the class notes the field on the sheet', () => {
    const sheet = edited({ op: 'set-mentioned', mentioned: [] }, edited({ op: 'set-title', title: 'Steady' }))
    expect(sheet).toMatchObject({ title: 'Steady', mentioned: [], setByPerson: ['title', 'mentioned'] })
  })
})

describe('segments', () => {
  it('a new one is a person’s own, whatever it says of itself', () => {
    const sheet = edited({ op: 'add-segment', segment: buildSegment('new', 122, 128, PROPOSED) })
    expect(segmentOf(sheet, 'new')).toMatchObject({ origin: 'person', state: 'accepted' })
  })

  it('a new one stands in order of time', () => {
    expect(ids(edited({ op: 'add-segment', segment: buildSegment('new', 122, 128) }))).toEqual(['row', 'new', 'press'])
    expect(ids(edited({ op: 'add-segment', segment: buildSegment('new', 1, 2, { spans: [] }) })).at(-1)).toBe('new')
    const together = edited({ op: 'add-segment', segment: buildSegment('new', 60, 70) })
    expect(ids(together), 'of two that start together the older one comes first').toEqual(['row', 'new', 'press'])
  })

  it('what the draft proposed stays as declined when it is removed', () => {
    const sheet = edited({ op: 'remove-segment', segmentId: 'row' })
    expect(segmentOf(sheet, 'row')).toEqual({ ...segmentOf(draft, 'row'), state: 'declined' })
    expect(sheet.waivers).toEqual(draft.waivers)
  })

  it('what a person added is gone when it is removed, with its waivers and every pointer at it', () => {
    const own = edited({ op: 'add-segment', segment: buildSegment('own', 122, 128) })
    const pointed = edited(
      {
        op: 'set-fields',
        segmentId: 'press',
        fields: {
          harder: [
            { segmentId: 'own' },
            { segmentId: 'own', text: 'on one leg' },
            { segmentId: 'own', lessonId: 'one-leg' },
          ],
        },
      },
      edited({ op: 'set-dose', segmentId: 'row', dose: buildPrescription({ groupWith: ['own', 'press'] }) }, own),
    )
    const waived = edited(
      { op: 'waive', waiver: { segmentId: 'own', ruleId: 'x', hazard: null, reason: 'y', by: 'z', atUtc: 1 } },
      pointed,
    )
    const { sheet, inverse } = applyEdit(waived, { op: 'remove-segment', segmentId: 'own' })
    expect(ids(sheet)).toEqual(['row', 'press'])
    expect(segmentOf(sheet, 'press').harder).toEqual([{ text: 'on one leg' }, { lessonId: 'one-leg' }])
    expect(segmentOf(sheet, 'row').prescription?.groupWith).toEqual(['press'])
    expect(sheet.waivers).toEqual(draft.waivers)
    expect(edited(inverse, sheet)).toStrictEqual(waived)
  })
})

describe('split', () => {
  const split = (atMs: number, more: Partial<Extract<Edit, { op: 'split-segment' }>> = {}) =>
    edited({ op: 'split-segment', segmentId: 'row', atMs, newId: 'new', doseTo: 'first', ...more })

  it('sends each mark to the side where it starts', () => {
    const sheet = split(90_000)
    const [first, second] = [segmentOf(sheet, 'row'), segmentOf(sheet, 'new')]
    expect(ids(sheet)).toEqual(['row', 'new', 'press'])
    expect(first.spans).toEqual([span(60, 90)])
    expect(second.spans).toEqual([span(90, 120), span(300, 330, { inClip: false })])
    expect([first.cues, second.cues].map((cues) => cues.map((cue) => cue.id))).toEqual([['cue-1'], ['cue-2']])
    expect([first.cutOuts.length, second.cutOuts.length]).toEqual([1, 0])
    expect([first.loop, second.loop]).toEqual([null, segmentOf(draft, 'row').loop])
  })

  it('keeps a written caution on both sides and a spoken one where it is said', () => {
    const sheet = split(90_000)
    expect(segmentOf(sheet, 'row').cautions.map((one) => one.hazard)).toEqual(['band-recoil'])
    expect(segmentOf(sheet, 'new').cautions.map((one) => one.hazard)).toEqual(['breath-hold', 'band-recoil'])
  })

  it('keeps an attached caution on both sides, wherever in the class it was said', () => {
    const attach: Edit = { op: 'attach-class-caution', segmentIds: ['row'], hazard: 'x', text: 'mind', atMs: 65_000 }
    const both = edited(
      { op: 'split-segment', segmentId: 'row', atMs: 90_000, newId: 'new', doseTo: 'first' },
      edited(attach),
    )
    const has = (id: string) => segmentOf(both, id).cautions.some((one) => one.hazard === 'x')
    expect([has('row'), has('new')]).toEqual([true, true])
  })

  it('at the very start of a cue sends the cue to the second', () => {
    expect(segmentOf(split(95_000), 'new').cues.map((cue) => cue.id)).toEqual(['cue-2'])
  })

  it('holds the old in-point and not the new one, and the new part came from no rule', () => {
    const lock: Edit = { op: 'move-edge', segmentId: 'row', span: 0, edge: 'start', toMs: 60_000, lock: true }
    const sheet = edited(
      { op: 'split-segment', segmentId: 'row', atMs: 90_000, newId: 'new', doseTo: 'first' },
      edited(lock),
    )
    expect([segmentOf(sheet, 'row'), segmentOf(sheet, 'new')].map((one) => one.spans[0]?.lockedIn)).toEqual([
      true,
      false,
    ])
    expect(segmentOf(sheet, 'row')).toMatchObject({ confidence: 0.8, ruleId: 'test-rule' })
    expect(segmentOf(sheet, 'new')).toMatchObject({ confidence: null, ruleId: null })
  })

  it('leaves the dose with the first unless said otherwise, and notes that the other has none', () => {
    const first = split(90_000)
    expect([segmentOf(first, 'row').prescription?.sets, segmentOf(first, 'new').prescription]).toEqual([
      { min: 3, max: 3 },
      null,
    ])
    expect(segmentOf(first, 'new').setByPerson).toEqual(['spans', 'prescription'])
    const second = split(90_000, { doseTo: 'second' })
    expect([segmentOf(second, 'row').prescription, segmentOf(second, 'new').prescription?.sets]).toEqual([
      null,
      { min: 3, max: 3 },
    ])
  })

  it('puts the first span of a side in the clip when none of it was', () => {
    expect(segmentOf(split(200_000), 'new').spans).toEqual([span(300, 330)])
  })

  it('cuts a cut-out in two and drops a loop across the moment', () => {
    const sheet = split(72_000)
    expect(segmentOf(sheet, 'row').cutOuts).toEqual([{ startMs: 70_000, endMs: 72_000, why: 'slip' }])
    expect(segmentOf(sheet, 'new').cutOuts).toEqual([{ startMs: 72_000, endMs: 75_000, why: 'slip' }])
    expect(segmentOf(split(105_000), 'new').loop).toBeNull()
  })

  it('gives a new name without the old other names', () => {
    expect(segmentOf(split(90_000, { newName: 'fly' }), 'new').exercise).toEqual({
      name: 'fly',
      alsoCalled: [],
      catalogueId: null,
    })
    expect(segmentOf(split(90_000), 'new').exercise).toEqual(segmentOf(draft, 'row').exercise)
  })

  it('joined again gives the same spans, cut-outs and cues', () => {
    const joined = segmentOf(edited({ op: 'join-segments', segmentId: 'row', otherId: 'new' }, split(72_000)), 'row')
    const { spans, cutOuts, cues } = segmentOf(draft, 'row')
    expect(joined).toMatchObject({ spans, cutOuts, cues })
  })
})

describe('join', () => {
  const joined = edited({ op: 'join-segments', segmentId: 'row', otherId: 'press' })

  it('keeps the main span first, then all spans in order of time', () => {
    expect(segmentOf(joined, 'row').spans).toEqual([span(60, 120), span(130, 200), span(300, 330, { inClip: false })])
    const other = edited({ op: 'join-segments', segmentId: 'press', otherId: 'row' })
    expect(segmentOf(other, 'press').spans).toEqual([span(130, 200), span(60, 120), span(300, 330, { inClip: false })])
  })

  it('keeps both names, all cues, and no pointer at itself', () => {
    const row = segmentOf(joined, 'row')
    expect(row.exercise).toMatchObject({ name: 'seated row', alsoCalled: ['band row', 'shoulder press'] })
    expect(row.cues.map((cue) => cue.id)).toEqual(['cue-1', 'cue-2', 'cue-3'])
    expect(row.easier).toEqual([{ text: 'row with a lighter band' }])
    expect(row.prescription?.groupWith).toEqual([])
  })

  it('keeps a waiver only when both had it', () => {
    expect(joined.waivers).toEqual([draft.waivers[0]])
  })

  it('gives a cue a new id when both use one', () => {
    const sheet = buildSheet({
      segments: [
        buildSegment('a', 1, 5, { cues: [buildCue('x', 1), buildCue('x-2', 2)] }),
        buildSegment('b', 5, 9, { cues: [buildCue('x', 6)] }),
      ],
    })
    const cues = segmentOf(edited({ op: 'join-segments', segmentId: 'a', otherId: 'b' }, sheet), 'a').cues
    expect(cues.map((cue) => cue.id)).toEqual(['x', 'x-2', 'x-3'])
  })

  const spanCases: [what: string, a: unknown[], b: unknown[], expected: unknown][] = [
    ['spans that touch become one', [span(1, 5)], [span(5, 9)], [span(1, 9)]],
    ['spans that overlap become one', [span(3, 7)], [span(1, 4)], [span(1, 7)]],
    [
      'spans that touch but differ in the clip stay two',
      [span(1, 5)],
      [span(5, 9, { inClip: false })],
      [span(1, 5), span(5, 9, { inClip: false })],
    ],
    ['a span that closes a gap makes one of three', [span(1, 3), span(5, 9)], [span(3, 5)], [span(1, 9)]],
    [
      'the in-point stays held where it was',
      [span(5, 9)],
      [span(1, 5, { lockedIn: true })],
      [span(1, 9, { lockedIn: true })],
    ],
  ]
  it.each(spanCases)('%s', (_what, a, b, expected) => {
    const sheet = buildSheet({
      segments: [buildSegment('a', 0, 1, { spans: a }), buildSegment('b', 0, 1, { spans: b })],
    })
    expect(segmentOf(edited({ op: 'join-segments', segmentId: 'a', otherId: 'b' }, sheet), 'a').spans).toEqual(expected)
  })

  it('is refused when spans overlap and only one is in the clip', () => {
    const sheet = buildSheet({
      segments: [buildSegment('a', 1, 5), buildSegment('b', 4, 9, { spans: [span(4, 9, { inClip: false })] })],
    })
    expect(() => edited({ op: 'join-segments', segmentId: 'a', otherId: 'b' }, sheet)).toThrow(/overlap/)
  })

  it('makes one of cut-outs that overlap, with both reasons', () => {
    const cut = (startMs: number, endMs: number, why: string) => [{ startMs, endMs, why }]
    const sheet = buildSheet({
      segments: [
        buildSegment('a', 1, 5, { cutOuts: cut(3000, 4500, 'slip') }),
        buildSegment('b', 4, 9, { cutOuts: cut(4000, 6000, 'cough') }),
      ],
    })
    expect(segmentOf(edited({ op: 'join-segments', segmentId: 'a', otherId: 'b' }, sheet), 'a').cutOuts).toEqual([
      { startMs: 3000, endMs: 6000, why: 'slip; cough' },
    ])
  })

  const doseCases: [what: string, a: unknown, b: unknown, sets: number][] = [
    ['its own dose stays', { sets: { min: 2, max: 2 } }, { sets: { min: 3, max: 3 } }, 2],
    ['the other’s when it has none', null, { sets: { min: 3, max: 3 } }, 3],
    ['the other’s when its own is declined', { state: 'declined' }, { sets: { min: 3, max: 3 } }, 3],
    ['its own when both are declined', { state: 'declined', sets: { min: 2, max: 2 } }, { state: 'declined' }, 2],
    ['its own when the other has none', { state: 'declined', sets: { min: 2, max: 2 } }, null, 2],
  ]
  it.each(doseCases)('of two doses: %s', (_what, a, b, sets) => {
    const sheet = buildSheet({
      segments: [buildSegment('a', 1, 5, { prescription: a }), buildSegment('b', 5, 9, { prescription: b })],
    })
    const joined = segmentOf(edited({ op: 'join-segments', segmentId: 'a', otherId: 'b' }, sheet), 'a')
    expect(joined.prescription?.sets).toEqual({ min: sets, max: sets })
  })

  it('keeps one caution of the same words and moment, and both when said twice', () => {
    const said = (atMs: number) => buildCaution('x', { source: 'spoken', text: 'mind', atMs })
    const sheet = buildSheet({
      segments: [
        buildSegment('a', 1, 5, { cautions: [said(2000)] }),
        buildSegment('b', 5, 9, { cautions: [said(2000), said(6000)] }),
      ],
    })
    const joinedCautions = segmentOf(edited({ op: 'join-segments', segmentId: 'a', otherId: 'b' }, sheet), 'a').cautions
    expect(joinedCautions.map((one) => one.atMs)).toEqual([2000, 6000])
  })

  it('of a left and a right side shows both', () => {
    const sheet = buildSheet({
      segments: [buildSegment('a', 1, 5, { sideShown: 'left' }), buildSegment('b', 5, 9, { sideShown: 'right' })],
    })
    expect(segmentOf(edited({ op: 'join-segments', segmentId: 'a', otherId: 'b' }, sheet), 'a').sideShown).toBe('both')
  })
})

describe('spans', () => {
  it('the first one added is in the clip, further ones are not', () => {
    const add = (startMs: number): Edit => ({
      op: 'add-span',
      segmentId: 'a',
      startMs,
      endMs: startMs + 1000,
      inClip: null,
    })
    const sheet = edited(
      add(5000),
      edited(add(1000), buildSheet({ segments: [buildSegment('a', 0, 1, { spans: [] })] })),
    )
    expect(segmentOf(sheet, 'a').spans).toEqual([span(1, 2), span(5, 6, { inClip: false })])
  })

  it('the next one takes the place of a removed main span in the clip', () => {
    const row = segmentOf(edited({ op: 'remove-span', segmentId: 'row', span: 0 }), 'row')
    expect(row).toMatchObject({ spans: [span(300, 330)], cutOuts: [], loop: null })
  })

  it('an edge can be held and freed', () => {
    const lock = (on: boolean): Edit => ({
      op: 'move-edge',
      segmentId: 'row',
      span: 0,
      edge: 'start',
      toMs: 61_000,
      lock: on,
    })
    const held = edited(lock(true))
    expect(segmentOf(held, 'row').spans[0]).toEqual(span(61, 120, { lockedIn: true }))
    expect(segmentOf(edited(lock(false), held), 'row').spans[0]?.lockedIn).toBe(false)
  })

  it('an edge moved past a cut-out or into the loop takes these away, and undo brings them back', () => {
    const { sheet, inverse } = applyEdit(draft, {
      op: 'move-edge',
      segmentId: 'row',
      span: 0,
      edge: 'start',
      toMs: 105_000,
    })
    expect(segmentOf(sheet, 'row')).toMatchObject({ cutOuts: [], loop: null })
    expect(edited(inverse, sheet)).toStrictEqual(draft)
  })

  it('cut-outs stand in order of time', () => {
    const row = segmentOf(
      edited({ op: 'add-cut-out', segmentId: 'row', startMs: 62_000, endMs: 63_000, why: 'cough' }),
      'row',
    )
    expect(row.cutOuts.map((one) => one.why)).toEqual(['cough', 'slip'])
  })
})

describe('the ends', () => {
  it('a span may reach the very end of the recording, a loop and a cut-out both ends of their span', () => {
    const span: Edit = { op: 'add-span', segmentId: 'press', startMs: 590_000, endMs: 600_000, inClip: null }
    const loop: Edit = { op: 'set-loop', segmentId: 'press', loop: { startMs: 590_000, endMs: 600_000 } }
    const cut: Edit = { op: 'add-cut-out', segmentId: 'press', startMs: 590_000, endMs: 600_000, why: '' }
    const press = segmentOf(edited(cut, edited(loop, edited(span))), 'press')
    expect([press.spans.at(-1), press.loop, press.cutOuts[0]]).toMatchObject(
      Array(3).fill({ startMs: 590_000, endMs: 600_000 }),
    )
  })

  it('a recording is named as it is, though a draft reaches a little past its end', () => {
    const over = buildSheet({ segments: [buildSegment('a', 590, 600.4)] })
    const source = { sha256: 'ab', durationMs: over.durationMs }
    expect(edited({ op: 'set-source', source }, over).source).toEqual(source)
  })
})

describe('cues and cautions', () => {
  it('a cue stands in order of time, also after it is moved', () => {
    const added = edited({ op: 'add-cue', segmentId: 'row', cue: buildCue('own', 80, PROPOSED) })
    expect(segmentOf(added, 'row').cues.map((cue) => cue.id)).toEqual(['cue-1', 'own', 'cue-2'])
    expect(segmentOf(added, 'row').cues[1]).toMatchObject({ origin: 'person', state: 'accepted' })
    const moved = edited({ op: 'change-cue', segmentId: 'row', cueId: 'cue-1', startMs: 99_000, endMs: 99_500 }, added)
    expect(segmentOf(moved, 'row').cues.map((cue) => cue.id)).toEqual(['own', 'cue-2', 'cue-1'])
    const together = edited({ op: 'add-cue', segmentId: 'row', cue: buildCue('own', 62) })
    expect(segmentOf(together, 'row').cues.map((cue) => cue.id)).toEqual(['cue-1', 'own', 'cue-2'])
  })

  it('a removed cue is declined when the draft proposed it, else gone', () => {
    const own = edited({ op: 'add-cue', segmentId: 'row', cue: buildCue('own', 80) })
    const remove = (cueId: string) => segmentOf(edited({ op: 'remove-cue', segmentId: 'row', cueId }, own), 'row').cues
    expect(remove('own').map((cue) => cue.id)).toEqual(['cue-1', 'cue-2'])
    expect(remove('cue-1')[0]).toEqual({ ...segmentOf(draft, 'row').cues[0], state: 'declined' })
    const changed = edited({ op: 'change-cue', segmentId: 'row', cueId: 'cue-1', text: 'mine' })
    const after = edited({ op: 'remove-cue', segmentId: 'row', cueId: 'cue-1' }, changed)
    expect(segmentOf(after, 'row').cues[0], 'also when a person changed it since').toMatchObject({ state: 'declined' })
  })

  it('a removed caution likewise, on a segment and on the class', () => {
    const remove = (segmentId: string | null, index: number, hazard: string) =>
      edited({ op: 'remove-caution', segmentId, index, hazard })
    expect(segmentOf(remove('row', 1, 'band-recoil'), 'row').cautions.map((one) => one.hazard)).toEqual(['breath-hold'])
    expect(segmentOf(remove('row', 0, 'breath-hold'), 'row').cautions[0]?.state).toBe('declined')
    expect(remove(null, 0, 'dizziness-rise').classCautions[0]?.state).toBe('declined')
  })

  it('one added to the class is of the class', () => {
    const sheet = edited({ op: 'add-caution', segmentId: null, caution: buildCaution('fall-risk', PROPOSED) })
    expect(sheet.classCautions[1]).toMatchObject({ scope: 'class', origin: 'person', state: 'accepted' })
  })

  it('a changed caution keeps what is not named', () => {
    const sheet = edited({ op: 'change-caution', segmentId: null, index: 0, hazard: 'dizziness-rise', atMs: null })
    expect(sheet.classCautions[0]).toEqual({
      ...draft.classCautions[0],
      atMs: null,
      origin: 'person',
      state: 'accepted',
    })
  })

  it('one said once in the class is written on many lessons, with its words and moment, and never twice', () => {
    const { hazard, text, atMs } = draft.classCautions[0]!
    const attach: Edit = { op: 'attach-class-caution', segmentIds: ['row', 'press', 'row'], hazard, text, atMs }
    const sheet = edited(attach, edited(attach))
    for (const segment of sheet.segments) {
      expect(segment.cautions.filter((one) => one.hazard === hazard)).toEqual([
        {
          hazard,
          text,
          atMs,
          scope: 'class',
          source: 'written',
          origin: 'person',
          state: 'accepted',
          confidence: null,
          ruleId: null,
        },
      ])
    }
  })
})

describe('a caution attached before and declined since', () => {
  it('is attached anew', () => {
    const attach: Edit = { op: 'attach-class-caution', segmentIds: ['press'], hazard: 'x', text: 'mind', atMs: null }
    const mark = { mark: 'caution', segmentId: 'press', index: 0, hazard: 'x' } as const
    const sheet = edited(attach, edited({ op: 'decline', marks: [mark] }, edited(attach)))
    expect(segmentOf(sheet, 'press').cautions.map((one) => one.state)).toEqual(['declined', 'accepted'])
  })
})

describe('states', () => {
  it('many marks change at once; where they came from stays', () => {
    const sheet = edited({
      op: 'accept',
      marks: [
        { mark: 'segment', segmentId: 'row' },
        { mark: 'dose', segmentId: 'row' },
        { mark: 'cue', segmentId: 'row', cueId: 'cue-2' },
        { mark: 'caution', segmentId: null, index: 0, hazard: 'dizziness-rise' },
      ],
    })
    const row = segmentOf(sheet, 'row')
    const marks = [row, row.prescription, row.cues[1], sheet.classCautions[0]]
    expect(marks).toMatchObject(Array(4).fill({ origin: 'draft', state: 'accepted', ruleId: 'test-rule' }))
    expect(row.cues[0]?.state).toBe('proposed')
    expect(row.setByPerson).toEqual([])
  })

  it('a declined mark stays on the sheet and can be proposed again', () => {
    const mark = [{ mark: 'cue', segmentId: 'row', cueId: 'cue-1' } as const]
    const declined = edited({ op: 'decline', marks: mark })
    expect(segmentOf(declined, 'row').cues[0]?.state).toBe('declined')
    expect(edited({ op: 'propose', marks: mark }, declined)).toStrictEqual(draft)
  })

  it('of a dose holds for every dose in it', () => {
    const dose = buildPrescription({
      ...PROPOSED,
      then: [buildPrescription(PROPOSED)],
      byLevel: [{ level: 'new', dose: buildPrescription(PROPOSED) }],
    })
    const sheet = buildSheet({ segments: [buildSegment('a', 1, 5, { prescription: dose })] })
    const after = segmentOf(
      edited({ op: 'decline', marks: [{ mark: 'dose', segmentId: 'a' }] }, sheet),
      'a',
    ).prescription
    expect([after, after?.then[0], after?.byLevel[0]?.dose].map((one) => one?.state)).toEqual(Array(3).fill('declined'))
  })

  it('all above a confidence are accepted: those at it too, not those below, without one, or declined', () => {
    const declined = edited({ op: 'decline', marks: [{ mark: 'cue', segmentId: 'press', cueId: 'cue-3' }] })
    const sheet = edited({ op: 'accept-above', confidence: 0.8, segmentIds: null }, declined)
    const states = sheet.segments.flatMap((one) => one.cues.map((cue) => `${cue.id} ${cue.state}`))
    expect(states).toEqual(['cue-1 accepted', 'cue-2 proposed', 'cue-3 declined'])
    expect(sheet.classCautions[0]?.state).toBe('accepted')
    const one = edited({ op: 'accept-above', confidence: 0, segmentIds: ['press'] })
    expect(one.classCautions[0]?.state).toBe('proposed')
    expect(segmentOf(one, 'row')).toBe(segmentOf(draft, 'row'))
  })
})

describe('waivers and the class', () => {
  it('a waiver is added with its reason and taken back', () => {
    const waiver = {
      segmentId: 'row',
      ruleId: 'caution-missing',
      hazard: 'fall-risk',
      reason: 'seated',
      by: 'Ann',
      atUtc: 5,
    }
    const waived = edited({ op: 'waive', waiver })
    expect(waived.waivers.at(-1)).toEqual(waiver)
    expect(
      edited({ op: 'unwaive', ...{ segmentId: 'row', ruleId: 'caution-missing', hazard: 'fall-risk' } }, waived),
    ).toStrictEqual(draft)
  })

  it('the recording sets the length of the class', () => {
    const source = { sha256: 'ab', durationMs: 700_000 }
    expect(edited({ op: 'set-source', source })).toMatchObject({
      source,
      durationMs: 700_000,
      setByPerson: ['source', 'durationMs'],
    })
  })

  it('the sound recorded apart is known with its place, and the film’s own leaves nothing behind', () => {
    const media = {
      id: 'collar',
      role: 'sound' as const,
      label: '',
      sha256: 'x',
      startMs: -5,
      durationMs: 1,
      driftPpm: 2,
    }
    const sound = { mediaId: 'collar', track: null, gainDb: -3 }
    const chosen = edited({ op: 'set-sound', sound, media })
    expect(chosen).toMatchObject({ publishedSound: sound, media: [media] })
    expect(edited({ op: 'set-sound', sound, media: { ...media, startMs: 7 } }, chosen).media).toHaveLength(1)
    expect('publishedSound' in edited({ op: 'set-sound', sound: null }, chosen)).toBe(false)
  })

  it('sections stand in order of time', () => {
    const sections = [
      { title: 'two', startMs: 10, endMs: 20 },
      { title: 'one', startMs: 0, endMs: 10 },
    ]
    expect(edited({ op: 'set-sections', sections }).sections.map((one) => one.title)).toEqual(['one', 'two'])
  })
})
