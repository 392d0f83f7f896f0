/** Writes a zip archive, stored: clips do not get smaller. Seen whole or not at all. */
import { createReadStream, createWriteStream } from 'node:fs'
import { open, rename, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import type { Readable, Writable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import yazl from 'yazl'
import { AppError } from '../../shared/errors.ts'
import { makeFolder } from './make-folder.ts'

/** Bytes at hand, or a file of this machine. */
export type ZipPart = { name: string } & ({ bytes: Buffer } | { path: string })

/**
 * Writes the archive into a stream, file by file, without a file of its own. Where the reader goes away, nothing stays open.
 * @param onSize told how long it will be, before the first byte
 * @throws Error when a file cannot be read or the stream ends early
 */
export async function sendZip(
  out: Writable,
  parts: readonly ZipPart[],
  atUtc: number,
  onSize: (bytes: number) => void = () => undefined,
): Promise<void> {
  const sizes = await Promise.all(parts.map(async (one) => ('bytes' in one ? 0 : (await stat(one.path)).size)))
  const zip = new yazl.ZipFile()
  let reading: Readable | null = null
  // a file that cannot be read is told by the archive, not by its stream
  const failed = new Promise<never>((_, reject) => zip.on('error', reject))
  const options = { compress: false, mtime: new Date(atUtc), mode: 0o100644 }
  try {
    for (const [index, one] of parts.entries()) {
      if ('bytes' in one) {
        zip.addBuffer(one.bytes, one.name, options)
        continue
      }
      const size = sizes[index]
      zip.addReadStreamLazy(one.name, { ...options, size }, (take) => {
        reading = createReadStream(one.path).on('error', (error) => zip.emit('error', error))
        take(null, reading)
      })
    }
    // the types do not tell that it is told the size
    const sized = new Promise<void>((resolve) => {
      const tell = (bytes: number): void => {
        onSize(bytes)
        resolve()
      }
      zip.end(undefined, tell as () => void)
    })
    await Promise.race([sized, failed])
    await Promise.race([pipeline(zip.outputStream, out), failed])
  } finally {
    ;(reading as Readable | null)?.destroy()
    failed.catch(() => undefined)
  }
}

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
    await sendZip(createWriteStream(part), parts, atUtc)
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
