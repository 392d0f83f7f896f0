/** The class page: the film beside what is said in it, the exercises in order, one of them open. */
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import { formatClock, formatClockMs } from '../../shared/time.ts'
import type { Ms } from '../../shared/time.ts'
import type { TranscriptLine } from '../../shared/transcript.ts'
import { classAddress, optionsOf, placeAddress, timesOf } from './class-input.ts'
import type { ClassWords, Option, WorkInput } from './class-input.ts'
import { cautionParts, lessonChoices } from './class-marks.ts'
import type { CautionPart } from './class-marks.ts'
import { buildSegmentPart } from './class-segment.ts'
import type { SegmentPart } from './class-segment.ts'
import { undoPart } from './edit-names.ts'
import type { UndoPart } from './edit-names.ts'
import { formatCount } from './format.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'
import { AUDIENCE_NAMES } from './names.ts'
import { classRibbon } from './pictures/draw-class-ribbon.ts'
import { describeClass } from './pictures/read-class.ts'

export interface ClassInput {
  recordingId: string
  title: string
  durationMs: Ms | null
  film: {
    mediaId: string
    preview: 'none' | 'growing' | 'whole' | null
    frameMs: number
    hasSpeech: boolean
    hasWave?: boolean
  } | null
  lines: readonly TranscriptLine[]
  /** The lines were typed here. */
  isTyped: boolean
  work: WorkInput | null
  /** The exercise to open; null = the first that is still proposed. */
  openId: string | null
  words: ClassWords
}

export interface ClassPage {
  layout: Layout
  title: string
  address: string
  film: { src: string; captions: string; frameMs: number } | null
  /** Its wave is drawn, as far as it is known; null = there is none. */
  wave: { src: string; durationMs: Ms } | null
  filmNote: string
  lines: { id: string; clock: string; href: string; words: string; startMs: Ms; endMs: Ms }[]
  /** Typing what is said; off = the words came another way, or there is no film. */
  typing: { state: 'off' | 'waits' | 'ready'; begin: string; lines: string }
  /** Exercises can be proposed from the sound. */
  canPropose: boolean
  /** null = nothing is drafted yet. */
  parts: ClassParts | null
}

/** What changes with every edit. */
export interface ClassParts {
  sheetId: string
  version: number
  address: string
  /** '' = there is none. */
  openId: string
  head: HeadPart
  list: ListPart
  segment: SegmentPart | null
  plan: PlanPart
  about: AboutPart
}

export interface HeadPart {
  title: string
  ribbon: string
  facts: { label: string; value: string }[]
  checks: { href: string; label: string }
  undo: UndoPart
  redo: UndoPart
}

export interface ListPart {
  count: string
  rows: ListRow[]
  declined: ListRow[]
  open: string
}

export interface ListRow {
  id: string
  name: string
  href: string
  times: string
  startMs: number
  endMs: number
  dose: string
  isOpen: boolean
  look: string
  stateWords: string
  use: string
  stops: string
}

/** A class plan whose exercises still need their place in the film. */
export interface PlanPart {
  /** Ids that are not placed, in order, parted by blanks; '' = all are. */
  ids: string
  names: string[]
  /** The exercise that was begun last and has no end yet; '' = none. */
  openId: string
  openStartMs: Ms
  durationMs: Ms
  count: string
}

export interface AboutPart {
  title: string
  audience: Option[]
  music: Option[]
  sections: string
  mentioned: string
  cautions: CautionPart[]
  attach: { value: string; words: string }[]
  lessons: { id: string; name: string; times: string }[]
}

const MUSIC_NAMES = { none: 'None', own: 'Our own', licensed: 'Licensed', unknown: 'Not known' }

export function buildClassPage(input: ClassInput): ClassPage {
  const { recordingId, film, lines } = input
  const address = classAddress(recordingId)
  const src = film?.preview === null ? `${address}/media/${film.mediaId}` : `${address}/preview`
  const title = input.work?.sheet.title || input.title
  return {
    layout: buildLayout({ title, kind: 'bench', here: 'shelf', scripts: ['class'] }),
    title,
    address,
    film:
      film === null || film.preview === 'none'
        ? null
        : { src, captions: lines.length === 0 ? '' : `${address}/captions.vtt`, frameMs: film.frameMs },
    wave:
      film?.hasWave === true && input.durationMs !== null
        ? { src: `${address}/wave`, durationMs: input.durationMs }
        : null,
    filmNote: film === null ? 'The film of this class is not here yet.' : 'The film is being made ready to be shown.',
    lines: lines.map(({ startMs, endMs, text }, index) => ({
      id: `line-${String(index)}`,
      ...{ clock: formatClock(startMs), href: placeAddress(recordingId, null, startMs), words: text, startMs, endMs },
    })),
    typing: buildTyping(input),
    canPropose: film?.hasSpeech === true && input.work === null,
    parts: input.work && buildClassParts(input, input.work),
  }
}

function buildTyping({ film, lines, isTyped }: ClassInput): ClassPage['typing'] {
  const typed = isTyped ? lines.map(({ startMs, endMs, text }) => ({ startMs, endMs, text })) : []
  const isOff = film === null || film.preview === 'none' || (lines.length > 0 && !isTyped)
  return {
    state: isOff ? 'off' : film.hasSpeech ? 'ready' : 'waits',
    begin: typed.length > 0 ? 'Type on' : 'Type what is said',
    lines: JSON.stringify(typed),
  }
}

