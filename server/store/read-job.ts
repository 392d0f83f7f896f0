/** A job as callers see it, and how it is read from its row. */
import type { Selectable } from 'kysely'
import { z } from 'zod'
import type { Hold, Step } from './hold-store.ts'
import { missing, readJson, readJsonOrNull } from './json-column.ts'
import type { JobRow } from './tables.ts'

export const JobState = z.enum(['queued', 'running', 'done', 'failed', 'cancelled'])
export type JobState = z.infer<typeof JobState>

export const JobProgress = z.object({
  /** 0 to 1; null = not known. */
  part: z.number().min(0).max(1).nullable(),
  /** What is being done, for people. */
  step: z.string(),
  /** Time left in ms; null = not known. */
  leftMs: z.number().nullable(),
})
export type JobProgress = z.infer<typeof JobProgress>

export const JobError = z.object({ code: z.string(), message: z.string(), details: z.array(z.string()).default([]) })
export type JobError = z.infer<typeof JobError>

export interface Job {
  id: string
  kind: string
  state: JobState
  /** The higher goes first; 0 unless said. */
  priority: number
  recordingId: string | null
  /** Asking twice with one key is asking once. */
  jobKey: string | null
  input: unknown
  progress: JobProgress | null
  result: unknown
  error: JobError | null
  attempts: number
  maxAttempts: number
  cancelAsked: boolean
  workerId: string | null
  askedBy: string
  createdUtc: number
  runAfterUtc: number
  startedUtc: number | null
  beatUtc: number | null
  endedUtc: number | null
}

/** @throws AppError row-missing */
export async function lockJob(step: Step, engine: Hold['engine'], id: string): Promise<Job> {
  const row = await step.db
    .selectFrom('jobs')
    .selectAll()
    .where('id', '=', id)
    .$if(engine === 'postgres', (query) => query.forUpdate())
    .executeTakeFirst()
  if (!row) throw missing(`The job ${id}`)
  return toJob(row)
}

/** @throws AppError row-missing */
export async function readJob(db: Hold['db'], id: string): Promise<Job> {
  const row = await db.selectFrom('jobs').selectAll().where('id', '=', id).executeTakeFirst()
  if (!row) throw missing(`The job ${id}`)
  return toJob(row)
}

export function toJob(row: Selectable<JobRow>): Job {
  const where = `The job ${row.id}`
  const { inputJson, progressJson, resultJson, errorJson, ...plain } = row
  return {
    ...plain,
    state: JobState.parse(row.state),
    cancelAsked: row.cancelAsked === 1,
    input: readJson(z.unknown(), inputJson, where),
    progress: readJsonOrNull(JobProgress, progressJson, where),
    result: readJsonOrNull(z.unknown(), resultJson, where),
    error: readJsonOrNull(JobError, errorJson, where),
  }
}
