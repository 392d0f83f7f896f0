/** Counts sets as they come: "eight ... and another eight ... and a last eight" are three. */
import { readDose } from '../dose/read-dose.ts'
import type { Range } from '../../shared/log-sheet.ts'
import { GOES, NUMBERS, WHICH } from './words/en/going-words.ts'

/** How many goes are told, by which kinds of telling; null where none is. */
export interface GoesTold {
  goes: number
  tellings: string[]
}

/** @param said what is said from the first go on @param amount what is done in each, as far as it is known */
export function countGoes(said: string, amount: Range | null): GoesTold | null {
  let goes = 1
  let until = -NEAR
  let isAnnounced = false
  const tellings: string[] = []
  for (const found of said.matchAll(GOES)) {
    const { which, of, nth, amount: told, still, left } = found.groups ?? {}
    const number = of ?? told ?? left
    const isMeant = number === undefined || isAmount(number, amount)
    if (!isMeant) continue
    const between = said.slice(Math.max(0, until), found.index)
    const isNear = found.index - until < NEAR && !/[.!?]/.test(between)
    const place = WHICH[(which ?? nth ?? '').toLowerCase()]
    if (place !== undefined) goes = Math.max(goes, place)
    else if (isNear || (isAnnounced && between.length < BESIDE && !saysAmount(between, amount))) continue
    else goes += still === undefined ? 1 : (WHICH[still.toLowerCase()] ?? 1)
    until = found.index + found[0].length
    isAnnounced = place !== undefined
    tellings.push(nameOf(found.groups ?? {}))
  }
  return goes > 1 && goes <= MOST ? { goes, tellings } : null
}

function nameOf({
  which,
  nth,
  again,
  still,
  left,
  more = '',
  amount,
}: Readonly<Record<string, string | undefined>>): string {
  if (which) return 'which'
  if (nth) return 'number'
  if (again) return 'again'
  if (still) return 'more to come'
  if (left) return 'so many more'
  const word = more.toLowerCase().replace(/^(?:a|the|your|my) /, '')
  return amount === undefined ? word : `${word} so many`
}

/** "Second round. Hold the chair, and ten more": these are the ten of the second round; not where they were said between. */
function saysAmount(between: string, amount: Range | null): boolean {
  return [...between.matchAll(NUMBERS)].some(([number]) => isAmount(number, amount))
}

function isAmount(number: string, amount: Range | null): boolean {
  if (amount === null) return false
  if (/minute/i.test(number)) return amount.min === (/half/i.test(number) ? 30 : 60)
  const reps = readDose(`${number} reps`)?.reps
  if (reps == null || reps === 'max') return false
  return reps.min === amount.min || reps.min === amount.max
}

/** Characters within which two tellings are one: "third and last", "another eight, eight more". */
const NEAR = 40
/** Characters behind the number of a set in which one more is that one. */
const BESIDE = 90
const MOST = 6
