/** Fits a word net (core/draft/word-net.ts) on sequences of words whose scores are known: gradients by hand, steps by Adam. */
import { logLikelihoods, scoreWord } from '../../core/draft/word-net.ts'
import type { NetShape } from '../../core/draft/word-net.ts'
import { rowProducts } from '../../core/draft/row-products.ts'
import type { RowProducts } from '../../core/draft/row-products.ts'

/** Words in the order said. */
export interface NetSequence {
  /** Rows of each word's features. */
  rows: readonly (readonly number[])[]
  /** What the likelihoods of each word should be. */
  wanted: readonly (readonly number[])[]
  /** How much each word counts. */
  weights: readonly number[]
}

export interface Training {
  rounds: number
  batch: number
  /** At the start; falls to LAST_RATE. */
  rate: number
  /** The share of inputs and outputs that each word is learned without. */
  dropped: number
  /** The share of words that are learned as unknown ones, and the row that stands for these. */
  hidden: { share: number; row: number; firstKnown: number }
}

const LAST_RATE = 1e-4
const DECAY = 0.01
const LONGEST_STEP = 1
const [FIRST_MEAN, SECOND_MEAN, TINY] = [0.9, 0.999, 1e-8]

type Part = 'inputs' | 'forwards' | 'backwards' | 'forwardsBias' | 'backwardsBias' | 'scores'
export type NetParts = Record<Part, Float32Array>
const PARTS: readonly Part[] = ['inputs', 'forwards', 'backwards', 'forwardsBias', 'backwardsBias', 'scores']

/** Steps along the gradient of batches (Adam: Kingma and Ba 2015, with decay apart: Loshchilov and Hutter 2019). The same input gives the same weights. */
export function trainNet(
  shape: NetShape,
  rows: number,
  sequences: readonly NetSequence[],
  training: Training,
  onRound: (round: number, miss: number, parts: NetParts) => void = () => undefined,
): NetParts {
  const random = randomFrom(1)
  const room = firstRoom(shape, rows, random)
  const { parts, slopes } = room
  const empty = (part: Part): Float32Array => new Float32Array(parts[part].length)
  const [means, squares] = [partsOf(empty), partsOf(empty)]
  let step = 0
  for (let round = 0; round < training.rounds; round++) {
    const rate = training.rate * (1 - round / training.rounds) + LAST_RATE
    const order = shuffled(sequences, random)
    let miss = 0
    let counted = 0
    for (let at = 0; at < order.length; at += training.batch) {
      const batch = order.slice(at, at + training.batch)
      for (const part of PARTS) slopes[part].fill(0)
      const total = batch.reduce((sum, { weights }) => sum + weights.reduce((one, other) => one + other, 0), 0)
      if (total === 0) continue
      for (const one of batch) miss += addSlopes(shape, room, { one, total, training, random }) * total
      counted += total
      step += 1
      shorten(slopes)
      for (const part of PARTS) moveBy(parts[part], slopes[part], means[part], squares[part], { rate, step })
    }
    onRound(round, miss / counted, parts)
  }
  return parts
}

/** What is learned with its slopes, side by side in the memory of the products. */
interface Room {
  products: RowProducts
  parts: NetParts
  slopes: NetParts
  /** For each side what it read and made of each word. */
  sides: readonly { read: Float32Array[]; readSlopes: Float32Array[]; gates: Float32Array[]; rowSlope: Float32Array }[]
}

/** Words of the longest sequence. */
const LONGEST = 100

function firstRoom(shape: NetShape, rows: number, random: () => number): Room {
  const { input, hidden, scores } = shape
  const sizes: Record<Part, number> = {
    inputs: rows * input,
    forwards: 4 * hidden * (input + hidden),
    backwards: 4 * hidden * (input + hidden),
    forwardsBias: 4 * hidden,
    backwardsBias: 4 * hidden,
    scores: scores * (2 * hidden + 1),
  }
  const all = PARTS.reduce((sum, part) => sum + sizes[part] + 8, 0)
  const products = rowProducts(2 * all + 2 * LONGEST * (2 * (input + hidden + 8) + 8 * hidden) + 8 * hidden + 64)
  const take = (part: Part): Float32Array => products.numbers(sizes[part])
  const parts = partsOf(take)
  const most = 1 / Math.sqrt(hidden)
  for (const part of PARTS)
    parts[part].forEach((_, at, all) => (all[at] = (random() * 2 - 1) * (part === 'inputs' ? 0.5 : most)))
  const slopes = partsOf(take)
  const many = (count: number): Float32Array[] => Array.from({ length: LONGEST }, () => products.numbers(count))
  const sides = [0, 1].map(() => ({
    read: many(input + hidden),
    readSlopes: many(input + hidden),
    gates: many(4 * hidden),
    rowSlope: products.numbers(4 * hidden),
  }))
  return { products, parts, slopes, sides }
}

