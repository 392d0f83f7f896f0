/**
 * The log sheet, version 1: the one file that holds all marks of one recording.
 * The draft prints it, people edit it, the checks read it, the cutter obeys it.
 * All times are whole milliseconds from the recording's start. Unknown fields survive reading and writing.
 * Absent or null means "not said". A change of meaning needs a new version and a migration.
 */
import { z } from 'zod'
import { loose, said } from './loose.ts'
import { Ms } from './time.ts'

export const LOG_SHEET_FORMAT = 'repslate-log-sheet'
export const LOG_SHEET_VERSION = 1

export const Audience = z.enum(['general', 'older-adults', 'pregnancy', 'after-birth', 'rehab', 'beginners', 'juniors'])
export type Audience = z.infer<typeof Audience>

/** From min to max; null = open on that side. Both equal = exactly that. */
export const Range = loose({ min: z.number().nonnegative().nullable(), max: z.number().nonnegative().nullable() })
export type Range = z.infer<typeof Range>

/** Exact words of the transcript and when they were said. */
export const Quote = loose({ atMs: Ms, text: z.string() })
export type Quote = z.infer<typeof Quote>

/** Where a value comes from and whether a person agreed. A sheet without these fields was written by a person. */
const mark = {
  origin: z.enum(['draft', 'person']).default('person'),
  state: z.enum(['proposed', 'accepted', 'declined']).default('accepted'),
  confidence: said(z.number().min(0).max(1)),
  ruleId: said(z.string()),
}
export const Mark = loose(mark)
export type Mark = z.infer<typeof Mark>

export const Scheme = z.enum(['straight', 'superset', 'circuit', 'emom', 'amrap', 'ladder', 'interval'])
export type Scheme = z.infer<typeof Scheme>
export const RepUnit = z.enum(['rep', 'breath', 'stroke', 'cycle', 'length'])
export type RepUnit = z.infer<typeof RepUnit>
export const RestBetween = z.enum(['reps', 'sets', 'sides', 'stations', 'rounds'])
export type RestBetween = z.infer<typeof RestBetween>

/** Fields of a dose that do not nest. Work that moves is workSeconds; a hold, per rep or per set, is holdSeconds. */
const prescriptionFields = {
  ...mark,
  scheme: Scheme.default('straight'),
  /** Sets; rounds of a circuit count as sets. */
  sets: said(Range),
  reps: said(z.union([Range, z.literal('max')])),
  repUnit: RepUnit.default('rep'),
  /** Reps of each set where they change, as 10-8-6. */
  repScheme: said(z.array(z.number().int().positive())),
  workSeconds: said(Range),
  holdSeconds: said(Range),
  holdPer: said(z.enum(['rep', 'set'])),
  distanceM: said(Range),
  intervalSeconds: said(Range),
  perSide: z.boolean().default(false),
  restSeconds: said(Range),
  restBetween: said(RestBetween),
  /** lowering-pause-lifting-pause; x = not said. */
  tempo: said(z.string()),
  load: said(z.string()),
  effort: said(z.string()),
  frequency: said(z.string()),
  progression: said(z.string()),
  /** A deliberate "as long as it feels good". */
  open: said(z.string()),
  approx: z.boolean().default(false),
  /** Ids of the segments done with this one (superset, circuit). */
  groupWith: z.array(z.string()).default([]),
  /** Every phrase the dose came from, the most specific first. */
  said: z.array(Quote).default([]),
  unsure: z.boolean().default(false),
  why: z.array(z.string()).default([]),
}
/** How much to do. byLevel = other doses for other levels; then = what follows in the same set (ten full, then ten pulses). */
export interface Prescription extends z.infer<z.ZodObject<typeof prescriptionFields>> {
  byLevel: { level: string; dose: Prescription }[]
  then: Prescription[]
}
export const Prescription: z.ZodType<Prescription> = loose({
  ...prescriptionFields,
  byLevel: z.array(loose({ level: z.string(), dose: z.lazy(() => Prescription) })).default([]),
  then: z.array(z.lazy(() => Prescription)).default([]),
})
/** A dose from the fields that are said; all others come out as "not said". */
export const buildPrescription = (fields: Partial<Prescription>): Prescription => Prescription.parse(fields)

