/** Finds where the teaching of each exercise starts and ends, what it is called, and where the class comes back to it. */
import type { CatalogueEntry } from '../catalogue/entry.ts'
import { findEntry } from '../catalogue/find-entry.ts'
import { foldName } from '../catalogue/fold-words.ts'
import { chooseStarts } from './choose-starts.ts'
import type { Naming } from './naming.ts'
import { indexSpans } from './index-spans.ts'
import { findTurns } from './find-turns.ts'
import type { TurnBlock } from './find-turns.ts'
import { placeSpans } from './place-spans.ts'
import type { PlacedSpan, TextSpan } from './place-spans.ts'
import type { Speech } from './read-speech.ts'
import { weighNamings } from './weigh-starts.ts'
import { ALSO_CALLED } from './words/en/announcing.ts'

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
}

/** Finds the exercises of a class. @param kit kit of the class, most likely first. */
export function findExercises(speech: Speech, kit: readonly string[]): FoundExercises {
  const namings = weighNamings(speech, kit)
  const starts = chooseStarts(speech, namings)
  const spans = placeSpans(speech, starts)
  const taught = withUnnamedFirst(speech, namings, gather(speech, spans, namings))
  const { teachings, blocks } = findTurns(speech, taught)
  return { teachings, blocks, mentioned: findMentioned(namings, teachings), namings }
}

/**
 * A class that has just been told its programme starts with the first of it, often without naming it again: what is taught
 * in front of everything named is that one.
 */
function withUnnamedFirst(speech: Speech, namings: readonly Naming[], teachings: readonly Teaching[]): Teaching[] {
  const start = Math.min(...teachings.flatMap(({ spans }) => spans.map(({ offset }) => offset)))
  const listed = namings.filter(({ listed, entry, offset }) => listed && entry !== null && offset < start)
  const [first] = listed
  const last = listed.at(-1)
  if (!first?.entry || !last || listed.length < 3) return [...teachings]
  const before = speech.sentences.filter(({ offset, end }) => offset > last.end && end <= start)
  const taught = before.filter(({ cues }) => cues.some(({ kind }) => kind === 'setup' || kind === 'execution'))
  const [opening] = taught
  const closing = before.filter(({ role }) => role === 'teach' || role === 'work').at(-1)
  if (!opening || !closing || taught.length < LEAST_TAUGHT || opening.index >= closing.index) return [...teachings]
  const span: TextSpan = { offset: opening.offset, end: closing.end }
  const own = teachings.find(({ entry }) => entry?.id === first.entry?.id)
  if (own?.spans[0]?.offset === start) return [...teachings]
  const others = teachings.filter((teaching) => teaching !== own)
  const made: Teaching = own
    ? { ...own, spans: [span, ...own.spans], ruleId: 'first-of-programme' }
    : {
        ...{ entry: first.entry, name: tidy(first.name), alsoCalled: [], spans: [span] },
        ...{ confidence: 0.4, ruleId: 'first-of-programme' },
      }
  return [made, ...others]
}

/** Sentences of set-up or movement that make a teaching. */
const LEAST_TAUGHT = 3

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
    const main = own.find((span) => span.cues >= Math.max(2, Math.min(4, most * MAIN_SHARE))) ?? own[0]
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

function pushTo<Key, Value>(lists: Map<Key, Value[]>, key: Key, value: Value): void {
  const list = lists.get(key)
  if (list) list.push(value)
  else lists.set(key, [value])
}

/** The main teaching is the first stretch with at least this share of the cues of the fullest one; what comes before announces it. */
const MAIN_SHARE = 0.3

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
