/** Moves, adds and removes spans, cut-outs and the loop of a segment. */
import type { EditOf } from '../../shared/edit.ts'
import type { LogSheet, Segment, Span } from '../../shared/log-sheet.ts'
import { overlapMs } from '../../shared/time.ts'
import { byStart, changeSegment, notThere, replaceAt, segmentOfPerson } from './change-sheet.ts'
import { checkApart, checkInsideSpan, checkStretch, checkTouchesSpan, holds } from './check-edit.ts'

/**
 * Moves one edge of a span; lock holds or frees its in-point.
 * Cut-outs and a loop that no longer lie in a span are taken away with the stretch they marked.
 * @throws AppError edit-target, edit-invalid
 */
export function moveEdge(sheet: LogSheet, edit: EditOf<'move-edge'>): LogSheet {
  return changeSegment(sheet, edit.segmentId, (segment) => {
    const span = spanAt(segment, edit.span)
    const moved: Span = {
      ...span,
      [edit.edge === 'start' ? 'startMs' : 'endMs']: edit.toMs,
      ...(edit.lock !== undefined && { lockedIn: edit.lock }),
    }
    checkStretch('A span', moved, sheet.durationMs)
    const spans = replaceAt(segment.spans, edit.span, moved)
    checkApart('The spans', spans)
    return withSpans(segment, spans)
  })
}

/** Adds a further stretch of teaching; it goes behind the others, so that the first stays the main one. @throws AppError edit-target, edit-invalid */
export function addSpan(sheet: LogSheet, edit: EditOf<'add-span'>): LogSheet {
  const { segmentId, startMs, endMs, mediaId } = edit
  return changeSegment(sheet, segmentId, (segment) => {
    const added: Span = {
      startMs,
      endMs,
      inClip: edit.inClip ?? segment.spans.length === 0,
      lockedIn: false,
      ...(mediaId !== undefined && { mediaId }),
    }
    if (mediaId !== undefined && !sheet.media.some((one) => one.id === mediaId)) {
      throw notThere(`There is no file with the id "${mediaId}".`)
    }
    checkStretch('A span', added, sheet.durationMs)
    checkApart('The spans', [...segment.spans, added])
    return withSpans(segment, [...segment.spans, added])
  })
}

/** Removes a span; the next becomes the main one, and takes over its place in the clip. @throws AppError edit-target */
export function removeSpan(sheet: LogSheet, { segmentId, span }: EditOf<'remove-span'>): LogSheet {
  return changeSegment(sheet, segmentId, (segment) => {
    const left = replaceAt(segment.spans, span, null)
    return withSpans(segment, spanAt(segment, span).inClip ? withOneInClip(left) : left)
  })
}

/** @throws AppError edit-target */
export function setInClip(sheet: LogSheet, { segmentId, span, inClip }: EditOf<'set-in-clip'>): LogSheet {
  return changeSegment(sheet, segmentId, (segment) => {
    const changed = { ...spanAt(segment, span), inClip }
    return { ...segmentOfPerson(segment, 'spans'), spans: replaceAt(segment.spans, span, changed) }
  })
}

/** Takes a slip or a retake out of the clip. @throws AppError edit-target, edit-invalid */
export function addCutOut(sheet: LogSheet, { segmentId, startMs, endMs, why }: EditOf<'add-cut-out'>): LogSheet {
  return changeSegment(sheet, segmentId, (segment) => {
    const cutOut = { startMs, endMs, why }
    checkStretch('A cut-out', cutOut, sheet.durationMs)
    checkTouchesSpan(cutOut, segment.spans)
    checkApart('The cut-outs', [...segment.cutOuts, cutOut])
    return { ...segmentOfPerson(segment, 'cutOuts'), cutOuts: byStart([...segment.cutOuts, cutOut]) }
  })
}

/** @throws AppError edit-target */
export function removeCutOut(sheet: LogSheet, { segmentId, cutOut }: EditOf<'remove-cut-out'>): LogSheet {
  return changeSegment(sheet, segmentId, (segment) => {
    if (!segment.cutOuts[cutOut]) throw notThere(`${segment.exercise.name} has no cut-out number ${cutOut + 1}.`)
    return { ...segmentOfPerson(segment, 'cutOuts'), cutOuts: replaceAt(segment.cutOuts, cutOut, null) }
  })
}

/** @throws AppError edit-target, edit-invalid */
export function setLoop(sheet: LogSheet, { segmentId, loop }: EditOf<'set-loop'>): LogSheet {
  return changeSegment(sheet, segmentId, (segment) => {
    if (loop) checkStretch('A loop', loop, sheet.durationMs)
    if (loop) checkInsideSpan(loop, segment.spans)
    return { ...segmentOfPerson(segment, 'loop'), loop }
  })
}

/** The spans with the first in the clip when none is. */
export function withOneInClip(spans: readonly Span[]): Span[] {
  if (spans.some((span) => span.inClip)) return [...spans]
  return spans.map((span, index) => (index === 0 ? { ...span, inClip: true } : span))
}

function withSpans(segment: Segment, spans: Span[]): Segment {
  const cutOuts = segment.cutOuts.filter((cut) => spans.some((span) => overlapMs(span, cut) > 0))
  const { loop } = segment
  return {
    ...segmentOfPerson(segment, 'spans'),
    spans,
    cutOuts: cutOuts.length === segment.cutOuts.length ? segment.cutOuts : cutOuts,
    loop: loop && spans.some((span) => holds(span, loop)) ? loop : null,
  }
}

function spanAt(segment: Segment, index: number): Span {
  const span = segment.spans[index]
  if (!span) throw notThere(`${segment.exercise.name} has no span number ${index + 1}.`)
  return span
}
