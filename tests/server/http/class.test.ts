// The class page and its edits over HTTP: forms that are wrong, edits that are overtaken, forms one by one.
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { LogSheet, Segment } from '../../../shared/log-sheet.ts'
import { buildCaution, buildCue, buildSegment, buildSheet, PROPOSED } from '../../helpers/build-sheet.ts'
import { startTestDoor } from '../../helpers/http-door.ts'
import type { Answer } from '../../helpers/http-door.ts'

let door: Awaited<ReturnType<typeof startTestDoor>>
let signed: Record<string, string>
let id: string
beforeAll(async () => {
  door = await startTestDoor()
  signed = await door.signed()
})
afterAll(async () => {
  await door.close()
  expect(door.faults).toEqual([])
})
beforeEach(async () => {
  id = await addClass(
    buildSheet({
      title: 'Monday',
      segments: [
        buildSegment('a', 30, 90, {
          ...PROPOSED,
          exercise: { name: 'Chair squats' },
          cues: [buildCue('c1', 40, PROPOSED)],
          cautions: [buildCaution('knee-pain', PROPOSED)],
        }),
        buildSegment('b', 100, 160, { exercise: { name: 'Heel raises' } }),
        buildSegment('late', 0, 0, { exercise: { name: 'Side plank' }, spans: [] }),
      ],
      classCautions: [buildCaution('dizziness', { scope: 'class', text: 'stand up slowly', atMs: 5000 })],
    }),
  )
})

async function addClass(sheet: LogSheet | null): Promise<string> {
  const { store, actor } = door.door
  const recording = await store.recordings.add({ title: 'Monday', state: 'ready', durationMs: 600_000 }, actor)
  if (sheet) await store.sheets.add({ recordingId: recording.id, sheet, actor })
  return recording.id
}
const sheetNow = async (): Promise<LogSheet> => {
  const stored = await door.door.store.sheets.readOf(id)
  if (!stored) throw new Error('There is no sheet.')
  return stored.sheet
}
const segment = async (segmentId: string): Promise<Segment | undefined> =>
  (await sheetNow()).segments.find((one) => one.id === segmentId)

const form = (fields: Record<string, string | string[]>, more: Record<string, string> = {}): Promise<Answer> =>
  door.ask(`/recordings/${id}/edits`, {
    method: 'POST',
    headers: { ...signed, 'content-type': 'application/x-www-form-urlencoded', ...more },
    body: new URLSearchParams(
      Object.entries({ baseVersion: '0', ...fields }).flatMap(([name, value]) =>
        [value].flat().map((one): [string, string] => [name, one]),
      ),
    ).toString(),
  })
const json = (address: string, body: unknown, more: Record<string, string> = {}): Promise<Answer> =>
  door.ask(address, {
    method: 'POST',
    headers: { ...signed, 'content-type': 'application/json', ...more },
    body: JSON.stringify(body),
  })

