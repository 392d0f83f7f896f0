/** Finds exercises that go in turns by how they are called: taught one after the other, then called again round by round. */
import { foldWords } from '../catalogue/fold-words.ts'
import type { Teaching } from './find-exercises.ts'
import { partAtCalls } from './part-at-calls.ts'
import { turnsOf } from './place-turns.ts'
import type { Call, Returns } from './place-turns.ts'
import type { TextSpan } from './place-spans.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { CALL_END, CALL_LEAD, FIRST_CALL, ORDER_SAID, ORDERS, ROUND_CALL, SHARED_WORDS } from './words/en/call-words.ts'

/** Exercises that were called in turns. */
export interface TurnBlock {
  /** Indexes of teachings, in order. */
  members: number[]
  /** From the teaching of the first to the last turn. */
  offset: number
  end: number
  /** How often the class goes round as the calls tell, the teaching counted where it was the first round; null = unknown. */
  rounds: number | null
}

export interface FoundTurns {
  teachings: Teaching[]
  blocks: TurnBlock[]
}

/** Teachings in order of their main spans, with the turns that were called; what only repeats a name of a member is a turn of it. */
export function findTurns(whole: Speech, teachings: readonly Teaching[]): FoundTurns {
  const names = new Set(teachings.flatMap(({ name, alsoCalled }) => [name, ...alsoCalled].flatMap(wordsOf)))
  const speech = partAtCalls(whole, (word) => names.has(word))
  const left = [...teachings]
  const blocks: TurnBlock[] = []
  let first = 0
  for (let at = 1; at < left.length; at += 1) {
    const block = blockBehind(speech, left, first, at)
    if (!block) continue
    const { members, turns, absorbed, rounds } = block
    for (const member of members) {
      const teaching = left[member]
      const [main, ...returns] = teaching?.spans ?? []
      if (!teaching || !main) continue
      const own = turns.filter((turn) => turn.member === member)
      const outside = returns.filter(({ offset }) => offset < block.from || offset >= block.end)
      const until = member === at ? Math.min(main.end, block.from) : main.end
      const spans = [...outside, ...own.map(({ offset, called, end }) => ({ offset, called, end }))].sort(
        (a, b) => a.offset - b.offset,
      )
      left[member] = { ...teaching, spans: [{ offset: main.offset, end: until }, ...spans] }
    }
    const aside = members.includes(at) ? undefined : left[at]
    if (aside) left[at] = { ...aside, spans: aside.spans.map((span) => endedBy(span, block.from)) }
    blocks.push({
      members,
      offset: left[members[0] ?? 0]?.spans[0]?.offset ?? 0,
      end: block.end,
      rounds,
    })
    left.splice(at + 1, absorbed)
    first = at + 1
  }
  return { teachings: left, blocks }
}

function endedBy(span: TextSpan, limit: number): TextSpan {
  return span.offset < limit ? { ...span, end: Math.min(span.end, limit) } : span
}

/** A block has at most so many members. */
const MOST_MEMBERS = 6
const LEAST_CALLS = 3
/** More turns than these are not taken for exercises by anybody. */
const MOST_ABSORBED = 30

function blockBehind(speech: Speech, teachings: readonly Teaching[], first: number, at: number) {
  const start = teachings[at]?.spans[0]?.offset
  if (start === undefined) return null
  const recent = teachings.map((_, index) => index).slice(Math.max(first, at - MOST_MEMBERS + 1), at + 1)
  const keys = keysOf(teachings, recent)
  const returned = returnsOf(speech, teachings, recent)
  let absorbed = 0
  let calls: Call[] = []
  for (;;) {
    const until = teachings[at + 1 + absorbed]?.spans[0]?.offset ?? Infinity
    calls = callsIn(speech, keys, returned, at, speech.sentenceAt(start) + 1, until)
    const next = teachings[at + 1 + absorbed]
    if (!next || absorbed === MOST_ABSORBED || !isTurnOf(speech, teachings, next, keys, calls)) break
    absorbed += 1
  }
  const named = calls.flatMap(({ member }) => member ?? [])
  const members = membersOf(recent, new Set(named))
  const isRound = calls.some(({ member }) => member === null)
  const own = named.filter((index) => members.includes(index))
  if (new Set(own).size < 2 || own.length < (isRound ? 2 : LEAST_CALLS)) return null
  const until = teachings[at + 1 + absorbed]?.spans[0]?.offset ?? Infinity
  const turns = turnsOf(speech, calls, members, until, returned)
  const from = speech.sentences[calls[0]?.sentence ?? 0]?.offset ?? 0
  const end = turns.reduce((latest, turn) => Math.max(latest, turn.end), from)
  return { members, turns, absorbed, from, end, rounds: roundsCalled(speech, calls, members) }
}

