/** The doses of the annotated classes: what may be the dose of each exercise that was found, and what is right. */
import { readDoseCases } from '../../core/draft/attach-doses.ts'
import type { DoseCase, DoseOption, DoseQuestion } from '../../core/draft/dose-option.ts'
import { findExercises } from '../../core/draft/find-exercises.ts'
import { findKit } from '../../core/draft/find-kit.ts'
import type { LinkTable } from '../../core/draft/weigh-links.ts'
import type { AnnotatedClass, AnnotatedDose } from './annotated-classes.ts'
import { matchTeachings } from './match-teachings.ts'
import { readApart } from './read-apart.ts'

/** All exercises found in one class, as written or plain. */
export interface DosedClass {
  title: string
  plain: boolean
  cases: readonly DoseCase[]
  /** Of each its annotated dose, null where none is said; undefined where the annotation knows no such exercise. */
  golds: readonly (AnnotatedDose | null | undefined)[]
}

/** A class as written, and plain where it has marks. @param links weights of links that have not seen it */
export function dosedClasses(annotated: AnnotatedClass, links: (title: string) => LinkTable | undefined): DosedClass[] {
  const { title } = annotated
  return readApart(annotated).map(({ speech, plain }) => {
    const { teachings, namings, blocks } = findExercises(speech, findKit(speech.text))
    const { cases } = readDoseCases(speech, teachings, namings, blocks, links(title))
    const exercises = matchTeachings(speech, teachings, annotated.exercises)
    const golds = cases.map((_, index) => exercises.get(index)?.prescription)
    return { title, plain, cases, golds }
  })
}

type Value = DoseOption['value']

export function isSame(value: Value, said: AnnotatedDose[keyof AnnotatedDose]): boolean {
  if (value === null || said === null || typeof value !== 'object') return (value ?? null) === (said ?? null)
  const [min, max] = Array.isArray(said) ? said : [said, said]
  return value.min === min && value.max === max
}

/** Kinds of amounts, and the fields that they are annotated in. */
export const AMOUNTS = [
  ['reps', 'reps'],
  ['distanceM', 'distanceM'],
  ['workSeconds', 'seconds'],
  ['holdSeconds', 'holdSeconds'],
] as const

/** The kind of amount a dose has: what is counted, else the distance, the time, the hold. */
export function kindOf(gold: AnnotatedDose | null): (typeof AMOUNTS)[number] | null {
  return AMOUNTS.find(([, field]) => gold !== null && gold[field] !== null) ?? null
}

/** Whether an answer is the annotated one; null where the question is not answered by the annotation. */
export function isRight(
  question: DoseQuestion,
  { kind, value }: DoseOption,
  gold: AnnotatedDose | null,
): boolean | null {
  const amount = kindOf(gold)
  if (question === 'amount')
    return amount === null || !gold ? kind === null : kind === amount[0] && isSame(value, gold[amount[1]])
  if (!gold) return null
  if (question === 'hold') return isSame(value, amount?.[0] === 'holdSeconds' ? null : gold.holdSeconds)
  if (question === 'sides') return value === gold.perSide
  if (question === 'scheme') return value === gold.scheme
  return isSame(value, question === 'sets' ? gold.sets : gold.restSeconds)
}
