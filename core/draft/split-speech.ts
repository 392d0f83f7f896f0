/** Cuts speech into sentences and clauses; where nobody wrote punctuation, at the words that usually open a new thought. */
import { CLAUSE_OPENERS, NEVER_BEFORE_OPENER } from './words/en/openers.ts'

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

/** The sentences of a text, without the space around them. */
export function splitSentences(text: string, unpunctuated = isUnpunctuated(text)): Piece[] {
  const ends = unpunctuated ? openerBreaks(text) : markBreaks(text, /[.!?…]+["'”’)]*(?=\s|$)|\n/g)
  return piecesBetween(text, ends)
}

/** The clauses of a sentence: between commas, dashes, colons, and before "and then", "but", "or". */
export function splitClauses(text: string, sentence: Piece): Piece[] {
  const said = text.slice(sentence.offset, sentence.end)
  const ends = markBreaks(
    said,
    /[,;:—–]+(?=\s)|\s-(?=\s)|\s(?=(?:and then|but|then|and (?:breathe|out|in|don't|do not|if))\s)/gi,
  )
  return piecesBetween(said, ends).map(({ offset, end }) => ({
    offset: offset + sentence.offset,
    end: end + sentence.offset,
  }))
}

/** Plain words for matching: lower case, no apostrophes, one space, no hesitations, no doubled words. */
export function plainWords(text: string): string {
  const words = text
    .toLowerCase()
    .replace(/['’‘]/g, '')
    .match(/[a-z0-9]+(?::\d+)?/g)
  if (!words) return ''
  const clean = ` ${words.join(' ')} `.replace(/ (?:um+|uh+|er+|erm|you know|sort of|kind of)(?= )/g, '').trim()
  return clean.replace(/\b(\w+)(?: \1\b)+/g, '$1')
}

function markBreaks(text: string, marks: RegExp): number[] {
  return [...text.matchAll(marks)].map((match) => match.index + match[0].length)
}

/** Before each opener that does not hang on the word in front of it; never twice within three words. */
function openerBreaks(text: string): number[] {
  const breaks: number[] = []
  const words = [...text.matchAll(/\S+/g)]
  let since = 0
  words.forEach((word, index) => {
    const said = word[0].toLowerCase().replace(/[^a-z0-9']/g, '')
    const before = words[index - 1]?.[0].toLowerCase().replace(/[^a-z0-9']/g, '') ?? ''
    const ended = /[.!?…,]$/.test(words[index - 1]?.[0] ?? '')
    since += 1
    if (index === 0) return
    const opens = CLAUSE_OPENERS.has(said) && !NEVER_BEFORE_OPENER.has(before) && since > 2
    if (ended || opens) {
      breaks.push(word.index)
      since = 0
    }
  })
  return breaks
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
