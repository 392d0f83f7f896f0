// Edits that must be refused: each names what is wrong and leaves the sheet as it was.
import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../core/segments/edit-sheet.ts'
import { parseEdit } from '../../../shared/edit.ts'
import type { Edit } from '../../../shared/edit.ts'
import { AppError } from '../../../shared/errors.ts'
import type { ErrorCode } from '../../../shared/errors.ts'
import { buildPrescription } from '../../../shared/log-sheet.ts'
import { buildCaution, buildCue, buildSegment, buildSheet, span } from '../../helpers/build-sheet.ts'
import { deepFreeze } from '../../helpers/deep-freeze.ts'

const sheet = deepFreeze(
  buildSheet({
    segments: [
      buildSegment('a', 60, 120, {
        spans: [span(60, 120), span(300, 330, { inClip: false })],
        cutOuts: [{ startMs: 70_000, endMs: 75_000, why: 'slip' }],
        cues: [buildCue('cue-a', 65)],
        cautions: [buildCaution('fall-risk')],
      }),
      buildSegment('b', 120, 200, { cues: [buildCue('cue-b', 125)] }),
    ],
    waivers: [{ segmentId: 'b', ruleId: 'dose-missing', reason: 'as it feels', by: 'Ann', atUtc: 1 }],
  }),
)

const a = { segmentId: 'a' } as const
const waiver = { segmentId: 'b', ruleId: 'dose-missing', hazard: null, reason: 'again', by: 'Ann', atUtc: 2 }

