/** The library: published lessons to search and narrow down, as cards with their dose. */
import type { Lesson } from '../../shared/lesson.ts'
import { formatClock } from '../../shared/time.ts'
import { formatCount, formatList, upperFirst } from './format.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'
import { AUDIENCE_NAMES, KIT_NAMES, LENGTH_NAMES, LEVEL_NAMES, nameOf, POSITION_NAMES, REGION_NAMES } from './names.ts'
import { EXAMPLE_DOSE } from './pictures/example-dose.ts'
import { doseStrip } from './pictures/draw-dose-strip.ts'

/** The filters, in the order in which they stand on the page. */
const FILTERS = {
  kit: { label: 'Kit', names: KIT_NAMES },
  position: { label: 'Position', names: POSITION_NAMES },
  region: { label: 'Body part', names: REGION_NAMES },
  level: { label: 'Level', names: LEVEL_NAMES },
  audience: { label: 'Members', names: AUDIENCE_NAMES },
  length: { label: 'Length', names: LENGTH_NAMES },
} as const
type FilterName = keyof typeof FILTERS
const FILTER_NAMES = Object.keys(FILTERS) as FilterName[]

export interface LibraryInput {
  query: { text: string } & Record<FilterName, string | null>
  choices: Record<FilterName, readonly string[]>
  /** Lessons in the library, before any search. */
  total: number
  /** Those that fit, in order. */
  lessons: readonly LibraryCardInput[]
}

export interface LibraryCardInput {
  slug: string
  /** Version shown; part of addresses, so that a new version is loaded anew. */
  version: number
  lesson: Lesson
  position: string | null
}

export interface LibraryPage {
  layout: Layout
  text: string
  filters: { name: string; label: string; options: { value: string; label: string; chosen: boolean }[] }[]
  /** Filters in force, each with the address without it. */
  chosen: { label: string; href: string }[]
  count: string
  total: string
  isEmpty: boolean
  examples: string
  nothing: string
  cards: LibraryCard[]
}

export interface LibraryCard {
  href: string
  name: string
  /** '' = no picture. */
  poster: string
  /** Where a repetition starts and ends, in place of the poster; empty = none. */
  pictures: { src: string; label: string }[]
  strip: string
  length: string
  facts: string[]
}

export function buildLibraryPage(input: LibraryInput): LibraryPage {
  const { query, choices, total, lessons } = input
  const isNarrowed = query.text.trim() !== '' || FILTER_NAMES.some((name) => query[name] !== null)
  return {
    layout: buildLayout({ title: 'Library', kind: 'shelf', here: 'library', htmx: true, scripts: ['library'] }),
    text: query.text,
    filters: FILTER_NAMES.flatMap((name) => buildFilter(name, choices[name], query[name])),
    chosen: FILTER_NAMES.flatMap((name) => buildChosen(name, query)),
    count: isNarrowed
      ? `${String(lessons.length)} of ${formatCount(total, 'lesson')}`
      : formatCount(lessons.length, 'lesson'),
    total: String(total),
    isEmpty: total === 0,
    examples:
      total === 0
        ? doseStrip(EXAMPLE_DOSE, { size: 'card', words: 'Three sets of twelve, a minute of rest between them' })
        : '',
    nothing: nothingWords(query.text),
    cards: lessons.map(buildCard),
  }
}

function buildFilter(name: FilterName, values: readonly string[], chosen: string | null): LibraryPage['filters'] {
  // a value that was taken from an address stays to be seen, also when no lesson has it any more
  const all = chosen === null || values.includes(chosen) ? values : [...values, chosen]
  if (all.length === 0) return []
  const { label, names } = FILTERS[name]
  const options = all.map((value) => ({ value, label: upperFirst(nameOf(names, value)), chosen: value === chosen }))
  return [
    { name, label, options: [{ value: '', label: `Any ${label.toLowerCase()}`, chosen: chosen === null }, ...options] },
  ]
}

function buildChosen(name: FilterName, query: LibraryInput['query']): LibraryPage['chosen'] {
  const value = query[name]
  if (value === null) return []
  const { label, names } = FILTERS[name]
  return [{ label: `${label}: ${nameOf(names, value)}`, href: addressOf({ ...query, [name]: null }) }]
}

/** The address of a search; what is not asked for is left out. */
function addressOf(query: LibraryInput['query']): string {
  const asked = [['q', query.text], ...FILTER_NAMES.map((name) => [name, query[name] ?? ''])]
  const parts = asked
    .filter(([, value]) => value !== '')
    .map(([key, value]) => `${key}=${encodeURIComponent(value ?? '')}`)
  return parts.length === 0 ? '/library' : `/library?${parts.join('&')}`
}

function nothingWords(text: string): string {
  return text.trim() === '' ? 'No lesson fits these filters.' : `No lesson is called anything like "${text.trim()}".`
}

export function buildCard({ slug, version, lesson, position }: LibraryCardInput): LibraryCard {
  const kit = lesson.equipment.length === 0 ? [] : [upperFirst(formatList(lesson.equipment))]
  const at = (file: string): string => `/lessons/${slug}/${file}?v=${String(version)}`
  return {
    href: `/lessons/${slug}`,
    name: lesson.name,
    poster: lesson.clip.poster === null ? '' : at('poster.jpg'),
    pictures: lesson.pictures
      ? [
          { src: at('start.jpg'), label: 'Start' },
          { src: at('end.jpg'), label: 'End' },
        ]
      : [],
    strip: doseStrip(lesson.dose?.prescription ?? null, { size: 'card', words: lesson.dose?.spoken ?? 'No dose' }),
    length: formatClock(lesson.clip.durationMs),
    facts: [...(position === null ? [] : [upperFirst(nameOf(POSITION_NAMES, position))]), ...kit],
  }
}
