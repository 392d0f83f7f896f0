/** Bounds a return: from where it is called to where the class has its rest or talks; what is said outside is about no exercise. */
import { foldWords } from '../catalogue/fold-words.ts'
import type { HeardTurn } from './hear-turns.ts'
import { withoutTalk } from './place-spans.ts'
import type { TextSpan } from './place-spans.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { REST_CALL, SHARED_WORDS } from './words/en/call-words.ts'

/** The stretch of a return. @param names what the exercise is called */
export function boundReturn(
  speech: Speech,
  span: TextSpan,
  { heard, names }: { heard: readonly HeardTurn[]; names: readonly string[] },
): TextSpan {
  return endAtRest(speech, withoutTalk(speech, heard, startAtCall(speech, span, names)))
}

/** The stretch from where it is called by name, where only a round was opened before: "Round two, off you go. Squats." */
export function startAtCall(speech: Speech, span: TextSpan, names: readonly string[]): TextSpan {
  const words = new Set(names.flatMap((name) => foldWords(name)).map(({ text }) => text))
  const first = speech.sentenceAt(span.offset)
  for (let index = first; index <= first + MOST_OPENING; index += 1) {
    const sentence = speech.sentences[index]
    if (!sentence || sentence.end > span.end) return span
    const said = foldWords(speech.text.slice(Math.max(span.offset, sentence.offset), sentence.end))
    const isNamed = said.some(({ text }) => text.length > 2 && !SHARED_WORDS.has(text) && words.has(text))
    if (isNamed) return index === first ? span : { ...span, offset: sentence.offset }
    if (isTaught(sentence)) return span
  }
  return span
}

/** A round is opened in so many sentences. */
const MOST_OPENING = 3

/** The stretch up to the first rest, with a call of a few words that ends the work; the whole where it goes on behind. */
export function endAtRest(speech: Speech, span: TextSpan): TextSpan {
  const first = speech.sentenceAt(span.offset)
  const last = speech.sentenceAt(Math.max(span.offset, span.end - 1))
  const all = speech.sentences.slice(first, last + 1).filter(isTaught).length
  let taught = 0
  for (let index = first; index <= last; index += 1) {
    const sentence = speech.sentences[index]
    if (!sentence) break
    const behind = all - taught - (isTaught(sentence) ? 1 : 0)
    if (index > first && isRest(sentence) && behind <= taught / 2) {
      const isCall = sentence.wordCount <= CALL_WORDS
      const end = isCall ? sentence.end : (speech.sentences[index - 1]?.end ?? span.end)
      return { ...span, end: Math.min(span.end, Math.max(end, span.offset + 1)) }
    }
    if (isTaught(sentence)) taught += 1
  }
  return span
}

/** "And rest" belongs to the work, "minute off, then it's the second round" does not. */
const CALL_WORDS = 2

function isRest({ role, words }: Sentence): boolean {
  return role === 'end' || REST_CALL.test(words)
}

function isTaught({ role }: Sentence): boolean {
  return role === 'teach'
}
