/** Writes a zip archive, stored: clips do not get smaller. Seen whole or not at all. */
import { createWriteStream } from 'node:fs'
import { open, rename, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import { pipeline } from 'node:stream/promises'
import yazl from 'yazl'
import { AppError } from '../../shared/errors.ts'
import { makeFolder } from './make-folder.ts'

/** Bytes at hand, or a file of this machine. */
export type ZipPart = { name: string } & ({ bytes: Buffer } | { path: string })

/** @returns bytes written. @throws AppError out-not-writable when the file is there already, or cannot be written; disk-full */
export async function writeZip(file: string, parts: readonly ZipPart[], atUtc: number): Promise<number> {
  const target = path.resolve(file)
  const isThere = await stat(target).then(
    () => true,
    () => false,
  )
  if (isThere) throw new AppError('out-not-writable', `"${target}" is there already. Name a file that is not.`)
  const part = `${target}.${process.pid}.part`
  try {
    await makeFolder(path.dirname(target))
    const zip = new yazl.ZipFile()
    const options = { compress: false, mtime: new Date(atUtc), mode: 0o100644 }
    for (const one of parts) {
      if ('bytes' in one) zip.addBuffer(one.bytes, one.name, options)
      else zip.addFile(one.path, one.name, options)
    }
    zip.end()
    // a file that cannot be read is told by the archive, not by its stream
    const failed = new Promise<never>((_, reject) => zip.on('error', reject))
    await Promise.race([pipeline(zip.outputStream, createWriteStream(part)), failed])
    const handle = await open(part, 'r')
    await handle.sync().finally(() => handle.close())
    const { size } = await stat(part)
    await rename(part, target)
    return size
  } catch (cause) {
    await rm(part, { force: true }).catch(() => undefined)
    if (cause instanceof AppError) throw cause
    const code = (cause as NodeJS.ErrnoException).code
    if (code === 'ENOSPC') throw new AppError('disk-full', `The disk is full: "${target}" was not written.`, { cause })
    throw new AppError('out-not-writable', `"${target}" cannot be written: ${(cause as Error).message}.`, { cause })
  }
}
