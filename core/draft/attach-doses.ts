/** Gives each exercise the dose said for it: in its teaching, in a programme before it, in a correction after it, or for its group. */
import type { Prescription } from '../../shared/log-sheet.ts'
import { foldName } from '../catalogue/fold-words.ts'
import { copyDose } from './copy-dose.ts'
import { findBareDoses, findRepeats } from './find-bare-doses.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { findDoseHits } from './find-dose-hits.ts'
import { defaultsOf, unlistedStations, withDefaults } from './apply-defaults.ts'
import { findDefaults } from './find-defaults.ts'
import { findGroups } from './find-groups.ts'
import type { Group } from './find-groups.ts'
import { indexSpans } from './index-spans.ts'
import type { Teaching } from './find-exercises.ts'
import type { Naming } from './naming.ts'
import { asHold, hasWork, mergeDoses } from './merge-doses.ts'
import type { Speech } from './read-speech.ts'

/** The dose of one exercise and the indexes of the exercises done with it. */
export interface AttachedDose {
  dose: Prescription | null
  groupWith: number[]
}

/** Doses for all teachings, in their order. @param namings every naming of the class */
export function attachDoses(
  speech: Speech,
  teachings: readonly Teaching[],
  namings: readonly Naming[],
): AttachedDose[] {
  const full = findDoseHits(speech, namings)
  const bare = findBareDoses(speech, namings).filter(
    ({ offset, end }) => !full.some((hit) => hit.offset < end && offset < hit.end),
  )
  const hits = [...full, ...bare, ...findRepeats(speech, [...full, ...bare])].sort((a, b) => a.offset - b.offset)
  const teachingOf = matchTeachings(teachings)
  const groups = findGroups(speech, namings, hits, teachingOf)
  const spans = teachings.flatMap((teaching, owner) => teaching.spans.map((span) => ({ ...span, owner })))
  const bySentence = new Map<number, Naming[]>()
  for (const naming of namings) {
    const list = bySentence.get(naming.sentence)
    if (list) list.push(naming)
    else bySentence.set(naming.sentence, [naming])
  }
  const owning: Owning = { teachingOf, teachingAt: indexSpans(spans), bySentence }
  const own = teachings.map((): DoseHit[] => [])
  const shared: DoseHit[] = []
  for (const hit of hits) {
    const owner = isForRound(speech, hit, groups) ? null : ownerOf(speech, hit, owning)
    if (owner === null) shared.push(hit)
    else own[owner]?.push(hit)
  }
  const defaults = findDefaults(speech, (offset) => owning.teachingAt(offset) !== null)
  groups.push(...unlistedStations(teachings, own, groups, defaults))
  const result: AttachedDose[] = []
  teachings.forEach((teaching, index) => {
    const group = groups.find(({ members }) => members.includes(index))
    const members = group?.members.filter((member) => member !== index) ?? []
    const common = group ? shared.filter((hit) => isGroupHit(hit, group)) : []
    const told = withoutIdleBare([...(own[index] ?? [])].sort((a, b) => a.offset - b.offset)).map((hit) =>
      asHeld(speech, hit),
    )
    const forAll = defaultsOf(teaching, group, defaults, groups, teachings)
    const isStill =
      isHeld(teaching) || (teaching.entry === null && forAll.some(({ dose }) => dose.holdSeconds !== null))
    const merged = widened(
      mergeDoses(withDefaults([...told, ...common.slice(0, 2), ...restsOf(common)], forAll), isStill),
      common,
      told,
    )
    const [main] = teaching.spans
    const before = result[index - 1]?.dose ?? null
    const setsAlone = told.find(({ dose }) => dose.sets !== null && !hasWork(dose))?.dose.sets ?? null
    const copied = main
      ? copyDose(speech, main, merged, before, { sided: teaching.entry?.sided === true, setsAlone })
      : merged
    const dose = copied && inBreaths(teaching, copied)
    result.push(
      dose && group
        ? { dose: { ...dose, scheme: group.scheme }, groupWith: members }
        : { dose: dose && withSides(speech, teaching, dose), groupWith: [] },
    )
  })
  return withSharedRounds(result)
}

