/** Gives each exercise the dose said for it: in its teaching, in a programme before it, in a correction after it, or for its group. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import type { DoseCase } from './dose-option.ts'
import { findLooseNumbers } from './find-loose-numbers.ts'
import { SayingFinder } from './gather-sayings.ts'
import { pickDoses } from './pick-doses.ts'
import { isShort } from './sided-table.ts'
import { copyDose } from './copy-dose.ts'
import { findCountedNames } from './find-counted-names.ts'
import { findBareDoses, findRepeats } from './find-bare-doses.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { findDoseHits } from './find-dose-hits.ts'
import { defaultsOf, unlistedStations, withDefaults } from './apply-defaults.ts'
import { findDefaults } from './find-defaults.ts'
import { findGroups } from './find-groups.ts'
import type { Group } from './find-groups.ts'
import { findLoops } from './find-loops.ts'
import { findOwners, readyOwning } from './find-owners.ts'
import type { Owning } from './find-owners.ts'
import type { Teaching } from './find-exercises.ts'
import type { TurnBlock } from './find-turns.ts'
import type { LinkedClass } from './link-features.ts'
import type { Naming } from './naming.ts'
import { hasWork, mergeDoses } from './merge-doses.ts'
import type { Speech } from './read-speech.ts'
import { withOwnNames } from './own-names.ts'
import { withoutAnnounced, withoutIdleBare, withoutLoneTimes } from './pick-told.ts'
import { asHeld, asRest, inBreaths, isStill, tellsBothSides, withSecondSet, withSides } from './refine-dose.ts'
import { settleHits } from './settle-hits.ts'
import { addBlocks, areaOf, roundsOf, withSharedRounds, withTurns } from './share-rounds.ts'
import type { Area } from './share-rounds.ts'
import { weighLinks } from './weigh-links.ts'
import type { LinkTable } from './weigh-links.ts'

/** The dose of one exercise and the indexes of the exercises done with it. */
export interface AttachedDose {
  dose: Prescription | null
  groupWith: number[]
}

/**
 * Doses for all teachings, in their order.
 * @param known every naming of the class
 * @param blocks exercises that were called in turns
 */
export function attachDoses(
  speech: Speech,
  teachings: readonly Teaching[],
  known: readonly Naming[],
  blocks: readonly TurnBlock[],
): AttachedDose[] {
  const { attached, cases } = readDoseCases(speech, teachings, known, blocks)
  if (isShort(speech)) return attached
  const picked = pickDoses(cases)
  return cases.map(({ members }, index) => {
    const dose = picked[index] ?? null
    const isInTurns = dose?.scheme === 'circuit' || dose?.scheme === 'superset'
    return { dose, groupWith: isInTurns ? members.filter((member) => member !== index) : [] }
  })
}

/** The doses by rules, and what else each may be. @param links other weights of links than the fitted ones */
export function readDoseCases(
  speech: Speech,
  teachings: readonly Teaching[],
  known: readonly Naming[],
  blocks: readonly TurnBlock[],
  links?: LinkTable,
): { attached: AttachedDose[]; cases: DoseCase[]; linked: LinkedClass } {
  const namings = withOwnNames(speech, teachings, known)
  const hits = findHits(speech, namings)
  const owning = readyOwning(teachings, namings)
  const groups = findGroups(speech, namings, hits, owning.teachingOf)
  groups.push(...findLoops(speech, hits, teachings, groups))
  addBlocks(groups, blocks)
  const { own, shared, areas } = shareOut(speech, hits, owning, { groups, blocks })
  const defaults = findDefaults(speech, (offset) => owning.teachingAt(offset) !== null).map((one) => ({
    ...one,
    hit: { ...one.hit, forAll: true as const },
  }))
  groups.push(...unlistedStations(speech, teachings, own, groups, defaults))
  const linked = { speech, owning, groups, own }
  const turns = isShort(speech) ? groups : weighLinks(linked, links)
  const found = [...hits, ...findLooseNumbers(speech, hits), ...defaults.map(({ hit }) => hit)]
  const sayings = new SayingFinder(
    speech,
    found.toSorted((a, b) => a.offset - b.offset),
    owning,
    { groups: turns, own },
  )
  const result: AttachedDose[] = []
  const cases: DoseCase[] = []
  teachings.forEach((teaching, index) => {
    const group = groups.find(({ members }) => members.includes(index))
    const members = group?.members.filter((member) => member !== index) ?? []
    const common = group
      ? shared.filter((hit) => isGroupHit(hit, group) && hit.offset < endOf(group, groups, teachings))
      : []
    const ordered = [...(own[index] ?? [])].sort((a, b) => a.offset - b.offset)
    const still = isStill(speech, teaching)
    const timed = still ? ordered : withoutLoneTimes(speech, ordered)
    const told = withoutIdleBare(withoutAnnounced(timed, teaching)).map((hit) => asHeld(speech, asRest(speech, hit)))
    const forAll = defaultsOf(teaching, group, defaults, groups, teachings)
    const isHeldForAll = teaching.entry === null && forAll.some(({ dose }) => dose.holdSeconds !== null)
    const merged = widened(
      mergeDoses(withDefaults([...told, ...common.slice(0, 2), ...restsOf(common)], forAll), still || isHeldForAll),
      common,
      told,
    )
    cases.push({
      ...{ speech, teaching, still, ruled: null, near: [] },
      told: sayings.toldFor(index, ordered, [...common, ...forAll]),
      scheme: group?.scheme ?? null,
      members: turns.find(({ members }) => members.includes(index))?.members ?? [],
      bothSides: tellsBothSides(speech, teaching),
    })
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
        : { dose: dose && withSecondSet(speech, teaching, withSides(speech, teaching, dose)), groupWith: [] },
    )
  })
  const attached = withTurns(speech, hits, areas, withSharedRounds(result))
  const doseAt = (index: number): Prescription | null => attached[index]?.dose ?? null
  return {
    attached,
    linked,
    cases: cases.map((one, index) => ({
      ...one,
      ruled: doseAt(index),
      near: [index - 1, index + 1].flatMap((at) => doseAt(at) ?? []),
    })),
  }
}

