/** Gathers what is said of sides in the clip of a segment: what the draft heard, and the words of cues. */
import type { Segment, SideNamed } from '../../shared/log-sheet.ts'
import { keptRanges } from '../segments/kept-ranges.ts'
import { sidesIn } from './read-sides.ts'

export type Side = 'left' | 'right'

/** In order of time. Cues and the words of the dose are read where no draft has heard all that was said. */
export function sidesSaid(segment: Segment): SideNamed[] {
  const heard = segment.sidesNamed ?? []
  const cues = segment.cues.filter(
    ({ state, origin }) => state !== 'declined' && (origin === 'person' || heard.length === 0),
  )
  const dose = segment.prescription
  const doseWords = heard.length === 0 && dose && dose.state !== 'declined' ? dose.said : []
  const texts = [...cues.map(({ startMs: atMs, text }) => ({ atMs, text })), ...doseWords]
  const read = texts.flatMap(({ atMs, text }) =>
    sidesIn(text).map(({ side, as, offset, length }): SideNamed => ({
      atMs,
      text: text.slice(offset, offset + length),
      side,
      as,
    })),
  )
  return [...heard, ...read].toSorted((a, b) => a.atMs - b.atMs)
}

/** Those of sidesSaid that the clip keeps. */
export function sidesInClip(segment: Segment): SideNamed[] {
  const ranges = keptRanges(segment)
  return sidesSaid(segment).filter(({ atMs }) => ranges.some(({ startMs, endMs }) => startMs <= atMs && atMs < endMs))
}

/** The one side among these words; null when they name both, none, or bring in the other one. */
export function onlySide(named: readonly SideNamed[]): Side | null {
  const sides = new Set(named.filter(({ as }) => as !== 'mirrored').map(({ side }) => side))
  if (sides.has('other') || sides.has('both') || sides.size !== 1) return null
  return sides.has('left') ? 'left' : 'right'
}

/** The side in an exercise's name, as in "side plank, left" or "left leg lunge"; null when it names none or both. */
export function sideOfName(name: string): Side | null {
  const sides = name.toLowerCase().match(/\b(?:left|right)\b/g) ?? []
  const side = /\b(?:left|right)(?=[ -](?:side|leg|arm|hand|foot|knee|hip|shoulder)\b|\)|$)/.exec(
    name.trim().toLowerCase(),
  )?.[0]
  if (new Set(sides).size !== 1) return null
  return side === 'left' || side === 'right' ? side : null
}
