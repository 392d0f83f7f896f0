/** Counts of a check report: what stands on each exercise, how many cautions are covered, which may be published. */
import type { CautionCoverage, CheckReport, Finding, Severity } from '../../shared/check-report.ts'

export interface SegmentSummary {
  segmentId: string
  counts: Record<Severity, number>
  /** Required cautions, and how many of them are in the clip, written, or waived. */
  needed: number
  covered: number
  publishable: boolean
}

export interface ReportSummary {
  /** Findings on the class as a whole. */
  counts: Record<Severity, number>
  segments: SegmentSummary[]
  needed: number
  covered: number
  waived: number
  /** "12 of 14 cautions covered" */
  text: string
}

/** The summary for the lessons named, in that order. */
export function summariseReport(report: CheckReport, segmentIds: readonly string[]): ReportSummary {
  const required = report.cautions.filter((row) => row.level !== 'info' && segmentIds.includes(row.segmentId))
  const covered = required.filter(isCovered).length
  return {
    counts: countsOf(report.findings.filter((finding) => finding.segmentId === null)),
    segments: segmentIds.map((id) => summaryOf(report, id)),
    needed: required.length,
    covered,
    waived: required.filter((row) => row.state === 'waived').length,
    text: required.length === 0 ? 'no caution required' : `${covered} of ${required.length} cautions covered`,
  }
}

/** The stops that hold a lesson back: its own, and those on the whole class. */
export function stopsOf(report: CheckReport, segmentId: string): Finding[] {
  return report.findings.filter(
    (finding) => finding.severity === 'stop' && (finding.segmentId === segmentId || finding.segmentId === null),
  )
}

/** True when the caution reaches the member, or a person has given it up with a reason. */
export function isCovered({ state, inClip }: CautionCoverage): boolean {
  return state === 'waived' || (state !== 'missing' && inClip)
}

function summaryOf(report: CheckReport, segmentId: string): SegmentSummary {
  const required = report.cautions.filter((row) => row.level !== 'info' && row.segmentId === segmentId)
  return {
    segmentId,
    counts: countsOf(report.findings.filter((finding) => finding.segmentId === segmentId)),
    needed: required.length,
    covered: required.filter(isCovered).length,
    publishable: stopsOf(report, segmentId).length === 0,
  }
}

function countsOf(findings: readonly Finding[]): Record<Severity, number> {
  const count = (severity: Severity) => findings.filter((finding) => finding.severity === severity).length
  return { stop: count('stop'), warn: count('warn'), note: count('note') }
}