describe('refused, and nothing is written', () => {
  it.each<[string, Record<string, string>, number]>([
    ['a form that does nothing we know', { do: 'explode', segmentId: 'a' }, 400],
    ['an exercise that is not there', { do: 'dose', segmentId: 'zz', dose: '3 x 8' }, 422],
    ['a dose that cannot be read', { do: 'dose', segmentId: 'a', dose: 'plenty' }, 422],
    ['a time that is none', { do: 'edge', segmentId: 'a', span: '0', edge: 'start', at: 'soon' }, 422],
    ['an edge past the other', { do: 'edge', segmentId: 'a', span: '0', edge: 'start', at: '5:00' }, 422],
    ['an edge of a span that is not there', { do: 'edge', segmentId: 'a', span: '7', edge: 'start', by: '40' }, 422],
    ['a nudge that is no number', { do: 'edge', segmentId: 'a', span: '0', edge: 'start', by: 'far' }, 400],
    ['a waiver without a reason', { do: 'waive', segmentId: 'a', ruleId: 'dose-missing', reason: ' ' }, 422],
    ['a use that is none', { do: 'use', segmentId: 'a', use: 'perhaps' }, 400],
    ['a caution that is no JSON', { do: 'attach', said: '<b>' }, 400],
    ['a caution attached to nothing', { do: 'attach', said: '{"hazard":"fall-risk","text":"hold on","atMs":1}' }, 422],
    ['sections without names', { do: 'class', title: 'x', sections: '4:30' }, 422],
    ['an audience that is none', { do: 'class', title: 'x', audience: 'everybody' }, 400],
    ['a version that is none', { do: 'dose', segmentId: 'a', dose: '3 x 8', baseVersion: 'new' }, 400],
    ['a version that is not there yet', { do: 'dose', segmentId: 'a', dose: '3 x 8', baseVersion: '99' }, 409],
  ])('%s', async (_what, fields, status) => {
    const before = await sheetNow()
    expect((await form(fields)).status).toBe(status)
    expect(await sheetNow()).toEqual(before)
  })

  it('without the token, from elsewhere, and of a class without a draft', async () => {
    const fields = { do: 'use', segmentId: 'a', use: 'keep' }
    expect((await form(fields, { 'x-repslate-token': 'wrong' })).status).toBe(403)
    expect((await form(fields, { origin: 'http://elsewhere.example' })).status).toBe(403)
    id = await addClass(null)
    expect((await form(fields)).status).toBe(404)
    expect((await door.ask('/recordings/none')).status).toBe(404)
    expect((await door.ask('/recordings/none/checks')).status).toBe(404)
    expect((await door.ask(`/recordings/${id}/captions.vtt`)).status).toBe(404)
    expect((await door.ask(`/recordings/${id}/parts`)).status).toBe(204)
  })

  it('a batch of which one edit is wrong, as a whole', async () => {
    const edits = [
      { opId: 'x', op: { op: 'set-use', segmentId: 'a', use: 'keep' } },
      { opId: 'y', op: { op: 'set-use', segmentId: 'zz', use: 'keep' } },
    ]
    expect((await json(`/recordings/${id}/edits`, { baseVersion: 0, edits })).status).toBe(422)
    expect((await segment('a'))?.use).toBe('lesson')
  })
})

describe('a page that was overtaken', () => {
  const dose = (opId: string, text: string) => form({ do: 'dose', segmentId: 'a', dose: text, opId })

  it('gets the newest with the refusal when the same thing changed', async () => {
    expect((await dose('first', '3 x 8')).status).toBe(200)
    const answer = await dose('second', '2 x 5')
    expect(answer.status).toBe(409)
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/)
    const told = JSON.parse(answer.text) as { code: string; kept: string; version: number; parts: { segment: string } }
    expect(told).toMatchObject({ code: 'sheet-conflict', version: 1 })
    expect(told.kept).toMatch(/still on your page/)
    expect(told.parts.segment).toContain('3 x 8')
  })

  it('goes through when something else changed', async () => {
    await dose('first', '3 x 8')
    expect((await form({ do: 'use', segmentId: 'b', use: 'keep' })).status).toBe(200)
  })

  it('that sends the same twice writes it once', async () => {
    await dose('first', '3 x 8')
    expect((await dose('first', '3 x 8')).status).toBe(200)
    expect((await door.door.store.sheets.readOf(id))?.version).toBe(1)
  })

  it('is told what others did since the version it has, and nothing when it has the newest', async () => {
    await dose('first', '3 x 8')
    const behind = JSON.parse((await door.ask(`/recordings/${id}/parts?have=0`)).text) as { changed: string }
    expect(behind.changed).toBe('Changed elsewhere: dose, Chair squats.')
    expect((await door.ask(`/recordings/${id}/parts?have=1`)).status).toBe(204)
  })
})

it('undo takes back the last step, redo brings it again, each once', async () => {
  const undo = (opId: string) =>
    door.ask(`/recordings/${id}/undo`, {
      method: 'POST',
      headers: { ...signed, 'content-type': 'application/x-www-form-urlencoded' },
      body: `opId=${opId}`,
    })
  await form({ do: 'use', segmentId: 'a', use: 'keep', opId: 'u1' })
  expect((await undo('u1')).status).toBe(200)
  expect((await undo('u1')).status).toBe(200)
  expect((await segment('a'))?.use).toBe('lesson')
  expect((await undo('undo-1-u1')).status).toBe(200)
  expect((await segment('a'))?.use).toBe('keep')
  expect((await undo('nothing')).status).toBe(422)
})

