/** Starts what a serving studio does by itself: jobs, uploads that were cut off, the inbox folder. */
import { sweepJoined } from '../actions/drop-joined.ts'
import { sweepUploads } from '../actions/take-uploads.ts'
import { mendArrivals } from '../actions/mend-arrivals.ts'
import { openInbox } from '../actions/watch-inbox.ts'
import type { Studio } from '../studio.ts'
import { runJobs } from './run-jobs.ts'
import type { RunnerOptions } from './run-jobs.ts'

const SWEEP_MS = 3_600_000
const INBOX_MS = 3000

/** @returns ends it all; running jobs are given back */
export async function startWork(studio: Studio, options: Partial<RunnerOptions> = {}): Promise<() => Promise<void>> {
  const inbox = studio.settings.inboxFolder === null ? null : openInbox(studio, studio.settings.inboxFolder)
  // an upload still being taken by a page is safe: taking it twice is taking it once
  const sweep = async ({ isStart } = { isStart: false }): Promise<void> => {
    await sweepUploads(studio, studio.clock(), studio.onFault)
    await sweepJoined(studio, { isStart })
  }
  await sweep({ isStart: true })
  if (studio.ffmpeg) await mendArrivals(studio)
  const runner = await runJobs(studio, options)
  const endSweep = repeat(sweep, SWEEP_MS, studio.onFault)
  const endInbox = inbox && repeat(() => inbox.look(), INBOX_MS, studio.onFault)
  return async () => {
    await Promise.all([endSweep(), endInbox?.()])
    await runner.close()
  }
}

/** Again and again, never two at a time. @returns ends it, and waits for the one under way */
function repeat(work: () => Promise<unknown>, everyMs: number, onFault: (error: unknown) => void) {
  let running: Promise<unknown> | null = null
  const timer = setInterval(() => {
    running ??= work()
      .catch(onFault)
      .finally(() => (running = null))
  }, everyMs)
  return async (): Promise<void> => {
    clearInterval(timer)
    await running
  }
}
