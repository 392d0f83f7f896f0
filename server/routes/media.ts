/** `GET /recordings/:id/media/:mediaId`: the files of a recording as they came, in whole or in ranges. */
import type { Router } from 'express'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { typeOfFile } from '../assets/type-of-file.ts'
import { sendMedia } from '../middleware/send-media.ts'
import type { Studio } from '../studio.ts'

export function addMedia(app: Router, studio: Studio): void {
  app.get('/recordings/:id/media/:mediaId', async (req, res) => {
    const { id, mediaId } = req.params
    mustBeAllowed(studio.actor, 'studio.read', { type: 'media', id: mediaId })
    const file = await studio.store.media.read(mediaId)
    if (file.recordingId !== id) throw new AppError('row-missing', 'This recording has no such file.')
    if (file.storageKey === null || file.sha256 === null) {
      throw new AppError('row-missing', 'This file is still arriving. Try again when its upload is done.')
    }
    await sendMedia(req, res, {
      path: studio.storage.path(file.storageKey),
      etagSha: `sha256-${file.sha256}`,
      type: typeOfFilm(file.fileName),
      lasting: true,
    })
  })
}

/** The name is a person's: one that calls itself a page or a script must never be taken for one. */
function typeOfFilm(fileName: string): string {
  const type = typeOfFile(fileName)
  return /^(video|audio)\//.test(type) ? type : 'application/octet-stream'
}
