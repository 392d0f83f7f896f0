/** `repslate demo`: takes the demo class from file to lessons, then opens the studio with the same class in it. */
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Command } from 'commander'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { hashFile } from '../../../core/media/engine/hash-file.ts'
import { AppError } from '../../../shared/errors.ts'
import { formatClock } from '../../../shared/time.ts'
import { addDemoClass } from '../../actions/add-demo-class.ts'
import type { DemoClass } from '../../actions/add-demo-class.ts'
import { probeRecording } from '../../actions/probe-recording.ts'
import { publishClass } from '../../actions/publish-class.ts'
import { ensureFfmpeg } from '../../setup/ensure-tools.ts'
import type { Settings } from '../../settings.ts'
import { projectRoot } from '../../setup/project-root.ts'
import type { Io } from '../io.ts'
import type { Finish } from '../main.ts'
import { describeReport } from '../describe-report.ts'
import { settingsOf, withNewStudio } from '../open-studio.ts'
import { showProgress } from '../progress.ts'
import { serveStudio } from '../serve-studio.ts'
import { describePublished } from './publish.ts'

const CLASS = 'steady-and-strong'

interface Options {
  out?: string
  /** False with --no-serve. */
  serve: boolean
}

const TITLE = 'Steady and Strong: chair class'
const AUDIENCE = ['older-adults'] as const

export function addDemo(program: Command, io: Io, finish: Finish): void {
  program
    .command('demo')
    .description('take the demo class from one recording to lessons, then open the studio with it')
    .option('--out <folder>', 'where the library goes (default: data/demo in the project)')
    .option('--no-serve', 'end after the work')
    .action(async (options: Options) => {
      const root = projectRoot()
      const out = options.out === undefined ? path.join(root, 'data', 'demo') : path.resolve(io.folder, options.out)
      const recordingPath = path.join(root, 'media-samples', `${CLASS}.mp4`)
      const ffmpeg = await ensureFfmpeg((text) => io.say(text))
      io.say(`ffmpeg ${ffmpeg.version} (${ffmpeg.from})\n`)

      const { durationMs } = await probeRecording(recordingPath)
      io.say(`\n1  The recording: one take of ${formatClock(durationMs)}, ${path.relative(root, recordingPath)}\n`)

      const text = await readFile(path.join(root, 'media-samples', `${CLASS}.vtt`), 'utf8')
      const transcript = parseTranscript(text, { durationMs })
      if (transcript.kind === 'plan') throw new AppError('transcript-not-timed', 'The demo transcript has no times.')
      io.say(`2  The transcript: ${transcript.lines.length} lines of speech\n`)

      const sheet = draftSheet({
        transcript,
        durationMs,
        audience: [...AUDIENCE],
        title: TITLE,
      })
      const doses = sheet.segments.filter((segment) => segment.prescription !== null).length
      const cues = sheet.segments.reduce((sum, segment) => sum + segment.cues.length, 0)
      io.say(
        `3  The draft: ${sheet.segments.length} exercises, ${doses} doses, ${cues} cues; nobody has agreed to them yet\n`,
      )

      io.say('4  The checks\n\n')
      const progress = showProgress(io)
      const published = await publishClass({
        recordingPath,
        sheet,
        transcript,
        outDir: out,
        jobs: 2,
        nowUtc: io.nowUtc(),
        onChecked: (report) => {
          io.out(`${describeReport(sheet, report)}\n`)
          io.say('5  Cut, caption and publish what has no stop\n')
        },
        signal: io.signal,
        onProgress: progress.show,
      })
      progress.end()
      io.say('\n')
      io.out(describePublished(published, shortPath(io.folder, out)))
      for (const { name, message } of published.failed) io.say(`repslate: ${name}: ${message}\n`)
      finish(published.failed.length > 0 ? 1 : 0)
      if (!options.serve) return

      io.say('6  The studio: the same class, to look at and change\n')
      const settings = settingsOf(io, {})
      const cutDir = path.join(out, 'cut')
      const film = { filmPath: recordingPath, sha256: await hashFile(recordingPath), durationMs, cutDir }
      const id = await fillStudio(io, settings, { ...film, title: TITLE, audience: [...AUDIENCE], text })
      await serveStudio(io, settings, (url) => io.out(describeStudio(url, id)))
    })
}

/** As the person would type it, whole where it lies elsewhere. */
function shortPath(from: string, to: string): string {
  const way = path.relative(from, to) || '.'
  return way.startsWith('..') ? to : way
}

async function fillStudio(io: Io, settings: Settings, demo: DemoClass): Promise<string> {
  const progress = showProgress(io)
  const told = { signal: io.signal, onProgress: progress.show }
  return withNewStudio(io, settings, (studio) => addDemoClass(studio, demo, told)).finally(() => progress.end())
}

/** Where to look first. */
function describeStudio(url: string, recordingId: string): string {
  const places = [
    ['', 'the shelf of classes'],
    [`recordings/${recordingId}`, 'the class with its exercises'],
    [`recordings/${recordingId}/checks`, 'what the checks found'],
    [`recordings/${recordingId}/publish`, 'what was published and what is held back'],
    ['library', 'the lessons, as members see them'],
  ]
  const lines = places.map(([address, what]) => `  ${url}/${address}  ${what}`)
  return ['', `Open ${url} in a browser.`, ...lines, '', ''].join('\n')
}
