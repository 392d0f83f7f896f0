// One class with most kinds of finding, as the report prints it: the file is the frozen form of the check report.
import { expect, it } from 'vitest'
import { checkSheet } from '../../../core/checks/check-sheet.ts'
import { CheckReport } from '../../../shared/check-report.ts'
import { cueSaid } from '../cautions/sheet-of-class.ts'
import { classOf, goodSegment, withoutCue } from './good-class.ts'

const sheet = classOf(
  [
    goodSegment(),
    goodSegment({
      id: 'sit',
      exercise: { name: 'sit to stand' },
      spans: [{ startMs: 60_000, endMs: 120_000 }],
      prescription: { reps: { min: 8, max: 8 }, unsure: true, why: ['Eight or eighty was heard.'] },
      cues: [
        cueSaid('setup', 'Sit at the front of the chair.', 62),
        cueSaid('breathing', 'Blow out as you stand up.', 66),
        cueSaid('execution', 'Stand up like this.', 70),
      ],
      cautions: [{ hazard: 'fall-risk', text: 'Have the table within reach.' }],
    }),
    goodSegment({
      id: 'knee',
      exercise: { name: 'seated knee extension' },
      spans: [{ startMs: 119_000, endMs: 180_000 }],
      prescription: { sets: { min: 2, max: 2 }, reps: { min: 10, max: 10 }, perSide: true },
      sideShown: 'left',
      cues: [cueSaid('easier', 'Only halfway is fine.', 130)],
    }),
    goodSegment({
      id: 'toe',
      exercise: { name: 'toe raise' },
      spans: [{ startMs: 180_000, endMs: 240_000 }],
      prescription: null,
      cues: withoutCue('support'),
    }),
    goodSegment({ id: 'chat', use: 'leave-out', exercise: { name: 'chat' }, spans: [{ startMs: 0, endMs: 0 }] }),
  ],
  {
    music: 'unknown',
    people: [
      { name: 'Pat', consent: 'given' },
      { name: 'Kim', under18: true },
    ],
    classCautions: [
      {
        hazard: 'dizziness-rise',
        scope: 'class',
        source: 'spoken',
        text: 'Whenever you stand up, wait a moment, and if you feel dizzy sit down.',
        atMs: 300_000,
      },
    ],
    waivers: [
      { segmentId: 'toe', ruleId: 'caution-missing', hazard: 'fall-risk', reason: 'rail in shot', by: 'Ada', atUtc: 0 },
      { segmentId: 'toe', ruleId: 'spans-broken', hazard: null, reason: 'no', by: 'Ada', atUtc: 0 },
    ],
  },
)

it('prints the report of a class as it always has', async () => {
  const report = checkSheet(sheet, { captions: { toe: false }, nowUtc: 0 })
  expect(CheckReport.parse(report)).toEqual(report)
  await expect(`${JSON.stringify(report, null, 2)}\n`).toMatchFileSnapshot('../../fixtures/reports/class-report.json')
})
