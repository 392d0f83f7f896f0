/** Runs the passes that analyse a recording: everything that marking shows in one, and a preview that browsers can show. */
import path from 'node:path'
import type { Ms } from '../../../shared/time.ts'
import { openSoundMeter, SOUND_RATE } from '../measure-sound.ts'
import type { SoundMeasures } from '../measure-sound.ts'
import { passLimits, planPass, planSoundPass, previewLimits, previewOptions } from '../plan-analysis.ts'
import type { ThumbPlan } from '../plan-analysis.ts'
import { soundPassLimits } from '../plan-limits.ts'
import { openDullReader } from '../read-dull.ts'
import type { DullParts } from '../read-dull.ts'
import { readLoudness } from '../read-loudness.ts'
import type { MeasuredLoudness } from '../read-loudness.ts'
import type { AudioStream } from '../read-probe.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { SOUND_GUARDS } from './guard-input.ts'
import type { OpenedRecording } from './open-recording.ts'
import { readOutput } from './read-output.ts'
import { runFfmpeg } from './run-ffmpeg.ts'

export interface PassOptions {
  signal?: AbortSignal | undefined
  /** Share done, 0 to 1. */
  onShare?: ((share: number) => void) | undefined
}

export interface LookOptions extends PassOptions {
  /** Told again and again while it goes on; gives the peaks that are known by then. */
  onWave?: ((peek: () => Uint8Array) => void) | undefined
}

export interface Looked {
  /** null = the recording has no sound; so with the next. */
  sound: SoundMeasures | null
  loudness: MeasuredLoudness | null
  /** Paths of the sheets of small pictures. */
  sheets: string[]
  dull: DullParts
}

const BYTES_A_MS = (SOUND_RATE * 2) / 1000

/**
 * Reads the whole file once: wave and speech, loudness, small pictures, black and still parts. Memory grows by 5 bytes each
 * 10 ms of film. Writes `sheet-0.jpg`, `sheet-1.jpg` ... into the folder, which must be empty.
 * @throws AppError engine-cancelled, engine-timeout, and what explainFailure says.
 */
export async function lookThrough(
  found: Ffmpeg,
  recording: OpenedRecording,
  thumbs: ThumbPlan,
  folder: string,
  { signal, onShare, onWave }: LookOptions = {},
): Promise<Looked> {
  const { audio, durationMs } = recording
  // in this name alone a per cent sign is read as a pattern
  const pass = planPass(recording, thumbs, path.join(path.resolve(folder).replaceAll('%', '%%'), 'sheet-%d.jpg'))
  const sampler = openSampler(durationMs, onShare)
  const dull = openDullReader()
  const summary: string[] = []
  await readOutput(found, {
    ...{ doing: 'Looking through the recording', path: recording.path, ...pass, messages: 'info', signal },
    timeoutMs: passLimits(durationMs).timeoutMs,
    onBytes: (chunk) => {
      sampler.onBytes(chunk)
      if (audio) onWave?.(sampler.peek)
    },
    onLine: (line) => {
      dull.take(line)
      if (summary.length > 0 || /ebur128.*Summary:/.test(line)) summary.push(line)
    },
  })
  return {
    sound: audio ? sampler.read() : null,
    loudness: audio ? readLoudness(summary) : null,
    sheets: Array.from({ length: thumbs.sheets }, (_, index) => path.join(folder, `sheet-${index}.jpg`)),
    dull: dull.read(durationMs),
  }
}

/**
 * Reads the sound of a film, or of a file recorded apart, once.
 * @throws AppError engine-cancelled, engine-timeout, and what explainFailure says.
 */
export async function measureSound(
  found: Ffmpeg,
  { path: file, audio, durationMs }: { path: string; audio: AudioStream; durationMs: Ms },
  { signal, onShare }: PassOptions = {},
): Promise<SoundMeasures> {
  const sampler = openSampler(durationMs, onShare)
  await readOutput(found, {
    ...{ doing: 'Reading the sound', path: file, output: planSoundPass(audio.index), signal },
    input: [...SOUND_GUARDS, '-vn', '-sn', '-dn'],
    timeoutMs: soundPassLimits(durationMs).timeoutMs,
    onBytes: sampler.onBytes,
  })
  return sampler.read()
}

/** Measures samples as they come out of the pipe. */
function openSampler(durationMs: Ms, onShare: PassOptions['onShare']) {
  const meter = openSoundMeter()
  const whole = durationMs * BYTES_A_MS
  let bytes = 0
  let odd: Buffer = Buffer.alloc(0)
  return {
    onBytes: (chunk: Buffer): void => {
      // a sample of two bytes may lie on the edge of two chunks
      const all = odd.length === 0 ? chunk : Buffer.concat([odd, chunk])
      const even = all.length - (all.length % 2)
      odd = all.subarray(even)
      meter.feed(toSamples(all.subarray(0, even)))
      bytes += chunk.length
      onShare?.(whole > 0 ? Math.min(1, bytes / whole) : 1)
    },
    peek: () => meter.peek(),
    read: () => meter.read(),
  }
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

/** ffmpeg writes low bytes first, as nearly every machine does; a view needs an even place in memory. */
const LOW_BYTES_FIRST = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1

function toSamples(bytes: Buffer): Int16Array {
  if (LOW_BYTES_FIRST) {
    const even = bytes.byteOffset % 2 === 0 ? bytes : Buffer.from(bytes)
    if (even.byteOffset % 2 === 0) return new Int16Array(even.buffer, even.byteOffset, even.length / 2)
  }
  return Int16Array.from({ length: bytes.length / 2 }, (_, index) => bytes.readInt16LE(index * 2))
}
