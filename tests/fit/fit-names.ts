/**
 * Fits the weights of names on all marked classes and writes core/draft/words/en/name-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-names.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/name-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { findKit } from '../../core/draft/find-kit.ts'
import { NameChooser } from '../../core/draft/name-features.ts'
import { weighCandidates } from '../../core/draft/weigh-starts.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { knownClasses } from './known-classes.ts'
import type { KnownClass } from './known-classes.ts'
import { readApart } from './read-apart.ts'
import { shapesApart } from './weigh-shapes.ts'
import { descend } from './descend.ts'
import { writeRows } from './write-rows.ts'

/** One teaching: its choices, those right among them; none right = nobody names it. */
interface NamedTeaching {
  title: string
  choices: { features: readonly string[]; right: boolean }[]
}

function teachingsOf(known: KnownClass): NamedTeaching[] {
  return readApart(known).flatMap(({ speech }) => {
    const chooser = new NameChooser(speech, weighCandidates(speech, findKit(speech.text)), SHAPES.of(known.title))
    const times = speech.sentences.map(({ offset }) => speech.timeOf(offset))
    const from = (ms: number): number => {
      const at = times.findIndex((time) => time >= ms)
      return at < 0 ? times.length : at
    }
    const used = new Set<string>()
    let previous: string | null = null
    return known.taught
      .flatMap(({ isNamed, spans: [main] }) => (main ? [{ isNamed, main }] : []))
      .toSorted((a, b) => a.main.startMs - b.main.startMs)
      .map(({ isNamed, main }): NamedTeaching => {
        const teaching = { first: from(main.startMs - NEAR_MS), end: from(main.endMs) }
        const choices = chooser.choices(teaching, { used, previous }).map(({ choice, features }) => {
          const { name, entry, key } = choice.candidate
          return { features, right: isNamed(name) || (entry !== null && isNamed(entry.name)), key }
        })
        const right = choices.find((choice) => choice.right)
        if (right) used.add(right.key)
        previous = right?.key ?? previous
        return { title: known.title, choices }
      })
  })
}

/** Shapes as they are found in a class that is new. */
const SHAPES = shapesApart()
const NEAR_MS = 2000

interface NameTable {
  weights: ReadonlyMap<string, number>
  nobody: number
}

const LEAST_OFTEN = 4
const RIDGE = 1.5
const STEPS = 300
const RATE = 0.1

/** Which of the choices is right: odds of each against all and against none, with ridge, by steps along the whole gradient. */
function fit(teachings: readonly NamedTeaching[]): NameTable {
  const times = new Map<string, number>()
  for (const { choices } of teachings)
    for (const { features } of choices) for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) => (count >= LEAST_OFTEN ? [name] : []))
  const indexOf = new Map(names.map((name, index) => [name, index + 1]))
  const data = teachings.map(({ choices }) => ({
    rows: choices.map(({ features, right }) => ({ at: features.flatMap((one) => indexOf.get(one) ?? []), right })),
    named: choices.some(({ right }) => right),
  }))
  // the first weight is that of nobody naming it
  const weights = new Float64Array(names.length + 1)
  descend(weights, { steps: STEPS, rate: RATE }, () => {
    const slope = weights.map((weight, index) => (index === 0 ? 0 : weight * RIDGE))
    for (const { rows, named } of data) {
      const odds = rows.map(({ at }) => Math.exp(at.reduce((sum, index) => sum + (weights[index] ?? 0), 0)))
      const none = Math.exp(weights[0] ?? 0)
      const all = odds.reduce((sum, own) => sum + own, none)
      const good = named ? rows.reduce((sum, { right }, index) => sum + (right ? (odds[index] ?? 0) : 0), 0) : none
      rows.forEach(({ at, right }, index) => {
        const own = odds[index] ?? 0
        const miss = own / all - (named && right ? own / good : 0)
        for (const feature of at) slope[feature] = (slope[feature] ?? 0) + miss
      })
      slope[0] = (slope[0] ?? 0) + none / all - (named ? 0 : 1)
    }
    return slope
  })
  return {
    weights: new Map(names.map((name, index) => [name, weights[index + 1] ?? 0])),
    nobody: weights[0] ?? 0,
  }
}

const FOLDS = 8

function showApart(teachings: readonly NamedTeaching[]): void {
  const titles = [...new Set(teachings.map(({ title }) => title))]
  const sum = { named: 0, right: 0, unnamed: 0, left: 0 }
  for (let fold = 0; fold < FOLDS; fold++) {
    const left = new Set(titles.filter((_, index) => index % FOLDS === fold))
    const { weights, nobody } = fit(teachings.filter(({ title }) => !left.has(title)))
    for (const { choices } of teachings.filter(({ title }) => left.has(title))) {
      let best: { odds: number; right: boolean | null } = { odds: nobody, right: null }
      for (const { features, right } of choices) {
        const odds = features.reduce((all, one) => all + (weights.get(one) ?? 0), 0)
        if (odds > best.odds) best = { odds, right }
      }
      const isNamed = choices.some(({ right }) => right)
      if (isNamed) sum.named += 1
      else sum.unnamed += 1
      if (isNamed && best.right === true) sum.right += 1
      if (!isNamed && best.right === null) sum.left += 1
    }
  }
  console.log(`named right ${sum.right} of ${sum.named}; left unnamed ${sum.left} of ${sum.unnamed}`)
}

function write({ weights, nobody }: NameTable): void {
  const text = `/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
${writeRows(weights, '  ')}
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = ${nobody.toFixed(1)}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/name-weights.ts'), text)
}

const without = process.argv.includes('--without') ? (process.argv.at(-1) ?? '').split(',') : []
const classes = knownClasses(['dev', 'fit', 'more']).filter(
  ({ title }) => !without.some((one) => title.startsWith(one)),
)
const teachings = classes.flatMap(teachingsOf)
if (process.argv.includes('--apart')) showApart(teachings)
else write(fit(teachings))
