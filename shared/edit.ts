/**
 * Edits: everything a person can do to a log sheet, one named operation each (field `op`).
 * Ids are handed in. All times are whole milliseconds from the recording's start.
 * A field an operation does not know is an error, so that a misspelt one is never ignored; marks inside keep theirs.
 */
import { z } from 'zod'
import { AppError } from './errors.ts'
import {
  Audience,
  Caution,
  Cue,
  CueKind,
  Loop,
  Media,
  Music,
  PersonShown,
  Prescription,
  PublishedSound,
  Ref,
  Section,
  Segment,
  SideShown,
  Source,
  Use,
  View,
  Waiver,
} from './log-sheet.ts'
import { loose, said } from './loose.ts'
import { Ms } from './time.ts'

const id = z.string().min(1)
const index = z.number().int().nonnegative()
const segmentId = id

/** A caution by its place; the hazard must agree with it, so that a page that shows an older sheet changes nothing else. segmentId null = the class's own cautions. */
const cautionRef = { segmentId: id.nullable(), index, hazard: id }

/** Points at one mark of the sheet. */
export const MarkRef = z.discriminatedUnion('mark', [
  z.strictObject({ mark: z.literal('segment'), segmentId }),
  z.strictObject({ mark: z.literal('dose'), segmentId }),
  z.strictObject({ mark: z.literal('cue'), segmentId, cueId: id }),
  z.strictObject({ mark: z.literal('caution'), ...cautionRef }),
])
export type MarkRef = z.infer<typeof MarkRef>

/** Fields of a segment that stand alone; absent = leave as it is, null = not said. */
export const SegmentFields = z.strictObject({
  equipment: z.array(z.string()).optional(),
  position: z.string().nullable().optional(),
  view: View.nullable().optional(),
  mirrored: z.boolean().nullable().optional(),
  sideShown: SideShown.nullable().optional(),
  easier: z.array(Ref).optional(),
  harder: z.array(Ref).optional(),
})
export type SegmentFields = z.infer<typeof SegmentFields>

const op = <Name extends string, Shape extends z.ZodRawShape>(name: Name, shape: Shape) =>
  z.strictObject({ op: z.literal(name), ...shape })

