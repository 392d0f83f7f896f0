// Text that nobody says: endless lines, words and repeats. The pieces that are looked at stay short, and every draft comes back.
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { mendLetters } from '../../../core/draft/mend-letters.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { LONGEST_SENTENCE, splitSentences } from '../../../core/draft/split-speech.ts'
import { foldWords } from '../../../core/catalogue/fold-words.ts'
import { orderObjects } from '../../../core/transcript/json-lines.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

function fill(part: string, length: number): string {
  return part.repeat(Math.ceil(length / part.length)).slice(0, length)
}

function lineOf(text: string) {
  return [{ startMs: 0, endMs: 60_000, text, words: [], speaker: null }]
}

describe('splitSentences', () => {
  it.each(['10 x 10 ', 'squat, ', 'abcdefghij', 'a\t', '1', '"(', '…a'])(
    'cuts an endless %j into short pieces',
    (part) => {
      const text = fill(part, 50_000)
      const pieces = splitSentences(text)
      expect(pieces.reduce((most, { offset, end }) => Math.max(most, end - offset), 0)).toBeLessThanOrEqual(
        LONGEST_SENTENCE,
      )
      expect(pieces.length).toBeLessThan((2.1 * text.length) / LONGEST_SENTENCE)
    },
  )

  it('cuts between two words and loses none', () => {
    const text = fill('push your hips back and ', 5000).trim()
    const pieces = splitSentences(text)
    expect(pieces.length).toBeGreaterThan(4)
    expect(pieces.map(({ offset, end }) => text.slice(offset, end)).join(' ')).toBe(text)
  })

  it('leaves a sentence of two hundred words whole', () => {
    const text = `${fill('down ', 990)}now.`
    expect(splitSentences(text)).toEqual([{ offset: 0, end: text.length }])
  })

  it('finds the end of a sentence behind a million dots', () => {
    expect(splitSentences(`${'.'.repeat(1_000_000)}x go. Stop.`).length).toBeGreaterThan(1)
  })
})

describe('readSpeech', () => {
  it('shows no word longer than words are, and keeps every character in its place', () => {
    const text = `squat ${'a'.repeat(100_000)} lunge`
    const { text: read } = readSpeech(lineOf(text))
    expect(read).toHaveLength(text.length)
    expect(read.split(/\s+/).every((word) => word.length < 200)).toBe(true)
    expect(read).toMatch(/\slunge$/)
  })
})

describe('words said over and over', () => {
  it('stay one word, and the mark behind them counts', () => {
    const words = foldWords(`${'press '.repeat(20_000)}um, um row`)
    expect(words.map(({ text, afterMark }) => [text, afterMark])).toEqual([
      ['press', false],
      ['row', true],
    ])
  })

  it('a word longer than any is no slip', () => {
    const text = 'a'.repeat(2_000_000)
    expect(mendLetters(text)).toBe(text)
  })
})

describe('draftSheet', () => {
  it.each(['squat, ', 'abcdefghij', '1234567890', ',', '(', '"', '\u00a0', 'a\u0001', 'um ', '.""""', '1:30'])(
    'comes back from a line of 10,000 characters of %j',
    (part) => {
      const transcript = parseTranscript(`[0:05] go ${fill(part, 10_000)} go`)
      expect(draftSheet({ transcript }).segments.length).toBeLessThanOrEqual(1)
    },
  )

  it('comes back from 60,000 characters of "10 x 10"', () => {
    const transcript = parseTranscript(`[0:05] ${fill('10 x 10 ', 60_000)}`)
    expect(draftSheet({ transcript }).segments).toEqual([])
  })

  it('still reads the class around a hostile line', () => {
    const taught =
      'Next up is the goblet squat. Stand tall, hold the bell at your chest. Push your hips back. Ten reps.'
    const transcript = parseTranscript(
      `[0:05] ${fill('10 x 10 ', 5_000)}.\n[3:00] ${taught}\n[4:00] ${'a'.repeat(20_000)}`,
    )
    const names = draftSheet({ transcript }).segments.map(({ exercise }) => exercise.name.toLowerCase())
    expect(names).toEqual(['goblet squat'])
  })
})

describe('orderObjects', () => {
  it('goes through lists that lie in each other, an object before its contents', () => {
    const deep: unknown = JSON.parse(`[{"a":{"b":1},"c":${'['.repeat(50_000)}{"d":2}${']'.repeat(50_000)}},{"e":3}]`)
    expect(orderObjects(deep).map((one) => Object.keys(one)[0])).toEqual(['a', 'b', 'd', 'e'])
  })
})
