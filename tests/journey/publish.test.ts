// Publishing in a real browser: eight lessons of a class, one replaced at its address, withdrawn, brought back.
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startServer } from '../../server/serve.ts'
import type { Running } from '../../server/serve.ts'
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { projectAssets, testSettings } from '../helpers/http-door.ts'
import { seedSmallClass } from '../helpers/seeded-studio.ts'
import { findViolations, openBrowser } from '../helpers/open-browser.ts'

/** The last has no dose. */
const EXERCISES = [
  ...['Arm circles', 'Shoulder rolls', 'Neck turns', 'Wrist circles', 'Elbow bends', 'Finger taps', 'Palm presses'],
  ...['Hand squeezes', 'Ankle circles'],
]

let browser: Browser
let running: Running
let folder = ''
let address = ''
const faults: unknown[] = []

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'repslate-test-'))
  const outside = { onFault: (error: unknown) => void faults.push(error), assets: await projectAssets() }
  running = await startServer(testSettings(folder), outside)
  const { recordingId } = await seedSmallClass(running.studio, { exercises: EXERCISES })
  address = `/recordings/${recordingId}/publish`
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
  await running?.close()
  await rm(folder, { recursive: true, force: true })
  expect(faults).toEqual([])
})

async function visit(where: string, options: BrowserContextOptions = {}): Promise<{ page: Page; errors: string[] }> {
  const context = await browser.newContext(options)
  const page = await context.newPage()
  const errors: string[] = []
  page.on('console', (message) => (message.type() === 'error' ? errors.push(message.text()) : undefined))
  page.on('pageerror', (error) => errors.push(error.message))
  await page.goto(`${running.url}${where}`)
  return { page, errors }
}

const row = (page: Page, name: string) =>
  page.locator('.shelf-row', { has: page.getByRole('heading', { name, exact: true }) })
const group = (page: Page, name: string) => page.getByRole('heading', { name, level: 2 })
const lessonNames = async (): Promise<string[]> => {
  const { page } = await visit('/library')
  const names = await page.locator('.card-name').allInnerTexts()
  await page.context().close()
  return names
}

describe('publishing, in this order', () => {
  it('says what is ready and what is held back with its reason, and publishes with one button', async () => {
    const { page, errors } = await visit(address)
    expect(await group(page, 'Held back (1)').count()).toBe(1)
    expect(await row(page, 'Ankle circles').locator('.finding').innerText()).toMatch(/No dose is said/)
    const button = page.getByRole('button', { name: 'Publish 8 lessons' })
    await page.getByLabel('Publish as: Hand squeezes').selectOption('Not now')
    await page.getByRole('button', { name: 'Publish 7 lessons' }).waitFor()
    await page.getByLabel('Publish as: Hand squeezes').selectOption('A lesson of its own')
    await button.click()
    await page.getByRole('heading', { name: 'Publishing', exact: true }).waitFor()
    // the page follows the work by itself
    await group(page, 'Already in the library (8)').waitFor({ timeout: 120_000 })
    await expect
      .poll(() => page.locator('#publishing').innerText(), { timeout: 60_000 })
      .toContain('Last time: 8 lessons')
    expect(await group(page, 'Held back (1)').count()).toBe(1)
    // the figures above follow, too
    expect(await page.locator('.slate-fact').allInnerTexts()).toEqual([
      expect.stringMatching(/^Ready\s+0$/),
      expect.stringMatching(/^Held back\s+1$/),
      expect.stringMatching(/^In the library\s+8$/),
    ])
    expect(await lessonNames()).toHaveLength(8)
    expect(errors).toEqual([])
  })

  it('puts another exercise in the place of a lesson: address and links stay', async () => {
    const { page } = await visit(address)
    const arms = row(page, 'Arm circles')
    await arms.locator('summary').click()
    const choice = arms.getByLabel('Publish as')
    const label = (await choice.locator('option').allInnerTexts()).find((text) => text.startsWith('In place of')) ?? ''
    const slug = /\/lessons\/([\w-]+)$/.exec(label)?.[1] ?? ''
    await choice.selectOption(label)
    await page.getByRole('button', { name: 'Publish 1 lesson' }).click()
    await expect
      .poll(async () => (await running.studio.store.lessons.readAt(slug))?.currentVersion, { timeout: 60_000 })
      .toBe(2)
    const { page: lesson } = await visit(`/lessons/${slug}`)
    expect(await lesson.locator('h1').innerText()).toMatch(/arm circles/i)
    const film = lesson.locator('video')
    await expect.poll(() => film.evaluate((one: HTMLVideoElement) => one.readyState)).toBeGreaterThan(0)
    expect(await film.evaluate((one: HTMLVideoElement) => one.currentSrc)).toContain(`/lessons/${slug}/clip.mp4?v=2`)
  })

  it('loses nothing that was opened or typed while it follows the work of others', async () => {
    const { page } = await visit(address)
    const elbows = row(page, 'Elbow bends')
    await elbows.locator('summary').click()
    const why = elbows.getByLabel('Why (for your own log)')
    await why.fill('the sound is')
    const { store, actor } = running.studio
    const other = await store.lessons.readAt('neck-turns')
    await store.lessons.withdraw(other?.id ?? '', 'elsewhere', actor)
    await row(page, 'Neck turns').getByText('Withdrawn', { exact: true }).waitFor()
    await store.lessons.chooseVersion(other?.id ?? '', 1, actor)
    await row(page, 'Neck turns').getByText('Published as it is').waitFor()
    expect(await why.inputValue()).toBe('the sound is')
    await page.keyboard.type(' wrong')
    expect(await why.inputValue()).toBe('the sound is wrong')
  })

  it('takes a lesson from the members at once, and brings it back as it was', async () => {
    const { page, errors } = await visit(address)
    const fingers = row(page, 'Finger taps')
    await fingers.locator('summary').click()
    await fingers.getByLabel('Why (for your own log)').fill('filmed again')
    await fingers.getByRole('button', { name: 'Withdraw now' }).click()
    await fingers.getByText('Withdrawn', { exact: true }).waitFor()
    const { page: member } = await visit('/lessons/finger-taps')
    expect(await member.locator('h1').innerText()).toMatch(/was withdrawn/)
    // no fault of anybody: no number, no code
    expect(await member.locator('main').innerText()).not.toMatch(/404|row-missing|ask for help/)
    expect(await lessonNames()).not.toContain('Finger taps')
    await fingers.locator('summary').click()
    await fingers.getByRole('button', { name: /^Bring back/ }).click()
    await fingers.getByText('Published as it is').waitFor()
    expect(await lessonNames()).toContain('Finger taps')
    expect(errors).toEqual([])
  })

  it('keeps an exercise for search when a person says so, without scripts too', async () => {
    const { page } = await visit(address, { javaScriptEnabled: false })
    const ankles = row(page, 'Ankle circles')
    await ankles.locator('summary').click()
    await ankles.getByLabel('What it is for').selectOption('Kept for search')
    await ankles.getByRole('button', { name: 'Save' }).click()
    await group(page, 'No lessons (1)').waitFor()
    expect(await page.getByRole('heading', { name: /^Held back/ }).count()).toBe(0)
  })
})

