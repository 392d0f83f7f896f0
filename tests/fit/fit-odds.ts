/** Fits what features add to the log of the odds that something is so. */
import { descend } from './descend.ts'

export interface OddsCase {
  features: readonly string[]
  sought: boolean
  weight: number
}

/** How features are fitted: those met too rarely are left out, great weights are paid for. */
export interface OddsFitting {
  leastOften: number
  ridge: number
  steps: number
  /** Log of the odds that every case starts from; what is rare starts low. */
  from?: number
}

const RATE = 0.1

/** Logistic regression with ridge, by steps along the whole gradient, each weight at its own rate: the same input gives the same weights. */
export function fitOdds(
  cases: readonly OddsCase[],
  { leastOften, ridge, steps, from = 0 }: OddsFitting,
): Map<string, number> {
  const times = new Map<string, number>()
  for (const { features } of cases) for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) => (count >= leastOften ? [name] : []))
  const indexOf = new Map(names.map((name, index) => [name, index]))
  const rows = cases.map(({ features, sought, weight }) => ({
    at: Int32Array.from(features.flatMap((one) => indexOf.get(one) ?? [])),
    sought: sought ? 1 : 0,
    weight,
  }))
  const weights = new Float64Array(names.length)
  descend(weights, { steps, rate: RATE }, () => {
    const slope = weights.map((weight) => weight * ridge)
    for (const { at, sought, weight } of rows) {
      const odds = at.reduce((sum, index) => sum + (weights[index] ?? 0), from)
      const miss = (1 / (1 + Math.exp(-odds)) - sought) * weight
      for (const index of at) slope[index] = (slope[index] ?? 0) + miss
    }
    return slope
  })
  return new Map(names.map((name, index) => [name, weights[index] ?? 0]))
}
