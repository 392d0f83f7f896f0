// Backups of a whole studio: taken while lessons are cut and published, restored elsewhere byte for byte, only what is new
// the second time; what is damaged is named and refused.
import { createHash } from 'node:crypto'
import { cpSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { backUpStudio } from '../../server/actions/back-up.ts'
import type { BackedUp } from '../../server/actions/back-up.ts'
import { publishLessons } from '../../server/actions/publish-lessons.ts'
import { restoreStudio } from '../../server/actions/restore.ts'
import { startServer } from '../../server/serve.ts'
import { openStudio } from '../../server/studio.ts'
import type { Studio } from '../../server/studio.ts'
import { BackupList } from '../../shared/backup.ts'
import { openClient, projectAssets, testSettings } from '../helpers/http-door.ts'
import { seedSmallClass } from '../helpers/seeded-studio.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

let folder = ''
let studio: Studio
let backups = ''
let during: BackedUp
let after: BackedUp

const sumOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex')
const listOf = ({ folder: one }: BackedUp): BackupList =>
  BackupList.parse(JSON.parse(readFileSync(path.join(one, 'backup.json'), 'utf8')))
const object = (sha256: string): string => path.join(backups, 'media', sha256.slice(0, 2), sha256)

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'repslate-test-'))
  studio = await openStudio(testSettings(path.join(folder, 'studio')))
  backups = path.join(folder, 'backups')
  const { recordingId } = await seedSmallClass(studio)
  const shown = new Promise<void>((resolve) => void studio.events.subscribe('lessons', () => resolve()))
  const publishing = publishLessons(studio, { recordingId })
  await shown
  during = await backUpStudio(studio, { folder: backups })
  const { lessons, failed } = await publishing
  expect([lessons.length, failed]).toEqual([4, []])
  after = await backUpStudio(studio, { folder: backups })
})
afterAll(async () => {
  await studio?.close()
  await rm(folder, { recursive: true, force: true })
})

const restore = async (from: string): Promise<string> => {
  const { dataFolder } = await restoreStudio(Date.now, { from, dataFolder: path.join(await tempFolder(), 'new') })
  return dataFolder
}

describe('a backup', () => {
  it('is refused within the folder that it backs up', async () => {
    const within = { folder: path.join(studio.dataFolder, 'backups') }
    await expect(backUpStudio(studio, within)).rejects.toMatchObject({ code: 'store-backup' })
  })

  it('holds every file of the storage, each under its sum', () => {
    const { files } = listOf(after)
    expect(files.length).toBeGreaterThan(20)
    for (const { key, sha256, bytes } of files) {
      expect([key, sumOf(readFileSync(object(sha256)))]).toEqual([key, sha256])
      expect(sumOf(readFileSync(studio.storage.path(key)))).toBe(sha256)
      expect(statSync(object(sha256)).size).toBe(bytes)
    }
  })

  it('copies only what is new, and the film not twice', async () => {
    const film = listOf(after).files.find(({ key }) => key.includes('/files/'))
    expect(listOf(during).files).toContainEqual(film)
    expect(after.newBytes).toBeLessThan(film?.bytes ?? 0)
    const third = await backUpStudio(studio, { folder: backups })
    expect(third).toMatchObject({ newFiles: 0, newBytes: 0, files: after.files })
  })

  it('leaves no part file, and is in the log', async () => {
    const names = readdirSync(backups, { recursive: true }).map(String)
    expect(names.filter((name) => name.includes('.part'))).toEqual([])
    expect((await studio.store.audit.list({ limit: 3 })).map(({ action }) => action)).toContain('studio.backup')
  })
})

