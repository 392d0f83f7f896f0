/** Opens the studio for one command, beside a running server or without one, and closes it whatever happens. */
import { AppError } from '../../shared/errors.ts'
import { readSettings } from '../settings.ts'
import { projectRoot } from '../setup/project-root.ts'
import { openStudio } from '../studio.ts'
import type { Studio } from '../studio.ts'
import type { Io } from './io.ts'

/** The option that every command on the studio has. */
export const DATA_OPTION = ['--data <folder>', "the studio's folder (default: data/studio in the project)"] as const

/** The option of commands that take files, or a class of the studio in their place. */
export const CLASS_OPTION = [
  '--class <id>',
  'a class of the studio instead of files: its id, as import printed it',
] as const

/** The id where a class is named, null where all files are. @throws AppError usage */
export function fileOrClass(files: readonly (string | undefined)[], id: string | undefined): string | null {
  if (id !== undefined && files.some((file) => file !== undefined))
    throw new AppError('usage', 'Name files, or a class of the studio by --class, not both.')
  if (id === undefined && files.some((file) => file === undefined))
    throw new AppError('usage', 'A file is missing. Name each as --help says, or a class of the studio by --class.')
  return id ?? null
}

export async function withStudio<Value>(
  io: Io,
  { data }: { data?: string },
  work: (studio: Studio) => Promise<Value>,
): Promise<Value> {
  const settings = readSettings(process.env, projectRoot(), data === undefined ? {} : { dataFolder: data })
  const studio = await openStudio(settings, { clock: () => io.nowUtc() })
  try {
    return await work(studio)
  } finally {
    await studio.close()
  }
}
