/** Puts breaks where sentences and clauses probably end into speech that has no punctuation; every character keeps its place. */
import { featuresAt } from './break-features.ts'
import { placeNames } from './place-names.ts'
import type { PlacedWord } from './place-names.ts'
import { BREAK_CLASSES } from './words/en/break-classes.ts'
import type { MarkWeights } from './words/en/break-classes.ts'
import { BREAK_PAIRS } from './words/en/break-pairs.ts'
import { BREAK_WORDS } from './words/en/break-words.ts'

/** Stands where a full stop is probably missing. */
export const SENTENCE_BREAK = '\n'
/** Stands where a comma is probably missing. */
export const CLAUSE_BREAK = '\v'

/**
 * The text with some of its spaces turned into breaks. @param lineStarts offsets at which lines of the transcript begin
 */
export function restoreBreaks(text: string, lineStarts: ReadonlySet<number> = new Set()): string {
  const words = placeNames(text, lineStarts)
  const out = text.split('')
  likeliestMarks(words).forEach((mark, index) => {
    const at = (words[index]?.offset ?? 0) - 1
    if (at >= 0 && mark !== 'none') out[at] = mark === 'stop' ? SENTENCE_BREAK : CLAUSE_BREAK
  })
  return out.join('')
}

type Mark = 'none' | 'comma' | 'stop'
const MARKS: readonly Mark[] = ['none', 'comma', 'stop']

/** Words since the last mark count up to here; longer runs are alike. */
const LONGEST_RUN = 9
/** Added for any mark: a missed break costs more than one too many. */
const FAVOUR = 0.8

const WEIGHTS: ReadonlyMap<string, number> = new Map(
  Object.entries({ ...BREAK_WORDS, ...BREAK_CLASSES, ...BREAK_PAIRS }).flatMap(
    ([sign, byMark]: [string, MarkWeights]) =>
      (['comma', 'stop'] as const).flatMap((mark) =>
        byMark[mark].flatMap(([weight, of]) =>
          of
            .trim()
            .split(/\s+/)
            .map((word): [string, number] => [`${mark} ${sign} ${word}`, weight]),
        ),
      ),
  ),
)

/** The marks in front of each word that are likeliest together, for runs of words of usual length. */
function likeliestMarks(words: readonly PlacedWord[]): Mark[] {
  // best[run] = the best score so far with that many words since the last mark; from[i][run] = how it came about.
  let best = new Map<number, number>([[1, 0]])
  const from: Map<number, { run: number; mark: Mark }>[] = []
  for (let index = 1; index < words.length; index++) {
    const signs = featuresAt(words, index)
    const base = MARKS.map((mark) => (mark === 'none' ? 0 : sum(signs, mark) + FAVOUR))
    const next = new Map<number, number>()
    const how = new Map<number, { run: number; mark: Mark }>()
    for (const [run, score] of best) {
      const raw = MARKS.map((mark, at) => (base[at] ?? 0) + weightOf(`since-${String(run)}`, 'other', mark))
      const total = Math.log(raw.reduce((all, value) => all + Math.exp(value), 0))
      MARKS.forEach((mark, at) => {
        if (mark !== 'none' && words[index]?.bound === true) return
        if (mark !== 'stop' && words[index]?.placed === true && words[index]?.bound === false) return
        const value = score + (raw[at] ?? 0) - total
        const run2 = mark === 'none' ? Math.min(run + 1, LONGEST_RUN) : 1
        if (value > (next.get(run2) ?? -Infinity)) {
          next.set(run2, value)
          how.set(run2, { run, mark })
        }
      })
    }
    best = next
    from.push(how)
  }
  return tracedBack(best, from)
}

function tracedBack(
  best: ReadonlyMap<number, number>,
  from: readonly ReadonlyMap<number, { run: number; mark: Mark }>[],
): Mark[] {
  let [run] = [...best].reduce((top, entry) => (entry[1] > top[1] ? entry : top), [1, -Infinity])
  const marks: Mark[] = []
  for (const how of [...from].reverse()) {
    const step = how.get(run)
    if (!step) break
    marks.push(step.mark)
    run = step.run
  }
  return ['none', ...marks.reverse()]
}

function sum(signs: readonly { sign: string; of: string }[], mark: Mark): number {
  return signs.reduce((total, { sign, of }) => total + weightOf(of, sign, mark), 0)
}

function weightOf(of: string, sign: string, mark: Mark): number {
  return mark === 'none' ? 0 : (WEIGHTS.get(`${mark} ${sign} ${of}`) ?? 0)
}
