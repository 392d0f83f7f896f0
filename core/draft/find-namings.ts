/** Finds where exercises are named, and how surely each naming starts the teaching of one. */
import type { CatalogueEntry } from '../catalogue/entry.ts'
import { entryById } from '../catalogue/catalogue.ts'
import { findEntry, findNames, matchNames } from '../catalogue/find-entry.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import {
  BRINGS_NAME,
  CLOSES_WITH_NAME,
  NAME_ENDINGS,
  NEVER_IN_NAME,
  OPENING_WORDS,
  PASSING_AFTER,
  PASSING_BEFORE,
  PASSING_SENTENCE,
  UNKNOWN_NAME,
} from './words/en/announcing.ts'
import { DESCRIPTIONS } from './words/en/descriptions.ts'
import { anyPhrase } from './words/en/word-groups.ts'

/** One naming of an exercise. Offsets count in the running text. */
export interface Naming {
  entry: CatalogueEntry | null
  /** As spoken. */
  name: string
  offset: number
  end: number
  sentence: number
  /** 3 = alone or announced, 2 = opens a sentence or closes its set-up, 1 = announced to come, 0 = in passing. */
  strength: 0 | 1 | 2 | 3
  /** The name comes after the set-up ("that's your goblet squat"). */
  late: boolean
  /** Nothing stands in front of the name in its sentence, so that its set-up may have come before. */
  bare: boolean
  /** One of several names in a row: a programme, not a start. */
  listed: boolean
  /** Only the last word of a name, behind "back to that": it counts where such an exercise was taught. */
  back: boolean
  /** Told by what it does, not named. */
  described: boolean
}

/** All namings of a class in order. @param kit kit of the class, most likely first. */
export function findNamings(speech: Speech, kit: readonly string[]): Naming[] {
  const known = findNames(speech.text, { kit }).map((found) => {
    const { offset, end } = withTail(speech, withModifiers(speech, found.offset, found.offset + found.length))
    const name = speech.text.slice(offset, end)
    const isLonger = end > found.offset + found.length
    const entry =
      name.length === found.length ? found.entry : (findEntry(name, { kit }) ?? (isLonger ? null : found.entry))
    return rate(speech, { entry, name, offset, end })
  })
  const taken = new Set(known.filter((naming) => naming.strength >= 2).map((naming) => naming.sentence))
  const unknown = findUnknown(speech, taken)
  return markLists(
    speech,
    [...known, ...unknown.map((naming) => withSecondName(naming, known))].sort((a, b) => a.offset - b.offset),
  )
}

/** "The penguin walk, or heel walk": a known name in the same sentence says which exercise it is. */
function withSecondName(naming: Naming, known: readonly Naming[]): Naming {
  const second = known.find(
    (other) => other.sentence === naming.sentence && other.offset > naming.end && other.offset - naming.end <= 8,
  )
  return second ? { ...naming, entry: second.entry } : naming
}

const BRINGS = anyPhrase(BRINGS_NAME)
const CLOSES = anyPhrase(CLOSES_WITH_NAME)
const PASSES_BEFORE = anyPhrase(PASSING_BEFORE)
const PASSES_AFTER = anyPhrase(PASSING_AFTER)
const PASSES = anyPhrase(PASSING_SENTENCE)
const CALLS_TO_GO = anyPhrase([
  '^(?:go|first|please|again|everyone|everybody|lets go|here we go|off we go|now|then|to start|to finish|one|round)',
])
/** Goes into a held shape: "sit back into child's pose". */
const INTO_SHAPE = anyPhrase([
  '^(?:(?:and|so|now|right|okay|then|next|lets|from here|from there|slowly) )*(?:sit|come|push|lie|fold|roll|step|lower|drop|move|press|walk|melt|settle|ease|sink|go|back|all the way|down)(?: \\w+){0,4} (?:in)?to(?: the| a| an| your| our)?$',
])
/** Names what is going on: "we'll use this umbrella breathing". */
const THIS_NAME = anyPhrase(['^this$', '(?:use|keep|do|doing|repeat|love|like) this$'])
/** Goes to a place or takes kit for what is named: "pick up your weights for the biceps curl". */
const FOR_NAME = anyPhrase([
  '^(?:(?:and|so|now|right|okay|then|next|lets|can you|id like you to|i want you to|everybody|everyone|please) )*(?:pick|grab|get|take|keep|come|go|walk|move|stand|sit|lie|kneel|roll|turn|find|set|hold|bring|put|step|head|back|down|up|onto|over|hands|feet|swap|change)(?: \\w+)* for(?: the| a| an| our| your| some)?$',
])
const STARTS_WORK = anyPhrase([
  '^(?:stand|sit|lie|kneel|hands?|feet|foot|hold|grab|take|start|place|put|set|get|come|step|bend|reach|lift|lower|push|pull|drive|keep|find|face|lean|turn|arms?|knees?|elbows?|shoulders?|back|bell|bar|band|loop|wrap|so you|so were|its|for this|<num>)',
])

