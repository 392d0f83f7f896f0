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
      [0.9, 'knee under'],
      [0.8, 'hand under'],
      [0.7, 'and knee|belly|hand and'],
      [0.6, 'under shoulder|wrist'],
      [0.5, 'look|opposite|opposite hand|slide'],
      [
        0.4,
        'ahead|arm forward|between|between the|breathe out|come out|dog|float|floor away|four|glass|higher than|it down|left|loop|no higher|no more|reach|round up|than your|the shoulder|under|you reach|your right',
      ],
      [
        0.3,
        'a dog|an inch|and round|blade|breathe into|coffee|end|finger|get down|go on|head come|hip stay|inch|level|like youve|out there|push the|quiet|shoulder and|shoulder blade|small|small step|tailbone|toe tucked|touch|under hip|your left|your wrist',
      ],
      [
        0.2,
        'a full|a touch|and look|and that|and the|away and|baby|balance|been|belly drop|belly tight|cat|chest forward|crisp|cup|cup of|dont need|dont tip|dont want|fist|float your|for three|gone too|grass|heel to|higher|hip level|hug|i dont|imagine a|it start|knee out|leg goe|like there|look at|more|near the|ninety|ninety degree|one end|one leg|other hand|palm up|reach one|reach your|rest|right arm|side of|sitting|slack|slide it|sniff|sniff in|spine|spread|stamping|stay up|straight back|take it|that it|the grass|the leg|the lift|the opposite|there for|thigh level|three second|tight|today|too high|toward the|tucked|underneath you|up over|up quick|walk|walk your|your tummy|youve gone',
      ],
      [
        0.1,
        'a cat|and it|bin|ceiling|either|fence|hand in|its that|near|need to|reach the|stay still|the ceiling|the hand|there is|underneath|up like|whatever|you breathe|you put|your belly|your finger',
      ],
      [
        -0.1,
        'across|all the|and back|and if|apart|arm out|at|at the|at your|back down|back of|ball|because|bell|big|big toe|blow out|breath out|cheek|close|coming|dont lean|down and|drive|eye|face|facing|feel the|feet flat|feet under|first|flat|from|from your|goe|heel and|height|hold your|if it|if youve|in|it come|it go|its a|its not|its the|its your|keep your|kneecap|lean back|leg long|let go|let them|like|nose|of you|on the|onto your|out like|out on|pinch|pocket|pointing|press|ring|round the|same|seat|side|sink|squeeze the|stand up|swing|the bar|the chair|the elbow|the other|the ring|the seat|the whole|through the|till your|to get|top of|turn|up and|up the|way down|way up|what|when|width|you go|your arm|your breath|your chin|your ear|your elbow|your leg|youre a',
      ],
      [
        -0.2,
        'a bit|again|air|and|ankle|arm|away from|band|bar|blow|bottom|breath|breathing|by|by your|can|chair|chest|count|do|doesnt|dont hold|ear|elbow under|foot|front of|get|half|hang|heel|hip up|in front|it up|keep|keep breathing|knee up|lean|leave|let it|line|move|neck|off the|one|other|other foot|out|out in|outside|over|pull|sit|so|soft|somebody|squeeze your|swap|the back|the front|the top|then|they|think|this|toe|towel|two|up off|where|whole|with your|you can|youll|your chest|your feet|your rib|your shoulder|your toe',
      ],
      [
        -0.3,
        'bend|both|chin|down|going|hold|if|in the|let|long|of the|off|over your|stand|straight|tall|the way|them|till|top|your heel',
      ],
      [-0.4, 'about|elbow|hand on|its|leg|rib|roll|shin|squeeze|stop|the|to your|way|with|your|youre'],
      [-0.5, 'back|front|not'],
      [-0.8, 'feet'],
    ],
  ],
  [
    'balance',
    -0.3,
    [
      [0.6, 'big toe|foot on|knee straight|lower|slow it|standing|the chair|the outside|the ring|the step|whole foot'],
      [
        0.5,
        'and keep|arm straight|both hand|chest down|dont tip|fingertip|grab|hand on|heel and|hurt|in on|keep hold|on them|one hand|other foot|out a|out to|point forward|rail|right|roll out|sideway|the other|the standing|thumb|thumb out|toe|together|up on|wobble',
      ],
      [
        0.4,
        'a foot|and lower|and turn|arm forward|back down|bum|dont roll|feet back|fence|fine|follow|foot|foot off|hand in|hanging|heel back|high as|knee soft|lean a|like a|near hand|next|off your|one up|out of|outside|rock|spot|the rail|the side|till the|too|turn round|up onto|weight on|whole|you reach|your thumb',
      ],
      [
        0.3,
        'a hand|a spot|above your|achilles|along the|and stand|ankle dont|as high|back till|backside|ball|bring the|but|change|do it|doesnt|edge|even|exit|eye|feet hip|fingertip on|foot down|foot follow|for three|freeze|gate|gently|glass|going down|hip level|hip width|imagine a|inward|it fall|it get|it in|it on|knee come|knee together|leg goe|level|little toe|loop|lower till|of it|on it|on that|one|one leg|one long|opposite arm|out like|outside leg|pick a|push away|put one|reach the|right leg|ring down|rolling out|rushing|sagging|seen|side on|squeeze the|stand up|standing foot|standing knee|stay there|strap|than your|that fine|that knee|the big|the bottom|the edge|the heel|the shin|the toe|through that|tip|turn your|whole time|wobbling|you get|your big',
      ],
      [
        0.2,
        'a chicken|a crisp|a moment|a race|a wee|achilles is|along|and all|and bring|and float|and itll|and one|and pull|are creeping|are dropping|as well|as wide|back one|ball of|behind you|belly tight|bench|between the|bigger|bottom foot|bottom leg|bring|bring your|bum down|but not|calf|caving|chair|chair back|cheating|chicken|closing|closing a|coming down|cramp|dead still|dont go|dont just|down between|down by|down first|down with|drop in|dug|dug in|eye up|facing front|feet on|feet under|feet wide|first|float|foot just|foot up|forward|forward a|forward and|get a|go so|goe back|ground|grow|halfway|hear your|heel as|height and|high|higher than|hip forward|hip height|hip that|hold of|hook the|hover|if its|if youre|imagine|in going|in youre|inside leg|it cave|it doesnt|it down|it right|it stop|it wander|itll|its the|its there|join|just off|keep breathing|leaning on|leave it|leg first|leg youre|let one|letting|level with|like its|long line|march|marcus|mean|moment|morning|moving|my|near|next door|next one|ninety|ninety degree|no more|nobody|not at|now|off the|on each|one heel|or the|other|other leg|out behind|out every|out sideway|out there|pause|pick the|plank|please|properly|pulling|push through|put the|race|reach one|rest|right down|right in|right up|ring a|ring to|rolling|set it|shove|side|so its|soft|soft knee|something|something that|stand|standing leg|stare|step out|stop and|straight back|straight up|swing the|tall on|tap the|than up|that a|that cheating|that foot|that heel|that hip|the backside|the bench|the fence|the ground|the leg|the little|the next|the top|them in|then lower|then press|three|three second|tip your|tipping|tired|to hip|to touch|toe point|trouble|tummy|up behind|wait for|wall behind|wander|want it|weight|weight over|well|when the|whole of|wide as|with both|wrist or|you squeeze|your ankle|your little|your second|youre all|youre leaning',
      ],
      [
        0.1,
        'a gate|a good|a lamp|and back|and dont|and straighten|ankle|as a|at something|baby|bell in|belt height|bite|bucket|centimetre|count down|dont kick|dont shove|drift out|even if|finger on|fold in|follow your|for this|forward till|front foot|gap|get bigger|got you|hair|hand off|in one|isnt moving|it for|it till|just a|kick|lamp|lamp post|lean away|leaning|left leg|like youve|look like|lower your|meet|not an|onto one|opening|or a|or two|other one|out onto|paint|pick|pulling the|ring in|rise|roll to|shaking|shoe|shove off|sign|slide them|somebody got|spot on|stand on|stand right|stand tall|stare at|start at|straighten|straighten it|that isnt|that should|that your|the hair|the pad|there for|three count|thumb to|till there|toe on|touch|until youre|with one|you by|you go|you look|you step|you wobble|your foot|your shoe|yourself up',
      ],
      [
        -0.1,
        'a long|a straight|a tightrope|a tray|across the|and come|and out|and slow|and your|arm by|arm long|arm up|at all|at chest|back into|back leg|backward|bed|bell at|big breath|bit wider|blow out|bottom of|bump|bus|by your|can keep|chest height|chest tall|come off|crank|cross|dont crank|dont fall|dont reach|door|down the|ease|every time|fall in|five|forehead|front heel|front knee|get down|glued|glued to|go as|hand behind|handle|hang there|heel are|heel in|hold your|in through|inside of|it straight|kiss|kissing|last|leg and|leg long|lift it|long breath|not in|on your|one at|opposite|out through|palm forward|park|pinned|press down|press it|pull your|pulled up|quick step|rope|rush|same|shirt|short|shoulder down|shoulder width|skip|slow breath|so if|squeeze your|stacked|straight out|switch|tailbone|that the|that turn|the bed|the bell|the belly|the crease|the far|the nose|then sit|there a|tightrope|to about|to hear|to it|toe pulled|toward your|train|tuck your|up like|up off|walk your|washing|way back|where|while you|your breastbone|your chest|your chin|your forearm|your pocket|your shoulder|your tailbone|your waist|youve a|youve got',
      ],
      [
        -0.2,
        'an|and a|and do|and down|and if|and lean|and not|and that|apart|as they|as your|at you|away and|back flat|back off|back up|be|blood|bone|breastbone|breathe into|build|can|car|chin|circle|come|come back|come down|coming|coming up|cone|crease|crease of|curl|da|da dum|dont hold|dont push|dont swing|down on|dragging|draw|drink|dum|each hand|each one|elbow under|end|far as|feel|feet a|find the|floor and|floor away|flop|for it|forearm|forward over|from the|from your|front|full|further|get|get your|gone|grumbling|had|hard|has|heel stay|hip back|hold|if a|if the|if there|if youve|in it|inch off|inside|instead|into a|into your|it come|it go|it home|it is|it round|it should|it slower|it up|it with|its all|its only|its your|jumping|keep your|knee dont|knee go|knee out|knock|know|land|leg behind|length|lie|lift|like there|like youre|little sip|look down|looking|metre|mind your|need|new|of drink|off it|open the|or|out over|pace|palm|pedal|pick it|pillow|poke|pretend there|push off|push your|rib down|round your|sag|shin|should|sit straight|sit tall|sit up|slapping|smooth|sort|sort of|speed|spine|squash|stay down|stay on|step back|step one|still|stop at|straight down|take|take a|tell|tell me|than the|that side|that you|the band|the breath|the door|the grass|the joint|the lift|the lower|the strap|the tree|the wall|the way|them down|then stand|they|theyre|third|till its|till you|to a|to get|toe pointing|toward the|travel|tray|tray of|tug|turn out|two|under your|until|up there|up toward|up with|upright|waist|wall|want|want the|weight in|when|when you|when youre|while|whole leg|whole way|with|with it|with your|you can|you could|you like|you pull|you put|you should|you sink|you stand|your back|your breath|your cheek|your ear|your hand|your head|your nose|your own|your side|youre not|youve',
      ],
      [
        -0.3,
        'across|an ankle|are|as far|at a|at your|away|back to|band|bar|before|before you|behind the|between your|big step|blade|blow|bring it|ceiling|chest up|could|deep in|dont look|down|down at|draw it|ear|easy|exhale|far|fist|foot back|foot out|four|grass|grip|half|hamstring|hang|hip up|in front|in your|into|its a|keep the|lazy|lean back|leave|leave the|lift your|more|neck|not|one foot|only|only the|out|over|past|quiet|rhythm|send|shoulder blade|sip|step|that back|the air|the arm|the ceiling|the front|the seat|the second|through|toward|track|tuck|tucked|turned|under the|way|you come|you feel|you lift|your arm|your elbow|your knee|your neck|your toe',
      ],
      [
        -0.4,
        'a time|about|above the|again|air|ankle over|arm|back|back heel|bend|bent|between|deep|elbow|feet flat|foot in|heel down|into the|knee bent|on a|pointing|pretend|quick|rib|sigh|straight|the elbow|the knee|the mat|the shoulder|thigh|through your|to|up in|up to|your leg|your thigh',
      ],
      [
        -0.5,
        'as if|back knee|from|head|heavy|hold it|light|mat|nose|of you|out in|over your|pull|seat|sit|then the|under',
      ],
      [-0.6, 'flat|walk'],
      [-0.7, 'chest|long'],
      [-0.8, 'breath|shoulder'],
    ],
  ],
  [
    'ballistic',
    -0.9,
    [
      [0.8, 'bell'],
      [0.5, 'hike|let it|loose|one hand|the leg'],
      [
        0.4,
        'and let|as it|between|bigger|breath out|forward and|front of|get bigger|hike it|it float|it get|it land|outside|snap|so it|the hip|wind',
      ],
      [
        0.3,
        'and back|around|between the|early|fast|float|fold|grip|handle|hip and|into a|it drop|land|look behind|nobody|of you|out at|outside leg|park|pull it|sharp|shirt|stand tall|start|swing the|then pull|then snap|you and|your shirt',
      ],
      [
        0.2,
        'a fist|a foot|and lazy|and look|and not|are rope|arm are|arm locked|ask|back like|between your|breath in|catch|chest height|dip|diving|dog|dont fold|dont kick|dont lift|elbow on|empty|every rep|finish|heart|help|hinge|hit|however|im|inside|inside leg|it back|it leave|it smaller|its not|keep it|kick|leave the|make|make it|most|move|near|near hand|next|overhead|rep|same way|set it|sharp breath|side on|slide back|smaller|snap the|so you|socket|standing|straight down|swing|tall on|that how|that it|the arm|the chin|the handle|the outside|then drive|they dont|throw|to it|to one|turned|wait|you get|you like|you stop|zip',
      ],
      [
        0.1,
        'arent|back at|bending|big breath|body like|elbow stay|end up|glued|grow|just a|kiss|locked|next to|nip|punch|rope|start at|stay glued|stop and|the bell|the inside|wrist straight|your armpit|your belt|your body|your forearm',
      ],
      [
        -0.1,
        'a|a bit|again|all|all the|an|and|and the|ankle|as if|at|away from|back of|back to|bent|big toe|blow|both|breathe in|breathing|by|by your|can|chair|come up|count|dont let|door|down and|face|facing|far|feet|feet flat|flat|foot|for|from|going|got|hang|have|hip width|i|if you|into the|keep breathing|keep the|let them|level|line|look at|low|mat|middle|no|nose|on|only|opposite|out on|out to|over|over the|over your|press|push the|put|reach|rib|ring|round|round the|seat|sigh|sit|slower|squeeze|straight|than|the bottom|the chair|the heel|the mat|the neck|the ring|the side|thigh|this|through the|thumb|till|till your|together|touch|toward your|turn|up and|want to|way|way down|way up|whole|width|with|youll|your belly|your bum|your elbow|your head|your heel|youre not|yourself|youve',
      ],
      [
        -0.2,
        'at your|band|belly|bit|blade|bottom|breathe|breathe out|bum|coming|each|feel it|first|floor|half|head|hold it|in|lean|long|lower|neck|on the|one foot|open|palm|right|shoulder blade|slow|take|the back|the floor|the way|there|to|to the|tuck|under your|until|want|your knee|your shoulder',
      ],
      [
        -0.3,
        'as you|away|back|come|feel|heel|hold|it|knee|off|off the|other|out|push|shoulder|step|the other|them|toe|under|you',
      ],
      [-0.4, 'up|your'],
      [-0.5, 'down|go'],
      [-0.6, 'dont|the'],
    ],
  ],
  [
    'carry',
    -0.2,
    [
      [0.8, 'walk'],
      [0.6, 'bell'],
      [0.5, 'quick step'],
      [0.4, 'door|grip|in one|one hand|pick|put|quick|short|small|them down|walk tall|your leg'],
      [0.3, 'and back|bang|bell in|dumb|dumb bell|full|put them|small quick|step|tall|the bell'],
      [
        0.2,
        'a string|a suitcase|and dont|arm long|as if|behind the|book|dont drop|dont tip|door and|down the|drop them|each hand|fire|fire door|full of|handle|heavy|knee to|know|lean away|let them|little breath|mind|off your|one in|pick it|pretend|put it|stand tall|string|suitcase|swap|the fire|the handle|the weight|to it|up in|up with|walk back|walk to|watch',
      ],
      [
        0.1,
        'and down|bend your|by the|in each|like the|mind your|other side|quiet|room|small step|the head|the room|them up|you dont|your grip',
      ],
      [
        -0.1,
        'a bit|again|all the|and let|and the|ankle|are|arm|as it|at the|at your|back down|back of|back to|band|bar|be|before you|behind you|bent|between|between your|blade|blow|breathe in|can|ceiling|chair|come down|come up|count|do|down and|drive|face|feet flat|floor|goe|half|hand|hang|have|higher|hip width|into the|is|it in|it out|its not|keep|keep your|lean back|leave|let|let it|like|like youre|line|long|low|low back|make|mat|neck|not a|of it|of the|of you|on it|on your|one foot|onto|open|other|out in|outside|palm|past|pocket|push the|reach|right|ring|same|seat|second|shin|shoulder|shoulder blade|slide|so|squeeze|still|the arm|the bottom|the ceiling|the chair|the floor|the heel|the knee|the leg|the mat|the middle|the side|the wall|the whole|there|thigh|think|this|three|thumb|toe|together|top|touch|tuck|under the|up|way down|way up|width|with|with the|wrist|youll|your arm|your belly|your bum|your elbow|your hand|your rib|yourself|youve',
      ],
      [
        -0.2,
        'a|about|all|an|and|as|as you|at|back|belly|bit|both|bottom|breathe out|bring|bum|chest|chin|come|dont|down|elbow|feel|feel it|feet|flat|foot|for|forward|front|front of|go|hand on|high|i|if|if it|if you|in|in front|in the|into|it|its|just|knee|let your|lift|lower|middle|no|nose|of|of your|off|off the|on|on the|only|or|out as|out on|over|over the|over your|press|pull|push|rib|roll|should|sit|soft|start|stay|stop|straight|that|the|the back|the front|the hip|the shoulder|the top|the way|then|through|through the|till|to|to your|under|under your|way|whole|you|your|your back|your chest|your heel|your hip|your shoulder|youre',
      ],
      [-0.3, 'heel'],
      [-0.5, 'look|me'],
      [-0.6, 'height|up to'],
      [-0.7, 'the other|your feet'],
      [-0.8, 'hip|not|out'],
    ],
  ],
  [
    'circles',
    -0.7,
    [
      [0.8, 'circle'],
      [0.7, 'chin|lazy'],
      [0.6, 'your lap'],
      [0.5, 'and down|chin out|ear|lap|round'],
      [0.4, 'at all|hat|it with|poke|take it|upside|upside down'],
      [0.3, 'a big|as they|back and|dont poke|hand in|poke your|shoulder up|smaller|your chin'],
      [
        0.2,
        'a heavy|a ring|an ankle|ankle over|as treacle|asleep|back there|big|bone|bottom to|breath go|breathe as|by the|chin level|coat|collar|collar bone|cross|dont stick|downstair|draw it|duck|forearm on|gently|goe round|imagine|in for|it goe|it hurt|it smaller|its only|make|make the|no rush|not locked|off a|only the|out for|pick up|roll your|set it|shrugging|sigh it|sit tall|slow enough|someone|stick your|stirring|then go|thumb round|train|treacle|up past|use|wider|your collar',
      ],
      [
        0.1,
        'around|brush|brush your|close|down by|draw|drink|feel your|go as|hair|if there|it round|it should|knee soft|like that|locked|make it|nearly|plate|pop|pop up|rib pop|room|round to|round your|rush|set|shoulder pinch|sigh|slow as|smaller or|soft knee|tea|that you|the bell|the big|the chin|up as|your you|youre on',
      ],
      [
        -0.1,
        'a|a bit|about|again|all the|and the|as it|as you|away from|back|back down|bar|before|before you|behind|behind your|bent|between|between your|blow|breath|breathe out|breathing|bum|chair|come|come down|coming|count|dont let|door|down|down and|drive|elbow|end|eye|face|far|feel|feet|feet flat|first|foot|for|from the|get|go|got|half|hang|have|high|higher|hip|i|if|if the|if your|in|into the|it|it in|it off|it up|its not|keep|leave|leg|like|line|little|low back|mat|me|middle|no|not a|of the|of you|on it|on your|one foot|onto|open|or|out|out as|out in|outside|over|over your|palm|push the|quick|reach|same|seat|second|shoulder|side|sit|slide|small|so|somebody|squeeze|start|tall|the|the arm|the bottom|the chair|the heel|the leg|the mat|the middle|the side|the whole|there a|this|three|through the|time|tip|to the|toe|together|too|touch|tuck|under|under the|up|up on|walk|want to|way up|when|where|whole|wrist|you can|youll|your|your arm|your belly|your elbow|your heel|your leg|youre|yourself',
      ],
      [
        -0.2,
        'are|arm|at|at the|away|band|belly|bend|both|bring|can|each|feel it|flat|floor|forward|from|front|front of|going|hand on|heel|height|if you|in front|into|is|its|just|knee|lift|like a|long|look|low|lower|nose|not|of|of your|off the|on|on the|one|press|push|put|right|stand|stay|step|stop|straight|than|that|the floor|the hip|the knee|the shoulder|the top|them|then|thigh|through|till|to|top|toward|turn|two|want|wide|your feet|your hand|your knee|your toe|youve',
      ],
      [-0.3, 'your back'],
      [-0.4, 'in the|the ring|until'],
      [-0.6, 'at your|bit|your chest'],
      [-0.7, 'and|chest|dont|hand|pull'],
      [-0.8, 'off|you'],
    ],
  ],
  [
    'curl-up',
    -0.6,
    [
      [0.9, 'behind your|hand behind'],
      [0.7, 'chin|elbow wide'],
      [0.6, 'shoulder up'],
      [0.5, 'arm by|blade|closing|leg long|low|other leg|shoulder blade|your ear|your head|your rib'],
      [
        0.4,
        'and not|by your|clear|closing a|curl|ear|head|off the|on your|peel|peel your|puff|shoulder and|up in|wide',
      ],
      [
        0.3,
        'and roll|and shoulder|armpit|as low|back down|back into|banana|chin not|curl the|elbow flapping|every|feet flat|flapping|flatten|for a|glued|hand are|head and|know|long leg|low as|low back|not your|out every|rib that|roll back|that turn|the low|the mat|time|top of|you know|your back',
      ],
      [
        0.2,
        'a banana|a book|a pillow|a time|air|and itll|as long|at a|back stay|bend your|boat|bone at|by|clear the|daylight|daylight under|doing it|down one|each side|everything|finger and|haul|hold your|how|inch|into the|it start|its just|its your|jammed|just the|leg out|leg up|little breath|long as|mat|neck|not jammed|on each|one bone|or it|pedal|rolled|send|send the|shut|sip|sitting|swing the|that how|that knee|the chin|the long|then roll|there to|time you|touch your|twice|twice as|way to|your leg|your neck|your waist|youre a',
      ],
      [
        0.1,
        'and float|and your|dont let|fingertip|float|float your|just off|poking|stay glued|them up|your belly|your low',
      ],
      [
        -0.1,
        'a little|all|and|and bring|and down|apart|as|as it|as you|bar|before|before you|behind you|bell|belly button|between your|big toe|blow out|bottom|button|chair|chin out|close|come|come down|dont lean|door|down and|drive|facing|far as|floor away|forearm|going|hold|hold it|if|if it|in as|it back|it off|keep the|land|lean back|let your|lift it|like youre|middle|now|of you|on|on it|one hand|other foot|out in|out to|outside|past|poke|push|put it|round the|same|seat|side|slide|stay|stop|tall|the chair|the front|the knee|the ring|the seat|the whole|there|tight|tip|to|to get|to your|toe|up|up on|wall|weight|wider|width|with the|your feet|your heel',
      ],
      [
        -0.2,
        'a|a bit|and let|ankle|as far|at your|back of|back to|band|bit|blow|both|breathe in|breathing|drop|elbow under|end|forehead|from|from the|front of|get|goe|hand on|hang|heavy|heel|hip|home|in|in front|in the|it up|keep breathing|let it|let the|level|like|like a|line|not a|of|of the|on a|on the|one foot|onto|over your|palm|pocket|pull your|right|ring|round|second|shin|sigh|squeeze|stand|the back|they|thigh|through|through the|thumb|till|toward your|walk|want|when|whole|with your|wrist|your bum|your nose',
      ],
      [
        -0.3,
        'back|between|big|breathe|down|feet|first|foot|forward|front|go|hand|it|lean|no|nose|out|put|slow|soft|to the|up to|you|youve',
      ],
      [-0.4, 'bum|let|lift|one|out as|sit|step|straight|the|your'],
      [-0.5, 'dont|with'],
    ],
  ],
  [
    'deep-hip',
    -0.8,
    [
      [0.7, 'heavy|the back|your heel'],
      [0.5, 'back leg|forehead|into|side to|to side'],
      [0.4, 'deep|forward and|hug|knee at|low|slide the|the hand|the hip|toe turned'],
      [
        0.3,
        'and walk|at all|back of|big toe|breath out|down into|fold|front foot|gently|hand out|heel and|into the|it in|knee apart|knee down|low as|more|really|rock|shin|sit back|slide|some|spread|spread out|stretch|tailbone|than the|the front|them in|turned|turned out|walk|wide',
      ],
      [
        0.2,
        'a towel|and just|apart|arm out|asking|back on|back to|big|block|book|bum back|can go|chest tall|come out|cushion|get heavy|go heavy|hand round|has|instead|into your|kneecap|left|lie on|no prize|on a|on that|out in|past the|phone|prize|pull them|put a|right down|shuffle|sink|slowly|sort|sort of|step one|step up|the kneecap|the left|the weight|there no|through your|till its|till there|toe together|towel under|under it|up between|waiting|walk your|you feel|you like|your mouth',
      ],
      [
        0.1,
        'a hip|above the|and come|as low|away and|back knee|back till|breathe into|dont twist|down as|easy|for the|give|go and|in my|its like|just a|just above|knee dont|leg away|length|like you|little wider|loud|melt|mouth|my|not on|or your|out breath|out through|proud|round your|shoulder down|slide it|stay|tail under|that hip|that side|the bus|the low|the nose|the wrist|touching|twist|up through|wait|went|where its|you are|you went|your eye',
      ],
      [
        -0.1,
        'a bit|again|all the|and the|are|as if|as it|at your|away|back down|band|bar|before|before you|behind you|bent|blade|blow|breathe out|by your|ceiling|chin|come down|count|do|dont let|down|down and|drive|elbow|end|feet flat|forearm|from the|going|got|half|have|higher|hip width|hold|if it|if your|in as|inch|it down|it out|it up|its not|keep the|keep your|lean back|leave|let go|let it|let them|level|like|like a|line|long|look at|lower|make|me|middle|not a|of you|opposite|other foot|out to|over your|palm|pinch|pull|quick|reach|roll|round|round the|same|seat|second|see|shoulder blade|side of|somebody|squeeze|stand up|start|still|that|the bottom|the ceiling|the chair|the leg|the middle|the ring|the seat|the side|the whole|there a|they|think|three|thumb|till your|tip|to get|too|touch|toward your|until|up and|up on|want|want to|way up|when|width|with the|you should|youll|your arm|your belly|your breath|your chest|your ear|your elbow|your hip|your leg|your low|your side|youve',
      ],
      [
        -0.2,
        'a|an|ankle|arch|arm|as|as you|at|at the|behind|bell|bend|bit|both|breathe in|by|coming|ear|ease|far|finger|first|floor|get|goe|height|high|i|if|in|in your|its|keep|leg|like youre|look|no|of|of it|one|open|outside|over|ring|should|small|so|the|the floor|the other|the shoulder|the wall|the way|time|turn|two|under|under the|under your|wall|whole|with your|your|your bum|your feet|your shoulder|your toe|youre',
      ],
      [
        -0.3,
        'and|bottom|flat|hand|is|lean|lift|of the|off|off the|other|out as|over the|press|shoulder|soft|stand|stop|straight|then|thigh|to the|way|you',
      ],
      [-0.4, 'feet|slow|with'],
      [-0.5, 'dont|up'],
      [-0.6, 'it'],
    ],
  ],
  [
    'deep-knee',
    -0.8,
    [
      [0.6, 'your heel'],
      [0.5, 'forehead|heavy|knee together|out in|the back|together'],
      [
        0.4,
        'arch|back of|dont arch|heel|heel to|hip forward|knee apart|low as|only as|stay there|toe turned|turned|turned out',
      ],
      [
        0.3,
        'and walk|big toe|foot out|heel and|in front|into your|it go|one hand|other foot|really|sit|sit back|slowly|the cushion|thigh|to touch|walk your|wide',
      ],
      [
        0.2,
        'against the|apart|as close|back on|behind you|breathe into|can go|cheat|cheat it|chest up|close to|come off|cushion|down as|down into|fence|for the|forward a|gently|go and|grab|grow|grow tall|hand out|have to|in my|instead|into the|it catch|it should|lie|lie on|like you|little wider|long breath|my|pad|proud|put a|shin|sort|sort of|tail|than the|the bus|the fence|the nose|the thigh|to cheat|touch|touch your|touching|under it|waiting|you are|your tail',
      ],
      [
        0.1,
        'and stay|and tuck|anything|arm out|as low|as you|back to|catch|cheek|complain|doesnt have|dont yank|go heavy|have|hip back|it wander|knee on|nothing|opening|out long|push your|should be|squeeze the|the chest|them in|toe together|tree|tuck your|turn round|up the|wander|wider than|yank|yank it|you and|your ankle',
      ],
      [
        -0.1,
        'again|all|an|and the|arm|as|as if|as it|at the|back down|back heel|band|bar|before|before you|bell|bent|between your|blade|blow|breathe in|by your|ceiling|chest|chin|come down|coming|count|do|down and|drive|drop|each|end|eye|face|feel it|feet flat|finger|first|from the|get|goe|going|got|half|head|heel down|height|higher|hip|hip width|hold|if the|in the|in your|it down|it in|it out|it up|its not|keep breathing|keep the|keep your|lean back|leave|let go|level|line|little|look|low back|make|me|middle|not a|of it|of the|of you|on the|onto|open|out|out of|out to|outside|over your|palm|quick|reach|round|same|second|see|shoulder blade|slower|small|somebody|squeeze your|stand up|start|still|stop|tall|the|the bottom|the ceiling|the chair|the elbow|the leg|the mat|the middle|the ring|the shoulder|the side|the top|the whole|there a|they|think|three|thumb|till|tip|too|two|under|under your|up on|up to|want to|way down|when|where|whole|width|with the|wrist|youll|your arm|your belly|your ear|your elbow|your head|your leg|your shoulder',
      ],
      [
        -0.2,
        'and|away|back|bend|between|bit|both|bottom|breath|breathe out|breathing|bring|by|dont|ear|far|feel|feet|floor|foot|from|hand|high|i|if you|in|keep|like|like youre|lower|one|one foot|out on|over the|right|ring|roll|seat|side|slide|so|soft|the floor|the other|the way|time|to the|top|toward|until|way|weight|with your|your feet|your toe',
      ],
      [-0.3, 'a|at|flat|if|is|it|just|lean|lift|no|not|off|out as|over|press|pull|slow|want|you'],
      [-0.4, 'down|step|straight|then|up|with|youre'],
      [-0.5, 'its|shoulder|that'],
      [-0.6, 'leg'],
    ],
  ],
  [
    'forearm-supported',
    -0.5,
    [
      [1.6, 'elbow under'],
      [0.8, 'forearm'],
      [0.7, 'elbow|floor away'],
      [0.6, 'under your|your elbow'],
      [0.5, 'lift|lift your|under|your shoulder'],
      [
        0.4,
        'a tent|arm goe|elbow toward|forearm down|keep breathing|line|sag|squeeze your|stacked|tent|under the|waist|which|your low',
      ],
      [
        0.3,
        'breathing|come down|dont roll|down the|drag|feet stacked|grumble|head to|higher than|hip and|hip forward|i|knee down|low back|make|onto|the shoulder|then the|to heel|underneath|your right|your waist|youre a',
      ],
      [
        0.2,
        'a hammock|a time|and do|and out|at a|away behind|back like|complaining|do it|dont sink|face the|feet back|hammock|hear|higher|hip sag|hip till|if its|in a|look at|not behind|one at|pull your|push back|roll|rush|shoulder over|sink|straight line|to one|top hand|toward your|where your|you feel|your side',
      ],
      [
        0.1,
        'and have|and lift|and make|away with|back up|ear to|elbow down|if that|leg long|lift up|long line|no rush|one long|push the|put your|roll forward|sagging in|save|sink into|sip|stack|stay there|the hand|the underneath|underneath side|way|were',
      ],
      [
        -0.1,
        'a little|above|all|and bring|and the|apart|arm|as it|at the|at your|back of|band|before you|bell|between|between your|blow|bone|by your|calf|chair|come up|coming|count|dont|dont lean|drive|end|enough|every|far|float|half|heavy|high|hip width|hold|if youre|in as|in the|it back|land|lean|lean back|let go|let it|let them|like a|loop|more|of it|off the|only|open|opposite|or|other foot|out as|out of|out to|outside|over the|pocket|press|put it|reach|round the|same|seat|second|shin|short|sigh|slide|stand up|stop|the arm|the back|the chair|the heel|the leg|the thigh|the top|the whole|three|through|through the|thumb|tight|till your|tip|to get|to the|touch|up and|way down|way up|when you|whole|wider|width|your chin|your neck|your rib|youre not',
      ],
      [
        -0.2,
        'a bit|a hand|across|all the|an|and let|as you|at|back to|bar|be|before|blade|both|bring|by|chest|chin|drop|feet flat|finger|flat|foot|for the|hand under|height|if it|into the|it down|just|light|like|of your|off|on|on it|on the|out on|quick|round|should|shoulder blade|slow|slower|stand|stay|step|take|tall|the knee|the way|they|thigh|to|too|two|walk|weight|when|your back|your head|your heel|youve',
      ],
      [
        -0.3,
        'a|back|bend|big|bit|breathe out|for|get|hand|its|leg|let|lower|of|over|rib|sit|soft|the front|till|to your|turn|up|wrist|you|your|your knee',
      ],
      [-0.4, 'about|and|it|the'],
      [-0.5, 'as|go|knee'],
      [-0.6, 'out'],
    ],
  ],
  [
    'half-kneeling',
    -0.2,
    [
      [0.8, 'tuck'],
      [0.6, 'tail|tuck your'],
      [0.5, 'arch|dont arch|sore|your tail'],
      [0.4, 'arch your|back knee|foot out|front of|kneecap|on a|squeeze the|that back'],
      [0.3, 'back hip|knee on|mat|of that|out in|put a|tail under|tuck the|under it|up the'],
      [
        0.2,
        'a stretch|as close|back leg|both side|drift|drift forward|foot forward|get there|it let|it till|knee down|left|shift|stretch|the cushion|the front|the kneecap|the left|to get|towel|under and',
      ],
      [0.1, 'cheat|cheat it|chest up|close to|come off|cushion|down on|it should|lean in|one knee|pad|to cheat|what'],
      [
        -0.1,
        'about|again|all the|and let|and the|as if|as it|as you|away from|back|back down|back of|band|bar|before|before you|bent|blade|blow|breathe|breathe in|by your|ceiling|cheek|chest|chin|come|come down|coming|count|door|down and|end|face|far|feet flat|from the|get|go|got|half|head|heavy|higher|hip|hip width|hold|if your|in|in your|it|it down|it out|its not|keep your|knee|lean back|leave|let it|level|line|long|look at|make|neck|of|of you|off the|one|only as|outside|palm|past|push the|quick|reach|seat|second|shoulder blade|side|small|somebody|stand|stand up|start|step|still|stop|the arm|the bottom|the ceiling|the chair|the elbow|the heel|the leg|the mat|the middle|the ring|the side|the top|the whole|there|there a|think|this|three|through|thumb|tip|too|top|touch|up on|walk|want to|way down|way up|when|whole|wide|width|with the|wrist|youll|your arm|your belly|your ear|your elbow|your heel|your leg|your rib|your side|yourself',
      ],
      [
        -0.2,
        'a|all|an|and|ankle|are|as|at the|away|belly|bend|big|bottom|breathe out|bring|bum|by|dont|dont let|down|drop|each|ear|elbow|eye|feel|first|flat|floor|for|from|goe|going|hand|height|high|i|if|if it|if you|in the|its|just|keep|leg|let|let the|let your|lift|like a|like youre|look|lower|middle|no|not|off|on|on the|on your|out|out as|out on|over the|over your|press|pull|push|rib|roll|round|sit|slow|so|stay|straight|than|the|the floor|the knee|the other|the shoulder|the way|them|then|time|to|to the|to your|together|toward|turn|two|under your|up|up to|way|with|with your|you|your|your bum|your feet|your hip|your knee|your shoulder|your toe|youve',
      ],
      [-0.3, 'arm|at|at your|feet|like|over|shoulder|toe|youre'],
      [-0.5, 'behind you|open'],
      [-0.6, 'ring'],
      [-0.7, 'behind'],
      [-0.8, 'heel'],
    ],
  ],
  [
    'hands-supported',
    -0.3,
    [
      [1, 'wrist'],
      [0.9, 'shoulder over|the ring'],
      [0.8, 'hand in|ring|your hand'],
      [0.7, 'fist'],
      [0.6, 'and back|arm straight|hand under|keep the|kneel|strap'],
      [0.5, 'balance|forearm|forward a|in slow|low|opposite hand|pocket|press|quiet|ring at|tight'],
      [
        0.4,
        'and lift|arm locked|at hip|between the|come in|creeping|down till|drift|elbow go|feet back|fist off|glass|go on|go up|hip height|into a|it get|knuckle|like there|lock|no deeper|sag|stop there|the other|the strap|the wrist|tip forward|toe tucked|too|too far|towel|turn the|up and|up in|your butt|your thumb',
      ],
      [
        0.3,
        'a dog|a fist|a tent|a towel|a tray|a wall|all|all the|an inch|at a|away and|bend the|between|blow out|bring the|butt|chest to|come back|crush|deeper|dog|down between|drift out|drifting|drop the|elbow are|eye on|facing the|five|forward|getting|go back|go forward|going down|gone|have to|hip up|i dont|in going|into your|it hurt|jump|let your|lift your|locked|make|mat|of it|of you|on them|on top|one piece|piece|press through|push down|pushing|save|shorter|shoulder away|so your|stay level|stay low|stay still|step out|step the|still|support|tail|tailbone|tea|tent|that your|them|then the|those|thumb out|till the|time|tired|touch|tray of|tucked|turn out|wider than|with you|you have|you should|your belly|your feet|your thigh|your wrist|youve a',
      ],
      [
        0.2,
        'a full|a ring|a time|ache|ahead|and drop|and in|and turn|are creeping|are drifting|are straight|arm goe|as your|at you|back pocket|back start|barking|before it|behind the|behind you|belly tight|beside|bite|bring them|can get|chest down|clench|clench your|cranky|dizzy|dont bend|dont clench|dragging|either|elbow back|far as|fast|feet wide|fingertip|flat back|float your|for two|forearm down|four|going|going out|going up|grass|grip the|hear|hip dont|hot|hum|in each|it away|it is|just in|keep them|knee under|leaning on|leg together|lock the|make fist|mirror|moving|neck long|never let|one at|opposite|or you|or youve|out a|out behind|out of|out sideway|pedal|plank|pointing forward|press down|push away|quiet feet|quit|ring down|ring in|ring to|round your|second going|send|should feel|shoulder width|side of|sink into|slapping|small step|so the|spread|step one|straight leg|taller|tap the|that all|the bench|the ear|the grass|the mirror|the pocket|three second|thumb|to about|to hear|to hip|touching|tray|up top|wall behind|way through|when your|which|wrist are|wrist stay|you not|you push|you think|your fingertip|your fist|your jaw|your knuckle|your lower|youre all|youre going|youve gone',
      ],
      [
        0.1,
        'ahead of|and slow|as far|back flat|breathe low|clock|come forward|empty|every time|get back|go down|go out|hand down|hand off|hop|just above|knee not|little sip|lower back|lower till|march|no more|not behind|of drink|one straight|only as|right down|ring a|shelf|sign|sniff|sniff in|the clock|them in|then roll|this one|until youre|way in|wee|wet towel|you stop|your blood',
      ],
      [
        -0.1,
        'a few|after|along the|an ironing|and come|and do|and the|arm by|as it|at|at shoulder|at the|away with|back a|back into|be|bit wider|both hand|bouncing|bring your|but|chest open|crank|cushion|doing|dont just|dont lean|dont poke|dont push|dont roll|dont stick|down a|feet a|feet under|finish|foot on|for|forehead|from|from your|get it|give it|glued to|got|grab|hamstring|hand behind|hand flat|hand on|handle|head height|heel and|heel down|hip level|hip till|hold it|hug|if that|imagine|inside of|into the|it back|it doesnt|it down|it go|it goe|it off|it pinch|itll|its not|its your|keep your|knee down|knee over|knee soft|knee together|knee up|lazy|leg goe|leg out|leg up|lift|lift the|like an|line|little|lower it|me|middle|middle of|mind|no bouncing|no swinging|not your|onto|operated|opposite arm|out on|palm facing|palm up|plenty|pop|pull it|pulling|push through|rail|rise|round up|same|seat|short step|shoulder and|shoulder height|side on|sit back|sit down|slack|slide|slide your|soft|soft knee|sort|sort of|spot|stand tall|stay down|step through|stick your|straight up|stretch|swinging|than|the belly|the bum|the elbow|the middle|the pull|the seat|the toe|them down|then let|till it|till youre|tiny|to start|toward the|track|treacle|tree|up at|up over|up tall|up the|your back|your bottom|your foot|your leg|your low',
      ],
      [
        -0.2,
        'a bus|a straight|across|across the|again|along|and a|and dont|and down|and lower|and stand|and your|apart|arch|arent|arm are|arm long|as|as high|as if|at chest|back|back knee|back of|back off|back on|back to|backside|bar|belly button|bent|big toe|bit of|bone|both feet|breath|breath out|breathe|button|cat|catch|cheek|come down|coming|count|curl|dive|do|dont arch|dont drop|down and|down into|down on|each|each other|ease|easy|elbow down|end|even|face|feet forward|feet on|feet stacked|few|flat on|for the|forearm on|from it|front knee|get there|glued|half|hang|high as|higher than|into it|ironing|ironing board|it a|it come|it up|its the|lean|leave|length|lie|like youre|long|move|no higher|not|of a|of your|on|on it|one foot|onto the|out when|outside|past your|peel|pinch|point|pull the|push yourself|put the|rack|room|round|shin|shoe|short|shoulder down|side|slow as|slower than|slowly|snap|so you|some|stacked|stand|stay on|steady|step back|stick|stiff|straight down|swing|tell|than your|the bottom|the breath|the chair|the door|the leg|the lift|the rack|the same|the thigh|the wall|them up|they|to get|to it|underneath|up by|way up|what|when it|when you|with a|wrist straight|you lift|you stand|your|your backside|your cheek|your eye|your heel|your nose|your right',
      ],
      [
        -0.3,
        'ankle|arm out|back and|bell|big|both|breathing|bus|by|chest height|come up|dont|door|elbow under|feet flat|height|higher|if|in the|it out|keep|keep breathing|keep it|leg|let the|light|nobody|or your|out|out as|over the|past|pick|pull|quick|slower|take|that|the|through|top of|toward|up|your chest|your rib|your toe',
      ],
      [
        -0.4,
        'bottom|ceiling|chair|heavy|it|knee|lean back|of the|on a|palm|reach|roll|the back|the ceiling|the front|up to|your ear|your shoulder',
      ],
      [-0.5, 'blade|breathe out|flat|high|let it|open|shoulder blade|tall|weight'],
      [-0.6, 'chin|heel|sit'],
      [-0.9, 'its'],
    ],
  ],
  [
    'hanging',
    -0.5,
    [
      [1.4, 'ring'],
      [1.1, 'box'],
      [1, 'let go'],
      [0.9, 'the box'],
      [0.6, 'the ring|when youre'],
      [0.5, 'before|forward a|hang|hip height|pocket|step up|strap'],
      [
        0.4,
        'backward|bending|bent|block|come off|curl your|down till|feet down|find the|jump|knee up|little sip|of it|out of|shoulder down|sip|step off|the elbow|the strap|till your|your knee|youre not',
      ],
      [
        0.3,
        'and just|ankle|arm locked|as the|as they|at hip|back up|bend the|bending the|come down|dont drop|dont swing|down to|elbow straight|em|ever|find|get up|give|glued|grip|had|head height|high|if youve|into your|keep the|knuckle|lock|of a|push down|ring at|ring high|ring in|ring up|roll your|step back|straight at|straight back|support|swinging|the inside|the shoulder|then let|they|they come|this|till the|top|up there|way you|when|whole time|wrapped|you let|your arm|your elbow|your feet',
      ],
      [
        0.2,
        'a shoulder|again|an ankle|and roll|and step|angle|at it|back between|back on|back pocket|back the|before you|bit in|blood|blood pressure|buckle|chest proud|come out|come up|curl|dead straight|deeper|done|dont bend|dont fling|dont jump|dont kick|down a|down into|drop off|dropping|elbow are|elbow go|feet are|feet find|feet go|feet on|first|first and|fling|for your|getting|go down|good|had a|half|half a|hand open|hand over|head stay|hold on|if that|inside|it pinch|ive|just let|kick|knee and|let em|let them|lock the|locked|long arm|looking|miss|never|no deeper|no swinging|off that|on top|open the|pinch|pinch on|poking|poking out|press down|pressure|proud|reach|really|right angle|roll back|shoulder away|sit this|slide your|slow as|slower|slower than|socket|stand in|stand on|stay straight|step down|stop there|stop where|tail under|talking|the bench|the ear|the feet|the hand|the pocket|there and|this one|thumb round|thumb wrapped|tip|to hip|to long|trouble|tuck your|up high|upside|upside down|went|you come|you open|your tail',
      ],
      [
        0.1,
        'a baby|a right|all of|and get|and you|asleep|away from|baby|baby asleep|collarbone|dead|draw your|head back|kicking|leave these|let yourself|like there|looking at|lower them|no dropping|open|point|rib are|start again|stay in|the breastbone|thumb|top of|turn the|wee|you came',
      ],
      [
        -0.1,
        'across the|along|and a|and dont|and keep|and not|and stand|and stay|arch|back a|backside|be|behind|big toe|both|breath|breathe|breathe out|breathing|bring|bring them|button|chest height|coming up|do it|dont arch|down the|drag|elbow under|face|fast|feet under|flat|floor|floor away|from it|front of|goe|heel and|heel down|hinge|hip|if its|if the|in front|it come|it go|it out|itll|keep it|knee down|kneecap|lazy|left|leg long|leg out|length|lie|light|like youre|middle of|only as|onto your|opposite|other foot|over your|palm up|press|put it|sit up|sore|sort|sort of|squeeze your|stay down|steady|stick your|stretch|the chair|the foot|the heel|the knee|the seat|the thigh|those|till it|to the|toe|toward the|turn your|under|up at|up the|want to|wide|with it|you feel|you should|you want|your body|your bottom|your heel|your low|your nose|your side|your thigh|your toe',
      ],
      [
        -0.2,
        'a|a foot|across|and|and bring|as|as if|as it|as you|as your|at shoulder|band|because|behind the|bell|belly|between them|bone|bottom|breathe into|brush|bum|by your|calf|chair|chest open|degree|do|dont lean|dont stick|far|feel|feel it|feet hip|finger|finish|for a|forearm|forward|front|hand are|hand on|heavy|hip width|how|if you|if your|if youre|in|it back|it down|it in|let the|low back|lower it|mat|next|nose|not|not a|of the|on it|out in|out to|outside|pick|please|pointing|pop|pull the|push|right|seat|shin|short|should|shoulder height|shove|sigh|sit down|soft|squeeze the|stacked|step through|stick|than you|the back|the band|the door|the floor|the mat|the other|the wall|thigh|three|through the|to|until the|up to|walk your|wall|want|way down|width|you lift|you pull|your back|your belly|your hand|your shin',
      ],
      [
        -0.3,
        'arm out|away|back of|big|body|by|coming|dont|door|hand in|in as|in on|it up|leg|level with|lift|line|off your|on|other|out|quick|side|somebody|stay|the front|until|your head|your rib',
      ],
      [
        -0.4,
        'and let|apart|back|it|lean|lean back|let it|of your|on your|one|sit|squeeze|the|through|under your|wrist|your',
      ],
      [-0.5, 'foot|heel|knee|walk'],
    ],
  ],
  [
    'head-below-heart',
    -0.9,
    [
      [0.7, 'and back'],
      [0.6, 'blood|blood pressure|pressure|your head'],
      [0.5, 'between|head|hip up|roll|tuck|tuck your|up and|upside|upside down'],
      [0.4, 'between the|come out|hip stay|or|shoulder and|the knee|the shoulder|way you|your right'],
      [
        0.3,
        'and roll|anything|back between|back the|breathe into|cranky|eye|if youve|knee and|left|out of|right arm|ring|room|so if|stay up|stop where|trouble|underneath you|until|want|when youre|you came|you come|your left',
      ],
      [
        0.2,
        'and the|as far|bending|blade|came|dont fling|dont throw|far as|fling|go as|go back|got blood|had|had a|hand in|hand open|head come|head height|if that|knee to|let go|or a|or youve|palm up|pedal|roll back|send|send your|shoulder blade|side of|slide|slide it|slowly|the side|thing|throw|throw your|underneath|up over|walk your|went|you want|you went',
      ],
      [
        0.1,
        'come down|head back|hold on|into your|lift your|once|rest|ring at|sit this|that shoulder|the arm|the nose|then|youre',
      ],
      [
        -0.1,
        'air|all the|an|as if|at the|away from|back|back down|back to|band|bar|bell|blow|both|bottom|breathe in|breathe out|bring|by|by your|chin|coming|count|dont let|door|down and|drive|enough|facing|feel it|floor|from the|half|hand on|higher|if|if it|if you|in your|inch|it down|it in|it out|it up|its a|its not|lean back|little|long|low back|lower|me|nice|of you|on it|one|one foot|out in|out on|out to|outside|over|over your|pinch|pocket|pull|push the|quick|round the|same|seat|second|shin|should|side|sigh out|so|somebody|squeeze|squeeze your|stand|start|stay|still|straight|the back|the chair|the elbow|the front|the seat|the wall|there a|think|three|thumb|too|turn|wall|way down|way up|weight|your breath|your shin|your shoulder|your side|your thigh',
      ],
      [
        -0.2,
        'a bit|all|and|and let|ankle|at|be|big|come up|down|each|elbow|feel|first|flat|for|forward|from|front of|goe|heel|high|if your|in front|in the|is|lean|leave|like youre|line|neck|not a|of your|off the|rib|round|small|tall|that|the other|the top|there|they|together|top|two|up|you can|your leg|your rib|yourself',
      ],
      [-0.3, 'away|dont|foot|front|in|it|leg|let it|no|not|of|of the|on your|other|step|them|thigh|to|your back'],
      [-0.4, 'a|breath|like|off|on|your'],
      [-0.5, 'out|the'],
    ],
  ],
  [
    'heel-raise',
    -0.5,
    [
      [0.8, 'big toe'],
      [0.7, 'up on'],
      [0.6, 'and lower|calf|dont roll|roll out'],
      [0.5, 'high as|lower|the big'],
      [
        0.4,
        'and keep|ankle|as high|ball|ball of|big|both hand|high|keep hold|knee straight|rolling|rolling out|the heel|three',
      ],
      [
        0.3,
        'achilles|both|come down|dont tip|edge|even|feet hip|feet under|grow|hand on|little toe|onto|rise|roll|tall as|the calf|the edge|tip|weight|you get|your toe',
      ],
      [
        0.2,
        'all the|and one|ankle dont|as a|as tall|below|below the|bouncing|chair|down for|drifting|fat|feet on|fine|fingertip|fingertip on|grow up|hanging|hanging off|heel back|heel hanging|hip width|hold of|keep it|kerb|lift the|lower your|morning|near the|no bouncing|of it|onto the|onto your|out to|pulling|push up|roll to|sink|smaller|stack|stop and|straighten|that fine|the chair|the fat|the kerb|the little|the morning|them up|tired|up and|up onto|up over|up quick|way up|weight over|without|you rise|your big|your calf|your little',
      ],
      [0.1, 'foot on|for three|hold the|its there|out onto|the step|thing|up as|up for'],
      [
        -0.1,
        'a bit|again|and the|are|at|at your|back to|before|before you|behind|behind you|bell|belly|between|blade|blow|breathe in|breathe out|bring|by|by your|ceiling|chin|close|draw|drive|ear|end|eye|far|feet flat|floor away|for the|forward|front of|going|heavy|height|hold it|if it|in front|in the|into the|it down|keep your|lean back|leave|let go|let your|level|like|like youre|look|low back|make|mat|neck|of you|on a|one|one foot|only|open|out|out in|palm|past|pick|pocket|pull|push|push the|reach|ring|shoulder blade|slide|small|stand up|start|that|the arm|the ceiling|the elbow|the knee|the leg|the mat|the middle|the shoulder|the thigh|the wall|then|think|through the|thumb|to get|to the|too|touch|toward your|tuck|under|under the|walk|when|where|wide|with the|with your|your belly|your bum|your ear|your elbow|your hand|your knee|your leg|your rib|your side|youve',
      ],
      [
        -0.2,
        'a|about|an|and|be|bit|bum|dont|dont let|down and|each|feel|floor|from|if|if you|it up|just|lean|let it|line|middle|no|nose|not|off the|on|or|out as|put|rib|round|seat|shin|slow|so|stand|still|the floor|the front|the hip|they|thigh|through|to|together|toward|turn|until|up to|wall|wrist|you|your chest|your shoulder',
      ],
      [-0.3, 'away|breath|chest|elbow|foot|hand|into|long|off|side|the other|till|with|your|your back'],
      [-0.4, 'arm|front|in|it|let|other|sit|the|youre'],
      [-0.5, 'back|knee|leg|shoulder'],
    ],
  ],
  [
    'hinge',
    -0.3,
    [
      [0.9, 'your back'],
      [0.8, 'button'],
      [0.7, 'back of|length|loop'],
      [0.6, 'bar|bell|push your|rep|slack|stand up|straight line|tight|your hip'],
      [0.5, 'a straight|belly button|flat|its|line|round|soft|the back|till|with your|you stop'],
      [
        0.4,
        'and lift|and that|arm are|back at|bar over|body|close|down the|early|fast|forward from|from your|hamstring|handle|hike|hinge|hip and|hip up|hip width|its all|knee soft|leg out|neck|out till|pause|shirt|short|slack out|so it|squeeze|stop|table|that it|the hip|the slack|the stick|tip|wait',
      ],
      [
        0.3,
        'a beat|a foot|a metre|a time|after|after it|and its|and send|are just|at the|back goe|between|bone at|bow|breath in|breathe into|can keep|car door|click|come in|coming back|cramp|dont bend|dont shrug|dont twist|door with|elbow to|every|every rep|feet flat|feet in|flat back|floor a|flop|flop out|for your|guitar|guitar string|heaving|higher|hike it|hip are|hip back|how|if its|if you|if youre|it down|it float|it hang|it land|it like|it up|its tight|keep the|knee to|level|line from|lock|long neck|look behind|looking|looking at|lower it|metre|moving|nerve|no heaving|not an|other leg|pocket|pull|pull it|put it|roll up|rope|sharp|shove|shrug|sort|sort of|spine|squeeze a|standing leg|stay on|straighten that|take a|the hamstring|the leg|the top|the you|then snap|then stand|till your|tip forward|to a|to round|to shoulder|twist|until|up quick|when|when it|you and|you know|your leg|your shirt|yourself up',
      ],
      [
        0.2,
        'a chair|a gate|a stretch|a table|a wall|about as|across your|and squeeze|and stand|and wait|are only|are rope|armpit|as the|at a|at me|back long|back start|back until|band round|bar stay|beat|before it|belt|belt buckle|bend it|between the|both knee|bounce it|breath on|breath out|bum like|butt|chair and|cheek|chest over|chin tucked|close enough|closer|crease|crease of|dead|dont just|dont need|down and|down till|down your|drop it|each one|elbow just|end up|enough|exhale|exhale up|feet apart|feet hip|feet under|fishing|fold|from|from the|front and|full|gate|get to|go dead|go down|go up|goe round|goe up|gone|hand away|harder|hip square|hiss|hiss out|hook|im|in your|inch off|it click|it into|it leave|it roll|it to|its a|jerking|just outside|just past|just rope|just under|keep that|keep your|kiss|leave your|leg behind|light on|loop above|lower back|middle of|neck long|need|ninety|ninety degree|nip|no higher|not the|one bone|one end|one hand|one leg|one line|one straight|or a|out breath|out long|outside the|outside your|past|peel the|people|point them|pointed|press through|pulled|pulled up|pulling|push through|putting|quicker|rest|round you|same|sat|send|set|sharp breath|shoulder to|shove your|shrug it|shutting|slide|snap|socket|spin|spring|square|squeeze and|squeeze the|stamping|stand|standing|start to|stay tall|stick|stick down|still|stop when|tall and|that in|the cheek|the crease|the feet|the foot|the knot|the little|the pull|the rest|the shin|they dont|to just|to knee|too|too heavy|toward you|tummy|up in|up slowly|up the|way back|weight in|where you|width|with a|yank it|you feel|you fold|you pull|you want|youll go|your armpit|your backside|your belt|your butt|your lower|your spine|youre shutting|youve gone',
      ],
      [
        0.1,
        'ahead of|and even|and itll|any|back pocket|backside|bar at|bite|blood pressure|both feet|both of|buckle|chest is|come out|dont hang|drive your|else|enough to|feel the|feet down|front thigh|further|gently|go so|going up|heel close|heel on|it back|it if|it isnt|it start|its still|knee stay|lift the|long back|metre in|newspaper|no further|off a|only go|other hand|out at|pressure|pull the|quit|roll it|round like|round to|set it|shin stay|slide the|sniff|sniff in|soft knee|squeeze at|standing up|starting|straight and|the loop|through both|warm|your body|your fingertip|your foot|your kneecap',
      ],
      [
        -0.1,
        'a little|a tent|and bring|and make|and press|and stay|arm out|as they|at chest|back down|back into|balance|bend|bend your|bending|bit|bring it|bus|by the|chest and|clock|crank|cross|dive|do it|dodgy|dont drop|dont fling|dont roll|dont want|down a|down into|each other|ease|elbow at|elbow pinned|fall|few|find|finger|fist|fling|foot and|for three|forward a|front|front heel|goe down|got a|grass|hand down|hand in|hand off|hang on|head through|high|hip forward|hot|i can|if they|in and|into|it pinch|keep them|knee together|knock|land on|late|leaning|leg long|let go|let the|let your|let yourself|like the|little breath|me|never|next|no more|nobody|of one|off it|on it|on that|onto the|opposite arm|other knee|other one|over your|part|poke your|pull your|quick step|rise|roll back|roll out|rolling|sagging|second toe|shoe|shoulder over|shoulder up|side and|sigh out|sit back|sit up|sitting|slide up|slip off|spread|steady|step back|step out|straight down|switch|tea|tent|than the|that all|that back|the ankle|the band|the box|the breath|the chest|the clock|the grass|the long|the rail|the seat|the wall|the window|then the|there a|to be|track|turn your|up as|up off|up on|up over|waist|walk your|when you|wobble|yank on|you can|your arm|your breastbone|your waist|your wrist',
      ],
      [
        -0.2,
        'a|a big|a bit|a dog|a hand|achilles|across|across the|allowed|along|along the|and a|and down|and just|and pull|and the|and you|arm|as high|as your|away|back foot|back heel|back in|back up|before you|behind your|bend the|bent up|big toe|blow|blow out|breastbone|breathe|bring|bring the|but|cheating|come|come up|count of|deep|dont hold|dont stick|dont swing|dont tip|down between|down for|draw|draw your|drive|dropping|each hand|em|end in|eye|face|feel it|feet wide|fine|flat on|follow|for the|forearm|from you|front knee|front of|get|good|got|grab|ground|grow|had|halfway|hand under|hard|have to|high as|higher than|hold|home|hug|hurt|if it|if that|imagine|in|in toward|inside|into it|into the|is|it drop|it from|it out|it slip|it stop|it till|its only|jaw|keep|keep hold|kick|knee down|knee under|knuckle|last|lazy|lean|leave it|let it|lie|like|long breath|low back|meat|meat of|mind|more|not in|not locked|nothing|of the|on a|one foot|one knee|only as|opening|operated|or|or it|other|out like|out when|palm|pick|pinned|please|press it|puff|pull them|put the|quick|quiet|rail|ring at|run|sag|see|shoulder width|side of|side on|sideway|sigh|sit down|slip|squeeze your|stacked|stand on|stay there|stick your|stiff|stop there|strap|swing|swing your|take your|tell|than you|that knee|that your|the ball|the ground|the inside|the mat|the meat|the opposite|the outside|the towel|them back|till it|to the|top of|tray|tuck the|two|two second|under shoulder|under you|under your|underneath|up behind|up toward|use|wall|way down|well|where your|will|without|wrist straight|you|you dont|you like|you push|you reach|you think|your chin|your ear|your face|your feet|your nose|your right|youre not',
      ],
      [
        -0.3,
        'all the|ankle|arm up|at your|back knee|ball of|big|calf|can|come back|cushion|do|doing|dont|dont let|ear|elbow under|five|foot off|foot on|for|forehead|forward|forward and|go|heel|heel up|hold it|holding|i|if youve|keep breathing|knee over|knee up|left|leg up|let|little|low|mat|nose|now|on|on to|opposite|out|pointing|reach|round the|small|straight|straight up|the chair|the kneecap|the ring|the toe|them|then let|there|they|theyre|toward your|towel|under the|want to|window|your|your rib|youve got',
      ],
      [
        -0.4,
        'and|and back|behind|breathing|elbow|head|it goe|off|pinch|side|than|the|the other|the side|thumb|together|turn|up and|walk|whole|wide|your breath|your shoulder',
      ],
      [-0.5, 'height|slow'],
      [-0.6, 'off the|right|ring|sit|step|the front|under'],
      [-0.7, 'toe|wrist'],
    ],
  ],
  [
    'hip-rotation',
    -1.6,
    [
      [0.7, 'deep in'],
      [0.6, 'all|deep'],
      [0.4, 'and knee|ankle|ankle over|at all|feel it|hand and|knee at|let go|one knee|the hip|wrist'],
      [
        0.3,
        'about a|back leg|behind the|bent|bit|dont roll|front foot|get down|in toward|it deep|its about|leg in|on a|slide the|the bum|the mat|through and|toward you|up tall|where its|you feel',
      ],
      [
        0.2,
        'a pillow|above|and draw|and pull|another|backward|been|bit more|bump|come out|dont yank|down for|down on|exhale|fold|for one|for two|forearm|go a|hand under|hand width|head on|heavy on|higher|in to|keep the|kissing|knee out|lift one|loop|more|nip|onto|open the|out to|outside of|over it|pillow|rounding|shin|side of|stretch|tall and|that all|that leg|the lift|the outside|the right|under shoulder|up for|yank|you and|you open|your forearm|your wrist',
      ],
      [
        0.1,
        'a hand|above your|and|and put|as high|bit of|breathe into|down again|draw|get it|hip stay|if|its that|knee bent|knee under|only as|onto your|sit up|stay level|the left|tip forward|under hip|wrist are|your right',
      ],
      [
        -0.1,
        'all the|are|as|as if|as it|as you|at your|away from|back down|back of|back to|band|bar|be|before|behind you|bell|belly|between your|big toe|blade|blow|both|breathe in|breathing|by your|ceiling|chair|chin|come up|coming|count|do|down|down and|drop|ear|end|eye|far|feet flat|first|floor|for|front|going|got|half|hang|have|heel|height|hip width|hold it|i|in|in front|in your|is|it out|it up|its not|keep your|leave|let|let your|like a|like youre|look|look at|low back|lower|make|me|middle|neck|nose|of|of it|of you|only|out|out as|out in|palm|pocket|push the|quick|ring|seat|second|should|shoulder blade|sit|slow|small|so|somebody|start|take|the arm|the bottom|the ceiling|the chair|the elbow|the leg|the middle|the wall|the whole|there a|they|think|three|thumb|time|to the|too|touch|turn|up on|up to|wall|want|want to|way down|way up|when|whole|wide|with your|your arm|your back|your belly|your bum|your chest|your ear|your elbow|your feet|your head|your heel|your leg|your rib|your toe|yourself',
      ],
      [
        -0.2,
        'a|an|bend|big|bottom|by|chest|dont let|elbow|flat|foot|front of|hand on|hold|if it|it|just|lean|let the|line|little|long|low|not|off the|on the|one foot|rib|round|soft|squeeze|stand|step|still|stop|straight|the shoulder|the way|them|through the|to your|tuck|under the|way|with|you|your shoulder',
      ],
      [-0.3, 'arm|at the|dont|like|of your|off|push|shoulder|the|then|there|till|your'],
      [-0.4, 'back|feet|to|toe|up|youre'],
    ],
  ],
  [
    'isometric',
    -0.2,
    [
      [0.9, 'elbow under'],
      [0.7, 'breathing|keep breathing|low|youre a'],
      [0.6, 'arm straight|back in|jump|kneecap|low back|ring|sip|the kneecap|under the|you reach|your low'],
      [
        0.5,
        'forearm|had|hip|home|inside|leg long|let go|mat|over your|press|quiet|shoulder are|squeeze it|strap|tent|the inside|the ring|your hand',
      ],
      [
        0.4,
        'a tent|air|and swap|box|buckle|do it|each other|everything|glued|go away|goe|grip|hold your|holding|inside of|it pinch|knee down|kneel|lift your|little breath|little sip|lock|look|look at|make|one foot|onto one|push the|ring at|sag|shoulder over|staying|straight out|swap|the air|the box|the hand|the strap|too|towel|your breath|your thigh|youve a',
      ],
      [
        0.3,
        'a bus|a good|a spot|an|an inch|and hold|and just|and press|anybody with|are up|arm goe|arm up|as low|away|back on|both hand|breastbone|bring them|can|chair back|come in|complaining|count out|creep|cup|cup of|dip|dog|dont hold|dont jump|dont let|dont sink|down on|drifting|elbow toward|find|find the|finger|float|float the|foot just|from you|glass|had a|half|higher|hip and|hip level|home and|i can|if its|if you|imagine a|in there|in to|isnt|it straight|it under|knuckle|leg goe|lift|low as|of you|off|off and|off that|off the|on to|on your|operated knee|opposite hand|out there|poking|pop it|pull up|put your|reach|reach the|right arm|roll forward|shin level|should feel|shoulder|side on|sit tall|slide down|slide up|something that|sore|spot|spot on|squash|stand side|stare|stare at|step off|step up|the bench|the door|the heel|the opposite|there|thing|to a|together|too far|turn you|underneath|up a|waist|wet|you hold|you let|you wobble|your breastbone|your hip|your knee|yourself',
      ],
      [
        0.2,
        'a banana|a count|a dog|a new|a shoulder|a wet|ache|against your|and float|and lift|and pop|and stare|and step|and the|anybody|arche|are drifting|are poking|arm back|ask|at chest|at it|at you|back come|back flat|back stay|balance|banana|bed|before you|belly|belt buckle|bench|bend your|bit in|bottom one|breathe low|bus|cheek|chest height|chin not|coffee|come forward|come home|come off|coming off|count|count of|creep up|creeping|cushion|day|done|dont kick|dont swing|drift|dropping|ever|eye on|face|feet find|feet off|feet stacked|feet together|finger on|fingertip|firm|floor away|foot off|for three|for your|gently|go as|go forward|go with|gone too|good|grab|grab it|hand and|hand off|hand open|hand over|head back|head height|heel in|hip are|hip dont|hip height|hip like|hip till|holding a|holding it|holding your|hum|i see|if there|imagine|inch|it as|it between|it is|its your|ive|jammed|just above|just clear|just let|just off|kick|knee over|leg away|let that|lift the|like there|lock the|long|loud|lower back|me|new|new hip|no higher|not jammed|of five|on me|on you|onto|opposite|or it|or the|other|out loud|out the|park|peel|pinch|pinch at|poking out|popping|press the|press through|push down|push your|reach one|rib are|ring in|rise up|rolled|rolled towel|rush|shorter|sign|sink into|sip the|sit on|slide|slow as|something|squeezed|stack|stacked|stand on|start to|stay put|straight up|talk|talk to|tea|tell|than you|than your|that all|that knee|the bed|the feet|the joint|the leg|the operated|the other|the shin|the sore|the underneath|them|them home|themselve|there a|there for|this one|thumb|to be|to heel|to turn|toe on|toe tucked|tomorrow|top hand|toward your|towel under|towel up|tray|turn the|twist|under|under your|underneath side|until youre|wall and|want to|way in|way through|way you|wet towel|while|while you|will do|you can|your neck|your right|your towel|your waist|youre holding',
      ],
      [
        0.1,
        'a full|about to|and a|and stay|are creeping|arm by|arm forward|as well|at something|away with|back start|can without|dont be|drop off|either|every time|feet close|feet down|feet wide|fist|five|flat as|float your|for a|forearm down|go out|goe back|going out|hand go|hand round|head to|height and|higher than|hip in|hip sag|hover|hurt|into your|isnt moving|leg together|moving|on top|one end|open the|or youll|picture|press down|press your|put|put the|quiet feet|rib stay|ring a|ring up|roll your|saying|shift|shoulder and|shoulder away|shoulder width|slide them|sneaking|so youre|stay still|stay there|switch|that isnt|the backside|the ear|the grass|the towel|the wrist|the you|them out|then pull|then you|to feel|to hip|train|trouble|tucked|turning|want the|watching|which|you think|your belly|your face|your finger|your fist|your lower|your tailbone',
      ],
      [
        -0.1,
        'a moment|a pencil|a pinch|a straight|a wee|about|achilles|and sit|arch your|armpit|as if|back heel|back hip|back till|bang|before it|bell in|bending|bending the|big breath|big step|big toe|bottom of|brake|breath out|brush your|by|cat|chest to|closer|could|cranky|deep in|dont crank|dont stick|draw it|each one|edge|elbow at|elbow back|feet are|flop|for four|forehead down|from it|from your|front heel|get the|goe up|grow|hand flat|handle|hip up|however|if it|im|in as|in on|in through|it doesnt|it get|it let|it like|it pull|keep the|knee bent|knee on|lap|leg in|lie back|long neck|lower till|meet|nearly|nearly straight|not a|not in|not out|nothing|opposite knee|out over|outside of|overhead|palm down|palm up|pencil|phone|point|pretend|pulled up|put them|quick step|rib tucked|right down|round up|second down|shirt|shopping|shoulder down|shove|sideway|sink|sit up|slack|slide the|slow it|slower than|smooth|stand up|steady|stick|stop at|straight down|straight leg|straighten|swing your|take three|tall on|that back|the bell|the big|the chest|the chin|the edge|the line|the out|the speed|them away|to start|toe out|toe pulled|tucked in|under you|up through|upright|wait|walk to|we|whole leg|width|wrist straight|yanking|you go|your body|your chest|your eye|your head|your leg',
      ],
      [
        -0.2,
        'a big|a fist|a hand|a long|about a|across the|all|all the|and come|and down|and it|and keep|and peel|and push|and round|and send|ankle over|apart|arm are|as it|at shoulder|back a|back foot|back pocket|back under|ball|bar|below|belt height|bend the|bit|body|book|breathe out|brisk|brush|carpet|chest and|chest down|chest up|click|come to|coming down|coming up|cramp|crank|curl|deep|degree|dive|dont just|dont reach|dont tip|down at|drop|dumb|dumb bell|elbow wide|every|eye up|facing|feet go|feet in|feet under|fence|finish|fire|fold|follow|foot|foot in|foot on|for one|from|front foot|front knee|gap|go a|halfway|hand are|hang|haul|head|head up|heel|heel and|heel down|here|how you|if the|if youre|in going|in one|in toward|is|is plenty|it a|it come|it hang|it slowly|it up|its a|its not|its up|jog|keep your|knee are|knock|lace|lead|lead with|lean|lean back|leaning|let it|level with|lie|long arm|look down|loose|lower it|make it|metre|middle of|mind|most|most of|neck|nice|nip|nose|nose to|of|of a|of your|off your|on that|onto the|or your|other knee|out a|out breath|out coming|own|pin|proud|pull it|push off|push through|reach for|rep|roll down|roll out|round your|run|second toe|shoulder height|side and|side to|sit back|sit down|skip|slide it|snap|so if|soft|speed|squeeze the|stiff|stretch|swing|t|take a|than the|that foot|the bottom|the calf|the carpet|the fire|the hip|the knee|the room|the same|them down|them up|then push|there no|these|thigh level|through and|thumb out|till it|till the|tingle|tingling|tip over|to get|to lift|to side|to your|toe to|tree|tug|turn round|under hip|up for|up tall|want it|way|weight|were|were after|where|where its|whole|whole foot|with|working|yank|you like|you pull|you rise|your calf|your nose|your toe|yourself up',
      ],
      [
        -0.3,
        'across|and roll|and stand|as|back|back to|band|beat|bent|bottom|bounce|bouncing|breathe into|bring your|coming|cross|dont arch|dont drop|dont lean|dont yank|down between|drive|easy|end|enough|exhale|fall|feet hip|flapping|foot out|for the|from the|get|get it|going|going down|going up|hamstring|hand behind|hand in|hold the|in|it|it off|it out|lazy|leaning back|length|light|like|like a|next|no bouncing|not at|out on|pedal|pillow|plenty|rhythm|round|second|should be|slide your|slower|stand tall|stay down|stop|that a|the arm|the first|the neck|the outside|the side|the way|they|through the|tuck your|turn your|up to|up with|with a|with it|you get|you lift|you push|your|your heel|your rib|your tail',
      ],
      [
        -0.4,
        'after|and lower|arch|arm out|at the|back knee|bell|bend|bone|both|breathe in|calf|catch|down|down and|feet flat|forehead|front|hip width|its|let the|little|loop|lower|on it|one knee|other leg|out like|past|room|seat|short|sigh|the end|the seat|through|two|way down|way up|when you|wide|your foot|your shin',
      ],
      [
        -0.5,
        'again|as you|big|chest|come up|heavy|high|more|out to|outside|palm|same|side of|sit|take|the top|till|turn|walk',
      ],
      [-0.6, 'a little|blade|out|shoulder blade|tall|the front'],
      [-0.7, 'in the|quick'],
    ],
  ],
  [
    'jump',
    -0.6,
    [
      [0.8, 'drive|land'],
      [0.7, 'the ground'],
      [0.6, 'ground|land on|you land'],
      [0.5, 'can|dum|jump|push off|rhythm|shoulder over|skip|stick|the other|up on'],
      [
        0.4,
        'a knee|bounce|da|da dum|dont hold|dont reach|drive the|have to|heel up|hop|hot|knee to|march|other|pocket|puff|running|slapping|the air|the ball|the knee|then the|time|under there|when you|your breath|your shin',
      ],
      [
        0.3,
        'air|at you|back pocket|back start|ball of|beat|blow|break|drifting|from the|get your|go back|hand loose|hang|hang there|have|heel as|height|hold your|instead|jumping|knee in|knee up|leaning back|leg out|need to|opposite|opposite arm|quiet feet|reset|shin|sit down|snap the|step the|straight down|tent|the ankle|the track|the wrist|to about|to get|underneath you|up and|when|width|you have|your wrist',
      ],
      [
        0.2,
        'a chair|a time|achilles|across to|ahead of|and down|and in|and land|and the|ankle|are drifting|arm and|as a|as close|back behind|ball|belt height|blow out|breath out|bring them|chest up|come in|creeping|doesnt|dont sit|down under|feet go|find|for two|go again|hand by|hang in|its a|knee come|landing|left|light|look at|lot|lot of|neck long|need|not your|on somebody|one at|other knee|phone|pick it|popping|puddle|quick|quiet|reach|reach out|shin or|snap|sneaking|spread|stamping|stand tall|stay on|stiff|stop and|the far|theyre|through it|to be|track|underneath|up in|want the|want to|with the|wrist are|yank it|your ankle|your foot|youre late|youve got',
      ],
      [
        0.1,
        'a beat|a tent|and drop|at a|belt|beside|blow on|chest to|clock|dont look|dont push|every time|feet hip|feet in|find a|foot back|go up|hum|is plenty|knee only|knee out|ligament|like the|next one|not to|or your|other foot|quick and|reach for|reach with|step one|that all|the backside|the clock|the feet|the right|the slow|toe when|turning|when your|you can',
      ],
      [
        -0.1,
        'an inch|and your|ankle over|arm out|as high|band|before you|behind|bend your|bent|blade|bone|come back|down the|down with|draw|elbow under|end|face|facing|front|hand|high as|hold the|if it|in as|into the|it back|it come|it go|it in|itll|its|keep breathing|keep the|knee bent|lane|lazy|let your|lift your|near|nobody|only as|outside|peel|pinch|properly|put it|round the|shoulder blade|side of|sigh|slide|slower than|stay|the band|the bar|the big|the hand|the shoulder|the whole|they|through your|thumb|tight|till your|till youre|too|top of|towel|tucked|wider|you come|you get|you want|your belly|your chin|your nose',
      ],
      [
        -0.2,
        'a bit|able|able to|above|and stand|apart|arch|arent|arm straight|as if|at|back|bar|be|be able|bell|between your|bring it|but|by|ceiling|change|chin|come|come up|coming|count|cushion|dead|door|down and|drop|elbow|enough|eye on|fall|feel it|feet flat|flat|foot on|grass|grip|grow|heavy|heel and|in your|inch|inside|into|its the|kneecap|know|leg up|let go|like somebody|little step|make|me|middle|not|now|of|of it|on to|open|out of|palm|past|pull your|rib|round|second|should|side|sit up|slower|something|squeeze your|stand up|steady|straight|stretch|tail|tell|the ceiling|the chair|the middle|the nose|the ring|the seat|the way|tip|toward|tuck your|until|up off|up tall|way|what|where|wide|with your|you know|you should|your arm|your ear|your elbow|your head|your hip|your leg|your rib|your thigh|your toe',
      ],
      [
        -0.3,
        'an|belly|bend|big|big toe|bit|both|bottom|breathe out|breathing|down|ear|goe|home|in|it down|let it|lift|lower|nose|of the|on|one hand|over the|press|pull|ring|roll|shoulder|slow|small|so|the bottom|the top|the wall|through|through the|toe up|together|top|tuck|weight|whole|you go|youll|your back|your shoulder',
      ],
      [-0.4, 'a|between|feel|head|it|leg|let|put|squeeze|till|turn|wall'],
      [-0.5, 'first|hand on|keep|the|to the'],
      [-0.6, 'breathe|that'],
    ],
  ],
  [
    'kneeling',
    -0.5,
    [
      [0.8, 'kneel|tail'],
      [0.7, 'tuck'],
      [0.6, 'knee down|tuck your'],
      [
        0.5,
        'arm straight|back knee|back to|cushion|forehead|front of|in front|mat|on a|only as|squeeze the|you can|your hand|your tail',
      ],
      [0.4, 'and walk|back hip|big toe|far|front|knee on|low|out in|sit back|the ring|too far|under it'],
      [
        0.3,
        'and away|as far|blow as|breathe into|down on|far as|fold|forward and|hand out|heel and|into the|it pinch|its the|kneecap|let your|low back|one knee|other foot|pad|pinch|put a|rib stay|ring|ring at|sit your|tail under|the back|the cushion|then pull|toe together|too|tuck the|walk your|where you|your heel|your rib|your thigh',
      ],
      [
        0.2,
        'a chair|arch|arch your|arm go|asking|away again|back and|back from|back on|back the|bell at|block|book|both side|breath out|bum back|can get|centimetre|cheek|come in|dont arch|drift forward|easy|find|foot off|foot out|for a|front knee|get back|go out|going out|gone too|heavy|hip forward|home|instead|it let|knee apart|lie|lie on|moment|no leaning|no prize|nobody|of you|out breath|past the|pillow|pinch at|prize|rocking|sag|send|shorter|shouldnt|shuffle|sign|sore|step one|stretch|that back|the breath|the joint|the kneecap|the little|there no|three second|tip forward|touching|towel under|tucked|waist|went up|with you|wrist stay|you want|youre at|youre putting|youve gone',
      ],
      [
        0.1,
        'a towel|arm long|back in|complain|find a|getting|go heavy|go long|goe over|hand finish|it till|knee goe|lean on|little toe|long breath|long in|of that|out through|putting|rhythm|roll the|shelf|tall on|the bell|the belly|the low|them back|top shelf|water|when youre|yanking|your low',
      ],
      [
        -0.1,
        'about|again|all the|an|are|as if|as the|at the|away|back a|back heel|backside|be|before you|bend the|bent|bring the|button|by your|chin|count|dont hold|down and|drive|every|facing|feet under|floor away|good|higher|hip width|if its|if youre|if youve|inside|is|it down|its a|just|keep the|knee and|knee bent|knee together|knee up|let them|lift your|line|look at|loose|lower|me|middle|neck|onto|open|other|outside|over|over your|peel|point|quiet|room|round the|side|side of|slowly|squeeze your|stand up|step|swing|take|tall|that|the elbow|the heel|the leg|the seat|the shoulder|then|there a|through|through your|till the|till your|toward the|up and|up off|way down|way up|wider|your ear|your leg|your neck|youre not',
      ],
      [
        -0.2,
        'a|across|across the|air|all|as a|back up|before|behind|bend|blade|bone|breathe|but|coming|dont let|down|each|ear|eye|face|feet flat|first|flat|forearm|grab|half|hand under|head|heel down|height|if you|it out|it stop|keep your|land|lazy|level|light|like|make|not|now|of the|off the|one hand|opposite|palm|pointing|pull your|push the|quick|right|seat|shoulder blade|sigh|small|spine|stand|start|stay|stop|than|the bottom|the chair|the floor|the knee|the other|the side|think|thumb|till|to the|toe up|touch|toward your|up on|way|with the|your breath|your feet|your head|your hip|your nose',
      ],
      [
        -0.3,
        'a bit|ankle|as|at|behind you|bit|bottom|breathe out|by|elbow|finger|floor|high|i|in the|it|its|lift|like youre|look|off|on the|out|push|round|slow|time|to|with your|your chest|your toe|youre',
      ],
      [-0.4, 'if|keep|let it|one|out as|shoulder|toward|turn'],
      [-0.5, 'chest|dont|you'],
      [-0.6, 'up'],
      [-0.7, 'leg'],
      [-0.8, 'feet'],
    ],
  ],
  [
    'leg-lowering',
    -0.4,
    [
      [0.8, 'leg up'],
      [0.6, 'low'],
      [0.5, 'arm by|as it|as low|bend|ceiling|chin|draw|knee over|leg|low as|the ceiling|your back'],
      [
        0.4,
        'again|air|arche|arm and|as the|bending|both leg|by your|far|glued|good|good knee|hand under|if the|low back|other knee|peel|shin level|sock|sock on|tea|then|whole leg|your bottom',
      ],
      [
        0.3,
        'across the|along the|and start|and swap|arm up|as a|as far|as they|back into|bring|bring them|chin not|far as|floor and|foot flat|from you|goe|going down|heel up|higher|home|into the|isnt|it arche|it away|it leave|it out|its only|know|leave the|leg away|lie|lie back|mat|only as|opposite|over your|right arm|send|send it|slower than|so it|spine|start to|straight up|stretch|swap|the air|the hip|the knee|the low|the mat|the opposite|the whole|then lift|tight|till its|toe pointed|too|toward your|under your|up off|you can|you know|you lift|your spine',
      ],
      [
        0.2,
        'a lift|a sock|a whisker|across|and float|and leg|and lie|and send|and your|are bending|back come|back stay|back up|banana|bed|bent up|boat|can keep|coming off|degree|everything|float|further|go away|go back|goe down|gone|gone too|heel on|hip to|home and|in a|in like|in to|it bend|it slower|its tight|jammed|knee up|kneecap|leg goe|leg long|leg straight|lower them|lower your|make it|more|not jammed|off your|only your|opposite arm|peel off|people|pointed|press the|press your|pull the|pulling|roof|sag|shoulder and|sip|slide|slide it|slow as|so stop|speed|table|tap the|tea tray|that all|that cheating|that how|the bed|the belly|the heel|the leg|the light|the roof|the slow|themselve|then lower|then the|they go|tighten|to where|tomorrow|too far|toward|tray|treacle|until its|up at|up over|when it|where it|where its|whisker|your ear|your leg|youve gone',
      ],
      [
        0.1,
        'a banana|a ruler|a stretch|and the|arm back|bag|breathe normally|daylight|daylight under|draw it|finger and|hitching|knee bend|normally|one arm|opposite leg|or youre|poking|pulled|ruler|slide the|swimming|them home|then float',
      ],
      [
        -0.1,
        'ahead|an inch|and dont|and down|and stand|arch|arm out|ball|ball of|band|before|behind you|behind your|big toe|blade|body|bone|both feet|bounce|by the|come down|dont lean|down on|down the|drive|drop|elbow under|enough|eye on|feel it|feet hip|feet under|fist|floor away|foot on|for three|forearm|go|half|hang|head|heel down|if youve|in the|it off|its the|just above|keep|keep it|knee down|knee soft|land|leaning|line|next|nobody|not|of it|of the|on it|one foot|one hand|one knee|open|other foot|out like|pinch|pull it|shoulder blade|side|stand up|stay on|straight back|tail|take|the arm|the bar|the bottom|the chair|the elbow|the ring|the seat|think|through your|till|till your|touch|two|under the|up on|wider|width|with a|with the|you dont|you want|your foot|yourself',
      ],
      [
        -0.2,
        'a little|after|an|and|and keep|and let|and lift|and pull|ankle over|as if|back of|bar|bell|between|between the|big|breathing|calf|chair|cheek|close|come out|curl|down|each|end|every|facing|feet flat|fingertip|foot|for|for the|forehead|front of|going up|hand on|have|in as|in front|inch|it|it go|its your|keep breathing|lazy|lean back|middle of|near|neck|nose|one|onto|other leg|out|out in|out of|outside|pocket|pull|pull your|push the|push through|rib|round the|seat|should|slowly|squeeze|standing|steady|that leg|the shoulder|the top|the wall|there for|through the|thumb|time|tip|toe|top|toward you|tuck|turn|up a|walk|wall|want to|weight|were|wide|you|you come|your arm|your hand|your nose|your rib|your shin|your shoulder|your wrist',
      ],
      [
        -0.3,
        'a|at your|behind the|breathe into|eye|front|height|hip width|if you|its|let go|let it|let your|no|push|ring|round|soft|straighten|the back|through|to your|with|wrist|your|your elbow|your knee',
      ],
      [-0.4, 'feel|in|just|lean|let|of your|on|on the|roll|sit|stand|the|want|your toe'],
      [-0.5, 'dont|feet|forward|of|shoulder|step|tall'],
      [-0.6, 'behind|elbow'],
      [-0.7, 'hand'],
    ],
  ],
  [
    'load-over-face',
    -0.5,
    [
      [0.7, 'lie'],
      [0.6, 'press'],
      [0.5, 'bell|blade|shoulder blade'],
      [0.4, 'bent|degree|eye|feet flat|it come|knee bent|out like|over your|the elbow|till the|under the|way down'],
      [
        0.3,
        'bench|bottom of|bounce|breathe in|dont bounce|dumb|dumb bell|elbow about|eye under|in as|in on|not out|pinch|the bar|touch|when you|your eye|yourself',
      ],
      [
        0.2,
        'arm|at|bar|bring it|bum stay|come|down|five|forty|forty five|from it|halfway|knuckle|lie down|lie on|like|off|on your|pinch your|press it|push yourself|right round|stacked|stacked over|stay on|the bench|thumb|touch the|touche|wrist stacked|wrist straight|you press|your back|yourself away',
      ],
      [
        0.1,
        'alway|an arrow|and press|are|arrow|at the|at you|behind|bell in|blow|blow out|both|breastbone|breathe|can|dont let|dont reach|down through|down till|down to|down with|elbow at|for|get|go|goe|going|hand over|i|if it|is|knee|leave it|like an|like youre|lower them|on it|one|only|out on|pinned|pushing|put|rib and|round the|second|shirt|shoulder pinch|slow on|stand|stop when|that|the bell|the bottom|thing|to it|to your|up again|want|whole|wrist|you|your face|youve',
      ],
      [
        -0.1,
        'and the|ankle|as if|back down|before you|breathing|count|down and|front of|got|hang|have|heavy|higher|hip width|hold it|lean back|line|look at|low back|make|me|of it|on a|one foot|onto|out in|out of|seat|shin|slower|small|the chair|the heel|the leg|the side|tip|too|weight|with the|your belly|your leg|your side',
      ],
      [
        -0.2,
        'all|and let|band|be|before|behind you|bend|big|by your|chair|come up|door|drop|far|feel it|first|hand on|head|high|if the|if you|if your|it out|let the|let your|level|mat|middle|neck|palm|same|should|side|slide|slow|soft|start|than|the hip|the mat|the middle|the ring|the shoulder|the wall|there a|thigh|this|time|under your|walk|wall|where|wide|width|you can|your bum|your ear|your toe',
      ],
      [
        -0.3,
        'as|at your|belly|breath|breathe out|by|chin|ear|feet|forward|hold|in front|in the|its|just|keep|lean|let it|lift|little|look|no|nose|of|on the|pull|ring|sit|squeeze|take|tall|the front|the knee|the other|the top|then|there|they|through|toward|turn|your hand|your head|your knee',
      ],
      [
        -0.4,
        'a|and|back|dont|feel|foot|front|hand|heel|height|if|in|it|leg|let|long|of the|on|or|other|out|step|the|to|top|up|your|your hip|youre',
      ],
      [-0.5, 'toe'],
      [-0.6, 'hip'],
    ],
  ],
  [
    'lunge',
    -0.5,
    [
      [1.2, 'back knee'],
      [0.9, 'front heel|front knee'],
      [0.7, 'the front|tuck'],
      [0.6, 'bell|straight down'],
      [0.5, 'foot forward|forward|front|knee down|of that|that back|through the|up through'],
      [
        0.4,
        'arch your|back hip|both side|dive|drop the|front leg|heel up|in as|one foot|one knee|other leg|push off|step|step one|tuck the|tuck your',
      ],
      [
        0.3,
        'a fist|asking|back heel|bell at|big step|drop|fist off|foot|front foot|front thigh|help|inch off|it let|keep the|knee goe|knee stop|lace|landing|ligament|push up|sink|tail|tail under|that hip|the ring|thigh|way down|you stand',
      ],
      [
        0.2,
        'a beat|a stretch|a tightrope|and come|arch|as wide|back and|back foot|beat|bell in|bounce|cave|dive in|dont get|dont haul|down on|drift|drift forward|drop straight|dumb|dumb bell|each side|eye up|feel the|feet on|fist|foot in|goe in|grass|haul|heel heavy|hop|into that|inward|it cave|it dive|it doesnt|it for|it till|knee to|leg stay|little breath|load|middle toe|on a|on each|on hip|on one|one leg|onto|other way|pay|rail|rep|ring at|shift|side and|softly|stay flat|stay in|stay straight|steady|step back|stop a|straight leg|take your|that your|the back|the grass|the kneecap|the toe|the weight|then push|through|tightrope|toe when|top of|toward the|under and|upright|wide as|you sink|youll be|your front|your tail',
      ],
      [0.1, 'a long|chest tall|dont tip|home|kneecap|land|nearly|out breath|stop and|wander in|wobble|your weight'],
      [
        -0.1,
        'a hand|again|against|against the|all|apart|arm out|as|as far|as it|away from|back down|band|bar|blow|blow out|bone|bouncing|bring the|calf|ceiling|chest open|chin|count|dont hold|dont lean|dont let|down to|ear|feet flat|float|forearm|go|good|grow|higher|if its|if your|if youre|isnt|it out|it up|knee up|lean back|leave|let it|let them|level|make|neck|no bouncing|of you|on to|operated|or|other knee|out in|palm|pinch|round the|see|squeeze your|swing|the arm|the ceiling|the chest|the elbow|the shoulder|there till|think|three|thumb|till your|together|top|toward your|under your|until|up on|up to|want|want to|wider|width|with your|you go|your|your belly|your breath|your ear|your elbow|your head|your leg|youre not|youve',
      ],
      [
        -0.2,
        'a|across|across the|air|and lean|and let|ankle|as a|as if|away|back of|belly|big toe|breathe|breathe out|breathing|coming|dont|end|face|facing|far|feet|first|flat|from the|grab|hang|head|heel down|if|in|in front|in the|it down|knee and|lean|let the|let your|like a|long|long breath|on it|on your|open|other|out|pointing|reach|rib|right|seat|sigh|sit|slide|slow|slower|small|somebody|the chair|the foot|the knee|the leg|the seat|the thigh|the wall|them|there|to the|to your|touch|under|wrist|you feel|your bum|your feet|your heel|your hip|your shoulder',
      ],
      [
        -0.3,
        'at|bend|bend the|bottom|bum|elbow|finger|hand|high|if you|it|its|lift|like|lower|no|nose|not|of|of the|of your|over|press|quick|roll|round|should|so|to|turn|up|walk|wall|whole|whole foot|you|youre',
      ],
      [-0.4, 'and|at the|bring|from|let|pull|than'],
      [-0.5, 'arm|the'],
      [-0.6, 'shoulder'],
    ],
  ],
  [
    'overhead',
    -0.4,
    [
      [1, 'ring|the box'],
      [0.9, 'box'],
      [0.8, 'overhead'],
      [0.7, 'rib'],
      [0.6, 'back down|ear|kneel|ring high'],
      [
        0.5,
        'a little|a shoulder|bending|down to|ever|head|it pinch|knee up|pinch|press|press it|slide|tail|them back|they come|tuck your',
      ],
      [
        0.4,
        'and back|and pull|arm straight|as far|as they|bar|before|curl your|dip|dont drop|dont lean|drop|far as|find|find the|hang|it up|leave|let go|no swinging|past|stand on|straight|tail under|that your|the hand|the shoulder|then let|then pull|tuck|up there|upside|upside down|your arm|your ear|your knee|your rib|your shoulder|youve',
      ],
      [
        0.3,
        'a banana|a fist|a lift|are bending|arm go|asleep|at it|at your|back from|back to|backward|banana|bending the|bit in|block|bum|can get|ceiling|dont bend|dont go|down a|fine|flat on|get back|go long|go overhead|go up|going|going up|grip|hand at|head through|hold the|however|if a|if that|in front|into a|knee come|let your|on a|only as|out going|out of|pedal|pinch on|put your|rib down|rib tucked|roll your|send|shorter|shoulder catch|sign|sit this|socket|step off|stop|swinging|the arm|the ceiling|the chin|the top|the way|the whole|the window|them up|there|there and|they|they go|theyre|think of|thumb round|too|too far|top|tucked|up and|up till|weight|when youre|whip|window|with it|wrist straight|your bum|your head|your tail|youre not',
      ],
      [
        0.2,
        'a bar|a long|an ankle|and get|and rest|and roll|and send|and then|and you|arm by|at all|away and|baby asleep|back between|back flat|back pocket|back up|belt|between the|blow|blow on|bum back|care|catch|chin|collarbone|cranky|dead straight|dont care|down into|drag them|drop off|drop the|dropping|elbow are|elbow to|everything|eye level|facing in|far|feet are|feet go|finish|finished|for the|getting|goe up|going out|got a|grip the|half a|hand over|hip up|home|if youve|in slow|into your|it a|it into|itll|ive|just let|kicking|knuckle|knuckle to|leave these|lift up|limbo|long back|long breath|long in|longer|machine|more than|move|no leaning|of two|on top|open the|or it|out at|outside your|palm facing|past your|pull up|reach|really|rib pop|rib stay|ring up|roll the|shelf|shoulder width|sit your|slide back|slide down|slide up|slow as|squeeze the|squeeze your|stay straight|stool|stop there|stop where|straight leg|strap|tailbone|take it|than your|the band|the bell|the muscle|the push|the strap|thirty|thirty degree|thumb|thumb wrapped|to hip|to long|top shelf|trouble|tuck the|tucked in|turn it|up at|up past|up toward|vertical|want it|water|went|whole time|with you|yanking|you open|your fingertip',
      ],
      [
        0.1,
        'a baby|a wee|all of|alone|and your|as it|back the|back there|been|bell at|blow as|breathe at|catch or|come up|down slower|down there|eyebrow|feet off|feet on|for this|had|had it|hand just|hat|head stay|heel a|if there|it between|it from|it goe|it like|leaning back|long arm|of a|onto the|past the|pinch up|pop|road|same side|send your|shoulder pinch|sitting|slide them|slide your|start again|stay in|step up|that all|that shoulder|the hard|then you|tip forward|two second|under it|until your|way back|wrapped|you reach|your thigh|youre at|youre being|youve had',
      ],
      [
        -0.1,
        'a foot|a straight|across the|after|and dont|and push|and sit|and stand|as a|back foot|back heel|back knee|back of|ball of|belly|big|big toe|board|both|both feet|both hand|cant|change|coming up|doesnt|dont bounce|dont want|down for|down the|dug|dug in|feet back|finger|flop|foot out|four|grab|half of|hamstring|hand and|hand loose|haul|head back|hear|heel and|high as|hold on|hop|if its|in to|into it|is|it down|it in|it open|it slower|its only|just the|knee to|knot|lean on|length|lifting|loop|low as|me|moving|off your|on it|other|other knee|out to|palm down|pencil between|pillow|pinned to|plate|plenty|pointing at|poke|poking|pull the|push your|quick|rolling|sagging|shake|shoulder and|shoulder are|shove|sit back|sit up|spine|spot|squeeze at|stand|stay up|straight arm|straighten|stretch|swap|swing your|than that|that back|the edge|the hip|the middle|the pull|the wall|thumb to|till its|till the|till youre|tiny|to the|to you|toe up|track|until the|up for|waist|watch|you cant|you push|you think|your bottom|your forehead|your heel|your leg|your toe|your waist|youre looking',
      ],
      [
        -0.2,
        'a bit|a bus|a time|a touch|and a|and keep|and not|are|arent|arm out|as if|as you|at a|at chest|at shoulder|back start|back till|ball|beat|behind your|belly button|below|bench|bend your|between your|blade|body|bone|bottom of|bouncing|breath|breathe into|breathing|bus|but|by|can|check|chest height|chest up|chin out|come off|come to|deep|do|dont arch|dont hang|down and|down till|drift|easy|edge|elbow pinned|elbow under|end in|face|facing the|feet flat|feet under|feet wide|foot|forehead|from you|glued|hand are|hand behind|hand in|hand on|hand under|heel down|hold your|if you|in as|inside|into the|it and|it go|it out|its coming|just a|keep breathing|knock|land|lap|lazy|left|leg long|leg out|leg up|lift the|light|like a|like somebody|loose|lower it|mean|meet|middle|mind|near|need|no bouncing|of|one hand|one line|out|out a|out like|out long|palm up|pause|pinned|pointing|pull your|pulling|put it|ring to|rock|rope|round the|round to|see|short|shoulder away|shoulder height|side of|sigh|sit down|snap|sore|speed|start to|step through|straight back|straight line|tent|that|that how|the air|the bench|the chair|the foot|the kneecap|the one|the opposite|the other|the seat|the side|them in|there no|they dont|those|three|three count|tingling|to about|toe|touche|under the|until|up by|up in|up on|wait|wall|way down|what|when you|you by|you go|you pull|you should|you stop|your back|your belly|your chest|your elbow|your finger|your hip|your lap|your shin|your shirt|your side|your thumb|youre leaning|youve a',
      ],
      [
        -0.3,
        'across|air|and|and the|be|bottom|button|chair|down your|each hand|elbow and|elbow glued|first|flat|heavy|how|hurt|in each|it come|kneecap|level with|lie|line|lock|look at|off|off the|on|opposite|seat|shirt|shoulder blade|shoulder up|sigh out|sit|small|stand up|stay|than you|that the|the|the door|the mat|the thigh|till it|together|touch|toward|toward your|turn|turn your|walk your|you lift|your breath|your neck',
      ],
      [
        -0.4,
        'apart|coming|dont|door|forward|knee|let it|lower|push the|start|tall|the back|the floor|the front|time|you|your',
      ],
      [-0.5, 'about|each|floor|heel|hip|look|push|right|shin|side|till|to'],
      [-0.6, 'chest|leg|of your|one|walk'],
      [-0.7, 'on your'],
    ],
  ],
  [
    'prone',
    -0.4,
    [
      [0.9, 'wrist'],
      [0.7, 'a tent|forearm|if you|low back'],
      [0.6, 'down between|go down|squeeze your|tent|your thumb'],
      [0.5, 'about a|ahead|bum|eye on|forehead|forehead down|mat|one long|one straight|the mat|you feel'],
      [
        0.4,
        'a hand|away|back leg|bring them|chest and|chest down|elbow|elbow under|feet back|going|going down|hand in|knee at|knee down|low|rush|sagging|shoulder over|slide the|squeeze|swap|than the|the ring|the wrist|then the|under the|you come|your belly|your front|youre a',
      ],
      [
        0.3,
        'a pinch|and keep|and lift|and push|any|arm out|away behind|back start|between the|bum down|cant|come out|drifting|elbow toward|eye|forearm down|front foot|hand off|hand under|head back|hear|if its|in a|in as|in going|in on|lift one|lift up|line|longer|look at|nip|nip in|no sagging|of a|off your|on them|pinch in|push away|right down|round your|save|see|strap|stretch|the hand|the left|the low|the right|those|thumb|thumb out|time|to see|towel|until youre|you go|you have|your low|your wrist|youve a',
      ],
      [
        0.2,
        'a dog|a fist|a hammock|a hip|a ring|a wet|ahead of|and back|and have|and turn|arm goe|armpit|at all|balance|board|book|butt|cheek|chest up|come forward|crank|crank your|creeping|dog|dont hold|dont twist|down on|drift out|drop the|ear to|edge|feet wide|fist|fist off|fold|forward on|get a|hammock|hand by|has|have a|have to|head up|hear it|hurry|in and|in each|in it|its about|its like|knee in|knuckle|level with|long line|long neck|loud|make one|melt|neck|neck long|not behind|of ten|one at|one hand|or youve|out like|out to|plank|purple|reach for|ring down|ring to|sagging in|short little|six|slapping|squeeze the|start to|tap the|than you|that all|that hip|that not|that side|the cheek|the chest|the face|the one|the rib|the shoulder|them in|then press|thing|to go|to heel|to one|toe away|tuck the|turn your|way through|wet|wet towel|where its|where your|which|wrist are|wrist stay|you get|you lift|you push|your blood|your bum|your butt|youre one',
      ],
      [
        0.1,
        'are creeping|both end|dont hang|everything|flapping|goe round|height of|hip dont|knee dont|like its|more than|opposite leg|push back|the height|toe to|trouble|twist|wider than|you think|youre all|youre going',
      ],
      [
        -0.1,
        'a wall|all the|an ironing|and slow|and stand|and then|ankle|arch|arm by|as high|as if|at chest|at shoulder|away with|back into|ball|ball of|banana|behind your|bending|big toe|bit|bit wider|box|breathe into|breathe low|chest open|come back|come up|dead|do|dont arch|dont lean|dont let|dont poke|feet under|foot|forward till|from it|front of|full|glued|good|hand flat|heel and|high|high as|hip and|hug|inside|it across|it come|its the|knee bent|knee under|leave|leg|let go|light|lower back|lower it|of the|on the|on to|opposite|other foot|over your|pick|poke|pop|pulling|room|round|seat|should feel|shoulder and|shoulder height|soft knee|spine|stand up|standing|steady|step through|straight up|swing|switch|tailbone|that the|the chair|the hip|the kneecap|the seat|the thigh|them up|think of|to|to your|top|two|under hip|under shoulder|up at|up to|way up|when you|you can|you should|your forearm|your heel|your lower|your spine|your thigh',
      ],
      [
        -0.2,
        'a chicken|a little|a straight|a touch|above|across|across the|an inch|and|and dont|and float|arm|arm are|as|back and|band|bar|beat|bell|bend the|bend your|bent|blade|bone|both|breathe|bring it|calf|chair|chest height|chicken|come off|count|curl|doing|door|draw|each hand|elbow stay|em|enough|facing|far|feel|feel the|feet flat|find|for|for a|from|from the|get|give|hand behind|heel|hip till|i want|if that|if youre|in one|is|it back|it goe|its|its not|jaw|just|keep it|kneecap|lean back|leg goe|length|let it|let the|lie|like youre|little|lock|nice|nobody|not your|or|out on|outside|poking|pull it|rib down|roll|same|shoulder blade|shoulder up|side|sigh|slower|slowly|sort|sort of|stack|stop|string|swinging|tail|the band|the bottom|the elbow|the heel|the nose|the opposite|the whole|through your|touch|turn|waist|wall|want|watch|while|whole|wrist straight|you pull|youll|your bottom|your eye|your finger|your hip|your nose',
      ],
      [
        -0.3,
        'and let|at your|back to|big|body|dont|feet stacked|grip|half|hand on|heavy|height|home|if the|into|into the|it|let|let them|like there|nose|of your|on|on it|one foot|over the|past|rib|second|should|slow|soft|stacked|straight|take|tall|that|the wall|they|three|through the|tight|tip|up|weight|when|your|your back|your knee|your side',
      ],
      [-0.4, 'an|ceiling|chin|flat|lean|of|open|pull|sit|the|the ceiling|there a|thigh|till'],
      [-0.5, 'bend|bottom|breathe out|over|stand|through'],
      [-0.6, 'there'],
      [-0.7, 'knee|step'],
    ],
  ],
  [
    'pull',
    -0.3,
    [
      [0.9, 'pull'],
      [0.8, 'elbow|palm|you pull'],
      [0.7, 'your elbow'],
      [0.6, 'blade|button|shoulder blade|the pull'],
      [0.5, 'again|belly button|pocket|pull it|pull the|slower|to your|your rib'],
      [
        0.4,
        'bending|breathe out|curl|elbow glued|facing|hang|keep your|let it|long|past|pull your|rib|straight at|the elbow|the ring|you at|your eye',
      ],
      [
        0.3,
        'all the|and lower|apart|back pocket|band|both feet|chin|come in|come off|count|dont shrug|each|each hand|either|elbow pinned|elbow stay|elbow up|end in|feet in|glued|high|hold your|it a|it come|it with|its a|its coming|knee and|knot|letting|long arm|long neck|looking at|muscle|neck|of a|open|out as|out on|palm facing|palm up|past your|pinned to|put|ring|shoulder down|shrug|shut|snap|soft knee|squeeze the|think of|this|thumb|to long|top of|wrapped|wrist|wrist straight|you open|your forehead',
      ],
      [
        0.2,
        'a beat|a look|a walnut|about shoulder|and hang|any|are only|arm are|arm go|arm long|as it|at chest|at you|at your|back up|band round|bar at|beat|because|because if|before you|belly|bend your|bending the|bottom rib|brush|brush your|chest height|come to|coming|dont curl|dont drop|dont swing|dont twist|down in|down out|down to|draw your|each other|elbow back|elbow brush|eye level|face|facing the|for nick|get there|give it|half a|hand about|hand finish|head height|hinge|hurt|in each|into your|it touche|it toward|jerking|keep the|lean back|lean on|let them|let yourself|light|long band|look along|looking|lower it|meet it|never|never let|nick|not in|of you|one and|palm to|past the|pencil between|pinch on|pinned|rep|rib tucked|shoulder or|skim|slower than|so you|squeeze at|stay straight|step back|stop when|straight arm|the arm|the bench|the door|the rib|the shoulder|the toe|the wrist|then let|think|this one|thumb pointing|till your|tiny|tiptoe|to meet|to round|to straight|too heavy|touche your|trust|tucked in|tug|up high|up off|up quick|waist|walnut|wee|you lift|your belly|your pocket|your side|your waist|your wrist|youre on',
      ],
      [
        0.1,
        'a pencil|a tug|are long|at it|back at|back past|bar to|before|bench|cracking|creep|curling|dont rock|down first|ease it|elbow just|elbow to|exhale|facing forward|feet go|flopping|front thigh|going back|hand apart|heaving|it open|it round|it there|it to|its too|just past|lead with|long again|no heaving|open the|out when|palm down|pencil|ring high|shrugging|standing up|stay in|take a|that you|tin|twist|two|walk the|walnut between|way back|wrist flat|your knuckle|your palm|youre holding',
      ],
      [
        -0.1,
        'a touch|and back|and not|and push|and turn|arm by|as if|at hip|back and|back foot|backside|backward|ball|ball of|behind the|behind you|behind your|big|big toe|bounce|bouncing|breath out|bring them|chair|cheek|chest and|chicken|circle|crank|cross|cushion|doesnt|drift|edge|elbow at|feel|feet back|finger|floor away|four|from it|got|grass|hand in|hand loose|hand over|hand under|heel down|hip width|if its|if you|in one|inch|itll|ive|keep breathing|knee down|knee to|land|lap|leaning|left|leg long|leg up|length|lift|little|lock|look at|lower than|near|need|on them|on to|one hand|onto your|operated|opposite|other knee|over|plate|please|pop|punch|push the|quick|room|shelf|shoulder are|shove|sigh out|stay down|step through|straight down|straight out|straight up|tell|than the|the air|the chair|the chin|the edge|the foot|the grass|the heel|the hip|the leg|the push|the side|the thigh|the whole|them down|then pull|thigh|top shelf|touch|track|under the|up at|whole foot|wider|window|you dont|you press|your foot|your knee|your tail',
      ],
      [
        -0.2,
        'a bit|a fist|across the|and|and bring|and just|and lift|and press|and the|and then|arm up|as far|as they|at a|back|back to|be|being|belt|bone|both hand|breathing|by the|came|cant|chest open|come down|come out|degree|do|dont jump|dont lean|dont stick|down and|drop|drop off|dropping|elbow under|fall|far|feel your|fist|for it|get|getting|grip|grow|hand away|hand behind|hard|hip height|hiss|home|how|if the|if youve|in and|in going|in the|is|isnt|it goe|jump|just|knee bent|knee up|lie|lift your|line|little sip|locked|loose|next|nobody|nose|not out|of it|only as|other|pinch in|press it|puff|rib down|right|second|shin|short|should|shoulder up|side on|sigh|sip|sit|slow|small|so your|squeeze your|stacked|stay on|step|stick|stick your|stop there|tail|that|that the|the back|the head|the nose|the same|the strap|them|theyre|through the|to the|toward|toward the|towel|under your|up like|up over|up the|up there|width|you feel|you get|you push|your bum|your heel|your leg|youre being|youve',
      ],
      [
        -0.3,
        'a hand|across|breathe into|bring|dont|forearm|hand|if|into|into the|keep them|not|off|on|out|out of|peel|roll|somebody|stay|the|the front|the mat|the wall|together|under|up|want|where|whole|you like|your|your chest|your toe|youre a',
      ],
      [
        -0.4,
        'ankle|away|breathe in|ceiling|foot|hand on|heel|let your|low|mat|on your|out like|over your|the ceiling|the other|turn|wall',
      ],
      [-0.5, 'behind|breath|bum|goe|head|hip|off the|one|tall|the knee|toe|your head'],
      [-0.6, 'through'],
      [-0.7, 'knee|leg|press'],
      [-0.9, 'push'],
    ],
  ],
  [
    'push',
    -0.3,
    [
      [1.2, 'press'],
      [0.9, 'push|you push'],
      [0.7, 'press it'],
      [0.6, 'arm locked|it straight|out like|wrist'],
      [
        0.5,
        'bring|dont go|down till|fist|hand in|into a|it up|knuckle|locked|not out|over your|overhead|plate|the pad|the push|tight|touch',
      ],
      [
        0.4,
        'a fist|a towel|and push|at your|away from|back to|band|breathe in|bring it|ceiling|elbow|flat on|head through|it back|leave the|lie|middle of|nose to|now|pad|pocket|pushing|put your|save|side of|squeeze your|straight out|strap|the band|the ceiling|the window|till the|till your|to the|top|up there|want to|wrist stacked|you dont',
      ],
      [
        0.3,
        'a chicken|a metre|a right|a step|a time|air|and bring|and press|and your|angle|as it|at a|at hip|back pocket|bar|bit in|blow|board|both hand|breastbone|breath in|bring the|bum|chest to|chicken|come back|deep|deeper|dont lean|dont let|dont want|down to|elbow a|elbow about|feet back|find|finish|five|gap|go overhead|going|going up|hand just|hand straight|hip height|i dont|in front|in slow|it away|it get|itll|jump|keep the|lead|like an|lock|metre in|never let|next|next to|no deeper|on them|one in|push away|push down|push it|rib down|right angle|ring|shelf|shoulder away|shoulder catch|slow on|smooth|so|so the|so your|stay level|step out|still|stop|the air|the bar|the chin|the door|the ear|the ring|to hear|to one|touch the|towel|turn you|which|window|you not|you press|your arm|your breastbone|your elbow|your nose|your whole',
      ],
      [
        0.2,
        'a book|a tray|against your|an arrow|an ironing|and get|and turn|arch your|are straight|arm goe|arrow|as deep|back down|back still|before it|bell at|bend the|bicep|blow as|bottom and|bottom of|bring them|by your|catch|chest down|clock|collarbone|crush|deep as|degree|dip|dizzy|dont bend|dont sit|dont stop|down between|down by|drift out|elbow go|elbow on|em|even|eye under|facing in|facing the|find a|foot in|forward a|getting|go back|go up|got a|half way|hand a|hand at|hand down|hand flat|hand over|head stay|height|hip dont|in a|in at|in each|it along|it come|it hurt|it into|it slip|just above|just the|knee at|knee not|leaning on|leg together|let em|lie on|little sip|lower till|make fist|march|mate|metre|nearly|no sagging|of it|on top|one at|one long|other foot|out a|out at|out behind|out there|pace|palm forward|plank|pointing forward|punch|push your|ring in|short step|should feel|shoulder pinch|slip|snap|so far|squeeze|squeeze the|stacked over|stand side|step the|sticking|support|taller|teeth|the bell|the clock|the strap|the top|them in|then bring|then come|then drive|theyve|thumb|thumb out|to get|to turn|top shelf|tray|tray of|turn|turn the|two count|under you|until your|up again|up till|way you|wee|when your|wider than|wood|wrist stay|you came|you hold|you like|your forearm|your head|your shoulder|your wrist|yourself|yourself away|youve had',
      ],
      [
        0.1,
        'a hen|a little|a ring|a wee|armpit|barking|between the|car|dead|dragging|drift|elbow are|facing|finished|fist off|forty|forty five|front foot|goe down|going down|hen|in going|let them|limbo|nearly straight|no leaning|one end|one straight|out of|pinch your|press down|push back|push yourself|quit|rib stay|right down|right round|ring down|ring to|shoving|stay still|stood|stop there|straight back|swim|tall as|the pocket|them up|through it|tired|turn out|up past|up top|whip|wrist straight|your armpit|your collarbone|your pocket|your teeth|your thumb|youre all|youre putting',
      ],
      [
        -0.1,
        'a bus|about|against the|along|and a|and come|and down|and let|and lift|and not|and straighten|are bending|as if|back heel|back into|back start|ball of|belt|bending|big toe|buckle|bus|calf|cheating|chest open|crank|dont be|dont roll|down into|each one|elbow glued|every|feel your|finger tingle|fingertip|fire|foot|for a|for one|for two|forearm up|forehead|forward and|front heel|front knee|grumbling|half|hand and|heaving|high as|higher than|hip forward|if you|if youre|in through|inch|inside of|into your|it across|it ping|it till|its a|its coming|its your|jaw|just a|keep breathing|knee together|lean|lean in|lean on|leg long|leg out|leg straight|leg up|long band|long breath|looking at|loop|me|muscle|no heaving|no higher|not in|not your|one hand|one heel|only|peel|ping|poke your|pulling|quick|quick step|quiet|rest|rise|rock|say|shoulder and|shut|side|sit back|sit up|so its|soft knee|spine|spot|stand tall|start|start to|step back|step through|stiff|stretch|swing|take your|tap|the fire|the heel|the nose|the outside|the weight|there till|through your|thumb pointing|tingle|tiny|tip|tuck|tuck your|tug|turn away|underneath|up for|up the|up through|walk your|was|wet|you are|you at|youll|your belly|your body|your cheek|your forehead|your shoe',
      ],
      [
        -0.2,
        'a straight|across the|and dont|and lower|and stand|and the|away and|back|back knee|ball|behind the|behind your|belly button|between|between your|bit of|blood|blood pressure|body|bone|both feet|break|breath out|breathe into|breathing|but|button|carrying|come|come up|could|curl|do|do it|doe|dont yank|down like|draw|each other|ease|ease it|easy|elbow pinned|elbow under|exhale up|facing front|far as|feel the|feet stacked|feet under|flat|flop|forearm on|forward|further|gently|give|give it|go out|hamstring|hang|have|head and|heel and|higher|hinge|hold|hold it|into it|is|it a|it with|its not|keep|keep it|knee to|knee up|knock|lace|land|lazy|leg|lift the|like the|line|looking|lot|mind|more|nice|no swinging|of a|of the|off|onto the|onto your|opposite|other|out over|out to|over|palm up|pinned to|please|plenty|pressure|pretend|puff|pull the|pull your|push the|put|put the|rail|roll|shoe|should be|shoulder width|slack|slow as|slower than|some of|something|stay up|stick|straight arm|straight line|straighten|string|take it|take the|tell|tell me|than|that you|the belly|the chair|the foot|the hand|the handle|the middle|the pull|the slow|the toe|then|thigh|think of|three count|through|till it|to feel|touche your|track|under your|up by|up like|wide|width|without|wrist flat|yank|you feel|you stand|your ankle|your back|your chest|your hip|your side|your toe|youre carrying',
      ],
      [
        -0.3,
        'across|after|an inch|and|and then|arm out|as a|as far|back of|belly|bottom|breath|breathe|coming|dont|dont drop|down and|down out|drop|far|feel|finger|float|full|heavy|hip up|if|it|it down|it go|it in|its the|keep your|low back|mat|not a|onto|palm|pick|put it|shin|shoulder blade|shoulder down|sigh|slower|some|stand up|swinging|take|that|the floor|the hip|the mat|to|toe|too|toward|toward your|up|up off|waist|way up|you|you come|you go|you lift|you pull|you want|your|your finger|your knee',
      ],
      [-0.4, 'apart|be|blade|chair|elbow stay|floor away|let the|lift|light|over the|sit|tall|the|think'],
      [-0.5, 'ankle|for|high|open|the back|weight|your rib'],
      [-0.7, 'its|long'],
      [-0.8, 'heel|knee|pull'],
    ],
  ],
  [
    'row-machine',
    -0.8,
    [
      [0.6, 'body'],
      [0.5, 'handle|still'],
      [0.4, 'breath in|goe|length|seat|the seat'],
      [0.3, 'arm straight|coming|hand away|if you|leg flat|moving|oclock|short|slide|the handle'],
      [
        0.2,
        'after it|alway|and itll|and the|as slow|back goe|before the|big breath|bite|breathe normally|check your|chicken|clock|do|dont bend|dont jump|dont rush|draw the|early|fast|first|from the|front and|front half|go back|half|half of|harder|in on|it should|jump|keep the|leaning|leg stay|light|load|normally|only your|pause|pop up|same speed|sit on|slow as|sort|sort of|starting|straight and|take a|that doe|the arm|the clock|the one|the rest|the room|then go|twice|twice as|unhurried|until|up before|wing|wrist flat|you go|you stop|yourself',
      ],
      [
        0.1,
        'a time|able|able to|after|and away|and its|and keep|anything|arent|at a|be able|belly button|bend the|bottom of|button|came|cant|catch|check|coming back|corner|curl|doe|dont do|dont sit|down as|feet in|full|further|get it|get to|go up|goe round|goe up|grip|hand and|hanging|hanging off|heel are|if that|it as|it get|itll|its only|its that|joint|landing|leg down|light on|loose|middle of|moved|no further|not on|nothing|one at|other side|people|pop|pulling|quicker|rest|rib and|rock|room|rush|sat|settle|shirt|shoot|should be|should feel|shoulder are|sit up|so if|speed|stay down|swing|that the|the corner|the first|the hand|the little|the push|the same|then the|then you|tired|touche|touche your|until the|upright|vertical|watch|watch the|when it|when youre|you cant|you push|youll go|your shirt|youre looking|yourself up',
      ],
      [
        -0.1,
        'a bit|again|all the|and let|ankle|as if|as it|at your|away from|back down|back of|back to|band|bar|before you|behind you|bell|bent|between|blade|blow|both|breathe|breathe in|breathe out|breathing|bring|bum|ceiling|chair|chin|come up|count|dont|door|end|eye|face|far|feel|feel it|feet flat|going|hang|heavy|heel|height|higher|hold|hold it|if it|in front|in your|into the|is|it down|it in|it out|it up|keep|keep your|lean back|leave|let your|line|look|low|low back|make|mat|me|of|of you|on it|one|one foot|only|onto|open|other|out as|out in|out of|outside|over your|palm|pocket|press|push|put|reach|ring|round|second|shoulder blade|side|small|so|soft|somebody|squeeze|stay|the|the ceiling|the chair|the elbow|the heel|the mat|the other|the ring|the shoulder|the side|the top|the wall|the whole|them|there a|thigh|this|three|through the|thumb|tip|to|together|touch|tuck|turn|two|under|under the|under your|up on|up to|walk|wall|want to|way|way down|way up|weight|where|whole|wide|width|with the|with your|you|your belly|your bum|your chest|your elbow|your head|your leg|your side|your toe',
      ],
      [
        -0.2,
        'about|all|an|and|at|behind|bit|can|chest|come|dont let|each|elbow|feet|floor|front of|hand on|head|i|if your|into|lean|let it|let the|lift|like a|like youre|lower|of the|on your|or|pull|right|stand|the back|the floor|there|till|to the|to your|top|with|you can|your hip|your knee|your shoulder',
      ],
      [-0.3, 'a|for|hip|it|shoulder|step|through|up'],
      [-0.4, 'down|foot|knee|like|on|out|toe'],
      [-0.5, 'let|your'],
    ],
  ],
  [
    'run',
    -0.5,
    [
      [0.9, 'run'],
      [0.7, 'drive|quick|step'],
      [0.6, 'knee up|lean|loose'],
      [
        0.5,
        'ankle|cone|dont reach|drive the|easy|hard|in front|rhythm|short|skip|the ankle|the bend|the ground|your shin',
      ],
      [
        0.4,
        'arm|as if|back straight|build|cold|first|ground|hamstring|hand loose|hang there|hot|land|land on|let the|little step|metre|opposite|opposite arm|push off|should|the line|the track|the waist|these|track|up on',
      ],
      [
        0.3,
        'about|build up|crisp|cross|da|da dum|do|dont look|dont sit|dont stop|dum|facing the|fast|get|go and|got|heel up|hop|if youre|its a|jaw|jog|lane|lap|leaning back|line|look|other knee|pace|pick|reach|run tall|running|shin|short step|smooth|start|that turn|the air|the ball|the first|these cold|third|under you|underneath you|waist|your whole',
      ],
      [
        0.2,
        'a crisp|a knee|a race|about your|achilles|air|all of|and hang|and you|anywhere|back pocket|belt|belt height|brake|break|carrying|could|crossing|dead|dinner|dont fold|elbow back|eye on|fence|foot and|foot in|front with|grumbling|hand are|hang|hip that|into it|jumping|landing|late|lean in|light|long and|look at|look down|looking|looking at|lot|lot of|march|one more|opposite knee|or your|out like|over a|percent|pocket|post|puff|quiet|race|reach out|reach with|relaxed|round your|say|should be|shoulder stay|slow enough|snap the|so dont|speed|stamping|stand tall|stay on|tall|that the|the cone|the fence|the heel|then let|they are|travel|underneath|up round|walk|walk it|walking|watch|when|when it|when you|whole way|you could|you dont|you should|your achilles|your cheek|your feet|your foot|youre carrying|youve got',
      ],
      [
        0.1,
        'a metre|arm out|as close|ball|ball of|do the|dont want|down under|ease off|enough to|feel the|for the|go again|hang in|hear|if a|in a|in and|its about|metre in|moan|off one|puddle|quick and|reach for|shake|shoe|snap|straight down|tell|the bus|to moan|two step|whatever|work|you land',
      ],
      [
        -0.1,
        'a pencil|above|ahead|and back|and lower|ankle over|as a|as you|back to|barely|bend the|bend your|bit|blade|both hand|breathe into|button|come back|dont arch|dont tip|draw|drop|dumb|dumb bell|ear|edge|elbow under|fall|feet back|feet hip|floor away|from it|hand by|heel down|hip width|if its|in as|in on|in one|in your|it back|it go|it goe|knee are|knee bent|lazy|let them|let your|lift your|me|nice and|not the|on it|only|only as|out on|past|pencil|pinch|pull|push the|quick step|ring at|seat|sharp|shoulder blade|sink|slower than|steady|stop and|the band|the feet|the hand|the handle|the shoulder|through your|till it|too|toward the|tucked|turn round|up off|you want|your chest|your head|your low|your thigh',
      ],
      [
        -0.2,
        'a bit|a little|an|an inch|and bring|and let|and stand|apart|arch|are bending|as high|as the|away from|back down|back knee|band|bang|below|below the|between|between your|big toe|bone|both|bounce|box|breath|breathe|bum|by your|ceiling|chair|change|come|coming|dont drop|dont roll|down and|down to|each hand|elbow|feel it|finger|forearm|forehead|goe|good|half|hand under|handle|heel and|high as|hold your|home|into the|just|keep breathing|keep the|kneecap|leg long|let go|lift|like somebody|loop|low back|make|mat|middle of|much|neck|no|nose|of it|one|one knee|onto|operated|out as|out to|phone|put it|put them|rail|roll|round|set|side of|sigh|sip|sit back|sit up|slide|slower|slowly|small|something|squeeze your|stay|still|stop|stretch|swap|tail|the bar|the ceiling|the front|the hip|the mat|the outside|the seat|the side|the toe|them|thumb|till youre|to the|toe|toward|tuck your|tummy|under hip|up at|up the|way|way down|way up|weight|wide|width|with|your arm|your bum|your elbow|your heel|your leg|your nose|your rib',
      ],
      [
        -0.3,
        'and if|as|away|bar|breathe out|bring|chest|down|feet flat|grip|grow|heavy|heel|hold|if it|inch|into|let it|long|one hand|outside|over|palm|press|right|shoulder|the chair|the ring|the wall|the way|tuck|under the|until|wrist|your hand|your knee',
      ],
      [
        -0.4,
        'a|back|bell|by|flat|hand|hand on|head|in|it down|let|lower|side|sit|soft|the|the bottom|till|tip|together|wall|your back|your shoulder',
      ],
      [-0.5, 'bottom|door|leg|put|rib|ring|squeeze|that'],
      [-0.6, 'dont let'],
    ],
  ],
  [
    'seated',
    -0.3,
    [
      [1.3, 'seat'],
      [1.2, 'the seat'],
      [0.9, 'sit|sit up'],
      [0.7, 'leg out'],
      [0.6, 'in through|lean back|they|toe up'],
      [
        0.5,
        'back to|body|chair|chin out|feet wide|leg|nose|nose over|not the|now|sit tall|the chair|the front|turn your',
      ],
      [
        0.4,
        'and up|arm long|arm straight|as they|be|by your|clock|come to|cross|dont poke|feel|feet flat|feet in|flat|from the|grow|handle|it along|lazy|length|lift one|nearly straight|poke|sat|sigh|slump|stop at|that the|the clock|the foot|them back|they dont|tucked|way out|were|your bone|your breath|your chin|your leg|your thigh|youre not',
      ],
      [
        0.3,
        'a boat|a hip|a little|and heel|and keep|and look|ankle over|are thin|arm crossed|as you|at the|back off|back past|back until|been|bend it|bit in|block|blood pressure|blow|blow as|boat|bone|bone are|catch|chin|count|count of|curl|dont slump|down and|each|easy|elbow and|elbow back|facing|feel a|for four|forward again|forward from|front|gossip|hand down|hard|have|headed|heel in|if youve|in each|in for|it goe|joint|knock together|lap|leaning|leg flat|lifting|load|long sigh|muscle|not in|nothing|oclock|of you|out long|over it|over your|pedal|poke your|pop|pressure|purple|round|settle|should feel|shoulder catch|slide|slow on|squeeze it|stay facing|still|swing your|switch|switch on|that plenty|the arm|the corner|the push|the toe|thin|think of|this time|those|three to|through your|tin|tingling|to be|to one|told your|tucked in|tummy switch|up at|up you|walking|want to|we|weight|weight down|when youre|wherever|while|with|you push|your blood|your knee|your lap|your palm|your shoe',
      ],
      [
        0.2,
        'a bad|a bus|a count|a long|a prawn|a second|above the|and a|and it|and its|and lean|and leave|and needle|and nobody|and sit|and straighten|and youre|any|apart|as|as if|as is|at all|back and|back in|back on|back out|backrest|be a|because|because if|between them|bit more|blood|bottom to|breastbone|brisk|bus|by|call|cant|chest open|circle|climb|coat|collar|come forward|come out|coming|completely|corner|couple of|crossed|cushion|dont curl|dont do|dont hang|down as|down by|down than|down the|down through|drag your|dragging|drop your|dropping|each hand|each one|each other|elbow on|empty|ever|eyebrow|facing front|feel that|feeling|feet and|feet back|feet tucked|few|first and|flopping|for nick|for one|for six|for your|forward|forward over|forward till|four|front edge|front half|go completely|goe up|half|half of|hand away|hand in|hand stay|has|heel are|heel down|heel on|height and|help|high|hip down|hold it|holding your|hurry|if a|if there|if you|in there|inside of|it across|it go|it over|it with|its own|knee just|knee only|knee stay|knock|lead|leave the|leg go|let it|lift it|light on|long by|look for|mark|mate|nearly|needle|nerve|new|new hip|nice and|no plonking|nose for|not just|of three|one knee|one leg|one side|opening|operated leg|osteoporosis|out for|over|pad|palm facing|pin|pin and|ping off|plonking|pointing|pointing at|pop it|prawn|pull your|put it|put your|reach back|rib and|rise up|rock|rocking|roll out|rolled|rolled towel|round the|round to|scoot|shelf|shoe|shuffle|shuffle forward|sigh out|sit on|six|slam|slide your|slipper|slow breath|so far|squeezing|straight at|string|swing|take a|take three|that knee|the chest|the good|the muscle|the one|the out|the room|the same|the side|the sore|the towel|the weight|the work|then sit|there is|thigh|till there|top shelf|towel|tray of|tucked back|turn a|unhurried|until the|up by|up slowly|up your|waist|washing|way as|well|while you|wide|you like|you should|you squeeze|you were|youll go|your breastbone|your cheek|your collar|your pocket|your tummy|your waist|yourself',
      ],
      [
        0.1,
        'a dog|a new|and go|and tell|and that|anybody with|anyone|arm of|as far|as high|back against|bad|before the|behind you|bite|blade together|blow it|breathe normally|breathing while|chair next|chest to|collar bone|comfy|coming back|disc|dodgy|doing the|down till|down your|draw your|early|feel the|fetch|five|five degree|floor down|for two|forty|forty five|get up|go forward|go long|go soft|goe with|good leg|got|grow tall|hand behind|hand on|head up|heel tucked|high blood|hold on|hum|it and|its like|its that|jaw loose|keep it|knee not|light hand|middle of|minute|nick|normally|nose if|on every|one a|only as|or its|other way|out on|over like|plate|plenty|plonk|pretend|pretend there|proud|push it|putting|rib stay|rise|rounding|second toe|shuffle to|some of|sort|sort of|soup|strain|the nose|the pad|the thigh|then go|theyve|to help|to let|today|toe and|towel under|under the|up before|up toward|wee|while its|without dropping|you pull|you turn|your calf|your shin|your whole|youre putting',
      ],
      [
        -0.1,
        'a beat|a drawer|a step|a tent|a window|all of|alone|an old|and get|and lift|and not|and walk|at shoulder|away like|back the|bell at|bend|bend your|book|brake|breathe into|but|came|can keep|carpet|carrying|cave|cheating|count it|creep|creeping|crisp|da|do|dont fling|dont look|down in|down slower|drive the|elbow pinned|face the|facing the|feet apart|foot and|foot back|foot goe|foot in|foot off|front foot|gently|give it|going back|going down|going up|grass|hand are|hand at|hand finish|hand flat|here|hip forward|hip height|hip stay|hook|hop|is plenty|it bend|it doesnt|it let|it off|it slip|it there|it to|it toward|it want|knee up|lane|lean on|leg goe|leg straight|leg up|like you|little step|little toe|meet|mouth|nip|no higher|no swinging|off and|old|on top|or youll|out wide|pair|palm up|pick|pinned|pinned to|pocket|quick step|quick up|rhythm|roll to|say|shoulder height|shrug|sideway|sink|sip|slide down|slow it|small of|soft|standing|step back|step out|step through|swinging|take the|tea|tent|that all|that back|the calf|the end|the feet|the rack|the rail|the rib|the small|the tree|the wrist|then lift|there no|thigh level|three count|till its|tip your|toward the|turned out|up high|up like|up onto|up over|up through|watch|water|way home|way you|whole of|wobble|yanking|you and|you at|you could|you in|you went|your armpit|your shirt|youre carrying',
      ],
      [
        -0.2,
        'a banana|a moment|a time|a wet|about a|about your|achilles|all|an|and back|and draw|and hold|and lower|and pull|and send|and the|ankle|are straight|arm and|arm are|as a|as low|asleep|at you|away to|back as|back foot|back heel|back pocket|back up|banana|band|beat|bed|behind|bench|bend the|between the|big toe|bit|bouncing|box|bring it|bring your|brush|brush your|bum back|calf|can|car|centimetre|change|click|come off|come up|coming down|could|dead|dip|doesnt|dont arch|dont bounce|dont heave|dont push|dont reach|dont roll|dont tip|down with|drift|drop the|dumb|dumb bell|each time|ear|elbow wide|end up|eye|eye on|far wall|feet on|find|fine|fingertip|flat on|float|for a|for the|from it|front knee|gap|get a|get your|go again|go and|gone too|got you|grab|ground|hamstring|hand about|hand by|hand just|hear|heave|heel and|higher than|hip back|hip up|hold|home|hurt|if the|in as|in going|in one|in the|instead|into a|it a|it away|it like|it open|it pull|it till|its your|ive|just outside|just the|keep breathing|kick|knee come|knee in|knee to|knee under|kneel|knot|know|knuckle|land on|lean a|let go|lie|like the|little breath|locked|long band|long breath|look down|looking at|loop|low as|march|me|moment|much|no bouncing|not at|of one|on it|one|one up|or it|out coming|over a|peel|press|pull in|push off|put them|quiet|rack|rail|really|roll back|roll onto|shake|shirt|shove|shut|side and|side on|sit your|slack|so|so youre|sock on|something|spot|spread|stacked|stand on|start|stay straight|stay there|stick|swap|tailbone|than that|than you|that leg|the ball|the bar|the belly|the bench|the box|the far|the ground|the hamstring|the hand|the kneecap|the low|the shin|the track|the wall|the whole|them down|these|thirty|three second|through and|through it|thumb pointing|tiny|tip over|to a|to it|to your|toe away|too far|touch|touching|track|tree|tuck|turn round|turned|twice|two second|under hip|under shoulder|underneath|wait|walk your|was|watch your|weight on|went|wet|wet towel|where its|whole foot|whole way|wider than|window|yank it|you press|you think|youll be|your achilles|your ankle|your eye|your feet|your forehead|your left|your low|your neck|your own|your right|your weight|youve gone',
      ],
      [
        -0.3,
        'a foot|air|an inch|and all|and stay|arm by|armpit|at a|at chest|away from|back|back knee|back of|backside|behind the|bending|big|bounce|bum|chest|chest height|come down|dont let|dont yank|door|drive|end|every|feet a|finish|fist|fold|forehead|getting|give|go down|go on|gone|heavy|heel as|heel up|higher|i|inch|it up|knee and|knee soft|lean in|leg long|lie back|line|low back|lower it|not|not your|of them|on your|only|onto your|other foot|out like|out to|press it|pull it|rib down|ring at|shoulder width|sitting|slow|slower than|soft knee|squeeze your|stand tall|stop and|straight down|tail|take|take it|that how|the ankle|the back|the band|the door|the heel|the outside|through|tight|till it|to go|toward your|tuck your|tug|two|under your|up behind|when you|whole|wider|width|you can|your back|your belly|your bottom|your side|your tail',
      ],
      [
        -0.4,
        'about|and then|both|both hand|breathe|feel it|forearm|forward and|hand under|head|if its|it in|land|like|little|off the|on a|one foot|onto|open|other leg|outside|pillow|quick|send|small|stand up|stop|straight|straight up|the leg|the shoulder|thumb|too|toward|way up',
      ],
      [-0.5, 'arm out|bar|bell|close|elbow|get there|in on|let the|like a|no|off|than|the ring|walk|wall|you dont'],
      [-0.6, 'belly|going|hip|into|it out|ring|stand'],
      [-0.7, 'foot|height|your hip'],
      [-0.8, 'low|lower'],
      [-1.2, 'step'],
    ],
  ],
  [
    'side-lying',
    -0.8,
    [
      [0.9, 'stacked'],
      [0.7, 'dont roll|elbow under|lift your'],
      [0.6, 'bottom|side|top'],
      [0.5, 'feet stacked|knee bent|lift|on top|roll|under your'],
      [0.4, 'bent|higher|higher than|leg on|your hip'],
      [
        0.3,
        'about a|floor away|good|head on|hip and|hip forward|hip till|in line|line|line with|onto|onto your|push the|roll back|shoulder sore|side of|waist|your right|your shoulder',
      ],
      [
        0.2,
        'a washing|and lift|and not|away and|back like|bad|bit and|come down|complaining|do it|head to|hip sag|hip stacked|its about|knee straight|out behind|plate|purple|sag|sink|sink into|sore|stack|till youre|top hand|under the|underneath|washing|your side|your waist|zip',
      ],
      [
        0.1,
        'a pillow|and do|and stay|another|away with|backward|bump|dont sink|down for|down the|face the|for one|for two|front|hand width|hip up|if that|keep breathing|kissing|leg long|lift the|no higher|open the|outside of|roll forward|stay there|that all|the underneath|to heel|underneath side|you and|you open|your nose',
      ],
      [
        -0.1,
        'a little|again|all the|are|as if|as it|back down|band|bar|before|before you|behind you|bell|belly|bend|between your|bit|blade|blow|breath|bum|by your|chin|come up|coming|count|down|drive|end|eye|far|for|got|half|hang|heavy|high|hip width|if|if you|in your|it back|it down|it in|its a|lean|lean back|let them|let your|like|look|low back|neck|no|not a|of it|off|opposite|other foot|out as|out of|out on|over|over the|over your|palm|past|please|quick|reach|ring|round|same|seat|second|shin|shoulder blade|slide|slower|squeeze your|start|stop|the arm|the back|the chair|the leg|the rib|the ring|the whole|them|there|they|till|time|tip|too|touch|toward your|until|up and|up on|walk|way down|way up|when|where|wide|your ear|your knee|your leg',
      ],
      [
        -0.2,
        'and|and let|arm|as you|back of|be|big|both|breathe out|bring|by|dont|drop|each|feet|feet flat|finger|goe|hand|height|hold|if your|in|it|its|let|level|like a|little|low|lower|mat|middle|not|of your|off the|on it|only|out to|press|pull|put|should|sit|slow|so|squeeze|stand|stay|tall|the front|the mat|the middle|the way|thigh|thumb|to|to the|tuck|turn|up to|weight|whole|wrist|your bum|your head|your heel|your toe|youve',
      ],
      [-0.3, 'a|as|at the|flat|go|just|knee|rib|soft|step|the knee|then|up|way|your|your back'],
      [-0.4, 'in the|on the|the|you'],
      [-0.5, 'at|back|out|toe'],
    ],
  ],
  [
    'single-leg',
    -0.4,
    [
      [0.9, 'standing'],
      [0.7, 'foot off'],
      [0.6, 'the standing'],
      [
        0.5,
        'behind you|edge|fence|foot|gate|grab|near hand|other leg|outside|outside leg|side on|the outside|together|weight on',
      ],
      [
        0.4,
        'bell in|bring your|hand on|hanging|knee soft|knee straight|knee together|little toe|off the|one hand|out of|pick|pick a|set it|side|soft|soft knee|spot|stand|stand on|that hip|the chair|the fence|the floor|the other',
      ],
      [
        0.3,
        'a gate|all the|and straighten|as it|behind|bell|below|below the|chair|chair back|dont lean|eye on|feel it|feet together|fine|fingertip|foot on|for a|forward|front leg|get a|hanging off|hip forward|hook|hook the|if its|it in|it wander|just off|level|near|nice and|on to|one leg|onto the|out to|pick the|sideway|something that|standing foot|standing knee|standing leg|stare|stare at|stay there|swing the|tall on|the edge|the hip|the shin|the toe|tip|up behind|wander|with both|you about|your second',
      ],
      [
        0.2,
        'a good|a knee|a moment|a string|about it|allowed|and back|and bring|and even|and stare|and turn|any|as wide|asking|back on|belt height|bend the|bigger|bucket|chest down|cramp|diving|doesnt|dont get|dont tip|down for|drag|drag your|drive up|drop straight|drop the|find a|float|float the|follow|foot down|for one|for three|forward and|forward till|from it|front foot|gap|gently|get bigger|goe in|goe out|grab it|halfway|hear your|heel hanging|hop|hovering|inside leg|inward|isnt moving|it for|it on|knee a|lean away|lean on|left leg|leg first|leg out|leg youre|let one|look like|loose|mean|nice|on it|on one|one up|onto|onto one|opening|other foot|other one|paint|pinch in|right leg|rushing|second to|set|something|start at|stop when|straighten it|swinging|tall through|that isnt|the side|then go|this time|till the|till there|tin|tipping|to go|to touch|top of|up for|up onto|up out|up quick|up through|wait for|weight|where your|wide as|you look|you squeeze|your foot|your little',
      ],
      [
        0.1,
        'a foot|an inch|and dont|and lazy|arch your|at something|ball of|caving|change|cheating|doesnt move|dont lock|facing|facing front|feet close|finger on|foot just|forward a|have to|hip level|home|in one|inch|it catch|it get|just a|left|let go|out sideway|second toe|stand tall|string|that doesnt|that knee|the ankle|the backside|the little|the pad|toe facing|touch your|want it|wee bit|well|will do|yank it|your left',
      ],
      [
        -0.1,
        'a time|across the|after|and not|and then|as you|as your|at a|away|back and|back down|back knee|back leg|bar|belly|bend your|between your|blade|bone|breathe into|by your|come back|coming up|curl|dive in|down the|each|feet flat|foot back|foot in|foot out|forearm|front of|get|go|go up|goe over|going|grass|high|in each|it and|knee down|last|lean back|leg behind|leg long|leg up|let your|like somebody|line|low back|lower|much|neck|next|no bouncing|not|not your|off your|out on|over it|palm|past|pick it|pull your|rib|ring|round the|same|should be|shoulder blade|sit down|sit up|slow|squeeze your|stacked|step back|than|the air|the arm|the back|the ball|the band|the calf|the chest|the elbow|the foot|the front|the grass|the nose|the one|thumb|till|till its|till your|track|tucked|until the|use|waist|with it|you|you come|you feel|you go|you stand|your belly|your chin|your ear|your elbow|your nose',
      ],
      [
        -0.2,
        'a tightrope|a touch|about|above the|ahead|air|an ankle|and down|and keep|and lower|and stand|apart|as high|at your|back heel|band|before you|bent|bouncing|bum|by the|can|come out|coming|count|deep|deep in|dont push|door|down like|draw it|ear|ease|easy|end|enough|feet hip|feet under|from the|front|got|hang|heavy|heel down|high as|hip width|hold it|how|i|if there|if your|in a|into|into the|its the|just above|keep the|knee bent|knee point|let the|let them|lift your|like|loop|middle of|onto your|opposite|out in|press|puff|quick|reach|short|sigh|slide|stay on|stay put|step out|stretch|than you|that what|the mat|the seat|the shoulder|the way|the whole|the you|through your|tight|tightrope|toe up|toward|toward the|tuck|under the|up|up and|up to|want to|watch|way|what|whole foot|width|with|wrist|you know|your arm|your hand|your lace|your shin|youre not|youre on|yourself',
      ],
      [
        -0.3,
        'above|across|ankle over|are|as if|back to|be|before|between|big|breath|bring the|calf|chin|cross|draw|from|head|heel and|its a|know|lean in|light|low|mat|no|nose|on your|over your|pull|roll|round|seat|should|them|then|then the|they|through|under your|up on|wall|want|with your|your feet|your knee|your leg|your shoulder|your toe',
      ],
      [-0.4, 'again|and|as|back|down|feet|in front|it|on a|or|out|straight|walk|way down'],
      [-0.5, 'come|elbow|flat|in|sit|whole'],
      [-0.6, 'chest|long|step'],
      [-0.7, 'arm|shoulder|under'],
    ],
  ],
  [
    'sit-to-stand',
    -0.8,
    [
      [0.8, 'nose'],
      [0.6, 'nose over|stand'],
      [0.5, 'chair|edge|over your|push the|second|shuffle|the front|tucked|your toe'],
      [0.4, 'a hand|and stand|blow|blow out|floor away|front edge|next|sit|the chair|tucked back|you come'],
      [
        0.3,
        'and up|apart|arm of|back under|clock|dropping|egg|egg on|forward over|good leg|heel tucked|keep a|knock|of you|one hand|seat|second toe|settle|shuffle forward|sit down|the clock|the good|the seat|the toe|there a|up you|width',
      ],
      [
        0.2,
        'a second|against the|and i|and sit|and tell|away and|back a|back down|back till|bottom back|cheating|count of|dont rock|down through|each other|feet back|feet tucked|floor down|four|get going|get up|good|half|half of|hand width|heel a|holding your|if there|im|joint|kissing|knock together|muscle|no plonking|of three|off it|on to|on top|plonk|pretend|pretend there|push down|push through|room|same way|shuffle to|sit back|ten|that cheating|that where|the joint|the room|the same|then sit|there for|thigh level|three|through your|to it|under you|way as|what|when youre|you get|you sit|you stand|you stop|your breath|youre looking|youre standing',
      ],
      [0.1, 'against|and if|both feet|feet and|hip width|park|reach back|rock|three to|till you|to sit|toe and'],
      [
        -0.1,
        'and the|ankle|as far|as it|at your|away from|band|bar|behind|behind you|bell|belly|bent|between your|big breath|blade|bone|breathe in|by your|close|do|dont lean|dont let|ear|face|far|feel|feel it|finger|first|foot on|from the|got|hang|heavy|height|higher|if|if that|if your|in as|in the|in your|inch|into the|it down|it in|it up|jump|keep breathing|lean back|leave|leg|let go|like youre|little|look|low back|mat|middle|more|neck|not a|of|on the|on your|one foot|onto|open|opposite|or|other|other foot|out of|palm|put|quick|ring|round the|shin|shoulder blade|sink|slide|slow|small|somebody|start|swing|tall|the elbow|the mat|the middle|the nose|the ring|the shoulder|the side|thumb|top of|up and|walk|want|wide|with the|wrist|you|your arm|your back|your belly|your bum|your ear|your elbow|your rib|your side',
      ],
      [
        -0.2,
        'an|bend|between|big toe|breath|breathing|bring|can|coming|drive|drop|end|foot|from|high|it|its|let|let your|lift|like|lower|on|only|outside|rib|roll|round|side|soft|still|than|that|the hip|the other|to your|toward|toward your|turn|up|up on|you can|you should|your chest|your hand|your shoulder|youre|youve',
      ],
      [
        -0.3,
        'about|and|back|big|breathe|by|chest|dont|elbow|flat|into|just|of your|one|out|pull|step|straight|the back',
      ],
      [-0.4, 'a|go|hip|long|off|off the|shoulder|your|your hip'],
      [-0.6, 'in|the'],
    ],
  ],
  [
    'spine-extension',
    -0.9,
    [
      [0.7, 'forehead'],
      [0.6, 'belly|breathe in|forehead down|knee under|round up'],
      [0.5, 'and round|chest and|lift your|low back'],
      [
        0.4,
        'belly drop|by|cat|crank|float|hand under|head|in as|neck|of a|see|squeeze your|the breath|the head|the low|the mat|your front',
      ],
      [
        0.3,
        'a pinch|ahead|ahead of|and look|and your|arm out|away and|book|chest forward|chest up|crank your|floor away|hand by|head back|low|mat|nip|nip in|no rush|pinch|pinch in|reach|rush|to see|under hip|up like|wall|you come|you lift|your neck',
      ],
      [
        0.2,
        'and if|and keep|and knee|and lower|and the|between the|but|come down|coming down|finger|get a|go down|hand and|in and|last|lock|point|pushing|reach for|start|stay down|tail|the belly|the end|you get|your belly|your head',
      ],
      [
        0.1,
        'a cat|arm long|dont crank|dont need|eye on|fence|need to|tailbone|the chest|today|under shoulder|you breathe|your low',
      ],
      [
        -0.1,
        'a bit|across|air|and|ankle|as if|as it|at your|back and|behind|bell|bend your|bent|between your|big|bit|blow|can|chair|count|dont lean|door|face|facing|feet flat|first|flat|go|going|got|half|hand|hang|hip width|hold|hold it|if the|in front|in the|it|its a|its not|lean back|leg|let go|let it|let them|middle|nose|of|of you|of your|on|on the|one foot|other foot|out of|out on|over the|over your|press|push|put|right|round the|same|seat|second|shin|should|slower|so|stand up|stay|the bottom|the front|the heel|the hip|the ring|the side|the way|there a|they|three|till your|tip|to|to get|too|top|toward your|two|until|up on|want to|way up|weight|where|whole|width|with the|you|youll|your chin|your feet|your toe|yourself|youve',
      ],
      [
        -0.2,
        'all|an|are|as|away from|back|band|bar|bend|bottom|bring|do|dont|ear|feet|forearm|from|front of|goe|hand on|hip|if your|it in|its|keep breathing|lean|let|level|like youre|line|not|on it|outside|pull|ring|roll|sit|slide|stand|stop|straight|take|tall|than|the back|the knee|the other|the top|thigh|through|thumb|to your|toe|turn|walk|way|when|with|with your|wrist|your hand|your heel',
      ],
      [-0.3, 'at|chin|dont let|foot|if|into|into the|off|or|other|rib|side|slow|step|them|then|there|toward|your knee'],
      [-0.4, 'heel|over|till'],
      [-0.5, 'knee|that|your|youre'],
      [-0.6, 'one|the'],
    ],
  ],
  [
    'spine-flexion',
    -0.5,
    [
      [0.9, 'heavy'],
      [0.7, 'behind your|knee up|round up|your knee'],
      [0.6, 'elbow wide|head|wide'],
      [0.5, 'and roll|behind|belly|belt|cat|come up|curl|hand behind|if youve|knee under|let go|roll|the head'],
      [
        0.4,
        'and round|belly drop|closing|curl the|curl your|floor away|forehead|go heavy|got a|haul|if that|on your|other leg|roll back|small of|so if|the belly|the breath|the long|the small|then let|upside|upside down|your head|youve got',
      ],
      [
        0.3,
        'a time|ahead of|and just|and knee|away and|back between|backward|big toe|blood pressure|bone at|closing a|cranky|disc|dodgy|doing it|elbow flapping|eye|feet flat|fine|flapping|flatten|going to|hand and|heel and|hip width|hug|it is|its your|knee bent|know|last|long leg|no swinging|not your|one bone|open|pressure|rib that|roll your|room|shoulder up|sit back|sit this|small|soften|squash the|stop where|tail|that turn|there and|they come|tiny|trouble|up off|upright|when youre|yank on|your heel|youre not|youve had',
      ],
      [
        0.2,
        'a baby|a book|a cat|about it|and itll|and keep|and look|and lower|and not|and then|and walk|arm long|as long|asleep|at a|baby|baby asleep|back into|back on|back the|bent|blood|book|box|breathe out|centimetre|change|chest forward|clear|doing|dont drop|dont haul|dont just|down one|elbow are|feet are|fingertip|fold|for the|gap|get heavy|go again|go and|got|hand are|hand out|hand over|hand under|hang|haul on|imagine|instead|into the|it and|it from|its just|its not|just the|keep them|knee apart|knee come|lie on|like its|lock|lower than|need|need to|nice|no rush|on every|out every|out on|over on|pedal|peel your|really|ring high|roll up|rolled|rush|send the|soup|spin|spread|squash|stop at|stretch|swing the|swinging|tail under|tailbone|that knee|the box|the mat|the neck|them in|thing|toe together|touch your|touching|tuck|tuck your|under hip|under there|up in|up like|walk your|way to|way you|were|where it|where your|while|you came|you let|your belt|your eye|your neck|your rib|your tail|your tummy|your waist|youve',
      ],
      [
        0.1,
        'and it|and youre|back to|bone|breathe into|came|feet down|head down|im|it go|it stay|knee in|lower them|nobody|opening|out and|right down|side to|tip your|to side|to your|up slowly|up toward|up your|you like|your hand|your shin',
      ],
      [
        -0.1,
        'a bit|a straight|against|air|and down|and stand|arch|arm by|as if|at your|backside|ball|bench|body|bring|by the|cheek|count|doesnt|dont lean|dont poke|drift|drive|face|feel it|feel the|feet hip|feet on|five|floor|going down|gone|good|grab|higher|hold|hold on|holding|in a|in front|inside|into it|it down|it goe|it off|it with|jump|leaning|leg|length|lift the|longer|loop|lower it|near|no higher|one foot|other foot|over|over the|palm up|past your|pick|please|poke your|press the|put|put it|rise|sag|seat|shoe|should|should feel|shoulder and|sink|somebody|something|squeeze the|stacked|stand up|straight line|than|that leg|the band|the big|the feet|the foot|the middle|the ring|the seat|the side|the toe|the wall|them down|then the|three|till|till it|together|top|tucked|up the|wall|what|with it|with the|your chin|your feet|your toe|your wrist',
      ],
      [
        -0.2,
        'a big|above|and lift|and pull|and you|anybody|as the|as your|away from|because|before|below|bend your|breath|by your|calf|car|chair|chin out|collarbone|do|do it|door|down and|down on|drag|draw|elbow under|feel|feet under|first|forearm|forward|four|grip|half|hand in|hard|head back|heavy on|heel down|home|in each|in through|in your|it out|it up|keep breathing|kneecap|land|leave|left|leg up|let them|lift your|of a|of you|on it|opposite|other|out like|out to|palm|pointing|pull|pull the|push|push your|round the|second|shrugging|sit down|soft knee|sore|squeeze your|stay facing|stay on|steady|strap|take your|that|the bar|the chair|the front|the hand|the heel|the knee|the leg|the pull|the rib|the thigh|the whole|this one|through|to about|to get|toe|turn your|under your|until|want to|weight|when you|with your|without|you feel|you go|your bottom|your breath|your finger|your nose|your right|your side|youre|youre a',
      ],
      [
        -0.3,
        'a|about|ankle|as it|as you|band|before you|bell|bit|both|breathing|chin|come down|coming|ear|feet|float|from your|front of|if|if it|if the|if your|if youre|in|in the|it come|it in|lean back|light|like youre|line|me|middle|on the|one hand|onto your|outside|poke|same|short|side|squeeze|stick|still|tall|thigh|thumb|too|two|up|wrist|youve a',
      ],
      [-0.4, 'all|away|bar|bend|by|dont|facing|goe|heel|it|nose|off|over your|quick|stand|stay|step|to the|whole|you'],
      [-0.5, 'dont let|front|hand on|lean|lift|of the|press|straight|with'],
      [-0.6, 'foot|one'],
    ],
  ],
  [
    'spine-rotation',
    -0.5,
    [
      [1, 'turn'],
      [0.7, 'far|turn your'],
      [0.6, 'to one'],
      [0.5, 'across|as far|you turn'],
      [
        0.4,
        'and turn|back foot|bone|both|elbow wide|hand behind|hug the|in and|its your|left|middle|one side|over to|rib|side|side of|sit|sit tall|the knee|the other|thin|up over|your head|your left|your neck',
      ],
      [
        0.3,
        'across to|and the|armpit|been|breathe into|come out|curl the|do it|dont slump|down slow|each side|end|every|heel down|hip stay|hug|it down|keep them|knee in|long leg|make it|other leg|other way|pointing at|rib that|right arm|shoulder and|shoulder up|slump|spin|stay facing|stay long|stay up|switch on|t|take your|taller|that turn|the rib|tummy switch|turning|up by|your chest|your rib|your right',
      ],
      [
        0.2,
        'a prawn|and do|and if|and take|are thin|arm out|around|been told|behind your|between the|bone are|both of|by the|caving|chest to|crank|crossed|dont bend|dont get|down and|elbow and|elbow flapping|ever|facing|fall|far as|flapping|follow|go as|go with|grow|haul|head come|hiss|hiss it|if youve|its not|just your|knee stay|know|let you|like that|lower than|no lower|not just|not your|of them|on both|on each|on every|opposite|osteoporosis|out every|out like|out the|palm up|pedal|prawn|pull it|right|right hand|round to|same side|side on|sideway|sit up|slide it|stance|switch|take one|the opposite|the right|the weight|the window|told|told your|toward the|tummy|underneath you|until your|washing|window|with it|you go|you know|your bone|your tummy|your waist|youve been',
      ],
      [
        0.1,
        'arm up|both hand|down with|get there|it slowly|lift off|pillow under|push it|put the|slowly|the left|the side|underneath',
      ],
      [
        -0.1,
        'a bit|a hand|ahead|air|and|and down|back and|back of|bar|before you|between your|big toe|bit|blow out|body|ceiling|chair|close|come up|coming|count|drive|drop|elbow|feet under|fist|floor|floor away|for|forehead|from|get|grip|high|higher|hip width|if|if it|if your|in each|in the|in your|it|it in|keep breathing|line|low|nice|of you|on a|on it|on to|other foot|out in|poke|pull your|push|push the|put|put it|quiet|second|sink|sore|squeeze your|stand up|standing|swap|swing|that your|the back|the band|the bottom|the ceiling|the ring|the thigh|the wall|three|through|through your|to get|to your|together|under|up on|way up|when|you|your feet|your low|your nose|your thigh|youre',
      ],
      [
        -0.2,
        'a|all|and back|and bring|ankle|apart|at the|away from|back|back down|band|before|bell|belly|bend|blow|breath|breathe in|breathing|bring|dont lean|feel the|finger|first|forearm|front of|hang|heel|heel and|hold it|home|inch|into your|it back|it up|leave|let go|like|little|low back|lower|nose|not|off the|on|on the|one|one foot|one hand|over your|shin|short|should|sigh|so|squeeze|stop|the foot|the front|the heel|the leg|the way|there a|thumb|tight|too|toward your|tuck|two|up to|wall|width|without|wrist|you dont|your bum|your chin|your heel|your shoulder|your side',
      ],
      [
        -0.3,
        'an|big|bottom|bum|chin|dont|dont let|down|heavy|height|in front|leg|let it|level|lift|no|of the|off|out to|press|ring|roll|thigh|till|you can|your',
      ],
      [-0.4, 'at|foot|front|hold|in|soft|stand|the|there|up|your hip'],
      [-0.5, 'away|feet|forward|of|step|straight|toe'],
    ],
  ],
  [
    'squat',
    -0.3,
    [
      [1.2, 'sit down'],
      [1.1, 'straight down'],
      [0.9, 'sit'],
      [0.7, 'feet a'],
      [0.6, 'step out|width'],
      [
        0.5,
        'chair|dive|follow|if they|knee go|loop|middle|middle toe|out over|push the|second|second toe|sit back|the toe|toe|up through',
      ],
      [
        0.4,
        'a chair|and up|back flat|back heel|back knee|blow|but|come up|down between|drive up|dumb|dumb bell|feet|feet hip|floor away|hand off|hip width|in on|it dive|itll|knee straight|meat|near|nearly|nose over|over your|safety|shuffle|take three|the meat|thigh|three|to come|tucked back|your heel',
      ],
      [
        0.3,
        'a fist|a wee|above|above your|after|against|against the|and breathe|and down|and stand|apart|as deep|at the|bus|crease|deep|dive in|dont rock|down and|drive|drop straight|dropping|fall|feet shoulder|floor|foot forward|forward|front edge|front knee|have|hip and|in that|in your|it along|its the|joint|keep a|knee are|knee over|knee stop|knock|ligament|like youve|middle of|nearly straight|out a|point|press through|right in|shoulder width|side to|snap|squat|stance|stand|stool|stop a|straight up|that should|the bum|the front|they|three to|through your|to side|toe turned|together|tucked|turned|turned out|two step|weight in|when|wider|your knee|your second|your toe',
      ],
      [
        0.2,
        'a bit|a step|about to|after it|and hip|and i|and not|and sit|and stay|arm of|armpit height|at a|at about|away to|bar on|bell in|bent up|bit|bit wider|blood|blood pressure|blow as|blow out|both feet|can go|can see|cave|chest and|chest tall|click|clock|crease of|deep as|deeper|dont fall|dont knock|dont look|down a|down as|down into|down toward|each other|edge|end up|even|eye up|fall in|feel it|feet back|feet tucked|feet wide|fist|fist off|flat as|foot follow|foot out|forward over|forward till|four|front foot|front heel|get up|go and|go as|going down|going up|good leg|grinding|hard part|heel are|heel stay|heel tucked|heel up|hold it|holding|hole|hook|hop|hurt|i|i can|im|in it|it all|it and|it in|just a|just under|keep it|kissing|knee follow|knee point|knee that|knock together|leave the|little wider|low as|lowest|meat of|my|neck bone|next one|no dropping|not on|not the|of a|one in|one ring|or two|other one|out up|outside of|past the|paying|pin|point forward|pressure|pretend there|proud|push up|pushing|rail|reset|rock|rocking|send your|should be|shuffle forward|side of|sit straight|sit your|slip|slip off|slow on|so far|some of|stay there|steady|stop at|stuck|talking|the clock|the feet|the floor|the hard|the joint|the kneecap|the neck|the second|the shin|the thigh|the whole|the work|then sit|then up|theyre|theyre not|those|till youre|to sit|to you|toe out|toe point|up at|up taller|up you|want the|wee bit|when you|where the|where your|whole time|you are|you come|you get|you have|you sit|your ankle|your lowest|your middle|your thigh|youre about|youre looking|youre past',
      ],
      [
        0.1,
        'a good|a race|a touch|about the|about thirty|and that|anyone|back a|carpet|check|dont you|egg on|feet on|follow your|for it|front thigh|get going|get to|go out|got a|heal|i want|into a|knee apart|knocking|knocking together|medal|no deeper|of three|pay|roll in|second down|shoelace|shuffle to|so its|than the|that pay|the carpet|the chair|the chest|the end|they cave|thigh and|thirty|to hear|to roll|tuck under|wait|walk it|way down|wider than|work|you stand|your shoelace',
      ],
      [
        -0.1,
        'a straight|able|able to|achilles|an inch|and back|as a|as far|back at|back foot|back to|ball|be able|bell at|bend your|bent|breathe|breathe out|came|ceiling|chin|come home|do|dont arch|dont bounce|dont drop|dont jump|dont shove|down the|down your|draw|easy|feel your|feet down|finger|float|flop|forehead|forward a|from your|go|go up|grow|hand under|hang there|heel to|hip up|if that|if the|if your|in|inch off|is a|it back|it stop|just|just off|knee and|knee soft|knee together|lean in|leg long|leg out|length|let|lift the|lift your|like there|locked|low back|lunch|make|mat|no higher|on the|one leg|operated leg|or your|other|palm|pause|pillow|pocket|put it|roll out|rush|shoulder down|slide|slow as|squash|straight line|stretch|string|than you|that knee|the ceiling|the mat|the nose|the one|the other|the rib|the track|the weight|them up|then let|think of|till it|toe up|touching|tummy|two count|underneath|until|until the|up toward|waist|while|with it|yank|you pull|your hip|your nose|your shoulder|your wrist',
      ],
      [
        -0.2,
        'a|across|again|air|an|and lift|and lower|and then|and you|ankle|arm out|as high|as it|back|ball of|between|between the|big|blade|body|bring it|by|by the|close|come down|coming|coming down|could|cramp|cross|cushion|doesnt|dont go|dont lean|ease|every time|facing|feet together|fingertip|first|five|foot off|forearm|front leg|give|goe|grab|grass|grip|hamstring|hand on|high as|home|in front|in one|inch|into|is|it|it down|it goe|it over|keep your|knee down|knee stay|knee up|last|lean|lean back|left|let go|let the|lie|lift|line|little toe|lock|loose|moving|no|of|of the|off the|one|one knee|onto your|opposite|or|other knee|other leg|out in|over it|press the|pull your|push through|quiet|roll|rolling out|shoulder blade|shove off|side on|sigh|slow|slower|slower than|smooth|soft knee|somebody|squeeze your|stacked|stand tall|start|stay|stay on|stay over|stay straight|still|straighten|swap|tap|that|that foot|the breath|the calf|the elbow|the grass|the hand|the hip|the leg|the shoulder|think|till its|tip forward|toward your|towel|turn|under|up in|up tall|watch|with|with the|without|you know|you want|youll|your back|your bum|your chest|your ear|your elbow|your hand|your head|your rib|your shin|youre|youre a|yourself',
      ],
      [
        -0.3,
        'arm|back of|bend|big toe|both hand|bring|calf|dont|ear|elbow|face|feet flat|flat|from|from the|front of|hand|into the|its not|knee to|like|little|on|only|open|out|rolling|short|shove|sit up|the foot|then|thumb|toward|up on|wrist|you go|your arm',
      ],
      [-0.4, 'and|breath|hang|head|heel and|long|lower|off|onto|pull|put|quick|round|squeeze|tall|the|your'],
      [-0.5, 'rib|shoulder|the back|to your'],
      [-0.6, 'on your'],
      [-0.7, 'leg|soft'],
    ],
  ],
  [
    'standing',
    0.1,
    [
      [1.2, 'stand'],
      [1.1, 'step'],
      [0.9, 'band|lean'],
      [0.7, 'knee soft|pull it|sit down'],
      [0.6, 'arm are|from it|height|quick|soft knee|the wall|walk'],
      [
        0.5,
        'achilles|and let|and stand|bar|bell|both hand|button|chest height|door|feet under|finish|flat on|foot|gently|land|one foot|out to|outside|rail|same|soft|stand up|them down|three|wall|you dont',
      ],
      [
        0.4,
        'and lower|and not|at chest|back a|beat|belly button|car|chair|come up|dive|ease it|elbow pinned|facing|hold|it in|it into|it off|it up|it with|itll|its up|just outside|metre|nose to|other foot|other leg|pinned to|pull|right up|shoulder height|side on|stand tall|stay down|stick|tall|the ankle|the band|through|to it|up on|your shin|your toe',
      ],
      [
        0.3,
        'a beat|a chair|about your|an ironing|and up|apart|arm go|at shoulder|at your|back and|back foot|back heel|back like|back of|back straight|backside|band under|bang|bend|big|bounce|bring|brush|bum back|carrying|click|could|da|dont lean|dont reach|dont shrug|drop it|every|facing the|feel the|feet a|feet apart|feet forward|feet on|fence|find a|front of|going|got|hand are|hand flat|hand on|hard|heel|hinge|i|if your|it dive|it open|it out|jog|keep breathing|knock|knot|land on|lean back|lean in|level|lift it|little|little step|little toe|long again|lower|lower it|middle toe|next|not an|of you|on it|one hand|open|out over|outside the|palm|pick|plank of|pocket|press it|push off|put one|put your|rhythm|room|round your|run|set|sideway|slack|snap|some|something that|standing|stay there|stop|stop and|straight down|take|take your|than|than you|the bell|the door|the end|the front|the outside|the pull|the rack|the rail|the room|the stick|thumb pointing|till it|tree|turn round|turned|under you|up through|wait|walk the|want the|watch|way back|way up|went up|whip|whole|whole foot|whole way|wider|with both|with the|wrap the|wrist straight|yanking|you pull|your achilles|your backside|your bottom|your hip|youre carrying',
      ],
      [
        0.2,
        'a banana|a car|a half|a metre|a pause|a pencil|a plank|a race|a shoe|a walnut|achilles is|across|against|an old|and bring|and lazy|and lean|and one|and sit|are long|are only|arent|arm and|arm swing|as it|as you|as your|at|back as|back down|back under|ball|banana|bar at|bar on|bar over|behind|bell at|bell in|belt height|bend your|bicep|big step|bit wider|body like|bottom back|bottom out|bounce it|bow|break|breath out|bring it|bring the|brush your|build|build up|bus|but|by the|calf|car door|cave|cave in|chair and|chin tucked|cold|da dum|dive in|diving|dizzy|dont|dont just|dont let|dont look|dont stop|dont tip|door with|down a|down at|down slow|drag|drive|drive up|dum|elbow and|elbow brush|elbow glued|elbow just|every rep|eye level|eye up|face the|feel it|feet hip|finger tingle|floor away|fold|foot and|foot back|foot down|foot in|foot off|foot on|for three|front edge|gate|go and|go long|go overhead|goe over|going back|going over|going up|good|grab|grab it|hand at|hand finish|hand just|have your|head through|heel a|heel to|hip back|hip that|hip width|hiss it|hold on|hold the|how|i mean|if there|if they|if youre|in as|in one|into a|inward|ironing|ironing board|it a|it back|it between|it fall|it if|it land|it leave|it like|it pull|it stay|it touche|itll have|its|its the|its there|jaw|jerking|just past|just under|keep|keep hold|keep your|kissing|knee come|knee goe|knee point|knee together|lean away|leaning back|let the|let your|let yourself|light|like|like youre|like youve|lot|march|me|meat|meat of|meet it|mind your|mirror|my|nice and|nobody|nose over|not|of the|of them|of wood|off one|on one|on to|one heel|one ring|only a|onto one|opposite arm|other one|out as|out going|over your|overhead|pair|palm forward|palm up|pass|past your|pause|pencil|point|pointing|proper|properly|pull the|push your|put|quick up|race|rack|rep|rib down|rib pop|rope|same as|same way|send your|shake|shin or|short|showing|showing off|shrug|shrug it|shrugging|shut|shutting|sigh|sit straight|sit your|sitting|slapping|smaller|square|standing leg|stay straight|step out|stick down|stiff|stool|straight arm|straighten that|swap|take the|tall on|ten|than that|that it|that what|that where|the bend|the big|the car|the chair|the fence|the good|the joint|the line|the meat|the mirror|the next|the same|the slack|the track|the tree|the whole|them up|there|there till|these cold|thigh level|third|thirty|three count|tight|till you|tingle|tip over|to just|to lower|to meet|to straight|to touch|toe|toe turned|too heavy|top of|touche your|track|tucked back|tug|turn away|turned out|turning|two|two step|underneath you|up as|up first|up like|up onto|up till|up to|up you|walnut|water|way home|what|what its|where you|with it|wobble|wrap|wrist flat|you|you and|you could|you get|you land|you lean|you sink|you stand|you wobble|youll feel|your ankle|your middle|your own|your shoe|your time|your weight|youre holding|youre showing|youre shutting|youve got',
      ],
      [
        0.1,
        'a bent|a gate|a knee|a slow|a step|against it|allowed|an|and dont|and pull|and wait|are straight|arm up|as|as if|as wide|back|back from|back pocket|being|blow out|by|can keep|carrying a|catch up|change|cheating|cheek|coming up|cone|crack|dont fold|dont sit|dont you|door and|down again|down under|drive the|early|effort|elbow|elbow to|end|facing forward|fetch|flat as|fold in|follow the|for this|forearm up|front foot|get your|give|got a|got you|ground|had it|hand apart|hand go|hand up|hear|heaving|heel as|heel heavy|heel up|hip square|hover|im|in both|in slow|into that|it again|it click|it float|it roll|it stop|it there|its a|its tight|knocking|lane|late|lean on|leg behind|let it|level with|like you|long in|look down|low as|metre in|middle|mind|most|move|near|neck bone|no heaving|not on|not to|not your|on hip|on that|one and|one in|or youve|out coming|out wide|outside your|own|palm to|pick the|pinch up|pinned|post|pull them|put them|quick step|really|ride|roll up|rolling|run tall|running|safety|say|second on|second to|shaking|sharp|short step|shoulder dont|skim|skip|slide them|slower than|smooth|spot on|spring|stand on|stand right|stay|stay in|stay long|steady|step away|step through|sticking|straight|straight leg|straight out|take a|talk to|the arm|the ball|the bus|the ground|the standing|the step|the sticky|the window|then snap|thigh and|thirty degree|three on|through it|to catch|toe facing|touch|touch your|turn|turn it|up and|up behind|up out|up past|up there|walk back|walnut between|warm|was|weight|weight over|whatever|when your|where|wide as|window|you let|you sit|you up|your big|your body|your breath|your ear|your finger|your foot|your forehead|your little|youre being',
      ],
      [
        -0.1,
        'a pillow|a pull|a straight|a tent|a towel|a wee|about a|about forty|along the|an arrow|and leave|are up|arrow|as far|as high|at you|away from|baby|back up|between the|bit of|bottom of|breath go|bump|cant|close to|closer|come forward|corner|couple of|cramp|cross your|deep|deep in|do it|doing|dont be|dont rush|dont sink|draw it|each other|elbow down|elbow on|exhale up|far|far as|feet go|feet stacked|fist off|for two|forearm|forehead down|forward from|forward till|from|from the|from your|front half|glass|go heavy|go up|grape|half of|halfway|hanging|have|head down|heavy|heel close|higher than|hip are|hip stay|hug the|if its|if somebody|imagine|in for|in to|is not|it as|it on|it should|jammed|kicking|knee at|knee over|leg away|leg down|leg straight|less|let that|let them|lie on|light hand|loud|moment|much|next to|nice|no further|no rush|no swinging|not behind|not jammed|of one|off it|on top|one a|one line|one on|one straight|only|or you|osteoporosis|other way|out for|over it|pace|people|pinch|poke your|press|pulling|push away|push up|rest|rib that|right down|ring a|round to|round up|sagging|shoulder over|slip|sort|sort of|spine|squeezing|stay up|staying|stirring|t|table|the air|the left|the lift|the out|the push|the right|the thigh|them away|them in|then lift|thing|this time|thumb|till youre|tin|toe away|toe to|told your|too far|touche|turn your|two down|under shoulder|until the|until your|up a|up your|walking|washing|we|wherever|while you|without dropping|you can|you feel|you lift|you want|your neck|your pocket|your shoulder|your tailbone|your wrist|yourself away|youve gone',
      ],
      [
        -0.2,
        'a bad|a boat|a chicken|a dog|a hammock|a hand|a hip|a lift|a pain|a right|a time|again|alway|and away|and heel|and just|and look|and needle|and no|and out|and press|and round|and stretch|and swap|and turn|and youre|angle|arch|are creeping|are thin|arm locked|arm long|arm to|around the|as the|at hip|at it|back into|back one|back over|back stay|backrest|balance|barking|bed|been|behind the|bit more|blade|blade together|blow as|boat|bone are|both end|both leg|both side|breathe out|brisk|butt|can|carpet|caving|ceiling|chest down|chest to|chicken|circle|coat|come back|come down|count of|cranky|creeping|cross|cup|cup of|curl the|day|daylight|daylight under|degree|dog|dont drop|dont jump|dont swing|down on|draw the|drift out|drive your|drop off|drop the|each one|ear|ear to|elbow a|elbow at|elbow out|elbow stay|elbow toward|facing front|feel a|feet find|feet wide|find the|firm|first and|five degree|flapping|floor and|flop out|follow your|foot flat|foot forward|foot goe|foot out|for four|for it|for nick|for one|forearm down|get them|glued|go down|goe down|goe round|goe up|gone too|good knee|grass|grinding|grow tall|half|hand behind|hand down|hand over|handle|has|have a|head|head back|help|higher|hip dont|hitching|hug|hurry|if that|in a|in and|in youre|instead|into|it along|it for|it get|it is|its all|its like|its only|joint|jump|kick|knee follow|knee just|knee stay|knee under|know|lap|lazy|leave these|leg goe|leg on|lie back|lie down|light on|line from|lock the|long by|look at|lower till|make fist|mate|melt|minute|miss|moving|nearly|needle|new|no prize|no sagging|of five|of that|on every|on somebody|one at|one leg|only the|open the|or a|other knee|out through|park|part|piece|pillow under|pin and|pinch your|ping off|poke|pull up|pull your|punch|push yourself|put a|put it|put the|quit|ready|rib|right angle|right arm|right round|ring high|roll your|rolled|roof|sat|scoot|seen|send the|should feel|shoulder and|shoulder blade|shoulder down|shuffle|slide it|so your|sore|speed|squash|squash the|squeeze it|stay facing|step one|switch|switch on|tail under|tap the|tent|than the|than up|that doe|that the|that you|the arch|the bed|the ceiling|the face|the kneecap|the last|the low|the one|the operated|the ring|the roof|the strap|the towel|then go|then you|they come|thigh|thin|think of|through your|thumb out|thumb wrapped|tight and|till the|time you|to cheat|to see|to your|toe on|toe tucked|toward the|trouble|tuck the|tucked in|tummy|tummy switch|turn the|unhurried|until|up at|up in|up until|wee|weight down|where it|while its|whole leg|wing|without|wont|wrapped|wrist are|yank|yank on|you came|you go|you know|your back|your bone|your butt|your collar|your palm|your right|your side|youre all|yourself|zip',
      ],
      [
        -0.3,
        'a table|ahead|and call|and keep|and knee|and the|ankle over|anybody with|arm|at a|back on|back to|backward|bench|bent up|between your|block|blow it|by your|call|close|cushion|dead straight|dont hang|dont slump|down till|dropping|each|each side|enough that|ever|everything|eye under|eyebrow|feel|feeling|feet back|forty|forty five|forward again|go forward|gossip|had a|hand and|hand out|height and|if the|if you|if youve|in toward|into the|into your|it go|its that|just let|left|line|little sip|more|never|no higher|not just|nothing|of both|off that|one piece|out breath|prize|puff|pull not|pushing|reach|resting|resting on|ring in|round|round the|rush|same speed|sip|slide the|slide your|slow breath|slump|so the|soup|stacked|stay glued|step off|step up|straight at|strap|stretch|swing your|that all|the belly|the bench|the breastbone|the carpet|the chest|the grass|the head|the opposite|them|then|then the|there is|those|to help|to one|to where|toe together|too|tray of|turn a|under your|up toward|walk your|want|way you|when youre|while|width apart|wrist|you like|you open|you reach|you should|your elbow|your front|your heel|your lap|your leg|your low|your tail|your tummy|your waist|youre a',
      ],
      [
        -0.4,
        'above|above the|an ankle|as they|away|back hip|back past|bad|belly|bone|draw your|drift|elbow back|exhale|feet down|flop|for your|forehead|from you|go|grow|hang|hip up|it slip|knee up|kneecap|last|leg long|let go|lift one|lift the|long as|low back|one knee|opposite|opposite hand|pillow|puff out|right|ring|roll back|sag|shoulder up|slow as|straight line|tail|the knee|the nose|the pad|the weight|then let|they dont|toe up|toward your|up off|waist|your hand',
      ],
      [
        -0.5,
        'and lift|be|bit in|breastbone|breath|come|come off|come out|elbow under|five|flat|hand under|in through|knee down|leg out|low|make|on your|or|out long|roll|shoulder|sit tall|slide|still|stop at|the hand|the hip|toward|towel|tuck|tuck your|under|your face|your knee',
      ],
      [-0.6, 'arm straight|hand in|leg up|lift|long|now|only as|pedal|seat|the box|the mat|the seat'],
      [-0.7, 'bent|box|draw|leg|lift your|pad|sit up|under the|youre not'],
      [-0.8, 'feet flat|knee bent|lie'],
      [-0.9, 'mat'],
    ],
  ],
  [
    'step',
    -0.5,
    [
      [1, 'step'],
      [0.7, 'loop|stand up|whole|whole foot'],
      [0.6, 'front heel|heel and|home|the side'],
      [0.5, 'foot on|leg|of your|push through|side of|the step'],
      [
        0.4,
        'and bring|and stand|arm swing|back foot|back knee|bring|every|front leg|heel|it home|its the|knee goe|middle of|on hip|other foot|right up|step out|tap|the other|through the|together|way down',
      ],
      [
        0.3,
        'a hair|an inch|and all|and keep|and sit|back and|big step|bottom foot|bring the|cheating|coming down|drop the|feel your|feet hip|fold|foot and|foot follow|front knee|goe over|grass|hair|hold on|in as|in line|inch off|inward|it a|it doesnt|its just|keep your|kneecap|line with|off and|off the|other|other one|point|shove off|stand right|step back|that knee|that should|the grass|watch|you stand|you step',
      ],
      [
        0.2,
        'a baby|a race|a tightrope|above your|and come|and drop|back down|back up|bell at|bottom leg|bring it|but|can hear|catch|cave in|centimetre|come home|comfy|dive|do the|doesnt|dont haul|dont like|dont shove|down first|elbow a|eye up|feet together|feet under|feet wide|fetch|floor with|follow|foot goe|foot up|grumble|has|haul|haul on|heel as|heel to|hip width|hold of|hover|i|in a|inch|it cave|its not|its up|join|just above|kiss the|knee that|knee to|lace|lean in|let you|light|like it|like youve|long step|miss|on them|one heel|or two|other leg|out to|outside of|point forward|put one|race|right in|rock|rush|seat|shove|side and|sit back|slip|slip off|sneaking|so its|softly|stand|stay in|steady|step one|swap|swing|take a|talking|tap the|that foot|that heel|that leg|the bell|the loop|then lower|then the|through that|tightrope|tip forward|to catch|toe up|turn round|up at|wander in|watch the|way up|were|whole time|you sink|you turn|youll be|your ankle|your toe|yourself',
      ],
      [
        0.1,
        'a knee|a touch|about the|above|and change|and slow|are dropping|cave|cheek of|chest up|climb|dont fold|feel that|flop out|half way|knee come|on that|plenty|say|sit down|slow on|that cheating|the lace|the one|the speed|touch|up tall|walk to|you lower',
      ],
      [
        -0.1,
        'ahead|and back|ankle|apart|arch|are|arm out|as high|away from|back to|ball|bar|blade|bone|both hand|breathe in|breathe out|bring your|by|by your|calf|ceiling|deep|dont hold|down and|down for|down to|draw|dumb|dumb bell|each hand|ear|ease|face|flat|for the|forearm|gone|high as|hold it|if the|if you|in|in each|it come|it go|jump|knee and|knee bent|land on|leaning|let it|let the|lift your|low back|near|neck|now|off your|one knee|or|out of|palm|past|press the|push the|put it|ring|shoulder blade|side on|sigh|sink|sore|squeeze your|swinging|the arm|the ceiling|the chest|the elbow|the feet|the shoulder|this|till it|till your|towel|tuck|under the|up for|walk|wee|weight|what|where|wrist|you get|you want|youll feel|your belly|your breath|your chin|your ear|your elbow|your shoulder|your side',
      ],
      [
        -0.2,
        'as a|as it|at|at the|back of|back pocket|band|behind you|belly|bend the|between|between your|big|both feet|breathing|chair|chin|dont lean|dont roll|dont want|down|each|easy|edge|facing|fall|feet flat|fist|float|floor away|foot forward|foot in|foot off|grab|grip|half of|hang|heavy|heel down|height|if your|in front|in the|in your|into|into a|it out|it up|its a|its only|keep breathing|knee soft|knee up|lean back|left|leg out|let|let go|let them|lift the|like|like youre|little toe|loose|mat|more|no|nose|on the|open|opposite|over the|over your|pointing|slide|something|sort|sort of|stance|stand on|standing|start|still|tail|tell|the air|the band|the big|the chair|the end|the mat|the nose|the top|the wall|through your|thumb|till the|to get|top|tucked|tummy|turn|under you|up off|whole way|without|you can|you dont|you feel|your finger|your hand|youve got',
      ],
      [
        -0.3,
        'air|and|as if|bend|big toe|breathe|can|elbow|end|feel it|finger|get|high|if|level|long|low|pick|pocket|press|reach|rib|squeeze|stop|the foot|the hip|the leg|there|there a|they|three|till|to|to your|under|wall|want|your|your head',
      ],
      [
        -0.4,
        'a|arm|back|behind|both|breath|for|go|hand|head|it|it down|not|over|quick|roll|soft|straight|your back|your heel|youre',
      ],
      [-0.5, 'lift|on your|straight down|the'],
      [-0.6, 'away|shoulder'],
    ],
  ],
  [
    'stretch',
    -0.2,
    [
      [0.7, 'breath out|sigh'],
      [0.6, 'breathe into|heavy|long breath|tingling'],
      [0.5, 'arm out|breath|hang|hug|into your|long|or|sink|the knee|tuck your'],
      [
        0.4,
        'and draw|bit more|deep|deep in|dont yank|gently|hand on|into|knee in|let your|more|nothing|side to|slowly|straighten that|that back|that leg|the back|thigh|to side|yank|you feel',
      ],
      [
        0.3,
        'a long|across the|after|ankle over|apart|arch|at all|at shoulder|back hip|back leg|back off|band|band round|behind|bouncing|dont arch|down the|foot|foot back|for the|heel down|hip forward|how|hug the|knee apart|knee together|lead|leg up|let go|long band|nerve|no bouncing|out like|over it|pillow|pillow under|pull not|put a|shoulder height|sit up|step through|straighten|stretch|t|tailbone|the arm|the chest|the front|the hip|the nose|the thigh|till it|tingle|toe turned|tuck|turn out|turned|turned out|wait|where its|wide|yank on|you like|your chest|your eye|your hand|your tail|youre after',
      ],
      [
        0.2,
        'a pain|a pillow|a pull|a stretch|and lean|and let|arch your|away and|back foot|back heel|back knee|behind the|bend it|bend the|block|breastbone|calf|can go|chest down|chest open|come off|come out|dont bounce|dont get|down as|down with|drag|drag your|draw|drop your|elbow on|feel it|feet wide|finger|finger tingle|foot goe|foot out|forearm up|forehead|get heavy|get there|go and|go heavy|go soft|grab|heel|hold the|how you|in my|into the|it across|it go|it hang|it off|its the|knee and|lean in|lean your|let the|like that|like you|little wider|long sigh|low as|lower back|much|my|numb|of them|on it|one leg|onto the|or the|other way|out long|out the|out through|pain|pedal|poke your|put the|rest|send|shift|shin|sit back|slide the|slow breath|soft|spread out|standing foot|stop at|tail|take it|talking|the first|the lower|the right|through and|till|till its|tip|to touch|today|toe pointing|touching|toward you|towel under|turn away|under it|up onto|up slowly|wait for|waiting|walk your|want it|you squeeze|you want|your breastbone|your chin|your finger|your foot|your heel|your right',
      ],
      [
        0.1,
        'across|and needle|and walk|anything|blood pressure|both of|bounce|bounce it|bum back|chest up|dont poke|dont push|draw the|elbow at|elbow level|feel a|for your|forearm|forward from|front of|hand out|hand up|heel on|hip in|if youve|it stop|it till|knee at|knee down|knee on|lead with|leg behind|leg in|level with|lie on|long in|melt|needle|nice|no prize|pin and|pressure|send the|sigh out|sit your|that a|the calf|the long|the wrist|there till|till you|tip over|toe together|toe up|up the|up your|your waist',
      ],
      [
        -0.1,
        'a hand|all|along the|and lazy|arm by|arm straight|as high|as your|belly button|bend your|blow out|box|bring it|button|car|come back|cramp|degree|do it|drop the|dropping|dumb|dumb bell|each|each hand|elbow|facing the|far as|feet a|feet under|five|foot off|front heel|glued|go back|go up|goe|going down|gone|grass|had|high as|higher than|hip stay|if that|in each|in on|inch|inside|it back|it on|it with|its only|keep them|knee straight|knee under|lace|land on|leaning|let them|like there|need|not locked|not your|one up|pause|push the|quiet|rail|rib down|shoulder and|sitting|speed|squeeze it|stand tall|stand up|step out|stirring|stop and|straight line|swinging|the bottom|the box|the grass|the rail|the whole|them|them up|then push|they|theyre|tray|up a|up behind|up like|up to|use|while you|width|with it|working|you come|you pull|your elbow|your whole|yourself',
      ],
      [
        -0.2,
        'a foot|a touch|above|all the|along|an inch|and down|and hold|and then|as far|as if|as you|back down|backward|before you|between your|blade|blow|both hand|bring|but|can|cant|circle|count|do|doing|dont tip|down and|down like|drive|ear|elbow under|end|even|eye|facing|far|feel the|first|fist|flat on|follow|foot on|for three|go as|ground|half|hand under|heel up|hip and|home|hurt|i|i can|imagine|in a|in as|inside of|it a|it get|it goe|its not|jump|keep|keep breathing|keep the|knee up|knuckle|land|leave|lift|lift the|like youre|little toe|lock|look at|loop|loose|low back|lower it|make|me|moving|neck|nice and|no higher|nobody|of you|outside|palm up|past|peel|pop|puff|put it|reach|rib|roll|round|same|should feel|shoulder blade|sideway|slide up|slow|slower|small|smaller|smooth|snap|somebody|squash|squeeze|stacked|stand|stay on|steady|straight down|swap|take|take your|than your|that knee|the air|the band|the bar|the big|the chair|the elbow|the end|the floor|the ground|the inside|the middle|the out|the rib|the seat|the top|then let|then you|think of|thumb|time|tiny|to|to it|too|track|tummy|under your|underneath|up at|up off|up over|way down|way up|weight in|weight on|when you|while|with the|you go|you know|you wobble|your backside|your belly|your breath|your hip|your leg|your low|your shoulder|youre a',
      ],
      [
        -0.3,
        'a|air|and bring|and lower|and the|as it|at your|back into|backside|bar|bell|coming|dont go|dont hold|dont lean|dont let|eye on|feet flat|flat|floor|from the|hard|higher|in your|knee soft|lazy|light|like|line|middle|no|not|off|out on|out to|over|over your|pick|pinch|pull your|seat|second|short|should|side on|so|spine|squeeze your|start|stay|swing|tall|than|the other|the ring|the way|there a|three|toward your|two|under|up on|want to|watch|whole|you should|your bottom|your side',
      ],
      [
        -0.4,
        'again|an|are|before|belly|big|breathe out|breathing|by your|come down|going|just|lean back|little|only|palm|push|quick|see|still|think|top|way|weight',
      ],
      [-0.5, 'about|breathe in|look|off the|over the|straight|when|your ear|your feet'],
      [-0.6, 'bottom|out as|youre'],
      [-0.7, 'by|feet'],
      [-0.8, 'as'],
      [-1, 'then'],
    ],
  ],
  [
    'supine',
    -0.3,
    [
      [0.9, 'lie'],
      [0.8, 'feet flat|leg up'],
      [0.7, 'hand behind|hip up'],
      [0.6, 'ceiling|fall|flat|knee bent|leg|mat|the ceiling|the mat|toe up|towel'],
      [0.5, 'and draw|arm by|doing|get there|leg long|one on|other knee|press|the knee|them|way up|your back'],
      [
        0.4,
        'a straight|be|bed|behind your|draw|elbow wide|heel in|it come|its all|kneecap|know|leg out|nothing|now|on your|other leg|out like|peel|rib down|roll|rolled|shoulder blade|shoulder up|squash|straight line|that leg|the lift|the opposite|toward you|under the|you know|you like|your eye',
      ],
      [
        0.3,
        'across the|again|all the|and a|and come|and heel|and shoulder|arche|as low|at you|back of|bench|bend it|bent|blade|bone at|both|both knee|bottom of|bum stay|can keep|chin|close|cramp|degree|dont bounce|down with|draw it|elbow flapping|eye under|flatten|floor and|foot flat|for six|hamstring|heavy|heavy on|help|hug|if the|into the|knee in|knee over|knee to|leg in|lie back|like a|line from|long|long band|low|low as|mouth|need|no higher|nose for|over to|pedal|peel your|pillow|pinch|press the|push yourself|rib|roof|shin level|short of|six|skim|slide up|slower than|so|so the|squash the|straighten that|stretch|t|the bed|the kneecap|the leg|the roof|the thigh|the towel|them away|this|through your|tighten|toward|twice|up at|way to|where|while|whole leg|wrist stacked|your leg|your neck|yourself|yourself away',
      ],
      [
        0.2,
        'a grape|a hip|a lift|a moment|a ruler|a stretch|a time|a whisker|above|above your|against|all|all in|and leg|and lie|and peel|and start|and swap|and three|are only|as long|as the|as they|away from|back come|back into|back stay|band round|bar in|be a|behind the|below|below the|bend|bent up|blow|blow out|boat|both of|brisk|by your|carpet|cheek|chin not|clenching|close enough|close to|closer|closing|closing a|come off|completely|curl the|daylight|daylight under|dead|deep in|do|doing it|dont push|dont yank|down one|down through|draw the|drive your|edge of|elbow about|feet down|flapping|flare|flop|flop out|for four|getting|glued|go away|go back|go completely|go soft|good knee|grape|half as|halfway|hand over|hang on|haul|haul on|head and|heel close|home and|how|hug the|hurry|if its|if there|imagine|in through|in toward|isnt|it and|it arche|it doesnt|it down|it go|it is|it slip|it slower|it under|its own|its your|jaw|just go|just off|just the|keep them|knee down|knee up|leg goe|leg straight|let the|lie down|lift the|like an|like youre|long breath|long leg|loop above|lot of|lower back|lower them|make it|melt|move|muscle|no hurry|not out|not your|off that|one bone|one line|one side|operated|operated leg|out every|out on|out through|over on|peel the|people|piece|pinch your|pointed|pulling|resting|rib that|right arm|roll out|roll to|rolled towel|rope|round the|ruler|sand|should feel|shoulder and|sit on|sit tall|slide|slide the|slip|slow breath|so youre|sock|sock on|soup|stacked over|stay heavy|straight arm|straight up|straighten|table|tea|that how|that turn|the bar|the belly|the bench|the carpet|the edge|the feet|the head|the hip|the long|the loop|the mouth|the muscle|the operated|the right|then|then let|then lift|there is|there to|they are|three on|tight and|till its|time you|tingling|to a|to help|to see|to shoulder|to straight|to where|toe pointed|touch|twice as|until its|up off|up toward|way down|way out|when you|where it|where its|while you|whisker|yank on|you hold|you need|you should|you sink|your cheek|your heel',
      ],
      [
        0.1,
        'a sock|a table|an arrow|and lift|and needle|and press|and roll|are coming|arrow|at a|away like|because|bra|bum not|coming up|crease|crease of|cross your|dont get|down in|down into|each one|exhale|feel this|float your|foot goe|for it|hand under|hard|if a|in like|it slide|its still|its tight|leg flat|let go|lift off|lot|lower your|mat and|moment|needle|of them|old|on each|one heel|out the|over your|pad|pillow under|pin|pin and|puff|pulling the|push it|put the|right round|send|send it|send the|shoulder to|side to|small of|spread out|stay a|take one|tea tray|that all|the crease|the far|the heel|the light|the out|the small|them home|themselve|this in|through both|to one|to side|toe to|too far|towel up|tuck them|two down|up a|up again|up if|up over|width apart|working|you sit|youll be|your belt|your face|your kneecap|your mouth|your side|your you|youre on',
      ],
      [
        -0.1,
        'able|able to|an ankle|and bring|and do|and dont|and hold|and knee|and make|and one|and sit|arch|away with|baby asleep|back heel|back knee|back leg|be able|bend the|both hand|bottom out|but|check|chest height|circle|dive|dont arch|down first|down slower|drop the|easy|elbow and|elbow pinned|facing front|facing the|feet back|feet stacked|find the|finish|fold|follow|foot back|forward and|front knee|full|hair|hand by|hold|in line|into a|it in|it till|knee apart|knee come|knee under|knock|landing|lap|lead with|lean in|leaning back|leave your|level with|lift one|little toe|lock|long neck|look|make the|near|near the|nearly straight|nice and|nip in|no sagging|not in|onto|onto the|or your|other hand|other one|out over|out to|past your|pick|pinch in|point|push the|put|put it|right up|ring at|sagging in|see|shift|shrugging|smooth|stamping|stand on|step back|step out|straight|straight and|straight back|straight down|swinging|ten|than the|than your|the middle|the rail|the step|the top|them out|three second|thumb to|tin|tired|to lower|track|tuck the|turned|underneath you|up behind|up high|up there|walk your|was|whole|wide|wider than|wobble|you by|you feel|you think|your achilles|your body|your chair|your lace|your whole',
      ],
      [
        -0.2,
        'a car|a towel|achilles|after|and down|and put|and walk|anybody|arch your|are up|as if|away and|baby|back and|back flat|back foot|back in|back pocket|backward|bad|ball of|before|belly button|belly tight|blood|blood pressure|breathe|breathe into|breathing|build|button|catch|chest and|chest to|chest up|collar|collar bone|collarbone|come|come up|crossed|dont drop|dont kick|dont stick|down a|down the|drifting|drive|em|end|eye on|face the|feel your|feet under|find|fist|for the|forehead down|go overhead|got|grip|ground|grow|hand in|hand off|handle|have|heel to|higher than|hip and|hip level|holding your|if youre|if youve|in|in it|inch|into your|is plenty|it|it a|it between|it with|just outside|keep|keep breathing|keep it|keep the|knee straight|lace|late|lazy|lead|lean back|lift your|long line|looking|looking at|me|metre|more than|nearly|neck|new|nick|no holding|no more|oclock|on|one end|one foot|one in|one leg|out there|over it|palm facing|past|plate|please|plenty|pointing|poke|poke your|pressure|pull it|rail|run|running|same|second toe|set|should be|shoulder down|shoulder width|side on|sit back|sit up|slack|slide them|slowly|small|so you|soft|soft knee|soften|something|sort|sort of|stand tall|standing|stay straight|stick|stick your|straight at|tail|take the|take your|tent|that a|that it|the ankle|the big|the box|the cushion|the front|the pull|the stick|the wrist|then you|there for|thigh level|think|thumb|till it|till your|tip|tip forward|to get|to heel|to just|tuck your|turn your|turning|up by|up like|up on|up quick|wall|way back|weight on|well|went|whole foot|with it|without|wrist are|you dont|you go|youll go|your breastbone|your collar|your front|your shoe|your shoulder|your thigh|youve got',
      ],
      [
        -0.3,
        'ahead|and lower|and stand|as you|back like|back to|ball|behind you|big toe|box|by the|car|chin out|dont lean|door|drop|ear|fast|feet hip|flat on|foot on|give|go down|hand and|hear|hip back|hold the|in front|in your|inside of|knee soft|land|land on|leaning|let your|level|like there|like youve|load|no|not the|of|of a|on a|on the|on top|other foot|out in|over the|palm|pocket|quick|quiet|sagging|shoulder over|sigh|snap|squeeze|stand up|steady|string|take|than|the|the wall|they|top|touching|tuck|turn|under shoulder|want to|weight|wider|with|with the|you|you come|your toe|youve',
      ],
      [
        -0.4,
        'between the|body|chair|cushion|dont|dont roll|floor away|foot|forearm|front of|hand on|height|middle|one knee|ring|seat|sit|the arm|the chair|the neck|the ring|the seat|the shoulder|your arm|your breath|your elbow',
      ],
      [-0.5, 'between|elbow under|facing|first|of it|out of|toe|walk|wrist|your knee|your wrist'],
      [-0.6, 'big|elbow|forehead|hand|high|tall'],
      [-0.7, 'at your|front|stand'],
      [-0.8, 'lean'],
      [-1, 'forward|step'],
    ],
  ],
]
