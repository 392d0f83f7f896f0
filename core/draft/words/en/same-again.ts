/** Words that take over the dose of the exercise before. */

const NO_SIDE = '(?! (?:on|for) (?:the|your|that)| with (?:the )?(?:other|left|right)| other| side| but)'

/** The whole dose: "same again", "same numbers". */
export const SAME_DOSE = new RegExp(
  `(?:\\b(?:the )?same (?:again|thing|deal|dose|numbers?|reps|sets and reps|as before|as last time|distance)\\b|(?<=[.!?\\n] ?)same(?=[,.;\\n\\v]))${NO_SIDE}`,
  'i',
)

/** Only how far. */
export const SAME_DISTANCE = /\bsame distance\b/i

/** Only the rest. */
export const SAME_REST = /\bsame (?:rest|break|recovery)\b/i

/** A set more, where the class comes back to an exercise. */
export const ONE_MORE_SET =
  /\b(?:(?:one|a) (?:more|second|last|final|further)|another|(?:(?:your|the) )?second) (?:set|round|lot|go|time)\b/i

/** As many once more: "another fifteen". Group 1 is the number. */
export const ANOTHER = /\banother ([a-z]+(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?|\d+)\b/i
