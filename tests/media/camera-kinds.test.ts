// Film of every kind of camera becomes clips that every browser plays: the very frames, the sound in place, plain H.264 and AAC.
// The full run (REPSLATE_SOAK) cuts every kind and writes the table to .build/camera-kinds.md.
import { spawnSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { ALL_FORMATS, FilePathSource, Input } from 'mediabunny'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import type { ClipEntry } from '../../shared/manifest.ts'
import { buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'
import { CAMERA_KINDS, CAMERA_SECONDS, cameraPath, hdr } from '../helpers/camera-samples.ts'
import type { CameraKind } from '../helpers/camera-samples.ts'
import { openClipPlayer } from '../helpers/clip-player.ts'
import type { ClipPlayer } from '../helpers/clip-player.ts'
import { firstLine, probeText, readFrames, readSound, soundLag } from '../helpers/media-reading.ts'
import { FFMPEG, ffmpeg, picture } from '../helpers/media-samples.ts'
import { projectRoot } from '../helpers/source-files.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const SOAK = Boolean(process.env.REPSLATE_SOAK)
const KINDS = CAMERA_KINDS.filter(({ short }) => SOAK || short)

const SPANS = [span(0.52, 1.9), span(3, 4.5)]
const SHEET = buildSheet({
  durationMs: CAMERA_SECONDS * 1000,
  segments: [buildSegment('joined', 0, 0, { spans: SPANS })],
})
/** A clip that copies its frames may end this much late; one that is encoded anew ends on the frame. */
const LATE_SECONDS = 0.15

interface Row {
  kind: string
  method: string
  frames: string
  soundMs: string
  chromium: string
  reader: string
  said: string
}
const rows: Row[] = []
let player: ClipPlayer

beforeAll(async () => {
  player = await openClipPlayer()
}, 60_000)

afterAll(async () => {
  await player?.close()
  if (!SOAK) return
  mkdirSync(join(projectRoot, '.build'), { recursive: true })
  writeFileSync(join(projectRoot, '.build', 'camera-kinds.md'), writeTable(rows))
})

describe.each(KINDS)('film of the kind "$name"', (kind) => {
  it('becomes a clip of the very frames and sound, that browsers and another reader play', async () => {
    const { clip, path } = await cutKind(kind)
    const source = cameraPath(kind)
    const clock = Math.max(0, Number(firstLine(probeText(source, ['-show_entries', 'format=start_time']))))
    const shown = readFrames(source, kind.turn).map((frame) => ({ ...frame, seconds: frame.seconds - clock }))
    const parts = SPANS.map(({ startMs, endMs }) =>
      shown.filter(({ seconds }) => startMs <= Math.round(seconds * 1000) && Math.round(seconds * 1000) < endMs),
    )
    const found = readFrames(path, kind.turn)
    const numbers = found.map(({ number }) => number)
    const wanted = parts.flatMap((part) => part.map(({ number }) => number))
    if (clip.method === 'full') expect(numbers).toEqual(wanted)
    else expect(numbers.filter((number) => wanted.includes(number))).toEqual(wanted)
    expect(numbers.length - wanted.length, 'frames after the end').toBeLessThanOrEqual(lateFrames(clip, shown))
    expect(clip.frames).toBe(found.length)

    const streams = probeText(path, ['-show_entries', 'stream=codec_name,pix_fmt,color_range,color_space']).trim()
    expect(streams.split('\n')).toEqual(
      clip.method === 'full'
        ? ['h264,yuv420p,tv,bt709', ...(kind.silent ? [] : ['aac'])]
        : [expect.stringContaining('h264,yuv420p'), ...(kind.silent ? [] : ['aac'])],
    )
    if (kind.says) expect(clip.why).toMatch(kind.says)

    const starts = parts.map(([first]) => ({
      film: first?.seconds ?? NaN,
      clip: found.find(({ number }) => number === first?.number)?.seconds ?? NaN,
    }))
    const lag = kind.silent ? null : soundError(readSound(source, clock, kind.soundStream), readSound(path), starts)
    if (lag !== null) expect(lag, 'greatest error of the sound, ms').toBeLessThanOrEqual(1)

    const reader = new Input({ formats: ALL_FORMATS, source: new FilePathSource(path) })
    const track = await reader.getPrimaryVideoTrack()
    expect(track?.codec).toBe('avc')
    expect((await track?.computePacketStats())?.packetCount).toBe(clip.frames)
    reader.dispose()

    const middle = Math.floor(clip.frames / 2)
    const played = await player.play(path, [0, middle], clip)
    expect(played).toMatchObject({ ended: true, error: null })
    expect(Math.abs(played.durationMs - clip.durationMs)).toBeLessThan(50)
    if (!kind.turn) expect(played.numbers).toEqual([numbers[0], numbers[middle]])
    rows.push({
      ...{ kind: kind.name, method: clip.method, frames: `${wanted.length} of ${wanted.length}` },
      ...{ soundMs: lag === null ? 'none' : lag.toFixed(2), chromium: 'plays', reader: 'reads', said: clip.why },
    })
  })
})

describe('film that cannot become a clip', () => {
  it.each([
    {
      name: 'AVI whose frames carry no times',
      args: [...noFrameTimes()],
      code: 'recording-broken',
      says: /no time stamp/,
    },
    {
      name: 'a format that is not accepted',
      args: ['-c:v', 'flv1', '-f', 'flv'],
      code: 'recording-format',
      says: /MP4/,
    },
  ])('says why: $name', async ({ args, code, says }) => {
    const path = join(await tempFolder(), 'film.bin')
    ffmpeg([...picture('320x180', '25', 2), '-f', 'lavfi', '-i', 'sine=r=44100:d=2', ...args, path])
    const outDir = await tempFolder()
    const error = await cutRecording({ recordingPath: path, sheet: SHEET, outDir, jobs: 1 }).catch((e: unknown) => e)
    expect(error).toMatchObject({ code, message: expect.stringMatching(says) as string })
  })

  it('says how many sound tracks there are when a further one is asked for', async () => {
    const kind = CAMERA_KINDS.find(({ soundTrack }) => soundTrack === 2)
    if (!kind) throw new Error('no such kind')
    await expect(cutKind({ ...kind, soundTrack: 3 })).rejects.toMatchObject({
      code: 'recording-no-sound',
      message: 'The recording has 2 sound tracks; there is no number 3.',
    })
  })
})

/**
 * The master is a picture of standard range whose white is put at reference white (ITU-R BT.2408). All but the brightest light must
 * come back as it was; the rest makes room for lamps and windows. Our own floor: 26 dB over the whole picture, 40 dB in the shade.
 */
describe.each(['arib-std-b67', 'smpte2084'] as const)('film of high dynamic range (%s)', (transfer) => {
  it('looks like its master in standard range', async () => {
    const folder = await tempFolder()
    const master = join(folder, 'master.mkv')
    const film = join(folder, 'film.mov')
    ffmpeg(['-f', 'lavfi', '-i', SHADED, '-f', 'lavfi', '-i', 'sine=d=1', ...LOSSLESS, master])
    ffmpeg(['-i', master, ...hdr(transfer), '-c:a', 'aac', '-f', 'mov', film])
    const sheet = buildSheet({ durationMs: 1000, segments: [buildSegment('a', 0, 1)] })
    const manifest = await cutRecording({ recordingPath: film, sheet, outDir: folder, jobs: 1 })
    const clip = join(folder, manifest.clips[0]?.file ?? '')
    expect(psnr(clip, master, '')).toBeGreaterThan(26)
    // the left half of the picture lies under the knee of the curve
    expect(psnr(clip, master, 'crop=iw/2:ih:0:0,')).toBeGreaterThan(40)
    const [dark, light] = [greyAt(clip, 0.25), greyAt(clip, 0.98)]
    expect(Math.abs(dark - greyAt(master, 0.25))).toBeLessThanOrEqual(2)
    expect(light).toBeLessThan(greyAt(master, 0.98))
    expect(light).toBeGreaterThan(190)
  })
})

/** A ramp of grey from black to white across, with a little colour down the picture. */
const SHADED =
  "nullsrc=s=320x180:r=25:d=1,format=yuv444p,geq=lum='16+219*X/W':cb='128+10*sin(Y/20)':cr='128+10*cos(Y/20)',format=yuv420p,setparams=colorspace=bt709:color_primaries=bt709:color_trc=bt709:range=tv"
const LOSSLESS = ['-c:v', 'ffv1', '-c:a', 'pcm_s16le', '-f', 'matroska']

async function cutKind(kind: CameraKind): Promise<{ clip: ClipEntry; path: string }> {
  const outDir = await tempFolder()
  const { silent, soundTrack } = kind
  const manifest = await cutRecording({
    recordingPath: cameraPath(kind),
    sheet: SHEET,
    outDir,
    jobs: 1,
    silent,
    soundTrack,
  })
  expect(manifest.failed).toEqual([])
  const [clip] = manifest.clips
  if (!clip) throw new Error('no clip')
  return { clip, path: join(outDir, clip.file) }
}

/** A clip whose frames are copied may end late, each of its spans. */
function lateFrames(clip: ClipEntry, shown: readonly { seconds: number }[]): number {
  const rate = (shown.length - 1) / (shown.at(-1)?.seconds ?? 1)
  return clip.method === 'full' ? 0 : Math.ceil(LATE_SECONDS * rate) * SPANS.length
}

/** The greatest error of the sound's place, ms, near both ends of each part; what is silent in the film is left out. */
function soundError(film: Float32Array, clip: Float32Array, starts: readonly { film: number; clip: number }[]): number {
  const errors = starts.flatMap((start, part) => {
    const { startMs, endMs } = SPANS[part] ?? { startMs: 0, endMs: 0 }
    return [0.2, (endMs - startMs) / 1000 - 0.3].flatMap((into) => {
      const from = Math.round((start.film + into) * 48_000)
      if (film.slice(from, from + 2400).every((value) => Math.abs(value) < 1e-4)) return []
      const { samples, correlation } = soundLag(clip, start.clip + into, film, start.film + into)
      expect(correlation, `likeness of the sound at ${start.film + into} s`).toBeGreaterThan(0.9)
      return [Math.abs(samples) / 48]
    })
  })
  expect(errors.length).toBeGreaterThan(0)
  return Math.max(...errors)
}

function psnr(path: string, master: string, crop: string): number {
  const graph = `[0:v]${crop}format=yuv420p[a];[1:v]${crop}format=yuv420p[b];[a][b]psnr`
  const args = ['-nostdin', '-i', path, '-i', master, '-filter_complex', graph, '-f', 'null', '-']
  return Number(/average:([\d.]+|inf)/.exec(spawnSync(FFMPEG, args).stderr.toString())?.[1])
}

/** Mean luma (0-255) of a column at a share of the width. */
function greyAt(path: string, share: number): number {
  const crop = `crop=4:ih:trunc(iw*${share}/2)*2:0,scale=1:1:flags=area,format=gray`
  return ffmpeg(['-i', path, '-frames:v', '1', '-vf', crop, '-f', 'rawvideo', '-'])[0] ?? NaN
}

function writeTable(table: readonly Row[]): string {
  const lines = table.map((row) => `| ${Object.values(row).join(' | ')} |`)
  const head =
    '| kind | method | frames right | sound off by, ms | Chromium | MP4 reader | said |\n|---|---|---|---|---|---|---|'
  return ['# Film of every kind of camera, as clips', '', head, ...lines, ''].join('\n')
}

function noFrameTimes(): string[] {
  return ['-c:v', 'libx264', '-bf', '2', '-c:a', 'pcm_s16le', '-f', 'avi']
}
