// What a person, a part of a page and a program are told when something goes wrong; and the headers of every answer.
import assert from 'node:assert/strict'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { explainError, statusOf } from '../../../server/middleware/explain-error.ts'
import type { AddRoutes } from '../../../server/routes/routes.ts'
import { AppError, ERRORS } from '../../../shared/errors.ts'
import type { ErrorCode } from '../../../shared/errors.ts'
import { openTestDoor, startTestDoor } from '../../helpers/http-door.ts'

const SECRET = 'a secret of the inside'

const failing: AddRoutes = (app) => {
  app.get('/fault', () => {
    throw new Error(SECRET)
  })
  app.get('/late-fault', async () => {
    await Promise.resolve()
    throw new TypeError(SECRET)
  })
  app.get('/not-an-error', () => {
    // eslint-disable-next-line @typescript-eslint/only-throw-error -- a library may throw anything
    throw SECRET
  })
  app.get('/refused', () => {
    throw new AppError('sheet-spans', 'The span <b> ends "before" it begins.', { details: ['Segment 3 & 4'] })
  })
  app.get('/wrong', (req) => z.object({ page: z.coerce.number() }).parse(req.query))
  app.get('/half', (_req, res) => {
    res.type('text').write('half')
    throw new Error(SECRET)
  })
  app.get('/file-header', (_req, res) => {
    res.set({ 'Content-Type': 'video/mp4', 'Content-Range': 'bytes 0-1/2', ETag: '"x"', 'Cache-Control': 'immutable' })
    throw new AppError('row-missing', 'There is no such lesson.')
  })
}

let opened: Awaited<ReturnType<typeof startTestDoor>>
beforeAll(async () => {
  opened = await startTestDoor({ routes: [failing] })
})
afterAll(() => opened.close())
beforeEach(() => void opened.faults.splice(0))

const HTML = { accept: 'text/html,application/xhtml+xml,*/*;q=0.8' }
const JSON_ONLY = { accept: 'application/json' }

describe('a fault of the program', () => {
  it.each(['/fault', '/late-fault', '/not-an-error'])(
    '%s tells nothing of the inside, and is noted',
    async (address) => {
      for (const headers of [HTML, JSON_ONLY, { 'hx-request': 'true' }]) {
        const answer = await opened.ask(address, { headers: headers })
        expect(answer.status).toBe(500)
        expect(answer.text).not.toContain(SECRET)
        expect(answer.text).not.toMatch(/\bat .*\.[jt]s/)
      }
      expect(opened.faults).toHaveLength(3)
      expect(String(opened.faults[0])).toContain(SECRET)
    },
  )

  it('in the middle of an answer cuts it off, so that it does not look whole', async () => {
    await expect(opened.ask('/half')).rejects.toThrow(/aborted|hang up/)
  })
})

describe('a program is told', () => {
  it('in the form of RFC 9457 (2023)', async () => {
    const answer = await opened.ask('/refused', { headers: JSON_ONLY })
    expect(answer.status).toBe(422)
    // section 3: this media type, without parameters
    expect(answer.headers['content-type']).toBe('application/problem+json')
    // section 4.2.1: with about:blank the title is the words of the status
    expect(JSON.parse(answer.text)).toEqual({
      type: 'about:blank',
      title: 'Unprocessable Entity',
      status: 422,
      detail: 'The span <b> ends "before" it begins.',
      code: 'sheet-spans',
      details: ['Segment 3 & 4'],
      requestId: answer.headers['x-request-id'],
    })
    expect(opened.faults).toEqual([])
  })

  it('which field of its request is wrong', async () => {
    const answer = await opened.ask('/wrong?page=two')
    expect(answer.status).toBe(400)
    const { code, details } = JSON.parse(answer.text) as { code: string; details: string[] }
    expect(code).toBe('request-wrong')
    expect(details).toEqual([expect.stringMatching(/^page: /)])
  })
})

