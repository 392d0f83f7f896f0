/** Restores a backup into a new data folder. All of it is proven before the folder gets its name. */
import { copyFile, readFile, readdir, rename, rm, stat, utimes } from 'node:fs/promises'
import path from 'node:path'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { lessonFileKey } from '../../core/library/name-lesson-files.ts'
import { BackupList } from '../../shared/backup.ts'
import { AppError } from '../../shared/errors.ts'
import { makeFolder } from '../files/make-folder.ts'
import { openFolderStorage } from '../storage/open-folder-storage.ts'
import type { Storage } from '../storage/storage.ts'
import { makeIds } from '../store/make-ids.ts'
import { STORE_FILE } from '../store/open-sqlite.ts'
import { openStore } from '../store/open-store.ts'
import type { Store } from '../store/open-store.ts'
import { BACKUP, listBackups, sumPath } from './back-up.ts'
import type { OnProgress } from './progress.ts'

export interface RestoreInput {
  /** A folder of backups, for the newest, or one backup in it. */
  from: string
  /** Must not be there, or be empty. */
  dataFolder: string
}

export interface Restored {
  dataFolder: string
  /** UTC ms at which the backup was made. */
  atUtc: number
  files: number
  bytes: number
  recordings: number
  lessons: number
}

interface Needs {
  ids: () => string
  clock: () => number
}

/** @throws AppError archive-wrong when it is no backup or is damaged, out-not-writable when something is there, disk-full */
export async function restoreStudio(
  clock: () => number,
  input: RestoreInput,
  { signal, onProgress }: { signal?: AbortSignal; onProgress?: OnProgress } = {},
): Promise<Restored> {
  const ids = makeIds(clock)
  const backup = await findBackup(path.resolve(input.from))
  const dataFolder = path.resolve(input.dataFolder)
  await mustBeFree(dataFolder)
  const list = await readList(backup)
  const work = `${dataFolder}.${ids()}.part`
  try {
    await makeFolder(work)
    await copyProven(path.join(backup, BACKUP.store), list.store.sha256, path.join(work, STORE_FILE))
    const storage = await openFolderStorage(path.join(work, 'media'), clock())
    for (const [index, file] of list.files.entries()) {
      if (signal?.aborted) throw new AppError('engine-cancelled', 'Restoring was stopped. Nothing was restored.')
      await bringBack(storage, path.dirname(backup), file)
      onProgress?.({
        label: 'Bringing files back',
        fraction: (index + 1) / list.files.length,
        leftMs: null,
        done: false,
      })
    }
    const counts = await mustBeWhole(work, storage, { ids, clock })
    await rm(dataFolder, { recursive: true, force: true })
    await rename(work, dataFolder)
    const bytes = list.files.reduce((sum, file) => sum + file.bytes, 0)
    return { dataFolder, atUtc: list.atUtc, files: list.files.length, bytes, ...counts }
  } catch (cause) {
    await rm(work, { recursive: true, force: true }).catch(() => undefined)
    throw explain(dataFolder, cause)
  }
}

async function findBackup(from: string): Promise<string> {
  const isOne = await stat(path.join(from, BACKUP.list)).catch(() => null)
  if (isOne) return from
  const newest = (await listBackups(from)).at(-1)
  if (newest !== undefined) return path.join(from, newest)
  throw wrong(`There is no backup in "${from}". Name the folder that was given to "backup".`)
}

async function mustBeFree(dataFolder: string): Promise<void> {
  const names = await readdir(dataFolder).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return []
    throw new AppError('out-not-writable', `"${dataFolder}" is no folder. Name one that is not there yet.`)
  })
  if (names.length === 0) return
  throw new AppError(
    'out-not-writable',
    `"${dataFolder}" holds something already. Restore into a folder that is not there yet; nothing is written over.`,
  )
}

async function readList(backup: string): Promise<BackupList> {
  const text = await readFile(path.join(backup, BACKUP.list), 'utf8').catch((cause: unknown) => {
    throw wrong(`The list of the backup "${backup}" cannot be read.`, cause)
  })
  try {
    return BackupList.parse(JSON.parse(text))
  } catch (cause) {
    throw wrong(`The list of the backup "${backup}" is damaged, or of a newer version. Take another backup.`, cause)
  }
}

async function copyProven(from: string, sha256: string, to: string): Promise<void> {
  await copyFile(from, to).catch((cause: NodeJS.ErrnoException) => {
    throw cause.code === 'ENOENT' ? wrong(`The backup lacks "${path.basename(from)}". Take another backup.`) : cause
  })
  if ((await hashFile(to)) !== sha256)
    throw wrong(`"${path.basename(from)}" in the backup is damaged. Take another backup.`)
}

async function bringBack(storage: Storage, folder: string, file: BackupList['files'][number]): Promise<void> {
  const from = sumPath(folder, file.sha256)
  const info = await stat(from).catch(() => null)
  if (!info?.isFile()) throw wrong(`The backup lacks the file "${file.key}". Take another backup.`)
  await storage.putFile(file.key, from, 'copy')
  const target = storage.path(file.key)
  if ((await hashFile(target)) !== file.sha256) {
    throw wrong(
      `The file "${file.key}" in the backup is damaged. Take another backup, or run "backup --recheck" first.`,
    )
  }
  // browsers and the next backup tell by the time whether it is the same
  await utimes(target, new Date(file.changedUtc), new Date(file.changedUtc))
}

/** Opens the store, which also brings an older one up to date, and looks for every file that it names. */
async function mustBeWhole(
  dataFolder: string,
  storage: Storage,
  outside: Needs,
): Promise<{ recordings: number; lessons: number }> {
  const store = await openStore({ dataFolder }, outside)
  try {
    const recordings = await store.recordings.list()
    const lessons = await store.lessons.list(['published'])
    const missing: string[] = []
    for (const key of await namedKeys(store, recordings, lessons)) if (!(await storage.head(key))) missing.push(key)
    if (missing.length > 0) {
      throw new AppError('archive-wrong', 'The backup lacks files that its store names. Take another backup.', {
        details: missing,
      })
    }
    return { recordings: recordings.length, lessons: lessons.length }
  } finally {
    await store.close()
  }
}

async function namedKeys(
  store: Store,
  recordings: Awaited<ReturnType<Store['recordings']['list']>>,
  lessons: Awaited<ReturnType<Store['lessons']['list']>>,
): Promise<string[]> {
  const keys = lessons.flatMap(({ id, current }) => (current ? [lessonFileKey(id, current.version, 'clip.mp4')] : []))
  for (const { id } of recordings) {
    for (const { storageKey } of await store.media.list(id)) if (storageKey !== null) keys.push(storageKey)
  }
  return keys
}

const wrong = (message: string, cause?: unknown): AppError => new AppError('archive-wrong', message, { cause })

function explain(dataFolder: string, cause: unknown): AppError {
  if (cause instanceof AppError) return cause
  if ((cause as NodeJS.ErrnoException).code === 'ENOSPC') {
    return new AppError('disk-full', `The disk of "${dataFolder}" is full. Nothing was restored.`, { cause })
  }
  const why = (cause as Error).message
  return new AppError('out-not-writable', `"${dataFolder}" cannot be written: ${why}. Nothing was restored.`, { cause })
}
