/** Reads what ffprobe says of a file (its JSON text) into a typed value: container, picture, sound. */
import type { Ms } from '../../shared/time.ts'

/** A fraction as ffprobe writes it, such as the time base 1/15360 (seconds a tick). */
export interface Fraction {
  num: number
  den: number
}

/** Colours as the file says them, by ffprobe's names; '' = not said. */
export interface PictureColour {
  transfer: string
  primaries: string
  matrix: string
  range: string
}

export interface VideoStream {
  /** Index among all streams of the file. */
  index: number
  codec: string
  /** Coded size in pixels, before any rotation. */
  width: number
  height: number
  /** Degrees a player turns the picture clockwise: 0, 90, 180 or 270. */
  rotation: number
  pixelFormat: string
  /** True when the picture comes in half frames (fields). */
  interlaced: boolean
  timeBase: Fraction
  /** Frames a second on average, null when not known. For people only: times come from packets. */
  averageRate: number | null
  /** What the container says, null when it says nothing. */
  durationMs: Ms | null
  /** Absent = nothing is known of its colours: they are those of ITU-R BT.709. */
  colour?: PictureColour | undefined
}

export interface AudioStream {
  index: number
  codec: string
  sampleRate: number
  channels: number
  timeBase: Fraction
  durationMs: Ms | null
}

export interface Probe {
  /** ffprobe's names of the container; several for one family, as `mov`, `mp4`. */
  formatNames: string[]
  /** Seconds of the container's own clock at which its earliest stream starts; may be negative. */
  startSeconds: number
  /**
   * Seconds of the container's own clock at which ours starts: the same, but not before 0. (Sound coded as Opus starts
   * a few ms early to warm its decoder up; players start at 0.)
   */
  clockStartSeconds: number
  durationMs: Ms | null
  sizeBytes: number
  /** The picture: the default one, else the first; a cover picture is none. */
  video: VideoStream | null
  audio: AudioStream | null
  /** Every sound track, in the file's order; absent = `audio` is the only one that is known. */
  soundTracks?: AudioStream[] | undefined
  /** Kind of every stream in the file, in order: `video`, `audio`, `subtitle`, `data`, `attachment`, `cover`. */
  streamKinds: string[]
}

type Fields = Record<string, unknown>

/**
 * Reads the output of `ffprobe -show_format -show_streams -of json`.
 * @returns null when the text is not such output.
 */
export function readProbe(jsonText: string): Probe | null {
  const top = parseObject(jsonText)
  const format = top && asFields(top['format'])
  if (!top || !format) return null
  const streams = Array.isArray(top['streams']) ? top['streams'].map((stream) => asFields(stream) ?? {}) : []
  const kinds = streams.map(streamKind)
  const startSeconds = number(format['start_time']) ?? 0
  return {
    formatNames: text(format['format_name']).split(',').filter(Boolean),
    startSeconds,
    clockStartSeconds: Math.max(0, startSeconds),
    durationMs: milliseconds(format['duration']),
    sizeBytes: number(format['size']) ?? 0,
    video: choose(streams, kinds, 'video', readVideo),
    audio: choose(streams, kinds, 'audio', readAudio),
    soundTracks: streams.filter((_, index) => kinds[index] === 'audio').map(readAudio),
    streamKinds: kinds,
  }
}

function parseObject(jsonText: string): Fields | null {
  try {
    return asFields(JSON.parse(jsonText))
  } catch {
    return null
  }
}

function streamKind(stream: Fields): string {
  const kind = text(stream['codec_type']) || 'unknown'
  return kind === 'video' && disposition(stream, 'attached_pic') ? 'cover' : kind
}

function choose<Stream>(
  streams: readonly Fields[],
  kinds: readonly string[],
  kind: string,
  read: (stream: Fields) => Stream,
): Stream | null {
  const candidates = streams.filter((_, index) => kinds[index] === kind)
  const chosen = candidates.find((stream) => disposition(stream, 'default')) ?? candidates[0]
  return chosen ? read(chosen) : null
}

function readVideo(stream: Fields): VideoStream {
  const fieldOrder = text(stream['field_order'])
  return {
    index: number(stream['index']) ?? 0,
    codec: text(stream['codec_name']),
    width: number(stream['width']) ?? 0,
    height: number(stream['height']) ?? 0,
    rotation: rotation(stream),
    pixelFormat: text(stream['pix_fmt']),
    // DV is always of half frames (IEC 61834-2; from memory), which its files do not say
    interlaced: ['tt', 'bb', 'tb', 'bt'].includes(fieldOrder) || text(stream['codec_name']) === 'dvvideo',
    timeBase: fraction(stream['time_base']) ?? { num: 1, den: 90_000 },
    averageRate: rate(stream['avg_frame_rate']),
    durationMs: milliseconds(stream['duration']),
    colour: readColour(stream),
  }
}

function readColour(stream: Fields): PictureColour {
  const said = (name: string): string => text(stream[name]).replace(/^(unknown|unspecified|reserved)$/, '')
  return {
    transfer: said('color_transfer'),
    primaries: said('color_primaries'),
    matrix: said('color_space'),
    range: said('color_range'),
  }
}

function readAudio(stream: Fields): AudioStream {
  return {
    index: number(stream['index']) ?? 0,
    codec: text(stream['codec_name']),
    sampleRate: number(stream['sample_rate']) ?? 0,
    channels: number(stream['channels']) ?? 0,
    timeBase: fraction(stream['time_base']) ?? { num: 1, den: 90_000 },
    durationMs: milliseconds(stream['duration']),
  }
}

/** The display matrix turns counter-clockwise in ffprobe's words; older files carry a `rotate` tag (clockwise). */
function rotation(stream: Fields): number {
  const sideData = Array.isArray(stream['side_data_list']) ? stream['side_data_list'] : []
  const matrix = sideData.map((entry) => number(asFields(entry)?.['rotation'])).find((value) => value !== null)
  const degrees =
    matrix !== undefined && matrix !== null ? -matrix : (number(asFields(stream['tags'])?.['rotate']) ?? 0)
  return (((Math.round(degrees / 90) * 90) % 360) + 360) % 360
}

function disposition(stream: Fields, name: string): boolean {
  return asFields(stream['disposition'])?.[name] === 1
}

function fraction(value: unknown): Fraction | null {
  const match = /^(\d+)\/(\d+)$/.exec(text(value))
  const [num, den] = [Number(match?.[1]), Number(match?.[2])]
  return num > 0 && den > 0 ? { num, den } : null
}

function rate(value: unknown): number | null {
  const found = fraction(value)
  return found && found.num / found.den
}

function milliseconds(value: unknown): Ms | null {
  const seconds = number(value)
  return seconds === null || seconds < 0 ? null : Math.round(seconds * 1000)
}

function asFields(value: unknown): Fields | null {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : null
}

function text(value: unknown): string {
  return typeof value === 'string' ? value : ''
}

function number(value: unknown): number | null {
  if (typeof value === 'string' && value.trim() === '') return null
  const result = typeof value === 'string' || typeof value === 'number' ? Number(value) : NaN
  return Number.isFinite(result) ? result : null
}
