/** Writes weights as source, those of the same size in one row, the greatest first; too small ones are left out. */

/** Rows such as `  [0.3, "first|second"],`. @param indent what stands in front of each */
export function writeRows(weights: Iterable<readonly [name: string, weight: number]>, indent: string): string {
  const rows = new Map<string, string[]>()
  for (const [name, weight] of weights) {
    if (Math.abs(weight) < LEAST_WEIGHT) continue
    const key = weight.toFixed(1)
    rows.set(key, [...(rows.get(key) ?? []), name])
  }
  return [...rows]
    .sort(([a], [b]) => Number(b) - Number(a))
    .map(([weight, names]) => `${indent}[${weight}, ${JSON.stringify(names.sort().join('|'))}],`)
    .join('\n')
}

const LEAST_WEIGHT = 0.05