it('shows work that waits so that everyone can follow', async () => {
  const { store, actor } = running.studio
  const recordingId = address.split('/')[2] ?? ''
  const input = { recordingId, segmentIds: null, places: {} }
  // it waits for ever, since no program takes it
  const { job } = await store.jobs.enqueue({ kind: 'no-program-does-this', input, recordingId }, actor)
  const { page } = await visit('/jobs', { bypassCSP: true })
  expect(await page.locator('.progress').count()).toBe(1)
  expect(await findViolations(page)).toEqual([])
  await store.jobs.cancel(job.id, actor)
})

it('lessons go as a zip from one studio into another, and a damaged one brings nothing', async () => {
  const { page } = await visit(address)
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download as a zip' }).click(),
  ])
  expect(download.suggestedFilename()).toBe('small-class.zip')
  const zip = path.join(folder, 'small-class.zip')
  await download.saveAs(zip)
  const whole = await readFile(zip)
  const half = path.join(folder, 'half.zip')
  await writeFile(half, whole.subarray(0, whole.length >> 1))
  const shown = await lessonNames()

  const otherFolder = path.join(folder, 'other')
  const other = await startServer(testSettings(otherFolder), { assets: await projectAssets() })
  try {
    const context = await browser.newContext({ bypassCSP: true })
    const there = await context.newPage()
    await there.goto(`${other.url}/add`)
    const said = there.locator('#export-said')
    await there.setInputFiles('#export-file', half)
    await expect.poll(() => said.innerText(), { timeout: 30_000 }).toMatch(/no zip archive, or is damaged.*Nothing was/)
    await there.setInputFiles('#export-file', zip)
    const words = `${shown.length} lessons of “Small class” are in the library.`
    await expect.poll(() => said.innerText(), { timeout: 60_000 }).toBe(words)
    expect(await findViolations(there)).toEqual([])
    await there.setInputFiles('#export-file', zip)
    await expect.poll(() => said.innerText(), { timeout: 60_000 }).toBe('No lesson of “Small class” is new here.')
    await there.goto(`${other.url}/library`)
    expect((await there.locator('.card-name').allInnerTexts()).sort()).toEqual([...shown].sort())
    expect(await readdir(path.join(otherFolder, 'work'))).toEqual([])
  } finally {
    await other.close()
  }
})

describe('axe finds nothing and nothing sticks out', () => {
  it.each<[string, BrowserContextOptions]>([
    ['wide and light', { viewport: { width: 1440, height: 900 }, colorScheme: 'light' }],
    ['narrow and dark', { viewport: { width: 390, height: 844 }, colorScheme: 'dark' }],
    ['very narrow', { viewport: { width: 320, height: 640 } }],
  ])('%s', async (_what, options) => {
    for (const where of [address, '/library', '/lessons/finger-taps']) {
      const { page } = await visit(where, { ...options, bypassCSP: true })
      // folds are opened, so that what they hold is looked at too
      await page.evaluate(() => document.querySelectorAll('details').forEach((one) => (one.open = true)))
      const found = await findViolations(page)
      expect(found, where).toEqual([])
      // WCAG 2.2, 1.4.10 Reflow: nothing is read by scrolling sideways at 320 px
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      expect(wide, where).toBeLessThanOrEqual(0)
      await page.context().close()
    }
  })
})
