/** Tells lists of repetitions ("ten, eight and six") from counting aloud ("three, two, one"). */
import type { Piece } from './match-pattern.ts'

const SEPARATOR = /^(?:,|-|\/|then|and)$/
const COUNTED = /^(?:sets|reps|rounds|times|breaths|seconds|minutes|lengths|strokes|goes)$/

/** The pieces with every run of three or more single numbers joined to L (a list) or C (counting). */
export function listPieces(pieces: readonly Piece[]): Piece[] {
  const result: Piece[] = []
  for (let at = 0; at < pieces.length;) {
    // "between five and eight, and two goes" is a range and another number
    const isRange = pieces[at - 1]?.tag === 'between' || pieces[at - 2]?.tag === 'between'
    const isNamed = pieces[at - 2]?.tag === 'by' && pieces[at - 1]?.tag === 'sets'
    const run = isRange ? null : runAt(pieces, at, isNamed ? /^-$/ : SEPARATOR)
    const joined = run && joinedRun(run.numbers, pieces[at + run.length], run.isBare, isNamed)
    const piece = pieces[at]
    if (!piece) break
    const apart = run && isSpokenTempo(run) ? pieces.slice(at, at + run.length) : [piece]
    result.push(...(joined ? [joined] : apart))
    at += joined && run ? run.length : apart.length
  }
  return result
}

interface Run {
  numbers: Piece[]
  /** How many pieces it spans. */
  length: number
  /** No marks or words between the numbers. */
  isBare: boolean
}

function runAt(pieces: readonly Piece[], at: number, separator: RegExp): Run | null {
  const first = pieces[at]
  if (!first || !isSingle(first)) return null
  const numbers = [first]
  let length = 1
  let isBare = true
  let isDashed: boolean | null = null
  for (;;) {
    let skip = 0
    while (skip < 2 && separator.test(pieces[at + length + skip]?.tag ?? '')) skip++
    const next = pieces[at + length + skip]
    if (!next || !isSingle(next)) break
    // "7-8, 3 times" is a range and another number.
    if (skip > 0 && isSpokenTempo({ numbers, isBare })) break
    const isDash = pieces[at + length]?.tag === '-'
    if (isDashed !== null && isDash !== isDashed) break
    isDashed = isDash
    if (skip > 0) isBare = false
    numbers.push(next)
    length += skip + 1
  }
  return { numbers, length, isBare }
}

/** "two zero two zero": its numbers stay apart. */
function isSpokenTempo({ numbers, isBare }: Pick<Run, 'numbers' | 'isBare'>): boolean {
  return isBare && numbers.length >= 3
}

function isSingle(piece: Piece): boolean {
  return piece.tag === 'N' && piece.min === piece.max && piece.approx !== true
}

function joinedRun(
  numbers: readonly Piece[],
  next: Piece | undefined,
  isBare: boolean,
  isNamed: boolean,
): Piece | null {
  const first = numbers[0]
  const last = numbers.at(-1)
  if (!first || !last) return null
  const values = numbers.map((piece) => piece.min ?? 0)
  const steps = values.slice(1).map((value, index) => value - (values[index] ?? 0))
  const place = { start: first.start, end: last.end }
  if (isNamed) return { tag: 'L', values, ...place }
  if (numbers.length < 2) return null
  if (numbers.length === 2) {
    // "two, three sets": an unsaid "or".
    const isRange = steps[0] === 1 && !first.isFigure && COUNTED.test(next?.tag ?? '')
    // "six, seven, and change legs" is counting
    const isCounting = steps[0] === 1 && !isBare && !first.isFigure && !COUNTED.test(next?.tag ?? '')
    if (isCounting) return { tag: 'C', values, ...place }
    return isRange ? { tag: 'N', min: values[0] ?? null, max: values[1] ?? null, ...place } : null
  }
  if (steps.every((step) => step === 1) || steps.every((step) => step === -1)) return { tag: 'C', values, ...place }
  // "nine, ten and twelve" is counting on, with some left unsaid
  if (steps.every((step) => step > 0) && steps.includes(1) && !first.isFigure) return { tag: 'C', values, ...place }
  return isBare ? null : { tag: 'L', values, ...place }
}
