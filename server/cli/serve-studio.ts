/** Opens the studio for browsers and keeps it open until the person ends it. */
import { startServer } from '../serve.ts'
import type { Settings } from '../settings.ts'
import type { Io } from './io.ts'

const LOOPBACK = /^(127\.\d+\.\d+\.\d+|localhost|::1)$/

/** @param onOpen told the address as soon as browsers can reach it. @throws AppError port-busy, and what opening a studio throws */
export async function serveStudio(io: Io, settings: Settings, onOpen: (url: string) => void): Promise<void> {
  const { url, close } = await startServer(settings, {
    clock: () => io.nowUtc(),
    onFault: (error) => tell(io, error),
  })
  onOpen(url)
  io.say(`The studio is open at ${url}. Its data is in ${settings.dataFolder}. Ctrl-C ends it.\n`)
  if (!LOOPBACK.test(settings.host)) {
    io.say('Everyone who can reach this address can change everything: a studio has no accounts yet.\n')
  }
  await stopped(io.signal)
  io.say('Stopping: requests under way are finished first.\n')
  await close()
}

function stopped(signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (signal.aborted) resolve()
    else signal.addEventListener('abort', () => resolve(), { once: true })
  })
}

function tell(io: Io, error: unknown): void {
  io.say(`repslate: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`)
}