type Place = Pick<Naming, 'entry' | 'name' | 'offset' | 'end'>

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
  const tail = /^ ([\p{L}-]+)(?=[.,;:!?\n]|$)/u.exec(speech.text.slice(end, end + 24))?.[1]
  const last = tail === undefined ? undefined : foldWords(tail).at(-1)?.text
  const isName =
    tail !== undefined && last !== undefined && (NAME_ENDINGS.has(last) || last === 'support' || last === 'matrix')
  return isName && !NEVER_IN_NAME.has(tail.toLowerCase()) ? { offset, end: end + 1 + tail.length } : { offset, end }
}

/** Words that make another exercise of a known one. */
const MODIFIERS =
  /^(?:single|double|one|two|seated|standing|kneeling|lying|supine|prone|incline|decline|banded|weighted|assisted|spanish|bulgarian|romanian|lateral|side|reverse|walking|static|paused?|tempo|kettlebell|dumbbell|barbell|band|ring|cable|machine|goblet|alternating|half|full|high|low|wide|narrow|close|front|rear|elevated|deficit|overhead|isometric|eccentric|hanging|bodyweight|supported|sumo|arm|arms|leg|legs|handed|hand|armed|legged|heel|toe|wall|chair|box|bench|bent|straight|knee|hip|ankle|wrist|shoulder|calf|hamstring|quad|glute|chest|triceps?|biceps?|jumping|explosive|slow|deep|mini|plank|bear|crab|thoracic|pelvic|active|passive|[\p{L}]+-[\p{L}]+)$/u

/** How surely a name starts the teaching, from the words around it in its sentence. */
function rate(speech: Speech, place: Place): Naming {
  const index = speech.sentenceAt(place.offset)
  const sentence = speech.sentences[index]
  const from = sentence?.offset ?? 0
  const to = Math.max(sentence?.end ?? place.end, place.end)
  const before = speech.text.slice(from, place.offset)
  const rawAfter = speech.text.slice(place.end, to)
  const naming: Naming = {
    ...place,
    sentence: index,
    strength: 0,
    late: false,
    bare: plainWords(before) === '',
    listed: false,
    back: false,
    described: false,
  }
  const words = plainWords(speech.text.slice(from, to))
  return { ...naming, ...strengthOf(before, rawAfter, words, speech.unpunctuated, place.entry?.still === true) }
}

