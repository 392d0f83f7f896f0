/**
 * Fits the weights of breaks on the marks of our own punctuated classes and writes core/draft/words/en/break-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-breaks.js [--apart | --parts] && npx prettier --write core/draft/words/en/break-weights.ts; --apart only shows figures, each class left out of its fitting; --parts writes what other fittings read classes by (apart-tables.ts).
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { likeliestMarks } from '../../core/draft/weigh-breaks.ts'
import type { BreakTable } from '../../core/draft/weigh-breaks.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { writeApart } from './apart-tables.ts'
import { hearMarks } from '../../core/draft/hear-breaks.ts'
import { readApartNets } from './apart-tables.ts'
import { breakExamples } from './break-examples.ts'
import type { BreakExample } from './break-examples.ts'
import { fitBreaks, fitBreaksApart } from './weigh-gaps.ts'
import { writeSigns } from './write-signs.ts'

/** Whole classes: how many marks are found at all, and how many full stops as such. */
function showApart(examples: readonly BreakExample[]): void {
  const { tables, of } = fitBreaksApart(examples)
  const netFor = readApartNets('break-net')
  for (const group of ['corpus', 'own', 'short'] as const) {
    const any = { hit: 0, wanted: 0, found: 0 }
    const stops = { hit: 0, wanted: 0, found: 0 }
    for (const { title, words, marks, features } of examples.filter((one) => one.group === group)) {
      likeliestMarks(words, features, {
        table: tables[of[title] ?? 0],
        heard: hearMarks(words, netFor(title)),
      }).forEach((found, index) => {
        const wanted = marks[index] ?? 'none'
        if (index === 0) return
        count(any, wanted !== 'none', found !== 'none')
        count(stops, wanted === 'stop', found === 'stop')
      })
    }
    console.log(`${group}: marks ${figures(any)}; full stops ${figures(stops)}`)
  }
}

interface Sum {
  hit: number
  wanted: number
  found: number
}

function count(sum: Sum, wanted: boolean, found: boolean): void {
  if (wanted) sum.wanted += 1
  if (found) sum.found += 1
  if (wanted && found) sum.hit += 1
}

function figures({ hit, wanted, found }: Sum): string {
  return `F1 ${((200 * hit) / (wanted + found)).toFixed(1)} (${hit} of ${wanted}, ${found} found)`
}

/** By sign and then by weight. */
function write(table: BreakTable): void {
  const marks = (['comma', 'stop'] as const).map((mark) => {
    const entries = [...table].map(([feature, scores]) => [feature, scores[mark]] as const)
    return `  ${mark}: {\n${writeSigns(entries, '', 4)}\n  },`
  })
  const text = `/**
 * How much each feature of a gap between words (break-features.ts) speaks for a comma or a full stop there, against no mark:
 * the natural log of odds. By the sign, the words or classes that have it. Fitted by tests/fit/fit-breaks.ts, not by hand.
 */
type Rows = readonly (readonly [weight: number, of: string])[]

export const BREAK_WEIGHTS: Readonly<Record<'comma' | 'stop', Readonly<Record<string, Rows>>>> = {
${marks.join('\n')}
}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/break-weights.ts'), text)
}

const examples = breakExamples()
if (process.argv.includes('--apart')) showApart(examples)
else if (process.argv.includes('--parts')) writeApart('breaks', fitBreaksApart(examples))
else write(fitBreaks(examples))
