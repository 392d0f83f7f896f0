/**
 * Plans how the parts of a class, filmed one after the other, become one working film: the pictures copied where all parts
 * are coded alike, else coded anew. The parts themselves are never written to.
 *
 * Sound is always coded once more: the first packets of a part only warm its decoder up, and copied they would make the
 * sound later at every join (measured: 29 ms a join with AAC).
 */
import type { Ms } from '../../shared/time.ts'
import type { AcceptedRecording } from './accept-recording.ts'
import type { RunLimits } from './plan-limits.ts'

export interface JoinPart extends AcceptedRecording {
  durationMs: Ms
  frames: number
  /** When its first frame is shown. */
  firstFrameMs: number
  /** Sum of what the coder of the picture said once for the whole file; two that differ cannot be read as one. */
  codecSum: string
}

export interface JoinPlan {
  method: 'copy' | 'encode'
  /** Why the pictures cannot be copied; null = they are. */
  why: string | null
  /** Name of the film's form for ffmpeg, and the ending people know. */
  format: 'mp4' | 'matroska'
  ending: 'mp4' | 'mkv'
  /** Frames that the film must have. */
  frames: number
  durationMs: Ms
  /** The whole filter graph; null = there is nothing to filter. Copied, the joining list is input 0 and the parts follow it. */
  filter: string | null
  output: string[]
  limits: RunLimits
}

/** What an MP4 holds without surprise; all else goes into Matroska. */
const IN_MP4: readonly string[] = ['h264', 'hevc', 'av1', 'vp9']
const PLAIN = ['-map_metadata', '-1', '-map_chapters', '-1', '-fflags', '+bitexact']
const RATE = 48_000
const SOUND = ['-c:a', 'aac', '-b:a', '256k', '-flags:a', '+bitexact']

/** @param parts in the order of the class, at least one; the first says what all become when they differ */
export function planJoin(first: JoinPart, ...later: readonly JoinPart[]): JoinPlan {
  const parts = [first, ...later]
  const whole = {
    frames: parts.reduce((sum, { frames }) => sum + frames, 0),
    durationMs: parts.reduce((sum, { durationMs }) => sum + durationMs, 0),
    limits: joinLimits(parts),
  }
  const why = later.map((part) => findDifference(first, part)).find((difference) => difference !== null) ?? null
  return why === null ? { ...whole, ...planCopy(parts, first) } : { ...whole, ...planEncode(parts, first, why) }
}

/**
 * The list that ffmpeg's joining reader takes.
 * @param files as ffmpeg knows them, with the time from the start of each to the start of the next
 */
export function writeJoinList(files: readonly { name: string; durationMs: Ms }[]): string {
  // within quotes only the quote itself is special (ffmpeg-utils, "Quoting and escaping")
  const quote = (name: string): string => `'${name.replaceAll("'", "'\\''")}'`
  const lines = files.map(({ name, durationMs }) => `file ${quote(name)}\nduration ${durationMs / 1000}`)
  return ['ffconcat version 1.0', ...lines, ''].join('\n')
}

/** In words for people, of what keeps two parts from being read as one; null = nothing. */
function findDifference(a: JoinPart, b: JoinPart): string | null {
  if (a.video.codec !== b.video.codec) return `one part is ${a.video.codec}, another ${b.video.codec}`
  if (a.video.width !== b.video.width || a.video.height !== b.video.height) return 'the parts differ in picture size'
  if (a.video.rotation !== b.video.rotation) return 'the camera was held another way'
  if (a.video.pixelFormat !== b.video.pixelFormat) return 'the parts differ in colour depth'
  if (a.video.index !== b.video.index) return 'the parts order their tracks otherwise'
  if (a.codecSum !== b.codecSum) return 'the camera coded the parts with other settings'
  return null
}

type HowPlanned = Omit<JoinPlan, 'frames' | 'durationMs' | 'limits'>

function planCopy(parts: readonly JoinPart[], { video, firstFrameMs }: JoinPart): HowPlanned {
  const fits = IN_MP4.includes(video.codec)
  const sound = planSound(parts, 1)
  // the joining reader begins its clock at the warm-up of the sound, even where sound is left out
  const place = `-STARTPTS+${firstFrameMs / 1000}/TB`
  return {
    ...{ method: 'copy', why: null },
    ...(fits ? { format: 'mp4', ending: 'mp4' } : { format: 'matroska', ending: 'mkv' }),
    filter:
      sound === null
        ? null
        : [
            ...sound.steps,
            `${sound.names.join('')}concat=n=${parts.length}:v=0:a=${sound.outs.length}${sound.outs.join('')}`,
          ].join(';'),
    output: [
      ...['-map', `0:${video.index}`, '-c:v', 'copy', '-bsf:v', `setts=pts=PTS${place}:dts=DTS${place}`],
      // the name under which every player knows HEVC in MP4
      ...(fits && video.codec === 'hevc' ? ['-tag:v', 'hvc1'] : []),
      ...mapSound(sound),
      ...[...PLAIN, '-f', fits ? 'mp4' : 'matroska'],
    ],
  }
}

