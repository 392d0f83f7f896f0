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
import { findKit } from '../../core/draft/find-kit.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import { isUnpunctuated } from '../../core/draft/split-speech.ts'
import { agreed } from '../../core/draft/pick-doses.ts'
import { pushTo } from '../../core/draft/push-to.ts'
import { marksOf } from '../../core/draft/weigh-options.ts'
import type { Weighed } from '../../core/draft/weigh-options.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import type { LinkTable } from '../../core/draft/weigh-links.ts'
import { plain } from '../core/draft/spoken-class.ts'
import { annotatedClasses } from './annotated-classes.ts'
import type { AnnotatedClass, AnnotatedDose } from './annotated-classes.ts'
import { breaksApart } from './weigh-gaps.ts'
import { descend } from './descend.ts'
import { linksApart } from './link-cases.ts'
import { matchTeachings } from './match-teachings.ts'
import { writeRows } from './write-rows.ts'

/** One exercise with its annotated dose; null = none. */
interface DosedCase {
  title: string
  plain: boolean
  /** Its place among all that were found. */
  index: number
  asked: DoseCase
  gold: AnnotatedDose | null
  /** It is taught right behind the one before it in the list. */
  next: boolean
}

function casesOf(annotated: AnnotatedClass, links: (title: string) => LinkTable | undefined): DosedCase[] {
  const { title, text } = annotated
  const texts = isUnpunctuated(text) ? [text] : [text, plain(text)]
  return texts.flatMap((said, at) => {
    const transcript = parseTranscript(said)
    if (transcript.kind !== 'timed') throw new Error(`${title} has no times.`)
    const speech = readSpeech(transcript.lines, at === 0 ? undefined : BREAKS.of(title))
    const { teachings, namings, blocks } = findExercises(speech, findKit(speech.text))
    const { cases } = readDoseCases(speech, teachings, namings, blocks, links(title))
    const golds = matchTeachings(speech, teachings, annotated.exercises)
    let last = -2
    return cases.flatMap((asked, index): DosedCase[] => {
      const exercise = golds.get(index)
      if (!exercise) return []
      const next = last === index - 1
      last = index
      return [{ title, plain: at > 0, index, asked, gold: exercise.prescription, next }]
    })
  })
}

/** Breaks as they are found in a class that is new. */
const BREAKS = breaksApart()

type Value = DoseOption['value']

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
  if (question === 'scheme') return value === gold.scheme
  return isSame(value, question === 'sets' ? gold.sets : gold.restSeconds)
}

/** The marks of each way in which an answer is told. */
function featuresOf({ marks, rows }: DoseOption): string[][] {
  const own = marks.map((mark) => `option/${mark}`)
  if (rows.length === 0) return [own]
  return rows.map((row) => {
    const { how, marks: told } = marksOf(row)
    return [...own, ...told.flatMap((mark) => [`${how}/${mark}`, `${ANY_WAY}/${mark}`])]
  })
}

/** A mark counts for every way, and besides for its own: so each way learns from the others. */
const ANY_WAY = '*'

interface Asked {
  rows: { features: string[]; right: boolean }[]
}

type Questions = Record<DoseQuestion, Asked[]>

/** The questions of some exercises with their right answers. */
function questionsOf(cases: readonly DosedCase[]): Questions {
  const asked: Questions = { amount: [], hold: [], sets: [], sides: [], rest: [], scheme: [] }
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

const LEAST_OFTEN = 5
const RIDGE = 3
const STEPS = 200
const RATE = 0.1

/** Which answer is right: odds of each way it is told against all, with ridge, by steps along the whole gradient. */
function fit(asked: readonly Asked[]): Map<string, number> {
  const times = new Map<string, number>()
  for (const { rows } of asked)
    for (const { features } of rows) for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) => (count >= LEAST_OFTEN ? [name] : []))
  const indexOf = new Map(names.map((name, index) => [name, index]))
  const data = asked.map(({ rows }) => flat(rows, indexOf))
  const weights = new Float64Array(names.length)
  descend(weights, { steps: STEPS, rate: RATE }, () => {
    const slope = weights.map((weight) => weight * RIDGE)
    for (const one of data) addSlope(slope, weights, one)
    return slope
  })
  return new Map(names.map((name, index) => [name, weights[index] ?? 0]))
}

/** The ways in which one question is answered: for each the indexes of its features up to `ends`, and whether it is right. */
interface FlatRows {
  features: Int32Array
  ends: Int32Array
  right: boolean[]
}

function flat(rows: Asked['rows'], indexOf: ReadonlyMap<string, number>): FlatRows {
  const known = rows.map(({ features }) => features.flatMap((one) => indexOf.get(one) ?? []))
  let end = 0
  return {
    features: Int32Array.from(known.flat()),
    ends: Int32Array.from(known.map(({ length }) => (end += length))),
    right: rows.map(({ right }) => right),
  }
}

