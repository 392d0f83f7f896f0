// The publish page: each reason why an exercise is held back leads to where it is closed.
import { expect, it } from 'vitest'
import { buildPublishPage } from '../../views/pages/publish.ts'
import { buildSegment } from '../helpers/build-sheet.ts'

it.each([
  ['captions-missing', '/add/r1#words', 'Give its captions'],
  ['no-place', '/recordings/r1#t=1', 'Place it'],
  ['dose-missing', '/recordings/r1/checks', 'Put it right'],
])('what %s found is closed at %s', (rule, href, label) => {
  const segment = buildSegment('s1', 1, 2, { exercise: { name: 'Chair squats' } })
  const page = buildPublishPage({
    ...{
      recordingId: 'r1',
      title: 'Class',
      sheet: { segments: [segment], media: [] },
      lessons: [],
      jobs: [],
      last: null,
    },
    planned: [
      {
        ...{ segment, doseWords: '', lengthMs: 1000, state: 'held', own: null, known: [], near: [], place: 'skip' },
        ...{ reasons: ['Chair squats: something is missing.'], rules: [rule] },
      },
    ],
  })
  expect(page.groups[0]?.rows[0]?.reasons).toEqual([{ text: 'Something is missing.', href, label }])
  expect(page.canExport).toBe(false)
})
