// The studio killed in the middle of a large upload: it goes on at the very byte, and the film arrives as it was.
import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { createHash } from 'node:crypto'
import { readFile, stat, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import path from 'node:path'
import { expect, it, onTestFinished } from 'vitest'
import { openStore } from '../../server/store/open-store.ts'
import { makeIds } from '../../server/store/make-ids.ts'
import { openClient } from '../helpers/http-door.ts'
import { processesLeft } from '../helpers/media-processes.ts'
import { projectRoot } from '../helpers/source-files.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const BYTES = 60_000_000
const TUS = { 'tus-resumable': '1.0.0' }

async function serve(data: string): Promise<{ url: string; child: ChildProcess }> {
  const command = path.join(projectRoot, 'server', 'cli', 'repslate.mjs')
  const child = spawn(process.execPath, [command, 'serve', '--port', '0', '--data', data], {
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  onTestFinished(() => void child.kill('SIGKILL'))
  const url = await new Promise<string>((resolve, reject) => {
    child.stdout.setEncoding('utf8').on('data', (text: string) => resolve(text.trim()))
    child.once('close', (code) => reject(new Error(`serve ended with ${code}`)))
  })
  return { url, child }
}

/** The small film with bytes behind its end that no reader minds: an MP4 box of the type "free" (ISO/IEC 14496-12, 8.1.2). */
async function largeFilm(): Promise<Buffer> {
  const film = await readFile(path.join(projectRoot, 'media-samples', 'small-class.mp4'))
  const box = Buffer.alloc(BYTES - film.length)
  box.writeUInt32BE(box.length, 0)
  box.write('free', 4, 'latin1')
  for (let at = 8; at + 4 <= box.length; at += 4) box.writeUInt32LE((at * 2_654_435_761) >>> 0, at)
  return Buffer.concat([film, box])
}

it('a studio killed at half of an upload of 60 MB', async () => {
  const data = await tempFolder()
  const film = await largeFilm()
  const first = await serve(data)
  const client = openClient(first.url)
  const signed = await client.signed()
  const made = await client.ask('/recordings', {
    method: 'POST',
    headers: { ...signed, 'content-type': 'application/x-www-form-urlencoded', accept: 'application/json' },
    body: 'title=A+long+class',
  })
  const { id: recordingId } = JSON.parse(made.text) as { id: string }
  const words = Object.entries({ recordingId, filename: 'long.mp4' })
    .map(([name, value]) => `${name} ${Buffer.from(value).toString('base64')}`)
    .join(',')
  const begun = await client.ask('/uploads', {
    method: 'POST',
    headers: { ...signed, ...TUS, 'upload-length': String(film.length), 'upload-metadata': words },
  })
  const address = begun.headers.location ?? ''
  const onDisk = path.join(data, 'uploads', address.slice('/uploads/'.length))

  await sendUntilKilled(first, `${first.url}${address}`, { ...signed, ...TUS }, film, onDisk)
  const kept = (await stat(onDisk)).size
  expect(kept).toBeGreaterThan(BYTES / 3)
  expect(kept).toBeLessThan(BYTES)

  const second = await serve(data)
  const later = openClient(second.url)
  const again = await later.signed()
  const { headers } = await later.ask(address, { method: 'HEAD', headers: { ...again, ...TUS } })
  expect(headers['upload-offset']).toBe(String(kept))
  const rest = await later.ask(address, {
    method: 'PATCH',
    headers: { ...again, ...TUS, 'content-type': 'application/offset+octet-stream', 'upload-offset': String(kept) },
    body: film.subarray(kept),
  })
  expect(rest.status).toBe(204)

  const store = await openStore({ dataFolder: data }, { ids: makeIds(Date.now), clock: Date.now })
  onTestFinished(() => store.close())
  await expect
    .poll(async () => (await store.jobs.list({ recordingId })).map(({ state }) => state), { timeout: 60_000 })
    .toEqual(['done'])
  const [media] = await store.media.list(recordingId)
  const sha256 = createHash('sha256').update(film).digest('hex')
  expect(media).toMatchObject({ bytes: BYTES, sha256 })
  const stored = await readFile(path.join(data, 'media', ...(media?.storageKey ?? '').split('/')))
  expect(createHash('sha256').update(stored).digest('hex')).toBe(sha256)
  // the film's own length, not that of what hangs on it
  expect((await store.recordings.read(recordingId)).durationMs).toBe(24_000)
})

it('a studio killed while it looks into a film', async () => {
  const data = await tempFolder()
  const inbox = await tempFolder()
  const film = await readFile(path.join(projectRoot, 'media-samples', 'steady-and-strong.mp4'))
  await writeFile(path.join(inbox, 'class.mp4'), film)
  process.env['REPSLATE_INBOX'] = inbox
  onTestFinished(() => void delete process.env['REPSLATE_INBOX'])
  const first = await serve(data)
  const store = await openStore({ dataFolder: data }, { ids: makeIds(Date.now), clock: Date.now })
  onTestFinished(() => store.close())
  const states = async () => (await store.jobs.list()).map(({ state }) => state)
  await expect.poll(states, { timeout: 30_000, interval: 20 }).toEqual(['running'])
  first.child.kill('SIGKILL')
  expect(await processesLeft(data, 5)).toEqual([])
  await serve(data)
  await expect.poll(states, { timeout: 90_000 }).toEqual(['done'])
  const [job] = await store.jobs.list()
  expect(job?.attempts).toBe(2)
  expect((await store.recordings.list()).map(({ title, state }) => [title, state])).toEqual([['class', 'ready']])
})

/** Sends the film from its start, and kills the studio when about half of it lies on its disk. */
async function sendUntilKilled(
  { child }: { child: ChildProcess },
  url: string,
  headers: Record<string, string>,
  film: Buffer,
  onDisk: string,
): Promise<void> {
  const gone = new Promise((resolve) => child.once('close', resolve))
  const sent = request(url, {
    method: 'PATCH',
    headers: {
      ...headers,
      'content-type': 'application/offset+octet-stream',
      'upload-offset': '0',
      'content-length': String(film.length),
    },
  })
  sent.on('error', () => undefined)
  const piece = 500_000
  for (let at = 0; at < film.length && !sent.destroyed; at += piece) {
    if (!sent.write(film.subarray(at, at + piece))) await Promise.race([once(sent, 'drain'), gone])
    if ((await stat(onDisk)).size > BYTES / 2) {
      child.kill('SIGKILL')
      break
    }
  }
  await gone
}

function once(stream: NodeJS.EventEmitter, name: string): Promise<void> {
  return new Promise((resolve) => stream.once(name, () => resolve()))
}
