/** Opens the studio for one command, beside a running server or without one, and closes it whatever happens. */
import path from 'node:path'
import { AppError } from '../../shared/errors.ts'
import { readSettings } from '../settings.ts'
import type { Settings } from '../settings.ts'
import { projectRoot } from '../setup/project-root.ts'
import { isStudioThere, openStudio } from '../studio.ts'
import type { Studio } from '../studio.ts'
import type { Io } from './io.ts'

/** The option that every command on the studio has. */
export const DATA_OPTION = ['--data <folder>', "the studio's folder (default: data/studio in the project)"] as const

/** The option of commands that take files, or a class of the studio in their place. */
export const CLASS_OPTION = [
  '--class <id>',
  'a class of the studio instead of files: its id, as import printed it',
] as const

/** No message lists more classes than this. */
const MOST_CLASSES = 12

/** The id where a class is named, null where all files are. @throws AppError usage */
export function fileOrClass(files: readonly (string | undefined)[], id: string | undefined): string | null {
  if (id !== undefined && files.some((file) => file !== undefined))
    throw new AppError('usage', 'Name files, or a class of the studio by --class, not both.')
  if (id === undefined && files.some((file) => file === undefined))
    throw new AppError('usage', 'A file is missing. Name each as --help says, or a class of the studio by --class.')
  return id ?? null
}

/** What the command line says comes before the environment; its folder is taken from where the person stands. */
export function settingsOf(
  io: Io,
  { data, ...given }: { data?: string | undefined; host?: string; port?: string },
): Settings {
  const dataFolder = data === undefined || data === '' ? {} : { dataFolder: path.resolve(io.folder, data) }
  return readSettings(process.env, projectRoot(), { ...given, ...dataFolder })
}

/** @throws AppError store-missing where there is no studio yet, which is not made then; what opening it throws */
export async function withStudio<Value>(
  io: Io,
  { data }: { data?: string },
  work: (studio: Studio) => Promise<Value>,
): Promise<Value> {
  const settings = settingsOf(io, { data })
  if (!isStudioThere(settings)) {
    throw new AppError(
      'store-missing',
      `There is no studio in ${settings.dataFolder}. Name its folder by --data; "serve" and "import" make a new one.`,
    )
  }
  return withNewStudio(io, settings, work)
}

/** The same, and a studio is made where there is none. */
export async function withNewStudio<Value>(
  io: Io,
  settings: Settings,
  work: (studio: Studio) => Promise<Value>,
): Promise<Value> {
  const studio = await openStudio(settings, { clock: () => io.nowUtc() })
  try {
    return await work(studio)
  } finally {
    await studio.close()
  }
}

/** For one class of the studio. @throws AppError row-missing, with the classes that there are; as withStudio */
export async function withClass<Value>(
  io: Io,
  options: { data?: string },
  id: string,
  work: (studio: Studio) => Promise<Value>,
): Promise<Value> {
  return withStudio(io, options, async (studio) => {
    const classes = await studio.store.recordings.list()
    if (classes.some((each) => each.id === id)) return work(studio)
    const where = `There is no class "${id}" in the studio of ${studio.dataFolder}.`
    if (classes.length === 0)
      throw new AppError('row-missing', `${where} It holds no class yet: "import" or its pages bring one in.`)
    const shown = classes.slice(0, MOST_CLASSES).map((each) => `${each.id}  ${each.title}`)
    const more = classes.length - shown.length
    throw new AppError('row-missing', `${where} Name one of these by its id, the first word of each line.`, {
      details: more > 0 ? [...shown, `… and ${more} older; each has its id in the address of its page`] : shown,
    })
  })
}
