/** Marks what is said right in front of an amount and behind it: words, a total of both sides, a pace, a label. */
import type { DoseHit } from './find-dose-hits.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import {
  LABEL_BEFORE,
  PACE_BEHIND,
  SHARED_OUT,
  TOTAL_BEHIND,
  TOTAL_WITHIN,
  WRITTEN_BEHIND,
} from './words/en/telling-words.ts'

/** Plain words of an amount, in front of it and behind it. */
export interface WordsAround {
  before: string
  own: string
  behind: string
}

export function wordsAround({ text }: Speech, { offset, end }: DoseHit): WordsAround {
  return {
    before: plainWords(text.slice(Math.max(0, offset - WORDS_CHARACTERS), offset)),
    own: plainWords(text.slice(offset, end)),
    behind: plainWords(text.slice(end, end + WORDS_CHARACTERS)),
  }
}

const WORDS_CHARACTERS = 40

/** @param last the amount in front of it, within reach */
export function markTelling(speech: Speech, hit: DoseHit, last: DoseHit | null, around: WordsAround): string[] {
  const { before, own, behind } = around
  const marks = [`sentence tells ${stepOf(speech.tellingOf(hit.sentence))}`]
  const [said, next] = [before.split(' '), behind.split(' ')]
  if (said.length > 2) marks.push(`behind words ${said.slice(-2).join(' ')}`)
  if (next.length > 2) marks.push(`before words ${next.slice(0, 2).join(' ')}`)
  if (WRITTEN_BEHIND.test(behind)) marks.push('written before')
  if (TOTAL_BEHIND.test(behind) || TOTAL_WITHIN.test(own)) marks.push('in total')
  if (LABEL_BEFORE.test(before)) marks.push('a label')
  if (PACE_BEHIND.test(behind)) marks.push('a pace')
  if (last && isShared(speech, last, hit)) marks.push('shared out of a total')
  return marks
}

const STEPS = [-3, -2, -1, 0, 1, 2] as const

function stepOf(odds: number): string {
  const at = STEPS.findIndex((step) => odds < step)
  return String(at < 0 ? STEPS.length : at)
}

/** "Twenty in total, so that's ten a leg." */
function isShared({ text }: Speech, last: DoseHit, hit: DoseHit): boolean {
  const between = plainWords(text.slice(last.end, hit.offset))
  const both = plainWords(text.slice(last.offset, hit.end))
  return (
    SHARED_OUT.test(both) &&
    (TOTAL_BEHIND.test(between) || TOTAL_WITHIN.test(plainWords(text.slice(last.offset, last.end))))
  )
}
