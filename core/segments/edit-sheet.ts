/** Applies one edit to a log sheet and hands back the sheet and the edit that undoes it. */
import type { Edit, EditOf } from '../../shared/edit.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { setByHand } from './change-sheet.ts'
import { addCaution, attachClassCaution, changeCaution, removeCaution } from './edit-cautions.ts'
import { setSections, setSound, setSource } from './edit-class.ts'
import { addCue, changeCue, removeCue } from './edit-cues.ts'
import { addSegment, removeSegment, renameSegment, setDose, setFields, setUse } from './edit-segments.ts'
import { addCutOut, addSpan, moveEdge, removeCutOut, removeSpan, setInClip, setLoop } from './edit-spans.ts'
import { acceptAbove, setStates } from './edit-states.ts'
import { unwaive, waive } from './edit-waivers.ts'
import { joinSegments } from './join-segments.ts'
import { buildInverse, restore } from './restore-sheet.ts'
import { splitSegment } from './split-segment.ts'

type Apply<Name extends Edit['op']> = (sheet: LogSheet, edit: EditOf<Name>) => LogSheet

/** One function for each edit; the compiler finds what is missing. */
const APPLY: { readonly [Name in Edit['op']]: Apply<Name> } = {
  'add-segment': addSegment,
  'remove-segment': removeSegment,
  rename: renameSegment,
  'split-segment': splitSegment,
  'join-segments': joinSegments,
  'set-use': setUse,
  'set-fields': setFields,
  'move-edge': moveEdge,
  'add-span': addSpan,
  'remove-span': removeSpan,
  'set-in-clip': setInClip,
  'add-cut-out': addCutOut,
  'remove-cut-out': removeCutOut,
  'set-loop': setLoop,
  'set-dose': setDose,
  'add-cue': addCue,
  'change-cue': changeCue,
  'remove-cue': removeCue,
  'add-caution': addCaution,
  'change-caution': changeCaution,
  'remove-caution': removeCaution,
  'attach-class-caution': attachClassCaution,
  accept: (sheet, { marks }) => setStates(sheet, marks, 'accepted'),
  decline: (sheet, { marks }) => setStates(sheet, marks, 'declined'),
  propose: (sheet, { marks }) => setStates(sheet, marks, 'proposed'),
  'accept-above': acceptAbove,
  waive,
  unwaive,
  'set-title': (sheet, { title }) => setByHand(sheet, { title }),
  'set-audience': (sheet, { audience }) => setByHand(sheet, { audience }),
  'set-sections': setSections,
  'set-music': (sheet, { music }) => setByHand(sheet, { music }),
  'set-people': (sheet, { people }) => setByHand(sheet, { people }),
  'set-source': setSource,
  'set-sound': setSound,
  'set-mentioned': (sheet, { mentioned }) => setByHand(sheet, { mentioned }),
  restore,
}

/**
 * Applies an edit. The sheet handed in is never changed. A change by hand makes the mark a person's own
 * (origin person, state accepted) and notes the field in setByPerson.
 * @returns the new sheet, and the edit that turns it back into the old one.
 * @throws AppError edit-target (names what is gone), edit-invalid (would break the sheet).
 */
export function applyEdit(sheet: LogSheet, edit: Edit): { sheet: LogSheet; inverse: Edit } {
  const apply = APPLY[edit.op] as Apply<Edit['op']>
  const after = apply(sheet, edit)
  return { sheet: after, inverse: buildInverse(sheet, after) }
}
