/** Merges the cues and cautions of a fresh draft with those people decided on. */
import type { Caution, Cue, Segment } from '../../shared/log-sheet.ts'
import { overlapMs } from '../../shared/time.ts'
import { byStart, isDecided } from './change-sheet.ts'
import { isSettled } from './match-segments.ts'
import { holdsMoment } from './place-cues.ts'

/** The same caution is said at most this far apart when a transcript is read again. */
const SAME_MOMENT_MS = 2000

/** Fresh cues and cautions on their way to one segment. */
export interface Incoming {
  cues: Cue[]
  cautions: Caution[]
}
export const NO_MARKS: Readonly<Incoming> = { cues: [], cautions: [] }

/**
 * Sends every fresh cue and caution to its segment: that of the fresh segment it stands on, or, where people agreed to
 * other spans, the one whose spans hold the moment it is said.
 * @param fresh under their ids on the merged sheet. @returns id on the merged sheet -> what comes in.
 */
export function routeMarks(current: readonly Segment[], fresh: readonly Segment[]): Map<string, Incoming> {
  const settled = current.filter((one) => isSettled(one) && one.state !== 'declined')
  const marks = new Map<string, Incoming>()
  const at = (homeId: string, ms: number | null): Incoming => {
    const home = current.find((one) => one.id === homeId)
    const away = ms !== null && home && isSettled(home) && !holdsMoment(home, ms)
    const id = (away && settled.find((one) => holdsMoment(one, ms))?.id) || homeId
    const incoming = marks.get(id) ?? { cues: [], cautions: [] }
    marks.set(id, incoming)
    return incoming
  }
  for (const segment of fresh) {
    at(segment.id, null)
    for (const cue of segment.cues) at(segment.id, cue.startMs).cues.push(cue)
    for (const caution of segment.cautions) at(segment.id, caution.atMs).cautions.push(caution)
  }
  return marks
}

/** The decided cues as they are, and the fresh ones that say something else; in order of time. */
export function mergeCues(current: readonly Cue[], fresh: readonly Cue[]): Cue[] {
  const kept = current.filter(isDecided)
  return byStart([...kept, ...fresh.filter((cue) => !kept.some((one) => sameCue(one, cue)))])
}

/** The decided cautions as they are, then the fresh ones that say something else. */
export function mergeCautions(current: readonly Caution[], fresh: readonly Caution[]): Caution[] {
  const kept = current.filter(isDecided)
  return [...kept, ...fresh.filter((caution) => !kept.some((one) => sameWarning(one, caution)))]
}

/** Of one kind and said at the same time. One quote may be two cues of two kinds, so the kind must agree. */
function sameCue(a: Cue, b: Cue): boolean {
  return a.kind === b.kind && (overlapMs(a, b) > 0 || (a.startMs === b.startMs && a.text === b.text))
}

/** Of one hazard, in the same words or at the same moment. */
function sameWarning(a: Caution, b: Caution): boolean {
  if (a.hazard !== b.hazard) return false
  if (a.text === b.text) return true
  return a.atMs !== null && b.atMs !== null && Math.abs(a.atMs - b.atMs) <= SAME_MOMENT_MS
}
