/** What of the recording a segment's clip keeps: its in-clip spans less its cut-outs, in order of time. */
import type { Segment } from '../../shared/log-sheet.ts'
import type { Stretch } from '../../shared/time.ts'

/**
 * The stretches of the recording that the clip shows, sorted, touching or overlapping ones joined, cut-outs taken out.
 * Ill-formed spans (end not after start) give nothing; the checks name them.
 */
export function keptRanges(segment: Pick<Segment, 'spans' | 'cutOuts'>): Stretch[] {
  const spans = segment.spans.filter((span) => span.inClip && span.endMs > span.startMs)
  const cutOuts = segment.cutOuts.filter((cut) => cut.endMs > cut.startMs)
  return cutOuts.reduce<Stretch[]>((kept, cut) => kept.flatMap((range) => without(range, cut)), joined(spans))
}

/** True when the moment lies inside what the clip keeps. */
export function isKept(segment: Pick<Segment, 'spans' | 'cutOuts'>, atMs: number): boolean {
  return keptRanges(segment).some((range) => range.startMs <= atMs && atMs < range.endMs)
}

function joined(spans: readonly Stretch[]): Stretch[] {
  const sorted = [...spans].sort((a, b) => a.startMs - b.startMs || a.endMs - b.endMs)
  const result: Stretch[] = []
  for (const { startMs, endMs } of sorted) {
    const last = result.at(-1)
    if (last && startMs <= last.endMs) last.endMs = Math.max(last.endMs, endMs)
    else result.push({ startMs, endMs })
  }
  return result
}

function without(range: Stretch, cut: Stretch): Stretch[] {
  if (cut.endMs <= range.startMs || cut.startMs >= range.endMs) return [range]
  const parts = [
    { startMs: range.startMs, endMs: cut.startMs },
    { startMs: cut.endMs, endMs: range.endMs },
  ]
  return parts.filter((part) => part.endMs > part.startMs)
}
