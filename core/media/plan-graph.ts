/** Plans how ffmpeg gets at the kept frames: where to open the recording and one filter graph that joins them. */
import type { AcceptedRecording } from './accept-recording.ts'
import type { Ms } from '../../shared/time.ts'
import type { FrameRange } from './choose-frames.ts'
import { planPicture } from './plan-picture.ts'
import type { FrameIndex } from './read-packets.ts'

export interface GraphPlan {
  /** Where each input is opened, ms of the recording. */
  seeksMs: number[]
  /** Text for -filter_complex; its ends are [v] and, with sound, [a]. No word of a person's is in it. */
  filter: string
}

/**
 * How the sound of every clip is coded, whatever becomes of its picture. By ffmpeg's manual (AAC encoder, aac_coder) the fast
 * coder is worse than the other below 64 kbit/s and "better and much faster at higher bitrates" (from memory).
 */
export const SOUND_CODING: readonly string[] = ['-c:a', 'aac', '-aac_coder', 'fast', '-b:a', '160k', '-ar', '48000']

/** Ranges nearer than this share one input: decoding the gap costs less than opening the recording again. */
const SHARED_GAP_MS = 10_000

/** Holes from this length are filled with silence: one lost AAC packet is 1024 samples, 21 ms at 48 kHz. */
export const LOST_SOUND_SECONDS = 0.02

/** The ranges that one opened input serves. */
interface Group {
  input: number
  /** Where the input is opened, ms of the recording. */
  seekMs: number
  /** Number of its first range among all. */
  firstRange: number
  ranges: FrameRange[]
}

/** How one kind of stream goes through the graph: range number n ends as [label n]. */
interface Track {
  label: 'v' | 'a'
  streamIndex: number
  /** Filters before the ranges are taken apart. */
  prepare: string[]
  splitter: 'split' | 'asplit'
  /** The filters that take one range out. */
  take: (range: FrameRange, seekMs: number) => string[]
  /** The filters that follow once the ranges are joined. */
  finish: string[]
}

/** @param soundFilters filters for the joined sound, such as the gain of the class. */
export function planGraph(
  recording: AcceptedRecording,
  index: FrameIndex,
  ranges: readonly FrameRange[],
  soundFilters: readonly string[],
): GraphPlan {
  return planTracks(recording, index, ranges, [
    pictureTrack(recording, ranges),
    ...soundTrack(recording, ranges, soundFilters),
  ])
}

/** The same for the sound alone. */
export function planSoundGraph(
  recording: AcceptedRecording,
  index: FrameIndex,
  ranges: readonly FrameRange[],
  soundFilters: readonly string[],
): GraphPlan {
  return planTracks(recording, index, ranges, soundTrack(recording, ranges, soundFilters))
}

function planTracks(
  recording: AcceptedRecording,
  index: FrameIndex,
  ranges: readonly FrameRange[],
  tracks: readonly Track[],
): GraphPlan {
  const groups = groupRanges(recording, index, ranges)
  const chains = tracks.flatMap((track) => [
    ...groups.flatMap((group) => takeRanges(track, group)),
    `${ranges.map((_, number) => `[${track.label}${number}]`).join('')}${track.finish.join(',')}[${track.label}]`,
  ])
  return { seeksMs: groups.map((group) => group.seekMs), filter: chains.join(';') }
}

function groupRanges(recording: AcceptedRecording, index: FrameIndex, ranges: readonly FrameRange[]): Group[] {
  const groups: Group[] = []
  ranges.forEach((range, number) => {
    const group = groups.at(-1)
    const last = group?.ranges.at(-1)
    if (group && last && range.fromMs - last.toMs < SHARED_GAP_MS) group.ranges.push(range)
    else {
      const seekMs = seekFor(recording, index, range)
      groups.push({ input: groups.length, seekMs, firstRange: number, ranges: [range] })
    }
  })
  return groups
}

/**
 * Where to open the recording for a range, in whole microseconds as ffmpeg counts. A transport stream has
 * no table of key frames and seeking lands anywhere near, so one more group of pictures is read and dropped.
 */
function seekFor(recording: AcceptedRecording, index: FrameIndex, range: FrameRange): number {
  const wholeMicroseconds = (ms: number) => Math.floor(ms * 1000) / 1000
  if (isCoarse(recording)) return seekOnTick(recording, index, range)
  if (!recording.probe.formatNames.includes('mpegts')) return wholeMicroseconds(range.cutFromMs)
  const keys = index.frames.slice(0, range.firstFrame + 1).filter((frame) => frame.key)
  return wholeMicroseconds(Math.max(0, (keys.at(-2)?.atMs ?? 0) - 1))
}

/** From this on the clock's own step would move a frame to its neighbour: AVI counts whole frames. */
const COARSE_TICK_MS = 4
/** Frames looked through for a good place to open. */
const FRAMES_BACK = 300

function tickMs({ timeBase: { num, den } }: { timeBase: { num: number; den: number } }): number {
  return (num * 1000) / den
}

export function isCoarse({ video }: AcceptedRecording): boolean {
  return tickMs(video) >= COARSE_TICK_MS
}

/**
 * ffmpeg moves the clocks of picture and sound to the place it opens at, each by whole ticks. So it opens on a frame, and
 * of the frames before the range on the latest that also lies nearest to a tick of the sound.
 */
