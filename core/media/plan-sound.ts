/** Plans how sound that was recorded apart takes the place of the film's own: its clock made right, laid where it belongs. */
import type { Ms } from '../../shared/time.ts'
import type { AcceptedRecording } from './accept-recording.ts'
import type { Alignment } from './align-sound.ts'
import type { RunLimits } from './plan-limits.ts'
import type { AudioStream } from './read-probe.ts'

const RATE = 48_000
/** Rates tried for the one that gives the drift best; all keep more than the ear hears. */
const RATES = { least: 48_000, most: 96_000 }

/**
 * Two rates, close to each other, whose ratio is the drift: sound resampled to the first and played at the second runs right.
 * A whole number of samples a second alone would be 10 ppm off, 36 ms an hour.
 */
export function driftRates(driftPpm: number): { resampled: number; played: number } {
  const ratio = 1 + driftPpm / 1_000_000
  let best = { resampled: RATE, played: RATE, error: Math.abs(ratio - 1) }
  for (let resampled = RATES.least; resampled <= RATES.most && best.error > 1e-9; resampled += 1) {
    const played = Math.round(resampled * ratio)
    const error = Math.abs(played / resampled - ratio)
    if (error < best.error) best = { resampled, played, error }
  }
  return { resampled: best.resampled, played: best.played }
}

/** Filters that put the sound on the film's clock, from its first moment to its end; silence where there is none. */
export function soundOnClock(
  place: Pick<Alignment, 'startMs' | 'driftPpm'>,
  channels: number,
  durationMs: Ms,
): string[] {
  const { resampled, played } = driftRates(place.driftPpm)
  const samples = Math.round((place.startMs / 1000) * RATE)
  const length = (durationMs / 1000).toFixed(6)
  return [
    `aresample=${resampled}:async=1:first_pts=0`,
    ...(played === resampled ? [] : [`asetrate=${played}`]),
    ...(played === RATE ? [] : [`aresample=${RATE}`]),
    `aformat=sample_fmts=s16:channel_layouts=${channels === 1 ? 'mono' : 'stereo'}`,
    ...(samples < 0 ? [`atrim=start_sample=${-samples}`] : []),
    'asetpts=N',
    ...(samples > 0 ? [`adelay=${samples}S:all=1`] : []),
    `apad=whole_dur=${length}`,
    `atrim=end=${length}`,
  ]
}

export interface SoundSwap {
  /** Ending of the film's name. */
  ending: 'mp4' | 'mov'
  filter: string
  output: string[]
  limits: RunLimits
}

/** Pictures that MP4 holds; all else goes into QuickTime. */
const IN_MP4: readonly string[] = ['h264', 'hevc', 'vp9', 'av1', 'mpeg4']
/** Without loss, so that the sound is coded with loss only once: in the clip. FLAC in MP4 is young, and ffmpeg 5.1 wants to be told. */
const LOSSLESS = { mp4: ['-c:a', 'flac', '-strict', 'experimental'], mov: ['-c:a', 'pcm_s16le'] } as const

/** Input 0 is the film, whose picture is copied; input 1 the sound. */
export function planSoundSwap(
  film: AcceptedRecording & { durationMs: Ms },
  sound: AudioStream,
  place: Pick<Alignment, 'startMs' | 'driftPpm'>,
): SoundSwap {
  const { video, durationMs, probe } = film
  const seconds = durationMs / 1000
  const ending = IN_MP4.includes(video.codec) ? 'mp4' : 'mov'
  return {
    ending,
    filter: `[1:${sound.index}]${soundOnClock(place, sound.channels, durationMs).join(',')}[a]`,
    output: [
      ...['-map', `0:${video.index}`, '-map', '[a]', '-c:v', 'copy'],
      ...(video.codec === 'hevc' ? ['-tag:v', 'hvc1'] : []),
      ...LOSSLESS[ending],
      ...['-map_metadata', '-1', '-map_chapters', '-1', '-fflags', '+bitexact', '-f', ending],
    ],
    limits: {
      timeoutMs: Math.round((300 + seconds * 3) * 1000),
      cpuSeconds: Math.round(300 + seconds * 3),
      maxBytes: Math.round(200_000_000 + probe.sizeBytes * 1.2 + seconds * 400_000),
    },
  }
}
