// Every clip holds the very frames and the very sound of the recording that the sheet asks for, for each kind of camera.
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import type { ClipEntry } from '../../shared/manifest.ts'
import type { Stretch } from '../../shared/time.ts'
import { buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'
import { firstLine, probeText, readFrames, readSound, soundLag } from '../helpers/media-reading.ts'
import type { ShownFrame } from '../helpers/media-reading.ts'
import { samplePath } from '../helpers/media-samples.ts'
import type { SampleName } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

/** The clip turns the picture upright; this turns it back so that the bar code lies in the top row. */
const TURN_BACK = ['transpose=clock']

const CASES: { sample: SampleName; turn?: string[] }[] = [
  { sample: 'cfr-30' },
  { sample: 'cfr-25' },
  { sample: 'cfr-29.97' },
  { sample: 'cfr-59.94' },
  { sample: 'vfr' },
  { sample: 'rotated', turn: TURN_BACK },
  { sample: 'odd' },
  { sample: 'mono' },
  { sample: 'five-one' },
  { sample: 'late-sound' },
  { sample: 'short-sound' },
  { sample: 'mkv' },
  { sample: 'ts' },
  { sample: 'webm' },
  { sample: 'open-gop' },
  { sample: 'faststart' },
]

/** What each clip keeps, by hand: spans less cut-outs. */
const KEPT: Record<string, Stretch[]> = {
  one: [{ startMs: 1010, endMs: 3700 }],
  joined: [
    { startMs: 400, endMs: 1500 },
    { startMs: 1900, endMs: 2601 },
    { startMs: 13_000, endMs: 14_000 },
    { startMs: 14_333, endMs: 16_300 },
  ],
}

const SHEET = buildSheet({
  durationMs: 16_000,
  segments: [
    buildSegment('one', 1.01, 3.7),
    buildSegment('joined', 0, 0, {
      // the second span is so far off that the recording is opened twice; its end is clamped to the recording's
      spans: [span(0.4, 2.601), span(13, 16.3)],
      cutOuts: [
        { startMs: 1500, endMs: 1900 },
        { startMs: 14_000, endMs: 14_333 },
      ],
    }),
  ],
})

describe.each(CASES)('clips of $sample', ({ sample, turn }) => {
  it('hold exactly the frames asked for, each at its time, and the sound in place', async () => {
    const path = samplePath(sample)
    const out = await tempFolder()
    const manifest = await cutRecording({ recordingPath: path, sheet: SHEET, outDir: out, jobs: 2 })
    expect(manifest.failed).toEqual([])
    expect(manifest.clips.map((clip) => clip.segmentId)).toEqual(['one', 'joined'])

    const clockStart = Math.max(0, Number(firstLine(probeText(path, ['-show_entries', 'format=start_time']))))
    const frames = readFrames(path, turn).map((frame) => ({ ...frame, seconds: frame.seconds - clockStart }))
    const sound = readSound(path, clockStart)
    for (const clip of manifest.clips) {
      const parts = keptParts(clip.segmentId, frames)
      checkFrames(clip, join(out, clip.file), parts, turn)
      checkSound(join(out, clip.file), parts, sound)
      checkStreams(join(out, clip.file))
    }
  })
})

/** Frames in a row of the recording, and how long they show: to the frame after. */
interface Part {
  frames: ShownFrame[]
  seconds: number
}

/** A frame is kept iff start <= its time rounded to the ms < end. */
function keptParts(segmentId: string, frames: readonly ShownFrame[]): Part[] {
  return (KEPT[segmentId] ?? []).map(({ startMs, endMs }) => {
    const kept = frames.filter(({ seconds }) => {
      const ms = Math.round(seconds * 1000)
      return startMs <= ms && ms < endMs
    })
    const [first, last] = [kept[0]?.seconds ?? 0, kept.at(-1)?.seconds ?? 0]
    const next = frames.find(({ seconds }) => seconds > last + 1e-6)?.seconds ?? last + 1 / 30
    return { frames: kept, seconds: next - first }
  })
}

/** Where each part starts in the clip, in seconds. */
function partStarts(parts: readonly Part[]): number[] {
  return parts.map((_, number) => parts.slice(0, number).reduce((sum, part) => sum + part.seconds, 0))
}

function checkFrames(clip: ClipEntry, path: string, parts: readonly Part[], turn: string[] | undefined): void {
  const found = readFrames(path, turn)
  expect(found.map(({ number }) => number)).toEqual(parts.flatMap((part) => part.frames.map(({ number }) => number)))
  expect(clip.frames).toBe(found.length)
  expect(found[0]?.seconds).toBe(0)
  const starts = partStarts(parts)
  const times = parts.flatMap((part, number) => {
    const first = part.frames[0]?.seconds ?? 0
    return part.frames.map(({ seconds }) => (starts[number] ?? 0) + seconds - first)
  })
  const off = found.map(({ seconds }, frame) => Math.abs(seconds - (times[frame] ?? NaN)))
  expect(Math.max(...off), 'greatest error of a frame time, seconds').toBeLessThan(0.0005)
}

/** At three places in each part, 0.05 s of sound lies within 1 ms of where the recording has it. */
function checkSound(path: string, parts: readonly Part[], recording: Float32Array): void {
  const sound = readSound(path)
  const starts = partStarts(parts)
  const places = parts.flatMap((part, number) =>
    [0.02, 0.5, 0.98].map((share) => ({ part, start: starts[number] ?? 0, into: (part.seconds - 0.12) * share })),
  )
  for (const { part, start, into } of places) {
    const at = (part.frames[0]?.seconds ?? 0) + into
    if (loudest(recording, at) < 1e-4) {
      expect(loudest(sound, start + into + 0.01)).toBeLessThan(1e-3)
      continue
    }
    const { samples, correlation } = soundLag(sound, start + into, recording, at)
    expect(correlation).toBeGreaterThan(0.9)
    expect(Math.abs(samples), `lag in samples at ${at} s`).toBeLessThanOrEqual(48)
  }
}

/** The greatest level in 0.09 s from a moment on. */
function loudest(sound: Float32Array, seconds: number): number {
  const from = Math.round(seconds * 48_000)
  return sound.slice(from, from + 4320).reduce((most, value) => Math.max(most, Math.abs(value)), 0)
}

function checkStreams(path: string): void {
  const streams = probeText(path, ['-show_entries', 'stream=codec_name,pix_fmt,sample_rate']).trim().split('\n')
  expect(streams).toEqual(['h264,yuv420p', 'aac,48000'])
  const sides = probeText(path, ['-select_streams', 'v', '-show_entries', 'stream=width,height'])
    .trim()
    .split(',')
    .map(Number)
  expect(sides.every((side) => side % 2 === 0)).toBe(true)
}
