// The class page and the checks page in a real browser: a draft is looked through, corrected, checked; two tabs on one class.
import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { WAVE_ZOOM } from '../../core/media/plan-analysis.ts'
import { growingWaveKey, peaksKey } from '../../server/storage/media-keys.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import { addDemoClass } from '../helpers/drafted-class.ts'
import { startTestDoor } from '../helpers/http-door.ts'
import { findViolations, openBrowser } from '../helpers/open-browser.ts'

let browser: Browser
let door: Awaited<ReturnType<typeof startTestDoor>>
let id: string

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser?.close())
beforeEach(async () => {
  door = await startTestDoor()
  id = await addDemoClass(door.door)
})
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()))
  await door.close()
  expect(door.faults).toEqual([])
})

interface Visit {
  page: Page
  /** Errors on the console, among them everything that the content security policy refused. */
  errors: string[]
}

async function visit(address: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await browser.newContext(options)
  context.setDefaultTimeout(30_000)
  return visitIn(await context.newPage(), address)
}

async function visitIn(page: Page, address: string): Promise<Visit> {
  const errors: string[] = []
  page.on('console', (message) => (message.type() === 'error' ? errors.push(message.text()) : undefined))
  page.on('pageerror', (error) => errors.push(error.message))
  await page.goto(`${door.url}${address}`)
  return { page, errors }
}

const sheetOf = async (recordingId = id): Promise<LogSheet> => {
  const stored = await door.door.store.sheets.readOf(recordingId)
  if (!stored) throw new Error('Nothing is drafted.')
  return stored.sheet
}
const segmentOf = async (name: string): Promise<Segment> => {
  const found = (await sheetOf()).segments.find(({ exercise }) => exercise.name === name)
  if (!found) throw new Error(`There is no ${name}.`)
  return found
}
const open = async (page: Page, name: string): Promise<void> => {
  await page.locator('#rows a', { hasText: name }).click()
  await page.getByRole('heading', { name, level: 2 }).waitFor()
}
const edgeField = (page: Page, name: 'In' | 'Out'): Locator =>
  page.locator('.span').first().getByLabel(name, { exact: true })
const seek = (page: Page, seconds: number): Promise<void> =>
  page.locator('#film').evaluate(async (film: HTMLVideoElement, at) => {
    film.currentTime = at
    await new Promise((resolve) => film.requestVideoFrameCallback(resolve))
  }, seconds)
const filmTime = (page: Page): Promise<number> =>
  page.locator('#film').evaluate((film: HTMLVideoElement) => film.currentTime)

describe('what cannot be written', () => {
  it('is said at its place and stays typed', async () => {
    const { page } = await visit(`/recordings/${id}`)
    await page.locator('[data-dose]').fill('as many as you please')
    await page.getByText('No dose can be read in this yet.').waitFor()
    await page.getByRole('button', { name: 'Set', exact: true }).click()
    await page.getByRole('alert').filter({ hasText: 'No dose can be read in "as many as you please".' }).waitFor()
    expect(await page.locator('[data-dose]').inputValue()).toBe('as many as you please')
    const field = edgeField(page, 'In')
    await field.fill('soon')
    await field.press('Enter')
    await page.getByText('"soon" is no time.').waitFor()
    await field.fill('99:00')
    await field.press('Enter')
    await page.getByRole('alert').last().waitFor()
    expect((await segmentOf('Seated march')).spans[0]?.startMs).toBeLessThan(60_000)
  })

  it('waits, in words, while the studio cannot be reached', async () => {
    const { page } = await visit(`/recordings/${id}`)
    await page.locator('[data-dose]').fill('2 x 9')
    await page.context().setOffline(true)
    await page.getByRole('button', { name: 'Set', exact: true }).click()
    // it asks again by itself, so that a short break needs no person
    await page.context().setOffline(false)
    await expect.poll(async () => (await segmentOf('Seated march')).prescription?.reps).toEqual({ min: 9, max: 9 })
  })
})

