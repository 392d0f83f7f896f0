/** Makes five seconds of film of every kind of camera and phone, each frame numbered and the sound never repeating. */
import { createHash } from 'node:crypto'
import { madeOnce, noise, picture } from './media-samples.ts'

export interface CameraKind {
  name: string
  /** ffmpeg's arguments before the output path. */
  args: () => readonly string[]
  /** What must be said of the clip, beyond that it was encoded anew. */
  says?: RegExp
  /** Filters that turn the clip's picture back so that its bar code lies in the top row. */
  turn?: readonly string[]
  /** Also in the short run: kinds that no other test cuts. */
  short?: true
  /** Which sound track is published, from 1. */
  soundTrack?: number
  /** Which of the file's sound streams it must be, from 0. */
  soundStream?: number
  silent?: true
}

export const CAMERA_SECONDS = 5

const X264 = ['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '26', '-g', '60', '-pix_fmt', 'yuv420p']
const X265 = ['-c:v', 'libx265', '-preset', 'ultrafast', '-x265-params', 'log-level=none:keyint=60', '-tag:v', 'hvc1']
const AAC = ['-c:a', 'aac', '-b:a', '128k']
const MP4 = ['-f', 'mp4']
const MOV = ['-f', 'mov']

function film(rate: string, encode: readonly string[], options: { size?: string; sound?: string } = {}): string[] {
  const { size = '320x180', sound = 'stereo' } = options
  return [...picture(size, rate, CAMERA_SECONDS), ...noise(CAMERA_SECONDS, sound), ...encode]
}

/**
 * High dynamic range from a picture of standard range: its white becomes reference white, 203 cd/m2 (ITU-R BT.2408-7, section
 * 2.1), in the colours and transfer functions of ITU-R BT.2100, by the zimg library.
 */
export function hdr(transfer: 'arib-std-b67' | 'smpte2084'): string[] {
  const to = `zscale=t=${transfer}:m=bt2020nc:r=tv:npl=203`
  const said = 'setparams=colorspace=bt709:color_primaries=bt709:color_trc=bt709:range=tv'
  const from = `format=yuv420p,${said},zscale=t=linear:npl=203`
  const tags = ['-color_primaries', 'bt2020', '-color_trc', transfer, '-colorspace', 'bt2020nc']
  return ['-vf', `${from},format=gbrpf32le,zscale=p=bt2020,${to},format=yuv420p10le`, ...X265, '-crf', '14', ...tags]
}

export const CAMERA_KINDS: readonly CameraKind[] = [
  { name: 'H.264 24 MP4', args: () => film('24', [...X264, ...AAC, ...MP4]) },
  {
    name: 'H.264 29.97 MOV, sound uncompressed',
    args: () => film('30000/1001', [...X264, '-c:a', 'pcm_s24le', ...MOV]),
  },
  { name: 'H.264 59.94 MP4', args: () => film('60000/1001', [...X264, ...AAC, ...MP4]) },
  {
    name: 'H.264 uneven steps MP4',
    args: () =>
      film('30', [
        ...['-vf', "select='not(eq(mod(n,7),3)+eq(mod(n,11),4)+eq(mod(n,11),5))'", '-fps_mode', 'passthrough'],
        ...[...X264, ...AAC, ...MP4],
      ]),
  },
  {
    name: 'H.264 portrait (turned 90) MP4',
    args: () => turned(90),
    turn: ['transpose=clock'],
  },
  {
    name: 'H.264 upside down (turned 180) MP4',
    args: () => turned(180),
    turn: ['hflip', 'vflip'],
  },
  { name: 'H.264 59.94 MKV', args: () => film('60000/1001', [...X264, ...AAC, '-f', 'matroska']) },
  { name: 'H.264 30 MPEG-TS', args: () => film('30', [...X264, ...AAC, '-f', 'mpegts']) },
  {
    name: 'H.264 10 bits 4:2:2 MOV',
    args: () => film('25', ['-c:v', 'libx264', '-preset', 'ultrafast', '-pix_fmt', 'yuv422p10le', ...AAC, ...MOV]),
  },
  {
    name: 'H.264 interlaced MPEG-TS, AC-3',
    args: () =>
      film('25', [
        ...['-vf', 'setfield=tff', '-flags', '+ilme+ildct', ...X264, '-x264-params', 'tff=1'],
        ...['-c:a', 'ac3', '-b:a', '192k', '-f', 'mpegts'],
      ]),
    says: /half frames made whole by bwdif, 25 frames a second/,
  },
  { name: 'H.264 4:2:0 in full range MP4', args: fullRange, says: /full range made video range/ },
  { name: 'H.264 standard definition, BT.601 MP4', args: oldColours, says: /colours of BT.601 made BT.709/ },
  { name: 'HEVC 8 bits MP4', args: () => film('30', [...X265, '-pix_fmt', 'yuv420p', ...AAC, ...MP4]) },
  { name: 'HEVC 10 bits MKV', args: () => film('25', [...X265, '-pix_fmt', 'yuv420p10le', ...AAC, '-f', 'matroska']) },
  {
    name: 'HEVC 10 bits HLG MOV',
    args: () => film('30', [...hdr('arib-std-b67'), ...AAC, ...MOV]),
    says: /high dynamic range \(HLG\) tone-mapped by the Moebius curve/,
    short: true,
  },
  {
    name: 'HEVC 10 bits PQ MP4',
    args: () => film('24', [...hdr('smpte2084'), ...AAC, ...MP4]),
    says: /high dynamic range \(PQ\) tone-mapped by the Moebius curve/,
  },
  {
    name: 'VP9 Opus WebM',
    args: () =>
      film('30', [
        ...['-c:v', 'libvpx-vp9', '-deadline', 'realtime', '-cpu-used', '8', '-b:v', '600k'],
        ...['-c:a', 'libopus', '-f', 'webm'],
      ]),
  },
  {
    name: 'AV1 MP4',
    args: () => film('30', ['-c:v', 'libsvtav1', '-preset', '12', '-crf', '40', '-pix_fmt', 'yuv420p', ...AAC, ...MP4]),
    short: true,
  },
  {
    name: 'ProRes 4:2:2 10 bits MOV, sound uncompressed',
    args: () => film('30000/1001', ['-c:v', 'prores_ks', '-profile:v', '0', '-c:a', 'pcm_s16le', ...MOV]),
  },
  {
    name: 'DNxHR 4:2:2 MOV',
    args: () =>
      film('25', ['-c:v', 'dnxhd', '-profile:v', 'dnxhr_lb', '-pix_fmt', 'yuv422p', '-c:a', 'pcm_s16le', ...MOV]),
  },
  {
    name: 'DV (half frames) AVI',
    args: () =>
      film('25', ['-c:v', 'dvvideo', '-pix_fmt', 'yuv420p', '-c:a', 'pcm_s16le', '-f', 'avi'], { size: '720x576' }),
    says: /half frames made whole by bwdif, 25 frames a second/,
    short: true,
  },
  {
    name: 'Motion JPEG AVI, sound uncompressed',
    args: () => film('30', ['-c:v', 'mjpeg', '-q:v', '4', '-pix_fmt', 'yuvj422p', '-c:a', 'pcm_s16le', '-f', 'avi']),
  },
  {
    name: 'MPEG-4 part 2 AVI, MP3',
    short: true,
    args: () => film('25', ['-c:v', 'mpeg4', '-q:v', '4', '-bf', '0', '-c:a', 'libmp3lame', '-f', 'avi']),
  },
  {
    name: 'MPEG-2 MPEG-TS, AC-3',
    args: () => film('25', ['-c:v', 'mpeg2video', '-q:v', '4', '-bf', '2', '-c:a', 'ac3', '-f', 'mpegts']),
  },
  {
    name: 'H.263 3GP',
    args: () => film('30000/1001', ['-c:v', 'h263', '-q:v', '3', ...AAC, '-f', '3gp'], { size: '352x288' }),
    short: true,
  },
  { name: 'one sound channel', args: () => film('30', [...X264, ...AAC, ...MP4], { sound: 'mono' }) },
  {
    name: 'six sound channels (5.1), AC-3, MKV',
    args: () => film('30', [...X264, '-c:a', 'ac3', '-f', 'matroska'], { sound: '5.1' }),
  },
  {
    name: 'two sound tracks, the second chosen',
    args: () => [
      ...picture('320x180', '30', CAMERA_SECONDS),
      ...['-f', 'lavfi', '-i', `sine=f=300:r=48000:d=${CAMERA_SECONDS}`],
      ...noise(CAMERA_SECONDS),
      ...['-map', '0:v', '-map', '1:a', '-map', '2:a', ...X264, ...AAC, ...MP4],
    ],
    soundTrack: 2,
    soundStream: 1,
    short: true,
  },
  {
    name: 'sound that begins 1 s late',
    args: () => [
      ...picture('320x180', '30', CAMERA_SECONDS),
      ...['-itsoffset', '1', ...noise(CAMERA_SECONDS - 1), ...X264, ...AAC, ...MP4],
    ],
  },
  {
    name: 'sound that ends 1 s early',
    args: () => [
      ...picture('320x180', '30', CAMERA_SECONDS),
      ...[...noise(CAMERA_SECONDS - 1), ...X264, ...AAC, ...MP4],
    ],
  },
  {
    name: 'no sound (allowed by --silent)',
    args: () => [...picture('320x180', '30', CAMERA_SECONDS), ...X264, '-an', ...MP4],
    silent: true,
  },
]

/** Made once a machine; another recipe makes another file. */
export function cameraPath({ name, args }: CameraKind): string {
  const text = createHash('sha256').update(args().join(' ')).digest('hex').slice(0, 8)
  return madeOnce(`camera-${name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}-${text}.bin`, args)
}

function turned(degrees: number): string[] {
  const upright = madeOnce('camera-upright.bin', () => film('30', [...X264, ...AAC, ...MP4]))
  return ['-i', upright, '-c', 'copy', '-metadata:s:v:0', `rotate=${degrees}`, ...MP4]
}

function fullRange(): string[] {
  return film('30', ['-vf', 'scale=out_range=pc,format=yuvj420p', ...X264.slice(0, -2), ...AAC, ...MP4])
}

function oldColours(): string[] {
  const tags = ['-color_primaries', 'bt470bg', '-color_trc', 'bt709', '-colorspace', 'bt470bg']
  return film('25', ['-vf', 'scale=out_color_matrix=bt601', ...X264, ...tags, ...AAC, ...MP4], { size: '720x576' })
}
