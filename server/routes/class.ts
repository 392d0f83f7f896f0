/** `GET /recordings/:id`: the class page, its parts alone, its captions, and a dose read while it is typed. */
import type { Router } from 'express'
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { classAddress } from '../../views/pages/class-input.ts'
import { buildClassPage } from '../../views/pages/class.ts'
import { buildDosePart } from '../../views/pages/class-segment.ts'
import { checkRecording } from '../actions/check-recording.ts'
import { saveSpoken, SpokenLine } from '../actions/save-spoken.ts'
import { showClass, writeClassCaptions } from '../actions/show-class.ts'
import { readForm } from '../middleware/read-body.ts'
import { render } from '../render.ts'
import type { Studio } from '../studio.ts'
import { CLASS_WORDS } from './class-words.ts'
import { readTypedDose } from './read-edit-form.ts'
import { classInput, workInput, writeParts } from './write-class-parts.ts'

const segment = z.string().max(200).default('')
const Query = z.object({ segment })
const PartsQuery = z.object({
  segment,
  page: z.enum(['class', 'checks']).default('class'),
  /** The version that the page shows. */
  have: z.coerce.number().int().default(-1),
})
const Params = z.object({ id: z.string() })
/** Lines as JSON in a field, so that a plain form can carry them. */
const Spoken = z.object({
  lines: z.string().transform((text, context) => {
    try {
      return z.array(SpokenLine).parse(JSON.parse(text))
    } catch {
      context.addIssue('These are no lines with times and words.')
      return z.NEVER
    }
  }),
})
const DoseQuery = z.object({ segment, text: z.string().max(2000) })

export function addClass(app: Router, studio: Studio): void {
  app.get('/recordings/:id', async (req, res) => {
    const { id } = req.params
    const looking = { page: 'class' as const, ...Query.parse(req.query) }
    const shown = await showClass(studio, id)
    const work = await checkRecording(studio, id)
    const page = buildClassPage({ ...classInput(shown, looking), work: work && workInput(work) })
    render(res, 'class', page)
  })
  app.get('/recordings/:id/parts', async (req, res) => {
    const asked = PartsQuery.parse(req.query)
    const { id } = req.params
    mustBeAllowed(studio.actor, 'sheet.read', { type: 'sheet', id })
    const newest = await studio.store.sheets.readOf(id)
    const written = newest?.version === asked.have ? null : await writeParts(studio, res, id, asked)
    if (written) res.json(written)
    else res.status(204).end()
  })
  app.get('/recordings/:id/captions.vtt', async (req, res) => {
    const text = await writeClassCaptions(studio, req.params.id)
    res.setHeader('Cache-Control', 'no-cache')
    res.type('text/vtt').send(text)
  })
  app.post('/recordings/:id/spoken', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await saveSpoken(studio, { recordingId: id, lines: Spoken.parse(req.body).lines })
    res.redirect(303, classAddress(id))
  })
  app.get('/recordings/:id/read-dose', async (req, res) => {
    const query = DoseQuery.parse(req.query)
    mustBeAllowed(studio.actor, 'sheet.read', { type: 'sheet', id: req.params.id })
    const stored = await studio.store.sheets.readOf(req.params.id)
    const known = stored?.sheet.segments.find(({ id }) => id === query.segment) ?? null
    const dose = query.text.trim() === '' ? null : readTypedDose(query.text, known)
    const isUnread = query.text.trim() !== '' && dose === null
    render(res, 'parts/dose-read', { dose: buildDosePart(dose, CLASS_WORDS), isUnread })
  })
}