function partsOf(take: (part: Part) => Float32Array): NetParts {
  return Object.fromEntries(PARTS.map((part) => [part, take(part)])) as NetParts
}

interface Lesson {
  one: NetSequence
  total: number
  training: Training
  random: () => number
}

/** Adds the gradient of one sequence. @returns its share of the mean miss */
function addSlopes(shape: NetShape, room: Room, { one, total, training, random }: Lesson): number {
  const { dropped, hidden: unknown } = training
  const count = one.rows.length
  const rows = one.rows.map((row) =>
    random() < unknown.share ? row.map((at) => (at >= unknown.firstKnown ? unknown.row : at)) : row,
  )
  const kept = maskOf(count * shape.input, dropped, random)
  const inputs = rows.map((row, word) => inputOf(shape, room.parts.inputs, row, kept.subarray(word * shape.input)))
  const readings = SIDES.map((side, at) => {
    const mask = maskOf(count * shape.hidden, dropped, random)
    return readSide(shape, room, { side, at, inputs, mask })
  })
  const miss = judge(shape, room, readings, one, total)
  readings.forEach((reading, at) => {
    readBack(shape, room, { reading, at, count })
  })
  spreadInputs(shape, room, rows, kept)
  return miss
}

/** What is left out is 0, the rest as much greater as makes up for it. */
function maskOf(size: number, dropped: number, random: () => number): Float32Array {
  const mask = new Float32Array(size)
  for (let at = 0; at < size; at++) mask[at] = random() < dropped ? 0 : 1 / (1 - dropped)
  return mask
}

function inputOf({ input }: NetShape, all: Float32Array, row: readonly number[], kept: Float32Array): Float32Array {
  const values = new Float32Array(input)
  for (const from of row) for (let at = 0; at < input; at++) values[at]! += all[from * input + at]!
  for (let at = 0; at < input; at++) values[at]! *= kept[at]!
  return values
}

const SIDES = [
  { weights: 'forwards', bias: 'forwardsBias', reverse: false },
  { weights: 'backwards', bias: 'backwardsBias', reverse: true },
] as const

/** What one memory made of a sequence, by word and cell, and how the miss grows with it. */
interface Reading {
  cells: Float32Array
  mask: Float32Array
  /** Its outputs but for those left out. */
  shown: Float32Array
  slope: Float32Array
}

interface SideToRead {
  side: (typeof SIDES)[number]
  at: number
  inputs: readonly Float32Array[]
  mask: Float32Array
}

/** As Lstm.read does, but keeping what the way back needs: inputs and gates of each word stay in the room. */
function readSide({ input, hidden }: NetShape, room: Room, { side, at, inputs, mask }: SideToRead): Reading {
  const { weights, bias, reverse } = side
  const { read, gates } = room.sides[at]!
  const count = inputs.length
  const [cells, shown] = [new Float32Array(count * hidden), new Float32Array(count * hidden)]
  const last = new Float32Array(hidden)
  for (let step = 0; step < count; step++) {
    const word = reverse ? count - 1 - step : step
    const before = reverse ? word + 1 : word - 1
    const [values, sums] = [read[word]!, gates[word]!]
    values.set(inputs[word]!)
    values.set(last, input)
    sums.set(room.parts[bias])
    room.products.forwards(sums, room.parts[weights], values)
    for (let cell = 0; cell < hidden; cell++) {
      const [open, kept] = [squash(sums[cell]!), squash(sums[hidden + cell]!)]
      const [candidate, out] = [Math.tanh(sums[2 * hidden + cell]!), squash(sums[3 * hidden + cell]!)]
      sums[cell] = open
      sums[hidden + cell] = kept
      sums[2 * hidden + cell] = candidate
      sums[3 * hidden + cell] = out
      const value = open * candidate + (step === 0 ? 0 : kept * cells[before * hidden + cell]!)
      const place = word * hidden + cell
      cells[place] = value
      last[cell] = out * Math.tanh(value)
      shown[place] = last[cell]! * mask[place]!
    }
  }
  return { cells, mask, shown, slope: new Float32Array(count * hidden) }
}

