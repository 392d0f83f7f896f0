/**
 * Fits which words of a class tell whom it is meant for, and writes core/draft/words/en/audience-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-audience.js [--apart] && npx prettier --write core/draft/words/en/audience-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import {
  ALWAYS,
  audienceParts,
  audienceTables,
  likeliest,
  oddsOfAudiences,
  phrasedAudience,
  WEIGHT_PARTS,
} from '../../core/draft/hear-audience.ts'
import type { AudienceTables } from '../../core/draft/hear-audience.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import type { Audience } from '../../shared/log-sheet.ts'
import { annotatedClasses } from './annotated-classes.ts'
import type { AnnotatedClass } from './annotated-classes.ts'
import { fitOdds } from './fit-odds.ts'
import { writeRows } from './write-rows.ts'

/** Classes for the pregnant are too few to learn from: those are heard by phrases alone. */
const FITTED = ['rehab', 'older-adults'] as const
const FALLS: ReadonlySet<string> = new Set(['fall-risk', 'dizziness-rise', 'bone-health'])
const UNBORN: ReadonlySet<string> = new Set(['supine-pregnancy', 'coning', 'overstretch', 'pelvic-girdle-pain'])

interface Heard {
  title: string
  text: string
  words: string[]
  audience: Audience
}

/** Whom a class is meant for, by the cautions that its annotation requires. */
function audienceOf({ exercises }: AnnotatedClass): Audience {
  const withOne = (slugs: ReadonlySet<string>): number =>
    exercises.filter(({ requiredCautions }) => requiredCautions.some(({ reason }) => slugs.has(reason))).length
  if (withOne(UNBORN) > 0) return 'pregnancy'
  if (withOne(new Set(['pain-stop'])) * 2 >= exercises.length) return 'rehab'
  return withOne(FALLS) >= 3 ? 'older-adults' : 'general'
}

function heardClasses(): Heard[] {
  return annotatedClasses(['dev', 'fit', 'more']).map((one) => {
    const transcript = parseTranscript(one.text)
    if (transcript.kind !== 'timed') throw new Error(`${one.title} has no times.`)
    const text = transcript.lines.map((line) => line.text).join('\n')
    return { title: one.title, text, words: [ALWAYS, ...audienceParts(text).flat()], audience: audienceOf(one) }
  })
}

type Filed = [Audience, [weight: number, words: string][]][]

/** A class missed weighs more than one heard in vain. */
const MISSED = 5

function fit(classes: readonly Heard[]): Filed {
  return FITTED.map((audience) => {
    const cases = classes.map(({ words, audience: meant }) => ({
      features: words,
      sought: meant === audience,
      weight: meant === audience ? MISSED : 1,
    }))
    const weights = fitOdds(cases, { leastOften: 5, ridge: 3, steps: 250 })
    const parts = [...weights].map(([word, weight]) => [word, weight * WEIGHT_PARTS] as const)
    return [audience, JSON.parse(`[${writeRows(parts, '').replace(/,$/, '')}]`) as [number, string][]]
  })
}

const FOLDS = 8

function showApart(classes: readonly Heard[]): void {
  const tables: AudienceTables[] = Array.from({ length: FOLDS }, (_, fold) =>
    audienceTables(fit(classes.filter((_, index) => index % FOLDS !== fold))),
  )
  const odds = classes.map(({ text }, index) => oddsOfAudiences(text, tables[index % FOLDS] ?? []))
  for (const least of [-3, -2.5, -2.25, -2, -1.75, -1.5, -1, 0]) {
    const heard = classes.map(
      ({ text }, index) => phrasedAudience(text) ?? likeliest(odds[index] ?? [], least) ?? 'general',
    )
    const wrong = classes.filter(({ audience }, index) => audience !== heard[index])
    const guarded = classes.filter(({ audience }) => audience !== 'general')
    const missed = wrong.filter(({ audience }) => audience !== 'general')
    const inVain = wrong.filter(({ audience }) => audience === 'general').map(({ title }) => title)
    console.log(
      `odds over ${least}: ${guarded.length - missed.length} of ${guarded.length} right, in vain ${inVain.length} of ${classes.length - guarded.length}: ${inVain.slice(0, 5).join(', ')}`,
    )
  }
}

function write(filed: Filed): void {
  const file = path.join(projectRoot(), 'core/draft/words/en/audience-weights.ts')
  const head = readFileSync(file, 'utf8').replace(/ = \[[^]*$/, ' = ')
  writeFileSync(file, `${head}${JSON.stringify(filed)}\n`)
}

const classes = heardClasses()
if (process.argv.includes('--apart')) showApart(classes)
else write(fit(classes))
