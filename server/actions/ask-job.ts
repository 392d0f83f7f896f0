/** Asks for work that no page waits for, stops it, and asks again. */
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Job } from '../store/read-job.ts'
import type { Studio } from '../studio.ts'
import { findReader } from './change-reader.ts'

const Id = z.string().min(1)
/** What each kind of job is told. The kind's file in server/jobs reads it with the same schema. */
export const JOB_INPUTS = {
  analyse: z.object({ recordingId: Id, mediaId: Id }),
  /** mediaIds = the parts, in order. */
  join: z.object({ recordingId: Id, mediaIds: z.array(Id).min(2) }),
  /** filmId = what the sound is compared with. */
  'place-sound': z.object({ recordingId: Id, mediaId: Id, filmId: Id }),
  preview: z.object({ recordingId: Id, mediaId: Id }),
  draft: z.object({ recordingId: Id, transcriptVersion: z.number().int().positive() }),
  'read-again': z.object({ recordingId: Id, transcriptVersion: z.number().int().positive() }),
  /** segmentIds null = all that are lessons. */
  cut: z.object({ recordingId: Id, segmentIds: z.array(Id).min(1).nullable() }),
  /** segmentIds null = all that are new or changed; places by segment id, as in publish-lessons.ts. */
  publish: z.object({ recordingId: Id, segmentIds: z.array(Id).min(1).nullable(), places: z.record(Id, Id) }),
} as const
export type AskedKind = keyof typeof JOB_INPUTS
export type JobInput<Kind extends AskedKind> = z.infer<(typeof JOB_INPUTS)[Kind]>

/** What people wait for goes first. */
const PRIORITY = {
  draft: 30,
  join: 25,
  analyse: 20,
  publish: 15,
  'place-sound': 12,
  'read-again': 11,
  preview: 10,
  cut: 0,
} as const satisfies Record<AskedKind, number>

/** A studio may be stopped or killed so often before a job is given up; faults of the job itself end it much sooner. */
const MOST_ATTEMPTS = 25

type Needs = Pick<Studio, 'store' | 'actor'>

/**
 * Queues a job within a transaction of the caller or by itself.
 * @param key asking twice with one key is asking once; null = a new job each time
 * @throws AppError row-missing, not-allowed
 */
export async function askJob<Kind extends AskedKind>(
  { jobs }: Pick<Rooms, 'jobs'>,
  actor: Studio['actor'],
  kind: Kind,
  input: JobInput<Kind>,
  key: string | null,
): Promise<Job> {
  const read = JOB_INPUTS[kind].parse(input)
  mustBeAllowed(actor, 'job.ask', { type: 'job', id: kind })
  const job = {
    ...{ kind, input: read, priority: PRIORITY[kind], recordingId: read.recordingId, maxAttempts: MOST_ATTEMPTS },
    ...(key && { key }),
  }
  return (await jobs.enqueue(job, actor)).job
}

/** Cuts lessons to look at. @throws AppError row-missing, not-allowed */
export async function askCut(studio: Needs, input: z.input<(typeof JOB_INPUTS)['cut']>): Promise<Job> {
  const { recordingId, segmentIds } = JOB_INPUTS.cut.parse(input)
  if (!(await studio.store.sheets.readOf(recordingId))) {
    throw new AppError(
      'row-missing',
      'The class has no log sheet yet, so nothing can be cut. Add its transcript first.',
    )
  }
  return askJob(studio.store, studio.actor, 'cut', { recordingId, segmentIds }, null)
}

/** Publishes what is chosen. @throws AppError row-missing, not-allowed */
export async function askPublish(studio: Needs, input: z.input<(typeof JOB_INPUTS)['publish']>): Promise<Job> {
  const read = JOB_INPUTS.publish.parse(input)
  mustBeAllowed(studio.actor, 'lesson.publish', { type: 'recording', id: read.recordingId })
  if (!(await studio.store.sheets.readOf(read.recordingId))) {
    throw new AppError('row-missing', 'The class has no log sheet yet, so nothing can be published.')
  }
  return askJob(studio.store, studio.actor, 'publish', read, null)
}

/** Has the second reader look through words that are drafted, once for each transcript; without one in the settings nothing is asked. */
export async function askReading(
  studio: Needs & Pick<Studio, 'settings' | 'dataFolder'>,
  input: JobInput<'read-again'>,
): Promise<Job | null> {
  const { recordingId, transcriptVersion } = input
  if ((await findReader(studio)) === null) return null
  return askJob(studio.store, studio.actor, 'read-again', input, `read-again-${recordingId}-${transcriptVersion}`)
}

/** A waiting job ends at once, a running one stops soon. @throws AppError row-missing, not-allowed */
export async function cancelJob({ store, actor }: Needs, id: string): Promise<Job> {
  mustBeAllowed(actor, 'job.cancel', { type: 'job', id })
  return store.jobs.cancel(id, actor)
}

/** @throws AppError row-missing, not-allowed */
export async function retryJob({ store, actor }: Needs, id: string): Promise<Job> {
  mustBeAllowed(actor, 'job.retry', { type: 'job', id })
  return store.jobs.retry(id, actor)
}
