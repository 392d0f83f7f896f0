/**
 * Fits the weights of links on the annotated classes and writes core/draft/words/en/link-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-links.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/link-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { projectRoot } from '../../server/setup/project-root.ts'
import { annotatedClasses } from './annotated-classes.ts'
import { FOLDS, fitLinks, linkCasesOf } from './link-cases.ts'
import type { LinkCase } from './link-cases.ts'
import { writeRows } from './write-rows.ts'

/** Links by rules and weighed, an eighth of the classes left out of each fitting. */
function showApart(cases: readonly LinkCase[]): void {
  const titles = [...new Set(cases.map(({ title }) => title))]
  const sums = new Map<string, { hit: number; wanted: number; found: number }>()
  const add = (key: string, linked: boolean, found: boolean): void => {
    const sum = sums.get(key) ?? { hit: 0, wanted: 0, found: 0 }
    sums.set(key, sum)
    if (linked) sum.wanted += 1
    if (found) sum.found += 1
    if (linked && found) sum.hit += 1
  }
  for (let fold = 0; fold < FOLDS; fold++) {
    const left = new Set(titles.filter((_, index) => index % FOLDS === fold))
    const weights = fitLinks(cases.filter(({ title }) => !left.has(title)))
    for (const { title, features, linked, plain } of cases) {
      if (!left.has(title)) continue
      const odds = features.reduce((sum, feature) => sum + (weights.get(feature) ?? 0), 0)
      const kind = plain ? 'plain' : 'as written'
      add(`${kind} by rules`, linked, features.includes('ruled'))
      for (const least of [0, -0.3, -0.6]) add(`${kind} above ${least}`, linked, odds > least)
    }
  }
  for (const [key, { hit, wanted, found }] of sums)
    console.log(`${key}: F1 ${((200 * hit) / (wanted + found)).toFixed(1)} (${hit} of ${wanted}, ${found} found)`)
}

function write(weights: ReadonlyMap<string, number>): void {
  const text = `/**
 * What each feature of link-features.ts adds to the log of the odds that an exercise is done in turns with the one behind it.
 * Fitted by tests/fit/fit-links.ts, not by hand.
 */
export const LINK_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
${writeRows(weights, '  ')}
]
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/link-weights.ts'), text)
}

const without = process.argv.includes('--without') ? (process.argv.at(-1) ?? '').split(',') : []
const cases = annotatedClasses(['dev', 'fit', 'more'])
  .filter(({ title }) => !without.some((one) => title.startsWith(one)))
  .flatMap(linkCasesOf)
if (process.argv.includes('--apart')) showApart(cases)
else write(fitLinks(cases))
