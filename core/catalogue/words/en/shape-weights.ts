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
    -0.5,
    [
      [1.1, 'knee under'],
      [0.9, 'hand under|under shoulder'],
      [0.7, 'belly|hand and|opposite|wrist'],
      [0.6, 'and knee|arm forward|opposite hand|round up|slide'],
      [0.5, 'between the|breathe out|knee an|under hip|your wrist'],
      [
        0.4,
        'a dog|and foot|and the|come out|dog|float|floor away|go on|high|higher than|it down|no higher|one leg|that it|toe tucked|tucked|under|you reach|your right',
      ],
      [
        0.3,
        'a cup|ahead|an inch|and do|and look|and round|away and|belly drop|blade|breathe into|breathe through|coffee|cup|cup of|enough that|float it|four|get down|glass|hand a|head come|hip stay|inch|it start|kick the|knee are|left|leg back|loop|no more|other arm|reach|shoulder blade|slide one|stay low|stiff|still|than your|the breath|the lift|then come|too high|tray of|walk|wall behind|you breathe',
      ],
      [
        0.2,
        'a couple|a fence|a full|a tray|and lift|and shake|and that|as far|as high|as your|baby|back flat|balance|been|belly tight|belly up|bit in|bump|cat|cat on|ceiling knee|control|couple|couple of|crisp|dip|dont need|dont want|drop and|elbow dont|fence|finger|fist|footprint|for three|freeze|go slow|grass|heel as|heel to|higher|hip level|i dont|imagine a|inch off|kick|knee a|knee out|left arm|leg goe|lift one|lift them|near the|ninety|ninety degree|of tea|one breath|one end|one that|opposite foot|out there|palm up|plaster|put a|quiet|reach your|right arm|same side|shoulder and|shoulder are|side of|sitting|slack|slide it|small step|spine|spread your|stamp|stamping|start from|stay up|straight back|tailbone|take it|tea|that up|the grass|the head|the hold|the mat|the opposite|there for|thigh level|three second|to go|today|toward the|tray|underneath you|up over|up quick|walk it|walk your|water|with control|your left|your tummy',
      ],
      [
        0.1,
        'a cat|a drawer|a touch|and hold|back as|bin|blade and|come forward|dont hitch|dont kick|dont sit|down with|drawer|fish|flat back|floor between|forward till|go as|going back|gone too|hand in|happy|has|hip back|hitch|hitch the|hover|it still|jerk|knee wide|little step|make a|opening|out going|reach long|reach the|rest|shutting|somewhere|spread|stay still|tea on|the belly|them out|there is|thumb to|underneath|up high|whatever|you put|your belly|your finger|your spine|youve gone',
      ],
      [
        -0.1,
        'a bit|across|all the|and back|and down|and if|and not|and stand|and then|apart|arch|arm long|arm out|at your|back down|ball|ball of|because|behind|belt|bend the|bend your|big toe|bit|both hand|bounce|breath|breath out|bring|bring the|calf|can|catch|close|coming|count|do|doing|dont bounce|dont roll|door|down and|drive|dumb|dumb bell|each hand|ease|easy|edge|even|eye|fall|feel the|feet flat|feet hip|feet under|flat|foot on|from your|going|going down|good|heavy|heel|heel and|height|hold the|how|if it|in each|inside|into the|is|it come|it go|it goe|its not|its the|its your|kneecap|lean back|let go|let them|lie|like youre|lower|not a|not the|not your|of a|off your|on|one hand|onto your|or|out like|out on|pace|past your|peel|pick|pocket|point|press|pull it|rail|ring|round the|shoe|smooth|soft|soft knee|squeeze the|squeeze your|stand tall|stand up|standing|stay down|stick|swing|than you|the back|the band|the bar|the chair|the chest|the feet|the heel|the other|the rail|the ring|the seat|the whole|then the|there|theyre|thigh|think of|this|through the|till it|top of|turn|up|up and|up at|waist|way down|way up|when you|wider than|with it|without|your ear|your elbow|your leg|your shin|your shoulder|your side|youre a|yourself',
      ],
      [
        -0.2,
        'about|and|ankle|arm|at|away from|band|bar|bell|big|blow|blow out|body|both|breathing|by your|chair|come up|curl|doesnt|dont|dont hold|drag|ear|face|facing|foot|forearm|forehead|from|goe|half|if youve|in for|into|it up|itll|keep|keep breathing|knee in|knee up|lean|leg long|let|lift the|loose|move|nose|of you|off the|on the|other|other foot|out for|outside|pinch|pointing|roll|sag|seat|sit|slower|slower than|somebody|the elbow|them|think|till|to get|toe|together|towel|up off|when|whole|width|with|you can|you push|youll|your arm|your chest|your chin|your heel|your rib|your toe',
      ],
      [
        -0.3,
        'back|bend|by|chest|elbow|elbow under|first|front|get|hang|hold|if|leave|let it|like|line|long|of the|off|one|out|out in|over your|pull|squeeze|swap|the top|the way|they|top|two|where|your feet',
      ],
      [-0.4, 'chin|down|in the|its|leg|rib|shin|stand|stop|straight|tall|the|the front|way|with your|your|youre'],
      [-0.5, 'hand on|not|to your'],
      [-0.8, 'feet'],
    ],
  ],
  [
    'balance',
    -0.2,
    [
      [0.8, 'foot on'],
      [0.7, 'big toe|standing|the chair|the ring|together|whole foot'],
      [
        0.6,
        'arm forward|arm straight|both hand|foot off|higher than|knee together|one hand|other foot|roll out|sideway|slow it|standing leg|the other|the outside|wobble',
      ],
      [
        0.5,
        'a hand|above your|between the|chest down|dont tip|eye|eye up|feet back|fingertip|front of|hand in|hand on|high as|in on|it get|itll|keep hold|knee soft|loop|opposite arm|out a|rail|ring a|rock|step out|swing the|the rail|the standing|thumb out|turn round|up on|up onto|weight on',
      ],
      [
        0.4,
        'a cup|a foot|along|back down|bring the|by side|cramp|cup|cup of|face the|fence|fingertip on|float it|foot follow|forward and|gate|grab|grow|hanging|in by|in going|it on|knee straight|lean a|level|little toe|lower|next|of it|on each|on it|on them|one long|one up|outside|outside leg|pick the|push through|reach the|right|right in|ring|sagging|side by|side on|straight back|than your|the heel|the side|the step|the wobble|the worktop|through that|thumb|toe|underneath|wander|whole|whole time|worktop|youre leaning',
      ],
      [
        0.3,
        'a kickstand|achilles|after it|and back|and breathe|and turn|ankle|ankle behind|ankle dont|as high|back an|behind you|bench|breathe through|bring|but not|catch|clock|do it|doesnt|dont arch|dont lock|down between|down underneath|down with|dug|dug in|even|eye on|fine|finger on|foot|foot up|for three|freeze|garden|goe out|going|going down|halfway|hand off|heel and|heel as|heel back|hip height|hip level|hold of|imagine a|it in|it there|it wander|it want|its there|just above|keep breathing|kickstand|knee no|lace|lean over|leg forward|leg goe|like its|lock|lower till|near hand|of tea|off the|off your|on that|one leg|onto the|or two|other|other arm|out like|out onto|out to|pick|pick a|point forward|push away|right up|rolling out|rushing|set it|side|slide one|slow on|something that|stand|stand on|stand side|start|strap|stretched|swap leg|than|than that|that cheating|the bench|the big|the little|the shin|the thumb|the toe|then lower|then press|they want|three second|tip your|tired|to hip|toe of|too|up behind|you look|you reach|you swap|your ankle|your big|your bum|your thumb',
      ],
      [
        0.2,
        'a boat|a cat|a chicken|a coin|a gate|a lamp|a letter|a moment|a spot|a touch|a wee|about level|after|and bring|and draw|and keep|and lower|and you|any sharp|arch|arch your|are creeping|arm like|as tall|away with|back in|back one|back till|backside|ball|bang|barking|bell in|biscuit|boat|body in|boss|bottom foot|bounce off|bouncing off|breathe low|breathe normally|bucket|but|cat|chair back|chair in|change|cheating|chicken|chin level|chin off|clear|closer|closing|closing a|creeping|creeping up|crisp|dead still|dive|dont drag|dont hitch|dont kick|dont lean|dont roll|dont shove|dont stamp|down by|down into|drift out|drive through|each time|elbow dont|elbow to|far enough|feet apart|feet hip|feet on|find|folding|follow|foot straight|for this|for you|forearm and|forward a|forward till|front foot|gentle|gently|get a|glass|go so|goe over|grab the|grow up|hand together|headlight|heel to|heel touching|height and|hip forward|hip width|hitch|hitch the|in breath|in one|in youre|inch or|inward|isnt moving|it doesnt|it drop|it fall|its the|jean|just a|just clear|kick|kick the|knee and|knee goe|knee hip|lace down|lamp|lamp post|leading leg|leaning on|leave it|leg back|leg first|leg youre|let one|letter|letting|level like|lino|little forward|little step|long line|look like|loose|mean|meet|middle toe|movement|moving|next door|next one|no higher|no more|not at|not like|not moving|now|on one|one|one breath|one elbow|one that|onto|onto one|onto your|opposite|or a|other toe|out behind|paint|pocket is|point at|press up|properly|pulling the|put|put the|quietly|reaching|rest|right leg|ring down|ring to|rise|rise up|roll through|roll to|round one|same leg|second|seen|shove off|skate|slide them|slow down|slower|small and|so its|soft knee|spot|stair|stamp|stand right|stand there|stand up|standing foot|standing knee|start small|stiff|stood|stop and|swap the|t|tall as|tall at|tall on|tap the|tea|tea on|that|that chair|that fine|that heel|that isnt|that it|that knee|that should|that standing|that way|the backside|the fence|the in|the kneecap|the lino|the loop|the next|the opposite|the right|the stair|the whole|their|them drift|there for|thing|three|thumb to|tip over|tipping|to come|to go|toe forward|toe on|toward it|trouble|turn your|underneath you|up at|waiting|wall behind|want it|want to|weight over|were|what its|when the|where your|with both|with you|wobbling|wrist or|you get|you press|you tip|youll feel|your backside|your left|your little|your right',
      ],
      [
        0.1,
        'a fence|a plate|about the|achilles is|along the|and all|and even|and float|and rest|and shake|and step|and straighten|and take|and wide|arch to|as a|as wide|at ninety|back foot|balance|be on|bend one|bicep|bigger|bouncing|can without|caving|chair|chase|check it|clap|control|count down|crossing|diving|down first|down quiet|downstair|drawer|drifting back|duck|easy pace|edge|even if|exit|facing front|feet together|fire|fold in|foot right|gap|get bigger|get hurt|get the|go and|goe down|got you|hand slide|hanging off|hat|hear your|heel hanging|heel toward|hop|inside leg|is fine|it for|it till|itll go|join it|jumper|just in|just off|land soft|lean on|leaning|left|left leg|low down|lower yourself|marcus|morning|near|nice long|no rushing|nose if|on something|one straight|other leg|out sideway|out slowly|over the|pub|put one|put your|reach long|right under|ring in|second toe|side of|slow as|slow up|slower than|snap|some|some of|somebody got|stand tall|stare|stare at|start at|stay in|stay low|stay there|step down|step that|stick out|straighten|straighten it|sweep|tail under|take hold|take one|ten|that a|that hip|that up|that you|the clock|the edge|the height|the leg|the pad|them in|theyll|till there|tin|to break|to run|to touch|today|touch|touching|up taller|waiting for|walking|way and|wee bit|when it|whole of|wide as|with the|with them|without a|wrist stacked|you go|your achilles|your belt|your bicep|your pocket|your second|youre after|youre stood',
      ],
      [
        -0.1,
        'a hot|a long|a pencil|a sharp|a spring|a straight|a tightrope|ache|and push|and tip|and two|and your|and youre|arm and|arm are|arm go|as near|at chest|back a|back and|back stay|because if|bit and|blood|blood pressure|bottom of|brush the|cant|carrying|chair against|chest and|chest height|chest open|chest to|chin tucked|come off|coming up|cracking|crank your|crease|crossed|curl your|dont curl|dont force|dont lift|dont round|dont step|elbow bent|ever|facing forward|fast|feet go|flat as|flat back|for four|force|forehead|forward like|get up|getting|go long|half|hand at|hand out|hang there|hardly|head and|heel heavy|heel on|help|hinge|hip high|hip up|hold on|hot|if there|im|into a|it across|it away|it bite|it pull|it to|it under|its like|just hold|knee stop|knee track|lap|leg up|let your|line from|long band|long leg|long neck|long spine|looking at|melt|mouth|muscle|nearly straight|need to|no rush|of them|palm facing|palm up|park|past the|past your|pencil|point where|poke|press it|pressure|purple|push it|quick off|resting|resting on|rib tucked|road|rocking|roll back|round over|round your|shoulder down|shoulder width|shrug|sit down|sit on|skim|slapping|so the|so your|square to|stay up|stop|stop a|straight ahead|straight out|stuck|that turn|the belt|the ear|the first|the handle|the lift|the post|the strap|they come|they dont|thirty|thirty degree|tip from|to a|to stand|top hip|toward the|track over|train|train track|tucked in|up in|up off|up tall|up under|walk it|walk to|walk your|washing|watch|when|window|with a|wrist straight|yank|you push|your back|your belly|your body|your face|your own|your partner|your tail|your waist|youre up|youve got',
      ],
      [
        -0.2,
        'a bell|a couple|a phone|a pull|a ruler|a wall|across the|again|and foot|and hop|and no|and out|and over|and send|and stop|and that|and then|arm by|arm long|arm up|as it|as they|as your|at all|at you|at your|away and|back behind|back flat|back into|back pocket|back up|bad leg|band|be|beat|behind the|being|bell|belly button|below|bending|between your|big breath|bill|bit|bit wider|blow out|body|bow|breastbone|breathe in|bump|button|carpet|chest proud|chest tall|chest up|close enough|coat|cold|come down|come forward|come to|coming|cone|could|count|count out|crank|cross|cushion|da|da dum|deep in|dip|dont bend|dont fall|dont hold|dont let|dont like|dont reach|door|down slow|dragging|draw|dum|each one|ease|edge of|elbow under|fall in|far|flop|forearm|from the|from your|front|get down|get there|get your|glued|go as|go on|good knee|grip|grumbling|half of|hand behind|hand like|has|have|hear it|heel are|heel in|heel up|height|hip back|home|if they|in front|in it|in slow|in that|in through|instead|it and|it go|it leave|it let|it like|it slower|its only|jump|jumping|keep one|kind|kiss|knee are|knee hover|knee not|knee on|knee out|knee to|lane|last|leaning back|leg and|leg behind|leg in|leg straight|let|let go|let them|lie|little sip|lot|low back|machine|me|mind|minute|more|move|need|no further|no rocking|nose over|not the|not your|nothing|off it|on hip|one at|one of|open|other hand|other knee|out over|out the|out through|out till|pay|pedal|phone|pick it|pinned|pole|press through|proud|pull|push the|push your|quick step|quiet|rope|ruler|ruler length|rush|see|shoulder blade|shut|sink|sit tall|sit up|skip|slide the|slow breath|so if|so you|spine|spring|squeeze your|step back|step off|still there|stool|straight|stride|swap hand|swinging|switch|tail|tail and|tell me|than you|that back|that side|the band|the bell|the belly|the breath|the carpet|the chest|the door|the elbow|the far|the hip|the last|the line|the lower|the towel|the tree|the wall|them|then bring|then sit|there|there no|they|thigh to|this|through your|tight|tightrope|till it|tiny|to help|to it|to your|toe pointing|toe up|top knee|toward you|tray of|tree|tuck your|turning|under you|until you|up and|up like|up the|up to|up toward|up with|upright|use|wall|want the|water|way up|weight in|when you|when youre|while you|whole way|wider|you and|you do|you land|you open|you put|your breastbone|your cheek|your chest|your chin|your finger|your forearm|your nose|your shoulder|your tailbone|youre done|youre in|youve',
      ],
      [
        -0.3,
        'a tray|about|and a|and down|and not|and slow|ankle over|are|at a|back|backward|belly|blade|blow|bone|bounce|car|chin|circle|come|curl|dont swing|draw it|drink|each hand|easy|exhale|feet a|feet in|fist|foot forward|foot in|foot out|foot turn|for the|forward over|front heel|front knee|had|hard|head on|heel stay|hold it|if a|if it|if youve|in|in as|inch off|inside of|into your|it come|it is|it should|it with|its a|its your|joint|keep your|kissing|knee dont|knee down|knee go|knock|land on|lazy|lean back|leave the|length|lift it|like there|like youre|metre|neck|not up|of you|on you|on your|only|only the|or|out as|over|palm|past|pillow|press down|pretend|quick|rib down|round|sag|send|shin|sip|so|speed|stay down|step one|tailbone|take a|take the|tell|the air|the arm|the grass|the inside|the mat|them down|there a|third|till its|till you|to|to hear|touch the|travel|tug|up|waist|where|where it|where the|while|whole leg|with it|you come|you feel|you lift|you pull|your arm|your breath|your ear|your neck|your side|your toe|youre not',
      ],
      [
        -0.4,
        'a time|an|an ankle|arm|arm out|as if|away|back off|before|before you|bent|big step|breathe into|bring it|ceiling|deep|down at|down on|ear|far as|foot back|for it|four|further|hamstring|hang|head|heel down|in your|into the|it home|it up|know|lean in|lift|light|mat|not|pointing|rhythm|short|side and|stay on|still|the ceiling|the joint|the shoulder|then the|thigh|track|tray|tuck|turn out|under the|with your|your elbow',
      ],
      [
        -0.5,
        'above the|air|as far|bend|feet flat|grass|inside|into|knee bent|lift your|the seat|under|your hand|your leg',
      ],
      [-0.6, 'back heel|back knee|breath|elbow|flat|from|heavy|leave|nose|rib|sigh|sit|the front|tucked|walk'],
      [-0.7, 'long|out in|seat|shoulder'],
      [-0.8, 'chest|over your'],
    ],
  ],
  [
    'ballistic',
    -0.6,
    [
      [0.9, 'bell'],
      [0.7, 'it land|nobody'],
      [0.6, 'hike|loose|the leg|throw'],
      [0.5, 'arm are|between|catch|dip|fast|forward and|hike it|let it|park'],
      [
        0.4,
        'and back|as it|back at|breath out|drive|fold|get bigger|it get|it up|land|lock|lock it|metre|one hand|outside|outside leg|overhead|park it|punch|rope|snap|swing the|up there|zip',
      ],
      [
        0.3,
        'a pace|and let|bell a|between the|between your|bigger|doesnt go|dont fold|feet a|find a|finish|get your|grip|hard|hip and|it back|it drop|it fall|it float|it like|it over|it smaller|keep it|leg forward|like it|look behind|make|on each|out at|out when|rail|sharp|side on|so it|start small|the arm|the bell|the outside|the same|then drive|when it|wind|your ear|your wrist',
      ],
      [
        0.2,
        'a bell|a flat|a little|a shoulder|ahead|ahead of|and pick|and punch|are just|are rope|arm locked|around|ball|bell between|bent knee|big step|breath in|breath on|bruise|by itself|cause|chat|check|check its|chest height|chin out|closer|collar bone|dizzy|do the|dont lift|dont stop|drop it|early|elbow on|else|empty|every rep|every time|fall|find|flip|from your|get a|goe forward|got a|halfway|height is|hinge|horizon|hurry|if its|im|into a|it close|it help|it through|it with|its on|itself|jump|kick|knee bend|like its|loud|make it|near|near hand|no good|no hurry|out over|pace|pick it|pull it|rib dont|shoulder that|sky|slide back|small and|smaller|snap it|somewhere|stand side|stand tall|standing|swing|tall on|teeth|that doesnt|that it|the horizon|the sky|the wind|then pull|then snap|then stand|they dont|to a|to it|to just|towel|under it|up with|wrist straight|you and|you know|your collar|your shirt|your teeth',
      ],
      [
        0.1,
        'a fist|a towel|and just|and not|ask|back under|bell at|bell up|bending|body like|collar|each one|elbow stay|end up|feet wide|fist under|flat back|folding|for your|full|handle|help|in before|inside|inside leg|it leave|just a|just above|kiss|leave it|next to|pop|pushing|reset|shirt|squat|start at|the chin|the way|to one|turned|with a|you back|your body|your forearm',
      ],
      [
        -0.1,
        'a|a hand|across|air|all|an inch|and down|and lower|arch|arm out|as far|as high|as they|as you|as your|back knee|ball of|behind the|big toe|bit|bounce|breathe in|breathe into|bum|button|calf|ceiling|chair|chest|come|curl|dont go|dont let|dont roll|each hand|edge|far as|feel the|feet under|finger|flat|floor|floor away|for the|gone|ground|have|heel and|high as|hold the|if it|in as|in each|into|into your|it|it in|keep breathing|keep the|knee to|knee up|left|leg long|leg out|let go|let them|level with|lift the|lift your|like there|line|lower it|middle|no higher|of|off your|on|only as|opposite|other foot|out as|out on|past|please|pocket|point|puff|pull|pull your|push your|put|ring|round the|seat|second|see|shoe|shoulder|sink|sit|slower|slower than|slowly|sore|stay down|steady|tail|that|that your|the band|the bar|the ceiling|the chair|the elbow|the floor|the foot|the ground|the hand|the heel|the mat|the middle|the neck|the rib|the ring|the seat|the toe|the wall|the whole|then the|there a|this|three|through the|through your|thumb|till it|till your|toe|top of|touch|toward|toward the|toward your|tuck your|turn|turn your|two|under the|up and|wall|want to|weight|whole|width|with it|without|you can|you come|you go|you want|youll|your back|your belly|your bottom|your hip|your neck|your shin|your shoulder|youre not',
      ],
      [
        -0.2,
        'again|an|and|and bring|and the|ankle|apart|away|back to|band|be|blade|both|breathing|bring|bring it|by your|can|door|draw|elbow|face|facing|feet flat|foot|for|going|hand|hold it|if you|into the|it go|knee|lean|let|level|low|mat|nose|not|on the|one foot|open|out|out to|over the|past your|push the|roll|shin|should|shoulder blade|side of|sigh|stay|the back|the bottom|the side|them|thigh|tip|to your|tuck|tucked|under your|until|want|way down|where|your bum|your chest|your heel|your knee|your nose|yourself',
      ],
      [
        -0.3,
        'back|belly|bottom|breathe|come up|coming|feel|first|go|half|heel|long|lower|neck|off|off the|palm|press|right|than|the other|till|to|to the|together|under',
      ],
      [-0.4, 'dont|in|push|slow|step|take|up|you|your'],
      [-0.5, 'hold|other|the'],
      [-0.7, 'down'],
    ],
  ],
  [
    'breathing',
    -0.2,
    [
      [0.7, 'four'],
      [0.6, 'breathe in|for four|for six|out for|six'],
      [0.5, 'in through|mouth|one hand|your belly'],
      [0.4, 'a window|go back|knee bent|move|nose|nose for|one on|than the|the out|through your|way out|window'],
      [
        0.3,
        'a little|and then|any|as the|belly|breathing|climb|cushion|empty|end of|headed|hurry|in for|just breathe|no hurry|nose and|out through|the in|wide|your mouth|your nose',
      ],
      [
        0.2,
        'a beach|as wide|be a|beach|belly up|bottom hand|corner|cushion under|dont puff|each one|fill|for two|force it|goe out|hand round|how|just go|light|long way|longer than|low down|normally|one a|out breath|quieter|sand|seam|see the|shoulder arent|sigh it|soften|split|the chest|the corner|the mouth|the rib|to be|trying|trying to|wide as|your top',
      ],
      [
        0.1,
        'a long|a pillow|and breathe|and just|breathe normally|come over|cooling|doing the|dont force|first and|force|hand apart|hike|in breath|it all|lightheaded|longer|make the|old|picture|rib are|ride|soup|the nose|the turn|through a|tingly|up as|youre cooling',
      ],
      [
        -0.1,
        'about|above|across|again|and back|and bring|and down|and lower|and stand|arch|are|armpit|as a|as far|as high|as your|at the|back and|back down|back knee|back of|band|before|behind the|bend the|bend your|between your|big toe|blow|blow out|body|both hand|bounce|breath|breath out|breathe|bring it|bring the|by the|come|come back|come down|coming|count|curl|dont hold|dont lean|dont roll|door|down and|down the|down to|draw|drive|each hand|elbow under|enough|every|eye on|face|facing|far as|feet hip|feet under|finger|fist|floor|floor away|foot on|for the|forearm|from your|go|goe|good|ground|half|hand|have|heel and|high|high as|higher|hold|home|hurt|if its|if the|if youre|in|in a|in as|in each|inside|it back|it come|it goe|its a|its not|its your|keep breathing|knee and|knee to|knee up|kneecap|know|land|lean back|left|leg long|let|let go|lift your|like a|look at|low back|lower it|me|more|nice|no|now|of a|of you|on|on to|one|only as|onto|opposite|other foot|out|out of|outside|past|pinch|pocket|point|pull your|put it|quiet|rail|round|seat|shin|short|should|shoulder|sigh|slide|slowly|sore|sort|sort of|squeeze|squeeze your|stand tall|stand up|standing|steady|swing|than your|the air|the band|the bar|the chair|the elbow|the foot|the ground|the hand|the leg|the ring|the same|the seat|the shoulder|the thigh|the toe|the way|the whole|them|then|this|thumb|tight|till the|till your|to get|to your|too|top|top of|touch|toward your|tuck|tucked|turn|two|until|up and|up like|waist|when you|wider|with the|you dont|you know|you should|you want|youll|your back|your breath|your chin|your knee|your leg|your low|your neck|your shoulder|your thigh|youre not|yourself',
      ],
      [
        -0.2,
        'a|and|ankle|as|as you|at|at your|away|away from|back|bar|behind|behind you|bell|bend|between|blade|both|bring|bum|by|by your|can|ceiling|chest|chin|dont|dont let|down|ear|eye|far|feel|feel it|feet|flat|forward|from|from the|front of|get|going|hang|head|height|hip|hip width|i|if|if it|if your|in front|in the|into|into the|is|it|it down|it up|its|keep|keep your|knee|lean|leg|let it|level|lift|like|line|long|look|lower|middle|neck|not|not a|of|of the|off|off the|on it|on the|one foot|only|open|other|out in|out on|out to|over|over the|over your|palm|press|pull|push|push the|put|quick|reach|right|ring|roll|second|shoulder blade|slow|small|so|soft|somebody|stand|start|stay|step|stop|straight|take|tall|that|the|the arm|the back|the ceiling|the floor|the front|the heel|the knee|the middle|the other|the top|the wall|there|there a|thigh|till|time|tip|to|together|toward|under|under your|up|walk|wall|way down|way up|weight|when|where|whole|width|with|with your|wrist|you|you can|your|your arm|your bum|your chest|your ear|your elbow|your feet|your head|your heel|your hip|your toe|youre|youve',
      ],
      [-0.3, 'arm|elbow|foot|front|heel|to the|toe'],
      [-0.6, 'they'],
      [-0.7, 'big'],
      [-0.8, 'out as'],
    ],
  ],
  [
    'carry',
    -0.2,
    [
      [0.8, 'walk'],
      [0.7, 'quick step'],
      [0.6, 'put it|small'],
      [0.5, 'bell|in one|pick|put|quick|short'],
      [0.4, 'and back|as if|by the|it down|mind|step|swap|swap hand|youre late'],
      [
        0.3,
        'bang|door|drag|each hand|grip|keep breathing|knee to|late|lean away|one in|put them|quiet feet|short quick|shoulder level|small quick|the bag|the weight|them down|walk tall|walk to|your leg',
      ],
      [
        0.2,
        'a plate|and dont|bag|bang your|bell up|bend your|book|brace|breathe like|but you|drag your|each|fire door|full of|get you|handle|in each|jug|let them|mind the|off your|out from|pick it|pick up|quiet|small step|string|tall|tall like|the far|the fire|the handle|the plate|the room|them up|to drop|to it|toe out|top of|twisting|up in|up with|use your|walk back|walk the|want anybody|watch the|way home|your head',
      ],
      [
        0.1,
        'a coat|a string|a tray|and mind|and put|bell in|bow|breathing|dont lean|door and|down gently|elbow in|fire|from it|get down|go purple|have to|heaviest|held|its too|like the|mind your|one hand|purple|room|shoulder back|shoulder down|small breath|switch|tall as|the bell|to put|too heavy|tray|tree|use|wee|wing|you have|you lean|youd',
      ],
      [
        -0.1,
        'a|a hand|a little|above|an inch|and bring|and lower|and the|and then|apart|arch|armpit|as a|as far|as high|as the|as your|away|back and|back down|back knee|ball|before you|belly|between your|big|big toe|blow out|body|bone|both hand|bounce|breath out|bring it|bring the|close|come back|come down|coming|count|curl|doesnt|dont|dont roll|dont want|down|down and|draw|drive|ear|elbow under|end|enough|eye|facing|far as|feel the|feet flat|feet hip|feet under|finger|fist|float|floor away|foot on|for the|forearm|from the|from your|get|going|good|ground|half|hand|heel and|high as|hold|hurt|if its|if youve|in|in a|in as|in to|in your|inch|inside|it come|it goe|it out|its a|its not|its the|its your|knee and|knee bent|knee up|kneecap|lean back|leg long|lift your|light|like|like a|line|look at|low back|lower it|make|nice|no|now|of a|of you|on to|one foot|only as|opposite|other foot|plate|point|pull your|rail|round|same|seat|see|shoulder|side|side of|sink|slower|slower than|sore|sort|sort of|squeeze your|standing|take|than|than your|the band|the bar|the belly|the chair|the elbow|the foot|the ground|the hand|the nose|the ring|the seat|the thigh|the toe|the top|the whole|there|theyre|think|through your|tight|till the|till your|time|to|to your|toe|top|touch|toward|toward your|tucked|until|up on|waist|wall|want to|when|wider|with|with your|wrist straight|you can|you come|you get|you go|you want|youll|your belly|your breath|your chin|your ear|your low|your neck|your nose|youre|youre not|yourself|youve',
      ],
      [
        -0.2,
        'a bit|about|again|all|all the|an|and|and let|ankle|are|arm|as|as it|as you|at|at the|back|back of|back to|band|bar|behind you|bent|between|bit|blade|blow|both|bottom|breathe in|breathe out|bring|bum|can|ceiling|chair|chin|come up|do|elbow|face|feel|feel it|feet|flat|floor|foot|for|forward|front of|go|goe|hand on|hang|height|high|higher|hip width|i|if|if it|if your|in front|in the|into|into the|is|it|its|just|knee|leave|leg|let your|lift|long|look|low|lower|mat|middle|neck|nose|not a|of|of the|of your|off|off the|on|on it|on the|only|onto|open|or|other|out|out in|out on|out to|outside|over|over the|over your|palm|past|pocket|press|pull|push the|reach|rib|right|ring|roll|second|shin|shoulder blade|sit|slide|slow|so|soft|squeeze|start|still|stop|straight|that|the|the arm|the back|the bottom|the ceiling|the floor|the front|the heel|the hip|the knee|the leg|the mat|the middle|the other|the shoulder|the side|the wall|the way|thigh|three|through the|thumb|till|together|tuck|two|under|under the|under your|up|up to|way|way down|way up|where|whole|width|with the|you|your|your arm|your back|your bum|your chest|your feet|your hand|your heel|your hip|your shoulder',
      ],
      [-0.3, 'chest|come|front|heel|hip|out as|push|stay|then|through'],
      [-0.5, 'belt'],
      [-0.6, 'me'],
      [-0.8, 'not'],
    ],
  ],
  [
    'circles',
    -0.6,
    [
      [1.6, 'circle'],
      [0.8, 'draw'],
      [0.7, 'lazy'],
      [0.6, 'big|ear|round'],
      [0.5, 'a dinner|and down|dinner|dinner plate|it goe|make|plate'],
      [0.4, 'as they|back and|circle with|horn|imagine|only the|stirring|the horn|they drop|upside|upside down'],
      [
        0.3,
        'brush|brush your|by the|chin|close|hand in|hold it|it by|it with|its only|lap|poke|round your|set|smaller|take it|up to|way round|your lap',
      ],
      [
        0.2,
        'a big|a saucer|about level|an ankle|ankle over|at all|bigger|bigger than|both knee|breathe all|breathe as|breathe in|catch|change|chin out|concrete|cross|dead|dont poke|draw it|drawing|drawing a|edge of|forward till|get heavy|goe behind|hair|hand flat|hanging|hat|hip are|hitch|if there|it round|join|locked|make the|no wider|of a|on both|poke your|ponytail|rock your|round the|saucer|size|size of|slow as|slump|so your|stand side|than a|the big|the neck|the pocket|the size|the sore|they come|tip forward|when its|wider|your body|your chin',
      ],
      [
        0.1,
        'a lighthouse|a ring|a scarecrow|anything|around|around your|asleep|big and|big slow|bottom to|breath|breath go|chin level|collar|collar bone|dangling|dont arch|downstair|duck|elbow tucked|feel your|forearm on|front and|gently|go as|goe round|in for|it around|its like|level|lighter|lighthouse|long breath|make it|move|no rush|not locked|other way|out and|out for|pick up|rib stay|rock|round to|rush|scarecrow|set it|shoulder up|someone|speed|table|the far|the wall|then go|there so|theyll|up|washing|with both|you like|your collar|your ear',
      ],
      [
        -0.1,
        'a bit|across|again|an inch|and|and bring|and stand|and the|and then|as far|as you|away from|back down|band|bent|between your|blow|blow out|bottom|breathe out|bring it|can|chair|chest|come|come back|come down|coming|count|doesnt|door|down and|each hand|end|face|facing|far as|feel it|feet|feet flat|feet hip|finger|first|flat|from your|front|front of|going|got|half|hand on|have|height|high|high as|higher|hip|i|if|if the|if you|if youve|in each|in front|inch|into the|is|it back|it come|it up|its the|its your|keep breathing|light|like a|line|look|look at|low back|mat|me|more|not|now|of you|off the|on the|on your|one|one foot|one hand|onto|open|out as|out in|out to|over your|palm|push the|put|quick|reach|right|same|seat|second|see|short|sit|slide|slower|somebody|squeeze|stand up|start|stay|stop|swing|the bottom|the hip|the leg|the mat|the ring|the whole|them|then|thigh|this|three|through your|till|time|toe|together|too|top of|touch|toward|toward your|turn|two|under the|until|up and|up on|walk|want|want to|way up|when you|where|whole|width|without|wrist|you can|you come|youll|your arm|your back|your bum|your hand|your leg|your neck|your nose|your thigh|your toe|youre not|yourself',
      ],
      [
        -0.2,
        'at the|at your|away|bend|between|bring|do|each|floor|from|just|low|lower|of your|outside|press|push|straight|the floor|the knee|the top|top|wide|your knee|youve',
      ],
      [-0.3, 'about|forward|lean|let it'],
      [-0.4, 'arm|foot|heel|leg|no|your feet'],
      [-0.5, 'bit|dont|for|in the|into|lift|long|off|over|pull|step|the|through'],
      [-0.6, 'at|hand|knee|that|to|under|your'],
      [-0.7, 'on|you'],
    ],
  ],
  [
    'curl-up',
    -0.4,
    [
      [0.9, 'behind your|hand behind'],
      [0.7, 'arm by|curl|shoulder up'],
      [0.6, 'chin|elbow wide|head and|low|neck|your ear|your head|your neck'],
      [0.5, 'and shoulder|back down|blade|by your|for a|head|low back|roll back|shoulder blade'],
      [
        0.4,
        'armpit|as low|banana|closing|curl the|ear|knee in|little breath|low as|other leg|puff|roll|send|then roll',
      ],
      [
        0.3,
        'a banana|air|and not|and turn|back arche|back into|back stay|closing a|curl up|daylight|daylight under|each side|elbow flapping|elbow to|eye on|feet flat|flapping|flatten|hand are|hand height|haul|height off|it start|its your|left|leg long|not your|peel|peel your|rib that|roll up|room for|send the|shaking|shoulder and|sip|that how|that turn|to come|to knee|too low|up in|yank|you think|your eye|your waist',
      ],
      [
        0.2,
        'a book|a foot|and float|and go|and rest|and roll|at you|back again|back the|beat|bend your|boat|bone at|book|both shoulder|but|came|can keep|chin not|clear|corner|curl your|dead still|doe|doe it|doing it|dont heave|down one|down than|each other|elbow just|finger and|fingertip|fingertip behind|get up|glued|haul on|heave|heel a|heel into|heel off|hold your|how|its just|jammed|just in|just off|just the|knee bent|knee over|leg as|leg only|leg out|leg up|lie on|like it|long by|look at|mat|melt|not jammed|on every|one bone|opposite knee|or it|or your|out every|over and|pedal|press your|proud|puff out|reach the|roll on|rolled|room|shoulder catch|shut|sitting|slide your|slower down|speed you|straight at|swing the|than up|the air|the far|the head|the low|the mat|the neck|then down|there to|throw|time you|to you|top of|touch your|toward it|twice|twice as|way to|way you|whole time|with both|yank on|you came|you only|you roll|you turn|your cheek|your low|youre a',
      ],
      [
        0.1,
        'a peach|about as|and the|arm over|arm to|as long|dont haul|drive your|everything|foot off|get hurt|heel about|how people|it to|long as|out at|peach|people|pull in|rib to|second to|shoulder away|sip the|so youre|the right|your left|your tummy',
      ],
      [
        -0.1,
        'a|above|ahead|all|and back|and bring|and if|and lower|arch|arm up|as they|back up|ball|ball of|be|because|before you|bell|belly button|bench|between the|between your|big toe|bit|body|both feet|breathe in|button|by the|calf|chin out|close|come back|dont arch|dont go|dont lean|dont let|dont roll|dont tip|down and|down on|dumb|dumb bell|each hand|em|enough|facing|feel|feet hip|feet under|flat on|floor away|foot on|go up|gone|grip|hand under|heel|heel and|heel down|hold|hold it|hold the|holding|if the|in each|inside|it come|it down|it goe|it off|its the|keep the|let your|level with|lift it|lift the|lock|lower it|me|moving|no higher|nobody|of|of it|of you|off you|on it|one hand|onto your|other foot|out in|out like|out of|outside|over the|past your|pick|please|pointing|pull|pull it|push the|put it|rail|round|seat|shin|side|sink|sit back|slow as|so|soft knee|something|sort|sort of|spread|stacked|stand tall|stand up|standing|step back|straight up|tail|take your|than your|the band|the bar|the chair|the foot|the hip|the nose|the rail|the seat|the thigh|the wall|then let|thigh|three|through|through your|tight|to|treacle|tuck|under|up|up on|up the|walk your|want to|where|width|with it|with the|with your|wrist straight|you dont|you get|you go|you want|your bottom|your shin|your toe|your wrist|youve got',
      ],
      [
        -0.2,
        'and|and down|and let|apart|as|as if|as it|back of|back to|band|bar|before|behind you|blow|both|bottom|breath out|breathe into|breathing|chest and|door|elbow under|end|fast|feet|forearm|forehead|front of|goe|going|hand|hand on|hang|high|home|if youve|in|in as|in front|in the|into your|it|it back|it out|its|keep breathing|knee to|land|lean back|like|like youre|line|make|not a|on a|one foot|onto|out|out as|out to|over your|palm|pocket|pull your|put|ring|round the|same|squeeze|stay on|stop|tall|the back|the end|the front|the ring|thumb|till|tip|toe|wall|want|weight|when you|wider|you|your feet|your nose|youre|youre not',
      ],
      [
        -0.3,
        'as far|back|between|down|drop|first|foot|from|from the|go|heavy|hip|if it|it up|lean|let it|let the|level|lower|no|nose|on the|one|push|sigh|stand|they|to the|toward your|walk|when|with|wrist|your|your bum',
      ],
      [-0.4, 'big|bum|dont|forward|front|lift|of the|sit|slow|soft|straight|the|up to|youve'],
      [-0.5, 'breathe|step'],
      [-0.6, 'let'],
    ],
  ],
  [
    'deep-hip',
    -0.6,
    [
      [0.8, 'knee wide'],
      [0.6, 'back leg|hug|side to|to side|your heel'],
      [0.5, 'heavy|rock|the back|wide'],
      [
        0.4,
        'and fold|apart|collapse|deep|flex|flex the|fold|forehead|happy|has|inside|inside of|instead|into|let each|only as|some|spread|the hand|you like',
      ],
      [
        0.3,
        'a slant|arm long|at all|back on|back spread|big toe|come out|forward and|front foot|heel and|hip back|hold the|into the|into your|knee apart|knee at|knee down|let the|let your|lie on|low as|melt|really|sigh|sink|sit back|slant|slide the|spread out|stretch|tailbone|than the|the inside|the left|toe together|toe turned|toward the|turned|turned out|warm',
      ],
      [
        0.2,
        'a drawer|a towel|air|and knee|and up|and walk|as far|as your|asking|back as|back of|back till|belly drop|bit in|block|book|bum back|bump|chest tall|down into|enough that|foot through|gentle|gently|give|glute|go where|going back|hand at|hand away|jerk|just a|left|length|lie|longer|lower them|medal on|no prize|on that|opening|out breath|phone|prize|pull them|put a|ready|roll onto|shuffle|sigh it|sink the|slide it|slow out|somewhere|step one|step up|tail under|the breath|the finger|the kneecap|the low|the nose|the palm|the toe|the weight|them in|then come|there no|through your|till there|touching|towel under|under it|up between|up through|up when|walk your|when youre|where the|wider|wider than|you a',
      ],
      [
        0.1,
        'a hip|a pull|a time|and just|back knee|back to|back toward|bell by|can go|come forward|comfy|cushion|dont twist|down as|down on|drawer|fold in|forward till|get heavy|go heavy|hand a|hand out|hand round|heel a|heel of|hip forward|in my|its like|just above|kind|knee are|knee dont|knee go|kneecap|leg away|like you|little sip|long in|loud|medal|mouth|my|not on|of air|out going|out the|out through|over onto|over your|past the|right foot|roll over|shoulder are|shutting|sip of|string|tail|talk|talk to|that back|that hip|that side|that the|thatll|the bus|the head|the wrist|then you|till its|tingle|to go|toe go|twist|waiting|waiting for|went|where its|wherever|you are|you went|your mouth|your tail',
      ],
      [
        -0.1,
        'across|again|ahead|all the|along|an inch|and back|and bring|and stand|and the|as high|as it|as you|at|at your|away|away from|back down|back foot|ball|ball of|band|bar|before|before you|bell|bend the|bend your|blade|blow|blow out|both|both hand|but|calf|ceiling|chair|chin|come back|come down|count|dont hold|dont lean|down and|draw|drive|each hand|edge|elbow|elbow under|end|every|eye on|facing|fall|feet flat|feet hip|feet under|fist|float|floor away|foot|foot on|from your|get it|good|ground|half|hand in|hand on|hard|have|high as|higher|hip width|hold|hold it|home|how|hurt|if it|if youre|in a|in and|in each|it down|it goe|its|its not|its your|keep|keep your|knee and|knee bent|knee to|know|last|lean back|leave|leg long|let go|let it|level|light|like there|line|look at|lower|make|me|neck|no higher|not a|now|of you|on the|one|one foot|onto the|opposite|other foot|out like|out to|pick|please|point|pointing|pull|pull your|quick|quiet|rail|same|see|shoe|short|shoulder blade|side of|slide your|small|soft knee|somebody|squeeze|squeeze your|stand tall|standing|start|stay|stay down|stay on|steady|still|swing|take|than your|the band|the bottom|the ceiling|the chair|the end|the foot|the ground|the middle|the seat|the whole|then|theyre|think|three|thumb|tight|till it|tip|to|to get|too|top|tucked|turn your|up and|up to|way down|way up|when you|whole foot|with the|you dont|you get|you go|you should|youll|your bottom|your breath|your ear|your elbow|your low|your neck|your nose|your shoe|your thigh|youve got',
      ],
      [
        -0.2,
        'and|and let|ankle|arch your|as|as a|as if|back up|behind you|bent|bit|bounce|breathe in|by|by your|coming|dont arch|dont bounce|down your|ear|ease|first|forearm|from the|get|goe|got|hand|heel down|height|high|i|if|in|in your|inch|it a|it up|look|middle|not|outside|over the|press|reach|round|round the|second|should|step|that|the rib|the ring|the side|the wall|two|under your|until|up on|wall|want|want to|whole|width|with your|without|your bum|your chin|your finger|your head|your hip|your side|your toe|youre',
      ],
      [
        -0.3,
        'a|an|arch|at the|behind|bend|bottom|dont|flat|is|leg|lift|like|like a|like youre|off the|over|rib|slow|stop|the floor|the other|the shoulder|the way|there a|they|thigh|turn|under|under the|your arm|your feet|your leg',
      ],
      [-0.4, 'floor|lean|no|off|other|out as|ring|shoulder|so|soft|stand|straight|to the|way|with|you'],
      [-0.5, 'feet|up'],
      [-0.6, 'it'],
    ],
  ],
  [
    'deep-knee',
    -0.5,
    [
      [0.7, 'dont arch|together'],
      [0.6, 'arch|knee together|your heel'],
      [0.5, 'forehead|instead|knee wide|shin up|wide'],
      [
        0.4,
        'ankle behind|apart|arch your|arm long|collapse|heavy|heel|heel to|knee apart|one hand|only as|other foot|out in|pad|sit|sit back|the heel|toe turned|touching|tuck your|turned|turned out|up the',
      ],
      [
        0.3,
        'and walk|arch to|back of|be the|foot out|gentle|heel and|hug|inside|kneecap|lie|lie on|low as|melt|really|slowly|stay there|tailbone|the nose|the thigh|touch|warm|wider|your bum',
      ],
      [
        0.2,
        'after|and up|as close|back on|bell by|big toe|can go|catch|cheek|come off|come out|complain|down as|down on|down the|fold in|go and|go where|grab|hand at|hand out|have to|heel of|hip forward|in my|inside of|into the|into your|it go|it or|like you|lower them|medal on|moaning|my|out the|proud|ready|roll onto|sigh it|sink|slow out|string|tail|talk to|thatll|the bus|the finger|the palm|thigh|to touch|toe go|toe together|tuck|up tall|up when|waiting|waiting for|walk your|when youre|where the|wherever|wider than|you are|your ankle|your tail',
      ],
      [
        0.1,
        'a time|and sit|and stay|arm out|back stay|back to|breathe into|bum back|by the|catch in|cheat|cheat it|chest up|close to|coat|comfy|dont have|drop down|fold|for|go heavy|heel a|heel dont|horn|hug the|it catch|it should|knee go|little sip|little wider|long breath|long in|medal|nose and|of air|other|put a|sip|sip of|spread|stay long|stop there|talk|than the|the bell|the fence|the horn|the inside|then you|tingle|to cheat|to you|touch your|turn round|under it|yank it',
      ],
      [
        -0.1,
        'a bit|again|ahead|all the|along|an inch|and|and back|and bring|and not|and the|are|as a|as high|as if|as it|as you|at|back down|back knee|ball|ball of|band|bar|before|before you|behind the|bend your|bent|blow|blow out|both hand|both side|bounce|breathe in|bring the|but|by|calf|chair|come back|come down|coming|count|dont hold|dont roll|down|down and|drift|drive|drop|each|ease|easy|edge|elbow under|enough|every|eye on|face|facing|feel it|feet flat|feet hip|feet under|fist|float|floor away|from your|goe|going|good|ground|half|hand in|high as|higher|hip width|hold it|home|hurt|if the|if youre|in a|in as|in the|in your|inch|into it|is|it a|it back|it down|it goe|it in|it let|it till|it up|its not|keep|keep breathing|keep your|knee and|knee bent|knee to|knee up|know|last|leave|left|leg long|level|like a|like there|line|little|look at|make|me|middle|more|next|now|of you|off the|opposite|out to|outside|over your|past|pelvis|pick|please|pull the|quick|quiet|rail|reach|rib|rock|roll|round the|second|see|short|side of|slower|slower than|soft knee|somebody|squeeze your|stand|stand tall|stand up|standing|start|stay down|steady|still|swing|than your|the bottom|the ceiling|the chair|the end|the ground|the middle|the rib|the whole|theyre|think|three|through|thumb|tight|till your|too|toward the|tuck the|tucked|turn|turn your|two|under|up and|want to|way down|way up|weight|when you|whole foot|width|with the|without|wrist|you come|you feel|you get|you go|you know|you should|youll|your armpit|your belly|your breath|your chin|your elbow|your neck|your nose|your shin|your side|your toe|youre not',
      ],
      [
        -0.2,
        'about|above|across|an|and down|armpit|at the|back hip|between your|breathing|bring|by your|ceiling|chin|dont|ear|eye|first|forearm|forward|from the|got|hand|head|heel down|height|high|i|if you|its a|lean back|lean in|let go|light|like youre|look|lower|not a|of that|one|one foot|one knee|out on|over the|press|right|ring at|round|same|slide|small|stop|the ring|the side|the top|there a|they|tip|top|towel|under your|until|up to|what|whole|with your|you want|your arm|your ear|your feet|your leg',
      ],
      [
        -0.3,
        'a|all|as|away|bend|between|bit|both|bottom|breathe out|do|floor|from|it|just|lift|like|no|not|off|on the|so|the floor|the other|the shoulder|the way|then|till|to the|your head',
      ],
      [-0.4, 'feel|flat|hip|in|its|leg|out as|over|ring|side|soft|want|way|with|you|youre'],
      [-0.5, 'feet|lean|shoulder|step|straight|that|up'],
    ],
  ],
  [
    'forearm-supported',
    -0.4,
    [
      [1.4, 'elbow under'],
      [0.8, 'floor away'],
      [0.7, 'forearm|your elbow'],
      [0.6, 'elbow|lift your|waist'],
      [0.5, 'bum|feet stacked|i|lift|line|sag|stacked|then the|under|under the|under your'],
      [
        0.4,
        'and do|bottom|come down|dont roll|elbow toward|hip and|hip forward|hip stay|is a|knee down|squeeze your|swap|your hip|your low|your shoulder',
      ],
      [
        0.3,
        'and lift|arm goe|back up|belly button|bum down|button|grumble|head to|higher than|hip till|in line|just hold|keep breathing|lift up|little one|low back|my|pull your|push up|right under|sink|start to|swap the|tea|tea on|the shoulder|the waist|those|to heel|to one|toward your|underneath|which|your forearm|your right|youre a|yourself',
      ],
      [
        0.2,
        'a hammock|a tent|a time|and make|and out|and stay|back like|breathing|brick|button up|change|complain|do it|done|dont sink|down the|drag|feet wide|feet wider|foot in|forearm down|hammock|hip sag|inch off|level with|make one|minute|no lower|not behind|one at|onto|onto one|press back|push back|rush|save|screw your|side that|sink into|sip|slow and|start in|stay there|straight line|tent|than your|that shoulder|the elbow|the leading|toe tucked|toe without|top shoulder|up onto|washing|were|wrist or|you feel|your waist|your wrist',
      ],
      [
        0.1,
        'a race|a tray|barking|drag your|drink|ear to|elbow are|elbow down|even|feet back|hand by|hanging|hear|hip high|i can|if that|into that|leading|leg long|long line|make|moving them|no rush|of drink|one long|race|roll forward|so youre|stack|stay|the underneath|three|till youre|top hip|tray of|underneath side|washing line|where your|without moving|working|you press|your thumb|youre straight',
      ],
      [
        -0.1,
        'a hand|a little|above|across|and bring|and down|and if|and let|and the|and then|apart|arch|arm|arm out|as far|as if|as you|at|at the|back and|back of|ball|ball of|band|been|before you|behind the|behind your|belt|bench|bend the|big toe|blow out|both hand|bounce|breath out|breathe in|bring|by|calf|chair|come back|coming|dont go|dont lean|down into|drive|dumb|dumb bell|each hand|ease|eye|far|far as|feel the|find|float|four|front|get|going|going down|got|half|hard|heel and|heel down|hip width|home|how|if youre|if youve|in as|in each|in the|in to|inside|isnt|it back|it come|it down|it goe|knee in|knee under|kneecap|know|last|lazy|lean|lean back|leave|let go|let it|let them|loop|more|near|need|nobody|now|of it|of you|off the|on a|only|open|opposite|other foot|out in|out like|out of|out on|outside|peel|pick|pocket|point|press|pull it|push through|push your|put|rail|reach|round the|same|seat|shin|short|slower than|something|stand tall|stop|swinging|tail|take your|the back|the band|the bar|the chair|the end|the foot|the heel|the leg|the seat|the thigh|the whole|there|through|through the|tight|till the|till your|tip|to get|together|touch|tummy|turn your|until|up and|up the|up to|way|way down|way up|when you|whole foot|with it|you|you come|you get|you go|you know|you like|your arm|your bottom|your chin|your leg|your neck|your shin|youre|youve got',
      ],
      [
        -0.2,
        'a bit|all|all the|and lower|arm long|as it|as your|back|back to|bar|before|bell|between|blade|blow|bone|breathe|breathe out|by your|ceiling|chest forward|come up|curl|dont|end|fast|feet flat|feet under|finger|foot|for the|from your|good|heel|hot|if it|light|like a|lower|of your|off|on|one knee|out as|out to|over the|palm|put it|rock|second|should|shoulder blade|slide your|slower|take|the arm|the ceiling|the chest|the top|they|thigh|till|to|too|toward the|towel|walk your|weight|whole|width|your back|your chest|your ear|your feet|your heel|your knee|your rib|youve',
      ],
      [
        -0.3,
        'a|be|bend|between your|big|bit|both|chest|chin|draw|for|further|hand under|heavy|height|it|its|let|lie|like|of|on the|over|round|sit|slow|soft|stand|tall|the front|the knee|the way|turn|two|up|walk|when|your head',
      ],
      [-0.4, 'about|as|flat|hand|leg|rib|slide|step|the|to your|your'],
      [-0.5, 'and|go|knee'],
      [-0.7, 'out'],
    ],
  ],
  [
    'half-kneeling',
    -0.2,
    [
      [1, 'tuck'],
      [0.7, 'tuck your'],
      [0.6, 'arch|sore|tail|that back|your tail'],
      [0.5, 'back knee|dont arch|foot out'],
      [0.4, 'arch your|back hip|foot forward|front of|knee down|one knee|shin up|under it|up the'],
      [0.3, 'a mat|back leg|knee on|kneecap|of that|put a|shift|squeeze the|tail and|tail under|tuck the'],
      [
        0.2,
        'a stretch|arch to|as close|both side|cushion|cushion under|down on|drift|glute|it or|kneeling|kneeling side|left|on a|other foot|out in|pad|pelvis|right foot|the kneecap|the kneeling|under and|what|what you|you could',
      ],
      [
        0.1,
        'a towel|be the|buttock|cheat|cheat it|chest tall|close to|down with|drift forward|front thigh|get there|it let|it should|it till|moaning|on that|pillow|slide it|slow breath|the buttock|the cushion|the left|till there|to cheat|towel under|your tailbone',
      ],
      [
        -0.1,
        'a bit|a hand|a little|across|air|an|and back|and bring|and down|and let|and lower|and the|and then|apart|armpit|as a|as far|as high|as if|as it|as the|as your|back|back down|ball|band|before you|behind the|bell|belly|bend the|bend your|big toe|bit|blow out|body|bone|both|both hand|breathe|bring it|bring the|by the|catch|cheek|chest|come|come back|come down|coming|count|curl|dont hold|dont lean|dont roll|door|down and|down the|down to|draw|drive|each hand|elbow under|end|every|eye on|face|facing|far as|feel it|feel the|feet flat|feet hip|feet under|finger|fist|float|floor away|forearm|from your|get|good|got|ground|hand on|heel and|high as|higher|hip|hold|hold the|home|hurt|if youre|if youve|in a|in as|in each|inside|is|it come|it goe|it up|its a|its not|its your|keep|keep the|keep your|knee|knee and|knee bent|knee to|knee up|land|lean|lean back|leave|leg long|let them|light|little|look at|lower it|make|me|nice|nobody|nose|not a|of|of a|of you|of your|on to|one hand|only|opposite|out to|outside|pinch|point|pull your|put it|rail|round the|see|short|side|side of|slow|slower|slower than|slowly|somebody|sort|sort of|squeeze your|stand tall|stand up|standing|steady|step|stop|swing|take|tall|than your|that|the arm|the band|the bar|the chair|the elbow|the end|the foot|the ground|the hand|the leg|the mat|the ring|the toe|the top|the whole|there|they|theyre|think|this|through|through your|tight|till|till your|tip|too|touch|toward your|towel|up and|want to|way up|when you|where|wider|you come|you dont|you get|you go|you should|youll|your breath|your chest|your chin|your head|your leg|your neck|your nose|youre not|yourself',
      ],
      [
        -0.2,
        'a|again|all|all the|and|ankle|are|as|as you|at the|at your|away|away from|back of|bar|before|behind|bend|bent|big|blade|blow|bottom|breathe in|breathe out|bring|bum|by|by your|ceiling|chin|dont|dont let|down|drop|each|ear|eye|far|feel|first|flat|for|from|from the|go|goe|going|hand|head|heavy|height|high|hip width|i|if|if it|if you|if your|in|in the|in your|it|it down|it out|its|just|leg|let|let it|let the|let your|level|lift|like a|like youre|line|long|look|lower|middle|neck|no|not|off|off the|on|on the|on your|one|open|out|out on|over the|over your|palm|past|press|pull|push the|quick|reach|rib|ring|roll|round|second|shoulder blade|sit|small|so|stand|start|still|than|the|the bottom|the ceiling|the heel|the knee|the middle|the other|the shoulder|the side|the thigh|the way|them|there a|three|thumb|time|to|to the|to your|together|top|toward|turn|two|under your|up|up to|walk|way|way down|when|whole|wide|width|with|with the|with your|wrist|you|your|your arm|your bum|your ear|your elbow|your feet|your heel|your hip|your knee|your rib|your shoulder|your side|your toe|youve',
      ],
      [-0.3, 'arm|at|elbow|feet|floor|like|out as|over|push|shoulder|stay|straight|the floor|then|toe|youre'],
      [-0.6, 'behind you'],
      [-0.8, 'heel'],
    ],
  ],
  [
    'hands-supported',
    -0.3,
    [
      [1, 'shoulder over|wrist'],
      [0.9, 'hand under|press'],
      [0.8, 'the ring'],
      [0.7, 'finger|fist|hand in|hip height|kneel|opposite hand|ring|ring at|your hand|your wrist'],
      [0.6, 'arm straight|chest to|elbow go|forward a|push the|start in'],
      [
        0.5,
        'a hand|at hip|between the|forearm and|go up|it away|knee an|slow|the edge|the wrist|then the|tight|up in|walk your|width|wrist sore|your belly',
      ],
      [
        0.4,
        'air|and back|and foot|and slow|at a|balance|belly drop|can get|deeper|down till|feet back|front of|glass|go on|going down|hand shoulder|hear|hip up|hop|in slow|into a|jump|just in|keep the|let your|like there|lock|opposite|other one|pocket|press up|quiet|ring down|spread your|stay low|strap|tent|the bench|there no|tip forward|toe tucked|too|tray of|walk|wider|wrist are|you press|you push|your butt|your thigh',
      ],
      [
        0.3,
        'a fist|a foot|a mat|a tent|a time|a tray|a wall|a wrist|ache|all the|and drop|and its|and jump|are|arm level|arm locked|as wide|away|behind you|belly up|bench|bend the|between|butt|chest down|creeping|dizzy|dog|dont bend|down between|drift|drift out|edge|elbow point|elbow toward|every time|everybody|far as|feet in|finger over|first|fist off|get out|go as|go back|go forward|go till|halfway|have to|hip dont|i dont|in a|just ahead|just hold|lean forward|leaning on|little step|long back|low|no deeper|not out|of tea|one at|only as|out behind|press down|press through|pull back|push it|ring in|sag|sagging|save|screw|second going|send|send your|shorter|shoulder away|shoulder width|side of|so the|spread|stay still|step that|step the|stop there|straight leg|tail|tea on|that a|that elbow|that your|the strap|the upper|then press|then you|to a|to hear|too far|towel|tray|tuck|tuck your|turn the|two|up and|upper|upper arm|wait|wait at|wide as|wider than|wing|you have|you should|your fist|your knuckle|your thumb',
      ],
      [
        0.2,
        'a bell|a chicken|a dog|a drawbridge|a ring|a tabletop|a towel|ahead of|and hold|and just|and lift|and march|and send|and shove|and take|and walk|angle|any|are creeping|are drifting|arm goe|arm to|at about|at an|at each|away so|back dip|back flat|barking|before your|belly tight|bend your|big step|body in|breath on|bring them|bum to|button up|chest a|chicken|clench|clench your|close|come in|corner of|count down|couple of|creeping up|crush|dip|doesnt go|dont clench|dont drag|down softly|drag|dragging|drawbridge|drifting|drink|each armpit|either|elbow are|elbow dont|em|facing the|feet as|feet find|fist or|five|flat back|floor between|fly|foot in|foot up|for it|forearm|get back|getting|go out|go slow|going out|gone|gone too|grip the|hand and|hand go|hand off|hand out|hang like|harder|hip under|hover|hum|i want|if theyre|in by|in down|in each|in going|in on|in one|in two|inch up|instead|it cant|it is|it still|just off|just wider|knuckle|leg together|level like|like somebody|little sip|lock the|locked|look a|low and|lower back|make fist|mat|mat with|neck long|never|never let|of air|of drink|of you|on them|on top|one elbow|one long|one piece|only to|opposite foot|out breath|out like|out sideway|out there|outside your|pedal|piece|pinch at|plank|press back|push down|pushing|put a|quiet feet|reach back|right foot|right hand|ring a|ring are|ring out|should feel|showing|sign|sink into|sitting on|slapping|slow is|small breath|small step|sniff|sniff in|soft feet|stay level|step one|sticking|still as|strong|support|tabletop|tea|that foot|the ear|the mirror|them back|then pull|then roll|theyre|this one|three second|thumb out|tight to|till youre|tired|to catch|to where|trailing|turn out|two second|up top|way in|which|with you|wobbly|wrist or|wrist stay|you not|your lane|your lower|your watch|youre after|youre leaning|youre showing|youve a|youve gone',
      ],
      [
        0.1,
        'a banana|a wee|about hip|about your|an arrow|and wait|arrow|back still|back till|back up|be talking|belly sag|bend in|brush your|care|chest up|close enough|crisp|dont care|drifting back|elbow and|empty|feet wide|find|find a|flaring|for two|had|hand just|hand width|heel touching|hot|it get|it on|kitchen|knee in|knee not|leading|letting go|like its|lower your|march|mirror|moving them|no sagging|one in|only your|or you|out a|pointing forward|ring to|round one|shoulder pinch|sip of|so come|sore|spin|stand and|taller|the thumb|then bring|thigh and|toe forward|toe on|toe pointing|under shoulder|until youre|up there|wait for|way through|wee|when your|without moving|wood|you could|you that|youll feel|your jaw|youre tired|yourself back',
      ],
      [
        -0.1,
        'a big|a lift|a shoulder|a straight|an ironing|and come|and do|and dont|and float|and let|and up|and your|and youre|apart|arent|arm length|as|as an|as its|at|away with|back as|back heel|back of|back off|bad|bag|be|behind your|bell in|below|belt|big toe|both hand|bounce|breathe into|breathe like|bring it|cat|cheating|circle|click and|cramp|crank|cross|cushion|dead|dive|do the|dont be|dont crank|dont force|dont like|dont lock|down and|down for|each one|end|end in|end of|even|eye|face the|feel your|feet are|feet on|fence|fine|finish|follow|foot on|for|for one|force|forearm up|gate|get it|go long|go to|grumbling|have|head and|heel and|heel up|here|hold it|honey|how you|if you|if youre|if youve|im|imagine|into the|isnt|it all|it doesnt|it down|it isnt|it like|it off|its the|just a|just let|kiss|knee are|knee bent|knee out|knee straight|knee together|knee wide|know|lazy|lead with|lean away|lean in|leaning back|leg goe|leg straight|lift|long breath|loose|make it|melt|metre|middle|middle of|mind|moan|nearly|no swinging|normal|not your|of that|off a|on hip|one heel|opening|operated|opposite arm|or it|out and|out over|overhead|pain|paint|partner|people|pillow|pop|post|press your|push through|ring high|rise|roll back|roll out|round the|sat|say|second on|second toe|sharp|shoulder and|sit up|slack|slide|snap|so if|soft knee|sort|sort of|spine|stand|stand tall|stand up|standing|step back|step through|stiff|straight|straight down|straight up|tell|than that|that where|the bottom|the bum|the end|the far|the foot|the leg|the middle|the neck|the outside|the paint|the rail|the weight|then let|there for|they come|this time|to get|toe|toe up|top|toward the|track|tree|tucked in|up by|up for|up out|up through|up your|wall|wander|water|we|well|when youre|while|whole foot|whole time|with it|yank|you stand|you went|youd|your back|your collarbone|your foot|your left|your shoe|youre not',
      ],
      [
        -0.2,
        'a few|a pencil|above your|along the|and|and a|and hang|and if|and lean|and out|and put|and roll|and round|and the|arch your|arm are|arm by|arm up|as high|as if|as they|at shoulder|at the|back|back into|back knee|back on|back toward|backside|ball|bar|bell|bone|both feet|bouncing|breathe out|bum and|bump|ceiling|cheek|chest open|chin over|click|come up|complain|count out|curl|doing|done|dont arch|dont drop|dont go|dont just|dont push|dont rock|dont roll|dont tip|door|down a|down on|down your|drawer|drive|each other|ease|easy|edge of|elbow stay|enough that|feet forward|feet stacked|few|fire|foot forward|for the|for three|forearm on|forehead|forward till|from your|front knee|gently|glued to|go in|grab|hamstring|hand behind|high as|higher than|hip back|hook|how|hug|if|if that|if there|into it|it across|it go|it home|it open|it up|itll|its your|ive|knee down|knee over|knee up|left|leg out|leg up|length|let the|let you|lie down|lift the|like youre|line|long|look straight|lot|lower it|making|need|nip|no bouncing|nobody|nose|nose to|not|of your|on|on it|on you|one leg|onto the|or a|or your|other hand|out|out the|out when|over the|over to|palm facing|palm up|pencil|press it|pull|pull the|pulling|push yourself|put the|rail|rib|roll|rope|round up|seat|see the|shoe|short|short step|shoulder down|shoulder height|shoulder stay|side|side on|sigh|sit back|sit down|slide your|slow as|slow breath|slower|slower than|slowly|small as|so you|some|spot|stay down|stay on|stay over|step away|stick|straight ahead|straight out|string|take|take it|talk|the back|the bell|the belly|the breath|the ceiling|the chair|the chest|the door|the fire|the lift|the opposite|the seat|the toe|the wall|them down|them out|them up|they|three|through the|throw|thumb round|till it|tingle|to it|to start|turn round|under hip|underneath|until you|up|up at|up the|upright|washing|washing line|way up|went|what|with a|you lift|you pull|your bottom|your cheek|your eye|your forehead|your low|your middle|youre|youre holding|youre on',
      ],
      [
        -0.3,
        'a bus|a drawer|about|across|across the|again|and down|ankle|arch|arm long|at chest|at your|been|bottom|by|chin|come down|coming|dont lean|draw|elbow down|feet a|flat on|from it|glued|goe up|half|hand flat|height|in as|it a|it come|keep it|lace|leave it|lie|light|look up|my|no higher|on a|one foot|out on|past your|peel|pick|pulled|push off|quick|round|see|shin|stacked|swing|tall|than|that when|the thigh|the top|top of|up to|when|when it|wrist straight|your|your ear|your leg|your nose|your shoulder',
      ],
      [
        -0.4,
        'along|arm out|bent|both|breath|breath out|breathe|breathing|chest height|dont|face|feet flat|higher|in the|it|it out|keep breathing|lean|leave|open|reach|that|the|toward|weight|your heel|your rib|your toe',
      ],
      [-0.5, 'big|blade|chair|elbow under|flat|heavy|high|knee|lean back|leg|past|shoulder blade|sit|through'],
      [-0.6, 'its|palm'],
      [-0.7, 'heel|let it|your chest'],
    ],
  ],
  [
    'hanging',
    -0.4,
    [
      [1.5, 'ring'],
      [1.2, 'box'],
      [1, 'the box'],
      [0.9, 'let go'],
      [0.7, 'hang|the ring'],
      [0.6, 'before|forward a|hip height|step up|strap'],
      [0.5, 'chin over|dont drop|drop off|find the|grip|pocket|the elbow|when youre'],
      [
        0.4,
        'backward|bending|buckle|come off|curl your|feet down|into your|jump|knee up|locked|of a|of it|out of|ring high|shoulder down|swinging|to your|way you|when|your feet',
      ],
      [
        0.3,
        'a shoulder|and step|and youre|ankle|arm locked|at hip|back the|back up|before you|bent|bit in|blade down|block|blood pressure|come down|dont swing|down till|down to|elbow straight|em|ever|feet are|find|get up|getting|good|head height|height|if youve|inside|it get|joint|just let|keep the|knee come|little sip|long arm|look straight|look up|looking|no swinging|pinch|pinch on|pressure|proud|pull your|push down|rib in|sip|step back|step down|step off|still|straight arm|straight back|support|the inside|the strap|then let|this|this one|thumb round|tight|till your|to hip|trouble|up a|up there|went|you let|your elbow|your tail|youre not|youve blood',
      ],
      [
        0.2,
        'a coat|a miss|again|all of|an ankle|and just|and lower|and out|and roll|ankle go|anybody|anybody with|are straight|arm dead|arm level|at it|baby asleep|back between|back on|back pocket|been|bending the|bite|blood|both feet|box under|bring your|cheating|chest proud|coat|collarbone|come out|curl|dead straight|deeper|done|dont jump|dont kick|down away|dropping|elbow are|elbow down|elbow go|feet find|feet first|feet off|feet on|fine|finished|first|get there|give|glued|had|had a|half|half a|hand open|hand over|head back|head stay|heard|high|hold on|honey|hop|if a|if that|in tight|it for|it pinch|it still|kick|kicking|knee and|knuckle|lean forward|let em|let them|let yourself|lift with|lock the|looking at|lower them|never|no deeper|no dropping|no good|no kicking|not to|off that|on top|open|open the|over a|partner|poking out|press down|really|ring at|ring in|ring out|ring up|roll back|roll your|see the|shoulder away|shoulder pinch|sit this|slide your|slow as|smooth|stand in|start again|stay straight|stop where|straight at|tail under|take hold|that cheating|the block|the breastbone|the ear|the feet|the hand|the joint|the pocket|the upper|they come|theyre|think of|this out|throw your|thumb wrapped|tight to|to straight|top of|turn the|up high|upper|upper arm|upside|upside down|weight on|whole time|wrapped|you open|you went|your arm|your chin|your pocket|your weight|youre done|youre finished',
      ],
      [
        0.1,
        'a baby|a right|and hang|and then|and you|angle|any|asleep|baby|before your|bend the|came|dont bend|dont throw|down a|down into|down there|feet go|five|for your|go down|half of|hang like|hip under|like theyre|lock|one foot|palm facing|pinch up|poking|rib are|right angle|small breath|so if|so your|stay in|that all|the last|them in|then come|then you|there and|thumb|to long|wee|you came',
      ],
      [
        -0.1,
        'a tiny|across the|along|and a|and down|and lazy|and no|and stand|and stay|arch|arent|arm by|as your|back a|back in|back knee|back to|backside|ball|ball of|be|behind|behind the|behind your|big breath|big toe|both hand|bounce|breathe into|bring|bring it|bring them|but|by your|calf|catch|ceiling|chair|curl up|doesnt|dont arch|dont bounce|dont roll|dont tip|down for|drag|dumb|dumb bell|elbow back|face|far|feel the|floor away|follow|for two|forehead|forward and|from it|front knee|front of|gently|get it|hamstring|heel down|high as|higher|hinge|hip and|home|if|if its|if youre|into the|it with|itll|its|keep it|knee bent|knee soft|kneecap|land|lazy|lean in|left|leg long|leg out|lie|lift|light|lower it|mat|middle of|moving|near|need|no higher|of|one hand|only as|onto your|opposite|other foot|out and|out to|outside|past your|pillow|please|press|press the|puff|push off|push your|put it|rail|rock|seat|shoe|should feel|shoulder and|shove|side on|sit back|soft knee|sore|sort|sort of|spread|squeeze your|stand tall|stay|stay down|stick your|straight down|straight up|string|table|the breath|the ceiling|the foot|the heel|the knee|the leg|the mat|the rail|the rib|the room|the seat|the side|the thigh|three second|thumb up|tiny|tiny bit|toward the|two|up|up by|up the|want to|whole foot|wide|width|wrist straight|you feel|you should|you want|youll feel|your back|your body|your bottom|your forehead|your nose|your side|your thigh|your toe|your waist|your wrist|youve a',
      ],
      [
        -0.2,
        'a|across|and|and bring|and push|as|as if|as it|at shoulder|away|bell|belly button|between them|blow|blow out|bone|breath|breathe|breathe out|breathing|button|by|chest open|degree|dont lean|dont stick|down the|elbow under|end in|eye|fast|feel|feel it|feet hip|finger|finish|flat|floor|forearm|front|hand are|handle|heavy|hip|hip width|how|if you|inside of|it back|it come|it go|it out|jaw|knee down|leg|line|low|low back|lower till|next|nose|of the|on|on it|out in|palm down|palm up|pick|plate|pointing|pop|pull the|rest|right|shin|should|shoulder height|sit down|small step|snap|soft|squeeze the|stacked|steady|step through|stick|tall|tent|than you|the back|the band|the door|the other|the wall|three|through the|till it|toward|turn your|until the|upright|waist|walk your|wall|want|with it|you lift|you pull|your armpit|your belly|your heel|your low|your shin|your time',
      ],
      [
        -0.3,
        'as you|back of|band|big|coming|dont|door|forward|hand in|hand on|head|if your|in|in as|in on|it down|it in|it up|lean back|not a|off your|other|push|quick|short|sigh|somebody|the floor|the front|thigh|through|until|your head',
      ],
      [
        -0.4,
        'and let|arm out|body|it|knee|lean|let the|like youre|of your|on your|out|side|sit|the|to|under your|wrist|your|your rib',
      ],
      [-0.5, 'apart|back|let it|one|squeeze'],
      [-0.6, 'foot|heel|walk'],
    ],
  ],
  [
    'head-below-heart',
    -0.7,
    [
      [0.7, 'blood|blood pressure|pressure'],
      [0.6, 'head|hip up|your head'],
      [0.5, 'and back|hip stay|or|roll|the knee|tuck|tuck your'],
      [
        0.4,
        'between|come out|if youve|ring|send|shoulder and|stay up|upside|upside down|way you|you come|your right|youve blood',
      ],
      [
        0.3,
        'and roll|and send|anything|as far|back between|back over|back the|between the|cranky|dont throw|go down|it slowly|knee soft|left|long back|or youve|rest|right arm|room|send your|shoulder blade|slide it|slowly|so if|stop where|straight leg|theyre|throw your|underneath|underneath you|up and|up over|when youre|your left|youve',
      ],
      [
        0.2,
        'a bell|a chair|along the|and the|as treacle|bending|breathe into|bum to|came|corner|corner of|cushion|dont fling|even|every time|feet apart|feet in|get the|glaucoma|go as|had a|hand in|hand open|hand shoulder|hang like|head back|head come|head height|heart|hold on|if that|if theyre|into your|knee and|lift your|load|looking at|lower than|palm up|pedal|reach back|ring at|shoulder width|shuffle|spine|the rib|the room|the spine|thing|throw|toe and|trouble|until|walk the|walk your|went|wet|you came|you reach|you want|you went|your heart',
      ],
      [
        0.1,
        'about your|and go|and when|arm like|backward|blade and|chest and|dont lock|dont sit|far as|feet are|fling|get heavy|go back|goe round|had|head last|knee under|like wet|lock the|lower|or a|or the|past the|roll back|sigh|sit this|take it|that shoulder|the left|the wrist|this out|thread|to the|treacle|under hip|way|wrist are|your calf|youre hanging',
      ],
      [
        -0.1,
        'about|above your|across|ahead|air|an inch|and let|and lower|and not|and stand|arch|arm out|as high|at the|away from|back and|back down|band|be|belly|big toe|bit|blow out|body|both|both hand|bottom|breath out|breathing|bring the|but|button|by|by the|close|coming|curl|doesnt|dont lean|dont roll|door|down|down and|drive|elbow under|enough|facing|feel the|first|fist|float|from|from your|goe|good|half|hand on|heel and|high|high as|home|hurt|i|if|if it|if your|in each|in front|in your|inch|inside|is|it come|it down|it goe|it in|its a|its not|keep it|keep your|knee up|kneecap|lean back|leg long|let yourself|lift|light|like a|line|lower it|nice|no higher|nose|now|of a|of the|on it|on the|on to|one foot|opposite|or your|other foot|outside|pick|pinch|please|pocket|pressure up|pull|pull your|quick|quiet|rail|round|round the|same|see|shin and|short|should|sigh out|sit|slow|slower|small|so|sore|squeeze|squeeze the|squeeze your|stand|stand tall|stay|steady|still|stop|straight|swing|that|the band|the bar|the chair|the elbow|the end|the foot|the front|the seat|the toe|the wall|there a|think|thumb|to|too|top of|tummy|under your|waist|wall|way down|weight|wider|without|you can|you dont|you should|your bottom|your breath|your elbow|your heel|your neck|your nose|your shoulder|your side|your thigh|yourself hang',
      ],
      [
        -0.2,
        'all|all the|an|and|ankle|as if|at|away|back|back to|bar|blow|breathe out|bring|by your|come up|count|dont bounce|dont let|each|feet wide|flat|front of|hand down|heel|higher|hold it|if you|in the|into the|it up|lean|leave|let it|like youre|little|not a|of|out on|out to|over your|rib|second|shin|side|somebody|start|tail|the other|the thigh|they|three|together|top|toward your|turn|two|up|up your|way up|your shin',
      ],
      [
        -0.3,
        'a bit|big|dont|down your|for|forward|front|in|it|like|neck|no|not|of your|off the|one|other|step|tall|the top|there|thigh|your leg|your rib',
      ],
      [-0.4, 'breath|elbow|foot|leg|off|on your|out|them|your back'],
      [-0.5, 'a|on|your'],
      [-0.6, 'the'],
    ],
  ],
  [
    'heel-raise',
    -0.5,
    [
      [1, 'big toe'],
      [0.8, 'roll out'],
      [0.7, 'up on'],
      [0.6, 'and lower|dont roll|the big'],
      [0.5, 'as high|ball of|big|calf|high as|keep hold|little toe|lower|up onto'],
      [0.4, 'achilles|and keep|ankle|ball|both hand|high|knee straight|roll|rolling out|tall as|the edge|your toe'],
      [
        0.3,
        'as tall|come down|edge|even|feet hip|grow|hand on|of it|onto|onto your|out to|rise|rolling|the calf|the heel|the little|three|weight|you get|your big|your little',
      ],
      [
        0.2,
        'a fence|and one|and sink|ankle dont|as a|below|below the|both|bouncing|chair|cramp|dont tip|drifting|drifting back|edge of|fat|feet under|fence|fine|fingertip on|foot on|grow up|hanging off|heel hanging|hip width|hold of|is sore|keep it|low down|lower your|morning|movement|near the|of one|onto the|pause|rail|rise up|roll to|sink|smaller|squeeze like|stack|stay flat|stop and|straight up|that chair|that fine|the ball|the chair|the fat|the morning|the rail|tip|tired|up and|up as|up over|up quick|weight over|whole time|your ankle|your chair',
      ],
      [
        0.1,
        'achilles is|down for|feet on|fingertip|for three|for two|go up|hanging|heel back|heel up|hold the|kerb|like somebody|low|no bouncing|out onto|pulling|push up|sharp|straighten|the kerb|the step|them up|then lower|thing|tip forward|to come|up for|we|without|your achilles|your calf',
      ],
      [
        -0.1,
        'above|across|again|along|an ankle|and back|and bring|and the|ankle over|are|as far|at|at your|away from|back and|back knee|bar|before|before you|behind|behind you|bell|belly|between|bit|blade|blow|blow out|breathe|breathe in|bring the|by your|ceiling|close|cross|curl|down and|down the|down to|draw|draw it|drive|each hand|ear|easy|elbow under|end|every|eye|facing|far|feel it|feet flat|first|fist|floor|foot and|forearm|from the|from your|front of|get|goe|height|higher|if it|if the|in a|in each|in the|inside|into your|it back|it down|it up|its your|keep your|knee bent|knee to|knee up|know|lazy|lean back|leave|leg long|let go|let the|let them|let your|lift your|like|like a|like youre|look|low back|make|mat|middle|neck|need|nice|no|no higher|of|of you|on|on a|one|one foot|only|only the|open|other foot|other one|out|out in|out of|palm|pinch|pocket|point|put it|quiet|ring|seat|short|side of|sigh|sit back|sit down|slide|small|squeeze your|stand up|standing|start|steady|still|swing|than|than your|that|the arm|the ceiling|the elbow|the end|the floor|the hand|the knee|the leg|the mat|the middle|the nose|the rib|the seat|the shoulder|the side|the thigh|the toe|then|there|theyre|think|this|thumb|till it|to get|too|touch|toward your|towel|tuck|tucked|under|until|when|when you|whole foot|wide|wider|with|with the|wrist|you feel|your belly|your bum|your chin|your ear|your elbow|your hand|your knee|your leg|your nose|your rib|your side|your thigh|youre not|youve',
      ],
      [
        -0.2,
        'a bit|about|an|away|back to|be|bring|chin|dont let|each|feel|for the|forward|from|hand|heavy|if|if you|in front|into the|just|let it|level|line|me|out as|pick|put|reach|round|shin|slow|so|stand|the front|the wall|they|to|together|toward|turn|up to|walk|wall|your chest',
      ],
      [
        -0.3,
        'a|and|breath|bum|chest|dont|foot|into|it|lean|long|nose|not|off|off the|or|rib|side|sit|the hip|the other|thigh|till|you|your|your back|your shoulder',
      ],
      [-0.4, 'arm|elbow|front|other|the|youre'],
      [-0.5, 'back|in|knee|leg'],
      [-0.6, 'let|shoulder'],
    ],
  ],
  [
    'hinge',
    -0.3,
    [
      [0.8, 'bell|button'],
      [0.7, 'back of|length|push your|the hip'],
      [0.6, 'at me|bar|hip width|slack|stand up|straight line|tight|your back|your hip'],
      [
        0.5,
        'and lift|back at|belly button|body|breath out|bum on|chin tucked|dont twist|fast|flat|hamstring|handle|hike|it land|line from|long neck|loop|middle of|out till|rep|short|soft|square|stop|table|the top|tip|to shoulder|toe up|weight in|when|when it',
      ],
      [
        0.4,
        'a time|arm are|bar over|behind the|bone at|bow|bum back|closer|coming back|cramp|dead|drop it|early|feet flat|feet hip|feet in|fold|forward from|from|from your|hand flat|heel on|higher|hike it|hinge|hip and|if its|it like|its tight|knee to|line|long|metre|neck|one bone|open like|other leg|pause|round|round over|same|slack out|so it|soft knee|spine|stand|start to|stop when|that it|the back|the hand|the leg|the pull|the slack|tip forward|to a|twist|up in|up quick|wait|weight|you and|you pull|you stop|youll|your leg',
      ],
      [
        0.3,
        'a straight|a table|after|after it|and peel|and send|and stand|and that|are just|arm down|at a|back goe|back nip|back stay|bar to|bell a|bell between|bell in|blood pressure|breath in|breath on|bruise|brush|bum|car door|chest forward|close|come in|coming|dont round|door with|down the|edge of|enough to|every rep|feet apart|feet under|flare|flat back|flop out|footprint|from knee|from the|get heavy|get out|glaucoma|hang|hanging|heaving|heavy as|hip back|hip face|hip up|hip with|im|it back|it behind|it down|it float|it to|its not|keep your|leg out|level|level with|long back|look at|look behind|looking|neck long|no higher|number|one hand|or on|other hand|past|press through|pull|pull the|ramp|roll up|rope|shake|sharp breath|shirt|slide the|sort|sort of|squeeze|stay on|the bench|the hamstring|the stick|the you|then stand|there no|till|till youre|tip from|to round|too|tucked|up there|with a|with your|you stand|your bum|your shirt|youre shutting|yourself up|zip',
      ],
      [
        0.2,
        'a beat|a box|a flat|a foot|a gate|a letter|a metre|a stretch|about as|across your|ahead|ahead of|and heel|and if|and itll|and its|and low|and roll|and squeeze|and stop|and wait|and walk|anything|are only|are rope|argument|arm by|armpit|as much|back long|back start|back until|backside|bar stay|beat|before it|belly drop|bend it|bent knee|between|between the|big breath|bigger than|blade on|blood|bone|bottom back|bottom of|bottom rib|bounce it|breathe slow|bum at|bum like|butt|can keep|cat|ceiling knee|chest over|click|close enough|coin|come to|cracking|cracking a|desk|did|dont bend|dont chase|dont haul|dont just|dont need|dont sit|door|down and|drag it|elbow just|elbow up|else|enough|exhale up|flip|floor a|flop|fly|foot only|front and|full|gate|get to|go dead|go of|goe round|gripping|guitar|guitar string|hand away|hand just|hand out|harder|haul|heel and|heel close|height is|high blood|high enough|hip are|hip square|hiss|hiss out|hook|horizon|how|hump|if youre|in a|in both|in two|inch off|it click|it close|it hang|it higher|it if|it into|it leave|it right|it start|it want|its a|its all|its still|just outside|just rope|knee as|knee soft|knee stay|lift the|light on|like train|little step|lock it|long spine|look up|looking at|lower back|mat and|mirror|much|much as|need|nip|no bouncing|no heaving|not an|not back|not behind|one end|one leg|one line|one of|open them|or a|out at|out breath|out there|out wide|outside the|over till|pad on|park|park it|pause at|peel|people|plaster|point them|pointed|press down|pressure|pressure or|pull it|pulled up|push through|put it|rib and|rib down|rib flare|roll down|round at|send|set|set it|shin stay|shoulder away|shoulder to|shout|shove|shove the|shutting|shutting the|skull|slow and|slow it|snap the|sniff|so your|spin|square to|squeeze a|stamp|stamping|stand tall|standing|standing leg|starting|stick down|straight and|straighten|straighten that|straighten the|swim|swim when|take a|take some|than a|that how|that the|the bell|the bum|the cheek|the crease|the feet|the horizon|the mirror|the rest|the sore|the thigh|the weight|their|them like|then shove|then snap|then squeeze|they dont|thigh|thigh first|through both|tickle|tip it|to just|to you|too heavy|twist open|until its|up till|up you|width|wrap the|you cant|you fold|you know|you should|you want|youll go|your armpit|your backside|your belly|your body|your butt|your foot|your lace|your lower|your thigh|youre cracking|youve gone',
      ],
      [
        0.1,
        'a bad|a line|a nerve|a spring|about level|and one|arent|back like|back round|back slow|beat at|belly tight|belt buckle|both end|brush your|bum not|chair and|change|check your|coming down|crease|crease of|dont bounce|dont jerk|down through|down your|draw it|each armpit|end up|exhale|eye a|facing you|feet down|four|gone|gone too|have your|heel out|in closer|it roll|itll have|jerking|keep that|knee arent|landing|late|lay|leave your|leg the|letter|like you|mid|mid shin|nearer|nerve|ninety|ninety degree|no further|not down|outside your|over and|over it|peel up|plate|pull with|reach your|rib dont|round to|round you|round your|rounding|shaving|shove your|shrug|shutting a|smaller or|spring|squeeze and|stand with|standing up|stay flat|stay tall|stick|string|that in|that leg|the loop|then up|thigh and|three count|tipped|to look|too high|toward you|train|tucked in|wall behind|way back|way in|where you|you bow|you let|your kneecap|youre in|youre late|zing|zing down',
      ],
      [
        -0.1,
        'a bit|a boat|a hinge|a scarecrow|a slow|a tent|a touch|ache|achilles|across|across the|all|allowed|an|an end|and a|and bring|and dont|and down|and it|and keep|and make|and out|and press|and stay|and step|and up|and when|ankle over|arm go|arm like|at all|back off|back on|back up|back with|ball|bang|being|bending|beside|blow|blow out|boat|bring them|build|bump|bus|by side|by your|cheat|chicken|crank|curl up|dip|dive|dive in|do it|do the|dodgy|dont arch|dont drop|dont fling|dont grip|dont swing|down by|down for|down into|drag your|drift forward|each other|ease|elbow at|elbow in|elbow on|elbow pinned|elbow wide|fall|feet a|feet on|feet together|few|fingertip|first and|fling|follow|foot to|front foot|go and|go back|go soft|grip with|hammock|hand down|hand in|hand up|hard|head on|heavy on|heel as|heel down|hop|hot|hug|if that|in and|in line|in through|instead|into|is a|it home|it on|it open|it pinch|it slowly|keep them|kissing|knee follow|knee in|knee straight|knee under|knee wide|land on|lean away|lean back|leaning|leg goe|let them|let your|lift your|like an|like somebody|little quick|little toe|mat with|muscle|nearly straight|never|no dropping|of a|off and|old|one arm|one foot|one knee|only as|onto|opening|operated leg|or your|other|other one|out a|out for|outside of|over a|own|palm forward|pedal|pinned to|point|point at|pointing at|poke your|press your|push off|push up|pushing|quick|quick step|reach one|rhythm|rib are|right up|sagging|scarecrow|seat|second to|shoulder height|shoulder up|side by|side on|sideway|sigh out|sign|sink|sit straight|sit tall|sit up|slow breath|slowly|so the|so youre|something|speed|spread|standing foot|steady|step out|straight back|straight down|swap|swing the|swinging|take one|tea on|teeth|tell me|ten|that all|that back|that cheating|the ankle|the belly|the buttock|the calf|the chest|the door|the good|the head|the height|the left|the nose|the operated|the seat|the wall|the window|then drive|these|they come|thumb up|to be|to one|toe point|top leg|tray|treacle|two second|under your|until the|up a|walk the|water|weight on|well|what|where|where the|whole time|wider|wind|with one|without|wobble|wrist stacked|you only|you sit|your blood|your fist|your rib|yourself hang',
      ],
      [
        -0.2,
        'a dog|a little|against|along|along the|and go|and lean|and the|and turn|and you|arch|arche|arm out|as high|as they|at chest|back heel|back into|back till|balance|band|be|been|before|behind you|behind your|bend|bend your|bent up|both hand|bowl|breastbone|bring|by|by the|cave|chair|cheating|chest and|chest to|circle with|clock|count of|cushion|deep|dont|dont hitch|dont kick|dont lean|dont lock|dont roll|dont stick|dont want|down between|down to|draw your|each|each hand|ear|easy|em|end in|even|everything|eye|feet forward|fence|find|fine|fist|five|follow your|foot|foot out|for a|forearm down|from you|front heel|front knee|goe down|good|got|grab|grass|ground|grow|had|hair|half|hand|hand off|hand shoulder|hang on|hang there|have to|heel stay|high as|hip forward|hip height|hip stay|hitch the|hurt|i can|if they|if youve|in each|in to|in toward|inside|it drop|it from|it out|it pull|it slip|it there|keep hold|knee go|knee together|knuckle|lamp|lamp post|lazy|lean a|leave it|let|let the|let yourself|lie on|like the|little|little breath|lock the|make|meat|meat of|mind|next|next to|no more|not at|not locked|now|on it|on them|on top|one to|onto the|operated|opposite arm|or it|or the|other knee|out and|out like|out over|out through|out to|pain|part|pick|pillow|pinned|please|press it|pull them|pull your|push it|push the|put a|quiet|rib pop|ring at|roll out|rolling|run|sag|second toe|shelf|shoe|shouting|side and|side of|sigh|sit back|sitting|slide your|slip off|slow as|squash the|stand on|stay there|stick your|stiff|stop at|strap|stuck|swing|swing your|switch|tea|tell|tent|than|than the|than you|than your|that knee|the band|the belt|the big|the box|the breath|the clock|the elbow|the grass|the ground|the inside|the long|the meat|the opposite|the outside|the towel|there a|there till|theyre not|thigh stay|tiny|toe tucked|toward the|toward your|track|tuck your|turn your|two step|under hip|under shoulder|under you|underneath|up behind|up over|use|walk|walk back|when you|where your|will|wing|yank on|you can|you push|you reach|you think|your|your arm|your calf|your face|your feet|your low|your nose|your right|your shoulder|youre being|youre on|youve got',
      ],
      [
        -0.3,
        'a hand|again|arm|arm up|away|back down|back foot|back in|back knee|ball of|before you|bend the|bring the|calf|dont let|dont tip|down a|draw|drive|dropping|elbow under|face|feet wide|finger|foot on|forehead|front|front of|go|got a|halfway|hold|imagine|in|it stop|its only|jaw|keep|knee down|knee over|knee up|kneecap|lean|left|leg long|leg up|lie|like|low back|nearly|of the|off|on|on your|opposite|or|out|out of|pointing|puff|roll back|round the|sit down|slip|stacked|step back|straight|straight up|take your|that your|the ball|the mat|the other|the ring|the toe|them|then let|they|to the|top of|touch|toward|towel|tuck|under the|up and|waist|wall|window|wrist straight|you like|your chin|your toe|your waist|youre not',
      ],
      [
        -0.4,
        'all the|and|ankle|at your|breathe|breathing|come back|do|elbow|forearm|forward|forward and|hand under|head|hold it|home|if it|into the|keep breathing|kick|mat|nose|on a|palm|reach|shoulder width|slow|the|the kneecap|the side|turn|want to|whole|wrist|your breath|your knee',
      ],
      [-0.5, 'and back|can|higher than|it goe|off the|pinch|side|thumb|together|under'],
      [-0.6, 'height|small|the chair|the front|wide'],
      [-0.7, 'right|ring|step|toe'],
      [-0.9, 'sit'],
    ],
  ],
  [
    'hip-rotation',
    -0.5,
    [
      [0.7, 'deep|deep in'],
      [0.6, 'ankle|head|top knee'],
      [0.5, 'ankle over|bent|head on|let go|wrist'],
      [
        0.4,
        'and draw|and knee|back pocket|hand and|hand behind|it deep|knee out|lift one|loop|one knee|open|open the|other knee|out to|the hip|the knee|the lift|together|where its',
      ],
      [
        0.3,
        'a gate|a slant|about a|and fold|and put|anything|at all|backward|dont roll|down on|each breath|feet stay|flex|gate|go and|hand under|heavy on|instead|its about|keep the|kissing|knee at|knee under|pocket|roll backward|sit up|slant|steady|the bum|thread|through and|to about|to where|top hip|up tall|where|you open|your wrist',
      ],
      [
        0.2,
        'a pillow|above|above your|against|against the|and stop|and straighten|as wide|back leg|behind the|bone|bounce them|breathe down|cant|come out|dip|dont hang|down onto|draw|draw it|end of|feel like|flex the|fold|front foot|get down|go a|go to|hang off|head stay|if there|in to|in toward|it should|its easy|knee bent|know|lean away|leg in|long and|minute|moan|onto your|pain at|pillow|please|pull the|put it|say|shut|slide the|slower|so go|so your|straighten it|than you|the left|the minute|the right|the side|the thigh|thigh|thigh and|to open|toward you|up out|up so|wide as|would|you feel|you know|your forearm|your you',
      ],
      [
        0.1,
        'a book|a cup|a door|a pinch|ache|and close|and open|and pull|another|backward to|book|bottom one|bump|cup|cup of|dont bounce|dont lift|dont yank|each|exhale|from it|go on|hand width|holding a|in|it higher|it is|it slower|keep|knee together|nip|not the|of tea|only a|outside of|pain|pinch in|roll onto|should feel|something|standing up|stay stuck|straighten|table|tea|tea on|that all|that leg|to ache|under shoulder|where it|where the|yank|you and|your right|your top|youre holding',
      ],
      [
        -0.1,
        'a little|again|air|all the|along|and|and back|and bring|and down|and then|apart|arch|arm out|armpit|as far|as if|as the|as you|back and|back down|back knee|ball|ball of|bar|bell|bend the|bend your|between your|big toe|blade|blow|blow out|body|breathe in|bring it|bum|but|button|by the|by your|can|ceiling|chin|come back|coming|curl|do|dont arch|dont hold|down and|down the|drive|elbow under|every|eye on|facing|far as|feet flat|feet hip|feet under|fist|float|floor|floor away|foot on|for the|from the|from your|get|goe|going|gone|ground|hand|heel and|high|hip width|home|how|hurt|if|if youre|if youve|in a|in as|in your|inch|inside|into your|it back|it goe|it with|its only|its your|keep breathing|keep your|knee up|kneecap|land|lazy|lean|lean back|leave|let the|let them|let your|level|like|like a|long|low back|make|me|middle|nobody|of a|of you|of your|on the|on to|one hand|or|out as|out in|over your|palm|past|pick|point|press|push the|quick|quiet|rail|ring|second|see|short|shoulder blade|sit|sit back|slowly|somebody|sore|sort|sort of|squeeze the|stand tall|stand up|start|swing|the arm|the big|the ceiling|the elbow|the floor|the ground|the middle|the nose|the rib|the toe|the whole|think|three|through|through your|thumb|tight|till it|till the|till your|too|top of|touch|tummy|up on|up to|walk|way down|way up|when|when you|whole|wider|with the|without|you come|you dont|you get|you go|you should|your belly|your breath|your ear|your leg|your low|your neck|your nose|your rib|your thigh|your toe|youre not|yourself|youve got',
      ],
      [
        -0.2,
        'an|are|as it|at the|at your|back of|band|bend|both|breath|breathing|come up|dont let|down|drop|ear|eye|far|finger|first|foot|for|front of|got|hand on|have|heel|hold|i|if it|it|it up|let|little|look|lower|neck|no|nose|of|off|on|one|one foot|other foot|out|round|sigh|small|soft|squeeze|stop|take|the leg|the shoulder|the way|them|they|through the|time|to the|to your|toward your|towel|turn|under the|until|up and|with|you|your bum|your chest|your feet|your heel|youre|youve',
      ],
      [
        -0.3,
        'arm|as|back|big|by|chest|dont|elbow|feet|flat|in front|leg|let it|low|not|of the|push|rib|slow|stand|the|then|there|till|to|tuck|way|your|your shoulder',
      ],
      [-0.4, 'a|just|shoulder|step|straight|up'],
      [-0.6, 'toe'],
    ],
  ],
  [
    'isometric',
    -0.2,
    [
      [0.9, 'elbow under'],
      [0.8, 'breathing|keep breathing'],
      [0.7, 'finger on|it pinch|out there|shoulder over|sip|the air|under the'],
      [0.6, 'air|arm straight|holding|look at|low back|mat|moving|ring|tent|the ring|you reach|your wrist|youre a'],
      [
        0.5,
        'and lift|back flat|back in|cup|dont let|finger|five|forearm and|half|hip level|home|inside|it still|kneecap|kneel|leg goe|let go|letting|letting go|on your|one foot|over your|press|ring at|sag|shoulder are|staying|the kneecap|your low|your thigh',
      ],
      [
        0.4,
        'a coat|a spot|a tent|an|an inch|and stay|and the|at chest|between them|buckle|but|chair back|chest height|dont hold|dont sink|feet off|find the|firm|foot right|forearm|get out|glued|goe|had|hip|hip dont|hold your|it under|knee down|leg away|leg long|lift|lift your|little sip|look|low|off and|onto one|over hip|pinch at|press down|press your|put your|quiet|roll your|slide down|slide up|squash|squeeze it|stare|stare at|step up|straight out|strap|take your|tea|tell|the box|the hand|the inside|the other|the strap|thing|toe on|toe tucked|too|towel|waist|way through|wet|while|wobble|you think|your breath|your hand|your hip',
      ],
      [
        0.3,
        'a banana|a cup|a good|a wet|about half|ache|and float|and foot|and hold|and low|and press|and stare|and swap|and walk|and your|anybody with|are up|arm forward|arm goe|arm up|away|away from|back stay|banana|bed|before you|belly|belly drop|both hand|box|breath|bring them|can|clench|clench your|clock|coat|come home|come in|complaining|count out|creep|cup of|cushion|cushion between|dig|dip|doe|dog|done|dont clench|dont sag|down till|drift|drifting|drop off|dropping|ear|elbow toward|everything|far as|feel it|feet find|feet stacked|feet wider|fist|float the|floor away|foot off|forward to|glass|go away|gone too|good|grip with|gripping|half as|hand and|hand out|hand over|head and|head height|height off|hip height|home and|i can|if its|in a|inner|inside of|isnt moving|it straight|ive|joint|jump|just in|kick the|knee over|late|leg together|let that|little breath|little step|lock|make|make yourself|new hip|not locked|not the|of a|off that|one elbow|one leg|opposite|opposite hand|or it|other|peel|pop it|press up|pull up|pull your|push down|push the|reach one|reach the|right under|rolled|roof|should feel|side on|sink into|sip the|sit on|slide one|slowly|small breath|something that|spin|spot|spot on|squash the|squashing|start to|still|swap|talk|talk to|that isnt|the bed|the clock|the leg|the one|the opposite|the roof|the shin|there|this one|through it|thumb|time|to ache|tomorrow|too far|top of|tray of|twist|up a|up over|weight in|while you|wrist|you can|you dont|you let|your belly|your breastbone|your face|your fist|youre breathing|yourself|youve a|youve got',
      ],
      [
        0.2,
        'a bus|a chair|a count|a hammock|a line|a new|a race|a tabletop|a tea|a tray|about to|ach|against your|air moving|and breathe|and do|and drag|and feet|and heel|and just|and pop|and stop|and wait|anybody|arche|arche off|are at|are creeping|are drifting|are poking|arm back|arm by|as low|ask|at a|away so|back come|back dip|back get|back on|backside|band at|barking|belly button|belt buckle|bottom of|breath on|breathe all|breathe at|breathing while|bring it|button|can get|can stay|candle|ceiling knee|check that|cheek|chin not|clear|clear of|coffee|come down|come off|count of|creep up|creeping|creeping up|curl your|do it|dont be|dont grip|dont hitch|dont jump|dont kick|dont need|dont swing|down slowly|down through|drag|drink|each other|elbow are|every time|eye level|feet first|feet on|feet stay|finished|fish|flaring|float|foot just|for a|for it|for three|from a|from you|gently|go out|go slow|go with|goe away|goe in|going out|gone|grab|grab it|grape|grip|had a|hammock|hand go|hand off|hand open|hang like|having|heel close|heel in|heel touching|height and|hip and|hip are|hip high|hip like|hip till|hitch|hitch the|holding it|holding your|hook|hover|hurt|i|i see|imagine|imagine a|in both|into your|it and|it arche|it as|it behind|it between|it forward|it is|it start|its your|job|just off|knee an|knee drift|knee in|knee sore|kneecap slide|knitted|knot|knuckle|leading|leg back|leg flat|lift the|like there|like train|lock the|loud|low as|lower back|make one|mat and|me|muscle|nearer|neighbour|new|nice and|no lower|of drink|of five|of tea|of you|off it|on something|only to|operated knee|opposite foot|other arm|out loud|out the|out till|pain in|pick a|pinch up|popping|pull back|reach long|rib knitted|rib stay|right arm|right in|ring out|rise up|roll forward|rolled towel|rolling|rolling forward|round to|seven|shin level|shorter|shoulder width|side that|sing|slide them|snatching|sneaking|sore knee|squeeze your|stack|stacked|standing on|stay stuck|stay there|step off|still as|stopping|straight like|stuck|swap the|swim|swim when|switch|tabletop|tea on|tell you|than that|that hip|that not|that your|the door|the finger|the joint|the leading|the operated|the shoulder|the sore|the underneath|the you|them coming|them home|then let|then the|then you|theyre not|thigh first|thumb round|tip your|tired|to heel|to one|to turn|toe without|together|together like|touching|towel under|towel up|train|tray|turn the|turn you|underneath|underneath side|up again|up off|up out|waistband|wait for|wall and|want the|want to|way you|wet towel|wind|with control|with the|with them|with you|wrist or|you hold|you press|you squeeze|you wobble|your blood|your finger|your mat|your spine|your towel|your waist|youre done|youre leaning|youre on|youre the',
      ],
      [
        0.1,
        'a dog|a full|a lamp|a time|and away|and only|ankle go|as the|away with|bath|behind the|belly up|big slow|bit in|breath go|breath into|brick|chat|coffee table|complain|day|down softly|drifting back|each time|ease into|elbow soft|empty|fat|feet close|fingertip|fingertip on|five second|flat like|for your|getting|go forward|go on|go so|hand height|hand round|hand slide|hard|harder|have gone|head to|heel goe|high enough|higher than|hip come|hip forward|hip sag|it lift|jammed|just ahead|just clear|knee back|knee till|knit|lamp|lamp post|leg on|leg that|lock your|long breath|long by|no higher|not an|not jammed|not your|one arm|one end|opposite leg|over onto|point forward|press through|quiet feet|rib are|ring in|roll back|rush|sand|saying|set the|shoulder and|shoulder sore|sign|slow and|slow is|so come|spread your|squeezed|stay still|teeth|that where|the backside|the ear|the fat|the feet|the grass|the grip|the last|themselve|then pull|theyre|thigh and|throat|to be|to hear|to hold|to me|toe and|top hand|until youre|up before|use|want a|washing|watching|way in|wee|weight on|where it|which|while its|without dropping|you breathe|youll get|your chair|your kneecap|your lane|your teeth|your weight|youre finished|youve gone',
      ],
      [
        -0.1,
        'a bit|a slow|a spring|about|achilles|and back|and jump|and lazy|and over|and put|and shove|and turn|another|as its|as wide|at shoulder|back a|back heel|back leg|back off|back till|back toward|bang|bar|before it|bending|big and|big step|both feet|both knee|bounce|bow|brake|brisk|bum back|cheat|cheat it|chest and|chin|chin out|circle with|close enough|coin|coming up|crank|crept|curl the|cushion under|dizzy|dont fling|dont haul|dont reach|dont shrug|dont tip|down again|down at|down into|draw it|drawer|drop your|edge|elbow go|eye up|fast|feel your|feet apart|feet flat|few step|fire door|fist off|fling|fling it|force|forearm flat|forehead down|forward till|get a|get heavy|get the|get there|get your|glaucoma|glute|go to|goe down|goe round|going up|half way|hamstring cramp|hand are|hand loose|haul on|head on|hip that|hug|im|in down|in for|is plenty|isnt a|it at|it hurt|it isnt|it let|it low|it open|its tiny|its up|jug|jumping|keep hold|keep your|kiss|knee out|knee soft|knee wide|landing|lap|lean in|leaning|long back|long band|long leg|long neck|lower them|lower till|march|meet it|mind your|neck|neednt|nick|no swinging|nose to|oclock|off you|off your|on every|onto the|onto your|opening|or you|or your|out at|out coming|out for|out through|out up|over it|overhead|pad|palm facing|phone|pinch your|pinned|putting|reach out|rest|rib dont|right hand|rise|roll to|roll up|room|round|second toe|send it|set|sharp|shin|shin up|shirt|shoe|shoulder down|shoulder stay|shove the|show|shrugging|sink|sit up|six|skate|slipper|small quick|so your|somebody|spring|stay straight|stick|still there|stop at|stop when|straighten it|swap hand|swing it|swinging|t|take it|tall at|tall on|than a|the big|the chin|the edge|the hamstring|the handle|the jaw|the lace|the lift|the push|the rack|the room|the second|the standing|the step|the way|the weight|them down|then lower|they dont|think of|three|through a|thumb out|tiny|to cheat|to long|to meet|to round|to shoulder|toe up|toe when|tree|under hip|until the|up past|up with|waiting for|walk the|warm|wing|with both|would|yanking|you get|you land|your armpit|your bottom|your butt|your eye|your head|your nose|your own|your you|youre putting|yourself up',
      ],
      [
        -0.2,
        'a big|a boat|a bowl|a breath|a hot|a look|a moment|a pillow|a pinch|a second|a speed|a wee|about a|across the|and bring|and draw|and it|and let|and peel|and quick|and round|and sit|and stand|and straighten|angle|any|arch your|arm long|as|as you|back at|back foot|back hip|back pinch|back up|bag|ball|band|been|below|bending the|big breath|bob|bowl|breath out|breathe down|breathe out|bring the|brush|brush your|butt|by the|chest to|chest up|circle|clap|closing|closing a|come to|come up|comfy|coming down|corner|crane|cross|crossed|curl|degree|dive|dive in|doesnt|dont bounce|dont crane|dont hang|dont just|dont look|dont shove|dont want|down and|down in|down slow|down the|down your|drawing|drawing a|each one|elbow and|elbow back|elbow stay|elbow straight|elbow wide|end of|every|face the|facing|fall|feel that|feet are|feet go|feet under|fine|finish|fire|flapping|flat|flat back|flop|foot forward|foot on|for|for four|for one|forehead on|front foot|front heel|front knee|go again|go and|go back|goe up|gossip|ground|hand flat|haul|heel|heel down|here|hip back|hip bone|hip square|hold a|how|how you|if youve|in|in going|in on|in one|in toward|inch or|it down|it from|it hang|it land|it leave|it like|it off|it pull|it round|it slowly|itll|jaw|jog|just a|kerb|knee as|knee to|knock|lace|lead|lead with|lean away|leave|leg and|leg in|like|like a|like the|look down|looking|lower it|make it|meet|metre|moan|more than|most|most of|mouth|nearly straight|next one|nip|nose|nose and|nose if|not at|not out|of soup|of your|on that|one bone|open|opposite knee|or stop|out a|out going|out over|out when|over to|own|palm up|pass|past the|pin|pinch in|point|pole|pull it|pull the|punch|push away|put them|quick step|quicker|reach for|reach your|rib tucked|right up|roll down|round up|round your|run|say|second down|see the|shopping|shoulder height|shoulder level|shove|shutting|side|side and|sideway|sigh it|sit down|sitting|slide it|sliding|slower than|small and|snap|so if|so it|speed you|squeeze the|stand tall|start|stay over|stay up|stiff|straight leg|stretched|swing the|tail|tall like|tap|that a|that back|that foot|thatll|the arm|the armpit|the bell|the breastbone|the first|the ground|the head|the kerb|the neck|the outside|the thigh|the tummy|the wobble|them up|then press|these|they|theyll|thigh level|thirty|thirty degree|through and|through your|tip|to go|to gossip|to start|to you|to your|toe|toe out|toe pulled|toe to|top|touche|tuck your|tucked in|tug|turn round|under it|under there|up and|up at|up for|up high|up through|up your|upright|walk to|want it|want you|we|were|when|when you|where|where its|whole|wide as|you lift|you open|you rise|you sit|youd|your arm|your calf|your fingertip|your forehead|your tail|your time|your toe|youve just',
      ],
      [
        -0.3,
        'across|along|and come|and down|and roll|and send|and slide|and then|ankle over|apart|armpit|as if|at the|back|back pocket|back to|back under|ball of|behind your|bell in|bend the|bent|between the|bit|bone|breathe in|bring your|calf|chest down|chest forward|click|closer|cramp|deep|dont arch|dont lift|dont rock|down|down between|drive|easy|elbow|enough|feet in|find a|follow|foot out|from it|from the|front|further|gap|get it|going|going down|hand at|hand behind|hand in|handle|have|head|heel and|if youre|in through|it a|it come|it up|its a|keep it|know|land|lean back|leaning back|length|let them|light|loop|middle of|mind|near|nearly|next|no bouncing|not a|on it|one|other knee|out as|out like|pedal|pillow|rhythm|rock|roll out|same|side to|sit back|slide the|slide your|slower|smooth|stay down|steady|step|straight down|straighten|swing|swing your|take|take a|the|the belly|the bottom|the chest|the next|the out|till it|till the|tingle|tip from|to get|to lift|to side|touch|turn your|up tall|way|way down|with a|you go|you know|you like|you pull|you push|your|your chest|your foot|your heel',
      ],
      [
        -0.4,
        'and push|arm out|back knee|bell|blade|body|bouncing|breathe into|coming|dont lean|dont yank|draw|end|exhale|for the|from|get|hold the|in as|its|knee bent|lazy|let it|lie|loose|nothing|one knee|other leg|out on|outside|plenty|pocket|push off|seat|second|shoulder blade|side of|sigh|speed|stop|the end|the seat|the side|through|two|with it|yank',
      ],
      [
        -0.5,
        'after|and lower|arch|as it|bend|both|catch|forehead|it out|lean|let the|lower|more|palm|past|push through|sit|the front|the top|till|turn|up to|walk|way up|wide|your shin',
      ],
      [-0.6, 'a little|big|chest|heavy|out|quick|short'],
      [-0.7, 'out to|tall'],
      [-0.8, 'in the'],
    ],
  ],
  [
    'jump',
    -0.6,
    [
      [0.8, 'hop|land|you land'],
      [0.7, 'drive|jump'],
      [0.6, 'ground|hot|land on|landing|march|rhythm|shin|shoulder over|the ground'],
      [
        0.5,
        'a hot|bladder|can|da|da dum|dum|hang|knee in|or your|pocket|puff|push off|skip|tent|the heel|the other|the wrist|up under|when you|your bladder|your feet|your shin',
      ],
      [
        0.4,
        'and jump|and the|dont reach|drive the|feet go|feet in|hang there|have to|instead|jumping|knee to|light on|or|quiet|running|slapping|step it|stick|then the|to about|up on|wrist|you have',
      ],
      [
        0.3,
        'a deer|a knee|a phone|a tent|achilles|and easy|and march|arm drive|at you|beat|belt height|bounce|breath out|deer|doesnt go|dont fling|dont hold|drifting|drifting back|easy|feet together|fling|forearm and|from the|get your|go again|go back|have|heel up|hurt|in and|knee come|knee point|knee up|leaning back|one at|one knee|opposite arm|over a|phone|plenty|point at|puddle|quick off|round your|stand tall|step the|stiff|taking|the air|the track|then heel|there no|to be|turning|under there|underneath you|when|your breath|your foot|your wrist',
      ],
      [
        0.2,
        'a chair|a duck|a rhythm|a tabletop|a time|across to|air|and drop|and hop|and in|and land|and quiet|are at|are drifting|as close|as long|back behind|back pocket|back start|ball|ball of|belt|big arm|bill|blow on|bounce off|break|bring them|brush the|come in|doing|dont fold|dont like|dont tip|down softly|down under|duck|every|fast|faster|feel that|feet hip|find|find a|floor and|for two|from a|get the|go up|hand down|hang in|have a|heel as|heel come|hold your|hum|in it|is plenty|it for|it from|just ahead|kiss the|knee nearly|knee or|knock|land soft|late|level with|light|listen|listen for|little puff|long as|lot of|meet your|morning|nearly straight|neck long|no further|off one|on each|on somebody|only come|or so|other knee|over elbow|popping|pulled up|quick|quiet feet|reach with|reset|set the|shin or|sit down|snap|snap the|sneaking|so if|squat|stamping|stand and|stay tall|still as|stop and|straight down|tabletop|thatll|the backside|the ball|the far|the foot|the forearm|the morning|the pocket|the shin|them like|theyre|think of|time|to meet|track|turn it|under you|water|wrist sore|you can|your achilles|your ankle|youre late',
      ],
      [
        0.1,
        'a beat|a fraction|a speed|ahead of|and drag|and hang|at a|away so|beside|board|bottom out|clear the|drag|fold|fold at|foot and|foot to|fraction|grab at|in for|it away|itself|knee only|loose|lot|meet|need to|opposite|other one|out behind|out for|pick it|push it|reach for|snappy|so there|sock|sock on|speed you|step one|string out|the ankle|the feet|the rope|the towel|the waist|they are|through it|toe on|toe when|trip|want the|when your|where they|without the|your fist',
      ],
      [
        -0.1,
        'above the|achilles is|against|and lower|and push|armpit|as they|back of|back till|back up|band|behind your|bench|bend the|bend your|between the|both hand|breathe into|brick|come back|come up|dead still|doe|dont arch|dont stamp|down for|down with|dumb|dumb bell|each hand|elbow under|facing|foot on|forehead|freeze|front knee|going down|hand go|handle|hold it|how you|if that|if there|in one|into your|isnt|it a|it back|it go|it goe|it in|just above|keep the|knee bent|knee under|lane|lazy|leaving|leg up|lie|lift the|lift your|line|long|look down|lower it|marcus|middle of|move|not|nothing|of|of the|off your|outside|past your|peel|pillow|press the|pull it|pull your|push your|put your|relax|relax your|rib|rise|rock|roll out|room|run tall|sagging in|second|sharp|shoe|shove|side|side of|side on|sip|slower than|squash|squeeze the|stamp|stay|stay down|step back|still|swap leg|tail|take|than you|the band|the bar|the bench|the elbow|the hand|the inside|the ring|the shoulder|the side|them down|then let|thigh|through your|tight|till it|till the|till your|tiny|toward the|tuck your|tucked|turn your|up tall|walk your|way down|wider than|you feel|you swap|you want|your backside|your bum|your calf|your face|your finger|your nose|your own|your shoulder|your tail',
      ],
      [
        -0.2,
        'a bit|a hand|able|able to|above|allowed|along|and come|and let|apart|arch|arm long|arm straight|as if|at your|back knee|back on|bar|be able|behind|belly|bent|between|big|big breath|body|bone|bring|but|calf|catch|change|click|coming|count|curl|dont roll|door|down and|draw|ear|ease|elbow bent|everything|feel it|feet flat|for|grass|grip|grow|head|heavy|heel and|home|how|i|in as|in your|inch|inside|into the|it come|itll|its not|its the|lean|lean in|let go|like somebody|little step|long breath|make|middle|moving|my|near|nice and|one foot|onto|out as|out of|over the|own|palm|past|pick the|pinch|properly|round the|seat|should|should be|sigh|sit up|slide|slower|slowly|smooth|squeeze your|stand up|step out|stretch|swap|table|tell|the back|the big|the ceiling|the edge|the first|the middle|the seat|the top|the wall|the way|three|thumb|till youre|tip forward|toe up|too|toward|until|up off|up the|what|when it|where|whole|wider|with your|you get|you go|youll|your arm|your chin|your thigh|your toe',
      ],
      [
        -0.3,
        'an|back|bend|big toe|bottom|bring it|by the|ceiling|dead|down|down the|eye on|face|feel|flat|goe|hand on|imagine|into|it|it down|its|lock|lower|me|nobody|nose|of it|on your|one hand|press|pull|rail|ring|round|shoulder|slow|small|stop|the bottom|the chair|the rail|through|through the|top|tuck|turn|way|weight|you|you should|your back|your ear',
      ],
      [
        -0.4,
        'bell|bit|both|chin|enough|first|forward|leg|let|let it|lift|put|squeeze|straight|wall|your|your elbow|your leg',
      ],
      [-0.5, 'a|breathe|elbow|roll|till|to the'],
      [-0.6, 'that|the'],
    ],
  ],
  [
    'kneeling',
    -0.5,
    [
      [0.8, 'kneel|squeeze the'],
      [0.7, 'tail'],
      [0.6, 'bell|down on|one knee|sit back|tuck|tuck your'],
      [
        0.5,
        'arm long|arm straight|back knee|cushion|forehead|knee down|knee on|knee wide|mat|on a|other foot|the hand|your heel|your tail',
      ],
      [
        0.4,
        'a mat|a table|and let|and walk|back hip|back of|back to|big toe|far|foot out|heel and|in front|into the|kneecap|let your|melt|only as|string|the cushion|the neck|the weight|toe together|too far|touching',
      ],
      [
        0.3,
        'a chair|and away|arch|as far|back dip|banana|breathe into|can get|down slower|dumb|dumb bell|find|fold|foot forward|forward and|front of|go out|heel of|instead|into your|it goe|kneeling|kneeling side|knitted|lie|lie on|low|low back|lower them|out breath|out in|pad|pillow|pinch|put a|rib knitted|rib stay|sag|set|sit your|stretch|table|tail under|the arm|the armpit|the finger|the kneecap|the kneeling|the palm|the ring|then pull|till the|too|under it|walk your|warm|went|when youre|wide|you can|your arm|your hand|your low|yourself back',
      ],
      [
        0.2,
        'a lighthouse|a pull|a second|a stretch|above the|and lower|and one|apart|arch to|arch your|arm go|armpit|asking|at eye|at something|away again|back flat|back from|back leg|back on|back the|be the|beat at|bench|blow|blow as|blow it|book|both knee|breath go|breath out|breathe all|brush your|bum back|centimetre|change|cheek|come in|come out|coming down|concrete|dip|dont arch|dont sag|down before|drawer|elbow stop|far as|folded|foot through|front knee|gentle|get back|get down|glute|go all|goe over|going out|gone too|hand go|hand out|hand slide|hip are|hip forward|hip height|horn|hump|imagine|it by|it like|it low|it past|it pinch|it till|it under|it went|knee apart|knee goe|last inch|lean away|lighter|lighthouse|long in|longer|look straight|low down|moment|nailed|no prize|no wider|nobody|nothing|of you|on both|on one|one dumb|only to|palm in|past your|pinch at|ponytail|prize|pull back|right foot|ring|ring at|row|second at|shin up|shorter|shoulder level|shoulder pinch|shout|shuffle|sigh it|sign|sink the|skim|skim the|slow out|slump|snatch|so you|spread|start at|start to|step one|string on|than it|that back|the bench|the cheek|the far|the horn|the last|the little|the moment|the pocket|the pull|the rib|there no|tip forward|to where|tuck the|up past|upside|upside down|way round|weight to|when its|where you|with you|you a|youre at|yourself|youve gone',
      ],
      [
        0.1,
        'a hot|a towel|back and|back toward|catch in|cheek of|dont force|for a|force|go heavy|go long|gone|hand away|hand finish|home|knee that|lean on|meat|meat of|no leaning|or leave|press them|putting|reach like|rhythm|roll the|said|see them|shouldnt|skiing|take three|tall on|the bum|the height|the joint|the left|the meat|to finish|top shelf|towel under|up tall|up till|wall and|went up|without the|wrist stay|yanking|youre putting',
      ],
      [
        -0.1,
        'a touch|again|all|and if|and it|and lift|and not|and push|and the|and then|ankle behind|are|arm up|as high|as you|at|at chest|back a|ball|ball of|before|behind you|below|below the|both hand|bounce|box|breathing|bring the|chest height|chest open|closer|coming|count|curl|dead|desk|do|do it|dont hold|dont want|door|drop|elbow under|end|every|feet hip|feet under|fine|finger|floor away|follow|four|from it|from your|go up|ground|hard|have|heel to|heel up|high as|hip width|hold the|holding|how|i|i dont|if that|if there|if youre|if youve|in a|in as|in to|it come|its your|knee bent|knee in|knee over|knee point|leg long|leg out|leg up|let go|lift the|lift your|look at|looking|loop|loose|me|middle of|moving|no higher|not your|one arm|one leg|open|out a|out at|out like|over the|over your|palm facing|pick|plenty|pop|press the|pull the|push the|push through|push your|put|put it|rail|room|round the|run|rush|sharp|shoe|shoulder height|shove|side of|side on|side to|sit down|somebody|speed|stand tall|stand up|standing|step back|still|straight up|straighten|swap|swinging|take|take your|tent|than|the chest|the end|the feet|the ground|the rail|the same|the whole|then let|then the|there a|they|theyre|think of|through your|to side|toe|up at|up in|up like|wait|want to|way up|wee|when you|whole|whole foot|wider than|width|with the|yank|you get|you like|youll|your bottom|your shin|your wrist',
      ],
      [
        -0.2,
        'a|about|across the|after|air|an|and back|and lean|arent|as|as if|as they|back into|bad|band|behind your|bend the|bone|but|circle|click|dont let|dont tip|down and|down your|drive|each|each hand|edge|enough|facing|first|gently|good|got|grab|grip|hand under|higher|hold|hold your|hurt|if its|if you|in each|is|isnt|keep your|knee soft|knee to|knee together|knee up|let them|light|like|like the|line|look|more|move|no|now|of your|opposite|out to|outside|pain|point|pointing|quick|quiet|right|round|slide your|smooth|squeeze your|stay on|step|swing|that|the air|the bottom|the chair|the knee|the other|the seat|there|till it|time|to the|toe up|touch|toward the|turn your|two|under shoulder|up and|up off|up there|way down|with your|wrist|your breath|your chest|your finger|your leg|your neck|your spine|youre not',
      ],
      [
        -0.3,
        'across|back foot|back heel|bent|blade|breathe|chin|elbow|face|feet flat|forearm|half|hang|high|if|its|its a|just|keep|lazy|lean back|like youre|make|of a|pull your|shoulder blade|side|slide|small|soft|the floor|the leg|the side|then|think|through|thumb|to|toward|up on|way|your elbow|your feet|your shoulder|your toe',
      ],
      [
        -0.4,
        'a bit|ankle|bend|bottom|chest|flat|floor|heel down|let it|off|off the|one|out as|over|shoulder|stand|stay|up|youre',
      ],
      [-0.5, 'bit|breathe out|dont|lift|not|push|turn|you'],
      [-0.7, 'leg'],
      [-1.1, 'feet'],
    ],
  ],
  [
    'leg-lowering',
    -0.3,
    [
      [0.6, 'arche|arm by|bend|ceiling|knee over|leg up|low|low back|the ceiling'],
      [
        0.5,
        'again|as it|bending|by your|foot flat|good knee|head and|leg|other knee|send|shoulder up|the heel|then lift|whole leg|your back|your bottom',
      ],
      [
        0.4,
        'air|as low|as the|back into|back up|bath|both leg|bring them|chin|curl your|five|good|hand under|it away|leg away|little quick|low as|mat|over hip|over your|send it|shin level|so it|sock|sock on|start to|straight up|tea|the air|the leg|the mat|the whole|tight|too|toward your|under your|up over',
      ],
      [
        0.3,
        'a tea|ach|ache|across the|along|along the|and shoulder|are bending|arm long|arm up|back stay|beat|bring|but|chin off|draw|drift|far|far as|floppy|from the|glued|higher|home|if the|it arche|it leave|its tight|kick|knee in|knee up|kneecap|leg goe|lie|off the|off your|or it|out through|palm down|press your|put it|shin|slide it|slower than|start|stretch|swap|tap|tap the|the knee|thigh first|till its|toe pointed|tray|turn round|up off|water|where it|will|you lift|your neck',
      ],
      [
        0.2,
        'a coffee|a feather|a sock|a time|a whisker|about a|and bring|and lie|and start|and swap|and the|and your|arche off|argument|arm and|arm back|away again|back arche|back come|back get|bag|banana|bed|bend the|bent up|boat|both way|chin not|coming off|cup|daylight|daylight under|dont hitch|drag|drag it|everything|faster|feather|flat on|flip|float|float up|floor and|flop|foot to|for it|from you|further|get hurt|go away|goe away|goe down|gone too|head down|heel about|heel in|heel toward|heel up|height of|hip stay|hip to|hitch|home and|i want|in like|in to|in toward|isnt|it bend|it come|it flop|it slip|it slower|it start|it to|its only|knee bent|knee drift|leave the|leg down|leg in|leg out|lie back|long by|lower them|make it|one heel|one piece|only your|opposite|over on|peel|peel off|people|piece|pointed|puff it|pull the|quicker|reach one|right arm|second up|send the|short of|shorten|shoulder and|sip|slip|slipper|so stop|spine|stay stuck|stop short|stuck|swimming|tea tray|than that|than the|that how|the bed|the height|the light|the low|the opposite|the slow|them back|themselve|then a|then float|then lower|then the|they go|tighten|to where|toe just|tomorrow|too far|too low|toward|up again|where its|whisker|width apart|you stop|your spine|youre in|youve gone|zip',
      ],
      [
        0.1,
        'a banana|and float|and send|as far|back peel|bend your|bone at|bring it|bring your|can go|coffee|each other|finger and|gone|heel goe|hitching|it back|it smaller|knit|knitted|lane|leg long|leg straight|leg that|little breath|lost|lower your|mat and|off that|on a|only as|only go|opposite arm|out long|park|point at|poking|rib are|rib knitted|roof|shorten it|slow as|smaller|start again|swing it|that all|the roof|them home|tight and|treacle|under it|up behind|your low',
      ],
      [
        -0.1,
        'a bowl|above|an inch|and dont|and down|and no|and pull|and stand|arm forward|armpit|back down|back foot|back knee|back off|back pocket|ball|ball of|band|before|before you|bench|big toe|blade|blood|body|both hand|bounce|bouncing|bowl|box|breathe|bus|by the|calf|cant|chair|chest and|click|do it|dont bounce|dont drop|drive|drop|easy|em|every|eye on|face|feel the|feet under|find|first|floor away|foot on|forward and|front of|gently|get|get it|go up|hand and|hand behind|hand by|hanging|head|height|if its|in and|in on|it a|it go|it off|just|keep breathing|keep the|keep your|knee down|knee soft|knee under|knuckle|leaning|let them|level with|line|look|loop|meet|middle|middle of|next|no bouncing|not the|nothing|of it|of you|on top|one|one foot|one hand|other foot|other one|out and|out like|over to|past|pick|pull it|rib|rise|roll back|round the|shoe|should|shoulder blade|shove|side|side on|side to|sit back|sit up|soft knee|stand on|stand up|steady|step back|straight|straight back|straighten the|than your|the arm|the bar|the calf|the next|the outside|the rib|the ring|they|think of|through the|through your|till|till it|tingling|to|to a|to side|turn|turn your|two|under hip|up in|up there|walk your|were|where the|whole foot|wider than|width|with|with it|with the|you go|you pull|you push|you want|your breath|your foot|your forearm|your hand|your head|your tummy|your waist',
      ],
      [
        -0.2,
        'a little|after|ahead|an|and draw|and keep|and lift|and lower|and out|ankle over|bar|behind your|between|between the|breastbone|breathe into|breathing|cheek|come out|cramp|do|dont arch|dont lean|dont tip|down on|each|elbow under|enough|facing|feet hip|fingertip|fist|fold|for the|forearm|forehead|four|front|go|going up|got|ground|half|hang|heel down|high|if youve|in|in the|inch|it|its the|its your|just above|keep|keep it|knee to|lazy|lean back|let your|like there|no more|nobody|of the|on it|one knee|onto|open|outside|over the|pocket|pull|push through|ring|rock|round|slowly|squeeze|squeeze your|stand tall|standing|stay|stay on|tail|take|that leg|the chair|the elbow|the end|the feet|the ground|the seat|the top|there for|think|through|thumb|till your|time|to get|top|toward you|tuck|tuck your|tucked|under shoulder|under the|underneath|up on|waist|walk|want|want to|wide|wider|with a|you|you dont|your arm|your rib|your shin|your tail|your wrist|yourself|youve got',
      ],
      [
        -0.3,
        'a|and|and let|arm out|at your|behind the|bell|come up|end|eye|feet flat|foot|hand on|have|hip width|if you|in front|let|let go|let it|no|not|on the|out in|out of|pull your|push the|seat|sit|the back|the shoulder|the wall|tip|toe|wall|weight|wrist|your|your elbow|your shoulder|your toe',
      ],
      [-0.4, 'back of|big|down|feel|its|lean|of|of your|on|push|roll|the|to your|you come'],
      [-0.5, 'dont|feet|shoulder|soft|stand|straighten|tall'],
      [-0.6, 'behind|hand|step'],
      [-0.7, 'forward'],
      [-0.8, 'elbow'],
    ],
  ],
  [
    'load-over-face',
    -0.4,
    [
      [0.9, 'lie'],
      [0.7, 'bell|bent|blade|knee bent|shoulder blade'],
      [0.6, 'touch|your chest'],
      [0.5, 'bounce|into the|it up|lie down|over your|press|wrist'],
      [0.4, 'bell in|bench|bottom of|come down|degree|dont bounce|off your|out like|stacked|the bar|wrist stacked'],
      [
        0.3,
        'bar|breastbone|down to|drive|each hand|elbow about|eye under|feet flat|feet into|in each|it come|it to|not out|press it|the bell|the elbow|thumb|touch the|when you|wrist straight|you push|your breastbone|your eye|yourself',
      ],
      [
        0.2,
        'a bell|about forty|and go|and no|and press|and push|arm straight|back pocket|back up|behind|blade in|bounce them|bring it|bum|bum stay|can|carpet|come|down till|drive your|each other|five|five degree|forty|forty five|go|ground|halfway|hand over|hovering|in the|it back|keep|kiss|kiss the|knuckle|little|lower till|on the|on to|out at|planted|push yourself|rest|roll on|roll to|second down|second to|shoulder down|side|slow down|so|stacked over|stop|stuck|the bench|the carpet|the ground|then|there a|till the|under|way|you can|your face',
      ],
      [
        0.1,
        'an arrow|and a|are|arm out|arrow|at the|back with|bar to|bite|blow it|dont let|dumb|dumb bell|elbow are|elbow at|elbow in|elbow out|end|every time|exhale|feet planted|first|flapping|get|goe|heavy on|heel into|i|in by|it if|its not|knee|let the|lie on|lighter|like an|line|lower them|meant|neck|of you|on every|over elbow|pinch your|pinned|place|punch|put|quick up|rib and|same place|shirt|side to|sit|snappy|so you|squash|squash your|stay heavy|stop when|that|they go|think|think of|thumb on|thumb right|tip it|touche|touching|up on|want to|weight|where its|whole time|with both|you roll|youll|your hand|youre stuck|yourself away',
      ],
      [
        -0.1,
        'a hand|ahead|air|all the|along|an inch|and stand|and then|ankle|apart|arch|as far|as if|as the|as your|back and|back to|be|behind the|bend your|big|big toe|body|breath out|breathe into|breathing|button|by the|chair|curl|do|dont hold|dont lean|door|down and|down the|draw|elbow under|enough|far as|feel the|feet hip|feet under|finger|floor away|good|have|higher|home|if you|inch|inside|into your|its a|its the|keep breathing|knee to|knee up|know|lean back|let go|lift your|like there|make|me|of a|one foot|only as|onto|out in|outside|point|pull your|put it|quiet|reach|seat|shin|short|should|slower than|slowly|sore|squeeze your|stand tall|stand up|start|swing|than your|the band|the chair|the end|the hand|the heel|the leg|the side|the thigh|the toe|theyre|this|tight|too|top of|toward the|toward your|tummy|up at|waist|where|wider|with it|you come|you dont|you want|your belly|your bottom|your breath|your chin|your leg|your low|your nose|your thigh',
      ],
      [
        -0.2,
        'a bit|again|an|and let|and the|at your|away|back down|band|before you|count|drop|far|feel it|from the|got|hang|head|high|hip width|hold it|if it|if the|look at|middle|nose|of it|off the|on a|other|out of|push the|see|slide|slow|slower|small|soft|take|the hip|the middle|the ring|the shoulder|the wall|thigh|through the|turn|up to|wide|width|your head|your toe',
      ],
      [
        -0.3,
        'all|as|at|back|before|belly|bend|breathe|chin|come up|down|feet|for|front of|going|hand|hand on|heel|height|if your|in|in front|just|lean|let your|lift|like|like youre|long|look|no|of|only|out|out on|pull|ring|squeeze|tall|than|the front|the other|the top|there|through|to|toward|under your|up|walk|wall|you|your bum|youve',
      ],
      [
        -0.4,
        'a|and|breath|dont|feel|foot|forward|hold|if|it|its|leg|let|let it|of the|on|one|step|the|the knee|top|your|your hip|your knee|youre',
      ],
      [-0.5, 'front|toe'],
      [-0.6, 'hip'],
    ],
  ],
  [
    'lunge',
    -0.5,
    [
      [1.3, 'back knee'],
      [1.2, 'front heel'],
      [1.1, 'front knee'],
      [0.9, 'the front'],
      [0.7, 'back hip|step|straight down'],
      [
        0.5,
        'bell|big step|feet together|front|front foot|front leg|knee down|of that|one knee|step one|that back|tuck|up through',
      ],
      [
        0.4,
        'eye up|foot forward|heel up|if it|it cave|lace|landing|on each|one foot|other leg|pelvis|push off|right foot|step that|through the|tuck the|upright',
      ],
      [
        0.3,
        'a mat|after|and come|arch your|at your|bell at|both knee|both side|cave|chest tall|dont step|down on|drop|drop the|front thigh|grass|hop|in as|inward|knee goe|knee hover|knee stop|lace down|land|little breath|middle toe|off the|on hip|push up|shallow|shift|steady|step back|stop a|that hip|the back|the grass|the same|there no|toward the|tuck your|under and|your front',
      ],
      [
        0.2,
        'a beat|a fist|a lift|above the|and not|arm to|as low|asking|back and|back foot|back heel|back into|back up|bang|bell in|bladder|breath out|bus|buttock|chest up|clear|clear the|come back|crank your|cushion under|dive|dont get|dont haul|dont tip|downstair|drift|drift forward|drive|drive up|drop straight|dumb|dumb bell|each side|elbow toward|feel the|feet on|fist off|foot|foot in|front shin|go as|goe in|happy|headlight|heel heavy|help|hip and|hover|in line|inch off|into that|it dive|it doesnt|it let|it nip|it till|jumper|just clear|knee a|knee that|knee toward|land soft|left|ligament|line with|load|long step|long stride|low as|more|nip|nip in|off and|on one|open the|outside your|pay|pinch at|point where|press up|push through|quick and|rep|right hand|ring at|rope|sideway|sink|squeeze the|start in|step it|step out|stride|tail|tail under|take a|take your|that elbow|that foot|that your|the fence|then push|tightrope|to catch|to one|under shoulder|wait at|what|what you|you come|you open|you sit|your bladder|your right|your time|youre after',
      ],
      [
        0.1,
        'a long|a stretch|a tightrope|an inch|arent|at each|back leg|cheek|cheek of|come home|could|deep as|dive in|foot and|home|into a|knee or|knee point|kneeling|kneeling side|lean in|long spine|next to|not to|onto the|shove off|sink the|the kneecap|the kneeling|the left|the toe|till there|under it|wait|you could|you stand',
      ],
      [
        -0.1,
        'against|all the|and back|and bring|and your|apart|are|armpit|as high|as they|as your|at a|away from|back off|bar|belly|below|belt|bench|bend your|bit|blade|body|bone|both hand|bouncing|bring it|button|chest open|come down|count|curl|dont hold|dont lean|dont roll|door|down and|down the|down to|draw|elbow under|end|end of|feet flat|fingertip|flat on|for|get|gone|grab|grip|hard|head|heavy|heel down|height|high as|higher|holding|if there|if youre|it come|it down|it out|it up|knee together|knee up|last|lean back|leave|leg long|leg out|let the|level with|lift|lift the|like a|lock|look at|loop|lower it|middle of|move|moving|neck|no bouncing|no higher|nobody|not your|now|of|of a|of you|off your|on the|opposite|other knee|out like|out of|palm|past|press the|pull your|push your|put it|quick|rib|shoulder blade|side on|sit down|sit up|slower|slowly|soft knee|sort|sort of|squeeze|squeeze your|still|stuck|swing|than your|the air|the band|the bench|the bottom|the end|the rail|the rib|the side|the top|they|theyre|think|think of|three|thumb|too|touch|turn out|under|up to|well|when youre|wide|wider than|width|without|you get|you like|your arm|your bottom|your breath|your bum|your chest|your chin|your ear|your elbow|your hand|your neck|your nose|your rib|your shin|your toe|youve',
      ],
      [
        -0.2,
        'a bit|across|across the|again|air|all|along|and lean|arm out|as if|at|back down|back of|band|be|behind the|big toe|blow|blow out|box|breathing|bring the|but|calf|chin|coming|down|ear|eye on|feet|float|foot off|forearm|four|gently|good|got|hang|i|if|if its|in your|isnt|knee and|knee soft|lean|let them|level|lift your|loose|lower|no|on to|out|out in|out over|pick|pointing|press|put|rock|see|shin|shin up|short|should be|slide|slow as|small|somebody|standing|the arm|the breath|the calf|the chair|the chest|the elbow|the foot|the knee|the leg|the mat|the other|the shoulder|the way|till you|to|to the|to your|top|tummy|under your|up|up on|up tall|want to|when|you feel|your|your feet|your finger|your head|your leg|youre',
      ],
      [
        -0.3,
        'and|and let|at the|bend the|bottom|breathe|bring|bum|dont|elbow|face|first|flat|from the|hand|high|in front|it|its|let|let your|long breath|look|not|of your|on your|other|reach|round|seat|should|sigh|sit|slow|so|the seat|the wall|them|whole|wrist|you|your heel|your hip|your shoulder',
      ],
      [-0.4, 'ankle|arm|away|bend|if you|like|nose|on it|pull|roll|than|the thigh|walk|wall|whole foot'],
      [-0.5, 'from|the|turn'],
      [-0.6, 'shoulder'],
    ],
  ],
  [
    'overhead',
    -0.3,
    [
      [1, 'overhead|ring|the box'],
      [0.9, 'box'],
      [0.8, 'move|rib'],
      [0.7, 'back down|before|ear|head|it up'],
      [
        0.6,
        'dip|dont drop|drop off|hang|kneel|let your|out at|rib stay|ring high|shoulder catch|then pull|up there|your arm',
      ],
      [
        0.5,
        'a shoulder|arm straight|bending|its the|knee up|on a|pinch|press it|punch|rib in|the hand|the shoulder|them back|tuck your|upside|upside down|your head',
      ],
      [
        0.4,
        'a lift|arm go|arm up|armpit|as far|back dip|bar|been|bell|bum|catch|cause|come back|curl your|dont bend|dont go|down to|draw|elbow to|ever|feet a|fine|go long|go overhead|hand shoulder|head through|hip up|honey|if that|in front|it pinch|knee come|no swinging|or it|past|pinch on|rib down|rib pop|rib tucked|send|slide|slow as|swinging|tail|tail under|than your|the way|then let|theyre|whip|window|with it|your ear|your shoulder|your tail|youve blood',
      ],
      [
        0.3,
        'a bar|a little|along|and breathe|and go|and let|and pull|and rest|and send|are bending|as it|asleep|at your|baby asleep|back from|back pocket|backward|banana|bell at|belt|bending the|bite|blade down|block|blow|box under|buckle|can get|ceiling|chin over|coat|dont fold|dont jump|dont lean|drop|every time|facing in|far as|feel your|finish|finished|flat on|fold at|full|go up|goe up|going|going up|good|got a|grip|hand over|hang like|hip height|horn|if a|if youve|into a|into your|it by|it goe|its socket|just let|knee as|let go|lift with|limbo|locked|long back|lower than|lower them|no kicking|on top|operated on|or youve|out of|out on|pedal|pop|pull back|send your|shaking|shoulder grumble|shoulder pinch|shoulder width|squeeze your|stand on|step up|straight|straight leg|strap|that your|the armpit|the bar|the ceiling|the chin|the horn|the muscle|the weight|the whole|the window|there and|they come|think of|thumb round|to where|tonight|too|too far|tuck|tucked in|turn it|up a|up past|up the|up till|up to|up toward|when its|when youre|without the|you feel|you reach|you roll|your fingertip|youve|youve had',
      ],
      [
        0.2,
        'a baby|a banana|a coat|a dinner|a flat|a long|a mat|a towel|along the|along with|an ankle|and back|and get|and pick|and roll|and slide|and you|and your|arch your|are straight|arm by|arm dead|as near|as treacle|at it|back between|back that|back the|bad shoulder|before each|before it|belt buckle|bit in|blow on|both knee|both shoulder|bring|bring it|catch or|cheating|check its|come in|coming off|crane|crane your|dead|dead straight|dinner plate|dont crane|down a|down there|drag it|drag them|drive your|easy breathing|elbow down|elbow on|elbow point|em|everything|fall|far|feet are|feet first|feet go|find the|fist under|flat back|folded|get back|get you|getting|go to|going out|grip the|grumble|had|had it|hand and|hand at|heel a|heel into|heel of|hip under|home|however|hum|imagine|in going|it between|it drop|it fall|it from|it into|it past|it through|kicking|knuckle|leave|lift up|lock it|long arm|longer|loud|machine|mat with|melt|muscle|nip|no leaning|nobody|of a|of two|only as|only to|onto the|operated|or|out going|palm facing|past the|past your|percent|pinch up|pole|press|press up|putting|ramp|reach|reset|rest|rib dont|ring up|roll on|roll your|round your|same side|seat and|see the|shelf|shorter|shoulder dont|shoulder knuckle|shoulder stay|shoulder that|sign|sit this|sit your|sitting on|size|size of|skiing|slide down|slide them|slide up|snap it|socket|something|stay long|stay straight|step off|stop at|stop where|tailbone|take|take it|that cheating|that up|the arm|the band|the bell|the block|the desk|the good|the size|them up|thigh to|thirty|thirty degree|this out|three second|throw|thumb on|tipping over|to hip|to long|tuck the|tucked|under it|until your|up like|want it|way out|way you|went|will|with a|with no|with one|without|you could|you open|your armpit|your lower|youre at|youre being|youre finished|youre putting|yourself back',
      ],
      [
        0.1,
        'a bad|a bell|a pinch|a scarecrow|a slant|a window|about it|all of|arm are|arm on|as they|at eye|back flat|back toward|before you|belly and|blow as|bring them|bum and|came|cant get|care|circle|collarbone|come through|concrete|cranky|dinner|dont care|dont force|dont turn|down away|down in|draw the|draw your|drop it|each one|elbow are|end up|eye level|feet off|find|foot length|for this|force|go all|go out|goe behind|going over|half a|hand just|hand slide|head stay|heard|heart|heel touching|in breath|in slow|it close|it hurt|it like|it operated|kneeling|kneeling side|leaning back|leave it|leave these|left arm|little bit|lower back|no good|on both|or you|or youll|plate on|ponytail|reach like|really|road|roll backward|roll the|scarecrow|shoulder down|slant|slide back|slump|so come|start again|stay in|step away|stool|take hold|that shoulder|the kneeling|the neck|the spine|they go|thumb|thumb wrapped|top shelf|up out|washing|way back|where the|whole time|wrist straight|your heart|youve got',
      ],
      [
        -0.1,
        'a tiny|a touch|across the|across your|and a|and it|and lazy|and lean|and look|and no|and shoulder|are just|arm and|as a|as low|as well|at chest|at shoulder|at you|back foot|ball|ball of|band round|behind the|belly|below|between your|blade like|body like|both|both hand|both way|breathing|build|bus|can keep|cheek|chest forward|chest height|chest open|chest proud|chin tucked|circle with|closer|coming up|couple|crank|cross|dive|dont poke|dont shrug|dont twist|dont want|dont yank|down the|drag your|draw it|dug|dug in|ear to|edge|edge of|elbow at|elbow back|elbow under|elbow wide|else|face|feet together|few|five degree|foot in|foot out|for three|forearm|forearm up|front knee|further|goe down|goe out|grab|hammock|hand behind|hand flat|hand loose|hand off|hand palm|hand to|handle|heel to|heel up|hinge|hip back|hip dont|hip width|hold on|hug|in a|inch off|into it|is|isnt a|it and|it open|it ping|it start|it touche|it with|just a|kiss|knee are|knee bent|knee dont|knee down|knee over|knee stay|knee wide|lean in|lean on|left|leg away|leg goe|leg together|length|level|lie down|like somebody|little step|little toe|loop|low as|mat|need to|no higher|no more|not on|off your|one heel|one leg|one up|opposite arm|other leg|other one|out wide|outside|pad|pain|pair|pause|pinned to|plank|planted|please|poke your|push off|push the|push through|quick step|reach one|ready|rib to|right back|right down|room|run|same as|say|seat|sharp breath|shoulder away|shoulder back|side on|side to|sip|sip of|sit back|sit straight|sit tall|sit up|soft|soft elbow|soup|speed|spread|stacked|stand tall|step|stirring|stop when|stuck|swing|swing it|swing the|swing your|tap|that back|the ball|the big|the carpet|the chair|the first|the handle|the heel|the hip|the kneecap|the outside|the rail|the room|the shin|the toe|the wall|them out|then go|then roll|thin|this|this time|thumb up|till its|till youre|tingle|tingling|tiny bit|to lift|to shoulder|toe up|touch the|track|under hip|under shoulder|up again|up in|up off|up tall|wet|wherever|yank|you and|you know|you press|you pull|you think|you turn|youll go|your belly|your breastbone|your chest|your collar|your leg|your neck|your palm|your thumb|youre looking',
      ],
      [
        -0.2,
        'a beat|a bit|a tent|a time|a walnut|ache|after|an end|and come|and keep|and not|and stand|are|arent|arm hanging|arm to|as if|as wide|back heel|back knee|be|beat|because|before the|behind your|big toe|board|both leg|bottom of|bounce|breathe|but|carpet|chair|change|chest and|chest up|come to|cramp|curl up|curtain|deep|do it|dont|dont haul|dont roll|dont tip|down as|down between|down by|down till|each hand|elbow and|elbow dont|elbow glued|elbow go|elbow out|elbow pinned|end in|eye|facing the|feet back|feet flat|feet under|fingertip behind|flop|foot off|for one|forty|forty five|forward a|forward to|front heel|gently|glued|going down|hamstring|hand are|hand under|hanging|haul on|head last|head up|hear|heel and|high blood|higher|hold your|home and|if you|in|in one|in through|in your|inside of|into the|it go|it out|its coming|jaw|join|just|just the|knee soft|kneecap|knock|knot|land|lap|lazy|lean|leg out|letting|letting go|lift it|lift the|lifting|light|like the|line|low|lower it|make it|middle|mind|moving|need|nick|not|of|of them|off|off a|on|on that|one arm|other knee|out|out long|out when|park|pencil between|people|piece|pillow|ping|pinned|pointing at|poke|poking|pretend|puff|pull the|pulled|pulling|quick|rail|reach the|reach your|right arm|ring come|rock|rolling|round to|sagging|shake|sharp|shin and|shirt|should|should feel|shoulder and|shoulder are|shoulder height|shoulder up|shove|side of|sit|sit on|small|small step|smaller|somebody|spot|squeeze at|squeeze it|stand|standing|step through|stop and|straight back|straight line|straight out|string|swap|that a|that how|that the|the air|the back|the bend|the foot|the forearm|the leg|the light|the middle|the one|the opposite|the second|the side|them in|then press|then stand|there no|they drop|three|three count|through your|tiny|to about|to lower|to meet|toe|touch|touche|touche your|toward your|tummy|turn round|under the|underneath|until the|up as|up for|upright|waist|wait|walking|wall|walnut|watch|way down|were|what|when you|who|wide as|wing|you by|you push|you should|your blood|your bottom|your breath|your fist|your lap|your right|your shirt|your time|youre leaning|youre on|youve a|youve been',
      ],
      [
        -0.3,
        'again|ahead|and|and push|and the|and up|as your|back start|back till|belly button|bench|between|bottom|bouncing|button|doesnt|dont bounce|dont let|down for|first|flat|foot|for|haul|head back|heel|hop|how|if its|in as|in each|it come|its a|keep breathing|knee|leg up|let the|lie|like an|look at|loose|lower|me|meet|no bouncing|opposite|out to|pointing|push|put it|ring to|short|sigh|sigh out|stand up|tall|tent|than you|the|the bench|the door|the floor|the front|the seat|thigh|those|till it|to you|toward|turn your|until|walk your|you|you lift|you stop|your finger|your hip|your shin|your waist|youre',
      ],
      [
        -0.4,
        'across|air|apart|big|blade|body|bone|breath|breathe into|down and|each|floor|heavy|leg long|let it|level with|like youre|off the|other|palm up|shoulder blade|sore|the nose|the thigh|together|turn|your|your side',
      ],
      [-0.5, 'door|down your|forward|hip|one hand|the mat|the other|till|to|walk|your elbow'],
      [-0.6, 'leg|look|of your|on your|one|right|shin|side'],
      [-0.7, 'chest'],
    ],
  ],
  [
    'prone',
    -0.4,
    [
      [0.9, 'wrist'],
      [0.7, 'ahead|forearm|forehead|head back|low back|tent'],
      [0.6, 'a hand|a tent|back pinch|mat|one long|pinch|the mat|then the|your thumb'],
      [
        0.5,
        'bum|chest and|down between|elbow toward|elbow under|faster|forehead down|forehead on|hand in|hand off|hand under|knee down|rush|slide the|squeeze your|start in|the ring|the wrist|your low|your wrist',
      ],
      [
        0.4,
        'and push|angle|bend one|between the|bum down|chest down|chest to|dont rush|drifting back|elbow|elbow in|feet back|feet wide|float up|forearm and|go down|going down|hear|hip dont|if you|in as|in by|it away|not a|one straight|press|press up|sore|there no|theyre|those|you feel|you push',
      ],
      [
        0.3,
        'a slant|about a|ahead of|and fold|and keep|and out|and quick|and then|arm out|back leg|belly|chest|closing|closing a|crane|dont crane|dont twist|drawing|drawing a|drifting|everything|eye on|fist off|flex|flex the|flip|float|floor with|floppy|go as|going|grab at|hand by|hand up|have a|hold the|hot|if its|in a|in on|its a|its like|knee at|knee come|knee in|leaning on|leg long|level with|lift up|line|little quick|long line|low|nip|nip in|no sagging|not high|of a|other one|out like|over on|pinch in|push it|put it|right down|ring down|round your|sagging|screw|shoulder over|slant|slide|slipper|something|squash the|squeeze|steady|step that|strap|tea on|than the|that all|the one|the towel|then press|thumb out|to a|to see|toe just|towel|twist|until youre|up behind|wait|wait at|wider|wrist sore|wrist stay|you have|your belly|your front|youre a',
      ],
      [
        0.2,
        'a dog|a duck|a foot|a hip|a pinch|a right|a ring|a tabletop|a wet|a wrist|and drag|and wide|and your|any|arm goe|arm to|as long|at all|at an|at each|away|away behind|back at|back start|back until|board|body like|book|breathe normally|bring them|bring your|bus|butt|can hear|cant|chest a|chest forward|come forward|come out|could|crank your|creeping|curtain|doesnt go|dont bend|dont throw|drift out|drop your|duck|dumb|dumb bell|each breath|elbow point|elbow to|eye a|feet stay|flaring|foot up|for four|for the|forearm down|forearm flat|forward and|forward on|forward to|from you|front foot|get a|get hurt|go away|go up|has|have to|heel to|heel toward|hip bone|hip stay|in and|in for|in it|instead|it low|it melt|its about|kick|like somebody|little sip|long as|longer|look a|loud|lower your|make one|normally|not out|on each|one arm|one elbow|open the|or the|out for|out through|outside your|pinch at|pop up|pretend|pull your|pulled|push the|reach for|reach your|right angle|right foot|right hand|ring to|round one|rush it|sagging in|same place|save|see|skate|slapping|small and|small breath|smooth|so the|somebody|square|squeeze everything|start|still there|stretched|swap|tabletop|tea|that elbow|that foot|that not|that side|the cheek|the elbow|the face|the hand|the left|the low|the right|them coming|throw your|to catch|to heel|to one|tummy|turn round|twisting|under the|up together|upside|upside down|way through|wet towel|which|wider than|with them|wrist are|wrist or|you come|you go|you open|your blood|your bum|your forearm|your hand|your right|youre after|youre going|youre leaning',
      ],
      [
        0.1,
        'a few|a fist|a stretch|and feet|and not|and shove|as wide|away till|balance|body in|breastbone|brick|bum before|chest up|crank|dont flare|dont hang|ear to|few|flapping|further|hang off|head up|heard|in going|in one|just wider|kick it|knuckle|lift and|no shrugging|not behind|not to|one piece|piece|plank|push up|roll over|sag|screw your|shove|spread|spread the|squeeze the|start to|tap the|than your|the chest|the forearm|the thumb|then let|theyre not|thumb|toe to|toe tucked|toward your|trouble|under shoulder|water|wide as|wing|you lift|you press|your butt|your knuckle',
      ],
      [
        -0.1,
        'a lift|a straight|above the|against|an|and do|and its|and slow|and stand|and step|apart|arch your|arm go|arm up|at shoulder|at the|back flat|back foot|back knee|back on|backward|be|beat|behind|bell|bell in|below|below the|big toe|both feet|both hand|bounce|bouncing|breath|breathe into|by the|cat|chest open|circle|clench your|click|coffee|count|dont force|dont roll|dont shrug|dont tip|door|either|even|face|fall|far|feet in|feet on|fist or|float it|follow|foot on|force|forearm up|front knee|get it|go long|grass|hamstring|hand to|heavy on|heel and|heel down|heel up|hip back|hip width|hold it|hook|in through|is|it across|it like|it out|itll|its not|just|knee and|knee over|knee soft|knee to|knee wide|know|leg goe|let go|let the|light|line from|long on|low and|make a|middle of|near|nice and|no bouncing|no higher|not in|not the|on top|one leg|or your|other leg|paint|palm up|past the|people|pick|pocket|pointing|post|push off|push through|ring at|rolling|round the|sat|send|short|should feel|shoulder width|shrug|side on|side to|sip the|sit back|sit down|smaller|soft knee|spot|stand on|stand tall|standing|stay|stay there|step back|step through|step up|stop a|stop there|straight out|stuck|tail|tailbone|the bottom|the calf|the chair|the foot|the front|the grass|the kneecap|the lift|the outside|the push|the seat|the whole|the worktop|three|till it|to get|to side|touch|treacle|up a|up over|up the|up there|want to|when youre|whole foot|with a|worktop|yank|you are|you stand|your fist|your hip|your jaw|your lower|your spine|your thigh|your waist',
      ],
      [
        -0.2,
        'a banana|a bit|a wall|about forty|above|across|across the|air|all the|an inch|and dont|and down|and lower|and round|arch|as an|as high|as they|at your|away with|back in|back stay|back with|ball of|belt|bend the|bending|bit|blade|blow|bone|both|box|calf|clench|dead|degree|do|do the|doing|dont arch|dont clench|dont go|dont lean|drive the|easy|elbow stay|empty|enough|every|feet a|feet under|five degree|flat on|foot|for three|for two|forward|forward till|from it|front of|full|gently|get|give|glued|go in|got|grip|grumbling|had|hand behind|hand on|hard|heel about|high as|higher|hinge|hip till|home|hug|i want|if that|if youre|if youve|imagine|inch|inch up|into your|it a|it and|it back|it come|it on|jaw|jump|just the|knee a|knee are|knee bent|kneecap|land on|last|lead with|leave|leg out|leg up|lie back|lock|lower back|lower it|make fist|mat and|next one|nice|no swinging|now|of it|of them|off a|off it|opposite|or|other foot|out in|out on|out when|over your|overhead|palm facing|past your|peel|plate|pointed|poking|pull the|push them|put a|quiet feet|rib down|room|round up|sand|seat|sharp|shoe|shorten|shoulder and|shoulder blade|shoulder down|shoulder height|shoulder pinch|shoulder up|slow as|slowly|speed|spine|stack|stand up|stiff|still|straight back|straight up|string|swimming|switch|that the|the ball|the band|the bell|the box|the leg|the next|the opposite|the thigh|them up|there a|this|three second|through your|till the|tingle|to hip|toe pointed|toe up|too|too far|toward the|turn|under you|up and|up toward|up your|watch|when you|while|whole|width|window|with the|working|you can|you should|youll|your bottom|your eye|your face|your forehead|your heel|your leg|your rib|your side|yourself',
      ],
      [
        -0.3,
        'and|and float|arm are|arm by|as|at chest|back to|ball|banana|band|bar|behind your|bend|bend your|bottom|bring it|ceiling|chair|come back|come off|curl|dont|drive|each hand|facing|feel the|feet flat|feet stacked|find|for|from the|hand flat|heavy|into|it|it up|its|its the|land|lean back|length|let|let it|lift your|like there|like youre|nose|of|on|open|or it|out and|over the|press your|roll|side|sigh|slower|soft|sort|sort of|swing|swinging|take|the arm|the ceiling|the heel|they|through the|till|under hip|waist|want|weight|with|wrist straight|you pull|your back|your ear|your knee|your nose',
      ],
      [
        -0.4,
        'and let|back into|bent|breathe out|chest height|heel|height|if the|knee under|let them|nobody|of your|on it|one foot|over|rib|should|stacked|stop|straight|that|the|the wall|thigh|through|tip|wall|when',
      ],
      [-0.5, 'big|feel|flat|past|stand|tall'],
      [-0.6, 'lean|sit|slow|there'],
      [-0.8, 'knee|step'],
    ],
  ],
  [
    'pull',
    -0.3,
    [
      [1, 'palm|the pull'],
      [0.9, 'pull|you pull'],
      [0.7, 'blade|elbow'],
      [0.6, 'belly button|button|chin over|long neck|pull your|shoulder blade|to your|your elbow'],
      [0.5, 'all the|arm long|hanging|into your|neck|pocket|pull the|you open|your rib'],
      [
        0.4,
        'again|at chest|bending|bottom rib|breathe out|come in|dont twist|elbow pinned|facing|high|its coming|let it|long|lower it|out on|palm facing|palm up|partner|past your|put|rib|ring|shoulder down|squeeze at|straight at|the arm|the ring|tiny|your eye|your side',
      ],
      [
        0.3,
        'a walnut|and lower|and wide|at it|back a|back pocket|band|bend your|blade down|both feet|bring the|brush|chest height|chin|coming|count|curl|curtain|draw your|each|each hand|either|either side|elbow back|elbow brush|elbow glued|elbow high|elbow to|elbow up|end in|feel it|feet in|it come|knee and|knot|lean back|let yourself|long band|look straight|looking at|muscle|nick|not in|not up|open|opening|palm forward|past|pinned|pull it|round both|shoulder and|shrug|shut|slower|snap|squeeze|table|the band|the blade|think of|thumb|thumb pointing|twist|walnut|way back|wrist|wrist straight|you at|your partner',
      ],
      [
        0.2,
        'a beat|a hot|a pencil|a tray|and curl|and hand|and hang|and let|and youre|apart|are bending|are only|as wide|as your|at eye|at you|back long|back past|back start|bar at|beat|because|because if|before|before you|bench|bending the|box under|check|come off|come to|cracking|curl it|dont curl|dont drop|dont shrug|dont swing|down onto|drag it|dumb|dumb bell|ease it|elbow stay|elbow stop|eye level|facing the|for nick|for one|for two|get there|glued|hand as|hand finish|hand to|hang|head height|heaving|heel on|high and|hold your|in each|it a|it all|it apart|it into|it open|it round|it to|it touche|its between|its too|just a|just in|just past|keep the|keep your|let go|let them|letting|letting go|lifting|little wider|live|long arm|look along|looking|lower all|movement|never let|no heaving|no swinging|numb|of a|of you|open the|over till|palm down|palm to|pause|pencil|pencil between|pinch on|pinching|ping|pinned to|proud|pull till|pulled|put the|rep|ring high|ring to|round one|seam|shut it|sing|skim|square|squeeze the|start|start to|stay straight|step away|step down|straight arm|the bench|the door|the elbow|the rib|the wrist|then let|then lower|think|this one|tin|to long|top like|top of|touche your|tray|trust|tucked in|tug|up high|up quick|up to|wide as|with them|wrapped|wrist flat|you let|your belly|your eyebrow|your fist|your forehead|your knuckle|your pocket|your waist|your wrist|youre cracking',
      ],
      [
        0.1,
        'a slow|a tug|about to|an end|arm are|at each|back till|band out|bar to|bell up|big step|breathe like|brush your|chest get|cracking a|curling|dead straight|dont heave|dont rock|down away|down first|down in|down out|down to|draw|drop the|elbow in|elbow just|elbow soft|eyebrow|facing you|feet go|forward from|give|go to|hand about|hand apart|hand palm|heave|hinge|hook|it float|it for|it like|it slide|it toward|jerking|lean on|lift with|light|long again|long like|neck long|one and|open like|or its|out at|out going|out when|part|row|shoulder or|shoulder sore|shrug it|shrugging|slower than|snatching|standing up|stay in|swinging|the bottom|the forearm|the muscle|the neck|three count|tiptoe|to straight|too heavy|touche|twist open|weight down|you lift|youre holding|youre leaning|youre opening',
      ],
      [
        -0.1,
        'a coat|a fist|a tent|above the|and bring|and get|and press|and stand|and the|are just|as a|as if|back foot|ball|ball of|banana|be|behind the|behind you|behind your|bell by|below|below the|big toe|blow it|breathe low|bring|bring your|but|by the|car|chest and|coat|cushion|do|dont bounce|dont roll|dont tip|everything|feet flat|feet hip|feet off|fine|fist|flat on|floor|floor away|follow|for the|forearm up|front knee|halfway|hamstring|hand at|hand behind|hand under|heel down|heel up|hip and|hip width|hop|if the|if there|if youre|in a|in through|inside of|into it|is|it straight|itll|ive seen|jaw|jug|knee down|knee to|kneecap|leg long|length|lift the|little sip|lock|lower them|moving|no lower|no more|on a|on top|one foot|onto|onto your|opposite|or your|other knee|other one|overhead|pace|pad|pain|pillow|pinch in|please|point|pouring|push it|push the|push up|rack|rail|rolling|seen|shelf|shoulder are|shove|sit back|sky|slide them|slow breath|small breath|small step|stop there|straight down|than the|the air|the chin|the edge|the floor|the foot|the head|the heel|the hip|the rack|the rail|the room|the seat|the sky|the strap|them down|three second|throw|to come|toe up|toward|toward the|turn the|up at|up till|up your|upright|weight on|where the|whole foot|you turn|your foot|your forearm|your knee|your low|your right|your tail|youre pouring|youve gone|youve got',
      ],
      [
        -0.2,
        'a|a bit|a hand|against|air|and back|and just|and lift|and push|and slow|arch your|arm up|at hip|back and|back to|backward|belt|big|big slow|bit|bite|bone|bounce|breath out|bring them|came|cant|catch|cheek|chest open|circle|come down|come out|crank|deeper|degree|dinner|dont arch|dont crank|dont let|dont stick|down between|down the|down your|drive|drop off|dropping|easy|edge|elbow at|elbow under|fall|fast|fingertip|for it|forward a|from it|go up|grow|hand|hand away|hand in|hand on|hand over|handle|head and|heavy|height and|high as|hip height|home|how|in and|in going|in on|in one|in the|into|isnt|it hurt|it isnt|it pinch|it should|ive|keep breathing|keep it|knee up|land|leave|left|leg up|let the|like the|low back|next|nobody|not a|not out|off|on them|on to|only as|or|other|out and|pop|puff|pushing|rib down|rib stay|ring a|room|round your|second|second to|sharp|shin|short|side on|sigh out|sip|sit|somebody|stacked|stay down|stay on|step|step through|stick|stick your|straight up|straighten|tail|tent|that|the other|the same|the side|the thigh|there|theyre|thumb round|tingle|tired|to where|too far|touching|towel|turn your|under your|up|up over|up the|want to|warm|wet|where|whole|wider|wing|wrist stacked|you dont|you want|your breastbone|your heel',
      ],
      [
        -0.3,
        'across|and|ankle|as they|both hand|breathe|breathe in|breathe into|breathing|dont|dont lean|far|feel your|finger|forearm|get|grip|if|if youve|lie|lift your|line|little|loose|not|of it|on|one|out|out like|over your|peel|plate|press it|quick|shoulder up|small|squeeze your|straight out|the|the back|the front|the nose|the push|the wall|thigh|through the|toe|under the|up there|width|you like|you push|your|your bum|your leg|your toe|youre a',
      ],
      [
        -0.4,
        'away|ceiling|goe|head|into the|knee bent|lift|low|nose|off the|punch|roll|sigh|stay|the ceiling|the knee|the mat|together|under|wall|want|youve',
      ],
      [-0.5, 'behind|heel|hip|let your|mat|on your|tall'],
      [-0.6, 'breath|bum|foot|press|through|turn'],
      [-0.7, 'your head'],
      [-0.8, 'knee|leg'],
      [-1, 'push'],
    ],
  ],
  [
    'push',
    -0.3,
    [
      [1.3, 'you push'],
      [1.2, 'press'],
      [0.9, 'push'],
      [0.8, 'press it'],
      [0.7, 'it up|overhead|punch|wrist'],
      [0.6, 'both hand|bring|hand in|into a|it away|it straight|not out|pocket|push it|touch'],
      [
        0.5,
        'and just|and press|band|chest to|down till|go overhead|go up|it back|lock|out like|straight out|the push|the window|tight|till your|wrist stacked|you press',
      ],
      [
        0.4,
        'a fist|and push|and shove|arm locked|at a|at hip|at your|back to|back under|bend|bit in|bring them|by your|come back|deeper|dont bend|down between|elbow a|elbow on|five|head through|hip height|in slow|knee bent|knuckle|like its|lock your|move|one in|over your|plate|push away|pushing|quick up|rib down|shelf|side of|smooth|squeeze the|squeeze your|strap|the pad|then bring|to a|to the|up there|want to|your arm|your forearm|your nose',
      ],
      [
        0.3,
        'a chicken|a shoulder|a slant|a step|a time|a towel|air|and jump|angle|any|away like|back pocket|back up|backward|behind it|bell at|bench|breastbone|breath in|bring it|chest|chest down|chicken|deep|dip|dumb|dumb bell|each other|elbow|elbow are|elbow go|end in|even|feet back|feet hip|feet wider|find|find a|finger over|finish|flat on|follow your|foot in|forward a|get it|going|going out|got a|hand off|hand straight|hard|i dont|it come|it hurt|jump|just hold|kiss|lead|leave the|let em|level|locked|look a|metre in|middle of|never|never let|next|no deeper|nose to|nothing|on them|one long|plank|press them|push down|push up|push your|put your|putting|ramp|rib stay|right angle|ring|ring down|ring in|save|shoulder that|shove it|slant|so|squeeze|stay level|step out|the air|the ceiling|the chin|the ear|the edge|the gap|the plate|the ring|then you|thumb out|till|to hear|toe pointing|top shelf|touch the|turn you|under the|walk about|wee|window|your face|your shoulder|your watch|your whole|youre putting',
      ],
      [
        0.2,
        'a car|a hand|a heavy|a lift|a metre|a right|a shelf|a small|a speed|a wee|a wrist|and bring|and get|and march|and you|and your|are at|are long|arm level|as deep|as wide|back for|back still|bad shoulder|band under|bar|bar to|bathroom|bathroom scale|bell by|belly sag|bend in|bend your|between the|bicep|big step|blow|body in|book on|bottom and|bottom of|bounce them|breath on|breathe in|breathing while|catch|ceiling|chin and|chin in|chin out|collarbone|deep as|degree|desk|dizzy|doesnt go|dont drag|dont go|dont lean|dont stop|dont want|down first|down to|dragging|drift out|ear|elbow at|elbow down|elbow out|elbow point|em|everybody|eye under|facing the|feel like|feet as|feet find|feet in|feet into|fill|fist|fist off|fist under|flaring|folding|forty|forty five|gap|getting|go till|going down|going up|ground|hand a|hand by|hand flat|hand just|hand width|head stay|heel of|hip dont|hip under|hold a|holding a|hop|hum|if a|if youve|in a|in by|in on|in one|in two|instead|ironing|ironing board|it get|it into|it out|it past|it slip|it there|its on|just in|just off|kiss the|kitchen|knee follow|knee not|lean forward|leave|level like|lie|lie down|lift them|like an|limbo|little sip|long and|lower till|mate|nearly|next to|now|off your|on to|on two|one at|onto one|or it|out behind|out sideway|out there|out up|over elbow|pad|paint|percent|plate on|post|press back|press up|quit|rib dont|ring a|ring out|roll in|scale|should feel|shoulder catch|shoulder knuckle|shoulder pinch|shove|sideway|sink into|sit right|sky|slip|slow and|slow down|small breath|so the|so you|soft feet|speed you|square|square to|stacked over|stand and|stay a|stay long|stay still|sticking|stop dead|straight|straight arm|straight back|straight up|take a|take three|tall as|taller|that doesnt|the band|the desk|the door|the ground|the paint|the shoulder|the sky|the strap|the upper|them back|then come|then drive|then press|tight to|till the|to face|to one|to turn|trailing|tray of|turn out|turn the|under it|up and|up in|up past|up till|up top|upper|upper arm|wardrobe|when your|which|whip|wide as|wider|wider than|wing|wobbly|wont|wood|wrist are|wrist straight|you back|you not|your breastbone|your ear|your elbow|your foot|your hand|your pocket|your thumb|your wrist|youre stuck|yourself|yourself away|youve had',
      ],
      [
        0.1,
        'a breath|a little|a tray|about forty|against your|an arrow|arm goe|arrow|at an|away from|back down|back in|band at|barking|behind you|belly tight|bite|blow it|body like|bum like|call|car|catch in|check that|chest proud|down in|ear and|elbow about|elbow dont|feet go|fist or|five degree|flapping|from you|get back|get stuck|get you|go back|had it|hand at|hand down|in at|in down|it catch|it operated|knee at|kneeling|kneeling side|leg together|little bit|long on|love|lower them|make fist|march|nearly straight|next one|of air|one end|one piece|other one|out of|out past|pinch|pointing forward|pole|push yourself|reach like|same side|screw|screw your|short step|shoulder are|sip of|so far|so your|stacked|start at|start in|stop at|stop there|support|swap the|than your|the bar|the bench|the elbow|the kneeling|the pocket|the thumb|them in|them up|then back|they go|theyll|theyre not|this one|tray|two count|until your|up onto|up until|way you|wrist or|wrist sore|wrist stay|you dont|you in|your palm|youre getting|youre showing|youve got',
      ],
      [
        -0.1,
        'a big|a bus|a hot|a long|a slow|a table|after it|and lean|and lift|and lower|and over|and sit|and straighten|and then|and up|and walk|and wide|as your|at shoulder|at you|back as|back heel|back of|back stay|below|big|big toe|bone|breathe normally|calf|chest away|clear|come to|cracking|cramp|crank|cup|curtain|done|dont crank|dont fold|dont force|dont shove|dont throw|dont twist|down slow|drop the|elbow bent|elbow to|feet forward|feet under|fine|finger tingle|for the|for three|force|forward and|four|front heel|gate|give|give it|go out|go round|grumbling|hand behind|haul|heavy|heel and|heel down|heel dug|heel stay|heel up|hip and|hip forward|hold it|hold your|honey|if its|into it|isnt|isnt a|it all|it apart|it till|its all|just a|keep breathing|knee a|knee and|knee soft|knee stay|knee to|knee together|knee up|knock|know|lean on|leg goe|let|let yourself|lift your|little toe|long as|look at|looking|loop|loose|melt|muscle|near|need to|no more|normally|not a|off and|one hand|one heel|one side|one up|only|open the|opening|other knee|out again|out for|out to|park|peel|pencil between|people|pick a|pillow|pinned to|point at|pointed|puff out|push through|quick step|rhythm|rocking|second on|shaking|short breath|should|shoulder up|sit up|sitting|slide|slide your|slow as|slow breath|slowly|so its|squeeze at|step back|step through|stiff|swing the|switch|take your|that leg|that where|the big|the breath|the chair|the forearm|the leg|the long|the nose|the other|the rib|the thigh|the towel|the weight|the whole|there a|there for|there no|these|they|they come|they dont|throw|till it|tiny|to feel|toe point|toe up|too far|touche your|tug before|turn away|turn round|under your|up as|up on|wait|washing|water|well|wet|what|when youre|whole time|wrist flat|you at|you come|you open|you rise|you stand|you think|youd|youll|your ankle|your body|your breath|your chair|your left|your shin|your spine|your toe',
      ],
      [
        -0.2,
        'a pencil|a straight|across|along|and if|and keep|and let|and not|and stand|are bending|arent|arm nearly|arm up|as a|as high|as if|away and|back|back knee|back start|back with|belly button|bending|between|blade|blood|blood pressure|bottom|bouncing|breathe into|build|bus|button|cat|cheating|chest open|circle|cross|doe|dont drop|dont heave|dont roll|dont swing|dont tip|dont yank|down for|down your|drag|drag it|draw your|drifting|drive up|ease it|edge of|elbow glued|elbow pinned|end of|exhale up|eye on|face the|facing front|far as|feel|feet a|feet stacked|fingertip|fire|flat like|foot|for a|for one|for two|forearm on|forearm up|from your|front knee|further|gently|glued|hamstring|hand stay|head and|heave|high as|higher than|hinge|hip back|hip till|if there|in to|inch off|it across|it in|it isnt|it open|it ping|it under|it with|its coming|its not|jaw|keep it|knee over|lace|land|lazy|lean|lean in|left|leg long|leg out|leg straight|leg up|level with|lift the|like|like the|long breath|look up|looking at|lot|lower all|making|mat|meet it|mind|moving|need|no higher|no swinging|not in|not just|one leg|onto|onto the|onto your|opposite|out on|out the|over|pain|palm down|palm facing|pencil|ping|press your|pressure|pull the|pulled|put|put the|ring high|rise|rock|room|rope|round|sharp|shoulder and|shoulder blade|shoulder height|shoulder width|shrugging|side|sit back|sit down|slack|slow|slower than|small|so if|soft knee|some of|spine|spot|squeeze it|stand tall|stay stuck|stick|straight line|stretch|string|tailbone|take|take it|take the|tap|tell me|than you|that you|the chest|the fire|the foot|the heel|the knee|the middle|the outside|the rail|the right|the slow|the waist|then lower|then stand|there and|thigh|throw your|thumb pointing|tingle|tip|to|to about|to meet|track|tuck your|tucked|tummy|under shoulder|up by|up for|up the|up through|weight in|when it|will|with|with it|without|you are|you stop|your back|your belly|your cheek|your eyebrow|your finger|your heel|your hip|your leg|your low|your shoe|your tummy|youre carrying|zip',
      ],
      [
        -0.3,
        'a tent|across the|after|all|an inch|and|and down|as far|behind the|behind your|belt|between your|both feet|breath out|breathe|breathing|chin over|click|come|coming|curl|dont|down the|drop|ease|easy|far|feel the|flat|get a|half|hang|hanging|have|hip up|how|if your|it|knee in|low back|out in|palm up|pick|please|pull your|put it|roll|say|shoe|should be|shut|sigh|slower|soft|some|stand|stand up|stay|straighten|swing|table|tent|that|the pull|the toe|think|to your|toward|up like|up off|upright|waist|way up|yank|you lift|you want|your|your chest|your knee|your side',
      ],
      [
        -0.4,
        'again|apart|be|belly|chair|come up|down and|down out|elbow under|float|floor away|full|higher|it go|its|let the|lift|light|long|nobody|over the|palm|puff|shin|swinging|tall|the|through|toe|too|toward your|weight|wide|your rib|youre',
      ],
      [-0.5, 'ankle|arm out|breath|draw|elbow stay|leg|the hip|you pull'],
      [-0.6, 'for|high|more|sit'],
      [-0.7, 'open'],
      [-0.8, 'knee|the back'],
      [-0.9, 'pull'],
      [-1, 'heel'],
    ],
  ],
  [
    'row-machine',
    -0.1,
    [
      [0.7, 'handle|still'],
      [0.6, 'body|hand away|oclock|the seat'],
      [0.5, 'breath in|coming|front and|leg flat|short|sit on'],
      [0.4, 'fast|from the|length|seat|the handle'],
      [
        0.3,
        'across to|all in|and itll|and wide|bite|coming back|crack|early|had a|lift off|load|right round|slide|stay a|theyve|unhurried',
      ],
      [
        0.2,
        'a breath|across your|after it|alway|and away|anything|arm straight|as slow|back goe|before the|bit bent|breathe normally|check your|chicken|corner|dip|dont bend|dont do|dont jump|dont rush|dont sit|draw the|drop them|end of|feel like|feet in|flat and|fly|follow the|front half|get to|goe round|goe up|hanging off|harder|heel are|heel come|if that|it across|it as|it by|its that|joint|landing|lap|leaning|leg down|leg stay|light on|moved|moving|no further|normally|number|one breath|one hip|one out|only your|osteoporosis|other side|pop up|quicker|room|round at|same speed|sat|settle|shoot|sing|sort|sort of|start in|starting|straight and|sweep|take a|that doe|the corner|the push|the rest|then go|then you|tired|told|told you|twice|twice as|twist|up before|vertical|watch the|when it|with both|wrist flat|youll go|your lap|your spine|youre hanging|youre in|youre tired|yourself|yourself up|youve had',
      ],
      [
        0.1,
        'able|able to|and its|be able|came|clock|doe|dont just|down as|elbow stay|full|gently|get the|had|half of|it all|it get|it should|one at|pause|people|pulling|rib and|rock|rush|shoulder are|so if|the clock|the little|the one|the room|throw|touche your|until the|wing|you cant|you stop|your shirt|youre looking',
      ],
      [
        -0.1,
        'a|a hand|above|air|all|an inch|and|and back|and bring|and down|and lower|and stand|and then|apart|arch|armpit|as a|as far|as high|as if|as it|as your|at the|away|back|back down|back knee|ball|band|before you|behind the|bend the|bend your|between your|big|big toe|bit|blow|blow out|both|bounce|breath out|bring it|bring the|button|close|come back|count|curl|doesnt|dont|dont hold|dont lean|dont roll|door|down the|down to|drop|each hand|ear|elbow|elbow under|enough|every|eye on|face|facing|far as|feel the|feet|feet hip|feet under|finger|fist|float|floor away|follow|foot on|for the|forearm|from your|front|go|good|grip|ground|hand|heel and|high|high as|higher|home|hurt|if|if its|in|in as|in each|in front|inch|inside|it back|it come|it out|its a|its the|its your|keep breathing|keep the|keep your|knee and|knee bent|knee to|knee up|kneecap|know|land|lean back|left|leg long|let go|let them|let your|lift|lift your|like youre|long|look at|low|low back|lower it|make|me|more|neck|nice|nobody|not|nothing|of|of a|of the|of you|of your|on the|on to|one|one hand|only|only as|onto|opposite|or|other|other foot|out as|out in|outside|pinch|pocket|point|pull your|quiet|rail|right|roll|round the|see|side of|sink|slow|slower than|slowly|so|somebody|sore|speed|squeeze the|squeeze your|stand tall|stand up|standing|stay|steady|stop|straight|than your|that|the|the arm|the band|the bar|the bench|the chair|the elbow|the foot|the ground|the knee|the ring|the thigh|the toe|the way|the whole|they|theyre|this|through your|tight|till the|till your|to|to the|top of|touch|tuck|tucked|up and|up in|up on|waist|want to|way up|when you|wider|with|with your|wrist|you|you come|you dont|you get|you go|you know|your belly|your breath|your chin|your hand|your leg|your low|your neck|your nose|your thigh|youre',
      ],
      [
        -0.2,
        'about|again|all the|an|and let|ankle|at|at your|away from|back of|back to|bar|behind|behind you|bell|between|blade|breathe|breathe in|breathe out|breathing|bring|bum|can|ceiling|chair|chin|come|come up|dont let|down|each|far|feel|feel it|floor|front of|going|hand on|hang|head|heavy|heel|height|hip|hip width|i|if it|if your|into|into the|is|it|it down|it in|it up|lean|leave|let it|let the|like|like a|line|look|lower|mat|on|on it|on your|one foot|open|out of|out to|over your|palm|press|pull|push|reach|ring|second|shoulder|shoulder blade|side|small|soft|squeeze|stand|step|the back|the ceiling|the floor|the heel|the mat|the shoulder|the side|the top|the wall|them|there|there a|thigh|three|through the|thumb|till|tip|to your|together|top|turn|two|under|under the|under your|up|up to|walk|wall|way|way down|where|whole|width|with the|you can|your bum|your chest|your elbow|your head|your hip|your knee|your shoulder|your side|your toe',
      ],
      [-0.3, 'chest|foot|through|toe'],
      [-0.7, 'out'],
      [-0.8, 'for|knee|let|your'],
    ],
  ],
  [
    'run',
    -0.4,
    [
      [1, 'run'],
      [0.8, 'short|step'],
      [0.7, 'first|in front|knee up|push off'],
      [0.6, 'drive|drive the|loose|rhythm|short step|up under'],
      [
        0.5,
        'a hamstring|ankle|as if|belt|build|cone|dont reach|easy|hamstring|land|light|skip|the ankle|the bend|these|under you|your shin',
      ],
      [
        0.4,
        'and the|back straight|belt height|bob|cold|cross|da|da dum|do|dum|fast|foot and|ground|hang there|hard|heel up|hot|knee to|land on|lean|march|metre|pocket|puff|quick|run tall|shin|smooth|somebody|speed|tall|that turn|the ground|the line|the track|then let|track',
      ],
      [
        0.3,
        'a deer|and easy|and punch|brake|deer|dont do|dont sit|early|every|feet are|foot|foot down|from the|from your|hand loose|hang|hard but|hardly|hip that|hop|in it|keep walking|kick|land under|landing|leaning back|length|line|looking at|mouth|off one|out in|over a|people|pole|puddle|punch|relaxed|running|shoe|should|small step|stay on|stop dead|the air|the ball|the cone|the far|the first|the heel|the waist|the wrist|these cold|they are|toe up|touch the|trailing|turn it|waist|walk|walk about|watch|when you|where they|whole way|you drop|you land|your feet|your whole',
      ],
      [
        0.2,
        'a crisp|a knee|a lot|a low|a shoe|air|all of|an ankle|and hang|and hop|and quiet|and slide|arm drive|as well|at you|back leg|ball of|big arm|big breath|break it|build up|but|butt|carrying|could|crisp|cross it|dead|dont come|dont fold|dont go|dont like|dont slam|dont stop|down in|down the|down under|elbow back|elbow bent|elbow in|eye on|few step|floor and|fold at|foot to|for it|front like|front with|give|go and|got|hand are|hand like|hang in|hear|hill|hold a|how|in from|is plenty|it a|it behind|it from|it run|its a|its about|jaw|jog|knee point|land soft|lane|lap|last|lean from|lean in|leg and|light on|like the|little step|longer|looking|lot of|low and|manage|not up|nowhere|one more|opposite|opposite arm|out behind|out of|own|plenty|point at|pretty|pull them|quick and|quicker|reach out|reach with|relax|relax your|round your|say|short breath|shoulder heavy|shoulder stay|shouldnt|side on|slam|slapping|slow enough|snap the|so dont|so your|stamping|step no|straight leg|stride|string|string out|that get|that the|thatll|the belt|the hill|the mouth|the straight|the wrong|third|this is|three step|tiptoe|to be|to moan|toe are|touch|travel|underneath you|up on|up round|very|walk back|walking|watch your|water|work|wrong|you about|you could|you should|your tiptoe|youre carrying|youre going|youre running|youve got',
      ],
      [
        0.1,
        'a hot|a look|about hip|about your|achilles|and float|and march|arm out|as close|away behind|ball|being|bottle|break|breathe through|brush the|enough to|facing the|feel that|foot in|from a|ground away|hang on|hip height|however|if somebody|it if|jumping|late|listen|listen for|little forward|little puff|longer than|look down|no rush|on every|once|one and|other knee|out like|percent|pretend the|quick as|quick off|quiet|serious|shin or|sing|slap|slippy|slow is|soft feet|stay tall|step on|step to|tell|than a|the bus|the foot|the lace|the pocket|then step|there no|tiny|to turn|twinge|two step|well|your achilles|your foot|your shoe|youre late',
      ],
      [
        -0.1,
        'above the|all the|along the|and lower|are bending|arm by|armpit|as your|away from|back heel|back of|back the|back till|back up|barely|behind the|bell in|below|below the|bend the|between the|bit|blow out|both hand|breastbone|breathing|by your|change|check|circle|clap|close|curl|degree|dont hold|draw it|drop|drop the|ear|elbow under|far as|feet back|feet in|flat on|from it|going down|hand by|hanging|high|hold the|if it|if that|in on|in one|inch off|into the|into your|it doesnt|just above|just off|keep your|knee are|lead|leg up|lie|lift your|long breath|lower it|near|not the|only|only as|onto your|other leg|over your|past|pedal|pillow|press the|pull|pull the|push the|push your|put them|quick step|ring at|rise|roll out|room|sag|second|see|send|set|sharp|short quick|shoulder blade|sip|sit back|slide|slower than|stay down|stop and|stop at|swing|swing the|table|than you|the band|the big|the ceiling|the chest|the door|the elbow|the handle|the neck|the rib|the wall|them|thumb|till your|to come|toward the|turn round|under the|under your|until the|up like|walk tall|walk to|way up|with your|wrist|you come|you stand|you want|your elbow|your low|your neck|your rib|your wrist',
      ],
      [
        -0.2,
        'a bus|a hand|a little|a phone|a spring|a tray|above|across|across the|against|and back|and bring|and if|and let|and stand|and your|ankle over|apart|arch|arent|arm to|as a|as high|as the|as they|as you|back down|back foot|back knee|band|bang|bench|between|between your|bladder|blood|bone|both|bounce off|breathe into|breathe out|bum|by|catch|chair|dont arch|dont drop|dont roll|down|down to|draw|dumb|dumb bell|easy pace|em|eye up|face the|feet flat|feet hip|feet together|fingertip|floor away|forearm|forehead|front heel|good|hand and|hand in|hand under|head up|heavy|heel and|heel down|high as|higher|higher than|hip width|home|in as|in through|it goe|itll|itll go|keep|keep breathing|knee no|knuckle|lazy|leg long|let them|level|lift the|little breath|lock the|low back|make|middle of|much|nearly|no bouncing|now|one in|one knee|operated|opposite hand|or two|out at|phone|pinch|put it|rock|seat|side of|sigh|slow as|slower|slowly|small quick|squeeze the|squeeze your|stand up|standing|steady|still|straight|stretch|swap|swing your|tail|the bar|the box|the edge|the feet|the mat|the ring|the same|the seat|the shoulder|the top|thigh|through your|throw|tight|till|till it|till youre|time|tip forward|too|toward|tray|tuck|tuck your|tummy|turn your|two|under hip|upright|walk your|wall|wall and|way down|weight|width|with|you put|your bladder|your bum|your ear|your leg|your nose|your side|your tail|your thigh|youre a|youre holding',
      ],
      [
        -0.3,
        'a bit|a pencil|an inch|and|as|away|back|bar|big toe|box|bring|down and|each hand|edge|feel it|feet under|finger|grip|grow|half|handle|head|heel|hold|hold your|holding|in|into|isnt|it down|just|keep the|let go|let it|long|lower|mat|neck|of it|one hand|onto|out|out on|out to|over|palm|pencil|round|shoulder|sink|sit up|something|stand|stop|the chair|the hand|the hip|the knee|the side|the toe|then|tip|until|up at|up off|up the|want|want to|your arm|your chest|your knee',
      ],
      [
        -0.4,
        'bell|bottom|chest|door|let|lift|one|out as|press|right|ring|roll|sit|squeeze|that|the|the bottom|toe|your back|your hand|your shoulder',
      ],
      [-0.5, 'dont let|flat|hand|hand on|inch|rib|the way|together'],
      [-0.6, 'leg|side'],
      [-0.7, 'put'],
    ],
  ],
  [
    'seated',
    -0.2,
    [
      [1.2, 'seat'],
      [1.1, 'sit|the seat'],
      [1, 'sit up'],
      [0.9, 'sit on'],
      [0.8, 'leg out'],
      [0.7, 'lean back|nose over'],
      [0.6, 'chair|elbow back|feet wide|heel of|if you|nose|sigh|sit tall|the front|your blood'],
      [
        0.5,
        'against the|and up|as they|back to|blow|by your|chin out|dont poke|down and|feet flat|finger|for four|heel in|hurry|inside of|it with|nothing|now|over it|pedal|poke|sat|shoe|should feel|slide|so youre|the chair|the push|them back|up by|way out|we|while|your lap|your shoe|youre not',
      ],
      [
        0.4,
        'a beach|about half|above the|back past|beach|beside|beside you|body|catch|clock|come to|cramp|cross|easy|edge|elbow dont|even|flat|forward again|grow|half|hand down|handle|hip with|it along|it forward|it goe|its the|joint|lap|lazy|lean forward|leg flat|length|lift one|like youre|long way|nearly straight|no hurry|pointing|pointing at|poke your|pulled up|rolled|sag|slide your|stop at|string|the arm|the corner|the ear|the foot|the side|the towel|till your|tin|toe pulled|towel|tucked|tucked back|tucked in|tummy|wall so|were|wind|with|with it|with your|you push|you stop|your breath|your time|your top|your tummy',
      ],
      [
        0.3,
        'a boat|a long|a nerve|a pull|a tray|above|across your|and down|and heel|and its|and look|and stretch|arm crossed|as if|away again|backrest|be|bend it|bit more|blood|boat|breathe in|bring them|chair in|chest at|come forward|come over|coming|corner|count|crossed|dont hang|dont plonk|dont slump|ease off|elbow a|elbow and|elbow on|elbow tucked|em up|empty|end of|ever|facing front|feel|feel a|feet in|feet tucked|fill up|for it|forward|from the|front|front half|go up|go without|gossip|got|half of|hand on|have|heel on|help|hum|in at|in for|in through|in your|into the|it over|its on|knee just|lead|let that|letting|lifting|long sigh|minute|muscle|nerve|new|no plonking|oclock|of your|one knee|other arm|out in|out when|over your|parade|pick a|pinch at|plonk|plonking|press through|pressure up|proud|pull your|push the|ride|ride up|roll out|rolled towel|shoulder catch|shuffle|sigh it|sigh out|slow down|slump|sort|sort of|squeeze it|stay facing|still|still a|straighten|stretch it|switch|switch on|take three|than up|that plenty|that the|the backrest|the clock|the good|the palm|the same|the sore|then reach|then the|there is|they|they drop|thigh stay|thin|three to|throwing|till the|toe up|top shelf|toward you|towel under|tummy switch|turn a|until the|up at|up your|weight down|where they|wherever|while you|without|you pull|you squeeze|your bone|your calf|your knee|your leg|your palm|your pocket|your shin|your waist',
      ],
      [
        0.2,
        'a count|a hand|a hip|a lighthouse|a little|a low|a new|a pinch|a prawn|a second|a sharp|a stretch|against|along|along the|an ankle|and away|and close|and even|and go|and in|and keep|and tell|and tip|ankle over|any|apart|are long|are thin|arm nearly|around your|as high|as is|as itll|at all|back against|back in|back through|back until|bad shoulder|because if|bent knee|bent up|between them|big and|bit in|block|blood pressure|blow as|bone|bone are|bottom back|bottom of|bottom to|breathe normal|breathe up|bum and|bus|call|can stay|candle|cant|chair against|chest proud|clench your|climb|collar|come back|coming back|cooling|count out|cross it|cushion|dig|dont come|dont curl|dont do|dont drop|dont puff|dont roll|dont squeeze|down as|down for|down low|down your|dragging|draw them|draw your|each other|early|elbow soft|end in|eye go|eyebrow|facing|far as|feet and|feet back|fill|finger over|flat and|fling|fling it|floor down|flop|flopping|for nick|for six|for two|forward from|forward over|forward till|four|from you|front edge|garden|get to|giddy|glaucoma|glued to|go all|go forward|go half|go over|go soft|goe out|goe up|grow out|grow tall|hamstring cramp|hand away|hand behind|hand come|hand in|hand resting|has to|have to|head last|headed|heel are|heel down|hip down|if youre|if youve|in there|inner|isnt a|it across|it around|its own|just go|just lift|knee flop|knee not|knee stay|knock|knock together|leaning|leave the|leg|leg stay|lift it|light hand|lighthouse|like somebody|like to|load|long by|look over|mark|mate|middle of|miss|muscle above|no rocking|not in|not just|not the|not to|of both|of straight|on and|one a|one hand|one leg|only as|or your|osteoporosis|out for|out long|over elbow|over like|pad|pain|palm|palm facing|palm in|park it|ping off|pop it|prawn|press up|pressure|push it|putting|quieter|reach back|right back|ring about|rocking|roll the|roll your|round|round both|round the|rounding|say stop|scoot|see|see a|settle|seven|shake it|shelf|shin and|should|shuffle forward|skim the|slow as|so far|so go|so you|split|squeezing|stay on|stay up|stop there|straight back|swimmy|swing your|take a|talk|talking|that move|the bench|the block|the finger|the first|the joint|the muscle|the neck|the plate|the thigh|the turn|the weight|them away|then lower|then pull|then sit|they come|they dont|theyve|this time|those|through your|tingling|tingling in|to be|to help|to one|to sit|tray of|trying|trying to|turn the|two count|two down|under you|up before|up toward|up until|up you|vertical|want to|washing|waving|way through|weight|weight to|when youre|where the|while its|without a|wobbly|you know|you put|you should|you stand|you turn|youd|youll go|your chair|your collar|your face|your hamstring|your hand|your mat|your slipper|your thigh|youre cooling|youre putting|youre straight|youre up|yourself|yourself up',
      ],
      [
        0.1,
        'a bad|a breath|a dog|a flat|a hinge|ache|all in|and a|and breathe|and needle|and that|another|anybody with|anyone|arm of|arm straight|as its|as treacle|back off|back out|back under|bad|bathroom|bathroom scale|because|before the|belly up|bench|blade together|breastbone|breath in|breathing while|buttock|cant get|chest goe|chin level|circle|collar bone|collarbone|come straight|count of|cross your|crossed on|cushion between|disc|dodgy|doesnt have|doing the|dont fling|dont grip|dont hop|dont rock|down at|down into|down the|drop your|dropping|ear to|egg on|feel that|feeling|feet under|fetch|flat under|floppy|for your|get them|go round|good leg|got a|grip with|grow taller|head up|heel out|heel to|heel tucked|high as|hold on|holding your|inch is|inside|it flop|it go|it hurt|it right|it up|itll go|its round|its that|jaw loose|just hold|just let|keep both|kiss|knee point|knocking|leave these|leg first|leg on|letter|light on|lightheaded|live|look for|needle|new hip|normally|nose for|of that|of three|off you|one side|opening|operated leg|out loud|out straight|over toe|park|pay for|percent|phone|pin and|pinch on|puff|pull for|pull with|pulled|purple|put it|rib and|right up|rock|round to|scale|seam|second to|second toe|settle before|sharp breath|shoulder up|shuffle to|sit down|sit right|six|slipper|slowly|some of|somewhere|soup|squashing|stay glued|stay level|stay long|stay pointing|stay where|straight like|straighten one|strain|stretch|tall and|taller|the bus|the chest|the desk|the out|the pad|the room|the work|then go|thigh first|tip from|to face|to lean|to where|toe and|toe to|together and|together like|told|told your|top of|turn from|turn your|two to|unhurried|up for|up if|up into|up slowly|walking|way as|who|wing|without dropping|you see|your breastbone|your chin|your nose|your whole',
      ],
      [
        -0.1,
        'a banana|a beat|a big|a fist|a gate|a hot|a mouse|a pillow|a shoe|a step|a wall|about shoulder|all of|allowed|alone|an end|and bend|and knee|and pull|and step|arch to|as long|as wide|as your|back like|back start|back toward|back with|be on|bell at|belly and|bit wider|body like|both shoulder|brake|break|breath go|build|bum down|can keep|cave in|change|chin tucked|circle with|cold|coming down|count it|cracking a|crease|curl your|da dum|do|do the|doing it|dont fold|dont hitch|dont look|dont reach|dont shove|dont shrug|down before|down first|down on|down under|drive up|duck|dum|dumb|dumb bell|elbow are|elbow straight|elbow under|elbow up|far|find the|fingertip on|foot and|foot back|foot goe|front foot|give it|go again|go as|goe back|grape|hand a|hand just|hand like|hand shoulder|hang on|hanging|head on|hear|heavy on|heel a|heel heavy|height of|hip bone|hip forward|hip go|hip level|hitch|hitch the|hook|i|inch off|inward|ironing board|is plenty|it from|it into|it is|it land|it off|it pinch|it touche|itll have|its all|its sharp|jumping|just above|just past|kerb|knee a|knee down|knee on|knee up|land on|lane|lean on|left leg|leg away|leg back|leg in|lie down|like its|limbo|little breath|little step|little toe|loose|lower back|lower than|lunch|me|mirror|mouse|neck long|not an|not locked|off and|off to|on one|on them|one bone|one to|one up|only a|or youll|or youve|out onto|out over|outside leg|over onto|pair|past the|pick|pinch up|pinned to|pocket|ponytail|press it|put them|quick step|quick up|sagging|same side|set|shin up|short quick|shorten|shoulder blade|shrug|sideway|sip|skull|slide down|sniff|so stop|squeeze at|standing knee|standing leg|start to|step through|straight line|tail under|than your|the band|the bend|the cheek|the head|the height|the kerb|the loop|the track|the whole|them down|then come|then lift|then up|there no|third|this one|tight and|till you|till youre|tipping|to about|to drop|to hip|to lower|to shoulder|to side|toe forward|toe point|touche your|turn it|turn side|twice|until it|until you|up through|upside|upside down|walk back|wet|what you|whatever|whole foot|whole of|wide as|with the|wobbling|yet|you came|you went|your belly|your big|your dinner|your knuckle|your shirt|your teeth|youre being|youre done|youve gone',
      ],
      [
        -0.2,
        'a bell|a drawer|a foot|a grape|a moment|a shoulder|a table|a tent|a time|a wet|achilles|air|an old|and get|and hold|and lazy|and not|and the|and walk|and your|arche|arm and|arm down|at a|at it|at shoulder|at you|away to|back as|back at|back from|back heel|back pocket|back stay|back the|balance|banana|barely|beat|bed|behind|being|bell in|bend the|bending the|bent|bicep|big|bit|blade|both way|bottom and|breathe on|breathe through|bring it|bum back|but|can|car|carpet|carrying|cave|centimetre|chat|cheek|chest and|chest away|chest forward|clenching|click and|close|close enough|closer|collapse|come in|come off|crank|creeping|crisp|da|dip|do a|done|dont chase|dont heave|dont lean|dont sink|dont swing|dont throw|dont want|down between|down in|down onto|down slower|down with|drawer|drive|drive the|drop the|each time|ease it|elbow brush|elbow go|elbow in|elbow level|elbow pinned|elbow to|elbow wide|end|end up|enough|enough to|every time|everything|eye on|far wall|feet hip|feet on|feet together|fence|fingertip|flare|float up|float your|foot in|foot up|for the|forehead on|from your|front knee|gap|get a|get heavy|go and|going back|gone too|good|grass|hand about|hand are|hand at|hang|head through|heave|heel|heel and|heel as|heel stay|heel up|here|higher than|hip back|hold your|how|how you|i dont|if they|in one|in that|into a|into it|invited|isnt|it apart|it at|it back|it come|it doesnt|it low|it open|it pull|it till|it to|it toward|it under|it want|its tight|its up|its your|ive|jog|just outside|just the|keep breathing|kick|kind|knee come|knee toward|kneel|knot|late|lay|lean a|leave|leave it|leg and|leg goe|level with|like the|line from|lino|long back|long on|look down|look up|looking at|low as|make|mat|meet|melt|metre|moment|near|no higher|no shrugging|not at|of one|off|off your|on top|one arm|out a|out at|out coming|out going|out wide|outside your|over a|palm up|past|pick it|pillow under|pinned|pointing back|pull the|push off|quiet|rack|reach one|relaxed|rib|rib in|rib out|rise|roll|roll down|roll to|roof|rope|run|sand|send it|shake|shirt|shoulder stay|shut|side and|side to|sit your|slow it|small of|small step|sock|sock on|soft|something that|spine|spot|squeeze your|stacked|standing|stay there|step back|step out|stool|straight arm|straighten that|swap|tail and|tailbone|taking|tall as|tea|than you|that cheating|that not|that shoulder|the bar|the bed|the belly|the bottom|the box|the breath|the car|the chin|the feet|the forearm|the grass|the hamstring|the hand|the kneecap|the lino|the rack|the roof|the small|the tree|the wall|the worktop|the wrist|then a|then stand|these|thing|thirty|thread|through|through and|throw|till its|tip|to get|to go|to it|to round|toe away|toe together|toe turned|too far|top leg|touch your|touche|trunk|turn round|turned|turned out|twang|two|unclench|under hip|under it|underneath|up a|up behind|up high|up onto|up past|watch|water|way home|weight in|went|wet towel|where your|whole|wider than|with both|worktop|wrist|yank it|you at|you in|you like|you think|youll be|your achilles|your ankle|your backside|your bum|your coat|your fist|your forearm|your head|your heel|your left|your neck|your own|youre a|youre going|youre late|youre leaning|youve a',
      ],
      [
        -0.3,
        'across the|and back|and lift|and peel|as a|back|back knee|backside|band|belt|bending|big toe|box|breathe|bring the|bring your|brush|brush your|calf|cheating|dead|dinner|doesnt|dont arch|dont force|dont stop|dont tip|elbow at|face the|feet apart|find|finish|force|forearm up|forward and|gently|get|getting|give|go down|go on|going down|gone|grab|halfway|hand flat|heavy|hip up|home|if your|in going|into|it a|it click|it like|it out|knee in|knee to|knee under|knee wide|kneecap|knuckle|lean in|leg straight|leg up|let go|lie back|lock|locked|loop|lower it|make it|mean|mouth|no|not|not your|on to|one|onto your|overhead|peel|pillow|pinch in|pole|pull it|rail|really|roll back|shoulder height|shove|side on|slack|slower than|stand tall|start|stay straight|stick|stop|take|take it|tent|than that|that all|that how|that leg|the ankle|the back|the ball|the bell|the calf|the far|the heel|the hip|the jaw|the low|the mat|the outside|the rail|the rib|the shin|there a|thumb pointing|till it|to you|touch|toward your|track|tree|tuck|tug|two second|under|under shoulder|under your|wait|walk|watch your|way down|weight on|whole way|width|you a|you dont|your|your armpit|your bottom|your eye|your low|your tail|your weight',
      ],
      [
        -0.4,
        'and do|and stay|and then|ankle|arm by|at chest|away from|bum|chest height|door|feet a|flat on|fold|foot forward|forehead|from it|hug|in the|it in|knee|knee and|knee soft|leg long|let the|lie|like a|of a|on a|on it|onto|open|other foot|other leg|out like|outside|rib down|ring at|shoulder width|sit back|stand on|stand up|stop and|straight down|tail|than|the door|the ring|thumb|to a|too|tuck your|up on|way up|wider|your feet',
      ],
      [
        -0.5,
        'and draw|armpit|back foot|behind the|elbow|every|feel it|fist|get there|hand under|higher|instead|land|line|little|low back|off the|quick|soft knee|the shoulder|wall|you can',
      ],
      [-0.6, 'bar|belly|both hand|come down|head|hip|in on|low|lower|small|straight up|your hip'],
      [-0.7, 'bell|going|one foot|ring|stand'],
      [-0.8, 'arm out|foot|forearm'],
      [-1, 'height'],
      [-1.5, 'step'],
    ],
  ],
  [
    'side-lying',
    -0.5,
    [
      [0.9, 'stacked'],
      [0.8, 'elbow under'],
      [0.7, 'bottom|head on|lift your|waist'],
      [0.6, 'knee bent|lift|top'],
      [0.5, 'dont roll|feet stacked|head|roll|side|the top|top leg'],
      [
        0.4,
        'bent|higher|higher than|hip forward|hip till|it and|onto your|side of|the bottom|top hand|top hip|under|under your|your hip|your side',
      ],
      [
        0.3,
        'a mouse|and do|and stop|bottom one|come down|do it|good side|hip and|mouse|not up|onto|roll back|roll your|stack|standing|the hip|the waist|top knee|under the|your good|your right|yourself',
      ],
      [
        0.2,
        'a bell|a ruler|a saucer|a washing|ache|and close|and lift|and lower|and make|and two|arm up|as a|as wide|away and|back like|back pocket|backward|bill|ceiling|chest to|circle with|close it|collapse|count out|dinner|do|dont sag|dont sink|else|even|floor away|foot in|get it|gone|head to|high enough|hip stacked|hole|hovering|in line|it higher|it home|it open|keep a|knee on|leg long|length|lie on|lift it|lift the|line|line with|long leg|make|night|open|open the|pinch in|plate|push the|roll backward|ruler|ruler length|sag|see daylight|sink|sink into|sip|size|size of|take the|than you|the ceiling|the ground|the outside|the side|the size|the standing|till youre|tip over|to open|turn side|two count|under there|underneath|washing|way round|where it|wide as|working|your top|your waist|youre straight|zip',
      ],
      [
        0.1,
        'a pillow|and no|and stay|backward to|bite|bump|cheat|cheat it|come off|daylight|daylight under|for one|going|hanging|hip high|hip sag|hold on|inch off|into that|it bite|it pinch|join|kissing|leg straight|look|lower it|make yourself|no higher|no more|off it|on top|right under|shut|side and|side that|socket|stay there|tall on|that shoulder|the socket|the underneath|to cheat|top shoulder|underneath side|you open',
      ],
      [
        -0.1,
        'a little|across|ahead|and back|and come|and if|and let|and stand|and your|apart|arch|are|arm out|as far|as if|as the|as your|at a|back and|back down|back knee|backside|ball|ball of|band|bar|before|behind|behind you|belt|bend the|between|between your|big toe|bit|blow out|both feet|both hand|bounce|breath out|bring|but|button|calf|chair|cheek|chest|come back|coming|dont arch|dont go|dont lean|down to|drive|end|every|eye|eye on|far as|feet hip|first|fist|foot|for the|from your|get|got|half|hand under|hang|heavy|heel and|heel down|hip width|hold|hold the|how|if|if youre|if youve|in|in each|into the|it back|it come|it down|its|keep|keep your|knee up|know|land|last|lean back|left|let go|let them|let your|light|like a|like youre|look at|moving|near|no|now|of it|off the|off your|one|one hand|only|opposite|or|other foot|out of|out on|over the|over your|palm|pick|pull it|pull your|push through|push your|put|put it|quick|quiet|rail|reach|ring|round|same|seat|second|short|should|slide|somebody|squeeze your|stand up|stay down|stay on|tail|that your|the bar|the feet|the foot|the front|the rail|the ring|the seat|the toe|then the|thigh|through|through the|tight|till the|till your|too|touch|tucked|tummy|turn your|walk|way down|way up|when|when you|wider|wider than|width|you come|you dont|you feel|you go|you know|you like|your belly|your chest|your chin|your hand|your knee|your low|your neck|your rib|your thigh|your wrist|youre',
      ],
      [
        -0.2,
        'about|ankle|as|as they|as you|at the|away from|belly|bend|blade|blow|by|by your|chin|come up|curl|dont|drop|each|far|feet flat|feet under|finger|for|height|if your|into|it|it in|lean|level|like|low back|middle|of your|on|over|please|press|shin|shoulder blade|slow|so|soft|squeeze the|stand|start|tall|the chair|the leg|the middle|the way|the whole|them|to the|to your|toward|toward your|tuck|until|up to|weight|whole|with the|without|your ear|your feet|your leg|youre not|youve',
      ],
      [
        -0.3,
        'a|and|back|back of|be|big|both|down|feet|knee|let|little|low|off|on the|pull|sit|squeeze|swing|then|they|thumb|time|to|toe|up|way|wrist|you|your back|your toe',
      ],
      [-0.4, 'at|flat|go|hand|just|rib|step|your'],
      [-0.5, 'out|the|the knee'],
    ],
  ],
  [
    'single-leg',
    -0.3,
    [
      [1.1, 'standing'],
      [0.7, 'edge|the chair|together'],
      [0.6, 'foot off|hand on|knee together|the edge'],
      [
        0.5,
        'by side|fence|foot on|gate|headlight|knee soft|knee straight|level|loose|near hand|outside leg|pick|side by|sideway|stand|the fence|the standing|the worktop|weight on|worktop',
      ],
      [
        0.4,
        'all the|ankle behind|arch|behind you|bell in|belt|chair|dont arch|dont lean|drawer|eye on|feet together|fingertip|fingertip on|foot|front foot|grab|hanging|higher than|in going|it there|itll|knee and|knee no|knee up|leg youre|one hand|other leg|outside|pick a|pick the|pocket is|set it|side|stand on|standing knee|standing leg|swing the|that hip|then heel|through the|up behind',
      ],
      [
        0.3,
        'a kickstand|a letter|back hip|behind|biscuit|bring your|catch|dont stamp|down for|eye|facing|find a|fine|flat on|float|floor|goe out|grab the|higher|if the|isnt moving|it in|just a|kickstand|lace down|lamp|lamp post|landing|lean away|lean on|leg forward|letter|little breath|little toe|no higher|nose if|of one|off the|on each|on one|on to|other one|out to|over the|right leg|second to|side on|soft|soft knee|something that|stamp|stand tall|standing foot|stare|stare at|stick|stood|t|take one|the floor|the other|the outside|the shin|the side|tin|wander|weight|with both|your belt',
      ],
      [
        0.2,
        'a drawer|a foot|a good|a knee|a moment|a step|a string|about it|about level|about the|achilles is|and back|and breathe|and land|and stare|and straighten|and turn|any|any sharp|arch your|arm to|as wide|asking|back in|below|below the|belt height|bend one|bladder|both hand|bouncing off|breathe normally|brisk|bucket|catch in|chair back|chase|chest a|chest down|clear|clear the|cramp|diving|dont drag|dont get|dont hitch|dont lock|down low|drag your|drive through|drop the|easy pace|eye up|facing front|facing the|far enough|feet down|five second|float the|floor and|floor with|foot a|foot and|foot down|foot through|for a|forward and|forward till|from it|gap|gentle|get a|get bigger|go all|go till|hanging off|happy|hear your|heel hanging|heel to|hip forward|hip square|hitch the|hold your|hook|hook the|hop|hovering|in breath|in one|in two|inside leg|is fine|is sore|it catch|it get|it on|itll go|jumper|just clear|just off|lace|land soft|lean over|leave it|left leg|leg goe|leg out|let one|lift the|little forward|look like|lower for|mean|middle toe|moment|moving|nice|nice and|normally|of that|on it|one leg|one up|onto one|opening|opposite arm|or a|out behind|out sideway|paint|pinch in|post|put your|rep|second down|shove off|slow it|small and|spot|standing on|start small|stay flat|stay there|stood on|stop when|straight down|straighten it|swing|tall on|tall through|tell you|than the|that isnt|that knee|that standing|the bench|the heel|the in|the opposite|the out|the rail|the stair|the wobble|three second|till there|tipping|tipping over|to about|to break|to go|to touch|toe of|toward it|up by|up onto|up quick|up top|wait for|want it|where your|wide as|work|you about|you look|you squeeze|you tip|your bladder|your foot|your left|your second|your weight|youre holding|youre stood',
      ],
      [
        0.1,
        'a baby|a beat|a gate|allowed|and bring|back there|bell at|breathe low|breathe on|clock|closer|complain|doesnt move|dont grip|downstair|each side|each time|face the|finger on|foot just|foot only|for three|front leg|gently|get it|get the|go and|goe forward|goe in|grab it|grip with|heel toward|hitch|holding|inward|it for|it till|it wander|itself|keep breathing|knee a|knee back|knee goe|left|load|lock that|on something|one spot|other foot|out a|out slowly|rail|reaching|rushing|side of|sit straight|slow up|something|squeeze like|stand side|stand there|start at|stay level|stay long|stay pointing|string out|swinging it|tail under|take hold|that doesnt|the backside|the thigh|the toe|then go|there to|thing|time you|tip over|toe are|toe at|toe facing|when the|where its|youd|your bottom|youre after|youre standing|youve just',
      ],
      [
        -0.1,
        'a pull|a time|across the|against|along|and not|and one|and slow|and then|arm by|arm out|armpit|as far|as high|as they|as you|as your|at a|back and|back into|back to|balance|because|belly button|between|between the|between your|big breath|blade|blow|bouncing|breastbone|button|check|chest height|chest up|circle|coming|couple|cushion|dead|deep in|dont drop|dont roll|drive the|each hand|every|far as|fold|foot out|foot turn|forearm|forward like|from the|from your|get there|give|go|go up|going up|got|half|hand under|hard|height|high as|i can|if it|in and|in each|in to|in your|into|into your|it all|it come|it hurt|it let|it pull|it up|jaw|knee down|late|lazy|leave|length|let the|let them|level with|lie|like somebody|low back|meet|middle of|mind|mouth|much|neck|not your|of you|only as|out on|over it|pain|past the|please|press through|puff|pull|pull it|push off|quick|rib down|ring|roll out|round the|round your|see|shin up|shoulder blade|sit back|sit down|sit up|slow|speed|squeeze|squeeze it|stacked|stay down|stay on|strap|swing your|tail and|tailbone|that heel|the band|the chest|the elbow|the hand|the way|the whole|them up|then let|through that|till|till you|toe point|top|tuck your|tug|under your|up like|up tall|up the|up to|want to|watch|we|were|when|when youre|while|with|you feel|you pull|you push|your belly|your breastbone|your chin|your ear|your elbow|your head|your neck|your shin|your tailbone|your wrist|yourself|youve got',
      ],
      [
        -0.2,
        'a bell|a ruler|a tightrope|a tray|above the|ahead|air|an ankle|and keep|and push|and stop|and two|as if|away|back down|back off|band|bar|before|before you|belly|bend your|bent|big|big step|bill|bite|bone|breath|breathe into|breathe out|calf|can|cant|carpet|come down|count out|curl|deep|dont push|door|down like|draw|draw it|ear|ease|feet flat|feet hip|first|flop|foot back|foot in|for it|go back|go over|goe back|hold|hot|how|if there|into the|it a|it bite|it is|just above|knee on|last|lean|leg back|leg behind|leg up|lift it|like youre|line|little step|loop|more|muscle|next|nose|not a|not up|off your|one heel|only the|other knee|out and|out in|out wide|over to|palm|past|pillow|press|push|put one|quiet|rhythm|rib|right in|rise|round|ruler|ruler length|run|rush|same|send|sharp pain|short|should|sigh|small|small step|soft and|spine|squeeze the|squeeze your|step back|still|straight|stretch|table|than you|that foot|that how|that what|the air|the arm|the ball|the bottom|the breath|the calf|the carpet|the end|the joint|the mat|the one|the second|the waist|there a|thumb|tight|till it|till its|tip forward|to the|toe on|touching|track|tray|tuck|turn out|two count|up on|up there|use|waist|want|way|where|wide|width|with the|without|wrist|you a|you and|you come|you know|your backside|your chest|your hand|your lace',
      ],
      [
        -0.3,
        'above|again|and down|and no|ankle over|apart|are|back heel|bring the|by your|chin|come|dive in|foot forward|foot right|hang|head|heavy|heel and|heel down|hip width|hold it|hold on|in a|it|it and|its a|know|lean back|lift your|mat|on your|onto your|out|outside of|over your|push the|reach|slide|slow breath|so|the back|the seat|the shoulder|the top|then|then the|they|tightrope|to|toe up|tucked|turn side|under the|up|up and|wall|what|whole foot|with your|you|your arm|your leg|youre not',
      ],
      [
        -0.4,
        'across|and|as|count|cross|down|end|from|i|in|lean in|let your|nothing|on a|or|roll|seat|sit|step|turn|way down|where it|your feet|your shoulder|your toe',
      ],
      [-0.5, 'and stand|back|feet|flat|light|long|not|them|walk|whole'],
      [-0.6, 'chest|elbow|shoulder'],
      [-0.7, 'in front|under'],
      [-0.8, 'arm'],
    ],
  ],
  [
    'sit-to-stand',
    -0.6,
    [
      [0.9, 'nose'],
      [0.7, 'over your'],
      [0.6, 'nose over|the front|tucked|tucked back'],
      [0.5, 'a hand|blow|blow out|chair|feet under|floor away|push the|shuffle|the chair|your toe'],
      [0.4, 'and stand|and up|feet tucked|knock|next|seat|second|sit|sit down|stand|up you|you come'],
      [
        0.3,
        'against the|and sit|apart|dont plonk|edge|egg|egg on|forward over|four|front edge|get up|good leg|keep a|lean forward|one hand|plonk|shuffle to|the good|the seat|there a|when youre|you stand',
      ],
      [
        0.2,
        'a second|against|and i|and tell|arm crossed|arm of|away and|back down|back under|both feet|bottom back|clock|come forward|crossed|dont rock|dropping|fall in|feet back|feet shoulder|floor down|front half|get going|giddy|good|half of|heel a|heel tucked|hip width|if there|im|it all|its there|keep one|knee stay|knock together|knocking|need|no plonking|no plopping|not to|of three|of you|off it|over toe|plonking|plopping|press through|pretend|pretend there|reach your|right up|room|second on|second toe|settle|shuffle forward|stand up|that what|the clock|the next|the room|the toe|the wall|then reach|then sit|there for|till you|to sit|toe and|toe at|tuck the|under you|way as|way up|what|where the|width|you need|you rise|your bottom|your breath|your chair|youre up',
      ],
      [
        0.1,
        'and if|back a|chair against|cheating|count of|down again|down slow|down through|fall|hand width|joint|keep hold|kiss|kissing|knee point|knee that|low enough|muscle|near the|not in|on that|out over|park|push down|reach back|same way|sit back|sit straight|so it|stand with|ten|that cheating|that hurt|the joint|thigh level|through your|to it|to stand|wait|wall so|you sit|your second|youre looking|youre standing',
      ],
      [
        -0.1,
        'a bit|above|air|an|an inch|and back|and lower|and the|and then|arch|arm out|as a|as far|as high|as it|at your|away from|back knee|back of|ball|ball of|band|behind|behind the|behind you|belly|bend the|bend your|bent|big breath|blade|body|bone|bounce|breath out|breathe in|bring the|bum|but|by the|by your|chin|close|do|dont jump|dont lean|dont roll|down|down the|down to|drive|ear|elbow under|every|face|facing|feel|feel it|feet flat|first|fist|float|foot on|forearm|from the|got|ground|hand|head|heel down|high as|home|if|if that|if youve|in a|inch|into the|into your|it back|it come|it down|it goe|it in|it out|it up|its|its a|its not|its your|jump|keep breathing|keep it|knee and|knee bent|knee to|knee up|lean back|left|leg long|let go|let it|let your|lift your|like a|like youre|little|low|low back|lower it|make|mat|middle of|neck|nice|no higher|of|of the|one foot|only as|onto|onto your|open|opposite|other foot|out of|outside|palm|pinch|pocket|pull your|put|put it|ring|shin|short|shoulder blade|sigh|sink|slide|slower than|small|soft knee|stand tall|start|stay|stay down|still|stop|straight|swing|tall|than you|the band|the bar|the bottom|the elbow|the end|the foot|the ground|the hand|the kneecap|the leg|the mat|the middle|the rib|the ring|the side|thigh|thumb|tight|till the|time|too|top of|toward your|towel|tummy|until|waist|walk|wide|wider|with the|wrist|you|youll|your arm|your back|your belly|your chin|your ear|your elbow|your hand|your neck|your rib|your side|your thigh|youre not',
      ],
      [
        -0.2,
        'ankle|bar|bell|between|between your|big toe|bit|breath|breathing|bring|can|coming|drop|end|far|hang|height|high|higher|if it|if your|in the|kneecap|leg|let|lift|middle|more|not a|of your|on your|only|or|other|pull|rib|round|see|side|than|that|the hip|the nose|the shoulder|to|to your|toward|turn|up|up on|you can|you should|your bum|your chest|your shoulder|youre|youve',
      ],
      [-0.3, 'about|and|bend|by|chest|dont|foot|from|into|it|like|off|on|one|roll|soft|the back|the other|your hip'],
      [-0.4, 'a|back|big|breathe|elbow|flat|hip|just|long|off the|out|shoulder|step|your'],
      [-0.5, 'go|in|the'],
    ],
  ],
  [
    'spine-extension',
    -0.7,
    [
      [0.8, 'belly|round up'],
      [0.7, 'knee under'],
      [0.6, 'breathe in|chest forward|forehead|low back|pinch'],
      [0.5, 'ahead|and round|chest and|forehead down|head|head back|under hip'],
      [
        0.4,
        'arm out|belly drop|chest|crane|crank|dont crane|float|low|the breath|the head|the mat|to see|under shoulder|your front',
      ],
      [
        0.3,
        'a pinch|and quick|and your|away and|back pinch|both way|cat|crank your|elbow in|everything|from your|further|hand and|hand by|hand under|high|in as|in for|leg long|lift your|mat|nip|nip in|not high|out for|pinch in|reach|see|slide|stiff|tail|the belly|the low|your belly|your head|your low|your neck',
      ],
      [
        0.2,
        'ahead of|and feet|and keep|and knee|and look|and the|any|as its|book|breastbone|bum before|cat on|chest up|couple of|dont need|dont throw|drop and|ease|end of|float your|floor away|for four|for the|forearm down|forehead on|forward and|get a|go down|hear|in to|it isnt|it nip|it start|last|leave it|looking|need to|no more|no rush|of a|of inch|press the|push the|reach for|rise|rush|slide the|slide your|small and|speed|squeeze your|the chest|the end|the forearm|the speed|the tail|the towel|throw your|to lower|up like|warm|you breathe|you come|you lift|your chest|youre going',
      ],
      [
        0.1,
        'a couple|a slope|a touch|along the|been|couple|dont crank|elbow under|head up|heard|in and|leg together|lie|long leg|need|no shrugging|palm down|reach your|shrugging|slope|so your|something|stay flat|throw|toe to',
      ],
      [
        -0.1,
        'above|again|all the|an inch|and|and back|and bring|apart|arch|armpit|as|back to|ball|ball of|band|behind the|bell|blow out|body|bottom|bounce|breath out|bring it|calf|ceiling|chair|count|dont arch|dont hold|dont lean|dont roll|dont tip|door|down|down the|down to|each hand|easy|edge|enough|every|face|facing|far|feel the|feet under|fist|from the|get|good|got|ground|hand|hang|heel and|hip width|hold it|hold your|home|hurt|if the|if youve|in each|in front|inside|is|it|it back|it come|it goe|it up|its|its the|its your|knee bent|knee up|kneecap|land|lean back|leg out|let go|let it|let them|let your|level with|lower it|no higher|now|of you|on your|one foot|one hand|only|onto|other foot|out on|outside|over the|over your|please|pointing|push your|put|quiet|right|round the|seat|shin|should|side of|sink|sit back|slower|slower than|sore|sort|sort of|stand tall|steady|swing|take|than your|the air|the band|the bar|the bottom|the chair|the foot|the ground|the hand|the heel|the nose|the ring|the thigh|the top|the way|there a|through|through the|through your|tight|till the|to get|to the|to your|top|tucked|turn your|two|until|up and|up on|up the|waist|walk|want to|way|way up|weight|whole|width|with the|you can|you should|you want|youll|your chin|your feet|your heel|your thigh|your wrist|youre a',
      ],
      [
        -0.2,
        'a bit|across|air|all|ankle|as the|at your|away from|bar|behind|bend your|bent|big|bit|blow|can|curl|do|dont|feel it|feet|feet flat|first|from|it in|lean|like youre|line|middle|nobody|nose|not|off|on|on it|on the|open|out as|press your|push|ring|second|squeeze the|stand|straight|tall|the back|the front|the hip|the middle|the other|the rib|the side|they|thigh|three|thumb|till your|tip|toe|toward|toward your|when you|wrist|you|your back|your hand|your hip|yourself',
      ],
      [
        -0.3,
        'an|are|at|back|back into|bend|bring|go|goe|hand on|hip|hold|if|if your|in the|level|other|roll|side|sit|step|stop|than|the knee|then|turn|when|with your|youre',
      ],
      [-0.4, 'dont let|foot|front of|let|over|rib|that|them|there|with|your|your knee'],
      [-0.5, 'heel|slow|the|till'],
      [-0.6, 'chin|knee|one'],
    ],
  ],
  [
    'spine-flexion',
    -0.4,
    [
      [0.9, 'behind your'],
      [0.8, 'heavy'],
      [0.7, 'closing|curl|hand behind|knee up|round up|your knee'],
      [0.6, 'closing a|come up|wide'],
      [
        0.5,
        'and roll|and round|away and|behind|belly|belt|curl your|elbow wide|forehead|haul|head|if youve|knee wide|the head|under hip',
      ],
      [
        0.4,
        'a time|and lower|at a|baby|been|bone at|butter|cat|disc|feet flat|fingertip|head last|heel and|hug|into the|knee bent|knee come|knee under|last|let go|lower them|one bone|other leg|puff out|roll|roll back|room|sigh|sit back|small|small of|so if|spread|tail|the belly|the elbow|the long|the mat|the small|tip|up a|warm|yank on|your heel',
      ],
      [
        0.3,
        'about it|again|and knee|and not|and out|and walk|arm long|arm over|as its|back spread|back the|backward|belly drop|big toe|blood pressure|bone|both knee|bring your|curl the|dip|dodgy|elbow and|elbow flapping|eye|far as|feet are|fine|fingertip behind|flapping|flatten|floor away|fold|get heavy|get up|go heavy|going to|got a|hang|haul on|if that|imagine there|instead|isnt|it isnt|its tiny|its your|keep the|neck|need to|no swinging|not to|not your|pressure|rib that|roll up|roll your|rush|sigh it|small as|speed|stay upright|stretch|string|swinging|tail under|tailbone|that turn|the breath|the speed|then let|then roll|there and|throw|till the|tiny|to knee|toe together|touching|under shoulder|upside|upside down|you move|your belt|your head|your neck|your tail|youve had',
      ],
      [
        0.2,
        'a baby|a pull|a wall|ahead of|and itll|and peel|and tip|and turn|any sharp|apart|are straight|arm to|as long|as treacle|asleep|baby asleep|back between|back down|back on|be the|belly and|bent|blood|bowl|box|breathe into|breathe out|bum goe|can keep|cat on|change|clench|clench your|come through|corner|cranky|curl up|doing it|dont clench|dont drop|dont hang|dont haul|dont throw|down a|down slower|drop and|drop off|elbow are|ever|feet down|gap|gentle|glaucoma|go again|go down|hand are|hand over|hand under|havent|heel of|in tight|in to|isnt a|it and|it from|it is|it slowly|its just|just hold|keep them|knee apart|lead with|like wet|look up|lower than|mat|need|neednt|nobody|of soup|on your|out and|out breath|out each|out every|over a|over and|pedal|press back|pull back|really|rib to|ring high|roll backward|sat|shoulder to|sit this|slow as|soften|soup|speed you|spread out|squash|squash the|squashing|stop at|stop where|tail and|that when|the arm|the belt|the box|the finger|the lace|the neck|the palm|them in|then come|then press|they come|this out|tip from|to hip|to land|to your|touch your|toward your|trouble|tuck your|up slowly|up your|walk your|way to|way you|when youre|yank|you like|you only|you open|your eye|your hand|your waist|youre hanging|youve|youve blood',
      ],
      [
        0.1,
        'and curl|and look|and when|arm like|back from|blade|bum back|came|centimetre|come off|doe it|dont just|down again|down than|elbow just|goe round|got|hand and|it stay|lie on|like its|meant|miss|no rush|opposite knee|peel|pressure or|send the|shoulder blade|shoulder up|slower down|slowly|stay put|than up|the far|the lift|the out|the tail|these|thing|tipping|treacle|where the|you came|your shin|your tummy|youre tipping|youve got',
      ],
      [
        -0.1,
        'a straight|against|and a|and lift|and pull|and stand|and stay|and you|ankle over|arche|arm go|as high|back in|backside|ball of|banana|because|bench|bend the|big and|both|both hand|bring|bring it|bring the|bring them|by your|chest open|come down|cramp|dead|dont arch|dont go|dont hold|draw|drive|dumb|dumb bell|easy|enough|exhale|feel it|feet in|flat on|for two|further|go up|going down|good|grab|heel up|i|if there|if youre|in a|in front|in toward|it down|it goe|it with|its a|its the|kneecap|knuckle|lean in|leaning|length|level with|lift it|lift your|light|off you|on top|one at|one side|or it|other foot|out for|palm up|partner|pinned|please|press the|press through|press your|push through|rail|ring to|rise|round to|should be|should feel|shoulder height|shutting|side of|sink|sip|slide|slow breath|somebody|stacked|stand tall|stop|straight down|straight up|straighten|that leg|the ankle|the band|the bench|the door|the middle|the other|the rail|the right|the seat|the toe|the top|the wall|them down|three|through|toe up|top|toward you|tug|under the|up on|wall|want|watch|what|whole foot|wrist straight|you lift|you should|you want|your ear|youre',
      ],
      [
        -0.2,
        'a big|a tent|above|air|and down|and no|anybody|arch|arent|arm by|arm up|as if|away|ball|before you|below|bend your|big slow|bottom|brisk|but|by the|car|catch|ceiling|check|chin out|circle|close|collarbone|crossed|do it|dont lean|dont poke|dont roll|down and|drag|drift|each hand|everything|face|facing front|fast|feet hip|feet on|first|floor|forward and|four|from|go long|goe|gone|grow|hand in|hard|head stay|heel down|heel in|high|high as|hip stay|hold|hold it|holding|home|if its|in as|in each|it all|it come|it off|its only|jump|keep breathing|knee stay|land|lazy|lean back|leg up|let them|level|lift the|loose|lower it|make|me|middle|near|of|of you|off your|one foot|one in|one on|opposite|out like|over|over the|over your|past your|pick|pointing|poke your|pull your|push|push your|sag|same|short|should|shoulder and|shoulder width|shove|shrugging|sideway|sit down|soft knee|something|sore|spine|squeeze the|stand up|start to|stay facing|stay level|stay on|steady|straight line|stuck|taller|tea|tent|the air|the bar|the ceiling|the chair|the feet|the floor|the foot|the knee|the leg|the outside|the towel|through the|till it|to about|to be|to one|towel|tucked|turn your|two|underneath|until|up the|want to|when you|wider than|window|with your|without|you feel|you push|your finger|your left|your right|your side',
      ],
      [
        -0.3,
        'a|a bit|ankle|as it|as you|away from|behind the|breath|by|calf|chair|coming|count|door|elbow under|feel the|five|float|forearm|from your|front of|heel|higher|if|if it|in|it|leg|loop|no higher|nose|of a|on it|on the|one hand|other|outside|pocket|poke|pull the|reach|right|round the|second|squeeze your|stick|still|tall|the front|the rib|the side|the thigh|the whole|then the|there|they|this one|to the|to where|up|weight|with the|wrist|your bottom|your breath|your feet|your hip|your wrist|youre a',
      ],
      [
        -0.4,
        'all|band|bell|bit|breathing|dont|ear|facing|forward|if the|in your|it up|like youre|line|no|off|one|side|straight|thumb|too|under your|whole|you',
      ],
      [-0.5, 'bar|bend|dont let|in the|it in|lift|of the|press|squeeze|stand|stay'],
      [-0.6, 'foot|front|hand on|lean|quick|step|with'],
    ],
  ],
  [
    'spine-rotation',
    -0.5,
    [
      [1.1, 'turn'],
      [0.7, 'to one|turn your'],
      [0.6, 'far|hand behind|thin'],
      [0.5, 'and turn|both shoulder|come out|one side|over to|side of|you turn|your right'],
      [
        0.4,
        'and the|arm out|armpit|as far|back foot|behind your|bone|both|follow|go as|hug the|knee in|lean back|pad|rib|right|right hand|side|sit tall|switch|switch on|the elbow|the hip|the other|tummy switch|turning|your head|zing|zing down',
      ],
      [
        0.3,
        'a door|a t|across|and over|and youll|are thin|arm up|at each|between the|bone are|breastbone|by the|crossed|cushion under|dont slump|elbow toward|end|ever|fold|go round|grow|heel down|hip and|hip stay|hug|if one|in and|it again|its your|knee stay|know|left|middle|no lower|not just|other way|out each|pinch|puff|rib that|right arm|roll over|shoulder and|slow up|slump|stacked|stance|stay facing|stay up|t|take your|taller|than a|that turn|the rib|to knee|together|told|turn from|up by|up from|up over|wider|your bone|your left|your neck|your rib',
      ],
      [
        0.2,
        'a prawn|across to|after|and close|and take|around|back first|back till|been|been told|bent up|both knee|both of|breathe into|chest to|close it|crank|crossed on|curl the|cushion|doesnt have|dont bend|dont get|dont lift|dont reach|down slow|down with|down your|drive the|each side|elbow and|elbow flapping|elbow wide|every|facing|facing the|facing you|fall|fast|find a|flapping|follow the|foot up|get under|go with|grow taller|hand at|hand under|hang in|haul|head come|head to|it hang|it isnt|itll|its all|just your|keep both|keep them|knee dont|knee together|like that|little puff|long leg|lower than|make it|night|not your|of them|on every|on you|one breath|only go|open the|open to|opposite|or itll|osteoporosis|other leg|out the|out wide|outside your|over and|over onto|pedal|peel the|pillow under|pinch at|pointing at|prawn|press up|puff out|puffing|right foot|round to|sharp|shoulder stay|shoulder to|shoulder up|shoving|shoving a|sideway|sit up|slide back|slide it|speed you|spin|start in|stay glued|stay long|step that|that elbow|that foot|the breastbone|the chest|the middle|the opposite|the weight|the window|then drive|there no|they fall|time you|tip over|to catch|to look|told your|toward the|under it|under shoulder|underneath|underneath you|until your|wait at|want to|washing|waving|wind|window|with it|wringing|wringing out|you open|your fist|youre after|youre shoving|youve all',
      ],
      [
        0.1,
        'a hinge|a shelf|and drop|arm crossed|back through|both end|bus|caving|dip|drop them|elbow up|far as|follow your|get a|glued|glued to|go slow|go to|hand stay|have to|hinge|hip bone|huff|isnt a|it land|just the|leg youre|no wider|on both|other hand|pop up|put a|reach out|shelf|shoulder pinch|take one|that doe|that not|the far|the head|the left|the right|the rope|the side|them over|then turn|you and|your face|your middle|your tummy|youre done',
      ],
      [
        -0.1,
        'about|across the|against|ahead|all the|an inch|and down|and lean|and lift|and lower|and out|and stand|as high|at a|back|back in|back knee|back of|backside|ball|before|belt|bench|between your|both feet|bounce|box|breathe in|calf|chest height|come|count|doing|dont arch|dont hold|dont roll|down like|down on|drag|dumb|dumb bell|edge|elbow under|eye on|feet under|floor|foot on|from it|front of|go back|go up|goe|good|grip|handle|heel and|high|high as|hip width|hold the|hold your|holding|how|i|if its|if that|in on|in the|inside|is|it come|its the|jaw|keep breathing|kneecap|leg long|leg up|let it|like there|lock|loop|loose|low|lower it|mat|moving|nice and|nobody|nothing|of a|of you|off your|one|one arm|opening|out and|past|past your|pick|please|poke|press|press the|pull your|push your|put it|quiet|reach one|roll|room|run|shoe|short|shoulder down|sit down|smooth|soft knee|somebody|squeeze the|squeeze your|stand on|stand up|step back|step through|stick|straighten|tail|than your|the band|the bar|the breath|the floor|the inside|the leg|the mat|the rail|the thigh|the toe|the wall|the whole|there a|think of|three|through|through your|till it|tip forward|to side|tuck your|tucked|under the|up the|up there|walk|way|when you|you can|you feel|your belly|your feet|your shin|your toe|your wrist|youre a',
      ],
      [
        -0.2,
        'a|a hand|above|and bring|arch|away from|back down|back up|bar|bell|body|breath|breathing|bring it|but|by your|come up|coming|dont tip|down to|each hand|easy|floor away|foot|forehead|hand and|heel|hold it|home|if your|in each|inch|instead|into your|it in|its a|leave|leg|let go|lie|lift|lift your|line|little|low back|nice|not|of the|on|on it|on the|on to|other foot|out in|over your|push|push the|rail|rock|sat|second|should|side to|sigh|small|so|stand tall|standing|the back|the bottom|the foot|the heel|the ring|the way|tip|to your|too|towel|tuck|way up|width|without|you|you come|you dont|your bum|your finger|your low|your thigh|youre|youve a',
      ],
      [
        -0.3,
        'an|ankle|apart|at the|back and|band|bend|bum|chin|dont let|draw|for|forearm|front|heavy|height|in front|in your|level|lower|off the|one foot|one hand|ring|shin|sink|sore|squeeze|straight|there|till|two|up|up to|wall|when|your heel|your side',
      ],
      [-0.4, 'belly|big|bottom|down|it up|soft|step|stop|thigh|thumb|your|your hip'],
      [-0.5, 'at|dont|hold|in|of|off|stand|the'],
      [-0.6, 'feet|toe'],
      [-0.7, 'away|forward'],
    ],
  ],
  [
    'squat',
    -0.3,
    [
      [1.2, 'straight down'],
      [1, 'sit down'],
      [0.8, 'feet a|loop|sit|sit back'],
      [0.7, 'follow|knee go|out over'],
      [0.6, 'above your|and up|chair|step out|thigh|wider|width'],
      [
        0.5,
        'above|apart|down between|feet hip|hand off|hip width|if they|in on|knee are|near|push the|the toe|toe|up through',
      ],
      [
        0.4,
        'a hand|a lift|against|and jump|back flat|back heel|back knee|bit wider|dont rock|dont tip|drive|drop straight|dropping|dumb|dumb bell|feet|feet shoulder|floor away|fold in|foot follow|foot forward|forward|front foot|front knee|its the|knee follow|knee out|knee straight|knock|lace|lace down|like youve|middle toe|nearly|nose over|over your|past|pushing|safety|second|second toe|squat|stand|stool|that should|thigh to|toe go|toe turned|together|tucked back|way down|where your|wider than|your heel|your knee|your toe',
      ],
      [
        0.3,
        'a chair|a fist|a good|a high|a long|a penguin|a speed|a touch|against the|and down|and drive|and hip|as deep|at a|back in|bar on|blood pressure|blow|cave|chair in|come up|crease|deep|deep as|dive|down a|drive up|elbow up|feet back|feet in|find a|follow your|front edge|go where|good|heel a|heel up|hip go|hook|if you|in that|it dive|itll|jump|just above|let them|ligament|live|long stance|long stride|meat|medal|middle|middle of|not the|one at|only a|or two|out the|penguin|pin|press through|pressure|proud|pushing the|roll in|shoulder width|shuffle|sit straight|slide down|snap|speed|speed you|stance|stop a|stretched|stride|stuck|tailbone|take three|talk|talk to|the chair|the front|the hard|the loop|the meat|the wall|the whole|them out|then up|then you|three to|till your|to come|to you|turned|turned out|two step|up you|wall|weight in|when|when you|where the|you are|you come|your second|your thigh',
      ],
      [
        0.2,
        'a kickstand|a race|a second|a small|a time|a wee|about to|after|after it|and breathe|and crawl|and march|and not|and one|are at|arm of|armpit height|as near|as your|at about|away to|back an|back leg|back than|back under|band under|be talking|bell by|bell in|bent up|blood|both feet|brake on|but|chest and|chest tall|clock|collapse|coming up|crawl|crawl out|crease of|deeper|dive in|dont plonk|dont you|down and|down as|down till|drop down|duck|edge|egg on|enough|fall in|far enough|feet just|feet on|feet tucked|feet under|feet wide|fist off|floor is|foot a|for that|forward till|four|from you|front shin|front thigh|get stuck|get up|going|going down|going out|grinding|hand as|hard|headlight|heel are|heel stay|heel tucked|high enough|hole|hop|horn|hug the|hurt|in at|in it|into a|it all|it along|it come|joint|just under|keep a|keep one|kickstand|kissing|knee a|knee apart|knee at|knee track|kneecap|knock together|lift going|like you|lock your|long band|lower for|lowest|march|medal on|nearly straight|neck bone|next one|no dropping|no holding|normal|of you|one dumb|one foot|one in|one ring|other one|out a|out at|out when|outside the|pain|past your|pay|pay for|paying|plonk|press your|pretend there|punch|push up|reset|rock|rock your|safety pin|second on|set just|should be|shuffle forward|side to|slip|slip off|so far|so youre|stand and|stand up|stay long|stop where|straight up|stuck you|talking|than the|the bum|the end|the good|the horn|the kneecap|the outside|the work|them knock|then heel|then sit|then squeeze|they|theyre not|this one|those|three|through your|to a|to hear|to hold|to just|to side|to sit|to stand|today|toe forward|toe out|tuck under|twang|under it|under where|up at|up higher|wait|waiting|walk it|want the|want to|wee bit|when your|wherever|with both|without a|work|you get|you have|you rise|you sit|your foot|your lowest|your teeth|youre looking|youre pushing|youve got',
      ],
      [
        0.1,
        'a quarter|about the|about thirty|air moving|and if|and sit|and stand|apart with|balance|blow as|blow out|can go|can see|chair against|chair height|count down|down into|down slowly|down toward|each other|effort|end up|eye up|feet go|flat as|floor apart|foot out|forward over|four to|go as|go out|good leg|hand resting|hard bit|hard part|heal|hip and|if theyll|im|im not|in line|its up|knee push|knee sore|knee stop|knee that|knocking|lean your|leave the|leg only|line with|little wider|looking|low as|meat of|of three|point forward|push down|quarter|send your|settle|shallow|shoelace|shuffle to|so it|so its|stay low|teeth|the carpet|the feet|the shin|they cave|theyll go|thirty|walking|when youre|you bend|your blood|your shoelace|youre about|youre past|youre up',
      ],
      [
        -0.1,
        'a foot|achilles|ahead|along|and back|and bring|and lean|and slide|and walk|and youll|arch|arch your|arm straight|as well|back|bend your|bending|bent|blade|board|both knee|bottom foot|breath out|breathe in|breathe into|breathe out|bring your|brush|build|buttock|by the|by your|came|can without|chair back|cheating|circle|coming down|curl|doesnt|done|dont go|dont jump|dont lean|either|elbow back|enough to|exhale|face the|facing the|feet down|first|float|forehead|forward a|front leg|give it|go to|go up|hand a|hand out|hand under|handle|have a|heel to|help|higher than|hip up|in a|in front|in to|inch off|instead|into that|it home|it off|it stop|knee wide|lazy|lean a|leg out|leg straight|light|long breath|longer|low back|lower it|lunch|make it|melt|mouth|neck|nice|not a|on hip|on top|operated|operated leg|out like|out on|over it|palm facing|plenty|press it|put it|quiet feet|rib down|ring|rolling out|sagging|shopping|shoulder blade|shoulder down|shut|side|sigh|slide your|so the|stacked|stand side|start to|stay flat|swinging|tail|tall like|tap the|that heel|that leg|the grass|the step|the waist|them up|then the|these|think|through that|to the|touching|tray|turn out|two count|under hip|under shoulder|up in|up over|walk|watch|weight on|while you|wing|without|wrist straight|yank|you came|you pull|you think|your armpit|your eye|your face|your hand|your neck|your shoulder|your tail',
      ],
      [
        -0.2,
        'a string|able|able to|across|again|an inch|and come|and lift|and lower|arm are|arm long|as they|at me|back at|back down|be able|belt|block|book|bow|bring it|catch|chest height|chin|come home|cross|cushion|dead|do|doe|dont arch|dont drop|dont fold|dont roll|down your|drag|draw|elbow|facing|fast|feel your|feet like|finger|fingertip|foot off|foot on|for a|for two|forearm|from your|get|get it|give|goe|grass|grip|hand and|has|heel down|hover|if that|if your|in one|inch|isnt|it back|it like|it over|it should|just off|keep your|knee and|knee soft|knee stay|knee to|knee together|last|late|leave it|left|leg every|leg long|let|let go|lie|lift|lift the|lift your|like|little toe|locked|look|look at|loud|make|me|no|no further|no higher|nobody|nose if|not your|off the|on|on the|one knee|only|onto your|open|other knee|other leg|out|out and|out breath|out going|out in|palm|pause|pillow|pinch|pop|pull the|pull your|push through|quick|quick step|reach|right|shoulder are|side on|slow as|somebody|squash|squeeze it|squeeze your|stand tall|start|stay level|stay on|stay over|stay straight|still|straight line|swap|swing|tap|than you|that foot|that hip|the ankle|the ball|the big|the calf|the elbow|the foot|the knee|the leg|the one|the other|the rib|the slack|the weight|then come|then let|think of|tight|till it|till its|till the|tip forward|to|toe up|toward|tuck your|tug|tummy|turn|until|up onto|up out|up tall|up there|walk your|where you|with the|you go|youll|youll go|your arm|your ear|your elbow|your nose|your rib|your wrist|youre a',
      ],
      [
        -0.3,
        'a|an|and you|ankle|arm|as a|as high|as it|ball|ball of|between the|big|big toe|body|both hand|breathe|bring|by|calf|close|come down|cramp|dont|ear|ease|easy|every time|face|feet together|grab|hamstring|hang|home|into the|it|it goe|its your|knee down|land|lean in|let the|little|long|loose|lower|of the|one leg|onto|opposite|or|or your|other|puff|push off|put|quiet|roll|roll out|rolling|short|shove|sit up|slow|slower than|soft knee|straighten|string|the breath|the hand|the hip|the shoulder|toward your|towel|waist|while|you want|your|your back|your bum|your chest|your head|your shin|yourself',
      ],
      [
        -0.4,
        'and|bend|breath|feet flat|from the|hand|hand on|head|heel and|high as|into|its not|off|on your|round|the|thumb|up on',
      ],
      [-0.5, 'back of|flat|from|pull|rib|squeeze|tall|wrist'],
      [-0.6, 'the back|to your'],
      [-0.7, 'leg|shoulder'],
      [-0.9, 'soft'],
    ],
  ],
  [
    'standing',
    0.1,
    [
      [1.5, 'stand'],
      [1.2, 'step'],
      [0.9, 'lean|soft knee'],
      [
        0.7,
        'band|both hand|chest height|feet under|finish|flat on|from it|knee soft|push off|rail|sit down|stand tall|the wall',
      ],
      [0.6, 'dont lean|feet a|find a|land|outside|pull it|soft|the ankle|the band|up on|wall'],
      [
        0.5,
        'and stand|at chest|back foot|bang|big|brush|bum on|door|elbow pinned|feet apart|foot|hand flat|height|it a|it up|lower it|metre|not an|other foot|other leg|pull the|same|shoulder height|stand up|stick|straight down|tall|the door|the rail|the worktop|them down|three|up through|walk|worktop',
      ],
      [
        0.4,
        'achilles|and not|arm are|arm out|banana|bell|bell at|bell in|belly button|bend|build|by the|car|cave|click|come up|da|desk|dive|dont shrug|find|gently|hand at|hand on|hard|if they|if your|into a|it in|it off|it out|itll|itll have|jog|keep breathing|keep your|knee and|knee point|mirror|open|other hand|overhead|palm forward|past|past your|pick|pole|post|push your|quick|rhythm|run|side on|something that|standing|step out|the bell|the desk|the outside|the room|through|thumb pointing|thumb up|till it|to it|turned|whole foot|you dont|you get|you pull|your head',
      ],
      [
        0.3,
        'a chair|a good|a hot|a slow|an ironing|and float|and lazy|ankle behind|are only|argument|arm and|arm go|as it|at your|back and|back as|back down|back under|bar|beat|behind|being|bit below|blow out|bounce it|break|bring|bring it|brush your|button|chest away|chin out|cold|crisp|da dum|dive in|dont reach|down the|down under|drawer|drive the|drop it|dum|ease it|elbow|elbow bent|elbow brush|elbow up|eye on|facing|facing forward|facing the|feet forward|feet in|feet on|feet together|fence|fold|fold in|foot down|foot on|front of|going up|good|hand are|hand finish|head through|heel|hinge|how|in going|in on|into that|it bite|it dive|it hurt|it land|it only|its up|just outside|knee arent|knock|knot|land on|landing|lean away|lean back|lift it|light|like youve|long again|long neck|march|middle toe|move|neck long|nice and|nose over|nose to|off you|on one|one foot|one up|or its|out on|out over|out when|out wide|pair|palm|pinned to|plank of|pointing back|pop|press it|pretend there|properly|pull|pull till|put one|reaching|rib down|rib pop|right up|ring to|room|second on|set|shrug|shrug it|shrugging|sideway|sigh|skiing|slide down|slow on|snap|stay down|stay long|stay straight|stay there|step through|stool|stop a|stop and|straighten that|take the|thatll|the car|the far|the fence|the forearm|the neck|the next|the pull|the rack|the stick|the window|thumb|tip over|too heavy|track|tree|turn it|up to|up you|walk to|want the|way home|way to|way up|went up|width|with both|with the|without the|yanking|you land|your forehead|your toe',
      ],
      [
        0.2,
        'a banana|a deer|a dinner|a fist|a half|a hamstring|a metre|a shoe|a speed|a step|a touch|a walnut|about belly|across|against|and breathe|and bring|and hand|and jump|and lean|and let|and lower|and one|and sit|and slide|and up|and youll|arch your|arm length|arm up|as an|as near|as wide|as your|at|at shoulder|back a|back heel|back pocket|back straight|bag|ball|ball of|bang your|bar on|below|bicep|big and|big breath|big step|bill|bladder|bottom back|bounce|bouncing|breath out|breathe into|breathe low|bring the|bum back|by|calf|can go|car door|carrying|cave in|chair|chair and|chair back|cheek|click and|closer|comfy|coming down|control|could|curling|curtain|deer|dinner plate|dizzy|doing|dont|dont go|dont let|dont like|dont lock|dont stop|dont tip|dont turn|door with|down a|down for|down slower|drag|drive|earring|easy breathing|effort|elbow glued|elbow lower|every|every rep|eye up|face the|feet|feet hip|fetch|finger tingle|fingertip on|float the|foot and|foot back|foot off|for three|forearm up|four second|from the|front foot|front knee|gate|get under|get your|go and|go long|go of|goe behind|goe over|going|going back|grab|ground|grumbling|had it|hand to|handle|haul|have your|heaving|heel a|heel dug|heel out|heel to|hip go|hip width|hiss it|hold|hold a|hold the|hold your|hot|hump|if there|im|in as|in breath|in it|in my|in youll|inward|ironing|ironing board|isnt|isnt moving|it|it again|it all|it at|it back|it between|it close|it down|it fall|it if|it into|it leave|it like|it open|it roll|it till|it touche|it want|its a|its comfy|its there|its tight|its too|jumper|just past|keep|keep hold|kerb|kissing|knee goe|knee nearly|knee no|knee or|knee that|lamp|lamp post|late|lead|lean from|leave it|let it|level|level with|like|like you|like youre|listen|listen for|little forward|little toe|live|lock it|look down|loose|lower|meet it|mind|mind the|mind your|movement|near|next one|no heaving|nobody|of the|of wood|off a|off one|on a|on it|on that|on this|on to|one and|one hand|one heel|one step|only a|onto one|open like|opposite arm|or leave|other one|out as|out coming|out from|out going|out onto|out to|outside the|over till|paint|park it|pass|pencil|pick the|pocket|point|point at|point where|push away|put your|quick up|rack|rep|rise|roll down|roll out|roll them|rolling|rope|round your|run tall|running|rushing|same way|shake|sharp|shin or|short|short step|showing off|shutting|sit straight|sit your|skip|slack|slide them|snap it|soften|some|spot on|stance|stand on|standing leg|stay|stay in|stay upright|stop where|straight leg|straight out|straight up|string out|swap leg|swing the|take|take it|talk to|tall on|ten|than|than it|than that|than you|that doesnt|that how|that isnt|that leg|that what|that where|the ball|the bend|the blade|the chair|the end|the feet|the front|the good|the handle|the kerb|the line|the little|the mirror|the paint|the second|the top|the tree|the way|their|then up|there till|thigh level|third|thirty|this one|three count|through it|tile|tiny|tip|tip from|to drop|to get|to just|to lower|to meet|toe|toe go|toe out|toe turned|top like|touch your|touche your|trailing|trunk|trust|tucked back|turn round|turned out|twist open|two|two step|under each|underneath you|until you|up and|up as|up onto|up past|up under|up with|upright|walk back|walk the|wall and|walnut|wander|watch|way|way back|weight in|went|what|what its|when|when its|where youre|whip|whole|whole way|wide as|wider|window|wobble|work|wrap the|wrist flat|wrist straight|you are|you can|you could|you do|you have|you sink|you sit|youd|youll feel|your achilles|your ankle|your armpit|your big|your bladder|your bottom|your ear|your middle|your own|your shin|youre on|youre pushing|youre shutting|youve|youve got',
      ],
      [
        0.1,
        'a beat|a big|a cat|a little|a pause|a pencil|a scarecrow|a stretch|about as|about the|across the|against it|allowed|an arm|an end|and bend|and easy|and if|and march|and pull|and push|and put|and you|are poking|as much|at eye|back like|back of|backside|band out|bar to|behind the|bell by|belt height|bend in|bend the|bend your|big arm|bit wider|board|bottom out|bottom rib|brake|breath before|breath on|build up|by side|can stay|catch or|change|clock|collapse|coming up|crack|did|dont bounce|dont curl|dont do|dont fold|dont haul|dont look|dont push|dont shove|dont twist|down again|down by|down underneath|dug|dug in|easy breath|easy pace|either side|elbow just|elbow level|elbow past|end|every one|eye level|fall in|find it|flat as|flat at|foot length|for you|force it|forearm on|forward|front edge|front like|get heavy|give|give it|go where|grumble|had|hand about|hand as|hang in|heal|heel heavy|heel stay|heel up|hip back|hip that|hop|horn|im seeing|in its|in that|into it|it behind|it hang|it round|it stay|just under|kind of|knee as|knee go|knock together|knocking|knuckle|lean in|lean on|lean over|leaning back|left leg|leg forward|leg youre|lift and|like the|limbo|little|little puff|little step|long spine|lower yourself|making|me|meat|meet|metre in|mid|middle|mouth|moved|much as|neck|no holding|no leaning|not|not at|of you|on both|on top|one to|or the|or two|or youll|or youve|out sideway|outside leg|outside your|palm down|pass your|pick it|poking|poking out|push down|pushing the|put them|quick step|reach one|reach out|relax|relax your|rib out|rib tucked|same as|scarecrow|seeing|shake it|shaking|shin stay|shoulder grumble|shoulder stay|shoulder that|shove off|shoving a|showing|side by|skim|skull|slap|small step|snatch|somebody|sore|spot|squeeze|squeeze at|stand right|stand side|stand with|standing knee|stay level|stay over|step away|step it|stick down|stick your|sticking|stop dead|stride|swap|take a|tall as|that foot|that standing|the arm|the cheek|the horn|the meat|the slack|the standing|the toe|the track|the whole|them|them home|then drive|then snap|then stand|thigh and|three on|through and|tight|to a|to break|to put|to round|to sit|to stand|toe point|toe when|trying|trying to|tuck it|turn|turn away|turning|twist|up higher|walk about|walnut between|way as|weight|weight over|wider than|you had|you lean|you rise|you stand|your backside|your bicep|your body|your eye|your feet|your foot|your hip|youre being|youre carrying|youre holding|youre one|youre running|youre shoving|youre showing|youre standing',
      ],
      [
        -0.1,
        'a book|a feather|a flat|a foot|a hair|a mouse|a new|a right|a ruler|a straight|a table|a towel|a tug|a wee|a whisker|across your|all in|and a|and all|and it|and out|and peel|and press|and shake|and shove|and sink|and start|and that|and they|and turn|and your|and youre|are creeping|arm dead|arm goe|arm locked|arm long|around your|as slow|at an|away again|away and|away from|away so|back goe|back into|back pinch|back stay|bed|before it|big slow|breath in|breathe normal|bring them|brisk|bum|bump|check your|chest come|chest proud|come back|corner|count of|cross your|cushion between|dangling|deep in|do not|do the|doe|dont kick|dont sag|down into|drift out|drive your|ease off|elbow a|elbow down|end of|even|exhale up|far as|faster|fat|feet away|feet into|flatten|forward from|four|get there|glued|go back|go to|going out|gossip|gripping|hand a|hand away|have|have to|head|head down|head on|hip and|hip are|hip forward|holding a|if somebody|in down|in for|inside of|into your|it around|it come|it melt|it ping|it should|it slide|it smaller|its all|its easy|its round|join|just ahead|just off|just to|keep both|kick it|kicking|knee at|knee only|knee out|knee over|leave these|leg down|leg flat|leg goe|let that|lie on|like an|little quick|look over|loud|lower the|lowering|make a|mat with|mate|mouse|name|nerve|new hip|nice long|nip|no kicking|no swinging|normally|of five|of soup|one at|one straight|one that|operated leg|osteoporosis|out and|out for|out loud|over hip|over it|over onto|pelvis|pointed|poke your|pop it|pressure up|pulling|push up|rib and|rib are|right arm|right in|rocking|roll backward|roll the|round at|round to|ruler|sagging|sagging in|same speed|say stop|seen|send|short of|shoulder are|shoulder catch|shoulder down|shoulder over|side that|side to|sit right|sky|slide it|slide one|slipper|slow and|slow down|squashing|squeeze your|start again|start from|starting|stay heavy|stay pointing|straight arm|straight at|swinging|tail under|tendon|than up|that a|that back|the air|the armpit|the belt|the lift|the minute|the out|the palm|the roof|the sky|the strap|they come|thread|throw|to ache|to hear|to lean|toe away|together like|told|too far|top knee|top shelf|tortoise|touch the|toward the|tummy|twice|under hip|under your|unhurried|until your|up before|up slowly|up your|washing|were|where its|where the|which|while its|whisker|you breathe|you look|you press|you see|your belly|your chair|your name|your rib|your thumb|youre breathing|youre tired|yourself up|youve blood|youve gone|zing|zing down',
      ],
      [
        -0.2,
        'a bad|a boat|a chicken|a coat|a cup|a dog|a door|a few|a hammock|a hip|a long|a nerve|a pedal|a pillow|a t|a tea|a time|about half|about it|ache|air|alway|an arrow|and close|and cross|and down|and feet|and fold|and heel|and just|and make|and no|and stop|and stretch|and take|another|any|are thin|are up|arm|arm to|around the|arrow|as far|as high|as the|as treacle|back one|back over|back the|bad|bar in|barking|be the|because if|belly and|bending|beside you|bit more|blade|blade on|boat|bone are|boss|both leg|both side|both way|box under|bum down|butt|butter|buttock|caving|check it|chest a|chest at|chest goe|close to|coat|come down|come over|come straight|complain|cooling|count|cross it|cup of|curl the|cushion under|daylight|daylight under|dead straight|deep|deeper|degree|dip|done|dont come|dont poke|dont rush|dont sink|dont slump|dont throw|down away|down low|draw the|draw them|drop them|each other|each side|elbow go|elbow out|elbow to|elbow tucked|every time|everything|eye go|eye under|feel a|feet back|feet first|feet off|feet stacked|feet stay|few|fill up|finished|firm|fist off|float|float up|floor with|flop out|floppy|foot forward|foot goe|for six|forearm and|forearm down|forehead|forehead down|forty|forty five|forward till|from|front thigh|get them|go as|go heavy|go on|go over|go slow|go soft|goe down|goe up|gone too|good knee|grinding|grow tall|had a|half as|half of|hand by|hand over|harder|has|head and|heel in|heel on|held|help|high enough|higher|hip with|holding|honey|hovering|hug|if that|if youve|in a|in and|in toward|in youre|inside|it away|it for|it get|it is|it isnt|it lift|it nip|it or|it over|it right|it slower|it still|its an|its on|its own|jammed|knee hip|knee just|knee till|knee to|lay|lazy|leaning on|leg away|leg in|leg together|let each|let your|letting|letting go|lie back|lie down|lifting|light hand|like somebody|little breath|long and|long slow|lower them|lower your|make yourself|moment|more|muscle above|nearly|never|new|next to|no hurry|no prize|no rocking|nose for|not a|not back|not jammed|of drink|of inch|of that|off and|once|one bone|one elbow|one leg|only|opposite foot|other way|out again|out each|out through|over elbow|over on|pad on|palm in|parade|part|pillow under|pinch on|pinch your|poke|pop up|press down|press the|prize|puff|puff out|pull back|push it|quieter|quit|reach|resting|resting on|rib|rib that|right angle|ring a|ring down|roll on|roll over|roll to|roll your|round the|round up|scoot|see|send the|shelf|shin and|shin level|shoulder away|shoulder come|shoulder pinch|shove the|sigh it|sip|slide your|slip off|slow breath|slump|small breath|so your|so youre|sock|sock on|squeezing|start in|stay facing|stay glued|stay on|step one|straight as|straight like|straighten one|switch|t|table|tailbone|tap|tell|tent|than the|that doe|that elbow|that plenty|the arch|the backrest|the belly|the boss|the buttock|the chest|the elbow|the eye|the fat|the hold|the inside|the low|the one|the operated|the opposite|the plate|the right|the slow|the tail|the thumb|the towel|them away|then go|then lift|then lower|they go|through your|throw your|thumb out|thumb round|thumb wrapped|tickle|tight and|till youre|time you|to cheat|to face|to knee|toe tucked|toe up|told your|top hip|top leg|towel under|tray of|treacle|tuck the|tummy switch|until the|up a|up until|use|wee|what you|where it|whole leg|wide|wind|with you|without|wont|wrapped|wrist sore|yank it|you came|you go|you like|you push|you put|you stop|youll go|your bone|your breastbone|your breath|your dinner|your fist|your good|your hamstring|your heel|your shoulder|your tailbone|your tummy|your watch|youre cooling|youre finished|youre straight|youve been',
      ],
      [
        -0.3,
        'a pull|about a|above the|again|along the|an ankle|and away|and call|and keep|and knee|and shoulder|and the|angle|ankle over|anybody with|back on|backrest|backward|bad shoulder|bath|bent up|beside|between the|bit of|blow it|bone at|book|both feet|by your|call|can|cant|ceiling|chicken|clench your|come forward|cup|do|dog|dont hang|dont jump|down on|down till|draw|drift forward|ear|elbow in|elbow point|elbow toward|enough that|ever|eyebrow|feet find|fill|find the|finger|first and|flapping|flaring|foot flat|for a|for four|for it|for two|for your|from your|go forward|hand come|hang like|have a|heavy|heel and|heel of|hip up|hurry|i want|if a|if the|in to|into|it and|it forward|its that|just a|just wider|kick|knee flop|knee under|knee up|knee wide|kneecap|lean forward|leg on|line from|little sip|long as|long by|lower till|minute|no higher|no sagging|nothing|off it|off that|on every|one line|open the|other arm|out breath|out like|peel|piece|pull your|put a|ready|right down|right round|ring high|ring in|rolled|round both|sag|second down|shin up|should feel|shoulder blade|shoulder up|shuffle|sit|slide the|slip|small as|so go|spread|stacked|stay stuck|step off|strap|stretch|swing your|switch on|tail and|tap the|tea on|that all|that you|the breastbone|the edge|the face|the finger|the head|the last|the leg|the ring|then press|then pull|there is|they dont|they drop|thigh stay|thin|tight to|till the|to help|to one|toe on|toe together|toward your|trouble|turn a|two down|two second|until|up at|up toward|waist|way round|way you|when youre|while you|width apart|wrist are|yank on|you lift|you open|you turn|you want|your back|your butt|your front|your palm|your pocket|your right|your waist|youre a',
      ],
      [
        -0.4,
        'a mat|a tray|and look|as they|at a|at hip|back through|back up|band round|belly|block|breathe out|chin over|cushion|dont yank|drop off|exhale|feeling|feet down|feet wide|flat|flop|from you|get up|go up|grow|half|hand and|hand behind|hang|head back|height and|hip dont|hip height|hip stay|it goe|joint|just let|keep the|knee an|lap|last|lift one|line|long|make|melt|not just|of both|one piece|or|other knee|out of|pinch|ping off|press|press up|pull not|push the|rest|roll back|shoulder|sit on|slow as|so the|soup|squash the|stop at|tea|the ceiling|the knee|the nose|the thigh|the weight|then let|then you|think of|those|tin|to where|toward|tray|tuck|tucked in|turn the|up off|walk your|while|wing|wrist|you reach|your arm|your chest|your elbow|your neck|your side|your tail|your top|your wrist|yourself',
      ],
      [
        -0.5,
        'a hand|and foot|arm straight|away|back hip|back past|be|breastbone|chest to|come off|come out|cross|drift|elbow back|elbow dont|elbow under|five|foot out|forward again|into the|it slip|left|leg long|low|low back|one knee|opposite|pillow|ring|sat|slide|squash|step up|straight line|the bench|the hand|the hip|the pad|then the|tuck your|under|under shoulder|yank|your low|youre not',
      ],
      [
        -0.6,
        'and lift|bench|bent|bone|close|let go|lift the|lift your|now|only as|opposite hand|out long|right|roll|sit tall|tail|the seat|towel|your face|your hand|your knee|your lap',
      ],
      [
        -0.7,
        'dont drop|hand in|in through|knee bent|knee down|lift|not out|on your|pad|pedal|seat|still|the mat|under the',
      ],
      [-0.8, 'bit in|box|feet flat|hand under|leg|leg out|leg up|lie|the box'],
      [-1, 'mat|sit up'],
    ],
  ],
  [
    'step',
    -0.4,
    [
      [1.2, 'step'],
      [0.8, 'push through|the step'],
      [0.7, 'front heel|loop|stand up|step out|the side|whole foot'],
      [0.6, 'heel and|push off|step back|step one|tap|together'],
      [0.5, 'back up|bring the|foot on|home|off the|on hip|push|right up|side of|stand side|whole'],
      [
        0.4,
        'above your|and stand|back foot|back knee|cheating|drop the|feet together|front leg|go down|heel out|hover|in as|inward|keep your|tall at|the grass|the other|to come|upright|you stand',
      ],
      [
        0.3,
        'and bring|and step|arm swing|back down|big step|bit bent|bob|bottom foot|bring|catch|cheek of|chest up|click|dig|dive|drag|every|eye up|feet hip|foot and|foot follow|front knee|goe over|grass|heel as|hold on|in line|it get|it home|it want|its just|its the|just above|keep it|knee goe|knee hover|knee point|knee that|lean in|leave it|light|line with|long step|middle|off and|one heel|one to|other|other foot|out to|point|rock|side|sideway|small|stand right|stay low|steady|stretched|swap|that leg|that should|the back|the middle|the second|through that|touch the|whole time|you come',
      ],
      [
        0.2,
        'a hair|a low|a passenger|a penguin|a thumb|above|after it|an inch|and all|and close|and come|and drop|and keep|and sit|and straight|as its|as quick|as well|back an|bell at|block|both knee|buckle|bus|butt|cave|cave in|close|closer|come home|comfy|dont drag|dont haul|dont hop|dont look|dont push|dont rock|dont step|down quiet|down toward|drive up|duck|each one|exhale|feel that|feel your|fetch|fire|folding|foot|foot straight|foot up|front like|hair|hanging off|has to|haul|heel heavy|heel to|inch off|it cave|it doesnt|it only|it round|its comfy|its not|its up|join|join it|just a|keeping|kiss the|knee over|kneecap|lean a|leg and|leg back|let you|long spine|look down|lower till|middle of|middle toe|next to|nip|on that|or two|other leg|other one|out wide|pain|passenger|pelvis|penguin|plonking|point at|put one|quiet|quiet feet|room|room for|round your|rug|same leg|second toe|shallow|shouldnt|shove off|sliding|slip off|small step|softly|stay in|step that|straight into|take a|than your|that cheating|that heel|that knee|that the|that up|the block|the front|the kneecap|the lace|the loop|the one|the speed|then lower|through the|tightrope|tile|to a|to catch|to join|to just|toe point|toe up|touch|twang|up your|walking|wander|wander in|you on|you sink|you step|you swap|you to|you turn|youll|youll be|your lace|your shoe|your slipper|your weight|yourself up',
      ],
      [
        0.1,
        'a knee|a touch|about an|about the|and change|and slide|anywhere|baby|be on|because a|bottle|bottom leg|chest tip|climb|coming down|corner|crossing|do the|doesnt|dont slam|drive|elbow a|face the|floor with|foot back|for you|forward a|hand out|hand together|haul on|if somebody|it flop|knee stop|lace|leg every|leg first|meet it|no rush|no wider|normal|not on|on them|quick as|quicker|ring are|rush|slam|slip|slipper|so its|so your|tap the|the bell|the work|them coming|to land|to meet|today|toe to|up taller|want you|watch the|whole leg|with me|you leave|you lower|youve just|youve not',
      ],
      [
        -0.1,
        'a big|a foot|a wall|about a|ahead|and if|and one|and then|apart|are|arent|as they|as your|at a|at it|away from|back flat|back heel|belly|belly button|below|below the|bend your|between the|between your|big breath|blade|breathe into|breathe through|button|by your|carpet|chair back|dead|deep|dont be|dont hold|dont swing|down and|drop straight|end|facing front|feet flat|flat|for a|for it|for one|for three|forearm|from|from your|gently|get it|go as|grip|half of|hand under|hard|heavy|hold your|hot|hurt|if that|in it|in through|instead|into your|it dive|it go|it is|it up|it with|keep breathing|knee straight|lazy|leg long|level|level with|lie|lift your|like youre|little breath|locked|long band|long breath|long stance|looking|low back|move|moving|near|near the|now|of inch|off your|one knee|onto the|out sideway|palm|past your|pause|peel|pinch|pop|press the|proud|pull|put it|put your|rib down|ring|sag|see|set|shoulder blade|sit up|slide|slower|spot|spread|squeeze the|squeeze your|stance|stiff|stop|straight up|than|than you|the arm|the breath|the calf|the carpet|the ceiling|the chest|the elbow|the hand|the shoulder|them up|they come|theyre|till it|till your|tiny|tip|tiptoe|to one|turn your|turning|twist|under your|up a|up for|up like|weight|wider|with a|yank|youll feel|your belly|your breath|your chest|your chin|your ear|your heel|your low|your neck|your rib|your second|your wrist|youre a',
      ],
      [
        -0.2,
        'a bell|a couple|a fist|a kickstand|a step|a wee|able|able to|about|achilles|and out|and stay|arch|arm out|armpit|as a|as high|back of|ball|band|be able|behind you|bit|bone|book|both feet|breathe in|breathing|bring your|calf|can|chest|chin|curl|dont arch|dont go|dont roll|door|down for|down on|dragging|draw|dumb|dumb bell|each hand|ear|ease|easy|facing the|fast|feel it|feet a|fine|finger|fingertip|five|floor away|follow your|for the|further|going down|grab|hamstring|hand|hand in|hand off|have|head|heel up|high as|hip|hold it|holding|if they|if you|if your|in each|in front|in slow|into the|isnt|it come|jump|kickstand|knee soft|knee up|lace down|lean back|leaning|leg out|let go|let that|lift the|like|like the|lock|look at|more|nearly|neck|need|no higher|only|onto|opposite|opposite hand|or|out of|out up|over your|past|pointing|push the|push your|round|run|sigh|sink|sink into|slower than|slowly|something|sort|sort of|stay on|stay there|stick|still|swinging|tail|tell|that how|that standing|that your|the air|the band|the big|the edge|the leg|the mat|the wall|the worktop|them|there|there a|these|through your|till you|to get|to hear|toe of|toe when|towel|tuck|tuck your|tucked|tummy|turn out|under you|up in|up off|wait|walk|walk your|wall|want it|wee|whole way|with|with it|worktop|wrist|you dont|you land|you like|you want|your elbow|your finger|your leg|your shoulder|your tail|youve a|youve got',
      ],
      [
        -0.3,
        'a|air|and|and up|back pocket|back to|bend|between|big toe|breathe|chair|dont lean|edge|facing|fist|float|floor and|foot forward|foot in|foot off|get|go|going|got|hang|heel down|height|higher|if the|in|in your|into|into a|it down|it out|its a|long|loose|mat|on the|on your|open|or your|over|pocket|quick|start|the chair|the nose|the thigh|they|tight|to your|turn|your hand',
      ],
      [
        -0.4,
        'as it|behind|down|elbow|for|if|it|keep the|let them|nose|one foot|press|reach|rib|straight|the|the hip|till|under|your|youre',
      ],
      [-0.5, 'arm|both|breath|each|high|roll|soft|squeeze|your back'],
      [-0.7, 'away|shoulder'],
      [-0.8, 'lift|straight down'],
    ],
  ],
  [
    'stretch',
    -0.1,
    [
      [0.9, 'breathe into'],
      [0.8, 'hug'],
      [0.7, 'hang|long breath|sigh|sink'],
      [0.6, 'and draw|melt|tingle|tingling'],
      [
        0.5,
        'after|breath out|dont yank|down to|finger|for the|gently|heavy|the knee|the thigh|till it|tuck your|wide|you feel|youre after',
      ],
      [
        0.4,
        'arm out|back off|behind the|bounce|breath|chest open|dont arch|dont bounce|down the|glaucoma|go and|heel down|hug the|into|into your|knee apart|knee together|lean in|leg up|let go|let your|long|more|pillow|put a|right foot|side to|straighten|that back|that leg|the front|the hip|tip from|to side|wait|yank|your hand',
      ],
      [
        0.3,
        'a pillow|a pull|and lean|and let|ankle over|apart|arch|arch your|as near|at shoulder|back knee|back leg|both shoulder|bouncing|breathe down|calf|ceiling|collapse|come out|deep|deep in|draw it|finger tingle|fold|foot|foot back|get heavy|get there|hand behind|hand on|heel|hip forward|if youve|instead|it off|knee wide|lead|let|let each|let the|long band|long in|no bouncing|of it|on it|open|other hand|other leg|out and|out the|over it|over to|pain|poke your|shoulder height|shuffle|sit back|slowly|step through|straighten that|tail|tailbone|that foot|the back|the ceiling|the chest|the nose|there no|thigh|till you|tingling down|tip|toe turned|tuck|turn out|turned|turned out|under it|walk your|yank on|your right|your tail',
      ],
      [
        0.2,
        'a long|a mat|a nerve|a stretch|a t|a tug|across the|and fold|and not|and walk|ankle behind|anything|arm to|armpit|at all|at each|back hip|back spread|be the|bend the|big breath|bit more|block|blood|blood pressure|breastbone|breathe slow|butter|can go|chest away|chest down|dont drag|dont get|dont hang|dont poke|down as|drag your|draw|draw the|drop down|drop your|each breath|ease|elbow straight|elbow toward|every time|feel it|feet apart|feet wide|flex|fold in|foot out|forearm up|from it|front|front of|gentle|get the|go where|grab the|hand shoulder|hang on|head last|head up|high blood|hip up|hip with|hold the|hold your|horn|how you|in my|into the|it all|it let|it pull|it should|it stop|its the|jaw|knee and|knee in|knee on|leg behind|lift your|little wider|load|long back|longer|medal|my|nerve|numb|of one|of them|one arm|one foot|or the|other knee|out breath|out like|outside your|pain at|pedal|poke|press up|pressure|pull|pull not|reach one|ready|rib out|roll over|round one|round over|send|send the|send your|shift|shin up|sigh it|sit up|sit your|slide the|slow breath|slow out|so go|spread out|stand there|standing foot|start in|step that|stop at|straight leg|stretch|t|that a|that elbow|the arm|the ear|the horn|the lower|the right|the same|the shin|the upright|the wall|the wobble|them in|thread|through and|till its|tingling in|tingly|tip forward|to look|to where|to you|toe go|touching|trunk|tug|up onto|up slowly|upright|wait at|wait for|waiting|waiting for|want it|where its|where the|wherever|would|yank it|you squeeze|your breastbone|your eye|your finger|your heel|zing|zing down',
      ],
      [
        0.1,
        'a pain|across|and needle|and send|arch to|as much|back heel|bad leg|band round|below|bend it|both of|bounce it|bum back|collarbone|dont force|dont lift|dont push|down with|down your|ease in|ease off|feel a|flat back|flex the|foot through|foot turn|force|frame|glute|go heavy|go long|go soft|hand out|heel on|it across|it deep|it melt|just to|keep both|knee as|knee down|lead with|leg back|leg in|lie on|like that|long sigh|long slow|much|much as|needle|nice long|nothing|notice|off you|one leg|out long|out through|pillow under|pin|pin and|pinch at|pointing|pressure or|put the|reach back|really|rest|rest your|right hand|say|shin|shouting|sigh out|skull|spread|stay pointing|tail under|talking|the armpit|the wrist|then up|there till|to catch|to touch|toe pointing|toe together|toe up|toward you|turn away|up you|you want|your foot|your tailbone',
      ],
      [
        -0.1,
        'a bad|a bus|a fist|a hand|a little|a tent|a touch|along the|an ankle|an inch|and then|any|arm are|arm by|as a|as the|as they|as wide|at chest|baby|backward|banana|beat|behind your|bell|belly button|brake|can see|cant|car|cat|chair back|check|chest height|chest to|circle with|clock|close|cramp|dangling|dont hitch|dont just|down like|draw your|dropping|dumb|dumb bell|each|em|enough|facing the|far|fast|feet hip|feet on|flop|foot off|for one|for three|for two|goe|going down|got a|grass|grip|ground|had|half|halfway|handle|hanging|hear|high|hip height|if that|if youre|in on|inch|it back|it on|it to|its not|its your|joint|knee goe|knee out|knee over|knee soft|knee stay|lace|late|leaning|letter|little step|locked|look at|low|me|move|new|next|normal|not locked|not out|on every|one up|only go|only the|past your|pause|poking|press your|push up|rib down|right arm|rise|roll|room|run|sagging|second toe|should feel|shoulder and|shrugging|sitting|slow down|so your|spot|squeeze it|stand on|standing leg|start to|stirring|straight up|swinging|take your|taller|tent|than that|than your|that the|the bench|the box|the clock|the end|the far|the grass|the ground|the hand|the head|the joint|the little|then push|thigh stay|throw|till youre|to the|touch|touche|tucked|under hip|up a|up behind|up like|way up|weight in|weight on|wide as|width|will|window|with it|working|wrist straight|you can|your face|your spine|your toe',
      ],
      [
        -0.2,
        'a foot|all|and dont|and down|arm straight|as it|as you|at the|back and|back down|bench|between|between your|bigger|blow|blow out|both hand|box|bring it|button|chair|coming|could|dead|do|doing|dont go|dont lock|dont sit|dont want|drive|each hand|even|everything|facing|feet a|feet under|five|flat|follow|foot on|front foot|further|get a|give it|go back|go over|go up|gone|good|got|grow|have a|higher than|hip stay|hip width|hitch|hum|hurt|i|i can|imagine|in each|in it|it get|it isnt|it there|it up|its only|jump|keep breathing|keep them|kick|knee to|knuckle|leave the|like a|like the|like there|little toe|lock the|loop|loose|low back|nearly|no higher|not your|of a|out at|over|past|peel|pocket|pop it|pretend|pull your|push off|push the|put it|quiet|rhythm|roll to|round|seat|should|shoulder blade|side and|side on|sideway|sit tall|slide up|slow|slow as|slower than|snap|sock|somebody|something|something that|sort|sort of|speed|spine|squash|squeeze|stacked|stand tall|stand up|steady|step|step out|stop|stop and|swap|swing your|table|tea|than|the band|the bar|the big|the bottom|the middle|the other|the outside|the pull|the ring|the seat|the whole|them up|they|think of|through the|thumb|till your|tiny|to a|to it|track|under you|underneath|up at|up off|up over|up there|up toward|watch|way down|weight|wet|while|whole foot|with the|without|wrist|you cant|you come|youd|youll|your arm|your backside|your belly|your breath|your elbow|your hip|your low|your neck|your nose|your shoulder|your tummy|youre a|youre on',
      ],
      [
        -0.3,
        'a|all the|along|an|and bring|and lower|and your|as if|at your|backside|bar|before you|blade|can|dinner|dont lean|dont let|down and|elbow under|eye|face|feet flat|first|fist|for|going|height|hip|hold it|holding|home|keep|knee up|land|lazy|lift|lift the|lock|lower it|make|middle|moving|nice and|no|of you|on to|only|over your|pick|pop|puff|see|side of|slower|smooth|squeeze your|start|stay on|straight down|tall|the chair|the top|then let|too|top|tummy|under your|you go|you should|your feet|your leg',
      ],
      [
        -0.4,
        'and the|are|back into|before|belly|big|breathe out|breathing|but|by your|circle|count|ear|eye on|feel the|hard|higher|in as|in your|it down|lean back|light|like|line|little|neck|not|off|out on|palm|quick|second|short|small|stand|still|straight|swing|the way|there a|think|three|two|under|want to|when you|whole|your bottom',
      ],
      [-0.5, 'about|breathe in|by|come down|feet|just|like youre|look|out to|over the|push|so|stay'],
      [-0.6, 'again|off the|way|when|your ear|your side'],
      [-0.7, 'as|out as|then|youre'],
      [-0.8, 'bottom'],
    ],
  ],
  [
    'supine',
    -0.3,
    [
      [1, 'leg up'],
      [0.9, 'feet flat|hand behind|knee bent|lie'],
      [0.7, 'other knee|your neck'],
      [0.6, 'blade|leg long|one on|out like|rolled|shoulder blade|the mat|toe up|your back'],
      [
        0.5,
        'a grape|arm by|be|bed|behind your|bent|bone at|bottom of|ceiling|elbow out|fall|flat|for six|get there|grape|head and|hip up|in through|into the|leg|leg in|leg out|line from|mat|mouth|nose for|nothing|one bone|peel|roll|shoulder up|six|that leg|the ceiling|the knee|towel|wrist stacked',
      ],
      [
        0.4,
        'a beach|and draw|and heel|and peel|and shoulder|arm to|back of|back stay|beach|both|both shoulder|can keep|chin|do|down slow|five|flop|foot flat|get up|haul|heel in|knee down|knee over|knee to|kneecap|lie back|like a|low|melt|no further|other leg|over to|over your|pillow|pull the|rolled towel|shin level|side to|squash|stacked over|the bed|the feet|the same|them away|toward you|up and|up till|while|whole leg|yank|yank on|you like|your eye|your heel|your mouth',
      ],
      [
        0.3,
        'a pedal|a pillow|a rolled|ach|across the|all|all the|and a|and go|and turn|arche|are just|as low|as the|at you|back down|back into|be a|bench|bend it|blade like|blade on|bone|both knee|bottom hand|breathe out|bruise|bum stay|by your|carpet|chin are|come to|cramp|cross your|doing|dont haul|dont yank|down with|draw|draw it|edge of|either|elbow wide|eye under|feet forward|feet into|flapping|flatten|float up|floppy|good knee|hang on|haul on|heavy|heavy on|heel about|higher|hip dont|home|hovering|hug|it arche|it come|it is|it slip|it under|its all|kneecap slide|lay|leg away|let the|lie down|little quick|long slow|love|low as|low back|lower them|make it|mat and|nearer|not back|off your|on your|one heel|operated|out through|over hip|over on|pad on|palm up|pedal|piece|pillow under|pinch a|press|push yourself|rib|rib down|rib in|ring come|roll to|roof|round the|second|slide up|slow as|slower than|sock|squash the|stay where|straight arm|straight line|straighten|straighten that|stretch|the edge|the heel|the kneecap|the leg|the lift|the operated|the opposite|the right|the roof|the thigh|the towel|them|then let|then lift|through the|tight and|to side|toward|tuck them|twice|under the|up toward|wait|way up|where its|while you|you know|your cheek|your side|zip',
      ],
      [
        0.2,
        'a bell|a book|a moment|a mouse|a sock|a straight|a stretch|a t|a tea|a time|a whisker|a window|about belly|across|again|air|alone|an arrow|and come|and drop|and it|and lie|and lift|and needle|and press|and reach|and roll|and start|and swap|and they|anything|arche off|are poking|arm back|arm down|arm over|arrow|away like|back come|back from|back get|band round|beat|bell in|bending|between them|blade in|blow out|breathe like|breathing while|brisk|bum not|butt|button height|calf|chair in|chat|chin off|chin tucked|clenching|close|close enough|close to|closer|closing|come off|completely|crease|curl the|curl your|daylight|daylight under|deep in|degree|dinner|do not|doing it|dont push|dont throw|down into|down one|down through|draw the|drive your|drop them|elbow about|elbow are|elbow at|elbow flapping|elbow stop|enough to|every one|exhale|faster|feet down|feet up|flare|flip|floor and|flop out|for a|for four|for it|forty|forty five|from knee|getting|go back|go completely|go so|go soft|goe away|goe out|halfway|hamstring|hand over|heel and|heel into|heel of|height of|height off|help|home and|honey|hurry|if a|in to|in toward|it and|it gently|it if|it melt|its one|its own|just go|just the|keep them|knee in|knee toward|leg flat|leg goe|leg on|let each|lifted|long band|long breath|long by|long on|lot|lower back|lower till|meant|mouse|muscle|needle|no higher|no hurry|nose and|not your|now|off that|one side|operated leg|or it|out and|pad|peel off|peel up|peel your|pin|pin and|pinch your|planted|point them|pointed|poking|pouring|press down|press through|press your|puff|puff out|put a|rib flare|rib that|ring about|rock|room for|round one|sand|scoot|second on|second to|second up|send|short of|shorten|shorten it|should feel|shoulder heavy|shut|sink|skim|slip|snatching|so|so the|so youre|sock on|sore knee|soup|stay down|stay heavy|stop for|stop short|straighten the|stuck|swimming|swimmy|t|tea|that knee|the air|the breath|the carpet|the far|the groin|the head|the height|the jaw|the loop|the out|the palm|the whole|them in|then a|then roll|there a|they fall|they go|thigh first|through and|through your|tickle|tighten|till its|tingling|tingling in|to do|to help|to knee|to one|to shoulder|to where|to you|toe just|toe pointed|too far|too low|touch|touch the|towel on|treacle|trying|trying to|turn round|two second|until its|up again|up off|up over|watch the|way out|way to|when you|where it|whisker|wrist straight|you came|you get|you hold|your butt|your dinner|your face|your leg|your waist|youre a|yourself away|zing|zing down',
      ],
      [
        0.1,
        'a balloon|a feather|a table|ache|and have|and itll|and three|are bending|argument|as they|at a|back out|back spread|back through|back up|balloon|bath|before your|behind the|bent up|both end|both leg|bounce them|bra|bum on|can stay|chest get|cooling|curling|dead|do the|dont lift|down underneath|dug|dug in|each side|else|feather|feet planted|fingertip behind|foot goe|foot to|four|gently|go and|goe down|half the|hand height|heel a|heel close|heel dug|heel up|holding|hole|hug the|if one|if there|it deep|it flat|it flop|it slide|it smaller|it to|itll|its sharp|its still|its tight|keep a|knit|leave the|leg as|lightheaded|moment|nice long|one line|one second|out at|out long|over elbow|picture a|pop up|pull in|push it|push through|ramp|reach one|roll up|sag|sat on|say|send it|send the|shoulder to|small as|small of|so stop|so your|speed|spread out|squash your|stay a|stay stuck|staying|straight up|table|tap|tap the|tea tray|that all|that in|that move|the bell|the calf|the muscle|the pad|the socket|them home|them over|themselve|then down|thigh and|thread|three on|tip it|to see|toe away|toward your|towel up|tray|unclench|under there|up if|way you|width apart|wrap|yank it|youll be|youll feel|your backside|your hamstring|your kneecap|your low|your towel|youre cooling|youre leaving',
      ],
      [
        -0.1,
        'a few|a lighthouse|a string|a tent|a touch|a wee|about your|after|ahead of|an ankle|an inch|and back|and breathe|and sit|and slow|anybody with|are up|arm crossed|arm go|baby asleep|back heel|back until|before you|behind you|bend the|beside|between your|big breath|bit of|blade down|board|both hand|bottom one|bottom out|bottom rib|breathe normally|bum back|bump|by side|cave|chair back|chest|collar bone|control|dive|dont curl|dont look|down as|down between|down for|down the|drive the|early|elbow brush|elbow stay|feet stacked|feet together|feet wide|few|foot back|foot down|foot in|foot up|for three|from it|front foot|front heel|front knee|get down|got you|grass|hand down|hand loose|hand out|hip stacked|inch off|is plenty|it till|jumping|keep breathing|keep hold|keep your|kick the|knee go|knee wide|kneel|lap|lead with|lean in|leave your|length|light on|lighthouse|like there|little step|long line|longer|lower|lower it|metre|nice and|not at|not high|not on|not up|of ten|of the|off and|one in|one long|open|or leave|out straight|outside|outside of|over a|pace|pick|plenty|point|point forward|pole|pretend there|pulled|quiet feet|right|ring|ring high|rounding|run|running|should be|shoulder down|shoulder width|side by|side of|sit your|sliding|small step|spot|square|squeeze the|squeeze your|stand on|standing leg|stay long|step up|straighten one|sweep|swinging|take a|take three|talk|taller|ten|the ball|the band|the door|the ear|the grass|the second|the step|the waist|them out|they drop|theyll|this one|thumb up|to about|to get|toe point|toe tucked|together|too high|track|tuck the|turn|twist|underneath|underneath you|up by|up high|up out|up quick|up tall|waiting|wander|was|weight on|when youre|who|wind|wobble|you and|you by|you open|you stand|youll go|your achilles|your collar|your hand|your lap|your little|your whole|youve got',
      ],
      [
        -0.2,
        'a car|a flat|a gate|a look|a pinch|a prawn|a right|able|able to|achilles|an|and down|and keep|and knee|and put|and slide|and up|and you|angle|arch|arch your|as high|as you|as your|at chest|away and|back foot|back knee|back leg|back till|bad|ball|ball of|band|be able|belly button|belly tight|bend one|big slow|big toe|blood|blood pressure|body|bottom leg|breastbone|breathe|breathe in|breathe into|breathe low|breathing|brush|build|catch|cheat it|check|chest height|chest to|circle|coat|collar|come in|coming|coming back|curtain|cushion|cushion under|dont arch|dont drop|dont go|dont hang|dont like|dont round|dont stick|down a|drawing a|drifting|drifting back|drop|drop it|ease|elbow and|elbow back|elbow pinned|end in|eye on|facing front|fast|feet a|feet back|find the|finger|finish|fist|flat back|fold|folded|for one|for the|for your|force|forearm down|forearm flat|forehead on|front of|full|get the|go down|go overhead|gone|good|grab|grab at|ground|hand at|hand in|hand just|hand shoulder|handle|hang|hanging|head last|head on|head up|hear|height|high as|hip height|hip with|hold it|hop|hurt|if they|if youve|in for|in it|inner|into a|isnt a|it hurt|it let|it off|it open|its a|jump|keep|keep it|knee and|knee apart|knee on|knee point|knee straight|land|land on|landing|late|lazy|lead|lean forward|let your|level|lift one|light|like the|line with|little toe|load|lock|looking at|loud|make the|middle|nearly straight|never|new|nick|nip in|no more|no sagging|nobody|nose if|nose over|not in|oclock|of|of inch|of straight|on|on one|on this|only a|onto|onto the|or your|out there|over it|palm to|past|plank|pointing|poke|prawn|pressure|push off|push the|put it|rail|right angle|right back|right up|ring at|round over|sagging in|second going|second toe|send your|set|shoe|shoulder that|shrugging|side on|slack|slapping|slide down|soften|sort|sort of|spine|squeeze it|stamp|stamping|stay facing|stay level|step back|step out|stick your|stiff|stop at|straight and|straight back|straight down|take the|take your|tent|than|that it|the back|the big|the box|the chest|the elbow|the end|the front|the ground|the joint|the rail|the stick|the toe|the top|the turn|the window|the wrist|then the|then you|theyve|thigh level|thigh stay|thumb|thumb to|till your|tin|tip forward|to feel|toe together|top|top hip|top knee|top leg|top of|touching|turned|under hip|up for|up on|up onto|warm|washing|weight|went|were|when your|where the|whole|whole foot|wide|wider than|wrist|wrist are|you could|you dont|you go|you have|your body|your collarbone|your front|your good|your lace|your pocket|your shirt|your shoulder|your tail|your toe',
      ],
      [
        -0.3,
        'and dont|and stand|and walk|anybody|arm|back flat|back in|back like|back toward|backward|before|between|box|button|chest and|collarbone|crossed|dont kick|door|easy|em|end|face the|facing|far as|feet stay|feet under|find|follow|forehead down|gate|good side|got|got a|grip|hand off|have to|heel down|heel on|heel to|higher than|hinge|hip back|holding your|in line|inch|inside|inside of|instead|into your|it between|it with|joint|knee soft|knee under|lace|leaning|like youve|looking|moving|no|no holding|of a|off you|on the|on top|one end|one leg|or|other hand|out of|out to|over the|overhead|past your|plate|pocket|pull it|quiet|see|shoulder over|sit back|slide them|something|stand tall|stay straight|stick|string|take|than your|the|the forearm|the outside|the weight|there for|through a|till it|tip|tip from|walk your|want to|with a|with the|you|you come|your elbow|your forearm|your shoe|youre not',
      ],
      [
        -0.4,
        'ahead|and lower|back to|between the|by the|car|chair|chin out|dont|ear|feet hip|first|foot|grow|hand and|hand on|high|if youre|in your|look|me|on a|other foot|out in|sagging|sit|slowly|soft|soft knee|squeeze|stand up|standing|stay on|steady|the arm|the neck|the ring|the seat|the shoulder|the wall|they|tuck|tuck your|under shoulder|walk|wall|with it|without|your arm|your breath|your knee|your wrist|youve',
      ],
      [-0.5, 'back and|big|come up|dont lean|floor away|foot on|one knee|seat|snap|the chair|wider'],
      [-0.6, 'at your|dont roll|forearm|in front|toe'],
      [-0.7, 'elbow|forehead|hand'],
      [-0.8, 'elbow under|front|lean|tall'],
      [-1, 'stand'],
      [-1.1, 'forward'],
      [-1.2, 'step'],
    ],
  ],
  [
    'swing-kit',
    -0.2,
    [
      [0.8, 'arm are'],
      [0.7, 'nobody'],
      [0.6, 'hike|hike it|it like|rope|up there'],
      [0.5, 'are just|park|snap'],
      [0.4, 'bell a|by the|fold|huff|it down|look behind|metre|out at|park it'],
      [
        0.3,
        'across to|ahead|arm up|back at|ball|bell|between your|both hand|breath out|chest height|dont lift|drop it|every|feet a|go slow|hard|hip bone|it float|just the|keep it|lock|long by|no lower|sharp|slow up|somewhere|still|that doe|the rope|the same|they dont|throw|up on|zip',
      ],
      [
        0.2,
        'a flat|a rope|a towel|ahead of|and i|and pick|are rope|around|between|between the|big step|by itself|cant get|cause|check its|doe|dont fold|dont stop|dont turn|each side|every time|flat back|float|foot turn|grip|grip it|height is|hinge|hip and|horizon|i mean|imagine youre|it back|it through|it with|itself|land soft|like it|loud|lower than|mean it|operated on|or the|pick it|reset|shaking|shoulder dont|shoulder grumble|snap it|snatch|squat|teeth|the horizon|the lot|the strap|then stand|trunk|tug it|up before|you and|you know|your coat|your teeth|zip up',
      ],
      [
        0.1,
        'a metre|and look|and then|back between|bend your|brisk|coat|diving|dog|dont bend|dont like|down slow|early|elbow and|elbow straight|every rep|fast|feet wide|fold at|full|get your|grumble|grumbling|haul|heart|hit|it at|it close|it fall|it land|it toward|just drop|lock it|lot|most|on each|or you|or youve|rep|rule|same way|set it|side and|snap the|so you|socket|than the|the handle|the socket|then snap|through it|tip it|toward you|turn it|up fast|up with|you sit|your heart|youve had',
      ],
      [
        -0.1,
        'a bit|a hand|above|air|an inch|and back|and bring|and down|and lower|and the|apart|arch|armpit|as a|as far|as high|as you|as your|at|back down|back foot|back knee|behind the|bend the|big|big toe|bit|body|bounce|breath|bring it|bring the|bum|cant|ceiling|chair|chest|curl|do|dont roll|door|down to|draw|drive|each hand|ear|edge|elbow under|facing|fall|far as|feel the|feet|feet flat|feet hip|feet under|fist|flat|floor|floor away|foot|foot on|for the|front|get|go|goe|ground|have|head|heavy|heel and|high as|hold it|if your|if youve|in as|in each|inch|it come|it go|its|its a|its your|keep breathing|keep the|knee bent|knee to|knee up|leave|left|leg|leg long|let go|let the|let them|let your|lift|lift your|light|like a|long|low back|lower|lower it|me|nice|no|of your|on a|on the|on to|one hand|only as|onto|opposite|other foot|pinch|point|pull|pull it|pull your|put|quiet|rib|round the|seat|second|see|should|shoulder|side|side of|side on|sink|sit|slower|slower than|slowly|small|soft|sore|squeeze the|stand tall|steady|swing|that your|the band|the bar|the bell|the ceiling|the chair|the floor|the foot|the ground|the hand|the knee|the ring|the seat|the shoulder|the toe|the wall|there|there a|through|through your|tight|till your|to the|to your|toe|too|top of|touch|toward|toward your|tucked|until|up through|up to|want|want to|weight|when|where|whole|with|without|wrist|you come|you get|you want|your belly|your bum|your ear|your hand|your low|your neck|your nose|your rib|your shoulder|your thigh|youre|youre not|yourself|youve',
      ],
      [
        -0.2,
        'a|again|an|and|ankle|as|away|back|back to|band|bar|belly|bent|blade|bottom|breathe in|breathe out|breathing|bring|by your|can|come|come up|coming|dont|down|elbow|face|feel it|first|for|forward|going|got|half|hand|heel|higher|hip|hip width|hold|if|if it|if you|in|in the|in your|into|into the|it|it out|keep|keep your|knee|lean|let|level|like|line|little|low|mat|middle|neck|nose|not|not a|of|of it|off the|on|on it|one|one foot|only|open|out|out as|out to|outside|over the|palm|press|push the|right|ring|roll|shin|shoulder blade|slide|slow|squeeze|start|stay|step|straight|take|that|the|the bottom|the elbow|the front|the heel|the mat|the middle|the other|the side|them|thigh|three|thumb|till|to|to get|together|tuck|under the|under your|up|up and|wall|width|with the|you|you can|your|your back|your chest|your heel|your hip|your side',
      ],
      [-0.3, 'breathe|dont let|feel|of the|off|other|push|under'],
      [-0.8, 'tall'],
    ],
  ],
  [
    'wide-legs',
    -0.7,
    [
      [0.9, 'inside of'],
      [0.8, 'inside|the inside|where the'],
      [0.6, 'low as|toe turned|turned|turned out'],
      [0.5, 'the heel|the toe|where'],
      [0.4, 'breathe down|feet wide|only as|out over|pain|pain at|shallow|tailbone|would'],
      [
        0.3,
        'air|and sit|apart|as low|big step|bone|by the|collapse|come back|dont bounce|door|feet together|four|heel stay|into that|keep it|off and|pay|side to|sink|that hip|the bell|the door|the feet|to come|to side|waiting',
      ],
      [
        0.2,
        'a bell|a heavy|a wall|about thirty|against the|and stop|arche|ask|bounce|bounce out|bounce them|bring the|bum out|count down|count up|dont hang|dont lift|dont stick|down a|down slowly|down softly|end of|far enough|feel like|feet up|floor apart|for that|for you|force|four to|frame|further|go to|hand resting|hang off|happy|heel to|hip go|hold the|in it|inner|into a|is the|it all|it by|it click|it hang|it should|its easy|knee out|knee together|knee toward|knee track|leg like|long and|mid|mid shin|minute|not for|of them|one to|or it|or the|other leg|pay for|really|resting|resting on|rock|rocking|roll in|rope|sit up|sliding|so go|softly|some|some of|stay long|step out|stick your|stop at|stop there|stop where|talking|the armpit|the end|the minute|the work|them in|then squeeze|thigh to|thirty|this one|today|toe go|track|up out|week|where its|with both|work|you bend|you leave',
      ],
      [
        0.1,
        'against|and come|and out|bell at|bell by|can go|comfy|do the|down as|down into|down to|drop down|face the|fold in|go and|grow|hand behind|heel a|heel heavy|hug|hug the|if they|in my|instead|knee apart|knee go|leg stay|like you|little sip|little wider|medal|my|nose and|of air|of that|other way|out at|out the|out when|proud|rep|rolling|shift|should feel|shove off|side and|sip of|slowly|something|stay flat|stay straight|stay there|stick|straight leg|stretch|talk|talk to|that foot|thatll|the breath|the bus|the nose|then you|to where|together|wait|waiting for|wherever|wider than|you are|your time',
      ],
      [
        -0.1,
        'a hand|about|above|across|all|all the|an inch|and back|and bring|and down|and lower|and the|ankle|are|as|as a|as high|as if|as it|as you|away from|back and|back down|back knee|ball|band|bar|before you|behind|behind the|bend your|big toe|blade|blow|blow out|bottom|breath|breath out|breathe|breathing|bring it|bum|can|ceiling|close|come down|coming|curl|doesnt|dont|dont hold|dont lean|dont roll|down|down and|down the|draw|drive|drop|each hand|elbow under|every|eye on|facing|feet flat|feet hip|feet under|finger|fist|flat|float|floor away|foot on|forearm|from|from the|from your|front|goe|good|got|ground|half|have|high as|higher|hip width|home|hurt|if its|if the|if youre|in|in a|in each|in the|in your|inch|into the|it|it back|it come|it goe|it in|it out|it up|its|its a|its not|its your|keep|keep breathing|keep your|knee bent|knee to|knee up|kneecap|land|lean back|left|let go|level|lift|light|like|like youre|look at|low back|lower it|make|more|nice|nobody|now|of you|off|off the|on a|on to|one foot|one hand|opposite|or|other|other foot|out|out as|out in|outside|over|palm|past|pinch|pocket|pull your|quick|quiet|reach|round|round the|same|seat|see|short|shoulder blade|side of|slide|slower|slower than|small|somebody|squeeze|squeeze your|stand tall|stand up|standing|start|step|still|straight|swing|that|the arm|the back|the band|the bar|the ceiling|the elbow|the foot|the ground|the hand|the hip|the mat|the other|the ring|the seat|the thigh|the way|the whole|there|there a|theyre|think|three|thumb|tight|till the|till your|time|tip|to|to get|too|top of|toward your|tuck|tucked|until|up and|up on|waist|walk|way|way down|way up|weight|with|with the|without|you|you come|you dont|you get|you go|you should|you want|youll|your arm|your back|your belly|your breath|your chin|your low|your neck|your nose|your rib|your side|your thigh|youre|youre not|yourself',
      ],
      [
        -0.2,
        'a bit|an|arm|away|before|belly|bit|breathe out|by your|chin|each|ear|elbow|eye|feel it|first|floor|foot|forward|front of|get|going|hand|hand on|head|height|high|if it|if your|in front|just|lean|look|lower|mat|neck|not|not a|on your|out on|press|pull|rib|right|second|slow|soft|the floor|the shoulder|the top|till|to the|to your|top|under|under the|under your|up to|whole|width|wrist|your ear|your elbow|your feet|your head|your shoulder',
      ],
      [-0.3, 'shoulder'],
      [-0.4, 'me|they|your heel'],
      [-0.5, 'between|let your|your knee'],
      [-0.6, 'of your|stand'],
      [-0.7, 'a|and|if|on|on the|one|the|up|your'],
      [-0.8, 'back|no'],
    ],
  ],
]
