/** Words around a number by which it is weighed whether it is a dose, of what, and of whom. */

import { ONES, PLURALS, TEENS, TENS } from '../../../dose/words/en/numbers.ts'

const COUNTED_ONES = Object.keys(ONES).filter((word) => ONES[word as keyof typeof ONES] > 0)
const WHOLE = [
  `(?:${Object.keys(TENS).join('|')})(?:[- ](?:${COUNTED_ONES.join('|')}))?`,
  ...Object.keys(TEENS),
  ...COUNTED_ONES,
]
const NUMBER = `(?:\\d{1,3}|${WHOLE.join('|')}|a dozen|a couple|twice|once(?=[.,;:!?\\v\\n]|$| each\\b| through\\b| round\\b| around\\b)|(?:a|one|your)(?: whole| full| good)?(?= minute)|(?:half a|a half)(?= minute))`
const EIGHTS = Object.keys(PLURALS).filter((word) => !/^(?:singles|doubles|triples)$/.test(word))

/** What each word of a number is worth: "do eights", "a dozen", "half a minute". Tens and ones are added. */
export const NUMBER_VALUES: Readonly<Record<string, number>> = {
  ...{ ...ONES, ...TEENS, ...TENS, ...PLURALS },
  ...{ 'a dozen': 12, 'a couple': 2, twice: 2, once: 1, a: 1, your: 1, 'half a': 0.5, 'a half': 0.5 },
  ...Object.fromEntries(
    ['a', 'one', 'your'].flatMap((of) => ['whole', 'full', 'good'].map((how) => [`${of} ${how}`, 1])),
  ),
  ...{ twenties: 20, thirties: 30, forties: 40, fifties: 50 },
}

const UNITS =
  'seconds?|secs?|minutes?|mins?|metres?|meters?|breaths?|lots?|goes|rounds?|times|sets?|laps?|turns?|tries|circuits?|trips?|passes|helpings?|visits?'

/** A number or a range with its unit. Groups 1 and 2 are the numbers; `half`, `unit` and `behind` (a half, too) are named. */
export const ANY_NUMBER = new RegExp(
  `\\b(${NUMBER}|${EIGHTS.join('|')})(?:(?:,? to |,? or |-)(${NUMBER}))?\\b(?<half> and a half)?(?<unit>[\\s\\v]+(?:${UNITS}))?(?<behind> and a half\\b)?`,
  'gi',
)

/** Units of which so many are sets. */
export const SET_UNITS = /^(?:lot|goe|round|time|set|lap|turn|trie|circuit|trip|pass|helping|visit)/

