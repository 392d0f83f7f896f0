/** The hidden folder in which a cut works: part files live here, so that no half file is ever seen under its name. */
import { randomBytes } from 'node:crypto'
import { open, readdir, rename, rm, rmdir, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { AppError } from '../../shared/errors.ts'
import { makeFolder } from '../files/make-folder.ts'

export interface WorkFolder {
  /** Absolute path of the folder the person named. */
  outDir: string
  /** A path for a new part file; no two calls give the same. */
  partPath: (label: string) => string
  /** Where a fact about a recording is kept between runs. */
  factPath: (sha256: string, name: string) => string
  keepFact: (path: string, text: string) => Promise<void>
  /**
   * Removes our own part files, and folders that we made and that stayed empty.
   * @param done false when the cut came to nothing: then facts of this run go too, if no clip is there.
   */
  leave: (done: boolean) => Promise<void>
}

const WORK = '.work'
const DAY_MS = 86_400_000

/**
 * Makes the out folder with what a cut needs in it, and sweeps part files of runs that were killed.
 * @param nowUtc UTC milliseconds.
 * @throws AppError out-not-writable, disk-full.
 */
export async function openWorkFolder(outDir: string, nowUtc: number): Promise<WorkFolder> {
  const made: string[] = []
  for (const folder of [outDir, join(outDir, 'clips'), join(outDir, WORK)]) {
    const folders = await makeFolder(folder).catch((cause: unknown) => {
      throw writeError(cause, folder)
    })
    made.push(...folders)
  }
  const work = join(outDir, WORK)
  await sweepParts(work, nowUtc)
  const parts = new Set<string>()
  const facts = new Set<string>()
  const folder: WorkFolder = {
    outDir,
    partPath: (label) => {
      const path = join(work, `${label}.${process.pid}.${randomBytes(4).toString('hex')}.part`)
      parts.add(path)
      return path
    },
    factPath: (sha256, name) => join(work, `${sha256}.${name}.json`),
    keepFact: async (path, text) => {
      facts.add(path)
      await writeWhole(folder, path, text)
    },
    leave: async (done) => {
      for (const part of parts) await rm(part, { force: true })
      const clips = await readdir(join(outDir, 'clips')).catch(() => [])
      if (!done && clips.length === 0) for (const fact of facts) await rm(fact, { force: true })
      for (const folder of made.toReversed()) await rmdir(folder).catch(() => undefined)
    },
  }
  return folder
}

/** Flushes a part file to disk and gives it its name, in one step that others see whole or not at all. */
export async function publishPart(part: string, path: string): Promise<void> {
  try {
    const file = await open(part, 'r+')
    try {
      await file.sync()
    } finally {
      await file.close()
    }
    await rename(part, path)
  } catch (cause) {
    await rm(part, { force: true })
    throw writeError(cause, path)
  }
}

/** Writes a text whole: part file, flush, rename. @throws AppError disk-full, out-not-writable. */
export async function writeWhole(folder: WorkFolder, path: string, text: string): Promise<void> {
  const part = folder.partPath('text')
  try {
    await writeFile(part, text, 'utf8')
  } catch (cause) {
    await rm(part, { force: true })
    throw writeError(cause, path)
  }
  await publishPart(part, path)
}

/** What a failed write means, with what to do. */
export function writeError(cause: unknown, path: string): AppError {
  const code = typeof cause === 'object' && cause !== null && 'code' in cause ? String(cause.code) : ''
  if (code === 'ENOSPC' || code === 'EDQUOT') {
    return new AppError(
      'disk-full',
      `The disk is full: "${path}" could not be written. Free some space, then run it again.`,
      { cause },
    )
  }
  if (code === 'EFBIG') {
    return new AppError('engine-too-big', `"${path}" is larger than a file may be here. Choose another folder.`, {
      cause,
    })
  }
  return new AppError(
    'out-not-writable',
    `"${path}" cannot be written (${code || 'unknown reason'}). Choose another folder with --out.`,
    { cause },
  )
}

/** A part file whose writer is gone, or is a day old, belongs to nobody. */
async function sweepParts(work: string, nowUtc: number): Promise<void> {
  for (const name of await readdir(work)) {
    const pid = Number(/\.(\d+)\.[0-9a-f]{8}\.part$/.exec(name)?.[1])
    if (!pid) continue
    const path = join(work, name)
    const changed = (await stat(path).catch(() => null))?.mtimeMs ?? nowUtc
    if (!isAlive(pid) || nowUtc - changed > DAY_MS) await rm(path, { force: true })
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}
