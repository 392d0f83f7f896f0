/** Refuses writes without the token of the browser's session: in a header, or in the field `token` of a form. */
import type { RequestHandler } from 'express'
import { AppError } from '../../shared/errors.ts'
import { isSafe } from './check-origin.ts'
import type { Sessions } from './keep-session.ts'
import { readForm } from './read-body.ts'

export const TOKEN_HEADER = 'x-repslate-token'
const TOKEN_FIELD = 'token'

export function checkToken(sessions: Sessions): RequestHandler {
  const parseForm = readForm()
  return (req, res, next) => {
    if (isSafe(req.method)) return next()
    const check = (token: unknown): void => {
      if (typeof token === 'string' && sessions.fits(req, token)) return next()
      next(
        new AppError(
          'request-token',
          'This page is from an earlier session, so nothing was changed. Keep what you typed, load the page again and repeat the change.',
        ),
      )
    }
    const header = req.headers[TOKEN_HEADER]
    if (header !== undefined || !req.is('application/x-www-form-urlencoded')) return check(header)
    parseForm(req, res, (error?: unknown) => {
      if (error) return next(error)
      const body = (req.body ?? {}) as Record<string, unknown>
      const { [TOKEN_FIELD]: token, ...fields } = body
      req.body = fields
      check(token)
    })
  }
}
