// Which exercise a moment belongs to, and which cues have lost theirs.
import { describe, expect, it } from 'vitest'
import { cuesOutside, segmentAt } from '../../../core/segments/place-cues.ts'
import { buildCue, buildSegment, buildSheet, span } from '../../helpers/build-sheet.ts'

const sheet = buildSheet({
  segments: [
    buildSegment('chat', 0, 40, { state: 'declined' }),
    buildSegment('row', 10, 20, { spans: [span(10, 20), span(60, 70, { inClip: false })] }),
    buildSegment('press', 20, 30),
  ],
})

describe('the exercise at a moment', () => {
  const cases: [ms: number, id: string | null][] = [
    [9_999, 'chat'],
    [10_000, 'row'],
    [19_999, 'row'],
    [20_000, 'press'],
    [30_000, 'chat'],
    [50_000, null],
    [65_000, 'row'],
  ]
  it.each(cases)('%i ms: %s', (ms, id) => {
    expect(segmentAt(sheet, ms)?.id ?? null).toBe(id)
  })
})

describe('cues outside their exercise', () => {
  it('are those that start in none of its spans and are not declined', () => {
    const cues = [buildCue('before', 9), buildCue('in', 10), buildCue('return', 65), buildCue('after', 20)]
    const declined = buildCue('declined', 20, { state: 'declined' })
    const { spans } = sheet.segments[1]!
    expect(cuesOutside({ spans, cues: [...cues, declined] }).map((cue) => cue.id)).toEqual(['before', 'after'])
  })
})
