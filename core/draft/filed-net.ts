/** The word net as it is filed: a byte for each number. */
import { bytesOf } from './base-64.ts'
import { Lstm, widthOf } from './word-net.ts'
import type { NetShape, WordNet } from './word-net.ts'

/** A net as it is filed: numbers as whole steps between -127 and 127, a byte each, in base 64. */
export interface FiledNet {
  shape: NetShape
  /** By sign the words or classes whose rows follow each other; `_` = a space. */
  features: Readonly<Record<string, string>>
  inputs: FiledPart
  /** Of each layer the one that reads forwards, then the one that reads backwards. */
  memories: readonly FiledPart[]
  scores: FiledPart
}

export interface FiledPart {
  step: number
  bytes: string
}

/** A filed net, ready to be used. */
export function netOf(filed: FiledNet): WordNet {
  const names = Object.entries(filed.features).flatMap(([sign, all]) =>
    all
      .trim()
      .split(/\s+/)
      .map((of) => `${sign} ${of.replaceAll('_', ' ')}`),
  )
  return {
    shape: filed.shape,
    rowOf: new Map(names.map((name, row) => [name, row])),
    inputs: numbersOf(filed.inputs),
    memories: filed.memories.map(
      (one, at) => new Lstm(widthOf(filed.shape, at >> 1), filed.shape.hidden, numbersOf(one)),
    ),
    scores: numbersOf(filed.scores),
  }
}

function numbersOf({ step, bytes }: FiledPart): Float32Array {
  const whole = new Int8Array(bytesOf(bytes).buffer)
  const numbers = new Float32Array(whole.length)
  for (let at = 0; at < whole.length; at++) numbers[at] = (whole[at] ?? 0) * step
  return numbers
}
