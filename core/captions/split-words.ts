/**
 * Splits the words of one speaker into captions: one sentence each where it fits, long ones at the end of a clause,
 * short ones together so that each can be read (BBC Subtitle Guidelines v1.2.5, 3.2, 3.9, 4.1).
 * The cheapest split of all is found word by word; the weights are our own.
 */
import { BREAK, breakCost } from './judge-break.ts'
import type { CaptionProfile } from './profiles.ts'
import { CAPTION_TIMES, shortestMs } from './profiles.ts'
import type { CaptionWord, SpeakerRun } from './time-words.ts'

const COST = {
  caption: 1,
  /** Two sentences in one caption. */
  innerSentence: 2,
  /** All of the shortest time missing. */
  tooShort: 8,
  /** A part of a sentence of less than half a line. */
  scrap: 2,
  /** All of the longest time over: in exact times, and in rough ones. */
  tooLong: 60,
  tooLongRough: 2,
  /** Share of the cost of the line ends inside the caption. */
  lineEnds: 0.5,
} as const

/** A pause that parts captions whatever the words say, and one that makes a good break. */
const PAUSE_MS = CAPTION_TIMES.minGapMs.value
const SHORT_PAUSE_MS = 300

/** Groups of words, in order; every word is in exactly one. Time grows in step with the number of words. */
export function splitWords(run: SpeakerRun, profile: CaptionProfile): CaptionWord[][] {
  const { words } = run
  const after = words.map((word, index) => costAfter(word, words[index + 1]))
  const lengths = words.map((word) => word.text.length)
  // best[n] = lowest cost of the first n words; from[n] = where their last caption starts.
  const best = new Float64Array(words.length + 1).fill(Infinity)
  const from = new Uint32Array(words.length + 1)
  best[0] = 0
  for (let start = 0; start < words.length; start++) {
    const before = best[start] ?? Infinity
    for (const { end, cost, lines } of captionsFrom(start, run, after, profile)) {
      const known = best[end] ?? Infinity
      // The line ends cost most to weigh, so they come last.
      if (before + cost >= known) continue
      const total = before + cost + lineEnds(start, end, after, lengths, profile, lines) * COST.lineEnds
      if (total >= known) continue
      best[end] = total
      from[end] = start
    }
  }
  const groups: CaptionWord[][] = []
  for (let end = words.length; end > 0; end = from[end] ?? 0) groups.push(words.slice(from[end], end))
  return groups.reverse()
}

/** What ending a caption after a word costs. Never forbidden: a run always has a split. */
function costAfter(word: CaptionWord, next: CaptionWord | undefined): number {
  if (!next) return BREAK.sentence
  const pauseMs = next.startMs - word.endMs
  const cost = breakCost(word.text, next.text)
  if (pauseMs >= PAUSE_MS) return BREAK.sentence
  if (pauseMs >= SHORT_PAUSE_MS) return Math.min(cost, BREAK.clause)
  return word.endsLine ? Math.min(cost, BREAK.beforeConjunction) : cost
}

/** Every caption that can start at a word: it fits the lines and holds no long pause. The first word always may stand alone. */
function captionsFrom(
  start: number,
  { words, exact }: SpeakerRun,
  after: readonly number[],
  profile: CaptionProfile,
): { end: number; cost: number; lines: number }[] {
  const found: { end: number; cost: number; lines: number }[] = []
  let lines = 1
  let lineLength = 0
  let length = -1
  let innerSentences = 0
  for (let at = start; at < words.length; at++) {
    const word = words[at]
    const first = words[start]
    if (!word || !first) break
    if (at > start && word.startMs - (words[at - 1]?.endMs ?? 0) >= PAUSE_MS) break
    if (at > start && after[at - 1] === BREAK.sentence) innerSentences++
    const joined = lineLength === 0 ? word.text.length : lineLength + 1 + word.text.length
    const newLine = joined > profile.lineLength && lineLength > 0
    if (newLine) lines++
    lineLength = newLine ? word.text.length : joined
    length += word.text.length + 1
    if (at > start && (lines > profile.lines || lineLength > profile.lineLength)) break
    const nextStart = words[at + 1]?.startMs ?? Infinity
    const shownMs =
      Math.min(nextStart, Math.max(word.endMs, first.startMs + shortestMs(at - start + 1))) - first.startMs
    const endCost = after[at] ?? 0
    const partly = endCost !== BREAK.sentence || (start > 0 && after[start - 1] !== BREAK.sentence)
    found.push({
      end: at + 1,
      lines,
      cost:
        COST.caption +
        endCost +
        innerSentences * COST.innerSentence +
        (partly && length < profile.lineLength / 2 ? COST.scrap : 0) +
        timeCost(shownMs, word.endMs - first.startMs, at - start + 1, exact),
    })
    // A first word longer than a line stands alone.
    if (lineLength > profile.lineLength) break
  }
  return found
}

/** The least that the line ends inside a caption cost, for as few lines as it needs. */
function lineEnds(
  start: number,
  end: number,
  after: readonly number[],
  lengths: readonly number[],
  profile: CaptionProfile,
  lines: number,
): number {
  if (lines === 1) return 0
  let best: number = BREAK.numberAndUnit
  let length = -1
  for (let at = start; at < end - 1; at++) {
    length += (lengths[at] ?? 0) + 1
    if (length > profile.lineLength) break
    const here = after[at] ?? 0
    if (here < best && fits(at + 1, end, lengths, profile, lines - 1)) {
      best = Math.min(best, here + lineEnds(at + 1, end, after, lengths, profile, lines - 1))
    }
  }
  return best
}

/** True when the words fill no more than so many lines. */
function fits(start: number, end: number, lengths: readonly number[], profile: CaptionProfile, lines: number): boolean {
  let used = 1
  let length = -1
  for (let at = start; at < end; at++) {
    length += (lengths[at] ?? 0) + 1
    if (length <= profile.lineLength) continue
    used++
    length = lengths[at] ?? 0
  }
  return used <= lines && length <= profile.lineLength
}

function timeCost(shownMs: number, spokenMs: number, words: number, exact: boolean): number {
  const need = shortestMs(words)
  const missing = Math.max(0, need - shownMs) / need
  const over = Math.max(0, spokenMs - CAPTION_TIMES.maxMs.value) / CAPTION_TIMES.maxMs.value
  return missing * COST.tooShort + over * (exact ? COST.tooLong : COST.tooLongRough)
}
