/** Quotes in messages are short and end behind a whole word. */
import { describe, expect, it } from 'vitest'
import { quoted } from '../../../core/checks/rule.ts'

describe('a quote in a message', () => {
  const long = 'keep the ribs down and sit straight on both sit bones while the arms go up, and breathe out slowly'

  it.each([
    ['is whole when it is short', ' bend your knees ', '"bend your knees"'],
    [
      'ends behind a whole word',
      long,
      '"keep the ribs down and sit straight on both sit bones while the arms go up, and…"',
    ],
    [
      'leaves no mark before its dots',
      `${'a'.repeat(30)} ${'b'.repeat(46)}, cc dd`,
      `"${'a'.repeat(30)} ${'b'.repeat(46)}…"`,
    ],
    ['cuts one word that is too long', 'x'.repeat(100), `"${'x'.repeat(79)}…"`],
  ])('%s', (_, text, expected) => {
    expect(quoted(text)).toBe(expected)
  })
})
