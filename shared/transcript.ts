/** What was said, with times: the value every transcript reader returns. */
import type { Ms } from './time.ts'

export interface TimedWord {
  startMs: Ms
  endMs: Ms
  text: string
}

/** One line (or block, or caption) of a transcript. `text` is exact and on one line; quotes are substrings of it. */
export interface TranscriptLine {
  startMs: Ms
  endMs: Ms
  text: string
  /** Times of single words, where the file has them; else empty. */
  words: TimedWord[]
  speaker: string | null
}

export type TranscriptForm = 'webvtt' | 'srt' | 'stamped-text' | 'words-json'

export interface Transcript {
  kind: 'timed'
  form: TranscriptForm
  language: string | null
  durationMs: Ms
  lines: TranscriptLine[]
}

/** A class plan: exercises and doses in order, without times. */
export interface ClassPlan {
  kind: 'plan'
  title: string | null
  items: { line: number; name: string; doseText: string | null }[]
}
