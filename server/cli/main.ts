/** The command line: its words, its help and its exit codes (0 fine, 1 stops stand or a clip failed, 2 bad input, 3 this machine). */
import { Command, CommanderError } from 'commander'
import { AppError } from '../../shared/errors.ts'
import { addBackup } from './commands/backup.ts'
import { addCaptions } from './commands/captions.ts'
import { addChapters } from './commands/chapters.ts'
import { addCheck } from './commands/check.ts'
import { addCut } from './commands/cut.ts'
import { addDemo } from './commands/demo.ts'
import { addDoctor } from './commands/doctor.ts'
import { addDraft } from './commands/draft.ts'
import { addExport } from './commands/export.ts'
import { addImport } from './commands/import.ts'
import { addPublish } from './commands/publish.ts'
import { addRead } from './commands/read.ts'
import { addRestore } from './commands/restore.ts'
import { addServe } from './commands/serve.ts'
import { addWithdraw } from './commands/withdraw.ts'
import { processIo, type Io } from './io.ts'

/** A command's work is done when it returns its exit code. */
export type Finish = (exitCode: number) => void

const EXAMPLES = `
The road, step by step:
  $ repslate draft class.txt --for older-adults --duration 52:10 > sheet.json
  $ repslate check sheet.json
  $ repslate cut class.mp4 sheet.json --out clips
  $ repslate publish class.mp4 sheet.json class.txt --out library

Exit codes: 0 fine; 1 stops stand (check, publish) or a clip failed (cut); 2 bad input; 3 this machine lacks something.
Repslate gives no medical advice. Doses and cautions are the instructor's to confirm; licensed practice and local rules come first.`

/**
 * Runs one command line.
 * @param argv the words after the program's name
 * @returns the exit code
 */
export async function main(argv: readonly string[], io: Io = processIo()): Promise<number> {
  let exitCode = 0
  const finish: Finish = (code) => {
    exitCode = code
  }
  const program = buildProgram(io, finish)
  try {
    await program.parseAsync([...argv], { from: 'user' })
    return exitCode
  } catch (error) {
    return explain(error, io)
  }
}

/** The program with all its commands; the help texts come from here. */
export function buildProgram(io: Io, finish: Finish): Command {
  const program = new Command('repslate')
    .description('From one filmed class to single-exercise lessons with doses, cautions, captions and chapters.')
    .version('0.1.0', '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of a command')
    .addHelpText('after', EXAMPLES)
    .configureOutput({ writeOut: (text) => io.out(text), writeErr: (text) => io.say(text) })
    .configureHelp({ helpWidth: 100 })
    .exitOverride()
  const adders = [
    addDraft,
    addCheck,
    addCut,
    addCaptions,
    addChapters,
    addRead,
    addPublish,
    addServe,
    addImport,
    addWithdraw,
    addExport,
    addBackup,
    addRestore,
    addDemo,
    addDoctor,
  ]
  for (const add of adders) add(program, io, finish)
  return program
}

/** Tells the person what went wrong and returns the exit code that says so to programs. */
function explain(error: unknown, io: Io): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2
  if (error instanceof AppError) {
    io.say(`repslate: ${error.message} [${error.code}]\n`)
    for (const line of error.details) io.say(`  ${line}\n`)
    return io.signal.aborted ? 130 : error.exitCode
  }
  if (io.signal.aborted) {
    io.say('repslate: stopped. What was finished is kept.\n')
    return 130
  }
  const cause = error instanceof Error ? (error.stack ?? error.message) : String(error)
  io.say(`repslate: a fault of this program; nothing you did. Please report the lines below. [internal]\n  ${cause}\n`)
  return 3
}
