/** Finds where a class comes back to an exercise that it was taught before. */
import type { Speech } from './read-speech.ts'
import { TurnWatcher } from './return-features.ts'
import type { Turn, TurnHistory } from './return-features.ts'
import { sidedTable } from './sided-table.ts'
import type { SpokenNames } from './turn-names.ts'
import type { SentenceOdds } from './weigh-openings.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { ROUND_CALL } from './words/en/call-words.ts'
import { RETURN_WEIGHTS } from './words/en/return-weights.ts'

/** A teaching by its first sentence, with what it is called. */
export interface OpenedTeaching {
  sentence: number
  names: SpokenNames
  /** Log odds that another exercise is opened there. */
  odds: number
}

/** One way in which the class may have gone so far. */
interface Path {
  /** Log of the odds of all that was and was not taken for a return. */
  score: number
  history: TurnHistory
  /** Its returns, the last first. */
  last: { turn: Turn; before: Path['last'] } | null
}

/**
 * The returns in order, each to a teaching by its index; a teaching that opens with the name of another is a return to that one, where
 * that is likelier. They are those that are likeliest together, since each tells who may be next: some ways are followed side by side.
 * @param opened the teachings in the order taught
 */
export function findReturns(
  speech: Speech,
  weighed: readonly WeighedCandidate[],
  opened: readonly OpenedTeaching[],
  { comingBack: steady, heard }: Pick<SentenceOdds, 'comingBack' | 'heard'>,
): Turn[] {
  const watcher = new TurnWatcher(speech, weighed, heard)
  const openedAt = new Map(opened.map((one, place) => [one.sentence, { ...one, place }]))
  const places: number[] = []
  let paths: Path[] = [{ score: 0, history: watcher.history, last: null }]
  for (let index = 0; index < speech.sentences.length; index++) {
    const alone = steady[index] ?? -Infinity
    const main = openedAt.get(index)
    if (main) {
      watcher.history = paths[0]?.history ?? watcher.history
      const named = watcher.namedIn(index)[0] ?? watcher.next ?? undefined
      const odds = named === undefined ? -Infinity : alone + oddsOf(speech, watcher.turnFeatures(index))
      const isReturn = named !== undefined && odds - main.odds > LEAST_AHEAD
      if (!isReturn) places.push(main.place)
      const turn = isReturn ? { sentence: index, teaching: named } : watcher.open(index, main.names)
      paths = paths.map((path) => {
        watcher.history = path.history
        watcher.turnTo(turn)
        return { ...path, history: watcher.history, last: isReturn ? { turn, before: path.last } : path.last }
      })
      continue
    }
    if (watcher.current < 0 || openedAt.has(index + 1) || alone < LEAST_ALONE) continue
    paths = likeliest(paths.flatMap((path) => stepsFrom(path, { speech, watcher, index, alone })))
  }
  const returns: Turn[] = []
  for (let one = paths[0]?.last ?? null; one; one = one.before)
    returns.unshift({ sentence: one.turn.sentence, teaching: places[one.turn.teaching] ?? 0 })
  return returns
}

interface Step {
  speech: Speech
  watcher: TurnWatcher
  index: number
  /** Log odds as far as the sentence alone tells. */
  alone: number
}

/** A path goes on with what is done, or comes back to something. */
function stepsFrom(path: Path, { speech, watcher, index, alone }: Step): Path[] {
  watcher.history = path.history
  const called = calledAt(speech, watcher, index)
  const teaching = called ?? watcher.next
  if (teaching === null) return [path]
  const side = speech.unpunctuated ? 'plain' : 'marked'
  const held = called === null && isNamedSoon(watcher, index) ? GOES_ON[side] : 0
  const odds = alone + oddsOf(speech, watcher.turnFeatures(index)) - LEAST_ODDS[side] - held
  const against = Math.log1p(Math.exp(odds))
  const stays = { ...path, score: path.score - against }
  if (odds < LEAST_FOLLOWED) return [stays]
  const turn = { sentence: index, teaching }
  watcher.turnTo(turn)
  const turns = { score: path.score + odds - against, history: watcher.history, last: { turn, before: path.last } }
  return [stays, turns]
}

/** The likeliest ways; of those that stand at the same turn the likelier is enough. */
function likeliest(paths: readonly Path[]): Path[] {
  if (paths.length === 1) return [...paths]
  const known = new Set<string>()
  return paths
    .toSorted((a, b) => b.score - a.score)
    .filter(({ history: { turn, followers } }) => {
      const key = `${String(turn?.teaching)} ${String(turn?.sentence)} ${String(followers.size)}`
      return known.has(key) ? false : known.add(key)
    })
    .slice(0, MOST_PATHS)
}

/** Who has the turn: named here or soon; where a round begins, it may be who was at it. */
function calledAt(speech: Speech, watcher: TurnWatcher, index: number): number | null {
  const isRound = ROUND_CALL.test(speech.sentences[index]?.words ?? '')
  for (const step of isRound ? [0, 1, 2, 3] : [0, 1, 2]) {
    const named = watcher.namedIn(index + step).find((one) => isRound || one !== watcher.current)
    if (named !== undefined) return named
  }
  return null
}

/** What goes on is named here or soon. */
function isNamedSoon(watcher: TurnWatcher, index: number): boolean {
  return [0, 1, 2].some((step) => watcher.namedIn(index + step).includes(watcher.current))
}

/** An opening is a return where the log of the odds of that is greater by so much. */
const LEAST_AHEAD = 0.5
/** A return that is missed costs the person more than one too many; where breaks are found there are many to be wrong about. */
const LEAST_ODDS = { marked: -0.6, plain: 0 } as const
/** Below these odds nobody comes back, whoever has the turn. */
const LEAST_ALONE = -7
/** Log odds: what goes on and is named soon hardly gives way to another one that is not. */
const GOES_ON = { marked: 0.7, plain: 0 } as const
const LEAST_FOLLOWED = -4
const MOST_PATHS = 8

const oddsOf = sidedTable(RETURN_WEIGHTS)
