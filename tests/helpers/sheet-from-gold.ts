// A perfect log sheet and check report, built from a class's annotation (tests/fixtures/corpus/README.md):
// what the draft and the checks would give if they made no mistake.
import { z } from 'zod'
import { CheckReport } from '../../shared/check-report.ts'
import { buildPrescription, Caution, CueKind, LogSheet, Scheme, Segment } from '../../shared/log-sheet.ts'
import type { Prescription, Quote, Range } from '../../shared/log-sheet.ts'

const Amount = z.union([z.number(), z.tuple([z.number(), z.number()])]).nullable()
const GoldExercise = z.looseObject({
  name: z.string(),
  aliases: z.array(z.string()),
  start: z.number(),
  end: z.number(),
  alsoAt: z.array(z.tuple([z.number(), z.number()])),
  equipment: z.array(z.string()),
  position: z.string().nullable(),
  prescription: z
    .object({
      sets: Amount,
      reps: z.union([Amount, z.literal('max')]),
      seconds: Amount,
      distanceM: Amount,
      perSide: z.boolean(),
      restSeconds: Amount,
      tempo: z.string().nullable(),
      holdSeconds: Amount,
      load: z.string().nullable(),
      scheme: Scheme,
      groupWith: z.array(z.string()),
      evidence: z.string(),
      at: z.number(),
    })
    .nullable(),
  cues: z.array(z.object({ type: CueKind, at: z.number(), evidence: z.string() })),
  requiredCautions: z.array(z.object({ reason: z.string(), spoken: z.boolean() })),
})
type GoldExercise = z.infer<typeof GoldExercise>

/** An annotation, gold.json. Times are seconds. */
export const Gold = z.looseObject({
  id: z.string(),
  title: z.string(),
  duration: z.number(),
  exercises: z.array(GoldExercise),
  mentionedOnly: z.array(z.string()),
  sections: z.array(z.object({ title: z.string(), start: z.number(), end: z.number() })),
})
export type Gold = z.infer<typeof Gold>

const Spoken = z.object({ at: z.number(), evidence: z.string() })
/** Side information, extra.json: where each caution is said, and what reps count. */
export const GoldExtra = z.looseObject({
  units: z.record(z.string(), z.string()),
  cautionEvidence: z.record(z.string(), z.record(z.string(), Spoken.extend({ scope: z.enum(['exercise', 'class']) }))),
  classWideCautions: z.array(Spoken.extend({ covers: z.array(z.string()) })),
})
export type GoldExtra = z.infer<typeof GoldExtra>

/** A block of the transcript. */
interface Block {
  startMs: number
  endMs: number
  text: string
}

/**
 * The sheet and the report that say exactly what the annotation says. Quotes are exact; their times are linear inside the
 * block (block start + character offset / block length x block duration).
 * @param extra adds the caution marks, which gold.json does not hold. @throws when a quote is not in the transcript.
 */
export function sheetFromGold(
  gold: Gold,
  transcriptText: string,
  extra?: GoldExtra,
): { sheet: LogSheet; report: CheckReport } {
  const blocks = readBlocks(transcriptText, gold.duration * 1000)
  const ids = new Map(gold.exercises.map((exercise, at) => [exercise.name, `seg-${at + 1}`]))
  const sheet = LogSheet.parse({
    format: 'repslate-log-sheet',
    version: 1,
    title: gold.title,
    durationMs: toMs(gold.duration),
    sections: gold.sections.map(({ title, start, end }) => ({ title, startMs: toMs(start), endMs: toMs(end) })),
    segments: gold.exercises.map((exercise) => buildSegment(exercise, blocks, ids, extra)),
    classCautions: extra?.classWideCautions.flatMap((caution) =>
      caution.covers.map((hazard) => buildCaution(hazard, { ...caution, scope: 'class' }, blocks)),
    ),
    mentioned: gold.mentionedOnly,
  })
  const cautions = gold.exercises.flatMap((exercise) =>
    exercise.requiredCautions.map(({ reason, spoken }) => ({
      segmentId: ids.get(exercise.name) ?? '',
      hazard: reason,
      ruleId: reason,
      level: 'must' as const,
      state: spoken ? ('spoken' as const) : ('missing' as const),
      inClip: spoken,
      concerns: 'everyone',
    })),
  )
  return { sheet, report: CheckReport.parse({ findings: [], cautions }) }
}

