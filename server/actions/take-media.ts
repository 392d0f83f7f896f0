/** Takes a file into a recording: looked into first, then moved into the storage, then queued for analysis. */
import { z } from 'zod'
import { acceptRecording } from '../../core/media/accept-recording.ts'
import { probeFile, probeSound } from '../../core/media/engine/probe-file.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { Actor } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { fileKey } from '../storage/media-keys.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Studio } from '../studio.ts'
import { GivenRole } from './arrange-files.ts'
import { askJob } from './ask-job.ts'
import { settleParts } from './settle-parts.ts'

export const MediaInput = z.object({
  recordingId: z.string().min(1),
  role: GivenRole,
  /** Which of its role, from 0, when that place is free; else it goes last. */
  place: z.number().int().min(0).max(499).optional(),
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
 * @throws AppError recording-*, file-missing, disk-full, ffmpeg-missing, row-missing, not-allowed
 */
export async function takeMedia(
  studio: TakeNeeds,
  input: z.input<typeof MediaInput>,
  from: { path: string; mode: 'move' | 'copy' | 'link' },
): Promise<MediaFile> {
  const { recordingId, role, place, fileName, fileId } = MediaInput.parse(input)
  mustBeAllowed(studio.actor, 'media.add', { type: 'recording', id: recordingId })
  const key = fileKey(recordingId, fileId)
  const known = (await studio.store.media.list(recordingId)).find(({ storageKey }) => storageKey === key)
  if (known) return known
  const stored = await studio.storage.head(key)
  if (!stored) await lookInto(studio, from.path, role)
  const { bytes } = stored ?? (await studio.storage.putFile(key, from.path, from.mode))
  const media = await studio.store.transaction(async (rooms) => {
    const { state } = await rooms.recordings.read(recordingId)
    if (role === 'part' && state === 'refused') await setPartsAside(rooms, recordingId, studio.actor)
    const isFree = (await rooms.media.list(recordingId)).every((file) => file.role !== role || file.position !== place)
    const fields = { role, fileName, bytes, storageKey: key, ...(place !== undefined && isFree && { position: place }) }
    const added = await rooms.media.add(recordingId, fields, studio.actor)
    if (role === 'part' && state !== 'ready') {
      await rooms.recordings.change(recordingId, null, { state: 'checking' }, studio.actor)
    }
    await askJob(rooms, studio.actor, 'analyse', { recordingId, mediaId: added.id }, `analyse-${added.id}`)
    return added
  })
  await settleParts(studio, recordingId)
  return media
}

/** A film that was refused makes room for the next one. */
async function setPartsAside(rooms: Rooms, recordingId: string, actor: Actor): Promise<void> {
  const files = (await rooms.media.list(recordingId)).flatMap(({ id, role }) =>
    role === 'joined' ? [] : [{ id, role }],
  )
  const arranged = files.map(({ id, role }) => ({ id, role: role === 'part' ? ('aside' as const) : role }))
  await rooms.media.arrange(recordingId, arranged, actor)
}

/** A file is hostile until it is proven to be a recording; only its head is read here. @throws AppError recording-*, file-missing, ffmpeg-missing */
export async function lookInto({ ffmpeg }: Pick<TakeNeeds, 'ffmpeg'>, path: string, role: GivenRole): Promise<void> {
  if (!ffmpeg)
    throw new AppError('ffmpeg-missing', 'No usable ffmpeg was found, so no recording can be taken in. Run "doctor".')
  if (role === 'sound') await probeSound(ffmpeg, path)
  else acceptRecording(await probeFile(ffmpeg, path), { silent: true })
}
