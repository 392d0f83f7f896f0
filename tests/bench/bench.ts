/** What a measurement is and how it tells its figures: series with all their raw values, and the goals they are held to. */
import { readFileSync } from 'node:fs'

export interface Series {
  /** What was measured, and on which side. */
  name: string
  /** Such as s, CPU-s, MB, requests/s. */
  unit: string
  raw: number[]
}

export interface Goal {
  /** One sentence that names both sides of the comparison. */
  what: string
  value: number
  /** The value must be at least, or at most, the limit. */
  wants: 'at least' | 'at most'
  limit: number
}

export interface Report {
  series: Series[]
  goals: Goal[]
  /** How it was measured, with versions of what it was measured beside. */
  notes: string[]
}

export interface BenchContext {
  /** Smaller sizes and fewer rounds: a look in minutes. Goals still hold unless the bench says otherwise in a note. */
  quick: boolean
  /** A folder of its own that is removed afterwards. */
  folder: string
  /** Tells the person who waits what is being done. */
  say: (text: string) => void
}

/** One file `<name>.bench.ts` in tests/bench exports one of these as `bench`. It runs in a process of its own. */
export interface Bench {
  /** One sentence for the list. */
  about: string
  /** @throws Skipped when this machine lacks what is needed */
  run: (context: BenchContext) => Promise<Report>
}

/** Thrown by a bench that cannot be run here; the message says what is missing and how to get it. */
export class Skipped extends Error {}

/** The middle value; of an even number, the mean of the two in the middle. @throws RangeError without values */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length / 2
  const [low, high] = [sorted[Math.ceil(middle) - 1], sorted[Math.floor(middle)]]
  if (low === undefined || high === undefined) throw new RangeError('There is no median of nothing.')
  return (low + high) / 2
}

/** Runs every side once a round and swaps their order each round, so that none is always the one on the warm machine. */
export async function swapRounds(rounds: number, sides: readonly ((round: number) => Promise<void>)[]): Promise<void> {
  for (let round = 0; round < rounds; round += 1) {
    const order = round % 2 === 0 ? sides : sides.toReversed()
    for (const side of order) await side(round)
  }
}

/** Ticks a second of the times in /proc; fixed by Linux for programs (man page proc(5), USER_HZ). */
const TICKS = 100

/**
 * CPU seconds of all child processes that have ended so far, with theirs; the difference of two readings is what the
 * children in between cost. null where there is no /proc.
 */
export function childCpuSeconds(): number | null {
  try {
    const text = readFileSync('/proc/self/stat', 'utf8')
    // the name, in brackets, may hold spaces; after it, fields 3 and on: cutime is 16, cstime 17
    const fields = text.slice(text.lastIndexOf(')') + 2).split(' ')
    return (Number(fields[13]) + Number(fields[14])) / TICKS
  } catch {
    return null
  }
}

export function isMet({ value, wants, limit }: Goal): boolean {
  return wants === 'at least' ? value >= limit : value <= limit
}
