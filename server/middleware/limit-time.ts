/** Ends requests whose body comes too slowly, so that a few of them cannot hold the studio. Uploads have their own pace. */
import type { RequestHandler } from 'express'
import { AppError } from '../../shared/errors.ts'
import { isSafe } from './check-origin.ts'

export interface TimeLimits {
  /** ms for a whole body, uploads apart. */
  bodyMs: number
  /** Addresses that take as long as they need while bytes arrive; the socket's own idle limit guards them. */
  unlimited: readonly string[]
}

export function limitTime({ bodyMs, unlimited }: TimeLimits): RequestHandler {
  return (req, res, next) => {
    if (isSafe(req.method) || unlimited.some((start) => req.path === start || req.path.startsWith(`${start}/`))) {
      return next()
    }
    const timer = setTimeout(() => {
      // a body that has arrived, or an answer under way, is no longer slow: only the work on it is
      if (req.complete || res.headersSent) return
      res.setHeader('Connection', 'close')
      next(new AppError('request-slow', 'The request took too long to arrive. Try again.'))
    }, bodyMs)
    req.once('close', () => clearTimeout(timer))
    next()
  }
}
