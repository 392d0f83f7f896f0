/** Drafts segments from a class plan: one exercise a line, without times, the dose read from its text. */
import { Segment } from '../../shared/log-sheet.ts'
import type { ClassPlan } from '../../shared/transcript.ts'
import { findEntry } from '../catalogue/find-entry.ts'
import { readDose } from '../dose/read-dose.ts'
import { describeExercise } from './describe-taught.ts'

/** The segments of a plan in its order; none has spans yet. */
export function draftPlan(plan: ClassPlan): Segment[] {
  return plan.items.map((item, index) => {
    const entry = findEntry(item.name)
    const read = item.doseText === null ? null : readDose(item.doseText, { still: entry?.still ?? false })
    const said = item.doseText === null ? [] : [{ atMs: 0, text: item.doseText }]
    const mark = { origin: 'draft', state: 'proposed', ruleId: 'class-plan' } as const
    const teaching = {
      entry,
      name: item.name,
      alsoCalled: [],
      spans: [],
      confidence: entry ? 0.9 : 0.7,
      ruleId: 'class-plan',
    }
    return Segment.parse({
      ...mark,
      id: `seg-${String(index + 1)}`,
      confidence: teaching.confidence,
      ...describeExercise(teaching, item.name, [], []),
      prescription: read && { ...read, ...mark, confidence: read.unsure ? 0.5 : 0.9, said },
    })
  })
}
