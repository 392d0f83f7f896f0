/** Chooses the sentences that open a teaching: those that are likeliest together with the names behind them. */
import type { WeighedCandidate } from './weigh-starts.ts'

/**
 * The sentences that open a teaching, in order.
 * @param openings by sentence the log odds that another exercise is opened there
 * @param favour added to them: missing one costs more than one too many
 */
export function chooseOpenings(
  weighed: readonly WeighedCandidate[],
  openings: readonly number[],
  favour: number,
): number[] {
  const named = namesBySentence(weighed)
  const count = openings.length
  // From each sentence on: the best that can be had, and the best where an opening stands just there.
  const rest = new Float64Array(count + 1)
  const chosen: (Choice | null)[] = openings.map(() => null)
  for (let begin = count - 1; begin >= 0; begin--) {
    const odds = openings[begin] ?? -Infinity
    const choice = odds > LEAST_ODDS ? bestChoice(named, rest, begin, odds + favour) : null
    const skip = rest[begin + 1] ?? 0
    if (choice && choice.score > skip) {
      chosen[begin] = choice
      rest[begin] = choice.score
    } else rest[begin] = skip
  }
  const begins: number[] = []
  for (let at = 0; at < count;) {
    const choice = chosen[at]
    if (choice) begins.push(at)
    at = choice ? choice.next : at + 1
  }
  return begins
}

interface Choice {
  score: number
  /** The next opening stands here or later. */
  next: number
}

/** The best name behind an opening, before the next one. */
function bestChoice(
  named: ReadonlyMap<number, readonly WeighedCandidate[]>,
  rest: Float64Array,
  begin: number,
  odds: number,
): Choice {
  let best: Choice = { score: -Infinity, next: begin + 1 }
  let worth = UNNAMED
  const end = Math.min(rest.length - 1, begin + LATEST)
  for (let next = begin + 1; next <= end; next++) {
    for (const { odds: own } of named.get(next - 1) ?? [])
      worth = Math.max(worth, NAME_SHARE * own - LATENESS * (next - 1 - begin))
    const score = odds + worth + (rest[next] ?? 0)
    if (next - begin >= SHORTEST && score > best.score) best = { score, next }
  }
  return best
}

function namesBySentence(weighed: readonly WeighedCandidate[]): Map<number, WeighedCandidate[]> {
  const named = new Map<number, WeighedCandidate[]>()
  const firstAt = new Map<string, number>()
  for (const one of weighed) {
    const { listed, back, sentence, key } = one.candidate
    if (back || one.odds < LEAST_NAME) continue
    const isAgain = sentence - (firstAt.get(key) ?? sentence) >= AGAIN_SENTENCES
    if (!listed && one.odds > 0 && !firstAt.has(key)) firstAt.set(key, sentence)
    const odds = one.odds - (listed ? LISTED : 0) - (isAgain ? AGAIN : 0)
    named.set(sentence, [...(named.get(sentence) ?? []), { ...one, odds }])
  }
  return named
}

/** Log odds; what is less likely is not looked at. */
const LEAST_ODDS = -6
const LEAST_NAME = -4
/** What is told in a row is seldom taught there. */
const LISTED = 1.5
/** What has started before, so many sentences ago or more, is come back to. */
const AGAIN = 2
const AGAIN_SENTENCES = 4
/** Names are known to the openings already. */
const NAME_SHARE = 0.5
/**
 * Log odds: missing an opening costs more than one too many, most of all where breaks are found and odds are lower than they
 * should be. In short classes more is told in fewer words.
 */
export const FAVOUR = { marked: 1.5, plain: 1.9, short: 1.9 } as const
/** Few exercises are taught without any name. */
const UNNAMED = -2
/** For each sentence that a name comes after its opening. */
const LATENESS = 0.1
/** A name comes within so many sentences, and no teaching is shorter than so many. */
const LATEST = 15
const SHORTEST = 2
