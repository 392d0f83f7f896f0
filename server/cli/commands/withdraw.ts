/** `repslate withdraw`: takes a lesson from the members at once, or brings it back. */
import type { Command } from 'commander'
import { bringBackLesson, withdrawLesson } from '../../actions/withdraw-lesson.ts'
import type { Io } from '../io.ts'
import { DATA_OPTION, withStudio } from '../open-studio.ts'

interface Options {
  why: string
  bringBack?: boolean
  data?: string
}

export function addWithdraw(program: Command, io: Io): void {
  program
    .command('withdraw')
    .description('take a lesson from the members at once; its address stays and says so')
    .argument('<address>', 'the last part of the address, as heel-raises in /lessons/heel-raises')
    .option('--why <text>', 'for your own log', '')
    .option('--bring-back', 'show it again')
    .option(...DATA_OPTION)
    .action(async (slug: string, options: Options) => {
      const { name, state } = await withStudio(io, options, (studio) =>
        options.bringBack ? bringBackLesson(studio, { slug }) : withdrawLesson(studio, { slug, why: options.why }),
      )
      io.out(`${slug} ${state}\n`)
      io.say(state === 'withdrawn' ? `"${name}" is withdrawn.\n` : `"${name}" is shown again.\n`)
    })
}
