// The plain words that phrase lists are written in.
import { describe, expect, it } from 'vitest'
import { plainWords } from '../../../core/draft/split-speech.ts'

describe('plainWords', () => {
  it.each([
    ["Don't rush, it's slow!", 'dont rush its slow'],
    ['So, um, you know, ten of those, erm', 'so ten of those'],
    ['sort of sort the band kind', 'sort the band kind'],
    ['the the the knee, knee', 'the knee'],
    ['it, er, it', 'it'],
    ['At 5:30, 5 reps', 'at 5:30 5 reps'],
    ['… — !', ''],
    ['um', ''],
    ['you', 'you'],
  ])('"%s" is "%s"', (text, words) => {
    expect(plainWords(text)).toBe(words)
  })
})
