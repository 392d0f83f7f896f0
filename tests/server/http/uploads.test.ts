// Uploads by the letter of tus 1.0.0 (2016-03-25), https://tus.io/protocols/resumable-upload, over the real server.
import { existsSync, readdirSync } from 'node:fs'
import { readFile, utimes, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addRecording } from '../../../server/actions/add-recording.ts'
import { sweepUploads } from '../../../server/actions/take-uploads.ts'
import { AppError } from '../../../shared/errors.ts'
import { withTable } from '../../helpers/false-boxes.ts'
import { startTestDoor } from '../../helpers/http-door.ts'
import type { Answer } from '../../helpers/http-door.ts'
import { projectRoot } from '../../helpers/source-files.ts'

const TUS = { 'tus-resumable': '1.0.0' }
const PATCH = { ...TUS, 'content-type': 'application/offset+octet-stream' }
const MOST = 2_000_000

let door: Awaited<ReturnType<typeof startTestDoor>>
let signed: Record<string, string>
let film: Buffer

beforeAll(async () => {
  door = await startTestDoor({ settings: { maxUploadBytes: MOST } })
  signed = await door.signed()
  film = await readFile(path.join(projectRoot, 'media-samples', 'small-class.mp4'))
})
afterAll(() => door.close())

const encode = (text: string): string => Buffer.from(text).toString('base64')
const wordsOf = (recordingId: string, filename = 'class.mp4', role = 'part'): string =>
  `recordingId ${encode(recordingId)},filename ${encode(filename)},role ${encode(role)}`
const newClass = async (): Promise<string> => (await addRecording(door.door, { title: 'A class' })).id

/** Begins an upload. */
async function begin(more: Record<string, string> = {}): Promise<Answer> {
  const headers = {
    ...signed,
    ...TUS,
    'upload-length': String(film.length),
    'upload-metadata': wordsOf(await newClass()),
  }
  return door.ask('/uploads', { method: 'POST', headers: { ...headers, ...more } })
}

const send = (address: string, offset: number, body: Buffer, more: Record<string, string> = {}): Promise<Answer> =>
  door.ask(address, {
    method: 'PATCH',
    headers: { ...signed, ...PATCH, 'upload-offset': String(offset), ...more },
    body,
  })
const head = (address: string): Promise<Answer> => door.ask(address, { method: 'HEAD', headers: { ...signed, ...TUS } })

const uploadsLeft = (): string[] => readdirSync(path.join(door.door.dataFolder, 'uploads'))

describe('refused before a byte is taken', () => {
  it.each([
    ['without the token', { 'x-repslate-token': 'wrong' }, 403],
    ['from another site', { origin: 'http://evil.example' }, 403],
    ['without a version', { 'tus-resumable': '' }, 412],
    ['of another version', { 'tus-resumable': '0.2.2' }, 412],
    ['larger than may be', { 'upload-length': String(MOST + 1) }, 413],
    ['of unknown length', { 'upload-length': '', 'upload-defer-length': '1' }, 400],
    ['of no bytes', { 'upload-length': '0' }, 422],
    ['of a negative length', { 'upload-length': '-5' }, 400],
    ['of no class', { 'upload-metadata': `filename ${encode('a.mp4')}` }, 400],
    ['of a name that no file has', { 'upload-metadata': wordsOf('none', 'a\0.mp4') }, 400],
    ['of a name too long to keep', { 'upload-metadata': wordsOf('none', 'a'.repeat(256)) }, 400],
    ['of a class that is not there', { 'upload-metadata': wordsOf('none') }, 404],
    ['of a role that is none', { 'upload-metadata': wordsOf('none', 'a.mp4', 'boss') }, 400],
    ['of a role that only we give', { 'upload-metadata': wordsOf('none', 'a.mp4', 'joined') }, 400],
    ['of a place that is none', { 'upload-metadata': `${wordsOf('none')},place ${encode('-1')}` }, 400],
  ])('%s', async (_what, headers, status) => {
    const before = uploadsLeft()
    expect((await begin(headers)).status).toBe(status)
    expect(uploadsLeft()).toEqual(before)
  })

  it('more than the disk holds, in words', async () => {
    const { storage } = door.door
    const free = storage.freeBytes
    storage.freeBytes = () => Promise.resolve(300 * 1024 ** 2)
    try {
      const first = await begin({ 'upload-length': '1900000' })
      expect(first.status).toBe(201)
      storage.freeBytes = () => Promise.resolve(256 * 1024 ** 2 + 2_500_000)
      const { status, text } = await begin({ 'upload-length': '1900000' })
      expect([status, text]).toEqual([507, expect.stringMatching(/needs 2 MB and 1 MB are free/)])
    } finally {
      storage.freeBytes = free
    }
  })
})

