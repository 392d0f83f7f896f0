/** `/recordings/:id/publish`: what each exercise becomes; publish, withdraw, bring back. */
import type { Router } from 'express'
import { z } from 'zod'
import { speakDose } from '../../core/dose/speak-dose.ts'
import { keptRanges } from '../../core/segments/kept-ranges.ts'
import { Use } from '../../shared/log-sheet.ts'
import { buildPublishPage } from '../../views/pages/publish.ts'
import { askPublish } from '../actions/ask-job.ts'
import { chooseLessons } from '../actions/choose-lessons.ts'
import { showPublishing } from '../actions/show-publishing.ts'
import type { PublishingView } from '../actions/show-publishing.ts'
import { bringBackLesson, withdrawLesson } from '../actions/withdraw-lesson.ts'
import { readForm } from '../middleware/read-body.ts'
import { render } from '../render.ts'
import type { Studio } from '../studio.ts'

const Params = z.object({ id: z.string() })
const Form = z.record(z.string(), z.string())
const WithdrawForm = z.object({ slug: z.string(), why: z.string().default('') })
const BringBackForm = z.object({ slug: z.string(), version: z.coerce.number().int().positive() })
/** What a publishing job leaves as its result. */
const Result = z.object({
  lessons: z.array(z.object({ name: z.string(), slug: z.string(), change: z.string() })),
  failed: z.array(z.object({ name: z.string(), message: z.string() })),
})

export function addPublish(app: Router, studio: Studio): void {
  app.get('/recordings/:id/publish', async (req, res) => {
    render(res, 'publish', buildPublishPage(plainView(await showPublishing(studio, req.params.id))))
  })
  app.post('/recordings/:id/publish', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await askPublish(studio, { recordingId: id, segmentIds: null, places: readFields(req.body, 'place.') })
    res.redirect(303, `/recordings/${id}/publish`)
  })
  app.post('/recordings/:id/publish/uses', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    const uses = z.record(z.string(), Use).parse(readFields(req.body, 'use.'))
    await chooseLessons(studio, { recordingId: id, uses })
    res.redirect(303, `/recordings/${id}/publish`)
  })
  app.post('/recordings/:id/publish/withdraw', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    const { slug } = await withdrawLesson(studio, WithdrawForm.parse(req.body))
    res.redirect(303, `/recordings/${id}/publish#lesson-${slug}`)
  })
  app.post('/recordings/:id/publish/bring-back', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    const { slug } = await bringBackLesson(studio, BringBackForm.parse(req.body))
    res.redirect(303, `/recordings/${id}/publish#lesson-${slug}`)
  })
}

/** Fields whose names begin so, by what follows. */
function readFields(body: unknown, start: string): Record<string, string> {
  const fields = Object.entries(Form.parse(body ?? {})).filter(([name]) => name.startsWith(start))
  return Object.fromEntries(fields.map(([name, value]) => [name.slice(start.length), value]))
}

function plainView({ recording, stored, planned, lessons, titles, jobs }: PublishingView) {
  const done = jobs.find(({ state }) => state === 'done')
  return {
    recordingId: recording.id,
    title: recording.title,
    sheet: stored.sheet,
    planned: planned.map(({ own, known, near, ...one }) => ({
      ...one,
      doseWords: one.segment.prescription ? speakDose(one.segment.prescription) : '',
      lengthMs: keptRanges(one.segment).reduce((sum, { startMs, endMs }) => sum + endMs - startMs, 0),
      own: own && placeOf(own),
      known: known.map(placeOf),
      near: near.map(placeOf),
    })),
    lessons: lessons.map(({ shown, versions }) => ({
      ...{ slug: shown.slug, name: shown.name, state: shown.state, currentVersion: shown.currentVersion },
      hasPictures: shown.current?.lesson.pictures !== undefined,
      versions: versions.map(({ version, recordingId, publishedUtc, lesson }) => ({
        ...{ version, publishedUtc, name: lesson.name, title: titles.get(recordingId) ?? 'a class' },
      })),
    })),
    jobs,
    last: (done && Result.safeParse(done.result).data) ?? null,
  }
}

function placeOf({ id, slug, facts }: PublishingView['planned'][number]['near'][number]) {
  return { id, slug, name: facts.name }
}
