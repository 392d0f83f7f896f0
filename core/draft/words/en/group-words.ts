/** Words that say exercises are done in turns. */
export const GROUP_WORDS = {
  /** Several stations, one after the other, in rounds. */
  circuit: /\b(?:circuit|stations|round the room|one after (?:the other|another))\b/i,
  /** Two or three in turns without rest between. */
  superset:
    /\b(?:back to back|super ?sets?|as a pair|its a pair|it's a pair|a pair of|the pair|paired|straight into|tri ?set|giant set|alternate between)\b/i,
  /** Behind amounts of several exercises: all of them so often. */
  rounds:
    /\b(?:twice|(?:two|three|four|five|six|\d+) times) (?:through|round|around|over)\b|\b(?:two|three|four|five|six|\d+) (?:rounds|laps|circuits)\b/i,
  /** In front of a name: its amount. */
  amount:
    /\b(?:\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|twenty|twenty five|thirty|forty)(?: of(?: the| your)?)?\s*$/i,
} as const

/** A circuit by its number of things. Group 1. */
export const LOOP_COUNT =
  /\b(two|three|four|five|six|seven|eight|\d+) (?:stops|stations|exercises|moves|movements|things|drills|of (?:them|those|these))\b/i

/** Somebody goes round. Plain words. */
export const LOOP_WORDS = /\b(?:circuit|stations?|stops|loop)\b/