describe('a draft', () => {
  it('is corrected: a dose, an in-point, a caution; and each step is taken back and brought again', async () => {
    const { page, errors } = await visit(`/recordings/${id}`)
    // the dose is read while it is typed, before anything is written
    await open(page, 'Calf stretch')
    await page.locator('[data-dose]').fill('2 x 30 s each side')
    await expect.poll(() => page.locator('#dose-read .dose-words').innerText()).toMatch(/30 seconds.*each side/)
    expect((await segmentOf('Calf stretch')).prescription).toBeNull()
    await page.locator('[data-dose]').press('Enter')
    await expect.poll(async () => (await segmentOf('Calf stretch')).prescription?.perSide).toBe(true)
    await page.locator('#rows a', { hasText: 'Calf stretch' }).getByText('2 x 30 s').waitFor()

    // the in-point is the frame that is shown
    await open(page, 'Sit to stand')
    await seek(page, 272.02)
    await page.getByRole('button', { name: /^Now ?: set In/ }).click()
    await expect.poll(async () => (await segmentOf('Sit to stand')).spans[0]?.startMs).toBe(272_000)
    await page.getByRole('button', { name: 'In +1 f' }).click()
    await expect.poll(async () => (await segmentOf('Sit to stand')).spans[0]?.startMs).toBe(272_040)
    await page.getByRole('button', { name: 'In −0.1 s' }).click()
    await expect.poll(async () => (await segmentOf('Sit to stand')).spans[0]?.startMs).toBe(271_940)

    // what was said once for the whole class is written on the lesson
    await page.getByRole('button', { name: /^Attach to this lesson/ }).click()
    await expect
      .poll(async () => (await segmentOf('Sit to stand')).cautions.map(({ source }) => source))
      .toContain('written')
    await page
      .getByText('All covered')
      .or(page.getByText(/^(\d+) of \1 covered$/))
      .first()
      .waitFor()

    for (const [what, startMs] of [
      ['caution', 271_940],
      ['a tenth', 272_040],
    ] as const) {
      await page.getByRole('button', { name: /^Undo/ }).click()
      await expect
        .poll(async () => (await segmentOf('Sit to stand')).spans[0]?.startMs, { message: what })
        .toBe(startMs)
    }
    await page.getByRole('button', { name: /^Redo/ }).click()
    await expect.poll(async () => (await segmentOf('Sit to stand')).spans[0]?.startMs).toBe(271_940)
    expect(errors).toEqual([])
  })

  it('is accepted and declined mark by mark, all at once, and above a confidence', async () => {
    const { page } = await visit(`/recordings/${id}`)
    await page.getByRole('button', { name: 'Accept Seated march' }).click()
    await expect.poll(async () => (await segmentOf('Seated march')).state).toBe('accepted')
    // the focus stays near, so that a keyboard goes on from there
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Decline Seated march')
    await page.getByRole('button', { name: /^Accept all here/ }).click()
    await expect
      .poll(async () => (await segmentOf('Seated march')).cues.every(({ state }) => state === 'accepted'))
      .toBe(true)
    await open(page, 'Heel raises')
    await page.getByRole('button', { name: 'Decline Heel raises' }).click()
    await page.getByText('Declined: 1').waitFor()
    await page.getByLabel('Accept all above').selectOption('0.75')
    await page.getByRole('button', { name: 'Accept all above this, in the whole class' }).click()
    await expect
      .poll(async () => (await sheetOf()).segments.filter(({ state }) => state === 'proposed').length)
      .toBeLessThan(3)
    expect((await segmentOf('Heel raises')).state).toBe('declined')
  })

  it('has every other field of an exercise in reach', async () => {
    const { page } = await visit(`/recordings/${id}`)
    await open(page, 'Biceps curl')
    const name = page.getByLabel('Other names')
    await name.fill('Arm curl, curls')
    await name.press('Tab')
    await expect.poll(async () => (await segmentOf('Biceps curl')).exercise.alsoCalled).toEqual(['Arm curl', 'curls'])
    await page.getByLabel('Keep for search').check()
    await expect.poll(async () => (await segmentOf('Biceps curl')).use).toBe('keep')
    await page.getByText('Kit, position, view, easier and harder').click()
    await page.getByLabel('View').selectOption('From the side')
    await expect.poll(async () => (await segmentOf('Biceps curl')).view).toBe('side')
    await page.getByLabel('Easier').fill('Seated row\nwithout weights')
    await page.getByLabel('Easier').press('Tab')
    const row = (await segmentOf('Seated row')).id
    await expect
      .poll(async () => (await segmentOf('Biceps curl')).easier)
      .toEqual([{ segmentId: row }, { text: 'without weights' }])
    await page.getByText('Add a span, a cut-out, a loop').click()
    const cut = page.locator('form', { hasText: 'Cut out a slip' })
    await cut.getByLabel('From').fill('2:10')
    await cut.getByLabel('To').fill('2:12.5')
    await cut.getByLabel('Why').fill('a door')
    await cut.getByRole('button', { name: 'Cut it out' }).click()
    await expect
      .poll(async () => (await segmentOf('Biceps curl')).cutOuts)
      .toMatchObject([{ startMs: 130_000, endMs: 132_500, why: 'a door' }])
    await page.getByText('Add a cue', { exact: true }).click()
    await page.getByLabel('Said at').last().fill('2:05')
    await page.getByLabel('Words', { exact: true }).last().fill('elbows stay by your sides')
    await page.getByRole('button', { name: 'Add the cue' }).click()
    await expect
      .poll(async () => (await segmentOf('Biceps curl')).cues.map(({ text }) => text))
      .toContain('elbows stay by your sides')
  })
})

