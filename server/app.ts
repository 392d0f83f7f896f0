/** The web application of a studio: guards first, then the routes, then the answer to errors. It does not listen by itself. */
import express from 'express'
import type { Express } from 'express'
import type { Door } from './door.ts'
import { answerErrors, answerMissing } from './middleware/answer-errors.ts'
import { checkHost } from './middleware/check-host.ts'
import { checkOrigin } from './middleware/check-origin.ts'
import { checkToken } from './middleware/check-token.ts'
import { limitTime } from './middleware/limit-time.ts'
import { setHeaders } from './middleware/set-headers.ts'
import { HTMX_CONFIG } from './render.ts'
import type { PageTools } from './render.ts'
import { EXPORTS } from './routes/exports.ts'
import { ROUTES } from './routes/routes.ts'
import type { AddRoutes } from './routes/routes.ts'

const BODY_MS = 30_000
/** Recordings of many gigabytes come here. */
const UPLOADS = '/uploads'

/** @param routes those of the studio, unless said */
export function buildApp(door: Door, routes: readonly AddRoutes[] = ROUTES): Express {
  const { sessions, assets, views, settings, changes } = door
  const app = express()
  app.disable('x-powered-by')
  // in any other environment express itself would show stacks where our own answer to an error fails
  app.set('env', 'production')
  app.set('query parser', 'simple')
  const tools: PageTools = {
    views,
    frame: (res) => ({
      token: sessions.token(res.req, res),
      assets,
      htmxConfig: HTMX_CONFIG,
      seen: Number(res.locals['seen']),
    }),
  }
  app.locals['pageTools'] = tools
  app.use((_req, res, next) => {
    // before anything is read: what changes from here on is told once the page listens
    res.locals['seen'] = changes.newest()
    next()
  })
  app.use(setHeaders(door.ids))
  app.use(checkHost(settings.allowedHosts))
  app.use(checkOrigin())
  app.use(limitTime({ bodyMs: BODY_MS, unlimited: [UPLOADS, EXPORTS] }))
  app.use(checkToken(sessions))
  app.use(sessions.bounce)
  for (const add of routes) add(app, door)
  app.use(answerMissing())
  app.use(answerErrors(door.onFault))
  return app
}
