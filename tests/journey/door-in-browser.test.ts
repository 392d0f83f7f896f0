// A browser at the studio's door: what the policy allows works, what other sites try does not.
import { execFile } from 'node:child_process'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { copyFile, mkdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import { promisify } from 'node:util'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, describe, expect, it, onTestFinished } from 'vitest'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { escapeHtml, HTMX_CONFIG } from '../../server/render.ts'
import type { AddRoutes } from '../../server/routes/routes.ts'
import { LOCAL_OWNER } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { startTestDoor } from '../helpers/http-door.ts'
import { tempFolder } from '../helpers/temp-folder.ts'
import { openBrowser } from '../helpers/open-browser.ts'

let browser: Browser
let opened: Awaited<ReturnType<typeof startTestDoor>>
const changed: string[] = []

/** A page with what ours are made of: htmx with the token on the body, events, a plain form. */
const testPage: AddRoutes = (app, door) => {
  app.get('/page', (req, res) => {
    const token = door.sessions.token(req, res)
    res.type('html').send(`<!doctype html>
<html lang="en"><head><title>Page</title>
<meta name="htmx-config" content="${escapeHtml(HTMX_CONFIG)}">
<script src="${door.assets.js('htmx')}" defer></script><script src="${door.assets.js('htmx-sse')}" defer></script>
<script type="module" src="${door.assets.js('every-page')}"></script></head>
<body hx-headers='{"X-Repslate-Token": "${token}"}'>
<div id="messages"></div>
<button id="save" hx-post="/change" hx-target="#result">Save</button>
<button id="fail" hx-post="/refused" hx-target="#result">Fail</button>
<p id="result">nothing yet</p>
<div hx-ext="sse" sse-connect="/events?topics=settings"><p id="live" hx-get="/part" hx-trigger="sse:settings">quiet</p></div>
<form method="post" action="/change"><input type="hidden" name="token" value="${token}"><button id="send">Send</button></form>
</body></html>`)
  })
  app.get('/part', (_req, res) => void res.type('html').send('something changed'))
  app.post('/change', (req, res) => {
    changed.push(req.get('sec-fetch-site') ?? '')
    res.type('html').send('saved')
  })
  app.post('/refused', () => {
    throw new AppError('sheet-spans', 'The span ends before it begins.')
  })
}

beforeAll(async () => {
  opened = await startTestDoor({ routes: [testPage] })
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
  await opened?.close()
})
beforeEach(() => void changed.splice(0))

/** A new browser profile with one page, and what its console said against the policy. */
async function openPage(): Promise<{ page: Page; violations: string[] }> {
  const context = await browser.newContext()
  onTestFinished(() => context.close())
  const page = await context.newPage()
  const violations: string[] = []
  page.on('console', (message) => {
    if (/Content Security Policy|Refused to/.test(message.text())) violations.push(message.text())
  })
  page.on('pageerror', (error) => violations.push(error.message))
  return { page, violations }
}

