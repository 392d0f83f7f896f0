/** Finds where exercises are named, and how surely each naming starts the teaching of one. */
import { findEntry, findNames } from '../catalogue/find-entry.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import { findUnlisted } from './find-unlisted.ts'
import { markLists } from './mark-lists.ts'
import type { Naming } from './naming.ts'
import { promoteNamings } from './promote-namings.ts'
import { rateNaming } from './rate-naming.ts'
import type { Speech } from './read-speech.ts'
import { NAME_ENDINGS, NEVER_IN_NAME, OPENING_WORDS } from './words/en/announcing.ts'

/** All namings of a class in order. @param kit kit of the class, most likely first. */
export function findNamings(speech: Speech, kit: readonly string[]): Naming[] {
  const known = findNames(speech.text, { kit }).map((found) => {
    const { offset, end } = withTail(speech, withModifiers(speech, found.offset, found.offset + found.length))
    const name = speech.text.slice(offset, end)
    const isLonger = end > found.offset + found.length
    const entry =
      name.length === found.length ? found.entry : (findEntry(name, { kit }) ?? (isLonger ? null : found.entry))
    const kind = name.length === found.length ? found.kind : 'own'
    const rated = rateNaming(speech, { entry, kind, name, offset, end })
    return kind !== 'own' && lacksKit(entry, kit) ? { ...rated, strength: 0 as const } : rated
  })
  const taken = new Set(known.filter((naming) => naming.strength >= 2).map((naming) => naming.sentence))
  const unlisted = findUnlisted(speech, taken).map((naming) => withSecondName(naming, known))
  const inOrder = [...known, ...unlisted].sort((a, b) => a.offset - b.offset)
  return promoteNamings(speech, markLists(speech, inOrder))
}

/** "Feet out" is rowing only where a rowing machine is talked of. */
function lacksKit(entry: Naming['entry'], kit: readonly string[]): boolean {
  return entry?.kit.some((piece) => piece === 'rowing machine') === true && !kit.includes('rowing machine')
}

/** "The penguin walk, or heel walk": a known name in the same sentence says which exercise it is. */
function withSecondName(naming: Naming, known: readonly Naming[]): Naming {
  const second = known.find(
    (other) => other.sentence === naming.sentence && other.offset > naming.end && other.offset - naming.end <= 8,
  )
  return second ? { ...naming, entry: second.entry } : naming
}

/** Takes the kit and manner words in front of a name into it, where they open the clause: "spanish squats". */
function withModifiers(speech: Speech, offset: number, end: number): { offset: number; end: number } {
  const before = /(?:^|[.,;:!?]\s+|\s)((?:[\p{L}-]+ ){1,2})$/u.exec(speech.text.slice(Math.max(0, offset - 40), offset))
  const words = before?.[1]?.trim().split(' ') ?? []
  let from = offset
  for (const word of words.reverse()) {
    const plain = word.toLowerCase()
    if (NEVER_IN_NAME.has(plain) || OPENING_WORDS.has(plain) || !MODIFIERS.test(plain)) break
    from -= word.length + 1
  }
  return { offset: from, end }
}

/** Takes a noun behind a name into it where the sentence ends there: "press up support". */
function withTail(speech: Speech, { offset, end }: { offset: number; end: number }): { offset: number; end: number } {
  const tail = /^ ([\p{L}-]+)(?=[.,;:!?\n\v]|$)/u.exec(speech.text.slice(end, end + 24))?.[1]
  const last = tail === undefined ? undefined : foldWords(tail).at(-1)?.text
  const isName =
    tail !== undefined && last !== undefined && (NAME_ENDINGS.has(last) || last === 'support' || last === 'matrix')
  return isName && !NEVER_IN_NAME.has(tail.toLowerCase()) ? { offset, end: end + 1 + tail.length } : { offset, end }
}

/** Words that make another exercise of a known one. */
const MODIFIERS =
  /^(?:single|double|one|two|seated|standing|kneeling|lying|supine|prone|incline|decline|banded|weighted|assisted|spanish|bulgarian|romanian|lateral|side|reverse|walking|static|paused?|tempo|kettlebell|dumbbell|barbell|band|ring|cable|machine|goblet|alternating|half|full|high|low|wide|narrow|close|front|rear|elevated|deficit|overhead|isometric|eccentric|hanging|bodyweight|supported|sumo|arm|arms|leg|legs|handed|hand|armed|legged|heel|toe|wall|chair|box|bench|bent|straight|knee|hip|ankle|wrist|shoulder|calf|hamstring|quad|glute|chest|triceps?|biceps?|jumping|explosive|slow|deep|mini|plank|bear|crab|thoracic|pelvic|active|passive|[\p{L}]+-[\p{L}]+)$/u
