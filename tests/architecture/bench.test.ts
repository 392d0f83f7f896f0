// The frame of the measurements: medians, the order of sides, what a report says, and what `npm run bench` knows.
import { describe, expect, it } from 'vitest'
import { median, swapRounds } from '../bench/bench.ts'
import { writeReport } from '../bench/write-report.ts'
import { sourceFiles } from '../helpers/source-files.ts'

describe('median', () => {
  it('of nothing is refused', () => {
    expect(() => median([])).toThrow(RangeError)
  })
  it.each([
    [[3], 3],
    [[9, 1, 5], 5],
    [[4, 1, 3, 2], 2.5],
    [[10, 9, 100], 10],
  ])('of %j is %d', (values, middle) => {
    expect(median(values)).toBe(middle)
  })
})

it('sides swap their order each round', async () => {
  const order: string[] = []
  const side = (name: string) => (round: number) => Promise.resolve(void order.push(`${name}${round}`))
  await swapRounds(3, [side('a'), side('b')])
  expect(order).toEqual(['a0', 'b0', 'b1', 'a1', 'a2', 'b2'])
})

describe('a report', () => {
  const series = [{ name: 'full cut', unit: 'CPU-s', raw: [2.004, 1.5, 9] }]

  it('shows the median beside the raw values', () => {
    const { text, met } = writeReport({ series, goals: [], notes: ['of 20 clips'] })
    expect(text).toBe('  note: of 20 clips\n  full cut         2 CPU-s   (2 1.5 9)\n')
    expect(met).toBe(true)
  })

  it.each([
    ['at least', 0.4, true],
    ['at least', 0.41, false],
    ['at most', 0.4, true],
    ['at most', 0.39, false],
  ] as const)('holds 0.4 against %s %d', (wants, limit, met) => {
    const report = writeReport({ series: [], goals: [{ what: 'the ratio', value: 0.4, wants, limit }], notes: [] })
    expect(report.met).toBe(met)
    expect(report.text).toContain(met ? 'met' : 'MISSED')
  })
})

it('every measurement has a name that can be typed', () => {
  const files = sourceFiles('tests/bench').filter((file) => file.includes('.bench.'))
  expect(files.filter((file) => !/^tests\/bench\/[a-z-]+\.bench\.ts$/.test(file))).toEqual([])
})
