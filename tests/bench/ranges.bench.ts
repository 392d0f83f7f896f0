/** 200 readers of random ranges of 1 MiB: the studio beside nginx, in turns, and the studio's memory over a minute. */
import { spawn, spawnSync } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { randomBytes } from 'node:crypto'
import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  openSync,
  readFileSync,
  writeFileSync,
  writeSync,
  closeSync,
} from 'node:fs'
import { createServer } from 'node:net'
import type { AddressInfo } from 'node:net'
import path from 'node:path'
import { ensureNginx } from '../../server/setup/ensure-tools.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { makeIds } from '../../server/store/make-ids.ts'
import { openStore } from '../../server/store/open-store.ts'
import { LOCAL_OWNER } from '../../shared/actors.ts'
import { median, Skipped, swapRounds } from './bench.ts'
import type { Bench, BenchContext, Goal, Report, Series } from './bench.ts'
import { readRanges } from './range-readers.ts'
import type { ReadersResult } from './range-readers.ts'

const MIB = 1024 * 1024
const FILE_BYTES = 256 * MIB
const READERS = 200
const SHA = '0'.repeat(64)

interface Side {
  port: number
  address: string
  pid: number
  close: () => void
}

export const bench: Bench = { about: '200 readers of random ranges of 1 MiB, beside nginx', run }

async function run({ quick, folder, say }: BenchContext): Promise<Report> {
  const nginx = ensureNginx(say)
  if (nginx === null) throw new Skipped('nginx, which the studio is measured beside, is not installed.')
  const film = path.join(folder, 'film.mp4')
  writeNoise(film)
  const sides: Side[] = []
  try {
    const studio = await startStudio(path.join(folder, 'data'), film)
    sides.push(studio)
    const other = await startNginx(nginx, path.join(folder, 'nginx'), film)
    sides.push(other)
    const results: Record<'studio' | 'nginx', ReadersResult[]> = { studio: [], nginx: [] }
    const seconds = quick ? 4 : 8
    const read = (side: Side, to: ReadersResult[]) => async (round: number) => {
      say(`round ${round + 1}, ${side === studio ? 'studio' : 'nginx'}`)
      to.push(await readRanges(jobOf(side, seconds)))
    }
    await swapRounds(quick ? 2 : 4, [read(studio, results.studio), read(other, results.nginx)])
    const memory = await watchMemory(studio, quick ? 30 : 60, say)
    return tell(results, memory, { nginx: versionOf(nginx), seconds })
  } finally {
    for (const side of sides) side.close()
  }
}

const jobOf = ({ port, address }: Side, seconds: number) => ({
  ...{ port, address, seconds, headers: {}, readers: READERS, fileBytes: FILE_BYTES, rangeBytes: MIB },
})

interface Memory {
  earlyMb: number
  lateMb: number
  lateSeconds: number
  errors: number
}

async function watchMemory(side: Side, seconds: number, say: (text: string) => void): Promise<Memory> {
  say(`memory over ${seconds} s of reading`)
  const reading = readRanges(jobOf(side, seconds + 2))
  await wait(10_000)
  const earlyMb = residentMb(side.pid)
  await wait((seconds - 10) * 1000)
  const lateMb = residentMb(side.pid)
  return { earlyMb, lateMb, lateSeconds: seconds, errors: (await reading).errors }
}

function tell(
  results: Record<'studio' | 'nginx', ReadersResult[]>,
  memory: Memory,
  about: { nginx: string; seconds: number },
): Report {
  const rate = ({ requests, seconds }: ReadersResult): number => requests / seconds
  const sides = ['studio', 'nginx'] as const
  const series: Series[] = [
    ...sides.map((side) => ({ name: `${side}, ranges`, unit: 'MiB/s', raw: results[side].map(rate) })),
    ...sides.map((side) => ({
      name: `${side}, time to the last byte`,
      unit: 'ms',
      raw: results[side].map(({ latencies }) => median(latencies)),
    })),
    { name: 'studio, memory after 10 s', unit: 'MB', raw: [memory.earlyMb] },
    { name: `studio, memory after ${memory.lateSeconds} s`, unit: 'MB', raw: [memory.lateMb] },
  ]
  const pace = (side: 'studio' | 'nginx'): number => median(results[side].map(rate))
  const errors = results.studio.reduce((sum, one) => sum + one.errors, memory.errors)
  const goals: Goal[] = [
    { what: 'ranges a second, studio / nginx', value: pace('studio') / pace('nginx'), wants: 'at least', limit: 0.4 },
    { what: 'errors of the studio', value: errors, wants: 'at most', limit: 0 },
    { what: 'memory, late / early', value: memory.lateMb / memory.earlyMb, wants: 'at most', limit: 1.2 },
  ]
  const notes = [
    `${READERS} connections, file of ${FILE_BYTES / MIB} MiB in the page cache, ${about.seconds} s a round`,
    `studio: one process, the film of a class through all its guards; ${about.nginx}, as many workers as cores, sendfile`,
    'the reader shares the cores with the side it reads from; other work on the machine favours the side with more processes',
  ]
  return { series, goals, notes }
}

