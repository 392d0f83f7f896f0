// Drafting again: what people set or declined stays, what nobody touched gives way.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../core/segments/edit-sheet.ts'
import { mergeDraft } from '../../../core/segments/merge-draft.ts'
import type { Edit } from '../../../shared/edit.ts'
import { LogSheet } from '../../../shared/log-sheet.ts'
import type { Mark, Segment } from '../../../shared/log-sheet.ts'
import { buildPrescription } from '../../../shared/log-sheet.ts'
import { buildCaution, buildCue, buildSegment, buildSheet, PROPOSED, span } from '../../helpers/build-sheet.ts'
import { deepFreeze } from '../../helpers/deep-freeze.ts'
import { sheets } from '../../helpers/sheet-arbitraries.ts'

const dose = (reps: number) => buildPrescription({ ...PROPOSED, reps: { min: reps, max: reps } })

/** A drafted segment with a name, one cue of its own and a dose. */
const proposed = (id: string, name: string, startS: number, endS: number, fields: Record<string, unknown> = {}) =>
  buildSegment(id, startS, endS, {
    ...PROPOSED,
    exercise: { name },
    prescription: dose(10),
    cues: [buildCue(`${id}-cue`, startS + 2, PROPOSED)],
    ...fields,
  })

const draft = deepFreeze(
  buildSheet({
    title: 'Class',
    sections: [{ title: 'all', startMs: 0, endMs: 600_000 }],
    segments: [proposed('seg-1', 'seated row', 60, 120), proposed('seg-2', 'heel raise', 130, 200)],
    classCautions: [buildCaution('fall-risk', { ...PROPOSED, atMs: 5000 })],
  }),
)

/** A later draft: the row starts earlier and is dosed anew, the heel raise is called calf raise, a twist is found. */
const fresh = deepFreeze(
  buildSheet({
    title: 'Other title',
    sections: [{ title: 'warm-up', startMs: 0, endMs: 60_000 }],
    mentioned: ['burpee'],
    segments: [
      proposed('seg-1', 'band row', 55, 120, { prescription: dose(12) }),
      proposed('seg-2', 'calf raise', 130, 200, { easier: [{ segmentId: 'seg-3' }] }),
      proposed('seg-3', 'twist', 210, 260, { prescription: buildPrescription({ ...PROPOSED, groupWith: ['seg-1'] }) }),
    ],
    classCautions: [buildCaution('fall-risk', { ...PROPOSED, atMs: 5500, text: 'hold on' })],
  }),
)

const edited = (...edits: Edit[]): LogSheet => edits.reduce((sheet, edit) => applyEdit(sheet, edit).sheet, draft)
const merged = (...edits: Edit[]): LogSheet => mergeDraft(deepFreeze(edited(...edits)), fresh)
const segmentOf = (sheet: LogSheet, id: string): Segment => sheet.segments.find((one) => one.id === id)!
const row = { segmentId: 'seg-1' } as const

