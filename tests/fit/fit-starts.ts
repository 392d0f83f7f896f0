/**
 * Fits the weights of starts on the marked classes and writes core/draft/words/en/start-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-starts.js [--apart|--plain] && npx prettier --write core/draft/words/en/start-weights.ts; --apart only shows figures, each class left out of its fitting; --plain fits what counts for speech without punctuation alone and leaves the rest as it stands.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { START_WEIGHTS } from '../../core/draft/words/en/start-weights.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { fitClasses } from './class-starts.ts'
import type { FitClass } from './class-starts.ts'
import { descend } from './descend.ts'
import { writeSides } from './fit-sentences.ts'

/** Every feature twice: for all speech, and for speech with or without marks; so each kind of speech learns from the other. */
function sided(features: readonly string[], unpunctuated: boolean): string[] {
  return features.flatMap((feature) => [`always ${feature}`, `${unpunctuated ? 'plain' : 'marked'} ${feature}`])
}

const LEAST_OFTEN = 4
const RIDGE = 3
const STEPS = 500
/** Small steps: greater ones have not settled by then. */
const RATE = 0.1
/** A missed start costs the person more than one too many. */
const START_COST = 1.5
/** Whole classes count for more than the short ones, and those of the corpus most: they are annotated with most care. */
const CLASS_WEIGHTS = { corpus: 2, own: 1.5, short: 1.5 } as const

/** Logistic regression with ridge, by steps along the whole gradient, each weight at its own rate: the same input gives the same weights. @param kept weights that stand already */
function fit(classes: readonly FitClass[], kept: ReadonlyMap<string, number> = new Map()): Map<string, number> {
  const data = classes.flatMap(({ examples, unpunctuated, group }) =>
    examples.flatMap(({ features, start }) =>
      start === null ? [] : [{ features: sided(features, unpunctuated), start, weight: CLASS_WEIGHTS[group] }],
    ),
  )
  const times = new Map<string, number>()
  for (const { features } of data) for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) =>
    count >= LEAST_OFTEN && (kept.size === 0 || name.startsWith('plain ')) ? [name] : [],
  )
  const indexOf = new Map(names.map((name, index) => [name, index]))
  const rows = data.map(({ features, start, weight }) => ({
    at: features.flatMap((one) => indexOf.get(one) ?? []),
    from: features.reduce((sum, one) => sum + (kept.get(one) ?? 0), 0),
    start,
    weight,
  }))
  const weights = new Float64Array(names.length)
  descend(weights, { steps: STEPS, rate: RATE }, () => {
    const slope = weights.map((weight) => weight * RIDGE)
    for (const { at, from, start, weight } of rows) {
      const sum = at.reduce((all, index) => all + (weights[index] ?? 0), from)
      const miss = (1 / (1 + Math.exp(-sum)) - (start ? 1 : 0)) * (start ? START_COST : 1) * weight
      for (const index of at) slope[index] = (slope[index] ?? 0) + miss
    }
    return slope
  })
  return new Map(names.map((name, index) => [name, weights[index] ?? 0]))
}

/** The weights as they stand, those for speech without punctuation fitted anew upon the rest. */
function fitPlain(classes: readonly FitClass[]): Map<string, number> {
  const kept = new Map(
    (['always', 'marked'] as const).flatMap((side) =>
      START_WEIGHTS[side].flatMap(([weight, features]) =>
        features.split('|').map((feature) => [`${side} ${feature}`, weight] as const),
      ),
    ),
  )
  const plain = fit(
    classes.filter(({ unpunctuated }) => unpunctuated),
    kept,
  )
  return new Map([...kept, ...[...plain].filter(([name]) => name.startsWith('plain '))])
}

function showApart(classes: readonly FitClass[]): void {
  const sums = { marked: { hit: 0, wanted: 0, found: 0 }, plain: { hit: 0, wanted: 0, found: 0 } }
  for (const title of new Set(classes.map((one) => one.title))) {
    const weights = fit(classes.filter((one) => one.title !== title))
    for (const { examples, unpunctuated } of classes.filter((one) => one.title === title)) {
      const sum = sums[unpunctuated ? 'plain' : 'marked']
      for (const { features, start } of examples) {
        if (start === null) continue
        const isFound = sided(features, unpunctuated).reduce((all, one) => all + (weights.get(one) ?? 0), 0) > 0
        if (start) sum.wanted += 1
        if (isFound) sum.found += 1
        if (start && isFound) sum.hit += 1
      }
    }
  }
  for (const [kind, { hit, wanted, found }] of Object.entries(sums))
    console.log(`${kind}: F1 ${((200 * hit) / (wanted + found)).toFixed(1)} (${hit} of ${wanted}, ${found} found)`)
}

function write(weights: ReadonlyMap<string, number>): void {
  const text = `/**
 * What each feature of start-features.ts adds to the log of the odds that a name starts an exercise: in all speech, and in
 * speech with and without punctuation. Fitted by tests/fit/fit-starts.ts, not by hand.
 */
type Rows = readonly (readonly [weight: number, features: string])[]

export const START_WEIGHTS: Readonly<Record<'always' | 'marked' | 'plain', Rows>> = {
${writeSides(weights)}
}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/start-weights.ts'), text)
}

const classes = fitClasses()
if (process.argv.includes('--apart')) showApart(classes)
else write(process.argv.includes('--plain') ? fitPlain(classes) : fit(classes))
