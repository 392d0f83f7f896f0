/** The opened exercise on the class page: all of it that the log sheet holds, ready to be changed. */
import type { LogSheet, Prescription, Ref, Segment } from '../../shared/log-sheet.ts'
import { formatClock, formatClockMs } from '../../shared/time.ts'
import type { Stretch } from '../../shared/time.ts'
import { optionsOf, placeAddress, timesOf } from './class-input.ts'
import type { ClassWords, Option, WorkInput } from './class-input.ts'
import { cautionParts, cueParts, KIND_NAMES, lessonChoices, needParts, statePart } from './class-marks.ts'
import type { CautionPart, CuePart, NeedPart, StatePart } from './class-marks.ts'
import { formatCount, upperFirst } from './format.ts'
import { nameOf, POSITION_NAMES } from './names.ts'
import { doseStrip } from './pictures/draw-dose-strip.ts'

export interface SegmentPart {
  id: string
  name: string
  alsoCalled: string
  times: string
  state: StatePart
  /** Marks that nobody has decided yet, in words; '' = none. */
  open: string
  uses: Option[]
  findings: { kind: string; message: string }[]
  dose: DosePart & { state: StatePart | null; heard: { words: string; clock: string; href: string; startMs: number }[] }
  needsWords: string
  needs: NeedPart[]
  cautions: CautionPart[]
  hazards: Option[]
  lessons: { id: string; name: string; times: string }[]
  spans: SpanPart[]
  nudges: { by: number; label: string; name: string }[]
  cutOuts: { index: number; words: string; why: string; href: string; startMs: number }[]
  loop: { start: string; end: string }
  cuesWords: string
  cues: CuePart[]
  kinds: Option[]
  equipment: string
  positions: Option[]
  views: Option[]
  mirrored: Option[]
  sides: Option[]
  easier: string
  harder: string
  /** The exercise after this one, to be joined with it; '' = none. */
  next: { id: string; name: string }
}

/** A dose as it is read: the strip, the words, the doubts. */
export interface DosePart {
  text: string
  strip: string
  spoken: string
  /** How long it takes and what it comes to; '' = cannot be told. */
  totals: string
  why: readonly string[]
}

export interface SpanPart {
  index: number
  name: string
  inClip: boolean
  length: string
  canRemove: boolean
  edges: { edge: 'start' | 'end'; label: string; at: string; ms: number; href: string }[]
}

const USE_NAMES = { lesson: 'A lesson', keep: 'Keep for search', 'leave-out': 'Leave out' }
const VIEW_NAMES = { front: 'From the front', back: 'From the back', side: 'From the side' }
const SIDE_NAMES = { left: 'Left', right: 'Right', both: 'Both' }
const MIRRORED_NAMES = { yes: 'Mirrored', no: 'Not mirrored' }

/** @param frameMs length of one frame of the film, in ms */
export function buildSegmentPart(
  segment: Segment,
  work: WorkInput,
  words: ClassWords,
  { recordingId, frameMs }: { recordingId: string; frameMs: number },
): SegmentPart {
  const { sheet } = work
  const needs = needParts(segment, work, words)
  const at = (ms: number): string => placeAddress(recordingId, segment.id, ms)
  const shown = sheet.segments.filter(({ state }) => state !== 'declined')
  const next = shown[shown.findIndex(({ id }) => id === segment.id) + 1]
  return {
    id: segment.id,
    name: segment.exercise.name,
    alsoCalled: segment.exercise.alsoCalled.join(', '),
    times: timesOf(segment),
    state: statePart(segment),
    open: openWords(segment),
    uses: optionsOf(USE_NAMES, segment.use),
    findings: work.report.findings
      .filter(({ segmentId, hazard }) => segmentId === segment.id && (hazard ?? null) === null)
      .map(({ severity, message }) => ({ kind: severity, message: withoutName(message, segment) })),
    dose: {
      ...buildDosePart(segment.prescription, words),
      state: segment.prescription && statePart(segment.prescription),
      heard: (segment.prescription?.said ?? []).map(({ text, atMs }) => ({
        ...{ words: text, clock: formatClock(atMs), href: at(atMs), startMs: atMs },
      })),
    },
    needsWords: needsWords(needs, segment),
    needs,
    cautions: cautionParts(segment.cautions, words),
    hazards: optionsOf(
      Object.fromEntries(words.hazards.map(({ slug, name }) => [slug, upperFirst(name)])),
      null,
      'Something else',
    ),
    lessons: lessonChoices(sheet, segment.id),
    spans: segment.spans.map((span, index) => ({
      index,
      name: index === 0 ? 'Main teaching' : `Returns to it, ${formatClock(span.startMs)}`,
      inClip: span.inClip,
      length: formatClock(span.endMs - span.startMs),
      canRemove: segment.spans.length > 1,
      edges: [
        { edge: 'start', label: 'In', at: formatClockMs(span.startMs), ms: span.startMs, href: at(span.startMs) },
        { edge: 'end', label: 'Out', at: formatClockMs(span.endMs), ms: span.endMs, href: at(span.endMs) },
      ],
    })),
    nudges: nudgesOf(frameMs),
    cutOuts: segment.cutOuts.map((cut, index) => ({
      ...{ index, words: stretchWords(cut), why: cut.why, href: at(cut.startMs), startMs: cut.startMs },
    })),
    loop: segment.loop
      ? { start: formatClockMs(segment.loop.startMs), end: formatClockMs(segment.loop.endMs) }
      : { start: '', end: '' },
    cuesWords: formatCount(segment.cues.filter(({ state }) => state !== 'declined').length, 'cue'),
    cues: cueParts(segment, recordingId),
    kinds: optionsOf(KIND_NAMES, 'execution'),
    equipment: segment.equipment.join(', '),
    positions: positionsOf(segment, words),
    views: optionsOf(VIEW_NAMES, segment.view, 'Not said'),
    mirrored: optionsOf(MIRRORED_NAMES, mirroredWord(segment), 'Not said'),
    sides: optionsOf(SIDE_NAMES, segment.sideShown, 'Not said'),
    easier: segment.easier.map((ref) => refWords(ref, sheet)).join('\n'),
    harder: segment.harder.map((ref) => refWords(ref, sheet)).join('\n'),
    next: next ? { id: next.id, name: next.exercise.name } : { id: '', name: '' },
  }
}

