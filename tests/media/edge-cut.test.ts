// An edge cut starts on the very frame, copies the rest as it is, ends at most 0.15 s late, and plays as one file.
import { readFileSync } from 'node:fs'
import { chmod, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { ALL_FORMATS, EncodedPacketSink, FilePathSource, Input } from 'mediabunny'
import { describe, expect, it } from 'vitest'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import type { ClipEntry } from '../../shared/manifest.ts'
import type { Segment } from '../../shared/log-sheet.ts'
import { buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'
import { firstLine, probeText, readFrames, readSound, soundLag } from '../helpers/media-reading.ts'
import type { ShownFrame } from '../helpers/media-reading.ts'
import { FFMPEG, ffmpeg, samplePath } from '../helpers/media-samples.ts'
import type { SampleName } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

/** Frames that were copied show the very same pixels; the encoder needs no reader of ours to tell. */
interface Shown extends ShownFrame {
  hash: string
}

/** Starts between key frames, on one, and keeps three stretches of which the last one holds no key frame. */
const SEGMENTS = [
  buildSegment('one', 1.41, 5.43, { spans: [span(1.41, 5.43, { lockedIn: true })] }),
  buildSegment('key', 3, 6.2, { spans: [span(3, 6.2, { lockedIn: true })] }),
  buildSegment('joined', 0, 0, {
    spans: [
      span(0.6, 5.5, { lockedIn: true }),
      span(13.2, 15.9, { lockedIn: true }),
      span(8.1, 8.7, { lockedIn: true }),
    ],
    cutOuts: [{ startMs: 2400, endMs: 3170 }],
  }),
]
const LATEST_MS = 150

const CASES: SampleName[] = [
  'gop-30',
  'gop-59.94',
  'gop-vfr',
  'gop-baseline',
  'gop-rotated',
  'gop-mkv',
  'gop-ts',
  'gop-sets-inside',
  'gop-fragmented',
]

const cut = async (
  sample: SampleName,
  segments: Segment[] = SEGMENTS,
  found?: Awaited<ReturnType<typeof findFfmpeg>>,
) => {
  const outDir = await tempFolder()
  const sheet = buildSheet({ durationMs: 16_000, segments })
  const manifest = await cutRecording({ recordingPath: samplePath(sample), sheet, outDir, jobs: 2, found })
  expect(manifest.failed).toEqual([])
  return manifest.clips.map((clip) => ({ ...clip, path: join(outDir, clip.file) }))
}

describe.each(CASES)('edge cuts of %s', (sample) => {
  it('hold the frames and the sound of the recording, copied ones to the pixel', async () => {
    const path = samplePath(sample)
    const clips = await cut(sample)
    expect(clips.map(({ method }) => method)).not.toContain('full')
    if (sample === 'gop-30') expect(clips.map(({ method }) => method)).toEqual(['edge', 'copy', 'edge'])
    const clockStart = Math.max(0, Number(firstLine(probeText(path, ['-show_entries', 'format=start_time']))))
    const turn = sample === 'gop-rotated' ? ['transpose=cclock'] : []
    const frames = shownFrames(path, turn).map((frame) => ({ ...frame, seconds: frame.seconds - clockStart }))
    const sound = readSound(path, clockStart)
    for (const clip of clips) {
      const found = shownFrames(clip.path, turn)
      const parts = clip.spans.map(({ startMs, endMs }) => {
        return frames.filter(({ seconds }) => seconds * 1000 > startMs - 0.6 && seconds * 1000 < endMs - 0.6)
      })
      const kept = parts.flat()
      expect(found.map(({ number }) => number)).toEqual(kept.map(({ number }) => number))
      expect(found.length).toBe(clip.frames)
      checkEnds(clip)
      checkCopied(clip, found, kept)
      checkTimes(found, parts, clip)
      checkSound(clip, sound)
      // any fault of the stream is an error here
      ffmpeg(['-xerror', '-err_detect', 'explode', '-i', clip.path, '-f', 'null', '-'])
    }
  })
})

describe('a clip that was put together', () => {
  it('is one plain avc1 file with all parameter sets in its head', async () => {
    const [clip] = await cut('gop-sets-inside')
    const tags = probeText(clip?.path ?? '', ['-show_entries', 'stream=codec_tag_string'])
      .trim()
      .split('\n')
    expect(tags).toEqual(['avc1', 'mp4a'])
    const reader = new Input({ formats: ALL_FORMATS, source: new FilePathSource(clip?.path ?? '') })
    const track = await reader.getPrimaryVideoTrack()
    const config = new Uint8Array((await track?.getDecoderConfig())?.description as ArrayBuffer)
    // ISO/IEC 14496-15, 5.3.3.1: five bits count the sequence sets
    expect((config[5] ?? 0) & 31).toBe(2)
    expect((await track?.computePacketStats())?.packetCount).toBe(clip?.frames)
    expect(await track?.getFirstTimestamp()).toBe(0)
    // no unit of type 7 or 8 inside (ITU-T H.264, table 7-1)
    const types = new Set<number>()
    for await (const packet of new EncodedPacketSink(track!).packets()) {
      const view = new DataView(packet.data.buffer, packet.data.byteOffset)
      for (let at = 0; at < packet.data.length; at += 4 + view.getUint32(at)) types.add(view.getUint8(at + 4) & 31)
    }
    expect([...types].filter((type) => type === 7 || type === 8)).toEqual([])
    reader.dispose()
    const bytes = readFileSync(clip?.path ?? '')
    expect(bytes.indexOf('moov')).toBeLessThan(bytes.indexOf('mdat'))
  })
})

describe('where a recording does not allow it', () => {
  it.each<{ sample: SampleName; why: RegExp }>([
    { sample: 'gop-ten-bit', why: /8-bit/ },
    { sample: 'gop-full-range', why: /8-bit/ },
    { sample: 'interlaced', why: /half frames/ },
    { sample: 'webm', why: /vp9/ },
    { sample: 'odd', why: /4:2:0/ },
    { sample: 'gop-open', why: /key frame/ },
    { sample: 'cfr-30', why: /no key frame lies in it/ },
  ])('$sample is encoded as a whole and the reason is told', async ({ sample, why }) => {
    const clips = await cut(sample, [buildSegment('one', 1.41, 3.43)])
    expect(clips[0]).toMatchObject({ method: 'full', why: expect.stringMatching(why) as string })
  })

  it('a stretch in which the parameter sets change is encoded as a whole', async () => {
    const clips = await cut('gop-two-sets', [buildSegment('a', 2.4, 6), buildSegment('b', 14.4, 20)])
    expect(clips.map(({ method }) => method)).toEqual(['edge', 'full'])
    expect(clips[1]?.why).toContain('parameter sets change')
  })
})

describe('an edge cut that comes out wrong', () => {
  it.each([
    { name: 'the head lacks a frame', swap: ['-bf', '-frames:v 10 -bf'] },
    { name: 'the head bears the set id of the recording', swap: ['sps-id=1', 'sps-id=0'] },
    { name: 'the sound is late', swap: ['asetpts=N,', 'adelay=80:all=1,asetpts=N,'] },
  ])('is made as a whole instead: $name', async ({ swap: [from = '', to = ''] }) => {
    const found = await findFfmpeg()
    const script = join(await tempFolder(), 'ffmpeg.mjs')
    // an ffmpeg that does something else than it is told when it cuts an edge
    await writeFile(
      script,
      `#!/usr/bin/env node
import { spawnSync } from 'node:child_process'
let args = process.argv.slice(2)
if (args.some((arg) => arg.startsWith('sps-id'))) args = args.flatMap((arg) => arg === ${JSON.stringify(from)} ? ${JSON.stringify(to.split(' '))} : arg.replace(${JSON.stringify(from)}, ${JSON.stringify(to)}))
process.exit(spawnSync(${JSON.stringify(FFMPEG)}, args, { stdio: 'inherit' }).status ?? 1)
`,
    )
    await chmod(script, 0o755)
    const [clip] = await cut('gop-30', [SEGMENTS[0] as Segment], { ...found, ffmpeg: script })
    expect(clip).toMatchObject({ method: 'full', frames: 120 })
    expect(clip?.why).toMatch(/^Encoded anew as a whole, since copying failed\. /)
    expect(readFrames(clip?.path ?? '')[0]?.number).toBe(43)
  })
})

function shownFrames(path: string, turn: readonly string[]): Shown[] {
  const text = ffmpeg([
    '-noautorotate',
    '-i',
    path,
    '-map',
    '0:v:0',
    '-fps_mode',
    'passthrough',
    '-f',
    'framemd5',
    '-',
  ]).toString()
  const hashes = text.split('\n').flatMap((line) => (/^\d/.test(line) ? [line.split(',').at(-1)?.trim() ?? ''] : []))
  return readFrames(path, turn).map((frame, number) => ({ ...frame, hash: hashes[number] ?? '' }))
}

/** The start is that of the mark, the end is at most 0.15 s (and one frame) behind it. */
function checkEnds(clip: ClipEntry): void {
  const asked = {
    one: [[1410, 5430]],
    key: [[3000, 6200]],
    joined: [
      [600, 2400],
      [3170, 5500],
      [8100, 8700],
      [13_200, 15_900],
    ],
  }[clip.segmentId]
  expect(clip.spans).toHaveLength(asked?.length ?? 0)
  clip.spans.forEach(({ startMs, endMs }, number) => {
    const [start = NaN, end = NaN] = asked?.[number] ?? []
    expect(startMs - start).toBeGreaterThanOrEqual(0)
    expect(startMs - start).toBeLessThan(80)
    expect(endMs - end).toBeGreaterThanOrEqual(0)
    expect(endMs - end).toBeLessThanOrEqual(LATEST_MS + 80)
  })
}

/** Encoded frames differ from the recording's, copied ones do not. */
function checkCopied(clip: ClipEntry, found: readonly Shown[], kept: readonly Shown[]): void {
  const same = found.filter(({ hash }, frame) => hash === kept[frame]?.hash).length
  const [, encoded = '0'] = /^The first (\d+) of/.exec(clip.why) ?? []
  expect(same).toBeGreaterThanOrEqual(found.length - Number(encoded))
  if (clip.method === 'copy') expect(same).toBe(found.length)
}

function checkTimes(found: readonly Shown[], parts: readonly (readonly Shown[])[], clip: ClipEntry): void {
  let start = 0
  const times = parts.flatMap((part, number) => {
    const first = part[0]?.seconds ?? 0
    const shown = part.map(({ seconds }) => start + seconds - first)
    const { startMs = 0, endMs = 0 } = clip.spans[number] ?? {}
    start += (endMs - startMs) / 1000
    return shown
  })
  const off = found.map(({ seconds }, frame) => Math.abs(seconds - (times[frame] ?? NaN)))
  // spans are told in whole milliseconds
  expect(Math.max(...off)).toBeLessThan(0.0005 + 0.001 * parts.length)
}

function checkSound(clip: ClipEntry & { path: string }, recording: Float32Array): void {
  const sound = readSound(clip.path)
  let start = 0
  for (const { startMs, endMs } of clip.spans) {
    for (const share of [0.05, 0.5, 0.9]) {
      const into = ((endMs - startMs) / 1000 - 0.2) * share
      const { samples, correlation } = soundLag(sound, start + into, recording, startMs / 1000 + into)
      expect(correlation).toBeGreaterThan(0.85)
      // spans are told in whole milliseconds, here 48 samples
      expect(Math.abs(samples)).toBeLessThanOrEqual(48 * clip.spans.length + 48)
    }
    start += (endMs - startMs) / 1000
  }
}
