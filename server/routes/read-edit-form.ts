/** Reads a form of the class page or the checks page into edits: one reader for each thing a form can do. */
import { z } from 'zod'
import { entryById } from '../../core/catalogue/catalogue.ts'
import { findEntry } from '../../core/catalogue/find-entry.ts'
import { readDose } from '../../core/dose/read-dose.ts'
import { MarkRef } from '../../shared/edit.ts'
import type { Edit } from '../../shared/edit.ts'
import { AppError } from '../../shared/errors.ts'
import { Audience, Caution, Cue, CueKind, Music, Segment, SideShown, Use, View } from '../../shared/log-sheet.ts'
import type { LogSheet, Mark, Prescription, Span } from '../../shared/log-sheet.ts'
import { sectionLines } from '../../views/pages/class.ts'
import { readFields, readRefs, readSections } from './edit-fields.ts'
import type { EditFields } from './edit-fields.ts'

export interface FormContext {
  /** The newest. */
  sheet: LogSheet
  /** Unlike any other; new marks are named by it, so that a form sent twice adds them once. */
  opId: string
}

/** What the field `do` may say. */
export type FormKind = keyof typeof READERS

/** @throws ZodError, AppError edit-target, edit-invalid */
export function readEditForm(body: unknown, context: FormContext): Edit[] {
  const fields = readFields(body)
  const name = z.enum(Object.keys(READERS) as [FormKind, ...FormKind[]]).parse(fields.text('do'))
  const segmentId = fields.text('segmentId')
  return READERS[name](fields, { ...context, segmentId })
}

/** A dose typed in one line, as it would be set; null = nothing of it can be read. */
export function readTypedDose(text: string, segment: Segment | null): Prescription | null {
  const { name = '', catalogueId = null } = segment?.exercise ?? {}
  const entry = catalogueId === null ? findEntry(name) : entryById(catalogueId)
  const read = readDose(text, entry ? { still: entry.still } : {})
  if (!read) return null
  const former = segment?.prescription ?? null
  // what was heard stays beside what is typed
  return { ...read, said: former?.said ?? [], groupWith: former?.groupWith ?? [] }
}

interface Place extends FormContext {
  /** '' = the class. */
  segmentId: string
}
type Reader = (fields: EditFields, place: Place) => Edit[]

