/** Cuts unpunctuated speech into words and says where names of exercises lie among them, and which of them stand alone. */
import { matchNames } from '../catalogue/find-entry.ts'
import type { FoundName } from '../catalogue/find-entry.ts'
import { ONES, TENS } from '../dose/words/en/numbers.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import { classOf, kindOf } from './break-features.ts'
import type { BreakWord } from './break-features.ts'
import { openThoughts } from './open-thoughts.ts'
import { BRINGS_NAME } from './words/en/announcing.ts'
import {
  ARTICLES,
  CLAUSE_OPENERS,
  NAME_OPENERS,
  NEVER_BEFORE_NAME,
  NUMBERED,
  POINTERS,
  WORK_OPENERS,
} from './words/en/openers.ts'
import { anyPhrase } from './words/en/word-groups.ts'

/** A word with its place in the text. */
export interface PlacedWord extends BreakWord {
  offset: number
  end: number
  /** No break in front of it: it belongs to a name or to the words that bring one. */
  bound: boolean
}

/** The words of a text with its names marked. @param lineStarts offsets at which lines of the transcript begin */
export function placeNames(text: string, lineStarts: ReadonlySet<number>): PlacedWord[] {
  const words = [...text.matchAll(/\S+/g)].map((match): PlacedWord => {
    const word = match[0].toLowerCase().replace(/[^a-z0-9']/g, '')
    return {
      text: word,
      class: classOf(word),
      kind: kindOf(word),
      offset: match.index,
      end: match.index + match[0].length,
      opensLine: lineStarts.has(match.index),
      name: null,
      placed: false,
      opens: false,
      bound: false,
    }
  })
  const indexAt = new Map(words.map((word, index) => [word.offset, index]))
  for (const found of matchNames(text, foldWords(text))) {
    const first = indexAt.get(found.offset)
    if (first !== undefined) markName(words, first, found)
  }
  openThoughts(words).forEach((opens, index) => {
    const word = words[index]
    if (!word) return
    word.opens = opens
    word.placed ||= isBehindNeed(words, index)
    word.bound ||= isWithinAmount(words, index)
  })
  return words
}

/** "Forty-five seconds", "each side": no break falls inside. */
function isWithinAmount(words: readonly PlacedWord[], index: number): boolean {
  const [before, word] = [words[index - 1], words[index]]
  if (!before || !word) return false
  if (/^(?:each|per|either)$/.test(before.text))
    return /^(?:sides?|legs?|arms?|ways?|hands?|foot|directions?)$/.test(word.text)
  if (before.class !== 'number') return false
  const isCompound = Object.hasOwn(TENS, before.text) && Object.hasOwn(ONES, word.text)
  return isCompound || word.class === 'unit' || /^(?:each|per)$/.test(word.text)
}

/** "If you need to, five of those": a number behind these begins anew. */
function isBehindNeed(words: readonly PlacedWord[], index: number): boolean {
  const [verb, to] = [words[index - 2]?.text ?? '', words[index - 1]?.text]
  return words[index]?.class === 'number' && to === 'to' && /^(?:need|have|want|like)$/.test(verb)
}

function markName(words: PlacedWord[], first: number, found: FoundName): void {
  let last = first
  while (words[last + 1] && (words[last + 1]?.offset ?? 0) < found.offset + found.length) last += 1
  if (found.kind !== 'thing') {
    words.slice(first, last + 1).forEach((word, index) => {
      word.name = index === 0 ? 'first' : 'inside'
      word.bound ||= index > 0
    })
  }
  const place = placeName(words, first, last, found)
  if (!place) return
  const from = place.from + (place.breaksBefore ? 1 : -LEAD_WORDS)
  for (const word of words.slice(Math.max(0, from), place.to)) {
    if (word.name === null && POINTERS.has(word.text)) word.placed = true
    else word.bound = true
  }
  for (const word of [place.breaksBefore ? words[place.from] : undefined, words[place.to]]) if (word) word.placed = true
}

/** Words in front of a brought name that stay with it. */
const LEAD_WORDS = 3

interface PlacedName {
  from: number
  to: number
  /** False where the words in front bring the name and belong to it. */
  breaksBefore: boolean
}

const BRINGS = anyPhrase(BRINGS_NAME)
/** Going somewhere for it, going into it, or naming it last: "roll onto your front for the", "this is your". */
const BRINGS_ON = anyPhrase([
  '(?:for|into|to)(?: the| a| an| our| your| some)?$',
  '(?:this is|thats|that is)(?: your| the| a| an| our)?$',
])
const NUMBER = /^(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten)$/

/** The word indexes from and behind which a name stands alone, or null where it is only a part of a thought. */
function placeName(words: readonly PlacedWord[], first: number, last: number, found: FoundName): PlacedName | null {
  const next = words[last + 1]?.text ?? ''
  const from = ARTICLES.has(words[first - 1]?.text ?? '') ? first - 1 : first
  const before = words[from - 1]?.text ?? ''
  // "five hundreds" are an amount
  if (/^hundreds?$/.test(words[first]?.text ?? '') && words[first - 1]?.class === 'number') return null
  const isFollowed = next === '' || /^\d/.test(next) || WORK_OPENERS.has(next) || CLAUSE_OPENERS.has(next)
  if (found.kind !== 'thing' && isFollowed && isBrought(words, first))
    return { from, to: last + 1, breaksBefore: false }
  const second = words[from - 2]?.text ?? ''
  const isOpened = NAME_OPENERS.has(before) || (NUMBER.test(before) && (NUMBERED.has(second) || NUMBER.test(second)))
  if (next === 'of' || (NEVER_BEFORE_NAME.has(before) && !isOpened)) return null
  const plural = from === first && /[^s]s$/.test(words[last]?.text ?? '')
  const own = found.kind === 'own' && !found.slip
  const sure = own ? isFollowed || isOpened : (isFollowed && (isOpened || plural)) || (isOpened && plural)
  return sure ? { from: isOpened ? openersFrom(words, from) : from, to: last + 1, breaksBefore: true } : null
}

/** True when the words in front of a name bring it. */
function isBrought(words: readonly PlacedWord[], first: number): boolean {
  const lead = words.slice(Math.max(0, first - 7), first).map(({ text }) => text.replace(/'/g, ''))
  return BRINGS.test(lead.join(' ')) || BRINGS_ON.test(lead.join(' '))
}

/** Takes the small opening words ("okay so", "next up", "drill one") along with the name. */
function openersFrom(words: readonly PlacedWord[], from: number): number {
  const textAt = (index: number): string => words[index]?.text ?? ''
  let first = from
  if (NUMBER.test(textAt(first - 1)) && NUMBERED.has(textAt(first - 2))) first -= 1
  while (first > 0 && from - first < 3 && NAME_OPENERS.has(textAt(first - 1))) first -= 1
  return first
}
