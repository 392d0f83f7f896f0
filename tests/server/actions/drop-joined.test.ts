// Which films that were joined of parts may go, and when.
import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import { beforeEach, expect, it, onTestFinished } from 'vitest'
import { askJob } from '../../../server/actions/ask-job.ts'
import { backUpStudio } from '../../../server/actions/back-up.ts'
import { holdFilm } from '../../../server/actions/hold-film.ts'
import { dropJoined, sweepJoined } from '../../../server/actions/drop-joined.ts'
import { keyOfParts } from '../../../server/actions/find-class-file.ts'
import { restoreStudio } from '../../../server/actions/restore.ts'
import { fileKey, joinedFolder, joinedKey, peaksKey } from '../../../server/storage/media-keys.ts'
import { openStudio } from '../../../server/studio.ts'
import type { Studio } from '../../../server/studio.ts'
import { buildSheet } from '../../helpers/build-sheet.ts'
import { testSettings } from '../../helpers/http-door.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

let studio: Studio
let recordingId: string
let oldId: string
let newId: string
let newKey: string

/** A class of two parts, whose film of another order lies beside the one that is worked on. */
beforeEach(async () => {
  studio = await openStudio(testSettings(await tempFolder()))
  onTestFinished(() => studio.close())
  const { store, storage, actor } = studio
  recordingId = (await store.recordings.add({ title: 'In parts', state: 'ready' }, actor)).id
  const add = async (role: 'part' | 'joined', storageKey: string, sha256: string): Promise<string> => {
    await storage.putBytes(storageKey, sha256)
    return (await store.media.add(recordingId, { role, fileName: sha256, storageKey, sha256 }, actor)).id
  }
  const parts = [await add('part', fileKey(recordingId, 'a'), 'a'), await add('part', fileKey(recordingId, 'b'), 'b')]
  oldId = await add('joined', joinedKey(recordingId, 'former'), 'old')
  newKey = keyOfParts(
    recordingId,
    parts.map((id) => ({ id })),
  )
  newId = await add('joined', newKey, 'new')
  await storage.putBytes(peaksKey(recordingId, oldId, 10), 'x')
})

const filesLeft = async (): Promise<string[]> => studio.storage.list('')
const ask = (kind: 'publish' | 'analyse' | 'place-sound') => {
  const inputs = {
    publish: { recordingId, segmentIds: null, places: {} },
    analyse: { recordingId, mediaId: oldId },
    'place-sound': { recordingId, mediaId: 's', filmId: oldId },
  }
  return askJob(studio.store, studio.actor, kind, inputs[kind], null)
}

it.each(['publish', 'analyse', 'place-sound'] as const)('stays while a job reads it: %s', async (kind) => {
  const { id } = await ask(kind)
  const claimed = await studio.store.jobs.claimJob([kind], 'worker')
  expect(await dropJoined(studio, recordingId)).toBe(0)
  expect(await filesLeft()).toHaveLength(5)
  if (claimed) await studio.store.jobs.finish(claimed.claim, null)
  expect((await studio.store.jobs.read(id)).state).toBe('done')
  await sweepJoined(studio, { isStart: false })
  expect(await filesLeft()).toHaveLength(3)
})

it('stays while the newer one cannot be worked on yet, or the sheet still stands on it', async () => {
  const { store, actor } = studio
  await store.media.change(newId, { sha256: null }, actor)
  expect(await dropJoined(studio, recordingId)).toBe(0)
  await store.media.change(newId, { sha256: 'new' }, actor)
  const sheet = buildSheet({ durationMs: 1000, source: { sha256: 'old', durationMs: 1000 } })
  await store.sheets.add({ recordingId, sheet, actor })
  expect(await dropJoined(studio, recordingId)).toBe(0)
})

it('goes with all that was made of it and the work that waited for it; what people brought stays', async () => {
  const { id } = await ask('analyse')
  expect(await dropJoined(studio, recordingId)).toBe(1)
  expect(await filesLeft()).toEqual([fileKey(recordingId, 'a'), fileKey(recordingId, 'b'), newKey].sort())
  expect((await studio.store.jobs.read(id)).state).toBe('cancelled')
  expect(await dropJoined(studio, recordingId)).toBe(0)
})

it('what a kill left without a row goes at the next start', async () => {
  await studio.storage.putBytes(joinedKey(recordingId, 'lost'), 'x')
  await sweepJoined(studio, { isStart: false })
  expect(await studio.storage.list(joinedFolder(recordingId))).toHaveLength(2)
  await sweepJoined(studio, { isStart: true })
  expect(await studio.storage.list(joinedFolder(recordingId))).toEqual([newKey])
})

it('a backup whose store names a film that went meanwhile begins again, and can be restored', async () => {
  const { store } = studio
  let copies = 0
  const backupTo: Studio['store']['backupTo'] = async (file) => {
    const copied = await store.backupTo(file)
    copies += 1
    if (copies === 1) await dropJoined(studio, recordingId)
    return copied
  }
  const folder = path.join(await tempFolder(), 'backups')
  const { folder: from } = await backUpStudio({ ...studio, store: { ...store, backupTo } }, { folder })
  expect(copies).toBe(2)
  const restored = await restoreStudio(Date.now, { from, dataFolder: path.join(await tempFolder(), 'new') })
  const other = await openStudio(testSettings(restored.dataFolder))
  onTestFinished(() => other.close())
  expect((await other.store.media.list(recordingId)).map(({ fileName }) => fileName)).toEqual(['a', 'b', 'new'])
})

it('can be read to its end by a command that began with it, whatever takes it away, and leaves nothing then', async () => {
  const { film, release } = await holdFilm(studio, recordingId)
  expect(film.media.id).toBe(newId)
  // the studio, another program, takes the film away
  await studio.store.media.remove(newId, studio.actor)
  await studio.storage.delete(newKey)
  expect(await readFile(film.path, 'utf8')).toBe('new')
  await release()
  expect(await readdir(path.join(studio.dataFolder, 'work'))).toEqual([])
  await expect(holdFilm(studio, recordingId)).rejects.toMatchObject({ code: 'row-missing' })
})