describe('the protocol', () => {
  it('names its version when it refuses another', async () => {
    expect((await begin({ 'tus-resumable': '0.2.2' })).headers['tus-version']).toBe('1.0.0')
  })

  it('tells what it can do', async () => {
    const { status, headers } = await door.ask('/uploads', { method: 'OPTIONS' })
    expect(status).toBe(204)
    expect(headers['tus-version']).toBe('1.0.0')
    expect(headers['tus-max-size']).toBe(String(MOST))
    expect(headers['tus-extension']).toBe('creation,creation-with-upload,termination,expiration')
    expect(headers['access-control-allow-origin']).toBeUndefined()
  })

  it('creates an upload with a relative address and a time when it ends', async () => {
    const { status, headers } = await begin()
    expect(status).toBe(201)
    expect(headers.location).toMatch(/^\/uploads\/[a-z0-9]{24}$/)
    const { headers: now } = await head(headers.location ?? '')
    expect([now['upload-offset'], now['upload-length'], now['cache-control']]).toEqual([
      '0',
      String(film.length),
      'no-store',
    ])
  })

  it.each([
    ['another type', { 'content-type': 'application/octet-stream' }, 415],
    ['a wrong place', { 'upload-offset': '7' }, 409],
    ['no place', { 'upload-offset': '' }, 400],
    ['a negative place', { 'upload-offset': '-1' }, 400],
    ['no token', { 'x-repslate-token': '' }, 403],
  ])('refuses bytes with %s', async (_what, headers, status) => {
    const address = (await begin()).headers.location ?? ''
    expect((await send(address, 0, film.subarray(0, 100), headers)).status).toBe(status)
    expect((await head(address)).headers['upload-offset']).toBe('0')
  })

  it('refuses bytes past the end', async () => {
    const address = (await begin({ 'upload-length': '10' })).headers.location ?? ''
    expect((await send(address, 0, film.subarray(0, 11))).status).toBe(413)
  })

  it('takes a PATCH in the clothes of a POST', async () => {
    const address = (await begin()).headers.location ?? ''
    const headers = { ...signed, ...PATCH, 'upload-offset': '0', 'x-http-method-override': 'PATCH' }
    const { status, headers: said } = await door.ask(address, { method: 'POST', headers, body: film.subarray(0, 10) })
    expect([status, said['upload-offset']]).toEqual([204, '10'])
  })

  it('ends an upload', async () => {
    const address = (await begin()).headers.location ?? ''
    const headers = { ...signed, ...TUS }
    expect((await door.ask(address, { method: 'DELETE', headers })).status).toBe(204)
    expect([404, 410]).toContain((await head(address)).status)
  })

  it.each(['..%2f..%2fsecret', '..%2e', 'none', '.parts'])('knows no upload %s', async (id) => {
    expect((await head(`/uploads/${id}`)).status).toBe(404)
    expect((await send(`/uploads/${id}`, 0, film)).status).toBe(404)
  })

  it('gives no upload to read', async () => {
    const address = (await begin()).headers.location ?? ''
    expect((await door.ask(address)).status).toBe(404)
  })
})

