/** A small recurrent network that weighs each word of a speech among those before and behind it. */
import { rowProducts } from './row-products.ts'
import type { RowProducts } from './row-products.ts'

/**
 * A long short-term memory that reads the words forwards and one that reads them backwards, and the scores that both give a word.
 * Sources: Hochreiter and Schmidhuber, "Long Short-Term Memory", Neural Computation 9(8), 1997; Graves and Schmidhuber, "Framewise
 * Phoneme Classification with Bidirectional LSTM", Neural Networks 18, 2005.
 */
export interface WordNet {
  shape: NetShape
  /** The row of each feature of a word in `inputs`. */
  rowOf: ReadonlyMap<string, number>
  /** What each feature adds to the input of its word: rows × input. */
  inputs: Float32Array
  /** Of each layer the memory that reads forwards, then the one that reads backwards. */
  memories: readonly Lstm[]
  /** By score the weights of the forward memory, of the backward one, and its bias: scores × (2 × hidden + 1). */
  scores: Float32Array
}

export interface NetShape {
  input: number
  hidden: number
  scores: number
  /** The second reads what both memories of the first made of each word. */
  layers: number
}

/** How many numbers a memory of a layer reads of each word. */
export function widthOf({ input, hidden }: NetShape, layer: number): number {
  return layer === 0 ? input : 2 * hidden
}

/** A memory has four rows of weights for each of its cells (in, forget, candidate, out), each over the input, the last output and a bias. */
export function lstmSize(input: number, hidden: number): number {
  return 4 * hidden * (input + hidden + 1)
}

/** A memory, its weights laid out for the products. */
export class Lstm {
  readonly #hidden: number
  readonly #products: RowProducts
  readonly #bias: Float32Array
  /** 4 × hidden rows over the input, and over the last output. */
  readonly #ofInput: Float32Array
  readonly #ofLast: Float32Array
  readonly #values: Float32Array
  readonly #gates: Float32Array
  readonly #last: Float32Array

  /** @param weights as many as lstmSize says */
  constructor(input: number, hidden: number, weights: Float32Array) {
    const [rows, wide, padded] = [4 * hidden, input + hidden + 1, Math.ceil(input / 8) * 8]
    this.#hidden = hidden
    this.#products = rowProducts(rows * (padded + hidden + 1) + padded + hidden)
    this.#ofInput = this.#products.numbers(rows * padded)
    this.#ofLast = this.#products.numbers(rows * hidden)
    this.#gates = this.#products.numbers(rows)
    this.#values = this.#products.numbers(padded)
    this.#last = this.#products.numbers(hidden)
    this.#bias = new Float32Array(rows)
    for (let row = 0; row < rows; row++) {
      const from = row * wide
      this.#ofInput.set(weights.subarray(from, from + input), row * padded)
      this.#ofLast.set(weights.subarray(from + input, from + input + hidden), row * hidden)
      this.#bias[row] = weights[from + wide - 1] ?? 0
    }
  }

  /** What the input of a word adds to the rows, their bias with it: 4 × hidden numbers, good until the memory is used again. */
  project(input: Float32Array): Float32Array {
    this.#values.set(input)
    this.#gates.set(this.#bias)
    this.#products.forwards(this.#gates, this.#ofInput, this.#values)
    return this.#gates
  }

