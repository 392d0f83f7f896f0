/** Says whose a dose is: named beside it, taught where it is said, just taught, or of both that were named. */
import { foldName } from '../catalogue/fold-words.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Teaching } from './find-exercises.ts'
import { indexSpans } from './index-spans.ts'
import type { Naming } from './naming.ts'
import type { Speech } from './read-speech.ts'
import { OF_BOTH } from './words/en/counted-names.ts'
import { FOR_ALL, IN_TURNS } from './words/en/default-words.ts'

/** What is needed to tell whose dose a hit is. */
export interface Owning {
  teachings: readonly Teaching[]
  teachingOf: (naming: Naming) => number | null
  /** The teaching whose span holds a character. */
  teachingAt: (offset: number) => number | null
  bySentence: ReadonlyMap<number, readonly Naming[]>
}

/** Makes ready for a class. @param namings every naming of it */
export function readyOwning(teachings: readonly Teaching[], namings: readonly Naming[]): Owning {
  const spans = teachings.flatMap((teaching, owner) => teaching.spans.map((span) => ({ ...span, owner })))
  const bySentence = new Map<number, Naming[]>()
  for (const naming of namings) {
    const list = bySentence.get(naming.sentence)
    if (list) list.push(naming)
    else bySentence.set(naming.sentence, [naming])
  }
  return { teachings, teachingOf: matchTeachings(teachings), teachingAt: indexSpans(spans), bySentence }
}

/** The exercises that a dose is said for, by index, each with the dose as meant for it; none when it is said for a group or the class. */
export function findOwners(speech: Speech, hit: DoseHit, owning: Owning): { owner: number; hit: DoseHit }[] {
  if (hit.of)
    return [...new Set(hit.of.flatMap((naming) => owning.teachingOf(naming) ?? []))].map((owner) => ({ owner, hit }))
  const both = bothNamed(speech, hit, owning.teachings)
  if (both.length > 0) return both.map((owner) => ({ owner, hit: eachOfThem(hit) }))
  const owner = ownerOf(speech, hit, owning)
  return owner === null ? [] : [{ owner, hit }]
}

/** Says which teaching a naming belongs to: by name, by entry, or by the end of the name. */
function matchTeachings(teachings: readonly Teaching[]): (naming: Naming) => number | null {
  const byName = new Map<string, number>()
  const byEntry = new Map<string, number>()
  const byEnding = new Map<string, number>()
  teachings.forEach(({ entry, name, alsoCalled }, index) => {
    if (entry && !byEntry.has(entry.id)) byEntry.set(entry.id, index)
    for (const known of [name, ...alsoCalled].map(foldName)) if (!byName.has(known)) byName.set(known, index)
    const words = foldName(name).split(' ')
    words.slice(1).forEach((_, from) => {
      const ending = words.slice(from + 1).join(' ')
      if (!byEnding.has(ending)) byEnding.set(ending, index)
    })
  })
  return (naming) => {
    const folded = foldName(naming.name)
    return (
      byName.get(folded) ?? (naming.entry ? byEntry.get(naming.entry.id) : undefined) ?? byEnding.get(folded) ?? null
    )
  }
}

/** Whose dose it is: the exercise named before it in its sentence, else the one being taught; null outside all. */
function ownerOf(speech: Speech, hit: DoseHit, owning: Owning): number | null {
  const inside = owning.teachingAt(hit.offset)
  const inSentence = owning.bySentence.get(hit.sentence) ?? []
  const before = inSentence.filter((naming) => naming.end <= hit.offset + 1).at(-1)
  const after = inSentence.find(
    (naming) =>
      naming.offset >= hit.offset &&
      (naming.offset < hit.end ||
        /^\s*(?:on|of|for|with) (?:the |your |those |these )?$/i.test(speech.text.slice(hit.end, naming.offset))),
  )
  for (const naming of [before, after]) {
    if (naming && inside !== null && isPassedBy(speech, naming)) continue
    const named = naming && mayTakeDose(naming, before, hit, inside) ? owning.teachingOf(naming) : null
    if (named !== null) return named
  }
  if (inside !== null) return inside
  const opens =
    speech.wordsBefore(hit.offset) - speech.wordsBefore(speech.sentences[hit.sentence]?.offset ?? 0) <= OPENING_WORDS
  const previous = opens ? previousSentenceName(speech, hit, owning) : null
  const named = previous && owning.teachingOf(previous)
  return named ?? (inSentence.length > 0 ? null : justTaught(speech, hit, owning))
}

