/** Further classes of words by which cues tell themselves apart, besides those of word-groups.ts. Single words, in stems of `|`. */

/** Words in front of a clause that say nothing of its kind. */
export const LEADS = [
  'and',
  'so',
  'now',
  'then',
  'okay',
  'ok',
  'right',
  'just',
  'well',
  'yeah',
  'alright',
  'also',
  'please',
  'again',
  'but',
] as const

export const CUE_CLASSES = {
  /** Verbs of doing that a class is told, beyond those of the movement lists. */
  do: 'pull|pulls|push|pushes|lift|lifts|lower|lowers|press|presses|raise|raises|reach|reaches|bend|bends|straighten|straightens|extend|extends|flex|flexes|curl|curls|row|rows|squat|squats|lunge|lunges|hinge|hinges|fold|folds|twist|twists|turn|turns|rotate|rotates|roll|rolls|tilt|tilts|tuck|tucks|rock|rocks|swing|swings|circle|circles|sweep|sweeps|slide|slides|glide|glides|float|floats|kick|kicks|tap|taps|step|steps|hop|hops|jump|jumps|bound|bounds|skip|skips|march|marches|walk|walks|run|runs|jog|sprint|drive|drives|snap|snaps|punch|jab|hook|slip|weave|duck|pivot|throw|catch|toss|slam|flick|whip|thread|scoop|peel|melt|sink|drop|drops|hover|hovers|lean|leans|shift|shifts|send|sends|bring|brings|draw|draws|squeeze|squeezes|tighten|gather|clench|release|open|opens|close|closes|spread|cross|uncross|alternate|switch|swap|return|unroll|uncurl|lengthen|stretch|hug|nod|point|pulse|crawl|climb|carry|drag|shove|heave|hoist|pass|trace|wag|shake|shrug|arch|round|dip|stand|rise|rises|travel|travels|shuffle|stomp|stamp|clap|wave|bounce|pedal|hang|brace|engage|pump|feed|nudge|crunch|stir|wind|wrap|unwind|scissor|flutter|clasp',
  /** Verbs of coming to a place. */
  settle:
    'stand|sit|lie|lay|kneel|perch|prop|position|plant|place|put|pop|set|hold|grab|grasp|grip|take|pick|have|get|come|go|find|start|begin|face|loop|wrap|tie|hook|strap|clip|rack|unrack|load|adjust|anchor|straddle|hang|line|scoot|shuffle|settle|stack|cross|rest|lean|bring|tuck|hinge|stagger|mount|sling',
  /** Not, never, stop doing. */
  not: 'dont|not|never|no|avoid|without|cant|cannot|isnt|arent|doesnt|shouldnt|wont|stop|quit|resist|rather|instead|nobody|none|nothing|less|mustnt|neither|nor',
  /** What goes wrong. */
  wrong:
    'sag|sags|sagging|cave|caves|caving|collapse|collapsing|flare|flaring|rounding|rounds|arch|arching|hunch|hunching|shrug|shrugging|hike|hiking|jerk|jerking|yank|yanking|swinging|rocking|bouncing|cheat|cheating|wobble|wobbling|drift|drifts|drifting|wander|wandered|creep|creeping|crept|tip|tipping|twisting|leaning|leans|locking|lock|locked|gripping|clenching|slump|slumping|sloppy|rushed|rushing|dive|diving|poke|poking|jut|telegraphing|crossing|crossed|hyperextend|hyperextending|flop|flopping|plop|slap|slapping|slam|slamming|mistake|mistakes|error|errors|fault|faults|common|classic|usual|wrong|tendency|tend|tempting|tempted|temptation|momentum|cheaty|crooked|wonky|uneven|dropped|sinking|lifting|popping|pops|hitching|craning',
  /** Who and what gets hurt, and what keeps safe. */
  harm: 'pain|pains|painful|hurt|hurts|hurting|sore|ache|aches|injury|injuries|injured|injure|damage|damaged|sprain|strain|strained|tear|tore|torn|stab|stabbing|swell|swells|swelling|swollen|numb|tingling|dizzy|dizziness|swimmy|faint|lightheaded|giddy|vertigo|sick|nausea|nauseous|headache|bleeding|contractions|leaking|breathless|palpitations|symptom|symptoms|condition|conditions|disease|arthritis|osteoporosis|osteopenia|glaucoma|retina|hernia|disc|sciatica|prolapse|asthma|diabetes|diabetic|diabetics|epilepsy|stroke|heart|pressure|pregnant|pregnancy|trimester|caesarean|section|postnatal|operation|operated|surgery|surgeon|replacement|replaced|fracture|fractured|brittle|trip|fall|falls|falling|slip|slips|slippery|safe|safely|safety|careful|carefully|care|danger|dangerous|risk|risky|protect|doctor|gp|physio|physiotherapist|therapist|midwife|nurse|consultant|checked|cleared|spot|spotter|collars|clips|pins|cranky|dodgy|grumpy|niggle|niggly|twinge|pinch|pinching|trouble|problem|problems|issue|issues|bad|complain|complains|wobbly|unsteady|balance|steady|support|sturdy|solid|rail|worktop|counter|wet|ice|icy|traffic|cars|toes|wearing|nick|nicks|frayed|snap|knot',
  /** Less. */
  less: 'easier|easy|gentler|gentle|kinder|lighter|lower|smaller|shorter|softer|simpler|less|half|fewer|modify|modified|modification|regress|regression|beginner|beginners|option|optional|alternative|alternatively|instead|support|supported|rest|break|breaks|struggle|struggling|tired|tires|tight|stiff|cannot|cant|wobble|allowed|welcome|fine|okay|plenty|enough|always|prefer|need|too|much|hard|tough|tricky|scale|drop|new',
  /** More. */
  more: 'harder|tougher|heavier|further|deeper|more|extra|advanced|advance|challenge|challenging|progress|progression|stronger|strong|level|experienced|brave|bravely|confident|fresh|spicy|spice|adventurous|dare|easy|comfortable|smooth|steady|ready|fancy|added|add|adding|double|notch|next|stage|once|anything|left|lungs|works|up',
  /** How fast, how hard, in what rhythm. */
  pace: 'slow|slower|slowly|slowest|quick|quicker|quickly|fast|faster|fastest|speed|tempo|pace|rhythm|cadence|beat|control|controlled|steady|smooth|smoothly|rush|rushing|hurry|hurried|unhurried|patient|gradual|gradually|gentle|gently|explode|explosive|explosively|snappy|crisp|brisk|jog|linger|pause|pausing|count|counts|seconds|second|effort|hard|easy|conversational|talk|chat|eccentric|race|momentum|relaxed|light|gravity|time|metronome|split|rate|strokes|minute',
  /** How far. */
  far: 'far|further|farther|high|higher|low|lower|deep|deeper|shallow|wide|wider|big|bigger|small|smaller|tiny|little|inch|inches|centimetre|centimetres|cm|degrees|ninety|parallel|level|height|halfway|past|beyond|until|till|limit|range|full|fully|extension|edge|depth|hover|touch|touches|skim|clear|clears|only|enough|vertical|horizontal|sensation|mild|reach|reaches|nearly|almost|point|oclock',
  /** Air. */
  air: 'breath|breaths|breathe|breathes|breathing|inhale|inhales|inhaling|exhale|exhales|exhaling|air|lungs|nose|nostrils|mouth|lips|sigh|hiss|puff|pant|blow|blowing|sniff|sip|gulp|straw|belly',
  /** Where to attend, and what it is like. */
  attend:
    'feel|feels|feeling|felt|notice|think|thinking|imagine|picture|pretend|visualise|visualize|remember|focus|concentrate|attention|aware|sense|like|though|as|if|look|eyes|gaze|muscle|muscles|stretch|working|work|works|burn|burning|glutes|abs|core|lats|hamstrings|quads|triceps|biceps|calf|obliques|tall|long|longer|soft|soften|relax|relaxed|heavy|light|square|neutral|stacked|aligned|line|straight|string|still|proud|broad|strong|quiet|switched|switch|weight|pelvis|spine|tailbone|crown|power',
  /** Kit that stands in for other kit. */
  swap: 'towel|towels|bottle|bottles|tin|tins|can|cans|bag|bags|backpack|rucksack|sugar|soup|beans|books|book|stair|stairs|couch|sofa|bed|broom|scarf|belt|cushion|cushions|pillow|blanket|blanket|block|brick|bolster|roller|trainers|shoes|shoe|barefoot|spikes|gloves|chalk|straps|kilos|kilo|pounds|pound|colour|color|yellow|red|blue|green|black|thicker|thinner|heavier|lighter|stand|works|work|fine|perfect|serve|do|use|using|swap|instead|choose|pick|own|home|household|optional|without|no',
  /** Cheer, chat and housekeeping. */
  chat: 'i|im|ive|id|ill|my|me|mine|you|youre|guys|folks|everyone|everybody|team|today|tomorrow|yesterday|week|year|day|morning|thursday|tuesday|monday|class|music|song|phone|camera|link|video|subscribe|comment|description|playlist|hello|hi|welcome|thanks|thank|bye|sorry|great|good|lovely|amazing|brilliant|beautiful|awesome|nice|proud|smashing|fantastic|promise|groaning|lady|daughter|friend|called|invented|fact|did|was|were|had|used|wait|love|hate|favourite|round|rounds|set|sets|reps|circuit|station|exercise|exercises|next|last|first|final|halfway|done|finished|nearly|almost|left|go|let|lets|well',
} as const
