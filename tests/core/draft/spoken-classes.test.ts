// Invented classes in many styles, with whole doses: the apart ones were tried before the rules were changed for such speech.
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { plain, scoreClass, sumScores } from './spoken-class.ts'
import type { SpokenClass } from './spoken-class.ts'
import { SPOKEN_CLASSES_APART } from './spoken-classes-apart.ts'
import { SPOKEN_CLASSES } from './spoken-classes.ts'

const asWritten = (text: string): string => text

function scoreAll(classes: readonly SpokenClass[], change: (text: string) => string) {
  return sumScores(
    classes.map((one) => scoreClass(one, draftSheet({ transcript: parseTranscript(change(one.transcript)) }))),
  )
}

describe.each([
  ['tuned on', SPOKEN_CLASSES, asWritten, { found: 50, dosesRight: 43, invented: 3 }],
  ['tuned on, without punctuation', SPOKEN_CLASSES, plain, { found: 45, dosesRight: 34, invented: 4 }],
  ['apart', SPOKEN_CLASSES_APART, asWritten, { found: 40, dosesRight: 33, invented: 2 }],
  ['apart, without punctuation', SPOKEN_CLASSES_APART, plain, { found: 39, dosesRight: 32, invented: 3 }],
] as const)('classes %s', (_what, classes, change, floor) => {
  const score = scoreAll(classes, change)

  it('finds the exercises', () => {
    expect(score.found, score.missed.join('\n')).toBeGreaterThanOrEqual(floor.found)
  })

  it('gives the doses as said, whole', () => {
    expect(score.dosesRight, score.missed.join('\n')).toBeGreaterThanOrEqual(floor.dosesRight)
  })

  it('makes up few exercises', () => {
    expect(score.invented, score.missed.join('\n')).toBeLessThanOrEqual(floor.invented)
  })
})
