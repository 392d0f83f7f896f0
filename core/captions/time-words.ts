/** Takes a transcript apart into words with times, in runs of one speaker. */
import type { Ms } from '../../shared/time.ts'
import type { Transcript, TranscriptLine } from '../../shared/transcript.ts'
import { placeWords } from '../transcript/place-quote.ts'

/** A word as shown. `endsLine` = the transcript's own caption or line ended here, and its times are exact there. */
export interface CaptionWord {
  text: string
  startMs: Ms
  endMs: Ms
  endsLine: boolean
}

export interface SpeakerRun {
  speaker: string | null
  words: CaptionWord[]
  /** False for blocks of half a minute: times inside are in step with the letters and only roughly right. */
  exact: boolean
}

/** Runs in order of time. A line that overlaps the next ends where the next starts. */
export function timeWords(transcript: Transcript): SpeakerRun[] {
  const lines = [...transcript.lines].sort((a, b) => a.startMs - b.startMs)
  const exactForm = transcript.form !== 'stamped-text'
  const runs: SpeakerRun[] = []
  lines.forEach((line, index) => {
    const nextStart = lines[index + 1]?.startMs ?? Infinity
    const endMs = nextStart > line.startMs ? Math.min(line.endMs, nextStart) : line.endMs
    const words = wordsOf({ ...line, endMs }, exactForm)
    const exact = exactForm || line.words.length > 0
    const run = runs.at(-1)
    if (run && run.speaker === line.speaker && run.exact === exact) run.words.push(...words)
    else runs.push({ speaker: line.speaker, words, exact })
  })
  return runs.filter((run) => run.words.length > 0)
}

function wordsOf(line: TranscriptLine, exactForm: boolean): CaptionWord[] {
  const place = placer(line)
  const words = [...line.text.matchAll(/\S+/g)].map((match) => ({
    text: match[0],
    startMs: place(match.index, 'start'),
    endMs: place(match.index + match[0].length, 'end'),
    endsLine: false,
  }))
  const last = words.at(-1)
  if (last) last.endsLine = exactForm
  return words
}

/** The time of an offset; offsets must come in rising order, so that long lines stay fast. */
function placer(line: TranscriptLine): (offset: number, side: 'start' | 'end') => Ms {
  const placed = placeWords(line)
  if (placed.length === 0) {
    const perCharacter = (line.endMs - line.startMs) / Math.max(1, line.text.length)
    return (offset) => line.startMs + Math.round(offset * perCharacter)
  }
  let at = 0
  let latest = line.startMs
  return (offset, side) => {
    const character = side === 'start' ? offset : offset - 1
    while (at < placed.length - 1 && character > lastCharacter(placed[at])) at++
    const word = placed[at]
    if (word) latest = Math.max(latest, side === 'start' ? word.word.startMs : word.word.endMs)
    return latest
  }
}

function lastCharacter(placed: { offset: number; word: { text: string } } | undefined): number {
  return placed ? placed.offset + placed.word.text.length - 1 : Infinity
}
