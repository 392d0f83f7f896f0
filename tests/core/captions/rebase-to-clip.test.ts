// Captions on the clip's clock: one stretch, several, joins, and what is too short to show.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rebaseToClip } from '../../../core/captions/rebase-to-clip.ts'
import type { CaptionCue } from '../../../shared/captions.ts'
import type { Stretch } from '../../../shared/time.ts'
import { captionLists } from '../../helpers/caption-cases.ts'

const cues: CaptionCue[] = [
  { startMs: 1000, endMs: 3500, lines: ['c1'] },
  { startMs: 3500, endMs: 6000, lines: ['c2'] },
  { startMs: 6000, endMs: 9000, lines: ['c3'] },
]
const range = (startMs: number, endMs: number): Stretch => ({ startMs, endMs })

describe('rebaseToClip', () => {
  const cases: [string, Stretch[], [string, number, number][]][] = [
    ['no stretch', [], []],
    ['an empty stretch', [range(2000, 2000)], []],
    ['a stretch without speech', [range(10_000, 12_000)], []],
    // ffmpeg's own -ss gives 0-2500 for c1 here, or drops it; this is what a viewer must see.
    [
      'a cut inside two captions',
      [range(3000, 5000)],
      [
        ['c1', 0, 500],
        ['c2', 500, 2000],
      ],
    ],
    [
      'from the start',
      [range(0, 4000)],
      [
        ['c1', 1000, 3500],
        ['c2', 3500, 4000],
      ],
    ],
    ['a piece of 199 ms is left out', [range(3301, 5000)], [['c2', 199, 1699]]],
    [
      'a piece of 200 ms is shown',
      [range(3300, 5000)],
      [
        ['c1', 0, 200],
        ['c2', 200, 1700],
      ],
    ],
    [
      'two stretches',
      [range(1000, 2000), range(7000, 8000)],
      [
        ['c1', 0, 1000],
        ['c3', 1000, 2000],
      ],
    ],
    [
      'in the order of the clip',
      [range(7000, 8000), range(1000, 2000)],
      [
        ['c3', 0, 1000],
        ['c1', 1000, 2000],
      ],
    ],
    [
      'the middle of a caption cut out',
      [range(3500, 4000), range(5000, 7000)],
      [
        ['c2', 0, 1500],
        ['c3', 1500, 2500],
      ],
    ],
    [
      'short pieces on both sides of a join',
      [range(3500, 3600), range(5850, 7000)],
      [
        ['c2', 0, 250],
        ['c3', 250, 1250],
      ],
    ],
  ]
  it.each(cases)('%s', (_name, ranges, shown) => {
    expect(rebaseToClip(cues, ranges).map((cue) => [cue.lines[0], cue.startMs, cue.endMs])).toEqual(shown)
  })

  it('a caption that is short itself is shown', () => {
    expect(rebaseToClip([{ startMs: 100, endMs: 200, lines: ['x'] }], [range(0, 1000)])).toHaveLength(1)
  })

  it('changes nothing when the whole class is kept', () => {
    fc.assert(
      fc.property(captionLists, (list) => {
        expect(rebaseToClip(list, [range(0, 500_000_000)])).toEqual(list)
      }),
    )
  })

  it('stays inside the clip, in order, with whole texts', () => {
    const stretches = fc
      .array(fc.tuple(fc.integer({ min: 0, max: 3000 }), fc.integer({ min: 1, max: 8000 })), { maxLength: 5 })
      .map((parts) => {
        let at = 0
        return parts.map(([gap, length]) => {
          const startMs = at + gap
          at = startMs + length
          return range(startMs, at)
        })
      })
    fc.assert(
      fc.property(captionLists, stretches, (list, ranges) => {
        const length = ranges.reduce((sum, one) => sum + one.endMs - one.startMs, 0)
        const rebased = rebaseToClip(list, ranges)
        rebased.forEach((cue, index) => {
          expect(cue.startMs).toBeGreaterThanOrEqual(rebased[index - 1]?.startMs ?? 0)
          expect(cue.endMs).toBeGreaterThan(cue.startMs)
          expect(cue.endMs).toBeLessThanOrEqual(length)
          expect(list.map((one) => one.lines)).toContainEqual(cue.lines)
        })
      }),
    )
  })
})
