/** Words by which a dose or a class brings in the other side without naming it. */

export const BOTH_SIDE_WORDS =
  /\b(?:other (?:side|leg|arm|hand|foot|one|way)|both (?:sides|legs|arms|hands)|each (?:side|leg|arm)|either side|swap|switch|change (?:sides|legs|arms|hands|over)|alternat\w*|opposite|in total)\b/
