/**
 * Jobs: work that no page waits for. A job runs at least once; a claim names worker and attempt, and a worker that lost
 * its claim is told so, hence two never finish the same attempt.
 */
import type { Updateable } from 'kysely'
import type { Actor } from '../../shared/actors.ts'
import { PROGRAM } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { Hold, Step } from './hold-store.ts'
import { writeJson } from './json-column.ts'
import { readRecording } from './keep-recordings.ts'
import { lockJob, readJob, toJob } from './read-job.ts'
import type { Job, JobError, JobProgress, JobState } from './read-job.ts'
import type { JobRow } from './tables.ts'

export interface NewJob {
  kind: string
  /** Any JSON; the job's handler parses it. */
  input: unknown
  key?: string
  priority?: number
  recordingId?: string
  maxAttempts?: number
  /** Not before this time, UTC ms. */
  runAfterUtc?: number
}

/** A worker's hold on one attempt at a job. */
export interface Claim {
  jobId: string
  workerId: string
  attempt: number
}

export interface Jobs {
  /** Within a caller's transaction it is queued with it, or not at all. isNew false = the key was there. @throws AppError row-missing */
  enqueue: (job: NewJob, actor: Actor) => Promise<{ job: Job; isNew: boolean }>
  /**
   * Takes the next job of these kinds; null = there is none. No two workers get the same attempt. By priority, then the
   * recording with the fewest jobs running, then the one served longest ago: forty jobs of one do not hold up another's.
   */
  claimJob: (kinds: readonly string[], workerId: string) => Promise<{ job: Job; claim: Claim } | null>
  /** Says the worker is alive, and how far it is. cancelAsked = stop, clean up and call fail. @throws AppError job-lost */
  beat: (claim: Claim, progress?: JobProgress) => Promise<{ cancelAsked: boolean }>
  /** Saying it twice is fine. @throws AppError job-lost */
  finish: (claim: Claim, result: unknown) => Promise<Job>
  /**
   * Ends the attempt: cancelled when that was asked, queued again when `again` and attempts are left, else failed.
   * @throws AppError job-lost
   */
  fail: (claim: Claim, error: JobError, again?: { afterMs: number }) => Promise<Job>
  /** A waiting job is cancelled at once, a running one is asked to stop. @throws AppError row-missing */
  cancel: (id: string, actor: Actor) => Promise<Job>
  /** Queues a failed or cancelled job again, with all its attempts. @throws AppError row-missing */
  retry: (id: string, actor: Actor) => Promise<Job>
  /** Takes jobs back whose worker has not been heard of for so long. @returns those taken back. */
  reapStale: (olderThanMs: number) => Promise<Job[]>
  /** Takes jobs back at once whose worker is known to be gone. @returns those taken back. */
  takeBack: (isGone: (workerId: string) => boolean) => Promise<Job[]>
  /** @throws AppError row-missing */
  read: (id: string) => Promise<Job>
  /** The newest first. */
  list: (filter?: { recordingId?: string; states?: readonly JobState[]; limit?: number }) => Promise<Job[]>
}

const MAX_ATTEMPTS = 3
const LIST_LIMIT = 200

