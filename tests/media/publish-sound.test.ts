// A lesson published in the studio with sound recorded apart: found by ear in a job, chosen on a page, heard in the clip.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { lessonFileKey } from '../../core/library/name-lesson-files.ts'
import { importRecording } from '../../server/actions/import-recording.ts'
import { publishLessons } from '../../server/actions/publish-lessons.ts'
import { showPublishing } from '../../server/actions/show-publishing.ts'
import { runJobs } from '../../server/jobs/run-jobs.ts'
import { buildPrescription } from '../../shared/log-sheet.ts'
import { buildCue, buildSegment, buildSheet } from '../helpers/build-sheet.ts'
import { makeClass, SECONDS, writeSound } from '../helpers/class-with-sound.ts'
import { startTestDoor } from '../helpers/http-door.ts'
import { readFrames, readSound, soundLag } from '../helpers/media-reading.ts'
import { speak } from '../helpers/spoken-sound.ts'

/** The recorder was started this much before the camera, and its clock keeps time. */
const BEGAN_MS = -7300
/** From this second of the class to that one. */
const [FROM, TO] = [12, 30]

let folder: string
let door: Awaited<ReturnType<typeof startTestDoor>>
let runner: Awaited<ReturnType<typeof runJobs>>
let recordingId: string
let apart: string
let soundIds: { right: string; other: string }

const choose = async (sound: string, gainDb = 0) =>
  door.ask(`/recordings/${recordingId}/sound`, {
    method: 'POST',
    headers: {
      ...(await door.signed()),
      'content-type': 'application/x-www-form-urlencoded',
      accept: 'application/json',
    },
    body: new URLSearchParams({ sound, gainDb: String(gainDb) }).toString(),
  })
const clipPath = async (slug: string): Promise<string> => {
  const { id = '', currentVersion } = (await door.door.store.lessons.readAt(slug)) ?? {}
  return door.door.storage.path(lessonFileKey(id, currentVersion ?? 1, 'clip.mp4'))
}
const loudness = (samples: Float32Array): number =>
  10 * Math.log10(samples.reduce((sum, value) => sum + value * value, 0) / samples.length)

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'repslate-test-'))
  door = await startTestDoor()
  const made = await makeClass(folder, BEGAN_MS, 0)
  apart = made.apart
  const other = path.join(made.folder, 'other.wav')
  await writeSound(other, SECONDS, { startMs: 0, driftPpm: 0, voice: 0.8, noise: 0.002, seed: 4 }, speak(SECONDS, 77))
  const { recording } = await importRecording(door.door, {
    path: made.film,
    sound: [apart, other],
    title: 'Two clocks',
  })
  recordingId = recording.id
  runner = await runJobs(door.door, { pollMs: 50, progressMs: 100 })
}, 60_000)
afterAll(async () => {
  await runner.close()
  await door.close()
  await rm(folder, { recursive: true, force: true })
})

describe('before a choice', () => {
  it('is refused while nothing is marked', async () => {
    expect((await choose('film')).status).toBe(404)
  })

  it('each sound was compared with the film: one lies in it, one does not', async () => {
    const { store } = door.door
    const open = async () =>
      (await store.jobs.list({ recordingId, states: ['queued', 'running'] })).map(({ kind }) => kind)
    await expect.poll(open, { timeout: 120_000, interval: 100 }).toEqual([])
    const [film, right, other] = await store.media.list(recordingId)
    soundIds = { right: right?.id ?? '', other: other?.id ?? '' }
    expect(Math.abs((right?.startMs ?? NaN) - BEGAN_MS)).toBeLessThan(10)
    expect(right?.facts).toMatchObject({ place: { filmId: film?.id, found: { places: expect.any(Number) as number } } })
    expect(other?.facts).toEqual({ place: { filmId: film?.id, found: null } })
  })
})

describe('a lesson', () => {
  let slug = ''
  beforeAll(async () => {
    const { store, actor } = door.door
    const [film] = await store.media.list(recordingId)
    const source = { sha256: film?.sha256 ?? '', durationMs: film?.durationMs ?? 0 }
    const said = { audience: ['general' as const], music: 'none' as const, people: [] }
    await store.recordings.change(recordingId, null, said, actor)
    const segment = buildSegment('one', FROM, TO, {
      exercise: { name: 'Arm circles' },
      prescription: buildPrescription({ reps: { min: 8, max: 8 } }),
      cues: [buildCue('cue-1', FROM, { kind: 'setup', text: 'Sit tall.' })],
    })
    const words = { origin: 'pasted' as const, form: 'stamped-text', language: 'en', fileName: null }
    await store.transcripts.add(recordingId, { ...words, text: '[0:12] Arm circles, slowly.' }, actor)
    const sheet = buildSheet({ ...{ title: 'Two clocks', ...said, ...source, source }, segments: [segment] })
    await store.sheets.add({ recordingId, sheet, actor })
  })

  it('is not published with sound of another class, a track that is not there, or a file that is no sound', async () => {
    expect(JSON.parse((await choose(soundIds.other)).text)).toMatchObject({ code: 'sound-not-matching' })
    expect(JSON.parse((await choose('track-2')).text)).toMatchObject({ code: 'recording-no-sound' })
    const [film] = await door.door.store.media.list(recordingId)
    expect((await choose(film?.id ?? '')).status).toBe(404)
  })

  it('is heard through the recorder that was chosen, within 20 ms, its pictures where they were', async () => {
    const own = await publishLessons(door.door, { recordingId })
    expect(own.failed).toEqual([])
    slug = own.lessons[0]?.slug ?? ''
    const before = await clipPath(slug)
    const page = await door.ask(`/add/${recordingId}`)
    expect(page.text).toContain('Begins 7.30 s before the film; keeps its time. Sure')

    expect((await choose(soundIds.right)).status).toBe(303)
    const { stored, planned } = await showPublishing(door.door, recordingId)
    expect(planned.map(({ state }) => state)).toEqual(['changed'])
    expect((await choose(soundIds.right)).status).toBe(303)
    expect((await showPublishing(door.door, recordingId)).stored.version).toBe(stored.version)

    const { lessons, failed } = await publishLessons(door.door, { recordingId })
    expect(failed).toEqual([])
    expect(lessons).toMatchObject([{ slug, version: 2 }])
    const clip = await clipPath(slug)
    const [heard, source] = [readSound(clip), readSound(apart)]
    for (const at of [1, 8, 16]) {
      const { samples, correlation } = soundLag(heard, at, source, at + FROM - BEGAN_MS / 1000)
      expect(correlation, `likeness at ${at} s`).toBeGreaterThan(0.9)
      expect(Math.abs(samples) / 48, `ms at ${at} s`).toBeLessThanOrEqual(20)
    }
    expect(readFrames(clip).map(({ number }) => number)).toEqual(readFrames(before).map(({ number }) => number))
    expect((await door.ask(`/recordings/${recordingId}/publish`)).text).toContain('with the sound “apart.flac”')
    // what a lesson comes from is the film, not what was made of it
    const [film] = await door.door.store.media.list(recordingId)
    const { current } = (await door.door.store.lessons.readAt(slug)) ?? {}
    expect(current?.lesson).toMatchObject({ from: { recordingSha256: film?.sha256 } })
  })

  it('is softer when the class is', async () => {
    const before = loudness(readSound(await clipPath(slug)))
    await choose(soundIds.right, -6)
    const { lessons } = await publishLessons(door.door, { recordingId })
    expect(lessons).toMatchObject([{ slug, version: 3 }])
    expect(loudness(readSound(await clipPath(slug))) - before).toBeCloseTo(-6, 0)
  })
})