/** A page of another site, with this body. `localhost` is another site than 127.0.0.1. */
async function otherSite(body: string): Promise<string> {
  const server = createServer((_request, response) => {
    response.writeHead(200, { 'content-type': 'text/html' }).end(`<!doctype html><title>Other</title>${body}`)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  onTestFinished(() => {
    server.closeAllConnections()
    server.close()
  })
  return `http://localhost:${(server.address() as AddressInfo).port}/`
}

describe('a page of the studio', () => {
  it('changes things by htmx and by form, shows errors and hears of changes, without breaking the policy', async () => {
    const { page, violations } = await openPage()
    await page.goto(`${opened.url}/page`)
    await page.click('#save')
    await expect.poll(() => page.textContent('#result')).toBe('saved')
    await page.click('#fail')
    await expect.poll(() => page.textContent('#messages')).toContain('The span ends before it begins.')
    expect(await page.textContent('#result')).toBe('saved')
    await opened.door.store.settings.write('any', 1, LOCAL_OWNER)
    await expect.poll(() => page.textContent('#live'), { timeout: 15_000 }).toBe('something changed')
    await page.click('#send')
    await expect.poll(() => page.textContent('body')).toBe('saved')
    expect(changed).toEqual(['same-origin', 'same-origin'])
    expect(violations).toEqual([])
  })

  it('runs nothing that was put into it', async () => {
    const { page, violations } = await openPage()
    await page.goto(`${opened.url}/page`)
    await page.evaluate(() => {
      const script = document.createElement('script')
      script.textContent = 'document.title = "inline"'
      document.body.append(script)
      const image = document.createElement('img')
      image.src = 'http://localhost:1/spy.png'
      document.body.append(image)
    })
    await expect.poll(() => violations.length).toBeGreaterThanOrEqual(2)
    expect(await page.title()).toBe('Page')
  })

  it('gets what it missed while the connection was lost', async () => {
    const { page } = await openPage()
    await page.goto(`${opened.url}/page`)
    await page.evaluate(() => {
      const heard: string[] = []
      Object.assign(window, { heard })
      const source = new EventSource('/events?topics=settings')
      source.addEventListener('settings', (event) => {
        heard.push((JSON.parse((event as MessageEvent<string>).data) as { objectId: string }).objectId)
      })
      return new Promise((resolve) => source.addEventListener('open', resolve, { once: true }))
    })
    const heard = (): Promise<string[]> => page.evaluate(() => (window as unknown as { heard: string[] }).heard)
    await opened.door.store.settings.write('first', 1, LOCAL_OWNER)
    await expect.poll(heard, { timeout: 15_000 }).toEqual(['first'])
    opened.dropConnections()
    await opened.door.store.settings.write('missed', 1, LOCAL_OWNER)
    await expect.poll(heard, { timeout: 15_000 }).toEqual(['first', 'missed'])
  })
})

describe('another site', () => {
  it('cannot change anything by a form, a script or a picture', async () => {
    const { page } = await openPage()
    await page.goto(`${opened.url}/page`)
    const target = `${opened.url}/change`
    await page.goto(
      await otherSite(`<form method="post" action="${target}"><button id="go">Win a prize</button></form>`),
    )
    const outcome = await page.evaluate(async (address) => {
      const sent = await fetch(address, { method: 'POST', mode: 'no-cors', credentials: 'include' }).then(
        () => 'sent',
        () => 'refused',
      )
      const read = await fetch(address.replace('/change', '/session'), { credentials: 'include' }).then(
        (response) => response.text(),
        () => 'unreadable',
      )
      return { sent, read }
    }, target)
    expect(outcome.read).toBe('unreadable')
    const [answer] = await Promise.all([page.waitForResponse(target), page.click('#go')])
    expect(answer.status()).toBe(403)
    expect(changed).toEqual([])
  })

  it('cannot show the studio in a frame', async () => {
    const { page } = await openPage()
    await page.goto(await otherSite(`<iframe src="${opened.url}/page"></iframe>`))
    await page.waitForLoadState('load')
    const frame = page.frames()[1]
    expect(await frame?.locator('#save').count()).toBe(0)
  })

  it('may link to the studio without ending the session of its open pages', async () => {
    const { page } = await openPage()
    await page.goto(`${opened.url}/page`)
    const second = await page.context().newPage()
    await second.goto(await otherSite(`<a id="link" href="${opened.url}/page">The studio</a>`))
    await second.click('#link')
    await second.waitForSelector('#save')
    for (const tab of [page, second]) {
      await tab.click('#save')
      await expect.poll(() => tab.textContent('#result')).toBe('saved')
    }
  })

  it('may link to a studio that this browser has never seen', async () => {
    const { page } = await openPage()
    await page.goto(await otherSite(`<a id="link" href="${opened.url}/page">The studio</a>`))
    await page.click('#link')
    await page.waitForSelector('#save')
    await page.click('#save')
    await expect.poll(() => page.textContent('#result')).toBe('saved')
  })
})

describe('a recording', () => {
  it('plays and is searched in by ranges', async () => {
    const { ffmpeg } = await findFfmpeg()
    const clip = path.join(await tempFolder(), 'class.mp4')
    const source = ['-f', 'lavfi', '-i', 'testsrc2=size=640x360:rate=30:duration=20']
    await promisify(execFile)(ffmpeg, [
      ...source,
      '-c:v',
      'libx264',
      '-preset',
      'ultrafast',
      '-b:v',
      '6M',
      '-pix_fmt',
      'yuv420p',
      clip,
    ])
    const { store, dataFolder } = opened.door
    const recording = await store.recordings.add({ title: 'Class' }, LOCAL_OWNER)
    const file = path.join(dataFolder, 'media', 'class.mp4')
    await mkdir(path.dirname(file), { recursive: true })
    await copyFile(clip, file)
    const media = await store.media.add(
      recording.id,
      {
        role: 'part',
        fileName: 'class.mp4',
        storageKey: 'class.mp4',
        sha256: await hashFile(file),
        bytes: (await readFile(file)).length,
      },
      LOCAL_OWNER,
    )
    const { page } = await openPage()
    await page.goto(`${opened.url}/page`)
    const statuses: number[] = []
    page.on('response', (response) => {
      if (response.url().includes('/media/')) statuses.push(response.status())
    })
    const shown = await page.evaluate(async (address) => {
      const video = document.createElement('video')
      video.muted = true
      video.src = address
      document.body.append(video)
      const once = (name: string) => new Promise((resolve) => video.addEventListener(name, resolve, { once: true }))
      await once('loadeddata')
      video.currentTime = 18.5
      await once('seeked')
      return { seconds: video.currentTime, length: video.duration, ready: video.readyState }
    }, `/recordings/${recording.id}/media/${media.id}`)
    expect(shown).toMatchObject({ seconds: 18.5, length: 20 })
    expect(shown.ready).toBeGreaterThanOrEqual(2)
    expect(new Set(statuses)).toEqual(new Set([206]))
  })
})
