// A PostgreSQL server of its own for tests: a new cluster in a temporary folder, reached by a socket there only.
import { spawn, spawnSync } from 'node:child_process'
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import pg from 'pg'

export interface PostgresServer {
  /** Makes an empty schema and gives an address at which nothing else is seen. */
  createSchema: (name: string) => Promise<string>
  start: () => Promise<void>
  /** Ends the server and all of its processes at once, as a power cut would. */
  kill: () => void
  /** Ends the server and removes its folder. */
  remove: () => void
}

const DEBIAN = '/usr/lib/postgresql'
const HOW_TO_INSTALL =
  'These tests need PostgreSQL 13 or newer. Debian, Ubuntu: apt-get install postgresql. macOS: brew install postgresql. No server has to run.'

/** @param options.safe writes reach the disk, as crash tests want it. @throws Error that says how to install it */
export async function startPostgres(options: { safe: boolean }): Promise<PostgresServer> {
  const bin = findBinaries()
  const folder = mkdtempSync(path.join(tmpdir(), 'repslate-pg-'))
  const data = path.join(folder, 'data')
  const owner = findOwner()
  if (owner) chownSync(folder, owner.uid, owner.gid)
  const run = (command: string, args: readonly string[]): void => {
    const result = spawnSync(path.join(bin, command), args, { ...owner, cwd: folder, encoding: 'utf8' })
    if (result.status !== 0) throw new Error(`${command} failed: ${result.stderr || String(result.error)}`)
  }
  run('initdb', ['-D', data, '-A', 'trust', '-U', 'studio', '-E', 'UTF8', '--locale=C', '--no-sync'])

  const settings = { listen_addresses: '', unix_socket_directories: folder, fsync: options.safe ? 'on' : 'off' }
  const address = `postgres://studio@${encodeURIComponent(folder)}/postgres`
  const start = async (): Promise<void> => {
    const args = Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`])
    spawn(path.join(bin, 'postgres'), ['-D', data, ...args], { ...owner, cwd: folder, stdio: 'ignore' }).unref()
    await waitUntilReady(address)
  }
  const kill = (): void => {
    for (const pid of findProcesses(data)) killQuietly(pid)
  }
  await start()
  return {
    start,
    kill,
    createSchema: async (name) => {
      await query(address, `create schema ${name}`)
      return `${address}?options=${encodeURIComponent(`-c search_path=${name}`)}`
    },
    remove: () => {
      kill()
      rmSync(folder, { recursive: true, force: true, maxRetries: 10 })
    },
  }
}

/** Runs one statement on a connection of its own. */
export async function query(address: string, text: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: address })
  client.on('error', () => undefined)
  await client.connect()
  try {
    return (await client.query<Record<string, unknown>>(text)).rows
  } finally {
    await client.end()
  }
}

function findBinaries(): string {
  const debian = existsSync(DEBIAN)
    ? readdirSync(DEBIAN)
        .sort((a, b) => Number(b) - Number(a))
        .map((version) => path.join(DEBIAN, version, 'bin'))
    : []
  const onPath = (process.env.PATH ?? '').split(path.delimiter)
  const found = [...debian, ...onPath].find((place) =>
    ['initdb', 'postgres'].every((one) => existsSync(path.join(place, one))),
  )
  if (!found) throw new Error(HOW_TO_INSTALL)
  return found
}

/** PostgreSQL refuses to run as root; Debian's package brings a user for it. */
function findOwner(): { uid: number; gid: number } | null {
  if (process.getuid?.() !== 0) return null
  const line = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .find((one) => one.startsWith('postgres:'))
  const [, , uid, gid] = line?.split(':') ?? []
  if (!uid || !gid) throw new Error(`There is no user "postgres" to run the server as. ${HOW_TO_INSTALL}`)
  return { uid: Number(uid), gid: Number(gid) }
}

/** The server and its children, by its own file of process ids. */
function findProcesses(data: string): number[] {
  const file = path.join(data, 'postmaster.pid')
  if (!existsSync(file)) return []
  const server = Number(readFileSync(file, 'utf8').split('\n')[0])
  const children = spawnSync('ps', ['-o', 'pid=', '--ppid', String(server)], { encoding: 'utf8' })
  return [server, ...(children.stdout ?? '').split('\n').map(Number)].filter((pid) => pid > 1)
}

function killQuietly(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL')
  } catch {
    // it has ended already
  }
}

/** Asks until the server answers; a server that never does ends the test by its time limit. */
async function waitUntilReady(address: string): Promise<void> {
  for (;;) {
    try {
      await query(address, 'select 1')
      return
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 50))
    }
  }
}