/** A dose of what was named in the sentence before opens its own: "Then the swing. That's ten of those." */
const OPENING_WORDS = 3

/** "After those squats, eight each leg": named in passing. */
function isPassedBy(speech: Speech, { offset, listed }: Naming): boolean {
  const before = speech.text.slice(Math.max(0, offset - PASSING_CHARACTERS), offset)
  return (
    !listed &&
    /\b(?:after|before|than|like|unlike|from|as in)(?: (?:those|these|the|your|that|all|our))*\s+$/i.test(before)
  )
}

const PASSING_CHARACTERS = 24

/** "Two sets of that, a minute between" behind a teaching, before anything else starts, belongs to it. */
function justTaught(speech: Speech, hit: DoseHit, { teachingAt }: Owning): number | null {
  const said = speech.sentences[hit.sentence]
  if (!said || FOR_ALL.test(said.words) || isOfAll(said.words) || said.role === 'move') return null
  for (let index = hit.sentence - 1; index >= hit.sentence - BEHIND_SENTENCES; index--) {
    const before = speech.sentences[index]
    if (!before || before.role === 'move' || isOfAll(before.words)) return null
    const owner = teachingAt(before.end - 1)
    if (owner !== null) return owner
  }
  return null
}

/** "That's one round" is of the one just done, other rounds are of all that goes in turns. */
function isOfAll(words: string): boolean {
  return IN_TURNS.test(words) && !/^(?:and |so |okay )*thats (?:a|one) round\b/.test(words)
}

const BEHIND_SENTENCES = 2

/** Inside a teaching, a name in passing takes the dose only where it is set against another or puts something right. */
function mayTakeDose(naming: Naming, before: Naming | undefined, hit: DoseHit, inside: number | null): boolean {
  if (inside === null || naming.listed) return true
  return hit.corrects || (naming === before && naming.strength >= 2) || hit.offset - naming.end < 14
}

/** In a programme the dose may follow its name in a sentence of its own: "Then the swing. Ten of those." */
function previousSentenceName(speech: Speech, hit: DoseHit, owning: Owning): Naming | null {
  const near = [...(owning.bySentence.get(hit.sentence - 1) ?? []), ...(owning.bySentence.get(hit.sentence) ?? [])]
  const last = near.filter((naming) => naming.listed && naming.end <= hit.offset).at(-1)
  return last && speech.wordsBefore(hit.offset) - speech.wordsBefore(last.end) <= 8 ? last : null
}

/** The two exercises named in front of "same for both of them, ten each"; none where nothing says so. */
function bothNamed(speech: Speech, hit: DoseHit, teachings: readonly Teaching[]): number[] {
  const from = Math.max(0, hit.offset - BOTH_CHARACTERS)
  const found = OF_BOTH.exec(speech.text.slice(from, hit.end))
  if (!found) return []
  const at = from + found.index
  const said = speech.text.slice(Math.max(0, at - NAMES_CHARACTERS), at).toLowerCase()
  const near = teachings.flatMap(({ name, alsoCalled }, index) => {
    const place = Math.max(...[name, ...alsoCalled].map((one) => said.lastIndexOf(one)))
    return place < 0 ? [] : [{ index, place }]
  })
  const both = near.toSorted((a, b) => b.place - a.place).slice(0, 2)
  return both.length === 2 ? both.map(({ index }) => index) : []
}

const BOTH_CHARACTERS = 45
const NAMES_CHARACTERS = 70

/** "Those two are ten each": each of the exercises, not of the sides. */
function eachOfThem(hit: DoseHit): DoseHit {
  const isSided = /\b(?:side|leg|arm|hand|foot|way)\b/i.test(hit.quote.text)
  return isSided ? hit : { ...hit, dose: { ...hit.dose, perSide: false } }
}
