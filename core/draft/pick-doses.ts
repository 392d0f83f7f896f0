/** Picks the dose of each exercise: of all that is told for it, the likeliest amount, hold, sets, sides, rest and scheme. */
import { formatClock } from '../../shared/clock.ts'
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription, Quote, Range } from '../../shared/log-sheet.ts'
import { amountKindOf, keyOf, told } from './dose-option.ts'
import type { DoseCase, DoseOption } from './dose-option.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { findTempos } from './find-tempo.ts'
import type { Told } from './gather-sayings.ts'
import { AMOUNT_KINDS } from './mark-sayings.ts'
import { quoteOfName } from './name-tells.ts'
import { NONE, pickAnswers } from './pick-answers.ts'
import type { PickedDose } from './pick-answers.ts'
import { quotePiece } from './quote-piece.ts'
import { schemeOf } from './scheme-options.ts'
import { OptionScale } from './weigh-options.ts'

/** The doses of all exercises, in their order. */
export function pickDoses(cases: readonly DoseCase[]): (Prescription | null)[] {
  const picked = pickAnswers(cases, new OptionScale())
  return cases.map((asked, index) => {
    const own = picked[index]
    return own ? doseOf(asked, own) : null
  })
}

/** The dose as picked, on the one by rules, which keeps what nobody asks for: load, effort. */
function doseOf(asked: DoseCase, picked: PickedDose): Prescription | null {
  const { ruled, told: all } = asked
  const { amount, hold, sets, sides, scheme } = picked
  const rest = isRestOfOthers(asked, picked) ? { ...picked.rest, option: NONE } : picked.rest
  const { kind, value } = amount.option
  const amountKind = AMOUNT_KINDS.find((one) => one === kind)
  if (amountKind === undefined || value === null || (value !== 'max' && typeof value !== 'object')) return null
  const tempo = tempoOf(asked)
  const ruledKind = ruled ? amountKindOf(ruled) : null
  const ruledValue = ruledKind === null ? null : (ruled?.[ruledKind] ?? null)
  const isRuled = ruledKind !== null && ruledValue !== null && keyOf(ruledKind, ruledValue) === amount.option.key
  const base = isRuled && ruled ? ruled : withAmount(ruled, amountKind, value, amount.option)
  const isHeld = amountKind === 'holdSeconds'
  const holdSeconds = isHeld ? base.holdSeconds : rangeOf(hold.option)
  const restSeconds = rangeOf(rest.option)
  const kept = isRuled && ruled ? ruled.said : []
  const answers = [amount.option, sets.option, ...(isHeld ? [] : [hold.option]), rest.option]
  const said = [
    ...quotesOf(kept, isRuled ? answers.slice(1) : answers),
    ...(isRuled ? [] : quotesOfRest(base, all)),
    ...(tempo.quote ? [tempo.quote] : []),
  ]
  const shares = [amount, sets, sides, ...(isHeld ? [] : [hold])].map(({ share }) => share)
  const { restBetween } = ruled ?? {}
  return {
    ...base,
    sets: rangeOf(sets.option),
    scheme: schemeOf(scheme.option) ?? base.scheme,
    perSide: sides.option.value === true,
    tempo: tempo.tempo,
    holdSeconds,
    holdPer: holdSeconds === null ? null : isHeld ? (base.holdPer ?? 'set') : 'rep',
    restSeconds,
    restBetween: restSeconds === null ? null : (restBetween ?? restBetweenOf(rest.option)),
    said: said.length > 0 ? eachOnce(said) : [quoteOfName(asked.speech, asked.teaching)],
    ...doubtsOf(base, picked),
    origin: 'draft',
    state: 'proposed',
    confidence: Math.round(Math.min(...shares) * 100) / 100,
    ruleId: 'dose-weighed',
  }
}

/** One set by itself has no rest between sets: one that was told while others were taught is theirs. */
function isRestOfOthers({ members }: DoseCase, { sets, rest }: PickedDose): boolean {
  const rows = told(rest.option.rows)
  const isOne = rangeOf(sets.option)?.max === 1
  return (
    isOne &&
    members.length < 2 &&
    rows.length > 0 &&
    rows.every(({ place }) => place === 'earlier' || place === 'later')
  )
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

/** The tempo that counts most phases, told in the teaching or a return; one by rules where it counts more. */
function tempoOf({ speech, teaching, ruled, told: all }: DoseCase): { tempo: string | null; quote: Quote | null } {
  const breathing = teaching.entry?.movements.includes('breathing') === true || /\bbreath/i.test(teaching.name)
  const found = teaching.spans.flatMap((span) => findTempos(speech, span, breathing))
  const [best] = found.toSorted((a, b) => phasesIn(b.tempo) - phasesIn(a.tempo))
  const byRules = ruled?.tempo ?? null
  if (byRules !== null && phasesIn(byRules) > Math.max(1, best ? phasesIn(best.tempo) : 0))
    return {
      tempo: byRules,
      quote: all.find(({ saying }) => saying.hit.dose.tempo === byRules)?.saying.hit.quote ?? null,
    }
  if (!best) return { tempo: null, quote: null }
  const { atMs, text } = quotePiece(speech, best)
  return { tempo: best.tempo, quote: { atMs, text } }
}

function phasesIn(tempo: string): number {
  return tempo.split('-').filter((phase) => phase !== 'x').length
}

const LEAST_SURE = 0.5

function rangeOf({ value }: DoseOption): Range | null {
  return value === null || typeof value !== 'object' ? null : value
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

const KEPT = ['load', 'effort', 'frequency', 'progression'] as const

/** The saying that stands for an answer: the last of those given to the exercise, else the last of all. */
function sayingOf({ rows }: DoseOption): DoseHit | null {
  const sayings = told(rows)
  return (sayings.findLast(({ owned }) => owned) ?? sayings.at(-1))?.saying.hit ?? null
}

function eachOnce(quotes: readonly Quote[]): Quote[] {
  return quotes.filter((quote, index) => quotes.findIndex((other) => isSame(other, quote)) === index)
}

function isSame(a: Quote, b: Quote): boolean {
  return a.atMs === b.atMs && a.text === b.text
}
