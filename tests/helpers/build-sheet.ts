// Small sheets for tests, built by name: a class of ten minutes unless said otherwise.
import { Caution, Cue, LogSheet, LOG_SHEET_FORMAT, Segment } from '../../shared/log-sheet.ts'
import type { Span } from '../../shared/log-sheet.ts'

export const DURATION_MS = 600_000

/** A sheet of the given fields; segments may be written short, as in a hand-made file. */
export function buildSheet(fields: Record<string, unknown> = {}): LogSheet {
  return LogSheet.parse({ format: LOG_SHEET_FORMAT, version: 1, durationMs: DURATION_MS, ...fields })
}

/** A segment with one span from start to end (in seconds), by default as a person would write it. */
export function buildSegment(id: string, startS: number, endS: number, fields: Record<string, unknown> = {}): Segment {
  return Segment.parse({
    id,
    exercise: { name: `exercise ${id}` },
    spans: [{ startMs: startS * 1000, endMs: endS * 1000 }],
    ...fields,
  })
}

/** The mark of something the draft proposed. */
export const PROPOSED = { origin: 'draft', state: 'proposed', confidence: 0.8, ruleId: 'test-rule' } as const

export function buildCue(id: string, startS: number, fields: Record<string, unknown> = {}): Cue {
  return Cue.parse({
    id,
    kind: 'execution',
    startMs: startS * 1000,
    endMs: startS * 1000 + 900,
    text: `words of ${id}`,
    ...fields,
  })
}

export function buildCaution(hazard: string, fields: Record<string, unknown> = {}): Caution {
  return Caution.parse({ hazard, text: `mind the ${hazard}`, ...fields })
}

/** A span in seconds. */
export function span(startS: number, endS: number, fields: Partial<Span> = {}): Span {
  return { startMs: startS * 1000, endMs: endS * 1000, inClip: true, lockedIn: false, ...fields }
}
