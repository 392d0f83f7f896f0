/** Words by which a name that nobody listed is told from other things said in its place. */
import { WORD_GROUPS } from './word-groups.ts'

/** Ends right in front of a name: somebody calls it so. */
export const CALLED =
  /(?:call|called|calls|named|name is|known as|nickname|use a lot|use)(?: it| this| them| these| that| is| are)?(?: the| a| an| my| our| his| her)?$/

/** Ends right in front of a name: its number or turn. */
export const IN_TURN =
  /(?:first|second|third|fourth|fifth|sixth|seventh|eighth|next|last|final|other) (?:station|exercise|thing|one|move|drill|piece|number|up|shape|stretch|part|movement|block|round|two|lot|job|hold|pose|skill|item)(?:s| is| are| will be|ll be| we do is| we have is| today is| here is| on the floor is| on the list is)?(?: is| its)?(?: called| going to be)?(?: the| a| an| my| our| your| some)?$/

/** Ends right in front of what is pointed at or brought: much else stands there, too. */
export const POINTED_AT =
  /(?:\b(?:is|are|be|its|thats|heres|theres|those are|these are|got there is|got|have|do|doing|try|add|into|onto|for|with|by|to|remember|want|of|love|finish|start|begin|there is|comes?|follows is|at \w+ its))(?: (?:the|a|an|our|your|some|my|those|these|that|this|few|more|last|little|lovely|quick|good old|personal|favourite|favorite))*$/
export const ARTICLE = /(?:^| )(?:the|a|an|our|your|some|my|those|these|few)$/
export const ARTICLE_WORD = /^(?:a|an|the|our|your|my|some|these|those|this|that|few)$/i

/** As POINTED_AT, where what is told before bears the name. */
export const BEARS_NAME =
  /(?:^|\b)(?:is|are|be|its|thats|theres|those are|these are|got there is|you have|you have got|call(?:ed)?)(?: (?:a|an|your|the|our|my|what.*))*$/

/** Small words in front of a name in its clause (group 1), the name (2), and what may stand behind it (3). */
export const NAME_IN_CLAUSE =
  /^(\s*(?:(?:and|then|so|now|right|righto|okay|ok|next|first|second|third|fourth|fifth|sixth|last|finally|lastly|well|lovely|good|great|the|a|an|our|your|some|those|these|my|that|we have|we've got|you've got|it's|it is|that's|this is|these are|those are|here's|here comes|there's|number \w+|alright|all right|from here|to finish|to start|back to|on to|onto|into|for|station \w+|exercise \w+|with|just|quick|also|more|one more|up|last but not least|of all)[ ,]+)*)(.*?)((?: (?:first|next|now|again|please|then|time|everyone|everybody|folks|guys|comes next|come next|is next|are next|go|to finish|to start|to end|this time|once more|one more time|for me|it is|today))*[\s,;:.!?…\v–—]*)$/isu

/** The turn said behind a name: "quads next". */
export const TURN_BEHIND =
  /^(first|next|now|again|to start|to finish|then|time|comes next|come next|once more|one more time)\b/

/** A name ends in front of these. */
export const ENDS_NAME: ReadonlySet<string> = new Set(
  'and for where which because now with then so on from to if just or but at again please today first next that is are comes like as when while who what in after before into over till until than'.split(
    ' ',
  ),
)

/** Small words that a name may hold between two others. */
export const WITHIN_NAME: ReadonlySet<string> = new Set('and or of the in on up down out off with to at'.split(' '))

/** Everyday words that a name may hold where more than they is said: "wall tuck". */
export const HELPS_NAME: ReadonlySet<string> = new Set(
  'water wall chair floor side band seat knees feet hands half standing sitting lift middle bottom top front back round table ball start'.split(
    ' ',
  ),
)

/** As above, at the end of a name: "roll back". */
export const CLOSES_NAME: ReadonlySet<string> = new Set(
  'up down out off back over through around lift table side round walk hold circle circles ball wall water rest'.split(
    ' ',
  ),
)

