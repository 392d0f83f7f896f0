// Reading log sheets: what is refused and how it is named, what is filled in, what is kept.
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { AppError } from '../../shared/errors.ts'
import type { ErrorCode } from '../../shared/errors.ts'
import { readLogSheet, writeLogSheet } from '../../shared/read-log-sheet.ts'

const minimalText = readFileSync(new URL('../fixtures/sheets/minimal-sheet.json', import.meta.url), 'utf8')
const minimal = JSON.parse(minimalText) as { segments: Record<string, unknown>[] } & Record<string, unknown>

/** The minimal sheet with other fields, as text. */
const textWith = (fields: Record<string, unknown>): string => JSON.stringify({ ...minimal, ...fields })
/** The minimal sheet with other fields on its segment, as text. */
const segmentWith = (fields: Record<string, unknown>): string =>
  textWith({ segments: [{ ...minimal.segments[0], ...fields }] })

function errorOf(text: string): AppError {
  try {
    readLogSheet(text)
  } catch (error) {
    if (error instanceof AppError) return error
    throw error
  }
  throw new Error('the sheet was read')
}

describe('a log sheet is refused', () => {
  const cases: [what: string, text: string, code: ErrorCode][] = [
    ['nothing', '', 'sheet-not-json'],
    ['words', 'hello', 'sheet-not-json'],
    ['JSON cut short', minimalText.slice(0, -10), 'sheet-not-json'],
    ['a transcript', 'WEBVTT\n\n00:01.000 --> 00:02.000\nHello', 'sheet-not-json'],
    ['null', 'null', 'sheet-not-a-sheet'],
    ['a number', '7', 'sheet-not-a-sheet'],
    ['a list', '[]', 'sheet-not-a-sheet'],
    ['an object of another kind', '{"findings":[],"cautions":[]}', 'sheet-not-a-sheet'],
    ['another format', textWith({ format: 'other' }), 'sheet-not-a-sheet'],
    ['a newer version', textWith({ version: 2 }), 'sheet-newer'],
    ['a newer version with fields nobody knows yet', textWith({ version: 3, segments: 'elsewhere' }), 'sheet-newer'],
    ['no version', textWith({ version: undefined }), 'sheet-field'],
    ['version 0', textWith({ version: 0 }), 'sheet-field'],
    ['a version in words', textWith({ version: '1' }), 'sheet-field'],
  ]
  it.each(cases)('%s', (_what, text, code) => {
    const error = errorOf(text)
    expect(error.code).toBe(code)
    expect(error.message).toMatch(/\. [A-Z].*\.$/)
  })

  it('and the first error stays as cause', () => {
    expect(errorOf('hello').cause).toBeInstanceOf(SyntaxError)
  })
})

