/** Test help: a class of one exercise that has everything a lesson needs, and changes to it. */
import { LogSheet } from '../../../shared/log-sheet.ts'
import type { Finding } from '../../../shared/check-report.ts'
import { checkSheet } from '../../../core/checks/check-sheet.ts'
import type { CheckOptions } from '../../../core/checks/rule.ts'
import { cueSaid } from '../cautions/sheet-of-class.ts'

export const GOOD_CUES = {
  setup: cueSaid('setup', 'Stand tall behind the chair, feet hip width.', 2),
  support: cueSaid('caution', 'Keep hold of the chair all the way through.', 6),
  lift: cueSaid('execution', 'Lift both heels, then lower with control.', 10),
  easier: cueSaid('easier', 'Or lift only as high as a sheet of paper.', 14),
} as const

/** A heel raise for older adults: dose, set-up, support and easier option, all inside 0:00 to 1:00. */
export function goodSegment(fields: Record<string, unknown> = {}): Record<string, unknown> {
  return {
    id: 'heel',
    exercise: { name: 'heel raise' },
    spans: [{ startMs: 0, endMs: 60_000 }],
    prescription: { sets: { min: 2, max: 2 }, reps: { min: 10, max: 12 } },
    cues: Object.values(GOOD_CUES),
    ...fields,
  }
}

/** A class around segments; music and people are settled. */
export function classOf(segments: readonly Record<string, unknown>[], fields: Record<string, unknown> = {}): LogSheet {
  return LogSheet.parse({
    format: 'repslate-log-sheet',
    version: 1,
    title: 'Steady class',
    durationMs: 600_000,
    audience: ['older-adults'],
    music: 'none',
    people: [],
    segments,
    ...fields,
  })
}

/** "stop dose-missing" for each finding of a class of one changed exercise. */
export function foundIn(
  segment: Record<string, unknown>,
  fields: Record<string, unknown> = {},
  options: CheckOptions = {},
): string[] {
  return checkSheet(classOf([goodSegment(segment)], fields), options).findings.map(shortOf)
}

export function shortOf({ severity, ruleId, hazard }: Finding): string {
  return [severity, ruleId, ...(hazard == null ? [] : [hazard])].join(' ')
}

export const withoutCue = (...names: (keyof typeof GOOD_CUES)[]): object[] =>
  Object.entries(GOOD_CUES).flatMap(([name, cue]) => (names.some((one) => one === name) ? [] : [cue]))
