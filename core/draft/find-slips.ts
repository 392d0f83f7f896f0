/** Finds a wrong start and its retake ("no, sorry, let me start that again") as a stretch to cut out. */
import type { CutOut } from '../../shared/log-sheet.ts'
import type { TextSpan } from './place-spans.ts'
import { sentencesIn } from './find-cautions.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { OPENING_WORDS } from './words/en/announcing.ts'
import { RETAKES } from './words/en/retakes.ts'
import { anyPhrase } from './words/en/word-groups.ts'

/** The cut-outs of a span: from the first words of the wrong start up to the first words of the retake. */
export function findSlips(speech: Speech, span: TextSpan): CutOut[] {
  const sentences = sentencesIn(speech, span)
  return sentences.flatMap((sentence, index): CutOut[] => {
    if (!RETAKE.test(sentence.words)) return []
    const retake = sentences[index + 1]
    if (!retake) return []
    const from = wrongStart(speech, sentences.slice(Math.max(0, index - MOST_SENTENCES), index + 1), retake.words)
    const startMs = speech.timeOf(Math.max(from, span.offset))
    const endMs = speech.timeOf(retake.offset)
    return endMs > startMs
      ? [{ startMs, endMs, why: `slip and retake: ${speech.text.slice(sentence.offset, sentence.end)}` }]
      : []
  })
}

const RETAKE = anyPhrase(RETAKES)
const MOST_SENTENCES = 4

/** Where the wrong start begins: at the latest sentence that opens as the retake does, else with the slip's own sentence. */
function wrongStart(
  speech: Speech,
  sentences: readonly { offset: number; end: number; words: string }[],
  retake: string,
): number {
  const opening = contentWords(retake).slice(0, 2)
  const same = [...sentences].reverse().find(({ words }) => {
    const own = contentWords(words)
    return opening.length > 0 && opening.every((word) => own.slice(0, 3).includes(word))
  })
  return (same ?? sentences.at(-1))?.offset ?? 0
}

function contentWords(words: string): string[] {
  return plainWords(words)
    .split(' ')
    .filter((word) => !OPENING_WORDS.has(word))
}
