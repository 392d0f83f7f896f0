/** Words by which a number in speech finds its meaning: pauses, ways up and down, corrections, first and second sets. */

/** A pause inside each repetition, at the bottom or where it turns. */
export const PAUSED = /\b(?:paus(?:e|ing)|(?:at|in) the bottom)\b/

/** A hold inside each repetition. */
export const HELD = /\b(?:hold|holding|squeeze|stay|wait|freeze|at the top)\b/

/** The lowering or letting go. */
export const DOWNWARD = /\b(?:down|lower|lowering|descent|descend|way back|letting go|let it (?:out|back|down))\b/

/** The lifting. */
export const UPWARD = /\b(?:up|lift|lifting|press|pull)\b/

/** With these a number says itself what it counts. */
export const UNITS_SAID =
  /\b(?:reps?|repetitions|times|of (?:them|those|these)|each|seconds?|minutes?|sets?|rounds?|breaths?)\b/

/** Ends in front of a number that was only planned. */
export const PLANNED =
  /\b(?:i|we)(?:'d| had| was| were)? (?:wrote|written|planned|put|had|going to(?: say| do)?|thinking of|meant to do|promised)(?: down| you| us)?\s+$/i

/** The number that no longer holds: "I said six". Group 1. */
export const SAID_BEFORE = /\b(?:i|we) (?:said|wrote|had|put|told you) (\w+)\b/

const NUMBER =
  '(?:\\d+|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|eighteen|twenty(?:[ -]five)?|thirty(?:[ -]five)?|forty(?:[ -]five)?|fifty|sixty)'

/** Behind a first set: the amount of the second, as a number alone. Group 1. */
export const TURN_BY_TURN = new RegExp(
  `^[\\s,]*(?:for |on |in )?(?:the |your )?first(?: (?:time|go|set|round|one|lot|pass))?[\\s,]+(?:(?:and|then|but) )*(${NUMBER})(?: (?:seconds|reps|on|in|for)){0,2} (?:the |your )?(?:second|next|last)\\b`,
  'i',
)

/** Behind an amount: it is that of the second set. */
export const SECOND_TURN = /^[\s,]*(?:for |on |in )?(?:the |your )?(?:second|next|last)\b/i
