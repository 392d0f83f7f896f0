/** Reads an SRT file: number, times, text, blank line. SRT has no standard; this reads what is in use. */
import { formatClock } from '../../shared/time.ts'
import type { Ms, Stretch } from '../../shared/time.ts'
import type { Transcript } from '../../shared/transcript.ts'
import { decodeReferences, unescapeMarkup } from '../captions/read-cue-text.ts'
import { BadLines } from './bad-lines.ts'
import { PAST_END_MS } from './parse-stamped-text.ts'
import { undoRollUp } from './roll-up.ts'

/** Reads cleaned text. Overlapping captions are fine; numbers are passed over, missing ones too. */
export function parseSrt(text: string, durationMs: Ms | null): Transcript {
  const cues = undoRollUp<{ text: string }, SrtCue>(readCues(text, durationMs))
  const lines = cues.map((cue) => ({
    startMs: cue.startMs,
    endMs: cue.endMs,
    text: cue.lines.map((line) => line.text).join(' '),
    words: [],
    speaker: null,
  }))
  return {
    kind: 'timed',
    form: 'srt',
    language: null,
    durationMs: lines.reduce((latest, line) => Math.max(latest, line.endMs), durationMs ?? 0),
    lines,
  }
}

interface SrtCue extends Stretch {
  lines: { text: string }[]
}

function readCues(text: string, durationMs: Ms | null): SrtCue[] {
  const bad = new BadLines()
  const cues: SrtCue[] = []
  const rows = text.split('\n').map((row) => row.trim())
  let latestMs = 0
  let open: SrtCue | null = null
  rows.forEach((row, index) => {
    const number = index + 1
    if (row === '') {
      open = null
    } else if (row.includes('-->')) {
      const times = readTimes(row)
      if (times === null) bad.add(number, `"${row.slice(0, 60)}" is no time line; write 00:00:01,000 --> 00:00:02,500`)
      else if (times.endMs <= times.startMs) bad.add(number, 'the end does not lie after the start')
      else if (durationMs !== null && times.startMs > durationMs + PAST_END_MS)
        bad.add(number, `starts after the recording's end (${formatClock(durationMs)})`)
      else if (times.startMs < latestMs)
        bad.addBackwards(number, 'the start lies before the start of an earlier caption')
      open = { ...(times ?? { startMs: 0, endMs: 0 }), lines: [] }
      latestMs = Math.max(latestMs, open.startMs)
      cues.push(open)
    } else if (/^\d+$/.test(row) && (rows[index + 1] ?? '').includes('-->')) {
      open = null
    } else if (open) {
      const plain = stripTags(row)
      if (plain !== '') open.lines.push({ text: plain })
    } else {
      bad.add(number, 'text without a time line')
    }
  })
  if (cues.length === 0 && bad.count === 0) bad.add(1, 'the file holds no captions')
  bad.stop('SRT')
  return cues.filter((cue) => cue.lines.length > 0)
}

const STAMP = String.raw`(\d{1,3}):([0-5]\d):([0-5]\d)[,.](\d{1,3})`
const TIME_LINE = new RegExp(String.raw`^${STAMP}[ \t]*-->[ \t]*${STAMP}(?:[ \t].*)?$`)

/** `00:01:02,500 --> 00:01:04,000`; one to three digits of hours, a full stop for the comma, places after it. */
function readTimes(row: string): Stretch | null {
  const match = TIME_LINE.exec(row)
  if (!match) return null
  const ms = (from: number) =>
    (Number(match[from]) * 3600 + Number(match[from + 1]) * 60 + Number(match[from + 2])) * 1000 +
    Number((match[from + 3] ?? '').padEnd(3, '0'))
  return { startMs: ms(1), endMs: ms(5) }
}

/** Takes out the tags in use (`<i>`, `<font …>`, `{\an8}`) and decodes character references. */
function stripTags(row: string): string {
  const plain = row.replace(/<\/?(?:[biusc]|font|span)(?:[ .][^<>]*)?>/gi, '').replace(/\{\\[^{}]*\}/g, '')
  return unescapeMarkup(decodeReferences(plain)).replace(/\s+/g, ' ').trim()
}
