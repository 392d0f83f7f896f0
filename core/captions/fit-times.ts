/** Fits the times of captions: long enough to read, not longer than 7 s, no overlap, no flicker between two. */
import type { CaptionCue } from '../../shared/captions.ts'
import { CAPTION_TIMES, shortestMs } from './profiles.ts'

/**
 * Starts stay where the speech starts; ends move. In order of start:
 * an end reaches into free time until the text can be read; a gap below 1 s is closed, or widened where closing it
 * would pass 7 s; nothing lasts longer than 7 s or past the next start. Starts that are the same share their time.
 */
export function fitTimes(cues: readonly CaptionCue[]): CaptionCue[] {
  const started = spreadStarts(cues)
  return started.map((cue, index) => ({ ...cue, endMs: fitEnd(cue, started[index + 1]?.startMs ?? Infinity) }))
}

function fitEnd(cue: CaptionCue, nextStart: number): number {
  const { minGapMs, maxMs } = CAPTION_TIMES
  const words = cue.lines.reduce((sum, line) => sum + line.split(' ').length, 0)
  const longest = cue.startMs + maxMs.value
  const wanted = Math.max(cue.endMs, cue.startMs + shortestMs(words))
  const end = Math.min(wanted, longest, nextStart)
  const gap = nextStart - end
  if (gap <= 0 || gap >= minGapMs.value) return end
  return nextStart <= longest ? nextStart : nextStart - minGapMs.value
}

/** Makes every start later than the one before; captions that start together get equal parts of the time to the next. */
function spreadStarts(cues: readonly CaptionCue[]): CaptionCue[] {
  const result: CaptionCue[] = []
  let at = 0
  while (at < cues.length) {
    const startMs = Math.max(cues[at]?.startMs ?? 0, (result.at(-1)?.startMs ?? -1) + 1)
    let next = at + 1
    while (next < cues.length && (cues[next]?.startMs ?? 0) <= startMs) next++
    const group = cues.slice(at, next)
    const latestEnd = group.reduce((latest, cue) => Math.max(latest, cue.endMs), startMs)
    const untilMs = Math.min(cues[next]?.startMs ?? Infinity, Math.max(latestEnd, startMs + group.length))
    group.forEach((cue, index) => {
      const shared = startMs + Math.floor(((untilMs - startMs) * index) / group.length)
      const from = Math.max(shared, (result.at(-1)?.startMs ?? -1) + 1)
      result.push({ ...cue, startMs: from, endMs: Math.max(cue.endMs, from + 1) })
    })
    at = next
  }
  return result
}
