// The doors through which lessons leave and come as a zip: what is refused, and that nothing of it stays behind.
import { readdirSync } from 'node:fs'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addRecording } from '../../../server/actions/add-recording.ts'
import { startTestDoor } from '../../helpers/http-door.ts'

let door: Awaited<ReturnType<typeof startTestDoor>>
let signed: Record<string, string>
beforeAll(async () => {
  door = await startTestDoor({ settings: { maxUploadBytes: 2_000_000 } })
  signed = { ...(await door.signed()), accept: 'application/json' }
})
afterAll(async () => {
  expect(door.faults).toEqual([])
  await door.close()
})

const ZIP = { 'content-type': 'application/zip' }
const leftOver = (): string[] => {
  try {
    return readdirSync(path.join(door.door.settings.dataFolder, 'work'))
  } catch {
    return []
  }
}

describe('a zip that is taken in', () => {
  it.each<[string, Record<string, string>, Buffer, number]>([
    ['without the token', { 'x-repslate-token': 'wrong' }, Buffer.from('PK'), 403],
    ['from another site', { 'sec-fetch-site': 'cross-site' }, Buffer.from('PK'), 403],
    ['for another host', { host: 'studio.example' }, Buffer.from('PK'), 421],
    ['of another kind', { 'content-type': 'text/plain' }, Buffer.from('PK'), 400],
    ['that is empty', {}, Buffer.alloc(0), 400],
    ['that is larger than the studio takes', {}, Buffer.alloc(2_000_001), 413],
    ['that is none', {}, Buffer.from('PK\u0003\u0004 and nothing more'), 422],
  ])('%s is refused', async (_what, more, body, status) => {
    const headers = { ...signed, ...ZIP, 'content-length': String(body.length), ...more }
    const answer = await door.ask('/exports', { method: 'POST', headers, body }).catch(() => null)
    // one that is too long may be cut off before it could be answered
    if (answer || status !== 413) expect(answer?.status).toBe(status)
    expect(answer?.text ?? '').not.toContain(door.door.settings.dataFolder)
    expect(leftOver()).toEqual([])
  })

  it('is refused when it does not say how long it is', async () => {
    const headers = { ...signed, ...ZIP, 'transfer-encoding': 'chunked' }
    expect((await door.ask('/exports', { method: 'POST', headers, body: Buffer.from('PK') })).status).toBe(400)
  })
})

it('a class without lessons has nothing to take along, and a form of another site gets nothing', async () => {
  const { id } = await addRecording(door.door, { title: 'Empty' })
  const form = { 'content-type': 'application/x-www-form-urlencoded' }
  const ask = (headers: Record<string, string>) =>
    door.ask(`/recordings/${id}/export`, { method: 'POST', headers: { ...signed, ...form, ...headers }, body: '' })
  expect((await ask({})).status).toBe(404)
  expect((await ask({ 'x-repslate-token': 'wrong' })).status).toBe(403)
  expect((await ask({ 'sec-fetch-site': 'cross-site' })).status).toBe(403)
})
