/**
 * The studio killed at random moments of the whole road: a film goes up, is looked into, drafted, cut, published. Nothing
 * that was acknowledged is lost, no half clip is ever seen, no ffmpeg lives on, and the work ends as if nothing had been.
 */
import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { expect, it } from 'vitest'
import { askCut } from '../../server/actions/ask-job.ts'
import { LOCAL_OWNER } from '../../shared/actors.ts'
import { openClient } from '../helpers/http-door.ts'
import type { Answer, Asked, Client } from '../helpers/http-door.ts'
import { done, halfClips, openKilledStudio } from '../helpers/killed-studio.ts'
import type { KilledStudio } from '../helpers/killed-studio.ts'
import { processesLeft } from '../helpers/media-processes.ts'
import { projectRoot } from '../helpers/source-files.ts'

const isSoak = process.env['REPSLATE_SOAK'] === '1'
/** Runs of the road, and kills in each. */
const RUNS = isSoak ? 5 : 1
const KILLS = isSoak ? 4 : 3
/** Longest time from one start to the next kill; a start takes about one second of it. */
const MOST_MS = isSoak ? 25_000 : 12_000
const TUS = { 'tus-resumable': '1.0.0' }
const PIECE = 400_000

/** Asks until somebody answers, as a person or a browser does. */
async function insist(studio: KilledStudio, ask: (client: Client) => Promise<Answer>): Promise<Answer> {
  for (;;) {
    try {
      const answer = await ask(openClient(studio.url()))
      if (answer.status < 500) return answer
    } catch {
      // nobody is there yet
    }
    await wait(100)
  }
}

const signedAsk = (studio: KilledStudio, address: string, asked: Asked): Promise<Answer> =>
  insist(studio, async (client) => {
    const headers = { ...(await client.signed()), accept: 'application/json', ...asked.headers }
    return client.ask(address, { ...asked, headers })
  })

const post = (studio: KilledStudio, address: string, fields: Record<string, string>): Promise<Answer> =>
  signedAsk(studio, address, {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
    body: new URLSearchParams(fields).toString(),
  })

/** Sends the film; what the studio said it holds, it must hold after every kill. */
async function upload(studio: KilledStudio, recordingId: string, film: Buffer): Promise<void> {
  const words = Object.entries({ recordingId, filename: 'class.mp4' })
    .map(([name, value]) => `${name} ${Buffer.from(value).toString('base64')}`)
    .join(',')
  const begun = await signedAsk(studio, '/uploads', {
    method: 'POST',
    headers: { ...TUS, 'upload-length': String(film.length), 'upload-metadata': words },
  })
  const address = begun.headers.location ?? ''
  let acknowledged = 0
  while (acknowledged < film.length) {
    const { headers } = await signedAsk(studio, address, { method: 'HEAD', headers: TUS })
    const held = Number(headers['upload-offset'])
    expect(held).toBeGreaterThanOrEqual(acknowledged)
    if (held === film.length) return
    const sent = await signedAsk(studio, address, {
      method: 'PATCH',
      headers: { ...TUS, 'content-type': 'application/offset+octet-stream', 'upload-offset': String(held) },
      body: film.subarray(held, held + PIECE),
    })
    if (sent.status === 204) acknowledged = Number(sent.headers['upload-offset'])
  }
}

/** From the empty studio to lessons in the library. @returns ids of what was acknowledged */
async function walk(studio: KilledStudio, film: Buffer, transcript: string): Promise<string> {
  const added = await post(studio, '/recordings', { title: 'Steady and strong' })
  const { id } = JSON.parse(added.text) as { id: string }
  await upload(studio, id, film)
  const said = { title: 'Steady and strong', audience: 'older-adults', shown: 'nobody', music: 'none', transcript }
  expect((await post(studio, `/recordings/${id}/words`, said)).status).toBe(200)
  await done(studio, id, 'draft')
  await done(studio, id, 'analyse')
  await askCut({ store: studio.store, actor: LOCAL_OWNER }, { recordingId: id, segmentIds: null })
  await done(studio, id, 'cut')
  expect((await post(studio, `/recordings/${id}/publish`, {})).status).toBe(303)
  await done(studio, id, 'publish')
  return id
}

async function killAtRandom(studio: KilledStudio): Promise<void> {
  for (let kill = 0; kill < KILLS; kill += 1) {
    await wait(Math.random() * MOST_MS)
    await studio.kill()
    expect(await processesLeft(`${studio.data}/media`, 5)).toEqual([])
    expect(halfClips(studio.data)).toEqual([])
    await studio.start()
  }
}

/** The class up to the end of its third exercise: enough for a few lessons. */
function firstMinutes(vtt: string): string {
  const blocks = vtt.split('\n\n')
  const last = blocks.findIndex((block) => /(^|\n)(00:)?02:4\d/.test(block))
  return blocks.slice(0, last === -1 ? undefined : last).join('\n\n')
}

it.each(Array.from({ length: RUNS }, (_, run) => run + 1))(
  `the whole road, run %i, with ${KILLS} kills`,
  { timeout: 900_000 },
  async () => {
    const sample = (name: string): string => path.join(projectRoot, 'media-samples', name)
    const film = await readFile(sample('steady-and-strong.mp4'))
    const transcript = firstMinutes(await readFile(sample('steady-and-strong.vtt'), 'utf8'))
    const studio = await openKilledStudio()
    await studio.start()
    const [id] = await Promise.all([walk(studio, film, transcript), killAtRandom(studio)])

    const { store, data } = studio
    const [media] = await store.media.list(id)
    const kept = await readFile(path.join(data, 'media', ...(media?.storageKey ?? '').split('/')))
    expect(createHash('sha256').update(kept).digest('hex')).toBe(createHash('sha256').update(film).digest('hex'))
    expect(await store.recordings.read(id)).toMatchObject({ state: 'ready', audience: ['older-adults'], people: [] })
    const jobs = await store.jobs.list({ recordingId: id })
    expect(jobs.filter(({ state }) => state !== 'done')).toEqual([])
    const cut = jobs.find(({ kind }) => kind === 'cut')?.result as { clips: number; failed: unknown[] }
    expect(cut.clips).toBeGreaterThan(2)
    expect(cut.failed).toEqual([])
    const shown = (await store.lessons.list(['published'])).map(({ current }) => current?.segmentId)
    const published = jobs.find(({ kind }) => kind === 'publish')?.result as { lessons: { segmentId: string }[] }
    // each once, however often it was begun
    expect(new Set(shown).size).toBe(shown.length)
    expect(published.lessons.every(({ segmentId }) => shown.includes(segmentId))).toBe(true)
    expect(shown.length).toBeGreaterThan(0)
    expect(halfClips(data)).toEqual([])
    await studio.kill()
    expect(await processesLeft(`${data}/media`, 5)).toEqual([])
  },
)
