/** Shows how many doses are right in classes that were left out of the fitting. */
import { DOSE_QUESTIONS } from '../../core/draft/dose-option.ts'
import type { DoseCase } from '../../core/draft/dose-option.ts'
import { pickAnswers } from '../../core/draft/pick-answers.ts'
import type { PickedDose } from '../../core/draft/pick-answers.ts'
import type { OptionScale } from '../../core/draft/weigh-options.ts'
import type { AnnotatedDose } from './annotated-classes.ts'
import { AMOUNTS, isRight, isSame, kindOf } from './dose-cases.ts'
import type { DosedClass } from './dose-cases.ts'

const FOLDS = 8

/** Doses wholly right and each answer right, of exercises that were found and have a dose, by rules and picked; an eighth of the classes left out of each fitting. */
export function showDoses(classes: readonly DosedClass[], fit: (seen: readonly DosedClass[]) => OptionScale): void {
  const titles = [...new Set(classes.map(({ title }) => title))]
  const sums = new Map<string, Map<string, number>>()
  for (let fold = 0; fold < FOLDS; fold++) {
    const left = new Set(titles.filter((_, index) => index % FOLDS === fold))
    const scale = fit(classes.filter(({ title }) => !left.has(title)))
    for (const one of classes) {
      if (!left.has(one.title)) continue
      const kind = `${ageOf(Number.parseInt(one.title, 10))} ${one.plain ? 'plain' : 'as written'}`
      const sum = sums.get(kind) ?? new Map<string, number>()
      sums.set(kind, sum)
      pickAnswers(one.cases, scale).forEach((picked, index) => {
        const [asked, gold] = [one.cases[index], one.golds[index]]
        if (asked && gold) count(sum, asked, gold, picked)
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

function count(sum: Map<string, number>, asked: DoseCase, gold: AnnotatedDose, picked: PickedDose): void {
  const add = (what: string, is: boolean): void => void sum.set(what, (sum.get(what) ?? 0) + (is ? 1 : 0))
  add('doses', true)
  const right = DOSE_QUESTIONS.map((question) => {
    const isHeld = question === 'hold' && picked.amount.option.kind === 'holdSeconds'
    return isHeld ? kindOf(gold)?.[0] === 'holdSeconds' : isRight(question, picked[question].option, gold) === true
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
