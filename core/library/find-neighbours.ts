/** Easier and harder versions of a lesson: what the instructor said of them, and which of them are lessons themselves. */
import { findEntry } from '../catalogue/find-entry.ts'
import { entryById } from '../catalogue/catalogue.ts'
import type { LessonFacts } from './describe-lesson.ts'

export interface Neighbour {
  text: string
  /** The lesson that teaches it; null = there is none. */
  slug: string | null
}

/**
 * The instructor's words first, each with its lesson where its words name one; then lessons that the catalogue puts there.
 * @param words as on the lesson
 */
export function findNeighbours(
  lesson: LessonFacts,
  side: 'easier' | 'harder',
  words: readonly string[],
  library: readonly LessonFacts[],
): Neighbour[] {
  const others = library.filter(({ slug }) => slug !== lesson.slug)
  const byEntry = (id: string | undefined): LessonFacts | undefined =>
    id === undefined ? undefined : others.find(({ catalogueId }) => catalogueId === id)
  const said = words.map((text): Neighbour => {
    const named = byEntry(findEntry(text, { kit: lesson.kit })?.id)
    return { text, slug: named?.slug ?? null }
  })
  const entry = lesson.catalogueId === null ? null : entryById(lesson.catalogueId)
  const known = (entry?.[side] ?? []).flatMap((id): Neighbour[] => {
    const found = byEntry(id)
    return found && !said.some(({ slug }) => slug === found.slug) ? [{ text: found.name, slug: found.slug }] : []
  })
  return [...said, ...known]
}
