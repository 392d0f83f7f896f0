/** `repslate serve`: opens the studio for browsers on this machine. */
import type { Command } from 'commander'
import { startServer } from '../../serve.ts'
import { readSettings } from '../../settings.ts'
import { projectRoot } from '../../setup/project-root.ts'
import type { Io } from '../io.ts'
import type { Finish } from '../main.ts'

interface Options {
  host?: string
  port?: string
  data?: string
}

const LOOPBACK = /^(127\.\d+\.\d+\.\d+|localhost|::1)$/

export function addServe(program: Command, io: Io, finish: Finish): void {
  program
    .command('serve')
    .description('open the studio for browsers on this machine')
    .option('--host <address>', 'listen on this address (default: 127.0.0.1, this machine only)')
    .option('--port <number>', 'listen on this port, or the next free one (default: 4180)')
    .option('--data <folder>', 'keep everything in this folder (default: data/studio in the project)')
    .action(async (options: Options) => {
      const settings = readSettings(process.env, projectRoot(), {
        ...(options.host === undefined ? {} : { host: options.host }),
        ...(options.port === undefined ? {} : { port: options.port }),
        ...(options.data === undefined ? {} : { dataFolder: options.data }),
      })
      const { url, close } = await startServer(settings, {
        clock: () => io.nowUtc(),
        onFault: (error) => tell(io, error),
      })
      io.out(`${url}\n`)
      io.say(`The studio is open at ${url}. Its data is in ${settings.dataFolder}. Ctrl-C ends it.\n`)
      if (!LOOPBACK.test(settings.host)) {
        io.say('Everyone who can reach this address can change everything: a studio has no accounts yet.\n')
      }
      await stopped(io.signal)
      io.say('Stopping: requests under way are finished first.\n')
      await close()
      finish(0)
    })
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
