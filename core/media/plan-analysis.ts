/** Plans what is made of a recording when it comes in: arguments for ffmpeg, sizes and zooms, and whether browsers can show it. */
import type { Ms } from '../../shared/time.ts'
import type { AcceptedRecording } from './accept-recording.ts'
import { FRAME_MS, SOUND_RATE } from './measure-sound.ts'
import type { RunLimits } from './plan-limits.ts'
import { isHdr, planPicture } from './plan-picture.ts'

/** Goes up when the same recording would give another analysis. */
export const ANALYSIS_VERSION = 2

/** Peaks a second at each zoom, the finest first; one byte each. */
export const PEAK_ZOOMS = [1000 / FRAME_MS, 20, 4, 1] as const
/** The zoom at which the wave of a whole class is drawn. */
export const WAVE_ZOOM = 4 satisfies (typeof PEAK_ZOOMS)[number]
export type PeakZoom = (typeof PEAK_ZOOMS)[number]

/** The sound as one channel, 16 kHz, 16 bits. Late sound gets silence before it, so that the first sample is the recording's first moment. */
const SAMPLES = `aresample=${SOUND_RATE}:async=1:first_pts=0,aformat=sample_fmts=s16:channel_layouts=mono`

/** In large pieces: one a packet would cost as much as the reading. */
const PIPED: readonly string[] = ['-flush_packets', '0', '-f', 's16le', 'pipe:1']

/** Options after the input for one pass over the sound alone, to standard output. */
export function planSoundPass(audioIndex: number): string[] {
  return ['-filter_complex', `[0:${audioIndex}]${SAMPLES}[o]`, '-map', '[o]', ...PIPED]
}

export interface ThumbPlan {
  /** Time from one thumbnail to the next. */
  everyMs: Ms
  /** Columns and rows of one sheet. */
  columns: number
  rows: number
  /** Size of one thumbnail in px. */
  width: number
  height: number
  count: number
  sheets: number
}

const MOST_THUMBS = 600
const LEAST_STEP_MS = 2000
const THUMB_WIDTH = 160
const SHEET = { columns: 10, rows: 5 }

/** Small pictures at even steps, on sheets, so that a long class is a few files. */
export function planThumbs({ video }: AcceptedRecording, durationMs: Ms): ThumbPlan {
  const everyMs = Math.max(LEAST_STEP_MS, Math.ceil(durationMs / MOST_THUMBS / 1000) * 1000)
  const count = Math.max(1, Math.ceil(durationMs / everyMs))
  const turned = video.rotation === 90 || video.rotation === 270
  const [across, down] = turned ? [video.height, video.width] : [video.width, video.height]
  // even, as the picture format asks
  const height = Math.max(2, Math.round((THUMB_WIDTH * down) / across / 2) * 2)
  const sheets = Math.ceil(count / (SHEET.columns * SHEET.rows))
  return { everyMs, ...SHEET, width: THUMB_WIDTH, height, count, sheets }
}

/** Shorter black is a cut or a blink, shorter stillness a held pose; our own choice. */
const DULL = { blackSeconds: 2, stillSeconds: 10, stillNoise: 0.0005 }

/**
 * The one pass over a recording: samples go to standard output, sheets of small pictures to files, loudness (EBU R128, true peak
 * after ITU-R BS.1770), black and still parts to the messages. Only key frames are decoded: the picture of each step is the last
 * key frame before it.
 * @param sheetPattern path of the sheets with %d for the number, from 0.
 */
