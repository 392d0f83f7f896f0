/** Words by which the phases of a repetition are counted: which way it goes, where it waits. All read plain words. */
import { ONES } from '../../../dose/words/en/numbers.ts'

/** Nobody counts further in one phase. */
const MOST_COUNTS = 8

/** What each word that may count a phase is worth. */
export const PHASE_NUMBERS: Readonly<Record<string, number>> = Object.fromEntries(
  [
    ...Object.entries(ONES),
    ...Array.from({ length: MOST_COUNTS }, (_, index) => [String(index + 1), index + 1] as const),
  ].filter(([, value]) => value >= 1 && value <= MOST_COUNTS),
)

/** Units of a phase, and what may stand between them and their number. */
export const PHASE_UNIT = /^(?:(?:whole|slow|full|steady|long|good|proper) )*(?:counts?|seconds?|secs?|beats?)\b/

/** In front of a number: it counts a phase. */
export const COUNTS_PHASE =
  /\b(?:counts? (?:of|it)?|for|take(?: a| your)?)(?: (?:a|an|about|to|slow|steady|full|your))*$/

/** In front of a number: it may count a phase where others do. */
export const MAY_COUNT_PHASE = /\b(?:in|on|for|of|count)$/

/** Right behind a number that may count a phase. */
export const GOES_ON =
  /^(?:(?:whole|slow|full|steady|long|good|proper|counts?|seconds?|secs?|beats?|to|going|coming|getting|on|back|down|up|out|in|home|at|sitting|there|waiting|lower|lowering|lift|lifting|press|pressing|pull|push|hold|and|then|please)\b|$)/

/** Behind a number that counts something else. */
export const NO_PHASE =
  /^(?:(?:counts?|seconds?|secs?|beats?) (?:of |for )?(?:off|rest|between|in between|breather)|to go$|in (?:each|every|a)|on (?:each|every|the (?:board|clock)))/

/** In front of a number that is a part of a greater one. */
export const OF_GREATER_NUMBER = /\b(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|and a|not in)$/

/** Only some do it so. */
export const FOR_SOME_ONLY = /\b(?:if|unless|when|otherwise)\b/

/** The ways of a phase: a name, and its words, in front of its number or behind it. */
export const PHASES: readonly (readonly ['lower' | 'lift' | 'first' | 'back', RegExp])[] = [
  [
    'lower',
    /\b(?:down|downs|lower|lowers|lowering|descent|descend|sink|sinking|let(?:ting)? (?:it|them|the \w+) (?:come )?(?:back|down|out|go)|(?:to|at|get(?:ting)? to) the (?:bottom|floor|seat)|release|on the return|down again)\b/,
  ],
  [
    'lift',
    /\b(?:up|press|presses|pressing|push|pushing|pull|pulling|drive|driving|stand|standing|lift|lifting|raise|rise|curl|row|straighten|squeeze|close)\b/,
  ],
  ['first', /\b(?:out|away|open|over|across|reach|in)\b/],
  ['back', /\b(?:back|home|return|returning)\b/],
]

/** It waits there. */
export const WAITS =
  /\b(?:hold|hang|stop|pause|wait|waiting|stay|sit there|sitting|hover|freeze|(?:at|in) the (?:bottom|hole|top)|up top|up there|down there|empty)\b/
export const WAITS_LOW = /\b(?:(?:at|in) the (?:bottom|hole)|down there|sit there|sitting)\b/
export const WAITS_HIGH = /\b(?:at the top|up top|up there|squeeze|empty)\b/

/** The counting is of breaths. */
export const OF_BREATH = /\b(?:breathe|breath|breaths|inhale|exhale|nose|sniff|blow|mouth|lungs)\b/
