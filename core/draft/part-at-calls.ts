/** Parts the sentences of speech without punctuation where a turn is called in their middle: "seven eight and rows breathe out". */
import { foldWords } from '../catalogue/fold-words.ts'
import type { FoldedWord } from '../catalogue/fold-words.ts'
import { kindOf } from './break-features.ts'
import { findRole } from './find-role.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { CALL_END, CALL_LEAD } from './words/en/call-words.ts'

/** The speech with such sentences parted in front of each call and behind its name; other speech as it is. @param isName whether a folded word can call one of the exercises taught */
export function partAtCalls(speech: Speech, isName: (word: string) => boolean): Speech {
  if (!speech.unpunctuated) return speech
  const pieces = speech.sentences.flatMap((sentence) => parted(speech, sentence, isName))
  const sentences = pieces.map((sentence, index) => ({ ...sentence, index }))
  return { ...speech, sentences, sentenceAt: (offset) => lastBefore(sentences, offset) }
}

function parted(speech: Speech, sentence: Sentence, isName: (word: string) => boolean): Sentence[] {
  const said = speech.text.slice(sentence.offset, sentence.end)
  const words = foldWords(said)
  const cuts = new Set<number>()
  for (let at = 0; at < words.length; at++) {
    if (!isName(words[at]?.text ?? '')) continue
    let last = at
    while (
      words[last + 1]?.afterMark === false &&
      (isName(words[last + 1]?.text ?? '') ||
        /^(?:up|down|out|in|off|over|through|hold|raise|lift)$/.test(words[last + 1]?.text ?? ''))
    )
      last += 1
    const first = leadFrom(words, at)
    if (begins(said, words, first, at) && ends(said, words, last)) {
      cuts.add(words[first]?.offset ?? 0)
      cuts.add(words[last + 1]?.offset ?? said.length)
    }
    at = last
  }
  for (const match of said.matchAll(ROUND_WITHIN)) cuts.add(match.index + 1)
  const inside = [...cuts].filter((cut) => cut > 0 && cut < said.length).sort((a, b) => a - b)
  if (inside.length === 0) return [sentence]
  return [0, ...inside].map((from, index) => {
    const piece = said.slice(from, inside[index] ?? said.length).trimEnd()
    const offset = sentence.offset + from
    const end = offset + piece.length
    const cues = sentence.cues.filter((cue) => cue.offset >= offset && cue.offset < end)
    const plain = plainWords(piece)
    const role = findRole(plain, cues.length > 0)
    return { ...sentence, offset, end, cues, words: plain, wordCount: plain.split(' ').length, role }
  })
}

/** Words in front of a name that lead to it, up to the last mark. */
function leadFrom(words: readonly FoldedWord[], at: number): number {
  let first = at
  while (first > 0 && at - first < MOST_LEAD && words[first]?.afterMark === false) {
    if (!LEADS.has(words[first - 1]?.text ?? '')) break
    first -= 1
  }
  return first
}

const MOST_LEAD = 3
/** A round begins in the middle of a sentence. */
const ROUND_WITHIN =
  /(?<!\b(?:the|your|my|our|this|that|every|each|a|in|on|of|for|by|after|before|till|until|than|that's|it's|and|so|right|okay|now))\s(?:(?:and|so|right|okay|now) )*(?:(?:second|third|fourth|fifth|last|final) (?:round|lap|set|time|lot|trip|loop|pass|circuit)|round (?:two|three|four|five|\d))\b/g
/** "Go on", "off", and numbers close what was done before, and lead to nothing. */
const CLOSING: ReadonlySet<string> = new Set(
  'off done down go on good nice lovely great well rest swap change stop it there yes round time lot set lap two three four'.split(
    ' ',
  ),
)
const LEADS: ReadonlySet<string> = new Set(
  'and so now then okay ok right back into to over for the your our straight'.split(' '),
)

/** A call begins behind a mark, or with "and" or nothing behind what closes the turn before. */
function begins(said: string, words: readonly FoldedWord[], first: number, at: number): boolean {
  if (first === 0 || words[first]?.afterMark === true) return true
  const before = words[first - 1]?.text ?? ''
  const isLed =
    first < at &&
    CALL_LEAD.has(words[first]?.text ?? '') &&
    /^(?:and|so|now|then|okay|ok|right|back|straight)$/.test(words[first]?.text ?? '')
  const isClosed = CLOSING.has(before) || kindOf(before) === 'number'
  return isClosed && (isLed || (first === at && words[at]?.plural === true)) && said.length > 0
}

/** Behind the name of a call stands a mark, or what begins anew. */
function ends(said: string, words: readonly FoldedWord[], last: number): boolean {
  const word = words[last]
  if (!word) return false
  const next = words[last + 1]
  if (!next || CALL_END.test(said.slice(word.end))) return true
  return word.plural && ANEW.has(kindOf(said.slice(next.offset, next.end).toLowerCase()))
}

const ANEW: ReadonlySet<string> = new Set([
  'verb',
  'never',
  'owner',
  'contraction',
  'number',
  'hello',
  'praise',
  'part',
  'because',
  'subject',
])

function lastBefore(sentences: readonly Sentence[], offset: number): number {
  let low = 0
  let high = sentences.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((sentences[middle]?.offset ?? 0) <= offset) low = middle + 1
    else high = middle
  }
  return Math.max(0, low - 1)
}
