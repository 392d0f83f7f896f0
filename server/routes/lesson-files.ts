/** `GET /lessons/:slug/clip.mp4`, `poster.jpg`, `captions.en.vtt`, `chapters.vtt`: the files of the version shown. */
import type { Router } from 'express'
import { z } from 'zod'
import { LESSON_FILE_NAMES, LESSON_FILES, lessonFileKey } from '../../core/library/name-lesson-files.ts'
import { findLesson } from '../actions/show-lesson.ts'
import { sendMedia } from '../middleware/send-media.ts'
import type { Studio } from '../studio.ts'

const Params = z.object({ slug: z.string(), file: z.enum(LESSON_FILE_NAMES) })
const Query = z.object({ v: z.coerce.number().int().optional().catch(undefined) })

export function addLessonFiles(app: Router, studio: Studio): void {
  app.get('/lessons/:slug/:file', async (req, res, next) => {
    const params = Params.safeParse(req.params)
    if (!params.success) return next()
    const { slug, file } = params.data
    const { v } = Query.parse(req.query)
    const { shown, version } = await findLesson(studio, slug)
    const key = lessonFileKey(shown.id, version.version, file)
    await sendMedia(req, res, {
      path: studio.storage.path(key),
      // a key never gets another content, so the key is as good as a sum
      etagSha: `lesson-${shown.id}-${version.version}-${file.replaceAll('.', '-')}`,
      type: LESSON_FILES[file].type,
      lasting: v === version.version,
    })
  })
}
