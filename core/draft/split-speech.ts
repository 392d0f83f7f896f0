/** Cuts speech into sentences and clauses, and brings its words into the plain form that the phrase lists are written in. */
import { remember } from '../remember.ts'

/** A piece of a text by its character offsets, end not included. */
export interface Piece {
  offset: number
  end: number
}

/** True when a text has too few marks to find its sentences by them. */
export function isUnpunctuated(text: string): boolean {
  const words = text.match(/\S+/g)?.length ?? 0
  const marks = text.match(/[.,!?;:](?=\s|$)/g)?.length ?? 0
  return words > 12 && marks * 30 < words
}

/** No sentence is longer, in characters; the longest of spoken classes is about 200. */
export const LONGEST_SENTENCE = 1000

/** The sentences of a text, without the space around them; what goes on too long is cut between two words. */
export function splitSentences(text: string): Piece[] {
  // Marks are looked at from the first of a row only: a million dots take no time.
  const ends = markBreaks(text, /(?<![.!?…])[.!?…]+["'”’)]*(?=\s|$)|\n/g)
  return piecesBetween(text, ends).flatMap((piece) => cutLong(text, piece))
}

function cutLong(text: string, { offset, end }: Piece): Piece[] {
  if (end - offset <= LONGEST_SENTENCE) return [{ offset, end }]
  const cuts: number[] = []
  for (let from = offset; end - from > LONGEST_SENTENCE;) {
    const space = text.slice(from, from + LONGEST_SENTENCE).search(/\s\S*$/)
    from += space > 0 ? space : LONGEST_SENTENCE
    cuts.push(from - offset)
  }
  return piecesBetween(text.slice(offset, end), cuts).map((piece) => ({
    offset: piece.offset + offset,
    end: piece.end + offset,
  }))
}

/** The clauses of a sentence: between commas, dashes, colons, and before "and then", "but", "or". */
export function splitClauses(text: string, sentence: Piece): Piece[] {
  const said = text.slice(sentence.offset, sentence.end)
  const ends = markBreaks(
    said,
    /[,;:—–]+(?=\s)|\v|\s-(?=\s)|\s(?=(?:and then|but|then|and (?:breathe|out|in|don't|do not|if))\s)/gi,
  )
  return piecesBetween(said, ends).map(({ offset, end }) => ({
    offset: offset + sentence.offset,
    end: end + sentence.offset,
  }))
}

/** Plain words for matching: lower case, no apostrophes, one space, no hesitations, no doubled words. */
export const plainWords = remember(4000, (text) => {
  const words = text
    .toLowerCase()
    .replace(/['’‘]/g, '')
    .match(/[a-z0-9]+(?::\d+)?/g)
  if (!words) return ''
  const clean: string[] = []
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? ''
    if (HESITATION.test(word)) continue
    const second = HESITATIONS.get(word)
    if (second !== undefined && second === words[at + 1]) at += 1
    else if (word !== clean.at(-1)) clean.push(word)
  }
  return clean.join(' ')
})

const HESITATION = /^(?:um+|uh+|er+|erm)$/
/** Hesitations of two words by the first. */
const HESITATIONS: ReadonlyMap<string, string> = new Map([
  ['you', 'know'],
  ['sort', 'of'],
  ['kind', 'of'],
])

function markBreaks(text: string, marks: RegExp): number[] {
  return [...text.matchAll(marks)].map((match) => match.index + match[0].length)
}

function piecesBetween(text: string, ends: readonly number[]): Piece[] {
  const pieces: Piece[] = []
  let from = 0
  for (const to of [...ends, text.length]) {
    const part = text.slice(from, to)
    const trimmed = part.trim()
    if (/[\p{L}\p{N}]/u.test(trimmed)) {
      const offset = from + part.indexOf(trimmed)
      pieces.push({ offset, end: offset + trimmed.length })
    }
    from = Math.max(from, to)
  }
  return pieces
}
