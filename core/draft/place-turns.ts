/** Places the turns that were called in the running text. */
import type { TextSpan } from './place-spans.ts'
import type { Speech } from './read-speech.ts'

/** A turn that is called: the sentence and whose it is; null = a round begins. */
export interface Call {
  sentence: number
  member: number | null
}

/** Returns that are known already, by the sentence they begin with. */
export type Returns = ReadonlyMap<number, { member: number; end: number }>

/** The stretch of each turn: to the next call, without the talk behind. */
export function turnsOf(
  speech: Speech,
  calls: readonly Call[],
  members: readonly number[],
  until: number,
  returned: Returns,
) {
  const turns: (TextSpan & { member: number })[] = []
  calls.forEach(({ sentence, member }, index) => {
    const next = calls[index + 1]
    const limit = next ? next.sentence : Math.min(speech.sentenceAt(until - 1) + 1, speech.sentences.length)
    // "Last round. Screw your feet into the floor": the first of them goes without saying
    const isFirstUnsaid = member === null && next?.member === members[1] && members[0] !== undefined
    const owner = member ?? (isFirstUnsaid ? members[0] : undefined)
    if (owner === undefined || !members.includes(owner)) return
    const before = calls[index - 1]
    const isOpened = before?.member === null && sentence - before.sentence <= ROUND_SENTENCES
    const begin = isOpened ? before.sentence : sentence
    const end = lastOf(speech, begin, limit, next ? Infinity : TALK_WORDS)
    const known = next ? undefined : returned.get(sentence)?.end
    turns.push({
      member: owner,
      offset: speech.sentences[begin]?.offset ?? 0,
      called: speech.sentences[sentence]?.offset ?? 0,
      end: known ?? speech.sentences[end]?.end ?? 0,
    })
  })
  return turns
}

/** "Round two" and the turn it opens are at most so far apart. */
const ROUND_SENTENCES = 4

/** So many words of talk end the last turn. */
const TALK_WORDS = 40

/** Index of the last sentence of a turn: an end that nothing is taught behind, else all up to the next call. */
function lastOf(speech: Speech, begin: number, limit: number, mostTalk: number): number {
  let last = begin
  let lost = 0
  for (let index = begin + 1; index < limit; index += 1) {
    const sentence = speech.sentences[index]
    if (!sentence || sentence.role === 'move') break
    if (speech.sentences[last]?.role === 'end' && !isTaughtIn(speech, index, limit)) break
    const isTalk = sentence.role === 'chat'
    lost = isTalk ? lost + sentence.wordCount : 0
    if (lost > mostTalk) break
    if (!isTalk || mostTalk === Infinity) last = index
  }
  return last
}

function isTaughtIn(speech: Speech, from: number, limit: number): boolean {
  for (let index = from; index < limit; index += 1) if (speech.sentences[index]?.role === 'teach') return true
  return false
}
