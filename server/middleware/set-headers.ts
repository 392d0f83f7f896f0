/** The headers that every answer carries: what a page may load, who may frame it, what it tells others. */
import type { RequestHandler } from 'express'
import helmet from 'helmet'

/**
 * Content Security Policy Level 3 (W3C): nothing inline, nothing from elsewhere, no eval. OWASP ASVS 5.0 (2025), 3.4,
 * asks for object-src 'none' and base-uri 'none' by name. blob: in media-src is left out: media comes by address.
 */
export const CONTENT_SECURITY_POLICY = {
  defaultSrc: ["'none'"],
  scriptSrc: ["'self'"],
  styleSrc: ["'self'"],
  imgSrc: ["'self'", 'data:'],
  mediaSrc: ["'self'"],
  fontSrc: ["'self'"],
  connectSrc: ["'self'"],
  formAction: ["'self'"],
  baseUri: ["'none'"],
  frameAncestors: ["'none'"],
  objectSrc: ["'none'"],
} as const

export function setHeaders(ids: () => string): RequestHandler[] {
  return [
    (_req, res, next) => {
      res.setHeader('X-Request-Id', ids())
      // pages hold what only the owner sees; assets and media say otherwise for themselves
      res.setHeader('Cache-Control', 'private, no-cache')
      // one address may give a page to a browser and a part of it to htmx
      res.vary('HX-Request')
      next()
    },
    helmet({
      contentSecurityPolicy: { useDefaults: false, directives: CONTENT_SECURITY_POLICY },
      referrerPolicy: { policy: 'same-origin' },
      crossOriginResourcePolicy: { policy: 'same-origin' },
      crossOriginOpenerPolicy: { policy: 'same-origin' },
      // over plain http on loopback it has no meaning; a proxy in front that speaks TLS adds it
      strictTransportSecurity: false,
      xFrameOptions: { action: 'deny' },
    }),
  ]
}
