// What a clip keeps of the recording.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isKept, keptRanges } from '../../../core/segments/kept-ranges.ts'
import type { CutOut, Span } from '../../../shared/log-sheet.ts'
import { span } from '../../helpers/build-sheet.ts'

/** Spans and cut-outs in seconds; 'out' = not in the clip. */
type Stretch = [startS: number, endS: number, out?: 'out']
const spansOf = (list: readonly Stretch[]): Span[] =>
  list.map(([start, end, out]) => span(start, end, { inClip: !out }))
const cutsOf = (list: readonly Stretch[]): CutOut[] =>
  list.map(([start, end]) => ({ startMs: start * 1000, endMs: end * 1000, why: '' }))
const kept = (spans: readonly Stretch[], cutOuts: readonly Stretch[]) =>
  keptRanges({ spans: spansOf(spans), cutOuts: cutsOf(cutOuts) }).map(({ startMs, endMs }) => [
    startMs / 1000,
    endMs / 1000,
  ])

describe('kept ranges', () => {
  const cases: [what: string, spans: Stretch[], cutOuts: Stretch[], expected: number[][]][] = [
    ['no spans keep nothing', [], [], []],
    ['a span without length keeps nothing', [[5, 5]], [], []],
    ['a span that ends before it starts keeps nothing', [[9, 5]], [], []],
    ['a span outside the clip keeps nothing', [[1, 5, 'out']], [], []],
    ['a cut-out over everything keeps nothing', [[1, 5]], [[0, 9]], []],
    ['a cut-out without length takes nothing', [[1, 5]], [[3, 3]], [[1, 5]]],
    ['a cut-out that ends before it starts takes nothing', [[1, 5]], [[4, 2]], [[1, 5]]],
    ['a cut-out outside takes nothing', [[1, 5]], [[5, 9]], [[1, 5]]],
    [
      'a cut-out of a span outside the clip takes nothing',
      [
        [1, 5],
        [8, 9, 'out'],
      ],
      [[8, 9]],
      [[1, 5]],
    ],
    [
      'a cut-out inside leaves two parts',
      [[1, 9]],
      [[3, 4]],
      [
        [1, 3],
        [4, 9],
      ],
    ],
    ['a cut-out at the start leaves the end', [[1, 9]], [[1, 4]], [[4, 9]]],
    ['a cut-out past the end leaves the start', [[1, 9]], [[7, 12]], [[1, 7]]],
    [
      'a cut-out across two spans takes from both',
      [
        [1, 4],
        [6, 9],
      ],
      [[3, 7]],
      [
        [1, 3],
        [7, 9],
      ],
    ],
    [
      'overlapping cut-outs are taken out once',
      [[1, 9]],
      [
        [2, 5],
        [4, 6],
      ],
      [
        [1, 2],
        [6, 9],
      ],
    ],
    [
      'spans stand in order of time',
      [
        [6, 9],
        [1, 4],
      ],
      [],
      [
        [1, 4],
        [6, 9],
      ],
    ],
    [
      'touching spans are one',
      [
        [1, 4],
        [4, 9],
      ],
      [],
      [[1, 9]],
    ],
    [
      'overlapping spans are one',
      [
        [1, 6],
        [4, 9],
      ],
      [],
      [[1, 9]],
    ],
    [
      'a span inside another adds nothing',
      [
        [1, 9],
        [3, 4],
      ],
      [],
      [[1, 9]],
    ],
  ]
  it.each(cases)('%s', (_what, spans, cutOuts, expected) => {
    expect(kept(spans, cutOuts)).toEqual(expected)
  })

  it('hold the moment they start at and not the one they end at', () => {
    const segment = { spans: spansOf([[1, 5]]), cutOuts: cutsOf([[2, 3]]) }
    const moments = [999, 1000, 1999, 2000, 2999, 3000, 4999, 5000]
    expect(moments.filter((ms) => isKept(segment, ms))).toEqual([1000, 1999, 3000, 4999])
  })

  it('hold exactly the moments that lie in a span of the clip and in no cut-out', () => {
    const stretches = fc.array(
      fc.tuple(fc.nat(30), fc.nat(30)).map(([a, b]): Stretch => [a, b]),
      { maxLength: 4 },
    )
    fc.assert(
      fc.property(stretches, stretches, fc.nat(31_000), (spans, cutOuts, ms) => {
        const lies = (list: readonly Stretch[]) => list.some(([start, end]) => start * 1000 <= ms && ms < end * 1000)
        expect(isKept({ spans: spansOf(spans), cutOuts: cutsOf(cutOuts) }, ms)).toBe(lies(spans) && !lies(cutOuts))
      }),
    )
  })
})