const refused: [what: string, edit: Edit, code: ErrorCode, words: RegExp][] = [
  ['an unknown segment', { op: 'set-use', segmentId: 'z', use: 'keep' }, 'edit-target', /"z"/],
  ['an id used twice', { op: 'add-segment', segment: buildSegment('a', 1, 2) }, 'edit-invalid', /belongs to another/],
  [
    'a cue id used twice on the sheet',
    { op: 'add-cue', ...a, cue: buildCue('cue-b', 65) },
    'edit-invalid',
    /belongs to another cue/,
  ],
  [
    'a new segment with one cue id twice',
    { op: 'add-segment', segment: buildSegment('c', 1, 9, { cues: [buildCue('x', 2), buildCue('x', 3)] }) },
    'edit-invalid',
    /Two cues/,
  ],
  ['a name of spaces', { op: 'rename', ...a, name: '  ' }, 'edit-invalid', /needs a name/],
  ['a rename of nothing', { op: 'rename', ...a }, 'edit-invalid', /Nothing to rename/],
  ['fields without one', { op: 'set-fields', ...a, fields: {} }, 'edit-invalid', /Nothing to set/],
  [
    'itself as easier option',
    { op: 'set-fields', ...a, fields: { easier: [{ segmentId: 'a' }] } },
    'edit-invalid',
    /itself/,
  ],
  [
    'a harder option that is gone',
    { op: 'set-fields', ...a, fields: { harder: [{ segmentId: 'z' }] } },
    'edit-target',
    /"z"/,
  ],
  [
    'a span without length',
    { op: 'add-span', ...a, startMs: 500, endMs: 500, inClip: null },
    'edit-invalid',
    /no length/,
  ],
  [
    'a span that ends before it starts',
    { op: 'add-span', ...a, startMs: 900, endMs: 500, inClip: null },
    'edit-invalid',
    /no length/,
  ],
  [
    'a negative time',
    { op: 'add-span', ...a, startMs: -1, endMs: 500, inClip: null },
    'edit-invalid',
    /whole milliseconds/,
  ],
  [
    'a part of a millisecond',
    { op: 'move-edge', ...a, span: 0, edge: 'end', toMs: 100_000.5 },
    'edit-invalid',
    /whole milliseconds/,
  ],
  [
    'a time that is no number',
    { op: 'move-edge', ...a, span: 0, edge: 'end', toMs: NaN },
    'edit-invalid',
    /whole milliseconds/,
  ],
  [
    'a span past the end',
    { op: 'add-span', ...a, startMs: 590_000, endMs: 600_001, inClip: null },
    'edit-invalid',
    /10:00\.001.*ends at 10:00\.000/,
  ],
  [
    'a span over another of the exercise',
    { op: 'add-span', ...a, startMs: 110_000, endMs: 130_000, inClip: null },
    'edit-invalid',
    /overlap/,
  ],
  [
    'a span from a file that is not there',
    { op: 'add-span', ...a, startMs: 0, endMs: 9, inClip: null, mediaId: 'cam' },
    'edit-target',
    /"cam"/,
  ],
  [
    'an edge moved onto the other',
    { op: 'move-edge', ...a, span: 0, edge: 'start', toMs: 120_000 },
    'edit-invalid',
    /no length/,
  ],
  [
    'an edge moved into another span',
    { op: 'move-edge', ...a, span: 0, edge: 'end', toMs: 300_001 },
    'edit-invalid',
    /overlap/,
  ],
  ['a span number that is not there', { op: 'remove-span', ...a, span: 2 }, 'edit-target', /span number 3/],
  [
    'a cut-out without length',
    { op: 'add-cut-out', ...a, startMs: 80_000, endMs: 80_000, why: '' },
    'edit-invalid',
    /no length/,
  ],
  [
    'cut-outs that overlap',
    { op: 'add-cut-out', ...a, startMs: 74_999, endMs: 76_000, why: '' },
    'edit-invalid',
    /overlap/,
  ],
  [
    'a cut-out outside every span',
    { op: 'add-cut-out', ...a, startMs: 120_000, endMs: 125_000, why: '' },
    'edit-invalid',
    /outside every span/,
  ],
  ['a cut-out number that is not there', { op: 'remove-cut-out', ...a, cutOut: 1 }, 'edit-target', /cut-out number 2/],
  [
    'a loop across two spans',
    { op: 'set-loop', ...a, loop: { startMs: 110_000, endMs: 310_000 } },
    'edit-invalid',
    /inside one span/,
  ],
  [
    'a loop without length',
    { op: 'set-loop', ...a, loop: { startMs: 61_000, endMs: 61_000 } },
    'edit-invalid',
    /no length/,
  ],
  [
    'a split at the very start',
    { op: 'split-segment', ...a, atMs: 60_000, newId: 'n', doseTo: 'first' },
    'edit-invalid',
    /leaves nothing/,
  ],
  [
    'a split past the last span',
    { op: 'split-segment', ...a, atMs: 330_000, newId: 'n', doseTo: 'first' },
    'edit-invalid',
    /leaves nothing/,
  ],
  [
    'a split into an id in use',
    { op: 'split-segment', ...a, atMs: 90_000, newId: 'b', doseTo: 'first' },
    'edit-invalid',
    /belongs to another/,
  ],
  ['a segment joined with itself', { op: 'join-segments', ...a, otherId: 'a' }, 'edit-invalid', /itself/],
  ['a segment joined with nobody', { op: 'join-segments', ...a, otherId: 'z' }, 'edit-target', /"z"/],
  [
    'a dose grouped with itself',
    { op: 'set-dose', ...a, dose: buildPrescription({ groupWith: ['a'] }) },
    'edit-invalid',
    /itself/,
  ],
  [
    'a dose grouped with nobody',
    { op: 'set-dose', ...a, dose: buildPrescription({ groupWith: ['z'] }) },
    'edit-target',
    /"z"/,
  ],
  [
    'a dose whose follower is grouped with nobody',
    { op: 'set-dose', ...a, dose: buildPrescription({ then: [buildPrescription({ groupWith: ['z'] })] }) },
    'edit-target',
    /"z"/,
  ],
  ['a cue without words', { op: 'change-cue', ...a, cueId: 'cue-a', text: ' ' }, 'edit-invalid', /needs the words/],
  ['a cue changed in nothing', { op: 'change-cue', ...a, cueId: 'cue-a' }, 'edit-invalid', /Nothing to change/],
  [
    'a cue that ends before it starts',
    { op: 'change-cue', ...a, cueId: 'cue-a', endMs: 1 },
    'edit-invalid',
    /no length/,
  ],
  ['a cue of another segment', { op: 'remove-cue', ...a, cueId: 'cue-b' }, 'edit-target', /"cue-b"/],
  [
    'a caution without words',
    { op: 'add-caution', segmentId: null, caution: buildCaution('x', { text: '' }) },
    'edit-invalid',
    /needs words/,
  ],
  [
    'a caution said after the end',
    { op: 'add-caution', ...a, caution: buildCaution('x', { atMs: 600_001 }) },
    'edit-invalid',
    /recording ends/,
  ],
  [
    'a caution at a place of another',
    { op: 'remove-caution', ...a, index: 0, hazard: 'breath-hold' },
    'edit-target',
    /number 1/,
  ],
  [
    'a caution changed in nothing',
    { op: 'change-caution', ...a, index: 0, hazard: 'fall-risk' },
    'edit-invalid',
    /Nothing to change/,
  ],
  [
    'a caution attached to nobody',
    { op: 'attach-class-caution', segmentIds: ['a', 'z'], hazard: 'x', text: 'y', atMs: null },
    'edit-target',
    /"z"/,
  ],
  [
    'a dose that is not there accepted',
    { op: 'accept', marks: [{ mark: 'dose', segmentId: 'b' }] },
    'edit-target',
    /no dose/,
  ],
  [
    'many accepted, one of them gone',
    {
      op: 'accept',
      marks: [
        { mark: 'segment', segmentId: 'a' },
        { mark: 'cue', segmentId: 'a', cueId: 'z' },
      ],
    },
    'edit-target',
    /"z"/,
  ],
  [
    'all accepted on a segment that is gone',
    { op: 'accept-above', confidence: 0, segmentIds: ['z'] },
    'edit-target',
    /"z"/,
  ],
  [
    'a waiver without a reason',
    { op: 'waive', waiver: { ...waiver, ruleId: 'setup-missing', reason: '  ' } },
    'edit-invalid',
    /reason/,
  ],
  ['a finding waived twice', { op: 'waive', waiver }, 'edit-invalid', /already/],
  ['a waiver of nobody', { op: 'waive', waiver: { ...waiver, segmentId: 'z' } }, 'edit-target', /"z"/],
  [
    'a waiver taken back that is not there',
    { op: 'unwaive', segmentId: 'a', ruleId: 'dose-missing', hazard: null },
    'edit-target',
    /no such waiver/,
  ],
  [
    'sections that overlap',
    {
      op: 'set-sections',
      sections: [
        { title: 'one', startMs: 0, endMs: 10 },
        { title: 'two', startMs: 9, endMs: 20 },
      ],
    },
    'edit-invalid',
    /overlap/,
  ],
  [
    'a section without a title',
    { op: 'set-sections', sections: [{ title: '', startMs: 0, endMs: 10 }] },
    'edit-invalid',
    /title/,
  ],
  [
    'a recording shorter than its marks',
    { op: 'set-source', source: { sha256: 'x', durationMs: 329_999 } },
    'edit-invalid',
    /marks reach 5:30\.000/,
  ],
  [
    'sound that the sheet does not know',
    { op: 'set-sound', sound: { mediaId: 'collar', track: null } },
    'edit-invalid',
    /does not know/,
  ],
  [
    'what is told of another file than the sound',
    {
      ...{ op: 'set-sound', sound: { mediaId: 'collar', track: null } },
      media: { ...{ id: 'lens', role: 'camera', label: '', sha256: 'x' }, startMs: 0, durationMs: 1, driftPpm: 0 },
    },
    'edit-invalid',
    /another file/,
  ],
  [
    'an undo of a segment that is gone',
    { op: 'restore', put: [], remove: ['z'], fields: {}, drop: [] },
    'edit-target',
    /"z"/,
  ],
  [
    'an undo that leaves no sheet',
    { op: 'restore', put: [], remove: [], fields: { title: 7 }, drop: [] },
    'edit-invalid',
    /no log sheet/,
  ],
]

