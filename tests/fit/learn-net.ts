/** Learns a word net from named features, and files it. */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import type { FiledNet, FiledPart } from '../../core/draft/filed-net.ts'
import { rowsOf, UNKNOWN_WORD } from '../../core/draft/word-net.ts'
import type { NetShape } from '../../core/draft/word-net.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { trainNet } from './train-net.ts'
import type { Training } from './train-net.ts'
import type { NetParts, NetSequence } from './net-lesson.ts'

/** Words in the order said with the features of each, its word among them. */
export interface NamedSequence extends Omit<NetSequence, 'rows'> {
  features: readonly (readonly string[])[]
}

/** A net of words: some are learned as unknown ones. */
export function learnNet(shape: NetShape, named: readonly NamedSequence[], rounds: number): FiledNet {
  const { names, rowOf } = rowsOfNames(named, 2, [UNKNOWN_WORD])
  const sequences = named.map(({ features, wanted, weights }) => ({
    rows: features.map((word) => rowsOf(word, { rowOf })),
    wanted,
    weights,
  }))
  const words = { share: 0.1, row: rowOf.get(UNKNOWN_WORD) ?? 0, firstKnown: names.findIndex(isWord) }
  const inputs = { most: 0.5, share: 1 }
  return learn(shape, names, sequences, {
    rounds,
    batch: 32,
    rate: RATE,
    unlearned: { dropped: DROPPED, words },
    inputs,
  })
}

/** A net of sentences, each of which has many features, the rarer the less sure. */
export function learnSentences(shape: NetShape, named: readonly NamedSequence[], rounds: number): FiledNet {
  const { names, rowOf } = rowsOfNames(named, 3, [])
  const sequences = named.map(({ features, wanted, weights }) => ({
    rows: features.map((sentence) => sentence.flatMap((one) => rowOf.get(one) ?? [])),
    wanted,
    weights,
  }))
  const inputs = { most: 0.3, share: 0.25 }
  return learn(shape, names, sequences, {
    ...{ rounds, batch: 16, rate: RATE, inputs },
    unlearned: { dropped: DROPPED, features: 0.3 },
  })
}

const RATE = 4e-3
const DROPPED = 0.4

const isWord = (name: string): boolean => name.startsWith('word ') && name !== UNKNOWN_WORD

/** The features that occur often enough, words the last. */
function rowsOfNames(
  named: readonly NamedSequence[],
  leastOften: number,
  always: readonly string[],
): { names: string[]; rowOf: Map<string, number> } {
  const times = new Map<string, number>(always.map((name) => [name, leastOften]))
  for (const { features } of named)
    for (const word of features) for (const one of word) times.set(one, (times.get(one) ?? 0) + 1)
  // A sentence without words has features without a name, which cannot be filed.
  const known = [...times].flatMap(([name, count]) => (count >= leastOften && !name.endsWith(' ') ? [name] : []))
  const names = [...known.filter((name) => !isWord(name)).sort(), ...known.filter(isWord).sort()]
  return { names, rowOf: new Map(names.map((name, row) => [name, row])) }
}

function learn(
  shape: NetShape,
  names: readonly string[],
  sequences: readonly NetSequence[],
  training: Training,
): FiledNet {
  const start = Date.now()
  const parts = trainNet(shape, names.length, sequences, training, (round, miss) => {
    console.log(`round ${round + 1}: miss ${miss.toFixed(3)} after ${Math.round((Date.now() - start) / 1000)} s`)
  })
  return filed(shape, names, { ...parts, inputs: parts.inputs.map((one) => one * training.inputs.share) })
}

function filed(shape: NetShape, names: readonly string[], { inputs, memories, scores }: NetParts): FiledNet {
  const bySign = new Map<string, string[]>()
  for (const name of names) {
    const sign = name.slice(0, name.indexOf(' '))
    bySign.set(sign, [...(bySign.get(sign) ?? []), name.slice(sign.length + 1)])
  }
  // The rows in the order of the signs, as they will be read.
  const order = [...bySign].flatMap(([sign, all]) => all.map((of) => names.indexOf(`${sign} ${of}`)))
  return {
    shape,
    features: Object.fromEntries(
      [...bySign].map(([sign, all]) => [sign, all.map((of) => of.replaceAll(' ', '_')).join(' ')]),
    ),
    inputs: inBytes(order.flatMap((row) => [...inputs.slice(row * shape.input, (row + 1) * shape.input)])),
    memories: memories.map(({ weights, bias }) => inBytes(withBias(weights, bias))),
    scores: inBytes([...scores]),
  }
}

/** The bias of each row behind it. */
function withBias(weights: Float32Array, bias: Float32Array): number[] {
  const wide = weights.length / bias.length
  return [...bias].flatMap((one, row) => [...weights.slice(row * wide, (row + 1) * wide), one])
}

function inBytes(numbers: readonly number[]): FiledPart {
  const most = numbers.reduce((one, other) => Math.max(one, Math.abs(other)), 0)
  const step = Number((most / 127).toPrecision(4))
  return { step, bytes: Buffer.from(Int8Array.from(numbers, (one) => Math.round(one / step))).toString('base64') }
}

/** @param file in core/draft/words/en @param what its first line says it is */
export function writeNet(file: string, name: string, what: string, net: FiledNet): void {
  const part = ({ step, bytes }: FiledPart): string => `{\n    step: ${step},\n    bytes: \`\n${inLines(bytes)}\`,\n  }`
  const features = Object.entries(net.features).map(([sign, all]) => `    ${sign}: \`\n${inLines(all)}\`,`)
  const shape = Object.entries(net.shape).map(([key, value]) => `${key}: ${value}`)
  const text = `/** ${what} */
import type { FiledNet } from '../../filed-net.ts'

export const ${name}: FiledNet = {
  shape: { ${shape.join(', ')} },
  features: {
${features.join('\n')}
  },
  inputs: ${part(net.inputs)},
  memories: [${net.memories.map(part).join(', ')}],
  scores: ${part(net.scores)},
}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en', file), text)
}

const LINE = 2000

/** Words stay whole; what has no spaces is cut anywhere. */
function inLines(text: string): string {
  return (text.match(text.includes(' ') ? /\S.{0,1980}(?=\s|$)/g : new RegExp(`.{1,${LINE}}`, 'g')) ?? []).join('\n')
}