describe('a restored studio', () => {
  it('answers with the same pages and the same bytes', async () => {
    const running = await startServer(testSettings(await restore(backups)), { assets: await projectAssets() })
    try {
      const { ask } = openClient(running.url)
      const lessons = await running.studio.store.lessons.list(['published'])
      expect(lessons.map(({ slug }) => slug)).toEqual(['arm-circles', 'neck-turns', 'shoulder-rolls', 'wrist-circles'])
      for (const { slug, current } of lessons) {
        expect((await ask(`/lessons/${slug}`)).status, slug).toBe(200)
        expect(sumOf((await ask(`/lessons/${slug}/clip.mp4`)).body), slug).toBe(current?.lesson.clip.sha256)
        expect((await ask(`/lessons/${slug}/captions.en.vtt`)).text, slug).toMatch(/^WEBVTT/)
      }
      const again = await backUpStudio(running.studio, { folder: backups })
      expect(again.newFiles).toBe(0)
    } finally {
      await running.close()
    }
  })

  it('of a backup that was taken while lessons were made shows those that were made, whole', async () => {
    const old = await openStudio(testSettings(await restore(during.folder)))
    try {
      const lessons = await old.store.lessons.list(['published'])
      expect(lessons.length).toBeGreaterThan(0)
      for (const { id, current } of lessons) {
        const clip = readFileSync(old.storage.path(`lessons/${id}/${current?.version ?? 0}/clip.mp4`))
        expect(sumOf(clip)).toBe(current?.lesson.clip.sha256)
      }
    } finally {
      await old.close()
    }
  })
})

describe('refused, and nothing is left', () => {
  it('a folder without a backup, and a place where something is', async () => {
    const empty = await tempFolder()
    const to = path.join(empty, 'new')
    await expect(restoreStudio(Date.now, { from: empty, dataFolder: to })).rejects.toMatchObject({
      code: 'archive-wrong',
    })
    await expect(restoreStudio(Date.now, { from: backups, dataFolder: studio.dataFolder })).rejects.toMatchObject({
      code: 'out-not-writable',
    })
    expect(readdirSync(empty)).toEqual([])
  })

  it.each([
    [
      'one byte is another',
      (bytes: Buffer) => Buffer.concat([Buffer.from([bytes[0] === 0 ? 1 : 0]), bytes.subarray(1)]),
    ],
    ['its end is missing', (bytes: Buffer) => bytes.subarray(0, -1)],
  ])('a file of which %s, by its name; a recheck mends it', async (_what, damage) => {
    const clip = listOf(after).files.find(({ key }) => /lessons\/.*clip\.mp4/.test(key))
    const file = object(clip?.sha256 ?? '')
    writeFileSync(file, damage(readFileSync(file)))
    const to = path.join(await tempFolder(), 'new')
    const call = restoreStudio(Date.now, { from: after.folder, dataFolder: to })
    await expect(call).rejects.toThrow(clip?.key)
    expect(readdirSync(path.dirname(to))).toEqual([])
    expect(await backUpStudio(studio, { folder: backups, recheck: true })).toMatchObject({ newFiles: 1 })
    expect(await restore(after.folder)).toMatch(/new$/)
  })

  it.each([
    ['not JSON', 'no'],
    ['of a newer version', JSON.stringify({ format: 'repslate-backup', version: 2 })],
    ['with a key that leads out', null],
  ])('a list that is %s', async (_what, text) => {
    const list = listOf(after)
    const [first] = list.files
    const outside = { ...list, files: first ? [{ ...first, key: '../../outside' }] : [] }
    const one = path.join(backups, '2000-01-01T00-00-00.000Z')
    mkdirSync(one, { recursive: true })
    cpSync(path.join(after.folder, 'store.sqlite'), path.join(one, 'store.sqlite'))
    writeFileSync(path.join(one, 'backup.json'), text ?? JSON.stringify(outside))
    const to = path.join(await tempFolder(), 'new')
    await expect(restoreStudio(Date.now, { from: one, dataFolder: to })).rejects.toMatchObject({
      code: text === null ? 'store-damaged' : 'archive-wrong',
    })
    expect(readdirSync(path.dirname(to))).toEqual([])
  })
})
