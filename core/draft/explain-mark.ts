/** Answers "why?" for a mark of a log sheet: the words it came from, when, by which rule, how sure, and whose word it is now. */
import type { MarkRef } from '../../shared/edit.ts'
import type { Caution, LogSheet, Mark, Segment } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import { findHazard } from '../cautions/hazards.ts'
import { DRAFT_RULES } from './words/en/draft-rules.ts'

export interface Explanation {
  /** What the mark says, in short. */
  what: string
  /** The words it came from, the most specific first; empty when a person set it without any. */
  words: { atMs: Ms | null; text: string }[]
  /** The rule that made it and what the rule does; null = no rule, a person did. */
  rule: { id: string; says: string } | null
  /** 0-1; null = not said. */
  confidence: number | null
  /** Who stands for it. */
  by: 'draft' | 'person'
  state: Mark['state']
  /** What the draft was not sure of. */
  doubts: string[]
  /** Who says that it matters; cautions only. */
  source: string | null
}

/** Why a mark is on the sheet; null when the sheet holds no such mark. */
export function explainMark(sheet: LogSheet, ref: MarkRef): Explanation | null {
  const segment = sheet.segments.find((one) => one.id === ref.segmentId)
  if (ref.mark === 'caution') {
    const caution = (ref.segmentId === null ? sheet.classCautions : segment?.cautions)?.[ref.index]
    return caution?.hazard === ref.hazard ? explainCaution(caution) : null
  }
  if (!segment) return null
  if (ref.mark === 'segment') return explainSegment(segment)
  if (ref.mark === 'dose') {
    const dose = segment.prescription
    if (!dose) return null
    return { ...explain(dose, `dose of ${segment.exercise.name}`, [...dose.said]), doubts: [...dose.why] }
  }
  const cue = segment.cues.find(({ id }) => id === ref.cueId)
  return cue ? explain(cue, `${cue.kind} cue`, [{ atMs: cue.startMs, text: cue.text }]) : null
}

/** Every mark of the sheet, in its order: exercise, dose, cues, cautions; then the cautions of the class. */
export function listMarks(sheet: LogSheet): MarkRef[] {
  const cautionRefs = (segmentId: string | null, cautions: readonly Caution[]): MarkRef[] =>
    cautions.map(({ hazard }, index) => ({ mark: 'caution', segmentId, index, hazard }))
  return [
    ...sheet.segments.flatMap(({ id: segmentId, prescription, cues, cautions }): MarkRef[] => [
      { mark: 'segment', segmentId },
      ...(prescription ? [{ mark: 'dose', segmentId } as const] : []),
      ...cues.map(({ id: cueId }) => ({ mark: 'cue', segmentId, cueId }) as const),
      ...cautionRefs(segmentId, cautions),
    ]),
    ...cautionRefs(null, sheet.classCautions),
  ]
}

/** The name as it was said last in the list of names; its place is the start of the main span. */
function explainSegment(segment: Segment): Explanation {
  const { name, alsoCalled } = segment.exercise
  const [main] = segment.spans
  const words = [...new Set([...alsoCalled, name])].map((text) => ({ atMs: main?.startMs ?? null, text }))
  return explain(segment, name, words)
}

function explainCaution(caution: Caution): Explanation {
  const hazard = findHazard(caution.hazard)
  return {
    ...explain(caution, `caution: ${hazard?.name ?? caution.hazard}`, [{ atMs: caution.atMs, text: caution.text }]),
    source: hazard?.source ?? null,
  }
}

function explain(mark: Mark, what: string, words: Explanation['words']): Explanation {
  const { origin, state, confidence, ruleId } = mark
  const rule = ruleId === null ? null : { id: ruleId, says: DRAFT_RULES[ruleId] ?? 'A rule of another version.' }
  return { what, words, rule, confidence, by: origin, state, doubts: [], source: null }
}
