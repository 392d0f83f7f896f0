/** Runs ffmpeg and hands over its standard output piece by piece, and its messages line by line. */
import { spawn } from 'node:child_process'
import { constants, setPriority } from 'node:os'
import { AppError } from '../../../shared/errors.ts'
import { explainFailure } from '../explain-failure.ts'
import { LONGEST_TIMER_MS } from '../plan-limits.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { RECORDING_GUARDS, fileName } from './guard-input.ts'
import { guardProgram } from './guard-process.ts'

export interface ReadJob {
  /** What is being done, for messages: "Reading the sound". */
  doing: string
  path: string
  /** Before the input, after the allow-lists. */
  input: readonly string[]
  /** After the input. */
  output: readonly string[]
  /** `info` where filters tell what they find. */
  messages?: 'error' | 'info'
  signal?: AbortSignal | undefined
  timeoutMs: number
  onBytes: (chunk: Buffer) => void
  onLine?: (line: string) => void
}

/** Messages kept for an error. */
const KEPT_LINES = 60

/** @throws AppError engine-cancelled, engine-timeout, ffmpeg-missing, and what explainFailure says */
export function readOutput(found: Ffmpeg, job: ReadJob): Promise<void> {
  return new Promise((resolve, reject) => {
    const { command, env } = guardProgram(found.ffmpeg)
    const general = ['-nostdin', '-hide_banner', '-nostats', '-y', '-loglevel', job.messages ?? 'error']
    const args = [...general, ...RECORDING_GUARDS, ...job.input, '-i', fileName(job.path), ...job.output]
    const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, ...env } })
    giveWay(child.pid)
    const lines: string[] = []
    let rest = ''
    let stopped: AppError | null = null
    let startError: Error | null = null
    const stop = (error: AppError): void => {
      stopped ??= error
      child.kill('SIGKILL')
    }
    const onAbort = (): void => stop(new AppError('engine-cancelled', `${job.doing} was cancelled.`))
    const timer = setTimeout(
      () => stop(new AppError('engine-timeout', `${job.doing} took too long and was stopped. Try again.`)),
      Math.min(job.timeoutMs, LONGEST_TIMER_MS),
    )
    const takeLine = (line: string): void => {
      if (line === '') return
      job.onLine?.(line)
      lines.push(line)
      if (lines.length > KEPT_LINES) lines.shift()
    }
    job.signal?.addEventListener('abort', onAbort, { once: true })
    if (job.signal?.aborted) onAbort()
    child.stdout.on('data', job.onBytes)
    child.stderr.on('data', (chunk: Buffer) => {
      const parts = (rest + chunk.toString('utf8')).split(/[\r\n]+/)
      rest = parts.pop() ?? ''
      parts.forEach(takeLine)
    })
    child.on('error', (error) => (startError = error))
    child.on('close', (exitCode, signal) => {
      clearTimeout(timer)
      job.signal?.removeEventListener('abort', onAbort)
      takeLine(rest)
      if (stopped) return reject(stopped)
      if (startError) {
        return reject(
          new AppError('ffmpeg-missing', 'ffmpeg could not be started. Run "doctor".', { cause: startError }),
        )
      }
      if (exitCode === 0) return resolve()
      reject(explainFailure({ doing: job.doing, exitCode, signal, lines }))
    })
  })
}

/** People who use the machine come first. */
function giveWay(pid: number | undefined): void {
  try {
    if (pid !== undefined) setPriority(pid, constants.priority.PRIORITY_BELOW_NORMAL)
  } catch {
    // it may have ended already, or the system does not allow it
  }
}
