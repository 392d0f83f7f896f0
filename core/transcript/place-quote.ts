/** Says when a piece of a transcript line was said, and quotes it. */
import type { Quote } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import type { TimedWord, TranscriptLine } from '../../shared/transcript.ts'

/**
 * The time of a character of the line's text. Where the line has word times: inside a word in step with its letters,
 * between words the start of the next one. Else in step with the characters between the line's start and end.
 * Offsets outside the text give the line's start or end.
 */
export function timeAt(line: TranscriptLine, offset: number): Ms {
  if (offset <= 0) return line.startMs
  if (offset >= line.text.length) return line.endMs
  const words = line.words.length > 0 ? placeWords(line) : []
  if (words.length === 0) {
    return line.startMs + Math.round(((line.endMs - line.startMs) * offset) / line.text.length)
  }
  const word = words.find((placed) => offset < placed.offset + placed.word.text.length)
  if (!word) return line.endMs
  if (offset <= word.offset) return word.word.startMs
  const share = (offset - word.offset) / word.word.text.length
  return word.word.startMs + Math.round((word.word.endMs - word.word.startMs) * share)
}

/** The exact words from offset on, with the time of the first. */
export function quoteAt(line: TranscriptLine, offset: number, length: number): Quote {
  return { atMs: timeAt(line, offset), text: line.text.slice(offset, offset + length) }
}

/** Where each timed word stands in the line's text; words that do not stand there are left out. */
export function placeWords(line: TranscriptLine): { word: TimedWord; offset: number }[] {
  let at = 0
  return line.words.flatMap((word) => {
    const offset = line.text.indexOf(word.text, at)
    if (offset < 0) return []
    at = offset + word.text.length
    return [{ word, offset }]
  })
}