describe('film and words', () => {
  it('go together: a line leads to its moment, and the address keeps the place', async () => {
    const { page, errors } = await visit(`/recordings/${id}#t=60`)
    await expect.poll(() => filmTime(page)).toBeCloseTo(60.02, 1)
    await expect.poll(() => page.locator('.word-line[aria-current]').count()).toBe(1)
    const isInView = (): Promise<boolean> =>
      page.locator('.word-line[aria-current]').evaluate((line: HTMLElement) => {
        const list = line.closest('ol')?.getBoundingClientRect()
        const { top, bottom } = line.getBoundingClientRect()
        return list !== undefined && top >= list.top && bottom <= list.bottom
      })
    await expect.poll(isInView).toBe(true)
    await page.locator('.word-line').nth(3).click()
    await expect.poll(() => filmTime(page)).toBeCloseTo(13.3, 0)
    await expect.poll(() => new URL(page.url()).hash).toMatch(/^#t=1[23]/)
    await page.locator('#film').evaluate((film: HTMLVideoElement) => {
      for (const track of film.textTracks) track.mode = 'showing'
    })
    await page.waitForFunction(() => (document.querySelector('video')?.textTracks[0]?.cues?.length ?? 0) > 20)
    await open(page, 'Seated row')
    await expect.poll(() => filmTime(page)).toBeGreaterThan(195)
    await expect.poll(isInView).toBe(true)
    expect(new URL(page.url()).searchParams.get('segment')).toBe((await segmentOf('Seated row')).id)
    await page.goBack()
    await page.getByRole('heading', { name: 'Seated march', level: 2 }).waitFor()
    expect(errors).toEqual([])
  })

  it('are worked by single keys, which never disturb typing and can be switched off', async () => {
    const { page } = await visit(`/recordings/${id}`)
    await page.keyboard.press('n')
    await page.getByRole('heading', { name: 'Knee extension', level: 2 }).waitFor()
    await seek(page, 84.02)
    await page.keyboard.press('i')
    await expect.poll(async () => (await segmentOf('Knee extension')).spans[0]?.startMs).toBe(84_000)
    await page.keyboard.press('.')
    await expect.poll(() => page.locator('#now').innerText()).toBe('1:24.040')
    await page.keyboard.press('u')
    await expect.poll(async () => (await segmentOf('Knee extension')).spans[0]?.startMs).not.toBe(84_000)
    await page.keyboard.press('d')
    await page.keyboard.type('2 x 10 n')
    await page.getByRole('heading', { name: 'Knee extension', level: 2 }).waitFor()
    expect(await page.locator('[data-dose]').inputValue()).toBe('2 x 10 n')
    await page.locator('#exercise-name').focus()
    await page.keyboard.press('?')
    await page.getByRole('heading', { name: 'Keys' }).waitFor()
    await page.getByLabel('Single keys are on').uncheck()
    await page.getByRole('button', { name: 'Close' }).click()
    await page.keyboard.press('n')
    await page.reload()
    await page.keyboard.press('n')
    expect(await page.locator('#exercise-name').innerText()).toBe('Knee extension')
  })
})

describe('two tabs on one class', () => {
  it('see each other, and lose nothing that is being typed', async () => {
    const context = await browser.newContext()
    context.setDefaultTimeout(30_000)
    const { page: one } = await visitIn(await context.newPage(), `/recordings/${id}`)
    const { page: two } = await visitIn(await context.newPage(), `/recordings/${id}`)
    // typed in the one, while the other writes elsewhere
    await one.locator('[data-dose]').fill('3 x 12')
    await two.locator('.exercise').getByLabel('Name', { exact: true }).fill('March on the chair')
    await two.locator('.exercise').getByLabel('Name', { exact: true }).press('Tab')
    await one.getByRole('heading', { name: 'March on the chair', level: 2 }).waitFor()
    await one
      .locator('#messages')
      .getByText(/name, March on the chair/)
      .waitFor()
    expect(await one.locator('[data-dose]').inputValue()).toBe('3 x 12')
    // the other writes the same thing: told at the field, and this tab's words are still there
    await two.locator('[data-dose]').fill('1 x 5')
    await two.locator('[data-dose]').press('Enter')
    await one.getByText('Changed elsewhere meanwhile: 1 x 5. Yours is still here.').waitFor()
    expect(await one.locator('[data-dose]').inputValue()).toBe('3 x 12')
    await one.locator('[data-dose]').press('Enter')
    await expect.poll(() => two.locator('[data-dose]').inputValue()).toBe('3 x 12')
    // and what was begun on another exercise is there when it is opened again
    await one.getByLabel('Add a caution about').first().waitFor({ state: 'attached' })
    await one.locator('[data-dose]').fill('4 x 4')
    await open(one, 'Knee extension')
    await open(one, 'March on the chair')
    expect(await one.locator('[data-dose]').inputValue()).toBe('4 x 4')
  })

  it.each(['', '/checks'])('a change while the page is on its way is shown (page "%s")', async (page) => {
    const context = await browser.newContext()
    context.setDefaultTimeout(30_000)
    const { page: other } = await visitIn(await context.newPage(), `/recordings/${id}`)
    const late = await context.newPage()
    await late.route(/\/events\?/, async (route) => {
      await other.locator('.exercise').getByLabel('Name', { exact: true }).fill('March on the chair')
      await other.locator('.exercise').getByLabel('Name', { exact: true }).press('Tab')
      await other.getByRole('heading', { name: 'March on the chair', level: 2 }).waitFor()
      await route.continue()
    })
    await visitIn(late, `/recordings/${id}${page}`)
    await late.locator('main').getByText('March on the chair').first().waitFor({ state: 'attached' })
  })

  it('a change that somebody overtook is refused in words, and goes through when it is said again', async () => {
    const { page } = await visit(`/recordings/${id}`)
    // this tab does not hear of others
    await page.addInitScript(() => {
      window.EventSource = class extends EventTarget {
        close(): void {
          // nothing is open
        }
      } as unknown as typeof EventSource
    })
    await page.reload()
    const segmentId = (await segmentOf('Seated march')).id
    const stored = await door.door.store.sheets.readOf(id)
    await door.door.store.sheets.appendEdits({
      sheetId: stored?.id ?? '',
      baseVersion: stored?.version ?? 0,
      edits: [{ opId: 'other', op: { op: 'set-dose', segmentId, dose: null } }],
      actor: door.door.actor,
    })
    await page.locator('[data-dose]').fill('3 x 12')
    await page.locator('[data-dose]').press('Enter')
    await page
      .getByRole('alert')
      .filter({ hasText: /What you typed is still on your page/ })
      .waitFor()
    expect((await segmentOf('Seated march')).prescription).toBeNull()
    expect(await page.locator('[data-dose]').inputValue()).toBe('3 x 12')
    await page.locator('[data-dose]').press('Enter')
    await expect.poll(async () => (await segmentOf('Seated march')).prescription?.sets).toEqual({ min: 3, max: 3 })
  })
})

describe('the checks', () => {
  it('lead to the place, and are closed by words, by one key, or by a reason', async () => {
    const { page, errors } = await visit(`/recordings/${id}/checks`)
    await page.getByText('6 of 8 covered').waitFor()
    await page
      .locator('h1')
      .focus()
      .catch(() => undefined)
    await page.keyboard.press('t')
    await page.getByText('7 of 8 covered').waitFor()
    const twist = page.locator('.check-group', { hasText: 'Seated twist' })
    await twist.locator('summary', { hasText: 'Waive with a reason' }).first().click()
    await twist.getByLabel('Why it does not hold here').first().fill('Shown to half of the range, see 4:08')
    await twist.getByRole('button', { name: 'Waive' }).first().click()
    await page.getByText('8 of 8 covered').waitFor()
    await page.getByText(/“Shown to half of the range, see 4:08”/).waitFor()
    expect((await sheetOf()).waivers).toMatchObject([{ ruleId: 'caution-missing', by: door.door.actor.name }])
    // what was open at the one does not open at the next
    expect(await twist.locator('details[open]').count()).toBe(0)
    await page.getByRole('button', { name: /^Take back the waiver/ }).click()
    await page.getByText('7 of 8 covered').waitFor()
    await twist
      .locator('summary', { hasText: /^Write it/ })
      .first()
      .click()
    await twist.getByRole('button', { name: 'Write on the lesson' }).first().click()
    await page.getByText('8 of 8 covered').waitFor()
    await page
      .locator('.check-group', { hasText: 'Calf stretch' })
      .getByRole('link', { name: /^Go to 7:04/ })
      .first()
      .click()
    await page.getByRole('heading', { name: 'Calf stretch', level: 2 }).waitFor()
    await expect.poll(() => filmTime(page)).toBeGreaterThan(420)
    expect(errors).toEqual([])
  })
})

describe('without a transcript', () => {
  it('a plan is placed while the class plays, one press an exercise', async () => {
    const plan = 'Seated march - 10 reps each side\nKnee extension - 8 reps each side\nBiceps curl - 2 x 8'
    id = await addDemoClass(door.door, { words: plan })
    const { page, errors } = await visit(`/recordings/${id}`)
    await page.getByText('0 of 3 exercises placed').waitFor()
    for (const [placed, seconds] of [43, 83, 118].entries()) {
      await seek(page, seconds + 0.02)
      await page.keyboard.press('m')
      await page.getByText(`${placed + 1} of 3 exercises placed`).waitFor()
    }
    await seek(page, 100)
    await page.getByRole('button', { name: 'End the last here' }).click()
    await page.getByText('This is before the exercise that was begun last.').waitFor()
    await seek(page, 162.02)
    // nothing is left to begin: the same key ends the last
    await page.keyboard.press('m')
    await expect
      .poll(async () =>
        (await sheetOf()).segments.map(({ spans }) => spans.map(({ startMs, endMs }) => [startMs, endMs])),
      )
      .toEqual([[[43_000, 83_000]], [[83_000, 118_000]], [[118_000, 162_000]]])
    // three exercises, four presses; the page follows the sheet a moment later
    await expect.poll(() => page.locator('#plan').count()).toBe(0)
    expect((await sheetOf()).segments.map(({ prescription }) => prescription?.reps)).toEqual(
      [10, 8, 8].map((count) => ({ min: count, max: count })),
    )
    expect(errors).toEqual([])
  })

  it('what is said is typed stretch by stretch, and outlives a closed page', async () => {
    const islands = [
      { startMs: 1000, endMs: 2000 },
      { startMs: 43_000, endMs: 44_200 },
      { startMs: 56_000, endMs: 57_000 },
    ]
    id = await addDemoClass(door.door, { words: null, islands })
    const context = await browser.newContext()
    context.setDefaultTimeout(30_000)
    const { page, errors } = await visitIn(await context.newPage(), `/recordings/${id}`)
    await page.locator('#film').evaluate((film: HTMLVideoElement) => (film.muted = true))
    await page.getByRole('button', { name: 'Type what is said' }).click()
    // it plays the stretch and stops at its end by itself
    await expect.poll(() => filmTime(page), { timeout: 30_000 }).toBeGreaterThan(2.1)
    await expect.poll(() => page.locator('#film').evaluate((film: HTMLVideoElement) => film.paused)).toBe(true)
    expect(await filmTime(page)).toBeLessThan(3)
    await page.keyboard.type('Hello everyone.')
    await page.keyboard.press('Enter')
    await page.getByText('2 of 3; 1 typed').waitFor()
    await page.keyboard.type("First, the seated march. We'll do ten")
    await page.reload()
    await page.getByRole('button', { name: 'Type what is said' }).click()
    await page.getByText('3 of 3; 2 typed').waitFor()
    await page.keyboard.type("on each leg, that's ten reps each side.")
    expect(await findViolations(page)).toEqual([])
    await page.getByRole('button', { name: 'Save the words' }).click()
    await expect.poll(() => page.locator('.word-line').allInnerTexts()).toHaveLength(3)
    const stored = await door.door.store.transcripts.read(id)
    expect(stored).toMatchObject({ origin: 'typed', form: 'webvtt' })
    expect(stored?.text).toContain("00:00:43.000 --> 00:00:44.200\nFirst, the seated march. We'll do ten")
    await page.getByRole('button', { name: 'Type on' }).waitFor()
    expect(errors).toEqual([])
  })
})

it('both pages work without scripts', async () => {
  const { page } = await visit(`/recordings/${id}`, { javaScriptEnabled: false })
  await page.locator('[data-dose]').fill('2 x 12')
  await page.locator('[data-dose]').press('Enter')
  await page.locator('#rows').getByText('2 x 12').waitFor()
  await edgeField(page, 'In').fill('0:44')
  await edgeField(page, 'In').press('Enter')
  await expect.poll(async () => (await segmentOf('Seated march')).spans[0]?.startMs).toBe(44_000)
  await page.getByRole('button', { name: /^Undo/ }).click()
  await expect.poll(async () => (await segmentOf('Seated march')).spans[0]?.startMs).not.toBe(44_000)
  await page.getByRole('link', { name: 'Check', exact: true }).click()
  await page.getByRole('button', { name: /^Attach to all/ }).click()
  await page.getByText('7 of 8 covered').waitFor()
})

describe('axe finds nothing and nothing sticks out', () => {
  const SCREENS: [string, BrowserContextOptions][] = [
    ['wide and light', { viewport: { width: 1440, height: 900 }, colorScheme: 'light' }],
    ['wide and dark', { viewport: { width: 1440, height: 900 }, colorScheme: 'dark' }],
    ['narrow and light', { viewport: { width: 390, height: 844 }, colorScheme: 'light' }],
    ['narrow and dark', { viewport: { width: 390, height: 844 }, colorScheme: 'dark' }],
    ['very narrow', { viewport: { width: 320, height: 640 } }],
  ]
  it.each(SCREENS)('%s', async (_what, options) => {
    for (const address of [`/recordings/${id}`, `/recordings/${id}/checks`]) {
      // axe is put in from outside, which the policy of our pages would refuse
      const { page } = await visit(address, { ...options, bypassCSP: true })
      await page.evaluate(() => {
        for (const details of document.querySelectorAll('details')) details.open = true
      })
      expect(await findViolations(page), address).toEqual([])
      // WCAG 2.2, 1.4.10 Reflow
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      expect(over, address).toBeLessThanOrEqual(0)
      // nothing that is hidden for the eye makes the page longer than what is seen
      const below = await page.evaluate(
        () =>
          document.documentElement.scrollHeight -
          (document.querySelector('.footer')?.getBoundingClientRect().bottom ?? 0) -
          window.scrollY,
      )
      expect(below, address).toBeLessThanOrEqual(1)
      await page.context().close()
    }
  })
})

it('draws the wave piece by piece while the film is looked through; a press on it goes there', async () => {
  const [media] = await door.door.store.media.list(id)
  const grow = (key: string, steps: number) => door.door.storage.putBytes(key, new Uint8Array(steps).fill(128))
  const { page, errors } = await visit(`/recordings/${id}`, { bypassCSP: true })
  const wave = page.locator('#wave')
  const known = () => wave.getAttribute('data-known')
  /** Columns of the middle row above the line that are drawn, as a share of all. */
  const drawn = () =>
    wave.evaluate((canvas: HTMLCanvasElement) => {
      const { data } = canvas.getContext('2d')?.getImageData(0, Math.round(canvas.height * 0.35), canvas.width, 1) ?? {
        data: [],
      }
      return [...data].filter((value, at) => at % 4 === 3 && value > 0).length / canvas.width
    })
  await expect.poll(known).toBe('0')
  await grow(growingWaveKey(id, media?.id ?? ''), 468)
  await expect.poll(known, { timeout: 30_000 }).toBe('468')
  expect(await drawn()).toBeCloseTo(0.25, 1)
  expect(await wave.getAttribute('aria-label')).toMatch(/known up to 1:57$/)
  await grow(peaksKey(id, media?.id ?? '', WAVE_ZOOM), 1872)
  await expect.poll(known, { timeout: 30_000 }).toBe('whole')
  expect(await drawn()).toBeGreaterThan(0.98)
  await wave.click({ position: { x: ((await wave.boundingBox())?.width ?? 0) / 2, y: 20 } })
  await expect.poll(() => filmTime(page)).toBeCloseTo(234, -1)
  expect(await findViolations(page)).toEqual([])
  expect(errors).toEqual([])
})
