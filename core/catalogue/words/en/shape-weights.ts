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
    -0.4,
    [
      [1.3, 'knee under'],
      [1, 'hand under|under shoulder'],
      [0.9, 'hand and'],
      [0.7, 'opposite|slide|wrist'],
      [0.6, 'all four|and knee|arm forward|belly|opposite hand|round up|under hip'],
      [0.5, 'and the|floor away|four|hip stay|inch|other arm|slide one|than your|toe tucked|your right|your wrist'],
      [
        0.4,
        'an inch|and foot|and lift|and round|bent and|between the|come out|float|foot go|glass|go on|higher than|knee an|no higher|one leg|reach|shoulder and|steady|that it|tray of|tucked|you breathe|you reach',
      ],
      [
        0.3,
        'a cup|a dog|a tray|and do|and feet|as big|as your|away and|away with|back and|belly drop|coffee|cup|cup of|dog|hand a|head come|heel to|higher|hip level|hurt|kick|kick the|knee are|knee out|left|leg back|lower slow|no more|of water|only as|palm up|push the|quiet|reach your|right arm|see if|shape|slide it|small step|spread your|square|stiff|tailbone|that shoulder|the head|them drift|then come|today|too high|tray|underneath you|walk it|water|your neck',
      ],
      [
        0.2,
        'a breath|a fence|a footprint|ahead|and look|and that|as far|baby|back youve|been|belly tight|belly up|bit in|breath for|breathe into|breathe through|bump|cat|cat on|ceiling knee|coffee on|come forward|concrete|control|couple of|crank your|crisp|dip|dont need|dont want|drift|drop and|elbow dont|end under|enough that|finger|finger wide|fold the|folded|footprint|for three|freeze|get down|grass|heart|i dont|imagine a|inch up|it is|it start|its only|knee a|last|left arm|left foot|left hand|lift one|little step|long from|loop|loop stay|much|near the|ninety|ninety degree|of tea|one end|opposite foot|out there|plaster|quiet hand|rafter|right hand|shoot|shoulder knee|side of|sitting|slack|spread|stamp|stamping|start from|stay square|straight back|table|tail and|take it|tea|that bottom|that too|the breath|the concrete|the grass|the lift|the rafter|the side|the tail|then slide|there for|thigh level|to go|too much|toward the|underneath|up quick|wall behind|with control|wrist under|you could|your belly|your left',
      ],
      [
        0.1,
        'a drawer|a tent|about two|and quiet|back as|balance|bin|bum not|chest forward|clear of|come in|crank|dont kick|drawer|fish|fist|flat as|flat back|float it|floor between|forward till|going back|gone too|hand down|hand in|happy|has|head last|hover|in and|it still|it through|jerk|knee wide|lean away|leg goe|leg no|lift it|make a|moving|one breath|opening|opposite arm|out going|quiet step|reach long|reach one|reach the|rest|shoulder are|shutting|somewhere|spine|stand up|start it|stay over|stay up|tea on|the belly|the fist|the line|the opposite|the wall|there is|up high|up over|walk your|wrist hurt|you are|you land|you put|you walk|your butt|your finger|your spine|youve gone',
      ],
      [
        -0.1,
        'a time|about a|across|again|against|and come|and down|and if|and keep|and not|and stand|and then|and you|apart|arch|arm by|arm long|arm out|around|as low|at your|away from|back down|back foot|back into|back knee|back on|back pocket|back to|ball|ball of|be|because|behind|belt|bend the|bend your|big toe|bit|board|both feet|both hand|breastbone|bring|bring the|bring your|calf|can|catch|chest to|close|come up|coming|count|curl|do|doing|dont arch|dont bounce|dont roll|dont swing|down for|down to|drive|dumb|dumb bell|edge|elbow back|even|every|face the|facing|fall|feel|feel the|feet back|feet flat|feet hip|feet under|feet wide|finish|five|flat|foot|foot on|for a|for two|from your|going|going down|grab|grow|half|halfway|hamstring|handle|hanging|heavy|heel and|heel down|heel up|height|hip and|hip up|hip width|hold the|how|if there|in|in each|in on|in one|inside|instead|into|into it|into the|it a|it come|it go|it goe|its not|its your|jump|keep|knee down|knee over|knee soft|lean back|lean in|leaning|leave it|leg out|length|light|long neck|low as|lower|make it|me|nearly|nip|not out|not the|not your|of a|onto your|or|other leg|over|past your|peel|pick|plenty|pocket|point|poke|press|pull the|push off|push up|quick|rail|rib down|ring at|rock|round the|run|same|sharp|shoe|short|shoulder down|shoulder width|shove|side on|sit back|sit down|slower|so|soft knee|squeeze the|stand on|stay down|stick|straight line|straight out|straight up|strap|string|swing|than you|that how|the ankle|the arm|the back|the ball|the band|the bar|the big|the chair|the chest|the door|the edge|the elbow|the feet|the heel|the kneecap|the other|the outside|the rail|the ring|the seat|them|them up|theyre|think of|this|through the|throw|till it|time|tip forward|to get|together|top of|under you|up|up on|up tall|up the|way up|weight|what|whole|wider|with|with it|yank|you get|you go|you push|youll feel|your ear|your elbow|your foot|your shin|your side|your thigh|youre a|yourself',
      ],
      [
        -0.2,
        'a bit|about|all the|arm|as they|back|back stay|band|bar|bell|big|blow|blow out|body|bounce|breathing|button|by your|chair|doesnt|dont|dont hold|down and|drag|ear|easy|first|forehead|from|heel|hold|hold your|if it|if youve|in for|it up|itll|its|its the|keep breathing|knee in|knee up|kneecap|lean|leg long|let|let go|let it|lie|lift the|like youre|line|loose|move|of the|on|open|other|other foot|out|out for|out in|out like|out on|outside|pinch|pointing|pull it|ring|seat|sink|slower than|soft|somebody|squash|squeeze your|stand tall|standing|start to|thigh|think|till|turn|two|up off|waist|when you|wider than|width|you can|youll|your arm|your breath|your chest|your chin|your heel|your leg',
      ],
      [
        -0.3,
        'ankle|at|elbow under|face|forearm|front|goe|hang|if|in the|leave|like|long|nose|off|off the|on the|one|over your|pull|roll|stand|swap|the|the top|the way|they|to|toe|when|with your|your feet|your rib|your toe',
      ],
      [-0.4, 'bend|both|by|chest|chin|down|elbow|get|leg|shin|sit|squeeze|straight|top|way|where|your|youre'],
      [-0.5, 'hand on|not|rib|stop|tall|the front|to your'],
      [-0.8, 'feet'],
    ],
  ],
  [
    'balance',
    -0.3,
    [
      [1, 'knee together|standing|the ring|whole foot'],
      [0.9, 'foot on'],
      [0.8, 'arm forward|the standing'],
      [0.7, 'big toe|heel to|little toe|opposite arm|roll out'],
      [
        0.6,
        'above your|along|and turn|between the|by side|chest down|dont tip|feet back|foot off|higher than|keep hold|knee soft|lean a|loop|lower till|other foot|rail|side by|slide one|the rail|the step|thumb out|together',
      ],
      [
        0.5,
        'ahead|and keep|ankle|bottom foot|control|fence|fingertip|forward and|hanging|high as|hold of|knee straight|level|look over|lower|on that|one hand|one leg|push away|reach|right in|ring a|rock|rolling out|slow as|standing knee|step out|straight back|the chair|the other|the outside|then lower|they want|through that|to go|toe of|turn your|up on|wobble|you reach|your ankle|youre leaning',
      ],
      [
        0.4,
        'a foot|a hand|a pint|a string|a touch|achilles|along the|ankle dont|arch your|arm straight|as high|back down|balance|behind you|both hand|by the|change|closing|dont lock|dont roll|down by|eye|eye up|face the|fine|fingertip on|follow|foot follow|foot up|front foot|front of|gate|grab|hand in|hip height|in going|in on|it fall|it get|its there|lace down|lean over|middle toe|moving|one up|opposite|other arm|out onto|outside leg|quick but|ring|shoulder over|sideway|slow it|snap|soft knee|something that|stand|stand on|standing foot|standing leg|standing on|statue|stomp|stop and|swing the|tall on|than your|that heel|that knee|the big|the little|the side|the wobble|the worktop|through to|tipping|tired|to hip|toe|turn round|up behind|up onto|up through|waiting|weight on|whole|worktop|you get|your big|your left|your thumb',
      ],
      [
        0.3,
        'a boat|a coin|a cup|a fence|a kickstand|a penguin|about your|above|after it|ahead of|and breathe|and i|and they|ankle behind|any sharp|arm like|as wide|back an|back foot|back leg|back one|back there|balance a|big one|bouncing|breath out|buddy|butt|can without|cat|catch|chest between|chicken|closing a|cranky|cup of|diving|dont push|dont sag|dont stamp|dont stomp|down between|down quiet|down underneath|drawer|drop a|each time|elbow to|every other|eye on|feet off|finger on|foot|foot goe|foot heavy|for you|freeze|garden|get the|glass|go a|goe over|going|going down|grip the|grow|hammock|hand off|hand on|hanging off|headlight|height and|hill|hip dont|hip level|imagine a|in by|in like|inward|isnt moving|it down|it in|itll|kickstand|knee as|knee up|leg no|leg that|leg youre|like its|lock|look|lower the|make you|moaning|near|near hand|next|no bouncing|no higher|no more|normal|of a|of both|of it|of tea|off with|on each|on it|on one|on them|or two|other|other step|out against|out behind|out to|over there|penguin|pick the|pint|point forward|push through|pushed|put|put your|reach the|right up|ring to|sagging|same leg|shoe|shoulder bite|side like|side of|side on|slow|so keep|so there|stamp|start|start small|stay low|steady|stiff|straighten|strap|stretched|swing|tall as|tall at|that chair|that isnt|that should|that way|the bottom|the flat|the heel|the hill|the thumb|them drift|then press|theyll|thing|three second|through the|to knee|too|turn the|wander|weight over|whole time|yank the|you lock|your belt|your bottom|your bum|your foot|your little|youre doing|youre standing',
      ],
      [
        0.2,
        'a beat|a bus|a chicken|a drawer|a hammock|a hen|a lamp|a letter|a shoe|a tent|a zip|about as|achilles is|and back|and bring|and face|and step|and straighten|and swing|and take|and wide|and you|angle|ankle straight|are creeping|are dropping|as theyll|at one|at something|away with|baby|back on|backside|bar on|barking|bend one|biscuit|boat|bottom hand|bottom leg|bounce off|bounce them|bouncing off|breath going|breathe easy|breathe normally|breathe through|bring the|but not|carry on|caving|chair back|change leg|chase|cheating|chest a|chin level|clap|climbing|clock|coin|come and|complain|cramp|creeping|creeping up|cup|dive inward|diving in|do them|doe it|doesnt move|doing|dont arch|dont dump|dont flap|dont hitch|dont lean|dont open|dont rock|dont shove|dont stick|dont yank|down first|down for|down into|down through|drift out|drifting back|duck|dug|dug in|dump|easy doe|easy pace|egg under|elbow go|exhale as|exit|facing front|far enough|feel that|feet and|feet apart|feet hip|feet together|first|flap|float it|float the|floor ahead|floor foot|fold the|folded towel|folding|follow it|foot down|foot right|foot straight|for this|for three|forearm and|forward a|forward as|forward till|gap|gently|get a|get hurt|get it|get sore|giddy|go all|go down|go round|go so|goe down|goe out|gonna|grow up|grumpy|had a|hand together|happy|hat|head to|hear your|heel and|heel back|heel hanging|heel off|heel touching|held|hen|high|hike|hip are|hip arent|hitch|hitch the|hitching|if youre|in breath|in one|in youre|inside leg|it doesnt|it grow|it if|it lift|it stop|it there|it want|its in|jean|join|jumper|just clear|keep breathing|kerb|knee goe|knee height|knee hurt|knee if|knee under|lace|lamp|lamp post|land soft|leaning on|leg|leg forward|leg straight|leg when|let one|letter|like headlight|lino|locking|long from|long line|long slow|loop stay|loop the|lower yourself|measuring|meet the|next door|no hopping|not down|not like|not moving|not tired|of that|of two|off the|one elbow|one long|one out|one piece|one that|onto one|onto your|or you|other one|other toe|out a|out each|out every|outside|over the|paint|palm forward|partner|peel|peel the|pick a|pick your|piece|pinky|pint on|pocket is|properly|puff out|pulling your|push up|put one|putting your|quiet feet|reach as|reach one|reaching|right leg|ring down|ring like|rise up|roll down|round at|round one|rushing|same foot|say|second toe|seen|shin straight|shoe length|shove off|side|sign|skate|small and|smooth|smooth down|snap it|so drop|soft on|something to|square|squeeze a|stair|stand a|stand right|stand side|standing hip|start at|stay pointing|step down|stick your|straight ahead|straighten the|strap off|string|string on|string out|swing your|t|tail under|take one|tea on|ten|tension|than|than that|that cheating|that fine|that hip|that leg|that standing|that up|that you|the achilles|the backside|the edge|the end|the fence|the hand|the hold|the in|the kerb|the lino|the low|the mouth|the opposite|the pad|the right|the shin|the stair|the weight|their|then heel|then put|there for|theyll go|thigh level|those|three count|tip your|to heel|to just|to push|to roll|to run|today|toe down|toe facing|touch|trouser|under shoulder|under there|up again|up for|up out|up quick|up taller|waiting for|want to|weight|were|when the|while you|whole body|whole of|wide as|with both|with you|wobbling|wrist or|you lower|you press|you rise|you set|you step|you swap|you were|you wobble|your achilles|your butt|your pelvis|your seat|your shoe|your trouser|youre a|youre going|youre on|youre rushing|yourself up|zip',
      ],
      [
        0.1,
        'a bar|a bucket|a cramp|a gate|a nip|a pub|a spot|along with|and all|and low|and stare|and throw|ankle bone|as a|as tall|as treacle|as youve|asleep underneath|away from|back past|back pinch|be on|belly on|belt|belt height|bite|bobbing|both heel|both way|breathe away|bride|cat on|chair like|cheek of|closer|concrete|count down|crossing|doing it|dont hike|dont hop|dont lead|down slow|downstair|drawer with|drift|drive through|drive up|elbow close|enough i|even if|face it|feet come|find|floor with|foot just|foot only|get bigger|go for|go up|goe forward|ground|halfway|having|heal|hedge|heel toward|higher|hike it|hip stay|hop|hopping|horse|if itll|it because|it came|it small|it wander|its no|join it|just in|just off|knee get|knee no|lead with|leading leg|lean on|leaning|left leg|leg first|leg go|leg goe|letting|little loop|little step|lock out|lock the|look down|look straight|marcus|morning|movement|no bobbing|normally|not having|of like|of water|on something|one knee|one straight|only need|onto the|or your|out like|pain under|pendulum|point at|pub|pub sign|push out|put it|quit that|reach long|right down|ring in|rock your|roll through|root|set it|shape|shoulder level|six|small step|smaller|so its|so not|soft|somebody pulling|stand behind|stand tall|stare|stay still|stay there|steady as|steady beat|step about|step it|step that|stick|stop if|straighten it|swap the|tap the|that doesnt|that enough|that rail|the concrete|the dumb|the leg|the loop|the palm|the whole|them at|them in|then go|thigh together|thing in|to about|to join|to touch|toe forward|toe on|touching|toward it|trailing|trouble|turn and|two down|under control|wall behind|want you|way and|where your|will do|without|wrist stacked|you go|you look|you sagging|your palm|your pocket|your shoulder|youre all|youre pushing',
      ],
      [
        -0.1,
        'a car|a coffee|a dog|a long|a medal|a pace|able|able to|ach|across the|and change|and drop|and just|and open|and sink|and steady|and up|and your|arm back|arm go|as near|at about|away behind|back at|back nip|back under|bang your|bark|be able|because if|behind your|bell stood|bench away|bend both|bent up|bird|blood|blood pressure|blow out|body like|book on|bottom back|bounce it|bowing|breathe behind|breathe down|brush the|burning|button|carrying|cave in|cheat it|chest like|chest tall|close enough|coat|come back|come off|come over|coming back|coming out|cracking|cracking a|cross your|crossed|dead|doing the|dont bend|dont curl|dont force|dont go|dont hang|dont hurry|dont lift|dont poke|dont shrug|dont stop|down under|egg on|elbow are|elbow out|elbow point|elbow straight|elbow tucked|elbow up|end|end in|every one|exhale up|faster|feel for|feet go|feet out|feet stacked|finish|five|flat back|flick|floppy|foot out|for four|forearm on|forward until|front like|glued to|go again|go out|goe back|got the|hand a|hand by|hand resting|hang there|head and|heavy on|heel a|heel away|heel close|hit|home and|hot|if there|if they|im|in each|is not|isnt a|it across|it away|it isnt|it land|it leave|it nip|it open|it out|it slower|it start|its that|knee bend|knee nearly|knee only|knock together|knuckle|land quiet|lean your|leg nearly|length|lift one|lighter|like an|line from|little wider|lock it|long arm|long band|long step|low in|make fist|march|medal|moan|nearly|needle|nip|nippy|no rocking|not in|of air|of ten|on you|one dumb|one end|one in|only go|only to|or it|or on|out for|outside your|pain|palm down|palm facing|past your|pause at|pinch|plate|pointed|pointing at|poke|pop|press that|press through|press your|proud|push the|put a|quick off|rib and|rib stay|right foot|rush on|scoot|send the|shin level|shin up|shirt|shoulder and|shoulder away|shoulder heavy|shoulder stay|shoulder to|shoulder up|sink down|sink into|skip|slow coming|slump|so it|square to|squash a|stamping|start from|stay tall|stiff as|still there|stirring|stomping|straight leg|straight line|straight out|take two|taking|than you|that all|the bag|the bed|the bin|the breath|the ear|the fat|the head|the lower|the neck|the plate|the rhythm|the rib|the roof|the track|the waist|the wrong|them home|them knock|then you|there no|these|through it|till|time you|tingle|tip from|to cheat|to help|to lift|to shoulder|toe out|toe tucked|top hand|top leg|toward|towel|tucked back|turn away|up an|up between|up over|up so|up under|upper|upper arm|waistband|walk back|warm|washing|window|wood|wrist straight|wrong|you are|you have|you only|you push|your back|your belly|your chest|your forearm|your lap|your shirt|youre cracking|youve got',
      ],
      [
        -0.2,
        'a bell|a bit|a book|a metronome|a pencil|a quarter|a ruler|a saucer|a straight|a tightrope|a wall|a yard|across|against your|and look|and no|and not|and over|and quiet|and roll|and send|and slide|and that|and tip|and youre|arching|arm are|arm swing|arm up|at all|at it|at me|at shoulder|at you|away to|back a|back and|back behind|back into|back of|back together|back until|bag|be|belly button|below the|bent and|beside you|big breath|bill|bin|bit wider|blow|both knee|bottom of|bottom to|bounce|breathe slow|bring them|brush|bum back|can go|cant|car|cheek|chest and|chest proud|chest to|chin tucked|circle with|come|come forward|come to|come up|count back|count out|count to|crank|crank your|crease|creep|cross behind|cross in|curl your|cushion|cut|deep|deep in|dig|dip|direction|dizzy|dog|dont crank|dont fall|dont hold|dont move|dont reach|dont round|dont rush|dont step|dont swing|dont wobble|down as|down there|drag|dragging|drink on|dropping|each step|ease off|either|elbow bent|everybody|exhale|fall|far|far as|feel|feel the|feel your|feet a|few|few step|flat as|flex|flex the|flexed|floor in|foot flat|foot flexed|foot way|for balance|for the|force|forearm|forehead|forward like|forward over|front|front edge|front half|front heel|get up|give|give it|glued|go the|go without|good knee|gossip|got|grape|grumbling|half|half of|hand away|hand just|hand like|hand out|has|have|hear it|heel are|heel heavy|heel in|heel on|heel together|hinge|hip bone|hip up|hip with|hold it|holding|holding it|if it|if youve|in and|in both|in toward|into it|is|is a|it and|it bite|it go|it higher|it hurt|it is|it like|it roll|it short|it slide|it to|its coming|jaw|jog|joint|jump|just ahead|just outside|just the|kiss the|kitchen|knee are|knee drift|knee hover|knee not|knee to|knee travel|kneel|kneel on|land|lane|lap|leg away|leg in|leg long|leg soft|let you|lift both|lifted|like you|little sip|long leg|long spine|look a|look at|looking|looking at|lot|lower down|lower one|meat|meat of|melt|mind|mind the|minute|move your|mud|mud off|muscle|nailed|nailed down|neck|nice|no half|nose over|not behind|not to|of breath|of them|off a|off it|on hip|on two|one at|one foot|one of|one on|one ring|open|or|out front|over hip|over toe|own|pain in|palm|palm up|parade|past the|paying|pencil|picture|pin|pinch at|pinned|plonk|pointing forward|poking|pole|press it|pressed|puff|pull your|pump|purple|push it|push one|quick as|resting|resting on|right back|right hand|right knee|road|rocking|roll back|roll in|roll your|rope|round over|ruler|ruler length|scrape|second on|see|should feel|shoulder height|shoulder knee|shrug|shut|sip|sit on|sit straight|sit your|skim|slapping|slide it|slide the|slide up|slide your|slow like|small quick|snap the|so|so if|so stop|so the|so your|somewhere|spine|squashing|squeeze your|standing up|stay level|stay straight|stay stuck|stay till|step off|step your|stool|stop a|stop where|straight|straight at|strap in|stretch|stride|surgeon|swap hand|swimming|swimming pool|tail|tail and|tailbone|take|take a|take four|take the|tell me|that plenty|that side|that turn|the bell|the bus|the elbow|the hamstring|the handle|the lift|the like|the meat|the pelvis|the road|the straight|the towel|the wee|the wrist|them back|then lift|then squeeze|then stand|they|they come|they go|theyve|thigh|this|through and|tightrope|till its|tiny|tiptoe|to a|to feel|to it|to know|to level|to look|to lower|to meet|to straight|to your|toe go|toe to|top knee|track|trailing foot|train|tuck|under|under the|until it|up into|up tall|up the|upright|want the|watch|water|way out|well|wherever|wider than|width and|wrist hurt|yard|yard in|you and|you know|you land|you pull|you put|you stand|your arm|your body|your cheek|your face|your finger|your heel|your lace|your own|your partner|your time|your waist|youre done|youre getting|youre in|youve a',
      ],
      [
        -0.3,
        'a phone|a sewing|a time|a tray|again|and a|and feet|and foot|and hop|and push|and two|ankle over|arm and|arm by|arm out|away|back|back flat|back off|back up|being|bell|bend|bit|body|book|bow|brake|breastbone|breathe like|breathe out|bump|carpet|click|count|da|da dum|dont cross|dont like|down and|down in|draw|draw it|drink|dum|edge of|elbow under|feet in|feet on|feet wide|fist|fling|flop|foot forward|foot turn|for it|four|from the|front knee|further|get there|get your|getting|hand at|hand behind|hand up|hard|head|head on|hear|hip in|home|if a|in it|in till|inside of|into your|it be|it home|it pull|it should|it up|keep one|keep your|kiss|kissing|knee an|knee dont|knee down|knee in|knee on|knee stay|knee stop|land on|last|lean back|leg and|leg still|let them|lie|light on|line|long and|long back|longer|low back|lower it|machine|me|metronome|move|no bigger|no dropping|not|not up|other hand|other knee|out as|out over|out through|park|pedal|phone|pillow|point where|pointing|press down|pretend|pull|pull the|punch|quarter|quick step|reach with|rib down|ring at|roof|round|rush|sewing|sewing machine|shoot|short and|shoulder blade|shoulder down|side and|sigh out|sit up|so you|soft elbow|squeeze|squeeze the|stay up|step back|step one|stuck|that how|that where|the arm|the belt|the carpet|the cone|the far|the inside|the joint|the last|the post|the second|the water|them down|then sit|there|theyre|thigh to|tight|till you|to|to get|to hear|toe pointing|touch the|toward you|tray|tug|turn it|twisting|under you|until|up|up in|up like|up off|up with|wee|when youre|you lift|you stop|your breastbone|your breath|your chin|your head|your neck|your nose|your side|your tailbone|your toe|your whole',
      ],
      [
        -0.4,
        'a big|an ankle|and lean|and out|and slow|are|as far|as they|at a|away and|backward|before|before you|behind the|blade|breath on|bring it|chest up|coming|cross|face forward|foot and|from|from your|get down|heel down|hip back|in as|inch off|into the|it let|its your|knee go|knock|know|lazy|leaning back|leave the|leg up|let your|lift|like the|like youre|more|nearly straight|nothing|of you|on your|only the|over your|past|pick it|push your|quick|send|shin|sit tall|stay on|tell|the calf|the ceiling|the front|the line|the mat|the shoulder|the strap|then bring|travel|tucked|turn out|turning|waist|weight in|where the|whole leg|wider|with your|you come|your hand|your knee',
      ],
      [
        -0.5,
        'a sharp|an|arm|as if|at your|between your|big step|breathe into|ceiling|chest|chin|circle|cone|curl|down on|each hand|ease|fast|foot back|foot in|inside|into|it with|knee bent|knee over|mat|rhythm|shoulder|speed|stay down|the air|the grass|till it|walk|you feel|your ear|your elbow|youre not',
      ],
      [
        -0.6,
        'air|bent|bone|breath|ear|flat|grass|hamstring|hang|heavy|in front|in your|its a|knee out|lean in|leave|short|sink|the seat|with it|your leg',
      ],
      [-0.7, 'back heel|feet flat|lift your|light|long|out in|rib|seat|sigh|sit'],
      [-0.8, 'nose'],
      [-0.9, 'back knee|elbow'],
    ],
  ],
  [
    'ballistic',
    -0.5,
    [
      [0.9, 'bell'],
      [0.7, 'dip|forward and|it land|loose|throw|throw it'],
      [0.6, 'as it|catch|fast|hike|hike it|nobody|snap|the leg'],
      [
        0.5,
        'and back|between|catch it|drive|it up|let it|one hand|outside|park|punch|side on|start small|swing the|when it|your arm',
      ],
      [
        0.4,
        'a little|arm are|bell a|between your|big step|breath out|finish|finish with|it with|keep it|land|look behind|out at|outside leg|park it|rail|sharp|small and|snappy|the outside|then drive|up over|your ear',
      ],
      [
        0.3,
        'and catch|back at|breastbone|come from|doesnt go|dont lift|drive it|fall|finish it|fold|goe forward|grip|high between|hit|inside leg|it back|it close|it drop|it fall|it float|it get|it grow|it leave|it through|jump|kick|land soft|leg forward|leg throw|lock it|metre|of you|out when|overhead|pull it|rope|so it|soft|stay tall|step into|swing|tall on|to it|towel|up there|within|your breastbone',
      ],
      [
        0.2,
        'a bell|a flat|a pace|a pub|a shoulder|a towel|ahead of|and i|and look|and not|and park|and pick|are rope|arm by|back doesnt|back like|bell between|bend back|between the|bigger|breath in|breath on|bruise|by itself|cause|chase it|check its|chest height|coat|crook|dizzy|do the|doesnt|dont bend|dont fold|dont pop|dont squat|else|every time|feet a|feet wide|find a|float|floor and|foot ahead|for your|get bigger|get it|get your|grip it|grumbling|hanging off|height is|hip and|horizon|inside|into a|it at|it goe|it higher|it hit|it like|it over|it should|it small|its on|itself|jacket|kick it|knee bend|know|land like|leg that|like it|like its|lock|look in|make it|mean|near hand|on each|on to|one come|outside one|pace|pace you|pant|pub|pub sign|punch the|rest|rib dont|rib in|set it|sharp breath|shoulder that|sign|small|snap it|socket|squat it|stand side|straight down|that doesnt|the bell|the catch|the crook|the horizon|the rack|their|then pull|they dont|to a|up the|up with|up your|wind|wrist straight|you and|you know|your wrist|zip|zipping',
      ],
      [
        0.1,
        'a cat|and finish|and its|and just|are just|bell in|bite|body like|bouncy|chase|chin out|crash|dont kick|dont press|dont stop|drop it|each one|early|every rep|flat back|full|got a|hand round|handle|hinge|hook|isnt a|it isnt|its up|loud|on your|one|palm to|pick it|pop|rack|rep|reset|shoulder bite|squat|stand tall|standing|standing foot|stop halfway|swing it|teeth|the handle|the inside|then snap|then stand|till you|under it|wall|when its|you drive|your hamstring|your teeth',
      ],
      [
        -0.1,
        'a bit|a hand|across|across the|after|against|all the|an inch|and come|and down|and keep|and lower|and push|and the|apart|arm long|arm out|as far|as they|at a|away from|back and|back knee|back of|back pocket|backside|ball of|be|behind the|behind your|bench|bend the|bent|big toe|blow|both feet|both hand|bounce|bouncing|breathe into|bring your|bum|but|calf|chest|chest up|come|come down|coming in|count|dont bounce|dont roll|dont swing|dont tip|door|down on|drag|drop the|each hand|ease|elbow|elbow back|eye|far|far as|feel it|feel the|feet|fist|five|floor away|foot on|for the|forehead|four|front heel|front knee|get the|go|going down|gone|hand under|heavy|heel up|higher than|hip up|hurt|if it|in as|in on|in through|into|into the|it in|its a|keep breathing|knee|knee bent|knee over|knee to|knee up|leaning|left|leg first|leg long|leg out|let go|let them|let your|level with|lie|lift|lift the|lift your|like there|like youve|low as|lower it|me|middle|middle of|more|nice and|no bouncing|no higher|of|of it|on it|on one|one knee|one leg|opposite|other foot|out|out and|out like|palm|pinch|please|point|press the|pull the|pull your|push your|quiet|reach|ring at|round the|sag|seat|see|shoe|shoulder width|shove|sit up|slow as|slower than|slowly|smooth|sore|squeeze|stacked|start from|steady|step back|straight|straight out|strap|stretch|swap|table|tail|than you|that your|the band|the bar|the bench|the big|the chair|the hand|the kneecap|the middle|the neck|the ring|the seat|the thigh|the toe|the whole|them down|then let|there|this|through your|throw yourself|tight|till it|till youre|to your|toward|toward the|toward your|tuck your|turn your|under the|under you|up like|up tall|want to|weight|wherever|with it|yank|you can|you come|you feel|you want|your back|your belly|your chest|your foot|your neck|your shin|your tail|youre a',
      ],
      [
        -0.2,
        'a|again|air|all|an|and|and bring|ankle|as you|as your|away|back in|band|bit|both|breathe in|breathing|bring|bring it|button|chair|dont let|draw|easy|facing|feet flat|feet under|flat|floor|for|going|have|hip|if you|in each|it go|keep the|let|line|low|mat|nothing|one foot|over the|past|past your|plate|pocket|push the|ring|run|second|shin|shoulder|shoulder blade|side of|sigh|sit|slower|stand on|stay|that|the back|the bottom|the elbow|the floor|the foot|the heel|the mat|the rib|there a|thigh|till your|tip|to the|toe|top of|touch|tuck|tucked|until|up and|want|way down|where|whole|width|without|you|you pull|your bum|your heel|your knee|your nose|your side|youre|youre not',
      ],
      [
        -0.3,
        'back|belly|blade|bottom|breathe|can|come up|coming|dont|face|first|foot|half|hand|heel|hold it|level|nose|off|on|on the|open|out to|press|right|roll|than|the other|the side|them|till|together|turn|under|under your|up|yourself',
      ],
      [-0.4, 'feel|hold|in|lean|long|lower|neck|off the|push|step|take|to|your'],
      [-0.5, 'other|slow|the'],
      [-0.6, 'down'],
    ],
  ],
  [
    'breathing',
    -0.2,
    [
      [0.8, 'out for'],
      [0.7, 'for four|four|in through'],
      [0.6, 'for six|mouth|one hand|out through|six|the in|the out'],
      [0.5, 'breathe in|fogging|nose|nose and|one on|through your|tummy|way out|your belly|your nose'],
      [0.4, 'and one|go back|in for|just breathe|nose for|ordinary'],
      [
        0.3,
        'a balloon|a window|and then|any|arent|as the|balloon|climb|cooling|empty|end of|fill|hand round|headed|hurry|it all|it sink|lip|no hurry|than the|up as|window|your mouth|youre cooling|youre fogging',
      ],
      [
        0.2,
        'a beach|a long|and easy|as wide|be a|beach|belly up|bottom at|bottom hand|chasing|chasing you|climb up|corner|crossed|cushion|cushion under|dont heave|dont puff|each one|fogging a|for two|giddy|go dizzy|go wide|heave|heave it|in by|just go|knee bent|long way|longer|longer than|low down|move|nobody chasing|normally|one a|out breath|puff your|quieter|rise|sand|seam|see the|shoulder arent|sigh|sigh it|split|stay quiet|the air|the corner|the lower|the nose|them drop|to be|to do|top hand|trying|trying to|wide as|your jaw|your pelvis|your top|your tummy',
      ],
      [
        0.1,
        'a pillow|and breathe|as long|breath be|breathe normally|come over|dizzy|dont force|dont lift|dont squeeze|first and|force it|go tingly|goe out|hand apart|hand stay|in breath|long and|make the|mirror|old|pelvis|rib are|sit bone|soften|the mouth|the turn|through a|tingly|twice|twice as',
      ],
      [
        -0.1,
        'a hand|a touch|above|across|after|against|ahead|an|and back|and come|and down|and if|and keep|and lower|and no|and not|and your|arch|arm are|arm by|arm long|arm out|arm straight|armpit|as high|as it|as your|at a|at the|back foot|back knee|back of|back on|back pocket|back up|backside|ball of|band|because|before|behind the|behind you|behind your|belly button|below|belt|bend the|bend your|between the|big toe|bit|board|body|both feet|both hand|bounce|bouncing|box|breath|breath out|breathe|breathe into|breathe out|bring it|bring the|bring your|butt|button|calf|catch|cheek|chest and|chest up|collarbone|come back|curl|do|doesnt|dont arch|dont bounce|dont drop|dont go|dont hold|dont roll|dont tip|down like|down the|drag|draw|dumb|dumb bell|each hand|ease|edge|elbow under|em|end|enough|even|exhale|facing|far as|fast|feet hip|find|finish|five|flat|flat on|floor|floor away|fold|follow|foot on|for the|forehead|front heel|front knee|further|get it|go|go up|goe|going|going down|gone|good|got|grab|grip|ground|grow|hamstring|hand|hand under|handle|hanging|have|heel and|heel down|heel up|high as|higher than|hold|hold the|hold your|hurt|if its|if there|if youre|in|in a|in each|in on|inside|into it|into the|isnt|it a|it come|it goe|itll|its the|its your|jaw|keep breathing|keep it|knee and|knee over|knee soft|knee to|knee up|kneecap|knuckle|leaning|leave|left|leg long|leg out|length|let|let go|level with|lie|lift|lift the|like there|like youve|little|lock|long|looking|loop|low as|lower it|middle of|more|near|nearly|nice|nice and|no bouncing|no higher|not the|not your|now|off your|on a|on to|one knee|one leg|only as|opposite|or|other foot|other leg|out at|out of|past your|peel|pick|please|plenty|point|pointing|pop|press the|pull it|pull the|pull your|push off|push through|put it|rail|rib|rib down|ring at|rock|roll out|round|sag|set|sharp|shoe|short|should|shoulder|shoulder down|shove|side|side on|sit|sit back|sit down|slide|slower|slowly|soft knee|sort|sort of|stacked|stand on|stand tall|standing|stay down|stay on|step back|stick|still|straight down|straight up|strap|swap|table|tail|take your|than you|than your|that how|that your|the ball|the band|the bar|the bench|the edge|the feet|the ground|the hand|the hip|the inside|the kneecap|the outside|the rail|the seat|the shoulder|the side|the toe|the way|them down|them up|then|this|three|three second|thumb|tight|till it|till the|till youre|to come|too|top|toward the|towel|tuck your|turn your|two|under you|until|up at|up off|up tall|up the|up there|up to|waist|walk your|way|wee|what|while|whole foot|wider than|with it|without|yank|you dont|you know|you like|you pull|you push|you should|you stand|you want|youll feel|your bottom|your breath|your finger|your foot|your hand|your leg|your low|your neck|your shin|your tail|your wrist|youre|youre a|youre not',
      ],
      [
        -0.2,
        'a|about|again|and|and bring|and stand|ankle|are|as|as a|as far|as you|at|at your|away|away from|back|back and|back down|bar|behind|bell|bench|bend|between|between your|blade|blow|blow out|both|bring|bum|by|by your|can|ceiling|chest|chin|come|come down|coming|count|dont|dont lean|dont let|door|down and|down to|drive|ear|every|eye|eye on|face|far|feel|feel it|feet|feet under|finger|fist|forearm|from the|from your|front|front of|get|half|hang|height|high|higher|hip|hip width|home|i|if|if it|if the|if your|in as|in front|into|is|it|it back|it down|it up|its|its a|its not|keep|keep your|knee|know|land|lean|lean back|leg|level|like|like a|line|look|look at|low back|lower|me|middle|neck|no|not a|of|of the|of you|off|off the|on|on it|on the|one|one foot|only|onto|other|out|out in|out on|out to|outside|over|over the|over your|palm|past|pinch|pocket|press|push|push the|put|quick|reach|right|ring|roll|seat|second|shin|shoulder blade|slow|small|so|soft|somebody|sore|squeeze|squeeze your|stand up|start|stay|steady|stop|swing|take|tall|the|the arm|the back|the ceiling|the elbow|the floor|the foot|the front|the heel|the knee|the leg|the middle|the other|the ring|the thigh|the top|the wall|the whole|them|there a|they|thigh|till your|time|tip|to|to get|to your|together|top of|touch|toward|toward your|tuck|tucked|turn|under|under your|up|up and|walk|wall|way down|way up|weight|when|when you|where|whole|wider|width|with the|with your|wrist|you|you can|youll|your|your arm|your back|your bum|your chest|your chin|your ear|your elbow|your feet|your head|your heel|your hip|your knee|your shoulder|your thigh|your toe|yourself|youve',
      ],
      [
        -0.3,
        'arm|down|elbow|foot|forward|from|head|heel|in the|not|pull|stand|step|straight|that|there|till|to the|toe|with',
      ],
      [-0.4, 'hand in'],
      [-0.5, 'as they|loose'],
      [-0.7, 'big'],
      [-0.8, 'out as'],
    ],
  ],
  [
    'carry',
    -0.2,
    [
      [1, 'walk'],
      [0.8, 'quick step'],
      [0.7, 'small'],
      [0.6, 'bang|bell|put it|put them'],
      [0.5, 'breathe behind|dont lean|each hand|one hand|put|step'],
      [
        0.4,
        'a tray|arm long|grip|pick it|quick|shoulder back|small quick|small step|swap hand|tray|walk to|watch|your leg',
      ],
      [
        0.3,
        'and put|as if|bang your|behind the|bend your|by the|down to|drag|dumb|dumb bell|each|grow|in each|in one|keep breathing|knee to|late|late but|let them|mind|mind the|one in|pick|short|short quick|stand tall|them down|youre late',
      ],
      [
        0.2,
        'and watch|brace|but|chin up|door|down with|from under|full|full of|isnt moving|it down|its been|lean away|off to|out from|pick them|pint|pint on|pretend there|quiet feet|rib to|short step|shoulder level|standing up|the bag|the bell|the bin|the plate|the room|them bang|them up|to drop|to hold|to it|to toe|up with|walk back|walk tall|walk the|watch your|wee|your foot|your grip',
      ],
      [
        0.1,
        'a book|a coat|a full|a plate|a string|and back|and mind|arm by|bag|behind it|bell in|bell up|bin|book|book on|breathe like|coat hanger|door and|down gently|drag your|far wall|feel your|fire|fire door|get down|go purple|grip going|hanger|heaviest|held|its too|jug|milk|mind your|on something|one on|pick up|pretend|purple|room|short and|shoulder down|sign|small breath|something that|spin|stand like|stand next|swap|tall like|that isnt|the far|the fire|the weight|to put|to somebody|toe out|too heavy|tray on|twisting|up first|use your|way home|you lean',
      ],
      [
        -0.1,
        'a|a hand|a touch|above|against|ahead|along|an|and come|and if|and lift|and lower|and no|and not|and push|and then|and your|arch your|arm are|arm out|arm straight|armpit|as a|as high|as the|as they|as your|at a|at your|away|back foot|back knee|back on|back pocket|back up|backside|ball of|be|because|before|behind your|belly button|below|bend the|bent|between the|big toe|board|body|both feet|bounce|bouncing|box|breath|breath out|breathe into|bring it|bring the|bring your|butt|button|calf|catch|cheek|chest up|close|come back|come down|coming|curl|do it|doesnt|doing|dont|dont bounce|dont roll|down|down like|down on|draw|drop|drop the|ease|elbow under|em|enough|even|every|exhale|face|facing|fall|far as|fast|feet hip|find|finish|five|flat on|float|floor away|fold|follow|foot on|forehead|four|from|front heel|front knee|further|gently|get|get it|go up|going|going down|gone|good|grab|halfway|hamstring|hand|hand by|hand under|hanging|hard|heel and|heel down|heel to|heel up|higher than|hold|hold the|hold your|how|if the|if youre|if youve|in on|inch|inside|into it|it a|it back|it come|it go|it goe|it in|its the|its your|keep it|keep the|knee and|knee over|knee soft|kneecap|knuckle|land|last|leaning|leg|leg long|leg out|let|let it|level with|lie|lift the|like|like a|like the|like youre|little step|lock|looking|loop|low as|lower it|middle of|move|near|nearly|nice|nice and|no bouncing|no higher|nose|not the|not your|of a|of it|on a|on that|on to|one|one knee|one leg|only as|other foot|other leg|out at|out like|out of|over|over your|past your|peel|plenty|point|pointing|pop|press the|pull it|pull the|push off|push through|push your|rack|rib down|ring at|rise|rock|roll out|round|sag|same|see|sharp|shoe|should|shove|side of|side on|sideway|sigh|sit back|sit down|slow as|slower than|slowly|smooth|soft knee|sort|sort of|stacked|stand on|stay down|stay on|step back|stick|still|straight down|strap|tail|talk|than you|than your|that how|that your|the ball|the band|the bench|the chest|the end|the feet|the ground|the hand|the inside|the kneecap|the nose|the outside|the rail|the rib|the seat|the toe|then let|then the|they|theyre|think of|three second|thumb|till it|till the|till youre|time|to|to come|to your|toe|towel|tuck your|tummy|turn your|two|under you|until|up off|up on|up over|up tall|up there|waist|walk your|wall|want|want to|what|when|whole|whole foot|wide|wider than|wing|with|wrist|yank|you can|you feel|you get|you go|you know|you like|you pull|you push|you stand|you want|youll feel|your|your bottom|your breath|your elbow|your heel|your low|your neck|your shin|your shoulder|your tail|your thigh|your wrist|youre not',
      ],
      [
        -0.2,
        'a bit|a little|about|again|all|all the|and|and bring|and let|and the|ankle|apart|are|arm|as|as far|as it|as you|at|at the|back|back down|back of|ball|band|bar|before you|behind you|belly|belt|bench|between|between your|big|bit|blade|blow|blow out|bone|both|both hand|bottom|breathe in|bring|bum|can|ceiling|chair|chin|come up|count|do|down and|drive|elbow|end|feel|feel it|feel the|feet|feet flat|feet under|fist|flat|floor|foot|for the|forearm|forward|from the|front of|go|goe|ground|half|hang|heel|height|high|high as|higher|hip width|hurt|i|if|if it|if there|if your|in|in as|in the|in your|into|into the|is|it|it out|its|its a|its not|just|knee|knee up|lean back|leave|let your|lift|lift your|long|loose|low|low back|make|mat|me|middle|neck|no|not|not a|now|of|of the|of you|of your|off|off the|on|on it|on the|one foot|only|onto|open|opposite|or|other|out in|out on|out to|outside|over the|palm|past|pocket|press|pull your|push the|rail|reach|rib|right|ring|roll|seat|second|shin|shoulder blade|sink|slide|slow|slower|so|soft|sore|squeeze|squeeze your|start|straight|take|than|that|the|the arm|the bar|the bottom|the ceiling|the chair|the door|the elbow|the floor|the foot|the heel|the hip|the knee|the leg|the mat|the middle|the other|the ring|the shoulder|the side|the thigh|the top|the wall|the way|the whole|thigh|think|three|through|through the|tight|till|till your|together|top|touch|toward|toward your|tuck|tucked|under|under the|under your|up|up to|way|way down|way up|where|wider|width|with the|you|you come|youll|your arm|your back|your belly|your bum|your chest|your chin|your feet|your hand|your hip|youre|yourself|youve',
      ],
      [
        -0.3,
        'breathe out|chest|come|for|front|hand on|hip|in front|lower|out|out as|pull|push|sit|stay|stop|the back|the front|then',
      ],
    ],
  ],
  [
    'circles',
    -0.1,
    [
      [1.7, 'circle'],
      [0.8, 'lazy'],
      [0.7, 'circle with|draw|stirring'],
      [0.6, 'lap|poke|your lap'],
      [0.5, 'a big|arm hanging|bowl|dinner plate|ear|horn|plate|round|the horn|the table|upside|upside down'],
      [
        0.4,
        'a dinner|a saucer|arm hang|as they|breathe like|brush|catch|chin out|dinner|direction|dont poke|it by|it goe|make|move|nice and|poke your|round your|saucer|table|they drop|way round|your ear',
      ],
      [
        0.3,
        'back and|big|breathe in|drawing|drawing a|go the|hat|if one|in as|its sore|like stirring|nice|only the|rock your|roll them|shoulder up|size|size of|smaller|sore|the size|the sore|them drop|up to|your body|youre drawing',
      ],
      [
        0.2,
        'a ring|a wardrobe|an ankle|and draw|ankle over|around|around your|at all|big as|bigger|bottom to|breath go|breathe as|brush your|chin level|dance|dont move|downstair|draw a|draw your|goe behind|hair|hand in|hitch|hold it|it around|it be|it between|it hurt|it round|its only|leg still|lid|lighter|loose|make the|move the|no bigger|opening a|rock|shrugging|side on|speed|stand like|take it|that one|the ankle|the chin|then go|to make|waiting|wardrobe|when its|wider|your hair|your hat|youre shrugging|youre waiting|youve not',
      ],
      [
        0.1,
        'a bowl|a coffee|a lighthouse|a scarecrow|a wet|and down|and its|big and|big one|breathe all|breathe however|breathe normally|by the|chin stay|coat|coffee|collar|collar bone|come forward|concrete|dangling|did|dont hitch|draw it|duck|foot just|frame|front and|glass|goe round|hanging|hip are|however|however you|imagine|in for|it forward|knee just|let you|lighthouse|little one|move your|movement|no rush|no wider|normally|off a|on both|opening|pick up|poking forward|ponytail|quietly|round the|scarecrow|set it|shake them|shoulder stay|slump|socket|someone|stay by|stay out|than it|the body|the frame|the lift|the pocket|they come|toe a|treacle|up past|up round|walked|washing|way through|wet coat|whole leg|with both|your chair|your collar',
      ],
      [
        -0.1,
        'a|a hand|a little|a touch|about|above|above the|after|against|ahead|air|all|all the|along|an|an inch|and|and come|and if|and lift|and lower|and no|and push|and then|and your|arm|arm are|arm by|arm long|arm straight|armpit|as|as your|at a|back|back foot|back in|back knee|back on|back pocket|back to|back up|backside|ball of|because|before|behind the|belly button|below|belt|bend|bend the|between|board|both feet|bottom|bounce|bouncing|box|breathe into|breathe out|breathing|bring it|bring your|bum|butt|button|calf|ceiling|chair|cheek|chest up|chin|come|come back|cross|curl|doesnt|doing|dont|dont bounce|dont drop|dont go|dont hold|dont let|dont roll|dont tip|down|down like|down the|drag|drop the|dumb|dumb bell|each hand|ease|exhale|fall|far as|feel|feel it|feel your|feet|feet hip|feet under|find|finger|fist|flat|float|floor away|fold|foot on|forearm|forehead|four|from the|front heel|front knee|front of|further|gently|get it|go|going down|gone|got|grab|grip|hamstring|hand on|hand under|handle|hard|heel and|heel down|heel up|high|higher than|hip|hip width|hold your|holding|how|if|if its|if your|in|in each|in front|into it|into your|is|it|it come|it down|it go|it in|it off|it out|itll|its a|its your|keep breathing|keep the|keep your|knee over|knee to|knee up|kneecap|knuckle|last|leaning|leave|left|leg out|let it|lie|lift it|lift the|like youve|little|lock|looking|loop|low as|lower it|middle of|near|neck|next|no|no bouncing|no higher|nobody|nose|not|not your|now|of|of the|off|off the|on it|one knee|one leg|only|only as|opposite|other|over the|peel|plenty|pointing|press the|puff|pull it|pull your|push off|push through|push your|put it|rail|rest|rib|rib down|ring|roll out|rolling|sag|set|sharp|shoe|should|shoulder|shoulder down|shove|side|side of|sideway|sit back|sit down|slow as|slower than|smooth|squeeze the|squeeze your|stacked|stand|stand on|stand up|standing|stay|stay on|step back|stop|straight up|strap|swap|tail|take your|than|than you|than your|that how|that your|the|the ball|the band|the bar|the ceiling|the chest|the edge|the end|the feet|the ground|the kneecap|the neck|the rail|the same|the seat|the toe|the wall|then let|then the|there|think of|three second|till it|till your|till youre|tip|to come|to get|to the|toward the|towel|tuck|tuck your|tucked|tummy|turn your|under|up|up at|up like|up off|up tall|up there|walk your|weight|while|whole|whole foot|with the|without|yank|you feel|you get|you go|you like|you pull|you push|you should|you stand|you want|youll feel|your|your bottom|your chin|your elbow|your foot|your heel|your low|your neck|your shin|your tail|your wrist|youre a',
      ],
      [
        -0.2,
        'a bit|across|again|and bring|and the|are|as far|as you|at|at the|away from|back down|ball|band|bar|before you|behind|behind your|belly|bent|between your|blow|blow out|breath|bring|can|chest|come down|coming|count|do|door|down and|down to|drive|each|elbow|elbow under|end|every|eye|face|facing|far|first|floor|foot|from|from your|front|get|going|ground|have|heel|height|higher|home|i|if the|if you|inch|into the|it back|it up|its the|just|keep|knee|knee bent|land|lean|leg|let go|lift your|light|like a|line|long|look|look at|low|low back|lower|mat|me|middle|of your|on|on a|on the|one|one foot|one hand|onto|open|or|other foot|out|out as|out in|out on|out to|over|over your|palm|press|pull the|push the|put|quick|reach|right|ring at|same|seat|second|see|short|sink|slide|slower|so|somebody|squeeze|start|straight|that|the bottom|the chair|the floor|the front|the heel|the hip|the leg|the mat|the middle|the ring|the side|the thigh|the whole|then|thigh|think|this|three|through|through the|through your|thumb|till|time|to|toe|together|too|top of|touch|toward|toward your|turn|two|under the|up on|walk|wall|want|want to|where|width|wrist|you|you can|you come|youll|your arm|your back|your bum|your chest|your feet|your hand|your knee|your leg|your nose|your thigh|your toe|yourself|youve',
      ],
      [-0.3, 'at your|away|bit|into|on your|pull|push|the knee|the top|top'],
      [-0.4, 'for a|in the|jump'],
      [-0.5, 'five|halfway|the outside|what'],
      [-0.6, 'soft|till the|until'],
      [-0.7, 'hand|outside|tall'],
      [-0.8, 'for|lift|sit|step|wide'],
    ],
  ],
  [
    'curl-up',
    -0.3,
    [
      [1, 'hand behind'],
      [0.9, 'behind your'],
      [0.8, 'chin|elbow wide|shoulder up'],
      [0.7, 'arm by|curl|neck'],
      [0.6, 'and shoulder|head and|other leg|your ear'],
      [0.5, 'banana|closing|ear|eye on|leg long|low|roll up|shoulder blade|sip|tap|up in|your head|your neck'],
      [
        0.4,
        'a banana|armpit|blade|both leg|by your|each other|for a|how|in a|knee bent|lift both|little breath|low back|pedal|roll back|room for|shaking|tap the|that how|too low|yourself up',
      ],
      [
        0.3,
        'air|and come|and not|arm to|as high|back doesnt|back down|back into|back stay|bent|blade clear|boat|bone at|chin off|clear|closing a|curl the|curl up|curl your|doe|each side|faster|fingertip|flatten|goe down|goe in|half the|hand are|haul|head|height off|hollow|into the|just a|just the|knee in|left|leg up|nipping|one bone|over hip|paddle|peel|peel your|pop|press your|puff|punch it|quarter|row|send|short|short breath|shoulder and|table|the far|then roll|to knee|whip|yank|your tummy|your waist',
      ],
      [
        0.2,
        'a boat|a chair|a coffee|a cup|a foot|a loaf|a straight|a time|an egg|and float|and go|and rest|and slide|and turn|arm straight|as low|at a|at you|back arche|back flat|back from|back go|beat|belly on|bend your|both shoulder|came|cant|change|chest stay|chest with|chin not|chin tucked|coffee|coffee on|coffee table|corner|crept|cup|cup of|daylight|daylight under|doing it|dont fling|down one|each turn|either|elbow flapping|elbow just|elbow out|elbow to|facing each|far knee|feel that|finger and|fingertip behind|flapping|fling|for you|get up|glued|hand it|has|head goe|head up|heel a|heel about|heel into|height of|hold your|instead|it for|it start|its just|its your|jammed|just off|just tap|knee over|leave the|leg as|leg down|leg goe|leg only|let one|lie|lie on|like theyre|loaf|long by|low as|lower slow|melt|neck soft|no medal|not jammed|not your|off and|on each|on every|one heel|opposite knee|out every|pointed|pop up|pressed|proud|puff out|punch|put your|rib heavy|rib that|rib to|rib tucked|right knee|roll on|rolled|room|send the|shin level|shoulder catch|shouldnt|sitting|skim|sky|slide the|slide your|sock|speed you|squeeze and|start from|stomping|sunday|swing the|tall at|that it|that turn|the air|the handle|the head|the low|the mat|the neck|the sky|there to|time you|to me|toe pointed|tongue|touch your|toward it|toward the|turn the|twice|twice as|up one|up with|waist|wee bit|while the|whole time|yank on|you came|you only|you roll|you turn|your eye|your low|your mouth|youre a',
      ],
      [
        0.1,
        'a one|ach|and roll|and throw|arching|arm over|as long|back the|breathe out|can keep|clear the|doe it|dont haul|dont heave|dont throw|down than|drive your|egg|every turn|feet down|float the|going to|haul on|heave|heel off|height|ice|just do|keep talking|kicking|knee drift|left arm|left knee|leg away|like it|mat|no kicking|on them|one two|or it|over and|poking|popping|popping up|reach the|rib down|rib toward|rowing|second to|shoulder away|slower down|stay glued|talking to|than up|that your|the right|then change|then float|through the|throw|to you|touching|up higher|up off|up till|way to|way you|you think|your left',
      ],
      [
        -0.1,
        'a|a touch|about|against|and back|and dont|and out|and stand|ankle|arm are|arm out|around|as|as it|as treacle|as your|at it|away|back and|back like|back nip|back on|back over|back till|back up|backside|ball of|band behind|be|before you|bell|below|between the|big toe|bit|blow|board|body|both feet|bouncing|breathe in|butt|button|by the|calf|chair|chest up|close|count|cramp|do it|dont arch|dont bounce|dont just|dont lean|dont push|dont tip|down into|down the|down till|drag|draw|drop the|dumb|dumb bell|each hand|elbow back|em|end|even|face|fall|fast|feel|feel it|feel the|feet hip|feet under|finish|flat under|floor away|foot on|for the|for two|forward and|four|from|further|get the|go as|go away|go up|going|going down|good|got|grab|grip|hamstring|hand by|hand in|hand off|hanging|hear|heel and|heel down|hip up|hold|hold it|hold the|holding|i|if its|in each|inside|it a|it all|it arche|it come|it down|it go|it in|jump|kick|knee down|knee soft|knee stay|knee toward|knuckle|last|lead|leaning|level with|like|like the|like youve|locked|long breath|looking|loop|loose|move|near|next|no bouncing|nobody|of it|of you|off you|on top|one hand|one leg|onto your|other foot|out in|out of|over it|palm up|past|pick|please|pointing|pressure|pull it|pull your|put|put it|rail|ring at|rise|roll off|roll out|round|round the|run|rush|sag|shoe|should|shoulder down|shove|sit back|sit up|smooth|soft knee|something|sort|sort of|spread|squeeze the|squeeze your|stand tall|stand up|standing|stay flat|stay heavy|step back|stick|stop|straight down|straight out|straighten|strap|string|swinging|take a|tall|than your|the back|the ball|the band|the bar|the bench|the big|the feet|the foot|the hip|the inside|the nose|the outside|the rail|the same|the seat|them down|thigh|this|three second|through your|tight|till it|to|to a|tray|tuck|under shoulder|underneath|up the|wait|walk your|want to|weight|wherever|whole|whole way|wider|wider than|width|with it|with your|wrist straight|you|you feel|you get|you lift|you push|you want|your bottom|your breastbone|your foot|your hip|your shin|your toe|youre|youve got',
      ],
      [
        -0.2,
        'a bit|a couple|about a|ahead|all|and|and bring|and down|and if|and let|apart|arch|as the|as they|back pocket|back to|bar|before|bench|between your|bottom|breastbone|breath out|breathe into|breathing|bring your|chest and|chin out|coming|couple|couple of|dont go|dont roll|door|down|down on|drop|far as|first|forehead|front of|hand|hand on|heavy|heel goe|if the|if youve|in as|in front|it|it off|it up|keep breathing|knee to|land|lazy|lean back|length|level|lift it|lift the|lower it|make|moving|nip|no|not a|of|on it|on the|one arm|one foot|onto|opposite|opposite arm|out as|out to|outside|over the|over your|past your|pinch|pocket|pull|same|seat|sharp|side|sink|slow as|so|squeeze|stay|stay on|tail|the chair|the end|the front|the ring|the thigh|the wall|then let|through|treacle|under your|up on|wall|want|when you|where|with the|you dont|you go|your feet|your nose|your side|your tail|your wrist',
      ],
      [
        -0.3,
        'as far|back|back of|band|behind you|between|elbow under|enough|forearm|go|hang|home|in|in the|into your|its|let it|let the|like youre|one|out|palm|ring|sigh|sit|slow|straight up|the|they|thumb|till|tip|to the|toward your|under|up|up to|walk|your|your bum|youve',
      ],
      [-0.4, 'big|bum|dont|feet|foot|forward|from the|hip|if it|lean|nose|push|soft|stand|when|wrist'],
      [-0.5, 'front|let|of the|step|straight|with'],
      [-0.6, 'breathe'],
    ],
  ],
  [
    'deep-hip',
    -0.5,
    [
      [0.9, 'knee wide'],
      [0.6, 'hug|rock|side to|sink|to side|wide|your heel'],
      [0.5, 'back leg|forehead|inside|the back'],
      [
        0.4,
        'and fold|apart|between your|both hand|elbow up|fold|give|hand together|has|heavy|inside of|instead|into your|it in|knee apart|kneel|sit back|spread|the hand|the inside|together',
      ],
      [
        0.3,
        'a slant|after|arche|arm long|at all|back on|back spread|big toe|breathe low|collapse|come out|down in|down on|flex|flex the|forward and|front foot|happy|inside the|into|into the|knee at|knee down|let each|let your|one knee|only as|past the|right foot|sink down|sit your|slant|slide the|some|spread out|stretch|tailbone|the breath|the nose|the toe|to go|toe together|toe turned|toward the|turned|turned out|up between|warm|with both|you like|your arche',
      ],
      [
        0.2,
        'a drawer|a hip|a towel|about a|and just|and knee|and up|and walk|asking|at it|back as|back knee|back to|belly drop|bit in|block|book|bring one|bum back|bump|butt back|chest down|chest tall|crank|crank your|deep|dont crank|dont dump|dont force|down at|drawer|dump|enough that|feet to|foot through|force|forward on|forward till|glute|going back|hand a|hand at|hand away|head down|heel and|hip back|hip youre|hugged|ice|in with|it give|it melt|its about|its kind|jerk|knee are|leg away|lie on|long in|low as|low in|lower them|machine|melt|neck up|no prize|on that|on you|opening|other leg|out breath|out going|prize|put a|ready|really|roll off|roll onto|shuffle|shutting|sigh|sigh it|sink the|slide forward|slide it|slow out|stay till|step one|step up|tail under|than the|the belly|the face|the finger|the glute|the kneecap|the left|the palm|them in|then come|there no|till there|to look|together at|touching|towel under|twisting|under it|up when|went|when youre|where the|wider|you a|you went|your butt|your joint|your right|your tailbone',
      ],
      [
        0.1,
        'a heavy|a pull|about thirty|after it|along the|and roll|ask|away along|back toward|bell by|big sigh|breathe into|can go|come|come forward|comfy|didnt|down between|down into|down slowly|drop down|each breath|elbow|feet wide|fold in|for you|frame|front shin|gentle|gently|get heavy|go heavy|go where|hand and|hand out|hand round|hang on|heel a|heel of|horn|hug the|in my|it away|it click|its like|its there|just a|kind|knee dont|knee not|kneecap sore|lie|little sip|little wider|longer|loud|medal|medal on|more than|mouth|my|near the|nose and|not for|of air|of ten|or the|out long|out the|out there|out through|over onto|over your|pain at|phone|poking|pull them|roll it|roll over|shin upright|shoulder are|sink between|sip of|six|sole|some of|somewhere|stay long|strain|tail|take four|talk|talk to|tall chest|that back|that hip|that not|thatll|the bus|the forehead|the horn|the low|the tail|the wrist|then you|there|thirty|till its|tingle|to|today|toe go|waiting|waiting for|walk the|walk your|way out|week|what its|where its|you are|you can|your mouth|your tail',
      ],
      [
        -0.1,
        'a little|across the|again|against|ahead|all|an inch|and back|and bring|and keep|and lift|and no|and not|and stand|and the|and your|arm by|arm straight|as a|as high|as if|as it|as they|as you|at your|away|back foot|back in|back into|backside|ball of|bar|before|before you|bell|belly button|below|bend the|bend your|blade|blow|blow out|board|box|breastbone|bum|but|button|catch|chest up|come back|come down|come up|count|do it|doing|dont drop|dont go|dont hold|dont lean|down and|drag|drift|drop the|dumb|dumb bell|each hand|edge|elbow under|even|every|exhale|eye|eye on|face the|facing|fast|feel the|feet flat|feet hip|feet under|find|fist|five|flat on|float|floor away|follow|foot on|for a|force the|from|from it|from your|front heel|further|get it|going|going down|good|grip|ground|grow|half|hamstring|hand down|handle|hanging|hard|heel up|high as|higher|hip width|hold|hold it|hold your|holding|how|hurt|if it|if there|if youre|in and|in each|in on|isnt|it a|it goe|itll|its not|its your|jump|knee and|knee soft|knee to|know|last|lean back|leaning|leg out|leg up|level with|lift the|like there|line|lock|look|looking|loop|loose|lower it|make|me|meet|move|nearly|next|nice and|not a|not the|not your|now|of you|off your|on the|one foot|one leg|onto the|open|opposite|or|other knee|out|out like|pick|pocket|point|pointing|poke|pop|press the|puff|pull|pull the|pull your|push|push off|push the|quick|quiet|rail|ring at|rise|roll out|room|run|same|see|set|sharp|shoe|short|shoulder blade|shove|sideway|sit up|slide your|slow breath|small|smooth|soft knee|somebody|something|spine|squeeze your|stand tall|stand up|standing|start|stay|stay down|stay on|steady|step back|stick|stop at|straight down|strap|take|take your|tall|than your|that where|the band|the bar|the big|the bottom|the edge|the end|the floor|the foot|the ground|the middle|the outside|the rail|the room|the same|the side|the whole|them down|then let|then the|theyre|think of|three second|tight|till youre|tip|tip forward|too|top|tucked|turn your|under|under you|up at|up like|up off|up there|way down|way up|when you|where you|while|whole foot|with|with the|without|yank|you dont|you get|you go|you know|you push|you should|you stop|youll feel|your bottom|your breath|your bum|your chin|your foot|your low|your pocket|your shoe|your thigh|youve got',
      ],
      [
        -0.2,
        'across|all the|arch your|arm go|around|away from|back down|back sag|back up|band|behind|behind you|bounce|breathe in|by your|calf|chair|chin|coming|dont arch|dont bounce|down your|draw|drive|ease|end|fall|feel|first|floor|foot|foot forward|forearm|from the|go|go long|goe|got|hand in|hand on|have|high|i|inch|it down|it up|knee bent|lean in|leave|leg|let go|let it|level|light|low back|lower|middle|one|other foot|out to|outside|over the|press|pressure|reach|right up|round|round the|sag|second|should|squeeze|step|still|swing|that|the chair|the ring|the towel|the wall|the way|think|three|thumb|to get|two|until|up and|up over|want to|whole|width|youll|your ear|your elbow|your feet|your finger|your hip|your nose|your side|your toe|youre',
      ],
      [
        -0.3,
        'a|an|and let|ankle|as|at the|bend|bent|bottom|by|ear|get|height|hip|if|in your|is|knee on|lift|like|like a|like youre|not|off the|so|the other|there a|they|to the|under your|wall|want|with your|your leg',
      ],
      [-0.4, 'and|arch|flat|lean|no|off|other|over|ring|soft|stand|stop|the shoulder|turn|up|way'],
      [-0.5, 'dont|feet|out as|slow|straight|you'],
      [-0.6, 'it|shoulder'],
    ],
  ],
  [
    'deep-knee',
    -0.4,
    [
      [0.7, 'together|your heel'],
      [0.6, 'instead|knee together|shin up'],
      [0.5, 'dont arch|forehead|heel|heel to|knee wide|kneecap|one hand|sink|sit back|the thigh|tuck your|wide'],
      [
        0.4,
        'ankle|ankle behind|apart|arch|arch to|arm long|catch|down the|heel toward|inside the|into your|knee apart|only as|pad|tailbone|the heel|up the',
      ],
      [
        0.3,
        'after|and catch|arch your|arche|be the|breathe into|by side|collapse|complain|down in|elbow up|foot out|front of|hand together|heavy|hug|inside|kneel|melt|out in|side by|sigh it|sink down|sit|sit your|stay there|tail|the kneecap|the nose|thigh|toe turned|touching|tuck|turned|turned out|up tall|walk your|warm|wider|your ankle|your arche|your butt|your tail',
      ],
      [
        0.2,
        'a heavy|and up|and walk|away along|back on|back to|bell by|big toe|bring your|butt|butt back|by the|can go|can stand|come|dont yank|down as|down at|down on|drop down|feet wide|fold in|gentle|go and|go where|grab|hand at|hang on|heel and|hold on|horn|in my|into|it click|it or|its there|lie|lie on|like you|little sip|long breath|long in|low as|lower them|medal|medal on|my|nose and|other foot|out long|out the|ready|really|roll it|roll onto|sink between|sip of|slow out|slowly|stop there|tall chest|thatll|the bus|the fence|the finger|the horn|the palm|them in|to touch|toe go|toe together|together at|trouser|up when|waiting|waiting for|week|what its|when youre|where the|wider than|yank|yank the|you are|your foot|your tailbone|your trouser',
      ],
      [
        0.1,
        'a bell|a pull|after it|along the|and just|and roll|and stop|arm out|around your|as close|bite|breathe low|bum back|can|catch in|cave|cheat|cheat it|chest down|close to|coat|come off|come out|comfy|dont have|down between|elbow|feeling|fence|foot behind|foot forward|for you|forehead down|forward a|gently|go a|go heavy|grab the|gripping|hand away|hand out|hang out|happy|have to|heel a|heel away|heel dont|heel of|hip bone|hip forward|hold of|hug the|inside of|into the|is where|it away|it bite|it catch|it should|it want|just hang|just hold|knee go|kneecap sore|let that|little wider|long slow|machine|moaning|of air|of pulling|on you|out sideway|out there|press that|pump|push|put a|right knee|right there|roll off|sip|some of|spread|stay close|stay long|strain|tail under|talk|talk to|that hip|that what|the ankle|the breath|the forehead|the inside|the joint|the muscle|the rack|them|then you|there for|theyre not|time|to cheat|today|touch your|turn round|under it|wandering|way in|with both|yank it|youre feeling',
      ],
      [
        -0.1,
        'a bit|about a|across|across the|again|ahead|an inch|and back|and down|and if|and keep|and lean|and lift|and no|and not|and sink|and the|and your|are|arm by|armpit|as a|as high|as if|as it|as they|away from|back down|back in|back into|back knee|back sag|back up|ball of|bar|before|below|below the|bend the|between the|blade|blow|blow out|board|both|both feet|bounce|breastbone|bring the|but|come back|come down|coming|could|crank|do the|doing|dont drop|dont go|dont hold|dont roll|dont tip|down and|drag|drift|drift forward|drive|drop the|dumb|dumb bell|each|each hand|edge|elbow under|end|enough|even|every|exhale|eye on|face the|facing|far|fast|feel it|feet flat|feet hip|feet under|first|fist|five|float|floor|floor away|follow|foot in|foot on|foot way|force the|forward and|from it|from the|from your|front knee|further|go|going down|good|half|halfway|hamstring|hand forward|hanging|hard|high as|higher|hip width|holding|how|if there|if youre|in and|in as|in each|in on|inch|is|isnt|it a|it all|it back|it come|it goe|it in|it let|it till|itll|its a|its not|jump|keep breathing|keep hold|knee bent|knee to|knee up|know|last|leave it|leg long|leg out|leg up|level with|lift the|lift your|lifted|like there|line|little|lock|look at|loop|loose|low back|make|me|middle|move|near|next|not a|of you|off|off your|on one|onto the|opposite|or|other knee|other leg|out like|out to|outside|over your|past|plenty|pocket|pointing|poke|pop|press|press the|pressure|puff|pull it|push off|quick|quiet|right up|ring at|rise|rock|roll out|room|round the|same|see|sharp|shoe|shoulder blade|shove|side|side on|slower|slower than|soft knee|somebody|speed|spine|spot|squeeze your|stand up|start|stay|stay down|stay on|stay tall|stick|straight down|swing|take|take your|than you|than your|that where|that your|the air|the big|the bottom|the edge|the end|the feet|the floor|the middle|the outside|the same|the whole|then let|think of|three second|thumb|toe up|too|toward the|tucked|turn your|under the|up and|up in|up off|up over|up to|upright|way back|way down|way up|wee|when you|while|whole foot|without|wrist|you come|you feel|you get|you go|you know|you push|you should|youll feel|your bottom|your breath|your chin|your neck|your nose|your shin|your shoulder|your wrist|youre not|youve got',
      ],
      [
        -0.2,
        'a|all the|an|and|arm go|as you|away|band|behind the|bend|bent|bit|breathe in|breathing|by your|calf|ceiling|chair|count|do|dont|draw|eye|face|fall|forearm|get|go long|goe|going|got|hand in|height|high|i|if you|in your|into it|it up|just|keep your|lean back|lean in|left|let go|level|lift|light|like a|look|more|now|of that|off the|on the|other|out on|over the|reach|right|round|sag|second|short|slide|small|squeeze|still|stop|the ceiling|the chair|the hip|the ring|the top|the towel|the way|there a|they|think|three|through|till it|till your|tip|turn|two|under|under your|until|weight|whole|width|you want|youll|your ear|your elbow|your feet|your finger|your hip|your leg|your side|your toe',
      ],
      [
        -0.3,
        'about|all|at|at the|back|back heel|back hip|bottom|chin|ear|ease|feel|flat|head|in|it|its|keep|leave|like youre|lower|no|one foot|one knee|so|that|then|to the|top|towel|want|with|with your|your head',
      ],
      [-0.4, 'as|breathe out|forward|from|leg|like|not|one|out as|ring|the other|the shoulder|till|way|you|youre'],
      [-0.5, 'hip|lean|over|soft|up'],
      [-0.6, 'feet|shoulder|step|straight'],
    ],
  ],
  [
    'forearm-supported',
    -0.4,
    [
      [1.6, 'elbow under'],
      [0.8, 'line'],
      [0.7, 'forearm'],
      [0.6, 'elbow|i|lift your|stacked|tent|under the|waist|your forearm'],
      [0.5, 'a tent|feet stacked|in line|keep breathing|knee down|lift|sag|under|your elbow|your thumb'],
      [
        0.4,
        'and do|breathing|bum|dont sink|drop to|elbow toward|feet back|floor away|forearm down|hammock|hip sag|hip stay|plank|pull your|squeeze your|the shoulder|then the|to one|top arm|toward your|your hip|your shoulder',
      ],
      [
        0.3,
        'a hammock|a long|and lift|back up|belly button|button|come down|do it|dont hold|dont roll|floor with|foot in|higher than|hip and|hip till|i dont|if that|is a|just hold|lift up|middle sag|my|not your|one long|press back|push back|push up|rest|rush|shoulder got|sink|step your|straighten|swap|swap the|tea|tea on|that shoulder|the hand|the leading|the waist|till youre|to heel|top foot|under your|underneath|wrist or|your low|your waist|youre a',
      ],
      [
        0.2,
        'a wall|against your|and hold|and open|and out|are up|arm goe|bottom one|bouncing out|breathe dont|bum down|bum in|button up|dont rush|dont want|drink|droop|ear to|everything|feet wide|feet wider|forearm on|free|goe first|grumble|hand into|head to|hear|hip forward|hip up|i can|if its|it settle|just in|leading|level with|lift from|line with|little one|long neck|look at|low back|make|minute|nearest|nipping|no lower|of drink|only a|open it|push the|put your|right under|roll back|roll your|sagging|screw your|settle|shoulder away|shoulder hurt|shoulder over|shoulder sore|sink in|sink into|squeeze everything|start to|stay there|straight line|strap in|that bottom|that working|that you|the rope|the underneath|their|those|toe tucked|toe without|top shoulder|tuck your|under shoulder|until youre|up round|wave|were|which|you own|your other|your right|youre getting|youre one|youre straight',
      ],
      [
        0.1,
        'a race|a time|and leave|and make|and not|and stay|arm under|away behind|away with|bottom side|brick|change|done|drag your|each time|elbow are|feet behind|follow the|foot ahead|hip drop|hip high|hot sand|its too|just to|lift the|long line|make one|moving them|not behind|one at|one elbow|one line|one straight|onto one|picture|rafter|rib that|rush the|sag like|sand|save|screw|side that|sip|slow and|start in|stay where|straight from|sweep|that turn|the rafter|the rest|then|they are|to ear|to hear|to knee|tray of|underneath side|up onto|washing|watching|where they|where your|without moving|you press|your top|your wrist',
      ],
      [
        -0.1,
        'a fist|a foot|a hand|a little|about a|above the|across the|along|an|and back|and bring|and down|and if|and keep|and push|and slide|and stand|and the|and then|and your|arm are|arm by|arm long|around|as far|as high|as low|as they|as you|at|back and|back of|back on|ball|ball of|band|because|before you|behind the|behind your|bend the|bend your|big toe|blood|blow out|bone|both feet|both hand|bounce|box|breath out|breathe down|breathe in|bring your|brush|by|by the|ceiling|chair|chest and|cramp|dont arch|dont bounce|dont go|dont lean|dont push|down|drive|dumb|dumb bell|each hand|enough|every|facing|far|far as|feel|feet hip|find|fingertip|finish|flat on|float|fold|for the|for two|forearm flat|forehead|from it|front|get it|give|going down|going up|half|halfway|hand and|handle|hard|heel and|heel down|high|holding|home|if youve|in as|in each|in on|in to|isnt|it a|it away|it come|it goe|it out|it up|jump|just|knee in|knee soft|knee up|kneecap|know|last|lean back|leaning|leg out|leg up|length|let go|let it|let the|lie down|locked|loose|low as|lower it|move|near|next|nobody|not out|nothing|now|on a|on it|one leg|only|only as|other foot|other leg|other one|out and|out at|out in|out like|peel|pick|pillow|pinch your|plenty|pocket|point|poking|pop|post|pressure|pull it|push it|push through|put|quick|rail|rib down|ring at|room|round the|run|same|second|set|shirt|shoe|short|shoulder width|sideway|sit down|slower than|soft knee|something|speed|stand on|stand tall|stay|stay down|step back|stop|stop when|straight down|straight out|straight up|swing|swinging|table|take|take your|that how|the arm|the ball|the band|the bar|the board|the ceiling|the chair|the edge|the end|the inside|the kneecap|the leg|the outside|the rail|the same|the toe|the towel|the tummy|the whole|then let|they|three second|through the|tight|till|till the|tip|to a|to come|to get|toe|toe up|up on|up the|way down|way up|when you|while|whole|wider|yank|you come|you know|you like|you pull|you should|your arm|your bottom|your breastbone|your chin|your eye|your feet|your foot|your leg|your shin|youve got|youve just',
      ],
      [
        -0.2,
        'a|above|across|all the|and let|and lower|ankle|apart|arch|arm|arm out|as it|back to|bar|be|been|before|bell|between|between the|blow|board|breastbone|breath|bring|calf|chest forward|come up|curl|dont|dont shrug|down like|draw your|ease|easy|elbow further|end|fast|feel the|feet flat|feet under|foot|going|good|grab|hamstring|hip width|how|if it|it back|it down|its|keep your|knee|knee under|lazy|lean|let|let them|light|like a|like youre|lock|loop|lower|more|off the|on|on the|one knee|opposite|out as|out on|outside|over the|palm|put it|rock|round|shin|should|shrug|slide your|slower|steady|tall|the back|the belly|the chest|the foot|the forearm|the heel|the top|there|thigh|this|through|till your|to|too|toward the|tummy|turn|two|up to|walk|way|weight|with it|wrist are|you|you get|your knee|your neck|your rib',
      ],
      [
        -0.3,
        'a bit|all|and|as|as your|back|between your|big|blade|breathe out|by your|finger|further|get|heel|height|it|lie|of|of your|off|out to|over|rib|shoulder blade|slow|soft|stand|step|the front|the knee|the way|to your|towel|up|when|width|your|your back|your chest|your head|your heel|youve',
      ],
      [-0.4, 'about|bend|bit|both|chin|draw|for|hand|hand under|heavy|leg|like|sit|slide|the'],
      [-0.5, 'chest|flat|go'],
      [-0.7, 'out'],
    ],
  ],
  [
    'half-kneeling',
    -0.2,
    [
      [0.9, 'tuck'],
      [0.8, 'arch'],
      [0.7, 'other foot'],
      [0.6, 'dont arch|squeeze the|tuck your|your tail'],
      [0.5, 'back hip|front of|kneecap|sore|tail|that back'],
      [0.4, 'arch your|back knee|foot out|good knee|hug the|kneecap sore|one knee|right at|shin up|tail and|up the'],
      [
        0.3,
        'a mat|cheek|down on|drift|drop it|each breath|ease|foot forward|it a|knee down|knee on|lie|of that|shift|tail under|the edge|towel|under it',
      ],
      [
        0.2,
        'a stretch|arch to|at ninety|back flat|back leg|back stay|bobbing|both side|breath out|buttock|cushion under|dont pull|down off|drift out|drop to|dump|ease into|edge|folded|further|get heavy|get there|glute|good|good leg|gravity|help|hip forward|hug|it drop|it get|it let|it shouldnt|knee at|kneel|leave the|let each|new hip|ninety|no bobbing|no further|on a|out sideway|pillow|put a|right foot|roll back|shouldnt|sit right|take it|the crease|the glute|the good|the pelvis|the pocket|the sore|to where|tuck the|up from|way back|what|where youll|you could|you sit',
      ],
      [
        0.1,
        'a towel|and ease|back cheek|bounce it|bum cheek|cheat it|chest tall|crease|cushion|dont dump|down with|drift forward|foot way|front thigh|hang over|have it|it till|kneeling|kneeling side|lie down|lie on|lifted|new|of what|out breath|out front|pelvis|slide it|sore leg|stay flat|the buttock|the cushion|the kneecap|the kneeling|the left|till there|towel under|under and|up between|what you|with one|youll have|your tailbone',
      ],
      [
        -0.1,
        'a hand|a little|a touch|about|across the|ahead|air|along|an|and back|and bring|and if|and lift|and lower|and not|and push|and then|and your|arm are|arm by|arm long|arm out|arm straight|armpit|as high|as the|as they|as your|at a|back|back and|back in|back on|back pocket|back to|back up|backside|ball of|because|before you|behind the|behind your|belly button|below|belt|bend the|bend your|between|between the|big toe|bit|board|body|both feet|both hand|bouncing|box|bring it|bring the|but|butt|button|calf|can|chest|come back|come up|curl|do|doing|dont hold|dont roll|down like|down to|drag|draw|drop|drop the|dumb|dumb bell|each|each hand|elbow under|em|even|exhale|facing|fall|far as|fast|feel it|feet hip|finish|five|flat|flat on|float|floor away|follow|forehead|four|front heel|front knee|get|go up|going down|gone|grab|grip|ground|half|hamstring|hand on|hand under|handle|hard|heavy|heel and|heel down|heel up|high as|higher than|hip|hold your|holding|how|hurt|if its|if there|if youre|if youve|in each|in on|inside|is|isnt|it come|it goe|it out|it up|its your|knee|knee and|knee over|knee soft|know|knuckle|last|lean|leaning|leg|leg long|leg out|let it|let the|level with|lift the|lift your|light|like there|like youve|little|lock|looking|loop|loose|low as|lower it|middle of|move|nearly|nice|nice and|no bouncing|no higher|nobody|not the|not your|of|of a|of your|off the|off your|on it|on to|one leg|onto|opposite|or|or your|out a|out at|out like|over the|past your|peel|pick|plenty|pointing|pop|press the|puff|pull the|pull your|push off|push through|push your|put|put it|rib down|ring at|rise|rock|roll out|round the|sag|same|seat|see|set|sharp|shoe|short|should|shoulder down|shove|side|side of|side on|sit back|sit down|sit up|slide|slow as|slower than|slowly|smooth|soft|soft knee|sort|sort of|stacked|stand on|standing|stay down|stay on|step back|stick|straight down|straight up|strap|swap|table|take|take your|tall|than your|that|that how|that your|the ball|the band|the bar|the chest|the feet|the ground|the hand|the inside|the knee|the outside|the rail|the same|the toe|them down|them up|then let|then the|theyre|think of|three second|through the|through your|till|till youre|tip|to come|to your|too|toward the|tummy|turn your|under|under you|up at|up like|up off|up there|up to|walk your|wall|want|wee|weight|while|whole foot|wider than|with it|without|you come|you dont|you feel|you get|you like|you pull|you push|you should|you stand|youll feel|your belly|your bottom|your breath|your finger|your foot|your hand|your head|your neck|your nose|your shin|your wrist|youre a|youre not|youve got',
      ],
      [
        -0.2,
        'a|across|again|all|all the|and|and down|and the|apart|are|as a|as far|as if|as it|as you|at|at the|at your|away from|back down|back of|ball|band|bar|before|bell|belly|bend|bent|big|blade|blow|blow out|bone|both|bottom|breathe|breathe in|bring|bum|by|by your|ceiling|chin|come|come down|coming|count|dont|dont lean|dont let|door|down|down and|drive|ear|every|eye|eye on|face|far|feel|feel the|feet flat|feet under|finger|first|fist|for|forearm|from|from the|from your|go|goe|going|got|hand|head|height|high|higher|hip width|hold|home|i|if|if it|if you|if your|in|in as|in the|in your|it|it down|its|its a|its not|just|keep|keep the|keep your|knee bent|land|lean back|let|let them|let your|level|lift|line|long|look|look at|make|me|middle|neck|no|nose|not a|of you|off|on|on the|on your|one|one hand|only|open|out|out on|out to|outside|over|over your|palm|pinch|press|pull|push the|quick|rail|reach|rib|ring|roll|round|second|shoulder blade|sit|slow|slower|small|so|somebody|squeeze your|stand|stand tall|stand up|start|stay|steady|step|still|stop|swing|than|the|the arm|the bottom|the ceiling|the chair|the elbow|the foot|the heel|the leg|the mat|the middle|the other|the ring|the shoulder|the thigh|the top|the whole|there|there a|they|think|this|three|through|thumb|tight|till your|time|to|to the|top|touch|toward|toward your|turn|two|under your|up|up and|walk|want to|way|way down|way up|when|whole|wide|wider|width|with|with the|with your|wrist|you|you go|your|your arm|your bum|your chin|your ear|your elbow|your feet|your heel|your hip|your knee|your leg|your rib|your side|your toe|yourself|youve',
      ],
      [
        -0.3,
        'arm|as|away|breathe out|elbow|feet|floor|heel|like|like a|like youre|lower|not|out as|push|shoulder|straight|the floor|the way|them|then|toe|your shoulder|youre',
      ],
      [-0.5, 'down the|hold the|yank'],
      [-0.6, 'catch|point'],
      [-0.7, 'ankle|behind you'],
      [-0.8, 'behind|together'],
    ],
  ],
  [
    'hands-supported',
    -0.3,
    [
      [1, 'hand under'],
      [0.9, 'press|the ring'],
      [0.8, 'hip height|ring|shoulder over|tight'],
      [0.7, 'at hip|chest to|forward a|opposite hand|ring at|wrist'],
      [
        0.6,
        'arm locked|at a|between the|elbow go|finger|fist|hand in|kneel|press up|sag|up in|width|wrist are|your belly|your hand|your wrist',
      ],
      [
        0.5,
        'and back|and foot|arm straight|chest down|drift|forearm and|glass|going down|it away|keep the|knee an|lock|spread|spread your|the edge|the other|then the|there no|toe tucked|too|too far|tray of|turn the|upper',
      ],
      [
        0.4,
        'a fist|a hand|a mat|a time|a tray|a wall|air|and slow|balance|before your|between|chest a|dont sit|drag|elbow point|far as|finger wide|fist off|floor away|get out|go on|go up|hand and|hand shoulder|in slow|inch|inch up|just in|leg together|let your|long back|mat|not out|off with|one at|only|out behind|push down|push the|quiet|ring down|ring out|shape|sink between|small step|start in|straight arm|support|that a|the air|the bench|then|tip forward|to a|tummy|wider|with you|wrist sore|you press|you push|your palm|your thigh',
      ],
      [
        0.3,
        'a drawbridge|a foot|a hammock|a pace|above it|ache|ahead of|all four|an inch|and press|and push|and shove|and turn|arm goe|away|back at|back dip|belly drop|belly up|bench|breath on|creeping|crush|deeper|dizzy|dog|dont bend|dont drag|dont fall|dont sag|down between|down till|drawbridge|drift out|drop to|edge|elbow are|elbow toward|every time|everybody|feet back|feet in|find|find a|finger over|foot go|foot in|for two|go as|go forward|go till|ground away|hammock|hand a|hand down|hip dont|hip up|hop|i dont|i want|if the|in a|into a|jump|just ahead|keep your|kneel on|last bit|leading|lean forward|locked|lower your|once|one piece|opposite|pant|point back|point behind|pointing at|press back|press down|press through|pull back|push away|push it|right hand|ring a|ring stay|sag when|sagging|save|second going|send|send your|shorter|should feel|shoulder are|shoulder width|slide out|slow out|square|stay close|stay level|stay still|step up|still|stop there|straight leg|strap|strong|tail|the wrist|them|then push|then walk|those|to hear|toe pointing|tray|tuck|tuck your|until your|upper arm|wait|walk|walk it|walk them|want the|wider than|wood|you lock|you not|you should|your butt|your fist|your knuckle|youve a',
      ],
      [
        0.2,
        'a bell|a bow|a chicken|a dog|a finger|a newspaper|a pint|a towel|a wet|a wrist|an angle|an arrow|and drop|and feet|and hop|and its|and jump|and lift|and quiet|and right|and send|and wait|and walk|angle|are at|are creeping|are drifting|are level|are sore|arm bend|arm level|arm to|arrow|as far|as wide|at an|back flat|back over|back sag|balance a|belly sag|bend your|bigger|bite at|board|body in|both hip|breastbone|breath in|bring the|brush your|bum stay|bum to|butt|button up|can get|care|chest between|chest goe|chest on|chest up|chicken|clench|clench your|closing a|come in|concrete|corner of|count of|creeping up|dip|do not|doesnt go|dont care|dont clench|dont leave|dont sink|down like|dragging|drawn|drifting|each armpit|edge and|elbow straight|empty|everything|face forward|feet as|flared|flat back|floor between|fly|forward at|get back|go all|go back|go out|go slow|goe first|going out|gone|gone too|grip the|halfway|hand go|hand off|hand out|hang like|harder|have to|hear|heel touching|hip arent|hip under|hop up|hover|hum|hurt in|if theyre|in down|in going|in to|in two|invited|it cant|it get|it hurt|it is|it still|just hold|just off|just wider|kitchen|knee in|knuckle|land soft|leaning on|left and|level like|like there|little step|little wider|load|lock out|lock the|look a|low and|lower back|lower yourself|make fist|meet|moving them|never|never let|newspaper|no deeper|no half|of tea|on each|on them|one elbow|only as|only to|opposite foot|other one|out sideway|out so|out there|outside your|over it|pace|pedal|piece|pinch at|pinned|pint|pint on|plank|pointed|press till|push up|pushing|put a|quiet feet|quiet hand|reach back|ring are|ring like|run|screw|set the|shoulder away|shove the|shuffle|sign|sit on|slant|slow down|small breath|so come|so the|soft feet|start to|stay low|step off|step out|step that|step the|sticking|still as|stop halfway|straight and|straight back|straight to|strap off|t|taller|tea on|tent|that elbow|that foot|the concrete|the ear|the elbow|the joint|the low|the push|the second|the side|the thumb|the trailing|the upper|them drift|then bring|then press|then pull|then roll|then you|theyre|theyre not|this one|thumb out|tired|to ache|to catch|to head|to where|toe pointed|touching|towel|trailing|trailing foot|travel out|tuck the|tummy tight|turn out|two down|two second|under each|up top|wait at|walk your|wall behind|way in|weight on|which|wing|without moving|wobbly|wrist stay|you drop|you get|you have|you stop|youll feel|your finger|your fingertip|your jaw|your lane|your lower|your thumb|your watch|youre tired|youve gone',
      ],
      [
        0.1,
        'a board|a hair|a sleeping|a small|a t|a tent|about hip|and in|and just|any|at each|away so|back of|back start|back still|back together|backward|band goe|barking|bend in|bending|brace|bring them|came|can come|chest proud|closing|come over|crisp|do them|dont cross|dont press|down softly|drawing a|drop when|drop your|each step|either|elbow and|facing the|feet come|feet dont|feet find|feet wide|flaring|foot up|forward to|from you|front till|had|hand slide|hand width|head hang|hip and|hip crease|hip go|in and|in by|it on|knee not|left foot|lift from|little sip|loop round|mat with|mirror|no bigger|no holding|no more|no sagging|of breath|of you|one in|only your|onto one|or you|out till|pointing forward|right foot|ring in|ring to|roll it|round one|sea|shoulder level|showing me|sink into|sip of|skim the|slapping|sleeping|slow is|sore|spin|splay|step into|step one|swap the|swim|tea|the breastbone|the dumb|the fist|the mirror|the straight|the strap|the width|the wood|them back|them in|thigh and|till youre|to hip|to look|to make|to run|toe at|twisting|up a|walking|way through|wet towel|width and|width of|with them|wrist hurt|wrist or|you came|you come|you could|you jump|you sink|your tummy|youre a|youre after|youre closing|youre in|youre leaning|youre showing',
      ],
      [
        -0.1,
        'a big|a boat|a chair|a lift|a straight|a touch|a washing|a yard|about to|after it|already|and hang|and lazy|and let|and slide|and start|and the|and up|anything|apart|arm are|as it|as its|as the|at|at it|back as|back heel|back there|back toward|bad|ball of|bar|bell in|below|below the|belt|big breath|big toe|body stay|bottom doesnt|breathe out|cave|cheating|circle|colin|come to|comfy|coming down|curl your|cushion|dead|dive|dive in|done|dont bounce|dont crank|dont force|dont go|dont shove|dont stop|dont throw|dont yank|down as|down with|dragged|duck|each other|early|elbow tucked|elbow up|end in|feel the|feet are|feet off|feet on|finger tingle|flat at|foot forward|for three|force|forward and|forward until|from the|gate|give it|go long|go over|grow|grumbling|hand at|hand forward|hand together|hang|head come|heavy on|heel down|heel stay|heel up|here|hip in|hold of|honey|how you|however|hug|i can|if i|if that|im|in that|in toward|in your|into|ironing|it all|it from|it go|it isnt|it let|it settle|it straight|it there|it till|it to|its not|just a|knee are|knee go|knee straight|knee wide|kneecap|knock|lap|lay|lean away|lean in|lean into|leaning back|leg away|leg goe|lift up|little toe|long breath|long from|look down|lower than|lower them|make it|making|melt|metre|middle|mind|nearly straight|need to|nip|no hurry|not a|not in|not locked|nothing|on it|on one|on that|operated|or leave|other arm|other knee|out as|out into|out long|out over|out wide|overhead|pair|pencil between|people|pick|pillow|pinch in|plenty|point at|poke|pole|post|push your|rack|rail|reach your|rib and|rock|roll back|roll your|round it|round the|rush|sag like|second toe|shoulder and|shoulder up|sing|sit down|sit tall|sit up|slack|slide one|slow enough|small as|something that|spine|stand|stand tall|stay over|stick out|strap in|swing the|swinging|take the|talk to|that plenty|the ankle|the bell|the blade|the bottom|the brick|the bum|the calf|the cheek|the far|the fire|the handle|the head|the lace|the leg|the opposite|the paint|the rope|the standing|the top|the window|there and|these|they go|thigh|this time|three count|through the|through your|throw|thumb up|tightrope|till it|to drop|to feel|to get|to heel|toe|toe point|toe up|toward you|track|tree|turn round|under hip|up between|up by|up on|up through|up your|upright|use|wall|way to|we|weight in|what|when youre|where youre|with a|with it|yanking|yard|yard in|you like|you stand|your bottom|your chin|your eye|your foot|your forehead|your front|your left|your partner|your you|youre carrying|youre waiting',
      ],
      [
        -0.2,
        'a bus|a drawer|a few|a look|a pencil|a shoulder|about|across|against|all in|an ironing|anchor|and a|and come|and dont|and go|and it|and lean|and out|and put|and round|and youre|arch your|arching|arm and|arm length|arm long|arm up|as an|away behind|back|back down|back get|back into|back on|back out|backside|bag|been|behind your|bell|boat|bob|bounce|breath|breath out|breathe like|bring your|bum and|bump|carrying|ceiling|chest open|chin over|come up|complain|count out|crank|curl|do the|doing|dont hunch|dont just|dont lock|dont puff|dont push|dont rock|dont roll|dont swing|dont tip|down on|down the|down your|draw your|drive|drop off|each one|ear to|ease off|elbow a|elbow stay|enough that|exhale|face away|feel|feel your|feet forward|feet stacked|feet under|fine|finish|fire|flip|flip over|foot on|for|for the|forehead|forward till|from your|front knee|get it|glued|go in|goe up|grab|half|hand behind|handle|hanging|hard|have|head height|heel and|hip back|hold on|hook|hunch|if there|if youre|if youve|in under|isnt|it a|it across|it doesnt|it land|it like|it nip|it open|it up|itll|its your|ive|jog|keep it|kind|kind of|kiss|knee arent|knee down|knee over|knee to|knuckle to|lazy|leg straight|leg up|let|let yourself|lie|lift|lift the|light|line with|look straight|looking at|loose|lot|lower it|middle of|middle sag|moan|my|need|no swinging|nose|nose to|not|not your|off a|on you|one|one heel|one leg|one side|only a|onto the|opening|opposite arm|or it|out when|over|pain|paint|palm down|palm facing|palm up|partner|past your|pause|pencil|planted|pop|press it|press your|puff your|pull|pull the|pulling|push through|push yourself|put the|reverse|rib|right up|roll|same|sat|say|second on|see the|sharp|shoe|short step|shoulder knee|sigh|slope|slow breath|slower than|smooth|so if|soft|soft knee|some|spot|stacked over|standing|step away|step back|step through|straight up|straighten|stretch|string|sway|take|take it|than that|that when|that where|the back|the belly|the breath|the ceiling|the chair|the end|the foot|the lift|the line|the rest|the speed|the table|the toe|the weight|there for|they come|thumb on|thumb round|to it|together at|toward the|up|up over|up the|up with|washing|washing line|water|way out|way up|well|when it|where|whole time|window|yank|you lift|you pull|youd|your back|your backside|your cheek|your collarbone|your face|your forearm|your leg|your nose|youre on',
      ],
      [
        -0.3,
        'across the|along the|and bring|and down|and float|and if|and roll|arch|arm by|around|as|as high|as if|as they|at chest|at shoulder|at the|back knee|back off|be|bent|bone|both|both feet|bottom|bouncing|breathe dont|breathe into|but|by|cheek|click|come down|coming|dont arch|down a|ease|easy|eye|feet a|few|flat on|follow|forearm on|from it|gently|high as|higher than|hip drop|how|into the|it come|it down|knee up|lace|lean|leave|leave it|length|let the|let you|line|look at|look up|no bouncing|no higher|nobody|of your|other hand|over to|over your|palm|peel|pulled|push off|quick|rope|round up|see|shin|shoulder down|shoulder stay|sit back|slower|snap|sort|sort of|stacked|stay|stay down|stay on|stick|straight ahead|straight out|talk|tall|than|that|the door|the thigh|them up|they|three|tingle|top of|toward|underneath|up at|when|whole foot|wrist straight|your chest|your middle|youre not',
      ],
      [
        -0.4,
        'ankle|at your|big|breathe|dont|dont lean|door|draw|elbow down|feet flat|hand flat|into it|it|its|keep breathing|like youre|long|one foot|past|seat|shoulder blade|shoulder height|sit|slowly|swing|the|the seat|the wall|weight|your|your ear|your rib|your toe',
      ],
      [
        -0.5,
        'again|along|blade|breathing|chair|chest height|face|flat|higher|in the|it out|lean back|reach|through|up to',
      ],
      [-0.6, 'chin|heavy|high|leg|open|round'],
      [-0.7, 'arm out|elbow under|heel|knee|let it|your heel'],
    ],
  ],
  [
    'hanging',
    -0.3,
    [
      [1.5, 'ring'],
      [1.2, 'box'],
      [1, 'the box|the ring'],
      [0.9, 'let go'],
      [0.7, 'hang|hip height|ring at'],
      [0.6, 'at hip|before|chin over|into your|shoulder down|step up'],
      [
        0.5,
        'backward|bending|dont kick|dont swing|drop off|find the|forward a|kick|of a|straight arm|strap|till your|when|when youre',
      ],
      [
        0.4,
        'a little|and step|as the|behind you|blood pressure|come off|crate|curl your|deep|dont go|down to|em|ever|feet down|feet on|find|get long|grip|joint|knee to|knee up|leave|long arm|of it|pocket|ring high|sip|step off|tail under|the crate|the elbow|then let|to your|up high|upside|upside down|went|your elbow|your feet',
      ],
      [
        0.3,
        'a shoulder|and hang|and sink|back on|been|before you|bend the|block|blood|both feet|both knee|bring your|done|dont bend|dont drop|down away|down till|elbow straight|get up|give|good|head height|hop|it get|jump|just let|knee come|knee in|know|lean forward|little sip|locked|look straight|lower them|nobody drop|off it|out of|over the|pinch on|point|press down|pressure|push down|ring up|roll back|rolling|shoulder are|slow as|slow down|so stop|so your|stay straight|step back|still|straight back|tail|the armpit|the bottom|the ear|the joint|the strap|the wrist|they come|think of|tight|trouble|tuck|up an|up there|upper|upper arm|way you|wee|you let|youre done|youre not',
      ],
      [
        0.2,
        'a baby|a coat|a giraffe|a hair|a you|above it|air|an ankle|and just|and roll|and youre|ankle go|anybody|anybody with|arm are|arm dead|arm like|arm locked|arm till|as they|asleep|away from|baby|baby asleep|back the|back up|before your|bending the|bent elbow|bit in|bite|bite at|blade down|box under|buckle|cheating|clear|collarbone|come in|come out|curl|curl the|dead straight|dont fling|dont jump|dont rush|dont wing|dropping|elbow are|elbow down|elbow point|elbow to|exhale|feet are|feet first|feet to|fine|finished|five|floor in|foot at|for it|forward at|get there|getting|giraffe|glued|had|had a|half|half a|half of|hand open|hand over|hang like|hang long|head back|head stay|heard|heel out|hip up|hold on|hop up|if a|in tight|inside|it for|it pinch|it still|keep the|kicking|knuckle|leave a|leg still|leg together|let yourself|like washing|lock|lock the|longer|looking|maybe|never|no good|no kicking|of pulling|off that|only till|open the|over a|palm facing|partner|pinch|pinch up|point behind|poking out|pull with|pull your|relax|reverse|rib down|rib in|ring brush|ring out|ring stay|roll your|rolling forward|see the|shoulder pinch|shoulder stay|showing|showing me|smooth|spine|stand in|step down|straight into|support|swinging|take hold|tenth|that cheating|that just|that the|the blade|the hand|the inside|the neck|the spine|then lower|then pull|there and|they|this one|thumb|thumb round|thumb wrapped|tight to|to hip|to straight|toe a|toe down|toe on|tuck your|turn the|under at|until youre|up a|when the|whole time|with straight|without bending|wrapped|you fold|you open|you went|your face|your pocket|your tail|your watch|youre finished|youre upside|yourself|youve blood',
      ],
      [
        0.1,
        'a right|a wee|all of|and bend|and only|and you|angle|are level|as slow|back between|back pocket|bench and|between the|bit forward|blow on|box underneath|breastbone|came|deeper|dont fall|dont turn|down first|down there|draw your|easy breathing|elbow go|em back|facing you|feet come|feet find|feet go|feet off|five second|fling|flip|flip over|go down|hip under|holding it|if that|if youve|in half|in under|it slide|last bit|lay|leg go|lock out|look up|no deeper|no holding|no swinging|not to|of air|one foot|or it|person|put the|put your|rib are|right angle|ring down|roll backward|roll the|save|scrape|shoot|sink till|sip of|start again|stay in|still pinch|stop where|straight at|strong|that what|the breastbone|the last|then come|theyve|to about|until your|weight on|you came|your weight',
      ],
      [
        -0.1,
        'a big|a tiny|across|against|along|anchor|and a|and come|and down|and lazy|and sit|and the|arch|arch your|arm by|arm go|arm up|as high|as low|back and|back in|back knee|back stay|back till|backside|behind the|behind your|belly button|below|big toe|blow|body like|both hand|bouncing|bowl|breath out|bring|bring it|bring the|bum|but|button|calf|catch|cheek|chest up|coming in|coming up|couple|cramp|curl up|do it|do the|doesnt|dont arch|dont crank|dont let|dont push|dont roll|dont tip|dont twist|dont want|down for|drag|dumb|dumb bell|edge|elbow up|eye on|face the|feet under|feet wide|fist|floor away|foot and|foot in|foot off|foot on|for one|for three|for two|forward and|front knee|further|gently|get it|halfway|hammock|hand|hand behind|handle|hear|heel and|heel down|high and|high as|hip and|hip back|i dont|if the|in one|in through|into the|it go|it on|it out|it with|itll|jaw|knee bent|knee over|knee stay|kneecap|land|lean in|leg long|leg straight|leg up|length|lift|lift it|lift the|light and|look at|loop|low as|make it|mat|middle|middle of|moving|near|neck long|need|nice|no bouncing|no higher|not|on to|one hand|one knee|one up|onto your|other foot|out long|out over|pace|pillow|please|pointing|poke|post|press|press it|press your|push it|push off|push up|push your|put it|rack|rail|rock|roll out|room|round your|shoe|should feel|shoulder and|shoulder get|shoulder up|side of|side on|sideway|sit on|sit up|soft knee|sore|spot|spread|squash|squeeze at|standing|start to|stay|stay up|steady|stiff|straight line|straighten|table|than|the back|the ball|the bell|the big|the chair|the door|the floor|the handle|the heel|the hip|the knee|the kneecap|the mat|the outside|the rail|the room|the side|them down|then push|till you|time|tiny bit|toe up|toward the|under it|under the|up at|up for|up like|up over|up tall|up the|up through|up with|want to|whole foot|wider than|width|with it|you push|you till|you want|youll feel|your backside|your bum|your hip|your shoe|your whole',
      ],
      [
        -0.2,
        'a scarecrow|a tent|and no|and push|as|as if|as it|as your|at shoulder|back at|back of|banana|beat|between them|big breath|blow out|board|bone|bounce|breath|breathe|breathe in|bring them|chair|chest down|chest open|coming|do|dont bounce|dont lean|dont stick|down the|drive|elbow back|end in|far|fast|feet hip|follow|forward|from it|from the|front of|hamstring|hand are|hand on|higher|hinge|hip|hip dont|hip width|i|if its|if you|if your|in|in on|in your|inside of|it back|it come|its|keep breathing|keep it|knee down|knee soft|kneel|lazy|left|leg|leg out|let the|lie|light|low back|make|nearly|next|nose|of your|on it|one long|only as|opposite|out in|out like|outside|pair|palm down|plate|pop|press the|pull it|push away|rib out|right|ring to|rope|sag|scarecrow|should|shoulder height|shove|sit back|small step|snap|sort|sort of|stand tall|stay down|stick|stick your|straight out|straight up|string|swing your|tall|tent|than you|the band|the foot|the other|the seat|the thigh|the wall|them up|three|three second|through|through the|thumb up|till it|till youre|tiny|to|to where|toe out|too|too far|two|upright|waist|wait|wall|when you|where|you get|you should|your armpit|your belly|your body|your bottom|your low|your shin|your side|your thigh|your time|your toe',
      ],
      [
        -0.3,
        'a|and|and bring|and let|as you|back a|back to|bell|belly|big|by|by your|close|dont|door|elbow close|elbow under|feel it|flat|forearm|front|head|in as|it down|it in|knee|let it|line|low|lower it|lower till|not a|of the|off your|on|palm up|past your|push|quick|shin|short|shoulder blade|side|sigh|soft|somebody|step through|the front|thigh|turn your|up|walk your|want|wide|you pull|your forehead|your head|your heel|your thumb',
      ],
      [-0.4, 'arm out|back|band|hand in|heavy|it|it up|lean|lean back|like youre|other|out|sit|the|your|your rib'],
      [-0.5, 'apart|foot|on your|squeeze|under your|walk'],
      [-0.6, 'body'],
      [-0.7, 'heel|one'],
    ],
  ],
  [
    'head-below-heart',
    -0.6,
    [
      [0.7, 'blood|blood pressure|head|pressure'],
      [0.6, 'hip up|the knee|tuck|upside|upside down|your head|your knee'],
      [0.5, 'and back|and if|hip stay|hold on|ring|tuck your|up over|walk your|wet'],
      [
        0.4,
        'and wait|armpit|as far|bend your|hanging|if youve|right arm|roll|room|send|shoulder and|way you|when youre|your right|youve blood',
      ],
      [
        0.3,
        'and sink|back sag|back the|between the|breathe into|bring your|come out|cranky|far|feet apart|finger wide|forward and|hand forward|head height|into your|knee on|knee till|let you|more|notice|or youve|rest|right up|ring at|send your|slide it|so if|spine|stay up|stop halfway|straight leg|the rib|the room|underneath|underneath you|until|until youre|up slow|wait|wait for|you come|you know',
      ],
      [
        0.2,
        'a sack|a touch|a you|along the|and roll|and send|and stay|and the|and your|anything|arent locked|arm and|back between|back get|back over|backward|belly on|bench and|breathe behind|came|chin to|colin|curled|dangle|dont kick|dont lock|dont throw|down away|far down|feet land|get heavy|give|glaucoma|go down|got blood|had a|halfway|hand come|hand open|hand shoulder|hang like|hanging off|head back|head come|head dangle|head go|head hang|head last|heart|high blood|hop|hop up|in a|it slowly|knee arent|knee soft|knee through|knee to|lead|left|left hand|let go|long back|look straight|lower than|neck go|no rocking|or a|palm up|pedal|quiet feet|rocking|roll backward|roll your|sack|say|see|see star|shoulder are|shoulder width|sigh|sigh it|slow as|star|stop where|straight ahead|sway|that shoulder|the spine|them drift|then come|then pull|then slide|thing|throw your|till youre|tilt|treacle|went|wringing|wringing out|you came|you fold|you see|you went|your armpit|your heart|your left|youre done|youre hanging|youre upside|youre wringing|yourself back|youve high',
      ],
      [
        0.1,
        'a bell|a chair|a good|about your|and head|and rest|and stop|arm up|as treacle|bad|bending|bit and|bit of|bob|bounce it|bow|bum|bum to|care|carrying|corner|corner of|crown|crown of|cushion|done|dont be|dont care|dont fling|dont round|down you|drift|drop to|ease off|end|fall out|far as|feet back|feet in|fling|fold|forward from|from there|further|get the|go as|going in|hand to|heel touching|however|if theyre|in to|it through|its gone|knee and|knee under|knee with|like wet|load|lock your|longer|no rush|only go|out a|over and|press through|pressure or|put your|reach back|reach your|rib to|roll up|round over|see if|send the|shuffle|slowly|stand still|stay over|stay there|stride|talk|than that|that bottom|the ring|the wrist|to hip|toe|toe and|trouble|walk the|want it|which|wrist are|you land|you let|you reach|your calf|your eye|your neck|youre',
      ],
      [
        -0.1,
        'above your|across|again|against|an inch|and|and bring|and come|and lower|and no|and not|and push|arch|arm are|arm by|around|as a|as high|as it|as low|as they|at the|back and|back in|back into|back like|back pocket|backside|ball of|band|because|belly button|belt|big toe|bit|board|body|both|both hand|bottom|box|breastbone|breathe in|breathe out|bring it|bring the|but|button|by the|can|chair|cheek|chest up|doesnt|dont arch|dont lean|dont let|dont roll|dont swing|dont tip|down and|drag|drive|drop|drop the|dumb|dumb bell|each hand|easy|elbow on|elbow under|em|facing|fast|feel it|feel the|feet flat|fist|five|float|floor|follow|for|for a|forward|four|from the|get it|go up|goe|going down|grab|grow|hand|handle|head and|heel and|high|high as|higher than|hold the|holding|home|how|hurt|i|if there|if your|in each|in front|in on|inch|inside|instead|into it|is|it come|it go|it in|itll|its the|jaw|jump|just|keep|keep it|knee over|knee up|kneecap|knuckle|lace|lean back|leg long|leg out|leg up|length|let yourself|level with|lie|lift|lift the|light|like there|like youve|loop|low as|lower it|middle|move|moving|nearly|next|nice|nice and|no higher|not your|nothing|of your|off your|on a|on the|one foot|one hand|opposite|other foot|other leg|out like|past your|pick|please|plenty|pocket|poke|press|pull|pull your|push|push the|put it|rail|rib down|rise|rock|roll out|run|seat|set|shirt|short|should|shove|side on|sigh out|sit down|slower|slower than|somebody|sore|speed|squeeze|stand tall|stand up|stay down|stay on|steady|step back|stick|still|straight|straight down|straight out|straight up|stretch|table|take|that|that how|the ball|the band|the bar|the chair|the end|the floor|the foot|the front|the inside|the kneecap|the neck|the rail|them|them down|them up|then the|think|through the|till it|tip|tip forward|to|to come|top of|under you|up at|up in|up like|up tall|up the|up there|walking|wall|way up|wee|what|where|wider than|with the|without|yank|you dont|you get|you pull|you should|youll|youll feel|your bottom|your breath|your heel|your lace|your nose|your shirt|yourself hang',
      ],
      [
        -0.2,
        'a bit|about|all|all the|an|arm out|back|back down|bar|belly|blow|blow out|breathing|by your|count|curl|dont bounce|door|down|feel|front of|half|hand on|higher|hold it|if it|in the|in your|into the|it down|it up|its a|keep your|leave|let it|level|like|line|no|nose|of|of the|off|off the|on it|or your|out on|out to|pinch|quick|same|second|shin and|side|squeeze your|start|swing|the elbow|the seat|the wall|there|there a|thumb|too|toward|tummy|turn|two|under your|up your|waist|way down|with|you can|you like|your finger|your leg|your shoulder|your side|your tail',
      ],
      [
        -0.3,
        'ankle|at|away|by|dont|each|feet wide|hand down|heavy|it|not a|on your|over your|rib|sit|the other|the thigh|they|thigh|three|toward your|wide',
      ],
      [
        -0.4,
        'a|big|down your|flat|front|heel|lean|leg|like youre|not|on|other|out|shin|tall|the top|together|top|your|your rib|your shin',
      ],
      [-0.5, 'breath|foot|in|step|your back'],
      [-0.6, 'elbow|one|the'],
    ],
  ],
  [
    'heel-raise',
    -0.3,
    [
      [1.3, 'big toe'],
      [1.1, 'roll out'],
      [1, 'the big'],
      [0.9, 'and lower|dont roll'],
      [0.7, 'ball of|high as|up on|up onto'],
      [0.6, 'achilles|ankle|ball|big|calf|little toe|three'],
      [0.5, 'and keep|as a|hip width|roll|rolling out|tall as|the edge|the heel'],
      [
        0.4,
        'as high|both hand|count|edge|high|hold the|keep hold|knee straight|onto|onto your|rise|rolling|straight up|weight|weight over|you go',
      ],
      [
        0.3,
        'as tall|at the|bouncing|chair|dont tip|even|feet hip|feet on|fence|grow|just breathe|keep it|no bouncing|pause|stop and|the achilles|the calf|the chair|the little|the rail|you like|your little|your toe',
      ],
      [
        0.2,
        'a bit|a fence|a rocking|achilles is|all your|and roll|and sink|ankle dont|ankle straight|any|below the|bent|bit|bit apart|bottom doesnt|by|come down|cramp|dont fold|down for|drifting|drifting back|drop|edge of|feet under|fingertip on|fold in|foot on|go all|go up|going to|grow up|hedge|heel hanging|heel up|inch off|it bent|knee stay|lift|morning|movement|no rolling|on a|onto the|over a|plenty|push|push up|rail|rise up|rocking|rocking chair|roll back|same foot|smaller|stack|stay straight|stick out|stop at|take|that fine|that plenty|the rack|the wee|tired|to your|toe|up as|up for|up over|way up|way you|wee|without|wobble|you can|you rise|your ankle|your big|your chair|youre going',
      ],
      [
        0.1,
        'a sharp|and one|and stand|are|as far|as it|behind|bell|belly|below|bend|between|between your|breathe out|calf grab|can without|coming|down to|eye|eye on|far as|fine|finger|fingertip|floor away|for three|goe|half|head|heel back|heel off|hold it|hold of|if it|it down|it out|it up|its not|kerb|kneecap|lean on|look at|low|low down|lower down|lower your|make|mustnt|near the|not a|of one|out going|out of|out onto|over your|past|pinch|pulling|push the|put|right down|roll to|roll up|sharp|somebody pulling|squeeze|steady|than|that chair|the ball|the kerb|the leg|the step|them|then go|then lower|this|three count|toe and|under the|up quick|we|weight on|when|where|whole time|with your|without wobbling|you come|youll|your arm|your bottom|your calf|your head|your knee|youve',
      ],
      [
        -0.1,
        'a little|a time|a touch|above|above the|against|along|an|an ankle|and bring|and not|and the|and then|and your|ankle over|arch|arm are|arm by|arm long|arm straight|armpit|as they|at a|back foot|back knee|back up|backside|band|because|before you|breathe into|breathing|bring it|bring the|bring your|button|catch|cheek|chest up|come back|cross|curl|dont swing|down on|down the|draw|draw it|each hand|elbow under|every|facing|fast|feel|feel it|feel the|five|float|foot and|foot back|for a|forearm|forehead|from your|front heel|front knee|further|get it|grip|hamstring|handle|hang|have|hip up|holding|home|hurt|in a|in each|in on|into your|isnt|it back|it be|it come|knee soft|knee to|knee up|knuckle|land|lazy|lean back|lean in|leg still|let go|let that|let the|lie|like youve|lock|loose|low back|move|nearly|nice|no higher|not the|off the|one foot|one leg|only the|open|opposite|or your|other one|out in|past your|pocket|point|pull the|push off|push your|put it|quiet|rib down|ring|round the|sag|see|set|shoe|should|shoulder blade|shove|side of|sigh|small|smooth|soft|some|sort|sort of|standing|stay down|step|straight down|tail|the arm|the band|the chest|the elbow|the inside|the ring|the same|the seat|them down|theyre|till it|till the|till youre|toward the|toward your|towel|tuck your|until|up at|up off|up the|walk|while|whole foot|wider than|with the|you should|you stand|your belly|your low|your neck|your nose|your shin|your thigh|your wrist|youre not',
      ],
      [
        -0.2,
        'away from|back to|before|behind you|blade|blow|blow out|breathe|by your|close|drive|ear|end|first|floor|for the|forward|from the|get|hip|if your|in front|in your|into the|just|knee bent|let your|lift your|like|like youre|mat|me|neck|need|of|of the|of you|on it|on the|one|out|palm|pick|pull|reach|right|seat|shin|sit back|sit down|slide|squeeze your|stand up|start|stay|swing|than your|that|the ceiling|the end|the knee|the mat|the shoulder|the thigh|the toe|the wall|then|think|thumb|to get|to the|touch|toward|tuck|wide|wider|wrist|your bum|your chest|your chin|your ear|your elbow|your hip|your leg|your rib|your side',
      ],
      [
        -0.3,
        'a|about|again|and|at|at your|be|bum|ceiling|chin|dont|each|hand|if|it|its|lean|let it|like a|line|no|nose|off|on|only|out as|round|sit|slow|stand|still|the|the floor|the hip|there|they|till|to|together|under|wall|you|your|your back|youre',
      ],
      [
        -0.4,
        'back|breath|dont let|foot|from|in|into|knee|let|long|look|not|or|other|rib|side|so|the front|the other|thigh|with|your shoulder',
      ],
      [-0.5, 'arm|chest|elbow|front|leg'],
      [-0.6, 'shoulder'],
    ],
  ],
  [
    'hinge',
    -0.3,
    [
      [1, 'push your'],
      [0.7, 'back of|bell|dont open|dont round|fast|stroke|to shoulder|walk them|your leg'],
      [
        0.6,
        'and if|bar|bum on|button|hamstring|handle|hip up|it land|line from|long back|loop|out till|rep|round over|slack|soft knee|the bell|the hip|tip|toe up|you stand|your body',
      ],
      [
        0.5,
        'and lift|and walk|at me|behind the|belly button|bow|close|feet flat|feet in|floor a|from knee|get out|heel close|hike|hip width|hook|knee to|level with|not behind|put it|slack out|so it|soft|spine|straight line|the pull|the slack|the top|tight|tip from|weight|weight in|when it|your back',
      ],
      [
        0.4,
        'and its|and that|arm are|arm by|armpit|back at|back goe|bar over|body|bone|bone at|bounce it|brush|bum back|butt|chin tucked|closer|cramp|dead|dont sit|drop it|elbow brush|enough|feet apart|heaving|heel on|hike it|hinge|hip and|hip back|it close|it hang|keep your|late|leg out|length|level|long neck|metre|middle of|neck|neck long|of you|one bone|one heel|one line|out at|past your|pull|roof|round|round to|shake|stand up|stop|the bum|the hamstring|the hand|the roof|the slide|the stick|the you|then stand|then walk|tip forward|up the|wait|you and|youll|your hip',
      ],
      [
        0.3,
        'a straight|a time|across your|after it|and peel|and send|and squeeze|and stand|and wait|are just|are only|arent locked|arm down|arm hang|bar to|beat|bell a|bell between|between|between your|blade in|both of|breath on|bruise|brush your|bum|bum like|car door|catch it|coin in|come to|coming|coming back|curl|dangle|desk|did|dont curl|door with|early|edge of|every rep|far down|feet hip|first|flare|flat|fold|foot come|forward till|from|full|get heavy|get there|go of|go past|goe round|gone|hand flat|hand go|head dangle|heavy as|heel and|high between|higher|hip with|in a|inch off|it hurt|it into|it want|its a|its all|its tight|jerking|knee stay|leg flat|leg soft|line|long|long as|look behind|mirror|move the|much|near enough|need|nerve|no heaving|nothing|of them|on you|or on|other leg|out there|out wide|over and|over till|parallel|park|park it|past|press down|press through|pressure|pull it|push through|putting|rib|rib down|rock your|roll up|same|set it|shirt|shopping|shoulder away|sneaking in|sort|sort of|squeeze|standing|start to|stick down|straighten that|take a|that it|the bench|the catch|the cheek|the crook|the handle|the leg|the mirror|the shin|the sore|the thigh|then squeeze|thigh|tilt|top|twist|two bell|up first|up like|up quick|up slow|wall behind|weight hanging|when|yard|yard in|you lean|your armpit|your front|your thigh|yourself up|zing|zing down',
      ],
      [
        0.2,
        'a bag|a box|a coffee|a dead|a disc|a flat|a foot|a footprint|a gate|a letter|a long|a metre|a pound|a ramp|a short|a yard|about level|along your|and needle|and roll|and stop|anything|apart|are by|are rope|argument|arm and|asleep|at a|at the|back behind|back long|back nip|back until|back youve|backside|bag of|bar across|bar stay|beat at|before it|bell on|belt buckle|bench|bend it|bigger than|bird|bit more|both end|both feet|bottom of|bottom rib|brace|breath be|breath in|breathe down|breathe into|breathe slow|bridge|bum up|butt back|can keep|cat|ceiling and|ceiling knee|change|chasing|chest forward|chest over|coffee|coin|come in|coming down|count coming|count down|count going|cramping|crook|curling|dead on|direction|doe|dont bounce|dont flare|dont just|dont lift|dont stand|dont throw|dont twist|door on|down and|down slowly|down you|down your|drag it|draw it|drive your|ease off|elbow level|elbow to|elbow up|else|exhale|fall out|far enough|fight|fight it|flat as|floor down|flop|flop out|fold over|foot only|footprint|for it|forward from|from your|gate|glaucoma|go dead|go lighter|grip it|grumpy|guitar|guitar string|halfway to|hamstring cramp|hand away|hand come|hand from|hand get|hang|head last|headlight|high enough|hinge over|hip|hip are|hip bone|hip face|hip level|hip like|hip square|hip through|hold the|hook your|hump|i saw|if its|if youre|im|in closer|in late|in one|in two|into a|it behind|it click|it down|it drop|it float|it if|it leave|it like|it right|it sit|it start|it to|it under|its|its still|jacket|jumper|just outside|just rope|keep that|knee arent|knee as|knee till|last inch|lean over|leave your|leg when|length away|less|lighter|like its|like stirring|like you|lock it|long arm|long in|long plank|look at|look in|look up|looking|looking at|loop stay|lower back|make a|measuring|melt down|neck go|needle|ninety|no bigger|no higher|no jerking|not an|not down|not hanging|numb|number|off a|once|one behind|one of|open|open them|or a|or just|other end|other hand|out straight|outside|outside the|over toe|pad on|pause|peel up|peel your|people|picture a|pin and|pinch a|plank|plaster|plate|point them|pole|pound|pressure trouble|pulling|pulling the|push one|putting your|quicker|quiet hand|quit|ramp|rib dont|right across|roll down|rope|round like|rounding|sack|sat|sat tall|saw|see star|send|send one|shaft|sharp breath|shin stay|shoot up|shoulder stay|shout|shove your|shrug it|shutting|shutting the|sigh it|skirting|skirting board|skull|snap|snap the|sneaking|sniff|so your|some|spin|splay|square|squeeze the|squeeze up|stamp|stand|stand with|standing leg|standing up|star|start from|stay out|stay square|stirring|stop halfway|stop when|straight and|sway|swim|swim when|take hold|tall and|than it|that plenty|that set|that the|that working|the back|the body|the crease|the desk|the length|the pelvis|the skirting|then shove|then snap|then up|there no|three count|through at|throw your|till|till youre|tip it|tipped|to a|to get|to round|toe to|too heavy|too high|touch and|touching your|toward you|tram|tucked|twisting|until its|up a|up before|up tall|up there|up till|up you|up your|walked|wedge|when i|where you|width|with a|within|yank it|you are|you bow|you let|you stop|you tip|you walk|youll go|your backside|your bum|your hamstring|your jumper|your lace|your lower|your seat|your shirt|your skull|your spine|youre cracking|youre doing|youre in|youre late|youre shutting|youre sneaking',
      ],
      [
        0.1,
        'a bad|a beat|a count|a nerve|a prawn|a spring|a stretch|a table|a wall|all four|and itll|and park|and slow|and take|arent|back like|back round|back start|back there|bar down|because|because if|bell hang|bell in|belly drop|belly tight|bent knee|big breath|blade on|bottom back|bottom to|bouncing|breath out|buckle to|can stay|chair seat|chest is|chin down|chin in|close enough|close it|colin|cracking a|crease|crease of|crown|cut|disc|dont chase|dont dip|dont heave|dont jerk|dont move|dont sag|dont squat|dont you|down one|down through|down until|each one|elbow just|exhale up|facing the|flat back|flat heel|floor apart|from a|from the|front thigh|get your|goe back|gripping|hand outside|hang long|have your|heel near|high blood|hip dont|hiss|holding you|in at|in both|it doesnt|it higher|itll have|its gone|jerk|jerk it|jump your|kiss|knee hip|knee soft|land like|leg to|leg with|letter|like headlight|long from|long like|long spine|long through|lower slow|metre in|mid|more than|nearer|ninety degree|no arching|no leaning|not back|not in|not like|not looking|oclock|of egg|one hand|one up|orange|orange in|out behind|out breath|out slow|outside your|over it|over to|pause at|peel|prawn|pull with|pull yourself|quit looking|reach your|rib flare|rib tucked|roll it|round you|sag when|second down|second up|set|shave|shaving|shoulder in|shoulder to|shove|shoving a|shutting a|slide the|slope|slow and|soft on|split|spring|squat it|squeeze a|squeeze at|stop where|string|swap leg|table|take some|tape|that leg|the butt|the finish|the weight|them back|those|through your|tickle|till its|to just|tucked under|tug|until youre|up one|up past|up slowly|want the|way in|when the|wrap|wrap the|you back|you curl|you fold|you pull|your bottom|your foot|your kneecap|youre stood|youve gone|youve high|zip|zipping',
      ],
      [
        -0.1,
        'a hinge|a knee|a lamp|a little|a scarecrow|a tiny|about shoulder|above the|ach|ache|against the|and breathe|and do|and i|and it|and lazy|and press|and step|and turn|ankle over|are straight|arm straight|arm to|away again|away till|away with|back as|back from|back off|back under|bang|bed|bend the|beside|big sigh|big toe|bottom leg|breathe as|breathe behind|buddy|bum and|bump|burn|bus|butter|by the|can see|carry|carrying|chair back|chest down|chicken|chin out|chin stay|chin to|clench your|closing|comfy|complain|cross|curl up|dance|deep in|dive in|dont be|dont fold|dont force|dont grip|dont poke|dont reach|dont want|draw your|drawing|drift forward|drive up|elbow a|elbow at|elbow down|elbow pinned|elbow stay|even|faster|feet forward|feet off|feet stacked|feet together|find the|finish like|floor away|foot down|foot forward|foot turn|force|forearm down|frame|from it|front foot|front knee|front leg|front of|further than|go long|goe in|gonna|got blood|got you|grip with|half of|hand at|hand down|hand in|hang like|head and|head hang|head through|hear|heel down|hip height|hip stay|hop|hover|i want|if a|if that|if there|if theyre|in that|into|is a|it away|it catch|it for|it ping|it slip|it slowly|it straight|it till|its just|its sharp|just off|keep a|kick it|kissing|knee at|knee come|knee over|knee point|kneel|lazy|lean away|lean in|leg and|leg down|let your|light|like somebody|like there|like wet|little breath|little toe|low in|lower your|mat with|meat of|middle toe|mind|mouth|muscle|my|never|normally|not high|not up|off and|old|on every|one foot|one long|one on|only a|opposite knee|or it|or your|other knee|other way|out for|out in|over a|palm forward|palm up|pick it|pinch in|ping|pinned to|point at|poke your|pretend there|proud|pub|punch|push them|push up|quick step|relax|ride|ring to|rise|rocking|roll to|sag|saucer|scarecrow|shape|short breath|shoulder height|shoulder pinch|shouting|show|side to|sip|sit tall|slip|slip off|slow as|small step|somebody got|squash|stay by|step out|step up|straight ahead|straight at|straight away|straight down|straight out|straighten it|strain|swing the|swinging|tail and|take it|taking|tall as|tall on|than|that back|that cheating|that foot|that heel|that what|the chest|the clock|the good|the left|the line|the muscle|the rail|the right|the rope|the tin|the whole|the wrist|them up|then push|they come|thigh stay|through that|tile|tin|tin in|to be|to cheat|to go|to one|today|toe on|toe point|told|track|tree|trust|tuck the|tucked back|turn out|turn the|two step|under you|until the|up against|up from|up toward|walk|walk it|wander|went|where the|whole leg|whole time|wide as|worktop|would|wrist stacked|you bend|you by|you can|you trust|your arm|your blood|your breastbone|your calf|your collarbone|your finger|your fist|your forearm|your forehead|your head|your own|your right|your tail|your teeth|your whole|youre leaning|youre like|youre opening|yourself hang|youve got',
      ],
      [
        -0.2,
        'a big|a bit|a bowl|a chair|a hammock|a second|a tent|a window|about the|above|achilles|along|an|an end|and a|and away|and bring|and go|and keep|and lean|and lower|and make|and out|and pull|and throw|and you|arch|arm back|arm go|as they|as well|at all|at chest|back and|back heel|back into|back on|balance|ball|be|behind you|behind your|bent|bent up|big|bit|blade like|board|boot|both leg|bottom out|breastbone|breathe low|bring them|build|by|by side|by your|calf|cave in|cheat|cheating|chest|chest and|chest to|circle with|clear|clock|collarbone|count of|count out|curl your|cushion|deep|dive|do it|do the|dodgy|done|dont crank|dont fling|dont go|dont hitch|dont hold|dont kick|dont lean|dont rock|dont sink|dont stick|down a|down again|down for|down on|draw the|each other|elbow high|elbow on|elbow skim|elbow under|elbow wide|eye level|feet back|feet just|feet wide|fine|fingertip|finish|first and|fling|fold in|follow your|foot|foot up|forward and|go|go forward|go soft|goe down|good knee|got|grass|groin|grow|had|halfway plenty|hammock|hand shoulder|hand up|hang there|having|head on|heavy on|height of|held|hip forward|hip pocket|his|hitch the|hold|holding|hot|hug|i|i can|if i|if it|if they|in through|in to|inside|instead|it by|it from|it give|it home|it lift|it open|it pinch|it pull|it stop|jaw|keep them|knee follow|knee straight|knee together|knee under|knee wide|knock|know|lamp|lamp post|land on|lean a|lean back|leg goe|let|let them|let yourself|lie back|lie on|like an|like the|like theyre|little quick|lower than|make|mate|nearly straight|next to|no dropping|no more|not at|of a|off|on one|on that|on top|on with|one and|one arm|one knee|one to|only as|onto the|opening|operated leg|opposite arm|or the|other one|out a|out loud|out through|out to|out when|outside leg|over the|over your|overhead|own|partner|pedal|pick|pillow|pinched|pinned|pocket and|point|pointing at|poke|pop off|press it|press your|pull them|push off|pushing|put a|put them|quarter|race|reach one|rhythm|rib pop|right back|right up|ring at|roll back|roll out|roll them|rolled|rolling|run|sagging|second toe|shaking|shelf|shoulder square|side and|side by|side of|side on|sign|sink|sit back|sit down|sit straight|sit your|sitting|skim|skim your|slow breath|slow down|slowly|smaller|so you|softly|spread|square to|squash the|stand on|stand right|start over|stay heavy|stay there|steady|steady as|straight|swap|switch|take one|take your|taken|tall|teeth|tell me|tent|that all|that knee|that you|the ankle|the belt|the big|the door|the first|the grass|the groin|the height|the long|the nose|the operated|the seat|the towel|then lift|there till|these|theyre not|this|this one|thumb up|till it|tingling|tipping|to come|to start|to the|tomorrow|top leg|toward the|tray|treacle|tuck your|turn your|twice|two|under your|underneath|up behind|up on|up over|waiting|was|water|way out|wee bit|well|what|whole foot|will|wing|with one|with that|without|wobble|work|you sit|you think|your ear|your face|your jaw|your knee|your low|your nose|your waist|your you',
      ],
      [
        -0.3,
        'a mower|all the|along the|and back|and the|arm|around|as high|away|back in|back up|been|before you|being|below|bending|bowl|breathe|bring|bring the|cave|crank|dont|dont roll|dont swing|down between|drive|dropping|easy|end in|everything|find|five|flat like|from you|front|front heel|go out|hair|half|hand off|hang on|have to|heel stay|high as|higher than|if youve|imagine|in|in it|in toward|its only|keep|keep hold|knee down|knee go|knee up|kneecap|leave it|leg long|like|little|loud|low|low back|lower them|mat|mower|nearly|next|not locked|off the|on|on it|on your|onto|operated|out like|out over|pain|pinch|please|puff|push it|reach|set the|shoulder up|sigh out|slow on|speed|step back|stick your|stiff|swing your|tap|tell|than the|than you|the ball|the band|the belly|the box|the inside|the mat|the other|the out|the shoulder|the side|the toe|them down|then let|there a|to it|top of|touch|toward|toward your|towel|under|under hip|under shoulder|up and|use|waist|wall|way down|where your|wrist straight|yank on|you reach|your|your chin|youre being|youre not',
      ],
      [
        -0.4,
        'and|arm up|back flat|back foot|back knee|back till|ball of|band|can|dont let|dont tip|draw|each|each hand|ear|eye|finger|fist|folk|foot on|forward|get hurt|home|hurt|in each|it there|keep breathing|knuckle|left|lie|of the|on a|opposite|palm|pointing|round the|shoe|shoulder width|sideway|sole|stacked|straight up|than your|that your|the kneecap|the opposite|they|theyre|tuck|under the|wrist|you like|you push|your breath|your chest|your shoulder|your toe',
      ],
      [
        -0.5,
        'again|arm out|breathing|come back|do|elbow|face|forehead|head|into the|kick|lean|leg up|nose|or|small|swing|the|the bag|thumb|toe|turn|want to|whole',
      ],
      [-0.6, 'ankle|at your|chair|forearm|hand under|height|hold it|it goe|right|side|the chair|the ring|wide'],
      [-0.7, 'step'],
      [-0.8, 'sit|the front|together'],
      [-1, 'ring'],
    ],
  ],
  [
    'hip-rotation',
    -0.3,
    [
      [1, 'deep in'],
      [0.9, 'deep'],
      [0.8, 'bent'],
      [0.7, 'ankle|hand behind|knee bent|loop|out to'],
      [0.6, 'back pocket|it deep|melt|open|other knee'],
      [0.5, 'back down|bone|down on|keep the|knee out|let go|only as|open the|pocket|the hip|together|top knee'],
      [
        0.4,
        'and knee|ankle over|back leg|close|come out|hand and|hand under|head on|heavy on|in toward|one knee|the knee|the thigh|toward you|want to|where its',
      ],
      [
        0.3,
        'a slant|across the|and close|and draw|and fold|ankle on|anything|at all|away and|bent and|butter|chair seat|dont roll|draw|flex|flex the|front foot|get it|go and|heel together|its about|knee at|knee under|lean away|lift one|like|like butter|resting|shoulder knee|slant|slide the|slow breath|square|the cheek|the lift|the mat|thread|through and|tip forward|to open|to where|top hip|under shoulder|wherever|you|you open',
      ],
      [
        0.2,
        'a gate|about a|across|and do|and pull|and put|and stop|and straighten|and tip|at|away|away from|backward|behind the|bounce them|breathe down|buttock|cant|close it|come|dont hang|dont lift|dont rush|dont slump|dont yank|draw it|each breath|end|end of|exhale|feel like|feet stay|flexed|foot flexed|front of|gate|get down|go a|go over|go to|hang off|instead|it bent|it higher|it should|its easy|keep|kissing|knee over|knee together|know|leave|leg in|leg up|long and|minute|nip|on it|open and|opposite knee|or the|out on|pain at|pillow|please|pubic|pubic bone|pull the|reach through|roll backward|rush|say|shut|sit up|slide|slump|so go|stay down|stood|straighten|straighten it|talking|tall and|tall chest|that leg|the bum|the buttock|the left|the minute|the pubic|the side|there|they go|they want|thigh and|thread your|to about|to drop|twist|two|under hip|under your|up out|where the|with your|would|yank the|you can|you know|your forearm|your right|your wrist|youre',
      ],
      [
        0.1,
        'a book|a cup|a pillow|above your|against the|an inch|are|as they|as wide|as you|away to|back again|balancing|belly|bite|book|bum|can|can stay|chin|come down|coming down|cup|cup of|dip|draw the|each|enough|face|far as|feet|fingertip on|floor|for|glass|go on|groin|head stay|headlight|height|hip bone|hip stay|honey|in to|inch|is|it bite|it open|its all|its coming|keep your|know shoulder|left thigh|less|level|like youre|lock the|look at|lower slow|middle|moan|of tea|of water|of you|one line|out behind|pain|press|right ankle|right knee|same|should feel|shoulder stay|sink|slow like|so your|sore leg|stand|stay square|stay still|tea|tea on|that all|that one|the butt|the floor|the groin|the loop|the middle|the muscle|the right|the sore|the way|think|thumb|thumb on|tipping over|to you|too|touch|up so|up to|walk|way|way down|weight|wide as|you are|youll feel|your chin|your elbow|your shoulder|your you|youre after|youre balancing',
      ],
      [
        -0.1,
        'a bit|along|and back|and down|and if|and no|and not|and your|arm are|arm straight|armpit|around|back foot|back knee|back on|back to|back up|because|before|before you|belly button|bend the|bend your|between the|big toe|board|body|both hand|box|but|button|by the|catch|chest up|count|doing|dont arch|dont drop|dont go|dont hold|down like|down the|drag|dumb|dumb bell|each hand|em|face the|fall|fast|find|finish|five|flat on|follow|foot on|four|further|go up|going down|grip|ground|grow|halfway|handle|hanging|hard|heel and|heel up|hold the|hold your|if youve|in a|in each|it a|it go|it goe|it with|itll|its not|its only|its your|knee soft|kneecap|knuckle|last|lazy|lean back|leaning|level with|like youve|looking|loose|low as|move|next|not your|nothing|off your|one leg|other leg|out at|out like|past your|peel|pick|pointing|pop|press the|puff|pull it|pull your|push off|push your|rail|rib down|rise|rock|roll out|sag|sharp|shoe|short|shoulder down|side on|sideway|sigh|sit back|sit down|slowly|smooth|sort|sort of|speed|squeeze your|stand tall|step back|stick|straight down|straight up|swap|take your|that how|the ankle|the ball|the band|the bar|the bench|the big|the chest|the feet|the ground|the inside|the kneecap|the leg|the nose|the rail|the rib|the same|the toe|them down|them up|then let|there a|theyre|three second|throw|till it|till youre|tuck your|tummy|turn your|under you|up at|up in|up like|up there|wee|what|while|whole foot|wider|wider than|with a|with it|you pull|you push|you stand|your finger|your foot|your low|your shin|youre a|youve got',
      ],
      [
        -0.2,
        'a little|ahead|air|and bring|and lift|and stand|and the|and then|apart|arch|arm out|as if|as the|back and|back in|ball|ball of|bar|behind your|bell|belt|bench|bit|blow out|bottom|breathing|bring it|ceiling|come back|drive|drop|elbow under|every|eye on|facing|feet hip|fist|float|floor away|forward|from|from your|gone|got|grab|hamstring|have|hip width|home|how|if it|if youre|in as|in on|inside|into|into your|keep breathing|knee up|land|lean|let them|low back|make|me|nobody|of the|on to|one hand|other foot|out in|past|plenty|point|pull|quiet|ring|see|soft|somebody|squeeze the|stand up|stop|strap|swing|tall|the arm|the bottom|the ceiling|the elbow|the ring|the whole|through your|tight|till the|till your|top of|under the|walk your|when you|with the|you come|you dont|you go|you like|you should|your breath|your neck|your nose|your thigh|youre not|yourself',
      ],
      [
        -0.3,
        'all the|and|as it|at your|back|band|between your|blade|blow|breathe in|by your|dont|down|down and|feet under|finger|first|foot|front|goe|going|hand|high|if|in|in your|it|it up|just|let|let it|let the|look|lower|neck|no|of|off|on|on the|one|one foot|out|out as|palm|push the|quick|second|shoulder blade|small|start|the|three|through|through the|to|to the|toward your|tuck|turn|under|up and|way up|when|whole|your|your belly|your ear|your heel|your leg|your rib|youve',
      ],
      [
        -0.4,
        'a|an|arm|as|at the|bend|big|both|by|chest|come up|dont let|ear|elbow|eye|hand on|heel|hold|i|in front|like a|little|long|low|nose|not|round|shoulder|squeeze|take|the shoulder|them|then|time|to your|up|with|your bum|your chest|your toe',
      ],
      [-0.5, 'flat|push|rib|step|straight|till'],
      [-0.7, 'toe'],
    ],
  ],
  [
    'isometric',
    -0.2,
    [
      [0.9, 'breathing|elbow under'],
      [0.8, 'arm straight|five|keep breathing|shoulder over|tent'],
      [0.7, 'dont sink|finger on|get long|ring at|sip|too far|your thigh'],
      [
        0.6,
        'a tent|back in|buckle|dont hold|everything|feet off|holding|home|it pinch|look at|quiet|slide down|the air|the kneecap|the ring|the strap|under the|you reach|your low',
      ],
      [
        0.5,
        'a banana|air|back flat|back stay|belt buckle|forearm and|glass|glued|grab|grip with|hip dont|hip level|inside|knee down|kneecap|kneel|leg goe|letting|letting go|low back|one foot|opposite|or it|out there|press|ring|shoulder are|squash|squash the|step up|strap|tea|the box|the hand|the inside|the opposite|then the|then walk|thumb|till youre|too|top of|tray of|until youre|waist|walk them|your belly|your breath|your wrist|youre a|youre on|youre stopping',
      ],
      [
        0.4,
        'a coat|a spot|about half|ache|and feet|and hold|and lift|and stay|and the|and walk|arm by|away with|banana|belly drop|between them|box|bring it|clear of|come in|cup|dont be|dont let|drift|drop off|even|finger|float|float your|foot just|forearm|get out|goe|goe in|good|grip|half|hand and|hand go|hand off|hand over|higher than|hold your|i can|in a|in both|inside of|it still|it straight|it under|its your|knee in|knuckle|leave a|leg away|leg together|let go|lift your|little breath|little sip|lock|lock the|make yourself|mat|moving|not locked|off it|one elbow|one leg|onto one|out loud|over your|parallel|pinch at|press down|press your|pull your|push down|push the|put your|rolled|rush the|sag|shoulder width|sit tall|slide one|slide up|spin|stare|start to|staying|stopping|take your|the other|the wrist|there|to ache|toe tucked|tomorrow|turn you|up out|while you|wind|your middle|youre in',
      ],
      [
        0.3,
        'a bus|a chair|a good|a lift|a pint|a sharp|a shoulder|a tray|an ankle|and foot|and hang|and in|and swap|anybody with|arche off|arm forward|arm up|as low|at chest|away from|back dip|back on|band at|bed|before you|both hand|bottom of|breathe at|bring them|but|button|can|can stay|chair back|chest height|clock|coat|complaining|count out|creep|cup of|cushion|cushion between|dig|dip|do it|dog|dont bend|dont cave|dont go|dont grip|dont jump|dont rush|dont sag|dont wing|down till|drifting|drink|drop to|dropping|each other|ear|elbow into|feet on|feet stacked|feet wider|find the|firm|float the|floor away|floor with|fold|fold the|foot off|foot only|foot right|for it|from there|from your|getting|go all|go slow|gone too|gripping|grow taller|had|half as|hand out|hand stay|heel goe|heel touching|height of|height off|hip|hip height|hip up|hold it|holding it|holding you|hurt|imagine|isnt moving|it arche|it start|it there|ive|just in|kind|knee over|kneeling|knot|leading|leg long|lift|little step|long breath|loud|mat under|me|melt down|middle like|no higher|no lower|no tent|not the|of drink|off that|on your|once|operated knee|opposite hand|other arm|over hip|pick up|pint|pint on|pop it|pull up|put|reach|rib down|right under|ring down|shin no|shorter|showing|sideway to|sink into|sit on|slower down|soft elbow|something that|sore|spine|spot|spot on|stack|stare at|stay flat|stay there|step off|still|straight line|stuck|swim|switch|taller|tell|tenth|that isnt|the bed|the board|the clock|the door|the height|the one|the operated|the shoulder|the sore|then float|then just|then pull|this one|thumb round|ticket|to hear|toe on|together|top arm|twist you|under shoulder|underneath|up a|up off|washing|way through|wee|weight in|when the|while|with control|with you|wobble|wrap|wrist or|you squeeze|your face|your fist|your hip|your waist',
      ],
      [
        0.2,
        'a cup|a hair|a lamp|a mat|a table|a tabletop|a tea|a tightrope|a wet|about to|against your|an inch|and a|and breathe|and float|and heel|and if|and low|and only|and open|and pop|and press|and quiet|and stare|and they|and wait|arche|are at|are creeping|are drifting|are poking|are up|arm back|arm goe|at hip|away|back get|backside|ball between|barking|bath|be|belly|belly up|blade together|bottom one|breath go|breathe all|breathe through|buckle to|burn|can see|cant talk|cave in|ceiling|ceiling knee|chin not|clench|close together|come home|come over|cramping|creeping|creeping up|curl your|do not|doe|doing|doing it|done|dont clench|dont creep|dont dip|dont dump|dont leave|dont need|down away|down slowly|down straight|down through|drift back|drop a|dump|elbow skim|elbow soft|elbow toward|ever|every time|eye level|faster|feet behind|feet close|feet find|feet first|feet out|fingertip|fingertip on|finished|fish|fist|five second|flaring|floor if|for five|forward to|from a|front till|gently|get hurt|give the|go away|go out|go with|goe first|going to|gone|had a|half your|hand height|hand into|hand open|hand slide|hang like|hard|head and|head back|head height|heel about|heel away|height and|held|higher|hip are|hip like|hip roll|hip sag|hip square|hip till|hitch the|home and|hover|i|if that|if there|in and|in with|inch will|inner|into your|it as|it behind|it between|it pop|it tomorrow|it want|jammed|joint|jump|just above|just ahead|just let|just off|keep talking|kind of|knee an|knee and|knee back|knee drift|knee sore|kneel on|knit|knitted|lamp|lamp post|late but|leaning on|leave it|leg back|leg down|leg flat|leg no|less|let that|lift from|lift going|like washing|line|locking|long by|long from|long plank|look|low|low as|low in|lower back|make one|maybe|nearer|nearest the|need to|nine|ninety|no holding|no snatching|nod|not jammed|not up|of like|of pulling|of tea|of water|of what|off with|okay|on somebody|only come|opposite foot|opposite leg|out front|out so|out the|over a|paddle|pain|pain in|pant|partner|partner stand|pick a|picture|picture a|pillow between|pinky|plank|pop|pop up|popping|popping up|press back|press up|pretend|pull back|pull with|punch it|purple|push your|quiet feet|quiet hand|reach one|reach the|relax|rib heavy|rib knitted|ring out|rise up|roll forward|roll your|round one|rush|save|scoop|sharp pain|shin straight|shorten|shorten the|shoulder away|shoulder got|shoulder sore|showing me|side on|side that|sign|sing|sink between|sink in|sip of|sip the|sit bone|skim|slide|slow and|slow up|slowly|small breath|snatching|sneaking|something|sore knee|squeeze|squeeze for|squeeze it|squeezed|squeezing|stacked|stand a|stand at|stand side|stand sideway|stay heavy|stay on|stay put|stay still|stay stuck|stay where|still as|straight away|straight into|straight out|strength|swap the|swim when|tabletop|taking|talk to|tall through|tea on|teeth|tell you|than that|than your|that all|that hip|that knee|that working|the blade|the ceiling|the dumb|the ear|the good|the leading|the leg|the shin|the spine|the underneath|the waist|them back|them home|there and|there like|they are|thing|through it|tight and|tightrope|to each|to feel|to head|to heel|to me|to one|to tell|to turn|to twist|toe and|toe stay|toe without|together at|together like|top foot|touch your|toward your|towel|towel up|travel out|tray|trust it|turning|twist|under|underneath side|up in|up one|walnut|way you|wet|wet towel|which|whip|whole time|will do|with straight|with the|working|you and|you breathe|you can|you lean|you let|you think|you wobble|your hand|your knee|your mat|your palm|your spine|your teeth|your throat|your top|your towel|your watch|your weight|youre breathing|youre done|youre finished|youre the|youve a|youve gone',
      ],
      [
        0.1,
        'a bar|a canoe|a hammock|a line|a small|all down|all four|and just|and pick|and right|and step|and stop|and throw|arm dont|arm to|ask|at something|at you|back come|back over|back start|badge|balance a|band in|belly button|big slow|bit apart|breath into|breathing while|buddy|can without|candle|canoe|clench your|clenching|coffee|completely|cracking|doesnt move|dont hook|down onto|down softly|drawn|drift in|drifting back|drink on|droop|each time|ear to|ease off|egg under|eye on|feet away|feet stay|finger and|flat like|foot come|foot go|forearm down|freeze|from each|from you|get up|go completely|go forward|go on|goe long|good foot|grab it|grape under|groin|hammock|having|heel close|hip and|hip forward|hip high|hip so|hiss out|holding your|hollow|hop up|i see|imagine a|imagine youre|in line|is over|it forward|it grab|it home|it is|it slide|job|jump for|kick the|kneecap slide|leg that|lift only|lift the|like train|line with|long and|long line|loud if|mat away|me the|neck go|neighbour|nobody drop|of five|of you|on something|one arm|one long|only to|open it|opposite arm|or one|or youll|out with|park|press straight|pressed|pulled in|push it|put the|relaxed|return|rib are|right in|right knee|roll off|rolling forward|roof|row|rush on|sag in|sand|see you|seven|shin flat|should feel|shoulder and|shoulder hurt|slow is|so far|softly|spread your|stop halfway|stop there|straight like|stuck to|swap|that bottom|that breath|that doesnt|the backside|the grip|the roof|the slow|then let|there an|they stay|theyre not|thigh are|those|throat|to be|touching|underwater|until your|use the|wait for|walking|want the|way in|were not|with them|without dropping|you went|youll feel|your blood|your breastbone|your jaw|your kneecap|your lane|your lower|your strength|youre leaning|youre moving|youre straight|youre watching|yourself hang|youve got|zipping',
      ],
      [
        -0.1,
        'a bowl|a breath|a duck|a flat|a gap|a little|a metronome|a pace|a pillow|a pinch|a pull|a saucer|a spring|a t|a warm|about forty|achilles|after it|along with|and close|and head|and i|and mind|and shove|and swing|and tip|and turn|another|anywhere|arm and|arm stay|as deep|as its|as you|at an|at shoulder|back down|back heel|back hip|back onto|before it|belly on|below|bend in|bend it|bend the|big and|bite|bone|both feet|both of|both way|bounce it|breath out|breath while|breathe out|bug|build|bump|by side|carry|carrying|chest and|chest between|chin tucked|circle with|clear the|cranky|crept|crossed|curl up|deep as|dont bob|dont do|dont flare|dont flop|dont force|dont haul|dont round|dont stamp|down again|down slower|draw the|drive your|drop your|elbow and|elbow dont|elbow go|elbow tucked|elbow up|end up|enough that|enough to|every one|exhale up|face away|facing the|facing you|feet are|fire door|flapping|foot forward|for you|force the|forehead down|forward from|forward till|frame|from knee|front half|front heel|get a|get heavy|get there|glaucoma|go back|go of|goe round|going over|good knee|half way|hand back|hand just|hand loose|hand up|haul on|head hang|heel heavy|heel on|heel stay|here|hit|hold of|however|if i|if youve|im|in each|in for|it across|it away|it catch|it dive|it down|it isnt|it open|it pull|its comfy|jug|just outside|kick|knee arent|knee sag|knee through|knee wide|land soft|lean a|lean forward|lean in|lean over|left hand|let you|lie back|lie on|like youre|little puff|live|long band|longer than|low down|lower them|lower till|make you|meet it|melt|metre|mind your|neck|neck long|needle|neednt|no bouncing|nose to|not a|not down|not like|off you|old|on both|one breath|one piece|or you|other way|ought|ought to|out a|out breath|out every|out for|own|pair|palm down|palm facing|part|past your|pause|pick them|piece|pillow|pillow under|pointing|pouring|proud|pub|pulled|quick up|reach with|reach your|rep|reverse|rib dont|right leg|ring are|rise|road|roll them|roll to|same|same as|scoot|see me|set it|shoe|short and|short step|shoulder bite|shoulder catch|shoulder knee|shove it|shrug|shrugging|side by|sit down|sit up|slack|sliding|small of|snappy|some|speed you|spring|squeeze at|standing up|stay long|step through|stiff|stomping|stop at|straight and|straight arm|swinging|take it|tall and|tall at|tap the|than up|that back|that leg|that you|the arm|the bar|the bend|the big|the breastbone|the chin|the far|the first|the gap|the head|the lace|the lift|the long|the small|the speed|the straight|the toe|the weight|them away|them down|them in|then go|then lower|then push|then stand|there till|they come|thirty|thirty degree|three count|through a|through and|through to|tickle|time you|to long|to lower|to meet|to see|to straight|toe are|toe face|toe of|toe when|top leg|touch|touche your|track|tucked back|tug|turn away|two count|unclench|up at|up first|up past|up till|up with|upside|upside down|want it|were after|wherever|whole foot|whole leg|wide as|with both|wood|yet|you just|you neednt|you ought|your ankle|your body|your bottom|your calf|your chest|your fingertip|your lap|your left|your seat|your shirt|your whole|youre carrying|youre pouring|youre running|youre upside|yourself down|youve blood',
      ],
      [
        -0.2,
        'a bit|a gate|a hamstring|a hot|a look|a moment|a scarecrow|a second|a slope|a slow|a speed|about|about a|about your|above your|across|again|along your|and carry|and draw|and jump|and lazy|and let|and no|and peel|and put|and quick|and stand|and steady|and straighten|angle|ankle over|arm long|arm swing|as|as they|back a|back leg|back out|back under|back up|backward|ball of|band|bang|bar|belt height|bending the|big breath|big step|blow out|bob|body like|both knee|bouncing|brake|bring the|brisk|bum back|by|by your|carpet|cheat|chin in|chin out|chin stay|chin up|circle|clap|click and|close enough|close to|closing|cold|come from|come up|comfy|coming|coming down|coming up|crane|crank it|crank your|curtain|deep in|disc|dive in|dont crane|dont fling|dont shrug|down a|down at|down from|down into|down on|down your|drawing|drawing a|duck|each|easy breath|edge|elbow brush|elbow stay|elevator|end of|eye up|feel that|few inch|fine|finger tingle|fist off|flat back|flat heel|fling|fling it|flip|follow|foot behind|for four|for one|force|forearm flat|front foot|front knee|full|further out|gate|get the|get your|give you|go again|go and|go over|go to|go up|goe down|going up|gossip|grab the|grow up|hand are|hand away|hand flat|hand forward|haul|head|heel to|heel under|hike it|hip back|hip bone|hip that|hold the|how|hug|in at|in down|in going|in under|inch of|instead|is plenty|isnt a|it a|it all|it at|it from|it hang|it hurt|it land|it leave|it let|it round|it slowly|it till|it to|its just|its tiny|jaw|jerking|jog|jump up|just the|keep hold|keep the|kerb|kiss|kiss the|knee are|knee as|knee go|knee no|knee out|knee together|knee toward|knock|land on|lap|last|lean till|leave your|leg and|leg in|let yourself|lie down|lie flat|like the|like you|like youve|little wider|long arm|long back|long leg|looking|machine|meet|mind the|moan|moment|more than|movement|nearly straight|nice|nick|nip|no jerking|no yanking|nobody need|nose and|nose if|not on|not too|oclock|of soup|of the|of two|of your|of yourself|on every|on hip|on that|one and|onto your|open|opposite knee|or its|or stop|or your|other hand|other one|out going|out over|out straight|out through|out up|out wide|over to|overhead|pace|pass|past the|pause at|percent|pick it|pin|pinch in|pinch your|plenty|point|puff|puff out|pull it|pulled up|punch|push away|pushing|put them|putting|quick but|quicker|rack|reach out|rest|right up|ring like|roll down|roll out|roll up|room|rope|round like|round up|round your|run|say|scarecrow|second down|send|shin|shin up|shirt|shopping|short|shoulder back|shoulder height|shoulder level|shoulder stay|shove the|show|shutting|side|side and|sideway|sigh it|sink down|sitting|slide it|slope|slow breath|slower|slower than|small and|small quick|so it|so you|squeeze that|stamp|stand with|start it|stay over|stay straight|still there|stirring|straight leg|straighten|straighten it|string|stroke|swap hand|sway|swing it|t|table|tail and|tailbone|take a|take the|tall like|tap|that foot|that side|the ball|the band|the belly|the calf|the forearm|the gate|the jaw|the kerb|the next|the nose|the rack|the room|the table|the wobble|then press|these|theyll|theyve|think of|three|thumb pointing|till you|till your|tilt|to cheat|to do|to go|to round|to you|to your|toe forward|toe out|toe pulled|toe up|top|touche|tree|turn round|two|under it|under there|underneath you|up for|up high|up through|up your|upright|waiting for|walk the|walk to|warm|weight|where its|where your|where youre|whole|wider|with a|without bending|wring|wrist stacked|yank the|yanking|you dip|you land|you open|you push|you rise|you sit|youd|your forehead|your front|your mouth|your shoe|your time|your you|youre not|youre putting|yourself up|youve just',
      ],
      [
        -0.3,
        'a big|and come|and down|and it|and over|and roll|and round|and send|and sink|ankle|ankle on|any|apart|arch your|armpit|back|back at|back foot|back pinch|bag|behind your|bell in|bent|between the|blow|both leg|bow|bowl|brush your|chin|come to|corner|cramp|curl|dive|dizzy|do the|dont bounce|dont just|dont look|dont push|dont rock|dont shove|down|down in|down slow|down the|down to|each one|elbow|elbow further|elbow wide|every|face the|fast|feet in|feet under|find a|first|flop|foot on|foot out|for|forehead on|gap|gentle|get|glute|goe up|ground|have|head on|heel and|heel down|high|hold a|how you|inch is|it come|itll|its|its a|just a|lace|lean|lean away|length|light|like|long neck|look down|lower it|middle of|middle toe|mouth|next|no more|nose|not at|not out|on a|on it|one|one bone|one hand|other knee|out when|pocket|put a|quick step|rib tucked|rock|round|see the|should be|shove|side to|sink|slide the|small|snap|stand tall|start|steady|swing the|swing your|the bell|the chest|the edge|the glute|the ground|the knee|the out|the outside|the side|the tummy|the way|through|through your|thumb up|till it|tingle|tiny|tip|tip from|to shoulder|to side|to start|toe|toe to|toward the|tucked in|turn your|up tall|way|when you|when your|yank|you go|you lift|your armpit|your eye|your feet|your head|your heel|your leg|your tail|your toe',
      ],
      [
        -0.4,
        'along|and slide|arm out|at the|back knee|been|bit|blade|bounce|breathe down|breathe into|bring your|brush|butt|calf|catch|chest|chest down|chest forward|chest to|click|closer|crank|cross|dont arch|dont crank|dont lift|dont yank|down between|draw your|elbow back|elbow straight|exhale|fall|finish|forward|from the|front|further|get it|going down|hand behind|handle|heel|in on|in through|it like|it up|knee bent|land|leaning back|let the|loop|mind|near|nothing|out at|out on|palm up|pedal|push off|rhythm|sit|sit back|slide your|smooth|speed|step|stop|swing|take|the seat|the standing|the top|them up|till the|to get|to lift|way up|where|with it|you like|your butt|your foot|your shin',
      ],
      [
        -0.5,
        'after|and lower|and push|arch|back to|bend|dont lean|drive|easy|end|enough|facing|for the|from it|going|heavy|in as|it out|let them|lie|loose|more|nearly|out|out as|out like|palm|push through|seat|second|side of|sigh|stay down|the end|the front|the thigh|till|turn|wide|you pull|your arm',
      ],
      [
        -0.6,
        'as it|bell|body|breathe in|draw|in the|lazy|lower|one knee|other leg|outside|shoulder blade|tall|up to|walk|way down',
      ],
      [-0.7, 'big|both|forehead|past'],
      [-0.9, 'out to|quick'],
    ],
  ],
  [
    'jump',
    -0.5,
    [
      [1.2, 'hop|land'],
      [0.9, 'land on'],
      [0.8, 'jump|you land'],
      [0.7, 'hot|knee in|or your|shoulder over|your shin'],
      [0.6, 'and jump|landing|march|puff|rhythm|shin|stick|when you'],
      [
        0.5,
        'air|and hop|bladder|down under|drive|dum|fast|feet in|feet together|flick|hang|land soft|or|skip|slapping|the ball|the heel|the wrist|your bladder',
      ],
      [
        0.4,
        'a hot|a phone|back in|back pocket|ball|can|da|da dum|deer|doing|dont reach|dont sit|find a|get your|go again|ground|hand down|have|have to|heel up|in and|instead|knee come|like the|phone|pocket|point at|push off|shin are|step it|tent|the air|the far|the ground|the other|up on|up under|you have|your feet',
      ],
      [
        0.3,
        'a deer|a knee|a rhythm|a sewing|and easy|and march|and the|arm drive|as long|ball of|beat|belt|belt height|blow out|bounce|bouncy|clap|doesnt go|dont hold|drifting|drifting back|drive the|feet go|find|floor a|forearm and|go back|hang in|hang there|into it|is plenty|jaw loose|knee nearly|knee out|knee to|knee up|leaning back|light on|little hop|machine|one at|one knee|opposite arm|plenty|point|quick off|running|sag when|sewing|sewing machine|snap the|stiff|straight down|taking|that all|the foot|to about|travel|under there|under you|your breath|your foot|your wrist',
      ],
      [
        0.2,
        'a duck|a few|a pace|a tent|a time|across to|and go|and hang|and in|and land|and there|are at|are drifting|arm go|as close|at you|back behind|back start|belt and|bounce off|break|bring them|brush the|cheat|cheat it|chest to|come in|dizzy|do them|doesnt have|dont fling|dont like|dont want|down softly|drop down|duck|easy|every|fast as|feel that|flat out|fling|floor away|foot come|for two|get the|go wide|going straight|hand at|hand under|hear|heel are|hurry|hurt|in for|in it|inch of|it from|jump as|jump your|jumping|just ahead|knee only|knee point|land quiet|left|left and|light|line up|listen|listen for|little puff|long as|loop round|mat away|meet your|morning|mud|mud off|nearly straight|no tent|not up|off one|on somebody|only come|or so|out for|out in|over a|pace|phone book|pick it|pointing at|popping|popping up|puddle|pulled up|quiet|quiet feet|reach with|reset|right knee|round your|run|set the|shaking|shin or|sit down|sneaking|so if|soft on|stamping|stay up|step the|stepping|stick it|still as|string|string out|than the|thatll|the ankle|the backside|the belt|the forearm|the morning|the pocket|the slow|the track|the water|then heel|then the|there no|they dont|to be|to cheat|to go|to meet|turn it|up in|want the|water|wrist sore|wrist under|you jump|you skip|you stop|your fist|your you|youre late|youre sneaking',
      ],
      [
        0.1,
        'a beat|a chair|a speed|a tabletop|achilles|and drag|and drop|and quiet|and skip|arm back|at a|away so|belly sag|bend and|bent like|big arm|breath out|breathe as|breathe in|clear the|close together|creeping|dangle|doing the|dont do|dont fold|dont hurry|dont throw|each one|every time|faster|feet are|floor and|foot and|foot down|from there|front with|halfway to|hard|head dangle|heel as|heel come|hold your|hop off|hum|jaw|just clear|knee or|knock|late|ligament|load|loose|lot|lot of|neck long|no further|nose as|not to|on each|one come|or leave|other knee|other one|out at|over elbow|over it|plank|pulled|quick|reach out|ride up|snap|so there|sock|sock on|speed you|squat|stay tall|step one|stop and|tabletop|taking it|the board|the rhythm|the rope|the shin|the towel|the width|the work|they are|throw the|toe on|toe pulled|track|underneath you|watch your|where they|width of|without the|wrist hurt|you can|youre shaking',
      ],
      [
        -0.1,
        'a hair|a little|achilles is|across the|against|all of|along|and let|and lower|and push|arm out|armpit|as low|back into|back of|back till|bag|band|before you|behind you|behind your|belly in|bend the|between the|between your|bit that|brake|breastbone|breathe how|breathe into|brick|calf grab|chair|change|coming|couple|cramp|dead still|deep|doe|dont swing|down for|down with|dumb|dumb bell|each hand|edge|enough to|face the|facing|feet a|feet on|finger|finish|foot on|forehead|front foot|front heel|front knee|garden|get it|going|going down|good|hair forward|half|hand|hanging|heel down|hip arent|if its|if that|if there|in each|in one|in there|into your|it back|it go|it goe|it in|it on|itll|its not|its one|its only|just|just above|keep hold|knee bent|knee down|knee straight|knuckle|lane|leaving|let them|lift the|lift your|long neck|look down|lower it|make|make it|marcus|middle of|move|next|next door|nothing|now|on that|open|other hand|out a|out of|out through|pain|past|poke|press the|pull the|pulling|push up|push your|put it|put your|quarter|relax|relax your|right|ring at|rise|root|sagging in|second|see|shirt|shove|side of|sip|sit back|slow as|slow enough|slower than|spine|squeeze the|stacked|standing|stay down|step back|straight|straight out|straighten|strap|swap|swap leg|tailbone|than you|that count|that enough|that how|that the|the arm|the band|the bench|the bit|the brick|the calf|the down|the elbow|the end|the inside|the neck|the ring|the way|the whole|then let|three second|till it|till the|till your|to come|toward the|tray|tucked|tug|turn your|up as|up onto|up through|walk your|way down|wee|weight in|where|whole way|wider than|you pull|you stand|you swap|youll feel|your backside|your butt|your calf|your eye|your face|your finger|your own|your rib|your thumb|youre on|youre up',
      ],
      [
        -0.2,
        'a bit|a hand|able|able to|about|above|above the|allowed|an|and come|and punch|and stand|and walk|apart|arm long|arm straight|around|as if|as they|at your|back foot|back knee|back on|back up|bar|be able|behind|bench|bend your|big|blood|bob|bone|both hand|bring|bring it|butt|catch|cheek|come back|count|curl|dont roll|dont stamp|door|draw|ear|ease|elbow under|end|everything|exhale|fall|feet down|fist|five|for|grab|grip|grow|hair|hand go|hand on|handle|head|heel and|hold|hold the|home|how|how you|however|in|in as|in through|in your|inside|into|into the|it a|it land|its the|keep the|lean in|leg up|let|let go|like somebody|like there|like you|lock|long|long breath|look|looking|low|me|mean|middle|moving|my|near|neck|nice and|no bouncing|nobody|of|off your|on|on it|on you|on your|one of|onto|out as|outside|own|palm|peel|pick the|pillow|pinch|pressure|properly|pull it|pull your|pushing|rail|rib|rock|roll out|room|round the|run tall|same|seat|shoe|should|should be|shoulder|sigh|sit tall|sit up|slower|slowly|small step|smooth|so|so you|squeeze your|stamp|stand up|stay|stay low|steady|step out|stop|stretch|table|take|than your|the bottom|the edge|the first|the hand|the middle|the nose|the rail|the seat|the shoulder|the side|the top|them down|thumb|till youre|tiny|tip forward|too|top|toward|tuck|tuck your|until|up at|up off|up the|when it|while|whole|wider|you go|youll|your chin|your ear|your nose|your tail|your thigh|youve',
      ],
      [
        -0.3,
        'back|be|bell|bend|between|big toe|bottom|by the|calf|ceiling|click|dead|down|down and|down the|drop|elbow|feel|feel it|feet flat|feet wide|forward|goe|heavy|imagine|it|its|lean|one foot|one hand|press|put|ring|slide|small|still|tail|tell|the back|the big|the ceiling|the chair|the step|the wall|three|turn|walk|with your|you get|you should|your|your back|your leg|your toe',
      ],
      [
        -0.4,
        'bit|both|enough|face|flat|it down|lift|lower|of it|pull|round|slow|that|through|through the|to the|wall|way|weight|your elbow',
      ],
      [-0.5, 'a|breathe|first|leg|let it|nose|roll|squeeze|the'],
      [-0.6, 'chin'],
      [-0.7, 'till'],
    ],
  ],
  [
    'kneeling',
    -0.5,
    [
      [1.1, 'kneel'],
      [0.9, 'down on|knee down|one knee'],
      [0.8, 'squeeze the'],
      [0.7, 'forehead'],
      [
        0.6,
        'arm long|back knee|cushion|knee on|kneeling|sag|same side|sit back|sit your|tail|too far|tuck your|your heel',
      ],
      [0.5, 'and walk|armpit|bell|foot out|knee wide|mat|nailed|on a|on one|past|the hand|tuck'],
      [
        0.4,
        'a mat|a table|and away|arm straight|back and|bring it|cheek of|fold|foot forward|forward and|home|in front|into|it back|it goe|kneecap sore|knuckle|mat under|out in|pad|pinch|rib stay|shin up|sink|string|that down|the cheek|the cushion|the rib|the weight|then pull|toe together|too|touching|under it|walk your|warm|your arm|your body|your hand|your tail',
      ],
      [
        0.3,
        'a cushion|a door|and let|arch|arch to|are by|as far|big toe|breathe into|bum back|can get|dont sag|exhale|exhale going|find|front foot|front knee|hand go|hand together|into your|knee and|kneecap|kneel on|lean away|let your|like you|long in|low back|lower them|nailed down|next to|other foot|overhead|palm in|past your|putting a|right foot|ring at|roll it|sigh it|slow out|start to|straight like|that back|the armpit|the kneeling|the neck|the palm|the ring|up tall|up the|upright|your low|youre putting',
      ],
      [
        0.2,
        'a chair|a drawbridge|a lighthouse|a pull|a ruler|a stretch|and lower|and sink|and there|arch your|arm go|back cheek|back dip|back from|back leg|back on|back sag|back to|balance|banana|be the|beat at|belt buckle|both knee|bowing|bowing to|breathe all|buckle|bum of|centimetre|change hand|cheek|chest down|collar|collar bone|concrete|couch|cracking a|dont bend|dont fold|down before|down slower|down toward|draw it|drawbridge|drift|each armpit|elbow and|elbow by|elbow skim|elbow stop|elbow up|end up|exhale up|far as|fold the|folded|foot flat|from it|front of|gentle|get back|go lighter|go out|go overhead|goe forward|going out|gone too|hand at|hand out|heel and|heel of|hip are|hip height|horn|hump|imagine|instead|into the|it away|it by|it low|it pinch|it till|knee apart|knee hip|knee that|kneeling side|knitted|last inch|lie on|lighter|lighthouse|long and|look straight|machine|melt|moment|need to|no wider|of that|on both|on you|only to|other end|out breath|out front|out past|past the|pause a|pillow|ponytail|potato|press it|pull back|pulled in|push that|put a|putting|quiet hand|rib knitted|roll in|roll off|ruler|sag in|sag when|second at|see them|send|set|shorter|shout|sign|sink the|sit|skim the|slide out|slow going|slump|snatch|so come|spread|step your|stretch|string on|tail and|tail under|the arch|the arm|the belt|the breath|the bum|the down|the finger|the horn|the kneecap|the last|the little|the moment|the pocket|the pull|the string|the tail|the upright|till the|together at|travel|travel out|tuck the|two second|up between|up past|upside|upside down|walnut in|want it|way out|way round|went|when i|when its|when youre|with you|you want|your collar|youre at|yourself back|youve gone',
      ],
      [
        0.1,
        'a hot|a rocking|a second|all down|along the|and hand|and leave|and sit|asking|at eye|at something|away again|away behind|back the|back toward|before your|blow as|brace|breath go|brush your|come out|dont arch|drift forward|finish it|fold back|foot through|front shin|get out|getting|go all|go heavy|go long|go past|goe over|gone|hand away|hand finish|has|hip back|hip youre|into that|it under|its kind|knee goe|little in|long plank|low down|lower like|mark|no leaning|no prize|not to|nothing|numb|one dumb|out and|out till|pinch at|prize|pull up|rocking chair|roll the|send the|set the|shift|shin upright|shouldnt|shuffle|skim|some|step one|table|the low|then walk|to finish|top shelf|towel under|tucked under|walk them|wall and|weight to|went up|wrist stay|wrist straight|you a|you till|you went|youre in',
      ],
      [
        -0.1,
        'a drawer|a foot|a hand|a little|a tent|a touch|again|ahead|and if|and lazy|and lift|and not|and push|and the|and then|and tip|and you|any|anything|arm up|as high|as low|as you|at|away and|back a|back stay|bag|ball|ball of|below the|bend the|bend your|board|both|both feet|bottom of|breathing|bus|chest away|chin tucked|close|closing|closing a|coming|coming up|cramp|cross|dead|do|do it|do the|doing|dont hold|dont push|dont shove|down for|down slow|down your|drawer with|easy|easy breath|edge|elbow bent|elbow stay|elbow under|em|even|facing|fall|fast|feet behind|feet hip|feet on|feet under|feet wide|fine|fingertip|floor away|foot back|foot up|for three|force it|four|front heel|gate|get long|go back|go up|grab|grass|ground|halfway|hamstring|hand behind|have|heel to|high as|higher than|hip up|hold on|hold your|how|i can|i dont|if there|if youre|if youve|in toward|it hurt|it with|its only|jump|keep breathing|keep it|kick|knee in|knee over|knee point|knee stay|know|lace|land|leg long|leg out|leg straight|lift the|light|like the|little|lock|locked|long line|low as|lower|me|middle of|moving|nearly|nip|not out|not the|off a|on to|one arm|one foot|one long|other|other knee|other leg|other one|out a|out going|out when|over your|pain|pick|plenty|press the|push off|push through|push up|put|put it|put your|quiet|quit|reach one|rise|roll back|run|sagging|sharp|shoe|shoulder stay|side to|sip|sit down|slide your|snap|so|speed|square|stacked|stand on|stand up|straight line|swap|swinging|take the|take your|tall and|than the|that how|that the|the big|the box|the chest|the edge|the feet|the ground|the heel|the one|the outside|the push|the rail|the room|the shoulder|the wall|them down|then let|then the|they|they dont|throw|thumb up|till you|to side|toe|touche|toward you|turn away|two|underneath|unhurried|up a|up in|up like|up off|wall|want to|watch|wee|while|whole|whole foot|wider than|yank the|you go|you know|you like|you push|you should|you stand|your ankle|your belt|your bottom|your breastbone|your bum|your face|your foot|your forearm|your shoe|your thumb|youre closing|youre not|youre on|youre one|youve a|youve got',
      ],
      [
        -0.2,
        'a|about|across|across the|air|and back|and it|and lean|arent|as|as if|as they|at all|at chest|at shoulder|at your|back down|back foot|back into|bad|band|behind you|below|box|breathe out|bum cheek|but|calf|catch|chest height|circle|click|count|dont poke|dont tip|dont want|down and|elbow back|every|face the|feet flat|finger|first|five|float|follow|foot and|foot way|from your|good|grip|half|hand under|head|heel up|hold the|if its|if that|imagine youre|in as|in to|in your|isnt|it come|it open|keep your|knee bent|knee straight|knee to|knee up|lazy|leg behind|let go|lifted|like youre|look|look at|looking|more|move|no|now|one heel|one leg|onto|open|out as|out to|over the|palm down|palm facing|pointing|poke|poke your|pop|pull on|push the|push your|rail|resting|room|rush|shoulder height|shove|sigh out|sit tall|slide|soft|somebody|spine|stand tall|standing|stay on|stay tall|step through|still|straight out|straighten|swing|take|tent|than that|the air|the floor|the foot|the knee|the leg|the opposite|the other|the wrist|then|there|theyre|through your|time|tip|toe up|toward the|treacle|tug|turn your|under shoulder|up and|up at|up there|wait|way back|way down|well|wherever|yank|your breath|your finger|your leg|your neck|your shin|your spine|your toe|youre',
      ],
      [
        -0.3,
        'an|chest|drive|drop|enough|face|floor|gently|got|handle|hang|heel down|hold|hurt|if you|is|its|keep|knee together|leg up|let them|like|line|loose|make|of a|opposite|outside|point|pull the|pulling|quick|round|round the|shoulder blade|small|smooth|squeeze your|step|than|the bottom|the chair|the side|think|through|till it|to|to the|touch|toward|up on|way up|with your|you|your elbow|your feet|your shoulder',
      ],
      [
        -0.4,
        'a bit|ankle|around|back heel|bend|bit|blade|flat|forearm|if|its a|lean back|let it|not|of your|off|off the|pull your|right|thumb|way',
      ],
      [-0.5, 'bent|bottom|chin|dont|high|one|over|turn|up'],
      [-0.6, 'just|lift|push|shoulder|stand|stay'],
      [-0.8, 'leg'],
      [-1.3, 'feet'],
    ],
  ],
  [
    'leg-crossing',
    -0.2,
    [
      [1, 'arm out|cross'],
      [0.8, 'cross in'],
      [0.6, 'cross behind'],
      [0.5, 'dont look|facing|front knee|that turn'],
      [0.4, 'gone|hip that|looking|looking at|on to|out like|side on|that your'],
      [
        0.3,
        'a tightrope|after|and tip|ankle over|at them|bend both|bit more|buttock|cross it|dancing|deep|deep in|doesnt land|doing|each breath|easy|foot goe|front foot|front heel|it behind|its only|keep them|knee hover|knee stay|look down|no wider|other knee|out wide|rounding|shoulder stay|tall and|tall chest|than you|the buttock|the fence|then let|theyve|tightrope|tip forward|turning|twist|up tall|very|want it|wider',
      ],
      [
        0.2,
        'and keep|at me|beam|both knee|doing the|facing front|facing the|goe back|hover|in down|knee soft|me|out up|over it|rhythm|slow is|speed|stay over|up out|where they|wider than',
      ],
      [
        0.1,
        'anywhere|at all|cone|crossing|dance|dont do|dont stare|easy breath|feet wide|fence|first one|foot behind|gentle|got it|it doesnt|it run|its like|its round|lane|leading|leading leg|looking over|pick up|road|sideway on|sit up|so dont|stare|stare at|start with|stay square|step it|step no|swap your|the cone|the lane|the road|they are|till youve|to start|trailing|trailing foot|watch your|wide like|will do|wringing|wringing out|you look|youve all',
      ],
      [
        -0.1,
        'a hand|a touch|above|against|ahead|air|all|along|an|an inch|and back|and come|and down|and if|and lift|and lower|and no|and not|and push|and then|and your|arch|arm|arm are|arm by|arm long|arm straight|armpit|as high|as the|as they|as your|at a|back foot|back in|back on|back pocket|back up|backside|ball of|because|before you|behind the|behind your|belly|below|belt|bench|bend|bend the|bend your|between the|big|big toe|bit|board|body|both|both feet|both hand|bounce|bouncing|box|breath out|breathe into|bring|bring it|bring your|but|butt|by the|calf|catch|cheek|chest|chest up|come back|curl|dont arch|dont bounce|dont drop|dont go|dont roll|dont tip|down like|down on|down the|down to|drag|drop the|dumb|dumb bell|each|each hand|ease|edge|elbow under|em|enough|even|exhale|face|fall|far as|fast|feet|feet hip|find|finish|five|flat on|float|floor away|fold|follow|foot|foot on|for the|forehead|four|from the|further|get it|go up|goe|going down|good|grab|grip|ground|grow|hamstring|hand under|handle|hanging|hard|have|heel and|heel up|high as|higher than|hip|hold the|holding|how|hurt|if it|if its|if there|if youre|in|in a|in each|in on|inside|into it|into your|is|isnt|it a|it come|it go|it goe|it up|itll|its|keep|keep breathing|keep it|keep your|knee and|knee over|knee to|kneecap|knuckle|last|leaning|left|leg long|leg out|let go|let it|let the|level with|lie|lift the|light|like a|like there|like youve|lock|loop|low as|lower it|middle|middle of|move|near|nearly|next|nice|nice and|no|no bouncing|no higher|nobody|not the|not your|now|of a|off your|on a|one hand|one knee|one leg|only|only as|opposite|other foot|other leg|out at|out on|over|past your|peel|please|plenty|point|pointing|pop|press the|puff|pull it|pull the|pull your|push off|push through|push your|put it|rail|rib down|ring at|rise|roll out|round|sag|second|see|set|sharp|shoe|short|shoulder down|shove|side|side of|sigh|sit|sit back|sit down|slow|slow as|squeeze the|stacked|stand|stand on|stand tall|standing|start|stay|stay down|step back|stick|straight down|straight up|strap|table|tail|take your|tall|that|that how|the back|the ball|the band|the bar|the bench|the chest|the edge|the end|the feet|the ground|the hand|the inside|the kneecap|the nose|the other|the outside|the rail|the rib|the same|the seat|the side|the toe|the wall|the whole|them|them down|them up|then the|they|theyre|think|think of|three second|through your|tight|till it|till the|till youre|to come|to the|too|toward the|toward your|towel|tuck your|tummy|turn your|under you|until|up at|up like|up off|up the|up there|up to|waist|walk your|wall|wee|what|where|whole foot|width|will|with it|without|yank|you come|you dont|you feel|you get|you like|you pull|you push|you stand|youll feel|your bottom|your chest|your finger|your foot|your low|your middle|your neck|your nose|your shin|your tail|your toe|your wrist|youre a|youre not|youve|youve got',
      ],
      [
        -0.2,
        'a|a little|about|again|all the|and|and bring|and let|and the|apart|are|as a|as far|as if|as it|at|at the|away from|back down|back of|back to|ball|band|bar|be|before|bell|bent|between|between your|blade|blow|blow out|bone|bottom|breathe|breathe in|breathe out|breathing|bum|by|by your|can|ceiling|chair|chin|close|come down|come up|coming|count|dont|dont lean|door|down|down and|draw|drive|drop|ear|end|every|eye|eye on|far|feel|feel it|feel the|feet flat|feet under|finger|fist|flat|for|forearm|forward|from|from your|front of|get|going|half|hand on|hang|head|heavy|heel|height|high|higher|hip width|hold|hold it|home|i|if|if the|if you|if your|in as|in the|in your|inch|into the|it|it back|it down|it in|it out|its a|its not|knee|knee bent|lean|lean back|leave|leg|let|let them|let your|level|lift|lift your|like|like youre|line|little|low|low back|lower|make|mat|neck|nose|not|not a|of|of you|on|on it|on your|one|onto|open|or|other|out|out in|outside|over your|palm|past|pinch|pocket|press|pull|push|put|quick|reach|right|ring|roll|same|seat|shin|shoulder|shoulder blade|slide|so|somebody|sore|squeeze|squeeze your|steady|still|stop|take|the|the arm|the bottom|the ceiling|the chair|the elbow|the foot|the heel|the knee|the leg|the mat|the middle|the ring|the thigh|the top|then|there a|thigh|this|three|through the|thumb|till|till your|time|to|to get|to your|toe|together|top of|touch|toward|tuck|tucked|two|under the|under your|up|up and|up on|walk|way|way down|way up|weight|whole|with|with the|with your|wrist|you|you can|you go|youll|your|your arm|your bum|your chin|your ear|your elbow|your hand|your head|your heel|your hip|your knee|your leg|your rib|your shoulder|your side|your thigh|youre|yourself',
      ],
      [
        -0.3,
        'as|as you|away|back|come|dont let|elbow|floor|go|hand|into|just|long|of the|of your|off|off the|on the|out as|rib|straight|the floor|the way|there|through|top|under|your back',
      ],
    ],
  ],
  [
    'leg-lowering',
    -0.3,
    [
      [0.8, 'arm by'],
      [0.7, 'knee over|low back'],
      [0.6, 'arche|bring them|chin|curl your|low|other knee|over your|press your|shoulder up'],
      [
        0.5,
        'again|as it|as low|as the|back stay|bend|bending|by your|ceiling|flat|foot flat|good knee|hand under|leg up|low as|shin|shin level|start to|straight up|tea|the ceiling|then lift|tight|toward your|under your|whole leg',
      ],
      [
        0.4,
        'air|along the|back into|bath|beat|both leg|bring|chin off|curl|faster|good|head and|heel up|home|it away|knee in|leg|leg away|lie|little quick|mat|opposite|pop|send|sip|slower than|sock|sock on|start|the heel|the leg|the mat|the whole|toe pointed|too|up over|your back|your bottom',
      ],
      [
        0.3,
        'a banana|a heavy|a tea|across the|along|and bring|and shoulder|and the|are bending|arm straight|arm up|back arche|back come|back up|banana|bent up|boat|bring your|chin not|drag|drag it|draw|floppy|goe|heel about|heel away|height of|hip to|imagine|in toward|it arche|it back|it leave|its only|knee bent|knee toward|knee up|kneecap|leg down|leg long|light|of a|off your|one heel|out through|palm down|pointed|reach one|rock|send it|short|slide|slide it|slow as|slower|so it|stretch|swap|swing it|tell|the air|the opposite|the toe|them down|thigh first|tighten|till its|till the|tomorrow|turn round|water|will|you can',
      ],
      [
        0.2,
        'a boat|a feather|a sock|a time|a whisker|ache|and start|and swap|and your|arche off|argument|arm and|arm back|away again|away along|back get|back peel|back start|bag|bend your|boot|can|can keep|church|coming off|daylight|daylight under|do not|dont fling|dont hitch|drag the|dropping|each other|everything|far|feather|flat on|fling|flip|flip over|float|float up|floor and|flop|foot to|for it|get hurt|glued|goe in|grumbling|hand height|heel goe|hip bone|hitch|home and|imagine youre|in like|it bend|it flop|it goe|it pop|it slip|it smaller|it start|it through|its tight|jean|kick|knee like|kneecap point|late|late for|leave the|leg goe|leg nearly|leg out|leg straight|let both|little breath|long and|lower them|lower your|lowering|make it|mat and|mug|one at|one piece|only your|or it|out front|out long|over hip|over on|paddle|people|piece|point at|poking|pop the|pop up|punch it|put it|quarter|quick and|rib are|roof|row|send the|set them|shin flat|short breath|short of|shorten|shoulder and|sit tall|slide one|slip|slipper|so far|so stop|spine|squash|stay flat|stay stuck|stop short|stuck|swimming|taking the|tall at|tea tray|than the|than you|that cheating|the height|the light|the roof|the shin|the slow|the water|them home|them up|then a|then float|then lower|to cheat|to lift|to where|toe just|too far|toward|tray|treacle|underwater|up again|up off|up or|wait there|wander|way through|where its|while you|whip|whisker|woozy|you lift|you reach|your low|your spine|your tailbone|youre late|zip',
      ],
      [
        0.1,
        'about as|ach|and float|and lie|arche up|arm into|arm to|as far|bend in|both way|can go|cheat|drift|drift in|far as|fetch|finger and|flat by|flat like|floor if|from you|go away|go to|goe away|gone too|hand width|hang on|heel toward|it right|its all|knee arent|knee dont|knee drift|land like|lane|leg in|leg that|lock it|lower one|off that|one and|only as|only go|opposite leg|peel|puff it|quicker|reach|right arm|shorten the|smaller|start again|start from|stay heavy|that all|that too|that where|the bend|them back|themselve|then bring|this one|tight and|tighten the|to me|too low|until its|up behind|where it|width apart|with your|youre in|youre lowering|youve gone',
      ],
      [
        -0.1,
        'a bit|a cup|above|and down|and no|and pull|and stand|and turn|arch|arm forward|at|back and|back down|back foot|back from|back like|back off|back on|back to|ball|ball of|band|before|belly on|bench|between the|between your|big breath|bit|blood|body|both knee|bouncing|box|breathe down|breathe low|bus|chest height|chest to|chest up|click|close|come out|cross|cup of|do|do it|dont bounce|dont drop|dont want|door|down for|down into|down the|drop|dumb|dumb bell|edge|either|elbow further|every|every time|face|face the|feet a|feet together|feet wide|find|finish|floor away|follow|foot and|foot on|for one|for you|forward and|from it|front heel|front knee|gently|go over|got|got a|grab|grip|grow|hair|hamstring|hand and|hand behind|haul|heavy on|heel to|hip height|hold it|hot|i dont|in and|in on|inside of|instead|it a|it off|it on|it with|jaw|jump|keep hold|knee down|knee on|knee soft|knee under|knuckle|lace|land on|lean in|leaning|let the|let your|level|level with|lift it|like an|like the|like youve|line|loop|meet|muscle|near|next|no|no bouncing|no more|normal|not out|of it|on a|on one|on top|one foot|one hand|one side|other foot|out a|out and|out at|over the|over to|palm up|pick|pressure|puff out|pull|push off|push up|pushing|put your|rack|ring at|rise|roll back|round your|saucer|second toe|shoe|should be|shoulder down|shouldnt|side|side on|sit back|sit down|sit up|slide down|slide up|slow down|slow on|soft knee|spread|stand on|stay up|step back|step out|step up|stick|straight ahead|straight down|straight out|strap|string|swing your|tail|than up|the arm|the ball|the bar|the bench|the big|the box|the calf|the chest|the edge|the hand|the next|the outside|the ring|the weight|there|thing|think|through|through your|till|till it|till youre|tip forward|to a|to one|toe|touch|tucked|turn your|two|under hip|under you|underneath|up the|up till|use|walk your|want to|weight in|were|when|where the|whole foot|wider than|with it|working|you pull|you push|you stand|your armpit|your eye|your forearm|your hand|your pocket|your rib|your shoe|youve|youve got',
      ],
      [
        -0.2,
        'a little|after|ahead|an egg|an inch|and do|and draw|and keep|and let|and lift|and lower|and out|arm down|armpit|back in|back pocket|bad|bar|be|behind your|belt|big toe|bite|bowl|breastbone|breathe|breathe in|breathe into|butt|butter|by the|calf|cheek|chest and|coffee on|come|come up|cramp|dont arch|dont lean|dont tip|down|drive|easy|elbow under|em|eye|facing|feet flat|feet hip|fingertip|first|foot|forearm|forehead|forehead down|front|get it|go|go down|go up|going|going up|hand on|hang|hanging|have|head|heel down|hip level|if its|it|it go|it in|its the|just|just above|keep breathing|keep it|knee to|lazy|lean back|long neck|melt|middle|middle of|neck|nobody|not|nothing|of the|of you|off and|on it|on them|one|one knee|open|other one|out like|pull it|push through|rush|should|shove|side of|side to|sideway|slow breath|squeeze your|stand tall|stand up|standing|steady|straight back|take|take the|that it|that leg|the ankle|the back|the bottom|the elbow|the end|the middle|the neck|the seat|there a|these|theyre|till your|tiny|to get|to side|toward you|tuck|tuck your|under shoulder|under the|up in|up there|waist|want|wider|width|with|with a|with the|you dont|you go|you want|your arm|your breath|your foot|your head|your shoulder|your tummy|your wrist|youve a',
      ],
      [
        -0.3,
        'a|an|back|back of|behind the|bell|between|big|down on|each|end|enough|fist|fold|for the|get|ground|half|high|in|in front|in the|inch|its|its your|keep your|let go|like there|look|onto|out in|out of|outside|pocket|pull your|ring|round|see|sit|that|the ground|the shoulder|the top|the wall|thigh|thumb|to|turn|up and|up on|walk|weight|wide|you come|your|your elbow|your shin|your toe|yourself',
      ],
      [
        -0.4,
        'arm out|at your|hip width|if you|let|let it|of|of your|on|on the|push the|seat|squeeze|straighten|the|tip|to your|top|wall|wrist',
      ],
      [-0.5, 'dont|feet|hand|lean|soft|tall'],
      [-0.6, 'behind|push|roll|shoulder|stand'],
      [-0.7, 'forward|step'],
      [-1, 'elbow'],
    ],
  ],
  [
    'load-over-face',
    -0.4,
    [
      [0.7, 'bell|feet flat|knee bent|lie|over your|touch'],
      [0.6, 'bench|bent|blade|bounce|off your|out like|the elbow'],
      [0.5, 'bar|breathe in|bring it|come down|it up|shoulder blade|the bar|wing|wrist|wrist stacked|your chest'],
      [
        0.4,
        'and no|as they|bell in|bottom of|eye under|halfway|it to|not out|stacked|the bench|under the|wrist straight|you push',
      ],
      [
        0.3,
        'a bell|and go|and push|arm straight|beside|beside your|breastbone|chest with|dont bounce|down till|down to|drive your|five|forty|forty five|goe up|in on|it come|lie down|planted|push up|roll on|second to|shirt|side to|so your|the bell|the pad|think of|touch the|your breastbone|your forearm',
      ],
      [
        0.2,
        'a shoulder|anchor|and a|and close|and press|arm touch|as you|back out|bar over|belly tight|bench and|bend in|bent back|blade stay|blow|blow out|bounce them|bouncing|breathe out|buddy|bum|bum stay|carpet|chest between|chest on|come|count down|crank your|degree|dont lift|ear to|elbow about|elbow are|elbow halfway|elbow in|elbow tucked|face away|feeling|feet into|feet planted|from your|go|grip|hand are|hand in|hand it|hand over|head hang|i|if a|kiss|kiss the|lean into|like wing|little bend|long from|lower it|lower till|lower your|neck up|no|no bouncing|no more|not bent|of pushing|one up|out when|pad|partner|pinch a|please|press it|punch it|push back|push it|push yourself|pushing|rest|roll to|rolled|round it|shaking|slow down|slow like|stacked over|stand at|stay heavy|stay off|stop when|the carpet|there|they go|thumb round|tight like|till the|together at|touch and|two count|under water|upper arm|waiting|when you|with both|with them|you press|you roll|your belt|your collarbone|your eye|your left|your partner|your shirt|youre feeling|youre under|youre waiting|yourself|yourself into',
      ],
      [
        0.1,
        'a bounce|a pencil|apart|back at|back pocket|back the|back with|bar like|bar to|behind you|blade in|both|bounce your|can|collarbone|coming down|down than|each other|elbow at|elbow down|hand hovering|heavy on|heel|heel into|hovering|in the|is|it in|it over|keep|kind|kind of|let the|level|lie on|low|lower them|mate|not a|notch|over elbow|pencil|pencil between|pinch your|pinned|punch|put|quick up|seat|shoulder away|side|side of|sit|squash|stand|stay by|stuck|teeth|then go|then push|there a|toe on|up over|up till|upper|want|weight|when your|where|whole|whole time|width|with the|you can|your face',
      ],
      [
        -0.1,
        'a hand|across|ahead|air|all|along|and lift|and stand|and then|arm are|arm by|arm long|armpit|as a|as far|as if|as your|at the|back down|back in|back till|before you|belly button|bend your|big|big toe|bit|board|breathe into|bring the|button|chair|cheek|chest height|chest up|do|dont arch|dont lean|dont roll|dont swing|door|down like|draw|ease|easy|edge|em|enough|even|far as|fast|feel the|feet back|feet hip|feet under|float|floor away|follow|foot on|for the|forehead|from the|goe|going down|good|got|grab|grow|hand under|hanging|hard|heel and|hip up|hold it|hold the|holding|home|if there|inside|instead|into your|it go|it out|its a|its the|keep breathing|keep it|knee over|knee to|knee up|last|leaning|let go|lift the|like there|lock|looking|loose|low as|make|move|neck|nice and|no higher|not your|nothing|of a|of it|off|off the|one foot|only as|onto|other foot|out in|outside|over the|palm up|past your|plenty|point|poke|press the|pull it|pull your|push the|put it|quiet|ring|rise|rush|sag|set|shin|shoe|short|shrug|sideway|sigh|sit back|slower than|slowly|sore|sort|sort of|squeeze your|stand tall|standing|stay down|step back|straight down|swap|swing|swinging|table|tail|take your|than your|the ball|the band|the chair|the edge|the hand|the heel|the leg|the nose|the thigh|then the|through your|till youre|tip|too|toward the|toward your|tuck your|tummy|up like|up there|waist|walk your|while|wider|wider than|with a|you come|you pull|you should|you want|your breath|your chin|your finger|your leg|your low|your nose|your tail|youre a',
      ],
      [
        -0.2,
        'a bit|again|an|and let|and lower|and the|ankle|arch|band|before|bend|body|breathing|come up|curl|dont let|down|down and|going|hand|higher|hip width|if it|if the|just|lean|lean back|let your|lift|like|line|look at|me|middle|on it|on the|or|out of|palm|reach|rib down|round|should|slide|slow|small|stand up|take|than|the middle|the wall|through the|way|way up|your belly|your toe|youve',
      ],
      [
        -0.3,
        'a|and|as|at|back|behind|dont|drop|far|feel it|feet|front of|hand on|height|if your|in|in front|it|its|long|nose|of|on|one|out|out on|pull|soft|squeeze|the|the front|the hip|the knee|the shoulder|the top|through|to|top|toward|turn|up|up to|walk|wall|wide|your|your knee|youre',
      ],
      [
        -0.4,
        'breath|breathe|chin|feel|foot|for|forward|front|get|hold|if|knee|leg|let|let it|look|of the|only|step|tall|that|the other|toe|under your|you|your hip',
      ],
      [-0.6, 'hip'],
    ],
  ],
  [
    'lunge',
    -0.4,
    [
      [1.3, 'back knee|front heel'],
      [1.1, 'front knee'],
      [0.9, 'the front'],
      [0.8, 'straight down'],
      [0.7, 'back hip|big step|feet together|front leg|other leg'],
      [0.6, 'front foot|one knee|step|that back'],
      [0.5, 'drop|front|it cave|knee down|right foot|step one|up through'],
      [
        0.4,
        'cave|cheek|drop the|hover|into that|it let|knee goe|knee hover|lace|ligament|of that|step back|step that|tail under|take|that hip|through the|tuck|upright|your front',
      ],
      [
        0.3,
        'a tightrope|arch|arch your|back and|back heel|bell|bell at|both knee|both side|chest tall|down on|drift|drop it|eye up|fishing|foot in|foot out|foot up|front shin|front thigh|go as|good knee|help|home|hug|hug the|in line|knee stop|knee to|kneel|lace down|ladder|land|landing|leave the|line with|little breath|middle toe|more|off the|on each|on one|one foot|pelvis|point where|press up|push off|push through|push up|right at|shape|shift|sink|sit into|squeeze the|stand with|start in|stay tall|step out|stop a|straight leg|the back|the pelvis|then push|tightrope|to catch|tuck the|you come|you sit|your right',
      ],
      [
        0.2,
        'a finger|a fist|a ladder|a lift|a mat|and come|and not|arm to|as deep|as wide|asking|at each|back foot|back leg|bang|bell in|bend both|bladder|bouncy|breath out|bus|buttock|cheek of|clear the|come home|deep as|dive|dont step|dont tip|down off|downstair|drift forward|drift out|drop straight|drop to|dumb|dumb bell|ease|ease into|elbow toward|feet on|fist off|folded|folded towel|foot back|foot forward|foot way|get heavy|going down|grass|happy|have it|headlight|heel heavy|heel stay|heel up|hip forward|hold them|hop|in down|in on|inch off|inward|it dive|it nip|it till|its the|jumper|just clear|knee a|knee point|knee stay|knee toward|kneel on|land soft|long spine|long step|long stride|nip|nip in|no rush|not to|of what|on hip|open the|out front|out up|outside your|pinch at|rep|right hand|rope|rush|rush on|shallow|sideway|sit right|stay flat|stay in|stay straight|steady|step it|stride|tail|take a|take it|take your|that elbow|that foot|that where|the good|the grass|the pocket|the same|the straight|the toe|there no|this one|to just|toward the|track|tuck your|under and|up from|wait at|what|what you|where youll|you could|you open|youll have|your bladder|your second|your time',
      ],
      [
        0.1,
        'a big|a chair|a long|a rope|above the|after|an inch|and drop|and ease|arent|at ninety|bobbing|bowing|bum cheek|clear|crease|cushion|cushion under|dive in|doing the|dont pull|drive up|fall|front buttock|im|inside of|it a|it doesnt|it shouldnt|knee or|knee track|kneecap sore|kneeling|kneeling side|land on|lean a|let each|lie on|lifted|new hip|next|next one|ninety|no bobbing|no bowing|on two|one dumb|one side|out coming|quick and|railway|second toe|shorter|shouldnt|sink the|squeeze that|stance|the cheek|the crease|the kneeling|the left|the next|till there|to come|to one|track over|train|train track|two rail|under it|up between|wander in|you stand|your weight|youre after|youre on',
      ],
      [
        -0.1,
        'a foot|a time|all the|and back|and lift|and slow|and the|and your|apart|arm are|arm straight|armpit|around|as|as a|as high|as if|as it|as they|at|at the|away from|back like|back off|back pocket|belly button|below|below the|bend your|blade|box|breastbone|breathe out|button|by your|coat|curl|dont be|dont hold|dont roll|dont swing|dont yank|door|down and|down into|down to|elbow back|elbow under|em|end of|facing|fast|feet a|feet under|finger|fingertip|flat on|foot turn|forehead|from your|full|gently|going up|gone|got|grip|grow|hamstring|hand in|head|hear|height|high as|hip up|hip width|hold your|hot|hurt|if that|if the|if there|if your|instead|it come|it like|it there|its a|keep breathing|keep your|knee out|last|lean back|leaning|leg long|leg out|leg up|level with|lift|lift the|like somebody|little step|lock|locked|long|look at|loop|lower it|melt|move|moving|nailed|nailed down|need|never|nice and|no higher|nobody|not at|not your|nothing|off your|on your|one hand|open|opposite|other knee|out a|out at|out like|out of|palm|press|press the|pressure|pull the|pull your|push the|push your|put it|quietly|rib down|roll out|round the|run|sag|set|sharp|shoulder blade|shoulder down|shoulder height|shoulder width|sit down|slow as|slow breath|slower|slower than|slowly|soft|soft knee|speed|squash|squeeze your|stay there|straight out|straighten|stuck|swing|swinging|table|than your|the arm|the band|the belly|the big|the bottom|the box|the right|them down|them up|then let|then lower|think of|three second|thumb|tight|till you|till your|to get|toe up|too|touch|touching|tucked|under|under the|under you|underneath|up against|up in|up like|up there|up to|walk your|want to|wee|when youre|wider than|with|with a|with the|you dont|you get|you like|you pull|you should|your ankle|your bottom|your breath|your chin|your feet|your finger|your hand|your head|your neck|your nose|your rib|your shin|youre|youre a|yourself|youve',
      ],
      [
        -0.2,
        'a|across|across the|again|against|against the|ahead|along|and bring|arch to|are|arm out|back down|back of|band|be|behind the|belly|belt|big toe|blow out|bone|both hand|bouncing|breathing|bring it|bum|but|by|close|come down|come out|count|deep in|dont reach|down|down the|draw|ear|easy|face the|far|feet|feet flat|flat|float|foot off|forearm|four|from|from the|get|grab|hand on|hard|heel down|higher|if|if its|in your|isnt|it out|it up|its|knee and|knee soft|knee together|lean|let|let them|level|lift your|like the|loose|neck|nice|no bouncing|not|of a|of you|operated|out in|out over|pad|pain|past your|pick|pointing|puff|put|rock|see|shin|short|should be|sigh|slide|small|somebody|sort|sort of|stand on|the air|the ankle|the breath|the chair|the chest|the elbow|the knee|the mat|the shoulder|the top|the way|there|they|theyre|three|through that|tummy|turn out|under your|until|up|up on|want|wrist|yank|you feel|your|your arm|your bum|your ear|your elbow|your foot|your hip|your leg|your toe',
      ],
      [
        -0.3,
        'air|all|and|bend the|blow|calf|chin|dont|eye on|first|foot on|i|in front|it|it down|let your|like|like a|long breath|look|lower|of your|roll|shin up|should|sit|so|standing|the calf|the foot|the leg|the other|the rail|the seat|the wall|to|to the|top|up tall|up the|you|your heel',
      ],
      [
        -0.4,
        'bottom|bring|elbow|face|hand|high|if you|nose|pull|reach|round|seat|slow|than|the thigh|them|walk|wall|whole|whole foot|your shoulder',
      ],
      [-0.5, 'away|bend|breathe|on it|the|turn'],
      [-0.6, 'ankle|arm'],
      [-0.7, 'shoulder'],
    ],
  ],
  [
    'neck-motion',
    -0.2,
    [
      [0.8, 'right ear'],
      [0.7, 'down the'],
      [0.6, 'breathe into|your right'],
      [0.5, 'it goe|leave it|pull on|slowly|stay pointing|the ear|toward your'],
      [0.4, 'collarbone|it with|meet it|side that|your collarbone'],
      [
        0.3,
        'a few|a touch|and face|anything|back through|chest come|come back|come over|come round|dont pull|down to|ear|eye go|few|if somebody|its an|look over|look round|name|other hand|reach down|round with|said|sat|sat tall|smaller|straight back|swimmy|the arm|tingle|tip your|to meet|toward|you look|your chair|your lap|your name',
      ],
      [
        0.2,
        'a drawer|a nerve|and look|block|chin stay|doe|dont need|dont tip|down away|drawer|drop down|eye level|fall|far as|finger on|finger tingle|from a|gently|go in|goe in|goe to|half as|hand resting|having|head and|inch is|it let|it pinch|it slowly|it still|it was|lap|leading|left|let each|make yourself|meet|most|most of|need|need to|nerve|nod|of inch|or on|other side|pinch at|pointing forward|resting|resting on|right hand|same as|see if|shoulder up|sigh it|slide your|so go|stay down|stay till|the finger|the long|the neck|there and|till it|tingling|tingling down|to hold|tucked a|underwater|use your|was|you think|you turn|you were',
      ],
      [
        0.1,
        'and leave|argument|arm come|chin tucked|couple of|dont fling|down toward|drop it|ear to|feeling|fling|fling it|float it|get heavy|goe without|head up|it start|just to|lazy|load|notice|out breath|pointing at|pulling with|shoulder get|shoulder stay|slide the|stay level|stop there|teeth|the collarbone|this time|to about|up out|up slowly|your left|youre after',
      ],
      [
        -0.1,
        'a bit|a hand|about|above|across|against|ahead|air|along|an inch|and come|and down|and keep|and lift|and lower|and not|and push|and then|and your|any|arch|arm are|arm by|arm long|arm out|arm straight|armpit|as high|as the|as they|as your|at a|away|back foot|back in|back knee|back on|back pocket|backside|ball of|because|before you|behind the|belly button|below|belt|bend the|bend your|between the|big toe|bit|board|body|both feet|both hand|bounce|bouncing|box|breath out|breathe|bring|bring it|bring the|but|butt|button|by|by the|by your|calf|catch|chair|cheek|chest up|come out|curl|do|doing|dont arch|dont bounce|dont drop|dont go|dont hold|dont roll|down like|down on|drag|draw|drop|drop the|dumb|dumb bell|each|each hand|ease|easy|edge|elbow under|em|enough|even|exhale|face the|facing|fast|feel it|feet hip|find|finish|five|flat on|floor away|fold|follow|foot on|forehead|four|front heel|front knee|further|get a|get it|go|go up|going down|gone|good|grab|grip|ground|grow|hamstring|hand|hand under|handle|hanging|hard|heel and|heel down|heel up|high as|higher than|hold the|hold your|holding|hurt|if there|if youre|if youve|in a|in each|in on|inside|into it|into your|is|isnt|it come|it go|it up|itll|its|its your|jaw|keep breathing|keep it|knee and|knee over|knee soft|knee to|knee up|kneecap|knuckle|last|leaning|leg long|leg out|let|level with|lie|lift the|light|like there|like youve|lock|long|longer|look|looking|loop|loose|low as|lower it|middle of|near|nearly|neck|next|nice|nice and|no bouncing|no higher|nobody|not the|not your|now|off your|on a|on to|one knee|one leg|only|opposite|other foot|other leg|out at|out like|over your|past your|peel|pick|please|plenty|point|pop|press the|puff|pull the|pull your|push off|push through|push your|put it|rail|rib down|ring at|rise|rock|roll out|round|round the|sag|set|sharp|shoe|short|shoulder|shove|side of|side on|sideway|sit down|sit tall|slow as|slower than|smooth|soft knee|squeeze the|stacked|stand on|stand tall|standing|start|stay|stay on|step back|stick|straight down|straight up|strap|swap|table|tail|take your|tall|than you|than your|that|that a|that how|that your|the ball|the band|the bar|the bench|the chest|the edge|the end|the feet|the front|the ground|the hand|the inside|the kneecap|the nose|the other|the outside|the rail|the rib|the seat|the toe|the top|them down|them up|then let|then the|theyre|think of|three second|through the|through your|till the|till youre|time|to your|too|towel|tuck your|tummy|turn|two|under the|under you|until|up at|up like|up off|up tall|up the|up there|waist|walk your|want|wee|weight|what|when|where|while|whole foot|wider than|with|yank|you feel|you know|you pull|you push|you should|you stand|youll feel|your bottom|your breath|your foot|your low|your neck|your shin|your shoulder|your tail|your wrist|youre a|youre not|youve got',
      ],
      [
        -0.2,
        'a|a little|again|all|all the|and|and bring|and let|and stand|and the|ankle|are|arm|as|as a|as you|at|at the|at your|back|back and|back down|back of|back to|ball|band|bar|be|before|behind|behind you|bell|belly|bench|bend|bent|between|between your|big|blade|blow|blow out|both|bottom|breath|breathe in|breathing|bum|can|ceiling|chest|close|come down|coming|count|dont|dont lean|dont let|door|down|down and|drive|end|every|eye on|feel|feel the|feet|feet under|fist|flat|floor|for|forearm|forward|from your|front|front of|get|going|got|hand on|hang|have|height|high|higher|hip width|hold|hold it|home|i|if|if the|if your|in|in as|in front|it|it back|it down|it in|its not|just|keep the|keep your|knee bent|know|land|lean back|let it|let them|lift|lift your|like|like a|like youre|line|little|look at|low|low back|mat|me|no|not a|of|of the|of your|on|one|one foot|one hand|onto|open|or|out|out as|out in|out on|out to|outside|over|over the|past|pocket|press|push the|put|quick|quiet|ring|roll|seat|second|shin|should|shoulder blade|slow|slower|small|so|soft|sore|squeeze|squeeze your|stand up|steady|stop|straight|swing|take|than|the|the bottom|the ceiling|the chair|the elbow|the floor|the foot|the heel|the hip|the knee|the leg|the mat|the ring|the thigh|the wall|there|there a|they|thigh|three|through|thumb|till|till your|to|to get|to the|together|top|tuck|under|under your|up|up on|walk|wall|want to|way down|way up|wide|wider|width|with the|wrist|you|you can|you go|your|your arm|your belly|your bum|your chest|your elbow|your feet|your heel|your knee|your leg|your rib|your toe|youre|youve',
      ],
      [
        -0.3,
        'breathe out|elbow|foot|heel|hip|in the|keep|knee|lean|leg|lower|not|off|off the|on the|push|rib|stand|step|the back|the way|them|then|toe|way|your back|your hip',
      ],
    ],
  ],
  [
    'overhead',
    -0.3,
    [
      [1.2, 'overhead'],
      [1, 'ring'],
      [0.9, 'armpit|box|the box|up there'],
      [0.8, 'dip|it up|press it'],
      [0.7, 'dont go|drop off|ear|rib stay'],
      [
        0.6,
        'a shoulder|and away|arm straight|back down|been|dont bend|dont fold|down to|elbow down|head|move|punch|rib|ring high|shoulder catch|tail under|the hand|up over|upside|upside down|your head|youre not',
      ],
      [
        0.5,
        'back and|back sag|before|bell|bending|chin over|dont drop|draw|fine|from it|go overhead|hand shoulder|head through|into a|into your|knee come|kneel|kneel on|kneeling|lower them|on a|out at|pinch|right up|send|shoulder width|sit your|slow as|the armpit|the shoulder|the weight|them back|then pull|tuck your|up past|went|your arm|your ear',
      ],
      [
        0.4,
        'a cushion|and pull|and rest|and sink|arm up|as far|asleep|back dip|belt|bite|blow|both knee|buckle|catch|come in|curl your|cushion|dont kick|dont lean|drag|em|ever|feet a|finger wide|flat on|forward and|go out|go up|goe up|going up|hand forward|hang|if that|it goe|it pinch|its the|kick|knee on|knee up|leaning back|let your|limbo|or it|pinch on|pinch up|rib down|rib in|rib pop|rib tucked|ring at|sag|step up|tail|that side|the ceiling|the way|they come|theyre|think of|three second|thumb round|tonight|too far|tuck|turn it|with no|youll|youve blood',
      ],
      [
        0.3,
        'a bar|a lift|a ring|all down|an elevator|and breathe|and head|and send|and slide|and your|are bending|are by|as they|at belt|at it|away from|back the|backward|banana|band now|bar|been out|bell in|belt height|bending the|bent elbow|bit in|both strap|box under|bring|bring it|catch or|cause|ceiling|chase it|coat|come back|cranky|dead|down into|down like|down there|down when|elbow point|elbow to|every time|exhale going|facing|facing in|far as|feel your|finish|finish with|finished|flip|fold at|folding|full|getting|go long|go to|gonna|grip|grow|hang like|head hang|height fine|hip height|hip up|honey|horn|into that|it by|just let|knee as|knuckle by|leg throw|let go|like washing|lock it|long arm|long back|no leaning|no yanking|nobody|nobody drop|operated on|or youve|out on|over your|palm facing|past|pedal|press|press up|pull back|rest|right knee|road|same side|see the|send your|shaking|shoulder pinch|shoulder stay|shoulder that|slide|slide up|smooth|something|squeeze the|squeeze your|start from|stay straight|step back|stop at|straight leg|swinging|the band|the bar|the chin|the horn|the neck|the spine|the window|then come|then let|throw it|till your|to where|too|tucked in|up the|up till|up toward|when its|when youre|whip|window|with it|wrist straight|yanking|you reach|you went|your armpit|your eye|your fingertip|your tail|youre upside|youve had',
      ],
      [
        0.2,
        'a baby|a bag|a banana|a coat|a flat|a giraffe|a little|a mat|a post|a scarecrow|a shoe|a towel|a window|about your|along with|already|an ankle|and back|and finish|and go|and pick|and roll|and step|and throw|and you|ankle go|arch your|are going|are straight|arm are|arm dead|arm go|as near|as treacle|baby asleep|back flat|back from|back onto|back out|back to|bag of|band in|bar at|bar stool|before it|behind you|bell at|belly and|belt buckle|bend in|bicep|blade down|block|blow as|both shoulder|bouncy|bowing|bowing to|breath at|can get|care|chase|cheating|chest stay|chest with|circle|coat on|collarbone|coming off|concrete|corner of|count up|cracking|cracking a|crane your|crate|creep|dead straight|dinner|dinner plate|dont care|dont jump|dont like|dont swing|dont turn|down a|down toward|draw your|each armpit|elbow on|elevator|everything|exhale|feel like|feeling|feet are|feet behind|feet first|fist under|flare|flat back|fling the|floor as|floor with|fold in|folk|for this|force the|get back|get long|get your|giraffe|go in|go slow|going|going out|going over|good|got a|grumble|had|had it|hand at|hand come|hand over|hand slide|hang long|happen|heel a|heel into|heel of|heel touching|hike|hip heavy|hip under|hold a|hold them|hum|if a|if youve|is fine|it alone|it drop|it from|it into|it still|it through|its been|its socket|keep your|kicking|knee in|knuckle|leave a|leave it|leave them|leg still|let off|lid|lift up|lift with|like its|little bit|long and|longer|loud|low in|lower than|machine|mat with|melt down|middle of|no good|no kicking|no swinging|not going|of two|on both|one come|one shoulder|operated|or|or its|or you|out before|out going|palm to|past the|percent|point at|pop|pop off|punch the|put your|putting|quick up|rack|ramp|reach|reset|rib dont|right out|ring up|roll backward|roll your|round your|scarecrow|send the|shoot|shorter|shoulder dont|shoulder down|shoulder grumble|shoulder knuckle|side like|sign|sit this|sitting on|size|size of|skull|sky|slide down|slide out|slide them|so you|squat|stand on|started|stay long|stay stacked|step down|stool|stop halfway|take it|that cheating|that shoulder|that up|that your|the crate|the desk|the good|the muscle|the rib|the road|the size|the sky|the table|the towel|the upright|the wrist|them up|then a|then drive|then lower|there and|they|thirty|thirty degree|this out|throw the|tired|to level|toe are|toe down|travel|travel out|treacle|two hand|under at|under them|under you|up an|up like|up so|waiting for|walnut in|want it|warm|washing|way up|way you|whole time|will|with a|with one|without the|you before|you could|you open|you roll|your chin|your coat|your hair|your lower|your skull|youre being|youre finished|youre putting|yourself back|youve',
      ],
      [
        0.1,
        'a long|a pinch|a warm|about it|all of|and get|and hang|and just|and youre|arm by|at eye|back between|back dont|back that|back toward|bad shoulder|before each|before you|behind it|blow on|box underneath|bring them|came|cant get|check its|chin in|close it|coming down|control|cut|down away|down behind|drag them|drive it|ear and|elbow are|em back|end up|far|feet go|feet in|feet off|find|find the|front till|full of|get you|goe behind|grip the|hand into|head on|heard|in slow|in under|isnt moving|it catch|it float|it hurt|it like|it past|it straight|knee through|kneeling side|left arm|length away|lower back|mat under|melt|old|only to|onto the|open the|opening|out itll|pick it|plate|plate on|press them|pull up|reach like|really|reverse|rib flare|roll it|roll the|second out|shelf|shoulder bite|slide back|snap it|spine|stay down|steady you|step off|still as|stop where|straight up|strap up|stretched|take hold|the arm|the block|the head|the kneeling|the ring|them down|they go|theyll|theyve|thumb wrapped|tipping over|to face|to find|to long|toe stay|top shelf|towel|two second|until your|up high|up out|wall and|with you|without bending|wrist over|you came|you finish|you float|you quit|your calf|your heart|your whole|youre at',
      ],
      [
        -0.1,
        'a hair|a half|a hand|a touch|able|able to|against|an end|and even|and hold|and lean|and not|and shoulder|and three|are just|are up|as long|as wide|as you|at chest|at you|back come|back get|back hip|back knee|back off|band come|be able|beside you|between them|bigger|bit more|boot|both hand|bottom rib|bowl|breathe like|bruise|build|bump|butter|cheek|chest height|chin off|chin tucked|click|closer|come out|comfy|count out|crossed|curl|curl it|dangling|dive|dont move|dont pull|dont rock|dont sit|door|down through|down with|draw a|dug|dug in|each time|ease|elbow bent|elbow brush|elbow toward|elbow up|eye up|faster|fence|few|fingertip behind|five|five degree|foot and|foot off|foot up|for nick|for two|forearm down|forearm up|forward till|freeze|front heel|front knee|front like|gentle|glued to|go tingly|got you|grab|half as|hand by|hand flat|hand off|hand palm|hand to|haul on|heaving|heel dug|heel stay|heel to|heel up|higher|hinge|hip level|hip to|hold of|hug|i|i want|if one|in line|inside of|isnt a|it again|it in|it isnt|it off|it on|it open|it with|join|just above|keep hold|kind|kind of|kiss the|knee point|knot|land on|late|lay|leg away|leg straight|leg together|letting go|lie down|lift|light|light and|line from|little breath|little step|looking|low|lower like|lower till|need to|no more|normal|not at|not on|not out|not the|one at|one hand|one heel|one knee|one leg|one line|one of|one on|one piece|one up|other knee|other leg|other way|out a|out and|out breath|outside your|over a|paint|palm down|pinch your|please|plenty|point|poke your|pop up|puff|puff out|pull to|pulled|push off|push the|push through|quick step|quiet feet|ready|right down|ring down|ring out|roll them|room|round it|rubber|run|seam|second toe|shin up|shorten|shoulder height|shoulder sore|shoulder up|shutting|sideway|sing|sit tall|slide it|slow breath|small and|so the|soft|speed|spot|spread|square|squeeze a|stand tall|starting|stay heavy|step out|straight out|swing the|tail and|talk|that leg|the ankle|the ball|the big|the calf|the edge|the first|the left|the light|the long|the one|the out|the outside|the second|the shin|the toe|them out|then roll|there a|they dont|throw yourself|till the|till you|tingle|tingly|tiny bit|tip over|to about|to lift|to side|to straight|today|toe to|toe up|touch the|touch your|touche your|toward the|turn round|turn the|twice|two|under hip|under your|up at|up from|up off|up on|up tall|up with|walk it|walking|whatever|where youre|wherever|while you|whole foot|with the|without dropping|wobble|work|wrist flat|yank it|you are|you lift|you should|you turn|youll get|your belly|your body|your chest|your heel|your little|your neck|your partner|your spine|your watch|youre going',
      ],
      [
        -0.2,
        'a beat|a string|a time|a tiny|about a|ache|across the|ahead|and a|and come|and its|and leave|and look|and no|and up|are thin|arm back|arm hanging|arm to|as low|as well|at a|at shoulder|back foot|back heel|back slow|back start|ball|ball of|band round|be|because if|been told|before your|behind your|belly|below|below the|bend the|between your|big toe|bit|blade like|body like|bone are|both leg|bottom|bounce|breathe|butt|butt back|carpet|change|chest and|chest down|chest open|chest proud|circle with|clap|come forward|come up|coming up|count of|cramp|crank|crank your|curl up|curtain|deep|disc|do|doe|dont|dont bounce|dont crank|dont haul|dont lock|dont poke|dont shrug|dont throw|dont want|down as|down by|down till|ear to|easy|edge|edge of|elbow and|elbow at|elbow close|elbow dont|elbow glued|elbow go|elbow pinned|elbow skim|elbow wide|end in|face|far enough|feet forward|finger|finger go|fist|flop|foot in|for one|for three|forty|forty five|forward|forward a|from the|further|gently|glued|goe down|goe in|goe out|hammock|hamstring|hand behind|hand down|hand in|hand together|hand under|hang on|hanging|head back|head down|head last|heel and|high and|hip dont|hip width|hiss|hit|hold your|home and|hot|how you|i can|if its|if you|in|in each|in one|in through|in toward|in your|inch off|into the|is|it|it and|it go|it hang|it ping|it start|its a|jaw|just|knee are|knee bent|knee dont|knee over|knee stay|knee wide|lazy|lead|lean on|leave the|left|leg goe|letting|lift it|lift the|lift your|light on|like the|little toe|lock your|loop|low as|lower it|make a|meet it|mind|moving|need|nick|not|of|of them|off|off a|on it|one arm|one second|opposite arm|out|out when|pain|pair|park|people|picture|pillow|ping|pinned to|poking|pretend|pulling|push up|quarter|quick|quicker|rail|reach one|reach your|right arm|right back|right ear|ring come|rocking|roll|roll out|rolling|rope|round to|sagging|shin and|short|shoulder and|shoulder are|shoulder away|showing|side of|side on|side to|sigh it|sigh out|sip|sit straight|skim|slowly|smaller|split|squeeze it|stand between|stand up|stay there|stirring|straight back|straight line|string|stroke|stuck|swap|swing it|swing your|tap|than that|than you|that how|the carpet|the chair|the forearm|the heel|the kneecap|the leg|the pull|the rail|the room|the side|them home|them in|then go|there for|they are|thin|this|three|three count|time|tiny|tip|to meet|toe|touche|track|tug|tummy|until the|up again|up as|up for|up slowly|waist|wall behind|watch|way down|way through|were|what|when it|while|who|wide|wide as|wing|you by|you can|you had|you like|you press|you stop|your ankle|your bone|your bottom|your breath|your butt|your cheek|your fist|your lap|your middle|your shoe|your thumb|your time|youre after|youre leaning|yourself up|youve been',
      ],
      [
        -0.3,
        'a bit|a tent|and stand|and the|as your|back till|beat|because|behind the|belly button|bent|beside|between|board|bone|bottom of|bouncing|breastbone|breathe in|but|button|can|coming|do it|dont roll|dont shove|dont tip|down at|down between|down for|each|elbow back|elbow high|elbow stay|feet back|feet flat|feet together|first|front of|haul|hear|hop|how|in a|in as|into it|it behind|it come|its coming|just the|knee|kneecap|land|lap|last|lean|leg out|leg up|lie|lifting|loose|me|meet|no bouncing|off the|open|out long|out to|outside|pinned|pointing|poke|press your|pull the|rock|seat|shake|sigh|sit up|small|somebody|sore|squeeze at|step through|stop and|stop when|tent|that the|the|the air|the back|the floor|the foot|the hip|the opposite|the seat|they drop|thigh|those|thumb up|till its|to lower|to you|touch|toward|until|you pull|you push|you think|your|your breastbone|your elbow|your hip|your right|your shin|your shirt|your waist|youre',
      ],
      [
        -0.4,
        'across|air|and bring|and push|arm and|as if|bench|big|breath|breathing|chest up|doesnt|down and|down your|each hand|flat|floor|foot|for|handle|keep breathing|leg long|let them|level with|line|look at|lower|off your|opposite|palm up|put it|right|ring to|shirt|shoulder blade|shove|stand|the bench|the front|the handle|the mat|the nose|the thigh|till|to|turn|wait|walk|wet|when you',
      ],
      [
        -0.5,
        'body|heavy|heel|hip|leg|let it|like youre|of your|other|push|side|tall|the other|till it|together|turn your|your finger|your side',
      ],
      [-0.6, 'blade|chest|one'],
      [-0.7, 'apart|look|on your'],
      [-0.8, 'shin'],
    ],
  ],
  [
    'prone',
    -0.4,
    [
      [0.8, 'forearm|tent|your thumb'],
      [0.7, 'a tent|ahead|elbow under|forehead|mat|the mat|then the'],
      [
        0.6,
        'ahead of|back pinch|chest down|elbow toward|go down|going down|head back|low back|one long|shoulder over|squeeze your|wrist|your belly|your low',
      ],
      [
        0.5,
        'a hand|faster|forehead down|forehead on|hand in|heel toward|hip dont|hold the|its a|knee in|lower your|not a|pinch|press up|rush|shape|squeeze|start in|the wrist|you push',
      ],
      [
        0.4,
        'a foot|and push|angle|arm and|back at|bend one|between the|bum|butt|chest|chest and|chest between|chest forward|chest to|crane|dont crane|dont rush|down between|drawing a|everything|flip|flip over|forearm and|forearm down|hand by|hand under|hear|hip level|it away|knee like|left|level with|lift up|like somebody|long plank|nip|nip in|plank|press|push it|ring down|roll over|slide the|sore|that side|the ring|there no|those|to a|toward your|tummy|you feel|your tummy',
      ],
      [
        0.3,
        'a drum|and fold|and turn|and your|arm goe|back leg|back start|backside|between|board|chest on|come forward|come lower|crank your|dont sag|dont throw|dont twist|drawing|drop a|drop to|drop your|drum|elbow|elbow back|elbow further|elbow in|eye a|eye on|feeling|feet back|feet wide|fist off|flex|flex the|float up|floppy|forearm flat|hand off|hip bone|if its|in as|in by|in going|it grab|it pinch|joint|keep the|knee at|knee come|knee down|leaning on|leg long|little quick|look|look a|low|neck|no sagging|not high|not out|of a|on each|one elbow|one straight|out ahead|out at|out sideway|over on|over onto|pant|pinch in|point back|pull your|pulling|push away|push the|push up|right arm|ring to|slipper|slow on|square|squeeze everything|start to|stay close|stay quiet|step that|strap|that hip|the bench|the collarbone|the dumb|the floor|the one|the rib|the water|theyre|throw your|thumb|to go|toe just|until youre|up behind|wait|wait at|wrist or|wrist stay|you get|you have|your butt|your finger|your front|your neck|your wrist|youre a|youre feeling',
      ],
      [
        0.2,
        'a board|a bow|a coat|a few|a finger|a fist|a hammock|a hen|a hip|a hot|a like|a right|a ring|a slope|a time|a wet|a wrist|about a|about to|an arrow|an old|and quick|and right|and stop|are at|are sore|are up|arm bend|arm locked|arm stay|arm to|around your|arrow|as long|at all|at each|away|away behind|back under|back until|belly|bench|between them|bite|body like|both end|breastbone|breathe normally|buckle|bum down|can hear|chest a|chest goe|closing a|come in|come out|come over|coming up|could|crank|curtain|deep|do not|doesnt go|dont crank|dont hold|dont sit|down on|drawn|drift out|drifting|drifting back|each breath|easy breath|elbow point|elbow to|few|floor away|foot ahead|for four|for the|forward on|forward to|front foot|get hurt|go all|go as|go away|goe first|gonna|grab at|hammock|hand a|hand up|has|have a|head to|hear it|hen|hip arent|hip stay|hot|if you|in to|instead|it nip|kick|leave your|left and|left hand|leg a|let off|let that|let your|like an|long leg|long line|look at|make one|middle like|more|nipping|no jerking|no more|no yanking|normally|nose over|not to|not up|of inch|of pulling|of tea|off with|once|one arm|one piece|onto|open the|out like|out straight|outside your|over it|pace|palm down|palm forward|piece|pinch at|place|plant|press back|press that|right angle|right down|right foot|right hand|right knee|rope|round one|rush it|sag|sagging|save|screw|see me|shove|sit straight|skate|slide out|slope|small breath|so the|somebody about|squash the|stand a|stay stacked|stop if|straight to|t|tap|tap the|tea on|than the|that all|that elbow|that foot|that not|the face|the forearm|the left|the pad|the right|the straight|the wood|them coming|then press|theyre not|throw|thumb out|to about|to ache|to catch|to one|to see|toe down|turn round|twist|under shoulder|up in|up round|water|way through|where your|which|whole body|wider|with that|with them|with you|wrist hurt|wrist sore|yanking|you come|you lift|you lower|you open|you own|you think|your backside|your blood|your breastbone|your chest|your forearm|your hand|your joint|your palm|your right|youre after|youre cracking|youre going|youre leaning|youre one|youve a',
      ],
      [
        0.1,
        'a nip|a pinch|a pint|a slant|a t|an angle|and catch|and not|and out|and press|and pull|and wide|ankle behind|any|arm down|arm out|at a|at an|balance a|belly sag|bench away|breathe in|bring one|bring them|bum before|bum in|chip|crane your|creeping|dont hang|draw your|drop into|elbow go|exhale on|exhale when|few inch|flaring|float|floor ahead|forward as|from each|from you|further out|get a|get down|get to|go back|hang like|head up|heel away|i could|ice|in for|invited|is where|it melt|it steady|it want|its about|its like|its sharp|jerking|lean over|leg straight|leg together|let each|lie on|lift and|like wing|lock out|long neck|middle sag|more than|no rush|not behind|of two|one at|or youve|out for|pad|pint|pint on|pushed|reach for|right there|sagging in|screw your|set the|settle|shoulder bite|shoulder level|shove the|slapping|so youre|soften|squeeze that|straight and|straight arm|swap|swap the|that you|the chest|the glute|the knee|the leading|the low|the shove|then roll|to be|to make|toe on|toe tucked|trouble|tucked in|twisting|upside|upside down|wandering|wet towel|wider than|wing|wrist are|yard in|you press|you quit|you sink|your fingertip|your knuckle',
      ],
      [
        -0.1,
        'a chair|a lift|a step|a tray|able|able to|above|above your|against it|all four|along|an ironing|and breathe|and bring|and its|and one|and roll|and walk|anything|arch your|arche|arm go|as an|as if|as well|at it|back flat|back foot|back heel|back in|back over|backward|bag|bar on|be able|bell in|below the|beside|big breath|blade|boat|body stay|bone|bowl|breathe into|breathe slow|bring the|bum back|cat|check|chest open|chin off|click|come up|comfy|cramp|crank it|curl your|dive|doe|dont bounce|dont lean|dont leave|dont lock|dont press|dont push|dont swing|dont tip|down at|down like|down through|down your|drop the|edge of|elbow down|elbow lower|elbow up|end in|face the|facing the|far|feet on|fence|flat at|flat out|float it|flop|folded|follow|foot and|foot on|for it|forearm up|forward till|front knee|gentle|go long|got a|hair|hand to|hand together|head down|heel about|heel and|heel up|hip back|hip width|hover|if youre|if youve|imagine a|in toward|in with|into a|isnt|it doesnt|it down|it goe|it like|it off|it open|it out|it start|it straight|it there|itll|jumper|just above|just the|keep hold|kind|kind of|kiss|knee are|knee soft|knee to|knee together|kneecap|lean in|lean till|line from|lip|little step|low and|low in|lower back|lower if|machine|middle of|near|nothing|of air|of that|of water|on one|on that|on to|on top|one on|one side|opening|operated|opposite hand|or on|other|other knee|out over|out there|over the|overhead|partner|past your|pick|pocket|poking|post|press on|press through|puff|puff out|push a|push through|quicker|rib and|ring come|roll out|rolling|round the|same|sat|shake|shorten it|should be|should feel|shoulder blade|shut|side|side to|sink|sip the|sit up|slide one|slower than|small step|smaller|snap|soft knee|some|spread out|stand on|stand tall|step back|step through|step up|stick out|stop a|stop and|stop there|straight out|string|that back|the big|the box|the brick|the calf|the foot|the heel|the leg|the lift|the nose|the outside|the paint|the seat|the waist|the weight|the whole|the worktop|they|they go|three second|through and|through your|till it|till the|till you|tip forward|to get|toe point|toe together|top hand|touch|touch the|tray|tuck them|tug|turn away|up against|up at|up off|up there|up through|up till|up to|up your|upper arm|use|wall behind|way up|weight in|well|when you|where the|whole foot|whole way|will|with both|with the|worktop|wrist ache|you are|you stand|your body|your collarbone|your foot|your lower|your pocket|your spine|your tailbone|your thigh|youve got',
      ],
      [
        -0.2,
        'a banana|a bit|a breath|a wall|about forty|and dont|and down|and jump|and lazy|and look|and lower|and round|and sink|and stand|and step|are long|arm are|arm by|arm length|arm up|as it|at chest|back and|back knee|back on|back sag|back stay|ball|band|barking|beat|below|belt|bend your|bending|beside your|big toe|both hand|bounce|box|brake|breathe low|butter|by the|chest away|circle|clench|clench your|coffee|come down|cross|dizzy|doing|dont arch|dont clench|dont force|dont roll|door|drift back|drive the|each hand|either|elbow level|elbow stay|empty|every|exhale up|fall|feet a|feet forward|find a|find the|force|forward|freeze|full|get|get it|give|glued|got|grass|hamstring|hand behind|hand down|head in|heavy|heel down|higher than|hinge|hip up|hop|how|hug|if that|if the|in through|inch up|into the|into your|it across|it to|it up|its not|its the|just|keep it|knee a|knee on|knee over|knee wide|kneel|know|land on|last|leaning back|leave the|leg goe|leg up|let go|let the|lie back|little breath|live|lock|lock the|long on|mat and|me|mean|melt|next|next one|no further|no higher|no swinging|nose|not in|not straight|not the|now|of it|of wood|off a|on it|one leg|open|or it|other arm|other hand|other leg|pain|paint|palm facing|palm up|plank of|pointing|press it|press your|proud|push down|push off|push them|pushing|put a|rib down|right up|room|round|round up|running|sand|seat|send|short|shorten|shoulder and|shoulder up|side on|slow as|slow breath|slow it|slowly|small|spine|spot|standing|stay there|stuck|switch|tailbone|take a|take the|that|that how|that the|that where|the arm|the bell|the bottom|the chair|the door|the grass|the hip|the next|the opposite|them up|three|to head|to hip|to your|toe up|too far|turn|up and|up high|up on|up the|upright|waiting|walking|want the|watch|wee|what|when youre|where you|while you|width|window|with a|yank|you and|you know|you reach|you should|youll feel|your bottom|your eye|your forehead|your jaw|your rib|your waist|youre closing|youve',
      ],
      [
        -0.3,
        'a straight|again|against|an|and do|and float|arch|as|as your|at shoulder|at the|at your|away from|away with|back into|back to|back with|ball of|banana|bar|behind|behind your|bend|bit|both|bottom|bouncing|bring it|calf|come back|count|dead|do the|dont|dont go|drive|feel it|feel the|finish|fist or|foot|from it|goe|grip|half|hand flat|hand on|home|i want|imagine|it|it and|it back|it come|jaw|jump|keep your|land|leave|leg out|length|let them|no bouncing|nobody|of them|of your|off it|off your|opposite|other foot|out in|over|over your|plate|pull it|ring at|roll|shoulder down|shoulder height|shoulder pinch|sigh|sit back|soft|sort|sort of|speed|stand up|stay|stick|stop|straight back|straight up|swing|swinging|table|the band|the neck|thigh|through the|too|toward the|under hip|under you|up over|walk|wall|way to|weight|while|with it|working|wrist straight|your back|your ear|your face|your heel|your hip|your knee',
      ],
      [
        -0.4,
        'across|across the|all the|an inch|and let|bend the|breathe out|breathing|ceiling|chair|chest height|chin|come off|curl|ear|facing|feet flat|feet stacked|feet under|find|from the|hard|heel|higher|into|knee bent|knee under|lean back|like there|of|one foot|out and|out on|past|rib|should|slow|slower|stacked|take|the|the belly|the ceiling|the wall|there a|up|waist|when|you can|you pull|your nose',
      ],
      [-0.5, 'bent|feel|let it|lift your|like youre|make fist|tall|tip|youll'],
      [-0.6, 'big|flat|height|sit|there|through|till'],
      [-0.7, 'lean'],
      [-0.8, 'stand'],
      [-0.9, 'step'],
      [-1, 'knee'],
    ],
  ],
  [
    'pull',
    -0.3,
    [
      [1.1, 'the pull|you pull'],
      [0.8, 'palm|pull'],
      [0.7, 'blade|chin over|the ring'],
      [0.6, 'elbow|pull your|ring|shoulder blade|shoulder down|to your|your elbow'],
      [0.5, 'all the|curl|elbow back|elbow pinned|let it|long neck|palm facing|palm up|pinned|pocket|straight at'],
      [
        0.4,
        'again|and wide|belly button|bending|bottom rib|button|dont twist|elbow to|end in|facing|hanging|into your|it open|it to|lean back|let yourself|lower it|muscle|neck|open|palm forward|past your|pencil|pull it|pull the|put|squeeze|squeeze at|stand a|the arm|the blade|the elbow|think|top of|touche|touche your|wrist straight|you open|your eye|your pocket|your rib',
      ],
      [
        0.3,
        'a beat|a pencil|a walnut|and take|arm long|arm till|at chest|at it|at you|back past|band|bar|blade down|breathe out|chest height|chin|come in|come off|curtain|dont shrug|dont swing|down first|draw|draw your|each|each hand|either|either side|elbow brush|elbow high|elbow skim|end|exhale|feet in|half|hand as|high|high and|it apart|it touche|its coming|keep your|knot|let go|long|long arm|looking at|lower all|movement|neck long|nick|no swinging|not in|out on|palm down|past|pencil between|pull till|put the|rib|ring to|seam|shirt|shoulder and|shrug|shut|skim|snap|start to|the band|the bench|the muscle|the rib|the wrist|thumb|thumb pointing|twist|up high|walnut|way back|way down|wee|without bending|wrist|you lift|your knuckle|your side',
      ],
      [
        0.2,
        'a boat|a cup|a giraffe|a metre|a table|a tray|already|an end|anchor|and curl|and let|and lower|and see|and that|and youre|are bending|are long|are only|arm are|as slow|as wide|as your|at eye|at your|back a|back long|back pocket|back start|beat|beat at|because|because if|before|before you|bench|bend your|bending the|blade at|blade into|blade like|blade together|boat|both feet|breathe normal|bring the|brush|burn|check|check its|come to|count|cracking|cracking a|creeping|cup of|curl it|dont curl|dont drop|dont heave|dont rock|down as|drag it|draw the|drawer|ease it|elbow by|elbow down|elbow glued|elbow in|elbow soft|elbow stay|elbow up|eye level|eyebrow|facing you|far enough|feet behind|feet on|fight|finish|five second|flare|flat as|floor a|folded|for nick|for one|for three|forward from|front edge|giraffe|glued|hammer|hand come|hand finish|hand to|hang long|heave|heel dug|hinge|hold it|how ankle|hump|in each|it go|it hang|it like|it slide|it snap|it there|it toward|it under|it while|its between|jerk it|jerking|just a|just in|just reach|knuckle|leg out|live|long band|look along|looking|meant|meant to|meet|meet it|never let|no higher|not up|of a|of tea|open like|open your|out straight|over till|palm to|parallel|partner|pause|pinch on|pinching|pinned to|pointing back|pull to|pulled|pulled down|rep|rib tucked|right out|ring high|ring up|round both|round one|saw|should feel|shoulder pinch|show|showing|showing off|shut it|skim your|slow on|slower|snatching at|squeeze a|squeeze the|start|start from|starting|step away|step back|step down|step up|still pinch|stop when|straight arm|strap up|swing your|swinging|table|take hold|tea on|that just|that plenty|the armpit|the bell|the bottom|the door|the dumb|the ear|the neck|think about|think of|this one|till the|tin|tiny|to long|to meet|touch your|tray|trust|tucked in|tug|two bell|up an|up elbow|up quick|up so|up to|went|when it|wide as|with straight|work|wrapped|you at|your belly|your eyebrow|your face|your fist|your forehead|your little|your partner|your shirt|your thumb|your waist|your wrist|youre cracking|youre leaning|yourself down',
      ],
      [
        0.1,
        'a bag|a letter|a tug|about shoulder|and close|and give|ankle go|back dont|back off|back there|back till|bag of|band out|band touche|bar at|bar to|both strap|brush your|carry|chest is|crack|crate|curl them|curling|dead straight|doe|dont flare|dont hunch|dont jerk|dont stand|down for|down out|elbow and|elbow close|elbow go|elbow into|elbow just|elbow stop|every rep|everybody|eyebrow and|facing the|fence|five|for two|go to|hand about|hand apart|hand palm|heaving|hook|hunch|if i|it again|it all|it behind|it come|it float|it into|it live|it slower|its too|jerk|just past|lean on|letter|letting|letting go|like its|long again|look straight|me the|no heaving|no shrugging|of war|one and|onto the|open the|out when|pair of|pocket and|proud|rib and|rib out|right to|see it|shoulder or|shoulder sore|shoulder square|shrug it|shrugging|sing|slip off|snatching|split|square|standing up|starting a|stay in|tape|the crate|the face|the hand|the weight|then let|thumb up|till your|tin in|to feel|to straight|too heavy|top like|tug of|twist open|war|weight down|weight hanging|went up|wrap|you lean|you let|you trust|youre carrying|youre holding|youre starting',
      ],
      [
        -0.1,
        'a book|a couple|a hand|a little|a ring|above|above the|after|and lift|arm by|arm locked|as if|as low|as the|away till|back in|back knee|back of|backside|bar over|before the|behind the|behind you|bell by|below|below the|bent|big breath|big toe|bigger|blood|blow it|board|both|both knee|bouncing|breathe behind|bring your|but|calf|came|car|chair|chop|come down|cross|dip|dive|dont bounce|dont force|dont haul|dont roll|dont tip|down on|down the|down your|ease off|edge|elbow wide|everything|face away|fall|feel like|feeling|feet find|feet planted|feet together|feet under|fist off|flat|flat on|floor|floor away|follow|foot in|foot off|foot on|forearm up|four|get long|go as|go overhead|gone|grass|grow|hamstring|hand in|hand off|have to|head and|heavy|heel down|heel up|hip stay|hip width|hop up|how you|hug|i want|if the|if there|imagine|in through|isnt|it at|it goe|it isnt|itll|jaw|just above|keep hold|kiss the|knee in|knee to|kneecap|land on|lazy|lean forward|lean in|leave the|leg long|leg straight|length|lift the|like somebody|like the|limbo|line|little bend|little sip|locked|long breath|long leg|low as|lower than|make it|moving|next to|nip|no bouncing|not out|on a|on one|on them|one foot|one leg|onto your|opposite|other knee|other leg|other one|out over|out through|pace|pad|pillow|pinch at|point|pouring|press them|press your|pressure|puff|puff out|push away|push the|push up|rack|rail|roll back|roll out|sag|seat|shelf|short|should be|shoulder are|side to|sideway|sigh out|sip|sit back|sit down|sit tall|small breath|so|soft elbow|spread|squeezed|stay there|stop and|straight ahead|straight down|tail under|tailbone|ten|the air|the ankle|the chair|the chin|the floor|the foot|the forehead|the head|the heel|the hip|the kneecap|the leg|the outside|the rack|the rail|the room|the same|the seat|the turn|then push|there and|they drop|throw|till you|to a|to come|to one|to you|toe tucked|toe up|together|too|toward the|turn away|turn round|under it|under shoulder|under the|up on|upright|wait|what|where the|where your|whole foot|with it|you feel|you get|youll|your ankle|your armpit|your backside|your belt|your foot|your right|your shin|youre pouring|youre under|youve gone|youve got|zip',
      ],
      [
        -0.2,
        'a|a bit|a coat|a fist|a phone|a tent|a touch|across your|against|and back|and breathe|and get|and go|and its|and just|and no|and not|and press|and stand|and stay|and the|and turn|arch your|are just|arm hanging|arm up|around|at a|at belt|at hip|back and|back foot|back to|backward|ball|banana|behind your|between them|big|bit|bite|blade in|bounce|breastbone|breathe low|bring|bring them|catch|ceiling|cheek|chest and|chest down|chicken|circle|coat|crank it|deeper|degree|dinner|dont arch|dont let|down between|easy|elbow at|elbow bent|far|feel your|feet back|feet flat|feet off|first|fist|flop|for the|force|forward a|forward till|from it|goe up|going|hand at|hand behind|hand over|hand round|hand under|hip height|hiss|hop|hurry|if|if its|in going|in on|in one|inside of|into|is fine|it hurt|it land|it pinch|it should|it straight|joint|jug|jump|just the|keep it|knee at|last|last bit|left|leg up|lie|longer|lower them|melt|narrow|next|nose|not|nothing|of that|one long|only|only as|or|or it|other way|out to|overhead|pain|peel|phone|phone book|planted|poke your|pop|punch it|push it|pushing|quick|rib stay|ride|ring down|ripping|rolling|room|rope|round your|second|second to|shake them|sharp|shove|sit your|sky|slow breath|small step|somebody|stack|stay on|steady|step|step through|stick|stirring|stop there|tell|tent|than the|the ball|the ceiling|the chest|the edge|the front|the joint|the sky|the thigh|the wall|them down|them drop|them up|then|they|three second|through the|tired|to where|too far|turn the|turn your|up out|up over|up your|want it|want to|weight on|wet|where|width|with your|wrist stacked|you dont|you like|you turn|your breastbone|your butt|your heel|your knee|your leg|your whole',
      ],
      [
        -0.3,
        'a shoulder|across|and pull|and push|ankle|arm out|as high|be|book|breath out|breathe in|breathing|butt|come back|come out|crank|do|dont|dont crank|dont go|drive|elbow under|fast|fine|fingertip|gentle|get|go up|grip|hand on|home|if youre|if youve|in the|just|keep breathing|leave|let the|lift your|lock|loose|make|of it|off|on|on to|other|out and|out of|poke|roll them|shin|stacked|stay down|straight up|the|the nose|the other|thigh|tight|under your|up and|up the|up there|up till|wall|whole|wider|wing|your|your bum|your neck|your tail|your toe|youre a',
      ],
      [
        -0.4,
        'and|belt|both hand|breathe|dont lean|goe|high as|knee bent|land|let your|lift|little|low|off the|one|over your|press it|punch|rib down|shoulder up|side on|sit|small|straight out|tail|the back|the mat|the push|through|towel|you push|your forearm|youve',
      ],
      [
        -0.5,
        'as they|behind|breathe into|forearm|head|hip|into the|knee up|mat|on your|out like|roll|sigh|stay|tall|the knee|toe|want',
      ],
      [-0.6, 'away|foot|under'],
      [-0.7, 'breath|bum|heel|knee|leg|turn|your head'],
      [-1, 'press'],
      [-1.1, 'push'],
    ],
  ],
  [
    'push',
    -0.3,
    [
      [1.3, 'you push'],
      [1.1, 'press'],
      [1, 'press it'],
      [0.9, 'it straight|not out|overhead'],
      [0.8, 'punch|push it|the push'],
      [0.7, 'breastbone|chest to|push|pushing|straight out'],
      [0.6, 'at hip|back under|bring|bum in|dont go|elbow a|into a|it up|squeeze the|tight|till your|you press'],
      [
        0.5,
        'a fist|a shoulder|and just|and press|and push|arm locked|at a|band|dont bend|find|find a|go overhead|go up|hand in|hip height|it away|it come|lock|out like|push away|smooth|step into|touch|walk about|wrist|your breastbone',
      ],
      [
        0.4,
        'a pace|a step|a time|and jump|and shove|and your|angle|at your|bit in|both hand|bring it|bum|by your|chest|chest down|chicken|collarbone|deeper|dont drag|down till|down to|elbow go|elbow on|even|feet back|finger over|five|foot in|forward a|head through|if a|in slow|it back|knuckle|leg together|like an|lock your|on them|one at|press back|push up|pushing a|shoulder that|shove it|sideway|slant|slip|square|straight arm|straight to|strap|the window|then bring|throw it|to the|toe pointing|turn the|up past|wing|wrist stacked|your arm|your shoulder',
      ],
      [
        0.3,
        'a breath|a chicken|a hand|a slant|a wee|above it|air|and catch|and you|any|away like|back on|back to|backward|bang|bell at|bend back|between the|big one|big step|blow|breath on|breathe in|brick|bring them|brush your|catch|catch it|chest between|chest on|chin out|come back|dizzy|doesnt go|down between|down like|drift|drift out|ear|elbow|elbow are|elbow halfway|elbow point|em|end in|feel like|feet in|feet wider|finish|finish with|first and|fist|flat on|folding|follow your|get it|go till|going|going up|ground away|hammock|hand down|hand straight|head stay|heel of|height|it goe|it hurt|it slip|jump|just hold|kiss|kitchen|land soft|lead|lean forward|leave|leave the|leg throw|let em|like its|lock out|locked|look a|lower your|make fist|metre in|middle|middle of|move|nearly|never|never let|not at|of one|of your|off your|one in|one long|other foot|out at|out sideway|over elbow|over your|pace|piece|plank|point behind|press straight|press up|punch it|punch the|push down|push your|put your|quick up|ramp|rib down|rib stay|right angle|ring|ring out|ring stay|sag when|save|shelf|should feel|shoulder are|shove|sink into|snappy|so|so the|so you|squeeze your|stay level|step out|straight up|that back|that knee|the air|the bar|the ear|the edge|the elbow|the gap|the kneeling|the pad|the ring|the shoulder|then come|then press|then push|then you|thumb out|to a|to hear|up in|up there|up till|upper|want the|want to|wider than|wont|wood|wrist over|wrist straight|you back|you dont|you lock|you punch|your collarbone|your ear|your foot|your nose|your palm|your watch|yourself',
      ],
      [
        0.2,
        'a bow|a car|a lift|a little|a metre|a post|a right|a small|a towel|a wrist|about forty|ahead of|an angle|an arrow|and back|and breathe|and finish|and get|and hop|and march|and sink|and turn|are at|are level|are long|are nearly|are sore|arm bend|arm flat|arm goe|arm length|arm level|arm touch|arrow|as deep|at an|back a|back for|back in|back still|back up|bad|bad shoulder|band at|band goe|band round|bar|bar over|bar to|behind it|belly sag|bench|bend in|bent back|bicep|bigger|bit forward|blade stay|blow as|blow out|body in|book on|both hip|bottom of|bounce them|brake|breath at|breath in|breathing while|brush|bum stay|call|call it|check that|cheek of|chest goe|chin and|close to|collapse|come away|come straight|count of|deep as|desk|dip|dont bang|dont lean|dont lift|dont press|dont stop|dont want|dragging|drive it|drop your|dumb|dumb bell|each other|elbow brush|elbow dont|elbow out|em up|everybody|eye under|face forward|facing in|feet as|feet come|feet find|feet wide|finished|fist by|fist off|fist or|flaring|fold|forty|forty five|forward at|from you|gap|go back|go over|go so|goe to|going down|going out|got a|grip|halfway|hand a|hand at|hand back|hand flat|hand into|hand it|hand just|hard|hard but|hip under|hold a|hold them|holding a|hop|hum|hurt in|i dont|if they|in down|in on|it a|it even|it get|it hit|it leave|it off|its on|jump up|just off|keep the|knee follow|knee not|kneeling|last bit|leading|leave them|let off|level like|lie|lie down|lift them|limbo|little in|little sip|long neck|long on|long plank|lower till|mate|nearly straight|next to|no deeper|nose to|not bent|of pushing|of that|one and|one piece|onto one|other one|out straight|out there|out up|out when|pace you|palm forward|palm to|percent|planted|plate|plate on|point back|pointing forward|poking|press them|press till|push yourself|pushed|putting|rib in|right under|ring a|ring brush|ring down|roll on|rolled|screw|second to|shoot|short step|sink between|sip of|sky|slide out|slip off|slow and|slow down|small breath|so your|soft feet|spin|spread your|stand side|stay close|stay long|stay off|step off|sticking|stomping|stop dead|stop there|straight|straight back|strap off|stuck|swap the|take three|taller|than your|the brake|the brick|the ceiling|the cheek|the chin|the desk|the door|the down|the joint|the paint|the plate|the pocket|the pole|the shove|the sky|the strap|the thumb|the time|the trailing|the upper|the wood|their|them at|them back|them in|them kiss|them on|then drive|they go|theyre not|thigh to|tiptoe|tired|to let|to put|to turn|to you|toe pulled|top shelf|touch and|touch the|trailing|trailing foot|tray of|turn you|two count|under it|until your|up and|up top|upper arm|way to|where your|which|wide as|wider|wobbly|wrist are|you jump|you not|your face|your forearm|your hand|your head|your wrist|youre putting|youre up',
      ],
      [
        0.1,
        'a bad|a good|a hair|a hen|a metronome|a newspaper|a rolled|a touch|a wardrobe|and in|back together|band under|barking|be leaning|before it|before your|bell by|belly tight|beside your|bit lower|bite|blow it|bum like|button up|car|cause if|chest a|chest and|closing a|come home|come off|control|count down|dont cross|dont lead|down first|drawing a|each armpit|each step|ear and|elbow about|elbow and|elbow at|elbow straight|engine|feet dont|feet down|feet into|feet planted|feet shoulder|fill|find the|finger and|finish it|five degree|five second|flared|flat at|forward like|get stuck|get you|getting|goe first|goe up|good tug|grumble|had it|hand by|hand off|hand that|hand width|hang on|heel out|height of|hen|hop up|if youve|in by|ironing board|it past|it there|it want|just kiss|knee at|kneeling side|lock it|lower them|lower yourself|meet|metronome|newspaper|no bigger|no sagging|not straight|of breath|on top|one shoulder|operated on|out from|out of|paint|pass|pass your|phone|pick it|poking out|post|press down|push on|reach like|ready|rib dont|rib tucked|ring are|same side|screw your|sea|shoulder cranky|shoulder dont|shoulder knuckle|sideway to|slower coming|speed you|square to|stacked over|stand and|stand between|start at|start in|stick out|support|t|the bad|the band|the breastbone|the engine|the height|the straight|then back|this one|tight to|to face|to finish|to it|to look|to run|to twist|toe are|tweak|twist you|twisting|two down|ugly|up a|up onto|wardrobe|way you|weight on|width and|window|wrist or|wrist stay|you came|your elbow|your new|your toe|youre stuck|youre tired|yourself away|youve a|youve had',
      ],
      [
        -0.1,
        'a bus|a pull|a straight|a tightrope|a walnut|able|able to|about your|after it|against the|along the|and all|and close|and dont|and draw|and float|and lazy|and lift|and lower|and not|and throw|and walk|and wide|arm long|arm nearly|as long|as the|at it|at shoulder|back as|back hip|back knee|back of|back off|back slow|back start|back till|ball of|be able|beat|before the|being|belly button|big|blade down|bob|bone at|both knee|bottom doesnt|breathe however|breathe low|breathe normal|breathe normally|brisk|build|button|calf|cave in|check|chest stay|chin stay|click and|come forward|come to|cramp|crossed|curl your|curtain|dangle|dinner|dive in|done|dont crank|dont force|dont haul|dont hunch|dont jump|dont look|dont yank|down for|drag your|drive the|drop it|drop off|ease it|easy breathing|elbow glued|elbow high|elbow skim|elbow soft|every one|exhale up|fall in|feel it|feel the|feet forward|feet under|few|fight|fine|finger tingle|fingertip|fling|follow the|foot back|foot up|for a|for the|force|force it|get the|glued|go round|gone too|got|have a|head height|heel in|heel stay|heel to|heel up|high and|hike|hip and|hip drop|hip level|hold of|honey|hunch|if its|ill|im|in toward|in under|inch off|into your|is|it between|it dip|it flop|it land|it still|it till|it under|its not|its only|just your|knee a|knee and|knee dont|knee to|knee together|landing|late|lean in|lean your|leg away|leg flat|leg goe|line from|line with|little step|lock that|mean|melt|middle toe|mind|my|near|nice|nine|normally|not a|not your|of ten|of them|on both|one come|one heel|one on|onto your|open the|opposite arm|other knee|out long|over to|people|piano|picture|pillow|pinned to|please|plenty|point at|poke|puff out|put the|quick hand|quick step|quiet|quiet feet|relaxed|reset|ring high|roll out|roll your|rope|second on|send the|shake|short|short breath|shoulder and|shoulder sore|show me|sing|sitting|slope|slow breath|slowly|small step|snap it|so its|soft knee|sort|sort of|split|spot|squash|squeeze it|squeeze like|stand up|start from|stay facing|straight as|strap up|swing the|swing your|switch on|tail|taking|talk|tap the|tape|than a|that elbow|that leg|the ankle|the breath|the calf|the chair|the first|the forearm|the forehead|the head|the knee|the leg|the opposite|the out|the rail|the right|the roof|the room|the standing|the step|the table|the thigh|the tree|the turn|the upright|the whole|them straight|then turn|there for|they come|thumb up|tightrope|till youre|tiny|tip over|to shoulder|to side|toe point|toe up|too far|touch your|tree|turn round|twice|twist|up high|up with|wait|walk back|walk the|walnut|washing|wet|what|where it|whole|whole foot|whole time|with straight|yank it|you are|you at|you open|you put|you think|youd|your ankle|your belt|your eyebrow|your right|your spine|youre cracking|zip',
      ],
      [
        -0.2,
        'a boat|a cat|a hot|a pencil|a table|a window|a yard|across the|an inch|and i|and it|and keep|and let|and sit|and slide|and stand|and straighten|and then|and up|are bending|arm dont|arm straight|as high|as if|as your|away and|back|back foot|back heel|back stay|back until|back with|bag|be|before you|belly|belt|big toe|blade like|blood|blood pressure|boat|bottom|breathe dont|breathe like|bus|but|carrying|carrying a|cat|cheating|check its|chest away|chest open|chest up|chin down|clear|come|come over|coming up|cracking|cracking a|crank|crease|cup|cut|dont|dont heave|dont lock|dont move|dont rock|dont roll|dont rush|dont shove|dont throw|dont tip|dont twist|down a|down as|down behind|down slow|down your|draw your|drifting|drop the|dropping|each hand|edge of|elbow bent|elbow in|elbow to|end of|exhale|face the|facing front|facing you|far as|fast|feel|feet apart|feet on|feet stacked|fire|flat like|foot on|for three|forearm up|forward and|four|front heel|front knee|full|gently|get your|go with|grab|half|hand behind|hand out|hand shoulder|haul|have to|head down|heave|heavy|heel and|heel dug|high as|higher than|hip|hip in|hold it|hold your|hook|i mean|if there|if your|in as|in through|into it|it across|it apart|it click|it close|it from|it in|it ping|it settle|its|its coming|jog|knee over|knee stay|knee under|knee wide|kneel|last|leg long|leg up|let yourself|lift the|lifting|light on|little toe|long as|long breath|look|look up|looking|looking at|loose|loud|lower all|making|muscle|need|need to|no further|no higher|no more|not in|not just|not locked|one dumb|one hand|one side|onto|onto the|open your|opening|out a|out coming|out to|over|pain|palm down|park|peel|pencil|pencil between|pop|pressure|pretend|puff|pull the|pulling|push off|put|quietly|right|right out|rocking|roof|room|say|send|sharp|should be|shoulder down|shoulder up|show|side|sit straight|sit up|slack|slide|slide down|slide up|slide your|slow|slow as|slower|slower than|small|so if|so it|soft|sole|some|some of|something that|spine|squeeze at|stance|stand|standing|start|stay up|step|step back|step through|stick your|stiff|straight at|straight leg|straight line|strap in|stroke|switch|tap|ten|that deep|that how|that where|that you|the armpit|the belly|the board|the fire|the handle|the heel|the line|the nose|the outside|the rope|there a|there and|they dont|thigh|thin|throw your|thumb pointing|thumb to|till it|to about|top and|touche|touche your|track|tuck|turn away|under shoulder|until youre|up|up by|up like|up on|up slow|wall behind|water|way down|weight at|weight in|well|where|who|will|wind|without|wrist flat|yank|yard|yard in|you come|you have|you like|you rise|you stand|your belly|your body|your finger|your front|your heel|your knee|your low|your shoe|your side|your tailbone|your tummy|youre carrying',
      ],
      [
        -0.3,
        'a long|across|against|all|along|and|and if|arm up|as far|behind the|bone|breath|breath out|cave|chair|chin|chin over|circle|doe|dont push|dont swing|down the|ease|elbow pinned|feet a|flat|floor away|foot|further|gate|get a|hamstring|hang|head and|hinge|hip back|hold|how|in both|it|it all|it go|it open|jaw|keep breathing|keep it|knee in|lace|lazy|lean|leg straight|lift your|like the|line|little puff|loop|lot|low back|moving|no swinging|one leg|opposite|other hand|over the|palm|ping|press the|press your|put it|rise|round|shin|shoe|shoulder height|shut|sigh|sit back|stand tall|stay|stay on|stick|stretch|string|table|tailbone|take it|than you|the foot|the pull|the rib|the same|the toe|the waist|through|tingle|tip|to feel|to your|tuck your|underneath|up off|up the|up through|upright|waist|walk|way up|weight|wide|with it|you lift|you stop|your|your back|your chin|your hip|youre|youre not',
      ],
      [
        -0.4,
        'a tent|and down|apart|behind your|blade|both feet|breathe|breathe into|click|curl|down out|elbow under|eye on|float|forearm on|hanging|have|higher|hip up|let the|lift|light|look at|nobody|out in|palm up|pull your|rock|roll|rush|swinging|take|take the|tall|tent|that|the|the wrist|toward|toward your|you want|your cheek|your rib',
      ],
      [
        -0.5,
        'again|as a|between your|come up|down and|drop|every|far|for|leg|long|sit|straighten|swing|the hip|toe|too|you pull',
      ],
      [-0.6, 'ankle|breathing|draw|easy|elbow stay|more|the back'],
      [-0.7, 'arm out|knee'],
      [-0.8, 'heel|high'],
      [-0.9, 'open'],
      [-1.1, 'pull'],
    ],
  ],
  [
    'row-machine',
    -0.2,
    [
      [1.1, 'stroke'],
      [0.9, 'body|handle|the handle'],
      [0.7, 'the seat'],
      [0.6, 'leg flat|strap'],
      [0.5, 'from the|seat|still'],
      [0.4, 'front and|hand away|length|oclock|sit there|slide|the body|whatever|yourself up'],
      [
        0.3,
        'and dont|and its|coming|dont jump|dont pop|further|jump|jump up|moving|nothing|one breath|rock|room|should be|sort|sort of|the arm|the slide|up before|you push|youll',
      ],
      [
        0.2,
        'a canoe|a disc|across to|across your|after it|all in|and all|and away|and itll|and wide|as low|as slow|as the|back the|before the|belly button|bit bent|breath in|breathe at|breathe normally|canoe|chicken|chicken wing|coming back|crack|curling|doe|down until|early|em on|em out|fast|feel like|feet in|first|flat and|front half|full|go right|had a|half|half of|hand get|it by|it dip|it on|itll|last inch|leg stay|less|lift off|load|long arm|low as|middle of|need a|nobody need|nose and|one hip|one out|only your|osteoporosis|pop up|pull yourself|push that|rest|right round|same speed|second and|short|shoulder are|shoving a|sing|sit on|sit up|slow coming|somewhere|spine|starting|stay a|straight and|strap in|sweep|the drive|the finish|the length|the push|the rib|the room|the weight|then you|theyve|thing in|think of|told you|touche|twice|twice as|unhurried|up first|up when|with a|wrist flat|you back|you curl|you dip|you lean|youll get|your eye|your shirt|youre in|yourself|youve had',
      ],
      [
        0.1,
        'a breath|a second|a slow|a wall|able|able to|alway|anywhere|are by|arm dont|back goe|be able|big sigh|bite|butter|check your|chin level|coming in|complain|disc|dont just|draw the|drop them|elbow brush|end of|fly|follow the|from a|further than|get the|goe round|harder|heel are|heel come|it across|it as|its that|joint|lap|leg down|lightly|moved|no further|no rushing|normally|number|other side|other way|paint|pop|round at|row|rush|rushing|sat tall|send it|settle|sharp breath|shin no|shin upright|shirt|shoot|shoving|sneak|so if|start from|start in|take a|that doe|the catch|the corner|the rest|the strap|then go|told|touche your|vertical|wall behind|watch the|way out|way round|when it|when youre|whole time|would|youll go|your fist|your lap|your spine|youre done|youre hanging|youre looking|youre tired',
      ],
      [
        -0.1,
        'a bit|a hand|a touch|above|against|ahead|air|all|all the|along|an|and back|and come|and down|and if|and lift|and lower|and not|and push|and sit|and your|ankle|arch|are|arm are|arm by|arm long|arm out|armpit|as|as they|as you|as your|away|back foot|back knee|back on|back pocket|back up|backside|ball of|because|behind the|behind you|behind your|belly|below|belt|bend|bend your|bent|between the|big toe|board|both feet|bottom|bounce|bouncing|box|breath out|breathe into|bring it|bring the|bring your|but|butt|by|by your|calf|cheek|chest up|come back|do it|doesnt|doing|done|dont|dont arch|dont bounce|dont drop|dont hold|dont roll|dont tip|down as|down like|down on|down the|drag|drop the|dumb|dumb bell|each hand|ease|edge|elbow under|end|even|exhale|eye|facing|far|far as|feet hip|find|five|flat on|float|floor away|fold|foot on|forehead|forward|four|front heel|front knee|go|going down|good|grab|ground|grow|hamstring|hand|hand under|hard|heel and|heel down|heel up|higher than|hold|hold the|hold your|holding|how|i|if|if it|if its|if the|if there|in|in each|inside|into it|into your|isnt|it a|it all|it come|it go|it hurt|its your|just|keep breathing|knee and|knee soft|knee to|knee up|kneecap|leg long|leg out|let the|let your|level with|lie|lift the|like there|little|lock|loop|lower it|move|near|nearly|next|no|no bouncing|no higher|not a|of|of a|of it|of the|of your|off|off the|on it|on to|one|one foot|one knee|one leg|only as|opposite|other|other foot|other leg|out as|out at|out like|over|peel|pick|plenty|point|pointing|press the|pressure|puff|pull|pull it|pull the|pull your|push off|push the|push through|push your|put|quick|reach|rib down|right|ring at|rise|roll|roll out|round the|sag|second|set|shin|shoe|shoulder down|shove|side of|side on|sideway|sit back|sit down|slow|slower than|slowly|soft knee|squeeze|squeeze the|stacked|stand on|stay|stay on|step back|stick|stop|stop and|straight down|swap|tail|take your|tall|than|than you|than your|that|that how|that your|the|the ball|the band|the big|the bottom|the chest|the edge|the feet|the front|the ground|the inside|the kneecap|the outside|the rail|the toe|them down|them up|then let|there|there a|they|theyre|three second|through your|till it|till youre|to come|to get|too far|toward the|towel|tuck your|tummy|turn your|under you|until the|up at|up on|up there|waist|walk your|wall|way|wee|weight|wet|what|whole|whole foot|wide|wider than|with it|without|wrist|yank|you|you feel|you get|you know|you like|you pull|you stand|youll feel|your arm|your back|your breath|your ear|your feet|your finger|your leg|your neck|your shin|your tail|your wrist|youre|youre a',
      ],
      [
        -0.2,
        'a|about|again|and|and bring|and let|and stand|apart|arm straight|as a|as far|as high|as if|as it|at|at the|at your|away from|back|back down|back of|back to|ball|band|bar|before you|behind|bell|between|between your|bit|blade|blow|blow out|both|breathe|breathe out|breathing|bring|bum|can|ceiling|chair|chin|close|come|come up|count|dont let|door|down to|drop|each|ear|elbow|enough|every|eye on|face|feel|feel it|feel the|feet|feet under|finger|floor|foot|for|forearm|from your|front|front of|going|hang|head|heavy|heel|height|high|high as|higher|hip|hip width|home|if your|in as|in front|into the|is|it|it down|it in|it out|it up|its a|keep|keep your|knee|knee bent|know|land|lean|leave|left|let|let go|let them|lift|lift your|like|like a|like youre|line|long|look|look at|make|mat|me|more|neck|not|of you|on|on the|on your|one hand|only|onto|open|out|out in|out to|outside|over your|palm|pinch|pocket|press|push|quiet|rail|ring|see|shoulder blade|side|sink|small|soft|somebody|sore|stand tall|stand up|standing|steady|straight|the back|the bar|the ceiling|the chair|the elbow|the floor|the foot|the heel|the knee|the mat|the ring|the shoulder|the side|the thigh|the wall|the way|them|thigh|this|three|through the|thumb|till|till your|to|to the|together|top|top of|touch|tuck|tucked|turn|two|under|under the|under your|up|up and|up to|walk|want to|way down|way up|where|wider|width|with|with the|with your|you can|you come|your|your belly|your bum|your chest|your chin|your elbow|your head|your knee|your side|your thigh|your toe',
      ],
      [
        -0.3,
        'chest|down|hand on|into|let it|lower|shoulder|stand|step|the top|through|to your|toe|your hip|your shoulder',
      ],
    ],
  ],
  [
    'run',
    -0.4,
    [
      [1.1, 'run'],
      [0.9, 'push off'],
      [0.8, 'short'],
      [0.7, 'hard|knee up|land|step'],
      [0.6, 'brake|cross|dont reach|drive|land on|light|loose|quick|rhythm'],
      [
        0.5,
        'before the|bob|build|but|cold|cone|dont do|first|foot and|foot down|hot|in front|landing|last|march|reach with|somebody|stay low|stop dead|the ankle|the bend|the line|under you|up under|your feet',
      ],
      [
        0.4,
        'a hamstring|as if|back straight|ball of|belt|chest over|cross behind|da|da dum|down under|drive the|dum|easy|elbow back|fast|flick|hamstring|hang|hang there|hold a|jaw|lean|line|little step|longer than|looking at|low|machine|metre|over a|pocket|puff|relaxed|short step|skip|speed|the far|the foot|the heel|these|travel|your shin',
      ],
      [
        0.3,
        'a low|all of|and easy|and punch|and the|ankle|as well|back like|belt and|belt height|breath before|build up|can|cross in|cross it|dead|deer|dont sit|dont stop|down in|early|elbow bent|eye on|few|few step|foot to|from the|front with|got|grass|ground|hand out|heel right|heel up|hip back|hip that|hop|how|in it|it from|jog|keep walking|kick|knee doesnt|knee to|lap|lean from|leg and|longer|looking|mouth|off one|out in|own|point at|pole|puddle|punch|reach|reach out|run tall|shin|shin are|should|should feel|smooth|so dont|soft on|stepping|stride|string out|that turn|that where|the air|the ball|the belt|the cone|the first|the ground|the last|the next|the straight|the track|then let|there no|these cold|they are|tiptoe|toe up|touch the|track|trailing foot|turn it|up on|walk|where they|you can|you land|your tiptoe|your whole',
      ],
      [
        0.2,
        'a crisp|a deer|a hot|a sewing|a shoe|and float|and hang|and quiet|and roll|and skip|and slide|and step|arm swing|at me|at them|back pocket|being|bent like|big breath|break it|carrying|click|could|crisp|crisp in|dancing|doesnt have|dont cross|dont fold|dont like|dont slam|drive your|drop down|each step|elbow in|every|everything|face|fast as|find|flat out|floor and|floppy|foot come|forward and|go and|going straight|hand loose|hang in|hard but|hardly|have to|head to|hip drop|hip height|in from|into it|is a|is plenty|it a|it behind|it come|it run|its like|jaw loose|just hang|keep them|knee come|knee point|land under|lane|leaning back|leg nearly|length|lift them|light on|line and|look like|me|missed|missed the|nine|no further|nowhere|one more|other knee|out behind|out of|out the|plenty|pretend the|pretty|pump|pump the|pushing|quicker|relax|relax your|right up|running|sand|sewing|sewing machine|shoe|shoulder are|shoulder stay|sit in|slam|slapping|small step|snap the|start with|stay on|step no|straight leg|tall hip|tell somebody|than the|that get|the belly|the lane|the mouth|the nose|the one|the rhythm|the turn|the waist|the wrist|third|three step|through it|to ankle|to be|to make|to start|to tell|to turn|trailing|turn the|underneath|underneath you|up round|very|waist|walk about|walking|watch|water|whoever|whole way|with it|work|you about|you could|you dont|you drop|you look|you skip|your achilles|your own|your you|youre carrying|youre going|youre running',
      ],
      [
        0.1,
        'a knee|about your|achilles|and march|and there|arm drive|as close|at belt|away behind|away from|back leg|ball|bare|big arm|bottle|bouncy|breathe however|breathe with|brush the|by a|ceiling and|cheat it|chip|clenching|do a|do them|dont bob|dont lean|dont stare|dragged|enough to|facing the|faster|feel that|feet are|feet land|feet wide|fold at|for the|from a|front like|go round|go wide|got the|ground away|hamstring grab|hand at|hear|hill|however|if a|if somebody|it off|its about|keep moving|leading|leading leg|lean back|let your|like the|listen|listen for|little forward|long and|look down|low and|manage|mud|nine out|no wider|not up|of ten|opposite arm|or so|percent|pointing at|potato|pull them|quick as|roll to|shake|shaking|shin or|short and|short breath|shorten|shoulder heavy|shouldnt|slap|slippy|slow enough|slow is|stamping|stare|stare at|step in|step into|step on|swap your|tell|ten|than a|thatll|the hill|the pocket|the work|the wrong|then step|this is|throw the|to cheat|toe are|up an|use your|wrong|you never|your hair|youre being|youve got',
      ],
      [
        -0.1,
        'a fist|above the|almost|and a|and if|and jump|and lift|ankle over|arm up|armpit|as high|as low|as they|as wide|as you|back down|back heel|back of|back on|back the|back up|backside|barking|been|bell in|below the|bend the|between the|big toe|bit|bite|board|both hand|breath while|breathing|car|cave|chair|close|cramp|curl|degree|do the|dont hold|dont swing|down for|draw it|drawer|drop the|ear|elbow|elbow straight|feet a|find a|flat on|floor away|get there|go down|go up|going up|good|hand behind|hand by|hip level|if that|in line|in on|in one|in to|in your|inch off|inside|inside of|into your|it back|it doesnt|just the|keep hold|knee a|knee are|knee down|knee go|knee just|knee straight|knee together|knuckle|lead|lean on|level with|lie|like somebody|line with|little breath|locked|long breath|long neck|looking over|lower it|next one|nip|on that|onto your|operated|other hand|out long|out to|out when|paddle|past|past your|poke|press the|pulling|push up|push your|put them|rib down|rise|sagging|send|shirt|short quick|shoulder blade|sink into|sip|sit back|sit down|slower than|something|sore|squeeze the|stacked|step out|stop and|straight line|straight out|strap|swing the|take|take the|tall as|tall like|than you|the band|the bell|the box|the door|the length|the neck|the rack|the rib|the right|the room|the side|the weight|they|three second|till your|tip from|to come|toward the|towel|tuck|tucked|under shoulder|until the|up a|up by|up through|walk tall|walk your|want it|way up|where it|wide as|your elbow|your eye|your neck|your pocket|your tummy|your wrist|youre after',
      ],
      [
        -0.2,
        'a bus|a pencil|a phone|a tray|against|against the|all the|along the|an|and bring|and let|and lower|and stand|and walk|and your|arch|arm by|arm straight|arm to|around|as the|back till|bag|band|bang|barely|because|below|bench|blood|book|both feet|bowl|box|breastbone|breathe out|bring the|by your|catch|change|chin|circle|clap|clock|dont be|dont drop|dont roll|dont shrug|dont stamp|down to|down your|drop|dumb|dumb bell|each hand|easy pace|elbow under|every time|feel it|feet back|feet in|feet on|feet together|finger|fingertip|forehead|from it|front heel|get a|going down|gone|grow|hand and|hand in|hand under|hanging|head|head up|heel and|heel down|heel stay|high|hip width|hold the|holding|home|if it|if itll|if its|in as|inch of|into the|isnt a|it goe|it up|itll go|just above|just off|keep breathing|keep your|knee bent|knee nearly|leg long|leg up|lift the|lift your|lock|lock the|look straight|low as|low back|middle of|move|near|nice and|no bouncing|normal|now|on each|on it|one in|only as|onto|opposite hand|out and|palm|pedal|pencil|phone|pillow|pinch|please|pull|pull your|put it|put your|quit|rack|ring at|rock|roll|roll out|room|sag|see|shelf|shoulder|shrug|side of|side to|slow breath|slower|small and|squash|squeeze your|stamp|stand up|stay down|step up|still|stop|straight|straighten|stretch|table|that all|that knee|the bar|the bench|the ceiling|the chest|the clock|the edge|the elbow|the feet|the handle|the seat|the step|the top|theyre|throw your|thumb|till it|till youre|time|tip forward|to one|to where|too|top|tuck your|tummy|turn round|turn your|two|under hip|under the|under your|up the|up with|upright|walk to|wall and|way down|weight|while you|wrist|yet|you go|you stand|you think|your breastbone|your breath|your butt|your chin|your ear|your head|your left|your leg|your low|your nose|your rib|your side|your tail',
      ],
      [
        -0.3,
        'a bit|a hand|a little|a scarecrow|above|across the|and back|as|away|back knee|between|between your|bone|bottom|bouncing|breathe into|bring|chest|down and|edge|eye up|feet flat|feet hip|feet under|forearm|goe|grip|half|heavy|high as|higher|higher than|hold your|in through|into|isnt|itll|its the|lazy|let go|let it|let them|level|neck|of air|of it|one|one hand|one knee|one side|other|other foot|over|over your|rail|scarecrow|seat|set|sigh|sink|sit up|slow as|standing|swing|swing your|tail|the chair|the hand|the mat|the ring|the same|the wall|then the|through your|tight|tip|toward|tray|want|want to|way|width|with your|your arm|your bum|your chest|your knee|your thigh|youre a',
      ],
      [
        -0.4,
        'an inch|apart|as a|back|bar|bounce|door|draw|handle|heel|hold|in|leg|long|mat|out|out as|out on|ring|round|sit|that|the bottom|till|together|until|up at|wall',
      ],
      [
        -0.5,
        'bell|down|hand|it down|just|let|lift|lower|press|rib|squeeze|steady|the way|toe|your back|your hand|your shoulder',
      ],
      [-0.6, 'both|flat|hand on|inch|side'],
      [-0.7, 'put'],
      [-0.8, 'dont let'],
    ],
  ],
  [
    'seated',
    -0.2,
    [
      [1.2, 'leg out|seat|sit up'],
      [1.1, 'sit|sit on|the chair|the seat'],
      [1, 'sit tall'],
      [0.9, 'feet wide|lean back'],
      [0.8, 'chair|forward from'],
      [0.7, 'edge|feet flat|heel in|it with|now|pulled up|sat|toe pulled|tucked in|way out|your knee|your lap'],
      [
        0.6,
        'arm flat|beside you|down as|elbow a|flop|hand come|heel of|hip with|if you|it along|knee just|lap|nose over|straight out|stroke|the front|then sit|tin|your blood|your time',
      ],
      [
        0.5,
        'a count|about half|and close|and look|and stretch|back past|by your|catch|chest open|easy|elbow on|elbow tucked|even|hand back|inside of|knock|lean forward|lift one|lower them|nose|nothing|over it|plonk|pointing|pressure|pull on|shoulder away|sigh|slide|slide your|so youre|stretch it|string|the handle|the push|the towel|touching|towel|we|you should|your shin|youre not',
      ],
      [
        0.4,
        'a beach|a little|all the|and tip|and up|any|as they|back along|back till|back under|bag|band behind|beside|bit in|blood|body|both cheek|call|chest proud|chin level|cramp|cross|disc|dont flop|dont hang|dont plonk|dont poke|dont pull|dont slump|end in|eyebrow|feel that|flat|flat by|folk|for four|gentle|got|grow|hand down|hand get|heel on|hip and|if its|in your|it be|it over|just till|leg go|long by|no plonking|not just|one hand|open like|opening a|other hand|out the|pedal|pin|pinch|pinch on|plonking|poke your|press up|pressure up|quit|rib and|right ear|right hand|see|see a|see the|shake it|should feel|skip it|slow on|slump|so you|squeeze it|straighten|switch on|table|that plenty|the clock|the corner|the ear|the edge|the finger|the palm|the plate|the table|the wee|then the|there is|tip forward|tucked back|under the|under you|up your|while|with a|you feel|you pull|you squeeze|you stop|your pocket|your shoe|youre shrugging',
      ],
      [
        0.3,
        'a bowl|a sharp|a small|a tray|about pushing|above the|against|against the|along|and heel|and its|and press|and pull|and stand|and straighten|and take|and tell|are long|arm crossed|around your|as if|at all|away again|bag of|band in|band under|beach|bend your|blade down|blood pressure|blow|blow as|bottom to|can see|cant|chest at|chin out|clock|collar|count|count down|creep|crossed|cushion|direction|dont hold|dont move|dont roll|down and|down at|down the|down until|draw|dropping|each other|elbow back|em|em up|ever|exhale|feel|feel a|feet tucked|fill up|fold in|for it|forward again|forward till|from the|from you|front and|front edge|front half|get your|go half|go without|goe out|got a|grind|half|half of|hand as|hand behind|hand in|handle|height and|help|high up|hike|if youve|in each|it high|joint|keep one|kiss|knee over|knee point|kneecap slide|knock together|last|lean your|leg down|leg flat|let off|long sigh|long way|look for|middle of|minute|move|mud|mud off|muscle|new|nip at|no hurry|nose out|not to|off a|off straight|old|one and|only as|opening|operated leg|or its|out long|out on|out straight|pain|pick a|pillow between|planted|pocket and|pointing at|poke|poking|poking forward|press them|press through|proud|puff your|pulled|purple|pushing|reach down|rest|ride|ride up|roll out|rolled|round|round the|round with|row|saddle|sat tall|scoop|seat and|second up|see your|shin|should|shoulder catch|shoulder creep|shuffle|sigh it|sit bone|skim|slow down|sort|sort of|splay|start from|start over|starting|stay facing|still a|stop at|stop just|straight at|straight back|tall|the arm|the bag|the body|the drive|the foot|the last|the muscle|the pin|the side|the slide|them up|then float|then reach|they|they drop|thin|think about|this time|three to|throwing|till the|till there|till your|tin in|to hear|to help|toe to|toe up|together at|tray|try|tucked|tummy switch|turn a|up by|up like|wall so|want to|when your|where the|where they|where you|wherever|while youre|whole time|wind|with it|with no|you put|you till|you turn|your bone|your breastbone|your breath|your calf|your collar|your nose|your shirt|your top|youre opening|youre up|youve got',
      ],
      [
        0.2,
        'a bag|a boat|a hip|a lighthouse|a long|a low|a mower|a nerve|a new|a sack|a saucer|a sewing|a speed|a wardrobe|above|across your|along your|an ankle|an egg|and call|and dont|and in|and itll|and just|and roll|and see|and send|and shake|and that|ankle over|anyone|apart with|arch up|are by|are flopping|are sore|are thin|arm long|arm of|arm straight|as high|as youd|back go|back to|back until|backrest|backward|backward to|bad|bad shoulder|ball|be|been out|before the|belly of|bench|bend in|bend it|bent a|big and|bit apart|block|bone|bone are|boss|bottom near|bowing|bowing to|bread|breastbone|breathe easy|breathe normal|breathe normally|breathe up|breathing while|bring them|bum and|burning|bus|calf hot|can stay|chair against|chair in|check your|chin stay|close it|collar bone|come forward|come from|come over|come straight|come to|coming back|completely|cooling|corner|count up|cup|dig|dodgy|dont cave|dont curl|dont jerk|dont lock|dont puff|door and|down low|down straight|down to|down toward|drag your|drop when|drop your|each armpit|ear|early|ease off|egg on|elbow and|elbow dont|elbow soft|em out|empty|end of|enough that|even on|every turn|exhale on|eye go|facing|facing front|fall|faster|feel for|feel your|feeling|feet planted|fill|finger over|five|flat under|flip|floor down|foot flat|for nick|for six|forward at|forward over|forward to|from each|front|garden|get hurt|get to|giddy|glass|glaucoma|go completely|go out|go over|go round|go soft|going out|grow out|grow up|hamstring cramp|hand away|hand on|hand resting|hard as|have|head hang|head last|headed|heel are|heel back|heel tucked|heel under|high as|hip so|hip till|holding your|hollow|hum|hurry|i want|ice|if a|in both|in for|in through|inch off|inner|it across|it around|it dip|it forward|it go|it leave|it light|it nip|it round|it while|its like|its on|its own|its snug|its the|its there|jar|jerk it|just breathe|just lift|keep talking|keep you|knee are|knee sag|kneel on|knocking|knuckle to|lazy|leave these|leg stay|leg still|length|less|let that|letting|lifting|light hand|lighthouse|little bit|load|lock your|long and|long in|look it|look where|low down|lower yourself|middle|mile|milk|move your|mower|muscle above|need a|nerve|no half|no rocking|normally|nose is|not in|oclock|of straight|of you|off if|off you|on and|on each|on with|one a|one count|one dumb|one hip|one of|one side|one two|operated|or you|osteoporosis|other arm|out when|out with|over elbow|over for|pad|paint|palm facing|palm in|palm to|parade|park it|picture a|pop it|pull yourself|punch|punch it|punch straight|push down|push them|quieter|reach back|reach your|rear|resting|rib stay|ring about|rocking|roll forward|rolled towel|round both|sat on|saucer|scoot|scrape|second and|second toe|seven|sharp pain|shin and|shin no|shoe|shuffle forward|sigh out|sinking|sit right|skim the|skim your|slower|slower coming|snap your|so far|sore wrist|split|square to|squeezing|started|stay down|stay long|stay till|stay where|still|stop there|straighten one|string pulling|sweep|switch|take your|talk|taller|tap the|than up|that move|that what|the armpit|the backrest|the bad|the block|the boss|the carpet|the frame|the good|the knot|the length|the neck|the one|the out|the pelvis|the right|the time|the tin|the wood|them back|them drop|there an|they come|theyve|thigh first|thigh stay|three|through at|through your|time|time on|time you|tingling|tingling in|tip|tip backward|to arch|to level|to one|to toe|toe and|together and|told|top of|top rib|top shelf|touch the|towel under|tss|turn and|turn your|twice|twist open|two count|two to|until the|up before|up into|up slowly|up straight|up toward|up until|up you|wander|wardrobe|washing|waving|way as|way in|weight down|weight to|were|what|while you|without a|wobbly|wood|working|you before|you curl|you keep|you quit|you see|youll go|your face|your palm|your rear|your slipper|your toe|your tummy|youre cooling|youre starting|youre stopping|youre waiting|yourself|youve seen',
      ],
      [
        0.1,
        'a flat|a pinch|a prawn|a rainbow|a second|able|able to|after it|all your|and sink|and sit|anybody with|apart|around the|as itll|as its|back a|back against|back now|back out|back youre|bathroom scale|be a|be able|be holding|because if|belly up|between them|bite|blade into|blade stay|blade together|boat|butter|candle|cant get|chest goe|chest tip|chest to|circle|collarbone|come back|count out|crank it|cross it|cross your|curling|cushion between|deep enough|dont grip|dont hike|dont hop|dont hunch|dont just|dont like|dont round|down by|down your|draw the|draw them|drift back|each one|elbow stay|facing the|feel the|fetch|flat and|fling it|flinging|flopping|floppy|fogging|fogging a|follow the|for five|for three|four|frame|go up|goe in|goe without|good leg|gossip|grape under|hand to|has to|have a|head up|hip pocket|hit your|hunch|if one|in at|in with|it even|it flop|it grab|it hurt|it melt|its about|its round|jaw loose|jump up|just hold|just your|knee only|knee together|left arm|leg on|leg over|let em|lift it|light on|look round|looking for|loud|machine|mate|new hip|next door|nick|nose for|not all|not down|of ten|of three|on you|other side|out for|out front|out loud|over toe|paddle|pain in|pay for|percent|phone|pinch at|ping off|plenty|plop|prawn|pull for|pull with|pulling with|pushing the|rainbow|right back|right down|roll the|round at|round over|round to|sack|scale|seam|set the|settle|settle before|seven out|shoulder bite|shoulder get|shrugging|shuffle to|sit there|slide the|slide up|slipper|slow breath|slow enough|slowly|snug|so go|soften|some of|somewhere|soup|stamping|stand in|stay level|stay out|stay pointing|stirring paint|straight away|strength|stretch|swimmy|tall and|tall first|tall through|thank|thank you|that deep|the achilles|the bench|the bus|the desk|the room|the toe|then turn|there to|they dont|they go|theyll want|through both|through them|throw your|throw yourself|thumb on|tide|time going|to be|to catch|to lean|to push|to sit|to stand|to straight|together like|told your|top like|trying|trying to|turn from|twice as|two down|unhurried|up if|up tall|up there|very|waist|waiting|way to|wet sand|wheel|when youre|while its|without|without dropping|wrist over|youll get|your forehead|your lace|your seat|your second|your waist|youre like|youre putting|yourself down|yourself up',
      ],
      [
        -0.1,
        'a book|a coffee|a door|a good|a hamstring|a hand|a ring|a slant|a spot|a step|about to|achilles|achilles is|and head|and knee|and squeeze|and step|and they|and turn|and watch|and wide|and youll|are going|are only|arm hanging|arm like|arm stay|at you|away and|away like|baby asleep|back leg|back like|back over|back pocket|back straight|balance|band at|band out|bar on|be on|before each|belly tight|bend the|bending the|big|big breath|big step|both hip|bottom and|bottom foot|break|breath on|breathe how|buckle|but not|came|can get|can hear|can keep|car door|cat|chest away|chest on|chest tall|chin at|chin to|chuck|clap|coat hanger|coffee|cone|count it|cranky|crease of|curl it|curl the|dancing|dip|doesnt need|dont flare|dont open|door with|down before|down out|down with|drawing|drive|drop off|drop the|earring|easy breathing|either side|elbow by|elbow in|elbow just|elbow out|elbow straight|end up|every one|face|facing you|far down|far forward|feet are|feet as|feet stacked|find a|finger tingle|fingertip on|finish by|finish it|finished|flatten|fold|foot come|foot down|foot goe|foot off|foot right|forearm flat|forearm on|forward as|free|front heel|front leg|give it|goe back|goe round|hand out|hang long|hanger|head come|head forward|head to|heel close|heel toward|hinge|hip are|hip forward|hip height|hip sag|hip square|hip width|hover|huff|imagine youre|in a|in between|in like|in line|into it|into that|inward|is plenty|it if|it slide|it the|it to|its coming|its sore|its up|jog|jumper|keep them|knee goe|knee or|knee push|land soft|lane|lean over|left leg|leg back|leg behind|leg like|leg straight|like wing|long leg|look a|lower like|make you|me your|meant to|meat|meet your|middle toe|mind the|morning|move the|much|nearest|neck like|neck long|ninety|no lower|no rush|no slack|not out|not too|numb|off the|off with|on something|on them|one elbow|one line|one second|or two|or youll|out behind|out coming|out going|out onto|out wide|over hip|over onto|over to|pair of|partner|pass|pick|pinch up|press on|pressing|proper|puff out|pull till|push away|put them|quick step|quiet feet|quiet step|rafter|reach for|reach the|rib dont|right arm|ring in|round it|round like|rubber|sagging|same|second coming|see it|send it|send the|shin or|short|short quick|short step|shorten it|shoulder back|shoulder cranky|shouldnt|shouting|show me|sink into|sip|sip of|slant|slap|slow and|small as|snatching|spin|spot on|squeeze up|stair|stand like|stand with|stay in|stay low|stay off|stay still|step back|step into|step up|stirring|stomp|straighten that|sunday|swap|than a|than you|that back|that heel|that should|that turn|the car|the crease|the kneecap|the lace|the line|the little|the meat|the pull|the rafter|the rope|the shin|the standing|the tail|them in|then drive|thing|through that|thumb back|thumb round|thumb to|thumb up|tight and|till its|tilt|tipping|to come|to finish|to just|to knee|to start|toe forward|toe out|toe straight|tomorrow|tug before|turn out|under it|until you|up along|up an|up quick|up strong|use|waistband|walk the|what you|while the|white|whole foot|whole of|width palm|wing|with the|with them|with you|wobble|wobbling|wrap|you breathe|you came|you press|your belt|your bicep|your boot|your finger|your head|your neck|your pelvis|your spine|your waistband|your wrist|youre at|youre landing|youre pulling|youre shutting',
      ],
      [
        -0.2,
        'a beat|a cat|a coat|a dinner|a fist|a foot|a gate|a hair|a moment|a mouse|a pillow|a scarecrow|a shelf|a shoe|a tent|a tiny|about belly|ahead|air|all of|alone|an end|an old|anchor|and bend|and blow|and do|and no|and peel|and pick|and push|and stop|and throw|and walk|apart until|arch|arm down|arm till|arm up|as theyll|at shoulder|away|away to|back again|back from|back heel|back let|back on|backside|band touche|bar in|bar over|barely|before your|behind|bell in|belly and|bent elbow|beside your|big sigh|blade|blade in|blade on|bob|both end|both knee|bounce it|brake|breath be|breath going|breathe|breathe down|breathe however|breathe like|breathe on|bring your|bum down|burn|by side|can without|car|centimetre|cheek of|chest down|chest forward|click and|close|closer|closing a|coat|coin|couch|cramp in|crane|crank|crank your|creeping|crisp|curl your|da|da dum|dangle|did|dinner plate|do|doesnt|doing|dont bob|dont crane|dont push|dont reach|dont sag|dont sink|dont want|down behind|down onto|down slow|down slower|down there|down under|down when|down you|drift out|drifting|drive the|drop it|drop to|duck|dum|dumb|dumb bell|each breath|ease it|easy pace|elbow high|elbow level|elbow nearly|elbow under|every rep|exhale as|face the|far wall|feet hip|feet like|feet on|feet together|fence|fingertip|fist|flex|flex the|flexed|float up|floor as|floor with|fold over|foot back|foot flexed|foot in|for the|forearm up|forehead on|fresh|from knee|front like|gate|get down|get heavy|get out|go again|go as|go down|go the|goe down|goe over|going down|going up|gone too|good knee|goose|grab|grass|hair|hand a|hand and|hand apart|hand by|hand go|hand it|hand just|hand like|hang like|hanging|head on|heavy on|heel about|here|high and|hip dont|home|hook|hop|how|however|i|i dont|if they|invited|is fine|isnt|it again|it alone|it at|it bend|it catch|it close|it higher|it into|it is|it isnt|it low|it on|it open|it steady|it till|it under|its all|its just|its only|its too|itself|ive|ive seen|jug|jumping|just past|keep|keep breathing|keep your|kerb|kick|knee a|knee back|knee come|knee go|knee on|knee that|knee toward|knee wide|land on|lay|lean a|leave a|leg away|leg goe|leg in|leg up|lie down|lifted|like you|limbo|line from|little breath|little step|long as|long back|long plank|look|look at|look down|look forward|look up|loop|low as|lower it|lower than|lunch|me|meant|measuring|melt down|metre|metronome|more|mouse|nailed|need to|nice|nipping|nippy|no shrugging|nod|not an|not for|not high|not locked|of pushing|of soup|off|off and|on a|one|one arm|one heel|one to|only till|onto|open|or it|or youve|other knee|out sideway|out till|outside leg|over and|pace|pad on|part|pass your|peel the|peel your|pick it|piece|pillow under|ponytail|press your|pull up|push yourself|put|quick but|quiet|race|rack|reach like|reach one|really|relaxed|rep|reset|rib in|right ankle|right at|ring to|road|roll back|roll off|roll over|roll to|roof|root|same side|sand|scarecrow|second going|see them|shake|shin up|shoe length|shoulder and|shoulder height|shoulder over|shove|showing|side by|sideway to|sing|sit straight|size|size of|slide down|slide them|small of|small step|sniff|so if|so stop|sock on|soft elbow|something that|squeeze and|squeeze at|squeeze your|stand side|standing|standing leg|stay there|steady down|step out|step through|stick|stood|stood up|stool|straight arm|straight from|straighten it|tail under|take four|take one|tall as|tall like|tea|tent|than|that cheating|that how|that leg|that shoulder|the back|the bed|the bend|the bit|the bottom|the box|the breath|the calf|the cheek|the door|the floor|the forearm|the grass|the ground|the hamstring|the hand|the head|the height|the hip|the jaw|the kerb|the loop|the mouth|the pole|the ponytail|the post|the rack|the road|the roof|the size|the small|the track|the upright|the window|them home|then a|then bring|then come|then up|these|third|this one|thought|thread|through and|throw it|throw the|thumb pointing|tight|till you|tiny|to hip|to it|to lift|to lower|toe a|toe away|toe point|toe together|toe turned|together|top arm|top hand|top leg|towel on|track|travel|treacle|trunk|turn away|turned|turned out|two hand|two second|unclench|under hip|under shoulder|underneath you|until|up behind|up high|up one|up onto|upside|upside down|wait there|wall and|was|way back|way straight|weight over|went up|wet towel|when it|whole way|will|with both|without the|worktop|wrist stacked|wrist stay|yank it|you float|you lower|you ought|you think|you thought|youll be|your achilles|your backside|your belly|your big|your butt|your front|your knuckle|your little|your low|your own|your tailbone|your teeth|your thumb|your weight|youre closing|youre cracking|youre leaning|youre stood|yourself into|youve gone|youve had',
      ],
      [
        -0.3,
        'a banana|a bar|a drawer|about a|about as|and get|and hold|and lazy|and not|and then|and you|ankle|arch to|arm and|arm are|arm back|armpit|as a|at it|baby|back as|back at|banana|beat|before|behind the|being|bent|bicep|both way|bridge|bring the|brush|brush your|build|but|butt|can|change|cheating|chest|chest and|close enough|coming down|crease|degree|dinner|do the|dont force|dont heave|dont stop|dont tip|dont yank|door|down between|drop|each time|elbow at|elbow bent|elbow go|elbow to|elbow wide|enough to|every time|eye on|fast|feet|feet a|find|finish|first|flare|foot and|foot on|force|front foot|front knee|further|get a|get there|go and|go on|going|going back|gone|good|ground|hamstring|hand finish|hand flat|hang|heave|heel and|heel heavy|heel stay|heel up|hip back|hip level|hip up|how you|hug|if the|if your|in going|in one|in that|into|into a|is|it click|it like|it off|it toward|it want|itll have|its not|just outside|keep the|knee under|kneecap|late|lean away|lean in|lean on|leave|like its|like the|little toe|long breath|looking at|moment|mouth|near|no swinging|not a|of one|on it|on to|on your|one bone|onto your|or the|out at|outside your|over a|overhead|pair|pillow|pinned|post|push off|push your|rib tucked|right where|roll|rope|run|shake them|shoulder width|shut|side and|sideway|sit back|sit your|slack|slower than|so your|sock|spot|standing knee|stop|straight|strong|tail|take it|taking|than it|than that|that all|that not|the board|the feet|the low|the mat|the outside|the tree|then stand|there no|thirty|to about|to go|toe tucked|touch your|touche your|tree|tuck|tug|turn round|twang|two|under|up in|walk back|watch|watch your|way home|weight on|where your|whole|width|wrist|yet|you at|you can|you dont|you in|you sit|youll feel|your back|your coat|your heel|your left|your tail|youre a|youve',
      ],
      [
        -0.4,
        'and if|and the|back knee|bed|belly|belt|bending|big toe|board|bone at|box|bum|chest height|dead|dont arch|down in|down like|down on|elbow pinned|feet apart|flat on|forehead|forward and|gently|getting|give|halfway|hand off|heavy|heel|higher|hold your|it a|it back|it in|knee|knee in|knee soft|knee up|knuckle|leave it|let the|like a|line|little|locked|loose|mat|meet|past the|plank|pole|press the|pull it|quick|rise|sink|small|soft|stacked|stay straight|stop and|swinging|tailbone|the band|the bar|the bell|the heel|the rail|the rib|the wall|the wrist|thigh level|touche|tuck your|under your|up past|water|wider|window|yank|you a|your ankle|your armpit',
      ],
      [
        -0.5,
        'a time|and lift|and stay|arm by|at a|back stay|dont lean|elbow up|feel it|foot forward|hand at|in on|lie back|long band|low|out like|outside|peel|rail|ring at|soft knee|straight down|the ring|to a|to get|wait|your bottom|your hip|youve a',
      ],
      [
        -0.6,
        'at chest|elbow|every|foot|forearm|from it|hand under|head|hip|instead|knee and|let go|low back|lower|of a|one foot|other foot|other leg|side on|stand on|stand tall|the far|your feet',
      ],
      [-0.7, 'and back|height|knee to|land|lie|stand|straight up|thumb|walk|wall'],
      [-0.8, 'arm out|back foot|bar|bell|both hand|come down|ring|way down'],
      [-1.7, 'step'],
    ],
  ],
  [
    'side-bend',
    -0.2,
    [
      [0.9, 'arm up'],
      [0.8, 'other arm'],
      [0.7, 'beside you|tap'],
      [0.6, 'and over|arm over|beside|heavy on'],
      [0.5, 'a rainbow|both leg|goe down|one heel|rainbow|right hand|tap the'],
      [0.4, 'both|both cheek|chest at|flat out|lift up|opening a|side to|spring|the side|then lift|to side|top rib'],
      [
        0.3,
        'a coffee|a cup|a spring|ach|belly on|bouncing out|coffee on|coffee table|cup of|feet flat|feet stacked|for you|hip till|in down|is a|its the|just as|just tap|kiss the|knee drift|lean over|lift both|like theyre|lower one|mustnt|one arm|opening|out up|reach|reach one|rib that|shin level|slow back|stomping|that it|too|top shoulder|up past|waist|you lean|your waist',
      ],
      [
        0.2,
        'a drawer|a hinge|a sore|an egg|and come|and shoulder|and slide|arching|arm down|as youd|back again|back from|back go|back through|bob|breathe up|coffee|crept|cup|dont bob|each side|for a|gap|get sore|going over|hand to|head goe|inch or|it for|it lift|just reach|keep both|left arm|let one|lifted|medal|medal for|metronome|nearer|neck soft|no medal|not too|off and|or two|over hip|reach long|rib heavy|rib tucked|right ankle|roll down|roll the|room for|say stop|shoulder out|shouldnt|side like|side of|sit bone|sky|slide the|sock|stay heavy|stay stuck|sweep|the chin|the gap|the light|the neck|the rib|the sky|then back|time going|time you|tip forward|to lean|too low|toward it|your time|youre opening',
      ],
      [
        0.1,
        'about your|and tip|away till|bigger|cheat|crease|dont tip|down at|each time|egg|either|feet down|hand away|head and|inch off|kiss|lean till|leg goe|let that|little breath|melt|on them|reach for|reach your|rib and|roll your|sideway|table|that hip|that you|the carpet|the waist|tucked in|up and|up into|walk it|walk the|were|you cant|you reach',
      ],
      [
        -0.1,
        'a|a bit|a hand|a touch|about|above|across|after|against|ahead|air|along|and back|and down|and if|and keep|and lift|and lower|and no|and not|and push|and then|ankle|arch|arm are|arm by|arm long|arm out|arm straight|armpit|as high|as they|as your|at|at a|at the|at your|away|back foot|back in|back knee|back on|back pocket|back stay|back up|backside|ball of|because|before you|behind the|behind your|belly|belly button|below|belt|bend the|bend your|between the|big toe|board|body|both feet|bounce|bouncing|box|breath out|breathe|breathe in|bring|bring the|bring your|but|butt|button|by|by the|calf|can|cant|catch|chest|chest up|chin|curl|do it|doesnt|doing|dont arch|dont bounce|dont drop|dont go|dont hold|dont let|dont roll|down|down like|down on|down the|drag|drop|drop the|dumb|dumb bell|each hand|ease|edge|em|enough|even|exhale|facing|far as|fast|feet|feet hip|find|finish|first|five|flat on|floor away|fold|follow|foot on|for one|for the|forehead|four|front heel|front knee|front of|further|get it|go up|going|going down|good|grab|grip|hamstring|hand under|handle|hanging|hard|heel and|heel down|heel up|high as|higher than|hold your|holding|hurt|if it|if its|if there|if you|if your|if youre|if youve|in each|in on|inside|instead|into it|isnt|it a|it come|it go|itll|its|keep|keep it|knee and|knee soft|knee to|knee up|kneecap|knuckle|last|leaning|left|leg long|leg out|let go|level|level with|lie|lift the|like|like a|like youve|little|lock|long|long neck|looking|loop|loose|low|low as|lower|lower it|make it|middle of|move|near|nearly|next|nice|nice and|no|no bouncing|no higher|nobody|not|not a|not the|not your|now|of a|of the|off your|on|on the|on to|one|one knee|one leg|opposite|or|other foot|other leg|out as|out at|out like|over the|over your|past your|peel|pick|pillow|please|plenty|point|pointing|pop|press the|pull it|pull the|pull your|push off|push through|push your|put|put it|rib down|ring at|rise|roll out|room|round the|sag|see|set|shoe|shoulder down|shove|side on|sigh|sit|sit back|sit down|slow|slow as|slower than|slowly|smooth|soft|soft knee|sort|sort of|squeeze the|stacked|stand on|stand tall|standing|stay|stay down|stay on|step back|stick|straight down|straight up|strap|swap|tail|than you|than your|that|that your|the ball|the band|the bar|the bench|the edge|the end|the feet|the front|the hip|the inside|the kneecap|the nose|the other|the outside|the rail|the same|the seat|the toe|the top|them|them down|them up|then let|think of|three second|through the|through your|till|till it|till youre|to come|toward|toward the|towel|tuck your|turn your|two|under the|under you|until|up|up at|up like|up off|up tall|up the|up there|up to|walk your|wee|what|while|whole foot|wider than|with it|without|yank|you dont|you get|you know|you like|you pull|you push|you should|you stand|you want|youll feel|your ankle|your back|your bottom|your breath|your feet|your finger|your foot|your hand|your low|your nose|your right|your shin|your tail|your tummy|your wrist|youre a|youve|youve got',
      ],
      [
        -0.2,
        'all|all the|and|and bring|and let|and stand|and the|apart|are|as|as a|as far|as if|as the|as you|away from|back|back and|back down|back of|ball|band|bar|be|before|behind you|bell|bench|bend|bent|big|bit|blade|blow|blow out|both hand|breath|breathe out|bum|ceiling|cheek|close|come|come down|come up|coming|count|dont|dont lean|door|down to|draw|drive|elbow|end|every|eye|eye on|face|feel it|feet under|finger|fist|forearm|from|from the|from your|front|get|go|got|half|hand|hang|heel|height|high|hip|hip width|hold|hold it|home|i|if|if the|in|in as|in front|in your|it|it down|it in|it up|knee bent|knee over|know|land|lean back|leg|let|let it|let the|let them|let your|lift your|like youre|line|look|look at|me|more|nose|of|of it|of you|of your|on your|one foot|onto|out|out in|outside|palm|pinch|pocket|press|push the|rail|ring|same|second|should|shoulder|shoulder blade|sink|slower|small|so|somebody|squeeze|squeeze your|stand up|start|steady|straight|swing|than|the|the arm|the ceiling|the elbow|the foot|the knee|the ring|the shoulder|the thigh|the wall|the way|the whole|there|they|thigh|think|this|three|through|thumb|tight|to|to get|to the|to your|together|top of|touch|toward your|tuck|turn|under|under your|up on|wall|want|want to|way|way up|weight|when|when you|where|whole|wider|width|with the|with your|wrist|you|you come|you go|youll|your|your arm|your belly|your bum|your chin|your elbow|your heel|your hip|your leg|your thigh|your toe|youre|yourself',
      ],
      [-0.3, 'behind|foot|in the|knee|pull|push|round|stand|step|tall|the back|toe|with|your knee|your shoulder'],
    ],
  ],
  [
    'side-lying',
    -0.5,
    [
      [1.2, 'stacked'],
      [0.9, 'elbow under'],
      [0.8, 'lift|top leg'],
      [0.7, 'bottom|feet stacked|head on|top|waist'],
      [0.6, 'dont roll|lift your|top hand'],
      [0.5, 'bent|do it|head|hip sag|knee bent|sag|side|top knee|want to|your side'],
      [
        0.4,
        'and do|and stop|bottom knee|heel toward|higher than|hip till|line|open|pocket|roll|roll back|shoulder hurt|the bottom|the top|top arm|top foot|under your|your right',
      ],
      [
        0.3,
        'a bell|and lower|bone|bottom one|come down|dont sink|down on|face forward|floor in|foot in|heel together|higher|hip and|hip bone|hip forward|in line|it bite|its a|knee and|knee stay|leg long|leg straight|lie on|lift it|long leg|not up|onto your|pillow|rib and|roll your|shoulder got|take the|that side|the muscle|the shoulder|the waist|till youre|to ear|to feel|to open|toe face|top hip|under the|up at|where it|your top|your waist|youre feeling',
      ],
      [
        0.2,
        'a car|a hammock|a mouse|a ruler|a wall|and catch|and close|and make|and open|and two|ankle behind|arm up|around your|back pocket|bad|bill|bite|bottom leg|bottom side|breath going|car park|chest to|close|collapse|count back|count out|dont rush|else|even|face the|feeling|follow|follow the|for the|get it|get that|good side|groin|head in|head to|heel away|high enough|hip height|hip stacked|hip up|hole|hovering|i can|if that|is where|it and|it higher|it nip|it open|it want|its just|its the|join in|joint|just behind|keep breathing|keep one|kissing|knee on|knee stacked|leg up|let off|lift from|lift the|long line|lower it|make yourself|mouse|muscle|nearest|night|nip in|no more|no rolling|no yanking|not to|of pulling|on top|one hip|onto|open it|open the|opening|out sideway|over and|peel the|pinch in|plank|press that|pump|right knee|right side|right there|right under|ruler|ruler length|sag like|see daylight|shoulder away|side of|sink|sink in|size|size of|sore leg|stack|stay close|stay there|straight from|that shoulder|that working|the breath|the hand|the hip|the joint|the size|the socket|the thigh|theyre not|tip over|turn in|turn side|two count|under there|under you|underneath|wandering|way in|way round|yanking|you lift|you open|your good|youre straight',
      ],
      [
        0.1,
        'a straight|and a|and over|and slow|arm under|away with|bouncing out|breathing|close it|cranky|creeping|dinner|down behind|floor away|follow it|free|from there|glued|hand up|hip high|hip roll|hip to|instead|join|keep a|lay|leg behind|let that|line with|long and|nearest the|new|new hip|nip|no higher|out as|park|pillow between|push a|roll forward|rolling|shoulder cranky|sink into|slow it|socket|stay glued|straight out|than a|than before|than you|that hip|the light|the underneath|there and|theyll|theyll want|to be|to go|to hip|to slide|top shoulder|turn from|washing|whole time|working',
      ],
      [
        -0.1,
        'a hand|a little|a time|about|above|above the|all the|and back|and come|and if|and lean|and push|and stand|and the|and then|and your|arch|are|arm|arm by|as you|at your|back down|back foot|back in|back into|back knee|ball|ball of|band|because|behind the|belt|bend the|between|between the|between your|big toe|blow out|board|both feet|both hand|bounce|box|breastbone|breath out|bring|bring the|but|chair|come back|deep|dont arch|dont bounce|dont go|dont hold|dont lean|dont push|dont swing|down to|drive|drop|dumb|dumb bell|ease|every|exhale|facing|fast|feet back|feet hip|find|first|fist|five|for a|for three|forehead|from it|front heel|front knee|give|goe|going|going down|going up|grip|hard|heavy|heel down|heel up|how|if youre|if youve|in each|into it|it|it go|it in|it out|keep your|knee|knee soft|knee up|know|knuckle|land|last|lazy|lean in|leaning|let go|let it|like a|like somebody|like the|like youre|lock|look|looking|loose|near|neck|next|not the|off|off the|off your|on the|one hand|other foot|other leg|out at|out on|palm up|pick|point|poke|pop|puff|pull it|pull your|push through|put|quiet|rail|rib down|rock|roll out|round|run|second|set|shoe|short|sigh|sit back|sit down|slow|small|so|somebody|something|squash|stay down|step back|stick|straight down|straight up|swap|table|tail|take your|tall|that how|that your|the ball|the band|the bar|the big|the door|the edge|the end|the feet|the rail|the ring|the same|the toe|the way|the weight|them down|then let|then the|three|till|till the|tip|to a|toe up|too|towel|tuck your|tucked|up on|up the|up through|upright|walk your|watch|way|way down|when you|while|whole|whole foot|wider|wider than|width|with|with a|yank|you come|you like|you push|you stand|your bum|your chest|your chin|your feet|your finger|your foot|your knee|your neck|your shin|your tail|your thigh|your thumb|your tummy|your wrist|youre|youve got',
      ],
      [
        -0.2,
        'a|all|and|apart|arm out|as if|as they|as your|at the|back and|back of|bar|big|blade|blow|breath|bum|calf|cheek|chest|coming|cramp|dont|dont shrug|down|drag|each|easy|end|eye on|feet under|fingertip|foot|further|grab|half|hamstring|hand under|hang|heel and|height|hip width|hold the|in|it back|it come|lean|left|let|look at|lower|moving|not|now|on|one|one knee|one leg|opposite|other|other knee|out like|over the|over your|palm|please|press|press the|put it|quick|reach|ring|same|seat|shin|should|shoulder blade|shrug|slide|squeeze the|the chair|the foot|the seat|them|they|through|thumb up|till your|time|to|to come|to shoulder|tummy|until|up to|wait|walk|way up|when|wide|with the|you dont|you feel|your bottom|your hand|your leg|your low|your toe|youre not',
      ],
      [
        -0.3,
        'and let|as|bend|by your|chin|come up|curl|feet flat|finger|just|level|like|little|low back|middle|pull|soft|stand|start|the leg|the middle|thumb|toe|tuck|up|weight|wrist|you|youve',
      ],
      [-0.4, 'at|both|by|feet|flat|go|of your|out|over|rib|sit|squeeze|swing|then|your'],
      [-0.5, 'back|hand|low|step|the|the knee|to your|your back'],
    ],
  ],
  [
    'single-leg',
    -0.3,
    [
      [1.1, 'standing'],
      [0.8, 'knee together|together'],
      [0.7, 'by side|edge|foot off|hanging|knee up|side by|stand|stand on|the standing'],
      [
        0.6,
        'behind you|eye on|headlight|knee soft|knee straight|lace down|other one|pick|stand tall|standing knee|swing|the chair|the edge|the fence|your belt',
      ],
      [
        0.5,
        'as it|belt|catch|dont stamp|drawer|fence|front foot|hand on|heel hanging|heel to|hop|in the|leg youre|out to|outside leg|stamp|standing leg|up behind',
      ],
      [
        0.4,
        'a string|and swing|as your|beat|behind|clock|diving|dont lean|dont lock|down for|each time|feet together|fingertip|float|float the|foot|gate|get it|grab|grip|hanging off|hip stay|knee no|level|lock|moving|near hand|on one|one hand|one up|only as|out of|peel|pick the|shoulder over|sideway|soft knee|something that|straight down|swing the|that hip|that knee|the other|the rail|the thigh|the worktop|through the|to about|toe of|weight on|with both|worktop',
      ],
      [
        0.3,
        'a beat|a clock|ankle behind|arch|arch your|at one|bell in|below|below the|biscuit|board|chase|chest a|clear|closing|easy pace|facing front|fine|fingertip on|finished|foot down|foot heavy|foot just|foot on|forward and|goe forward|gone too|grip with|handle|higher than|hold of|hopping|if itll|if its|in going|in like|inside leg|isnt moving|it down|itll|lace|leg straight|let that|ligament|like headlight|little breath|little toe|loose|mean|no higher|no hopping|not down|not the|of one|of that|on each|one leg|onto one|other foot|other leg|outside|pick a|pocket is|second toe|set it|side|side on|six|soft|standing foot|standing on|stare|stare at|statue|stay flat|stay still|stay there|step it|string|string on|tail under|take one|that isnt|that standing|the outside|the shin|the side|then go|then heel|tin|to go|toe facing|trouser|up onto|up through|weight|your left|your trouser|youre standing|youve gone',
      ],
      [
        0.2,
        'a bus|a drawer|a foot|a good|a kickstand|a letter|a pub|a right|a slope|a zip|about as|about it|about level|about the|about your|achilles is|and back|and i|and pick|and stare|angle|ankle and|any sharp|anything|as tall|at something|back doesnt|back foot|back leg|back there|belt height|bend one|bend the|bending|bladder|bounce them|bouncing off|breathe normally|breathe on|buddy|bum at|chair back|change|change leg|chest with|complain|count it|cranky|dive inward|diving in|doesnt move|dont arch|dont grip|dont hitch|dont open|dont stomp|dont yank|down at|down by|drawer with|drive through|drive up|drop straight|drop the|face the|facing|far enough|feet close|feet down|find a|finger on|five second|floor and|floor with|foot a|foot behind|foot only|foot through|foot up|for a|for five|for one|for three|free|from it|front leg|gap|gentle|go a|go all|go till|goe out|good foot|grab the|grip the|groin|grumpy|hand down|happy|heel just|higher|hip and|hip are|hip level|hitch|hitch the|hitching|hook the|horizon|i mean|in breath|in through|in two|instead|is sore|it fall|it goe|it grow|it in|it lift|it small|it there|its in|its sharp|its there|itself|jean|jumper|just clear|just off|keep breathing|kickstand|knee as|knee goe|knee or|knee track|lamp|lamp post|lean away|lean on|leg as|leg forward|leg on|leg out|leg that|letter|little forward|lock that|look straight|loop the|lower for|measuring|middle toe|near|need|need a|no swinging|nose out|of a|of it|on to|one knee|one spot|only a|open the|opposite knee|out behind|out each|out till|over the|pace you|pub|pub sign|push that|put your|quick but|rail|reaching|right angle|right down|right leg|second and|second down|second to|set|shin straight|side of|sit into|slope|slower on|small and|smooth|soft feet|soft on|spot|square|standing hip|start small|steady beat|step away|step through|stomp|stood|stop when|straight back|t|take hold|tall on|tall through|than the|that back|that doesnt|that you|the backside|the gate|the hip|the horizon|the in|the little|the low|the mouth|the out|the pad|there like|there to|throw yourself|tick|tipping|to one|toe at|too far|too high|touche|up again|up top|wander|when the|will do|wrist complain|yank|yank the|you squeeze|you tip|your ankle|your bladder|your foot|youre doing|youre holding|youre rushing',
      ],
      [
        0.1,
        'a bucket|a dinner|a moment|a step|a touch|achilles|and breathe|and bring|and straighten|balance|both hand|both hip|breathe easy|bucket|butt|chest down|closer|cramp|dinner plate|dont get|downstair|each side|exhale as|facing the|fall in|feet under|floor is|forward till|frame|front knee|get a|get bigger|giddy|go for|hand to|heel sink|height and|hold a|hook|hovering|inch will|inward|is fine|it get|it just|it wander|jump as|just under|knee back|knee point|lean a|lean over|left leg|leg go|long slow|look like|meet the|new|new hip|normally|not high|on every|on something|one side|out sideway|out slowly|pain in|partner|pick your|pinch in|put the|rushing|scoop|sideway on|slow it|so not|something|squeeze like|stand behind|stand side|stay pointing|stood on|straighten it|tall as|tall like|tell you|that breath|the foot|the frame|the groin|thigh together|thing|till the|till there|to touch|today|toe forward|toward it|track over|tuck the|up as|up for|up out|up quick|wait for|where its|yanking|you about|you look|you should|you up|your achilles|your butt|your little|your right|your second|youre stood',
      ],
      [
        -0.1,
        'a cat|a hair|a pencil|a pull|a saucer|a stop|a time|a tray|against|against the|ahead|all|and one|and tip|and walk|and your|arm by|arm out|arm straight|armpit|as well|at chest|at your|away|back flat|back into|back till|band|because|bell by|beside|big breath|big step|bird|both knee|bottom foot|bottom of|bring them|brush|can keep|can see|check|chest height|click|coat|come down|cone|count to|cracking|cracking a|crank|da|da dum|dead|direction|dont crank|dont go|dont move|dont roll|dont round|down and|down first|down in|down into|down on|draw|drive the|dropping|dum|ease off|em|every|feet a|feet wide|finish|fist|flex|flex the|foot to|foot turn|foot way|forehead|forward like|glued|glute|go back|gossip|hand flat|hard|heel heavy|heel of|height|hip height|hip with|how you|in as|in each|in line|in till|in to|in youll|inside of|into it|it all|it bent|it hurt|it straight|it to|it up|just the|knee bent|knee come|knee dont|knee in|knee nearly|knee out|knee stop|knuckle|land|lazy|lead|lean forward|lean your|leaning on|leg every|leg in|leg long|leg still|let them|lie|lift|lifting|long spine|look|lower|mind|my|nearly|neck|next to|not just|of you|of your|one in|one of|other hand|out at|out going|out like|out long|out over|out there|pain at|palm up|past your|pencil|picture|pinch|pop|press it|press the|press through|pulled up|push off|push one|pushing|quarter|quick step|rack|rib down|rib tucked|right back|right in|ring|ring at|round over|round the|running|sag|saucer|seen|shelf|shoulder width|shout|shrug|shut|sigh out|sit back|sit on|slow breath|small|so the|so youre|soft and|somebody|somewhere|speed|squeeze your|stack|stacked|stance|stand up|stay down|stay put|step one|step out|step up|stop a|stuck|take a|taking|than|that heel|that plenty|that the|that what|the bus|the far|the lace|the last|the rib|the strap|the track|the up|the way|the you|them down|then lower|then push|these|theyre not|think|three count|till|till its|till you|to start|to toe|to you|toe pulled|toe straight|touch the|track|tucked in|under your|underneath|up off|up over|way back|we|when you|where the|whole leg|whole way|wider|wider than|with a|wrist|you a|you lift|you rise|you stop|your armpit|your calf|your chin|your face|your low|your rib|your tailbone|your tummy|your waist|your whole|youre cracking|youve got',
      ],
      [
        -0.2,
        'a bell|a big|a bit|a ruler|a tightrope|above the|across the|along|an ankle|and hop|and just|and lean|and out|and slow|and stand|and the|around|as if|as they|as you|at a|back and|back behind|back down|back off|back to|backward|bar|be|before|before you|belly|bend your|between your|bigger|bill|book|bottom leg|bouncing|bowl|breastbone|breath|breath on|breathe down|breathe like|breathe slow|breathe with|cant|carpet|chest tall|close|count back|count out|cushion|dip|dont let|dont look|dont push|down with|each hand|end|every time|exhale up|face forward|feel your|feet on|flick|flop|foot in|foot right|for it|for two|from your|front|front of|get there|get to|get your|give|go over|going up|got|grass|half|hamstring|hand behind|hand in|hand under|head|heavy|heel as|heel off|hinge|hip back|how|i can|in and|in it|in your|inch off|it a|it be|it is|it let|it pull|it should|it want|its a|its the|its your|jaw|just above|knee down|knee hover|know|last|lean back|leave the|length|light on|like somebody|like you|little step|long back|longer|look down|low back|march|middle of|more than|muscle|nailed|nailed down|no more|nose|not|not a|not behind|not up|off your|on hip|on you|one on|only the|onto your|or|other knee|out breath|out wide|own|past the|pause at|pick it|pillow|please|point where|pretend|pulling|push the|put one|reach|rhythm|right up|roll out|ruler|ruler length|same|see|send one|shin up|shoulder blade|sit down|sit tall|sit up|small step|snap|sort|sort of|spine|squeeze the|stand with|stay on|stay over|step back|stop it|stretch|swap|tail and|tall at|ten|than you|that foot|that how|that side|the air|the arm|the ball|the belt|the breath|the carpet|the elbow|the joint|the next|the post|the towel|the waist|the whole|them up|then|then the|there a|theyre|this|thumb|tightrope|toe on|top|touching|toward you|travel|tug|turn out|two|under hip|under shoulder|under you|until|up tall|up the|up there|want to|watch|watch the|wee|weight in|wobble|you come|you know|you stand|your arm|your belly|your breastbone|your chest|your ear|your elbow|your head|your hip|your lace|your neck|your side|your time',
      ],
      [
        -0.3,
        'above|again|air|and no|and push|and two|ankle over|apart|behind the|bit|bite|blade|breathe into|breathe out|by your|chest|circle|coming|count|curl|deep|dive in|down|down like|draw it|ear|fast|feet flat|feet hip|foot back|from|goe back|heel and|heel on|hold it|hot|if there|in|in a|inside|into|into the|it and|it bite|keep your|leave|leg back|leg up|let your|lift it|like youre|line|next|nothing|on a|out|out and|out in|outside of|over your|palm|past|right|run|send|sharp pain|straight|the|the calf|the seat|the shoulder|the top|they|through that|till it|to|to the|toe point|toe up|towel|two count|under the|up|up like|use|waist|way|what|whole foot|wide|you and|you feel|your hand|your knee',
      ],
      [
        -0.4,
        'across|and|and keep|are|back heel|bent|big|bone|bring the|calf|come|cross|ease|foot forward|hang|heel down|hip width|knee on|lift your|mat|on your|press|push|rise|short|sigh|slide|so|the mat|them|tight|wall|width|with your|your leg|your shoulder|youre not',
      ],
      [-0.5, 'back|chin|long|more|rib|roll|round|seat|shoulder|step|turn|under|walk|want|where|where it|your toe'],
      [-0.6, 'flat|sit|whole|your feet'],
      [-0.7, 'arm|feet|lean in|light'],
      [-0.8, 'in front'],
      [-0.9, 'elbow'],
    ],
  ],
  [
    'sit-to-stand',
    -0.5,
    [
      [0.8, 'you come'],
      [0.7, 'nose over|then sit|your toe'],
      [0.6, 'and up|chair|nose|the seat|tucked back'],
      [0.5, 'and stand|back till|edge|knock|plop|reach your|seat|sit|the chair|till you|when youre'],
      [
        0.4,
        'a hand|and sit|apart|before|below|dont plonk|dont plop|egg on|feet tucked|feet under|floor away|of you|one hand|over your|plonk|push the|rock|shuffle|slow down|stand|stand up|through your|tucked|way up',
      ],
      [
        0.3,
        'against|arm of|back under|bench|blow|blow out|bum at|count|dont rock|down than|egg|feet a|floor down|good leg|hip back|hot|just below|keep hold|keep one|kiss|knee point|knee stay|lean forward|lean your|look straight|no plonking|nobody|not to|off it|on that|over toe|plonking|push through|rear|rock to|second toe|shoulder width|sit back|sit down|some|stand in|take your|the bench|the good|them knock|theyre not|toe and|top like|touch|under you|up you|weight|where the|width|you touch|your breath|your rear|your shirt|your time|youre up|yourself',
      ],
      [
        0.2,
        'a chair|a sack|against the|and tell|apart with|as wide|at each|back a|back down|bar on|bottom back|bottom near|carpet|clock|coming up|dont flop|dont you|down again|down through|drive up|dropping|feet as|feet back|floor apart|flop|forward over|front edge|front half|front like|get going|get up|good|half of|heel back|hold of|if there|im|it all|it or|its there|keep a|kind of|knee are|knock together|knocking|like the|near the|next|no plopping|nose is|nose out|not at|on top|out over|plate|plopping|pretend there|push down|quick up|quit|reach back|sack|seat and|second|send|send your|settle|shirt|shuffle forward|shuffle to|sit as|sitting|slower going|some of|spread|stay over|stood|straight ahead|table|tell me|that what|the box|the carpet|the clock|the edge|the next|the room|the same|the table|then reach|through both|till youre|to sit|to stand|touch the|try|up through|weight in|what|what its|while youre|whoever|wide as|wider than|wiggle|working|you keep|your butt|your calf|your second|youre sitting|youre steady|youre stood',
      ],
      [
        0.1,
        'a plate|a second|alway|an egg|and youve|arm crossed|away and|back round|below where|blow as|breathe out|buddy|chair against|count of|dive|dropped|giddy|glass|go down|go in|heel tucked|hip width|i want|its|knee out|lower yourself|of three|old|one count|plate on|press through|pulled down|pushing|put a|read|read your|right up|safety|scoot|shin straight|sit on|sneak|stance|stood up|take a|tall at|than up|the joint|the last|the second|the time|then go|there an|to the|too low|touch it|tuck the|two step|under each|up straight|watching|way as|whole foot|you need|you quit|you sit|you stand',
      ],
      [
        -0.1,
        'a time|above|across|across the|after|an inch|and back|and bring|and keep|and lift|and lower|and the|and then|arch|arm|arm are|arm up|armpit|as|as high|as they|at your|away from|back foot|back knee|back on|back up|ball of|bar|belly|bend the|bend your|between the|blade|board|body|breath out|breathe into|bring it|bring the|but|by the|catch|cheek|chest|chin|close|come back|come down|deep|do|dont arch|dont bounce|dont jump|dont let|dont push|dont roll|dont tip|door|down|down the|drag|dumb|dumb bell|each hand|ease|elbow under|enough|eye|face|face the|facing|far as|fast|feel it|feet flat|feet on|finger|fist|five|float|for a|forearm|from the|from your|front heel|front knee|get it|go up|grab|ground|grow|hair|halfway|hamstring|hand under|handle|hanging|hard|heel up|high as|higher than|hip up|home|how|if|if that|if the|if your|in each|in one|in your|inch|instead|into the|into your|isnt|it back|it come|it down|it go|it goe|it on|itll|its a|its not|its the|jump|jump up|keep breathing|keep it|keep your|knee and|knee bent|knee soft|knee to|knee up|lean back|lean in|leave|leave it|leg long|leg out|leg up|length|let go|lie|lift the|lift your|light|like youre|line|lock|loop|loose|low back|lower|lower it|make|middle|nice|nice and|no higher|of|of the|of your|on a|on the|one knee|one leg|only|only as|onto|onto your|other foot|out like|palm|pinch|plenty|pocket|pointing|pop|puff|pull the|pull your|push off|put|put it|rib down|ring|roll out|round the|sag|sharp|short|shoulder blade|side of|side on|sideway|sigh|slow as|soft knee|stand tall|start|stay|stick|straight down|straighten|strap|swinging|tail|than the|the air|the ball|the calf|the chest|the door|the elbow|the ground|the hand|the hip|the leg|the middle|the outside|the rib|the ring|the thigh|them|then let|thumb|till it|till the|toe up|toward your|towel|turn your|two|up in|up like|up the|up there|waist|walk|walk your|watch|with a|yank|you dont|you push|your back|your belly|your chest|your ear|your elbow|your foot|your head|your hip|your shin|your side|your tail|your thigh|your wrist|youre a|youre on',
      ],
      [
        -0.2,
        'a touch|and|and not|as a|as it|as low|back like|ball|bent|bone|bounce|breath|by your|doesnt|dont lean|down between|down to|ear|easy|far|foot|go|goe|grip|hand|hang|head|heel down|height|if it|if youve|in going|in the|in through|inside|it|it out|keep the|kneecap|leg|let it|let the|level with|like|like a|little toe|low|low as|mat|more|no|no bouncing|not a|one foot|or|outside|peel|quiet|rib|round|shove|slide|stand on|stop|swing|tall|than you|that|that your|the band|the end|the inside|the kneecap|the mat|the shoulder|them down|thought|to come|to your|toward|up|up at|up on|up tall|whole way|wrist|you thought|youll|your chin|your hand|your shoulder',
      ],
      [
        -0.3,
        'a|about|ankle|back|band|bell|bend|between your|big toe|bouncing|breathing|bring|can|dont|drop|first|foot on|from|higher|hip|in|into|it up|lace|lift|off|on|other|out of|pull|side|soft|step|still|the bottom|the nose|the other|thigh|to|turn|with the|you can|your arm',
      ],
      [-0.4, 'between|big|by|flat|high|let|one|roll|shoulder|the back|your'],
      [-0.5, 'breathe|elbow|long|off the|out'],
      [-0.6, 'the'],
    ],
  ],
  [
    'spine-extension',
    -0.5,
    [
      [0.8, 'chest forward|knee under'],
      [0.7, 'breathe in|round up'],
      [0.6, 'ahead|belly|forehead|pinch'],
      [
        0.5,
        'and round|and your|chest|chest and|crank|crank your|hand by|head back|in as|low|the head|the mat|under hip|your chest|your front',
      ],
      [
        0.4,
        'arm out|back pinch|belly drop|breastbone|cat|chest up|crane|dont crane|draw your|elbow further|forehead down|hand and|low back|mat|not high|only as|out ahead|pinch in|reach|start it|the breath|your arm|your belly|your breastbone|your neck',
      ],
      [
        0.3,
        'a few|a slope|and quick|arm and|away and|come lower|dip|dont squeeze|dont throw|drop and|easy breath|elbow in|elbow under|few|fine|forearm flat|forehead on|further|in for|leave|leave your|leg a|leg long|lift your|long leg|nip in|no rush|out for|rafter|rush|slide your|slope|squeeze your|stiff|tail|tail and|the forearm|the rafter|the tail|the tummy|this time|throw|throw your|to see|wrist under|your low',
      ],
      [
        0.2,
        'a cat|a hot|a pinch|a rope|ahead of|and knee|and lift|and look|and steady|arm down|as big|asleep|back up|between the|book|both end|both way|breathe down|cat on|come forward|couple of|dont crank|down into|easy|elbow straight|end of|everything|feet down|few inch|float|float your|for four|for the|forearm|forearm down|get a|glute|hand under|head come|head up|hot|in to|it from|it start|last|leave it|leg together|lie|lie flat|look straight|nice|nice and|nip|of inch|out at|press the|pulling|reach for|rise|rope|round your|see me|shape|slide the|small and|so it|squeeze that|tailbone|the belly|the chest|the glute|the low|the speed|today|travel|tummy|under shoulder|up as|you breathe|you lift',
      ],
      [
        0.1,
        'a couple|a warm|and draw|and even|as its|back of|been|bit apart|bum before|couple|dont need|door|draw|drop into|further out|get down|hand height|hand off|hurry|in and|is fine|it isnt|it pinch|its|its only|jerking|let the|look down|lower than|more than|no jerking|no more|of a|of your|or leave|pointed|reach your|roll your|skirting|to lower|toe pointed|warm|you rise|you think|your hip',
      ],
      [
        -0.1,
        'a foot|a time|about|above|above the|ach|across the|after|against|all|all the|an inch|and|and back|and bring|and stand|arch|arm are|around|as low|at|at a|at it|back in|back on|back stay|back to|ball|ball of|banana|because|behind the|behind your|bell|belt|bench|bend the|big toe|blow out|both hand|bottom|bounce|bouncing|breath out|breathe into|bring it|bring your|butter|calf|catch|close|do|dont arch|dont bounce|dont drop|dont go|dont hold|dont lean|dont swing|dont tip|down like|drag|drift|each hand|edge|every|exhale|fall|far|fast|feel|feet back|finish|five|fold|for two|from the|go up|going|going down|good|got|grab|grip|halfway|hamstring|hand|hand behind|handle|hanging|have|height|hip width|hold it|hold the|hold your|holding|hurt|i can|if the|if there|if youve|in each|in front|in on|in through|inside|instead|it a|it back|it come|it down|it go|it goe|it on|it up|itll|just|knee and|knee down|knee in|knee soft|knee up|kneecap|know|knuckle|land|lean back|leg out|length|let go|let it|let them|level with|like|like there|little|loop|loose|lower it|melt|near|nearly|next|no bouncing|nobody|not|not your|nothing|now|of|on to|on your|one foot|one hand|one knee|or your|other foot|other leg|out|outside|over the|palm up|past your|please|plenty|pointing|poke|pop|pull it|pull the|rib down|rock|round the|run|seat|shin|should|shoulder and|shoulder down|shove|sideway|sit back|sit down|slower|slower than|soft knee|sore|sort|sort of|spread out|stacked|stand tall|stand up|standing|stick|straight up|strap|swinging|take a|that the|that you|the back|the ball|the band|the bar|the bench|the chair|the foot|the hand|the heel|the hip|the opposite|the outside|the seat|the side|them up|then the|there a|three second|through the|thumb|tight|till it|till the|till your|to|to the|to your|toward the|under you|up over|up the|want to|watch|way|way up|weight|what|while|whole|wider than|with a|wrist|you|you can|you know|you pull|you should|youll feel|your armpit|your bottom|your ear|your hand|your heel|your shin|your thigh|your thumb|youre a|youve got',
      ],
      [
        -0.2,
        'a bit|across|ankle|are|armpit|as they|back and|band|bar|bend your|big|bit|blow|body|can|chair|count|curl|dont|down to|facing|feel the|feet flat|feet under|first|fist|from|go|ground|higher|hip|home|in the|keep breathing|knee bent|let|level|line|middle|move|no higher|nose|off|off your|on it|on the|out on|over your|plate|quiet|right|ring|second|side|stay|straight|straight line|swing|take|tall|than your|that|the air|the bottom|the ground|the middle|the nose|the other|the ring|thigh|three|through|tip|to get|toe|toward|toward your|tuck|tucked|turn your|two|until|up|up on|waist|walk|when you|wide|width|with the|you push|youll|your chin|your rib|your wrist|yourself',
      ],
      [
        -0.3,
        'an|at your|away from|back|behind|bent|bring|ear|feel it|feet|front of|goe|hand on|it in|lean|like youre|on|open|out as|out like|pull|rib|roll|stand|stop|than|the front|the knee|then|they|when|with your',
      ],
      [-0.4, 'back into|bend|hold|if your|other|sit|slow|step|the|them|there|turn|your|your knee'],
      [-0.5, 'chin|foot|if|one|over|till|with|youre'],
      [-0.6, 'dont let|heel'],
      [-0.7, 'knee'],
    ],
  ],
  [
    'spine-flexion',
    -0.3,
    [
      [1, 'behind your'],
      [0.8, 'other leg'],
      [0.7, 'curl|curl your|roll|your knee'],
      [0.6, 'belt|closing|come up|elbow wide|forehead|hand behind|hand under|round up|tail|your neck'],
      [
        0.5,
        'and lower|and roll|bone at|bring your|head|knee bent|knee come|knee up|knee wide|last|roll up|sit back|small|spread|sway|the head|then let|under hip|upside|upside down',
      ],
      [
        0.4,
        'a time|and round|back on|backward|behind|belly|bowl of|closing a|disc|feet flat|fingertip|gentle|hand together|haul|haul on|head last|heavy|if youve|its tiny|knee in|knee under|kneel|lower them|pedal|pelvis|roll back|room|see|sigh|sit your|tail and|the belly|the breath|the small|to knee|to your|touching|under shoulder|up a|walk your|warm|wide|your heel|youre hanging|yourself',
      ],
      [
        0.3,
        'a quarter|ahead of|and knee|and wait|apart|arm long|arm to|armpit|at a|away and|baby|back out|back up|be the|been|big toe|blood|blood pressure|both knee|bowl|breathe into|butt|butt back|cat|clench your|clock|crank your|curl the|dodgy|dont flop|dont haul|dont swing|down at|down in|dragged|each turn|elbow flapping|elbow up|eye|far as|fine|fingertip behind|flapping|flatten|fold|get up|give|go down|go heavy|going to|got a|have|heel and|hug|into the|isnt|it isnt|it roll|just the|knee toward|leg long|let go|mat and|neck|need to|nod|not your|of soup|on your|one bone|peel|pressure|puff out|quarter|rib that|see the|shape|shoulder stay|sigh it|slow as|small as|small of|so if|soup|speed|squashing|stay upright|stretch|swing|tail under|tailbone|the long|the mat|there and|theyve|tilt|to side|toe together|tuck|wrist under|yank on|your back|your pelvis|your tail|your waist',
      ],
      [
        0.2,
        'a baby|a bowl|a mouse|a pull|a warm|a wee|about it|after|after it|and itll|and not|and out|and peel|and tip|and walk|arm over|as big|as feel|as its|as long|as treacle|asleep|away along|baby asleep|back doesnt|back spread|back the|belly and|belly drop|bent|blade clear|bone|box|breath be|breathe out|bum goe|butter|cat on|centimetre|change|chin to|clear|clear the|clench|come through|come to|crank|cranky|crept|dangle|dip|do your|doesnt need|doing it|dont clench|dont crank|dont force|dont hang|dont just|dont lock|dont throw|down a|down slower|drop and|elbow are|elbow dont|elbow out|elbow to|em back|every turn|feet apart|feet are|flip|flip over|get heavy|get hurt|glaucoma|go again|half the|hand over|havent|head come|head dangle|heel of|height fine|hollow|hugged|if that|im|imagine there|in tight|in under|in with|instead|isnt a|it and|it from|it give|it go|it is|it low|it slowly|it stay|its just|just hold|knee apart|knee through|lead with|leg go|leg over|let your|like butter|like its|like wet|meant|meant to|mouse|neck up|need|no swinging|nobody|not to|out each|over and|part|peel off|picture|pouring|pressure up|rafter|really|reverse|rib down|rib to|rib toward|ring high|roll backward|roll it|roll your|round your|shoot|shoulder are|shoulder to|side to|sink between|slow out|slower than|soften|speed you|spread out|squash|squashing a|stacked over|start it|stay stacked|stay where|stop at|stop halfway|strain|string|swing the|swinging|that turn|that when|the ball|the belt|the finger|the forehead|the lace|the palm|the rafter|the speed|them in|then change|then come|then press|then roll|they come|through to|throw|till there|tiny|tip from|tip your|tipping|to hip|to land|to look|today|toe down|together at|toward your|treacle|trouble|tuck your|up slow|wait|was|watching|way to|way you|wee|wet|when youre|while the|wrap|yank|yanking|you curl|you fold|you move|you open|you press|you round|your belt|your butt|your chest|your hand|your head|your mouth|your tailbone|youre pouring|youre squashing|youre tipping|youre upside|yourself up|youve blood|youve had',
      ],
      [
        0.1,
        'a clock|a grape|a one|a wall|and head|and stretch|and turn|any sharp|arm and|as far|back between|back into|been out|blow on|came|can keep|corner|curl up|doe it|dont drop|dont fling|dont kick|down there|down your|elbow just|elbow straight|ever|fall out|far knee|farther|feel for|feel that|feel your|fold over|force|gap|go at|go in|grape|hand are|hand back|hand down|hand height|head and|head go|high blood|hip bone|hip that|hip under|in to|its your|just do|knee at|left knee|leg as|leg away|lie on|like it|long in|look up|mat|movement|no rush|on you|one two|or youve|out and|peel your|phone|pressure or|quarter of|roll the|rolled|round you|same way|sat|say|see star|shin and|shoulder blade|shoulder up|sit this|slow in|so the|so your|star|stay put|stop where|stretch the|sunday|than it|the far|the tail|then pull|this out|touch your|touche the|turn the|twice as|under there|up slowly|up your|where the|you came|you finish|you let|you only|you see|you turn|your arm|your eye|yourself down|youve got',
      ],
      [
        -0.1,
        'a fist|a ring|a scarecrow|a straight|a tiny|across the|all the|and a|and back|and breathe|and dont|and lazy|and lift|and no|and put|and sink|and stand|and you|anybody|arch your|around|as high|as if|back like|back over|back sag|backside|before the|below|below the|bend the|bottom|breath|bring the|brush|cheek|chest up|click|closer|coming up|crank it|dead|done|dont go|dont jump|dont lift|dont look|dont poke|dont shove|dont sink|dont slump|dont tip|down like|down till|draw it|drive|dropping|dumb|dumb bell|easy|edge|elbow back|end in|enough|fall|feel the|feet a|feet back|feet under|flat under|foot up|for one|from it|get a|get long|go up|going down|good|hair|hand forward|hand shoulder|heel in|heel to|high as|higher than|hip and|holding|hop|i can|if there|in front|in line|in toward|into it|it a|it down|it pinch|it till|jump up|keep hold|knee out|knee straight|knot|knuckle|land|leg out|leg straight|length|lift your|like youve|line from|little breath|long line|make it|mean|moment|never|next|not high|not in|not on|off your|on a|on to|on top|one arm|one at|one in|one long|out a|out at|out over|out to|out wide|over it|over the|partner|pause|pick|pinned|pointing|poke your|poking|pop|post|press it|press through|proud|pulled|punch|push it|push up|put it|rack|rail|right up|ring up|rise|same|scarecrow|shoe|should feel|shut|side and|sit on|small step|snap|so you|soft knee|sole|somewhere|spot|square|squeeze the|stand on|steady|stirring|stop and|stop when|straight ahead|straight down|straight out|straight up|tall chest|tall on|than your|that all|that back|that it|that leg|the ankle|the armpit|the band|the bell|the big|the calf|the door|the feet|the kneecap|the middle|the pull|the rail|the rib|the toe|them back|them down|then you|those|three second|thumb up|till it|to it|toe|toe up|toward you|tray|tucked a|tug|two|up by|up through|walk the|wall|watch|what|whatever|while you|whole foot|whole way|with the|you can|you could|you should|you stand|you want|your ankle|your backside|your bottom|your collarbone|your feet|your fist|your pocket|your right|your thumb|your toe|youre|youve a|youve gone',
      ],
      [
        -0.2,
        'a banana|a big|a string|a tent|a touch|about|above|ache|against|air|and draw|and stay|arche|arent|arm go|arm up|as wide|back a|back in|back pocket|back toward|bag|ball of|banana|band behind|beat|behind the|big and|big slow|breath out|bring it|bring them|brisk|but|by the|by your|can|car|chair seat|check|chin out|circle|close|come down|crossed|deep|dont arch|dont hold|dont lean|dont pull|dont shrug|dont twist|door|down on|drag your|drift|drop it|each hand|end|everything|facing front|feeling|feet|feet hip|feet on|feet together|fist|five|flat on|force the|forward and|free|from you|front of|gate|get there|go as|go over|goe|going up|gone|ground|grow|hand go|handle|hard|heel up|high|hinge|hip stay|hold|hold it|hot|i|if it|if youre|in as|in between|in each|it all|it come|it goe|it off|it to|it with|knee dont|knee down|knee flop|knee on|knee together|kneecap|lap|leaning|leave your|let them|level with|lift it|lift the|long neck|loop|me|meet|middle|near|not out|not the|off the|off you|one foot|one on|one side|onto|opposite arm|or it|other foot|other hand|out for|out going|out like|over|palm up|past your|pinch|poke|press the|press your|pull the|quiet|resting|rib and|ring to|roll out|round the|round to|shake|shin|short|shoulder width|shove|shrug|slide|slump|somebody|something|sore|spine|stand tall|stand up|start to|stay flat|stick|straight line|straighten|stuck|take a|taking|ten|tent|the air|the bar|the foot|the ground|the hand|the leg|the nose|the other|the outside|the right|the side|the spine|the towel|the wall|the whole|the window|they go|they want|this one|through|to be|to open|to shoulder|to where|top|top knee|top of|touch|towel|twist|underneath|until|up over|up the|weight|weight in|wide as|wider than|width|without|wrist|wrist straight|you feel|you lift|you push|your ear|your hip|your lap|your left|your seat|your spine',
      ],
      [
        -0.3,
        'and down|arch|arm by|away from|back and|big|bit|button|by|calf|ceiling|collarbone|coming|count|cramp|do it|dont roll|drag|draw|elbow under|facing|feel it|first|four|from your|go long|grab|heel down|in a|it|jump|keep breathing|keep your|lean back|leg|little|make|no|no higher|nose|of a|of the|off|on it|opposite|other|outside|over your|palm|push|push your|sag|shoulder and|sideway|slow breath|soft|stay|stay facing|stay level|that|the ceiling|the chair|the front|the thigh|them|there|through the|to one|too|want|want to|window|with your|you go|you pull|youll|your finger|your shoulder|your wrist',
      ],
      [
        -0.4,
        'a|a bit|all|ankle|as it|bell|chair|dont|down and|ear|float|forearm|forward|hand in|heel|higher|if the|in|in your|it in|it up|leg up|level|like youre|lower it|on the|one hand|pocket|reach|right|second|side|squeeze your|tall|the knee|then the|to the|under your|whole|with|you|your side|youre a',
      ],
      [-0.5, 'band|bar|breathing|from|hand on|in the|line|press|quick|still|thumb'],
      [-0.6, 'bend|dont let|foot|front|lift|one|squeeze|straight'],
      [-0.7, 'lean|stand|step'],
    ],
  ],
  [
    'spine-rotation',
    -0.4,
    [
      [1.3, 'turn'],
      [0.9, 'turn your'],
      [0.7, 'follow|to one|your right'],
      [0.6, 'hip stay|over to|pivot|the rib|you turn'],
      [
        0.5,
        'across|arm out|back foot|both|both shoulder|down across|end|far|lean back|one side|rib and|shoulder and|side of|sit tall|sit up|thin|together|turn from|turning|underneath',
      ],
      [
        0.4,
        'and the|and turn|armpit|breathe out|chop|come out|fist|follow the|go as|hand behind|hug|hug the|its your|knee together|know|let both|not just|on each|out each|rib|right arm|right hand|see|slide it|switch on|take your|that foot|that shoulder|the fist|the window|to knee|turn and|underneath you|your head|zing|zing down',
      ],
      [
        0.3,
        'a finger|a t|across you|and over|and youll|are thin|arm up|at each|back first|bone are|both knee|breastbone|breathe into|crank|dont bend|each turn|elbow and|elbow to|elbow toward|every turn|facing|flapping|glued|grow|heel down|hip and|it with|just your|keep both|knee in|knee stay|left|look over|make it|osteoporosis|other|other leg|other way|out a|out every|pad|peel the|puff|rest|rib that|right|round to|sharp|shoulder heavy|spin|stacked|stay facing|step that|switch|t|taller|that turn|the elbow|them drift|then slide|time you|top arm|toward the|tummy switch|up from|waist|wait at|wider|wring|yank|you open|you want|your bone|your left|your neck|your rib',
      ],
      [
        0.2,
        'a bell|a crate|a door|a zing|across to|almost|and carry|and drop|and look|and make|and take|arm under|around|as far|back till|bag|behind your|bent up|bone|both of|breath for|bus|carry|chest to|come from|crank it|cranky|crate|cross your|crossed|crossed on|curl the|cushion under|dont get|dont yank|down slow|each side|ease off|elbow flapping|elbow up|elbow wide|empty|ever|facing front|facing the|facing you|fall|far knee|fat|feet planted|feet wide|find a|fold|foot up|front foot|get under|glued to|go round|go with|gravity|hand at|hang in|head come|his|if one|in and|it again|it doesnt|it isnt|it pass|it round|it to|itll|its all|just the|keep them|lay|leave the|left hand|left knee|little puff|long leg|lower than|night|no lower|on every|on you|one end|one up|open|open the|or itll|other end|other hand|other knee|out the|outside your|over and|paint|palm up|pass|pedal|pillow under|pinch at|planted|press up|puff out|puffing|pull it|push a|reach your|right foot|right side|roll over|scoop|see the|shaking|shape|shoulder cranky|shoulder go|shoulder to|shoving|shoving a|side and|sit with|slide back|slow up|small and|snappy|speed you|stance|start in|stay glued|stay long|stay where|stirring paint|tall first|than a|that doe|that elbow|that thing|the arm|the bag|the breastbone|the chest|the far|the fat|the high|the left|the other|the waist|then drive|there no|they are|they fall|theyll|theyll want|thumb on|tight or|to catch|to hip|to look|to see|to turn|told|told your|tss|under shoulder|until your|up by|up over|want to|washing|waving|where they|window|wringing|wringing out|you to|youll know|your face|your tummy|your waist|youre after|youre shaking|youre shoving',
      ],
      [
        0.1,
        'a lighthouse|a prawn|a shelf|a towel|and do|arm crossed|at about|been|been told|canoe|checking|cushion|doe|doesnt have|dont just|dont lock|door on|drive the|drop them|eye level|far as|get a|go slow|go to|goe long|grow taller|has|has to|haul|head to|hip bone|huff|i mean|isnt a|it and|it land|keep it|knee stacked|leg away|lid|lighthouse|long by|no wider|one breath|one hip|only go|other side|over like|pillow|pop up|prawn|pull yourself|put a|reach out|round with|shelf|shoulder stay|side on|stay stacked|stay up|stirring|that not|the hand|the opposite|the right|the rope|the spine|them over|then change|then turn|turn a|two hand|under it|while the|wind|wind it|your eye|youve all|youve been',
      ],
      [
        -0.1,
        'a time|about a|above|against|ahead|all the|an inch|and come|and down|and keep|and lean|and lift|and lower|and stand|and then|and tip|arch your|arm by|at a|at chest|back heel|back in|back into|back knee|back like|back of|back on|back up|back with|backside|ball of|bar|before you|bench|between|big toe|blow|board|body|both feet|bottom|bounce|box|breathing|butt|by|calf|can|ceiling|chair|chest away|chest height|circle|come|come off|dead|deep|dont arch|dont bounce|dont drop|dont go|dont hold|dont lean|dont look|dont poke|dont shove|dont shrug|dont swing|down into|down like|drop|dumb|dumb bell|easy|edge|elbow back|elbow under|em|eye on|face the|feel the|feel your|feet a|feet on|feet under|finger|flat|flat on|floor|floor away|foot and|foot in|foot on|for two|forward and|from it|from your|front of|full|give|go back|go down|go up|goe out|going up|good|grip|hamstring|hand by|hanging|heavy on|heel and|heel up|hold it|hold your|holding|hurt|if|if you|if your|in on|in one|in the|it like|it up|its a|jaw|jump|knee wide|kneecap|knuckle|lean|lean in|leaning|leg out|leg up|lift|lift your|like the|line|look at|looking|loose|lower it|me|melt|moving|nearly|need|nobody|nothing|of a|of you|of your|or your|out in|over it|over your|pain|palm down|pick|please|poke|post|press it|press the|pull|pull the|pull your|pulling|punch|push off|push the|push your|quick|rack|rail|relax|rib down|ring at|rock|roll back|room|run|sag|set|shirt|shoe|should feel|shoulder width|shove|shrug|sit on|slow breath|so|something|squash|squeeze the|squeeze your|stand on|stand up|steady|step back|step through|straight down|straighten|talking|tell|than your|the ankle|the band|the bar|the bench|the bottom|the ceiling|the cheek|the door|the edge|the floor|the inside|the leg|the mat|the rack|the rail|the toe|the top|the whole|them down|then let|think of|three|three second|through your|tip forward|to a|to come|to your|top of|tray|tuck your|under you|up there|upright|watch|way up|whole|whole foot|wrist straight|you dont|you feel|you pull|your ankle|your bottom|your feet|your foot|your forearm|your shin|your shoe|your side|your tail|your wrist|youre|youre a',
      ],
      [
        -0.2,
        'a|a hand|an|and out|apart|arch|back|back down|back pocket|before|behind you|belly|belt|bend|between your|breath|breathe in|but|chest|chin|collarbone|come back|come up|coming|count|doing|dont roll|dont tip|down to|drag|each hand|forehead|four|front knee|go over|hand and|handle|height|hip width|hold the|in each|inch|inside|is|it home|it in|its only|keep breathing|knee over|lap|leave it|leg|leg long|let go|let it|level|lie|loop|low|mat|nice and|nip|no|not the|of the|off the|on|on to|one arm|or|other foot|other one|out breath|past|past your|press|put it|quicker|quiet|reach|reach one|right ear|short|should|sigh|sink|soft knee|somebody|stand tall|standing|step out|stick|tail|tall|the foot|the ring|the thigh|the wall|the way|there|there a|they go|they want|theyre|thumb|till it|till its|tingle|to get|too|toward your|tuck|under hip|under the|up like|walk|way|when you|without|wrist|you|you can|you come|your bum|your finger|your thigh|your toe|youve a',
      ],
      [
        -0.3,
        'ankle|at|away from|back and|bum|cheek|dont let|down the|forearm|heel|into|into your|little|nice|not|off|on it|on the|one hand|push|second|shin|sore|stand|tall chest|the heel|till|tip|to drop|two|wall|when|width|your|your heel',
      ],
      [
        -0.4,
        'band|big|by your|dont|down|draw|for|front|in|in front|in your|of|one foot|ring|roll|soft|squeeze|straight|up|up to|your hip',
      ],
      [-0.5, 'at the|hold|lower|stop|the|thigh'],
      [-0.6, 'feet|step|toe'],
      [-0.7, 'away'],
      [-0.8, 'forward'],
    ],
  ],
  [
    'squat',
    -0.3,
    [
      [1.3, 'straight down'],
      [1.1, 'sit down'],
      [1, 'hand off'],
      [0.9, 'follow|up through'],
      [0.8, 'and up|feet a|loop|out over|sit|sit back'],
      [0.7, 'knee go'],
      [
        0.6,
        'above your|against|chair|down between|drive up|drop straight|find a|foot follow|if they|knee are|knee out|slide down|step out',
      ],
      [
        0.5,
        'a lift|against the|and jump|bar on|cave|come up|down till|duck|feet shoulder|find|front knee|hip width|lace|like youve|near|nose over|safety|second toe|shoulder width|stance|that should|the toe|then sit|thigh|tucked back|where the|width',
      ],
      [
        0.4,
        'a chair|and hip|are|as your|back flat|back heel|back knee|below|big breath|chest tall|down a|down and|drive|dumb|dumb bell|elbow up|feet back|feet in|foot forward|front foot|hand down|heel stay|hop|if you|in at|in it|in on|it all|knee follow|knee track|lace down|land soft|let them|live|long stance|long stride|low|middle toe|nearly|one at|out at|push the|pushing|roll in|sit straight|squat|stand up|stool|stop a|straight up|tailbone|talk to|tension|than|the wall|the whole|theyre not|through your|toe|toe turned|under your|walk it|with both|you come|your knee|your second|your toe',
      ],
      [
        0.3,
        'a fist|a hand|a pace|a speed|a touch|a wee|about a|above|after|after it|and drive|and not|and stand|arm of|around|as deep|as near|back and|back in|back into|back under|band under|beam|blow|bum at|carpet|chest and|chest to|coming|coming up|crease|deep as|dive|dont rock|dont tip|drop down|dropping|elbow down|fall in|feet|feet out|feet under|feet wide|fist off|floor away|follow your|forward|from you|front like|go where|going down|going out|ground away|have|heel up|hip go|hook|hurt|its there|keep one|knee hurt|kneecap|knock|long band|low as|middle of|of you|one ring|only a|or two|out a|over your|past|pay|pin|plop|press through|press your|pull on|push out|push up|rack|right in|sag when|second|shelf|shoe|shoot|shuffle|sink|sink down|snap|snap your|speed you|stand|stop there|stretched|stride|take three|than a|the carpet|the chair|the last|the work|then up|thigh level|thigh to|three to|till your|to sit|toe go|toe out|toe straight|top of|touch|turned|turned out|two step|walking|want the|way down|wee bit|weight in|when youre|wider|wider than|work|you land|you sit|your heel|your shoe|your teeth|your thigh|your whole',
      ],
      [
        0.2,
        'a few|a good|a high|a kickstand|a kitchen|a long|a low|a penguin|a sack|a time|about to|ache|along the|and down|and face|and hop|and just|and one|and quick|apart|arche|are at|are sore|around your|as low|at a|away like|away to|back a|back an|back than|balance|band|be talking|bell by|bell hang|belly sag|below where|bent up|bigger than|bit wider|blood|blood pressure|blow as|blow out|boat|bottom back|brake on|breath at|but|but dont|can keep|chest at|chest on|comfy|coming back|crease of|deep|deeper|diving|dont dive|dont drag|dont flop|dont plonk|dont plop|dont put|dont want|dont you|down as|down into|down like|down slow|down toward|edge|enough|every other|far enough|feet as|feet hip|feet tucked|floor apart|floor is|flop|fold in|foot a|foot out|for five|for that|forward over|four|friday|front edge|front shin|front thigh|further than|get up|go as|go out|gonna|grinding|hang on|hang out|hauling on|have to|headlight|heel a|heel are|heel dont|heel like|heel tucked|heel under|hip come|hole|hopping|horn|horse|hug the|i dont|if there|if theyll|im|in going|into a|it along|it ping|itll|its just|jump|jump up|jump your|just a|just above|just below|keeping|kickstand|kind|kissing|knee a|knee at|knee height|knee sore|knee straight|knee that|knee travel|knock together|knocking|leading|lean your|leg nearly|lift going|lighthouse|little step|little wider|loop goe|loop round|loop the|lower for|lower than|lowest|meat|medal|medal on|middle|nearly straight|neck bone|no dropping|no holding|no hopping|no lower|off your|other foot|other one|other step|out against|out coming|out every|out the|outside of|pain|pay for|penguin|plonk|poke you|pressure|pulling with|punch|push down|pushing the|putting|quick up|reach your|read|read your|reset|ride|rush the|safety pin|settle|shin straight|shoelace|should be|shuffle forward|shuffle to|side to|sit as|sit between|slow it|slower coming|so you|some|some of|speed|stand in|stay long|stay low|step about|stop where|straight ahead|teeth|tell|tell me|than the|thatll|the good|the hard|the horn|the kneecap|the loop|the meat|the outside|the pad|the rack|the same|the stair|them kiss|them knock|then you|there for|they dont|thigh are|those|three|to each|to just|to level|to side|today|toe face|top like|track|track over|twang|under control|up at|up higher|up together|up you|walk about|what its|where|where your|whoever|wide as|working|you are|you bend|you have|you leave|you like|you till|your arche|your breath|your lowest|your tailbone|youre about|youre looking|youre past|youre pushing|youre putting|youre steady|youre stood|youre up',
      ],
      [
        0.1,
        'a look|a quarter|a race|a small|a stop|about the|about thirty|and breathe|and if|and that|apart with|armpit height|at about|back against|badge|bell in|both side|brake|breathe dont|burn|cave in|caving|chair in|chest a|collapse|dizzy|down again|down slowly|down there|down when|drag the|each other|egg on|end up|even on|feet just|feet wider|few|few inch|flat as|floor with|fold|follow it|foot heavy|foot way|for balance|for one|forward till|going|hand as|hand resting|heal|heel off|heel together|hold on|im not|in line|in slow|in youll|inside the|its up|kiss|kitchen|kitchen chair|leave the|leg only|ligament|line with|lock your|low enough|march|most|most of|no bobbing|no plonking|not having|not to|of three|on its|one behind|one dumb|one in|over toe|pace|ping|plonking|put a|quarter|quarter of|race|resting on|sack|seat and|second down|second on|shade|shallow|show|so far|so its|so youre|spread the|stand and|step to|stood|the table|the time|them out|then reach|then stand|they cave|thigh and|till you|time you|to hear|to stand|toe point|try|under them|weight back|without a|wobbly|you jump|you punch|you stand|your blood|your shoelace|youre tired',
      ],
      [
        -0.1,
        'a straight|a string|achilles|along with|an|and bring|and draw|and lean|and put|and slide|and smooth|and walk|and you|another|arch your|arm by|arm long|as well|at you|back|bang your|bar over|bar stay|beat|behind your|belly|belly button|belt|bend the|block|board|bob up|bone|book on|bottom foot|bottom leg|breathe normal|bring your|brush your|build|bum cheek|butter|buttock|can without|ceiling|chair back|chin tucked|close enough|come over|crank|curl|done|dont force|dont shove|dont shrug|dont stop|dont swing|dont yank|door|down by|down the|down to|either|either side|elbow straight|enough to|exhale|face|fingertip|float|foot off|foot to|give it|go to|goe|got the|grab it|grow|hand at|hand behind|hand in|hand out|hang there|hanging off|heel into|heel just|heel right|hinge|hip height|if the|in for|in one|it down|it home|it like|it pull|it to|it want|jaw|knee together|knuckle|lean a|leg and|leg back|leg every|leg long|leg on|lie|lift up|light on|little bend|little breath|lock|long breath|long neck|long slow|lower your|lunch|machine|make it|melt|mouth|nip|no more|not up|nothing|of one|of two|off a|on|only as|open|operated|opposite arm|other knee|out for|over to|press it|puff out|pull the|quick and|quick step|quicker|quiet feet|rib down|run|sagging|sea|shake|shoulder back|shrug|shut|side|side on|slide|slide the|slide your|slow breath|small quick|smaller|sneaking|sniff|soften|squashing|squeeze and|stare|start to|stay straight|step|step one|step through|step up|stiff|straight line|take a|take it|tall like|tall on|tent|that hip|that leg|the ceiling|the heel|the left|the mat|the opposite|the standing|them back|then the|these|tiny|tipping over|to one|toe pulled|toe together|touching|toward|turn the|twist|under shoulder|under there|underneath|until it|up between|up in|up over|watch the|whatever|while you|wind|wing|with the|wrist straight|yet|you came|youll feel|your body|your cheek|your eye|your finger|your forearm|your low|your shoulder|your tail|your tummy|your waist|youve gone',
      ],
      [
        -0.2,
        'a book|a drawer|able|able to|ahead of|an inch|and drop|and go|and leave|and lift|and lower|and no|and the|any|arm straight|armpit|as high|as long|as they|at it|at me|back from|back start|back together|back up|be|be able|bend both|bend in|bend your|bending|big sigh|big step|blade|both hand|both knee|breath out|breathe into|breathe through|bring them|brisk|by your|came|cheating|chest height|church|circle|coming down|complain|could|cramp|cross|cushion|dead|doe|dont arch|dont hop|dont jump|dont lean|dont like|dont roll|dont sag|draw|drawer|drop it|each breath|ease off|elbow back|enough that|everything|eye|facing the|fast|feel your|feet down|feet like|finger|first|foot flat|for a|for two|forehead|from your|front leg|front of|full|get it|give|grass|hand a|hand and|handle|hang|hanging|has|height|high|higher|higher than|hip dont|hip level|hip up|hip youre|hop off|how|hurry|if it|if your|instead|isnt|it a|it cave|it over|it stop|it there|it up|its a|its your|keep the|kiss the|knee bent|knee come|knee down|knee on|knee soft|knee till|knee to|knee up|land on|land quiet|landing|late for|lazy|leave it|left|let|let it|level like|lift it|lift the|lift your|like|like youre|little|little toe|locked|long in|longer|lot of|low back|lower|lower it|mat|meet|moan|neck|next|no|no further|no higher|no rush|nose if|not a|not out|of the|on each|on the|onto the|opposite|or|or your|other|out breath|out going|out like|out long|out on|pick|pillow|plank|point at|puff|pull your|pulled|push back|put|put it|quick|rhythm|right foot|roll back|rolling out|shorter|shoulder are|shoulder blade|shoulder over|shove your|sigh out|slack out|slow as|somebody|sore knee|squash|squeeze your|stacked|stand with|standing|stay tall|stay where|steady beat|step and|still|straight leg|swing|swinging|tail under|take the|tap|than that|that foot|that heel|that plenty|the air|the ankle|the big|the breath|the elbow|the foot|the grass|the handle|the hip|the lot|the next|the nose|the other|the rib|the slack|the step|the straight|the track|the waist|the weight|them down|them up|then bring|then let|then lower|there no|through that|throw your|till it|till its|till the|tip forward|tipping|to the|tuck your|tug|tummy|turn out|until|up off|up out|use|walk|walk your|watch|way back|way through|way you|we|while|whole foot|with it|wobble|yank|you go|you pull|you think|youll go|your armpit|your bum|your elbow|your face|your hamstring|your neck|your rib|your right|your thumb|your wrist|youre a|youre going|youre late|yourself',
      ],
      [
        -0.3,
        'across|and|and come|ankle|arch|arm are|back at|ball of|bent|between the|big|big toe|body|book|bow|breath|breathe|bring it|bum|catch|chin|come home|do|doesnt|dont|ease|elbow|facing|feet together|flat|forearm|get|gone|grip|hand|hand on|head|heel to|high as|hover|if that|into that|into the|it|its not|just off|knee and|late|leg out|leg straight|let go|let the|lift|line|long as|long step|look|lot|make|off|one knee|one leg|only|onto your|out and|palm|plenty|push through|right|roll out|rolling|sigh|sit up|slow|slower than|stand tall|straighten|string|swap|tail|the ball|the calf|the hand|the knee|the leg|the shoulder|think of|to|too|toward your|towel|turn|up onto|waist|where it|without|youll|your arm|your back|your chest|your ear|your nose|your shin|youve a',
      ],
      [
        -0.4,
        'arm|as a|as it|ball|bring|calf|close|come down|down your|ear|every time|foot on|grab|hamstring|into|it back|it goe|lean in|loose|off the|on your|other leg|pop|push off|quiet|round|short|shoulder|shove|sit tall|soft knee|start|the|think|thumb|toe up|up on|your|your hand|your head',
      ],
      [-0.5, 'by|easy|feet flat|from|from the|heel and|home|onto|pull|roll|tall|wrist'],
      [-0.6, 'back of|bend|long|rib|the back|to your'],
      [-0.7, 'leg|soft|squeeze'],
    ],
  ],
  [
    'standing',
    0.1,
    [
      [1.5, 'stand'],
      [1.1, 'soft knee|step'],
      [1, 'lean'],
      [0.9, 'feet under'],
      [0.8, 'feet a|finish|from it|knee soft|rail|straight down'],
      [0.7, 'back foot|band|hand on|hard|heel to|land|other foot|push off|side on|soft|stand tall|the door'],
      [
        0.6,
        'and stand|bar on|bell in|both hand|bum on|chin out|collarbone|elbow pinned|feet apart|find a|flat on|knee point|outside|post|pull it|shoulder height|sideway|sit down|slide down|stick|straight out|the rail|the wall|twist|up through|walk|way to|whole foot',
      ],
      [
        0.5,
        'a chair|a good|anchor|arm are|arm out|as your|back and|bell|bell at|brush|but|chest height|desk|elbow bent|elbow skim|foot|grumpy|hand at|hand flat|head through|height|just outside|metre|one up|other leg|pair|past your|pole|press it|quick|same|stand up|stay down|take a|the ankle|the band|the collarbone|the outside|the worktop|the wrist|thigh level|up on|wall|worktop|your head',
      ],
      [
        0.4,
        'a drawer|a shoe|achilles|across|against|and bring|and float|and head|and if|and jump|and lazy|arch your|as it|at chest|at shoulder|at your|back against|back heel|banana|bend|big|big breath|bounce it|buddy|build|car|cave|chest away|come up|da|dive|dont lean|dont lock|dont tip|dont twist|door|down by|down under|drawer|drawer with|elbow up|facing the|find|finger tingle|front knee|go a|good|hand off|hand to|heel|hold a|into a|into it|it at|it open|it out|it up|its sore|jog|keep breathing|keep hold|like youre|long again|loop|middle toe|one hand|other hand|out at|out over|overhead|pass|rhythm|right up|roll them|run|sag when|shake|skim your|snap|some|spot|standing|standing leg|step out|step through|tall on|the desk|the far|the neck|the paint|the pull|the rack|the room|the shoulder|the standing|the window|to your|tree|turned|turning|walk back|way up|with it|you pull|youll feel|your achilles|your ankle|your forehead|your rib|your thigh|your toe|your whole|youre closing',
      ],
      [
        0.3,
        'a hamstring|a hot|a ring|a slow|against it|an ironing|and breathe|and not|and put|and sort|and up|and youll|argument|arm length|back as|back down|back nip|back there|ball of|band in|bang|bar|beat|bell hang|belly button|belt|bicep|big and|bit below|blade like|bob|brace|bring it|by side|by the|catch|chest up|click|cold|comfy|control it|da dum|dangle|dive in|doing|dont arch|dont bob|dont curl|dont let|dont look|dont shove|dont shrug|down again|drive|drop it|dum|ease it|easy breathing|elbow by|elbow close|end|every|eye up|face away|face the|facing|feel it|feet forward|feet hip|fingertip on|foot and|foot down|foot off|foot on|front like|gate|go past|going in|goose|hand are|hand finish|hand go|hand just|hand loose|heel dug|heel heavy|heel stay|hinge|hip back|hip width|hold|hold of|hold your|hop|hot|how|if they|if your|imagine youre|in on|in that|into that|isnt|it all|it back|it bite|it close|it dive|it fall|it hurt|it in|it land|it like|it off|it sit|it straight|itll|itll have|its comfy|its in|its up|keep it|kind of|kiss|kissing|knee and|knee as|knee go|knuckle|land on|land soft|landing|lead|lean away|lean till|leg to|length away|level with|lid|light|like the|like there|little toe|live|long neck|long slow|looking at|loose|lower it|make fist|mirror|neck long|nippy|nose over|nose to|not an|of them|of you|on both|on top|one heel|one of|open|other end|out till|out when|out wide|outside your|pair of|past|pause at|pick|plank of|press on|properly|pull the|put one|put them|rack|rib pop|ring to|running|rush the|second on|shake them|shoe length|short step|shoulder dont|shrug it|shrugging|side by|sink down|skim|slide them|slow on|something that|stance|stand on|stay long|stay straight|stick your|stool|stop and|straight back|straight up|straighten that|string|sway|take it|tall|thatll|the arm|the bell|the blade|the car|the forearm|the next|the pole|the rhythm|the stick|them down|then sit|then stand|third|three|thumb|thumb pointing|thumb up|till its|tip from|tip over|to lower|toe|toe out|too heavy|track|tucked back|turn round|underneath you|up as|up past|waiting|walk the|walk to|way home|weight in|went up|what its|when your|width|with the|wobble|wrap the|yet|you come|you have|you land|your belt|your big|your ear|youre in|youre landing',
      ],
      [
        0.2,
        'a banana|a big|a cat|a gate|a half|a pencil|a post|a scarecrow|a spot|a stretch|a string|a walnut|about pushing|against the|and lean|and let|and lower|and slide|and still|and wait|and you|ankle dont|anywhere|apart|are only|are poking|are the|arm at|arm go|arm of|arm stay|arm swing|as an|as much|as theyll|at|at eye|at half|at one|back a|back behind|back like|back off|back with|bag|band under|behind|being|belly height|belly in|below|bend the|bend your|bent a|big as|big step|bit bent|bite at|bladder|blow out|board|body stay|bottom back|bottom out|bounce|bounce them|bouncy|bow|brake|break|breathe down|breathe however|bring|bring the|but not|button|can go|care|carrying|cat|catch it|cave in|ceiling and|chair and|chair back|change|cheek of|chest over|chin in|chin up|click and|close together|closing|closing a|come in|control|could|crank it|crisp|curl it|curl them|curtain|deer|did|didnt|dig|dinner plate|disc go|dont|dont bounce|dont lead|dont like|dont plop|dont press|dont reach|dont stop|down a|down like|down quiet|down slower|down the|drive up|dropped|dug|dug in|each one|each time|earring|egg|either side|elbow|elbow brush|elbow glued|elbow high|elbow just|elbow lower|empty|every one|exhale on|exit|eye on|facing forward|fall in|far down|far enough|far side|fast|feet|feet together|fence|fetch|fetch it|finish it|fist|fist or|flat at|flat back|flat under|flick|fold|foot behind|foot come|foot length|foot only|for you|forearm up|forward|from the|front foot|front till|gentle|gently|get out|get to|get your|go of|go overhead|go the|go where|goe behind|goe over|going|going back|ground|ground away|grow up|grumbling|had it|hair|hand back|have your|head dangle|head forward|headlight|heaving|heel a|heel up|heel will|high and|hinge over|hip square|hiss it|hold it|hold on|hover|however|i|i dont|i mean|if there|in as|in between|in going|in it|in like|in there|in youll|inward|ironing|ironing board|isnt moving|it|it a|it across|it bent|it between|it if|it into|it only|it pass|it round|it till|it touche|its between|its gone|its there|its tight|its too|jerking|jump your|jumper|just below|keep|keep that|keep walking|keep your|kerb|kind|knee a|knee arent|knee goe|knee or|knee that|knock together|knot|knuckle by|last one|lean back|lean from|lean into|left hand|leg and|leg behind|leg forward|length|let off|let yourself|like youve|limbo|little hop|lock it|long from|long spine|look down|lower|lower slow|manner|mast|me|measuring|meat|mind|mind the|mind your|mouth|move the|movement|much as|nailed|nearly straight|neck bone|next one|nine|no jerking|no wider|nose|not|not at|not down|not going|not too|of wood|off one|off you|on a|on one|on to|one foot|one ring|one spot|open like|open to|opposite arm|or leave|or two|or youll|out onto|out sideway|out slow|out up|over like|over till|over your|palm|palm forward|palm up|park it|pass your|pause|pencil|percent|pinch at|pinky|pivot|plant|plop|point|point at|pointing back|pond|ponytail|pop out|pretend there|pull till|push down|putting|quick but|reaching|relax your|rep|rib out|rib tucked|ride|ride up|right there|roll in|roll off|roll up|room|rope|round it|rounding|run tall|safety|scarecrow|sea|seam|second|second back|second toe|set|settle before|sharp|shin or|shopping|short|shorten it|shoulder back|shove|shove it|show|show me|shrug|side and|sideway to|sigh|sing|sit back|sit between|sit into|sit your|skiing|slack|slide up|something|spot on|stair|stand in|stand with|standing knee|stay low|stay quiet|stay still|stay there|stay upright|steady|step it|stomp|stood|stop|stop a|stop halfway|stop when|string out|swap your|swinging|take|talking|tall as|tape|than|than it|than you|that chair|that doesnt|that foot|that how|that isnt|that leg|that standing|that what|the brick|the end|the fence|the ground|the kerb|the little|the meat|the mirror|the mouth|the post|the rope|the second|the tree|the tummy|them straight|then up|then walk|thigh and|thirty|this|three count|through at|through it|tingle|to finish|to head|to it|to put|to round|toe forward|toe go|toe of|toe point|toe turned|touch your|touche your|touching your|trouser|tucked under|turn and|turn around|turn away|turn out|turned out|two|two step|under your|unhurried|up onto|up slow|up the|up to|up with|up you|upright|walked|walking|walnut between|want the|watch|water skiing|weight|weight hanging|what|when it|where youre|whole|wide as|wider than|with that|within|without the|work|wrist flat|wrist straight|yanking|you are|you did|you do|you get|you rise|you set|you sit|you touch|youd|your arche|your armpit|your bladder|your bottom|your hair|your little|your own|your trouser|youre carrying|youre doing|youre going|youre holding|youre one|youre shaking|youre standing|youre waiting|youve|youve a|youve had',
      ],
      [
        0.1,
        'a beat|a book|a car|a dinner|a leg|a look|a metre|a prawn|a step|a wardrobe|a zip|about as|about belly|air in|allowed|an|and drive|and ease|and finish|and hop|and in|and push|are nearly|are straight|arent locked|arm hanging|arrive|as|as near|as wide|at belt|at each|at something|away behind|back|back dip|back flat|back over|back under|band out|band touche|bar to|bell by|below your|belt height|biscuit|bit wider|blade down|blade in|both hip|bottle|breath at|brick|bug|bum at|bum back|bum cheek|calf|can stay|car door|catch or|check the|cheek to|chin to|clap|coming up|cone|count it|crossing|crown|crown of|dance|dont care|dont do|dont fold|dont plonk|dont rush|dont slam|dont stamp|dont stand|dont stick|door and|door with|down as|down at|down dont|down slow|down underneath|drag|drag your|drive the|drop down|duck|dumb|dumb bell|effort|elbow level|end up|every rep|exhale up|eye level|face|feet as|feet behind|feet shoulder|finish at|finish with|folding|foot at|foot back|for balance|force it|forearm on|forward and|free|further than|giddy|glaucoma|go lighter|go out|going anywhere|good foot|had|half way|hammer|hand as|hand down|hand round|hand straight|hang in|hang there|hard as|hardly|hat|hedge|heel kiss|here|hike it|hill|hip go|hip that|his|hook|horn|how you|hum|if|if i|im|in breath|inhale|inside the|is too|isnt a|it again|it apart|it float|it gently|it hang|it help|it leave|it wander|it went|its only|jerk it|jump|jumping|just past|just under|kitchen|knee no|knock|knocking|knocking together|lace down|lean your|leg soft|leg that|leg throw|leg youre|like headlight|like you|line up|little step|lock the|long back|long line|longer than|look|look for|look up|low and|lunch|make you|march|metre in|miss|most|most of|narrow|near|nearest|nearly flat|neck go|next|no yanking|not up|of a|of like|on it|on me|on that|on there|on this|one|one dumb|only a|onto|out all|out and|out as|out coming|out from|outside leg|outside the|pace you|paint|palm down|parked|pause a|pay|pick it|pick the|pinch a|plonk|pocket|point where|pound|prawn|pull|pull them|pulling your|push a|pushing a|put|quick off|quick step|quicker|quiet|reach like|reach one|reach out|reach the|reach your|reset|rib flare|right through|right where|round like|round your|rubber|same side|same way|see them|shaking|shoot|shove off|showing|sink into|sit as|slam|slant|slap|sliding|small step|smooth|snap it|snappy|somebody|sore|spin|squat|stage|stamp|stand right|stand side|stand still|standing hip|stare|stare at|stay|step away|step forward|step into|stick down|stick out|sticking|sticky bit|stiff as|stop dead|straight but|straight leg|stride|string pulling|swing the|taking it|tall like|that down|the big|the calf|the cheek|the clock|the hill|the horn|the lace|the loop|the same|the slack|the stair|the string|the table|the waist|their|then heel|there till|there to|these cold|thigh are|through|through and|through that|throw|throw it|throw the|thumb back|till it|tip|tipped|to drop|to just|to look|to sit|to stand|to toe|toe and|toe straight|trailing|travel|tug|tug before|twang|twist open|under a|under you|until you|up behind|up for|up higher|walk about|wardrobe|water|way as|way back|weight over|when|when you|where you|while youre|wider|will do|with no|wobbling|wrist complain|yank the|you a|you at|you bow|you could|you in|you sink|you skip|you stand|you step|your body|your bum|your feet|your middle|youre drawing|youre showing|youre shutting|youre stood|yourself away',
      ],
      [
        -0.1,
        'a balloon|a canoe|a flat|a heavy|a like|a long|a mug|a one|a pint|a plate|a ruler|a seat|a small|a straight|a tug|about it|above the|ache|alway|an angle|and face|and itll|and leave|and needle|and no|and out|and quiet|and send|and shove|and start|and stretch|and that|and youre|another one|any|arch to|are bending|are creeping|are level|are sore|arm locked|as far|as itll|at an|away again|back hip|back one|back pocket|back youre|balloon|bar over|bare|be a|behind your|between them|bin|blade|blade at|body in|both way|bottom knee|bottom one|breath into|breath while|bump|buttock|canoe|cant get|caving|chair in|check it|chest and|chest on|chin level|clear the|clench|collar|come from|come lower|come round|coming for|couple|crane|crank|crank your|creeping up|cross with|cushion between|dangling|deep in|dinner|do it|do your|doe|dont bang|dont be|dont clench|dont come|dont crane|dont crank|dont hike|dont hurry|dont need|dont sag|dont sink|down into|down off|draw your|drawn|drift out|droop|drop them|drop to|each armpit|each breath|easy on|elbow are|elbow halfway|elbow out|end of|exhale when|eye a|farther|feet to|feet up|finger|fingertip|five degree|fling it|float|floor away|flopping|floppy|fogging|fold the|folded towel|force|forehead down|forward till|from knee|front half|front thigh|get down|get them|glass|glued|go away|go over|goe first|goe in|gossip|gravity|groin|hand away|hand by|hand come|hand height|hand stay|hang over|have|have to|heavy drawer|heel together|heel toward|hip are|hip forward|hip roll|hitch|hitching|hug the|in for|in late|inside|inside of|is a|is where|it be|it get|it isnt|it lift|it shouldnt|it slide|it slowly|it start|its round|its still|jammed|just ahead|just as|just behind|just to|just your|keep one|knee only|know shoulder|leave it|leave these|left arm|leg back|leg nearly|less|let your|letting go|lift only|lift them|like two|little breath|lock out|long sigh|look round|looking for|loud|low in|lower till|lowering|make the|mat under|mat with|mine|moan at|moment|mud|mud off|mug|muscle above|name|neck|needle|nip|nip at|nip in|no hurry|no rolling|not all|not back|not flared|not jammed|of inch|of what|okay|on each|one breath|one line|one straight|one that|onto your|osteoporosis|other way|over hip|pant|parade|peel off|picture|pin and|pint|pint on|please|pop it|press back|press through|pressure|pump|punch|reach|reach down|reverse|rib at|right back|right down|right foot|ring up|rock|roll onto|roll the|roll to|rolled towel|round to|rub|ruler|ruler length|sagging|sagging in|see|see you|sentence|settle|shin no|shin straight|short of|shorten|should feel|shoulder are|shoulder on|shoulder sore|shoulder to|side to|sink between|six|sixty|skip it|sleeping baby|slipper|slow back|slow it|sneaking in|sniff in|sock|sock on|somebody about|squashing|stab|start at|started|stay pointing|stay put|stay till|straight at|straighten|straighten the|strength|strong|stuck down|tall first|tell me|telly|than up|that move|that too|the armpit|the breath|the catch|the crease|the cushion|the eye|the groin|the in|the light|the rest|the rib|the side|the telly|the towel|them drift|then come|then float|then roll|they want|theyve|thigh first|thread|throw your|tickle|tighten the|time going|to cheat|to lean|to let|to poke|toe to|toe tucked|together like|too high|top foot|up over|up so|up when|wake up|wandering|way out|way through|where its|while its|with control|would|you curl|you lifted|you own|you squeeze|you think|youll go|your cheek|your eye|your fist|your name|your strength|youre a|youre late|youre like',
      ],
      [
        -0.2,
        'a bad|a bell|a breath|a chicken|a cup|a cushion|a dog|a door|a fist|a giraffe|a hammock|a hip|a hook|a kickstand|a lighthouse|a mouse|a nerve|a pedal|a pillow|a pull|a rainbow|a right|a saucer|a sewing|a tea|a time|a wee|a wet|about forty|about half|after it|and away|and down|and fold|and hang|and knee|and press|and roll|and shake|and take|and tell|and when|another|arche up|arm|arm dont|arm down|arm over|arm straight|arm to|around the|as treacle|asking|back along|back now|back onto|back toward|backrest|band around|bath|be the|been|been told|belt buckle|bending|bent up|big sigh|bit lower|blade on|boat|bone at|both cheek|both knee|bottom leg|bottom of|bounce your|box under|breathe at|breathe into|breathe normally|brisk|bum|bum up|butt|came|can see|chest at|chest between|chest come|chest goe|chest proud|chest with|church|clench your|close enough|close to|coat|come back|coming down|concrete|cooling|count of|couple of|cross it|cross your|cup of|curl the|curl your|cushion under|daylight under|dead stop|dead straight|deeper|direction|doing it|done|dont flap|dont fling|dont force|dont have|dont hitch|dont lift|dont pull|dont slump|down between|down in|down straight|down till|down until|draw the|drive your|each other|each turn|ease|ease off|elbow into|elbow soft|elbow toward|elbow tucked|elbow wide|em out|em up|end in|every turn|everything|eye go|eye out|faster|feel for|feel the|feet are|feet away|feet first|feet go|feet off|feet stacked|fill up|find the|finger wide|fingertip behind|fire door|fish|flap|flapping|flared|fling|flip over|float your|floor and|floor in|foot goe|for a|for six|forearm and|forward at|forward from|giraffe|go as|go slow|go so|go soft|go with|goe down|goe up|going out|gone too|grinding|half|half of|hammock|hamstring|hamstring cramp|hand over|hang on|has|haul on|have a|head down|head stay|heavy as|heel as|heel in|heel on|held|help|hip bone|hip is|hip level|hip till|hold for|honey|hug|hurry|hurt|i can|ice|if one|if somebody|if that|if theyre|ill|in by|in tight|in youre|it and|it arche|it doesnt|it grab|it is|it let|it melt|it ping|it right|it should|it slower|it so|its an|its on|its own|its snug|jar|just reach|keep both|kickstand|knee at|knee dont|knee flop|knee in|knee like|knee on|knee up|kneecap|late for|left knee|leg down|leg goe|leg over|leg straight|let a|let em|lie down|lift from|lighthouse|lightly|like an|little one|little quick|little sip|long arm|long at|long leg|long way|longer|look a|lower one|lower them|lower your|make a|middle like|minute|mouse|near enough|nearer|never|no higher|no prize|no rocking|normally|nose and|not your|of both|of five|off a|off and|off that|off with|on every|one and|one bone|one elbow|one on|only|only till|open the|operated leg|opposite foot|ordinary|out breath|out for|out going|out loud|out through|pad on|paying|peel your|picture a|piece|pillow between|pillow under|pinch your|ping|planted|pointed|poking|poking forward|pool|pop up|press the|press till|pressing|pressure up|pretend|pull in|pull on|pull up|punch it|push up|quieter|quit|rainbow|reach as|ready|resting|resting on|rib heavy|rib that|right angle|right ear|right hand|right knee|right round|right under|ring a|ring brush|ring high|ring like|roll backward|roll on|rolled|round up|row|sag|same speed|saucer|say stop|second down|see if|send|set the|sewing|sewing machine|shape|shin and|shin level|shoulder and|shoulder away|shoulder blade|shoulder catch|shoulder heavy|shoulder up|side that|sink|sinking|sip|skim the|sleeping|slide it|slide one|slide out|slow and|slow out|slowly|slump|small breath|sneaking|so drop|so go|so its|so youre|soup on|squeeze everything|squeeze like|squeezing|start in|stay glued|stay heavy|stay out|stay up|still as|stirring paint|stop just|straight arm|straight like|straighten one|strap in|stuck|sunday|swimming|swimming pool|swing your|switch|tall through|tap|tea on|teeth|tell|that bottom|that doe|that just|the air|the back|the backrest|the backside|the body|the buttock|the carpet|the concrete|the dumb|the ear|the finger|the fist|the forehead|the hold|the inside|the length|the low|the opposite|the palm|the shin|the slow|the spine|the strap|the tail|the thumb|the toe|the weight|the wood|then go|then just|then push|there and|thumb out|thumb round|thumb wrapped|tidy|tight and|till there|tin in|to ache|to be|to do|to face|to hear|toe away|toe pointed|toe stay|together and|told|told your|top hand|top knee|top rib|touche the|towel under|trust it|tummy|two second|under hip|until the|until your|up a|up at|up before|up from|up like|up round|up tall|use|waist|wait there|wall behind|washing|wave|way round|way you|whatever|where youll|wherever|while|whole leg|wing|without|wrapped|wrist|wrist or|you breathe|you came|you lock|you open|you put|you walk|your belly|your butt|your collar|your hamstring|your mouth|your tailbone|your watch|youre breathing|youre cooling|youre done|youre opening|youre sneaking|youre stopping|youre straight|youre upside|yourself up|youve been|youve blood',
      ],
      [
        -0.3,
        'a boat|a coat|a foot|a sharp|a shoulder|a t|a table|a tent|a tray|about two|already|an arrow|and all|and cross|and draw|and heel|and just|and make|and shoulder|and sink|and swing|and tip|and turn|angle|ankle over|anybody with|are thin|are up|arm flat|around|arrow|as the|at a|away and|away with|back come|back on|bad shoulder|bar like|belly|belly of|bench away|beside|beside you|big slow|block|blood|blow it|bone are|boss|both leg|both side|box underneath|breath in|breathe out|bridge|bring them|buckle|bum down|butter|can stand|cant|chest a|chicken|clear|close|come down|come straight|complain|cramp|crate|creeping|cross|cup|degree|do not|dog|dont hang|dont kick|dont move|draw them|drift forward|each side|ear|elbow a|elbow in|elbow to|eye under|feel a|feet find|feet stay|finished|flaring|flop|foot flat|foot forward|for four|for it|for nick|forearm down|forehead|four|get a|get long|go forward|go heavy|go on|good knee|grow tall|hand a|hang|hang like|head and|hear it|heel and|height and|high enough|higher|higher than|hip dont|hip youre|if a|if its|if youve|in and|in to|into|it away|it for|it go|it goe|it nip|it still|its your|just wider|kicking|knee an|knee to|knee under|knee wide|kneel on|last|lean forward|leg|leg away|leg in|leg on|leg still|leg together|let each|let go|letting|line|line from|lower the|make yourself|mate|more|muscle|new hip|next to|no kicking|no more|no sagging|nobody drop|nothing to|off it|one hip|one knee|one leg|one piece|one two|only as|onto the|opening|or a|other arm|out again|out front|out like|out of|over on|over to|peel|pelvis|pinch|pocket and|point behind|press down|prize|pull not|push it|push on|put a|rib|rib down|right|ring stay|roll back|roof|round the|round with|saddle|sat tall|scoot|see your|set them|shin|shoulder pinch|shove the|shuffle|sit bone|sit right|sit there|slip|slip off|slow as|snug|so the|sole|sore leg|splay|spread|squash the|squeeze your|stand at|stay close|straight as|straight over|stroke|switch on|t|tap the|thank|thank you|that a|that all|that elbow|the arch|the belly|the boss|the breastbone|the elbow|the face|the head|the left|the muscle|the nose|the operated|the push|the roof|the thigh|then lift|then lower|then press|there is|they drop|thigh stay|thin|think of|tight to|time you|tin|tip backward|to help|to knee|to where|toe on|toe pulled|toe together|together|too far|top leg|tray|trouble|tuck|tuck your|tucked in|tummy switch|turn a|turn from|two down|until|up in|up one|up toward|walk your|weight on|while you|width apart|with you|wrist are|yank|yank on|you before|you finish|you push|you turn|your back|your bone|your breastbone|your dinner|your neck|your pocket|your shoulder|your tail|your wrist|youre after|youre finished|youve gone',
      ],
      [
        -0.4,
        'a hand|about a|ahead of|air|along the|an ankle|and a|and call|and feet|and look|and pull|and the|away|away along|back past|back through|backward|between the|call|ceiling|chest down|chest to|come forward|come off|come over|dont drop|dont jump|down away|down on|draw|elbow dont|elbow go|enough that|ever|fill|first and|fist off|foot go|for two|for your|forward again|from you|get there|go to|go up|hand and|hand behind|head back|heavy|heel away|heel close|hip stay|hip up|hip with|in your|into the|into your|it over|its that|just let|just the|keep the|knee just|kneel|lap|left|lie on|lift one|lift the|lifting|long|long and|make|new|not just|once|other knee|out straight|part|ping off|press|pull your|rib and|ring|ring down|roll|roll your|round both|shin up|shoulder|sigh it|sit|slide the|slide your|slower coming|small as|so|so your|soup|squash|stacked|start from|stop at|straight line|strap|stretch|tea|tent|that plenty|that you|the ceiling|the edge|the heel|the leg|the lift|the pelvis|the plate|the ring|then let|then pull|then you|they go|those|through your|to feel|to one|toe up|toward|tray of|turn the|under|up off|want it|wee|wrist hurt|you reach|you stop|your face|your palm|your thumb|your top|your tummy',
      ],
      [
        -0.5,
        'a mat|back up|band round|breastbone|by your|come out|drift|drop off|elbow back|elbow point|eyebrow|feet down|feet wide|flat|foot out|from your|get up|hip height|in through|in toward|it slip|joint|just a|knee over|long as|low|melt|opposite|or|point back|push the|sat|sit on|slide|stay stuck|step off|the crate|the hand|then the|till the|toward your|you lift|your chest|your elbow|your right|your side|your waist|yourself',
      ],
      [
        -0.6,
        'and come|and foot|at hip|bench|bone|chin over|cushion|five|kick|knee down|lift your|long by|low back|nothing|rest|step up|tail|tail and|the bench|the hip|the pad|towel|under shoulder|your hand|your lap|your low|youre not',
      ],
      [
        -0.7,
        'and lift|as they|be|bent|elbow under|feeling|leg long|lift|not out|now|on your|opposite hand|out long|pedal|pillow|press up|the box|your knee',
      ],
      [-0.8, 'box|hand under|lie|still|the mat|the seat|under the'],
      [-0.9, 'hand in|knee bent|seat'],
      [-1, 'bit in|feet flat|leg up|mat|pad|sit tall'],
      [-1.1, 'leg out'],
      [-1.2, 'sit up'],
    ],
  ],
  [
    'step',
    -0.4,
    [
      [1.1, 'step'],
      [1, 'push off'],
      [0.9, 'step out|whole foot'],
      [0.8, 'loop'],
      [0.7, 'front heel|heel and|the side|the step'],
      [0.6, 'foot on|front leg|off the|stand up|step one|through that|whole'],
      [
        0.5,
        'back knee|bottom foot|bring the|home|on hip|push through|side of|sideway|stay low|step back|tall at|the back',
      ],
      [
        0.4,
        'and step|anywhere|back and|back foot|back up|big step|bob|dig|dont look|dont push|down first|every|feet together|floor foot|foot and|foot follow|heel out|hold on|hover|inward|keep your|knee stay|knee till|lean a|leg on|like youve|long step|look down|on to|other foot|point|push|rock|rope|shorter|stand side|steady|take it|that heel|the grass|together|up your|upright|wide|your feet|your time',
      ],
      [
        0.3,
        'a ladder|a low|a scarecrow|above|above your|and bring|and stand|bit bent|body|butt|change|cheating|click|control|dive|dont hop|dont rock|dont wobble|down soft|down with|drag|drop the|feet hip|feet wide|follow|grass|hold of|hop off|in as|it cave|it want|join it|just above|kiss the|knee come|knee goe|knee point|ladder|leave it|light|loop round|next|next one|off and|one to|other leg|out to|out wide|point forward|right up|scarecrow|second toe|shift|shoe|side|side on|small step|stand|stand right|stay straight|step forward|swap|tap|tap your|that foot|that knee|that should|that up|the lace|the loop|the next|the road|the second|then lower|to come|weight on|wobble|you come|you sink|you step|your thigh',
      ],
      [
        0.2,
        'a hair|a penguin|a shoe|a thumb|along|along the|alway|and all|and close|and come|and drop|and go|and leave|and slide|and steady|arm swing|as its|as quick|as well|baby|back down|back off|be talking|bell at|boat|bobbing|breath while|breathe dont|breathe with|bring|buckle|buttock|carrying a|catch|cave|cheek of|chest up|click together|closer|come home|come up|comfy|cross|cross in|dive in|do the|dont cross|dont drag|dont haul|dont step|down a|down toward|drive through|duck|either|either side|every time|face the|fall in|feel that|feel the|feel your|feet come|fetch|fetch it|folding|follow it|front buttock|go down|goe over|going up|grumble|guy|hair|hand out|hanging off|has to|haul|haul on|heel as|heel just|hold them|horse|in that|into that|it fall|it get|it home|it if|it only|it round|it there|its comfy|its just|its up|join|keep a|keep it|keeping|kind|kind of|knee hover|knee that|knee with|kneecap|lean in|little loop|long spine|looking over|loop stay|lower down|middle of|no rush|no wider|normal|off it|on that|or two|other|out against|out going|outside of|pain|pay|pelvis|penguin|push back|put that|race|road|rock your|room|room for|round your|rug|rush|rush on|same leg|shouldnt|shove off|slam|sliding|slipper|slow down|softly|sore knee|stay in|step about|step and|step down|step that|stomp|straight ahead|stretched|sway|take a|talking|that cheating|that the|the block|the other|the pole|the rope|the speed|the work|this one|time on|to catch|to dive|to hold|to just|to lower|to touch|toe up|touch the|twang|under a|under control|up again|use|use the|wander|wander in|watch the|while you|with the|wobbling|you on|you rise|you stand|you swap|you think|you to|youll be|your lace|your pelvis|your seat|your shoe|your shoelace|your slipper|your weight|youre sneaking|youre under|yourself up',
      ],
      [
        0.1,
        'a bath|a boat|a knee|a sharp|about the|after it|all of|an inch|and change|ankle on|as wide|back an|back leg|bath|because a|bit forward|bottom leg|brake|change leg|count to|cut|dive inward|dont land|down quiet|every other|eye up|floor with|flop|flop out|fold over|foot behind|foot straight|foot to|for you|hair forward|half way|hand together|has|in line|inch off|it flop|it short|it wander|its sore|just kiss|knee a|knee stop|lace|lean on|leg and|leg back|leg every|leg first|let you|line with|long and|no bobbing|not just|not on|one heel|or you|other one|other step|pinch at|point at|push out|put one|quiet feet|rail|rhythm|ring are|shoelace|short and|shove|show|show me|sit into|slam the|slip|slip off|snap|sneaking|stand with|starting|starting a|stay level|stay tall|stay up|step up|stop an|straight leg|take four|tension|than that|that leg|the box|the kneecap|the one|the straight|tightrope|tile|to join|top leg|two rail|up tall|up taller|up with|walking|with me|wobbling in|your body|youre pushing|youve just',
      ],
      [
        -0.1,
        'a clock|a straight|a time|a wall|and its|and lean|and let|and one|and stop|and your|apart|arent|arm out|armpit|back flat|back in|back stay|back till|back under|bag|band under|bathroom|belly button|bend your|between the|between your|blade|bone|both feet|bottom of|breastbone|breath on|breathe in|bring your|button|by|by your|can keep|chair back|cramp|dead|deep|dont bend|dont bounce|dont lock|dont sit|dont swing|dont want|down in|down till|drop straight|easy|elbow back|end|face forward|facing front|feet flat|fine|foot just|for one|for three|for two|forearm|forehead|forward and|from it|from your|front of|gently|go forward|go till|grow|half|hamstring|hand behind|hand in|hand under|hang there|have|heel hanging|heel off|hip under|holding|hook|if that|if they|if your|im|in it|in through|instead|into the|it go|it is|it like|its a|its sharp|knee and|knee bent|knee nearly|knee wide|knuckle|last|lazy|leg long|let that|lie|lift it|lift your|like a|locked|long|long band|long breath|long neck|long stance|nearly|need|new|no bouncing|nobody|not high|not up|nothing|off your|on one|one ring|one up|only a|or|out a|out and|out behind|out breath|outside leg|over a|palm|past your|pick it|plate|pointing at|press the|pretend|puff out|pull|pull the|put the|roll out|sag|second down|see|shaft|shirt|short step|shoulder blade|shoulder down|shoving|sink|sip|sit tall|sit up|smaller|sort|sort of|squash|squeeze the|squeeze your|stay there|sticking|stiff|still|stood|stop at|straight out|tailbone|take the|that you|the belly|the big|the breath|the chest|the elbow|the hand|the last|the post|the rib|the ring|the shoulder|the top|the worktop|them down|they come|they stay|theyre|thigh level|those|through and|tick|till|till it|till your|tip|tip your|tiptoe|to where|top of|touching|tuck your|turn the|turn your|twisting|under the|underneath|until|up a|up as|up behind|up over|wait|way back|when|will|wing|with one|worktop|yank|you can|you feel|you finished|you like|you not|you pull|you stop|your achilles|your bottom|your ear|your eye|your low|your neck|your rib|your shin|your shoulder|your tail|your tummy|your wrist|youre a|youve gone',
      ],
      [
        -0.2,
        'a big|a couple|a kickstand|a little|a step|a tiny|a wee|able|able to|about|above it|achilles|all the|and down|and if|and land|anything|are|as high|as if|as they|at it|away from|back heel|back onto|back pocket|back to|backside|be able|belly|bend|between|blow|blow out|board|book|book on|both hand|both hip|bounce|breathe into|breathe through|brisk|chest|clear|complain|cup|curl|doe it|dont arch|dont go|dont reach|dont throw|door|down between|dragging|draw|drive the|ear|ease|elbow tucked|enough|enough to|everybody|far|feet back|feet in|find|finger|fingertip|fingertip on|five|floor and|floor away|follow your|foot a|foot way|forward|from|from you|further|get it|grab it|grip|hand off|hard|heel up|height|high as|higher|hip up|hold it|hot|i mean|if you|if youve|in slow|into|into your|isnt|it as|it come|it goe|it with|its only|jump|keep breathing|kickstand|knee straight|land on|lane|lean back|left|leg out|let go|lift the|little breath|lock|low back|mean|more|move|moving|neck|no higher|not at|not one|of the|on a|on each|one knee|only|out sideway|over toe|pad|past|pause|peel|pick|post|push your|put your|rib down|ring|round|slowly|soft knee|spot|spread|stance|start|steady down|step away|stick|stomping|stop|straight up|swinging|tail|tell|than you|that doe|that standing|that your|the ankle|the backside|the ceiling|the feet|the foot|the leg|the nose|the roof|them|then|there|these|theyre not|third|three|throw|throw yourself|till you|tiny|to hear|toe of|toe pointing|toe when|top|towel|tuck|tug|tummy|turn out|twist|up|up for|up in|up off|up onto|up through|walk your|want it|wee|weight in|whole way|wider|with it|you dont|you get|you land|you were|your bum|your elbow|your finger|your second|youre all|youre looking',
      ],
      [
        -0.3,
        'a|a fist|and|and then|arch|as your|back of|before|big toe|breathe|breathing|can|clock|dont roll|down|down and|down on|each hand|facing the|fast|feet a|fist|foot forward|foot off|for the|got|half of|hand|heavy|if|if the|in each|in front|in the|in your|it out|knee soft|knee up|lace down|leaning|like the|of a|one foot|onto|open|opposite|or your|over your|pocket|pointing|press|run|shin|sigh|sink into|something|stand on|standing|the air|the band|the thigh|then bring|to get|under you|weight|wrist|you want|your chin|your hand|your heel|your leg|youre|youve a|youve got',
      ],
      [
        -0.4,
        'and up|ankle|as it|behind|behind you|both|chair|chin|down for|each|facing|flat|float|for|get|go|grab|hang|heel down|it|it up|keep the|loose|mat|on your|out of|push the|rib|the|the chair|the hip|the mat|they|tucked|under|under your|your|your back',
      ],
      [-0.5, 'air|foot in|high|it down|let them|nose|reach|roll|soft|squeeze|straight|through your|tight|to your|turn'],
      [-0.6, 'arm|breath'],
      [-0.7, 'away|elbow'],
      [-0.8, 'lift|straight down'],
      [-0.9, 'shoulder'],
    ],
  ],
  [
    'stretch',
    -0.1,
    [
      [0.9, 'breathe into|hug'],
      [0.8, 'long breath|sigh'],
      [0.7, 'sink'],
      [0.6, 'after|finger|hang|into your|knee wide|right foot|the thigh|tingle|tingling'],
      [
        0.5,
        'arm out|breath out|ceiling|dont bounce|dont yank|down to|draw it|for the|glaucoma|heavy|heel down|instead|melt|more|over it|sit back|step through|the ceiling|till it|tuck your|you feel|your hand|youre after',
      ],
      [
        0.4,
        'and draw|and if|and lean|back over|back to|behind the|bit more|both shoulder|bounce|breath|breathe down|chest open|chest with|collarbone|dont push|down the|finger tingle|front of|gentle|gently|get heavy|go and|grab the|hug the|inside the|into|lean in|let the|out breath|over to|send|sit your|straighten|straighten that|tail|tailbone|the chest|the front|the hip|the knee|thigh|tip from|turn out|turned out|up slow|wait|walk your|wide|with both|yank|your head|your right',
      ],
      [
        0.3,
        'a pillow|across the|and let|and needle|apart|arch|as near|at all|back heel|back knee|back nip|back off|behind|blood|blood pressure|book|both hand|bouncing|collapse|come out|cranky|deep in|dont arch|dont pull|dont round|down as|ease|far down|flat under|foot|forward from|from it|head hang|head last|heel on|high blood|hip forward|hold your|if youve|it in|knee apart|knee down|knee till|knee together|kneecap sore|lead|lean|left thigh|let go|let your|long back|long band|long in|long slow|neck go|needle|no bouncing|notice|on it|one knee|other hand|other leg|out and|out like|pain|pillow|pin and|pull|pull not|put a|right ear|roll off|roll over|round over|rush|send the|shoulder soft|side to|sigh it|sink down|slide the|spread out|squeeze the|stay till|that back|that foot|that leg|the leg|the nose|the right|the toe|thumb up|till you|tingling down|tip|to go|to look|to side|to you|toe of|toe turned|turned|under it|wait for|where its|yank on|you are|your foot|your forearm|your heel|your tail|zing down',
      ],
      [
        0.2,
        'a bit|a book|a finger|a long|a mat|a nerve|a pull|a ring|a sack|a stretch|a t|a tug|across|across your|and just|and leave|and send|and stop|ankle|ankle behind|ankle on|arch your|arent locked|armpit|at shoulder|away till|back cheek|back leg|back spread|be the|bell by|bend it|bend the|big breath|bit|bit and|block|breastbone|breathe low|breathe slow|bum of|can go|chest away|chest down|comfy|crossed|dangle|deep|doe it|dont crank|dont force|dont hunch|dont poke|dont shove|down you|down your|draw|draw the|drop your|easy doe|elbow straight|feet apart|feet to|feet wide|finger wide|flex|flexed|fold|foot back|foot flexed|foot out|foot turn|force|forearm up|forehead down|frame|get it|get there|go where|grab|gravity|hand at|hand back|hand behind|hand down|hand on|hand shoulder|hang on|hang out|head dangle|head down|head up|heel|heel to|heel toward|hip heavy|hip with|hold of|hunch|in my|into it|into the|it all|it as|it deep|it give|it let|it off|it pull|it should|it smooth|knee arent|knee sag|lean till|lean your|leg back|leg youre|let|let both|let each|lie|lie back|lift your|little wider|load|lock your|low in|medal|meet|meet it|my|need to|nerve|nip|no need|no rush|not down|not too|numb|of the|of them|off if|or the|other way|out long|out the|over and|pain at|pedal|pillow under|pin|poke your|press that|press up|pressure|pubic|pubic bone|ready|right ankle|rock|round one|sack|see star|send your|shift|shin up|shoulder heavy|shoulder height|shoulder on|shuffle|sink the|sit up|sixty|slow breath|slow out|slowly|so go|sole|spread|stand in|standing on|star|start in|step and|step forward|step one|step that|stop at|stop halfway|straight but|straight leg|stretch|t|tail under|take a|talk|that elbow|the arm|the armpit|the back|the bum|the calf|the ear|the long|the lower|the pubic|the shin|the tail|them in|then put|thigh and|thread|till its|tingling in|tingly|tip forward|to meet|to where|toe go|toe straight|trunk|tuck|tug|turn away|until it|up on|upright|wait at|want it|wring|yanking|you see|you till|your ankle|your collarbone|your finger|your tailbone|youre standing|youve high|zing',
      ],
      [
        0.1,
        'a bell|a pain|and fold|and not|and over|and wait|and walk|ankle over|arch to|at each|back hip|back with|band behind|band round|bit of|bounce it|bum back|chin stay|complain|crank it|cushion|dont get|dont hang|drop down|drop to|each breath|ease in|elbow level|elbow lower|elbow on|facing you|feel a|feel it|feeling|flex the|fold over|forehead|forward until|from there|go a|go heavy|go long|hand come|hip in|it across|it go|it melt|it stop|it till|its gone|its kind|jaw|just to|knee and|knee as|knee on|knee with|leg behind|leg in|level with|lie on|lift it|long sigh|medal on|much|neck like|not behind|of pulling|off you|one foot|other one|out sideway|pinch at|pointing|pointing forward|reach back|reach down|rest your|ride up|right at|say|shin|shouting|side that|sigh out|stand still|stand there|stay level|stay pointing|straighten it|sway|talk to|that side|the breath|the collarbone|the foot|the glute|the standing|there no|there till|thread your|through and|through with|to catch|to touch|toe pointing|toe together|touching|until its|up against|up between|up slowly|walk|warm|with a|yank it|your arche|your breastbone',
      ],
      [
        -0.1,
        'a banana|a bus|a cat|a fist|a lift|a tent|ahead of|and come|and its|and slide|and stand|and swing|arm are|arm up|as they|as wide|asleep|at chest|baby|back start|back the|back till|backward|bag|bell|bell in|bending|big sigh|big step|bit apart|board|boat|both cheek|brake|bring them|brisk|brush|butter|can see|car|cat|chest and|chest height|chin|circle with|clock|close|come forward|could|dangling|degree|dip|dive|dive in|done|dont bend|dont hitch|dont just|dont look|dont move|dont rock|door|down like|down slow|drag|drop the|each hand|each other|elbow|elbow back|em|end in|facing the|feet back|feet hip|feet on|few|finish|follow the|for three|for two|from your|front knee|full|gap|gate|get up|get your|go down|go out|going down|going up|got a|grass|grip|grip with|had|hair|hand and|handle|hang in|head on|heel come|hip height|hip width|hop|i can|if youre|in going|in line|in on|in one|inch off|it bend|it home|it over|just reach|keep them|knee follow|knee goe|knee just|knee over|know|land on|lap|late|lean on|leg a|leg goe|let them|letter|lift one|like its|like there|little toe|long leg|look at|look down|look over|looking|lowering|move your|nailed|nailed down|no swinging|normally|not at|not out|one on|one straight|one up|only the|operated knee|opposite arm|out for|out over|out when|outside of|pain in|press your|puff out|pull your|punch|push the|push through|push up|push your|pushing|quiet|reach|rib and|roll in|roll your|room|rope|row|sagging|scoot|second toe|see|shoulder are|shoulder blade|shrugging|slide it|smooth|so it|so you|sock|somebody|somewhere|spot|squash the|stand|stay low|stop and|stop when|straight line|taking|taller|tap|tell|tent|that all|the box|the car|the clock|the elbow|the grass|the in|the last|the little|the operated|the push|the second|them|them back|them down|then push|then the|then turn|these|they go|theyre|thing|this|through it|through your|tip over|to come|to feel|tomorrow|too|top of|touche your|treacle|tucked|under hip|underneath you|up and|up as|up for|up like|up off|up till|use|wait there|wall and|weight on|when your|where your|whole way|width|will|window|you can|you could|you do|you stand|your cheek|your face|your feet|your front|your middle|your thumb|your toe|your weight|your whole|your wrist|youre lowering|youre not|yourself',
      ],
      [
        -0.2,
        'a bad|a little|a saucer|an ankle|an inch|and back|and dont|and hang|and lower|and put|and slow|and then|and your|arm by|as it|as you|back a|back at|back like|backside|banana|bang|before you|belly|belly button|box|button|cant|check|chest to|clear|come back|coming|dead|dinner|direction|do|do it|doing|dont be|dont hold|dont jump|dont lean|dont roll|dont sit|dont swing|dont want|down and|down till|draw your|drawer|dropping|dumb|dumb bell|elbow wide|everything|exhale up|facing|fast|feet under|five|floor|foot in|foot on|for one|from you|front foot|further|give it|go back|go over|goe|got|ground|half|hanging|have a|hear|heel in|heel stay|higher than|hip stay|hitch|hum|hurt|i|imagine|in it|it isnt|it on|it to|its not|its your|jump up|just off|just the|kick|knee out|knee soft|knee under|knuckle|lace|leaning|leave a|lift|like a|like the|little step|lock|lock the|long neck|lower it|march|me|nearly|next|nobody|normal|not high|not just|not your|nothing to|of a|off your|on one|only|only go|out at|past|past your|pause|peel|plank|poking|pulled up|push off|put it|quicker|ramp|reach your|relax|rhythm|rib down|rise|roll to|round|run|saucer|second down|should feel|shoulder and|sit down|sit tall|slide up|slow as|slower than|smaller|snap|something that|speed|square|squash|stand on|stand side|standing knee|start to|stay on|steady|stiff|stirring|swing your|swinging|table|take your|tall|tea|than your|that the|the bar|the big|the end|the far|the ground|the hand|the middle|the next|the outside|the seat|the spine|the whole|them up|they|thigh stay|think of|three second|through the|throw|till the|till youre|tiny|to the|too far|touch the|touche|track|travel|tray|up behind|up over|up there|waist|watch|way down|way up|whatever|whole foot|wide as|wing|work|working|wrist|wrist straight|you cant|you come|you dont|you get|you know|you should|youd|your backside|your belly|your bum|your forehead|your hip|your low|your spine|youre a|youre on',
      ],
      [
        -0.3,
        'a|a foot|all the|along|an|and down|around|as a|at the|bar|before|between your|bigger|blow|blow out|bring it|but|by your|can|chair|chair seat|cramp|ear|even|face|feet flat|first|fist|flat|flop|for|get long|grow|holding|home|in as|inch|it back|it up|its only|jump|keep|keep breathing|knee to|lean back|leave|loop|loose|low|low back|move|moving|nice and|no higher|of you|off|over|pick|plenty|pocket|pretend|resting|seat|slide|slow|slower|squeeze|squeeze your|stacked|stand up|step out|straight up|swap|than|the ankle|the band|the bottom|the neck|the ring|then let|to a|to it|under you|under your|underneath|up at|up toward|want to|weight|while|you go|your breath|your elbow|your nose|your shoulder|your tummy',
      ],
      [
        -0.4,
        'again|all|are|as if|at your|back into|between|by|circle|come down|count|dont go|drive|elbow under|feel the|going|height|hold it|land|lift the|like|like youre|line|make|middle|neck|no|not|over your|quick|side of|side on|spine|start|stay|still|straight|straight down|there a|thumb|top|tummy|two|under|way|your bottom|your leg|your side',
      ],
      [
        -0.5,
        'about|and bring|and the|back down|big|breathe out|breathing|eye|eye on|feet|follow|hard|higher|lazy|light|out on|pop|puff|second|short|small|swing|the top|the way|think|three|when you|whole|youre',
      ],
      [-0.6, 'breathe in|in your|just|little|look|out to|push|so|the chair|when|your ear'],
      [-0.7, 'as|over the|then'],
      [-0.8, 'off the|out as'],
      [-0.9, 'bottom'],
    ],
  ],
  [
    'supine',
    -0.2,
    [
      [1.1, 'feet flat|leg up'],
      [1, 'lie'],
      [0.9, 'knee bent'],
      [0.8, 'hand behind|other knee|other leg|out like'],
      [0.7, 'arm by|blade|leg long|one on|shoulder blade|the mat|toe up'],
      [
        0.6,
        'a grape|back stay|elbow out|flat|grape|hip up|leg out|mat|off your|sit tall|whole leg|wrist stacked|your back',
      ],
      [
        0.5,
        'arm to|bar over|bone at|ceiling|deep in|elbow wide|get up|head and|heel in|into the|knee down|leg|leg in|lie back|melt|nose for|nothing|one bone|one heel|over to|over your|peel|rib down|rolled|second to|shin level|shoulder up|side to|six|the ceiling|the feet|towel|under the|wee|wing|your heel',
      ],
      [
        0.4,
        'and a|and shoulder|back of|back out|bed|bench|both|both leg|both shoulder|bridge|chin|dont lift|drive your|eye under|foot flat|for six|get there|good knee|hamstring|haul|heavy|heel away|help|hug|it slip|knee over|leg goe|line from|mouth|nip at|on your|out and|over hip|palm up|pedal|pinch a|press your|push it|push yourself|quarter|rolled towel|roof|round the|shoulder heavy|so your|sock|squash|stacked over|straight line|that leg|the heel|the knee|the opposite|the roof|the towel|then let|through the|to shoulder|to side|toward|toward you|turn round|up till|when you|yank|you like|your face|your hamstring|your neck|your waist',
      ],
      [
        0.3,
        'a beach|a pedal|a pencil|a straight|about belly|ach|across the|all the|anchor|and draw|and drop|and go|and heel|and lift|and peel|and reach|and they|and turn|arche|arm straight|as low|as the|away along|back down|back into|band round|be|be a|beach|behind your|belly|bent|blade like|blade on|both knee|bottom of|breathe out|brisk|bruise|bum stay|button height|can keep|chin are|chin off|circle with|close|come to|coming down|cramp|cross your|do|dont bang|dont haul|dont push|dont yank|down slow|draw it|either|elbow halfway|every one|face away|fall|faster|feet into|feet planted|five|flop|floppy|fogging|forty|forty five|gravity|halfway|hand are|haul on|head down|heel about|heel close|higher|hollow|hug the|hugged|hurry|in a|in by|in through|in toward|it and|it arche|it come|it goe|it if|it sink|its all|its one|just off|just the|knee in|knee to|kneecap slide|left thigh|leg away|let both|lie down|like youre|love|low|low as|low back|mat and|no further|now|of one|of pushing|operated|opposite knee|out through|over on|own|pad on|peel your|pelvis|pencil|piece|pinch your|planted|punch it|push through|rib heavy|right ankle|ring come|rock|roll|roll back|roll to|room for|second|slip|slip off|slow as|slower than|so|so youre|sole|stay heavy|stay off|stop short|straight up|swing it|tall at|tea|the bar|the bed|the bench|the breath|the bum|the cheek|the leg|the operated|the pad|the same|them|them away|them home|then lift|through your|tighten|till its|till there|to just|to knee|to where|to you|today|toe pulled|together at|touch the|up a|up off|up one|up over|up toward|wait there|walk the|way through|where|while|yank on|you hold|your dinner|your leg|your mouth|youre fogging',
      ],
      [
        0.2,
        'a balloon|a book|a bounce|a coffee|a feather|a pillow|a rolled|a scarecrow|a stretch|a t|a tea|a time|about as|all|alone|along the|and come|and just|and lie|and needle|and one|and press|and shorten|and swap|and the|ankle on|are just|are poking|arm back|arm come|arm down|arm over|arm touch|as they|as well|at a|at you|back again|back doesnt|back from|back get|balloon|bar like|beat|bench and|bench away|bend in|bend it|bending|bent back|bent up|beside|beside your|blade clear|blade stay|boat|bone|bottom hand|bounce|bounce your|bowl of|breathe like|breathing while|bring them|bum|bum up|carpet|chair in|chat|cheek|chest between|chest get|chest with|chin tucked|church|clench your|clenching|close enough|closer|closing a|come off|come out|completely|cooling|count down|crease|curl the|curl your|curled|daylight under|dinner|do a|do not|do the|do your|doing|dollar|dont hurry|dont shove|down one|down slowly|down straight|down through|down underneath|down with|draw the|drop them|dropped|each side|ease into|elbow about|elbow are|elbow flapping|elbow stop|feather|feet down|feet forward|feet up|fingertip behind|flapping|flare|flaring|flat and|flat by|flatten|flip|flip over|float up|flop out|foot just|for four|four|from knee|from your|go and|go completely|go soft|go the|goe up|hamstring cramp|hand it|hand over|hand stay|hang on|heavy as|heavy on|heel and|heel dug|heel into|heel up|height of|height off|hip dont|hip drop|home and|hovering|ice|if a|in before|it deep|it down|it drop|it gently|it go|it is|it nip|it shouldnt|it to|it under|itll|its own|its still|jaw|just a|keep a|kind of|knee sag|knee toward|kneecap|knit|lay|lean into|leave the|left knee|leg are|leg down|leg on|leg to|let each|let one|lift your|like wing|lip|long breath|long by|long on|long slow|lot|lower one|lower your|make it|mile|milk|near enough|nearer|neck up|needle|nice long|nip|nipping|no hurry|no snatching|nod|not an|not back|not bent|notch|off that|one side|operated leg|opposite|out long|out with|pad|paddle|peel up|picture|picture a|pillow|pillow under|pin|pin and|point them|pointed|poking|pop the|pop up|press|press down|press through|puff|pull the|pushing the|put a|quick and|quietly|rib flare|rib in|right at|ring about|round it|round one|row|sand|scarecrow|scoot|second coming|second on|second up|send|send the|set them|shake it|shin|short breath|short of|shorten|shorten it|shoulder nip|shoulder on|shoulder stay|shoulder to|shouldnt|shove the|shrug it|shut|sit with|size|size of|skim|slide up|slope|slow like|small as|small of|snatching|snatching at|so the|sock on|socket|squash the|squash your|stand at|stay down|stay stuck|stay where|stop for|straighten that|straighten the|stretch|stuck|swimming|t|taking the|tap|tap the|than last|the carpet|the foot|the groin|the head|the high|the hip|the jaw|the kneecap|the left|the light|the lower|the out|the palm|the shin|the size|the sore|the thigh|them in|then push|then roll|there and|they are|they fall|thigh first|think of|thread|thread your|three on|through and|ticket|tickle|tight and|tight like|tighten the|tilt|tingling|tingling in|to help|to let|to lift|to see|to tickle|toe a|toe just|toe pointed|towel on|towel up|trying|trying to|tuck them|turn the|two second|under water|until its|up again|up if|use the|waistband|wait|walk them|watch the|water|way out|way up|where its|where they|while the|with both|working|wrap|wrist straight|you know|you sit|youll feel|youll have|your cheek|your eye|your pelvis|your side|your strength|your towel|your tummy|your waistband|youre cooling|youre one|youre tipping|youre waiting|zing|zing down',
      ],
      [
        0.1,
        'a bowl|a moment|a quarter|a sock|a table|a whisker|a window|about a|and change|and close|and drag|and start|and swing|and youve|arche off|arching|are bending|arm flat|arm into|as is|as itll|away again|back at|back come|back peel|back spread|bath|because|belly up|bin|blade in|blow out|boot|both end|both of|both way|bottom at|bum not|call|chin at|chin not|close to|coffee table|come down|cramping|crease of|curl up|daylight|degree|doe|doing it|dont heave|down off|down than|each turn|edge of|else|feel a|finger and|flexed|fogging a|foot flexed|for it|get higher|get lightheaded|getting|give|give you|go dizzy|go so|go wide|goe down|goe in|goe out|grape under|groin|half the|hand that|head hang|heave|heel a|heel goe|heel near|if one|imagine|is comfy|it bend|it flat|it roll|it slide|itll go|its tight|its your|just go|keep both|knee back|knee dont|knee drift|late for|leg as|leg flat|leg go|lift off|lifted|lightheaded|like butter|little bend|little quick|long and|low down|lower till|mate|meant|melt down|moment|movement|neck like|ninety|nose and|not your|one line|operated knee|out when|parallel|pop|pouring|pressing|push back|ramp|resting|rib at|rib that|send it|shaking|shin are|should feel|shoulder and|shoulder in|side that|sleeping|slipper|sore leg|soup|squashing a|squeezed|stay a|stay put|stop there|straight over|straighten|sunday|swimmy|table|take four|tea tray|that in|the air|the bell|the butt|the crease|the edge|the far|the hamstring|the hold|the lift|the pelvis|the small|the socket|them over|themselve|then a|thigh and|tipping|toe away|too low|touch and|toward your|unclench|up or|up straight|weight off|while you|whip|whisker|width apart|window|wring|you came|you press|you push|your bottom|your collarbone|your low|youre squashing|yourself into',
      ],
      [
        -0.1,
        'a baby|a count|a gate|a lighthouse|a long|a new|a pinch|a shoe|a string|a tent|a tiny|a tray|about half|after|against the|an|an ankle|and hold|and lazy|and look|and sit|and step|ankle behind|any|anybody with|are up|arm forward|arm go|arm hanging|arm long|around your|asleep|at me|away with|baby asleep|back heel|back till|band under|been|before you|between the|big as|big slow|bit more|blood|board|bottom one|breath in|breathe as|breathe down|breathe normally|breathe through|bus|cave in|chair back|chest down|chest forward|chin stay|circle|cold|collar|collar bone|come forward|crane|crane your|cranky|crown|crush|curl it|dive in|doesnt|dont crane|dont curl|dont hold|dont hunch|dont lock|dont look|dont move|dont sink|dont tip|down as|down between|down for|down slower|down there|draw your|drawing|drift forward|drop the|easy pace|elbow a|elbow and|elbow back|every time|everything|facing front|feet on|feet out|fence|find the|fingertip on|floor with|foot and|foot back|foot down|foot forward|foot in|for one|forearm on|from it|front foot|front heel|get|get it|giddy|go out|got you|grab|grumble|hair|hand back|hand down|hand in|hand loose|hand out|head through|head up|hip is|hold of|hold on|hunch|in going|in there|inch off|inner|inside the|is|is where|isnt a|it behind|it dive|it grab|it lift|it pull|it with|its like|keep hold|knee follow|knee goe|knee point|knee sore|knee till|knee wide|kneel|knock|knuckle to|land on|lazy|lean a|lean away|lean forward|lean on|lean your|leaning back|leg back|leg behind|let em|light on|lighthouse|like there|like your|little step|lock your|long line|long neck|look over|look straight|looking at|loose|mat away|metre|middle|middle toe|moan|next|nobody|not high|of inch|of ten|off if|one in|one long|open the|opening a|opposite arm|or your|out ahead|out behind|out breath|out over|outside|over a|pace|palm forward|pinch on|poke|poking out|pole|pretend there|push down|push on|quick step|rhythm|right leg|ring high|rope|round like|rounding|run|rush the|see a|set it|sharp|sharp pain|shoulder height|side on|sink into|sit bone|skip|slapping|sliding|slow up|small step|spot|squeezing|standing leg|stay long|stay low|stay over|stay tall|steady as|step up|stop if|stopping|straighten one|swing|swinging|tall chest|ten|that side|thatll|the belt|the bus|the car|the door|the front|the hair|the hand|the post|the pull|the room|the step|the table|the toe|the tummy|the window|them bang|then stand|there no|theyll|through that|throw it|thumb to|tip forward|tip over|to drop|to heel|to round|toe tucked|too heavy|top hip|top of|touching|track|travel|tuck the|turn|turn your|turned|up onto|up out|up past|up when|up with|walk back|walk to|walking|weight on|went up|whatever|whole|you by|you go|you lean|you lower|you put|you stand|you till|you went|your achilles|your armpit|your blood|your collar|your forearm|your little|your middle|your tail|your toe|your weight|youre cracking|youre stopping|yourself hang|youve a|youve got',
      ],
      [
        -0.2,
        'a car|a few|a flat|a gap|a good|a look|a prawn|a right|a thumb|a touch|able|able to|about your|achilles|ahead of|along your|an end|and breathe|and down|and head|and knee|and pull|and put|and slow|and stop|and then|and up|and walk|and you|angle|anybody|anywhere|arch|arch your|arm|arm are|arm under|as far|at chest|back flat|back leg|back pocket|back toward|back youve|bad|balance|band behind|bar on|barking|be able|being|bend one|bend the|between your|bit wider|blood pressure|bob|bottom leg|bottom out|bottom rib|bottom to|box|breastbone|breathing|build|bum back|bump|by side|carrying|catch|cave|chair|check|chest and|chest height|chest up|coat|come in|come lower|coming|coming back|complain|control|count out|couple|dangle|dive|dont arch|dont drop|dont hang|dont just|dont like|dont rush|dont stick|dont swing|dont twist|down by|down the|drawing a|drifting|drifting back|drop|early|ease|ease off|elbow brush|elbow further|elbow pinned|elbow stay|elbow straight|elbow up|end of|end under|enough|far enough|fast|feet apart|feet stacked|feet stay|few|finger|flat on|folded|folded towel|follow the|for three|forearm down|forearm flat|from you|front edge|front knee|front of|full|further out|gate|get down|get the|go|go overhead|gone|good side|got|got a|grab at|grass|grip|grip the|hand a|hand away|hand by|hand just|hand shoulder|hanging|happy|head come|head dangle|head last|head on|hear|heel together|height and|high as|hip are|hip height|hip sag|hip stacked|hip till|hip with|hold|hook|hop|hot|i|if they|if youre|if youve|in for|in it|in line|into a|is plenty|it bent|it hurt|it let|it straight|it till|its a|its too|its up|jumping|knee apart|knee hurt|knee soft|lap|last|lead with|lean in|length|let that|let your|level|like somebody|like youve|line with|little toe|long back|look forward|looking|loop|loop stay|low into|me|move your|mustnt|neck long|nice and|nick|nip in|no|no jerking|no sagging|nose if|nose over|not in|not on|not up|oclock|of straight|off you|on one|on that|only a|onto the|or leave|out there|out to|outside of|over it|pain|paint|palm to|past|pinch in|plank|plenty|point at|prawn|pretend|proud|pull it|push the|put them|quick|quiet|rack|rail|reach your|rib and|right angle|right back|right up|round over|running|sagging in|screw|second going|send your|set|should be|shoulder width|shrugging|side by|sideway|sigh|sit your|slam|slide your|slow|slow enough|slow on|snap it|so you|soften|sort|sort of|spread|squeeze it|squeeze your|stab|stack|stamp|stand on|stand tall|stay facing|stay level|stay there|step back|step out|stick your|stiff|stirring|stop and|stop halfway|straight ahead|straight and|straight back|straight leg|straight out|tail under|take a|taller|tent|than up|that hip|that it|the band|the big|the box|the chest|the chin|the collarbone|the ear|the elbow|the grass|the ground|the inside|the joint|the low|the plate|the rack|the rail|the ring|the second|the standing|the stick|the top|the turn|the weight|them drift|then lower|then the|then you|thigh stay|think about|this one|till your|tin|to a|to about|to get|to go|toe point|toe to|together|turn a|turning|two|under at|underneath you|unhurried|until your|up for|up high|up on|up quick|walnut|warm|washing|were|what|when youre|wider than|wind|without them|wrist are|wrist flat|you come|you dont|you land|you open|you rise|you see|youll get|your body|your breastbone|your fist|your front|your good|your lace|your lap|your pocket',
      ],
      [
        -0.3,
        'all four|an inch|and dont|and your|back foot|back knee|back like|band|before|belly button|blow as|bottom knee|breathe|button|car|come back|cushion|dont go|dont round|drawer|em|eye on|face the|facing|far as|feet a|feet back|feet wide|find|fist|flat back|follow|foot up|for your|forehead on|go down|going down|ground|half|hand at|handle|heel down|heel on|height|higher than|hold it|holding your|if you|in as|in at|inside of|instead|it between|it open|jerking|joint|jump|keep breathing|knee just|knee on|lace|land|landing|leaning|leave your|lift one|lift the|like the|load|lock|make|mind|moving|new|no holding|of the|of you|on a|on top|one end|onto|other hand|overhead|past your|pointing|pressure|pull|push off|put it|quit|right|round|rush|seat|shoe|shoulder down|shoulder over|shoulder that|slack|slide them|spine|stay on|stay straight|stop at|straight down|string|the|the chair|the forearm|the neck|the wrist|them drop|theyve|thigh level|through a|thumb|till it|tip|tip from|toe together|top|top knee|top leg|tuck your|twist|under hip|underneath|up tall|way in|weight|went|where the|whole foot|wide|with|with a|with the|you feel|you stop|your finger|your shoe|your thigh|youre not|youve',
      ],
      [
        -0.4,
        'and keep|and stand|as your|at your|backward|behind you|between|big toe|body|by the|chest to|chin out|come up|crossed|dont|dont kick|door|easy|feet hip|feet under|finish|first|foot|for the|forehead down|grow|hand and|hand on|hinge|hip back|hurt|inside|into your|keep it|knee under|knuckle|on the|one knee|one leg|or|out in|plate|pocket|sagging|second toe|see|side of|sit|slide down|slowly|soft|something|squeeze|stick|the ankle|the arm|the outside|the waist|there for|toe|tuck|walk your|want to|with it|wrist|your arm|your breath|your elbow|your shoulder',
      ],
      [
        -0.5,
        'and lower|back and|back to|ball of|breathe into|dont lean|ear|forearm|hand off|heel to|high|look|other foot|out of|over the|sit back|snap|soft knee|stand up|standing|steady|than your|the seat|the wall|under shoulder|walk|wall|wider|without|your wrist',
      ],
      [-0.6, 'ahead|back in|elbow|floor away|foot on|hand|the shoulder'],
      [-0.7, 'big|elbow under'],
      [-0.8, 'in front|lean'],
      [-0.9, 'dont roll|forehead|front'],
      [-1, 'tall'],
      [-1.1, 'forward|stand'],
      [-1.3, 'step'],
    ],
  ],
  [
    'swing-kit',
    -0.2,
    [
      [0.8, 'arm are|rope'],
      [0.7, 'hike|hike it|nobody|snap'],
      [0.6, 'park|up there'],
      [0.5, 'are just|chop|it like|look behind|park it|the rope'],
      [
        0.4,
        'and look|back at|bell a|bend your|breath out|dizzy|every time|feet wider|fold|high between|huff|it back|it down|just the|knee and|metre|out at|sharp|up with|within',
      ],
      [
        0.3,
        'across|ahead of|are rope|back up|bell|dont fold|dont lift|drop it|elbow and|feet a|float|grip it|hard|it float|like it|look in|make|shape|side and|snap it|the end|the same|they dont|waist|water|wider|with a|you and',
      ],
      [
        0.2,
        'a bucket|a flat|a foot|across to|across you|an arm|and park|and pick|and then|and throw|arm up|at something|because|between your|big step|bit more|bouncy|breastbone|bucket|by the|cant get|cause|check its|chest height|dont bend|dont move|dont squat|dont stand|dont turn|down across|down when|drive it|every rep|facing front|fall|far knee|flat back|fold at|foot ahead|foot turn|go slow|grip|hard as|height is|hinge|hip and|hip bone|horizon|it an|it close|it through|it with|jerking|job|keep moving|leg do|leg to|long by|low enough|mile|move|moving|no jerking|no lower|not your|of a|of water|on its|one come|operated on|other side|out so|over you|partner stand|pick it|rep|reset|rule|set it|shoulder dont|shoulder grumble|sit as|slow up|snappy|snatch|something|spin|squat|squat it|stand at|stand there|stand with|still|stop halfway|that doe|the horizon|the lot|the post|the waist|then stand|throw it|throw the|trunk|tug it|two big|up before|up fast|up slow|wait|you bring|you dip|you to|your breastbone|your coat|your hair|your teeth|youre shaking|zip|zip up',
      ],
      [
        0.1,
        'a metre|a rope|a towel|and i|and set|around|back between|bow|brisk|by itself|clear|crisp|diving|dog|dont like|dont stop|each side|elbow straight|enough to|goe up|grumble|grumbling|hand up|heart|hit|i mean|imagine youre|it fall|it the|it to|its like|itself|land soft|like you|lock it|loud|lower than|mean it|most|or the|or you|or youve|partner|people|rib and|same way|shaking|sharp breath|snap the|something that|somewhere|teeth|the strap|their|then snap|through it|throw|tip it|turn it|under it|up out|up your|wait for|you fold|your heart|youve had',
      ],
      [
        -0.1,
        'a hand|a little|a touch|above|above the|after|against|air|all|along|an|an inch|and back|and come|and down|and keep|and lift|and lower|and not|and push|and the|arch|arm by|arm out|armpit|as|as high|as if|as they|as you|as your|at|at a|at it|back in|back of|back on|back pocket|backside|ball of|be|behind|behind the|behind your|below|bend the|big toe|bit|bit wider|board|body|both feet|bounce|bouncing|breath|breathe into|bring|bring the|bring your|but|by your|calf|cant|cheek|chest up|chin|come|come down|come up|curl|doing|dont arch|dont bounce|dont drop|dont go|dont roll|dont tip|down on|down slow|drag|drop the|dumb|dumb bell|each|each hand|ear|ease|easy|edge|exhale|far as|feet|feet hip|feet wide|find|finger|five|flat|flat on|floor away|follow|foot|foot on|for it|for the|forearm|forehead|four|from|from the|front|front heel|front knee|full|get|get it|go up|going down|gone|grab|grow|had|hair|hamstring|hand on|hand under|hang|hanging|head|heavy|heel and|heel up|higher than|hold the|holding|home|if the|if you|if youve|in each|in on|in the|into it|into your|is|isnt|it a|it come|it in|its|its not|keep|keep breathing|knee over|knee soft|knee up|kneecap|knuckle|leaning|leave|left|leg|leg long|leg out|let go|let the|let your|level with|lie|lift|lift the|light|like there|like youre|like youve|long|loop|low as|lower it|make it|mean|middle of|nice|nice and|no|no bouncing|no higher|not the|off your|on a|on the|on to|on your|one knee|one leg|only|only as|onto|opposite|other foot|other leg|out as|out like|out of|out on|over|past|past your|peel|please|point|pointing|pop|post|press the|puff|pull the|pull your|push off|push through|push your|reach|rib|ring at|rise|roll out|round|round the|sag|shoe|should|shove|side|side of|sideway|slow as|slower than|slowly|small|squeeze the|squeeze your|stacked|stand on|stay down|step back|stop at|straight down|straight up|swap|table|tail|take your|than|than the|than you|than your|the back|the ball|the band|the bench|the big|the chest|the edge|the far|the feet|the hand|the inside|the knee|the kneecap|the outside|the rail|the seat|the shoulder|the thigh|the toe|the way|them down|them up|then let|then the|there|think of|three second|through|through your|till it|till youre|tip|to come|to the|to your|toe|toward the|tuck your|tummy|two|under you|until|up like|up off|up tall|up to|walk your|way up|wee|when|whole|whole foot|whole way|wide|with|with it|with your|without|wrist|yank|you feel|you like|you pull|you push|you want|youll|youll feel|your back|your bottom|your bum|your feet|your foot|your hip|your low|your neck|your nose|your rib|your shin|your tail|your thigh|youre a|youre not|youve|youve got',
      ],
      [
        -0.2,
        'a|again|and|and bring|ankle|apart|as a|as far|away|back|back down|back knee|back to|band|bar|belly|bench|bent|big|blade|bottom|breathe in|breathe out|breathing|bum|can|ceiling|chair|chest|coming|dont|door|down|down to|draw|elbow|elbow under|face|feel it|feel the|feet flat|feet under|first|fist|floor|for|forward|go|going|got|ground|half|hand|have|heel|high as|higher|hip|hip width|hold|if|if it|if your|in|in your|inch|into|into the|it|it out|its a|keep the|knee|knee bent|knee to|lean|let|let them|level|lift your|like|like a|line|little|low|low back|lower|mat|me|middle|neck|nose|not|not a|of|of it|of your|on|on it|one|one foot|one hand|open|other|out|out to|outside|over the|palm|pinch|pocket|press|pull|push the|put|quiet|right|ring|roll|seat|second|see|shin|shoulder|shoulder blade|sigh|sink|sit|slide|slow|slower|soft|sore|squeeze|stand tall|start|stay|steady|step|straight|swing|take|tall|that|the|the bar|the bottom|the ceiling|the chair|the elbow|the floor|the foot|the ground|the heel|the mat|the middle|the other|the ring|the side|the wall|them|there a|thigh|think|three|thumb|tight|till your|to|to get|together|too|top of|touch|toward|toward your|tuck|tucked|under|under the|under your|up|up and|wall|want|want to|weight|where|width|you|you can|your|your belly|your chest|your heel|your shoulder|youre|yourself',
      ],
      [-0.3, 'breathe|dont let|feel|of the|off|off the|push|the front|till'],
    ],
  ],
  [
    'wide-legs',
    -0.4,
    [
      [0.8, 'inside|wide'],
      [0.7, 'apart|feet wide|inside of|only as'],
      [0.6, 'floor apart'],
      [0.5, 'feet together|inside the|tailbone|the inside|this|where the'],
      [
        0.4,
        'bell|big step|both feet|come back|down to|grab|into a|into that|low as|open|other leg|out at|out over|rock|the bell|the toe|this one|toe turned|together|turned|turned out|with both|you stand|your arche',
      ],
      [
        0.3,
        'and stop|arche|as your|back in|both hand|bounce|breathe down|collapse|dont bounce|down as|down on|feet to|head down|heel stay|hold on|in on|lock it|more|no rush|out to|out when|pain|pain at|proud|pubic|pubic bone|rope|see star|should feel|side to|sink down|sit into|sole|speed|star|step out|straight leg|stretch|take the|talk|that hip|the door|the pubic|the straight|then you|to side|toe go|waiting|would',
      ],
      [
        0.2,
        'about a|against the|and come|and leave|arm to|as low|back for|band and|bell at|bend the|bounce them|bum out|can stay|cave|count up|deep|dont lift|edge|everything|feel like|feet out|fingertip|for that|force the|from each|further than|hand resting|hang on|hang out|height of|it cave|its easy|its there|just hang|knee together|knee wide|leave this|like a|long and|no more|of that|off the|one out|open like|out and|out there|pay|pay for|puff out|quick as|right out|rocking|rush|shallow|shift|so go|something|stand with|stay straight|take a|telly|the armpit|the bus|the feet|the groin|the height|the minute|the telly|them in|thigh to|tidy|toe out|toe up|toe when|under you|up when|weight in|what its|when they|you bend|you open|your lap',
      ],
      [
        0.1,
        'a big|a good|a rainbow|a touch|against|and hold|and squeeze|and two|anything|apart as|are just|as deep|at ten|away from|back from|back with|band round|belt buckle|bit and|bit more|bit of|bob|book|bounce it|bow|breathe low|buckle|buckle to|came|came up|chest over|chin tucked|concrete|count down|crate|crown|crown of|deep as|dont hang|dont lean|dont let|dont round|dont stick|dont turn|down|down and|down slower|down soft|down there|drop|each other|edge of|end of|far down|feeling|force|forward from|from there|glass|go out|go to|going in|grab it|grab the|groin|hand come|hand in|hand to|hang off|heel together|hip go|hook|in before|inner|it came|it into|it should|it stop|just above|keep both|knee out|knee with|lap|lean back|leg straight|let you|long arm|minute|mirror|my|neck go|not in|notice|off and|out for|out wide|outside of|put|rainbow|reach back|resting|resting on|right under|roll onto|round over|round your|set|set it|sheet|shrug it|sit back|sit tall|slide down|stand all|stand still|standing up|stay tall|stick your|stop where|stride|tape|tearing|than it|that what|that where|the concrete|the mirror|the tail|the window|then squeeze|they go|think about|to hip|to where|toe at|turn into|turn it|up between|up out|want it|where its|where you|which|you see|you stop|your tailbone',
      ],
      [
        -0.1,
        'a hand|across|across the|ahead|along|an inch|and back|and bring|and down|and keep|and lower|and no|and not|and the|and your|arch|are|arm by|arm straight|around|as high|at|at a|at your|back down|back foot|back knee|back pocket|back up|backside|ball of|because|behind the|behind your|below|bench|between the|blade|blow out|board|body|breath out|breathe into|bring it|bum|but|butt|button|calf|catch|cheek|chin|close|curl|do it|doesnt|doing|dont arch|dont go|dont hold|dont tip|down like|drag|draw|drop the|each|each hand|em|even|exhale|facing|fast|feel it|feet hip|fist|five|flat on|float|floor|floor away|follow|for a|forearm|forehead|from the|from your|front heel|front knee|front of|go|go up|going|going down|gone|grip|halfway|hamstring|handle|hanging|have|head|heel|heel and|heel up|high|high as|holding|hurt|if its|if the|if there|if your|if youre|in each|in through|inch|into it|is|isnt|it a|it back|it come|it goe|itll|its a|its not|its your|keep breathing|knee and|knee bent|knee soft|knee to|knee up|kneecap|lean|lean in|leaning|left|leg out|lie|lift|lift the|light|like youre|low back|make|middle of|move|near|next|nice|nice and|no higher|nobody|not your|of the|of you|off|off your|one foot|one hand|one knee|one leg|opposite|out as|out in|out like|palm|past|pick|pinch|plenty|poke|pop|press the|pull it|pull the|pull your|reach|ring|rise|roll|roll out|round the|short|shoulder blade|side|side on|sideway|slide|so|soft knee|somebody|stacked|stand on|stand up|stay on|steady|step back|straight down|straight up|strap|than you|that|the arm|the ball|the bar|the bench|the big|the bottom|the elbow|the floor|the foot|the front|the hand|the kneecap|the ring|the way|them down|think of|through the|thumb|tight|till it|till the|till your|too|toward your|towel|tuck|tuck your|tummy|under the|up and|up at|up like|up off|up tall|up the|waist|walk your|wee|while|whole foot|with it|wrist|yank|you dont|you feel|you go|youll feel|your arm|your belly|your bottom|your chin|your ear|your elbow|your foot|your low|your nose|your shin|your wrist|youre not|yourself|youve got',
      ],
      [
        -0.2,
        'as a|as if|as it|back and|ball|behind|bent|big toe|blow|bouncing|breathe|breathing|by your|dont|drive|ear|ease|eye|feet under|finger|flat|forward|get|got|half|hand|hand on|hard|hip width|i|if it|in|in front|into the|it in|its|just|last|let|let go|level|like|little|look|loop|loose|no bouncing|not a|on the|other foot|out|out a|out on|pointing|quiet|same|shirt|shoe|side of|sigh|small|soft|stand tall|step|swing|the same|the shoulder|the thigh|the whole|three second|through|tip|under your|up to|way|way down|whole|with the|without|you come|your rib|your side',
      ],
      [
        -0.3,
        'a|ankle|away|belly|bottom|breath|down between|front|it|on|on a|one|or|press|pull|rib|straight|the back|the other|three|to your|up|walk|width|you|your|your chest|youre',
      ],
      [-0.4, 'and|arm|back|elbow|no|not|on your|second|slow|the|till|under'],
      [-0.5, 'if|shoulder'],
      [-0.6, 'foot'],
    ],
  ],
]
