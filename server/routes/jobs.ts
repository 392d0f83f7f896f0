/** `/jobs`: what is being done, what waits, what went wrong; each can be stopped or asked for again. */
import type { Router } from 'express'
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { buildJobsPage } from '../../views/pages/jobs.ts'
import { cancelJob, retryJob } from '../actions/ask-job.ts'
import { readForm } from '../middleware/read-body.ts'
import { render } from '../render.ts'
import type { Studio } from '../studio.ts'

const SHOWN = 100
const Params = z.object({ id: z.string() })

export function addJobs(app: Router, studio: Studio): void {
  app.get('/jobs', async (_req, res) => {
    mustBeAllowed(studio.actor, 'studio.read', { type: 'studio', id: 'studio' })
    const jobs = await studio.store.jobs.list({ limit: SHOWN })
    const recordings = new Map((await studio.store.recordings.list()).map(({ id, title }) => [id, title]))
    const titled = jobs.map((job) => ({ ...job, title: recordings.get(job.recordingId ?? '') ?? '' }))
    render(res, 'jobs', buildJobsPage({ jobs: titled, nowUtc: studio.clock() }))
  })
  app.post('/jobs/:id/cancel', readForm(), async (req, res) => {
    await cancelJob(studio, Params.parse(req.params).id)
    res.redirect(303, '/jobs')
  })
  app.post('/jobs/:id/retry', readForm(), async (req, res) => {
    await retryJob(studio, Params.parse(req.params).id)
    res.redirect(303, '/jobs')
  })
}
