// The members' pages in a real browser: found by another name, read before play, played with captions, with and without script.
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { LOCAL_OWNER } from '../../shared/actors.ts'
import { startTestDoor } from '../helpers/http-door.ts'
import { publishInvented } from '../helpers/published-class.ts'
import type { PublishedClass } from '../helpers/published-class.ts'
import { projectRoot } from '../helpers/source-files.ts'
import { findViolations, openBrowser } from '../helpers/open-browser.ts'

const CAPTIONS = `WEBVTT

00:00.000 --> 00:01.500
Feet as wide as your hips.

00:01.500 --> 00:20.000
Reach back for the chair,
and stand up tall.
`

let browser: Browser
let door: Awaited<ReturnType<typeof startTestDoor>>
let shown: PublishedClass

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser?.close())

beforeEach(async () => {
  door = await startTestDoor()
  // any short film will do for the player
  const film = await readFile(path.join(projectRoot, 'media-samples', 'small-class.mp4'))
  shown = await publishInvented(door.door, { files: { 'clip.mp4': film, 'captions.en.vtt': Buffer.from(CAPTIONS) } })
})
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()))
  await door.close()
})

interface Visit {
  page: Page
  /** Errors on the console, among them everything that the content security policy refused. */
  errors: string[]
}

async function visit(address: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await browser.newContext(options)
  const page = await context.newPage()
  const errors: string[] = []
  page.on('console', (message) => (message.type() === 'error' ? errors.push(message.text()) : undefined))
  page.on('pageerror', (error) => errors.push(error.message))
  await page.goto(`${door.url}${address}`)
  return { page, errors }
}

const chair = (): string => `/lessons/${shown.slugs['Chair squats'] ?? ''}`
const names = (page: Page): Promise<string[]> => page.locator('.card-name').allInnerTexts()

describe('the library', () => {
  it('finds a lesson by another name, nearly spelt, while it is typed, and keeps the search in the address', async () => {
    const { page, errors } = await visit('/library')
    expect(await names(page)).toHaveLength(5)
    await page.getByLabel('Name of an exercise').pressSequentially('pres ups')
    await expect.poll(() => names(page)).toEqual(['Wall push-ups'])
    await expect.poll(() => [...new URL(page.url()).searchParams]).toEqual([['q', 'pres ups']])
    await expect.poll(() => page.locator('#found').innerText()).toBe('1 of 5 lessons')
    await page.getByLabel('Kit').selectOption('chair')
    await expect.poll(() => names(page)).toEqual([])
    await page.getByRole('link', { name: 'see all lessons' }).click()
    await expect.poll(() => names(page)).toHaveLength(5)
    expect(errors).toEqual([])
  })

  it('searches and filters without script', async () => {
    const { page } = await visit('/library', { javaScriptEnabled: false })
    await page.getByLabel('Position').selectOption('side-lying')
    await page.getByRole('button', { name: 'Search' }).click()
    expect(await names(page)).toEqual(['Side plank'])
    await page.getByRole('link', { name: /Position: lying on the side/ }).click()
    expect(await names(page)).toHaveLength(5)
  })

  it('refuses a search that is far too long, in words', async () => {
    const { page } = await visit(`/library?q=${'a'.repeat(300)}`)
    expect(await page.locator('h1').innerText()).toBe('Something in the request has a wrong form.')
  })
})

