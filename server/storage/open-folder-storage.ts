/** The storage in a folder of this machine: one file a key, written beside its place and renamed into it. */
import { randomBytes } from 'node:crypto'
import { constants, createReadStream } from 'node:fs'
import { copyFile, link, mkdir, open, readdir, rename, rm, stat, statfs, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { AppError } from '../../shared/errors.ts'
import { checkKey } from './storage.ts'
import type { PutMode, Storage, StoredFile } from './storage.ts'

/** Part files lie here, so that no half file is ever seen under a key. The dot keeps it out of every key. */
const PARTS = '.parts'
/** A part file that nobody has written to for so long belongs to nobody. */
const PART_AGE_MS = 86_400_000

/** Makes the folder, and takes away part files of programs that were killed. @throws AppError out-not-writable, disk-full */
export async function openFolderStorage(folder: string, nowUtc: number): Promise<Storage> {
  const parts = path.join(folder, PARTS)
  await mkdir(parts, { recursive: true, mode: 0o700 }).catch((cause: unknown) => {
    throw writeFault(cause)
  })
  await sweepParts(parts, nowUtc)
  const pathOf = (key: string): string => path.join(folder, ...checkKey(key).split('/'))
  const put = async (key: string, write: (part: string) => Promise<void>): Promise<StoredFile> => {
    const target = pathOf(key)
    const part = path.join(parts, `${process.pid}-${randomBytes(8).toString('hex')}`)
    try {
      await write(part)
      await flush(part)
      await mkdir(path.dirname(target), { recursive: true, mode: 0o700 })
      await rename(part, target)
      await flushFolder(path.dirname(target))
      return await describe(target)
    } catch (cause) {
      await rm(part, { force: true }).catch(() => undefined)
      throw cause instanceof AppError ? cause : writeFault(cause)
    }
  }
  return {
    putFile: async (key, from, mode) => {
      const stored = await put(key, (part) => bringIn(from, part, mode))
      // after the copy is safe; a move on one disk has taken it already
      if (mode === 'move') await rm(from, { force: true })
      return stored
    },
    putBytes: (key, bytes) => put(key, (part) => writeFile(part, bytes)),
    openRange: async (key, range) => {
      const file = pathOf(key)
      if (!(await statOrNull(file))) throw new AppError('row-missing', 'The file is not in the storage any more.')
      return createReadStream(file, range ?? {})
    },
    head: (key) => statOrNull(pathOf(key)),
    path: pathOf,
    list: (under) => listKeys(folder, under === '' ? '' : checkKey(under)),
    delete: (key) => rm(pathOf(key), { force: true }),
    freeBytes: async () => {
      const disk = await statfs(folder)
      return disk.bavail * disk.bsize
    },
  }
}

async function bringIn(from: string, part: string, mode: PutMode): Promise<void> {
  const source = await stat(from).catch((cause: unknown) => {
    throw new AppError('file-missing', `"${from}" is not there or cannot be read. Check the name.`, { cause })
  })
  if (!source.isFile()) throw new AppError('file-missing', `"${from}" is not a file.`)
  if (mode === 'move' && (await tried(rename(from, part)))) return
  if (mode === 'link' && (await tried(link(from, part)))) return
  // some disks share the bytes of a copy until one of the two changes
  await copyFile(from, part, constants.COPYFILE_FICLONE)
}

/** False where the two lie on different disks, or the disk knows no links; then bytes are copied. */
async function tried(work: Promise<void>): Promise<boolean> {
  try {
    await work
    return true
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? ''
    if (['EXDEV', 'EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'EMLINK'].includes(code)) return false
    throw error
  }
}

async function flush(file: string): Promise<void> {
  const handle = await open(file, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/** The name must be as lasting as the bytes. Systems that cannot flush a folder do it by themselves. */
async function flushFolder(folder: string): Promise<void> {
  await flush(folder).catch(() => undefined)
}

async function describe(file: string): Promise<StoredFile> {
  const { size, mtimeMs } = await stat(file)
  return { bytes: size, changedUtc: Math.round(mtimeMs) }
}

async function statOrNull(file: string): Promise<StoredFile | null> {
  const info = await stat(file).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT' || error.code === 'ENOTDIR') return null
    throw error
  })
  return info?.isFile() ? { bytes: info.size, changedUtc: Math.round(info.mtimeMs) } : null
}

/** What is no key of ours, such as part files and work folders, is not listed. */
async function listKeys(folder: string, under: string): Promise<string[]> {
  const entries = await readdir(path.join(folder, ...under.split('/')), { withFileTypes: true }).catch(() => [])
  const keys = await Promise.all(
    entries.map((entry): Promise<string[]> => {
      const key = under === '' ? entry.name : `${under}/${entry.name}`
      if (entry.name.startsWith('.')) return Promise.resolve([])
      return entry.isDirectory() ? listKeys(folder, key) : Promise.resolve(entry.isFile() ? [key] : [])
    }),
  )
  return keys.flat().sort()
}

async function sweepParts(parts: string, nowUtc: number): Promise<void> {
  for (const name of await readdir(parts)) {
    const file = path.join(parts, name)
    const info = await statOrNull(file)
    if (info && nowUtc - info.changedUtc > PART_AGE_MS) await rm(file, { force: true })
  }
}

function writeFault(cause: unknown): AppError {
  const code = (cause as NodeJS.ErrnoException).code ?? ''
  if (code === 'ENOSPC' || code === 'EDQUOT') {
    return new AppError('disk-full', 'The disk of the storage is full. Free some space, then try again.', { cause })
  }
  return new AppError(
    'out-not-writable',
    `The storage cannot be written: ${(cause as Error).message}. Check the rights of the data folder.`,
    { cause },
  )
}
