/** Captions: what is shown when, and what a check says of it. */
import type { Severity } from './check-report.ts'
import type { Ms } from './time.ts'

/** One caption. Times in whole ms, endMs after startMs. Lines are plain text, one to three, none empty. */
export interface CaptionCue {
  startMs: Ms
  endMs: Ms
  lines: string[]
  /** Who speaks, where the transcript says so. */
  speaker?: string | null
  /** One line, unique in its file. */
  id?: string
}

/** What is wrong with one caption; cueIndex counts from 0 in the list that was checked. */
export interface CaptionFinding {
  ruleId: string
  severity: Severity
  cueIndex: number
  message: string
  /** The published rule behind the number. */
  source: string
}