describe('each form does what it says', () => {
  const CASES: [string, Record<string, string | string[]>, (sheet: LogSheet) => unknown, unknown][] = [
    [
      'a dose',
      { do: 'dose', segmentId: 'a', dose: '3 x 10, rest 60 s' },
      one('a', (s) => s?.prescription?.sets),
      { min: 3, max: 3 },
    ],
    ['no dose', { do: 'dose', segmentId: 'a', dose: '' }, one('a', (s) => s?.prescription), null],
    [
      'an in-point',
      { do: 'edge', segmentId: 'a', span: '0', edge: 'start', at: '0:31.040' },
      one('a', (s) => s?.spans[0]?.startMs),
      31_040,
    ],
    [
      'a nudge',
      { do: 'edge', segmentId: 'a', span: '0', edge: 'end', by: '-40' },
      one('a', (s) => s?.spans[0]?.endMs),
      89_960,
    ],
    [
      'a nudge before the start of the film',
      { do: 'edge', segmentId: 'a', span: '0', edge: 'start', by: '-99999' },
      one('a', (s) => s?.spans[0]?.startMs),
      0,
    ],
    [
      'another span',
      { do: 'add-span', segmentId: 'a', start: '3:00', end: '3:10' },
      one('a', (s) => s?.spans.length),
      2,
    ],
    [
      'a place for what is only planned',
      { do: 'add-span', segmentId: 'late', start: '4:00', end: '5:00' },
      one('late', (s) => s?.spans[0]),
      { startMs: 240_000, endMs: 300_000, inClip: true, lockedIn: false },
    ],
    ['out of the clip', { do: 'in-clip', segmentId: 'a', span: '0' }, one('a', (s) => s?.spans[0]?.inClip), false],
    [
      'a cut-out',
      { do: 'add-cut-out', segmentId: 'a', start: '0:40', end: '0:42', why: 'slip' },
      one('a', (s) => s?.cutOuts),
      [{ startMs: 40_000, endMs: 42_000, why: 'slip' }],
    ],
    [
      'a loop',
      { do: 'loop', segmentId: 'a', start: '0:50', end: '1:00' },
      one('a', (s) => s?.loop),
      { startMs: 50_000, endMs: 60_000 },
    ],
    [
      'a name with others',
      { do: 'rename', segmentId: 'a', name: 'Sit to stand', alsoCalled: 'Chair stand, ' },
      one('a', (s) => s?.exercise.alsoCalled),
      ['Chair stand'],
    ],
    [
      'mirrored and the view',
      {
        do: 'fields',
        segmentId: 'a',
        mirrored: 'yes',
        view: 'back',
        equipment: 'chair',
        position: '',
        sideShown: '',
        easier: '',
        harder: 'Heel raises',
      },
      one('a', (s) => [s?.mirrored, s?.view, s?.harder]),
      [true, 'back', [{ segmentId: 'b' }]],
    ],
    [
      'a cue',
      { do: 'add-cue', segmentId: 'a', kind: 'breathing', at: '0:45', words: 'breathe out' },
      one('a', (s) => s?.cues.at(-1)?.text),
      'breathe out',
    ],
    [
      'a cue moved with its end',
      { do: 'cue', segmentId: 'a', cueId: 'c1', kind: 'focus', at: '0:50', words: 'look ahead' },
      one('a', (s) => s?.cues[0]),
      { ...buildCue('c1', 50), ...PROPOSED, kind: 'focus', text: 'look ahead', origin: 'person', state: 'accepted' },
    ],
    [
      "a caution of one's own",
      { do: 'write-caution', segmentId: 'a', hazard: '', words: 'Mind the cat on the mat' },
      one('a', (s) => s?.cautions.at(-1)?.hazard),
      'mind-the-cat-on',
    ],
    [
      'a caution of the class on two lessons',
      {
        do: 'attach',
        said: JSON.stringify({ hazard: 'dizziness', text: 'stand up slowly', atMs: 5000 }),
        on: ['a', 'b'],
      },
      (s) => s.segments.map(({ cautions }) => cautions.some(({ hazard }) => hazard === 'dizziness')),
      [true, true, false],
    ],
    [
      'all that is proposed here',
      { do: 'mark', segmentId: 'a', mark: 'all', state: 'accept' },
      one('a', (s) => [s?.state, s?.cues[0]?.state, s?.cautions[0]?.state]),
      ['accepted', 'accepted', 'accepted'],
    ],
    [
      'all above a confidence',
      { do: 'accept-above', segmentId: '', confidence: '0.75' },
      one('a', (s) => s?.state),
      'accepted',
    ],
    [
      'none above a higher one',
      { do: 'accept-above', segmentId: '', confidence: '0.9' },
      one('a', (s) => s?.state),
      'proposed',
    ],
    [
      'one caution declined',
      { do: 'mark', segmentId: 'a', mark: 'caution', index: '0', hazard: 'knee-pain', state: 'decline' },
      one('a', (s) => s?.cautions[0]?.state),
      'declined',
    ],
    [
      'a new exercise',
      { do: 'add-segment', name: 'Lunge', start: '5:00', end: '6:00' },
      (s) => s.segments.find(({ exercise }) => exercise.name === 'Lunge')?.spans[0]?.startMs,
      300_000,
    ],
    ['a split', { do: 'split', segmentId: 'a', at: '1:00', newName: 'Calf raises' }, (s) => s.segments.length, 4],
    ['a join', { do: 'join', segmentId: 'a', otherId: 'b' }, (s) => s.segments.length, 2],
    [
      'a waiver, signed by who is there',
      { do: 'waive', segmentId: 'a', ruleId: 'dose-missing', reason: 'shown on screen' },
      (s) => [s.waivers[0]?.reason, s.waivers[0]?.by],
      ['shown on screen', 'Owner'],
    ],
    [
      'the class',
      { do: 'class', title: 'Tuesday', audience: ['rehab'], music: 'none', sections: '0:00 Start\n4:30 Standing' },
      (s) => [s.title, s.audience, s.music, s.sections.map(({ endMs }) => endMs)],
      ['Tuesday', ['rehab'], 'none', [270_000, 600_000]],
    ],
  ]
  it.each(CASES)('%s', async (_what, fields, read, wanted) => {
    const answer = await form(fields)
    expect([answer.status, answer.status === 200 ? '' : answer.text]).toEqual([200, ''])
    expect(read(await sheetNow())).toEqual(wanted)
  })
})

