/** Places each exercise in the running text: from its set-up to its last words, without the talk behind. */
import type { Start } from './choose-starts.ts'
import type { Naming } from './naming.ts'
import type { Speech } from './read-speech.ts'
import { AMOUNT_WORDS } from './words/en/dose-words.ts'

/** A stretch of the running text by its characters. */
export interface TextSpan {
  offset: number
  end: number
}

export interface PlacedSpan extends TextSpan {
  start: Start
  /** Cues heard in it. */
  cues: number
}

/** Gives each start its stretch: from its set-up on, to the next one's, without the talk at the end. */
export function placeSpans(speech: Speech, starts: readonly Start[]): PlacedSpan[] {
  const begins = starts.map((start, index) => beginOf(speech, start.naming, starts[index - 1]?.naming))
  return starts.map((start, index) => {
    const begin = begins[index] ?? 0
    const limit = begins[index + 1] ?? speech.sentences.length
    const last = lastTaught(speech, begin, limit)
    const first = speech.sentences[begin]
    const final = speech.sentences[last]
    const cues = speech.sentences.slice(begin, last + 1).reduce((sum, sentence) => sum + sentence.cues.length, 0)
    const offset = Math.min(first?.offset ?? start.naming.offset, start.naming.offset)
    return { start, offset, end: Math.max(final?.end ?? start.naming.end, start.naming.end), cues }
  })
}

/** Index of the sentence where the teaching begins: the set-up may come before the name. */
function beginOf(speech: Speech, naming: Naming, previous: Naming | undefined): number {
  const floor = previous ? previous.sentence + 1 : 0
  let begin = roundCall(speech, naming.sentence, floor)
  if (begin < naming.sentence || (!naming.late && !naming.bare)) return begin
  const most = naming.late ? LATE_SENTENCES : SETUP_SENTENCES
  let wasOpened = false
  for (let index = naming.sentence - 1; index >= floor && naming.sentence - index <= most; index--) {
    const sentence = speech.sentences[index]
    if (!sentence || sentence.role === 'end' || (sentence.role === 'chat' && !(naming.late && sentence.wordCount <= 7)))
      break
    if (naming.late && sentence.role === 'work' && AMOUNT_WORDS.test(sentence.words)) break
    const kinds = sentence.cues.map((cue) => cue.kind)
    const setsUp = kinds.includes('setup')
    if (!naming.late && (sentence.role === 'work' || kinds.some((kind) => !BEFORE_NAME.has(kind)))) break
    const opens = sentence.role === 'move' || isPositionChange(sentence.words)
    // The set-up of a late name begins where the class last changed its place.
    if (naming.late && begin < naming.sentence && wasOpened && !opens) break
    wasOpened ||= opens
    if (opens || (setsUp && (naming.late || isBreak(speech, index - 1)))) begin = index
  }
  return begin
}

/** "Round two, off you go" a little before the name belongs to what comes. */
function roundCall(speech: Speech, sentence: number, floor: number): number {
  for (let index = sentence - 1; index >= Math.max(floor, sentence - ROUND_SENTENCES); index--) {
    const words = speech.sentences[index]?.words ?? ''
    if (
      /^(?:and |right |okay |so |now )*(?:round (?:two|three|four|five|\d)|(?:second|third|fourth|last|final|next) round)\b/.test(
        words,
      )
    )
      return index
  }
  return sentence
}

const ROUND_SENTENCES = 5

/** What may be told before the name of an exercise. */
const BEFORE_NAME: ReadonlySet<string> = new Set(['setup', 'execution', 'equipment', 'focus', 'easier'])
const SETUP_SENTENCES = 4
const LATE_SENTENCES = 14

function isBreak(speech: Speech, index: number): boolean {
  const role = speech.sentences[index]?.role
  return role === undefined || role === 'end' || role === 'move' || role === 'chat' || role === 'work'
}

/** The whole body goes to another place. */
function isPositionChange(words: string): boolean {
  return /^(?:(?:and|so|okay|right|now|then|lets|well|from here|come|all the way|everybody|everyone|slowly) ?)*(?:come|rise|get|step|walk|roll|turn|lie|sit|kneel|stand|down|up|onto|tuck your toes|hold the|big|one foot|bottom close|back to)\b.{0,40}\b(?:floor|mat|fours|back|front|belly|tummy|side|knees|feet|standing|chair|wall|ball|hips?|forward|between|hands?|plank|blanket|edge)\b/.test(
    words,
  )
}

/** Index of the last sentence about the exercise: talk and changes of place at the end are left out. */
function lastTaught(speech: Speech, begin: number, limit: number): number {
  let last = begin
  let lost = 0
  for (let index = begin; index < limit; index++) {
    const sentence = speech.sentences[index]
    if (!sentence) break
    if (sentence.role === 'teach' || sentence.role === 'work') {
      last = index
      lost = 0
    } else if (sentence.role === 'end') {
      last = index
      if (limit === speech.sentences.length && cuesFrom(speech, index + 1, limit) < 2) break
    } else {
      lost += sentence.wordCount
      if (lost > TALK_WORDS) break
    }
  }
  return last
}

/** Cues heard from a sentence on, up to a limit. */
function cuesFrom(speech: Speech, from: number, limit: number): number {
  return speech.sentences
    .slice(from, Math.min(limit, from + 12))
    .reduce((sum, sentence) => sum + sentence.cues.length, 0)
}

/** So many words of nothing but talk end an exercise. */
const TALK_WORDS = 90
