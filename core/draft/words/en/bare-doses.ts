/** Doses that are a number and nothing else, as coaches say them once the movement is told. */

const NUMBER =
  '(?:\\d+|(?:twenty|thirty|forty|fifty)(?: (?:one|two|three|four|five|six|seven|eight|nine))?|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|sixty|a dozen)'

/** What a number may count that is no work done: "twelve crosses" are, "five stations" are not. */
const COUNTED_ELSE =
  '(?:second|minute|hour|centimetre|centimeter|yard|litre|penc|bit|metre|meter|mile|kilo|week|month|year|day|degree|people|person|inch|feet|foot|kilogram|pound|percent|set|round|breath|station|exercise|move|thing|drill|leg|arm|side|hand|knee|finger|toe|way|time|lap|length|stroke|class|session|part|block|level|option|other|mistake|point|reason|question|idea|muscle|bone|joint|kid|dog|cat|chair|band|bell|weight|one)'

/** One side of work that goes over to the other: "twelve on this side, twelve on the next". Group 1 is the number. */
export const BARE_ON_SIDE = new RegExp(
  `^(?:(?:and|so|just|then|do|lets|about|thats|that is|now|its) )*(${NUMBER}) (?:on|with|to) (?:(?:this|the first|one) (?:side|leg|arm|hand|foot|one|way)|(?:the|your) (?:right|left)(?: (?:side|leg|arm|hand|foot|one))?)(?: first)?$`,
)

/** A clause in plain words that holds only the number. Group 1 is the number or range. */
export const BARE_DOSE = new RegExp(
  `^(?:(?:and|so|just|okay|then|only|about|do|here|lets|let us|its|it is|we want|ill take|i want|i need|id like|we(?:ll)? have|we(?:ll)? do|we(?:ll)? take|ill have|give me|lets have|lets do|go for|thats|make it|easy|steady|nice) )*(${NUMBER}(?: (?:to|or) ${NUMBER})?)(?: (?!${COUNTED_ELSE})[a-z]{3,}s)?(?: (?:tiny|little|small|slow|good|nice|steady|big|easy|clean|careful|ones|one|please|today|here|only|altogether|overall|for me|again|will do|should do|and relax|smooth))*$`,
)

/** The same with a name of the coach's own behind it, asked for or in total: "we want ten coat hangers", "ten drags total". Group 1 or 2. */
export const OWN_COUNTED = new RegExp(
  `^(?:(?:and|so|just|okay|then) )*(?:(?:we want|i want|i need|id like|we(?:ll)? have|we(?:ll)? do|we(?:ll)? take|give me|lets have|lets do|go for|do|make it|its|thats) (?:about |only )?(${NUMBER})(?: (?!${COUNTED_ELSE})[a-z]{3,})? (?!${COUNTED_ELSE})[a-z]{3,}s|(${NUMBER}) (?!${COUNTED_ELSE})[a-z]{3,}s (?:(?:in )?total|that is|please|for me))(?: please| altogether| in total| total| for me| that is| each)*$`,
)

/** "Do eights", "still fives": so many each time. Group 1. */
export const BARE_PLURAL =
  /^(?:(?:and|so|just|but|its|it is|do|well do|still|make (?:it|them)|go for|lets do|in|of|were doing|doing|all) )+(fives|sixes|eights|tens|twelves|fifteens|twenties)(?: (?:please|today|for you|on (?:the|these|those) \w+))?$/

/** A clause that is only a minute, or "a minute of it". */
export const MINUTE_ALONE =
  /^(?:(?:a|one)(?: whole| full)? minute|half a minute)(?: of (?:it|this|that|these|those|them)(?: please| all| now| only)?)?$/

/** A clause that only says how often: "Twice.", "Three times through." */
export const BARE_TIMES =
  /^(?:(?:and|do (?:it|that|them|those)|so|just|we do|well do|going|all of (?:that|it|those)|the (?:whole|lot)|whole (?:lot|thing)|there and back|out and back|up and down|same distance|same again|same thing|same) )*(just the once|the once|twice|two times|three times|four times|five times|two goes|three goes|four goes)(?: through| over| again| please| round| this time| today| only| altogether| in total)*$/

/** How many sets each of these is. */
export const TIMES_OVER: Readonly<Record<string, number>> = {
  'just the once': 1,
  'the once': 1,
  twice: 2,
  'two times': 2,
  'three times': 3,
  'four times': 4,
  'five times': 5,
  'two goes': 2,
  'three goes': 3,
  'four goes': 4,
}

/** A neighbour that makes a bare number a count or a call of time. */
export const COUNTS_DOWN =
  /^(?!and$)(?:(?:and|one|two|three|four|five|six|seven|eight|nine|ten|zero|go|last|halfway|half way|more|to go|left|\d+)(?: |$))+$|\b(?:to go|seconds? (?:left|gone)|more to go|halfway|number)\b/

/** The same number once more behind a dose: "and another five", "then eight more", "and again, twelve". Group 1 or 2 is the number. */
export const REPEATED = new RegExp(
  `\\b(?:(?:another|(?:and|then|do it) again[,:]?|and then another)\\s+(${NUMBER})|(?:and|then)\\s+(?:do\\s+|then\\s+|the\\s+same\\s+)?(${NUMBER})\\s+(?:more|again))\\b`,
  'i',
)