/** The error a call ends with. */
function errorOf(call: () => unknown): AppError {
  try {
    call()
  } catch (error) {
    if (error instanceof AppError) return error
    throw error
  }
  throw new Error('nothing was refused')
}

describe('an edit is refused', () => {
  it.each(refused)('%s', (_what, edit, code, words) => {
    const error = errorOf(() => applyEdit(sheet, edit))
    expect({ code: error.code, message: error.message }).toEqual({
      code,
      message: expect.stringMatching(words) as string,
    })
    expect(error.message, 'the last sentence says what to do').toMatch(/[.] [A-Z].*[.]$|: (give|load) .*[.]$/)
  })
})

describe('an edit cannot be read', () => {
  const unread: [what: string, value: unknown, detail: RegExp][] = [
    ['nothing', null, /^\(top\): /],
    ['an operation nobody knows', { op: 'explode' }, /^op: /],
    ['a misspelt field', { op: 'set-title', titel: 'x', title: 'y' }, /titel/],
    ['a negative time', { op: 'set-loop', segmentId: 'a', loop: { startMs: -1, endMs: 5 } }, /^loop\.startMs: /],
    ['a part of a millisecond', { op: 'split-segment', segmentId: 'a', atMs: 0.5, newId: 'n' }, /^atMs: /],
    ['a state on no marks', { op: 'accept', marks: [] }, /^marks: /],
    ['a waiver without a reason', { op: 'waive', waiver: { ...waiver, reason: '' } }, /^waiver\.reason: /],
    ['an undo that a page made up', { op: 'restore', put: [], remove: [], fields: {}, drop: [] }, /^op: /],
    ['an audience nobody knows', { op: 'set-audience', audience: ['everyone'] }, /^audience\.0: /],
  ]
  it.each(unread)('%s', (_what, value, detail) => {
    const error = errorOf(() => parseEdit(value))
    expect(error.code).toBe('edit-invalid')
    expect(error.details.join('\n')).toMatch(detail)
  })

  it('but one written short is filled in', () => {
    expect(parseEdit({ op: 'add-span', segmentId: 'a', startMs: 0, endMs: 1 })).toEqual({
      op: 'add-span',
      segmentId: 'a',
      startMs: 0,
      endMs: 1,
      inClip: null,
    })
  })
})
