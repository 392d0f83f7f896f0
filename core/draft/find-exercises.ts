/** Finds where the teaching of each exercise starts and ends, what it is called, and where the class comes back to it. */
import type { CatalogueEntry } from '../catalogue/entry.ts'
import { findEntry } from '../catalogue/find-entry.ts'
import { foldName } from '../catalogue/fold-words.ts'
import { findNamings } from './find-namings.ts'
import type { Naming } from './find-namings.ts'
import type { Speech } from './read-speech.ts'
import { ALSO_CALLED, START_SHAPES } from './words/en/announcing.ts'

/** A stretch of the running text by its characters. */
export interface TextSpan {
  offset: number
  end: number
}

/** One exercise as taught: the first span is the main teaching, the others are returns. */
export interface Teaching {
  entry: CatalogueEntry | null
  /** As spoken first, in lower case. */
  name: string
  /** Every other form spoken. */
  alsoCalled: string[]
  spans: TextSpan[]
  confidence: number
  ruleId: string
}

export interface FoundExercises {
  teachings: Teaching[]
  /** Named, never taught. */
  mentioned: string[]
  /** Every naming: those said in a row, as in a programme, may carry doses. */
  namings: Naming[]
}

/** Finds the exercises of a class. @param kit kit of the class, most likely first. */
export function findExercises(speech: Speech, kit: readonly string[]): FoundExercises {
  const namings = findNamings(speech, kit)
  const starts = chooseStarts(speech, namings)
  const spans = placeSpans(speech, starts)
  const teachings = gather(speech, spans, namings)
  return { teachings, mentioned: findMentioned(namings, teachings), namings }
}

/** A naming that starts a stretch of teaching. */
interface Start {
  naming: Naming
  /** Who is taught: the same key comes back for a return. */
  key: string
}

/** Namings that start something, without set-up shapes, second names and namings of what is going on already. */
function chooseStarts(speech: Speech, namings: readonly Naming[]): Start[] {
  const usable = namings.filter(
    (naming) => !naming.listed && (naming.strength >= 2 || isLoneClause(speech, naming, namings)),
  )
  const starts: Start[] = []
  usable.forEach((naming, index) => {
    const last = starts.at(-1)
    const key = keyOf(naming, starts, namings)
    if (last && last.key === key) return
    const since = last ? speech.wordsBefore(naming.offset) - speech.wordsBefore(last.naming.end) : Infinity
    const isShape = naming.entry !== null && START_SHAPES.has(naming.entry.id)
    if (last && isShape && since <= SHAPE_WORDS && !isShapeOf(last)) return
    if (last && isSecondName(speech, last.naming, naming)) return
    if (last && since <= SHAPE_WORDS && isShapeOf(last) && !isShape && naming.strength === 3) starts.pop()
    const next = usable[index + 1]
    if (naming.late && next && next.sentence === naming.sentence) return
    starts.push({ naming, key })
  })
  return starts
}

/** A description next to a real name adds nothing. */
function isDoubled(naming: Naming, namings: readonly Naming[]): boolean {
  return (
    naming.described &&
    namings.some((other) => !other.described && other.strength >= 2 && Math.abs(other.sentence - naming.sentence) <= 4)
  )
}

/** A plank named within so many words of another exercise is the shape it starts from. */
const SHAPE_WORDS = 16

function isShapeOf(start: Start): boolean {
  return start.naming.entry !== null && START_SHAPES.has(start.naming.entry.id)
}

/** A name alone in its clause starts something when nothing else is named near and the class was between two things. */
function isLoneClause(speech: Speech, naming: Naming, namings: readonly Naming[]): boolean {
  if (naming.strength !== 1) return false
  const near = namings.some(
    (other) => other !== naming && other.strength >= 2 && Math.abs(other.sentence - naming.sentence) <= 3,
  )
  const before = speech.sentences[naming.sentence - 1]?.role
  const teaches = speech.sentences[naming.sentence]?.cues.some((cue) => cue.kind === 'setup') === true
  return !near && teaches && before !== undefined && before !== 'teach'
}

/** "Skaters. Side hops." and "Five hundreds, ..." right behind "The 500s": a second name of the same exercise. */
function isSecondName(speech: Speech, last: Naming, naming: Naming): boolean {
  const between = speech.text.slice(last.end, naming.offset)
  const words = between.match(/[\p{L}\d]+/gu)?.length ?? 0
  if (words > 2) return false
  const sentence = speech.sentences[naming.sentence]
  const said = sentence ? speech.text.slice(sentence.offset, sentence.end) : ''
  return words === 0 ? last.sentence === naming.sentence || isCalled(said) : isCalled(said)
}