/** Returns that are known already, by the sentence they begin with. */
function returnsOf(speech: Speech, teachings: readonly Teaching[], indexes: readonly number[]): Returns {
  return new Map(
    indexes.flatMap((member) =>
      (teachings[member]?.spans ?? [])
        .slice(1)
        .map(({ offset, end }) => [speech.sentenceAt(offset), { member, end }] as const),
    ),
  )
}

/** The last of the exercises taught that were called, one in between that was not heard of taken along. */
function membersOf(recent: readonly number[], called: ReadonlySet<number>): number[] {
  const members: number[] = []
  for (const [at, index] of recent.toReversed().entries()) {
    const [next, second] = [recent.at(-2 - at), recent.at(-3 - at)]
    const isBetween = next !== undefined && called.has(next)
    // what was shown last may be an aside: the two before it are called, it is not
    if (at === 0 && !called.has(index) && isBetween && second !== undefined && called.has(second)) continue
    if (!called.has(index) && !(members.length > 0 && isBetween)) break
    members.unshift(index)
  }
  return members
}

/**
 * How often the class goes round: the round that is called last ("round three"), or how often the one is called that is
 * called most, and once more where the teaching was the first round.
 */
function roundsCalled(speech: Speech, calls: readonly Call[], members: readonly number[]): number | null {
  let rounds = 1
  let wasLast = false
  for (const { sentence } of calls) {
    const words = speech.sentences[sentence]?.words ?? ''
    if (!ROUND_CALL.test(words)) continue
    const said = ORDER_SAID.exec(words)?.[1] ?? ''
    const isLast = /^(?:last|final)$/.test(said)
    const order = ORDERS[said] ?? (isLast && !wasLast ? rounds + 1 : 1)
    wasLast ||= isLast
    rounds = Math.max(rounds, order)
  }
  const most = Math.max(...members.map((member) => calls.filter((call) => call.member === member).length))
  const first = calls[0]?.sentence ?? 0
  const opening = speech.sentences.slice(Math.max(0, first - OFF_SENTENCES), first + 1)
  const isFirst = opening.some(({ words }) => FIRST_CALL.test(words))
  const seen = Math.max(rounds, isFirst ? most : most + 1)
  return seen > 1 ? seen : null
}

/** The first round is opened within so many sentences. */
const OFF_SENTENCES = 2

/** The words by which each of some teachings can be called; a word that two of them share calls none. */
function keysOf(teachings: readonly Teaching[], indexes: readonly number[]): ReadonlyMap<string, number> {
  const keys = new Map<string, number>()
  const shared = new Set<string>()
  for (const index of indexes) {
    const { name, alsoCalled } = teachings[index] ?? { name: '', alsoCalled: [] }
    for (const word of new Set([name, ...alsoCalled].flatMap(wordsOf))) {
      if (keys.has(word)) shared.add(word)
      else keys.set(word, index)
    }
  }
  for (const word of shared) keys.delete(word)
  return keys
}

function wordsOf(name: string): string[] {
  return foldWords(name)
    .map(({ text }) => text)
    .filter((word) => word.length > 2 && !SHARED_WORDS.has(word))
}

function callsIn(
  speech: Speech,
  keys: ReadonlyMap<string, number>,
  returned: Returns,
  taught: number,
  from: number,
  until: number,
): Call[] {
  const calls: Call[] = []
  for (let index = from; index < speech.sentences.length; index += 1) {
    const sentence = speech.sentences[index]
    if (!sentence || sentence.offset >= until) break
    const isRound = ROUND_CALL.test(sentence.words)
    const member =
      returned.get(index)?.member ?? (isRound ? namedIn(speech, sentence, keys) : calledIn(speech, sentence, keys))
    // a name said again in its own turn calls nobody, but one that was only announced begins where it is called
    const last = calls.at(-1)
    if (member !== null && last?.member === member && !returned.has(index)) {
      if (isAnnounced(speech, last.sentence, index)) last.sentence = index
      continue
    }
    if (member !== null && (calls.length > 0 || member !== taught)) calls.push({ sentence: index, member })
    else if (isRound && member === null) calls.push({ sentence: index, member: null })
  }
  return calls
}

