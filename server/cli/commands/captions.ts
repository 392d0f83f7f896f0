/** `repslate captions`: writes the class's captions from its transcript. */
import type { Command } from 'commander'
import { buildCaptions } from '../../../core/captions/build-captions.ts'
import { writeSrt } from '../../../core/captions/write-srt.ts'
import { writeVtt } from '../../../core/captions/write-vtt.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { AppError } from '../../../shared/errors.ts'
import { probeRecording } from '../../actions/probe-recording.ts'
import { readTextFile, writeTextFile } from '../../files/text-files.ts'
import type { Io } from '../io.ts'

const PROFILES = ['web', 'vertical', 'broadcast', 'easy'] as const
type Profile = (typeof PROFILES)[number]

interface Options {
  out: string
  profile: string
}

export function addCaptions(program: Command, io: Io): void {
  program
    .command('captions')
    .description('write captions for the whole class (WebVTT, or SRT where --out ends in .srt)')
    .argument('<transcript>', 'the text of the class, with times')
    .argument('[recording]', 'the filmed class, for the end of the last line')
    .requiredOption('--out <file>', 'where the captions go')
    .option('--profile <name>', `line lengths and speeds: ${PROFILES.join(', ')}`, 'web')
    .action(async (file: string, recording: string | undefined, options: Options) => {
      const profile = readProfile(options.profile)
      const text = await readTextFile(file, 'transcript')
      const durationMs = recording === undefined ? null : (await probeRecording(recording)).durationMs
      const transcript = parseTranscript(text, { durationMs })
      if (transcript.kind === 'plan') {
        throw new AppError(
          'transcript-not-timed',
          `"${file}" is a class plan without times; captions need a timed transcript.`,
        )
      }
      const cues = buildCaptions(transcript, profile)
      await writeTextFile(options.out, /\.srt$/i.test(options.out) ? writeSrt(cues) : writeVtt(cues))
      io.say(`${cues.length} captions in ${options.out}\n`)
    })
}

function readProfile(name: string): Profile {
  const known = PROFILES.find((profile) => profile === name)
  if (known) return known
  throw new AppError('usage', `"${name}" is no caption profile. Choose from: ${PROFILES.join(', ')}.`)
}
