/** The shelf: every recording, how far it is, and the one thing it needs next. */
import type { CheckReport } from '../../shared/check-report.ts'
import type { Audience, LogSheet, Music, PersonShown } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'
import { formatCount } from './format.ts'
import { buildJobLine } from './job-words.ts'
import type { JobInput, JobLine } from './job-words.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'
import { classRibbon } from './pictures/draw-class-ribbon.ts'
import { describeClass } from './pictures/read-class.ts'
import type { SoundInput } from './published-sound.ts'

/** A recording as pages know it. */
export interface RecordingInput {
  id: string
  title: string
  kindId: string | null
  state: 'arriving' | 'checking' | 'ready' | 'refused' | 'removed'
  durationMs: number | null
  audience: readonly Audience[] | null
  equipment: readonly string[]
  music: Music | null
  people: readonly PersonShown[] | null
  files: readonly { id: string; role: 'part' | 'sound' | 'camera' | 'aside'; fileName: string; bytes: number | null }[]
  /** What can be published as its sound; null = nothing is marked yet, so there is nothing to choose. */
  sound?: SoundInput | null
  hasFilm: boolean
  /** The sound is read, so that speech can be found in it. */
  hasWave: boolean
  hasWords: boolean
  work: { sheet: LogSheet; report: CheckReport; published: ReadonlySet<string> } | null
  jobs: readonly JobInput[]
  failed: readonly JobInput[]
}

export interface ShelfPage {
  layout: Layout
  count: string
  isEmpty: boolean
  hasFfmpeg: boolean
  rows: ShelfRow[]
}

export interface ShelfRow {
  id: string
  title: string
  href: string
  facts: string[]
  /** SVG; '' = nothing is drafted yet. */
  ribbon: string
  jobs: JobLine[]
  /** Reasons of what went wrong, in sentences. */
  faults: string[]
  /** '' = nothing is needed. */
  need: { label: string; href: string } | null
  /** Takes away a class that holds nothing, as when its only film was refused; '' = it holds something. */
  removeAction: string
}

export function buildShelfPage(input: { entries: readonly RecordingInput[]; hasFfmpeg: boolean }): ShelfPage {
  const rows = input.entries.map(buildRow)
  return {
    layout: buildLayout({ title: 'Classes', kind: 'shelf', here: 'shelf', htmx: true, sse: true }),
    count: formatCount(rows.length, 'class', 'classes'),
    isEmpty: rows.length === 0,
    hasFfmpeg: input.hasFfmpeg,
    rows,
  }
}

function buildRow(entry: RecordingInput): ShelfRow {
  const { id, title, work, jobs, failed } = entry
  const hasRibbon = work !== null && work.sheet.durationMs > 0 && work.sheet.segments.length > 0
  return {
    id,
    title,
    href: work ? `/recordings/${id}` : `/add/${id}`,
    facts: buildFacts(entry),
    ribbon: hasRibbon
      ? classRibbon(work.sheet, work.report, {
          size: 'row',
          published: work.published,
          here: null,
          words: describeClass(work.sheet, work.report, work.published),
        })
      : '',
    jobs: jobs.map(buildJobLine),
    faults: failed.flatMap(({ error }) => (error ? [error.message] : [])),
    need: findNeed(entry),
    removeAction: isBare(entry) ? `/recordings/${entry.id}/remove` : '',
  }
}

function isBare({ files, hasFilm, hasWords, work, jobs }: RecordingInput): boolean {
  return files.length === 0 && !hasFilm && !hasWords && !work && jobs.length === 0
}

function buildFacts({ durationMs, work, hasFilm, state, files }: RecordingInput): string[] {
  const film = state === 'refused' ? ['Its film cannot be used'] : hasFilm ? [] : ['No film yet']
  const more = files.filter(({ role }) => role === 'sound' || role === 'camera').length
  const parts = files.filter(({ role }) => role === 'part').length
  const length = durationMs === null ? [] : [formatClock(durationMs)]
  const attached = [...(parts > 1 ? [`${parts} parts`] : []), ...(more > 0 ? [formatCount(more, 'more file')] : [])]
  if (!work) return [...length, ...film, ...attached]
  const rows = work.report.cautions.filter(({ level }) => level !== 'info')
  const covered = rows.filter(({ state: one, inClip }) => one === 'waived' || (one !== 'missing' && inClip)).length
  return [
    ...length,
    ...film,
    formatCount(lessonsOf(work.sheet).length, 'exercise'),
    ...(rows.length > 0 ? [`${covered} of ${formatCount(rows.length, 'caution')} covered`] : []),
    ...(work.published.size > 0 ? [`${work.published.size} published`] : []),
    ...attached,
  ]
}

/** The first gap on the way from film to lesson. */
export function findNeed(entry: RecordingInput): ShelfRow['need'] {
  const { id, state, hasFilm, audience, hasWords, work, jobs } = entry
  if (state === 'refused' || !hasFilm) return { label: 'Add its film', href: `/add/${id}` }
  if (audience === null) return { label: 'Say who it is for', href: `/add/${id}#who` }
  if (!work && !hasWords) return { label: 'Add its words', href: `/add/${id}#words` }
  if (!work) return jobs.length > 0 ? null : { label: 'Add its words', href: `/add/${id}#words` }
  const lessons = lessonsOf(work.sheet)
  if (lessons.some((segment) => segment.state === 'proposed')) {
    return { label: 'Look through the draft', href: `/recordings/${id}` }
  }
  const stops = work.report.findings.filter(({ severity }) => severity === 'stop').length
  if (stops > 0) return { label: `Close ${formatCount(stops, 'stop')}`, href: `/recordings/${id}/checks` }
  const left = lessons.filter((segment) => !work.published.has(segment.id)).length
  if (left > 0) return { label: `Publish ${formatCount(left, 'lesson')}`, href: `/recordings/${id}/publish` }
  return { label: 'See its lessons', href: '/library' }
}

function lessonsOf(sheet: LogSheet) {
  return sheet.segments.filter(({ use, state }) => use === 'lesson' && state !== 'declined')
}
