/** What the class ribbon shows of a class, and the same in words. */
import type { CautionCoverage, CheckReport } from '../../../shared/check-report.ts'
import type { LogSheet, Segment } from '../../../shared/log-sheet.ts'
import { formatClock } from '../../../shared/time.ts'
import type { Ms, Stretch } from '../../../shared/time.ts'
import { formatCount } from '../format.ts'

export interface Notch {
  atMs: Ms
  missing: boolean
}

/** Segments that nobody declined and that have a place in the recording, in order of time. */
export function shownSegments(sheet: LogSheet): Segment[] {
  const startOf = (segment: Segment): number => spansInOrder(segment)[0]?.startMs ?? 0
  return sheet.segments
    .filter((segment) => segment.state !== 'declined' && segment.spans.length > 0)
    .sort((a, b) => startOf(a) - startOf(b))
}

export function spansInOrder({ spans }: Pick<Segment, 'spans'>): Stretch[] {
  return [...spans].sort((a, b) => a.startMs - b.startMs)
}

/** A notch for each required caution: where it was said, else spread over the main teaching. Missing ones come last, on top. */
export function cautionNotches(sheet: LogSheet, report: CheckReport): Notch[] {
  const notches = shownSegments(sheet).flatMap((segment) => {
    const rows = requiredRows(report, segment)
    const [main] = segment.spans
    if (!main) return []
    return rows.map((row, index): Notch => {
      const said = segment.cautions.find(({ hazard, atMs }) => hazard === row.hazard && atMs !== null)?.atMs ?? null
      const isInside = said !== null && segment.spans.some((span) => span.startMs <= said && said < span.endMs)
      const spread = main.startMs + ((index + 0.5) / rows.length) * (main.endMs - main.startMs)
      return { atMs: isInside ? said : Math.round(spread), missing: !isCovered(row) }
    })
  })
  return [...notches.filter(({ missing }) => !missing), ...notches.filter(({ missing }) => missing)]
}

/** A lane for each line such that lines of one lane do not touch; the lowest that is free. */
export function sharesOfLanes(lines: readonly Stretch[]): number[] {
  const ends: number[] = []
  return lines.map(({ startMs, endMs }) => {
    const free = ends.findIndex((end) => end < startMs)
    const lane = free === -1 ? ends.length : free
    ends[lane] = endMs
    return lane
  })
}

/** The ribbon in one sentence, for its accessible name. */
export function describeClass(sheet: LogSheet, report: CheckReport, published: ReadonlySet<string>): string {
  const segments = shownSegments(sheet)
  const rows = segments.flatMap((segment) => requiredRows(report, segment))
  const covered = rows.filter(isCovered).length
  const sections = sheet.sections.length > 0 ? ` in ${formatCount(sheet.sections.length, 'section')}` : ''
  const done = segments.filter(({ id }) => published.has(id)).length
  const cautions = rows.length > 0 ? `, ${covered} of ${formatCount(rows.length, 'caution')} covered` : ''
  return `Class of ${formatClock(sheet.durationMs)}: ${formatCount(segments.length, 'exercise')}${sections}, ${done} published${cautions}.`
}

/** The ribbon in full: a line for each exercise. */
export function listClass(sheet: LogSheet, report: CheckReport, published: ReadonlySet<string>): string[] {
  return shownSegments(sheet).map((segment) => {
    const times = spansInOrder(segment).map(({ startMs, endMs }) => `${formatClock(startMs)} to ${formatClock(endMs)}`)
    const missing = requiredRows(report, segment).filter((row) => !isCovered(row)).length
    const lack = missing > 0 ? `, ${formatCount(missing, 'caution')} missing` : ''
    return `${segment.exercise.name}, ${times.join(' and ')}: ${stateOf(segment, published)}${lack}`
  })
}

function stateOf(segment: Segment, published: ReadonlySet<string>): string {
  if (segment.use === 'leave-out') return 'left out'
  if (segment.use === 'keep') return 'kept for search'
  return published.has(segment.id) ? 'published' : 'not published'
}

function requiredRows(report: CheckReport, segment: Segment): CautionCoverage[] {
  if (segment.use !== 'lesson') return []
  return report.cautions.filter((row) => row.segmentId === segment.id && row.level !== 'info')
}

function isCovered({ state, inClip }: CautionCoverage): boolean {
  return state === 'waived' || (state !== 'missing' && inClip)
}
