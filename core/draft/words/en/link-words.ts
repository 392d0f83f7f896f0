/** Words by which exercises are tied to each other: done in turns, one straight after the other, in rounds. All read plain words. */

/** What a stretch of speech says of turns: a name for it, and its words. */
export const LINK_WORDS: readonly (readonly [string, RegExp])[] = [
  [
    'pair',
    /\b(?:pairs?|paired|pairing|partners?|twos?|couple|married|goes with|go with|go together|together|super ?sets?|back to back|hand in hand|other half|second half|alternate|alternating)\b/,
  ],
  ['circuit', /\b(?:circuits?|loop|laps?|carousel|clock|giant set|tri ?sets?)\b/],
  ['station', /\b(?:stations?|stops?)\b/],
  [
    'rounds',
    /\b(?:rounds?|(?:twice|times) (?:through|round|around|over)|(?:through|round) (?:it |them |that |the lot )?(?:twice|again|three times)|go (?:a)?round)\b/,
  ],
  ['no rest', /\b(?:no (?:rest|break|pause|stopping)|without (?:a )?(?:rest|stopping|break)|dont (?:rest|stop|sit))\b/],
  ['straight', /\b(?:straight (?:into|to|on|over|after|from|onto)|one after|right into|directly|same breath)\b/],
  ['rest', /\b(?:rest|breather|off|recover|breath back|minutes?)\b/],
  ['again', /\b(?:again|back (?:to|on|up|down)|once more|second (?:one|round|time)|other)\b/],
  ['next', /\b(?:next|then|now|last|final|third|second|number)\b/],
  ['section', /\b(?:that was|thats (?:it|all|the)|done|finished|over with|put .{0,12}(?:down|away)|move on|on to)\b/],
  ['swap', /\b(?:swap|switch|change|move round|rotate)\b/],
]
