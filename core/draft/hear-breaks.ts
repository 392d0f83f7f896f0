/** Hears among all words which mark stands in front of each, as a word net has learned it: speech without punctuation. */
import { featuresOfText } from './hear-words.ts'
import { netOf } from './filed-net.ts'
import type { PlacedWord } from './place-names.ts'
import { listen, rowsOf } from './word-net.ts'
import type { WordNet } from './word-net.ts'
import { BREAK_NET_WEIGHTS } from './words/en/break-net-weights.ts'

/** How much likelier than no mark a comma and a full stop are in front of a word: natural logs of odds. */
export interface HeardMark {
  comma: number
  stop: number
}

/** The scores of the net, in order. */
export const HEARD_MARKS = ['none', 'comma', 'stop'] as const

/** What the net knows of a word, as `sign of`. */
export function markFeatures({ text, opensLine, name, placed, opens }: PlacedWord): string[] {
  return [
    ...featuresOfText(text),
    `name ${name ?? 'no'}`,
    ...(opensLine ? ['flag line'] : []),
    ...(placed ? ['flag placed'] : []),
    ...(opens ? ['flag opens'] : []),
  ]
}

/** The marks of all words. @param net other than the one in use, for fitting */
export function hearMarks(words: readonly PlacedWord[], net: WordNet = netInUse()): HeardMark[] {
  const logs = listen(net, words.length, (at) => {
    const word = words[at]
    if (!word) return { key: '', rows: () => [] }
    const features = markFeatures(word)
    return { key: features.join(' '), rows: () => rowsOf(features, net) }
  })
  return words.map((_, at) => {
    const none = logs[at * 3] ?? 0
    return { comma: (logs[at * 3 + 1] ?? 0) - none, stop: (logs[at * 3 + 2] ?? 0) - none }
  })
}

/** Built when it is first asked for: most that is read has punctuation. */
function netInUse(): WordNet {
  return (built ??= netOf(BREAK_NET_WEIGHTS))
}

let built: WordNet | null = null
