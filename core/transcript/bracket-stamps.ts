/** Finds time stamps that stand without square brackets, as many note and meeting tools write them, and brackets them. */
import { parseClock } from '../../shared/time.ts'

/** `(1:05) text`, `1:05 text`, `01:02:33 - text`. */
const LEADING = /^[ \t]*(?:\((\d+:[\d:.,]*)\)|(\d+:\d\d(?::\d\d)?(?:[.,]\d{1,3})?)(?=[\s–—|-]|$))[ \t]*[-–—|]?[ \t]*/

/** `Anna  1:05`: a speaker and a time alone on a line, the words below. */
const TRAILING = /^[ \t]*(?:\p{L}[^\d:\n]{0,39})[ \t]+\(?(\d+:\d\d(?::\d\d)?)\)?[ \t]*$/u

/** A plan has few words to a dose ("1:00 plank"); speech has more. Own choice, tried on both. */
const FEWEST_WORDS = 5

/**
 * The text with each such stamp written as `[1:05]`, line for line; null when it has no stamps that can be times of
 * speech: at least two, each later than the one before, with at least five words to a stamp on average.
 */
export function bracketStamps(text: string): string | null {
  let stamps = 0
  let words = 0
  let latestMs = -1
  const lines = text.split('\n')
  for (const [index, line] of lines.entries()) {
    const leading = LEADING.exec(line)
    const trailing = leading ? null : TRAILING.exec(line)
    const stamp = leading?.[1] ?? leading?.[2] ?? trailing?.[1]
    const rest = leading ? line.slice(leading[0].length) : trailing ? '' : line
    words += rest.match(/\p{L}+/gu)?.length ?? 0
    if (stamp === undefined) continue
    const ms = parseClock(stamp)
    if (ms === null || ms <= latestMs) return null
    latestMs = ms
    stamps++
    lines[index] = `[${stamp}] ${rest}`
  }
  return stamps >= 2 && words >= stamps * FEWEST_WORDS ? lines.join('\n') : null
}
