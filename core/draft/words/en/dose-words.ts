/** Words around a number that decide whether it is the dose of this class. Plain words, as plainWords gives them. */

/** What was said before no longer holds. */
export const CORRECTIONS = [
  '(?:make|call) (?:that|it|them|those)|no sorry|sorry|actually|i said|i meant|i mean|instead of|lets say|change that|change of mind|(?:is|are|was|thats|\\w+s) too (?:long|many|much)|rather|ill be kind|be kind|och no|oh no|nah|no wait|hang on|greedy|forget (?:that|those|the \\w+|\\w+s)|score that out|scrub that|scratch that|let you off|thats a lot|is a lot|today only|we(?:ll| will) (?:only|just) do|only do|lied|this round',
]

/** A sentence with these tells of other people, other days or the class itself. */
export const NO_DOSE_HERE = [
  '(?:he|she|my \\w+|somebody|someone) (?:\\w+ )?(?:does|did|do|managed|started|rowed|had|has|ran|could)|(?:i|he|she|they|people) (?:used to|managed|once|slept|can do)',
  '(?:last|next) (?:week|time|year|month)|yesterday|years? ago|years? old|weeks? pregnant|my (?:best|record|first)|the record|personal best|tomorrow|before bed',
  '(?:whole|this) (?:class|session|workout)|whole thing(?! (?:is |goes |gets )?(?:<num>|\\d+|twice|three|four) ?(?:times|rounds)?)|(?:again|back|ready|done|finished|there) in (?:\\w+ ){0,2}minutes?$|in like (?:\\w+ )minutes|(?:about|got|just|only|take|takes|in) (?:\\w+ ){0,2}minutes (?:together|today|left|long|of (?:\\w+ )?(?:technique|strength|work|fun|stretching|mobility))|minutes together|minutes (?:gone|left|to go)|(?:we have|weve got) (?:\\w+ ){0,2}minutes|squeezed into|thats (?:it )?(?:your |our |the )?(?:\\w+ ){0,2}minutes|a minute of me|for the next (?:\\w+ ){1,2}minutes',
  '(?:fine|ok|okay|plenty|enough) if (?:youre|you are|its|thats)|if youre new|if you can only|if (?:thats|that is|its) too',
  '^(?:so |and |okay )*(?:thats|that was|that is) (?:a|one|your|the|our)(?: \\w+)? (?:rounds?|sets?)(?: done| down| gone|$)',
  'a thousand|hundreds of|dozens of',
  '(?:hed|shed|theyd) (?:rest|hold|lift|do|row|run|sit|stay|take)|how long was (?:that|it)|doing a (?:\\w+ ){0,2}k (?:on|in|for|run|race|next|this)',
  'none of (?:those|these|that|them) counts?|to warm (?:it )?up(?: with)?$|^(?:and |so |now |your |the |a few )*warm up sets?|just to (?:grease|loosen|warm|wake)|(?:<num>|\\d+) percent for',
  '(?:<num>|\\d+) (?:each|per|a|either) side at a time',
  '(?:nose|inhale|breathe in|breath in|in) (?:\\w+ ){0,2}for (?:\\w+ ){0,2}(?:and |then )+(?:\\w+ ){0,2}(?:out|exhale|blow) (?:\\w+ ){0,2}for (?:<num>|\\d+)',
  'i (?:saw|watched|met|remember|knew an?)(?: |$)|one (?:chap|lady|man|fella|bloke|woman|girl|guy) |(?:a|the|this) (?:woman|man|lady|chap|bloke|fella|guy|girl) (?:on|in|who|at|did|does|i)',
  'not (?:down|up) here longer|no longer than|never more than|heart rates?|out of ten|look at|metres? (?:ahead|in front|away)',
]

/** The phrase itself is none, whatever stands around it. */
export const NO_DOSE_PHRASES = [
  '^(?:one|two|a couple) (?:of )?(?:these|those|them|that|this|more)$',
  '^(?:a|one|half a) (?:minute|second|moment)$',
  '^do (?:one|two|three|four)$',
  '^(?:and |so |thats )*(?:number |round )?<num> (?:is|are)(?: |$)',
  '^(?:and |so |thats )*round <num>$',
  '^(?:up|down|in|out) (?:in )?(?:one|two|three)$',
  '^(?:one|two|three|four) (?:sides|legs|arms|hands|feet)',
  '^(?:one|two) (?:\\w+ )?(?:in|for|at) (?:each|either|every) (?:hand|foot|end|side)',
]

/** Behind the start of a phrase these make it no dose: how to breathe, not how often. */
export const NO_DOSE_BEHIND = [
  '^(?:\\w+ ){0,2}breaths? (?:in and out )?(?:a|per|for each|for every|each|every) (?:stroke|rep|shape|movement|one)',
]

/** A sentence without any of these holds no dose. */
export const AMOUNT_WORDS =
  /\d|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|couple|few|dozen|once|twice|thrice|once|ones|tens|minutes?|seconds?|secs?|reps?|sets?|rounds?|breaths?|failure|max|amrap|emom|tabata|as many|as long|until you|rest|tempo|same again|each side|per side|lengths?|metres?|meters?|ladder|pyramid)\b/i