/** "Squats next. Squats, go": nothing is done between the two. */
function isAnnounced(speech: Speech, from: number, to: number): boolean {
  const between = speech.sentences.slice(from, to)
  const isNext = between.some(({ role, words }) => role === 'move' || /\bnext$/.test(words))
  return isNext && !between.some(({ role }) => role === 'teach' || role === 'work')
}

/** The one exercise named in a sentence: "Last round of the steps". */
function namedIn(speech: Speech, { offset, end }: Sentence, keys: ReadonlyMap<string, number>): number | null {
  const words = foldWords(speech.text.slice(offset, end))
  const members = new Set(words.flatMap(({ text }) => memberOf(text, keys) ?? []))
  const [member = null] = members
  return members.size === 1 ? member : null
}

/** At most so many words of a name are said in a call. */
const CALL_WORDS = 3

/** Whose turn a sentence calls: it begins with a name, or with words that lead to one. */
function calledIn(speech: Speech, { offset, end }: Sentence, keys: ReadonlyMap<string, number>): number | null {
  const said = speech.text.slice(offset, Math.min(end, offset + CALL_CHARACTERS))
  const words = foldWords(said)
  let at = words.findIndex(({ text }, index) => {
    const isLead = CALL_LEAD.has(text) || /^\d+$/.test(text) || (index === 0 && words.length > 1 && LIKE_AND.test(text))
    return !isLead
  })
  if (at < 0) return null
  for (const last = at + CALL_WORDS; at < last; at += 1) {
    const word = words[at]
    if (!word || (word.afterMark && at > last - CALL_WORDS)) return null
    const member = memberOf(word.text, keys)
    if (member === null && (isNumber(word.text) || at > last - CALL_WORDS)) return null
    if (member === null) continue
    const next = words[at + 1]
    const isLonger = next !== undefined && !next.afterMark && memberOf(next.text, keys) === member
    const end = next !== undefined && !next.afterMark && NAME_TAIL.test(next.text) ? next.end : word.end
    if (!isLonger) return CALL_END.test(said.slice(end)) ? member : null
  }
  return null
}

const CALL_CHARACTERS = 70
/** "And" with a slip of one letter. */
const LIKE_AND = /^(?:a[^n]d|an[^dy])$/
/** Ends a name that is called by the word in front of it: "push ups", "leg raises". */
const NAME_TAIL = /^(?:up|down|out|in|off|over|through|back|hold|raise|lift|drop)$/

const isNumber = (word: string): boolean => /^(?:\d+|six|seven|eight|nine|ten|eleven|twelve|\w+teen|\w+ty)$/.test(word)

/** "Steppers" and "curlers" step and curl. */
function memberOf(word: string, keys: ReadonlyMap<string, number>): number | null {
  const stem = word.replace(/p?ers?$/, '')
  return keys.get(word) ?? (stem.length >= 4 ? keys.get(stem) : undefined) ?? null
}

/** An exercise whose name holds only words of one member, called while turns go, is a turn of it. */
function isTurnOf(
  speech: Speech,
  teachings: readonly Teaching[],
  next: Teaching,
  keys: ReadonlyMap<string, number>,
  calls: readonly Call[],
): boolean {
  const [main] = next.spans
  const sentence = main && speech.sentences[speech.sentenceAt(main.offset)]
  if (!main || !sentence) return false
  const words = wordsOf(next.name)
  const owners = new Set(words.map((word) => memberOf(word, keys)))
  const [owner = null] = owners
  if (owners.size !== 1 || owner === null) return false
  // a front plank is no turn of the side plank
  const { name = '', alsoCalled = [] } = teachings[owner] ?? {}
  const known = new Set([name, ...alsoCalled].flatMap((one) => foldWords(one).map(({ text }) => text)))
  if (foldWords(next.name).some(({ text }) => !known.has(text) && memberOf(text, keys) !== owner)) return false
  const wasCalled = calls.length > 0 || calledIn(speech, sentence, keys) === owner
  return wasCalled && speech.wordsBefore(main.end) - speech.wordsBefore(main.offset) <= TURN_WORDS
}

/** A turn is told in so many words at most. */
const TURN_WORDS = 110
