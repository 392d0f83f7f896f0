/**
 * The studio killed within two works at moments that are looked for: while a class is published (clips half cut, some
 * lessons shown and some not) and while the parts of a film are joined. Nothing that was acknowledged is lost, no half file
 * can be seen, no ffmpeg lives on, and the work ends as if nothing had been.
 */
import { createHash } from 'node:crypto'
import { existsSync, readdirSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { expect, it } from 'vitest'
import { LESSON_FILE_NAMES, lessonFileKey } from '../../core/library/name-lesson-files.ts'
import { askPublish } from '../../server/actions/ask-job.ts'
import { findClassFile } from '../../server/actions/find-class-file.ts'
import { importRecording } from '../../server/actions/import-recording.ts'
import { openFolderStorage } from '../../server/storage/open-folder-storage.ts'
import { joinedFolder } from '../../server/storage/media-keys.ts'
import { openStudio } from '../../server/studio.ts'
import { LOCAL_OWNER } from '../../shared/actors.ts'
import { testSettings } from '../helpers/http-door.ts'
import { done, halfClips, openKilledStudio } from '../helpers/killed-studio.ts'
import type { KilledStudio } from '../helpers/killed-studio.ts'
import { processesLeft } from '../helpers/media-processes.ts'
import { readNumbers } from '../helpers/media-reading.ts'
import { splitSample } from '../helpers/media-samples.ts'
import { seedSmallClass } from '../helpers/seeded-studio.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const sumOf = async (file: string): Promise<string> =>
  createHash('sha256')
    .update(await readFile(file))
    .digest('hex')

const namesIn = (folder: string): string[] => (existsSync(folder) ? readdirSync(folder) : [])

/** Kills at the first moment at which this holds, and starts anew. @throws Error when the moment never comes */
async function killWhen(studio: KilledStudio, isTime: () => Promise<boolean> | boolean): Promise<void> {
  const endMs = Date.now() + 60_000
  while (!(await isTime())) {
    if (Date.now() > endMs) throw new Error('the moment to kill at never came')
    await wait(3)
  }
  await studio.kill()
  expect(await processesLeft(`${studio.data}/media`, 5)).toEqual([])
  expect(halfClips(studio.data)).toEqual([])
}

/** Each lesson that is shown has every file that it names, with the sum it is said to have. */
async function lessonsShown({ store, data }: KilledStudio): Promise<Map<string, number>> {
  const storage = await openStorage(data)
  const shown = await store.lessons.list(['published'])
  for (const { id, current } of shown) {
    const there = LESSON_FILE_NAMES.filter((name) =>
      existsSync(storage.path(lessonFileKey(id, current?.version ?? 0, name))),
    )
    expect(there).toEqual(expect.arrayContaining(['clip.mp4', 'captions.en.vtt', 'chapters.vtt']))
    const clip = storage.path(lessonFileKey(id, current?.version ?? 0, 'clip.mp4'))
    expect(await sumOf(clip)).toBe(current?.clipSha256)
  }
  return new Map(shown.map(({ id, currentVersion }) => [id, currentVersion ?? 0]))
}

const openStorage = (data: string) => openFolderStorage(path.join(data, 'media'), 0)

it('within publishing: while clips are cut, and between one lesson and the next', { timeout: 240_000 }, async () => {
  const data = await tempFolder()
  const seeding = await openStudio(testSettings(data))
  const exercises = ['Arm circles', 'Shoulder rolls', 'Neck turns', 'Wrist circles', 'Elbow bends', 'Ankle circles']
  const { recordingId } = await seedSmallClass(seeding, { exercises })
  await seeding.close()
  const studio = await openKilledStudio(data)
  const { store } = studio
  const cut = path.join(data, 'media', 'recordings', recordingId, 'cut')
  const { id: jobId } = await askPublish({ store, actor: LOCAL_OWNER }, { recordingId, segmentIds: null, places: {} })
  const clips = (): number => namesIn(path.join(cut, 'clips')).filter((name) => name.endsWith('.mp4')).length
  const isCutting = (): boolean => namesIn(path.join(cut, '.work')).some((name) => name.endsWith('.part'))

  await studio.start()
  await killWhen(studio, () => clips() > 0 && isCutting())
  const cutBefore = clips()
  expect(cutBefore).toBeLessThan(exercises.length - 1)
  expect((await store.jobs.read(jobId)).state).toBe('running')
  let known = await lessonsShown(studio)
  expect(known.size).toBe(0)

  for (const many of [1, 3]) {
    await studio.start()
    await killWhen(studio, async () => (await store.lessons.list(['published'])).length >= many)
    expect((await store.jobs.read(jobId)).state).toBe('running')
    const shown = await lessonsShown(studio)
    // what was shown stays as it was
    for (const [id, version] of known) expect(shown.get(id)).toBe(version)
    known = shown
  }
  await studio.start()
  await done(studio, recordingId, 'publish')
  const shown = await lessonsShown(studio)
  // each once, however often it was begun
  expect([...shown.values()]).toEqual(exercises.slice(1).map(() => 1))
  const { current } = (await store.lessons.list(['published']))[0] ?? {}
  expect(current?.recordingId).toBe(recordingId)
  expect(namesIn(path.join(cut, '.work')).filter((name) => name.endsWith('.part'))).toEqual([])
  await studio.kill()
  expect(await processesLeft(`${data}/media`, 5)).toEqual([])
})

it('within joining: while the film is made, and once it lies there', { timeout: 240_000 }, async () => {
  const data = await tempFolder()
  const parts = splitSample(await tempFolder())
  const seeding = await openStudio(testSettings(data))
  const [first, second] = parts
  const { recording } = await importRecording(seeding, { path: first, parts: [second], title: 'Two', mode: 'copy' })
  await seeding.close()
  const studio = await openKilledStudio(data)
  const { store } = studio
  const storage = await openStorage(data)
  const isJoining = (): boolean =>
    namesIn(path.join(data, 'work')).some(
      (name) => name.startsWith('join-') && namesIn(path.join(data, 'work', name)).length > 0,
    )
  const joined = path.join(data, 'media', ...joinedFolder(recording.id).split('/'))

  await studio.start()
  await killWhen(studio, isJoining)
  expect(namesIn(joined)).toEqual([])
  await studio.start()
  await killWhen(studio, () => namesIn(joined).length > 0)
  await studio.start()
  await done(studio, recording.id, 'join')
  await done(studio, recording.id, 'analyse')

  const files = await store.media.list(recording.id)
  expect(files.map(({ role, fileName }) => [role, fileName])).toEqual([
    ['part', 'part0.mp4'],
    ['part', 'part1.mp4'],
    ['joined', 'joined.mp4'],
  ])
  const kept = files.slice(0, 2).map(({ storageKey }) => sumOf(storage.path(storageKey ?? '')))
  expect(await Promise.all(kept)).toEqual(await Promise.all(parts.map(sumOf)))
  expect(await storage.list(joinedFolder(recording.id))).toEqual([files[2]?.storageKey])
  const film = await findClassFile({ store, storage }, recording.id)
  expect(readNumbers(film.path)).toEqual(Array.from({ length: 480 }, (_, frame) => frame))
  expect(await store.recordings.read(recording.id)).toMatchObject({ state: 'ready', durationMs: film.media.durationMs })
  await studio.kill()
  expect(await processesLeft(`${data}/media`, 5)).toEqual([])
})
