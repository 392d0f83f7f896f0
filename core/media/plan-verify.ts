/** Plans what of a finished clip is decoded to verify it: its head and the pictures behind the joint, and its sound. */
import type { AcceptedRecording } from './accept-recording.ts'
import { COMPARE_RATE } from './compare-sound.ts'
import type { ClipPlan } from './plan-cut.ts'
import { isCoarse, LOST_SOUND_SECONDS, seekOption } from './plan-graph.ts'

export interface VerifyPlan {
  /** Frames to decode from the clip's start, strictly. */
  frames: number
  pictureOutput: string[]
  /** Of the first range: the clip's sound and the recording's, as two channels. null without sound. */
  sound: { recordingOptions: string[]; filter: string; output: string[] } | null
}

/** Frames behind a joint that are decoded: they show that the copied pictures find their own parameter sets. */
const BEHIND_JOINT = 48
/** Frames of a clip that was encoded as a whole. */
const OF_WHOLE = 48
/** The sound is compared for at most this long. */
const MOST_SOUND_MS = 20_000

/** The clip is input 0 for its picture and 1 for its sound, the recording is input 2. */
export function planVerify(plan: ClipPlan, recording: AcceptedRecording): VerifyPlan {
  const frames = Math.min(plan.frames, plan.edge ? lastJoint(plan) + BEHIND_JOINT : OF_WHOLE)
  return {
    frames,
    // the frames are counted, not hashed: what is "written" is a few bytes each
    pictureOutput: [
      ...['-map', '0:v:0', '-frames:v', String(frames), '-fps_mode', 'passthrough'],
      ...['-c:v', 'wrapped_avframe', '-f', 'framecrc'],
    ],
    sound: soundPlan(plan, recording),
  }
}

/** The frame of the clip at which its last copied stretch begins. */
function lastJoint({ edge }: ClipPlan): number {
  let frame = 0
  let joint = 0
  for (const { headTicks, copy } of edge?.plan.parts ?? []) {
    joint = frame + headTicks.length
    frame = joint + copy.to - copy.from
  }
  return joint
}

function soundPlan(plan: ClipPlan, recording: AcceptedRecording): VerifyPlan['sound'] {
  const { audio } = recording
  const [range] = plan.ranges
  if (!audio || !range) return null
  const lengthMs = Math.min((range.soundToMs ?? range.toMs) - range.fromMs, MOST_SOUND_MS)
  const length = (lengthMs / 1000).toFixed(6)
  // where seeking lands anywhere near, the recording is read from its start
  const fromStart = isCoarse(recording)
  const cut = fromStart
    ? `atrim=start=${(range.fromMs / 1000).toFixed(6)}:duration=${length},asetpts=PTS-STARTPTS,`
    : ''
  // placed by its time stamps, as in the clip: silence stands where it starts late or has a hole
  const place = `aresample=${COMPARE_RATE}:async=1:min_hard_comp=${LOST_SOUND_SECONDS}:first_pts=0`
  const one = (input: string) => `${input}${place},aformat=channel_layouts=mono`
  return {
    recordingOptions: fromStart
      ? ['-vn', '-t', ((range.fromMs + lengthMs + 1000) / 1000).toFixed(6)]
      : ['-vn', ...seekOption(recording, range.fromMs), '-t', length],
    filter: `${one('[1:a:0]')},apad[c];${one(`[2:${audio.index}]${cut}`)}[r];[c][r]amerge[m]`,
    output: ['-map', '[m]', '-c:a', 'pcm_s16le', '-f', 's16le'],
  }
}