export const CUE_KINDS = [
  'setup',
  'execution',
  'breathing',
  'tempo',
  'range',
  'fault',
  'caution',
  'easier',
  'harder',
  'equipment',
  'focus',
] as const
export const CueKind = z.enum(CUE_KINDS)
export type CueKind = z.infer<typeof CueKind>

/** One tagged thing said, in the exact words of the transcript. */
export const Cue = loose({
  ...mark,
  id: z.string().min(1),
  kind: CueKind,
  startMs: Ms,
  endMs: Ms,
  text: z.string(),
})
export type Cue = z.infer<typeof Cue>

/** A warning said in the class or written on the lesson, and the hazard it covers. */
export const Caution = loose({
  ...mark,
  hazard: z.string().min(1),
  scope: z.enum(['exercise', 'class']).default('exercise'),
  source: z.enum(['spoken', 'written']).default('written'),
  text: z.string(),
  atMs: said(Ms),
})
export type Caution = z.infer<typeof Caution>

/** Points to an easier or harder exercise: on this sheet, in the library, or in words only. */
export const Ref = loose({
  segmentId: z.string().optional(),
  lessonId: z.string().optional(),
  text: z.string().optional(),
})
export type Ref = z.infer<typeof Ref>

/** One stretch that teaches the exercise. The first is the main teaching and, unless said otherwise, alone in the clip. */
export const Span = loose({
  startMs: Ms,
  endMs: Ms,
  inClip: z.boolean().optional(),
  lockedIn: z.boolean().default(false),
  mediaId: z.string().optional(),
})
type SpanRead = z.infer<typeof Span>
export type Span = Omit<SpanRead, 'inClip'> & { inClip: boolean }

/** Counting aloud: up to where, in which words, from when on. */
export const Counted = loose({ atMs: Ms, text: z.string(), upTo: z.number().int().positive() })
export type Counted = z.infer<typeof Counted>

/**
 * Words that name a side. As: `turn` = worked from here on, `first` = announced to come first, `limb` = what works,
 * `aside` = named in passing (a support, a direction, a side that is done), `mirrored` = taught as in a mirror.
 */
export const SideNamed = loose({
  atMs: Ms,
  text: z.string(),
  side: z.enum(['left', 'right', 'other', 'both']),
  as: z.enum(['turn', 'first', 'limb', 'aside', 'mirrored']),
})
export type SideNamed = z.infer<typeof SideNamed>

export const CutOut = loose({ startMs: Ms, endMs: Ms, why: z.string().default('') })
export type CutOut = z.infer<typeof CutOut>

/** A few clean repetitions, for the poster and for playing round and round. */
export const Loop = loose({ startMs: Ms, endMs: Ms })
export type Loop = z.infer<typeof Loop>

export const Use = z.enum(['lesson', 'keep', 'leave-out'])
export type Use = z.infer<typeof Use>
export const View = z.enum(['front', 'back', 'side'])
export type View = z.infer<typeof View>
export const SideShown = z.enum(['left', 'right', 'both'])
export type SideShown = z.infer<typeof SideShown>

/** One exercise as taught: its spans, dose, cues and cautions. */
export const Segment = loose({
  ...mark,
  id: z.string().min(1),
  use: Use.default('lesson'),
  exercise: loose({
    name: z.string().min(1),
    alsoCalled: z.array(z.string()).default([]),
    catalogueId: said(z.string()),
  }),
  spans: z
    .array(Span)
    .default([])
    .transform((spans): Span[] => spans.map((span, index) => ({ ...span, inClip: span.inClip ?? index === 0 }))),
  cutOuts: z.array(CutOut).default([]),
  loop: said(Loop),
  equipment: z.array(z.string()).default([]),
  position: said(z.string()),
  view: said(View),
  mirrored: said(z.boolean()),
  sideShown: said(SideShown),
  prescription: said(Prescription),
  cues: z.array(Cue).default([]),
  cautions: z.array(Caution).default([]),
  easier: z.array(Ref).default([]),
  harder: z.array(Ref).default([]),
  /** Runs of counting aloud; evidence of what was done, no dose. Absent = none heard. */
  counted: z.array(Counted).optional(),
  /** Sides named while it is taught, in order of speech; evidence, no marks. Absent = none heard. */
  sidesNamed: z.array(SideNamed).optional(),
  /** This clip louder (+) or softer (-) than the class's one gain makes it, dB. */
  gainDb: z.number().min(-20).max(20).optional(),
  /** Names of the fields a person set; drafting again leaves these alone. */
  setByPerson: z.array(z.string()).default([]),
})
export type Segment = z.infer<typeof Segment>

