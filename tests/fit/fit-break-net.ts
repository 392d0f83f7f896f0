/**
 * Fits the net that hears marks (core/draft/hear-breaks.ts) on our own punctuated speech, and writes core/draft/words/en/break-net-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-break-net.js [--parts]; --parts writes what other fittings read classes by (apart-tables.ts) and shows how well marks are told in classes left out.
 */
import { HEARD_MARKS, hearMarks, markFeatures } from '../../core/draft/hear-breaks.ts'
import { netOf } from '../../core/draft/filed-net.ts'
import type { FiledNet } from '../../core/draft/filed-net.ts'
import { fitHalves } from './apart-tables.ts'
import { breakExamples } from './break-examples.ts'
import type { BreakExample } from './break-examples.ts'
import { learnNet, writeNet } from './learn-net.ts'

const WHAT =
  'The weights of the net that hears marks (hear-breaks.ts, word-net.ts): a byte for each number. Fitted by tests/fit/fit-break-net.ts, not by hand.'
const SHAPE = { input: 64, hidden: 64, scores: HEARD_MARKS.length, layers: 2 }
const ROUNDS = 12
/** The words that are learned together. */
const LONGEST = 80
/** Sentences that stand alone tell nothing of what comes before them. */
const ALONE_WEIGHT = 0.5

function fit(examples: readonly BreakExample[]): FiledNet {
  const named = examples.flatMap(({ words, marks, group }) =>
    Array.from({ length: Math.ceil(words.length / LONGEST) }, (_, at) => {
      const part = words.slice(at * LONGEST, (at + 1) * LONGEST)
      return {
        features: part.map(markFeatures),
        wanted: part.map((_word, place) =>
          HEARD_MARKS.map((mark) => Number(mark === (marks[at * LONGEST + place] ?? 'none'))),
        ),
        weights: part.map((_word, place) => (at + place === 0 ? 0 : group === 'sentences' ? ALONE_WEIGHT : 1)),
      }
    }),
  )
  return learnNet(SHAPE, named, ROUNDS)
}

function showApart(net: FiledNet, examples: readonly BreakExample[]): void {
  const ready = netOf(net)
  const [any, stops] = [
    { hit: 0, all: 0 },
    { hit: 0, all: 0 },
  ]
  for (const { words, marks } of examples)
    hearMarks(words, ready).forEach(({ comma, stop }, at) => {
      if (at === 0) return
      const found = Math.max(comma, stop) < 0 ? 'none' : stop > comma ? 'stop' : 'comma'
      const wanted = marks[at] ?? 'none'
      any.all += Number(found !== 'none') + Number(wanted !== 'none')
      any.hit += Number(found !== 'none' && wanted !== 'none')
      stops.all += Number(found === 'stop') + Number(wanted === 'stop')
      stops.hit += Number(found === 'stop' && wanted === 'stop')
    })
  const f1 = ({ hit, all }: { hit: number; all: number }): string => ((200 * hit) / all).toFixed(1)
  console.log(`classes left out: marks F1 ${f1(any)}, full stops F1 ${f1(stops)}`)
}

const examples = breakExamples()
if (process.argv.includes('--parts')) fitHalves('break-net', examples, ({ title }) => title, { fit, show: showApart })
else writeNet('break-net-weights.ts', 'BREAK_NET_WEIGHTS', WHAT, fit(examples))