const READERS = {
  // states
  mark: (fields, { segmentId, sheet }) => {
    const state = z.enum(['accept', 'decline', 'propose']).parse(fields.text('state'))
    const mark = fields.text('mark')
    if (mark === 'all') return [{ op: state, marks: proposedMarks(segmentOf(sheet, segmentId)) }]
    const ref = {
      mark,
      segmentId: segmentId === '' ? null : segmentId,
      ...(mark === 'cue' && { cueId: fields.text('cueId') }),
      ...(mark === 'caution' && { index: fields.index('index'), hazard: fields.text('hazard') }),
    }
    return [{ op: state, marks: [MarkRef.parse(ref)] }]
  },
  'accept-above': (fields, { segmentId }) => [
    {
      op: 'accept-above',
      confidence: z.coerce.number().min(0).max(1).parse(fields.text('confidence')),
      segmentIds: segmentId === '' ? null : [segmentId],
    },
  ],
  // the exercise
  rename: (fields, { segmentId }) => [
    { op: 'rename', segmentId, name: fields.text('name'), alsoCalled: fields.words('alsoCalled') },
  ],
  use: (fields, { segmentId }) => [{ op: 'set-use', segmentId, use: Use.parse(fields.text('use')) }],
  fields: (fields, { segmentId, sheet }) => {
    const segment = segmentOf(sheet, segmentId)
    const orNull = <Value>(schema: z.ZodType<Value>, name: string): Value | null =>
      fields.text(name) === '' ? null : schema.parse(fields.text(name))
    const mirrored = fields.text('mirrored')
    const set = {
      equipment: fields.words('equipment'),
      position: orNull(z.string(), 'position'),
      view: orNull(View, 'view'),
      mirrored: mirrored === '' ? null : mirrored === 'yes',
      sideShown: orNull(SideShown, 'sideShown'),
      easier: readRefs(fields.lines('easier'), segment, 'easier', sheet),
      harder: readRefs(fields.lines('harder'), segment, 'harder', sheet),
    }
    const changed = Object.entries(set).filter(
      ([name, value]) => JSON.stringify(value) !== JSON.stringify(segment[name as keyof typeof set]),
    )
    return changed.length === 0 ? [] : [{ op: 'set-fields', segmentId, fields: Object.fromEntries(changed) }]
  },
  'add-segment': (fields, { opId }) => [
    {
      op: 'add-segment',
      segment: Segment.parse({
        id: `seg-${opId}`,
        ...BY_HAND,
        exercise: { name: fields.text('name') },
        spans: [{ startMs: fields.clock('start'), endMs: fields.clock('end') }],
      }),
    },
  ],
  'remove-segment': (_fields, { segmentId }) => [{ op: 'remove-segment', segmentId }],
  split: (fields, { segmentId, opId }) => {
    const newName = fields.text('newName')
    const split = { op: 'split-segment', segmentId, atMs: fields.clock('at'), newId: `seg-${opId}` } as const
    return [{ ...split, doseTo: 'first', ...(newName !== '' && { newName }) }]
  },
  join: (fields, { segmentId }) => [{ op: 'join-segments', segmentId, otherId: fields.text('otherId') }],
  dose: (fields, { segmentId, sheet }) => {
    const text = fields.text('dose')
    if (text === '') return [{ op: 'set-dose', segmentId, dose: null }]
    const dose = readTypedDose(text, segmentOf(sheet, segmentId))
    if (dose) return [{ op: 'set-dose', segmentId, dose }]
    throw new AppError(
      'edit-invalid',
      `No dose can be read in "${text}". Write for example 3 x 10, or 2 x 30 s each side.`,
    )
  },
  // spans
  edge: (fields, { segmentId, sheet }) => {
    const span = fields.index('span')
    const edge = z.enum(['start', 'end']).parse(fields.text('edge'))
    const now = spanOf(segmentOf(sheet, segmentId), span)
    const byMs = fields.text('by')
    const former = edge === 'start' ? now.startMs : now.endMs
    const toMs = byMs === '' ? fields.clock('at') : Math.max(0, former + z.coerce.number().int().parse(byMs))
    return [{ op: 'move-edge', segmentId, span, edge, toMs }]
  },
  'in-clip': (fields, { segmentId }) => [
    { op: 'set-in-clip', segmentId, span: fields.index('span'), inClip: fields.has('inClip') },
  ],
  'add-span': (fields, { segmentId }) => [{ op: 'add-span', segmentId, ...stretch(fields), inClip: null }],
  'remove-span': (fields, { segmentId }) => [{ op: 'remove-span', segmentId, span: fields.index('span') }],
  'add-cut-out': (fields, { segmentId }) => [
    { op: 'add-cut-out', segmentId, ...stretch(fields), why: fields.text('why') },
  ],
  'remove-cut-out': (fields, { segmentId }) => [{ op: 'remove-cut-out', segmentId, cutOut: fields.index('cutOut') }],
  loop: (fields, { segmentId }) => [
    { op: 'set-loop', segmentId, loop: fields.text('start') + fields.text('end') === '' ? null : stretch(fields) },
  ],
  // cues
  'add-cue': (fields, { segmentId, opId }) => {
    const startMs = fields.clock('at')
    const cue = { id: `cue-${opId}`, ...BY_HAND, kind: fields.text('kind'), startMs, endMs: startMs + NEW_CUE_MS }
    return [{ op: 'add-cue', segmentId, cue: Cue.parse({ ...cue, text: fields.text('words') }) }]
  },
  cue: (fields, { segmentId, sheet }) => {
    const cueId = fields.text('cueId')
    const former = segmentOf(sheet, segmentId).cues.find(({ id }) => id === cueId)
    const startMs = fields.clock('at')
    const moved = former && former.startMs !== startMs
    const times = moved ? { startMs, endMs: startMs + former.endMs - former.startMs } : {}
    const kind = CueKind.parse(fields.text('kind'))
    return [{ op: 'change-cue', segmentId, cueId, kind, text: fields.text('words'), ...times }]
  },
  'remove-cue': (fields, { segmentId }) => [{ op: 'remove-cue', segmentId, cueId: fields.text('cueId') }],
  // cautions
  'write-caution': (fields, { segmentId }) => {
    const hazard = fields.text('hazard') === '' ? slugOf(fields.text('words')) : fields.text('hazard')
    const caution = Caution.parse({ ...BY_HAND, hazard, source: 'written', text: fields.text('words') })
    return [{ op: 'add-caution', segmentId: segmentId === '' ? null : segmentId, caution }]
  },
  caution: (fields, { segmentId }) => [
    { op: 'change-caution', ...cautionPlace(fields, segmentId), text: fields.text('words') },
  ],
  'remove-caution': (fields, { segmentId }) => [{ op: 'remove-caution', ...cautionPlace(fields, segmentId) }],
  /** One or more cautions said elsewhere; `on` names a lesson, `said` the caution. */
  attach: (fields) =>
    fields.all('said').map((said) => {
      const { hazard, text, atMs, on = fields.all('on') } = Attached.parse(readJson(said))
      if (on.length === 0) throw new AppError('edit-invalid', 'Choose at least one lesson for this caution.')
      return { op: 'attach-class-caution', segmentIds: on, hazard, text, atMs }
    }),
  // findings
  waive: (fields, { segmentId }) => {
    const hazard = fields.text('hazard') === '' ? null : fields.text('hazard')
    const reason = fields.text('reason')
    if (reason === '')
      throw new AppError('edit-invalid', 'A waiver needs a reason. Say why the finding does not hold here.')
    // who and when are signed by the action
    return [{ op: 'waive', waiver: { segmentId, ruleId: fields.text('ruleId'), hazard, reason, by: '-', atUtc: 0 } }]
  },
  unwaive: (fields, { segmentId }) => {
    const hazard = fields.text('hazard') === '' ? null : fields.text('hazard')
    return [{ op: 'unwaive', segmentId, ruleId: fields.text('ruleId'), hazard }]
  },
  // the class
  class: (fields, { sheet }) => {
    const music = fields.text('music')
    const lines = fields.lines('sections')
    // the field shows starts only: one that comes back as it was must not move the ends
    const isSame = lines.join('\n') === sectionLines(sheet.sections)
    const after = {
      title: fields.text('title'),
      audience: fields.all('audience').map((one) => Audience.parse(one)),
      music: music === '' ? null : Music.parse(music),
      sections: isSame ? sheet.sections : readSections(lines, sheet.durationMs),
    }
    const edits: Edit[] = [
      { op: 'set-title', title: after.title },
      { op: 'set-audience', audience: after.audience },
      { op: 'set-music', music: after.music },
      { op: 'set-sections', sections: after.sections },
    ]
    return edits.filter(({ op }) => {
      const name = op.slice('set-'.length) as keyof typeof after
      return JSON.stringify(after[name]) !== JSON.stringify(sheet[name])
    })
  },
} as const satisfies Record<string, Reader>

