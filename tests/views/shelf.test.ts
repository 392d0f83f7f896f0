// The shelf's page object: the one thing a class needs next, and time left in words that can be believed.
import { describe, expect, it } from 'vitest'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { formatBytes } from '../../views/pages/add-class.ts'
import { buildJobLine, formatLeft } from '../../views/pages/job-words.ts'
import type { JobInput } from '../../views/pages/job-words.ts'
import { buildShelfPage, findNeed } from '../../views/pages/shelf.ts'
import type { RecordingInput } from '../../views/pages/shelf.ts'
import { buildSegment, buildSheet } from '../helpers/build-sheet.ts'

const CLASS: RecordingInput = {
  ...{ id: 'r1', title: 'Monday', kindId: null, state: 'ready', durationMs: 60_000, audience: ['general'] },
  ...{ equipment: [], music: 'none', people: [], files: [], hasFilm: true, hasWave: true, hasWords: false },
  ...{ work: null, jobs: [], failed: [] },
}
const JOB: JobInput = { id: 'j1', kind: 'analyse', state: 'running', progress: null, error: null, cancelAsked: false }

function workOf(state: 'proposed' | 'accepted', published: string[] = []): RecordingInput['work'] {
  const sheet = buildSheet({ durationMs: 60_000, segments: [buildSegment('s1', 0, 30, { state })] })
  return { sheet, report: { ...checkSheet(sheet), findings: [] }, published: new Set(published) }
}

const STOP = {
  ruleId: 'x',
  severity: 'stop',
  segmentId: 's1',
  startMs: 0,
  endMs: 1,
  message: '',
  why: '',
  source: '',
} as const

describe('what a class needs next', () => {
  it.each<[string, Partial<RecordingInput>, string | null, string]>([
    ['its film', { hasFilm: false, audience: null }, 'Add its film', '/add/r1'],
    ['another film for one that was refused', { state: 'refused', hasFilm: false }, 'Add its film', '/add/r1'],
    ['its audience, which is never assumed', { audience: null, hasWords: true }, 'Say who it is for', '/add/r1#who'],
    ['its words', {}, 'Add its words', '/add/r1#words'],
    ['nothing while it is drafted', { hasWords: true, jobs: [JOB] }, null, ''],
    ['a look through the draft', { work: workOf('proposed') }, 'Look through the draft', '/recordings/r1'],
    [
      'its stops closed',
      { work: { ...workOf('accepted')!, report: { findings: [STOP, STOP], cautions: [] } } },
      'Close 2 stops',
      '/recordings/r1/checks',
    ],
    ['publishing', { work: workOf('accepted') }, 'Publish 1 lesson', '/recordings/r1/publish'],
    ['nothing more', { work: workOf('accepted', ['s1']) }, 'See its lessons', '/library'],
  ])('is %s', (_what, fields, label, href) => {
    expect(findNeed({ ...CLASS, ...fields })).toEqual(label === null ? null : { label, href })
  })
})

it('only a class that holds nothing can be taken away, such as one whose film was refused', () => {
  const bare = { ...CLASS, hasFilm: false }
  const file = { id: 'f', role: 'part' } as RecordingInput['files'][number]
  const held: Partial<RecordingInput>[] = [
    { hasFilm: true },
    { hasWords: true },
    { work: workOf('proposed') },
    { jobs: [JOB] },
    { files: [file] },
  ]
  const entries = [bare, ...held.map((fields) => ({ ...bare, ...fields }))]
  const actions = buildShelfPage({ entries, hasFfmpeg: true }).rows.map(({ removeAction }) => removeAction)
  expect(actions).toEqual(['/recordings/r1/remove', '', '', '', '', ''])
})

it('a row says length, exercises and what went wrong', () => {
  const error = { code: 'disk-full', message: 'The disk is full.', details: [] }
  const entry = { ...CLASS, work: workOf('accepted'), failed: [{ ...JOB, state: 'failed' as const, error }] }
  const [row] = buildShelfPage({ entries: [entry], hasFfmpeg: true }).rows
  expect(row?.facts.slice(0, 2)).toEqual(['1:00', '1 exercise'])
  expect(row?.faults).toEqual(['The disk is full.'])
  expect(row?.ribbon).toMatch(/^<svg.*aria-label="Class of 1:00: 1 exercise/)
})

it.each([
  [0, 'a few seconds left'],
  [9400, 'a few seconds left'],
  [31_000, 'about 40 seconds left'],
  [55_000, 'about 1 minute left'],
  [170_000, 'about 3 minutes left'],
  [3_500_000, 'about 58 minutes left'],
  [7_300_000, 'about 2 hours left'],
])('%d ms are "%s"', (ms, words) => {
  expect(formatLeft(ms)).toBe(words)
})

it.each<[string, Partial<JobInput>, object]>([
  ['waits', { state: 'queued' }, { step: 'Waits for its turn', left: '', percent: -1 }],
  ['begins', {}, { step: 'Begins', percent: -1 }],
  [
    'runs',
    { progress: { part: 0.256, step: 'Reading the sound', leftMs: 5000 } },
    { step: 'Reading the sound', left: 'a few seconds left', percent: 26 },
  ],
  ['is being stopped', { cancelAsked: true }, { step: 'Is being stopped' }],
])('a job that %s', (_what, fields, line) => {
  expect(buildJobLine({ ...JOB, ...fields })).toMatchObject(line)
})

it.each([
  [0, '1 kB'],
  [648_439, '648 kB'],
  [7_368_300, '7 MB'],
  [2_400_000_000, '2.4 GB'],
  [68_719_476_736, '69 GB'],
])('%d bytes are %s', (bytes, words) => {
  expect(formatBytes(bytes)).toBe(words)
})
