// The runner of jobs over a real store: order, cancel, retry, kills of the program, and a clean stop.
import { setTimeout as wait } from 'node:timers/promises'
import { describe, expect, it, onTestFinished } from 'vitest'
import { z } from 'zod'
import { buildKind } from '../../../server/jobs/job-kind.ts'
import type { JobContext, JobKind } from '../../../server/jobs/job-kind.ts'
import { runJobs } from '../../../server/jobs/run-jobs.ts'
import type { RunnerOptions } from '../../../server/jobs/run-jobs.ts'
import type { Job, JobState } from '../../../server/store/read-job.ts'
import { openStudio } from '../../../server/studio.ts'
import type { Studio } from '../../../server/studio.ts'
import { LOCAL_OWNER } from '../../../shared/actors.ts'
import { AppError } from '../../../shared/errors.ts'
import { testSettings } from '../../helpers/http-door.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

const QUICK: Partial<RunnerOptions> = { pollMs: 20, beatMs: 20, progressMs: 10, againMs: 5, staleMs: 60_000 }

async function openTestStudio(): Promise<{ studio: Studio; faults: unknown[] }> {
  const faults: unknown[] = []
  const studio = await openStudio(testSettings(await tempFolder()), { onFault: (error) => void faults.push(error) })
  onTestFinished(() => studio.close())
  return { studio, faults }
}

type Work = (context: JobContext) => Promise<unknown>
const kindOf = (work: Work, name = 'test'): JobKind => buildKind(name, z.unknown(), (_input, context) => work(context))

async function start(studio: Studio, kinds: JobKind[], more: Partial<RunnerOptions> = {}) {
  const runner = await runJobs(studio, { ...QUICK, kinds, ...more })
  onTestFinished(() => runner.close())
  return runner
}

const ask = async (studio: Studio, input: unknown = {}, more: { kind?: string; priority?: number } = {}) =>
  (await studio.store.jobs.enqueue({ kind: 'test', input, ...more }, LOCAL_OWNER)).job

async function until(studio: Studio, id: string, state: JobState): Promise<Job> {
  await expect.poll(async () => (await studio.store.jobs.read(id)).state, { timeout: 8000, interval: 10 }).toBe(state)
  return studio.store.jobs.read(id)
}

/** Runs until it is told to stop. */
const endless: Work = ({ signal }) =>
  new Promise((_resolve, reject) => {
    signal.addEventListener('abort', () => reject(new AppError('engine-cancelled', 'It was cancelled.')), {
      once: true,
    })
  })

describe('a job that goes wrong', () => {
  it('is not tried again where the input is bad', async () => {
    const { studio } = await openTestStudio()
    await start(studio, [kindOf(() => Promise.reject(new AppError('recording-broken', 'It is cut short.')))])
    const { attempts, error } = await until(studio, (await ask(studio)).id, 'failed')
    expect([attempts, error]).toEqual([1, { code: 'recording-broken', message: 'It is cut short.', details: [] }])
  })

  it('is tried again where the machine failed, and only so often', async () => {
    const { studio } = await openTestStudio()
    let tries = 0
    const work = (): Promise<unknown> => Promise.reject(new AppError('engine-failed', `Try ${(tries += 1)}.`))
    await start(studio, [kindOf(work)], { tries: 3 })
    const job = (await studio.store.jobs.enqueue({ kind: 'test', input: 1, maxAttempts: 25 }, LOCAL_OWNER)).job
    expect((await until(studio, job.id, 'failed')).error?.message).toBe('Try 3.')
  })

  it('tells no stack, but its fault is heard', async () => {
    const { studio, faults } = await openTestStudio()
    await start(studio, [kindOf(() => Promise.reject(new TypeError('x is not a function')))])
    const { error } = await until(studio, (await ask(studio)).id, 'failed')
    expect([error?.code, error?.message]).toEqual(['internal', expect.not.stringContaining('function')])
    expect(faults).toHaveLength(1)
  })

  it('with an input that its kind does not read', async () => {
    const { studio } = await openTestStudio()
    await start(studio, [buildKind('test', z.object({ a: z.number() }), () => Promise.resolve())])
    expect((await until(studio, (await ask(studio, { a: 'b' })).id, 'failed')).error?.code).toBe('internal')
  })

  it('can be asked for again by a person', async () => {
    const { studio } = await openTestStudio()
    let isBad = true
    await start(studio, [
      kindOf(() => (isBad ? Promise.reject(new AppError('disk-full', 'Full.')) : Promise.resolve('well'))),
    ])
    const { id } = await ask(studio)
    await until(studio, id, 'failed')
    isBad = false
    await studio.store.jobs.retry(id, LOCAL_OWNER)
    expect((await until(studio, id, 'done')).result).toBe('well')
  })
})

