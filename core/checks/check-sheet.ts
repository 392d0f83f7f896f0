/** Checks a log sheet: runs the list of rules, takes out what is waived, and tells where each caution stands. */
import type { CheckReport, Finding } from '../../shared/check-report.ts'
import type { LogSheet, Waiver } from '../../shared/log-sheet.ts'
import { CAUTION_RULES, coverCautions, coverageRow } from '../cautions/cover-cautions.ts'
import type { CheckContext, CheckOptions, Found, Rule } from './rule.ts'
import { SPANS_BROKEN } from './rules/find-broken-spans.ts'
import { CAUTION_OUTSIDE_CLIP } from './rules/find-cautions-outside-clip.ts'
import { MEANS_NOTHING_ALONE } from './rules/find-empty-words.ts'
import { COUNTED_DIFFERS } from './rules/find-other-counts.ts'
import { LIMIT_PASSED } from './rules/find-passed-limits.ts'
import { PEAK_HOLD_LONG } from './rules/find-long-peaks.ts'
import { DOSE_INCOMPLETE } from './rules/find-incomplete-dose.ts'
import { CAPTIONS_MISSING } from './rules/find-missing-captions.ts'
import { CAUTION_MISSING } from './rules/find-missing-cautions.ts'
import { PERSON_WITHOUT_CONSENT } from './rules/find-missing-consent.ts'
import { DOSE_MISSING } from './rules/find-missing-dose.ts'
import { EASIER_MISSING } from './rules/find-missing-easier.ts'
import { SETUP_MISSING } from './rules/find-missing-setup.ts'
import { ONE_SIDE_SHOWN } from './rules/find-one-sided-clips.ts'
import { SIDE_DIFFERS } from './rules/find-other-sides.ts'
import { SEGMENTS_OVERLAP } from './rules/find-overlaps.ts'
import { waiverRefused } from './rules/find-refused-waivers.ts'
import { MUSIC_UNKNOWN } from './rules/find-unknown-music.ts'
import { DOSE_UNLIKELY } from './rules/find-unlikely-dose.ts'

const MAIN_RULES: readonly Rule[] = [
  SPANS_BROKEN,
  DOSE_MISSING,
  CAUTION_MISSING,
  CAUTION_OUTSIDE_CLIP,
  CAPTIONS_MISSING,
  MUSIC_UNKNOWN,
  PERSON_WITHOUT_CONSENT,
  DOSE_INCOMPLETE,
  DOSE_UNLIKELY,
  COUNTED_DIFFERS,
  LIMIT_PASSED,
  PEAK_HOLD_LONG,
  SIDE_DIFFERS,
  ONE_SIDE_SHOWN,
  SETUP_MISSING,
  EASIER_MISSING,
  MEANS_NOTHING_ALONE,
  SEGMENTS_OVERLAP,
]

/** Every rule, in the order of its findings within one segment and severity. */
export const CHECK_RULES: readonly Rule[] = [
  ...MAIN_RULES,
  waiverRefused(MAIN_RULES.filter((rule) => !rule.waivable).map((rule) => rule.id)),
]

/**
 * The check report of a sheet. Only what shall become a lesson is checked, and what is declined says nothing.
 * Findings come class first, then by segment as on the sheet, stops before warnings before notes.
 */
export function checkSheet(sheet: LogSheet, options: CheckOptions = {}): CheckReport {
  const segments = sheet.segments.filter((segment) => segment.use === 'lesson' && segment.state !== 'declined')
  const lessons = options.lessons ?? coverCautions(sheet, segments)
  const context: CheckContext = {
    sheet,
    lessons,
    captions: options.captions ?? null,
    durationMs: options.durationMs ?? sheet.source?.durationMs ?? (sheet.durationMs > 0 ? sheet.durationMs : null),
    nowUtc: options.nowUtc ?? null,
  }
  const findings = CHECK_RULES.flatMap((rule) =>
    rule
      .find(context)
      .filter((found) => !isWaived(rule, found, sheet.waivers))
      .map((found) => findingOf(rule, found)),
  )
  return {
    findings: inOrder(findings, sheet),
    cautions: lessons.flatMap(({ required, takeCare }) => [...required.map(coverageRow), ...takeCare]),
  }
}

function findingOf(rule: Rule, found: Found): Finding {
  return {
    ruleId: rule.id,
    severity: found.severity,
    segmentId: found.segmentId,
    hazard: found.hazard ?? null,
    startMs: found.at?.startMs ?? null,
    endMs: found.at?.endMs ?? null,
    message: found.message,
    why: found.why ?? rule.why,
    source: found.source ?? rule.source,
  }
}

/** Cautions are waived where they are covered, one hazard at a time. */
function isWaived(rule: Rule, { segmentId }: Found, waivers: readonly Waiver[]): boolean {
  if (!rule.waivable || segmentId === null || CAUTION_RULES.includes(rule.id)) return false
  return waivers.some((waiver) => waiver.segmentId === segmentId && waiver.ruleId === rule.id)
}

const SEVERITIES = ['stop', 'warn', 'note'] as const

/** A stable sort: rules keep the order of the list, findings of one rule the order of finding. */
function inOrder(findings: readonly Finding[], sheet: LogSheet): Finding[] {
  const places = new Map(sheet.segments.map((segment, index) => [segment.id, index]))
  const place = ({ segmentId }: Finding) => (segmentId === null ? -1 : (places.get(segmentId) ?? places.size))
  return findings.toSorted(
    (a, b) => place(a) - place(b) || SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity),
  )
}