describe('drafting again', () => {
  it('of a sheet nobody touched takes the fresh draft, and adds what is new in order of time', () => {
    const sheet = merged()
    expect(sheet.segments).toEqual(fresh.segments)
    expect(sheet.sections).toEqual(fresh.sections)
    expect(sheet.mentioned).toEqual(['burpee'])
    expect(sheet.classCautions).toEqual(fresh.classCautions)
  })

  it('drops what nobody touched and nobody proposes now, with the pointers at it', () => {
    const sheet = mergeDraft(fresh, draft)
    expect(sheet.segments.map((one) => one.id)).toEqual(['seg-1', 'seg-2'])
    expect(sheet.segments.flatMap((one) => one.easier)).toEqual([])
  })

  const kept: [what: string, edits: Edit[], field: keyof Segment][] = [
    ['a name', [{ op: 'rename', ...row, name: 'my row' }], 'exercise'],
    ['an edge', [{ op: 'move-edge', ...row, span: 0, edge: 'start', toMs: 62_000 }], 'spans'],
    ['a dose', [{ op: 'set-dose', ...row, dose: dose(8) }], 'prescription'],
    ['a dose taken away', [{ op: 'set-dose', ...row, dose: null }], 'prescription'],
    ['a dose accepted', [{ op: 'accept', marks: [{ mark: 'dose', ...row }] }], 'prescription'],
    ['a dose declined', [{ op: 'decline', marks: [{ mark: 'dose', ...row }] }], 'prescription'],
    [
      'a field set and then proposed again',
      [
        { op: 'rename', ...row, name: 'my row' },
        { op: 'propose', marks: [{ mark: 'segment', ...row }] },
      ],
      'exercise',
    ],
    ['what an accepted exercise says', [{ op: 'accept', marks: [{ mark: 'segment', ...row }] }], 'spans'],
  ]
  it.each(kept)('keeps %s', (_what, edits, field) => {
    expect(segmentOf(merged(...edits), 'seg-1')[field]).toEqual(segmentOf(edited(...edits), 'seg-1')[field])
  })

  it('takes a fresh dose and fresh cues for an accepted exercise whose own nobody decided on', () => {
    const after = segmentOf(merged({ op: 'accept', marks: [{ mark: 'segment', ...row }] }), 'seg-1')
    expect(after.prescription).toEqual(dose(12))
    expect(after.cues).toEqual(fresh.segments[0]!.cues)
  })

  it('never proposes a declined exercise again, under any name', () => {
    const sheet = merged({ op: 'decline', marks: [{ mark: 'segment', segmentId: 'seg-2' }] })
    expect(segmentOf(sheet, 'seg-2')).toEqual({ ...segmentOf(draft, 'seg-2'), state: 'declined' })
    expect(sheet.segments.map((one) => one.id)).toEqual(['seg-1', 'seg-2', 'seg-3'])
  })

  it('leaves all that stands on a declined exercise as it is', () => {
    const cues = [buildCue('old', 140, PROPOSED)]
    const declined = buildSheet({ segments: [proposed('seg-2', 'calf raise', 130, 200, { state: 'declined', cues })] })
    expect(segmentOf(mergeDraft(declined, fresh), 'seg-2')).toEqual(declined.segments[0])
  })

  it('knows an exercise by its name when its edges moved far', () => {
    const moved = buildSheet({ segments: [buildSegment('mine', 190, 230, { exercise: { name: 'Calf-raise' } })] })
    const sheet = mergeDraft(moved, { ...fresh, segments: [proposed('seg-2', 'calf raise', 130, 200)] })
    expect(sheet.segments.map((one) => [one.id, one.spans])).toEqual([['mine', [span(190, 230)]]])
  })

  it('goes by the very same span before the name', () => {
    const kept = buildSheet({
      segments: [proposed('long', 'calf raise', 100, 200), proposed('short', 'stretch', 130, 200)],
    })
    const again = [proposed('f-1', 'calf raise', 130, 200), proposed('f-2', 'march', 100, 200)]
    const sheet = mergeDraft(kept, { ...fresh, segments: again })
    expect(sheet.segments.map((one) => [one.id, one.exercise.name])).toEqual([
      ['long', 'march'],
      ['short', 'calf raise'],
    ])
  })

  it('does propose another exercise that a long declined one lies over', () => {
    const chat = buildSheet({ segments: [proposed('seg-9', 'chat', 0, 600, { state: 'declined' })] })
    expect(mergeDraft(chat, fresh).segments.map((one) => one.id)).toEqual(['seg-9', 'seg-1', 'seg-2', 'seg-3'])
  })

  const cueCases: [what: string, state: Mark['state'], change: Record<string, unknown>, left: string[]][] = [
    ['an accepted cue is not proposed again', 'accepted', {}, ['own']],
    ['nor a declined one', 'declined', {}, ['own']],
    ['nor one whose time was mended', 'accepted', { startMs: 57_500, endMs: 57_900 }, ['own']],
    ['the same words as another kind are', 'accepted', { kind: 'fault' }, ['own', 'seg-1-cue']],
    ['the same kind at another time is', 'accepted', { startMs: 70_000, endMs: 71_000 }, ['seg-1-cue', 'own']],
  ]
  it.each(cueCases)('cues: %s', (_what, state, change, left) => {
    const own = buildCue('own', 57, { ...PROPOSED, state, ...change })
    const sheet = buildSheet({ segments: [proposed('seg-1', 'band row', 55, 120, { cues: [own] })] })
    expect(segmentOf(mergeDraft(sheet, fresh), 'seg-1').cues.map((cue) => cue.id)).toEqual(left)
  })

  it('keeps a declined caution of the class, and adds none of the same hazard at the same moment', () => {
    const mark = { mark: 'caution', segmentId: null, index: 0, hazard: 'fall-risk' } as const
    expect(merged({ op: 'decline', marks: [mark] }).classCautions).toEqual([
      { ...draft.classCautions[0], state: 'declined' },
    ])
  })

  it('keeps an exercise with a waiver though nobody proposes it now', () => {
    const waiver = { segmentId: 'seg-3', ruleId: 'dose-missing', hazard: null, reason: 'open', by: 'Ann', atUtc: 1 }
    const sheet = mergeDraft({ ...fresh, waivers: [waiver] }, draft)
    expect([sheet.segments.at(-1)?.id, sheet.waivers]).toEqual(['seg-3', [waiver]])
  })

  it('keeps an exercise that a dose set by a person is grouped with, though nobody proposes it now', () => {
    const grouped = buildPrescription({ groupWith: ['seg-3'] })
    const sheet = mergeDraft(applyEdit(fresh, { op: 'set-dose', segmentId: 'seg-2', dose: grouped }).sheet, draft)
    expect(sheet.segments.map((one) => one.id)).toEqual(['seg-1', 'seg-2', 'seg-3'])
    expect(segmentOf(sheet, 'seg-2').prescription).toEqual(grouped)
  })

  it('after a join does not bring the other half back, and keeps its fresh cues', () => {
    const sheet = merged({ op: 'join-segments', ...row, otherId: 'seg-2' })
    expect(sheet.segments.map((one) => one.id)).toEqual(['seg-1', 'seg-3'])
    expect(sheet.segments[0]!.spans).toEqual([span(60, 120), span(130, 200)])
    expect(sheet.segments[0]!.cues.map((cue) => cue.id)).toEqual(['seg-1-cue', 'seg-2-cue'])
  })

  it('after a split sends each fresh cue to its side and does not dose the other', () => {
    const late = buildCue('late', 100, PROPOSED)
    const again = {
      ...fresh,
      segments: fresh.segments.map((one) => (one.id === 'seg-1' ? { ...one, cues: [...one.cues, late] } : one)),
    }
    const sheet = mergeDraft(
      edited({ op: 'split-segment', ...row, atMs: 90_000, newId: 'half', doseTo: 'first' }),
      again,
    )
    expect(
      sheet.segments.map((one) => [one.id, one.cues.map((cue) => cue.id), one.prescription?.reps ?? null]),
    ).toEqual([
      ['seg-1', ['seg-1-cue'], { min: 10, max: 10 }],
      ['half', ['late'], null],
      ['seg-2', ['seg-2-cue'], { min: 10, max: 10 }],
      ['seg-3', ['seg-3-cue'], null],
    ])
  })

  it('gives a fresh exercise or cue whose id is in use another one, and turns its pointers', () => {
    const own = buildSegment('seg-3', 300, 340, { cues: [buildCue('seg-1-cue', 301)] })
    const sheet = mergeDraft(
      edited(
        { op: 'add-segment', segment: { ...own, cues: [] } },
        { op: 'remove-cue', ...row, cueId: 'seg-1-cue' },
        { op: 'add-cue', segmentId: 'seg-3', cue: buildCue('seg-2-cue-2', 301) },
      ),
      fresh,
    )
    expect(sheet.segments.map((one) => one.id)).toEqual(['seg-1', 'seg-2', 'seg-3-2', 'seg-3'])
    expect(segmentOf(sheet, 'seg-2').easier).toEqual([{ segmentId: 'seg-3-2' }])
  })

  it('keeps the fields of the class that a person set, also empty ones, and fills those that say nothing', () => {
    const sheet = merged({ op: 'set-sections', sections: [] }, { op: 'set-audience', audience: [] })
    expect(sheet).toMatchObject({ title: 'Class', sections: [], mentioned: ['burpee'] })
    expect(mergeDraft({ ...draft, title: '' }, fresh).title).toBe('Other title')
  })

  it('keeps the sections of a sheet that no draft made', () => {
    const hand = buildSheet({
      sections: [{ title: 'mine', startMs: 0, endMs: 9 }],
      segments: [buildSegment('a', 1, 5)],
    })
    expect(mergeDraft(hand, fresh).sections).toEqual(hand.sections)
  })
})

