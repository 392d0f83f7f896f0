/** Decides whether a probed file is a recording we work with; says plainly why not. */
import { AppError } from '../../shared/errors.ts'
import { formatClock } from '../../shared/time.ts'
import type { FrameIndex } from './read-packets.ts'
import type { AudioStream, Probe, VideoStream } from './read-probe.ts'

/** Containers we read, by ffprobe's names: MP4, QuickTime and 3GP, Matroska and WebM, MPEG transport stream, AVI. */
export const ACCEPTED_FORMATS = ['mov', 'mp4', 'm4a', '3gp', '3g2', 'mj2', 'matroska', 'webm', 'mpegts', 'avi'] as const

/** More pixels than an 8K picture (7680 x 4320) are refused. */
export const MAX_PIXELS = 36_000_000
/** The shorter side has at least so many pixels; the smallest pictures of phones are 128 x 96 (3GPP TS 26.234, from memory). */
const LEAST_SIDE = 32
/** No picture is so many times longer than wide; the widest screens are 32 : 9 (common practice, no source). */
const MOST_TIMES_AS_LONG = 6
/** More streams than this in one file are refused. */
export const MAX_STREAMS = 64
/** Longer than a day is no class but a wrong clock. */
const LONGEST_MS = 86_400_000
/** A recording may end this much before its container says and still be whole. */
const MISSING_MS = 1000

export interface AcceptedRecording {
  probe: Probe
  video: VideoStream
  audio: AudioStream | null
}

/**
 * Accepts the file by what ffprobe said of it.
 * @param options.silent true allows a recording without sound.
 * @param options.soundTrack which of its sound tracks is used, from 1; without it the default one.
 * @throws AppError recording-format, recording-no-picture, recording-no-sound.
 */
export function acceptRecording(
  probe: Probe,
  options: { silent?: boolean; soundTrack?: number | undefined } = {},
): AcceptedRecording {
  const accepted: readonly string[] = ACCEPTED_FORMATS
  if (probe.formatNames.length === 0 || !probe.formatNames.every((name) => accepted.includes(name))) {
    throw new AppError(
      'recording-format',
      'The file is no MP4, MOV, 3GP, MKV, WebM, TS or AVI recording. Give one of these.',
    )
  }
  const { video } = probe
  const audio = options.soundTrack === undefined ? probe.audio : chooseTrack(probe, options.soundTrack)
  if (!video || video.width === 0 || video.height === 0) {
    throw new AppError('recording-no-picture', 'The recording has no picture. Give the file that the camera made.')
  }
  if (video.width * video.height > MAX_PIXELS) {
    throw new AppError(
      'recording-format',
      `The picture is ${video.width} x ${video.height}; up to 8K (7680 x 4320) is accepted. Make it smaller first.`,
    )
  }
  const [short, long] = [Math.min(video.width, video.height), Math.max(video.width, video.height)]
  if (short < LEAST_SIDE || long > MOST_TIMES_AS_LONG * short) {
    throw new AppError(
      'recording-format',
      `The picture is ${video.width} x ${video.height}, which no camera films. Give the file that the camera made.`,
    )
  }
  if (!audio && options.silent !== true) {
    throw new AppError(
      'recording-no-sound',
      'The recording has no sound. Give one with sound, or say --silent to cut it without.',
    )
  }
  return { probe, video, audio }
}

function chooseTrack({ soundTracks = [] }: Probe, number: number): AudioStream {
  const track = soundTracks[number - 1]
  if (track) return track
  const count = soundTracks.length === 1 ? 'one sound track' : `${soundTracks.length} sound tracks`
  throw new AppError('recording-no-sound', `The recording has ${count}; there is no number ${number}.`)
}

/**
 * Accepts the frames of the recording: there are some, all have times, within a day, none are missing at the end.
 * @param soundEndMs when the sound ends, null when there is none or it was not looked at.
 * @throws AppError recording-broken, recording-no-picture.
 */
export function acceptFrames(accepted: AcceptedRecording, index: FrameIndex, soundEndMs: number | null): void {
  const { probe, video } = accepted
  if (index.withoutTime > 0) {
    throw new AppError(
      'recording-broken',
      `${index.withoutTime} frames of the recording have no time stamp. Export it again as MP4, then try again.`,
    )
  }
  if (index.frames.length === 0) {
    throw new AppError('recording-no-picture', 'The recording holds no frame that can be shown.')
  }
  const jump = probe.formatNames.includes('mpegts') ? index.jumpsAtMs[0] : undefined
  if (jump !== undefined) {
    throw new AppError(
      'recording-broken',
      `The clock of the recording jumps near ${formatClock(Math.max(0, Math.round(jump)))}. Export it again as MP4, then try again.`,
    )
  }
  const longestMs = Math.max(index.endMs, soundEndMs ?? 0, probe.durationMs ?? 0)
  if (longestMs > LONGEST_MS) {
    throw new AppError(
      'recording-broken',
      `The recording says that it lasts ${Math.round(longestMs / 3_600_000)} hours; up to a day is accepted. Export it again as MP4, then try again.`,
    )
  }
  const saidMs = video.durationMs ?? probe.durationMs
  const endMs = video.durationMs === null ? Math.max(index.endMs, soundEndMs ?? 0) : index.endMs
  if (saidMs !== null && saidMs - endMs > MISSING_MS) {
    throw new AppError(
      'recording-broken',
      `The recording is cut short: it says ${formatClock(saidMs)} but ends at ${formatClock(Math.round(endMs))}. Copy the whole file again.`,
    )
  }
}
