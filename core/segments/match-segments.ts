/** Finds which segment of a sheet a freshly drafted one is: by the time of its main teaching and by its name. */
import type { Ref, Segment } from '../../shared/log-sheet.ts'
import { overlapMs } from '../../shared/time.ts'
import type { Stretch } from '../../shared/time.ts'
import { freeId, isDecided, mapDose, union } from './change-sheet.ts'

/** Two main spans are one teaching when they share half of the time they cover together. */
const SAME_TEACHING = 0.5
/** A fresh segment lies under a kept one when this much of its main span does. */
const UNDER = 0.8

/** Where each segment of a fresh draft belongs. */
export interface Homes {
  /** Fresh id -> id on the merged sheet: of the segment it is, of the one it lies under, or its own as a new one. */
  ids: ReadonlyMap<string, string>
  /** Fresh ids that are a segment of the sheet. */
  pairs: ReadonlySet<string>
  /** Fresh ids that are new. */
  added: ReadonlySet<string>
}

/** Finds the home of every fresh segment. A new one whose id the sheet uses already gets a free one. */
export function findHomes(current: readonly Segment[], fresh: readonly Segment[]): Homes {
  const ids = matchSegments(current, fresh)
  const pairs = new Set(ids.keys())
  const added = new Set<string>()
  const used = new Set(current.map((one) => one.id))
  for (const segment of fresh) {
    if (pairs.has(segment.id)) continue
    const cover = coveredBy(segment, current)
    if (!cover) added.add(segment.id)
    ids.set(segment.id, cover?.id ?? freeId(segment.id, used))
    used.add(ids.get(segment.id) ?? segment.id)
  }
  return { ids, pairs, added }
}

/** The fresh segment under its id on the merged sheet, its pointers turned likewise. */
export function turnPointers(segment: Segment, ids: ReadonlyMap<string, string>): Segment {
  const own = ids.get(segment.id) ?? segment.id
  const turn = (id: string): string => ids.get(id) ?? id
  const turnRef = (ref: Ref): Ref => (ref.segmentId === undefined ? ref : { ...ref, segmentId: turn(ref.segmentId) })
  const { prescription } = segment
  return {
    ...segment,
    id: own,
    easier: segment.easier.map(turnRef),
    harder: segment.harder.map(turnRef),
    prescription:
      prescription &&
      mapDose(prescription, (dose) => ({
        ...dose,
        groupWith: union([], dose.groupWith.map(turn)).filter((id) => id !== own),
      })),
  }
}

/** True when people agreed to what the segment is and where it lies, or changed any of it; its dose has a mark of its own. */
export function isSettled(segment: Segment): boolean {
  return isDecided(segment) || segment.setByPerson.some((name) => name !== 'prescription')
}

/** Pairs each fresh segment with at most one of the sheet, the best pairs first. @returns fresh id -> id on the sheet. */
function matchSegments(current: readonly Segment[], fresh: readonly Segment[]): Map<string, string> {
  const candidates = fresh.flatMap((one) =>
    current.flatMap((other) => {
      const score = matchScore(other, one)
      return score > 0 ? [{ freshId: one.id, currentId: other.id, score }] : []
    }),
  )
  // Equal scores: the pair with equal ids first, then in order of the two sheets (sort keeps it).
  const sameId = (pair: { freshId: string; currentId: string }) => (pair.freshId === pair.currentId ? 1 : 0)
  candidates.sort((a, b) => b.score - a.score || sameId(b) - sameId(a))
  const pairs = new Map<string, string>()
  const taken = new Set<string>()
  for (const { freshId, currentId } of candidates) {
    if (pairs.has(freshId) || taken.has(currentId)) continue
    pairs.set(freshId, currentId)
    taken.add(currentId)
  }
  return pairs
}

/**
 * The segment that holds most of a fresh one's main span, when people have settled that time already: after they joined
 * two, split one or moved edges. Null = free time.
 * A declined segment settles only what bears its name, so that one wrong proposal does not hide a right one.
 */
function coveredBy(fresh: Segment, current: readonly Segment[]): Segment | null {
  const main = fresh.spans[0]
  if (!main) return null
  const shares = current
    .filter((one) => isSettled(one) && (one.state !== 'declined' || sameName(one, fresh)))
    .map((segment) => ({ segment, ms: sharedMs(main, segment.spans) }))
  const together = shares.reduce((sum, share) => sum + share.ms, 0)
  if (together === 0 || together < UNDER * lengthMs(main)) return null
  return shares.reduce((best, share) => (share.ms > best.ms ? share : best)).segment
}

/** 0 = not the same; else up to 1 for the time shared and 1 more for the name; the very same main span goes before all. */
function matchScore(current: Segment, fresh: Segment): number {
  const named = sameName(current, fresh)
  const main = fresh.spans[0]
  const other = current.spans[0]
  if (!main || !other) return named ? 1 : 0
  const shared = overlapMs(main, other) / Math.max(1, lengthMs(main) + lengthMs(other) - overlapMs(main, other))
  if (shared === 1) return named ? 3 : 2
  if (named && sharedMs(main, current.spans) > 0) return 1 + shared
  return shared >= SAME_TEACHING ? shared : 0
}

function sameName(a: Segment, b: Segment): boolean {
  const names = ({ exercise }: Segment) => [exercise.name, ...exercise.alsoCalled].map(plain)
  return names(a).some((name) => names(b).includes(name))
}

/** Letters and digits only, so that "Push-up" is "push up". */
function plain(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}

function sharedMs(main: Stretch, spans: readonly Stretch[]): number {
  return spans.reduce((sum, span) => sum + overlapMs(main, span), 0)
}

function lengthMs({ startMs, endMs }: Stretch): number {
  return Math.max(0, endMs - startMs)
}
