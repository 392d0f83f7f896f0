/** Holds the candidates of one exercise against each other: one pass over all, so that a name said ten thousand times costs no more. */
import type { Candidate } from './naming.ts'
import type { Speech } from './read-speech.ts'

/** The candidates of one key. */
export interface Kin {
  count: number
  strong: number
  /** The best worth, where it is reached first and how often, and the next best. */
  best: number
  firstBest: number
  bests: number
  second: number
  /** For each of them: whether it is a strong one, and the one before it. */
  isStrong: Map<number, boolean>
  before: Map<number, number>
  last: number | undefined
}

/** What one candidate has to know of the others of its key. */
export interface Others {
  count: number
  /** Index of the last one in front. */
  before: number | undefined
  best: number
  /** No other one in front is as good as the best. */
  isFirst: boolean
  /** An other one is strong and in no list. */
  isStronger: boolean
}

/** @param worths of the candidates, in their order; none is below -9 */
export function groupKin(candidates: readonly Candidate[], worths: readonly number[]): Map<string, Kin> {
  const byKey = new Map<string, Kin>()
  candidates.forEach(({ key, strength, listed }, index) => {
    const kin = byKey.get(key) ?? emptyKin()
    byKey.set(key, kin)
    const isStrong = strength >= 2 && !listed
    kin.count += 1
    if (isStrong) kin.strong += 1
    kin.isStrong.set(index, isStrong)
    if (kin.last !== undefined) kin.before.set(index, kin.last)
    kin.last = index
    addWorth(kin, worths[index] ?? 0, index)
  })
  return byKey
}

function emptyKin(): Kin {
  return {
    ...{ count: 0, strong: 0, best: -9, firstBest: -1, bests: 0, second: -9 },
    ...{ isStrong: new Map<number, boolean>(), before: new Map<number, number>(), last: undefined },
  }
}

function addWorth(kin: Kin, worth: number, index: number): void {
  if (worth > kin.best) Object.assign(kin, { second: kin.best, best: worth, firstBest: index, bests: 1 })
  else if (worth === kin.best) kin.bests += 1
  else kin.second = Math.max(kin.second, worth)
}

/** What is known of the others of a candidate's key. */
export function othersOf(kin: Kin | undefined, index: number): Others {
  if (!kin) return { count: 0, before: undefined, best: -9, isFirst: true, isStronger: false }
  const isOnlyBest = kin.firstBest === index && kin.bests === 1
  return {
    count: kin.count - 1,
    before: kin.before.get(index),
    best: isOnlyBest ? kin.second : kin.best,
    isFirst: kin.firstBest === index,
    isStronger: kin.strong - (kin.isStrong.get(index) === true ? 1 : 0) > 0,
  }
}

/** Words; twice the widest gap that counts, so that the length of a name makes no difference. */
const FAR_WORDS = 60

/** The next known name of another exercise to one side. */
export function neighbour(
  speech: Speech,
  all: readonly Candidate[],
  index: number,
  step: 1 | -1,
): Candidate | undefined {
  const here = all[index]
  for (let at = index + step; here && at >= 0 && at < all.length; at += step) {
    const other = all[at]
    if (!other) break
    // What lies further away than the widest gap counts is as good as what lies beyond it.
    const [from, to] = step === -1 ? [other.offset, here.offset] : [here.end, other.offset]
    if (speech.wordsBefore(to) - speech.wordsBefore(from) > FAR_WORDS) return other
    if (!other.entry || other.key === here.key) continue
    if (step === -1 ? other.offset < here.offset : other.offset >= here.end) return other
  }
  return undefined
}
