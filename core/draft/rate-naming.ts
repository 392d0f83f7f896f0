/** Says how surely the name of an exercise starts its teaching, from the words around it in its sentence. */
import { BRINGS, CLOSES, NOT_NOW, PASSES, PASSES_AFTER, PASSES_BEFORE } from './announcing-tests.ts'
import type { Naming } from './naming.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { OPENING_WORDS } from './words/en/announcing.ts'
import { anyPhrase } from './words/en/word-groups.ts'

export type Place = Pick<Naming, 'entry' | 'kind' | 'name' | 'offset' | 'end'>

/** How surely a name starts the teaching, from the words around it in its sentence. */
export function rateNaming(speech: Speech, place: Place): Naming {
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
  const ends = after === '' || /^[\n\v]|^\s*[.,;:!?…—–-]/.test(rawAfter)
  if (PASSES_AFTER.test(after) || NOT_NOW.test(words)) return passing
  const lastClause = plainWords(/[^,;:\v]*$/.exec(rawBefore)?.[0] ?? '')
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
  if (ends && (FOR_NAME.test(before) || FOR_NAME.test(lastClause))) return { strength: 3, late: false }
  const opensClause =
    /[,;:\v]/.test(rawBefore) && (lastClause === '' || lastClause.split(' ').every((word) => OPENING_WORDS.has(word)))
  if (opensClause && lastClause !== '' && /^(?:because|next|first|to (?:start|finish|end|begin))/.test(after))
    return { strength: 2, late: false }
  if (opensClause && ends) return { strength: 1, late: false }
  if (PASSES_BEFORE.test(before)) return passing
  if (unpunctuated && STARTS_WORK.test(after) && !/(?:^| )(?:a|an|the|your)$/.test(lastClause))
    return { strength: 2, late: false }
  return passing
}

/** True when a sentence tells of something else than what is done now. */
export function isPassing(words: string): boolean {
  return PASSES.test(words) || NOT_NOW.test(words)
}

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
  '^(?:(?:and|so|now|right|okay|then|next|lets|can you|id like you to|i want you to|everybody|everyone|please|to finish|to start|to end|finally|lastly|last) )*(?:pick|grab|get|take|keep|start|begin|come|go|walk|move|stand|sit|lie|kneel|roll|turn|find|set|hold|bring|put|step|head|back|down|up|onto|over|hands|feet|swap|change)(?: \\w+)* for(?: the| a| an| our| your| some)?$',
])
const STARTS_WORK = anyPhrase([
  '^(?:stand|sit|lie|kneel|hands?|feet|foot|hold|grab|take|start|place|put|set|get|come|step|bend|reach|lift|lower|push|pull|drive|keep|find|face|lean|turn|arms?|knees?|elbows?|shoulders?|back|bell|bar|band|loop|wrap|so you|so were|its|for this|<num>)',
])