/** "And just hold. Twenty seconds": a time behind a word of holding is held. */
function asHeld(speech: Speech, hit: DoseHit): DoseHit {
  const before = speech.text.slice(Math.max(0, hit.offset - HOLD_CHARACTERS), hit.offset)
  const isHeld = /\b(?:hold|holding|stay|balance)\b(?: \w+){0,3}[.,:;!\s\v]*$/i.test(before)
  return isHeld ? { ...hit, dose: asHold(hit.dose) } : hit
}

const HOLD_CHARACTERS = 40

/** Held rather than moved: as the catalogue says, else by the name's last word. */
function isHeld({ entry, name }: Teaching): boolean {
  return entry?.still ?? /\b(?:stretch|hold|pose|plank|sit|hang|fold|balance)(?:e?s)?$/i.test(name)
}

/** "Six rounds of that" of a breathing exercise counts its cycles. */
function inBreaths({ entry, name }: Teaching, dose: Prescription): Prescription {
  const isBreathing = entry?.movements.includes('breathing') === true || /\bbreath(?:s|ing)?\b/i.test(name)
  const isByCount = dose.said.some(({ text }) => /\b(?:in|inhale) for\b.*\b(?:out|exhale) for\b/i.test(text))
  if (dose.reps === null || dose.repUnit !== 'rep' || (!isBreathing && !isByCount)) return dose
  return { ...dose, repUnit: 'cycle' }
}

/** The rounds of a superset and the rest behind them are said once, for all of it. */
function withSharedRounds(doses: readonly AttachedDose[]): AttachedDose[] {
  return doses.map(({ dose, groupWith }) => {
    if (dose?.scheme !== 'superset') return { dose, groupWith }
    const others = groupWith.flatMap((member) => doses[member]?.dose ?? [])
    const rounds = others.find(({ sets }) => sets !== null)
    const rest = others.find(({ restSeconds }) => restSeconds !== null)
    const sets = dose.sets ?? rounds?.sets ?? null
    if (dose.restSeconds !== null || !rest) return { dose: { ...dose, sets }, groupWith }
    return {
      dose: { ...dose, sets, restSeconds: rest.restSeconds, restBetween: rest.restBetween },
      groupWith,
    }
  })
}

/** A bare number counts only where no amount of work is said, and only the first one. */
function withoutIdleBare(told: readonly DoseHit[]): DoseHit[] {
  // A squeeze at the top is no amount by itself.
  const isTold = told.some(
    ({ bare, dose }) => !bare && hasWork({ ...dose, holdSeconds: dose.holdPer === 'rep' ? null : dose.holdSeconds }),
  )
  const first = told.find(({ bare }) => bare)
  return told.filter((hit) => !hit.bare || (!isTold && hit === first))
}

/** "This round we go twenty five on, five off" while a circuit runs: meant for all its stations. */
function isForRound(speech: Speech, hit: DoseHit, groups: readonly Group[]): boolean {
  const sentence = speech.sentences[hit.sentence]
  const said = sentence ? speech.text.slice(Math.min(sentence.offset, hit.offset - 40), sentence.end) : ''
  const isInterval = hit.dose.workSeconds !== null && hit.dose.restSeconds !== null && hit.dose.reps === null
  return (
    isInterval &&
    /\brounds?\b/i.test(said) &&
    groups.some((group) => group.scheme === 'circuit' && group.offset < hit.offset)
  )
}

/** One-sided work that goes on to the other side is dosed per side. */
function withSides(speech: Speech, teaching: Teaching, dose: Prescription): Prescription {
  const said = teaching.spans.map((span) => speech.text.slice(span.offset, span.end)).join(' ')
  const both =
    /\b(?:other side|second side|(?:swap|change|switch) (?:sides|legs|arms)|other (?:leg|arm|foot) (?:through|now|forward)|now the (?:left|right)|same on the|swap over|(?:and )?(?:the )?other (?:leg|arm|foot|hand)(?=[.,!?]|$))\b/i.test(
      said,
    )
  return dose.perSide || !both || teaching.entry?.sided === false ? dose : { ...dose, perSide: true }
}

