/**
 * Drafting again: a fresh draft joins a sheet people have worked on. What a person set, accepted or declined stays exactly
 * as it is; proposals nobody touched give way to the fresh ones.
 */
import type { Cue, LogSheet, Mark, Prescription, Segment } from '../../shared/log-sheet.ts'
import { cameFromDraft, everyDose, freeId, insertByTime, isDecided, redirect, union } from './change-sheet.ts'
import { findHomes, isSettled, turnPointers } from './match-segments.ts'
import { mergeCautions, mergeCues, NO_MARKS, routeMarks } from './merge-marks.ts'
import type { Incoming } from './merge-marks.ts'

/**
 * Merges a fresh draft into the sheet. Segments match by the main span of the fresh one and by name (match-segments.ts).
 * - A declined segment stays whole, and is not proposed again.
 * - A segment that people accepted or changed keeps its own fields; one they left alone takes the fresh ones.
 * - Dose, cues and cautions are kept each by its own mark; fresh ones that say the same are left out. After people joined
 *   or split segments, a fresh cue goes to the one whose spans hold it.
 * - A segment that the fresh draft no longer proposes is gone when nobody touched it, waived it or points at it.
 * - Fields of the class stay where they say something; sections and mentioned of a drafted sheet are drafted again.
 */
export function mergeDraft(current: LogSheet, fresh: LogSheet): LogSheet {
  const homes = findHomes(current.segments, fresh.segments)
  const turned = fresh.segments.map((segment) => [segment.id, turnPointers(segment, homes.ids)] as const)
  const marks = routeMarks(
    current.segments,
    turned.map(([, segment]) => segment),
  )
  const matchOf = new Map(turned.filter(([id]) => homes.pairs.has(id)).map(([, segment]) => [segment.id, segment]))

  const named = new Set([...findPointedAt(current.segments), ...current.waivers.map((one) => one.segmentId)])
  const kept = current.segments.flatMap((segment): Segment[] => {
    const match = matchOf.get(segment.id)
    const incoming = marks.get(segment.id)
    if (segment.state !== 'declined' && (match || incoming)) return [mergeSegment(segment, match ?? null, incoming)]
    return match || isTouched(segment) || named.has(segment.id) ? [segment] : []
  })
  const added = turned
    .filter(([id]) => homes.added.has(id))
    .map(([, segment]): Segment => ({ ...segment, ...(marks.get(segment.id) ?? NO_MARKS) }))
  const merged: LogSheet = {
    ...mergeFields(current, fresh),
    segments: withCueIds(added.reduce(insertByTime, kept), current),
    classCautions: mergeCautions(current.classCautions, fresh.classCautions),
    waivers: current.waivers,
  }
  const gone = current.segments.filter((one) => !merged.segments.some((segment) => segment.id === one.id))
  return gone.reduce((sheet, { id }) => redirect(sheet, id, null), merged)
}

/** True when a person had a hand in the segment or in any mark on it. */
export function isTouched(segment: Segment): boolean {
  const marks: (Mark | null)[] = [segment, segment.prescription, ...segment.cues, ...segment.cautions]
  return segment.setByPerson.length > 0 || marks.some((mark) => mark !== null && isDecided(mark))
}

/** One segment of the sheet with what the fresh draft says of it; match null = only cues or cautions came in. */
function mergeSegment(current: Segment, match: Segment | null, incoming: Incoming = NO_MARKS): Segment {
  return {
    ...(isSettled(current) || !match ? { ...match, ...current } : { ...current, ...match }),
    id: current.id,
    setByPerson: current.setByPerson,
    prescription: match ? mergeDose(current, match) : current.prescription,
    cues: mergeCues(current.cues, incoming.cues),
    cautions: mergeCautions(current.cautions, incoming.cautions),
  }
}

function mergeDose(current: Segment, fresh: Segment): Prescription | null {
  return hasOwnDose(current) ? current.prescription : fresh.prescription
}

function hasOwnDose({ prescription, setByPerson }: Segment): boolean {
  return setByPerson.includes('prescription') || (prescription !== null && isDecided(prescription))
}

/** The ids of segments that something a person set points at; they stay, so that it stays as it was set. */
function findPointedAt(segments: readonly Segment[]): Set<string> {
  return new Set(
    segments.flatMap((segment) => [
      ...(isSettled(segment) ? [...segment.easier, ...segment.harder].flatMap((ref) => ref.segmentId ?? []) : []),
      ...(segment.prescription && hasOwnDose(segment) ? everyDose(segment.prescription) : []).flatMap(
        (dose) => dose.groupWith,
      ),
    ]),
  )
}

/** Fields of the class that each draft of it prints anew. */
const DRAFTED_FIELDS: readonly (keyof LogSheet)[] = ['sections', 'mentioned', 'audienceHeard']

function mergeFields(current: LogSheet, fresh: LogSheet): LogSheet {
  const set = current.setByPerson ?? []
  const says = (name: string): boolean => !saysNothing((current as Record<string, unknown>)[name])
  // In a sheet that no draft made, sections are a person's own; noted here, since it holds drafted segments from now on.
  const handMade = current.segments.some(cameFromDraft) ? [] : DRAFTED_FIELDS.filter(says)
  const own = union(set, handMade)
  const fromFresh = Object.entries(fresh).filter(
    ([name]) => !own.includes(name) && (!says(name) || DRAFTED_FIELDS.some((field) => field === name)),
  )
  return {
    ...current,
    ...(Object.fromEntries(fromFresh) as Partial<LogSheet>),
    ...(own.length > set.length && { setByPerson: own }),
  }
}

function saysNothing(value: unknown): boolean {
  return (
    value === undefined || value === null || value === '' || value === 0 || (Array.isArray(value) && value.length === 0)
  )
}

/** Fresh cues whose id a kept cue has get one of their own; kept cues are the very objects of the current sheet. */
function withCueIds(segments: readonly Segment[], current: LogSheet): Segment[] {
  const known = new Set<Cue>(current.segments.flatMap((one) => one.cues))
  const used = new Set(segments.flatMap((one) => one.cues.filter((cue) => known.has(cue)).map((cue) => cue.id)))
  const withId = (cue: Cue): Cue => {
    if (known.has(cue)) return cue
    const id = freeId(cue.id, used)
    used.add(id)
    return id === cue.id ? cue : { ...cue, id }
  }
  return segments.map((one) => (one.cues.every((cue) => known.has(cue)) ? one : { ...one, cues: one.cues.map(withId) }))
}
