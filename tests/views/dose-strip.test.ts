// The dose strip: every shape of dose draws what it says, fits its picture, and is named for those who do not see it.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import { doseStrip } from '../../views/pages/pictures/draw-dose-strip.ts'
import { planDoseStrip, STRIP_SIZES } from '../../views/pages/pictures/plan-dose-strip.ts'
import type { StripSize } from '../../views/pages/pictures/plan-dose-strip.ts'
import { DOSE_SHAPES } from '../helpers/dose-shapes.ts'

const just = (value: number) => ({ min: value, max: value })
const SIZES = Object.keys(STRIP_SIZES) as StripSize[]
const count = (svg: string, text: string): number => svg.split(text).length - 1
/** All words of a picture, in order. */
const wordsOf = (svg: string): string[] =>
  [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map(([, inner]) => (inner ?? '').replace(/<[^>]+>/g, ''))

describe.each(SIZES)('a strip for the %s', (size) => {
  it.each(DOSE_SHAPES)('of $name shows its blocks and words', async ({ name, dose, solid, maybe, words }) => {
    const svg = doseStrip(dose, { size, words: `Dose: ${name}` })
    expect([count(svg, 'class="s-block"'), count(svg, 'class="s-maybe"')]).toEqual([solid, maybe])
    if (size === 'card') expect(wordsOf(svg)).toEqual(expect.arrayContaining(words))
    expect(svg).toContain(`role="img" aria-label="Dose: ${name}"`)
    await expect(`${svg}\n`).toMatchFileSnapshot(
      `../fixtures/golden/pictures/strip-${size}-${name.replaceAll(' ', '-')}.svg`,
    )
  })

  it.each(DOSE_SHAPES)('of $name stays inside its picture', ({ dose }) => {
    const { blocks, rests, others, starts, width, height } = planDoseStrip(dose, size)
    for (const box of [...blocks, ...rests, ...others]) {
      expect(box.x).toBeGreaterThanOrEqual(0)
      expect(box.x + box.width).toBeLessThanOrEqual(width + 0.01)
      expect(box.y + box.height).toBeLessThanOrEqual(height)
    }
    for (const x of starts) expect(x).toBeGreaterThanOrEqual(0)
  })
})

describe('the marks along the foot', () => {
  it.each(DOSE_SHAPES.filter(({ marks }) => marks !== undefined))(
    'of $name can be counted',
    ({ dose, marks, solid, words }) => {
      const svg = doseStrip(dose, { size: 'floor', words: '' })
      // one block alone, so that only its own marks are there
      const first = planDoseStrip(dose, 'floor').blocks[0]
      const inFirst = [...svg.matchAll(/<(?:rect|circle) class="s-(?:maybe-)?work" (?:x|cx)="([\d.]+)"/g)].filter(
        ([, x]) => first && Number(x) >= first.x && Number(x) < first.x + first.width,
      )
      expect({ solid, words, marks: inFirst.length }).toEqual({ solid, words, marks })
    },
  )
})

describe('rests', () => {
  // the proportion is the picture's promise: twice the rest, twice the gap
  it.each([
    [30, 30],
    [30, 60],
    [60, 45],
  ])('of %i s work and %i s rest are as long as they say', (workS, restS) => {
    const dose = buildPrescription({ sets: just(2), workSeconds: just(workS), restSeconds: just(restS) })
    const { blocks, rests } = planDoseStrip(dose, 'floor')
    expect((rests[0]?.width ?? 0) / (blocks[0]?.width ?? 1)).toBeCloseTo(restS / workS, 2)
  })

  it('make room for the numerals when they are much longer than the work', () => {
    const dose = buildPrescription({ sets: just(4), reps: { min: 12, max: 15 }, restSeconds: just(600) })
    const { blocks } = planDoseStrip(dose, 'card')
    for (const { parts } of blocks) expect(parts[0]?.label?.font).toBeGreaterThanOrEqual(13)
  })
})

describe('any dose', () => {
  const range = fc.option(
    fc.tuple(fc.nat(200), fc.nat(200)).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) })),
  )
  const fields = fc.record({
    scheme: fc.constantFrom('straight', 'superset', 'circuit', 'emom', 'amrap', 'ladder', 'interval'),
    sets: range,
    reps: fc.oneof(range, fc.constant('max')),
    repUnit: fc.constantFrom('rep', 'breath', 'stroke', 'cycle', 'length'),
    repScheme: fc.option(fc.array(fc.integer({ min: 1, max: 50 }), { maxLength: 40 })),
    workSeconds: range,
    holdSeconds: range,
    holdPer: fc.constantFrom('rep', 'set', null),
    distanceM: range,
    intervalSeconds: range,
    perSide: fc.boolean(),
    restSeconds: range,
    restBetween: fc.constantFrom('reps', 'sets', 'sides', 'stations', 'rounds', null),
    tempo: fc.constantFrom('3-1-1-0', '0-0-0-0', 'slow', '', null),
    open: fc.option(fc.string()),
    groupWith: fc.array(fc.string(), { maxLength: 9 }),
  }) as fc.Arbitrary<Partial<Prescription>>

  it('draws whole numbers inside the picture and never fails', () => {
    fc.assert(
      fc.property(fields, fc.constantFrom(...SIZES), (dose, size) => {
        const svg = doseStrip(buildPrescription(dose), { size, words: 'dose' })
        const { blocks, width } = planDoseStrip(buildPrescription(dose), size)
        expect(svg).not.toMatch(/NaN|Infinity|undefined|="-?\d*"? width="-/)
        for (const block of blocks) {
          expect(block.width).toBeGreaterThan(0)
          expect(block.x + block.width).toBeLessThanOrEqual(width + 0.01)
        }
      }),
      { numRuns: 400, seed: 4180 },
    )
  })

  it('keeps words of a person harmless', () => {
    const dose = buildPrescription({
      byLevel: [{ level: '<b onload="x">&', dose: buildPrescription({ reps: just(5) }) }],
    })
    const svg = doseStrip(dose, { size: 'card', words: '"><script>' })
    expect(svg).not.toContain('<b')
    expect(svg).not.toContain('<script')
  })
})
