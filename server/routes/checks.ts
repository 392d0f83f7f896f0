/** `GET /recordings/:id/checks`: what stands between a class and its lessons. */
import type { Router } from 'express'
import { mustBeAllowed } from '../../shared/actors.ts'
import { buildChecksPage } from '../../views/pages/checks.ts'
import { checkRecording } from '../actions/check-recording.ts'
import { render } from '../render.ts'
import type { Studio } from '../studio.ts'
import { CLASS_WORDS } from './class-words.ts'
import { workInput } from './write-class-parts.ts'

export function addChecks(app: Router, studio: Studio): void {
  app.get('/recordings/:id/checks', async (req, res) => {
    const { id } = req.params
    mustBeAllowed(studio.actor, 'studio.read', { type: 'recording', id })
    const { title } = await studio.store.recordings.read(id)
    const work = await checkRecording(studio, id)
    render(
      res,
      'checks',
      buildChecksPage({ recordingId: id, title, work: work && workInput(work), words: CLASS_WORDS }),
    )
  })
}
