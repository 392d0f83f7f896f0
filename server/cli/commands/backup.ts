/** `repslate backup`: copies the studio into a folder; a second time only what is new. */
import type { Command } from 'commander'
import { backUpStudio } from '../../actions/back-up.ts'
import type { Io } from '../io.ts'
import { DATA_OPTION, withStudio } from '../open-studio.ts'
import { showProgress } from '../progress.ts'

interface Options {
  recheck?: boolean
  data?: string
}

export function addBackup(program: Command, io: Io): void {
  program
    .command('backup')
    .description('copy the studio into a folder, also while it is open; a second backup copies only what is new')
    .argument('<folder>', 'best on another disk; keeps every backup made there')
    .option('--recheck', 'read again what earlier backups copied, and copy anew what is damaged')
    .option(...DATA_OPTION)
    .action(async (folder: string, options: Options) => {
      const progress = showProgress(io)
      const told = { signal: io.signal, onProgress: progress.show }
      const made = await withStudio(io, options, (studio) =>
        backUpStudio(studio, { folder, recheck: options.recheck === true }, told),
      ).finally(() => progress.end())
      io.out(`${made.folder}\n`)
      io.say(
        `${made.files} files, ${describeBytes(made.bytes)}; new: ${made.newFiles} files, ${describeBytes(made.newBytes)}. Every sum was checked.\n`,
      )
    })
}

export function describeBytes(bytes: number): string {
  return bytes < 1e6
    ? `${Math.ceil(bytes / 1e3)} kB`
    : bytes < 1e9
      ? `${(bytes / 1e6).toFixed(1)} MB`
      : `${(bytes / 1e9).toFixed(2)} GB`
}
