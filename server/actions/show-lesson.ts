/** Gathers all that a member is shown of one lesson. */
import { buildLessonChapters } from '../../core/chapters/build-chapters.ts'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { describeLesson } from '../../core/library/describe-lesson.ts'
import type { LessonFacts } from '../../core/library/describe-lesson.ts'
import { findNeighbours } from '../../core/library/find-neighbours.ts'
import type { Neighbour } from '../../core/library/find-neighbours.ts'
import { placeInClip } from '../../core/library/place-in-clip.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { Chapter } from '../../shared/chapters.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { Stretch } from '../../shared/time.ts'
import type { LessonVersion, ShownLesson } from '../store/keep-lessons.ts'
import type { Studio } from '../studio.ts'
import { listPublished, rememberAudience } from './search-library.ts'

export interface LessonView {
  version: LessonVersion
  facts: LessonFacts
  chapters: Chapter[]
  /** A few clean repetitions, on the clip's clock; null = none are marked. */
  loop: Stretch | null
  easier: Neighbour[]
  harder: Neighbour[]
  /** Hazards of this exercise that must be covered; their cautions come first. */
  mustHazards: string[]
  /** The class as it was marked when the lesson was made; null = it is no longer there. */
  origin: { sheet: LogSheet; report: CheckReport; published: Set<string> } | null
}

type Needs = Pick<Studio, 'store' | 'actor'>

/** @throws AppError row-missing when there is no such lesson, lesson-withdrawn, not-allowed */
export async function showLesson(studio: Needs, slug: string): Promise<LessonView> {
  const { store } = studio
  const { shown, version } = await findLesson(studio, slug)
  const lesson = { ...version.lesson, slug: shown.slug }
  const facts = describeLesson(lesson, await rememberAudience(store)(version))
  const library = (await listPublished(studio)).map((one) => one.facts)
  const sheet = await readSheet(store, version)
  const segment = sheet?.segments.find(({ id }) => id === version.segmentId) ?? null
  const kept = lesson.from.spans
  const report = sheet && checkSheet(sheet)
  return {
    version,
    facts,
    chapters: segment ? buildLessonChapters(segment, kept) : [],
    loop: segment?.loop ? placeInClip(segment.loop, kept) : null,
    easier: findNeighbours(facts, 'easier', lesson.easier, library),
    harder: findNeighbours(facts, 'harder', lesson.harder, library),
    mustHazards: (report?.cautions ?? [])
      .filter((row) => row.segmentId === version.segmentId && row.level === 'must')
      .map((row) => row.hazard),
    origin: sheet && report && { sheet, report, published: await publishedOf(store, version.recordingId) },
  }
}

/**
 * A lesson that is shown, with its current version.
 * @throws AppError row-missing, lesson-withdrawn, not-allowed
 */
export async function findLesson(
  { store, actor }: Needs,
  slug: string,
): Promise<{ shown: ShownLesson; version: LessonVersion }> {
  const shown = await store.lessons.readAt(slug)
  if (shown?.state === 'withdrawn') {
    throw new AppError('lesson-withdrawn', `The lesson "${shown.name}" was withdrawn. Look in the library for another.`)
  }
  if (!shown?.current || shown.state !== 'published') {
    throw new AppError('row-missing', 'There is no such lesson. Look in the library for another.')
  }
  mustBeAllowed(actor, 'lesson.watch', { type: 'lesson', id: shown.id, state: shown.state })
  return { shown, version: shown.current }
}

/** The sheet as it was when the lesson was made; null when it is not there. */
async function readSheet(store: Studio['store'], version: LessonVersion): Promise<LogSheet | null> {
  const newest = await store.sheets.readOf(version.recordingId)
  if (!newest) return null
  if (newest.version === version.sheetVersion) return newest.sheet
  try {
    return (await store.sheets.read(newest.id, version.sheetVersion)).sheet
  } catch (error) {
    if (error instanceof AppError && error.code === 'row-missing') return null
    throw error
  }
}

/** Segments of a recording that are shown as lessons now. */
async function publishedOf(store: Studio['store'], recordingId: string): Promise<Set<string>> {
  const lessons = await store.lessons.list(['published'])
  const current = lessons.flatMap(({ current: one }) => (one?.recordingId === recordingId ? [one.segmentId] : []))
  return new Set(current)
}
