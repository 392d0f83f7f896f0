/** Reads JSON with timed words or segments: `{words: […]}`, `{segments: […]}` or a bare list of either. */
import { AppError } from '../../shared/errors.ts'
import { formatClock } from '../../shared/time.ts'
import type { Ms } from '../../shared/time.ts'
import type { TimedWord, Transcript, TranscriptLine } from '../../shared/transcript.ts'
import { BadLines } from './bad-lines.ts'
import { groupWords } from './group-words.ts'
import { objectLines, orderObjects } from './json-lines.ts'
import { PAST_END_MS } from './parse-stamped-text.ts'

/**
 * Reads cleaned text. `start`, `end`, `duration` are seconds; `startMs`, `endMs`, `durationMs` milliseconds.
 * A word's text is `text` or `word`. Words are grouped to lines at pauses and sentence ends; a segment is a line, and
 * keeps its words when they are the words of its text.
 */
export function parseWords(text: string, durationMs: Ms | null): Transcript {
  const root = parseJson(text)
  const bad = new BadLines()
  const lineOf = lineFinder(text, root)
  const { words, segments } = findLists(root)
  const givenMs = durationMs ?? readTime(root, 'duration')
  const read: ReadItem = { lineOf, bad, durationMs: givenMs }
  const lines = segments ? readSegments(segments, read) : groupWords(readWords(words ?? [], read))
  if (lines.length === 0 && bad.count === 0) bad.add(1, 'no words found; write {"words": [{"start", "end", "text"}]}')
  bad.stop('JSON with words')
  return {
    kind: 'timed',
    form: 'words-json',
    language: isRecord(root) && typeof root.language === 'string' ? root.language : null,
    durationMs: lines.reduce((latest, line) => Math.max(latest, line.endMs), givenMs ?? 0),
    lines,
  }
}

interface ReadItem {
  lineOf: (item: object) => number
  bad: BadLines
  durationMs: Ms | null
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (cause) {
    const said = (cause as Error).message
    const position = /position (\d+)/.exec(said)?.[1]
    // Without a position the text breaks off at its end.
    const at = position === undefined ? text.trimEnd().length : Number(position)
    const line = text.slice(0, at).split('\n').length
    throw new AppError(
      'transcript-line',
      'The transcript starts like JSON but is none. Correct the line named below.',
      {
        details: [`line ${line}: ${said}`],
        cause,
      },
    )
  }
}

/** Lines are looked up only when something is wrong. */
function lineFinder(text: string, root: unknown): (item: object) => number {
  let lines: Map<object, number> | null = null
  return (item) => {
    if (lines === null) {
      const numbers = objectLines(text)
      lines = new Map(orderObjects(root).map((object, index) => [object, numbers[index] ?? 1]))
    }
    return lines.get(item) ?? 1
  }
}

function findLists(root: unknown): { words?: unknown[]; segments?: unknown[] } {
  if (Array.isArray(root)) {
    const items: unknown[] = root
    const nested = items.some((item) => isRecord(item) && Array.isArray(item.words))
    const sentences = items.every((item) => isRecord(item) && typeof item.text === 'string')
    const longer = items.some(
      (item) => isRecord(item) && /\S\s+\S/.test(typeof item.text === 'string' ? item.text : ''),
    )
    return nested || (sentences && longer) ? { segments: items } : { words: items }
  }
  if (!isRecord(root)) return {}
  const words: unknown[] | null = Array.isArray(root.words) ? root.words : null
  const segments: unknown[] | null = Array.isArray(root.segments) ? root.segments : null
  if (segments && segments.length > 0) return { segments }
  return { words: words ?? [] }
}

function readSegments(items: readonly unknown[], read: ReadItem): TranscriptLine[] {
  let latestMs = 0
  return items.flatMap((item) => {
    const timed = readItem(item, latestMs, read)
    if (!timed || !isRecord(item)) return []
    latestMs = timed.startMs
    const words = Array.isArray(item.words) ? readWords(item.words, read) : []
    const text = timed.text || words.map((word) => word.text).join(' ')
    const speaker = typeof item.speaker === 'string' && item.speaker.trim() !== '' ? item.speaker.trim() : null
    if (text === '') return []
    return [{ ...timed, text, words: areWordsOf(words, text) ? words : [], speaker }]
  })
}

function readWords(items: readonly unknown[], read: ReadItem): TimedWord[] {
  let latestMs = 0
  return items.flatMap((item) => {
    const word = readItem(item, latestMs, read)
    if (!word) return []
    latestMs = word.startMs
    return word.text === '' ? [] : [word]
  })
}

function readItem(item: unknown, latestMs: Ms, { lineOf, bad, durationMs }: ReadItem): TimedWord | null {
  if (!isRecord(item)) {
    bad.add(1, 'something else stands where an object with start, end and text must stand')
    return null
  }
  const startMs = readTime(item, 'start')
  const endMs = readTime(item, 'end')
  const text = typeof item.text === 'string' ? item.text : item.word
  if (startMs === null || endMs === null) bad.add(lineOf(item), 'start and end must be numbers, 0 or more')
  else if (typeof text !== 'string' && !Array.isArray(item.words)) bad.add(lineOf(item), 'a text is missing')
  else if (endMs < startMs) bad.add(lineOf(item), 'the end lies before the start')
  else if (durationMs !== null && startMs > durationMs + PAST_END_MS)
    bad.add(lineOf(item), `starts after the recording's end (${formatClock(durationMs)})`)
  else if (startMs < latestMs) bad.addBackwards(lineOf(item), 'the start lies before the start of the item above')
  else return { startMs, endMs, text: typeof text === 'string' ? text.replace(/\s+/g, ' ').trim() : '' }
  return null
}

/** `name` in seconds or `nameMs` in milliseconds. */
function readTime(item: unknown, name: 'start' | 'end' | 'duration'): Ms | null {
  if (!isRecord(item)) return null
  const ms = item[`${name}Ms`]
  const seconds = item[name]
  const value = typeof ms === 'number' ? ms : typeof seconds === 'number' ? seconds * 1000 : null
  return value === null || !Number.isFinite(value) || value < 0 ? null : Math.round(value)
}

/** True when the words stand in the text, in order, with nothing but spaces and punctuation between them. */
function areWordsOf(words: readonly TimedWord[], text: string): boolean {
  let at = 0
  for (const word of words) {
    const found = text.indexOf(word.text, at)
    if (found < 0 || /[\p{L}\p{N}]/u.test(text.slice(at, found))) return false
    at = found + word.text.length
  }
  return words.length > 0 && !/[\p{L}\p{N}]/u.test(text.slice(at))
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
