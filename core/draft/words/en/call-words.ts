/** Words that call an exercise that was taught before, while several go in turns: "And rows, ten of them", "Round two. Presses." */
import { anyPhrase } from './word-groups.ts'

const ORDER = '(?:second|third|fourth|fifth|last|final|next)'
const COUNT = '(?:one|two|three|four|five|\\d)'
const ROUND = '(?:round|lap|lot|set|go|time|trip|loop|pass|circuit)'
const LEAD = '(?:(?:and|so|right|okay|ok|ready|now|then|here|your|the|for|is|thats|this is) )*'

/** A round begins. Plain words. */
export const ROUND_CALL = anyPhrase([
  `^${LEAD}(?:round|lap|lot|set|circuit) ${COUNT}\\b`,
  `^${LEAD}${ORDER} (?:and last |${ORDER} )?(?:${ROUND}|one)\\b(?! (?:today|this week|i|we)\\b)`,
  `^${LEAD}(?:once more|one more ${ROUND}|third and last|last one|round again|all again|same again)\\b`,
])

/** The first round begins: what was told so far was only shown. Plain words. */
export const FIRST_CALL = anyPhrase([
  `^${LEAD}(?:round (?:one|1)|first (?:round|lap|time|go|lot|pass)|off (?:we|you) go|away (?:we|you) go|here we go|(?:lets |ready |and )*go|clocks? on|time to start|got it|ready)\\b(?! (?:again|once more))`,
])

/** Which round a call tells. Group 1. */
export const ORDER_SAID = /\b(second|third|fourth|fifth|last|final|two|three|four|five|[2-5])\b/

export const ORDERS: Readonly<Record<string, number>> = {
  ...{ second: 2, two: 2, '2': 2, third: 3, three: 3, '3': 3 },
  ...{ fourth: 4, four: 4, '4': 4, fifth: 5, five: 5, '5': 5 },
}

/** What may stand in front of the name in a call. */
export const CALL_LEAD: ReadonlySet<string> = new Set(
  `and so right okay ok ready now then go good great lovely nice well done into straight over back to on onto off with for
  the your our my some more again those that thats its from here come last final next first second third fourth fifth
  round lap lot set time number one two three four five swap change quick up down yes alright away you we`.split(/\s+/),
)

/** Words of a name that many exercises share: none of them calls one alone. */
export const SHARED_WORDS: ReadonlySet<string> = new Set(
  `single double one two half full leg arm hand side front back up down out in left right big little long short high low
  standing seated sitting kneeling lying supine prone band ring bar barbell dumbbell kettlebell weight cable ball chair wall
  mat floor box bench bodyweight loaded weighted work thing move exercise drill hold slow fast the a an of to on with`.split(
    /\s+/,
  ),
)

/** Behind the name a call ends, or goes on like this. */
export const CALL_END =
  /^(?: (?:lot|ones?|it|go|again|please|time|now|people|folks|everyone|everybody|next|first|done|through|away))*\s*(?:$|[.,;:!?…\v\n–—]|\s(?:when|while|off you go|then|this time|nice|till|until|half|same)\b)/i

/** The work is over for now, and how long for. Plain words. */
export const REST_CALL = anyPhrase([
  `(?:minutes?|seconds?|ninety|sixty|forty five|thirty|90|60|45|30)(?: and a half)? (?:off|rest|between|again|break|sat)\\b`,
  `(?:theres|thats|have|take|heres) your (?:\\w+ )?(?:minutes?|rest|break|breather|thirty|sixty|ninety|forty five)\\b`,
  `\\b(?:drink of|sip of|swig|get your breath|water$|while youre blowing|have a (?:drink|breather|minute))\\b`,
  `^${LEAD}thats (?:the )?(?:one|two|three|four|1|2|3|4|pair|lap|lot|circuit|round)\\b`,
  `^(?:\\w+ )?(?:minute|rest|drink|water|breather)s?(?: off| now| of something| please)?$`,
])