function seekOnTick({ audio }: AcceptedRecording, index: FrameIndex, range: FrameRange): number {
  const before = index.frames.slice(Math.max(0, range.firstFrame - FRAMES_BACK), range.firstFrame).reverse()
  const tick = audio ? tickMs(audio) : 0
  const off = (atMs: number): number => (tick > 0 ? Math.abs(atMs / tick - Math.round(atMs / tick)) * tick : 0)
  const best = before.reduce((a, b) => (off(b.atMs) < off(a.atMs) - 0.01 ? b : a), before[0] ?? { atMs: 0 })
  return Math.round(best.atMs * 1000) / 1000
}

/** Where a range is taken out, ms of the recording: between frames; on a coarse clock nearer to the later one, so that rounding finds it. */
function trimEdges(recording: AcceptedRecording, { cutFromMs, cutToMs, fromMs, toMs }: FrameRange) {
  if (!isCoarse(recording)) return { startMs: cutFromMs, endMs: cutToMs }
  return { startMs: (cutFromMs + fromMs) / 2, endMs: cutToMs === null ? null : (cutToMs + toMs) / 2 }
}

/** One branch a range: `source,split[v0_][v1_]`, then `[v0_]...[v0]`, `[v1_]...[v1]`. */
function takeRanges(track: Track, group: Group): string[] {
  const source = `[${group.input}:${track.streamIndex}]`
  const label = (number: number) => `${track.label}${group.firstRange + number}`
  const take = (range: FrameRange) => track.take(range, group.seekMs)
  if (group.ranges.length === 1) {
    return group.ranges.map((range) => `${source}${[...track.prepare, ...take(range)].join(',')}[${label(0)}]`)
  }
  const ends = group.ranges.map((_, number) => `[${label(number)}_]`).join('')
  return [
    `${source}${[...track.prepare, `${track.splitter}=${group.ranges.length}`].join(',')}${ends}`,
    ...group.ranges.map((range, number) => `[${label(number)}_]${take(range).join(',')}[${label(number)}]`),
  ]
}

function pictureTrack(recording: AcceptedRecording, ranges: readonly FrameRange[]): Track {
  const { video } = recording
  const picture = planPicture(video)
  return {
    label: 'v',
    streamIndex: video.index,
    prepare: picture.before,
    splitter: 'split',
    take: (range, seekMs) => {
      const { startMs, endMs } = trimEdges(recording, range)
      const end = endMs === null ? '' : `:end=${seconds(endMs - seekMs)}`
      return [`trim=start=${seconds(startMs - seekMs)}${end}`, 'setpts=PTS-STARTPTS']
    },
    finish: [...(ranges.length > 1 ? [`concat=n=${ranges.length}:v=1:a=0`, layTimes(ranges)] : []), ...picture.after],
  }
}

/**
 * The concat filter guesses how long the last frame of a part lasts (the mean step), which is wrong for uneven
 * steps. So times are laid again: each frame follows the one before by its own step; across a joint by the known one.
 */
function layTimes(ranges: readonly FrameRange[]): string {
  let frame = 0
  const joints = ranges.slice(0, -1).map((range) => {
    frame += range.lastFrame - range.firstFrame + 1
    return `+eq(N,${frame})*(round(${seconds(range.toMs - range.lastMs)}/TB)-PTS+PREV_INPTS)`
  })
  return `setpts='if(N,PREV_OUTPTS+PTS-PREV_INPTS${joints.join('')},0)'`
}

/**
 * Sound from exactly the first frame's time to the end of the last frame. It is placed by its own time stamps:
 * where it starts late, has holes or ends early, silence is put in, so that it never slides under the picture.
 */
function soundTrack({ audio }: AcceptedRecording, ranges: readonly FrameRange[], filters: readonly string[]): Track[] {
  if (!audio) return []
  const take = (range: FrameRange, seekMs: number): string[] => {
    const from = seconds(range.fromMs - seekMs)
    const length = seconds(range.toMs - range.fromMs)
    return [
      `atrim=start=${from}:end=${seconds(range.toMs - seekMs)}`,
      `asetpts=PTS-round(${from}/TB)`,
      `aresample=48000:async=1:min_hard_comp=${LOST_SOUND_SECONDS}:first_pts=0`,
      `aformat=sample_fmts=fltp:channel_layouts=${audio.channels === 1 ? 'mono' : 'stereo'}`,
      // padding of a range that has no sound at all carries no time, so samples are counted instead (1 tick = 1 sample here)
      `apad=whole_dur=${length}`,
      'asetpts=N',
      `atrim=end=${length}`,
      // what follows the fade is silence: pictures that come along behind the out-point bring no word with them
      ...fadeEnds((range.soundToMs ?? range.toMs) - range.fromMs),
    ]
  }
  const joined = [...(ranges.length > 1 ? [`concat=n=${ranges.length}:v=0:a=1`] : []), ...filters]
  return [
    {
      label: 'a',
      streamIndex: audio.index,
      prepare: [],
      splitter: 'asplit',
      take,
      finish: joined.length > 0 ? joined : ['anull'],
    },
  ]
}

/** A wave cut in its middle clicks; so long a slope is not heard as one (common practice, no source). */
const FADE_MS = 5

function fadeEnds(lengthMs: number): string[] {
  if (lengthMs < 4 * FADE_MS) return []
  const length = seconds(FADE_MS)
  return [`afade=t=in:d=${length}`, `afade=t=out:st=${seconds(lengthMs - FADE_MS)}:d=${length}`]
}

/** ffmpeg counts -ss from the earliest stream's start, which may lie before the start of our clock. */
export function seekOption({ probe }: AcceptedRecording, seekMs: Ms): string[] {
  return ['-ss', (seekMs / 1000 + probe.clockStartSeconds - probe.startSeconds).toFixed(6)]
}

/** Milliseconds as seconds with microseconds. */
function seconds(ms: number): string {
  return (ms / 1000).toFixed(6)
}
