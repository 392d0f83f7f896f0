/**
 * What words and pairs of words add to the log of the odds of each position and movement. Fitted by
 * tests/fit/fit-shapes.ts, not by hand.
 */
import type { Shape } from '../../hear-shape.ts'

export const SHAPE_WEIGHTS: readonly (readonly [
  shape: Shape,
  bias: number,
  weights: readonly (readonly [number, string])[],
])[] = [
  [
    'all-fours',
    -0.6,
    [
      [1, 'knee under'],
      [0.8, 'hand under'],
      [0.7, 'belly'],
      [0.6, 'slide|under shoulder|wrist'],
      [0.5, 'glass|look|opposite|reach|round up|the shoulder|under hip'],
      [0.4, 'and knee|between|between the|float|floor away|hand and|hip stay|left|no more|under|you reach'],
      [
        0.3,
        'a touch|away and|baby|blade|breathe into|breathe out|cat|come out|dog|finger|fist|get down|go on|grass|head|head come|higher than|look at|no higher|out there|over the|push the|shoulder blade|tailbone|than your|the grass|the leg|toe tucked|your right|your wrist',
      ],
      [
        0.2,
        'a dog|a full|ahead|an inch|and look|and round|and the|as high|balance|been|belly drop|chest forward|coffee|crisp|cup|cup of|dont kick|dont want|float your|for three|high as|higher|hip level|i dont|imagine a|inch|is a|its that|leg goe|level|like there|more|near|near the|one leg|palm up|reach the|right|right arm|shoulder and|sitting|small step|spine|spread|straight back|the hand|the opposite|there for|there is|three second|thumb|tucked|underneath you|up over|walk|walk your|want|wrist are|you put|your belly|your finger|your left|your low',
      ],
      [
        0.1,
        'and it|as far|either|four|hand in|opposite arm|other hand|reach your|slide it|stay up|thumb to|up high|whatever',
      ],
      [
        -0.1,
        'a bit|across|all the|at your|back down|band|bell|big toe|blow out|bottom|breath|chair|close|coming|count|dont let|down and|face|facing|feet flat|first|from your|front of|half|hang|heel and|if it|if youre|if youve|it in|its a|keep your|leg long|let it|like youre|out in|pocket|press|ring|seat|squeeze your|that|the chair|the other|the seat|the whole|then|thigh|think|toe|turn|up|up and|way down|way up|weight|when|youll|your arm|your ear|your elbow|your leg',
      ],
      [
        -0.2,
        'air|ankle|at|away from|bar|blow|by|by your|chest|do|dont hold|elbow under|flat|foot|get|heel|in front|it up|keep breathing|knee bent|knee up|lean|leave|lift|light|line|on the|onto your|other|other foot|outside|over|pointing|pull|quick|side|sit|so|somebody|swap|take|the back|the front|the top|the way|them|they|this|to get|together|two|where|whole|with your|your chest|your feet|your heel|your rib',
      ],
      [
        -0.3,
        'and|bend|both|breathing|chin|down|ear|eye|going|hand on|hold|if|in|keep|leg|let|long|lower|of the|off|one|out|over your|roll|shin|stand|stop|straight|tall|to your|top|with|your toe',
      ],
      [-0.4, 'about|elbow|front|in the|its|not|rib|squeeze|the|till|way|your'],
      [-0.5, 'back'],
      [-0.6, 'youre'],
      [-0.7, 'feet'],
    ],
  ],
  [
    'balance',
    -0.3,
    [
      [0.7, 'big toe|thumb'],
      [0.6, 'right|the chair|the other|the ring|the step'],
      [
        0.5,
        'and keep|and lower|arm straight|heel and|like a|lower|one|one hand|sideway|slow it|the big|the outside|the side|thumb out|toe|up on|you reach',
      ],
      [
        0.4,
        'both hand|feet back|fingertip|foot off|gate|hand on|hanging|heel back|keep hold|knee soft|knee straight|on it|on them|out of|out to|outside|rail|rock|roll out|rushing|the rail|till the|together|too|weight on|whole|whole foot|wobble|your second|your thumb',
      ],
      [
        0.3,
        'a chicken|along the|and bring|and stand|and turn|as high|back down|back one|ball|between the|bring|bring the|but|change|cheating|chest down|cramp|doing|dont tip|down between|even|feet hip|fine|fingertip on|follow|foot|foot on|for three|forward till|gently|glass|goe|got you|grab|ground|halfway|hand in|high as|higher than|hip level|hip width|hold of|imagine a|in on|it fall|it get|it in|it on|its the|just off|knee come|leave it|leg|leg goe|look|loop|near|off your|one long|opposite arm|other foot|out a|outside leg|plank|reach the|right leg|ring|ring a|ring to|rise|sagging|side|side on|so its|something that|squeeze the|stand|standing|straight back|swap|the bottom|the foot|the standing|the top|three|three second|tip|tip your|touch|up onto|wobbling|you get|your ankle|your wrist|youre all',
      ],
      [
        0.2,
        'a baby|a foot|a spot|a string|a wee|above your|and its|and one|and pull|and sit|ankle|are creeping|at something|baby|back till|ball of|behind you|beside your|bicep|bite|bottom|bottom foot|but not|caving|centimetre|chair|chair back|chicken|click|dead still|do it|doesnt|dont kick|dont lock|down into|down like|down with|drift|drift out|feet under|float|fold in|foot down|foot up|for this|forward|forward and|from it|get a|goe back|grow|hair|hear your|heel|height and|hip height|hip that|if you|if youre|imagine|in youre|into it|inward|isnt moving|its just|join|just a|kick|lean away|level|lift one|little toe|longer|marcus|mean|meet|my|near hand|next|next door|ninety degree|nobody|of it|off the|on each|on to|one leg|one up|onto|or a|other|other leg|out onto|out there|outside of|paint|pick a|properly|pulling|pulling the|push through|rest|right down|right up|rolling out|second toe|seen|shoe|slowly|soft|somebody got|something|spot|stand tall|stand up|standing knee|stop and|straight up|strap|tap the|than up|than your|that cheating|that fine|that isnt|that knee|that should|that your|the backside|the ground|the hair|the heel|the pad|them in|them up|through that|till youre|tired|to hip|to touch|top of|touching|trouble|tummy|turn round|turn your|underneath you|up behind|wee bit|weight over|when the|whole of|whole time|with both|wrap|wrist or|you by|you think|youll|your big',
      ],
      [
        0.1,
        'a knee|a tent|achilles|and all|and back|and dont|and float|any|as a|as wide|back in|belt height|bring your|bucket|bum down|cave|dont shove|finger on|first|foot just|have to|hurry|in one|it a|it cave|it for|it till|long line|look like|lower it|nip|now|on that|out behind|pause|pick|puff out|ring in|second|set it|shove off|slow down|spot on|stand on|stand right|straighten it|swing the|tall on|tent|that foot|the little|the toe|then lower|there for|till there|wide as|you wobble|your little|your shoe|yourself up',
      ],
      [
        -0.1,
        'a straight|across the|an|and that|at all|away and|back flat|back leg|be|bell|big breath|blow out|bone|both feet|bump|by your|chest height|circle|come off|crease|crease of|deep in|dont reach|door|feet stacked|floor away|foot out|forearm|forehead|front knee|full|go as|gone|half of|hand behind|hip back|hip till|hold your|i can|if they|in toward|inside of|it come|it is|it out|its a|jog|knee to|leg and|leg long|length|lie|long breath|not a|not in|not the|off one|out as|part|pop|press it|pull your|push your|quiet|rounding|same|short|shoulder down|slow breath|snap the|so the|spine|stay down|take a|tell me|the bar|the belly|the breath|the door|the neck|the wrist|till your|to be|toward your|train track|turned out|under hip|under your|up tall|up with|waist|wait|walk your|weight in|while|wrist straight|you could|your elbow|your head|your pocket|your rib|youre not',
      ],
      [
        -0.2,
        'against|and come|and if|and lean|and not|and slow|and youre|apart|arch|arm by|as far|as your|at a|at you|back into|back off|back to|back up|bar|before you|bend the|bending|big step|breastbone|breathe into|can hear|can keep|ceiling|chin|come down|coming|coming up|could|crank|curl|dont hold|dont swing|dum|each one|easy|elbow under|every|far as|feet a|flop|for the|forward over|from your|get your|glued|grass|grumbling|half|handle|hard|hip up|holding|holding it|home|if the|if youve|in and|inch off|instead|into your|it home|it should|knee dont|knee down|knee out|knock|land|lead|leaning back|leave the|let the|lift your|look down|looking|mind your|neck|not your|off it|one on|open the|or|other knee|out through|pace|palm|past|pick it|pillow|press down|pretend there|proud|pull the|rhythm|rib down|rope|round|send|shin|shoulder blade|slip|so|sort|sort of|speed|squeeze|stay on|step back|step one|straight down|tailbone|take|tell|the air|the bell|the ceiling|the far|the grass|the hip|the joint|the left|the lift|the thigh|the way|them|them down|then push|they|this|this time|through|till its|to get|to the|to your|toe out|toe pointing|toward you|train|turned|up there|up toward|upright|want the|when|when youre|with|with it|working|you come|you feel|you know|you like|you put|you should|you stand|your back|your breastbone|your breath|your chest|your leg|your neck|your nose|your shoulder|your tailbone|youve',
      ],
      [
        -0.3,
        'above the|across|air|are|arm|back heel|back knee|before|behind the|bent|between|between your|blade|blow|can|chest up|come back|deep|dont look|down|down at|each hand|elbow|exhale|far|feel|foot in|four|front|go|grip|hang|head|in front|inside|keep your|knee|knee bent|lean back|leave|light|nice|not|on a|out|over|pointing|quick|rib|sigh|sip|sit up|straight|that back|that how|the arm|the band|the front|the seat|the second|the shoulder|then the|there|through your|to|toward the|travel|tuck|tucked|turn out|two|under the|up in|up to|want|way|when you|with your|you lift|your ear|your knee|your thigh',
      ],
      [
        -0.4,
        'a time|again|as if|away|back|band|bend|come|ear|feet flat|foot back|from|heel down|in your|into|into the|keep the|know|mat|more|nose|of you|pretend|step|the elbow|the knee|the mat|theyre|thigh|toward|track|under|your hand',
      ],
      [-0.5, 'about|chest|heavy|hold it|long|out in|pull|seat|sit|walk|your arm'],
      [-0.6, 'flat'],
      [-0.7, 'over your|shoulder'],
      [-0.8, 'breath'],
    ],
  ],
  [
    'ballistic',
    -1,
    [
      [0.7, 'bell'],
      [0.6, 'one hand'],
      [0.5, 'hike|let it|loose'],
      [
        0.4,
        'and let|as it|between|forward and|front of|hike it|it drop|it float|it get|outside leg|stand tall|the hip|the leg',
      ],
      [
        0.3,
        'and back|arm are|around|between the|breath out|dont kick|drop|fast|float|fold|handle|hip and|into a|it land|it up|kick|nobody|of you|out at|outside|park|snap|so it|stop|swing the|tall on|think|you and',
      ],
      [
        0.2,
        'a fist|and look|are rope|arm locked|ask|back at|back like|before you|between your|breath in|chest height|diving|dog|dont fold|elbow stay|empty|end up|every rep|fence|grip|heart|help|hinge|hit|however|im|inside|it back|it leave|it smaller|it with|kiss|land|make it|most|move|near|near hand|next|next to|overhead|pull it|rep|rest|rope|same way|set it|shirt|side on|slide back|smaller|so you|socket|standing|stay glued|swing|that how|that it|the arm|the handle|the outside|then drive|they dont|throw|to it|to one|turned|wait|you get|you like|you stop|your forearm|your shirt|zip',
      ],
      [
        0.1,
        'big|bring the|finish|grow|keep|leave|leave the|locked|loop|nip|straight down|the bell|the chin|wrist straight',
      ],
      [
        -0.1,
        'a|a bit|again|all the|and the|are|as|at|away from|back of|back to|bend|bent|blow|both|breathe in|breathing|bum|by|by your|can|chair|come up|count|door|elbow|facing|far|feet flat|first|flat|going|got|half|hang|have|hip width|i|in|into the|keep breathing|keep the|level|line|mat|no|nose|not|only|open|out on|over|over the|over your|push the|put|reach|ring|roll|round|seat|sit|straight|than|the bottom|the chair|the mat|the side|this|thumb|to the|together|turn|under your|want to|way|way down|way up|width|with|youll|your bum|your elbow|your head|your heel|your knee|yourself|youve',
      ],
      [
        -0.2,
        'and|at your|band|bar|belly|bit|blade|bottom|breathe|breathe out|coming|dont let|each|feel it|from|head|hold it|it|lean|long|lower|neck|off the|on|on the|one foot|palm|press|right|shoulder|shoulder blade|slow|take|the back|the other|the way|them|there|thigh|to|tuck|until|your shoulder',
      ],
      [-0.3, 'as you|away|back|come|feel|floor|heel|hold|off|other|out|push|step|the floor|toe|under|want|you'],
      [-0.4, 'dont|go|knee|up|your'],
      [-0.5, 'down'],
      [-0.6, 'the'],
    ],
  ],
  [
    'carry',
    -0.6,
    [
      [0.8, 'walk'],
      [0.4, 'bell|put|quick step|small|step|tall|walk tall'],
      [
        0.3,
        'and back|dont lean|each hand|fire|fire door|grip|in one|it up|know|mind|one hand|pick|put them|quick|small quick|the bell|the fire|them down|up in|walk back|walk to|your leg',
      ],
      [
        0.2,
        'a suitcase|as if|bang|book|dont hold|door|door and|dumb|dumb bell|each|from it|if there|in each|lean away|mind your|off your|one in|other side|pick it|pretend|short|small step|suitcase|up with|watch',
      ],
      [
        0.1,
        'and dont|away from|bell in|crown|crown of|full|head up|keep breathing|like the|little breath|the weight|with a|you dont|your side',
      ],
      [
        -0.1,
        'a bit|again|all|an|and let|ankle|are|at the|back of|back to|belly|bent|bit|blade|blow|both|bottom|breathe out|bring|bum|can|ceiling|chair|chin|come up|do|end|feel it|first|flat|front of|goe|hand on|high|if it|if the|if you|in front|into the|is|it in|it out|keep your|let your|lift|line|long|lower|mat|me|middle|neck|nose|of the|of you|off|off the|on your|one foot|only|or|other|out as|out on|over the|over your|palm|press|push the|reach|ring|roll|second|shin|shoulder blade|slide|soft|start|still|stop|the bottom|the ceiling|the front|the hip|the mat|the middle|the other|the shoulder|the top|the wall|the way|three|through the|thumb|till|time|to your|together|top|under the|under your|way|whole|width|with the|wrist|your arm|your back|your bum|your chest|your ear|your elbow|your heel|your hip|your rib|your shoulder|youve',
      ],
      [
        -0.2,
        'a|about|and|as you|back|chest|come|dont|down|elbow|feel|forward|go|height|i|in|in the|into|its|let|on the|over|pull|push|rib|should|shoulder|sit|stay|straight|that|the back|then|through|to|up|up to|your feet',
      ],
      [-0.3, 'at|feet|foot|for|front|heel|if|it|just|knee|no|of|on|the|under|your'],
      [-0.4, 'hip|not|you'],
      [-0.5, 'out'],
    ],
  ],
  [
    'curl-up',
    -0.7,
    [
      [0.7, 'behind your|chin|hand behind|shoulder up'],
      [0.6, 'elbow wide|peel'],
      [0.5, 'behind|other leg|peel your'],
      [0.4, 'are|arm by|blade|by your|curl|head|leg long|low|low back|on your|shoulder blade|wide|your ear|your head'],
      [
        0.3,
        'air|armpit|as low|chin not|clear|ear|every|finger and|flapping|glued|hand are|hold your|know|low as|neck|not your|only|puff|the shoulder|you can|you know|your back|your belly|your neck',
      ],
      [
        0.2,
        'a banana|a foot|a pillow|and itll|and not|and shoulder|and the|arche|back down|back into|back stay|banana|belly|bend your|change|float|float the|head and|heel off|in your|it start|itll|its your|jammed|knee over|knee up|leg out|leg up|mean|need|nice and|not jammed|only as|or it|pedal|puff out|roll back|send|send the|shoulder and|sip|sip the|stay glued|that how|that knee|that turn|the air|the low|there to',
      ],
      [0.1, 'up off|your armpit|your low'],
      [
        -0.1,
        'a bit|a little|all|all the|ankle|as it|as you|at your|back to|band|bar|before|before you|bell|between your|blow|breathe in|chair|come|come down|dont let|door|down and|end|facing|feel|from|from the|hold it|home|if|if it|in front|it|it up|its|keep breathing|keep the|lean back|like|like a|now|of the|of you|on|on a|one foot|opposite|out in|out of|outside|over your|ring|round|same|seat|so|than|the back|the chair|the middle|the top|the whole|there|till|tip|too|under|up|wall|way|weight|with the|your bum|your feet|your heel|your toe',
      ],
      [
        -0.2,
        'and|and let|as|away|back|back of|behind you|between|bit|both|breathing|bum|drop|far|first|forward|front of|go|hand|hand on|hang|heel|height|high|hip|in the|lean|let it|let the|let your|level|lift|like youre|line|middle|no|nose|not a|on the|onto|palm|past|push|put|second|shin|slow|soft|squeeze|stand|step|take|tall|thigh|through|through the|thumb|to your|toe|walk|want|when|whole|with your|wrist|youre|youve',
      ],
      [-0.3, 'a|big|breathe|dont|down|foot|front|get|out|out as|sit|up to|you|your'],
      [-0.4, 'feet|in|let|of|straight|the|to|to the|with'],
      [-0.5, 'one'],
    ],
  ],
  [
    'deep-hip',
    -0.8,
    [
      [0.7, 'heavy|the back'],
      [0.6, 'your heel'],
      [0.5, 'back leg|forehead|into|side to|to side'],
      [0.4, 'fold|forward and|hug|knee at|low|slide the|than the|the hip|toe turned|turned|turned out'],
      [
        0.3,
        'and walk|at all|big|big toe|breath out|deep|down into|front foot|gently|hand out|heel and|into your|it in|knee apart|knee down|low as|more|on your|rock|shin|sink|sit back|some|sort|sort of|spread|spread out|stretch|tailbone|the front|the hand|them in|walk|walk your|wide',
      ],
      [
        0.2,
        'a towel|and just|apart|arm out|asking|back on|block|book|bum back|can go|chest tall|come out|down as|for the|get heavy|go heavy|has|in my|into the|knee dont|left|leg away|lie on|melt|on that|out in|out through|phone|prize|pull them|put a|shuffle|slide|slowly|step one|step up|the bus|the kneecap|the left|the weight|there no|through your|till there|towel under|under it|waiting|went|you feel|you like|you went|your mouth',
      ],
      [
        0.1,
        'above the|and come|away and|back knee|back till|dont twist|easy|give|instead|just a|just above|kneecap|length|not on|or your|past the|right down|slide it|tail under|than you|that hip|the low|the wrist|till its|twist|up through|where its',
      ],
      [
        -0.1,
        'again|all the|and the|are|as you|at|band|bar|before|before you|behind you|bent|bit|blade|blow|breathe in|breathe out|by your|ceiling|chin|come down|do|dont let|down|down and|elbow|end|feet flat|finger|first|from|from the|half|have|height|hip width|if|if it|if your|it down|it up|keep your|leave|let it|let them|level|like|line|lower|make|middle|of you|on the|open|other foot|outside|over|over your|palm|pull|push|quick|reach|round|same|seat|second|see|shoulder blade|small|still|that|the bottom|the ceiling|the chair|the leg|the middle|the seat|the wall|the whole|three|thumb|tip|to|to get|toward|toward your|until|want|way down|way up|when|width|with the|your arm|your ear|your elbow|your leg|your shoulder|yourself',
      ],
      [
        -0.2,
        'a|an|ankle|arch|arch your|arm|as|at the|at your|away|behind|bell|bend|both|coming|ear|ease|far|get|goe|going|got|hand|hang|high|i|in|in and|in your|it out|its|keep|keep the|leg|like a|like youre|long|look|no|of|of it|one|over the|ring|should|soft|start|the|the floor|the other|the shoulder|the side|the way|there a|thigh|time|turn|two|under|under the|under your|wall|want to|whole|with your|you|youll|your|your bum|your feet|your hip|your toe|youre',
      ],
      [
        -0.3,
        'and|bottom|by|dont|flat|floor|is|lean|lift|of the|off|off the|other|out as|press|shoulder|so|stand|stop|straight|then|to the|way',
      ],
      [-0.4, 'feet|slow'],
      [-0.5, 'it|up|with'],
    ],
  ],
  [
    'deep-knee',
    -0.9,
    [
      [0.5, 'heavy|the back|your heel'],
      [0.4, 'forehead|heel|knee apart|low as|only as|sit|toe turned|together|turned|turned out'],
      [
        0.3,
        'and walk|apart|back of|big toe|grab|hand out|have to|heel and|in front|into your|it go|one hand|out in|sit back|slowly|sort|sort of|to touch|touch|walk your|wide',
      ],
      [
        0.2,
        'and tuck|ankle|anything|arm out|back on|behind you|breathe into|can go|cheat|cheat it|cheek|chest up|close to|come off|down as|down into|foot out|for the|gently|go and|go heavy|have|hip forward|in my|instead|it catch|it should|lie|lie on|long breath|my|pad|proud|put a|squeeze the|the bus|the nose|the wall|to cheat|touching|tree|turn round|under it|up the|waiting|walk|wander|yank it|you and|you can',
      ],
      [
        0.1,
        'and stand|and stay|arch|as low|breath out|bum back|bus|catch|close|dont arch|dont yank|kneecap|like you|little wider|other foot|push your|shift|should be|sore|stay there|than the|the ankle|the chest|wall|wider than|yank|you are|your ankle|your thigh',
      ],
      [
        -0.1,
        'a bit|again|all|an|and|and the|are|arm|as|at the|before|bell|bent|blade|blow|breathe in|by your|ceiling|chin|come down|coming|do|drop|each|elbow|end|eye|feel|feet flat|first|goe|going|hang|head|height|high|hip width|if the|in your|it down|it in|it out|it up|keep breathing|keep your|level|like youre|line|little|look|make|middle|not a|of|of you|one|one foot|onto|out on|outside|over your|palm|quick|reach|right|ring|same|second|see|shoulder blade|start|still|the bottom|the ceiling|the chair|the leg|the mat|the middle|the shoulder|the top|the way|there a|three|thumb|tip|two|under the|under your|until|up to|way down|weight|when|where|whole|width|with the|wrist|you|your arm|your ear|your elbow|your head|your shoulder',
      ],
      [
        -0.2,
        'at|away|back|bend|between|bit|both|bottom|breathe out|breathing|bring|by|ear|far|feel it|feet|floor|foot|forward|from|hand|hip|i|if|if you|in|is|it|lift|like|lower|off|over|over the|roll|seat|side|slide|so|stop|tall|the|the floor|the other|till|time|to the|top|toward|under|want|way|with your|your feet|your toe',
      ],
      [-0.3, 'a|dont|down|flat|get|just|keep|lean|no|not|on the|out as|press|pull|slow|soft|step|straight|then|with'],
      [-0.4, 'its|of the|that|up|youre'],
      [-0.5, 'leg|shoulder'],
    ],
  ],
  [
    'forearm-supported',
    -0.6,
    [
      [1.4, 'elbow under'],
      [0.8, 'under your'],
      [0.7, 'lift|line'],
      [0.6, 'elbow|under'],
      [0.5, 'floor away|lift your|your shoulder'],
      [0.4, 'elbow toward|forearm|stacked|to heel|waist'],
      [
        0.3,
        'away behind|dont sink|drag|feet stacked|forearm down|head to|higher than|hip forward|keep breathing|knee down|pull your|roll|sag|the shoulder|toward your|underneath|your elbow|your waist',
      ],
      [
        0.2,
        'a hammock|and do|and have|breathing|come down|do it|dont roll|ear to|elbow down|everything|face the|feet back|hammock|higher|hip and|hip till|if its|its your|just in|leg long|lift up|low back|make|one long|push the|sink|sink into|squeeze your|straight line|tent|under the|up off|your right|your side|youre one',
      ],
      [
        0.1,
        'and lift|and make|and out|away with|bum down|if that|little breath|long line|make one|no sagging|onto|roll forward|sagging|sagging in|that shoulder|your low|youre a',
      ],
      [
        -0.1,
        'a little|again|all the|and the|arm|at the|back to|band|bar|before you|bell|between|between your|blade|blow|bring|by|chair|chest|chin|come up|coming|each|end|far|flat|foot|for the|goe|half|heavy|in|it down|leave|leg|let it|let them|like|lower|not|of|of it|of your|one hand|out of|out on|outside|over your|past|put|reach|ring|same|seat|second|shin|shoulder blade|slide|step|stop|take|the arm|the back|the chair|the heel|the knee|the leg|the top|the whole|they|three|through the|till|tip|to|to the|turn|way|way down|way up|weight|where|whole|wide|width|your chest',
      ],
      [
        -0.2,
        'a bit|an|and|and let|at|be|before|big|bit|both|feet flat|finger|for|get|height|in the|it out|its|just|let|like a|off|on it|on the|only|out as|over|press|quick|rib|round|should|sit|slow|soft|stand|stay|tall|the front|the way|thigh|to your|two|up to|walk|when|your back|your head|your heel|your knee',
      ],
      [-0.3, 'about|as you|bend|breathe out|dont|hand|knee|on|then|you'],
      [-0.4, 'a|back|go|the|wrist|your'],
      [-0.5, 'it|up'],
      [-0.6, 'as|out'],
    ],
  ],
  [
    'half-kneeling',
    -1,
    [
      [0.7, 'tuck'],
      [0.5, 'arch|front of|sore|tail|tuck your'],
      [0.4, 'arch your|back knee|foot out|tail under|that back|your tail'],
      [0.3, 'back hip|dont arch|foot forward|kneecap|of that|on a|shift|squeeze the|the front|tuck the|under it'],
      [
        0.2,
        'a stretch|back leg|both side|breath out|drift|drift forward|it till|knee down|left|mat|one knee|other foot|out in|pad|put a|stretch|the kneecap|the left|towel|under and|up the|what',
      ],
      [
        0.1,
        'cheat|cheat it|cheek|chest up|close to|come off|down on|hip|it let|it should|lean in|let go|long breath|low back|only as|should be|till it|to cheat',
      ],
      [
        -0.1,
        'a|again|all|an|and let|ankle|at the|at your|away from|back of|before|belly|bend|bent|blow|bottom|breathe|breathe out|bring|bum|by|by your|ceiling|chin|coming|drop|ear|end|eye|far|first|for|goe|going|heavy|height|high|hip width|i|if it|if you|in|it down|it out|keep|keep your|leg|let it|let the|let your|level|like a|like youre|line|long|look|lower|middle|neck|of you|off the|one|out as|out on|over the|over your|palm|press|push the|quick|roll|seat|second|side|slow|stand|start|still|tall|than|the ceiling|the mat|the middle|the shoulder|the way|there|there a|this|three|thumb|time|to the|together|toward|turn|two|under your|up to|walk|when|whole|width|with the|with your|wrist|your|your arm|your bum|your ear|your feet|your heel|your toe|youve',
      ],
      [
        -0.2,
        'arm|away|behind you|big|dont|dont let|down|each|elbow|feel|flat|floor|from|if|in the|just|lift|no|off|out|pull|push|rib|ring|round|sit|so|stay|the floor|the knee|the other|them|then|to your|way|with|your hip|your shoulder',
      ],
      [-0.3, 'as|at|behind|feet|hand|its|let|not|on the|on your|over|straight|to|toe|up'],
      [-0.4, 'and|heel|like|shoulder|youre'],
      [-0.5, 'the|you'],
    ],
  ],
  [
    'hands-supported',
    -0.4,
    [
      [1.2, 'wrist'],
      [0.9, 'the ring'],
      [0.7, 'hand in|ring'],
      [0.6, 'fist|hand under|strap|your wrist'],
      [0.5, 'and back|arm straight|dont let|drift|feet back|hip height|in slow|look|ring at|sag|the wrist|your hand'],
      [
        0.4,
        'arm locked|at hip|balance|between|bring the|chest to|forward a|glass|go on|into your|it get|keep the|kneel|knuckle|off the|press|quiet|slow|tea|thumb out|turn the|your thigh|your thumb',
      ],
      [
        0.3,
        'a dog|a fist|a ring|a towel|all|and lift|are|bend the|between the|bring them|bum|chest down|come back|come in|cranky|creeping|crush|dizzy|dog|drift out|drifting|facing the|fingertip|fist off|floor|for two|forearm|go up|going down|going up|grass|in front|in going|jump|just above|lock|locked|pedal|pocket|ring in|side of|stop there|tailbone|the grass|the strap|thumb|tight|till the|to hip|toe tucked|too|too far|towel|tucked|turn out|under your|up and|when your|wrist are|you should|your bum|your butt|your feet|your fist',
      ],
      [
        0.2,
        'a hand|a time|a tray|a wee|ahead of|air|all the|an inch|and turn|are creeping|are drifting|as the|at a|barking|beside|big step|bite|blow|blow out|butt|care|clock|deeper|dont bend|dont clench|down between|down till|either|elbow are|elbow back|empty|feet wide|flat back|for a|forward and|four|go down|gone too|grip|grip the|hand down|hip up|hit|i want|in each|in through|into a|it on|keep them|knee not|knee under|level|like there|little sip|lower back|march|mirror|moving|no deeper|of you|on top|one straight|or you|other one|out a|out sideway|pinned|plank|press through|pushing|quiet feet|quit|ring a|ring to|send|shelf|shorter|should feel|shoulder are|shoulder away|shoulder width|shrugging|sink into|small step|so your|spread|stay level|straight back|tail|tap|tap the|tent|the air|the clock|the feet|the mirror|the pocket|them|them in|then the|those|tip forward|tired|to about|to come|to go|toe pointing|touching|tray of|up top|wee|wider than|with you|without|you press|you think|your knuckle|your lower|youre all|youve gone',
      ],
      [
        0.1,
        'at you|before it|clench|clench your|cup|cup of|down like|gone|holding your|just in|knee in|level with|lock the|no holding|not to|park|push down|push the|sagging|slow down|so stop|this one|wall behind',
      ],
      [
        -0.1,
        'a straight|across|and knee|and lower|and put|arm by|arm long|as|as high|as you|at chest|back a|back on|back up|be|belt|big toe|bit of|bone|both feet|breathe|but|come down|come out|come up|curl|doesnt|dont just|dont push|dont roll|down into|ease|easy|elbow down|end|every|for|forehead|forward till|from|gently|get it|glued|glued to|grab|hamstring|heel and|here|high as|hurt|if that|imagine|in as|into the|it go|it open|itll|its not|its the|its your|keep it|knee down|leg out|length|lift the|line|middle|middle of|no swinging|of|of a|onto the|out on|pulling|push your|rack|right|shin|shoe|sit back|slide your|smooth|snap|soft|stretch|the bum|the leg|the rack|the seat|the thigh|then let|tiny|to|to get|toe up|toward the|up at|up by|up the|what|when|when it|where|you dont|you lift|youll|your ankle|your bottom|your eye',
      ],
      [
        -0.2,
        'across the|again|along|and|and dont|and let|and stand|and your|arch|arm are|arm out|back and|back knee|backside|bar|behind|belly button|big|bit wider|blood pressure|both|both hand|breath out|button|by your|chest height|dont arch|dont lean|door|down and|drop|enough|face|feet flat|feet on|feet under|flat on|fold|for the|front knee|get|give|higher|hold it|in the|in your|into it|it a|it come|it up|keep your|knee up|lean|leg|lie|lift|light|loop|mind|nobody|of your|on|on a|on it|or|or your|out when|outside|palm facing|peel|point|pressure|pull it|pull the|seat|see|shoulder down|slower than|slowly|stacked|stand up|start|stay on|stick|swing|take a|take your|tell|than your|the box|the chair|the door|the front|the middle|the same|them up|then|three|till|top of|under you|underneath|up|wall|way up|when you|with a|you go|you stand|your backside|your leg|your nose|your rib|your right|your toe',
      ],
      [
        -0.3,
        'apart|back|back of|back to|blood|bottom|breath|breathing|by|chair|coming|do|dont|elbow under|it back|it out|keep|keep breathing|knee|lean back|let the|of the|one foot|out as|palm|past|pick|pull|put|quick|reach|round|slower|stand|the|the wall|they|through|to the|toward|until|way down|weight|wrist straight|your|your ear|your shoulder',
      ],
      [-0.4, 'ankle|bell|breathe out|ceiling|chin|flat|heavy|high|it|leave|let it|not|open|the back|the ceiling'],
      [-0.5, 'blade|heel|out|roll|shoulder blade|sit|tall|that'],
      [-0.6, 'take|up to'],
      [-0.7, 'its'],
    ],
  ],
  [
    'hanging',
    -0.5,
    [
      [1.3, 'ring'],
      [1.1, 'box'],
      [0.9, 'the box'],
      [0.8, 'let go'],
      [0.6, 'jump|the elbow|when youre'],
      [0.5, 'strap'],
      [
        0.4,
        'arm|arm locked|bending|dont drop|forward a|hip height|if youve|locked|pocket|ring at|step up|the ring|then let|till your|your knee',
      ],
      [
        0.3,
        'again|an ankle|and just|and step|ankle|as the|at hip|backward|before|bend the|done|down like|down till|elbow straight|em|find|find the|get up|hand over|head height|high|ive|lock|long arm|on top|open|open the|out of|ring up|stand in|straight back|swinging|the hand|the shoulder|the strap|this|this one|till the|top|touch|trouble|tuck|tuck your|up there|upside|upside down|way you|when|you open|your arm|your feet|youre not',
      ],
      [
        0.2,
        'a shoulder|an|away from|back between|back the|back up|before you|bending the|blood|blood pressure|buckle|chest proud|come off|dont bend|dont fling|dont jump|elbow are|feet down|feet go|feet off|feet on|fling|give|go down|got blood|grip|had|had a|hang|height|if that|it pinch|keep the|kicking|knee and|knuckle|let em|like there|little sip|lock the|look up|looking|miss|no swinging|onto the|pinch|pinch on|poking|poking out|pressure|proud|push down|reach|rib are|ring in|roll back|shoulder away|shoulder down|sip|sit this|slow as|socket|step back|step down|stop there|stop where|straight at|swimming|talking|tall as|that your|the air|the ear|the feet|the inside|the neck|the pocket|tip|tip your|turn the|up before|up high|went|where your|whole time|you let|you went|your elbow',
      ],
      [
        0.1,
        'a baby|any|are poking|asleep|baby|baby asleep|down to|for the|just let|knee up|let yourself|long neck|one foot|point|wee',
      ],
      [
        -0.1,
        'a bit|across the|and|and dont|and stand|arm out|as if|as it|backside|be|bone|both|breath|breathe|dont lean|elbow under|feel it|feet hip|floor|floor away|front|front of|higher|hold|i|if the|in the|it come|it go|it out|land|lazy|left|leg long|leg out|light|low|lower it|middle|of|one hand|onto your|opposite|other foot|palm up|pick|please|pointing|press|push|put it|soft|stacked|stand up|still|than you|the band|the chair|the heel|the knee|the middle|the seat|them up|toward the|until the|want|width|you dont|you lift|you should|you want|your breath|your thigh|your toe|your wrist',
      ],
      [
        -0.2,
        'about|across|and bring|arch|arm are|as|at|back a|back down|back of|band|belly button|bit|button|by|by your|calf|chair|coming|dont arch|fall|far|feet under|forward|goe|hand on|head|heavy|hip width|if your|if youre|in as|in on|in your|it down|it in|it up|its|leg|lift|line|low back|mat|nose|not|off your|on|out in|out on|out to|over your|quick|right|seat|shin|short|should|shoulder height|sigh|sit down|somebody|squeeze|start|stretch|than|the back|the floor|the mat|the other|the wall|thigh|three|through|through the|to|turn your|under|until|up|up to|wall|wide|you|you pull|your hand|your head|your heel|your rib|your shin|your shoulder|your side',
      ],
      [
        -0.3,
        'apart|bell|belly|big|body|dont|door|if you|in|lean|lean back|of your|on your|out|sit|the front|to the|under your|wrist|your|your back|your belly',
      ],
      [-0.4, 'and let|foot|knee|let it|other|side|stay|the|walk'],
      [-0.5, 'back|heel'],
      [-0.6, 'it|one'],
    ],
  ],
  [
    'head-below-heart',
    -0.9,
    [
      [0.6, 'between|tuck your'],
      [0.5, 'and back|between the|come out|the knee|tuck'],
      [
        0.4,
        'blood|blood pressure|breathe into|head|hip stay|hip up|pressure|ring|roll|shoulder and|trouble|upside|upside down|way you|your head|your right',
      ],
      [
        0.3,
        'and roll|anything|back between|back the|came|cranky|down to|eye|far|hand in|if youve|left|more|or|out of|right arm|room|so if|stay up|stop where|the shoulder|underneath you|up and|want|when youre|you came|your knee|your left',
      ],
      [
        0.2,
        'and if|and the|and your|as far|between your|blade|dont fling|far as|fling|go as|got blood|head come|head height|if that|into your|knee and|lift your|miss|palm up|pedal|send|shoulder blade|side of|slide|slide it|slowly|till your|underneath|up over|walk your|went|you want|you went|youve',
      ],
      [0.1, 'open|rest|roll back|sit this|that shoulder|the arm|the whole'],
      [
        -0.1,
        'again|air|an|at|at the|away from|back to|band|bar|bell|blow|both|breathe in|breathe out|bring|by your|coming|count|door|down and|each|enough|facing|feel it|first|from the|front of|goe|half|hand on|if|if it|if you|if your|in your|it down|it in|it out|it up|lean back|leave|let|little|look|make|me|not a|of you|on it|one|one foot|out in|outside|over your|pull|push|quick|round|same|seat|second|should|side|small|squeeze|stand|start|stay|still|straight|the back|the front|the other|the wall|there a|they|three|thumb|to the|together|top|turn|under|wall|way down|way up|weight|your leg|your side|your thigh',
      ],
      [
        -0.2,
        'a bit|all|and|and let|ankle|away|back|be|belly|big|by|dont|dont let|down|elbow|feel|flat|for|from|heel|high|in front|in the|is|lean|leg|let it|like a|like youre|line|neck|of|of the|of your|off the|on the|other|out on|rib|shin|tall|that|the top|there|two|under the|up|your rib|yourself',
      ],
      [-0.3, 'breath|front|in|no|not|off|on your|step|them|thigh|to|your|your back'],
      [-0.4, 'a|foot|forward|it|the'],
      [-0.5, 'like|on|out'],
    ],
  ],
  [
    'heel-raise',
    -0.6,
    [
      [0.7, 'and lower|big toe|up on'],
      [0.6, 'roll out'],
      [0.5, 'and keep|big|calf|lower|the big'],
      [0.4, 'as high|ball of|both hand|dont roll|high as|keep hold|roll|three|your toe'],
      [0.3, 'ankle|back of|ball|bouncing|dont tip|grow|hanging off|high|onto|over the|rise|the heel|tip|you get'],
      [
        0.2,
        'achilles|and one|as tall|both|chair|come down|drifting|edge|even|feet hip|feet under|fine|fingertip|fingertip on|for three|ground|hanging|heel back|hold of|its a|like somebody|little toe|lower your|morning|near the|no bouncing|onto the|onto your|out onto|pause|pulling|push up|rolling|rolling out|sink|smaller|somebody|stack|stop and|straight up|straighten|tall as|that fine|the calf|the chair|the edge|them up|there a|tip forward|tired|up and|up onto|up over|weight|without|your big|your calf|your little',
      ],
      [0.1, 'a string|down for|hip width|rail|string|the foot|the rail|up for|weight over'],
      [
        -0.1,
        'again|an|are|at|at your|away from|back to|be|before|behind|behind you|bell|belly|between|blade|blow|bring|by your|ceiling|chin|close|dont let|down and|drop|ear|end|eye|far|front of|heavy|height|hold it|if you|if your|in front|in the|it down|leave|let it|level|like a|look|make|mat|middle|neck|of you|on a|one foot|out|out in|palm|pick|pull|push the|put|reach|ring|shoulder blade|slide|squeeze|stand|start|still|that|the ceiling|the knee|the leg|the mat|the middle|the shoulder|then|they|thumb|tuck|turn|up to|wall|when|wide|wrist|your bum|your chest|your ear|your elbow|your hand|your knee|your rib|your side|youve',
      ],
      [
        -0.2,
        'a bit|about|and|and the|bit|breath|breathe|bum|each|feel|from|into|it up|just|lean|like youre|line|no|nose|not|off|off the|on|or|out as|rib|round|seat|side|slow|so|the front|the hip|the other|thigh|till|to|to the|together|toward|walk|with your|you|your back|your shoulder',
      ],
      [-0.3, 'a|arm|away|chest|dont|elbow|floor|foot|front|hand|in|let|long|other|sit|the floor|with|your'],
      [-0.4, 'back|if|it|leg|the|youre'],
      [-0.5, 'shoulder'],
      [-0.6, 'knee'],
    ],
  ],
  [
    'hinge',
    -0.3,
    [
      [0.8, 'your back'],
      [0.7, 'button|length'],
      [0.6, 'back of|bar|bell|rep|stand up|your hip'],
      [0.5, 'and lift|belly button|down the|flat|hip up|line|push your|round|short|straight line|with your'],
      [
        0.4,
        'a straight|a time|at a|at the|between|bow|cramp|down and|fast|forward from|from your|handle|hike|hinge|hip and|hip width|its|its all|keep the|pause|pocket|pull|pull it|slack|slack out|stop|the hip|the slack|the stick|the top|till|time|tip|to your|wait|you stop|your leg',
      ],
      [
        0.3,
        'a table|after|are rope|arm are|back at|back until|bar over|between the|body|breath in|butt|car door|click|close|come in|dont twist|door with|end up|every rep|feet hip|first|flop|from|from the|front and|hamstring|hike it|hip back|how|it back|it click|it float|it like|it up|its tight|knee soft|knee to|line from|loop|metre|moving|neck|one leg|one line|or a|out till|over|pulling|put it|rope|sharp|shirt|shrug|shutting|so it|soft knee|spine|square|table|the back|the crease|the floor|then|then stand|tight|to round|too heavy|toward you|twist|until|up in|up the|when it|your butt|youre shutting|yourself up',
      ],
      [
        0.2,
        'a beat|a chair|a foot|above your|after it|and even|and roll|and send|and squeeze|and that|and wait|are just|are only|arent|arm by|as the|at me|back pocket|back start|bar at|beat|bend it|bone at|breath out|bum|can keep|car|chair and|chest height|close enough|closer|coming down|crease|crease of|dead|dont need|dont shrug|down slow|drag|drop it|each one|elbow just|elbow to|enough|every|exhale|feet down|feet flat|feet in|flat back|fold|for your|get to|go up|goe|goe round|going up|guitar|guitar string|hamstring cramp|hang|hiss out|hook|if its|if youre|im|into your|it hang|it if|it into|it leave|it to|it with|its not|its too|jerking|just drop|kiss|leave your|leg out|level|lift the|light on|like you|lock|long neck|looking|looking at|neck long|nerve|no higher|not the|of your|other hand|out at|park it|past|past the|peel the|press down|press through|pull the|pulling the|push through|same|sat|set|set it|sharp breath|shoulder to|shove|shove your|slide|slide the|socket|soft|sort|sort of|spin|squeeze|stand|start to|starting|stay on|stick|stop when|take a|that how|that in|the hamstring|the handle|the little|the one|the pull|the shin|there no|till your|tip forward|to a|toe up|top|watch the|where you|width|with|yank it|youll go|your backside|your belt|your bum|your lower|your spine',
      ],
      [
        0.1,
        'and itll|armpit|back long|backside|bar stay|coming back|control|dont bend|dont bounce|feel the|flare|front thigh|full|gently|heel on|higher|hiss|it land|its still|just under|keep that|keep your|long and|long back|lower back|lower it|middle of|need|no further|no lower|other leg|out long|pretend|putting|round to|shutting a|still|straight and|straighten that|tall and|the bar|the feet|the leg|till you|to just|to knee|up quick|way back|you feel|your armpit|your body|your cheek',
      ],
      [
        -0.1,
        'a touch|and bring|and draw|and just|and pull|and you|arch|arm|arm out|as high|as you|back on|back still|before you|behind you|behind your|bending|big toe|blow out|bring it|chair|coming up|crank|do it|dodgy|dont want|down a|down for|down into|drop|dropping|elbow at|end|feet back|feet stacked|find|fine|finger|fist|foot and|for three|front knee|front of|got a|grass|halfway|hand under|have to|high as|hold the|hot|hurt|if that|in toward|inside|into|it slip|jaw|keep them|knee down|knee in|knee under|knock|leg long|little breath|long band|long breath|me|mind|never|nice|no more|nobody|off it|on them|operated leg|out over|out when|part|pick|pinned|poke|put the|roll|roll back|roll out|rolling|sag|sagging|side of|side on|sit back|sit up|stack|stand on|straight down|take your|tell|than you|that back|that cheating|the air|the box|the chest|the door|the elbow|the end|the grass|the long|the nose|the outside|the seat|the wall|them back|this|turn your|under hip|under shoulder|under your|upright|walk your|way down|where its|without|wobble|yank on|you think|your arm|your breastbone|your face|your low',
      ],
      [
        -0.2,
        'a big|achilles|across|across the|all the|and a|and down|and the|arm long|arm up|away|back foot|back in|back knee|back to|bend the|bent up|bit|blow|breastbone|bring|bring the|but|calf|can|cheating|clock|come to|count of|cushion|deep|degree|do|doing|dont|dont hold|dont swing|dont tip|down|down between|draw your|drive|each other|elbow back|em|feet wide|five|flat on|follow|foot off|forearm|forehead|forward|forward and|from you|front heel|get|go back|good|got|ground|half|hard|head through|heel|high|higher than|hold it|holding|home|hug|i|i can|imagine|into it|into the|is|isnt|it drop|it from|it pinch|its only|keep|knee over|knee up|knuckle|lazy|lean|leave it|left|let go|let it|let your|lie|lift one|like|little|low|low back|make|meat|middle|more|not in|not locked|nothing|now|on|on it|on to|on your|one knee|only as|onto|onto the|opening|operated|or it|other|out like|over your|palm|please|point|press it|pull them|pull your|quick|rail|rib|ring at|round the|round your|seat|see|should|shoulder|shoulder width|sideway|sigh|slip|small|smaller|stacked|stiff|straight up|swing|swing your|that knee|the ball|the breath|the clock|the ground|the inside|the kneecap|the meat|the opposite|the toe|the window|them up|then let|theyre|till the|to the|top of|touch|touche|toward the|toward your|tuck the|under you|underneath|up on|up toward|wall|want to|well|when you|window|wrist straight|you|you dont|you like|you push|you reach|your nose|your right|your toe|youre not|youve|youve got',
      ],
      [
        -0.3,
        'along the|ankle|at your|back down|ball of|behind|big|come back|draw|ear|elbow under|face|feel it|foot on|for|for the|go|head|heel up|hold|if youve|in|it goe|it out|keep breathing|mat|nose|not on|one foot|opposite|out|pointing|reach|sit down|straight|than|the chair|the mat|the other|the ring|the side|them|there a|they|thumb|together|towel|two|under the|up and|whole|your|your breath|your ear|your rib|your shoulder',
      ],
      [
        -0.4,
        'and|and back|breathing|dont let|elbow|eye|height|let|of the|off|pinch|side|the|there|tuck|turn|walk|wide',
      ],
      [-0.5, 'ring|slow|the front'],
      [-0.6, 'off the|sit|step|under|wrist'],
      [-0.7, 'right'],
      [-0.8, 'toe'],
    ],
  ],
  [
    'isometric',
    -0.2,
    [
      [0.9, 'elbow under'],
      [0.8, 'keep breathing'],
      [0.7, 'breathing|you reach'],
      [0.6, 'arm straight|back in|low|shoulder are'],
      [0.5, 'home|look at|low back|on to|quiet|ring|squeeze it|too|under the'],
      [
        0.4,
        'air|an|and hold|and swap|away|dont let|finger|float|forearm|glass|hip|inside|inside of|jump|kick|kneecap|lift|look|on your|out of|press|pull up|push the|reach|right arm|side on|sip|stand side|straight out|swap|the air|the box|the inside|the kneecap|the ring|your hip|your thigh',
      ],
      [
        0.3,
        'a good|a spot|an inch|and float|and just|and step|arche|are poking|as well|at a|back on|belly|box|breastbone|bring them|buckle|chair back|count|creep|creeping|cup|cup of|dog|down on|drifting|each other|elbow toward|feet off|feet stacked|float the|foot just|for a|for three|glued|go away|good|grip|half|hand off|higher|higher than|hip height|hip level|holding|i can|if its|imagine a|in front|in there|isnt|it pinch|it under|its your|ive|just off|knee down|kneel|leg long|lift your|little breath|lock|long|make|me|move|off|off the|onto|opposite|out there|over your|peel|poking|reach the|ring at|sip the|sit tall|slide down|slide up|spot|spot on|stacked|stare|stare at|straight|strap|talk|talk to|tea|tent|the hand|the opposite|the other|there|thigh|to hip|too far|toward your|towel|trouble|underneath|waist|wall|you wobble|your breastbone|your breath|your hand|your low|your neck|youre a',
      ],
      [
        0.2,
        'a banana|a dog|a full|a wet|ache|an ankle|and bring|and lift|and no|and not|and out|and press|and stare|and the|ankle|anybody with|are creeping|are drifting|are up|arm back|arm by|arm like|arm up|as low|at chest|away from|away with|back flat|back over|backside|balance|banana|before you|bend your|blow out|both hand|breath|breathe low|can|can without|chin not|clenching|coffee|come home|come in|come off|count of|creep up|cushion|do it|done|dont be|dont jump|dont kick|dont sink|dropping|ear|everything|face|feet together|find|find the|fingertip|flat as|floor away|foot off|for your|forearm down|from you|go as|go long|go on|goe|goe back|gone too|had|hand round|hard|hip and|hip till|hold your|holding it|home and|if that|if you|imagine|in to|inch|into|it straight|just above|just clear|knee over|knuckle|left|leg away|leg goe|let that|like youve|little sip|lock the|low as|lower back|make one|mat|of five|of you|off and|on top|one foot|only go|open the|operated knee|other|out the|pick a|place|poking out|pop it|popping|press the|purple|push down|rib are|ring to|ring up|sag|shorter|shoulder width|sink into|slow as|something that|sore|spine|squash|squash the|stack|standing|start to|stay there|step up|straight up|tap the|tell|than your|the door|the feet|the grass|the joint|the mat|the sore|the strap|the wrist|the you|them home|them out|there and|there for|theyre|thumb|to about|to be|to feel|to heel|toe tucked|train|tuck them|tucked|tummy|turn the|turning|twist|under|under your|up a|up until|wall and|want the|want to|watch|watching|wee|weight in|well|wet|without|wobble|wrist|you hold|you press|your face|your finger|your fist|your waist|youre holding|yourself',
      ],
      [
        0.1,
        'above the|and stay|arm go|arm to|at hip|at me|at something|away behind|back stay|bit in|breathing while|clear|completely|do|dont hold|ease into|either|empty|feet close|finger on|five|float your|foot up|for|gently|getting|go completely|grab|grass|hand and|hand over|have a|head and|head to|height and|holding your|hover|i|isnt moving|it on|it want|jammed|knot|let go|moving|no higher|not jammed|not to|now|on me|one arm|one end|or it|pointing at|pull your|pushing|quiet feet|rib stay|ring a|ring in|roll forward|roll your|rushing|shift|shoulder and|shoulder away|sneaking|something|switch|teeth|that isnt|that knee|the backside|the last|the leg|the pocket|the towel|then you|this one|together|tomorrow|under shoulder|up before|while|while you|your kneecap|your lower|your tailbone|your teeth',
      ],
      [
        -0.1,
        'a big|a pinch|a wee|about|achilles|across the|and down|and round|and send|and sit|and walk|armpit|as if|asleep|back down|back leg|back pocket|back till|bang|bell in|bending the|big step|blood|bottom of|by|chest and|chest down|chest to|circle|closer|come out|come to|coming up|deep|deep in|dont just|down first|dumb|dumb bell|elbow wide|facing|follow|for four|forearm on|forehead down|forward|from your|front foot|get the|handle|has|haul|heel|however|hug|if it|if youre|im|in on|it away|it like|its only|its that|its up|knock|lace|lead|leave it|leg out|little wider|long arm|neck|nerve|no swinging|not out|of a|on that|onto the|out as|out coming|palm down|palm up|past the|pretend|push through|quick step|reach for|round up|second down|shirt|sideway|smooth|speed|stand|stay on|t|talking|the band|the chest|the side|them away|till the|toe up|touche|toward the|tree|under you|until|up through|walk to|we|wrist straight|you come|you pull|you rise|your rib',
      ],
      [
        -0.2,
        'a long|about a|across|and come|and dont|and keep|and peel|and push|and roll|any|arm are|arm out|as it|back a|back foot|back hip|back under|back up|bar|beat|belt height|bend|bend the|bending|bent|between the|big breath|bit|body|book|both feet|bottom|bounce|bouncing|breathe into|breathe out|bring your|carpet|chest up|come|coming down|cramp|crank|curl|degree|doesnt|dont arch|dont drop|dont reach|dont want|dont yank|down at|down with|drive|ease off|easy|elbow back|end|every|fall|feet flat|feet in|feet under|finish|flapping|flop|fold|foot in|foot out|from|from the|front knee|going up|grow|halfway|hand are|hand behind|hang|head up|heel and|heel down|here|hip up|hold the|if the|in as|in each|in going|in toward|is plenty|it come|it down|it if|it out|it up|jog|just a|keep hold|keep the|knee are|knee bent|lazy|lead with|lean|length|light|loose|lower|lower it|middle of|most|most of|next|nice|no bouncing|no rush|nose to|not a|not at|nothing|of it|of your|one hand|or your|other knee|out a|outside of|own|pedal|phone|pin|plenty|point|proud|push off|rep|rhythm|rise|roll out|room|send|short|should|side and|sigh|sink|sit back|sit down|sit up|slide it|slide your|slower than|snap|soft|spring|squeeze your|stand up|stay down|stay up|stiff|stop|stretch|swing|swing your|take a|that a|that back|that foot|the arm|the bell|the bottom|the first|the neck|the room|the same|them up|then push|these|thirty|three|thumb out|tip over|to get|to go|to lift|tuck your|turn round|turn your|under hip|until the|up at|up for|up tall|want it|way|weight|were|when you|where|whole|with a|with your|working|you get|you go|you lift|you like|youll feel|your calf|your chest|your forehead|your tail|yourself up',
      ],
      [
        -0.3,
        'after|and back|and lower|and stand|apart|arch|back|back to|band|behind|belt|bone|breathe in|catch|come up|dont lean|down and|down between|drop|enough|exhale|feet hip|first|for the|forehead|front|get it|going|going down|hamstring|head|hip width|is|it|it off|its a|lean back|leaning back|leave|lie|like|little|loop|mind|on a|one knee|other leg|out like|out to|past|pull it|round|seat|second|should be|side of|slower|so|stand tall|the calf|the end|the outside|through the|till|to the|touch|turn|two|up with|walk|way down|way up|wide|with|you push|your head|your shin|your toe',
      ],
      [
        -0.4,
        'again|as|as you|at the|back knee|big|both|coming|down|get|hand in|heavy|high|in|more|on it|outside|palm|pillow|same|take|the seat|the top|the way|through|up to|when|your|your foot|your heel',
      ],
      [-0.5, 'a little|bell|blade|calf|chest|in the|its|let the|like a|out on|shoulder blade|sit|tall'],
      [-0.6, 'out'],
      [-0.7, 'quick|the front'],
    ],
  ],
  [
    'jump',
    -0.6,
    [
      [0.7, 'drive|land|land on'],
      [0.5, 'bounce|can|dont reach|ground|march|the ground|up on|you land'],
      [
        0.4,
        'dont hold|drive the|dum|from the|get your|hop|jump|knee to|other|push off|quiet|quiet feet|rhythm|shin|slapping|stick|the ball|the knee|the other|your breath|your feet|your wrist',
      ],
      [
        0.3,
        'as it|ball|ball of|beat|belt height|breath out|da|drifting|feet under|go back|hold your|hot|if your|instead|knee come|leaning back|look at|opposite arm|phone|reach|running|skip|snap|snap the|stiff|straight down|the air|the foot|the wrist|then the|theyre|time|to be|under there|up and|up in|want to|when|when you|wrist|your shin',
      ],
      [
        0.2,
        'a beat|a knee|achilles|across to|ahead of|air|and down|are drifting|back behind|belt|blow out|break|bring them|come in|creeping|doing|dont push|dont sit|dont want|down like|elbow back|far|feet go|feet in|feet shoulder|find|find a|foot and|get the|hang|knee only|knee up|landing|leg out|ligament|off one|one leg|opposite|other foot|other knee|out in|popping|puff|punch the|reach for|run|shin or|sit down|sneaking|spread|squat|stamping|stay on|than|the ankle|the far|the feet|then up|through it|to about|toe when|track|under hip|want the|with the|yank it|you can|your foot|your pocket|youre late|youve got',
      ],
      [
        0.1,
        'a time|chest to|clock|dizzy|dont fling|dont look|go again|have a|jog|just the|knee in|light on|lot|most|next one|no holding|or your|punch|slow down|the clock|to go|when your|your belt|youre a',
      ],
      [
        -0.1,
        'an|back of|band|bar|before you|blade|by your|chin|coming|count|dead|down with|facing|fall|feel the|flat|float|floor away|in your|inch|it come|keep breathing|keep the|kneecap|know|make|on it|open|past|properly|pull your|shoulder blade|sigh|slide|slower|slowly|small|squeeze your|straight|the nose|the ring|the shoulder|thumb|to|toward your|you get|your belly|your elbow|your side',
      ],
      [
        -0.2,
        'a bit|able|able to|all|and stand|and then|apart|arm straight|as if|back|be able|behind|between your|big toe|both|breathing|but|by the|ceiling|change|door|down and|elbow|enough|feel it|feet flat|hand|heel|heel and|hold the|home|if you|inside|into|its|keep your|let|let it|let your|lift|like|lower|me|middle|neck|not|now|of|of it|one|one foot|one hand|out of|palm|press|put it|rib|ring|second|shoe|shoulder|side|sit up|stand up|still|stretch|tell|the back|the bottom|the ceiling|the chair|the middle|the opposite|the seat|the top|the whole|they|through|through the|tip|toe up|together|toward|tuck|turn|until|way down|where|wide|you|you go|you should|your arm|your ear|your head|your hip|your leg|your rib|your shoulder|your thigh|youre not',
      ],
      [
        -0.3,
        'a|bell|belly|bend|between|bit|bottom|breathe|breathe out|drop|ear|first|heavy|in|it down|nose|of the|on|pull|put|roll|round|so|squeeze|stop|the wall|the way|top|wall|way|weight|whole|youll|your back|your toe',
      ],
      [-0.4, 'and|by|feel|hand on|head|it|the|till'],
      [-0.5, 'to the'],
      [-0.6, 'keep|that'],
    ],
  ],
  [
    'kneeling',
    -0.5,
    [
      [0.6, 'front of|kneel|tail|tuck'],
      [0.5, 'arm straight|big toe|out in|rib|sit back'],
      [
        0.4,
        'and walk|back hip|back knee|back to|fold|forehead|forward|forward and|front|heel and|in front|knee down|kneecap|mat|put a|tail under|the back|too far|you can|your heel|your rib',
      ],
      [
        0.3,
        'arch|arch your|body|dont arch|foot out|hand out|hip forward|lie|only as|pillow|rib stay|ring at|sore|squeeze the|that back|the hand|the kneecap|the ring|too|tuck the|tuck your|tucked|under it|walk your|where you|your hand|your tail|your thigh',
      ],
      [
        0.2,
        'a chair|a towel|asking|back on|bell at|book|both side|breath out|breathe into|cushion|down on|down slower|drift|drift forward|far as|find|for a|gone|gone too|heavy|instead|it let|it till|its the|knee apart|lie on|low back|moment|no leaning|nobody|of you|on a|one knee|out breath|out through|pad|pinch|prize|shouldnt|shuffle|step one|stretch|the belly|the low|there no|thigh|tip forward|touching|towel|towel under|went up|youre putting|youve gone',
      ],
      [
        0.1,
        'as far|exhale|go heavy|hand finish|lean in|leaning back|of that|putting|roll the|shelf|the bell|them back|till it|top shelf',
      ],
      [
        -0.1,
        'about|all the|and|are|as if|as it|band|bar|before|before you|bent|bone|chin|count|down and|drive|each|end|eye|facing|feet flat|first|from the|goe|got|hang|height|hip width|if it|it down|it up|keep your|leave|let them|level|like a|like youre|line|long|make|me|middle|not a|one hand|other|out on|outside|over|over the|pull|pull the|quick|side of|small|somebody|stand|stand up|start|swing|take|the bottom|the elbow|the heel|the leg|the middle|the seat|the shoulder|the way|the whole|there|there a|think|thumb|up and|up on|up to|way down|way up|whole|with the|youll|your belly|your chest|your head|your hip|your leg|your nose|your shoulder',
      ],
      [
        -0.2,
        'a|a bit|across|across the|again|all|an|ankle|at|at the|behind you|bit|blade|bottom|bring|by|coming|dont let|ear|elbow|face|finger|from|get|half|high|in your|it|it out|just|keep the|lean back|light|look|now|of the|on the|one|open|out|over your|palm|pointing|press|push the|seat|second|shoulder blade|sigh|slow|soft|that|the|the chair|the chest|the floor|the knee|the side|three|time|to|to the|touch|toward your|way|when|with your|you feel|your ear|your feet|your toe',
      ],
      [
        -0.3,
        'away|breathe out|chest|down|flat|floor|i|if you|in the|keep|lift|like|lower|off|out as|round|side|the other|toward|turn|youre',
      ],
      [-0.4, 'as|behind|if|its|let it|not|shoulder|you'],
      [-0.5, 'dont|leg|push|up'],
      [-0.7, 'feet'],
    ],
  ],
  [
    'leg-lowering',
    -0.5,
    [
      [0.7, 'if the'],
      [0.6, 'leg up|your back'],
      [0.5, 'again|ceiling|chin|leg|low|sock|sock on|the ceiling'],
      [0.4, 'arche|as it|as low|both leg|draw|low as|low back|mat|peel|slow|tea|the mat|tight|whole leg'],
      [
        0.3,
        'a sock|across the|air|arm by|as they|bend|bending|by your|chin not|far|from you|glued|go back|gone too|good|good knee|heel up|in a|into the|it away|lower|lower your|off the|press the|right arm|shin|slide it|start|swap|the air|the heel|the knee|the whole|too|toward your|up off|up to|whole|your bottom|your heel|youve gone',
      ],
      [
        0.2,
        'and float|and start|and swap|and then|are bending|arm and|arm back|arm up|as the|away from|back stay|back still|back up|bring the|bring them|doing|far as|finger and|flat on|float|float the|foot flat|go away|gone|grumbling|higher|hitching|hold your|home|imagine|in like|isnt|it come|it leave|its only|its tight|jammed|just off|knee over|kneecap|know|last|leg away|leg long|lie|like somebody|lower back|make it|mean|more|not jammed|only|only as|opposite|other knee|over your|peel off|poking|pulled|roof|send|sip|slower|slower than|so it|spine|start to|stay down|straight up|stretch|that heel|that how|the leg|the low|the opposite|the roof|them back|them home|they go|tighten|to where|together|too far|toward|tray|until its|up at|where its|you know|you stop|your belly|your spine',
      ],
      [
        0.1,
        'and the|as far|back into|can keep|drifting in|dropping|for it|goe out|home and|operated|shoulder and|that cheating|till its|up over|you lift|your low',
      ],
      [
        -0.1,
        'a little|ahead|all|and dont|and down|and lift|and no|and stand|bar|before|behind you|between your|big toe|body|bone|bounce|breathe into|bum|calf|close|come|come out|dont lean|door|drive|end|enough|every|feel|feet hip|fist|floor away|for|for three|forearm|from the|front of|have|head|height|hold|hold it|if you|it up|its your|keep breathing|keep the|land|lean back|let go|like youre|neck|nobody|of you|on a|on it|one hand|open|other foot|out|pull it|pull your|quick|rib|ring|should|slowly|stand up|straight back|the bottom|the chair|the elbow|the hand|the rib|the seat|the shoulder|there for|till|tip|turn|wider|with your|you want|your feet|your foot|your hand|your side|your wrist',
      ],
      [
        -0.2,
        'and|and keep|and let|at your|band|behind the|bell|between|big|breathing|chair|come down|each|eye|facing|feet flat|for the|forehead|front|half|hand on|high|hip width|in as|in front|inch|into your|it|keep|knee and|line|little|middle|near|of the|on|on the|one foot|other leg|out in|out of|outside|pocket|push the|roll|round|round the|seat|side|squeeze your|that|the middle|the top|the wall|think|through the|thumb|time|top|under|up a|walk|want to|weight|wide|width|with|with a|you|you come|your arm|your elbow|your head|your knee|your rib',
      ],
      [
        -0.3,
        'back of|chest|down|foot|hang|in|in the|just|lean|let your|no|nose|of your|pull|soft|stand|straighten|tall|the back|through|to your|wall|want|wrist|your|your shoulder|your toe',
      ],
      [-0.4, 'a|forward|let|let it|one|push|sit|step|the'],
      [-0.5, 'behind|dont|shoulder'],
      [-0.6, 'elbow|feet|of'],
      [-0.7, 'hand'],
    ],
  ],
  [
    'load-over-face',
    -0.9,
    [
      [0.9, 'lie'],
      [0.5, 'till the'],
      [
        0.4,
        'bell|bent|blade|bounce|degree|dont bounce|eye under|it come|knee bent|over your|press|shoulder blade|wrist stacked',
      ],
      [
        0.3,
        'and press|bottom of|feet flat|lie on|not out|out like|pinch|pinned|round the|stacked|the bar|the elbow|touch|touche|under the|way down|wrist|your eye|your face|yourself',
      ],
      [
        0.2,
        'alway|bar|bench|breastbone|breathe in|bring it|dumb|dumb bell|elbow at|eye|halfway|in as|in on|knuckle|lie down|lower it|stacked over|stop when|the pad|thing|think|thumb|when you|you press',
      ],
      [0.1, 'blow|blow out|five|forty|forty five|it off|ninety|pad|press it|the rib|wrist straight'],
      [
        -0.1,
        'and let|and the|ankle|are|at the|band|be|before|belly|big|breathe|breathing|by your|chair|chin|come up|dont let|door|down|drop|end|far|feel it|feet|first|from|front of|going|hand on|heavy|high|hip width|hold it|i|if the|if you|it in|its|knee|lean|let the|let your|level|like youre|look|mat|middle|no|of|on a|on the|on your|one|one foot|only|out in|pull|put|ring|same|shin|should|slide|slow|soft|stand|start|take|tall|than|the front|the hip|the knee|the mat|the middle|the other|the wall|then|there|there a|thigh|this|through|under your|walk|want|weight|where|wide|width|with the|you|you can|your bum|your ear|your side|your toe|youve',
      ],
      [
        -0.2,
        'at your|back|behind|bend|breath|breathe out|by|ear|feel|foot|forward|get|hand|heel|hold|in|in front|in the|it out|just|keep|let it|lift|little|neck|nose|of the|or|other|out|out on|palm|sit|step|that|the shoulder|the top|they|top|toward|turn|up|wall|your hand|your head|your hip|your knee',
      ],
      [-0.3, 'a|and|dont|front|height|it|leg|let|long|squeeze|to|toe|your'],
      [-0.4, 'hip|if|on|youre'],
      [-0.5, 'the'],
    ],
  ],
  [
    'lunge',
    -0.5,
    [
      [1.2, 'back knee'],
      [0.9, 'front knee'],
      [0.6, 'bell|front heel|tuck'],
      [0.5, 'back hip|foot forward|knee down|of that|straight down|the front|through the|up through'],
      [
        0.4,
        'arch your|dive|drop|drop the|forward|front|knee goe|other leg|step|step one|that back|that hip|the ring|tuck your',
      ],
      [
        0.3,
        'and come|arch|asking|bell at|big step|both side|feel the|feet on|foot|front foot|front leg|heel up|help|keep the|landing|ligament|low|on one|one foot|one knee|push off|push up|tail|take your|the back|then push|tuck the|you stand|your tail',
      ],
      [
        0.2,
        'a beat|a long|a stretch|a tightrope|as wide|back and|back heel|beat|bell in|bounce|cave|chest tall|come back|come home|dont get|down on|drift|drift forward|dumb|dumb bell|eye up|foot and|for a|front thigh|grass|hold the|inch off|into that|inward|it cave|it dive|it doesnt|it for|it let|it till|lace|land|let go|load|middle toe|on a|on each|on hip|one leg|pay|softly|stay in|strap|tail under|that your|the grass|the kneecap|the toe|the weight|thigh|through|tightrope|till it|top of|toward the|track|under and|way down|wide as|youll be',
      ],
      [
        0.1,
        'dont tip|kneecap|nearly|not on|out breath|shift|step back|that knee|till there|wobble|your front|your weight',
      ],
      [
        -0.1,
        'about|apart|as|as if|as it|away from|back down|band|bar|before you|blade|calf|ceiling|chin|ear|feet|feet flat|from the|go|going|good|if your|if youre|in front|in the|its a|lean back|leave|let them|look at|make|neck|on to|palm|should be|shoulder blade|somebody|the arm|the ceiling|the chest|the elbow|the shoulder|the whole|there|think|thumb|toward your|under your|up on|up to|want to|width|your|your arm|your bum|your ear|your elbow|your head',
      ],
      [
        -0.2,
        'across|across the|again|air|and lean|and let|and stand|ankle|at|back of|belly|bend|bend the|big toe|blow|bottom|breathe|breathe out|breathing|bring the|bum|coming|dont|dont let|elbow|end|face|facing|far|finger|first|flat|grab|head|if|if you|in|it|it down|knee and|knee soft|lean|let your|level|long|long breath|look|lower|of|of you|on it|one hand|open|operated|out|pointing|quick|reach|rib|seat|sigh|sit|slide|slow|slower|small|the chair|the foot|the knee|the leg|the seat|the wall|them|this|three|to the|touch|turn|under|wall|whole foot|with your|wrist|you feel|your feet|your hip|your shoulder|youre',
      ],
      [
        -0.3,
        'a|at the|away|bring|hand|high|lift|like|like a|no|nose|of your|press|put|roll|round|should|so|to|walk|whole|you|your heel',
      ],
      [-0.4, 'from|its|let|let the|not|on your|pull|than|the|up'],
      [-0.5, 'and|arm'],
      [-0.6, 'shoulder'],
    ],
  ],
  [
    'overhead',
    -0.3,
    [
      [0.9, 'ring'],
      [0.7, 'back down|overhead|pinch|the box'],
      [0.6, 'box|ear|rib|slide'],
      [
        0.5,
        'and back|down to|head|it pinch|press|press it|the shoulder|them back|tuck|tuck your|upside|upside down|when youre',
      ],
      [
        0.4,
        'a little|arm|bar|before|dont drop|down a|drop|head through|if your|kneel|let go|no swinging|out of|reach|stop|straight|swinging|that your|there|too|up there|window|you open|your ear|your head|youve',
      ],
      [
        0.3,
        'a lift|a shoulder|an ankle|arm straight|as far|asleep|at your|back to|bending|blow|ceiling|chin|dont bend|dont go|dont lean|finish|flat on|go overhead|hand over|hang|hip up|hold the|if that|if youve|into a|it from|it up|knee come|knee up|knuckle|let the|move|past|pedal|pinch on|put your|rib down|shoulder catch|sit this|slide down|socket|squeeze your|stand on|step up|the arm|the ceiling|the chin|the hand|the way|the window|through the|too far|top|tucked|up and|up toward|way|weight|with it|your bum|your rib|your shoulder|youre not',
      ],
      [
        0.2,
        'a baby|a long|a wee|and get|any|at all|away and|baby|baby asleep|back between|back flat|back there|backward|banana|been|before you|belt|bend|bending the|between the|bring them|catch|come back|cranky|done|ever|facing in|far as|feel the|feet down|feet go|fine|finished|foot on|for a|for the|forward and|get there|go up|gone|gone too|hand at|hand just|however|if a|it into|itll|ive|kicking|leaning back|lift up|limbo|long arm|no leaning|on top|only go|onto the|open|open the|over the|palm|palm facing|palm forward|past your|pull up|rib stay|ring up|roll the|send|shelf|shorter|shoulder pinch|shoulder width|sitting|slide back|slide up|slow as|squeeze|stool|stop where|tailbone|the bell|the belly|the push|the top|the weight|them up|then let|then you|they go|thirty|thirty degree|throw|thumb|tip forward|to come|top shelf|touching|tuck the|way up|way you|with you|wrist|wrist straight|you let|you reach|your arm|youre at',
      ],
      [
        0.1,
        'a banana|and just|and pull|as they|back the|bit in|care|collarbone|dont jump|down there|feeling|feet off|for this|go to|grip|grip the|high|it goe|ive seen|just let|knuckle to|leave|let your|long back|looking at|more than|rib and|ring at|road|roll back|same side|send your|stop there|take it|the hard|tonight|turn it|until your|up at|up high|up past|up till|vertical|you lean|your wrist|youve had',
      ],
      [
        -0.1,
        'a pencil|a time|about a|and a|and dont|and let|and push|and stand|are|arm out|as|back knee|back of|back pocket|back start|below|bit|bone|both hand|breath|but|chest height|come down|coming up|curl|dont arch|dont swing|down and|down between|down till|drift|dumb|dumb bell|easy|end|end in|facing the|flop|foot|four|from|from the|from you|full|grab|hamstring|hand in|hand on|hand under|heavy|heel and|hurt|in and|it get|it go|its coming|jaw|leg up|length|lift the|look at|meet|mind|moving|not the|not your|of|one knee|one line|other|out a|pencil|pillow|pinned|please|plenty|pulling|rail|rock|round to|run|sagging|shirt|shoulder are|shrugging|sit back|sit up|slide it|some|spot|stand|stay on|straight line|straighten|stretch|that back|that how|the foot|the middle|the opposite|the pull|the side|the wall|those|three second|till its|till the|till youre|tiny|to about|toe up|touche|toward your|under the|until the|up by|up for|up in|waist|wait|watch|you push|you should|you stop|youll|your leg|your low|your pocket|your shirt',
      ],
      [
        -0.2,
        'across|across the|after|all|all the|and|as a|as if|at a|away|back till|ball|be|behind your|belly|big|big toe|both|breathe into|breathing|chair|check|cheek|crank|dont|each hand|elbow and|flat|forehead|front|got|hand down|higher|i|in your|is|it out|its|its only|its the|just|knee down|kneecap|knock|knot|land|lazy|left|leg long|leg out|let it|level with|lie|light|like a|line|lock|look|loose|low|low back|lower it|middle|need|no higher|off|on|one hand|opposite|or your|out long|palm up|pause|pointing|poke|put it|ring to|round the|side of|sigh|sigh out|sit down|small|snap|soft|somebody|sore|stand up|straight back|swing|swing your|tall|than|the air|the chair|the front|the seat|the thigh|three count|toe|touch|toward|tug|until|walk your|wall|when you|wide|your chest|your elbow|your eye|your heel|your hip|your neck|your shin',
      ],
      [
        -0.3,
        'a bit|air|and the|as you|belly button|button|door|feel it|first|forward|heel|how|if you|in|in each|it|it come|it in|keep breathing|let them|not|pull the|seat|second|shin|sit|start|that|the|the door|the floor|the other|three|till|time|turn|turn your|you lift|your|your belly|your hand',
      ],
      [
        -0.4,
        'apart|blade|each|floor|half|knee|of your|out|pocket|push the|right|shoulder blade|stay|the back|together|you|your side',
      ],
      [-0.5, 'about|chest|coming|hip|leg|lower|on your|one|push|to|walk|your back'],
      [-0.6, 'side'],
    ],
  ],
  [
    'prone',
    -0.6,
    [
      [0.9, 'wrist'],
      [0.7, 'go down|if you'],
      [0.6, 'forehead down|one long'],
      [
        0.5,
        'about a|bring|bum|down between|eye on|forearm|forehead|low back|one straight|squeeze your|you feel|your thumb',
      ],
      [
        0.4,
        'ahead|away|bring them|chest|chest down|elbow under|hand in|mat|no sagging|sagging|than the|the mat|the right|the wrist|those|under the|your front|your low|your wrist',
      ],
      [
        0.3,
        'a dog|a hand|a pinch|a tent|and lift|any|away behind|back leg|back start|between the|bum down|cant|chest and|chest up|come out|creeping|dog|drifting|elbow|eye|feet back|fist off|front foot|going|going down|hand off|hear|hurry|if its|knee at|knee down|knuckle|lift one|lift up|line|long line|low|not a|pinch in|reach for|round your|rush|shin|slide the|somebody|strap|tent|the left|the one|the ring|thumb|thumb out|together|you come|you have|your belly|youre a',
      ],
      [
        0.2,
        'a fist|a hammock|a ring|and have|and make|and push|and turn|are up|at all|balance|behind the|between|blow out|both end|butt|crank|crank your|dont crank|drift out|ear to|edge|elbow down|elbow toward|feet wide|fist|flapping|fold|forearm down|goe round|hammock|hand by|hand under|has|have a|head back|head to|head up|hot|in as|in each|in going|in on|instead|its a|knee in|level with|like somebody|long neck|look at|make one|of a|off your|on them|onto|opposite leg|pinch|plank|purple|push the|right down|ring to|sag|sagging in|see|short little|spread|squeeze|stretch|tap the|than|that a|that not|the chest|the low|them in|then the|to go|to heel|toe away|toe to|trouble|you by|you go|you lift|your bum|youre all|youre one',
      ],
      [
        0.1,
        'ahead of|and if|are creeping|everything|glass|height of|leg long|like its|looking at|melt|moving|neck|not high|out a|push away|so youre|stick your|than you|that hip|the height|the rib|to see|tuck the|where its|you push|you think|youre going',
      ],
      [
        -0.1,
        'a straight|a touch|above|above your|across|across the|all the|arch|away with|back up|ball|bend the|by the|dead|dont arch|dont go|dont lean|dont let|door|enough|fall|feet under|forward|forward till|front of|full|good|heel and|hip till|it up|its|its not|keep|keep it|knee bent|kneecap|leg out|let go|let it|let the|nice|on to|other foot|out on|over the|pulling|push your|round|seat|side|slide your|slowly|spine|stack|stand up|stop|the chair|the elbow|the seat|the thigh|the way|through your|tight|till the|touch|whole|with|with your|you stop|youll|your forearm|your thigh',
      ],
      [
        -0.2,
        'a chicken|a wall|again|ankle|apart|at your|back and|back to|beat|bend your|bent|big|bit wider|body|bone|both|calf|chair|chest height|chicken|chin|come off|count|curl|do|draw|each hand|em|far|feel the|feet flat|feet stacked|foot|get|give|glued|goe|grass|hand flat|hand on|heel|hip up|home|hug|if that|if the|if youre|in one|into|into the|it back|jaw|just|keep your|knee under|lean back|leaning|length|let them|like youre|lock|lower back|nobody|not your|on it|on the|out|out in|outside|over your|poking|press the|rib down|same|second|shoulder up|sigh|stacked|straight|string|swing|swinging|tailbone|tall|the band|the bottom|the grass|the heel|the nose|the opposite|then|three|tip|under hip|up|up and|waist|want|way|weight|when you|wrist straight|you pull|you should|your back|your bottom|your finger',
      ],
      [
        -0.3,
        'a little|and let|bell|blade|breathe|facing|finger|for|grip|half|heavy|is|let|like there|of|on|one foot|past|roll|should|shoulder blade|slow|take|the wall|thigh|through the|up to|when|your|your knee|your nose|your side',
      ],
      [
        -0.4,
        'an|bend|bottom|breathe out|ceiling|dont|first|flat|height|it|lean|nose|of your|open|or|pull|sit|soft|stand|that|the ceiling|there a|they|till',
      ],
      [-0.5, 'arm|over|the|there'],
      [-0.6, 'knee|step'],
      [-0.7, 'through'],
    ],
  ],
  [
    'pull',
    -0.3,
    [
      [1, 'pull'],
      [0.8, 'you pull'],
      [0.7, 'elbow'],
      [0.6, 'belly button|button|palm|to your|your elbow'],
      [0.5, 'again|blade|facing|high|long|pull it|pull the|shoulder blade|the pull'],
      [
        0.4,
        'all the|count|curl|its coming|long neck|palm facing|past|shoulder down|shrug|snap|the arm|thumb|thumb pointing|your rib',
      ],
      [
        0.3,
        'a walnut|apart|arm long|as your|at you|band|before|before you|belly|bending the|breathe out|dont shrug|dont swing|each hand|end|end in|feet in|hang|in each|it come|jerking|keep your|knot|let it|long arm|lower|neck|nick|open|out on|palm up|past your|pocket|pull your|rib|shut|slower|squeeze the|stand on|the band|the elbow|this one|tiny|two|up high|walnut|wrist|wrist straight|you at|you open|your belly|your forehead|your side',
      ],
      [
        0.2,
        'a beat|about shoulder|ahead|an old|and lower|and that|any|as it|at chest|back past|bar at|bar to|beat|bend your|bending|blow out|bottom rib|chin|come in|come to|cracking|dont curl|dont drop|dont rock|dont twist|down in|down like|egg|either|elbow back|elbow just|elbow to|face|facing the|finish|for nick|for one|get a|give|give it|hand about|hand finish|head height|it apart|it into|it open|it there|it toward|it with|its a|keep the|lean back|let yourself|lower it|of a|of you|old|one and|out as|out when|palm to|past the|pinch on|pinned|put your|rep|ring|shirt|show|shrugging|slack|slower than|soft knee|squeeze at|standing up|stop when|swing your|take a|than you|the door|the rib|the ring|the shoulder|the toe|then let|think|think of|this|three count|till your|top of|touche your|tug|up quick|walk the|wee|weight|when|you lift|your eye|youre holding',
      ],
      [
        0.1,
        'a pencil|a tray|are long|because|because if|blade like|chest height|crack|down away|draw|draw your|exhale|feet go|flopping|glued|glued to|hand apart|hanging|hinge|it like|it ping|it round|its too|kicking|lead|lead with|light|long again|looking at|open the|part|pencil|ping|square|that plenty|think about|tray of|trust|twist|your body|your front|your pocket',
      ],
      [
        -0.1,
        'a hand|across the|and push|and turn|are bending|back and|be|behind the|belt|bent|both hand|breath out|bring them|bring your|by the|catch|chest and|collarbone|fall|feel|feet back|floor away|going|heavy|here|hip width|hold|if its|in one|itll|its not|keep breathing|knee bent|land|leg long|leg up|lift your|on to|one hand|onto your|other|over|pick|please|push the|rib down|shin|should|so your|stacked|straight up|tail|the chair|the hip|the whole|toward|up at|up on|up over|wider|width|window|with it|you feel|you get|your back|your foot',
      ],
      [
        -0.2,
        'a bit|across|and|and bring|and the|and then|arm straight|armpit|back|back down|behind|bone|breathing|bring it|can|cant|come down|degree|do|dont jump|elbow are|elbow under|finger|for it|forearm|get|go|going up|hand on|hip height|hiss|home|how|if the|if you|if your|if youve|in and|in going|inch|into the|it|knee up|lie|line|long breath|loose|middle|next|nose|not out|of your|on a|or|peel|press it|roll|round|short|shoulder up|sigh|slow|so|squeeze your|stay on|that|that the|the back|the head|the mat|the neck|the nose|the same|the side|the wall|there|through the|to get|to the|together|toward the|towel|tucked|under the|under your|up the|want|way up|wet|you can|you push|your bum|your heel|your knee|your leg|youre a',
      ],
      [
        -0.3,
        'a|and your|ankle|arm locked|away|back to|big|bring|ceiling|down|fist|foot|goe|grip|hand|heel|if|in the|into|jump|just|keep them|locked|low|mat|nobody|on|one|out like|out of|over your|sit|step|the|the ceiling|the knee|the other|them|turn|under|wall|where|whole|you like|your|your head|your toe|youve',
      ],
      [-0.4, 'bum|head|off|on your|tall|the front|through|up'],
      [-0.5, 'breath|breathe in|not|off the|stay|toe'],
      [-0.6, 'hip|knee|leg|press'],
      [-0.7, 'push'],
    ],
  ],
  [
    'push',
    -0.4,
    [
      [1, 'press'],
      [0.8, 'you push'],
      [0.7, 'press it'],
      [0.6, 'bring|knuckle|push'],
      [0.5, 'arm locked|dont let|hand in|it up|locked|out like|so|up there|wrist'],
      [
        0.4,
        'a fist|and bring|and push|at your|band|bend|bent|bring it|dont go|down to|fist|flat on|going up|head through|in slow|jump|lead|lie|overhead|rib down|shelf|squeeze your|straight out|strap|the band|the ring|the window|to the|top|touch',
      ],
      [
        0.3,
        'a chicken|and your|as it|at about|at hip|back down|back to|bar|bit in|both hand|bring the|bring them|ceiling|chest|chest to|chicken|collarbone|deeper|degree|elbow|elbow a|facing the|feet back|finish|five|go overhead|hand straight|head|hip height|into a|it back|it come|it get|it straight|just above|knuckle to|leave the|lock|mate|nearly|next|next to|no deeper|not out|now|one in|other one|over your|plank|pocket|ring|shoulder catch|side of|slow on|so your|stand side|straight|the ceiling|the chin|the door|the elbow|the pad|then bring|tight|till|till the|till your|touch the|turn|window|wrist stacked|you press|your head|your nose|your shoulder',
      ],
      [
        0.2,
        'a bit|a little|a right|a step|a time|a tray|a wee|and hold|and press|and step|ask|away from|back still|bend the|beside your|bicep|big step|board|bottom and|breastbone|breath in|breathing while|bring your|catch|chest down|clock|crush|dont bend|dont lean|down between|down till|drift|drift out|em|empty|eye under|find a|foot in|forty|forty five|forward a|go up|going|got a|half way|hand a|hand at|hand down|hand just|height|hip and|holding a|in as|in at|in front|in going|it away|it into|itll|knee at|knee not|let em|lie on|like an|like youre|limbo|march|middle of|nearly straight|next one|no sagging|nose to|on them|on to|one long|out a|out at|out past|out there|pace|pad|palm forward|pinned|punch|purple|push away|push your|pushing|ring at|ring in|ring to|sag|shoulder away|shove|side on|slip|snap|snap the|so the|squeeze|squeeze the|stacked|stay level|step out|stop there|straight back|tea|teeth|the bar|the bell|the clock|the ear|the pocket|the push|the strap|the work|them up|then drive|thumb|thumb out|top shelf|tray|tray of|turn out|turn the|up again|up till|up top|wee|when your|while|whole way|you hold|you like|your arm|your breastbone|your feet|your forearm|your teeth|your thumb|yourself',
      ],
      [
        0.1,
        'a ring|about a|about forty|arch your|barking|before it|dizzy|do the|elbow at|facing in|find|finished|fist off|five degree|follow your|front foot|front of|in each|it off|it slip|let them|no leaning|on top|one straight|out going|push down|quit|shoving|stacked over|them in|to get|toe pointing|two count|while you|wider than|wrist straight|your eye|your wrist|youre a',
      ],
      [
        -0.1,
        'across the|an inch|and straighten|baby|back|back foot|back into|back start|behind your|big|big toe|bit of|bone|breath out|breathe into|calf|come to|do|done|dont be|dont yank|drop|easy|either|feel the|feel your|fingertip|first|flat|foot|for the|from your|front knee|gently|go out|goe|half|hand and|hear|heel and|heel up|i|if you|in your|into it|it a|its a|keep your|knee down|lazy|leg out|leg up|long band|low|muscle|peel|plenty|put the|rock|seat|should|should be|side|sigh out|sit up|slower than|somebody|spine|squeeze at|stand tall|start to|stretch|swing your|tail|take it|take your|tell|the arm|the box|the low|the other|the weight|three count|tingling|to feel|tuck|tuck your|tug|underneath|until|up off|up on|up the|was|where|you at|you know|youll|your ankle|your back|your belly|your body',
      ],
      [
        -0.2,
        'a straight|about|after|ahead|and|and lift|and lower|and stand|and the|and then|arm|arm long|arm out|as far|away and|back knee|back of|ball|belly button|blood|blood pressure|both feet|breath|breathing|but|button|change|come up|dont drop|dont swing|down out|down the|draw|elbow stay|elbow under|end up|facing front|far as|feet under|finger|float|flop|get|give|give it|hamstring|hand on|hang|heavy|higher|hip|hip up|hold|hold it|if|in to|it down|it open|it ping|its coming|its the|knee to|knee up|knock|know|land|last|lift the|lift your|line|loop|low back|mind|more|no swinging|on a|on it|one hand|onto your|opposite|other|out in|out over|palm up|pick|ping|please|pressure|pretend|puff|pull the|pull your|quiet|rail|shin|shoe|shoulder width|shut|slack|slower|soft knee|some of|start|straight line|straighten|string|swing|than|the belly|the chair|the foot|the heel|the hip|the pull|the toe|there a|they|theyre|till it|tiny|tip|touche your|track|up by|up like|walk|wall|wide|width|yank|you come|you feel|you pull|your|your finger',
      ],
      [
        -0.3,
        'across|and dont|and let|ankle|be|bottom|chair|come|curl|dont|down and|enough|far|feel|full|if youre|is|it go|it in|keep|let the|light|mat|not a|on|onto|out to|over the|put it|roll|short|shoulder down|sigh|soft|some|stand up|swinging|the floor|the mat|then|think|through|too|toward your|turn your|up|you go|you lift|you want|your chest|your knee|your rib|your side|your toe',
      ],
      [-0.4, 'belly|blade|coming|floor away|it|put|shoulder blade|take|tall|the|the back|toe|toward|weight'],
      [-0.5, 'apart|behind|for|high|its|open|sit|that'],
      [-0.6, 'heel'],
      [-0.7, 'knee|lift|long|pull'],
    ],
  ],
  [
    'row-machine',
    -0.9,
    [
      [0.7, 'body'],
      [0.6, 'handle|still'],
      [0.5, 'the seat'],
      [0.4, 'goe|length|seat|the handle'],
      [
        0.3,
        'and the|arm straight|breath|breath in|if you|keep the|leaning|light|moving|short|slide|sort|sort of|the arm|until|you go',
      ],
      [
        0.2,
        'alway|and itll|and its|as slow|before the|bite|bottom of|came|check your|chicken|clock|coming|coming back|do|doe|dont bend|draw the|fast|first|from the|front and|go back|go up|hand and|in on|it should|itll|joint|landing|leg stay|load|nothing|one at|only your|other side|pop up|pulling|room|same speed|shoulder are|sit on|slow as|speed|starting|straight and|the clock|then go|touche your|up before|wing|youre looking',
      ],
      [
        0.1,
        'a time|able|able to|after|after it|arent|at a|be able|belly button|bend the|bone|button|cant|catch|check|curl|dont rush|dont sit|draw|front half|full|get it|goe round|grip|half|half of|heel are|it as|its only|its that|looking|loose|middle of|not on|on the|pause|pop|rest|rib and|rock|rush|settle|shirt|should|should be|should feel|so if|stay down|take a|that the|the hand|the one|the same|then the|then you|tired|touche|when youre|you cant|you stop|your shirt|yourself',
      ],
      [
        -0.1,
        'a bit|again|all|an|and let|at your|away from|back of|back to|bar|behind you|bell|bent|between|blade|blow|breathe|bring|bum|ceiling|chair|chin|come|come up|end|eye|far|feel|feel it|feet flat|front|heavy|height|hip width|hold|hold it|if it|in your|into the|it down|it in|it out|it up|keep your|leave|line|look|low|mat|of|of you|on it|one foot|other|out as|out in|out of|outside|over your|palm|press|push|reach|ring|second|shoulder blade|side|so|soft|somebody|squeeze|stay|the|the ceiling|the mat|the shoulder|the wall|there a|this|three|through the|thumb|tip|to|together|tuck|turn|two|under the|under your|wall|way|way down|way up|weight|where|wide|width|with the|with your|you|your bum|your chest|your elbow|your head|your side|your toe',
      ],
      [
        -0.2,
        'a|about|and|ankle|at|behind|bit|both|breathe out|breathing|can|chest|dont let|each|elbow|feet|front of|going|hand on|head|i|if your|in front|into|is|lean|let it|let the|let your|lift|like a|like youre|lower|of the|on your|one|put|right|stand|the back|the top|there|thigh|till|to the|to your|top|under|up to|walk|whole|with|you can|your hip|your knee|your shoulder',
      ],
      [-0.3, 'floor|for|hip|on|or|pull|shoulder|step|the floor|through|up'],
      [-0.4, 'down|foot|it|knee|like|out|toe|your'],
      [-0.6, 'let'],
    ],
  ],
  [
    'run',
    -0.5,
    [
      [0.7, 'drive'],
      [0.6, 'easy|step'],
      [0.5, 'dont reach|drive the|ground|jog|knee up|land on|quick|run|should|the ground|track'],
      [
        0.4,
        'build|dont sit|dum|elbow back|hold it|land|little|little step|opposite arm|out in|push off|reach|rhythm|shin|short|these|up on',
      ],
      [
        0.3,
        'about|ankle|ball|ball of|belt|belt height|break|build up|cold|cone|could|crisp|da|dont want|ease off|first|hand loose|hop|hot|if youre|jaw|leaning back|let the|line|looking|loose|opposite|over a|pick|puff|say|skip|snap|snap the|straight down|that the|the air|the ankle|the ball|the bend|the first|the foot|the line|the next|these cold|travel|up and|up round|up to|when|when it|you could|your shin',
      ],
      [
        0.2,
        'about your|air|and you|as if|back from|being|can|do|doe|dont look|down like|ease|enough to|facing the|fist|foot and|foot in|for the|get your|go again|go and|grumbling|hand are|hang|hard|hip that|hip up|hold a|i|in and|is a|its about|its the|knee to|lane|lap|late|lean back|leg out|length|long and|look down|looking at|lot|march|not at|off one|or your|other knee|out like|percent|pull them|quiet feet|reach for|round your|running|settle|shoe|short little|shorten|should be|shoulder stay|slow enough|smooth|spread out|stamping|stay on|step in|tell|that turn|the arm|the end|the far|the waist|third|two step|under you|waist|work|yank it|you dont|you land|your cheek|your foot|your little|youre on',
      ],
      [
        0.1,
        'and hang|and out|balance|cross|down under|feet wide|foot down|grass|hamstring|hear|however|it off|pick up|pulled|you stop|your achilles',
      ],
      [
        -0.1,
        'apart|as the|back knee|back of|band|behind|bone|breathe in|ceiling|come|drop|each hand|elbow|eye|fall|forehead|goe|handle|heel and|it goe|knee soft|leg long|let your|low back|mat|middle of|much|on it|operated|pull|round the|shoulder blade|sit|sit back|slower|slowly|squeeze your|straight|that a|the back|the ceiling|the floor|the mat|thumb|tight|top of|toward your|tuck|under hip|your arm|your bum|your calf|your heel|your rib|your side|your thigh',
      ],
      [
        -0.2,
        'a little|an|and back|and if|and keep|and stand|arm straight|as high|away from|bar|between|between your|big toe|both|breathe out|bum|by your|chair|count|dead|down and|feel|feel it|feet flat|feet hip|forearm|good|grip|half|have|heavy|heel|high as|hip|hold|if it|inch|inside|into the|it|it up|keep breathing|keep the|kneecap|let|let go|let it|lift|like somebody|make|neck|nose|of|of the|one hand|one knee|only|onto|out as|out to|outside|over|palm|past|phone|press|put it|rail|roll|round|second|sigh|sit up|slide|small|so|stick|still|stop|stop and|swap|the chair|the feet|the outside|the ring|the seat|the side|the top|them|through the|toe|together|too|top|turn|under the|until|way|way down|weight|width|wrist|youll|your|your chest|your hand|your head|your knee|your leg',
      ],
      [
        -0.3,
        'a|and|away|bell|breathe|chest|door|flat|hand on|into|it down|keep|long|lower|one|out|out on|right|ring|soft|the bottom|the wall|tip|to the|toward|wall',
      ],
      [-0.4, 'back|bottom|by|head|in|leg|put|rib|shoulder|squeeze|the|the way|till|your back|your shoulder'],
      [-0.5, 'dont let|hand|side|that'],
    ],
  ],
  [
    'seated',
    -0.2,
    [
      [1.3, 'seat'],
      [1.1, 'the seat'],
      [0.8, 'sit|sit up'],
      [0.7, 'leg out'],
      [0.6, 'body|nose|now|toe up'],
      [0.5, 'come to|feet flat|not the|that the|through your|while'],
      [
        0.4,
        'and up|as you|be|catch|feet wide|for four|front|handle|hard|heel on|in through|leaning|lift one|nose over|one leg|over your|poke|pop|sit tall|slide|squeeze it|the chair|they|thigh|think of|three to|to be|turn your|weight|were|your elbow|your thigh',
      ],
      [
        0.3,
        'against the|and lean|and look|anybody with|arm long|arm straight|as high|as if|as the|as they|back past|back to|been|before the|bent up|bit in|block|blow|bone|by your|call|chair|chin|clock|come out|corner|count of|curl|cushion|dont poke|drop your|dropping|elbow and|ever|feel|feel a|flat|for your|forward from|forward over|four|from the|front half|goe|gossip|got|grow|half|hand down|hand on|headed|high as|if there|inside of|it go|knock|knock together|lap|lean back|leave the|length|nearly straight|next|not just|nothing|of your|out long|pop it|pull your|purple|round|settle|shoulder catch|sigh|slide your|stay facing|stop at|switch|that plenty|the arm|the clock|the corner|the front|the push|the same|the top|the weight|them back|then go|they dont|thin|this time|towel|tucked|tucked in|under the|up at|up by|up you|walking|want to|we|when youre|wherever|while you|you push|your breath|your knee|youre not',
      ],
      [
        0.2,
        'a little|a tray|above the|again|against|along|and come|and its|and leave|and needle|and sit|and youre|any|apart|are thin|arent|arm crossed|at all|at the|back and|back off|because if|below the|bend it|blood pressure|boat|bone are|bottom to|breastbone|breath|by|chin out|circle|collarbone|coming|completely|count|couple of|cross|crossed|dont do|down by|down into|down through|draw your|each other|easy|elbow back|empty|facing|facing front|feel the|feeling|feet back|feet in|first|five|five degree|flopping|foot flat|for one|for six|for two|forward|forward again|go completely|go soft|goe up|goe with|half of|hand as|hand stay|have|heel are|heel down|hold on|in for|in there|it and|it goe|it over|its own|joint|knee only|knee stay|knee straight|lead|leg|light|light on|load|long by|look for|middle of|muscle|nearly|needle|nerve|new|nose for|not in|of three|of you|other|other knee|other one|over it|pace|palm facing|pedal|pin|pin and|pointing|pointing at|poke your|pressure|pretend there|proud|pull not|reach back|rest|rock|roll out|rolled|round the|round to|rounding|sat|shelf|should feel|sigh out|slump|squeezing|still|string|swing|swing your|take a|take three|that knee|the chest|the foot|the good|the one|the out|the thigh|the towel|then sit|then the|there for|there is|think|those|tingling|tip|tip forward|to let|to the|told your|top shelf|tray of|tucked back|up tall|upright|way as|way out|width apart|with a|you like|you pull|you should|you turn|you were|your blood|your bone|your leg|your nose|your palm|your pocket|your toe|your tummy|your waist|your whole',
      ],
      [
        0.1,
        'a second|all the|and it|and tell|back until|be a|because|blow it|breathing while|bring them|chest to|coming back|disc|dodgy|doing the|dont curl|dont rock|down as|each one|edge|feel that|feet and|feet tucked|flop|for nick|forty|forty five|forward till|front edge|get it|get up|grow tall|had|head up|heel tucked|height and|holding your|if youve|its that|jammed|just your|keep it|knee not|let that|mate|middle|nick|not jammed|one knee|other way|out for|plate|pretend|push it|put it|run|shoulder down|sit on|six|some of|sort|sort of|strain|tall|that what|the handle|the room|the sore|the work|till the|up toward|up your|waist|wee|while its|working|you had|youd|youll go|your breastbone|your calf|your chin|youre putting|youve got',
      ],
      [
        -0.1,
        'a pillow|about a|about your|achilles|and not|and pull|around|as it|back leg|back like|back of|back start|bell at|between the|bouncing|break|breathe into|calf|carrying|centimetre|cheating|come in|come up|coming down|creep|creeping|do it|dont just|dont look|dont sit|down like|draw it|drive the|drop the|dumb|dumb bell|every time|far wall|feet on|feet together|find|find a|fine|fingertip|foot down|front foot|get a|getting|go heavy|going down|going up|hand are|hand at|hand finish|hold|in your|it let|it want|ive|just off|just outside|keep hold|kick|knee come|knuckle|leg up|like the|like there|little toe|look down|looking at|mean|much|neck|not out|of the|off it|on top|one up|out coming|out wide|outside your|palm up|push|push off|quiet|rack|roll back|roll to|side and|slack|slide down|small of|standing|start|stay straight|step back|step out|swap|swinging|than that|than you|that back|that cheating|the bell|the box|the bum|the head|the low|the rack|the small|the wall|the whole|the wrist|these|thirty degree|three count|through and|thumb pointing|till its|toe out|touching|track|up through|upside|upside down|way home|whole|whole way|you at|you lift|youll be|your achilles|your armpit|your eye|your neck|youre carrying|youve gone',
      ],
      [
        -0.2,
        'a chair|a foot|and all|and back|and draw|and hold|and let|and lift|and lower|and your|ankle|are|arm are|arm by|as low|as your|asleep|at chest|at you|back as|back heel|back knee|back up|ball|beat|bench|bending|between|bounce|box|brake|breathe|bring the|can|car|change|cheek|chest|chest height|click|close to|come off|cramp|crisp|dont arch|dont tip|dont yank|down|down in|down with|drive|end up|eye on|face the|facing the|feet a|flat on|float|foot and|foot back|foot in|foot on|for the|forearm|from it|gently|get your|give|go again|go as|go on|gone too|grip|ground|hand about|hand by|hand just|head|head through|hear|heel as|heel stay|here|higher|higher than|hip back|hold the|if it|if its|if the|if they|in going|in one|inch|instead|into a|it doesnt|it like|it open|it straight|jog|keep breathing|knee in|knee over|knee soft|knee up|kneel|knot|know|land on|lean in|leg goe|lift|locked|long breath|low as|lower it|march|no swinging|not at|not your|of one|off and|off your|on your|one|or it|other foot|out at|peel|pinned|rail|roof|shove|side on|sideway|slide it|slow|slower than|sock on|soft knee|spot|spread|squeeze the|squeeze your|stacked|stand on|stand tall|straight down|stretch|tailbone|take the|that how|that leg|the back|the ball|the band|the belly|the big|the far|the feet|the ground|the hand|the kneecap|the outside|the rib|the roof|the shin|the way|thirty|this one|three second|through it|till it|tiny|to a|to it|to your|toe away|too far|toward|toward your|tree|tuck your|tug|two|two second|under hip|under your|until|up a|up and|up over|was|watch your|way up|weight on|went|where|whole foot|wobble|wobbling|yank it|you and|you press|you went|your ankle|your backside|your belly|your forehead|your left|your low|your right|your tail|your weight|youre going|youve a',
      ],
      [
        -0.3,
        'a moment|about|air|an|an inch|and stay|and then|arm out|armpit|away from|back foot|backside|behind your|big toe|bit|bum|come down|door|drift|end|every|fold|forehead|forward and|front knee|get there|gone|grab|hand under|heavy|heel up|hip up|i|in on|it a|knee to|knee under|leg long|let go|lie back|little|long band|low back|moment|not|off the|on a|out like|outside|over the|pillow|pinch|press|press it|pull it|rib down|ring at|send|shoulder width|stick|stop and|straight|tail|take|take it|the ankle|the bar|the door|the heel|the leg|tight|to go|too|touch|under shoulder|walk your|wider than|width|you can|your heel',
      ],
      [
        -0.4,
        'back|big|both|both hand|feel it|finish|fist|into|it in|it off|knee and|land|let your|lie|like a|line|no|on it|one foot|only|onto your|open|other leg|quick|small|stand up|straight up|than|the ring|the shoulder|thumb|your bottom',
      ],
      [-0.5, 'band|bar|close|elbow|going|let the|onto|ring|wall|you dont|your back'],
      [-0.6, 'bell|belly|hip|it out|like|stand|walk'],
      [-0.7, 'height|low|off|your hip'],
      [-0.8, 'foot'],
      [-0.9, 'lower'],
      [-1, 'step'],
    ],
  ],
  [
    'side-lying',
    -0.9,
    [
      [0.7, 'lift your'],
      [0.6, 'elbow under|roll|side|top|under your'],
      [0.5, 'bottom|dont roll|stacked|waist'],
      [0.4, 'feet stacked|knee bent|lift|on top|roll back|your shoulder'],
      [
        0.3,
        'about a|bent|do it|floor away|hip and|hip forward|hip till|in line|line|line with|onto|onto your|side of|steady|the side|under|underneath|your hip|your side|your waist',
      ],
      [
        0.2,
        'come down|do|dont sink|down the|higher|if that|off it|out behind|sink into|stack|till youre|your nose|zip',
      ],
      [
        0.1,
        'a pillow|and do|another|armpit|away with|backward|bump|come off|face the|for one|for two|grumble|hand width|higher than|hip are|hip up|its about|kissing|open the|push the|roll forward|rolling|shove|sink|that shoulder|you and|you open|your right',
      ],
      [
        -0.1,
        'a bit|again|an|and let|back of|bar|before|before you|behind you|bell|belly|blade|blow|chair|chin|come up|coming|dont|down|drop|each|end|far|feet flat|goe|going|hand|heavy|heel|height|hip width|hold|if it|if you|if your|in your|it in|it out|its|lean|leave|let them|look|no|of|off the|out as|out of|out on|outside|over your|press|quick|reach|ring|same|seat|second|shin|should|shoulder blade|slide|so|squeeze the|start|stay|stop|the chair|the leg|the mat|the rib|they|thigh|three|thumb|tip|to|to the|turn|walk|way up|weight|when|where|wide|your bum|your ear|your elbow|your heel',
      ],
      [
        -0.2,
        'arm|as you|be|bend|big|bit|both|breathe out|bring|by|feet|finger|if|in|knee|let it|level|like|like a|little|low|lower|mat|middle|not|on it|only|palm|please|pull|put|sit|slow|soft|squeeze|stand|tall|the back|the front|the knee|the middle|the way|them|to your|tuck|way|whole|wrist|your|your back|your head|your toe|youve',
      ],
      [-0.3, 'and|as|at the|flat|in the|it|let|of your|on the|rib|step|then|up|you|your knee'],
      [-0.4, 'a|at|go|just|the'],
      [-0.5, 'out|toe'],
      [-0.6, 'back'],
    ],
  ],
  [
    'single-leg',
    -0.4,
    [
      [0.5, 'behind|behind you|chair|foot off|gate|one hand|side|standing|the chair|the other'],
      [
        0.4,
        'forward|hand on|hanging|inch|knee soft|off the|other leg|out to|outside|outside leg|pick|pick a|sideway|together|weight on',
      ],
      [
        0.3,
        'a string|and bring|as it|edge|fence|fingertip|fingertip on|floor|foot|forward till|from it|grab|hanging off|hop|just a|knee straight|lean away|leg out|let it|little toe|near hand|on it|on to|right leg|second toe|side on|soft|something|something that|stand|stand on|start|the floor|the little|the outside|the standing|till the|your second',
      ],
      [
        0.2,
        'a good|a knee|an inch|and back|and even|and straighten|and turn|any|as wide|asking|back pocket|belt height|big toe|bring your|bucket|caving|chair back|cheating|cramp|diving|doesnt|dont get|dont lean|down by|drive up|eye|eye on|eye up|facing|find a|fine|float|float the|follow|follow your|foot just|forward from|front heel|get a|go out|goe|halfway|have to|hear your|hook|if its|in one|isnt moving|it for|it till|it with|its just|its not|its there|knee a|landing|leave it|let one|little breath|look like|loose|me|mean|near|nice and|nip|one foot|onto|opening|other|other foot|out behind|out of|pad|paint|right down|rushing|second to|set it|slow down|soft knee|stand tall|standing knee|stay there|stick|stop when|straight at|straighten it|string|swing the|swinging|t|tall on|that hip|that isnt|the backside|the hip|the pad|the side|till there|tipping|to lower|to touch|toe at|too|top of|tummy|up behind|wee bit|weight|where your|wide as|with both|your left',
      ],
      [
        0.1,
        'a foot|and stare|at something|back in|change|dont lock|finger on|forward and|gently|hip forward|inward|it catch|it get|it there|just off|move|one up|or a|out sideway|stare|stare at|swing|that knee|the ankle|toe and|up by|way home|yank it',
      ],
      [
        -0.1,
        'a big|a tightrope|ahead|air|and down|and lower|apart|as high|as you|back down|back leg|back to|bar|before you|belly|bend|between your|blade|blow|bouncing|chin|come out|come up|coming up|count|draw|end|feet flat|feet hip|foot back|get|go up|going down|got|hang|heavy|heel down|heel to|high|high as|if that|if there|into the|knee bent|lean back|lean in|leg long|leg up|let them|let your|like|like youre|line|not the|of your|onto your|opposite|other knee|palm|past|push|shoulder blade|sit up|the arm|the chest|the elbow|the way|this|through your|thumb|tightrope|time|toe up|toward the|track|until the|up tall|without|you go|your belly|your chest|your ear|your elbow|your feet|your rib',
      ],
      [
        -0.2,
        'a bit|above|across|and keep|and stand|as if|as your|away|back foot|back heel|band|before|behind the|bent|between|breath|bring the|bum|by the|can|come down|coming|deep|deep in|door|ear|feet under|first|for the|forearm|front of|going|heel and|hip width|hold it|how|i|if your|in|in your|keep it|let the|light|low|middle of|more|much|neck|no|not|of|of you|out|out in|press|quick|reach|rib|roll|round|should|sigh|slide|slow|squeeze|stay|step out|stretch|than|than you|that what|the heel|the mat|the middle|the seat|the shoulder|the whole|them|then the|thigh|tight|till its|to|to your|under the|up|up and|up to|want to|way|way down|what|width|wrist|your arm|your leg|your shin|yourself',
      ],
      [
        -0.3,
        'about|again|are|as|back|be|calf|feet|for|front|go|into|know|mat|nose|or|push the|seat|straight|the|then|through|under your|up on|want|whole|with|you know|your|your hand|your knee|your toe',
      ],
      [-0.4, 'and|in front|on a|over your|pull|walk|with your|your shoulder'],
      [-0.5, 'chest|elbow|flat|long|shoulder|sit'],
      [-0.6, 'arm|under'],
      [-0.7, 'come|down'],
      [-0.8, 'step'],
    ],
  ],
  [
    'sit-to-stand',
    -0.7,
    [
      [0.8, 'nose'],
      [0.6, 'nose over|your toe'],
      [0.5, 'over your|second|stand|the front|tucked|tucked back'],
      [0.4, 'and stand|blow|chair|edge|next|of you|push the|seat|you come'],
      [
        0.3,
        'a hand|and up|blow out|count|dropping|feet back|feet tucked|floor away|forward over|front edge|heel tucked|knock|off it|one hand|pretend|pretend there|second toe|sit|sit back|the chair|the joint|the seat|there a|to get|up you|width',
      ],
      [
        0.2,
        'against|against the|all the|and i|and sit|apart|away and|back a|back down|back under|before the|car|clock|count of|dont rock|down through|each other|egg|four|get up|goe over|half of|heel a|holding|holding your|joint|keep a|knock together|no holding|of three|on top|push down|push through|reach back|rock|run|same way|settle|shuffle|sit down|so it|ten|that what|the clock|the same|the wall|then sit|there for|three|three to|through your|to sit|together|tuck the|under you|way as|what|when youre|you stand|your breath|youre standing',
      ],
      [0.1, 'and if|fall|it is|stand up|wait'],
      [
        -0.1,
        'ankle|as|at your|back of|band|bar|behind you|belly|bent|big breath|big toe|blade|breathe in|by your|do|dont let|ear|far|feel|feel it|from the|hand|hang|heavy|height|if that|in your|into the|it in|it up|jump|keep|keep breathing|look|mat|neck|not|not a|on your|one foot|other|out of|outside|palm|quick|ring|shin|shoulder blade|slide|start|tall|that|the mat|the middle|the nose|the shoulder|the side|thumb|to|toward your|turn|up and|walk|wide|with the|wrist|you|you should|your arm|your back|your ear|your elbow|your rib|your side',
      ],
      [
        -0.2,
        'an|and|arm|back|bell|bend|between|between your|breath|breathe|breathing|bring|can|chest|coming|drive|drop|end|foot|from|high|if|it down|its|leg|let|let your|lift|like|like youre|lower|of|off|on the|only|or|rib|roll|round|side|slow|soft|still|than|the hip|the other|to your|toward|up on|want|you can|your chest|your hand|your shoulder|youve',
      ],
      [
        -0.3,
        'about|big|by|dont|elbow|flat|go|hip|into|it|just|long|of your|off the|on|one|pull|shoulder|step|straight|the back|up|your|your hip|youre',
      ],
      [-0.4, 'a|in|out'],
      [-0.5, 'the'],
    ],
  ],
  [
    'spine-extension',
    -1,
    [
      [0.7, 'forehead|forehead down'],
      [0.6, 'belly|knee under'],
      [0.5, 'and round|breathe in|float|round up|your front'],
      [0.4, 'ahead|belly drop|chest|chest and|crank|hand under|head|in as|low back|round|the breath|the head'],
      [
        0.3,
        'a pinch|and look|away and|cat|chest forward|chest up|crank your|end|hand by|lift your|like a|low|mat|neck|no rush|of a|pinch|pinch in|reach|reach for|rush|the mat|under hip|up like|wall|you come|you lift',
      ],
      [
        0.2,
        'ahead of|and if|and knee|and peel|and the|and your|by your|come down|coming down|dont crank|feel a|floor away|go down|head back|hurry|in and|isnt|like the|lock|press down|pushing|squeeze your|stay down|tail|the end|you go|your head|your low|your neck',
      ],
      [0.1, 'arm long|between the|eye on|hand and|last|start|the belly|the chest|your belly|your bum'],
      [
        -0.1,
        'a bit|ankle|back|back and|bar|bell|bent|between your|bit|blow|can|chair|door|down|feet flat|first|front of|get|half|hand|hang|hip|hip width|hold it|if the|if your|in front|it|leg|let|let them|level|of|of you|on|on it|one foot|out in|out of|out on|outside|over the|over your|pull|ring|same|seat|shin|should|the back|the bottom|the front|the heel|there a|they|three|tip|to|toe|top|toward your|way down|way up|weight|where|width|with the|youll|your feet|your heel|yourself',
      ],
      [
        -0.2,
        'all|an|and|at your|away from|band|bend|bottom|bring|do|dont|ear|facing|feet|from|goe|hand on|in the|into the|it in|its|keep breathing|lean|like youre|line|nose|not|of your|off|on the|or|right|roll|second|slide|stand|step|stop|straight|take|tall|than|the hip|the knee|the other|the top|the way|them|thigh|through|thumb|to your|turn|walk|when|with your|wrist|your hand|youve',
      ],
      [-0.3, 'are|at|chin|dont let|foot|hold|if|into|other|rib|side|sit|there|till|toward|way|your knee'],
      [-0.4, 'heel|knee|over|slow|then|with|youre'],
      [-0.5, 'one|your'],
      [-0.6, 'that|the'],
    ],
  ],
  [
    'spine-flexion',
    -0.5,
    [
      [1, 'heavy'],
      [0.7, 'head|round up'],
      [0.6, 'behind|behind your|belt|knee up|let go|your knee'],
      [0.5, 'belly|belly drop|cat|elbow wide|if youve|on your|the head|wide'],
      [
        0.4,
        'and roll|and round|come up|curl|go heavy|hand behind|knee under|other leg|shoulder up|the belly|the breath|upside|upside down|your head',
      ],
      [
        0.3,
        'again|ahead of|and just|and knee|away and|back the|backward|big toe|blood pressure|breathe out|dont yank|elbow are|eye|flapping|floor away|for the|forehead|going to|hand over|haul|heel and|hug|if that|it is|knee bent|need to|nice|no swinging|peel your|pressure|roll|roll back|room|send the|sit|sit back|small|small of|so if|the long|the shoulder|the small|then let|there a|thing|tuck your|up off|way you|when youre|yank on|you came|youre not',
      ],
      [
        0.2,
        'a baby|a time|and itll|and look|and lower|and walk|are straight|arm long|arm out|asleep|at a|baby|baby asleep|back between|between your|blood|box|breathe in|breathe into|came|cant|centimetre|change|cranky|disc|dodgy|dont drop|dont just|elbow out|every|eye up|feet flat|fine|fold|get heavy|go again|got a|had|hand and|hand are|hand out|hand under|im|imagine|into the|it from|it stay|its your|just let|knee apart|knee come|know|leg long|let the|lie on|like its|neck|need|nobody|out and|over on|pedal|puff out|send|sit this|spin|stop at|stop where|stretch|swinging|tail|that knee|that turn|the mat|them in|there and|till your|tiny|trouble|tuck|under hip|under there|up like|upright|where it|where your|you know|your back|your belt|your elbow|your eye|your hand|your heel|your rib|youve|youve got|youve had',
      ],
      [
        0.1,
        'armpit|back on|bent|bum back|clench|clench your|dont clench|dont haul|haul on|head height|instead|knee and|knee in|like there|mat|no rush|out through|over a|right down|rock|round your|rush|side to|spread|the neck|to side|up toward|walk your|where|while|your armpit',
      ],
      [
        -0.1,
        'a bit|about a|above|across the|all the|and stand|arch|arm by|around|at|at your|away from|backside|because|bring|by the|by your|chair|circle|cushion|do it|dont arch|dont lean|down on|drift|drive|each hand|elbow back|face|feet hip|feet on|first|gone|grip|half|home|in each|inside|into it|jump|kneecap|let them|lift the|lower it|of a|other foot|out like|pick|pinch|please|press through|push your|put|put it|seat|shoe|shoulder and|sink|squeeze the|squeeze your|stacked|stand up|stay on|straight line|swing|the band|the chair|the feet|the knee|the middle|the nose|the opposite|the ring|the seat|the toe|the top|the whole|them down|think|three|top|top of|tucked|under the|up the|up to|wall|with your|you feel|your bottom|your finger|your left|your wrist|youre|youre a',
      ],
      [
        -0.2,
        'a big|and lift|ankle|as you|as your|band|bell|belly button|below|bend your|by|calf|do|dont|down and|drag|draw|ear|easy|elbow under|fall|feel|feel it|feet under|five|float|floor|forearm|four|from your|front of|hard|heel up|higher|hip stay|hold it|holding|i|if the|in a|in through|it out|keep breathing|land|left|leg|leg up|length|lift your|light|like youre|make|me|middle|not a|of|on it|one foot|one hand|onto|onto your|opposite|other|out to|outside|over your|palm|pointing|pull the|round the|same|second|short|sit down|somebody|sore|squeeze|stay facing|stick|take your|than|the bar|the front|the hand|the heel|the leg|the rib|the thigh|the wall|then|thigh|think of|through the|to|to about|to get|toe|too|towel|turn|turn your|two|under your|until|up tall|want to|weight|when you|with the|wrist|you|your nose|your right|your toe',
      ],
      [
        -0.3,
        'a|about|arm|as it|away|bar|before|before you|bend|bit|both|breathing|button|chin|coming|door|feet|goe|hand on|if|if it|if your|if youre|in|in the|it come|it in|it up|lean back|line|of you|off|on the|push|quick|side|slow|stand|stay|still|take|that|to the|up|whole',
      ],
      [-0.4, 'all|come down|dont let|facing|front|heel|lift|nose|of the|press|step|straight|tall|thumb|with'],
      [-0.5, 'foot|it|lean'],
      [-0.6, 'one'],
    ],
  ],
  [
    'spine-rotation',
    -0.6,
    [
      [1, 'turn'],
      [0.7, 'turn your'],
      [0.5, 'across|as far|far|left|you turn'],
      [
        0.4,
        'and turn|arm|armpit|breathe into|hug the|its not|its your|middle|one side|rib|side|side of|thin|to one|turning|up over|your rib',
      ],
      [
        0.3,
        'back foot|been|bone|come out|crank|far as|hand behind|hip stay|hug|in and|it down|knee in|make it|not just|not your|on both|other leg|other way|out like|right|shoulder and|sideway|sit|spin|stay|stay facing|stay up|t|taller|the elbow|up by|with it|your arm|your left|your right',
      ],
      [
        0.2,
        'across to|and itll|and let|and the|are thin|arm out|around|back till|been told|behind your|between the|bone are|both end|caving|chest to|crossed|dont be|dont get|down slow|down with|elbow wide|ever|every|feet flat|flapping|follow|follow your|go as|head|head come|heel down|hiss it|if youve|it again|it slowly|just your|know|let you|let your|never|of them|out the|palm up|pointing at|puff|puff out|right arm|right hand|round to|shoulder up|sit tall|sit up|slide it|slowly|stance|switch|take your|that knee|that turn|the left|the middle|the opposite|the other|the rib|the right|the side|the weight|the window|told|told your|toward the|underneath you|waist|weight in|window|you know|your armpit|your bone|your chest|your head|your neck|your waist|youre done|youve been',
      ],
      [
        0.1,
        'bit wider|breastbone|dont push|get there|hiss|keep them|knee are|opposite|over to|push it|same side|skip|they dont|tip over',
      ],
      [
        -0.1,
        'all the|and back|and bring|at the|at your|away from|back down|back of|backside|band|bar|be|bell|bend|body|button|ceiling|close|count|do|dont lean|drive|feel the|feet under|floor|heel and|high|hip width|hold it|if it|it|it back|it in|it up|keep breathing|let go|line|nice|on the|one foot|one hand|onto|other foot|out in|pinch|pull your|push|push the|put|second|should|so|swing|than|the back|the bottom|the ceiling|the heel|the hip|the wall|there a|three|till|together|tuck|under|up on|way up|when|with your|your bum',
      ],
      [
        -0.2,
        'a|an|and|ankle|apart|before|before you|belly|bend your|between your|blow|blow out|bottom|breath|breathe in|breathing|bum|chin|dont|drop|elbow|feel|finger|foot|forearm|from|front of|hang|height|in front|in the|inch|little|low back|nose|off|off the|on a|out to|roll|shin|sore|squeeze|still|stop|the front|the leg|the ring|the way|thumb|tight|to your|too|toward your|two|up to|wall|width|wrist|you|you can|you dont|your chin|your feet|your heel|your shoulder|your side|your thigh',
      ],
      [
        -0.3,
        'all|at|back|big|bring|dont let|down|front|heavy|heel|hold|leg|let it|level|lift|no|of the|on|one|press|ring|stand|thigh|your|your hip|youre',
      ],
      [-0.4, 'forward|lower|soft|step|the|there|toe|up'],
      [-0.5, 'away|feet|in|of|straight'],
    ],
  ],
  [
    'squat',
    -0.3,
    [
      [1.1, 'sit|sit down'],
      [0.8, 'straight down'],
      [0.7, 'second|toe|width'],
      [0.6, 'back knee'],
      [0.5, 'chair|dive|drive|feet a|floor|follow|its the|knee straight|middle|over your|thigh'],
      [
        0.4,
        'a chair|a fist|and breathe|and down|and up|back flat|back heel|down between|drive up|front knee|hand off|hip and|hip width|it dive|joint|knee go|loop|meat|middle toe|nearly|out over|press through|safety|stand|that should|the meat|three|through your|up through|your heel|your toe',
      ],
      [
        0.3,
        'after|and not|and stand|apart|blow|bottom|but|click|clock|come up|crease|deep|dive in|dont rock|dumb|dumb bell|edge|fall|feet|feet back|feet shoulder|fist|fist off|foot forward|heel stay|hold the|hook|hurt|i|if they|in on|it in|keep it|knee are|knee follow|nearly straight|next one|nose|nose over|not on|not the|of a|pin|push the|second toe|should be|shoulder width|side to|snap|squat|stance|step out|stop a|straight up|take three|the clock|the feet|the floor|the thigh|the wall|theyre|three to|to side|to sit|to you|toe turned|together|top of|tucked back|turned|turned out|up you|wider|you stand|your knee',
      ],
      [
        0.2,
        'a good|a wee|about thirty|about to|above|above your|after it|and hip|and i|and sit|armpit height|as deep|at about|back in|bar on|behind you|bent up|big breath|bit|bit wider|blood pressure|can go|can see|carpet|check|chest and|chest tall|crease of|deeper|dont fall|dont look|down into|down to|dropping|each other|fall in|feel it|feet hip|feet on|flat as|floor away|follow the|follow your|foot out|forward over|front edge|front foot|front thigh|get up|go and|go as|go out|got a|grinding|half of|hard part|heel tucked|hip that|holding|i can|into a|it and|just a|kissing|knee apart|knee stop|knee that|kneecap|knock|knock together|leave the|let them|ligament|little wider|low|low as|meat of|middle of|my|neck bone|next|of you|one in|other one|out a|outside of|past the|point|pressure|proud|rock|send your|should feel|shuffle|side of|sit back|sit straight|sit your|some of|talking|the carpet|the end|the hard|the joint|the kneecap|the neck|the same|the second|the toe|the whole|then up|theyre not|thigh and|thirty|those|till youre|to come|to hear|touch|tucked|two second|two step|up taller|wait|want the|way down|wee|wee bit|weight in|you are|you come|you get|your ankle|your middle|your thigh|youre about|youre past',
      ],
      [
        0.1,
        'a long|a touch|against|against the|and that|apart with|both feet|down as|down toward|end up|feet tucked|four|heal|heel are|heel up|i want|in it|into it|its coming|knee point|like youve|lowest|of three|pushing|second down|so its|stand up|stay down|than the|that what|then sit|toe out|tuck under|way as|you sit|your heal|your lowest|your second',
      ],
      [
        -0.1,
        'able|able to|across|all|and back|and lift|and lower|and you|anybody|as it|ball of|be able|bent|blade|body|breathe|breathe out|bring it|by|catch|chest height|come down|come home|coming|coming down|do|easy|every|every time|feel your|finger|first|float|forearm|forehead|from your|hamstring|heel to|high|hip up|in and|in as|in going|in one|is a|it should|just off|keep your|knee up|lean|lean in|leg long|leg out|length|lift your|like youre|line|lock|locked|mat|no|not your|operated leg|or your|out on|pause|pillow|quiet|right|round the|shoulder blade|shoulder down|side on|sigh|slow as|slower|slower than|squeeze the|squeeze your|stand tall|start|stay on|tap|that knee|the air|the arm|the breath|the calf|the nose|the one|the other|the rib|the shoulder|the step|the weight|then stand|think|till its|until|up in|up toward|walk|watch|with it|you pull|your chest|your elbow|your hip|your nose|your shoulder|your wrist|youre a',
      ],
      [
        -0.2,
        'air|an inch|as high|back|back at|back foot|ball|bell at|between the|both hand|breathe in|bring|by the|close|cramp|dont go|dont lean|ease|elbow|face|facing|facing the|feet flat|feet together|fingertip|five|flat|flop|for|for three|from the|front leg|front of|give|goe|grab|grass|grip|hand|high as|home|if that|if the|in|in the|inch|into|into the|it|it back|it down|its|its not|just|knee down|lean back|leaning|left|let|lie|lift the|little|loose|moving|of the|off the|on the|one|one knee|onto your|open|opposite|or|other knee|other leg|out in|palm|press the|pull your|rep|roll out|short|shove off|sit up|slow|somebody|stacked|still|straighten|string|swap|swing|that foot|the elbow|the grass|the hand|the hip|the leg|this|to|toe up|toward your|towel|turn|up|where|where you|with|with the|without|you go|your back|your ear|your head|your rib|your shin|youre',
      ],
      [
        -0.3,
        'a|again|an|and|arm|back of|bend|big|big toe|calf|doesnt|dont|from|hand on|hang|head|knee stay|let the|like|long|of|only|onto|out|pull|put|quick|roll|rolling|round|shove|stay straight|tall|the foot|thumb|tip forward|to your|toward|under|wrist|you want|your|your arm|your hand',
      ],
      [-0.4, 'breath|ear|heel and|lift|off|on|shoulder|squeeze|the|the back|up on'],
      [-0.5, 'lower|rib|soft'],
      [-0.6, 'on your'],
      [-0.7, 'leg'],
    ],
  ],
  [
    'standing',
    0.1,
    [
      [1.2, 'stand'],
      [1, 'step'],
      [0.7, 'foot|height|lean|pull it|sit down|stand up|the wall'],
      [0.6, 'band|feet under|gently|quick|three|you dont'],
      [
        0.5,
        'and let|and stand|arm are|bell|both hand|chair|door|it with|knee soft|on it|one foot|rail|same|soft|stick|take|the band|the door|up on|walk|wall|with the',
      ],
      [
        0.4,
        'apart|at your|bar|belly button|button|car|chest height|come up|facing|finish|from it|heel|hinge|hold|if youre|it a|it in|jog|land|nobody|one hand|other foot|out to|outside|pocket|press it|pull|soft knee|tall|the big|the rack|them down|through|to it|tug|up to|your head',
      ],
      [
        0.3,
        'a beat|a car|a chair|about your|achilles|and lower|and pull|and stay|as a|as your|at chest|back a|back as|back foot|back heel|back like|backside|bang|beat|bend|big|bounce|break|click|dive|dont fold|dont lean|down a|facing the|feel it|feel the|feet a|find a|flat on|fold|foot in|going|got|hand at|here|hold on|hook|if they|in your|it if|it into|it like|it open|it out|just outside|keep your|knock|knot|land on|lean away|lean back|level with|like you|like youre|little toe|long again|lower|lower it|metre|nose over|nose to|not|of you|on to|open|other leg|out as|out over|pick|pull the|push off|put your|rack|rib down|rise|set|shoulder height|shrug|side on|sideway|slack|slowly|some|stay straight|than|the ankle|the bell|the rail|the same|the stick|thumb pointing|to touch|toe|track|tree|under you|up through|wait|way back|wider|wobble|your bottom|your breath|your foot|your shin|your time|your toe',
      ],
      [
        0.2,
        'a pause|a pencil|a shoe|a walnut|an ironing|an old|and one|and squeeze|and up|are|are long|are straight|arm and|armpit|as|as it|as wide|asleep|at|at shoulder|back down|back flat|back from|back pocket|back under|back until|back up|ball|bar at|bar on|behind|bell at|big step|big toe|bit wider|bottom out|bow|bring|bring the|bring your|brush|brush your|build|build up|bus|but|by|by the|can keep|car door|cave|cave in|chin tucked|cold|coming back|creep|da|dive in|diving|do these|doing|dont let|dont look|dont push|dont reach|dont shrug|door with|down at|down by|down under|drive|drive up|drop it|ease it|elbow|elbow just|every|every rep|facing forward|feet in|feet on|find|flat as|fold in|foot and|foot back|foot down|front edge|front knee|front of|get a|go overhead|goe over|good|got a|grab|ground|grumbling|hand are|hand finish|hand flat|hand up|head through|heel a|heel stay|hike|hip back|hip width|hold a|hold your|holding|hop|i|inward|it back|it dive|it fall|it off|it up|its coming|its tight|its up|just under|keep|keep breathing|keep hold|kiss|kissing|knee and|knee goe|leaning back|leave|leave it|level|like|little|little step|march|meat|meat of|middle toe|mind|mind your|mirror|most|my|next|not in|not on|not up|of a|off one|off your|old|on hip|one heel|out at|out in|out wide|outside the|overhead|paint|palm forward|palm up|pass|past your|pencil|pinned|pointing|properly|pull them|push your|put|put one|quick up|race|rep|rhythm|ride|right up|same way|second toe|send your|shutting|slapping|slow on|slower than|small|snap|something|something that|spot on|spring|stand tall|standing|standing knee|stay there|step out|stiff|stool|stop and|straight|straight down|swap|take the|take your|talking|than you|that it|that what|that where|the chair|the front|the joint|the meat|the mirror|the neck|the next|the outside|the pull|the rib|the slack|the top|them up|then stand|these cold|theyre not|thigh level|thirty|three count|tight|till it|till its|till you|to lower|too heavy|touch|travel|tucked back|turned|turned out|two|underneath you|up and|up as|up you|walk back|walk the|weight|what|what its|when your|whole|whole foot|whole way|wide as|width|with both|wrist straight|yank it|you|you rise|you wobble|youd|your achilles|your ankle|your backside|your hip|your little|your middle|your shoe|your weight|youre holding|youre on|youre shutting',
      ],
      [
        0.1,
        'a coffee|a half|a race|a tug|a wall|against|an inch|and lean|and not|and that|and then|and tuck|and wait|are only|as deep|as you|back|belt height|bottom rib|can go|carrying|chair and|change|come in|coming up|cone|crack|creep up|crisp|dont|dont go|dont just|dont sit|dont want|down first|down to|drag|drive the|fall|feet hip|finger on|foot on|for this|for three|get your|going up|half|hand apart|hear|heel to|heel up|hiss it|hold of|how|if your|im|in one|inch|into a|ironing|ironing board|isnt moving|it|it again|it between|it touche|its only|its there|its too|just below|keep that|knee go|knee point|lane|leaning|let|let it|let them|let your|like it|limbo|locked|look down|neck bone|nerve|nose|on one|on you|one and|one in|only a|or youve|out coming|outside your|palm|pause|pencil between|point|quiet feet|reach back|rolling|safety|same as|shin or|shoe|short|shoulder dont|showing|shutting a|slower|smooth|snap the|square|squeeze your|stance|stand on|stand right|stay down|step back|stuck|take a|tall on|that|that foot|that isnt|the foot|the ground|the step|then bend|then bring|third|thirty degree|through it|till your|to get|to round|toe out|toe turned|train|train track|two step|up till|walk tall|was|wider than|window|with it|you are|you at|you can|you lean|you pull|you stand|youll feel|your forehead|youre carrying|youre in',
      ],
      [
        -0.1,
        'a pain|a straight|a wee|about a|ache|along|and it|and youre|any|are creeping|are thin|arm long|arm out|as the|at you|away and|back on|below the|bench|between the|between your|bit more|boat|bone are|bottom to|breathe in|breathing|bring them|bum|bump|can|catch|cheat|chest up|circle|corner|couple of|crush|done|dont be|dont rush|down for|down out|down till|drift out|drive your|drop the|each one|ease|enough to|feet stacked|fist off|float|follow your|foot flat|for it|for the|forward till|from|from the|front half|further|go back|go on|half of|hand and|hand behind|head down|heavy|hip forward|hip stay|hitching|hug the|if that|imagine|in and|it doesnt|it is|it should|it smaller|ive|jammed|joint|kicking|let that|lie back|like its|little breath|long band|loop|lower till|make it|nearly straight|need|next to|no more|not jammed|one arm|one line|one side|other way|out a|over it|pace|palm facing|peel|pinch|plate|please|press the|reach|right arm|ring up|sagging|sat|seen|shoulder and|shoulder are|shoulder blade|sigh|sink|socket|speed|spine|squash|squeeze it|squeezing|stay facing|stay glued|stop where|straighten|switch|table|than the|that knee|that the|that your|the air|the corner|the edge|the inside|the one|the push|the strap|the towel|them away|them in|then go|then let|thing|think about|this time|thumb out|till youre|today|toe away|touche|toward the|tucked in|wherever|while its|wont|your bone|your breastbone|your rib|your shirt|your shoulder|youre all',
      ],
      [
        -0.2,
        'a hammock|a hand|a lift|a look|a table|a towel|all the|and come|and look|and needle|and no|and out|and press|and round|and start|anybody|are up|arm like|arm to|around the|at a|at hip|at it|back into|back one|back over|back past|balance|barking|because if|been|bent up|block|blow|blow it|both side|brisk|by your|came|carpet|caving|chest down|chest to|chicken|close to|come down|count of|cranky|creeping|cross|cup|cup of|daylight|daylight under|dead|degree|do|dont crank|dont drop|dont jump|dont poke|down on|draw the|drift forward|dropping|each|ear to|elbow a|elbow at|elbow back|elbow out|elbow toward|ever|eye under|feet back|feet go|feet off|five degree|flapping|foot forward|for four|for one|for two|for your|forearm down|forehead down|forward again|good knee|grass|grow|had a|halfway|hand over|handle|hang|has|have|have a|head and|heel on|height and|higher|higher than|hug|if its|if youve|in a|it as|it get|it goe|it on|it over|its all|jump|just let|knee at|knee under|knee up|lap|last|length|light on|line from|little sip|long breath|long by|mate|melt|middle of|much|needle|never|new|nice|no sagging|not the|of five|off and|on top|one leg|one straight|open the|out breath|out through|park|part|peel the|peel your|pin and|prize|puff out|pull your|push it|pushing|put the|ready|rest|resting|resting on|ring a|ring in|roll back|rolled|rush|same speed|send the|shoulder catch|shoulder down|shuffle|slide the|slide your|sore|squeeze the|stacked|steady|stop at|swing your|tell|that back|that you|the breastbone|the carpet|the grass|the knee|the kneecap|the left|the leg|the right|the thigh|there is|they dont|thin|think of|those|through your|till the|to be|to cheat|to help|to let|toe on|trouble|two down|under your|up at|walking|want it|way you|wee|when youre|while you|whole leg|width apart|yank on|you turn|your back|your butt|your face|your knee|your tail|youre a|yourself',
      ],
      [
        -0.3,
        'a dog|above|above the|all|alway|an ankle|and draw|and just|and the|and turn|anybody with|as they|away from|backward|behind the|belly|bone|breastbone|breathe|butt|call|ceiling|come back|count|crank|cushion|dog|draw your|drift|drop|ease into|enough that|feel|feel a|feet down|feet wide|flop|foot out|forehead|forty|forty five|goe up|gossip|had|hand down|hand out|head|heel and|if you|in toward|it go|it slip|its that|kneecap|let go|lift the|lift your|line|low|low back|more|nearly|no higher|not just|opposite|other knee|pillow|poke|pull not|pull up|quit|round to|sag|should feel|shoulder up|slow as|slow breath|so|so the|step up|still|stretch|tail|the belly|the ceiling|the chest|the elbow|the head|the opposite|the pad|them|then you|to where|to your|toe up|toward your|turn the|up off|up toward|walk your|where its|while|without|you go|you know|you like|you open|you reach|you should|your elbow|your front|your low|your side|your waist',
      ],
      [
        -0.4,
        'again|and lift|arm|away|back hip|be|bit in|come off|come out|elbow under|exhale|feeling|from you|glass|go|go down|hip up|if the|in through|into|knee|knee down|knuckle|left|leg long|leg out|leg up|lift one|moving|nothing|one knee|out long|pedal|right|round the|seat|shoulder|sit tall|straight line|strap|the box|the hand|the nose|the seat|the weight|thigh|toward|tuck|under|waist|want|wrist|you want',
      ],
      [
        -0.5,
        'box|come|for|hand under|into the|lift|make|now|on your|only as|ring|roll|round|slide|the hip|too|towel|tuck your|under the|your hand',
      ],
      [-0.6, 'arm straight|bent|breath|draw|five|flat|hand in|knee bent|lie|or|pad|the mat|youre not'],
      [-0.7, 'leg|long|mat|sit up'],
      [-0.9, 'feet flat'],
    ],
  ],
  [
    'step',
    -0.6,
    [
      [0.9, 'step'],
      [0.6, 'leg|stand up|whole foot'],
      [0.5, 'heel and|home|side of|the other|the side|whole'],
      [
        0.4,
        'and stand|bottom foot|foot on|front heel|goe|heel|inward|loop|of your|other|push|right up|tap|the step|your knee',
      ],
      [
        0.3,
        'a hair|and all|and bring|and sit|back and|back foot|back knee|bring|cheating|drop|drop the|feel your|fold|foot and|front knee|front leg|grumble|hair|hold|hold on|in line|it home|its the|keep your|knee goe|line with|other foot|push through|shove off|side and|stand|stay in|step out|that knee|that should|the back|then the|through the|time|together|watch|way down|whole time|youll be|your ankle',
      ],
      [
        0.2,
        'a knee|a long|a tightrope|about the|above your|all|and breathe|and come|and drop|and keep|at chest|back up|bell at|big step|bring it|bring the|but|cave|cave in|centimetre|click|come home|coming down|done|dont shove|dont tip|elbow a|every|feet hip|feet together|fetch|foot flat|foot up|goe over|grass|half way|hand and|has|heel as|heel to|hover|in a|in as|inch off|inside|it a|it cave|its just|join|keep that|kiss the|knee in|knee that|lace|long step|middle of|miss|nice and|on hip|on them|one heel|one side|one to|other one|out to|outside of|plenty|push up|rock|seat|shove|sneaking|softly|stand right|step back|step one|take a|talking|tap the|that cheating|the bottom|the grass|then lower|through|through that|tightrope|tip forward|to catch|toe up|up through|watch the|were|wobbling|you stand|youll|your toe|your weight',
      ],
      [
        0.1,
        'all the|back off|bang|be|chest up|dont fold|feel that|front foot|hip width|hold of|into it|it doesnt|it on|kiss|knee come|like it|other leg|put one|should be|sit down|slow on|so its|speed|steady|that foot|the bell|the one|then come|train|train track|walk to|you came|youd',
      ],
      [
        -0.1,
        'a fist|apart|arch|away from|bar|bend the|blade|body|bone|both hand|by|by your|calf|chair|deep|dont lean|dont want|each hand|ear|ease|easy|face|feel the|float|floor away|foot off|for the|heel down|height|holding|i can|if the|if your|in each|into the|jump|knee bent|knee up|lean back|let go|like youre|loose|near|neck|no|not a|now|open|out as|over the|palm|past|ring|round the|shoulder blade|side on|sigh|sink|somebody|sore|sort|sort of|stance|stand on|standing|stay on|still|stop a|the arm|the big|the chest|the elbow|the floor|the mat|the nose|the shoulder|the top|thumb|to get|to your|top|under the|up off|wrist|you feel|you get|you want|your breath|your ear|your elbow',
      ],
      [
        -0.2,
        'above the|and|and back|as if|as it|at|back of|back to|belly|bend|between|between your|both feet|breathe out|breathing|chest|chin|dont roll|down|dumb|dumb bell|edge|elbow|end|eye|facing|fall|feet|feet flat|finger|fist|floor|foot forward|foot in|grab|half of|hamstring|hang|if|in front|in on|in your|it out|its a|keep breathing|knee and|knee soft|leaning|left|leg out|let|let the|level|lift the|like|like there|mat|more|nose|on the|one foot|opposite|or|pick|pocket|pointing|press|push the|reach|rib|slide|squeeze|start|the band|the foot|the wall|they|three|through your|till|till the|to|tuck|tucked|up|wall|when|with|without|you|you can|you dont|your hand|your shoulder|your side|youve',
      ],
      [
        -0.3,
        'air|band|behind|big toe|breath|can|each|get|go|high|in the|it|it down|long|not|quick|roll|round|stop|straight|the hip|the leg|them|there|thigh|under|want|your|your back|your head|youre',
      ],
      [-0.4, 'a|at the|both|breathe|feel it|for|hand|head|lift|on your|over|soft|straight down|there a|turn|your heel'],
      [-0.5, 'arm|away|back|the'],
      [-0.6, 'shoulder'],
    ],
  ],
  [
    'stretch',
    -0.3,
    [
      [0.7, 'sigh'],
      [0.6, 'breathe into|heavy'],
      [0.5, 'arm out|breath|gently|hang|hug|long|long breath|or|sink|tingling|tuck your'],
      [
        0.4,
        'after|apart|breath out|deep|dont yank|hand on|into|knee apart|knee in|nerve|nothing|pillow|side to|straighten that|that back|that leg|the back|the chest|the front|thigh|to side|want it',
      ],
      [
        0.3,
        'across the|and draw|and lean|arch|back foot|back leg|back off|bend the|bit more|block|calf|come out|deep in|dont arch|foot back|heel down|how|hug the|into your|its a|its the|knee and|lead|leg up|let the|let your|long band|more|of them|on a|over it|pull not|put a|slowly|stop at|straighten|t|tailbone|the knee|the nose|tip|toe turned|tuck|turn out|turned|turned out|under it|wide|yank|you like|your eye|your hand|your heel|your tail',
      ],
      [
        0.2,
        'a long|a pull|a stretch|across|and let|and needle|and walk|ankle|anything|arch your|at all|at shoulder|back heel|back hip|back knee|band|band round|behind|behind the|bend it|bent|between the|bouncing|can go|chest up|come off|cross|doesnt|dont bounce|dont get|dont push|down as|down the|down with|draw|draw it|drop your|elbow at|feet wide|foot|foot goe|foot out|forehead|front of|get heavy|get there|go and|go soft|heel|hip forward|how you|if youve|in my|in the|into the|it go|it hang|knee at|knee down|lean your|let|like you|little wider|low as|lower back|mat|much|my|needle|no bouncing|on it|one leg|other way|out like|out long|out the|over to|pain|pedal|pin and|put the|rack|rest|send|send the|shift|shoulder height|sigh out|sit back|sit up|slow breath|soft|spread out|squeeze the|stretch|tail|talking|the arm|the calf|the first|the hip|the rack|the right|the thigh|through and|till it|till its|tip forward|tip over|to touch|toe up|toward you|towel under|upright|waiting|walk your|where its|wider than|yank on|you feel|you want|your right',
      ],
      [
        0.1,
        'a pain|a pillow|away and|belt|big toe|bottom of|down at|draw the|feel a|feel it|finger|for your|forward|forward from|go heavy|hand out|hand up|have to|heel on|hip in|in and|it let|lead with|lean in|leg in|let go|lie on|one knee|out through|over a|round the|shoe|slide your|tail under|take it|that a|the long|the opposite|the wrist|they dont|toe pointing|your foot',
      ],
      [
        -0.1,
        'a moment|an inch|and then|and your|arm by|back down|belly button|bend your|blow out|bring it|button|cant|chin|cramp|do|dont jump|drop the|each|each hand|facing the|far|five|front heel|get a|go back|hip stay|hip width|i can|if that|in a|in as|it get|it on|it out|keep them|leaning|like youre|me|not your|past|place|plenty|purple|rail|rib down|roll|same|short|slide up|sock|squeeze it|stand tall|stand up|swap|the bar|the seat|the toe|the whole|theyre|think of|till your|to the|underneath|up a|up like|up to|way up|while you|with it|you come|you go|youre a',
      ],
      [
        -0.2,
        'a touch|above|air|all the|along|and lower|arm straight|as far|as if|as it|as your|back into|back like|backward|bar|before you|between your|blow|both hand|box|bring|but|circle|count|doing|dont go|dont hold|dont lean|dont sit|dont want|drive|ear|elbow under|end|even|eye on|facing|far as|feet under|first|fist|flat|flat on|follow|foot on|for|from the|go as|ground|grumbling|half|hand under|heel up|hip and|holding|home|i|imagine|in each|inside of|it a|it goe|jump|keep|keep breathing|keep the|knee soft|knee straight|knee to|knee under|lazy|lift the|like a|lock|look at|loose|lower it|make|middle|moment|neck|nice and|no|nobody|not locked|of you|one up|out on|out to|palm up|pause|peel|pick|pinch|pop|puff|pull the|push the|put it|quiet|reach|rib|should|should feel|side of|side on|sideway|smaller|smooth|snap|somebody|squash|squeeze your|stacked|stay on|stick|straight down|take|take your|that knee|the big|the end|the ground|the inside|the middle|the rib|the ring|the shoulder|the side|the top|then let|thumb|time|to it|too|toward your|track|tummy|under your|up at|up off|up over|up toward|use|watch|way down|when you|while|width|wobble|you wobble|your belly|your leg|your low|your rib|your spine|yourself',
      ],
      [
        -0.3,
        'a|about|an|and bring|and the|as you|at your|backside|before|bell|big|blade|breathe out|coming|down|feel the|feet flat|floor|going|hard|higher|in your|its not|land|lean back|line|moving|not|off|only|over your|palm|pull your|quick|seat|second|see|shoulder blade|small|spine|squeeze|standing|start|stay|still|swing|tall|the chair|the other|the way|there a|think|three|to|two|under|up|want to|way|weight|whole|you should|your arm|your backside|your bottom|your side',
      ],
      [
        -0.4,
        'are|belly|breathe in|breathing|by your|come down|just|lift|light|like|little|look|off the|over the|push|slow|so|stand|top|when|your ear|your feet',
      ],
      [-0.5, 'again|bottom|straight|youre'],
      [-0.6, 'by|feet|out as'],
      [-0.8, 'as'],
      [-0.9, 'then'],
    ],
  ],
  [
    'supine',
    -0.2,
    [
      [0.8, 'lie'],
      [0.7, 'knee bent'],
      [0.6, 'bent|ceiling|feet flat|flat|hip up|into the|leg|leg out|leg up|mat|the ceiling|the mat|your back'],
      [0.5, 'arm by|draw|fall|hand behind|leg long|peel|press|toe up|toward you|towel|way up'],
      [
        0.4,
        'above|again|and draw|as low|back of|be|behind your|blade|bottom of|close|elbow wide|heavy|it come|its all|kneecap|low as|on your|other knee|out like|pillow|rib down|roll|shoulder blade|so|straight line|that leg|the knee|the leg|the thigh|them|toward',
      ],
      [
        0.3,
        'a straight|above your|and come|and lift|and press|and shoulder|at you|bend it|blow out|brisk|close enough|close to|come off|dont bounce|down through|eye under|flare|for four|for six|get there|go back|hamstring|head and|hug|hug the|if its|if the|imagine|is|knee in|knee over|knee up|know|let the|like a|line from|long|long band|lower back|make it|move|need|nose for|nothing|now|off the|one line|other leg|out on|over your|pedal|peel your|press the|six|slide the|slide up|so the|sock|somebody|stacked over|straighten that|tea|the head|the heel|the lift|the towel|them away|tight|tighten|to help|under the|up to|up toward|wrist stacked|you know|you like|your neck',
      ],
      [
        0.2,
        'a moment|a sock|above the|across|all|alway|and a|and itll|and needle|and swap|arche|away from|back stay|band round|bar in|be a|because|behind the|below|below the|bench|blow|bone at|both|bra|can keep|carpet|chin|chin not|clenching|closer|coming up|completely|cramp|cross your|dead|degree|doing|dont push|dont yank|down in|down into|down slow|down with|draw it|draw the|each one|enough to|face|feet down|finger and|flapping|floor and|foot flat|four|getting|go away|go completely|gone too|halfway|hand up|hard|heel a|heel up|help|if there|if your|in a|in through|in toward|isnt|it doesnt|it down|it go|it slip|it under|itll|its own|jaw|just go|just off|keep them|knee to|let one|lie back|lift|lift off|like an|line|long breath|low|melt|moment|mouth|needle|nice|ninety|not your|one on|operated|out and|out the|out through|over on|pad|peel off|peel the|pin|pin and|puff|puff out|pulling|push it|pushing|put the|resting|right arm|roll out|roll to|rolled|roof|round the|sand|sat|second|send|shorter|should feel|shoulder up|slip|slower than|sock on|squash|squash the|stretch|t|that in|that knee|the bar|the belly|the carpet|the far|the feet|the kneecap|the opposite|the right|the roof|the sore|there is|there to|thigh and|this|three count|through your|till its|tingling|to lift|to where|toe away|tuck them|until its|up again|up at|up off|watch|wet|when you|where|where it|where its|while|whole leg|working|yank on|you want|your butt|your cheek|your eye|your face|your kneecap|youve a',
      ],
      [
        0.1,
        'a time|ache|and peel|and start|and the|arching|arm back|arm out|at a|at all|back up|both leg|dont get|drive your|ease into|exhale|far wall|feel this|flop|for it|from you|goe out|good knee|home and|it is|its tight|its your|knee down|left leg|leg goe|leg in|let them|lower your|muscle|need to|no higher|of them|over to|push them|ready|resting on|roll onto|shoulder to|small of|spread out|stay a|straight up|that how|the crease|the long|the one|the operated|the small|them home|they go|this in|to see|toward your|two down|up if|watch your|way out|you press|you sit|your armpit|your backside|your mouth|yourself up',
      ],
      [
        -0.1,
        'a touch|and bring|and dont|and pull|any|as high|asleep|away and|away with|baby|baby asleep|back and|back heel|back in|back knee|bend the|between your|breath into|breathe into|but|by|chest|chest to|chest up|come|dive|dont go|facing the|feet wide|follow|foot back|for your|forward and|front knee|get a|go down|go heavy|got a|grow|hand out|handle|hanging|high as|hip back|if youre|in line|into a|its the|jump|knee apart|knock|lead with|lean back|lean in|let your|like you|load|lock|look|looking|near the|nearly|no more|no sagging|not a|not on|of you|or your|out there|over the|please|push the|put|quiet|rest|ring at|room|sagging in|shift|shoulder width|side on|so you|soft|spot|stand on|stand tall|step back|stiff|straight|straight and|straight back|straight down|swinging|take your|the back|the rail|the side|the top|think|thumb to|tip forward|to get|top of|tuck the|underneath you|up by|up high|up like|up tall|walk your|whole|whole foot|wider than|with the|wobble|you pull|your body|your shoe|your thigh',
      ],
      [
        -0.2,
        'about a|achilles|ahead|and|and back|and lower|and make|and no|and one|and put|and walk|arch your|are up|as|as a|as you|back flat|back foot|back like|back pocket|back to|bad|ball|ball of|before|box|breathe|breathing|by the|car|check|chest and|collarbone|cushion|dont lean|drift|drop|easy|em|end|eye on|fast|feet|feet hip|feet under|find|first|fist|flat on|fold|for one|for the|forehead down|from the|go overhead|got|grip|half|hand and|hand in|hand off|heel down|here|hip level|hold the|hurt|in front|in your|inch|inside of|into your|it a|it between|it in|it round|it till|its a|knee under|lace|land|land on|late|lead|leaning|let yourself|level with|lift your|like there|long line|long neck|me|neck|nick|no holding|of a|on|on the|on to|on top|one in|one knee|one leg|onto|other|out in|over|palm|palm facing|past|pick|plate|pointing|poke|pop|pull it|quick|rail|right up|run|second toe|short|should be|shrugging|sit back|sit down|slowly|snap|soft knee|squeeze your|stand up|standing|steady|stick|string|take the|than your|that a|the band|the big|the box|the door|the neck|the other|the same|the wrist|then the|till it|till your|to about|top|tuck|tucked|turn|turn your|under shoulder|under your|underneath|up on|way back|weight on|well|with|with a|wrist are|you|you by|you come|you dont|your chair|your front|your head|your knee|your shoulder|your thumb|your toe|your whole|youre|youve got',
      ],
      [
        -0.3,
        'a|and down|and stand|apart|as far|back|between the|big toe|chair|come up|dont|foot on|forearm|front of|hand on|hear|hip|if youve|in|keep breathing|keep the|knee soft|level|no|of|of it|on a|one foot|other foot|pocket|put it|ring|sagging|same|take|the|the chair|the front|the middle|the ring|the seat|the shoulder|tip|touching|tuck your|under|want to|weight|wider|your arm|your elbow',
      ],
      [
        -0.4,
        'behind you|big|body|dont roll|door|ear|elbow|floor away|foot|height|out of|sit|than|the arm|the wall|thumb|toe|walk|wall|wrist|your wrist',
      ],
      [-0.5, 'between|elbow under|facing|forehead|lean|middle|seat'],
      [-0.6, 'at your|front|hand|high|stand|tall'],
      [-0.8, 'step'],
      [-0.9, 'forward'],
    ],
  ],
]
