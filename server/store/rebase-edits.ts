/**
 * Puts edits made on an older sheet onto the newest. An edit passes when what it changes still is as its maker saw it;
 * what somebody else changed meanwhile is never written over in silence. What only adds always passes.
 */
import { isDeepStrictEqual } from 'node:util'
import { applyEdit } from '../../core/segments/edit-sheet.ts'
import type { Edit, EditOf, MarkRef } from '../../shared/edit.ts'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'

/** A stop because a sheet has moved on; carries what is needed to load it again. */
export class SheetConflict extends AppError {
  readonly sheetId: string
  /** The newest version, to be loaded. */
  readonly sheetVersion: number
  /** The edit that no longer fits; null = the whole batch, made on a version that is not there. */
  readonly opId: string | null

  constructor(message: string, facts: { sheetId: string; sheetVersion: number; opId: string | null; cause?: unknown }) {
    super('sheet-conflict', message, facts.cause === undefined ? {} : { cause: facts.cause })
    this.sheetId = facts.sheetId
    this.sheetVersion = facts.sheetVersion
    this.opId = facts.opId
  }
}

/** Why an edit cannot be put onto the newest sheet, as a sentence; null = it can. */
export function findConflict(edit: Edit, seen: LogSheet, now: LogSheet): string | null {
  if (edit.op === 'restore') return 'What was to be put back has changed meanwhile.'
  const read = READS[edit.op] as (edit: Edit) => (sheet: LogSheet) => unknown
  const part = read(edit)
  if (isDeepStrictEqual(part(seen), part(now))) return null
  return 'Someone else changed the same thing meanwhile.'
}

/** @throws what applyEdit throws */
export function applyAll(sheet: LogSheet, edits: readonly Edit[]): LogSheet {
  return edits.reduce((current, edit) => applyEdit(current, edit).sheet, sheet)
}

type Part = (sheet: LogSheet) => unknown
type Reads = { readonly [Name in Exclude<Edit['op'], 'restore'>]: (edit: EditOf<Name>) => Part }

const nothing: Part = () => null
const both =
  (...parts: Part[]): Part =>
  (sheet) =>
    parts.map((part) => part(sheet))
const field =
  (name: keyof LogSheet): Part =>
  (sheet) =>
    sheet[name]
const whole =
  (segmentId: string): Part =>
  (sheet) =>
    find(sheet, segmentId)
const of =
  (segmentId: string, name: keyof Segment): Part =>
  (sheet) =>
    find(sheet, segmentId)?.[name]
/** One entry of a list by its place. */
const entry =
  (segmentId: string, name: 'spans' | 'cutOuts', index: number): Part =>
  (sheet) =>
    find(sheet, segmentId)?.[name][index]
const cue =
  (segmentId: string, cueId: string): Part =>
  (sheet) =>
    find(sheet, segmentId)?.cues.find((one) => one.id === cueId)
const caution =
  ({ segmentId, index }: { segmentId: string | null; index: number }): Part =>
  (sheet) =>
    (segmentId === null ? sheet.classCautions : find(sheet, segmentId)?.cautions)?.[index]
const marks =
  ({ marks: refs }: { marks: MarkRef[] }): Part =>
  (sheet) =>
    refs.map((ref) => mark(ref)(sheet))

/** What each edit changes, as its maker saw it. The compiler finds what is missing. */
const READS: Reads = {
  'add-segment': () => nothing,
  'remove-segment': ({ segmentId }) => whole(segmentId),
  rename: ({ segmentId }) => of(segmentId, 'exercise'),
  'split-segment': ({ segmentId }) => of(segmentId, 'spans'),
  'join-segments': ({ segmentId, otherId }) => both(of(segmentId, 'exercise'), whole(otherId)),
  'set-use': ({ segmentId }) => of(segmentId, 'use'),
  'set-fields': ({ segmentId, fields }) =>
    both(...Object.keys(fields).map((name) => of(segmentId, name as keyof Segment))),
  'move-edge': ({ segmentId, span }) => entry(segmentId, 'spans', span),
  'add-span': () => nothing,
  'remove-span': ({ segmentId, span }) => entry(segmentId, 'spans', span),
  'set-in-clip': ({ segmentId, span }) => entry(segmentId, 'spans', span),
  'add-cut-out': () => nothing,
  'remove-cut-out': ({ segmentId, cutOut }) => entry(segmentId, 'cutOuts', cutOut),
  'set-loop': ({ segmentId }) => of(segmentId, 'loop'),
  'set-dose': ({ segmentId }) => of(segmentId, 'prescription'),
  'add-cue': () => nothing,
  'change-cue': ({ segmentId, cueId }) => cue(segmentId, cueId),
  'remove-cue': ({ segmentId, cueId }) => cue(segmentId, cueId),
  'add-caution': () => nothing,
  'change-caution': caution,
  'remove-caution': caution,
  'attach-class-caution': () => nothing,
  accept: marks,
  decline: marks,
  propose: marks,
  'accept-above': () => nothing,
  waive: () => nothing,
  unwaive: () => nothing,
  'set-title': () => field('title'),
  'set-audience': () => field('audience'),
  'set-sections': () => field('sections'),
  'set-music': () => field('music'),
  'set-people': () => field('people'),
  'set-source': () => both(field('source'), field('durationMs')),
  'set-sound': () => both(field('publishedSound'), field('media')),
  'set-mentioned': () => field('mentioned'),
}

/** A segment is accepted or declined for its name and its state; its other marks are decided one by one. */
function mark(ref: MarkRef): Part {
  switch (ref.mark) {
    case 'segment':
      return both(of(ref.segmentId, 'exercise'), of(ref.segmentId, 'state'))
    case 'dose':
      return of(ref.segmentId, 'prescription')
    case 'cue':
      return cue(ref.segmentId, ref.cueId)
    case 'caution':
      return caution(ref)
  }
}

function find(sheet: LogSheet, segmentId: string): Segment | undefined {
  return sheet.segments.find((one) => one.id === segmentId)
}
