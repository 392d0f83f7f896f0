// Spans and cut-outs that cannot be cut are named with what to do; what can be cut is left alone.
import { describe, expect, it } from 'vitest'
import { findSpanProblems } from '../../../core/segments/find-span-problems.ts'
import { buildSegment, span } from '../../helpers/build-sheet.ts'

const cut = (startS: number, endS: number) => ({ startMs: startS * 1000, endMs: endS * 1000, why: '' })
const find = (fields: Record<string, unknown>, durationMs: number | null = 60_000) =>
  findSpanProblems(buildSegment('a', 10, 20, fields), durationMs)

describe('findSpanProblems', () => {
  it.each([
    ['one span', {}],
    ['several', { spans: [span(10, 20), span(30, 40)], cutOuts: [cut(12, 13), cut(13, 14), cut(31, 32)] }],
    ['overlapping spans, which are joined', { spans: [span(10, 20), span(15, 25)] }],
    ['an end up to half a second late', { spans: [span(50, 60.5)] }],
    ['a cut-out that sticks out of its span', { cutOuts: [cut(9, 11)] }],
  ])('finds nothing in %s', (_, fields) => {
    expect(find(fields)).toEqual([])
  })

  it.each([
    ['no span', { spans: [] }, 'Not placed yet'],
    ['an empty span', { spans: [span(5, 5)] }, '0:05 to 0:05 has no length'],
    ['a span the wrong way round', { spans: [span(6, 5)] }, 'ends before it starts'],
    ['a start at the end', { spans: [span(60, 61)] }, 'starts after the end'],
    [
      'an end more than half a second late',
      { spans: [span(50, 60.501)] },
      '0:50 to 1:00.501 runs past the end: the recording ends at 1:00',
    ],
    ['an empty cut-out', { cutOuts: [cut(12, 12)] }, 'The cut-out 0:12 to 0:12 has no length'],
    ['overlapping cut-outs', { cutOuts: [cut(12, 14), cut(13, 15)] }, 'overlap. Join them'],
    ['a cut-out elsewhere', { cutOuts: [cut(30, 31)] }, 'outside the spans'],
    ['a cut-out of everything', { cutOuts: [cut(9, 21)] }, 'leave nothing'],
    ['nothing in the clip', { spans: [span(10, 20, { inClip: false })] }, 'No span of the segment is in the clip'],
  ])('names %s', (_, fields, says) => {
    const problems = find(fields)
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatchObject({ segmentId: 'a', message: expect.stringContaining(says) as string })
  })

  it('looks at no end when the length of the recording is not known', () => {
    expect(find({ spans: [span(5000, 6000)] }, null)).toEqual([])
  })

  it('names every problem at its place', () => {
    const problems = find({ spans: [span(5, 5), span(70, 80)], cutOuts: [cut(90, 91)] })
    expect(problems.map(({ startMs, endMs }) => [startMs, endMs])).toEqual([
      [5000, 5000],
      [70_000, 80_000],
      [90_000, 91_000],
    ])
  })
})
