// Every form of transcript: what is refused and how, and that all forms of one class say the same.
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { AppError } from '../../../shared/errors.ts'
import type { Transcript } from '../../../shared/transcript.ts'

const fixture = (name: string) =>
  readFileSync(path.resolve(import.meta.dirname, '../../fixtures/transcripts', name), 'utf8')

function failure(text: string, durationMs: number | null = null): { code: string; details: readonly string[] } {
  try {
    parseTranscript(text, { durationMs })
  } catch (error) {
    if (error instanceof AppError) return { code: error.code, details: error.details }
    throw error
  }
  throw new Error('the text was read')
}

function timed(text: string, durationMs: number | null = null): Transcript {
  const result = parseTranscript(text, { durationMs })
  if (result.kind !== 'timed') throw new Error('the text was read as a plan')
  return result
}

describe('what is no transcript', () => {
  const cases: [string, string, string][] = [
    ['nothing', '', 'file-empty'],
    ['a byte order mark alone', '\uFEFF', 'file-empty'],
    ['blank lines', ' \n\r\n\t\n', 'file-empty'],
    ['control characters alone', '\0\0\u0001', 'file-empty'],
    ['bytes of a picture', 'PNG\0\0\0\uFFFD\uFFFD\0\0\uFFFD\0\0\0\0', 'file-not-text'],
    ['UTF-16 read as UTF-8', [...'[0:00] Hello there'].join('\0'), 'file-not-text'],
    [
      'prose without times',
      `${'We start with squats and then go on to something quite different today. '.repeat(4)}\n`,
      'transcript-unknown',
    ],
    ['numbers only', '1\n2\n3\n', 'transcript-unknown'],
    ['JSON that breaks off', '{"words": [', 'transcript-line'],
    ['JSON of something else', '{"name": "class"}', 'transcript-line'],
    ['WebVTT without captions', 'WEBVTT\n\nNOTE nothing here\n', 'transcript-line'],
  ]
  it.each(cases)('%s', (_name, text, code) => {
    expect(failure(text).code).toBe(code)
  })

  it('more than 20 MB', () => {
    expect(failure('[0:00] a\n'.repeat(2_400_000)).code).toBe('file-too-big')
  })
})

