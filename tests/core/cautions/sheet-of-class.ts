/** Test help: a log sheet from an annotated class, and small segments by hand. */
import { LogSheet, Segment } from '../../../shared/log-sheet.ts'
import type { Audience } from '../../../shared/log-sheet.ts'

interface GoldRange {
  min: number | null
  max: number | null
}
type GoldNumber = number | [number, number] | 'max' | null

export interface GoldExercise {
  name: string
  aliases: string[]
  start: number
  end: number
  alsoAt: [number, number][]
  equipment: string[]
  position: string
  prescription: {
    sets: GoldNumber
    reps: GoldNumber
    seconds: GoldNumber
    holdSeconds: GoldNumber
    distanceM: GoldNumber
    perSide: boolean
    load: string | null
    scheme: string
    evidence: string
    at: number
  } | null
  cues: { type: string; at: number; evidence: string }[]
  requiredCautions: { reason: string; spoken: boolean }[]
}
export interface GoldClass {
  id: string
  title: string
  duration: number
  exercises: GoldExercise[]
}
export interface GoldExtra {
  cautionEvidence: Record<string, Record<string, { scope: string; at: number; evidence: string }>>
  classWideCautions: { at: number; evidence: string; covers: string[] }[]
}

/** The annotated class as a log sheet: attributes, cues and doses as annotated; class lines as class cautions, hazards as `hazardsOf` reads them. */
export function sheetOfClass(
  gold: GoldClass,
  extra: GoldExtra,
  audience: readonly Audience[],
  hazardsOf: (text: string) => readonly string[],
): LogSheet {
  const ms = (seconds: number) => Math.round(seconds * 1000)
  return LogSheet.parse({
    format: 'repslate-log-sheet',
    version: 1,
    title: gold.title,
    durationMs: ms(gold.duration),
    audience,
    segments: gold.exercises.map((one, index) => ({
      id: `seg-${index + 1}`,
      exercise: { name: one.name, alsoCalled: one.aliases },
      spans: [[one.start, one.end] as const, ...one.alsoAt].map(([start, end]) => ({
        startMs: ms(start),
        endMs: ms(end),
      })),
      equipment: one.equipment,
      position: one.position,
      prescription: one.prescription && {
        scheme: one.prescription.scheme,
        sets: range(one.prescription.sets),
        reps: one.prescription.reps === 'max' ? 'max' : range(one.prescription.reps),
        workSeconds: range(one.prescription.seconds),
        holdSeconds: range(one.prescription.holdSeconds),
        distanceM: range(one.prescription.distanceM),
        perSide: one.prescription.perSide,
        load: one.prescription.load,
        said: [{ atMs: ms(one.prescription.at), text: one.prescription.evidence }],
      },
      cues: one.cues.map((cue, at) => ({
        id: `cue-${at + 1}`,
        kind: cue.type,
        startMs: ms(cue.at),
        endMs: ms(cue.at) + 2000,
        text: cue.evidence,
      })),
    })),
    classCautions: extra.classWideCautions.flatMap(({ at, evidence }) =>
      hazardsOf(evidence).map((hazard) => ({
        hazard,
        scope: 'class',
        source: 'spoken',
        text: evidence,
        atMs: ms(at),
      })),
    ),
  })
}

/** A segment by its name and what a case needs of it. */
export function segmentNamed(name: string, fields: Record<string, unknown> = {}): Segment {
  return Segment.parse({
    id: 'seg-1',
    exercise: { name },
    spans: [{ startMs: 0, endMs: 60_000 }],
    ...fields,
  })
}

/** A sheet around segments. */
export function sheetWith(segments: readonly Segment[], fields: Record<string, unknown> = {}): LogSheet {
  return LogSheet.parse({ format: 'repslate-log-sheet', version: 1, durationMs: 600_000, segments, ...fields })
}

/** A cue of a kind, said at a second. */
export function cueSaid(kind: string, text: string, second = 5, id = `${kind}-${second}-${text.length}`): object {
  return { id, kind, startMs: second * 1000, endMs: second * 1000 + 2000, text }
}

function range(value: GoldNumber): GoldRange | null {
  if (value === null || value === 'max') return null
  return typeof value === 'number' ? { min: value, max: value } : { min: value[0], max: value[1] }
}
