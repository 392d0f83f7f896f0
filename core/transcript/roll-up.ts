/** Undoes roll-up captions: automatic captions that show the line before again above each new line. */
import type { Stretch } from '../../shared/time.ts'

/** A caption by its lines; what else a line carries goes along with it. */
export interface RollingCue<Line extends { text: string }> extends Stretch {
  lines: Line[]
}

/** Captions further apart are no roll-up, whatever they repeat. */
const NEAR_MS = 150

/**
 * Takes away repeated lines, but only in a file that repeats as a habit: in at least three neighbours and in at least
 * half of all. A coach who says "And breathe." twice keeps both. A caption left empty gives its time to the one before.
 */
export function undoRollUp<Line extends { text: string }, Cue extends RollingCue<Line>>(cues: readonly Cue[]): Cue[] {
  const repeats = cues.map((cue, index) => repeatedLines(cues[index - 1], cue))
  const rolling = repeats.filter((count) => count > 0).length
  if (rolling < 3 || rolling < (cues.length - 1) / 2) return [...cues]
  const result: Cue[] = []
  cues.forEach((cue, index) => {
    const lines = cue.lines.slice(repeats[index])
    const last = result.at(-1)
    if (lines.length > 0) result.push({ ...cue, lines })
    else if (last) last.endMs = Math.max(last.endMs, cue.endMs)
  })
  return result
}

/** How many first lines of a caption are the last lines of the one before. */
function repeatedLines<Line extends { text: string }>(
  before: RollingCue<Line> | undefined,
  cue: RollingCue<Line>,
): number {
  if (!before || Math.abs(cue.startMs - before.endMs) > NEAR_MS) return 0
  for (let count = Math.min(before.lines.length, cue.lines.length); count > 0; count--) {
    const shown = before.lines.slice(-count)
    if (shown.every((line, index) => line.text === cue.lines[index]?.text)) return count
  }
  return 0
}
