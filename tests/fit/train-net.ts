/** Fits a word net (core/draft/word-net.ts) on sequences of words whose scores are known: gradients by hand, steps by Adam. */
import type { NetShape } from '../../core/draft/word-net.ts'
import { addSlopes, firstRoom } from './net-lesson.ts'
import type { InputScale, NetParts, NetSequence, Unlearned } from './net-lesson.ts'

export interface Training {
  rounds: number
  batch: number
  /** At the start; falls to LAST_RATE. */
  rate: number
  unlearned: Unlearned
  inputs: InputScale
}

const LAST_RATE = 1e-4
const DECAY = 0.01
const LONGEST_STEP = 1
const [FIRST_MEAN, SECOND_MEAN, TINY] = [0.9, 0.999, 1e-8]

/** Steps along the gradient of batches (Adam: Kingma and Ba 2015, with decay apart: Loshchilov and Hutter 2019). The same input gives the same weights. */
export function trainNet(
  shape: NetShape,
  rows: number,
  sequences: readonly NetSequence[],
  training: Training,
  onRound: (round: number, miss: number, parts: NetParts) => void = () => undefined,
): NetParts {
  const random = randomFrom(1)
  const room = firstRoom(shape, rows, training.inputs, random)
  const learned = allOf(room.parts)
  const slopes = allOf(room.slopes)
  const [means, squares] = [0, 1].map(() => learned.map(({ length }) => new Float32Array(length)))
  let step = 0
  for (let round = 0; round < training.rounds; round++) {
    const rate = training.rate * (1 - round / training.rounds) + LAST_RATE
    const order = shuffled(sequences, random)
    let miss = 0
    let counted = 0
    for (let at = 0; at < order.length; at += training.batch) {
      const batch = order.slice(at, at + training.batch)
      for (const slope of slopes) slope.fill(0)
      const total = batch.reduce((sum, { weights }) => sum + weights.reduce((one, other) => one + other, 0), 0)
      if (total === 0) continue
      for (const one of batch)
        miss +=
          addSlopes(shape, room, { one, total, unlearned: training.unlearned, share: training.inputs.share, random }) *
          total
      counted += total
      step += 1
      shorten(slopes)
      learned.forEach((weights, at) => {
        moveBy(weights, slopes[at]!, means![at]!, squares![at]!, { rate, step })
      })
    }
    onRound(round, miss / counted, room.parts)
  }
  return room.parts
}

function allOf({ inputs, memories, scores }: NetParts): Float32Array[] {
  return [inputs, ...memories.flatMap(({ weights, bias }) => [weights, bias]), scores]
}

/** One step of a batch is never longer than this. */
function shorten(slopes: readonly Float32Array[]): void {
  let squares = 0
  for (const all of slopes) for (let at = 0; at < all.length; at++) squares += all[at]! * all[at]!
  const length = Math.sqrt(squares)
  if (length <= LONGEST_STEP) return
  for (const all of slopes) for (let at = 0; at < all.length; at++) all[at]! *= LONGEST_STEP / length
}

function moveBy(
  weights: Float32Array,
  slopes: Float32Array,
  means: Float32Array,
  squares: Float32Array,
  { rate, step }: { rate: number; step: number },
): void {
  const [meanShare, squareShare] = [1 - FIRST_MEAN ** step, 1 - SECOND_MEAN ** step]
  for (let at = 0; at < weights.length; at++) {
    const down = slopes[at] ?? 0
    const mean = FIRST_MEAN * (means[at] ?? 0) + (1 - FIRST_MEAN) * down
    const square = SECOND_MEAN * (squares[at] ?? 0) + (1 - SECOND_MEAN) * down * down
    means[at] = mean
    squares[at] = square
    const by = mean / meanShare / (Math.sqrt(square / squareShare) + TINY)
    weights[at] = (weights[at] ?? 0) * (1 - rate * DECAY) - rate * by
  }
}

function shuffled<Item>(items: readonly Item[], random: () => number): Item[] {
  return items
    .map((item) => ({ item, place: random() }))
    .toSorted((one, other) => one.place - other.place)
    .map(({ item }) => item)
}

/** Even numbers from 0 to 1, the same for the same start (mulberry32, from memory). */
export function randomFrom(start: number): () => number {
  let state = start
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}
