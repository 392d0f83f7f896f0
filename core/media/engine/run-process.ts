/** Runs a small program to its end: no shell, no input, with limits of time and output. */
import { spawn } from 'node:child_process'
import { LONGEST_TIMER_MS } from '../plan-limits.ts'
import { guardProgram } from './guard-process.ts'

export interface ProcessLimits {
  timeoutMs: number
  /** Bytes of standard output after which it is stopped. */
  maxOutputBytes: number
  signal?: AbortSignal | undefined
}

export interface ProcessResult {
  exitCode: number | null
  exitSignal: NodeJS.Signals | null
  stdout: string
  /** The last part of standard error, by lines. */
  lines: string[]
  /** Why we stopped it, null when it ended by itself. */
  stopped: 'timeout' | 'cancelled' | 'too-much-output' | null
  /** Set when it could not be started at all. */
  startError: Error | null
}

/** Kept of standard error. */
const KEPT_ERROR_CHARACTERS = 20_000

/** Never rejects: how it ended is in the result. */
export function runProcess(program: string, args: readonly string[], limits: ProcessLimits): Promise<ProcessResult> {
  return new Promise((resolve) => {
    const { command, env } = guardProgram(program)
    const child = spawn(command, args, {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, ...env },
      windowsHide: true,
    })
    const chunks: Buffer[] = []
    let bytes = 0
    let errors = ''
    let stopped: ProcessResult['stopped'] = null
    let startError: Error | null = null
    const stop = (why: NonNullable<ProcessResult['stopped']>): void => {
      stopped ??= why
      child.kill('SIGKILL')
    }
    const onAbort = (): void => stop('cancelled')
    const timer = setTimeout(() => stop('timeout'), Math.min(limits.timeoutMs, LONGEST_TIMER_MS))
    limits.signal?.addEventListener('abort', onAbort, { once: true })
    if (limits.signal?.aborted) stop('cancelled')
    child.stdout.on('data', (chunk: Buffer) => {
      bytes += chunk.length
      if (bytes > limits.maxOutputBytes) stop('too-much-output')
      else chunks.push(chunk)
    })
    child.stderr.on('data', (chunk: Buffer) => {
      errors = (errors + chunk.toString('utf8')).slice(-KEPT_ERROR_CHARACTERS)
    })
    child.on('error', (error) => {
      startError = error
    })
    child.on('close', (exitCode, exitSignal) => {
      clearTimeout(timer)
      limits.signal?.removeEventListener('abort', onAbort)
      const lines = errors.split(/[\r\n]+/).filter(Boolean)
      resolve({ exitCode, exitSignal, stdout: Buffer.concat(chunks).toString('utf8'), lines, stopped, startError })
    })
  })
}
