// What the class page and the checks page are built of: parts of a sheet in words, without a browser.
import { describe, expect, it } from 'vitest'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { CLASS_WORDS } from '../../server/routes/class-words.ts'
import { buildChecksParts } from '../../views/pages/checks.ts'
import { placeAddress } from '../../views/pages/class-input.ts'
import type { WorkInput } from '../../views/pages/class-input.ts'
import { buildClassPage, buildClassParts, sectionLines } from '../../views/pages/class.ts'
import { nameChanges, nameEdit } from '../../views/pages/edit-names.ts'
import { explainMark } from '../../views/pages/explain-mark.ts'
import { buildCaution, buildCue, buildSegment, buildSheet, PROPOSED } from '../helpers/build-sheet.ts'

const workOf = (sheet: LogSheet, more: Partial<WorkInput> = {}): WorkInput => ({
  sheetId: 'sheet',
  version: 3,
  sheet,
  report: checkSheet(sheet, { nowUtc: 0, captions: true }),
  covered: '1 of 2 cautions covered',
  needs: [],
  published: new Set(),
  undo: null,
  redo: null,
  ...more,
})
const input = {
  recordingId: 'rec',
  title: 'Monday',
  durationMs: 600_000,
  film: null,
  lines: [],
  isTyped: false,
  openId: null,
}
const partsOf = (sheet: LogSheet, openId: string | null = null, more: Partial<WorkInput> = {}) =>
  buildClassParts({ ...input, openId, words: CLASS_WORDS }, workOf(sheet, more))

describe('a class that is not ready', () => {
  it('without a draft says nothing of exercises', () => {
    const page = buildClassPage({ ...input, work: null, words: CLASS_WORDS })
    expect(page).toMatchObject({
      title: 'Monday',
      film: null,
      parts: null,
      filmNote: 'The film of this class is not here yet.',
    })
  })

  it('without an exercise opens none', () => {
    expect(partsOf(buildSheet())).toMatchObject({ openId: '', segment: null, list: { count: '0 exercises' } })
  })

  it('whose preview is not begun shows no film; one that grows is shown', () => {
    const film = { mediaId: 'm', frameMs: 40, hasSpeech: true }
    const pageOf = (preview: 'none' | 'growing' | null) =>
      buildClassPage({ ...input, film: { ...film, preview }, work: null, words: CLASS_WORDS }).film
    expect(pageOf('none')).toBeNull()
    expect(pageOf('growing')?.src).toBe('/recordings/rec/preview')
    expect(pageOf(null)?.src).toBe('/recordings/rec/media/m')
  })
})

describe('typing what is said', () => {
  const film = { mediaId: 'm', frameMs: 40, preview: null }
  const line = { startMs: 1000, endMs: 2000, text: 'sit tall', speaker: null, words: [] }
  const typingOf = (hasSpeech: boolean, lines: (typeof line)[], isTyped: boolean) =>
    buildClassPage({ ...input, film: { ...film, hasSpeech }, lines, isTyped, work: null, words: CLASS_WORDS }).typing
  it.each([
    ['waits for the sound', false, [], false, 'waits'],
    ['begins where nothing is said yet', true, [], false, 'ready'],
    ['goes on where it was typed', true, [line], true, 'ready'],
    ['is not offered where words came another way', true, [line], false, 'off'],
  ])('%s', (_what, hasSpeech, lines, isTyped, state) => expect(typingOf(hasSpeech, lines, isTyped).state).toBe(state))
})

describe('which exercise is open', () => {
  const sheet = buildSheet({
    segments: [
      buildSegment('gone', 0, 10, { state: 'declined' }),
      buildSegment('sure', 10, 20),
      buildSegment('open', 20, 30, PROPOSED),
    ],
  })
  it.each([
    ['the one that is asked for', 'sure', 'sure'],
    ['one that is declined too, when it is asked for', 'gone', 'gone'],
    ['else the first that nobody has decided', null, 'open'],
    ['also where an unknown one is asked for', 'nothing', 'open'],
  ])('%s', (_what, asked, opened) => {
    expect(partsOf(sheet, asked).openId).toBe(opened)
  })
})

