/** Writes weights as source: by the sign of a feature and then by weight, the words or classes that have it. */

/**
 * The rows of one table, greatest weights first; weights of 0 are left out.
 * @param entries features as "sign word" with their weights
 * @param alone stands for the word of a feature that is a sign alone
 * @param indent spaces in front
 */
export function writeSigns(
  entries: Iterable<readonly [feature: string, weight: number]>,
  alone: string,
  indent: number,
): string {
  const bySign = new Map<string, Map<number, string[]>>()
  for (const [feature, weight] of entries) {
    if (weight === 0) continue
    const [sign = '', of = alone] = feature.split(' ')
    const rows = bySign.get(sign) ?? new Map<number, string[]>()
    bySign.set(sign, rows.set(weight, [...(rows.get(weight) ?? []), of]))
  }
  const space = ' '.repeat(indent)
  const signs = [...bySign].map(([sign, rows]) => {
    const sorted = [...rows].sort(([a], [b]) => b - a)
    const lines = sorted.map(([weight, of]) => `${space}  [${weight}, ${wrapped(of, indent + 4)}],`)
    return `${space}${JSON.stringify(sign)}: [\n${lines.join('\n')}\n${space}],`
  })
  return signs.join('\n')
}

const LINE_LENGTH = 105

function wrapped(words: readonly string[], indent: number): string {
  const sorted = [...words].sort()
  if (sorted.join(' ').length < 80) return JSON.stringify(sorted.join(' '))
  const lines: string[] = []
  for (const word of sorted) {
    const last = lines.at(-1)
    if (last === undefined || last.length + word.length >= LINE_LENGTH) lines.push(word)
    else lines[lines.length - 1] = `${last} ${word}`
  }
  const space = ' '.repeat(indent)
  return `\`\n${lines.map((line) => `${space}  ${line}`).join('\n')}\n${space}\``
}
