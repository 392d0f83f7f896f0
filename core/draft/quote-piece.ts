/** Quotes a piece of the running text: exact words of one line, with the times of the first and last. */
import type { Quote } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import { timeAt } from '../transcript/place-quote.ts'
import type { Speech } from './read-speech.ts'
import type { Piece } from './split-speech.ts'

export interface TimedQuote extends Quote {
  endMs: Ms
}

/** The words of a piece; where it runs over the end of a line, the longer part. */
export function quotePiece(speech: Speech, piece: Piece): TimedQuote {
  const from = speech.joined.at(piece.offset)
  const to = speech.joined.at(Math.max(piece.offset, piece.end - 1))
  if (from.lineIndex === to.lineIndex) return partOf(from.line, from.offset, to.offset + 1)
  const head = partOf(from.line, from.offset, from.line.text.length)
  const tail = partOf(to.line, 0, to.offset + 1)
  return head.text.length >= tail.text.length ? head : tail
}

/** A whole sentence without its closing mark. */
export function quoteSentence(speech: Speech, sentence: Piece): TimedQuote {
  const said = speech.text.slice(sentence.offset, sentence.end)
  return quotePiece(speech, { offset: sentence.offset, end: sentence.offset + said.replace(/[.!?…]+$/, '').length })
}

function partOf(line: Speech['lines'][number], offset: number, end: number): TimedQuote {
  const said = line.text.slice(offset, end)
  const start = offset + said.length - said.trimStart().length
  const text = said.trim()
  return { text, atMs: timeAt(line, start), endMs: timeAt(line, start + text.length) }
}
