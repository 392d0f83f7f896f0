/** Runs the passes that analyse a recording: sound as samples, thumbnails on sheets, a preview that browsers can show. */
import { spawn } from 'node:child_process'
import { constants, setPriority } from 'node:os'
import path from 'node:path'
import { AppError } from '../../../shared/errors.ts'
import { explainFailure } from '../explain-failure.ts'
import { openSoundMeter, SOUND_RATE } from '../measure-sound.ts'
import type { SoundMeasures } from '../measure-sound.ts'
import { planSoundPass, previewLimits, previewOptions, thumbLimits, thumbOptions } from '../plan-analysis.ts'
import type { ThumbPlan } from '../plan-analysis.ts'
import { soundPassLimits } from '../plan-limits.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { RECORDING_GUARDS, fileName } from './guard-input.ts'
import { guardProgram } from './guard-process.ts'
import type { OpenedRecording } from './open-recording.ts'
import { runFfmpeg } from './run-ffmpeg.ts'

export interface PassOptions {
  signal?: AbortSignal | undefined
  /** Share done, 0 to 1. */
  onShare?: ((share: number) => void) | undefined
}

const BYTES_A_MS = (SOUND_RATE * 2) / 1000
/** Messages kept for an error. */
const KEPT_CHARACTERS = 20_000

/**
 * Reads all sound once. Memory does not grow with the file: only the measures are kept.
 * @returns null when the recording has no sound.
 * @throws AppError engine-cancelled, engine-timeout, and what explainFailure says.
 */
export async function measureSound(
  found: Ffmpeg,
  recording: OpenedRecording,
  { signal, onShare }: PassOptions = {},
): Promise<SoundMeasures | null> {
  const { audio, durationMs } = recording
  if (!audio) return null
  const meter = openSoundMeter()
  const whole = durationMs * BYTES_A_MS
  let bytes = 0
  let odd: Buffer = Buffer.alloc(0)
  await readOutput(found, recording.path, planSoundPass(audio.index), {
    signal,
    timeoutMs: soundPassLimits(durationMs).timeoutMs,
    onBytes: (chunk) => {
      // a sample of two bytes may lie on the edge of two chunks
      const all = odd.length === 0 ? chunk : Buffer.concat([odd, chunk])
      const even = all.length - (all.length % 2)
      odd = all.subarray(even)
      meter.feed(toSamples(all.subarray(0, even)))
      bytes += chunk.length
      onShare?.(whole > 0 ? Math.min(1, bytes / whole) : 1)
    },
  })
  return meter.read()
}

/** Writes `sheet-0.jpg`, `sheet-1.jpg` ... into the folder, which must be empty. @returns their paths. @throws AppError as runFfmpeg */
export async function makeThumbs(
  found: Ffmpeg,
  recording: OpenedRecording,
  plan: ThumbPlan,
  folder: string,
  { signal, onShare }: PassOptions = {},
): Promise<string[]> {
  const { input, filter, output } = thumbOptions(plan)
  await runFfmpeg(found, {
    doing: 'Making the small pictures',
    inputs: [{ path: recording.path, options: [...input, '-an', '-sn', '-dn'] }],
    filter: `[0:${recording.video.index}]${filter}[v]`,
    // in this name alone a per cent sign is read as a pattern
    outputs: [{ path: path.join(folder.replaceAll('%', '%%'), 'sheet-%d.jpg'), options: ['-map', '[v]', ...output] }],
    limits: thumbLimits(recording.durationMs),
    expectMs: recording.durationMs,
    signal,
    onProgress: ({ percent }) => onShare?.(percent / 100),
  })
  return Array.from({ length: plan.sheets }, (_, index) => path.join(folder, `sheet-${index}.jpg`))
}

/** Writes a film that browsers show; it grows from its start and can be read while it grows. @throws AppError as runFfmpeg */
export async function makePreview(
  found: Ffmpeg,
  recording: OpenedRecording,
  outPath: string,
  { signal, onShare }: PassOptions = {},
): Promise<void> {
  const { filter, output } = previewOptions(recording)
  await runFfmpeg(found, {
    doing: 'Making the preview',
    inputs: [{ path: recording.path, options: ['-sn', '-dn'] }],
    filter,
    outputs: [{ path: outPath, options: output }],
    limits: previewLimits(recording.durationMs, recording.probe.sizeBytes),
    expectMs: recording.durationMs,
    signal,
    onProgress: ({ percent }) => onShare?.(percent / 100),
  })
}

interface ReadOptions {
  signal: AbortSignal | undefined
  timeoutMs: number
  onBytes: (chunk: Buffer) => void
}

/** Runs ffmpeg and hands over its standard output piece by piece. */
function readOutput(found: Ffmpeg, file: string, output: readonly string[], options: ReadOptions): Promise<void> {
  return new Promise((resolve, reject) => {
    const { command, env } = guardProgram(found.ffmpeg)
    const general = ['-nostdin', '-hide_banner', '-nostats', '-loglevel', 'error']
    const args = [...general, ...RECORDING_GUARDS, '-vn', '-sn', '-dn', '-i', fileName(file), ...output]
    const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, ...env } })
    giveWay(child.pid)
    let errors = ''
    let stopped: AppError | null = null
    let startError: Error | null = null
    const stop = (error: AppError): void => {
      stopped ??= error
      child.kill('SIGKILL')
    }
    const onAbort = (): void => stop(new AppError('engine-cancelled', 'Reading the sound was cancelled.'))
    const timer = setTimeout(
      () => stop(new AppError('engine-timeout', 'Reading the sound took too long and was stopped. Try again.')),
      options.timeoutMs,
    )
    options.signal?.addEventListener('abort', onAbort, { once: true })
    if (options.signal?.aborted) onAbort()
    child.stdout.on('data', options.onBytes)
    child.stderr.on('data', (chunk: Buffer) => (errors = (errors + chunk.toString('utf8')).slice(-KEPT_CHARACTERS)))
    child.on('error', (error) => (startError = error))
    child.on('close', (exitCode, signal) => {
      clearTimeout(timer)
      options.signal?.removeEventListener('abort', onAbort)
      if (stopped) return reject(stopped)
      if (startError) {
        return reject(
          new AppError('ffmpeg-missing', 'ffmpeg could not be started. Run "doctor".', { cause: startError }),
        )
      }
      if (exitCode === 0) return resolve()
      const lines = errors.split(/[\r\n]+/).filter(Boolean)
      reject(explainFailure({ doing: 'Reading the sound', exitCode, signal, lines }))
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

/** Samples in the machine's own order, whatever the buffer's place in memory. */
function toSamples(bytes: Buffer): Int16Array {
  const samples = new Int16Array(bytes.length / 2)
  for (let index = 0; index < samples.length; index += 1) samples[index] = bytes.readInt16LE(index * 2)
  return samples
}
