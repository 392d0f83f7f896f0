/** Adds, changes and removes the cues of a segment. */
import type { EditOf } from '../../shared/edit.ts'
import type { Cue, LogSheet, Segment } from '../../shared/log-sheet.ts'
import { cameFromDraft, changeSegment, findSegment, notThere, ofPerson, refuse, replaceAt } from './change-sheet.ts'
import { checkNewCueId, checkStretch } from './check-edit.ts'

/** Places the cue by the time it is said. @throws AppError edit-target, edit-invalid */
export function addCue(sheet: LogSheet, { segmentId, cue }: EditOf<'add-cue'>): LogSheet {
  findSegment(sheet, segmentId)
  checkNewCueId(sheet, cue.id)
  checkCue(cue, sheet.durationMs)
  return changeSegment(sheet, segmentId, (segment) => ({ ...segment, cues: inTime(segment.cues, ofPerson(cue)) }))
}

/** @throws AppError edit-target, edit-invalid */
export function changeCue(sheet: LogSheet, edit: EditOf<'change-cue'>): LogSheet {
  return changeSegment(sheet, edit.segmentId, (segment) => {
    const index = cueIndex(segment, edit.cueId)
    const cue = segment.cues[index] as Cue
    const changed: Cue = {
      ...ofPerson(cue),
      kind: edit.kind ?? cue.kind,
      startMs: edit.startMs ?? cue.startMs,
      endMs: edit.endMs ?? cue.endMs,
      text: edit.text ?? cue.text,
    }
    if (edit.kind === undefined && edit.startMs === undefined && edit.endMs === undefined && edit.text === undefined) {
      throw refuse('Nothing to change: give a kind, a time or words.')
    }
    checkCue(changed, sheet.durationMs)
    const cues =
      changed.startMs === cue.startMs
        ? replaceAt(segment.cues, index, changed)
        : inTime(replaceAt(segment.cues, index, null), changed)
    return { ...segment, cues }
  })
}

/** Takes away what a person added; what the draft proposed stays as declined. @throws AppError edit-target */
export function removeCue(sheet: LogSheet, { segmentId, cueId }: EditOf<'remove-cue'>): LogSheet {
  return changeSegment(sheet, segmentId, (segment) => {
    const index = cueIndex(segment, cueId)
    const cue = segment.cues[index] as Cue
    const left: Cue | null = cameFromDraft(cue) ? { ...cue, state: 'declined' } : null
    return { ...segment, cues: replaceAt(segment.cues, index, left) }
  })
}

/** @throws AppError edit-target */
export function cueIndex(segment: Segment, cueId: string): number {
  const index = segment.cues.findIndex((cue) => cue.id === cueId)
  if (index < 0) throw notThere(`${segment.exercise.name} has no cue with the id "${cueId}".`)
  return index
}

function checkCue(cue: Cue, durationMs: number): void {
  checkStretch('A cue', cue, durationMs)
  if (cue.text.trim() === '') throw refuse('A cue needs the words that were said. Type them, or decline the cue.')
}

/** The list with one more, before the first that is said later. */
function inTime(cues: readonly Cue[], added: Cue): Cue[] {
  const at = cues.findIndex((cue) => cue.startMs > added.startMs)
  return at < 0 ? [...cues, added] : [...cues.slice(0, at), added, ...cues.slice(at)]
}
