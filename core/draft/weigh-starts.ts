/** Says of each candidate how likely it starts the teaching of an exercise, from the weights of its features. */
import { findCandidates } from './find-candidates.ts'
import type { Candidate, Naming } from './naming.ts'
import type { PickedName } from './pick-names.ts'
import type { Speech } from './read-speech.ts'
import { startFeatures } from './start-features.ts'
import { LAIN_ON, MUSCLE } from './words/en/name-shapes.ts'
import { START_WEIGHTS } from './words/en/start-weights.ts'
import { groupOf } from './words/en/word-groups.ts'

/** A teaching that begins at a sentence; null = nobody names it. */
export interface Opening {
  sentence: number
  name: PickedName | null
}

/** A candidate and the log of the odds that it starts the teaching of an exercise. */
export interface WeighedCandidate {
  candidate: Candidate
  odds: number
}

/** All candidates of a class in order, weighed. @param kit kit of the class, most likely first. */
export function weighCandidates(speech: Speech, kit: readonly string[]): WeighedCandidate[] {
  const candidates = findCandidates(speech, kit)
  const features = startFeatures(speech, candidates)
  return candidates.map((candidate, index) => ({
    candidate,
    odds: oddsOf(features[index] ?? [], speech.unpunctuated) - doubtOf(speech, candidate),
  }))
}

/**
 * The namings of a class with their strength by weight: 3 = surely a start, 2 = likely, below = none. Of candidates that
 * share words the likeliest stands. @param openings the teachings of the class with their names
 */
export function settleNamings(
  speech: Speech,
  weighed: readonly WeighedCandidate[],
  openings: readonly Opening[],
): Naming[] {
  const begins = new Map(openings.flatMap(({ sentence, name }) => (name?.inside ? [[name.candidate, sentence]] : [])))
  const opened = new Set(openings.flatMap(({ name }) => name?.candidate.key ?? []))
  const stand = weighed.flatMap(({ candidate, odds }, index): { candidate: Candidate; strength: 0 | 1 | 2 | 3 }[] => {
    const isBeaten = (other: WeighedCandidate | undefined, isEarlier: boolean): boolean =>
      other !== undefined &&
      other.candidate.offset < candidate.end &&
      candidate.offset < other.candidate.end &&
      (begins.has(other.candidate) ||
        (!begins.has(candidate) && (other.odds > odds || (other.odds === odds && isEarlier))))
    // a name has at most a few words, so those that share words lie near
    for (let step = 1; step <= NEAR; step++) {
      if (isBeaten(weighed[index - step], true) || isBeaten(weighed[index + step], false)) return []
    }
    const least = begins.has(candidate) ? 2 : 0
    const isPassing = !begins.has(candidate) && !opened.has(candidate.key)
    const strength = odds > SURELY ? 3 : odds > 0 ? 2 : least
    return [{ candidate, strength: isPassing && strength > 1 ? 1 : strength }]
  })
  const started = new Set(stand.filter(({ strength }) => strength >= 2).map(({ candidate }) => candidate.key))
  const namings = stand.flatMap(({ candidate, strength }): Naming[] => {
    // a name of the coach's own that is no start tells something only where a programme announces what starts later
    const isAnnounced = candidate.listed && started.has(candidate.key)
    if (candidate.entry === null && strength < 2 && !isAnnounced) return []
    const begin = begins.get(candidate)
    const own = { ...candidate, strength, listed: strength < 2 && candidate.listed }
    return [begin === undefined ? own : { ...own, begins: begin }]
  })
  const unsaid = openings.flatMap((opening) => (opening.name?.inside === true ? [] : namingAt(speech, opening)))
  return unsaid.length === 0 ? namings : [...namings, ...unsaid].sort((a, b) => a.offset - b.offset)
}

/** What is not named in its teaching bears the name it was announced by, else the first words of the teaching. */
function namingAt(speech: Speech, { sentence: index, name }: Opening): Naming[] {
  const sentence = speech.sentences[index]
  if (!sentence) return []
  const [words = ''] = /^(?:[\p{L}\d'’-]+ ?){1,4}/u.exec(speech.text.slice(sentence.offset, sentence.end)) ?? []
  const own = name?.candidate
  return [
    {
      ...{ entry: own?.entry ?? null, kind: own?.kind ?? 'own', name: own?.name ?? words.trim(), strength: 2 },
      ...{ offset: sentence.offset, end: sentence.offset, sentence: index, late: false, bare: false, listed: false },
      ...{ back: false, described: own === undefined, begins: index },
    },
  ]
}

const SURELY = 1.2
const NEAR = 4

/** Where marks are missing, words that nobody listed look like a name by chance, one word alone the most. */
function doubtOf(speech: Speech, { entry, name, source, offset, end }: Candidate): number {
  const isYours = /\b(?:your|their|our) $/i.test(speech.text.slice(Math.max(0, offset - 8), offset))
  if (/^balance$/i.test(name) && isYours) return NO_NAME
  const before = speech.text.slice(Math.max(0, offset - 22), offset)
  if (LAIN_ON.test(name.toLowerCase()) && /\b(?:on|onto|on to|over|to) (?:your|the|our|all) $/i.test(before))
    return NO_NAME
  // "it's called Huw": in the middle of a sentence a capital letter makes a person of a single word
  if (entry === null && /^\p{Lu}\p{Ll}+$/u.test(name) && /[\p{Ll},] $/u.test(before) && !speech.unpunctuated)
    return NO_NAME
  if (LEFT_OUT.test(speech.text.slice(end, end + 45))) return NO_NAME
  const isHad = /\bhave (?:a|your|another) (?:little |quick |good |wee )?$/i.test(before)
  if (entry === null && isHad) return NO_NAME
  if (entry === null && groupOf(name.toLowerCase()) === 'part' && !MUSCLE.test(name.toLowerCase())) return NO_NAME
  if (ANOTHER_DAY.test(before)) return NO_NAME
  if (!speech.unpunctuated || entry !== null) return 0
  return /\s/.test(name) || source === 'brought' || source === 'closed' ? UNSURE : MOST_UNSURE
}
/** "Next time get ups." */
const ANOTHER_DAY =
  /\b(?:next|another)\s(?:time|week|class|session|day)(?:'s|,|:|\sis|\sit's|\swe'll\sdo|\swe\sdo)?\s(?:the\s|your\s|our\s)?$/i
/** "Skin the cat's not on the list." */
const LEFT_OUT =
  /^(?:['’]s| is| are|['’]re)? (?:not|isn['’]?t|aren['’]?t) (?:on (?:the|our|your|my) (?:list|menu|plan|card|programme|program|board)|happening|for today|today)\b/i
const UNSURE = 0.2
/** "It's for your balance", and "Toes." */
const NO_NAME = 9
const MOST_UNSURE = 1

/** The log of the odds that a candidate with such features is a start. */
export function oddsOf(features: readonly string[], unpunctuated: boolean): number {
  const side = unpunctuated ? PLAIN : MARKED
  return features.reduce((sum, feature) => sum + (side.get(feature) ?? 0), 0)
}

const MARKED = tableOf([...START_WEIGHTS.always, ...START_WEIGHTS.marked])
const PLAIN = tableOf([...START_WEIGHTS.always, ...START_WEIGHTS.plain])

function tableOf(rows: readonly (readonly [weight: number, features: string])[]): Map<string, number> {
  const table = new Map<string, number>()
  for (const [weight, features] of rows)
    for (const feature of features.split('|')) table.set(feature, (table.get(feature) ?? 0) + weight)
  return table
}