/** Adds how the odds of each way miss what is right. */
function addSlope(slope: Float64Array, weights: Float64Array, { features, ends, right }: FlatRows): void {
  const odds = new Float64Array(ends.length)
  let [all, good, at] = [0, 0, 0]
  for (let row = 0; row < ends.length; row++) {
    let sum = 0
    for (const end = ends[row] ?? 0; at < end; at++) sum += weights[features[at] ?? 0] ?? 0
    const own = Math.exp(sum)
    odds[row] = own
    all += own
    if (right[row] === true) good += own
  }
  at = 0
  for (let row = 0; row < ends.length; row++) {
    const own = odds[row] ?? 0
    const miss = own / all - (right[row] === true ? own / good : 0)
    for (const end = ends[row] ?? 0; at < end; at++) {
      const feature = features[at] ?? 0
      slope[feature] = (slope[feature] ?? 0) + miss
    }
  }
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
    scheme: fit(asked.scheme),
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
    for (const title of left)
      for (const isPlain of [false, true]) {
        const own = cases.filter((one) => one.title === title && one.plain === isPlain)
        pickAll(tables, own).forEach((picked, index) => {
          const one = own[index]
          if (one) count(sums, one, picked)
        })
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

/** As pickDoses does it, with other weights. */
function pickAll(tables: Tables, cases: readonly DosedCase[]): Map<DoseQuestion, DoseOption>[] {
  let before: DoseOption[] = []
  const weighed = cases.map(({ asked, next }) => {
    const questions = new DoseOptions(asked, next ? before : [])
    const own = new Map<DoseQuestion, Weighed[]>()
    for (const question of DOSE_QUESTIONS) {
      const amount = own.get('amount')?.[0]?.option ?? null
      own.set(question, weighBy(tables[question], questions.ask(question, amount)))
    }
    before = [...own].flatMap(([question, [first]]) => (first && CARRIED.has(question) ? [first.option] : []))
    return own
  })
  return cases.map(({ asked, index }, at) => {
    const together = weighed.filter((_, other) => other === at || isMate(asked, cases[other]?.index))
    return new Map(
      DOSE_QUESTIONS.flatMap((question) => {
        const own = weighed[at]?.get(question) ?? []
        const isShared = question === 'sets' || question === 'rest' || question === 'scheme'
        const [first] =
          isShared && index >= 0
            ? agreed(
                own,
                together.map((one) => one.get(question) ?? []),
              )
            : own
        return first ? [[question, first.option] as const] : []
      }),
    )
  })
}

function isMate({ members }: DoseCase, index: number | undefined): boolean {
  return index !== undefined && members.includes(index)
}

function weighBy(table: ReadonlyMap<string, number>, options: readonly DoseOption[]): Weighed[] {
  const odds = options.map((option) =>
    featuresOf(option).reduce(
      (sum, features) => sum + Math.exp(features.reduce((all, one) => all + (table.get(one) ?? 0), 0)),
      0,
    ),
  )
  const all = odds.reduce((sum, one) => sum + one, 0)
  return options
    .map((option, index) => ({ option, share: (odds[index] ?? 0) / all }))
    .toSorted((a, b) => b.share - a.share)
}

function count(
  sums: Map<string, Map<string, number>>,
  { asked, gold, plain: isPlain, title }: DosedCase,
  picked: ReadonlyMap<DoseQuestion, DoseOption>,
): void {
  if (!gold) return
  const kind = `${ageOf(Number.parseInt(title, 10))} ${isPlain ? 'plain' : 'as written'}`
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

/** When a class was written: before the rules for doses, after them, or in the manner of the corpus. */
function ageOf(number: number): string {
  if (number < FIRST_NEW) return 'old'
  return number < FIRST_ALIKE ? 'newer' : 'newest'
}

const FIRST_NEW = 90
const FIRST_ALIKE = 120

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
    'amount' | 'hold' | 'sets' | 'sides' | 'rest' | 'scheme',
    Readonly<Record<string, readonly (readonly [weight: number, marks: string])[]>>
  >
> = {
${questions.join('\n')}
}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/dose-weights.ts'), text)
}

function writeWays(weights: ReadonlyMap<string, number>): string {
  const ways = new Map<string, [string, number][]>()
  for (const [name, weight] of weights) {
    const cut = name.indexOf('/')
    pushTo(ways, name.slice(0, cut), [name.slice(cut + 1), weight])
  }
  return [...ways]
    .map(([how, rows]) => `    ${JSON.stringify(how)}: [\n${writeRows(rows, '      ')}\n    ],`)
    .join('\n')
}

const without = process.argv.includes('--without') ? (process.argv.at(-1) ?? '').split(',') : []
const classes = annotatedClasses(['dev', 'fit', 'more']).filter(
  ({ title }) => !without.some((one) => title.startsWith(one)),
)

const links = linksApart(classes)
const cases = classes.flatMap((one) => casesOf(one, links))
if (process.argv.includes('--apart')) showApart(cases)
else write(fitAll(cases))
