// From a film to a drafted class in a real browser: choose, watch it arrive, say what is asked, see what it needs next.
import { readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { startServer } from '../../server/serve.ts'
import type { Running } from '../../server/serve.ts'
import { projectAssets, testSettings } from '../helpers/http-door.ts'
import { projectRoot } from '../helpers/source-files.ts'
import { tempFolder } from '../helpers/temp-folder.ts'
import { findViolations, openBrowser } from '../helpers/open-browser.ts'

const sample = (name: string): string => path.join(projectRoot, 'media-samples', name)

let browser: Browser
let running: Running
let faults: unknown[]

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser?.close())
beforeEach(async () => {
  // a list of its own: what a page left behind must not be told to the next test
  const heard: unknown[] = []
  faults = heard
  const outside = { onFault: (error: unknown) => void heard.push(error), assets: await projectAssets() }
  running = await startServer(testSettings(await tempFolder()), outside)
})
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()))
  await running.close()
  expect(faults).toEqual([])
})

async function visit(address: string, options: BrowserContextOptions = {}): Promise<{ page: Page; errors: string[] }> {
  const context = await browser.newContext(options)
  const page = await context.newPage()
  const errors: string[] = []
  page.on('console', (message) => (message.type() === 'error' ? errors.push(message.text()) : undefined))
  page.on('pageerror', (error) => errors.push(error.message))
  await page.goto(`${running.url}${address}`)
  return { page, errors }
}

const choose = (page: Page, ...files: string[]): Promise<void> => page.locator('#files').setInputFiles(files)

describe('a file that is no film', () => {
  it('is refused at its place, in words, and the page goes on', async () => {
    const { page } = await visit('/add')
    const file = path.join(await tempFolder(), 'shopping.mp4')
    await writeFile(file, 'milk and eggs')
    await choose(page, file)
    await page.getByText('The file is no MP4, MOV, 3GP, MKV, WebM, TS or AVI recording.').first().waitFor()
    expect(await findViolations(page)).toEqual([])
    await choose(page, sample('small-class.mp4'))
    await page.getByText('All of it is here.').waitFor()
  })
})

it('a film whose end is missing is told where it is added, as soon as that shows, and another can take its place', async () => {
  const { page } = await visit('/add')
  const film = await readFile(sample('steady-and-strong.mp4'))
  const file = path.join(await tempFolder(), 'cut short.mp4')
  await writeFile(file, film.subarray(0, 3_000_000))
  await choose(page, file)
  await page.getByText('All of it is here.').waitFor()
  await expect.poll(() => new URL(page.url()).pathname).toMatch(/^\/add\/./)
  await page.reload()
  await page.getByText(/^\s*The recording is cut short: it says 7:48 but ends at/).waitFor()
  expect(await findViolations(page)).toEqual([])
  await choose(page, sample('small-class.mp4'))
  await page.getByText('All of it is here.').waitFor()
  await page.goto(running.url)
  await page.getByText('0:24').waitFor()
  expect(await page.locator('.finding').count()).toBe(0)
})

