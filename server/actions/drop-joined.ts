/**
 * Takes away films that were joined of parts and are not the class any more, with all that was made of them. What people
 * brought is never touched, nor a film that a job reads.
 */
import { mustBeAllowed, PROGRAM } from '../../shared/actors.ts'
import { joinedFolder, madeFolder } from '../storage/media-keys.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Job } from '../store/read-job.ts'
import type { Studio } from '../studio.ts'
import { chooseClassMedia } from './find-class-file.ts'

type Needs = Pick<Studio, 'store' | 'storage'>

/** Kinds that look for the film of the class when they begin, and keep to it. */
const WHOLE_CLASS = new Set(['cut', 'publish', 'draft'])

/**
 * Only once the newer film can be worked on and the log sheet stands on it. The rows go first: a kill between leaves files
 * that the next start takes away.
 * @returns how many films went
 */
export async function dropJoined(studio: Needs, recordingId: string): Promise<number> {
  mustBeAllowed(PROGRAM, 'media.remove', { type: 'recording', id: recordingId })
  const gone = await studio.store.transaction(async (rooms) => {
    const old = await findOld(rooms, recordingId)
    const jobs = old.length === 0 ? [] : await rooms.jobs.list({ recordingId, states: ['queued', 'running'] })
    const free = old.filter(({ id }) => !jobs.some((job) => job.state === 'running' && mayRead(job, id)))
    for (const { id } of free) {
      for (const job of jobs) if (job.state === 'queued' && reads(job, id)) await rooms.jobs.cancel(job.id, PROGRAM)
      await rooms.media.remove(id, PROGRAM)
    }
    return free
  })
  for (const { id, storageKey } of gone) {
    if (storageKey !== null) await studio.storage.delete(storageKey)
    await deleteMade(studio, recordingId, id)
  }
  return gone.length
}

/** At the start, before any job runs, and now and then: what a job read back then, and what a kill left. */
export async function sweepJoined(studio: Needs, { isStart }: { isStart: boolean }): Promise<void> {
  for (const { id: recordingId } of await studio.store.recordings.list()) {
    await dropJoined(studio, recordingId)
    if (!isStart) continue
    const keys = await studio.storage.list(joinedFolder(recordingId))
    if (keys.length === 0) continue
    const known = new Set((await studio.store.media.list(recordingId)).map(({ storageKey }) => storageKey))
    for (const key of keys) if (!known.has(key)) await studio.storage.delete(key)
  }
}

async function findOld(rooms: Rooms, recordingId: string): Promise<MediaFile[]> {
  const { state } = await rooms.recordings.read(recordingId)
  const files = await rooms.media.list(recordingId)
  const film = chooseClassMedia(recordingId, files)
  if (state !== 'ready' || film === null || film.sha256 === null) return []
  const source = (await rooms.sheets.readOf(recordingId))?.sheet.source?.sha256
  return files.filter(({ role, id, sha256 }) => role === 'joined' && id !== film.id && (!source || sha256 !== source))
}

function mayRead(job: Job, mediaId: string): boolean {
  return WHOLE_CLASS.has(job.kind) || reads(job, mediaId)
}

function reads({ input }: Job, mediaId: string): boolean {
  const told = Object(input) as { mediaId?: unknown; filmId?: unknown }
  return told.mediaId === mediaId || told.filmId === mediaId
}

async function deleteMade({ storage }: Needs, recordingId: string, mediaId: string): Promise<void> {
  for (const key of await storage.list(madeFolder(recordingId, mediaId))) await storage.delete(key)
}
