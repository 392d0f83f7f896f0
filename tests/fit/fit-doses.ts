/**
 * Fits the weights of doses on the annotated classes and writes core/draft/words/en/dose-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-doses.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/dose-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { readDoseCases } from '../../core/draft/attach-doses.ts'
import { DOSE_QUESTIONS } from '../../core/draft/dose-option.ts'
import type { DoseCase, DoseOption, DoseQuestion } from '../../core/draft/dose-option.ts'
import { DoseOptions } from '../../core/draft/dose-options.ts'
import { findExercises } from '../../core/draft/find-exercises.ts'
import type { Teaching } from '../../core/draft/find-exercises.ts'
import { findKit } from '../../core/draft/find-kit.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import type { Speech } from '../../core/draft/read-speech.ts'
import { isUnpunctuated } from '../../core/draft/split-speech.ts'
import { marksOf } from '../../core/draft/weigh-options.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import type { Range } from '../../shared/log-sheet.ts'
import { plain } from '../core/draft/spoken-class.ts'
import { annotatedClasses } from './annotated-classes.ts'
import type { AnnotatedClass, AnnotatedDose, AnnotatedExercise } from './annotated-classes.ts'
import { breaksApart } from './weigh-gaps.ts'
import { descend } from './descend.ts'

/** One exercise with its annotated dose; null = none. */
interface DosedCase {
  title: string
  plain: boolean
  asked: DoseCase
  gold: AnnotatedDose | null
  /** It is taught right behind the one before it in the list. */
  next: boolean
}

function casesOf(annotated: AnnotatedClass): DosedCase[] {
  const { title, text } = annotated
  const texts = isUnpunctuated(text) ? [text] : [text, plain(text)]
  return texts.flatMap((said, at) => {
    const transcript = parseTranscript(said)
    if (transcript.kind !== 'timed') throw new Error(`${title} has no times.`)
    const speech = readSpeech(transcript.lines, at === 0 ? undefined : BREAKS.of(title))
    const { teachings, namings, blocks } = findExercises(speech, findKit(speech.text))
    const { cases } = readDoseCases(speech, teachings, namings, blocks)
    const golds = matched(speech, teachings, annotated.exercises)
    let last = -2
    return cases.flatMap((asked, index): DosedCase[] => {
      const exercise = golds.get(index)
      if (!exercise) return []
      const next = last === index - 1
      last = index
      return [{ title, plain: at > 0, asked, gold: exercise.prescription, next }]
    })
  })
}

/** Breaks as they are found in a class that is new. */
const BREAKS = breaksApart()

/** The annotated exercise of each teaching, by the time they share. */
function matched(
  speech: Speech,
  teachings: readonly Teaching[],
  exercises: readonly AnnotatedExercise[],
): Map<number, AnnotatedExercise> {
  const pairs = exercises.flatMap((exercise) =>
    teachings.flatMap(({ spans: [main] }, index) => {
      if (!main) return []
      const [from, to] = [speech.timeOf(main.offset) / 1000, speech.timeOf(main.end) / 1000]
      const both = Math.min(to, exercise.end) - Math.max(from, exercise.start)
      const share = both / (Math.max(to, exercise.end) - Math.min(from, exercise.start))
      return share >= LEAST_SHARE ? [{ exercise, index, share }] : []
    }),
  )
  const found = new Map<number, AnnotatedExercise>()
  for (const { exercise, index } of pairs.toSorted((a, b) => b.share - a.share))
    if (!found.has(index) && ![...found.values()].includes(exercise)) found.set(index, exercise)
  return found
}

const LEAST_SHARE = 0.3

type Value = Range | 'max' | boolean | null

function isSame(value: Value, said: AnnotatedDose[keyof AnnotatedDose]): boolean {
  if (value === null || said === null || typeof value !== 'object') return (value ?? null) === (said ?? null)
  const [min, max] = Array.isArray(said) ? said : [said, said]
  return value.min === min && value.max === max
}

const AMOUNTS = [
  ['reps', 'reps'],
  ['distanceM', 'distanceM'],
  ['workSeconds', 'seconds'],
  ['holdSeconds', 'holdSeconds'],
] as const

/** The kind of amount a dose has: what is counted, else the distance, the time, the hold. */
function kindOf(gold: AnnotatedDose | null): (typeof AMOUNTS)[number] | null {
  return AMOUNTS.find(([, field]) => gold !== null && gold[field] !== null) ?? null
}

/** Whether an answer is the annotated one; null where the question is not answered by the annotation. */
function isRight(question: DoseQuestion, { kind, value }: DoseOption, gold: AnnotatedDose | null): boolean | null {
  const amount = kindOf(gold)
  if (question === 'amount')
    return amount === null || !gold ? kind === null : kind === amount[0] && isSame(value, gold[amount[1]])
  if (!gold) return null
  if (question === 'hold') return isSame(value, amount?.[0] === 'holdSeconds' ? null : gold.holdSeconds)
  if (question === 'sides') return value === gold.perSide
  return isSame(value, question === 'sets' ? gold.sets : gold.restSeconds)
}

