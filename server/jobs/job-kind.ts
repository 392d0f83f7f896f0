/** A kind of job: what it is told, and the work. Work may run again after a kill, so it must end the same when it does. */
import type { z } from 'zod'
import type { Job, JobProgress } from '../store/read-job.ts'
import type { Studio } from '../studio.ts'

export interface JobContext {
  studio: Studio
  job: Job
  /** Aborts when a person cancels, when the job was taken away, and when the studio stops. */
  signal: AbortSignal
  /** May be called as often as one likes; few of them are written. */
  onProgress: (progress: JobProgress) => void
}

/**
 * How long people wait for such work, and so what it may take of the machine: `long` work never has all workers, so that
 * what is looked into (`middle`) and what takes a moment (`short`) need not wait for forty cuts.
 */
export type Lane = 'short' | 'middle' | 'long'

export interface JobKind {
  name: string
  lane: Lane
  /** @throws ZodError when the input is not what this kind is told */
  run: (input: unknown, context: JobContext) => Promise<unknown>
}

/** Binds the work to its schema, so that it never sees an input that was not read. */
export function buildKind<Schema extends z.ZodType>(
  name: string,
  schema: Schema,
  work: (input: z.output<Schema>, context: JobContext) => Promise<unknown>,
  lane: Lane = 'long',
): JobKind {
  return { name, lane, run: async (input, context) => work(schema.parse(input), context) }
}
