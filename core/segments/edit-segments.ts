/** Adds, removes and renames segments, and sets those of their fields that stand alone. */
import type { EditOf } from '../../shared/edit.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import {
  cameFromDraft,
  changeSegment,
  findSegment,
  insertByTime,
  ofPerson,
  redirect,
  refuse,
  segmentOfPerson,
  union,
} from './change-sheet.ts'
import { checkGroups, checkNewCueId, checkNewSegmentId, checkRefs, checkStretches } from './check-edit.ts'

/** Places the segment by the time its teaching starts. @throws AppError edit-invalid, edit-target */
export function addSegment(sheet: LogSheet, { segment }: EditOf<'add-segment'>): LogSheet {
  checkNewSegmentId(sheet, segment.id)
  checkName(segment.exercise.name)
  checkStretches(segment, sheet.durationMs)
  segment.cues.forEach((cue, index) => {
    checkNewCueId(sheet, cue.id)
    if (segment.cues.findIndex((one) => one.id === cue.id) < index) {
      throw refuse(`Two cues have the id "${cue.id}". Give each an id of its own.`)
    }
  })
  if (segment.prescription) checkGroups(sheet, segment.id, segment.prescription)
  checkRefs(sheet, segment.id, [...segment.easier, ...segment.harder])
  return { ...sheet, segments: insertByTime(sheet.segments, ofPerson(segment)) }
}

/** Takes away what a person added; what the draft proposed stays as declined. @throws AppError edit-target */
export function removeSegment(sheet: LogSheet, { segmentId }: EditOf<'remove-segment'>): LogSheet {
  if (cameFromDraft(findSegment(sheet, segmentId))) {
    return changeSegment(sheet, segmentId, (segment) => ({ ...segment, state: 'declined' }))
  }
  const without = { ...sheet, segments: sheet.segments.filter((one) => one.id !== segmentId) }
  return redirect(without, segmentId, null)
}

/** Sets the name, the other names or the catalogue entry. @throws AppError edit-target, edit-invalid */
export function renameSegment(sheet: LogSheet, edit: EditOf<'rename'>): LogSheet {
  const { name, alsoCalled, catalogueId } = edit
  if (name === undefined && alsoCalled === undefined && catalogueId === undefined) {
    throw refuse('Nothing to rename: give a name, other names or a catalogue entry.')
  }
  if (name !== undefined) checkName(name)
  return changeSegment(sheet, edit.segmentId, (segment) => ({
    ...segmentOfPerson(segment, 'exercise'),
    exercise: {
      ...segment.exercise,
      ...(name !== undefined && { name }),
      ...(alsoCalled !== undefined && { alsoCalled }),
      ...(catalogueId !== undefined && { catalogueId }),
    },
  }))
}

/** @throws AppError edit-target */
export function setUse(sheet: LogSheet, { segmentId, use }: EditOf<'set-use'>): LogSheet {
  return changeSegment(sheet, segmentId, (segment) => ({ ...segmentOfPerson(segment, 'use'), use }))
}

/** Sets what is given and leaves the rest. @throws AppError edit-target, edit-invalid */
export function setFields(sheet: LogSheet, { segmentId, fields }: EditOf<'set-fields'>): LogSheet {
  const given = Object.entries(fields).filter(([, value]) => value !== undefined)
  if (given.length === 0) throw refuse('Nothing to set: give at least one field.')
  checkRefs(sheet, segmentId, [...(fields.easier ?? []), ...(fields.harder ?? [])])
  return changeSegment(sheet, segmentId, (segment) => ({
    ...segmentOfPerson(segment, ...given.map(([name]) => name as keyof Segment)),
    ...(Object.fromEntries(given) as Partial<Segment>),
  }))
}

/** Sets or takes away the dose. @throws AppError edit-target, edit-invalid */
export function setDose(sheet: LogSheet, { segmentId, dose }: EditOf<'set-dose'>): LogSheet {
  if (dose) checkGroups(sheet, segmentId, dose)
  return changeSegment(sheet, segmentId, (segment) => ({
    ...segment,
    prescription: dose && ofPerson(dose),
    setByPerson: union(segment.setByPerson, ['prescription']),
  }))
}

function checkName(name: string): void {
  if (name.trim() === '') throw refuse('An exercise needs a name. Type one.')
}
