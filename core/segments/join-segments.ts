/** Joins two segments into one: spans, cues and cautions merged, nothing that was said lost. */
import type { EditOf } from '../../shared/edit.ts'
import type { Caution, Cue, CutOut, LogSheet, Segment, Span, Waiver } from '../../shared/log-sheet.ts'
import { overlapMs } from '../../shared/time.ts'
import type { Stretch } from '../../shared/time.ts'
import {
  byStart,
  findSegment,
  freeId,
  redirect,
  refuse,
  sameCaution,
  sameWaiver,
  segmentOfPerson,
  union,
  withoutPointersAt,
} from './change-sheet.ts'

/**
 * The other segment's marks join this one, and the other is gone.
 * This one's main span stays the main one; spans that touch or overlap become one. Single fields (dose, position, loop ...)
 * are this one's, or the other's where this one has none. Of the waivers only those stay that both had, since a waiver
 * excuses what a person looked at. Pointers at the other turn to this one.
 * @throws AppError edit-target, edit-invalid
 */
export function joinSegments(sheet: LogSheet, { segmentId, otherId }: EditOf<'join-segments'>): LogSheet {
  if (segmentId === otherId) throw refuse('An exercise cannot be joined with itself. Choose another one.')
  const segment = findSegment(sheet, segmentId)
  const other = findSegment(sheet, otherId)
  const joined: Segment = {
    ...segmentOfPerson(segment, 'exercise', 'spans', 'cutOuts'),
    exercise: {
      ...segment.exercise,
      alsoCalled: otherNames(segment, other),
      catalogueId: segment.exercise.catalogueId ?? other.exercise.catalogueId,
    },
    spans: joinSpans(segment.spans, other.spans),
    cutOuts: joinCutOuts([...segment.cutOuts, ...other.cutOuts]),
    loop: segment.loop ?? other.loop,
    equipment: union(segment.equipment, other.equipment),
    position: segment.position ?? other.position,
    view: segment.view ?? other.view,
    mirrored: segment.mirrored ?? other.mirrored,
    sideShown: joinSides(segment, other),
    prescription: joinDoses(segment, other),
    cues: joinCues(segment.cues, other.cues),
    cautions: joinCautions(segment.cautions, other.cautions),
    easier: [...segment.easier, ...other.easier],
    harder: [...segment.harder, ...other.harder],
    ...joinHeard(segment, other),
  }
  // Two of a superset that become one are no longer grouped with each other.
  const whole = { ...withoutPointersAt(joined, segmentId), setByPerson: union(joined.setByPerson, other.setByPerson) }
  const waivers = joinWaivers(sheet.waivers, segmentId, otherId)
  const segments = sheet.segments.flatMap((one) => (one.id === segmentId ? [whole] : one.id === otherId ? [] : [one]))
  return redirect({ ...sheet, segments, waivers }, otherId, segmentId)
}

function otherNames(segment: Segment, other: Segment): string[] {
  const names = union(segment.exercise.alsoCalled, [other.exercise.name, ...other.exercise.alsoCalled])
  return names.filter((name) => name !== segment.exercise.name)
}

/** Left joined with right shows both; otherwise what either says. */
function joinSides(segment: Segment, other: Segment): Segment['sideShown'] {
  if (segment.sideShown === null || other.sideShown === null) return segment.sideShown ?? other.sideShown
  return segment.sideShown === other.sideShown ? segment.sideShown : 'both'
}

/** Counting and sides heard in either; what neither heard stays absent. */
function joinHeard(segment: Segment, other: Segment): Pick<Segment, 'counted' | 'sidesNamed'> {
  const counted = byMoment([...(segment.counted ?? []), ...(other.counted ?? [])])
  const sidesNamed = byMoment([...(segment.sidesNamed ?? []), ...(other.sidesNamed ?? [])])
  return { ...(counted.length > 0 && { counted }), ...(sidesNamed.length > 0 && { sidesNamed }) }
}

