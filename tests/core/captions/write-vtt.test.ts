// What we write is what we meant: WebVTT and SRT come back as they were; nothing in a text can break a file.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readVtt } from '../../../core/captions/read-vtt.ts'
import { writeSrt } from '../../../core/captions/write-srt.ts'
import { formatVttTime, writeVtt } from '../../../core/captions/write-vtt.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import type { CaptionCue } from '../../../shared/captions.ts'
import type { Transcript } from '../../../shared/transcript.ts'
import { captionLists } from '../../helpers/caption-cases.ts'

/** The plain model, as two readings can be compared. */
const plain = ({ startMs, endMs, lines, speaker, id }: CaptionCue) => ({
  startMs,
  endMs,
  lines,
  speaker: speaker ?? null,
  id: id ?? '',
})
const cue = (fields: Partial<CaptionCue>): CaptionCue => ({ startMs: 0, endMs: 1000, lines: ['x'], ...fields })
const payload = (fields: Partial<CaptionCue>) =>
  writeVtt([cue(fields)])
    .split('\n')
    .slice(3, -1)
    .join('\n')

describe('writeVtt', () => {
  it('refuses a caption that does not end after its start', () => {
    expect(() => writeVtt([cue({ endMs: 0 })])).toThrow('not after its start')
    expect(() => writeVtt([cue({ endMs: NaN })])).toThrow('not after its start')
  })

  it('leaves out captions without text', () => {
    expect(writeVtt([])).toBe('WEBVTT\n\n')
    expect(writeVtt([cue({ lines: [] }), cue({ lines: [' ', '\0', '\n\n'] })])).toBe('WEBVTT\n\n')
  })

  // Source: WebVTT, W3C, "WebVTT caption or subtitle cue text" and "WebVTT file structure".
  const texts: [string, string[], string][] = [
    ['markup', ['a < b & c > d'], 'a &lt; b &amp; c &gt; d'],
    ['an arrow', ['push --> pull'], 'push --&gt; pull'],
    ['an escape that was typed', ['&amp;'], '&amp;amp;'],
    ['blank lines', ['a\n\nb'], 'a\nb'],
    ['control characters', ['a\0b\u0007'], 'ab'],
    ['other line ends', ['a\r\nb\u2028c\rd'], 'a\nb\nc\nd'],
    ['half a character pair', ['a\uD83D'], 'a\uFFFD'],
  ]
  it.each(texts)('%s', (_name, lines, written) => {
    expect(payload({ lines })).toBe(written)
  })

  const ids: [string, string[], string[]][] = [
    ['twice the same', ['a', 'a', 'a'], ['a', 'a-2', 'a-3']],
    ['an arrow', ['a --> b'], ['a -> b']],
    ['two lines', ['a\nb'], ['a b']],
    ['the word of another block', ['NOTE 1', 'STYLE', 'REGION'], ['c-NOTE 1', 'c-STYLE', 'c-REGION']],
    ['none', ['', ' '], ['', '']],
  ]
  it.each(ids)('ids: %s', (_name, given, written) => {
    const { cues, problems } = readVtt(writeVtt(given.map((id) => cue({ id }))))
    expect(cues.map((one) => one.id)).toEqual(written)
    expect(problems).toEqual([])
  })

  it('sorts by start, longer first', () => {
    const text = writeVtt([cue({ startMs: 5, endMs: 9 }), cue({ startMs: 0, endMs: 3 }), cue({ startMs: 0, endMs: 4 })])
    expect(readVtt(text).cues.map((one) => [one.startMs, one.endMs])).toEqual([
      [0, 4],
      [0, 3],
      [5, 9],
    ])
  })

  it('a voice', () => {
    expect(payload({ speaker: 'Ann & Bo' })).toBe('<v Ann &amp; Bo>x')
  })

  it.each([
    [0, '00:00:00.000'],
    [1_999, '00:00:01.999'],
    [3_599_999, '00:59:59.999'],
    [3_600_000, '01:00:00.000'],
    [360_000_000, '100:00:00.000'],
  ])('%i ms is %s', (ms, text) => {
    expect(formatVttTime(ms)).toBe(text)
  })
})

describe('there and back', () => {
  it('WebVTT: reading gives what was written, and writing that gives the same file', () => {
    fc.assert(
      fc.property(captionLists, (cues) => {
        const text = writeVtt(cues)
        const { cues: read, problems } = readVtt(text)
        expect(problems).toEqual([])
        expect(read.map(plain)).toEqual(cues.map(plain))
        expect(writeVtt(read)).toBe(text)
      }),
      { numRuns: 500 },
    )
  })

  it('SRT: times and text come back, where the text holds no tags', () => {
    fc.assert(
      fc.property(captionLists, (cues) => {
        const simple = cues.map((one) => ({
          ...one,
          lines: one.lines.map((line) => `w ${line.replace(/[<>&{}]/g, '')}`.trim()),
        }))
        fc.pre(simple.length > 0)
        const { lines } = parseTranscript(writeSrt(simple)) as Transcript
        // A reader of rolling captions may join what repeats.
        fc.pre(new Set(simple.map((one) => one.lines.join(' '))).size === simple.length)
        const flat = (text: string) => text.replaceAll('-->', '->').replace(/\s+/g, ' ')
        expect(lines.map((line) => [line.startMs, line.endMs, flat(line.text)])).toEqual(
          simple.map((one) => [one.startMs, one.endMs, flat(one.lines.join(' '))]),
        )
      }),
      { numRuns: 200 },
    )
  })

  it('any text at all is read without failing', () => {
    fc.assert(
      fc.property(
        fc.string({
          unit: fc.constantFrom('\n', '-->', 'WEBVTT', ' ', '00:01.000', '<v a>', '&', ';', 'REGION', 'id:a', 'x'),
        }),
        (text) => {
          const { cues } = readVtt(`WEBVTT\n${text}`)
          expect(cues.every((one) => Number.isInteger(one.startMs) && Number.isInteger(one.endMs))).toBe(true)
        },
      ),
      { numRuns: 500 },
    )
  })
})

describe('writeSrt', () => {
  it('numbers, commas, plain text', () => {
    expect(writeSrt([cue({ lines: ['Hold', 'it.'], speaker: 'Maya' }), cue({ startMs: 1000, endMs: 2500 })])).toBe(
      '1\n00:00:00,000 --> 00:00:01,000\nHold\nit.\n\n2\n00:00:01,000 --> 00:00:02,500\nx\n',
    )
  })
})