/** Said behind a number: on each side. */
export const SIDE_BEHIND =
  /^(?:[\s,]+[\w']+){0,2}?[\s,]+(?:(?:on |to )?(?:each|either|every|both|per|a)[\s]+(?:side|leg|arm|way|hand|foot|direction)s?|each\b(?!\s+(?:time|rep|one|set|round)))/i

/** How two numbers belong together, by what stands between them. The first that fits counts. */
export const NUMBER_LINKS: readonly (readonly [string, RegExp])[] = [
  ['up to', /\b(?:up to|as many as)\b/],
  ['then', /\bthen\b/],
  ['or', /^[\s,]*or\s*(?:it's |it is |make it |the )?$/],
  ['comma', /^[\s,]*(?:and|to)?\s*(?:it's |it is |make it |the )?$/],
  [
    'level',
    /\b(?:if|when|everyone|everybody|others?|else|level|stage|group|colou?r|blues?|reds?|greens?|yellows?|new|early|late|for|maybe)\b/,
  ],
]

/** Between two numbers: the first no longer holds. */
export const NUMBER_TAKEN_BACK =
  /\b(?:no|nah|actually|sorry|make (?:it|that|them|those)|call it|lets say|well say|rather|hang on|hmm|forget|just the|only|i said|i told|i know|instead|kind|greedy|scrap|scratch|change|too (?:many|much|long)|its)\b/

/** In front of a number: it was said or written before, and holds no more where another follows. */
export const SAID_EARLIER =
  /\b(?:i|we|it|board|sheet|card|plan|list)(?: know i| know we)? (?:said|says|told (?:you|them)|wrote|had|put|promised|planned|(?:was|were) going to (?:say|do|give you|have|ask for))(?: (?:it|was|would|be|down|you|for|the|a)){0,3}$/

/** Right behind a number: it is what is done. */
export const WILL_DO = /\b(?:enough|plenty|loads|will do|then|instead|today)\b/

export const HELD_SENTENCE = /\b(?:hold|holding|stay|balance|freeze|pause)\b/

/** A number with these in its phrase counts no seconds. */
export const COUNTS_NO_SECONDS = /\b(?:reps?|times|breaths?|strokes?|rounds?|goes|sets?|steps?)\b/i

/** Rounds of several exercises, whoever is being taught. */
export const ROUND_WORDS =
  /\b(?:rounds?|laps|circuits?|(?:times|twice) (?:through|round|around)|once more|round again)\b/

/** Words for a set, and looser ones. */
const ROUND = 'set|lot|round|lap|trip|pass|helping|visit'
const ANY_GO = `${ROUND}|go|time|one|turn`
const AND_LAST = '(?: (?:and|or) (?:last|final))?'

/** A number with one of these tells how often. */
export const HOW_OFTEN = /\b(?:once|twice|times|goes|turns)\b/i

/** Sets told as they come: a name for the telling, its words, and how many sets there are by then. */
export const SETS_AS_THEY_COME: readonly (readonly [string, RegExp, number])[] = [
  [
    'second',
    new RegExp(
      `\\b(?:second|2nd) (?:${ANY_GO}|batch|half)\\b|\\b(?:set|round) (?:two|2)\\b|\\btwo more (?:sets?|lots?)\\b`,
      'i',
    ),
    2,
  ],
  ['more', new RegExp(`\\b(?:one more|another) (?:${ROUND}|go|batch)\\b|\\b(?:last|final) (?:${ROUND})\\b`, 'i'), 2],
  ['both', /\bboth (?:sets|lots|rounds|goes)\b/i, 2],
  [
    'another',
    /\b(?:and|then) another\b|\banother (?:\w+teen|\w+ty|five|six|seven|eight|nine|ten|eleven|twelve|\d+)\b|\b(?:five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|\w+ty|\d+) more\b(?! (?:seconds|of me))/i,
    2,
  ],
  [
    'again',
    /\b(?:and (?:then )?(?:we )?(?:do|go) (?:it|that|them|those) (?:all )?again|and again\b|once more|one more time|do (?:it|that|them|those) again)\b/i,
    2,
  ],
  ['third', new RegExp(`\\b(?:third|3rd)${AND_LAST} (?:${ANY_GO})\\b|\\b(?:set|round) (?:three|3)\\b`, 'i'), 3],
  ['fifth', new RegExp(`\\b(?:fifth|5th)${AND_LAST} (?:${ANY_GO})\\b`, 'i'), 5],
  ['fourth', new RegExp(`\\b(?:fourth|4th)${AND_LAST} (?:${ANY_GO})\\b|\\b(?:set|round) (?:four|4)\\b`, 'i'), 4],
]

/** From here on another exercise is meant. */
export const BACK_TO_OTHER = /\bback to (?:the|those|your|our)\b/i

/** Said right behind a teaching: once more. */
export const AGAIN_BEHIND = /^[^.!?\v]{0,60}\b(?:again|once more|one more time)\b/i

/** What a sentence says of some exercises: a kind of them, and how to tell whether an exercise is one. */
export const SAID_OF_SOME: readonly (readonly [string, RegExp])[] = [
  ['weight', /\b(?:weights?|dumbbells?|kettlebells?|barbell|bell|bar|tins?|bottles?)\b/],
  ['band', /\bbands?\b/],
  ['rings', /\brings?\b/],
  ['stretch', /\b(?:stretch|stretches|holds?|poses?)\b/],
  ['floor', /\b(?:floor|mats?|lying)\b/],
  ['seated', /\b(?:seated|sitting|sit|chair)\b/],
  ['standing', /\b(?:standing|stood|stand)\b/],
  ['run', /\bdrills?\b/],
  ['sided', /\b(?:one (?:leg|arm|side)|left and (?:a )?right|each side|a side|either side|sides)\b/],
]

/** The word by which a sidedness is told. */
export const SIDE_WORD = /\b(?:sides?|legs?|arms?|ways?|foot|hands?|directions?|each$)\b/i

/** Beside a time: as many as can be done in it. */
export const AS_MANY = /\b(?:as many (?:\w+ ){0,4}?as|how many (?:\w+ ){0,2}?(?:can|could|you)|amrap)\b/i

/** Words that tell how sets are arranged: a name for it, and plain words. */
export const SCHEME_WORDS: readonly (readonly [string, RegExp])[] = [
  ['minute', /\b(?:(?:every|each|on the|of the|of every|of each|top of) minute|emom)\b/],
  ['as many', /\b(?:as many|amrap|how many)\b/],
  ['ladder', /\b(?:ladders?|pyramids?|climb|rungs?|add one|one more each|coming down|going up|up and down)\b/],
  ['on off', /\b(?:on|work) (?:\w+ ){0,3}off\b|\bintervals?\b|\b(?:hard|easy) (?:\w+ ){0,3}(?:easy|hard)\b/],
  ['steady', /\b(?:steady|continuous|keep going|without stopping|easy (?:jog|row|pace)|conversation\w*|gentle)\b/],
  ['circuit', /\b(?:circuits?|stations?|laps?|stops?)\b/],
  ['pair', /\b(?:pairs?|paired|super ?sets?|back to back)\b/],
]

/** A later round is opened or spoken of, with other numbers than the first. Plain words. */
export const LATER_ROUND =
  /\b(?:(?:round|lap|time|go|set|lot) (?:two|three|four|2|3|4)|(?:second|third|fourth|last|final|next|this) (?:round|lap|time|go|one|lot|set)(?:s|'s)?)\b/

/** The two sides are counted as one number. Plain words. */
export const IN_TOTAL =
  /\b(?:in total|altogether|all together|in all|total|both count|not (?:\w+ )?(?:a|each|per) (?:side|leg|arm))\b/

/** One side after the other. Plain words. */
export const OTHER_SIDE =
  /\b(?:on (?:the|your) (?:one|other|left|right)|other (?:side|leg|arm|way|foot|hand)|(?:swap|change|switch) (?:sides?|legs?|arms?|feet|over|hands?)|(?:and|then) the other|both (?:sides|legs|arms|ways)|left and (?:a )?right)\b/

/** Done every minute: the minutes are the sets. Plain words. */
export const EVERY_MINUTE =
  /\b(?:(?:every|each|on the|of the|of every|of each|top of) minute|emom|minutes? on the minute)\b/

/** Right behind a number: who it is for. Plain words. */
export const FOR_WHOM =
  /^(?:if|when|for (?:the|anyone|anybody|everyone|everybody|those|you|stages?|levels?|groups?|beginners?|new|reds?|blues?|greens?|yellows?|oranges?|whites?|blacks?)|once|should|on a good day|on (?:stages?|levels?)|stages?|levels?)\b/

/** Right in front of a number: who does so many. Plain words. */
export const WHO_BEFORE =
  /\b(?:(?:stages?|levels?|groups?) (?:one|two|three|four|five|[a-e]|\d)|reds?|blues?|greens?|yellows?|oranges?|whites?|blacks?|purples?|beginners?|newbies|novices|newcomers|improvers|regulars|old hands|everyone else|everybody else|the rest of you|rest of you|if youre \w+(?: \w+)?|if (?:you|its)(?: \w+){1,4})(?: (?:is|are|it|its|thats|do|does|get|gets|have|has|go|goes|hold|holds|stay|stays|take|takes|make|for|at|on|to|with|up|you|your|youre|just|only)){0,3}$/

/** Between two numbers: the first is taken back in so many words. Plain words. */
export const PLAINLY_TAKEN_BACK =
  /\b(?:nah|no no|no wait|no hang on|hang on|no actually|actually no|wait|scrap that|sorry no|no sorry|hmm|no make|make (?:it|that)|no call|call it|no lets|no say|no its|no im|ive changed my mind)\b/

/** Around a time: it is a rest. A name for what is said, and plain words. */
export const REST_WORDS: readonly (readonly [string, RegExp])[] = [
  ['rest', /\b(?:rest|resting|recover|recovery|breather|break)\b/],
  ['off', /\b(?:off|out|easy)\b/],
  ['between', /\b(?:between|after (?:each|every|the|both|that|your)|at the end|when youve done|once youve)\b/],
  ['breath', /\b(?:breath|breathe|catch)\b/],
  [
    'change',
    /\b(?:swap|change|switch|move (?:on|along|round|over)|get to|to the next|walk (?:back|about|round)|jog back)\b/,
  ],
  ['sit', /\b(?:sit|sat|lie|stand about|shake|water|sip|drink|hug|flop)\b/],
  ['take', /\b(?:take|have|give yourself|gets?|youve)\b/],
  ['then again', /\b(?:then (?:we|you|back|the|another|again)|again|another|second|other)\b/],
]

/** An exercise named by the metres of it. */
export const NAMED_BY_METRES =
  /\b(?:(?<hundreds>one|two|three|four|five|six|eight) hundreds?|flying (?<flying>twenties|thirties|forties|fifties|\d{2}s)|(?<figures>[1-9]\d{0,2}0)s)\b/i

/** Work and what is between. Plain words. */
export const ON_OFF = /\b(?:on|off|hard|easy|work|rest|walking|jogging)\b/

/** What a number counts, named in its own words. */
export const COUNTED =
  /\b(?:reps?|times|breaths?|strokes?|rounds?|goes|sets?|lots?|steps?|of (?:them|those|these)|more|lengths?|laps?|each time)\b/i

/** Right behind a number: of the round that comes now. Plain words. */
export const THIS_ROUND =
  /^(?:seconds? )?(?:\w+ )?(?:this (?:time|round|lap)|on the (?:next|second|last) (?:round|lap|go|one|set))\b/

/** Around a row of numbers: what it is climbed as. A name for what is said, and plain words. */
export const STEP_WORDS: readonly (readonly [string, RegExp])[] = [
  ['a ladder', /\b(?:ladders?|pyramids?|rungs?|stairs?|climb|goes up)\b/],
  ['sets', /\b(?:sets?|lots?|rounds?|goes|of them)\b/],
  ['a rest', /\b(?:rest|off|between|breather|breath|minutes?)\b/],
  ['a level', /\b(?:if|level|new|stage|red|blue|green|yellow|everyone else)\b/],
]
