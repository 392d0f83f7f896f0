/** Plans the cut of one segment: which frames, by what method and why, with every argument for ffmpeg as a value. */
import { AppError } from '../../shared/errors.ts'
import type { Segment } from '../../shared/log-sheet.ts'
import type { CutMethod, Loudness } from '../../shared/manifest.ts'
import type { Ms, Stretch } from '../../shared/time.ts'
import { keptRanges } from '../segments/kept-ranges.ts'
import type { AcceptedRecording } from './accept-recording.ts'
import { chooseFrames, clipTimes } from './choose-frames.ts'
import type { FrameRange } from './choose-frames.ts'
import { planEdgeCommand } from './plan-edge-commands.ts'
import type { EdgeCommand } from './plan-edge-commands.ts'
import { planEdgeCut } from './plan-edge-cut.ts'
import type { EdgeChoice, EdgePlan, EdgeSource } from './plan-edge-cut.ts'
import { freeInPoints } from './free-in-points.ts'
import { planGraph, seekOption, SOUND_CODING } from './plan-graph.ts'
import { planPicture } from './plan-picture.ts'
import { adjustLoudness } from './plan-loudness.ts'
import type { LoudnessPlan } from './plan-loudness.ts'
import type { FrameIndex } from './read-packets.ts'

/** Goes up when the same plan would give another clip; clips of an older version are then cut anew. */
export const METHOD_VERSION = 4
/** The same for edge cuts. */
export const EDGE_VERSION = 6

/** One run of ffmpeg without its paths: options before each input, one filter graph, options before the output. */
export interface CutCommand {
  /** Each is the recording, opened once more at another place. */
  inputs: { options: string[] }[]
  filter: string
  output: string[]
}

export interface ClipPlan {
  segmentId: string
  name: string
  /** Start of the file name: small letters, digits and hyphens, at most 40. */
  slug: string
  ranges: FrameRange[]
  /** What is kept, in whole ms: from the first frame kept to the first frame after. */
  spans: Stretch[]
  frames: number
  durationMs: Ms
  /** When each frame shows in the clip, exact ms. */
  frameTimesMs: number[]
  /** What the manifest says of its level. */
  loudness: Loudness
  method: CutMethod
  why: string
  /** How the whole is encoded; not used when `edge` is there. */
  command: CutCommand
  /** How only its edges are encoded; null = it is encoded as a whole. */
  edge: { plan: EdgePlan; command: EdgeCommand } | null
  /** The clip encoded as a whole, for an edge cut that does not come out right. */
  fallback: ClipPlan | null
  /** Frame of the clip, from 0, that stands for it as a still. */
  posterFrame: number
  /** Everything that decides what the clip holds, as text: its hash names the clip. */
  key: string
}

export interface CutInput {
  segment: Segment
  recording: AcceptedRecording
  index: FrameIndex
  loudness: LoudnessPlan
  /** SHA-256 of the recording in hex. */
  sha256: string
  /** What edge cuts copy from; a text says why there is none. */
  edge?: EdgeSource | string
  /** Pauses of the speech, in which in-points that nobody holds may move; absent = none moves. */
  pauses?: readonly Stretch[] | undefined
}

/**
 * Plans one clip.
 * @throws AppError sheet-spans when no frame of the recording lies in what the segment keeps.
 */
export function planCut(input: CutInput): ClipPlan {
  const { segment, recording, index, sha256, edge } = input
  const loudness = adjustLoudness(input.loudness, segment)
  const ranges = chooseFrames(keptRanges(segment), index)
  if (ranges.length === 0) {
    throw new AppError(
      'sheet-spans',
      `"${segment.exercise.name}" (${segment.id}) keeps no frame of the recording. Make its span longer.`,
    )
  }
  const choice = chooseEdge(input, ranges)
  const command = buildCommand(recording, index, ranges, loudness)
  const whole: ClipPlan = {
    ...describe(segment, ranges, index),
    loudness: loudness.loudness,
    method: 'full',
    why: whyFull(recording, choice.plan ? undefined : choice.why),
    command,
    edge: null,
    fallback: null,
    key: JSON.stringify({ sha256, method: 'full', version: METHOD_VERSION, command }),
  }
  if (!choice.plan || typeof edge !== 'object') return whole
  const edgeCommand = planEdgeCommand(recording, index, edge, choice.plan, loudness)
  return {
    ...describe(segment, choice.plan.ranges, index),
    loudness: loudness.loudness,
    method: choice.plan.headFrames === 0 ? 'copy' : 'edge',
    why: choice.why,
    command,
    edge: { plan: choice.plan, command: edgeCommand },
    fallback: whole,
    key: JSON.stringify({
      sha256,
      method: 'edge',
      version: EDGE_VERSION,
      plan: choice.plan,
      command: { ...edgeCommand, head: null },
    }),
  }
}

