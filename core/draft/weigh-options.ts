/** Weighs the answers to what the dose of an exercise is: the log of the odds of each. */
import type { DoseOption, DoseQuestion, DoseRow } from './dose-option.ts'
import type { Saying } from './mark-sayings.ts'
import { DOSE_WEIGHTS } from './words/en/dose-weights.ts'

/** Weights of marks for one question: those of an answer, and those of each way it is told. */
interface QuestionWeights {
  option: ReadonlyMap<string, number>
  rows: ReadonlyMap<string, ReadonlyMap<string, number>>
  /** Where a way has none of its own. */
  anyWay: ReadonlyMap<string, number>
}

/** An answer with its share of the odds of all, 0-1. */
export interface Weighed {
  option: DoseOption
  share: number
}

/** Every mark of a row: of its way, its saying, its exercise. */
export function marksOf({ how, told: one, marks }: DoseRow): { how: string; marks: string[] } {
  return { how, marks: ['told', ...(one?.saying.marks ?? []), ...(one?.marks ?? []), ...marks] }
}

/** Looks up the fitted weights; what a saying adds by itself is summed once. */
export class OptionScale {
  readonly #sums = new Map<string, WeakMap<readonly string[], number>>()
  readonly #tables: DoseTables

  /** @param tables other than those fitted, for fitting */
  constructor(tables: DoseTables = TABLES) {
    this.#tables = tables
  }

  /** All answers with their shares, the likeliest first. */
  weigh(question: DoseQuestion, options: readonly DoseOption[]): Weighed[] {
    const odds = options.map((option) => this.#odds(question, option))
    const most = Math.max(...odds)
    const all = odds.reduce((sum, one) => sum + Math.exp(one - most), 0)
    return options
      .map((option, index) => ({ option, share: Math.exp((odds[index] ?? -Infinity) - most) / all }))
      .toSorted((a, b) => b.share - a.share)
  }

  #odds(question: DoseQuestion, { marks, rows }: DoseOption): number {
    const weights = this.#tables[question]
    const own = marks.reduce((sum, mark) => sum + (weights.option.get(mark) ?? 0), 0)
    if (rows.length === 0) return own
    return own + Math.log(rows.reduce((sum, row) => sum + Math.exp(this.#rowOdds(question, row)), 0))
  }

  #rowOdds(question: DoseQuestion, { how, told: one, marks }: DoseRow): number {
    const { rows, anyWay } = this.#tables[question]
    const table = rows.get(how) ?? anyWay
    const add = (sum: number, mark: string): number => sum + (table.get(mark) ?? 0)
    const own = (table.get('told') ?? 0) + marks.reduce(add, 0)
    return one === null ? own : own + one.marks.reduce(add, 0) + this.#sayingOdds(question, how, one.saying, table)
  }

  #sayingOdds(question: DoseQuestion, how: string, { marks }: Saying, table: ReadonlyMap<string, number>): number {
    const key = `${question} ${how}`
    let sums = this.#sums.get(key)
    if (!sums) this.#sums.set(key, (sums = new WeakMap()))
    const known = sums.get(marks)
    if (known !== undefined) return known
    const sum = marks.reduce((all, mark) => all + (table.get(mark) ?? 0), 0)
    sums.set(marks, sum)
    return sum
  }
}

export type DoseTables = Readonly<Record<DoseQuestion, QuestionWeights>>

/** Rows of weights and their marks by the way they are for; `*` = any, `option` = the answer itself. */
export type WayWeights = Readonly<Record<string, readonly (readonly [weight: number, marks: string])[]>>

export function doseTables(weights: Readonly<Record<DoseQuestion, WayWeights>>): DoseTables {
  return {
    amount: weightsOf(weights.amount),
    hold: weightsOf(weights.hold),
    sets: weightsOf(weights.sets),
    sides: weightsOf(weights.sides),
    rest: weightsOf(weights.rest),
    scheme: weightsOf(weights.scheme),
  }
}

function weightsOf(ways: WayWeights): QuestionWeights {
  const anyWay = tableOf(ways['*'] ?? [])
  return {
    option: tableOf(ways['option'] ?? []),
    rows: new Map(Object.entries(ways).map(([how, rows]) => [how, sumOf(anyWay, tableOf(rows))])),
    anyWay,
  }
}

/** A mark counts for every way, and besides for its own. */
function sumOf(anyWay: ReadonlyMap<string, number>, own: ReadonlyMap<string, number>): ReadonlyMap<string, number> {
  const sums = new Map(anyWay)
  for (const [mark, weight] of own) sums.set(mark, weight + (anyWay.get(mark) ?? 0))
  return sums
}

function tableOf(rows: readonly (readonly [number, string])[]): ReadonlyMap<string, number> {
  return new Map(rows.flatMap(([weight, marks]) => marks.split('|').map((mark) => [mark, weight] as const)))
}

const TABLES = doseTables(DOSE_WEIGHTS)