function squash(sum: number): number {
  return 1 / (1 + Math.exp(-sum))
}

/** Scores each word: adds to the slopes of the scores and of what both memories made. @returns the miss, a share of the mean */
function judge(shape: NetShape, room: Room, readings: readonly Reading[], one: NetSequence, total: number): number {
  const { hidden } = shape
  const { parts, slopes } = room
  const [ahead, behind] = readings
  const wide = 2 * hidden + 1
  let miss = 0
  one.wanted.forEach((wanted, word) => {
    const weight = one.weights[word]! / total
    if (weight === 0) return
    const sums = scoreWord(shape, parts.scores, { ahead: ahead!.shown, behind: behind!.shown, word })
    logLikelihoods(sums).forEach((log, score) => {
      const should = wanted[score]!
      miss -= weight * should * log
      const down = weight * (Math.exp(log) - should)
      readings.forEach(({ shown, slope }, side) => {
        for (let cell = 0; cell < hidden; cell++) {
          const at = score * wide + side * hidden + cell
          slopes.scores[at]! += down * shown[word * hidden + cell]!
          slope[word * hidden + cell]! += down * parts.scores[at]!
        }
      })
      slopes.scores[score * wide + wide - 1]! += down
    })
  })
  return miss
}

/** Back through the words that a memory has read: adds to the slopes of its weights; those of its inputs stay in the room. */
function readBack(
  { input, hidden }: NetShape,
  room: Room,
  { reading, at, count }: { reading: Reading; at: number; count: number },
): void {
  const { weights, bias, reverse } = SIDES[at]!
  const { read, readSlopes, gates, rowSlope } = room.sides[at]!
  const { cells, mask, slope } = reading
  const [cellSlope, lastSlope] = [new Float32Array(hidden), new Float32Array(hidden)]
  for (let step = count - 1; step >= 0; step--) {
    const word = reverse ? count - 1 - step : step
    const before = reverse ? word + 1 : word - 1
    const squashed = gates[word]!
    for (let cell = 0; cell < hidden; cell++) {
      const place = word * hidden + cell
      const [open, kept] = [squashed[cell]!, squashed[hidden + cell]!]
      const [candidate, out] = [squashed[2 * hidden + cell]!, squashed[3 * hidden + cell]!]
      const held = Math.tanh(cells[place]!)
      const down = slope[place]! * mask[place]! + lastSlope[cell]!
      const through = cellSlope[cell]! + down * out * (1 - held * held)
      rowSlope[cell] = through * candidate * open * (1 - open)
      rowSlope[hidden + cell] = step === 0 ? 0 : through * cells[before * hidden + cell]! * kept * (1 - kept)
      rowSlope[2 * hidden + cell] = through * open * (1 - candidate * candidate)
      rowSlope[3 * hidden + cell] = down * held * out * (1 - out)
      cellSlope[cell] = through * kept
    }
    const values = { values: read[word]!, slopes: readSlopes[word]! }
    values.slopes.fill(0)
    room.products.backwards(rowSlope, room.parts[weights], room.slopes[weights], values)
    for (let row = 0; row < 4 * hidden; row++) room.slopes[bias][row]! += rowSlope[row]!
    lastSlope.set(values.slopes.subarray(input))
  }
}

/** To the rows of all features of a word what both memories say of its input. */
function spreadInputs(
  { input }: NetShape,
  { sides, slopes }: Room,
  rows: NetSequence['rows'],
  kept: Float32Array,
): void {
  rows.forEach((row, word) => {
    const [one, other] = sides.map(({ readSlopes }) => readSlopes[word]!)
    for (const from of row)
      for (let at = 0; at < input; at++)
        slopes.inputs[from * input + at]! += (one![at]! + other![at]!) * kept[word * input + at]!
  })
}

/** One step of a batch is never longer than this. */
function shorten(slopes: NetParts): void {
  const length = Math.sqrt(
    PARTS.reduce((sum, part) => sum + slopes[part].reduce((one, down) => one + down * down, 0), 0),
  )
  if (length <= LONGEST_STEP) return
  for (const part of PARTS) {
    const all = slopes[part]
    for (let at = 0; at < all.length; at++) all[at] = ((all[at] ?? 0) * LONGEST_STEP) / length
  }
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
