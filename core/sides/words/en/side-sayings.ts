/**
 * How classes name their sides: the trade's everyday English, our own list. The first saying that fits takes its words;
 * what stands further up is the safer reading. `left|right` as a side is the group named side.
 * "Right" as an answer, "right up", "the right way" and "five left" are no sides: a limb or a place must follow.
 */
import type { SideNamed } from '../../../../shared/log-sheet.ts'

export interface SideSaying {
  says: RegExp
  /** Null = the side of the group `side`. */
  side: SideNamed['side'] | null
  /** Null = words that look like a side and are none. */
  as: SideNamed['as'] | null
}

const SIDE = '(?<side>left|right)'
const LIMB =
  '(?:arm|hand|leg|foot|feet|knee|hip|elbow|shoulder|heel|toe|thigh|ankle|wrist|glute|hamstring|quad|calf|buttock|cheek|palm|fist|forearm|shin|ear|armpit|finger|fingertip)s?'
/** A limb that only carries: on the wall, on the hip. */
const HELD =
  '(?:chair|wall|bench|rail|barre|bar|counter|worktop|table|hips?|waist|thigh|floor|mat|ground|block|partner|back of|small of)'
const says = (...parts: string[]): RegExp => new RegExp(parts.join('|'), 'gi')

/** What may stand behind "on the left" where it is the whole call; \v = a comma that is missing (restore-breaks.ts). */
const CALL_ENDS =
  '(?=[ \\t]*(?:[.,;!?–—\\v\\n-]|$|(?:now|again|next|then|and|or|for|too|as|this time|done|with|so|until|in|at|first|while|slowly|two|three|four|five|six|eight|ten|twelve)\\b))'
/** "The right side", "the right" with nothing behind it that it could describe. */
const PLACE = `(?: (?:side|${LIMB})\\b|${CALL_ENDS})`

