// Slips of one letter: mended where the word is no other, left alone where it is.
import { describe, expect, it } from 'vitest'
import { mendLetters } from '../../../core/draft/mend-letters.ts'

describe('mendLetters', () => {
  it.each([
    ['fise breaths, then twelwe', 'five breaths, then twelve'],
    ['Thnn goblet squots', 'Then goblet squats'],
    ['thirty seconds rost', 'thirty seconds rest'],
  ])('mends %s', (heard, meant) => {
    expect(mendLetters(heard)).toBe(meant)
  })

  it.each(['', 'that is fine', 'a nice match', 'she stops and sits', 'none of the nicks', 'a b c 12 !'])(
    'leaves %j alone',
    (text) => {
      expect(mendLetters(text)).toBe(text)
    },
  )

  it('keeps every character in its place', () => {
    const text = 'Reverse lunjes, eigkt on each sidf, thirfy seconds'
    expect(mendLetters(text)).toHaveLength(text.length)
  })
})