function byMoment<One extends { atMs: number }>(list: readonly One[]): One[] {
  return list.toSorted((a, b) => a.atMs - b.atMs)
}

/** This one's dose; the other's when this one has none or a declined one. */
function joinDoses({ prescription: own }: Segment, { prescription: others }: Segment): Segment['prescription'] {
  if (own === null || (own.state === 'declined' && others !== null && others.state !== 'declined')) return others
  return own
}

function joinSpans(own: readonly Span[], others: readonly Span[]): Span[] {
  const [main, ...rest] = own
  const inOrder = main ? [main, ...byStart([...rest, ...others])] : byStart(others)
  return inOrder.reduce<Span[]>(takeInSpan, [])
}

/** Adds a span to the list, made one with those it touches; the result may in turn touch others. */
function takeInSpan(list: Span[], span: Span): Span[] {
  const at = list.findIndex((one) => one.startMs <= span.endMs && span.startMs <= one.endMs && mayBeOne(one, span))
  const near = list[at]
  if (!near) return [...list, span]
  const earlier = near.startMs <= span.startMs ? near : span
  const one: Span = { ...span, ...near, ...hull(near, span), lockedIn: earlier.lockedIn }
  const left = list.filter((_, index) => index !== at)
  return at === 0 ? left.reduce<Span[]>(takeInSpan, [one]) : takeInSpan(left, one)
}

function mayBeOne(a: Span, b: Span): boolean {
  if (a.inClip === b.inClip && a.mediaId === b.mediaId) return true
  if (overlapMs(a, b) === 0) return false
  throw refuse(
    'Their spans overlap, and one is in the clip while the other is not (or they come from different files). Move an edge or put both in the clip, then join.',
  )
}

/** Cut-outs that overlap become one with both reasons; those that only touch do so when the reason is the same. */
function joinCutOuts(cutOuts: readonly CutOut[]): CutOut[] {
  return byStart(cutOuts).reduce<CutOut[]>((list, cut) => {
    const last = list.at(-1)
    const apart = !last || cut.startMs > last.endMs || (cut.startMs === last.endMs && cut.why !== last.why)
    if (apart) return [...list, cut]
    const reasons = union([last.why], [cut.why]).filter((why) => why !== '')
    return [...list.slice(0, -1), { ...cut, ...last, ...hull(last, cut), why: reasons.join('; ') }]
  }, [])
}

/** All cues in order of time; an id that both use gets a number behind it. */
function joinCues(own: readonly Cue[], others: readonly Cue[]): Cue[] {
  const used = new Set(own.map((cue) => cue.id))
  const renamed = others.map((cue) => {
    const id = freeId(cue.id, used)
    used.add(id)
    return id === cue.id ? cue : { ...cue, id }
  })
  return byStart([...own, ...renamed])
}

function joinCautions(own: readonly Caution[], others: readonly Caution[]): Caution[] {
  const isOwn = (caution: Caution) =>
    own.some((one) => sameCaution(one, caution) && one.atMs === caution.atMs && one.state === caution.state)
  const all = [...own, ...others.filter((caution) => !isOwn(caution))]
  const said = all.filter((caution) => caution.atMs !== null)
  const written = all.filter((caution) => caution.atMs === null)
  return [...said.sort((a, b) => (a.atMs ?? 0) - (b.atMs ?? 0)), ...written]
}

function joinWaivers(waivers: readonly Waiver[], segmentId: string, otherId: string): Waiver[] {
  const others = waivers.filter((one) => one.segmentId === otherId)
  return waivers.filter((one) => one.segmentId !== segmentId || others.some((waiver) => sameWaiver(waiver, one)))
}

function hull(a: Stretch, b: Stretch): Stretch {
  return { startMs: Math.min(a.startMs, b.startMs), endMs: Math.max(a.endMs, b.endMs) }
}