function strengthOf(
  rawBefore: string,
  rawAfter: string,
  words: string,
  unpunctuated: boolean,
  held: boolean,
): Pick<Naming, 'strength' | 'late'> {
  const passing = { strength: 0, late: false } as const
  const before = plainWords(rawBefore)
  const after = plainWords(rawAfter)
  const opens = before === '' || before.split(' ').every((word) => OPENING_WORDS.has(word))
  const ends = after === '' || /^\s*[.,;:!?…—–-]/.test(rawAfter) || rawAfter.startsWith('\n')
  if (PASSES_AFTER.test(after)) return passing
  const lastClause = plainWords(/[^,;:]*$/.exec(rawBefore)?.[0] ?? '')
  const brings = BRINGS.test(before) || (lastClause !== '' && BRINGS.test(lastClause))
  if (brings && !PASSES.test(words)) return { strength: 3, late: false }
  if (opens && /^next\b/.test(after)) return { strength: 2, late: false }
  if (opens && (after === '' || (ends && before === '') || CALLS_TO_GO.test(after))) return { strength: 3, late: false }
  if (held && ends && INTO_SHAPE.test(before) && !PASSES.test(words)) return { strength: 3, late: false }
  if (opens && unpunctuated) return { strength: STARTS_WORK.test(after) || after === '' ? 3 : 2, late: false }
  if (opens) return { strength: 2, late: false }
  if (THIS_NAME.test(before)) return { strength: 2, late: true }
  if (CLOSES.test(before) && ends) return { strength: 2, late: true }
  if (PASSES.test(words)) return passing
  if (ends && FOR_NAME.test(before)) return { strength: 3, late: false }
  const opensClause =
    /[,;:]/.test(rawBefore) && (lastClause === '' || lastClause.split(' ').every((word) => OPENING_WORDS.has(word)))
  if (opensClause && lastClause !== '' && /^(?:because|next|first|to (?:start|finish|end|begin))/.test(after))
    return { strength: 2, late: false }
  if (opensClause && ends) return { strength: 1, late: false }
  if (PASSES_BEFORE.test(before)) return passing
  if (unpunctuated && STARTS_WORK.test(after) && !/(?:^| )(?:a|an|the|your)$/.test(lastClause))
    return { strength: 2, late: false }
  return passing
}

/** Names that nobody listed: right behind an announcing phrase, or a short sentence that ends like a name before its set-up. */
function findUnknown(speech: Speech, taken: ReadonlySet<number>): Naming[] {
  return speech.sentences.flatMap((sentence, index) => {
    if (taken.has(index) || PASSES.test(sentence.words)) return []
    const said = speech.text.slice(sentence.offset, sentence.end)
    for (const pattern of UNKNOWN_NAME) {
      const name = pattern.exec(said)?.[1]?.trim()
      if (name !== undefined && isPossibleName(name) && findNames(name).length === 0)
        return [unknownAt(speech, index, sentence.offset + said.indexOf(name), name, 3)]
    }
    const back = BACK_TO.exec(said)?.[1]
    if (back !== undefined && !NEVER_IN_NAME.has(back.toLowerCase())) {
      return [{ ...unknownAt(speech, index, sentence.offset + said.indexOf(back), back, 3), back: true }]
    }
    const described = describedIn(speech, sentence)
    if (described) return [described]
    const bare = said
      .replace(/[.,;:!?…]+$/, '')
      .replace(/^(?:(?:and|then|so|now|right|okay|ok|next|next up|first|last)[ ,]+)+/i, '')
    const last = foldWords(bare).at(-1)?.text ?? ''
    const followed = speech.sentences[index + 1]?.cues.some((cue) => cue.kind === 'setup') === true
    if (
      !speech.unpunctuated &&
      followed &&
      NAME_ENDINGS.has(last) &&
      /\s/.test(bare) &&
      (isPossibleName(bare) || isLongerName(bare))
    ) {
      return [unknownAt(speech, index, sentence.offset + said.indexOf(bare), bare, 3)]
    }
    return []
  })
}

/** An exercise told by what it does ("let both knees fall to one side") where the class goes on to something new. */
function describedIn(speech: Speech, sentence: Sentence): Naming | null {
  const before = speech.sentences.slice(Math.max(0, sentence.index - 3), sentence.index)
  const isNew = before.some(({ role }) => role === 'move' || role === 'end') || sentence.role === 'move'
  if (!isNew) return null
  const said = speech.text.slice(sentence.offset, sentence.end)
  for (const { pattern, id } of DESCRIPTIONS) {
    const match = pattern.exec(said)
    const entry = match && entryById(id)
    if (!match || !entry) continue
    const offset = sentence.offset + match.index
    return {
      ...unknownAt(speech, sentence.index, offset, match[0], 2),
      entry,
      name: entry.name,
      bare: true,
      described: true,
    }
  }
  return null
}