describe('a lesson', () => {
  it('says dose, cautions and notice before the film, must-haves first', async () => {
    const { page } = await visit(chair())
    const order = await page.evaluate(() =>
      ['.floor-dose', '.caution', '[data-kind="care"]', '.notice', 'video'].map((selector) =>
        [...document.querySelectorAll('*')].indexOf(document.querySelector(selector)!),
      ),
    )
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(await page.locator('.dose-words').innerText()).toMatch(/^3 sets of 10 to 12 repetitions\. Rest 1 minute\./)
    expect(await page.locator('.caution-text').allInnerTexts()).toContain('Go only as deep as your knees like.')
    expect(await page.locator('.notice').innerText()).toMatch(
      /no medical advice.*licensed professional.*Stop if you feel pain/,
    )
  })

  it('shows the captions of the moment below the picture too', async () => {
    const { page, errors } = await visit(chair())
    await page.waitForFunction(() => document.querySelector('video')?.textTracks[0]?.cues?.length === 2)
    const line = page.locator('#caption-line')
    await page.evaluate(() => {
      document.querySelector('video')!.currentTime = 2
    })
    await expect.poll(() => line.innerText()).toBe('Reach back for the chair,\nand stand up tall.')
    await page.evaluate(() => {
      document.querySelector('video')!.textTracks[0]!.mode = 'disabled'
      document.querySelector('video')!.currentTime = 0.5
    })
    await expect.poll(() => line.innerText()).toBe('Feet as wide as your hips.')
    expect(errors).toEqual([])
  })

  it('goes to a chapter, keeps its place in the address, and opens there again', async () => {
    const { page } = await visit(chair())
    await page.locator('.chapters a').nth(1).click()
    await expect.poll(() => page.url()).toMatch(/#t=15$/)
    const time = (one: Page): Promise<number> => one.evaluate(() => document.querySelector('video')!.currentTime)
    await expect.poll(() => time(page)).toBeGreaterThanOrEqual(15)
    const { page: again } = await visit(`${chair()}#t=15`)
    await expect.poll(() => time(again)).toBe(15)
  })

  it('repeats the clean repetitions until it is told to stop or a member goes elsewhere', async () => {
    const { page } = await visit(chair())
    const button = page.getByRole('button', { name: 'Repeat a few clean repetitions' })
    const film = page.locator('video')
    await film.evaluate((video: HTMLVideoElement) => (video.muted = true))
    await button.click()
    expect(await button.getAttribute('aria-pressed')).toBe('true')
    const time = (): Promise<number> => film.evaluate((video: HTMLVideoElement) => video.currentTime)
    // marked from 50 s to 60 s of a class of which the clip keeps 30 s to 95 s
    await expect.poll(time).toBeGreaterThanOrEqual(20)
    await film.evaluate((video: HTMLVideoElement) => (video.currentTime = 29.9))
    await expect.poll(time).toBeLessThan(25)
    await film.evaluate((video: HTMLVideoElement) => (video.currentTime = 1))
    await expect.poll(() => button.getAttribute('aria-pressed')).toBe('false')
  })

  it('can be read, played and left by its chapters without script', async () => {
    const { page } = await visit(chair(), { javaScriptEnabled: false })
    expect(await page.locator('video').count()).toBe(1)
    expect(await page.locator('#caption-line').isVisible()).toBe(false)
    expect(await page.locator('#film-buttons').isVisible()).toBe(false)
    expect(await page.locator('.chapters a').first().getAttribute('href')).toBe(`${chair()}/clip.mp4?v=1#t=0`)
  })

  it('links to the harder exercise that is a lesson too', async () => {
    const { page } = await visit(chair())
    await page.getByRole('link', { name: 'Goblet squat' }).click()
    expect(await page.locator('h1').innerText()).toBe('Goblet squat')
  })

  it('prints dose, cautions and movement, and no film', async () => {
    const { page } = await visit(chair())
    await page.emulateMedia({ media: 'print' })
    const seen = (selector: string): Promise<boolean> => page.locator(selector).first().isVisible()
    expect([await seen('.floor-dose'), await seen('.caution'), await seen('.steps-words')]).toEqual([true, true, true])
    expect([await seen('video'), await seen('.masthead')]).toEqual([false, false])
  })

  it('that was withdrawn says so', async () => {
    const { store } = door.door
    const stored = await store.lessons.readAt(shown.slugs['Chair squats'] ?? '')
    await store.lessons.withdraw(stored?.id ?? '', 'filmed again', LOCAL_OWNER)
    const { page } = await visit(chair())
    expect(await page.locator('h1').innerText()).toBe(
      'The lesson "Chair squats" was withdrawn. Look in the library for another.',
    )
    expect((await door.ask(`${chair()}/clip.mp4`)).status).toBe(404)
  })
})

it('is offered to those whom a wrong offer can harm only when a person said so', async () => {
  await door.close()
  door = await startTestDoor()
  await publishInvented(door.door, { audience: ['pregnancy'], isAudienceSet: false })
  const { page } = await visit('/library')
  expect(await page.getByLabel('Members').count()).toBe(0)
  await page.getByRole('link', { name: 'Chair squats' }).click()
  expect(await page.locator('body').innerText()).not.toMatch(/pregnancy/)
})

it('light or dark is chosen once and kept', async () => {
  const { page } = await visit('/library', { colorScheme: 'light' })
  const paper = (): Promise<string> => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)
  const before = await paper()
  await page.getByLabel('Light or dark').selectOption('dark')
  const dark = await paper()
  expect(dark).not.toBe(before)
  await page.goto(`${door.url}${chair()}`)
  expect(await paper()).toBe(dark)
})

describe('axe finds nothing and nothing sticks out', () => {
  const PAGES: [string, () => string][] = [
    ['the library', () => '/library'],
    ['a search without a result', () => '/library?q=xyzzy&kit=chair'],
    ['a lesson', chair],
    ['a missing page', () => '/lessons/none'],
  ]
  const STUDIO = ['/', '/add', '/jobs', '/kinds', '/kinds/new', '/settings'].map((address): (typeof PAGES)[number] => [
    address,
    () => address,
  ])
  const SCREENS: [string, BrowserContextOptions][] = [
    ['wide and light', { viewport: { width: 1440, height: 900 }, colorScheme: 'light' }],
    ['wide and dark', { viewport: { width: 1440, height: 900 }, colorScheme: 'dark' }],
    ['narrow and light', { viewport: { width: 390, height: 844 }, colorScheme: 'light' }],
    ['narrow and dark', { viewport: { width: 390, height: 844 }, colorScheme: 'dark' }],
    ['very narrow, as when a desktop page is enlarged four times', { viewport: { width: 320, height: 640 } }],
  ]

  it.each(SCREENS)('%s', async (what, options) => {
    // the studio's own pages wear the same styles: two screens are enough
    const studio = what === 'wide and light' || what === 'narrow and dark' ? STUDIO : []
    for (const [what, address] of [...PAGES, ...studio]) {
      // axe is put in from outside, which the policy of our pages would refuse
      const { page } = await visit(address(), { ...options, bypassCSP: true })
      expect(await findViolations(page), what).toEqual([])
      // WCAG 2.2, 1.4.10 Reflow: nothing is read by scrolling sideways at 320 px
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
        what,
      ).toBeLessThanOrEqual(0)
      // WCAG 2.2, 2.5.5: a finger's width; links in running words are excepted
      const small = await page.evaluate(() =>
        [
          ...document.querySelectorAll<HTMLElement>(
            'button, select, input:not(.choice *, .hidden-text), nav a, .button, .choice',
          ),
        ]
          .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 44)
          .map((one) => one.outerHTML),
      )
      expect(small, what).toEqual([])
      await page.context().close()
    }
  })

  it('an empty library teaches what a dose looks like', async () => {
    await door.close()
    door = await startTestDoor()
    const { page } = await visit('/library', { bypassCSP: true })
    expect(await page.locator('.empty .strip').getAttribute('aria-label')).toMatch(/^Three sets of twelve/)
    expect(await findViolations(page)).toEqual([])
  })
})
