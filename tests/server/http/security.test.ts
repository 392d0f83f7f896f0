// Requests that the studio must refuse, and their near misses that it must not.
import express from 'express'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { ROUTES } from '../../../server/routes/routes.ts'
import type { AddRoutes } from '../../../server/routes/routes.ts'
import { isAllowed } from '../../../server/middleware/check-host.ts'
import { readForm, readJsonBody } from '../../../server/middleware/read-body.ts'
import { openTestDoor, startTestDoor } from '../../helpers/http-door.ts'
import type { Asked } from '../../helpers/http-door.ts'

/** What the write routes of a test were told goes to `seen`. */
const changes: AddRoutes = (app) => {
  app.all('/change', (req, res) => {
    seen.push(req.method)
    res.json({ done: true })
  })
  app.post('/form', readForm(), (req, res) => {
    seen.push(req.body)
    res.json({ done: true })
  })
  app.post('/json', readJsonBody(1000), (req, res) => {
    seen.push(req.body)
    res.json({ done: true })
  })
}

const seen: unknown[] = []
let opened: Awaited<ReturnType<typeof startTestDoor>>
beforeAll(async () => {
  opened = await startTestDoor({ routes: [changes] })
})
afterAll(() => opened.close())
beforeEach(() => void seen.splice(0))

const FORM = { 'content-type': 'application/x-www-form-urlencoded' }

describe('a write', () => {
  type Signed = Record<string, string>
  const without = (signed: Signed, name: string): Signed =>
    Object.fromEntries(Object.entries(signed).filter(([key]) => key !== name))
  const cases: [string, number, string | null, (signed: Signed, url: string) => Asked][] = [
    ['without anything', 403, 'request-origin', () => ({ method: 'POST' })],
    [
      'from another site',
      403,
      'request-origin',
      (signed) => ({ method: 'POST', headers: { ...signed, 'sec-fetch-site': 'cross-site' } }),
    ],
    [
      'from the same site, another port',
      403,
      'request-origin',
      (signed) => ({ method: 'POST', headers: { ...signed, 'sec-fetch-site': 'same-site' } }),
    ],
    [
      'with the origin of another site',
      403,
      'request-origin',
      (signed) => ({ method: 'POST', headers: { ...signed, origin: 'http://evil.example' } }),
    ],
    [
      'with the origin null of a sandbox',
      403,
      'request-origin',
      (signed) => ({ method: 'POST', headers: { ...signed, origin: 'null' } }),
    ],
    [
      'with an origin that only begins like ours',
      403,
      'request-origin',
      (signed, url) => ({ method: 'POST', headers: { ...signed, origin: `${url}.evil.example` } }),
    ],
    [
      'with an origin and no token',
      403,
      'request-token',
      (_signed, url) => ({ method: 'POST', headers: { origin: url } }),
    ],
    [
      'with a cookie and no token',
      403,
      'request-token',
      (signed) => ({ method: 'POST', headers: without(signed, 'x-repslate-token') }),
    ],
    [
      'with a token and no cookie',
      403,
      'request-token',
      (signed) => ({ method: 'POST', headers: without(signed, 'cookie') }),
    ],
    [
      'with an empty token',
      403,
      'request-token',
      (signed) => ({ method: 'POST', headers: { ...signed, 'x-repslate-token': '' } }),
    ],
    [
      'with another token of the right length',
      403,
      'request-token',
      (signed) => ({ method: 'POST', headers: { ...signed, 'x-repslate-token': 'A'.repeat(43) } }),
    ],
    [
      'by DELETE without a token',
      403,
      'request-token',
      (_signed, url) => ({ method: 'DELETE', headers: { origin: url } }),
    ],
    [
      'by PATCH from another site',
      403,
      'request-origin',
      (signed) => ({ method: 'PATCH', headers: { ...signed, 'sec-fetch-site': 'cross-site' } }),
    ],
    [
      'by a method override inside a POST',
      403,
      'request-token',
      (_signed, url) => ({ method: 'POST', headers: { origin: url, 'x-http-method-override': 'GET' } }),
    ],
    [
      'under another host name',
      421,
      'request-host',
      (signed) => ({ method: 'POST', headers: { ...signed, host: 'evil.example' } }),
    ],
    ['with all that a page sends', 200, null, (signed) => ({ method: 'POST', headers: signed })],
    [
      'with what a new browser sends',
      200,
      null,
      (signed) => ({ method: 'POST', headers: { ...without(signed, 'origin'), 'sec-fetch-site': 'same-origin' } }),
    ],
    ['by PATCH with all that a page sends', 200, null, (signed) => ({ method: 'PATCH', headers: signed })],
  ]

  it.each(cases)('%s: %i', async (_name, status, code, build) => {
    const { ask, signed, url } = opened
    const answer = await ask('/change', build(await signed(), url))
    expect(answer.status).toBe(status)
    expect((JSON.parse(answer.text) as { code?: string }).code ?? null).toBe(code)
    expect(seen).toHaveLength(status === 200 ? 1 : 0)
  })

  it('takes the token of another session for wrong', async () => {
    const { ask, signed } = opened
    const [one, other] = [await signed(), await signed()]
    const headers = { ...one, 'x-repslate-token': other['x-repslate-token'] ?? '' }
    expect((await ask('/change', { method: 'POST', headers })).status).toBe(403)
    expect(seen).toEqual([])
  })

  it('takes the token as a field of a form, and keeps it from the route', async () => {
    const { ask, signed } = opened
    const { 'x-repslate-token': token = '', ...headers } = await signed()
    const body = new URLSearchParams([
      ['token', token],
      ['title', 'Übung & mehr'],
      ['kit', 'mat'],
      ['kit', 'band'],
    ]).toString()
    expect((await ask('/form', { method: 'POST', headers: { ...headers, ...FORM }, body })).status).toBe(200)
    expect(
      (await ask('/form', { method: 'POST', headers: { ...headers, ...FORM }, body: 'token=wrong&title=x' })).status,
    ).toBe(403)
    expect(
      (await ask('/form', { method: 'POST', headers: { ...headers, ...FORM }, body: `token=${token}&token=${token}` }))
        .status,
    ).toBe(403)
    expect(seen).toEqual([{ title: 'Übung & mehr', kit: ['mat', 'band'] }])
  })

  it('may hold no more than its route takes', async () => {
    const { ask, signed } = opened
    const headers = { ...(await signed()), 'content-type': 'application/json' }
    const post = async (body: string): Promise<number> => (await ask('/json', { method: 'POST', headers, body })).status
    expect(await post(JSON.stringify({ text: 'x'.repeat(2000) }))).toBe(413)
    expect(await post('{"half":')).toBe(400)
    expect(await post('{"__proto__": {"admin": true}}')).toBe(200)
    expect(({} as { admin?: boolean }).admin).toBeUndefined()
    expect(await post('{"fine": true}')).toBe(200)
    expect(seen.at(-1)).toEqual({ fine: true })
  })
})

