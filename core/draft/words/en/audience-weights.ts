/**
 * What the words of a class add to the log of the odds that it is meant for an audience (hear-audience.ts). Fitted by
 * tests/fit/fit-audience.ts, not by hand.
 */
import type { Audience } from '../../../../shared/log-sheet.ts'

export const AUDIENCE_WEIGHTS: readonly (readonly [Audience, readonly (readonly [weight: number, words: string])[]])[] =
  [
    [
      'rehab',
      [
        [2.3, 'pain'],
        [2, 'day|table'],
        [1.9, 'help|mat|sheet|towel'],
        [1.8, 'joint|many|stool|use'],
        [1.7, 'bad|block|chair|edge|fine|give|kneecap|lazy|physio|pillow|quarter|seat|slide|wont'],
        [1.6, 'ache|centimetre|clinic|degree|ease|lie|month|prop|rail|rolled|rule|working'],
        [1.5, 'above|band|exercise|flop|gentle|hitch|loop|man|nothing|sharp|sore|standing|stick|toward'],
        [1.4, 'bag|bar|bite|boring|bridge|draw|dull|giving|ice|lying|mini|oh|thinner|today'],
        [
          1.3,
          'along|balance|below|bike|calf|dive|group|hot|less|lock|muscle|shaking|single|slope|sock|stair|surgeon|touching|watch|woman',
        ],
        [1.2, 'book|care|circle|cushion|even|inside|join|loud|normal|quad|scale|squash|tighten'],
        [
          1.1,
          'cheat|early|extension|found|hook|kneeling|locked|op|operation|paint|pulling|resting|tea|tin|without|yes|yet',
        ],
        [
          1,
          'banister|fingertip|fire|folded|forgot|free|glued|kind|knock|lifting|lost|neighbour|nor|operated|pop|raise|rice|slowly|speed|station|stirring|teeth|terminal|wait',
        ],
        [
          0.9,
          'bathroom|bed|beside|cheating|copy|crutch|curtain|dot|grinding|lunge|ride|rolling|size|spare|static|surgery|tiny|using|wasnt|wedding|written',
        ],
        [
          0.8,
          'angle|ask|biscuit|boot|burn|chat|clenching|counted|crossed|hover|nailed|prayer|scar|sell|sent|sound|spring|squashing|tipping|walked|weak|windscreen',
        ],
        [
          0.7,
          'advert|afternoon|break|chasing|climb|crab|dig|eighteen|everyone|footprint|headlight|limping|melt|numb|order|patient|pendulum|plus|pool|radiator|read|scoot|sneak|swollen|ticket|wiper|writing|wrote',
        ],
        [
          0.6,
          'bird|brisk|card|chap|chuck|class|completely|cupboard|daylight|fancy|fat|fetch|frozen|greedy|heroe|jammed|kettle|lifted|loosen|missing|nearest|ought|ping|plastic|purple|sing|spaniel|squad|summer|touche|waiting|ward|would',
        ],
        [
          0.5,
          'allowed|assistant|bother|bunch|cake|cloth|coin|corridor|counter|dad|deeper|fell|finished|foam|gary|god|grape|halve|her|hitching|homework|hopping|hovering|inward|itself|keeping|ladder|leaving|milk|moira|ordinary|own|pan|piano|picture|playing|properly|puffy|pump|reaching|roof|rucksack|scarf|slipping|snooker|socket|somewhere|stab|stage|sticky|stomping|sugar|swell|tendon|tide|tingle|tomorrow',
        ],
        [
          0.4,
          '2s|almost|backside|bean|boat|bobbing|bought|carrier|climbed|crossing|direction|dragging|dump|easter|effort|follow|fortnight|fridge|gas|heave|hurt|jacket|keen|kiss|letter|maureen|mostly|normally|often|pelvic|pelvis|pence|plaster|plop|queue|quieter|racing|red|rubber|ruler|saddle|seam|shouting|slam|small|snatching|suit|sunday|support|switch|teacher|test|tilt|twisting|uncle|werent|wherever|whistle|worked|youngest',
        ],
        [
          0.3,
          '60|against|ago|alone|anti|balloon|beetle|bent|biggest|brace|buckle|chalk|christening|clam|coat|cooling|cost|court|cramping|crease|crook|cutting|door|drift|drove|duck|elastic|exact|ferry|fishing|flannel|flatten|following|freeze|gear|gonna|gram|gravel|hall|hanger|hanging|heal|heat|hunch|hundred|idea|internet|jumper|k|knot|life|lowering|machine|magazine|mine|mop|mud|neither|niece|odd|okay|oven|passenger|play|plonking|position|pushing|railing|rained|return|ringing|roe|rounded|saucer|scrape|shorter|shrugging|sixth|skip|smaller|soldier|stack|stamp|stuff|tape|teach|tension|thicker|toddler|tough|traffic|tried|trying|tune|unlocked|waistband|wander|watching|waving|wee|wiggle|win|word|worktop|wouldnt|write',
        ],
        [
          0.2,
          '50|admire|aim|already|anybody|b|badge|balcony|bargain|bladder|borrowed|broom|brother|callum|car|caretaker|charity|chatting|clench|clip|cocky|coffee|comfortable|couple|cracking|crate|crew|curb|daft|daughter|denise|driving|eleven|else|evening|fellow|fill|fix|flamingo|flexor|fun|funeral|gap|giraffe|grand|gravity|groin|gull|gym|hammer|heavier|his|hour|hugged|hugging|id|inner|itll|joking|leaflet|least|legged|library|lid|ligament|liked|list|loaded|loft|mast|mean|met|might|moaning|mug|och|oil|otherwise|paid|paying|pea|pedal|peel|pint|pipe|plain|point|postie|print|puffed|quiet|ramp|rather|really|rear|rotation|sandra|saturday|season|seen|share|shoelace|slightly|slippy|smug|sooner|spend|sphinx|stepping|straightener|strength|swapping|swig|tank|testing|thick|thought|tick|tongue|trap|until|van|wanted|wardrobe|went|whichever|whisker|who|worry|worth|yeah|yesterday',
        ],
        [
          0.1,
          '26|4s|account|ach|actual|actually|april|arch|barn|beep|best|bored|boss|bouncing|bow|brush|bump|buttock|cap|carried|cent|change|checking|circuit|closer|company|competition|complaint|corner|could|crash|crept|dark|dry|earned|evenly|everywhere|fan|february|fifty|finally|firm|flour|forth|forty|fourth|furniture|further|game|gate|gave|girl|given|goat|grind|grit|halfway|handle|happening|having|hiding|hike|himself|holiday|honestly|horrid|hospital|hurting|ignore|insurance|invited|jack|jerk|jerking|job|jogging|joke|june|key|lay|lino|lorry|lose|marcus|meant|meaty|medal|meter|metronome|moan|mum|music|necklace|netball|night|nip|nipping|none|nose|oiled|painted|pal|pant|patience|peeping|phone|pile|pinched|plonk|ponytail|posh|pot|pressing|pub|puddle|pulse|putting|ra|raised|ran|reckon|relax|road|rocking|root|score|screw|seal|session|settee|sh|shed|shelf|shine|show|shut|sick|sideway|sigh|signed|smoked|smooth|snow|son|starting|street|stretch|string|stroll|strolling|student|sweet|t|tailbone|talked|text|thinking|throw|tiptoe|tomatoe|tooth|tore|treacle|trunk|turn|twice|umbrella|vicar|video|wall|walnut|watched|wave|week|weight|while|whip|width|wild|wipe|wonder|woozy|world|wringing|zing',
        ],
        [
          -0.1,
          '14|15|16|200|22|300|30s|31|40|ab|alway|animal|ankling|answer|anyone|anyway|around|arrive|ate|bacon|bakery|basically|bat|been|behind|bending|better|bless|blink|bloke|board|bob|bog|both|bowling|brian|broke|broomstick|brushing|bumper|business|buy|cable|camera|carol|caving|chain|charged|chase|christma|church|cleaner|climber|coached|complained|contact|control|cord|cork|couch|country|cow|crane|cried|cross|crowd|crown|crunch|crush|curled|dance|dancing|dangle|deckchair|deep|dentist|distance|doddle|dodgy|doe|doesnt|dollar|downhill|drain|draught|drawing|dressing|droop|dum|easy|eat|eaten|eating|eight|enough|every|exactly|exam|extra|fair|fallout|father|fed|feed|feel|fewer|fierce|fifteen|fifth|filling|finger|first|fish|five|fiver|fixed|flagpole|flared|flask|flex|flick|flinging|floor|flutter|fly|flying|folk|football|form|four|fourteenth|frame|freezing|full|garden|gaze|get|gethin|getting|glute|goal|good|gorgeous|gown|graham|grandad|grandfather|grandmother|grandson|grey|grown|grumble|guitar|gut|gymnast|hammock|handbag|has|hauling|hearing|heater|heaviest|heavy|hero|hey|hm|honey|hop|hose|hump|hurdle|hurry|husband|ill|im|incline|into|iron|jean|jelly|joining|keith|knitted|l|lady|law|learnt|lesson|lied|limbo|living|looked|losing|lower|lowest|mailbox|manner|marathon|married|match|matchbox|may|me|measured|measuring|minus|more|near|neat|negative|new|nicer|nick|nobody|noise|notch|noticed|nowt|once|ooh|opened|opening|opinion|owl|paddling|parade|part|partner|pasty|pencil|penguin|perfectly|picked|picking|pier|pike|pin|pitch|place|plum|poke|polite|postman|potato|pounding|prawn|press|priya|proud|pushed|put|quid|railway|reading|reason|rent|repeat|right|righto|roller|romanian|rose|rude|running|same|sandwich|sandwiche|say|scared|science|scone|settle|shape|sharing|shave|ship|shopping|shy|sitting|six|skipping|slack|slap|sniff|sole|spice|square|squashed|squatted|squatting|squeezed|squeezing|staying|steady|stealing|step|sticker|sticking|stiff|stomp|stop|store|stork|straddle|straight|straighten|stretched|stretchy|strict|sum|supposed|ta|tablet|tabletop|talk|tear|tearing|ten|term|terrible|theyd|tickle|tightness|tippy|torch|tow|tower|town|trailing|tricep|trip|truck|true|trust|tub|tug|turned|twang|underwater|unhurried|upside|upstair|used|vertical|very|wanting|warm|was|wash|we|wear|weigh|weve|whiteboard|whove|why|winning|wire|within|wobble|wobbly|wool|wrapped|ye',
        ],
        [
          -0.2,
          '*|100|11|12|2019|3|3s|5|7|8|80|90|a|about|accordion|achilles|alarm|all|allow|alright|anchor|and|apart|apiece|arent|as|at|awake|away|aye|back|balancing|ball|bandstand|bare|bark|basement|bay|beach|being|belong|bendy|between|bit|black|blowing|blue|body|bottom|bouncy|bound|bounding|bowing|bra|brass|breathe|breather|breathing|brilliant|bringing|bruise|bucket|bug|burning|by|bye|candle|canoe|carrying|cat|cave|ceiling|centre|charge|cheek|choir|chop|cigarette|clenched|closed|club|coach|colin|come|concrete|cooked|cool|count|curling|custard|da|deck|deer|do|dock|doing|dont|doorway|down|downward|dragged|drawbridge|drink|drip|drum|earring|email|engine|enjoy|explain|face|faint|falling|farmer|farther|faster|favourite|feeling|feet|fella|fence|fist|fit|flap|flapping|flaring|flexed|flip|floppy|fogging|for|forgotten|forward|fraction|friend|frightened|from|gareth|glove|go|goblet|going|goose|gran|grapevine|grip|gwen|hair|ham|hamstring|hand|happen|happy|hard|hardly|havent|hear|heating|heaving|hed|hedge|higher|hip|history|hold|hole|horizon|horn|huff|hung|i|if|in|it|itd|its|ive|jam|january|jog|joined|jug|jumping|just|keep|ken|knee|knew|know|known|knuckle|lace|lane|lap|last|lasted|lat|lateral|lean|learn|leek|let|lever|lift|lightheaded|lightly|like|live|low|make|manage|market|marking|marvellous|math|maybe|meeting|menu|message|mid|minute|missed|most|mouth|moved|mower|muddle|my|nag|nail|named|narrow|neighbor|nerve|next|nice|nicely|no|not|now|number|oak|of|off|office|on|one|or|other|out|over|owt|paced|paddle|painting|parked|parking|path|pauline|percent|photo|pigeon|pillar|pinching|pink|pinky|plant|plate|pond|porridge|pouring|pressed|pretty|prove|pull|purpose|push|question|rafter|rain|rainbow|raining|rang|rate|recording|regular|robin|rock|roll|rope|runner|russian|sandbag|saving|scap|scratch|second|seeing|selling|send|serious|seven|seventeen|shaft|shallow|shame|she|shirt|short|shoving|shower|side|sip|sit|skiing|skirting|skull|slapping|sleeve|slept|slice|sliding|slip|slow|smart|smile|smiling|snapping|snappy|snug|so|softly|some|somebody|someone|something|spent|spicier|spike|spinning|spoon|springy|squat|squeeze|stacked|stamping|stare|statue|stay|stayed|stitch|strain|stroke|strong|stronger|superman|swan|sway|swaying|syrup|taken|taking|tall|taller|taped|tempo|than|that|the|them|then|there|thereabout|these|this|three|threw|throat|through|tighter|tile|till|time|tingling|tingly|to|toilet|tonight|top|tortoise|touch|touched|tougher|trail|trained|trampoline|try|tss|tuba|tweak|twinge|two|under|unless|up|usual|view|visit|wandering|want|war|warning|washed|way|weighed|when|whenever|where|white|whose|will|windowsill|wing|with|wood|worst|wriggle|yall|yanking|you|young|your|youre|yous|zip|zipping',
        ],
        [
          -0.3,
          '1|10|18|19|2|20|4|6|9|again|an|another|arche|are|arguing|asking|backrest|barking|bath|beam|bear|beat|because|before|bell|belly|belt|bicep|bigger|bin|birthday|bread|breakfast|bride|bring|buck|building|but|cant|cardigan|clever|color|coming|committee|cone|core|council|cramp|crawl|cut|dangling|dare|different|dish|dog|done|drag|dug|each|elevator|em|end|except|felt|filming|find|finish|foot|force|forehead|garage|gone|goodnight|gossip|granddaughter|great|guy|half|harder|hat|hatch|have|he|heard|here|heron|him|hit|hiya|holding|holler|honest|hope|horrible|hotel|hush|instead|is|kept|kicking|kilo|lake|lamp|laugh|learned|lighter|listening|little|lived|loaf|locking|long|looser|lunch|mad|marched|mind|monster|morning|mother|mouse|move|moving|much|mustnt|nan|neednt|nephew|newspaper|ninth|obviously|only|opener|orange|page|parallel|parcel|pass|pat|peach|per|photograph|pinch|planned|planted|please|pogo|pointed|pole|poster|probably|promised|proper|puffing|quite|race|relaxed|rise|rowed|rub|rush|sagging|sale|sausage|saying|see|seventy|sewing|shell|shorten|shot|shout|shrug|silly|skate|sling|slump|snap|sofa|soften|solid|soon|sorry|sort|spicy|spread|still|stone|story|struggle|swap|sweep|take|teaching|themselve|they|theyre|think|those|though|thrust|tied|tight|timing|tipped|toast|total|tram|tray|turning|unclench|upper|village|wearing|wedge|were|won|wring|yank|yellow|youd|youll|yourself|youve',
        ],
        [
          -0.4,
          '13|45|across|add|age|arm|baby|bank|believe|bend|big|bill|bowl|brake|bum|bus|can|carry|catch|chest|chip|clap|clicking|collarbone|complaining|cream|creep|cup|curl|dancer|dead|disc|doctor|doll|drop|dropped|excuse|figure|folding|forget|fourteen|friday|front|gentleman|hang|head|headed|heel|hen|hi|hinge|hiss|humming|jar|kerb|kitchen|late|laughing|leak|lemon|load|look|loose|love|lovely|mate|meet|middle|money|myself|name|nastier|nine|oclock|older|osteoporosis|overhead|paper|park|piece|pretend|prize|rack|raffle|ready|room|round|rug|run|rushing|safety|said|sand|save|scarecrow|shoe|should|shuffle|skim|slant|sleeping|spin|spot|sprint|start|stomach|stood|strap|strip|sure|tap|taught|thatll|theyll|thigh|thread|thursday|tidy|timer|toe|too|track|trouble|us|waiter|washing|wed|welcome|well|whod|wrong|yard',
        ],
        [
          -0.5,
          '30|able|ahead|altogether|am|asleep|backward|beautiful|bounce|butt|button|changing|chicken|choke|clock|close|cold|colour|county|crack|crisp|deal|desk|dip|dizzy|downstair|dumb|everybody|eyebrow|flight|forearm|gently|giddy|glaucoma|grow|hate|haul|heart|height|horse|hug|kneel|landing|leg|length|march|marching|meat|miss|moment|nearly|need|never|old|open|people|pinned|plan|power|remember|rowing|sat|showing|sister|sky|slower|song|stopped|swimmy|swinging|talking|telly|tie|together|told|tummy|water|wet|winter|wobbling',
        ],
        [
          -0.6,
          'banana|bang|bench|box|breath|collar|crank|cranky|egg|far|fight|flare|float|glass|grass|ground|held|imagine|kid|later|left|longer|made|meaner|monday|onto|pace|pair|plenty|poking|pose|reach|record|rep|reverse|rhythm|seated|shoulder|since|sixteen|sleep|soup|stopping|swimming|tell|thousand|tuck|tucked|waist|wheel|which|worse',
        ],
        [
          -0.7,
          'any|anything|bet|blow|burpee|child|clean|complain|counting|didnt|dropping|ever|exhale|facing|hello|jaw|kick|leading|leaning|metre|needle|outside|pay|person|pocket|sixty|smell|split|tail|tent|thirteen|thumb|tightrope|travel|underneath|upright|whatever',
        ],
        [
          -0.8,
          'ankle|armpit|bottle|chin|clear|click|drive|fold|land|lead|looking|pound|pulled|rib|school|shop|walk|wider|wind|window',
        ],
        [-0.9, 'breastbone|check|double|elbow|hes|house|light|neck|palm|punch|shin|slipper|spine|stuck|twist|wide'],
        [-1, 'air|anywhere|either|fast|few|jump|pressure|theyve'],
        [-1.1, 'ear|opposite|quick|thin|tuesday'],
        [-1.2, 'bone|row'],
        [-1.3, 'eighty|puff|thank'],
        [-1.4, 'blood|plank'],
        [-1.5, 'blade'],
        [-1.7, 'wrist'],
      ],
    ],
    [
      'older-adults',
      [
        [2, 'catch|flamingo|lap'],
        [1.9, 'grow|thin'],
        [1.8, 'band|seat'],
        [1.7, 'blood|chair|cushion|leading|marching|shoe|swing|tap'],
        [1.6, 'ankle|apart|clock|harder|inch|kettle|leaning|pressure|today|trip|twist|youd'],
        [
          1.5,
          'against|along|bone|bus|circle|crossed|facing|heal|holding|morning|moving|plenty|rock|seventy|she|stiff|waiting',
        ],
        [
          1.4,
          'clear|cup|eighty|even|few|giddy|march|osteoporosis|our|since|slower|song|standing|steady|talk|theyre|tie|tip|told|walking|wet',
        ],
        [1.3, 'bad|cross|everybody|gossip|mother|new|pick|pulled|raise|rise|rolled|sat|theyve|tin|wobbly'],
        [
          1.2,
          'anyone|ask|biscuit|blue|calf|ease|glass|humming|inside|please|post|pound|sideway|soften|tightrope|very|whenever',
        ],
        [
          1.1,
          'able|broke|cardigan|coat|doctor|folded|folk|gentleman|grandson|hall|kitchen|locking|oh|scoot|slipper|smaller|swinging|tea|theyll|tummy|waiter|yellow',
        ],
        [
          1,
          'bean|bet|bigger|bottle|brave|choke|complain|cramp|earned|edge|fingertip|getting|hair|her|onto|prize|rowing|shop|slowly|slump|stare|sure|tray|wait|wed|yes',
        ],
        [
          0.9,
          'bang|committee|draw|gently|haul|house|join|knock|knocking|lead|locked|near|neighbor|pop|proper|putting|raffle|record|shelf|shout|sitting|swim|thousand|touching|wheel|will',
        ],
        [
          0.8,
          'balance|boat|breather|creep|egg|exit|gap|green|hurry|lady|lamp|lived|none|pain|painted|plonking|poking|shuffle|soup|stood|wobble|working|wrap',
        ],
        [
          0.7,
          'alone|altogether|christma|didnt|drove|excuse|fierce|granddaughter|groin|handbag|happening|hardly|hatch|havent|hedge|horse|knew|nearer|nick|ought|parked|rang|rear|rug|seated|sign|sister|slack|solid|stopped|tiptoe|unless|walked|whod|wind',
        ],
        [
          0.6,
          'anywhere|apiece|aye|backrest|beautiful|boil|care|color|colour|comfy|counter|dangling|dish|drum|extra|fight|gas|glaucoma|helping|hopping|ken|lake|lemon|lifting|loud|marched|moment|normal|oclock|older|opener|paint|parade|pat|pointing|poke|pole|quietly|ride|sausage|saying|shift|string|swimmy|thick|timed|wander|weigh|winter|wring|yard|yourselve',
        ],
        [
          0.5,
          'beside|bowl|bread|breakfast|brian|cheating|complaining|crept|dance|downstair|dropping|engine|flopping|heron|hit|husband|ironing|kerb|mailbox|met|narrow|paddle|parallel|planted|pub|punch|quit|quite|rather|red|regular|settle|sling|snug|squeezing|tank|taught|term|tightness|tougher|trade|trailing|tried|tuba|vicar',
        ],
        [
          0.4,
          '22|asleep|birthday|board|bought|bride|brisk|brushing|bumper|bye|clever|coal|collar|cranky|dare|deck|dollar|dozen|drip|em|eyebrow|fetch|frame|garden|ham|hanger|happy|hello|holler|hose|insurance|jar|kickstand|lighthouse|math|nearest|neednt|oiled|paddling|peeping|pie|pinky|plonk|plop|reversing|saucer|school|shy|smart|smiling|started|swimming|talking|tomatoe|tow|tower|trampoline|tricep|tss|washed|wave|worktop|worth',
        ],
        [
          0.3,
          'bay|bore|brass|butter|canoe|charge|charged|closing|council|deer|dinner|double|farther|firm|flinging|fourteenth|friend|full|furniture|goat|grind|grumbling|hen|honest|jack|kick|kicking|kit|leaflet|lip|loaf|losing|maureen|measuring|money|nail|normally|noticed|odd|opened|paper|parcel|pauline|peach|piano|polite|popping|porridge|pot|promised|pump|ra|robin|rowed|settee|shame|shoelace|shopping|shrugging|skate|soldier|spin|spread|stage|stamping|stork|struggle|taken|tempo|tension|though|tighter|tipping|toilet|town|traffic|truck|tub|wearing|wiggle|work|worry|worst',
        ],
        [
          0.2,
          '30s|3s|4s|accordion|ach|add|am|anything|anyway|arch|arguing|ate|ballet|bank|barking|bath|believe|blow|boss|bringing|broom|buck|checking|chin|clamp|clicking|climbing|cool|cooling|cord|cork|counted|crack|crossing|deal|derek|distance|dizzy|dodgy|doll|doorway|drawbridge|drawing|driving|extension|feather|fewer|flask|flight|folding|form|frightened|funny|gear|goal|grand|great|grumble|hammer|hauling|hear|heard|heat|heaving|honey|horizon|hospital|hush|ignore|jam|kept|kilo|leek|live|loosen|manner|marvellous|measured|medal|mirror|mustnt|newspaper|nurse|och|office|operated|outside|owl|paced|paid|patient|pedal|pencil|picture|pier|ping|pitch|pond|puff|puffy|quicker|radio|rag|rail|rain|recording|relaxed|rice|righto|rounded|rung|scone|selling|sewing|sharing|sheila|shot|sing|sixteen|skiing|slapping|smell|snap|spent|spike|spinning|stance|statue|stomp|street|stroke|sugar|tablet|talked|tenth|trouser|umbrella|uncle|underneath|village|which|whose|wider|wrist|yall',
        ],
        [
          0.1,
          '17|18|19|account|actually|age|allow|april|backward|balancing|bill|bladder|bloke|bobbing|boiler|bowling|breastbone|brought|cable|cake|candle|caretaker|carried|cause|cent|centre|chain|challenge|change|cigarette|circuit|climber|complained|complaint|count|counting|crook|da|daughter|dot|downhill|driver|dry|ear|eating|empty|enough|everyone|everywhere|exam|except|falling|fence|field|fill|fish|fist|fit|fix|follow|forth|fraction|gentle|grab|graham|gran|grapevine|grip|gwen|hat|heart|heavier|height|hey|holiday|homework|huff|hunch|inner|joining|joking|jug|kid|kind|kite|knot|known|learned|left|lightheaded|lightly|longer|lunch|manage|marche|market|may|miss|monday|most|mountain|mower|nag|netball|nicer|nineteen|ninety|opposite|orange|owe|painting|pence|penguin|per|perfectly|photograph|piece|pile|pillar|plant|plate|pocket|posh|pulling|purpose|pushed|pushing|raining|reaching|reading|rent|ringing|rocking|rub|rule|safe|safety|sagging|sandwiche|saving|shave|ship|shirt|shower|shrug|shutting|silly|sixty|skipping|slap|sleep|snapping|snappy|softly|stamp|staying|sticker|stirring|strip|strong|summer|sweep|teaching|thank|thatll|their|threw|throat|throwing|tied|tile|timing|tippy|toast|tongue|tooth|trap|trouble|us|use|van|wanting|warm|weighed|while|whove|woozy|wouldnt|wriggle|young',
        ],
        [
          -0.1,
          '1|15s|2|2019|300|70|80|ab|above|admire|ago|ahead|angle|ankling|answer|arrive|arrow|assistant|august|balcony|bar|bare|barely|bark|barn|basically|bat|beep|beetle|before|being|bicep|biggest|bless|bog|bouncy|brilliant|bring|broken|broomstick|bruise|bucket|build|burn|buy|call|camera|can|cap|card|carol|carrier|caving|ceiling|changing|chap|child|choir|christening|cleaner|closed|cocky|coffee|cooked|country|court|cramping|crew|crowd|crush|cupboard|curled|curling|dark|daylight|decent|depth|dock|doesnt|dragged|draught|dressing|dropped|dug|dumb|eaten|eleven|exact|exercise|exhale|explain|eye|face|fallout|father|february|fed|feed|fifty|film|filming|finally|fixed|flagpole|flared|flatten|floppy|following|force|friday|fridge|frozen|funeral|gary|gate|gaze|gethin|giving|grade|grandfather|grandmother|greedy|grey|grown|gull|gut|gymnast|handed|hang|heater|heating|heaviest|held|hell|here|heroe|high|higher|him|history|hook|hum|idea|incline|iron|january|k|keith|key|knitted|know|l|lasted|laundry|lazy|learn|least|lever|lied|liked|lino|listening|living|loaded|loo|loose|lot|lung|made|main|making|marcus|maybe|mean|meaner|meaty|message|mid|mile|minus|mop|mr|muddle|music|must|myself|nah|named|nan|neat|necklace|negative|nephew|never|next|nice|nose|nowhere|nowt|number|obviously|okay|old|ooh|opinion|pace|packed|page|palm|parking|pasty|path|pen|picked|pinched|pipe|planned|pointed|postie|potato|pram|prawn|properly|puffed|quarter|race|racing|raised|range|reckon|reset|resting|roller|room|root|rotation|ruler|russian|rusty|saddle|sale|sand|sandbag|save|scap|score|scratch|screw|send|sent|serious|session|shade|shaft|shaking|shallow|shin|shine|shoulder|sip|sixth|size|slam|slant|slide|slippy|smoked|sneak|sofa|somebody|something|son|speak|spend|spicy|spoon|squashed|squatted|stand|state|station|stayed|still|stomach|stone|straddle|strict|stroll|stronger|stuff|sum|superman|swan|swig|tabletop|taped|tear|tearing|terrible|text|thigh|thinner|thrust|thumb|tickle|tide|tipped|tire|too|tore|tortoise|touched|trained|trainer|treacle|true|try|tucked|tuesday|turn|twang|tweak|twisting|underwater|vertical|video|visit|war|ward|wardrobe|warning|watched|water|wear|weather|weight|were|where|whole|wild|winning|wire|woke|wont|world|wrapped|yank|year|yep|yous|zipping',
        ],
        [
          -0.2,
          '10|100|16|20|200|2009|3|31|4|5|6|9|90|actual|again|alarm|allowed|almost|anchor|animal|arching|arm|asked|asking|b|baby|bacon|bakery|ball|balloon|basement|be|beach|bell|belong|bend|bendy|big|black|blowing|body|borrowed|both|bottom|bounding|box|breath|buddy|but|by|callum|came|chalk|changed|chase|check|checked|chest|chop|click|climbed|close|coach|coached|collarbone|company|competition|concrete|contact|cost|couch|could|couple|crank|crash|crate|cried|crisp|curl|dad|denise|different|dip|disc|doe|done|downward|drain|duck|dum|each|earring|easter|eight|elastic|email|enjoy|evenly|every|exactly|fan|faster|fat|favourite|feel|fell|felt|fifth|find|finding|finger|fire|flannel|flap|flapping|flaring|flexed|flexor|flick|floor|flour|foam|fogging|football|forgot|forward|freeze|from|front|gareth|giraffe|glove|glued|goblet|good|gorgeous|gram|grandad|grass|gravel|gripping|group|hard|have|he|head|headlight|heave|heel|hero|hike|hm|horn|hugged|hump|hung|hurdle|hurt|im|imagine|internet|invited|itd|jean|joined|joke|june|just|keen|kneecap|lat|later|lateral|laugh|law|lay|learnt|leg|lid|life|limbo|look|looked|loop|lovely|mad|magazine|marathon|matter|meat|meet|missed|monster|moved|much|mud|mum|muscle|nailed|niece|ninth|nipping|nippy|nod|notch|note|numb|oak|once|only|otherwise|overhead|pal|pant|passenger|patience|photo|picking|pint|plank|plastic|plus|pogo|point|ponytail|position|pounding|pouring|prayer|press|pressing|print|priya|promise|prove|puddle|put|question|rafter|railway|rainbow|rained|ready|really|repeat|return|reverse|right|romanian|roof|rose|round|rubber|rucksack|runner|rush|rushing|sack|said|sandra|sandwich|saturday|scar|scarf|science|scrape|seal|season|see|seen|seventeen|shove|shoving|signed|six|skim|skirting|skull|sleeping|sleeve|slightly|smile|snatching|sneaking|sniff|some|soon|space|spaniel|spice|springy|squatting|stab|stair|stealing|sticking|store|story|strength|stretched|strolling|stuck|student|sulk|swaying|swear|sweet|syrup|take|taller|tell|telling|telly|ten|terminal|test|testing|thereabout|theyd|thicker|think|thinking|thread|ticket|tighten|till|timer|tingling|tingly|toddler|toe|tomorrow|top|torch|touch|tough|toward|trail|training|travel|trying|turning|twelve|twinge|two|unlocked|upper|v|version|view|walk|wall|wandering|washing|we|weak|wedge|weekend|welcome|well|werent|whichever|whisker|whiteboard|whoever|width|wife|windscreen|wiper|within|wool|word|worse|yanking|ye|yesterday|yet|youve',
        ],
        [
          -0.3,
          '*|12|15|26|2s|30|45|a|about|advert|aim|all|alright|alway|and|anti|anybody|are|argument|as|at|awake|away|back|badge|bargain|bathroom|beam|been|behind|bike|bound|bow|bowing|brace|breathe|breathing|brush|buckle|building|bump|buttock|cat|cave|chatting|chuck|clenching|clip|coin|collapse|come|comfortable|coming|completely|core|cousin|crab|cracking|crane|crease|crutch|cutting|daft|dangle|direction|do|doddle|doing|dont|down|droop|dump|early|elevator|farmer|feeling|feet|finished|first|fishing|five|flare|flex|flutter|foot|footprint|for|four|fun|garage|gather|get|glute|go|goe|going|gonna|goose|grape|gravity|guy|had|half|halve|hand|happen|help|hes|hi|hip|hiss|hiya|hold|honestly|horrid|hour|hovering|how|hugging|hurting|i|if|in|instead|inward|is|it|its|ive|jacket|jammed|jaw|jerking|jogging|jumping|keep|keeping|kinder|kissing|knee|last|lean|let|library|lift|light|lighter|like|loft|long|looking|lorry|lost|lower|lowering|machine|make|match|me|meter|minute|mouth|mug|my|name|nastier|nasty|need|needle|no|noise|nor|not|now|of|off|often|on|one|op|or|other|out|oven|over|pair|pan|park|pass|pause|pay|pendulum|people|physio|pinch|pinned|plan|play|pool|postman|power|pressed|probably|puffing|pull|pulse|push|quick|quieter|reason|remember|roll|rounding|row|same|scale|screen|second|sell|set|seven|shake|share|shed|shell|shorten|should|sick|side|sit|sky|slip|slow|snatch|snooker|snow|so|soft|sole|sorry|spring|squad|squeeze|stay|step|stepping|sticky|stitch|stop|stopping|straighten|strap|sunday|swapping|switch|t|tendon|that|the|them|then|there|they|this|three|through|time|to|total|touche|turned|twice|under|up|upstair|using|waistband|want|wasnt|way|wednesday|wee|week|when|wherever|whip|win|with|without|won|wonder|would|you|youngest|your|youre|yourself|zip',
        ],
        [
          -0.4,
          '11|8|another|arche|arent|bag|beat|because|bed|begin|below|better|between|bicycle|bouncing|carrying|charity|cheat|clam|clap|clinic|closer|cone|control|copy|corridor|cow|creeping|crunch|cut|did|dog|drift|either|else|everything|far|finish|flat|forearm|forty|fresh|girl|god|goodnight|got|gown|grumpy|has|hill|hitching|horrible|joint|jumper|knuckle|lane|laughing|leaving|legged|lifted|list|lunge|meant|metre|mind|more|mostly|mouse|movement|nearly|nip|nothing|notice|open|pad|plain|plaster|pose|quid|relax|rest|run|seam|sh|shoot|shouldnt|skin|smug|socket|someone|speed|sprint|squashing|starting|static|straight|suitcase|surgery|sway|swell|teacher|than|thing|thirty|thought|thursday|tick|tidy|tingle|train|was|went|whistle|who|write|youll',
        ],
        [
          -0.5,
          '14|60|already|bird|bit|block|bounce|burpee|butt|chasing|chat|class|clench|climb|cold|corner|day|deeper|door|dragging|drive|dull|eat|ever|faint|fifteen|figure|flip|float|forget|gave|gone|ground|gym|hed|hollow|hover|ill|into|isnt|itself|lace|ladder|land|leave|less|letter|level|ligament|limping|listen|load|love|mine|mini|moaning|moira|nobody|oil|past|pelvis|phone|pin|prop|radiator|ramp|read|shape|single|sock|sooner|sphinx|spot|star|stool|stretch|support|teeth|these|tree|tug|upside|used|wake|watch|white|wing|written|yeah',
        ],
        [
          -0.6,
          '7|achilles|after|air|any|belly|bin|boot|boring|called|couldnt|drag|drill|drop|eighteen|flop|hate|hinge|jog|jump|lad|line|lose|low|man|melt|neighbour|operation|pelvic|percent|quiet|rhythm|sag|saw|say|sheet|short|slope|square|squash|stick|third|tilt|tired|trust|twenty|until|upright|whatever|wipe|worked|wrote',
        ],
        [
          -0.7,
          'backside|banana|book|bored|centimetre|desk|dive|fast|free|hammock|handle|however|id|many|moan|month|opening|order|peel|pretty|rack|ran|shouting|sound|tailbone|tent|tight|tuck|wedding|woman|wrong',
        ],
        [
          -0.8,
          'belt|bench|bending|bent|best|car|found|fourteen|fourth|further|give|halfway|hanging|heavy|itll|kneel|quad|road|rope|running|sharp|sink|skip|small|somewhere|spine|track',
        ],
        [-0.9, 'armpit|cheek|fall|forehead|hundred|ice|kneeling|own|ring|split|stride|table'],
        [-1, 'ache|bug|deep|drink|hamstring|hop|hug|pillow|stacked|tail|throw|tiny|why'],
        [-1.1, 'hot|smooth|tonight'],
        [-1.2, 'bridge|night'],
        [-1.3, 'dead|evening|squat|start'],
        [-1.4, 'bum|degree'],
        [-1.5, 'lying'],
        [-1.6, 'lie'],
        [-2.2, 'mat'],
      ],
    ],
  ]
