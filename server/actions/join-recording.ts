/** Joins the parts of a class into the one film that it is worked on with; the parts stay as they came. */
import { mkdir, mkdtemp, rm } from 'node:fs/promises'
import path from 'node:path'
import { joinParts } from '../../core/media/engine/join-parts.ts'
import type { Joined } from '../../core/media/engine/join-parts.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import { mustBeAllowed, PROGRAM } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { MediaFile } from '../store/keep-media.ts'
import { askJob } from './ask-job.ts'
import type { AnalyseNeeds } from './analyse-recording.ts'
import { keyOfParts, partsOf } from './find-class-file.ts'
import type { OnProgress } from './progress.ts'
import { reportSteps } from './report-steps.ts'

export interface JoinInput {
  recordingId: string
  /** The parts in order, as they were when this was asked. */
  mediaIds: readonly string[]
  signal?: AbortSignal | undefined
  onProgress?: OnProgress | undefined
}

/**
 * Running it twice is running it once; when the parts have changed meanwhile it does nothing.
 * @returns how it was joined; null = not any more
 * @throws AppError recording-*, engine-*, ffmpeg-missing, disk-full, row-missing
 */
export async function joinRecording(
  studio: AnalyseNeeds,
  input: JoinInput,
): Promise<{ method: Joined['method']; why: string | null } | null> {
  const { recordingId, signal } = input
  mustBeAllowed(PROGRAM, 'job.run', { type: 'recording', id: recordingId })
  const { ffmpeg } = studio
  if (!ffmpeg) throw new AppError('ffmpeg-missing', 'No usable ffmpeg was found. Run "doctor", then try again.')
  const files = await studio.store.media.list(recordingId)
  const parts = partsOf(files)
  if (parts.map(({ id }) => id).join() !== input.mediaIds.join()) return null
  const key = keyOfParts(recordingId, parts)
  if (files.some(({ storageKey }) => storageKey === key)) return null
  const step = reportSteps({ 'Joining the parts': 1 }, input.onProgress, studio.clock)
  const work = path.join(studio.dataFolder, 'work')
  await mkdir(work, { recursive: true, mode: 0o700 })
  const folder = await mkdtemp(path.join(work, 'join-'))
  try {
    await mustFit(studio, parts)
    const out = path.join(folder, 'film')
    const paths = parts.map(({ storageKey }) => studio.storage.path(storageKey ?? ''))
    const onShare = (share: number): void => step('Joining the parts', share)
    const joined = await joinParts(ffmpeg, paths, out, { signal, onShare })
    await studio.storage.putFile(key, out, 'move')
    // what lies in the storage now is what counts
    await openRecording(ffmpeg, studio.storage.path(key), { silent: true, signal })
    await noteFilm(studio, recordingId, parts, key, joined)
    return { method: joined.method, why: joined.why }
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

async function mustFit({ storage }: AnalyseNeeds, parts: readonly MediaFile[]): Promise<void> {
  const needed = parts.reduce((sum, { bytes }) => sum + (bytes ?? 0), 0) * 1.1
  if ((await storage.freeBytes()) > needed) return
  const gigabytes = (needed / 1e9).toFixed(1)
  throw new AppError('disk-full', `Joining the parts needs ${gigabytes} GB of room. Free some space, then try again.`)
}

/** The film, where each part begins in it, and the wish to look into it: all or nothing. */
async function noteFilm(
  { store, storage, actor }: AnalyseNeeds,
  recordingId: string,
  parts: readonly MediaFile[],
  storageKey: string,
  { film, startsMs, ending }: Joined,
): Promise<void> {
  const { bytes } = (await storage.head(storageKey)) ?? { bytes: film.probe.sizeBytes }
  await store.transaction(async (rooms) => {
    const fields = { fileName: `joined.${ending}`, bytes, storageKey, durationMs: film.durationMs }
    const media = await rooms.media.add(recordingId, { role: 'joined', ...fields }, PROGRAM)
    for (const [index, { id }] of parts.entries()) {
      await rooms.media.change(id, { startMs: startsMs[index] ?? 0 }, PROGRAM)
    }
    await askJob(rooms, actor, 'analyse', { recordingId, mediaId: media.id }, `analyse-${media.id}`)
  })
}
