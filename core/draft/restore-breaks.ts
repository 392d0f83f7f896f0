/** Puts breaks where sentences and clauses probably end into speech that has no punctuation; every character keeps its place. */
import { placeNames } from './place-names.ts'
import { hearMarks } from './hear-breaks.ts'
import { likeliestMarks } from './weigh-breaks.ts'
import type { BreakTable } from './weigh-breaks.ts'
import type { WordNet } from './word-net.ts'

/** Stands where a full stop is probably missing. */
export const SENTENCE_BREAK = '\n'
/** Stands where a comma is probably missing. */
export const CLAUSE_BREAK = '\v'

/**
 * The text with some of its spaces turned into breaks. @param lineStarts offsets at which lines of the transcript begin @param tables other than those in use, for fitting
 */
export function restoreBreaks(
  text: string,
  lineStarts: ReadonlySet<number> = new Set(),
  { table, net }: { table?: BreakTable | undefined; net?: WordNet | undefined } = {},
): string {
  const words = placeNames(text, lineStarts)
  const out = text.split('')
  likeliestMarks(words, undefined, { table, heard: hearMarks(words, net) }).forEach((mark, index) => {
    const at = (words[index]?.offset ?? 0) - 1
    if (at >= 0 && mark !== 'none') out[at] = mark === 'stop' ? SENTENCE_BREAK : CLAUSE_BREAK
  })
  return out.join('')
}
