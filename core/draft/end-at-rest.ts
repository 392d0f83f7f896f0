/** Ends a return where the class has its rest: what is said there is about no exercise. */
import type { TextSpan } from './place-spans.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { REST_CALL } from './words/en/call-words.ts'

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