/** The marks of each way in which an answer is told. */
function featuresOf({ marks, rows }: DoseOption): string[][] {
  const own = marks.map((mark) => `option/${mark}`)
  if (rows.length === 0) return [own]
  return rows.map((row) => {
    const { how, marks: told } = marksOf(row)
    return [...own, ...told.map((mark) => `${how}/${mark}`)]
  })
}

interface Asked {
  rows: { features: string[]; right: boolean }[]
}

type Questions = Record<DoseQuestion, Asked[]>

/** The questions of some exercises with their right answers. */
function questionsOf(cases: readonly DosedCase[]): Questions {
  const asked: Questions = { amount: [], hold: [], sets: [], sides: [], rest: [] }
  let before: DoseOption[] = []
  for (const { asked: one, gold, next } of cases) {
    const questions = new DoseOptions(one, next ? before : [])
    const right = new Map<DoseQuestion, DoseOption>()
    for (const question of DOSE_QUESTIONS) {
      const options = questions.ask(question, right.get('amount') ?? null)
      const answer = options.find((option) => isRight(question, option, gold) === true)
      if (!answer) continue
      right.set(question, answer)
      const rows = options.flatMap((option) =>
        featuresOf(option).map((features) => ({ features, right: isRight(question, option, gold) === true })),
      )
      asked[question].push({ rows })
    }
    before = [...right].flatMap(([question, option]) => (CARRIED.has(question) ? [option] : []))
  }
  return asked
}

/** Answers that the exercise behind is asked with. */
const CARRIED: ReadonlySet<DoseQuestion> = new Set(['amount', 'sets', 'rest'])

const LEAST_OFTEN = 4
const RIDGE = 1.5
const STEPS = 200
const RATE = 0.1

/** Which answer is right: odds of each way it is told against all, with ridge, by steps along the whole gradient. */
function fit(asked: readonly Asked[]): Map<string, number> {
  const times = new Map<string, number>()
  for (const { rows } of asked)
    for (const { features } of rows) for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) => (count >= LEAST_OFTEN ? [name] : []))
  const indexOf = new Map(names.map((name, index) => [name, index]))
  const data = asked.map(({ rows }) =>
    rows.map(({ features, right }) => ({
      at: Int32Array.from(features.flatMap((one) => indexOf.get(one) ?? [])),
      right,
    })),
  )
  const weights = new Float64Array(names.length)
  descend(weights, { steps: STEPS, rate: RATE }, () => {
    const slope = weights.map((weight) => weight * RIDGE)
    for (const rows of data) {
      const odds = rows.map(({ at }) => Math.exp(at.reduce((sum, index) => sum + (weights[index] ?? 0), 0)))
      const all = odds.reduce((sum, one) => sum + one, 0)
      const good = rows.reduce((sum, { right }, index) => sum + (right ? (odds[index] ?? 0) : 0), 0)
      rows.forEach(({ at, right }, index) => {
        const own = odds[index] ?? 0
        const miss = own / all - (right ? own / good : 0)
        for (const feature of at) slope[feature] = (slope[feature] ?? 0) + miss
      })
    }
    return slope
  })
  return new Map(names.map((name, index) => [name, weights[index] ?? 0]))
}

type Tables = Record<DoseQuestion, Map<string, number>>

function fitAll(cases: readonly DosedCase[]): Tables {
  const asked = questionsOf(cases)
  return {
    amount: fit(asked.amount),
    hold: fit(asked.hold),
    sets: fit(asked.sets),
    sides: fit(asked.sides),
    rest: fit(asked.rest),
  }
}

const FOLDS = 8

/** Doses wholly right and each answer right, of exercises that were found and have a dose, by rules and picked; an eighth of the classes left out of each fitting. */
function showApart(cases: readonly DosedCase[]): void {
  const titles = [...new Set(cases.map(({ title }) => title))]
  const sums = new Map<string, Map<string, number>>()
  for (let fold = 0; fold < FOLDS; fold++) {
    const left = new Set(titles.filter((_, index) => index % FOLDS === fold))
    const tables = fitAll(cases.filter(({ title }) => !left.has(title)))
    let before: DoseOption[] = []
    for (const one of cases.filter(({ title }) => left.has(title))) {
      const picked = pickBy(tables, one, before)
      before = [...picked].flatMap(([question, option]) => (CARRIED.has(question) ? [option] : []))
      count(sums, one, picked)
    }
  }
  for (const [kind, sum] of sums) {
    const n = sum.get('doses') ?? 0
    const shown = [...sum].map(
      ([what, times]) => `${what} ${what === 'doses' ? times : ((100 * times) / n).toFixed(1)}`,
    )
    console.log(`${kind}: ${shown.join(', ')}`)
  }
}

