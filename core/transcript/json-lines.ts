/** Finds the line on which each object of a JSON text starts, so that errors can name it. */

/** Lines (from 1) of every `{`, in the order of the text. The text must be valid JSON. */
export function objectLines(text: string): number[] {
  const lines: number[] = []
  let line = 1
  // Strings first, so that braces inside them do not count.
  for (const [token] of text.matchAll(/"[^"\\]*(?:\\.[^"\\]*)*"|[\n{]/g)) {
    if (token === '\n') line++
    else if (token === '{') lines.push(line)
  }
  return lines
}

/** All objects of a parsed value, each before its contents: the order in which they start in the text. */
export function orderObjects(root: unknown): object[] {
  const found: object[] = []
  // No recursion: lists may lie in each other ten thousand deep.
  const open = [root]
  while (open.length > 0) {
    const value = open.pop()
    if (typeof value !== 'object' || value === null) continue
    if (!Array.isArray(value)) found.push(value)
    for (const inner of Object.values(value).reverse()) open.push(inner)
  }
  return found
}
