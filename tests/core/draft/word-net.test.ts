/** The word net gives what another library gives for the same weights, and the fitting's slopes are those of its misses. */
import { expect, it } from 'vitest'
import { hearInTurn, UNKNOWN_WORD } from '../../../core/draft/hear-words.ts'
import { Lstm, lstmSize } from '../../../core/draft/word-net.ts'
import { trainNet } from '../../fit/train-net.ts'

const SHAPE = { input: 2, hidden: 8, scores: 3 }

it('agrees with the bidirectional LSTM of PyTorch', () => {
  const waves = (size: number, of: (at: number) => number): Float32Array =>
    Float32Array.from({ length: size }, (_, at) => of(at))
  const net = {
    shape: SHAPE,
    rowOf: new Map([
      [UNKNOWN_WORD, 0],
      ['word press', 1],
      ['word up', 2],
      ['word slowly', 3],
    ]),
    inputs: Float32Array.from([0, 0, 1, -0.5, 0.25, 2, -1, 0.75]),
    forwards: new Lstm(
      SHAPE,
      waves(lstmSize(SHAPE), (at) => Math.sin(0.7 * at + 1) / 2),
    ),
    backwards: new Lstm(
      SHAPE,
      waves(lstmSize(SHAPE), (at) => Math.sin(0.7 * at + 2) / 2),
    ),
    scores: waves(3 * 17, (at) => Math.cos(0.3 * at)),
  }
  const words = ['press', 'up', 'slowly'].map((word, offset) => ({ offset, text: word, mark: 'none' as const }))
  const heard = hearInTurn(words, net)
  // Source: torch.nn.LSTM of PyTorch 2.13 in double precision with the same weights, then a linear layer and log_softmax.
  EXPECTED.forEach((logs, word) => {
    logs.forEach((log, score) => {
      expect(heard.logs[word * 3 + score]).toBeCloseTo(log, 4)
    })
  })
})

const EXPECTED = [
  [-0.789325, -1.45793, -1.161132],
  [-0.825087, -1.373252, -1.175965],
  [-0.736212, -1.465866, -1.237194],
]

it('learns what only the words before or behind can tell, the same each time', () => {
  // Row 1 is followed by the answer, row 2 or 3 leads to it: the middle word itself tells nothing.
  const one = (first: number, last: number, wanted: readonly number[]) => ({
    rows: [[first], [1], [last]],
    wanted: [[1, 0, 0], wanted, [1, 0, 0]],
    weights: [1, 1, 1],
  })
  const sequences = [one(2, 2, [1, 0, 0]), one(2, 3, [0, 1, 0]), one(3, 2, [0, 0, 1]), one(3, 3, [0, 1, 0])]
  const training = { rounds: 200, batch: 4, rate: 0.03, dropped: 0, hidden: { share: 0, row: 0, firstKnown: 1 } }
  const misses: number[] = []
  const learn = () => trainNet(SHAPE, 4, sequences, training, (_, miss) => misses.push(miss))
  const parts = learn()
  expect(misses[0]).toBeGreaterThan(0.8)
  expect(misses.at(-1)).toBeLessThan(0.05)
  expect([...learn().scores]).toEqual([...parts.scores])
})
