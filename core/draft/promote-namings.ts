/** Lets a name start its teaching where nothing announces it but what follows: it is said in its place, and taught right behind. */
import { AGAIN, BRINGS_AT_PLACE, ONLY_PASSES } from './announcing-tests.ts'
import type { Naming } from './naming.ts'
import { isPassing } from './rate-naming.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { START_SHAPES } from './words/en/announcing.ts'
import { AMOUNT_WORDS } from './words/en/dose-words.ts'
import { anyPhrase } from './words/en/word-groups.ts'

/** The namings with those raised that start something: the first of an exercise that nothing else starts, and namings "again". */
export function promoteNamings(speech: Speech, all: readonly Naming[]): Naming[] {
  const namings = speech.unpunctuated ? withoutChance(speech, all) : all
  const started = new Set(
    namings.flatMap(({ strength, listed, entry }) => (strength >= 2 && !listed && entry ? [entry.id] : [])),
  )
  return namings.map((naming) => {
    const { entry, strength, listed } = naming
    if (!entry || strength > 1 || listed) return naming
    if (started.has(entry.id)) return isSaidAgain(speech, naming) ? { ...naming, strength: 2, back: true } : naming
    if (!(endsSentence(speech, naming) && naming.kind === 'own') && !isInPlace(speech, naming)) return naming
    if (!mayStart(speech, naming)) return naming
    started.add(entry.id)
    return { ...naming, strength: 2 }
  })
}

/** Without breaks an everyday word may stand alone by chance: in the middle of counting, or where nothing is taught. */
function withoutChance(speech: Speech, namings: readonly Naming[]): Naming[] {
  const times = new Map<string, number>()
  for (const { entry, strength, listed } of namings)
    if (entry && (listed || strength >= 2)) times.set(entry.id, (times.get(entry.id) ?? 0) + 1)
  return namings.map((naming) => {
    const { entry, kind, strength, listed, bare } = naming
    if (!entry || kind === 'own' || listed || strength < 2) return naming
    const isOnce = bare && (times.get(entry.id) ?? 0) <= 1
    const isByChance = isAmongCounting(speech, naming.sentence) || (isOnce && !isTaughtBehind(speech, naming))
    return isByChance ? { ...naming, strength: 0 } : naming
  })
}

function isAmongCounting(speech: Speech, sentence: number): boolean {
  const [before, behind] = [speech.sentences[sentence - 1], speech.sentences[sentence + 1]]
  return behind !== undefined && COUNTS.test(behind.words) && (before === undefined || COUNTS_LAST.test(before.words))
}

const NUMBER = '(?:one|two|three|four|five|six|seven|eight|nine|ten)'
const COUNTS = new RegExp(`^(?:and )?${NUMBER}(?: ${NUMBER})*$`)
const COUNTS_LAST = new RegExp(`\\b${NUMBER}(?: \\w+)?$`)

function mayStart(speech: Speech, naming: Naming): boolean {
  const sentence = speech.sentences[naming.sentence]
  if (!sentence || isPassing(sentence.words) || ONLY_PASSES.test(wordsBefore(speech, naming))) return false
  if (OPENS_OPTION.test(clauseBefore(speech, naming))) return false
  const kinds = sentence.cues
    .filter(({ offset, text }) => offset <= naming.offset && naming.offset < offset + text.length)
    .map(({ kind }) => kind)
  const isTold = /\b(?:is|are|for|with)$/.test(clauseBefore(speech, naming))
  if (!isTold && kinds.length > 0 && kinds.every((kind) => OPTION_KINDS.has(kind))) return false
  if (naming.strength === 1 && sentence.role === 'teach' && endsSentence(speech, naming)) return false
  return isTaughtBehind(speech, naming) || (naming.strength === 1 && isDosed(speech, naming.sentence))
}

/** Nothing but the name stands at the end of the sentence. */
function endsSentence(speech: Speech, naming: Naming): boolean {
  const end = speech.sentences[naming.sentence]?.end ?? naming.end
  return plainWords(speech.text.slice(naming.end, end)) === ''
}

/** Behind words that bring a thing, at the end of a clause: "stay there for the roll up, hands ...". */
function isInPlace(speech: Speech, naming: Naming): boolean {
  const isShape = naming.entry !== null && START_SHAPES.has(naming.entry.id)
  const after = speech.text.slice(naming.end, naming.end + 40)
  const clause = clauseBefore(speech, naming)
  const isBrought = BRINGS_AT_PLACE.test(clause) || (clause === '' && naming.strength === 1)
  return !isShape && isBrought && ENDS_CLAUSE.test(after)
}

/** Set-up or movement is told in the rest of the sentence or the next, and goes on a little. */
function isTaughtBehind(speech: Speech, naming: Naming): boolean {
  const here = speech.sentences[naming.sentence]?.cues.filter(({ offset }) => offset >= naming.end) ?? []
  const next = speech.sentences.slice(naming.sentence + 1, naming.sentence + 1 + SENTENCES_BEHIND)
  const all = [...here, ...next.flatMap(({ cues }) => cues)]
  return all.some(({ kind }) => kind === 'setup' || kind === 'execution') && all.length >= 2
}

const SENTENCES_BEHIND = 3

/** True when an amount is said within two sentences behind. */
function isDosed(speech: Speech, sentence: number): boolean {
  return speech.sentences
    .slice(sentence + 1, sentence + 3)
    .some(({ role, words }) => role === 'work' && AMOUNT_WORDS.test(words))
}

/** "That side stretch again", "one more time through the rolls". */
function isSaidAgain(speech: Speech, naming: Naming): boolean {
  const sentence = speech.sentences[naming.sentence]
  if (!sentence || naming.kind === 'thing' || ONLY_PASSES.test(wordsBefore(speech, naming))) return false
  const after = plainWords(speech.text.slice(naming.end, sentence.end))
  return AGAIN.test(after) && !OPENS_OPTION.test(clauseBefore(speech, naming))
}

function wordsBefore(speech: Speech, naming: Naming): string {
  return plainWords(speech.text.slice(speech.sentences[naming.sentence]?.offset ?? 0, naming.offset))
}

function clauseBefore(speech: Speech, naming: Naming): string {
  const before = speech.text.slice(speech.sentences[naming.sentence]?.offset ?? 0, naming.offset)
  const words = plainWords(/[^,;:\v]*$/.exec(before)?.[0] ?? '').split(' ')
  // Where breaks are guessed, one may be missing.
  return words.slice(speech.unpunctuated ? -SURE_WORDS : 0).join(' ')
}

const SURE_WORDS = 4

const OPTION_KINDS: ReadonlySet<string> = new Set(['easier', 'harder', 'caution', 'fault'])
const OPENS_OPTION = anyPhrase([
  '^(?:if|when|or|unless|because|until|while|after|before|as|once|so that|like|not|dont|no)(?: |$)',
])
const ENDS_CLAUSE =
  /^(?:\s*[.,;:!?…\n\v—–-]|\s*$|\s+(?:and|then|so|to|where|which|now|next|again|please|first|for|with|on|against|today|this|is)\b)/
