/** Starts a studio that browsers can reach, and stops it so that nothing is lost and nothing stays behind. */
import { createServer } from 'node:http'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { AppError } from '../shared/errors.ts'
import { buildApp } from './app.ts'
import { openDoor } from './door.ts'
import type { DoorOptions } from './door.ts'
import { startWork } from './jobs/start-work.ts'
import type { Settings } from './settings.ts'
import { openStudio } from './studio.ts'
import type { Outside, Studio } from './studio.ts'

export interface Running {
  /** Where a browser on this machine reaches it, such as `http://127.0.0.1:4180`. */
  url: string
  studio: Studio
  /** Ends event streams, waits for requests under way, then closes the studio. Safe to call twice. */
  close: () => Promise<void>
}

/** Ports tried after the first. */
const MOVES = 50
/** ms for all header lines of a request. */
const HEADERS_MS = 20_000
/** ms without a byte, after which a connection is given up: a stalled upload goes on later, a paused player asks again. */
const IDLE_MS = 300_000
/** ms that requests under way may take when the studio stops. */
const GRACE_MS = 10_000

/** @throws AppError port-busy, and what opening a studio throws */
export async function startServer(settings: Settings, outside: Outside & DoorOptions = {}): Promise<Running> {
  const studio = await openStudio(settings, outside)
  try {
    const door = await openDoor(studio, outside)
    const server = createServer({ requestTimeout: 0, headersTimeout: HEADERS_MS }, buildApp(door))
    server.timeout = IDLE_MS
    const port = await listen(server, settings)
    studio.beforeClose(await startWork(studio))
    let closing: Promise<void> | null = null
    const close = async (): Promise<void> => {
      door.streams.close()
      await stopListening(server)
      await studio.close()
    }
    return { url: `http://${urlHost(settings.host)}:${port}`, studio, close: () => (closing ??= close()) }
  } catch (error) {
    await studio.close()
    throw error
  }
}

/** Listens on the first free port from the wanted one on. */
async function listen(server: Server, { host, port }: Settings): Promise<number> {
  const last = port === 0 ? 0 : Math.min(port + MOVES, 65_535)
  for (let tried = port; ; tried += 1) {
    try {
      await tryPort(server, host, tried)
      return (server.address() as AddressInfo).port
    } catch (cause) {
      const code = (cause as NodeJS.ErrnoException).code
      if (code === 'EADDRINUSE' && tried < last) continue
      throw new AppError(
        'port-busy',
        code === 'EADDRINUSE'
          ? `The ports ${port} to ${last} of ${host} are all in use. Name another with REPSLATE_PORT or --port.`
          : `It is not possible to listen on ${host}, port ${tried}: ${(cause as Error).message}. Name another with --host and --port.`,
        { cause },
      )
    }
  }
}

function tryPort(server: Server, host: string, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    const settle = (error?: Error): void => {
      server.off('error', settle).off('listening', settle)
      if (error) reject(error)
      else resolve()
    }
    server.once('error', settle).once('listening', settle)
    server.listen({ host, port, exclusive: true })
  })
}

async function stopListening(server: Server): Promise<void> {
  const closed = new Promise((resolve) => server.close(resolve))
  server.closeIdleConnections()
  const impatience = setTimeout(() => server.closeAllConnections(), GRACE_MS)
  await closed
  clearTimeout(impatience)
}

/** RFC 3986 (2005), section 3.2.2: IPv6 in brackets. An address that means "all of them" is reached by loopback. */
function urlHost(host: string): string {
  if (host === '0.0.0.0') return '127.0.0.1'
  if (host === '::') return '[::1]'
  return host.includes(':') ? `[${host}]` : host
}
