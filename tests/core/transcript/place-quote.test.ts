// Where a quote stands in time: in step with the letters, by word times, and across line ends.
import { readFileSync, readdirSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { joinLines } from '../../../core/transcript/join-lines.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { quoteAt, timeAt } from '../../../core/transcript/place-quote.ts'
import type { Transcript, TranscriptLine } from '../../../shared/transcript.ts'

const line: TranscriptLine = { startMs: 1000, endMs: 3000, text: 'hold it now!', words: [], speaker: null }
const withWords: TranscriptLine = {
  ...line,
  words: [
    { startMs: 1100, endMs: 1500, text: 'hold' },
    { startMs: 2000, endMs: 2200, text: 'it' },
    { startMs: 2500, endMs: 2900, text: 'now' },
  ],
}

describe('timeAt', () => {
  const cases: [string, TranscriptLine, number, number][] = [
    ['before the text', line, -1, 1000],
    ['at the start', line, 0, 1000],
    ['in the middle', line, 6, 2000],
    ['at the end', line, 12, 3000],
    ['after the text', line, 99, 3000],
    ['inside a word', withWords, 2, 1300],
    ['at a word', withWords, 5, 2000],
    ['between words: the next one', withWords, 4, 2000],
    ['after the last word', withWords, 11, 3000],
    ['an empty line', { ...line, text: '' }, 0, 1000],
  ]
  it.each(cases)('%s', (_name, on, offset, ms) => {
    expect(timeAt(on, offset)).toBe(ms)
  })

  it('a quote is the exact text', () => {
    expect(quoteAt(line, 5, 2)).toEqual({ atMs: 1833, text: 'it' })
  })
})

describe('joinLines', () => {
  const second: TranscriptLine = { startMs: 3000, endMs: 4000, text: 'rest', words: [], speaker: null }
  const joined = joinLines([line, second])

  it('finds every character again', () => {
    expect(joined.text).toBe('hold it now! rest')
    for (let offset = 0; offset < joined.text.length; offset++) {
      const at = joined.at(offset)
      expect(at.line.text[at.offset] ?? ' ').toBe(joined.text[offset])
    }
  })

  it('gives line, offset and time', () => {
    expect(joined.at(15)).toEqual({ line: second, lineIndex: 1, offset: 2, ms: 3500 })
    expect(joined.at(12)).toEqual({ line, lineIndex: 0, offset: 12, ms: 3000 })
  })

  it('has nothing to find without lines', () => {
    expect(() => joinLines([]).at(0)).toThrow(RangeError)
  })
})

describe('the annotated classes: every quote stands where the annotation says', () => {
  const folder = path.resolve(import.meta.dirname, '../../fixtures/corpus/dev')
  interface Gold {
    duration: number
    exercises: { cues: { at: number; evidence: string }[]; prescription: { at: number; evidence: string } | null }[]
  }
  it.each(readdirSync(folder))('%s', (name) => {
    const gold = JSON.parse(readFileSync(path.join(folder, name, 'gold.json'), 'utf8')) as Gold
    const text = readFileSync(path.join(folder, name, 'transcript.txt'), 'utf8')
    const { lines } = parseTranscript(text, { durationMs: gold.duration * 1000 }) as Transcript
    const quotes = gold.exercises.flatMap((one) => [...one.cues, ...(one.prescription ? [one.prescription] : [])])
    const lost = quotes.filter(({ at, evidence }) => {
      // Annotated times have one decimal and are linear in the characters of the block.
      return !lines.some((one) => {
        for (let from = one.text.indexOf(evidence); from >= 0; from = one.text.indexOf(evidence, from + 1)) {
          if (Math.abs(timeAt(one, from) - at * 1000) <= 51) return true
        }
        return false
      })
    })
    expect(lost).toEqual([])
  })
})
