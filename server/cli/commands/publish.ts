/** `repslate publish`: from recording, log sheet and transcript to lessons. */
import type { Command } from 'commander'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { AppError } from '../../../shared/errors.ts'
import { readLogSheet } from '../../../shared/read-log-sheet.ts'
import { formatClock } from '../../../shared/time.ts'
import { publishClass, type Published } from '../../actions/publish-class.ts'
import { publishLessons } from '../../actions/publish-lessons.ts'
import type { PublishedLessons } from '../../actions/publish-lessons.ts'
import { readTextFile } from '../../files/text-files.ts'
import type { Io } from '../io.ts'
import type { Finish } from '../main.ts'
import { CLASS_OPTION, DATA_OPTION, fileOrClass, withClass } from '../open-studio.ts'
import { showProgress } from '../progress.ts'
import { readJobs } from './cut.ts'

interface Options {
  out?: string
  class?: string
  data?: string
  jobs?: string
  json?: boolean
}

export function addPublish(program: Command, io: Io, finish: Finish): void {
  program
    .command('publish')
    .description('publish every exercise without a stop as a lesson; hold back the others and say why')
    .argument('[recording]', 'the filmed class')
    .argument('[log-sheet]', 'the log sheet (JSON)')
    .argument('[transcript]', 'the text of the class, with times')
    .option('--out <folder>', 'where the library goes; needed with files')
    .option(...CLASS_OPTION)
    .option(...DATA_OPTION)
    .option('--jobs <n>', 'clips cut side by side', '2')
    .option('--json', 'print what was made as JSON')
    .action(async (recording?: string, sheetFile?: string, transcriptFile?: string, options: Options = {}) => {
      const id = fileOrClass([recording, sheetFile, transcriptFile], options.class)
      if (id !== null) {
        const made = await publishFrom(io, id, options)
        io.out(options.json ? `${JSON.stringify(made, null, 2)}\n` : describeLessons(made))
        for (const { name, message } of made.failed) io.say(`repslate: ${name}: ${message}\n`)
        finish(made.held.length > 0 || made.failed.length > 0 ? 1 : 0)
        return
      }
      if (
        recording === undefined ||
        sheetFile === undefined ||
        transcriptFile === undefined ||
        options.out === undefined
      )
        throw new AppError('usage', 'Say by --out in which folder the library goes.')
      const sheet = readLogSheet(await readTextFile(sheetFile, 'log sheet'))
      const transcript = parseTranscript(await readTextFile(transcriptFile, 'transcript'), {
        durationMs: sheet.durationMs,
      })
      if (transcript.kind === 'plan') {
        throw new AppError(
          'transcript-not-timed',
          `"${transcriptFile}" is a class plan without times; lessons need a timed transcript.`,
        )
      }
      const progress = showProgress(io, options.json === true)
      const published = await publishClass({
        recordingPath: recording,
        sheet,
        transcript,
        outDir: options.out,
        jobs: readJobs(options.jobs),
        nowUtc: io.nowUtc(),
        signal: io.signal,
        onProgress: progress.show,
      })
      progress.end()
      io.out(
        options.json ? `${JSON.stringify(published.library, null, 2)}\n` : describePublished(published, options.out),
      )
      for (const { name, message } of published.failed) io.say(`repslate: ${name}: ${message}\n`)
      finish(published.held.length > 0 || published.failed.length > 0 ? 1 : 0)
    })
}

async function publishFrom(io: Io, id: string, options: Options): Promise<PublishedLessons> {
  const progress = showProgress(io, options.json === true)
  return withClass(io, options, id, (studio) =>
    publishLessons(studio, { recordingId: id }, { signal: io.signal, onProgress: progress.show }),
  ).finally(() => progress.end())
}

/** What became a lesson of the library, new or changed, and what was held back. */
function describeLessons({ lessons, held }: PublishedLessons): string {
  const back = held.flatMap(({ name, reasons }) => [
    `  ■ ${name}`,
    ...reasons.map((reason) => `      ${withoutName(reason, name)}`),
  ])
  return [
    lessons.length === 0 ? 'No lesson is new or changed.' : `${lessons.length} lessons, new or changed:`,
    ...lessons.map(({ name, slug, version }) => `  ✓ ${name}: /lessons/${slug}, version ${version}`),
    ...(back.length > 0 ? ['', `${held.length} held back:`, ...back] : []),
    '',
  ].join('\n')
}

/** What was made and what was held back, in words. */
export function describePublished({ library, held }: Published, out: string): string {
  const made = library.lessons.map(
    ({ name, dose, durationMs, folder }) => `  ✓ ${name}: ${dose}  (${formatClock(durationMs)}, ${out}/${folder})`,
  )
  const back = held.flatMap(({ segment, reasons }) => [
    `  ■ ${segment.exercise.name}`,
    ...reasons.map((reason) => `      ${withoutName(reason, segment.exercise.name)}`),
  ])
  return [
    `${library.lessons.length} lessons, each with clip, captions, chapters and description:`,
    ...made,
    ...(back.length > 0 ? ['', `${held.length} held back:`, ...back] : []),
    '',
  ].join('\n')
}

/** The reason under the exercise's name need not repeat it. */
function withoutName(reason: string, name: string): string {
  return reason.startsWith(`${name}: `) ? capitalised(reason.slice(name.length + 2)) : reason
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
