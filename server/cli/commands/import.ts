/** `repslate import`: takes a recording, or the lessons that another studio exported, into the studio. */
import { open } from 'node:fs/promises'
import type { Command } from 'commander'
import { AppError } from '../../../shared/errors.ts'
import { findFfmpeg } from '../../../core/media/engine/find-ffmpeg.ts'
import { importExport, lookIntoExport } from '../../actions/import-export.ts'
import type { Imported } from '../../actions/import-export.ts'
import { importRecording } from '../../actions/import-recording.ts'
import { lookInto } from '../../actions/take-media.ts'
import type { Io } from '../io.ts'
import { DATA_OPTION, settingsOf, withNewStudio } from '../open-studio.ts'

interface Options {
  title?: string
  part: string[]
  sound: string[]
  camera: string[]
  data?: string
}

export function addImport(program: Command, io: Io): void {
  program
    .command('import')
    .description('take a recording that lies on this machine, or an export of another studio, into the studio')
    .argument('<recording>', 'the filmed class, or a zip that "export" wrote; the file stays as it is')
    .option('--title <text>', "the class's title (default: the file's name)")
    .option('--part <file>', 'a further part of the film; again for each, in their order', collect, [])
    .option('--sound <file>', 'sound recorded apart; again for each', collect, [])
    .option('--camera <file>', 'the film of another camera; again for each', collect, [])
    .option(...DATA_OPTION)
    .action(async (file: string, options: Options) => {
      const settings = settingsOf(io, options)
      if (await isZip(file)) {
        if (options.title !== undefined || options.part.length + options.sound.length + options.camera.length > 0)
          throw new AppError('usage', 'An export brings its title and files along. Give the zip alone.')
        await lookIntoExport(file)
        tell(io, await withNewStudio(io, settings, (studio) => importExport(studio, { file })))
        return
      }
      const { part: parts, sound, camera: cameras } = options
      const title = readTitle(options.title)
      await lookIntoAll([file, ...parts], sound, cameras)
      const { recording } = await withNewStudio(io, settings, (studio) =>
        importRecording(studio, { path: file, parts, sound, cameras, title }),
      )
      io.out(`${recording.id}\n`)
      io.say(`"${recording.title}" is on the shelf. It is looked through as soon as the studio is open.\n`)
    })
}

/** All of them before anything is made: a slip in the last name leaves no studio and no half class behind. */
async function lookIntoAll(parts: readonly string[], sound: readonly string[], cameras: readonly string[]) {
  const needs = { ffmpeg: await findFfmpeg() }
  for (const file of parts) await lookInto(needs, file, 'part')
  for (const file of sound) await lookInto(needs, file, 'sound')
  for (const file of cameras) await lookInto(needs, file, 'camera')
}

function readTitle(text: string | undefined): string | undefined {
  const title = text?.trim()
  if (title === undefined || (title !== '' && title.length <= 200)) return title
  throw new AppError('usage', '--title takes 1 to 200 characters.')
}

/** What came in, what was here, and what is held back with its reasons. */
function tell(io: Io, { recordingId, title, lessons, known, held }: Imported): void {
  if (recordingId !== null) io.out(`${recordingId}\n`)
  for (const { name, slug } of lessons) io.say(`"${name}" is in the library: /lessons/${slug}\n`)
  for (const name of known) io.say(`"${name}" was here already.\n`)
  for (const { name, reasons } of held) io.say(`"${name}" is held back: ${reasons.join(' ')}\n`)
  io.say(`"${title}": ${lessons.length === 1 ? 'one lesson' : `${lessons.length} lessons`} taken in.\n`)
}

/** By its first bytes (APPNOTE.TXT 6.3, section 4.3.7, from memory); a file that cannot be read is none. */
async function isZip(file: string): Promise<boolean> {
  try {
    const handle = await open(file, 'r')
    const { buffer } = await handle.read(Buffer.alloc(4), 0, 4, 0).finally(() => handle.close())
    return buffer.toString('latin1') === 'PK\u0003\u0004'
  } catch {
    return false
  }
}

const collect = (file: string, files: string[]): string[] => [...files, file]
