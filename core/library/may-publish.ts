/** Which segments may become lessons, and why the others may not. */
import type { CheckReport } from '../../shared/check-report.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'

export interface Held {
  segment: Segment
  /** What each stop says. */
  reasons: string[]
  /** The rule behind each of them, in the same order. */
  rules: string[]
}

/** Splits the lessons of a sheet into those without a stop and those held back. A stop on the whole class holds all. */
export function mayPublish(sheet: LogSheet, report: CheckReport): { ready: Segment[]; held: Held[] } {
  const stops = report.findings.filter((finding) => finding.severity === 'stop')
  const lessons = sheet.segments.filter((segment) => segment.use === 'lesson' && segment.state !== 'declined')
  const all = lessons.map((segment) => {
    const own = stops.filter((stop) => stop.segmentId === segment.id || stop.segmentId === null)
    return { segment, reasons: own.map(({ message }) => message), rules: own.map(({ ruleId }) => ruleId) }
  })
  return {
    ready: all.filter(({ reasons }) => reasons.length === 0).map(({ segment }) => segment),
    held: all.filter(({ reasons }) => reasons.length > 0),
  }
}
