/** Plans the one run of ffmpeg of an edge cut: it encodes the pictures up to the key frame, and the sound of the clip. */
import type { AcceptedRecording } from './accept-recording.ts'
import type { EdgePlan, EdgeSource } from './plan-edge-cut.ts'
import { planSoundGraph, seekOption, SOUND_CODING } from './plan-graph.ts'
import type { LoudnessPlan } from './plan-loudness.ts'
import type { FrameIndex } from './read-packets.ts'

/** A small file of what must be decoded for the heads of all ranges, one behind the other. */
export interface HeadFile {
  /** Packets of the recording in decode order, and when each shows in the small file. */
  samples: { packet: number; ticks: number; wanted: boolean }[]
  /** Ticks between which frames are kept: from, and first behind. */
  keep: { from: number; to: number }[]
  endTicks: number
}

export interface EdgeCommand {
  head: HeadFile
  /** The recording, opened for its sound; the small file is opened behind these. */
  soundInputs: { options: string[] }[]
  /** null when there is neither a head nor sound. */
  filter: string | null
  pictureOutput: string[] | null
  soundOutput: string[] | null
}

/**
 * H.264 profiles by the number in the sets (ITU-T H.264, annex A), as the encoder calls them, and the tool that makes it name
 * its pictures so: by itself it names the lowest profile that would do.
 */
const PROFILES: Readonly<Record<number, { name: string; tool: string }>> = {
  66: { name: 'baseline', tool: '' },
  77: { name: 'main', tool: ':cabac=1' },
  100: { name: 'high', tool: ':8x8dct=1' },
}

export function planEdgeCommand(
  recording: AcceptedRecording,
  index: FrameIndex,
  source: EdgeSource,
  plan: EdgePlan,
  loudness: LoudnessPlan,
): EdgeCommand {
  const head = planHeadFile(source, plan)
  const sound = recording.audio ? planSoundGraph(recording, index, plan.ranges, loudness.filters) : null
  const soundInputs = (sound?.seeksMs ?? []).map((ms) => ({ options: ['-vn', ...seekOption(recording, ms)] }))
  const picture = head.keep.length > 0 ? `[${soundInputs.length}:v:0]${selectFrames(head)}[v]` : null
  const filter = [sound?.filter, picture].filter((chain) => chain !== null && chain !== undefined).join(';')
  return {
    head,
    soundInputs,
    filter: filter || null,
    pictureOutput: picture === null ? null : pictureOutput(recording, source, plan),
    soundOutput: sound && ['-map', '[a]', ...SOUND_CODING, ...PLAIN, '-f', 'mp4'],
  }
}

const PLAIN = ['-sn', '-dn', '-map_metadata', '-1', '-map_chapters', '-1', '-fflags', '+bitexact']

function planHeadFile({ packets, timescale }: EdgeSource, plan: EdgePlan): HeadFile {
  const head: HeadFile = { samples: [], keep: [], endTicks: 0 }
  for (const { headTicks, decode } of plan.parts) {
    const [first] = headTicks
    const last = headTicks.at(-1)
    const keyTicks = packets[decode.from]?.ticks ?? 0
    if (first === undefined || last === undefined) continue
    const base = head.endTicks - keyTicks
    for (let packet = decode.from; packet < decode.to; packet += 1) {
      const ticks = packets[packet]?.ticks ?? -1
      // pictures shown before the key frame need what lies before it; those behind the head are not asked for
      if (ticks >= keyTicks) head.samples.push({ packet, ticks: ticks + base, wanted: ticks >= first && ticks <= last })
    }
    head.keep.push({ from: first + base, to: last + base + 1 })
    head.endTicks = last + base + timescale
  }
  return head
}

function selectFrames({ keep }: HeadFile): string {
  return `select='${keep.map(({ from, to }) => `gte(pts,${from})*lt(pts,${to})`).join('+')}'`
}

function pictureOutput({ video }: AcceptedRecording, source: EdgeSource, plan: EdgePlan): string[] {
  const { profile, level } = source.config
  const known = PROFILES[profile]
  let frame = 0
  const starts = plan.parts.flatMap(({ headTicks }) => {
    const start = frame
    frame += headTicks.length
    return headTicks.length > 0 ? [start] : []
  })
  return [
    [
      '-map',
      '[v]',
      '-c:v',
      'libx264',
      '-preset',
      HEAD_PRESET,
      '-crf',
      headCrf(frame / starts.length),
      '-pix_fmt',
      video.pixelFormat,
    ],
    known ? ['-profile:v', known.name] : [],
    ['-level:v', (level / 10).toFixed(1), '-bf', '0', '-g', '9999', '-threads', '1'],
    // its own set id beside the recording's: so one decoder configuration holds both
    ['-x264-params', `sps-id=${plan.setId}:scenecut=0:open-gop=0:stitchable=1${known?.tool ?? ''}`],
    ['-force_key_frames', `expr:${starts.map((start) => `eq(n,${start})`).join('+')}`, '-forced-idr', '1'],
    ['-fps_mode', 'passthrough', '-enc_time_base:v', `1/${source.timescale}`],
    ['-video_track_timescale', String(source.timescale), ...PLAIN, '-f', 'mp4'],
  ].flat()
}

/**
 * Measured on 250 frames of 720p at 3 Mbit/s with noise, against the recording's frames: ultrafast at 22 takes 1.0 CPU-s, 47.4 dB
 * PSNR, 2.9 times the bytes; superfast at 22 takes 1.9 CPU-s, 47.4 dB, 3.0 times the bytes. At 24 it is about 46 dB and 2.6 times.
 */
const HEAD_PRESET = 'ultrafast'

/**
 * A head opens with a whole picture, where the recording has small ones: at 24 a head of one frame took 4.5 times the bytes at
 * 48.6 dB, one of three 3.7 times at 47.1 dB, one of six 2.8 times. So the shortest give some of that away; at 28 that of one
 * frame still took 3.3 times, at 46.3 dB.
 * @param frames for each whole picture
 */
function headCrf(frames: number): string {
  return frames < 2 ? '30' : frames < 4 ? '28' : frames < 6 ? '26' : '24'
}