/** What a plan says of the clip, whatever makes it. */
function describe(segment: Segment, ranges: FrameRange[], index: FrameIndex) {
  const frameTimesMs = clipTimes(ranges, index)
  return {
    segmentId: segment.id,
    name: segment.exercise.name,
    slug: slug(segment.exercise.name),
    ranges,
    spans: ranges.map(({ fromMs, toMs }) => ({ startMs: Math.round(fromMs), endMs: Math.round(toMs) })),
    frames: frameTimesMs.length,
    durationMs: Math.round(ranges.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0)),
    frameTimesMs,
    posterFrame: posterFrame(segment, ranges, index),
  }
}

/** The edge cut of the ranges, or of such that begin on a cheaper frame of the same pause. */
function chooseEdge(
  { segment, index, edge, pauses = [] }: CutInput,
  ranges: readonly FrameRange[],
): EdgeChoice | { plan: null; why: undefined } {
  if (edge === undefined) return { plan: null, why: undefined }
  if (typeof edge === 'string') return { plan: null, why: edge }
  const free = freeInPoints(segment, index, edge, pauses)
  if (free.moves.length > 0) {
    const moved = planEdgeCut(edge, index, chooseFrames(free.ranges, index))
    const words = free.moves.map(({ movedMs, frames }) => {
      return `${(Math.abs(movedMs) / 1000).toFixed(2)} s ${movedMs < 0 ? 'earlier' : 'later'} in its pause, which spares ${frames} frames`
    })
    if (moved.plan) return { ...moved, why: `${moved.why} In-point moved ${words.join('; ')}.` }
  }
  return planEdgeCut(edge, index, ranges)
}

/** @param whyNoEdge why it cannot be copied for the most part; undefined = nobody asked. */
function whyFull({ video }: AcceptedRecording, whyNoEdge = 'exact to the frame for every camera'): string {
  const { done } = planPicture(video)
  return `Encoded anew as a whole: ${[whyNoEdge, ...done].join('; ')}.`
}

/** A name for files: Latin letters without accents, digits, single hyphens; `clip` when nothing is left. */
export function slug(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replaceAll('ß', 'ss')
  const words = plain.toLowerCase().match(/[a-z0-9]+/g) ?? []
  return words.join('-').slice(0, 40).replace(/-+$/, '') || 'clip'
}

function buildCommand(
  recording: AcceptedRecording,
  index: FrameIndex,
  ranges: readonly FrameRange[],
  loudness: LoudnessPlan,
): CutCommand {
  const graph = planGraph(recording, index, ranges, loudness.filters)
  const timescale = trackTimescale(recording)
  const sound = recording.audio ? ['-map', '[a]', ...SOUND_CODING] : ['-an']
  const output = [
    ['-map', '[v]', '-c:v', 'libx264', '-preset', 'veryfast', '-crf', '20', '-pix_fmt', 'yuv420p'],
    // each frame keeps its own time: a camera's uneven steps stay. The encoder is told the clock, for its own guess
    // after a filter graph is one tick a frame
    ['-fps_mode', 'passthrough', '-enc_time_base:v', `1/${timescale}`, '-video_track_timescale', String(timescale)],
    ['-force_key_frames', 'expr:gte(t,n_forced*2)'],
    sound,
    ['-sn', '-dn', '-map_metadata', '-1', '-map_chapters', '-1', '-fflags', '+bitexact'],
    ['-movflags', '+faststart', '-f', 'mp4'],
  ].flat()
  return { inputs: graph.seeksMs.map((ms) => ({ options: seekOption(recording, ms) })), filter: graph.filter, output }
}

/** Ticks a second of the clip's picture track: the recording's own, times a whole number, so that no time is rounded. */
function trackTimescale({ video }: AcceptedRecording): number {
  const { num, den } = video.timeBase
  if (num !== 1 || den > 1_000_000) return 90_000
  return den * Math.ceil(10_000 / den)
}

/** The loop's first frame when the clip keeps it, else the frame a third in. */
function posterFrame(segment: Segment, ranges: readonly FrameRange[], index: FrameIndex): number {
  let before = 0
  for (const range of ranges) {
    const frames = index.frames.slice(range.firstFrame, range.lastFrame + 1)
    const found = segment.loop
      ? frames.findIndex((frame) => Math.round(frame.atMs) >= (segment.loop?.startMs ?? 0))
      : -1
    if (found >= 0 && segment.loop && Math.round(frames[found]?.atMs ?? 0) < segment.loop.endMs) return before + found
    before += frames.length
  }
  return Math.floor(before / 3)
}
