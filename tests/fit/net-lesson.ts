/** One sequence that a word net learns from: what the net makes of it, how far that is off, and which weights would have to change. */
import { logLikelihoods, scoreWord, widthOf } from '../../core/draft/word-net.ts'
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

/** What is left out by chance, so that nothing is learned by heart. */
export interface Unlearned {
  /** The share of inputs and outputs that each word is learned without. */
  dropped: number
  /** The share of words that are learned as unknown ones, and the row that stands for these. */
  words?: { share: number; row: number; firstKnown: number }
  /** The share of features of each piece that it is learned without. */
  features?: number
}

/** A memory reads the inputs of a word and its own last output: 4 × hidden rows, and their bias. */
interface MemoryParts {
  weights: Float32Array
  bias: Float32Array
}

export interface NetParts {
  inputs: Float32Array
  /** Of each layer the one that reads forwards, then the one that reads backwards. */
  memories: readonly MemoryParts[]
  scores: Float32Array
}

/** What is learned with its slopes, side by side in the memory of the products. */
export interface Room {
  products: RowProducts
  parts: NetParts
  slopes: NetParts
  /** For each memory what it read and made of each word. */
  desks: readonly Desk[]
}

interface Desk {
  read: Float32Array[]
  readSlopes: Float32Array[]
  gates: Float32Array[]
  rowSlope: Float32Array
}

/** How great the numbers of a row are at first at the most, and the share of their sum that a memory reads: less where rows are many. */
export interface InputScale {
  most: number
  share: number
}

/** Words of the longest sequence. */
const LONGEST = 100

export function firstRoom(shape: NetShape, rows: number, scale: InputScale, random: () => number): Room {
  const { input, hidden, scores, layers } = shape
  const widths = Array.from({ length: 2 * layers }, (_, at) => widthOf(shape, at >> 1) + hidden)
  const ofScores = scores * (2 * hidden + 1)
  const ofMemories = widths.reduce((sum, width) => sum + 4 * hidden * (width + 1), 0)
  const ofDesks = widths.reduce((sum, width) => sum + LONGEST * (2 * width + 4 * hidden + 24) + 4 * hidden, 0)
  const products = rowProducts(2 * (rows * input + ofScores + ofMemories + 64) + ofDesks)
  const partsOf = (fill: (most: number) => number): NetParts => {
    const take = (count: number, most: number): Float32Array => {
      const numbers = products.numbers(count)
      for (let at = 0; at < count; at++) numbers[at] = fill(most)
      return numbers
    }
    const most = 1 / Math.sqrt(hidden)
    return {
      inputs: take(rows * input, scale.most),
      memories: widths.map((width) => ({ weights: take(4 * hidden * width, most), bias: take(4 * hidden, most) })),
      scores: take(ofScores, most),
    }
  }
  const many = (count: number): Float32Array[] => Array.from({ length: LONGEST }, () => products.numbers(count))
  return {
    products,
    parts: partsOf((most) => (random() * 2 - 1) * most),
    slopes: partsOf(() => 0),
    desks: widths.map((width) => ({
      read: many(width),
      readSlopes: many(width),
      gates: many(4 * hidden),
      rowSlope: products.numbers(4 * hidden),
    })),
  }
}

interface Lesson {
  one: NetSequence
  /** What all words of the batch count together. */
  total: number
  unlearned: Unlearned
  /** The share of the sum of its rows that is read of a word. */
  share: number
  random: () => number
}

