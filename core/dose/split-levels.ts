/** Takes apart our own written form: `3 x 10; beginners: 1 x 10` and `10 reps, then [10 reps]`. */
export interface DoseParts {
  /** The text before the first level or bracketed part. */
  main: string
  levels: { level: string; text: string }[]
  thens: string[]
}

// "; beginners: " or '; "over 60": ' outside brackets
const LEVEL = /^; (?:"((?:[^"\\]|\\.)*)"|([\p{Ll}][\p{Ll} -]*)): /u
const THEN = /^,? ?then \[/

/** The parts of a written dose; spoken text comes back whole. */
export function splitLevels(text: string): DoseParts {
  const parts: DoseParts = { main: text, levels: [], thens: [] }
  const first = nextPart(text, 0)
  if (first === null) return parts
  parts.main = text.slice(0, first)
  for (let at: number | null = first; at !== null;) {
    const next: number | null = nextPart(text, at + prefixLength(text.slice(at)))
    addPart(parts, text.slice(at, next ?? text.length))
    at = next
  }
  return parts
}

/** The length of "; level: " or ", then " at the start. */
function prefixLength(part: string): number {
  return LEVEL.exec(part)?.[0].length ?? part.indexOf('[')
}

function addPart(parts: DoseParts, part: string): void {
  const level = LEVEL.exec(part)
  if (level) {
    const name = level[1] === undefined ? (level[2] ?? '') : level[1].replaceAll(/\\(.)/g, '$1')
    parts.levels.push({ level: name, text: unbracketed(part.slice(level[0].length)) })
    return
  }
  parts.thens.push(unbracketed(part.slice(part.indexOf('['))))
}

function unbracketed(text: string): string {
  const trimmed = text.trim()
  return trimmed.startsWith('[') && trimmed.endsWith(']') ? trimmed.slice(1, -1) : trimmed
}

/** Where the next level or bracketed part starts, outside brackets and quotes; null when there is none. */
function nextPart(text: string, from: number): number | null {
  let depth = 0
  for (let at = from; at < text.length; at++) {
    const sign = text[at]
    if (sign === '"' && depth >= 0) at = quoteEnd(text, at)
    else if (depth === 0 && sign === ';' && LEVEL.test(text.slice(at))) return at
    else if (depth === 0 && (sign === ',' || sign === 't') && THEN.test(text.slice(at))) return at
    else if (sign === '[') depth++
    else if (sign === ']') depth--
  }
  return null
}

/** The closing sign of a quote that opens here; the opening sign itself where none closes. */
function quoteEnd(text: string, at: number): number {
  for (let end = at + 1; end < text.length; end++) {
    if (text[end] === '\\') end++
    else if (text[end] === '"') return end
  }
  return at
}
