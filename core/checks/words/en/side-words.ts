/** Words by which a class names its sides. */

/** A side of the body or of the room: "left leg", "the left", "on your left". */
export const LEFT_WORDS = /\bleft (?!over|it|to do|in)\w+|\b(?:the|your|on) left\b/
/** "right hand", "the right", not "right, next" or "that's right". */
export const RIGHT_WORDS =
  /\bright (?:arm|hand|leg|foot|knee|hip|side|elbow|shoulder|heel|toes?|thigh|ankle|wrist|ear|one)\b|\b(?:the|your|on) right\b/
/** Words that bring in the other side without naming it. */
export const BOTH_SIDE_WORDS =
  /\b(?:other (?:side|leg|arm|hand|foot|one|way)|both (?:sides|legs|arms|hands)|each (?:side|leg|arm)|either side|swap|switch|change (?:sides|legs|arms|hands|over)|alternat\w*|opposite|in total)\b/
