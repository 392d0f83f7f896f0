/** Puts line breaks where sentences probably end into speech that has no punctuation; every character keeps its place. */
import { matchNames } from '../catalogue/find-entry.ts'
import type { FoundName } from '../catalogue/find-entry.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import {
  ARTICLES,
  CLAUSE_OPENERS,
  NAME_OPENERS,
  NEVER_BEFORE_NAME,
  NEVER_BEFORE_OPENER,
  STRONG_OPENERS,
  WORK_OPENERS,
} from './words/en/openers.ts'
import { BRINGS_NAME } from './words/en/announcing.ts'
import { anyPhrase } from './words/en/word-groups.ts'

interface Word {
  text: string
  offset: number
  end: number
}

/** The text with some of its spaces turned into line breaks: around names that stand alone, and before words that open a thought. */
export function restoreBreaks(text: string): string {
  const words = [...text.matchAll(/\S+/g)].map((match): Word => ({
    text: match[0].toLowerCase().replace(/[^a-z0-9']/g, ''),
    offset: match.index,
    end: match.index + match[0].length,
  }))
  const breaks = new Set<number>()
  const inName = new Set<number>()
  const indexAt = new Map(words.map((word, index) => [word.offset, index]))
  for (const found of matchNames(text, foldWords(text))) {
    const first = indexAt.get(found.offset)
    const place = first === undefined ? null : placeName(words, first, found)
    if (!place) continue
    if (place.breaksBefore) breaks.add(place.from)
    breaks.add(place.to)
    for (let index = place.from + (place.breaksBefore ? 1 : -LEAD_WORDS); index < place.to; index++) inName.add(index)
  }
  let since = 0
  words.forEach((word, index) => {
    const before = words[index - 1]?.text ?? ''
    if (breaks.has(index)) since = 0
    else if ((!inName.has(index) || POINTERS.has(word.text)) && opensThought(word.text, before, since)) {
      breaks.add(index)
      since = 0
    }
    since += 1
  })
  const out = text.split('')
  for (const index of breaks) {
    const at = (words[index]?.offset ?? 0) - 1
    if (at > 0) out[at] = '\n'
  }
  return out.join('')
}

function opensThought(word: string, before: string, since: number): boolean {
  if (POINTERS.has(word)) return since >= 2 && !NEVER_BEFORE_OPENER.has(before) && !NAME_OPENERS.has(before)
  if (STRONG_OPENERS.has(word)) return since >= 1 && !STRONG_BOUND.has(before)
  return since >= 3 && CLAUSE_OPENERS.has(word) && !NEVER_BEFORE_OPENER.has(before)
}

/** "I don't", "and don't", "right now": these go on even before a strong opener. */
const STRONG_BOUND: ReadonlySet<string> = new Set([
  'i',
  'you',
  'we',
  'they',
  'and',
  'but',
  'if',
  'so',
  'right',
  'for',
  'just',
  'by',
  'from',
  'really',
  'please',
])

const BRINGS = anyPhrase(BRINGS_NAME)
/** Going somewhere for it, going into it, or naming it last: "roll onto your front for the", "this is your". */
const BRINGS_ON = anyPhrase([
  '(?:for|into|to)(?: the| a| an| our| your| some)?$',
  '(?:this is|thats|that is)(?: your| the| a| an| our)?$',
])

/** "This is your pelvic tilt": a new thought even in front of a name. */
const POINTERS: ReadonlySet<string> = new Set(['this', "that's", 'next', 'okay', 'now', 'right', 'station', 'exercise'])

/** Words in front of a brought name that stay with it. */
const LEAD_WORDS = 3

interface PlacedName {
  from: number
  to: number
  /** False where the words in front bring the name and belong to it. */
  breaksBefore: boolean
}

/** The word indexes from and behind which a name stands alone, or null where it is only a part of a thought. */
function placeName(words: readonly Word[], first: number, found: FoundName): PlacedName | null {
  let last = first
  while (words[last + 1] && (words[last + 1]?.offset ?? 0) < found.offset + found.length) last += 1
  const next = words[last + 1]?.text ?? ''
  const from = ARTICLES.has(words[first - 1]?.text ?? '') ? first - 1 : first
  const lead = words
    .slice(Math.max(0, first - 7), first)
    .map(({ text }) => text.replace(/'/g, ''))
    .join(' ')
  const isBrought = BRINGS.test(lead) || BRINGS_ON.test(lead)
  if (isBrought && found.kind !== 'thing' && (next === '' || WORK_OPENERS.has(next)))
    return { from, to: last + 1, breaksBefore: false }
  const before = words[from - 1]?.text ?? ''
  const isOpened = NAME_OPENERS.has(before) && !(before === 'one' && !ORDINALS.has(words[from - 2]?.text ?? ''))
  if (NEVER_BEFORE_NAME.has(before) && !isOpened) return null
  const isFollowed = next === '' || WORK_OPENERS.has(next)
  const plural = /[^s]s$/.test(words[last]?.text ?? '')
  const sure =
    found.kind === 'own'
      ? (isFollowed || isOpened) && !found.slip
      : next !== 'of' &&
        ((isFollowed && (isOpened || (plural && from === first))) || (isOpened && plural && from === first))
  if (!sure) return null
  return { from: isOpened ? openersFrom(words, from) : from, to: last + 1, breaksBefore: true }
}

const ORDINALS: ReadonlySet<string> = new Set(['last', 'next', 'first', 'station', 'drill', 'exercise'])

/** Takes the small opening words ("okay so", "next up") along with the name. */
function openersFrom(words: readonly Word[], from: number): number {
  let first = from
  while (first > 0 && from - first < 3 && NAME_OPENERS.has(words[first - 1]?.text ?? '')) first -= 1
  return first
}
