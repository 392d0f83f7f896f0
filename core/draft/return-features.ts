/** What speaks for and against a sentence being where the class comes back to an exercise taught before. */
import type { HeardTurn } from './hear-turns.ts'
import { callsBackAt, heardFeatures, heardStep, sentenceFeatures } from './opening-features.ts'
import type { Speech } from './read-speech.ts'
import { TurnNames } from './turn-names.ts'
import type { SpokenNames } from './turn-names.ts'
import type { WeighedCandidate } from './weigh-starts.ts'

/** A stretch of the class given to one teaching: its main teaching or a return. */
export interface Turn {
  /** Index of its first sentence. */
  sentence: number
  /** Index of the teaching. */
  teaching: number
}

/** What was done up to a sentence. */
export interface TurnHistory {
  /** The turn that goes on; null = none yet. */
  turn: Turn | null
  /** What came behind each teaching. */
  followers: ReadonlyMap<number, readonly number[]>
}

const NOTHING_DONE: TurnHistory = { turn: null, followers: new Map() }

/** Follows a class from turn to turn. */
export class TurnWatcher {
  readonly #speech: Speech
  readonly #names: TurnNames
  readonly #heard: readonly HeardTurn[]
  readonly #mains: number[] = []
  /** What does not change as the class goes on, by sentence. */
  readonly #steady = new Map<number, string[]>()
  /** The turns so far; set it to look at the class as it went on in another way. */
  history: TurnHistory = NOTHING_DONE

  constructor(speech: Speech, weighed: readonly WeighedCandidate[], heard: readonly HeardTurn[]) {
    this.#speech = speech
    this.#heard = heard
    this.#names = new TurnNames(speech, weighed)
  }

  /** Index of the teaching that goes on, -1 = none yet. */
  get current(): number {
    return this.history.turn?.teaching ?? -1
  }

