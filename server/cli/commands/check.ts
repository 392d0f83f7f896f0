/** `repslate check`: what still stands between a log sheet and its lessons. */
import type { Command } from 'commander'
import { readVtt } from '../../../core/captions/read-vtt.ts'
import { keptRanges } from '../../../core/segments/kept-ranges.ts'
import { checkSheet } from '../../../core/checks/check-sheet.ts'
import type { LogSheet } from '../../../shared/log-sheet.ts'
import { AppError } from '../../../shared/errors.ts'
import { readLogSheet } from '../../../shared/read-log-sheet.ts'
import { overlapMs } from '../../../shared/time.ts'
import { checkRecording } from '../../actions/check-recording.ts'
import type { CheckedSheet } from '../../actions/check-recording.ts'
import { readTextFile } from '../../files/text-files.ts'
import type { Studio } from '../../studio.ts'
import type { Io } from '../io.ts'
import type { Finish } from '../main.ts'
import { describeReport } from '../describe-report.ts'
import { CLASS_OPTION, DATA_OPTION, fileOrClass, withClass } from '../open-studio.ts'

interface Options {
  captions?: string
  class?: string
  data?: string
  json?: boolean
}

export function addCheck(program: Command, io: Io, finish: Finish): void {
  program
    .command('check')
    .description('check a log sheet: doses, cautions inside each clip, spans, rights; exit 1 when stops stand')
    .argument('[log-sheet]', 'the log sheet (JSON)')
    .option(...CLASS_OPTION)
    .option(...DATA_OPTION)
    .option('--captions <vtt>', "the class's captions, to check that each lesson has some")
    .option('--json', 'print the check report as JSON')
    .action(async (file: string | undefined, options: Options) => {
      const id = fileOrClass([file], options.class)
      if (id !== null) {
        const { sheet, report } = await withClass(io, options, id, (studio) => checkOf(studio, id))
        io.out(options.json ? `${JSON.stringify(report, null, 2)}\n` : describeReport(sheet, report))
        finish(report.findings.some((finding) => finding.severity === 'stop') ? 1 : 0)
        return
      }
      const sheet = readLogSheet(await readTextFile(file ?? '', 'log sheet'))
      const captions = options.captions === undefined ? null : await captionedSegments(sheet, options.captions)
      const report = checkSheet(sheet, { captions, nowUtc: io.nowUtc() })
      io.out(options.json ? `${JSON.stringify(report, null, 2)}\n` : describeReport(sheet, report))
      finish(report.findings.some((finding) => finding.severity === 'stop') ? 1 : 0)
    })
}

async function checkOf(studio: Studio, id: string): Promise<CheckedSheet> {
  const checked = await checkRecording(studio, id)
  if (checked) return checked
  throw new AppError('row-missing', `No class "${id}" with a log sheet is in this studio. Draft it first.`)
}

/** For each segment: does a caption fall in what its clip keeps? */
async function captionedSegments(sheet: LogSheet, file: string): Promise<Record<string, boolean>> {
  const { cues } = readVtt(await readTextFile(file, 'caption file'))
  return Object.fromEntries(
    sheet.segments.map((segment) => [
      segment.id,
      keptRanges(segment).some((range) => cues.some((cue) => overlapMs(range, cue) > 0)),
    ]),
  )
}
