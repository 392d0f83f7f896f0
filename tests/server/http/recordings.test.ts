// What is said of a recording, over HTTP: forms that are wrong, answers that are kept, pieces that are not made yet.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addRecording } from '../../../server/actions/add-recording.ts'
import { peaksKey } from '../../../server/storage/media-keys.ts'
import { startTestDoor } from '../../helpers/http-door.ts'
import type { Answer } from '../../helpers/http-door.ts'

let door: Awaited<ReturnType<typeof startTestDoor>>
let signed: Record<string, string>
beforeAll(async () => {
  door = await startTestDoor()
  signed = await door.signed()
})
afterAll(() => door.close())

const newClass = async (): Promise<string> => (await addRecording(door.door, { title: 'A class' })).id
const post = (address: string, body: string, more: Record<string, string> = {}): Promise<Answer> =>
  door.ask(address, {
    method: 'POST',
    headers: { ...signed, 'content-type': 'application/x-www-form-urlencoded', ...more },
    body,
  })

describe('refused', () => {
  it.each([
    ['no title', 'title=', 400],
    ['a title of blanks', 'title=+++', 400],
    ['an audience that is none', 'title=a&audience=everybody', 400],
    ['music that is none', 'title=a&music=loud', 400],
    ['others in the picture, without a name', 'title=a&shown=others&personName=', 400],
    ['a day that is none', 'title=a&shown=others&personName=Ada&personUntil=soon', 400],
    ['a kind that is not there', 'title=a&kindId=none', 404],
    ['a transcript whose times go back', 'title=a&transcript=' + encodeURIComponent('[1:00] one\n[0:10] two'), 422],
  ])('%s', async (_what, body, status) => {
    const id = await newClass()
    expect((await post(`/recordings/${id}/words`, body)).status).toBe(status)
  })

  it('words for a class that is not there, and without the token', async () => {
    expect((await post('/recordings/none/words', 'title=a')).status).toBe(404)
    expect((await post('/recordings', 'title=a', { 'x-repslate-token': 'wrong' })).status).toBe(403)
  })

  it.each(['peaks/100', 'peaks/7', 'peaks/..%2f..%2fsecret', 'thumbs/0', 'thumbs/-1', 'speech', 'preview'])(
    'a piece that is not there: %s',
    async (piece) => {
      const id = await newClass()
      expect([400, 404]).toContain((await door.ask(`/recordings/${id}/${piece}`)).status)
    },
  )
})

describe('kept', () => {
  it('every answer, and none that was not given', async () => {
    const id = await newClass()
    const nothing = await post(`/recordings/${id}/words`, 'title=Quiet')
    expect(nothing.status).toBe(200)
    expect(await door.door.store.recordings.read(id)).toMatchObject({ audience: null, music: null, people: null })
    const said =
      'title=Loud&audience=rehab&audience=beginners&equipment=mat,+band&music=own&shown=others' +
      '&personName=Ada&personConsent=given&personUntil=2027-01-31&personAge=under-18' +
      '&personName=&personConsent=unknown&personUntil=&personAge=adult&keepAs=Tuesdays'
    expect((await post(`/recordings/${id}/words`, said)).status).toBe(200)
    const now = await door.door.store.recordings.read(id)
    expect(now).toMatchObject({
      ...{ title: 'Loud', audience: ['rehab', 'beginners'], equipment: ['mat', 'band'], music: 'own' },
      people: [{ name: 'Ada', consent: 'given', untilUtc: Date.UTC(2027, 1, 1) - 1, under18: true }],
    })
    // who is in the picture is asked anew for each film
    expect(await door.door.store.kinds.list()).toMatchObject([{ id: now.kindId, title: 'Tuesdays', people: null }])
    expect((await door.ask('/add')).text).toContain('Tuesdays')
  })

  it('a plan of the class, and the draft is asked for once', async () => {
    const id = await newClass()
    const body = 'title=a&transcript=' + encodeURIComponent('Chair squats - 3 x 12\nWall push-ups - 2 x 10')
    await post(`/recordings/${id}/words`, body)
    await post(`/recordings/${id}/words`, body)
    expect((await door.door.store.transcripts.read(id))?.form).toBe('plan')
    expect(await door.door.store.jobs.list({ recordingId: id })).toMatchObject([{ kind: 'draft', state: 'queued' }])
  })

  it('the answers also where the transcript cannot be read', async () => {
    const id = await newClass()
    expect((await post(`/recordings/${id}/words`, 'title=Kept&transcript=[1:00]+a%0A[0:10]+b')).status).toBe(422)
    expect((await door.door.store.recordings.read(id)).title).toBe('Kept')
  })

  it('a class that was taken from the shelf is not on it', async () => {
    const id = await newClass()
    expect((await door.ask('/')).text).toContain(`/add/${id}`)
    expect((await post(`/recordings/${id}/remove`, '')).status).toBe(303)
    expect((await door.ask('/')).text).not.toContain(`/add/${id}`)
  })
})

it('pieces are given as soon as they are made, in ranges', async () => {
  const id = await newClass()
  const { store, storage, actor } = door.door
  const key = `recordings/${id}/files/f1`
  const media = await store.media.add(id, { role: 'part', fileName: 'a.mp4', storageKey: key }, actor)
  await storage.putBytes(peaksKey(id, media.id, 20), Uint8Array.from([1, 2, 3, 4]))
  const { status, body } = await door.ask(`/recordings/${id}/peaks/20`, { headers: { range: 'bytes=1-2' } })
  expect([status, [...body]]).toEqual([206, [2, 3]])
})
