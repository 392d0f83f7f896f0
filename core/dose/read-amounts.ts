/**
 * Turns tokens into pieces: number words and figures become amounts, with their ranges and units.
 *
 *   N amount   T time in seconds   D distance in metres   P plural number ("tens")   L list ("10-8-6")
 *   C counting aloud ("one, two, three")   M typed tempo ("40X0")   Q quoted note; words and marks stay themselves
 */
import {
  compilePattern,
  findMatches,
  lineOf,
  type Line,
  type Match,
  type Pattern,
  type Piece,
} from './match-pattern.ts'
import { mendSlips, type MendedToken } from './mend-slips.ts'
import { listPieces } from './read-lists.ts'
import { numberAt } from './read-number.ts'
import { tokenise } from './tokenise.ts'
import { DISTANCE_UNITS, PLURALS, SAME_WORD, TIME_UNITS } from './words/en/numbers.ts'

/** The pieces of a text, in order, with their places in it. */
export function readAmounts(text: string): Piece[] {
  const pieces = listPieces(piecesOf(mendSlips(tokenise(text)), text))
  return [...REWRITES.reduce(rewritten, lineOf(pieces)).pieces]
}

/** Numbers joined, words made one, marks kept; a full stop inside "30 sec. rest" is left out. */
function piecesOf(tokens: readonly MendedToken[], text: string): Piece[] {
  const pieces: Piece[] = []
  for (let at = 0; at < tokens.length;) {
    const token = tokens[at]
    if (!token) break
    const number = numberAt(tokens, at)
    if (number) {
      pieces.push(...number.pieces)
      at += number.length
      continue
    }
    const piece = pieceOf(token, tokens, at, text)
    if (piece) pieces.push(piece)
    at++
  }
  return pieces
}

function pieceOf(token: MendedToken, tokens: readonly MendedToken[], at: number, text: string): Piece | null {
  const place = { start: token.start, end: token.end, ...(token.heard ? { heard: token.heard } : {}) }
  const previous = tokens[at - 1]
  switch (token.kind) {
    case 'clock':
      return { ...time(token.value, token.value, 1), ...place }
    case 'quote':
      return { tag: 'Q', text: token.text, ...place }
    case 'list':
      return { ...typedList(token.text), ...place }
    case 'mark':
      return markPiece(token, tokens, at, text)
    case 'number':
    case 'word':
      break
  }
  if (token.text === 'x' && !(isAmountEnd(previous) && tokens[at + 1])) return null
  if (token.text === 'k' && previous?.kind === 'number') return { tag: 'km', ...place }
  if (Object.hasOwn(PLURALS, token.text)) {
    const value = PLURALS[token.text as keyof typeof PLURALS]
    return { tag: 'P', min: value, max: value, ...place }
  }
  const same = Object.hasOwn(SAME_WORD, token.text) ? SAME_WORD[token.text as keyof typeof SAME_WORD] : token.text
  return { tag: same, ...place }
}

/** Where a cross may stand after: a number, "sets" or "reps", a unit, or the plus of "3+". */
function isAmountEnd(token: MendedToken | undefined): boolean {
  return token !== undefined && (token.kind !== 'mark' || token.text === '+')
}

