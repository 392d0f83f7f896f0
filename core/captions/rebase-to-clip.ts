/** Moves the captions of a class onto the clock of a clip that keeps one or more stretches of it. */
import type { CaptionCue } from '../../shared/captions.ts'
import type { Ms, Stretch } from '../../shared/time.ts'

/** A piece of a caption shorter than this is not shown: nobody can read it. */
const SHORTEST_PIECE_MS = 200

/**
 * Captions of the clip, in order; times from the clip's start. Text is never cut: a caption that reaches into the clip
 * is shown whole for the time it reaches. Both sides of a join that cuts out the middle of a caption become one.
 * A piece under 200 ms is left out, unless the caption itself is that short.
 * @param ranges what the clip keeps of the recording, in the order of the clip.
 */
export function rebaseToClip(cues: readonly CaptionCue[], ranges: readonly Stretch[]): CaptionCue[] {
  const pieces: { cue: CaptionCue; startMs: Ms; endMs: Ms }[] = []
  let offset = 0
  for (const range of ranges) {
    for (const cue of cues) {
      const startMs = Math.max(cue.startMs, range.startMs) - range.startMs + offset
      const endMs = Math.min(cue.endMs, range.endMs) - range.startMs + offset
      if (endMs <= startMs) continue
      const other = pieces.findLast((piece) => piece.cue === cue && piece.endMs === startMs)
      if (other) other.endMs = endMs
      else pieces.push({ cue, startMs, endMs })
    }
    offset += range.endMs - range.startMs
  }
  return pieces
    .filter(({ cue, startMs, endMs }) => endMs - startMs >= Math.min(SHORTEST_PIECE_MS, cue.endMs - cue.startMs))
    .map(({ cue, startMs, endMs }) => ({ ...cue, startMs, endMs }))
    .sort((a, b) => a.startMs - b.startMs || b.endMs - a.endMs)
}
