/** Doses told without the words that a written dose has: "ten on the operated leg", "eight, up to twelve", "five if you're new, ten if not". */

const NUMBER =
  '(?:\\d+|(?:twenty|thirty|forty|fifty)(?: (?:one|two|three|four|five|six|seven|eight|nine))?|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|sixty)'
const LEAD =
  '(?:(?:and|so|just|okay|then|only|about|do|its|it is|that is|thats|that was|we want|i want|i need|id like|we have|well have|we do|well do|ill have|give me|lets have|lets do|go for|make it|call it|your) )*'
const SECONDS = '(?: seconds?| secs)?'
const ONE_LEG = '(?:operated|sore|bad|poorly|injured|affected|working|surgical|repaired|weak|new|mended|stiff)'
const WHEN = '(?:if|for|when)'

/** What a row of clauses in plain words tells. `from` and `to` are groups of numbers; `seconds` of what they count, `sets` of how often. */
export const TOLD_DOSES: readonly RegExp[] = [
  // "ten on the operated leg", "twenty with both feet"
  new RegExp(
    `^${LEAD}(?<from>${NUMBER})(?<seconds>${SECONDS}) (?:on|with|for) (?:(?:the|your) ${ONE_LEG} (?:leg|side|knee|foot|one|ankle|hip|arm|shoulder)|(?<side>each(?: of them| one| side| leg| arm| foot)?$)|both (?:legs|feet|hands|arms|heels))\\b.*$`,
  ),
  // "eight, up to twelve if it behaves", "six, or up to ten"
  new RegExp(
    `^${LEAD}(?<from>${NUMBER})(?<seconds>${SECONDS})(?<side> (?:each|a|per|on each|either) (?:side|leg|arm|way|hand|foot))?(?: to start with| to begin with)? (?:or |and |then )?(?:going |and )?(?:up to|as many as) (?<to>${NUMBER})(?: (?:reps|seconds?))?(?: (?:if|when|for|once|today|please|on)\\b.*)?$`,
  ),
  // "five if you're under six weeks, ten for everyone else"
  new RegExp(
    `^${LEAD}(?<from>${NUMBER})(?<seconds>${SECONDS}) ${WHEN} (?:\\w+ ){1,6}?(?:and |or |but )?(?:its )?(?<to>${NUMBER})(?: seconds?)? ${WHEN} (?:\\w+ ?){1,6}$`,
  ),
  // "level one is five seconds, level two is eight, level three is ten"
  new RegExp(
    `^${LEAD}(?:level|group|option) (?:one|1) (?:is|does|do|gets?|has|hold|holds) (?<from>${NUMBER})(?<seconds>${SECONDS})(?: (?:and )?(?:level|group|option) (?:two|2) (?:is|does|do|gets?|has|hold|holds)? ?${NUMBER}${SECONDS})? (?:and )?(?:level|group|option) (?:two|2|three|3) (?:is|does|do|gets?|has|hold|holds)? ?(?<to>${NUMBER})${SECONDS}$`,
  ),
  // "six to the window and six to the piano", "thirty metres facing the stands, thirty metres facing the car park"
  new RegExp(
    `^${LEAD}(?<from>${NUMBER})(?<seconds>${SECONDS})(?<metres>(?: metres| meters)?)(?<side> )(?:\\w+ ){0,1}(?:to|on|facing|for|with|towards|over) (?:the |your |this |one )?\\w+(?: (?:side|leg|way|arm|hand|foot|lot))? (?:and )?(?:then )?(?:because .{1,30} )?\\k<from>(?: seconds| metres| meters)? (?:to|on|facing|for|with|towards|over|back) ?(?:the |your |that )?(?:\\w+ ?){1,3}$`,
  ),
  // "ten, twice"
  new RegExp(
    `^${LEAD}(?<from>${NUMBER})(?: (?!seconds|minutes|metres|meters|sets|rounds|breaths|lengths|laps)[a-z]{3,}s)? (?<sets>twice|two times|three times)(?: (?:over|through|round|around|today|please|each))?$`,
  ),
]

/** So many each minute: "eight minutes, two reps in each". Groups 1 and 2. */
export const TOLD_MINUTES = new RegExp(
  `^${LEAD}(${NUMBER}) minutes (?:and )?(${NUMBER})(?: (?:reps?|of (?:them|those)|lifts|pulls))? (?:in|on|at) (?:the (?:top|start) of )?(?:each|every)(?: (?:one|minute|of (?:them|those)))?$`,
)

/** A ladder told rung by rung: "it's one, then two, then three". Groups 1 to 3. */
export const TOLD_LADDER = new RegExp(
  `^${LEAD}(one|${NUMBER})(?: (?:each )?(?:side|leg|arm|a side))? (?:and )?then (${NUMBER})(?: (?:each )?(?:side|leg|arm|a side))? (?:and )?then (${NUMBER})\\b(?! (?:and )?then).*$`,
)

/** The number in front of "on the press", at the end of what comes before a name. Group 1. */
export const ON_NAME = new RegExp(
  `(?:^|[.,;:!?\\s])(?:and |so |do |just |its |it's |i want |we want )*(${NUMBER}|fives|sixes|eights|tens|twelves|fifteens) (?:on|for|of) (?:the |your |those |our |these )?$`,
  'i',
)

/** Behind a name: its number. Group 1. */
export const NAME_IS = new RegExp(
  `^(?:'s|s'|,)? ?(?:is |are |was |gets? )?(?:just |only |a |about )?(${NUMBER})(?=[.,;!?]|$)`,
  'i',
)

/** "Fives" are five each time. */
export const PLURAL_NUMBERS: Readonly<Record<string, string>> = {
  fives: 'five',
  sixes: 'six',
  eights: 'eight',
  tens: 'ten',
  twelves: 'twelve',
  fifteens: 'fifteen',
  twenties: 'twenty',
}
