/**
 * Fits the word net on annotated classes and sentences of our own, and writes core/draft/words/en/net-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-net.js [--parts]; --parts writes what other fittings read classes by (apart-tables.ts) and shows how well the kinds of words are told in classes left out.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { netOf } from '../../core/draft/filed-net.ts'
import type { FiledNet } from '../../core/draft/filed-net.ts'
import { featuresOf, hearInTurn, rowsOf, UNKNOWN_WORD } from '../../core/draft/hear-words.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import { writeApartNets } from './apart-tables.ts'
import { wantedOf } from './cue-examples.ts'
import { netExamples } from './net-examples.ts'
import type { NetExample } from './net-examples.ts'
import { trainNet } from './train-net.ts'
import type { NetParts } from './train-net.ts'

const SHAPE = { input: 64, hidden: 64, scores: 1 + CUE_KINDS.length }
const LEAST_OFTEN = 2
const ROUNDS = 10

function fit(examples: readonly NetExample[]): FiledNet {
  const times = new Map<string, number>([[UNKNOWN_WORD, LEAST_OFTEN]])
  for (const { words } of examples)
    for (const word of words) for (const one of featuresOf(word)) times.set(one, (times.get(one) ?? 0) + 1)
  const known = [...times].flatMap(([name, count]) => (count >= LEAST_OFTEN ? [name] : []))
  const isWord = (name: string): boolean => name.startsWith('word ') && name !== UNKNOWN_WORD
  const names = [...known.filter((name) => !isWord(name)).sort(), ...known.filter(isWord).sort()]
  const rowOf = new Map(names.map((name, row) => [name, row]))
  const sequences = examples.map(({ words, kinds, weights }) => ({
    rows: words.map((word) => rowsOf(word, { rowOf })),
    wanted: kinds.map(wantedOf),
    weights,
  }))
  const start = Date.now()
  const parts = trainNet(
    SHAPE,
    names.length,
    sequences,
    {
      rounds: ROUNDS,
      batch: 32,
      rate: 4e-3,
      dropped: 0.4,
      hidden: { share: 0.1, row: rowOf.get(UNKNOWN_WORD) ?? 0, firstKnown: names.findIndex(isWord) },
    },
    (round, miss) => {
      console.log(`round ${round + 1}: miss ${miss.toFixed(3)} after ${Math.round((Date.now() - start) / 1000)} s`)
    },
  )
  return filed(names, parts)
}

function filed(names: readonly string[], parts: NetParts): FiledNet {
  const bySign = new Map<string, string[]>()
  for (const name of names) {
    const [sign = '', of = ''] = name.split(' ')
    bySign.set(sign, [...(bySign.get(sign) ?? []), of])
  }
  const features = Object.fromEntries([...bySign].map(([sign, all]) => [sign, all.join(' ')]))
  // The rows in the order of the signs, as they will be read.
  const order = [...bySign].flatMap(([sign, all]) => all.map((of) => names.indexOf(`${sign} ${of}`)))
  const inputs = order.flatMap((row) => [...parts.inputs.slice(row * SHAPE.input, (row + 1) * SHAPE.input)])
  return {
    shape: SHAPE,
    features,
    inputs: inBytes(inputs),
    forwards: inBytes(withBias(parts.forwards, parts.forwardsBias)),
    backwards: inBytes(withBias(parts.backwards, parts.backwardsBias)),
    scores: inBytes([...parts.scores]),
  }
}

/** The bias of each row behind it. */
function withBias(weights: Float32Array, bias: Float32Array): number[] {
  const wide = weights.length / bias.length
  return [...bias].flatMap((one, row) => [...weights.slice(row * wide, (row + 1) * wide), one])
}

function inBytes(numbers: readonly number[]): { step: number; bytes: string } {
  const most = numbers.reduce((one, other) => Math.max(one, Math.abs(other)), 0)
  const step = Number((most / 127).toPrecision(4))
  return { step, bytes: Buffer.from(Int8Array.from(numbers, (one) => Math.round(one / step))).toString('base64') }
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

/** Fitted twice, each time without every second class. */
function writeHalves(examples: readonly NetExample[]): void {
  const titles = [...new Set(examples.flatMap(({ from }) => (from === 'sentences' ? [] : [from])))]
  const of = Object.fromEntries(titles.map((title, index) => [title, index % 2]))
  const nets: FiledNet[] = []
  for (const half of [0, 1]) {
    const net = fit(examples.filter(({ from }) => of[from] !== half))
    showApart(
      net,
      examples.filter(({ from }) => of[from] === half),
    )
    nets.push(net)
  }
  writeApartNets({ nets, of })
}

function write(net: FiledNet): void {
  const part = (name: 'inputs' | 'forwards' | 'backwards' | 'scores'): string =>
    `  ${name}: {\n    step: ${net[name].step},\n    bytes: \`\n${inLines(net[name].bytes)}\`,\n  },`
  const features = Object.entries(net.features).map(([sign, all]) => `    ${sign}: \`\n${inLines(all)}\`,`)
  const text = `/** The weights of the word net (hear-words.ts, word-net.ts): a byte for each number. Fitted by tests/fit/fit-net.ts, not by hand. */
import type { FiledNet } from '../../filed-net.ts'

export const NET_WEIGHTS: FiledNet = {
  shape: { input: ${SHAPE.input}, hidden: ${SHAPE.hidden}, scores: ${SHAPE.scores} },
  features: {
${features.join('\n')}
  },
${(['inputs', 'forwards', 'backwards', 'scores'] as const).map(part).join('\n')}
}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/net-weights.ts'), text)
}

const LINE = 2000

/** Words stay whole; what has no spaces is cut anywhere. */
function inLines(text: string): string {
  return (text.match(text.includes(' ') ? /\S.{0,1980}(?=\s|$)/g : new RegExp(`.{1,${LINE}}`, 'g')) ?? []).join('\n')
}

const examples = netExamples()
if (process.argv.includes('--parts')) writeHalves(examples)
else write(fit(examples))
