/** Takes a file into a recording: looked into first, then moved into the storage, then queued for analysis. */
import { z } from 'zod'
import { acceptRecording } from '../../core/media/accept-recording.ts'
import { probeFile } from '../../core/media/engine/probe-file.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { fileKey } from '../storage/media-keys.ts'
import { MediaRole } from '../store/keep-media.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Studio } from '../studio.ts'
import { askJob } from './ask-job.ts'

export const MediaInput = z.object({
  recordingId: z.string().min(1),
  role: MediaRole,
  /** As the person calls it; never part of a path. */
  fileName: z.string().min(1).max(255),
  /** Names the file for ever, so that taking it twice is taking it once. */
  fileId: z.string().regex(/^[\w-]{1,64}$/),
})
export type MediaInput = z.infer<typeof MediaInput>

export type TakeNeeds = Pick<Studio, 'store' | 'storage' | 'actor' | 'ffmpeg'>

/**
 * Safe to repeat after a kill at any point: the storage and the row are looked at first.
 * @param from where the file lies now; not read when the storage has it already
 * @throws AppError recording-*, file-missing, disk-full, ffmpeg-missing, row-missing, row-exists, not-allowed
 */
export async function takeMedia(
  studio: TakeNeeds,
  input: z.input<typeof MediaInput>,
  from: { path: string; mode: 'move' | 'copy' | 'link' },
): Promise<MediaFile> {
  const { recordingId, role, fileName, fileId } = MediaInput.parse(input)
  mustBeAllowed(studio.actor, 'media.add', { type: 'recording', id: recordingId })
  const key = fileKey(recordingId, fileId)
  const known = (await studio.store.media.list(recordingId)).find(({ storageKey }) => storageKey === key)
  if (known) return known
  await mustHaveRoom(studio.store, recordingId, role)
  const stored = await studio.storage.head(key)
  if (!stored) await lookInto(studio, from.path, role)
  const { bytes } = stored ?? (await studio.storage.putFile(key, from.path, from.mode))
  return studio.store.transaction(async (rooms) => {
    const media = await rooms.media.add(recordingId, { role, fileName, bytes, storageKey: key }, studio.actor)
    const { state } = await rooms.recordings.read(recordingId)
    if (role === 'part' && state !== 'ready') {
      await rooms.recordings.change(recordingId, null, { state: 'checking' }, studio.actor)
    }
    await askJob(rooms, studio.actor, 'analyse', { recordingId, mediaId: media.id }, `analyse-${media.id}`)
    return media
  })
}

/**
 * One film is the class; what else was recorded stays attached to it.
 * @throws AppError row-missing, row-exists
 */
export async function mustHaveRoom(
  store: Pick<Rooms, 'recordings' | 'media'>,
  recordingId: string,
  role: MediaRole,
): Promise<void> {
  const { title, state } = await store.recordings.read(recordingId)
  if (role !== 'part' || state === 'refused') return
  if ((await store.media.list(recordingId)).every((file) => file.role !== 'part')) return
  throw new AppError(
    'row-exists',
    `"${title}" has its film already. Add this one as a second camera or as sound, or as a class of its own.`,
  )
}

/** A file is hostile until it is proven to be a recording; only its head is read here. */
async function lookInto({ ffmpeg }: TakeNeeds, path: string, role: MediaRole): Promise<void> {
  if (!ffmpeg)
    throw new AppError('ffmpeg-missing', 'No usable ffmpeg was found, so no recording can be taken in. Run "doctor".')
  const probe = await probeFile(ffmpeg, path)
  if (role !== 'sound') {
    acceptRecording(probe, { silent: true })
    return
  }
  if (!probe.audio)
    throw new AppError('recording-no-sound', 'The file has no sound. Give the file that the recorder made.')
}
