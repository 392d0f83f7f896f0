// A class in several files, from the import to the film that is worked on: parts, sound apart, another order, a bad part.
import { createHash } from 'node:crypto'
import { readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { expect, it, onTestFinished } from 'vitest'
import { arrangeFiles } from '../../server/actions/arrange-files.ts'
import { findClassFile, findClassFileOrNull } from '../../server/actions/find-class-file.ts'
import { importRecording } from '../../server/actions/import-recording.ts'
import { runJobs } from '../../server/jobs/run-jobs.ts'
import { joinedFolder, madeFolder } from '../../server/storage/media-keys.ts'
import { openStudio } from '../../server/studio.ts'
import type { Studio } from '../../server/studio.ts'
import { LogSheet } from '../../shared/log-sheet.ts'
import { testSettings } from '../helpers/http-door.ts'
import { readNumbers } from '../helpers/media-reading.ts'
import { ffmpeg, samplePath, splitSample } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

async function openTestStudio(): Promise<Studio> {
  const studio = await openStudio(testSettings(await tempFolder()))
  onTestFinished(() => studio.close())
  const runner = await runJobs(studio, { pollMs: 50, progressMs: 100 })
  onTestFinished(() => runner.close())
  return studio
}

/** Waits until no job of the class is left to do. */
async function settled(studio: Studio, recordingId: string): Promise<void> {
  const open = async (): Promise<string[]> =>
    (await studio.store.jobs.list({ recordingId, states: ['queued', 'running'] })).map(({ kind }) => kind)
  await expect.poll(open, { timeout: 120_000, interval: 100 }).toEqual([])
}

const sumOf = async (file: string): Promise<string> =>
  createHash('sha256')
    .update(await readFile(file))
    .digest('hex')
const count = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, at) => from + at)

it('two parts and a sound file become one class, in any order, until it is marked', async () => {
  const studio = await openTestStudio()
  const [first, second] = splitSample(await tempFolder())
  const sound = path.join(await tempFolder(), 'recorder.m4a')
  ffmpeg(['-i', samplePath('cfr-30'), '-vn', '-c:a', 'aac', sound])
  const sums = [await sumOf(first), await sumOf(second)]

  // laid in the wrong way round
  const { recording } = await importRecording(studio, { path: second, parts: [first], sound: [sound], title: 'Two' })
  await settled(studio, recording.id)
  const wrong = await findClassFile(studio, recording.id)
  expect(readNumbers(wrong.path)).toEqual([...count(250, 480), ...count(0, 250)])

  const files = await studio.store.media.list(recording.id)
  const [a, b, apart] = files
  expect(files.map(({ role, fileName }) => [role, fileName])).toEqual([
    ['part', 'part1.mp4'],
    ['part', 'part0.mp4'],
    ['sound', 'recorder.m4a'],
    ['joined', 'joined.mp4'],
  ])
  if (!a || !b || !apart) throw new Error('three files were taken in')
  const inOrder = [b, a, apart].map(({ id, role }) => ({
    id,
    role: role === 'sound' ? ('sound' as const) : ('part' as const),
  }))
  await arrangeFiles(studio, { recordingId: recording.id, files: inOrder })
  expect(await findClassFileOrNull(studio, recording.id)).toBeNull()
  expect((await studio.store.recordings.read(recording.id)).state).toBe('checking')
  await settled(studio, recording.id)
  const film = await findClassFile(studio, recording.id)
  expect(readNumbers(film.path)).toEqual(count(0, 480))
  expect(film.facts).toMatchObject({ frames: 480, thumbs: { count: 9 } })
  expect(await studio.store.recordings.read(recording.id)).toMatchObject({
    state: 'ready',
    durationMs: film.media.durationMs,
  })
  // the film of the order that was left is gone, with what was made of it
  expect(await studio.storage.list(joinedFolder(recording.id))).toEqual([film.storageKey])
  expect((await studio.store.media.list(recording.id)).filter(({ role }) => role === 'joined')).toHaveLength(1)
  expect(await studio.storage.list(madeFolder(recording.id, wrong.media.id))).toEqual([])
  // the files of the camera are as they were, and say where on the class's clock they begin
  const parts = (await studio.store.media.list(recording.id)).filter(({ role }) => role === 'part')
  expect(parts.map(({ startMs }) => startMs)).toEqual([0, 8334])
  expect(await Promise.all(parts.map(({ storageKey }) => sumOf(studio.storage.path(storageKey ?? ''))))).toEqual(sums)

  // once something is marked, the order stays
  const sheet = LogSheet.parse({
    ...{ format: 'repslate-log-sheet', version: 1, durationMs: film.media.durationMs },
    source: { sha256: film.media.sha256, durationMs: film.media.durationMs },
    segments: [{ id: 's1', exercise: { name: 'Squat' }, spans: [{ startMs: 1000, endMs: 5000 }] }],
  })
  await studio.store.sheets.add({ recordingId: recording.id, sheet, actor: studio.actor })
  const back = [a, b, apart].map(({ id, role }) => ({
    id,
    role: role === 'sound' ? ('sound' as const) : ('part' as const),
  }))
  await expect(arrangeFiles(studio, { recordingId: recording.id, files: back })).rejects.toMatchObject({
    code: 'sheet-recording',
  })
  await expect(arrangeFiles(studio, { recordingId: recording.id, files: inOrder.slice(1) })).rejects.toMatchObject({
    code: 'sheet-recording',
  })
})

it('a part that is cut short is set aside with its reason, and the rest is the class', async () => {
  const studio = await openTestStudio()
  const [first, second] = splitSample(await tempFolder())
  const half = path.join(await tempFolder(), 'half.mp4')
  const whole = await readFile(samplePath('faststart'))
  await writeFile(half, whole.subarray(0, whole.length / 2))
  const { recording } = await importRecording(studio, { path: first, parts: [half, second], title: 'Three' })
  await settled(studio, recording.id)
  const files = await studio.store.media.list(recording.id)
  expect(files.map(({ role, fileName }) => [role, fileName])).toEqual([
    ['part', 'part0.mp4'],
    ['part', 'part1.mp4'],
    ['aside', 'half.mp4'],
    ['joined', 'joined.mp4'],
  ])
  const failed = await studio.store.jobs.list({ recordingId: recording.id, states: ['failed'] })
  expect(failed.map(({ error }) => error?.code)).toEqual(['recording-broken'])
  expect(readNumbers((await findClassFile(studio, recording.id)).path)).toEqual(count(0, 480))
})
