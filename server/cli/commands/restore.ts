/** `repslate restore`: makes a studio's folder from a backup. */
import type { Command } from 'commander'
import { restoreStudio } from '../../actions/restore.ts'
import type { Io } from '../io.ts'
import { showProgress } from '../progress.ts'
import { describeBytes } from './backup.ts'

export function addRestore(program: Command, io: Io): void {
  program
    .command('restore')
    .description('make a new studio folder from a backup; all of it is checked before it counts')
    .argument('<folder>', 'the folder of backups (the newest is taken), or one backup in it')
    .requiredOption('--to <folder>', 'the new folder; nothing may be in it')
    .action(async (from: string, { to }: { to: string }) => {
      const clock = (): number => io.nowUtc()
      const progress = showProgress(io)
      const told = { signal: io.signal, onProgress: progress.show }
      const restored = await restoreStudio(clock, { from, dataFolder: to }, told).finally(() => progress.end())
      io.out(`${restored.dataFolder}\n`)
      const at = new Date(restored.atUtc).toISOString().slice(0, 16).replace('T', ' ')
      io.say(
        `The studio of ${at} UTC: ${restored.recordings} classes, ${restored.lessons} lessons, ${restored.files} files, ${describeBytes(restored.bytes)}. Open it with: repslate serve --data ${restored.dataFolder}\n`,
      )
    })
}
