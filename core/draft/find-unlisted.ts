/** Finds exercises that no list names: announced with a name of the coach's own, told by what they do, or come back to by half a name. */
import { entryById } from '../catalogue/catalogue.ts'
import { findNames, matchNames } from '../catalogue/find-entry.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import type { Naming } from './naming.ts'
import { isPassing } from './rate-naming.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { NAME_ENDINGS, NEVER_IN_NAME, UNKNOWN_BY_ENDING, UNKNOWN_NAME } from './words/en/announcing.ts'
import { DESCRIPTIONS } from './words/en/descriptions.ts'
import { OPENS_INSTRUCTION, SPEAKS } from './words/en/name-shapes.ts'

/** Names that nobody listed: right behind an announcing phrase, or a short sentence that ends like a name before its set-up. */
export function findUnlisted(speech: Speech, taken: ReadonlySet<number>): Naming[] {
  return speech.sentences.flatMap((sentence, index) => {
    if (taken.has(index) || isPassing(sentence.words)) return []
    const said = speech.text.slice(sentence.offset, sentence.end)
    for (const pattern of UNKNOWN_NAME) {
      const name = pattern.exec(said)?.[1]?.trim()
      if (name !== undefined && isPossibleName(name) && findNames(name).length === 0)
        return [unknownAt(speech, index, sentence.offset + said.indexOf(name), name, 3)]
    }
    const isTaught = [sentence, ...speech.sentences.slice(index + 1, index + 3)]
      .flatMap(({ cues }) => cues)
      .some(({ kind }) => kind === 'setup' || kind === 'execution' || kind === 'breathing')
    for (const pattern of isTaught ? UNKNOWN_BY_ENDING : []) {
      const name = pattern.exec(said)?.[1]?.trim()
      if (name === undefined || !isPossibleName(name) || findNames(name).length > 0) continue
      if (NAME_ENDINGS.has(foldWords(name).at(-1)?.text ?? ''))
        return [unknownAt(speech, index, sentence.offset + said.indexOf(name), name, 2)]
    }
    const back = BACK_TO.exec(said)?.[1]
    if (back !== undefined && !NEVER_IN_NAME.has(back.toLowerCase())) {
      return [{ ...unknownAt(speech, index, sentence.offset + said.indexOf(back), back, 3), back: true }]
    }
    const called = CALLED_TO_GO.exec(sentence.words)?.[1]
    if (called !== undefined && !NEVER_IN_NAME.has(called)) {
      const at = said.toLowerCase().indexOf(called)
      if (at >= 0) return [{ ...unknownAt(speech, index, sentence.offset + at, called, 3), back: true }]
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
const BACK_TO = /\bback to (?:that|the|those|your|our) ([\p{L}]+)(?=[.,;:!?\n\v]|$| for | again| one)/iu

/** "And the taps, go": as above, called to start. */
const CALLED_TO_GO = /^(?:(?:and|okay|right|now|then|the|last|those|with) )*([a-z]{3,}) go$/

/** A known name and one more noun: another exercise, as "press up support". */
function isLongerName(name: string): boolean {
  const [first] = matchNames(name, foldWords(name))
  return first?.offset === 0 && /^ \S+$/.test(name.slice(first.length))
}

function unknownAt(speech: Speech, sentence: number, offset: number, name: string, strength: 2 | 3): Naming {
  return {
    entry: null,
    kind: 'own',
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
    !/\d/.test(name) &&
    /\p{L}{3}/u.test(name) &&
    !words.some((word) => NEVER_IN_NAME.has(word)) &&
    !OPENS_INSTRUCTION.test(first) &&
    !SPEAKS.test(words.join(' ').replaceAll("'", ''))
  )
}
