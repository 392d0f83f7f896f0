/** Shares the length of a strip between sets and rests: in proportion to their time, as far as the numerals leave room. */
import { labelWidth, sum } from './measure-label.ts'
import type { Amount } from './read-amounts.ts'

/** Sets that are drawn; a strip of more shows these and says how many there are. */
export const MOST_SETS = 24
/** Sizes of letters that are tried, in parts of the largest. */
const FONTS = [1, 0.85, 0.72, 0.6, 0.46]

export interface Spread {
  sets: readonly (readonly Amount[])[]
  room: number
  restSeconds: number
  /** true = the last set has its rest too, as on a clock. */
  trailing: boolean
  /** How many sets there are, also where fewer are drawn. */
  count: number
  /** The largest letters that fit the height. */
  largest: number
  /** Blocks beside each other in one set: 2 where left and right follow each other. */
  unit: number
  otherWidth: number
  /** Between sets, where nothing is said. */
  leastGap: number
}

export interface Slot {
  x: number
  width: number
  /** From its end (and its round's other work) to the next. */
  gap: number
  amounts: readonly Amount[]
  /** 0 = too narrow for words. */
  font: number
}

/** A slot for each set, from left to right; together they fill the room. */
export function spreadSets(spread: Spread): Slot[] {
  const { room, restSeconds, trailing, largest, unit, otherWidth, leastGap } = spread
  const drawn = spread.sets.length
  const gaps = trailing && restSeconds > 0 ? drawn : drawn - 1
  const free = room - drawn * otherWidth
  const secondsOf = (amounts: readonly Amount[]): number => Math.max(1, sum(amounts.map((amount) => amount.seconds)))
  const scale = free / (sum(spread.sets.map(secondsOf)) + gaps * restSeconds)
  const fits = (font: number): boolean =>
    sum(spread.sets.map((amounts) => unit * widthOf(amounts, font))) + gaps * leastGap <= free
  // letters a little smaller are better than rests out of proportion; much smaller ones are not
  const keepsShape = (font: number): boolean =>
    font >= largest * 0.6 && spread.sets.every((amounts) => unit * widthOf(amounts, font) <= secondsOf(amounts) * scale)
  const fonts = spread.count > MOST_SETS ? [] : FONTS.map((part) => part * largest).filter(fits)
  const font = fonts.find(keepsShape) ?? fonts[0] ?? null
  const first = largest * 0.6
  // where there is no room for words in every block, the first says it for all, if all are alike
  const isAlike = spread.sets.every((amounts) => amounts[0]?.number === spread.sets[0]?.[0]?.number)
  const sets =
    font === null && isAlike
      ? spread.sets.map((amounts, index) => (index === 0 ? saysAll(amounts, spread.count) : amounts))
      : spread.sets
  const work = sets.map(secondsOf)
  const needed = sets.map((amounts, index) => {
    if (font !== null) return unit * widthOf(amounts, font)
    return index === 0 ? unit * widthOf(amounts, first) : 3
  })
  const least = gaps * (font === null ? 2 : leastGap)
  const wanted = work.map((seconds, index) => Math.max(seconds * scale, needed[index] ?? 0))
  // blocks that had to be widened take the room from the rests, and where that is not enough from each other
  const widths = shrinkTo(wanted, needed, restSeconds > 0 ? Math.min(sum(wanted), free - least) : free - least)
  const gap = gaps === 0 ? 0 : Math.max(0, (free - sum(widths)) / gaps)
  let x = 0
  return sets.map((amounts, index) => {
    const width = widths[index] ?? 0
    const slot = {
      x,
      width,
      gap: index < gaps ? gap : 0,
      amounts,
      font: font ?? (index === 0 ? first : 0),
    }
    x += width + otherWidth + gap
    return slot
  })
}

/** "30×10" in place of "10". */
function saysAll(amounts: readonly Amount[], count: number): Amount[] {
  return amounts.map((amount, index) => {
    if (index > 0) return amount
    return { ...amount, number: `${String(count)}${amount.number === 'set' ? ' sets' : `×${amount.number}`}` }
  })
}

/** Widths that add up to the room, none below what it needs as long as that is possible. */
function shrinkTo(wanted: readonly number[], needed: readonly number[], room: number): number[] {
  const over = sum(wanted) - room
  if (over <= 0) return wanted.map((width) => width + (-over * width) / sum(wanted))
  const spare = wanted.map((width, index) => width - (needed[index] ?? 0))
  const allSpare = sum(spare)
  if (allSpare < over) return needed.map((width) => (width * room) / sum(needed))
  return wanted.map((width, index) => width - (over * (spare[index] ?? 0)) / allSpare)
}

function widthOf(amounts: readonly Amount[], font: number): number {
  return sum(amounts.map((amount) => labelWidth(amount, font)))
}
