// What each transcript reader takes from its form beyond plain lines.
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import type { ClassPlan, Transcript } from '../../../shared/transcript.ts'

const fixture = (name: string) =>
  readFileSync(path.resolve(import.meta.dirname, '../../fixtures/transcripts', name), 'utf8')
const timed = (text: string, durationMs: number | null = null) => parseTranscript(text, { durationMs }) as Transcript
const vtt = (...payloads: string[]) =>
  `WEBVTT\n\n${payloads.map((text, index) => `00:0${index}.000 --> 00:0${index + 2}.000\n${text}\n`).join('\n')}`

describe('WebVTT', () => {
  const texts: [string, string, string][] = [
    ['tags', '<i>Hold</i> <b.x>it</b> <lang en>there</lang>', 'Hold it there'],
    ['named references', 'Sam &amp; Jo &lt;3 caf&eacute; &frac12; way', 'Sam & Jo <3 café ½ way'],
    ['numeric references', '&#72;old &#x69;t &#xE9; &#128170; &#x80;', 'Hold it é 💪 €'],
    ['references that are none', 'Q&A, R&B; &nosuch; & done', 'Q&A, R&B; &nosuch; & done'],
    ['ruby notes left out', '<ruby>hold<rt>note</rt></ruby> it', 'hold it'],
    ['two lines', 'hold\nit', 'hold it'],
  ]
  it.each(texts)('%s', (_name, payload, text) => {
    expect(timed(vtt(payload)).lines[0]?.text).toBe(text)
  })

  it('a voice span names the speaker', () => {
    const { lines } = timed(fixture('short-class.vtt'))
    expect(lines.map((line) => line.speaker)).toEqual(['Maya', 'Maya', 'Maya'])
  })

  it('two voices in one caption become two lines that share its time by length', () => {
    const { lines } = timed(vtt('<v Ann>Hello there</v>\n<v Bo>Hi</v>'))
    expect(lines.map(({ startMs, endMs, text, speaker }) => ({ startMs, endMs, text, speaker }))).toEqual([
      { startMs: 0, endMs: 1692, text: 'Hello there', speaker: 'Ann' },
      { startMs: 1692, endMs: 2000, text: 'Hi', speaker: 'Bo' },
    ])
  })

  it('inner time stamps become word times', () => {
    expect(timed(fixture('short-class.vtt')).lines[2]?.words).toEqual([
      { startMs: 7250, endMs: 7538, text: 'Three' },
      { startMs: 7596, endMs: 7827, text: 'sets' },
      { startMs: 7885, endMs: 8000, text: 'of' },
      { startMs: 8000, endMs: 9000, text: 'ten.' },
    ])
  })

  it('overlapping captions are read', () => {
    expect(timed(vtt('one', 'two', 'three')).lines.map((line) => line.startMs)).toEqual([0, 1000, 2000])
  })

  it('rolling captions are read once, with their word times', () => {
    const { lines } = timed(fixture('rolling.vtt'))
    expect(lines.map((line) => line.text)).toEqual(['hold the bell', 'at your chest', 'and breathe'])
    expect(lines[1]?.words.map((word) => [word.text, word.startMs])).toEqual([
      ['at', 2010],
      ['your', 2500],
      ['chest', 3000],
    ])
  })

  it('a line that is truly said twice stays twice', () => {
    const { lines } = timed(vtt('And breathe.', 'And breathe.', 'Now the plank.', 'Hold it.'))
    expect(lines).toHaveLength(4)
  })
})

describe('stamped text', () => {
  it('a block ends where the next starts, the last at the end of the recording', () => {
    const { lines, durationMs } = timed('[0:00] a\n[1:00:05] b', 3_700_000)
    expect(lines.map((line) => [line.startMs, line.endMs])).toEqual([
      [0, 3_605_000],
      [3_605_000, 3_700_000],
    ])
    expect(durationMs).toBe(3_700_000)
  })

  it('without a duration the last block runs on at 150 words a minute', () => {
    expect(timed('[0:00] one two three four five').durationMs).toBe(2000)
  })

  it('or, from three blocks on, at the pace of the blocks before it', () => {
    const text = '[0:00] one two three four\n[0:02] one two three four\n[0:04] one two three four\n[0:06] one two'
    expect(timed(text).durationMs).toBe(7000)
  })

  it('blocks with the same stamp share their time by length', () => {
    expect(timed('[0:10] abc\n[0:10] d\n[0:18] e').lines.map((line) => line.startMs)).toEqual([10_000, 16_000, 18_000])
  })

  it('brackets that hold no time are text', () => {
    expect(timed('[0:00] a\n[music] b\n[10] c').lines.map((line) => line.text)).toEqual(['a [music] b [10] c'])
  })

  it('an empty block only ends the one before it', () => {
    expect(timed('[0:00] a\n[0:05]\n[0:10] b').lines.map((line) => [line.startMs, line.endMs, line.text])).toEqual([
      [0, 5000, 'a'],
      [10_000, 11_000, 'b'],
    ])
  })

  it('inner spaces and slips stay as they are', () => {
    expect(timed('[0:00] do it it  every day').lines[0]?.text).toBe('do it it  every day')
  })
})