describe('a person is told', () => {
  it('by a page whose text is escaped', async () => {
    const answer = await opened.ask('/refused', { headers: HTML })
    expect(answer.headers['content-type']).toBe('text/html; charset=utf-8')
    expect(answer.text).toContain('The span &lt;b&gt; ends &quot;before&quot; it begins.')
    expect(answer.text).toContain('Segment 3 &amp; 4')
    expect(answer.text).toContain(String(answer.headers['x-request-id']))
  })

  it('also when the page that should tell it is broken', async () => {
    const broken = { has: () => true, write: () => assert.fail('a broken template') }
    const { ask, faults } = await openTestDoor({ views: broken })
    const answer = await ask('/no/such/page', { headers: HTML })
    expect(answer.status).toBe(404)
    expect(answer.text).toContain('There is nothing at this address.')
    expect(faults.map(String)).toEqual([expect.stringContaining('a broken template')])
  })

  it('that a page is missing', async () => {
    const answer = await opened.ask('/no/such/page', { headers: HTML })
    expect(answer.status).toBe(404)
    expect(answer.text).toContain('There is nothing at this address.')
    expect(answer.headers['cache-control']).toBe('no-store')
  })

  it('beside the part of a page that failed', async () => {
    const answer = await opened.ask('/refused', { headers: { ...HTML, 'hx-request': 'true' } })
    expect(answer.headers).toMatchObject({ 'hx-retarget': '#messages', 'hx-reswap': 'innerHTML' })
    expect(answer.text).not.toContain('<html')
  })
})

it('an error does not carry the headers of what it replaces', async () => {
  const { headers } = await opened.ask('/file-header')
  expect(headers['content-range']).toBeUndefined()
  expect(headers.etag).not.toBe('"x"')
  expect(headers['content-type']).toBe('application/problem+json')
  expect(headers['cache-control']).toBe('no-store')
})

describe('a status', () => {
  const codes = Object.entries(ERRORS) as [ErrorCode, (typeof ERRORS)[ErrorCode]][]
  it.each(codes)('of %s says whose fault it is', (code, { exit }) => {
    const status = statusOf(code, exit)
    const ours = exit === 3 && !['job-lost'].includes(code)
    expect(status).toBeGreaterThanOrEqual(ours ? 500 : 400)
    expect(status).toBeLessThan(ours ? 600 : 500)
  })

  it('of a foreign error that has none is 500', () => {
    expect(explainError({ status: 404 }).status).toBe(500)
    expect(explainError(Object.assign(new Error('x'), { status: 404 })).status).toBe(404)
    expect(explainError(Object.assign(new Error('x'), { status: 418 })).code).toBe('internal')
  })
})

describe('every answer', () => {
  it.each(['/health', '/no/such/page', '/fault'])('%s carries the same guards', async (address) => {
    const { headers } = await opened.ask(address, { headers: HTML })
    // W3C Content Security Policy Level 3; OWASP ASVS 5.0 (2025), 3.4, asks for object-src and base-uri by name
    expect(headers['content-security-policy']).toBe(
      "default-src 'none';script-src 'self';style-src 'self';img-src 'self' data:;media-src 'self';font-src 'self';" +
        "connect-src 'self';form-action 'self';base-uri 'none';frame-ancestors 'none';object-src 'none'",
    )
    expect(headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
      'x-frame-options': 'DENY',
      'x-request-id': expect.stringMatching(/^[0-9a-z]{24}$/) as string,
    })
    expect(headers['x-powered-by']).toBeUndefined()
    expect(headers['access-control-allow-origin']).toBeUndefined()
  })

  it('to a preflight lets no other site in', async () => {
    const answer = await opened.ask('/health', {
      method: 'OPTIONS',
      headers: { origin: 'http://evil.example', 'access-control-request-method': 'POST' },
    })
    expect(Object.keys(answer.headers).filter((name) => name.startsWith('access-control-'))).toEqual([])
  })
})
