// What a lesson takes over from its segment.
import { expect, it } from 'vitest'
import { checkSheet } from '../../../core/checks/check-sheet.ts'
import { buildLesson } from '../../../core/library/build-lesson.ts'
import { Lesson } from '../../../shared/lesson.ts'
import { classOf, goodSegment } from '../checks/good-class.ts'

const lessonOf = (fields: Record<string, unknown>) => {
  const sheet = classOf([goodSegment(fields)])
  const [segment] = sheet.segments
  if (!segment) throw new Error('no segment')
  const clip = {
    segmentId: 'heel',
    file: 'heel.mp4',
    sha256: 'a',
    durationMs: 60_000,
    frames: 1500,
    spans: [{ startMs: 0, endMs: 60_000 }],
  }
  return buildLesson({
    ...{
      sheet,
      segment,
      report: checkSheet(sheet),
      clip: clip as never,
      clipSha256: 'a',
      recordingSha256: 'b',
      slug: 'heel',
    },
    files: { clip: 'clip.mp4', poster: null, captions: 'c.vtt', chapters: 'd.vtt', description: 'e.txt' },
  })
}

it.each([
  [true, true],
  [false, undefined],
  [null, undefined],
])('marked as mirrored %s, the lesson says %s', (mirrored, said) => {
  const lesson = lessonOf({ mirrored })
  expect(lesson.mirrored).toBe(said)
  expect(Lesson.parse(lesson)).toEqual(lesson)
})
