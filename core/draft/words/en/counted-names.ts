/** Words around a number in front of the name of an exercise. */

const NUMBER =
  '(?:\\d+|(?:twenty|thirty)[ -](?:one|two|three|four|five|six|seven|eight|nine)|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty)'

/** Ends in front of a name with its number. */
export const COUNTED_NAME = new RegExp(
  `(?:^|[\\s,.;:])(?<number>${NUMBER})(?:(?: of (?:the|your|our|my)| slow| good| big| nice| proper| of))?\\s+$`,
  'i',
)

/** Ends in front of a number that somebody asks for. */
export const WANTED =
  /(?:\b(?:want|need|like|after|have|do|doing|give me|get|make it|go for|take|try|aim for|lets? do|that's|its|it's|just|only)\s+(?:about\s+)?)$/i

/** Behind a name: on each side. */
export const EACH_SIDE_BEHIND =
  /^\s*(?:each|per|a|on each|on both|to each|either)\s+(?:sides?|legs?|arms?|way|hand|foot|direction)\b/i

/** Behind a row of names or in front of it: its rounds. */
export const ROUNDS_SAID =
  /\b(?:twice|(?:two|three|four|five|six|\d+) times) (?:through|round|around|over)\b|\b(?:two|three|four|five|six|\d+) (?:rounds|laps|circuits|goes)\b/i

/** What was just named, all of it: "the two of them", "both of those". */
export const OF_BOTH =
  /\b(?:for (?:the (?:two|pair|both) of (?:them|those|these)|both(?: of (?:them|those|these))?)|(?:those|these|them) two(?: are| is|'re|re)?|both (?:of (?:them|those|these)|are|get)|each of (?:those|these|them))\b/i
