/** What a check rule is: an id, why it matters, who says so, and what it finds. */
import type { Severity } from '../../shared/check-report.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import type { Ms, Stretch } from '../../shared/time.ts'
import type { CoveredLesson } from '../cautions/cover-cautions.ts'

/** What the caller knows beyond the sheet. All of it may be left out. */
export interface CheckOptions {
  /** Whether lessons have captions: each by id, or one answer for all; null = not known. */
  captions?: Readonly<Record<string, boolean>> | boolean | null
  /** How long the recording is; null = as the sheet says. */
  durationMs?: Ms | null
  /** UTC milliseconds, to tell whether a consent has run out; null = not known. */
  nowUtc?: number | null
  /** What coverCautions says of the sheet's lessons, where it is known already; absent = it is asked. */
  lessons?: readonly CoveredLesson[]
}

/** What a rule reads. */
export interface CheckContext {
  sheet: LogSheet
  /** Segments that shall become lessons: use is lesson, not declined; in the order of the sheet. */
  lessons: readonly CoveredLesson[]
  captions: Readonly<Record<string, boolean>> | boolean | null
  durationMs: Ms | null
  nowUtc: number | null
}

/** What a rule finds; the rule's own why and source are added to it. */
export interface Found {
  severity: Severity
  /** Null = the whole class. */
  segmentId: string | null
  at: Stretch | null
  /** What is wrong and what to do. */
  message: string
  hazard?: string
  /** In place of the rule's own. */
  why?: string
  source?: string
}

export interface Rule {
  id: string
  why: string
  source: string
  /** False: nobody may waive it. */
  waivable: boolean
  find: (context: CheckContext) => Found[]
}

/** The first kept span of a segment, to point at; null when it has none. */
export function placeOf(segment: Segment): Stretch | null {
  const span = segment.spans.find((one) => one.inClip) ?? segment.spans[0]
  return span ? { startMs: span.startMs, endMs: span.endMs } : null
}

/** The name in front of a message, with a capital. */
export function titleOf(segment: Segment): string {
  const { name } = segment.exercise
  return name.charAt(0).toUpperCase() + name.slice(1)
}

/** Words as a quote in a message; longer than 80 characters they end behind a whole word. */
export function quoted(text: string): string {
  const plain = text.trim()
  if (plain.length <= QUOTE_CHARACTERS) return `"${plain}"`
  const cut = plain.slice(0, QUOTE_CHARACTERS - 1)
  const whole = /^(.{20,})\s\S*$/s.exec(plain.slice(0, QUOTE_CHARACTERS))?.[1] ?? cut
  return `"${whole.replace(/[\s.,;:!?–—-]+$/, '')}…"`
}

const QUOTE_CHARACTERS = 80
