/** Undo: finds what an edit changed, writes the former values down as an edit, and puts them back. */
import type { Edit, EditOf } from '../../shared/edit.ts'
import { LogSheet } from '../../shared/log-sheet.ts'
import type { Segment } from '../../shared/log-sheet.ts'
import { insertByTime, notThere, refuse } from './change-sheet.ts'

/** What differs between two states of a sheet: ids of segments, names of the sheet's other fields. */
export interface Touched {
  segmentIds: string[]
  fields: string[]
}

/** What an edit changed. Things it left alone are the same values before and after, so identity decides. */
export function findTouched(before: LogSheet, after: LogSheet): Touched {
  const was = new Map(before.segments.map((one) => [one.id, one]))
  const is = new Map(after.segments.map((one) => [one.id, one]))
  const ids = [...new Set([...was.keys(), ...is.keys()])]
  const names = [...new Set([...Object.keys(before), ...Object.keys(after)])]
  return {
    segmentIds: ids.filter((id) => was.get(id) !== is.get(id)),
    fields: names.filter((name) => name !== 'segments' && fieldOf(before, name) !== fieldOf(after, name)),
  }
}

/** The edit that turns the sheet after into the sheet before. */
export function buildInverse(before: LogSheet, after: LogSheet): Edit {
  const { segmentIds, fields } = findTouched(before, after)
  return {
    op: 'restore',
    put: before.segments.flatMap((segment, index) =>
      segmentIds.includes(segment.id) ? [{ segment, afterId: before.segments[index - 1]?.id ?? null }] : [],
    ),
    remove: segmentIds.filter((id) => !before.segments.some((one) => one.id === id)),
    fields: Object.fromEntries(fields.filter((name) => name in before).map((name) => [name, fieldOf(before, name)])),
    drop: fields.filter((name) => !(name in before)),
  }
}

/** Puts former values back. @throws AppError edit-target, edit-invalid when the result would be no log sheet. */
export function restore(sheet: LogSheet, edit: EditOf<'restore'>): LogSheet {
  for (const id of edit.remove) {
    if (!sheet.segments.some((one) => one.id === id)) throw notThere(`There is no exercise with the id "${id}".`)
  }
  const kept = sheet.segments.filter((one) => !edit.remove.includes(one.id))
  const segments = edit.put.reduce((list, { segment, afterId }) => putSegment(list, segment, afterId), kept)
  const restored: Record<string, unknown> = { ...sheet, ...edit.fields, segments }
  for (const name of edit.drop) delete restored[name]
  const result = LogSheet.safeParse(restored)
  if (!result.success) throw refuse('What would be put back is no log sheet. Undo another edit.')
  return restored as LogSheet
}

function putSegment(list: readonly Segment[], segment: Segment, afterId: string | null): Segment[] {
  if (list.some((one) => one.id === segment.id)) return list.map((one) => (one.id === segment.id ? segment : one))
  if (afterId === null) return [segment, ...list]
  const at = list.findIndex((one) => one.id === afterId)
  return at < 0 ? insertByTime(list, segment) : [...list.slice(0, at + 1), segment, ...list.slice(at + 1)]
}

function fieldOf(sheet: LogSheet, name: string): unknown {
  return (sheet as Record<string, unknown>)[name]
}
