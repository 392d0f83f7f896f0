/**
 * Publishes lessons of a recording: checks, cuts, packs, and shows each as the next version of its lesson. What has a stop
 * is held back with its reasons, whoever asks. Running it twice is running it once.
 */
import { mkdir, readdir, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import { z } from 'zod'
import { offeredAudience } from '../../core/library/describe-lesson.ts'
import { OWN, SKIP } from '../../core/library/plan-publishing.ts'
import type { Place, PlannedSegment } from '../../core/library/plan-publishing.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { FailedClip } from '../../shared/manifest.ts'
import { cutFolder } from '../storage/media-keys.ts'
import type { Studio } from '../studio.ts'
import { cutStoredClass } from './cut-stored-class.ts'
import { packLesson } from './pack-lesson.ts'
import type { OnProgress } from './progress.ts'
import { isAudienceSet } from './search-library.ts'
import { planOf } from './show-publishing.ts'
import { storeLesson } from './store-lesson.ts'
import type { StoredStep } from './store-lesson.ts'

const Id = z.string().min(1)
export const PublishInput = z.object({
  recordingId: Id,
  /** null = all that are new or changed. */
  segmentIds: z.array(Id).min(1).nullable().default(null),
  /** By segment id: `own`, `skip`, or the id of the lesson whose next version it becomes. */
  places: z.record(Id, Id).default({}),
})

export interface PublishedLesson {
  segmentId: string
  name: string
  slug: string
  version: number
  change: StoredStep['change']
}

export interface PublishedLessons {
  lessons: PublishedLesson[]
  /** Asked for, and held back. */
  held: { segmentId: string; name: string; reasons: string[] }[]
  failed: FailedClip[]
}

type Needs = Pick<Studio, 'store' | 'storage' | 'actor' | 'clock' | 'ids' | 'dataFolder' | 'ffmpeg'>

/** A step of work, such as one clip, that fails is listed and stops no other. @throws AppError row-missing, sheet-*, recording-*, disk-full, not-allowed */
export async function publishLessons(
  studio: Needs,
  input: z.input<typeof PublishInput>,
  { signal, onProgress }: { signal?: AbortSignal; onProgress?: OnProgress } = {},
): Promise<PublishedLessons> {
  const { recordingId, segmentIds, places } = PublishInput.parse(input)
  mustBeAllowed(studio.actor, 'lesson.publish', { type: 'recording', id: recordingId })
  const { stored, cues, report, planned } = await planOf(studio.store, recordingId, studio.clock())
  const { wanted, held } = choose(planned, segmentIds, places)
  await mustKnow(studio, wanted)
  if (wanted.length === 0) return { lessons: [], held, failed: [] }
  const cutDir = studio.storage.path(cutFolder(recordingId))
  const { sheet } = stored
  const segments = wanted.map(({ segment }) => segment)
  const manifest = await cutStoredClass(...([studio, recordingId, { ...sheet, segments }] as const), {
    signal,
    onProgress: onProgress && ((told) => onProgress({ ...told, fraction: told.fraction * CUT_SHARE })),
  })
  const audience = offeredAudience(sheet.audience, await isAudienceSet(studio.store, recordingId))
  const shared = { ...{ report, cues, cutDir, signal }, recordingSha256: manifest.recording.sha256 }
  const work = await openWork(studio)
  const lessons: PublishedLesson[] = []
  try {
    for (const [index, clip] of manifest.clips.entries()) {
      const place = wanted.find(({ segment }) => segment.id === clip.segmentId)?.place ?? OWN
      const folder = path.join(work, String(index))
      const slug = 'set-by-the-store'
      const given = { ...shared, sheet: { ...sheet, audience }, found: studio.ffmpeg ?? undefined, keyPictures: true }
      const lesson = await packLesson(given, clip, slug, folder)
      const version = {
        ...{ recordingId, segmentId: clip.segmentId, sheetVersion: stored.version, lesson },
        clipSha256: lesson.clip.sha256,
      }
      const { shown, change } = await studio.store.transaction((rooms) =>
        storeLesson(studio, rooms, place, version, folder),
      )
      const { slug: address, currentVersion } = shown
      lessons.push({
        segmentId: clip.segmentId,
        name: lesson.name,
        slug: address,
        version: currentVersion ?? 1,
        change,
      })
      const fraction = CUT_SHARE + ((1 - CUT_SHARE) * (index + 1)) / manifest.clips.length
      onProgress?.({ label: `Published: ${lesson.name}`, fraction, leftMs: null, done: true })
    }
  } finally {
    await rm(work, { recursive: true, force: true })
  }
  return { lessons, held, failed: manifest.failed }
}

/** Cutting is nearly all of the work. */
const CUT_SHARE = 0.9

interface Wanted {
  segment: PlannedSegment['segment']
  place: Place
}

function choose(
  planned: readonly PlannedSegment[],
  segmentIds: readonly string[] | null,
  places: Readonly<Record<string, Place>>,
): { wanted: Wanted[]; held: PublishedLessons['held'] } {
  const lost = [...(segmentIds ?? []), ...Object.keys(places)].filter(
    (id) => !planned.some(({ segment }) => segment.id === id),
  )
  if (lost.length > 0) {
    throw new AppError('row-missing', 'An exercise is not on the sheet any more. Load the page again.', {
      details: lost,
    })
  }
  const asked = planned.filter(({ segment, state }) =>
    state === 'keep' || state === 'leave-out' ? false : (segmentIds?.includes(segment.id) ?? true),
  )
  const wanted = asked
    .filter(({ state }) => state !== 'held')
    // who names a segment and no place means it
    .map(({ segment, place }) => ({ segment, place: places[segment.id] ?? (segmentIds ? OWN : place) }))
    .filter(({ place }) => place !== SKIP)
  const held = asked
    .filter(({ state, segment }) => state === 'held' && places[segment.id] !== SKIP)
    .map(({ segment, reasons }) => ({ segmentId: segment.id, name: segment.exercise.name, reasons }))
  return { wanted, held }
}

/** Before anything is cut. @throws AppError row-missing, row-exists */
async function mustKnow({ store }: Needs, wanted: readonly Wanted[]): Promise<void> {
  const named = wanted.map(({ place }) => place).filter((place) => place !== OWN)
  for (const place of named) await store.lessons.read(place)
  if (new Set(named).size < named.length) {
    throw new AppError('row-exists', 'Two exercises cannot take the place of one lesson. Choose one of them.')
  }
}

const WORK_AGE_MS = 86_400_000

/** A folder of this run; those of runs that were killed are taken away a day later. */
async function openWork({ dataFolder, clock, ids }: Needs): Promise<string> {
  const all = path.join(dataFolder, 'work')
  await mkdir(all, { recursive: true, mode: 0o700 })
  for (const name of await readdir(all)) {
    const changed = (await stat(path.join(all, name)).catch(() => null))?.mtimeMs ?? 0
    if (clock() - changed > WORK_AGE_MS) await rm(path.join(all, name), { recursive: true, force: true })
  }
  const work = path.join(all, ids())
  await mkdir(work, { mode: 0o700 })
  return work
}