function isCalled(said: string): boolean {
  return ALSO_CALLED.some((pattern) => new RegExp(pattern.source, 'iu').test(said))
}

/** The key of what a naming teaches: a short name ("squats") is the exercise of that name that the class does ("goblet squats"). */
function keyOf(naming: Naming, starts: readonly Start[], namings: readonly Naming[]): string {
  const own = naming.entry?.id ?? foldName(naming.name)
  if (starts.some((start) => start.key === own)) return own
  const short = foldName(naming.name)
  const longer = [...starts.map((start) => ({ key: start.key, name: start.naming.name })), ...listedNames(namings)]
  const match = longer.reverse().find(({ name }) => foldName(name).endsWith(` ${short}`))
  return match?.key ?? own
}

function listedNames(namings: readonly Naming[]): { key: string; name: string }[] {
  return namings
    .filter((naming) => naming.listed)
    .map((naming) => ({ key: naming.entry?.id ?? foldName(naming.name), name: naming.name }))
}

interface PlacedSpan extends TextSpan {
  start: Start
  /** Cues heard in it. */
  cues: number
}

/** Gives each start its stretch: from its set-up on, to the next one's, without the talk at the end. */
function placeSpans(speech: Speech, starts: readonly Start[]): PlacedSpan[] {
  const begins = starts.map((start, index) => beginOf(speech, start.naming, starts[index - 1]?.naming))
  return starts.map((start, index) => {
    const begin = begins[index] ?? 0
    const limit = begins[index + 1] ?? speech.sentences.length
    const last = lastTaught(speech, begin, limit)
    const first = speech.sentences[begin]
    const final = speech.sentences[last]
    const cues = speech.sentences.slice(begin, last + 1).reduce((sum, sentence) => sum + sentence.cues.length, 0)
    const offset = Math.min(first?.offset ?? start.naming.offset, start.naming.offset)
    return { start, offset, end: Math.max(final?.end ?? start.naming.end, start.naming.end), cues }
  })
}

/** Index of the sentence where the teaching begins: the set-up may come before the name. */
function beginOf(speech: Speech, naming: Naming, previous: Naming | undefined): number {
  let begin = naming.sentence
  if (!naming.late && !naming.bare) return begin
  const floor = previous ? previous.sentence + 1 : 0
  const most = naming.late ? LATE_SENTENCES : SETUP_SENTENCES
  for (let index = naming.sentence - 1; index >= floor && naming.sentence - index <= most; index--) {
    const sentence = speech.sentences[index]
    if (!sentence || sentence.role === 'end' || sentence.role === 'chat') break
    const kinds = sentence.cues.map((cue) => cue.kind)
    const setsUp = kinds.includes('setup')
    if (!naming.late && (sentence.role === 'work' || kinds.some((kind) => !BEFORE_NAME.has(kind)))) break
    const opens = sentence.role === 'move' || isPositionChange(sentence.words)
    if (opens || (setsUp && (naming.late || isBreak(speech, index - 1)))) begin = index
  }
  return begin
}

/** What may be told before the name of an exercise. */
const BEFORE_NAME: ReadonlySet<string> = new Set(['setup', 'execution', 'equipment', 'focus', 'easier'])
const SETUP_SENTENCES = 4
const LATE_SENTENCES = 14

function isBreak(speech: Speech, index: number): boolean {
  const role = speech.sentences[index]?.role
  return role === undefined || role === 'end' || role === 'move' || role === 'chat' || role === 'work'
}

/** The whole body goes to another place. */
function isPositionChange(words: string): boolean {
  return /^(?:(?:and|so|okay|right|now|then|lets|well|from here|come|all the way|everybody|everyone|slowly) ?)*(?:come|rise|get|step|walk|roll|turn|lie|sit|kneel|stand|down|up|onto|tuck your toes|hold the|big|one foot|bottom close|back to)\b.{0,40}\b(?:floor|mat|fours|back|front|belly|tummy|side|knees|feet|standing|chair|wall|ball|hips?|forward|between|hands?|plank|blanket|edge)\b/.test(
    words,
  )
}

