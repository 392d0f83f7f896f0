/** `/recordings/:id/preview`, `/peaks/:zoom`, `/speech`, `/thumbs/:sheet`, `/wave`: what is made of a film, each as soon as it is there. */
import type { Router } from 'express'
import { z } from 'zod'
import { PEAK_ZOOMS, WAVE_ZOOM } from '../../core/media/plan-analysis.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { findClassFile } from '../actions/find-class-file.ts'
import { sendMedia } from '../middleware/send-media.ts'
import { growingWaveKey, peaksKey, previewKey, speechKey, thumbsKey } from '../storage/media-keys.ts'
import type { Studio } from '../studio.ts'

const Zoom = z.coerce.number().refine((zoom) => PEAK_ZOOMS.some((one) => one === zoom))
const Sheet = z.string().regex(/^\d{1,3}$/)

export function addRecordingPieces(app: Router, studio: Studio): void {
  /** @param name part of the tag; the piece is made once for a film and never changes */
  const send = (name: string, type: string, keyOf: (recordingId: string, mediaId: string, piece: string) => string) =>
    app.get(`/recordings/:id/${name}`, async (req, res) => {
      const { id, piece = '' } = req.params as { id: string; piece?: string }
      mustBeAllowed(studio.actor, 'studio.read', { type: 'recording', id })
      const { media } = await findClassFile(studio, id)
      const key = keyOf(id, media.id, piece)
      const stored = await studio.storage.head(key)
      if (!stored) throw new AppError('row-missing', 'This is not made yet. Try again in a moment.')
      const etagSha = `${media.id}-${name.split('/')[0]}-${piece}-${stored.bytes}-${stored.changedUtc}`
      await sendMedia(req, res, { path: studio.storage.path(key), etagSha, type })
    })
  send('peaks/:piece', 'application/octet-stream', (id, mediaId, zoom) => peaksKey(id, mediaId, Zoom.parse(zoom)))
  send('speech', 'application/json; charset=utf-8', speechKey)
  send('thumbs/:piece', 'image/jpeg', (id, mediaId, sheet) => thumbsKey(id, mediaId, Number(Sheet.parse(sheet))))
  app.get('/recordings/:id/wave', async (req, res) => {
    const { id } = req.params
    mustBeAllowed(studio.actor, 'studio.read', { type: 'recording', id })
    const { media } = await findClassFile(studio, id)
    const keys = [peaksKey(id, media.id, WAVE_ZOOM), growingWaveKey(id, media.id)]
    for (const key of keys) {
      const stored = await studio.storage.head(key)
      if (!stored) continue
      // while it grows, each length is a file of its own
      const etagSha = `${media.id}-wave-${stored.bytes}-${stored.changedUtc}`
      return sendMedia(req, res, { path: studio.storage.path(key), etagSha, type: 'application/octet-stream' })
    }
    res.setHeader('Cache-Control', 'no-store')
    res.status(204).end()
  })
  app.get('/recordings/:id/preview', async (req, res) => {
    const { id } = req.params
    mustBeAllowed(studio.actor, 'studio.read', { type: 'recording', id })
    const { media } = await findClassFile(studio, id)
    const whole = await studio.storage.head(previewKey(id, media.id, true))
    const key = previewKey(id, media.id, whole !== null)
    const stored = whole ?? (await studio.storage.head(key))
    if (!stored) throw new AppError('row-missing', 'The preview is not begun yet. Try again in a moment.')
    // while it grows, each length is a file of its own
    const etagSha = `${media.id}-preview-${stored.bytes}`
    await sendMedia(req, res, { path: studio.storage.path(key), etagSha, type: 'video/mp4' })
  })
}
