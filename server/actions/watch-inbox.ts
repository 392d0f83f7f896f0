/** Watches a folder: recordings laid into it are taken in by themselves, as soon as they have stopped growing. */
import { mkdir, readdir, rename, stat, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { AppError } from '../../shared/errors.ts'
import type { Studio } from '../studio.ts'
import { importRecording } from './import-recording.ts'
import type { TakeNeeds } from './take-media.ts'

export interface Inbox {
  /** Looks once. A file is taken when two looks in a row see the same. @returns names of the files dealt with */
  look: () => Promise<string[]>
}

/** What cannot be taken lies here, each with a text that says why. */
export const REFUSED = 'refused'
/** Names that copying programs use while they write, and hidden ones. */
const NOT_READY = /^\.|^~|\.(part|partial|crdownload|tmp|filepart|download)$/i

type Needs = TakeNeeds & Pick<Studio, 'ids'>

/** Files are moved out of the folder: into the studio, or into its folder `refused`. */
export function openInbox(studio: Needs, folder: string): Inbox {
  const seen = new Map<string, string>()
  return {
    look: async () => {
      const dealt: string[] = []
      const names = await readdir(folder).catch((): string[] => [])
      for (const name of [...seen.keys()]) if (!names.includes(name)) seen.delete(name)
      for (const name of names.filter((one) => !NOT_READY.test(one)).sort()) {
        const file = path.join(folder, name)
        const info = await stat(file).catch(() => null)
        if (!info?.isFile() || info.size === 0) continue
        const look = `${info.size} ${info.mtimeMs}`
        if (seen.get(name) !== look) {
          seen.set(name, look)
          continue
        }
        if (await takeOrRefuse(studio, folder, file, name)) dealt.push(name)
      }
      return dealt
    },
  }
}

async function takeOrRefuse(studio: Needs, folder: string, file: string, name: string): Promise<boolean> {
  try {
    await importRecording(studio, { path: file, mode: 'move' })
    return true
  } catch (error) {
    // a full disk or a missing ffmpeg is no fault of the file: it stays, and is tried again
    if (!(error instanceof AppError) || !error.code.startsWith('recording-')) throw error
    const refused = path.join(folder, REFUSED)
    await mkdir(refused, { recursive: true })
    await rename(file, path.join(refused, name))
    await writeFile(
      path.join(refused, `${name}.why.txt`),
      `${error.message}\n${error.details.join('\n')}`.trim() + '\n',
    )
    return true
  }
}
