/** What is said in a class and is no cue: counting, praise, purpose, chat, retracted things, changes of exercise. */

/** A whole clause of these is no cue. */
export const EMPTY_CLAUSES = [
  '^(?:okay|ok|right|so|now|then|and|yeah|yes|no|good|great|lovely|nice|well done|brilliant|super|beautiful|perfect|excellent|fab|fantastic|there we go|there you go|thats it|thats the one|that is it|here we go|off you go|off we go|go|and go|go again|ready|and rest|rest|and off|off|done|and done|and stop|stop|halfway|half way|nearly there|almost there|almost home|last one|last few|come on|keep going|keep it going|keep it up|keep that up|keep moving|dont stop|stay with me|stay with it|hang in|hang in there|you can do (?:it|this)|youve got this|good work|good job|lovely work|nice work|one more|two more|a few more|and again|again|and relax|relax|shake it out|shake (?:it|them|the arms|your hands|the hands|the legs|your legs|out)(?: \\w+)?|park it|and park it|and swap|swap|and switch|switch|change|and change|then change|swap sides|change sides|and the other side|other side|other way|the other way|same again|same on the (?:left|right|other side)|and the last|good people|everyone|everybody|thank you|thanks|please|drink|walk|take a breather|and breathe easy|get a drink|grab some water|have some water|drinks? down|sip of water|next|and easy|easy|one minute gone|dont groan|nobodys watching|as you (?:like|want))$',
  '^(?:and )?(?:(?:<num>|and|zero|last|more|to go|go|rest|thats|from|left|nearly|halfway|of|make it|minute|minutes|second|seconds|one|round|rounds|set|sets|number|first|third|fourth|fifth|next|final|gone)(?: |$))+$',
  '^(?:up|down|in|out)(?: (?:and|up|down|in|out|then))+$',
]

/** Praise and cheering anywhere in a short clause. */
export const PRAISE = [
  'well done|good (?:work|job|effort|stuff)|lovely (?:work|work at|and clean|job)|nice (?:work|one)|great (?:work|job)|thats (?:beautiful|lovely|better|great|it|brilliant|perfect|much better)|looking (?:good|great|strong)|youre (?:flying|nearly|doing|almost|all doing)|you(?:ve| have) got this|come on|keep (?:going|it up|that up|moving)|stay with me|hang in|proud of you|nearly (?:there|done)|almost (?:there|home|done)|hate me|sleep tonight',
]

/** Reasons and talk about what it is good for. */
export const PURPOSE = [
  '(?:we|i|you) (?:do|are doing|use|train|practise|like) (?:this|these|it|them|that) (?:because|to help|so that|for)',
  '(?:this|it|that|which|they|these) (?:really )?(?:helps?|is good for|is great for|builds|teaches|improves|strengthens|keeps you|gets you ready|means you can|is why|is what keeps|changes people)',
  '^because|^so that|^thats why|^which is why|is what keeps|training is what|often show up',
  '(?:important|useful|great|good) (?:for|because|when)(?: getting| everyday| life| stairs)?',
]

/** Stories, greetings, housekeeping, jokes about oneself. */
export const CHAT = [
  '\\b(?:i (?:was|had|did|used|went|once|rowed|started|got|said|know|always|never|hated|dread|lied|filmed|heard|love|loved|think i|promise|cant|couldnt|could|wouldnt|had a|am|would|usually|just|like to|forgot|dont know|read|saw|watched|met|remember|mean)|ive|im|id|my (?:\\w+ )?(?:brother|sister|mum|mother|dad|gran|husband|wife|daughter|son|dog|cat|toddler|coach|teacher|best|legs|neighbour|record|first|window|physio|friend|knees|hairdresser|old)|mine)\\b',
  'she|he|him|her|hes|shes|somebody (?:asked|wrote|sent|said|told)|someone (?:asked|wrote|said|told)|wrote in|message from|email|comments?|telly|television|weather|song|music|weekend|car park|school|pub|dinner|window|neighbour|toddler|kids?|hedge|bus|shop|coffee|tea|biscuit|cake|wine|chips|water by|lights on|camera|microphone|screen|video|recording|website|link|newsletter|monday|tuesday|wednesday|thursday|friday|saturday|sunday|tonight|last week|next week|this week|yesterday|years? ago|back in the day|christmas|birthday',
  'hello|hi everyone|good (?:morning|evening|afternoon)|morning everyone|welcome|see you|bye|goodbye|goodnight|thank you (?:for|everyone|all)|thanks for|thats it for|my name is|nice to see|how are you|how is everyone|hows everyone|well done everybody',
  'nobodys ever|nobody(?:s)? (?:minds|laughed|regretted|wants|guessing)|made up|dont copy|copy me|you know it|whats next|the one nobody|funny|joking|only joking|kidding|laugh|laughed|allegedly|honestly|seriously|believe it or not|fun fact|science|study|studies|record|world|famous',
  '^(?:is|are|was|were|can|does|do|did|has|have|anyone|anybody|who|whos|what|whats|when|where|why|how|hows|shall|isnt|arent) (?!it in|it there)',
]

/** Taken back at once, or not done today: not what the class should do. */
export const RETRACTED = [
  '(?:we|i) (?:were|was) going to|(?:we|i) (?:wont|arent|are not|shant|cant)|not doing|off the menu|not today (?:though|we)|another (?:day|time)|skip(?:ping)? that today|no im joking|only joking|we(?:ll| will) leave (?:that|those)',
]

/** Doses and rests by themselves: no cue, the dose has its own place. */
export const DOSE_ONLY = [
  '^(?:and |so |then |now |just |okay |right |well do |we will do |we are doing |were doing |lets do |lets go for |lets have |give me |i want |i would like |aim for |try |go for |take |about |around |maybe |another |first set |same |do |for |hold (?:it |that |this )?for |hold |stay (?:here |there )?(?:for )?|its |we want |we do |well take |well have |thats |make (?:it|that) |plus |up to |its a ladder so )*(?:<num>)(?: (?:to|or|and|by|x|of|times|sets?|reps?|repetitions|rounds?|goes|each|either|per|a|side|sides|leg|arm|way|one|the|other|on|off|in|right|left|seconds?|secs?|minutes?|mins?|breaths?|strokes|metres|lengths|rest|slow|slow ones|deep|more|these|those|them|this|that|please|total|both|here|then|swap|roll over|with|between|now|today|last|go|round|well|we|do|<num>|your|own|breath|full|long|good|clean|is|plenty))*$',
  '^(?:rest|a rest|have a rest|take a rest|take a|a) (?:\\w+ ){0,2}(?:<num>|minute|seconds)',
  '(?:times|days|sessions) a (?:week|day)|every (?:other )?(?:day|morning|evening)|twice a (?:day|week)|once a day',
  '^(?:<num>) (?:sets|rounds|reps|times)',
]

/** Going over to another exercise, side or place. */
export const TRANSITIONS = [
  '^(?:and |so |okay |right |now )*(?:next up|next exercise|moving on|lets move on|move on|on to the next|that is it for|thats it for|change sides|swap sides|switch sides|change over|other side|same (?:thing|again) on|same on the|and the other|repeat on the)',
  '^(?:have|grab|get|take|sip) (?:a |some |your )?(?:drink|water|sip|breather|minute|moment)',
  'lets (?:go|move) (?:on|to|onto)|well (?:go|move) (?:on|onto)|time for (?:the|a|our)',
]
