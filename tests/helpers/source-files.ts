// The project's own source files, for tests that look at the code itself.
import { readFileSync, readdirSync, statSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'

export const projectRoot = fileURLToPath(new URL('../..', import.meta.url))

/** All files below a folder of the project with one of the endings, as paths relative to the root with forward slashes. */
export function sourceFiles(folder: string, endings: readonly string[] = ['.ts']): string[] {
  const start = path.join(projectRoot, folder)
  const walk = (place: string): string[] =>
    statSync(place).isDirectory()
      ? readdirSync(place)
          .filter((name) => name !== 'node_modules' && name !== '.build')
          .flatMap((name) => walk(path.join(place, name)))
      : [place]
  return walk(start)
    .filter((file) => endings.some((ending) => file.endsWith(ending)))
    .map((file) => path.relative(projectRoot, file).split(path.sep).join('/'))
    .sort()
}

export function readProjectFile(file: string): string {
  return readFileSync(path.join(projectRoot, file), 'utf8')
}
