/** Drafts the log sheet of a class from what was said: exercises, doses, cues and cautions, all as proposals with their words. */
import { LOG_SHEET_FORMAT, LOG_SHEET_VERSION, LogSheet, Segment } from '../../shared/log-sheet.ts'
import type { Audience, Cue } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import type { ClassPlan, Transcript } from '../../shared/transcript.ts'
import { attachDoses } from './attach-doses.ts'
import type { AttachedDose } from './attach-doses.ts'
import { describeExercise } from './describe-taught.ts'
import { draftPlan } from './draft-plan.ts'
import { findCounts } from './find-counts.ts'
import { findSides, isClassMirrored } from './find-sides.ts'
import { findClassCautions, findSpokenCautions } from './find-cautions.ts'
import { hearAudience } from './hear-audience.ts'
import { boundReturns } from './bound-return.ts'
import { findExercises } from './find-exercises.ts'
import type { Teaching } from './find-exercises.ts'
import type { TextSpan } from './place-spans.ts'
import { findKit } from './find-kit.ts'
import { findSlips } from './find-slips.ts'
import { nameSections } from './name-sections.ts'
import { placeCues } from './place-cues.ts'
import { readSpeech } from './read-speech.ts'
import type { Speech } from './read-speech.ts'

export interface DraftInput {
  transcript: Transcript | ClassPlan
  audience?: readonly Audience[]
  title?: string
  /** Length of the recording where it is known; else the transcript's. */
  durationMs?: Ms | null
  source?: LogSheet['source']
}

/**
 * The draft of a class. The same input gives the same sheet. Every mark has origin `draft`, state `proposed`, a confidence
 * and the id of the rule that made it; every quote is an exact part of one transcript line.
 */
export function draftSheet(input: DraftInput): LogSheet {
  const { transcript } = input
  const durationMs = input.durationMs ?? (transcript.kind === 'timed' ? transcript.durationMs : 0)
  const head = {
    format: LOG_SHEET_FORMAT,
    version: LOG_SHEET_VERSION,
    title: input.title ?? (transcript.kind === 'plan' ? (transcript.title ?? '') : ''),
    language: transcript.kind === 'timed' ? (transcript.language ?? 'en') : 'en',
    durationMs,
    source: input.source ?? null,
    audience: [...(input.audience ?? [])],
  } as const
  if (transcript.kind === 'plan') return LogSheet.parse({ ...head, segments: draftPlan(transcript) })
  if (transcript.lines.length === 0) return LogSheet.parse(head)

  const speech = readSpeech(transcript.lines)
  const kit = findKit(speech.text)
  const sureKit = findKit(speech.text, SURE)
  const { teachings: found, mentioned, namings, blocks, heard: turns } = findExercises(speech, kit)
  const doses = attachDoses(speech, found, namings, blocks)
  const teachings = found.map((teaching) => boundReturns(speech, turns, teaching))
  const nextCueId = counter('cue')
  const starts = teachings.flatMap(({ spans }) => spans.map(({ offset }) => offset)).sort((a, b) => a - b)
  const mirrored = isClassMirrored(
    speech,
    teachings.flatMap(({ spans }) => spans),
  )
  const segments = teachings.map((teaching, index) =>
    buildSegment(speech, teaching, doses[index], {
      id: segmentId(index),
      kit,
      sureKit,
      durationMs,
      nextCueId,
      mirrored,
      starts,
    }),
  )
  const taught = segments.flatMap(({ exercise, spans: [main] }) =>
    main ? [{ name: exercise.name, startMs: main.startMs, endMs: main.endMs }] : [],
  )
  const heard = head.audience.length > 0 ? [] : hearAudience(speech.text)
  return LogSheet.parse({
    ...head,
    ...(heard.length > 0 && { audienceHeard: heard }),
    sections: nameSections(taught, durationMs),
    segments,
    classCautions: findClassCautions(
      speech,
      teachings.flatMap(({ spans }) => spans),
    ),
    mentioned,
  })
}

/** Kit named at least so often is what the class is about. */
const SURE = 4

interface SegmentSetting {
  id: string
  kit: readonly string[]
  /** Kit that is named again and again. */
  sureKit: readonly string[]
  durationMs: Ms
  nextCueId: () => string
  /** Whether the whole class is taught as in a mirror. */
  mirrored: boolean
  /** Where teaching begins, of any exercise, in order. */
  starts: readonly number[]
}

function buildSegment(
  speech: Speech,
  teaching: Teaching,
  attached: AttachedDose | undefined,
  setting: SegmentSetting,
): Segment {
  const [main, ...returns] = teaching.spans.map((span) => timesOf(speech, span, setting.durationMs))
  const spans = [...(main ? [{ ...main, inClip: true }] : []), ...returns.map((span) => ({ ...span, inClip: false }))]
  const cues: Cue[] = placeCues(speech, teaching.spans).map((cue) => ({ ...cue, id: setting.nextCueId() }))
  const counted = findCounts(speech, teaching.spans)
  const sidesNamed = findSides(speech, teaching.spans, setting.starts)
  const sidesInside = sidesNamed.filter(({ atMs }) => spans.some((one) => one.startMs <= atMs && atMs < one.endMs))
  const said = teaching.spans.map((span) => speech.text.slice(span.offset, span.end)).join(' ')
  return Segment.parse({
    id: setting.id,
    origin: 'draft',
    state: 'proposed',
    confidence: teaching.confidence,
    ruleId: teaching.ruleId,
    ...describeExercise(teaching, said, sidesInside, setting.kit, setting.sureKit),
    mirrored: setting.mirrored || sidesNamed.some(({ as }) => as === 'mirrored') ? true : null,
    spans,
    cutOuts: teaching.spans.slice(0, 1).flatMap((span) => findSlips(speech, span)),
    prescription: attached?.dose ? { ...attached.dose, groupWith: attached.groupWith.map(segmentId) } : null,
    cues,
    cautions: findSpokenCautions(speech, teaching.spans),
    ...(counted.length > 0 && { counted }),
    ...(sidesNamed.length > 0 && { sidesNamed }),
  })
}

function timesOf(speech: Speech, span: TextSpan, durationMs: Ms): { startMs: Ms; endMs: Ms } {
  const startMs = speech.timeOf(span.offset)
  const endMs = Math.max(startMs, speech.timeOf(span.end))
  return durationMs > 0
    ? { startMs: Math.min(startMs, durationMs), endMs: Math.min(endMs, durationMs) }
    : { startMs, endMs }
}

function segmentId(index: number): string {
  return `seg-${String(index + 1)}`
}

function counter(prefix: string): () => string {
  let count = 0
  return () => {
    count += 1
    return `${prefix}-${String(count)}`
  }
}
