/** `GET /assets/name.<hash>.ext`: scripts, styles, fonts and static pictures. The name holds the content's sum, so it lasts. */
import type { Router } from 'express'
import { AppError } from '../../shared/errors.ts'
import { ASSET_PATH } from '../assets/build-assets.ts'
import type { Door } from '../door.ts'

export function addAssets(app: Router, door: Door): void {
  app.get(`${ASSET_PATH}/:name`, (req, res) => {
    const asset = door.assets.files.get(req.params.name)
    if (!asset) throw new AppError('page-missing', 'There is no such file. Load the page again.')
    res.setHeader('Cache-Control', 'public, max-age=31536000, immutable')
    res.setHeader('Content-Type', asset.type)
    res.send(Buffer.from(asset.bytes.buffer, asset.bytes.byteOffset, asset.bytes.byteLength))
  })
}
