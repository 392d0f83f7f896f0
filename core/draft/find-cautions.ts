/** Finds the cautions that were said: which hazard they speak of, for one exercise or the whole class, in exact words. */
import type { Caution } from '../../shared/log-sheet.ts'
import { hazardsIn, isClassWide } from '../cautions/find-hazards.ts'
import type { HazardSlug } from '../cautions/hazard-slugs.ts'
import { warningsIn } from '../cautions/weigh-warnings.ts'
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
  const first = Math.min(...spans.map(({ offset }) => offset))
  const last = Math.max(...spans.map(({ end }) => end))
  let before: Sentence | null = null
  return speech.sentences.flatMap((sentence) => {
    const isOwn = isInside(sentence.offset) !== null
    if (!isOwn) {
      const found = [...cautionsOf(speech, sentence, 'class'), ...cautionsAcross(speech, before, sentence)]
      before = sentence
      if (sentence.offset < first || isClassWide(wordsOf(speech, sentence))) return found
      return sentence.offset > last ? [] : found.filter(({ hazard }) => !OF_ONE_EXERCISE.includes(hazard))
    }
    before = null
    if (isClassWide(wordsOf(speech, sentence))) {
      const own = cautionsOf(speech, sentence, 'class')
      const next = speech.sentences[sentence.index + 1]
      if (own.length > 0 || !next || sentence.wordCount + next.wordCount > TOGETHER_WORDS) return own
      return cautionsOf(speech, next, 'class').filter(({ hazard }) => !OF_ONE_EXERCISE.includes(hazard))
    }
    if (sentence.offset > speech.text.length * OPENING) return []
    return cautionsOf(speech, sentence, 'class').filter(({ hazard }) => hazard === 'pain-stop')
  })
}

/** Between two exercises these are said of the one just done or the next, not of the class. */
const OF_ONE_EXERCISE: readonly string[] = [
  'neck-pull',
  'inverted-head-down',
  'loaded-spinal-flexion',
  'dizziness-rise',
  'bone-health',
  'supine-pregnancy',
  'coning',
  'knee-tracking',
  'knee-torsion',
  'overhead-shoulder',
  'safe-dismount',
  'lumbar-extension',
  'pain-stop',
] satisfies HazardSlug[]

/** A rule on pain that is told in the first minute or so of a class holds for all of it. */
const OPENING = 0.075

/** What two sentences in a row say only together: "Sharp pain? You stop." */
function cautionsAcross(speech: Speech, before: Sentence | null, sentence: Sentence): Caution[] {
  if (before === null || before.wordCount + sentence.wordCount > TOGETHER_WORDS) return []
  const words = [before, sentence].map((one) => wordsOf(speech, one))
  const apart = new Set(words.flatMap(hazardsIn))
  const joined = words.map((said) => said.replace(/[.!?;:…]+/g, ',')).join(', ')
  return marksOf(
    speech,
    sentence,
    'class',
    hazardsIn(joined).filter((hazard) => !apart.has(hazard) && !OF_ONE_EXERCISE.includes(hazard)),
  )
}

/** Two sentences longer than this are not one thought. */
const TOGETHER_WORDS = 24

function wordsOf(speech: Speech, sentence: Sentence): string {
  return speech.text.slice(sentence.offset, sentence.end)
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
  const words = wordsOf(speech, sentence)
  return marksOf(speech, sentence, scope, [...new Set([...hazardsIn(words), ...warningsIn(words)])])
}

function marksOf(
  speech: Speech,
  sentence: Sentence,
  scope: Caution['scope'],
  hazards: readonly HazardSlug[],
): Caution[] {
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
