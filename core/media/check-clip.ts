/** Checks a finished clip against its plan: streams, frame count, each frame's time, length, copied packets. Nothing is decoded. */
import type { ClipPlan } from './plan-cut.ts'
import type { ClipFacts } from './read-clip.ts'
import type { FrameIndex } from './read-packets.ts'
import type { Probe } from './read-probe.ts'

/** A frame's time in the clip may differ by this from the plan: half a tick of the coarsest clock and some. */
const TIME_TOLERANCE_MS = 0.5
/** Sound comes in packets of 1024 samples (21 ms at 48 kHz); the last one may stick out or be short. */
const SOUND_TOLERANCE_MS = 50

/**
 * What is wrong with the clip, [] when it is what the plan says.
 * @param facts null = it cannot be read.
 * @param withSound whether the clip must have sound.
 * @param copied MD5 of each copied packet, by its number in the clip, as the recording has it.
 */
export function checkClip(
  plan: ClipPlan,
  facts: ClipFacts | null,
  withSound: boolean,
  copied: ReadonlyMap<number, string> = new Map(),
): string[] {
  if (!facts?.probe.video || !facts.index) return ['it cannot be read']
  const { probe, index, backwards } = facts
  return [
    ...checkStreams(probe, withSound),
    ...checkFrames(plan, index),
    ...backwards.map((kind) => `the time stamps of its ${kind} do not rise`),
    ...(withSound ? checkSound(plan, probe) : []),
    ...checkCopied(facts, copied),
  ]
}

function checkStreams(probe: Probe, withSound: boolean): string[] {
  const expected = withSound ? 'video, audio' : 'video'
  const found = probe.streamKinds.join(', ')
  return [
    ...(found === expected ? [] : [`it holds ${found}, not ${expected}`]),
    ...(probe.video?.codec === 'h264' ? [] : [`its picture is ${probe.video?.codec ?? 'missing'}, not h264`]),
    ...(probe.startSeconds === 0 ? [] : [`it starts at ${probe.startSeconds} s, not at 0`]),
  ]
}

function checkFrames(plan: ClipPlan, index: FrameIndex): string[] {
  const { frames } = index
  if (frames.length !== plan.frames) return [`it has ${frames.length} frames, not ${plan.frames}`]
  const wrong = frames.findIndex((frame, number) => {
    return Math.abs(frame.atMs - (plan.frameTimesMs[number] ?? NaN)) > TIME_TOLERANCE_MS
  })
  if (wrong >= 0) {
    return [
      `frame ${wrong} shows at ${frames[wrong]?.atMs.toFixed(2)} ms, not ${plan.frameTimesMs[wrong]?.toFixed(2)} ms`,
    ]
  }
  return frames[0]?.key === true ? [] : ['its first frame is no key frame']
}

function checkSound(plan: ClipPlan, probe: Probe): string[] {
  const length = probe.audio?.durationMs ?? 0
  return Math.abs(length - plan.durationMs) <= SOUND_TOLERANCE_MS
    ? []
    : [`its sound lasts ${length} ms, not ${plan.durationMs} ms`]
}

function checkCopied({ hashes }: ClipFacts, copied: ReadonlyMap<number, string>): string[] {
  const wrong = [...copied].find(([packet, hash]) => hashes[packet] !== hash)
  return wrong ? [`packet ${wrong[0]} is not the one of the recording`] : []
}
