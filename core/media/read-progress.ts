/** Reads ffmpeg's own progress report (`-progress`, one `key=value` a line) into times and per cent. */
import type { Ms } from '../../shared/time.ts'

/** Where one run stands. */
export interface RunProgress {
  /** How much of the output is written, in ms of playing time. */
  outMs: Ms
  /** Bytes written so far; null while not known. */
  bytes: number | null
  /** 0 to 100, whole; from outMs and the expected length, never from the length of the input. */
  percent: number
  done: boolean
}

const KEYS =
  /^(frame|fps|stream_\d+_\d+_\w+|bitrate|total_size|out_time_us|out_time_ms|out_time|dup_frames|drop_frames|speed|progress)=/

/** True when the line belongs to the progress report and is no message. */
export function isProgressLine(line: string): boolean {
  return KEYS.test(line)
}

/**
 * A reader that takes line after line; it returns a report at the end of each block, else null.
 * @param expectMs the length of the output that the plan expects; 0 = not known, per cent stays 0 until the end.
 */
export function progressReader(expectMs: Ms): (line: string) => RunProgress | null {
  const seen: { outMs: Ms; bytes: number | null } = { outMs: 0, bytes: null }
  return (line) => {
    const [, key, value] = /^(\w+)=\s*(\S+)/.exec(line) ?? []
    // out_time_ms is in microseconds too, a fault older than the program; out_time_us says what it is
    if (key === 'out_time_us' && /^\d+$/.test(value ?? '')) {
      seen.outMs = Math.max(seen.outMs, Math.round(Number(value) / 1000))
    }
    if (key === 'total_size' && /^\d+$/.test(value ?? '')) seen.bytes = Number(value)
    if (key !== 'progress') return null
    const done = value === 'end'
    const share = expectMs > 0 ? Math.floor((seen.outMs / expectMs) * 100) : 0
    return { ...seen, percent: done ? 100 : Math.min(99, Math.max(0, share)), done }
  }
}
