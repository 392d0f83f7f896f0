/** Writes the figures of a measurement as lines a person can read: median, unit, raw values, then the goals. */
import { isMet, median } from './bench.ts'
import type { Report } from './bench.ts'

const RAW_SHOWN = 12

/** @returns met = every goal is met */
export function writeReport({ series, goals, notes }: Report): { text: string; met: boolean } {
  const width = Math.max(0, ...series.map(({ name }) => name.length))
  const lines = [
    ...notes.map((note) => `  note: ${note}`),
    ...series.map(({ name, unit, raw }) => {
      const shown = raw.slice(0, RAW_SHOWN).map(short).join(' ')
      const more = raw.length > RAW_SHOWN ? ` … ${raw.length} in all` : ''
      return `  ${name.padEnd(width)}  ${short(median(raw)).padStart(8)} ${unit}   (${shown}${more})`
    }),
    ...goals.map((goal) => {
      const { what, value, wants, limit } = goal
      return `  ${isMet(goal) ? 'met   ' : 'MISSED'}  ${what}: ${short(value)}, wanted ${wants} ${short(limit)}`
    }),
  ]
  return { text: `${lines.join('\n')}\n`, met: goals.every(isMet) }
}

/** Three digits that count, and no more. */
function short(value: number): string {
  if (value === 0 || Math.abs(value) >= 1000) return value.toFixed(0)
  return String(Number(value.toPrecision(3)))
}
