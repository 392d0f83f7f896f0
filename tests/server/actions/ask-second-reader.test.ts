// A second reader only proposes: its answer is held to the schema and to exact words; faults leave the draft as it is.
// The stand-in speaks the protocol of chat completions over real HTTP.
import { createServer } from 'node:http'
import type { IncomingMessage, ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterEach, describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { mergeDraft } from '../../../core/segments/merge-draft.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { askSecondReader } from '../../../server/actions/ask-second-reader.ts'
import { readSecondReader } from '../../../shared/second-reader.ts'
import type { Transcript } from '../../../shared/transcript.ts'

const TEXT = `[0:00] First exercise is the goblet squat. Hold the bell at your chest. Sit down between your heels and stand up.
[0:20] The mirror is your friend here. Three sets of eight.`
const transcript = parseTranscript(TEXT, { durationMs: 60_000 }) as Transcript
const sheet = draftSheet({ transcript })

let close: () => void = () => undefined
afterEach(() => close())

type Answer = (request: IncomingMessage, body: string, response: ServerResponse) => void

async function readerThat(answer: Answer, timeoutMs = 2000) {
  const server = createServer((request, response) => {
    let body = ''
    request.on('data', (part) => (body += String(part)))
    request.on('end', () => answer(request, body, response))
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  close = () => {
    server.closeAllConnections()
    server.close()
  }
  const { port } = server.address() as AddressInfo
  return { url: `http://127.0.0.1:${port}/v1`, model: 'stand-in', key: 'a-key', timeoutMs }
}

const completion = (content: string) => JSON.stringify({ choices: [{ message: { role: 'assistant', content } }] })
const sends =
  (text: string, status = 200): Answer =>
  (_request, _body, response) =>
    void response.writeHead(status, { 'content-type': 'application/json' }).end(text)

describe('askSecondReader', () => {
  it.each<[string, Answer]>([
    ['a refusal', sends('{}', 401)],
    ['no JSON', sends('hello')],
    ['no choices', sends('{"choices":[]}')],
    ['an answer that is no JSON', sends(completion('Sure! Here you are'))],
    ['an unknown kind', sends(completion('{"cues":[{"segmentId":"seg-1","kind":"joke","text":"Three sets"}]}'))],
    ['more than 2 MB', sends(completion('x'.repeat(3_000_000)))],
    ['a redirect', (_q, _b, response) => void response.writeHead(302, { location: 'http://127.0.0.1:1/' }).end()],
    ['a dropped line', (request) => void request.socket.destroy()],
  ])('is of no use with %s', async (_what, answer) => {
    const settings = await readerThat(answer)
    await expect(askSecondReader(settings, transcript.lines, sheet)).rejects.toMatchObject({ code: 'second-reader' })
  })

  it('is not waited for longer than the settings say', async () => {
    const settings = await readerThat(() => undefined, 100)
    await expect(askSecondReader(settings, transcript.lines, sheet)).rejects.toThrow('did not answer in time')
  })

  it('speaks chat completions, with the key as a bearer token', async () => {
    let seen: { url: string | undefined; key: string | undefined; body: Record<string, unknown> } | null = null
    const settings = await readerThat((request, body, response) => {
      seen = { url: request.url, key: request.headers.authorization, body: JSON.parse(body) as Record<string, unknown> }
      response.end(completion('{}'))
    })
    await askSecondReader(settings, transcript.lines, sheet)
    expect(seen).toMatchObject({
      url: '/v1/chat/completions',
      key: 'Bearer a-key',
      body: { model: 'stand-in', temperature: 0, response_format: { type: 'json_object' } },
    })
  })

  it('adds exact words as proposals and leaves out the rest', async () => {
    const answer = {
      cues: [
        { segmentId: 'seg-1', kind: 'focus', text: 'The mirror is your friend here' },
        { segmentId: 'seg-1', kind: 'focus', text: 'the mirror is your friend' },
        { segmentId: 'nobody', kind: 'focus', text: 'Three sets' },
      ],
      cautions: [
        { segmentId: 'seg-1', hazard: 'knee-tracking', text: 'Knees over the toes' },
        { segmentId: 'seg-1', hazard: 'made-up', text: 'Three sets of eight' },
      ],
    }
    const settings = await readerThat(sends(completion('```json\n' + JSON.stringify(answer) + '\n```')))
    const reading = await askSecondReader(settings, transcript.lines, sheet)
    expect(reading).toMatchObject({ added: 1, refused: 4 })
    const added = reading.sheet.segments[0]?.cues.filter((cue) => cue.ruleId === 'second-reader')
    expect(added).toEqual([
      expect.objectContaining({
        text: 'The mirror is your friend here',
        startMs: 20_000,
        state: 'proposed',
        origin: 'draft',
        confidence: 0.5,
      }),
    ])
  })

  it('does not bring back what a person declined', async () => {
    const answer = { cues: [{ segmentId: 'seg-1', kind: 'focus', text: 'The mirror is your friend here' }] }
    const settings = await readerThat(sends(completion(JSON.stringify(answer))))
    const { sheet: first } = await askSecondReader(settings, transcript.lines, sheet)
    const declined = {
      ...first,
      segments: first.segments.map((segment) => ({
        ...segment,
        cues: segment.cues.map((cue) =>
          cue.ruleId === 'second-reader' ? { ...cue, state: 'declined' as const } : cue,
        ),
      })),
    }
    const { sheet: again } = await askSecondReader(settings, transcript.lines, sheet)
    const cues = mergeDraft(declined, again).segments[0]?.cues.filter((cue) => cue.ruleId === 'second-reader')
    expect(cues?.map(({ state }) => state)).toEqual(['declined'])
  })
})

describe('readSecondReader', () => {
  it('is off by default', () => {
    expect(readSecondReader({})).toBeNull()
  })

  it.each([
    [{ REPSLATE_READER_URL: 'file:///etc/passwd', REPSLATE_READER_MODEL: 'm' }],
    [{ REPSLATE_READER_URL: 'http://127.0.0.1:1/v1' }],
    [{ REPSLATE_READER_URL: 'http://127.0.0.1:1/v1', REPSLATE_READER_MODEL: 'm', REPSLATE_READER_TIMEOUT_MS: '5' }],
  ])('refuses %j', (env) => {
    expect(() => readSecondReader(env)).toThrow(expect.objectContaining({ code: 'setting-wrong' }))
  })

  it('reads address, model and key', () => {
    const env = { REPSLATE_READER_URL: 'http://127.0.0.1:1/v1', REPSLATE_READER_MODEL: 'm', REPSLATE_READER_KEY: 'k' }
    const read = readSecondReader(env)
    expect(read).toMatchObject({ url: 'http://127.0.0.1:1/v1', model: 'm', timeoutMs: 120_000 })
    expect(read?.key).toBe('k')
  })
})
