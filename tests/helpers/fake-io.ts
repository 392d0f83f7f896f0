// Streams in memory for tests of the command line inside this process.
import type { Io } from '../../server/cli/io.ts'

export interface FakeIo extends Io {
  printed: { out: string; said: string }
}

/** @param input what standard input holds */
export function fakeIo(input = '', overrides: Partial<Io> = {}): FakeIo {
  const printed = { out: '', said: '' }
  return {
    printed,
    out: (text) => {
      printed.out += text
    },
    say: (text) => {
      printed.said += text
    },
    readInput: () => Promise.resolve(input),
    isTerminal: false,
    columns: 80,
    folder: process.cwd(),
    nowUtc: () => Date.UTC(2026, 0, 15),
    signal: new AbortController().signal,
    ...overrides,
  }
}
