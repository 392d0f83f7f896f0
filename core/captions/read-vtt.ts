/**
 * Reads WebVTT. Blocks are split by our own reading of the standard; time lines and caption text go through the
 * package webvtt-parser, which has no regions, accepts a wrong signature and stops at header lines when used whole.
 */
import webvtt from 'webvtt-parser'
import type { CaptionCue } from '../../shared/captions.ts'
import type { VttRun } from './read-cue-text.ts'
import { decodeReferences, flattenCueText } from './read-cue-text.ts'
import type { VttRegion } from './read-vtt-region.ts'
import { readRegion } from './read-vtt-region.ts'
import type { VttCueBlock } from './split-vtt.ts'
import { splitVtt } from './split-vtt.ts'
import type { ParsedTimings, VttNode } from './vtt-types.ts'

/** signature, lost: something was not read. order, end: times break the rules. untidy: read, but not as one may write it. */
export type VttProblemKind = 'signature' | 'lost' | 'order' | 'end' | 'untidy'
export interface VttProblem {
  line: number
  kind: VttProblemKind
  message: string
}

export interface VttSettings {
  vertical: '' | 'rl' | 'lr'
  line: number | 'auto'
  snapToLines: boolean
  lineAlign: ParsedTimings['lineAlign']
  position: number | 'auto'
  positionAlign: ParsedTimings['positionAlign']
  size: number
  align: ParsedTimings['alignment']
  region: VttRegion | null
}

/** A caption as read: the plain model, and all the file says beyond it. */
export interface VttCue extends CaptionCue {
  id: string
  speaker: string | null
  /** Line of the file that holds the times, from 1. */
  fileLine: number
  /** Text as it stands in the file. */
  raw: string
  settings: VttSettings
  /** Parsed text; null when its tags nest deeper than anything a person writes. */
  nodes: VttNode[] | null
  runs: VttRun[]
}

export interface VttFile {
  /** In the order browsers show them: by start, longer first, then as in the file. */
  cues: VttCue[]
  regions: VttRegion[]
  problems: VttProblem[]
}

/** Reads a whole file. Never throws: what is wrong comes back by line. A wrong signature gives no cues. */
export function readVtt(text: string): VttFile {
  const { signature, blocks } = splitVtt(text)
  const file: VttFile = { cues: [], regions: [], problems: [] }
  const report = (line: number, kind: VttProblemKind, message: string) => file.problems.push({ line, kind, message })
  if (!signature) report(1, 'signature', 'the file must start with WEBVTT')
  let latestStart = 0
  const ids = new Set<string>()
  for (const block of blocks) {
    if (block.kind === 'header') report(block.line, 'untidy', 'a blank line must follow the WEBVTT line')
    if (block.kind === 'stray') report(block.line, 'lost', 'text without a time line')
    if (block.kind === 'style' && file.cues.length > 0)
      report(block.line, 'untidy', 'a style block after the first cue')
    if (block.kind === 'region') {
      if (!block.late) file.regions.push(readRegion(block.settings))
      else report(block.line, 'untidy', 'a region block after the first cue')
    }
    if (block.kind !== 'cue') continue
    const cue = readCue(block, file.regions, report)
    if (!cue) continue
    if (cue.startMs < latestStart) report(cue.fileLine, 'order', 'the start lies before the start of an earlier cue')
    if (cue.endMs <= cue.startMs) report(cue.fileLine, 'end', 'the end does not lie after the start')
    if (cue.id !== '' && ids.has(cue.id)) report(cue.fileLine, 'untidy', `the id "${cue.id}" is used twice`)
    ids.add(cue.id)
    latestStart = Math.max(latestStart, cue.startMs)
    file.cues.push(cue)
  }
  file.cues.sort((a, b) => a.startMs - b.startMs || b.endMs - a.endMs)
  return file
}

type Report = (line: number, kind: VttProblemKind, message: string) => void

