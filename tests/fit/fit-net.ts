/**
 * Fits the word net on annotated classes and sentences of our own, and writes core/draft/words/en/net-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-net.js [--parts]; --parts writes what other fittings read classes by (apart-tables.ts) and shows how well the kinds of words are told in classes left out.
 */
import { netOf } from '../../core/draft/filed-net.ts'
import type { FiledNet } from '../../core/draft/filed-net.ts'
import { featuresOf, hearInTurn } from '../../core/draft/hear-words.ts'
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import { fitHalves } from './apart-tables.ts'
import { wantedOf } from './cue-examples.ts'
import { learnNet, writeNet } from './learn-net.ts'
import { netExamples } from './net-examples.ts'
import type { NetExample } from './net-examples.ts'

const WHAT =
  'The weights of the word net (hear-words.ts, word-net.ts): a byte for each number. Fitted by tests/fit/fit-net.ts, not by hand.'
const SHAPE = { input: 64, hidden: 64, scores: 1 + CUE_KINDS.length, layers: 1 }
const ROUNDS = 10

function fit(examples: readonly NetExample[]): FiledNet {
  const named = examples.map(({ words, kinds, weights }) => ({
    features: words.map(featuresOf),
    wanted: kinds.map(wantedOf),
    weights,
  }))
  return learnNet(SHAPE, named, ROUNDS)
}

/** Words of teachings: how often the likeliest kind is one of those marked. */
function showApart(net: FiledNet, examples: readonly NetExample[]): void {
  const ready = netOf(net)
  const sum = { hit: 0, wanted: 0, found: 0 }
  for (const { words, kinds, weights } of examples) {
    const { logs, scores } = hearInTurn(words, ready)
    words.forEach((_, index) => {
      if ((weights[index] ?? 0) === 0) return
      const own = logs.subarray(index * scores, (index + 1) * scores)
      const best = own.indexOf(Math.max(...own))
      const marked = kinds[index] ?? []
      if (marked.length > 0) sum.wanted += 1
      if (best > 0) sum.found += 1
      const kind = CUE_KINDS[best - 1]
      if (kind !== undefined && marked.includes(kind)) sum.hit += 1
    })
  }
  console.log(`words of classes left out: F1 ${((200 * sum.hit) / (sum.wanted + sum.found)).toFixed(1)}`)
}

const examples = netExamples()
if (process.argv.includes('--parts')) fitHalves('net', examples, ({ from }) => from, { fit, show: showApart })
else writeNet('net-weights.ts', 'NET_WEIGHTS', WHAT, fit(examples))
