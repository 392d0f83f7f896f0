/** Waives a finding of a segment with a reason, and takes a waiver back. */
import type { EditOf } from '../../shared/edit.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { findSegment, notThere, refuse, sameWaiver } from './change-sheet.ts'

/** @throws AppError edit-target, edit-invalid */
export function waive(sheet: LogSheet, { waiver }: EditOf<'waive'>): LogSheet {
  const { exercise } = findSegment(sheet, waiver.segmentId)
  if (waiver.reason.trim() === '') throw refuse('A waiver needs a reason. Say why the finding does not hold here.')
  if (sheet.waivers.some((one) => one.segmentId === waiver.segmentId && sameWaiver(one, waiver))) {
    throw refuse(
      `This finding of ${exercise.name} is waived already. Take that waiver back first to change its reason.`,
    )
  }
  return { ...sheet, waivers: [...sheet.waivers, waiver] }
}

/** @throws AppError edit-target */
export function unwaive(sheet: LogSheet, edit: EditOf<'unwaive'>): LogSheet {
  const waivers = sheet.waivers.filter((one) => one.segmentId !== edit.segmentId || !sameWaiver(one, edit))
  if (waivers.length === sheet.waivers.length) throw notThere('There is no such waiver.')
  return { ...sheet, waivers }
}