  /** The class opens another teaching. @returns its turn */
  open(sentence: number, names: SpokenNames): Turn {
    const turn = { sentence, teaching: this.#names.open(sentence, names) }
    this.#mains.push(sentence)
    this.turnTo(turn)
    return turn
  }

  /** The class goes on with a teaching, opened or opened before. */
  turnTo(turn: Turn): void {
    const { followers } = this.history
    const isNew = this.current >= 0 && !this.#hasPassed(turn.teaching)
    const behind = isNew ? [...(followers.get(this.current) ?? []), turn.teaching] : null
    this.history = { turn, followers: behind ? new Map(followers).set(this.current, behind) : followers }
  }

  /** Teachings named in a sentence, by their whole name or a word of it; the likeliest to come first. */
  namedIn(index: number): number[] {
    const named = this.#names.namedIn(index)
    if (named.length < 2) return named.map(({ teaching }) => teaching)
    return named
      .map(({ teaching, rank }) => ({ teaching, rank: 10 * rank + RELATIONS.indexOf(this.#relationOf(teaching)) }))
      .sort((a, b) => a.rank - b.rank || b.teaching - a.teaching)
      .map(({ teaching }) => teaching)
  }

  /** What came behind the current teaching last time round; null = nothing did. */
  get next(): number | null {
    const behind = (this.history.followers.get(this.current) ?? []).filter(
      (teaching) => this.#isBack() || teaching < this.current,
    )
    return behind.length === 0 ? null : Math.min(...behind)
  }

  /** All that speaks for a return in a sentence, at this stage of the class. */
  features(index: number): string[] {
    return [...sentenceFeatures(this.#speech, index), ...heardFeatures(this.#heard, index), ...this.turnFeatures(index)]
  }

  /** What of it changes as the class goes on. */
  turnFeatures(index: number): string[] {
    const { sentences } = this.#speech
    const sentence = sentences[index]
    if (!sentence) return []
    const since = index - (this.history.turn?.sentence ?? 0)
    const [first] = this.namedIn(index)
    const ahead = [...this.namedIn(index + 1), ...this.namedIn(index + 2)].find((one) => one !== this.current)
    const relation = first === undefined ? 'none' : this.#relationOf(first)
    const length = sentence.wordCount <= 3 ? 0 : sentence.wordCount <= 7 ? 1 : 2
    const odds = this.#names.oddsAt(index)
    return [
      ...[relation, `${relation} ${length}`, `${relation} behind ${sentences[index - 1]?.role ?? 'edge'}`],
      `${relation} first ${sentence.words.split(' ')[0] ?? ''}`,
      `${relation} since ${since <= 1 ? 0 : since <= 3 ? 1 : since <= 7 ? 2 : 3}`,
      `since turn ${since <= 1 ? 0 : since <= 3 ? 1 : since <= 7 ? 2 : since <= 14 ? 3 : 4}`,
      `in return ${Number(this.#isBack())}`,
      `${relation} odds ${odds > 3 ? 4 : odds > 1 ? 3 : odds > -0.5 ? 2 : odds > -3 ? 1 : 0}`,
      `${relation} heard ${heardStep(this.#heard[index]?.comesBack ?? -9)}`,
      `ahead ${ahead === undefined ? 'none' : this.#relationOf(ahead)}`,
      ...this.#callFeatures(index, first, relation),
      ...this.#steadyAt(index),
    ]
  }

  /** How a teaching is called in a sentence, who is next, and how long the turn went on before. */
  #callFeatures(index: number, first: number | undefined, relation: string): string[] {
    const { sentences } = this.#speech
    const role = sentences[index - 1]?.role ?? 'edge'
    const after = this.#spent(index)
    const isRound = this.#steadyAt(index).includes(IN_A_ROUND)
    const { next } = this
    const who = next === null ? 'nobody' : next === first ? 'who' : 'another'
    const features = [`${relation} after ${after}`, `${relation} ${who} is next`]
    if (isRound) features.push(`${relation} ${IN_A_ROUND}`)
    if (next !== null) features.push(`next behind ${role}`, `next after ${after}`)
    if (first === undefined) return features
    const call = this.#names.callOf(index, first)
    const apart = this.current - first
    features.push(`${relation} called ${call}`, `called ${call}`, `called ${call} behind ${role}`)
    features.push(`${relation} ${apart > 0 ? 'back' : 'on'} ${String(Math.min(4, Math.abs(apart)))}`)
    return features
  }

  /** About how long the turn went on, in seconds. */
  #spent(index: number): string {
    const { sentences } = this.#speech
    const [from, to] = [this.history.turn?.sentence ?? 0, index].map((at) =>
      this.#speech.timeOf(sentences[at]?.offset ?? 0),
    )
    const seconds = ((to ?? 0) - (from ?? 0)) / 1000
    return seconds < 4 ? '4' : seconds < 10 ? '10' : seconds < 20 ? '20' : seconds < 45 ? '45' : 'long'
  }

  #steadyAt(index: number): string[] {
    const known = this.#steady.get(index)
    if (known) return known
    const { sentences } = this.#speech
    const { isRound, here, before } = callsBackAt(sentences, index)
    const features = [
      `long ${Math.min(4, (sentences[index]?.wordCount ?? 0) >> 1)}`,
      ...(isRound ? [IN_A_ROUND] : []),
      ...here.map((name) => `says ${name}`),
      ...before.map((name) => `said ${name}`),
    ]
    this.#steady.set(index, features)
    return features
  }

  /** The turn that goes on is a return. */
  #isBack(): boolean {
    const { turn } = this.history
    return turn !== null && turn.sentence !== this.#mains[turn.teaching]
  }

  #hasPassed(teaching: number): boolean {
    return this.history.followers.get(this.current)?.includes(teaching) === true
  }

  #relationOf(teaching: number): Relation {
    if (teaching === this.current) return 'current'
    if (this.#hasPassed(teaching)) return 'cycle'
    return teaching === this.current - 1 ? 'before' : teaching < this.current ? 'earlier' : 'later'
  }
}

const IN_A_ROUND = 'in a round'

type Relation = (typeof RELATIONS)[number]
const RELATIONS = ['cycle', 'before', 'earlier', 'later', 'current'] as const
