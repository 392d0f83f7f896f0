/** Fits what marks add to the odds of an answer, where some answers of a question are right and each is told in some ways. */
import { descend } from './descend.ts'

/** One question: every way in which one of its answers is told. */
export interface Asked {
  rows: AskedRow[]
}

export interface AskedRow {
  features: readonly string[]
  right: boolean
}

/** How features are fitted: those met too rarely are left out, great weights are paid for. */
export interface Fitting {
  leastOften: number
  ridge: number
}

const STEPS = 200
const RATE = 0.1

/** Which answer is right: odds of each way it is told against all, with ridge, by steps along the whole gradient. */
export function fitChoices(asked: readonly Asked[], { leastOften, ridge }: Fitting): Map<string, number> {
  const times = new Map<string, number>()
  for (const { rows } of asked)
    for (const { features } of rows) for (const one of features) times.set(one, (times.get(one) ?? 0) + 1)
  const names = [...times].flatMap(([name, count]) => (count >= leastOften ? [name] : []))
  const indexOf = new Map(names.map((name, index) => [name, index]))
  const data = asked.map(({ rows }) => flat(rows, indexOf))
  const weights = new Float64Array(names.length)
  descend(weights, { steps: STEPS, rate: RATE }, () => {
    const slope = weights.map((weight) => weight * ridge)
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

function flat(rows: readonly AskedRow[], indexOf: ReadonlyMap<string, number>): FlatRows {
  const indexes = rows.map(({ features }) => features.flatMap((one) => indexOf.get(one) ?? []))
  let end = 0
  return {
    features: Int32Array.from(indexes.flat()),
    ends: Int32Array.from(indexes.map(({ length }) => (end += length))),
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
