// Progress of a cut: the share of the whole, weighed by the clips' lengths, and no guess of time too early.
import { expect, it } from 'vitest'
import { reportCut } from '../../../server/actions/cut-progress.ts'
import type { CutProgress } from '../../../server/actions/cut-progress.ts'

it('weighs steps and clips, tells each change once, and guesses time left from the share done', () => {
  const seen: CutProgress[] = []
  let nowMs = 1000
  const report = reportCut(
    (progress) => seen.push(progress),
    () => nowMs,
  )
  report.step('reading', 0)
  report.step('reading', 100)
  report.step('loudness', 100)
  report.expect([
    { segmentId: 'a', durationMs: 30_000 },
    { segmentId: 'b', durationMs: 10_000 },
  ])
  nowMs = 2000
  report.clip('b', 'Squat', 100)
  report.clip('b', 'Squat', 100)
  report.clip('a', 'Lunge', 50)
  report.note('Look at the first clip.')
  report.clip('a', 'Lunge', 100)
  expect(seen.map(({ label, fraction, leftMs, done }) => [label, Number(fraction.toFixed(4)), leftMs, done])).toEqual([
    ['Reading the recording', 0, null, false],
    ['Reading the recording', 0.03, null, true],
    ['Measuring the loudness', 0.1, 0, true],
    ['Cutting Squat', 0.325, 2077, true],
    ['Cutting Lunge', 0.6625, 509, false],
    ['Look at the first clip.', 0.6625, 509, true],
    ['Cutting Lunge', 1, 0, true],
  ])
})

it('works when nobody listens', () => {
  expect(() => reportCut(undefined, () => 0).step('reading', 50)).not.toThrow()
})
