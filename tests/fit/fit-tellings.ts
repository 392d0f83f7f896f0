/**
 * Fits how words beside a number tell a dose from chat about numbers, and writes core/dose/words/en/telling-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-tellings.js [--apart | --parts] && npx prettier --write core/dose/words/en/telling-weights.ts; --apart only shows figures, an eighth left out of each fitting; --parts writes what the fittings behind it read classes by.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { ALWAYS, tellingFeatures } from '../../core/dose/weigh-telling.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { writeApart } from './apart-tables.ts'
import { fitOdds } from './fit-odds.ts'
import { tellingExamples } from './telling-examples.ts'
import type { TellingExample } from './telling-examples.ts'
import { writeRows } from './write-rows.ts'

function fit(examples: readonly TellingExample[]): Map<string, number> {
  const cases = examples.map(({ text, told, weight }) => ({ features: featuresOf(text), sought: told, weight }))
  return fitOdds(cases, { leastOften: 2, ridge: 2, steps: 200 })
}

function featuresOf(text: string): string[] {
  return [ALWAYS, ...tellingFeatures(text)]
}

const FOLDS = 8

/** Tables that were each fitted without an eighth of the classes and sets of phrases. */
function fitApart(examples: readonly TellingExample[]) {
  const titles = [...new Set(examples.map(({ from }) => from))]
  const of = Object.fromEntries(titles.map((title, index) => [title, index % FOLDS]))
  const tables = Array.from({ length: FOLDS }, (_, fold) => fit(examples.filter(({ from }) => of[from] !== fold)))
  return { tables, of }
}

function showApart(examples: readonly TellingExample[]): void {
  const { tables, of } = fitApart(examples)
  const sums = new Map<string, [right: number, all: number]>()
  for (const { from, text, told } of examples) {
    const table = tables[of[from] ?? 0]
    const odds = featuresOf(text).reduce((sum, one) => sum + (table?.get(one) ?? 0), 0)
    const kind = `${from.startsWith('phrases') ? 'phrases' : 'classes'}, ${told ? 'doses' : 'no doses'}`
    const [right, all] = sums.get(kind) ?? [0, 0]
    sums.set(kind, [right + (odds > 0 === told ? 1 : 0), all + 1])
  }
  for (const [kind, [right, all]] of sums) console.log(`${kind}: ${((100 * right) / all).toFixed(1)} % of ${all}`)
}

function write(weights: ReadonlyMap<string, number>): void {
  const file = path.join(projectRoot(), 'core/dose/words/en/telling-weights.ts')
  const head = readFileSync(file, 'utf8').replace(/ = \[[^]*$/, ' = [')
  writeFileSync(file, `${head}\n${writeRows(weights, '  ')}\n]\n`)
}

const examples = tellingExamples()
if (process.argv.includes('--apart')) showApart(examples)
else if (process.argv.includes('--parts')) writeApart('tellings', fitApart(examples))
else write(fit(examples))
