/** Offers the lines of a transcript as one running text, for phrases that cross the end of a line. */
import type { Ms } from '../../shared/time.ts'
import type { TranscriptLine } from '../../shared/transcript.ts'
import { timeAt } from './place-quote.ts'

export interface JoinedText {
  /** The lines' texts, one space between two. */
  text: string
  /** Where a character of the running text stands. The space between two lines counts to the line before it. */
  at(offset: number): { line: TranscriptLine; lineIndex: number; offset: number; ms: Ms }
}

/** @throws RangeError from `at` when there are no lines. */
export function joinLines(lines: readonly TranscriptLine[]): JoinedText {
  const starts: number[] = []
  let length = 0
  for (const line of lines) {
    starts.push(length)
    length += line.text.length + 1
  }
  return {
    text: lines.map((line) => line.text).join(' '),
    at(offset) {
      const lineIndex = lastAtOrBefore(starts, offset)
      const line = lines[lineIndex]
      if (!line) throw new RangeError('there are no lines')
      const inLine = Math.max(0, Math.min(line.text.length, offset - (starts[lineIndex] ?? 0)))
      return { line, lineIndex, offset: inLine, ms: timeAt(line, inLine) }
    },
  }
}

/** Index of the last number that is not above the value; 0 when all are. */
function lastAtOrBefore(sorted: readonly number[], value: number): number {
  let low = 0
  let high = sorted.length - 1
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if ((sorted[middle] ?? 0) <= value) low = middle
    else high = middle - 1
  }
  return low
}