describe('drafting again, on any sheets', () => {
  /** The sheet as a draft prints it: all proposed, cues in order of time, no two exercises at one time. */
  const asDraft = (sheet: LogSheet): LogSheet => {
    const propose = <Marked extends Mark>(mark: Marked): Marked => ({ ...mark, ...PROPOSED })
    const start = (one: Segment) => one.spans[0]?.startMs
    const apart = sheet.segments.filter((one, at, all) => all.findIndex((other) => start(other) === start(one)) === at)
    const segments = apart.map((one) => ({
      ...propose(one),
      setByPerson: [],
      prescription: one.prescription && propose(one.prescription),
      cues: one.cues.map(propose).sort((a, b) => a.startMs - b.startMs),
      cautions: one.cautions.map(propose),
    }))
    return { ...sheet, segments, classCautions: sheet.classCautions.map(propose), waivers: [] }
  }
  const decided = (mark: Mark) => mark.origin === 'person' || mark.state !== 'proposed'

  it('keeps every mark a person decided on, and gives a sheet that reads back', () => {
    fc.assert(
      fc.property(sheets, sheets, (current, other) => {
        const result = mergeDraft(deepFreeze(current), deepFreeze(asDraft(other)))
        expect(LogSheet.parse(result)).toStrictEqual(result)
        for (const was of current.segments) {
          const is = result.segments.find((one) => one.id === was.id)
          const marks = [...was.cues, ...was.cautions].filter(decided)
          for (const mark of marks) expect([...(is?.cues ?? []), ...(is?.cautions ?? [])]).toContainEqual(mark)
          for (const name of was.setByPerson as (keyof Segment)[]) expect(is?.[name]).toEqual(was[name])
          if (was.prescription && decided(was.prescription)) expect(is?.prescription).toBeTruthy()
          if (was.state === 'declined') expect(is).toMatchObject({ state: 'declined', spans: was.spans })
        }
        expect(result.waivers).toEqual(current.waivers)
      }),
      { numRuns: 200 },
    )
  })

  it('with the same draft twice changes nothing more', () => {
    fc.assert(
      fc.property(sheets, sheets, (current, other) => {
        const draftOf = asDraft(other)
        const once = mergeDraft(current, draftOf)
        // A sheet on which nothing drafted is left counts as made by hand, so the second time its sections may be noted.
        expect({ ...mergeDraft(once, draftOf), setByPerson: null }).toEqual({ ...once, setByPerson: null })
      }),
      { numRuns: 200 },
    )
  })
})
