// A browser is the last reader of our captions and chapters: what its text tracks hold must equal the model.
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import path from 'node:path'
import fc from 'fast-check'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildCaptions } from '../../core/captions/build-captions.ts'
import { rebaseToClip } from '../../core/captions/rebase-to-clip.ts'
import { writeVtt } from '../../core/captions/write-vtt.ts'
import { buildClassChapters } from '../../core/chapters/build-chapters.ts'
import { writeChaptersVtt } from '../../core/chapters/write-chapters-vtt.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import type { CaptionCue } from '../../shared/captions.ts'
import { LogSheet } from '../../shared/log-sheet.ts'
import type { Transcript } from '../../shared/transcript.ts'
import { captionLists, chapterLists } from '../helpers/caption-cases.ts'
import { openBrowser } from '../helpers/open-browser.ts'

interface BrowserCue {
  startMs: number
  endMs: number
  id: string
  text: string
}

let browser: Browser
let server: Server
let address = ''
/** Files the server gives out, by path. */
const files = new Map<string, string>()

beforeAll(async () => {
  server = createServer((request, response) => {
    const text = files.get(request.url ?? '')
    const type = request.url?.endsWith('.vtt') ? 'text/vtt; charset=utf-8' : 'text/html; charset=utf-8'
    response.writeHead(text === undefined ? 404 : 200, { 'content-type': type })
    response.end(text)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await new Promise((resolve) => server.close(resolve))
})

/** What the browser's tracks hold after loading the files, one track a file. */
async function load(kind: 'captions' | 'chapters', texts: readonly string[]): Promise<BrowserCue[][]> {
  texts.forEach((text, index) => files.set(`/${kind}-${index}.vtt`, text))
  const tracks = texts.map((_, index) => `<track kind="${kind}" src="/${kind}-${index}.vtt" srclang="en">`)
  files.set('/', `<!doctype html><title>Tracks</title><video>${tracks.join('')}</video>`)
  const page = await browser.newPage()
  try {
    await page.goto(address)
    return await page.evaluate(async () => {
      const read = (element: HTMLTrackElement) =>
        new Promise<BrowserCue[]>((resolve, reject) => {
          element.addEventListener('error', () => reject(new Error(`${element.src} does not load`)))
          element.addEventListener('load', () =>
            resolve(
              [...(element.track.cues ?? [])].map((cue) => ({
                startMs: Math.round(cue.startTime * 1000),
                endMs: Math.round(cue.endTime * 1000),
                id: cue.id,
                text: (cue as VTTCue).getCueAsHTML().textContent ?? '',
              })),
            ),
          )
          element.track.mode = 'hidden'
        })
      return Promise.all([...document.querySelectorAll('track')].map(read))
    })
  } finally {
    await page.close()
  }
}

const asBrowserCue = ({ startMs, endMs, id, lines }: CaptionCue): BrowserCue => ({
  startMs,
  endMs,
  id: id ?? '',
  text: lines.join('\n'),
})

const fixture = (name: string) => readFile(path.resolve(import.meta.dirname, '../fixtures', name), 'utf8')

describe('text tracks', () => {
  it('captions of a class, and of a clip with two stretches of it', async () => {
    const transcript = parseTranscript(await fixture('corpus/dev/01-kettlebell-basics/transcript.txt')) as Transcript
    const cues = buildCaptions(transcript)
    const clip = rebaseToClip(cues, [
      { startMs: 48_000, endMs: 104_321 },
      { startMs: 300_007, endMs: 340_000 },
    ])
    expect(clip.length).toBeGreaterThan(10)
    const read = await load('captions', [writeVtt(cues), writeVtt(clip)])
    expect(read).toEqual([cues.map(asBrowserCue), clip.map(asBrowserCue)])
  })

  it('captions of every nasty kind', async () => {
    const lists = fc.sample(captionLists, { numRuns: 60, seed: 11 })
    expect(await load('captions', lists.map(writeVtt))).toEqual(lists.map((list) => list.map(asBrowserCue)))
  })

  it('chapters of a class with sections', async () => {
    const sheet = LogSheet.parse({
      format: 'repslate-log-sheet',
      version: 1,
      durationMs: 60_000,
      sections: [{ title: 'Warm-up & more', startMs: 0, endMs: 30_000 }],
      segments: [
        { id: 'a', exercise: { name: 'Cat <cow>' }, spans: [{ startMs: 5000, endMs: 12_001 }] },
        {
          id: 'b',
          exercise: { name: 'Squat' },
          spans: [
            { startMs: 31_000, endMs: 40_000 },
            { startMs: 50_000, endMs: 55_000 },
          ],
        },
      ],
    })
    const [read] = await load('chapters', [writeChaptersVtt(buildClassChapters(sheet))])
    expect(read?.map(({ startMs, endMs, text }) => [startMs, endMs, text])).toEqual([
      [0, 30_000, 'Warm-up & more'],
      [5000, 12_001, 'Cat <cow>'],
      [31_000, 40_000, 'Squat'],
      [50_000, 55_000, 'Squat (again)'],
    ])
  })

  it('chapters of every nasty kind', async () => {
    const lists = fc.sample(chapterLists, { numRuns: 60, seed: 11 })
    const read = await load('chapters', lists.map(writeChaptersVtt))
    expect(read.map((cues) => cues.map(({ startMs, endMs, text }) => [startMs, endMs, text]))).toEqual(
      lists.map((list) => list.map((one) => [one.startMs, one.endMs, one.title.replace(/\s+/g, ' ')])),
    )
  })
})
