/** What a command may touch of the outside: its streams, whether a person watches, and the clock. */
import path from 'node:path'
import { projectRoot } from '../setup/project-root.ts'

export interface Io {
  /** Result text, to standard output. */
  out(text: string): void
  /** Words for the person, to standard error. */
  say(text: string): void
  /** All of standard input as text. */
  readInput(): Promise<string>
  /** Standard error is a terminal: progress may redraw its line. */
  isTerminal: boolean
  /** Width of the terminal in characters. */
  columns: number
  /** Absolute: where the person stands. Relative folders on the command line are taken from here. */
  folder: string
  /** UTC milliseconds. */
  nowUtc(): number
  /** Ends when the person presses Ctrl-C or the process is told to stop. */
  signal: AbortSignal
}

/** The real streams of this process. */
export function processIo(): Io {
  const stop = new AbortController()
  for (const name of ['SIGINT', 'SIGTERM'] as const) {
    process.once(name, () => stop.abort(new Error(name)))
  }
  return {
    out: (text) => void process.stdout.write(text),
    say: (text) => void process.stderr.write(text),
    readInput: async () => {
      const parts: Buffer[] = []
      for await (const part of process.stdin) parts.push(part as Buffer)
      return Buffer.concat(parts).toString('utf8')
    },
    isTerminal: process.stderr.isTTY === true,
    columns: process.stderr.columns ?? 80,
    folder: personFolder(process.cwd(), process.env['INIT_CWD'], projectRoot()),
    nowUtc: () => Date.now(),
    signal: stop.signal,
  }
}

/**
 * npm runs its scripts in the project's folder, and INIT_CWD tells where the person called it. The variable is left to
 * every program below, so it counts only in that folder: elsewhere somebody went there.
 */
export function personFolder(workFolder: string, initFolder: string | undefined, project: string): string {
  return path.resolve(workFolder === project && initFolder ? initFolder : workFolder)
}
