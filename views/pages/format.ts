/** How numbers become words on a page: ranges, seconds, lengths of clips, counts. */
import type { Range } from '../../shared/log-sheet.ts'

/** "12", "12–15", "12+" or "up to 12"; empty for a range without numbers. */
export function formatRange(range: Range | null): string {
  const { min = null, max = null } = range ?? {}
  if (min === null && max === null) return ''
  if (min === null) return `up to ${String(max)}`
  if (max === null) return `${String(min)}+`
  return min === max ? String(min) : `${String(min)}–${String(max)}`
}

/** A number and its unit: whole minutes from two on, else seconds. */
export function formatSeconds(range: Range | null): { number: string; unit: string } {
  const { min = null, max = null } = range ?? {}
  const isMinutes = [min, max].every((value) => value === null || (value >= 120 && value % 60 === 0))
  const by = (value: number | null): number | null => (value === null || !isMinutes ? value : value / 60)
  const number = formatRange({ min: by(min), max: by(max) })
  return { number, unit: number === '' ? '' : isMinutes ? 'min' : 's' }
}

/** "3 lessons", "1 lesson". */
export function formatCount(count: number, one: string, many = `${one}s`): string {
  return `${String(count)} ${count === 1 ? one : many}`
}

/** Words in a list: "a", "a and b", "a, b and c". */
export function formatList(words: readonly string[]): string {
  const last = words.at(-1) ?? ''
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`
}

export function upperFirst(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1)
}
