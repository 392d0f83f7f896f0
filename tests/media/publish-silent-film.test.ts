// A film without sound, published with sound recorded apart: a person says where that begins, and the clip keeps to it.
import path from 'node:path'
import { expect, it, onTestFinished } from 'vitest'
import { lessonFileKey } from '../../core/library/name-lesson-files.ts'
import { importRecording } from '../../server/actions/import-recording.ts'
import { publishLessons } from '../../server/actions/publish-lessons.ts'
import { runJobs } from '../../server/jobs/run-jobs.ts'
import { buildPrescription } from '../../shared/log-sheet.ts'
import { buildCue, buildSegment, buildSheet } from '../helpers/build-sheet.ts'
import { makeClass } from '../helpers/class-with-sound.ts'
import { openTestDoor } from '../helpers/http-door.ts'
import { readSound, soundLag } from '../helpers/media-reading.ts'
import { ffmpeg } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

/** The recorder was started this much before the camera. */
const BEGAN_S = -7.3
/** From this second of the class to that one. */
const [FROM, TO] = [12, 30]

it('is heard where the person said, typed with a comma, and a wrong place is refused', async () => {
  const made = await makeClass(await tempFolder(), BEGAN_S * 1000, 0)
  const film = path.join(made.folder, 'silent.mp4')
  ffmpeg(['-i', made.film, '-an', '-c', 'copy', film])
  const door = await openTestDoor()
  const { store, actor, storage } = door.door
  const { recording } = await importRecording(door.door, { path: film, sound: [made.apart], title: 'Silent' })
  const recordingId = recording.id
  const runner = await runJobs(door.door, { pollMs: 50, progressMs: 100 })
  onTestFinished(() => runner.close())
  const open = async () => (await store.jobs.list({ recordingId, states: ['queued', 'running'] })).length
  await expect.poll(open, { timeout: 120_000, interval: 100 }).toBe(0)

  const post = async (where: string, fields: Record<string, string>) =>
    door.ask(`/recordings/${recordingId}/${where}`, {
      method: 'POST',
      headers: { ...(await door.signed()), 'content-type': 'application/x-www-form-urlencoded' },
      body: new URLSearchParams(fields).toString(),
    })
  const [camera, sound] = await store.media.list(recordingId)
  const said = { audience: ['general' as const], music: 'none' as const, people: [] }
  await store.recordings.change(recordingId, null, said, actor)
  const segment = buildSegment('one', FROM, TO, {
    exercise: { name: 'Arm circles' },
    prescription: buildPrescription({ reps: { min: 8, max: 8 } }),
    cues: [buildCue('cue-1', FROM, { kind: 'setup', text: 'Sit tall.' })],
  })
  const words = { origin: 'pasted' as const, form: 'stamped-text', language: 'en', fileName: null }
  await store.transcripts.add(recordingId, { ...words, text: '[0:12] Arm circles, slowly.' }, actor)
  const source = { sha256: camera?.sha256 ?? '', durationMs: camera?.durationMs ?? 0 }
  await store.sheets.add({
    recordingId,
    sheet: buildSheet({ ...{ title: 'Silent', ...said, ...source, source }, segments: [segment] }),
    actor,
  })

  const mediaId = sound?.id ?? ''
  expect((await door.ask(`/add/${recordingId}`)).text).toContain('Where apart.flac begins')
  expect((await post('sound', { sound: mediaId })).status).toBe(422)
  for (const seconds of ['', 'soon', '1:20', '1e3', '100000']) {
    expect((await post('sound-place', { mediaId, seconds })).status, seconds).toBe(400)
  }
  expect((await post('sound-place', { mediaId: camera?.id ?? '', seconds: '1' })).status).toBe(404)
  // first a second off, and chosen; then put right: what is published moves along
  expect((await post('sound-place', { mediaId, seconds: '-6.3' })).status).toBe(303)
  expect((await post('sound', { sound: mediaId })).status).toBe(303)
  expect((await post('sound-place', { mediaId, seconds: String(BEGAN_S).replace('.', ',') })).status).toBe(303)
  expect((await door.ask(`/add/${recordingId}`)).text).toContain('Begins 7.30 s before the film, as you said.')

  const { lessons, failed } = await publishLessons(door.door, { recordingId })
  expect(failed).toEqual([])
  const { id = '' } = (await store.lessons.readAt(lessons[0]?.slug ?? '')) ?? {}
  const heard = readSound(storage.path(lessonFileKey(id, 1, 'clip.mp4')))
  const { samples, correlation } = soundLag(heard, 8, readSound(made.apart), 8 + FROM - BEGAN_S)
  expect(correlation).toBeGreaterThan(0.9)
  expect(Math.abs(samples) / 48).toBeLessThanOrEqual(20)
}, 180_000)
