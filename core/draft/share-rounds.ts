/** Gives the exercises of a group what is said once for all of them: how often they go round, and the rest behind. */
import type { AttachedDose } from './attach-doses.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Teaching } from './find-exercises.ts'
import type { Group } from './find-groups.ts'
import type { TurnBlock } from './find-turns.ts'
import type { Speech } from './read-speech.ts'

/** A group with the stretch in which its rounds may be told. */
export interface Area {
  members: readonly number[]
  offset: number
  /** Up to here its rounds may be told: while turns are called, else until the second of them is taught. */
  tellUntil: number
  rounds: number | null
}

/** Where a group is taught and done. */
export function areaOf({ members }: Group, teachings: readonly Teaching[], blocks: readonly TurnBlock[]): Area {
  const block = blocks.find((one) => one.members.some((member) => members.includes(member)))
  const mains = members.flatMap((member) => teachings[member]?.spans[0] ?? [])
  return {
    members,
    offset: Math.min(...mains.map(({ offset }) => offset)),
    tellUntil: block?.end ?? mains[1]?.offset ?? 0,
    rounds: block?.rounds ?? null,
  }
}

/** Adds the exercises that were called in turns to the groups; they say better than an announcement who belongs to one. */
export function addBlocks(groups: Group[], blocks: readonly TurnBlock[]): void {
  for (const { members, offset } of blocks) {
    const known = groups.findIndex((group) => group.members.some((one) => members.includes(one)))
    const scheme = members.length === 2 ? 'superset' : 'circuit'
    const start = Math.min(groups[known]?.offset ?? Infinity, offset)
    if (known < 0) groups.push({ scheme, members, offset })
    else groups[known] = { scheme, members, offset: start }
  }
}

/** Rounds of exercises that go in turns are told in front of the first of them, or while they go. */
const BEFORE_TURNS = 260

/** The group that a hit tells the rounds of; null = it tells none. */
export function roundsOf(
  speech: Speech,
  { dose, offset, end, corrects }: DoseHit,
  areas: readonly Area[],
): Area | null {
  if (dose.sets === null || dose.reps !== null || dose.holdSeconds !== null || dose.distanceM !== null) return null
  const around = speech.text.slice(offset - (corrects ? ROUNDS_BEFORE : 0), end + ROUNDS_BEHIND)
  if (!ROUNDS_SAID.test(around)) return null
  return areas.find((area) => offset >= area.offset - BEFORE_TURNS && offset < area.tellUntil) ?? null
}

const ROUNDS_BEHIND = 20
const ROUNDS_BEFORE = 60
const ROUNDS_SAID =
  /\b(?:rounds?|laps|circuits|(?:times|twice|thrice) (?:through|round|around|over)|(?:whole|all of|both|pair|three|two|lot|thing) .{0,20}(?:times|twice)|each of (?:them|those|these)|(?:through|round|all|do) (?:that|it|them|those|the lot) (?:twice|(?:two|three|four) times))\b/i

/** The rounds of exercises that go in turns, said once for all of them, are the sets of each that tells none. */
export function withTurns(
  speech: Speech,
  hits: readonly DoseHit[],
  areas: readonly Area[],
  doses: readonly AttachedDose[],
): AttachedDose[] {
  const saidOf = new Map(
    hits.flatMap((hit) => {
      const area = roundsOf(speech, hit, areas)
      return area ? [[area, hit] as const] : []
    }),
  )
  return doses.map((attached, index) => {
    const area = areas.find(({ members }) => members.includes(index))
    if (!attached.dose || !area) return attached
    const said = saidOf.get(area)
    // rounds told anew while they go replace what was announced
    const isAnew = said !== undefined && said.offset > area.offset
    if (attached.dose.sets !== null && !isAnew) return attached
    const called = area.rounds === null ? null : { min: area.rounds, max: area.rounds }
    const sets = said?.dose.sets ?? called
    return sets ? { ...attached, dose: { ...attached.dose, sets } } : attached
  })
}

/** The rounds of a superset and the rest behind them are said once, for all of it. */
export function withSharedRounds(doses: readonly AttachedDose[]): AttachedDose[] {
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
