// Random log sheets and random edits for property tests. Times are drawn on a coarse grid, so that touching,
// overlapping and out-of-range cases happen often.
import fc from 'fast-check'
import type { Edit, MarkRef } from '../../shared/edit.ts'
import { Caution, Cue, CUE_KINDS, LogSheet, Prescription, Segment } from '../../shared/log-sheet.ts'
import { buildSheet, DURATION_MS } from './build-sheet.ts'

const GRID_MS = 10_000
const HAZARDS = ['fall-risk', 'breath-hold', 'dizziness-rise'] as const
const NAMES = ['heel raise', 'seated row', 'Push-up', 'bridge'] as const

const mark = {
  origin: fc.constantFrom('draft', 'person'),
  state: fc.constantFrom('proposed', 'accepted', 'declined'),
  confidence: fc.option(fc.constantFrom(0, 0.4, 0.7, 1)),
  ruleId: fc.option(fc.constantFrom('rule-a', 'rule-b')),
} as const

const range = fc.tuple(fc.nat(20), fc.nat(20)).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }))

const dose = (depth: number): fc.Arbitrary<Prescription> =>
  fc
    .record({
      ...mark,
      sets: fc.option(range),
      reps: fc.option(fc.oneof(range, fc.constant('max'))),
      repScheme: fc.option(fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 3 })),
      perSide: fc.boolean(),
      restSeconds: fc.option(range),
      said: fc.array(fc.record({ atMs: fc.nat(DURATION_MS), text: fc.string({ maxLength: 8 }) }), { maxLength: 2 }),
      byLevel:
        depth === 0
          ? fc.constant([])
          : fc.array(fc.record({ level: fc.constant('new'), dose: dose(0) }), { maxLength: 1 }),
      then: depth === 0 ? fc.constant([]) : fc.array(dose(0), { maxLength: 1 }),
    })
    .map((fields) => Prescription.parse(fields))

const cue = (id: string): fc.Arbitrary<Cue> =>
  fc
    .record({
      ...mark,
      kind: fc.constantFrom(...CUE_KINDS),
      startMs: fc.nat(DURATION_MS - 5000),
      lengthMs: fc.integer({ min: 1, max: 5000 }),
      text: fc.constantFrom('lift the heels', 'breathe out', 'hold the chair'),
    })
    .map(({ lengthMs, ...fields }) => Cue.parse({ ...fields, id, endMs: fields.startMs + lengthMs }))

const caution = fc
  .record({
    ...mark,
    hazard: fc.constantFrom(...HAZARDS),
    scope: fc.constantFrom('exercise', 'class'),
    source: fc.constantFrom('spoken', 'written'),
    text: fc.constantFrom('keep hold of the chair', 'do not hold your breath'),
    atMs: fc.option(fc.nat(DURATION_MS)),
  })
  .map((fields) => Caution.parse(fields))

/** Stretches that never overlap: cuts on the grid, every second gap between them. */
const stretches = (max: number) =>
  fc
    .uniqueArray(fc.nat(DURATION_MS / GRID_MS), { minLength: 2, maxLength: 2 * max })
    .map((cuts) => cuts.sort((a, b) => a - b))
    .map((cuts) =>
      cuts.flatMap((cut, at) =>
        at % 2 === 1 ? [{ startMs: (cuts[at - 1] ?? 0) * GRID_MS, endMs: cut * GRID_MS }] : [],
      ),
    )

const segment = (id: string): fc.Arbitrary<Segment> =>
  fc
    .record({
      ...mark,
      name: fc.constantFrom(...NAMES),
      use: fc.constantFrom('lesson', 'keep', 'leave-out'),
      spans: stretches(3),
      inClip: fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }),
      cut: fc.boolean(),
      loop: fc.boolean(),
      position: fc.option(fc.constantFrom('standing', 'seated')),
      sideShown: fc.option(fc.constantFrom('left', 'right', 'both')),
      prescription: fc.option(dose(1)),
      cues: fc.nat(3).chain((count) => fc.tuple(...Array.from({ length: count }, (_, at) => cue(`${id}-cue-${at}`)))),
      cautions: fc.array(caution, { maxLength: 3 }),
      setByPerson: fc.subarray(['exercise', 'spans', 'position', 'prescription']),
    })
    .map(({ name, spans, inClip, cut, loop, ...fields }) => {
      const main = spans[0] ?? { startMs: 0, endMs: GRID_MS }
      return Segment.parse({
        ...fields,
        id,
        exercise: { name },
        spans: spans.map((one, at) => ({ ...one, inClip: inClip[at] })),
        cutOuts: cut ? [{ startMs: main.startMs + 1000, endMs: main.startMs + 3000, why: 'slip' }] : [],
        loop: loop ? { startMs: main.startMs + 4000, endMs: main.startMs + 9000 } : null,
      })
    })

