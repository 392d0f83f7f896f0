/** What the library knows of a lesson for search and filters: its own fields, and what the catalogue says by its name. */
import type { Lesson } from '../../shared/lesson.ts'
import type { Audience } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import type { CatalogueEntry } from '../catalogue/entry.ts'
import { findEntry } from '../catalogue/find-entry.ts'

/** Where an exercise stands between its easier and harder neighbours: our own order, no source. */
export const LEVELS = ['starting', 'building', 'advanced'] as const
export type Level = (typeof LEVELS)[number]

export interface LessonFacts {
  slug: string
  name: string
  /** The instructor's other names, then the catalogue's. */
  otherNames: string[]
  /** Empty = nothing is needed. */
  kit: string[]
  position: string | null
  regions: string[]
  /** null = it has no neighbours. */
  level: Level | null
  /** For whom it is offered. */
  audience: Audience[]
  durationMs: Ms
  catalogueId: string | null
}

/** @param isAudienceSet a person said for whom the class is */
export function describeLesson(lesson: Lesson, isAudienceSet: boolean): LessonFacts {
  const entry = entryOf(lesson)
  return {
    slug: lesson.slug,
    name: lesson.name,
    otherNames: [...new Set([...lesson.alsoCalled, ...(entry ? [entry.name, ...entry.alsoCalled] : [])])],
    kit: lesson.equipment,
    position: lesson.position ?? entry?.positions[0] ?? null,
    regions: [...(entry?.regions ?? [])],
    level: entry && levelOf(entry),
    audience: offeredAudience(lesson.audience, isAudienceSet),
    durationMs: lesson.clip.durationMs,
    catalogueId: entry?.id ?? null,
  }
}

/** The catalogue's entry of a lesson, by its name or else by one of its other names. */
export function entryOf({
  name,
  alsoCalled,
  equipment,
}: Pick<Lesson, 'name' | 'alsoCalled' | 'equipment'>): CatalogueEntry | null {
  for (const one of [name, ...alsoCalled]) {
    const entry = findEntry(one, { kit: equipment })
    if (entry) return entry
  }
  return null
}

/** Audiences for whom a wrong offer can do harm: a lesson is theirs only when a person says so. */
export const GUARDED_AUDIENCES: readonly Audience[] = ['older-adults', 'pregnancy', 'after-birth', 'rehab', 'juniors']

export function offeredAudience(audience: readonly Audience[], isSetByPerson: boolean): Audience[] {
  return audience.filter((one) => isSetByPerson || !GUARDED_AUDIENCES.includes(one))
}

function levelOf({ easier, harder }: CatalogueEntry): Level | null {
  if (easier.length === 0 && harder.length === 0) return null
  if (easier.length === 0) return 'starting'
  return harder.length === 0 ? 'advanced' : 'building'
}
