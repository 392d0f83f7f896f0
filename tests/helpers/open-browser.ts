/** Opens Chromium for tests, and asks axe what a page lacks for people who read it in other ways. */
import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { chromium } from 'playwright-core'
import type { Browser, Page } from 'playwright-core'

const CHROMIUM = process.env['REPSLATE_CHROMIUM'] ?? '/usr/bin/chromium'
const FLAGS = ['--no-sandbox', '--disable-gpu', '--mute-audio', '--disable-background-networking']
/** For tests of films alone; on our pages a person presses play. */
const PLAYS_BY_ITSELF = '--autoplay-policy=no-user-gesture-required'

/** @throws Error when there is no Chromium at REPSLATE_CHROMIUM or its usual place. */
export async function openBrowser({ playsByItself = false } = {}): Promise<Browser> {
  if (!existsSync(CHROMIUM)) throw new Error(`No Chromium at ${CHROMIUM}; set REPSLATE_CHROMIUM.`)
  return chromium.launch({ executablePath: CHROMIUM, args: playsByItself ? [...FLAGS, PLAYS_BY_ITSELF] : FLAGS })
}

let axe: Promise<string> | null = null

/**
 * What axe-core finds, a line a rule with the elements; the page must be of a context with bypassCSP, since axe is put in
 * from outside, which the policy of our pages would refuse.
 */
export async function findViolations(page: Page): Promise<string[]> {
  axe ??= readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
  await page.evaluate(await axe)
  return page.evaluate(async () => {
    const { axe: tool } = window as unknown as {
      axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> }
    }
    return (await tool.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)
  })
}
