/** How well what a teaching shows (where the body is, what moves, the kit named) fits what the catalogue says of an exercise. */
import type { CatalogueEntry } from '../catalogue/entry.ts'
import { OPTION_KINDS, hearShape } from '../catalogue/hear-shape.ts'
import type { Shape, ShapeTable } from '../catalogue/hear-shape.ts'
import { findKit } from './find-kit.ts'
import type { Speech } from './read-speech.ts'

/** What the sentences of one teaching show. */
export interface ShownShape {
  odds: ReadonlyMap<Shape, number>
  kit: ReadonlySet<string>
}

/** Looks at the sentences from one to before another. @param table other than that of the words, for fitting */
export function showShape(speech: Speech, first: number, end: number, table?: ShapeTable): ShownShape {
  const sentences = speech.sentences.slice(first, Math.min(end, first + MOST_SENTENCES))
  const said = sentences.flatMap(({ cues }) =>
    cues.filter(({ kind }) => !OPTION_KINDS.has(kind)).map(({ text }) => text),
  )
  const [from, to] = [sentences[0]?.offset ?? 0, sentences.at(-1)?.end ?? 0]
  return { odds: hearShape(said, table), kit: new Set(findKit(speech.text.slice(from, to), 1)) }
}

/** A teaching that goes on for longer has shown what it is. */
const MOST_SENTENCES = 80

/** The log of how likely a teaching of the exercise shows what is shown. */
export function shapeFit({ positions, movements }: CatalogueEntry, odds: ReadonlyMap<Shape, number>): number {
  const own = new Set<Shape>([...positions, ...movements])
  let sum = 0
  for (const [shape, one] of odds) sum -= Math.log1p(Math.exp(own.has(shape) ? -one : one))
  return sum
}

/** The features of an exercise beside the best fit of all that may be meant; kit that everybody has at home tells nothing. */
export function fitFeatures(
  entry: CatalogueEntry,
  shown: ShownShape,
  best: number,
  classKit: ReadonlySet<string>,
): string[] {
  const behind = best - shapeFit(entry, shown.odds)
  const oddsOf = (shapes: readonly Shape[]): number[] => shapes.flatMap((shape) => shown.odds.get(shape) ?? [])
  const [place, move] = [oddsOf(entry.positions), oddsOf(entry.movements)]
  const kit = entry.kit.filter((piece) => !FURNITURE.has(piece))
  return [
    `behind ${stepOf(behind, [0.01, 1, 2, 3.5, 5.5, 8])}`,
    ...(place.length === 0 ? [] : [`place shown ${stepOf(Math.max(...place), [-2.5, -1, 0.5, 2])}`]),
    ...(move.length === 0 ? [] : [`move shown ${stepOf(Math.max(...move), [-3.5, -2, -1, 0, 1.5])}`]),
    kit.length === 0
      ? 'kit none'
      : kit.some((piece) => shown.kit.has(piece))
        ? 'kit here'
        : kit.some((piece) => classKit.has(piece))
          ? 'kit of the class'
          : 'kit nowhere',
  ]
}

function stepOf(value: number, steps: readonly number[]): number {
  const at = steps.findIndex((step) => value < step)
  return at < 0 ? steps.length : at
}

const FURNITURE: ReadonlySet<string> = new Set(['mat', 'chair', 'wall', 'step', 'box', 'bench', 'anchor'])
