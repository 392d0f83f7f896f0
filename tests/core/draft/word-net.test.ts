/** The word net gives what another library gives for the same weights, and the fitting's slopes are those of its misses. */
import { expect, it } from 'vitest'
import { listen, Lstm, lstmSize, rowsOf, UNKNOWN_WORD } from '../../../core/draft/word-net.ts'
import { addSlopes, firstRoom } from '../../fit/net-lesson.ts'
import { randomFrom, trainNet } from '../../fit/train-net.ts'

const SHAPE = { input: 2, hidden: 8, scores: 3, layers: 1 }

// Source: torch.nn.LSTM of PyTorch 2.13 in double precision with the same weights, then a linear layer and log_softmax.
it.each([
  [
    'one layer',
    1,
    [
      [-0.789325, -1.45793, -1.161132],
      [-0.825087, -1.373252, -1.175965],
      [-0.736212, -1.465866, -1.237194],
    ],
  ],
  [
    'two layers',
    2,
    [
      [-0.496907, -1.631358, -1.630016],
      [-0.553011, -1.632862, -1.472221],
      [-0.608997, -1.626302, -1.349198],
    ],
  ],
])('agrees with the bidirectional LSTM of PyTorch in %s', (_, layers, expected) => {
  const waves = (size: number, of: (at: number) => number): Float32Array =>
    Float32Array.from({ length: size }, (_value, at) => of(at))
  const memories = Array.from({ length: 2 * layers }, (_value, at) => {
    const input = at < 2 ? 2 : 16
    const weights = waves(lstmSize(input, 8), (place) => Math.sin(0.7 * place + at + 1) / 2)
    return new Lstm(input, 8, weights)
  })
  const net = {
    shape: { ...SHAPE, layers },
    rowOf: new Map([
      [UNKNOWN_WORD, 0],
      ['word press', 1],
      ['word up', 2],
      ['word slowly', 3],
    ]),
    inputs: Float32Array.from([0, 0, 1, -0.5, 0.25, 2, -1, 0.75]),
    memories,
    scores: waves(3 * 17, (at) => Math.cos(0.3 * at)),
  }
  const words = ['press', 'up', 'slowly']
  const logs = listen(net, 3, (at) => ({
    key: words[at] ?? '',
    rows: () => rowsOf([`word ${words[at] ?? ''}`], net),
  }))
  expected.flat().forEach((log, at) => {
    expect(logs[at]).toBeCloseTo(log, 4)
  })
})

it('the slopes are how the miss changes with each weight', () => {
  const shape = { input: 8, hidden: 8, scores: 3, layers: 2 }
  const room = firstRoom(shape, 6, { most: 0.5, share: 1 }, randomFrom(3))
  const one = {
    rows: [[1, 2], [3], [4, 1], [5]],
    wanted: [
      [1, 0, 0],
      [0, 0.5, 0.5],
      [0, 1, 0],
      [0, 0, 1],
    ],
    weights: [1, 0.5, 1, 1],
  }
  const unlearned = { dropped: 0, words: { share: 0, row: 0, firstKnown: 1 } }
  const miss = (): number => addSlopes(shape, room, { one, total: 3.5, unlearned, share: 0.5, random: randomFrom(1) })
  miss()
  const { parts, slopes } = room
  const pairs = [
    [parts.inputs, slopes.inputs],
    [parts.scores, slopes.scores],
    ...parts.memories.flatMap(({ weights, bias }, at) => [
      [weights, slopes.memories[at]?.weights],
      [bias, slopes.memories[at]?.bias],
    ]),
  ] as [Float32Array, Float32Array][]
  for (const [weights, told] of pairs.map(([weights, slope]) => [weights, slope.slice()] as const)) {
    for (let at = 0; at < weights.length; at += 7) {
      const before = weights[at] ?? 0
      const missAt = (by: number): number => {
        weights[at] = before + by
        const result = miss()
        weights[at] = before
        return result
      }
      expect((missAt(0.01) - missAt(-0.01)) / 0.02).toBeCloseTo(told[at] ?? 0, 4)
    }
  }
})

it('learns what only the words before or behind can tell, the same each time', () => {
  // Row 1 is followed by the answer, row 2 or 3 leads to it: the middle word itself tells nothing.
  const one = (first: number, last: number, wanted: readonly number[]) => ({
    rows: [[first], [1], [last]],
    wanted: [[1, 0, 0], wanted, [1, 0, 0]],
    weights: [1, 1, 1],
  })
  const sequences = [one(2, 2, [1, 0, 0]), one(2, 3, [0, 1, 0]), one(3, 2, [0, 0, 1]), one(3, 3, [0, 1, 0])]
  const training = {
    rounds: 200,
    batch: 4,
    rate: 0.03,
    inputs: { most: 0.5, share: 1 },
    unlearned: { dropped: 0, words: { share: 0, row: 0, firstKnown: 1 } },
  }
  const misses: number[] = []
  const learn = () => trainNet(SHAPE, 4, sequences, training, (_, miss) => misses.push(miss))
  const parts = learn()
  expect(misses[0]).toBeGreaterThan(0.8)
  expect(misses.at(-1)).toBeLessThan(0.05)
  expect([...learn().scores]).toEqual([...parts.scores])
})
