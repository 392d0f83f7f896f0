/** Learns a word net from named features, and files it. */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import type { FiledNet, FiledPart } from '../../core/draft/filed-net.ts'
import { rowsOf, UNKNOWN_WORD } from '../../core/draft/word-net.ts'
import type { NetShape } from '../../core/draft/word-net.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { trainNet } from './train-net.ts'
import type { NetParts, NetSequence } from './net-lesson.ts'

/** Words in the order said with the features of each, its word among them. */
export interface NamedSequence extends Omit<NetSequence, 'rows'> {
  features: readonly (readonly string[])[]
}

const LEAST_OFTEN = 2

export function learnNet(shape: NetShape, named: readonly NamedSequence[], rounds: number): FiledNet {
  const times = new Map<string, number>([[UNKNOWN_WORD, LEAST_OFTEN]])
  for (const { features } of named)
    for (const word of features) for (const one of word) times.set(one, (times.get(one) ?? 0) + 1)
  const known = [...times].flatMap(([name, count]) => (count >= LEAST_OFTEN ? [name] : []))
  const isWord = (name: string): boolean => name.startsWith('word ') && name !== UNKNOWN_WORD
  const names = [...known.filter((name) => !isWord(name)).sort(), ...known.filter(isWord).sort()]
  const rowOf = new Map(names.map((name, row) => [name, row]))
  const sequences = named.map(({ features, wanted, weights }) => ({
    rows: features.map((word) => rowsOf(word, { rowOf })),
    wanted,
    weights,
  }))
  const words = { share: 0.1, row: rowOf.get(UNKNOWN_WORD) ?? 0, firstKnown: names.findIndex(isWord) }
  const training = { rounds, batch: 32, rate: 4e-3, unlearned: { dropped: 0.4, words } }
  const start = Date.now()
  const parts = trainNet(shape, names.length, sequences, training, (round, miss) => {
    console.log(`round ${round + 1}: miss ${miss.toFixed(3)} after ${Math.round((Date.now() - start) / 1000)} s`)
  })
  return filed(shape, names, parts)
}

function filed(shape: NetShape, names: readonly string[], { inputs, memories, scores }: NetParts): FiledNet {
  const bySign = new Map<string, string[]>()
  for (const name of names) {
    const [sign = '', of = ''] = name.split(' ')
    bySign.set(sign, [...(bySign.get(sign) ?? []), of])
  }
  // The rows in the order of the signs, as they will be read.
  const order = [...bySign].flatMap(([sign, all]) => all.map((of) => names.indexOf(`${sign} ${of}`)))
  return {
    shape,
    features: Object.fromEntries([...bySign].map(([sign, all]) => [sign, all.join(' ')])),
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
