/** `GET /lessons/:slug`: one lesson for a member. */
import type { Router } from 'express'
import { can } from '../../shared/actors.ts'
import { buildLessonPage } from '../../views/pages/lesson.ts'
import { showLesson } from '../actions/show-lesson.ts'
import { render } from '../render.ts'
import type { Studio } from '../studio.ts'

export function addLesson(app: Router, studio: Studio): void {
  app.get('/lessons/:slug', async (req, res) => {
    const { slug } = req.params
    const { version, facts, ...view } = await showLesson(studio, slug)
    const page = buildLessonPage({
      ...view,
      lesson: version.lesson,
      slug,
      version: version.version,
      recordingId: version.recordingId,
      otherNames: facts.otherNames,
      position: facts.position,
      level: facts.level,
      audience: facts.audience,
      canOpenClass: can(studio.actor, 'sheet.read', { type: 'sheet', id: version.recordingId }),
    })
    render(res, 'lesson', page)
  })
}
