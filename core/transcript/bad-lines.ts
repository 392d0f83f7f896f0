/** Collects what is wrong with a transcript by line, so that a person can correct all of it at once. */
import { AppError } from '../../shared/errors.ts'

const MOST_NAMED = 20

/** Bad lines of one file. `stop` throws when there are any; nothing is half-read. */
export class BadLines {
  private readonly broken: { line: number; what: string }[] = []
  private readonly backwards: { line: number; what: string }[] = []

  /** A line that breaks the rules of its form; lines count from 1. */
  add(line: number, what: string): void {
    this.broken.push({ line, what })
  }

  /** A time stamp that lies before an earlier one. */
  addBackwards(line: number, what: string): void {
    this.backwards.push({ line, what })
  }

  get count(): number {
    return this.broken.length + this.backwards.length
  }

  /** @throws AppError transcript-line, or transcript-order when stamps going back are all that is wrong. */
  stop(form: string): void {
    if (this.count === 0) return
    const all = [...this.broken, ...this.backwards].sort((a, b) => a.line - b.line)
    const details = all.slice(0, MOST_NAMED).map(({ line, what }) => `line ${line}: ${what}`)
    if (all.length > MOST_NAMED) details.push(`and ${all.length - MOST_NAMED} more`)
    const lines = `${all.length} ${all.length === 1 ? 'line' : 'lines'}`
    if (this.broken.length === 0) {
      const message = `The time stamps of the transcript go back in ${lines}. Put the lines in order of time, then try again.`
      throw new AppError('transcript-order', message, { details })
    }
    const message = `The transcript (read as ${form}) has ${lines} that cannot be read. Correct what is named below, then try again; nothing was read.`
    throw new AppError('transcript-line', message, { details })
  }
}
