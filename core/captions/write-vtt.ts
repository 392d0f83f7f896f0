/**
 * Writes WebVTT. No STYLE and no REGION block: ffmpeg 5.1 reads no cue of a file that has one.
 * Source of the rules: WebVTT: The Web Video Text Tracks Format, W3C, sections "WebVTT file structure" and
 * "WebVTT caption or subtitle cue text".
 */
import type { CaptionCue } from '../../shared/captions.ts'
import { AppError } from '../../shared/errors.ts'
import type { Ms } from '../../shared/time.ts'
import { escapeMarkup } from './read-cue-text.ts'

/**
 * Text of a caption file, sorted by time, ids unique, line ends \n. A caption without text is left out.
 * @throws AppError internal when an end does not lie after its start.
 */
export function writeVtt(cues: readonly CaptionCue[]): string {
  const ids = new Set<string>()
  const blocks = sortCues(cues).flatMap((cue) => {
    const lines = cue.lines.flatMap(plainLines)
    if (lines.length === 0) return []
    if (!(cue.endMs > cue.startMs)) {
      throw new AppError('internal', `A caption ends at ${cue.endMs} ms, not after its start at ${cue.startMs} ms.`)
    }
    const id = uniqueId(cue.id ?? '', ids)
    const times = `${formatVttTime(cue.startMs)} --> ${formatVttTime(cue.endMs)}`
    const voice = voiceTag(cue.speaker ?? '')
    return [[...(id === '' ? [] : [id]), times, voice + lines.map(escapeMarkup).join('\n')].join('\n')]
  })
  return `WEBVTT\n\n${blocks.map((block) => `${block}\n`).join('\n')}`
}

/** `HH:MM:SS.mmm`, hours always, two digits or more. */
export function formatVttTime(ms: Ms): string {
  const pad = (value: number, digits: number) => String(value).padStart(digits, '0')
  const hours = pad(Math.floor(ms / 3_600_000), 2)
  const minutes = pad(Math.floor(ms / 60_000) % 60, 2)
  return `${hours}:${minutes}:${pad(Math.floor(ms / 1000) % 60, 2)}.${pad(ms % 1000, 3)}`
}

/** By start, longer first; the order of the list decides the rest. */
export function sortCues<Cue extends { startMs: Ms; endMs: Ms }>(cues: readonly Cue[]): Cue[] {
  return [...cues].sort((a, b) => a.startMs - b.startMs || b.endMs - a.endMs)
}

/** Lines without control characters, without spaces around them, none blank. */
export function plainLines(text: string): string[] {
  return text
    .split(/\r\n|[\n\r\v\f\u0085\u2028\u2029]/)
    .map((line) =>
      line
        .replace(CONTROLS, '')
        .replace(/\p{Surrogate}/gu, '\uFFFD')
        .trim(),
    )
    .filter((line) => line !== '')
}

/** Control characters but for the tab. */
const CONTROLS = /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\uFEFF]/g

/** One line, no arrow, never the first word of another kind of block. */
function uniqueId(wanted: string, taken: Set<string>): string {
  const plain = plainLines(wanted).join(' ').replaceAll('-->', '->')
  if (plain === '') return ''
  const base = /^(?:NOTE|STYLE|REGION|WEBVTT)\b/.test(plain) ? `c-${plain}` : plain
  let id = base
  for (let count = 2; taken.has(id); count++) id = `${base}-${count}`
  taken.add(id)
  return id
}

/** A voice span over the whole caption needs no end tag. */
function voiceTag(speaker: string): string {
  const name = plainLines(speaker).join(' ').replace(/\s+/g, ' ')
  return name === '' ? '' : `<v ${escapeMarkup(name)}>`
}
