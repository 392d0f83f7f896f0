/** Holds the film of a class while it is read: a film that was joined of parts may be taken away meanwhile. */
import { link, mkdir, rm } from 'node:fs/promises'
import path from 'node:path'
import type { Studio } from '../studio.ts'
import { findClassFile } from './find-class-file.ts'
import type { ClassFile } from './find-class-file.ts'

type Needs = Pick<Studio, 'store' | 'storage' | 'dataFolder' | 'ids'>

/**
 * A second name for the joined film in the work folder: its bytes stay until both names are gone, whichever program takes
 * the first one away. Films that people brought are never taken away and need none.
 * @throws AppError row-missing when no film has arrived
 */
export async function holdFilm(
  studio: Needs,
  recordingId: string,
): Promise<{ film: ClassFile; release: () => Promise<void> }> {
  const film = await findClassFile(studio, recordingId)
  if (film.media.role !== 'joined') return { film, release: () => Promise.resolve() }
  const folder = path.join(studio.dataFolder, 'work', studio.ids())
  const held = path.join(folder, path.basename(film.path))
  const release = (): Promise<void> => rm(folder, { recursive: true, force: true })
  await mkdir(folder, { recursive: true, mode: 0o700 })
  const fault = await link(film.path, held).then(
    () => null,
    (error: NodeJS.ErrnoException) => error.code ?? 'unknown',
  )
  if (fault === null) return { film: { ...film, path: held }, release }
  await release()
  // it went between the look and the link: the newer one is the class by now
  if (fault === 'ENOENT') return { film: await findClassFile(studio, recordingId), release }
  // the storage lies on another disk, or knows no second names
  return { film, release }
}