/** Never the last word of a name. */
export const NEVER_LAST: ReadonlySet<string> = new Set(
  'menu list board programme lineup agenda order gossip sake accessories finisher station stations length lengths clock number numbers name names stroke strokes ceiling ceilings metre metres meter meters lap laps tempo pace speed breath breaths pain place spot partner group team line corner window door music video camera teacher friend day days week weeks morning evening night person people reason idea question questions trick secret point deal problem rule rules shape level levels option options choice version versions position weight effort energy count percent power range size height width distance body muscle muscles joint joints doctor physio midwife quiet tall soft heavy light strong loose long short slow fast quick straight flat wide narrow relaxed easy hard forwards backwards sideways upwards downwards inwards outwards forward backward together apart class lift middle a the your my'.split(
    ' ',
  ),
)

/** Never anywhere in a name. */
export const NEVER_WITHIN: ReadonlySet<string> = new Set(
  'own nothing something anything everything already another same operated operative injured affected bad working supporting good'.split(
    ' ',
  ),
)

const INSTRUCTING =
  'lift|lower|push|pull|bend|reach|keep|hold|stand|sit|lie|kneel|place|put|set|grab|step|turn|raise|drop|drive|open|close|squeeze|breathe|feel|press|stay|watch|mind|use|add|change|switch|swap|imagine|think|look|find|shake|walk|tuck|slide|roll|lean|stretch|pause|point|relax|try|stop|start|face|check|remember|hands|feet|knees|elbows|arms|eyes'

/** A clause that begins so is an instruction. */
export const OPENS_INSTRUCTION = new RegExp(`^(?:${INSTRUCTING})$`)

/** Words that open an instruction, a count or talk. */
export const OPENS_OTHER = new RegExp(
  `^(?:${INSTRUCTING}|ease|bounce|come|send|bring|draw|let|take|pick|same|other|halfway|ready|rest|breathing|inhale|exhale|well|hello|morning|evening|thanks|${WORD_GROUPS.num}|once|twice|double|both|each|every|another|few|couple|lots?|bit|little)$`,
)

/** "The left leg", "both arms", "left": a part and its side, no name. */
export const PART_OF_ONE_SIDE = new RegExp(
  `^(?:(?:left|right|other|both|first|second|top|bottom|front|back|upper|lower|inside|outside|near|far|standing|lifted|raised) )+(?:${WORD_GROUPS.part}|sides?)$|^(?:left|right)$`,
)

/** Kit alone is fetched, no exercise: "Bells, please." */
export const KIT_ALONE =
  /^(?:bells?|kettlebells?|dumbbells?|weights?|barbells?|bands?|mats?|chairs?|bench|box|blocks?|straps?|towels?|cushions?)$/

/** Somebody speaking, no name; "er, figures of eight" is one. Apostrophes left out. */
export const SPEAKS =
  /^(?:i|im|id|ill|ive|we|were|weve|wed|you|youre|youll|youve|youd|they|theyre|he|hes|she|shes|it|its|thats|theres|heres|whats|who|lets|dont|cant|wont|if|because|maybe|okay|yes|no|not|yeah|yep|nope|oops|everybodys|somebodys|nobodys|anybodys|everyones|someones|gorgeous|beautiful|marvellous|fabulous|fantastic|excellent|brilliant|perfect|wonderful|grand|superb)\b|^(?:hmm+|oh|ooh|ah|aha|um|er|hey|wow)$/

/** "Wiggle the ankles": told to do, no name. */
export const IMPERATIVE = new RegExp(
  `^(?:${WORD_GROUPS.move}|${WORD_GROUPS.take}|wiggle|land|pop|hug|sip|keep|mind|watch) (?:the|your|it|them|that|those|this|a|an|both|one|each|my|me|in|out|up|down|back|into|on|onto|over|through)\\b`,
)

/** Where the class lies or kneels, behind "onto your". */
export const LAIN_ON =
  /^(?:backs?|fronts?|sides?|bell(?:y|ies)|tumm(?:y|ies)|stomachs?|knees|fours|feet|bums?|bottoms?|elbows|hands)$/

/** Muscles and parts that name a stretch. */
export const MUSCLE =
  /^(?:calf|calves|hamstrings?|quads?|quadriceps|glutes?|chest|lats?|traps?|biceps|triceps|deltoids?|shoulders?|forearms?|wrists?|thighs?|groin|adductors?|flexors?|hips?|neck|spine|back|ankles?|shins?|obliques?|abs|piriformis|pecs?|sides?|soleus|it band)$/
