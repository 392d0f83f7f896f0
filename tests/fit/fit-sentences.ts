/** Fits how much each feature of a sentence speaks for what is sought there, and writes such weights as source. */
import { fitOdds } from './fit-odds.ts'
import { writeRows } from './write-rows.ts'

/** A class of which each sentence has its features and whether it is sought; null = tells nothing. */
export interface MarkedSentences {
  title: string
  short: boolean
  unpunctuated: boolean
  sentences: { features: readonly string[]; sought: boolean | null }[]
}

/** Every feature twice: for all speech, and for speech with or without marks; so each kind of speech learns from the other. */
function sided(features: readonly string[], unpunctuated: boolean): string[] {
  return features.flatMap((feature) => [`always ${feature}`, `${unpunctuated ? 'plain' : 'marked'} ${feature}`])
}

/** One that is missed costs the person more than one too many. */
const MISSED_COST = 1.5

function fitSentences(classes: readonly MarkedSentences[], wholeWeight = 1): Map<string, number> {
  const cases = classes.flatMap(({ sentences, unpunctuated, short }) =>
    sentences.flatMap(({ features, sought }) => {
      const weight = (short ? 1 : wholeWeight) * (sought ? MISSED_COST : 1)
      return sought === null ? [] : [{ features: sided(features, unpunctuated), sought, weight }]
    }),
  )
  return fitOdds(cases, { leastOften: 4, ridge: 4, steps: 300 })
}

/** In short classes a whole one counts for less: there are more of them, and a line means something else there. */
const WHOLE_IN_SHORT = 0.25

/** Weights for whole classes, fitted on those alone, and for short ones, fitted on all. */
export function fitWholeAndShort(classes: readonly MarkedSentences[]): Record<'whole' | 'short', Map<string, number>> {
  return { whole: fitSentences(classes.filter(({ short }) => !short)), short: fitSentences(classes, WHOLE_IN_SHORT) }
}

/** Tables of weights as source. */
export function writeKinds(weights: Readonly<Record<'whole' | 'short', ReadonlyMap<string, number>>>): string {
  return (['whole', 'short'] as const).map((kind) => `  ${kind}: {\n${writeSides(weights[kind])}\n  },`).join('\n')
}

/** Weights as source: those for all speech, and those for speech with and without marks. */
export function writeSides(weights: ReadonlyMap<string, number>): string {
  const sides = ['always', 'marked', 'plain'].map((side) => {
    const own = [...weights].flatMap(([name, weight]) =>
      name.startsWith(`${side} `) ? [[name.slice(side.length + 1), weight] as const] : [],
    )
    return `  ${side}: [\n${writeRows(own, '    ')}\n  ],`
  })
  return sides.join('\n')
}

/** Index of the time that lies nearest to another, in the same unit. */
export function nearest(times: readonly number[], wanted: number): number {
  return times.reduce(
    (best, time, index) => (Math.abs(time - wanted) < Math.abs((times[best] ?? Infinity) - wanted) ? index : best),
    0,
  )
}

const FOLDS = 8

/** A sentence is found whose odds are greater than `least` and that no other within `reach` sentences beats. */
export interface Peaks {
  least: number
  reach: number
}

/** What is found in whole classes, an eighth of them left out of each fitting; right when it lies at most one sentence off. Sentences without features are not asked. */
export function showApart(all: readonly MarkedSentences[], { least, reach }: Peaks): void {
  const classes = all.filter(({ short }) => !short)
  const titles = [...new Set(classes.map(({ title }) => title))]
  const sums = { marked: { hit: 0, wanted: 0, found: 0 }, plain: { hit: 0, wanted: 0, found: 0 } }
  for (let fold = 0; fold < FOLDS; fold++) {
    const left = new Set(titles.filter((_, index) => index % FOLDS === fold))
    const weights = fitSentences(classes.filter(({ title }) => !left.has(title)))
    for (const { sentences, unpunctuated } of classes.filter(({ title }) => left.has(title))) {
      const odds = sentences.map(({ features }) =>
        features.length === 0
          ? -Infinity
          : sided(features, unpunctuated).reduce((sum, one) => sum + (weights.get(one) ?? 0), 0),
      )
      const peaks = odds.flatMap((own, index) =>
        own > least && own >= Math.max(...odds.slice(Math.max(0, index - reach), index + reach + 1)) ? [index] : [],
      )
      const wanted = sentences.flatMap(({ sought }, index) => (sought === true ? [index] : []))
      const sum = sums[unpunctuated ? 'plain' : 'marked']
      sum.wanted += wanted.length
      sum.found += peaks.filter((peak) => sentences[peak]?.sought !== null).length
      sum.hit += wanted.filter((index) => peaks.some((peak) => Math.abs(peak - index) <= 1)).length
    }
  }
  for (const [kind, { hit, wanted, found }] of Object.entries(sums))
    console.log(`${kind}: F1 ${((200 * hit) / (wanted + found)).toFixed(1)} (${hit} of ${wanted}, ${found} found)`)
}
