/** Reads recordings and clips apart from the product's own code: frame numbers, frame times, sound, loudness. */
import { spawnSync } from 'node:child_process'
import { BAR_BITS, BAR_SIZE, FFMPEG, FFPROBE, ffmpeg } from './media-samples.ts'

/** One shown frame: its time in seconds as ffprobe decodes it, and the number burned into it. */
export interface ShownFrame {
  seconds: number
  number: number
}

/** Decodes the whole file. @param turn filters that undo a turn before the bar code is read. */
export function readFrames(path: string, turn: readonly string[] = []): ShownFrame[] {
  const times = probeText(path, ['-select_streams', 'v:0', '-show_entries', 'frame=best_effort_timestamp_time'])
    .split('\n')
    .map((line) => line.split(',')[0] ?? '')
    .filter((line) => /^-?[\d.]+$/.test(line))
    .map(Number)
  const numbers = readNumbers(path, turn)
  if (numbers.length !== times.length) {
    throw new Error(`${times.length} frame times but ${numbers.length} frames in ${path}`)
  }
  return times.map((seconds, frame) => ({ seconds, number: numbers[frame] ?? NaN }))
}

/** The number burned into each frame of a video or still. */
export function readNumbers(path: string, turn: readonly string[] = []): number[] {
  const bars = [
    ...turn,
    `crop=${BAR_BITS * BAR_SIZE}:${BAR_SIZE}:0:0`,
    `scale=${BAR_BITS}:1:flags=area`,
    'format=gray',
  ].join(',')
  const pixels = ffmpeg(['-i', path, '-map', '0:v:0', '-vf', bars, '-fps_mode', 'passthrough', '-f', 'rawvideo', '-'])
  return Array.from({ length: pixels.length / BAR_BITS }, (_, frame) => barNumber(pixels, frame))
}

function barNumber(pixels: Buffer, frame: number): number {
  return Array.from({ length: BAR_BITS }, (_, bit) =>
    (pixels[frame * BAR_BITS + bit] ?? 0) > 128 ? 1 << bit : 0,
  ).reduce((sum, value) => sum + value, 0)
}

/** All sound, one channel at 48 kHz; sample 0 is the moment 0 of the container's clock less `clockStart` seconds. @param track from 0 */
export function readSound(path: string, clockStart = 0, track = 0): Float32Array {
  // of the first decoded piece: samples that only warm the decoder up (Opus, AAC) are gone by then
  const first = ['-select_streams', `a:${track}`, '-show_entries', 'frame=pts_time', '-read_intervals', '%+#1']
  const start = Number(firstLine(probeText(path, first)).split(',')[0])
  const bytes = ffmpeg(['-i', path, '-map', `0:a:${track}`, '-ac', '1', '-ar', '48000', '-f', 'f32le', '-'])
  const samples = new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length))
  const ahead = Math.round((start - clockStart) * 48_000)
  if (ahead <= 0) return samples.slice(-ahead)
  const placed = new Float32Array(samples.length + ahead)
  placed.set(samples, ahead)
  return placed
}

/**
 * By how many samples the clip's sound is late against the recording's, for 0.05 s from a moment on.
 * The lag with the greatest cross-correlation within 10 ms, and that correlation (1 = the same but for its level).
 */
export function soundLag(
  clip: Float32Array,
  clipSeconds: number,
  recording: Float32Array,
  recordingSeconds: number,
): { samples: number; correlation: number } {
  const [at, source] = [Math.round(clipSeconds * 48_000), Math.round(recordingSeconds * 48_000)]
  const [length, most] = [2400, 480]
  let best = { samples: 0, correlation: -1 }
  for (let lag = -most; lag <= most; lag += 1) {
    let [product, a, b] = [0, 0, 0]
    for (let i = 0; i < length; i += 1) {
      const x = clip[at + i + lag] ?? 0
      const y = recording[source + i] ?? 0
      product += x * y
      a += x * x
      b += y * y
    }
    const correlation = product / Math.sqrt(a * b || 1)
    if (correlation > best.correlation) best = { samples: lag, correlation }
  }
  return best
}

/** Integrated loudness in LUFS and true peak in dBTP by ffmpeg's ebur128 (EBU R128, ITU-R BS.1770). */
export function readLoudnessOf(path: string): { lufs: number; peak: number } {
  const args = ['-nostdin', '-i', path, '-map', '0:a:0', '-af', 'ebur128=peak=true:framelog=verbose', '-f', 'null', '-']
  const text = spawnSync(FFMPEG, args).stderr.toString()
  const summary = text.slice(text.lastIndexOf('Summary:'))
  return {
    lufs: Number(/I:\s+(-?[\d.]+) LUFS/.exec(summary)?.[1]),
    peak: Number(/Peak:\s+(-?[\d.]+) dBFS/.exec(summary)?.[1]),
  }
}

/** Transport streams are listed twice, once a programme. */
export function firstLine(text: string): string {
  return text.trim().split('\n')[0] ?? ''
}

/** What ffprobe prints as csv for the options. */
export function probeText(path: string, options: readonly string[]): string {
  const result = spawnSync(FFPROBE, ['-v', 'error', ...options, '-of', 'csv=p=0', path], { maxBuffer: 1 << 28 })
  if (result.status !== 0) throw new Error(`ffprobe ${path}: ${result.stderr.toString()}`)
  return result.stdout.toString()
}
