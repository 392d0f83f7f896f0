/** Moves a cut into a pause near it, so that no word is cut. */
import type { Ms, Stretch } from '../../shared/time.ts'

/** How far inside a pause a snapped cut lies, at most: room for a breath, common practice, no source. */
const INSIDE_MS = 120

/**
 * The nearest moment inside a pause, at most windowMs away; the same moment when it lies in a pause already or none is near.
 * It lies 120 ms inside where the pause and the window allow, and never past the middle of the pause. Of two pauses equally
 * near the earlier one is taken.
 */
export function snapToPause(ms: Ms, pauses: readonly Stretch[], windowMs: Ms): Ms {
  const nearest = pauses
    .filter((pause) => pause.endMs > pause.startMs && distance(ms, pause) <= windowMs)
    .reduce<Stretch | null>((best, pause) => (best && !isNearer(ms, pause, best) ? best : pause), null)
  if (!nearest || distance(ms, nearest) === 0) return ms
  const inside = Math.min(
    INSIDE_MS,
    Math.floor((nearest.endMs - nearest.startMs) / 2),
    windowMs - distance(ms, nearest),
  )
  return ms < nearest.startMs ? nearest.startMs + inside : nearest.endMs - inside
}

/** Milliseconds from the moment to the pause; 0 inside it or on its edge. */
function distance(ms: Ms, { startMs, endMs }: Stretch): Ms {
  return Math.max(0, startMs - ms, ms - endMs)
}

function isNearer(ms: Ms, pause: Stretch, best: Stretch): boolean {
  return (
    distance(ms, pause) < distance(ms, best) ||
    (distance(ms, pause) === distance(ms, best) && pause.startMs < best.startMs)
  )
}
