/** Sequences of words with the kinds of cue that people marked over them: what the word net is fitted on. */
import { netWords } from '../../core/draft/hear-words.ts'
import type { NetWord } from '../../core/draft/hear-words.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import type { MarkScores } from '../../core/draft/weigh-breaks.ts'
import type { CueKind } from '../../shared/log-sheet.ts'
import { annotatedClasses } from './annotated-classes.ts'
import { readApartNets, readApartTables } from './apart-tables.ts'
import { EARLY_SECONDS, LATE_SECONDS, placeMarked, withoutMarks } from './cue-examples.ts'
import { labelledSentences } from './labelled-sentences.ts'
import type { LabelledSentence } from './labelled-sentences.ts'

export interface NetExample {
  /** The class or file it comes from, for leaving it out. */
  from: string
  words: readonly NetWord[]
  /** The kinds of each word; none = no cue. */
  kinds: readonly (readonly CueKind[])[]
  /** How much each word counts: what lies outside all teachings not at all, for nobody marked cues there. */
  weights: readonly number[]
}

/** The words of a class that are learned together. */
const LONGEST = 80

export function netExamples(): NetExample[] {
  const classes = annotatedClasses(['dev', 'fit', 'more'])
  const breaksOf = readApartTables<MarkScores>('breaks', 'first')
  const breakNetOf = readApartNets('break-net')
  return [
    ...[...classes, ...classes.map(withoutMarks)].flatMap((known) => {
      const transcript = parseTranscript(known.text, { durationMs: Math.round(known.duration * 1000) })
      if (transcript.kind !== 'timed') throw new Error(`${known.title} has no times.`)
      const speech = readSpeech(transcript.lines, { breaks: breaksOf(known.title), breakNet: breakNetOf(known.title) })
      const marked = known.exercises.flatMap((exercise) => placeMarked(speech, exercise))
      const spans = known.exercises.flatMap(({ start, end, alsoAt }) => [[start, end] as const, ...alsoAt])
      const words = netWords(speech.text)
      const taught = words.map(({ offset }) => {
        const seconds = speech.timeOf(offset) / 1000
        return spans.some(([from, to]) => seconds >= from - EARLY_SECONDS && seconds < to - LATE_SECONDS)
      })
      const kinds = words.map((word) => [
        ...new Set(marked.flatMap((one) => (word.offset >= one.offset && word.offset < one.end ? [one.kind] : []))),
      ])
      return inChunks({ from: known.title, words, kinds, weights: taught.map(Number) })
    }),
    ...labelledSentences().map(alone),
  ]
}

function inChunks({ from, words, kinds, weights }: NetExample): NetExample[] {
  const starts = Array.from({ length: Math.ceil(words.length / LONGEST) }, (_, at) => at * LONGEST)
  return starts.flatMap((start) => {
    const part = <Item>(all: readonly Item[]): readonly Item[] => all.slice(start, start + LONGEST)
    const chunk = { from, words: part(words), kinds: part(kinds), weights: part(weights) }
    return chunk.weights.some((weight) => weight > 0) ? [chunk] : []
  })
}

function alone({ text, kinds, weight }: LabelledSentence): NetExample {
  const words = netWords(text)
  return { from: 'sentences', words, kinds: words.map(() => kinds), weights: words.map(() => weight) }
}