export function planPass(
  { video, audio }: AcceptedRecording,
  thumbs: ThumbPlan,
  sheetPattern: string,
): { input: string[]; output: string[] } {
  const small = `scale=${thumbs.width}:${thumbs.height}:flags=fast_bilinear`
  const { after } = planPicture(video, [small])
  // the last key frame may lie far before the end: its picture stands for what follows, so that every sheet is there
  const fill = `tpad=stop=${thumbs.count}:stop_mode=clone`
  const steps = `fps=1/${thumbs.everyMs / 1000}:round=up:start_time=0,${fill},tile=${thumbs.columns}x${thumbs.rows}`
  const { blackSeconds, stillSeconds, stillNoise } = DULL
  const dull = `blackdetect=d=${blackSeconds},freezedetect=n=${stillNoise}:d=${stillSeconds},nullsink`
  const mix = audio && audio.channels > 2 ? 'aformat=channel_layouts=stereo,' : ''
  const sound = audio
    ? [`[0:${audio.index}]asplit=2[m][s]`, `[m]${mix}ebur128=framelog=verbose:peak=true,anullsink`, `[s]${SAMPLES}[o]`]
    : []
  const picture = [`[0:${video.index}]${after.join(',')},split=2[t][d]`, `[t]${steps}[v]`, `[d]${dull}`]
  return {
    input: ['-skip_frame', 'nokey', '-sn', '-dn'],
    output: [
      ...['-filter_complex', [...sound, ...picture].join(';')],
      ...(audio ? ['-map', '[o]', ...PIPED] : []),
      ...['-map', '[v]', '-fps_mode', 'passthrough', '-frames:v', String(thumbs.sheets), '-c:v', 'mjpeg', '-q:v', '5'],
      ...['-fflags', '+bitexact', '-start_number', '0', '-f', 'image2', `file:${sheetPattern}`],
    ],
  }
}

/** Measured: about 12 processor seconds for 20 minutes; key frames of film without others (all of them are) cost more. */
export function passLimits(durationMs: Ms): RunLimits {
  const seconds = durationMs / 1000
  return {
    timeoutMs: Math.round((300 + seconds) * 1000),
    cpuSeconds: Math.round(300 + seconds),
    maxBytes: 50_000_000,
  }
}

/** Common practice, no source: what Chrome, Firefox and Safari all play from a plain file. */
const SHOWN = {
  mp4: { video: ['h264'], audio: ['aac', 'mp3', 'flac'] },
  webm: { video: ['vp8', 'vp9', 'av1'], audio: ['opus', 'vorbis'] },
} as const
const PLAIN_PIXELS = ['yuv420p', 'yuvj420p']

/** Why a browser may not show the recording as it is; null = it will. */
export function whyPreview({ probe, video, audio }: AcceptedRecording): string | null {
  const family = probe.formatNames.includes('mp4') ? 'mp4' : probe.formatNames.includes('webm') ? 'webm' : null
  if (family === null) return 'browsers do not open this kind of file'
  const shown: { video: readonly string[]; audio: readonly string[] } = SHOWN[family]
  if (!shown.video.includes(video.codec)) return `not every browser shows ${video.codec} in this kind of file`
  if (!PLAIN_PIXELS.includes(video.pixelFormat)) return `browsers do not show pictures of the form ${video.pixelFormat}`
  if (video.interlaced) return 'the picture comes in half frames'
  if (isHdr(video)) return 'the picture has a high dynamic range, which looks pale in many browsers'
  if (audio && !shown.audio.includes(audio.codec)) return `not every browser plays ${audio.codec} in this kind of file`
  return null
}

const PREVIEW_HEIGHT = 720

/** Fragments of two seconds: what is written can be played while the rest is still made. Times stay those of the recording. */
export function previewOptions({ video, audio }: AcceptedRecording): { filter: string; output: string[] } {
  const { before, after } = planPicture(video, [`scale=-2:'min(${PREVIEW_HEIGHT},trunc(ih/2)*2)'`])
  return {
    filter: `[0:${video.index}]${[...before, ...after].join(',')}[v]`,
    output: [
      ...['-map', '[v]', ...(audio ? ['-map', `0:${audio.index}`] : [])],
      ...['-fps_mode', 'passthrough', '-enc_time_base:v', '1/90000', '-video_track_timescale', '90000'],
      ...['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '27', '-force_key_frames', 'expr:gte(t,n_forced*2)'],
      ...['-c:a', 'aac', '-b:a', '112k', '-ac', '2', '-map_metadata', '-1', '-map_chapters', '-1'],
      ...['-movflags', '+frag_keyframe+delay_moov+default_base_moof', '-f', 'mp4'],
    ],
  }
}

/** Seconds of processor time a second of film, for slow machines. */
export function previewLimits(durationMs: Ms, sourceBytes: number): RunLimits {
  const seconds = durationMs / 1000
  return {
    timeoutMs: Math.round((600 + seconds * 30) * 1000),
    cpuSeconds: Math.round(600 + seconds * 60),
    maxBytes: Math.round(200_000_000 + Math.max(sourceBytes * 2, seconds * 1_000_000)),
  }
}
