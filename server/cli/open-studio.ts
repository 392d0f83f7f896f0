/** Opens the studio for one command, beside a running server or without one, and closes it whatever happens. */
import { readSettings } from '../settings.ts'
import { projectRoot } from '../setup/project-root.ts'
import { openStudio } from '../studio.ts'
import type { Studio } from '../studio.ts'
import type { Io } from './io.ts'

/** The option that every command on the studio has. */
export const DATA_OPTION = ['--data <folder>', "the studio's folder (default: data/studio in the project)"] as const

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
