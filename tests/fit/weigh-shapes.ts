/** Fits what the words of a teaching say of where the body is and what moves, on the annotated classes whose exercises the catalogue knows. */
import { findEntry } from '../../core/catalogue/find-entry.ts'
import { OPTION_KINDS, shapeTable, shapeWords, shareOfWord } from '../../core/catalogue/hear-shape.ts'
import type { Shape, ShapeTable } from '../../core/catalogue/hear-shape.ts'
import { annotatedClasses } from './annotated-classes.ts'
import type { AnnotatedExercise } from './annotated-classes.ts'
import { descend } from './descend.ts'

/** One exercise: its words, and the shapes of its catalogue entry and its annotation. */
export interface ShapeExample {
  title: string
  words: readonly string[]
  shapes: ReadonlySet<Shape>
}

/** One row of the table: a shape, what every teaching starts from, what each word adds. */
export type ShapeRow = readonly [shape: Shape, bias: number, weights: (readonly [number, string])[]]

/** A shape is told by so many exercises at least, a word by so many classes. */
const LEAST_EXERCISES = 8
const LEAST_CLASSES = 4
const RIDGE = 0.5
const STEPS = 150
const RATE = 0.3
/** Weights are kept in tenths, smaller ones not at all. */
const LEAST_WEIGHT = 0.12
const ROUNDED_AWAY = 0.05

/** What the annotations call a position where the catalogue has another word. */
const POSITIONS: Readonly<Record<string, Shape>> = {
  standing: 'standing',
  seated: 'seated',
  'long sitting': 'seated',
  supine: 'supine',
  prone: 'prone',
  'side-lying': 'side-lying',
  kneeling: 'kneeling',
  'half-kneeling': 'half-kneeling',
  hanging: 'hanging',
  'inverted hang': 'hanging',
  inverted: 'head-below-heart',
  quadruped: 'all-fours',
  'all fours': 'all-fours',
  'hands and knees': 'all-fours',
  plank: 'hands-supported',
}

/** All exercises that the catalogue knows by one of their names. */
export function shapeExamples(): ShapeExample[] {
  return annotatedClasses(['dev', 'fit', 'more']).flatMap(({ title, exercises }) =>
    exercises.flatMap((exercise): ShapeExample[] => {
      const entry = entryOf(exercise)
      if (!entry) return []
      const position = POSITIONS[exercise.position]
      const said = exercise.cues.filter(({ type }) => !OPTION_KINDS.has(type)).map(({ evidence }) => evidence)
      const shapes = [...entry.positions, ...entry.movements, ...(position === undefined ? [] : [position])]
      return [{ title, words: shapeWords(said), shapes: new Set<Shape>(shapes) }]
    }),
  )
}

function entryOf({ name, aliases, equipment }: AnnotatedExercise) {
  for (const one of [name, ...aliases]) {
    const entry = findEntry(one, { kit: equipment })
    if (entry) return entry
  }
  return null
}

/** Logistic regression with ridge for each shape apart. */
export function fitShapes(examples: readonly ShapeExample[]): ShapeRow[] {
  const times = new Map<Shape, number>()
  for (const { shapes } of examples) for (const one of shapes) times.set(one, (times.get(one) ?? 0) + 1)
  const classes = new Map<string, Set<string>>()
  for (const { title, words } of examples)
    for (const word of words) classes.set(word, (classes.get(word) ?? new Set<string>()).add(title))
  const names = [...classes].flatMap(([word, titles]) => (titles.size >= LEAST_CLASSES ? [word] : [])).sort()
  const indexOf = new Map(names.map((word, index) => [word, index + 1]))
  const rows = examples.map(({ words, shapes }) => {
    const at = words.flatMap((word) => indexOf.get(word) ?? [])
    return { at, share: shareOfWord(at.length), shapes }
  })
  const shapes = [...times].flatMap(([shape, count]) => (count >= LEAST_EXERCISES ? [shape] : [])).sort()
  return shapes.map((shape): ShapeRow => {
    const weights = new Float64Array(names.length + 1)
    const left = new Set<number>()
    const settle = (): void => {
      descend(weights, { steps: STEPS, rate: RATE }, () => slopeAt(weights, rows, shape, left))
    }
    settle()
    // what tells little is left out, and the others learn to do without
    weights.forEach((weight, index) => {
      if (index > 0 && Math.abs(weight) < LEAST_WEIGHT) left.add(index)
    })
    for (const index of left) weights[index] = 0
    settle()
    return [shape, Number((weights[0] ?? 0).toFixed(1)), grouped(names, weights)]
  })
}

interface ShapeRowData {
  at: readonly number[]
  share: number
  shapes: ReadonlySet<Shape>
}

function slopeAt(
  weights: Float64Array,
  rows: readonly ShapeRowData[],
  shape: Shape,
  left: ReadonlySet<number>,
): Float64Array {
  const slope = weights.map((weight, index) => (index === 0 ? 0 : weight * RIDGE))
  for (const { at, share, shapes } of rows) {
    const odds = at.reduce((sum, index) => sum + (weights[index] ?? 0) * share, weights[0] ?? 0)
    const miss = 1 / (1 + Math.exp(-odds)) - Number(shapes.has(shape))
    slope[0] = (slope[0] ?? 0) + miss
    for (const index of at) slope[index] = (slope[index] ?? 0) + miss * share
  }
  for (const index of left) slope[index] = 0
  return slope
}

function grouped(names: readonly string[], weights: Float64Array): [number, string][] {
  const groups = new Map<string, string[]>()
  names.forEach((word, index) => {
    const weight = weights[index + 1] ?? 0
    if (Math.abs(weight) < ROUNDED_AWAY) return
    const key = weight.toFixed(1)
    groups.set(key, [...(groups.get(key) ?? []), word])
  })
  return [...groups]
    .map(([weight, words]): [number, string] => [Number(weight), words.join('|')])
    .sort(([one], [other]) => other - one)
}

const PARTS = 8

/** Fitted in parts, each without every eighth class: what a class is heard with that should not have been seen. */
export function shapesApart(): { of(title: string): ShapeTable } {
  const examples = shapeExamples()
  const titles = [...new Set(examples.map(({ title }) => title))]
  const tables = new Map<string, ShapeTable>()
  for (let part = 0; part < PARTS; part++) {
    const left = titles.filter((_, index) => index % PARTS === part)
    const table = shapeTable(fitShapes(examples.filter(({ title }) => !left.includes(title))))
    for (const title of left) tables.set(title, table)
    tables.set('', table)
  }
  return {
    of: (title) => {
      const table = tables.get(title) ?? tables.get('')
      if (!table) throw new Error('No class is annotated.')
      return table
    },
  }
}
