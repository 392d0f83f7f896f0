/** Groups timed words to lines a person can read: at sentence ends, at pauses, and before a line grows too long. */
import type { TimedWord, TranscriptLine } from '../../shared/transcript.ts'

/** A pause that ends a line, in ms. */
const PAUSE_MS = 700
/** Past this many characters a line ends at the next short pause or clause end, and in any case at the second number. */
const LONG = 120
const LONGEST = 200
const SHORT_PAUSE_MS = 250

/** Lines in order; a line's text is its words joined by one space. */
export function groupWords(words: readonly TimedWord[]): TranscriptLine[] {
  const lines: TranscriptLine[] = []
  let group: TimedWord[] = []
  let length = 0
  words.forEach((word, index) => {
    group.push(word)
    length += word.text.length + 1
    const next = words[index + 1]
    if (next && !endsLine(word, next, length)) return
    lines.push(lineOf(group))
    group = []
    length = 0
  })
  return lines
}

function endsLine(word: TimedWord, next: TimedWord, length: number): boolean {
  const pauseMs = next.startMs - word.endMs
  if (pauseMs >= PAUSE_MS || length >= LONGEST) return true
  if (/[.?!…]["”’)]*$/.test(word.text) && !/^(?:\p{L}\.)+$/u.test(word.text)) return true
  return length >= LONG && (pauseMs >= SHORT_PAUSE_MS || /[,;:]$/.test(word.text))
}

function lineOf(words: TimedWord[]): TranscriptLine {
  return {
    startMs: words[0]?.startMs ?? 0,
    endMs: words.reduce((latest, word) => Math.max(latest, word.endMs), 0),
    text: words.map((word) => word.text).join(' '),
    words,
    speaker: null,
  }
}
