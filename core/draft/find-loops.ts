/** Finds circuits told by how many things are in them and how often they go round: "four stops, three rounds". */
import { readDose } from '../dose/read-dose.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Teaching } from './find-exercises.ts'
import type { Group } from './find-groups.ts'
import type { Speech } from './read-speech.ts'
import { LOOP_COUNT, LOOP_WORDS } from './words/en/group-words.ts'

/** The rounds are told within so many sentences of the number of things. */
const NEAR_SENTENCES = 2

/** Each loop holds as many exercises as it says, of those that start behind it. @param known groups found otherwise */
export function findLoops(
  speech: Speech,
  hits: readonly DoseHit[],
  teachings: readonly Teaching[],
  known: readonly Group[],
): Group[] {
  const starts = teachings
    .flatMap(({ spans }, index) => spans.map(({ offset }) => ({ offset, index })))
    .sort((a, b) => a.offset - b.offset)
  const loops: Group[] = []
  for (const sentence of speech.sentences) {
    const count = countOf(LOOP_COUNT.exec(speech.text.slice(sentence.offset, sentence.end))?.[1])
    const near = speech.sentences.slice(Math.max(0, sentence.index - 1), sentence.index + NEAR_SENTENCES + 1)
    const to = near.at(-1)?.end ?? sentence.end
    if (count === null || !near.some(({ words }) => LOOP_WORDS.test(words))) continue
    const from = near[0]?.offset ?? sentence.offset
    const isRounds = hits.some(({ dose, offset }) => dose.sets !== null && offset >= from && offset < to)
    const behind = [...new Set(starts.filter(({ offset }) => offset >= sentence.offset).map(({ index }) => index))]
    const members = behind.slice(0, count)
    const isNew = members.every((member) => ![...known, ...loops].some((group) => group.members.includes(member)))
    if (isRounds && members.length === count && isNew)
      loops.push({ scheme: 'circuit', members: members.toSorted((a, b) => a - b), offset: from })
  }
  return loops
}

function countOf(said: string | undefined): number | null {
  const reps = said === undefined ? null : (readDose(`${said} reps`)?.reps ?? null)
  return reps === null || reps === 'max' ? null : reps.min
}
