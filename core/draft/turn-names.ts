/** Says which of the exercises taught so far a sentence names or calls. */
import { remember } from '../remember.ts'
import { foldName, foldWords } from '../catalogue/fold-words.ts'
import type { FoldedWord } from '../catalogue/fold-words.ts'
import { pushTo } from './push-to.ts'
import type { Speech } from './read-speech.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { CALL_END, CALL_LEAD, SHARED_WORDS } from './words/en/call-words.ts'
import { groupOf } from './words/en/word-groups.ts'

/** Names of one teaching, as spoken. */
export type SpokenNames = readonly string[]

/** A teaching that a sentence names; the lower the rank the surer. */
export interface NamedTeaching {
  teaching: number
  rank: number
}

/** The names of the teachings opened so far. */
export class TurnNames {
  readonly #speech: Speech
  readonly #bySentence = new Map<number, WeighedCandidate[]>()
  /** The teachings that bear each name, and those that have each word in theirs. */
  readonly #byName = new Map<string, number[]>()
  readonly #byWord = new Map<string, number[]>()
  /** The words of each teaching's names, and those of them that tell it from others. */
  readonly #words: ReadonlySet<string>[] = []
  /** The first sentence of each teaching, and its words that no name holds, as they are looked up. */
  readonly #opened: number[] = []
  readonly #echoes = new Map<string, number[]>()
  #echoed = 0
  readonly #telling: ReadonlySet<string>[] = []
  /** Folded words of sentences, and what they name, as they are looked up. */
  readonly #folded = new Map<number, readonly FoldedWord[]>()
  readonly #named = new Map<number, { of: number; named: NamedTeaching[] }>()