export function buildClassParts(input: Omit<ClassInput, 'work' | 'lines' | 'isTyped'>, work: WorkInput): ClassParts {
  const { recordingId, words } = input
  const open = openSegment(work.sheet, input.openId)
  const frameMs = input.film?.frameMs ?? 1000 / 30
  return {
    sheetId: work.sheetId,
    version: work.version,
    address: classAddress(recordingId),
    openId: open?.id ?? '',
    head: buildHead(recordingId, work, open),
    list: buildList(recordingId, work, words, open),
    segment: open && buildSegmentPart(open, work, words, { recordingId, frameMs }),
    plan: buildPlan(work.sheet),
    about: buildAbout(work.sheet, words),
  }
}

/** The one that was asked for; else the first that nobody has decided; else the first. */
function openSegment({ segments }: LogSheet, id: string | null): Segment | null {
  const shown = segments.filter(({ state }) => state !== 'declined')
  return (
    segments.find((one) => one.id === id) ??
    shown.find(({ state }) => state === 'proposed') ??
    shown[0] ??
    segments[0] ??
    null
  )
}

function buildHead(recordingId: string, work: WorkInput, open: Segment | null): HeadPart {
  const { sheet, report, published } = work
  const lessons = sheet.segments.filter(({ use, state }) => use === 'lesson' && state !== 'declined')
  const stops = report.findings.filter(({ severity }) => severity === 'stop').length
  return {
    title: sheet.title,
    ribbon: classRibbon(sheet, report, {
      ...{ size: 'page', published, here: open?.id ?? null, words: describeClass(sheet, report, published) },
    }),
    facts: [
      { label: 'Length', value: formatClock(sheet.durationMs) },
      { label: 'Lessons', value: String(lessons.length) },
      { label: 'Cautions', value: shortCovered(work.covered) },
      { label: 'Stops', value: String(stops) },
    ],
    checks: { href: `${classAddress(recordingId)}/checks`, label: 'Check' },
    undo: undoPart(work.undo, sheet),
    redo: undoPart(work.redo, sheet),
  }
}

/** "12 of 14" of "12 of 14 cautions covered". */
function shortCovered(words: string): string {
  return /^\d+ of \d+/.exec(words)?.[0] ?? 'none due'
}

function buildList(recordingId: string, work: WorkInput, words: ClassWords, open: Segment | null): ListPart {
  const rows = work.sheet.segments.map((segment) => listRow(segment, recordingId, work, words, open))
  const isDeclined = ({ look }: ListRow): boolean => look === 'off'
  const proposed = rows.filter(({ look }) => look === 'half').length
  const shown = rows.filter((row) => !isDeclined(row))
  return {
    count: formatCount(shown.length, 'exercise'),
    rows: shown,
    declined: rows.filter(isDeclined),
    open: proposed === 0 ? 'All are decided.' : `${formatCount(proposed, 'exercise')} still proposed`,
  }
}

function listRow(
  segment: Segment,
  recordingId: string,
  work: WorkInput,
  words: ClassWords,
  open: Segment | null,
): ListRow {
  const { id, state, use, spans, prescription } = segment
  const stops = work.report.findings.filter(({ severity, segmentId }) => severity === 'stop' && segmentId === id).length
  return {
    id,
    name: segment.exercise.name,
    href: placeAddress(recordingId, id, spans[0]?.startMs ?? null),
    times: timesOf(segment),
    startMs: spans[0]?.startMs ?? -1,
    endMs: spans[0]?.endMs ?? -1,
    dose: prescription && prescription.state !== 'declined' ? words.dose(prescription).text : 'no dose',
    isOpen: id === open?.id,
    look: { proposed: 'half', accepted: 'done', declined: 'off' }[state],
    stateWords: state,
    use: { lesson: '', keep: 'kept for search', 'leave-out': 'left out' }[use],
    stops: stops === 0 ? '' : formatCount(stops, 'stop'),
  }
}

/** The rule of exercises that come from a plan (core/draft/draft-plan.ts). */
const PLAN_RULE = 'class-plan'

function buildPlan({ segments, durationMs }: LogSheet): PlanPart {
  const shown = segments.filter(({ state }) => state !== 'declined')
  const unplaced = shown.filter(({ spans }) => spans.length === 0)
  // one that was read from what is said may well last to the end of the film, and was not begun by a press
  const isPlaced = ({ ruleId }: Segment): boolean => ruleId === null || ruleId === PLAN_RULE
  const begun = shown.filter((one) => one.spans[0]?.endMs === durationMs && isPlaced(one)).at(-1)
  return {
    ids: unplaced.map(({ id }) => id).join(' '),
    names: unplaced.map(({ exercise }) => exercise.name),
    openId: begun?.id ?? '',
    openStartMs: begun?.spans[0]?.startMs ?? 0,
    durationMs,
    count: `${String(shown.length - unplaced.length)} of ${formatCount(shown.length, 'exercise')} placed`,
  }
}

function buildAbout(sheet: LogSheet, words: ClassWords): AboutPart {
  return {
    title: sheet.title,
    audience: Object.entries(AUDIENCE_NAMES).map(([value, label]) => ({
      ...{ value, label, chosen: sheet.audience.some((one) => one === value) },
    })),
    music: optionsOf(MUSIC_NAMES, sheet.music, 'Nobody has said'),
    sections: sectionLines(sheet.sections),
    mentioned: sheet.mentioned.join(', '),
    cautions: cautionParts(sheet.classCautions, words),
    attach: sheet.classCautions.map(({ hazard, text, atMs }) => ({
      ...{ value: JSON.stringify({ hazard, text, atMs }), words: text },
    })),
    lessons: lessonChoices(sheet, null),
  }
}

/** "4:30 Standing" a line: what the field shows, and what it is compared with when it comes back. */
export function sectionLines(sections: LogSheet['sections']): string {
  const clock = (ms: Ms): string => (ms % 1000 === 0 ? formatClock(ms) : formatClockMs(ms))
  return sections.map(({ startMs, title }) => `${clock(startMs)} ${title}`).join('\n')
}
