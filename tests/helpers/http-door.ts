// A real studio on a free port for tests, and a client that sends exactly the headers a test names.
import { mkdtemp, rm } from 'node:fs/promises'
import { createServer, request } from 'node:http'
import type { IncomingHttpHeaders } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { onTestFinished } from 'vitest'
import { buildApp } from '../../server/app.ts'
import { buildAssets } from '../../server/assets/build-assets.ts'
import type { Assets } from '../../server/assets/build-assets.ts'
import { openDoor } from '../../server/door.ts'
import type { Door } from '../../server/door.ts'
import type { Views } from '../../server/render.ts'
import { ROUTES } from '../../server/routes/routes.ts'
import type { AddRoutes } from '../../server/routes/routes.ts'
import { Settings } from '../../server/settings.ts'
import { openStudio } from '../../server/studio.ts'
import { projectRoot } from './source-files.ts'

export interface Answer {
  status: number
  headers: IncomingHttpHeaders
  body: Buffer
  text: string
}

export interface Asked {
  method?: string
  headers?: Record<string, string>
  body?: string | Buffer
}

export interface Client {
  /** Sends exactly these headers; without `host`, the right one. */
  ask: (address: string, asked?: Asked) => Promise<Answer>
  /** The headers of a page's own write: origin, cookie and token. */
  signed: () => Promise<Record<string, string>>
}

export interface TestDoor extends Client {
  url: string
  door: Door
  /** Errors that nobody waits for, and those behind a 500. */
  faults: unknown[]
  /** Cuts every connection, as a lost network does. */
  dropConnections: () => void
}

let assets: Promise<Assets> | null = null
/** The project's assets, built once for a test file. */
export const projectAssets = (): Promise<Assets> => (assets ??= buildAssets(path.join(projectRoot, 'views')))

export const testSettings = (dataFolder: string, more: Record<string, unknown> = {}): Settings =>
  Settings.parse({ dataFolder, port: 0, ...more })

export interface DoorSetup {
  /** Routes of a test's own, beside the project's. */
  routes?: readonly AddRoutes[]
  settings?: Record<string, unknown>
  /** Other templates than the project's. */
  views?: Views
}

/** A studio for one test; all is closed when the test is done. */
export async function openTestDoor(setup: DoorSetup = {}): Promise<TestDoor> {
  const opened = await startTestDoor(setup)
  onTestFinished(opened.close)
  return opened
}

/** A studio for a table of tests; the caller closes it. */
export async function startTestDoor({ routes = [], settings, views }: DoorSetup = {}): Promise<
  TestDoor & { close: () => Promise<void> }
> {
  const faults: unknown[] = []
  const folder = await mkdtemp(path.join(tmpdir(), 'repslate-test-'))
  const studio = await openStudio(testSettings(folder, settings), { onFault: (error) => void faults.push(error) })
  const door = await openDoor(studio, { assets: await projectAssets() })
  const server = createServer(buildApp(views ? { ...door, views } : door, [...ROUTES, ...routes]))
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const close = async (): Promise<void> => {
    door.streams.close()
    server.closeAllConnections()
    await new Promise((resolve) => server.close(resolve))
    await studio.close()
    await rm(folder, { recursive: true, force: true })
  }
  const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  return { url, door, faults, close, dropConnections: () => server.closeAllConnections(), ...openClient(url) }
}

export function openClient(url: string): Client {
  const ask: Client['ask'] = (address, { method = 'GET', headers = {}, body } = {}) =>
    new Promise((resolve, reject) => {
      const sent = request(new URL(address, url), { method, headers, agent: false }, (res) => {
        const parts: Buffer[] = []
        res.on('data', (part: Buffer) => parts.push(part))
        res.on('error', reject)
        res.on('end', () => {
          const whole = Buffer.concat(parts)
          resolve({ status: res.statusCode ?? 0, headers: res.headers, body: whole, text: whole.toString('utf8') })
        })
      })
      sent.on('error', reject)
      sent.end(body)
    })
  const signed = async (): Promise<Record<string, string>> => {
    const { headers, text } = await ask('/session')
    const cookie = (headers['set-cookie'] ?? []).map((line) => line.split(';')[0] ?? '').join('; ')
    const { token } = JSON.parse(text) as { token: string }
    return { origin: url, cookie, 'x-repslate-token': token }
  }
  return { ask, signed }
}
