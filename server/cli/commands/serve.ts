/** `repslate serve`: opens the studio for browsers on this machine. */
import type { Command } from 'commander'
import type { Io } from '../io.ts'
import type { Finish } from '../main.ts'
import { settingsOf } from '../open-studio.ts'
import { serveStudio } from '../serve-studio.ts'

interface Options {
  host?: string
  port?: string
  data?: string
}

export function addServe(program: Command, io: Io, finish: Finish): void {
  program
    .command('serve')
    .description('open the studio for browsers on this machine')
    .option('--host <address>', 'listen on this address (default: 127.0.0.1, this machine only)')
    .option('--port <number>', 'listen on this port, or the next free one (default: 4180)')
    .option('--data <folder>', 'keep everything in this folder (default: data/studio in the project)')
    .action(async (options: Options) => {
      await serveStudio(io, settingsOf(io, options), (url) => io.out(`${url}\n`))
      finish(0)
    })
}
