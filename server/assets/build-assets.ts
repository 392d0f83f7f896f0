/**
 * Bundles what browsers load besides pages: our scripts and styles, their fonts, htmx, and static files. All of it is
 * named by its content, so that browsers may keep it for ever. It is built in memory when the server starts.
 */
import { createHash } from 'node:crypto'
import { readFile, readdir } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import { build, stop } from 'esbuild'
import type { OutputFile } from 'esbuild'
import { AppError } from '../../shared/errors.ts'
import type { AssetNames } from '../../views/pages/frame.ts'
import { projectRoot } from '../setup/project-root.ts'
import { typeOfFile } from './type-of-file.ts'

export interface Asset {
  bytes: Uint8Array
  type: string
}

export interface Assets extends AssetNames {
  /** By file name, as in `/assets/main.abcd1234.css`. */
  files: ReadonlyMap<string, Asset>
}

export const ASSET_PATH = '/assets'

/** Scripts that are served as they were published: name to file of a package. */
const PUBLISHED = {
  htmx: 'htmx.org/dist/htmx.min.js',
  'htmx-sse': 'htmx-ext-sse/dist/sse.min.js',
} as const

/** The oldest browsers we write for; about two years old when chosen. */
const TARGET = ['chrome120', 'firefox121', 'safari17']

/**
 * @param viewsFolder the folder that holds browser/, styles/ and static/, each of which may be absent
 * @throws AppError assets-broken with the bundler's words
 */
export async function buildAssets(viewsFolder: string): Promise<Assets> {
  const files = new Map<string, Asset>()
  const named = { js: new Map<string, string>(), css: new Map<string, string>(), file: new Map<string, string>() }
  const add = (kind: keyof typeof named, name: string, fileName: string, bytes: Uint8Array): void => {
    const hashed = addHash(fileName, bytes)
    files.set(hashed, { bytes, type: typeOfFile(fileName) })
    named[kind].set(name, `${ASSET_PATH}/${hashed}`)
  }
  for (const { entry, output } of await bundle(viewsFolder)) {
    const fileName = path.basename(output.path)
    if (entry === null) files.set(fileName, { bytes: output.contents, type: typeOfFile(fileName) })
    else add(entry.kind, entry.name, `${entry.name}.${entry.kind}`, output.contents)
  }
  for (const [name, file] of Object.entries(PUBLISHED)) {
    add('js', name, `${name}.js`, await readFile(createRequire(import.meta.url).resolve(file)))
  }
  for (const name of await listFiles(path.join(viewsFolder, 'static'), /./)) {
    add('file', name, name, await readFile(path.join(viewsFolder, 'static', name)))
  }
  const find = (kind: keyof typeof named) => (name: string) => {
    const address = named[kind].get(name)
    if (address === undefined) throw new Error(`There is no ${kind} asset called ${name}.`)
    return address
  }
  return { files, js: find('js'), css: find('css'), file: find('file') }
}

interface Bundled {
  /** null = a file that a bundle points to, such as a font. */
  entry: { kind: 'js' | 'css'; name: string } | null
  output: OutputFile
}

async function bundle(viewsFolder: string): Promise<Bundled[]> {
  const scripts = await listFiles(path.join(viewsFolder, 'browser'), /(?<!\.d)\.ts$/)
  const styles = await listFiles(path.join(viewsFolder, 'styles'), /^main\.css$/)
  const entries = [
    ...scripts.map((name) => ({ in: path.join(viewsFolder, 'browser', name), out: name.replace(/\.ts$/, '') })),
    ...styles.map((name) => ({ in: path.join(viewsFolder, 'styles', name), out: name.replace(/\.css$/, '') })),
  ]
  if (entries.length === 0) return []
  try {
    const built = await build({
      entryPoints: entries,
      outdir: path.join(viewsFolder, 'out'),
      write: false,
      bundle: true,
      minify: true,
      // each script keeps its names to itself, as a module and as a plain script
      format: 'iife',
      target: TARGET,
      charset: 'utf8',
      // licences of what is bundled stay in the file
      legalComments: 'eof',
      assetNames: '[name].[hash]',
      publicPath: ASSET_PATH,
      loader: { '.woff2': 'file', '.woff': 'file', '.svg': 'file', '.png': 'file' },
      logLevel: 'silent',
      // no settings of the surroundings: the same sources give the same files
      tsconfigRaw: '{}',
      nodePaths: [path.join(projectRoot(), 'node_modules')],
    })
    const wanted = new Set(entries.map((entry) => entry.out))
    return built.outputFiles.map((output) => ({ entry: entryOf(output.path, wanted), output }))
  } catch (cause) {
    throw new AppError('assets-broken', 'The scripts and styles of the pages cannot be built.', {
      details: (cause as Error).message.split('\n'),
      cause,
    })
  } finally {
    // the bundler is a process of its own; a studio that runs for weeks does not need it
    await stop()
  }
}

function entryOf(file: string, wanted: ReadonlySet<string>): Bundled['entry'] {
  const match = /^(.+)\.(js|css)$/.exec(path.basename(file))
  if (!match?.[1] || !wanted.has(match[1])) return null
  return { kind: match[2] as 'js' | 'css', name: match[1] }
}

async function listFiles(folder: string, pattern: RegExp): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => [])
  return entries
    .filter((entry) => entry.isFile() && pattern.test(entry.name) && !/^(\.|README)/.test(entry.name))
    .map((entry) => entry.name)
    .sort()
}

function addHash(fileName: string, bytes: Uint8Array): string {
  const { name, ext } = path.parse(fileName)
  return `${name}.${createHash('sha256').update(bytes).digest('hex').slice(0, 10)}${ext}`
}