function buildSegment(
  exercise: GoldExercise,
  blocks: readonly Block[],
  ids: ReadonlyMap<string, string>,
  extra: GoldExtra | undefined,
): Segment {
  const id = ids.get(exercise.name) ?? ''
  const spans = [[exercise.start, exercise.end] as const, ...exercise.alsoAt]
  const spoken = Object.entries(extra?.cautionEvidence[exercise.name] ?? {})
  return Segment.parse({
    id,
    exercise: { name: exercise.name, alsoCalled: exercise.aliases },
    spans: spans.map(([start, end]) => ({ startMs: toMs(start), endMs: toMs(end) })),
    equipment: exercise.equipment,
    position: exercise.position,
    prescription: buildDose(exercise, blocks, ids, extra?.units[exercise.name]),
    cues: exercise.cues.map((cue, at) => {
      const place = findQuote(blocks, cue.evidence, cue.at)
      return { id: `${id}-cue-${at + 1}`, kind: cue.type, startMs: place.atMs, endMs: place.endMs, text: place.text }
    }),
    cautions: spoken.map(([hazard, caution]) => buildCaution(hazard, caution, blocks)),
  })
}

function buildDose(
  { prescription }: GoldExercise,
  blocks: readonly Block[],
  ids: ReadonlyMap<string, string>,
  unit: string | undefined,
): Prescription | null {
  if (!prescription) return null
  const { atMs, text } = findQuote(blocks, prescription.evidence, prescription.at)
  return buildPrescription({
    scheme: prescription.scheme,
    sets: toRange(prescription.sets),
    reps: prescription.reps === 'max' ? 'max' : toRange(prescription.reps),
    repUnit: unit === 'breaths' ? 'breath' : unit === 'strokes' ? 'stroke' : unit === 'breath cycles' ? 'cycle' : 'rep',
    workSeconds: toRange(prescription.seconds),
    holdSeconds: toRange(prescription.holdSeconds),
    distanceM: toRange(prescription.distanceM),
    restSeconds: toRange(prescription.restSeconds),
    perSide: prescription.perSide,
    tempo: prescription.tempo,
    load: prescription.load,
    groupWith: prescription.groupWith.map((name) => ids.get(name) ?? name),
    said: [{ atMs, text }],
  })
}

function buildCaution(
  hazard: string,
  spoken: { at: number; evidence: string; scope: 'exercise' | 'class' },
  blocks: readonly Block[],
): Caution {
  const { atMs, text } = findQuote(blocks, spoken.evidence, spoken.at)
  return Caution.parse({ hazard, scope: spoken.scope, source: 'spoken', text, atMs })
}

/** Blocks of the form `[m:ss] text` or `[h:mm:ss] text`; each lasts until the next. */
function readBlocks(text: string, durationMs: number): Block[] {
  const starts = text
    .trimEnd()
    .split('\n')
    .map((line) => {
      const match = /^\[(?:(\d+):)?(\d+):(\d\d)\] (.*)$/.exec(line)
      if (!match) throw new Error(`not a block: ${line}`)
      const [, hours = '0', minutes = '0', seconds = '0', words = ''] = match
      return { startMs: ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000, text: words }
    })
  return starts.map((block, at) => ({ ...block, endMs: starts[at + 1]?.startMs ?? durationMs }))
}

/** Where the exact words are said, the place nearest to the annotated time (seconds). */
function findQuote(blocks: readonly Block[], text: string, at: number): Quote & { endMs: number } {
  const places = blocks.flatMap((block) => {
    const timeOf = (offset: number): number =>
      Math.round(block.startMs + ((block.endMs - block.startMs) * offset) / block.text.length)
    const offsets = [...block.text.matchAll(new RegExp(escape(text), 'g'))].map((match) => match.index)
    return offsets.map((offset) => ({ atMs: timeOf(offset), endMs: timeOf(offset + text.length), text }))
  })
  const distance = (place: Quote): number => Math.abs(place.atMs - at * 1000)
  const [nearest] = places.sort((a, b) => distance(a) - distance(b))
  if (!nearest || distance(nearest) > 2000) throw new Error(`"${text}" is not said at ${at} s`)
  return nearest
}

function escape(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
}

function toRange(amount: z.infer<typeof Amount>): Range | null {
  if (amount === null) return null
  const [min, max] = typeof amount === 'number' ? [amount, amount] : amount
  return { min, max }
}

function toMs(seconds: number): number {
  return Math.round(seconds * 1000)
}