export function buildDosePart(dose: Prescription | null, words: ClassWords): DosePart {
  const { text, spoken, totals, assumed } = dose
    ? words.dose(dose)
    : { text: '', spoken: '', totals: '', assumed: [] as readonly string[] }
  return {
    text,
    strip: doseStrip(dose, { size: 'card', words: '' }),
    spoken: dose ? spoken : 'No dose is set.',
    totals: totals === '' || assumed.length === 0 ? totals : `${totals} Taken: ${assumed.map(withoutStop).join('; ')}.`,
    why: dose?.why ?? [],
  }
}

function withoutStop(sentence: string): string {
  return sentence.replace(/\.$/, '').replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase())
}

/** Both directions, one frame and a tenth of a second. */
function nudgesOf(frameMs: number): SegmentPart['nudges'] {
  const frame = Math.max(1, Math.round(frameMs))
  return [
    { by: -100, label: '−0.1 s', name: 'a tenth of a second earlier' },
    { by: -frame, label: '−1 f', name: 'one frame earlier' },
    { by: frame, label: '+1 f', name: 'one frame later' },
    { by: 100, label: '+0.1 s', name: 'a tenth of a second later' },
  ]
}

function openWords({ state, prescription, cues, cautions }: Segment): string {
  const marks = [{ state }, ...(prescription ? [prescription] : []), ...cues, ...cautions]
  const count = marks.filter((mark) => mark.state === 'proposed').length
  return count === 0 ? '' : formatCount(count, 'mark')
}

function needsWords(needs: readonly NeedPart[], { use }: Segment): string {
  if (use !== 'lesson') return 'Not checked: it becomes no lesson.'
  if (needs.length === 0) return 'No caution is required.'
  return `${String(needs.filter(({ mark }) => mark === 'done').length)} of ${String(needs.length)} covered`
}

/** Findings begin with the name of the exercise, which stands above already. */
function withoutName(message: string, { exercise }: Segment): string {
  const start = `${upperFirst(exercise.name)}: `
  return message.startsWith(start) ? upperFirst(message.slice(start.length)) : message
}

function stretchWords({ startMs, endMs }: Stretch): string {
  return `${formatClockMs(startMs)} to ${formatClockMs(endMs)}`
}

function positionsOf({ position }: Segment, words: ClassWords): Option[] {
  const known = [...words.positions, ...(position === null || words.positions.includes(position) ? [] : [position])]
  const names = Object.fromEntries(known.map((word) => [word, upperFirst(nameOf(POSITION_NAMES, word))]))
  return optionsOf(names, position, 'Not said')
}

function mirroredWord({ mirrored }: Segment): string | null {
  if (mirrored === null) return null
  return mirrored ? 'yes' : 'no'
}

function refWords(ref: Ref, sheet: LogSheet): string {
  const other = sheet.segments.find(({ id }) => id === ref.segmentId)
  return ref.text ?? other?.exercise.name ?? `lesson ${ref.lessonId ?? ''}`
}