describe('every address that changes something', () => {
  interface Layer {
    route?: { path: string | string[]; methods: Record<string, boolean> }
  }
  /** Read from the app itself, so that a new route is held to this without being named here. */
  const writes = (): [string, string][] => {
    const found: [string, string][] = []
    const take = (method: string, paths: string | string[]): void => {
      for (const path of [paths].flat()) found.push([method.toUpperCase(), path.replace(/:\w+/g, 'x')])
    }
    const app = express()
    for (const add of ROUTES) add(app, opened.door)
    const { stack } = app.router as unknown as { stack: Layer[] }
    for (const { route } of stack) {
      if (!route) continue
      for (const method of ['post', 'put', 'patch', 'delete'].filter((name) => route.methods[name] ?? false)) {
        take(method, route.path)
      }
    }
    return found
  }

  it('refuses what is not its own page, before it looks at anything', async () => {
    const { ask, signed, url } = opened
    const all = writes()
    expect(all.length).toBeGreaterThan(12)
    const { 'x-repslate-token': token = '', ...cookie } = await signed()
    const cases: [string, Record<string, string>, number][] = [
      ['nothing', {}, 403],
      ['another origin', { ...cookie, 'x-repslate-token': token, origin: 'http://evil.example' }, 403],
      ['another site', { ...cookie, 'x-repslate-token': token, 'sec-fetch-site': 'cross-site' }, 403],
      ['no token', { ...cookie, origin: url }, 403],
      ['the token of nobody', { ...cookie, 'x-repslate-token': 'A'.repeat(43) }, 403],
      ['another host', { ...cookie, 'x-repslate-token': token, host: 'evil.example' }, 421],
    ]
    const answers: string[] = []
    for (const [method, address] of all) {
      for (const [what, headers, wanted] of cases) {
        const { status } = await ask(address, { method, headers })
        if (status !== wanted) answers.push(`${method} ${address} with ${what}: ${status}`)
      }
    }
    // forms carry their token in the body, and are read only by routes that take forms
    expect(answers).toEqual([])
  })
})

