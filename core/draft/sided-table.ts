/** Looks up weights that are fitted by kinds of speech: with and without marks, and in short classes. */
import type { Speech } from './read-speech.ts'
import type { KindWeights, Side } from './words/en/sided-weights.ts'

/** Says of features what they add up to in a class: the log of odds. */
export function sidedTable(weights: KindWeights): (speech: Speech, features: readonly string[]) => number {
  const tables = {
    whole: { marked: tableOf(weights.whole, 'marked'), plain: tableOf(weights.whole, 'plain') },
    short: { marked: tableOf(weights.short, 'marked'), plain: tableOf(weights.short, 'plain') },
  }
  return (speech, features) => {
    const table = tables[isShort(speech) ? 'short' : 'whole'][speech.unpunctuated ? 'plain' : 'marked']
    return features.reduce((sum, feature) => sum + (table.get(feature) ?? 0), 0)
  }
}

/** In a class of a few minutes all is denser, and little of it is talk. */
export function isShort(speech: Speech): boolean {
  return speech.text.length < SHORT_TEXT
}

/** Characters; some five minutes of speech. */
const SHORT_TEXT = 4500

function tableOf(weights: KindWeights['whole'], kind: Side): ReadonlyMap<string, number> {
  const table = new Map<string, number>()
  for (const side of ['always', kind] as const)
    for (const [weight, features] of weights[side])
      for (const feature of features.split('|')) table.set(feature, (table.get(feature) ?? 0) + weight)
  return table
}
