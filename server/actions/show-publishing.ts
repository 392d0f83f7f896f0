/** Gathers what the page "Publish" shows: each segment with what publishing would do, and the lessons made so far. */
import { buildLesson } from '../../core/library/build-lesson.ts'
import { describeLesson } from '../../core/library/describe-lesson.ts'
import { planPublishing } from '../../core/library/plan-publishing.ts'
import type { LibraryEntry, PlannedSegment } from '../../core/library/plan-publishing.ts'
import { keptRanges } from '../../core/segments/kept-ranges.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { ClipEntry } from '../../shared/manifest.ts'
import type { LessonVersion, ShownLesson } from '../store/keep-lessons.ts'
import type { StoredSheet } from '../store/keep-sheets.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Recording } from '../store/keep-recordings.ts'
import type { Job } from '../store/read-job.ts'
import type { Studio } from '../studio.ts'
import { checkForLessons } from './pack-lesson.ts'
import { readClassWords } from './read-class-words.ts'
import { rememberAudience } from './search-library.ts'

export interface PublishingView {
  recording: Recording
  stored: StoredSheet
  report: CheckReport
  planned: PlannedSegment[]
  /** Lessons that show, or showed last, a segment of this class, each with all its versions, the newest first. */
  lessons: { shown: ShownLesson; versions: LessonVersion[] }[]
  /** Titles of the recordings that versions come from, by id. */
  titles: Map<string, string>
  /** Publishing of this class, the newest first. */
  jobs: Job[]
}

type Needs = Pick<Studio, 'store' | 'actor' | 'clock'>

/** @throws AppError row-missing, transcript-*, not-allowed */
export async function showPublishing(studio: Needs, recordingId: string): Promise<PublishingView> {
  const { store } = studio
  mustBeAllowed(studio.actor, 'studio.read', { type: 'recording', id: recordingId })
  const recording = await store.recordings.read(recordingId)
  const { stored, report, planned } = await planOf(store, recordingId, studio.clock())
  const all = await store.lessons.list()
  const ours = new Set((await store.lessons.listOf(recordingId)).map(({ lessonId }) => lessonId))
  const lessons = await Promise.all(
    all
      .filter(({ id }) => ours.has(id))
      .map(async (shown) => ({ shown, versions: await store.lessons.listVersions(shown.id) })),
  )
  const recordings = new Set(lessons.flatMap(({ versions }) => versions.map((version) => version.recordingId)))
  const titles = new Map<string, string>()
  for (const id of recordings) titles.set(id, (await store.recordings.read(id)).title)
  const jobs = (await store.jobs.list({ recordingId })).filter(({ kind }) => kind === 'publish')
  return { recording, stored, report, planned, lessons, titles, jobs }
}

/**
 * The newest sheet, checked, with what publishing would do.
 * @throws AppError row-missing when nothing is drafted yet; transcript-*
 */
export async function planOf(
  store: Pick<Rooms, 'sheets' | 'transcripts' | 'lessons'> & Studio['store'],
  recordingId: string,
  nowUtc: number,
) {
  const stored = await store.sheets.readOf(recordingId)
  if (!stored) {
    throw new AppError('row-missing', 'The class has no log sheet yet. Add its words first, or mark it on its page.')
  }
  const words = await readClassWords(store, recordingId, stored.sheet.durationMs)
  const { cues, report } = checkForLessons(stored.sheet, words?.transcript ?? null, nowUtc)
  const shown = await store.lessons.list()
  const older = await readOlder(store, stored, shown, recordingId, nowUtc)
  const library = await describeLibrary(store, shown)
  const currents = new Map(shown.map((one) => [one.id, one.current]))
  const planned = planPublishing({
    ...{ sheet: stored.sheet, report, recordingId, library },
    isSame: ({ id }, own) => {
      const version = currents.get(own.id)
      const former = version && older.get(version.sheetVersion)
      if (!version || !former || (words && words.stored.createdUtc > version.publishedUtc)) return false
      return partsOf(former.sheet, former.report, id) === partsOf(stored.sheet, report, id)
    },
  })
  return { stored, cues, report, planned, words }
}

async function describeLibrary(store: Studio['store'], shown: readonly ShownLesson[]): Promise<LibraryEntry[]> {
  const isAudienceSet = rememberAudience(store)
  const entries: LibraryEntry[] = []
  for (const { id, slug, state, current } of shown) {
    if (!current) continue
    const facts = describeLesson({ ...current.lesson, slug }, await isAudienceSet(current))
    entries.push({ id, slug, state, recordingId: current.recordingId, segmentId: current.segmentId, facts })
  }
  return entries
}

/** The sheet as it was when each shown lesson of this class was made. */
async function readOlder(
  store: Studio['store'],
  stored: StoredSheet,
  shown: readonly ShownLesson[],
  recordingId: string,
  nowUtc: number,
): Promise<Map<number, { sheet: LogSheet; report: CheckReport }>> {
  const versions = new Set(
    shown.flatMap(({ current }) => (current?.recordingId === recordingId ? [current.sheetVersion] : [])),
  )
  const older = new Map<number, { sheet: LogSheet; report: CheckReport }>()
  for (const version of versions) {
    const sheet = version === stored.version ? stored.sheet : (await store.sheets.read(stored.id, version)).sheet
    older.set(version, { sheet, report: checkForLessons(sheet, null, nowUtc).report })
  }
  return older
}

/** All of a lesson that its marks decide, as text; the clip is what they keep. */
function partsOf(sheet: LogSheet, report: CheckReport, segmentId: string): string {
  const segment = sheet.segments.find(({ id }) => id === segmentId)
  if (!segment) return ''
  const spans = keptRanges(segment)
  const clip = { ...NO_CLIP, segmentId, name: segment.exercise.name, spans }
  const files = { clip: '', poster: null, captions: '', chapters: '', description: '' }
  const lesson = buildLesson({ sheet, segment, report, clip, clipSha256: '', recordingSha256: '', slug: '', files })
  return JSON.stringify([lesson, segment.loop, segment.cues, segment.gainDb ?? 0, soundOf(sheet)])
}

/** The sound that is published, and where it lies. */
function soundOf({ publishedSound, media }: LogSheet): unknown {
  const { mediaId = null, track = null, gainDb = 0 } = publishedSound ?? {}
  return [mediaId, mediaId === null ? null : (media.find(({ id }) => id === mediaId) ?? null), track, gainDb]
}

const NO_CLIP: Omit<ClipEntry, 'segmentId' | 'name' | 'spans'> = {
  ...{ file: '', poster: null, sha256: '', bytes: 0, frames: 1, durationMs: 0 },
  ...{ method: 'copy', why: '', loudness: null, reused: false },
}
