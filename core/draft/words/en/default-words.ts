/** Words by which a dose is said once for many exercises. */

/** Said for all of the class, or for all of what comes: everything, all of them, each one, unless I say otherwise. */
export const FOR_ALL =
  /\b(?:everything|anything (?:thats |that's |that is )?(?:on|with|in|done)|every (?:one|exercise|single one|drill|stretch|move|movement|station|pose)|all of (?:them|these|those|it)|all (?:the|these|those|our|your) (?:\w+ )?(?:ones|exercises|drills|stretches|moves|movements|stations|poses|shapes|holds|strength|standing|seated|floor|bands?|work)|each (?:one|exercise|station|stretch|move|drill|thing|pose|of (?:them|these|those))|(?:of|on|for) each(?: one)?(?! (?:side|leg|arm|hand|foot|knee|way|direction|breath|rep|set|round|other|of (?:your|the)))|unless (?:i|we) (?:say|tell|shout|mention)|unless told|throughout|same for all|all the way through|whatever we do|(?:two|three|four|five|six|seven|eight|nine|ten|\d+) (?:exercises|stations|moves|movements|things|drills))\b/i

/** Only some of them: a part that a person names, which is no default for the rest. */
export const FOR_SOME = /\b(?:last|first) (?:one|two|three)\b|\bexcept\b/i

/** Stations in turns, or rounds of all of it. */
export const IN_TURNS =
  /\b(?:stations?|stops|loop|circuit|(?:go|going|get) (?:a)?round|rounds?|laps?|times (?:through|round|around)|the (?:whole )?lot|(?:two|three|four|five|six|seven|eight|nine|ten|\d+) (?:exercises|moves|movements|things))\b/i

/** A part of the class: what is said for all of it holds until exercises done in turns come. */
export const FOR_PART = /\b(?:this|the|our) (?:\w+ )?(?:part|section|block|half|bit|set)\b/i

/** The class goes on to another part. Plain words. */
export const NEXT_PART =
  /\b(?:part (?:two|three|four|\d)|(?:second|third|next|last|other|final) (?:part|half|block|section))\b/

/** What goes in turns, by name: the rounds of one thing are none. */
export const TURN_NAMES =
  /\b(?:stations?|stops|loop|circuit|exercises|moves|movements|things|drills|each|all of (?:it|them|these|those)|the (?:whole )?lot)\b/i

/** How a rest or the rounds are told there, and the words the dose reader knows for it. */
export const SAID_SO: readonly (readonly [RegExp, string])[] = [
  [
    /\b(seconds?|minutes?|minute|\w+teen|\w+ty|ten|five|fifteen|\d+)(?: a)? (?:to|for) (?:catch (?:your|our) breath|switch|swap|change|move|walk|get|breathe|recover|shuffle|reset|turn|rest)\b[^,.;]*/gi,
    '$1 rest',
  ],
  [/\b(?:we )?(?:go|going|do|doing|get)? ?(?:a)?round (two|three|four|five|six|\d+) times\b/gi, '$1 rounds'],
  [
    /\b(?:and )?(?:we |you )?(?:do|go|repeat|get)s? (?:it|them|that|each|each one|everything)? ?(two|three|four|five|six|\d+) times\b/gi,
    ', $1 sets',
  ],
  [/\b(?:and )?(?:we |you )?(?:do|go|repeat) (?:it|them|that|each|each one|everything)? ?twice\b/gi, ', two sets'],
  [
    /\b(?:everything|every (?:one|exercise)|each (?:one|exercise)|they)(?:'s| is|'re| are| gets?) (ten|eight|twelve|fifteen|six|five|\d+)\b(?! (?:seconds|metres|meters|minutes|sets|rounds))/gi,
    'everything $1 reps',
  ],
  [
    /\b(two|three|four|five|\d) (?:of|on) (?:everything|each|all of (?:them|it|those|these)|them all|the lot)\b/gi,
    '$1 sets',
  ],
  [
    /\b(?:(?:everything|anything|every \w+)(?: [\w']+){0,5}?|all of (?:it|them)|the lot|each one)(?:'s| is| are| goes| gets| go)?(?: there)? twice\b/gi,
    'two sets',
  ],
  [/\b(two|three|four|five|six|\d+) times (?:through|round|around|over|in all)?\b/gi, '$1 rounds '],
  [/\b(?:the (?:whole )?lot|all of it|everything) (two|three|four|five|six|\d+) times\b/gi, '$1 rounds'],
  [/\b(two|three|four|five|six|\d+) (?:laps|circuits|goes)\b/gi, '$1 rounds'],
  [/\btwice (?:through|round|around|over)\b/gi, 'two rounds'],
  [/\beach (?:one|exercise|station|thing|of them) for (a minute|\w+ seconds|\w+ minutes|half a minute)/gi, '$1'],
]
