/** Finds where the teaching of each exercise starts and ends, what it is called, and where the class comes back to it. */
import type { CatalogueEntry } from '../catalogue/entry.ts'
import { findEntry } from '../catalogue/find-entry.ts'
import { foldName, foldWords } from '../catalogue/fold-words.ts'
import type { Start } from './place-spans.ts'
import type { Naming } from './naming.ts'
import { indexSpans } from './index-spans.ts'
import { endAtRest } from './bound-return.ts'
import type { HeardTurn } from './hear-turns.ts'
import { findReturns } from './find-returns.ts'
import type { OpenedTeaching } from './find-returns.ts'
import { findTurns } from './find-turns.ts'
import type { TurnBlock } from './find-turns.ts'
import { placeSpans } from './place-spans.ts'
import type { PlacedSpan, TextSpan } from './place-spans.ts'
import { pushTo } from './push-to.ts'
import type { Speech } from './read-speech.ts'
import { chooseOpenings, FAVOUR } from './choose-openings.ts'
import { pickNames } from './pick-names.ts'
import { isShort } from './sided-table.ts'
import { weighSentences } from './weigh-openings.ts'
import type { SentenceOdds } from './weigh-openings.ts'
import { settleNamings, weighCandidates } from './weigh-starts.ts'
import type { Opening, WeighedCandidate } from './weigh-starts.ts'
import { ALSO_CALLED, OPENING_WORDS } from './words/en/announcing.ts'
import { RETAKES } from './words/en/retakes.ts'
import { anyPhrase } from './words/en/word-groups.ts'

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
  /** Those that go in turns, as they are called. */
  blocks: TurnBlock[]
  /** Named, never taught. */
  mentioned: string[]
  /** Every naming: those said in a row, as in a programme, may carry doses. */
  namings: Naming[]
  /** What is heard of each sentence. */
  heard: readonly HeardTurn[]
}

/** Finds the exercises of a class. @param kit kit of the class, most likely first. */
export function findExercises(speech: Speech, kit: readonly string[]): FoundExercises {
  const weighed = weighCandidates(speech, kit)
  const odds = weighSentences(speech, weighed)
  const openings = findOpenings(speech, weighed, odds.opening)
  const namings = settleNamings(speech, weighed, openings)
  const spans = placeSpans(speech, startsOf(speech, weighed, openedOf(openings, namings, odds), odds), odds.heard)
  const taught = gather(speech, spans, namings)
  const found = findTurns(speech, taught)
  const { blocks } = found
  const teachings = found.teachings.map((teaching) => ({
    ...teaching,
    spans: joined(speech, teaching.spans)
      .filter((span, index) => index === 0 || !isBrief(speech, span))
      .map((span, index) => (index === 0 ? span : endAtRest(speech, span))),
  }))
  return { teachings, blocks, mentioned: findMentioned(namings, teachings), namings, heard: odds.heard }
}

/** A return right behind another one to the same exercise is that one going on. */
function joined(speech: Speech, [main, ...returns]: readonly TextSpan[]): TextSpan[] {
  const turns: TextSpan[] = []
  for (const span of returns) {
    const last = turns.at(-1)
    if (last && speech.text.slice(last.end, span.called ?? span.offset).trim() === '') last.end = span.end
    else turns.push({ ...span })
  }
  return main ? [main, ...turns] : turns
}

/** "Squats were six": a name and a word or two in no time, which nobody works in. */
function isBrief(speech: Speech, { offset, end }: TextSpan): boolean {
  const words = speech.wordsBefore(end) - speech.wordsBefore(offset)
  return words <= BRIEF_WORDS && speech.timeOf(end) - speech.timeOf(offset) < BRIEF_MS
}

const BRIEF_WORDS = 4
const BRIEF_MS = 2500

/** The teachings of a class by where they open, with their names. */
function findOpenings(speech: Speech, weighed: readonly WeighedCandidate[], odds: readonly number[]): Opening[] {
  const favour = FAVOUR[isShort(speech) ? 'short' : speech.unpunctuated ? 'plain' : 'marked']
  const begins = chooseOpenings(weighed, odds, favour).map((begin) => beforeRetake(speech, begin))
  const teachings = begins.map((first, index) => ({ first, end: begins[index + 1] ?? speech.sentences.length }))
  return pickNames(speech, weighed, teachings).flatMap(({ first, name }): Opening[] =>
    // in a few minutes everything is named
    name === null && isShort(speech) ? [] : [{ sentence: first, name }],
  )
}

/** What is started again was opened where it was started first: at words like those of the retake, else at the slip. */
function beforeRetake(speech: Speech, begin: number): number {
  const said = speech.sentences[begin]?.words.split(' ') ?? []
  const opening = said.filter((word) => word !== 'the' && !OPENING_WORDS.has(word)).slice(0, 2)
  const slip = [begin - 1, begin - 2].find((index) => RETAKE.test(speech.sentences[index]?.words ?? ''))
  if (slip === undefined) return begin
  for (let index = Math.max(0, begin - MOST_STARTED); index < slip; index++) {
    const words = speech.sentences[index]?.words.split(' ') ?? []
    if (opening.length > 0 && opening.every((word) => words.includes(word))) return index
  }
  return slip
}

const RETAKE = anyPhrase(RETAKES)
/** A wrong start has at most so many sentences. */
const MOST_STARTED = 5

/** What a class opens, in order, with what returns to it are found by. */
interface Opened extends OpenedTeaching {
  start: Start
}

