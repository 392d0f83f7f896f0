/** Words that say exercises are done in turns. */
export const GROUP_WORDS = {
  /** Several stations, one after the other, in rounds. */
  circuit: /\b(?:circuit|stations|round the room|one after (?:the other|another))\b/i,
  /** Two or three in turns without rest between. */
  superset:
    /\b(?:back to back|super ?sets?|as a pair|the pair|paired|straight into|tri ?set|giant set|alternate between)\b/i,
} as const
