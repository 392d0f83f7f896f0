/** Clauses with the kinds of cue that people marked in them: what the weights of cues are fitted on. */
import { cueFeatures } from '../../core/draft/cue-features.ts'
import type { CluePlace } from '../../core/draft/cue-features.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import type { Speech } from '../../core/draft/read-speech.ts'
import { plainWords, splitClauses } from '../../core/draft/split-speech.ts'
import type { Piece } from '../../core/draft/split-speech.ts'
import { isConditional } from '../../core/draft/tag-cues.ts'
import type { MarkScores } from '../../core/draft/weigh-breaks.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import type { CueKind } from '../../shared/log-sheet.ts'
import { plain } from '../core/draft/spoken-class.ts'
import { annotatedClasses } from './annotated-classes.ts'
import type { AnnotatedClass, AnnotatedExercise } from './annotated-classes.ts'
import { readApartNets, readApartTables } from './apart-tables.ts'
import { labelledSentences } from './labelled-sentences.ts'

export interface CueExample {
  /** The class or file it comes from, for leaving it out. */
  from: string
  /** A clause of a class, as written or without punctuation, or of a sentence that stands alone. */
  speech: 'class' | 'plain class' | 'alone'
  /** A piece that is tagged as it stands, rather than one shown beside it for practice. */
  whole: boolean
  features: readonly string[]
  /** None = no cue. */
  kinds: readonly CueKind[]
  weight: number
}

/** Clauses of classes come by the thousand and much alike, so each weighs less than a sentence. */
const CLASS_WEIGHT = 0.2

export function cueExamples(): CueExample[] {
  const classes = annotatedClasses(['dev', 'fit', 'more'])
  const unpunctuated = classes.map(withoutMarks)
  return [
    ...classes.flatMap((one) => ofClass(one, 'class')),
    ...unpunctuated.flatMap((one) => ofClass(one, 'plain class')),
    ...labelledSentences().flatMap(({ text, kinds, weight }) => ofSentence(text, kinds, weight)),
  ]
}

/** How much a clause says of the kind of the sentence it is part of. */
const PART_WEIGHT = 0.4

function ofSentence(text: string, kinds: readonly CueKind[], weight: number): CueExample[] {
  const words = plainWords(text)
  const conditional = isConditional(words)
  const example = { from: 'sentences', speech: 'alone' as const, kinds }
  const whole = { ...example, whole: true, features: cueFeatures(words, { conditional }), weight }
  const clauses = conditional ? [] : splitClauses(text, { offset: 0, end: text.length })
  if (clauses.length < 2) return [whole]
  const parts = clauses.map(({ offset, end }) => ({
    ...example,
    whole: false,
    features: cueFeatures(plainWords(text.slice(offset, end)), { conditional: false }),
    weight: weight * PART_WEIGHT,
  }))
  return [whole, ...parts]
}

/** Breaks as they are found in a class that is new. */
const breaksOf = readApartTables<MarkScores>('breaks', 'first')
const breakNetOf = readApartNets('break-net')

function ofClass(known: AnnotatedClass, speech: 'class' | 'plain class'): CueExample[] {
  const transcript = parseTranscript(known.text, { durationMs: Math.round(known.duration * 1000) })
  if (transcript.kind !== 'timed') throw new Error(`${known.title} has no times.`)
  const read = readSpeech(transcript.lines, { breaks: breaksOf(known.title), breakNet: breakNetOf(known.title) })
  return known.exercises.flatMap((exercise) => ofExercise(read, exercise, { from: known.title, speech }))
}

/** How much a clause counts without its place, and one of a sentence that is weighed as a whole. */
const PLACELESS = 0.3
const OF_CONDITION = 0.4
const PLAIN_WEIGHT = 0.5

function ofExercise(
  speech: Speech,
  exercise: AnnotatedExercise,
  example: Pick<CueExample, 'from' | 'speech'>,
): CueExample[] {
  const cues = placeMarked(speech, exercise)
  const moves = Math.min(...cues.flatMap(({ kind, offset }) => (kind === 'execution' ? [offset] : [])))
  const spans = [[exercise.start, exercise.end] as const, ...exercise.alsoAt]
  return spans.flatMap(([from, to], index) => {
    const sentences = speech.sentences.filter(({ offset }) => {
      const seconds = speech.timeOf(offset) / 1000
      return seconds >= from - EARLY_SECONDS && seconds < to - LATE_SECONDS
    })
    return sentences.flatMap((sentence) => {
      const early = index === 0 && sentence.offset <= moves
      const conditional = isConditional(sentence.words)
      const clauses = splitClauses(speech.text, sentence).map((clause) => ({ ...clause, asWhole: false }))
      return [...(conditional ? [{ ...sentence, asWhole: true }] : []), ...clauses].flatMap((unit) => {
        const words = plainWords(speech.text.slice(unit.offset, unit.end))
        if (words === '') return []
        const share = conditional && !unit.asWhole ? OF_CONDITION : 1
        const weight = CLASS_WEIGHT * share * (example.speech === 'class' ? 1 : PLAIN_WEIGHT)
        const kinds = [...new Set(cues.filter((cue) => covers(cue, unit)).map(({ kind }) => kind))]
        const of = (place: CluePlace, whole: boolean, weight: number): CueExample => ({
          ...example,
          whole,
          features: cueFeatures(words, place),
          kinds,
          weight,
        })
        const place = { conditional: unit.asWhole }
        return [of({ ...place, early }, share === 1, weight), of(place, false, weight * PLACELESS)]
      })
    })
  })
}

export const EARLY_SECONDS = 0.3
export const LATE_SECONDS = 0.2

interface Marked extends Piece {
  kind: CueKind
}

/** The marked cues at their offsets: of equal words the nearest in time. */
export function placeMarked(speech: Speech, exercise: AnnotatedExercise): Marked[] {
  const text = speech.joined.text
  return exercise.cues.flatMap(({ type, at, evidence }) => {
    const places: { offset: number; off: number }[] = []
    for (let offset = text.indexOf(evidence); offset >= 0; offset = text.indexOf(evidence, offset + 1))
      places.push({ offset, off: Math.abs(speech.timeOf(offset) / 1000 - at) })
    const [best] = places.toSorted((one, other) => one.off - other.off)
    return best && best.off <= FAR_SECONDS
      ? [{ kind: type, offset: best.offset, end: best.offset + evidence.length }]
      : []
  })
}

const FAR_SECONDS = 8

/** Half of the clause is marked, or most of the mark lies in it. */
function covers(mark: Piece, unit: Piece): boolean {
  const common = Math.min(mark.end, unit.end) - Math.max(mark.offset, unit.offset)
  if (common <= 0) return false
  return common / (unit.end - unit.offset) >= 0.5 || common / (mark.end - mark.offset) >= 0.6
}

export function withoutMarks(known: AnnotatedClass): AnnotatedClass {
  const exercises = known.exercises.map((exercise) => ({
    ...exercise,
    cues: exercise.cues.map((cue) => ({ ...cue, evidence: plainLine(cue.evidence) })),
  }))
  return { ...known, text: plain(known.text), exercises }
}

function plainLine(text: string): string {
  return plain(`[0:00] ${text}`).slice('[0:00] '.length)
}

/** What the likelihoods of none and of each kind should be: several kinds share it. */
export function wantedOf(kinds: readonly CueKind[]): number[] {
  return ['none' as const, ...CUE_KINDS].map((kind) => {
    if (kind === 'none') return kinds.length === 0 ? 1 : 0
    return kinds.includes(kind) ? 1 / kinds.length : 0
  })
}
