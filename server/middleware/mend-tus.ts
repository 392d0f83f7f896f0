/**
 * What the upload package does not do as tus 1.0.0 (2016-03-25) asks: the answer to an unknown version, the method override,
 * and the answer to a PATCH of another type. It comes before the package.
 */
import type { RequestHandler } from 'express'

export const TUS_VERSION = '1.0.0'
const PATCH_TYPE = 'application/offset+octet-stream'

export function mendTus(): RequestHandler {
  return (req, res, next) => {
    // "X-HTTP-Method-Override ... MUST be interpreted as the request's method by the Server, if the header is presented"
    const override = req.headers['x-http-method-override']
    if (typeof override === 'string' && req.method === 'POST') {
      delete req.headers['x-http-method-override']
      if (/^(PATCH|DELETE)$/.test(override)) req.method = override
    }
    res.setHeader('Tus-Resumable', TUS_VERSION)
    // "If the version specified by the Client is not supported by the Server, it MUST respond with the 412 Precondition
    // Failed status and MUST include the Tus-Version header"
    if (req.method !== 'OPTIONS' && req.headers['tus-resumable'] !== TUS_VERSION) {
      res.setHeader('Tus-Version', TUS_VERSION)
      res.status(412).type('text/plain').send('This studio speaks version 1.0.0 of the upload protocol.\n')
      return
    }
    // "PATCH requests MUST use Content-Type: application/offset+octet-stream, otherwise the server SHOULD return a 415"
    if (req.method === 'PATCH' && req.headers['content-type'] !== PATCH_TYPE) {
      res.status(415).type('text/plain').send(`Send the bytes as ${PATCH_TYPE}.\n`)
      return
    }
    next()
  }
}
