// Counts of a report, and which lessons may be published.
import { describe, expect, it } from 'vitest'
import { checkSheet } from '../../../core/checks/check-sheet.ts'
import { stopsOf, summariseReport } from '../../../core/checks/summarise-report.ts'
import { classOf, goodSegment, withoutCue } from './good-class.ts'

const second = { id: 'sit', exercise: { name: 'sit to stand' }, spans: [{ startMs: 60_000, endMs: 120_000 }] }
const report = checkSheet(
  classOf([goodSegment(), goodSegment({ ...second, cues: withoutCue('support') })], {
    waivers: [
      { segmentId: 'sit', ruleId: 'caution-missing', hazard: 'fall-risk', reason: 'rail in shot', by: 'Ada', atUtc: 0 },
    ],
  }),
)

describe('summariseReport', () => {
  it('counts nothing of nothing', () => {
    expect(summariseReport({ findings: [], cautions: [] }, [])).toMatchObject({
      needed: 0,
      covered: 0,
      text: 'no caution required',
    })
  })

  it('counts covered and waived cautions, and tells which lessons may go out', () => {
    const summary = summariseReport(report, ['heel', 'sit'])
    expect(summary.text).toBe('2 of 4 cautions covered')
    expect(summary.waived).toBe(1)
    expect(summary.segments.map((one) => [one.segmentId, one.covered, one.needed, one.publishable])).toEqual([
      ['heel', 1, 1, true],
      ['sit', 1, 3, false],
    ])
  })

  it('lets a stop on the class hold every lesson', () => {
    const held = checkSheet(classOf([goodSegment()], { music: 'unknown' }))
    expect(stopsOf(held, 'heel').map((one) => one.ruleId)).toEqual(['music-unknown'])
    expect(summariseReport(held, ['heel']).segments[0]?.publishable).toBe(false)
  })

  it('gives only the stops of the lesson asked for', () => {
    expect(stopsOf(report, 'heel')).toEqual([])
    expect(stopsOf(report, 'sit').every((one) => one.severity === 'stop')).toBe(true)
  })
})