/** A studio with one class, served as a person would start it. */
async function startStudio(data: string, film: string): Promise<Side> {
  const store = await openStore({ dataFolder: makeFolder(data) }, { ids: makeIds(Date.now), clock: Date.now })
  const { id } = await store.recordings.add({ title: 'A class', state: 'ready', durationMs: 60_000 }, LOCAL_OWNER)
  const key = `recordings/${id}/files/film`
  const kept = path.join(data, 'media', ...key.split('/'))
  makeFolder(path.dirname(kept))
  copyFileSync(film, kept)
  const fields = { role: 'part', fileName: 'film.mp4', bytes: FILE_BYTES, sha256: SHA, storageKey: key } as const
  const media = await store.media.add(id, fields, LOCAL_OWNER)
  await store.close()
  const command = path.join(projectRoot(), 'server', 'cli', 'repslate.mjs')
  const child = spawn(process.execPath, [command, 'serve', '--port', '0', '--data', data], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const url = await new Promise<string>((resolve, reject) => {
    child.stdout.setEncoding('utf8').on('data', (text: string) => resolve(text.trim()))
    child.once('close', (code) => reject(new Error(`serve ended with ${code}`)))
  })
  return { port: Number(new URL(url).port), address: `/recordings/${id}/media/${media.id}`, ...running(child) }
}

async function startNginx(program: string, folder: string, film: string): Promise<Side> {
  const root = makeFolder(path.join(folder, 'root'))
  copyFileSync(film, path.join(root, 'film.mp4'))
  for (const open of [folder, root]) chmodSync(open, 0o755)
  const port = await freePort()
  const user = process.getuid?.() === 0 ? 'user root;' : ''
  const temp = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi'].map(
    (name) => `${name}_temp_path ${folder}/${name};`,
  )
  writeFileSync(
    path.join(folder, 'nginx.conf'),
    `${user} daemon off; worker_processes auto; pid ${folder}/pid; error_log stderr crit;
     events { worker_connections 1024; }
     http { sendfile on; tcp_nopush on; access_log off; ${temp.join(' ')}
       server { listen 127.0.0.1:${port}; root ${root}; keepalive_requests 1000000; } }`,
  )
  const child = spawn(program, ['-p', folder, '-c', path.join(folder, 'nginx.conf')], { stdio: 'inherit' })
  await untilOpen(port)
  return { port, address: '/film.mp4', ...running(child) }
}

const running = (child: ChildProcess) => ({ pid: child.pid ?? 0, close: () => void child.kill('SIGTERM') })

/** No pattern that a disk or a cache could fold. */
function writeNoise(file: string): void {
  const handle = openSync(file, 'w')
  for (let at = 0; at < FILE_BYTES; at += MIB) writeSync(handle, randomBytes(MIB))
  closeSync(handle)
}

function makeFolder(folder: string): string {
  mkdirSync(folder, { recursive: true })
  return folder
}

/** Linux: VmRSS of proc(5), in kB. */
function residentMb(pid: number): number {
  const [, kilobytes] = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? []
  if (kilobytes === undefined) throw new Skipped('This system does not tell how much memory a process has.')
  return (Number(kilobytes) * 1024) / 1e6
}

function versionOf(program: string): string {
  const { stderr } = spawnSync(program, ['-v'], { encoding: 'utf8' })
  return /nginx\/[\d.]+/.exec(stderr)?.[0] ?? 'nginx'
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo
      server.close(() => resolve(port))
    })
  })
}

async function untilOpen(port: number): Promise<void> {
  for (let tries = 0; tries < 100; tries += 1) {
    const answer = await fetch(`http://127.0.0.1:${port}/film.mp4`, { method: 'HEAD' }).catch(() => null)
    if (answer?.ok) return
    await wait(50)
  }
  throw new Error('nginx did not begin to listen.')
}

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))
