/** Finds what names a side in the spans of an exercise, and whether the class is taught as in a mirror. */
import type { SideNamed } from '../../shared/log-sheet.ts'
import { sidesIn } from '../sides/read-sides.ts'
import { quotePiece } from './quote-piece.ts'
import type { TextSpan } from './place-spans.ts'
import type { Speech } from './read-speech.ts'

/** "And change legs" just behind the last word of a span belongs to it; so many characters are looked at. */
const CALL_BEHIND = 80

/**
 * In order of speech, with exact words and times; a call of sides just behind a span, too, which tells that its second side
 * is not in it. @param starts where teaching of any exercise begins
 */
export function findSides(speech: Speech, spans: readonly TextSpan[], starts: readonly number[] = []): SideNamed[] {
  return spans.flatMap((span) => {
    const next = starts.find((start) => start >= span.end) ?? speech.text.length
    const behind = Math.min(next, span.end + CALL_BEHIND)
    const first = speech.sentenceAt(span.offset)
    return speech.sentences.slice(first, speech.sentenceAt(behind) + 1).flatMap((sentence) => {
      const from = Math.max(sentence.offset, span.offset)
      return sidesIn(speech.text.slice(from, Math.min(sentence.end, behind)))
        .map((one) => ({ ...one, offset: from + one.offset }))
        .filter(({ as, offset }) => offset < span.end || as === 'turn')
        .flatMap(({ side, as, offset, length }) => {
          const { text, atMs } = quotePiece(speech, { offset, end: offset + length })
          return text === '' ? [] : [{ atMs, text, side, as }]
        })
    })
  })
}

/** True where mirrored teaching is told for the class: between the exercises, or in words that mean all of it. */
export function isClassMirrored(speech: Speech, spans: readonly TextSpan[]): boolean {
  return speech.sentences.some(({ offset, end }) => {
    const said = speech.text.slice(offset, end)
    if (!/mirror|\b(?:my|i go|i say|i move|i use|i take) (?:left|right)\b/i.test(said)) return false
    const told = sidesIn(said).find(({ as }) => as === 'mirrored')
    if (!told) return false
    const at = offset + told.offset
    return FOR_ALL.test(said) || !spans.some((span) => span.offset <= at && at < span.end)
  })
}

const FOR_ALL =
  /\b(?:today|all (?:class|the way|morning|through|of (?:this|it))|throughout|whole (?:class|thing|time)|everything|always)\b/i
