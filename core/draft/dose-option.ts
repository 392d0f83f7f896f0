/** The answers to what the dose of an exercise is: how each is told, and what speaks for it. */
import type { Prescription, Range } from '../../shared/log-sheet.ts'
import type { Teaching } from './find-exercises.ts'
import type { Told } from './gather-sayings.ts'
import { AMOUNT_KINDS } from './mark-sayings.ts'
import type { AmountKind } from './mark-sayings.ts'
import type { Speech } from './read-speech.ts'

/** An exercise with all that may be its dose. */
export interface DoseCase {
  speech: Speech
  teaching: Teaching
  told: readonly Told[]
  /** The dose by rules, and those of its neighbours. */
  ruled: Prescription | null
  near: readonly Prescription[]
  /** Held rather than moved. */
  still: boolean
  /** Of the group it is done in turns with; its members by index, itself among them, none where it stands alone. */
  scheme: 'circuit' | 'superset' | null
  members: readonly number[]
  /** Its teaching goes on to the other side. */
  bothSides: boolean
}

/** What is asked of each exercise, in this order: what is answered first helps with what follows. */
export const DOSE_QUESTIONS = ['amount', 'hold', 'sets', 'sides', 'rest', 'scheme'] as const
export type DoseQuestion = (typeof DOSE_QUESTIONS)[number]

/** One way in which an answer is told: how a saying gives it, and what speaks for it besides the saying's own marks. */
export interface DoseRow {
  how: string
  told: Told | null
  marks: string[]
  /** The key of the amount that goes with it, where it tells a rest that changes together with the time worked. */
  ofAmount?: string
}

/** One answer; the key tells kind and value, that of none is ''. */
export interface DoseOption {
  key: string
  kind: AmountKind | 'sets' | 'sides' | 'restSeconds' | 'scheme' | null
  value: Range | 'max' | boolean | Prescription['scheme'] | null
  marks: string[]
  rows: DoseRow[]
}

/** The answers to one question. */
export class Answers {
  readonly #found = new Map<string, DoseOption>()

  add(kind: DoseOption['kind'], value: Range | 'max', row: DoseRow): void {
    const key = keyOf(kind, value)
    const option = this.#found.get(key) ?? { key, kind, value, marks: [], rows: [] }
    this.#found.set(key, option)
    option.rows.push(row)
  }

  /** All of them behind that of none. */
  all(marks: (option: DoseOption) => string[], none: string[]): DoseOption[] {
    const options = [...this.#found.values()].map((option) => ({ ...option, marks: marks(option) }))
    return [{ key: '', kind: null, value: null, marks: none, rows: [] }, ...options]
  }
}

/** The kind of amount a dose has, where it has one; what is counted first. */
export function amountKindOf(dose: Prescription): AmountKind | null {
  return AMOUNT_KINDS.find((kind) => dose[kind] !== null) ?? null
}

/** An amount by kind and value. */
export function keyOf(kind: DoseOption['kind'], value: Range | 'max'): string {
  return value === 'max' ? `${String(kind)} max` : `${String(kind)} ${String(value.min)}-${String(value.max)}`
}

/** The sayings of some rows. */
export function told(rows: readonly DoseRow[]): Told[] {
  return rows.flatMap((row) => row.told ?? [])
}

/** Whether the exercise before has the same, by the same words. @param before the answers chosen for it */
export function asBefore(
  { key, kind, rows }: DoseOption,
  before: readonly DoseOption[],
  scheme: DoseCase['scheme'],
): string[] {
  return before.flatMap((other) => {
    if (other.kind !== kind) return []
    const marks = [other.key === key ? 'as before' : 'not as before']
    if (scheme) marks.push(`${marks[0] ?? ''} in ${scheme}`)
    const words = new Set(told(other.rows).map(({ saying }) => saying.hit.offset))
    if (told(rows).some(({ saying }) => words.has(saying.hit.offset))) marks.push('words as before')
    return marks
  })
}

const SIZES = [1, 2, 3, 4, 5, 7, 9, 10, 12, 15, 20, 25, 30, 40, 60, 120, 1000] as const

/** About how much it is. */
export function sizeOf(value: DoseOption['value']): string {
  if (value === 'max') return 'max'
  if (value === null || typeof value !== 'object') return 'none'
  if (value.min !== value.max) return 'range'
  const most = SIZES.find((size) => (value.max ?? 0) <= size)
  return most === undefined ? 'more' : `to ${String(most)}`
}

/** The amount chosen is told by the same words. */
export function withAmount(one: Told, amount: DoseOption | null): string[] {
  return amount?.rows.some((row) => row.told === one) === true ? ['with amount'] : []
}
