/**
 * Runs jobs: claims the next one for each free worker, says that it is alive, ends it when a person says so, and takes
 * back what a killed program left. A job may run more than once; it is never run by two at a time that both finish it.
 */
import { randomBytes } from 'node:crypto'
import { availableParallelism } from 'node:os'
import { AppError } from '../../shared/errors.ts'
import type { Claim } from '../store/keep-jobs.ts'
import type { Job, JobError, JobProgress } from '../store/read-job.ts'
import type { Studio } from '../studio.ts'
import type { JobKind, Lane } from './job-kind.ts'
import { JOB_KINDS } from './kinds.ts'

export interface JobRunner {
  /** Asks running jobs to stop, and waits until they have; they are queued again for the next start. */
  close: () => Promise<void>
  /** Looks for work now. */
  wake: () => void
  running: () => number
}

export interface RunnerOptions {
  kinds: readonly JobKind[]
  /** Long jobs at one time; one more worker is kept for middle and short ones, and one for short ones alone. */
  workers: number
  /** ms between two looks for work that nobody told of. */
  pollMs: number
  /** ms between two signs of life. */
  beatMs: number
  /** ms without a sign of life after which a job is taken back. */
  staleMs: number
  /** ms between two writes of progress. */
  progressMs: number
  /** Attempts after which a fault is final. Stops and kills of the studio count apart, by the job's own limit. */
  tries: number
  /** ms before a failed attempt is tried again, for each attempt so far. */
  againMs: number
}

export const RUNNER_OPTIONS: RunnerOptions = {
  kinds: JOB_KINDS,
  // ffmpeg gives way to all else on the machine, and uses several cores by itself
  workers: Math.max(2, Math.floor(availableParallelism() / 2)),
  pollMs: 1000,
  beatMs: 2000,
  staleMs: 15_000,
  progressMs: 500,
  tries: 3,
  againMs: 2000,
}

/** Faults of the moment; the same file or words would fail the same way again, so all else is not tried again. */
const PASSING = ['engine-failed', 'engine-timeout', 'store-busy', 'internal']

export async function runJobs(studio: Studio, given: Partial<RunnerOptions> = {}): Promise<JobRunner> {
  const options = { ...RUNNER_OPTIONS, ...given }
  const program = `${process.pid}-${randomBytes(4).toString('hex')}`
  const active = new Map<Promise<void>, { stop: AbortController; kind: string }>()
  const isClosed = (): boolean => closed
  let closed = false
  let looking: Promise<void> | null = null
  let again = false

  const look = async (): Promise<void> => {
    await studio.store.jobs.reapStale(options.staleMs)
    while (!isClosed()) {
      const names = findFree(
        options,
        [...active.values()].map(({ kind }) => kind),
      )
      const claimed = await studio.store.jobs.claimJob(names, `${program}-${randomBytes(4).toString('hex')}`)
      if (!claimed) return
      const stop = new AbortController()
      const work: Promise<void> = runOne(studio, options, claimed, stop, isClosed)
        .catch(studio.onFault)
        .finally(() => {
          active.delete(work)
          wake()
        })
      active.set(work, { stop, kind: claimed.job.kind })
    }
  }
  const wake = (): void => {
    if (closed) return
    if (looking) {
      again = true
      return
    }
    looking = look()
      .catch(studio.onFault)
      .finally(() => {
        looking = null
        if (!again) return
        again = false
        wake()
      })
  }
  // the store of one machine: what a killed program was doing is known to be free, and need not wait to grow stale
  if (studio.store.engine === 'sqlite') await studio.store.jobs.takeBack((workerId) => isGone(workerId, program))
  const endEvents = await studio.events.subscribe('jobs', wake)
  const timer = setInterval(wake, options.pollMs)
  wake()
  return {
    wake,
    running: () => active.size,
    close: async () => {
      closed = true
      clearInterval(timer)
      endEvents()
      await looking
      for (const { stop } of active.values()) stop.abort()
      await Promise.all(active.keys())
    },
  }
}

/** Most jobs at one time of a lane and those above it, beyond the workers for long ones. */
const BEYOND = { long: 0, middle: 1, short: 2 } as const satisfies Record<Lane, number>
const LANES = ['long', 'middle', 'short'] as const satisfies readonly Lane[]

