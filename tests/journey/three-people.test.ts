// The whole road in a browser, as three people: an instructor's own film to a draft, an editor's marks to lessons, and a
// member who finds, reads, plays; then the same address shows another film, is withdrawn, and comes back.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readVtt } from '../../core/captions/read-vtt.ts'
import { startServer } from '../../server/serve.ts'
import type { Running } from '../../server/serve.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import { projectAssets, testSettings } from '../helpers/http-door.ts'
import { ffmpeg } from '../helpers/media-samples.ts'
import { vttErrors } from '../helpers/vtt-errors.ts'
import { findViolations, openBrowser } from '../helpers/open-browser.ts'

/** Invented. The deadlift's caution is said only at the start of the class, the halo's is not said at all. */
const WORDS = `WEBVTT

00:00:01.000 --> 00:00:05.500
Welcome to kettlebell basics. If anything hurts, stop and rest.

00:00:05.800 --> 00:00:09.500
Keep your back flat whenever the bell leaves the floor.

00:00:11.000 --> 00:00:14.500
First exercise is the goblet squat. Hold the bell close to your chest.

00:00:14.800 --> 00:00:18.500
Feet as wide as your hips. Sit down between your knees, then stand up tall.

00:00:18.800 --> 00:00:22.500
Knees follow your toes. Breathe in on the way down, out on the way up.

00:00:22.800 --> 00:00:26.500
Three sets of eight, and rest a minute between sets.

00:00:28.500 --> 00:00:32.000
Next up is the kettlebell deadlift. Stand with the bell between your feet.

00:00:32.300 --> 00:00:36.000
Push your hips back, grip the handle, and stand up by squeezing your glutes.

00:00:36.300 --> 00:00:40.000
Make it easier with a lighter bell. Two sets of ten reps.

00:00:43.500 --> 00:00:47.000
The last exercise is the kettlebell halo. Stand tall and hold the bell by its horns.

00:00:47.300 --> 00:00:51.000
Circle the bell slowly around your head, elbows close.

00:00:51.300 --> 00:00:54.500
Five circles each way. Keep your ribs down.

00:00:56.000 --> 00:00:59.000
That's all for today. Well done.
`
const SAID_FIRST = 'Keep your back flat whenever the bell leaves the floor'
/** Another class of a few of the same exercises, of which there are only names and doses. */
const PLAN = 'Goblet squat - 2 x 12, rest 45 s\nKettlebell halo - 6 each side\nKettlebell swing - 3 x 15'
/** How much faster the plan's class plays here than a person would watch it. */
const HASTE = 3
const WAIT = { timeout: 90_000 }

let browser: Browser
let running: Running
let folder: string
const faults: unknown[] = []
const errors: string[] = []

beforeAll(async () => {
  browser = await openBrowser()
  folder = await mkdtemp(path.join(tmpdir(), 'repslate-people-'))
  const outside = { onFault: (error: unknown) => void faults.push(error), assets: await projectAssets() }
  running = await startServer(testSettings(path.join(folder, 'studio')), outside)
})
afterAll(async () => {
  await browser?.close()
  await running?.close()
  await rm(folder, { recursive: true, force: true })
})

interface Person {
  page: Page
  context: BrowserContext
}

/** A browser of one's own, as another person at another desk has. */
async function enter(address: string, viewport = { width: 1280, height: 900 }): Promise<Person> {
  const context = await browser.newContext({ viewport })
  context.setDefaultTimeout(30_000)
  const page = await context.newPage()
  page.on('console', (message) => (message.type() === 'error' ? errors.push(message.text()) : undefined))
  page.on('pageerror', (error) => errors.push(error.message))
  await page.goto(`${running.url}${address}`)
  return { page, context }
}

async function mustBeReadable(page: Page): Promise<void> {
  expect(await findViolations(page), page.url()).toEqual([])
}

/** A film that nobody has seen: a moving picture, and a tone wherever a line is said. */
function film(name: string, seconds: number, words: string, picture: string): string {
  const file = path.join(folder, name)
  const said = readVtt(words).cues.map(({ startMs, endMs }) => `between(t,${startMs / 1000},${endMs / 1000})`)
  const voice = `0.3*sin(2*PI*(180+40*sin(9*t))*t)*(${[...said, '0'].join('+')})`
  ffmpeg([
    ...['-f', 'lavfi', '-i', `${picture}=s=640x360:r=25:d=${seconds}`],
    ...['-f', 'lavfi', '-i', `aevalsrc='${voice}':s=48000:d=${seconds}`],
    ...['-c:v', 'libx264', '-preset', 'ultrafast', '-crf', '32', '-g', '50', '-pix_fmt', 'yuv420p'],
    ...['-c:a', 'aac', '-b:a', '96k', '-movflags', '+faststart', file],
  ])
  return file
}