export const Edit = z.discriminatedUnion('op', [
  // segments
  op('add-segment', { segment: Segment }),
  /** Takes away what a person added; what the draft proposed stays as declined, so that drafting again does not bring it back. */
  op('remove-segment', { segmentId }),
  op('rename', {
    segmentId,
    name: z.string().min(1).optional(),
    alsoCalled: z.array(z.string()).optional(),
    catalogueId: z.string().nullable().optional(),
  }),
  /** The earlier part keeps the id; newName absent = both keep the name. */
  op('split-segment', {
    segmentId,
    atMs: Ms,
    newId: id,
    newName: z.string().min(1).optional(),
    doseTo: z.enum(['first', 'second']).default('first'),
  }),
  /** The other segment's marks join this one; the other is gone. */
  op('join-segments', { segmentId, otherId: id }),
  op('set-use', { segmentId, use: Use }),
  op('set-fields', { segmentId, fields: SegmentFields }),
  // spans, by their place in the list
  op('move-edge', { segmentId, span: index, edge: z.enum(['start', 'end']), toMs: Ms, lock: z.boolean().optional() }),
  /** inClip null = in the clip only when it is the first. */
  op('add-span', { segmentId, startMs: Ms, endMs: Ms, inClip: said(z.boolean()), mediaId: z.string().optional() }),
  op('remove-span', { segmentId, span: index }),
  op('set-in-clip', { segmentId, span: index, inClip: z.boolean() }),
  op('add-cut-out', { segmentId, startMs: Ms, endMs: Ms, why: z.string().default('') }),
  op('remove-cut-out', { segmentId, cutOut: index }),
  op('set-loop', { segmentId, loop: Loop.nullable() }),
  // dose
  op('set-dose', { segmentId, dose: Prescription.nullable() }),
  // cues
  op('add-cue', { segmentId, cue: Cue }),
  op('change-cue', {
    segmentId,
    cueId: id,
    kind: CueKind.optional(),
    startMs: Ms.optional(),
    endMs: Ms.optional(),
    text: z.string().optional(),
  }),
  op('remove-cue', { segmentId, cueId: id }),
  // cautions; segmentId null = of the class
  op('add-caution', { segmentId: id.nullable(), caution: Caution }),
  op('change-caution', {
    ...cautionRef,
    newHazard: id.optional(),
    text: z.string().optional(),
    atMs: Ms.nullable().optional(),
    source: z.enum(['spoken', 'written']).optional(),
  }),
  op('remove-caution', { ...cautionRef }),
  /** Writes one caution said elsewhere in the class on each of these lessons. */
  op('attach-class-caution', {
    segmentIds: z.array(id).min(1),
    hazard: id,
    text: z.string().min(1),
    atMs: said(Ms),
  }),
  // states of marks
  op('accept', { marks: z.array(MarkRef).min(1) }),
  op('decline', { marks: z.array(MarkRef).min(1) }),
  op('propose', { marks: z.array(MarkRef).min(1) }),
  /** Accepts every proposed mark of at least this confidence; segmentIds null = on the whole sheet. */
  op('accept-above', { confidence: z.number().min(0).max(1), segmentIds: said(z.array(id)) }),
  // waivers
  op('waive', { waiver: Waiver }),
  op('unwaive', { segmentId, ruleId: id, hazard: said(z.string()) }),
  // the class
  op('set-title', { title: z.string() }),
  op('set-audience', { audience: z.array(Audience) }),
  op('set-sections', { sections: z.array(Section) }),
  op('set-music', { music: Music.nullable() }),
  op('set-people', { people: z.array(PersonShown).nullable() }),
  /** durationMs absent = that of the source. */
  op('set-source', { source: Source.nullable(), durationMs: Ms.optional() }),
  /** Which sound is published; null = the film's own. media = what is known of sound recorded apart, by which it is laid. */
  op('set-sound', { sound: PublishedSound.nullable(), media: Media.optional() }),
  op('set-mentioned', { mentioned: z.array(z.string()) }),
  /** What undo writes: former values put back. Built by the program only, never taken from a page. */
  op('restore', {
    /** Segments as they were; one that is gone comes back after the one named (null = at the front). */
    put: z.array(z.strictObject({ segment: Segment, afterId: id.nullable() })),
    remove: z.array(id),
    /** Fields of the sheet as they were, and those that were absent. */
    fields: z.record(z.string(), z.unknown()),
    drop: z.array(z.string()),
  }),
])
export type Edit = z.infer<typeof Edit>
/** The edit of one name. */
export type EditOf<Name extends Edit['op']> = Extract<Edit, { op: Name }>

/** One line of the log of edits; lines are only ever added. */
export const EditRecord = loose({
  sheetId: id,
  /** The sheet's version once this edit is applied: 1, 2, 3 ... The sheet as drafted is version 0. */
  version: z.number().int().positive(),
  /** Unique; an edit sent twice carries the same and is applied once. */
  opId: id,
  /** Who did it. */
  actor: z.string(),
  /** UTC milliseconds. */
  atUtc: z.number().int(),
  op: Edit,
})
export type EditRecord = z.infer<typeof EditRecord>

/**
 * Reads an edit that a person sends, from a parsed value. A restore is refused: only undo writes one.
 * @throws AppError edit-invalid (details name each field).
 */
export function parseEdit(value: unknown): Edit {
  const result = Edit.safeParse(value)
  if (result.success && result.data.op !== 'restore') return result.data
  const details = result.error?.issues.map(
    (issue) => `${issue.path.map(String).join('.') || '(top)'}: ${issue.message}`,
  )
  throw new AppError('edit-invalid', 'The edit cannot be read. Correct what is named below and send it again.', {
    details: details ?? ['op: a restore is written by undo only'],
  })
}
