/** Adds, changes and removes cautions of a segment or of the class, and writes one said elsewhere on many lessons. */
import type { EditOf } from '../../shared/edit.ts'
import type { Caution, LogSheet } from '../../shared/log-sheet.ts'
import {
  cameFromDraft,
  changeSegment,
  findSegment,
  notThere,
  ofPerson,
  refuse,
  replaceAt,
  sameCaution,
} from './change-sheet.ts'
import { checkMoment } from './check-edit.ts'

/** Where a caution stands: on a segment (null = on the class), at a place in the list, for a hazard. */
export interface CautionPlace {
  segmentId: string | null
  index: number
  hazard: string
}

/** @throws AppError edit-target, edit-invalid */
export function addCaution(sheet: LogSheet, { segmentId, caution }: EditOf<'add-caution'>): LogSheet {
  checkCaution(caution, sheet.durationMs)
  const added = ofPerson(segmentId === null ? { ...caution, scope: 'class' as const } : caution)
  return changeCautions(sheet, segmentId, (cautions) => [...cautions, added])
}

/** @throws AppError edit-target, edit-invalid */
export function changeCaution(sheet: LogSheet, edit: EditOf<'change-caution'>): LogSheet {
  const { newHazard, text, atMs, source } = edit
  if (newHazard === undefined && text === undefined && atMs === undefined && source === undefined) {
    throw refuse('Nothing to change: give a hazard, words, a time or a source.')
  }
  return changeCautionAt(sheet, edit, (caution) => {
    const changed: Caution = {
      ...ofPerson(caution),
      hazard: newHazard ?? caution.hazard,
      text: text ?? caution.text,
      atMs: atMs === undefined ? caution.atMs : atMs,
      source: source ?? caution.source,
    }
    checkCaution(changed, sheet.durationMs)
    return changed
  })
}

/** Takes away what a person added; what the draft proposed stays as declined. @throws AppError edit-target */
export function removeCaution(sheet: LogSheet, edit: EditOf<'remove-caution'>): LogSheet {
  return changeCautionAt(sheet, edit, (caution) =>
    cameFromDraft(caution) ? { ...caution, state: 'declined' as const } : null,
  )
}

/**
 * Writes the caution on each lesson, with its words and where they were said.
 * A lesson that has the same words written for the same hazard is left as it is.
 * @throws AppError edit-target, edit-invalid
 */
export function attachClassCaution(sheet: LogSheet, edit: EditOf<'attach-class-caution'>): LogSheet {
  const { segmentIds, hazard, text, atMs } = edit
  const added: Caution = {
    origin: 'person',
    state: 'accepted',
    confidence: null,
    ruleId: null,
    hazard,
    scope: 'class',
    source: 'written',
    text,
    atMs,
  }
  checkCaution(added, sheet.durationMs)
  return segmentIds.reduce((current, id) => {
    const has = findSegment(current, id).cautions.some(
      (one) => one.source === 'written' && one.state !== 'declined' && sameCaution(one, added),
    )
    return has ? current : changeCautions(current, id, (cautions) => [...cautions, added])
  }, sheet)
}

/** Changes one caution; null takes it away. @throws AppError edit-target */
export function changeCautionAt(
  sheet: LogSheet,
  { segmentId, index, hazard }: CautionPlace,
  change: (caution: Caution) => Caution | null,
): LogSheet {
  return changeCautions(sheet, segmentId, (cautions) => {
    const caution = cautions[index]
    if (caution?.hazard !== hazard) throw notThere(`Caution number ${index + 1} is not the one for "${hazard}".`)
    return replaceAt(cautions, index, change(caution))
  })
}

function changeCautions(
  sheet: LogSheet,
  segmentId: string | null,
  change: (cautions: readonly Caution[]) => Caution[],
): LogSheet {
  if (segmentId === null) return { ...sheet, classCautions: change(sheet.classCautions) }
  return changeSegment(sheet, segmentId, (segment) => ({ ...segment, cautions: change(segment.cautions) }))
}

function checkCaution(caution: Caution, durationMs: number): void {
  if (caution.text.trim() === '') throw refuse('A caution needs words. Type what a member should know.')
  if (caution.atMs !== null) checkMoment('A caution', caution.atMs, durationMs)
}