describe('an exercise', () => {
  const segment = buildSegment('a', 60, 120, {
    ...PROPOSED,
    exercise: { name: 'Chair squats' },
    prescription: { ...buildPrescription({ sets: { min: 2, max: 2 }, reps: { min: 8, max: 8 } }), ...PROPOSED },
    cues: [buildCue('early', 10), buildCue('in', 70, PROPOSED), buildCue('no', 65, { state: 'declined' })],
    cautions: [buildCaution('knee-pain', { atMs: 65_000 })],
  })
  const parts = partsOf(buildSheet({ segments: [segment] })).segment
  it('counts what is still to be decided', () => expect(parts?.open).toBe('3 marks'))
  it('has declined cues last, and says which lie outside its spans', () => {
    expect(parts?.cues.map(({ id, outside }) => [id, outside])).toEqual([
      ['early', true],
      ['in', false],
      ['no', false],
    ])
  })
  it('has a dose as text that reads back, in words, and as a picture', () => {
    expect(parts?.dose).toMatchObject({ text: '2 x 8', spoken: expect.stringMatching(/^2 sets of 8/) as string })
    expect(parts?.dose.strip).toContain('<svg')
  })
  it('says how long the dose takes, and what was taken for that', () => {
    expect(parts?.dose.totals).toBe(
      'Takes about 50 seconds, 16 repetitions in all. Taken: tempo 2-0-1-0 where none is said.',
    )
  })
  it('has times to the millisecond and nudges of one frame and a tenth', () => {
    expect(parts?.spans[0]?.edges.map(({ at }) => at)).toEqual(['1:00.000', '2:00.000'])
    expect(parts?.nudges.map(({ by }) => by)).toEqual([-100, -33, 33, 100])
  })
})

it('cautions that are missing stand before those that are covered', () => {
  const need = { segmentId: 'a', level: 'must' as const, why: 'it loads the knees', concerns: 'sore knees' }
  const sheet = buildSheet({ segments: [buildSegment('a', 0, 60)] })
  const needs: WorkInput['needs'] = [
    { ...need, hazard: 'fall-risk', state: 'spoken', inClip: true, said: { text: 'hold on', atMs: 5000 } },
    { ...need, hazard: 'knee-pain', state: 'spoken', inClip: false, said: { text: 'mind your knees', atMs: 400_000 } },
    { ...need, hazard: 'dizziness', state: 'missing', inClip: false, said: null },
  ]
  const { segment } = partsOf(sheet, 'a', { needs })
  expect(segment?.needsWords).toBe('1 of 3 covered')
  expect(segment?.needs.map(({ hazard, mark, where }) => [hazard, mark, where])).toEqual([
    ['knee-pain', 'stop', 'Said at 6:40, outside this clip'],
    ['dizziness', 'stop', 'Neither said nor written'],
    ['fall-risk', 'done', 'Said at 0:05'],
  ])
  expect(JSON.parse(segment?.needs[0]?.attach ?? '')).toEqual({
    ...{ hazard: 'knee-pain', text: 'mind your knees', atMs: 400_000, on: ['a'] },
  })
  expect(segment?.needs[1]?.offer).not.toBe('')
})

describe('a plan', () => {
  const planned = (id: string) => buildSegment(id, 0, 0, { spans: [] })
  it('names what is not placed, in order, and what was begun last', () => {
    const begun = buildSegment('a', 100, 600)
    const { plan } = partsOf(buildSheet({ segments: [begun, planned('b'), planned('c')] }))
    expect(plan).toMatchObject({ ids: 'b c', openId: 'a', openStartMs: 100_000, count: '1 of 3 exercises placed' })
  })
  it('is no plan where an exercise that was read from what is said lasts to the end of the film', () => {
    const read = buildSegment('a', 100, 600, { origin: 'draft', ruleId: 'name-taught' })
    expect(partsOf(buildSheet({ segments: [read] })).plan).toMatchObject({ ids: '', openId: '' })
    const placed = buildSegment('a', 100, 600, { origin: 'draft', ruleId: 'class-plan' })
    expect(partsOf(buildSheet({ segments: [placed] })).plan.openId).toBe('a')
  })
  it('is done when all are placed and ended', () => {
    expect(partsOf(buildSheet({ segments: [buildSegment('a', 0, 60)] })).plan).toMatchObject({ ids: '', openId: '' })
  })
})

