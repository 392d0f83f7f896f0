/** Gives each exercise the dose said for it: in its teaching, in a programme before it, in a correction after it, or for its group. */
import type { Prescription } from '../../shared/log-sheet.ts'
import { foldName } from '../catalogue/fold-words.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { findDoseHits } from './find-dose-hits.ts'
import type { Teaching } from './find-exercises.ts'
import type { Naming } from './find-namings.ts'
import { mergeDoses } from './merge-doses.ts'
import type { Speech } from './read-speech.ts'
import { GROUP_WORDS } from './words/en/group-words.ts'

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
  const hits = findDoseHits(speech, namings)
  const groups = findGroups(speech, teachings, namings, hits)
  const own = teachings.map((): DoseHit[] => [])
  const shared: DoseHit[] = []
  for (const hit of hits) {
    const owners = isForRound(speech, hit, groups) ? [] : ownersOf(speech, hit, teachings, namings)
    if (owners.length === 0) shared.push(hit)
    for (const owner of owners) own[owner]?.push(hit)
  }
  return teachings.map((teaching, index) => {
    const group = groups.find(({ members }) => members.includes(index))
    const members = group?.members.filter((member) => member !== index) ?? []
    const common = group ? shared.filter((hit) => isGroupHit(hit, group)) : []
    const told = [...(own[index] ?? [])].sort((a, b) => a.offset - b.offset)
    const dose = widened(
      mergeDoses([...told, ...common.slice(0, 1), ...restsOf(common)], teaching.entry?.still ?? false),
      common,
      told,
    )
    if (!dose || !group) return { dose: dose && withSides(speech, teaching, dose), groupWith: [] }
    return { dose: { ...dose, scheme: group.scheme }, groupWith: members }
  })
}

/** "This round we go twenty five on, five off" while a circuit runs: meant for all its stations. */
function isForRound(speech: Speech, hit: DoseHit, groups: readonly Group[]): boolean {
  const sentence = speech.sentences[hit.sentence]
  const said = sentence ? speech.text.slice(sentence.offset, sentence.end) : ''
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
    /\b(?:other side|second side|(?:swap|change|switch) (?:sides|legs|arms)|other (?:leg|arm|foot) (?:through|now|forward)|now the (?:left|right)|same on the)\b/i.test(
      said,
    )
  return dose.perSide || !both || teaching.entry?.sided !== true ? dose : { ...dose, perSide: true }
}

interface Group {
  scheme: 'circuit' | 'superset'
  members: number[]
  /** Where the group is announced. */
  offset: number
}

/** Exercises done in turns: a circuit announced with a list of its stations, or two named "back to back". */
function findGroups(
  speech: Speech,
  teachings: readonly Teaching[],
  namings: readonly Naming[],
  hits: readonly DoseHit[],
): Group[] {
  const runs = listRuns(speech, namings)
  const groups: Group[] = []
  for (const run of runs) {
    const first = run[0]
    const last = run.at(-1)
    if (!first || !last) continue
    const from = speech.sentences[Math.max(0, first.sentence - 5)]?.offset ?? 0
    const to = speech.sentences[last.sentence]?.end ?? last.end
    const around = speech.text.slice(from, to)
    const isCircuit =
      GROUP_WORDS.circuit.test(around) ||
      hits.some((hit) => hit.dose.scheme === 'circuit' && hit.offset >= from && hit.offset <= to)
    if (isCircuit) {
      const own = [...new Set(bareList(speech, run).flatMap((naming) => teachingOf(naming, teachings)))]
      if (own.length >= 2) groups.push({ scheme: 'circuit', members: own, offset: from })
    }
  }
  for (const sentence of speech.sentences) {
    const said = speech.text.slice(sentence.offset, sentence.end)
    if (!GROUP_WORDS.superset.test(said)) continue
    const named = namings.filter((naming) => naming.offset >= sentence.offset && naming.end <= sentence.end)
    const members = [...new Set(named.flatMap((naming) => teachingOf(naming, teachings)))]
    const isNew = members.every((member) => !groups.some((group) => group.members.includes(member)))
    if (members.length >= 2 && isNew) groups.push({ scheme: 'superset', members, offset: sentence.offset })
  }
  return groups
}

