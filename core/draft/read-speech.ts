/** The speech of a class as one running text, cut into sentences that know their place, time and part in the teaching. */
import type { Ms } from '../../shared/time.ts'
import type { TranscriptLine } from '../../shared/transcript.ts'
import { joinLines } from '../transcript/join-lines.ts'
import type { JoinedText } from '../transcript/join-lines.ts'
import { findDoses } from '../dose/read-dose.ts'
import { tellingOdds } from '../dose/weigh-telling.ts'
import type { TellingTable } from '../dose/weigh-telling.ts'
import { findRole } from './find-role.ts'
import type { Role } from './find-role.ts'
import { hasWork } from './merge-doses.ts'
import { hearWords } from './hear-words.ts'
import { mendLetters } from './mend-letters.ts'
import { restoreBreaks } from './restore-breaks.ts'
import type { BreakTable } from './weigh-breaks.ts'
import { isUnpunctuated, plainWords, splitSentences } from './split-speech.ts'
import type { Piece } from './split-speech.ts'
import { tagWeighed, weighText } from './tag-cues.ts'
import type { TaggedCue, WeighedText } from './tag-cues.ts'
import type { CueTable } from './weigh-clause.ts'
import type { WordNet } from './word-net.ts'
import { AMOUNT_WORDS, NO_DOSE_HERE } from './words/en/dose-words.ts'
import { SAME_DISTANCE, SAME_DOSE } from './words/en/same-again.ts'
import { anyPhrase } from './words/en/word-groups.ts'

/** One sentence of the running text; offsets of its cues count in the running text. */
export interface Sentence extends Piece {
  index: number
  /** Plain words, as plainWords gives them. */
  words: string
  wordCount: number
  /** Its clauses, ready to be tagged where its place in a teaching is known. */
  weighed: WeighedText
  cues: TaggedCue[]
  role: Role
}

export interface Speech {
  /** As said, but for slips of one letter; without punctuation, line breaks stand where sentences probably end. */
  text: string
  joined: JoinedText
  lines: readonly TranscriptLine[]
  sentences: Sentence[]
  unpunctuated: boolean
  /** Number of words before a character of the text, for distances that ignore long words. */
  wordsBefore(offset: number): number
  timeOf(offset: number): Ms
  /** Index of the sentence that holds a character, else of the one before; 0 at the least. */
  sentenceAt(offset: number): number
  /** The log of the odds that a sentence says a dose, as far as its words tell. */
  tellingOf(sentence: number): number
  /** What hears its turns, other than the net in use. */
  turnNet: WordNet | undefined
}

/** Weights other than those of the tables, for fitting. */
export interface ReadingTables {
  breaks?: BreakTable | undefined
  breakNet?: WordNet | undefined
  cues?: CueTable | undefined
  net?: WordNet | undefined
  turnNet?: WordNet | undefined
  tellings?: TellingTable | undefined
}

/** Reads the lines of a transcript; at least one line is needed. */
export function readSpeech(
  lines: readonly TranscriptLine[],
  { breaks, breakNet, cues: cueTable, net, turnNet, tellings }: ReadingTables = {},
): Speech {
  const joined = joinLines(lines)
  const mended = mendLetters(partWords(joined.text))
  const unpunctuated = isUnpunctuated(mended)
  const text = unpunctuated ? restoreBreaks(mended, lineStartsOf(lines), { table: breaks, net: breakNet }) : mended
  const heard = hearWords(text, net)
  const sentences = splitSentences(text).map((piece, index): Sentence => {
    const said = text.slice(piece.offset, piece.end)
    const words = plainWords(said)
    const weighed = weighText(said, heard, piece.offset, cueTable)
    const cues = tagWeighed(weighed, { oneSentence: true }).map((cue) => ({
      ...cue,
      offset: cue.offset + piece.offset,
    }))
    return {
      ...piece,
      index,
      words,
      wordCount: words.split(' ').length,
      weighed,
      cues,
      role: roleOf(said, words, cues.length > 0),
    }
  })
  const sentenceStarts = sentences.map((sentence) => sentence.offset)
  const starts = [...text.matchAll(/\S+/g)].map((match) => match.index)
  return {
    text,
    joined,
    lines,
    sentences,
    unpunctuated,
    wordsBefore: (offset) => countBelow(starts, offset),
    timeOf: (offset) => joined.at(offset).ms,
    sentenceAt: (offset) => Math.max(0, countBelow(sentenceStarts, offset + 1) - 1),
    tellingOf: (sentence) => tellingOdds(sentences[sentence]?.words ?? '', tellings),
    turnNet,
  }
}

/** Words longer than any word parted by spaces, every other character in its place: what looks at words never sees a huge one. */
function partWords(text: string): string {
  return text.replace(LONGER_THAN_WORDS, (run) => `${run.slice(0, -1)} `)
}

/** The longest word of speech has some 30 letters; an address may have more. */
const LONGER_THAN_WORDS = /\S{200}/g

/** As its words tell; a short sentence that holds nothing but a dose is work. */
function roleOf(said: string, words: string, hasCue: boolean): Role {
  const role = findRole(words, hasCue)
  const mayDose = role === 'chat' && AMOUNT_WORDS.test(words) && words.split(' ').length <= DOSE_WORDS
  if (role === 'chat' && words.split(' ').length <= DOSE_WORDS && (SAME_DISTANCE.test(said) || SAME_DOSE.test(said)))
    return 'work'
  return mayDose && !ELSEWHERE.test(words) && findDoses(said).some(({ dose }) => hasWork(dose)) ? 'work' : role
}

/** A longer sentence with a number tells more than a dose. */
const DOSE_WORDS = 12
const ELSEWHERE = anyPhrase(NO_DOSE_HERE)

/** Where each line begins in the running text. */
function lineStartsOf(lines: readonly TranscriptLine[]): Set<number> {
  let at = 0
  return new Set(lines.map(({ text }) => (at += text.length + 1) - text.length - 1))
}

/** How many of the sorted numbers lie below a value. */
function countBelow(sorted: readonly number[], value: number): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((sorted[middle] ?? 0) < value) low = middle + 1
    else high = middle
  }
  return low
}
