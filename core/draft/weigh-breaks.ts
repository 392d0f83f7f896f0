/** Weighs where sentences and clauses end among words without punctuation: the marks that are likeliest together. */
import { clauseSigns, featuresAt, LONGEST_RUN } from './break-features.ts'
import { hearMarks } from './hear-breaks.ts'
import type { HeardMark } from './hear-breaks.ts'
import type { PlacedWord } from './place-names.ts'
import { BREAK_WEIGHTS } from './words/en/break-weights.ts'

export type Mark = 'none' | 'comma' | 'stop'

/** How much a feature speaks for a comma and for a full stop, against no mark: the natural log of odds. */
export interface MarkScores {
  comma: number
  stop: number
}

export type BreakTable = ReadonlyMap<string, MarkScores>

/** Added for each mark: full stops are missed more often than they are found in vain. */
const FAVOUR: MarkScores = { comma: -0.1, stop: 0.1 }

/** How much the features of a gap and the marks as the net hears them count: both together tell more than either. */
const SIGNS_SHARE = 0.6
const HEARD_SHARE = 0.6

/** Weights other than those in use, for fitting. */
export interface BreakTables {
  table?: BreakTable | undefined
  heard?: readonly HeardMark[] | undefined
}

/** The marks in front of each word that are likeliest together. @param features what speaks for a mark in front of each word, where that is known already */
export function likeliestMarks(
  words: readonly PlacedWord[],
  features?: readonly (readonly string[])[],
  { table = tableInUse(), heard = hearMarks(words) }: BreakTables = {},
): Mark[] {
  // best[run] = the best score so far with that many words since the last mark.
  let best: (number | undefined)[] = [undefined, 0]
  const steps: (Step | undefined)[][] = []
  for (let index = 1; index < words.length; index++) {
    const word = words[index]
    const parted = word?.bound !== true && isParted(words[index - 1]?.text ?? '', word?.text ?? '')
    const here = scoresOf(features?.[index] ?? featuresAt(words, index), table, NOTHING)
    const ears = heard[index] ?? NOTHING
    const next: (number | undefined)[] = []
    const how: (Step | undefined)[] = []
    best.forEach((score, run) => {
      if (score === undefined) return
      const signs = scoresOf(clauseSigns(words, index - run, index), table, here)
      const comma = SIGNS_SHARE * signs.comma + HEARD_SHARE * ears.comma + FAVOUR.comma
      const stop = SIGNS_SHARE * signs.stop + HEARD_SHARE * ears.stop + FAVOUR.stop
      const total = Math.log(1 + Math.exp(comma) + Math.exp(stop))
      const take = (mark: Mark, value: number): void => {
        const to = mark === 'none' ? Math.min(run + 1, LONGEST_RUN) : 1
        if (score + value - total <= (next[to] ?? -Infinity)) return
        next[to] = score + value - total
        how[to] = { run, mark }
      }
      const mustStop = word?.placed === true && !word.bound
      if (!mustStop && !parted) take('none', 0)
      if (!mustStop && word?.bound !== true) take('comma', comma)
      if (word?.bound !== true) take('stop', stop)
    })
    best = next
    steps.push(how)
  }
  return tracedBack(best, steps)
}

/** "Rate 26 to 28, 3 short strokes": a single figure behind a longer number is another number. */
function isParted(before: string, word: string): boolean {
  return /^\d\d+$/.test(before) && /^\d$/.test(word)
}

const NOTHING: MarkScores = { comma: 0, stop: 0 }

/** Built when it is first asked for: most that is read has punctuation. */
function tableInUse(): BreakTable {
  return (built ??= tableOf(BREAK_WEIGHTS))
}

let built: BreakTable | null = null

function tableOf(weights: typeof BREAK_WEIGHTS): BreakTable {
  const table = new Map<string, MarkScores>()
  for (const mark of ['comma', 'stop'] as const) {
    for (const [sign, rows] of Object.entries(weights[mark])) {
      for (const [weight, all] of rows) {
        for (const of of all.trim().split(/\s+/)) {
          const feature = `${sign} ${of}`
          table.set(feature, { ...(table.get(feature) ?? NOTHING), [mark]: weight })
        }
      }
    }
  }
  return table
}

function scoresOf(features: readonly string[], table: BreakTable, from: MarkScores): MarkScores {
  const sum = { ...from }
  for (const feature of features) {
    const weight = table.get(feature)
    if (!weight) continue
    sum.comma += weight.comma
    sum.stop += weight.stop
  }
  return sum
}

/** How a run of words came about: the run before the gap, and the mark at it. */
interface Step {
  run: number
  mark: Mark
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