  /**
   * Reads the words one behind the other, or the last first. @param projectedAt what project() gives for each word
   * @returns the outputs: words × hidden
   */
  read(count: number, reverse: boolean, projectedAt: (word: number) => Float32Array): Float32Array {
    const hidden = this.#hidden
    const [gates, last] = [this.#gates, this.#last]
    const out = new Float32Array(count * hidden)
    const cells = new Float32Array(hidden)
    last.fill(0)
    for (let step = 0; step < count; step++) {
      const word = reverse ? count - 1 - step : step
      gates.set(projectedAt(word))
      this.#products.forwards(gates, this.#ofLast, last)
      for (let cell = 0; cell < hidden; cell++) {
        const kept = squash(gates[hidden + cell] ?? 0) * (cells[cell] ?? 0)
        const value = kept + squash(gates[cell] ?? 0) * tanh(gates[2 * hidden + cell] ?? 0)
        cells[cell] = value
        last[cell] = squash(gates[3 * hidden + cell] ?? 0) * tanh(value)
      }
      out.set(last, word * hidden)
    }
    return out
  }
}

/** The logistic function from a table, between whose steps it is straight: off by less than a millionth, and several times as fast. */
function squash(sum: number): number {
  const at = (Math.min(MOST, Math.max(-MOST, sum)) + MOST) * STEPS
  const step = Math.trunc(at)
  const from = SQUASHED[step] ?? 1
  return from + (at - step) * ((SQUASHED[step + 1] ?? 1) - from)
}

const tanh = (sum: number): number => 2 * squash(2 * sum) - 1

const MOST = 16
const STEPS = 256
const SQUASHED = Float32Array.from({ length: 2 * MOST * STEPS + 2 }, (_, at) => 1 / (1 + Math.exp(MOST - at / STEPS)))

/** The scores of a word, for what both memories made of it. */
export function scoreWord(
  { hidden, scores }: NetShape,
  weights: Float32Array,
  { ahead, behind, word }: { ahead: Float32Array; behind: Float32Array; word: number },
): Float32Array {
  const wide = 2 * hidden + 1
  const sums = new Float32Array(scores)
  for (let score = 0; score < scores; score++) {
    let sum = weights[score * wide + wide - 1] ?? 0
    for (let at = 0; at < hidden; at++) {
      sum += (weights[score * wide + at] ?? 0) * (ahead[word * hidden + at] ?? 0)
      sum += (weights[score * wide + hidden + at] ?? 0) * (behind[word * hidden + at] ?? 0)
    }
    sums[score] = sum
  }
  return sums
}

/** The natural logs of the likelihoods for such scores. */
export function logLikelihoods(sums: Float32Array): Float32Array {
  const most = sums.reduce((one, other) => Math.max(one, other), -Infinity)
  const total = sums.reduce((sum, one) => sum + Math.exp(one - most), 0)
  return sums.map((one) => one - most - Math.log(total))
}

/** Stands for a word that the net has not learned. */
export const UNKNOWN_WORD = 'word *'

/** The rows of a word's features, named as `sign of`; of a word that was not learned its kind and ending tell. */
export function rowsOf(features: readonly string[], { rowOf }: Pick<WordNet, 'rowOf'>): number[] {
  return features.flatMap(
    (feature) => rowOf.get(feature) ?? (feature.startsWith('word ') ? (rowOf.get(UNKNOWN_WORD) ?? []) : []),
  )
}

/**
 * The natural logs of the likelihoods of all scores of all words: words × scores. @param wordAt what tells two words apart that
 * have other features (null = no two are alike), and the rows of these in `inputs`
 */
export function listen(
  net: WordNet,
  count: number,
  wordAt: (word: number) => { key: string | null; rows: () => number[] },
): Float32Array {
  const { shape, memories, scores } = net
  let outputs: readonly Float32Array[] = []
  const inputs: Float32Array[] = []
  for (let layer = 0; layer < shape.layers; layer++) {
    const below = outputs
    const both = new Float32Array(2 * shape.hidden)
    outputs = memories.slice(2 * layer, 2 * layer + 2).map((memory, side) => {
      const known = new Map<string, Float32Array>()
      const projectedAt = (word: number): Float32Array => {
        if (layer > 0) return memory.project(fillBoth(both, below, word))
        const { key, rows } = wordAt(word)
        if (key === null) return memory.project((inputs[word] ??= inputOf(rows(), net)))
        const before = known.get(key)
        if (before) return before
        const projected = memory.project(inputOf(rows(), net)).slice()
        if (known.size >= MOST_KNOWN) known.clear()
        known.set(key, projected)
        return projected
      }
      return memory.read(count, side === 1, projectedAt)
    })
  }
  const [ahead = new Float32Array(0), behind = new Float32Array(0)] = outputs
  const logs = new Float32Array(count * shape.scores)
  for (let word = 0; word < count; word++)
    logs.set(logLikelihoods(scoreWord(shape, scores, { ahead, behind, word })), word * shape.scores)
  return logs
}

/** Speech has some thousand words; a text of ever new ones must not fill the memory. */
const MOST_KNOWN = 8000

/** What both memories of a layer made of a word, side by side. */
function fillBoth(both: Float32Array, outputs: readonly Float32Array[], word: number): Float32Array {
  const hidden = both.length / 2
  outputs.forEach((all, side) => {
    both.set(all.subarray(word * hidden, (word + 1) * hidden), side * hidden)
  })
  return both
}

function inputOf(rows: readonly number[], { shape, inputs }: WordNet): Float32Array {
  const values = new Float32Array(shape.input)
  for (const row of rows) {
    const from = row * shape.input
    for (let at = 0; at < values.length; at++) values[at] = (values[at] ?? 0) + (inputs[from + at] ?? 0)
  }
  return values
}