/** Adds the gradient of one sequence. @returns its share of the mean miss */
export function addSlopes(shape: NetShape, room: Room, { one, total, unlearned, share, random }: Lesson): number {
  const { dropped } = unlearned
  const { hidden, layers } = shape
  const count = one.rows.length
  const rows = one.rows.map((row) => withoutSome(row, unlearned, random))
  const kept = maskOf(count * shape.input, dropped, random).map((one) => one * share)
  let inputs = rows.map((row, word) => inputOf(shape, room.parts.inputs, row, kept.subarray(word * shape.input)))
  const readings: Reading[] = []
  for (let layer = 0; layer < layers; layer++) {
    for (const side of [0, 1])
      readings.push(
        readWith(shape, room, { memory: 2 * layer + side, inputs, mask: maskOf(count * hidden, dropped, random) }),
      )
    const [ahead, behind] = readings.slice(-2)
    inputs = inputs.map((_, word) => {
      const both = new Float32Array(2 * hidden)
      both.set(ahead!.shown.subarray(word * hidden, (word + 1) * hidden))
      both.set(behind!.shown.subarray(word * hidden, (word + 1) * hidden), hidden)
      return both
    })
  }
  const miss = judge(shape, room, readings.slice(-2), one, total)
  for (let memory = readings.length - 1; memory >= 0; memory--) {
    readBack(shape, room, { memory, reading: readings[memory]!, count })
    if (memory % 2 === 0 && memory > 0)
      passDown(shape, room, { memory, below: readings.slice(memory - 2, memory), count })
  }
  spreadInputs(shape, room, rows, kept)
  return miss
}

function withoutSome(
  row: readonly number[],
  { words, features = 0 }: Unlearned,
  random: () => number,
): readonly number[] {
  if (words && random() < words.share) return row.map((at) => (at >= words.firstKnown ? words.row : at))
  return features > 0 ? row.filter(() => random() >= features) : row
}

/** To the outputs of the layer below what both memories above say of them. */
function passDown(
  { hidden }: NetShape,
  { desks }: Room,
  { memory, below, count }: { memory: number; below: readonly Reading[]; count: number },
): void {
  for (let word = 0; word < count; word++) {
    const [one, other] = [desks[memory]!.readSlopes[word]!, desks[memory + 1]!.readSlopes[word]!]
    below.forEach(({ slope }, side) => {
      for (let cell = 0; cell < hidden; cell++)
        slope[word * hidden + cell] = one[side * hidden + cell]! + other[side * hidden + cell]!
    })
  }
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

/** What one memory made of a sequence, by word and cell, and how the miss grows with it. */
interface Reading {
  cells: Float32Array
  mask: Float32Array
  /** Its outputs but for those left out. */
  shown: Float32Array
  slope: Float32Array
}

/** As Lstm.read does, but keeping what the way back needs: inputs and gates of each word stay on the desk. */
function readWith(
  { hidden }: NetShape,
  room: Room,
  { memory, inputs, mask }: { memory: number; inputs: readonly Float32Array[]; mask: Float32Array },
): Reading {
  const reverse = memory % 2 === 1
  const { weights, bias } = room.parts.memories[memory]!
  const { read, gates } = room.desks[memory]!
  const count = inputs.length
  const [cells, shown] = [new Float32Array(count * hidden), new Float32Array(count * hidden)]
  const last = new Float32Array(hidden)
  for (let step = 0; step < count; step++) {
    const word = reverse ? count - 1 - step : step
    const before = reverse ? word + 1 : word - 1
    const [values, sums] = [read[word]!, gates[word]!]
    values.set(inputs[word]!)
    values.set(last, inputs[word]!.length)
    sums.set(bias)
    room.products.forwards(sums, weights, values)
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

/** Back through the words that a memory has read: adds to the slopes of its weights; those of its inputs stay on the desk. */
function readBack(
  { hidden }: NetShape,
  room: Room,
  { memory, reading, count }: { memory: number; reading: Reading; count: number },
): void {
  const reverse = memory % 2 === 1
  const { weights } = room.parts.memories[memory]!
  const slopes = room.slopes.memories[memory]!
  const { read, readSlopes, gates, rowSlope } = room.desks[memory]!
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
    room.products.backwards(rowSlope, weights, slopes.weights, values)
    for (let row = 0; row < 4 * hidden; row++) slopes.bias[row]! += rowSlope[row]!
    lastSlope.set(values.slopes.subarray(-hidden))
  }
}

/** To the rows of all features of a word what both memories say of its input. */
function spreadInputs(
  { input }: NetShape,
  { desks, slopes }: Room,
  rows: NetSequence['rows'],
  kept: Float32Array,
): void {
  rows.forEach((row, word) => {
    const [one, other] = desks.slice(0, 2).map(({ readSlopes }) => readSlopes[word]!)
    for (const from of row)
      for (let at = 0; at < input; at++)
        slopes.inputs[from * input + at]! += (one![at]! + other![at]!) * kept[word * input + at]!
  })
}
