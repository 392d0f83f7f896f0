/** Takes in an export that a browser sends: written aside first, then looked into as every export is, and taken away again. */
import { createWriteStream } from 'node:fs'
import { mkdir, rm } from 'node:fs/promises'
import path from 'node:path'
import { Transform } from 'node:stream'
import type { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { importExport } from './import-export.ts'
import type { Imported } from './import-export.ts'

/** What must stay free for the store. */
const RESERVE_BYTES = 256 * 1024 ** 2

type Needs = Parameters<typeof importExport>[0]

/**
 * @param bytes how long the sender says it is
 * @param onWhole told when all of it has arrived and the looking begins
 * @throws AppError request-too-big, disk-full, archive-wrong; as importExport. Nothing is kept then.
 */
export async function takeExport(
  studio: Needs,
  body: Readable,
  bytes: number,
  onWhole: () => void = () => undefined,
): Promise<Imported> {
  mustBeAllowed(studio.actor, 'studio.import', { type: 'studio', id: 'studio' })
  await mustFit(studio, bytes)
  const folder = path.join(studio.dataFolder, 'work')
  const file = path.join(folder, `${studio.ids()}-export`)
  await mkdir(folder, { recursive: true, mode: 0o700 })
  try {
    await pipeline(body, stopAfter(bytes), createWriteStream(file, { flags: 'wx', mode: 0o600 })).catch(
      (cause: unknown) => {
        throw (cause as NodeJS.ErrnoException).code === 'ENOSPC' ? full(cause) : cause
      },
    )
    onWhole()
    return await importExport(studio, { file, called: 'The file' })
  } finally {
    await rm(file, { force: true })
  }
}

async function mustFit({ settings, storage }: Needs, bytes: number): Promise<void> {
  if (bytes > settings.maxUploadBytes) {
    const gigabytes = (settings.maxUploadBytes / 1e9).toFixed(1)
    throw new AppError('request-too-big', `The file is larger than ${gigabytes} GB, the most this studio takes.`)
  }
  // it lies here twice while it is looked into
  if (bytes * 2 + RESERVE_BYTES > (await storage.freeBytes())) throw full()
}

/** A body that goes on after its end is cut off. */
function stopAfter(bytes: number): Transform {
  let taken = 0
  return new Transform({
    transform(piece: Buffer, _encoding, done) {
      taken += piece.length
      if (taken > bytes) done(new AppError('request-too-big', 'More arrived than was said before. Nothing was kept.'))
      else done(null, piece)
    },
  })
}

const full = (cause?: unknown): AppError =>
  new AppError('disk-full', 'There is not enough room to take the lessons in. Free some space, then try again.', {
    cause,
  })