function one<Value>(segmentId: string, read: (found: Segment | undefined) => Value): (sheet: LogSheet) => Value {
  return ({ segments }) => read(segments.find(({ id: own }) => own === segmentId))
}

describe('words that were typed while the class played', () => {
  const save = (lines: unknown): Promise<Answer> =>
    door.ask(`/recordings/${id}/spoken`, {
      method: 'POST',
      headers: { ...signed, 'content-type': 'application/x-www-form-urlencoded' },
      body: new URLSearchParams({ lines: typeof lines === 'string' ? lines : JSON.stringify(lines) }).toString(),
    })
  it.each<[string, unknown]>([
    ['no JSON', '[{'],
    ['no line', []],
    ['a line without words', [{ startMs: 0, endMs: 1000, text: ' ' }]],
    ['a line that ends before it starts', [{ startMs: 2000, endMs: 1000, text: 'a' }]],
  ])('are refused: %s', async (_what, lines) => {
    expect((await save(lines)).status).toBe(400)
    expect(await door.door.store.transcripts.read(id)).toBeNull()
  })
  it('become the captions of the class, whatever is in them', async () => {
    const saved = await save([
      { startMs: 5000, endMs: 6000, text: '1 --> 2 <b>& so on' },
      { startMs: 1000, endMs: 2000, text: 'Sit tall' },
    ])
    expect([saved.status, saved.headers.location]).toEqual([303, `/recordings/${id}`])
    const { text } = await door.ask(`/recordings/${id}/captions.vtt`)
    expect(text.match(/^\d.*-->.*\n.*$/gm)?.map((block) => block.split('\n')[1])).toEqual([
      'Sit tall',
      '1 --&gt; 2 &lt;b&gt;&amp; so on',
    ])
    expect((await door.ask(`/recordings/${id}`)).text).toContain('1 --&gt; 2 &lt;b&gt;&amp; so on')
  })
})

it('reads a dose as it is typed and writes nothing', async () => {
  const read = async (text: string) =>
    (await door.ask(`/recordings/${id}/read-dose?segment=a&text=${encodeURIComponent(text)}`)).text
  expect(await read('3 x 10, rest 60 s')).toMatch(/3 sets of 10 repetitions.*Rest 1 minute/s)
  expect(await read('plenty')).toMatch(/No dose can be read/)
  expect(await read('')).toMatch(/No dose is set/)
  expect((await door.door.store.sheets.readOf(id))?.version).toBe(0)
})

it('words of a person come back as words, never as markup', async () => {
  const words = '<img src=x onerror=alert(1)> & "quotes"'
  await form({ do: 'rename', segmentId: 'a', name: words, alsoCalled: words })
  for (const page of ['', '/checks']) {
    const { status, text } = await door.ask(`/recordings/${id}${page}?segment=a`)
    expect(status).toBe(200)
    expect(text).not.toContain('<img')
    expect(text).toContain('&lt;img src=x onerror=alert(1)&gt; &amp; &quot;quotes&quot;')
  }
})
