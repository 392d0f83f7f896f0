/**
 * Makes small recordings for tests with ffmpeg, once a machine: every frame carries its number as a bar code,
 * the sound is noise that never repeats, so that both can be found again in a clip.
 */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const FFMPEG = process.env['REPSLATE_FFMPEG'] ?? 'ffmpeg'
export const FFPROBE = process.env['REPSLATE_FFPROBE'] ?? 'ffprobe'

/** Bits of the bar code, least first, each a square of this many pixels in the top row. */
export const BAR_BITS = 12
export const BAR_SIZE = 20

/** Runs ffmpeg with plain arguments, apart from the product's own code. */
export function ffmpeg(args: readonly string[]): Buffer {
  const result = spawnSync(FFMPEG, ['-nostdin', '-v', 'error', '-y', ...args], { maxBuffer: 1 << 30 })
  if (result.status !== 0) throw new Error(`ffmpeg ${args.join(' ')}: ${result.stderr.toString()}`)
  return result.stdout
}

export function picture(size: string, rate: string, seconds: number): string[] {
  const bits = Array.from({ length: BAR_BITS }, (_, bit) => {
    return `drawbox=x=${bit * BAR_SIZE}:y=0:w=${BAR_SIZE}:h=${BAR_SIZE}:color=white:t=fill:enable='bitand(n,${1 << bit})'`
  })
  const black = `drawbox=x=0:y=0:w=iw:h=${BAR_SIZE}:color=black:t=fill`
  return ['-f', 'lavfi', '-i', [`testsrc2=s=${size}:r=${rate}:d=${seconds}`, black, ...bits].join(',')]
}

/** Noise is different at every moment, so a piece of it has one place only. */
export function noise(seconds: number, layout = 'stereo'): string[] {
  const one = (seed: number) => `anoisesrc=c=pink:seed=${seed}:r=48000:a=0.25:d=${seconds}`
  if (layout === 'mono') return ['-f', 'lavfi', '-i', one(7)]
  if (layout === '5.1')
    return ['-f', 'lavfi', '-i', `${one(7)},pan=5.1|c0=c0|c1=0.5*c0|c2=c0|c3=0*c0|c4=0.1*c0|c5=0.1*c0`]
  return ['-f', 'lavfi', '-i', `${one(7)},pan=stereo|c0=c0|c1=0.7*c0`]
}

