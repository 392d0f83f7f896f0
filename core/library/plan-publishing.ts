/** Says of each segment of a class what publishing would do: make a lesson, the next version of one, or nothing, and why. */
import type { CheckReport } from '../../shared/check-report.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import { findEntry } from '../catalogue/find-entry.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import type { LessonFacts } from './describe-lesson.ts'
import { mayPublish } from './may-publish.ts'
import { searchLessons } from './search-lessons.ts'

/** A lesson of the library, with what its current version shows. */
export interface LibraryEntry {
  id: string
  slug: string
  state: 'draft' | 'published' | 'withdrawn'
  recordingId: string
  segmentId: string
  facts: LessonFacts
}

/** own = at an address of its own; skip = not now; else the id of the lesson whose next version it becomes. */
export type Place = string
export const OWN: Place = 'own'
export const SKIP: Place = 'skip'

/**
 * held = a stop stands; new = not in the library; changed = shown as it was marked before; same = shown as it is;
 * known = the library has this exercise from elsewhere; withdrawn = was shown; keep and leave-out = no lesson.
 */
export type PublishState = 'held' | 'new' | 'changed' | 'same' | 'known' | 'withdrawn' | 'keep' | 'leave-out'

export interface PlannedSegment {
  segment: Segment
  state: PublishState
  /** What each stop says; empty unless held. */
  reasons: string[]
  /** The rule behind each of them, in the same order. */
  rules: string[]
  /** The lesson that shows this very segment, or did last. */
  own: LibraryEntry | null
  /** Shown lessons of the same exercise, from elsewhere. */
  known: LibraryEntry[]
  /** Lessons whose place it could take, the likeliest first. */
  near: LibraryEntry[]
  /** What happens unless a person says otherwise. */
  place: Place
}

const NEAR = 6

/** @param isSame true when the lesson of this segment would come out as it is shown now */
export function planPublishing(input: {
  sheet: LogSheet
  report: CheckReport
  recordingId: string
  library: readonly LibraryEntry[]
  isSame: (segment: Segment, own: LibraryEntry) => boolean
}): PlannedSegment[] {
  const { sheet, report, recordingId, library, isSame } = input
  const held = new Map(mayPublish(sheet, report).held.map((one) => [one.segment.id, one]))
  return sheet.segments
    .filter(({ state }) => state !== 'declined')
    .map((segment) => {
      const own = library.find((one) => one.recordingId === recordingId && one.segmentId === segment.id) ?? null
      const others = library.filter((one) => one !== own)
      const known = others.filter((one) => one.state === 'published' && isSameExercise(segment, one.facts))
      const noPlace =
        segment.spans.length === 0 ? { reasons: [NO_PLACE], rules: ['no-place'] } : { reasons: [], rules: [] }
      const { reasons, rules } = held.get(segment.id) ?? noPlace
      const state = stateOf(segment, reasons, own, known, isSame)
      const place = state === 'new' || state === 'changed' ? OWN : SKIP
      return {
        segment,
        state,
        reasons: state === 'held' ? reasons : [],
        rules: state === 'held' ? rules : [],
        own,
        known,
        near: findNear(segment, others),
        place,
      }
    })
}

const NO_PLACE = 'It has no place in the film yet. Place it on the page of the class.'

function stateOf(
  segment: Segment,
  reasons: readonly string[],
  own: LibraryEntry | null,
  known: readonly LibraryEntry[],
  isSame: (segment: Segment, own: LibraryEntry) => boolean,
): PublishState {
  if (segment.use !== 'lesson') return segment.use
  if (reasons.length > 0) return 'held'
  if (own?.state === 'withdrawn') return 'withdrawn'
  if (own) return isSame(segment, own) ? 'same' : 'changed'
  return known.length > 0 ? 'known' : 'new'
}

/** By the catalogue, else by any of their names in full. */
function isSameExercise({ exercise, equipment }: Segment, facts: LessonFacts): boolean {
  const names = [exercise.name, ...exercise.alsoCalled]
  const entry = names.map((name) => findEntry(name, { kit: equipment })).find((found) => found) ?? null
  if (entry && facts.catalogueId !== null) return entry.id === facts.catalogueId
  const theirs = new Set([facts.name, ...facts.otherNames].map(fold))
  return names.some((name) => theirs.has(fold(name)))
}

const fold = (name: string): string =>
  foldWords(name)
    .map(({ text }) => text)
    .join(' ')

const ANYTHING = { kit: null, position: null, region: null, level: null, audience: null, length: null }

/** Of the same exercise first, then those that a search for any of its words finds. */
function findNear(segment: Segment, others: readonly LibraryEntry[]): LibraryEntry[] {
  const same = others.filter(({ facts }) => isSameExercise(segment, facts))
  const words = [segment.exercise.name, ...segment.exercise.name.split(/\s+/).filter((word) => word.length > 3)]
  const bySlug = new Map(others.map((one) => [one.slug, one]))
  const facts = others.map((one) => ({ ...one.facts, slug: one.slug }))
  const found = words
    .flatMap((text) => searchLessons(facts, { ...ANYTHING, text }))
    .flatMap(({ slug }) => {
      const entry = bySlug.get(slug)
      return entry ? [entry] : []
    })
  return [...new Set([...same, ...found])].slice(0, NEAR)
}
