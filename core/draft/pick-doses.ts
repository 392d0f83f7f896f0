/** Picks the dose of each exercise: of all that is told for it, the likeliest amount, hold, sets, sides and rest. */
import { formatClock } from '../../shared/clock.ts'
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription, Quote, Range } from '../../shared/log-sheet.ts'
import { amountKindOf, keyOf, told } from './dose-option.ts'
import type { DoseCase, DoseOption, DoseQuestion } from './dose-option.ts'
import { DoseOptions } from './dose-options.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Told } from './gather-sayings.ts'
import { AMOUNT_KINDS } from './mark-sayings.ts'
import { OptionScale } from './weigh-options.ts'
import type { Chosen } from './weigh-options.ts'

/** The answers chosen for one exercise. */
type PickedDose = Record<DoseQuestion, Chosen>

/** The doses of all exercises, in their order. */
export function pickDoses(cases: readonly DoseCase[]): (Prescription | null)[] {
  const scale = new OptionScale()
  let before: DoseOption[] = []
  return cases.map((asked) => {
    const picked = pick(asked, before, scale)
    before = [picked.amount.option, picked.sets.option, picked.rest.option]
    return doseOf(asked, picked)
  })
}

function pick(asked: DoseCase, before: readonly DoseOption[], scale: OptionScale): PickedDose {
  const questions = new DoseOptions(asked, before)
  const choose = (question: DoseQuestion, amount: DoseOption | null): Chosen =>
    scale.choose(question, questions.ask(question, amount)) ?? { option: NONE, share: 1, second: null }
  const amount = choose('amount', null)
  const { option } = amount
  return {
    amount,
    hold: choose('hold', option),
    sets: choose('sets', option),
    sides: choose('sides', option),
    rest: choose('rest', option),
  }
}

const NONE: DoseOption = { key: '', kind: null, value: null, marks: [], rows: [] }

/** The dose as picked, on the one by rules, which keeps what nobody asks for: tempo, load, effort, scheme. */
function doseOf({ ruled, told: all }: DoseCase, picked: PickedDose): Prescription | null {
  const { amount, hold, sets, sides, rest } = picked
  const { kind, value } = amount.option
  const amountKind = AMOUNT_KINDS.find((one) => one === kind)
  if (amountKind === undefined || value === null || typeof value === 'boolean') return null
  const ruledKind = ruled ? amountKindOf(ruled) : null
  const ruledValue = ruledKind === null ? null : (ruled?.[ruledKind] ?? null)
  const isRuled = ruledKind !== null && ruledValue !== null && keyOf(ruledKind, ruledValue) === amount.option.key
  const base = isRuled && ruled ? ruled : withAmount(ruled, amountKind, value, amount.option)
  const isHeld = amountKind === 'holdSeconds'
  const holdSeconds = isHeld ? base.holdSeconds : rangeOf(hold.option)
  const restSeconds = rangeOf(rest.option)
  const kept = isRuled && ruled ? ruled.said : []
  const answers = [amount.option, sets.option, ...(isHeld ? [] : [hold.option]), rest.option]
  const said = [...quotesOf(kept, isRuled ? answers.slice(1) : answers), ...(isRuled ? [] : quotesOfRest(base, all))]
  const shares = [amount, sets, sides, ...(isHeld ? [] : [hold])].map(({ share }) => share)
  const { restBetween } = ruled ?? {}
  return {
    ...base,
    sets: rangeOf(sets.option),
    perSide: sides.option.value === true,
    holdSeconds,
    holdPer: holdSeconds === null ? null : isHeld ? (base.holdPer ?? 'set') : 'rep',
    restSeconds,
    restBetween: restSeconds === null ? null : (restBetween ?? restBetweenOf(rest.option)),
    said: said.filter((quote, index) => said.findIndex((other) => isSame(other, quote)) === index),
    ...doubtsOf(base, picked),
    origin: 'draft',
    state: 'proposed',
    confidence: Math.round(Math.min(...shares) * 100) / 100,
    ruleId: 'dose-weighed',
  }
}

/** An amount or sets hardly likelier than others are not sure; the words of the others are shown. */
function doubtsOf({ unsure, why }: Prescription, { amount, sets }: PickedDose): Pick<Prescription, 'unsure' | 'why'> {
  const doubtful = [amount, sets].filter(({ share }) => share < LEAST_SURE)
  const others = doubtful.flatMap(({ second }) => (second && sayingOf(second)?.quote) ?? [])
  return {
    unsure: unsure || doubtful.length > 0,
    why: [...why, ...others.map(({ text, atMs }) => `Perhaps "${text}" is meant (${formatClock(atMs)}).`)],
  }
}

const LEAST_SURE = 0.5

function rangeOf({ value }: DoseOption): Range | null {
  return value === null || value === 'max' || typeof value === 'boolean' ? null : value
}

function restBetweenOf({ rows }: DoseOption): Prescription['restBetween'] {
  return told(rows).find(({ saying }) => saying.hit.dose.restBetween !== null)?.saying.hit.dose.restBetween ?? null
}

/** The dose with another amount than by rules. */
function withAmount(
  ruled: Prescription | null,
  kind: (typeof AMOUNT_KINDS)[number],
  value: Range | 'max',
  option: DoseOption,
): Prescription {
  const from = sayingOf(option)
  const values = from?.steps?.values
  const isLadder = kind === 'reps' && values !== undefined && values.length > 2
  const window = value === 'max' ? (from?.dose.workSeconds ?? ruled?.workSeconds ?? null) : null
  return buildPrescription({
    ...(ruled ?? {}),
    ...{ reps: null, workSeconds: window, holdSeconds: null, distanceM: null, open: null, then: [], byLevel: [] },
    [kind]: value,
    repUnit: kind === 'reps' ? (from?.dose.repUnit ?? 'rep') : 'rep',
    repScheme: isLadder ? [...values] : null,
    approx: from?.dose.approx ?? false,
    unsure: false,
    why: [],
  })
}

/** The words of the dose: those by rules where its amount stands, then of each answer picked. */
function quotesOf(kept: readonly Quote[], options: readonly DoseOption[]): Quote[] {
  const picked = options.flatMap((option) => {
    const isThere = told(option.rows).some(({ saying }) => kept.some((quote) => isSame(quote, saying.hit.quote)))
    return isThere ? [] : (sayingOf(option)?.quote ?? [])
  })
  return [...kept, ...picked]
}

/** The words of what is kept of the dose by rules besides its amount. */
function quotesOfRest(dose: Prescription, all: readonly Told[]): Quote[] {
  return all.flatMap(({ saying: { hit } }) => {
    const isKept = KEPT.some((field) => dose[field] !== null && hit.dose[field] === dose[field])
    return isKept ? [hit.quote] : []
  })
}

const KEPT = ['tempo', 'load', 'effort', 'frequency', 'progression'] as const

/** The saying that stands for an answer: the last of those given to the exercise, else the last of all. */
function sayingOf({ rows }: DoseOption): DoseHit | null {
  const sayings = told(rows)
  return (sayings.findLast(({ owned }) => owned) ?? sayings.at(-1))?.saying.hit ?? null
}

function isSame(a: Quote, b: Quote): boolean {
  return a.atMs === b.atMs && a.text === b.text
}
