/** Text files in and out: read whole and checked, written whole or not at all. */
import { open, rename, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import { AppError } from '../../shared/errors.ts'
import { makeFolder } from './make-folder.ts'

/** Largest text file read, in bytes: ten hours of speech with a time for every word take about six million. */
export const MAX_TEXT_BYTES = 8 * 1024 * 1024

/**
 * Reads a text file: UTF-8, or UTF-16 where its byte order mark says so.
 * @throws AppError file-missing, file-empty, file-too-big, file-not-text
 */
export async function readTextFile(file: string, what: string): Promise<string> {
  const info = await stat(file).catch((cause: unknown) => {
    throw new AppError('file-missing', `The ${what} "${file}" cannot be read. Check the name and the folder.`, {
      cause,
    })
  })
  if (!info.isFile()) throw new AppError('file-missing', `The ${what} "${file}" is not a file.`)
  if (info.size === 0) throw new AppError('file-empty', `The ${what} "${file}" is empty.`)
  if (info.size > MAX_TEXT_BYTES) {
    const size = (info.size / 1024 / 1024).toFixed(1)
    throw new AppError(
      'file-too-big',
      `The ${what} "${file}" is ${size} MB; the limit is ${MAX_TEXT_BYTES / 1024 / 1024} MB. A class of ten hours fits in that: check that this is the right file.`,
    )
  }
  const handle = await open(file, 'r')
  try {
    const bytes = await handle.readFile()
    return new TextDecoder(encodingOf(bytes), { fatal: true }).decode(bytes)
  } catch (cause) {
    throw new AppError('file-not-text', `The ${what} "${file}" is not UTF-8 text. Save it as UTF-8, then try again.`, {
      cause,
    })
  } finally {
    await handle.close()
  }
}

function encodingOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8'
}

/**
 * Writes a text file whole: first beside its place, then renamed into it, so that nobody ever sees half of it.
 * @param mode who may read a new file; the system's own mask takes away from it
 * @throws AppError out-not-writable, disk-full
 */
export async function writeTextFile(file: string, text: string, mode = 0o666): Promise<void> {
  const part = `${file}.${process.pid}.part`
  try {
    await makeFolder(path.dirname(path.resolve(file)))
    const handle = await open(part, 'w', mode)
    try {
      await handle.writeFile(text)
      await handle.sync()
    } finally {
      await handle.close()
    }
    await rename(part, file)
  } catch (cause) {
    await rm(part, { force: true }).catch(() => undefined)
    throw asWriteError(file, cause)
  }
}

function asWriteError(file: string, cause: unknown): AppError {
  if ((cause as NodeJS.ErrnoException).code === 'ENOSPC') {
    return new AppError('disk-full', `The disk is full: "${file}" was not written. Free some space, then try again.`, {
      cause,
    })
  }
  return new AppError(
    'out-not-writable',
    `"${file}" cannot be written: ${(cause as Error).message}. Choose another place with --out.`,
    { cause },
  )
}
