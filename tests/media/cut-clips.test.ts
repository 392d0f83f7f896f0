// What a cut leaves in its folder: clips that are kept, stills, levels, nothing stale; one bad clip stops no other.
import { copyFileSync, readFileSync, readdirSync, statSync, truncateSync } from 'node:fs'
import { chmod, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { ALL_FORMATS, EncodedPacketSink, FilePathSource, Input } from 'mediabunny'
import { describe, expect, it } from 'vitest'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { embedChapters } from '../../core/media/engine/embed-chapters.ts'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import type { CutProgress } from '../../server/actions/cut-progress.ts'
import type { CutRequest } from '../../server/actions/cut-recording.ts'
import { Manifest } from '../../shared/manifest.ts'
import { buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'
import { processesLeft } from '../helpers/media-processes.ts'
import { probeText, readLoudnessOf, readNumbers } from '../helpers/media-reading.ts'
import { FFMPEG, ffmpeg, samplePath } from '../helpers/media-samples.ts'
import type { SampleName } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const named = (name: string) => ({ exercise: { name } })
const SHEET = buildSheet({
  durationMs: 16_000,
  segments: [
    buildSegment('a', 1, 3, named('Squat')),
    buildSegment('b', 4, 6, { ...named('Lunge, left & right'), loop: { startMs: 5000, endMs: 5500 } }),
    buildSegment('c', 8, 9, named('体操')),
  ],
})

const request = async (fields: Partial<CutRequest> = {}): Promise<CutRequest> => ({
  recordingPath: samplePath('cfr-30'),
  sheet: SHEET,
  outDir: await tempFolder(),
  jobs: 2,
  ...fields,
})

describe('the folder of a cut', () => {
  it('holds the manifest, the clips and stills it names, and no part file', async () => {
    const input = await request()
    const manifest = await cutRecording(input)
    expect(Manifest.parse(JSON.parse(readFileSync(join(input.outDir, 'manifest.json'), 'utf8')))).toEqual(manifest)
    expect(manifest.clips.map(({ segmentId, name }) => [segmentId, name])).toEqual([
      ['a', 'Squat'],
      ['b', 'Lunge, left & right'],
      ['c', '体操'],
    ])
    const named = manifest.clips.flatMap((clip) => [clip.file, clip.poster]).map((file) => file?.replace('clips/', ''))
    expect(readdirSync(join(input.outDir, 'clips')).sort()).toEqual(named.sort())
    expect(manifest.clips.map((clip) => clip.file.replace(/-[0-9a-f]{16}\.mp4$/, ''))).toEqual([
      'clips/squat',
      'clips/lunge-left-right',
      'clips/clip',
    ])
    expect(partFiles(input.outDir)).toEqual([])
  })

  it('keeps right clips: a second run cuts none, a rename copies, a changed span cuts one', async () => {
    const input = await request()
    const first = await cutRecording(input)
    const times = first.clips.map((clip) => statSync(join(input.outDir, clip.file)).mtimeMs)
    const second = await cutRecording(input)
    expect(second.clips.map((clip) => clip.reused)).toEqual([true, true, true])
    expect(second.clips.map((clip) => statSync(join(input.outDir, clip.file)).mtimeMs)).toEqual(times)

    const segments = SHEET.segments.map((segment) =>
      segment.id === 'a' ? { ...segment, ...{ exercise: { ...segment.exercise, name: 'Deep squat' } } } : segment,
    )
    const renamed = await cutRecording({ ...input, sheet: { ...SHEET, segments } })
    expect(renamed.clips.map((clip) => clip.reused)).toEqual([true, true, true])
    expect(renamed.clips[0]?.file).toMatch(/^clips\/deep-squat-/)
    expect(renamed.clips[0]?.sha256).toBe(first.clips[0]?.sha256)

    const moved = SHEET.segments.map((segment) =>
      segment.id === 'b' ? { ...segment, spans: [span(4.1, 6)] } : segment,
    )
    const third = await cutRecording({ ...input, sheet: { ...SHEET, segments: moved } })
    expect(third.clips.map((clip) => clip.reused)).toEqual([true, false, true])
  })

  it('makes a clip again that was damaged since', async () => {
    const input = await request()
    const [clip] = (await cutRecording(input)).clips
    const path = join(input.outDir, clip?.file ?? '')
    truncateSync(path, Math.floor(statSync(path).size / 2))
    const again = (await cutRecording(input)).clips
    expect(again.map(({ reused }) => reused)).toEqual([false, true, true])
    expect(again[0]?.sha256).toBe(clip?.sha256)
  })

  it('serves two segments with the very same clip once', async () => {
    const twice = [buildSegment('one', 1, 2, named('Plank')), buildSegment('two', 1, 2, named('Plank'))]
    const manifest = await cutRecording(await request({ sheet: buildSheet({ segments: twice }) }))
    expect(manifest.clips.map((clip) => clip.reused)).toEqual([false, true])
    expect(manifest.clips[0]?.file).toBe(manifest.clips[1]?.file)
  })

  it('has stills of the frame that the loop starts with, or a third in', async () => {
    const input = await request()
    const { clips } = await cutRecording(input)
    const numbers = clips.map((clip) => readNumbers(join(input.outDir, clip.poster ?? '')))
    expect(numbers).toEqual([[30 + 20], [150], [240 + 10]])
  })

  it('is told of in steps and clips that only go forward', async () => {
    const seen: CutProgress[] = []
    await cutRecording(await request({ onProgress: (progress) => seen.push(progress) }))
    const shares = seen.map(({ fraction }) => fraction)
    expect(shares).toEqual([...shares].sort((a, b) => a - b))
    expect(seen.at(-1)).toMatchObject({ kind: 'clip', percent: 100, fraction: 1, done: true })
    expect(seen.filter(({ done }) => done).map(({ label }) => label)).toEqual(
      expect.arrayContaining(['Reading the recording', 'Measuring the loudness', 'Cutting Squat', 'Cutting 体操']),
    )
  })
})

describe('a clip that fails', () => {
  it('stops no other and is named in the manifest', async () => {
    const found = await findFfmpeg()
    const script = join(await tempFolder(), 'ffmpeg')
    // an ffmpeg that breaks down when it is to cut from 4 s
    await writeFile(
      script,
      `#!/bin/sh\ncase "$*" in *"-ss 3.98"*) echo "Cannot allocate memory" >&2; exit 1;; esac\nexec "${FFMPEG}" "$@"\n`,
    )
    await chmod(script, 0o755)
    const input = await request({ found: { ...found, ffmpeg: script } })
    const manifest = await cutRecording(input)
    expect(manifest.clips.map((clip) => clip.segmentId)).toEqual(['a', 'c'])
    expect(manifest.failed).toEqual([
      {
        segmentId: 'b',
        name: 'Lunge, left & right',
        code: 'engine-failed',
        message: 'Cutting "Lunge, left & right" failed: there was not enough memory. Run fewer jobs at a time.',
      },
    ])
    expect(partFiles(input.outDir)).toEqual([])
    const again = await cutRecording({ ...input, found })
    expect(again.clips.map((clip) => clip.reused)).toEqual([true, false, true])
  })

  it('is thrown away when its frames are not those of the plan', async () => {
    const found = await findFfmpeg()
    const script = join(await tempFolder(), 'ffmpeg')
    // an ffmpeg that ends well but writes one frame too few
    await writeFile(
      script,
      `#!/bin/sh\ncase "$*" in *"-ss 0.98"*) for a; do last="$a"; done; exec "${FFMPEG}" -v error -y -i "${samplePath('cfr-30')}" -t 1.95 -f mp4 "$last";; esac\nexec "${FFMPEG}" "$@"\n`,
    )
    await chmod(script, 0o755)
    const input = await request({ found: { ...found, ffmpeg: script } })
    const manifest = await cutRecording(input)
    expect(manifest.failed).toMatchObject([{ segmentId: 'a', code: 'clip-wrong' }])
    expect(manifest.failed[0]?.message).toContain('59 frames, not 60')
    expect(readdirSync(join(input.outDir, 'clips')).filter((name) => name.startsWith('squat'))).toEqual([])
  })
})

describe('a cut that is cancelled', () => {
  it('ends ffmpeg, leaves no part file, and goes on where it was', async () => {
    const controller = new AbortController()
    const input = await request({
      jobs: 1,
      onProgress: ({ segmentId }) => {
        if (segmentId === 'b') controller.abort()
      },
      signal: controller.signal,
    })
    await expect(cutRecording(input)).rejects.toMatchObject({ code: 'engine-cancelled' })
    expect(await processesLeft(input.outDir, 5)).toEqual([])
    expect(partFiles(input.outDir)).toEqual([])
    expect(readdirSync(input.outDir)).not.toContain('manifest.json')
    const { signal: _, onProgress: __, ...again } = input
    expect((await cutRecording(again)).clips.map((clip) => clip.reused)).toEqual([true, false, false])
  })

  it('before it began makes nothing', async () => {
    const outDir = join(await tempFolder(), 'out')
    const input = await request({ outDir, signal: AbortSignal.abort() })
    await expect(cutRecording(input)).rejects.toMatchObject({ code: 'engine-cancelled' })
    expect(() => statSync(outDir)).toThrow()
  })
})

describe('the level of clips', () => {
  // EBU R128 / ITU-R BS.1770 as measured by ffmpeg's ebur128, apart from the product's own run
  it.each<SampleName>(['cfr-30', 'mono', 'five-one', 'webm'])('of %s is within 0.5 LU of -16 LUFS', async (sample) => {
    const input = await request({ recordingPath: samplePath(sample) })
    const { clips } = await cutRecording(input)
    for (const clip of clips.slice(0, 2)) {
      expect(Math.abs(readLoudnessOf(join(input.outDir, clip.file)).lufs + 16)).toBeLessThanOrEqual(0.5)
    }
    expect(new Set(clips.map((clip) => clip.loudness?.gainDb)).size, 'one gain for all').toBe(1)
  })

  it('never passes the ceiling where claps are loud against the speech', async () => {
    const input = await request({ recordingPath: samplePath('claps') })
    const { clips } = await cutRecording(input)
    expect(clips[0]?.loudness).toMatchObject({ limited: true })
    for (const clip of clips) expect(readLoudnessOf(join(input.outDir, clip.file)).peak).toBeLessThanOrEqual(-1.5)
  })

  it('of silence is left alone', async () => {
    const sheet = buildSheet({ durationMs: 4000, segments: [buildSegment('a', 1, 2)] })
    const { clips } = await cutRecording(await request({ recordingPath: samplePath('silence'), sheet }))
    expect(clips[0]?.loudness).toMatchObject({ integratedLufs: null, gainDb: 0, limited: false })
  })
})

describe('what a clip holds', () => {
  it('no chapter, title or further stream of the recording', async () => {
    const input = await request({ recordingPath: samplePath('with-chapters') })
    const [clip] = (await cutRecording(input)).clips
    const path = join(input.outDir, clip?.file ?? '')
    expect(probeText(samplePath('with-chapters'), ['-show_chapters'])).toContain('Stale chapter')
    expect(probeText(path, ['-show_chapters'])).toBe('')
    expect(probeText(path, ['-show_entries', 'format_tags'])).not.toMatch(/Stale|Lav[fc]/)
    expect(probeText(path, ['-show_entries', 'stream=codec_type']).trim().split('\n')).toEqual(['video', 'audio'])
  })

  it('whole pictures where the recording has fields', async () => {
    const input = await request({ recordingPath: samplePath('interlaced') })
    expect(probeText(input.recordingPath, ['-select_streams', 'v', '-show_entries', 'stream=field_order']).trim()).toBe(
      'tt',
    )
    const [clip] = (await cutRecording(input)).clips
    const path = join(input.outDir, clip?.file ?? '')
    expect(probeText(path, ['-select_streams', 'v', '-show_entries', 'stream=field_order']).trim()).toBe('progressive')
    expect(readNumbers(path)).toEqual(Array.from({ length: 50 }, (_, frame) => 25 + frame))
  })

  it('key frames at 0 and about every 2 seconds where it was encoded as a whole, and its index before its data', async () => {
    const sheet = buildSheet({ segments: [buildSegment('a', 1, 12)] })
    const input = await request({ sheet, recordingPath: samplePath('open-gop') })
    const [clip] = (await cutRecording(input)).clips
    expect(clip?.method).toBe('full')
    const path = join(input.outDir, clip?.file ?? '')
    const packets = probeText(path, ['-select_streams', 'v', '-show_entries', 'packet=pts_time,flags'])
      .trim()
      .split('\n')
    const keys = packets.filter((line) => line.includes('K')).map((line) => Number(line.split(',')[0]))
    expect(keys[0]).toBe(0)
    keys.slice(1).forEach((key, number) => expect(key - (keys[number] ?? 0)).toBeLessThan(2.04))
    const bytes = readFileSync(path)
    expect(bytes.indexOf('moov')).toBeLessThan(bytes.indexOf('mdat'))
  })

  it('what an MP4 reader of another project reads: two tracks, every packet, both from 0', async () => {
    const input = await request({ recordingPath: samplePath('vfr') })
    const [clip] = (await cutRecording(input)).clips
    const reader = new Input({ formats: ALL_FORMATS, source: new FilePathSource(join(input.outDir, clip?.file ?? '')) })
    const [video, audio] = [await reader.getPrimaryVideoTrack(), await reader.getPrimaryAudioTrack()]
    expect((await reader.getTracks()).length).toBe(2)
    expect([video?.codec, audio?.codec]).toEqual(['avc', 'aac'])
    expect((await video?.computePacketStats())?.packetCount).toBe(clip?.frames)
    expect(await video?.getFirstTimestamp()).toBe(0)
    expect((video && (await new EncodedPacketSink(video).getFirstPacket()))?.type).toBe('key')
    // AAC: the decoder's warm-up (1024 samples) lies before 0 and is not played
    expect(Math.abs((await audio?.getFirstTimestamp()) ?? NaN)).toBeLessThanOrEqual(1024 / 48_000 + 1e-6)
    expect(Math.abs(((await video?.computeDuration()) ?? NaN) - (clip?.durationMs ?? NaN) / 1000)).toBeLessThan(0.04)
    reader.dispose()
  })
})

describe('chapters put into a clip', () => {
  it('change no picture or sound, and read back as they were', async () => {
    const folder = await tempFolder()
    const clipPath = join(folder, 'clip.mp4')
    copyFileSync(samplePath('cfr-30'), clipPath)
    const chapters = [
      { title: 'Set-up; part = 1 # \\', startMs: 0, endMs: 4000, level: 1 as const },
      { title: 'Movement “slow”', startMs: 4000, endMs: 16_000, level: 1 as const },
    ]
    const outPath = join(folder, 'lesson.mp4')
    await embedChapters({ clipPath, chapters, title: 'Squat = deep; 深', durationMs: 16_000, outPath })
    const hash = (path: string) =>
      ffmpeg(['-i', path, '-map', '0:v', '-map', '0:a', '-c', 'copy', '-f', 'streamhash', '-']).toString()
    expect(hash(outPath)).toBe(hash(clipPath))
    const read = probeText(outPath, ['-show_entries', 'chapter=start_time,end_time:chapter_tags=title'])
    expect(read.trimEnd().split('\n')).toEqual([
      // a blank after a closing backslash: without it ffmpeg would take the next line for part of the title
      '0.000000,4.000000,Set-up; part = 1 # \\ ',
      '4.000000,16.000000,Movement “slow”',
    ])
    expect(probeText(outPath, ['-show_entries', 'format_tags=title']).trim()).toBe('Squat = deep; 深')
    expect(readdirSync(folder).sort()).toEqual(['clip.mp4', 'lesson.mp4'])
  })
})

function partFiles(outDir: string): string[] {
  return readdirSync(join(outDir, '.work')).filter((name) => name.endsWith('.part'))
}
