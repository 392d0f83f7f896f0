/** The list of jobs: what runs, what waits, what went wrong, what is done. */
import { buildJobLine, kindWords } from './job-words.ts'
import type { JobInput, JobLine } from './job-words.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'

export type ListedJob = JobInput & {
  recordingId: string | null
  /** Of its class; '' = of none, or one that was taken away. */
  title: string
  createdUtc: number
  startedUtc: number | null
  endedUtc: number | null
}

export interface JobsPage {
  layout: Layout
  isEmpty: boolean
  /** Running and waiting. */
  active: (JobLine & { title: string; canCancel: boolean })[]
  failed: { id: string; what: string; title: string; message: string; details: string[]; when: string }[]
  /** when = how it ended, too, where it was not done. */
  ended: { id: string; what: string; title: string; when: string }[]
}

export function buildJobsPage({ jobs, nowUtc }: { jobs: readonly ListedJob[]; nowUtc: number }): JobsPage {
  const of = (...states: JobInput['state'][]): ListedJob[] => jobs.filter(({ state }) => states.includes(state))
  const when = (job: ListedJob): string => formatAgo(nowUtc - (job.endedUtc ?? job.createdUtc))
  return {
    layout: buildLayout({ title: 'Jobs', kind: 'shelf', here: 'jobs', htmx: true, sse: true }),
    isEmpty: jobs.length === 0,
    active: [...of('running'), ...of('queued').reverse()].map((job) => ({
      ...buildJobLine(job),
      title: job.title,
      canCancel: !job.cancelAsked,
    })),
    failed: of('failed').map((job) => ({
      id: job.id,
      what: kindWords(job.kind),
      title: job.title,
      message: job.error?.message ?? 'It ended without a reason.',
      details: [...(job.error?.details ?? [])],
      when: when(job),
    })),
    ended: of('done', 'cancelled').map((job) => ({
      id: job.id,
      what: kindWords(job.kind),
      title: job.title,
      when: job.state === 'done' ? when(job) : `stopped ${when(job)}`,
    })),
  }
}

function formatAgo(ms: number): string {
  const minutes = Math.floor(ms / 60_000)
  if (minutes < 1) return 'just now'
  if (minutes < 60) return `${minutes} min ago`
  const hours = Math.floor(minutes / 60)
  return hours < 48 ? `${hours} h ago` : `${Math.floor(hours / 24)} days ago`
}
