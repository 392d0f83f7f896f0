/** `/settings`: the second reader, changed and tried. Its key comes in and never goes out. */
import type { Response, Router } from 'express'
import { z } from 'zod'
import { AppError } from '../../shared/errors.ts'
import { buildSettingsPage } from '../../views/pages/settings.ts'
import type { ReaderResult } from '../../views/pages/settings.ts'
import { changeReader, showReader, tryReader } from '../actions/change-reader.ts'
import { readForm } from '../middleware/read-body.ts'
import { statusOf } from '../middleware/explain-error.ts'
import { render } from '../render.ts'
import type { Studio } from '../studio.ts'

const text = z.string().max(4100).default('')
const ReaderForm = z.object({
  on: z.string().optional(),
  url: text,
  model: text,
  key: text,
  forgetKey: z.string().optional(),
  then: z.enum(['save', 'try']).default('save'),
})
type ReaderForm = z.infer<typeof ReaderForm>

export function addSettings(app: Router, studio: Studio): void {
  app.get('/settings', async (req, res) => {
    const result = 'saved' in req.query ? ({ kind: 'saved' } as const) : null
    await send(res, null, result)
  })
  app.post('/settings/second-reader', readForm(), async (req, res) => {
    const form = ReaderForm.parse(req.body)
    try {
      if (!studio.settings.reader) await changeReader(studio, inputOf(form))
      if (form.then === 'save') return res.redirect(303, '/settings?saved#second-reader')
      const gone = new AbortController()
      res.on('close', () => gone.abort())
      const tried = await tryReader(studio, gone.signal)
      await send(res, null, { kind: 'answered', ...tried })
    } catch (error) {
      if (!(error instanceof AppError) || (error.code !== 'setting-wrong' && error.code !== 'second-reader'))
        throw error
      const isWrong = error.code === 'setting-wrong'
      res.status(isWrong ? statusOf(error.code, error.exitCode) : 200)
      const { message, details } = error
      await send(res, isWrong ? form : null, { kind: isWrong ? 'wrong' : 'no-use', message, details })
    }
  })

  async function send(res: Response, typed: ReaderForm | null, result: ReaderResult | null): Promise<void> {
    const reader = await showReader(studio)
    const shown = typed ? { ...reader, url: typed.url, model: typed.model, isOn: typed.on !== undefined } : reader
    render(res, 'settings', buildSettingsPage(shown, result))
  }
}

function inputOf({ on, url, model, key, forgetKey }: ReaderForm) {
  return { isOn: on !== undefined, url, model, key, forgetKey: forgetKey !== undefined }
}
