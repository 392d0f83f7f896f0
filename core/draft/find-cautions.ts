/** Finds the cautions that were said: which hazard they speak of, for one exercise or the whole class, in exact words. */
import type { Caution } from '../../shared/log-sheet.ts'
import { hazardsIn, isClassWide } from '../cautions/find-hazards.ts'
import { indexSpans } from './index-spans.ts'
import { quoteSentence } from './quote-piece.ts'
import type { TextSpan } from './place-spans.ts'
import type { Sentence, Speech } from './read-speech.ts'

/** The cautions spoken inside an exercise's spans. */
export function findSpokenCautions(speech: Speech, spans: readonly TextSpan[]): Caution[] {
  return spans.flatMap((span) =>
    sentencesIn(speech, span).flatMap((sentence) => cautionsOf(speech, sentence, 'exercise')),
  )
}

/** The cautions spoken outside all exercises, or with words that reach the whole class. */
export function findClassCautions(speech: Speech, spans: readonly TextSpan[]): Caution[] {
  const isInside = indexSpans(spans.map((span) => ({ ...span, owner: true })))
  return speech.sentences.flatMap((sentence) => {
    const isOwn = isInside(sentence.offset) !== null
    if (isOwn && !isClassWide(speech.text.slice(sentence.offset, sentence.end))) return []
    return cautionsOf(speech, sentence, 'class')
  })
}

/** The sentences that start inside a span. */
export function sentencesIn(speech: Speech, span: TextSpan): Sentence[] {
  const first = speech.sentenceAt(span.offset)
  const last = speech.sentenceAt(Math.max(span.offset, span.end - 1))
  return speech.sentences
    .slice(first, last + 1)
    .filter((sentence) => sentence.end > span.offset && sentence.offset < span.end)
}

function cautionsOf(speech: Speech, sentence: Sentence, scope: Caution['scope']): Caution[] {
  if (sentence.cues.length === 0 && sentence.role !== 'chat') return []
  const hazards = hazardsIn(speech.text.slice(sentence.offset, sentence.end))
  if (hazards.length === 0) return []
  const isCue = sentence.cues.some((cue) => cue.kind === 'caution')
  const { text, atMs } = quoteSentence(speech, sentence)
  return hazards.map((hazard) => ({
    hazard,
    scope,
    source: 'spoken' as const,
    text,
    atMs,
    origin: 'draft' as const,
    state: 'proposed' as const,
    confidence: isCue ? 0.8 : 0.6,
    ruleId: 'caution-spoken',
  }))
}
