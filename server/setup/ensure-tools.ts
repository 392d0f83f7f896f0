/** Finds ffmpeg and a browser, or installs them with apt-get where that is allowed, or says the exact command for this system. */
import { spawnSync } from 'node:child_process'
import { accessSync, constants, existsSync, readFileSync, readdirSync } from 'node:fs'
import path from 'node:path'
import { findFfmpeg, type Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { AppError } from '../../shared/errors.ts'

type Say = (text: string) => void

/** What a tool is called in each system's package manager. */
interface Package {
  debian: string
  fedora: string
  arch: string
  alpine: string
  darwin: string
  win32: string
}

const FFMPEG: Package = {
  debian: 'ffmpeg',
  fedora: 'ffmpeg-free',
  arch: 'ffmpeg',
  alpine: 'ffmpeg',
  darwin: 'ffmpeg',
  win32: 'ffmpeg',
}
const POSTGRES: Package = {
  debian: 'postgresql',
  fedora: 'postgresql-server',
  arch: 'postgresql',
  alpine: 'postgresql',
  darwin: 'postgresql',
  win32: 'PostgreSQL.PostgreSQL',
}
const NGINX: Package = {
  debian: 'nginx-light',
  fedora: 'nginx-core',
  arch: 'nginx',
  alpine: 'nginx',
  darwin: 'nginx',
  win32: 'nginxinc.nginx',
}
const CHROMIUM: Package = {
  debian: 'chromium',
  fedora: 'chromium',
  arch: 'chromium',
  alpine: 'chromium',
  darwin: '--cask chromium',
  win32: 'chromium',
}

/**
 * ffmpeg and ffprobe, installed if need be.
 * @throws AppError ffmpeg-missing with the command to type, ffmpeg-too-old
 */
export async function ensureFfmpeg(say: Say): Promise<Ffmpeg> {
  try {
    return await findFfmpeg()
  } catch (error) {
    if (!(error instanceof AppError) || error.code !== 'ffmpeg-missing') throw error
    if (aptInstall([FFMPEG.debian], say)) return await findFfmpeg()
    throw new AppError('ffmpeg-missing', `${error.message} ${howToInstallFfmpeg()}`, {
      details: error.details,
      cause: error,
    })
  }
}

/**
 * The path of an installed Chrome or Chromium, installed if need be; used by the tests only.
 * @throws AppError browser-missing with the command to type
 */
export function ensureBrowser(say: Say): string {
  const found = findBrowser()
  if (found) return found
  const installed = aptInstall([CHROMIUM.debian], say) ? findBrowser() : null
  if (installed) return installed
  throw new AppError(
    'browser-missing',
    `The browser tests need Chrome or Chromium. Install it with: ${installCommand(CHROMIUM)} or set REPSLATE_CHROMIUM to its path.`,
  )
}

/**
 * The folder of PostgreSQL's server programs, installed if need be; used by the tests only.
 * @throws AppError postgres-missing with the command to type
 */
export function ensurePostgres(say: Say): string {
  const found = findPostgres() ?? (aptInstall([POSTGRES.debian], say) ? findPostgres() : null)
  if (found) return found
  throw new AppError(
    'postgres-missing',
    `The store's tests need PostgreSQL's server programs. Install them with: ${installCommand(POSTGRES)}`,
  )
}

/**
 * The path of nginx, installed if need be; only what is measured beside it needs it.
 * @returns null with the command said, because nothing else depends on it
 */
export function ensureNginx(say: Say): string | null {
  const found = findNginx() ?? (aptInstall([NGINX.debian], say) ? findNginx() : null)
  if (!found) say(`nginx was not found. Install it with: ${installCommand(NGINX)}\n`)
  return found
}

function findNginx(): string | null {
  const folders = [...(process.env.PATH ?? '').split(path.delimiter), '/usr/sbin', '/usr/local/sbin']
  return folders.map((folder) => path.join(folder, 'nginx')).find(isProgram) ?? null
}

/** Where Debian keeps them, newest first; else the folder of a `postgres` on the PATH. */
function findPostgres(): string | null {
  const debian = '/usr/lib/postgresql'
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : []
  const folders = [
    ...versions.map((version) => path.join(debian, version, 'bin')),
    ...(process.env.PATH ?? '').split(path.delimiter),
  ]
  return folders.find((folder) => isProgram(path.join(folder, 'postgres'))) ?? null
}

/** The browser named by REPSLATE_CHROMIUM, else the first installed one, else null. */
export function findBrowser(env: NodeJS.ProcessEnv = process.env): string | null {
  const named = env.REPSLATE_CHROMIUM
  if (named) return existsSync(named) ? named : null
  const names = ['google-chrome-stable', 'google-chrome', 'chromium', 'chromium-browser']
  const onPath = (env.PATH ?? '')
    .split(path.delimiter)
    .flatMap((folder) => names.map((name) => path.join(folder, name)))
  const elsewhere = [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    ...[env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA]
      .filter((folder) => folder !== undefined)
      .map((folder) => path.join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe')),
  ]
  return [...onPath, ...elsewhere].find(isProgram) ?? null
}

/** One sentence: how to get ffmpeg on this system. */
export function howToInstallFfmpeg(): string {
  return `Install ffmpeg with: ${installCommand(FFMPEG)}`
}

/** The command that installs a package on this system, for a person to type. */
export function installCommand(names: Package, system = thisSystem()): string {
  switch (system) {
    case 'darwin':
      return `brew install ${names.darwin}`
    case 'win32':
      return `winget install ${names.win32}`
    case 'fedora':
      return `sudo dnf install ${names.fedora}`
    case 'arch':
      return `sudo pacman -S ${names.arch}`
    case 'alpine':
      return `sudo apk add ${names.alpine}`
    case 'debian':
      return `sudo apt-get update && sudo apt-get install --no-install-recommends ${names.debian}`
    case 'other':
      return `your system's package manager (the package is mostly called ${names.debian})`
  }
}

type System = 'darwin' | 'win32' | 'debian' | 'fedora' | 'arch' | 'alpine' | 'other'

function thisSystem(): System {
  if (process.platform === 'darwin' || process.platform === 'win32') return process.platform
  const release = existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : ''
  const ids = [...release.matchAll(/^ID(?:_LIKE)?="?([^"\n]*)"?$/gm)].flatMap((match) => (match[1] ?? '').split(' '))
  if (ids.includes('debian') || ids.includes('ubuntu')) return 'debian'
  if (ids.includes('fedora') || ids.includes('rhel')) return 'fedora'
  if (ids.includes('arch')) return 'arch'
  if (ids.includes('alpine')) return 'alpine'
  return 'other'
}

/** Installs Debian packages when this is Debian, we are root and REPSLATE_NO_APT does not forbid it. */
function aptInstall(names: readonly string[], say: Say): boolean {
  if (process.env.REPSLATE_NO_APT === '1') return false
  if (thisSystem() !== 'debian' || process.getuid?.() !== 0) return false
  const steps = [['update'], ['install', '-y', '--no-install-recommends', ...names]]
  return steps.every((args) => {
    say(`set-up: apt-get ${args.join(' ')}\n`)
    const run = spawnSync('apt-get', ['-q', ...args], {
      stdio: ['ignore', 'ignore', 'inherit'],
      // Debian starts a service as soon as it is installed; with this run level it does not
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive', RUNLEVEL: '1' },
    })
    return run.status === 0
  })
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK)
    return true
  } catch {
    return false
  }
}