describe('stamps without square brackets', () => {
  const said = [
    'Welcome in, find a mat.',
    'First up: glute bridges, lift your hips.',
    'Ten of those, then rest a while.',
  ]
  const stamps = ['0:01', '0:12', '1:02:33']
  const written = (form: (stamp: string, text: string) => string) =>
    said.map((text, at) => form(stamps[at] ?? '', text)).join('\n')

  it.each([
    ['round brackets', written((stamp, text) => `(${stamp}) ${text}`)],
    ['bare', written((stamp, text) => `${stamp} ${text}`)],
    ['a dash behind', written((stamp, text) => `${stamp} - ${text}`)],
    ['a line of its own', written((stamp, text) => `${stamp}\n${text}\n`)],
    ['a speaker before', written((stamp, text) => `Coach Anna  ${stamp}\n${text}\n`)],
  ])('%s', (_form, text) => {
    const { lines } = timed(text)
    expect(lines.map((line) => [line.startMs, line.text])).toEqual([
      [1000, said[0]],
      [12_000, said[1]],
      [3_753_000, said[2]],
    ])
  })

  it.each([
    ['holds of a plan', '1:00 plank\n0:30 side plank, left then right\n1:00 plank'],
    ['a ladder in a plan', '0:20 plank\n0:30 plank\n0:40 plank'],
    ['one time of day', 'Class at 9:30\nSquat 3 x 10\nPlank 1:00'],
  ])('stays a class plan: %s', (_what, text) => {
    expect(parseTranscript(text).kind).toBe('plan')
  })
})

describe('JSON with words', () => {
  const words = (gap: number) =>
    JSON.stringify([
      { start: 0, end: 0.5, text: 'hold' },
      { start: 0.5 + gap, end: 1 + gap, text: 'it' },
    ])
  it('a pause of 0.7 s ends a line, a shorter one does not', () => {
    expect(timed(words(0.7)).lines).toHaveLength(2)
    expect(timed(words(0.6)).lines).toHaveLength(1)
  })

  it('words of a segment are kept when they are the words of its text', () => {
    const segment = (words: { start: number; end: number; word: string }[]) =>
      timed(JSON.stringify({ segments: [{ start: 0, end: 2, text: 'Hold it.', words }] })).lines[0]?.words.length
    expect(
      segment([
        { start: 0, end: 1, word: 'Hold' },
        { start: 1, end: 2, word: 'it' },
      ]),
    ).toBe(2)
    expect(segment([{ start: 0, end: 1, word: 'Hold' }])).toBe(0)
  })

  it('language and length are taken from the file', () => {
    const { language, durationMs } = timed(
      '{"language": "en", "duration": 61.5, "words": [{"start": 0, "end": 1, "text": "a"}]}',
    )
    expect([language, durationMs]).toEqual(['en', 61_500])
  })
})

describe('class plan', () => {
  it('names and doses', () => {
    const plan = parseTranscript(fixture('plan.txt')) as ClassPlan
    expect(plan.title).toBe('Thursday strength')
    expect(plan.items.map(({ line, name, doseText }) => [line, name, doseText])).toEqual([
      [3, 'Goblet squat', '3 x 10'],
      [4, 'Bent-over row', '3 x 8 each side, rest 60 s'],
      [5, 'Plank', '45 s'],
      [6, 'Dead bug', null],
      [7, '90/90 hip switch', '8 each side'],
      [8, 'Zone 2 row', '20 min'],
      [9, 'Press-ups', 'max'],
      [10, 'Sit-to-stand', 'x 10'],
      [11, 'Plank hold', '30 s'],
      [12, "Child's pose", 'five breaths'],
      [13, 'Warm-up: cat cow', null],
      [15, 'Swings', '20'],
    ])
  })
})
