/** `repslate import`: takes a recording that lies on this machine into the studio. */
import type { Command } from 'commander'
import { importRecording } from '../../actions/import-recording.ts'
import { readSettings } from '../../settings.ts'
import { projectRoot } from '../../setup/project-root.ts'
import { openStudio } from '../../studio.ts'
import type { Io } from '../io.ts'

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
    .description('take a recording that lies on this machine into the studio, without an upload')
    .argument('<recording>', 'the filmed class; the file stays as it is')
    .option('--title <text>', "the class's title (default: the file's name)")
    .option('--part <file>', 'a further part of the film; again for each, in their order', collect, [])
    .option('--sound <file>', 'sound recorded apart; again for each', collect, [])
    .option('--camera <file>', 'the film of another camera; again for each', collect, [])
    .option('--data <folder>', "the studio's folder (default: data/studio in the project)")
    .action(async (file: string, options: Options) => {
      const settings = readSettings(process.env, projectRoot(), {
        ...(options.data === undefined ? {} : { dataFolder: options.data }),
      })
      const studio = await openStudio(settings, { clock: () => io.nowUtc() })
      try {
        const { title, part: parts, sound, camera: cameras } = options
        const { recording } = await importRecording(studio, { path: file, parts, sound, cameras, title })
        io.out(`${recording.id}\n`)
        io.say(`"${recording.title}" is on the shelf. It is looked through as soon as the studio is open.\n`)
      } finally {
        await studio.close()
      }
    })
}

const collect = (file: string, files: string[]): string[] => [...files, file]
