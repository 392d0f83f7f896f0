/** Pairs of exercises taught one behind the other, whether they are done in turns, and weights fitted on them. */
import { readDoseCases } from '../../core/draft/attach-doses.ts'
import { findExercises } from '../../core/draft/find-exercises.ts'
import { findKit } from '../../core/draft/find-kit.ts'
import { linkFeatures } from '../../core/draft/link-features.ts'
import type { LinkTable } from '../../core/draft/weigh-links.ts'
import type { AnnotatedClass } from './annotated-classes.ts'
import { fitOdds } from './fit-odds.ts'
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

export function fitLinks(cases: readonly LinkCase[]): Map<string, number> {
  return fitOdds(
    cases.map(({ features, linked }) => ({ features, sought: linked, weight: 1 })),
    { leastOften: 5, ridge: 2, steps: 300 },
  )
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
