/**
 * Refuses requests that call the studio by a name that is not its own. A page of elsewhere can make its own name point to
 * 127.0.0.1 and would then count as the same origin; the Host header gives it away.
 */
import type { RequestHandler } from 'express'
import { AppError } from '../../shared/errors.ts'

const LOOPBACK = ['127.0.0.1', 'localhost', '[::1]']

/** @param allowed further names, lower case, with a port or for any port */
export function checkHost(allowed: readonly string[]): RequestHandler {
  return (req, _res, next) => {
    const host = req.headers.host?.toLowerCase() ?? ''
    if (isAllowed(host, req.socket.localAddress ?? '', allowed)) return next()
    next(
      new AppError(
        'request-host',
        `This studio does not answer to the name "${host}". Use its own address, or add the name to REPSLATE_ALLOWED_HOSTS.`,
      ),
    )
  }
}

/**
 * True for loopback names, the very address the connection came in on (an address cannot be made to point elsewhere,
 * a name can), and the names a person allowed.
 * @param localAddress as Node gives it: IPv6 without brackets, IPv4 perhaps as ::ffff:192.0.2.1
 */
export function isAllowed(host: string, localAddress: string, allowed: readonly string[]): boolean {
  const [, name] = /^(\[[0-9a-f:.]+\]|[^:[\]/@\s]+)(?::\d{1,5})?$/.exec(host) ?? []
  if (name === undefined) return false
  const own = localAddress.replace(/^::ffff:/, '')
  return (
    LOOPBACK.includes(name) ||
    name === (own.includes(':') ? `[${own}]` : own) ||
    allowed.includes(name) ||
    allowed.includes(host)
  )
}
