/**
 * Splits a WebVTT file into its blocks, as the standard's parser does.
 * Source: WebVTT: The Web Video Text Tracks Format, W3C, sections "WebVTT file parsing" and "WebVTT region settings parsing".
 */

/** Line numbers count from 1. */
export interface VttCueBlock {
  kind: 'cue'
  id: string
  timing: string
  timingLine: number
  payload: string[]
}
export type VttBlock =
  | VttCueBlock
  | { kind: 'region'; line: number; settings: string; late: boolean }
  | { kind: 'note' | 'style' | 'header' | 'stray'; line: number }

export interface SplitVtt {
  /** False: the file is no WebVTT file and has no blocks. */
  signature: boolean
  blocks: VttBlock[]
}

/** Splits the text. Never fails: what fits nowhere comes out as a stray block. */
export function splitVtt(text: string): SplitVtt {
  const lines = text
    .replace(/\0/g, '\uFFFD')
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
  if (!/^WEBVTT(?:[ \t]|$)/.test(lines[0] ?? '')) return { signature: false, blocks: [] }
  const blocks: VttBlock[] = []
  let at = 1
  let seenCue = false
  if ((lines[1] ?? '') !== '') {
    const end = endOfHeader(lines)
    if (end > 1) blocks.push({ kind: 'header', line: 2 })
    at = end
  }
  while (at < lines.length) {
    if (lines[at] === '') {
      at++
      continue
    }
    const { block, next } = collectBlock(lines, at, seenCue)
    if (block.kind === 'cue') seenCue = true
    blocks.push(block)
    at = next
  }
  return { signature: true, blocks }
}

/** Index of the first line after the lines that stand directly under the signature. */
function endOfHeader(lines: readonly string[]): number {
  let at = 1
  while (at < lines.length && lines[at] !== '' && !isTiming(lines[at] ?? '')) at++
  return at
}

function collectBlock(lines: readonly string[], start: number, seenCue: boolean): { block: VttBlock; next: number } {
  const first = lines[start] ?? ''
  const timingAt = isTiming(first) ? start : isTiming(lines[start + 1] ?? '') ? start + 1 : null
  const from = timingAt === null ? start : timingAt + 1
  let end = from
  while (end < lines.length && lines[end] !== '' && !isTiming(lines[end] ?? '')) end++
  if (timingAt !== null) {
    const cue: VttCueBlock = {
      kind: 'cue',
      id: timingAt === start ? '' : first,
      timing: lines[timingAt] ?? '',
      timingLine: timingAt + 1,
      payload: lines.slice(from, end),
    }
    return { block: cue, next: end }
  }
  return { block: plainBlock(first, lines.slice(start + 1, end), start + 1, seenCue), next: end }
}

function plainBlock(first: string, rest: readonly string[], line: number, seenCue: boolean): VttBlock {
  if (/^NOTE(?:[ \t]|$)/.test(first)) return { kind: 'note', line }
  if (/^STYLE\s*$/.test(first) && rest.length > 0) return { kind: 'style', line }
  if (/^REGION\s*$/.test(first) && rest.length > 0) {
    return { kind: 'region', line, settings: rest.join('\n'), late: seenCue }
  }
  return { kind: 'stray', line }
}

function isTiming(line: string): boolean {
  return line.includes('-->')
}
