// The small language of the word lists.
import { describe, expect, it } from 'vitest'
import { HAZARD_GROUPS, HAZARD_WORDS } from '../../../core/cautions/words/en/hazard-words.ts'
import { indexPhrases, plainSentences, readPhrase } from '../../../core/cautions/words/match-phrase.ts'
import { SAID_IN_CLASSES } from './said-in-classes.ts'
import { SAID, SAID_FREELY } from './said-of-hazards.ts'

const GROUPS = { no: "don't|never" }
const says = (pattern: string, text: string) => plainSentences(text).some(readPhrase(pattern, GROUPS))

describe('readPhrase', () => {
  it.each(['{unknown} .. word', 'a & b & c'])('refuses %s', (pattern) => {
    expect(() => readPhrase(pattern, GROUPS)).toThrow(RangeError)
  })

  it.each([
    ['pull* .. head', 'pulling on your head', true],
    ['pull* .. head', 'pulling up with your hands and head', false],
    ['pull* ... head', 'pulling up with your hands and head', true],
    ['head', 'ahead of us', false],
    ['light_headed', 'a bit light-headed', true],
    ['{no} .. hold', 'Dont ever hold it', true],
    ['{no} .. hold', 'Don’t hold it', true],
    ['pinch* & shoulder', 'the shoulder may pinch', true],
    ['pinch* & shoulder', 'pinch the edge of the shoulder', true],
    ['pinch* & shoulder', 'The shoulder. A pinch.', false],
    ['a .. b', 'a 1 2 3 b', true],
    ['a .. b', 'a 1 2 3 4 b', false],
  ])('%s in "%s": %s', (pattern, text, found) => {
    expect(says(pattern, text)).toBe(found)
  })

  it('leaves out a find that a word in front undoes', () => {
    const phrase = readPhrase('hold .. breath', {}, /(?: dont(?: [^ ]+){0,2})$/)
    expect(plainSentences("don't you hold your breath").some(phrase)).toBe(false)
    expect(plainSentences('now hold your breath').some(phrase)).toBe(true)
  })
})

describe('plainSentences', () => {
  it('splits at stops and leaves out fillers and doubled words', () => {
    expect(plainSentences('Um, keep keep it you know up. Sit, down!')).toEqual([' keep it up', ' sit down'])
    expect(plainSentences(' . ')).toEqual([])
  })
})

describe('indexPhrases', () => {
  const PATTERNS = Object.entries(HAZARD_WORDS).flatMap(([key, patterns]) =>
    patterns.map((pattern) => ({ key, pattern })),
  )
  const SENTENCES = [...Object.values(SAID), ...Object.values(SAID_FREELY), ...Object.values(SAID_IN_CLASSES)]
    .flatMap(({ covers, misses }) => [...covers, ...misses])
    .flatMap(plainSentences)

  it('refuses what readPhrase refuses, at the latest when it is tried', () => {
    expect(() => indexPhrases([{ key: 1, pattern: '{unknown} .. word' }])).toThrow(RangeError)
    expect(() => indexPhrases([{ key: 1, pattern: 'a & b & c' }])(' a b c')).toThrow(RangeError)
  })

  it('finds what each phrase by itself finds, and no more', () => {
    const said = indexPhrases(PATTERNS, HAZARD_GROUPS)
    const phrases = PATTERNS.map(({ key, pattern }) => ({ key, says: readPhrase(pattern, HAZARD_GROUPS) }))
    for (const sentence of SENTENCES) {
      const keys = new Set(phrases.filter(({ says }) => says(sentence)).map(({ key }) => key))
      expect([...said(sentence)].sort(), sentence).toEqual([...keys].sort())
    }
  })
})