function pickBy(
  tables: Tables,
  { asked, next }: DosedCase,
  before: readonly DoseOption[],
): Map<DoseQuestion, DoseOption> {
  const questions = new DoseOptions(asked, next ? before : [])
  const picked = new Map<DoseQuestion, DoseOption>()
  for (const question of DOSE_QUESTIONS) {
    const options = questions.ask(question, picked.get('amount') ?? null)
    const table = tables[question]
    const odds = options.map((option) =>
      featuresOf(option).reduce(
        (sum, features) => sum + Math.exp(features.reduce((all, one) => all + (table.get(one) ?? 0), 0)),
        0,
      ),
    )
    const option = options[odds.indexOf(Math.max(...odds))]
    if (option) picked.set(question, option)
  }
  return picked
}

function count(
  sums: Map<string, Map<string, number>>,
  { asked, gold, plain: isPlain, title }: DosedCase,
  picked: ReadonlyMap<DoseQuestion, DoseOption>,
): void {
  if (!gold) return
  const kind = `${Number.parseInt(title, 10) >= FIRST_NEW ? 'new' : 'old'} ${isPlain ? 'plain' : 'as written'}`
  const sum = sums.get(kind) ?? new Map<string, number>()
  sums.set(kind, sum)
  const add = (what: string, is: boolean): void => void sum.set(what, (sum.get(what) ?? 0) + (is ? 1 : 0))
  add('doses', true)
  const right = DOSE_QUESTIONS.map((question) => {
    const option = picked.get(question)
    const isHeld = question === 'hold' && picked.get('amount')?.kind === 'holdSeconds'
    return (
      option !== undefined && (isHeld ? kindOf(gold)?.[0] === 'holdSeconds' : isRight(question, option, gold) === true)
    )
  })
  add('by rules', isRuledRight(asked, gold))
  add('picked', right.slice(0, 4).every(Boolean))
  DOSE_QUESTIONS.forEach((question, index) => {
    add(question, right[index] === true)
  })
  add('rest by rules', isSame(asked.ruled?.restSeconds ?? null, gold.restSeconds))
}

/** Classes from here on were written when the rules for doses stood. */
const FIRST_NEW = 90

function isRuledRight({ ruled }: DoseCase, gold: AnnotatedDose): boolean {
  if (!ruled || ruled.perSide !== gold.perSide || !isSame(ruled.sets, gold.sets)) return false
  return AMOUNTS.every(([field, said]) => isSame(ruled[field], gold[said]))
}

function write(tables: Tables): void {
  const questions = DOSE_QUESTIONS.map((question) => `  ${question}: {\n${writeWays(tables[question])}\n  },`)
  const text = `/**
 * What each mark of an answer adds to the log of the odds that it is the right one: for each question the marks of the answer,
 * and those of each way in which a saying tells it (dose-options.ts). Fitted by tests/fit/fit-doses.ts, not by hand.
 */
export const DOSE_WEIGHTS: Readonly<
  Record<
    'amount' | 'hold' | 'sets' | 'sides' | 'rest',
    Readonly<Record<string, readonly (readonly [weight: number, marks: string])[]>>
  >
> = {
${questions.join('\n')}
}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/dose-weights.ts'), text)
}

function writeWays(weights: ReadonlyMap<string, number>): string {
  const ways = new Map<string, Map<string, string[]>>()
  for (const [name, weight] of weights) {
    if (Math.abs(weight) < 0.05) continue
    const [how = '', mark = ''] = [name.slice(0, name.indexOf('/')), name.slice(name.indexOf('/') + 1)]
    const rows = ways.get(how) ?? new Map<string, string[]>()
    ways.set(how, rows)
    const key = weight.toFixed(1)
    rows.set(key, [...(rows.get(key) ?? []), mark])
  }
  return [...ways]
    .map(([how, rows]) => {
      const lines = [...rows]
        .sort(([a], [b]) => Number(b) - Number(a))
        .map(([weight, marks]) => `      [${weight}, ${JSON.stringify(marks.sort().join('|'))}],`)
      return `    ${JSON.stringify(how)}: [\n${lines.join('\n')}\n    ],`
    })
    .join('\n')
}

const without = process.argv.includes('--without') ? (process.argv.at(-1) ?? '').split(',') : []
const cases = annotatedClasses(['dev', 'fit', 'more'])
  .filter(({ title }) => !without.some((one) => title.startsWith(one)))
  .flatMap(casesOf)
if (process.argv.includes('--apart')) showApart(cases)
else write(fitAll(cases))
