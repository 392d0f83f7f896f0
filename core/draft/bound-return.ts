/** Bounds a return: from where it is called to where the class has its rest or talks; what is said outside is about no exercise. */
import { foldWords } from '../catalogue/fold-words.ts'
import type { Teaching } from './find-exercises.ts'
import type { HeardTurn } from './hear-turns.ts'
import { withoutTalk } from './place-spans.ts'
import type { TextSpan } from './place-spans.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { REST_CALL, SHARED_WORDS } from './words/en/call-words.ts'

/** An exercise with its returns from where they are called to where talk begins. Doses are read before: what a round is opened with may tell them. */
export function boundReturns(speech: Speech, heard: readonly HeardTurn[], teaching: Teaching): Teaching {
  const names = [teaching.name, ...teaching.alsoCalled]
  const spans = teaching.spans.map((span, index) =>
    index === 0 ? span : withoutTalk(speech, heard, startAtCall(speech, span, names)),
  )
  return { ...teaching, spans }
}

/** The stretch from where it is called by name, where only a round was opened before: "Round two, off you go. Squats." */
export function startAtCall(speech: Speech, span: TextSpan, names: readonly string[]): TextSpan {
  if (span.called !== undefined) return span.called < span.end ? { ...span, offset: span.called } : span
  const own = new Set(names.flatMap((name) => foldWords(name)).map(({ text }) => text))
  const isOwn = (text: string): boolean => text.length > 2 && !SHARED_WORDS.has(text) && own.has(text)
  const first = speech.sentenceAt(span.offset)
  for (let index = first; index <= first + MOST_OPENING; index += 1) {
    const sentence = speech.sentences[index]
    if (!sentence || sentence.end > span.end) return span
    const said = foldWords(speech.text.slice(Math.max(span.offset, sentence.offset), sentence.end))
    if (said.some(({ text }) => isOwn(text))) return index === first ? span : { ...span, offset: sentence.offset }
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
