/** Backs a SQLite store up into one file while it is in use: whole, checked, and there only when complete. */
import { createHash } from 'node:crypto'
import { createReadStream, existsSync } from 'node:fs'
import { mkdir, open, rename, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import { pipeline } from 'node:stream/promises'
import { sql } from 'kysely'
import type { Kysely } from 'kysely'
import Database from 'libsql'
import { AppError } from '../../shared/errors.ts'
import type { Tables } from './tables.ts'

export interface Backup {
  file: string
  bytes: number
  sha256: string
}

/**
 * Writes the store as it is at one moment, without what was deleted (SQLite's VACUUM INTO). Writers wait meanwhile.
 * @throws AppError store-backup when the file exists or cannot be written, or the copy is not sound.
 */
export async function backUp(db: Kysely<Tables>, file: string): Promise<Backup> {
  const target = path.resolve(file)
  if (existsSync(target)) throw new AppError('store-backup', `${target} exists already. Name a file that does not.`)
  const part = `${target}.part`
  try {
    await mkdir(path.dirname(target), { recursive: true })
    await rm(part, { force: true })
    await sql`vacuum into ${part}`.execute(db)
    checkCopy(part)
    await sync(part)
    const sha256 = await hash(part)
    const { size } = await stat(part)
    await rename(part, target)
    await sync(path.dirname(target))
    return { file: target, bytes: size, sha256 }
  } catch (cause) {
    await rm(part, { force: true }).catch(() => undefined)
    throw new AppError('store-backup', `The backup ${target} cannot be written: ${(cause as Error).message}.`, {
      cause,
    })
  }
}

/** SQLite's own check of every page and index. */
function checkCopy(file: string): void {
  const copy = new Database(file)
  try {
    const rows = copy.prepare('pragma integrity_check').all() as { integrity_check: string }[]
    if (rows.length !== 1 || rows[0]?.integrity_check !== 'ok') throw new Error('the copy is not sound')
  } finally {
    copy.close()
  }
}

/** Makes sure that the file, or a folder's list of names, is on the disk. */
async function sync(place: string): Promise<void> {
  const handle = await open(place, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

async function hash(file: string): Promise<string> {
  const sum = createHash('sha256')
  await pipeline(createReadStream(file, { highWaterMark: 1 << 20 }), sum)
  return sum.digest('hex')
}
