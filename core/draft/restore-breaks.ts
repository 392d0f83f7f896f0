/** Puts line breaks where sentences probably end into speech that has no punctuation; every character keeps its place. */
import { matchNames } from '../catalogue/find-entry.ts'
import type { FoundName } from '../catalogue/find-entry.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import { BRINGS_NAME } from './words/en/announcing.ts'
import {
  ARTICLES,
  CLAUSE_OPENERS,
  NAME_OPENERS,
  NEVER_BEFORE_NAME,
  NEVER_BEFORE_OPENER,
  NUMBERED,
  POINTERS,
  STRONG_BOUND,
  STRONG_OPENERS,
  WORK_OPENERS,
} from './words/en/openers.ts'
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
  const { breaks, inName } = breaksAtNames(text, words)
  addThoughtBreaks(words, breaks, inName)
  const out = text.split('')
  for (const index of breaks) {
    const at = (words[index]?.offset ?? 0) - 1
    if (at > 0) out[at] = '\n'
  }
  return out.join('')
}

/** Word indexes in front of which a break stands because of a name, and those that belong to a name. */
function breaksAtNames(text: string, words: readonly Word[]): { breaks: Set<number>; inName: Set<number> } {
  const breaks = new Set<number>()
  const inName = new Set<number>()
  const indexAt = new Map(words.map((word, index) => [word.offset, index]))
  for (const found of matchNames(text, foldWords(text))) {
    const first = indexAt.get(found.offset)
    const place = first === undefined ? null : placeName(words, first, found)
    if (!place) continue
    if (place.breaksBefore) breaks.add(place.from)
    breaks.add(place.to)
    const from = place.from + (place.breaksBefore ? 1 : -LEAD_WORDS)
    for (let index = from; index < place.to; index++) inName.add(index)
  }
  return { breaks, inName }
}

/** Words in front of a brought name that stay with it. */
const LEAD_WORDS = 3

/** Adds breaks before the words that open a thought; what follows "if" is kept with it. */
function addThoughtBreaks(words: readonly Word[], breaks: Set<number>, inName: ReadonlySet<number>): void {
  let since = 0
  let isCondition = false
  words.forEach((word, index) => {
    const before = words[index - 1]?.text ?? ''
    const mayBreak = !inName.has(index) || POINTERS.has(word.text)
    const isConsequence = isCondition && !STRONG_OPENERS.has(word.text)
    if (breaks.has(index)) {
      since = 0
      isCondition = false
    } else if (mayBreak && opensThought(word.text, before, since)) {
      if (isConsequence) isCondition = false
      else {
        breaks.add(index)
        since = 0
        isCondition = word.text === 'if'
      }
    }
    since += 1
  })
}

function opensThought(word: string, before: string, since: number): boolean {
  if (POINTERS.has(word)) return since >= 2 && !NEVER_BEFORE_OPENER.has(before) && !NAME_OPENERS.has(before)
  if (STRONG_OPENERS.has(word)) return since >= 1 && !STRONG_BOUND.has(before)
  return since >= 3 && CLAUSE_OPENERS.has(word) && !NEVER_BEFORE_OPENER.has(before)
}

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
function placeName(words: readonly Word[], first: number, found: FoundName): PlacedName | null {
  let last = first
  while (words[last + 1] && (words[last + 1]?.offset ?? 0) < found.offset + found.length) last += 1
  const next = words[last + 1]?.text ?? ''
  const from = ARTICLES.has(words[first - 1]?.text ?? '') ? first - 1 : first
  const before = words[from - 1]?.text ?? ''
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
function isBrought(words: readonly Word[], first: number): boolean {
  const lead = words.slice(Math.max(0, first - 7), first).map(({ text }) => text.replace(/'/g, ''))
  return BRINGS.test(lead.join(' ')) || BRINGS_ON.test(lead.join(' '))
}

/** Takes the small opening words ("okay so", "next up", "drill one") along with the name. */
function openersFrom(words: readonly Word[], from: number): number {
  const textAt = (index: number): string => words[index]?.text ?? ''
  let first = from
  if (NUMBER.test(textAt(first - 1)) && NUMBERED.has(textAt(first - 2))) first -= 1
  while (first > 0 && from - first < 3 && NAME_OPENERS.has(textAt(first - 1))) first -= 1
  return first
}
