/** Finds where sound recorded apart lies under the film of its class, how far its clock is off, and how sure that is. */
import { z } from 'zod'
import { findPlace, openSound } from '../../core/media/engine/lay-sound.ts'
import type { Alignment } from '../../core/media/align-sound.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import { mustBeAllowed, PROGRAM } from '../../shared/actors.ts'
import type { Actor } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Studio } from '../studio.ts'
import { askJob } from './ask-job.ts'
import { chooseSound } from './choose-sound.ts'
import { findClassFileOrNull } from './find-class-file.ts'
import { readPlace } from './media-facts.ts'
import type { SoundPlace } from './media-facts.ts'
import type { OnProgress } from './progress.ts'
import { reportSteps } from './report-steps.ts'

export interface PlaceInput {
  recordingId: string
  /** The sound. */
  mediaId: string
  /** The film, as it was when this was asked. */
  filmId: string
  signal?: AbortSignal | undefined
  onProgress?: OnProgress | undefined
}

/**
 * Sound that is not heard in the film is noted as such; that is no fault.
 * @returns null = not any more: another film, or the file is used for something else
 * @throws AppError recording-*, engine-*, ffmpeg-missing, row-missing
 */
export async function placeSound(
  studio: Pick<Studio, 'store' | 'storage' | 'ffmpeg' | 'clock'>,
  { recordingId, mediaId, filmId, signal, onProgress }: PlaceInput,
): Promise<SoundPlace | null> {
  mustBeAllowed(PROGRAM, 'job.run', { type: 'media', id: mediaId })
  const { store, storage, ffmpeg } = studio
  if (!ffmpeg) throw new AppError('ffmpeg-missing', 'No usable ffmpeg was found. Run "doctor", then try again.')
  const media = await store.media.read(mediaId)
  const film = await findClassFileOrNull(studio, recordingId)
  if (film?.media.id !== filmId || media.role !== 'sound' || media.storageKey === null) return null
  const step = reportSteps({ 'Finding the place of the sound': 1 }, onProgress, studio.clock)
  step('Finding the place of the sound', 0)
  const opened = await openRecording(ffmpeg, film.path, { silent: true, signal })
  const sound = await openSound(ffmpeg, storage.path(media.storageKey), signal)
  const onShare = (share: number): void => step('Finding the place of the sound', share)
  const found = await findPlace(ffmpeg, opened, sound, { signal, onShare }).catch((error: unknown) => {
    if (error instanceof AppError && error.code === 'sound-not-matching') return null
    throw error
  })
  return keepPlace(store, media, filmId, found)
}

async function keepPlace(
  store: Studio['store'],
  { id }: MediaFile,
  filmId: string,
  alignment: Alignment | null,
): Promise<SoundPlace> {
  const found = alignment && { likeness: alignment.likeness, places: alignment.places }
  const place: SoundPlace = { filmId, found }
  const clock = alignment && { startMs: Math.round(alignment.startMs), driftPpm: alignment.driftPpm }
  await store.transaction(async ({ media }) => {
    const { facts } = await media.read(id)
    await media.change(id, { ...clock, facts: { ...(facts as object | null), place } }, PROGRAM)
  })
  return place
}

export const TypedPlace = z.object({
  recordingId: z.string().min(1),
  mediaId: z.string().min(1),
  /** Seconds on the film's clock, with point or comma; below 0 = it began before the film. A day is more than any class. */
  seconds: z
    .string()
    .trim()
    .transform((text) => text.replace(',', '.').replace(/^[\u2212\u2013]/, '-'))
    .pipe(z.string().regex(/^[+-]?\d{1,5}(\.\d{1,3})?$/, 'Write seconds, such as 7.3 or -7.3.'))
    .transform(Number)
    .pipe(z.number().min(-86_400).max(86_400)),
})

/**
 * For a film without sound, or one in which it is not heard. A sound that is published already moves with it.
 * @throws AppError row-missing, row-exists when it was found by ear, not-allowed
 */
export async function typePlace(
  studio: Pick<Studio, 'store' | 'storage' | 'actor' | 'ids'>,
  input: z.input<typeof TypedPlace>,
): Promise<void> {
  const { recordingId, mediaId, seconds } = TypedPlace.parse(input)
  const { store, actor } = studio
  mustBeAllowed(actor, 'media.change', { type: 'media', id: mediaId })
  const film = await findClassFileOrNull(studio, recordingId)
  if (!film) throw new AppError('row-missing', 'The film of this class is not here yet, so nothing can lie under it.')
  await store.transaction(async ({ media }) => {
    const sound = (await media.list(recordingId)).find(({ id, role }) => id === mediaId && role === 'sound')
    if (!sound) throw new AppError('row-missing', 'This sound is not among the files of the class any more.')
    const known = readPlace(sound)
    if (known?.filmId === film.media.id && known.found && !known.found.byHand) {
      throw new AppError('row-exists', 'Where this sound begins was found by ear, and is kept.')
    }
    const place: SoundPlace = { filmId: film.media.id, found: { likeness: 0, places: 0, byHand: true } }
    const facts = { ...(sound.facts as object | null), place }
    await media.change(mediaId, { startMs: Math.round(seconds * 1000), driftPpm: 0, facts }, actor)
  })
  const published = (await store.sheets.readOf(recordingId))?.sheet.publishedSound
  if (published?.mediaId !== mediaId) return
  await chooseSound(studio, { recordingId, sound: mediaId, gainDb: published.gainDb ?? 0 })
}

/** Asks for the place of every sound that is not compared with this film yet. */
export async function askPlaces(rooms: Rooms, actor: Actor, recordingId: string, film: MediaFile): Promise<void> {
  const files = await rooms.media.list(recordingId)
  const sounds = files.filter(
    ({ role, storageKey, sha256 }) => role === 'sound' && storageKey !== null && sha256 !== null,
  )
  for (const sound of sounds) {
    if (readPlace(sound)?.filmId === film.id) continue
    const input = { recordingId, mediaId: sound.id, filmId: film.id }
    const { id, state } = await askJob(rooms, actor, 'place-sound', input, `place-${sound.id}-${film.id}`)
    // its place was lost when the file was used for something else meanwhile
    if (state === 'done') await rooms.jobs.retry(id, actor)
  }
}
