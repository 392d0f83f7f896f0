/** Joins two ranges into the one that holds both. */
import type { Range } from '../../shared/log-sheet.ts'

export function across(a: Range, b: Range): Range {
  const values = [a.min, a.max, b.min, b.max].filter((value) => value !== null)
  return { min: Math.min(...values), max: Math.max(...values) }
}
