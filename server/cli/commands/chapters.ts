/** `repslate chapters`: writes the chapters of the whole class. */
import type { Command } from 'commander'
import { buildClassChapters } from '../../../core/chapters/build-chapters.ts'
import { writeChaptersVtt } from '../../../core/chapters/write-chapters-vtt.ts'
import { readLogSheet } from '../../../shared/read-log-sheet.ts'
import { readTextFile, writeTextFile } from '../../files/text-files.ts'
import type { Io } from '../io.ts'

export function addChapters(program: Command, io: Io): void {
  program
    .command('chapters')
    .description('write the chapters of the whole class (WebVTT)')
    .argument('<log-sheet>', 'the log sheet (JSON)')
    .requiredOption('--out <file>', 'where the chapters go')
    .action(async (file: string, options: { out: string }) => {
      const sheet = readLogSheet(await readTextFile(file, 'log sheet'))
      const chapters = buildClassChapters(sheet)
      await writeTextFile(options.out, writeChaptersVtt(chapters))
      io.say(`${chapters.length} chapters in ${options.out}\n`)
    })
}
