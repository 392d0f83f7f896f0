/** The check report in words, grouped by exercise, for the terminal. */
import type { CautionCoverage, CheckReport, Finding, Severity } from '../../shared/check-report.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'

/** Shape before colour: a stop, a warning and a note differ by their mark. */
const MARKS = { stop: '■', warn: '▲', note: '·' } as const satisfies Record<Severity, string>

export function describeReport(sheet: LogSheet, report: CheckReport): string {
  const lines: string[] = []
  const whole = report.findings.filter((finding) => finding.segmentId === null)
  if (whole.length > 0) lines.push('The whole class', ...whole.map(describeFinding), '')
  for (const segment of sheet.segments) {
    const own = report.findings.filter((finding) => finding.segmentId === segment.id)
    const needed = report.cautions.filter((row) => row.segmentId === segment.id && row.level !== 'info')
    const start = segment.spans[0]
    lines.push(
      `${start ? formatClock(start.startMs).padStart(7) : '      -'}  ${segment.exercise.name}  ${coveredWords(needed)}`,
    )
    lines.push(...own.map(describeFinding))
  }
  const stops = report.findings.filter((finding) => finding.severity === 'stop')
  const held = new Set(stops.map((finding) => finding.segmentId))
  const needed = report.cautions.filter((row) => row.level !== 'info')
  lines.push('')
  lines.push(stops.length === 0 ? 'No stops stand.' : `${stops.length} stops stand on ${held.size} exercises.`)
  lines.push(`Over the class, ${coveredWords(needed)}.`)
  return `${lines.join('\n')}\n`
}

/** "12 of 14 cautions covered": in the clip, written on the lesson, or waived with a reason. */
export function coveredWords(rows: readonly CautionCoverage[]): string {
  if (rows.length === 0) return 'no caution required'
  const covered = rows.filter((row) => row.state === 'waived' || (row.state !== 'missing' && row.inClip))
  return `${covered.length} of ${rows.length} cautions covered`
}

/** The hazard's slug is what a waiver in the sheet names. */
function describeFinding({ severity, message, ruleId, hazard }: Finding): string {
  return `         ${MARKS[severity]} ${severity.padEnd(4)}  ${message}  (${ruleId}${hazard ? `: ${hazard}` : ''})`
}
