/**
 * The browser's session and its token. The cookie holds chance only; the token is computed from it with the studio's
 * secret, so that nothing has to be stored and a restart breaks no open page.
 */
import { createHash, createHmac, randomBytes, timingSafeEqual } from 'node:crypto'
import { readFile, rename, writeFile } from 'node:fs/promises'
import path from 'node:path'
import type { Request, RequestHandler, Response } from 'express'

export interface Sessions {
  /** The token of the request's session; the first call of a new browser begins one. Call it before the answer is sent. */
  token: (req: Request, res: Response) => string
  /** True when the token belongs to the request's session. */
  fits: (req: Request, token: string) => boolean
  /** Tells clients apart: the session where there is one, else the address. */
  clientOf: (req: Request) => string
  /**
   * Comes before pages. A browser that arrives from a link elsewhere does not send a strict cookie along; a new session
   * would then take the place of the one that its other tabs use. So it is asked to come once more, now from here.
   */
  bounce: RequestHandler
}

/** 256 bits of chance; OWASP ASVS 5.0 (2025), 7.2.3, asks for 128. In base64url. */
const SESSION_BYTES = 32
const SESSION = /^[A-Za-z0-9_-]{43}$/

export function keepSessions(secret: Buffer): Sessions {
  // browsers keep one cookie jar for all ports of a host, so two studios need two names
  const cookie = `repslate-${createHash('sha256').update(secret).digest('hex').slice(0, 8)}`
  const begun = new WeakMap<Request, string>()
  const sessionOf = (req: Request): string | null => begun.get(req) ?? readCookie(req, cookie)
  const begin = (req: Request, res: Response): string => {
    const session = randomBytes(SESSION_BYTES).toString('base64url')
    begun.set(req, session)
    res.append('Set-Cookie', `${cookie}=${session}; Path=/; HttpOnly; SameSite=Strict${req.secure ? '; Secure' : ''}`)
    return session
  }
  const sign = (session: string): Buffer => createHmac('sha256', secret).update(`token ${session}`).digest()
  return {
    token: (req, res) => sign(sessionOf(req) ?? begin(req, res)).toString('base64url'),
    fits: (req, token) => {
      const session = readCookie(req, cookie)
      const given = Buffer.from(token, 'base64url')
      const right = session === null ? null : sign(session)
      return right !== null && given.length === right.length && timingSafeEqual(given, right)
    },
    clientOf: (req) => readCookie(req, cookie) ?? req.socket.remoteAddress ?? '',
    bounce: (req, res, next) => {
      const arrives = req.headers['sec-fetch-site'] === 'cross-site' && req.headers['sec-fetch-mode'] === 'navigate'
      if (req.method !== 'GET' || !arrives || sessionOf(req) !== null) return next()
      res
        .type('html')
        .send('<!doctype html><html lang="en"><meta http-equiv="refresh" content="0"><title>Repslate</title></html>')
    },
  }
}

/** The studio's secret, made at the first start and kept for its owner only in the data folder. */
export async function readSecret(dataFolder: string): Promise<Buffer> {
  const file = path.join(dataFolder, 'secret')
  const fresh = randomBytes(SESSION_BYTES)
  try {
    await writeFile(file, fresh, { flag: 'wx', mode: 0o600 })
    return fresh
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error
  }
  const kept = await readFile(file)
  if (kept.length === SESSION_BYTES) return kept
  // cut short, as by a full disk: another takes its place whole or not at all
  await writeFile(`${file}.part`, fresh, { mode: 0o600 })
  await rename(`${file}.part`, file)
  return fresh
}

function readCookie(req: Request, name: string): string | null {
  const pairs = (req.headers.cookie ?? '').split(';').map((pair) => pair.trim())
  const value = pairs.find((pair) => pair.startsWith(`${name}=`))?.slice(name.length + 1)
  return value !== undefined && SESSION.test(value) ? value : null
}
