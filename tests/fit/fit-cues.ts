/**
 * Fits the weights of cues on our own sentences and annotated classes, and writes core/draft/words/en/cue-weights-*.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-cues.js [--apart | --parts] && npx prettier --write 'core/draft/words/en/cue-weights-*.ts'; --apart only shows figures, each class left out of its fitting; --parts writes what other fittings read classes by (apart-tables.ts).
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { projectRoot } from '../../server/setup/project-root.ts'
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import { cueExamples, wantedOf } from './cue-examples.ts'
import type { CueExample } from './cue-examples.ts'
import { descend } from './descend.ts'
import { writeApart } from './apart-tables.ts'
import { writeSigns } from './write-signs.ts'

const KINDS = ['none', ...CUE_KINDS] as const

/** By feature the weight of each of KINDS. */
type Weights = ReadonlyMap<string, readonly number[]>

const LEAST_OFTEN = 2
const RIDGE = 3
const BIAS_RIDGE = 0.01
const STEPS = 250
/** Small steps: greater ones have not settled by then. */
const RATE = 0.1

/** Multinomial logistic regression with ridge, by steps along the whole gradient, each weight at its own rate: the same input gives the same weights. */
function fit(examples: readonly CueExample[]): Weights {
  const times = new Map<string, number>()
  for (const { features } of oncePerText(examples))
    for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) => (count >= LEAST_OFTEN ? [name] : [])).sort()
  const indexOf = new Map(names.map((name, index) => [name, index * KINDS.length]))
  const rows = examples.map(({ features, kinds, weight }) => ({
    at: features.flatMap((one) => indexOf.get(one) ?? []),
    wanted: wantedOf(kinds),
    weight,
  }))
  const weights = new Float64Array(names.length * KINDS.length)
  const ridge = Float64Array.from(weights, (_, index) =>
    names[Math.floor(index / KINDS.length)] === 'bias' ? BIAS_RIDGE : RIDGE,
  )
  descend(weights, { steps: STEPS, rate: RATE }, () => {
    const slope = weights.map((weight, index) => weight * (ridge[index] ?? RIDGE))
    for (const { at, wanted, weight } of rows) {
      const likely = likelihoods(at, weights)
      for (const index of at)
        for (let kind = 0; kind < KINDS.length; kind++)
          slope[index + kind] = (slope[index + kind] ?? 0) + weight * ((likely[kind] ?? 0) - (wanted[kind] ?? 0))
    }
    return slope
  })
  return new Map(
    names.map((name, index) => [name, [...weights.slice(index * KINDS.length, (index + 1) * KINDS.length)]]),
  )
}

/** What is shown twice, with and without its place, is counted once. */
function oncePerText(examples: readonly CueExample[]): readonly CueExample[] {
  return examples.filter(({ features }) => !features.includes('early') && !features.includes('late'))
}

function likelihoods(at: readonly number[], weights: Float64Array): number[] {
  const sums = KINDS.map((_, kind) => at.reduce((sum, index) => sum + (weights[index + kind] ?? 0), 0))
  const odds = sums.map((sum) => Math.exp(sum - Math.max(...sums)))
  const total = odds.reduce((one, other) => one + other, 0)
  return odds.map((one) => one / total)
}

/** Clauses of classes: how often the likeliest kind is one of those marked. */
function showApart(examples: readonly CueExample[]): void {
  const sums = new Map<string, { hit: number; wanted: number; found: number }>()
  for (const title of new Set(examples.map(({ from }) => from))) {
    const tested = examples.filter(({ from, speech, whole, features }) => {
      return (
        from === title && speech !== 'alone' && whole && !features.every((one) => one !== 'early' && one !== 'late')
      )
    })
    if (tested.length === 0) continue
    const weights = fit(examples.filter(({ from }) => from !== title))
    for (const { speech, features, kinds } of tested) {
      const sum = sums.get(speech) ?? { hit: 0, wanted: 0, found: 0 }
      sums.set(speech, sum)
      const best = likeliest(features, weights)
      if (kinds.length > 0) sum.wanted += 1
      if (best !== 'none') sum.found += 1
      if (kinds.some((kind) => kind === best)) sum.hit += 1
    }
    console.log(title)
  }
  for (const [kind, { hit, wanted, found }] of sums)
    console.log(`${kind}: F1 ${((200 * hit) / (wanted + found)).toFixed(1)} (${hit} of ${wanted}, ${found} found)`)
}

function likeliest(features: readonly string[], weights: Weights): (typeof KINDS)[number] {
  const sums = KINDS.map((_, kind) => features.reduce((sum, one) => sum + (weights.get(one)?.[kind] ?? 0), 0))
  return KINDS[sums.indexOf(Math.max(...sums))] ?? 'none'
}

/** Weights in steps of 0.2, those of less left out, by sign and then by weight. */
function write(weights: Weights): void {
  KINDS.forEach((kind, at) => {
    const entries = [...weights].map(([name, row]) => [name, inSteps(row[at] ?? 0)] as const)
    const what = kind === 'none' ? 'no cue at all' : `a cue of the kind ${kind}`
    const text = `/** How much each feature of a clause (cue-features.ts) speaks for ${what}; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const ${kind.toUpperCase()}_WEIGHTS = {
${writeSigns(entries, 'yes', 2)}
} as const satisfies CueWeights
`
    writeFileSync(path.join(projectRoot(), `core/draft/words/en/cue-weights-${kind}.ts`), text)
  })
}

/** Fitted twice, each time without every second class: what openings and all that follows are fitted by. */
function writeHalves(examples: readonly CueExample[]): void {
  const titles = [...new Set(examples.flatMap(({ from, speech }) => (speech === 'alone' ? [] : [from])))]
  const of = Object.fromEntries(titles.map((title, index) => [title, index % 2]))
  const tables = [0, 1].map((half) => {
    const weights = fit(examples.filter(({ from }) => of[from] !== half))
    return new Map([...weights].map(([name, row]) => [name, row.map(inSteps)]))
  })
  writeApart('cues', { tables, of })
}

function inSteps(weight: number): number {
  return Math.round(weight * 5) / 5
}

const examples = cueExamples()
if (process.argv.includes('--apart')) showApart(examples)
else if (process.argv.includes('--parts')) writeHalves(examples)
else write(fit(examples))