/** Index of the last sentence about the exercise: talk and changes of place at the end are left out. */
function lastTaught(speech: Speech, begin: number, limit: number): number {
  let last = begin
  let lost = 0
  for (let index = begin; index < limit; index++) {
    const sentence = speech.sentences[index]
    if (!sentence) break
    if (sentence.role === 'teach' || sentence.role === 'work') {
      last = index
      lost = 0
    } else if (sentence.role === 'end') {
      last = index
      if (cuesFrom(speech, index + 1, limit) < 2) break
    } else {
      lost += sentence.wordCount
      if (lost > TALK_WORDS) break
    }
  }
  return last
}

/** Cues heard from a sentence on, up to a limit. */
function cuesFrom(speech: Speech, from: number, limit: number): number {
  return speech.sentences
    .slice(from, Math.min(limit, from + 12))
    .reduce((sum, sentence) => sum + sentence.cues.length, 0)
}

/** So many words of nothing but talk end an exercise. */
const TALK_WORDS = 90

/** Puts the spans of one exercise together; what was barely taught anywhere is a mention. */
function gather(speech: Speech, spans: readonly PlacedSpan[], namings: readonly Naming[]): Teaching[] {
  const byKey = new Map<string, PlacedSpan[]>()
  for (const span of spans) byKey.set(span.start.key, [...(byKey.get(span.start.key) ?? []), span])
  const teachings: Teaching[] = []
  for (const own of byKey.values()) {
    const main = own.find((span) => span.cues >= 2) ?? own[0]
    if (!main || !isTaught(speech, main)) continue
    const names = new Set(own.map((span) => tidy(span.start.naming.name)))
    for (const naming of namings) {
      const inside = own.some((span) => span.offset <= naming.offset && naming.end <= span.end)
      if (naming.entry !== null && naming.entry === main.start.naming.entry && (inside || naming.listed))
        names.add(tidy(naming.name))
    }
    for (const name of alsoCalledIn(speech, main)) names.add(name)
    const [name = tidy(main.start.naming.name), ...alsoCalled] = names
    const returns = own.filter((span) => span !== main).map(({ offset, end }) => ({ offset, end }))
    teachings.push({
      entry: main.start.naming.entry,
      name,
      alsoCalled,
      spans: [{ offset: main.offset, end: main.end }, ...returns],
      confidence: confidenceOf(main),
      ruleId: main.start.naming.described
        ? 'told-not-named'
        : main.start.naming.late
          ? 'name-after-setup'
          : main.start.naming.entry
            ? 'name-announced'
            : 'unlisted-name-announced',
    })
  }
  return teachings.sort((a, b) => (a.spans[0]?.offset ?? 0) - (b.spans[0]?.offset ?? 0))
}

function isTaught(speech: Speech, span: PlacedSpan): boolean {
  const words = speech.wordsBefore(span.end) - speech.wordsBefore(span.offset)
  return span.start.naming.strength === 3 ? span.cues >= 1 || words >= 8 : span.cues >= 2
}

function confidenceOf(span: PlacedSpan): number {
  const named = span.start.naming.described ? 0.4 : span.start.naming.strength === 3 ? 0.75 : 0.6
  const listed = span.start.naming.entry ? 0.1 : 0
  return Math.round((named + listed + Math.min(0.1, span.cues / 60)) * 100) / 100
}

function alsoCalledIn(speech: Speech, span: TextSpan): string[] {
  const said = speech.text.slice(span.offset, span.end)
  return ALSO_CALLED.flatMap((pattern) => [...said.matchAll(pattern)].map((match) => tidy(match[1] ?? ''))).filter(
    (name) => name.length > 2 && name.split(' ').length <= 4,
  )
}

/** A name in lower case without its article; "A skips" keeps its letter. */
function tidy(name: string): string {
  const lower = name.toLowerCase().trim()
  const bare = lower.replace(/^(?:the|a|an|our|your|some|now|so|then|and) /, '')
  const entry = findEntry(lower)
  return entry !== null && findEntry(bare) !== entry ? lower : bare
}

/** Names said but never taught, each once. */
function findMentioned(namings: readonly Naming[], teachings: readonly Teaching[]): string[] {
  const taught = new Set(teachings.flatMap((teaching) => [teaching.name, ...teaching.alsoCalled].map(foldName)))
  const entries = new Set(teachings.map((teaching) => teaching.entry?.id))
  const names = new Map<string, string>()
  for (const { entry, name } of namings) {
    const folded = foldName(name)
    const isTaught =
      entries.has(entry?.id) || [...taught].some((known) => known === folded || known.endsWith(` ${folded}`))
    if (entry && !isTaught && !names.has(entry.id)) names.set(entry.id, tidy(name))
  }
  return [...names.values()]
}