describe('a wrong field is named by its path', () => {
  const cue = { id: 'c', kind: 'focus', startMs: 1, endMs: 2, text: 'look ahead' }
  const cases: [what: string, text: string, path: RegExp][] = [
    ['no length of the recording', textWith({ durationMs: undefined }), /^durationMs: /],
    ['a part of a millisecond', textWith({ durationMs: 0.5 }), /^durationMs: /],
    [
      'a time before the start',
      segmentWith({ spans: [{ startMs: -1, endMs: 5 }] }),
      /^segments\.0\.spans\.0\.startMs: /,
    ],
    ['a clock in words', segmentWith({ loop: { startMs: '0:05', endMs: 9 } }), /^segments\.0\.loop\.startMs: /],
    ['an exercise without a name', segmentWith({ exercise: {} }), /^segments\.0\.exercise\.name: /],
    ['an empty name', segmentWith({ exercise: { name: '' } }), /^segments\.0\.exercise\.name: /],
    ['a kind of cue nobody knows', segmentWith({ cues: [{ ...cue, kind: 'joke' }] }), /^segments\.0\.cues\.0\.kind: /],
    ['a confidence above 1', segmentWith({ confidence: 1.1 }), /^segments\.0\.confidence: /],
    ['a dose in words', segmentWith({ prescription: 'three tens' }), /^segments\.0\.prescription: /],
    [
      'reps below none',
      segmentWith({ prescription: { reps: { min: -1, max: 2 } } }),
      /^segments\.0\.prescription\.reps/,
    ],
    [
      'a scheme nobody knows, deep in a dose',
      segmentWith({ prescription: { byLevel: [{ level: 'new', dose: { then: [{ scheme: 'random' }] } }] } }),
      /^segments\.0\.prescription\.byLevel\.0\.dose\.then\.0\.scheme: /,
    ],
    [
      'a waiver without a reason',
      textWith({ waivers: [{ segmentId: 'a', ruleId: 'r', reason: '', by: '', atUtc: 1 }] }),
      /^waivers\.0\.reason: /,
    ],
    ['an audience nobody knows', textWith({ audience: ['older-adults', 'all'] }), /^audience\.1: /],
    ['an id used twice', textWith({ segments: [minimal.segments[0], minimal.segments[0]] }), /^segments\.1\.id: .*"a"/],
    ['a cue id used twice', segmentWith({ cues: [cue, { ...cue, startMs: 3 }] }), /^segments\.0\.cues\.1\.id: .*"c"/],
  ]
  it.each(cases)('%s', (_what, text, path) => {
    const error = errorOf(text)
    expect(error.code).toBe('sheet-field')
    expect(error.details[0]).toMatch(path)
  })

  it('all of them at once', () => {
    const error = errorOf(segmentWith({ use: 'sell', exercise: { name: 7 }, spans: [{ startMs: 1 }], cautions: [{}] }))
    expect(error.message).toBe('The log sheet has 5 wrong fields. Correct what is named below.')
    expect(error.details.map((line) => line.split(':')[0])).toEqual([
      'segments.0.use',
      'segments.0.exercise.name',
      'segments.0.spans.0.endMs',
      'segments.0.cautions.0.hazard',
      'segments.0.cautions.0.text',
    ])
  })
})

describe('a sheet made by hand', () => {
  const sheet = readLogSheet(minimalText)

  it('is filled in: nothing said, a person’s own, the first span in the clip', () => {
    expect(sheet).toMatchObject({
      title: '',
      language: 'en',
      audience: [],
      classCautions: [],
      music: null,
      people: null,
    })
    expect(sheet.segments[0]).toMatchObject({
      origin: 'person',
      state: 'accepted',
      use: 'lesson',
      exercise: { name: 'heel raise', alsoCalled: [], catalogueId: null },
      spans: [
        { startMs: 1000, endMs: 20_000, inClip: true, lockedIn: false },
        { startMs: 40_000, endMs: 50_000, inClip: false, lockedIn: false },
      ],
      prescription: null,
    })
  })

  it('may say null for what is not said', () => {
    const nulls = { prescription: null, loop: null, position: null, view: null, mirrored: null, sideShown: null }
    expect(readLogSheet(segmentWith(nulls))).toEqual(sheet)
  })

  it('may say itself which span is in the clip', () => {
    const spans = [
      { startMs: 1, endMs: 5, inClip: false },
      { startMs: 6, endMs: 9, inClip: true },
    ]
    expect(readLogSheet(segmentWith({ spans })).segments[0]?.spans.map((one) => one.inClip)).toEqual([false, true])
  })

  it('may begin with a byte order mark, which is never written (RFC 8259, section 8.1)', () => {
    expect(readLogSheet(`\uFEFF${minimalText}`)).toEqual(sheet)
    expect(writeLogSheet(sheet).charCodeAt(0)).toBe('{'.charCodeAt(0))
  })

  it('may hold a name that would reach into the program, without effect', () => {
    const read = readLogSheet('{"__proto__":{"title":"x"},' + minimalText.slice(1))
    expect(Object.getPrototypeOf(read)).toBe(Object.prototype)
    expect(read.title).toBe('')
  })

  it('read, written and read again is the same', () => {
    expect(readLogSheet(writeLogSheet(sheet))).toStrictEqual(sheet)
  })
})
