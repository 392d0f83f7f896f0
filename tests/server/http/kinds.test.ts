// Kinds of class in the browser: said once, lent to each class of it, and what is said reaches the checks.
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { addRecording, changeRecording } from '../../../server/actions/add-recording.ts'
import { showRecording } from '../../../server/actions/show-shelf.ts'
import { LogSheet } from '../../../shared/log-sheet.ts'
import { startTestDoor } from '../../helpers/http-door.ts'
import type { Answer } from '../../helpers/http-door.ts'

let door: Awaited<ReturnType<typeof startTestDoor>>
let signed: Record<string, string>
beforeAll(async () => {
  door = await startTestDoor()
})
afterAll(() => door.close())
beforeEach(async () => {
  signed = await door.signed()
})

const post = (address: string, fields: [string, string][]): Promise<Answer> =>
  door.ask(address, {
    method: 'POST',
    headers: { ...signed, 'content-type': 'application/x-www-form-urlencoded', accept: 'application/json' },
    body: new URLSearchParams(fields).toString(),
  })
const page = async (address: string): Promise<string> =>
  (await door.ask(address, { headers: { accept: 'text/html' } })).text

const MAX: [string, string][] = [
  ['shown', 'others'],
  ['personName', 'Max <b>'],
  ['personScope', 'members only'],
  ['personConsent', 'given'],
  ['personUntil', '2027-06-30'],
  ['personAge', 'under-18'],
  ['personName', ''],
]

describe('a kind of class', () => {
  it.each<[string, [string, string][], number]>([
    ['without a name', [['title', ' ']], 400],
    [
      'for nobody we know',
      [
        ['title', 'X'],
        ['audience', 'cats'],
      ],
      400,
    ],
    [
      'with others in the picture and no names',
      [
        ['title', 'X'],
        ['shown', 'others'],
      ],
      400,
    ],
  ])('%s is refused', async (_what, fields, status) => {
    expect((await post('/kinds', fields)).status).toBe(status)
    expect(await door.door.store.kinds.list()).toEqual([])
  })

  it('keeps people with consent, scope, end and age, and shows them', async () => {
    expect(await page('/kinds')).toContain('Say it once')
    const fields: [string, string][] = [
      ['title', 'Monday chair'],
      ['equipment', 'chair, band'],
      ['music', 'licensed'],
      ...MAX,
    ]
    expect((await post('/kinds', fields)).status).toBe(303)
    const [kind] = await door.door.store.kinds.list()
    expect(kind).toMatchObject({ title: 'Monday chair', audience: [], equipment: ['chair', 'band'], music: 'licensed' })
    const untilUtc = Date.UTC(2027, 5, 30, 23, 59, 59, 999)
    const max = { name: 'Max <b>', consent: 'given', scope: 'members only', untilUtc, under18: true }
    expect(kind?.people).toEqual([max])
    const list = await page('/kinds')
    expect(list).toContain('Max &lt;b&gt; (agreed until 2027-06-30, members only, under 18)')
    expect(list).toContain('Audience is asked each time')
    const form = await page(`/kinds/${kind?.id}`)
    for (const value of ['value="members only"', 'value="2027-06-30"', 'value="under-18" selected']) {
      expect(form).toContain(value)
    }
  })

  it('changed in two tabs keeps the first and tells the second', async () => {
    const [kind] = await door.door.store.kinds.list()
    const change = (title: string): Promise<Answer> =>
      post(`/kinds/${kind?.id}`, [
        ['title', title],
        ['rowVersion', '1'],
        ['shown', 'nobody'],
      ])
    expect((await change('First')).status).toBe(303)
    expect((await change('Second')).status).toBe(409)
    expect((await door.door.store.kinds.list()).map(({ title }) => title)).toEqual(['First'])
  })

  it('that leaves the audience open leaves it to be asked with each class', async () => {
    const [kind] = await door.door.store.kinds.list()
    const { audience, people } = await addRecording(door.door, { title: 'May 4', kindId: kind?.id ?? '' })
    expect([audience, people]).toEqual([null, []])
    expect(await page('/')).toContain('Add its film')
  })

  it('taken away leaves its classes as they are', async () => {
    const [kind] = await door.door.store.kinds.list()
    expect((await post(`/kinds/${kind?.id}/remove`, [])).status).toBe(303)
    expect(await door.door.store.kinds.list()).toEqual([])
    expect((await door.door.store.recordings.list()).map(({ kindId }) => kindId)).toEqual([kind?.id])
  })
})

it('who is in the picture and the music reach the checks of a class that is marked already', async () => {
  const { id } = await addRecording(door.door, { title: 'A class', audience: ['general'] })
  const sheet = LogSheet.parse({
    format: 'repslate-log-sheet',
    version: 1,
    durationMs: 60_000,
    people: [],
    music: 'none',
  })
  await door.door.store.sheets.add({ recordingId: id, sheet, actor: door.door.actor })
  const rules = async (): Promise<string[]> =>
    ((await showRecording(door.door, id)).work?.report.findings ?? [])
      .filter(({ ruleId }) => /person|music/.test(ruleId))
      .map(({ ruleId, severity }) => `${ruleId} ${severity}`)
  expect(await rules()).toEqual([])
  const people = [{ name: 'Ann', consent: 'withdrawn' as const, scope: null, untilUtc: null, under18: false }]
  await changeRecording(door.door, { recordingId: id, people, music: 'unknown' })
  expect((await rules()).sort()).toEqual(['music-unknown stop', 'person-without-consent stop'])
})