export function keepJobs(hold: Hold): Jobs {
  return {
    enqueue: (job, actor) => hold.write((step) => enqueue(step, hold.ids(), job, actor)),
    claimJob: (kinds, workerId) => claimJob(hold, kinds, workerId),
    beat: (claim, progress) =>
      hold.write(async (step) => {
        const columns = progress ? { progressJson: writeJson(progress) } : {}
        const job = await changeClaimed(step, claim, { beatUtc: step.nowUtc, ...columns })
        if (progress) step.emit('jobs', job.id)
        return { cancelAsked: job.cancelAsked }
      }),
    finish: (claim, result) =>
      hold.write(async (step) => {
        const now = await readJob(step.db, claim.jobId)
        if (now.state === 'done' && isHolder(now, claim)) return now
        const columns = { state: 'done', resultJson: writeJson(result), errorJson: null, endedUtc: step.nowUtc }
        const job = await changeClaimed(step, claim, columns)
        step.emit('jobs', job.id)
        return job
      }),
    fail: (claim, error, again) =>
      hold.write(async (step) => {
        const now = await lockJob(step, hold.engine, claim.jobId)
        const job = await changeClaimed(step, claim, endAttempt(now, error, step.nowUtc, again?.afterMs ?? null))
        step.emit('jobs', job.id)
        return job
      }),
    cancel: (id, actor) =>
      hold.write(async (step) => {
        const now = await lockJob(step, hold.engine, id)
        const columns =
          now.state === 'queued'
            ? { state: 'cancelled', cancelAsked: 1, endedUtc: step.nowUtc }
            : now.state === 'running'
              ? { cancelAsked: 1 }
              : null
        if (!columns) return now
        await step.audit(actor, 'job.cancel', { type: 'job', id }, { kind: now.kind })
        return changeJob(step, id, columns)
      }),
    retry: (id, actor) =>
      hold.write(async (step) => {
        const now = await lockJob(step, hold.engine, id)
        if (now.state !== 'failed' && now.state !== 'cancelled') return now
        await step.audit(actor, 'job.retry', { type: 'job', id }, { kind: now.kind })
        return changeJob(step, id, { ...QUEUED, attempts: 0, cancelAsked: 0, runAfterUtc: step.nowUtc })
      }),
    reapStale: (olderThanMs) => reap(hold, (job) => job.beatUtc !== null && job.beatUtc < hold.clock() - olderThanMs),
    takeBack: (isGone) => reap(hold, ({ workerId }) => workerId !== null && isGone(workerId)),
    read: (id) => readJob(hold.db, id),
    list: async ({ recordingId, states, limit = LIST_LIMIT } = {}) => {
      const rows = await hold.db
        .selectFrom('jobs')
        .selectAll()
        .$if(recordingId !== undefined, (query) => query.where('recordingId', '=', recordingId ?? ''))
        .$if(states !== undefined, (query) => query.where('state', 'in', states ?? []))
        .orderBy('createdUtc', 'desc')
        .orderBy('id', 'desc')
        .limit(limit)
        .execute()
      return rows.map(toJob)
    },
  }
}

/** What a job that waits for its next attempt does not have. */
const QUEUED = { state: 'queued', workerId: null, startedUtc: null, beatUtc: null, progressJson: null, endedUtc: null }

async function enqueue(step: Step, id: string, job: NewJob, actor: Actor): Promise<{ job: Job; isNew: boolean }> {
  if (job.recordingId !== undefined) await readRecording(step.db, job.recordingId)
  const result = await step.db
    .insertInto('jobs')
    .values({
      id,
      kind: job.kind,
      ...QUEUED,
      priority: job.priority ?? 0,
      recordingId: job.recordingId ?? null,
      jobKey: job.key ?? null,
      inputJson: writeJson(job.input),
      resultJson: null,
      errorJson: null,
      attempts: 0,
      maxAttempts: job.maxAttempts ?? MAX_ATTEMPTS,
      cancelAsked: 0,
      askedBy: actor.id,
      createdUtc: step.nowUtc,
      runAfterUtc: job.runAfterUtc ?? step.nowUtc,
    })
    .onConflict((conflict) => conflict.column('jobKey').doNothing())
    .executeTakeFirst()
  if (result.numInsertedOrUpdatedRows === 0n) {
    const row = await step.db
      .selectFrom('jobs')
      .selectAll()
      .where('jobKey', '=', job.key ?? '')
      .executeTakeFirstOrThrow()
    return { job: toJob(row), isNew: false }
  }
  await step.audit(actor, 'job.ask', { type: 'job', id }, { kind: job.kind })
  step.emit('jobs', id)
  return { job: await readJob(step.db, id), isNew: true }
}

/**
 * One statement on both: SQLite's write lock lets one worker at a time choose; on PostgreSQL each skips rows another has
 * just locked (SELECT ... FOR UPDATE SKIP LOCKED).
 */
