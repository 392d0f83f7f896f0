/** Measures the loudness of a whole recording (EBU R128, ITU-R BS.1770) in one pass over its sound. */
import { AppError } from '../../../shared/errors.ts'
import type { Ms } from '../../../shared/time.ts'
import type { AudioStream } from '../read-probe.ts'
import { soundPassLimits } from '../plan-limits.ts'
import { readLoudness } from '../read-loudness.ts'
import type { MeasuredLoudness } from '../read-loudness.ts'
import type { RunProgress } from '../read-progress.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { runFfmpeg } from './run-ffmpeg.ts'

export interface LoudnessJob {
  path: string
  audio: AudioStream
  durationMs: Ms
  onProgress?: (progress: RunProgress) => void
  signal?: AbortSignal | undefined
}

/** More than two channels are mixed down first, as in the clips; one channel is measured as one. */
export async function measureLoudness(found: Ffmpeg, job: LoudnessJob): Promise<MeasuredLoudness> {
  const mix = job.audio.channels > 2 ? 'aformat=channel_layouts=stereo,' : ''
  const lines = await runFfmpeg(found, {
    doing: 'Measuring the loudness',
    inputs: [{ path: job.path, options: ['-vn', '-sn', '-dn'] }],
    // verbose: the frame log goes where it is not printed, the summary stays
    filter: `[0:${job.audio.index}]${mix}ebur128=framelog=verbose:peak=true[m]`,
    outputs: [{ path: null, options: ['-map', '[m]', '-f', 'null'] }],
    limits: soundPassLimits(job.durationMs),
    expectMs: job.durationMs,
    messages: 'info',
    onProgress: job.onProgress,
    signal: job.signal,
  })
  const measured = readLoudness(lines)
  if (!measured) {
    throw new AppError('engine-failed', 'ffmpeg gave no loudness for the recording. Run "doctor".', {
      details: lines.slice(-8),
    })
  }
  return measured
}
