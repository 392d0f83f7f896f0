// Starts processes that work on a store (store-writer.mjs), and kills them.
import { spawn, spawnSync } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import path from 'node:path'
import type { Place } from '../../server/store/open-store.ts'
import { projectRoot } from './source-files.ts'

export interface Task {
  place: Place
  work: 'edits' | 'jobs'
  name: string
  sheetId?: string
  batches?: number
}

export interface Worker {
  /** Fulfilled when it has opened the store, or ended. */
  ready: Promise<void>
  /** Fulfilled with what it acknowledged when it ends, however it does. */
  ended: Promise<Ended>
  /** As a power cut would end the process: no chance to finish anything. */
  kill: () => void
}

export interface Ended {
  /** Each `ok` line, as the words behind it. */
  acknowledged: string[][]
  conflicts: number
  code: number | null
  stderr: string
}

/** Builds the server where it is older than its sources; processes of their own run what is built. */
export function buildServer(): void {
  const prepare = "import('./server/setup/prepare.mjs').then(({ prepare }) => prepare())"
  const run = spawnSync(process.execPath, ['-e', prepare], { cwd: projectRoot, encoding: 'utf8' })
  if (run.status !== 0) throw new Error(`The build failed: ${run.stdout}${run.stderr}`)
}

export function startWorker(task: Task): Worker {
  const script = path.join(projectRoot, 'tests', 'helpers', 'store-writer.mjs')
  const child = spawn(process.execPath, [script, JSON.stringify(task)], { stdio: ['ignore', 'pipe', 'pipe'] })
  const heard = { out: '', err: '' }
  let isReady = (): void => undefined
  const ready = new Promise<void>((resolve) => (isReady = resolve))
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    heard.out += text
    if (heard.out.startsWith('ready\n')) isReady()
  })
  child.stderr.setEncoding('utf8').on('data', (text: string) => (heard.err += text))
  const ended = new Promise<Ended>((resolve, reject) => {
    child.on('error', reject)
    child.on('close', (code) => {
      isReady()
      resolve(readEnd(heard, code))
    })
  })
  return { ready, ended, kill: () => killHard(child) }
}

function readEnd(heard: { out: string; err: string }, code: number | null): Ended {
  const lines = heard.out.split('\n').slice(0, -1)
  return {
    acknowledged: lines.filter((line) => line.startsWith('ok ')).map((line) => line.split(' ').slice(1)),
    conflicts: lines.filter((line) => line.startsWith('conflict ')).length,
    code,
    stderr: heard.err,
  }
}

function killHard(child: ChildProcess): void {
  child.kill('SIGKILL')
}
