/** Makes the recordings that cutting is measured on, once a machine: pieces that differ, joined; speech-like sound with pauses. */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { fileURLToPath } from 'node:url'

export interface CuttingSample {
  size: string
  rate: number
  /** Frames from key frame to key frame. */
  gop: number
  bitRate: string
  /** Pieces with pictures of their own, and how often the row of them is joined. */
  pieces: number
  pieceSeconds: number
  rows: number
}

const AS_BROADCAST = { size: '1280x720', rate: 30, bitRate: '3M', pieces: 4, pieceSeconds: 75, rows: 4 }
const SHORTER = { pieces: 2, pieceSeconds: 50, rows: 3 }

/** 20 minutes (quick: 5) of 720p30 at 3 Mbit/s with a key frame each 250 or 60 frames; 2 minutes (quick: 30 s) of 1080p60. */
export function cuttingSamples(quick: boolean): Record<'gop250' | 'gop60' | 'large', CuttingSample> {
  const base = { ...AS_BROADCAST, ...(quick && SHORTER) }
  return {
    gop250: { ...base, gop: 250 },
    gop60: { ...base, gop: 60 },
    large: {
      ...{ size: '1920x1080', rate: 60, gop: 120, bitRate: '12M' },
      ...{ pieces: 1, pieceSeconds: quick ? 30 : 60, rows: quick ? 1 : 2 },
    },
  }
}

/** @returns the path of the recording, which stays for later runs. @param rows joins the row of pieces another number of times. */
export function makeCuttingSample(sample: CuttingSample, rows = sample.rows): string {
  const { pieces, pieceSeconds, size, rate, gop, bitRate } = sample
  const source = readFileSync(fileURLToPath(import.meta.url))
  const id = (value: unknown): string =>
    createHash('sha256').update(source).update(JSON.stringify(value)).digest('hex').slice(0, 12)
  const folder = path.join(tmpdir(), 'repslate-bench-samples')
  mkdirSync(folder, { recursive: true })
  const out = path.join(folder, `${id({ ...sample, rows })}.mp4`)
  const paths = Array.from({ length: pieces }, (_, piece) =>
    path.join(folder, `${id({ ...sample, rows: 0 })}-${piece}.mp4`),
  )
  paths.forEach((piece, number) =>
    make(piece, [
      ...['-f', 'lavfi', '-i', picture(size, rate, pieceSeconds, number)],
      ...['-c:v', 'libx264', '-preset', 'veryfast', '-b:v', bitRate, '-maxrate', bitRate, '-bufsize', '6M'],
      ...['-g', String(gop), '-bf', '3', '-pix_fmt', 'yuv420p', '-x264-params', 'scenecut=0'],
      ...['-video_track_timescale', '15360'],
    ]),
  )
  const seconds = pieces * pieceSeconds * rows
  const sound = path.join(folder, `${id({ seconds })}.m4a.mp4`)
  make(sound, ['-f', 'lavfi', '-i', speechLike(seconds), '-c:a', 'aac', '-b:a', '160k'])
  const list = path.join(folder, `${id({ ...sample, rows })}.ffconcat`)
  // the length stands in the list, for the head of an MP4 gives it in whole milliseconds only
  const entries = Array.from({ length: rows }, () => paths).flat()
  const text = entries.map((file) => `file ${path.basename(file)}\nduration ${pieceSeconds}.000000\n`).join('')
  writeFileSync(list, `ffconcat version 1.0\n${text}`)
  make(out, ['-f', 'concat', '-safe', '1', '-i', list, '-i', sound, '-map', '0:v', '-map', '1:a', '-c', 'copy'])
  return out
}

/** A moving test picture with noise that never repeats; each piece has its own colours. */
function picture(size: string, rate: number, seconds: number, piece: number): string {
  const hue = `hue=h=${piece * 90}+40*floor(t/5):s=0.8`
  return `testsrc2=s=${size}:r=${rate}:d=${seconds},${hue},noise=alls=8:allf=t:all_seed=${piece * 7 + 11}`
}

/** Noise in the rhythm of syllables, with a pause of 0.8 to 4 s in each 6.1 s. */
function speechLike(seconds: number): string {
  const pause = 'lt(mod(t,6.1),0.8+3.2*mod(floor(t/6.1)*0.618034,1))'
  const level = `volume='if(${pause},0.002,0.4+0.6*abs(sin(t*9)))':eval=frame`
  return `anoisesrc=c=pink:seed=7:r=48000:a=0.25:d=${seconds},${level},pan=stereo|c0=c0|c1=0.7*c0`
}

function make(out: string, args: readonly string[]): void {
  if (existsSync(out)) return
  const part = `${out}.part.mp4`
  const run = spawnSync('ffmpeg', ['-nostdin', '-v', 'error', '-y', ...args, part])
  if (run.status !== 0) throw new Error(`ffmpeg could not make a sample: ${run.stderr.toString()}`)
  renameSync(part, out)
}
