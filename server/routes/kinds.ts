/** `/kinds`: what each kind of class always has; one can be added, changed, taken away. */
import type { Router } from 'express'
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { buildKindPage, buildKindsPage } from '../../views/pages/kinds.ts'
import type { KindEntry } from '../../views/pages/kinds.ts'
import { addKind, changeKind, removeKind } from '../actions/change-kinds.ts'
import { readForm } from '../middleware/read-body.ts'
import { render } from '../render.ts'
import type { Studio } from '../studio.ts'
import { readWords } from './read-words.ts'

const Params = z.object({ id: z.string() })
const VersionForm = z.object({ rowVersion: z.coerce.number().int().positive() })

export function addKinds(app: Router, studio: Studio): void {
  app.get('/kinds', async (_req, res) => render(res, 'kinds', buildKindsPage(await listKinds(studio))))
  app.get('/kinds/new', (_req, res) => {
    mustBeAllowed(studio.actor, 'studio.read', { type: 'studio', id: 'studio' })
    render(res, 'kind', buildKindPage(null))
  })
  app.get('/kinds/:id', async (req, res) => {
    mustBeAllowed(studio.actor, 'studio.read', { type: 'kind', id: req.params.id })
    const kind = await studio.store.kinds.read(req.params.id)
    render(res, 'kind', buildKindPage({ ...kind, classes: 0 }))
  })
  app.post('/kinds', readForm(), async (req, res) => {
    await addKind(studio, readKind(req.body))
    res.redirect(303, '/kinds')
  })
  app.post('/kinds/:id', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await changeKind(studio, { id, ...VersionForm.parse(req.body) }, readKind(req.body))
    res.redirect(303, '/kinds')
  })
  app.post('/kinds/:id/remove', readForm(), async (req, res) => {
    await removeKind(studio, Params.parse(req.params).id)
    res.redirect(303, '/kinds')
  })
}

async function listKinds({ store, actor }: Studio): Promise<KindEntry[]> {
  mustBeAllowed(actor, 'studio.read', { type: 'studio', id: 'studio' })
  const recordings = await store.recordings.list()
  const kinds = await store.kinds.list()
  return kinds.map((kind) => ({
    ...kind,
    classes: recordings.filter(({ kindId }) => kindId === kind.id).length,
  }))
}

/** The audience of a kind may be left open; then each class of it is asked. */
function readKind(body: unknown) {
  const { title, audience, equipment, music, people } = readWords(body).words
  return { title, audience: audience ?? [], equipment, music, people }
}
