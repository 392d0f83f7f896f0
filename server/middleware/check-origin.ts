/** Refuses writes that another site's page sends. */
import type { Request, RequestHandler } from 'express'
import { AppError } from '../../shared/errors.ts'

/** RFC 9110 (2022), section 9.2.1: methods that only read. */
export function isSafe(method: string): boolean {
  return method === 'GET' || method === 'HEAD' || method === 'OPTIONS'
}

export function checkOrigin(): RequestHandler {
  return (req, _res, next) => {
    if (isSafe(req.method) || comesFromHere(req)) return next()
    next(
      new AppError(
        'request-origin',
        'This change was not sent from a page of the studio. Open the studio and do it there; a program sends the header Origin with the studio’s own address.',
      ),
    )
  }
}

/**
 * Fetch Metadata Request Headers (W3C): a browser says where a request comes from, and a page cannot change it. An older
 * browser sends Origin (RFC 6454, 2011, section 7), which must be the address that the request is for.
 */
function comesFromHere(req: Request): boolean {
  const site = req.headers['sec-fetch-site']
  if (site !== undefined) return site === 'same-origin' || site === 'none'
  const origin = req.headers.origin?.toLowerCase() ?? ''
  const [, host] = /^https?:\/\/([^/]+)$/.exec(origin) ?? []
  return host !== undefined && host === req.headers.host?.toLowerCase()
}
