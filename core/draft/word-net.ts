/** A small recurrent network that weighs each word of a speech among those before and behind it. */
import { rowProducts } from './row-products.ts'

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
  /** Weights of the memory that reads forwards, and of the one that reads backwards; see `steps`. */
  forwards: Float32Array
  backwards: Float32Array
  /** By score the weights of the forward memory, of the backward one, and its bias: scores × (2 × hidden + 1). */
  scores: Float32Array
}

export interface NetShape {
  input: number
  hidden: number
  scores: number
}

/** A memory has four rows of weights for each of its cells (in, forget, candidate, out), each over the input, the last output and a bias. */
export function lstmSize({ input, hidden }: NetShape): number {
  return 4 * hidden * (input + hidden + 1)
}

/** What the input of a word adds to the rows of a memory, its bias with it: 4 × hidden numbers. */
export function project({ input, hidden }: NetShape, weights: Float32Array, values: Float32Array): Float32Array {
  const wide = input + hidden + 1
  const sums = new Float32Array(4 * hidden)
  for (let row = 0; row < sums.length; row++) {
    const from = row * wide
    let sum = weights[from + wide - 1] ?? 0
    for (let at = 0; at < input; at++) sum += (weights[from + at] ?? 0) * (values[at] ?? 0)
    sums[row] = sum
  }
  return sums
}

/**
 * Lets a memory read the words. @param projectedAt what project() gives for each word
 * @returns the outputs: words × hidden
 */
export function runLstm(
  { input, hidden }: NetShape,
  weights: Float32Array,
  { count, reverse, projectedAt }: { count: number; reverse: boolean; projectedAt: (word: number) => Float32Array },
): Float32Array {
  const out = new Float32Array(count * hidden)
  const cells = new Float32Array(hidden)
  const products = rowProducts(4 * hidden * hidden + 5 * hidden + 32)
  const [again, gates, last] = [4 * hidden * hidden, 4 * hidden, hidden].map(products.numbers)
  if (!again || !gates || !last) return out
  for (let row = 0; row < 4 * hidden; row++) {
    const from = row * (input + hidden + 1) + input
    again.set(weights.subarray(from, from + hidden), row * hidden)
  }
  for (let step = 0; step < count; step++) {
    const word = reverse ? count - 1 - step : step
    gates.set(projectedAt(word))
    products.forwards(gates, again, last)
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