function markPiece(token: MendedToken, tokens: readonly MendedToken[], at: number, text: string): Piece | null {
  const place = { start: token.start, end: token.end }
  const previous = tokens[at - 1]
  const next = tokens[at + 1]
  if (token.text === '-') {
    // A hyphen inside a word ("push-up", "forty-five") joins nothing that patterns need.
    const inWord = token.glued && next?.glued === true && (previous?.kind === 'word' || next.kind === 'word')
    return inWord ? null : { tag: '-', ...place }
  }
  if (token.text === '.') {
    // After a shortened word ("30 sec. rest") the sentence goes on in small letters.
    const goesOn = /^\s*\p{Ll}/u.test(text.slice(token.end)) && previous?.kind === 'word' && previous.text.length <= 4
    return goesOn ? null : { tag: '.', ...place }
  }
  if (/^["″”]$/.test(token.text)) return token.glued && previous?.kind === 'number' ? { tag: 'secs', ...place } : null
  return /^[,;:()?/@+%x~]$/.test(token.text) ? { tag: token.text, ...place } : null
}

/** "40X0", "3-1-X-0" and "3-0-1" are tempos; "10-8-6" may be one where the word tempo stands before it. */
function typedList(text: string): Pick<Piece, 'tag' | 'values' | 'text'> {
  const isDashed = /[-–/,]/.test(text)
  const parts = isDashed ? text.split(/[-–/,] ?/) : [...text]
  const values = parts.map((part) => (/^\d+$/.test(part) ? Number(part) : null))
  const isTempo = !isDashed || values.includes(null) || values.includes(0)
  return { tag: isTempo ? 'M' : 'L', values, text: parts.join('-') }
}

// Rewriting: a pattern and what its pieces become. Order matters: ranges of plain numbers, then units, then ranges of units.

type Kept = Match['kept']
type Made = Omit<Piece, 'start' | 'end'> | null
interface Rewrite {
  pattern: Pattern
  /** What stands in place of the match; null leaves it as it is. */
  make: (kept: Kept) => Made
}

const LISTS = {
  time: Object.keys(TIME_UNITS),
  distance: Object.keys(DISTANCE_UNITS),
  counted: ['reps', 'sets', 'rounds', 'breaths', 'strokes', 'times', 'x', 'of'],
  about: ['about', 'around', 'roughly', 'approximately', 'approx', 'say', 'maybe', 'nearly', 'almost', '~'],
  least: ['at least', 'minimum', 'a minimum of', 'minimum of', 'no less than', 'no fewer than', 'not less than'],
  most: [
    'up to',
    'at most',
    'at the most',
    'no more than',
    'not more than',
    'maximum of',
    'a maximum of',
    'max of',
    'anything up to',
  ],
} as const

const REWRITES: readonly Rewrite[] = [
  rewrite('per cent', () => ({ tag: '%' })),
  rewrite('{n:N} more times', ({ n }) => (n?.max === 1 ? { tag: 'repeatonce' } : null)),
  // no breath that is counted
  rewrite('a breaths =in|between|before|then|after', () => ({ tag: 'breather' })),
  rewrite('anywhere|somewhere|anything from|between {a:N} to|and {b:N}', rangeOf),
  rewrite('between|from {a:N} and|to {b:N}', rangeOf),
  rewrite('{a:N} up? to|or|- {b:N} !:', rangeOf),
  rewrite('{a:N} , or? up to {b:N}', rangeOf),
  rewrite('{a:N} or|to maybe|perhaps|even|possibly {b:N}', rangeOf),
  rewrite('{a:N} {b:N} =reps', rangeOf),
  rewrite('{n:N} +', (kept) => open(kept, 'up')),
  rewrite('{n:N} {unit:<time>} and a? half', (kept) => scaled(kept, 'T', 0.5)),
  rewrite('{n:N} and a half {unit:<time>}', (kept) => scaled(kept, 'T', 0.5)),
  rewrite('{n:N} and a half =kg|lb|metres|kilometres|km|miles', halfMore),
  rewrite('{n:N} {unit:<time>} and a quarter', (kept) => scaled(kept, 'T', 0.25)),
  rewrite('a? minute and a quarter', () => time(75, 75, 60)),
  rewrite('a? minute and a half', () => time(90, 90, 60)),
  rewrite('a? minute and {n:N} quarters', ({ n }) => (n?.min === 3 ? time(105, 105, 60) : null)),
  rewrite('{n:N} minutes and {q:N} quarters', ({ n, q }) =>
    q?.min === 3 && n?.min != null && n.min === n.max ? time(n.min * 60 + 45, n.min * 60 + 45, 60) : null,
  ),
  rewrite('a|one minute {s:N} seconds|secs|sec|s? !<counted>', minuteAnd),
  rewrite('{n:N} minutes|minute|min|mins and? {s:N} seconds|secs|sec|s? !<counted>', minuteAnd),
  rewrite('{n:N} full|whole|good|solid|quick|long|short|easy|hard|little|big {unit:<time>}', (kept) =>
    scaled(kept, 'T', 0),
  ),
  rewrite('{n:N} {unit:<time>}', (kept) => scaled(kept, 'T', 0)),
  rewrite('a? half a|an {unit:kilometre|kilometer|mile|km}', ({ unit }) => distance(unit, 0.5)),
  rewrite('a? half a|an? {unit:minute|hour|minutes|hours}', (kept) => part(kept, 0.5)),
  rewrite('a? quarter of a|an {unit:minute|hour}', (kept) => part(kept, 0.25)),
  rewrite('{n:N} quarters of a|an {unit:minute|hour}', (kept) => (kept['n']?.min === 3 ? part(kept, 0.75) : null)),
  // "a minute's rest"
  rewrite(
    'a|one full|whole|good|long|short|quick {unit:minutes|minute|hours|hour} =rest|break|off|recovery|breather',
    (kept) => part(kept, 1),
  ),
  rewrite('{n:N} {unit:secs|seconds|minutes|mins} =rest|break|off|recovery', (kept) => scaled(kept, 'T', 0)),
  rewrite('a|one {unit:minutes|hours} =rest|break|off|recovery|work|sit|breather|pause|walk', (kept) => part(kept, 1)),
  rewrite('~strokes|beats|breaths|times|reps|metres a|an|one full|whole|good|long? {unit:minute|hour}', (kept) =>
    part(kept, 1),
  ),
  rewrite('~every|the|per|of|each {unit:minute} =off|rest|break|between|each|on', (kept) => part(kept, 1)),
  rewrite('a? slow? count of {n:N}', (kept) => scaled(kept, 'T', 0)),
  rewrite('{n:N} slow? counts|count', (kept) => scaled(kept, 'T', 0)),
  rewrite('{n:N} {unit:<distance>} and a half', (kept) => scaled(kept, 'D', 0.5)),
  rewrite('a {unit:kilometre|kilometer|mile} and a half', ({ unit }) => distance(unit, 1.5)),
  rewrite('{n:N} {unit:<distance>}', (kept) => scaled(kept, 'D', 0)),
  rewrite('between|from {a:T} and|to {b:T}', rangeOf),
  rewrite('{a:T} up? to|or|- {b:T}', rangeOf),
  rewrite('{a:D} to|or|- {b:D}', rangeOf),
  rewrite('<least> {n:N|T|D}', (kept) => open(kept, 'up')),
  rewrite('<most> a? {n:N|T|D}', (kept) => open(kept, 'down')),
  rewrite('{n:N|T|D} or more|longer|minimum|plus', (kept) => open(kept, 'up')),
  rewrite('{n:N|T|D} plus|minimum', (kept) => open(kept, 'up')),
  rewrite('{n:N|T|D} at least $', (kept) => open(kept, 'up')),
  rewrite('{n:N|T|D} or less|fewer|under', (kept) => open(kept, 'down')),
  rewrite('{n:N|T|D} at most|max|maximum|tops', (kept) => open(kept, 'down')),
  rewrite('{n:N|T|D} max|maximum|tops', (kept) => open(kept, 'down')),
  rewrite('<about> {n:N|T|D}', roughly),
  rewrite('{n:N|T|D} or so|thereabouts', roughly),
  rewrite('{n:N|T|D} ish|odd', roughly),
]

function rewrite(pattern: string, make: (kept: Kept) => Made): Rewrite {
  return { pattern: compilePattern(pattern, LISTS), make }
}

function rewritten(line: Line, { pattern, make }: Rewrite): Line {
  const { pieces } = line
  const result: Piece[] = []
  let at = 0
  for (const match of findMatches(line, pattern)) {
    const made = make(match.kept)
    const inside = pieces.slice(match.from, match.to)
    const start = inside[0]?.start
    const end = inside.at(-1)?.end
    if (!made || start === undefined || end === undefined) continue
    const heard = inside.find((piece) => piece.heard)?.heard
    const isApprox = made.approx === true || inside.some((piece) => piece.approx)
    const marks = { ...(heard ? { heard } : {}), ...(isApprox ? { approx: true } : {}) }
    result.push(...pieces.slice(at, match.from), { ...made, start, end, ...marks })
    at = match.to
  }
  return at === 0 ? line : lineOf([...result, ...pieces.slice(at)])
}

/** From a to b; null where b is the smaller ("ten to two") or a side is open already. */
function rangeOf({ a, b }: Kept): Made {
  if (a?.min == null || b?.max == null || a.min !== a.max || b.min !== b.max || a.min >= b.max) return null
  return { tag: a.tag, min: a.min, max: b.max, ...(b.scale ? { scale: b.scale } : {}) }
}

function open({ n }: Kept, side: 'up' | 'down'): Made {
  if (n?.min == null || n.max == null) return null
  return { ...n, min: side === 'up' ? n.min : null, max: side === 'up' ? null : n.max }
}

function roughly({ n }: Kept): Made {
  return n ? { ...n, approx: true } : null
}

/** The amount in seconds or metres, plus a part of one unit ("two and a half minutes"). */
function scaled({ n, unit }: Kept, tag: 'T' | 'D', more: number): Made {
  if (!n) return null
  const scale = unitScale(unit)
  const inUnits = (value: number | null | undefined) => (value == null ? null : rounded((value + more) * scale))
  return { tag, min: inUnits(n.min), max: inUnits(n.max), scale }
}

/** So many of a unit of distance. */
function distance(unit: Piece | undefined, count: number): Made {
  const scale = unitScale(unit)
  const metres = rounded(count * scale)
  return { tag: 'D', min: metres, max: metres, scale }
}

function unitScale(unit: Piece | undefined): number {
  const all: Readonly<Record<string, number>> = { ...TIME_UNITS, ...DISTANCE_UNITS }
  return unit ? (all[unit.tag] ?? 1) : 1
}

function halfMore({ n }: Kept): Made {
  return n?.min == null || n.max == null ? null : { ...n, min: n.min + 0.5, max: n.max + 0.5 }
}

/** Yards come out in whole centimetres. */
function rounded(value: number): number {
  return Math.round(value * 100) / 100
}

function part({ unit }: Kept, share: number): Made {
  const scale = unitScale(unit)
  return time(share * scale, share * scale, scale)
}

/** "a minute thirty": 15, 20 or 30 seconds more, never "a minute ten reps" (the unit that follows decides elsewhere). */
function minuteAnd({ n, s }: Kept): Made {
  const seconds = s?.min ?? 0
  if (s?.min !== s?.max || seconds >= 60 || seconds % 5 !== 0 || n?.min !== n?.max) return null
  const all = (n?.min ?? 1) * 60 + seconds
  return time(all, all, 1)
}

function time(min: number, max: number, scale: number): Omit<Piece, 'start' | 'end'> {
  return { tag: 'T', min, max, scale }
}
