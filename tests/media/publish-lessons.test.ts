// Publishing a class into a studio: what has a stop is held back whoever asks, twice is once, a lesson that is
// replaced keeps its address, and one that is withdrawn is gone for members at once.
import { createHash } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { chooseLessons } from '../../server/actions/choose-lessons.ts'
import { publishLessons } from '../../server/actions/publish-lessons.ts'
import type { PublishedLessons } from '../../server/actions/publish-lessons.ts'
import { showPublishing } from '../../server/actions/show-publishing.ts'
import { bringBackLesson, withdrawLesson } from '../../server/actions/withdraw-lesson.ts'
import { Lesson } from '../../shared/lesson.ts'
import { startTestDoor } from '../helpers/http-door.ts'
import { seedSmallClass } from '../helpers/seeded-studio.ts'
import type { SeededClass } from '../helpers/seeded-studio.ts'
import { vttErrors } from '../helpers/vtt-errors.ts'

let door: Awaited<ReturnType<typeof startTestDoor>>
let seeded: SeededClass
let first: PublishedLessons

beforeAll(async () => {
  door = await startTestDoor()
  seeded = await seedSmallClass(door.door)
  first = await publishLessons(door.door, { recordingId: seeded.recordingId })
})
afterAll(async () => {
  expect(door.faults).toEqual([])
  await door.close()
})

/** From the frame header (ITU-T T.81, 1992, section B.2.2): two bytes of height, then two of width, after the marker's length and precision. */
function jpegSize(bytes: Buffer): { width: number; height: number } {
  const frame = bytes.indexOf(Buffer.from([0xff, 0xc0]))
  return { height: bytes.readUInt16BE(frame + 5), width: bytes.readUInt16BE(frame + 7) }
}

const stateOf = async (segmentId: string) => {
  const { planned } = await showPublishing(door.door, seeded.recordingId)
  return planned.find(({ segment }) => segment.id === segmentId)
}
const firstHeld = () => first.held[0] ?? { segmentId: '', name: '', reasons: [] }
const lesson = (index: number) => first.lessons[index] ?? { segmentId: '', name: '', slug: '', version: 0, change: '' }

describe('refused', () => {
  it('what has a stop, also when it is asked for by name, with its reasons', async () => {
    const { segmentId } = firstHeld()
    const asked = { recordingId: seeded.recordingId, segmentIds: [segmentId], places: { [segmentId]: 'own' } }
    const { lessons, held } = await publishLessons(door.door, asked)
    expect(lessons).toEqual([])
    expect(held).toEqual([firstHeld()])
    expect(firstHeld().reasons.length).toBeGreaterThan(0)
  })

  it.each([
    ['an exercise that is not on the sheet', { segmentIds: ['none'] }, 'row-missing'],
    ['a class that is not there', { recordingId: 'none' }, 'row-missing'],
  ])('%s', async (_what, more, code) => {
    const input = { recordingId: seeded.recordingId, ...more }
    await expect(publishLessons(door.door, input)).rejects.toMatchObject({ code })
  })

  it('the place of a lesson that is not there, and one place for two', async () => {
    const [a, b] = [lesson(0).segmentId, lesson(1).segmentId]
    const to = (places: Record<string, string>) =>
      publishLessons(door.door, { recordingId: seeded.recordingId, segmentIds: [a, b], places })
    await expect(to({ [a]: 'none' })).rejects.toMatchObject({ code: 'row-missing' })
    const { id = '' } = (await door.door.store.lessons.readAt(lesson(2).slug)) ?? {}
    await expect(to({ [a]: id, [b]: id })).rejects.toMatchObject({ code: 'row-exists' })
  })

  it('a member', async () => {
    const member = { ...door.door, actor: { id: 'm', name: 'Member', role: 'member' as const } }
    await expect(publishLessons(member, { recordingId: seeded.recordingId })).rejects.toMatchObject({
      code: 'not-allowed',
    })
    await expect(withdrawLesson(member, { slug: lesson(0).slug })).rejects.toMatchObject({ code: 'not-allowed' })
  })
})

