/** Reads what ffmpeg's blackdetect and freezedetect filters say: where the picture is black, and where it stands still. */
import type { Ms, Stretch } from '../../shared/time.ts'

export interface DullParts {
  /** A lens cap, a lamp out. Exact to one key frame. */
  black: Stretch[]
  /** A camera that hung: every key frame the same. Black parts are not named again. */
  still: Stretch[]
}

export interface DullReader {
  take: (line: string) => void
  /** All so far; what has not ended ends with the recording. */
  read: (durationMs: Ms) => DullParts
}

const BLACK = /black_start:(-?[\d.]+) black_end:(-?[\d.]+)/
const STILL_START = /freeze_start: (-?[\d.]+)/
const STILL_END = /freeze_end: (-?[\d.]+)/

export function openDullReader(): DullReader {
  const black: Stretch[] = []
  const still: Stretch[] = []
  let stillFromMs: Ms | null = null
  return {
    take: (line) => {
      const found = BLACK.exec(line)
      if (found) black.push({ startMs: milliseconds(found[1]), endMs: milliseconds(found[2]) })
      const start = STILL_START.exec(line)
      if (start) stillFromMs = milliseconds(start[1])
      const end = STILL_END.exec(line)
      if (!end || stillFromMs === null) return
      still.push({ startMs: stillFromMs, endMs: milliseconds(end[1]) })
      stillFromMs = null
    },
    read: (durationMs) => {
      const all = stillFromMs === null ? still : [...still, { startMs: stillFromMs, endMs: durationMs }]
      const within = ({ startMs, endMs }: Stretch): Stretch => ({ startMs, endMs: Math.min(endMs, durationMs) })
      const isBlack = (one: Stretch): boolean =>
        black.some((dark) => dark.startMs <= one.startMs && one.endMs <= dark.endMs)
      return { black: black.map(within), still: all.map(within).filter((one) => !isBlack(one)) }
    },
  }
}

function milliseconds(seconds: string | undefined): Ms {
  return Math.max(0, Math.round(Number(seconds) * 1000))
}