const classOf = async (title: string): Promise<string> => {
  const found = (await running.studio.store.recordings.list()).find((one) => one.title === title)
  if (!found) throw new Error(`There is no class ${title}.`)
  return found.id
}
const sheetOf = async (title: string): Promise<LogSheet> => {
  const stored = await running.studio.store.sheets.readOf(await classOf(title))
  if (!stored) throw new Error('Nothing is drafted.')
  return stored.sheet
}
const segmentOf = async (title: string, name: string): Promise<Segment> => {
  const found = (await sheetOf(title)).segments.find(({ exercise }) => exercise.name === name)
  if (!found) throw new Error(`There is no ${name}.`)
  return found
}
const openExercise = async (page: Page, name: string): Promise<void> => {
  await page.locator('#rows a', { hasText: name }).click()
  await page.getByRole('heading', { name, level: 2 }).waitFor()
}
const seek = (page: Page, seconds: number): Promise<void> =>
  page.locator('#film').evaluate(async (video: HTMLVideoElement, at) => {
    video.currentTime = at
    await new Promise((resolve) => video.requestVideoFrameCallback(resolve))
  }, seconds)

/** Lays a film and its words in, and waits on the shelf until both have been worked through. */
async function addClass(page: Page, { title, file, words }: { title: string; file: string; words: string }) {
  await page.goto(`${running.url}/add`)
  await page.locator('#files').setInputFiles(file)
  await page.getByText('All of it is here.').waitFor()
  await page.getByLabel('Title').fill(title)
  await page.getByLabel('The instructor only').check()
  await page.getByLabel('None', { exact: true }).check()
  await page.getByLabel('Everyone').check()
  await page.getByLabel('Kit', { exact: true }).fill('kettlebell')
  await page.locator('#transcript').fill(words)
  await mustBeReadable(page)
  await page.getByRole('button', { name: 'Save' }).click()
  await page.getByRole('heading', { name: 'Classes', level: 1 }).waitFor()
  const row = page.locator('.shelf-row', { hasText: title })
  await row.locator('.ribbon').waitFor(WAIT)
  await expect.poll(() => page.locator('.progress').count(), WAIT).toBe(0)
  await mustBeReadable(page)
}

/** Presses the one button and waits until its work is done. */
async function publish(page: Page, words: RegExp): Promise<void> {
  await page.getByRole('button', { name: words }).click()
  await page.getByText(/^\s*Last time: \d lessons?/).waitFor(WAIT)
}

