// The list of jobs: what is done says when, what was stopped says so, each with its class.
import { expect, it } from 'vitest'
import { buildJobsPage } from '../../views/pages/jobs.ts'
import type { ListedJob } from '../../views/pages/jobs.ts'

const MINUTE_MS = 60_000

const job = (state: ListedJob['state'], endedUtc: number | null): ListedJob => ({
  ...{ id: state, kind: 'cut', state, progress: null, error: null, cancelAsked: false },
  ...{ recordingId: 'r', title: 'Chair class', createdUtc: 0, startedUtc: 0, endedUtc },
})

it('tells how each ended in one place, so that a narrow screen has room for its name', () => {
  const jobs = [job('done', 0), job('cancelled', 5 * MINUTE_MS), job('running', null)]
  const page = buildJobsPage({ jobs, nowUtc: 7 * MINUTE_MS })
  expect(page.ended).toEqual([
    { id: 'done', what: 'Cutting lessons', title: 'Chair class', when: '7 min ago' },
    { id: 'cancelled', what: 'Cutting lessons', title: 'Chair class', when: 'stopped 2 min ago' },
  ])
  expect(page.active.map(({ id }) => id)).toEqual(['running'])
})