/** How long a cue that is typed lasts until it is moved; common practice, no source. */
const NEW_CUE_MS = 2000
const BY_HAND = { origin: 'person', state: 'accepted', confidence: null, ruleId: null } as const
const Attached = z.object({
  hazard: z.string().min(1),
  text: z.string().min(1),
  atMs: z.number().int().nonnegative().nullable(),
  on: z.array(z.string()).optional(),
})

/** null = it is no JSON, which no schema takes. */
function readJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

function segmentOf(sheet: LogSheet, id: string): Segment {
  const segment = sheet.segments.find((one) => one.id === id)
  if (segment) return segment
  throw new AppError('edit-target', 'This exercise is not in the class any more. Load the page again.')
}

function spanOf(segment: Segment, index: number): Span {
  const span = segment.spans[index]
  if (span) return span
  throw new AppError('edit-target', `${segment.exercise.name} has no such span any more. Load the page again.`)
}

function stretch(fields: EditFields): { startMs: number; endMs: number } {
  return { startMs: fields.clock('start'), endMs: fields.clock('end') }
}

function cautionPlace(fields: EditFields, segmentId: string) {
  const place = { index: fields.index('index'), hazard: fields.text('hazard') }
  return { segmentId: segmentId === '' ? null : segmentId, ...place }
}

/** Every mark of an exercise that nobody has decided yet. */
function proposedMarks(segment: Segment): MarkRef[] {
  const { id: segmentId } = segment
  const open = ({ state }: Mark): boolean => state === 'proposed'
  return [
    ...(open(segment) ? [{ mark: 'segment' as const, segmentId }] : []),
    ...(segment.prescription && open(segment.prescription) ? [{ mark: 'dose' as const, segmentId }] : []),
    ...segment.cues.filter(open).map(({ id }) => ({ mark: 'cue' as const, segmentId, cueId: id })),
    ...segment.cautions.flatMap((one, index) =>
      open(one) ? [{ mark: 'caution' as const, segmentId, index, hazard: one.hazard }] : [],
    ),
  ]
}

/** A name for a caution that no table knows: its first words. */
function slugOf(text: string): string {
  const words = text.toLowerCase().match(/[a-z0-9]+/g) ?? []
  return words.length === 0 ? 'own' : words.slice(0, 4).join('-')
}
