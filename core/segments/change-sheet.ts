/** The small steps every edit is made of: find a segment, change it, note that a person did. Nothing is changed in place. */
import { AppError } from '../../shared/errors.ts'
import type { Caution, LogSheet, Mark, Prescription, Ref, Segment, Waiver } from '../../shared/log-sheet.ts'

/** A stop because the edit names something that is not there. */
export function notThere(what: string): AppError {
  return new AppError('edit-target', `${what} Load the class again; someone may have changed it meanwhile.`)
}

/** A stop because the edit would break the sheet. The sentence says what to do. */
export function refuse(sentence: string): AppError {
  return new AppError('edit-invalid', sentence)
}

/** @throws AppError edit-target */
export function findSegment(sheet: LogSheet, id: string): Segment {
  const segment = sheet.segments.find((one) => one.id === id)
  if (!segment) throw notThere(`There is no exercise with the id "${id}".`)
  return segment
}

/** The sheet with one segment changed. @throws AppError edit-target */
export function changeSegment(sheet: LogSheet, id: string, change: (segment: Segment) => Segment): LogSheet {
  const changed = change(findSegment(sheet, id))
  return { ...sheet, segments: sheet.segments.map((one) => (one.id === id ? changed : one)) }
}

/** The sheet with some of its own fields set by a person. */
export function setByHand(sheet: LogSheet, fields: Partial<LogSheet>): LogSheet {
  return { ...sheet, ...fields, setByPerson: union(sheet.setByPerson ?? [], Object.keys(fields)) }
}

/** The mark as a person's own: whoever changes a thing stands for it. */
export function ofPerson<Marked extends Mark>(mark: Marked): Marked {
  return { ...mark, origin: 'person', state: 'accepted' }
}

/** The segment as a person's own, with the names of the fields that were set. */
export function segmentOfPerson(segment: Segment, ...fields: (keyof Segment)[]): Segment {
  return { ...ofPerson(segment), setByPerson: union(segment.setByPerson, fields) }
}

/** True when the draft made the mark, even if a person changed it since. */
export function cameFromDraft(mark: Mark): boolean {
  return mark.origin === 'draft' || mark.ruleId !== null
}

/** True when a person set, accepted or declined the mark. */
export function isDecided(mark: Mark): boolean {
  return mark.origin === 'person' || mark.state !== 'proposed'
}

/** The list with one entry replaced, or left out when the entry is null. */
export function replaceAt<Entry>(list: readonly Entry[], index: number, entry: Entry | null): Entry[] {
  return list.flatMap((one, at) => (at !== index ? [one] : entry === null ? [] : [entry]))
}

/** Both lists, each entry once, in order. */
export function union(first: readonly string[], second: readonly string[]): string[] {
  return [...new Set([...first, ...second])]
}

/** The list in order of time; entries that start together keep their order. */
export function byStart<Entry extends { startMs: number }>(list: readonly Entry[]): Entry[] {
  return [...list].sort((a, b) => a.startMs - b.startMs)
}

/** The id, or the id with the first number behind it that nobody uses. */
export function freeId(id: string, used: ReadonlySet<string>): string {
  if (!used.has(id)) return id
  let number = 2
  while (used.has(`${id}-${number}`)) number += 1
  return `${id}-${number}`
}

/** The segments with one more, placed by the time its teaching starts; one without spans goes last. */
export function insertByTime(segments: readonly Segment[], added: Segment): Segment[] {
  const start = added.spans[0]?.startMs ?? Infinity
  const at = segments.findIndex((one) => (one.spans[0]?.startMs ?? Infinity) > start)
  return at < 0 ? [...segments, added] : [...segments.slice(0, at), added, ...segments.slice(at)]
}

/** The sheet with every pointer at a segment turned to another one (null = taken away). Waivers of it are taken away. */
export function redirect(sheet: LogSheet, id: string, toId: string | null): LogSheet {
  return {
    ...sheet,
    segments: sheet.segments.map((segment) => (pointsAt(segment, id) ? redirectIn(segment, id, toId) : segment)),
    waivers: sheet.waivers.some((one) => one.segmentId === id)
      ? sheet.waivers.filter((one) => one.segmentId !== id)
      : sheet.waivers,
  }
}

/** The segment without pointers at another (or at itself). */
export function withoutPointersAt(segment: Segment, id: string): Segment {
  return pointsAt(segment, id) ? redirectIn(segment, id, null) : segment
}

/** True when both name the same finding. */
export function sameWaiver(a: Pick<Waiver, 'ruleId' | 'hazard'>, b: Pick<Waiver, 'ruleId' | 'hazard'>): boolean {
  return a.ruleId === b.ruleId && a.hazard === b.hazard
}

/** True when both warn of the same hazard in the same words. */
export function sameCaution(a: Pick<Caution, 'hazard' | 'text'>, b: Pick<Caution, 'hazard' | 'text'>): boolean {
  return a.hazard === b.hazard && a.text === b.text
}

/** Every dose in a dose: itself, those by level and those that follow, at any depth. */
export function everyDose(dose: Prescription): Prescription[] {
  return [dose, ...dose.byLevel.flatMap((level) => everyDose(level.dose)), ...dose.then.flatMap(everyDose)]
}

/** The dose with the same change made at every depth. */
export function mapDose(dose: Prescription, change: (one: Prescription) => Prescription): Prescription {
  return change({
    ...dose,
    byLevel: dose.byLevel.map((level) => ({ ...level, dose: mapDose(level.dose, change) })),
    then: dose.then.map((next) => mapDose(next, change)),
  })
}

function pointsAt(segment: Segment, id: string): boolean {
  return (
    [...segment.easier, ...segment.harder].some((ref) => ref.segmentId === id) ||
    (segment.prescription !== null && everyDose(segment.prescription).some((dose) => dose.groupWith.includes(id)))
  )
}

function redirectIn(segment: Segment, id: string, toId: string | null): Segment {
  const to = toId === segment.id ? null : toId
  const groups = (dose: Prescription): Prescription => ({
    ...dose,
    groupWith: union(
      [],
      dose.groupWith.flatMap((one) => (one !== id ? [one] : to === null ? [] : [to])),
    ),
  })
  return {
    ...segment,
    easier: segment.easier.flatMap((ref) => redirectRef(ref, id, to)),
    harder: segment.harder.flatMap((ref) => redirectRef(ref, id, to)),
    prescription: segment.prescription && mapDose(segment.prescription, groups),
  }
}

/** A pointer that loses its segment stays when it says something else too. */
function redirectRef(ref: Ref, id: string, toId: string | null): Ref[] {
  if (ref.segmentId !== id) return [ref]
  if (toId !== null) return [{ ...ref, segmentId: toId }]
  const { segmentId: _gone, ...rest } = ref
  return rest.lessonId !== undefined || rest.text !== undefined ? [rest] : []
}
