/** Plans how long a run may take and how much it may write, so that nothing runs or grows without end. */
import type { Ms } from '../../shared/time.ts'

export interface RunLimits {
  /** Wall-clock time. */
  timeoutMs: Ms
  /** Processor time of all threads, whole seconds. */
  cpuSeconds: number
  /** Bytes of one output. */
  maxBytes: number
}

/** A timer that is set for longer goes off at once (HTML Standard and Node.js: a signed number of 32 bits). 24.8 days. */
export const LONGEST_TIMER_MS = 2 ** 31 - 1

const HD_PIXELS = 1920 * 1080
const MEGABYTE = 1_000_000

/**
 * Limits of one encoded clip. Measured: encoding takes about 0.5 processor seconds a second of 720p;
 * the limits leave more than fifty times that for slow or shared machines.
 */
export function clipLimits(durationMs: Ms, pixels: number): RunLimits {
  const seconds = durationMs / 1000
  const size = Math.max(1, pixels / HD_PIXELS)
  return {
    timeoutMs: Math.round((300 + seconds * 60 * size) * 1000),
    cpuSeconds: Math.round(300 + seconds * 60 * size),
    maxBytes: Math.round((50 + seconds * 12 * size) * MEGABYTE),
  }
}

/** Limits of checking one clip, of which little is decoded. */
export function verifyLimits(durationMs: Ms): RunLimits {
  const seconds = Math.round(120 + (durationMs / 1000) * 5)
  return { timeoutMs: seconds * 1000, cpuSeconds: seconds, maxBytes: 100 * MEGABYTE }
}

/** Limits of one pass over the sound of the whole recording (measured: about 5 processor seconds for 20 minutes). */
export function soundPassLimits(durationMs: Ms): RunLimits {
  const seconds = durationMs / 1000
  return { timeoutMs: Math.round((120 + seconds) * 1000), cpuSeconds: Math.round(120 + seconds), maxBytes: MEGABYTE }
}

/**
 * A rough guess, on the low side, of what clips will take on disk: as many bytes a second as the recording has.
 * @param clipsMs playing time of all clips still to be cut.
 */
export function guessClipBytes(clipsMs: Ms, recordingBytes: number, recordingMs: Ms): number {
  return recordingMs > 0 ? Math.round((recordingBytes / recordingMs) * clipsMs) : 0
}
