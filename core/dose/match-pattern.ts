/**
 * A small pattern language over pieces of speech, so that what coaches say stands in tables a person can read.
 *
 *   word  a|b       this word, or one of these       a?   may be missing
 *   <name>          one of the phrases of a list      [ a b ]   may be missing as a whole
 *   N T D ...       an amount by its tag (see read-amounts.ts); {sets:N} keeps it under a name
 *   ~a|b            not preceded by one of these; an underscore joins words: hang_on|wait
 *   ..  ...         up to three words; up to seven words or amounts
 *   ,               a comma or another mark inside a sentence; ^ and $ = where a clause begins and ends
 *   !a|b   =a|b     not followed by, followed by, one of these (which stay outside the match)
 */
export interface Piece {
  /** What patterns see: a word, a mark, or a capital letter for an amount. */
  tag: string
  start: number
  end: number
  min?: number | null
  max?: number | null
  /** A list such as 10-8-6. */
  values?: readonly (number | null)[]
  /** What one unit is in seconds or metres, for "two minutes, no, three". */
  scale?: number
  approx?: boolean
  /** Written in figures. */
  isFigure?: boolean
  /** The inside of a quoted note. */
  text?: string
  /** What the recogniser wrote where a slip was mended. */
  heard?: string
}

export interface Match {
  /** Piece numbers; to is exclusive. */
  from: number
  to: number
  kept: Readonly<Record<string, Piece>>
}

/** A compiled pattern. */
export interface Pattern {
  /** Of each of these lists a word must be there, else nothing fits: the quickest test. */
  needs: readonly (readonly string[])[]
  /** A quick test, and the same with the places of what it keeps. */
  test: RegExp
  find: RegExp
}

/** Pieces as one line for patterns, each with a space before it, and which piece stands at which place. */
export interface Line {
  pieces: readonly Piece[]
  text: string
  tags: ReadonlySet<string>
  pieceAt: ReadonlyMap<number, number>
}

/** The lists that patterns name in <angle brackets>: phrases in the words of the pieces. */
export type Lists = Readonly<Record<string, readonly string[]>>

const CLAUSE_START = '(?<=^| [,.;:()?·])'
const CLAUSE_END = '(?=$| [,.;:()?·]| (?:and|then|but|so|or|because|with)(?= ))'
const INNER_MARK = '(?: [,;:()-])'

/** Compiles one pattern; an unknown list name is a fault of the tables and throws. */
export function compilePattern(pattern: string, lists: Lists): Pattern {
  const elements = pattern.trim().split(/\s+/)
  const source = elements.map((element) => elementSource(element, lists)).join('')
  // Keeping places is slow, and most patterns do not fit most lines.
  return { needs: needsOf(elements, lists), test: new RegExp(source, 'u'), find: new RegExp(source, 'dgu') }
}

/** For each element that may not be missing the words that it may begin with. */
function needsOf(elements: readonly string[], lists: Lists): string[][] {
  let depth = 0
  return elements.flatMap((element) => {
    depth += element === '[' ? 1 : element === ']' ? -1 : 0
    const isFree = /^[\^$[\],]|^\.\.|^[~!=]|.\?$/.test(element)
    return depth > 0 || isFree ? [] : [phrasesOf(bodyOf(element), lists).map((phrase) => phrase.split(/[_ ]/)[0] ?? '')]
  })
}

/** Every place where the pattern fits, left to right, without overlaps. */
export function findMatches({ pieces, text, tags, pieceAt }: Line, pattern: Pattern): Match[] {
  if (!pattern.needs.every((words) => words.some((word) => tags.has(word))) || !pattern.test.test(text)) return []
  const matches: Match[] = []
  for (const match of text.matchAll(pattern.find)) {
    const from = pieceAt.get(match.index)
    const end = match.index + match[0].length
    const to = end === text.length ? pieces.length : pieceAt.get(end)
    if (from === undefined || to === undefined || to <= from) continue
    matches.push({ from, to, kept: keptOf(match, pieces, pieceAt) })
  }
  return matches
}

/** The line of these pieces; it goes stale when a tag changes. */
export function lineOf(pieces: readonly Piece[]): Line {
  const pieceAt = new Map<number, number>()
  let text = ''
  pieces.forEach((piece, index) => {
    pieceAt.set(text.length, index)
    text += ` ${piece.tag}`
  })
  return { pieces, text, pieceAt, tags: new Set(pieces.map(({ tag }) => tag)) }
}

function keptOf(
  match: RegExpMatchArray,
  pieces: readonly Piece[],
  pieceAt: ReadonlyMap<number, number>,
): Record<string, Piece> {
  const kept: Record<string, Piece> = {}
  for (const [name, place] of Object.entries(match.indices?.groups ?? {})) {
    // A group that took no part has no place, whatever its type says.
    const index = (place as [number, number] | undefined) && pieceAt.get(place[0])
    const piece = index === undefined ? undefined : pieces[index]
    if (piece) kept[name] = piece
  }
  return kept
}

function elementSource(element: string, lists: Lists): string {
  if (element === '^') return CLAUSE_START
  if (element === '$') return CLAUSE_END
  if (element === '[') return '(?:'
  if (element === ']') return ')?'
  if (element === '..') return '(?: \\p{Ll}+){0,3}?'
  if (element === '...') return '(?: [\\p{L}%·#-]+){0,7}?'
  if (element === ',') return INNER_MARK
  if (element === ',?') return `${INNER_MARK}?`
  if (element.startsWith('!')) return `(?!${choice(element.slice(1), lists)})`
  if (element.startsWith('~')) return `(?<!${choice(element.slice(1), lists).replace('(?= |$)', '')})`
  if (element.startsWith('=')) return `(?=${choice(element.slice(1), lists)})`
  const optional = element.length > 1 && element.endsWith('?')
  const body = optional ? element.slice(0, -1) : element
  const name = KEPT.exec(body)?.[1]
  const source = choice(bodyOf(body), lists)
  const named = name === undefined ? source : `(?<${name}>${source})`
  return optional ? `(?:${named})?` : named
}

const KEPT = /^\{(\w+):(.+)\}$/

/** An element without the name that it is kept under. */
function bodyOf(element: string): string {
  return KEPT.exec(element)?.[2] ?? element
}

function choice(body: string, lists: Lists): string {
  const sources = phrasesOf(body, lists).map(
    (phrase) => ` ${phrase.replaceAll('_', ' ').replaceAll(/[.*+?^$()[\]\\/]/g, '\\$&')}`,
  )
  return `(?:${sources.join('|')})(?= |$)`
}

function phrasesOf(body: string, lists: Lists): readonly string[] {
  return body.split('|').flatMap((part) => (/^<.+>$/.test(part) ? listed(part.slice(1, -1), lists) : [part]))
}

function listed(name: string, lists: Lists): readonly string[] {
  const list = lists[name]
  if (!list) throw new RangeError(`No list of phrases is called <${name}>.`)
  // Longer phrases first, so that "other side" is not cut short by "other".
  return [...list].sort((a, b) => b.length - a.length)
}
