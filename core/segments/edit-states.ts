/** Accepts, declines and proposes marks: many at once, or all above a confidence. */
import type { EditOf, MarkRef } from '../../shared/edit.ts'
import type { Cue, LogSheet, Mark, Prescription, Segment } from '../../shared/log-sheet.ts'
import { changeSegment, findSegment, mapDose, notThere, replaceAt } from './change-sheet.ts'
import { changeCautionAt } from './edit-cautions.ts'
import { cueIndex } from './edit-cues.ts'

type State = Mark['state']

/** Sets the state of each mark. Where a mark came from stays as it is; a declined mark stays on the sheet. @throws AppError edit-target */
export function setStates(sheet: LogSheet, marks: readonly MarkRef[], state: State): LogSheet {
  return marks.reduce((current, mark) => setState(current, mark, state), sheet)
}

/** Accepts every proposed mark of at least this confidence; marks without a confidence wait. @throws AppError edit-target */
export function acceptAbove(sheet: LogSheet, { confidence, segmentIds }: EditOf<'accept-above'>): LogSheet {
  const chosen = segmentIds?.map((id) => findSegment(sheet, id).id)
  const accept = <Marked extends Mark>(mark: Marked): Marked =>
    mark.state === 'proposed' && mark.confidence !== null && mark.confidence >= confidence
      ? { ...mark, state: 'accepted' }
      : mark
  const acceptIn = (segment: Segment): Segment => {
    const cues = mapKept(segment.cues, accept)
    const cautions = mapKept(segment.cautions, accept)
    const { prescription } = segment
    const dose =
      prescription && accept(prescription) !== prescription ? doseInState(prescription, 'accepted') : prescription
    const own = accept(segment)
    const same = own === segment && cues === segment.cues && cautions === segment.cautions && dose === prescription
    return same ? segment : { ...own, cues, cautions, prescription: dose }
  }
  return {
    ...sheet,
    segments: sheet.segments.map((segment) => (!chosen || chosen.includes(segment.id) ? acceptIn(segment) : segment)),
    classCautions: chosen ? sheet.classCautions : mapKept(sheet.classCautions, accept),
  }
}

function setState(sheet: LogSheet, ref: MarkRef, state: State): LogSheet {
  switch (ref.mark) {
    case 'segment':
      return changeSegment(sheet, ref.segmentId, (segment) => ({ ...segment, state }))
    case 'dose':
      return changeSegment(sheet, ref.segmentId, (segment) => {
        if (!segment.prescription) throw notThere(`${segment.exercise.name} has no dose.`)
        return { ...segment, prescription: doseInState(segment.prescription, state) }
      })
    case 'cue':
      return changeSegment(sheet, ref.segmentId, (segment) => {
        const index = cueIndex(segment, ref.cueId)
        const cue = segment.cues[index] as Cue
        return { ...segment, cues: replaceAt(segment.cues, index, { ...cue, state }) }
      })
    case 'caution':
      return changeCautionAt(sheet, ref, (caution) => ({ ...caution, state }))
  }
}

/** A dose and all that is in it share one state. */
function doseInState(dose: Prescription, state: State): Prescription {
  return mapDose(dose, (one) => ({ ...one, state }))
}

/** The list changed entry by entry, or the very same list when no entry changed. */
function mapKept<Entry>(list: Entry[], change: (entry: Entry) => Entry): Entry[] {
  const changed = list.map(change)
  return changed.every((entry, index) => entry === list[index]) ? list : changed
}
