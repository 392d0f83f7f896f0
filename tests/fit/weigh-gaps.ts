/** Fits how much each feature of a gap between words speaks for a comma or a full stop there. */
import { clauseSigns } from '../../core/draft/break-features.ts'
import type { BreakTable, MarkScores } from '../../core/draft/weigh-breaks.ts'
import type { ApartTables } from './apart-tables.ts'
import type { BreakExample } from './break-examples.ts'
import { descend } from './descend.ts'

/** What tells of two words or more must come more often than what tells of one. */
const LEAST_OFTEN = 3
const LEAST_OFTEN_TOGETHER = 6
const TOGETHER =
  /^(?:gap|ahead|behind|around|across|word-class|class-word|class-ahead|word-kind|kind-word|kinds|kind-(?:opening|closing|around|across|ahead|behind)) /
/** Weights are kept in such steps, smaller ones not at all. */
const STEP = 0.25
const LEAST_WEIGHT = 0.2
const RIDGE = 1.5
const STEPS = 300
const RATE = 0.1
/** Sentences that stand alone tell nothing of what comes before them. */
const GROUP_WEIGHTS = { corpus: 1, own: 1, short: 1, sentences: 0.5 } as const

/** Logistic regression over no mark, comma and full stop with ridge, by steps along the whole gradient, each weight at its own rate: the same input gives the same weights. */
export function fitBreaks(examples: readonly BreakExample[]): BreakTable {
  const gaps = examples.flatMap(gapsOf)
  const times = new Map<string, number>()
  for (const { features } of gaps) for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) =>
    count >= (TOGETHER.test(name) ? LEAST_OFTEN_TOGETHER : LEAST_OFTEN) ? [name] : [],
  )
  const indexOf = new Map(names.map((name, index) => [name, index * 2]))
  const rows = gaps.map(({ features, mark, weight }) => ({
    at: Int32Array.from(features.flatMap((one) => indexOf.get(one) ?? [])),
    comma: mark === 'comma' ? 1 : 0,
    stop: mark === 'stop' ? 1 : 0,
    weight,
  }))
  const weights = new Float64Array(names.length * 2)
  descend(weights, { steps: STEPS, rate: RATE }, () => {
    const slope = weights.map((weight) => weight * RIDGE)
    for (const { at, comma, stop, weight } of rows) {
      let sumComma = 0
      let sumStop = 0
      for (const index of at) {
        sumComma += weights[index] ?? 0
        sumStop += weights[index + 1] ?? 0
      }
      const [oddsComma, oddsStop] = [Math.exp(sumComma), Math.exp(sumStop)]
      const total = 1 + oddsComma + oddsStop
      const missComma = weight * (oddsComma / total - comma)
      const missStop = weight * (oddsStop / total - stop)
      for (const index of at) {
        slope[index] = (slope[index] ?? 0) + missComma
        slope[index + 1] = (slope[index + 1] ?? 0) + missStop
      }
    }
    return slope
  })
  return new Map(
    names.flatMap((name, at) => {
      const [comma, stop] = [rounded(weights[at * 2] ?? 0), rounded(weights[at * 2 + 1] ?? 0)]
      return comma === 0 && stop === 0 ? [] : [[name, { comma, stop }] as const]
    }),
  )
}

function rounded(weight: number): number {
  return Math.abs(weight) < LEAST_WEIGHT ? 0 : Math.round(weight / STEP) * STEP
}

function gapsOf({ words, marks, features, group }: BreakExample) {
  let start = 0
  return words.flatMap((_, index) => {
    if (index === 0) return []
    const mark = marks[index] ?? 'none'
    const gap = {
      features: [...(features[index] ?? []), ...clauseSigns(words, start, index)],
      mark,
      weight: GROUP_WEIGHTS[group],
    }
    if (mark !== 'none') start = index
    return [gap]
  })
}

const PARTS = 4

/** Fitted in parts, each without every fourth class. */
export function fitBreaksApart(examples: readonly BreakExample[]): ApartTables<MarkScores> {
  const of = Object.fromEntries(examples.map(({ title }, index) => [title, index % PARTS]))
  const tables = Array.from({ length: PARTS }, (_, part) =>
    fitBreaks(examples.filter(({ title }) => of[title] !== part)),
  )
  return { tables, of }
}
