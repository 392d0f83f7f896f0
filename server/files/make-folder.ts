/** Makes a folder and those above it. Node's own recursive mkdir never ends where a file system refuses new names (as in /proc). */
import { mkdir, stat } from 'node:fs/promises'
import path from 'node:path'

/**
 * @returns the folders it had to make, outermost first.
 * @throws the file system's error, as EACCES, ENOENT or ENOTDIR
 */
export async function makeFolder(folder: string): Promise<string[]> {
  const missing: string[] = []
  let place = path.resolve(folder)
  while (!(await isThere(place)) && path.dirname(place) !== place) {
    missing.unshift(place)
    place = path.dirname(place)
  }
  for (const next of missing) await mkdir(next).catch(unlessThere)
  return missing
}

async function isThere(place: string): Promise<boolean> {
  const info = await stat(place).catch(() => null)
  if (info && !info.isDirectory())
    throw Object.assign(new Error(`"${place}" is a file, not a folder`), { code: 'ENOTDIR' })
  return info !== null
}

/** Another process may have made it in the same moment. */
function unlessThere(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EEXIST') throw error
}
