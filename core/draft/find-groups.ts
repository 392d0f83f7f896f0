/** Finds exercises that are done in turns: the stations of a circuit, the two of a superset. */
import type { DoseHit } from './find-dose-hits.ts'
import type { Naming } from './naming.ts'
import type { Speech } from './read-speech.ts'
import { GROUP_WORDS } from './words/en/group-words.ts'

export interface Group {
  scheme: 'circuit' | 'superset'
  members: number[]
  /** Where the group is announced. */
  offset: number
}

/** Exercises done in turns: a circuit announced with a list of its stations, or two named "back to back". */
export function findGroups(
  speech: Speech,
  namings: readonly Naming[],
  hits: readonly DoseHit[],
  teachingOf: (naming: Naming) => number | null,
): Group[] {
  const runs = listRuns(speech, namings)
  const circuits = hits.filter((hit) => hit.dose.scheme === 'circuit' || isRoundsOfIntervals(hit, hits))
  const groups: Group[] = []
  for (const run of runs) {
    const first = run[0]
    const last = run.at(-1)
    if (!first || !last) continue
    const from = speech.sentences[Math.max(0, first.sentence - 5)]?.offset ?? 0
    const to = speech.sentences[last.sentence]?.end ?? last.end
    const around = speech.text.slice(from, to)
    const isCircuit = GROUP_WORDS.circuit.test(around) || circuits.some((hit) => hit.offset >= from && hit.offset <= to)
    if (isCircuit) {
      const own = [...new Set(bareList(speech, run).flatMap((naming) => teachingOf(naming) ?? []))]
      if (own.length >= 2) groups.push({ scheme: 'circuit', members: own, offset: from })
    }
  }
  for (const sentence of speech.sentences) {
    const said = speech.text.slice(sentence.offset, sentence.end)
    if (!GROUP_WORDS.superset.test(said)) continue
    // Where sentences are guessed, the pair is named a little before.
    const reach = speech.unpunctuated ? NEAR_PAIR : 0
    const inside = namings.filter(({ offset, end }) => offset >= sentence.offset - reach && end <= sentence.end)
    // "It's a pair. Lunges and raises, one after the other."
    const next = speech.sentences[sentence.index + 1]
    const near =
      inside.length > 0 || !next
        ? inside
        : namings.filter(({ offset, end }) => offset >= next.offset && end <= next.end)
    const at = sentence.offset + (GROUP_WORDS.superset.exec(said)?.index ?? 0)
    const named = speech.unpunctuated ? near.slice(-2) : near.length <= MOST_PAIRED ? near : besides(near, at)
    const members = [...new Set(named.flatMap((naming) => teachingOf(naming) ?? []))]
    const isNew = members.every((member) => !groups.some((group) => group.members.includes(member)))
    if (members.length >= 2 && isNew) groups.push({ scheme: 'superset', members, offset: sentence.offset })
  }
  groups.push(...withRounds(speech, namings, groups, teachingOf))
  return groups
}

/** "Twelve rows, ten presses, three times through": each with its amount, then the rounds of them all. */
function withRounds(
  speech: Speech,
  namings: readonly Naming[],
  known: readonly Group[],
  teachingOf: (naming: Naming) => number | null,
): Group[] {
  return speech.sentences.flatMap((sentence): Group[] => {
    const rounds = GROUP_WORDS.rounds.exec(speech.text.slice(sentence.offset, sentence.end))
    if (!rounds) return []
    const at = sentence.offset + rounds.index
    const counted = namings.filter(
      ({ offset }) =>
        Math.abs(at - offset) <= ROUND_CHARACTERS &&
        offset >= sentence.offset - ROUND_CHARACTERS &&
        offset <= sentence.end &&
        GROUP_WORDS.amount.test(speech.text.slice(Math.max(0, offset - 20), offset)),
    )
    const members = [...new Set(counted.flatMap((naming) => teachingOf(naming) ?? []))]
    const isNew = members.every((member) => !known.some((group) => group.members.includes(member)))
    if (members.length < 2 || !isNew) return []
    return [
      { scheme: members.length === 2 ? 'superset' : 'circuit', members, offset: counted[0]?.offset ?? sentence.offset },
    ]
  })
}

/** So many characters in front of the rounds the exercises are named. */
const ROUND_CHARACTERS = 140

/** More names than these in one sentence are a programme, of which only two are a pair. */
const MOST_PAIRED = 3

/** The two of a programme that a word sets together: "RDLs paired with box jumps", or the last two in front of "back to back". */
function besides(near: readonly Naming[], at: number): Naming[] {
  const before = near.filter(({ end }) => end <= at)
  const after = near.filter(({ offset }) => offset >= at)
  const last = before.at(-1)
  const [next] = after
  if (last && next && next.offset - at <= NEXT_CHARACTERS) return [last, next]
  return last && at - last.end <= BEFORE_CHARACTERS ? before.slice(-2) : []
}

/** So near in front of "as a pair" the second of the two ends. */
const BEFORE_CHARACTERS = 60

/** "Paired with the" stands at most between the word and the second name. */
const NEXT_CHARACTERS = 30

/** So many characters in front of "back to back" the pair is named. */
const NEAR_PAIR = 90

/** "Forty on, twenty off, three rounds": intervals whose rounds are said along with them. */
function isRoundsOfIntervals({ dose, offset, end }: DoseHit, hits: readonly DoseHit[]): boolean {
  if (dose.scheme !== 'interval') return false
  return hits.some((other) => other.dose.sets !== null && other.offset >= offset && other.offset <= end + ROUNDS_NEAR)
}

/** So many characters behind an interval its rounds still go with it. */
const ROUNDS_NEAR = 60

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