describe('a class with its words', () => {
  it('instructor: lays in a film that nobody has seen, and it is drafted', async () => {
    const { page, context } = await enter('/')
    await mustBeReadable(page)
    await addClass(page, { title: 'Bells', file: film('bells.mp4', 60, WORDS, 'testsrc2'), words: WORDS })
    expect((await sheetOf('Bells')).segments.map(({ exercise }) => exercise.name)).toEqual([
      'Goblet squat',
      'Kettlebell deadlift',
      'Kettlebell halo',
    ])
    await context.close()
  })

  it('instructor: corrects a dose and an in-point, and attaches what was said only at the start', async () => {
    const { page, context } = await enter('/')
    await page.getByRole('link', { name: 'Bells', exact: true }).click()
    await openExercise(page, 'Goblet squat')
    await page.locator('[data-dose]').fill('3 x 10, rest 60 s')
    await page.locator('[data-dose]').press('Enter')
    await expect
      .poll(async () => (await segmentOf('Bells', 'Goblet squat')).prescription?.reps)
      .toEqual({
        min: 10,
        max: 10,
      })
    await openExercise(page, 'Kettlebell deadlift')
    await seek(page, 28.02)
    await page.keyboard.press('i')
    await expect.poll(async () => (await segmentOf('Bells', 'Kettlebell deadlift')).spans[0]?.startMs).toBe(28_000)
    await page.getByRole('button', { name: /^Attach to this lesson/ }).click()
    await expect
      .poll(async () => (await segmentOf('Bells', 'Kettlebell deadlift')).cautions.map(({ text }) => text))
      .toContain(SAID_FIRST)
    await mustBeReadable(page)
    await context.close()
  })

  it('editor: waives the one finding that does not hold here, with a reason, and publishes', async () => {
    const { page, context } = await enter(`/recordings/${await classOf('Bells')}/checks`)
    await page.getByText('2 of 3 covered').waitFor()
    await mustBeReadable(page)
    const halo = page.locator('.check-group', { hasText: 'Kettlebell halo' })
    await halo.locator('summary', { hasText: 'Waive with a reason' }).first().click()
    await halo.getByLabel('Why it does not hold here').first().fill('Shown with an empty hand, below the shoulder')
    await halo.getByRole('button', { name: 'Waive' }).first().click()
    await page.getByText('3 of 3 covered').waitFor()
    await page
      .getByRole('link', { name: /^Publish|^To publish|^Choose/ })
      .first()
      .click()
    await mustBeReadable(page)
    await publish(page, /^Publish 3 lessons$/)
    await mustBeReadable(page)
    expect(await page.locator('#publish-button').innerText()).toBe('Nothing new to publish')
    expect(await page.locator('#publish-button').isDisabled()).toBe(true)
    expect((await sheetOf('Bells')).waivers).toMatchObject([{ ruleId: 'caution-missing' }])
    await context.close()
  })

  it('member: finds a lesson by another name, reads dose and cautions first, plays it with its captions', async () => {
    const { page, context } = await enter('/library', { width: 390, height: 844 })
    await mustBeReadable(page)
    await page.getByLabel('Name of an exercise').pressSequentially('bell deadlift')
    await expect.poll(() => page.locator('.card-name').allInnerTexts()).toEqual(['Kettlebell deadlift'])
    await page.getByRole('link', { name: 'Kettlebell deadlift' }).click()
    await page.locator('.dose-words', { hasText: /^2 sets of 10/ }).waitFor()
    const places = await Promise.all(
      ['.dose-words', '.caution-text', '#film'].map(
        async (what) => (await page.locator(what).first().boundingBox())?.y,
      ),
    )
    expect(places).toEqual([...places].sort((one = 0, other = 0) => one - other))
    expect(await page.locator('.caution-text').allInnerTexts()).toContain(`${SAID_FIRST}.`)
    await mustBeReadable(page)
    const shown = await page.evaluate(playFilm)
    const file = await (await page.request.get(await captionsOf(page))).text()
    expect(vttErrors(file, 'captions')).toEqual([])
    expect(shown.cues).toEqual(
      readVtt(file).cues.map(({ startMs, endMs, lines }) => ({ startMs, endMs, text: lines.join('\n') })),
    )
    expect(shown.cues.map(({ text }) => text).join(' ')).toMatch(/Push your\s+hips back/)
    expect(shown.error).toBeNull()
    await expect.poll(() => page.locator('#caption-line').innerText()).toMatch(/kettlebell deadlift/)
    await context.close()
  })
})

const captionsOf = (page: Page): Promise<string> =>
  page.locator('track[kind="captions"]').evaluate((track: HTMLTrackElement) => track.src)

/** Runs in the page: plays until a caption is shown, and tells all captions that the browser holds. */
async function playFilm() {
  const video = document.querySelector('video') as HTMLVideoElement
  const track = [...video.textTracks].find(({ kind }) => kind === 'captions') as TextTrack
  track.mode = 'showing'
  video.muted = true
  await video.play()
  await new Promise<void>((resolve) => {
    video.addEventListener('timeupdate', () => {
      if (video.currentTime > 1 && (track.activeCues?.length ?? 0) > 0) resolve()
    })
  })
  video.pause()
  const cues = [...(track.cues ?? [])].map((cue) => ({
    startMs: Math.round(cue.startTime * 1000),
    endMs: Math.round(cue.endTime * 1000),
    text: (cue as VTTCue).getCueAsHTML().textContent ?? '',
  }))
  return { cues, error: video.error?.message ?? null }
}