describe('a running job', () => {
  it('is cancelled soon after a person says so', async () => {
    const { studio } = await openTestStudio()
    await start(studio, [kindOf(endless)])
    const { id } = await ask(studio)
    await until(studio, id, 'running')
    await studio.store.jobs.cancel(id, LOCAL_OWNER)
    expect((await until(studio, id, 'cancelled')).error).toBeNull()
  })

  it('shows its newest progress', async () => {
    const { studio } = await openTestStudio()
    let end = (): void => undefined
    const work: Work = async ({ onProgress }) => {
      for (let step = 1; step <= 50; step += 1) {
        onProgress({ part: step / 50, step: `Step ${step}`, leftMs: null })
        await wait(1)
      }
      await new Promise<void>((resolve) => (end = resolve))
    }
    await start(studio, [kindOf(work)])
    const { id } = await ask(studio)
    await expect.poll(async () => (await studio.store.jobs.read(id)).progress?.step).toBe('Step 50')
    end()
    await until(studio, id, 'done')
  })

  it('is given back when the studio stops, and done at the next start', async () => {
    const { studio } = await openTestStudio()
    const first = await start(studio, [kindOf(endless)])
    const { id } = await ask(studio)
    await until(studio, id, 'running')
    await first.close()
    expect((await studio.store.jobs.read(id)).state).toBe('queued')
    await start(studio, [kindOf(() => Promise.resolve('done later'))])
    expect((await until(studio, id, 'done')).result).toBe('done later')
  })

  it('of a program that was killed is taken back', async () => {
    const { studio } = await openTestStudio()
    const { id } = await ask(studio)
    await studio.store.jobs.claimJob(['test'], 'killed-program')
    await start(studio, [kindOf(() => Promise.resolve('second try'))], { staleMs: 30 })
    const { result, attempts } = await until(studio, id, 'done')
    expect([result, attempts]).toEqual(['second try', 2])
  })

  it('that was taken from a sleeping worker is stopped there, and finished once', async () => {
    const { studio, faults } = await openTestStudio()
    let runs = 0
    const work: Work = (context) => ((runs += 1) === 1 ? endless(context) : Promise.resolve(runs))
    await start(studio, [kindOf(work)], { workers: 1 })
    const { id } = await ask(studio)
    await until(studio, id, 'running')
    // as if nothing had been heard for a minute
    await studio.store.jobs.reapStale(-60_000)
    expect((await until(studio, id, 'done')).result).toBe(2)
    expect(faults).toEqual([])
  })
})

it('does as many at a time as it has workers, the pressing ones first', async () => {
  const { studio } = await openTestStudio()
  const order: unknown[] = []
  let now = 0
  let most = 0
  const kind = buildKind('test', z.unknown(), async (input) => {
    order.push(input)
    most = Math.max(most, (now += 1))
    await wait(5)
    now -= 1
  })
  const jobs = []
  for (const [input, priority] of [
    [1, 0],
    [2, 0],
    [3, 10],
    [4, 0],
    [5, 20],
  ] as const) {
    jobs.push(await ask(studio, input, { priority }))
  }
  await start(studio, [kind], { workers: 2 })
  for (const { id } of jobs) await until(studio, id, 'done')
  expect(order).toEqual([5, 3, 1, 2, 4])
  expect(most).toBe(2)
})

it('keeps a worker for what people wait for, however many long jobs there are', async () => {
  const { studio } = await openTestStudio()
  const long = buildKind('long', z.unknown(), (_input, context) => endless(context), 'long')
  const middle = buildKind('middle', z.unknown(), (_input, context) => endless(context), 'middle')
  const short = buildKind('short', z.unknown(), () => Promise.resolve('at once'), 'short')
  const running = async (): Promise<string[]> =>
    (await studio.store.jobs.list({ states: ['running'] })).map(({ kind }) => kind).sort()
  for (let count = 0; count < 5; count += 1) await ask(studio, {}, { kind: 'long', priority: 50 })
  await start(studio, [long, middle, short], { workers: 2 })
  await expect.poll(running).toEqual(['long', 'long'])
  for (let count = 0; count < 3; count += 1) await ask(studio, {}, { kind: 'middle' })
  await expect.poll(running).toEqual(['long', 'long', 'middle'])
  const { id } = await ask(studio, {}, { kind: 'short' })
  expect((await until(studio, id, 'done')).result).toBe('at once')
  expect(await running()).toEqual(['long', 'long', 'middle'])
})

it('takes up at once what a killed program of this machine was doing', async () => {
  const { studio } = await openTestStudio()
  const [killed, other] = [await ask(studio, 'killed'), await ask(studio, 'elsewhere')]
  // no process has this number: it is above the most that Linux gives (proc(5), pid_max)
  await studio.store.jobs.claimJob(['test'], '4194305-0a0b0c0d-00000000')
  await studio.store.jobs.claimJob(['test'], 'another-machine')
  await start(studio, [kindOf(() => Promise.resolve('second try'))])
  expect((await until(studio, killed.id, 'done')).attempts).toBe(2)
  expect((await studio.store.jobs.read(other.id)).state).toBe('running')
})

it('leaves kinds alone that it does not know', async () => {
  const { studio } = await openTestStudio()
  const other = await ask(studio, {}, { kind: 'other' })
  await start(studio, [kindOf(() => Promise.resolve())])
  await until(studio, (await ask(studio)).id, 'done')
  expect((await studio.store.jobs.read(other.id)).state).toBe('queued')
})