describe('a made-up id', () => {
  it.each(['..%2f..%2fetc%2fpasswd', '..', '%2e%2e', '.parts', 'a%00b', '%5c..%5c..', 'C:%5cboot.ini'])(
    '%s leads to no file of a class, a lesson or an upload',
    async (id) => {
      const { url, door } = opened
      const { id: recordingId } = await door.store.recordings.add({ title: 'A class' }, door.actor)
      for (const address of [
        `/recordings/${id}/media/${id}`,
        `/recordings/${recordingId}/media/${id}`,
        `/recordings/${recordingId}/thumbs/${id}`,
        `/recordings/${recordingId}/peaks/${id}`,
        `/recordings/${id}/preview`,
        `/lessons/${id}/clip.mp4`,
        `/lessons/x/${id}`,
        `/uploads/${id}`,
        `/assets/${id}`,
        `/kinds/${id}`,
        `/add/${id}`,
      ]) {
        const { status, body } = await rawGet(url, address)
        expect([400, 404, 422], address).toContain(status)
        expect(body).not.toMatch(/root:/)
        expect(body).not.toContain(door.dataFolder)
      }
    },
  )
})

describe('the host name', () => {
  it.each([
    ['127.0.0.1:4180', true],
    ['localhost', true],
    ['localhost:80', true],
    ['[::1]:4180', true],
    ['studio.example.org', true],
    ['studio.example.org:8443', true],
    ['192.0.2.7:4180', true],
    ['192.0.2.8:4180', false],
    ['other.example.org', false],
    ['studio.example.org.evil.example', false],
    ['localhost.evil.example', false],
    ['127.0.0.1.evil.example', false],
    ['user@localhost', false],
    ['localhost:4180@evil.example', false],
    ['only.example.org:8080', true],
    ['only.example.org:8081', false],
    ['[::1', false],
    ['', false],
  ])('%s: %s', (host, allowed) => {
    expect(isAllowed(host, '::ffff:192.0.2.7', ['studio.example.org', 'only.example.org:8080'])).toBe(allowed)
  })

  it('is checked for reads too', async () => {
    const { ask } = opened
    const answer = await ask('/health', { headers: { host: 'evil.example:80' } })
    expect(answer.status).toBe(421)
    expect(answer.text).not.toContain('sqlite')
  })

  it('may be one that a person allowed', async () => {
    const { ask } = await openTestDoor({ settings: { allowedHosts: 'studio.example.org' } })
    expect((await ask('/health', { headers: { host: 'Studio.Example.org' } })).status).toBe(200)
  })
})

describe('a session', () => {
  it('is a cookie that scripts and other sites do not get', async () => {
    const { ask } = opened
    const [cookie = ''] = (await ask('/session')).headers['set-cookie'] ?? []
    expect(cookie).toMatch(/^repslate-[0-9a-f]{8}=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/)
  })

  it('stays the same for a browser that has one', async () => {
    const { ask, signed } = opened
    const { cookie = '', 'x-repslate-token': token } = await signed()
    const again = await ask('/session', { headers: { cookie } })
    expect(again.headers['set-cookie']).toBeUndefined()
    expect(JSON.parse(again.text)).toEqual({ token })
  })

  it('is not begun by a link from elsewhere, which leaves the cookie behind', async () => {
    const { ask, signed } = opened
    const { cookie = '' } = await signed()
    const link = { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate' }
    const first = await ask('/session', { headers: link })
    expect(first.headers['set-cookie']).toBeUndefined()
    expect(first.text).toContain('http-equiv="refresh"')
    const withCookie = await ask('/session', { headers: { ...link, cookie } })
    expect(withCookie.text).toContain('token')
  })
})

describe('a path', () => {
  it.each([
    '/assets/../secret',
    '/assets/..%2fsecret',
    '/assets/%2e%2e%2fsecret',
    '/assets/%2e%2e%5csecret',
    '/assets/..;/secret',
    '/assets//etc/passwd',
    '/assets/%00',
    '/assets/main.css%00.js',
    '/../../etc/passwd',
    '/%2e%2e/%2e%2e/etc/passwd',
    '//evil.example/',
    '/secret',
  ])('%s leads nowhere', async (address) => {
    const { url, door } = opened
    const { status, body } = await rawGet(url, address)
    expect([400, 404]).toContain(status)
    expect(body).not.toMatch(/root:|<script/)
    expect(body).not.toContain(door.dataFolder)
  })

  it('that cannot be decoded is a bad request', async () => {
    const { url } = opened
    expect((await rawGet(url, '/assets/%zz')).status).toBe(400)
  })
})

/** Asks for the address as it stands; a URL object would tidy it first. */
async function rawGet(url: string, address: string): Promise<{ status: number; body: string }> {
  const { connect } = await import('node:net')
  const { hostname, port, host } = new URL(url)
  const text = await new Promise<string>((resolve, reject) => {
    const socket = connect(Number(port), hostname)
    let all = ''
    socket.setEncoding('utf8').on('data', (part: string) => (all += part))
    socket.on('end', () => resolve(all)).on('error', reject)
    socket.write(`GET ${address} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`)
  })
  const [head = '', ...body] = text.split('\r\n\r\n')
  return { status: Number(head.split(' ')[1]), body: body.join('\r\n\r\n') }
}
