/** Where a stretch of the recording lies in a clip that keeps some stretches of it. */
import type { Stretch } from '../../shared/time.ts'

/**
 * On the clip's clock; null when no part of it is in the clip. What is cut out inside it is left out.
 * @param kept what the clip keeps of the recording, in the order of the clip
 */
export function placeInClip({ startMs, endMs }: Stretch, kept: readonly Stretch[]): Stretch | null {
  let offset = 0
  const pieces = kept.flatMap((range) => {
    const from = Math.max(startMs, range.startMs)
    const to = Math.min(endMs, range.endMs)
    const piece = { startMs: offset + from - range.startMs, endMs: offset + to - range.startMs }
    offset += range.endMs - range.startMs
    return to > from ? [piece] : []
  })
  const [first] = pieces
  const last = pieces.at(-1)
  return first && last ? { startMs: first.startMs, endMs: last.endMs } : null
}
