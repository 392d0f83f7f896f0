// The second reader in the studio: asked only when the settings say so, behind the draft, and its faults cost nothing.
import { readFile, readdir } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import path from 'node:path'
import { expect, it, onTestFinished, vi } from 'vitest'
import { addRecording } from '../../../server/actions/add-recording.ts'
import { attachTranscript } from '../../../server/actions/attach-transcript.ts'
import { main } from '../../../server/cli/main.ts'
import { runJobs } from '../../../server/jobs/run-jobs.ts'
import { openStudio } from '../../../server/studio.ts'
import type { Studio } from '../../../server/studio.ts'
import { hideKey } from '../../../shared/second-reader.ts'
import { fakeIo } from '../../helpers/fake-io.ts'
import { testSettings } from '../../helpers/http-door.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

const KEY = 'a-key-that-nobody-sees'
const TEXT = `[0:00] First exercise is the goblet squat. Hold the bell at your chest. Sit down between your heels and stand up.
[0:20] The mirror is your friend here. Three sets of eight.`
const CUE = { segmentId: 'seg-1', kind: 'focus', text: 'The mirror is your friend here' }

/** A stand-in that speaks chat completions. @returns its address and the keys it was sent */
async function openReader(status = 200): Promise<{ url: string; keys: (string | undefined)[] }> {
  const keys: (string | undefined)[] = []
  const server = createServer((request, response) => {
    keys.push(request.headers.authorization)
    request.resume().on('end', () => {
      const content = JSON.stringify({ cues: [CUE], cautions: [] })
      response.writeHead(status, { 'content-type': 'application/json' })
      response.end(JSON.stringify({ choices: [{ message: { role: 'assistant', content } }] }))
    })
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  onTestFinished(() => void server.close())
  return { url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/v1`, keys }
}

async function draftClass(reader: { url: string } | null, text = TEXT): Promise<{ studio: Studio; id: string }> {
  const settings = reader && hideKey({ url: reader.url, model: 'stand-in', key: KEY, timeoutMs: 2000 })
  const studio = await openStudio(testSettings(await tempFolder(), { reader: settings }))
  onTestFinished(() => studio.close())
  const runner = await runJobs(studio, { pollMs: 20 })
  onTestFinished(() => runner.close())
  const { id } = await addRecording(studio, { title: 'A class' })
  await attachTranscript(studio, { recordingId: id, text, origin: 'pasted' })
  const open = async () => (await studio.store.jobs.list({ recordingId: id, states: ['queued', 'running'] })).length
  await expect.poll(open, { interval: 20 }).toBe(0)
  return { studio, id }
}

const jobsOf = async ({ store }: Studio, recordingId: string) =>
  new Map((await store.jobs.list({ recordingId })).map((job) => [job.kind, job]))
const proposedBy = async ({ store }: Studio, id: string): Promise<string[]> =>
  ((await store.sheets.readOf(id))?.sheet.segments ?? []).flatMap(({ cues }) =>
    cues.filter(({ ruleId }) => ruleId === 'second-reader').map(({ text, state }) => `${state}: ${text}`),
  )

it('nobody is asked unless the settings say so, nor about a plan', async () => {
  const { studio, id } = await draftClass(null)
  expect([...(await jobsOf(studio, id)).keys()]).toEqual(['draft'])
  const reader = await openReader()
  const plan = await draftClass(reader, 'Chair squats - 3 x 12\nHeel raises - 2 x 10')
  expect((await jobsOf(plan.studio, plan.id)).get('read-again')).toMatchObject({ state: 'done', result: null })
  expect(reader.keys).toEqual([])
})

it('a reader that is of no use leaves the draft as it is, and says so', async () => {
  const { studio, id } = await draftClass(await openReader(401))
  const jobs = await jobsOf(studio, id)
  expect(jobs.get('draft')?.state).toBe('done')
  expect(jobs.get('read-again')).toMatchObject({ state: 'failed', error: { code: 'second-reader' } })
  expect((await studio.store.sheets.readOf(id))?.sheet.segments).toHaveLength(1)
})

it('what it adds is proposed, once, and its key is written nowhere', async () => {
  const reader = await openReader()
  const { studio, id } = await draftClass(reader)
  expect((await jobsOf(studio, id)).get('read-again')).toMatchObject({
    state: 'done',
    result: { added: 1, refused: 0 },
  })
  expect(await proposedBy(studio, id)).toEqual([`proposed: ${CUE.text}`])
  expect(reader.keys).toEqual([`Bearer ${KEY}`])
  for (const name of await readdir(studio.dataFolder)) {
    const bytes = await readFile(path.join(studio.dataFolder, name)).catch(() => Buffer.alloc(0))
    expect(bytes.includes(KEY), name).toBe(false)
  }
})

it('the command "draft" asks it about a class of the studio when it is told to', async () => {
  const reader = await openReader()
  const { studio, id } = await draftClass(null)
  vi.stubEnv('REPSLATE_READER_URL', reader.url)
  vi.stubEnv('REPSLATE_READER_MODEL', 'stand-in')
  onTestFinished(() => void vi.unstubAllEnvs())
  const run = async (...more: string[]) => {
    const io = fakeIo()
    return { code: await main(['draft', '--class', id, '--data', studio.dataFolder, ...more], io), ...io.printed }
  }
  expect((await run()).code).toBe(0)
  expect(reader.keys).toEqual([])
  const { code, said } = await run('--second-reader')
  expect([code, said]).toEqual([0, expect.stringContaining('The second reader added 1 proposals; 0 were left out.')])
  expect(await proposedBy(studio, id)).toEqual([`proposed: ${CUE.text}`])
})
