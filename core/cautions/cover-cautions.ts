/** Which cautions a lesson needs and where each stands: said in its clip, said elsewhere, written, waived or missing. */
import type { CautionCoverage } from '../../shared/check-report.ts'
import type { Caution, LogSheet, Segment, Waiver } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import { isKept } from '../segments/kept-ranges.ts'
import { exerciseTraits } from './describe-exercise.ts'
import { hazardsIn, topicsOf, warnsOfHeldBreath } from './find-hazards.ts'
import type { HazardSlug } from './hazard-slugs.ts'
import { classSignsOf } from './read-signs.ts'
import { cautionsFor } from './require-cautions.ts'
import type { RequiredCaution } from './require-cautions.ts'
import { takeCareOf } from './take-care.ts'
import type { Traits } from './traits.ts'

/** One required caution of one lesson, with what the finding needs to say. */
export interface Covered {
  segment: Segment
  required: RequiredCaution
  state: CautionCoverage['state']
  inClip: boolean
  /** The words that cover it and when they were said; those in the clip first. Null = none. */
  said: { text: string; atMs: Ms | null } | null
}

/** A lesson with its traits and the state of its cautions. */
export interface CoveredLesson {
  segment: Segment
  traits: Traits
  required: readonly Covered[]
  /** Always on the lesson page, never missing. */
  takeCare: readonly CautionCoverage[]
}

/** Rules under which a person may waive a caution; a waiver under them names the hazard. */
export const CAUTION_RULES: readonly string[] = ['caution-missing', 'caution-outside-clip']

/** The cautions of each lesson, required ones in the order of the table. */
export function coverCautions(sheet: LogSheet, lessons: readonly Segment[]): CoveredLesson[] {
  const classSigns = classSignsOf(sheet)
  return lessons.map((segment) => {
    const traits = exerciseTraits(segment, sheet, classSigns)
    const cues = readSayings(segment)
    return {
      segment,
      traits,
      required: cautionsFor(traits).map((required) => coverOne(sheet, segment, traits, required, cues)),
      takeCare: takeCareOf(traits).map(({ id, concerns }) => takeCareRow(segment, id.toLowerCase(), concerns)),
    }
  })
}

/** A covered caution as a row of the report. */
export function coverageRow({ segment, required, state, inClip }: Covered): CautionCoverage {
  const { hazard, ruleId, level, concerns } = required
  return { segmentId: segment.id, hazard, ruleId, level, state, inClip, concerns }
}

function takeCareRow(segment: Segment, id: string, concerns: string): CautionCoverage {
  return { segmentId: segment.id, hazard: id, ruleId: id, level: 'info', state: 'written', inClip: true, concerns }
}

/** Something said, and the hazards its words cover. */
interface Saying {
  text: string
  atMs: Ms | null
  endMs: Ms | null
  hazards: readonly string[]
  /** Speaks against a held breath itself, not only for breathing out on the effort. */
  heldBreath: boolean
}

function coverOne(
  sheet: LogSheet,
  segment: Segment,
  traits: Traits,
  required: RequiredCaution,
  cues: readonly Saying[],
): Covered {
  const { hazard } = required
  const strict = hazard === 'breath-hold' && (traits.signs.has('breath-hold-cued') || traits.kit.has('barbell'))
  const sayings = [
    ...segment.cautions.filter(isSpoken).map(sayingOf),
    ...cues,
    ...sheet.classCautions.filter(isSpoken).map(sayingOf),
  ].filter((one) => one.hazards.includes(hazard) && (!strict || one.heldBreath))
  const inside = sayings.find((one) => isInside(segment, one))
  const said = inside ?? sayings[0] ?? null
  const base = { segment, required, said: said && { text: said.text, atMs: said.atMs } }
  if (inside) return { ...base, state: 'spoken', inClip: true }
  if (isWritten(segment, hazard)) return { ...base, state: said ? 'spoken' : 'written', inClip: true }
  if (sheet.waivers.some((waiver) => waives(waiver, segment.id, required))) {
    return { ...base, state: 'waived', inClip: false }
  }
  return { ...base, state: said ? 'spoken' : 'missing', inClip: false }
}

const isSpoken = (one: Caution): boolean => one.state !== 'declined' && one.source === 'spoken'

function isWritten(segment: Segment, hazard: HazardSlug): boolean {
  return segment.cautions.some(
    (one) => one.state !== 'declined' && one.source === 'written' && one.hazard === hazard && one.text.trim() !== '',
  )
}

/** Both the first and the last of the words must be kept. */
function isInside(segment: Segment, { atMs, endMs }: Saying): boolean {
  return atMs !== null && isKept(segment, atMs) && isKept(segment, Math.max(atMs, (endMs ?? atMs) - 1))
}

/** A waiver of a caution names its hazard, by field or by rule id: one that names none would waive them all. */
function waives(waiver: Waiver, segmentId: string, { hazard, ruleId }: RequiredCaution): boolean {
  if (waiver.segmentId !== segmentId) return false
  return waiver.ruleId === ruleId || (CAUTION_RULES.includes(waiver.ruleId) && waiver.hazard === hazard)
}

/** A caution's hazard is the one it is marked with, and whatever else its words cover; a person's mark is taken at its word. */
function sayingOf({ hazard, text, atMs, origin, state }: Caution): Saying {
  return {
    text,
    atMs,
    endMs: null,
    hazards: [hazard, ...hazardsIn(text)],
    heldBreath: origin === 'person' || state === 'accepted' || warnsOfHeldBreath(text),
  }
}

/** Cues that follow each other this closely are also read as one sentence: a draft cuts sentences into clauses. */
const ONE_SENTENCE_MS = 1500

function readSayings(segment: Segment): Saying[] {
  const single = segment.cues
    .filter((cue) => cue.state !== 'declined')
    .toSorted((a, b) => a.startMs - b.startMs || a.endMs - b.endMs)
    .filter((cue, index, all) => index === all.findIndex((one) => one.text === cue.text && one.startMs === cue.startMs))
  const joined = single.slice(1).flatMap((next, index) => {
    const first = single[index]
    if (first === undefined || next.startMs - first.endMs > ONE_SENTENCE_MS) return []
    return [{ text: `${first.text}, ${next.text}`, startMs: first.startMs, endMs: next.endMs, topics: [] }]
  })
  return [...single.map((cue) => ({ ...cue, topics: topicsOf(cue.kind, cue.text) })), ...joined].map(
    ({ text, startMs, endMs, topics }) => ({
      text,
      atMs: startMs,
      endMs,
      hazards: [...hazardsIn(text), ...topics],
      heldBreath: warnsOfHeldBreath(text),
    }),
  )
}
