// Breaks in speech without punctuation: where sentences and clauses go apart, and where they must not.
import { describe, expect, it } from 'vitest'
import { restoreBreaks } from '../../../core/draft/restore-breaks.ts'

describe('restoreBreaks', () => {
  it.each(['', ' ', 'hello', '12', '... !', 'squat squat squat squat'])('takes %j and keeps its length', (text) => {
    expect(restoreBreaks(text)).toHaveLength(text.length)
  })

  it('changes nothing but spaces', () => {
    const text = "next up goblet squats hold the bell at your chest three sets of ten don't let your knees fall in"
    expect(restoreBreaks(text).replace(/[\n\v]/g, ' ')).toBe(text)
  })

  it.each([
    ['sets from their dose', 'stand up tall three sets of ten keep the bell close', 'three sets of ten'],
    ['a name from its set-up', 'okay next exercise push ups hands under your shoulders', 'push ups'],
    ['a time from its unit', 'squeeze everything hold it for forty five seconds breathe', 'forty five seconds'],
  ])('does not part %s', (_what, text, whole) => {
    expect(restoreBreaks(text)).toContain(whole)
  })

  it('parts a warning from the movement before it', () => {
    expect(restoreBreaks("lower your chest and press away don't let your hips sag")).toMatch(/away[\n\v]don't/)
  })

  it('gives the same each time', () => {
    const text = 'roll onto your side clams knees bent heels together open the top knee twelve on each side'
    expect(restoreBreaks(text)).toBe(restoreBreaks(text))
  })

  // Fitted by tests/fit/fit-breaks.ts; the sentences are our own and stand in no class.
  it.each([
    [
      'a dose from the cue behind it',
      'ten of those each side keep your ribs down and breathe out',
      /each side[\n\v]keep/,
    ],
    ['a condition from what it asks for', 'if your wrist aches make a fist on the mat instead', /aches[\n\v]make/],
    ['a number from a longer one before it', 'the rate is 26 to 28 3 short strokes to start with', /28[\n\v]3/],
  ])('parts %s', (_what, text, parted) => {
    expect(restoreBreaks(text)).toMatch(parted)
  })
})