export const SIDE_SAYINGS: readonly SideSaying[] = [
  // "I'll mirror you", "mirror me", "my left, your right", "you go right as I go left"; not "look in the mirror"
  {
    says: says(
      "\\b(?:i(?:['’]?ll| will|['’]?m| am)(?: \\w+){0,2} mirror(?:ing)?|mirroring) (?:you|me|the class|everyone|everybody)\\b",
      '\\bmirror me\\b|\\b(?:like|as) (?:in |i(?:n|f it were) )?a mirror\\b|\\bmirror(?:ed)? image\\b',
      "\\b(?:i(?:['’]?m| am)|be|as) your mirror\\b|\\bi(?:['’]?m| am) (?:teaching |doing this )?mirrored\\b",
      "\\bmy left(?:,| is|['’]s| will be|,? so)*,? your right\\b|\\bmy right(?:,| is|['’]s| will be|,? so)*,? your left\\b",
      "\\byour left(?:,| is|['’]s| will be|,? so)*,? my right\\b|\\byour right(?:,| is|['’]s| will be|,? so)*,? my left\\b",
      '\\byou(?: go| move| take| use)?(?: your| to the)? (?:left|right)(?: leg| arm)?,? (?:as|while|when) i(?: go| move| take| use)?(?: my| to the)? (?:left|right)\\b',
      '\\b(?:when |if )?i (?:go|move|say|use|take)(?: my| to the)? (?:left|right)(?: leg| arm)?,? (?:and |then )?you (?:go|move|use|take|do)(?: your| to the)? (?:left|right)\\b',
    ),
    side: 'both',
    as: 'mirrored',
  },
  // "other leg long" tells how it lies; "right side up" tells which way
  {
    says: /\b(?:the |your )?other (?:leg|arm|foot|hand|knee) (?:is |stays? )?(?:long|straight|bent|flat|behind|extended|crossed|in front|on (?:the|your)|stays?)\b/gi,
    side: null,
    as: null,
  },
  { says: /\bright side (?:up|out|in)\b|\bright[ -]hand(?:ed)? (?:man|rule)\b/gi, side: null, as: null },
  // "left and right", "right, left, right": both at once
  {
    says: /\b(?:left|right)(?:,? (?:and|or|then|to|and then)(?: the| your| on the)?|,|-to-|-)? ?(?:left|right)\b(?! (?:back|down|up|away))/gi,
    side: 'both',
    as: 'turn',
  },
  // "right side first", "start on the left"
  {
    says: says(
      `\\b${SIDE} (?:side|${LIMB})(?: is| goes| go| comes| will go| will be)?(?: going)? first\\b`,
      `\\b(?:the|your) (?<side2>left|right)(?: goes| go| comes)? first\\b`,
      `\\b(?:start|starting|begin|beginning|kick off|kicking off)(?: \\w+)? (?:with|on) (?:the |your )?(?<side3>left|right)\\b(?! (?:hand|foot|knee) (?:on|holding|against|down)\\b)(?! (?:note|track|size|weight|band|height|angle|way|one|level|number|things?)\\b)(?: (?:side|${LIMB})\\b)?`,
      `\\bfirst(?: up)?,? (?:on |with |for )?(?:the |your )(?<side4>left|right)\\b(?: (?:side|${LIMB})\\b)?`,
    ),
    side: null,
    as: 'first',
  },
  // "that's the right done": the side that is over
  {
    says: says(
      `\\b(?:that(?:['’]?s| was| is)|done|finished|finish|after|before)(?: \\w+){0,3}? (?:on |with )?(?:the|your) ${SIDE}\\b${PLACE}`,
    ),
    side: null,
    as: 'aside',
  },
  // "roll onto your right side", "stand on the left leg", "right hand on the chair", "right knee down"
  {
    says: says(
      `\\b(?:lie|lying|lay|laying|roll|rolling|come|coming|flop|turn|turning|rest|resting|flip|swing|over|down)(?: \\w+){0,2}? (?:on|onto|on to) (?:the|your) ${SIDE}\\b(?: side\\b|${CALL_ENDS})`,
      `\\b(?:stand|standing|balance|balancing|kneel|kneeling|weight|sit|sitting|lean|leaning|perch|hold|holding|hold on)(?: \\w+){0,3}? (?:on|onto|into|in|over|through|to|with) (?:the|your) (?<side2>left|right)\\b${PLACE}`,
      `\\b(?<side3>left|right) hand (?:is |goes |stays |can )?(?:on|holds?|holding|against|rests? on|resting on)(?: to)? (?:the |your |a )?${HELD}\\b`,
      `\\b(?<side4>left|right) knee (?:is |goes |comes |stays )?(?:down\\b|on (?:the|a) (?:floor|mat|grass|ground|pad|cushion))`,
    ),
    side: null,
    as: 'aside',
  },
  // "look to the left", "by your right side": where to, and where things lie
  {
    says: says(
      `\\b(?:to|towards?|by|at|down|along|beside|across|from|over to|up|past|behind|near) (?:the|your) ${SIDE}\\b(?: side\\b|${CALL_ENDS})`,
    ),
    side: null,
    as: 'aside',
  },
  // "other side", "swap legs": from one to the other
  {
    says: says(
      '\\b(?:the |your )?(?:other|second) (?:side|leg|arm)\\b',
      '\\b(?:swap|switch|change)(?: over)? (?:sides?|legs?|arms?|hands?|feet|knees?)\\b',
      '\\b(?:swap|switch)(?: it| them)?(?: over)?(?=[ \\t]*(?:[.!\\n]|$))',
    ),
    side: 'other',
    as: 'turn',
  },
  // less sure: it may bring in the other side
  {
    says: says(
      '\\b(?:swap|switch|change over|opposite)\\b|\\b(?:the |your )?other (?:foot|hand|knee|hip|way|one|elbow|shoulder|heel)\\b',
      '\\b(?:roll|turn|flip|swing|spin)(?:ing)? (?:yourself |it |right |all the way )?(?:over|round|around)\\b',
      '(?:^|[.!?]\\s*|\\n)and over\\b',
    ),
    side: 'other',
    as: 'aside',
  },
  {
    says: says(
      '\\b(?:both|two|either) (?:sides|side)\\b|\\b(?:do|on|for|with|works?) both (?:legs|arms)\\b|\\b(?:one|each) side (?:then|and then|after|at a time)\\b',
      '\\bside to side\\b|\\balternat\\w+|\\bin total\\b|\\bone (?:leg|arm) (?:then|and then)\\b',
    ),
    side: 'both',
    as: 'aside',
  },
  // "two and two": so many on each side
  {
    says: /\b(one|two|three|four|five|six|eight|ten|twelve) and \1\b(?! (?:is|are|makes?|a half)\b)/gi,
    side: 'both',
    as: 'aside',
  },
  // "now the left", "ten on your right", "left leg again", and a sentence that is nothing but "Left leg."
  {
    says: says(
      `\\b(?:on|for|now|and|then|next|again|same on|over on)(?: on| to| for)? (?:the|your) ${SIDE}\\b(?: (?:side|leg|arm))?${CALL_ENDS}`,
      `\\b(?:then|and then|now) (?<side5>left|right)\\b${CALL_ENDS}`,
      `(?<!\\b(?:into|through|out|of|stretch|via) (?:the |your )?)\\b(?<side2>left|right)[ -](?:hand )?side\\b(?! (?:bend|plank|lunge|raise|stretch|of)\\b)(?: (?:first|again|now|next))?`,
      `\\b(?<side3>left|right) ${LIMB} (?:now|next|again|this time)\\b`,
      `(?<=(?:^|[.!?]\\s+|\\n)(?:(?:and|now|then|so|okay|ok|right|good|lovely),? )*)(?<side4>left|right) (?:(?:foot|hand|knee)(?=[ \\t]*(?:[.!?\\n]|$))|(?:leg|arm)(?=[ \\t]*(?:[.,!?\\v\\n]|$)))`,
    ),
    side: null,
    as: 'turn',
  },
  {
    says: says(
      `\\b${SIDE} (?:${LIMB})\\b`,
      `\\b(?:the|your) (?<side2>left|right)\\b(?=[ \\t]*(?:[.,;!?\\v\\n]|$|is\\b|stays?\\b|goes\\b))`,
    ),
    side: null,
    as: 'limb',
  },
]
