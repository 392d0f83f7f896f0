// Starts processes that work on a store (store-writer.ts), and kills them.
import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import path from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll } from 'vitest'
import { projectRoot } from './source-files.ts'
import type { Task } from './store-writer.ts'

export interface Worker {
  /** Fulfilled when it has opened the store, or ended. */
  ready: Promise<void>
  /** Fulfilled with what it acknowledged when it ends, however it does. */
  ended: Promise<Ended>
  /** As a power cut would end the process: no chance to finish anything. */
  kill: () => boolean
}

export interface Ended {
  /** Each `ok` line, as the words behind it. */
  acknowledged: string[][]
  conflicts: number
  code: number | null
  stderr: string
}

/** To be called at the top of a test file: bundles the writer from its sources, and gives what starts one. */
export function storeWorkers(): (task: Task) => Worker {
  let folder = ''
  beforeAll(async () => {
    // inside the project, so that packages are found from there
    mkdirSync(path.join(projectRoot, '.build'), { recursive: true })
    folder = mkdtempSync(path.join(projectRoot, '.build', 'store-writer-'))
    await build({
      entryPoints: [path.join(projectRoot, 'tests', 'helpers', 'store-writer.ts')],
      outfile: path.join(folder, 'writer.mjs'),
      bundle: true,
      packages: 'external',
      platform: 'node',
      format: 'esm',
      target: 'node20',
      logLevel: 'silent',
    })
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return (task) => startWorker(path.join(folder, 'writer.mjs'), task)
}

function startWorker(script: string, task: Task): Worker {
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
  return { ready, ended, kill: () => child.kill('SIGKILL') }
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
