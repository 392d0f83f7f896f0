/** Marks what is said right in front of an amount and behind it: words, a total of both sides, a pace, a label. */
import type { DoseHit } from './find-dose-hits.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { LABEL_BEFORE } from './words/en/saying-words.ts'
import { PACE_BEHIND, SHARED_OUT, TOTAL_BEHIND, WRITTEN_BEHIND } from './words/en/telling-words.ts'

/** @param last the amount in front of it, within reach */
export function markTelling(speech: Speech, hit: DoseHit, last: DoseHit | null): string[] {
  const { text } = speech
  const marks: string[] = []
  const behind = plainWords(text.slice(hit.end, hit.end + WORDS_CHARACTERS))
  const before = plainWords(text.slice(Math.max(0, hit.offset - WORDS_CHARACTERS), hit.offset)).split(' ')
  if (before.length > 2) marks.push(`behind words ${before.slice(-2).join(' ')}`)
  const next = behind.split(' ')
  if (next.length > 2) marks.push(`before words ${next.slice(0, 2).join(' ')}`)
  const own = plainWords(text.slice(hit.offset, hit.end))
  if (WRITTEN_BEHIND.test(behind)) marks.push('written before')
  if (TOTAL_BEHIND.test(behind) || TOTAL_WITHIN.test(own)) marks.push('in total')
  if (LABEL_BEFORE.test(before.join(' '))) marks.push('a label')
  if (PACE_BEHIND.test(behind)) marks.push('a pace')
  if (last && isShared(speech, last, hit)) marks.push('shared out of a total')
  return marks
}

const WORDS_CHARACTERS = 40
const TOTAL_WITHIN = /\b(?:in total|altogether|in all|total)$/

/** "Twenty in total, so that's ten a leg." */
function isShared({ text }: Speech, last: DoseHit, hit: DoseHit): boolean {
  const between = plainWords(text.slice(last.end, hit.offset))
  const both = plainWords(text.slice(last.offset, hit.end))
  return (
    SHARED_OUT.test(both) &&
    (TOTAL_BEHIND.test(between) || TOTAL_WITHIN.test(plainWords(text.slice(last.offset, last.end))))
  )
}
