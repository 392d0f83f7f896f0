/** The project's folder, also when the program runs from its build. */
import { existsSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'

/** The nearest folder above this file that holds package.json. */
export function projectRoot(): string {
  let folder = path.dirname(fileURLToPath(import.meta.url))
  while (!existsSync(path.join(folder, 'package.json'))) folder = path.dirname(folder)
  return folder
}
