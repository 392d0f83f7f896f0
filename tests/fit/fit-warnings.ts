/**
 * Fits which words of a sentence warn of which hazard, and writes core/cautions/words/en/warning-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-warnings.js [--apart] && npx prettier --write core/cautions/words/en/warning-weights.ts; --apart only shows figures, a quarter of the classes left out of each fitting.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { hazardsIn } from '../../core/cautions/find-hazards.ts'
import type { HazardSlug } from '../../core/cautions/hazard-slugs.ts'
import { ALWAYS, warningFeatures, warningsBy, warningTable } from '../../core/cautions/weigh-warnings.ts'
import type { WarningRows } from '../../core/cautions/weigh-warnings.ts'
import { pushTo } from '../../core/draft/push-to.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { annotatedClasses } from './annotated-classes.ts'
import { fitOdds } from './fit-odds.ts'
import { warnedSentences } from './warning-examples.ts'
import type { WarnedSentence } from './warning-examples.ts'
import { writeRows } from './write-rows.ts'

/** A hazard that fewer sentences warn of is left to phrases. */
const LEAST_TOLD = 12
const FOUND = 2
/** Log of the odds of a sentence of which nothing is known. */
const FROM = -5

function fit(sentences: readonly WarnedSentence[]): WarningRows {
  const times = new Map<HazardSlug, number>()
  for (const { hazards } of sentences) for (const one of hazards) times.set(one, (times.get(one) ?? 0) + 1)
  const rows = sentences.map(({ text, hazards }) => ({ features: [...warningFeatures(text)], hazards }))
  return [...times].flatMap(([hazard, told]) => {
    if (told < LEAST_TOLD) return []
    const cases = rows.map(({ features, hazards }) => {
      const sought = hazards.has(hazard)
      return { features, sought, weight: sought ? FOUND : 1 }
    })
    const weights = fitOdds(cases, { leastOften: 3, ridge: 1, steps: 120, from: FROM })
    weights.set(ALWAYS, FROM + (weights.get(ALWAYS) ?? 0))
    return [[hazard, JSON.parse(`[${writeRows(weights, '').replace(/,$/, '')}]`) as [number, string][]] as const]
  })
}

const FOLDS = 4

function showApart(sentences: readonly WarnedSentence[]): void {
  const titles = [...new Set(sentences.map(({ title }) => title))]
  const foldOf = new Map(titles.map((title, index) => [title, index % FOLDS]))
  const tables = Array.from({ length: FOLDS }, (_, fold) =>
    warningTable(fit(sentences.filter(({ title }) => foldOf.get(title) !== fold))),
  )
  const required = new Map(
    annotatedClasses(['dev', 'fit', 'more']).flatMap(({ title, exercises }) =>
      exercises.map(({ requiredCautions }, index) => [keyOf(title, index), requiredCautions] as const),
    ),
  )
  for (const least of [-3, -2.5, -2, -1.5, -1, 0]) {
    const sums = { told: 0, phrases: 0, either: 0, untold: 0, wrongPhrases: 0, wrongEither: 0 }
    const byExercise = groupBy(sentences)
    for (const [key, said] of byExercise) {
      const table = tables[foldOf.get(said[0]?.title ?? '') ?? 0] ?? new Map()
      for (const { reason, spoken } of required.get(key) ?? []) {
        const isTold = said.some(({ hazards }) => hazards.has(reason as HazardSlug))
        const byPhrases = said.some(({ text }) => hazardsIn(text).includes(reason as HazardSlug))
        const byEither =
          byPhrases || said.some(({ text }) => warningsBy(text, table, least).includes(reason as HazardSlug))
        if (isTold) sums.told += 1
        if (isTold && byPhrases) sums.phrases += 1
        if (isTold && byEither) sums.either += 1
        if (!spoken) sums.untold += 1
        if (!spoken && byPhrases) sums.wrongPhrases += 1
        if (!spoken && byEither) sums.wrongEither += 1
      }
    }
    const { told, phrases, either, untold, wrongPhrases, wrongEither } = sums
    console.log(
      `odds over ${least}: said in the exercise ${told}, heard by phrases ${phrases}, with words ${either}; unsaid ${untold}, heard by phrases ${wrongPhrases}, with words ${wrongEither}`,
    )
  }
}

const keyOf = (title: string, exercise: number): string => `${title} ${exercise}`

function groupBy(sentences: readonly WarnedSentence[]): Map<string, WarnedSentence[]> {
  const groups = new Map<string, WarnedSentence[]>()
  for (const one of sentences) pushTo(groups, keyOf(one.title, one.exercise), one)
  return groups
}

function write(rows: WarningRows): void {
  const file = path.join(projectRoot(), 'core/cautions/words/en/warning-weights.ts')
  const head = readFileSync(file, 'utf8').replace(/ = \[[^]*$/, ' = ')
  writeFileSync(file, `${head}${JSON.stringify(rows)}\n`)
}

const sentences = warnedSentences()
if (process.argv.includes('--apart')) showApart(sentences)
else write(fit(sentences))
