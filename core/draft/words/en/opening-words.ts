/** Words that tell of going on to another exercise. */

/** Kit and the places where it stands. */
export const KIT_TOLD =
  /\b(?:bells?|kettlebells?|dumbbells?|weights?|bars?|barbell|bands?|loop|rings|chairs?|bench|box|step|wall|mats?|cushion|towel|ball|stick|broomstick|door|rail|floor|grass)\b/

/** How the body lies or stands. */
export const PLACE_TOLD =
  /\b(?:stand|standing|sit|sitting|lie|kneel|kneeling|back|front|side|fours|knees|feet|mat|floor|up|down)\b/

/** Opens a sentence that goes on to something. */
export const OPENS_TALK = /^(?:right|okay|ok|now|so|and|next|last|then|good|lovely|great|nice)\b/

/** Says that something else comes. */
export const LEADS_ON = /\b(?:next|last|this one|these|another|let s|lets|we|time for|over to|back to)\b/

/** Said when a set is over. */
export const SET_OVER = /\b(?:rest|done|good|that s it|thats it|and stop|stop|down|lovely|well done|nice|off)\b/

/** In front of a name: says that it is one. */
export const TELLS_NAME =
  /\b(?:that's|thats|that is|that was|those are|these are|those were|it's|its|this is|this one is|this one's|called|call it|call them|call this|call that|name)\b[^.!?\n]{0,18}$/

/** In front of a name: nothing but what opens a sentence. */
export const OPENS_NAMED = /(?:^|[.!?\n]\s*)(?:and |so |right |okay |now |then |next |last |our |your |the |some |a )*$/

/** Words by which a class comes back to what it did before, in plain words with a space on either side. */
export const CALLS_BACK: readonly (readonly [name: string, pattern: RegExp])[] = [
  ['again', / again | once more | another /],
  [
    'round',
    / (?:second|third|fourth|last|final|next) (?:set|round|go|one|lot|time|side|lap) | (?:set|round|lot) (?:two|three|four|2|3|4|number) | round again /,
  ],
  ['back', / back (?:to|on|in|down|at|up) /],
  ['go', / go $| off you go | off we go /],
  ['owe', / owe | one more | left over | promised | remember | still got /],
  ['rest', / rest | breather | minute /],
  ['second', / (?:second|third|last|final|two|three) /],
  ['same', / same /],
  ['swap', / swap | switch | straight (?:to|into|on) | over to /],
]
