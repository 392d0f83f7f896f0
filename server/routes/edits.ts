/**
 * `POST /recordings/:id/edits`: changes the log sheet by edits (JSON) or by a form of one of its pages; `undo` takes one back.
 * A script gets the version and the parts of the page anew; a browser without one is sent back to the page.
 */
import type { Request, Response, Router } from 'express'
import { z } from 'zod'
import { AppError } from '../../shared/errors.ts'
import { placeAddress } from '../../views/pages/class-input.ts'
import { editSheet, SentEdits, undoSheetEdit } from '../actions/edit-sheet.ts'
import { explainError } from '../middleware/explain-error.ts'
import { readForm, readJsonBody } from '../middleware/read-body.ts'
import type { Studio } from '../studio.ts'
import { readEditForm } from './read-edit-form.ts'
import { writeParts } from './write-class-parts.ts'
import type { Looking } from './write-class-parts.ts'

const Params = z.object({ id: z.string() })
const Page = z.object({
  page: z.enum(['class', 'checks']).default('class'),
  /** The exercise that is open on the page. */
  segment: z.string().max(200).default(''),
})
const SentForm = z.looseObject({
  baseVersion: z.coerce.number().int().nonnegative(),
  opId: z.string().max(200).default(''),
})
const Undo = z.object({ opId: z.string() })

export function addEdits(app: Router, studio: Studio): void {
  app.post('/recordings/:id/edits', readJsonBody(), readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    const looking = Page.parse(isForm(req) ? req.body : req.query)
    const opened = await orConflict(studio, req, res, id, looking, async () => {
      if (!isForm(req)) await editSheet(studio, { recordingId: id, ...SentEdits.parse(req.body) })
      else return saveForm(studio, id, req.body)
    })
    if (opened !== 'answered') await answer(studio, req, res, id, { ...looking, segment: opened ?? looking.segment })
  })
  app.post('/recordings/:id/undo', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await undoSheetEdit(studio, { recordingId: id, ...Undo.parse(req.body) })
    await answer(studio, req, res, id, Page.parse(req.body))
  })
}

/** @returns the exercise that the form made, which is opened then */
async function saveForm(studio: Studio, recordingId: string, body: unknown): Promise<string | undefined> {
  const { baseVersion, opId, ...fields } = SentForm.parse(body)
  const { page: _page, segment: _segment, ...rest } = fields
  const stored = await studio.store.sheets.readOf(recordingId)
  if (!stored)
    throw new AppError('row-missing', 'Nothing is drafted for this class yet. Add its words or a plan first.')
  const first = opId === '' ? studio.ids() : opId
  const ops = readEditForm(rest, { sheet: stored.sheet, opId: first })
  const edits = ops.map((op, index) => ({ opId: index === 0 ? first : `${first}-${index}`, op }))
  if (edits.length > 0) await editSheet(studio, { recordingId, baseVersion, edits })
  const [op] = ops
  return op?.op === 'add-segment' ? op.segment.id : undefined
}

/** A script that was overtaken gets the newest with the refusal; nothing of what it sent was written. */
async function orConflict<Result>(
  studio: Studio,
  req: Request,
  res: Response,
  recordingId: string,
  looking: Looking,
  work: () => Promise<Result>,
): Promise<Result | 'answered'> {
  try {
    return await work()
  } catch (error) {
    if (!(error instanceof AppError) || error.code !== 'sheet-conflict' || wantsPage(req)) throw error
    const { status, code, title, message, details } = explainError(error)
    const newest = await writeParts(studio, res, recordingId, looking)
    const kept = 'Nothing of this was written. What you typed is still on your page.'
    res.status(status).setHeader('Content-Type', 'application/problem+json')
    res.send(
      Buffer.from(
        JSON.stringify({ type: 'about:blank', title, status, detail: message, code, details, kept, ...newest }),
      ),
    )
    return 'answered'
  }
}

async function answer(
  studio: Studio,
  req: Request,
  res: Response,
  recordingId: string,
  looking: Looking,
): Promise<void> {
  if (!wantsPage(req)) return void res.json(await writeParts(studio, res, recordingId, looking))
  const { page, segment } = looking
  const place = placeAddress(recordingId, segment === '' ? null : segment, null)
  res.redirect(303, page === 'checks' ? `${placeAddress(recordingId, null, null)}/checks` : place)
}

function isForm(req: Request): boolean {
  return Boolean(req.is('application/x-www-form-urlencoded'))
}

function wantsPage(req: Request): boolean {
  return /\btext\/html\b/.test(req.headers.accept ?? '')
}