function readCue(block: VttCueBlock, regions: readonly VttRegion[], report: Report): VttCue | null {
  const { timing, regionId } = takeRegion(block.timing)
  const parsed: ParsedTimings = { ...DEFAULTS }
  const said: string[] = []
  const timings = new webvtt.WebVTTCueTimingsAndSettingsParser(timing, (message) => said.push(message))
  if (!timings.parse(parsed, 0)) {
    report(block.timingLine, 'lost', `the times cannot be read: ${said.at(-1) ?? 'unknown form'}`)
    return null
  }
  for (const message of said) {
    if (!message.startsWith('End timestamp')) report(block.timingLine, 'untidy', message)
  }
  const raw = block.payload.join('\n')
  const nodes = parseCueText(raw, parsed, (message) => report(block.timingLine + 1, 'untidy', message))
  if (nodes === null) report(block.timingLine + 1, 'lost', 'the tags of the text are nested too deep')
  const runs = nodes === null ? [] : flattenCueText(nodes)
  return {
    startMs: Math.round(parsed.startTime * 1000),
    endMs: Math.round(parsed.endTime * 1000),
    lines: plainLines(runs.map((run) => run.text).join('')),
    speaker: onlyVoice(runs),
    id: block.id,
    fileLine: block.timingLine,
    raw,
    settings: readSettings(parsed, regionId, regions),
    nodes,
    runs,
  }
}

const DEFAULTS: ParsedTimings = {
  startTime: 0,
  endTime: 0,
  direction: 'horizontal',
  snapToLines: true,
  linePosition: 'auto',
  lineAlign: 'start',
  textPosition: 'auto',
  positionAlign: 'auto',
  size: 100,
  alignment: 'center',
}

/** Takes the region settings out of a time line; the last one counts. */
function takeRegion(timing: string): { timing: string; regionId: string | null } {
  let regionId: string | null = null
  const rest = timing.replace(/(?<=[ \t\f])region:([^ \t\f]*)/g, (_, id: string) => {
    if (id !== '') regionId = id
    return ''
  })
  return { timing: rest, regionId }
}

function parseCueText(raw: string, times: ParsedTimings, onError: (message: string) => void): VttNode[] | null {
  if (!/[<&]/.test(raw)) return raw === '' ? [] : [{ type: 'text', value: raw }]
  try {
    const text = decodeReferences(raw)
    const parser = new webvtt.WebVTTCueTextParser(text, onError, undefined, ESCAPES)
    return parser.parse(times.startTime, times.endTime).children as VttNode[]
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}

/** The only references left in decoded text. */
const ESCAPES = { '&amp;': '&', '&lt;': '<', '&gt;': '>' }

function readSettings(parsed: ParsedTimings, regionId: string | null, regions: readonly VttRegion[]): VttSettings {
  const vertical = parsed.direction === 'horizontal' ? '' : parsed.direction
  // A cue that is placed by itself drops out of its region (section "WebVTT timings and settings parsing").
  const placed = vertical !== '' || parsed.linePosition !== 'auto' || parsed.size !== 100
  return {
    vertical,
    line: parsed.linePosition,
    snapToLines: parsed.snapToLines,
    lineAlign: parsed.lineAlign,
    position: parsed.textPosition,
    positionAlign: parsed.positionAlign,
    size: parsed.size,
    align: parsed.alignment,
    region: placed ? null : (regions.findLast((region) => region.id === regionId) ?? null),
  }
}

function plainLines(text: string): string[] {
  return text
    .split('\n')
    .map(trimBlanks)
    .filter((line) => line !== '')
}

/** Without spaces and tabs at both ends. (A pattern for the end of a line would take quadratic time on long blanks.) */
function trimBlanks(line: string): string {
  const blank = (index: number) => line[index] === ' ' || line[index] === '\t'
  let start = 0
  let end = line.length
  while (start < end && blank(start)) start++
  while (end > start && blank(end - 1)) end--
  return line.slice(start, end)
}

function onlyVoice(runs: readonly VttRun[]): string | null {
  const voices = new Set(runs.filter((run) => run.text.trim() !== '').map((run) => run.voice))
  return voices.size === 1 ? ([...voices][0] ?? null) : null
}