/** The longest stretch of names with nothing but commas between: the stations of a circuit rather than all that is announced. */
function bareList(speech: Speech, run: readonly Naming[]): Naming[] {
  const parts: Naming[][] = []
  for (const naming of run) {
    const last = parts.at(-1)?.at(-1)
    const between = last ? speech.text.slice(last.end, naming.offset) : ' . . . '
    if (last && /^[\s,]*(?:and|then|&)?\s*(?:the |some |a )?$/i.test(between)) parts.at(-1)?.push(naming)
    else parts.push([naming])
  }
  const [longest] = parts.sort((a, b) => b.length - a.length)
  return longest && longest.length >= 3 ? longest : [...run]
}

function listRuns(speech: Speech, namings: readonly Naming[]): Naming[][] {
  const runs: Naming[][] = []
  for (const naming of namings.filter(({ listed }) => listed)) {
    const last = runs.at(-1)?.at(-1)
    const gap = last ? speech.wordsBefore(naming.offset) - speech.wordsBefore(last.end) : Infinity
    if (gap <= RUN_GAP_WORDS) runs.at(-1)?.push(naming)
    else runs.push([naming])
  }
  return runs
}

const RUN_GAP_WORDS = 20

/** Index of the teaching a naming belongs to, by entry or by the end of the name. */
function teachingOf(naming: Naming, teachings: readonly Teaching[]): number[] {
  const folded = foldName(naming.name)
  const byName = teachings.findIndex(({ name, alsoCalled }) =>
    [name, ...alsoCalled].some((known) => foldName(known) === folded),
  )
  const byEntry = teachings.findIndex(({ entry }) => entry !== null && entry === naming.entry)
  const byEnd = teachings.findIndex(({ name }) => foldName(name).endsWith(` ${folded}`))
  const found = [byName, byEntry, byEnd].find((index) => index >= 0)
  return found === undefined ? [] : [found]
}

/** Whose dose it is: the exercise named before it in its sentence, else the one being taught; none outside all. */
function ownersOf(speech: Speech, hit: DoseHit, teachings: readonly Teaching[], namings: readonly Naming[]): number[] {
  const sentence = speech.sentences[hit.sentence]
  const inside = teachings.findIndex(({ spans }) =>
    spans.some((span) => span.offset <= hit.offset && hit.offset < span.end),
  )
  const inSentence = namings.filter(
    (naming) => sentence && naming.offset >= sentence.offset && naming.end <= sentence.end,
  )
  const before = inSentence.filter((naming) => naming.end <= hit.offset + 1).at(-1)
  const after = inSentence.find((naming) => naming.offset < hit.end && naming.offset >= hit.offset)
  const named = [before, after].flatMap((naming) =>
    naming && mayTakeDose(naming, before, hit, inside) ? teachingOf(naming, teachings) : [],
  )
  const [owner] = named
  if (owner !== undefined) return [owner]
  if (inside >= 0) return [inside]
  const previous = previousSentenceName(speech, hit, namings)
  return previous ? teachingOf(previous, teachings) : []
}

/** Inside a teaching, a name in passing takes the dose only where it is set against another or puts something right. */
function mayTakeDose(naming: Naming, before: Naming | undefined, hit: DoseHit, inside: number): boolean {
  if (inside < 0 || naming.listed) return true
  return hit.corrects || (naming === before && naming.strength >= 2) || hit.offset - naming.end < 14
}

/** In a programme the dose may follow its name in a sentence of its own: "Then the swing. Ten of those." */
function previousSentenceName(speech: Speech, hit: DoseHit, namings: readonly Naming[]): Naming | null {
  const last = namings.filter((naming) => naming.listed && naming.end <= hit.offset).at(-1)
  const near =
    last && hit.sentence - last.sentence <= 1 && speech.wordsBefore(hit.offset) - speech.wordsBefore(last.end) <= 8
  return near && last ? last : null
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