describe('a class without words', () => {
  it('instructor: lays in a plan and places it by one key while the film plays', async () => {
    const { page, context } = await enter('/')
    const file = film('bells again.mp4', 24, 'WEBVTT\n', 'testsrc')
    await addClass(page, { title: 'Bells again', file, words: PLAN })
    await page.getByRole('link', { name: 'Bells again', exact: true }).click()
    await page.getByText('0 of 3 exercises placed').waitFor()
    await page.locator('#film').evaluate((video: HTMLVideoElement, rate) => {
      video.muted = true
      video.playbackRate = rate
    }, HASTE)
    await page.keyboard.press('p')
    let presses = 1
    const filmIsAt = (seconds: number): Promise<unknown> =>
      page.waitForFunction((at) => (document.querySelector('video')?.currentTime ?? 0) >= at, seconds)
    for (const [placed, seconds] of [2, 9, 16].entries()) {
      await filmIsAt(seconds)
      await page.keyboard.press('m')
      presses += 1
      await page.getByText(`${placed + 1} of 3 exercises placed`).waitFor()
    }
    await filmIsAt(22)
    await page.getByRole('button', { name: 'End the last here' }).click()
    presses += 1
    await page.locator('#plan').waitFor({ state: 'detached' })
    // one press to play, one an exercise, one to end: five for three exercises. It takes as long as the class plays: with the
    // class of 24 s, 8 s an exercise at its own speed; with one of 45 minutes and 15 exercises, 3 minutes an exercise
    expect(presses).toBe(5)
    const spans = (await sheetOf('Bells again')).segments.map((segment) => segment.spans[0])
    expect(spans.map((span, index) => [span?.endMs, index])).toEqual([
      [spans[1]?.startMs, 0],
      [spans[2]?.startMs, 1],
      [spans[2]?.endMs, 2],
    ])
    await mustBeReadable(page)
    await context.close()
  })

  it('editor: writes the cautions, and lets the new squat take the place of the old one at its address', async () => {
    const id = await classOf('Bells again')
    const { page, context } = await enter(`/recordings/${id}/checks`)
    await mustBeReadable(page)
    const squat = page.locator('.check-group', { hasText: 'Goblet squat' })
    for (let left = await squat.locator('summary', { hasText: /^Write it/ }).count(); left > 0; left -= 1) {
      await squat
        .locator('summary', { hasText: /^Write it/ })
        .first()
        .click()
      await squat.getByRole('button', { name: 'Write on the lesson' }).first().click()
      await expect.poll(() => squat.locator('summary', { hasText: /^Write it/ }).count()).toBe(left - 1)
    }
    // a lesson without captions is held back until someone says why it needs none
    const silent = squat.locator('.finding', { hasText: 'no captions fall in this clip' })
    await silent.locator('summary', { hasText: 'Waive with a reason' }).click()
    await silent.getByLabel('Why it does not hold here').fill('Nothing is said in this film')
    await silent.getByRole('button', { name: 'Waive' }).click()
    await squat.getByText('“Nothing is said in this film”').waitFor()
    await page.goto(`${running.url}/recordings/${id}/publish`)
    const row = page.locator('.publish-row', { hasText: 'Goblet squat' })
    await row.getByText('Already in the library').waitFor()
    await row.getByLabel(/^Publish as/).selectOption({ label: 'In place of “Goblet squat” at /lessons/goblet-squat' })
    await publish(page, /^Publish 1 lesson$/)
    await mustBeReadable(page)
    await context.close()
  })

  it('member: sees the new film at the old address; it is withdrawn in plain words, and comes back', async () => {
    const { page } = await enter('/lessons/goblet-squat')
    await page.locator('.dose-words', { hasText: /^2 sets of 12/ }).waitFor()
    await page.getByRole('link', { name: 'Bells again' }).waitFor()
    expect((await page.evaluate(() => document.querySelector('source')?.src)) ?? '').toMatch(/clip\.mp4\?v=2$/)
    const { page: editor } = await enter(`/recordings/${await classOf('Bells again')}/publish`)
    const lesson = editor.locator('#lesson-goblet-squat')
    await lesson.locator('summary').click()
    await lesson.getByLabel('Why (for your own log)').fill('filmed too dark')
    await mustBeReadable(editor)
    await lesson.getByRole('button', { name: /^Withdraw now/ }).click()
    await lesson.getByText('Withdrawn: members read that it is gone').waitFor()
    const before = errors.length
    await page.reload()
    await page
      .getByRole('heading', { name: 'The lesson "Goblet squat" was withdrawn. Look in the library for another.' })
      .waitFor()
    await mustBeReadable(page)
    // the browser itself tells of the status 404 or 410 of the page; nothing else is an error
    expect(errors.splice(before).filter((text) => !/status of 4(04|10)/.test(text))).toEqual([])
    await lesson.locator('summary').click()
    await lesson.getByRole('button', { name: /^Bring back/ }).click()
    await lesson.getByText('Version 2 is shown').waitFor()
    await page.reload()
    await page.getByRole('heading', { name: 'Goblet squat', level: 1 }).waitFor()
    expect(errors).toEqual([])
    expect(faults).toEqual([])
  })
})
