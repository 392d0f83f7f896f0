// A cut clip plays in Chromium: its length, its first frame, a seek to any frame, and play to the end.
import { createReadStream, existsSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { createServer } from 'node:http'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import type { Span } from '../../shared/log-sheet.ts'
import type { ClipEntry } from '../../shared/manifest.ts'
import { buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'
import { BAR_BITS, BAR_SIZE, samplePath } from '../helpers/media-samples.ts'
import type { SampleName } from '../helpers/media-samples.ts'
import { openBrowser } from '../helpers/open-browser.ts'

const sheetOf = (spans: Span[]) =>
  buildSheet({ durationMs: 16_000, segments: [buildSegment('joined', 0, 0, { spans })] })
/** The number that each frame of the clip has in the recording. */
const numbersOf = (clip: ClipEntry, rate: number): number[] =>
  clip.spans.flatMap(({ startMs, endMs }) => {
    const [first, after] = [Math.round((startMs * rate) / 1000), Math.round((endMs * rate) / 1000)]
    return Array.from({ length: after - first }, (_, frame) => first + frame)
  })

const WHOLE = [span(2, 3), span(13, 15)]
/** Starts between key frames twice: encoded pictures, copied ones, and the same again. */
const EDGES = [span(2.4, 4.5), span(12.6, 15)]

const CASES: { sample: SampleName; rate: number; spans: Span[]; method: ClipEntry['method'] }[] = [
  { sample: 'cfr-30', rate: 30, spans: WHOLE, method: 'full' },
  { sample: 'cfr-25', rate: 25, spans: WHOLE, method: 'full' },
  { sample: 'webm', rate: 30, spans: WHOLE, method: 'full' },
  { sample: 'gop-30', rate: 30, spans: EDGES, method: 'edge' },
  { sample: 'gop-baseline', rate: 25, spans: EDGES, method: 'edge' },
]

let browser: Browser
let server: Server
let folder: string

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'repslate-browser-'))
  server = await serve(folder)
  browser = await openBrowser({ playsByItself: true })
}, 60_000)

afterAll(async () => {
  await browser?.close()
  await new Promise((resolve) => server.close(resolve))
  rmSync(folder, { recursive: true, force: true })
})

describe.each(CASES)('a clip of $sample, $method', ({ sample, rate, spans, method }) => {
  it('shows the right first frame, seeks to the right frame and plays to its end', async () => {
    const outDir = join(folder, sample)
    const { clips } = await cutRecording({ recordingPath: samplePath(sample), sheet: sheetOf(spans), outDir, jobs: 1 })
    const clip = clips[0] as ClipEntry
    const numbers = numbersOf(clip, rate)
    expect([clip.method, numbers.length]).toEqual([method, clip.frames])
    const page = await openClip(`${sample}/${clip.file}`)
    expect(await page.evaluate(() => document.querySelector('video')?.videoWidth)).toBe(320)
    expect(Math.abs((await read(page, 'duration')) - clip.durationMs / 1000)).toBeLessThan(0.05)
    expect(await shownNumber(page)).toBe(numbers[0])
    const joint = numbers.findIndex((number, frame) => frame > 0 && number !== (numbers[frame - 1] ?? 0) + 1)
    for (const frame of [joint + 20, joint - 1, joint, clip.frames - 1, 5]) {
      await seek(page, ((frame + 0.5) * clip.durationMs) / clip.frames / 1000)
      // the picture follows the end of a seek by a moment
      await expect.poll(() => shownNumber(page), { message: `frame ${frame}` }).toBe(numbers[frame])
    }
    expect(await playFrom(page, clip.durationMs / 1000 - 0.5)).toEqual({ ended: true, error: null })
    await page.close()
  })
})

async function openClip(file: string): Promise<Page> {
  const page = await browser.newPage()
  const { port } = server.address() as AddressInfo
  await page.goto(`http://127.0.0.1:${port}/`)
  await page.evaluate(
    (src) =>
      new Promise<void>((resolve, reject) => {
        const video = document.createElement('video')
        video.preload = 'auto'
        video.addEventListener('loadeddata', () => resolve())
        video.addEventListener('error', () => reject(new Error(video.error?.message)))
        video.src = src
        document.body.append(video)
      }),
    `/${file}`,
  )
  return page
}

function read(page: Page, field: 'duration' | 'currentTime'): Promise<number> {
  return page.evaluate((name) => document.querySelector('video')?.[name] ?? NaN, field)
}

function seek(page: Page, seconds: number): Promise<void> {
  return page.evaluate(
    (at) =>
      new Promise<void>((resolve) => {
        const video = document.querySelector('video')
        if (!video) return
        video.addEventListener('seeked', () => resolve(), { once: true })
        video.currentTime = at
      }),
    seconds,
  )
}

/** Reads the bar code of the frame that is shown. */
function shownNumber(page: Page): Promise<number> {
  return page.evaluate(
    ([bits, size]) => {
      const video = document.querySelector('video')
      const canvas = document.createElement('canvas')
      canvas.width = bits * size
      canvas.height = size
      const context = canvas.getContext('2d')
      if (!video || !context) return NaN
      context.drawImage(video, 0, 0)
      const middle = size / 2
      return Array.from({ length: bits }, (_, bit) => {
        const [red = 0] = context.getImageData(bit * size + middle, middle, 1, 1).data
        return red > 128 ? 2 ** bit : 0
      }).reduce((sum, value) => sum + value, 0)
    },
    [BAR_BITS, BAR_SIZE] as const,
  )
}

async function playFrom(page: Page, seconds: number): Promise<{ ended: boolean; error: string | null }> {
  await seek(page, seconds)
  return page.evaluate(
    () =>
      new Promise<{ ended: boolean; error: string | null }>((resolve) => {
        const video = document.querySelector('video')
        if (!video) return
        const done = (): void => resolve({ ended: video.ended, error: video.error?.message ?? null })
        video.addEventListener('ended', done)
        video.addEventListener('error', done)
        void video.play()
      }),
  )
}

/** A server of plain files that answers byte ranges (RFC 9110, section 14), as a browser needs for seeking. */
async function serve(root: string): Promise<Server> {
  const made = createServer((request, response) => {
    const name = decodeURIComponent(request.url ?? '/')
    if (name === '/') {
      response.setHeader('content-type', 'text/html').end('<!doctype html><title>Clip</title>')
      return
    }
    const path = join(root, name)
    if (!existsSync(path)) {
      response.writeHead(404).end()
      return
    }
    const { size } = statSync(path)
    const [, from, to] = /^bytes=(\d+)-(\d*)$/.exec(request.headers.range ?? '') ?? []
    const [start, end] = [Number(from ?? 0), to ? Number(to) : size - 1]
    response.writeHead(from === undefined ? 200 : 206, {
      'content-type': 'video/mp4',
      'accept-ranges': 'bytes',
      'content-length': end - start + 1,
      ...(from === undefined ? {} : { 'content-range': `bytes ${start}-${end}/${size}` }),
    })
    createReadStream(path, { start, end }).pipe(response)
  })
  await new Promise<void>((resolve) => made.listen(0, '127.0.0.1', resolve))
  return made
}
