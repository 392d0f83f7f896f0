/**
 * Reads a zip archive from anyone: the list of what is in it first, then single files into places of our own. A name in
 * the archive is compared, never used as a path.
 */
import { createHash } from 'node:crypto'
import { createWriteStream } from 'node:fs'
import { rm } from 'node:fs/promises'
import type { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import yauzl from 'yauzl'
import { AppError } from '../../shared/errors.ts'

export interface ZipEntry {
  name: string
  /** As the archive says; reading more than that is an error. */
  bytes: number
}

export interface ZipReader {
  entries: readonly ZipEntry[]
  /** @throws AppError archive-wrong when it holds more than that, is damaged or not there */
  readBytes: (name: string, mostBytes: number) => Promise<Buffer>
  /** Writes one file to a path of ours. @returns its sha256. @throws AppError archive-wrong */
  extract: (name: string, to: string) => Promise<string>
  close: () => void
}

export interface ZipLimits {
  entries: number
  /** Of all files together, unpacked. */
  bytes: number
}

/** @param called what a person knows it as. @throws AppError archive-wrong when it is no archive, or has links, secrets, names twice, or more than the limits */
export async function openZip(file: string, limits: ZipLimits, called = `"${file}"`): Promise<ZipReader> {
  const zip = await yauzl
    .openPromise(file, { lazyEntries: true, autoClose: false, strictFileNames: true, validateEntrySizes: true })
    .catch((cause: unknown) => {
      throw refuse(`${called} is no zip archive, or is damaged`, cause)
    })
  const found = new Map<string, yauzl.Entry>()
  try {
    let bytes = 0
    for await (const entry of zip.eachEntry()) {
      const name = entry.fileName
      if (found.size >= limits.entries) throw refuse('The archive holds more files than an export has')
      if (found.has(name)) throw refuse(`The archive holds "${name}" twice`)
      if (isStrange(entry)) throw refuse(`The archive holds "${name}", which is no plain file`)
      bytes += entry.uncompressedSize
      if (bytes > limits.bytes) throw refuse('The archive would need more space than there is')
      found.set(name, entry)
    }
  } catch (cause) {
    zip.close()
    throw cause instanceof AppError
      ? cause
      : refuse('The list of the archive is damaged, or names places outside', cause)
  }
  const openEntry = async (name: string): Promise<Readable> => {
    const entry = found.get(name)
    if (!entry) throw refuse(`The archive lacks "${name}"`)
    return zip.openReadStreamPromise(entry)
  }
  return {
    entries: [...found].map(([name, { uncompressedSize }]) => ({ name, bytes: uncompressedSize })),
    readBytes: async (name, mostBytes) => {
      if ((found.get(name)?.uncompressedSize ?? 0) > mostBytes) throw refuse(`"${name}" in the archive is too big`)
      return read(name, async () => {
        const parts: Buffer[] = []
        for await (const part of await openEntry(name)) parts.push(part as Buffer)
        return Buffer.concat(parts)
      })
    },
    extract: (name, to) =>
      read(name, async () => {
        const sum = createHash('sha256')
        const stream = await openEntry(name)
        stream.on('data', (part: Buffer) => sum.update(part))
        await pipeline(stream, createWriteStream(to, { flags: 'wx', mode: 0o600 })).catch(async (cause: unknown) => {
          await rm(to, { force: true })
          throw cause
        })
        return sum.digest('hex')
      }),
    close: () => zip.close(),
  }
}

async function read<Value>(name: string, work: () => Promise<Value>): Promise<Value> {
  try {
    return await work()
  } catch (cause) {
    if (cause instanceof AppError) throw cause
    if ((cause as NodeJS.ErrnoException).code === 'ENOSPC') {
      throw new AppError('disk-full', 'The disk is full. Free some space, then try again.', { cause })
    }
    throw refuse(`"${name}" in the archive is damaged`, cause)
  }
}

/** Links, folders, devices and what is locked have no place in an export. APPNOTE.TXT 6.3, section 4.4.15 (from memory): the mode is in the upper half. */
function isStrange(entry: yauzl.Entry): boolean {
  const kind = (entry.externalFileAttributes >>> 16) & 0o170000
  const isPlain = kind === 0 || kind === 0o100000
  return !isPlain || entry.isEncrypted() || entry.fileName.endsWith('/')
}

const refuse = (what: string, cause?: unknown): AppError =>
  new AppError('archive-wrong', `${what}. Nothing was taken in.`, { cause })
