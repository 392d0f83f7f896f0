/** Searches the published lessons by names, other names and filters. */
import { z } from 'zod'
import { describeLesson } from '../../core/library/describe-lesson.ts'
import type { LessonFacts } from '../../core/library/describe-lesson.ts'
import { listChoices, searchLessons } from '../../core/library/search-lessons.ts'
import type { FilterName } from '../../core/library/search-lessons.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { GUARDED_AUDIENCES } from '../../core/library/describe-lesson.ts'
import type { LessonVersion, ShownLesson } from '../store/keep-lessons.ts'
import type { Studio } from '../studio.ts'

const Choice = z
  .string()
  .max(100)
  .transform((text) => (text === '' ? null : text))
  .nullable()
  .default(null)

/** What a person asks of the library; an empty filter asks for anything. */
export const LibraryQuery = z.object({
  text: z.string().max(200).default(''),
  kit: Choice,
  position: Choice,
  region: Choice,
  level: Choice,
  audience: Choice,
  length: Choice,
})
export type LibraryQuery = z.infer<typeof LibraryQuery>

export interface LibraryLesson {
  facts: LessonFacts
  version: LessonVersion
}

export interface FoundLibrary {
  /** Those that fit, the best first. */
  lessons: LibraryLesson[]
  /** How many there are in all. */
  total: number
  choices: Record<FilterName, string[]>
}

type Needs = Pick<Studio, 'store' | 'actor'>

/** @throws AppError not-allowed */
export async function searchLibrary(studio: Needs, query: LibraryQuery): Promise<FoundLibrary> {
  mustBeAllowed(studio.actor, 'library.search', { type: 'studio', id: 'studio' })
  const all = await listPublished(studio)
  const versions = new Map(all.map((one) => [one.facts.slug, one]))
  const facts = all.map((one) => one.facts)
  return {
    lessons: searchLessons(facts, query).flatMap(({ slug }) => versions.get(slug) ?? []),
    total: all.length,
    choices: listChoices(facts),
  }
}

/** All published lessons with what the library knows of them. */
export async function listPublished({ store }: Pick<Studio, 'store'>): Promise<LibraryLesson[]> {
  const lessons = await store.lessons.list(['published'])
  const isAudienceSet = rememberAudience(store)
  const found: LibraryLesson[] = []
  for (const lesson of lessons) {
    const version = lesson.current
    if (version) found.push({ facts: describeLesson(withSlug(lesson, version), await isAudienceSet(version)), version })
  }
  return found
}

/** A lesson's address is the store's, whatever its file says. */
function withSlug({ slug }: ShownLesson, { lesson }: LessonVersion): LessonVersion['lesson'] {
  return { ...lesson, slug }
}

/**
 * Whether a person said for whom a class is: when it came in, or on its sheet. Only asked where a wrong answer can do harm;
 * each recording is read once.
 */
export function rememberAudience(store: Studio['store']): (version: LessonVersion) => Promise<boolean> {
  const known = new Map<string, Promise<boolean>>()
  return ({ recordingId, lesson }) => {
    if (!lesson.audience.some((one) => GUARDED_AUDIENCES.includes(one))) return Promise.resolve(false)
    const answer = known.get(recordingId) ?? isAudienceSet(store, recordingId)
    known.set(recordingId, answer)
    return answer
  }
}

/** Whether a person said for whom the class is. */
export async function isAudienceSet(store: Studio['store'], recordingId: string): Promise<boolean> {
  const recording = await store.recordings.read(recordingId)
  if (recording.audience !== null) return true
  const sheet = await store.sheets.readOf(recordingId)
  return sheet?.sheet.setByPerson?.includes('audience') ?? false
}
