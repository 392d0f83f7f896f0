/** `/recordings/:id/export` sends the lessons of a class as a zip; `/exports` takes such a zip in. */
import type { Request, Router } from 'express'
import { z } from 'zod'
import { AppError } from '../../shared/errors.ts'
import { sendExport } from '../actions/export-recording.ts'
import { takeExport } from '../actions/take-export.ts'
import { readForm } from '../middleware/read-body.ts'
import type { Studio } from '../studio.ts'

/** Takes as long as its bytes need, see app.ts. */
export const EXPORTS = '/exports'
const ZIP = 'application/zip'
const Params = z.object({ id: z.string() })

export function addExports(app: Router, studio: Studio): void {
  app.post('/recordings/:id/export', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    const { title, send } = await sendExport(studio, { recordingId: id })
    res.setHeader('Content-Type', ZIP)
    res.setHeader('Cache-Control', 'no-store')
    res.attachment(`${fileName(title)}.zip`)
    try {
      await send(res, (bytes) => res.setHeader('Content-Length', String(bytes)))
    } catch (error) {
      if (!res.headersSent) throw error
      // the browser sees that it is not whole
      if (!res.destroyed) studio.onFault(error)
      res.destroy()
    }
  })
  app.post(EXPORTS, async (req, res) => {
    const bytes = readLength(req)
    // looking into it takes its time, and nothing is sent meanwhile
    const taken = await takeExport(studio, req, bytes, () => req.socket.setTimeout(0))
    res.json(taken)
  })
}

/** @throws AppError request-wrong */
function readLength(req: Request): number {
  const bytes = Number(req.headers['content-length'] ?? NaN)
  if (req.is(ZIP) === ZIP && Number.isSafeInteger(bytes) && bytes > 0) return bytes
  throw new AppError('request-wrong', 'Send a zip that an export made, with its length.')
}

/** Letters, digits and dashes of the title. */
function fileName(title: string): string {
  const words = title
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
  return words.slice(0, 80) || 'lessons'
}
