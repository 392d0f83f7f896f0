// Where lines may end. Sources: BBC Subtitle Guidelines v1.2.5 (March 2026), 3.4; DCMP Captioning Key, "Text".
import { describe, expect, it } from 'vitest'
import { BREAK, breakCost } from '../../../core/captions/judge-break.ts'
import { CAPTION_PROFILES } from '../../../core/captions/profiles.ts'
import { splitLines } from '../../../core/captions/split-lines.ts'

describe('breakCost', () => {
  const cases: [string, string, keyof typeof BREAK][] = [
    ['three', 'sets', 'numberAndUnit'],
    ['10', 'reps', 'numberAndUnit'],
    ['twenty-five', 'seconds', 'numberAndUnit'],
    ['8', 'to', 'numberAndUnit'],
    ['3', 'x', 'numberAndUnit'],
    ['x', '10', 'numberAndUnit'],
    ['Dr.', 'Lee', 'numberAndUnit'],
    ['the', 'bell', 'insidePhrase'],
    ['your', 'chest', 'insidePhrase'],
    ['and', 'stand', 'insidePhrase'],
    ['don’t', 'lean', 'insideVerb'],
    ['you', 'feel', 'insideVerb'],
    ['from', 'hips', 'afterPreposition'],
    ['hold', 'bell', 'plain'],
    ['bell', 'at', 'beforePhrase'],
    ['tall', 'and', 'beforeConjunction'],
    ['chest,', 'then', 'clause'],
    ['legs;', 'push', 'clause'],
    ['rest', '–', 'plain'],
    ['tall.', 'Rest', 'sentence'],
    ['tall!', 'rest', 'sentence'],
    ['up?”', 'Rest', 'sentence'],
    ['approx.', '5', 'plain'],
    ['sec.', 'between', 'beforePhrase'],
  ]
  it.each(cases)('%s | %s: %s', (word, next, kind) => {
    expect(breakCost(word, next)).toBe(BREAK[kind])
  })
})

describe('splitLines', () => {
  const cases: [string, keyof typeof CAPTION_PROFILES, string[]][] = [
    ['', 'web', []],
    ['Rest.', 'web', ['Rest.']],
    ['Keep your elbows by your ribs all through.', 'web', ['Keep your elbows by your ribs all through.']],
    [
      'Sit tall with your arms long by your sides, palms facing forwards.',
      'web',
      ['Sit tall with your arms long', 'by your sides, palms facing forwards.'],
    ],
    [
      'Stand up slowly, and if you feel dizzy, sit straight back down.',
      'web',
      ['Stand up slowly, and if you feel dizzy,', 'sit straight back down.'],
    ],
    [
      'We will do this for three sets of ten reps on each side.',
      'vertical',
      ['We will do this for', 'three sets of ten reps', 'on each side.'],
    ],
  ]
  it.each(cases)('%j (%s)', (text, profile, lines) => {
    expect(splitLines(text.split(' ').filter(Boolean), CAPTION_PROFILES[profile])).toEqual(lines)
  })

  it('a word longer than a line stays whole', () => {
    const word = 'a'.repeat(60)
    expect(splitLines(['Hold', word, 'it'], CAPTION_PROFILES.web).join(' ')).toBe(`Hold ${word} it`)
  })
})