describe('the checks', () => {
  const sheet = buildSheet({
    segments: [
      buildSegment('noted', 0, 60, { prescription: buildPrescription({ reps: { min: 8, max: 8 } }) }),
      buildSegment('bare', 60, 120),
    ],
    waivers: [{ segmentId: 'bare', ruleId: 'setup-missing', hazard: null, reason: 'seen', by: 'Ann', atUtc: 0 }],
  })
  const parts = buildChecksParts({ recordingId: 'rec', words: CLASS_WORDS }, workOf(sheet))
  it('put first what holds a lesson back', () => {
    expect(parts.groups[0]?.id).toBe('bare')
    expect(parts.groups[0]?.findings[0]).toMatchObject({ kind: 'stop', ruleId: 'dose-missing' })
    const kinds = parts.groups.map(({ findings }) => findings[0]?.kind)
    expect(kinds).toEqual([...kinds].sort((a, b) => (a === 'stop' ? -1 : 0) - (b === 'stop' ? -1 : 0)))
  })
  it('each lead to a place, give a reason and name a source', () => {
    for (const { findings } of parts.groups) {
      for (const one of findings) {
        expect(one.place.href).toMatch(/^\/(recordings|add)\/rec/)
        expect(one.why).not.toBe('')
        expect(one.source).not.toBe('')
      }
    }
  })
  it('join cautions with the same words into one attachment', () => {
    const said = { text: 'mind your knees', atMs: 1000 }
    const need = { hazard: 'knee-pain', level: 'must' as const, why: 'w', concerns: 'c', state: 'spoken' as const }
    const needs = ['noted', 'bare'].map((segmentId) => ({ ...need, segmentId, inClip: false, said }))
    const { attachAll } = buildChecksParts({ recordingId: 'rec', words: CLASS_WORDS }, workOf(sheet, { needs }))
    expect(attachAll.values.map((value) => (JSON.parse(value) as { on: string[] }).on)).toEqual([['noted', 'bare']])
    expect(attachAll.label).toBe('Attach to all: 2 cautions on 2 lessons')
  })
})

describe('words', () => {
  const sheet = buildSheet({ segments: [buildSegment('a', 0, 60, { exercise: { name: 'Squat' } })] })
  it.each([
    ['a place', placeAddress('r', 's 1', 1500), '/recordings/r?segment=s%201#t=1.5'],
    ['an edit of an exercise', nameEdit({ op: 'set-dose', segmentId: 'a', dose: null }, sheet), 'dose, Squat'],
    ['an edit of the class', nameEdit({ op: 'set-title', title: 'x' }, sheet), 'title'],
    ['no change', nameChanges([], sheet), ''],
    [
      'one change, made twice',
      nameChanges(Array(2).fill({ op: 'set-title', title: 'x' }), sheet),
      'Changed elsewhere: title.',
    ],
    [
      'several',
      nameChanges(
        [
          { op: 'set-title', title: 'x' },
          { op: 'set-dose', segmentId: 'a', dose: null },
        ],
        sheet,
      ),
      'Changed elsewhere: dose, Squat, and 1 more.',
    ],
    ['why: a person', explainMark(buildCue('c', 0)), 'A person set it.'],
    [
      'why: a cue',
      explainMark(buildCue('c', 0, { ...PROPOSED, ruleId: 'cue-breathing' })),
      'These words sound like breathing. The draft is 80 % sure.',
    ],
    [
      'why: a rule that has no words yet',
      explainMark(buildCue('c', 0, PROPOSED)),
      'The draft proposed it by its rule "test-rule". The draft is 80 % sure.',
    ],
    ['sections', sectionLines([{ startMs: 270_000, endMs: 300_500, title: 'Standing' }]), '4:30 Standing'],
  ])('%s', (_what, said, wanted) => expect(said).toBe(wanted))
})
