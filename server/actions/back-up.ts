/**
 * Backs the studio up while it is in use: the store as it is at one moment, and every file of the storage under its sum,
 * so that a second backup in the same folder copies only what is new.
 *
 *     <folder>/media/ab/ab12…       the bytes, shared by all backups of the folder
 *     <folder>/<time>/store.sqlite  the store
 *     <folder>/<time>/backup.json   which file is which; written last
 */
import { createHash } from 'node:crypto'
import { createWriteStream } from 'node:fs'
import { open, readdir, readFile, rename, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import { Transform } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { BackupList } from '../../shared/backup.ts'
import { AppError } from '../../shared/errors.ts'
import { makeFolder } from '../files/make-folder.ts'
import { writeTextFile } from '../files/text-files.ts'
import { isGrowing, isJoined } from '../storage/media-keys.ts'
import type { Studio } from '../studio.ts'
import type { OnProgress } from './progress.ts'

/** Names within a backup folder. */
export const BACKUP = { media: 'media', store: 'store.sqlite', list: 'backup.json' } as const

/** Where the bytes with this sum lie. */
export const sumPath = (folder: string, sha256: string): string =>
  path.join(folder, BACKUP.media, sha256.slice(0, 2), sha256)

export interface BackedUp {
  /** The new backup's own folder. */
  folder: string
  files: number
  bytes: number
  /** Of these, what was not in the folder before. */
  newFiles: number
  newBytes: number
}

type Needs = Pick<Studio, 'store' | 'storage' | 'actor' | 'clock' | 'ids' | 'dataFolder'>
type BackupFile = BackupList['files'][number]

/**
 * Each file is summed while it is read and once more from the backup before it counts.
 * @param input.recheck also sums what earlier backups copied, and copies anew what is damaged
 * @throws AppError store-backup, disk-full, out-not-writable, engine-cancelled, not-allowed
 */
export async function backUpStudio(
  studio: Needs,
  input: { folder: string; recheck?: boolean },
  { signal, onProgress }: { signal?: AbortSignal; onProgress?: OnProgress } = {},
): Promise<BackedUp> {
  mustBeAllowed(studio.actor, 'studio.backup', { type: 'studio', id: 'studio' })
  const folder = path.resolve(input.folder)
  mustLieOutside(folder, studio.dataFolder)
  const atUtc = studio.clock()
  const target = path.join(folder, nameOf(atUtc))
  const work = `${target}.${studio.ids()}.part`
  try {
    await makeFolder(path.join(folder, BACKUP.media))
    await sweep(folder, atUtc)
    const known = await readNewest(folder)
    const told = { work, folder, known, recheck: input.recheck === true, signal, onProgress }
    let copied = await copyAll(studio, told)
    // the store that was copied may name a joined film that went before its bytes were copied
    for (let again = 0; copied === null && again < MOST_TIMES; again += 1) copied = await copyAll(studio, told)
    if (copied === null) throw new Error('films of classes changed all the while')
    const { store, files, bytes, newFiles, newBytes } = copied
    const list: BackupList = {
      ...{ format: 'repslate-backup', version: 1, atUtc },
      store: { bytes: store.bytes, sha256: store.sha256 },
      files,
    }
    await writeTextFile(path.join(work, BACKUP.list), `${JSON.stringify(list, null, 1)}\n`)
    await rename(work, target)
    const made = { folder: target, files: files.length, bytes, newFiles, newBytes }
    await studio.store.audit.add(studio.actor, 'studio.backup', { type: 'studio', id: 'studio' }, { ...made })
    return made
  } catch (cause) {
    await rm(work, { recursive: true, force: true }).catch(() => undefined)
    throw explain(folder, cause)
  }
}

interface Copying {
  work: string
  folder: string
  known: ReadonlyMap<string, BackupFile>
  recheck: boolean
  signal: AbortSignal | undefined
  onProgress: OnProgress | undefined
}

/** How often a backup begins anew at most. */
const MOST_TIMES = 3

/**
 * The store first: what it names is in the storage by then, and but for joined films nothing is ever taken away.
 * @returns null when a joined film went meanwhile
 */
async function copyAll(studio: Needs, { work, folder, known, recheck, signal, onProgress }: Copying) {
  const { storage } = studio
  const joined = (await storage.list('')).filter(isJoined)
  const file = path.join(work, BACKUP.store)
  await rm(file, { force: true })
  const store = await studio.store.backupTo(file)
  const keys = (await storage.list('')).filter((key) => !isGrowing(key))
  const files: BackupFile[] = []
  let [bytes, newFiles, newBytes] = [0, 0, 0]
  for (const [index, key] of keys.entries()) {
    if (signal?.aborted) throw new AppError('engine-cancelled', 'The backup was stopped. Earlier ones are untouched.')
    const kept = await keepFile(studio, folder, key, known.get(key), recheck).catch(noneIfGone)
    // a file that can be made anew may have gone since the list was read
    if (!kept) continue
    files.push(kept.file)
    bytes += kept.file.bytes
    if (kept.isNew) [newFiles, newBytes] = [newFiles + 1, newBytes + kept.file.bytes]
    onProgress?.({ label: 'Copying files', fraction: (index + 1) / keys.length, leftMs: null, done: false })
  }
  const copied = new Set(files.map(({ key }) => key))
  return joined.every((key) => copied.has(key)) ? { store, files, bytes, newFiles, newBytes } : null
}

function noneIfGone(error: unknown): null {
  if (error instanceof AppError && error.code === 'row-missing') return null
  throw error
}

/** A backup in the folder that it backs up would hold itself, and be lost with it. */
function mustLieOutside(folder: string, dataFolder: string): void {
  const way = path.relative(path.resolve(dataFolder), folder)
  if (way === '' || !(way.startsWith('..') || path.isAbsolute(way))) {
    throw new AppError(
      'store-backup',
      'A backup must lie outside the studio’s own folder. Name another, best on another disk.',
    )
  }
}

/** `2026-11-25T13-31-02.125Z`: in the order of time, and a name that every disk takes. */
const nameOf = (atUtc: number): string => new Date(atUtc).toISOString().replaceAll(':', '-')

const DAY_MS = 86_400_000

/** What killed runs left. */
async function sweep(folder: string, nowUtc: number): Promise<void> {
  for (const place of [folder, path.join(folder, BACKUP.media)]) {
    for (const name of (await readdir(place)).filter((one) => one.endsWith('.part'))) {
      const { mtimeMs } = await stat(path.join(place, name))
      if (nowUtc - mtimeMs > DAY_MS) await rm(path.join(place, name), { recursive: true, force: true })
    }
  }
}

/** Names of the backups in a folder, the oldest first; one that did not end is none. */
export async function listBackups(folder: string): Promise<string[]> {
  const names = (await readdir(folder).catch(() => [])).filter((name) => /^\d{4}-\d\d-\d\dT[\d.-]+Z$/.test(name))
  return names.sort()
}

/** Files of the newest backup by key; a list that cannot be read only costs time. */
async function readNewest(folder: string): Promise<Map<string, BackupFile>> {
  const newest = (await listBackups(folder)).at(-1)
  if (newest === undefined) return new Map()
  const text = await readFile(path.join(folder, newest, BACKUP.list), 'utf8').catch(() => 'null')
  const list = BackupList.safeParse(JSON.parse(text))
  return new Map((list.data?.files ?? []).map((file) => [file.key, file]))
}

async function keepFile(
  { storage, ids }: Needs,
  folder: string,
  key: string,
  known: BackupFile | undefined,
  recheck: boolean,
): Promise<{ file: BackupFile; isNew: boolean } | null> {
  const now = await storage.head(key)
  if (!now) return null
  const isKnown = known?.bytes === now.bytes && known.changedUtc === now.changedUtc
  if (isKnown && (await isThere(folder, known, recheck))) return { file: known, isNew: false }
  const part = path.join(folder, BACKUP.media, `${ids()}.part`)
  try {
    const sum = createHash('sha256')
    let bytes = 0
    const count = new Transform({
      transform: (chunk: Buffer, _encoding, done) => {
        sum.update(chunk)
        bytes += chunk.length
        done(null, chunk)
      },
    })
    await pipeline(await storage.openRange(key), count, createWriteStream(part, { mode: 0o600 }))
    const sha256 = sum.digest('hex')
    const file = { key, bytes, sha256, changedUtc: now.changedUtc }
    if (await isThere(folder, file, recheck)) return { file, isNew: false }
    await flush(part)
    if ((await hashFile(part)) !== sha256) throw new Error(`the copy of ${key} is not what was read`)
    const target = sumPath(folder, sha256)
    await makeFolder(path.dirname(target))
    await rename(part, target)
    return { file, isNew: true }
  } finally {
    await rm(part, { force: true })
  }
}

async function isThere(folder: string, { sha256, bytes }: BackupFile, recheck: boolean): Promise<boolean> {
  const file = sumPath(folder, sha256)
  const info = await stat(file).catch(() => null)
  if (info?.size !== bytes) return false
  return !recheck || (await hashFile(file)) === sha256
}

async function flush(file: string): Promise<void> {
  const handle = await open(file, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

function explain(folder: string, cause: unknown): AppError {
  if (cause instanceof AppError) return cause
  if ((cause as NodeJS.ErrnoException).code === 'ENOSPC') {
    return new AppError('disk-full', `The disk of "${folder}" is full. Earlier backups are untouched.`, { cause })
  }
  const why = (cause as Error).message
  return new AppError('store-backup', `The backup in "${folder}" was not made: ${why}. Earlier ones are untouched.`, {
    cause,
  })
}
