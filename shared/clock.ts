/** Clock text for people, read and written; without packages, so that a browser's script can use it too. */

/**
 * Reads clock text: `m:ss`, `h:mm:ss`, either with `.mmm`, or plain seconds (`90`, `90.5`).
 * @returns whole milliseconds, or null when the text is no clock time.
 */
export function parseClock(text: string): number | null {
  const match = /^(?:(?:(\d+):)?(\d+):)?(\d+)(?:[.,](\d{1,3}))?$/.exec(text.trim())
  if (!match) return null
  const [, hours, minutes, seconds, fraction] = match
  if (minutes !== undefined && (seconds ?? '').length !== 2) return null
  if (minutes !== undefined && Number(seconds) > 59) return null
  if (hours !== undefined && (Number(minutes) > 59 || (minutes ?? '').length !== 2)) return null
  const whole = Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds)
  const ms = whole * 1000 + Number((fraction ?? '').padEnd(3, '0'))
  return Number.isSafeInteger(ms) ? ms : null
}

/** Writes a time for people, `m:ss` or `h:mm:ss`, rounded down to the second. */
export function formatClock(ms: number): string {
  const seconds = Math.floor(ms / 1000)
  const two = (n: number) => String(n).padStart(2, '0')
  const hours = Math.floor(seconds / 3600)
  const minutes = Math.floor((seconds % 3600) / 60)
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`
}

/** Writes a time to the millisecond, `m:ss.mmm` or `h:mm:ss.mmm`; parseClock reads it back. */
export function formatClockMs(ms: number): string {
  return `${formatClock(ms)}.${String(ms % 1000).padStart(3, '0')}`
}