/** Whose each hit is: of one exercise, or of a group or the class. */
function shareOut(
  speech: Speech,
  hits: readonly DoseHit[],
  owning: Owning,
  { groups, blocks }: { groups: readonly Group[]; blocks: readonly TurnBlock[] },
): { own: DoseHit[][]; shared: DoseHit[]; areas: Area[] } {
  const areas = groups.map((group) => areaOf(group, owning.teachings, blocks))
  const own = owning.teachings.map((): DoseHit[] => [])
  const shared: DoseHit[] = []
  for (const hit of hits) {
    const isShared = isForRound(speech, hit, groups) || roundsOf(speech, hit, areas) !== null
    const owners = isShared ? [] : findOwners(speech, hit, owning)
    if (owners.length === 0) shared.push(hit)
    for (const one of owners) own[one.owner]?.push(one.hit)
  }
  return { own, shared, areas }
}

/** Every dose of the class in order, settled by its neighbours. */
function findHits(speech: Speech, namings: readonly Naming[]): DoseHit[] {
  const counted = findCountedNames(speech, namings)
  const full = [...findDoseHits(speech, namings).flatMap((hit) => withoutCounted(hit, counted)), ...counted]
  const found = findBareDoses(speech, namings)
  const told = found.filter((hit) => hit.told && !hit.bare)
  const bare = found.filter(
    (hit) => !told.includes(hit) && !full.some(({ offset, end }) => hit.offset < end && offset < hit.end),
  )
  const whole = full.filter((hit) => !told.some(({ offset, end }) => offset <= hit.offset && hit.end <= end))
  const said = [...whole, ...bare, ...told, ...findRepeats(speech, [...whole, ...bare])].sort(
    (a, b) => a.offset - b.offset,
  )
  return settleHits(speech, said)
}

/** What a phrase says besides the names with their numbers in it: the rounds of them all and the rest behind. */
function withoutCounted(hit: DoseHit, counted: readonly DoseHit[]): DoseHit[] {
  const inside = counted.filter(({ offset, end }) => offset < hit.end && hit.offset < end)
  if (inside.length === 0) return [hit]
  const { sets, restSeconds, restBetween } = hit.dose
  if (sets === null && restSeconds === null) return []
  const of = inside.flatMap((one) => one.row ?? [])
  return [{ ...hit, dose: buildPrescription({ sets, restSeconds, restBetween }), of }]
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

/** What is said for a group ends where the next is announced, once the group is being taught. */
function endOf({ members }: Group, groups: readonly Group[], teachings: readonly Teaching[]): number {
  const start = Math.min(...members.map((member) => teachings[member]?.spans[0]?.offset ?? Infinity))
  return Math.min(...groups.filter(({ offset }) => offset > start).map(({ offset }) => offset))
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
