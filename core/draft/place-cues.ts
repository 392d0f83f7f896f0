/** Places the cues of an exercise: tagged again now that it is known where the exercise starts, with times and exact words. */
import type { Cue } from '../../shared/log-sheet.ts'
import { sentencesIn } from './find-cautions.ts'
import type { TextSpan } from './place-spans.ts'
import { quotePiece } from './quote-piece.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { tagWeighed } from './tag-cues.ts'

/** The cues of all spans in order of speech, still without ids. */
export function placeCues(speech: Speech, spans: readonly TextSpan[]): Omit<Cue, 'id'>[] {
  return spans.flatMap((span, index) => {
    let moved = index > 0
    return sentencesIn(speech, span).flatMap((sentence) => {
      const cues = tagIn(speech, sentence, !moved)
      moved ||= sentence.cues.some((cue) => cue.kind === 'execution') && !cues.some((cue) => cue.kind === 'setup')
      return cues
    })
  })
}

function tagIn(speech: Speech, sentence: Sentence, early: boolean): Omit<Cue, 'id'>[] {
  return tagWeighed(sentence.weighed, { early, oneSentence: true }).flatMap(({ kind, text, offset, confidence }) => {
    const from = sentence.offset + offset
    const quote = quotePiece(speech, { offset: from, end: from + text.length })
    if (quote.text.length < 3) return []
    const mark = {
      origin: 'draft' as const,
      state: 'proposed' as const,
      confidence: Math.round(confidence * 100) / 100,
      ruleId: `cue-${kind}`,
    }
    return [{ ...mark, kind, startMs: quote.atMs, endMs: Math.max(quote.endMs, quote.atMs), text: quote.text }]
  })
}
