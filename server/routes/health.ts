/** `GET /health`: whether the studio can do its work, for the one who runs it. */
import type { Router } from 'express'
import { z } from 'zod'
import type { Studio } from '../studio.ts'

export function addHealth(app: Router, studio: Studio): void {
  app.get('/health', async (_req, res) => {
    // any read shows that the store answers
    await studio.store.settings.read('health', z.unknown())
    res.setHeader('Cache-Control', 'no-store')
    res.json({ state: 'well', store: studio.store.engine, ffmpeg: studio.ffmpeg?.version ?? null })
  })
}