/** Says which teaching a naming belongs to: by name, by entry, or by the end of the name. */
function matchTeachings(teachings: readonly Teaching[]): (naming: Naming) => number | null {
  const byName = new Map<string, number>()
  const byEntry = new Map<string, number>()
  const byEnding = new Map<string, number>()
  teachings.forEach(({ entry, name, alsoCalled }, index) => {
    if (entry && !byEntry.has(entry.id)) byEntry.set(entry.id, index)
    for (const known of [name, ...alsoCalled].map(foldName)) if (!byName.has(known)) byName.set(known, index)
    const words = foldName(name).split(' ')
    words.slice(1).forEach((_, from) => {
      const ending = words.slice(from + 1).join(' ')
      if (!byEnding.has(ending)) byEnding.set(ending, index)
    })
  })
  return (naming) => {
    const folded = foldName(naming.name)
    return (
      byName.get(folded) ?? (naming.entry ? byEntry.get(naming.entry.id) : undefined) ?? byEnding.get(folded) ?? null
    )
  }
}

/** What is needed to tell whose dose a hit is. */
interface Owning {
  teachingOf: (naming: Naming) => number | null
  /** The teaching whose span holds a character. */
  teachingAt: (offset: number) => number | null
  bySentence: ReadonlyMap<number, readonly Naming[]>
}

/** Whose dose it is: the exercise named before it in its sentence, else the one being taught; null outside all. */
function ownerOf(speech: Speech, hit: DoseHit, owning: Owning): number | null {
  const inside = owning.teachingAt(hit.offset)
  const inSentence = owning.bySentence.get(hit.sentence) ?? []
  const before = inSentence.filter((naming) => naming.end <= hit.offset + 1).at(-1)
  const after = inSentence.find((naming) => naming.offset < hit.end && naming.offset >= hit.offset)
  for (const naming of [before, after]) {
    const named = naming && mayTakeDose(naming, before, hit, inside) ? owning.teachingOf(naming) : null
    if (named !== null) return named
  }
  if (inside !== null) return inside
  const previous = previousSentenceName(speech, hit, owning)
  return previous && owning.teachingOf(previous)
}

/** Inside a teaching, a name in passing takes the dose only where it is set against another or puts something right. */
function mayTakeDose(naming: Naming, before: Naming | undefined, hit: DoseHit, inside: number | null): boolean {
  if (inside === null || naming.listed) return true
  return hit.corrects || (naming === before && naming.strength >= 2) || hit.offset - naming.end < 14
}

/** In a programme the dose may follow its name in a sentence of its own: "Then the swing. Ten of those." */
function previousSentenceName(speech: Speech, hit: DoseHit, owning: Owning): Naming | null {
  const near = [...(owning.bySentence.get(hit.sentence - 1) ?? []), ...(owning.bySentence.get(hit.sentence) ?? [])]
  const last = near.filter((naming) => naming.listed && naming.end <= hit.offset).at(-1)
  return last && speech.wordsBefore(hit.offset) - speech.wordsBefore(last.end) <= 8 ? last : null
}

function isGroupHit(hit: DoseHit, group: Group): boolean {
  const work = hit.dose.workSeconds !== null || hit.dose.sets !== null
  return hit.offset >= group.offset - 200 && (work || hit.dose.restSeconds !== null) && hit.dose.reps === null
}

function restsOf(common: readonly DoseHit[]): DoseHit[] {
  return common.slice(1).filter((hit) => hit.dose.workSeconds === null && hit.dose.restBetween === 'stations')
}

/** A later round with other times makes the dose a range: 20 then 25 seconds. */
function widened(dose: Prescription | null, common: readonly DoseHit[], told: readonly DoseHit[]): Prescription | null {
  if (!dose || told.some((hit) => hit.dose.workSeconds !== null)) return dose
  const intervals = common.filter((hit) => hit.dose.workSeconds !== null && hit.dose.restSeconds !== null)
  if (intervals.length < 2) return dose
  const [first] = intervals
  const later = intervals.slice(1).map((hit) => hit.quote)
  return {
    ...dose,
    workSeconds: rangeOf(intervals.flatMap((hit) => (hit.dose.workSeconds ? [hit.dose.workSeconds] : []))),
    restSeconds: rangeOf(intervals.flatMap((hit) => (hit.dose.restSeconds ? [hit.dose.restSeconds] : []))),
    said: [
      ...(first ? [first.quote] : []),
      ...later,
      ...dose.said.filter((quote) => quote !== first?.quote && !later.includes(quote)),
    ],
  }
}

function rangeOf(ranges: readonly { min: number | null; max: number | null }[]): { min: number; max: number } | null {
  const numbers = ranges.flatMap(({ min, max }) => [min, max]).filter((value) => value !== null)
  return numbers.length > 0 ? { min: Math.min(...numbers), max: Math.max(...numbers) } : null
}