describe('bad lines are named, nothing is half-read', () => {
  const good = '00:00:01.000 --> 00:00:02.000\nHello\n\n'
  const cases: [string, string, string, string[]][] = [
    ['WebVTT: signature', `WEBVTTX\n\n${good}`, 'transcript-line', ['line 1: the file must start with WEBVTT']],
    [
      'WebVTT: end before start',
      `WEBVTT\n\n${good}00:00:05.000 --> 00:00:04.000\nx\n`,
      'transcript-line',
      ['line 6: the end does not lie after the start'],
    ],
    [
      'WebVTT: a comma in the time',
      'WEBVTT\n\n00:00:01,000 --> 00:00:02,000\nx\n',
      'transcript-line',
      ['line 3: the times cannot be read: No decimal separator (".") found.'],
    ],
    ['WebVTT: lost text', `WEBVTT\n\n${good}Hello\n\n`, 'transcript-line', ['line 6: text without a time line']],
    [
      'WebVTT: going back',
      `WEBVTT\n\n00:00:03.000 --> 00:00:04.000\nx\n\n${good}`,
      'transcript-order',
      ['line 6: the start lies before the start of an earlier cue'],
    ],
    [
      'SRT: end before start',
      '1\n00:00:02,000 --> 00:00:01,000\nx\n',
      'transcript-line',
      ['line 2: the end does not lie after the start'],
    ],
    [
      'SRT: no time',
      '1\n00:00:02 --> 00:01\nx\n',
      'transcript-line',
      ['line 2: "00:00:02 --> 00:01" is no time line; write 00:00:01,000 --> 00:00:02,500'],
    ],
    [
      'SRT: minute 61',
      '1\n00:61:02,000 --> 00:62:00,000\nx\n',
      'transcript-line',
      ['line 2: "00:61:02,000 --> 00:62:00,000" is no time line; write 00:00:01,000 --> 00:00:02,500'],
    ],
    [
      'SRT: text alone',
      '1\n00:00:01,000 --> 00:00:02,000\nx\n\nlost\n',
      'transcript-line',
      ['line 5: text without a time line'],
    ],
    [
      'SRT: going back',
      '1\n00:00:03,000 --> 00:00:04,000\nx\n\n2\n00:00:01,000 --> 00:00:02,000\ny\n',
      'transcript-order',
      ['line 6: the start lies before the start of an earlier caption'],
    ],
    [
      'stamps: second 75',
      '[0:00] a\n[0:75] b\n',
      'transcript-line',
      ['line 2: "[0:75]" is no time; write [m:ss] or [h:mm:ss]'],
    ],
    [
      'stamps: no digits for seconds',
      '[0:00] a\n[1:5] b\n',
      'transcript-line',
      ['line 2: "[1:5]" is no time; write [m:ss] or [h:mm:ss]'],
    ],
    [
      'stamps: text before the first',
      'Hello\n[0:00] a\n',
      'transcript-line',
      ['line 1: text before the first time stamp'],
    ],
    [
      'stamps: going back',
      '[0:10] a\n[0:05] b\n[0:08] c\n[0:12] d\n',
      'transcript-order',
      ['line 2: [0:05] lies before [0:10] above it', 'line 3: [0:08] lies before [0:10] above it'],
    ],
    [
      'words: end before start',
      '{"words": [\n {"start": 0, "end": 1, "text": "a"},\n {"start": 2, "end": 1, "text": "b"}\n]}',
      'transcript-line',
      ['line 3: the end lies before the start'],
    ],
    [
      'words: no number',
      '[\n{"start": "0", "end": 1, "text": "a"}]',
      'transcript-line',
      ['line 2: start and end must be numbers, 0 or more'],
    ],
    [
      'words: negative',
      '[{"start": -1, "end": 1, "text": "a"}]',
      'transcript-line',
      ['line 1: start and end must be numbers, 0 or more'],
    ],
    ['words: no text', '[{"start": 0, "end": 1}]', 'transcript-line', ['line 1: a text is missing']],
    [
      'words: going back',
      '[\n{"start": 2, "end": 3, "text": "{b"},\n{"start": 0, "end": 1, "text": "a"}]',
      'transcript-order',
      ['line 3: the start lies before the start of the item above'],
    ],
    [
      'words: braces inside a text',
      '[\n{"start": 0, "end": 1, "text": "{{\\"{"},\n{"start": 2, "end": 1, "text": "a"}]',
      'transcript-line',
      ['line 3: the end lies before the start'],
    ],
    ['plan: no name', 'Squat 3 x 8\nPlank\n12\n', 'transcript-line', ['line 3: no name of an exercise']],
  ]
  it.each(cases)('%s', (_name, text, code, details) => {
    expect(failure(text)).toEqual({ code, details })
  })

  it('lines are counted the same with CR and CRLF', () => {
    const lines = ['[0:10] a', '[0:05] b']
    for (const end of ['\n', '\r', '\r\n']) expect(failure(lines.join(end)).details[0]).toMatch(/^line 2:/)
  })

  it('at most twenty lines are named', () => {
    const { details } = failure(`[0:00] a\n${'[0:99] b\n'.repeat(30)}`)
    expect(details).toHaveLength(21)
    expect(details.at(-1)).toBe('and 10 more')
  })

  it('JSON that breaks off names its line', () => {
    expect(failure('{\n"words": [\n{"start": 0,,}').details[0]).toMatch(/^line 3: /)
  })

  it.each([
    '[0:00] a\n[2:00] b\n',
    'WEBVTT\n\n02:00.000 --> 02:01.000\nx\n',
    '1\n00:02:00,000 --> 00:02:01,000\nx\n',
    '[{"start": 120, "end": 121, "text": "a"}]',
  ])('times far past the end of the recording: %j', (text) => {
    expect(failure(text, 60_000).details[0]).toMatch(/after the recording's end/)
  })
})

describe('one class in five forms', () => {
  const texts = ['Hello & welcome.', 'Goblet squat: hold the bell at your chest.', 'Three sets of ten.']
  const forms: [string, Transcript['form'], number[]][] = [
    ['short-class.vtt', 'webvtt', [500, 3000, 7250]],
    ['short-class.srt', 'srt', [500, 3000, 7250]],
    ['short-class.txt', 'stamped-text', [0, 3000, 7000]],
    ['short-class.words.json', 'words-json', [500, 3000, 7250]],
    ['short-class.segments.json', 'words-json', [500, 3000, 7250]],
  ]
  it.each(forms)('%s', (name, form, starts) => {
    const { lines, ...rest } = timed(fixture(name), 9000)
    expect(rest.form).toBe(form)
    expect(rest.durationMs).toBe(9000)
    expect(lines.map((line) => line.text)).toEqual(texts)
    expect(lines.map((line) => line.startMs)).toEqual(starts)
  })

  it.each(forms)('%s: the same with CRLF, CR and a byte order mark', (name) => {
    const text = fixture(name)
    const plain = timed(text)
    for (const other of [text.replaceAll('\n', '\r\n'), text.replaceAll('\n', '\r'), `\uFEFF${text}`]) {
      expect(timed(other)).toEqual(plain)
    }
  })

  it('a NUL and other control characters inside the text vanish', () => {
    expect(timed('[0:00] Hel\0lo\u0007\u009D there\f you').lines[0]?.text).toBe('Hello there  you')
  })
})

describe('every reader is linear: a few megabytes of each nasty pattern', () => {
  const mega = (piece: string) => piece.repeat(Math.ceil(3_000_000 / piece.length))
  const cue = '00:00:01.000 --> 00:00:02.000\n'
  const cases: [string, string][] = [
    ['stamped text', `[0:00] ${mega('press and hold ')}`],
    ['stamped lines', mega('[0:00] press and hold\n')],
    ['blanks in a stamped line', `[0:00] a${mega(' ')}b`],
    ['blanks in a caption', `WEBVTT\n\n${cue}a${mega(' ')}b`],
    ['unknown references', `WEBVTT\n\n${cue}${mega('&zz;')}`],
    ['open tags', `WEBVTT\n\n${cue}${mega('<c.a ')}`],
    ['many captions', `WEBVTT\n\n${mega(`${cue}Hold the bell\n\n`)}`],
    ['SRT tags', `1\n00:00:01,000 --> 00:00:02,000\n${mega('<b ')}x`],
    ['SRT captions', mega('1\n00:00:01,000 --> 00:00:02,000\nHold the bell\n\n')],
    ['words', `[${mega('{"start":1,"end":2,"text":"hold"},')}{"start":1,"end":2,"text":"a"}]`],
    ['a long JSON text', `[{"start":1,"end":2,"text":"${mega('hold \\" ')}"}]`],
    ['a plan', mega('Goblet squat: 3 x 10\n')],
  ]
  it.each(cases)('%s', (_name, text) => {
    expect(parseTranscript(text).kind).toBeTypeOf('string')
  })

  it('dashes without end are no plan', () => {
    expect(failure(`Squat ${mega('- ')}x`).code).toBe('transcript-unknown')
  })

  it('tags nested without end are refused by line', () => {
    expect(failure(`WEBVTT\n\n${cue}${mega('<b>')}`)).toEqual({
      code: 'transcript-line',
      details: ['line 4: the tags of the text are nested too deep'],
    })
  })
})
