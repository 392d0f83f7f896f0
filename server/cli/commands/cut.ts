/** `repslate cut`: cuts the clips of a log sheet from the recording. */
import type { Command } from 'commander'
import { AppError } from '../../../shared/errors.ts'
import { readLogSheet } from '../../../shared/read-log-sheet.ts'
import { cutClass } from '../../actions/cut-class.ts'
import { readTextFile } from '../../files/text-files.ts'
import type { Io } from '../io.ts'
import type { Finish } from '../main.ts'
import { showProgress } from '../progress.ts'

interface Options {
  out: string
  exact?: boolean
  jobs?: string
  silent?: boolean
  soundTrack?: string
  part?: string[]
  sound?: string
  anyRecording?: boolean
  json?: boolean
}

export function addCut(program: Command, io: Io, finish: Finish): void {
  program
    .command('cut')
    .description('cut frame-exact clips from the recording; writes manifest.json beside them')
    .argument('<recording>', 'the filmed class (MP4, MOV, 3GP, MKV, WebM, MPEG-TS, AVI)')
    .argument('<log-sheet>', 'the log sheet (JSON)')
    .requiredOption('--out <folder>', 'where the clips go')
    .option(
      '--exact',
      'start every clip on the very frame of its mark, also where a cheaper frame lies in the same pause',
    )
    .option('--jobs <n>', 'clips cut side by side', '2')
    .option('--part <file...>', 'further files of a class filmed in parts, in order after the recording')
    .option('--sound <file>', "publish this sound, recorded apart, in place of the film's own")
    .option('--sound-track <n>', 'which sound track of the recording is published, from 1')
    .option('--silent', 'accept a recording without sound')
    .option('--any-recording', 'cut although the sheet was marked on another recording')
    .option('--json', 'print the manifest')
    .action(async (recording: string, file: string, options: Options) => {
      const sheet = readLogSheet(await readTextFile(file, 'log sheet'))
      const progress = showProgress(io, options.json === true)
      const manifest = await cutClass({
        recordingPath: recording,
        sheet,
        outDir: options.out,
        jobs: readJobs(options.jobs),
        silent: options.silent,
        soundTrack: readTrack(options.soundTrack),
        parts: options.part,
        soundPath: options.sound,
        onNote: (text) => io.say(`repslate: ${text}\n`),
        anyRecording: options.anyRecording,
        freeInPoints: options.exact !== true,
        signal: io.signal,
        onProgress: progress.show,
      })
      progress.end()
      if (options.json) io.out(`${JSON.stringify(manifest, null, 2)}\n`)
      else io.out(describeManifest(manifest, options.out))
      for (const { name, message } of manifest.failed) io.say(`repslate: ${name}: ${message}\n`)
      finish(manifest.failed.length > 0 ? 1 : 0)
    })
}

/** Reads --jobs: a whole number from 1 to 16. */
export function readJobs(text: string | undefined): number {
  const jobs = Number(text ?? '2')
  if (Number.isInteger(jobs) && jobs >= 1 && jobs <= 16) return jobs
  throw new AppError('usage', `--jobs takes a whole number from 1 to 16, not "${text}".`)
}

function readTrack(text: string | undefined): number | undefined {
  if (text === undefined) return undefined
  const track = Number(text)
  if (Number.isInteger(track) && track >= 1) return track
  throw new AppError('usage', `--sound-track takes a whole number from 1 on, not "${text}".`)
}

/** What was done to the picture. */
const WAYS = { copy: 'copied', edge: 'edge encoded', full: 'encoded' } as const

function describeManifest(manifest: Awaited<ReturnType<typeof cutClass>>, out: string): string {
  const lines = manifest.clips.map(
    (clip) =>
      `  ${clip.file}  ${(clip.durationMs / 1000).toFixed(1)} s, ${clip.frames} frames, ${WAYS[clip.method]}${clip.reused ? ', kept from before' : ''}`,
  )
  const failed = manifest.failed.length > 0 ? `, ${manifest.failed.length} failed` : ''
  return [`${manifest.clips.length} clips in ${out}${failed}`, ...lines, ''].join('\n')
}