async function claimJob(hold: Hold, kinds: readonly string[], workerId: string) {
  if (kinds.length === 0) return null
  const next = (db: Hold['db'], nowUtc: number) =>
    db
      .selectFrom('jobs')
      .select('id')
      .where('state', '=', 'queued')
      .where('kind', 'in', kinds)
      .where('runAfterUtc', '<=', nowUtc)
      .orderBy('priority', 'desc')
      .orderBy((eb) => {
        const running = eb
          .selectFrom('jobs as beside')
          .select(({ fn }) => fn.countAll().as('count'))
          .where('beside.state', '=', 'running')
          .whereRef('beside.recordingId', '=', 'jobs.recordingId')
        return running
      })
      .orderBy((eb) => {
        const served = eb
          .selectFrom('jobs as before')
          .select(({ fn }) => fn.max('before.startedUtc').as('last'))
          .whereRef('before.recordingId', '=', 'jobs.recordingId')
        return eb.fn.coalesce(served, eb.lit(0))
      })
      .orderBy('createdUtc')
      .orderBy('id')
      .limit(1)
  // Idle workers ask often; looking first costs no lock.
  if (!(await next(hold.db, hold.clock()).executeTakeFirst())) return null
  return hold.write(async (step) => {
    const row = await step.db
      .updateTable('jobs')
      .set((eb) => ({
        state: 'running',
        workerId,
        attempts: eb('attempts', '+', 1),
        startedUtc: step.nowUtc,
        beatUtc: step.nowUtc,
      }))
      .where(
        'id',
        '=',
        next(step.db, step.nowUtc).$if(hold.engine === 'postgres', (q) => q.forUpdate().skipLocked()),
      )
      .where('state', '=', 'queued')
      .returningAll()
      .executeTakeFirst()
    if (!row) return null
    step.emit('jobs', row.id)
    return { job: toJob(row), claim: { jobId: row.id, workerId, attempt: row.attempts } }
  })
}

/** Running jobs are few: one look finds them, and only those that are taken back cost a lock. */
async function reap(hold: Hold, isLost: (job: Job) => boolean): Promise<Job[]> {
  const running = (db: Hold['db']) => db.selectFrom('jobs').selectAll().where('state', '=', 'running').orderBy('id')
  if (!(await running(hold.db).execute()).map(toJob).some(isLost)) return []
  return hold.write(async (step) => {
    const rows = await running(step.db)
      .$if(hold.engine === 'postgres', (query) => query.forUpdate().skipLocked())
      .execute()
    const jobs: Job[] = []
    for (const job of rows.map(toJob).filter(isLost)) {
      await step.audit(PROGRAM, 'job.run', { type: 'job', id: job.id }, { taken: job.workerId, attempt: job.attempts })
      jobs.push(await changeJob(step, job.id, endAttempt(job, WENT_AWAY, step.nowUtc, 0)))
    }
    return jobs
  })
}

const WENT_AWAY: JobError = {
  code: 'job-lost',
  message: 'The program that did this ended before it was done. Try again; what was finished is kept.',
  details: [],
}

/** Columns of a job after an attempt that did not succeed; againAfterMs null = do not try again. */
function endAttempt(job: Job, error: JobError, nowUtc: number, againAfterMs: number | null) {
  if (job.cancelAsked) return { state: 'cancelled', endedUtc: nowUtc, errorJson: null }
  const errorJson = writeJson(error)
  if (againAfterMs === null || job.attempts >= job.maxAttempts) return { state: 'failed', endedUtc: nowUtc, errorJson }
  return { ...QUEUED, runAfterUtc: nowUtc + againAfterMs, errorJson }
}

type Columns = Updateable<JobRow>

/** Changes a job its claim still holds. @throws AppError job-lost */
async function changeClaimed(step: Step, claim: Claim, columns: Columns): Promise<Job> {
  const row = await step.db
    .updateTable('jobs')
    .set(columns)
    .where('id', '=', claim.jobId)
    .where('state', '=', 'running')
    .where('workerId', '=', claim.workerId)
    .where('attempts', '=', claim.attempt)
    .returningAll()
    .executeTakeFirst()
  if (row) return toJob(row)
  throw new AppError('job-lost', `The job ${claim.jobId} was taken from this worker. Stop working on it.`)
}

async function changeJob(step: Step, id: string, columns: Columns): Promise<Job> {
  await step.db.updateTable('jobs').set(columns).where('id', '=', id).execute()
  step.emit('jobs', id)
  return readJob(step.db, id)
}

const isHolder = (job: Job, claim: Claim): boolean => job.workerId === claim.workerId && job.attempts === claim.attempt