/** "And back to that dog": the last word of a name used before. */
const BACK_TO = /\bback to (?:that|the|those|your|our) ([\p{L}]+)(?=[.,;:!?\n]|$| for | again| one)/iu

/** A known name and one more noun: another exercise, as "press up support". */
function isLongerName(name: string): boolean {
  const [first] = matchNames(name, foldWords(name))
  return first?.offset === 0 && /^ \S+$/.test(name.slice(first.length))
}

function unknownAt(speech: Speech, sentence: number, offset: number, name: string, strength: 2 | 3): Naming {
  return {
    entry: null,
    name,
    offset,
    end: offset + name.length,
    sentence,
    strength,
    late: false,
    bare: false,
    listed: false,
    back: false,
    described: false,
  }
}

function isPossibleName(name: string): boolean {
  const words = name.toLowerCase().replace(/[’]/g, "'").split(/\s+/)
  const first = words[0] ?? ''
  return (
    words.length <= 4 &&
    /\p{L}{3}/u.test(name) &&
    !words.some((word) => NEVER_IN_NAME.has(word)) &&
    !FIRST_VERBS.test(first)
  )
}

/** A sentence that begins so is an instruction, not a name. */
const FIRST_VERBS =
  /^(?:lift|lower|push|pull|bend|reach|keep|hold|stand|sit|lie|kneel|place|put|set|grab|step|turn|raise|drop|drive|open|close|squeeze|breathe|feel|press|stay|watch|mind|use|add|change|switch|swap|imagine|think|look|find|shake|walk|tuck|slide|roll|lean|stretch|pause|point|relax|try|stop|start|face|check|remember|hands|feet|knees|elbows|arms|eyes)$/

/** Marks runs of three or more exercises named within a few words of each other, and pairs before anything was taught. */
function markLists(speech: Speech, namings: readonly Naming[]): Naming[] {
  const firstTaught =
    namings.find((naming) => naming.strength === 3 && isTaughtFrom(speech, naming))?.offset ?? Infinity
  const runs: Naming[][] = []
  for (const naming of namings) {
    const run = runs.at(-1)
    const last = run?.at(-1)
    const gap = last ? speech.wordsBefore(naming.offset) - speech.wordsBefore(last.end) : Infinity
    if (run && gap <= LIST_GAP_WORDS && !isHeading(speech, naming)) run.push(naming)
    else runs.push([naming])
  }
  return runs.flatMap((run) => {
    const different = new Set(run.map((naming) => naming.entry?.id ?? naming.name.toLowerCase())).size
    const early = (run.at(-1)?.offset ?? 0) < firstTaught
    const isList = different >= 3 || (different === 2 && early && run.every((naming) => naming.strength < 3))
    return isList ? trimList(speech, run) : run
  })
}

/** A name that is a whole sentence and is taught right behind starts anew, however near the last name is. */
function isHeading(speech: Speech, naming: Naming): boolean {
  const sentence = speech.sentences[naming.sentence]
  const rest = sentence ? speech.text.slice(naming.end, sentence.end) : ''
  return naming.strength === 3 && plainWords(rest) === '' && isTaughtFrom(speech, naming)
}

const LIST_GAP_WORDS = 9

/** The last name of a list may already be the first exercise: alone in its sentence, announced, and taught right behind. */
function trimList(speech: Speech, run: readonly Naming[]): Naming[] {
  return run.map((naming, index) => {
    const isLast = index === run.length - 1
    const alone = !run.some((other) => other !== naming && other.sentence === naming.sentence)
    return { ...naming, listed: !(isLast && alone && naming.strength === 3 && isTaughtFrom(speech, naming)) }
  })
}

/** True when set-up or movement cues follow within the next three sentences. */
function isTaughtFrom(speech: Speech, naming: Naming): boolean {
  const next = speech.sentences.slice(naming.sentence, naming.sentence + 4)
  const cues = next.flatMap((sentence) => sentence.cues).filter((cue) => cue.offset >= naming.end)
  return cues.length >= 2 && cues.some((cue) => cue.kind === 'setup' || cue.kind === 'execution')
}
