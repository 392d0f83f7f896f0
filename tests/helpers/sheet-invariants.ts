// What holds of every sheet that edits have made: said once here, so that property tests can ask after each step.
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import { everyDose } from '../../core/segments/change-sheet.ts'
import type { Stretch } from '../../shared/time.ts'

/** Sentences on what is broken; empty = all holds. */
export function findBroken(sheet: LogSheet): string[] {
  const ids = sheet.segments.map((one) => one.id)
  const cueIds = sheet.segments.flatMap((one) => one.cues.map((cue) => cue.id))
  return [
    ...twice(ids).map((id) => `segment id ${id} is used twice`),
    ...twice(cueIds).map((id) => `cue id ${id} is used twice`),
    ...sheet.waivers.filter((one) => !ids.includes(one.segmentId)).map((one) => `waiver of ${one.segmentId}, gone`),
    ...overlaps(sheet.sections).map((text) => `sections ${text}`),
    ...sheet.segments.flatMap((segment) => findBrokenIn(segment, sheet.durationMs, ids)),
  ]
}

function findBrokenIn(segment: Segment, durationMs: number, ids: string[]): string[] {
  const { spans, cutOuts, loop, cues, easier, harder, prescription } = segment
  const stretches = [...spans, ...cutOuts, ...(loop ? [loop] : []), ...cues]
  const inside = (inner: Stretch) => spans.some((one) => one.startMs <= inner.startMs && inner.endMs <= one.endMs)
  const touches = (cut: Stretch) => spans.some((one) => one.startMs < cut.endMs && cut.startMs < one.endMs)
  const pointers = [
    ...[...easier, ...harder].flatMap((ref) => ref.segmentId ?? []),
    ...(prescription ? everyDose(prescription).flatMap((dose) => dose.groupWith) : []),
  ]
  return [
    ...stretches.filter((one) => one.endMs <= one.startMs).map((one) => `no length at ${one.startMs}`),
    ...stretches
      .filter((one) => one.startMs < 0 || one.endMs > durationMs)
      .map((one) => `past the end at ${one.endMs}`),
    ...overlaps(spans).map((text) => `spans ${text}`),
    ...overlaps(cutOuts).map((text) => `cut-outs ${text}`),
    ...cutOuts.filter((one) => !touches(one)).map((one) => `cut-out at ${one.startMs} outside every span`),
    ...(loop && !inside(loop) ? ['loop outside every span'] : []),
    ...pointers.filter((id) => !ids.includes(id) || id === segment.id).map((id) => `pointer at ${id}`),
  ].map((text) => `${segment.id}: ${text}`)
}

function overlaps(list: readonly Stretch[]): string[] {
  const sorted = [...list].sort((a, b) => a.startMs - b.startMs)
  return sorted.flatMap((one, at) => {
    const before = sorted[at - 1]
    return before && before.endMs > one.startMs ? [`overlap at ${one.startMs}`] : []
  })
}

function twice(list: readonly string[]): string[] {
  return list.filter((one, at) => list.indexOf(one) !== at)
}
