/** Breaks the words of one caption into lines: where the language allows it best, then evenly. */
import { breakCost } from './judge-break.ts'
import type { CaptionProfile } from './profiles.ts'

/** Weight of one character of difference between the longest and the shortest line. */
const UNEVEN = 0.12
/** Weight of one character past the line length: never taken while any other way is left. */
const TOO_LONG = 1000
/** Keeps one line where one is enough. */
const EXTRA_LINE = 4

/** Lines of at most the profile's length where the words allow it; a longer word stands alone. One entry a line. */
export function splitLines(words: readonly string[], profile: CaptionProfile): string[] {
  const whole = words.join(' ')
  if (words.length < 2) return words.length === 0 ? [] : [whole]
  let best: { cost: number; lines: string[] } = { cost: costOf([whole], 0, profile), lines: [whole] }
  for (const breaks of breakPlaces(words.length, profile.lines)) {
    const lines = [0, ...breaks].map((from, index) => words.slice(from, breaks[index] ?? words.length).join(' '))
    const broken = breaks.reduce((sum, at) => sum + breakCost(words[at - 1] ?? '', words[at] ?? ''), 0)
    const cost = costOf(lines, broken, profile)
    if (cost < best.cost) best = { cost, lines }
  }
  return best.lines
}

function costOf(lines: readonly string[], broken: number, profile: CaptionProfile): number {
  const lengths = lines.map((line) => line.length)
  const over = lengths.reduce((sum, length) => sum + Math.max(0, length - profile.lineLength), 0)
  const uneven = Math.max(...lengths) - Math.min(...lengths)
  return broken + uneven * UNEVEN + over * TOO_LONG + (lines.length - 1) * EXTRA_LINE
}

/** Every way to put one to `lines - 1` breaks between the words. */
function breakPlaces(words: number, lines: number): number[][] {
  let places: number[][] = [[]]
  const all: number[][] = []
  for (let breaks = 1; breaks < lines; breaks++) {
    places = places.flatMap((before) => {
      const from = (before.at(-1) ?? 0) + 1
      return Array.from({ length: Math.max(0, words - from) }, (_, index) => [...before, from + index])
    })
    all.push(...places)
  }
  return all
}
