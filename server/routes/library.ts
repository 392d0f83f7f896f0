/** `GET /library`: the published lessons, to search and narrow down. */
import type { Router } from 'express'
import { z } from 'zod'
import { buildLibraryPage } from '../../views/pages/library.ts'
import { LibraryQuery, searchLibrary } from '../actions/search-library.ts'
import { render } from '../render.ts'
import type { Studio } from '../studio.ts'

const Asked = z.object({ ...LibraryQuery.omit({ text: true }).shape, q: LibraryQuery.shape.text })

export function addLibrary(app: Router, studio: Studio): void {
  app.get('/library', async (req, res) => {
    const { q, ...filters } = Asked.parse(req.query)
    const query = { text: q, ...filters }
    const { lessons, total, choices } = await searchLibrary(studio, query)
    const cards = lessons.map(({ facts, version }) => ({
      slug: facts.slug,
      version: version.version,
      lesson: version.lesson,
      position: facts.position,
    }))
    render(res, 'library', buildLibraryPage({ query, choices, total, lessons: cards }))
  })
}
