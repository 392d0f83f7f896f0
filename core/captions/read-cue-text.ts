/** Turns the parsed tree of a caption's text into plain runs: text, who says it, and when. */
import type { Ms } from '../../shared/time.ts'
import { HTML_ENTITIES, HTML_ENTITIES_WITHOUT_SEMICOLON } from './html-entities.ts'
import type { VttNode } from './vtt-types.ts'

/** A run of text with one speaker and one time stamp before it. */
export interface VttRun {
  text: string
  voice: string | null
  /** The inner time stamp before the run; null = from the caption's start. */
  atMs: Ms | null
}

/** Runs in reading order. Ruby notes are left out, as in the standard's rule for chapter titles. */
export function flattenCueText(nodes: readonly VttNode[]): VttRun[] {
  const runs: VttRun[] = []
  let atMs: Ms | null = null
  const walk = (list: readonly VttNode[], voice: string | null): void => {
    for (const node of list) {
      if (node.type === 'timestamp') atMs = Math.round(node.value * 1000)
      else if (node.type === 'text') addRun(runs, { text: node.value, voice, atMs })
      else if (node.name !== 'rt')
        walk(node.children, node.name === 'v' && node.value ? unescapeMarkup(node.value) : voice)
    }
  }
  walk(nodes, null)
  return runs
}

/**
 * Replaces every character reference by what it stands for, and writes what would be markup as `&amp;`, `&lt;`, `&gt;`.
 * The package then meets these three only: by itself it knows no hexadecimal letters, and is slow on unknown names.
 * Source: HTML Standard, "Named character reference state" and "Numeric character reference end state".
 */
export function decodeReferences(text: string): string {
  return text.replace(/&(?:#(?:[xX]([0-9a-fA-F]+)|(\d+));?|([A-Za-z][A-Za-z0-9]*)(;?)|)/g, (whole, ...groups) => {
    const [hex, decimal, name, end] = groups as (string | undefined)[]
    if (hex !== undefined) return escapeMarkup(fromCodePoint(parseInt(hex, 16)))
    if (decimal !== undefined) return escapeMarkup(fromCodePoint(Number(decimal)))
    return escapeMarkup(name === undefined ? whole : decodeName(name, end ?? ''))
  })
}

/** Turns the three escapes back into characters. */
export function unescapeMarkup(text: string): string {
  return text.replace(/&(amp|lt|gt);/g, (_, name: string) => ({ amp: '&', lt: '<', gt: '>' })[name] ?? '')
}

export function escapeMarkup(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')
}

const LONGEST_SHORT_NAME = 6

function decodeName(name: string, end: string): string {
  const exact = end === ';' ? HTML_ENTITIES.get(name) : undefined
  if (exact !== undefined) return exact
  for (let length = Math.min(LONGEST_SHORT_NAME, name.length); length > 1; length--) {
    const short = name.slice(0, length)
    if (HTML_ENTITIES_WITHOUT_SEMICOLON.has(short))
      return `${HTML_ENTITIES.get(short) ?? ''}${name.slice(length)}${end}`
  }
  return `&${name}${end}`
}

/** 0x80 to 0x9F mean the characters of windows-1252; 0 = no such character there. */
const WINDOWS_1252 = [
  0x20ac, 0, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0, 0x017d, 0, 0,
  0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a, 0x0153, 0, 0x017e, 0x0178,
]

function fromCodePoint(code: number): string {
  const surrogate = code >= 0xd800 && code <= 0xdfff
  if (code === 0 || code > 0x10ffff || surrogate || Number.isNaN(code)) return '\uFFFD'
  if (code >= 0x80 && code <= 0x9f) return String.fromCodePoint(WINDOWS_1252[code - 0x80] || code)
  return String.fromCodePoint(code)
}

function addRun(runs: VttRun[], run: VttRun): void {
  const last = runs.at(-1)
  if (last && last.voice === run.voice && last.atMs === run.atMs) last.text += run.text
  else runs.push(run)
}
