/** `repslate draft`: proposes a log sheet from a transcript or a class plan. */
import type { Command } from 'commander'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { explainMark, listMarks } from '../../../core/draft/explain-mark.ts'
import { writeDose } from '../../../core/dose/write-dose.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { AppError } from '../../../shared/errors.ts'
import { Audience, type LogSheet } from '../../../shared/log-sheet.ts'
import { writeLogSheet } from '../../../shared/read-log-sheet.ts'
import { readSecondReader } from '../../../shared/second-reader.ts'
import type { SecondReaderSettings } from '../../../shared/second-reader.ts'
import { formatClock, parseClock, type Ms } from '../../../shared/time.ts'
import type { ClassPlan, Transcript } from '../../../shared/transcript.ts'
import { askSecondReader } from '../../actions/ask-second-reader.ts'
import { savedReader } from '../../actions/change-reader.ts'
import { draftRecording, readAgain as readAgainRecording } from '../../actions/draft-recording.ts'
import { readTextFile } from '../../files/text-files.ts'
import type { Studio } from '../../studio.ts'
import type { Io } from '../io.ts'
import { CLASS_OPTION, DATA_OPTION, fileOrClass, withClass } from '../open-studio.ts'

interface Options {
  for?: string[]
  duration?: string
  title?: string
  json?: boolean
  why?: boolean
  secondReader?: boolean
  class?: string
  data?: string
}

export function addDraft(program: Command, io: Io): void {
  program
    .command('draft')
    .description('propose a log sheet from a transcript (WebVTT, SRT, "[m:ss] text", JSON words) or a class plan')
    .argument('[transcript]', 'the text of the class')
    .option(...CLASS_OPTION)
    .option(...DATA_OPTION)
    .option('--for <audience...>', `who the class is for: ${Audience.options.join(', ')}`)
    .option('--duration <clock>', 'length of the recording, as 12:44 or 1:02:10')
    .option('--title <text>', "the class's title")
    .option('--json', 'print the sheet only, no summary')
    .option('--why', 'tell on standard error the words, time, rule and sureness of every mark')
    .option('--second-reader', 'also ask the second reader of the REPSLATE_READER settings')
    .action(async (file: string | undefined, options: Options) => {
      const id = fileOrClass([file], options.class)
      if (id !== null) {
        const sheet = await withClass(io, options, id, (studio) => draftOf(studio, id, options, io))
        io.out(writeLogSheet(sheet))
        if (!options.json) io.say(options.why ? explain(sheet) : summarise(sheet))
        return
      }
      const audience = readAudience(options.for ?? [])
      const durationMs = readDuration(options.duration)
      const transcript = parseTranscript(await readTextFile(file ?? '', 'transcript'), { durationMs })
      const drafted = draftSheet({ transcript, audience, durationMs, title: options.title })
      const sheet = options.secondReader ? await readAgain(transcript, drafted, io) : drafted
      io.out(writeLogSheet(sheet))
      if (options.why) io.say(explain(sheet))
      else if (!options.json) io.say(summarise(sheet))
    })
}

/** Drafts a class of the studio from its newest transcript; what a person set or declined stays. */
async function draftOf(studio: Studio, recordingId: string, { secondReader }: Options, io: Io): Promise<LogSheet> {
  const [newest] = (await studio.store.transcripts.list(recordingId)).sort((a, b) => b.version - a.version)
  if (!newest) throw new AppError('row-missing', `No class "${recordingId}" with a transcript is in this studio.`)
  const reader = secondReader ? (readSecondReader(process.env) ?? (await savedReader(studio)) ?? wantedReader()) : null
  const input = { recordingId, transcriptVersion: newest.version }
  await draftRecording(studio, { ...input, opId: studio.ids() }, io.signal)
  if (reader) {
    const asking = { ...studio, settings: { ...studio.settings, reader } }
    const reading = await readAgainRecording(asking, { ...input, opId: studio.ids() }, io.signal)
    if (reading) tellReading(io, reading)
  }
  const stored = await studio.store.sheets.readOf(recordingId)
  if (!stored) throw new AppError('row-missing', `The log sheet of "${recordingId}" is gone.`)
  return stored.sheet
}

async function readAgain(transcript: Transcript | ClassPlan, sheet: LogSheet, io: Io): Promise<LogSheet> {
  const settings = wantedReader()
  if (transcript.kind === 'plan') return sheet
  const reading = await askSecondReader(settings, transcript.lines, sheet, io.signal)
  tellReading(io, reading)
  return reading.sheet
}

function wantedReader(): SecondReaderSettings {
  const settings = readSecondReader(process.env)
  if (settings) return settings
  throw new AppError('usage', 'No second reader is set. Give its address in REPSLATE_READER_URL.')
}

function tellReading(io: Io, { added, refused }: { added: number; refused: number }): void {
  io.say(`The second reader added ${added} proposals; ${refused} were left out.\n`)
}

function readAudience(words: readonly string[]): Audience[] {
  return words
    .flatMap((word) => word.split(','))
    .filter((word) => word !== '')
    .map((word) => {
      const known = Audience.safeParse(word)
      if (known.success) return known.data
      throw new AppError('usage', `"${word}" is no audience. Choose from: ${Audience.options.join(', ')}.`)
    })
}

function readDuration(text: string | undefined): Ms | null {
  if (text === undefined) return null
  const ms = parseClock(text)
  if (ms === null || ms === 0) throw new AppError('usage', `"${text}" is no length. Write it as 12:44 or 1:02:10.`)
  return ms
}

function summarise(sheet: LogSheet): string {
  const lines = sheet.segments.map((segment) => {
    const span = segment.spans[0]
    const dose = segment.prescription ? writeDose(segment.prescription) : 'no dose heard'
    return `  ${(span ? formatClock(span.startMs) : '-').padStart(7)}  ${segment.exercise.name}: ${dose}`
  })
  return [`Proposed ${sheet.segments.length} exercises; nobody has agreed to them yet.`, ...lines, ''].join('\n')
}

/** One block a mark: what it says, how sure, by which rule, from which words. */
function explain(sheet: LogSheet): string {
  return listMarks(sheet)
    .flatMap((ref) => {
      const why = explainMark(sheet, ref)
      if (why === null) return []
      const sure = why.confidence === null ? '' : `, ${Math.round(why.confidence * 100)} % sure`
      const words = why.words.map(
        ({ atMs, text }) => `    ${(atMs === null ? '-' : formatClock(atMs)).padStart(7)}  "${text}"`,
      )
      const doubts = why.doubts.map((doubt) => `             doubt: ${doubt}`)
      return [`${why.what}${sure}: ${why.rule?.says ?? 'Set by a person.'}`, ...words, ...doubts]
    })
    .concat('')
    .join('\n')
}