/** A sheet whose structure is sound, with pointers, waivers and unknown fields at every level. */
export const sheets: fc.Arbitrary<LogSheet> = fc
  .record({
    title: fc.string({ maxLength: 12 }),
    audience: fc.subarray(['older-adults', 'rehab'] as const),
    sections: stretches(2).map((list) => list.map((one, at) => ({ ...one, title: `part ${at + 1}` }))),
    segments: fc
      .nat(4)
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, at) => segment(`seg-${at + 1}`)))),
    classCautions: fc.array(caution, { maxLength: 2 }),
    music: fc.option(fc.constantFrom('none', 'unknown')),
    people: fc.option(fc.array(fc.record({ name: fc.constant('Guest'), under18: fc.boolean() }), { maxLength: 1 })),
    source: fc.option(fc.constant({ sha256: 'ab'.repeat(32), durationMs: DURATION_MS })),
    waived: fc.boolean(),
    unknown: fc.boolean(),
  })
  .map(({ waived, unknown, ...fields }) => {
    const first = fields.segments[0]
    const linked = fields.segments.map((one, at) =>
      at === 0 || !first
        ? one
        : {
            ...one,
            easier: [{ segmentId: first.id }],
            prescription: one.prescription && { ...one.prescription, groupWith: [first.id] },
          },
    )
    const waivers =
      waived && first
        ? [{ segmentId: first.id, ruleId: 'dose-missing', reason: 'as it feels', by: 'Ann', atUtc: 1 }]
        : []
    const sheet = buildSheet({ ...fields, segments: linked, waivers })
    return unknown ? LogSheet.parse(withUnknownFields(sheet)) : sheet
  })

/** The value with a field nobody knows in every object of it. */
export function withUnknownFields(value: unknown, depth = 0): unknown {
  if (Array.isArray(value)) return value.map((one) => withUnknownFields(one, depth + 1))
  if (typeof value !== 'object' || value === null) return value
  const fields = Object.entries(value).map(([name, one]) => [name, withUnknownFields(one, depth + 1)] as const)
  return { ...Object.fromEntries(fields), [`x-unknown-${depth}`]: { kept: [depth, null, 'ä'] } }
}

/** Numbers from which pickEdit makes an edit that fits a sheet. */
export interface Seed {
  op: Exclude<Edit['op'], 'restore'>
  a: number
  b: number
  c: number
  on: boolean
  dose: Prescription | null
  caution: Caution
}

const OPS: readonly Seed['op'][] = [
  'add-segment',
  'remove-segment',
  'rename',
  'split-segment',
  'join-segments',
  'set-use',
  'set-fields',
  'move-edge',
  'add-span',
  'remove-span',
  'set-in-clip',
  'add-cut-out',
  'remove-cut-out',
  'set-loop',
  'set-dose',
  'add-cue',
  'change-cue',
  'remove-cue',
  'add-caution',
  'change-caution',
  'remove-caution',
  'attach-class-caution',
  'accept',
  'decline',
  'propose',
  'accept-above',
  'waive',
  'unwaive',
  'set-title',
  'set-audience',
  'set-sections',
  'set-music',
  'set-people',
  'set-source',
  'set-sound',
  'set-mentioned',
]

const COLLAR = { id: 'collar', role: 'sound' as const, label: '', sha256: 'x', durationMs: 0, driftPpm: 0 }

export const seeds: fc.Arbitrary<Seed> = fc.record({
  op: fc.constantFrom(...OPS),
  a: fc.nat(1000),
  b: fc.nat(1000),
  c: fc.nat(1000),
  on: fc.boolean(),
  dose: fc.option(dose(1)),
  caution,
})

