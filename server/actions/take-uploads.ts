/** Uploads: what may begin, what happens when one is whole, and what is found of them after a kill. */
import { readdir, readFile, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { fileKey } from '../storage/media-keys.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Studio } from '../studio.ts'
import { GivenRole } from './arrange-files.ts'
import { takeMedia } from './take-media.ts'
import type { TakeNeeds } from './take-media.ts'

export const uploadsFolder = (dataFolder: string): string => path.join(dataFolder, 'uploads')

/** What the browser says of an upload, in the metadata of its creation. */
export const UploadWords = z.object({
  recordingId: z.string().min(1).max(64),
  filename: z
    .string()
    .min(1)
    .max(255)
    .refine((name) => !name.includes('\0')),
  role: GivenRole.default('part'),
  /** Which of its role it is, from 0; the parts of a film may arrive in any order. */
  place: z.coerce.number().int().min(0).max(499).optional(),
})
export type UploadWords = z.infer<typeof UploadWords>

/** An upload as it lies in the folder: `<id>` holds the bytes, `<id>.json` says this. */
const UploadRecord = z.object({
  id: z.string().regex(/^[\w-]{1,64}$/),
  size: z.number().int().nonnegative(),
  metadata: UploadWords,
})
type UploadRecord = z.infer<typeof UploadRecord>

/** An upload nobody went on with for so long is taken away. */
export const UPLOAD_AGE_MS = 7 * 86_400_000
/** What must stay free for the store, pictures and previews. */
const RESERVE_BYTES = 256 * 1024 ** 2

type Needs = TakeNeeds & Pick<Studio, 'dataFolder'>

/**
 * Before a byte is taken. Other uploads under way have their room promised.
 * @throws AppError recording-empty, disk-full, row-missing, ffmpeg-missing, not-allowed
 */
export async function mayUpload(studio: Needs, words: UploadWords, bytes: number): Promise<void> {
  mustBeAllowed(studio.actor, 'media.add', { type: 'recording', id: words.recordingId })
  if (bytes === 0) throw new AppError('recording-empty', `"${words.filename}" is empty. Copy the recording again.`)
  if (!studio.ffmpeg) {
    throw new AppError('ffmpeg-missing', 'No usable ffmpeg was found, so no recording can be taken in. Run "doctor".')
  }
  await studio.store.recordings.read(words.recordingId)
  const pending = await listUploads(studio.dataFolder)
  const promised = pending.reduce((sum, { record, held }) => sum + Math.max(0, record.size - (held ?? record.size)), 0)
  const free = (await studio.storage.freeBytes()) - promised - RESERVE_BYTES
  if (bytes <= free) return
  throw new AppError(
    'disk-full',
    `"${words.filename}" needs ${sizeOf(bytes)} and ${sizeOf(Math.max(0, free))} are free. Free some space, then try again.`,
  )
}

/**
 * Takes a whole upload in. A bad file is removed with all that was noted of it; a good one waits while the machine is at fault.
 * @throws AppError recording-*, disk-full, row-missing, row-exists
 */
export async function takeUpload(studio: Needs, id: string, words: UploadWords): Promise<MediaFile> {
  const file = path.join(uploadsFolder(studio.dataFolder), id)
  // a browser that lost the answer may send its last piece again while the first is still being taken
  const known = underWay.get(file)
  if (known) return known
  const work = takeOnce(studio, id, words, file).finally(() => underWay.delete(file))
  underWay.set(file, work)
  return work
}

/** Uploads that are being taken in this program, by path. */
const underWay = new Map<string, Promise<MediaFile>>()

async function takeOnce(studio: Needs, id: string, words: UploadWords, file: string): Promise<MediaFile> {
  const { recordingId, role, place, filename: fileName } = words
  try {
    return await takeMedia(studio, { recordingId, role, place, fileName, fileId: id }, { path: file, mode: 'move' })
  } catch (error) {
    // what this machine lacks passes (a full disk, a busy store, no ffmpeg); the upload can be taken then
    if (error instanceof AppError && error.exitCode === 2) await removeUpload(studio.dataFolder, id)
    throw error
  }
}

/** Not null when an upload was taken in before; a browser that lost the answer need not send it again. */
export async function wasTaken(studio: Needs, id: string): Promise<{ bytes: number } | null> {
  const record = await readRecord(uploadsFolder(studio.dataFolder), id)
  return record && studio.storage.head(fileKey(record.metadata.recordingId, id))
}

/**
 * Takes an upload that is whole and could not be taken when its last byte came; a browser that asks again would think
 * otherwise that all is well.
 * @throws AppError as takeUpload
 */
export async function takeWaiting(studio: Needs, id: string): Promise<void> {
  const folder = uploadsFolder(studio.dataFolder)
  const record = await readRecord(folder, id)
  const file = record && (await stat(path.join(folder, record.id)).catch(() => null))
  if (record && file?.size === record.size) await takeUpload(studio, record.id, record.metadata)
}

/**
 * At the start and now and then: whole uploads whose taking was cut off are taken, old ones go.
 * @param onFault hears of files that turned out bad
 */
export async function sweepUploads(studio: Needs, nowUtc: number, onFault: (error: unknown) => void): Promise<void> {
  for (const { record, held, changedUtc } of await listUploads(studio.dataFolder)) {
    const isWhole = held === record.size || (held === null && (await wasTaken(studio, record.id)) !== null)
    if (isWhole) await takeUpload(studio, record.id, record.metadata).catch(onFault)
    if (nowUtc - changedUtc > UPLOAD_AGE_MS) await removeUpload(studio.dataFolder, record.id)
  }
}

interface FoundUpload {
  record: UploadRecord
  /** Bytes that are there; null = the file has gone, as when it was taken in. */
  held: number | null
  changedUtc: number
}

async function listUploads(dataFolder: string): Promise<FoundUpload[]> {
  const folder = uploadsFolder(dataFolder)
  const names = await readdir(folder).catch((): string[] => [])
  const found = await Promise.all(
    names
      .filter((name) => name.endsWith('.json'))
      .map(async (name): Promise<FoundUpload | null> => {
        const record = await readRecord(folder, name.slice(0, -'.json'.length))
        if (!record) return null
        const file = await stat(path.join(folder, record.id)).catch(() => null)
        const noted = await stat(path.join(folder, name)).catch(() => null)
        return { record, held: file?.size ?? null, changedUtc: (file ?? noted)?.mtimeMs ?? 0 }
      }),
  )
  return found.filter((one) => one !== null)
}

/** null = there is none, or it was cut off while it was written. */
async function readRecord(folder: string, id: string): Promise<UploadRecord | null> {
  if (!/^[\w-]{1,64}$/.test(id)) return null
  try {
    const read = UploadRecord.parse(JSON.parse(await readFile(path.join(folder, `${id}.json`), 'utf8')))
    return read.id === id ? read : null
  } catch {
    return null
  }
}

async function removeUpload(dataFolder: string, id: string): Promise<void> {
  const file = path.join(uploadsFolder(dataFolder), id)
  await rm(file, { force: true })
  await rm(`${file}.json`, { force: true })
}

function sizeOf(bytes: number): string {
  return bytes < 1e9 ? `${Math.ceil(bytes / 1e6)} MB` : `${(bytes / 1e9).toFixed(1)} GB`
}
