/** Says from the words of a teaching, its names apart, how likely the body is in each position and moves in each way. */
import type { CueKind } from '../../shared/log-sheet.ts'
import type { Movement, Position } from './entry.ts'
import { findNames } from './find-entry.ts'
import { foldWords } from './fold-words.ts'
import { SHAPE_WEIGHTS } from './words/en/shape-weights.ts'

/** A position or a movement. */
export type Shape = Position | Movement

/** Cues of these kinds speak of what may be done instead. */
export const OPTION_KINDS: ReadonlySet<CueKind> = new Set<CueKind>(['easier', 'harder', 'equipment'])

/** For each shape what every teaching starts from, and for each word or pair of words what it adds to the shapes. */
export interface ShapeTable {
  bias: ReadonlyMap<Shape, number>
  byWord: ReadonlyMap<string, readonly (readonly [Shape, number])[]>
}

/** The log of the odds of each shape; the words of names tell nothing, since they may be those of another exercise. */
export function hearShape(said: readonly string[], table: ShapeTable = TABLE): Map<Shape, number> {
  return oddsOfWords(shapeWords(said), table)
}

/** The same from words as `shapeWords` gives them. */
export function oddsOfWords(words: readonly string[], table: ShapeTable): Map<Shape, number> {
  const known = words.flatMap((word) => {
    const adds = table.byWord.get(word)
    return adds ? [adds] : []
  })
  const share = shareOfWord(known.length)
  const odds = new Map(table.bias)
  for (const adds of known) for (const [shape, weight] of adds) odds.set(shape, (odds.get(shape) ?? 0) + weight * share)
  return odds
}

/** What one word of so many adds: a long teaching says more, but not as much more as it is longer. */
export function shareOfWord(words: number): number {
  return 10 / Math.sqrt(Math.max(1, words))
}

/** The words and pairs of words of a teaching, each once, folded; names and numbers are left out. */
export function shapeWords(said: readonly string[]): string[] {
  const found = new Set<string>()
  for (const text of said) {
    const names = findNames(text)
    let at = 0
    let before: string | null = null
    for (const word of foldWords(text)) {
      while (at < names.length && endOf(names[at]) <= word.offset) at += 1
      const isNamed = word.offset >= (names[at]?.offset ?? Infinity)
      if (isNamed || /\d/.test(word.text)) {
        before = null
        continue
      }
      found.add(word.text)
      if (before !== null && !word.afterMark) found.add(`${before} ${word.text}`)
      before = word.text
    }
  }
  return [...found]
}

function endOf(name: { offset: number; length: number } | undefined): number {
  return name === undefined ? Infinity : name.offset + name.length
}

/** A table by words, from one by shapes. */
export function shapeTable(
  rows: readonly (readonly [shape: Shape, bias: number, weights: readonly (readonly [number, string])[]])[],
): ShapeTable {
  const byWord = new Map<string, [Shape, number][]>()
  for (const [shape, , weights] of rows) {
    for (const [weight, words] of weights) {
      for (const word of words.split('|')) {
        const list = byWord.get(word)
        if (list) list.push([shape, weight])
        else byWord.set(word, [[shape, weight]])
      }
    }
  }
  return { bias: new Map(rows.map(([shape, bias]) => [shape, bias])), byWord }
}

const TABLE = shapeTable(SHAPE_WEIGHTS)
