/** Pairs of exercises taught one behind the other, whether they are done in turns, and weights fitted on them. */
import { readDoseCases } from '../../core/draft/attach-doses.ts'
import { findExercises } from '../../core/draft/find-exercises.ts'
import { findKit } from '../../core/draft/find-kit.ts'
import { linkFeatures } from '../../core/draft/link-features.ts'
import type { LinkTable } from '../../core/draft/weigh-links.ts'
import type { AnnotatedClass } from './annotated-classes.ts'
import { descend } from './descend.ts'
import { matchTeachings } from './match-teachings.ts'
import { readApart } from './read-apart.ts'

/** Two exercises taught one behind the other. */
export interface LinkCase {
  title: string
  plain: boolean
  features: readonly string[]
  linked: boolean
}

/** Those of one class, as written and without punctuation, that were found and are annotated. */
export function linkCasesOf(annotated: AnnotatedClass): LinkCase[] {
  const { title } = annotated
  return readApart(annotated).flatMap(({ speech, plain }) => {
    const { teachings, namings, blocks } = findExercises(speech, findKit(speech.text))
    const { linked } = readDoseCases(speech, teachings, namings, blocks)
    const golds = matchTeachings(speech, teachings, annotated.exercises)
    return linkFeatures(linked).flatMap((features, index): LinkCase[] => {
      const [first, second] = [golds.get(index), golds.get(index + 1)]
      if (!first || !second) return []
      const isLinked = first.prescription?.groupWith.includes(second.name) ?? false
      return [{ title, plain, features, linked: isLinked }]
    })
  })
}

const LEAST_OFTEN = 5
const RIDGE = 2
const STEPS = 300
const RATE = 0.1

/** Logistic regression with ridge, by steps along the whole gradient. */
export function fitLinks(cases: readonly LinkCase[]): Map<string, number> {
  const times = new Map<string, number>()
  for (const { features } of cases) for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) => (count >= LEAST_OFTEN ? [name] : []))
  const indexOf = new Map(names.map((name, index) => [name, index]))
  const rows = cases.map(({ features, linked }) => ({
    at: Int32Array.from(features.flatMap((one) => indexOf.get(one) ?? [])),
    sought: linked ? 1 : 0,
  }))
  const weights = new Float64Array(names.length)
  descend(weights, { steps: STEPS, rate: RATE }, () => {
    const slope = weights.map((weight) => weight * RIDGE)
    for (const { at, sought } of rows) {
      const miss = 1 / (1 + Math.exp(-at.reduce((sum, index) => sum + (weights[index] ?? 0), 0))) - sought
      for (const index of at) slope[index] = (slope[index] ?? 0) + miss
    }
    return slope
  })
  return new Map(names.map((name, index) => [name, weights[index] ?? 0]))
}

export const FOLDS = 8

/** For each class the weights that are fitted without it: links as they are found in a class that is new. */
export function linksApart(classes: readonly AnnotatedClass[]): (title: string) => LinkTable | undefined {
  const titles = classes.map(({ title }) => title)
  const cases = classes.flatMap(linkCasesOf)
  const tables = Array.from({ length: FOLDS }, (_, fold) =>
    fitLinks(cases.filter(({ title }) => titles.indexOf(title) % FOLDS !== fold)),
  )
  return (title) => tables[titles.indexOf(title) % FOLDS]
}
