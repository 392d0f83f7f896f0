/** Cuts text into words, numbers and marks, each with its place in the text. */
import { ONES, TEENS, TENS } from './words/en/numbers.ts'

export interface Token {
  kind: 'word' | 'number' | 'clock' | 'list' | 'mark' | 'quote'
  /** Lower case, without apostrophes; the inside of a quote as written. */
  text: string
  /** Of a number; seconds of a clock such as 1:30. */
  value: number
  /** Place in the text, in UTF-16 units; end is exclusive. */
  start: number
  end: number
  /** No space before it. */
  glued: boolean
}

// In order: a quoted note after its label; a typed tempo (after "tempo" or @, before "tempo", or 40X0);
// 3 or more numbers with dashes or slashes; 1:30; 1,000; 12 or 2.5; a fraction sign; a word; one other sign.
const TOKEN = new RegExp(
  [
    String.raw`(?<=\b(?:load|effort|frequency|progression|open|level) )"(?:[^"\\]|\\.)*"`,
    '(?<list>' +
      [
        String.raw`(?<=(?:[Tt]empo|@) ?)\d[\dxX?]{2,3}(?![\w%.,])(?! ?(?:kg|lb))`,
        String.raw`(?<![\w.])\d\d[\dxX]\d?(?= tempo(?! \d))`,
        String.raw`(?<![\w.])[1-9][0-5]X[0-5](?!\w)`,
        String.raw`(?<![\w.])(?:\d{1,3}|[xX?])(?:(?:[-–/](?:\d{1,3}|[xX?])){2,}|(?:, ?(?:\d{1,3}|[xX?])){2,}(?= tempo))(?!\w)`,
      ].join('|') +
      ')',
    String.raw`\d+:\d\d(?!\d)`,
    String.raw`\d{1,3}(?:,\d{3})+(?!\d)`,
    String.raw`\d+(?:\.\d+)?`,
    '[½¼¾]',
    String.raw`\p{L}+(?:['’]\p{L}+)*`,
    String.raw`\S`,
  ].join('|'),
  'gu',
)
const FRACTION_SIGNS: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75 }
/** Sounds that carry nothing and would part words that belong together. */
const FILLERS = new Set(['um', 'uh', 'er', 'erm', 'ah', 'uhm', 'hmm', 'please', 'just', 'yeah'])

/** The tokens of the text in order; fillers and doubled words ("the the") are left out. */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = []
  let lastEnd = -1
  for (const match of text.matchAll(TOKEN)) {
    const token = tokenOf(match[0], match.index, match.index === lastEnd, match.groups?.['list'] !== undefined)
    lastEnd = token.end
    if (token.kind === 'word' && (FILLERS.has(token.text) || token.text === doubled(tokens))) continue
    tokens.push(token)
  }
  return tokens
}

function doubled(tokens: readonly Token[]): string | null {
  const last = tokens.at(-1)
  // "three one one" and "ninety-ninety" are no stammer.
  return last?.kind === 'word' && !isNumberWord(last.text) ? last.text : null
}

function isNumberWord(word: string): boolean {
  return [ONES, TEENS, TENS].some((table) => Object.hasOwn(table, word))
}

function tokenOf(raw: string, start: number, glued: boolean, isList: boolean): Token {
  const place = { start, end: start + raw.length, glued }
  const fraction = FRACTION_SIGNS[raw]
  if (fraction !== undefined) return { kind: 'number', text: raw, value: fraction, ...place }
  if (/^\d+:\d\d$/.test(raw)) {
    const [minutes = 0, seconds = 0] = raw.split(':').map(Number)
    return { kind: 'clock', text: raw, value: minutes * 60 + seconds, ...place }
  }
  if (isList) return { kind: 'list', text: raw, value: 0, ...place }
  if (/^\d/.test(raw)) return { kind: 'number', text: raw, value: Number(raw.replaceAll(',', '')), ...place }
  if (/^\p{L}/u.test(raw)) {
    const word = raw.toLowerCase()
    // "eight's plenty" is no plural
    const number = /^(.+)['’]s$/.exec(word)?.[1] ?? ''
    const text = isNumberWord(number) && number !== 'one' ? number : word.replaceAll(/['’]/g, '')
    return { kind: 'word', text, value: 0, ...place }
  }
  if (raw.length > 1) return { kind: 'quote', text: unquoted(raw), value: 0, ...place }
  return { kind: 'mark', text: markOf(raw), value: 0, ...place }
}

function unquoted(raw: string): string {
  return raw.slice(1, -1).replaceAll(/\\(.)/g, '$1')
}

/** Kinds of dash, cross and curly sign come out as one plain sign each. */
function markOf(raw: string): string {
  if (/[‐‑‒–—−]/.test(raw)) return '-'
  if (/[×*✕]/.test(raw)) return 'x'
  if (/[!?…]/.test(raw)) return raw === '?' ? '?' : '.'
  return raw
}
