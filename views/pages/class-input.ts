/** What the pages of a class are built from, and the words for it that are made elsewhere. */
import type { CautionCoverage, CheckReport } from '../../shared/check-report.ts'
import type { Edit } from '../../shared/edit.ts'
import type { LogSheet, Prescription, Segment } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'
import type { Ms } from '../../shared/time.ts'

/** A required caution of one lesson. */
export interface NeedInput extends Pick<CautionCoverage, 'segmentId' | 'hazard' | 'state' | 'inClip' | 'concerns'> {
  level: 'must' | 'should'
  /** To be read after "because". */
  why: string
  said: { text: string; atMs: Ms | null } | null
}

/** A drafted class, checked. */
export interface WorkInput {
  sheetId: string
  version: number
  sheet: LogSheet
  report: CheckReport
  /** "12 of 14 cautions covered" */
  covered: string
  needs: readonly NeedInput[]
  published: ReadonlySet<string>
  undo: { opId: string; op: Edit } | null
  redo: { opId: string; op: Edit } | null
}

export interface ClassWords {
  /** totals: how long it takes, with what was assumed; '' = cannot be told. */
  dose: (dose: Prescription) => { text: string; spoken: string; totals: string; assumed: readonly string[] }
  /** name = short; offer = words to write on a lesson; source = with its grade, '' = none. */
  hazard: (slug: string) => { name: string; offer: string; source: string }
  /** All that can be chosen by name. */
  hazards: readonly { slug: string; name: string }[]
  positions: readonly string[]
  /** False = nobody may waive it. */
  canWaive: (ruleId: string) => boolean
}

/** Where a page of a class lives, and where its forms go. */
export function classAddress(recordingId: string): string {
  return `/recordings/${encodeURIComponent(recordingId)}`
}

/** The class page with this exercise open, at this moment (W3C Media Fragments URI 1.0, 2012, section 4.2.1). */
export function placeAddress(recordingId: string, segmentId: string | null, atMs: Ms | null): string {
  const query = segmentId === null ? '' : `?segment=${encodeURIComponent(segmentId)}`
  return `${classAddress(recordingId)}${query}${atMs === null ? '' : `#t=${String(atMs / 1000)}`}`
}

/** "1:12 to 2:40" of the main teaching; what is not placed yet says so. */
export function timesOf({ spans }: Pick<Segment, 'spans'>): string {
  const [main] = spans
  return main ? `${formatClock(main.startMs)} to ${formatClock(main.endMs)}` : 'not placed yet'
}

/** A choice of a list, one of them chosen. */
export interface Option {
  value: string
  label: string
  chosen: boolean
}

export function optionsOf(names: Readonly<Record<string, string>>, chosen: string | null, none?: string): Option[] {
  const given = Object.entries(names).map(([value, label]) => ({ value, label, chosen: value === chosen }))
  return none === undefined ? given : [{ value: '', label: none, chosen: (chosen ?? '') === '' }, ...given]
}
