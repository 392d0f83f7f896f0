// Amounts: number words, ranges, times, distances, lists, slips. Broken and odd input first.
import { describe, expect, it } from 'vitest'
import { compilePattern } from '../../../core/dose/match-pattern.ts'
import { readAmounts } from '../../../core/dose/read-amounts.ts'

const shown = (text: string): string =>
  readAmounts(text)
    .map(({ tag, min, max, values }) => {
      if (values) return `${tag}[${values.map((value) => value ?? 'x').join(' ')}]`
      return min === undefined ? tag : `${tag}[${String(min)}${min === max ? '' : ` ${String(max)}`}]`
    })
    .join(' ')

const cases: readonly [text: string, pieces: string][] = [
  ['', ''],
  ['ten to two', 'N[10] to N[2]'],
  ['twenty five', 'N[25]'],
  ['forty-five seconds', 'T[45]'],
  ['a hundred and twenty', 'N[120]'],
  ['two thousand', 'N[2000]'],
  ['1,500 m', 'D[1500]'],
  ['half a dozen', 'N[6]'],
  ['this one', 'this one'],
  ['8–12', 'N[8 12]'],
  ['between eight and twelve', 'N[8 12]'],
  ['at least ten', 'N[10 null]'],
  ['up to a minute', 'T[null 60]'],
  ['a minute thirty', 'T[90]'],
  ['a minute and a half', 'T[90]'],
  ['two and a half minutes', 'T[150]'],
  ['half a minute', 'T[30]'],
  ['three-quarters of a minute', 'T[45]'],
  ['a quarter of an hour', 'T[900]'],
  ['1:30', 'T[90]'],
  ['1½ min', 'T[90]'],
  ['thirty seconds to a minute', 'T[30 60]'],
  ['30″', 'T[30]'],
  ['ten, eight and six', 'L[10 8 6]'],
  ['10-8-6', 'L[10 8 6]'],
  ['three, two, one', 'C[3 2 1]'],
  ['40X0 tempo', 'M[4 0 x 0] tempo'],
  ['two, three sets', 'N[2 3] sets'],
  ['twice a week', 'N[2] times a week'],
  ['um, ten, uh, reps', ', N[10] , , reps'],
  // the international yard is 0.9144 m and the mile 1609.344 m, exactly (agreement of 1959)
  ['100 yards', 'D[91.44]'],
  ['a mile', 'a mile'],
  ['one mile', 'D[1609.34]'],
]

describe('readAmounts', () => {
  it.each(cases)('%j', (text, pieces) => {
    expect(shown(text)).toBe(pieces)
  })

  it('keeps the place of every piece in the text', () => {
    const text = 'Do  twenty-five REPS'
    const [, amount] = readAmounts(text)
    expect(text.slice(amount?.start, amount?.end)).toBe('twenty-five')
  })

  it.each([
    ['to sets of ten', 'N[2] sets of N[10]'],
    ['go to the wall', 'go to the wall'],
    ['ten wraps', 'N[10] reps'],
    ['wrap the band', 'wrap the band'],
    ['each sight', 'each side'],
    ['a lovely sight', 'a lovely sight'],
    ['wrist sixty seconds', 'rest T[60]'],
    ['bend the wrist', 'bend the wrist'],
    ['he ate lunch', 'he ate lunch'],
  ])('mends a slip only where its neighbours ask for it: %s', (text, pieces) => {
    expect(shown(text)).toBe(pieces)
  })
})

describe('compilePattern', () => {
  it('stops at a list that is not there', () => {
    expect(() => compilePattern('<nothing>', {})).toThrow('No list of phrases is called <nothing>.')
  })
})