describe('published', () => {
  it('is every exercise without a stop, each at an address of its own', () => {
    expect(first.failed).toEqual([])
    expect(first.lessons.length).toBe(4)
    expect(first.held.map(({ name }) => name)).toEqual(['Ankle circles'])
    expect(new Set(first.lessons.map(({ slug }) => slug)).size).toBe(first.lessons.length)
    expect(new Set(first.lessons.map(({ change }) => change))).toEqual(new Set(['new']))
  })

  it('has a page, a clip with the sum it is said to have, sound captions and chapters, and a poster', async () => {
    for (const { slug } of first.lessons) {
      const { current } = (await door.door.store.lessons.readAt(slug)) ?? {}
      const told = Lesson.parse(current?.lesson)
      expect(told.slug).toBe(slug)
      expect(told.dose, slug).not.toBeNull()
      const clip = await door.ask(`/lessons/${slug}/clip.mp4`)
      expect(createHash('sha256').update(clip.body).digest('hex'), slug).toBe(told.clip.sha256)
      expect(vttErrors((await door.ask(`/lessons/${slug}/captions.en.vtt`)).text, 'captions'), slug).toEqual([])
      expect(vttErrors((await door.ask(`/lessons/${slug}/chapters.vtt`)).text, 'chapters'), slug).toEqual([])
      expect((await door.ask(`/lessons/${slug}/poster.jpg`)).body.length, slug).toBeGreaterThan(1000)
      for (const picture of ['start.jpg', 'end.jpg']) {
        const { status, body } = await door.ask(`/lessons/${slug}/${picture}`)
        if (told.pictures) expect(jpegSize(body), slug).toEqual({ width: 480, height: 480 })
        else expect(status, slug).toBe(404)
      }
      expect((await door.ask(`/lessons/${slug}`)).status, slug).toBe(200)
    }
  })

  it('twice is published once', async () => {
    const again = await publishLessons(door.door, { recordingId: seeded.recordingId })
    expect(again.lessons).toEqual([])
    const { segmentId, slug } = lesson(0)
    expect(await stateOf(segmentId)).toMatchObject({ state: 'same', place: 'skip' })
    const named = await publishLessons(door.door, { recordingId: seeded.recordingId, segmentIds: [segmentId] })
    expect(named.lessons).toMatchObject([{ slug, version: 1, change: 'same' }])
  })

  it('again after a change of its marks is the next version at the same address', async () => {
    const { segmentId, slug } = lesson(0)
    const stored = await door.door.store.sheets.readOf(seeded.recordingId)
    const op = { op: 'rename' as const, segmentId, name: 'Lifts by another name' }
    const edits = [{ opId: 'rename-1', op }]
    const base = { sheetId: seeded.sheetId, baseVersion: stored?.version ?? 0, actor: door.door.actor }
    await door.door.store.sheets.appendEdits({ ...base, edits })
    expect(await stateOf(segmentId)).toMatchObject({ state: 'changed', place: 'own' })
    const { lessons } = await publishLessons(door.door, { recordingId: seeded.recordingId })
    expect(lessons).toMatchObject([{ segmentId, slug, version: 2, change: 'next' }])
    expect((await door.ask(`/lessons/${slug}`)).text).toContain('Lifts by another name')
  })
})

it('a segment that is kept for search is no lesson, and says so', async () => {
  const { segmentId } = firstHeld()
  const uses = { [segmentId]: 'keep' as const }
  expect(await chooseLessons(door.door, { recordingId: seeded.recordingId, uses })).toMatchObject({ changed: 1 })
  expect(await chooseLessons(door.door, { recordingId: seeded.recordingId, uses })).toMatchObject({ changed: 0 })
  expect(await stateOf(segmentId)).toMatchObject({ state: 'keep', reasons: [] })
})

it('a lesson replaced from another segment keeps its address; the older version can be shown again', async () => {
  const { slug } = lesson(1)
  const other = lesson(2)
  const shown = await door.door.store.lessons.readAt(slug)
  const before = (await door.ask(`/lessons/${slug}/clip.mp4`)).body
  const places = { [other.segmentId]: shown?.id ?? '' }
  const asked = { recordingId: seeded.recordingId, segmentIds: [other.segmentId], places }
  const { lessons } = await publishLessons(door.door, asked)
  expect(lessons).toMatchObject([{ slug, version: 2, change: 'next' }])
  expect((await door.ask(`/lessons/${slug}`)).text).toContain(other.name)
  expect((await door.ask(`/lessons/${slug}/clip.mp4`)).body.equals(before)).toBe(false)
  // the exercise's own address stays as well
  expect((await door.ask(`/lessons/${other.slug}`)).status).toBe(200)
  await bringBackLesson(door.door, { slug, version: 1 })
  expect((await door.ask(`/lessons/${slug}/clip.mp4`)).body.equals(before)).toBe(true)
})

it('a lesson that is withdrawn is gone at once with its files, and comes back as it was', async () => {
  const { slug, segmentId } = lesson(3)
  await withdrawLesson(door.door, { slug, why: 'filmed again' })
  await withdrawLesson(door.door, { slug })
  const page = await door.ask(`/lessons/${slug}`)
  expect(page.status).toBe(404)
  expect(page.text).toContain('was withdrawn')
  expect((await door.ask(`/lessons/${slug}/clip.mp4`)).status).toBe(404)
  expect((await door.ask('/library')).text).not.toContain(`/lessons/${slug}"`)
  expect(await stateOf(segmentId)).toMatchObject({ state: 'withdrawn', place: 'skip' })
  await bringBackLesson(door.door, { slug })
  expect((await door.ask(`/lessons/${slug}/clip.mp4`)).status).toBe(200)
})

it('a lesson of a class whose consent was taken back cannot be brought back', async () => {
  const { slug } = lesson(3)
  await withdrawLesson(door.door, { slug })
  const stored = await door.door.store.sheets.readOf(seeded.recordingId)
  const people = [{ name: 'Guest', consent: 'withdrawn' as const, scope: null, untilUtc: null, under18: false }]
  const base = { sheetId: seeded.sheetId, baseVersion: stored?.version ?? 0, actor: door.door.actor }
  await door.door.store.sheets.appendEdits({ ...base, edits: [{ opId: 'people-1', op: { op: 'set-people', people } }] })
  await expect(bringBackLesson(door.door, { slug })).rejects.toMatchObject({ code: 'not-allowed' })
})
