/** Splits a segment in two at a moment: each mark goes to the side where it starts. */
import type { EditOf } from '../../shared/edit.ts'
import type { Caution, LogSheet, Segment, Span } from '../../shared/log-sheet.ts'
import { formatClockMs } from '../../shared/time.ts'
import type { Stretch } from '../../shared/time.ts'
import { findSegment, refuse, segmentOfPerson, union } from './change-sheet.ts'
import { checkMoment, checkNewSegmentId } from './check-edit.ts'
import { withOneInClip } from './edit-spans.ts'

/**
 * The earlier part keeps the id, the waivers and, unless said otherwise, the dose.
 * A caution written on the lesson stays on both parts: it is safer twice than lost.
 * A loop across the moment is taken away. A new name leaves other names and catalogue entry behind.
 * @throws AppError edit-target, edit-invalid
 */
export function splitSegment(sheet: LogSheet, edit: EditOf<'split-segment'>): LogSheet {
  const { segmentId, atMs, newId, newName, doseTo } = edit
  const segment = findSegment(sheet, segmentId)
  checkNewSegmentId(sheet, newId)
  checkMoment('The split', atMs, sheet.durationMs)
  const spans = splitStretches(segment.spans, atMs)
  if (spans.before.length === 0 || spans.after.length === 0) {
    throw refuse(
      `${formatClockMs(atMs)} leaves nothing on one side of ${segment.exercise.name}. Split inside its teaching.`,
    )
  }
  const cutOuts = splitStretches(segment.cutOuts, atMs)
  const { loop } = segment
  const common = segmentOfPerson(segment, 'spans')
  // The side left without the dose was left so by a person; drafting again must not bring it back there.
  const doseless = segment.prescription ? union(common.setByPerson, ['prescription']) : common.setByPerson
  const first: Segment = {
    ...common,
    spans: withOneInClip(spans.before),
    cutOuts: cutOuts.before,
    loop: loop && loop.endMs <= atMs ? loop : null,
    prescription: doseTo === 'first' ? segment.prescription : null,
    setByPerson: doseTo === 'first' ? common.setByPerson : doseless,
    cues: segment.cues.filter((cue) => cue.startMs < atMs),
    cautions: segment.cautions.filter((caution) => sideOf(caution, atMs) !== 'after'),
    ...heardIn(segment, (one) => one.atMs < atMs),
  }
  const second: Segment = {
    ...common,
    id: newId,
    confidence: null,
    ruleId: null,
    exercise:
      newName === undefined
        ? segment.exercise
        : { ...segment.exercise, name: newName, alsoCalled: [], catalogueId: null },
    spans: withOneInClip(spans.after),
    cutOuts: cutOuts.after,
    loop: loop && loop.startMs >= atMs ? loop : null,
    prescription: doseTo === 'second' ? segment.prescription : null,
    setByPerson: doseTo === 'second' ? common.setByPerson : doseless,
    cues: segment.cues.filter((cue) => cue.startMs >= atMs),
    cautions: segment.cautions.filter((caution) => sideOf(caution, atMs) !== 'before'),
    ...heardIn(segment, (one) => one.atMs >= atMs),
  }
  return { ...sheet, segments: sheet.segments.flatMap((one) => (one.id === segmentId ? [first, second] : [one])) }
}

/** The stretches on each side of a moment, those across it cut in two. */
function splitStretches<One extends Stretch & Partial<Span>>(list: readonly One[], atMs: number) {
  return {
    before: list.flatMap((one) => (one.startMs >= atMs ? [] : [{ ...one, endMs: Math.min(one.endMs, atMs) }])),
    after: list.flatMap((one) => {
      if (one.endMs <= atMs) return []
      if (one.startMs >= atMs) return [one]
      return [{ ...one, startMs: atMs, ...('lockedIn' in one && { lockedIn: false }) }]
    }),
  }
}

/** Counting and sides heard, each where it was said. */
function heardIn(
  { counted, sidesNamed }: Segment,
  isHere: (one: { atMs: number }) => boolean,
): Pick<Segment, 'counted' | 'sidesNamed'> {
  return {
    ...(counted && { counted: counted.filter(isHere) }),
    ...(sidesNamed && { sidesNamed: sidesNamed.filter(isHere) }),
  }
}

function sideOf(caution: Caution, atMs: number): 'before' | 'after' | 'both' {
  if (caution.source === 'written' || caution.atMs === null) return 'both'
  return caution.atMs < atMs ? 'before' : 'after'
}
