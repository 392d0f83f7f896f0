/** Reads a WebVTT file as a transcript: speakers from voice spans, word times from inner time stamps. */
import type { VttCue, VttProblem } from '../captions/read-vtt.ts'
import { readVtt } from '../captions/read-vtt.ts'
import { formatClock } from '../../shared/time.ts'
import type { Ms, Stretch } from '../../shared/time.ts'
import type { TimedWord, Transcript, TranscriptLine } from '../../shared/transcript.ts'
import { BadLines } from './bad-lines.ts'
import { PAST_END_MS } from './parse-stamped-text.ts'
import { undoRollUp } from './roll-up.ts'

/** Reads cleaned text. Header lines, styles, regions and settings are passed over; overlapping captions are fine. */
export function parseVtt(text: string, durationMs: Ms | null): Transcript {
  const { cues, problems } = readVtt(text)
  const bad = new BadLines()
  for (const problem of problems) addProblem(bad, problem)
  for (const cue of cues) {
    if (durationMs !== null && cue.startMs > durationMs + PAST_END_MS) {
      bad.add(cue.fileLine, `starts after the recording's end (${formatClock(durationMs)})`)
    }
  }
  if (cues.length === 0 && bad.count === 0) bad.add(1, 'the file holds no captions')
  bad.stop('WebVTT')
  const rolled = undoRollUp<CueLine, CueByLine>(cues.map(cueByLine).filter((cue) => cue.lines.length > 0))
  const lines = rolled.flatMap(splitByVoice)
  return {
    kind: 'timed',
    form: 'webvtt',
    language: null,
    durationMs: lines.reduce((latest, line) => Math.max(latest, line.endMs), durationMs ?? 0),
    lines,
  }
}

function addProblem(bad: BadLines, { line, kind, message }: VttProblem): void {
  if (kind === 'order') bad.addBackwards(line, message)
  else if (kind !== 'untidy') bad.add(line, message)
}

/** One shown line of a caption: pieces with their speaker and the time stamp before them. */
interface CueLine {
  text: string
  pieces: { text: string; voice: string | null; atMs: Ms | null }[]
}
interface CueByLine extends Stretch {
  lines: CueLine[]
}

function cueByLine(cue: VttCue): CueByLine {
  const lines: CueLine['pieces'][] = [[]]
  for (const run of cue.runs) {
    run.text.split('\n').forEach((text, index) => {
      if (index > 0) lines.push([])
      if (text !== '') lines.at(-1)?.push({ ...run, text })
    })
  }
  return {
    startMs: cue.startMs,
    endMs: cue.endMs,
    lines: lines
      .map((pieces) => ({ text: oneLine(pieces.map((piece) => piece.text).join('')), pieces }))
      .filter((line) => line.text !== ''),
  }
}

/** One transcript line a speaker; where a caption has several, they share its time by length of text. */
function splitByVoice(cue: CueByLine): TranscriptLine[] {
  const turns: { voice: string | null; pieces: CueLine['pieces'] }[] = []
  for (const line of cue.lines) {
    line.pieces.forEach((piece, index) => {
      const last = turns.at(-1)
      // A line end is a space between words.
      const spaced = index === 0 ? { ...piece, text: ` ${piece.text}` } : piece
      if (last && last.voice === piece.voice) last.pieces.push(spaced)
      else turns.push({ voice: piece.voice, pieces: [spaced] })
    })
  }
  const texts = turns.map((turn) => oneLine(turn.pieces.map((piece) => piece.text).join('')))
  const total = texts.reduce((sum, text) => sum + text.length, 0)
  let before = 0
  const place = () => cue.startMs + Math.round(((cue.endMs - cue.startMs) * before) / Math.max(1, total))
  return turns.flatMap((turn, index) => {
    const text = texts[index] ?? ''
    const startMs = place()
    before += text.length
    const span = { startMs, endMs: place() }
    return text === '' ? [] : [{ ...span, text, words: readWords(turn.pieces, span), speaker: turn.voice }]
  })
}

/** Words with times, where the caption has inner time stamps; a piece of several words shares its time by length. */
function readWords(pieces: CueLine['pieces'], span: Stretch): TimedWord[] {
  if (!pieces.some((piece) => piece.atMs !== null)) return []
  return pieces.flatMap((piece, index) => {
    const startMs = clamp(piece.atMs ?? span.startMs, span)
    const following = pieces.slice(index + 1, index + 9).find((next) => next.atMs !== null && next.atMs > startMs)
    const endMs = clamp(following?.atMs ?? span.endMs, span)
    const text = piece.text.trim()
    const perCharacter = (endMs - startMs) / Math.max(1, text.length)
    return [...text.matchAll(/\S+/g)].map((match) => ({
      startMs: Math.round(startMs + match.index * perCharacter),
      endMs: Math.round(startMs + (match.index + match[0].length) * perCharacter),
      text: match[0],
    }))
  })
}

function clamp(ms: Ms, { startMs, endMs }: Stretch): Ms {
  return Math.min(endMs, Math.max(startMs, ms))
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim()
}
