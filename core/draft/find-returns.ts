/** Finds where a class comes back to an exercise that it was taught before. */
import type { Speech } from './read-speech.ts'
import { TurnWatcher } from './return-features.ts'
import type { SpokenNames, Turn } from './return-features.ts'
import { sidedTable } from './sided-table.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { RETURN_WEIGHTS } from './words/en/return-weights.ts'

/** A teaching by its first sentence, with what it is called. */
export interface OpenedTeaching {
  sentence: number
  names: SpokenNames
}

/**
 * The returns in order.
 * @param opened the teachings in the order taught
 * @param steady by sentence the log odds of a return as far as the sentence alone tells
 */
export function findReturns(
  speech: Speech,
  weighed: readonly WeighedCandidate[],
  opened: readonly OpenedTeaching[],
  steady: readonly number[],
): Turn[] {
  const watcher = new TurnWatcher(speech, weighed)
  const openedAt = new Map(opened.map(({ sentence, names }) => [sentence, names]))
  const returns: Turn[] = []
  const oddsAt = (index: number): number =>
    openedAt.has(index) ? -Infinity : (steady[index] ?? -Infinity) + oddsOf(speech, watcher.turnFeatures(index))
  for (let index = 0; index < speech.sentences.length; index++) {
    const names = openedAt.get(index)
    if (names) watcher.open(index, names)
    if (names || watcher.current < 0 || openedAt.has(index + 1)) continue
    const odds = oddsAt(index)
    if (odds < LEAST_ODDS) continue
    const teaching = teachingAt(watcher, index)
    if (teaching === null) continue
    // what stands better a sentence or two later starts there
    if ([1, 2].some((step) => oddsAt(index + step) > odds && teachingAt(watcher, index + step) === teaching)) continue
    returns.push({ sentence: index, teaching })
    watcher.turnTo({ sentence: index, teaching })
  }
  return returns
}

/** Who has the turn: named here or soon, else who followed last time round. */
function teachingAt(watcher: TurnWatcher, index: number): number | null {
  for (const step of [0, 1, 2]) {
    const named = watcher.namedIn(index + step).find((one) => one !== watcher.current)
    if (named !== undefined) return named
  }
  return watcher.next
}

/** A return that is missed costs the person more than one too many. */
const LEAST_ODDS = -1

const oddsOf = sidedTable(RETURN_WEIGHTS)