function planEncode(parts: readonly JoinPart[], { video }: JoinPart, why: string): HowPlanned {
  const isTurned = video.rotation === 90 || video.rotation === 270
  const [width, height] = (isTurned ? [video.height, video.width] : [video.width, video.height]).map(even)
  const size = `${width}:${height}`
  const shape = `scale=${size}:force_original_aspect_ratio=decrease:force_divisible_by=2,pad=${size}:-1:-1,setsar=1,format=yuv420p`
  const pictures = parts.map((part, at) => `[${at}:${part.video.index}]${shape}[v${at}]`)
  const sound = planSound(parts, 0)
  const names = parts.map((_part, at) => `[v${at}]${sound?.names[at] ?? ''}`).join('')
  const join = `${names}concat=n=${parts.length}:v=1:a=${sound?.outs.length ?? 0}[v]${sound?.outs.join('') ?? ''}`
  return {
    ...{ method: 'encode', why, format: 'mp4', ending: 'mp4' },
    filter: [...pictures, ...(sound?.steps ?? []), join].join(';'),
    output: [
      ...['-map', '[v]', ...mapSound(sound)],
      // every frame stays, at its own time
      ...['-fps_mode', 'passthrough', '-enc_time_base:v', '1/90000', '-video_track_timescale', '90000'],
      ...['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '18', '-flags:v', '+bitexact', ...PLAIN, '-f', 'mp4'],
    ],
  }
}

interface SoundPlan {
  steps: string[]
  /** Of each part, all its tracks. */
  names: string[]
  outs: string[]
  /** Which of them players choose by themselves, from 0. */
  chosen: number
}

/**
 * Each part's sound as long as its part, so that picture and sound of the next begin together; null = no part has any.
 * Several tracks stay several where all parts have as many, so that one of them can be chosen later.
 */
function planSound(parts: readonly JoinPart[], firstInput: number): SoundPlan | null {
  if (parts.every(({ audio }) => audio === null)) return null
  const tracks = parts.map(tracksOf)
  const count = new Set(tracks.map(({ length }) => length)).size === 1 ? (tracks[0]?.length ?? 1) : 1
  const numbers = Array.from({ length: count }, (_, track) => track)
  const name = (track: number, at: number): string => (track === 0 ? `[a${at}]` : `[t${track}a${at}]`)
  const form = `aformat=sample_rates=${RATE}:channel_layouts=stereo`
  const steps = parts.flatMap(({ audio, durationMs }, at) =>
    numbers.map((track) => {
      const seconds = durationMs / 1000
      const used = count > 1 ? tracks[at]?.[track] : audio
      const heard = used
        ? `[${firstInput + at}:${used.index}]aresample=${RATE}:async=1:first_pts=0,${form},apad=whole_dur=${seconds}`
        : `anullsrc=r=${RATE}:cl=stereo,${form}`
      return `${heard},atrim=duration=${seconds}${name(track, at)}`
    }),
  )
  const chosen = tracks[0]?.findIndex(({ index }) => index === parts[0]?.audio?.index) ?? 0
  return {
    steps,
    names: parts.map((_part, at) => numbers.map((track) => name(track, at)).join('')),
    outs: numbers.map((track) => (track === 0 ? '[a]' : `[t${track}]`)),
    chosen: count > 1 ? Math.max(0, chosen) : 0,
  }
}

const tracksOf = ({ audio, probe }: JoinPart): { index: number }[] =>
  audio === null ? [] : (probe.soundTracks ?? [audio])

function mapSound(sound: SoundPlan | null): string[] {
  if (sound === null) return []
  const { outs, chosen } = sound
  const marked = outs.flatMap((_out, track) => [`-disposition:a:${track}`, track === chosen ? 'default' : '0'])
  return [...outs.flatMap((out) => ['-map', out]), ...SOUND, ...(outs.length > 1 ? marked : [])]
}

/** Copying is as fast as the disk; coding anew may take a slow machine thirty times the film. */
function joinLimits(parts: readonly JoinPart[]): RunLimits {
  const seconds = parts.reduce((sum, { durationMs }) => sum + durationMs, 0) / 1000
  const bytes = parts.reduce((sum, { probe }) => sum + probe.sizeBytes, 0)
  return {
    timeoutMs: Math.round((600 + seconds * 30) * 1000),
    cpuSeconds: Math.round(600 + seconds * 60),
    maxBytes: Math.round(200_000_000 + bytes * 2 + seconds * 2_000_000),
  }
}

const even = (pixels: number | undefined): number => Math.max(2, Math.floor((pixels ?? 2) / 2) * 2)
