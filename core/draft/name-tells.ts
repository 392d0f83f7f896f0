/** What the name of an exercise tells of its dose, and the words that say it. */
import type { Quote, Range } from '../../shared/log-sheet.ts'
import type { Teaching } from './find-exercises.ts'
import { quotePiece } from './quote-piece.ts'
import type { Speech } from './read-speech.ts'
import { NAMED_BY_METRES, NUMBER_VALUES } from './words/en/saying-words.ts'

/** "The three hundreds" are run over three hundred metres; null = the name tells none. */
export function metresInName({
  name,
  alsoCalled,
  entry,
}: Pick<Teaching, 'name' | 'alsoCalled' | 'entry'>): Range | null {
  if (entry !== null && !entry.movements.includes('run')) return null
  for (const called of [name, ...alsoCalled]) {
    const { hundreds, flying, figures } = NAMED_BY_METRES.exec(called)?.groups ?? {}
    const metres = hundreds ? 100 * valueOf(hundreds) : valueOf(flying ?? figures)
    if (metres >= LEAST_METRES) return { min: metres, max: metres }
  }
  return null
}

const LEAST_METRES = 20

function valueOf(said = ''): number {
  return Number.parseInt(said, 10) || (NUMBER_VALUES[said.toLowerCase()] ?? 0)
}

/** Where an exercise is named as it starts, else its first words. */
export function quoteOfName(speech: Speech, { name, spans: [main] }: Pick<Teaching, 'name' | 'spans'>): Quote {
  const from = main?.offset ?? 0
  const at = speech.text.toLowerCase().indexOf(name, Math.max(0, from - NAME_CHARACTERS))
  const isThere = at >= 0 && at < (main?.end ?? 0)
  const first = speech.sentences[speech.sentenceAt(from)] ?? { offset: from, end: from }
  const { atMs, text } = quotePiece(speech, isThere ? { offset: at, end: at + name.length } : first)
  return { atMs, text }
}

/** Characters in front of a teaching. */
const NAME_CHARACTERS = 120
