/** `repslate export`: packs the published lessons of a recording into one zip, for another studio or for keeping. */
import type { Command } from 'commander'
import { exportRecording } from '../../actions/export-recording.ts'
import type { Io } from '../io.ts'
import { DATA_OPTION, withClass } from '../open-studio.ts'
import { describeBytes } from './backup.ts'

export function addExport(program: Command, io: Io): void {
  program
    .command('export')
    .description(
      'pack the published lessons of a recording into one zip: clips, captions, chapters, log sheet, manifest',
    )
    .argument('<recording>', 'its id, as import printed it and as it stands in /recordings/<id>')
    .argument('<file>', 'the zip to write; it must not be there yet')
    .option(...DATA_OPTION)
    .action(async (recordingId: string, file: string, options: { data?: string }) => {
      const made = await withClass(io, options, recordingId, (studio) => exportRecording(studio, { recordingId, file }))
      io.out(`${made.file}\n`)
      io.say(`${made.lessons.length} lessons, ${describeBytes(made.bytes)}. "import" takes it into another studio.\n`)
    })
}
