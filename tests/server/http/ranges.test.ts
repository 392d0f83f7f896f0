// Parts of a file, held against RFC 9110, "HTTP Semantics" (2022), sections 8.8, 13 and 14; each row names its section.
import { randomBytes } from 'node:crypto'
import { mkdtemp, rm, utimes, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { tidyRange } from '../../../server/middleware/tidy-range.ts'
import { sendMedia } from '../../../server/middleware/send-media.ts'
import { startTestDoor } from '../../helpers/http-door.ts'

const SIZE = 1000
const CONTENT = randomBytes(SIZE)
const TAG = '"sha-0123"'
const DATE = new Date(Date.UTC(2026, 0, 15, 12, 0, 0))
const SECOND_LATER = new Date(DATE.getTime() + 1000).toUTCString()
const SECOND_EARLIER = new Date(DATE.getTime() - 1000).toUTCString()

let folder = ''
let opened: Awaited<ReturnType<typeof startTestDoor>>

beforeAll(async () => {
  // a name that a careless sender would take for a hidden file, a percent escape and a folder up
  folder = await mkdtemp(path.join(tmpdir(), '.repslate-%41-test-'))
  const file = path.join(folder, 'clip one %2e.mp4')
  await writeFile(file, CONTENT)
  await writeFile(path.join(folder, 'empty.mp4'), '')
  await utimes(file, DATE, DATE)
  const media = { path: file, etagSha: 'sha-0123', type: 'video/mp4' }
  opened = await startTestDoor({
    routes: [
      (app) => {
        app.get('/clip', (req, res) => sendMedia(req, res, media))
        app.get('/lasting', (req, res) => sendMedia(req, res, { ...media, lasting: true }))
        app.get('/saved', (req, res) => sendMedia(req, res, { ...media, saveAs: 'Kniebeuge – Übung "1".mp4' }))
        app.get('/empty', (req, res) => sendMedia(req, res, { ...media, path: path.join(folder, 'empty.mp4') }))
        app.get('/gone', (req, res) => sendMedia(req, res, { ...media, path: path.join(folder, 'gone.mp4') }))
        app.get('/folder', (req, res) => sendMedia(req, res, { ...media, path: folder }))
      },
    ],
  })
})
afterAll(async () => {
  await opened.close()
  await rm(folder, { recursive: true, force: true })
})

const whole = { status: 200, from: 0, to: SIZE - 1 }
const part = (from: number, to: number) => ({ status: 206, from, to })
const outside = { status: 416 }
type Expected = { status: number; from?: number; to?: number }

const GETS: [string, string, Record<string, string>, Expected][] = [
  // section 14.1.2, byte ranges
  ['first bytes', '14.1.2', { range: 'bytes=0-99' }, part(0, 99)],
  ['the first byte', '14.1.2', { range: 'bytes=0-0' }, part(0, 0)],
  ['the last byte', '14.1.2', { range: 'bytes=999-999' }, part(999, 999)],
  ['the last hundred', '14.1.2', { range: 'bytes=-100' }, part(900, 999)],
  ['more last bytes than there are', '14.1.2', { range: 'bytes=-5000' }, part(0, 999)],
  ['from the middle on', '14.1.2', { range: 'bytes=500-' }, part(500, 999)],
  ['an end past the end', '14.1.2', { range: 'bytes=900-5000' }, part(900, 999)],
  ['numbers no computer counts to', '14.1.2', { range: 'bytes=0-99999999999999999999999' }, part(0, 999)],
  ['the unit in capitals', '14.1', { range: 'Bytes=0-99' }, part(0, 99)],
  // section 15.5.17
  ['no last bytes at all', '14.1.2', { range: 'bytes=-0' }, outside],
  ['a start at the end', '14.1.2', { range: 'bytes=1000-' }, outside],
  ['a start past the end', '15.5.17', { range: 'bytes=5000-6000' }, outside],
  // section 14.2: an invalid one may be ignored or refused
  ['end before start', '14.2', { range: 'bytes=5-1' }, outside],
  ['words for numbers', '14.2', { range: 'bytes=one-two' }, whole],
  ['numbers that are not whole', '14.2', { range: 'bytes=1.5-3' }, whole],
  ['letters behind a number', '14.2', { range: 'bytes=1x-3' }, whole],
  ['a minus and nothing else', '14.2', { range: 'bytes=-' }, whole],
  ['nothing behind the unit', '14.2', { range: 'bytes=' }, whole],
  ['a unit nobody knows', '14.2', { range: 'lines=0-9' }, whole],
  ['an empty field', '14.2', { range: '' }, whole],
  // section 14.2: several ranges may be joined where they touch, or all be ignored
  ['two that touch', '14.2', { range: 'bytes=0-9,10-19' }, part(0, 19)],
  ['two that overlap', '14.2', { range: 'bytes=0-99, 50-149' }, part(0, 149)],
  ['two apart', '14.2', { range: 'bytes=0-9,100-109' }, whole],
  ['one inside, one outside', '14.2', { range: 'bytes=0-9,5000-' }, part(0, 9)],
  ['two outside', '14.2', { range: 'bytes=2000-2001,3000-' }, outside],
  [
    'a thousand small ones',
    '17.15',
    { range: `bytes=${Array.from({ length: 500 }, (_, at) => `${at}-${at}`).join(',')}` },
    whole,
  ],
  // section 13.1.5, If-Range
  ['If-Range with the tag', '13.1.5', { range: 'bytes=0-99', 'if-range': TAG }, part(0, 99)],
  ['If-Range with a stale tag', '13.1.5', { range: 'bytes=0-99', 'if-range': '"sha-9999"' }, whole],
  ['If-Range with a weak tag', '13.1.5', { range: 'bytes=0-99', 'if-range': `W/${TAG}` }, whole],
  ['If-Range with a list that holds the tag', '13.1.5', { range: 'bytes=0-99', 'if-range': `"x", ${TAG}` }, whole],
  ['If-Range with the date', '13.1.5', { range: 'bytes=0-99', 'if-range': DATE.toUTCString() }, part(0, 99)],
  ['If-Range with a later date', '13.1.5', { range: 'bytes=0-99', 'if-range': SECOND_LATER }, whole],
  ['If-Range with an earlier date', '13.1.5', { range: 'bytes=0-99', 'if-range': SECOND_EARLIER }, whole],
  ['If-Range with nonsense', '13.1.5', { range: 'bytes=0-99', 'if-range': 'yesterday' }, whole],
  ['If-Range that fails, with a range outside', '13.2.2', { range: 'bytes=5000-', 'if-range': '"sha-9999"' }, whole],
  ['If-Range without a range', '13.1.5', { 'if-range': TAG }, whole],
  // sections 13.1.1 to 13.1.4 and their order, 13.2.2
  ['If-None-Match with the tag', '13.1.2', { 'if-none-match': TAG }, { status: 304 }],
  ['If-None-Match with the weak tag', '13.1.2', { 'if-none-match': `W/${TAG}` }, { status: 304 }],
  ['If-None-Match with any', '13.1.2', { 'if-none-match': '*' }, { status: 304 }],
  ['If-None-Match with the tag, and a range', '13.2.2', { 'if-none-match': TAG, range: 'bytes=0-99' }, { status: 304 }],
  ['If-None-Match with another', '13.1.2', { 'if-none-match': '"sha-9999"', range: 'bytes=0-99' }, part(0, 99)],
  ['If-Match with the tag', '13.1.1', { 'if-match': TAG, range: 'bytes=0-99' }, part(0, 99)],
  ['If-Match with any', '13.1.1', { 'if-match': '*' }, whole],
  ['If-Match with one of several', '13.1.1', { 'if-match': `"sha-9999", ${TAG}` }, whole],
  ['If-Match with another', '13.1.1', { 'if-match': '"sha-9999"', range: 'bytes=0-99' }, { status: 412 }],
  ['If-Match with the weak tag', '13.1.1', { 'if-match': `W/${TAG}` }, { status: 412 }],
  ['If-Modified-Since the date', '13.1.3', { 'if-modified-since': DATE.toUTCString() }, { status: 304 }],
  ['If-Modified-Since an earlier date', '13.1.3', { 'if-modified-since': SECOND_EARLIER }, whole],
  ['If-Unmodified-Since an earlier date', '13.1.4', { 'if-unmodified-since': SECOND_EARLIER }, { status: 412 }],
  ['nothing', '9.3.1', {}, whole],
]

describe('GET with', () => {
  it.each(GETS)('%s (section %s)', async (_name, _section, headers, expected) => {
    const answer = await opened.ask('/clip', { headers })
    expect(answer.status).toBe(expected.status)
    if (expected.from !== undefined && expected.to !== undefined) {
      const bytes = CONTENT.subarray(expected.from, expected.to + 1)
      expect(answer.body.equals(bytes)).toBe(true)
      expect(answer.headers).toMatchObject({
        'content-length': String(bytes.length),
        'content-type': 'video/mp4',
        'accept-ranges': 'bytes',
        etag: TAG,
        'last-modified': DATE.toUTCString(),
        'cache-control': 'private, no-cache',
        'x-content-type-options': 'nosniff',
        'cross-origin-resource-policy': 'same-origin',
      })
    }
    const contentRange: Record<number, string | undefined> = {
      206: `bytes ${expected.from}-${expected.to}/${SIZE}`,
      // section 14.4
      416: `bytes */${SIZE}`,
    }
    expect(answer.headers['content-range']).toBe(contentRange[expected.status])
    // section 15.4.5: a 304 carries the tag too
    if (expected.status === 304) expect(answer.headers.etag).toBe(TAG)
    if (expected.status >= 400) {
      expect(answer.headers['content-type']).toBe('application/problem+json')
      expect(answer.headers.etag).not.toBe(TAG)
    }
  })
})

describe('HEAD', () => {
  // section 14.2: a Range field has a meaning with GET only
  it.each([
    ['a range', { range: 'bytes=0-99' }],
    ['a range outside', { range: 'bytes=5000-' }],
    ['a range and If-Range', { range: 'bytes=0-99', 'if-range': TAG }],
    ['nothing', {}],
  ])('with %s tells of the whole file', async (_name, headers) => {
    const answer = await opened.ask('/clip', { method: 'HEAD', headers: headers })
    expect(answer.status).toBe(200)
    expect(answer.headers).toMatchObject({ 'content-length': String(SIZE), etag: TAG, 'accept-ranges': 'bytes' })
    expect(answer.headers['content-range']).toBeUndefined()
    expect(answer.body).toHaveLength(0)
  })
})

describe('a file', () => {
  it('that is empty has no range, and can be had whole', async () => {
    const none = await opened.ask('/empty', { headers: { range: 'bytes=0-0' } })
    expect([none.status, none.headers['content-range']]).toEqual([416, 'bytes */0'])
    const all = await opened.ask('/empty')
    expect([all.status, all.headers['content-length']]).toEqual([200, '0'])
  })

  it.each(['/gone', '/folder'])('%s is a 404 that names no path', async (address) => {
    const answer = await opened.ask(address)
    expect(answer.status).toBe(404)
    expect(answer.text).not.toContain('repslate-')
  })

  it('at an address that never changes may be kept for a year', async () => {
    const answer = await opened.ask('/lasting', { headers: { range: 'bytes=0-9' } })
    expect(answer.headers['cache-control']).toBe('private, max-age=31536000, immutable')
  })

  it('may be saved under its name in any script', async () => {
    // RFC 6266 (2011), section 4.3, with RFC 8187 (2017) for the letters
    const disposition = (await opened.ask('/saved')).headers['content-disposition'] ?? ''
    const encoded = /filename\*=UTF-8''(\S+)/.exec(disposition)?.[1] ?? ''
    expect(decodeURIComponent(encoded)).toBe('Kniebeuge – Übung "1".mp4')
  })

  it('is let go when the browser leaves', async () => {
    const stop = new AbortController()
    const response = await fetch(`${opened.url}/clip`, { signal: stop.signal })
    stop.abort()
    await expect(response.arrayBuffer()).rejects.toThrow()
    expect(opened.faults).toEqual([])
  })
})

describe('tidyRange', () => {
  const clip = { bytes: SIZE, etag: TAG, lastModified: DATE.toUTCString() }
  it('leaves a fine request as it is', () => {
    expect(tidyRange('GET', { range: 'bytes=0-1' }, clip)).toEqual({ range: 'bytes=0-1' })
  })
  it('reads more last bytes than there are as all of them', () => {
    expect(tidyRange('GET', { range: 'Bytes= -1001' }, clip)).toEqual({ range: 'bytes=0-' })
  })
  it('finds that an If-Match of weak tags cannot hold', () => {
    expect(tidyRange('GET', { 'if-match': `W/${TAG}, W/"x"` }, clip)).toBe('changed')
  })
})