const H264 = ['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '28', '-g', '250', '-bf', '3', '-pix_fmt', 'yuv420p']
const AAC = ['-c:a', 'aac', '-b:a', '128k']
const MP4 = ['-f', 'mp4']

/** A key frame every so many frames, as phones and cameras make them. */
const gop = (frames: number): string[] => ['-g', String(frames), '-keyint_min', String(frames)]

const SECONDS = 16
const plain = (rate: string, more: string[] = []): string[] => [
  ...picture('320x180', rate, SECONDS),
  ...noise(SECONDS),
  ...H264,
  ...AAC,
  ...more,
  ...MP4,
]
/** Copies of another sample. */
const from = (sample: 'cfr-30' | 'cfr-59.94' | 'gop-30' | 'gop-59.94', args: string[]): string[] => [
  '-i',
  samplePath(sample),
  ...args,
]

/** Every sample: arguments without the output path. Those that copy name their source. */
const RECIPES = {
  'cfr-30': (): string[] => plain('30', ['-metadata', 'title=Stale title']),
  'cfr-25': (): string[] => plain('25'),
  'cfr-29.97': (): string[] => plain('30000/1001'),
  'cfr-59.94': (): string[] => plain('60000/1001'),
  /** Steps of one, two and three frame times, as phones make in poor light. */
  vfr: (): string[] => [
    ...picture('320x180', '30', SECONDS),
    ...noise(SECONDS),
    ...['-vf', "select='not(eq(mod(n,7),3)+eq(mod(n,11),4)+eq(mod(n,11),5))'", '-fps_mode', 'passthrough'],
    ...H264,
    ...AAC,
    ...MP4,
  ],
  rotated: (): string[] => from('cfr-30', ['-c', 'copy', '-metadata:s:v:0', 'rotate=90', ...MP4]),
  odd: (): string[] => [
    ...picture('321x181', '30', SECONDS),
    ...noise(SECONDS),
    ...['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '28', '-pix_fmt', 'yuv444p'],
    ...AAC,
    ...MP4,
  ],
  mono: (): string[] => [...picture('320x180', '30', SECONDS), ...noise(SECONDS, 'mono'), ...H264, ...AAC, ...MP4],
  'five-one': (): string[] => [...picture('320x180', '30', SECONDS), ...noise(SECONDS, '5.1'), ...H264, ...AAC, ...MP4],
  /** Sound that begins 1.5 s after the picture. */
  'late-sound': (): string[] => [
    ...picture('320x180', '30', SECONDS),
    ...['-itsoffset', '1.5'],
    ...noise(SECONDS - 1.5),
    ...H264,
    ...AAC,
    ...MP4,
  ],
  /** Sound that ends 4 s before the picture. */
  'short-sound': (): string[] => [...picture('320x180', '30', SECONDS), ...noise(SECONDS - 4), ...H264, ...AAC, ...MP4],
  mkv: (): string[] => from('cfr-59.94', ['-c', 'copy', '-f', 'matroska']),
  ts: (): string[] => from('cfr-30', ['-map', '0', '-c', 'copy', '-f', 'mpegts']),
  webm: (): string[] => [
    ...picture('320x180', '30', SECONDS),
    ...noise(SECONDS),
    ...['-c:v', 'libvpx-vp9', '-deadline', 'realtime', '-cpu-used', '8', '-b:v', '600k', '-g', '150'],
    ...['-c:a', 'libopus', '-b:a', '96k', '-f', 'webm'],
  ],
  /** A key frame a second, with B-frames. */
  'gop-30': (): string[] => plain('30', gop(30)),
  'gop-59.94': (): string[] => plain('60000/1001', gop(60)),
  'gop-vfr': (): string[] => [
    ...picture('320x180', '30', SECONDS),
    ...noise(SECONDS),
    ...['-vf', "select='not(eq(mod(n,7),3)+eq(mod(n,11),4)+eq(mod(n,11),5))'", '-fps_mode', 'passthrough'],
    ...H264,
    ...gop(24),
    ...AAC,
    ...MP4,
  ],
  /** No B-frames, the simplest profile. */
  'gop-baseline': (): string[] => plain('25', [...gop(25), '-profile:v', 'baseline', '-bf', '0']),
  'gop-rotated': (): string[] => from('gop-30', ['-c', 'copy', '-metadata:s:v:0', 'rotate=90', ...MP4]),
  'gop-mkv': (): string[] => from('gop-59.94', ['-c', 'copy', '-f', 'matroska']),
  'gop-ts': (): string[] => from('gop-30', ['-map', '0', '-c', 'copy', '-f', 'mpegts']),
  /** The sets stand before every key frame too, as they do in what came over the air. */
  'gop-sets-inside': (): string[] => ['-i', samplePath('gop-ts'), '-map', '0', ...COPY_AS_MP4],
  'gop-fragmented': (): string[] => from('gop-30', ['-c', 'copy', '-movflags', '+frag_keyframe+delay_moov', ...MP4]),
  /** Whole range of levels, as many phones make. */
  'gop-full-range': (): string[] => plain('30', [...gop(30), '-pix_fmt', 'yuvj420p']),
  'gop-ten-bit': (): string[] => plain('30', [...gop(30), '-pix_fmt', 'yuv420p10le']),
  'gop-open': (): string[] => plain('30', ['-x264-params', 'open-gop=1:keyint=30:min-keyint=30:scenecut=0']),
  /** The second half has other sets than the first. */
  'gop-two-sets': (): string[] => ['-f', 'concat', '-safe', '0', '-i', listOf('gop-30', 'gop-other'), ...COPY_AS_MP4],
  'gop-other': (): string[] => plain('30', [...gop(30), '-x264-params', 'ref=5:weightp=0:cabac=0']),
  'open-gop': (): string[] => plain('30', ['-x264-params', 'open-gop=1:keyint=60:scenecut=0']),
  interlaced: (): string[] => plain('25', ['-vf', 'setfield=tff', '-flags', '+ilme+ildct', '-x264-params', 'tff=1']),
  'no-sound': (): string[] => from('cfr-30', ['-an', '-c', 'copy', ...MP4]),
  'no-picture': (): string[] => from('cfr-30', ['-vn', '-c', 'copy', ...MP4]),
  /** Index before the data, so that a file cut short still opens. */
  faststart: (): string[] => from('cfr-30', ['-c', 'copy', '-movflags', '+faststart', ...MP4]),
  /** A stale chapter and a subtitle track that must not reach a clip. */
  'with-chapters': (): string[] => ['-i', samplePath('cfr-30'), '-i', chapterText(), ...CHAPTERS, ...MP4],
  silence: (): string[] => [
    ...picture('320x180', '30', 4),
    ...['-f', 'lavfi', '-i', 'anullsrc=r=48000:cl=stereo:d=4'],
    ...H264,
    ...AAC,
    ...MP4,
  ],
  /** Quiet sound with loud claps: the gain that speech needs would break the ceiling. */
  claps: (): string[] => [
    ...picture('320x180', '30', SECONDS),
    ...['-f', 'lavfi', '-i', `anoisesrc=c=pink:seed=3:r=48000:a=0.1:d=${SECONDS}`],
    ...['-af', "volume='if(lt(mod(t,1),0.004),12,1)':eval=frame,asetnsamples=96"],
    ...H264,
    ...AAC,
    ...MP4,
  ],
} satisfies Record<string, () => string[]>

const COPY_AS_MP4 = ['-c', 'copy', ...MP4]
const CHAPTERS = ['-map', '0', '-map_metadata', '1', '-map_chapters', '1', '-c', 'copy']

export type SampleName = keyof typeof RECIPES

/** The path of a sample; made when it is not there yet. Several test files may ask at one time. */
export function samplePath(name: SampleName): string {
  return madeOnce(`${name}.bin`, RECIPES[name])
}

/** The path of a file made by ffmpeg with these arguments before its path, once a machine. */
export function madeOnce(fileName: string, args: () => readonly string[]): string {
  const path = join(folder(), fileName)
  if (existsSync(path)) return path
  const part = `${path}.${process.pid}`
  try {
    ffmpeg([...args(), part])
    renameSync(part, path)
  } finally {
    rmSync(part, { force: true })
  }
  return path
}

/** The sample in two files of 250 and 230 frames, as a camera makes them that begins a new file when one grows too large. */
export function splitSample(folder: string): [string, string] {
  const cut = (name: string, from: number, to: number): string => {
    const file = join(folder, name)
    ffmpeg([
      ...['-i', samplePath('cfr-30')],
      ...['-vf', `trim=start_frame=${from}:end_frame=${to},setpts=PTS-STARTPTS`],
      ...['-af', `atrim=start=${from / 30}:end=${to / 30},asetpts=PTS-STARTPTS`],
      ...['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '24', '-bf', '3', '-c:a', 'aac', '-b:a', '128k', file],
    ])
    return file
  }
  return [cut('part0.mp4', 0, 250), cut('part1.mp4', 250, 480)]
}

/** One folder a version of this file and of ffmpeg: another recipe makes other samples. */
function folder(): string {
  known ??= findFolder()
  return known
}
let known: string | null = null

function findFolder(): string {
  const version = spawnSync(FFMPEG, ['-version']).stdout.toString().split('\n')[0] ?? ''
  const source = readFileSync(fileURLToPath(import.meta.url))
  const id = createHash('sha256').update(source).update(version).digest('hex').slice(0, 12)
  const path = join(tmpdir(), `repslate-test-samples-${id}`)
  mkdirSync(path, { recursive: true })
  return path
}

/** A list of samples to be joined by ffmpeg's concat demuxer. */
function listOf(...names: SampleName[]): string {
  const path = join(folder(), `${names.join('+')}.txt`)
  writeFileSync(path, names.map((name) => `file '${samplePath(name)}'\n`).join(''))
  return path
}

function chapterText(): string {
  const path = join(folder(), 'chapters.txt')
  const text = ';FFMETADATA1\ntitle=Stale title\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=0\nEND=5000\ntitle=Stale chapter\n'
  writeFileSync(path, text)
  return path
}
