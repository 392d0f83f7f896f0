/** Reads text in blocks that start with a stamp: `[m:ss] text` or `[h:mm:ss] text`. */
import { formatClock, parseClock } from '../../shared/time.ts'
import type { Ms } from '../../shared/time.ts'
import type { Transcript, TranscriptLine } from '../../shared/transcript.ts'
import { BadLines } from './bad-lines.ts'

/** How far a stamp may lie past the recording's end before it counts as an error. */
export const PAST_END_MS = 2000

/**
 * Reads cleaned text. Lines without a stamp belong to the block above; blank lines and lines starting with # before
 * the first block are skipped. A block ends where the next begins. The last ends at the recording's end; where that
 * is unknown, at an estimate: its words at the pace of the blocks before it, or at 150 words a minute
 * (common practice for a talking pace, no source) when there are fewer than three.
 */
export function parseStampedText(text: string, durationMs: Ms | null): Transcript {
  const blocks = collectBlocks(text, durationMs)
  const lines = timeBlocks(blocks, durationMs)
  return {
    kind: 'timed',
    form: 'stamped-text',
    language: null,
    durationMs: Math.max(durationMs ?? 0, lines.at(-1)?.endMs ?? 0),
    lines,
  }
}

interface Block {
  startMs: Ms
  text: string
}

function collectBlocks(text: string, durationMs: Ms | null): Block[] {
  const bad = new BadLines()
  const blocks: { startMs: Ms; parts: string[] }[] = []
  let latestMs = 0
  text.split('\n').forEach((raw, index) => {
    const line = raw.trim()
    if (line === '') return
    const stamp = /^\[[ \t]*(\d+:[\d:.,]*)[ \t]*\]/.exec(line)
    if (!stamp) {
      const block = blocks.at(-1)
      if (block) block.parts.push(line)
      else if (!line.startsWith('#') && bad.count === 0) bad.add(index + 1, 'text before the first time stamp')
      return
    }
    const startMs = parseClock(stamp[1] ?? '')
    if (startMs === null) {
      bad.add(index + 1, `"${stamp[0]}" is no time; write [m:ss] or [h:mm:ss]`)
      return
    }
    if (startMs < latestMs) {
      bad.addBackwards(index + 1, `${stamp[0]} lies before [${formatClock(latestMs)}] above it`)
    }
    if (durationMs !== null && startMs > durationMs + PAST_END_MS) {
      bad.add(index + 1, `${stamp[0]} lies after the recording's end (${formatClock(durationMs)})`)
    }
    latestMs = Math.max(latestMs, startMs)
    blocks.push({ startMs, parts: [line.slice(stamp[0].length).trim()] })
  })
  bad.stop('stamped text')
  return blocks
    .map(({ startMs, parts }) => ({ startMs, text: parts.filter((part) => part !== '').join(' ') }))
    .filter((block, index, all) => block.text !== '' || index < all.length - 1)
}

/** Gives each block its end; blocks with the same stamp share their time by length of text. Empty blocks only end others. */
function timeBlocks(blocks: readonly Block[], durationMs: Ms | null): TranscriptLine[] {
  const lines: TranscriptLine[] = []
  let at = 0
  while (at < blocks.length) {
    const startMs = blocks[at]?.startMs ?? 0
    let next = at
    while (next < blocks.length && blocks[next]?.startMs === startMs) next++
    const group = blocks.slice(at, next)
    const endMs = blocks[next]?.startMs ?? lastEnd(group, lines, durationMs)
    for (const line of shareTime(group, startMs, endMs)) lines.push(line)
    at = next
  }
  return lines
}

function shareTime(group: readonly Block[], startMs: Ms, endMs: Ms): TranscriptLine[] {
  const total = group.reduce((sum, block) => sum + block.text.length, 0)
  let before = 0
  const place = () => startMs + Math.round(((endMs - startMs) * before) / Math.max(1, total))
  return group.flatMap((block) => {
    const from = place()
    before += block.text.length
    return block.text === '' ? [] : [{ startMs: from, endMs: place(), text: block.text, words: [], speaker: null }]
  })
}

const WORDS_PER_SECOND = 2.5

function lastEnd(group: readonly Block[], earlier: readonly TranscriptLine[], durationMs: Ms | null): Ms {
  const startMs = group[0]?.startMs ?? 0
  if (durationMs !== null && durationMs > startMs) return durationMs
  const spokenMs = earlier.reduce((sum, line) => sum + line.endMs - line.startMs, 0)
  const spokenWords = earlier.reduce((sum, line) => sum + countWords(line.text), 0)
  const pace = earlier.length >= 3 && spokenMs > 0 ? spokenWords / (spokenMs / 1000) : WORDS_PER_SECOND
  const words = group.reduce((sum, block) => sum + countWords(block.text), 0)
  return startMs + Math.max(1000, Math.round((words / Math.min(4, Math.max(1, pace))) * 1000))
}

function countWords(text: string): number {
  return text.match(/\S+/g)?.length ?? 0
}
