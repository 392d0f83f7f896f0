/** What each edit is called, for undo and for telling what changed in another tab. */
import type { Edit } from '../../shared/edit.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'

const EDIT_NAMES = {
  'add-segment': 'exercise added',
  'remove-segment': 'exercise taken away',
  rename: 'name',
  'split-segment': 'exercise split',
  'join-segments': 'exercises joined',
  'set-use': 'use',
  'set-fields': 'facts',
  'move-edge': 'time moved',
  'add-span': 'span added',
  'remove-span': 'span taken away',
  'set-in-clip': 'span in or out of the clip',
  'add-cut-out': 'cut-out',
  'remove-cut-out': 'cut-out taken back',
  'set-loop': 'loop',
  'set-dose': 'dose',
  'add-cue': 'cue added',
  'change-cue': 'cue changed',
  'remove-cue': 'cue taken away',
  'add-caution': 'caution written',
  'change-caution': 'caution changed',
  'remove-caution': 'caution taken away',
  'attach-class-caution': 'caution attached',
  accept: 'accepted',
  decline: 'declined',
  propose: 'put back as proposed',
  'accept-above': 'accepted above a confidence',
  waive: 'waiver',
  unwaive: 'waiver taken back',
  'set-title': 'title',
  'set-audience': 'audience',
  'set-sections': 'sections',
  'set-music': 'music',
  'set-people': 'people',
  'set-source': 'film',
  'set-sound': 'published sound',
  'set-mentioned': 'names mentioned',
  restore: 'drafted again',
} as const satisfies Record<Edit['op'], string>

/** "dose, Chair squats"; "sections". */
export function nameEdit(op: Edit, sheet: LogSheet): string {
  const id = segmentIdOf(op)
  const name = sheet.segments.find((segment) => segment.id === id)?.exercise.name
  return name === undefined ? EDIT_NAMES[op.op] : `${EDIT_NAMES[op.op]}, ${name}`
}

/** What others did, for the page that shows it: "Changed elsewhere: dose, Chair squats, and 2 more." */
export function nameChanges(ops: readonly Edit[], sheet: LogSheet): string {
  const names = [...new Set(ops.map((op) => nameEdit(op, sheet)))]
  const [last] = names.slice(-1)
  if (last === undefined) return ''
  return `Changed elsewhere: ${last}${names.length === 1 ? '' : `, and ${names.length - 1} more`}.`
}

function segmentIdOf(op: Edit): string | null {
  if ('segmentId' in op) return op.segmentId
  if (op.op === 'add-segment') return op.segment.id
  if (op.op === 'waive') return op.waiver.segmentId
  if ('marks' in op) return op.marks.length === 1 ? (op.marks[0]?.segmentId ?? null) : null
  return null
}

/** A step back or forth: what it is called; '' = there is none. */
export interface UndoPart {
  opId: string
  label: string
}

export function undoPart(step: { opId: string; op: Edit } | null, sheet: LogSheet): UndoPart {
  return step ? { opId: step.opId, label: nameEdit(step.op, sheet) } : { opId: '', label: '' }
}