export const Waiver = loose({
  segmentId: z.string(),
  ruleId: z.string(),
  hazard: said(z.string()),
  reason: z.string().min(1),
  by: z.string(),
  /** UTC milliseconds. */
  atUtc: z.number().int(),
})
export type Waiver = z.infer<typeof Waiver>

/** A person in the picture (optional field `people` of the sheet). */
export const PersonShown = loose({
  name: z.string(),
  consent: z.enum(['given', 'withdrawn', 'none', 'unknown']).default('unknown'),
  scope: said(z.string()),
  /** UTC milliseconds until which the consent holds; null = no end. */
  untilUtc: said(z.number().int()),
  under18: z.boolean().default(false),
})
export type PersonShown = z.infer<typeof PersonShown>

export const Media = loose({
  id: z.string().min(1),
  role: z.enum(['camera', 'sound']),
  label: z.string().default(''),
  sha256: z.string(),
  /** Where this file starts on the class's clock; may be negative. */
  startMs: z.number().int(),
  durationMs: Ms,
  driftPpm: z.number().default(0),
})
export type Media = z.infer<typeof Media>

/** Which sound is published: sound recorded apart (its media id), else a track of the film, from 1. */
export const PublishedSound = loose({
  mediaId: said(z.string()),
  track: said(z.number().int().positive()),
  /** All clips louder (+) or softer (-) than lessons usually are, dB; absent = as usual. */
  gainDb: z.number().min(-20).max(20).optional(),
})
export type PublishedSound = z.infer<typeof PublishedSound>

/** A named part of the class, by the teacher's own breaks. */
export const Section = loose({ title: z.string(), startMs: Ms, endMs: Ms })
export type Section = z.infer<typeof Section>

export const Source = loose({ sha256: z.string(), durationMs: Ms })
export type Source = z.infer<typeof Source>

export const Music = z.enum(['none', 'own', 'licensed', 'unknown'])
export type Music = z.infer<typeof Music>

export const LogSheet = loose({
  format: z.literal(LOG_SHEET_FORMAT),
  version: z.literal(LOG_SHEET_VERSION),
  title: z.string().default(''),
  language: z.string().default('en'),
  durationMs: Ms,
  source: said(Source),
  audience: z.array(Audience).default([]),
  /** Whom its words point to, as a draft heard them; cautions read it where nobody has said. Absent = nothing heard. */
  audienceHeard: z.array(Audience).optional(),
  /** Empty = one file. */
  media: z.array(Media).default([]),
  sections: z.array(Section).default([]),
  segments: z.array(Segment).default([]),
  classCautions: z.array(Caution).default([]),
  /** Exercises named but never taught. */
  mentioned: z.array(z.string()).default([]),
  waivers: z.array(Waiver).default([]),
  /** Rights to the music heard; absent = nobody has said. */
  music: said(Music),
  /** People in the picture; null = nobody has said, [] = nobody but the instructor. */
  people: said(z.array(PersonShown)),
  /** Absent = the film's own sound, its default track. */
  publishedSound: PublishedSound.optional(),
  /** Names of the sheet's own fields a person set (title, sections ...); drafting again leaves these alone. Absent = none. */
  setByPerson: z.array(z.string()).optional(),
})
export type LogSheet = z.infer<typeof LogSheet>