/** The teachings that a class opens, and where. */
export function findOpened(speech: Speech, weighed: readonly WeighedCandidate[], odds: SentenceOdds): OpenedTeaching[] {
  const openings = findOpenings(speech, weighed, odds.opening)
  return openedOf(openings, settleNamings(speech, weighed, openings), odds)
}

function openedOf(openings: readonly Opening[], namings: readonly Naming[], odds: SentenceOdds): Opened[] {
  const opened = new Map(namings.flatMap((naming) => (naming.begins === undefined ? [] : [[naming.begins, naming]])))
  const byEnding = new Map<string, string>()
  return openings.flatMap(({ sentence, name }): Opened[] => {
    const naming = opened.get(sentence)
    if (!naming) return []
    // "squats" behind goblet squats are those
    const key = byEnding.get(foldName(naming.name)) ?? name?.candidate.key ?? `unnamed ${sentence}`
    for (const ending of endingsOf(naming.name).slice(1)) byEnding.set(ending, key)
    const names = naming.described ? [] : naming.entry ? [naming.name, naming.entry.name] : [naming.name]
    return [{ start: { naming, key, sentence }, sentence, names, odds: odds.opening[sentence] ?? 0 }]
  })
}

/** Where the stretches of a class start: its openings, and its returns to what was opened before. */
function startsOf(
  speech: Speech,
  weighed: readonly WeighedCandidate[],
  opened: readonly Opened[],
  odds: SentenceOdds,
): Start[] {
  const returns = findReturns(speech, weighed, opened, odds).flatMap(({ sentence, teaching }): Start[] => {
    const main = opened[teaching]
    return main ? [{ ...main.start, sentence }] : []
  })
  const back = new Set(returns.map(({ sentence }) => sentence))
  const mains = opened.map(({ start }) => start).filter(({ sentence }) => !back.has(sentence))
  return [...mains, ...returns].sort((one, other) => one.sentence - other.sentence)
}

/** Puts the spans of one exercise together; what was barely taught anywhere is a mention. */
function gather(speech: Speech, spans: readonly PlacedSpan[], namings: readonly Naming[]): Teaching[] {
  const byKey = new Map<string, PlacedSpan[]>()
  for (const span of spans) pushTo(byKey, span.start.key, span)
  const keyAt = indexSpans(spans.map((span) => ({ ...span, owner: span.start.key })))
  const byEntry = new Map<string, Naming[]>()
  for (const naming of namings) if (naming.entry) pushTo(byEntry, naming.entry.id, naming)
  const teachings: Teaching[] = []
  for (const [key, own] of byKey) {
    const most = Math.max(...own.map((span) => span.cues))
    const main =
      own.find(
        (span, index) =>
          span.cues >= Math.max(2, Math.min(4, most * MAIN_SHARE)) && (index === 0 || saysName(speech, span)),
      ) ?? own[0]
    if (!main || !isTaught(speech, main)) continue
    const names = new Set(own.map((span) => tidy(span.start.naming.name)))
    const { entry } = main.start.naming
    for (const naming of entry ? (byEntry.get(entry.id) ?? []) : []) {
      const isNear = Math.abs(naming.sentence - main.start.naming.sentence) <= 1
      if (naming.listed || isNear || keyAt(naming.offset) === key) names.add(tidy(naming.name))
    }
    for (const name of alsoCalledIn(speech, main)) names.add(name)
    const [name = tidy(main.start.naming.name), ...alsoCalled] = names
    const returns = own.filter((span) => span.offset > main.offset).map(({ offset, end }) => ({ offset, end }))
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

/** A stretch that never says what it is teaches nothing that was announced before. */
function saysName(speech: Speech, { start, offset, end }: PlacedSpan): boolean {
  const last = foldName(start.naming.name).split(' ').at(-1)
  return foldWords(speech.text.slice(offset, end)).some(({ text }) => text === last)
}

/** The main teaching is the first stretch with at least this share of the cues of the fullest one; what comes before announces it. */
const MAIN_SHARE = 0.3

function isTaught(speech: Speech, span: PlacedSpan): boolean {
  const words = speech.wordsBefore(span.end) - speech.wordsBefore(span.offset)
  if (span.start.naming.strength === 3) return span.cues >= 1 || words >= TAUGHT_WORDS
  return span.cues >= 2 || (isShort(speech) && span.cues === 1 && words >= TAUGHT_WORDS)
}

const TAUGHT_WORDS = 8

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
  const bare = lower.replace(/^(?:(?:the|a|an|our|your|some|now|so|then|and|or) )+/, '')
  const entry = findEntry(lower)
  return entry !== null && findEntry(bare) !== entry ? lower : bare
}

/** Names said but never taught, each once. */
function findMentioned(namings: readonly Naming[], teachings: readonly Teaching[]): string[] {
  const taught = new Set(teachings.flatMap((teaching) => [teaching.name, ...teaching.alsoCalled].flatMap(endingsOf)))
  const entries = new Set(teachings.map((teaching) => teaching.entry?.id))
  const names = new Map<string, string>()
  for (const { entry, name } of namings) {
    const folded = foldName(name)
    const isTaught = entries.has(entry?.id) || taught.has(folded)
    if (entry && !isTaught && !names.has(entry.id)) names.set(entry.id, tidy(name))
  }
  return [...names.values()]
}

/** A folded name and its endings: "goblet squat" and "squat". */
function endingsOf(name: string): string[] {
  const words = foldName(name).split(' ')
  return words.map((_, from) => words.slice(from).join(' '))
}
