/** Reads a transcript in any of its forms: WebVTT, SRT, stamped text, JSON with words, or a class plan. */
import { AppError } from '../../shared/errors.ts'
import type { Ms } from '../../shared/time.ts'
import type { ClassPlan, Transcript } from '../../shared/transcript.ts'
import { bracketStamps } from './bracket-stamps.ts'
import { MAX_TRANSCRIPT_CHARACTERS, cleanText, isNotText } from './clean-text.ts'
import { parseClassPlan } from './parse-class-plan.ts'
import { parseSrt } from './parse-srt.ts'
import { parseStampedText } from './parse-stamped-text.ts'
import { parseVtt } from './parse-vtt.ts'
import { parseWords } from './parse-words.ts'

export interface ParseOptions {
  /** Length of the recording, where it is known: the end of the last line, and a bound for all times. */
  durationMs?: Ms | null
}

/**
 * Reads the text; its form is told by content, not by file name.
 * @throws AppError file-empty, file-too-big, file-not-text; transcript-unknown when no form fits;
 *   transcript-line or transcript-order with one detail a bad line (`line 12: …`). Nothing is half-read.
 */
export function parseTranscript(text: string, options: ParseOptions = {}): Transcript | ClassPlan {
  if (text.length > MAX_TRANSCRIPT_CHARACTERS) {
    throw new AppError('file-too-big', 'The transcript is larger than 20 MB. Give the text of one class.')
  }
  if (isNotText(text)) {
    throw new AppError(
      'file-not-text',
      'The transcript is no UTF-8 text. Save it as plain text (UTF-8), then try again.',
    )
  }
  const clean = cleanText(text)
  if (clean.trim() === '') throw new AppError('file-empty', 'The transcript is empty.')
  const durationMs = options.durationMs ?? null
  switch (detectForm(clean)) {
    case 'webvtt':
      return parseVtt(clean, durationMs)
    case 'srt':
      return parseSrt(clean, durationMs)
    case 'words-json':
      return parseWords(clean, durationMs)
    case 'stamped-text':
      return parseStampedText(clean, durationMs)
    case 'plan': {
      const stamped = bracketStamps(clean)
      return stamped === null ? parseClassPlan(clean) : parseStampedText(stamped, durationMs)
    }
  }
}

/** A time stamp in square brackets at the start of a line: `[1:05]`, `[01:02:33]`. */
const STAMPED_LINE = /^[ \t]*\[[ \t]*\d+:[\d:.,]*[ \t]*\]/m

function detectForm(text: string): Transcript['form'] | 'plan' {
  const start = text.trimStart()
  if (/^webvtt/i.test(start)) return 'webvtt'
  if (start.startsWith('{') || /^\[\s*[{\]]/.test(start)) return 'words-json'
  const firstLines = start.split('\n', 40)
  if (firstLines.some((line) => STAMPED_LINE.test(line))) return 'stamped-text'
  if (firstLines.some((line) => line.includes('-->'))) return 'srt'
  return STAMPED_LINE.test(text) ? 'stamped-text' : 'plan'
}
