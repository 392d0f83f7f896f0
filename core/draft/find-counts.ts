/** Finds counting aloud in the spans of an exercise: runs that climb from one, and how far each gets. */
import type { Counted } from '../../shared/log-sheet.ts'
import { quotePiece } from './quote-piece.ts'
import type { TextSpan } from './place-spans.ts'
import type { Speech } from './read-speech.ts'

/** The runs of at least five numbers, in order of speech. */
export function findCounts(speech: Speech, spans: readonly TextSpan[]): Counted[] {
  return spans.flatMap((span) => runsIn(speech, span))
}

/** Fewer may be a rhythm ("three, two, one, go"; "one two three four"). */
const SHORTEST_RUN = 5
/** More words between two numbers part them: the second is no count. */
const WORDS_BETWEEN = 12

const COUNT =
  'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  )

interface Run {
  upTo: number
  offset: number
  end: number
  wordsSince: number
}

function runsIn(speech: Speech, span: TextSpan): Counted[] {
  const runs: Run[] = []
  let run: Run = { upTo: 0, offset: 0, end: 0, wordsSince: 0 }
  for (const word of speech.text.slice(span.offset, span.end).matchAll(/[A-Za-z0-9']+/g)) {
    const number = numberOf(word[0])
    const offset = span.offset + word.index
    const end = offset + word[0].length
    if (run.upTo > 0 && number === run.upTo + 1) {
      run = { ...run, upTo: number, end, wordsSince: 0 }
    } else if (number === 1 || run.wordsSince >= WORDS_BETWEEN) {
      runs.push(run)
      run = { upTo: number === 1 ? 1 : 0, offset, end, wordsSince: 0 }
    } else run = { ...run, wordsSince: run.wordsSince + 1 }
  }
  return [...runs, run]
    .filter(({ upTo }) => upTo >= SHORTEST_RUN)
    .map(({ upTo, offset, end }) => {
      const { text, atMs } = quotePiece(speech, { offset, end })
      return { atMs, text, upTo }
    })
}

function numberOf(word: string): number | null {
  const figure = /^\d{1,2}$/.test(word) ? Number(word) : COUNT.indexOf(word.toLowerCase()) + 1
  return figure > 0 ? figure : null
}
