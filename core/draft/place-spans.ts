/** Places each exercise in the running text: from its set-up to its last words, without the talk behind. */
import type { Role } from './find-role.ts'
import type { HeardTurn } from './hear-turns.ts'
import type { Naming } from './naming.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { CLAUSE_BREAK } from './restore-breaks.ts'
import { plainWords } from './split-speech.ts'
import { AMOUNT_WORDS } from './words/en/dose-words.ts'

/** Where a stretch of teaching starts. */
export interface Start {
  /** Of what is taught. */
  naming: Naming
  /** Who is taught: the same key comes back for a return. */
  key: string
  sentence: number
}

/** A stretch of the running text by its characters. */
export interface TextSpan {
  offset: number
  end: number
  /** Where a return is called, behind words that open a round. */
  called?: number
}

export interface PlacedSpan extends TextSpan {
  start: Start
  /** Cues heard in it. */
  cues: number
}

/** Gives each start its stretch: to the next one's, without the talk at the end. */
export function placeSpans(speech: Speech, starts: readonly Start[], heard: readonly HeardTurn[]): PlacedSpan[] {
  return starts.flatMap((start, index) => {
    const begin = start.sentence
    const limit = starts[index + 1]?.sentence ?? speech.sentences.length
    const first = speech.sentences[begin]
    const final = speech.sentences[lastTaught(speech, heard, begin, limit, KEPT)]
    if (!first || !final) return []
    const next = final.index + 1 === limit ? speech.sentences[limit] : undefined
    const dose = next ? behindDose(speech, next) : 0
    const end = next && dose > next.offset ? dose - 1 : final.end
    const cues = speech.sentences.slice(begin, final.index + 1).reduce((sum, sentence) => sum + sentence.cues.length, 0)
    return [{ start, offset: behindDose(speech, first), end, cues }]
  })
}

/** A stretch that comes back, without the talk at its end. */
export function withoutTalk(speech: Speech, heard: readonly HeardTurn[], span: TextSpan): TextSpan {
  const first = speech.sentenceAt(span.offset)
  const last = speech.sentenceAt(Math.max(span.offset, span.end - 1))
  const final = lastTaught(speech, heard, first, last + 1, KEPT_BACK)
  return final === last ? span : { ...span, end: Math.max(span.offset + 1, speech.sentences[final]?.end ?? span.end) }
}

/** Where a sentence begins, or its second clause where marks are missing and the first is a dose: "six each side and sit back". */
function behindDose(speech: Speech, { offset, end }: Sentence): number {
  const [dose = '', ...others] = speech.text.slice(offset, end).split(CLAUSE_BREAK)
  const words = plainWords(dose)
  const isDose = others.length > 0 && words.split(' ').length <= DOSE_WORDS && AMOUNT_WORDS.test(words)
  return isDose ? offset + dose.length + 1 : offset
}

const DOSE_WORDS = 6

/** Index of the last sentence about the exercise: from there to the limit all is likeliest to be talk and changes of place. */
function lastTaught(speech: Speech, heard: readonly HeardTurn[], begin: number, limit: number, kept: number): number {
  let [last, best, sum] = [begin, 0, 0]
  for (let index = begin + 1; index < limit; index++) {
    sum += kept + (TAUGHT[speech.sentences[index]?.role ?? 'chat'] ?? 0) - (heard[index]?.over ?? 0)
    if (sum < best) continue
    best = sum
    last = index
  }
  return last
}

/** Log odds: a word of the exercise that is lost costs more than a sentence of talk that is shown; in a return, which says it again, less. */
const KEPT = 0.7
const KEPT_BACK = -0.3
/** Log odds: what its words alone make teaching or work is so, though nothing like it was learned; a dose may close a class. */
const TAUGHT: Partial<Record<Role, number>> = { teach: 1.5, work: 3 }
