/** `repslate read dose` and `repslate read cues`: lines of speech in, one JSON line out for each. */
import type { Command } from 'commander'
import { readDose } from '../../../core/dose/read-dose.ts'
import { tagCues } from '../../../core/draft/tag-cues.ts'
import type { Io } from '../io.ts'

export function addRead(program: Command, io: Io): void {
  const read = program.command('read').description('read lines from standard input; one JSON line out for each line in')
  read
    .command('dose')
    .description('each line: its prescription, or null where it holds no dose')
    .action(() => answerLines(io, (line) => readDose(line)))
  read
    .command('cues')
    .description('each line: its cues as [{"kind","text"}]')
    .action(() => answerLines(io, (line) => tagCues(line).map(({ kind, text }) => ({ kind, text }))))
}

async function answerLines(io: Io, answer: (line: string) => unknown): Promise<void> {
  const lines = (await io.readInput()).split(/\r?\n/)
  if (lines.at(-1) === '') lines.pop()
  for (const line of lines) io.out(`${JSON.stringify(answer(line))}\n`)
}
