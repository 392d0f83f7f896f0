// The format of the log sheet is frozen: a full sheet and the schemas, compared with files a person can open.
// A change here that is not an added field needs a new version and a migration.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { Edit, EditRecord } from '../../shared/edit.ts'
import { buildPrescription, LogSheet, Segment } from '../../shared/log-sheet.ts'
import { readLogSheet, writeLogSheet } from '../../shared/read-log-sheet.ts'

const folder = new URL('../fixtures/sheets/', import.meta.url)
const file = (name: string): string => fileURLToPath(new URL(name, folder))

const drafted = { origin: 'draft', state: 'proposed', confidence: 0.82, ruleId: 'dose-in-teaching' } as const

/** A sheet that fills every field of version 1, and one unknown field at the top and on a segment. */
const full = LogSheet.parse({
  format: 'repslate-log-sheet',
  version: 1,
  title: 'Steady on Tuesdays',
  language: 'en-GB',
  durationMs: 754_000,
  source: { sha256: '0f'.repeat(32), durationMs: 754_000 },
  audience: ['older-adults', 'beginners'],
  audienceHeard: ['older-adults'],
  media: [
    {
      id: 'cam-1',
      role: 'camera',
      label: 'front',
      sha256: '1e'.repeat(32),
      startMs: 0,
      durationMs: 754_000,
      driftPpm: 0,
    },
    {
      id: 'mic',
      role: 'sound',
      label: 'clip-on',
      sha256: '2d'.repeat(32),
      startMs: -1250,
      durationMs: 760_000,
      driftPpm: 12.5,
    },
  ],
  sections: [{ title: 'On the chair', startMs: 0, endMs: 400_000 }],
  segments: [
    {
      id: 'seg-1',
      ...drafted,
      use: 'lesson',
      exercise: { name: 'heel raise', alsoCalled: ['calf raise'], catalogueId: 'heel-raise' },
      spans: [
        { startMs: 61_000, endMs: 118_500, inClip: true, lockedIn: true, mediaId: 'cam-1' },
        { startMs: 410_000, endMs: 432_000, inClip: false, lockedIn: false },
      ],
      cutOuts: [{ startMs: 70_200, endMs: 74_900, why: 'said the wrong side' }],
      loop: { startMs: 90_000, endMs: 98_000 },
      equipment: ['chair'],
      position: 'standing',
      view: 'side',
      mirrored: false,
      sideShown: 'both',
      prescription: {
        ...drafted,
        scheme: 'straight',
        sets: { min: 2, max: 3 },
        reps: { min: 10, max: 10 },
        repUnit: 'rep',
        repScheme: [10, 8, 6],
        workSeconds: { min: 20, max: 30 },
        holdSeconds: { min: 2, max: 2 },
        holdPer: 'rep',
        distanceM: { min: 5, max: null },
        intervalSeconds: { min: 60, max: 60 },
        perSide: true,
        restSeconds: { min: 45, max: 60 },
        restBetween: 'sets',
        tempo: '3-1-1-0',
        load: 'light weights',
        effort: 'about six out of ten',
        frequency: 'three times a week',
        progression: 'add a rep each week',
        open: null,
        approx: true,
        groupWith: ['seg-2'],
        said: [
          { atMs: 84_000, text: 'two or three tens' },
          { atMs: 86_500, text: 'two seconds at the top' },
        ],
        unsure: true,
        why: ['Two numbers of sets were said.'],
        byLevel: [{ level: 'new', dose: { reps: { min: 6, max: 6 } } }],
        then: [{ reps: 'max', repUnit: 'cycle', open: 'as long as it feels good' }],
      },
      cues: [
        { id: 'cue-1', ...drafted, kind: 'setup', startMs: 62_000, endMs: 64_000, text: 'both hands on the chair' },
        { id: 'cue-2', kind: 'breathing', startMs: 66_000, endMs: 67_500, text: 'breathe out as you rise' },
      ],
      cautions: [
        {
          ...drafted,
          hazard: 'fall-risk',
          scope: 'exercise',
          source: 'spoken',
          text: 'keep hold of the chair',
          atMs: 63_000,
        },
        { hazard: 'dizziness-rise', scope: 'class', source: 'written', text: 'stand up slowly', atMs: 4200 },
      ],
      easier: [{ segmentId: 'seg-2' }, { text: 'seated, heels only' }],
      harder: [{ lessonId: 'one-leg-heel-raise', text: 'on one leg' }],
      counted: [{ atMs: 70_000, text: 'One, two, three, four, five', upTo: 5 }],
      sidesNamed: [{ atMs: 61_000, text: 'Right side first', side: 'right', as: 'first' }],
      gainDb: -1.5,
      setByPerson: ['exercise', 'spans'],
      'x-colour': 'amber',
    },
    { id: 'seg-2', exercise: { name: 'ankle circle' }, state: 'declined', use: 'leave-out' },
  ],
  classCautions: [
    { hazard: 'pain-stop', scope: 'class', source: 'spoken', text: 'stop if anything hurts', atMs: 3000 },
  ],
  mentioned: ['squat'],
  waivers: [
    {
      segmentId: 'seg-1',
      ruleId: 'caution-missing',
      hazard: 'breath-hold',
      reason: 'They count aloud throughout.',
      by: 'Ann',
      atUtc: 1_767_225_600_000,
    },
  ],
  music: 'licensed',
  people: [
    { name: 'Guest in the front row', consent: 'given', scope: 'members', untilUtc: 1_798_761_600_000, under18: false },
  ],
  publishedSound: { mediaId: 'sound-1', track: 1 },
  setByPerson: ['title'],
  'x-room': { floor: 2 },
})

describe('the log sheet, version 1', () => {
  it('is written as in the file', async () => {
    await expect(writeLogSheet(full)).toMatchFileSnapshot(file('full-sheet.json'))
  })

  it('is read from the file as it was written', () => {
    expect(readLogSheet(readFileSync(file('full-sheet.json'), 'utf8'))).toStrictEqual(full)
  })

  it('has every field filled in that file, so that the file shows them all', () => {
    const [segment] = full.segments
    const unset = (value: object, except: string[] = []) =>
      Object.entries(value).flatMap(([name, one]) => (one === null && !except.includes(name) ? [name] : []))
    expect(Object.keys(LogSheet.shape).filter((name) => !(name in full))).toEqual([])
    expect([...unset(full), ...unset(segment!), ...unset(segment!.prescription!, ['open'])]).toEqual([])
    expect(Object.keys(Segment.shape).filter((name) => !(name in segment!))).toEqual([])
    expect(Object.keys(buildPrescription({})).filter((name) => !(name in segment!.prescription!))).toEqual([])
  })

  it('has the schema of the file (JSON Schema 2020-12, of what a person may write)', async () => {
    const schema = z.toJSONSchema(LogSheet, { io: 'input' })
    await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot(file('log-sheet.schema.json'))
  })
})

describe('the log of edits', () => {
  it('has the schema of the file', async () => {
    const schema = z.toJSONSchema(EditRecord, { io: 'input', reused: 'ref' })
    await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot(file('edit-record.schema.json'))
  })

  it('names each operation once', () => {
    const names = Edit.options.map((option) => option.shape.op.value)
    expect(new Set(names).size).toBe(names.length)
  })
})