  constructor(speech: Speech, weighed: readonly WeighedCandidate[]) {
    this.#speech = speech
    for (const one of weighed) pushTo(this.#bySentence, one.candidate.sentence, one)
  }

  /** Another teaching is opened. @returns its index */
  open(sentence: number, names: SpokenNames): number {
    const teaching = this.#words.length
    this.#opened.push(sentence)
    const words = new Set(names.flatMap(wordsOf))
    this.#words.push(words)
    this.#telling.push(new Set(names.flatMap(tellingWords)))
    for (const word of words) pushTo(this.#byWord, word, teaching)
    for (const name of new Set(names.map(foldName))) pushTo(this.#byName, name, teaching)
    return teaching
  }

  /** The greatest odds of a name in a sentence. */
  oddsAt(index: number): number {
    return Math.max(LEAST_ODDS, ...(this.#bySentence.get(index) ?? []).map(({ odds }) => odds))
  }

  /** Teachings named in a sentence: by their whole name, by a word that no other has, or by one that some share. */
  namedIn(index: number): readonly NamedTeaching[] {
    const known = this.#named.get(index)
    if (known?.of === this.#words.length) return known.named
    const ranks = new Map<number, number>()
    for (const name of (this.#bySentence.get(index) ?? []).map(({ candidate }) => foldName(candidate.name)))
      for (const teaching of this.#byName.get(name) ?? []) ranks.set(teaching, 0)
    for (const word of new Set(this.#foldedAt(index).map(({ text }) => rootOf(text)))) {
      const owners = (this.#byWord.get(word) ?? []).filter((teaching) => this.#words.length - teaching <= RECENT)
      for (const teaching of owners) {
        const rank = this.#rankOf(word, teaching, owners.length, index)
        if (rank !== null) ranks.set(teaching, Math.min(ranks.get(teaching) ?? rank, rank))
      }
    }
    if (ranks.size === 0) for (const teaching of this.#echoedIn(index)) ranks.set(teaching, ECHO_RANK)
    const named = [...ranks].map(([teaching, rank]) => ({ teaching, rank }))
    this.#named.set(index, { of: this.#words.length, named })
    return named
  }

  /** Who is called by a word that only its own teaching began with: "Boards, heels back" for a plank that was shown as a board. */
  #echoedIn(index: number): readonly number[] {
    const words = this.#foldedAt(index)
    const at = words.findIndex(({ text }) => !CALL_LEAD.has(text) && !/^\d+$/.test(text))
    const word = words[at]
    if (!word || at > MOST_LED || word.text.length < 3 || SHARED_WORDS.has(word.text)) return []
    const { offset, end } = this.#speech.sentences[index] ?? { offset: 0, end: 0 }
    if (!CALL_END.test(this.#speech.text.slice(offset + word.end, end))) return []
    for (; this.#echoed < this.#words.length - 1; this.#echoed += 1) this.#keepEchoes(this.#echoed)
    const owners = this.#echoes.get(rootOf(word.text)) ?? []
    return owners.length === 1 ? owners : []
  }

  #keepEchoes(teaching: number): void {
    const first = this.#opened[teaching] ?? 0
    const limit = Math.min(first + ECHO_SENTENCES, this.#opened[teaching + 1] ?? Infinity)
    const said = new Set<string>()
    for (let index = first; index < limit; index += 1)
      for (const { text } of this.#foldedAt(index)) if (text.length >= 3) said.add(rootOf(text))
    for (const word of said) pushTo(this.#echoes, word, teaching)
  }

  /** In a few words the kit or the place of an exercise may stand for it. */
  #rankOf(word: string, teaching: number, owners: number, index: number): number | null {
    if (this.#telling[teaching]?.has(word) === true) return owners > 1 ? 3 : 1
    const isShort = (this.#speech.sentences[index]?.wordCount ?? 0) <= CALL_WORDS
    return owners === 1 && isShort ? 2 : null
  }

  /** Whether a sentence begins with the words of a teaching, or with what leads to them, and ends with them. */
  callOf(index: number, teaching: number): string {
    const { offset, end } = this.#speech.sentences[index] ?? { offset: 0, end: 0 }
    const words = this.#foldedAt(index)
    const own = this.#words[teaching]
    const at = words.findIndex(({ text }) => own?.has(rootOf(text)) === true)
    if (at < 0) return 'by its whole name'
    const last = words.findLastIndex(
      ({ text }, place) => place < at + MOST_NAME_WORDS && own?.has(rootOf(text)) === true,
    )
    const behind = this.#speech.text.slice(offset + (words[last]?.end ?? 0), end)
    const ends = CALL_END.test(behind) ? 'and ends' : 'and goes on'
    if (at === 0) return `first ${ends}`
    if (words.slice(0, at).every(({ text }) => CALL_LEAD.has(text) || /^\d+$/.test(text))) return `led ${ends}`
    if (isBackTo(words.slice(0, at))) return `led ${ends}`
    return at < EARLY_WORDS ? `early ${ends}` : 'late'
  }

  #foldedAt(index: number): readonly FoldedWord[] {
    const known = this.#folded.get(index)
    if (known) return known
    const { offset, end } = this.#speech.sentences[index] ?? { offset: 0, end: 0 }
    const words = foldWords(this.#speech.text.slice(offset, end))
    this.#folded.set(index, words)
    return words
  }
}

const LEAST_ODDS = -9
/** Behind those named by a name. */
const ECHO_RANK = 4
/** An echo is of the first so many sentences, and led by so many words. */
const ECHO_SENTENCES = 6
const MOST_LED = 3
const CALL_WORDS = 6
const MOST_NAME_WORDS = 4
const EARLY_WORDS = 4
/** A word calls one of so many that were opened last. */
const RECENT = 9

/** "While we have the chair, back to the": words that lead to a name behind others. */
function isBackTo(before: readonly FoldedWord[]): boolean {
  const back = before.findLastIndex(({ text }) => text === 'back')
  return (
    back >= 0 && before.slice(back).every(({ text, afterMark }, at) => CALL_LEAD.has(text) && (at === 0 || !afterMark))
  )
}

/** The words of a name. */
function wordsOf(name: string): string[] {
  return longWords(name).map(rootOf)
}

/** Words of a name that tell it from others: not kit and body alone. */
function tellingWords(name: string): string[] {
  const words = longWords(name)
  const telling = words.filter((word) => !UNTELLING.has(groupOf(word) ?? '') && !SHARED_WORDS.has(word))
  return (telling.length > 0 ? telling : words).map(rootOf)
}

function longWords(name: string): string[] {
  return foldName(name)
    .split(' ')
    .filter((word) => word.length >= 3)
}

/** "Paddle" and "paddling", "step" and "stepper" are called alike. */
const rootOf = remember(5000, (word) => {
  const bare = word.replace(/(?:ing|ers?|e)$/, '').replace(/([bdgmnprt])\1$/, '$1')
  return bare.length >= 3 ? bare : word
})
const UNTELLING: ReadonlySet<string> = new Set(['part', 'kit', 'place', 'num'])