/** Names of the kinds for which a worker is free. */
function findFree({ kinds, workers }: RunnerOptions, running: readonly string[]): string[] {
  const laneOf = (name: string): Lane => kinds.find((kind) => kind.name === name)?.lane ?? 'long'
  const lanes = running.map(laneOf)
  const free = LANES.filter((lane) => {
    const above = LANES.slice(0, LANES.indexOf(lane) + 1)
    return lanes.filter((one) => above.includes(one)).length < workers + BEYOND[lane]
  })
  return kinds.filter(({ lane }) => free.includes(lane)).map(({ name }) => name)
}

/** True when the worker's program has ended, or was an earlier one of our own number. */
function isGone(workerId: string, program: string): boolean {
  if (workerId.startsWith(program)) return false
  const pid = Number(/^(\d+)-/.exec(workerId)?.[1])
  if (!pid) return false
  if (pid === process.pid) return true
  try {
    process.kill(pid, 0)
    return false
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH'
  }
}

async function runOne(
  studio: Studio,
  options: RunnerOptions,
  { job, claim }: { job: Job; claim: Claim },
  stop: AbortController,
  isClosed: () => boolean,
): Promise<void> {
  const pulse = keepPulse(studio, options, claim, stop)
  let result: unknown
  try {
    const kind = options.kinds.find(({ name }) => name === job.kind)
    if (!kind) throw new AppError('internal', `No program here does jobs of the kind ${job.kind}.`)
    result = await kind.run(job.input, { studio, job, signal: stop.signal, onProgress: pulse.tell })
  } catch (error) {
    await pulse.end()
    if (pulse.isLost()) return
    const isFault = error instanceof AppError && PASSING.includes(error.code) && job.attempts < options.tries
    const isPassing = isClosed() || isFault
    if (!(error instanceof AppError)) studio.onFault(error)
    // a studio that stops gives its work back at once
    const waitMs = isClosed() ? 0 : options.againMs * job.attempts
    await unlessLost(studio.store.jobs.fail(claim, describe(error), isPassing ? { afterMs: waitMs } : undefined))
    return
  }
  await pulse.end()
  await unlessLost(studio.store.jobs.finish(claim, result ?? null))
}

interface Pulse {
  tell: (progress: JobProgress) => void
  /** True when the job was taken from this worker; then nothing more may be written about it. */
  isLost: () => boolean
  end: () => Promise<void>
}

/** Says that the worker is alive, with the newest progress; learns whether it is to stop. */
function keepPulse(studio: Studio, options: RunnerOptions, claim: Claim, stop: AbortController): Pulse {
  let newest: JobProgress | undefined
  let isLost = false
  let ended = false
  let lastMs = studio.clock()
  let writing: Promise<void> | null = null
  const beat = (): void => {
    if (writing || ended) return
    const progress = newest
    newest = undefined
    lastMs = studio.clock()
    writing = studio.store.jobs
      .beat(claim, progress)
      .then(({ cancelAsked }) => {
        if (cancelAsked) stop.abort()
      })
      .catch((error: unknown) => {
        if (!(error instanceof AppError && error.code === 'job-lost')) return studio.onFault(error)
        isLost = true
        stop.abort()
      })
      .finally(() => (writing = null))
  }
  // a wish to cancel is an event of the job, and is heard at once
  let endEvents: (() => void) | null = null
  const heard = studio.events.subscribe(`jobs/${claim.jobId}`, () => {
    if (studio.clock() - lastMs > options.progressMs / 2) void checkCancel()
  })
  const checkCancel = async (): Promise<void> => {
    const { cancelAsked } = await studio.store.jobs.read(claim.jobId)
    if (cancelAsked) stop.abort()
  }
  void heard.then((end) => (ended ? end() : (endEvents = end))).catch(studio.onFault)
  const timer = setInterval(beat, options.beatMs)
  return {
    tell: (progress) => {
      newest = progress
      if (studio.clock() - lastMs >= options.progressMs) beat()
    },
    isLost: () => isLost,
    end: async () => {
      ended = true
      clearInterval(timer)
      endEvents?.()
      await writing
    },
  }
}

async function unlessLost(work: Promise<unknown>): Promise<void> {
  try {
    await work
  } catch (error) {
    if (!(error instanceof AppError && error.code === 'job-lost')) throw error
  }
}

function describe(error: unknown): JobError {
  if (error instanceof AppError) return { code: error.code, message: error.message, details: [...error.details] }
  return {
    code: 'internal',
    message: 'A fault of this program; nothing you did. What was finished is kept.',
    details: [],
  }
}
