/** What speaks for and against a sentence being where the class comes back to an exercise taught before. */
import { foldName } from '../catalogue/fold-words.ts'
import { sentenceFeatures } from './opening-features.ts'
import { pushTo } from './push-to.ts'
import type { Speech } from './read-speech.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { CALLS_BACK } from './words/en/opening-words.ts'
import { groupOf } from './words/en/word-groups.ts'

/** A stretch of the class given to one teaching: its main teaching or a return. */
export interface Turn {
  /** Index of its first sentence. */
  sentence: number
  /** Index of the teaching. */
  teaching: number
}

/** Names of one teaching, as spoken. */
export type SpokenNames = readonly string[]

/** Follows a class from turn to turn. */
export class TurnWatcher {
  private readonly speech: Speech
  private readonly bySentence = new Map<number, WeighedCandidate[]>()
  /** The teachings that bear each name, and those that have each word in theirs. */
  private readonly byName = new Map<string, number[]>()
  private readonly byWord = new Map<string, number[]>()
  private readonly turns: Turn[] = []
  private readonly mains: number[] = []
  /** What came behind each teaching. */
  private readonly followers = new Map<number, number[]>()
  /** Folded words of sentences, and folded names in them, as they are looked up. */
  private readonly words = new Map<number, string[]>()
  private readonly names = new Map<number, string[]>()

  constructor(speech: Speech, weighed: readonly WeighedCandidate[]) {
    this.speech = speech
    for (const one of weighed) pushTo(this.bySentence, one.candidate.sentence, one)
  }

  /** Index of the teaching that goes on, -1 = none yet. */
  get current(): number {
    return this.turns.at(-1)?.teaching ?? -1
  }

  /** The class opens another teaching. */
  open(sentence: number, names: SpokenNames): void {
    const teaching = this.mains.length
    for (const word of new Set(names.flatMap(tellingWords))) pushTo(this.byWord, word, teaching)
    for (const name of new Set(names.map(foldName))) pushTo(this.byName, name, teaching)
    this.mains.push(sentence)
    this.turnTo({ sentence, teaching })
  }

  /** The class goes on with a teaching opened before. */
  turnTo(turn: Turn): void {
    if (this.turns.length > 0 && !this.hasPassed(turn.teaching)) pushTo(this.followers, this.current, turn.teaching)
    this.turns.push(turn)
  }

  /** Teachings named in a sentence, by their whole name or a word of it that no other has; the likeliest to come first. */
  namedIn(index: number): number[] {
    const whole = new Set(this.namesAt(index).flatMap((name) => this.byName.get(name) ?? []))
    const told = new Set(
      this.wordsAt(index).flatMap((word) => {
        const own = this.byWord.get(word) ?? []
        return own.length === 1 ? own : []
      }),
    )
    const named = [...new Set([...whole, ...told])].map((teaching) => ({
      teaching,
      rank: (whole.has(teaching) ? 0 : 10) + RELATIONS.indexOf(this.relationOf(teaching)),
    }))
    return named.sort((a, b) => a.rank - b.rank || b.teaching - a.teaching).map(({ teaching }) => teaching)
  }

  /** What came behind the current teaching last time round; null = nothing did. */
  get next(): number | null {
    const behind = (this.followers.get(this.current) ?? []).filter((teaching) => teaching < this.current)
    return behind.length === 0 ? null : Math.min(...behind)
  }

  private hasPassed(teaching: number): boolean {
    return this.followers.get(this.current)?.includes(teaching) === true
  }

  private wordsAt(index: number): string[] {
    const known = this.words.get(index)
    if (known) return known
    const words = [...new Set(foldName(this.speech.sentences[index]?.words ?? '').split(' '))]
    this.words.set(index, words)
    return words
  }

  private namesAt(index: number): string[] {
    const known = this.names.get(index)
    if (known) return known
    const names = (this.bySentence.get(index) ?? []).map(({ candidate }) => foldName(candidate.name))
    this.names.set(index, names)
    return names
  }

  private relationOf(teaching: number): Relation {
    if (teaching === this.current) return 'current'
    if (this.hasPassed(teaching)) return 'cycle'
    return teaching === this.current - 1 ? 'before' : teaching < this.current ? 'earlier' : 'later'
  }

  /** All that speaks for a return in a sentence, at this stage of the class. */
  features(index: number): string[] {
    return [...sentenceFeatures(this.speech, index), ...this.turnFeatures(index)]
  }

  /** What of it changes as the class goes on. */
  turnFeatures(index: number): string[] {
    const sentence = this.speech.sentences[index]
    if (!sentence) return []
    const { sentences } = this.speech
    const turn = this.turns.at(-1)
    const since = index - (turn?.sentence ?? 0)
    const [first] = this.namedIn(index)
    const ahead = [...this.namedIn(index + 1), ...this.namedIn(index + 2)].filter((one) => one !== this.current)
    const relation = first === undefined ? 'none' : this.relationOf(first)
    const length = sentence.wordCount <= 3 ? 0 : sentence.wordCount <= 7 ? 1 : 2
    const before = ` ${sentences[index - 1]?.words ?? ''} `
    const said = ` ${sentence.words} `
    const odds = Math.max(-9, ...(this.bySentence.get(index) ?? []).map((one) => one.odds))
    return [
      ...[`${relation}`, `${relation} ${length}`, `${relation} behind ${sentences[index - 1]?.role ?? 'edge'}`],
      `${relation} first ${sentence.words.split(' ')[0] ?? ''}`,
      `${relation} since ${since <= 1 ? 0 : since <= 3 ? 1 : since <= 7 ? 2 : 3}`,
      `since turn ${since <= 1 ? 0 : since <= 3 ? 1 : since <= 7 ? 2 : since <= 14 ? 3 : 4}`,
      `in return ${Number(turn !== undefined && turn.sentence !== this.mains[turn.teaching])}`,
      `${relation} odds ${odds > 3 ? 4 : odds > 1 ? 3 : odds > -0.5 ? 2 : odds > -3 ? 1 : 0}`,
      `ahead ${ahead[0] === undefined ? 'none' : this.relationOf(ahead[0])}`,
      `long ${Math.min(4, sentence.wordCount >> 1)}`,
      ...CALLS_BACK.flatMap(([name, pattern]) => [
        ...(pattern.test(said) ? [`says ${name}`] : []),
        ...(pattern.test(before) ? [`said ${name}`] : []),
      ]),
    ]
  }
}

type Relation = (typeof RELATIONS)[number]
const RELATIONS = ['cycle', 'before', 'earlier', 'later', 'current'] as const

/** Words of a name that tell it from others: not kit and body alone. */
function tellingWords(name: string): string[] {
  const words = foldName(name)
    .split(' ')
    .filter((word) => word.length >= 3)
  const telling = words.filter((word) => !UNTELLING.has(groupOf(word) ?? ''))
  return telling.length > 0 ? telling : words
}

const UNTELLING: ReadonlySet<string> = new Set(['part', 'kit', 'place', 'num'])
