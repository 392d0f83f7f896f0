// Makes a fresh clone ready to run: dependencies, the command's link, the build. Plain Node, nothing to install first.
import { spawnSync } from 'node:child_process'
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../..', import.meta.url))
const at = (...parts) => path.join(root, ...parts)
const SOURCES = ['shared', 'core', 'server', 'views']

/** Does whatever of the set-up is still missing; each step that acts says so on standard error. */
export function prepare() {
  checkNode()
  if (!dependenciesInstalled()) installDependencies()
  linkCommand()
  if (!buildIsFresh()) build()
}

/** True when node_modules holds every required package of the lock file in its version. */
export function dependenciesInstalled() {
  const installed = readJson(at('node_modules', '.package-lock.json'))?.packages
  const locked = readJson(at('package-lock.json'))?.packages
  if (!installed || !locked) return false
  return Object.entries(locked).every(
    ([name, entry]) => name === '' || entry.optional || installed[name]?.version === entry.version,
  )
}

/** Puts `repslate` among the commands that npx finds. */
export function linkCommand() {
  const target = at('server', 'cli', 'repslate.mjs')
  const folder = at('node_modules', '.bin')
  if (!existsSync(folder)) mkdirSync(folder, { recursive: true })
  if (process.platform === 'win32') {
    writeFileSync(path.join(folder, 'repslate.cmd'), '@node "%~dp0\\..\\..\\server\\cli\\repslate.mjs" %*\r\n')
    return
  }
  const link = path.join(folder, 'repslate')
  if (existsSync(link)) return
  rmSync(link, { force: true })
  symlinkSync(path.relative(folder, target), link)
  chmodSync(target, 0o755)
}

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return
  stop(
    `Repslate needs Node 20.19 or newer; this is ${process.versions.node}. Install it from your system's packages or nodejs.org.`,
  )
}

function installDependencies() {
  say('set-up: installing dependencies (npm ci)')
  const npm = process.env.npm_execpath
  const [command, args] = npm?.endsWith('.js')
    ? [process.execPath, [npm]]
    : [process.platform === 'win32' ? 'npm.cmd' : 'npm', []]
  const run = spawnSync(command, [...args, 'ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32' && command === 'npm.cmd',
  })
  if (run.status !== 0)
    stop(
      'The dependencies could not be installed. Check the network and the messages above, then run the command again.',
    )
}

function build() {
  say('set-up: building')
  const run = spawnSync(process.execPath, [at('node_modules', 'typescript', 'bin', 'tsc'), '-b', 'server'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
  })
  if (run.status !== 0) stop('The build failed; the messages above say where.')
  writeFileSync(at('.build', 'stamp'), '')
}

/** True when no source file is newer than the last build. */
function buildIsFresh() {
  const stamp = at('.build', 'stamp')
  if (!existsSync(stamp) || !existsSync(at('.build', 'server', 'cli', 'main.js'))) return false
  const built = statSync(stamp).mtimeMs
  return newest(at('tsconfig.json'), ...SOURCES.map((folder) => at(folder))) <= built
}

function newest(...places) {
  let latest = 0
  for (const place of places) {
    if (!existsSync(place)) continue
    const stat = statSync(place)
    if (stat.isDirectory())
      latest = Math.max(latest, stat.mtimeMs, newest(...readdirSync(place).map((name) => path.join(place, name))))
    else if (/\.(ts|json)$/.test(place)) latest = Math.max(latest, stat.mtimeMs)
  }
  return latest
}

function readJson(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'))
  } catch {
    return null
  }
}

function say(text) {
  process.stderr.write(`${text}\n`)
}

function stop(text) {
  say(`repslate: ${text}`)
  process.exit(3)
}