/** An edit aimed at the sheet; it may well be one that the sheet must refuse. `fresh` makes ids unique. */
export function pickEdit(sheet: LogSheet, seed: Seed, fresh: string): Edit {
  const { a, b, c, on } = seed
  const target = sheet.segments[a % Math.max(1, sheet.segments.length)]
  const segmentId = target?.id ?? 'nobody'
  const other = sheet.segments[b % Math.max(1, sheet.segments.length)]?.id ?? 'nobody'
  const start = (b % 63) * GRID_MS + (on ? 0 : 500)
  const stretch = { startMs: start, endMs: start + ((c % 7) - 1) * GRID_MS * 0.5 }
  const spanIndex = c % Math.max(1, target?.spans.length ?? 1)
  const main = target?.spans[spanIndex] ?? stretch
  const within = main.startMs + (b % 20) * 500
  const cueId = target?.cues[b % Math.max(1, target.cues.length)]?.id ?? 'no-cue'
  const list = on ? sheet.classCautions : (target?.cautions ?? [])
  const place = c % Math.max(1, list.length)
  const ref = { segmentId: on ? null : segmentId, index: place, hazard: list[place]?.hazard ?? 'fall-risk' }
  const marks: MarkRef[] = [
    { mark: 'segment', segmentId },
    ...(target?.prescription ? [{ mark: 'dose' as const, segmentId }] : []),
    ...(target?.cues.length ? [{ mark: 'cue' as const, segmentId, cueId }] : []),
    ...(list.length ? [{ mark: 'caution' as const, ...ref }] : []),
  ]
  const edits: { [Name in Seed['op']]: Omit<Extract<Edit, { op: Name }>, 'op'> } = {
    'add-segment': {
      segment: {
        ...Segment.parse({ id: on ? fresh : segmentId, exercise: { name: 'new' }, prescription: seed.dose }),
        spans: [{ ...stretch, inClip: true, lockedIn: false }],
      },
    },
    'remove-segment': { segmentId },
    rename: { segmentId, name: NAMES[b % NAMES.length], ...(on && { catalogueId: null }) },
    'split-segment': {
      segmentId,
      atMs: within,
      newId: fresh,
      doseTo: on ? 'first' : 'second',
      ...(c % 2 === 0 && { newName: 'second half' }),
    },
    'join-segments': { segmentId, otherId: other },
    'set-use': { segmentId, use: on ? 'keep' : 'lesson' },
    'set-fields': { segmentId, fields: { position: 'kneeling', ...(on && { easier: [{ segmentId: other }] }) } },
    'move-edge': {
      segmentId,
      span: spanIndex,
      edge: on ? 'start' : 'end',
      toMs: on ? within : main.endMs + ((b % 9) - 4) * 2500,
      ...(c % 2 === 0 && { lock: on }),
    },
    'add-span': { segmentId, ...stretch, inClip: c % 3 === 0 ? null : on },
    'remove-span': { segmentId, span: spanIndex },
    'set-in-clip': { segmentId, span: spanIndex, inClip: on },
    'add-cut-out': { segmentId, startMs: within, endMs: within + (c % 4) * 1000, why: 'cough' },
    'remove-cut-out': { segmentId, cutOut: 0 },
    'set-loop': { segmentId, loop: on ? { startMs: within, endMs: within + 2000 } : null },
    'set-dose': { segmentId, dose: seed.dose && { ...seed.dose, groupWith: on ? [other] : [] } },
    'add-cue': {
      segmentId,
      cue: { ...Cue.parse({ id: on ? fresh : cueId, kind: 'focus', text: 'look', startMs: 0, endMs: 1 }), ...stretch },
    },
    'change-cue': { segmentId, cueId, text: 'other words', ...(on && stretch) },
    'remove-cue': { segmentId, cueId },
    'add-caution': { segmentId: on ? null : segmentId, caution: seed.caution },
    'change-caution': { ...ref, text: 'other words' },
    'remove-caution': ref,
    'attach-class-caution': {
      segmentIds: [segmentId, other],
      hazard: seed.caution.hazard,
      text: seed.caution.text,
      atMs: seed.caution.atMs,
    },
    accept: { marks },
    decline: { marks },
    propose: { marks },
    'accept-above': { confidence: (b % 11) / 10, segmentIds: on ? null : [segmentId] },
    waive: {
      waiver: {
        segmentId,
        ruleId: 'setup-missing',
        hazard: on ? 'fall-risk' : null,
        reason: 'seen',
        by: 'Ann',
        atUtc: 2,
      },
    },
    unwaive: { segmentId, ruleId: on ? 'dose-missing' : 'setup-missing', hazard: null },
    'set-title': { title: fresh },
    'set-audience': { audience: on ? ['general'] : [] },
    'set-sections': { sections: [{ title: 'all', ...stretch }] },
    'set-music': { music: on ? 'own' : null },
    'set-people': { people: on ? [] : null },
    'set-source': { source: null, durationMs: DURATION_MS + (on ? b : -b * 100) },
    'set-sound': {
      sound: on ? { mediaId: b % 2 === 0 ? 'collar' : null, track: null, gainDb: (b % 9) - 4 } : null,
      ...(c % 2 === 0 && { media: { ...COLLAR, startMs: 0 - b } }), // never -0, which JSON does not know
    },
    'set-mentioned': { mentioned: [fresh] },
  }
  return { op: seed.op, ...edits[seed.op] } as Edit
}
