/** Plays clips in Chromium: shows frames by number, plays to the end, says what went wrong. */
import { createReadStream, statSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { BAR_BITS, BAR_SIZE } from './media-samples.ts'
import { openBrowser } from './open-browser.ts'

export interface Played {
  durationMs: number
  /** The bar code of each frame that was asked for. */
  numbers: number[]
  ended: boolean
  error: string | null
}

export interface ClipPlayer {
  /** Seeks to the middle of each frame (numbers from 0), then plays the last 0.4 s. */
  play: (path: string, frames: readonly number[], clip: { frames: number; durationMs: number }) => Promise<Played>
  close: () => Promise<void>
}

export async function openClipPlayer(): Promise<ClipPlayer> {
  let served = ''
  const server = createServer((request, response) => {
    if (request.url === '/') {
      response.setHeader('content-type', 'text/html').end('<!doctype html><title>Clip</title>')
      return
    }
    const { size } = statSync(served)
    // RFC 9110, section 14: a browser asks for ranges when it seeks
    const [, from, to] = /^bytes=(\d+)-(\d*)$/.exec(request.headers.range ?? '') ?? []
    const [start, end] = [Number(from ?? 0), to ? Number(to) : size - 1]
    const range = from === undefined ? {} : { 'content-range': `bytes ${start}-${end}/${size}` }
    const headers = { 'content-type': 'video/mp4', 'accept-ranges': 'bytes', 'content-length': end - start + 1 }
    response.writeHead(from === undefined ? 200 : 206, { ...headers, ...range })
    createReadStream(served, { start, end }).pipe(response)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`
  const browser = await openBrowser({ playsByItself: true })
  return {
    play: async (path, frames, clip) => {
      served = path
      const page = await browser.newPage()
      try {
        await page.goto(address)
        const moments = frames.map((frame) => ((frame + 0.5) * clip.durationMs) / clip.frames / 1000)
        return await page.evaluate(playInPage, [`${address}clip.mp4`, moments, BAR_BITS, BAR_SIZE] as const)
      } finally {
        await page.close()
      }
    },
    close: async () => {
      await browser.close()
      server.closeAllConnections()
      await new Promise((resolve) => server.close(resolve))
    },
  }
}

/** Runs in the page. */
async function playInPage([source, moments, bits, size]: readonly [string, readonly number[], number, number]) {
  const video = document.createElement('video')
  const canvas = document.createElement('canvas')
  canvas.width = bits * size
  canvas.height = size
  const context = canvas.getContext('2d', { willReadFrequently: true })
  const once = (event: string): Promise<void> =>
    new Promise((resolve) => {
      video.addEventListener(event, () => resolve(), { once: true })
      video.addEventListener('error', () => resolve(), { once: true })
    })
  const readNumber = (): number => {
    context?.drawImage(video, 0, 0)
    return Array.from({ length: bits }, (_, bit) => {
      const [red = 0] = context?.getImageData(bit * size + size / 2, size / 2, 1, 1).data ?? []
      return red > 128 ? 2 ** bit : 0
    }).reduce((sum, value) => sum + value, 0)
  }
  const seek = async (seconds: number): Promise<void> => {
    const done = once('seeked')
    // the picture of a seek is handed over a moment after its event
    const shown = new Promise<void>((resolve) => video.requestVideoFrameCallback(() => resolve()))
    video.currentTime = seconds
    await done
    if (!video.error) await Promise.race([shown, new Promise((resolve) => setTimeout(resolve, 2000))])
  }
  video.preload = 'auto'
  video.muted = true
  video.src = source
  document.body.append(video)
  await once('loadeddata')
  const numbers: number[] = []
  for (const moment of video.error ? [] : moments) {
    await seek(moment)
    numbers.push(readNumber())
  }
  if (!video.error) {
    await seek(Math.max(0, video.duration - 0.4))
    const end = once('ended')
    await video.play()
    await end
  }
  return { durationMs: video.duration * 1000, numbers, ended: video.ended, error: video.error?.message ?? null }
}
