/**
 * The class ribbon: the whole recording as one strip. Sections are shades and exercises blocks in order; returns to an
 * exercise hang together by a hairline; cautions are notches on the upper edge, missing ones hollow; what is published is
 * solid and what is not yet is hatched. Places are percents, so that it fills any width undistorted.
 */
import type { CheckReport } from '../../../shared/check-report.ts'
import type { LogSheet, Segment } from '../../../shared/log-sheet.ts'
import type { Stretch } from '../../../shared/time.ts'
import { cautionNotches, sharesOfLanes, shownSegments, spansInOrder } from './read-class.ts'
import type { Notch } from './read-class.ts'
import { element, escapeXml, percent } from './write-svg.ts'

export interface RibbonOptions {
  /** row = thin, for a shelf; page = higher, with the names of the sections. */
  size: 'row' | 'page'
  /** Ids of the segments whose lessons are published. */
  published: ReadonlySet<string>
  /** The one segment that the page is about, in the colour of tape; null = none. */
  here: string | null
  /** The class in words: the picture's accessible name; '' where the words stand beside it. See describeClass. */
  words: string
}

/** Heights in px; bare = without names. */
const SIZES = {
  row: { band: 8, bandHeight: 20, inset: 3, lane: 31, laneStep: 3, names: null, height: 38, bare: 38, notch: 4 },
  page: { band: 11, bandHeight: 32, inset: 5, lane: 47, laneStep: 4, names: 70, height: 76, bare: 58, notch: 5 },
} as const
type Size = (typeof SIZES)[keyof typeof SIZES]

/** SVG, made to be put into a page as it is. */
export function classRibbon(sheet: LogSheet, report: CheckReport, options: RibbonOptions): string {
  const size = SIZES[options.size]
  const segments = shownSegments(sheet)
  const whole = sheet.durationMs
  const isSilent = options.words === ''
  return element(
    'svg',
    {
      class: `ribbon ribbon-${options.size}`,
      width: '100%',
      height: sheet.sections.length === 0 ? size.bare : size.height,
      role: isSilent ? null : 'img',
      'aria-hidden': isSilent ? 'true' : null,
      'aria-label': isSilent ? null : options.words,
      focusable: 'false',
    },
    bandRect('r-base', { startMs: 0, endMs: whole }, whole, size, 0),
    ...sheet.sections.map((section, index) => bandRect(`r-shade-${index % 3}`, section, whole, size, 0)),
    ...segments.flatMap((segment) => drawSegment(segment, options, whole, size)),
    ...drawReturns(segments, whole, size),
    ...cautionNotches(sheet, report).map((notch) => drawNotch(notch, whole, size)),
    ...(size.names === null ? [] : drawNames(sheet, size.names)),
  )
}

function drawSegment(segment: Segment, options: RibbonOptions, whole: number, size: Size): string[] {
  return segment.spans.flatMap((span) => {
    const block = (look: string): string => bandRect(`r-block ${look}`, span, whole, size, size.inset)
    if (segment.id === options.here) return [block('r-here')]
    if (segment.use === 'leave-out') return [block('r-out')]
    if (segment.use === 'keep') return [block('r-bare')]
    if (options.published.has(segment.id)) return [block('r-solid')]
    return [block('r-bare'), hatch(span, whole, size)]
  })
}

function bandRect(look: string, { startMs, endMs }: Stretch, whole: number, size: Size, inset: number): string {
  const width = percent(endMs - startMs, whole)
  const place = { x: percent(startMs, whole), y: size.band + inset, width, height: size.bandHeight - 2 * inset }
  return element('rect', { class: look, ...place })
}

/** A dashed line as thick as the block is high. */
function hatch({ startMs, endMs }: Stretch, whole: number, size: Size): string {
  const y = size.band + size.bandHeight / 2
  const thick = size.bandHeight - 2 * size.inset
  const place = { x1: percent(startMs, whole), y1: y, x2: percent(endMs, whole), y2: y }
  return element('line', { class: 'r-hatch', ...place, 'stroke-width': thick, 'stroke-dasharray': '1.4 3.2' })
}

/** From the first teaching of an exercise to its last, with a foot under each. */
function drawReturns(segments: readonly Segment[], whole: number, size: Size): string[] {
  const returning = segments.filter(({ spans }) => spans.length > 1).map(spansInOrder)
  return sharesOfLanes(returning.map(endsOf)).flatMap((lane, index) => {
    const spans = returning[index] ?? []
    const y = size.lane + Math.min(lane, 2) * size.laneStep
    const ends = endsOf(spans)
    const line = (x1: string, y1: number, x2: string, y2: number): string =>
      element('line', { class: 'r-return', x1, y1, x2, y2 })
    return [
      line(percent(ends.startMs, whole), y, percent(ends.endMs, whole), y),
      ...spans.map((span) => {
        const x = percent(centre(span), whole)
        return line(x, size.band + size.bandHeight - size.inset, x, y)
      }),
    ]
  })
}

function endsOf(spans: readonly Stretch[]): Stretch {
  const [first] = spans
  const last = spans.at(-1)
  return { startMs: first ? centre(first) : 0, endMs: last ? centre(last) : 0 }
}

function centre({ startMs, endMs }: Stretch): number {
  return (startMs + endMs) / 2
}

function drawNotch({ atMs, missing }: Notch, whole: number, { band, inset, notch }: Size): string {
  const d = `M${-notch} 0h${2 * notch}L0 ${band + inset - 1}z`
  const path = element('path', { class: missing ? 'r-missing' : 'r-notch', d })
  return element('svg', { x: percent(atMs, whole), y: 1, overflow: 'visible' }, path)
}

/** Widths of a ribbon, in rem, from which a name may be shown; the style sheet holds the same ones. */
const NAME_STEPS = [40, 52, 64, 80] as const
/** Of the names' letters, a little more than the mean, in rem. */
const LETTER_REM = 0.34

/** A name is shown whole or not at all: from the width on at which its section has room for it. */
function drawNames(sheet: LogSheet, y: number): string[] {
  return sheet.sections.flatMap(({ title, startMs, endMs }) => {
    const needed = (title.length * LETTER_REM * sheet.durationMs) / Math.max(1, endMs - startMs)
    const step = NAME_STEPS.find((rem) => rem >= needed)
    if (step === undefined) return []
    const place = { x: percent(startMs, sheet.durationMs), width: percent(endMs - startMs, sheet.durationMs) }
    return [
      element(
        'svg',
        { ...place, overflow: 'hidden' },
        element('text', { class: `r-from-${step}`, x: 0, y }, escapeXml(title)),
      ),
    ]
  })
}
