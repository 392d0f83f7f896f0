// What the words of a sentence cover.
import { describe, expect, it } from 'vitest'
import { hazardsIn, isClassWide, topicsOf, warnsOfHeldBreath } from '../../../core/cautions/find-hazards.ts'
import { SAID_IN_CLASSES } from './said-in-classes.ts'
import { SAID, SAID_FREELY } from './said-of-hazards.ts'

const ALL = [...Object.entries(SAID), ...Object.entries(SAID_FREELY), ...Object.entries(SAID_IN_CLASSES)]
const COVERED = ALL.flatMap(([hazard, { covers }]) => covers.map((text) => ({ hazard, text })))
const MISSED = ALL.flatMap(([hazard, { misses }]) => misses.map((text) => ({ hazard, text })))

describe('hazardsIn', () => {
  it.each(['', '   ', '...', '🙂', 'um er you know'])('finds nothing in %j', (text) => {
    expect(hazardsIn(text)).toEqual([])
  })

  it.each(MISSED)('not $hazard: $text', ({ hazard, text }) => {
    expect(hazardsIn(text)).not.toContain(hazard)
  })

  it.each(COVERED)('$hazard: $text', ({ hazard, text }) => {
    expect(hazardsIn(text)).toContain(hazard)
  })

  it.each(COVERED)('the same without capitals and stops: $text', ({ hazard, text }) => {
    expect(hazardsIn(text.toLowerCase().replace(/[^a-z0-9' ]/g, ' '))).toContain(hazard)
  })

  it('reads over fillers and doubled words', () => {
    expect(hazardsIn("don't you know don't um hold your your breath")).toContain('breath-hold')
  })

  it('does not join two sentences', () => {
    expect(hazardsIn('Relax your shoulders. Pinch of salt.')).not.toContain('overhead-shoulder')
  })

  it('stays linear: a long text without a stop', () => {
    const words = 'and lift and lower and keep the knees and the back and the head and breathe '.repeat(2000)
    expect(hazardsIn(words)).not.toContain('bone-health')
  })
})

describe('warnsOfHeldBreath', () => {
  it.each([
    ["Don't hold your breath.", true],
    ['Keep breathing all through.', true],
    ['Blow out as you stand up.', false],
    ['Big breath in, hold it, brace.', false],
  ])('%s: %s', (text, warns) => {
    expect(warnsOfHeldBreath(text)).toBe(warns)
  })
})

describe('topicsOf', () => {
  it.each([
    ['caution', 'That shoulder of yours, Jim, be wise', ['overhead-shoulder']],
    ['execution', 'Roll your shoulders back', []],
    ['fault', 'Knees are sneaking inside', ['knee-tracking']],
    ['setup', 'Knees inside the band', []],
    ['caution', 'Facing the chair', ['fall-risk']],
    ['setup', 'Facing the chair', []],
    ['caution', '', []],
  ] as const)('%s: %s', (kind, text, slugs) => {
    expect(topicsOf(kind, text)).toEqual(expect.arrayContaining([...slugs]))
    if (slugs.length === 0) expect(topicsOf(kind, text)).toEqual([])
  })
})

describe('isClassWide', () => {
  it.each([
    ['Before every exercise, give those straps a tug.', true],
    ['all the way through this class keep a chair next to you', true],
    ['If any of these hurt, stop.', true],
    ['Whenever you stand up today, wait a moment.', true],
    ['One rule, and it goes for everything we do: no holding your breath.', true],
    ['Up to three out of ten you carry on.', false],
    ['Keep hold of it the whole time.', false],
    ['No lifting the shoulders, every rep.', false],
    ['If your shoulder pinches, make the circle smaller.', false],
    ['Keep the knee over the toes.', false],
    ['', false],
  ])('%s: %s', (text, wide) => {
    expect(isClassWide(text)).toBe(wide)
  })
})