describe('a whole upload', () => {
  it('becomes the film of its class, byte by byte, however it came', async () => {
    const recordingId = await newClass()
    const address = (await begin({ 'upload-metadata': wordsOf(recordingId, 'Übung/../1.mp4') })).headers.location ?? ''
    await send(address, 0, film.subarray(0, 1000))
    expect((await head(address)).headers['upload-offset']).toBe('1000')
    expect((await send(address, 1000, film.subarray(1000))).status).toBe(204)
    const [media] = await door.door.store.media.list(recordingId)
    expect(media).toMatchObject({ fileName: 'Übung/../1.mp4', role: 'part', bytes: film.length })
    expect(await readFile(door.door.storage.path(media?.storageKey ?? ''))).toEqual(film)
    expect((await door.door.store.recordings.read(recordingId)).state).toBe('checking')
    expect(await door.door.store.jobs.list({ recordingId })).toMatchObject([{ kind: 'analyse', state: 'queued' }])
    // the browser that lost the answer asks again and need not send it again
    expect((await head(address)).headers['upload-offset']).toBe(String(film.length))
  })

  it.each([
    [
      'a text',
      () => Buffer.from('#EXTM3U\n#EXTINF:1,\nfile:///etc/passwd\n'),
      /no MP4, MOV, 3GP, MKV, WebM, TS or AVI recording/,
    ],
    ['an empty film', () => Buffer.alloc(5000), /no MP4, MOV, 3GP, MKV, WebM, TS or AVI recording/],
    [
      'a film whose head announces gigabytes',
      () => withTable(film, 'stts', 0x3fff_ffff),
      /announces more than it holds/,
    ],
  ])('%s is refused in words, and nothing of it stays', async (_what, content, message) => {
    const bytes = content()
    const recordingId = await newClass()
    const more = { 'upload-length': String(bytes.length), 'upload-metadata': wordsOf(recordingId) }
    const address = (await begin(more)).headers.location ?? ''
    const { status, text } = await send(address, 0, bytes)
    expect([status, text]).toEqual([422, expect.stringMatching(message)])
    expect(uploadsLeft().filter((name) => address.endsWith(name.replace('.json', '')))).toEqual([])
    expect(await door.door.store.media.list(recordingId)).toEqual([])
    expect(await door.door.storage.list(`recordings/${recordingId}`)).toEqual([])
  })

  it('waits while the machine is at fault, and is taken when the browser asks again', async () => {
    const { store } = door.door
    const recordingId = await newClass()
    const address = (await begin({ 'upload-metadata': wordsOf(recordingId) })).headers.location ?? ''
    const list = store.media.list
    store.media.list = () => Promise.reject(new AppError('store-busy', 'The store is busy. Try again.'))
    try {
      expect((await send(address, 0, film)).status).toBe(503)
      // not "all is here" while it is not
      expect((await head(address)).status).toBe(503)
    } finally {
      store.media.list = list
    }
    expect(uploadsLeft()).toContain(address.slice('/uploads/'.length))
    expect((await head(address)).headers['upload-offset']).toBe(String(film.length))
    expect((await store.media.list(recordingId)).map(({ bytes }) => bytes)).toEqual([film.length])
  })

  it('that is one of several parts goes to its own place, whichever arrives first', async () => {
    const recordingId = await newClass()
    for (const [name, place] of [
      ['second.mp4', '1'],
      ['first.mp4', '0'],
      ['first again.mp4', '0'],
    ] as const) {
      const metadata = `${wordsOf(recordingId, name)},place ${encode(place)}`
      const address = (await begin({ 'upload-metadata': metadata })).headers.location ?? ''
      expect((await send(address, 0, film)).status).toBe(204)
    }
    const files = await door.door.store.media.list(recordingId)
    expect(files.map(({ fileName }) => fileName)).toEqual(['first.mp4', 'second.mp4', 'first again.mp4'])
  })

  it('is taken at the next start when the studio was killed before it could', async () => {
    const recordingId = await newClass()
    const address = (await begin({ 'upload-metadata': wordsOf(recordingId) })).headers.location ?? ''
    const id = address.slice('/uploads/'.length)
    const file = path.join(door.door.dataFolder, 'uploads', id)
    await writeFile(file, film)
    const faults: unknown[] = []
    await sweepUploads(door.door, Date.now(), (error) => faults.push(error))
    expect((await door.door.store.media.list(recordingId)).map(({ bytes }) => bytes)).toEqual([film.length])
    await sweepUploads(door.door, Date.now(), (error) => faults.push(error))
    expect(await door.door.store.media.list(recordingId)).toHaveLength(1)
    await utimes(`${file}.json`, new Date(0), new Date(0))
    await sweepUploads(door.door, Date.now(), (error) => faults.push(error))
    expect(existsSync(`${file}.json`)).toBe(false)
    expect(faults).toEqual([])
  })
})
