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

/** Words since the last mark count up to here; longer runs are alike. */
const LONGEST_RUN = 9
/** Added for any mark: a missed break costs more than one too many. */
const FAVOUR = 0.8

interface Scores {
  comma: number
  stop: number
}

const NOTHING: Scores = { comma: 0, stop: 0 }
const WEIGHTS: ReadonlyMap<string, Scores> = weightTable({ ...BREAK_WORDS, ...BREAK_CLASSES, ...BREAK_PAIRS })
const RUNS: readonly Scores[] = Array.from({ length: LONGEST_RUN + 1 }, (_, run) =>
  weightOf('other', `since-${String(run)}`),
)

function weightTable(lists: Readonly<Record<string, MarkWeights>>): Map<string, Scores> {
  const table = new Map<string, Scores>()
  for (const [sign, byMark] of Object.entries(lists)) {
    for (const mark of ['comma', 'stop'] as const) {
      for (const [weight, all] of byMark[mark]) {
        for (const of of all.trim().split(/\s+/)) {
          const key = `${sign} ${of}`
          table.set(key, { ...(table.get(key) ?? NOTHING), [mark]: weight })
        }
      }
    }
  }
  return table
}

function weightOf(sign: string, of: string): Scores {
  return WEIGHTS.get(`${sign} ${of}`) ?? NOTHING
}

/** How a run of words came about: the run before the gap, and the mark at it. */
interface Step {
  run: number
  mark: Mark
}

/** The marks in front of each word that are likeliest together, for runs of words of usual length. */
function likeliestMarks(words: readonly PlacedWord[]): Mark[] {
  // best[run] = the best score so far with that many words since the last mark.
  let best: (number | undefined)[] = [undefined, 0]
  const steps: (Step | undefined)[][] = []
  for (let index = 1; index < words.length; index++) {
    const word = words[index]
    const here = scoresAt(words, index)
    const next: (number | undefined)[] = []
    const how: (Step | undefined)[] = []
    best.forEach((score, run) => {
      if (score === undefined) return
      const comma = here.comma + (RUNS[run]?.comma ?? 0)
      const stop = here.stop + (RUNS[run]?.stop ?? 0)
      const total = Math.log(1 + Math.exp(comma) + Math.exp(stop))
      const take = (mark: Mark, value: number): void => {
        const to = mark === 'none' ? Math.min(run + 1, LONGEST_RUN) : 1
        if (score + value - total <= (next[to] ?? -Infinity)) return
        next[to] = score + value - total
        how[to] = { run, mark }
      }
      const mustStop = word?.placed === true && !word.bound
      if (!mustStop) take('none', 0)
      if (!mustStop && word?.bound !== true) take('comma', comma)
      if (word?.bound !== true) take('stop', stop)
    })
    best = next
    steps.push(how)
  }
  return tracedBack(best, steps)
}

function scoresAt(words: readonly PlacedWord[], index: number): Scores {
  return featuresAt(words, index).reduce(
    (total, { sign, of }) => {
      const weight = weightOf(sign, of)
      return { comma: total.comma + weight.comma, stop: total.stop + weight.stop }
    },
    { comma: FAVOUR, stop: FAVOUR },
  )
}

function tracedBack(best: readonly (number | undefined)[], steps: readonly (readonly (Step | undefined)[])[]): Mark[] {
  let run = best.reduce<number>((top, score, at) => ((score ?? -Infinity) > (best[top] ?? -Infinity) ? at : top), 1)
  const marks: Mark[] = []
  for (const how of [...steps].reverse()) {
    const step = how[run]
    if (!step) break
    marks.push(step.mark)
    run = step.run
  }
  return ['none', ...marks.reverse()]
}
