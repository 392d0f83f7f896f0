/** What an edit may not do: stretches without length, past the end, over each other or outside the teaching; ids used twice. */
import type { LogSheet, Prescription, Ref, Segment } from '../../shared/log-sheet.ts'
import { formatClockMs, overlapMs } from '../../shared/time.ts'
import type { Stretch } from '../../shared/time.ts'
import { everyDose, notThere, refuse } from './change-sheet.ts'

/** A stretch must have length and lie within the recording. @throws AppError edit-invalid */
export function checkStretch(what: string, { startMs, endMs }: Stretch, durationMs: number): void {
  checkMoment(what, startMs, durationMs)
  checkMoment(what, endMs, durationMs)
  if (endMs <= startMs) {
    throw refuse(
      `${what} must end after it starts; ${clock({ startMs, endMs })} has no length. Move its start or its end.`,
    )
  }
}

/** A moment must be whole milliseconds within the recording. @throws AppError edit-invalid */
export function checkMoment(what: string, ms: number, durationMs: number): void {
  if (!Number.isInteger(ms) || ms < 0) {
    throw refuse(`${what} is given the time ${ms}. Give whole milliseconds from the start of the recording.`)
  }
  if (ms > durationMs) {
    throw refuse(
      `${what} reaches ${formatClockMs(ms)}, and the recording ends at ${formatClockMs(durationMs)}. Choose a time within it.`,
    )
  }
}

/** No stretch of the list may share time with another. @throws AppError edit-invalid */
export function checkApart(what: string, list: readonly Stretch[]): void {
  const sorted = [...list].sort((a, b) => a.startMs - b.startMs)
  sorted.forEach((one, index) => {
    const before = sorted[index - 1]
    if (before && overlapMs(before, one) > 0) {
      throw refuse(`${what} ${clock(before)} and ${clock(one)} overlap. Make them one, or move an edge.`)
    }
  })
}

/** A cut-out must take something out of a span. @throws AppError edit-invalid */
export function checkTouchesSpan(cutOut: Stretch, spans: readonly Stretch[]): void {
  if (spans.some((span) => overlapMs(span, cutOut) > 0)) return
  throw refuse(`The cut-out ${clock(cutOut)} lies outside every span of this exercise. Choose a stretch inside one.`)
}

/** A loop must lie inside one span. @throws AppError edit-invalid */
export function checkInsideSpan(loop: Stretch, spans: readonly Stretch[]): void {
  if (spans.some((span) => holds(span, loop))) return
  throw refuse(`The loop ${clock(loop)} does not lie inside one span of this exercise. Choose repetitions inside one.`)
}

/** True when the inner stretch lies wholly inside the outer one. */
export function holds(outer: Stretch, inner: Stretch): boolean {
  return outer.startMs <= inner.startMs && inner.endMs <= outer.endMs
}

/** A segment id must be new. @throws AppError edit-invalid */
export function checkNewSegmentId(sheet: LogSheet, id: string): void {
  if (id === '') throw refuse('An exercise needs an id. Hand in a new one.')
  if (sheet.segments.some((one) => one.id === id)) {
    throw refuse(`The id "${id}" belongs to another exercise already. Hand in a new one.`)
  }
}

/** A cue id must be new on the whole sheet. @throws AppError edit-invalid */
export function checkNewCueId(sheet: LogSheet, id: string): void {
  if (id === '') throw refuse('A cue needs an id. Hand in a new one.')
  if (sheet.segments.some((one) => one.cues.some((cue) => cue.id === id))) {
    throw refuse(`The id "${id}" belongs to another cue already. Hand in a new one.`)
  }
}

/** A dose may be grouped with other segments of the sheet only. @throws AppError edit-target, edit-invalid */
export function checkGroups(sheet: LogSheet, segmentId: string, dose: Prescription): void {
  for (const id of everyDose(dose).flatMap((one) => one.groupWith)) {
    if (id === segmentId) throw refuse('An exercise cannot be grouped with itself. Name the others of the group.')
    if (!sheet.segments.some((one) => one.id === id)) throw notThere(`The dose is grouped with "${id}", which is gone.`)
  }
}

/** An easier or harder option may point at other segments of the sheet only. @throws AppError edit-target, edit-invalid */
export function checkRefs(sheet: LogSheet, segmentId: string, refs: readonly Ref[]): void {
  for (const ref of refs) {
    if (ref.segmentId === segmentId) throw refuse('An exercise is no easier or harder option of itself. Name another.')
    if (ref.segmentId !== undefined && !sheet.segments.some((one) => one.id === ref.segmentId)) {
      throw notThere(`The easier or harder option "${ref.segmentId}" is gone.`)
    }
  }
}

/** Every stretch of a whole segment, as for one that is added. @throws AppError edit-invalid */
export function checkStretches(segment: Segment, durationMs: number): void {
  segment.spans.forEach((span) => checkStretch('A span', span, durationMs))
  checkApart('The spans', segment.spans)
  segment.cutOuts.forEach((cut) => checkStretch('A cut-out', cut, durationMs))
  checkApart('The cut-outs', segment.cutOuts)
  segment.cutOuts.forEach((cut) => checkTouchesSpan(cut, segment.spans))
  if (segment.loop) checkStretch('A loop', segment.loop, durationMs)
  if (segment.loop) checkInsideSpan(segment.loop, segment.spans)
  segment.cues.forEach((cue) => checkStretch('A cue', cue, durationMs))
}

function clock({ startMs, endMs }: Stretch): string {
  return `${formatClockMs(startMs)} to ${formatClockMs(endMs)}`
}
