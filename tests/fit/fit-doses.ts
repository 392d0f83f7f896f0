/**
 * Fits the weights of doses on the annotated classes and writes core/draft/words/en/dose-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-doses.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/dose-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { DOSE_QUESTIONS } from '../../core/draft/dose-option.ts'
import type { DoseOption, DoseQuestion } from '../../core/draft/dose-option.ts'
import { DoseOptions } from '../../core/draft/dose-options.ts'
import { pushTo } from '../../core/draft/push-to.ts'
import { doseTables, marksOf, OptionScale } from '../../core/draft/weigh-options.ts'
import type { WayWeights } from '../../core/draft/weigh-options.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { annotatedClasses } from './annotated-classes.ts'
import type { AnnotatedDose } from './annotated-classes.ts'
import { dosedClasses, isRight } from './dose-cases.ts'
import type { DosedClass } from './dose-cases.ts'
import { fitChoices } from './fit-choices.ts'
import type { Asked } from './fit-choices.ts'
import { linksApart } from './link-cases.ts'
import { showDoses } from './show-doses.ts'
import { writeRows } from './write-rows.ts'

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

type Questions = Record<DoseQuestion, Asked[]>

/** The questions of some classes with their right answers, each exercise asked as it is where those before are right. */
function questionsOf(classes: readonly DosedClass[]): Questions {
  const all: Questions = { amount: [], hold: [], sets: [], sides: [], rest: [], scheme: [] }
  for (const { cases, golds } of classes) {
    let before: DoseOption[] = []
    cases.forEach((asked, index) => {
      const gold = golds[index]
      before = gold === undefined ? [] : addQuestions(all, new DoseOptions(asked, before), gold)
    })
  }
  return all
}

/** @returns the answers that the exercise behind is asked with */
function addQuestions(all: Questions, questions: DoseOptions, gold: AnnotatedDose | null): DoseOption[] {
  const answers = new Map<DoseQuestion, DoseOption>()
  for (const question of DOSE_QUESTIONS) {
    const options = questions.ask(question, answers.get('amount') ?? null)
    const right = (option: DoseOption): boolean => isRight(question, option, gold) === true
    const answer = options.find(right)
    if (!answer) continue
    answers.set(question, answer)
    const rows = options.flatMap((option) => featuresOf(option).map((features) => ({ features, right: right(option) })))
    all[question].push({ rows })
  }
  return [...answers].flatMap(([question, option]) => (CARRIED.has(question) ? [option] : []))
}

const CARRIED: ReadonlySet<DoseQuestion> = new Set(['amount', 'sets', 'rest'])

const FITTING = { leastOften: 5, ridge: 3 }

/** By question the weight of each mark, under its way. */
type Weights = Record<DoseQuestion, ReadonlyMap<string, number>>

function fitAll(classes: readonly DosedClass[]): Weights {
  const { amount, hold, sets, sides, rest, scheme } = questionsOf(classes)
  return {
    amount: fitChoices(amount, FITTING),
    hold: fitChoices(hold, FITTING),
    sets: fitChoices(sets, FITTING),
    sides: fitChoices(sides, FITTING),
    rest: fitChoices(rest, FITTING),
    scheme: fitChoices(scheme, FITTING),
  }
}

function scaleOf(weights: Weights): OptionScale {
  const byWay = (question: DoseQuestion): WayWeights =>
    Object.fromEntries(
      [...waysOf(weights[question])].map(([how, rows]) => [how, rows.map(([mark, weight]) => [weight, mark] as const)]),
    )
  return new OptionScale(
    doseTables({
      amount: byWay('amount'),
      hold: byWay('hold'),
      sets: byWay('sets'),
      sides: byWay('sides'),
      rest: byWay('rest'),
      scheme: byWay('scheme'),
    }),
  )
}

function waysOf(weights: ReadonlyMap<string, number>): Map<string, [mark: string, weight: number][]> {
  const ways = new Map<string, [string, number][]>()
  for (const [name, weight] of weights) {
    const cut = name.indexOf('/')
    pushTo(ways, name.slice(0, cut), [name.slice(cut + 1), weight])
  }
  return ways
}

function write(weights: Weights): void {
  const questions = DOSE_QUESTIONS.map((question) => `  ${question}: {\n${writeWays(weights[question])}\n  },`)
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
  return [...waysOf(weights)]
    .map(([how, rows]) => `    ${JSON.stringify(how)}: [\n${writeRows(rows, '      ')}\n    ],`)
    .join('\n')
}

const without = process.argv.includes('--without') ? (process.argv.at(-1) ?? '').split(',') : []
const annotated = annotatedClasses(['dev', 'fit', 'more']).filter(
  ({ title }) => !without.some((one) => title.startsWith(one)),
)
const links = linksApart(annotated)
const classes = annotated.flatMap((one) => dosedClasses(one, links))
if (process.argv.includes('--apart')) showDoses(classes, (seen) => scaleOf(fitAll(seen)))
else write(fitAll(classes))
