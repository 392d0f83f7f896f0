/** `GET /session`: the token for programs that change things without loading a page. Other sites cannot read the answer. */
import type { Router } from 'express'
import type { Door } from '../door.ts'

export function addSession(app: Router, door: Door): void {
  app.get('/session', (req, res) => {
    res.setHeader('Cache-Control', 'no-store')
    res.json({ token: door.sessions.token(req, res) })
  })
}