describe('adding a class', () => {
  it('takes the film, keeps what is said, drafts from the words and says what comes next', async () => {
    const { page, errors } = await visit('/')
    expect(await findViolations(page)).toEqual([])
    await page.getByRole('main').getByRole('link', { name: 'Add a class' }).click()
    await choose(page, sample('steady-and-strong.mp4'))
    await page.getByText('All of it is here.').waitFor()
    await expect.poll(() => new URL(page.url()).pathname).toMatch(/^\/add\/[a-z0-9]{24}$/)
    expect(await page.getByLabel('Title').inputValue()).toBe('steady and strong')
    await page.getByLabel('Title').fill('Steady and strong')
    await page.getByLabel('Older adults').check()
    await page.getByLabel('The instructor only').check()
    await page.getByLabel('None', { exact: true }).check()
    await page.getByLabel('Kit', { exact: true }).fill('chair, band')
    await page.getByLabel('Keep these answers as a kind of class').fill('Chair class')
    await page.locator('#transcript-file').setInputFiles(sample('steady-and-strong.vtt'))
    await expect.poll(() => page.locator('#transcript').inputValue()).toMatch(/^WEBVTT/)
    expect(await findViolations(page)).toEqual([])
    await page.getByRole('button', { name: 'Save' }).click()
    await page.getByRole('heading', { name: 'Classes', level: 1 }).waitFor()
    // the shelf follows the jobs by itself
    await page.getByRole('link', { name: /^Look through the draft/ }).waitFor({ timeout: 60_000 })
    await page.locator('.ribbon').waitFor()
    await expect.poll(() => page.locator('.progress').count(), { timeout: 60_000 }).toBe(0)
    expect(await page.locator('.shelf-row').innerText()).toMatch(/7:48.*\d+ exercises.*\d+ of \d+ cautions covered/s)
    expect(await findViolations(page)).toEqual([])
    const [recording] = await running.studio.store.recordings.list()
    expect(recording).toMatchObject({
      audience: ['older-adults'],
      people: [],
      music: 'none',
      equipment: ['chair', 'band'],
    })
    await page.goto(`${running.url}/jobs`)
    expect(await page.locator('tbody tr').count()).toBe(2)
    expect(await findViolations(page)).toEqual([])
    // the next class of this kind is filled in
    await page.goto(`${running.url}/add`)
    await page.getByLabel('Kind of class', { exact: true }).selectOption('Chair class')
    expect(await page.getByLabel('Older adults').isChecked()).toBe(true)
    expect(errors).toEqual([])
  })

  it('sends several files, each for what it is', async () => {
    const { page } = await visit('/add')
    await choose(page, sample('small-class.mp4'), sample('steady-and-strong.mp4'))
    await page.getByLabel('What steady-and-strong.mp4 is').selectOption('camera')
    await page.getByRole('button', { name: 'Send these files' }).click()
    await expect.poll(() => page.getByText('All of it is here.').count(), { timeout: 60_000 }).toBe(2)
    const recordings = await running.studio.store.recordings.list()
    expect(recordings).toHaveLength(1)
    const files = await running.studio.store.media.list(recordings[0]?.id ?? '')
    expect(files.map(({ role, fileName }) => [role, fileName])).toEqual([
      ['part', 'small-class.mp4'],
      ['camera', 'steady-and-strong.mp4'],
    ])
  })

  it('pauses, goes on, and goes on again after the page was closed', async () => {
    const context = await browser.newContext()
    const page = await context.newPage()
    const session = await context.newCDPSession(page)
    await session.send('Network.enable')
    const slow = { offline: false, latency: 0, downloadThroughput: -1, uploadThroughput: 700_000 }
    await session.send('Network.emulateNetworkConditions', slow)
    await page.goto(`${running.url}/add`)
    await choose(page, sample('steady-and-strong.mp4'))
    await page.getByText(/of 8 MB/).waitFor()
    await page.getByRole('button', { name: 'Pause' }).click()
    await page.getByText('Paused. What arrived is kept.').waitFor()
    expect(await findViolations(page)).toEqual([])
    await page.getByRole('button', { name: 'Go on' }).click()
    await page.getByText(/of 8 MB/).waitFor()
    const address = page.url()
    page.on('dialog', (dialog) => void dialog.accept())
    await page.close({ runBeforeUnload: false })
    const later = await context.newPage()
    const heads: number[] = []
    later.on('response', (answer) => {
      if (answer.request().method() === 'HEAD') heads.push(Number(answer.headers()['upload-offset']))
    })
    await later.goto(address)
    await choose(later, sample('steady-and-strong.mp4'))
    await later.getByText('All of it is here.').waitFor()
    expect(heads[0]).toBeGreaterThan(0)
    expect(await running.studio.store.recordings.list()).toHaveLength(1)
  })

  it('proposes from the sound where there are no words', async () => {
    const { page } = await visit('/add')
    await choose(page, sample('steady-and-strong.mp4'))
    await page.getByText('All of it is here.').waitFor()
    const [recording] = await running.studio.store.recordings.list()
    const id = recording?.id ?? ''
    await expect
      .poll(async () => (await running.studio.store.jobs.list({ recordingId: id }))[0]?.state, { timeout: 60_000 })
      .toBe('done')
    await page.goto(`${running.url}/add/${id}`)
    await page.getByRole('button', { name: 'Propose from the sound' }).click()
    await expect
      .poll(async () => (await running.studio.store.sheets.readOf(id))?.sheet.segments.length)
      .toBeGreaterThan(3)
  })

  it('can be said without scripts, and read on a phone', async () => {
    const { page } = await visit('/add', { javaScriptEnabled: false, viewport: { width: 390, height: 844 } })
    await page.getByLabel('Title').fill('Monday')
    await page.getByLabel('Beginners').check()
    await page.getByLabel('Others too').check()
    await page.getByLabel('Name').first().fill('Ada')
    await page.getByLabel('Being shown').first().selectOption('Agreed')
    await page.getByRole('button', { name: 'Save' }).click()
    await page.getByRole('heading', { name: 'Monday' }).waitFor()
    const [recording] = await running.studio.store.recordings.list()
    expect(recording?.people).toMatchObject([{ name: 'Ada', consent: 'given', under18: false }])
    const wide = await page.evaluate(() => document.documentElement.scrollWidth)
    expect(wide).toBeLessThanOrEqual(390)
  })
})
