/**
 * Fits the net that hears where exercises open and come back (core/draft/hear-turns.ts) on all marked classes, and writes core/draft/words/en/turn-net-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-turn-net.js [--parts]; --parts writes what other fittings read classes by (apart-tables.ts) and shows how well turns are told in classes left out.
 */
import { findKit } from '../../core/draft/find-kit.ts'
import { netOf } from '../../core/draft/filed-net.ts'
import type { FiledNet } from '../../core/draft/filed-net.ts'
import { HEARD_TURNS, hearTurns, turnFeatures } from '../../core/draft/hear-turns.ts'
import { weighCandidates } from '../../core/draft/weigh-starts.ts'
import { fitHalves } from './apart-tables.ts'
import { nearest } from './fit-sentences.ts'
import { knownClasses } from './known-classes.ts'
import type { KnownClass } from './known-classes.ts'
import { learnSentences, writeNet } from './learn-net.ts'
import { readApart } from './read-apart.ts'

type Turn = (typeof HEARD_TURNS)[number]

/** A class as written or plain. */
interface TurnExample {
  title: string
  plain: boolean
  /** How much each of its sentences counts. */
  weight: number
  /** By sentence. */
  features: readonly (readonly string[])[]
  turns: readonly Turn[]
}

const WHAT =
  'The weights of the net that hears turns (hear-turns.ts, word-net.ts): a byte for each number. Fitted by tests/fit/fit-turn-net.ts, not by hand.'
const SHAPE = { input: 64, hidden: 64, scores: HEARD_TURNS.length, layers: 2 }
const ROUNDS = 18
/** The classes that set the manner of marking count for more. */
const CORPUS_WEIGHT = 3
/** The sentences that are learned together. */
const LONGEST = 60

function examplesOf(known: KnownClass): TurnExample[] {
  return readApart(known, false).map(({ speech, plain }) => {
    const times = speech.sentences.map(({ offset }) => speech.timeOf(offset))
    const middles = speech.sentences.map(({ offset, end }) => speech.timeOf((offset + end) >> 1))
    const turns = middles.map((ms): Turn =>
      known.taught.some(({ spans }) => spans.some(({ startMs, endMs }) => ms >= startMs && ms < endMs))
        ? 'goes on'
        : 'over',
    )
    for (const { spans } of known.taught)
      for (const { startMs } of spans.slice(1)) turns[nearest(times, startMs)] = 'comes back'
    for (const { spans } of known.taught)
      for (const { startMs } of spans.slice(0, 1)) turns[nearest(times, startMs)] = 'opens'
    const features = turnFeatures(speech, weighCandidates(speech, findKit(speech.text)))
    return { title: known.title, plain, weight: known.group === 'corpus' ? CORPUS_WEIGHT : 1, features, turns }
  })
}

function fit(examples: readonly TurnExample[]): FiledNet {
  const named = examples.flatMap(({ features, turns, weight }) =>
    Array.from({ length: Math.ceil(turns.length / LONGEST) }, (_, at) => {
      const part = turns.slice(at * LONGEST, (at + 1) * LONGEST)
      return {
        features: features.slice(at * LONGEST, (at + 1) * LONGEST),
        wanted: part.map((turn) => HEARD_TURNS.map((one) => Number(one === turn))),
        weights: part.map(() => weight),
      }
    }),
  )
  return learnSentences(SHAPE, named, ROUNDS)
}

/** Right is only the very sentence. */
function showApart(net: FiledNet, examples: readonly TurnExample[]): void {
  const ready = netOf(net)
  for (const unpunctuated of [false, true]) {
    const sums = { opens: { hit: 0, all: 0 }, 'comes back': { hit: 0, all: 0 }, over: { hit: 0, all: 0 } }
    for (const { features, turns, plain } of examples) {
      if (plain !== unpunctuated) continue
      hearTurns(features, ready).forEach(({ opens, comesBack, over }, at) => {
        for (const [turn, isHeard] of [
          ['opens', opens > -0.5],
          ['comes back', comesBack > -0.5],
          ['over', over > 0],
        ] as const) {
          const isSo = turns[at] === turn
          sums[turn].all += Number(isHeard) + Number(isSo)
          sums[turn].hit += Number(isHeard && isSo)
        }
      })
    }
    const shown = Object.entries(sums).map(([turn, { hit, all }]) => `${turn} F1 ${((200 * hit) / all).toFixed(1)}`)
    console.log(`classes left out${unpunctuated ? ', plain' : ''}: ${shown.join(', ')}`)
  }
}

const without = process.argv.includes('--without') ? (process.argv.at(-1) ?? '').split(',') : []
const known = knownClasses(['dev', 'fit', 'more']).filter(({ title }) => !without.some((one) => title.startsWith(one)))
const examples = known.flatMap(examplesOf)
if (process.argv.includes('--parts')) fitHalves('turn-net', examples, ({ title }) => title, { fit, show: showApart })
else writeNet('turn-net-weights.ts', 'TURN_NET_WEIGHTS', WHAT, fit(examples))
